//! What must hold at every place, for every wood class, on every day. Our own statements, no outside source.

use crate::support::*;
use calc::timing::doy::Hemisphere;
use calc::timing::{
    Constants, Daily, DrySpell, Fill, Flag, Growth, Level, NoClimate, Observed, PointClimate,
    Rates, Season, Site, Stage, Station, TreeTiming, Verdict, Where, WoodClass, climate, season,
};
use chrono::{Datelike, NaiveDate};

const CLASSES: [(WoodClass, f64); 3] = [
    (WoodClass::Ring, 235.0),
    (WoodClass::Diffuse, 180.0),
    (WoodClass::Conifer, 330.0),
];

/// Every seventh place of the table, at its own elevation.
fn places(c: &Constants) -> Vec<(Station, PointClimate)> {
    let all = stations();
    all.iter()
        .step_by(7)
        .map(|s| {
            (
                *s,
                point(
                    &all,
                    f64::from(s.lat),
                    f64::from(s.lon),
                    f64::from(s.elev_m),
                    c,
                ),
            )
        })
        .collect()
}

fn whole_year(year: i32) -> impl Iterator<Item = NaiveDate> {
    day(year, 1, 1)
        .iter_days()
        .take_while(move |d| d.year() == year)
}

/// Calls a check for every place and class that has dates.
fn each_dated(c: &Constants, mut check: impl FnMut(&PointClimate, WoodClass, &Season<'_>)) {
    let mut dated = 0;
    for (_, p) in places(c) {
        for (class, f) in CLASSES {
            let s = season_at(class, f, &p, c);
            if s.is_dated() {
                dated += 1;
                check(&p, class, &s);
            }
        }
    }
    assert!(dated > 400, "only {dated} dated seasons");
}

#[test]
fn the_window_opens_before_its_best_days_and_closes_after_them() {
    let c = constants();
    each_dated(&c, |p, class, s| {
        let k = s.curve_of(2027).expect("dates");
        assert!(
            k.opens < k.best_from
                && k.best_from < k.best_to
                && k.best_to < k.closes
                && k.closes < k.last_possible,
            "{:?} {class:?}: {k:?}",
            p.site
        );
        assert!(
            k.closes - k.opens < 365.0,
            "{:?} {class:?}: a window longer than a year",
            p.site
        );
    });
}

#[test]
fn probability_stays_within_0_and_1_and_has_one_peak_a_season() {
    let c = constants();
    each_dated(&c, |p, class, s| {
        let all: Vec<f64> = day(2026, 1, 1)
            .iter_days()
            .take(365 * 2)
            .map(|d| s.probability(d).expect("p"))
            .collect();
        assert!(
            all.iter().all(|p| (0.0..=1.0).contains(p)),
            "{:?} {class:?}",
            p.site
        );
        // Two years hold at most three rises that turn into falls, and at least one.
        let mut rising = false;
        let mut peaks = 0;
        for pair in all.windows(2) {
            if pair[1] > pair[0] + 1e-9 {
                rising = true;
            } else if rising && pair[1] < pair[0] - 1e-9 {
                rising = false;
                peaks += 1;
            }
        }
        assert!(
            (1..=3).contains(&peaks),
            "{:?} {class:?}: {peaks} peaks in two years",
            p.site
        );
        let k = s.curve_of(2027).expect("dates");
        let season: Vec<f64> = (0..=60)
            .map(|i| {
                let d = k.opens - 30.0 + f64::from(i) * (k.closes - k.opens + 60.0) / 60.0;
                calc::timing::verdict::probability(d, k.opens, k.sd_open, k.closes, k.sd_close)
            })
            .collect();
        let top = season.iter().cloned().fold(0.0, f64::max);
        let at = season.iter().position(|p| *p == top).expect("a top");
        assert!(
            season[..at].windows(2).all(|w| w[0] <= w[1] + 1e-12),
            "{:?} {class:?}: rises to its peak",
            p.site
        );
        assert!(
            season[at..].windows(2).all(|w| w[0] >= w[1] - 1e-12),
            "{:?} {class:?}: falls after it",
            p.site
        );
    });
}

#[test]
fn verdict_and_probability_never_disagree() {
    let c = constants();
    each_dated(&c, |p, class, s| {
        for d in whole_year(2028) {
            let (v, q) = (s.verdict(d), s.probability(d).expect("p"));
            let fits = match v {
                Verdict::Best => q >= 0.8,
                Verdict::OpeningTest | Verdict::ClosingTest => q >= 0.4,
                Verdict::TooEarly | Verdict::Late => (0.1..0.4).contains(&q),
                Verdict::Dormant | Verdict::Bonded => q < 0.1,
                Verdict::TestFirst | Verdict::Unknown => false,
            };
            assert!(fits, "{:?} {class:?} {d}: {v:?} at {q}", p.site);
            let w = s.window(d).expect("dates");
            let between = w.best_from <= d && d <= w.best_to;
            assert_eq!(
                v == Verdict::Best,
                q >= 0.8 && between,
                "{:?} {class:?} {d}",
                p.site
            );
        }
    });
}

#[test]
fn words_come_in_the_order_of_the_year() {
    // From one dormant day to the next the words only go forward.
    let rank = |v: Verdict| match v {
        Verdict::Dormant => 0,
        Verdict::TooEarly => 1,
        Verdict::OpeningTest => 2,
        Verdict::Best => 3,
        Verdict::ClosingTest => 4,
        Verdict::Late => 5,
        Verdict::Bonded => 6,
        Verdict::TestFirst | Verdict::Unknown => panic!("a dated season has no {v:?}"),
    };
    let c = constants();
    each_dated(&c, |p, class, s| {
        let mut before: Option<(i32, Verdict)> = None;
        for d in day(2026, 1, 1).iter_days().take(365 * 2) {
            let (year, v) = (s.window(d).expect("dates").year, s.verdict(d));
            if let Some((y, last)) = before
                && y == year
                && rank(last) != 6
            {
                assert!(
                    rank(last) <= rank(v),
                    "{:?} {class:?} {d}: {v:?} after {last:?}",
                    p.site
                );
            }
            before = Some((year, v));
        }
    });
}

#[test]
fn a_colder_spring_never_opens_the_window_earlier() {
    let c = constants();
    for (_, p) in places(&c).into_iter().step_by(3) {
        for (class, f) in CLASSES {
            let mut last: Option<f64> = None;
            for colder in 0..8 {
                let mut q = p;
                for m in 0..12 {
                    q.tmin[m] -= f64::from(colder) * 0.5;
                    q.tmax[m] -= f64::from(colder) * 0.5;
                }
                let Some(k) = season_at(class, f, &q, &c).curve_of(2027) else {
                    continue;
                };
                if let Some(before) = last {
                    assert!(
                        k.opens >= before - 1e-9,
                        "{:?} {class:?}: {} after {before}",
                        p.site,
                        k.opens
                    );
                }
                last = Some(k.opens);
            }
        }
    }
}

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
fn higher_ground_never_opens_earlier() {
    let (c, all) = (constants(), stations());
    for (lat, lon) in [
        (42.1, -74.4),
        (38.6, -78.9),
        (46.0, 14.6),
        (47.3, 11.4),
        (-43.5, 171.0),
        (45.5, -122.6),
        (35.0, -106.0),
    ] {
        for (class, f) in CLASSES {
            let mut last: Option<f64> = None;
            for step in 0..20 {
                let p = point(&all, lat, lon, f64::from(step) * 100.0, &c);
                if let Some(k) = season_at(class, f, &p, &c).curve_of(2027) {
                    assert!(
                        last.is_none_or(|b| k.opens >= b),
                        "{lat} {lon} {class:?} at {step}00 m"
                    );
                    last = Some(k.opens);
                }
            }
        }
    }
}

#[test]
fn mirrored_hemispheres_give_mirrored_dates_within_two_days() {
    let c = constants();
    let mut compared = 0;
    for (_, p) in places(&c).into_iter().filter(|(s, _)| s.lat > 33.0) {
        let mut mirror = p;
        mirror.site.lat = -p.site.lat;
        for m in 0..12 {
            mirror.tmin[(m + 6) % 12] = p.tmin[m];
            mirror.tmax[(m + 6) % 12] = p.tmax[m];
        }
        for (class, f) in CLASSES {
            let north = season_at(class, f, &p, &c).curve_of(2027);
            let south = season_at(class, f, &mirror, &c).curve_of(2027);
            assert_eq!(north.is_some(), south.is_some(), "{:?} {class:?}", p.site);
            let (Some(n), Some(s)) = (north, south) else {
                continue;
            };
            // Where winters are mild the sum begins on its first day, and the search on different days of the month.
            if n.budbreak < 75.0 || (class == WoodClass::Conifer && n.opens < 45.0) {
                continue;
            }
            for (a, b) in [
                (n.budbreak, s.budbreak),
                (n.opens, s.opens),
                (n.best_from, s.best_from),
                (n.best_to, s.best_to),
                (n.closes, s.closes),
            ] {
                assert!(
                    (b - a - 182.5).abs() <= 2.0,
                    "{:?} {class:?}: {a} and {b}",
                    p.site
                );
            }
            compared += 1;
        }
    }
    assert!(compared > 250, "{compared}");
}

#[test]
fn a_window_that_crosses_the_new_year_is_one_window() {
    let (c, all) = (constants(), stations());
    // Canterbury, New Zealand, in the hills.
    let p = point(&all, -43.1, 171.7, 600.0, &c);
    let s = season_at(WoodClass::Diffuse, 188.0, &p, &c);
    let w = s.window(day(2028, 1, 2)).expect("dates");
    assert_eq!(w.year, 2027);
    assert!(w.opens.year() == 2027 && w.closes.year() == 2028, "{w:?}");
    let (before, after) = (
        s.probability(day(2027, 12, 31)).expect("p"),
        s.probability(day(2028, 1, 1)).expect("p"),
    );
    assert!(before > after && before - after < 0.05, "{before} {after}");
    let stretches = s.next_stretches(day(2027, 7, 1), &|_| false, 2);
    assert!(
        stretches[0].from.year() == 2027 && stretches[0].to.year() == 2028,
        "{stretches:?}"
    );
    assert!(stretches[1].from.year() == 2028, "{stretches:?}");
    // The calendar year begins inside the window: the tape starts with a word of the closing side.
    let tape = s.tape(2028);
    assert!(
        matches!(
            tape[0].verdict,
            Verdict::Best | Verdict::ClosingTest | Verdict::Late
        ),
        "{tape:?}"
    );
}

#[test]
fn the_29th_of_february_answers_as_the_28th_and_the_tape_has_no_hole() {
    let (c, all) = (constants(), stations());
    let p = point(&all, 32.0, -83.0, 100.0, &c);
    let s = season_at(WoodClass::Diffuse, 120.0, &p, &c);
    assert_eq!(
        s.probability(day(2028, 2, 29)),
        s.probability(day(2028, 2, 28))
    );
    assert_eq!(
        s.probability(day(2028, 6, 29)),
        s.probability(day(2027, 6, 29))
    );
    assert_eq!(s.days(2028).count(), 366);
    let tape = s.tape(2028);
    assert_eq!(
        (tape[0].from, tape[tape.len() - 1].to),
        (day(2028, 1, 1), day(2028, 12, 31))
    );
    for pair in tape.windows(2) {
        assert_eq!(pair[0].to.succ_opt(), Some(pair[1].from));
        assert_ne!(pair[0].verdict, pair[1].verdict);
    }
}

fn here(stage: Stage, date: NaiveDate) -> Observed {
    Observed {
        stage,
        date,
        elsewhere: None,
        rates: Rates::Fitted,
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
    a.spring = &fahrenheit;
    assert!(season(&a, &c).flags().contains(&Flag::SpringFarFromClimate));
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
    let plain = closes(DrySpell::None, Growth::Ordinary);
    for (dry, growth, want) in [
        (DrySpell::TwoWeeks, Growth::Ordinary, -14.0),
        (DrySpell::Month, Growth::Ordinary, -28.0),
        (DrySpell::None, Growth::Slow, -10.0),
        (DrySpell::None, Growth::Fast, 7.0),
        (DrySpell::Month, Growth::Slow, -38.0),
    ] {
        assert!(
            (closes(dry, growth) - plain - want).abs() < 1e-9,
            "{dry:?} {growth:?}"
        );
    }
}

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
        (Verdict::TestFirst, &[Flag::FarFromPlaces][..])
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

#[test]
fn the_best_day_is_never_a_forbidden_one_and_a_forbidden_season_has_none() {
    let c = constants();
    let june = |d: NaiveDate| (4..=7).contains(&d.month());
    each_dated(&c, |p, class, s| {
        for start in [day(2027, 1, 1), day(2027, 6, 15), day(2027, 11, 1)] {
            let best = s.best_day(start, &|_| false);
            assert!(
                best.is_some_and(|b| b >= start && s.is_open(b)),
                "{:?} {class:?}",
                p.site
            );
            if let Some(b) = s.best_day(start, &june) {
                assert!(!june(b) && b >= start && s.is_open(b));
            }
            for stretch in s.next_stretches(start, &june, 3) {
                assert!(
                    stretch
                        .from
                        .iter_days()
                        .take_while(|d| *d <= stretch.to)
                        .all(|d| !june(d) && s.is_open(d))
                );
                if let Some((a, b)) = stretch.best {
                    assert!(
                        stretch.from <= a
                            && a <= b
                            && b <= stretch.to
                            && s.is_best(a)
                            && s.is_best(b)
                    );
                }
            }
            assert!(
                s.best_day(start, &|_| true).is_none()
                    && s.next_stretches(start, &|_| true, 2).is_empty()
            );
        }
    });
}

#[test]
fn a_season_that_never_reaches_eight_in_ten_is_called_short() {
    let (c, all) = (constants(), stations());
    let p = point(&all, 42.36, -71.06, 15.0, &c);
    let mut a = ask(tree(WoodClass::Ring, 235.0), Where::Climate(&p));
    assert!(!season(&a, &c).is_short(day(2027, 5, 1)));
    (a.dry_spell, a.growth, a.tree.f_is_estimate) = (DrySpell::Month, Growth::Slow, true);
    let s = season(&a, &c);
    assert!(s.is_short(day(2027, 5, 1)));
    assert!(whole_year(2027).all(|d| s.verdict(d) != Verdict::Best));
}

#[test]
fn words_fill_the_tape_and_the_list_as_the_table_says() {
    use Verdict::*;
    for (v, fill, level) in [
        (Best, Fill::Solid, Level::Good),
        (OpeningTest, Fill::Hatched, Level::Possible),
        (ClosingTest, Fill::Hatched, Level::Possible),
        (TooEarly, Fill::Hatched, Level::Poor),
        (Late, Fill::Hatched, Level::Poor),
        (Dormant, Fill::Empty, Level::Poor),
        (Bonded, Fill::Empty, Level::Poor),
        (TestFirst, Fill::Hatched, Level::Possible),
        (Unknown, Fill::Empty, Level::Poor),
    ] {
        assert_eq!((v.fill(), v.level()), (fill, level), "{v:?}");
    }
}
