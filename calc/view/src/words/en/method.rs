//! Methods, their levels, who may do them, why they stand where they do, and their steps.

use super::phrase;
use calc::models::provisos::Proviso;
use calc::terms::method::{Level, Method};
use calc::terms::tree::Herbicide;

/// The same for another method.
pub const DO_OTHER: &str = "in short steps";
/// Nine rows.
pub const METHODS: &str = "Methods side by side";
/// The question that this part answers.
pub const METHODS_ASKED: &str = "for this stem";
/// Methods.
pub const HEAD_METHODS: [&str; 2] = ["Method", "How it stands, and why"];
/// The two groups of methods.
pub fn group(herbicide: bool) -> &'static str {
    if herbicide {
        "With herbicide, by a licensed applicator"
    } else {
        "Without herbicide"
    }
}

/// What ringing and felling cost a city, before and behind whose figure it is.
pub const CITY_COST: [&str; 2] = [
    "A city paid about 80 times as much to take a street elm down as to ring one (",
    ").",
];
/// Before who does it.
pub const WHO_DOES_IT: &str = "Who may do it: ";
/// Before who may do it, in a row.
pub const BY: &str = "by ";
/// The method at the head, in the table.
pub const THIS_ONE: &str = " (this answer)";
/// Before what a method leaves.
pub const LEAVES_BEHIND: &str = "Leaves ";

/// A method's name, as a row of a table.
pub fn method(method: Method) -> &'static str {
    match method {
        Method::BarkRing => "bark ring",
        Method::SawRing => "saw ring",
        Method::Frill => "frill: cuts with herbicide",
        Method::BasalBark => "basal bark: herbicide on the bark",
        Method::CutStump => "cut stump: herbicide on the stump",
        Method::PullOrDig => "pull or dig",
        Method::Fell => "fell",
        Method::RepeatCutting => "repeat cutting",
        Method::LeaveIt => "leave it",
    }
}

/// What to do, in the sentence "Use another method: …".
pub fn act(method: Method) -> &'static str {
    match method {
        Method::BarkRing => "ring its bark",
        Method::SawRing => "saw a ring",
        Method::Frill => "frill, cuts with herbicide",
        Method::BasalBark => "herbicide on the bark at the base",
        Method::CutStump => "cut it, with herbicide on the stump",
        Method::PullOrDig => "pull or dig it out",
        Method::Fell => "fell it",
        Method::RepeatCutting => "cut it again and again",
        Method::LeaveIt => "leave it as it is",
    }
}

/// How a method stands.
pub fn level(level: Level) -> &'static str {
    match level {
        Level::Recommended => "recommended",
        Level::Possible => "possible",
        Level::NotAdvised => "not advised",
        Level::RuledOut => "ruled out",
    }
}

/// Who may do it. A herbicide method is the applicator's, unless the asker said that they may.
pub fn who(method: Method, by_professional: bool, herbicide: Herbicide) -> &'static str {
    match (method.needs_herbicide(), by_professional) {
        (true, true) => "a professional with a licensed applicator",
        (false, true) => "a professional",
        (true, false) if herbicide == Herbicide::Yes => "you, as the product label says",
        (true, false) => "a licensed applicator",
        (false, false) => "you",
    }
}

/// The same behind a method: ` (by a licensed applicator)`, or nothing.
pub fn by(method: Method, by_professional: bool, herbicide: Herbicide) -> String {
    match who(method, by_professional, herbicide) {
        "you" => String::new(),
        "you, as the product label says" => " (the product label governs)".into(),
        other => cat!(" (by ", other, ")"),
    }
}

/// Who cuts down a tree near which something stands, and no professional is needed.
pub fn trained_to_fell(herbicide: bool) -> &'static str {
    if herbicide {
        "someone trained to fell, with a licensed applicator"
    } else {
        "someone trained to fell"
    }
}

/// What a method leaves behind.
pub fn leaves(method: Method) -> &'static str {
    match method {
        Method::BarkRing => "a standing dead tree",
        Method::SawRing => "a standing dead tree, weaker at the cut",
        Method::Frill | Method::BasalBark => "a standing dead tree",
        Method::CutStump => "a stump and wood on the ground",
        Method::PullOrDig => "a hole, nothing standing",
        Method::Fell => "a stump and wood on the ground",
        Method::RepeatCutting => "a low stump that weakens",
        Method::LeaveIt => "the tree as it is",
    }
}

