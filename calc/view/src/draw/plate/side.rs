//! One side of a blade without its teeth: a line from its foot at (0, 0) to its tip at (0, 1), to the right.

use super::{Marks, Point};
use calc::terms::leaf::{Base, Shape, Tip};

/// Half the width of a blade whose length is 1, and how high it is widest.
struct Outline {
    half: f64,
    widest: f64,
    straight: bool,
}

fn outline(shape: Shape) -> Outline {
    let (half, widest) = match shape {
        Shape::Lance => (0.13, 0.36),
        Shape::Round | Shape::Star | Shape::Square => (0.48, 0.46),
        Shape::Ovate => (0.32, 0.36),
        Shape::Heart => (0.45, 0.32),
        Shape::Elliptic => (0.25, 0.5),
        Shape::Obovate => (0.28, 0.64),
        Shape::Oblong => (0.19, 0.5),
        Shape::Diamond => (0.41, 0.42),
        Shape::Triangle => (0.43, 0.16),
        Shape::Sickle => (0.09, 0.4),
        Shape::Linear | Shape::Needle | Shape::Scale | Shape::Fan | Shape::Feather => (0.055, 0.4),
    };
    Outline {
        half,
        widest,
        straight: matches!(shape, Shape::Diamond | Shape::Triangle),
    }
}

/// From 0 at an end to 1 where the blade is widest: round where `sharp` is 0, running out in a point where it is 1.
fn swell(u: f64, sharp: f64) -> f64 {
    let u = u.clamp(0.0, 1.0);
    let round = libm::sqrt(1.0 - (1.0 - u) * (1.0 - u));
    let pointed = libm::pow(libm::sin(u * core::f64::consts::FRAC_PI_2), 1.25);
    round * (1.0 - sharp) + pointed * sharp
}

/// The same for a diamond or a triangle: straight, with its corner a little rounded.
fn straight_side(u: f64) -> f64 {
    let u = u.clamp(0.0, 1.0);
    (u * 1.06)
        .min(1.0 - 0.35 * (1.0 - u) * (1.0 - u) * u)
        .min(1.0)
}

fn sharp_foot(base: Base) -> f64 {
    match base {
        Base::Wedge => 0.9,
        Base::Even => 0.25,
        Base::Lopsided => 0.35,
        Base::Rounded | Base::Stalkless | Base::Heart | Base::Square | Base::Ears => 0.0,
    }
}

fn sharp_tip(tip: Tip) -> f64 {
    match tip {
        Tip::DrawnOut | Tip::Pointed | Tip::Spine | Tip::Bristle => 1.0,
        Tip::Blunt => 0.35,
        Tip::Rounded | Tip::Notched => 0.0,
    }
}

/// Where a tip that is drawn out begins.
const TAIL: f64 = 0.86;

/// Steps in which a side is drawn.
const STEPS: usize = 48;

/// How far a heart-shaped foot goes up before the side takes over.
const HEART: f64 = 0.16;

/// The right side of a blade; the left is `lower` by what a lopsided foot has.
pub(super) fn side(marks: &Marks, lower: bool) -> Vec<Point> {
    let Outline {
        half,
        widest,
        straight,
    } = outline(marks.shape);
    let foot = sharp_foot(marks.base);
    let start = match marks.base {
        Base::Lopsided if lower => 0.13,
        _ => 0.0,
    };
    let at = |t: f64| {
        let x = if t < widest {
            let u = (t - start) / (widest - start);
            swell(u, if straight { foot.max(0.5) } else { foot })
        } else {
            let tip = sharp_tip(marks.tip);
            let narrows = |u: f64| {
                if straight {
                    straight_side(u)
                } else {
                    swell(u, tip)
                }
            };
            if marks.tip == Tip::DrawnOut {
                // A tail over the last part, thin all along.
                let v = (TAIL - t) / (TAIL - widest);
                narrows(v).max(0.12 * ((1.0 - t) / (1.0 - TAIL)).min(1.0))
            } else {
                narrows((1.0 - t) / (1.0 - widest))
            }
        };
        half * x
    };
    let mut line = Vec::new();
    let mut from = start;
    match marks.base {
        Base::Heart => {
            let end = [at(HEART), HEART];
            let (a, b) = ([half * 0.1, -0.13], [half * 0.95, -0.17]);
            line.extend((0..=10).map(|i| bezier([0.0, 0.0], a, b, end, f64::from(i) / 10.0)));
            from = HEART;
        }
        Base::Square => {
            line.extend([[0.0, 0.0], [half * 0.5, -0.005], [half * 0.78, 0.015]]);
            from = 0.1;
        }
        Base::Ears => {
            let ear = [half * 0.55, 0.03];
            let (a, b) = ([half * 0.15, -0.1], [half * 0.7, -0.06]);
            line.extend((0..=8).map(|i| bezier([0.0, 0.0], a, b, ear, f64::from(i) / 8.0)));
            line.push([half * 0.3, 0.07]);
            from = 0.14;
        }
        _ => line.push([0.0, start]),
    }
    for i in 1..STEPS {
        let t = from + (1.0 - from) * i as f64 / STEPS as f64;
        let x = at(t);
        line.push([
            if marks.base == Base::Square && t < widest {
                x.max(half * 0.8)
            } else {
                x
            },
            t,
        ]);
    }
    if marks.tip == Tip::Notched {
        line.push([0.0, 0.955]);
    } else {
        line.push([0.0, 1.0]);
    }
    line
}

/// A point of a curve with two handles.
pub(super) fn bezier(p: Point, a: Point, b: Point, q: Point, t: f64) -> Point {
    let s = 1.0 - t;
    let mix = |i: usize| {
        s * s * s * p[i] + 3.0 * s * s * t * a[i] + 3.0 * s * t * t * b[i] + t * t * t * q[i]
    };
    [mix(0), mix(1)]
}
