//! Dry fruits: wings, pods, capsules, cotton, grains.

use super::{bough, ellipse};
use crate::draw::pen::{D, Pen};
use crate::draw::plate::{Point, polar};

/// Two seeds, a wing each.
pub(super) fn pair(pen: &mut Pen<'_>) {
    pen.line("s", 180.0, 60.0, 180.0, 150.0);
    for way in [1.0, -1.0] {
        let at = |points: &[Point]| -> Vec<f64> {
            points
                .iter()
                .flat_map(|[x, y]| [180.0 + way * x, 150.0 + y])
                .collect()
        };
        let wing = at(&[
            [0.0, 0.0],
            [20.0, -16.0],
            [38.0, -8.0],
            [56.0, 4.0],
            [96.0, 8.0],
            [150.0, 28.0],
            [156.0, 66.0],
            [150.0, 92.0],
            [96.0, 76.0],
            [40.0, 30.0],
            [0.0, 14.0],
        ]);
        pen.shape("s fleaf", "M##C######C######C######L##Z", &wing);
        let veins = at(&[
            [50.0, 14.0],
            [110.0, 30.0],
            [140.0, 60.0],
            [46.0, 24.0],
            [100.0, 48.0],
            [132.0, 78.0],
        ]);
        pen.shape("s1", "M##Q####M##Q####", &veins);
        ellipse(pen, "s fwood", [180.0 + way * 26.0, 156.0], 18.0, 12.0);
    }
}

/// Seeds with one wing each.
pub(super) fn single_wings(pen: &mut Pen<'_>) {
    for x in [110.0, 180.0, 250.0] {
        pen.line("s", x, 60.0, x, 100.0);
        pen.shape(
            "s fleaf",
            "M##C######C######Z",
            &[
                x,
                100.0,
                x + 30.0,
                170.0,
                x + 26.0,
                250.0,
                x,
                300.0,
                x - 26.0,
                250.0,
                x - 30.0,
                170.0,
                x,
                100.0,
            ],
        );
        ellipse(pen, "s fwood", [x, 176.0], 9.0, 24.0);
        pen.shape("s1", "M##V#M##V#", &[x, 204.0, 288.0, x, 108.0, 150.0]);
    }
}

/// A seed in the middle of a round wing.
pub(super) fn round_wing(pen: &mut Pen<'_>) {
    for [x, y] in [[116.0, 150.0], [236.0, 150.0], [176.0, 262.0]] {
        ellipse(pen, "s fleaf", [x, y], 52.0, 56.0);
        ellipse(pen, "s fwood", [x, y + 4.0], 13.0, 20.0);
        pen.shape(
            "s fp",
            "M##L##L##",
            &[x - 8.0, y - 56.0, x, y - 38.0, x + 8.0, y - 56.0],
        );
        pen.line("s1", x, y - 36.0, x, y - 16.0);
    }
}

pub(super) fn pods(pen: &mut Pen<'_>, pods: &[(f64, f64)], half: f64) {
    bough(pen);
    for (x, long) in pods {
        let (top, foot) = (62.0, 62.0 + long.min(286.0));
        pen.line("s", *x, 38.0, *x, top);
        pen.shape(
            "s fleaf",
            "M##C######L##C######Z",
            &[
                *x,
                top,
                x + half * 1.3,
                top + 20.0,
                x + half,
                foot - 40.0,
                x + 3.0,
                foot,
                x - 3.0,
                foot,
                x - half,
                foot - 40.0,
                x - half * 1.3,
                top + 20.0,
                *x,
                top,
            ],
        );
        if half > 10.0 {
            let mut seed = top + 30.0;
            while seed < foot - 26.0 {
                ellipse(pen, "s fwood", [*x, seed], half * 0.5, 8.0);
                seed += 25.0;
            }
        }
    }
}

