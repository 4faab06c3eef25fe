//! What would change the answer: the nearest single change of each kind, found by asking the models again.

use super::calendar::{Calendar, TakenAsMet};
use super::compose::reach_at;
use super::decide::decide;
use super::facts::{Facts, Known};
use crate::answer::{Answer, Outcome};
use crate::models::height;
use crate::models::reach;
use crate::models::season::Local;
use crate::question::{Day, Question};
use crate::reference::Reference;
use crate::terms::lengths::{tenth_mm, tenth_mm_of_m};
use crate::terms::method::Method;
use crate::terms::quantity::{Dbh, M_PER_FT, MM_PER_IN, TargetDistance, TotalHeight};
use crate::terms::species::{SproutVigor, Suitability};
use crate::terms::tree::Herbicide;
use chrono::{Days, NaiveDate};
use serde::ser::SerializeStruct;
use serde::{Serialize, Serializer};

/// A single change of the question that flips the answer, found by asking again.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct Change {
    /// What changes.
    #[cfg_attr(feature = "schema", serde(flatten))]
    pub changed: Changed,
    /// The outcome then.
    pub outcome: Outcome,
    /// The method at the head then.
    pub headline_method: Method,
}

/// By hand: what the derive needs to lay one value flat in another is bytes in the browser.
impl Serialize for Change {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut flat = serializer.serialize_struct("Change", 4)?;
        let number = |key, to| (key, Some(to));
        let (field, (key, to)) = match self.changed {
            Changed::Date { .. } => ("date", ("to", None)),
            Changed::Distance { to_m } => ("distance", number("to_m", tenth_mm_of_m(to_m))),
            Changed::Height { to_m } => ("height", number("to_m", tenth_mm_of_m(to_m))),
            Changed::Herbicide { .. } => ("herbicide", ("allowed", None)),
            Changed::WholeClone { .. } => ("whole_clone", ("to", None)),
            Changed::Diameter { to_mm } => ("diameter", number("to_mm", tenth_mm(to_mm))),
        };
        flat.serialize_field("field", field)?;
        match (self.changed, to) {
            (Changed::Date { to }, _) => flat.serialize_field(key, &crate::terms::day::iso(to))?,
            (Changed::Herbicide { allowed: to } | Changed::WholeClone { to }, _) => {
                flat.serialize_field(key, &to)?;
            }
            (_, to) => flat.serialize_field(key, &to)?,
        }
        flat.serialize_field("outcome", &self.outcome)?;
        flat.serialize_field("headline_method", &self.headline_method)?;
        flat.end()
    }
}

/// What changes.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "schema",
    derive(schemars::JsonSchema, ts_rs::TS),
    serde(rename_all = "snake_case", tag = "field")
)]
pub enum Changed {
    /// Another day.
    Date {
        /// The day.
        #[cfg_attr(feature = "schema", schemars(with = "String"), ts(type = "string"))]
        to: NaiveDate,
    },
    /// All that stands near is at least so far, or as near.
    Distance {
        /// Metres.
        to_m: f64,
    },
    /// A measured height.
    Height {
        /// Metres.
        to_m: f64,
    },
    /// Herbicide by a licensed applicator, or none.
    Herbicide {
        /// Whether it is allowed then.
        allowed: bool,
    },
    /// Whether the whole clone can be ringed.
    WholeClone {
        /// It can.
        to: bool,
    },
    /// Another diameter.
    Diameter {
        /// Millimetres.
        to_mm: f64,
    },
}

/// Days between two looks; the last step is found by halving.
const STEP: u64 = 4;
/// Steps of distance, height and diameter looked at on each side.
const STEPS: usize = 16;

/// Searches in the order date, distance, measured height, herbicide, clone, diameter.
/// Each change found was asked: the outcome or the headline is another one. The calendar reaches `change_days` to both
/// sides of the question's day; it and what is known are those that the answer was made with.
pub(super) fn search(
    reference: &'static Reference,
    question: &Question,
    local: &Local,
    (calendar, known): (Calendar, Known),
    answer: &Answer,
) -> Vec<Change> {
    let constants = &reference.constants.answer;
    let asked = Asked {
        reference,
        question,
        local,
        answer,
        calendar,
        known,
        height: height::for_reach(&reference.heights(), &question.tree),
    };
    let mut found: Vec<Change> = [
        date(&asked, constants.change_days as u64),
        distance(&asked),
        measured(&asked),
        herbicide(&asked),
        clone(&asked),
    ]
    .into_iter()
    .flatten()
    .collect();
    // Another size is another tree: it tells something only where it is near, or where nothing else does.
    let now = question.tree.heading().dbh.mm();
    found.extend(diameter(&asked).filter(|change| match change.changed {
        Changed::Diameter { to_mm } => {
            found.is_empty() || libm::fabs(to_mm - now) <= now * constants.change_near_size
        }
        _ => true,
    }));
    found
}

