//! How sure the answer is, what would change it, and trees that look like this one.

use super::phrase;
use super::say::Say;
use crate::measure;
use crate::words::m;
use calc::answer::{Change, Changed, Outcome};
use calc::terms::cite::Grade;
use calc::terms::method::Method;

/// Grades and changes.
pub const HOW_SURE: &str = "How sure";
/// The question that this part answers.
pub const HOW_SURE_ASKED: &str = "and what would change it";
/// Look-alikes.
pub const IS_IT: &str = "Is it this tree?";
/// The question that this part answers.
pub const IS_IT_ASKED: &str = "the mark that tells";
/// What would change it.
pub const WHAT_CHANGES: &str = "What would change this answer.";
/// Nothing found.
pub const NOTHING_CHANGES: &str =
    "No single change of day, distance, height, herbicide or size near these values does.";
/// What the answer rests on.
pub const SURE_WIDTH: &str = "Ring width";
/// The row of the dates.
pub const SURE_DATES: &str = "Slip dates";
/// The row of the height.
pub const SURE_HEIGHT: &str = "Height";
/// The row of the reach.
pub const SURE_REACH: &str = "Reach, 1 to 2 heights";
/// The row of the minutes.
pub const SURE_MINUTES: &str = "Minutes";
/// The row of the outlook.
pub const SURE_DEATHS: &str = "Share that dies";
/// The row of the species.
pub const SURE_RESPONSE: &str = "How this species responds";
/// Beside the ring width.
pub const WIDTHS_DIFFER: &str = "; published widths run from 1 in (2.5 cm) to one full trunk";
/// Behind the range of a height that was not measured.
pub const WORTH_MEASURING: &str =
    "; few stand above the height used, most far below it: measuring is worth it";
/// Beside the reach.
pub const REACH_SOURCES: &str = "; slope and small stems are our own assumption";
/// Beside the outlook.
pub const OUTLOOK_OWN: &str = "; counted on this species";
/// Beside the outlook of a class.
pub const OUTLOOK_CLASS: &str = "; counted on like trees, the rest is our own assumption";

/// Give or take.
pub fn take_days(days: f64) -> String {
    cat!("; give or take ", crate::measure::plain(days, 0), " days")
}

/// Rows of a height.
pub fn rows_from(low: &str, high: &str) -> String {
    cat!("; eight trees in ten stand ", low, " to ", high)
}

/// An unknown species.
pub const UNKNOWN_NAME: &str = "You could not name it. Take a twig with leaf, bud and fruit to someone who can, before you kill it.";
/// The worst mistake.
pub const MISTAKE: &str =
    "Killing a native tree by mistake is the worst error here. Look for the mark first.";
/// Folded look-alikes.
pub const MORE_ALIKE: &str = "More trees like it";
/// Behind a native look-alike.
pub const NATIVE: &str = " (native)";

/// How well a value is known.
pub fn grade(grade: Grade) -> &'static str {
    match grade {
        Grade::Measured => "measured by you",
        Grade::Published => "published",
        Grade::Related => "related trees",
        Grade::Derived => "worked out from published numbers",
        Grade::Secondary => "quoted elsewhere",
        Grade::Practice => "field practice",
        Grade::Assumption => "our own assumption",
        Grade::Memory => "from memory, no source",
    }
}

impl Say<'_> {
    /// A single change that flips the answer.
    pub fn change(&self, change: &Change) -> String {
        let units = self.units();
        let largest = self.question.tree.largest().dbh.mm();
        let more =
            |more: bool, value: String| cat!(value, if more { " or more" } else { " or less" });
        let what = match change.changed {
            Changed::Date { to } => cat!("on ", measure::day_year(to)),
            Changed::Distance { to_m } => {
                let nearest = self.nearest().and_then(|target| target.distance_m);
                let nearest = nearest.unwrap_or(0.0);
                let m = self.length(to_m);
                if to_m > nearest {
                    cat!("with all that counts at least ", m, " away")
                } else {
                    cat!("with something only ", m, " away")
                }
            }
            Changed::Height { to_m } => cat!(
                "with a measured height of ",
                more(to_m > self.answer.height.hazard_m, self.length(to_m))
            ),
            Changed::Herbicide { allowed: true } => {
                "with herbicide by a licensed applicator".into()
            }
            Changed::Herbicide { allowed: false } => "without herbicide".into(),
            Changed::WholeClone { to: true } => "if every stem of the clone can be ringed".into(),
            Changed::WholeClone { to: false } => "if part of the clone can't be ringed".into(),
            Changed::Diameter { to_mm } => cat!(
                "with a trunk of ",
                more(to_mm > largest, measure::size(to_mm).text(units)),
                " across"
            ),
        };
        cat!(
            phrase::sentence(&what),
            ": ",
            self.then(change.outcome, change.headline_method),
            "."
        )
    }

    /// Another answer in a few words.
    pub(super) fn then(&self, outcome: Outcome, method: Method) -> String {
        match outcome {
            Outcome::Do => "ring it".into(),
            Outcome::Wait if method == Method::BarkRing => "wait, then ring it".into(),
            Outcome::Wait => cat!("wait, then ", &m::method_act(method)),
            Outcome::OtherMethod => m::method_act(method).into(),
            Outcome::Professional => "leave it to a professional".into(),
            Outcome::CannotTell => "we could not tell".into(),
        }
    }
}
