//! The table of nine methods. Every row of content/rules/methods.csv has a case here, in which it fires and lowers what
//! it says, and one next to it in which it does not; or a line in unchecked.txt that says why not.
//! The cells are written out again from the design of the table, so that a slip in the data shows.

use crate::support::*;
use calc::answer::Answer;
use calc::model::method::{Cell, Method};
use serde_json::{Value, json};

/// A row: its name, its nine cells in the order of the table, a question that it answers, and one that it does not.
struct Case {
    rule: &'static str,
    cells: &'static str,
    fires: Value,
    silent: Option<Value>,
}

fn case(
    rule: &'static str,
    cells: &'static str,
    fires: Value,
    silent: impl Into<Option<Value>>,
) -> Case {
    Case {
        rule,
        cells,
        fires,
        silent: silent.into(),
    }
}

fn on(question: Value, date: &str) -> Value {
    with(question, json!({ "date": date }))
}

fn said(question: Value, field: &str, word: &str) -> Value {
    with(question, json!({ field: word }))
}

/// A maple of 50 ft with a path at a distance.
fn path(diameter: &str, distance: &str) -> Value {
    near(
        with(
            tree("Norway maple", diameter),
            json!({ "height": "50 ft", "height_confirmed": true }),
        ),
        "path",
        distance,
    )
}

fn maple(diameter: &str) -> Value {
    tree("Norway maple", diameter)
}

/// bark ring, saw ring, frill, basal bark, cut stump, pull or dig, fell, repeat cutting, leave it:
/// `.` nothing, P possible, N not advised, R ruled out, `*` by a professional, `!` no later row lowers it.
fn general() -> Vec<Case> {
    vec![
        case("always", ". P . . . . . P P", maple("14"), None),
        case(
            "always_fell",
            ". . . . . . P . .",
            maple("5"),
            tree("Scots pine", "5.9"),
        ),
        case("over_6", ". . . . P . . . .", maple("6.1"), maple("6")),
        case(
            "no_ring_to_cut",
            "R R N R N P .* P P",
            tree("palm", "8"),
            maple("8"),
        ),
        case(
            "line",
            "R R R R R R R R .",
            near(maple("14"), "line", "10 ft"),
            near(maple("14"), "line", "900 ft"),
        ),
        case(
            "professional",
            "R R R R R R .*! R P",
            path("14", "49 ft"),
            path("14", "50 ft"),
        ),
        case(
            "inside",
            "R R R R . . . . P",
            path("14", "60 ft"),
            path("14", "80 ft"),
        ),
        case(
            "inside_over_6",
            ". . . . .* . .*! R .",
            path("6.1", "60 ft"),
            path("6", "60 ft"),
        ),
        case(
            "hollow_alone",
            "N N N N N N N N .",
            with(maple("14"), json!({ "signs": ["cavity"] })),
            with(maple("14"), json!({ "signs": ["dead_top"] })),
        ),
        case(
            "kill_only",
            ". . . . . . . . N",
            said(maple("14"), "goal", "kill"),
            maple("14"),
        ),
        case(
            "dead",
            "R R R R R R P R .",
            said(maple("14"), "condition", "dead"),
            maple("14"),
        ),
        case(
            "dead_nothing_near",
            ". . . . . . N . .",
            said(path("14", "75 ft"), "condition", "dead"),
            said(path("14", "74 ft"), "condition", "dead"),
        ),
        case(
            "no_herbicide",
            ". . R R R . . . .",
            said(maple("14"), "herbicide", "no"),
            said(maple("14"), "herbicide", "licensed"),
        ),
    ]
}

fn of_species() -> Vec<Case> {
    let locust = |whole: &str| said(tree("black locust", "14"), "whole_clone", whole);
    let aspen = |whole: &str| said(tree("quaking aspen", "14"), "whole_clone", whole);
    let heaven = |herbicide: &str| said(tree("tree-of-heaven", "8"), "herbicide", herbicide);
    vec![
        case(
            "followup",
            ". N . . . . . . .",
            maple("14"),
            tree("white mulberry", "14"),
        ),
        case(
            "followup_saw_tried",
            ". P . . . . . . .",
            tree("white mulberry", "14"),
            maple("14"),
        ),
        case(
            "conditional",
            ". N P . . . . . .",
            locust("yes"),
            maple("14"),
        ),
        case(
            "condition_not_met",
            "P . . . . . . . .",
            locust("not_said"),
            locust("yes"),
        ),
        case(
            "clone_not_whole",
            "N . . . . . . . .",
            locust("no"),
            locust("yes"),
        ),
        case(
            "suitable_clone",
            "P . . . . . . . .",
            aspen("not_said"),
            aspen("yes"),
        ),
        case(
            "suitable_clone_not_whole",
            "N . . . . . . . .",
            aspen("no"),
            aspen("yes"),
        ),
        case(
            "suitable_clone_other",
            ". N P . . . . . .",
            aspen("yes"),
            locust("yes"),
        ),
        case(
            "not_alone",
            "N . . . . . . P .",
            heaven("not_said"),
            heaven("no"),
        ),
        case(
            "not_alone_guided",
            "P . . . . . . P .",
            heaven("no"),
            heaven("yes"),
        ),
        case(
            "not_alone_saw",
            ". R . . . . . . .",
            tree("Callery pear", "8"),
            tree("chinaberry", "8"),
        ),
        case(
            "not_alone_saw_tried",
            ". P . . . . . . .",
            tree("chinaberry", "8"),
            tree("Callery pear", "8"),
        ),
        case(
            "suckers",
            ". . . . . . N . .",
            tree("Callery pear", "8"),
            maple("8"),
        ),
        case(
            "suckers_base",
            ". . . . . P . . .",
            tree("Callery pear", "0.5"),
            tree("Callery pear", "0.4"),
        ),
        case(
            "deep_cut_resprouts",
            ". N . . . . . . .",
            tree("Siberian elm", "14"),
            tree("sweet birch", "14"),
        ),
        case(
            "unknown_species",
            "P N P P P . P . .",
            tree("unknown broadleaf", "14"),
            maple("14"),
        ),
        case(
            "unknown_species_against",
            "N . . . . . . . .",
            tree("unknown broadleaf", "14"),
            tree("unknown broadleaf", "0.8"),
        ),
        case(
            "ring_doubted",
            "P N . . . . . . .",
            tree("shagbark hickory", "14"),
            maple("14"),
        ),
        case(
            "conifer",
            ". . N N N . . R .",
            tree("Scots pine", "14"),
            maple("14"),
        ),
        case(
            "american_elm",
            "N N N N P . P . .",
            tree("American elm", "14"),
            tree("Siberian elm", "14"),
        ),
        case(
            "ash_borer",
            "N N P P . . . . .",
            said(tree("green ash", "14"), "region", "US-PA"),
            said(tree("green ash", "14"), "region", "US-WA"),
        ),
        case(
            "heaven_stump",
            ". . . . N . . . .",
            heaven("yes"),
            tree("princess tree", "8"),
        ),
    ]
}

