//! The days of an earlier plan, from its plan.json.

use calc::question::read_day;
use calc_plan::{Kept, KeptTree, PlanFile};
use chrono::NaiveDate;
use serde_json::{Value, json};

/// The version that is read.
const VERSION: u64 = 1;

/// The days of each tree of a plan.
#[must_use]
pub fn kept_of(plan: &PlanFile) -> Kept {
    let day = |of: &Option<String>| read_day(of.as_deref()?).ok();
    let trees = plan.trees.iter().map(|tree| {
        let kept = KeptTree {
            day: day(&tree.day),
            visits: tree.visits.iter().map(|visit| day(&visit.day)).collect(),
            value: tree.value,
        };
        (tree.tree_id.clone(), kept)
    });
    Kept(trees.collect())
}

/// What [`kept_in`] needs of a plan: its days alone.
#[must_use]
pub fn days_of(plan: &PlanFile) -> Value {
    let trees = plan.trees.iter().map(|tree| {
        let visits = tree.visits.iter().map(|visit| json!({ "day": visit.day }));
        let visits: Vec<Value> = visits.collect();
        json!({ "tree_id": tree.tree_id, "day": tree.day, "value": tree.value, "visits": visits })
    });
    json!({ "version": VERSION, "trees": trees.collect::<Vec<Value>>() })
}

/// The days of each tree; none where the text is no plan of this version.
#[must_use]
pub fn kept(text: &str) -> Option<Kept> {
    kept_in(&serde_json::from_str(text.trim_start_matches('\u{feff}')).ok()?)
}

/// The same of a text that was read.
#[must_use]
pub fn kept_in(plan: &Value) -> Option<Kept> {
    if plan["version"].as_u64() != Some(VERSION) {
        return None;
    }
    let day = |of: &Value| -> Option<NaiveDate> { read_day(of["day"].as_str()?).ok() };
    let mut kept = Kept::default();
    for tree in plan["trees"].as_array()? {
        let visits = tree["visits"].as_array().map_or(&[][..], Vec::as_slice);
        kept.0.insert(
            tree["tree_id"].as_str()?.to_owned(),
            KeptTree {
                day: day(tree),
                visits: visits.iter().map(day).collect(),
                value: tree["value"].as_f64().unwrap_or(f64::NAN),
            },
        );
    }
    Some(kept)
}
