//! What the tree could hit.

use super::phrase;
use super::say::Say;
use calc::models::reach::{Judged, Outcome as Reached, Why};
use calc::terms::tree::{Sign, TargetKind};

/// Reach, when nothing stops.
pub const KEEP_CLEAR: &str = "Keep clear";
/// The question that this part answers.
pub const KEEP_CLEAR_ASKED: &str = "the ground it can reach";
/// Reach.
pub const TWIN_REACH: &str = "The reach drawing as a table";
/// Reach.
pub const HEAD_REACH: [&str; 4] = ["What", "US", "Metric", "What it means"];
/// Rows of the reach table.
pub const ROW_HEIGHT: &str = "Height used";
/// The row of the first zone.
pub const ROW_LAND: &str = "Can land";
/// The row of the second zone.
pub const ROW_THROW: &str = "Can throw wood";
/// The row of the third zone.
pub const ROW_PEOPLE: &str = "Bystanders out while you work";
/// What counts, in the question of the reach.
pub const COUNTS: &str = "building, road, path, power line, property line or neighbour's tree";

/// A kind of thing with its article.
pub fn target(kind: TargetKind) -> &'static str {
    match kind {
        TargetKind::Building => "a building",
        TargetKind::Road => "a road",
        TargetKind::Path => "a path",
        TargetKind::Line => "a power or phone line",
        TargetKind::PropertyLine => "a property line or neighbour's tree",
        TargetKind::Fence => "a fence or field",
        TargetKind::KeepTree => "a tree to keep",
    }
}

/// A kind of thing on a label.
pub fn target_short(kind: TargetKind) -> &'static str {
    match kind {
        TargetKind::Building => "building",
        TargetKind::Road => "road",
        TargetKind::Path => "path",
        TargetKind::Line => "line",
        TargetKind::PropertyLine => "property line",
        TargetKind::Fence => "fence",
        TargetKind::KeepTree => "tree to keep",
    }
}

/// A kind of thing, known.
pub fn the_target(kind: TargetKind) -> String {
    cat!("the ", target_short(kind))
}

/// A sign on the tree.
pub fn sign(sign: Sign) -> &'static str {
    match sign {
        Sign::Cavity => "a cavity",
        Sign::Cracks => "cracks",
        Sign::Conks => "fungus at the base",
        Sign::HungLimbs => "hung limbs",
        Sign::LeanToward => "a lean toward a target",
        Sign::LeanAway => "a lean away",
        Sign::DeadTop => "a dead top",
        Sign::Vines => "vines into the crown",
    }
}

/// Signs in a row.
pub fn signs(list: &[Sign]) -> String {
    let words: Vec<&str> = list.iter().map(|it| sign(*it)).collect();
    phrase::row(&words)
}

/// What a target comes to, in a table.
pub fn judged(outcome: Option<Reached>, damage: bool) -> &'static str {
    match outcome {
        None if damage => "may be damaged",
        None => "outside the reach",
        Some(Reached::Clear) => "beyond 2 heights",
        Some(Reached::ClearPeopleOut) => "outside the reach; close it while working",
        Some(Reached::NotChecked) => "not checked",
        Some(Reached::Inside) => "inside: nothing may be left standing",
        Some(Reached::Professional) => "inside: a professional's tree",
        Some(Reached::Line) => "inside: call the line's owner",
    }
}

/// The heading's question of a stop: why it holds.
pub fn why(why: Why) -> &'static str {
    match why {
        Why::LineWithin => "a line is inside the reach",
        Why::LineNoDistance => "a line within reach, distance not known",
        Why::WeakTree => "the tree is weak, and something is near",
        Why::CanLand => "it can land on what stands there",
        Why::TooSteep => "the ground is very steep",
        Why::InZone => "it can throw wood that far",
        Why::SmallStem => "a small stem: leave nothing standing",
        Why::TrailTree => "a small tree beside a path that can be closed",
        Why::DistanceUnknown => "a distance is not known",
        Why::LineOpen => "the line question is open",
        Why::ListOpen => "what stands near is not said",
        Why::HeightUnknown => "the height is not known",
        Why::PeopleOut => "it may stand; people out while you work",
        Why::Nothing => "nothing that counts is near",
    }
}

/// What lies near, beside a reach that does not stop the answer.
pub struct NearestThing<'a> {
    /// What the reach comes to.
    pub outcome: Reached,
    /// The nearest thing that counts, with its distance.
    pub nearest: Option<(TargetKind, &'a str)>,
    /// The zone.
    pub zone: &'a str,
    /// Two heights.
    pub out: &'a str,
    /// Whether it lies inside the ground that is closed while anyone works.
    pub close: bool,
    /// Whether an overhead line is still asked about.
    pub line_open: bool,
    /// The asker said that nothing is in reach.
    pub none_said: bool,
}

/// What lies near, in a sentence.
pub fn clear(near: &NearestThing<'_>) -> String {
    let nearest = |kind: TargetKind, distance: &str| {
        cat!(
            phrase::sentence(&the_target(kind)),
            " is ",
            distance,
            " away, "
        )
    };
    if near.line_open {
        return cat!(
            "Whether an overhead line is within ",
            near.out,
            " is not answered yet. Until it is, do not start."
        );
    }
    match (near.outcome, near.nearest) {
        (Reached::NotChecked, _) => cat!(
            "What stands within ",
            near.out,
            " is not checked yet. Until it is, do not start."
        ),
        (Reached::ClearPeopleOut, Some((kind, distance))) => cat!(
            nearest(kind, distance),
            if first_number(distance) == first_number(near.zone) {
                "at the end of the "
            } else {
                "outside the "
            },
            near.zone,
            " in which this tree could throw wood. ",
            match kind {
                _ if !near.close => "",
                TargetKind::Road | TargetKind::Path => "Close it while you work.",
                _ => "Keep people away from it while you work.",
            }
        )
        .trim_end()
        .into(),
        (Reached::Inside, Some((kind, distance))) => cat!(
            nearest(kind, distance),
            "inside the ",
            near.zone,
            " in which this tree could throw wood. Leave nothing standing."
        ),
        (_, Some((kind, distance))) => cat!(nearest(kind, distance), "farther than that."),
        (_, None) if near.none_said => cat!(
            "You said that no ",
            COUNTS,
            " stands within ",
            near.out,
            ". This answer relies on it."
        ),
        (_, None) => cat!(
            "This holds only if no ",
            COUNTS,
            " stands within ",
            near.out,
            "."
        ),
    }
}

