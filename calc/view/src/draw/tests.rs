//! Geometry of the drawings against the numbers they were given. No printed source covers a drawing,
//! so each check is a property: one scale, ratios kept, nothing outside, labels apart, markup sound.

use super::form::{Distance, DistanceLabels, SizeLabels, distance_tape, size_tape};
use super::mark::{Swatch, brand, defs, sun, swatch};
use super::number::num;
use super::pen::width;
use super::range::{Range, RangeLabels, Share, SharesLabels, range, shares};
use super::reach::{PERSON_M, Reach, ReachLabels, Target, reach};
use super::tag::{TagKind, TagLabels, tag};
use super::tree::{Habit, stand};
use super::trunk::{HAND_MM, RingHeights, Trunk, TrunkLabels, trunk};
use super::year::{Pin, Span, VisitYear, VisitsLabels, Year, YearLabels, visits, year, year_small};
use super::{Both, Grade, ruler};
use crate::out::{Html, Out};

/// An element as it was drawn.
#[derive(Default, Clone, Debug)]
struct Drawn {
    tag: &'static str,
    attrs: Vec<(&'static str, String)>,
    text: String,
    /// Which outermost svg it stands in, counted from zero, and whether inside a nested one.
    figure: usize,
    nested: bool,
}

impl Drawn {
    fn get(&self, key: &str) -> &str {
        self.attrs
            .iter()
            .find(|(k, _)| *k == key)
            .map_or("", |(_, v)| v)
    }
    fn n(&self, key: &str) -> f64 {
        self.get(key)
            .parse()
            .unwrap_or_else(|_| panic!("{key} of {self:?}"))
    }
    fn has(&self, class: &str) -> bool {
        self.get("class").split(' ').any(|c| c == class)
    }
    /// Left, top, right, bottom of a text.
    fn text_box(&self) -> [f64; 4] {
        let size = self.n("font-size");
        let w = width(&self.text, size, self.has("tb")) * 0.94;
        let (x, y) = (self.n("x"), self.n("y"));
        let left = match self.get("text-anchor") {
            "middle" => x - w / 2.0,
            "end" => x - w,
            _ => x,
        };
        [left, y - size * 0.72, left + w, y + size * 0.05]
    }
}

/// A sink that keeps what was drawn.
#[derive(Default)]
struct Kept {
    all: Vec<Drawn>,
    open: Vec<usize>,
    figures: usize,
}

impl Out for Kept {
    fn open(&mut self, tag: &'static str) {
        let depth = self
            .open
            .iter()
            .filter(|i| self.all[**i].tag == "svg")
            .count();
        if tag == "svg" && depth == 0 {
            self.figures += 1;
        }
        self.open.push(self.all.len());
        self.all.push(Drawn {
            tag,
            figure: self.figures.saturating_sub(1),
            nested: depth > 1,
            ..Drawn::default()
        });
    }
    fn attr(&mut self, key: &'static str, value: &str) {
        let i = *self.open.last().expect("an open element");
        assert!(self.all[i].get(key).is_empty(), "{key} twice");
        assert_ne!(key, "style", "policies refuse style attributes");
        self.all[i].attrs.push((key, value.to_owned()));
    }
    fn text(&mut self, text: &str) {
        let i = *self.open.last().expect("an open element");
        self.all[i].text.push_str(text);
    }
    fn close(&mut self) {
        self.open.pop().expect("an open element");
    }
}

fn kept(draw: impl FnOnce(&mut dyn Out)) -> Vec<Drawn> {
    let mut kept = Kept::default();
    draw(&mut kept);
    assert!(kept.open.is_empty(), "an element was left open");
    for d in &kept.all {
        for (key, v) in &d.attrs {
            assert!(!v.contains("NaN") && !v.contains("inf"), "{key}={v}");
        }
        if d.tag == "text" {
            assert!(
                d.n("font-size") >= 12.0 || kept.all[0].has("ruler"),
                "{d:?}"
            );
        }
        if d.tag == "svg" && !d.nested && !d.has("clip") {
            let named = !d.get("aria-label").is_empty() && d.get("role") == "img";
            assert!(named || d.get("aria-hidden") == "true", "{d:?}");
        }
    }
    kept.all
}

/// Texts of one figure that touch, and texts that run out of it.
fn crowded(all: &[Drawn]) -> Vec<String> {
    let mut found = Vec::new();
    let texts: Vec<&Drawn> = all.iter().filter(|d| d.tag == "text").collect();
    for (i, a) in texts.iter().enumerate() {
        let view: Vec<f64> = all
            .iter()
            .find(|d| d.tag == "svg" && d.figure == a.figure)
            .map(|d| {
                d.get("viewBox")
                    .split(' ')
                    .map(|n| n.parse().unwrap())
                    .collect()
            })
            .unwrap();
        let p = a.text_box();
        if p[0] < -2.0 || p[1] < -2.0 || p[2] > view[2] + 2.0 || p[3] > view[3] + 2.0 {
            found.push(format!("{} runs out: {p:?} of {view:?}", a.text));
        }
        for b in &texts[i + 1..] {
            let q = b.text_box();
            if a.figure == b.figure && p[0] < q[2] && q[0] < p[2] && p[1] < q[3] && q[1] < p[3] {
                found.push(format!("{} on {}", a.text, b.text));
            }
        }
    }
    found
}

fn labels() -> TrunkLabels<'static> {
    let size = Both {
        us: "14½ in",
        metric: "37 cm",
    };
    TrunkLabels {
        aria: "trunk",
        living_layer: ["living", "layer"],
        bark: "bark",
        bark_size: Both {
            us: "0.6 in",
            metric: "15 mm",
        },
        wood: "wood",
        dead_bark: ["dead bark,", "leave it"],
        size,
        inch: "in",
        cm: "cm",
        bare_wood: "bare wood",
        better_too: "better: this too",
        at_least: "at least",
        at_least_size: size,
        better: "better",
        better_size: size,
        hand: "your hand",
        hand_size: "7 in, 18 cm",
    }
}