/// The question that was asked, its answer, and what holds for every changed question too.
struct Asked<'a> {
    reference: &'static Reference,
    question: &'a Question,
    local: &'a Local,
    answer: &'a Answer,
    calendar: Calendar,
    known: Known,
    height: height::ForReach,
}

impl Asked<'_> {
    /// Outcome and headline of a changed question, where they are other ones, by its height and its days.
    fn again(
        &self,
        other: &Question,
        height: &height::ForReach,
        calendar: &Calendar,
    ) -> Option<Flip> {
        let reach = reach_at(self.reference, &other.tree, height);
        let met = TakenAsMet::default();
        let around = (&reach, calendar);
        let mut facts = Facts::new(self.reference, other, self.local, around, met, &self.known);
        facts.head_alone = true;
        let decision = decide(&facts);
        let (outcome, headline) = (decision.outcome, decision.headline);
        // Where an answer stops or waits for a fact, its headline is no advice: only the outcome counts.
        let advice = !matches!(outcome, Outcome::Professional | Outcome::CannotTell);
        let flips =
            outcome != self.answer.outcome || advice && headline != self.answer.headline_method;
        flips.then_some((outcome, headline))
    }

    /// The same where the change leaves the height as it is.
    fn as_tall(&self, other: &Question) -> Option<Flip> {
        self.again(other, &self.height, &self.calendar)
    }

    /// The same where it doesn't.
    fn with_height(&self, other: &Question) -> Option<Flip> {
        if !reach::looks_at_height(&self.reference.constants.reach, &other.tree) {
            return self.as_tall(other);
        }
        let height = height::for_reach(&self.reference.heights(), &other.tree);
        self.again(other, &height, &self.calendar)
    }
}

type Flip = (Outcome, Method);

fn change(changed: Changed, flip: Flip) -> Change {
    Change {
        changed,
        outcome: flip.0,
        headline_method: flip.1,
    }
}

/// Another day, at most `days` before or after the asked one.
fn date(asked: &Asked<'_>, days: u64) -> Option<Change> {
    let Day::On(day) = asked.question.day else {
        return None;
    };
    let mut other = asked.question.clone();
    let mut on = |to: NaiveDate| {
        other.day = Day::On(to);
        if asked.question.season().same_from(to) {
            return asked.as_tall(&other);
        }
        let calendar = Calendar::new(
            asked.reference,
            &other,
            asked.local,
            TakenAsMet::default(),
            0,
        );
        asked.again(&other, &asked.height, &calendar)
    };
    let shift = |by: u64, later: bool| {
        if later {
            day.checked_add_days(Days::new(by))
        } else {
            day.checked_sub_days(Days::new(by))
        }
    };
    let mut by = STEP;
    while by <= days {
        for later in [true, false] {
            if let Some(to) = shift(by, later)
                && on(to).is_some()
            {
                // The nearest day of the step that flips it.
                let nearest = (by - STEP + 1..=by).find_map(|by| {
                    let to = shift(by, later)?;
                    Some((to, on(to)?))
                })?;
                return Some(change(Changed::Date { to: nearest.0 }, nearest.1));
            }
        }
        by += STEP;
    }
    None
}

/// All that counts moved to one distance: nearer or farther, in steps of a tenth.
fn distance(asked: &Asked<'_>) -> Option<Change> {
    let targets = &asked.question.tree.targets;
    let nearest = targets
        .iter()
        .filter(|target| target.kind.counts())
        .filter_map(|target| target.distance.map(|distance| distance.m()))
        .min_by(f64::total_cmp)?;
    let mut other = asked.question.clone();
    let mut at = |m: f64| {
        let to = TargetDistance::new(m)?;
        for (target, now) in other.tree.targets.iter_mut().zip(targets) {
            target.distance = now.distance.map(|distance| {
                let farther = m > nearest;
                let moves = if farther {
                    distance.m() < m
                } else {
                    distance.m() == nearest
                };
                if moves && now.kind.counts() {
                    to
                } else {
                    distance
                }
            });
        }
        asked.as_tall(&other)
    };
    let start = nearest.max(3.0);
    let (m, flip) = nearest_flip(nearest, start * 0.12, M_PER_FT, &mut at)?;
    Some(change(Changed::Distance { to_m: m }, flip))
}

