//! Cones, and what is called one.

use super::{bough, ellipse};
use crate::draw::pen::Pen;

/// A cone of scales.
pub(super) struct Cone {
    pub(super) half: f64,
    pub(super) top: f64,
    pub(super) foot: f64,
    pub(super) upright: bool,
    /// Rows of scales.
    pub(super) rows: u8,
}

pub(super) fn cone(
    pen: &mut Pen<'_>,
    Cone {
        half,
        top,
        foot,
        upright,
        rows,
    }: Cone,
) {
    if upright {
        pen.shape(
            "s3",
            "M##C######",
            &[40.0, 340.0, 120.0, 330.0, 240.0, 344.0, 322.0, 328.0],
        );
        pen.line("s3", 180.0, foot, 180.0, 338.0);
    } else {
        bough(pen);
        pen.line("s3", 180.0, 40.0, 180.0, top);
    }
    let step = (foot - top) / f64::from(rows);
    // From the far end, so that each row lies over the one behind it.
    for i in 0..rows {
        let share = (f64::from(i) + 0.5) / f64::from(rows);
        let broad = libm::sqrt(libm::sin(share * core::f64::consts::PI).max(0.05));
        let wide = half * broad;
        let y = if upright {
            foot - step * f64::from(i)
        } else {
            top + step * f64::from(i)
        };
        let down = if upright { -1.0 } else { 1.0 };
        for k in [-1.0, 1.0, 0.0] {
            let x = 180.0 + k * wide * 0.66;
            let w = wide * 0.52;
            pen.shape(
                "s fwood",
                "M##C######C######Z",
                &[
                    x - w,
                    y,
                    x - w,
                    y + down * step * 1.1,
                    x - w * 0.3,
                    y + down * step * 1.35,
                    x,
                    y + down * step * 1.4,
                    x + w * 0.3,
                    y + down * step * 1.35,
                    x + w,
                    y + down * step * 1.1,
                    x + w,
                    y,
                ],
            );
        }
    }
}

/// A fleshy cup, open at the end, with one seed in it.
pub(super) fn red_cone(pen: &mut Pen<'_>) {
    bough(pen);
    for (x, y) in [(122.0, 170.0), (236.0, 200.0)] {
        pen.line("s", x, 40.0, x, y - 52.0);
        ellipse(pen, "s fwood", [x, y], 50.0, 54.0);
        ellipse(pen, "s fp", [x, y + 34.0], 24.0, 12.0);
        ellipse(pen, "s fwood2", [x, y + 30.0], 12.0, 13.0);
    }
}

/// A cone whose scales have grown together as a berry.
pub(super) fn berry_cone(pen: &mut Pen<'_>) {
    bough(pen);
    for [x, y] in [
        [96.0, 130.0],
        [170.0, 178.0],
        [244.0, 130.0],
        [214.0, 250.0],
    ] {
        pen.shape("s", "M##L##", &[x, 40.0, x, y - 34.0]);
        ellipse(pen, "s fwood", [x, y], 34.0, 34.0);
        pen.shape(
            "s1",
            "M##L##L##M##L##",
            &[
                x - 14.0,
                y + 14.0,
                x,
                y + 2.0,
                x + 14.0,
                y + 14.0,
                x,
                y + 2.0,
                x,
                y - 14.0,
            ],
        );
    }
}

/// Small woody cones that stay, as of alders.
pub(super) fn small_cones(pen: &mut Pen<'_>) {
    bough(pen);
    for [x, y] in [[104.0, 150.0], [184.0, 190.0], [258.0, 144.0]] {
        pen.shape("s", "M##Q####", &[180.0, 42.0, x, 80.0, x, y - 44.0]);
        ellipse(pen, "s fwood2", [x, y], 34.0, 46.0);
        for row in [-26.0, -8.0, 10.0, 28.0] {
            pen.shape("s", "M##q10 10 20 0q10 10 20 0", &[x - 20.0, y + row]);
        }
    }
}

/// A hanging catkin of small scales, as of birches.
pub(super) fn catkin(pen: &mut Pen<'_>) {
    bough(pen);
    for (x, top) in [(134.0, 84.0), (236.0, 72.0)] {
        pen.line("s", x, 40.0, x, top);
        pen.shape(
            "s fwood",
            "M##C######L##C######Z",
            &[
                x,
                top,
                x + 30.0,
                top + 14.0,
                x + 26.0,
                top + 180.0,
                x + 5.0,
                top + 214.0,
                x - 5.0,
                top + 214.0,
                x - 26.0,
                top + 180.0,
                x - 30.0,
                top + 14.0,
                x,
                top,
            ],
        );
        for i in 0..11 {
            pen.shape(
                "s1",
                "M##q9 9 18 0q9 9 18 0",
                &[x - 18.0, top + 22.0 + 16.0 * f64::from(i)],
            );
        }
    }
}
