//! Plans of the invented sample property, and what every check of a plan reads from plan.json.

use super::run;
use serde_json::Value;
use std::fs;
use std::path::{Path, PathBuf};

const SAMPLE: &str = "content/sample/trees.csv";

/// A plan that was asked for.
pub(crate) struct PlanOfSample {
    pub(crate) code: i32,
    pub(crate) printed: String,
    pub(crate) error: String,
    /// Where its files stand, where it made any.
    pub(crate) folder: PathBuf,
}

/// Plans the Saturdays of a year from May to July; `name` is that of a folder of its own.
pub(crate) fn plan_of_sample(name: &str, year: i32, more: &[&str]) -> PlanOfSample {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR"))
        .join("sample")
        .join(name);
    let _ = fs::remove_dir_all(&folder);
    let out = folder.display().to_string();
    let [today, from, to] = ["04-01", "05-01", "07-31"].map(|day| format!("{year}-{day}"));
    let mut arguments = vec![
        "plan", SAMPLE, "--out", &out, "--region", "US-MA", "--on", "sat",
    ];
    arguments.extend(["--today", &today, "--from", &from, "--to", &to]);
    arguments.extend(more);
    let (code, printed, error) = run(&arguments, "");
    PlanOfSample {
        code,
        printed,
        error,
        folder,
    }
}

/// The same where it must succeed.
pub(crate) fn planned_sample(name: &str, year: i32, more: &[&str]) -> PlanOfSample {
    let plan = plan_of_sample(name, year, more);
    assert_eq!(plan.code, 0, "{}{}", plan.printed, plan.error);
    plan
}

/// plan.json of a folder.
pub(crate) fn json(folder: &Path) -> Value {
    let text = fs::read_to_string(folder.join("plan.json")).expect("plan.json");
    serde_json::from_str(&text).expect("JSON")
}

pub(crate) fn list(value: &Value) -> &[Value] {
    value.as_array().expect("a list")
}

pub(crate) fn number(value: &Value) -> f64 {
    value
        .as_f64()
        .unwrap_or_else(|| panic!("a number: {value}"))
}

pub(crate) fn text(value: &Value) -> &str {
    value.as_str().unwrap_or_else(|| panic!("a text: {value}"))
}

/// The bound of a plan, worked out again from its printed prices as anybody can; it must be the one that is printed. Visits
/// to trees ringed before have their hours already.
pub(crate) fn bound_again(plan: &Value) -> f64 {
    let or_none = |value: Option<&Value>| value.and_then(Value::as_f64).unwrap_or(0.0);
    let objective = &plan["objective"];
    let mut bound = 0.0;
    for day in list(&plan["work_days"]) {
        let left = number(&day["minutes"]) - or_none(day.get("visits_before"));
        bound += left * number(&objective["days"][text(&day["day"])]);
    }
    for (unit, price) in list(&plan["units"]).iter().zip(list(&objective["areas"])) {
        assert_eq!(unit["unit"], price["unit"]);
        let year = &unit["years"][0];
        bound += or_none(year.get("limit_m2")) * number(&price["price"]);
        bound += or_none(year.get("crown_limit_m2")) * or_none(price.get("crown_price"));
    }
    let terms = list(&objective["terms"]).iter();
    bound += terms.map(|term| number(&term["best"])).sum::<f64>();
    let printed = number(&objective["bound"]);
    assert!((bound - printed).abs() < 1e-6 * bound, "{bound} {printed}");
    bound
}