fn of_size() -> Vec<Case> {
    let buckthorn = |diameter: &str| tree("common buckthorn", diameter);
    vec![
        // Shrub limits up to 4 in mean the base, 1.25 x dbh (our own assumption).
        case(
            "thin_shrub",
            "N R N . . . . . .",
            buckthorn("2.3"),
            buckthorn("2.4"),
        ),
        case("under_1", "R R R . . . . . .", maple("0.9"), maple("1")),
        case("1_to_2_5", "P R . . . . . . .", maple("2.5"), maple("2.6")),
        case("1_to_2", ". . N . . . . . .", maple("1.9"), maple("2")),
        case(
            "conifer_under_6",
            "P N P . . . . . .",
            tree("Scots pine", "5.9"),
            tree("Scots pine", "6"),
        ),
        case(
            "sprouter_under_6_fell",
            ". . . . . . N . .",
            maple("5.9"),
            said(maple("5.9"), "herbicide", "licensed"),
        ),
        case(
            "sprouter_under_6",
            ". . . . . . . P .",
            maple("5.9"),
            tree("sweet birch", "5.9"),
        ),
        case(
            "10_and_over",
            ". . . . .* R .* R .",
            maple("10"),
            maple("9.9"),
        ),
        // The base of 2.1 in is 2.6 in: over what a lever takes (MNDNR, NATSTEW).
        case(
            "base_too_thick",
            ". . . . . R . . .",
            maple("2.1"),
            maple("2"),
        ),
        case(
            "dig_shrub",
            ". . . . . P . . .",
            buckthorn("3.2"),
            buckthorn("3.3"),
        ),
        case(
            "basal_over_4",
            ". . . P . . . . .",
            maple("4.1"),
            maple("4"),
        ),
        case(
            "basal_over_6",
            ". . . N . . . . .",
            maple("6.1"),
            maple("6"),
        ),
        case(
            "stump_under_half",
            ". . . . N . . . .",
            maple("0.4"),
            maple("0.5"),
        ),
    ]
}

fn of_the_day() -> Vec<Case> {
    let oak = said(tree("northern red oak", "14"), "region", "US-WI");
    let pine = said(tree("Scots pine", "14"), "same_genus_near", "yes");
    let now = |date: &str| on(with(maple("14"), json!({ "cannot_wait": true })), date);
    vec![
        case(
            "oak_wilt_months",
            "R R R P R . R R .",
            with(oak.clone(), json!({ "cannot_wait": true })),
            on(oak, "2027-11-20"),
        ),
        case(
            "pines_near",
            "N N . . . . P . .",
            with(pine.clone(), json!({ "cannot_wait": true })),
            on(pine, "2027-11-20"),
        ),
        case(
            "bark_not_slipping",
            "N . . . . . . . .",
            now("2027-11-20"),
            now("2027-06-05"),
        ),
        case(
            "sap_flow",
            ". . N . N . . . .",
            now("2027-04-10"),
            now("2027-05-01"),
        ),
        case(
            "heaven_out_of_season",
            ". . N N . . . . .",
            with(
                tree("tree-of-heaven", "8"),
                json!({ "date": "2027-07-14", "cannot_wait": true }),
            ),
            on(tree("tree-of-heaven", "8"), "2027-07-15"),
        ),
    ]
}

fn cases() -> Vec<Case> {
    [general(), of_species(), of_size(), of_the_day()]
        .into_iter()
        .flatten()
        .collect()
}

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

/// It fails in both directions: a row without a case, and a line without a row or with a case.
#[test]
fn every_row_has_a_case_or_a_line_in_unchecked_txt_that_says_why() {
    let text = std::fs::read_to_string(root().join("tests/published/unchecked.txt"))
        .expect("unchecked.txt");
    let mut unchecked = Vec::new();
    for line in text
        .lines()
        .filter(|line| !line.trim().is_empty() && !line.starts_with('#'))
    {
        let (rule, reason) = line
            .split_once(": ")
            .unwrap_or_else(|| panic!("no reason in \"{line}\""));
        assert!(reason.trim().len() > 10, "{rule}: a reason is a sentence");
        unchecked.push(rule.trim().to_owned());
    }
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
    use calc::model::method::Level;
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
            let mm = question(&maple(&text)).stems[0].dbh.mm();
            assert_eq!(calc::quantity::inches(mm), inches, "{text}");
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
