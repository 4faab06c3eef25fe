//! Better knowledge wins, and what cannot be used is said: leaf-out seen here or elsewhere, this spring, dry spells.
//! Expected values are worked by hand from the model; our own statements, no outside source.

use crate::support::*;
use calc::terms::place::Hemisphere;
use calc::terms::species::WoodClass;
use calc::terms::tree::{DrySpell, Stage, Vigour};
use calc::timing::{
    Basis, Daily, Flag, Observed, Season, SeasonCase, Site, TreeTiming, Verdict, Where, season,
};

#[test]
fn a_later_leaf_out_never_opens_the_window_earlier_nor_closes_it_earlier() {
    let c = constants();
    for class in [WoodClass::Ring, WoodClass::Diffuse] {
        let mut last: Option<(f64, f64)> = None;
        for n in 0..120 {
            let date = day(2027, 2, 15) + chrono::Days::new(n);
            let mut a = ask(
                TreeTiming {
                    wood: Some(class),
                    f_sum: None,
                    f_is_estimate: false,
                },
                Where::Hemisphere(Hemisphere::North),
            );
            a.observed = Some(here(Stage::BudsOpen, date));
            let k = season(&a, &c).curve_of(2027).expect("dates");
            if let Some((opens, closes)) = last {
                assert!(k.opens > opens && k.closes >= closes, "{class:?} {date}");
            }
            last = Some((k.opens, k.closes));
        }
    }
}

#[test]
fn leaf_out_seen_here_needs_no_place_and_serves_its_own_season_best() {
    let c = constants();
    let mut a = ask(
        tree(WoodClass::Diffuse, 180.0),
        Where::Hemisphere(Hemisphere::North),
    );
    a.observed = Some(here(Stage::BudsOpen, day(2027, 4, 30)));
    let s = season(&a, &c);
    let w = s.dates_of(2027).expect("dates");
    // Model: B − 7, B + 5, 181.6 + 0.62 x, 199.5 + 0.60 x with x = 120 − 125.5.
    assert_eq!(
        (w.opens, w.best_from, w.best_to, w.closes),
        (
            day(2027, 4, 23),
            day(2027, 5, 5),
            day(2027, 6, 27),
            day(2027, 7, 15)
        )
    );
    assert!(
        (w.sd_open - 52f64.sqrt()).abs() < 1e-9,
        "4² + 6²: {}",
        w.sd_open
    );
    let next = s.dates_of(2028).expect("dates");
    assert!(next.sd_open > w.sd_open, "another year is less sure");
    assert!(s.flags().is_empty(), "{:?}", s.flags());
    a.observed = Some(here(Stage::LeavesFull, day(2027, 5, 22)));
    assert_eq!(
        season(&a, &c).dates_of(2027).expect("dates").opens,
        w.opens,
        "22 days before"
    );
    a.observed = Some(here(Stage::FirstLeaf, day(2027, 4, 26)));
    assert_eq!(
        season(&a, &c).dates_of(2027).expect("dates").opens,
        w.opens,
        "4 days after"
    );
}

#[test]
fn a_seen_leaf_out_beats_the_climate_in_its_year_only() {
    let (c, all) = (constants(), stations());
    let p = point(&all, 42.36, -71.06, 15.0, &c);
    let mut a = ask(tree(WoodClass::Diffuse, 180.0), Where::Climate(&p));
    let plain = season(&a, &c);
    a.observed = Some(here(Stage::BudsOpen, day(2027, 5, 10)));
    let s = season(&a, &c);
    assert_eq!(s.dates_of(2027).expect("dates").opens, day(2027, 5, 3));
    assert_eq!(s.dates_of(2028), plain.dates_of(2028));
    assert!(s.probability(day(2027, 4, 25)) < plain.probability(day(2027, 4, 25)));
}

#[test]
fn a_leaf_out_from_elsewhere_is_carried_and_less_sure_and_refused_where_the_rates_do_not_hold() {
    let (c, all) = (constants(), stations());
    let p = point(&all, 42.36, -71.06, 15.0, &c);
    let from = |lat, lon, elev_m| Site { lat, lon, elev_m };
    let with = |elsewhere: Site, place| {
        let mut a = ask(tree(WoodClass::Diffuse, 180.0), place);
        a.observed = Some(Observed {
            elsewhere: Some(elsewhere),
            ..here(Stage::BudsOpen, day(2027, 4, 20))
        });
        season(&a, &c)
    };
    let s = with(from(41.36, -71.06, Some(15.0)), Where::Climate(&p));
    let k = s.curve_of(2027).expect("dates");
    assert!((k.budbreak - (110.0 + 3.49)).abs() < 1e-9, "{}", k.budbreak);
    let sd: f64 = 16.0 + (3.0f64 + 0.25 * 3.49).powi(2) + 36.0;
    assert!((k.sd_open - sd.sqrt()).abs() < 1e-9, "{}", k.sd_open);
    let flag = |s: &Season<'_>, f| assert!(s.flags().contains(&f), "{f:?} not in {:?}", s.flags());
    flag(
        &with(from(32.0, -71.06, None), Where::Climate(&p)),
        Flag::ObservedTooFar,
    );
    flag(
        &with(from(-41.0, 172.0, None), Where::Climate(&p)),
        Flag::ObservedTooFar,
    );
    flag(
        &with(
            from(41.0, -71.0, None),
            Where::Hemisphere(Hemisphere::North),
        ),
        Flag::ObservedNeedsPlace,
    );
    let west = point(&all, 40.0, -105.3, 1700.0, &c);
    flag(
        &with(from(40.5, -105.0, None), Where::Climate(&west)),
        Flag::ObservedNeedsElevation,
    );
    assert_eq!(
        with(
            from(41.0, -71.0, None),
            Where::Hemisphere(Hemisphere::North)
        )
        .verdict(day(2027, 5, 5)),
        Verdict::TestFirst
    );
}

