//! The cases: for each row of the table a question in which it fires and one next to it in which it does not.

use crate::support::*;
use serde_json::{Value, json};

/// A row: its name, its nine cells in the order of the table, a question that it answers, and one that it does not.
pub(super) struct Case {
    pub rule: &'static str,
    pub cells: &'static str,
    pub fires: Value,
    pub silent: Option<Value>,
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

pub(super) fn on(question: Value, date: &str) -> Value {
    with(question, json!({ "date": date }))
}

pub(super) fn said(question: Value, field: &str, word: &str) -> Value {
    with(question, json!({ field: word }))
}

/// A maple of 50 ft with a path at a distance.
pub(super) fn path(diameter: &str, distance: &str) -> Value {
    near(
        with(
            tree("Norway maple", diameter),
            json!({ "height": "50 ft", "height_confirmed": true }),
        ),
        "path",
        distance,
    )
}

pub(super) fn maple(diameter: &str) -> Value {
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
            "line_open",
            "R R R R R R R R .",
            said(path("14", "300 ft"), "line_within_reach", "cant_tell"),
            path("14", "300 ft"),
        ),
        case(
            "inside",
            "R R . . . . . . P",
            path("14", "60 ft"),
            path("14", "80 ft"),
        ),
        case(
            "inside_herbicide",
            ". . R R . . . . .",
            path("14", "60 ft"),
            with(path("6", "60 ft"), json!({ "species": "tree-of-heaven" })),
        ),
        case(
            "inside_heaven_over_6",
            ". . R R . . . . .",
            with(path("6.1", "60 ft"), json!({ "species": "tree-of-heaven" })),
            with(path("6", "60 ft"), json!({ "species": "tree-of-heaven" })),
        ),
        case(
            "inside_heaven",
            ". . P P . . . . .",
            with(
                path("6", "60 ft"),
                json!({ "species": "tree-of-heaven", "date": "2027-08-01" }),
            ),
            with(path("6.1", "60 ft"), json!({ "species": "tree-of-heaven" })),
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
            ". . P . . . . . .",
            locust("yes"),
            maple("14"),
        ),
        case(
            "conditional_saw",
            ". N . . . . . . .",
            locust("yes"),
            said(tree("northern red oak", "14"), "region", "US-OR"),
        ),
        case(
            "clone_not_known",
            "P . . . . . . . .",
            locust("not_said"),
            locust("yes"),
        ),
        case(
            "sprouts_below",
            "P . . . . . . . .",
            tree("common buckthorn", "4"),
            locust("not_said"),
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
            locust("yes"),
            tree("Callery pear", "8"),
        ),
        case(
            "suckers_base",
            ". . . . . P . . .",
            tree("tree-of-heaven", "0.5"),
            tree("tree-of-heaven", "0.4"),
        ),
        // Where herbicide is refused and nothing else stands, cutting again and again is all there is.
        case(
            "suckers_cut",
            ". . . . . . . N .",
            said(locust("no"), "herbicide", "licensed"),
            with(
                said(locust("no"), "herbicide", "no"),
                json!({ "stems": [{ "diameter": "8" }], "cannot_wait": true }),
            ),
        ),
        case(
            "crown_fell",
            ". . . . . . N . .",
            tree("Callery pear", "8"),
            with(
                said(tree("autumn olive", "12"), "herbicide", "no"),
                json!({ "cannot_wait": true }),
            ),
        ),
        case(
            "stem_spared",
            ". . N N N . . . .",
            with(
                maple("14"),
                json!({ "stems": [{ "diameter": "14" }, { "diameter": "12" }],
                    "goal": "spare_one", "spare": 1 }),
            ),
            maple("14"),
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
            "P . . . . . . . .",
            tree("shagbark hickory", "14"),
            maple("14"),
        ),
        case(
            "hickory_saw_ring",
            ". N . . . . . . .",
            tree("shagbark hickory", "14"),
            tree("white oak", "14"),
        ),
        case(
            "oak_saw_ring",
            ". N . . . . . . .",
            tree("white oak", "14"),
            with(
                tree("white oak", "14"),
                json!({ "date": "2027-11-20", "cannot_wait": true }),
            ),
        ),
        case(
            "oak_saw_ring_winter",
            ". P . . . . . . .",
            with(
                tree("white oak", "14"),
                json!({ "date": "2027-11-20", "cannot_wait": true }),
            ),
            on(tree("white oak", "14"), "2027-10-20"),
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
            said(tree("green ash", "14"), "region", "US-AK"),
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
            "oak_wilt_near",
            "P . . . . . . . .",
            said(tree("northern red oak", "14"), "region", "US-MA"),
            said(tree("northern red oak", "14"), "region", "US-OR"),
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

pub(super) fn cases() -> Vec<Case> {
    [general(), of_species(), of_size(), of_the_day()]
        .into_iter()
        .flatten()
        .collect()
}
