//! The height that hazard is judged by, and the range shown, against trees whose height was measured: 18,999 of the fit
//! (percentiles by place, group, setting and size in height_percentiles.csv: forest plots of Rhode Island and Wyoming,
//! FIARI and FIAWY; NEON plots, NEONVST; biomass studies, BAAD; street and park trees, S5), and the values that model.md
//! prints, worked out by a program of its own.

use crate::support::*;
use calc::models::height_hazard::HazardCase;
use calc::terms::quantity::{M_PER_FT, MM_PER_IN};
use calc::terms::tree::Setting;
use serde_json::{Value, json};

const ELSEWHERE: &str = "US-TN";
const NORTHEAST: &str = "US-RI";
const INTERIOR_WEST: &str = "US-WY";

/// Hazard height in feet of a tree in a state and a setting.
fn hazard_ft(species: &str, inches: u32, region: &str, setting: &str) -> f64 {
    let asked = with(
        tree(species, &inches.to_string()),
        json!({ "region": region, "setting": setting }),
    );
    ask_plain(&asked).height.hazard_m / M_PER_FT
}

#[test]
fn the_hazard_heights_that_the_model_prints_are_met() {
    for (species, inches, feet) in [
        ("Acer platanoides", 12, [98.2, 83.7, 78.5, 77.0]),
        ("Acer platanoides", 24, [117.5, 97.9, 91.4, 90.1]),
        ("Liriodendron tulipifera", 20, [135.6, 113.0, 103.9, 103.9]),
        ("Betula lenta", 4, [58.6, 52.4, 48.2, 48.2]),
        ("Juniperus virginiana", 12, [62.4, 62.4, 57.4, 57.4]),
        ("Pinus sylvestris", 12, [92.7, 92.7, 79.5, 69.4]),
        ("Cinnamomum camphora", 24, [91.4, 91.4, 91.4, 72.9]),
    ] {
        for ((region, setting), want) in [
            (ELSEWHERE, "woods"),
            (NORTHEAST, "woods"),
            (INTERIOR_WEST, "woods"),
            (ELSEWHERE, "open"),
        ]
        .into_iter()
        .zip(feet)
        {
            let got = hazard_ft(species, inches, region, setting);
            near_to(
                got,
                want,
                0.051,
                &format!("{species} {inches} {region} {setting}"),
            );
        }
    }
}

#[test]
fn the_shown_height_of_a_norway_maple_of_12_in_has_the_range_that_the_model_prints() {
    for (region, setting, feet) in [
        (ELSEWHERE, "woods", [66.9, 49.1, 90.1]),
        (NORTHEAST, "woods", [66.9, 50.2, 78.3]),
        (ELSEWHERE, "open", [34.9, 24.4, 44.6]),
    ] {
        let asked = with(
            tree("Norway maple", "12"),
            json!({ "region": region, "setting": setting }),
        );
        let height = ask_plain(&asked).height;
        let got = [height.shown_m, height.low_m, height.high_m];
        for (got, want) in got.into_iter().zip(feet) {
            near_to(got.expect("a height") / M_PER_FT, want, 0.051, region);
        }
    }
}

/// No size, place or setting has a middle or a high end above the height that hazard is judged by, or no range at all.
#[test]
fn nothing_is_shown_above_the_hazard_height_and_low_is_never_high() {
    let mut looked_at = 0;
    for species in reference().species {
        for region in [ELSEWHERE, NORTHEAST, INTERIOR_WEST] {
            for setting in ["woods", "open"] {
                for inches in ["1", "4", "9", "16", "30", "48"] {
                    let asked = with(
                        tree(species.name, inches),
                        json!({ "region": region, "setting": setting }),
                    );
                    let height = ask_plain(&asked).height;
                    let (Some(shown), Some(low), Some(high)) =
                        (height.shown_m, height.low_m, height.high_m)
                    else {
                        assert!(height.whole_table, "{}", species.name);
                        continue;
                    };
                    let what = format!("{} {inches} {region} {setting}", species.name);
                    assert!(low < high && shown <= high, "{what}: {height:?}");
                    assert!(low < shown && high <= height.hazard_m, "{what}: {height:?}");
                    looked_at += 1;
                }
            }
        }
    }
    assert!(looked_at > 2000, "{looked_at}");
}

