//! Heights from the published coefficients (S4: growth simulator; S5: urban tree database), recomputed by
//! vectors/heights.py (Python 3.11.7), which shares no code with the calculator. Forms: content/evidence/allometry.md.

use crate::support::*;
use calc::models::height::curve_m;
use calc::terms::quantity::{M_PER_FT, MM_PER_IN};
use calc::terms::species::{Form, HeightRow};
use serde_json::json;

fn form(word: &str) -> Form {
    let last = || word.as_bytes().last().map_or(0, |digit| digit - b'0');
    match word {
        "WYKOFF" => Form::Wykoff,
        "CURTIS_ARNEY" => Form::CurtisArney,
        "UTD_lin" | "UTD_quad" | "UTD_cub" | "UTD_quart" => Form::Polynomial,
        word if word.starts_with("UTD_loglogw") => Form::LogLog(last()),
        word if word.starts_with("UTD_expow") => Form::Exp(last()),
        other => panic!("no form {other}"),
    }
}

/// The curves of a species of a form in a region: more than one where a region's table has several.
fn curves(name: &str, form: Form, region: &str) -> Vec<&'static HeightRow> {
    species(name)
        .heights
        .iter()
        .filter(|row| row.form == form && row.region == region)
        .collect()
}

#[test]
fn every_height_recomputed_from_the_published_coefficients_is_met() {
    let mut names = Vec::new();
    let mut met = 0;
    for row in rows("tests/published/vectors/heights.csv") {
        let name = row["scientific_name"].clone();
        let (inches, want) = (number(&row, "dbh_in"), number(&row, "height_m"));
        let all = curves(&name, form(&row["form"]), &row["region"]);
        assert!(!all.is_empty(), "no curve for {row:?}");
        let near = all
            .iter()
            .any(|curve| (curve_m(curve, inches * MM_PER_IN) - want).abs() <= 2e-6);
        assert!(near, "{row:?}: no curve gives it");
        met += 1;
        if !names.contains(&name) {
            names.push(name);
        }
    }
    assert!(met >= 20 && names.len() >= 20, "{met} of {}", names.len());
    let known = reference().species.iter().filter(|s| !s.heights_borrowed);
    for species in known.filter(|s| !s.heights.is_empty()) {
        assert!(
            names.iter().any(|name| name == species.scientific),
            "{} has heights and no vector: run vectors/heights.py",
            species.scientific
        );
    }
}

/// The table itself prints the height at 12 in, worked out when it was compiled.
#[test]
fn the_height_at_12_in_that_the_table_prints_is_met_to_its_last_digit() {
    let mut met = 0;
    for row in rows("content/evidence/height.csv") {
        let name = row["scientific_name"].as_str();
        if row["usable"] != "yes" || row["h_at_12in_ft"].is_empty() {
            continue;
        }
        if !reference().species.iter().any(|s| s.scientific == name) {
            continue;
        }
        let all = curves(name, form(&row["form"]), &row["region"]);
        if all.is_empty() {
            continue;
        }
        let want = number(&row, "h_at_12in_ft");
        let near = all
            .iter()
            .any(|curve| (curve_m(curve, 12.0 * MM_PER_IN) / M_PER_FT - want).abs() <= 0.051);
        assert!(
            near,
            "{name} {} {}: not {want} ft",
            row["form"], row["region"]
        );
        met += 1;
    }
    assert!(met >= 200, "{met}");
}

/// The notes name what capping the hazard would cut, and how tall these are at 24 in by the forest rows; each stands
/// above its mature height. (Their 96 ft for shagbark hickory is the southern curve, which is left out beside Wykoff.)
#[test]
fn the_hazard_of_the_species_that_the_notes_warn_of_stands_above_their_mature_height() {
    for (name, at_24_ft, mature_ft) in [
        ("Ailanthus altissima", 72.0, 55.0),
        ("Populus tremuloides", 98.0, 65.0),
        ("Populus grandidentata", 105.0, 65.0),
        ("Carya ovata", 79.2, 75.0),
    ] {
        let answer = ask(&tree(name, "24"));
        let tallest = answer.height.tallest_m / M_PER_FT;
        assert!(tallest >= at_24_ft - 0.5, "{name}: {tallest} ft");
        assert!(answer.height.hazard_m / M_PER_FT > mature_ft, "{name}");
    }
}

