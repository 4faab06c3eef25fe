//! An earlier plan: its days stay unless something forces them.

use crate::list_tree::ListTree;
use crate::property::Property;
use chrono::NaiveDate;
use std::collections::BTreeMap;

/// A tree of an earlier plan.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct KeptTree {
    /// Its work day; none where it had none.
    pub day: Option<NaiveDate>,
    /// The work day of each of its visits that cost minutes, in their order.
    pub visits: Vec<Option<NaiveDate>>,
    /// The day of its ring, as the plan has it from what was found at its last visit, and the day of that visit.
    pub found: Option<(Option<NaiveDate>, NaiveDate)>,
    /// What it was worth: one that is worth more or less now has changed.
    pub value: f64,
}

/// The days of an earlier plan.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Kept {
    /// By tag.
    pub trees: BTreeMap<String, KeptTree>,
    /// What its walks were multiplied by: they stay charged so, since all minutes would move with them.
    pub walk_factor: Option<f64>,
}

/// The days of a tree in an earlier plan, by place in [`Property::days`].
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct KeptDays {
    /// Its work day.
    pub day: usize,
    /// Those of its visits.
    pub visits: Vec<Option<usize>>,
}

/// What an earlier plan had for a tree.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum EarlierDays {
    /// It was not in the list, or has changed since: it is offered a place.
    New,
    /// It was left out.
    Out,
    /// It had these days.
    On(KeptDays),
}

impl KeptTree {
    /// The day on which it was ringed, as far as the earlier plan tells: its work day where that lies behind us and behind
    /// the visit that is known, else the ring that was looked at there.
    #[must_use]
    pub fn ringed_before(&self, today: NaiveDate) -> Option<NaiveDate> {
        let looked_on = self.found.map(|(_, looked_on)| looked_on);
        let worked = self
            .day
            .filter(|day| *day <= today && looked_on.is_none_or(|looked_on| *day > looked_on));
        worked.or_else(|| self.found.and_then(|(ringed_on, _)| ringed_on))
    }
}

impl Kept {
    /// Whether there is no earlier plan.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.trees.is_empty()
    }

    /// What each tree of a property had; `place` is the place of each tree of the list in the property.
    pub(crate) fn days(
        &self,
        property: &Property,
        trees: &[ListTree],
        place: &[Option<usize>],
    ) -> Vec<EarlierDays> {
        let on = |day: NaiveDate| property.day_at(day);
        let mut before = vec![EarlierDays::New; property.trees.len()];
        for (tree, at) in trees.iter().zip(place) {
            let (Some(at), Some(kept)) = (at, self.trees.get(&tree.tree_id)) else {
                continue;
            };
            before[*at] = match kept.day.map(on) {
                None if kept.value == property.trees[*at].value => EarlierDays::Out,
                // It has changed, or its day is no work day any more.
                None | Some(None) => EarlierDays::New,
                Some(Some(day)) => EarlierDays::On(KeptDays {
                    day,
                    visits: kept.visits.iter().map(|day| day.and_then(on)).collect(),
                }),
            };
        }
        before
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_ring_that_was_looked_at_is_known_in_the_next_plan_too() {
        let day = |text: &str| text.parse::<NaiveDate>().expect("a day");
        let today = day("2031-07-01");
        let tree = |on: Option<&str>, found: Option<(&str, &str)>| KeptTree {
            day: on.map(day),
            found: found.map(|(ring, looked)| (Some(day(ring)), day(looked))),
            ..KeptTree::default()
        };
        let looked = Some(("2027-05-08", "2029-07-20"));
        for (on, found, ring) in [
            // A work day behind us, one that is still to come, none.
            (Some("2031-05-10"), None, Some("2031-05-10")),
            (Some("2031-08-02"), None, None),
            (None, None, None),
            // The ring that held has no day in the next plan; one that failed is made again on its new day.
            (None, looked, Some("2027-05-08")),
            (Some("2031-05-10"), looked, Some("2031-05-10")),
            (Some("2031-08-02"), looked, Some("2027-05-08")),
            // A day before the look is not the ring that the look asks for.
            (Some("2029-05-12"), looked, Some("2027-05-08")),
        ] {
            let before = tree(on, found).ringed_before(today);
            assert_eq!(before, ring.map(day), "{on:?} {found:?}");
        }
    }
}
