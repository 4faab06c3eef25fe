//! A state or country without a town, and a point without an elevation: how far the dates may be off. The values were
//! worked out by a program of its own from the same temperatures (WorldClim 1.4); model.md 5 prints some of them.
//! Conifers: measured days of growth (conifer_growth.csv: stem bands of Harvard Forest, HFBANDS; xylem and cells in
//! Slovenia and France, RTG2015, CAVIAR2011).

use crate::support::*;
use calc::terms::place::Hemisphere;
use calc::terms::species::WoodClass;
use calc::timing::budbreak::from_climate;
use calc::timing::knowledge::relief_days;
use calc::timing::{Flag, Site, Verdict, Where, climate, season};

const YEAR: i32 = 2027;

/// Budbreak for a sum at the cold, the middle and the warm place of a region, day of the year.
fn budbreak(code: &str, f_sum: f64) -> [f64; 3] {
    let (c, places) = (constants(), climate_file());
    let row = places.region(code).unwrap_or_else(|| panic!("no {code}"));
    row.places.map(|at| {
        let point = climate::of_place(&places.stations, at, &c).expect("a place");
        from_climate(&point, f_sum, &c).expect("a budbreak")
    })
}

#[test]
fn budbreak_at_the_places_of_every_region_is_that_of_the_table() {
    let (c, places) = (constants(), climate_file());
    let table = rows("content/evidence/region_places.csv");
    assert_eq!(table.len(), 178);
    for row in &table {
        let region = places.region(&row["region"]).expect("a region");
        for (at, column) in region
            .places
            .into_iter()
            .zip(["b190_cold", "b190_middle", "b190_warm"])
        {
            let point = climate::of_place(&places.stations, at, &c).expect("a place");
            let b = from_climate(&point, 190.0, &c).expect("a budbreak");
            assert!(
                (b - number(row, column)).abs() <= 0.051,
                "{} {column}: {b}",
                row["region"]
            );
            let south = point.hemisphere() == Hemisphere::South;
            assert_eq!(south, row["hemisphere"] == "S", "{}", row["region"]);
        }
        // The spread of the places and that of the relief, joined.
        let joined = number(row, "spread_places_days").hypot(number(row, "spread_relief_days"));
        let spread = number(row, "spread_days");
        assert!(
            (joined - spread).abs() <= 0.11,
            "{}: {joined}, not {spread}",
            row["region"]
        );
        assert!((region.spread_days - spread).abs() < 1e-9);
    }
}

#[test]
fn the_regions_that_the_model_prints_have_the_dates_that_it_prints() {
    for (code, f_sum, want) in [
        ("US-WI", 190.0, [127.5, 124.0, 120.4]),
        ("US-CO", 190.0, [124.9, 114.0, 107.6]),
        ("NZ", 190.0, [274.9, 269.4, 266.3]),
        ("US-WI", 120.0, [116.6, 113.3, 109.7]),
    ] {
        for (got, want) in budbreak(code, f_sum).into_iter().zip(want) {
            assert!((got - want).abs() <= 0.051, "{code}: {got}, not {want}");
        }
    }
    let spread = |code: &str| climate_file().region(code).expect("a region").spread_days;
    assert_eq!(
        [spread("US-WI"), spread("US-CO"), spread("NZ")],
        [3.3, 9.8, 7.1]
    );
}

/// The dates are those of the middle place; the spread joins that of budbreak, six tenths of it that of the closing.
#[test]
fn a_region_has_the_dates_of_its_middle_place_and_its_spread() {
    let (c, places) = (constants(), climate_file());
    let row = places.region("US-WI").expect("a region");
    let middle = climate::of_place(&places.stations, row.places[1], &c).expect("a place");
    let tree = tree(WoodClass::Diffuse, 190.0);
    let place = Where::Region {
        climate: &middle,
        spread_days: row.spread_days,
    };
    let of_region = season(&ask(tree, place), &c);
    let of_place = season(&ask(tree, Where::Climate(&middle)), &c);
    let (region, place) = (
        of_region.curve_of(YEAR).expect("dates"),
        of_place.curve_of(YEAR).expect("dates"),
    );
    assert_eq!(region.opens, place.opens);
    assert_eq!(region.closes, place.closes);
    let joined = |sd: f64, more: f64| (sd * sd + more * more).sqrt();
    assert!((region.sd_open - joined(joined(9.0, 3.3), 6.0)).abs() < 1e-9);
    assert!((region.sd_close - joined(14.0, 0.6 * 3.3)).abs() < 1e-9);
    assert!(of_region.flags().is_empty(), "{:?}", of_region.flags());
}