/// The southern Curtis-Arney row runs away: 15 percent over it make a 48-in Siberian elm 145 ft.
#[test]
fn a_runaway_curve_counts_only_where_the_species_has_no_other_of_the_woods() {
    let answer = ask(&tree("Siberian elm", "48"));
    let southern = curves("Ulmus pumila", Form::CurtisArney, "FVS-SN");
    let runs_away = curve_m(southern[0], 48.0 * MM_PER_IN) / M_PER_FT;
    near_to(runs_away * 1.15, 145.0, 1.0, "the runaway row");
    assert!(answer.height.tallest_m / M_PER_FT < 100.0);
}

#[test]
fn the_height_shown_is_the_mean_of_the_forest_rows_in_the_woods_and_of_the_urban_rows_in_the_open()
{
    for (setting, wykoff) in [("woods", true), ("open", false)] {
        for name in ["Norway maple", "Silver maple", "Honey locust"] {
            let asked = with(tree(name, "12"), json!({ "setting": setting }));
            let answer = ask(&asked);
            let known = question(&asked).tree.species;
            let picked: Vec<f64> = known
                .heights
                .iter()
                .filter(|row| match row.form {
                    Form::Wykoff => wykoff,
                    Form::CurtisArney => false,
                    _ => !wykoff,
                })
                .map(|row| curve_m(row, 304.8))
                .collect();
            assert!(!picked.is_empty(), "{name} {setting}");
            let mean = picked.iter().sum::<f64>() / picked.len() as f64;
            let cap = known.mature_height_ft.unwrap_or(f64::INFINITY);
            let cap = cap.max(known.urban_height_ft.unwrap_or(0.0)) * M_PER_FT;
            let shown = answer.height.shown_m.expect("shown");
            near_to(shown, mean.min(cap), 1e-9, name);
            let (low, high) = (answer.height.low_m, answer.height.high_m);
            let (low, high) = (low.expect("a low end"), high.expect("a high end"));
            assert!(
                low < shown && shown <= high && high <= answer.height.hazard_m,
                "{name}"
            );
        }
    }
}

#[test]
fn a_shrub_is_never_taken_for_taller_than_one_and_a_half_mature_heights_and_the_name_is_doubted() {
    let answer = ask(&tree("common buckthorn", "20"));
    let known = species("Rhamnus cathartica");
    let mature = known.mature_height_ft.unwrap_or(25.0);
    let cap = mature * 1.5 * 1.15 * M_PER_FT;
    assert!(answer.height.larger_than_grows);
    near_to(answer.height.hazard_m, cap, 1e-9, "cap");
}

#[test]
fn a_measured_height_is_used_and_an_odd_one_is_asked_again_with_the_taller_of_the_two() {
    let at = |height: &str, confirmed: bool| {
        ask(&with(
            tree("Norway maple", "14"),
            json!({ "height": height, "height_confirmed": confirmed }),
        ))
        .height
    };
    let plain = ask(&tree("Norway maple", "14")).height;
    let good = at("52 ft", false);
    assert!(good.measured && !good.ask_again);
    near_to(good.hazard_m, 52.0 * M_PER_FT, 1e-9, "measured");
    // Metres typed as feet: 16 ft of a 14-in maple.
    let odd = at("16 ft", false);
    assert!(odd.ask_again);
    near_to(odd.hazard_m, plain.hazard_m, 1e-9, "the taller of the two");
    let sure = at("16 ft", true);
    assert!(!sure.ask_again);
    near_to(sure.hazard_m, 16.0 * M_PER_FT, 1e-9, "confirmed");
    // Over 1.2 times the hazard height a height is asked again, up to it it is not.
    let most = plain.hazard_m / M_PER_FT * 1.2;
    assert!(!at(&format!("{:.1} ft", most - 0.2), false).ask_again);
    assert!(at(&format!("{:.1} ft", most + 0.2), false).ask_again);
    let tall = at("200 ft", false);
    assert!(tall.ask_again);
    near_to(
        tall.hazard_m,
        200.0 * M_PER_FT,
        1e-9,
        "the taller of the two",
    );
}

/// For an unknown species: the largest height that hazard of any listed species is judged by, there and in that setting.
#[test]
fn an_unknown_species_has_the_tallest_hazard_height_of_the_whole_table() {
    for fields in [
        json!({}),
        json!({ "setting": "open" }),
        json!({ "region": "US-WY" }),
        json!({ "region": "US-TN" }),
    ] {
        let answer = ask(&with(tree("unknown broadleaf", "14"), fields.clone()));
        let known = reference()
            .species
            .iter()
            .filter(|species| !species.heights.is_empty());
        let all: Vec<f64> = known
            .map(|species| {
                ask_plain(&with(tree(species.name, "14"), fields.clone()))
                    .height
                    .hazard_m
            })
            .collect();
        let tallest = all.iter().copied().fold(0.0, f64::max);
        assert!(answer.height.whole_table && all.len() > 60);
        near_to(answer.height.hazard_m, tallest, 1e-9, "tallest of all");
    }
}

