//! Trees as decor: a bare hardwood and a conifer, grown by a rule, the same every time.

use super::pen::{D, Pen, outline};
use super::wobble::Wobble;
use crate::out::Out;

/// How a tree is drawn.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Habit {
    /// A bare crown of limbs.
    Hardwood,
    /// One stem to the top with drooping tiers.
    Conifer,
}

/// A direction turned by an angle given as the tangent of its half, so no sine is needed.
fn turn([x, y]: [f64; 2], half_tan: f64) -> [f64; 2] {
    let n = 1.0 + half_tan * half_tan;
    let (cos, sin) = ((1.0 - half_tan * half_tan) / n, 2.0 * half_tan / n);
    [x * cos - y * sin, x * sin + y * cos]
}

struct Crown {
    /// One path a thickness.
    levels: [D; 3],
    wobble: Wobble,
    /// Nothing grows above this y.
    top: f64,
    deepest: usize,
}

impl Crown {
    fn limb(&mut self, [x, y]: [f64; 2], way: [f64; 2], length: f64, level: usize) {
        let bent = turn(way, self.wobble.next() * 0.08);
        let end = [x + bent[0] * length, (y + bent[1] * length).max(self.top)];
        let mid = [
            x + way[0] * length * 0.55,
            (y + way[1] * length * 0.55).max(self.top),
        ];
        self.levels[level].add("M##Q####", &[x, y, mid[0], mid[1], end[0], end[1]]);
        if level == self.deepest {
            return;
        }
        let side = if self.wobble.next() > 0.0 { 0.3 } else { -0.3 };
        let mut grow = |from: [f64; 2], half_tan: f64, share: f64| {
            let spread = half_tan * (1.0 + 0.45 * self.wobble.next());
            // Twigs turn up towards the light a little.
            let mut next = turn(bent, spread);
            next[1] -= 0.18;
            let n = (next[0] * next[0] + next[1] * next[1]).sqrt();
            self.limb(from, [next[0] / n, next[1] / n], length * share, level + 1);
        };
        grow(end, 0.2, 0.66);
        grow(end, -0.2, 0.62);
        grow(mid, side, 0.6);
    }
}

/// A tree standing at (`x`, `y`), `height` pixels tall; small ones get fewer twigs.
pub(crate) fn tree(pen: &mut Pen<'_>, x: f64, y: f64, height: f64, habit: Habit) {
    let h = height;
    let at = |share: f64| y - share * h;
    let mut crown = Crown {
        levels: Default::default(),
        wobble: Wobble(7),
        top: at(1.0),
        deepest: if h > 130.0 { 2 } else { 1 },
    };
    // The stem: flared at the foot, tapering to the top of its clear part.
    let (fork, foot) = match habit {
        Habit::Hardwood => (0.66, 0.022),
        Habit::Conifer => (0.97, 0.016),
    };
    let (left, right, wide) = (x - foot * h, x + foot * h, 2.0 * foot * h);
    let (flare, clear) = (at(0.02), at(0.1));
    let stem = [
        x - wide,
        y,
        left,
        flare,
        left,
        clear,
        x - 0.004 * h,
        at(fork),
        0.008 * h,
        right,
        clear,
        right,
        flare,
        x + wide,
        y,
    ];
    pen.shape("fi", "M##Q####L##h#L##Q####Z", &stem);
    match habit {
        Habit::Hardwood => {
            for i in 0..9_i32 {
                let rise = f64::from(i) / 8.0;
                let side = if i % 2 == 0 { 1.0 } else { -1.0 };
                let lean = side * (0.45 - 0.26 * rise + 0.05 * crown.wobble.next());
                let length = h * (0.2 - 0.11 * (rise - 0.35) * (rise - 0.35));
                crown.limb(
                    [x, at(0.25 + 0.41 * rise)],
                    turn([0.0, -1.0], lean),
                    length,
                    0,
                );
            }
            crown.limb([x, at(fork)], [0.0, -1.0], h * 0.16, 0);
        }
        Habit::Conifer => {
            // One outline: each tier droops to its tip and steps back in under the next.
            let tiers = if h > 130.0 { 15_i32 } else { 9 };
            let mut edges = [vec![], vec![]];
            for (side, edge) in [1.0, -1.0].into_iter().zip(&mut edges) {
                for i in 0..tiers {
                    let down = f64::from(i + 1) / f64::from(tiers);
                    let reach = h * (0.19 * down + 0.01) * (1.0 + 0.1 * crown.wobble.next());
                    let low = 1.0 - 0.9 * down;
                    edge.push([x + side * reach, at(low - 0.012)]);
                    edge.push([x + side * reach * 0.5, at(low + 0.012)]);
                }
            }
            let [right, left] = edges;
            let mut points = vec![[x, at(1.0)]];
            points.extend(right);
            points.extend(left.iter().rev());
            pen.path("fi", &outline(&points, [0.0, 0.0], 1.0));
        }
    }
    for (level, weight) in crown.levels.iter().zip(&[0.011, 0.0065, 0.004]) {
        if !level.0.is_empty() {
            pen.out.open("path");
            pen.out.attr("class", "tr");
            pen.out.attr("d", &level.0);
            // A stroke of at least 0.7, so that twigs of a small tree still print.
            pen.at("stroke-width", (weight * h).max(0.7));
            pen.end();
        }
    }
}

/// A person standing at (`x`, `y`), `height` pixels tall.
pub(crate) fn person(pen: &mut Pen<'_>, x: f64, y: f64, height: f64) {
    let u = height / 25.7;
    pen.circle("fi", x, y - 23.0 * u, 2.7 * u);
    pen.path("fi", &outline(&BODY, [x, y], u));
}

/// Outline of a person 25.7 tall, feet at zero, without the head.
const BODY: [[f64; 2]; 14] = [
    [-3.7, -18.7],
    [0.0, -20.0],
    [3.7, -18.7],
    [4.8, -10.4],
    [3.2, -10.1],
    [2.6, -13.4],
    [3.0, 0.0],
    [0.8, 0.0],
    [0.0, -9.5],
    [-0.8, 0.0],
    [-3.0, 0.0],
    [-2.6, -13.4],
    [-3.2, -10.1],
    [-4.8, -10.4],
];

/// The tree of the home page with its ring and a person beside it, decor, 300 × 262 (class `stand`).
pub fn stand(out: &mut dyn Out) {
    let mut pen = Pen { out };
    pen.svg("stand", 300.0, 262.0, "");
    tree(&mut pen, 150.0, 262.0, 254.0, Habit::Hardwood);
    // The ring: a gap in the stem at the height of a person's chest.
    pen.rect("fp", [140.0, 243.0, 20.0, 4.0], "");
    person(&mut pen, 190.0, 262.0, 27.0);
    pen.end();
}