/// Where the trees of the percentile table stand, as a question names it.
fn stands(place: &str) -> Value {
    let point = |latitude: &str, longitude: &str| json!({ "place": { "latitude": latitude, "longitude": longitude }, "region": null });
    match place {
        "Bartlett NH" => point("44.06", "-71.29"),
        "Harvard Forest MA" => point("42.54", "-72.17"),
        "Great Smoky Mountains TN" => point("35.69", "-83.50"),
        "Coweeta NC" => point("35.06", "-83.43"),
        "Dead Lake AL" => point("32.54", "-87.80"),
        "Rhode Island" => json!({ "region": "US-RI" }),
        "Wyoming" => json!({ "region": "US-WY" }),
        "Idaho, Montana, Oregon" => json!({ "region": "US-MT" }),
        "Finland, Switzerland, Spain" => json!({ "region": "FI" }),
        "US cities, streets and parks" => json!({ "region": "US-CA" }),
        other => panic!("{other} is no place of the table"),
    }
}

/// The share of a normal distribution above so many standard deviations, percent. Abramowitz and Stegun 26.2.17.
fn above(z: f64) -> f64 {
    let t = 1.0 / (1.0 + 0.231_641_9 * z.abs());
    let poly = t
        * (0.319_381_530
            + t * (-0.356_563_782
                + t * (1.781_477_937 + t * (-1.821_255_978 + t * 1.330_274_429))));
    let tail = (-z * z / 2.0).exp() / (2.0 * core::f64::consts::PI).sqrt() * poly;
    100.0 * if z < 0.0 { 1.0 - tail } else { tail }
}

/// A row of the percentiles that has trees of our species: where, how many, the share of them above the hazard height.
struct Measured {
    place: String,
    size: String,
    conifer: bool,
    trees: f64,
    /// By the factor alone, from the ratios of measured height to tallest row; the floor can only lower it.
    over: f64,
}

/// The factor that an answer uses there, and between which percentiles of the ratio it lies.
fn measured() -> Vec<Measured> {
    let mut all = Vec::new();
    for row in rows("content/evidence/height_percentiles.csv") {
        if row["ratio_p97"].is_empty() {
            continue;
        }
        let setting = Setting::parse(&row["setting"]).expect("a setting");
        let asked = with(
            tree("Norway maple", "10"),
            with(
                stands(&row["place"]),
                json!({ "setting": row["setting"].clone() }),
            ),
        );
        let question = question(&asked);
        let case = HazardCase {
            conifer: row["group"] == "conifer",
            urban_rows_only: false,
            setting,
            band: question.tree.grown.band,
        };
        let dbh_mm = number(&row, "median_dbh_in") * MM_PER_IN;
        let (factor, because) = reference().heights().above().factor(&case, dbh_mm);
        assert!(!because.is_empty());
        let (p90, p97) = (number(&row, "ratio_p90"), number(&row, "ratio_p97"));
        let z = 1.2816 + (factor - p90) / (p97 - p90) * (1.8808 - 1.2816);
        all.push(Measured {
            place: row["place"].clone(),
            size: row["dbh_class_in"].clone(),
            conifer: case.conifer,
            trees: number(&row, "n_of_our_species"),
            over: above(z),
        });
    }
    all
}

/// model.md 3: of the trees of the fit 1.9 % stand above H. By the factors alone, without the floor, 2.7 % do; with 1.15
/// everywhere, as it was, far more.
#[test]
fn at_most_3_in_100_of_the_measured_trees_stand_above_the_hazard_height() {
    let all = measured();
    let trees: f64 = all.iter().map(|row| row.trees).sum();
    let over: f64 = all.iter().map(|row| row.trees * row.over).sum::<f64>() / trees;
    println!("{trees} trees, {over:.2} in 100 above");
    assert!(trees > 18_000.0);
    assert!(over <= 3.0, "{over}");
    let held: f64 = rows("content/evidence/height_percentiles.csv")
        .iter()
        .filter(|row| !row["percent_over_hazard"].is_empty())
        .map(|row| number(row, "percent_over_hazard") * number(row, "n_of_our_species"))
        .sum::<f64>()
        / trees;
    assert!(held <= 1.9, "with the floor, as counted: {held}");
}