/// Stems from 2 to 60 in.
fn stems() -> Vec<Trunk> {
    let mut all = Vec::new();
    for inches in [2.0, 3.0, 5.0, 9.0, 14.5, 22.0, 40.0, 60.0] {
        for share in [0.01, 0.045, 0.12] {
            for live_share in [1.0, 0.9, 0.5, 0.1] {
                let dbh_mm: f64 = inches * 25.4;
                for ring in [
                    None,
                    Some(RingHeights {
                        at_least_mm: 150.0,
                        better_mm: dbh_mm.max(150.0),
                    }),
                    Some(RingHeights {
                        at_least_mm: 254.0,
                        better_mm: 254.0,
                    }),
                ] {
                    all.push(Trunk {
                        dbh_mm,
                        bark_mm: dbh_mm * share,
                        live_share,
                        ring,
                    });
                }
            }
        }
    }
    all
}

#[test]
fn every_part_of_the_trunk_is_at_one_scale() {
    for t in stems() {
        let px = t.scale();
        let all = kept(|out| trunk(out, &t, &labels()));
        let outer = all
            .iter()
            .filter(|d| d.tag == "circle" && d.has("fwood2"))
            .map(|d| d.n("r"))
            .fold(0.0, f64::max);
        assert!((outer * 2.0 - t.dbh_mm * px).abs() < 0.2, "{t:?} {outer}");
        let inner = all
            .iter()
            .find(|d| d.tag == "circle" && d.has("fwood"))
            .unwrap()
            .n("r");
        assert!(
            (outer - inner - (t.bark_mm * px).min(outer * 0.9)).abs() < 0.2,
            "{t:?}"
        );
        if let Some(ring) = t.ring {
            let bare = all
                .iter()
                .rfind(|d| d.tag == "rect" && d.has("fwood"))
                .unwrap();
            // Ring height over trunk width as in the stem itself.
            let drawn = bare.n("height") / (outer * 2.0);
            let real = ring.at_least_mm / t.dbh_mm;
            assert!((drawn - real).abs() < 0.02 * real, "{t:?}: {drawn} {real}");
            if let Some(added) = all.iter().find(|d| d.tag == "rect" && d.has("dash")) {
                let both = bare.n("height") + added.n("height");
                assert!((both - ring.better_mm * px).abs() < 0.2, "{t:?}");
            } else {
                assert!(ring.better_mm * px <= ring.at_least_mm * px + 1.0);
            }
        } else {
            assert!(
                all.iter()
                    .all(|d| d.text != "bare wood" && d.text != "at least")
            );
        }
        let view = all[0].get("viewBox");
        assert!(view.starts_with("0 0 372 "), "{view}");
        let tall: f64 = view[8..].parse().unwrap();
        assert!(tall < 800.0, "{t:?} is {tall} tall");
        assert!(HAND_MM * px < 120.0);
    }
}

