//! Places and temperatures that can't be what was meant: each is answered with what is wrong, or flagged as less sure,
//! and never with dates that look as good as any. Towns' coordinates are those of content/places/towns (GeoNames); the
//! tables of temperatures are made up. That a sign is lost, columns are swapped or a unit is mistaken is common
//! practice, no source.

use crate::support::*;
use calc::answer::{Answer, answer};
use calc::models::season::Local;
use calc::timing::places::climate::Places;
use calc::timing::spring::Doubt;
use calc::timing::{Basis, Flag, Site, Verdict};
use serde_json::{Value, json};
use std::sync::OnceLock;

fn all() -> &'static Places {
    static ALL: OnceLock<Places> = OnceLock::new();
    ALL.get_or_init(climate_file)
}

/// Asks with the climate of the place at hand.
fn ask_at(asked: &Value) -> Answer {
    let question = question(asked);
    let local = Local::of(
        &reference().constants.timing,
        &question.place,
        question.region.as_deref(),
        all(),
    );
    answer(reference(), &question, &local)
}

fn at(latitude: &str, longitude: &str, elevation: &str) -> Value {
    json!({ "latitude": latitude, "longitude": longitude, "elevation": elevation })
}

fn maple(place: Value) -> Value {
    with(tree("Norway maple", "14"), json!({ "place": place }))
}

fn meant(answer: &Answer) -> Option<(f64, f64)> {
    answer.timing.meant.map(|Site { lat, lon, .. }| (lat, lon))
}

/// No date, no number, and the reason.
#[track_caller]
fn expect_no_dates(answer: &Answer, flag: Flag) {
    let timing = &answer.timing;
    assert_eq!((timing.opens, timing.closes), (None, None), "{timing:?}");
    assert_eq!((timing.probability, timing.basis), (None, None));
    assert!(
        matches!(
            answer.asked_verdict,
            Some(Verdict::TestFirst | Verdict::Unknown)
        ),
        "{:?}",
        answer.asked_verdict
    );
    assert!(timing.flags.contains(&flag), "{:?}", timing.flags);
}

#[test]
fn a_lost_sign_and_a_swap_come_with_what_may_have_been_meant() {
    for (lat, lon, want) in [
        // Boston without its sign lies in Kyrgyzstan.
        ("42.36", "71.06", Some((42.36, -71.06))),
        // Sydney without its sign lies in the Pacific.
        ("33.87", "151.21", Some((-33.87, 151.21))),
        // Christchurch with both signs turned.
        ("43.53", "-172.64", Some((-43.53, 172.64))),
        // Boston with the two swapped lies in Antarctica; Berlin in the Gulf of Aden.
        ("-71.06", "42.36", Some((42.36, -71.06))),
        ("13.4", "52.5", Some((52.5, 13.4))),
        // Far at sea no sign and no swap helps.
        ("5", "-25", None),
        ("0", "-30", None),
    ] {
        let found = ask_at(&maple(at(lat, lon, "")));
        expect_no_dates(&found, Flag::FarFromPlaces);
        assert_eq!(meant(&found), want, "{lat}, {lon}");
    }
    let near = ask_at(&maple(at("42.36", "-71.06", "")));
    assert_eq!(meant(&near), None);
    assert!(near.timing.opens.is_some());
    // The same in the interface's own names.
    let far = as_json(&ask_at(&maple(at("42.36", "71.06", ""))));
    assert_eq!(far["timing"]["meant"]["lon"], json!(-71.06));
}

#[test]
fn a_latitude_beyond_the_pole_is_a_problem_of_its_field() {
    for (lat, lon, field) in [
        ("151.21", "-33.87", "place.latitude"),
        ("42.36", "-271", "place.longitude"),
    ] {
        let problems = try_read(&maple(at(lat, lon, ""))).expect_err("beyond the earth");
        assert_eq!(problems[0].field, field);
        assert_eq!(problems[0].code.name(), "out_of_range");
    }
    let half = try_read(&maple(json!({ "latitude": "42.36" }))).expect_err("half a place");
    assert_eq!(half[0].code.name(), "half_a_place");
}

