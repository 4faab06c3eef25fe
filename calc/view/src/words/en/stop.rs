//! A stop: why a professional is asked for, whom to call, what to say on the phone.

use super::say::Say;
use super::{phrase, reach};
use crate::measure;
use crate::words::m;
use calc::models::reach::Why;

/// Reach, when it stops.
pub const WHY: &str = "Why";
/// On the phone.
pub const SAY: &str = "Say this on the phone";
/// Its rows.
pub const WHAT_IT_IS: &str = "What";
/// The row of its size.
pub const HOW_BIG: &str = "Size";
/// The row of what stands near.
pub const COULD_HIT: &str = "Near";
/// Folded numbers.
pub const FOR_PROFESSIONAL: &str = "Numbers to hand to your professional";
/// Without touching the tree.
pub const TODAY: &str = "You can still";
/// The same beside a line.
pub const UNTIL_THEY_COME: &str = "Until they come";
/// Numbers for a professional.
pub const HEAD_VALUE: [&str; 3] = ["What", "Value", "Standing"];
/// Rows for a professional.
pub const ROW_BARK: &str = "Bark, one side";
/// The row of the crown.
pub const ROW_CROWN: &str = "Crown across";
/// The row of the height.
pub const ROW_HEIGHT: &str = "Height";
/// The row of the dates.
pub const ROW_SLIPS: &str = "Bark slips";
/// The row of the wish.
pub const ROW_WISH: &str = "Wish of the owner";
/// What the owner wishes.
pub const WISH_SNAG: &str = "leave a snag, as tall as they judge right";
/// The same where nothing need stand.
pub const WISH_DEAD: &str = "the tree dead; nothing need stay standing";
/// In the owner's words.
pub const YOUR_WORDS: &str = "your words";

/// An estimate with its range.
pub fn estimated_from(low: &str, high: &str) -> String {
    if low == high {
        return "estimated".into();
    }
    cat!("estimated, ", low, " to ", high)
}

/// From the model.
pub const MODEL: &str = "from climate or leaf-out, give or take 2 to 3 weeks";
/// Near a line, without touching it.
pub const TODAY_LINE: [&str; 4] = [
    "Stay out from under it, and keep others out.",
    "Look from a distance: which line, which pole number, does a branch touch?",
    "Call the line's owner, and say what you see.",
    "Hang the tag where people come from, so that the next person stops too.",
];
/// Measuring helps.
pub const TODAY_MEASURE: &str = "Measure the height.";
/// Whatever the reason of the stop.
pub const TODAY_ANY: [&str; 3] = [
    "Ask whether what stands near can move.",
    "Take pictures of the whole tree, its base and what it could hit.",
    "Hang the tag, so that the next person stops too.",
];
/// In place of what a stop is for, where the group's size makes it one.
pub const OWN_RULE: &str = "the group's own rule";

impl Say<'_> {
    /// What it could hit, for a phone call.
    pub fn could_hit(&self) -> String {
        let mut list: Vec<String> = self
            .answer
            .reach
            .targets
            .iter()
            .map(|judged| match judged.distance_m {
                Some(m) => cat!(&m::reach_target(judged.kind), ", ", self.length(m), " away"),
                None => cat!(&m::reach_target(judged.kind), ", distance not known"),
            })
            .collect();
        // The worst and nearest stand first, so what reads alike stands together.
        list.dedup();
        if list.is_empty() {
            return "Not checked yet: they will look.".into();
        }
        cat!(phrase::sentence(&list.join("; ")), ".")
    }

    /// What it is, for a phone call.
    pub fn what_it_is(&self) -> String {
        let q = self.question;
        let stems = if q.tree.stems.len() == 1 {
            "one stem".to_owned()
        } else {
            cat!(phrase::small(q.tree.stems.len()), " stems")
        };
        let signs_said = if q.tree.signs.is_empty() {
            String::new()
        } else {
            cat!(", with ", reach::signs(&q.tree.signs))
        };
        cat!(
            phrase::sentence(q.tree.species.name),
            " (",
            q.tree.species.scientific,
            "), ",
            &m::fields_life(q.tree.condition),
            ", ",
            stems,
            signs_said,
            "."
        )
    }

    /// How big it is, for a phone call.
    pub fn how_big(&self) -> String {
        let height = &self.answer.height;
        let tall = if height.measured {
            cat!("Height measured, ", self.length(height.hazard_m))
        } else {
            cat!(
                "Height not measured; we used ",
                self.length(height.hazard_m)
            )
        };
        cat!(
            measure::size(self.question.tree.largest().dbh.mm()).text(self.units()),
            " across. ",
            tall,
            "."
        )
    }

    /// The target, its reach and what of both calls for a professional.
    pub(super) fn why_professional(&self) -> String {
        if let Some(own) = self.group_stops() {
            return own;
        }
        let reach = &self.answer.reach;
        let Some(judged) = self.decided() else {
            return self.why_weak();
        };
        match reach.why {
            Why::LineWithin => cat!(
                self.away(judged),
                "; this tree can reach ",
                self.reach(judged.zone_m)
            ),
            Why::LineNoDistance => {
                "a power or phone line is within reach, and how far is not known".into()
            }
            Why::TooSteep => {
                let slope = judged
                    .index
                    .and_then(|at| self.question.tree.targets.get(at)?.slope)
                    .map_or(0.0, |slope| slope.percent());
                cat!(
                    self.away(judged),
                    ", down a slope of ",
                    measure::percent(slope),
                    " in 100"
                )
            }
            Why::InZone => cat!(
                self.away(judged),
                ", inside the ",
                self.reach(judged.zone_m),
                " in which it can throw wood, and only felling is left"
            ),
            _ => cat!(
                self.away(judged),
                "; a tree this tall can reach ",
                self.length(reach.height_m)
            ),
        }
    }

    /// Weak points, and what is near.
    fn why_weak(&self) -> String {
        let near = match self.nearest() {
            Some(target) => self.away(target),
            None => "what it could hit is not checked".into(),
        };
        cat!(
            "it has ",
            reach::signs(&self.question.tree.signs),
            ", and ",
            near
        )
    }
}