/// Each place alone: 1.3 to 3.2 % when it was left out of the fit. Not covered: crowded young conifers of Europe up to
/// 10 in, of which model.md says that 22 % of 120 stand above.
#[test]
fn no_place_alone_has_more_than_5_in_100_above_but_the_young_conifers_of_europe() {
    let all = measured();
    let mut places: Vec<&str> = all.iter().map(|row| row.place.as_str()).collect();
    places.dedup();
    for place in places {
        let young_of_europe = |row: &&Measured| row.place.starts_with("Finland");
        let here: Vec<&Measured> = all
            .iter()
            .filter(|row| row.place == place && !young_of_europe(row))
            .collect();
        let trees: f64 = here.iter().map(|row| row.trees).sum();
        if trees < 300.0 {
            continue;
        }
        let over = here.iter().map(|row| row.trees * row.over).sum::<f64>() / trees;
        println!("{place}: {trees} trees, {over:.2} in 100 above");
        assert!(over <= 5.0, "{place}: {over}");
    }
    let told: Vec<&Measured> = all.iter().filter(|row| row.over > 20.0).collect();
    assert!(
        told.iter()
            .all(|row| row.conifer && row.place.starts_with("Finland")),
        "what is not covered is told"
    );
    assert!(
        told.iter()
            .all(|row| matches!(row.size.as_str(), "1-3" | "3-6" | "6-10"))
    );
}

/// Eight measured trees in ten lie in the range shown (78 to 82 where many were measured).
#[test]
fn about_eight_in_ten_measured_trees_lie_in_the_range_shown() {
    let (mut trees, mut inside) = (0.0, 0.0);
    for row in rows("content/evidence/height_percentiles.csv") {
        if row["percent_in_shown_range"].is_empty() {
            continue;
        }
        trees += number(&row, "n_of_our_species");
        inside += number(&row, "n_of_our_species") * number(&row, "percent_in_shown_range");
    }
    near_to(inside / trees, 80.0, 2.0, "in the range");
}

/// Where a tree stands, as the factors see it: model.md 3, "Where".
#[test]
fn the_northeast_goes_by_the_point_and_the_interior_west_by_the_state_alone() {
    use calc::terms::place::HeightBand::{self, Elsewhere, InteriorWest, Northeast};
    let band = |fields: Value| -> HeightBand {
        question(&with(
            with(tree("Norway maple", "12"), json!({ "region": null })),
            fields,
        ))
        .tree
        .grown
        .band
    };
    let point = |latitude: &str, longitude: &str, region: Value| json!({ "place": { "latitude": latitude, "longitude": longitude }, "region": region });
    for (fields, want) in [
        (json!({}), Elsewhere),
        (json!({ "region": "US-RI" }), Northeast),
        (json!({ "region": "US-WI" }), Northeast),
        (json!({ "region": "CA-ON" }), Northeast),
        (json!({ "region": "US-NY" }), Elsewhere),
        (json!({ "region": "US-CO" }), InteriorWest),
        (json!({ "region": "DE-BY" }), Elsewhere),
        (point("42.36", "-71.06", Value::Null), Northeast),
        (point("42.36", "-71.06", json!("US-MA")), Northeast),
        (point("42.9", "-78.9", json!("US-NY")), Northeast),
        (point("40.9", "-74", json!("US-NY")), Elsewhere),
        (point("43", "-107", Value::Null), Elsewhere),
        (point("43", "-107", json!("US-WY")), InteriorWest),
        (point("48.1", "11.6", json!("DE-BY")), Elsewhere),
        (json!({ "region": "US-AK" }), Elsewhere),
    ] {
        assert_eq!(band(fields.clone()), want, "{fields}");
    }
}

/// The worst of before: a third of the measured sweet birches of 4 in stood above 1.15 x their one row.
#[test]
fn sweet_birch_redcedar_and_black_locust_are_no_longer_the_worst() {
    let birch = ask_plain(&with(
        tree("sweet birch", "4"),
        json!({ "region": "US-RI" }),
    ));
    assert!(birch.height.hazard_m / M_PER_FT > 50.0);
    // Redcedar is a small tree of its own curve: neither a borrowed row nor the floor of tall trees holds for it.
    let cedar = species("Juniperus virginiana");
    assert!(cedar.small && cedar.heights.iter().all(|row| row.region != "FVS-CS"));
    let locust = species("Robinia pseudoacacia").bark.expect("bark");
    near_to(locust.coefficient, 0.074, 1e-9, "locust");
}