/// Minutes of a method: now, and over three years. Where nobody measured it that is said.
pub fn work(work: &calc::models::effort::MethodWork) -> String {
    let said = |share: &calc::models::outlook::Share| {
        let low = minutes(share.low);
        let high = minutes(share.high);
        match share.likely {
            Some(likely) => cat!("about ", minutes(likely), " (", phrase::to(low, high), ")"),
            None if low == high => cat!("about ", low),
            None => phrase::to(low, high),
        }
    };
    if work.method == Method::LeaveIt {
        return "No minutes.".into();
    }
    let Some(now) = &work.now else {
        return "Minutes: no number found, now or over three years.".into();
    };
    let of = if work.of.is_empty() {
        String::new()
    } else {
        cat!(", as timed for ", work.of)
    };
    let years = match (&work.three_years, work.visits) {
        (_, 0) => "nothing comes back".into(),
        (Some(long), visits) => cat!(said(long), " with ", phrase::small(visits), " visits"),
        (None, _) => "no number found".into(),
    };
    cat!(
        "Minutes now: ",
        said(now),
        of,
        "; over three years: ",
        years,
        "."
    )
}

fn minutes(value: f64) -> String {
    if value < 10.0 {
        crate::measure::plain(value, 0)
    } else {
        crate::measure::minutes(value)
    }
}

/// When a method works, apart from law.
pub fn months(method: Method) -> &'static str {
    match method {
        Method::BarkRing => "while the bark slips",
        Method::SawRing => "any month; slower to kill than a peeled ring",
        Method::Frill => "most of the year, best autumn to winter; not in heavy spring sap flow",
        Method::BasalBark => "any month; not on wet, frozen or snow-covered bark",
        Method::CutStump => "at once after the cut; not in early-spring sap flow",
        Method::PullOrDig => "when the soil is moist",
        Method::Fell => "any month",
        Method::RepeatCutting => "each time that sprouts are back",
        Method::LeaveIt => "any day",
    }
}

/// Why a row of the table lowers a method, as a clause. None for a row without words: a test holds that
/// there is none.
pub fn rule(id: &str, method: Method) -> Option<&'static str> {
    let row = match (id, method) {
        ("always", Method::SawRing) => "always_saw",
        ("always", Method::RepeatCutting) => "always_cut",
        ("inside_over_6", Method::RepeatCutting) => "inside_over_6_cut",
        ("10_and_over", Method::PullOrDig | Method::RepeatCutting) => "10_and_over_small",
        _ => id,
    };
    crate::words::named(RULES, row)
}