#[test]
fn a_leaf_out_in_autumn_is_not_used() {
    let c = constants();
    let mut a = ask(
        tree(WoodClass::Ring, 235.0),
        Where::Hemisphere(Hemisphere::North),
    );
    a.observed = Some(here(Stage::BudsOpen, day(2027, 10, 10)));
    let s = season(&a, &c);
    assert!(
        !s.is_dated() && s.flags().contains(&Flag::ObservedOutOfSeason),
        "{:?}",
        s.flags()
    );
    a.place = Where::Hemisphere(Hemisphere::South);
    assert!(season(&a, &c).is_dated());
}

/// This spring's temperatures equal to the normals' own sums must change nothing but the spread.
#[test]
fn a_warm_spring_comes_earlier_a_cold_one_later_and_both_are_surer() {
    let (c, all) = (constants(), stations());
    let p = point(&all, 42.36, -71.06, 15.0, &c);
    let mut a = ask(tree(WoodClass::Diffuse, 180.0), Where::Climate(&p));
    let plain = season(&a, &c).curve_of(2027).expect("dates");
    let spring = |warmer: f64, days: u64| -> Vec<Daily> {
        day(2027, 2, 20)
            .iter_days()
            .take(days as usize)
            .map(|date| {
                let (tn, tx) = p.normal(calc::timing::doy::Doy::of(date).number());
                Daily {
                    date,
                    tmin: tn + warmer,
                    tmax: tx + warmer,
                }
            })
            .collect()
    };
    let (warm, cold, few) = (spring(4.0, 80), spring(-3.0, 80), spring(4.0, 30));
    let mut of = |days| {
        a.spring = days;
        season(&a, &c).curve_of(2027).expect("dates")
    };
    // The lifetimes end here: each run borrows its own days.
    let (w, k, f) = (of(&warm), of(&cold), of(&few));
    assert!(
        w.budbreak < plain.budbreak && k.budbreak > plain.budbreak,
        "{} {} {}",
        w.budbreak,
        plain.budbreak,
        k.budbreak
    );
    assert!(w.budbreak < f.budbreak && f.budbreak < plain.budbreak + 6.0);
    assert!(
        w.sd_open < f.sd_open && f.sd_open <= plain.sd_open,
        "{} {} {}",
        w.sd_open,
        f.sd_open,
        plain.sd_open
    );
}

