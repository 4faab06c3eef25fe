//! A blade: its outline, lobed or not, with teeth and veins.

use super::edge::{Fading, toothed};
use super::side::{bezier, side};
use super::{Marks, Point};
use crate::draw::pen::{D, Pen, outline};
use calc::terms::leaf::{Base, Lobing, Margin, Shape, Tip};

/// Where a blade's foot lies, how it is turned, and how long it is in the drawing's units.
pub(super) struct Place {
    foot: Point,
    sine: f64,
    cosine: f64,
    long: f64,
}

impl Place {
    /// Turned to the right by `degrees`.
    pub(super) fn new(foot: Point, degrees: f64, long: f64) -> Self {
        let turn = degrees.to_radians();
        Self {
            foot,
            sine: libm::sin(turn),
            cosine: libm::cos(turn),
            long,
        }
    }

    /// A point of the blade in the drawing.
    pub(super) fn at(&self, [x, y]: Point) -> Point {
        let (right, up) = (
            x * self.cosine + y * self.sine,
            y * self.cosine - x * self.sine,
        );
        [
            self.foot[0] + right * self.long,
            self.foot[1] - up * self.long,
        ]
    }
}

/// Under this length, in the drawing's units, side veins would run together.
const SMALL: f64 = 90.0;

/// How far the blade reaches above its foot, so that every blade fits the plate.
pub(super) fn reach(marks: &Marks) -> f64 {
    match marks.shape {
        Shape::Star => 1.2,
        Shape::Round | Shape::Square | Shape::Heart | Shape::Triangle => 1.12,
        _ => 1.0,
    }
}

/// A blade's two sides from foot to tip, and its veins.
struct Drawn {
    right: Vec<Point>,
    left: Vec<Point>,
    veins: Vec<[Point; 2]>,
    bristles: Vec<[Point; 2]>,
}

/// Draws a blade.
pub(super) fn draw(pen: &mut Pen<'_>, marks: &Marks, place: &Place) {
    let Drawn {
        right,
        mut left,
        veins,
        bristles,
    } = drawn(marks);
    left.reverse();
    let placed: Vec<Point> = right.iter().chain(&left).map(|at| place.at(*at)).collect();
    pen.path("s fleaf", &outline(&placed, [0.0, 0.0], 1.0));
    // A small one shows its middle vein alone.
    let shown = if place.long < SMALL { 1 } else { veins.len() };
    strokes(pen, "s1", &veins[..shown], place);
    strokes(pen, "s", &bristles, place);
}

/// Straight lines, each from one point to another.
fn strokes(pen: &mut Pen<'_>, class: &str, lines: &[[Point; 2]], place: &Place) {
    let mut d = D::default();
    for [from, to] in lines {
        let (from, to) = (place.at(*from), place.at(*to));
        d.add("M##L##", &[from[0], from[1], to[0], to[1]]);
    }
    pen.path(class, &d.0);
}

fn mirrored(line: &[Point]) -> Vec<Point> {
    line.iter().map(|[x, y]| [-x, *y]).collect()
}

fn drawn(marks: &Marks) -> Drawn {
    match marks.lobes {
        _ if marks.shape == Shape::Square => square(),
        (Lobing::Palmate, count) => palmate(marks, count, 2),
        (Lobing::Pinnate, count) => pinnate(marks, count),
        (Lobing::Mitten, _) => palmate(marks, 3.0, 1),
        (Lobing::None, _) => whole(marks),
    }
}

/// A blade without lobes.
fn whole(marks: &Marks) -> Drawn {
    let right = side(marks, false);
    let lower = side(marks, true);
    let at = |line: &[Point], t: f64| line.iter().find(|[_, y]| *y >= t).map_or(0.0, |[x, _]| *x);
    let mut veins = vec![[[0.0, 0.0], [0.0, 0.97]]];
    for i in 0..6 {
        let low = 0.06 + 0.125 * f64::from(i);
        let high = low + 0.16;
        veins.push([[0.0, low], [at(&right, high) * 0.85, high]]);
        veins.push([[0.0, low], [-at(&lower, high) * 0.85, high]]);
    }
    let mut bristles = Vec::new();
    if matches!(marks.tip, Tip::Spine | Tip::Bristle) {
        bristles.push([[0.0, 1.0], [0.0, 1.05]]);
    }
    let mut right = toothed(&right, marks.margin, 1.0, Fading::Both);
    let mut left = mirrored(&toothed(&lower, marks.margin, 1.0, Fading::Both));
    if marks.margin == Margin::Gland {
        gland(&mut right, 1.0);
        gland(&mut left, -1.0);
    }
    if marks.shape == Shape::Sickle {
        for line in [&mut right, &mut left] {
            line.iter_mut().for_each(bend);
        }
        veins = vec![];
        let mut middle: Vec<Point> = (0..=8).map(|i| [0.0, f64::from(i) / 8.0]).collect();
        middle.iter_mut().for_each(bend);
        veins.extend(middle.windows(2).map(|w| [w[0], w[1]]));
    }
    Drawn {
        right,
        left,
        veins,
        bristles,
    }
}