/// Forest equations overpredict open-grown trees (notes, 5: means of the raw urban data and of Wykoff, ft).
#[test]
fn trees_of_the_open_are_shown_lower_than_those_of_the_woods() {
    for name in [
        "Siberian elm",
        "Norway maple",
        "White mulberry",
        "Silver maple",
    ] {
        let shown = |setting: &str| {
            let asked = with(tree(name, "18"), json!({ "setting": setting }));
            ask(&asked).height.shown_m.expect("shown")
        };
        assert!(shown("open") < shown("woods"), "{name}");
    }
}

/// S5 and S6: the crown table prints its width at 12 in too.
#[test]
fn the_crown_at_12_in_that_the_table_prints_is_met_to_its_last_digit() {
    let mut met = 0;
    for row in rows("content/evidence/crown.csv") {
        let name = row["scientific_name"].as_str();
        let Some(known) = reference().species.iter().find(|s| s.scientific == name) else {
            continue;
        };
        if row["usable"] != "yes" || row["cw_at_12in_ft"].is_empty() {
            continue;
        }
        let wanted = match row["form"].as_str() {
            "QUAD" => Form::Quad,
            other => form(other),
        };
        let all: Vec<&HeightRow> = known
            .crowns
            .iter()
            .filter(|curve| curve.form == wanted && curve.region == row["region"])
            .collect();
        if all.is_empty() {
            continue;
        }
        let want = number(&row, "cw_at_12in_ft");
        let near = all
            .iter()
            .any(|curve| (curve_m(curve, 12.0 * MM_PER_IN) / M_PER_FT - want).abs() <= 0.06);
        assert!(
            near,
            "{name} {} {}: not {want} ft",
            row["form"], row["region"]
        );
        met += 1;
    }
    assert!(met >= 150, "{met}");
}

/// A diameter is taken at breast height (1.37 m in the US): what is lower has none. The floor of the tick that confirms
/// an odd height is our own assumption.
#[test]
fn a_height_below_breast_height_is_a_problem_and_the_tick_that_confirms_has_a_floor() {
    use calc::question::Code;
    for (height, fits) in [
        ("4 ft 5 in", false),
        ("1.36 m", false),
        ("4 ft 6 in", true),
        ("1.37 m", true),
    ] {
        let asked = with(tree("common buckthorn", "0.6"), json!({ "height": height }));
        match try_read(&asked) {
            Ok(_) => assert!(fits, "{height}"),
            Err(problems) => {
                assert!(!fits, "{height}: {problems:?}");
                assert_eq!(problems[0].code, Code::HeightBelowDiameter);
                assert_eq!(problems[0].field, "height");
            }
        }
    }
    let readings =
        json!({ "by": "stick", "distance": "2 ft", "stick": "1 ft", "eye_to_stick": "2 ft" });
    let asked = with(
        tree("common buckthorn", "0.6"),
        json!({ "height_aid": readings }),
    );
    let problems = try_read(&asked).expect_err("1 ft");
    assert_eq!(problems[0].code, Code::HeightBelowDiameter);
    let smallest = ask(&tree("Norway maple", "14")).height.smallest_m;
    let at = |share: f64| {
        let height = format!("{:.3} m", smallest * share);
        ask(&with(
            tree("Norway maple", "14"),
            json!({ "height": height, "height_confirmed": true }),
        ))
        .height
    };
    let held = at(0.36);
    assert!(!held.too_low);
    near_to(held.hazard_m, smallest * 0.36, 0.001, "it is used as it is");
    let low = at(0.34);
    assert!(low.too_low && low.hazard_m > smallest, "the taller rules");
    // Readings count as the measured height the moment they are complete.
    let readings = json!({ "by": "angles", "distance": "50 ft", "top": "45", "foot": "0" });
    let aided = ask(&with(
        tree("Norway maple", "14"),
        json!({ "height_aid": readings }),
    ))
    .height;
    assert!(aided.measured);
    near_to(aided.hazard_m, 50.0 * 0.3048, 1e-9, "as measured");
}
