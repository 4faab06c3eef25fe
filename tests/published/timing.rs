//! The timing engine against its worked evaluations, the latitude ladder, published windows and Hopkins' law.
//! Sources: content/evidence/timing_examples.csv and windows_published.csv (each row names its own).

#[path = "timing/calendar.rs"]
mod calendar;
#[path = "timing/degree_days.rs"]
mod degree_days;
#[path = "timing/knowledge.rs"]
mod knowledge;
#[path = "timing/limits.rs"]
mod limits;
#[path = "timing/places.rs"]
mod places;
#[path = "timing/properties.rs"]
mod properties;
#[path = "timing/region.rs"]
mod region;
#[path = "timing/restrictions.rs"]
mod restrictions;
#[path = "timing/spring.rs"]
mod spring;
#[path = "timing/support.rs"]
mod support;
#[path = "timing/undated.rs"]
mod undated;
#[path = "timing/wood.rs"]
mod wood;

use calc::terms::species::WoodClass;
use calc::timing::shift::{Rates, days as shift_days};
use calc::timing::{Site, Verdict};
use support::*;

/// Any year without 29 February: the examples are days of the year.
const YEAR: i32 = 2027;

#[test]
fn every_worked_evaluation_is_met_within_a_day() {
    let (c, stations) = (constants(), stations());
    for r in rows("content/evidence/timing_examples.csv") {
        let name = &r["case"];
        let p = point(
            &stations,
            number(&r, "lat"),
            number(&r, "lon"),
            number(&r, "elev_m"),
            &c,
        );
        assert!(
            (p.nearest_km - number(&r, "nearest_place_km")).abs() <= 1.0,
            "{name}: {} km",
            p.nearest_km
        );
        let s = season_at(wood(&r["wood_class"]), number(&r, "F"), &p, &c);
        let k = s.curve_of(YEAR).expect("dates");
        assert!(
            (k.budbreak - number(&r, "B_doy")).abs() <= 0.1,
            "{name}: budbreak {}",
            k.budbreak
        );
        let dates = s.dates_of(YEAR).expect("dates");
        for (column, got) in [
            ("budbreak50", dates.budbreak),
            ("opens", dates.opens),
            ("best_from", dates.best_from),
            ("best_to", dates.best_to),
            ("closes", dates.closes),
            ("last_possible", dates.last_possible),
        ] {
            let want = day_month(&r[column], YEAR);
            assert!(
                days_between(want, got).abs() <= 1,
                "{name}: {column} {got}, not {want}"
            );
        }
        assert!(
            (dates.sd_open - number(&r, "sd_open")).abs() <= 0.05,
            "{name}: sd {}",
            dates.sd_open
        );
        assert!(
            (dates.sd_close - number(&r, "sd_close")).abs() <= 0.05,
            "{name}: sd {}",
            dates.sd_close
        );
        let asked = day_month(&r["asked"], YEAR);
        let p = s.probability(asked).expect("a probability");
        assert!((p - number(&r, "p_slip")).abs() <= 0.02, "{name}: p {p}");
        let want = match r["verdict"].split([' ', ';']).next() {
            Some("best") => Verdict::Best,
            Some("closing") => Verdict::ClosingTest,
            Some("opening") => Verdict::OpeningTest,
            Some("late") => Verdict::Late,
            other => panic!("{name}: no verdict {other:?}"),
        };
        assert_eq!(s.verdict(asked), want, "{name}");
    }
}

/// timing.md A, "latitude ladder for tests": our own model's earlier run, so a regression check and no source.
#[test]
fn the_latitude_ladder_at_83_west_and_250_m_is_met_within_a_day() {
    let (c, stations) = (constants(), stations());
    for (lat, diffuse, ring) in [
        (32.0, ("14 Mar", "21 Jun"), ("13 Mar", "17 Jun")),
        (36.0, ("24 Mar", "27 Jun"), ("24 Mar", "22 Jun")),
        (40.0, ("10 Apr", "7 Jul"), ("11 Apr", "30 Jun")),
        (44.0, ("4 May", "22 Jul"), ("6 May", "11 Jul")),
        (46.0, ("12 May", "27 Jul"), ("14 May", "15 Jul")),
    ] {
        let p = point(&stations, lat, -83.0, 250.0, &c);
        for (class, f, (opens, closes)) in [
            (WoodClass::Diffuse, 188.0, diffuse),
            (WoodClass::Ring, 250.0, ring),
        ] {
            let d = season_at(class, f, &p, &c).dates_of(YEAR).expect("dates");
            for (got, want) in [(d.opens, opens), (d.closes, closes)] {
                let want = day_month(want, YEAR);
                assert!(
                    days_between(want, got).abs() <= 1,
                    "{lat}° {class:?}: {got}, not {want}"
                );
            }
        }
    }
}

fn site(lat: f64, lon: f64, elev: f64) -> Site {
    Site {
        lat,
        lon,
        elev_m: Some(elev),
    }
}

/// Hopkins' rates as the Garden Dictionary entry and Richardson et al. 2019 (Appl. Plant Sci. 7(3):e01228) give them:
/// 4 days for 1° of latitude, 5° of longitude and 400 ft. The example is arithmetic on them: 8 + 4 + 8.
#[test]
fn two_degrees_north_five_east_and_800_feet_up_are_20_days_later_by_hopkins() {
    let shift = shift_days(
        site(40.0, -80.0, 100.0),
        site(42.0, -75.0, 100.0 + 800.0 * 0.3048),
        Rates::Hopkins,
        &constants(),
    );
    assert!((shift - 20.0).abs() < 1e-6, "{shift}");
}