/// Bends a blade as a sickle.
fn bend(point: &mut Point) {
    point[0] += 0.5 * point[1] * (1.0 - point[1]);
}

/// One large tooth near the foot.
fn gland(line: &mut Vec<Point>, way: f64) {
    let Some(at) = line.iter().position(|[_, y]| *y > 0.1) else {
        return;
    };
    let [x, y] = line[at];
    line.insert(at, [x + way * 0.045, y + 0.005]);
    line.insert(at + 1, [x + way * 0.01, y + 0.035]);
}

/// A side lobe of a hand: its angle from the middle one, in degrees, and its length.
type Lobe = (f64, f64);

/// The side lobes, and how deep the bays between lobes go: the share of the middle lobe that is left standing.
fn lobes(marks: &Marks, count: f64) -> (&'static [Lobe], f64) {
    match (marks.shape, count as u32) {
        (Shape::Star, _) => (&[(55.0, 0.95), (108.0, 0.72)], 0.33),
        (Shape::Round, 0..=4) => (&[(50.0, 0.84), (104.0, 0.42)], 0.58),
        (_, 0..=3) => (&[(50.0, 0.62)], 0.4),
        (Shape::Round, 5) if marks.tip == Tip::DrawnOut => (&[(46.0, 0.86), (98.0, 0.56)], 0.34),
        (Shape::Round, 5) => (&[(48.0, 0.86), (100.0, 0.52)], 0.46),
        (Shape::Round, _) => (&[(44.0, 0.92), (84.0, 0.74), (126.0, 0.38)], 0.5),
        _ => (&[(48.0, 0.74), (98.0, 0.46)], 0.46),
    }
}

fn polar(degrees: f64, far: f64) -> Point {
    let turn = degrees.to_radians();
    [libm::sin(turn) * far, libm::cos(turn) * far]
}

/// Lobes as the fingers of a hand, on both sides or on one.
fn palmate(marks: &Marks, count: f64, sides: usize) -> Drawn {
    let (side_lobes, bay) = lobes(marks, count);
    let low = match marks.base {
        Base::Heart => 0.12,
        _ => 0.02,
    };
    // Corners from the foot to the tip, a bay between two lobes.
    let mut corners = vec![[0.0, 0.0], polar(150.0, low + 0.12)];
    let mut veins = vec![[[0.0, 0.0], [0.0, 0.94]]];
    for (i, (angle, long)) in side_lobes.iter().enumerate().rev() {
        corners.push(polar(*angle, *long));
        let next = if i == 0 { 0.0 } else { side_lobes[i - 1].0 };
        let stands = if i == 0 { bay } else { bay * 0.86 };
        corners.push(polar((angle + next) / 2.0, stands));
        for way in [1.0, -1.0] {
            let [x, y] = polar(*angle, long * 0.92);
            veins.push([[0.0, 0.0], [x * way, y]]);
        }
    }
    corners.push([0.0, 1.0]);
    let mut right = vec![[0.0, 0.0]];
    for (i, pair) in corners.windows(2).enumerate() {
        if i == 0 {
            right.extend(curved(pair[0], pair[1], 0.25).into_iter().skip(1));
            continue;
        }
        // Each lobe swells beside its middle and runs out in a point.
        let piece = curved(
            pair[0],
            pair[1],
            if marks.shape == Shape::Star {
                0.18
            } else {
                0.06
            },
        );
        let fading = if i % 2 == 1 {
            Fading::End
        } else {
            Fading::Start
        };
        let edge = toothed(&piece, marks.margin, lobe_teeth(marks.margin), fading);
        right.extend(edge.into_iter().skip(1));
    }
    if sides == 1 {
        let plain = whole(marks);
        let veins = veins.into_iter().filter(|[_, to]| to[0] >= 0.0).collect();
        return Drawn {
            right,
            veins,
            ..plain
        };
    }
    let left = mirrored(&right);
    Drawn {
        right,
        left,
        veins,
        bristles: Vec::new(),
    }
}

