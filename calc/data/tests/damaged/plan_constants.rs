//! What a plan of many trees assumes: a number without its name, or without a source, stops the build.

use super::content;
use super::copy::Copy;

#[test]
fn a_number_of_a_plan_has_its_name_its_source_and_its_place() {
    let wrong = [
        (
            "outlying,",
            "outlying,1.5",
            "remote,1.5",
            "the code has no constant remote; no row for outlying",
        ),
        ("over,", "0.05,1,own", "0.05,1,NOBODY1900", "NOBODY1900"),
        ("ready_minutes,", "a day's minutes", "", "place is empty"),
    ];
    for (at, (line, from, to, says)) in wrong.into_iter().enumerate() {
        let copy = Copy::new(&format!("plan-constants-{at}"));
        copy.replace("rules/plan_constants", line, from, to);
        let problem = content::list::read(&copy.folder)
            .expect_err(says)
            .to_string();
        assert!(
            problem.contains("content/rules/plan_constants.csv:") && problem.contains(says),
            "{problem}"
        );
    }
}
