//! The card: one sentence, what stands beside it, the numbers that people carry, one caution.

use super::say::Say;
use super::{outlook, phrase, region};
use crate::measure;
use crate::words::m;
use calc::answer::{Also, AlsoKind, Conditional, Outcome};
use calc::models::native::Native;
use calc::models::provisos::Proviso;
use calc::models::reach::{Outcome as Reached, Why};
use calc::terms::method::{Level, Method};
use calc::terms::region::country;
use calc::terms::tree::{Goal, TargetKind};
use calc::timing::Verdict;

/// The answer's own name, for those who listen.
pub const THE_ANSWER: &str = "The answer";
/// Buttons of a card.
pub const PRINT: &str = "Print";
/// Copies a link.
pub const SHARE: &str = "Share";
/// Copies the words, where no link can be had.
pub const COPY: &str = "Copy";
/// Puts the day and the visits into a calendar file.
pub const CALENDAR: &str = "Calendar";
/// A blank box on paper.
pub const TAG_NUMBER: &str = "Tag no.";
/// What is never done in a stop.
pub const NO_WORK: &str = "Do not ring, cut or climb it.";
/// The same beside a line.
pub const NO_TOUCH: &str = "Do not touch this tree.";
/// Whom to call about a line.
pub const CALL_LINE: &str = "Call the line’s owner";
/// Whom to call else.
pub const CALL_ARBORIST: &str = "Call a qualified arborist";

/// The word on the tag.
pub fn tag(outcome: Outcome) -> &'static str {
    match outcome {
        Outcome::Do => "Do",
        Outcome::Wait => "Wait",
        Outcome::OtherMethod => "Another way",
        Outcome::Professional => "Stop",
        Outcome::CannotTell => "Can’t tell",
    }
}

/// Under a question whose answer turns the outcome.
pub const DO_NOT_START: &str = "Do not start.";