#[test]
fn tropical_and_polar_points_are_less_sure_or_have_no_dates() {
    // The Amazon, the Sahel, the pole, Greenland's ice: no station.
    for (lat, lon, flag) in [
        ("-3.1", "-60", Flag::LowLatitude),
        ("13.5", "2.1", Flag::LowLatitude),
        ("89", "0", Flag::HighLatitude),
        ("75", "-40", Flag::HighLatitude),
    ] {
        let found = ask_at(&maple(at(lat, lon, "")));
        expect_no_dates(&found, Flag::FarFromPlaces);
        assert!(found.timing.flags.contains(&flag), "{lat}, {lon}");
    }
    // Key West, Darwin, and Sodankylä beyond the polar circle have stations near: a wider spread, or none.
    for (lat, lon, flag) in [
        ("24.56", "-81.78", Flag::LowLatitude),
        ("-12.46", "130.84", Flag::LowLatitude),
        ("67.42", "26.59", Flag::HighLatitude),
    ] {
        let found = ask_at(&maple(at(lat, lon, "")));
        let timing = &found.timing;
        assert!(
            timing.flags.contains(&flag),
            "{lat}, {lon}: {:?}",
            timing.flags
        );
        assert!(timing.sd_open.is_none_or(|sd| sd >= 14.0), "{lat}, {lon}");
    }
}

#[test]
fn an_elevation_in_feet_taken_for_metres_is_asked_again() {
    for (lat, lon, elevation, odd) in [
        // Madison stands at 270 m, 886 ft; Denver at 1609 m, 5280 ft.
        ("43.07", "-89.4", "270 m", false),
        ("43.07", "-89.4", "886 m", true),
        ("43.07", "-89.4", "886 ft", false),
        ("39.74", "-104.98", "5280 ft", false),
        ("39.74", "-104.98", "5280 m", true),
        ("39.74", "-104.98", "1609 ft", true),
        ("39.74", "-104.98", "1609 m", false),
        ("43.07", "-89.4", "1500 m", true),
    ] {
        let found = ask_at(&maple(at(lat, lon, elevation)));
        let flagged = found.timing.flags.contains(&Flag::ElevationOdd);
        assert_eq!(flagged, odd, "{lat}, {lon}, {elevation}");
    }
}

/// A line a day from 1 March on.
fn days(year: i32, count: usize, line: impl Fn(f64) -> String) -> String {
    chrono::NaiveDate::from_ymd_opt(year, 3, 1)
        .expect("a day")
        .iter_days()
        .take(count)
        .enumerate()
        .map(|(at, day)| format!("{day},{}\n", line(at as f64)))
        .collect()
}

/// A spring of Boston in °C, lowest and highest: about the normals.
fn boston(at: f64) -> (f64, f64) {
    (-1.0 + at * 0.15, 7.0 + at * 0.17)
}

fn fahrenheit(celsius: f64) -> f64 {
    celsius * 1.8 + 32.0
}

fn with_spring(table: &str, scale: Option<&str>) -> Answer {
    let asked = maple(at("42.36", "-71.06", "15 m"));
    ask_at(&with(
        asked,
        json!({ "spring": table, "spring_scale": scale, "date": "2027-06-05" }),
    ))
}

/// The dates are those of the climate alone, nothing is shown as before and after, and the reason stands there.
#[track_caller]
fn expect_unused(answer: &Answer) {
    let plain = ask_at(&maple(at("42.36", "-71.06", "15 m")));
    let (got, want) = (&answer.timing, &plain.timing);
    assert_eq!((got.opens, got.closes), (want.opens, want.closes));
    assert_eq!(
        (got.basis, got.sd_open),
        (Some(Basis::Climate), want.sd_open)
    );
    assert!(!got.spring.as_ref().expect("it was read").used);
    assert_eq!(got.before, None);
    let reason = got.flags.iter().any(|flag| flag.of_spring());
    assert!(reason || got.other_season || doubts(answer).contains(&Doubt::OtherSeason));
}

fn doubts(answer: &Answer) -> &[Doubt] {
    answer
        .timing
        .spring
        .as_ref()
        .map_or(&[], |spring| &spring.doubts)
}

