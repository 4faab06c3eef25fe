//! The year tape.

use super::{Drawn, crowded, kept};
use crate::answer::season::drawing::{DaySpan, Pin, YearLabels, YearTape, year, year_small};

fn year_labels() -> YearLabels<'static> {
    YearLabels {
        aria: "year",
        months: [
            "Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec",
        ],
        initials: ["J", "F", "M", "A", "M", "J", "J", "A", "S", "O", "N", "D"],
        bark: "Bark",
        rules: "Rules",
        asked: "12 June",
        today: "today",
        window: "your window: 1 June to 4 July",
        window_short: "window",
    }
}

#[test]
fn bands_are_as_long_as_their_days_and_wrap_the_new_year() {
    for span in [
        DaySpan { from: 1, to: 365 },
        DaySpan { from: 140, to: 185 },
        DaySpan { from: 305, to: 20 },
        DaySpan { from: 365, to: 1 },
        DaySpan { from: 181, to: 182 },
    ] {
        let days = if span.to < span.from {
            366 + span.to - span.from
        } else {
            span.to - span.from + 1
        };
        let spans = [span];
        let y = YearTape {
            slips: &spans,
            ..YearTape::default()
        };
        let all = kept(|out| year(out, &y, &year_labels()));
        let long = |figure: usize| -> f64 {
            let bands = all.iter().filter(|d| d.figure == figure && d.has("fband"));
            bands.map(|d| d.n("width")).sum()
        };
        let want = f64::from(days) / 365.0 * 714.0;
        assert!((long(0) - want).abs() < 0.3, "{span:?}: {} {want}", long(0));
        // Narrow: 181 and 184 days share 274 px each, so a row's px a day differ by under 2 in 100.
        let want = f64::from(days) / 365.0 * 548.0;
        assert!(
            (long(1) - want).abs() < 0.02 * want + 0.3,
            "{span:?}: {} {want}",
            long(1)
        );
    }
}

#[test]
fn a_closed_month_is_crossed_and_a_caution_is_not() {
    let may = [DaySpan { from: 121, to: 151 }];
    let closed = YearTape {
        closed: &may,
        ..YearTape::default()
    };
    let caution = YearTape {
        caution: &may,
        ..YearTape::default()
    };
    let a = kept(|out| year(out, &closed, &year_labels()));
    let b = kept(|out| year(out, &caution, &year_labels()));
    assert!(a.iter().all(|d| !d.has("dot")));
    assert!(b.iter().any(|d| d.has("dot")));
    // Two half months, two strokes each, in the wide figure.
    let crosses = |all: &[Drawn]| {
        let long = all
            .iter()
            .filter(|d| d.figure == 0 && d.tag == "path")
            .map(|d| d.get("d"));
        long.filter(|d| d.matches('L').count() == 4 && d.contains('Z'))
            .count()
    };
    assert_eq!(crosses(&a), 1);
    assert_eq!(crosses(&b), 0);
}

#[test]
fn labels_of_the_year_stay_apart() {
    let windows: [&[DaySpan]; 3] = [
        &[],
        &[DaySpan { from: 152, to: 185 }],
        &[DaySpan { from: 300, to: 20 }],
    ];
    for window in windows {
        for asked in (1..=365).step_by(7) {
            for today in [1, 90, 163, 300, 365] {
                let pins = [20, 22, 24, 163, 364, 365].map(|day| Pin { day, number: 1 });
                let y = YearTape {
                    slips: window,
                    window,
                    asked: Some(asked),
                    today: Some(today),
                    visits: &pins,
                    ..YearTape::default()
                };
                for small in [false, true] {
                    let all = kept(|out| {
                        if small {
                            year_small(out, &y, &year_labels());
                        } else {
                            year(out, &y, &year_labels());
                        }
                    });
                    let found = crowded(&all);
                    assert!(found.is_empty(), "{asked} {today} {window:?}: {found:?}");
                }
            }
        }
    }
}

/// Tails and heads of letters counted: a label above another leaves paper between them.
#[test]
fn the_day_s_label_leaves_paper_above_the_window_s() {
    let labels = YearLabels {
        asked: "31 July, my day",
        today: "today, jy",
        window: "your window: 10 July to 4 August",
        ..year_labels()
    };
    let mut met = 0;
    for from in (1..=330).step_by(11) {
        let window = [DaySpan {
            from,
            to: from + 30,
        }];
        for asked in (1..=365).step_by(5) {
            let y = YearTape {
                slips: &window,
                window: &window,
                asked: Some(asked),
                today: Some(20),
                ..YearTape::default()
            };
            let all = kept(|out| year(out, &y, &labels));
            let texts: Vec<&Drawn> = all.iter().filter(|d| d.tag == "text").collect();
            let whole = |d: &Drawn| {
                let [left, _, right, _] = d.text_box(1.0);
                let (y, size) = (d.n("y"), d.n("font-size"));
                [left, y - 0.76 * size, right, y + 0.24 * size]
            };
            for a in texts.iter().filter(|d| d.has("tb")) {
                for b in texts
                    .iter()
                    .filter(|d| d.figure == a.figure && d.text != a.text)
                {
                    let ([al, at, ar, ab], [bl, bt, br, bb]) = (whole(a), whole(b));
                    if al < br && bl < ar {
                        met += usize::from(b.text.starts_with("your"));
                        let apart = (bt - ab).max(at - bb);
                        assert!(apart >= 1.0, "{} and {}: {apart}", a.text, b.text);
                    }
                }
            }
        }
    }
    assert!(met > 100, "they stand over each other often: {met}");
}
