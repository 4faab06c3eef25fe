//! content/evidence/worked_examples.csv: printed input and printed output. Each row names its source, place and grade.

use crate::support::*;
use calc::models::{bark, height, stand};
use calc::terms::quantity::{M_PER_FT, MM_PER_IN};
use calc::terms::species::Form;
use serde_json::json;

/// The number in front of a word or sign, as `52` in `circumference 52 in`.
fn before(text: &str, unit: &str) -> f64 {
    let head = text
        .split(unit)
        .next()
        .unwrap_or_else(|| panic!("no {unit} in {text}"));
    head.split_whitespace()
        .last()
        .and_then(|word| word.parse().ok())
        .unwrap_or_else(|| panic!("no number before {unit} in {text}"))
}

fn inches2(m2: f64) -> f64 {
    m2 * 1e6 / (MM_PER_IN * MM_PER_IN)
}

fn feet2(m2: f64) -> f64 {
    m2 / (M_PER_FT * M_PER_FT)
}

/// Diameter in inches that the reader makes of a girth as typed.
fn diameter_of_girth(girth: &str) -> f64 {
    let asked = with(
        tree("Norway maple", "10"),
        json!({ "stems": [{ "girth": girth }] }),
    );
    question(&asked).tree.stems[0].dbh.mm() / MM_PER_IN
}

/// What we make of a printed input; none where the table says that the row is no check of ours.
fn ours(row: &Row) -> Option<f64> {
    let inputs = row["inputs"].as_str();
    if row["note"].contains("NOT USABLE") {
        return None;
    }
    Some(match row["what"].as_str() {
        "diameter from tape" => diameter_of_girth(&format!(
            "{} in",
            before(inputs.trim_start_matches("circumference "), " in")
        )),
        "feet-inches girth" => diameter_of_girth(inputs) * core::f64::consts::PI,
        "basal area of one tree" => {
            feet2(stand::basal_area_m2(before(inputs, " in with") * MM_PER_IN))
        }
        "basal area per acre" => {
            let trees = before(inputs, " trees");
            feet2(
                trees
                    * stand::basal_area_m2(
                        before(inputs.trim_end_matches(" in"), "\0") * MM_PER_IN,
                    ),
            )
        }
        "cross-section area" => inches2(stand::basal_area_m2(
            before(inputs, " in (uses") * MM_PER_IN,
        )),
        "diameter from basal area" => {
            stand::quadratic_mean_mm(before(inputs, " cm2") / 1e4, 1.0).expect("one stem") / 10.0
        }
        "multi-stem equivalent dbh" => {
            let stems: Vec<f64> = inputs
                .split_whitespace()
                .filter_map(|word| word.parse().ok())
                .collect();
            assert_eq!(stems.len(), 3, "{inputs}");
            stand::combined_mm(stems.into_iter().map(|inch| inch * MM_PER_IN)) / MM_PER_IN
        }
        "trees per acre at spacing" => {
            let (row, tree) = inputs.split_once(" x ").expect("row x tree");
            let feet = |text: &str| before(text, " ft") * M_PER_FT;
            stand::trees_on(stand::ACRE_M2, feet(row), feet(tree)).expect("a spacing")
        }
        "bark class lookup" => {
            let class = before(inputs, " (");
            let named = |name: &str| {
                let words: Vec<&str> = name.split_whitespace().take(2).collect();
                species(&words.join(" ")).bark.expect("bark").coefficient
            };
            let names = inputs
                .split(['(', ')'])
                .nth(1)
                .expect("a name in brackets")
                .trim_start_matches("e.g. ");
            let of_class = rows("content/evidence/bark_classes.csv")
                .iter()
                .find(|row| number(row, "class") == class)
                .map(|row| number(row, "coef_in_per_in"))
                .expect("a class");
            // A species whose bark was measured since has no class any more.
            let measured = |name: &str| {
                let table = rows("content/evidence/bark.csv");
                let row = table
                    .iter()
                    .find(|row| name.starts_with(&row["scientific_name"]));
                row.is_some_and(|row| row["class"].is_empty())
            };
            for name in names.split('/').map(str::trim) {
                assert!(measured(name) || named(name) == of_class, "{name}");
            }
            of_class
        }
        "bark cross-check two sources" => {
            let asked = question(&tree("Quercus alba", "12"));
            bark::thickness_mm(&asked.tree.stems[0], asked.tree.species).expect("bark") / MM_PER_IN
        }
        "height sanity" => wykoff_ft("Robinia pseudoacacia", before(inputs, " in:")),
        "Wykoff arithmetic" => wykoff_ft(
            "Ulmus pumila",
            before(inputs.replace(':', " :").as_str(), " :"),
        ),
        other => panic!("no check for the worked example \"{other}\""),
    })
}

/// The one Wykoff curve of a species at a diameter in inches, feet.
fn wykoff_ft(scientific: &str, inches: f64) -> f64 {
    let row = species(scientific)
        .heights
        .iter()
        .find(|row| row.form == Form::Wykoff && row.region == "FVS-CS")
        .expect("a Wykoff row");
    height::curve_m(row, inches * MM_PER_IN) / M_PER_FT
}

#[test]
fn every_printed_worked_example_that_can_be_used_is_met_within_its_tolerance() {
    let (mut met, mut left_out) = (0, 0);
    for row in rows("content/evidence/worked_examples.csv") {
        match ours(&row) {
            Some(got) => {
                let what = format!("{} ({})", row["what"], row["inputs"]);
                near_to(
                    got,
                    number(&row, "expected"),
                    number(&row, "tolerance") + 1e-9,
                    &what,
                );
                met += 1;
            }
            None => left_out += 1,
        }
    }
    assert_eq!(left_out, 4, "rows that say that they are no check of ours");
    assert_eq!(met, 18, "rows that are a check");
}

/// W9 (a web page on trunks of several stems): the root of 25 + 36 + 64.
#[test]
fn several_stems_make_the_crown_of_the_one_with_their_basal_area() {
    let several = with(
        tree("Norway maple", "1"),
        json!({ "stems": [{ "diameter": "5" }, { "diameter": "6" }, { "diameter": "8" }] }),
    );
    let one = ask(&tree("Norway maple", "11.180339887"));
    let (got, want) = (ask(&several).crown_m, one.crown_m);
    let (got, want) = (got.expect("a crown"), want.expect("a crown"));
    near_to(got.value, want.value, 1e-6, "crown");
    let largest = ask(&tree("Norway maple", "8"));
    assert_eq!(ask(&several).height.hazard_m, largest.height.hazard_m);
}

/// S8 (Curtis and Marshall 2000): the quadratic mean is the root of the mean square, so never under the mean.
#[test]
fn the_quadratic_mean_diameter_squared_is_the_mean_squared_and_the_variance() {
    let stems = [5.0, 6.0, 8.0, 14.5, 31.0].map(|inch: f64| inch * MM_PER_IN);
    let area: f64 = stems.iter().map(|mm| stand::basal_area_m2(*mm)).sum();
    let n = stems.len() as f64;
    let mean = stems.iter().sum::<f64>() / n;
    let variance = stems.iter().map(|mm| (mm - mean).powi(2)).sum::<f64>() / n;
    let quadratic = stand::quadratic_mean_mm(area, n).expect("stems");
    near_to(quadratic, (mean * mean + variance).sqrt(), 1e-9, "mm");
    assert_eq!(stand::quadratic_mean_mm(area, 0.0), None);
    assert_eq!(stand::trees_on(stand::ACRE_M2, 0.0, 3.0), None);
}