const RULES: &str = concat!(
    "always=the tree stays|",
    "always_saw=cut wood costs holding strength|",
    "always_cut=it takes years of coming back|",
    "always_fell=felling costs far more than a ring, and leaves nothing standing|",
    "over_6=a stump over 6 in (15 cm) means felling first|",
    "no_ring_to_cut=palms and bamboo are not built like a tree, and have no bark ring|",
    "line=a line is within reach|",
    "professional=the tree could hit what stands near|",
    "line_open=whether a line is within reach is not known|",
    "inside_herbicide=nothing may be left standing near what it could hit|",
    "inside_heaven_over_6=nothing may be left standing near what it could hit|",
    "inside_heaven=so near it is cut down dead, 30 days later, by someone trained to fell|",
    "inside=nothing may be left standing near what it could hit|",
    "inside_over_6_cut=over 6 in (15 cm) so near, it must come down at once|",
    "inside_over_6=felling over 6 in (15 cm) so near is professional work|",
    "hollow_alone=a hollow tree is habitat already, and no place to work under|",
    "followup=a cut into the wood brings more sprouts or bridges|",
    "followup_saw_tried=a saw ring was tried with some success|",
    "conditional=cuts with herbicide are less sure on this kind|",
    "conditional_saw=a cut into the wood brings more sprouts or suckers|",
    "clone_not_known=it works if every stem of the clone is ringed, and that is not said|",
    "sprouts_below=it sprouts from below the ring, and a ring alone seldom ends it|",
    "clone_not_whole=part of the clone would be left, and feeds the rest|",
    "suitable_clone=it works if every stem of the clone is ringed|",
    "suitable_clone_not_whole=part of the clone would be left, and feeds the rest|",
    "suitable_clone_other=wounding one stem of a clone makes the rest sucker|",
    "not_alone=a ring alone leads to sprouts or suckers|",
    "not_alone_guided=sprouts must be cut 3 times a year for 3 years|",
    "not_alone_saw=a cut into the wood brings more sprouts|",
    "not_alone_saw_tried=a saw ring was tried with some success|",
    "suckers=felling it brings suckers from the roots|",
    "suckers_base=roots that stay in the ground sucker|",
    "suckers_cut=cutting alone brings more stems from the roots|",
    "crown_fell=felled, it sprouts from the crown|",
    "stem_spared=herbicide passes through shared roots into the stem that you keep|",
    "deep_cut_resprouts=a cut too deep makes it sprout from the base|",
    "unknown_species=its name is open, and decides most of what follows|",
    "unknown_species_against=its name is open, and a ring may not suit it|",
    "ring_doubted=trials of a ring on this kind disagree|",
    "hickory_saw_ring=it grows over a cut|",
    "oak_saw_ring=an oak is cut into the wood only from November to February, outside its oak-wilt months|",
    "oak_saw_ring_winter=in winter oaks are ringed by saw in thinning|",
    "thin_shrub=its stems are too many or too thin to ring|",
    "under_1=under 1 in (2.5 cm) it is too small to ring|",
    "1_to_2_5=up to 2½ in (6.4 cm) it is hardly worth a ring|",
    "1_to_2=under 2 in (5 cm) it is too thin for cuts|",
    "conifer_under_6=under 6 in (15 cm) it makes no snag; cut it below the lowest branch|",
    "sprouter_under_6_fell=under 6 in (15 cm) it sprouts from the stump|",
    "sprouter_under_6=under 6 in (15 cm) it sprouts and must be cut again|",
    "10_and_over_small=at 10 in (25 cm) and over it is too large for that|",
    "10_and_over=at 10 in (25 cm) and over, felling is professional work|",
    "base_too_thick=its base is too thick for a lever|",
    "dig_shrub=a shrub this thick is dug, not pulled|",
    "basal_over_4=herbicide on the bark works best up to 4 in (10 cm)|",
    "basal_over_6=herbicide on the bark is not for stems over 6 in (15 cm)|",
    "stump_under_half=under ½ in (1.3 cm) it is unreliable|",
    "conifer=it does not sprout, so there is no need|",
    "oak_wilt_months=beetles carry oak wilt to fresh wounds in these months|",
    "oak_wilt_near=oak wilt is near, and these are its months: ask whether it has arrived|",
    "ash_borer=a ringed ash draws the ash borer|",
    "american_elm=a dying elm in its bark breeds the beetles of elm disease|",
    "pines_near=a dying pine breeds beetles that move to living pines|",
    "bark_not_slipping=the bark does not slip on that day|",
    "sap_flow=spring sap flow washes it out|",
    "heaven_out_of_season=herbicide suits this tree from 15 July to 15 October|",
    "heaven_stump=cutting it first makes it sucker|",
    "no_herbicide=you said no herbicide|",
    "kill_only=you want it dead|",
    "group_months=this group cuts no ring in these months|",
    "group_size=this group leaves a tree so thick to a professional|",
    "dead=it is dead already|",
    "dead_nothing_near=it is dead, and nothing stands near that it could hit",
);

