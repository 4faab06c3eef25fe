//! Fleshy fruits, nuts and balls.

use super::{bough, ellipse};
use crate::draw::pen::{D, Pen};
use crate::draw::plate::{Point, polar};

pub(super) fn drupes(pen: &mut Pen<'_>, berries: bool) {
    bough(pen);
    for [x, y, joint] in [
        [96.0, 128.0, 132.0],
        [150.0, 168.0, 136.0],
        [214.0, 150.0, 226.0],
        [266.0, 112.0, 230.0],
        [180.0, 232.0, 180.0],
    ] {
        pen.shape(
            "s",
            "M##Q####",
            &[joint, 40.0, joint, y - 60.0, x, y - 28.0],
        );
        ellipse(pen, "s fwood", [x, y], 28.0, 30.0);
        if berries {
            pen.shape(
                "s",
                "M##l9 9M##l9 -9",
                &[x - 4.0, y + 20.0, x - 4.0, y + 29.0],
            );
        } else {
            pen.shape(
                "s1",
                "M##Q####",
                &[x - 14.0, y - 10.0, x - 16.0, y + 4.0, x - 8.0, y + 16.0],
            );
        }
    }
}

/// Fruits as small apples: the dried flower stays at the end.
pub(super) fn pome(pen: &mut Pen<'_>) {
    bough(pen);
    for [x, y] in [[104.0, 186.0], [184.0, 214.0], [258.0, 180.0]] {
        pen.shape("s", "M##Q####", &[180.0, 42.0, x, 90.0, x, y - 36.0]);
        pen.shape(
            "s fwood",
            "M##C######C######C######C######Z",
            &[
                x,
                y - 32.0,
                x + 22.0,
                y - 46.0,
                x + 44.0,
                y - 26.0,
                x + 40.0,
                y,
                x + 38.0,
                y + 30.0,
                x + 16.0,
                y + 42.0,
                x,
                y + 36.0,
                x - 16.0,
                y + 42.0,
                x - 38.0,
                y + 30.0,
                x - 40.0,
                y,
                x - 44.0,
                y - 26.0,
                x - 22.0,
                y - 46.0,
                x,
                y - 32.0,
            ],
        );
        pen.shape(
            "s",
            "M##l-9 12M##v14M##l9 12",
            &[x - 4.0, y + 34.0, x, y + 34.0, x + 4.0, y + 34.0],
        );
    }
}

pub(super) fn mulberry(pen: &mut Pen<'_>) {
    bough(pen);
    for (middle, top, rows) in [
        (120.0, 108.0, [1, 2, 3, 3, 3, 3, 2, 1]),
        (240.0, 96.0, [1, 2, 3, 3, 3, 2, 1, 0]),
    ] {
        pen.line("s", middle, 40.0, middle, top - 12.0);
        for (i, row) in rows.iter().enumerate() {
            for k in 0..*row {
                let x = middle + (f64::from(k) - f64::from(row - 1) / 2.0) * 25.0;
                pen.circle("s fwood", x, top + 21.0 * i as f64, 15.0);
            }
        }
    }
}

/// A bur that opens with nuts in it.
pub(super) fn bur(pen: &mut Pen<'_>) {
    let middle = [180.0, 180.0];
    pen.line("s3", 180.0, 30.0, 180.0, 110.0);
    let mut spines = D::default();
    for i in 0..40 {
        let degrees = 9.0 * f64::from(i);
        let (from, to) = (
            polar(middle, degrees, 84.0),
            polar(middle, degrees + 4.0, 112.0),
        );
        spines.add("M##L##", &[from[0], from[1], to[0], to[1]]);
    }
    pen.path("s", &spines.0);
    ellipse(pen, "s fwood", middle, 86.0, 86.0);
    pen.shape(
        "s fp",
        "M##C######C######Z",
        &[
            180.0, 132.0, 236.0, 160.0, 232.0, 236.0, 180.0, 262.0, 128.0, 236.0, 124.0, 160.0,
            180.0, 132.0,
        ],
    );
    pen.shape(
        "s fwood2",
        "M##C######C######Z",
        &[
            176.0, 146.0, 176.0, 180.0, 176.0, 226.0, 176.0, 248.0, 140.0, 226.0, 140.0, 176.0,
            176.0, 146.0,
        ],
    );
    pen.shape(
        "s fwood2",
        "M##C######C######Z",
        &[
            184.0, 146.0, 184.0, 180.0, 184.0, 226.0, 184.0, 248.0, 220.0, 226.0, 220.0, 176.0,
            184.0, 146.0,
        ],
    );
}