impl Say<'_> {
    /// The card's sentence: 52 characters at most where names and dates allow it.
    pub fn card(&self) -> String {
        match self.answer.outcome {
            Outcome::Do => self.card_do(),
            Outcome::Wait => self.card_wait(),
            Outcome::OtherMethod => self.card_other(),
            Outcome::Professional => self.card_stop(),
            Outcome::CannotTell => self.card_open(),
        }
    }

    fn card_do(&self) -> String {
        let answer = self.answer;
        let Some(day) = answer.asked_day.and(answer.advised_day) else {
            return self.frame();
        };
        let day = measure::day(day);
        let ringed = self.ringed();
        if ringed != "this tree" {
            return cat!("Ring ", ringed, ".");
        }
        let line = self
            .line(Method::BarkRing)
            .filter(|line| line.level == Level::Possible);
        if let Some(line) = line {
            let against = line.reasons.iter().find(|it| it.at_most == Level::Possible);
            return cat!(
                "You may ring it, but ",
                but(against.map_or("", |it| it.rule)),
                "."
            );
        }
        match answer.timing.verdict {
            Verdict::Best => cat!("Ring this tree. On ", day, " its bark slips."),
            Verdict::OpeningTest
            | Verdict::ClosingTest
            | Verdict::TestFirst
            | Verdict::TooEarly
            | Verdict::Late
            | Verdict::Dormant
            | Verdict::Bonded
            | Verdict::Unknown => cat!("Ring it if a test patch peels on ", day, "."),
        }
    }

    fn card_wait(&self) -> String {
        let answer = self.answer;
        let day = answer
            .advised_day
            .map_or_else(|| "its bark slips".into(), measure::day_year);
        let head = answer.headline_method;
        if head != Method::BarkRing {
            return cat!("Wait until ", day, ", then ", self.card_act(head), ".");
        }
        let ringed = self.ringed();
        if ringed != "this tree" {
            return cat!("Wait until ", day, ", then ring ", ringed, ".");
        }
        cat!("Wait until ", day, ". ", self.why_not_now(), ".")
    }

    /// Why a ring is not cut on the day asked about, as a short sentence without its stop.
    fn why_not_now(&self) -> &'static str {
        let answer = self.answer;
        if self.closed_months().is_some() {
            return "Oaks must not be cut now";
        }
        let month = answer.asked_day.map(|day| chrono::Datelike::month(&day));
        if month.is_some_and(|month| self.question.tree.tighten.blocks(month)) {
            return "The group rings none now";
        }
        match answer.waits_for {
            Some("bark_not_slipping") | None => bark_now(answer.asked_verdict),
            Some(row) => because(row),
        }
    }

    /// What to do by another method, as short as it goes.
    fn card_act(&self, method: Method) -> String {
        let trained = self.answer.provisos.contains(&Proviso::TrainedToFell);
        let label = self.question.tree.herbicide == calc::terms::tree::Herbicide::Yes;
        let pro = self.answer.headline_by_professional || trained;
        match method {
            Method::BarkRing => "ring it",
            Method::SawRing => "saw a ring",
            Method::Frill if label => "frill it",
            Method::Frill => "have it frilled",
            Method::BasalBark if label => "treat its base",
            Method::BasalBark => "have its base treated",
            Method::CutStump if pro => "have it cut, the stump treated",
            Method::CutStump => "cut it, the stump treated",
            Method::PullOrDig => "pull it out",
            Method::Fell if pro => "have it felled",
            Method::Fell => "fell it",
            Method::RepeatCutting if pro => "have it cut, again and again",
            Method::RepeatCutting => "cut it again and again",
            Method::LeaveIt => "leave it",
        }
        .into()
    }

    fn card_other(&self) -> String {
        let answer = self.answer;
        let head = answer.headline_method;
        if answer.reach.hollow_alone {
            return "Leave it. A hollow tree is a home, and weak.".into();
        }
        if self.question.tree.nothing_left() {
            return "Leave it. It is dead; a ring adds nothing.".into();
        }
        let act = phrase::sentence(&self.card_act(head));
        let ring = self.line(Method::BarkRing);
        let rule = ring.and_then(|ring| {
            let lowers = ring.reasons.iter().find(|it| it.at_most == ring.level);
            lowers.map(|it| it.rule)
        });
        let size = measure::size(self.question.tree.heading().dbh.mm());
        let size = size.first(self.units());
        match rule {
            Some("under_1" | "1_to_2_5" | "thin_shrub") => {
                cat!(act, ". At ", size, " it is too thin to ring.")
            }
            Some("conifer_under_6") => cat!(act, ". At ", size, " it makes no snag."),
            Some("bark_not_slipping") => {
                cat!(act, ". ", bark_now(answer.asked_verdict), ".")
            }
            Some(rule) => cat!(act, ". ", because(rule), "."),
            None => cat!(act, "."),
        }
    }

    fn card_stop(&self) -> String {
        if self.group_stops().is_some() {
            return cat!(self.group_name(), " leaves it to a professional.");
        }
        let reach = &self.answer.reach;
        if reach.outcome == Reached::Line {
            return "A line is in reach. Go no nearer; call its owner.".into();
        }
        let height = measure::length(reach.height_m);
        let height = height.first(self.units());
        let target = self.decided().or(self.nearest());
        let far = target.and_then(|target| {
            let far = measure::length(target.distance_m?);
            Some((target.kind, far.first(self.units()).to_owned()))
        });
        match (reach.why, far) {
            (Why::WeakTree, Some((kind, far))) => {
                cat!("It is weak, and ", short(kind), " is ", far, " away.")
            }
            (Why::WeakTree, None) => "It is weak. Leave it to a professional.".into(),
            (Why::TooSteep, Some((kind, far))) => cat!(
                phrase::sentence(short(kind)),
                " is ",
                far,
                " down a steep slope."
            ),
            (Why::InZone, Some((kind, far))) => {
                let zone = measure::reach(reach.zone_m);
                let zone = zone.first(self.units());
                cat!(
                    "It can throw wood ",
                    zone,
                    ". ",
                    phrase::sentence(short(kind)),
                    " is ",
                    far,
                    " away."
                )
            }
            (_, Some((kind, far))) => cat!(
                "It can reach ",
                height,
                ". ",
                phrase::sentence(short(kind)),
                " is ",
                far,
                " away."
            ),
            (_, None) => "Leave this one to a professional.".into(),
        }
    }

    fn card_open(&self) -> String {
        let missing = &self.answer.reach.missing;
        let asked = if missing
            .iter()
            .any(|why| matches!(why, Why::ListOpen | Why::DistanceUnknown))
        {
            "What could it hit?"
        } else if self.answer.reach.line_open() {
            "Is a line in reach?"
        } else if missing.contains(&Why::HeightUnknown) {
            "Measure its height first."
        } else {
            let open = self.answer.conditional.as_ref();
            let first = open.and_then(|it| it.conditions.first());
            match first {
                Some(Conditional::NoOakWilt) => "Which state is it in?",
                Some(Conditional::WholeClone) => "Can you ring every stem?",
                Some(Conditional::SpeciesSuits) => "Which tree is it?",
                Some(Conditional::HeightUnder { .. }) => "Measure its height first.",
                Some(Conditional::NoLine { .. }) => "Is a line in reach?",
                Some(Conditional::NothingInReach { .. }) | None => "What could it hit?",
            }
        };
        cat!("We can’t tell yet. ", asked)
    }

    /// The line under the sentence, where one is owed: native here, what stands today, the best without herbicide,
    /// what kills more. 70 characters at most, two lines of a phone.
    pub fn card_next(&self) -> Option<String> {
        let answer = self.answer;
        if matches!(answer.outcome, Outcome::Professional | Outcome::CannotTell) {
            return None;
        }
        let spares = matches!(self.question.tree.goal, Goal::SpareOne(_));
        if !spares && matches!(answer.species.native, Native::Here | Native::InParts) {
            let code = self.question.region.as_deref().unwrap_or("");
            let place = match answer.species.native {
                Native::Here => region::region(code).to_owned(),
                _ => cat!("parts of ", region::region(country(code))),
            };
            return Some(cat!(
                "Native in ",
                place,
                ". Is it this tree, and must it go?"
            ));
        }
        let mut beside = answer.next_line.iter().chain(&answer.also);
        let find = |kind: AlsoKind| {
            answer
                .next_line
                .iter()
                .chain(&answer.also)
                .find(|it| it.kind == kind)
        };
        if let Some(more) = find(AlsoKind::KillsMore) {
            return Some(cat!(
                "More would die: ",
                &m::method_act(more.method),
                self.by_short(more),
                "."
            ));
        }
        if let Some(today) = find(AlsoKind::Today) {
            return Some(match today.method {
                Method::LeaveIt => "Until then leave it as it is.".into(),
                _ => cat!(
                    "Today: ",
                    &m::method_act(today.method),
                    self.by_short(today),
                    if today.take_away_or_peel {
                        ", its wood away or peeled in 3 weeks."
                    } else {
                        "."
                    }
                ),
            });
        }
        if let Some(without) = find(AlsoKind::WithoutHerbicide) {
            return Some(match without.method {
                Method::LeaveIt => "Without herbicide: leave it as it is.".into(),
                _ => cat!(
                    "Without herbicide: ",
                    &m::method_act(without.method),
                    self.by_short(without),
                    "."
                ),
            });
        }
        beside.next().map(|also| self.beside(also))
    }

    /// Who does it, in two or three words.
    fn by_short(&self, also: &Also) -> &'static str {
        if also.trained_to_fell {
            return match also.method.needs_herbicide() {
                true => " (trained to fell, licensed)",
                false => " (trained to fell)",
            };
        }
        match (also.method.needs_herbicide(), also.by_professional) {
            (true, false) if self.question.tree.herbicide == calc::terms::tree::Herbicide::Yes => {
                " (the label governs)"
            }
            (true, _) => " (licensed)",
            (false, true) => " (a professional)",
            (false, false) => "",
        }
    }

    /// The one caution of a card: a bold ask, and its reason.
    pub fn card_caution(&self) -> [String; 2] {
        let answer = self.answer;
        let reach = &answer.reach;
        let say = |ask: &str, why: &str| [ask.to_owned(), why.to_owned()];
        if answer.outcome == Outcome::Professional {
            return if reach.outcome == Reached::Line {
                say(
                    "Take every line as live.",
                    "Only the owner’s own people work near it.",
                )
            } else {
                say(
                    "Once ringed it falls in pieces,",
                    "for years, on no known day.",
                )
            };
        }
        if answer.outcome == Outcome::CannotTell {
            let height = measure::length(reach.height_m)
                .first(self.units())
                .to_owned();
            let zone = measure::reach(reach.zone_m).first(self.units()).to_owned();
            return [
                DO_NOT_START.into(),
                cat!("It can reach ", height, ", and throw wood ", zone, "."),
            ];
        }
        if let (Some(out), Some(near)) = (answer.people_out_m, self.nearest())
            && let Some(far) = near.distance_m
            && calc::models::reach::nearer(far, out)
        {
            let far = measure::length(far);
            let out = measure::reach(out);
            let ask = match near.kind {
                TargetKind::Road | TargetKind::Path => {
                    cat!(
                        "Close the ",
                        &m::reach_target_short(near.kind),
                        " as you work."
                    )
                }
                kind => cat!("Keep people from the ", &m::reach_target_short(kind), "."),
            };
            return [
                ask,
                cat!(
                    "At ",
                    far.first(self.units()),
                    " it lies inside ",
                    out.first(self.units()),
                    "."
                ),
            ];
        }
        if answer.outcome == Outcome::Wait {
            return if answer.headline_method == Method::BarkRing {
                say(
                    "Do not ring it now.",
                    "Tight bark tears, a strip stays, the tree may live.",
                )
            } else {
                say(
                    "Do not cut it before.",
                    "Its roots answer with suckers or sprouts.",
                )
            };
        }
        if answer.headline_method == Method::PullOrDig {
            return say(
                "Have buried lines marked first.",
                "You are about to open the ground.",
            );
        }
        if answer.outcome == Outcome::Do && answer.timing.verdict != Verdict::Best {
            return say("Open a test patch first.", "If it tears, stop: not today.");
        }
        let third = answer.outlook.as_ref().and_then(|it| it.seasons.last());
        if let Some(third) = third.filter(|_| answer.headline_method == Method::BarkRing)
            && third.share.likely.is_some_and(|likely| likely < 50.0)
        {
            return [
                "Fewer than half die.".into(),
                cat!(
                    phrase::sentence(&outlook::share(&third.share)),
                    " by the end of season 3."
                ),
            ];
        }
        if answer.headline_method == Method::LeaveIt && !self.drops_wood() {
            return say(
                "Look up before you stand under it.",
                "A living tree sheds limbs too.",
            );
        }
        if answer.headline_method == Method::LeaveIt {
            return say("Stay out from under it.", "It sheds limbs on no known day.");
        }
        if answer.headline_method.needs_herbicide() {
            return say(
                "The label is the law.",
                "It decides product, amount and season.",
            );
        }
        say(
            "Make sure that it is yours.",
            "Check the boundary on the ground.",
        )
    }
}