#[test]
fn a_good_table_is_used_and_shown_before_and_after() {
    for (table, scale) in [
        (
            days(2027, 70, |at| {
                format!("{:.1},{:.1}", boston(at).0, boston(at).1)
            }),
            "celsius",
        ),
        (
            days(2027, 70, |at| {
                format!(
                    "{:.1},{:.1}",
                    fahrenheit(boston(at).0),
                    fahrenheit(boston(at).1)
                )
            }),
            "fahrenheit",
        ),
    ] {
        let found = with_spring(&table, Some(scale));
        let timing = &found.timing;
        assert!(
            matches!(timing.basis, Some(Basis::OwnSpring { .. })),
            "{timing:?}"
        );
        assert!(timing.spring.as_ref().is_some_and(|spring| spring.used));
        assert!(timing.before.is_some() && doubts(&found).is_empty());
        assert!(
            !timing.flags.iter().any(|flag| flag.of_spring()),
            "{:?}",
            timing.flags
        );
    }
}

#[test]
fn swapped_columns_are_said_and_mean_the_same() {
    let line = |at: f64| boston(at);
    let right = days(2027, 70, |at| {
        format!("{:.1},{:.1}", line(at).0, line(at).1)
    });
    let swapped = days(2027, 70, |at| {
        format!("{:.1},{:.1}", line(at).1, line(at).0)
    });
    let (a, b) = (
        with_spring(&right, Some("celsius")),
        with_spring(&swapped, Some("celsius")),
    );
    assert_eq!(
        (a.timing.opens, a.timing.closes),
        (b.timing.opens, b.timing.closes)
    );
    assert_eq!(
        (doubts(&a), doubts(&b)),
        (&[][..], &[Doubt::ColumnsSwapped][..])
    );
}

#[test]
fn a_thousand_rows_of_another_year_change_nothing_and_are_said() {
    let found = with_spring(&days(2021, 1000, |_| "1 C,9 C".into()), None);
    assert!(doubts(&found).contains(&Doubt::OtherSeason));
    assert!(found.timing.other_season);
    expect_unused(&found);
}

#[test]
fn fahrenheit_called_celsius_and_celsius_called_fahrenheit_are_not_used() {
    let hot = days(2027, 70, |at| {
        format!(
            "{:.1},{:.1}",
            fahrenheit(boston(at).0),
            fahrenheit(boston(at).1)
        )
    });
    let found = with_spring(&hot, Some("celsius"));
    assert!(
        doubts(&found).contains(&Doubt::LooksLikeFahrenheit),
        "{:?}",
        doubts(&found)
    );
    assert!(found.timing.flags.contains(&Flag::SpringImpossible));
    expect_unused(&found);
    let cold = days(2027, 70, |at| {
        format!("{:.1},{:.1}", boston(at).0, boston(at).1)
    });
    let found = with_spring(&cold, Some("fahrenheit"));
    assert!(found.timing.flags.contains(&Flag::SpringImpossible));
    expect_unused(&found);
    // So early that no number looks hot: only the place tells.
    let early = days(2027, 12, |_| "20,36".into());
    let found = with_spring(&early, Some("celsius"));
    assert!(!doubts(&found).contains(&Doubt::LooksLikeFahrenheit));
    assert!(found.timing.flags.contains(&Flag::SpringImpossible));
    expect_unused(&found);
}

#[test]
fn a_table_behind_a_leaf_out_or_without_a_place_says_why_it_was_not_used() {
    let table = days(2027, 70, |at| {
        format!("{:.1},{:.1}", boston(at).0, boston(at).1)
    });
    let both = with(
        maple(at("42.36", "-71.06", "15 m")),
        json!({ "spring": table, "spring_scale": "celsius",
            "leafed_out": { "stage": "buds_open", "date": "2027-04-20" } }),
    );
    let found = ask_at(&both);
    assert_eq!(found.timing.basis, Some(Basis::ObservedHere));
    assert!(found.timing.flags.contains(&Flag::SpringBehindLeafOut));
    assert!(!found.timing.spring.as_ref().expect("read").used);
    // The leaf-out itself was used: that is the before and after.
    assert!(found.timing.before.is_some());
    let nowhere = ask_at(&with(
        both,
        json!({ "place": null, "region": null, "leafed_out": null }),
    ));
    expect_no_dates(&nowhere, Flag::SpringNeedsPlace);
    assert_eq!(nowhere.timing.before, None);
    // Asked after the season: the advised day lies in the next one, which this spring does not serve.
    let late = ask_at(&with(
        maple(at("42.36", "-71.06", "15 m")),
        json!({ "spring": table, "spring_scale": "celsius", "date": "2027-11-20" }),
    ));
    assert!(late.timing.other_season && late.timing.before.is_none());
    assert_eq!(late.timing.basis, Some(Basis::Climate));
}
