//! The days of an earlier plan, from its plan.json.

use calc::question::read_day;
use calc_plan::{Kept, KeptTree, PlanFile};
use chrono::NaiveDate;
use serde_json::{Value, json};

/// The version that is read.
const VERSION: u64 = 1;

/// What walks may be multiplied by; anything else was no plan's.
const WALK_FACTOR: core::ops::RangeInclusive<f64> = 0.01..=100.0;

/// The days of each tree of a plan: what [`kept`] reads in its file.
#[must_use]
pub fn kept_of(plan: &PlanFile) -> Kept {
    let read = |day: &Option<String>| -> Option<NaiveDate> { read_day(day.as_deref()?).ok() };
    let trees = plan.trees.iter().map(|tree| {
        let visits = tree.visits.iter().map(|visit| read(&visit.day));
        let days = KeptTree {
            day: read(&tree.day),
            visits: visits.collect(),
            found: None,
            value: tree.value,
        };
        (tree.tree_id.clone(), days)
    });
    let factor = plan.walk.as_ref().map(|walk| walk.factor);
    let mut kept = Kept {
        trees: trees.collect(),
        walk_factor: factor.filter(|it| WALK_FACTOR.contains(it)),
    };
    for found in plan.after.iter().flat_map(|after| &after.found) {
        let visited_on = read_day(&found.visited_on).ok();
        looked(
            &mut kept,
            &found.tree_id,
            read(&found.ringed_on),
            visited_on,
        );
    }
    kept
}

/// Takes the ring of a tree as it was looked at, where that is its last visit.
fn looked(kept: &mut Kept, tag: &str, ringed_on: Option<NaiveDate>, visited_on: Option<NaiveDate>) {
    let (Some(tree), Some(visited_on)) = (kept.trees.get_mut(tag), visited_on) else {
        return;
    };
    if tree.found.is_none_or(|(_, before)| before <= visited_on) {
        tree.found = Some((ringed_on, visited_on));
    }
}

/// What [`kept_in`] needs of a plan: its days and those of rings that were looked at.
#[must_use]
pub fn days_of(plan: &PlanFile) -> Value {
    let trees = plan.trees.iter().map(|tree| {
        let visits = tree.visits.iter().map(|visit| json!({ "day": visit.day }));
        let visits: Vec<Value> = visits.collect();
        json!({ "tree_id": tree.tree_id, "day": tree.day, "value": tree.value, "visits": visits })
    });
    let found = plan.after.iter().flat_map(|after| &after.found).map(|found| {
        json!({ "tree_id": found.tree_id, "visited_on": found.visited_on, "ringed_on": found.ringed_on })
    });
    let after = json!({ "found": found.collect::<Vec<Value>>() });
    json!({ "version": VERSION, "trees": trees.collect::<Vec<Value>>(), "after": after,
        "walk": plan.walk.as_ref().map(|walk| json!({ "factor": walk.factor })) })
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
    let read = |of: &Value| -> Option<NaiveDate> { read_day(of.as_str()?).ok() };
    let day = |of: &Value| read(&of["day"]);
    let mut kept = Kept {
        walk_factor: plan["walk"]["factor"]
            .as_f64()
            .filter(|it| WALK_FACTOR.contains(it)),
        ..Kept::default()
    };
    for tree in plan["trees"].as_array()? {
        let visits = tree["visits"].as_array().map_or(&[][..], Vec::as_slice);
        kept.trees.insert(
            tree["tree_id"].as_str()?.to_owned(),
            KeptTree {
                day: day(tree),
                visits: visits.iter().map(day).collect(),
                found: None,
                value: tree["value"].as_f64().unwrap_or(f64::NAN),
            },
        );
    }
    for found in plan["after"]["found"].as_array().into_iter().flatten() {
        let tag = found["tree_id"].as_str()?;
        let visited_on = read(&found["visited_on"]);
        looked(&mut kept, tag, read(&found["ringed_on"]), visited_on);
    }
    Some(kept)
}
