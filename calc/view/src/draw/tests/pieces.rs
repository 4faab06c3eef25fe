//! Tags, ranges, ruler, and the markup of all.

use super::reach::reach_labels;
use super::{crowded, kept};
use crate::answer::reach::drawing::{DrawnTarget, ReachFigure, ReachLabels, reach};
use crate::answer::season::drawing::{VisitYear, VisitsLabels, visits};
use crate::draw::glyph::{Glyph, glyph};
use crate::draw::mark::{Swatch, brand, defs, sun, swatch};
use crate::draw::number::num;
use crate::draw::range::{RangeBar, RangeLabels, ShareBar, SharesLabels, range, shares};
use crate::draw::tree::{Habit, stand};
use crate::draw::{RangeGrade, ruler};
use crate::out::Html;

#[test]
fn ranges_stay_apart_and_keep_ratios() {
    for (low, likely, high) in [
        (10.0, 20.0, 40.0),
        (1.0, 2.0, 3.0),
        (75.0, 160.0, 900.0),
        (0.2, 0.4, 0.8),
    ] {
        for grade in [
            RangeGrade::Measured,
            RangeGrade::Estimated,
            RangeGrade::Assumed,
        ] {
            let l = RangeLabels {
                aria: "range",
                likely: "20 min",
                unit: "min",
            };
            let all = kept(|out| {
                range(
                    out,
                    &RangeBar {
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
    let s = |low, high| ShareBar {
        low,
        likely: Some(low),
        high,
        grade: RangeGrade::Assumed,
        label: "end of season 1: 5 to 40 in 100".into(),
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
fn outcomes_are_five_shapes() {
    let mut seen = Vec::new();
    for sign in [
        Glyph::Do,
        Glyph::Wait,
        Glyph::OtherWay,
        Glyph::Stop,
        Glyph::CantTell,
    ] {
        let shape: Vec<(String, String)> = kept(|out| glyph(out, sign))
            .iter()
            .filter(|d| d.tag != "svg")
            .map(|d| (d.get("d").to_owned(), d.get("class").to_owned()))
            .collect();
        assert!(!seen.contains(&shape), "{sign:?} looks like another");
        seen.push(shape);
    }
}

#[test]
fn markup_is_sound_and_what_a_person_typed_stays_text() {
    let nasty = "\"><script>&";
    let mut out = Html::default();
    let targets = [DrawnTarget {
        distance_m: 9.0,
        inside: true,
        label: nasty.into(),
    }];
    let r = ReachFigure {
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
        label: nasty.into(),
        ring: Some(163),
        visits: Vec::new(),
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
        let r = ReachFigure {
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
