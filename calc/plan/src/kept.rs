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
    /// What it was worth: one that is worth more or less now has changed.
    pub value: f64,
}

/// The days of an earlier plan, by tag.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Kept(pub BTreeMap<String, KeptTree>);

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

impl Kept {
    /// Whether there is no earlier plan.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.0.is_empty()
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
            let (Some(at), Some(kept)) = (at, self.0.get(&tree.tree_id)) else {
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