#[test]
fn a_thin_bark_gets_an_inset_that_prints_its_factor() {
    let inset = |bark_mm| {
        let t = Trunk {
            dbh_mm: 400.0,
            bark_mm,
            live_share: 1.0,
            ring: None,
        };
        let all = kept(|out| trunk(out, &t, &labels()));
        let factor = all
            .iter()
            .find(|d| d.text.starts_with('×'))
            .map(|d| d.text.clone())?;
        let band = all
            .iter()
            .find(|d| d.tag == "rect" && d.has("fwood2"))
            .unwrap()
            .n("width");
        let f: f64 = factor[3..].parse().unwrap();
        assert!((band - bark_mm * t.scale() * f).abs() < 0.06, "{band} {f}");
        Some(f)
    };
    assert_eq!(inset(10.0), None);
    assert_eq!(inset(4.0), Some(5.0));
    assert_eq!(inset(1.0), Some(20.0));
}

#[test]
fn dead_bark_is_marked_only_where_there_is_some() {
    for (live_share, marked) in [(1.0, false), (0.8, true), (0.3, true)] {
        let t = Trunk {
            dbh_mm: 300.0,
            bark_mm: 15.0,
            live_share,
            ring: None,
        };
        let all = kept(|out| trunk(out, &t, &labels()));
        assert_eq!(all.iter().any(|d| d.text == "leave it"), marked);
        // The living line runs all round only on a stem that lives all round.
        assert_eq!(
            all.iter().any(|d| d.tag == "circle" && d.has("live")),
            !marked
        );
    }
}

#[test]
fn labels_of_the_trunk_stay_apart() {
    for t in stems() {
        let all = kept(|out| trunk(out, &t, &labels()));
        let found = crowded(&all);
        assert!(found.is_empty(), "{t:?}: {found:?}");
    }
}

fn reach_labels() -> ReachLabels<'static> {
    ReachLabels {
        aria: "reach",
        height: "60 ft (18 m), the height used",
        height_short: "60 ft used",
        foot: "ft",
        metre: "m",
        can_land: "can land here",
        can_throw: "can throw wood",
        people_out: "keep people out",
        heights: ["1 height", "1½ heights", "2 heights"],
    }
}

const LABELS: [&str; 8] = [
    "path, 100 ft",
    "building, 16 ft",
    "road, 98 ft",
    "line, 60 ft",
    "fence, 33 ft",
    "neighbour's tree, 49 ft",
    "tree to keep, 7 ft",
    "building, 1312 ft",
];