/// A kind of thing with its article, in two words.
fn short(kind: TargetKind) -> &'static str {
    match kind {
        TargetKind::Building => "a building",
        TargetKind::Road => "a road",
        TargetKind::Path => "a path",
        TargetKind::Line => "a line",
        TargetKind::PropertyLine => "a boundary",
        TargetKind::Fence => "a fence",
        TargetKind::KeepTree => "a tree to keep",
    }
}

/// What the bark does on the day asked about.
fn bark_now(verdict: Option<Verdict>) -> &'static str {
    match verdict {
        Some(Verdict::Dormant | Verdict::Unknown) | None => "Its bark is tight now",
        Some(Verdict::TooEarly | Verdict::OpeningTest) => "Its bark is mostly tight",
        Some(Verdict::Best | Verdict::TestFirst) => "Its bark slips then",
        Some(Verdict::ClosingTest | Verdict::Late) => "Its bark binds again now",
        Some(Verdict::Bonded) => "Its bark is bound now",
    }
}

/// What stands against a ring that is possible, behind "but".
pub fn but(rule: &str) -> &'static str {
    match rule {
        "ring_doubted" => "trials of it disagree",
        "1_to_2_5" => "so thin it hardly pays",
        "conifer_under_6" => "it makes no snag",
        "clone_not_known" | "suitable_clone" => "only with its whole clone",
        "unknown_species" => "its name is open",
        "oak_wilt_near" => "ask about oak wilt first",
        "sprouts_below" | "not_alone_guided" => "it often sprouts",
        _ => "something speaks against it",
    }
}