/// Steps of another method. The label and the law stand above all of them.
pub fn other_steps(method: Method, dead: bool, by_professional: bool) -> &'static [&'static str] {
    if by_professional {
        return &[
            "Ask a professional, and say what you told us here.",
            "Say what you want left: a tall stump or log on the ground feeds wildlife too.",
        ];
    }
    match method {
        // The ring has steps of its own, made for the stem.
        Method::BarkRing => &[],
        Method::SawRing => &[
            "Cut every branch and green shoot below the cut.",
            "Saw one level line all the way round, through the bark and ¾ in (2 cm) into the wood; 2 in (5 cm) at most.",
            "Expect it to die a season later than a peeled ring, and to need a second ring more often.",
            "A tree with cut wood is weaker there. Keep people out from under it.",
        ],
        Method::Frill => &[
            "Ask a licensed applicator, unless you are one.",
            "The product label decides place, season and amount. We give no rates.",
            "Cuts go round the stem, waist high or lower, and are treated at once.",
        ],
        Method::BasalBark => &[
            "Ask a licensed applicator, unless you are one.",
            "The product label decides place, season and amount. We give no rates.",
            "The lowest part of the stem is treated all the way round, on dry bark.",
        ],
        Method::CutStump => &[
            "Cut low and level.",
            "The stump is treated at once, by a licensed applicator or as the label says. We give no rates.",
            "Keep wood where it falls.",
        ],
        Method::PullOrDig => &[
            "Wait for moist soil.",
            "Have buried lines located before you break ground.",
            "Loosen the root crown, pull or lever it out with its main roots.",
            "Shake off the soil, hang the roots up to dry, press the soil back.",
        ],
        Method::Fell => &[
            "Walk all round, look up, and clear two ways out.",
            "Keep everyone two tree lengths away.",
            "Cut it below the lowest live branch, or low where it sprouts.",
            "Felling needs training: if in doubt, ask a professional.",
        ],
        Method::RepeatCutting => &[
            "Cut it low, below the lowest live branch.",
            "Cut the sprouts each time that they are back: 3 times a year or more.",
            "Go on for 3 years or more, until nothing comes.",
        ],
        Method::LeaveIt if dead => &[
            "Leave it standing: it is a snag already.",
            "Keep people out from under it, and look at it once a year and after storms.",
        ],
        Method::LeaveIt => &[
            "Do nothing to it, and stay out from under it.",
            "Look at it once a year and after storms.",
        ],
    }
}

/// Steps that would leave wood on the ground, where it must not lie.
const LEAVES_WOOD: [&str; 2] = [
    "Keep wood where it falls.",
    "Say what you want left: a tall stump or log on the ground feeds wildlife too.",
];

/// Whether a step stands, where wood must go.
pub fn step_stands(step: &str, wood_goes: bool) -> bool {
    !(wood_goes && LEAVES_WOOD.contains(&step))
}

/// What the work must keep to, as a step.
pub fn proviso(proviso: Proviso, south: bool) -> &'static str {
    match (proviso, south) {
        (Proviso::TakeAwayOrPeel, false) => {
            "Take the wood away or peel it within three weeks, or wait for October: fresh pine breeds beetles that move to living pines."
        }
        (Proviso::TakeAwayOrPeel, true) => {
            "Take the wood away or peel it within three weeks, or wait for April: fresh pine breeds beetles that move to living pines."
        }
        (Proviso::BarkOff, _) => {
            "Take its bark off or have it chipped within three weeks: fresh elm breeds the beetles of elm disease."
        }
        (Proviso::TrainedToFell, _) => "Only someone trained to fell cuts it down.",
        (Proviso::PathClosed, _) => "Close the path, and have it watched for the hour.",
        (Proviso::CutDownDead, _) => {
            "Have it cut down dead, 30 days later, by someone trained to fell: here nothing may stay standing."
        }
        (Proviso::DeadAshBrittle, _) => {
            "Dead ash is brittle: have it felled soon, or keep everybody out from under it."
        }
        (Proviso::SproutsThreeTimes, _) => "Cut its sprouts three times a season.",
    }
}

/// A dead tree has nothing to ring.
pub const NO_RING_DEAD: &str = "There is nothing to ring: the bark is dead.";

#[cfg(test)]
mod tests {
    use calc::models::condition::Condition;
    use calc::terms::method::Method;

    #[test]
    fn every_row_of_the_table_has_words() {
        for id in Condition::IDS {
            for method in Method::ALL {
                assert!(super::rule(id, *method).is_some(), "no words for {id}");
            }
        }
        assert!(super::rule("no such row", Method::Fell).is_none());
    }
}