fn with_reach(
    height: f64,
    zone: f64,
    out: bool,
    far: &[f64],
    check: impl Fn(&Reach<'_>, &[Drawn]),
) {
    let targets: Vec<Target<'_>> = far
        .iter()
        .zip(LABELS)
        .map(|(d, label)| Target {
            distance_m: *d,
            inside: *d < height,
            label,
        })
        .collect();
    for habit in [Habit::Hardwood, Habit::Conifer] {
        let r = Reach {
            height_used_m: height,
            height_estimate_m: height * 0.87,
            zone_m: height * zone,
            people_out_m: out.then_some(height * 2.0),
            targets: &targets,
            habit,
        };
        check(&r, &kept(|out| reach(out, &r, &reach_labels())));
    }
}

const SETS: [&[f64]; 8] = [
    &[],
    &[30.5],
    &[0.3],
    &[400.0],
    &[30.0, 33.0],
    &[2.0, 30.0, 33.0, 52.0],
    &[5.0, 5.5, 6.0, 9.0, 12.0],
    &[30.0, 5.0, 29.0, 18.0, 10.0, 15.0, 2.0, 400.0],
];

#[test]
fn rings_notches_and_person_share_the_scale_of_the_reach() {
    for height in [4.0, 18.3, 50.0] {
        for (zone, out) in [(1.5, true), (2.0, true), (1.5, false)] {
            for set in SETS {
                with_reach(height, zone, out, set, |r, all| {
                    for (figure, w) in [(0, 720.0), (1, 280.0)] {
                        let px = r.scale(w);
                        let here = || all.iter().filter(move |d| d.figure == figure);
                        // Head to foot 25.7 of the outline, head's middle 23 up, radius 2.7.
                        let head = here().find(|d| {
                            d.tag == "circle"
                                && (d.n("r") - PERSON_M * px / 25.7 * 2.7).abs() < 0.06
                        });
                        assert!(head.is_some(), "person in {r:?}");
                        let dots: Vec<f64> = here()
                            .filter(|d| d.has("dot"))
                            .map(|d| {
                                let arc = d.get("d").split('A').nth(1).unwrap();
                                arc.split(' ').next().unwrap().parse().unwrap()
                            })
                            .collect();
                        let drawn: Vec<f64> = r
                            .targets
                            .iter()
                            .map(|t| t.distance_m * px)
                            .filter(|d| dots.iter().any(|x| (x - d).abs() < 0.06))
                            .collect();
                        assert_eq!(drawn.len(), dots.len(), "a ring stands at no target");
                        let near = r
                            .targets
                            .iter()
                            .filter(|t| t.distance_m <= 2.0 * r.height_used_m);
                        assert!(
                            dots.len() >= near.count(),
                            "a target within two heights has no ring"
                        );
                        let octagons = here().filter(|d| d.has("fstop")).count();
                        assert_eq!(octagons, r.targets.iter().filter(|t| t.inside).count());
                    }
                });
            }
        }
    }
}

#[test]
fn every_target_is_named_or_numbered_and_flags_stay_apart() {
    for height in [4.0, 18.3, 50.0] {
        for set in SETS {
            with_reach(height, 1.5, true, set, |r, all| {
                let found = crowded(all);
                assert!(found.is_empty(), "{r:?}: {found:?}");
                for figure in 0..2 {
                    for (i, t) in r.targets.iter().enumerate() {
                        let own = [t.label.to_owned(), (i + 1).to_string()];
                        let shown = all.iter().any(|d| {
                            d.tag == "text" && d.figure == figure && own.contains(&d.text)
                        });
                        assert!(shown, "{} in {r:?}", t.label);
                    }
                }
            });
        }
    }
}

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
        Span { from: 1, to: 365 },
        Span { from: 140, to: 185 },
        Span { from: 305, to: 20 },
        Span { from: 365, to: 1 },
        Span { from: 181, to: 182 },
    ] {
        let days = if span.to < span.from {
            366 + span.to - span.from
        } else {
            span.to - span.from + 1
        };
        let spans = [span];
        let y = Year {
            slips: &spans,
            ..Year::default()
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
    let may = [Span { from: 121, to: 151 }];
    let closed = Year {
        closed: &may,
        ..Year::default()
    };
    let caution = Year {
        caution: &may,
        ..Year::default()
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
    let windows: [&[Span]; 3] = [
        &[],
        &[Span { from: 152, to: 185 }],
        &[Span { from: 300, to: 20 }],
    ];
    for window in windows {
        for asked in (1..=365).step_by(7) {
            for today in [1, 90, 163, 300, 365] {
                let pins = [20, 22, 24, 163, 364, 365].map(|day| Pin { day, number: 1 });
                let y = Year {
                    slips: window,
                    window,
                    asked: Some(asked),
                    today: Some(today),
                    visits: &pins,
                    ..Year::default()
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

#[test]
fn form_tapes_and_ranges_stay_apart_and_keep_ratios() {
    for mm in [
        None,
        Some(10.0),
        Some(25.0),
        Some(60.0),
        Some(368.3),
        Some(508.0),
        Some(1500.0),
    ] {
        let l = SizeLabels {
            aria: "size",
            inch: "in",
            cm: "cm",
            size: Both {
                us: "14½ in",
                metric: "36.8 cm",
            },
        };
        let all = kept(|out| size_tape(out, mm, &l));
        let found = crowded(&all);
        assert!(found.is_empty(), "{mm:?}: {found:?}");
    }
    for targets in [&[][..], &[0.0], &[4.0, 30.0], &[30.5], &[300.0]] {
        for metric in [false, true] {
            let d = Distance {
                height_used_m: Some(18.3),
                zone_m: Some(27.45),
                targets_m: targets,
                metric,
            };
            let l = DistanceLabels {
                aria: "distance",
                nearest: "path, 100 ft",
                unit: if metric { "m" } else { "ft" },
            };
            let all = kept(|out| distance_tape(out, &d, &l));
            let found = crowded(&all);
            assert!(found.is_empty(), "{targets:?}: {found:?}");
            let zones: Vec<f64> = all
                .iter()
                .filter(|d| d.tag == "rect")
                .map(|d| d.n("width"))
                .collect();
            assert!((zones[1] / zones[0] - 0.5).abs() < 0.01, "{zones:?}");
        }
    }
    for (low, likely, high) in [
        (10.0, 20.0, 40.0),
        (1.0, 2.0, 3.0),
        (75.0, 160.0, 900.0),
        (0.2, 0.4, 0.8),
    ] {
        for grade in [Grade::Measured, Grade::Estimated, Grade::Assumed] {
            let l = RangeLabels {
                aria: "range",
                likely: "20 min",
                unit: "min",
            };
            let all = kept(|out| {
                range(
                    out,
                    &Range {
                        low,
                        likely: Some(likely),
                        high,
                        grade,
                    },
                    &l,
                )
            });
            let found = crowded(&all);
            assert!(found.is_empty(), "{low} {high}: {found:?}");
            let bar = all.iter().find(|d| d.tag == "rect").unwrap();
            let drawn = bar.n("width") / (bar.n("x") - 4.0);
            let real = (high - low) / low;
            assert!((drawn - real).abs() < 0.02 * real, "{drawn} {real}");
        }
    }
    let s = |low, high| Share {
        low,
        likely: Some(low),
        high,
        grade: Grade::Assumed,
        label: "end of season 1: 5 to 40 in 100",
    };
    let rows = [s(0.0, 100.0), s(5.0, 40.0), s(70.0, 70.0)];
    let all = kept(|out| {
        shares(
            out,
            &rows,
            &SharesLabels {
                aria: "shares",
                unit: "in 100",
            },
        )
    });
    assert!(crowded(&all).is_empty(), "{:?}", crowded(&all));
    let full = all
        .iter()
        .find(|d| d.tag == "rect" && d.has("dash"))
        .unwrap();
    assert!((full.n("width") - 702.0).abs() < 0.1);
}

#[test]
fn tags_are_five_shapes_and_hold_their_words() {
    let mut seen = Vec::new();
    for kind in [
        TagKind::Do,
        TagKind::Wait,
        TagKind::OtherWay,
        TagKind::Professional,
        TagKind::CantTell,
    ] {
        for word in ["Do", "Professional", "No se puede saber"] {
            let l = TagLabels {
                aria: word,
                word,
                line: "tree 27, 12 June",
            };
            let all = kept(|out| tag(out, kind, &l));
            let found = crowded(&all);
            assert!(found.is_empty(), "{word}: {found:?}");
            for d in all.iter().filter(|d| d.tag == "text") {
                assert!(d.text_box()[2] <= 241.0, "{} leaves the plate", d.text);
            }
        }
        let shape: Vec<(String, String)> = kept(|out| tag(out, kind, &TagLabels::default()))
            .iter()
            .filter(|d| d.tag != "svg")
            .map(|d| (d.get("d").to_owned(), d.get("class").to_owned()))
            .collect();
        assert!(!seen.contains(&shape), "{kind:?} looks like another");
        seen.push(shape);
    }
}

#[test]
fn markup_is_sound_and_what_a_person_typed_stays_text() {
    let nasty = "\"><script>&";
    let mut out = Html::default();
    tag(
        &mut out,
        TagKind::Do,
        &TagLabels {
            aria: nasty,
            word: nasty,
            line: nasty,
        },
    );
    let targets = [Target {
        distance_m: 9.0,
        inside: true,
        label: nasty,
    }];
    let r = Reach {
        height_used_m: 18.0,
        height_estimate_m: 16.0,
        zone_m: 27.0,
        people_out_m: None,
        targets: &targets,
        habit: Habit::Conifer,
    };
    reach(
        &mut out,
        &r,
        &ReachLabels {
            aria: nasty,
            ..reach_labels()
        },
    );
    defs(&mut out);
    brand(&mut out);
    sun(&mut out);
    swatch(&mut out, Swatch::Dots);
    stand(&mut out);
    ruler::foot(&mut out, 183, "in", "cm");
    ruler::head(&mut out);
    let rows = [VisitYear {
        label: nasty,
        ring: Some(163),
        visits: &[],
    }];
    visits(
        &mut out,
        &rows,
        &VisitsLabels {
            aria: nasty,
            ring: nasty,
        },
    );
    let text = out.into_string();
    assert!(!text.contains("<script"));
    let mut open: Vec<&str> = Vec::new();
    for part in text.split('<').skip(1) {
        let name = part.split([' ', '>']).next().unwrap();
        if let Some(name) = name.strip_prefix('/') {
            assert_eq!(open.pop(), Some(name));
        } else {
            open.push(name);
        }
    }
    assert!(open.is_empty());
}

#[test]
fn the_printed_ruler_is_true_to_the_millimetre() {
    let all = kept(|out| ruler::foot(out, 183, "in", "cm"));
    assert_eq!(
        (all[0].get("width"), all[0].get("viewBox")),
        ("183mm", "0 0 183 12")
    );
    // 115 sixteenths of an inch fit 183 mm; the group's scale makes one 25.4 / 16 mm long.
    let group = all.iter().find(|d| d.tag == "g").unwrap().get("transform");
    assert_eq!(group, "scale(1.5875 1)");
    let ticks = all.iter().find(|d| d.tag == "path").unwrap().get("d");
    assert_eq!(ticks.matches('M').count(), 115);
    assert!(
        ticks.contains(&format!("M{} 0v3.6", num(112.0))),
        "seven inches is a long tick"
    );
}

#[test]
fn a_tree_is_small_enough_to_send() {
    for habit in [Habit::Hardwood, Habit::Conifer] {
        let r = Reach {
            height_used_m: 18.0,
            height_estimate_m: 18.0,
            zone_m: 27.0,
            people_out_m: Some(36.0),
            targets: &[],
            habit,
        };
        let mut out = Html::default();
        reach(&mut out, &r, &reach_labels());
        let text = out.into_string();
        assert!(
            text.len() < 14_000,
            "{habit:?}: {} bytes for two figures",
            text.len()
        );
    }
}
