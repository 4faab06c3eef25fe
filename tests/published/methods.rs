//! The table of nine methods. Every row of content/rules/methods.csv has a case here, in which it fires and lowers what
//! it says, and one next to it in which it does not; or a line in unchecked.txt that says why not.
//! The cells are written out again from the design of the table, so that a slip in the data shows.
//! Compared with itself, not with the outside: such a case shows a slip and proves nothing; what a row rests on stands
//! in its column `basis`.

mod cases;

use self::cases::{cases, maple, path, said};
use crate::support::*;
use calc::answer::Answer;
use calc::terms::method::{Cell, Method};
use serde_json::{Value, json};

fn cells(text: &str) -> Vec<Cell> {
    let cells: Vec<Cell> = text
        .split(' ')
        .map(|cell| Cell::parse(cell).unwrap_or_else(|| panic!("{cell} is no cell")))
        .collect();
    assert_eq!(cells.len(), Method::ALL.len(), "{text}");
    cells
}

fn named(answer: &Answer, rule: &str) -> bool {
    answer
        .methods
        .iter()
        .any(|line| line.reasons.iter().any(|reason| reason.rule == rule))
}

#[test]
fn every_row_of_the_table_fires_where_it_should_and_lowers_what_it_says() {
    for case in cases() {
        let answer = ask(&case.fires);
        for (line, cell) in answer.methods.iter().zip(cells(case.cells)) {
            let reason = line.reasons.iter().find(|reason| reason.rule == case.rule);
            let what = format!("{} on {:?} in {}", case.rule, line.method, case.fires);
            if cell == Cell::NOTHING {
                assert!(reason.is_none(), "touches without a cell: {what}");
                continue;
            }
            let reason = reason.unwrap_or_else(|| panic!("did not fire: {what}"));
            assert_eq!(reason.at_most, cell.at_most, "{what}");
            assert_eq!(reason.by_professional, cell.by_professional, "{what}");
            assert!(line.level >= cell.at_most, "not lowered: {what}");
            assert!(line.by_professional || !cell.by_professional, "{what}");
            assert!(!reason.because.is_empty(), "{what}");
        }
    }
}

#[test]
fn every_row_of_the_table_is_silent_just_beside_its_condition() {
    for case in cases() {
        if let Some(silent) = case.silent {
            assert!(
                !named(&ask(&silent), case.rule),
                "{} fires in {silent}",
                case.rule
            );
        }
    }
}

#[test]
fn the_cells_of_the_table_are_those_of_its_design() {
    for case in cases() {
        let rule = reference()
            .method_rules
            .iter()
            .find(|rule| rule.id == case.rule);
        let rule = rule.unwrap_or_else(|| panic!("no row {}", case.rule));
        assert_eq!(rule.cells.to_vec(), cells(case.cells), "{}", case.rule);
    }
}

/// What stands before the numbers of a plan in unchecked.txt.
pub(crate) const PLANS: &str = "plan_constants.";

/// Lines of unchecked.txt with their reasons: those of one table, or of the methods where none is named.
pub(crate) fn unchecked(table: &str) -> Vec<(String, String)> {
    let text = std::fs::read_to_string(root().join("tests/published/unchecked.txt"))
        .expect("unchecked.txt");
    let mut lines = Vec::new();
    for line in text
        .lines()
        .filter(|line| !line.trim().is_empty() && !line.starts_with('#'))
    {
        let (rule, reason) = line
            .split_once(": ")
            .unwrap_or_else(|| panic!("no reason in \"{line}\""));
        assert!(reason.trim().len() > 10, "{rule}: a reason is a sentence");
        let of_plans = rule.strip_prefix(PLANS);
        let name = match table {
            "" if of_plans.is_none() => Some(rule),
            "" => None,
            _ => of_plans,
        };
        lines.extend(name.map(|name| (name.trim().to_owned(), reason.trim().to_owned())));
    }
    lines
}