/// Why a ring is not at the head, or waits: a short sentence without its stop.
fn because(rule: &str) -> &'static str {
    match rule {
        "no_ring_to_cut" => "It has no bark ring to cut",
        "line" | "line_open" => "A line is near",
        "professional"
        | "inside"
        | "inside_over_6"
        | "inside_herbicide"
        | "inside_heaven"
        | "inside_heaven_over_6"
        | "inside_over_6_cut" => "Nothing may be left standing",
        "oak_wilt_months" => "Oaks must not be cut now",
        "oak_wilt_near" => "Oak wilt is near",
        "ash_borer" => "A ringed ash draws the borer",
        "american_elm" => "Its bark breeds elm beetles",
        "pines_near" => "Its bark breeds pine beetles",
        "unknown_species" | "unknown_species_against" => "Its name is open",
        "group_months" => "The group rings none now",
        "heaven_out_of_season" => "Herbicide suits it then",
        "heaven_stump" | "suckers" | "suckers_cut" | "suckers_base" => "Cut first, it suckers",
        "sap_flow" => "Rising sap washes it out",
        "clone_not_whole" | "suitable_clone_not_whole" => "The rest of its clone feeds it",
        "clone_not_known" | "suitable_clone" => "The clone feeds it",
        "stem_spared" => "Herbicide would reach the other",
        "not_alone" | "not_alone_guided" | "followup" | "sprouts_below" | "deep_cut_resprouts" => {
            "A ring alone makes it sprout"
        }
        "dead" | "dead_nothing_near" => "It is dead already",
        "kill_only" => "It kills more than a ring",
        _ => "A ring does not suit it",
    }
}