/// A length without the one in other units behind it.
fn first_number(length: &str) -> &str {
    length.split(" (").next().unwrap_or(length)
}

/// The zone counts from the day of treatment.
pub const FROM_TODAY: &str =
    "No path, seat, camp or parking there from the day of the work on, dead or alive.";
/// The same for a tree that is left.
pub const FROM_NOW: &str = "The zone counts now.";

/// Under the reach drawing.
pub fn reach_caption(targets: usize) -> String {
    let ring = match targets {
        0 => "",
        1 => " We don't know its direction, so the dotted ring stands for it all the way round.",
        _ => " We don't know directions, so dotted rings stand for them all the way round.",
    };
    cat!(
        "Side view above the tape, plan below it, one scale.",
        ring,
        " Person drawn 5 ft 7 in (1.7 m) tall."
    )
}

/// The ends of a zone in the key; the unit stands once.
pub fn zone(from: &str, to: &str) -> String {
    let bare = from.rsplit_once(' ').map_or(from, |(number, _)| number);
    cat!(bare, " to ", to)
}

/// In the first zone.
pub const CAN_LAND: &str = "can land here";
/// In the second.
pub const CAN_THROW: &str = "can throw wood";
/// In the third.
pub const PEOPLE_OUT: &str = "keep people out";
/// Key of the three zones.
pub const KEY_LAND: &str = "it can land here";
/// The key of the second zone.
pub const KEY_THROW: &str = "it can throw wood";
/// The key of the third zone.
pub const KEY_PEOPLE: &str = "keep people out while anyone works";

/// Heights under the plan; the second is the end of the zone.
pub fn heights(zone_over_height: f64) -> [&'static str; 3] {
    let zone = if zone_over_height > 1.75 {
        "2 heights"
    } else {
        "1½ heights"
    };
    ["1 height", zone, "2 heights"]
}

/// Ways to measure a height.
pub const HEIGHT_AID: &str = "Three ways: the length of its shadow against that of a stick; \
two angles and a distance; a stick held upright at arm's length.";

/// The list of things that are near, for a phone call.
pub fn near(list: &[String]) -> String {
    phrase::either(list)
}

/// The lead of the reach: nobody works at a tree that is left.
pub fn people_out(within: Option<&str>, zone: &str) -> String {
    match within {
        Some(within) => cat!(
            "Keep bystanders ",
            within,
            " away while you work. The ground that stays dangerous afterwards: ",
            zone,
            "."
        ),
        None => cat!("It can throw wood as far as ", zone, "."),
    }
}

/// Who works there, and how.
pub const CREW: &str = "Those who work stay more than 15 ft (4.6 m) apart, with helmets on, and nobody else is under the \
same crown.";

/// A fence, a field, a tree to keep.
pub fn may_damage(target: &str) -> String {
    cat!(phrase::sentence(target), " may be damaged.")
}

/// At the arc.
pub fn height_used(height: &str) -> String {
    cat!(height, ", the height used")
}

/// At the arc, in short.
pub fn height_used_short(height: &str) -> String {
    cat!(height, " used")
}

/// The drawing for those who do not see it.
pub fn reach_aria<'a>(used: &str, zone: &str, targets: impl Iterator<Item = &'a str>) -> String {
    let mut text = cat!("Height used ", used, ", reach ", zone);
    for target in targets {
        text = cat!(text, ", ", target);
    }
    text
}

impl Say<'_> {
    /// What lies near, in a sentence.
    pub fn near_said(&self) -> String {
        let reach = &self.answer.reach;
        let nearest = self.decided().or(self.nearest());
        let distance =
            nearest.and_then(|target| Some((target.kind, self.length(target.distance_m?))));
        clear(&NearestThing {
            outcome: reach.outcome,
            nearest: distance.as_ref().map(|(kind, m)| (*kind, m.as_str())),
            zone: &self.reach(reach.zone_m),
            out: &self.reach(reach.two_heights_m),
            close: nearest
                .and_then(|target| target.distance_m)
                .is_some_and(|m| {
                    let out = self.answer.people_out_m;
                    out.is_some_and(|out| calc::models::reach::nearer(m, out))
                }),
            line_open: reach.line_open(),
            none_said: self.question.tree.none_in_reach,
        })
    }

    /// `a path is 20 ft (6 m) away`.
    pub fn away(&self, judged: &Judged) -> String {
        match judged.distance_m {
            Some(m) => cat!(target(judged.kind), " is ", self.length(m), " away"),
            None => cat!(target(judged.kind), " is near, and how far is not known"),
        }
    }

    /// The kind of a target, known, with its distance: `the path, 100 ft (30 m)`.
    pub fn target_said(&self, judged: &Judged) -> String {
        match judged.distance_m {
            Some(m) => cat!(the_target(judged.kind), ", ", self.length(m)),
            None => cat!(the_target(judged.kind), ", distance not known"),
        }
    }
}