/// Harvard Forest to Front Royal: −20.67 d by Hopkins' rates, −16.49 d by the fitted ones; −17.0 d observed from
/// MODIS mid-greenup (137.7 and 120.7; EcoClimLab growth_phenology, data behind Dow et al. 2022).
#[test]
fn harvard_forest_to_front_royal_is_21_days_by_hopkins_and_16_by_the_fitted_rates_and_17_observed()
{
    let c = constants();
    let (from, to) = (
        site(42.5388, -72.1755, 340.0),
        site(38.8935, -78.1454, 300.0),
    );
    let hopkins = shift_days(from, to, Rates::Hopkins, &c);
    let fitted = shift_days(from, to, Rates::Fitted, &c);
    assert!((hopkins - -20.67).abs() < 0.005, "{hopkins}");
    assert!((fitted - -16.49).abs() < 0.005, "{fitted}");
    let observed = 120.7 - 137.7;
    assert!(
        (fitted - observed).abs() < (hopkins - observed).abs(),
        "the fitted rates are nearer to what was seen"
    );
}

/// Rows of windows_published.csv whose strength is "usable". The dates are the sources' own; the model was not fitted to them.
mod published_windows {
    use crate::support::*;
    use calc::terms::species::WoodClass;

    const YEAR: i32 = 2027;

    /// Catskill Forest Association, hemlock bark tag: Memorial Day to mid-August.
    #[test]
    fn hemlock_in_the_catskills_peels_from_memorial_day_to_mid_august() {
        let (c, stations) = (constants(), stations());
        let p = point(&stations, 42.1, -74.4, 500.0, &c);
        let s = season_at(WoodClass::Conifer, 320.0, &p, &c);
        for d in day(YEAR, 5, 27)
            .iter_days()
            .take_while(|d| *d <= day(YEAR, 8, 15))
        {
            assert!(s.is_open(d), "{d}: {:?}", s.verdict(d));
        }
    }

    /// Fowler, "Ways To Stop Losses of Tanbark", USDA Yearbook of Agriculture: from just before the buds swell until the
    /// leaves reach mature size, 6 to 8 weeks.
    #[test]
    fn chestnut_oak_peels_for_six_to_eight_weeks_from_before_bud_swell() {
        let (c, stations) = (constants(), stations());
        let p = point(&stations, 38.6, -78.9, 400.0, &c);
        let d = season_at(WoodClass::Ring, 235.0, &p, &c)
            .dates_of(YEAR)
            .expect("dates");
        assert!(d.opens < d.budbreak);
        let weeks = days_between(d.opens, d.best_to) as f64 / 7.0;
        assert!((6.0..=8.0).contains(&weeks), "{weeks} weeks");
    }

    /// Čufar et al. 2008, Trees 22:749: beech near Ljubljana, leaves on 16 April 2006, cambium at once; three quarters of
    /// the ring by the end of June; cell division ends late July to mid-August.
    #[test]
    fn beech_at_ljubljana_opens_by_leaf_out_and_ends_between_late_july_and_mid_august() {
        let (c, stations) = (constants(), stations());
        let p = point(&stations, 46.0, 14.6, 400.0, &c);
        let d = season_at(WoodClass::Diffuse, 195.0, &p, &c)
            .dates_of(YEAR)
            .expect("dates");
        assert!(d.opens <= day(YEAR, 4, 16), "{}", d.opens);
        assert!(
            days_between(day(YEAR, 6, 30), d.closes).abs() <= 14,
            "closes at 75 %: {}",
            d.closes
        );
        assert!(
            d.last_possible >= day(YEAR, 7, 25) && d.last_possible <= day(YEAR, 8, 15),
            "{}",
            d.last_possible
        );
    }

    /// Country Life column, The Spectator, 28 March 1941: English oak bark is taken in May, almost two months before hay time.
    #[test]
    fn english_oak_peels_through_may() {
        let (c, stations) = (constants(), stations());
        let p = point(&stations, 52.1, -2.7, 100.0, &c);
        let s = season_at(WoodClass::Ring, 215.0, &p, &c);
        for d in day(YEAR, 5, 1).iter_days().take(31) {
            assert!(s.is_open(d), "{d}: {:?}", s.verdict(d));
        }
    }

    /// Common practice, no source: bark slips in late winter, spring and early summer; autumn and early winter do not serve.
    #[test]
    fn no_species_peels_in_autumn_or_early_winter_where_winters_are_cold() {
        let (c, stations) = (constants(), stations());
        for (lat, lon, elev) in [
            (42.4, -71.1, 15.0),
            (44.9, -93.2, 255.0),
            (52.1, -2.7, 100.0),
            (48.1, 11.6, 520.0),
        ] {
            let p = point(&stations, lat, lon, elev, &c);
            for (class, f) in CLASSES {
                let s = season_at(class, f, &p, &c);
                for d in day(YEAR, 9, 22).iter_days().take(90) {
                    assert!(!s.is_open(d), "{lat} {class:?} {d}: {:?}", s.verdict(d));
                }
            }
        }
    }
}