/// It fails in both directions: a row without a case, and a line without a row or with a case.
#[test]
fn every_row_has_a_case_or_a_line_in_unchecked_txt_that_says_why() {
    let unchecked: Vec<String> = unchecked("").into_iter().map(|(rule, _)| rule).collect();
    let checked: Vec<&str> = cases().iter().map(|case| case.rule).collect();
    for rule in reference().method_rules {
        let has_case = checked.contains(&rule.id);
        let has_line = unchecked.iter().any(|line| line == rule.id);
        assert!(
            has_case || has_line,
            "{} has neither a case nor a line in unchecked.txt",
            rule.id
        );
        assert!(
            !(has_case && has_line),
            "{} has a case: take its line out of unchecked.txt",
            rule.id
        );
    }
    for line in &unchecked {
        let known = reference().method_rules.iter().any(|rule| rule.id == line);
        assert!(known, "unchecked.txt names {line}, which is no row");
    }
    let mut once = checked.clone();
    once.sort_unstable();
    once.dedup();
    assert_eq!(once.len(), checked.len(), "a row has two cases");
}

#[test]
fn four_thin_stems_of_a_shrub_are_not_ringed_whatever_their_size() {
    let stems = |count: usize| {
        let stems: Vec<Value> = (0..count).map(|_| json!({ "diameter": "4" })).collect();
        ask(&with(
            tree("common buckthorn", "4"),
            json!({ "stems": stems }),
        ))
    };
    assert!(named(&stems(4), "thin_shrub"));
    assert!(!named(&stems(3), "thin_shrub"));
}

/// The south is half a year on: sap flow in September and October, beetles September to March.
#[test]
fn months_are_turned_over_in_the_south() {
    let south = |question: Value, date: &str| {
        let place = json!({ "hemisphere": "south" });
        let fields = json!({ "place": place, "date": date, "region": "NZ", "cannot_wait": true });
        ask(&with(question, fields))
    };
    assert!(named(&south(maple("14"), "2027-09-10"), "sap_flow"));
    assert!(!named(&south(maple("14"), "2027-04-10"), "sap_flow"));
    let pine = said(tree("Scots pine", "14"), "same_genus_near", "yes");
    assert!(named(&south(pine.clone(), "2027-12-10"), "pines_near"));
    assert!(!named(&south(pine, "2027-06-10"), "pines_near"));
    let heaven = tree("tree-of-heaven", "8");
    assert!(!named(
        &south(heaven.clone(), "2027-02-10"),
        "heaven_out_of_season"
    ));
    assert!(named(&south(heaven, "2027-08-10"), "heaven_out_of_season"));
}

/// A professional's row holds the felling where it is: no later row makes it worse, but that of a dead tree.
#[test]
fn felling_by_a_professional_near_a_target_is_lowered_by_no_later_row_but_that_of_a_dead_tree() {
    use calc::terms::method::Level;
    let stop = path("14", "30 ft");
    let oak = with(
        stop.clone(),
        json!({ "species": "northern red oak", "region": "US-WI" }),
    );
    let felling = |asked: &Value| {
        let answer = ask(asked);
        let line = line(&answer, Method::Fell);
        (line.level, line.by_professional)
    };
    assert_eq!(
        felling(&oak),
        (Level::Possible, true),
        "oak wilt's months do not forbid a hazard tree's felling"
    );
    let dead = with(stop, json!({ "condition": "dead" }));
    assert_eq!(felling(&dead), (Level::Possible, true));
}

/// A limit means the size as typed, in any unit: 6 in is not under 6 in, whatever a division makes of it.
#[test]
fn a_size_typed_as_a_limit_is_held_against_it_as_typed() {
    for inches in [0.5, 1.0, 2.0, 3.0, 4.0, 6.0, 10.0, 12.0] {
        let typed = [
            format!("{inches} in"),
            format!("{:.1} mm", inches * 25.4),
            format!("{:.2} cm", inches * 2.54),
        ];
        for text in typed {
            let mm = question(&maple(&text)).tree.stems[0].dbh.mm();
            assert_eq!(calc::terms::quantity::inches(mm), inches, "{text}");
        }
    }
    assert!(!named(&ask(&tree("Scots pine", "6 in")), "conifer_under_6"));
    assert!(named(&ask(&maple("10 in")), "10_and_over"));
    let answer = ask(&maple("6 in"));
    assert!(
        answer
            .habitat
            .is_some_and(|habitat| !habitat.feeding_wood_only),
        "A01: cavities from 6 in"
    );
}
