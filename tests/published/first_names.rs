//! The trees that the form names before any is typed, region by region, held against the tables of status and range as
//! they are printed. Their order is ours.

use crate::support::*;
use calc_view::form::{FormOptions, Part, Sheet, View};
use calc_view::out::Html;
use chrono::NaiveDate;
use std::collections::BTreeMap;

fn named(region: &str) -> Vec<&'static str> {
    let today = NaiveDate::from_ymd_opt(2027, 6, 12).expect("a day");
    let options = FormOptions {
        lang: "en",
        heading_level: 3,
        listed: true,
        ..FormOptions::alone(today)
    };
    let mut sheet = Sheet::new();
    sheet.set("region", region);
    let mut out = Html::default();
    View::new(reference(), &sheet, &options).part(&mut out, Part::Species);
    let html = out.into_string();
    let values = html.split(" value=\"").skip(1);
    let values = values.filter_map(|rest| rest.split('"').next());
    values
        .filter(|value| *value != "?")
        .map(|value| {
            let known = reference().species.iter().find(|one| one.name == value);
            known
                .unwrap_or_else(|| panic!("{region}: {value}"))
                .scientific
        })
        .collect()
}

/// Each table's own cells: states by `status.csv`, countries by `native_range.csv`.
#[test]
fn at_most_eight_are_named_first_and_none_of_them_is_native_there() {
    let mut states: BTreeMap<String, String> = BTreeMap::new();
    for row in rows("content/evidence/status.csv") {
        let native = format!(" {} ", row["native_states"]);
        states.insert(row["scientific_name"].clone(), native);
    }
    let mut not_native: BTreeMap<String, String> = BTreeMap::new();
    for row in rows("content/evidence/native_range.csv") {
        let lands = format!(" {} ", row["not_native_countries"]);
        not_native.insert(row["scientific_name"].clone(), lands);
    }
    let mut lists = 0;
    for (region, _) in calc_view::words::region::regions() {
        let names = named(region);
        assert!(names.len() <= 8, "{region}: {names:?}");
        lists += usize::from(!names.is_empty());
        for name in names {
            match region.split_once('-') {
                Some(("US", state)) => {
                    let native = &states[name];
                    assert!(!native.contains(&format!(" {state} ")), "{region}: {name}");
                }
                None if region != "US" && region != "CA" => {
                    let lands = &not_native[name];
                    assert!(lands.contains(&format!(" {region} ")), "{region}: {name}");
                }
                _ => {}
            }
        }
    }
    assert!(lists > 60, "{lists} regions have a list");
}

#[test]
fn the_first_names_follow_the_region() {
    // Black locust is native in Ohio and not in Wisconsin (status.csv).
    assert!(named("US-WI").contains(&"Robinia pseudoacacia"));
    assert!(!named("US-OH").contains(&"Robinia pseudoacacia"));
    // Common buckthorn is native in Germany, black cherry is not (native_range.csv).
    assert!(!named("DE").contains(&"Rhamnus cathartica"));
    assert!(named("DE").contains(&"Prunus serotina"));
    assert_eq!(named("NZ")[0], "Acer pseudoplatanus");
    // No region said: the United States, and only what is native in none of its states.
    assert_eq!(named("")[0], "Ailanthus altissima");
    assert!(!named("").contains(&"Robinia pseudoacacia"));
    // Status.csv does not give the Chinese tallow tree to Minnesota.
    assert!(!named("US-MN").contains(&"Triadica sebifera"));
    assert!(named("US-LA").contains(&"Triadica sebifera"));
}
