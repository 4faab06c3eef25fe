//! What must hold at every place, for every wood class, on every day. Our own statements, no outside source.

use crate::support::*;
use calc::terms::species::WoodClass;
use calc::timing::{PointClimate, Season, SeasonConstants, Verdict};
use chrono::{Datelike, NaiveDate};

/// Calls a check for every place and class that has dates.
fn each_dated(c: &SeasonConstants, mut check: impl FnMut(&PointClimate, WoodClass, &Season<'_>)) {
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