/// A measured height, lower or higher than the one used.
fn measured(asked: &Asked<'_>) -> Option<Change> {
    // A height that the page would ask about again is no advice, nor one under the range of such trees.
    let (low, high) = height::likely_m(&asked.reference.heights(), &asked.question.tree);
    let low = libm::fmax(low, asked.answer.height.low_m.unwrap_or(0.0));
    let mut other = asked.question.clone();
    other.tree.height_confirmed = true;
    let mut at = |m: f64| {
        if !(low..=high).contains(&m) {
            return None;
        }
        other.tree.height = Some(TotalHeight::new(m)?);
        asked.with_height(&other)
    };
    let used = asked.answer.height.hazard_m;
    let (m, flip) = nearest_flip(used, used * 0.08, M_PER_FT, &mut at)?;
    Some(change(Changed::Height { to_m: m }, flip))
}

fn herbicide(asked: &Asked<'_>) -> Option<Change> {
    let mut other = asked.question.clone();
    let allowed = matches!(other.tree.herbicide, Herbicide::No);
    other.tree.herbicide = if allowed {
        Herbicide::Licensed
    } else {
        Herbicide::No
    };
    let flip = asked.as_tall(&other)?;
    Some(change(Changed::Herbicide { allowed }, flip))
}

fn clone(asked: &Asked<'_>) -> Option<Change> {
    let species = asked.question.tree.species;
    let clonal = species.suckering == SproutVigor::Strong
        && matches!(
            species.suitability,
            Suitability::Conditional | Suitability::Suitable
        );
    if !clonal {
        return None;
    }
    let mut other = asked.question.clone();
    let to = other.tree.whole_clone != Some(true);
    other.tree.whole_clone = Some(to);
    let flip = asked.as_tall(&other)?;
    Some(change(Changed::WholeClone { to }, flip))
}

/// Another diameter of the largest stem.
fn diameter(asked: &Asked<'_>) -> Option<Change> {
    let stems = &asked.question.tree.stems;
    let now = asked.question.tree.heading().dbh;
    let mut other = asked.question.clone();
    let most = asked.reference.constants.answer.ask_trunk_mm.max(now.mm());
    let mut at = |mm: f64| {
        // A trunk that would be asked about again is no advice.
        let to = Dbh::new(mm).filter(|to| to.mm() <= most)?;
        for (stem, _) in other
            .tree
            .stems
            .iter_mut()
            .zip(stems)
            .filter(|(_, stem)| stem.dbh == now)
        {
            stem.dbh = to;
            // A measured bark stays as it is; a stem too thin for it is no question.
            if stem.bark.is_some_and(|bark| bark.mm() * 2.0 >= mm) {
                return None;
            }
        }
        asked.with_height(&other)
    };
    let (mm, flip) = nearest_flip(now.mm(), now.mm() * 0.08, MM_PER_IN / 4.0, &mut at)?;
    Some(change(Changed::Diameter { to_mm: mm }, flip))
}

/// The nearest value on either side that flips the answer, to within `fine`; it is itself a value that flips.
fn nearest_flip(
    from: f64,
    step: f64,
    fine: f64,
    at: &mut dyn FnMut(f64) -> Option<Flip>,
) -> Option<(f64, Flip)> {
    // Steps grow, so that a stop far inside the reach finds its way out too.
    let off = |count: usize| step * (count * (count + STEPS)) as f64 / (1 + STEPS) as f64;
    for count in 1..=STEPS {
        for side in [1.0, -1.0] {
            let far = from + side * off(count);
            if far <= 0.0 {
                continue;
            }
            if let Some(mut flip) = at(far) {
                let (mut inner, mut outer) = (from + side * off(count - 1), far);
                while libm::fabs(outer - inner) > fine {
                    let middle = (inner + outer) / 2.0;
                    match at(middle) {
                        Some(found) => (outer, flip) = (middle, found),
                        None => inner = middle,
                    }
                }
                return Some((outer, flip));
            }
        }
    }
    None
}