/// A nut in a husk of four parts.
pub(super) fn husk(pen: &mut Pen<'_>) {
    pen.line("s3", 180.0, 30.0, 180.0, 104.0);
    ellipse(pen, "s fwood", [180.0, 190.0], 88.0, 90.0);
    pen.shape(
        "s",
        "M##C######M##C######M##C######",
        &[
            180.0, 100.0, 150.0, 150.0, 150.0, 230.0, 180.0, 280.0, 180.0, 100.0, 210.0, 150.0,
            210.0, 230.0, 180.0, 280.0, 180.0, 100.0, 180.0, 150.0, 180.0, 230.0, 180.0, 280.0,
        ],
    );
    ellipse(pen, "s fwood2", [180.0, 330.0], 34.0, 28.0);
    pen.shape(
        "s1",
        "M##Q####",
        &[180.0, 304.0, 172.0, 330.0, 180.0, 356.0],
    );
}

pub(super) fn acorn(pen: &mut Pen<'_>) {
    for (x, y, large) in [(124.0, 150.0, 1.0), (244.0, 172.0, 0.86)] {
        let at = |dx: f64, dy: f64| [x + dx * large, y + dy * large];
        let put = |points: &[Point]| -> Vec<f64> {
            points.iter().flat_map(|[dx, dy]| at(*dx, *dy)).collect()
        };
        pen.shape(
            "s fleaf",
            "M##C######L##C######Z",
            &put(&[
                [-44.0, 0.0],
                [-46.0, 70.0],
                [-20.0, 104.0],
                [-4.0, 114.0],
                [4.0, 114.0],
                [20.0, 104.0],
                [46.0, 70.0],
                [44.0, 0.0],
            ]),
        );
        pen.shape(
            "s fwood2",
            "M##C######C######Q####Z",
            &put(&[
                [-54.0, 4.0],
                [-54.0, -40.0],
                [-26.0, -54.0],
                [0.0, -54.0],
                [26.0, -54.0],
                [54.0, -40.0],
                [54.0, 4.0],
                [0.0, 16.0],
                [-54.0, 4.0],
            ]),
        );
        pen.shape(
            "s1",
            "M##Q####M##Q####M##Q####",
            &put(&[
                [-50.0, -16.0],
                [0.0, -2.0],
                [50.0, -16.0],
                [-42.0, -34.0],
                [0.0, -22.0],
                [42.0, -34.0],
                [-24.0, -46.0],
                [0.0, -40.0],
                [24.0, -46.0],
            ]),
        );
        let [sx, sy] = at(0.0, -54.0);
        pen.line("s3", sx, sy, sx, 40.0);
    }
    bough(pen);
}

/// What a ball is like outside.
#[derive(PartialEq)]
pub(super) enum Ball {
    Fuzzy,
    Spiny,
    Green,
}

pub(super) fn ball(pen: &mut Pen<'_>, of: Ball) {
    bough(pen);
    let (middle, large) = match of {
        Ball::Green => ([180.0, 210.0], 110.0),
        _ => ([180.0, 236.0], 76.0),
    };
    pen.line("s", 180.0, 40.0, 180.0, middle[1] - large);
    if of == Ball::Spiny {
        let mut spines = D::default();
        for i in 0..20 {
            let degrees = 18.0 * f64::from(i);
            let (a, b) = (
                polar(middle, degrees - 6.0, large - 2.0),
                polar(middle, degrees + 6.0, large - 2.0),
            );
            let tip = polar(middle, degrees, large + 24.0);
            spines.add("M##L##L##", &[a[0], a[1], tip[0], tip[1], b[0], b[1]]);
        }
        pen.path("s fwood2", &spines.0);
    }
    ellipse(
        pen,
        if of == Ball::Green {
            "s fleaf"
        } else {
            "s fwood"
        },
        middle,
        large,
        large,
    );
    let mut texture = D::default();
    match of {
        Ball::Fuzzy => {
            for i in 0..60 {
                let degrees = 137.5 * f64::from(i);
                let far = large * libm::sqrt(f64::from(i) / 60.0);
                let (a, b) = (
                    polar(middle, degrees, far),
                    polar(middle, degrees, far + 7.0),
                );
                texture.add("M##L##", &[a[0], a[1], b[0], b[1]]);
            }
        }
        Ball::Spiny => {
            for i in 0..14 {
                let at = polar(
                    middle,
                    137.5 * f64::from(i),
                    large * 0.8 * libm::sqrt(f64::from(i) / 14.0),
                );
                texture.add("M##l6 6l-12 0Z", &[at[0], at[1]]);
            }
        }
        // Folds as of a brain.
        Ball::Green => {
            for i in 0..40 {
                let at = polar(
                    middle,
                    137.5 * f64::from(i),
                    (large - 16.0) * libm::sqrt(f64::from(i) / 40.0),
                );
                texture.add("M##q6 -9 12 0q6 9 12 0", &[at[0] - 12.0, at[1]]);
            }
        }
    }
    pen.path("s1", &texture.0);
}