/// How much larger the teeth of a lobe are than those of a blade's side.
fn lobe_teeth(margin: Margin) -> f64 {
    match margin {
        Margin::Coarse | Margin::Blunt => 2.0,
        Margin::Double => 1.3,
        _ => 1.0,
    }
}

/// A line from one point to another that swells outward.
fn curved(p: Point, q: Point, bulge: f64) -> Vec<Point> {
    let way = [q[0] - p[0], q[1] - p[1]];
    let out = [way[1] * bulge, -way[0] * bulge];
    let a = [p[0] + way[0] * 0.33 + out[0], p[1] + way[1] * 0.33 + out[1]];
    let b = [p[0] + way[0] * 0.66 + out[0], p[1] + way[1] * 0.66 + out[1]];
    (0..=8)
        .map(|i| bezier(p, a, b, q, f64::from(i) / 8.0))
        .collect()
}

/// Lobes along both sides, as of an oak.
fn pinnate(marks: &Marks, count: f64) -> Drawn {
    let line = side(marks, false);
    let half = |t: f64| line.iter().find(|[_, y]| *y >= t).map_or(0.0, |[x, _]| *x);
    // The last lobe is the tip's.
    let each = libm::floor((count - 1.0) / 2.0).max(2.0);
    let pointed = matches!(marks.tip, Tip::Bristle | Tip::Pointed | Tip::Spine);
    let (first, last) = (0.12, 0.84);
    let step = (last - first) / each;
    let bay = 0.36;
    let mut right: Vec<Point> = line.iter().copied().filter(|[_, y]| *y < first).collect();
    let mut veins = vec![[[0.0, 0.0], [0.0, 0.95]]];
    let mut bristles = Vec::new();
    for i in 0..each as usize {
        let low = first + step * i as f64;
        let high = low + step;
        let width = half(low + step * 0.6).max(0.12) * if pointed { 1.3 } else { 1.12 };
        let (bay_low, bay_high) = (
            [half(low).max(0.06) * bay, low],
            [half(high).max(0.06) * bay, high],
        );
        let tip = [width, low + step * 0.85];
        if pointed {
            let shoulder = [width * 0.86, low + step * 0.46];
            right.extend([
                bay_low,
                [bay_low[0] * 1.05, low + step * 0.16],
                [width * 0.6, low + step * 0.34],
                shoulder,
            ]);
            right.extend([
                [width * 0.84, low + step * 0.6],
                tip,
                [width * 0.72, low + step * 0.92],
            ]);
            right.push([bay_high[0] * 1.2, low + step * 0.94]);
            if marks.margin == Margin::Bristle {
                for [x, y] in [shoulder, tip] {
                    bristles.push([[x, y], [x + 0.028, y + 0.018]]);
                    bristles.push([[-x, y], [-x - 0.028, y + 0.018]]);
                }
            }
        } else {
            let (a, b) = (
                [width * 1.05, low + step * 0.05],
                [width * 1.25, low + step * 1.05],
            );
            right.extend((0..=10).map(|k| bezier(bay_low, a, b, bay_high, f64::from(k) / 10.0)));
        }
        for way in [1.0, -1.0] {
            veins.push([[0.0, low], [tip[0] * 0.85 * way, low + step * 0.7]]);
        }
    }
    let neck = [half(last).max(0.06) * bay, last];
    if pointed {
        right.extend([neck, [0.09, last + 0.06], [0.05, last + 0.08], [0.0, 1.0]]);
        if marks.margin == Margin::Bristle {
            bristles.push([[0.0, 1.0], [0.0, 1.035]]);
        }
    } else {
        let (a, b) = ([0.2, last], [0.16, 1.0]);
        right.extend((0..=8).map(|k| bezier(neck, a, b, [0.0, 1.0], f64::from(k) / 8.0)));
    }
    let left = mirrored(&right);
    Drawn {
        right,
        left,
        veins,
        bristles,
    }
}

