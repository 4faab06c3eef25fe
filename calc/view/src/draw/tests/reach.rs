//! The reach.

use super::{Drawn, crowded, kept};
use crate::answer::reach::drawing::{DrawnTarget, PERSON_M, ReachFigure, ReachLabels, reach};
use crate::draw::tree::Habit;

pub(super) fn reach_labels() -> ReachLabels<'static> {
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
    check: impl Fn(&ReachFigure<'_>, &[Drawn]),
) {
    let targets: Vec<DrawnTarget> = far
        .iter()
        .zip(LABELS)
        .map(|(d, label)| DrawnTarget {
            distance_m: *d,
            inside: *d < height,
            label: label.into(),
        })
        .collect();
    for habit in [Habit::Hardwood, Habit::Conifer] {
        let r = ReachFigure {
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
