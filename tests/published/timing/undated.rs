//! Where there is no date: no place, no winter, no spring, palms; and short seasons. Our own statements, no outside source.

use crate::support::*;
use calc::terms::place::Hemisphere;
use calc::terms::species::WoodClass;
use calc::terms::tree::{DrySpell, Vigour};
use calc::timing::{
    DayRating, Fill, Flag, NoClimate, Site, TreeTiming, Verdict, Where, climate, season,
};
use chrono::Datelike;

/// The envelope of model point 12: March to July, one month longer for conifers and evergreens; half a year later in
/// the south. The months are our own assumption about common practice (no source).
#[test]
fn without_a_place_the_hemispheres_envelope_says_test_first_and_gives_no_number() {
    let c = constants();
    for (wood, longer) in [
        (WoodClass::Ring, 0),
        (WoodClass::Unknown, 0),
        (WoodClass::Conifer, 1),
        (WoodClass::EvergreenBroadleaf, 1),
    ] {
        for (hemisphere, first) in [(Hemisphere::North, 3), (Hemisphere::South, 9)] {
            let t = TreeTiming {
                wood: Some(wood),
                f_sum: Some(235.0),
                f_is_estimate: false,
            };
            let s = season(&ask(t, Where::Hemisphere(hemisphere)), &c);
            let months: Vec<u32> = (0..5 + longer).map(|i| (first + i - 1) % 12 + 1).collect();
            for d in whole_year(2028) {
                let inside = months.contains(&d.month());
                assert_eq!(
                    s.verdict(d),
                    if inside {
                        Verdict::TestFirst
                    } else {
                        Verdict::Unknown
                    },
                    "{wood:?} {d}"
                );
                assert_eq!(s.p_for_rules(d), if inside { 0.6 } else { 0.0 });
                assert_eq!((s.probability(d), s.window(d)), (None, None));
            }
            let best = s.next_stretches(day(2027, first, 1), &|_| false, 1)[0]
                .best
                .expect("best days");
            let want = if hemisphere == Hemisphere::North {
                (day(2027, 5, 1), day(2027, 6, 30))
            } else {
                (day(2027, 11, 1), day(2027, 12, 31))
            };
            assert_eq!(best, want);
        }
    }
}

#[test]
fn palms_have_no_timing() {
    let c = constants();
    let s = season(
        &ask(
            TreeTiming {
                wood: None,
                f_sum: None,
                f_is_estimate: false,
            },
            Where::Hemisphere(Hemisphere::North),
        ),
        &c,
    );
    assert!(
        !s.is_timed()
            && s.best_day(day(2027, 1, 1), &|_| false).is_none()
            && s.p_for_rules(day(2027, 5, 1)) == 0.0
    );
    assert!(s.next_stretches(day(2027, 1, 1), &|_| false, 2).is_empty());
}

#[test]
fn a_conifer_without_a_winter_has_no_opening_date() {
    let (c, all) = (constants(), stations());
    // Florida's south: every month is warm.
    let p = point(&all, 26.5, -81.0, 5.0, &c);
    let s = season_at(WoodClass::Conifer, 430.0, &p, &c);
    assert!(s.is_any_growing_month() && s.flags().contains(&Flag::NoOpeningDate));
    assert!(
        whole_year(2027).all(|d| s.verdict(d) == Verdict::TestFirst && s.probability(d).is_none())
    );
    assert!(s.best_day(day(2027, 8, 20), &|_| false).is_some());
    let broad = season_at(WoodClass::Diffuse, 180.0, &p, &c);
    assert!(
        broad.flags().contains(&Flag::MildWinter) && broad.flags().contains(&Flag::LowLatitude)
    );
    assert!(broad.dates_of(2027).expect("dates").sd_open >= 20.0);
}

#[test]
fn places_far_off_and_points_that_are_not_on_earth_have_no_climate() {
    let (c, all) = (constants(), stations());
    let at = |lat, lon, elev_m| climate::at(&all, Site { lat, lon, elev_m }, &c);
    assert!(
        matches!(at(30.0, -45.0, None), Err(NoClimate::TooFar { nearest_km, .. }) if nearest_km > 300.0)
    );
    // A longitude without its sign lands in Asia.
    assert!(matches!(
        at(42.36, 71.06, None),
        Err(NoClimate::TooFar { .. })
    ));
    for (lat, lon, elev) in [
        (95.0, 0.0, None),
        (0.0, 181.0, None),
        (f64::NAN, 0.0, None),
        (45.0, 7.0, Some(45_000.0)),
    ] {
        assert_eq!(at(lat, lon, elev), Err(NoClimate::BadPoint));
    }
    assert_eq!(
        climate::at(
            &[],
            Site {
                lat: 45.0,
                lon: 7.0,
                elev_m: None
            },
            &c
        ),
        Err(NoClimate::NoPlaces)
    );
    let s = season(
        &ask(
            tree(WoodClass::Ring, 235.0),
            Where::Site(Site {
                lat: 30.0,
                lon: -45.0,
                elev_m: None,
            }),
        ),
        &c,
    );
    assert_eq!(
        (s.verdict(day(2027, 5, 1)), s.flags()),
        (
            Verdict::TestFirst,
            &[Flag::FarFromPlaces, Flag::LowLatitude][..]
        )
    );
}

#[test]
fn ground_too_cold_for_leaves_gets_no_date() {
    let (c, all) = (constants(), stations());
    let p = point(&all, 46.5, 8.0, 4200.0, &c);
    for (class, f) in CLASSES {
        let s = season_at(class, f, &p, &c);
        assert!(
            !s.is_dated() && s.flags().contains(&Flag::TooCold),
            "{class:?}"
        );
    }
}

#[test]
fn a_season_that_never_reaches_eight_in_ten_is_called_short() {
    let (c, all) = (constants(), stations());
    let p = point(&all, 42.36, -71.06, 15.0, &c);
    let mut a = ask(tree(WoodClass::Ring, 235.0), Where::Climate(&p));
    assert!(!season(&a, &c).is_short(day(2027, 5, 1)));
    (a.dry_spell, a.growth, a.tree.f_is_estimate) = (DrySpell::Month, Vigour::Slow, true);
    let s = season(&a, &c);
    assert!(s.is_short(day(2027, 5, 1)));
    assert!(whole_year(2027).all(|d| s.verdict(d) != Verdict::Best));
}

#[test]
fn words_fill_the_tape_and_the_list_as_the_table_says() {
    use Verdict::*;
    for (v, fill, level) in [
        (Best, Fill::Solid, DayRating::Good),
        (OpeningTest, Fill::Hatched, DayRating::Possible),
        (ClosingTest, Fill::Hatched, DayRating::Possible),
        (TooEarly, Fill::Hatched, DayRating::Poor),
        (Late, Fill::Hatched, DayRating::Poor),
        (Dormant, Fill::Empty, DayRating::Poor),
        (Bonded, Fill::Empty, DayRating::Poor),
        (TestFirst, Fill::Hatched, DayRating::Possible),
        (Unknown, Fill::Empty, DayRating::Poor),
    ] {
        assert_eq!((v.fill(), v.rating()), (fill, level), "{v:?}");
    }
}