#[test]
fn spring_temperatures_far_from_the_normals_or_with_gaps_are_flagged() {
    let (c, all) = (constants(), stations());
    let p = point(&all, 42.36, -71.06, 15.0, &c);
    let mut a = ask(tree(WoodClass::Diffuse, 180.0), Where::Climate(&p));
    let fahrenheit: Vec<Daily> = day(2027, 3, 1)
        .iter_days()
        .take(60)
        .map(|date| Daily {
            date,
            tmin: 35.0,
            tmax: 55.0,
        })
        .collect();
    let plain = season(&a, &c).curve_of(2027);
    a.spring = &fahrenheit;
    let s = season(&a, &c);
    assert_eq!(s.flags(), [Flag::SpringImpossible]);
    assert_eq!((s.curve_of(2027), s.own_year()), (plain, None), "not used");
    // Ten degrees over the normals is beyond what a whole spring has been, but not beyond a week of it.
    let warm: Vec<Daily> = day(2027, 3, 1)
        .iter_days()
        .take(60)
        .map(|date| {
            let (tn, tx) = p.normal(calc::timing::doy::Doy::of(date).number());
            Daily {
                date,
                tmin: tn + 10.0,
                tmax: tx + 10.0,
            }
        })
        .collect();
    a.spring = &warm;
    let s = season(&a, &c);
    assert_eq!(s.flags(), [Flag::SpringFarFromClimate]);
    let (own, plain) = (s.curve_of(2027).expect("dates"), plain.expect("dates"));
    assert!(own.budbreak < plain.budbreak && own.sd_open > plain.sd_open);
    // Three hot days can be 18 degrees over the normals.
    let hot: Vec<Daily> = warm
        .iter()
        .skip(20)
        .take(3)
        .map(|d| Daily {
            tmin: d.tmin + 8.0,
            tmax: d.tmax + 8.0,
            ..*d
        })
        .collect();
    a.spring = &hot;
    assert_eq!(season(&a, &c).flags(), [Flag::SpringFarFromClimate]);
    a.spring = &warm;
    // A leaf-out that was seen counts before them.
    a.observed = Some(here(Stage::BudsOpen, day(2027, 4, 20)));
    assert_eq!(season(&a, &c).flags(), [Flag::SpringBehindLeafOut]);
    a.observed = None;
    let gaps: Vec<Daily> = day(2027, 3, 1)
        .iter_days()
        .take(60)
        .step_by(2)
        .map(|date| Daily {
            date,
            tmin: 1.0,
            tmax: 9.0,
        })
        .collect();
    a.spring = &gaps;
    assert!(season(&a, &c).flags().contains(&Flag::SpringGaps));
    let late: Vec<Daily> = day(2027, 8, 1)
        .iter_days()
        .take(60)
        .map(|date| Daily {
            date,
            tmin: 10.0,
            tmax: 20.0,
        })
        .collect();
    a.spring = &late;
    assert!(season(&a, &c).flags().contains(&Flag::SpringNotUsed));
    a.spring = &gaps;
    a.place = Where::Hemisphere(Hemisphere::North);
    assert!(season(&a, &c).flags().contains(&Flag::SpringNeedsPlace));
}

#[test]
fn dry_spells_and_slow_growth_end_the_season_sooner_and_fast_growth_later() {
    let (c, all) = (constants(), stations());
    let p = point(&all, 42.1, -74.4, 500.0, &c);
    let closes = |dry_spell, growth| {
        let mut a = ask(tree(WoodClass::Conifer, 330.0), Where::Climate(&p));
        (a.dry_spell, a.growth) = (dry_spell, growth);
        season(&a, &c).curve_of(2027).expect("dates").closes
    };
    let plain = closes(DrySpell::None, Vigour::Ordinary);
    for (dry, growth, want) in [
        (DrySpell::TwoWeeks, Vigour::Ordinary, -14.0),
        (DrySpell::Month, Vigour::Ordinary, -28.0),
        (DrySpell::None, Vigour::Slow, -10.0),
        (DrySpell::None, Vigour::Fast, 7.0),
        (DrySpell::Month, Vigour::Slow, -38.0),
    ] {
        assert!(
            (closes(dry, growth) - plain - want).abs() < 1e-9,
            "{dry:?} {growth:?}"
        );
    }
}

#[test]
fn an_estimated_sum_and_a_low_latitude_widen_the_opening() {
    let (c, all) = (constants(), stations());
    let p = point(&all, 42.36, -71.06, 15.0, &c);
    let mut t = tree(WoodClass::Diffuse, 180.0);
    t.f_is_estimate = true;
    let s = season(&ask(t, Where::Climate(&p)), &c);
    assert!(
        (s.curve_of(2027).expect("dates").sd_open - (14.0f64.powi(2) + 36.0).sqrt()).abs() < 1e-9
    );
    assert_eq!(s.flags(), &[Flag::EstimatedSum]);
}

/// How long it has been dry this summer shortens this season, and says nothing of the next. Our own statement.
#[test]
fn a_dry_spell_shortens_its_own_season_alone() {
    let (c, all) = (constants(), stations());
    let p = point(&all, 43.07, -89.4, 270.0, &c);
    let mut a = ask(tree(WoodClass::Diffuse, 180.0), Where::Climate(&p));
    let closes =
        |a: &SeasonCase<'_>, year: i32| season(a, &c).curve_of(year).expect("dates").closes;
    let plain = closes(&a, 2027);
    (a.dry_spell, a.dry_in) = (DrySpell::Month, Some(2027));
    assert!((closes(&a, 2027) - plain + 28.0).abs() < 1e-9);
    assert!((closes(&a, 2028) - plain).abs() < 1e-9);
    let s = season(&a, &c);
    assert_eq!(
        (s.own_year(), s.dates_of(2027).expect("dates").basis),
        (None, Basis::Climate)
    );
    // Together with a leaf-out of the same season both count; a leaf-out of another season does not serve a dry one.
    a.observed = Some(here(Stage::BudsOpen, day(2027, 4, 20)));
    let seen = season(&a, &c);
    assert_eq!(seen.own_year(), Some(2027));
    let dry = closes(&a, 2027);
    a.dry_spell = DrySpell::None;
    assert!((closes(&a, 2027) - dry - 28.0).abs() < 1e-9);
    assert!((closes(&a, 2028) - plain).abs() < 1e-9);
}