#[test]
fn a_region_whose_towns_differ_by_more_than_two_weeks_has_the_months_of_its_half_of_the_world() {
    let (c, places) = (constants(), climate_file());
    let mut wide: Vec<&str> = Vec::new();
    for region in &places.regions {
        let middle = climate::of_place(&places.stations, region.places[1], &c).expect("a place");
        let place = Where::Region {
            climate: &middle,
            spread_days: region.spread_days,
        };
        let season = season(&ask(tree(WoodClass::Diffuse, 190.0), place), &c);
        let told = season.flags().contains(&Flag::RegionTooWide);
        assert_eq!(told, !season.is_dated(), "{}", region.region);
        assert!(!season.flags().contains(&Flag::NoPlace));
        if told {
            wide.push(&region.region);
            assert_eq!(
                season.verdict(day(YEAR, 6, 1)),
                Verdict::TestFirst,
                "{}",
                region.region
            );
        }
    }
    wide.sort_unstable();
    assert_eq!(wide, ["CH", "CH-BE", "NO", "US", "US-AZ", "US-NV"]);
}

/// A part of a country that is not in the table takes its country's row.
#[test]
fn a_part_without_a_row_takes_that_of_its_country() {
    let places = climate_file();
    assert_eq!(
        places.region("US-AK").map(|row| row.region.as_str()),
        Some("US")
    );
    assert_eq!(
        places.region("NZ-CIT").map(|row| row.region.as_str()),
        Some("NZ")
    );
    assert!(places.region("JP").is_none());
}

#[test]
fn an_unknown_elevation_widens_the_opening_by_the_relief_around() {
    let (c, stations) = (constants(), stations());
    for (lat, lon, relief, days, sd) in [
        (39.19, -106.82, 282.0, 6.49, 11.1),
        (35.60, -82.55, 187.0, 4.31, 9.98),
        (43.07, -89.40, 63.0, 1.45, 9.12),
        (47.27, 11.39, 400.0, 9.21, 12.9),
    ] {
        let site = |elev_m| Site { lat, lon, elev_m };
        let without = climate::at(&stations, site(None), &c).expect("near");
        assert!(
            (without.relief_m - relief).abs() <= 0.5,
            "{}",
            without.relief_m
        );
        let added = relief_days(without.relief_m, &c);
        assert!((added - days).abs() <= 0.01, "{added}");
        let open = |point| {
            let season = season_at(WoodClass::Diffuse, 190.0, point, &c);
            season.curve_of(YEAR).expect("dates").sd_open
        };
        // 6 days of the diffuse-porous opening are joined to it.
        let budbreak = (open(&without).powi(2) - 36.0).sqrt();
        assert!((budbreak - sd).abs() <= 0.05, "{lat}: {budbreak}");
        let known = climate::at(&stations, site(Some(without.stations_m)), &c).expect("near");
        assert!(
            (open(&known).powi(2) - 36.0 - 81.0).abs() < 1e-6,
            "an elevation takes it away"
        );
    }
    assert_eq!(relief_days(1000.0, &c), 12.0, "never more than 12 days");
}

/// Measured: 75 and 90 % of the year's growth. The model's best-to and closing stand for them.
#[test]
fn conifers_are_best_until_three_quarters_of_their_growth_and_close_at_nine_tenths() {
    let (c, stations) = (constants(), stations());
    let (mut best, mut closes, mut met) = (0.0, 0.0, 0.0);
    for row in rows("content/evidence/conifer_growth.csv") {
        let p = point(
            &stations,
            number(&row, "lat"),
            number(&row, "lon"),
            number(&row, "elev_m"),
            &c,
        );
        let f_sum = 320.0;
        let k = season_at(WoodClass::Conifer, f_sum, &p, &c)
            .curve_of(YEAR)
            .expect("dates");
        let (day_75, day_90) = (number(&row, "day_75"), number(&row, "day_90"));
        println!(
            "{} {}: best to {:.0} measured {day_75}, closes {:.0} measured {day_90}",
            row["place"], row["species"], k.best_to, k.closes
        );
        // A tree's own year strays by the printed deviations, 16 to 32 days.
        let strays = [number(&row, "sd_75"), number(&row, "sd_90")];
        assert!(
            (k.best_to - day_75).abs() <= strays[0] * 1.5,
            "{row:?}: {}",
            k.best_to
        );
        assert!(
            (k.closes - day_90).abs() <= strays[1] * 1.5,
            "{row:?}: {}",
            k.closes
        );
        if row["place"].starts_with("Harvard") {
            assert!((k.best_to - 204.0).abs() <= 1.5 && (k.closes - 234.0).abs() <= 1.5);
        }
        best += k.best_to - day_75;
        closes += k.closes - day_90;
        met += 1.0;
    }
    assert_eq!(met, 7.0);
    assert!(
        (best / met).abs() <= 7.0,
        "mean error of the 75 % day: {}",
        best / met
    );
    assert!(
        (closes / met).abs() <= 7.0,
        "mean error of the 90 % day: {}",
        closes / met
    );
}