/// Four lobes and no tip: the top is cut off with a notch.
fn square() -> Drawn {
    let corners: [Point; 6] = [
        [0.0, 0.0],
        [0.2, -0.03],
        [0.5, 0.2],
        [0.34, 0.5],
        [0.44, 0.98],
        [0.0, 0.8],
    ];
    let bulges = [0.1, 0.12, -0.12, -0.14, -0.12];
    let mut right = vec![corners[0]];
    for (pair, bulge) in corners.windows(2).zip(bulges) {
        right.extend(curved(pair[0], pair[1], bulge).into_iter().skip(1));
    }
    let left = mirrored(&right);
    let mut veins = vec![[[0.0, 0.0], [0.0, 0.8]]];
    for way in [1.0, -1.0] {
        veins.push([[0.0, 0.02], [0.42 * way, 0.19]]);
        veins.push([[0.0, 0.3], [0.38 * way, 0.88]]);
    }
    Drawn {
        right,
        left,
        veins,
        bristles: Vec::new(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use calc::terms::leaf::{Arrangement, BarkPattern, Buds, Fruit, LeafKind, Thorns};

    fn marks() -> Marks {
        Marks {
            arrangement: Arrangement::Alternate,
            kind: LeafKind::Simple,
            leaflets: None,
            margin: Margin::Smooth,
            lobes: (Lobing::None, 0.0),
            shape: Shape::Elliptic,
            base: Base::Rounded,
            tip: Tip::Pointed,
            milky: false,
            thorns: Thorns::None,
            buds: Buds::Hidden,
            fruit: Fruit::Drupe,
            bark: BarkPattern::Smooth,
        }
    }

    /// The whole outline in the drawing, right side then left.
    fn outline(marks: &Marks) -> Vec<Point> {
        let place = Place::new([180.0, 282.0], 0.0, 262.0 / reach(marks));
        let Drawn { right, left, .. } = drawn(marks);
        right
            .iter()
            .chain(&left)
            .map(|point| place.at(*point))
            .collect()
    }

    #[test]
    fn every_blade_stays_on_its_plate() {
        let lobes = [
            (Lobing::None, 0.0),
            (Lobing::Mitten, 0.0),
            (Lobing::Palmate, 3.0),
            (Lobing::Palmate, 5.0),
            (Lobing::Palmate, 7.0),
            (Lobing::Pinnate, 5.0),
            (Lobing::Pinnate, 13.0),
        ];
        for shape in Shape::ALL {
            for base in Base::ALL {
                for tip in Tip::ALL {
                    for margin in Margin::ALL {
                        for lobes in lobes {
                            let marks = Marks {
                                shape: *shape,
                                base: *base,
                                tip: *tip,
                                margin: *margin,
                                lobes,
                                ..marks()
                            };
                            for [x, y] in outline(&marks) {
                                let on = (0.0..=360.0).contains(&x) && (0.0..=372.0).contains(&y);
                                assert!(on, "{x}, {y} of {marks:?}");
                            }
                        }
                    }
                }
            }
        }
    }

    #[test]
    fn each_word_of_a_mark_has_an_outline_of_its_own() {
        let mut seen: Vec<(String, Vec<Point>)> = Vec::new();
        let mut add = |word: String, marks: Marks| {
            let new = outline(&marks);
            for (other, known) in &seen {
                assert!(*known != new, "{word} and {other} are drawn alike");
            }
            seen.push((word, new));
        };
        for base in [
            Base::Heart,
            Base::Wedge,
            Base::Square,
            Base::Lopsided,
            Base::Ears,
        ] {
            add(base.word().to_owned(), Marks { base, ..marks() });
        }
        for tip in [Tip::DrawnOut, Tip::Blunt, Tip::Rounded, Tip::Notched] {
            add(tip.word().to_owned(), Marks { tip, ..marks() });
        }
        for margin in [
            Margin::Wavy,
            Margin::Fine,
            Margin::Coarse,
            Margin::Blunt,
            Margin::Double,
            Margin::Spiny,
            Margin::Gland,
        ] {
            add(margin.word().to_owned(), Marks { margin, ..marks() });
        }
        for shape in [
            Shape::Lance,
            Shape::Round,
            Shape::Ovate,
            Shape::Elliptic,
            Shape::Obovate,
            Shape::Oblong,
            Shape::Diamond,
            Shape::Triangle,
            Shape::Linear,
        ] {
            add(shape.word().to_owned(), Marks { shape, ..marks() });
        }
    }
}
