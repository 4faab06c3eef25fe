//! The numbers of a card: their names, and what stands below each.

use super::say::Say;
use calc::models::provisos::Proviso;
use calc::terms::method::Method;

/// The better width.
pub const RING: &str = "Ring, better";
/// Minutes.
pub const WORK: &str = "Work";
/// Days that are left of the stretch.
pub const DAYS_LEFT: &str = "Good days left";
/// Days of a stretch.
pub const GOOD_DAYS: &str = "Good days";
/// The stretch to wait for.
pub const NEXT: &str = "Next good day";
/// Bystanders.
pub const PEOPLE: &str = "Keep people";
/// Who may do it.
pub const WHO: &str = "Who";
/// The best time.
pub const BEST: &str = "Best when";
/// How far it reaches.
pub const REACH: &str = "It can reach";
/// The trunk.
pub const TRUNK: &str = "Trunk";
/// What to ask for.
pub const ASK: &str = "Ask for";
/// The ground that stays dangerous.
pub const KEEP_OUT: &str = "Stay out";
/// What is to be done to a sound tree that is left.
pub const TO_DO: &str = "To do";
/// Nothing.
pub const NOTHING: &str = "nothing";
/// What becomes of it.
pub const LIVES_ON: &str = "it lives on";
/// When to look again.
pub const LOOK: &str = "Look again";
/// Minutes.
pub const MIN: &str = "min";
/// Hours.
pub const HOURS: &str = "h";
/// Nobody measured it.
pub const NOT_TIMED: &str = "no data";
/// By whom it was not.
pub const BY_NOBODY: &str = "nobody timed it";
/// What a professional is asked for.
pub const A_CHECK: &str = "a check";
/// How.
pub const IN_WRITING: &str = "in writing";
/// Every year.
pub const YEARLY: &str = "yearly";
/// And at once after wind.
pub const AFTER_STORMS: &str = "and after storms";
/// Where a test decides.
pub const TEST: &str = "test";
/// What is tested.
pub const A_PATCH: &str = "a patch first";
/// No month has them.
pub const NONE: &str = "none";
/// In this table.
pub const IN_A_YEAR: &str = "in a usual year";

/// A range in short: `6 to 15; in all 40`.
pub fn minutes_below(low: &str, high: &str, whole: Option<&str>) -> String {
    match whole {
        Some(whole) => cat!(low, " to ", high, "; in all ", whole),
        None => cat!(low, " to ", high),
    }
}

/// The end of the stretch that begins on the day above: `to 26 June 2028`.
pub fn until(day: &str) -> String {
    cat!("to ", day)
}

/// The least width in the reader's unit, behind the better one in the other: `37 cm, least 6 in`.
pub fn least(other: &str, least: &str) -> String {
    cat!(other, ", least ", least)
}

/// Below the people's distance.
pub fn as_you_work(other: &str) -> String {
    cat!(other, ", as you work")
}

/// Below the height used.
pub fn height_below(other: &str, measured: bool) -> String {
    cat!(
        other,
        if measured {
            ", measured"
        } else {
            ", estimated"
        }
    )
}

/// Below a distance.
pub fn away(other: &str) -> String {
    cat!(other, " away")
}

/// Below the trunk.
pub fn across(other: &str) -> String {
    cat!(other, " across")
}

/// From the day of the work on.
pub fn from_now(other: &str) -> String {
    cat!(other, ", from now on")
}

/// The best time of a method in two short lines, each as long as a number to carry; tree-of-heaven has months of its own.
pub fn best_when(method: Method, heaven: bool, south: bool) -> [&'static str; 2] {
    match method {
        Method::Frill | Method::BasalBark if heaven && south => ["15 Jan on", "to 15 April"],
        Method::Frill | Method::BasalBark if heaven => ["15 July on", "to 15 October"],
        Method::BarkRing => ["in season", "while bark slips"],
        Method::SawRing => ["any month", "slower than a peel"],
        Method::Frill => ["autumn", "not in sap flow"],
        Method::BasalBark => ["dry bark", "any month"],
        Method::CutStump => ["any month", "not in sap flow"],
        Method::PullOrDig => ["wet soil", "any month"],
        Method::Fell => ["any month", "in still weather"],
        Method::RepeatCutting => ["3 a year", "for 3 years or more"],
        Method::LeaveIt => ["any day", "nothing to do"],
    }
}

impl Say<'_> {
    /// Who does it, as a number to carry: in a word, and with what.
    pub fn card_who(&self) -> [&'static str; 2] {
        let answer = self.answer;
        let head = answer.headline_method;
        if answer.provisos.contains(&Proviso::TrainedToFell) {
            return ["trained", "to fell trees"];
        }
        match (head.needs_herbicide(), answer.headline_by_professional) {
            (_, true) => ["arborist", "or a like expert"],
            (true, false) if self.question.tree.herbicide == calc::terms::tree::Herbicide::Yes => {
                ["you", "as the label says"]
            }
            (true, false) => ["licensed", "applicator"],
            (false, false) => ["you", tools(head)],
        }
    }
}

/// What is in the hand.
fn tools(method: Method) -> &'static str {
    match method {
        Method::BarkRing => "with a bark spud",
        Method::SawRing | Method::Fell => "with a saw",
        Method::PullOrDig => "lever or spade",
        Method::RepeatCutting | Method::CutStump => "loppers or saw",
        Method::Frill => "with a hatchet",
        Method::BasalBark => "with a sprayer",
        Method::LeaveIt => "with your eyes",
    }
}