/// A dry fruit that opens by slits; a woody one has a lid.
pub(super) fn capsule(pen: &mut Pen<'_>, woody: bool) {
    bough(pen);
    for (x, y) in [(122.0, 150.0), (232.0, 168.0)] {
        pen.line("s", x, 40.0, x, y - 50.0);
        if woody {
            pen.shape("s fwood", "M##h76l-12 -56h-52Z", &[x - 38.0, y + 34.0]);
            ellipse(pen, "s fwood2", [x, y + 34.0], 38.0, 13.0);
            pen.shape(
                "s",
                "M##L##M##L##",
                &[
                    x - 14.0,
                    y + 28.0,
                    x + 14.0,
                    y + 40.0,
                    x + 14.0,
                    y + 28.0,
                    x - 14.0,
                    y + 40.0,
                ],
            );
            pen.line("s", x, y - 50.0, x, y - 22.0);
        } else {
            pen.shape(
                "s fwood",
                "M##C######C######Z",
                &[
                    x,
                    y - 50.0,
                    x + 42.0,
                    y - 30.0,
                    x + 36.0,
                    y + 34.0,
                    x,
                    y + 58.0,
                    x - 36.0,
                    y + 34.0,
                    x - 42.0,
                    y - 30.0,
                    x,
                    y - 50.0,
                ],
            );
            pen.shape(
                "s",
                "M##Q####M##Q####M##Q####",
                &[
                    x,
                    y - 50.0,
                    x - 14.0,
                    y,
                    x,
                    y + 58.0,
                    x,
                    y - 50.0,
                    x + 14.0,
                    y,
                    x,
                    y + 58.0,
                    x - 34.0,
                    y - 4.0,
                    x,
                    y + 10.0,
                    x + 34.0,
                    y - 4.0,
                ],
            );
        }
    }
}

/// A hanging row of small capsules with cotton.
pub(super) fn cotton(pen: &mut Pen<'_>) {
    bough(pen);
    pen.line("s", 180.0, 38.0, 180.0, 340.0);
    for i in 0..8 {
        let y = 76.0 + 32.0 * f64::from(i);
        for way in [1.0, -1.0] {
            let [x, y] = [180.0 + way * 24.0, y + if way > 0.0 { 0.0 } else { 16.0 }];
            pen.line("s", 180.0, y - 6.0, x - way * 8.0, y);
            ellipse(pen, "s fwood", [x, y], 11.0, 8.0);
            if i % 2 == 1 {
                let mut tuft = D::default();
                for degrees in [-50.0, -25.0, 0.0, 25.0, 50.0] {
                    let end = polar([x + way * 10.0, y], way * (90.0 + degrees), 40.0);
                    tuft.add("M##L##", &[x + way * 10.0, y, end[0], end[1]]);
                }
                pen.path("s1", &tuft.0);
            }
        }
    }
}

/// Small nuts, each with a leafy bract of three lobes.
pub(super) fn bract(pen: &mut Pen<'_>) {
    pen.line("s", 180.0, 26.0, 180.0, 310.0);
    for i in 0..4 {
        let y = 74.0 + 62.0 * f64::from(i);
        for way in [1.0, -1.0] {
            let at = |x: f64| 180.0 + way * x;
            pen.shape(
                "s fleaf",
                "M##L##L##L##L##L##L##Z",
                &[
                    at(0.0),
                    y,
                    at(28.0),
                    y + 18.0,
                    at(40.0),
                    y + 8.0,
                    at(46.0),
                    y + 30.0,
                    at(104.0),
                    y + 44.0,
                    at(44.0),
                    y + 52.0,
                    at(22.0),
                    y + 56.0,
                ],
            );
            ellipse(pen, "s fwood", [at(22.0), y + 28.0], 12.0, 10.0);
        }
    }
}

/// Papery sacs in a hanging cone.
pub(super) fn hop(pen: &mut Pen<'_>) {
    pen.line("s", 180.0, 26.0, 180.0, 70.0);
    for i in 0..7 {
        let y = 92.0 + 34.0 * f64::from(i);
        let wide = [30.0, 52.0, 62.0, 64.0, 58.0, 46.0, 28.0][i as usize];
        for x in [-wide * 0.62, wide * 0.62, 0.0] {
            ellipse(
                pen,
                "s fleaf",
                [180.0 + x, y + if x == 0.0 { 12.0 } else { 0.0 }],
                wide * 0.52,
                28.0,
            );
        }
    }
}

pub(super) fn grain(pen: &mut Pen<'_>) {
    pen.line("s", 180.0, 350.0, 180.0, 40.0);
    for i in 0..7 {
        let y = 300.0 - 38.0 * f64::from(i);
        for way in [1.0, -1.0] {
            let foot = [180.0, y];
            let tip = polar(foot, way * 34.0, 66.0);
            let (a, b) = (polar(foot, way * 22.0, 34.0), polar(foot, way * 46.0, 34.0));
            pen.shape(
                "s fwood",
                "M##Q####Q####Z",
                &[
                    foot[0], foot[1], a[0], a[1], tip[0], tip[1], b[0], b[1], foot[0], foot[1],
                ],
            );
        }
    }
}
