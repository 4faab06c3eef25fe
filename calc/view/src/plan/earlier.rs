//! The days of an earlier plan, from its plan.json.

use calc::question::read_day;
use calc_plan::{Kept, KeptTree};
use chrono::NaiveDate;
use serde_json::Value;

/// The version that is read.
const VERSION: u64 = 1;

/// The days of each tree; none where the text is no plan of this version.
#[must_use]
pub fn kept(text: &str) -> Option<Kept> {
    let plan: Value = serde_json::from_str(text.trim_start_matches('\u{feff}')).ok()?;
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
