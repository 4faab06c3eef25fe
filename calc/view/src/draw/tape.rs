//! The measuring tape: the one grammar of all drawings (hook, notch, ticks, torn end).

use super::pen::{Anchor, D, Pen, width};

/// A horizontal tape: zero at `x0`, drawn to `x1`, edges at `top` and `bottom`.
pub(crate) struct Tape {
    pub x0: f64,
    pub x1: f64,
    pub top: f64,
    pub bottom: f64,
}

/// What a scale may be divided into.
pub(crate) struct Rule {
    /// `[small, middle, labelled]` steps in the unit, finest first; middle and labelled are whole multiples of small.
    pub steps: &'static [[f64; 3]],
    /// Fewest pixels between small and between labelled ticks.
    pub least: [f64; 2],
    /// Lengths of the three ticks.
    pub ticks: [f64; 3],
}

/// One side of a tape.
pub(crate) struct TapeScale {
    /// Pixels a unit.
    pub px: f64,
    /// What it may be divided into.
    pub rule: &'static Rule,
    /// From the upper edge (1) or the lower one (-1).
    pub way: f64,
    /// Baseline and size of the numbers.
    pub y: f64,
    pub font: f64,
}

/// Tens: centimetres, metres, feet, minutes, years.
pub(crate) const TENS: [[f64; 3]; 15] = [
    [0.5, 1.0, 1.0],
    [0.5, 1.0, 2.0],
    [1.0, 5.0, 5.0],
    [1.0, 5.0, 10.0],
    [2.0, 10.0, 10.0],
    [5.0, 10.0, 10.0],
    [5.0, 10.0, 20.0],
    [10.0, 20.0, 20.0],
    [10.0, 50.0, 50.0],
    [20.0, 100.0, 100.0],
    [50.0, 100.0, 100.0],
    [50.0, 100.0, 200.0],
    [100.0, 500.0, 500.0],
    [200.0, 1000.0, 1000.0],
    [500.0, 1000.0, 2000.0],
];

impl Tape {
    /// Both long edges, the hook at zero, and an end: torn where the tape goes on.
    pub(crate) fn edges(&self, pen: &mut Pen<'_>, hook: bool, torn: bool) {
        let Self {
            x0,
            x1,
            top,
            bottom,
        } = *self;
        let mut d = D::default();
        let edges = [x0, top, x1, x0, bottom, x1, x1, top];
        d.add("M##H#M##H#M##", &edges);
        if torn {
            let q = (bottom - top) / 4.0;
            d.add("l-5#l8#l-8#l5#", &[q; 4]);
        } else {
            d.add("V#", &[bottom]);
        }
        pen.path("s", &d.0);
        if hook {
            let hook = [x0, top - 5.0, bottom + 9.0, x0 + 7.0];
            pen.shape("s3", "M##V#H#", &hook);
        }
    }

    /// Ticks and numbers of one side. Numbers that would touch a stretch of `avoid` (middle, half its
    /// width) are left out, never shrunk.
    pub(crate) fn scale(&self, pen: &mut Pen<'_>, s: &TapeScale, avoid: &[[f64; 2]]) {
        let Rule {
            steps,
            least: [fine, named],
            ticks: [short, middling, long],
        } = s.rule;
        let fits = |t: &&[f64; 3]| t[0] * s.px >= *fine && t[2] * s.px >= *named;
        let coarsest = steps.last().copied().unwrap_or([1.0; 3]);
        let [small, middle, labelled] = steps.iter().find(fits).copied().unwrap_or(coarsest);
        let whole = |of: f64| (of / small + 0.5) as u32;
        let (every_middle, every_label) = (whole(middle), whole(labelled));
        let edge = if s.way > 0.0 { self.top } else { self.bottom };
        let mut d = D::default();
        let mut i = 1_u32;
        loop {
            let value = f64::from(i) * small;
            let x = self.x0 + value * s.px;
            if x > self.x1 - 3.0 {
                break;
            }
            let labelled = i.is_multiple_of(every_label);
            let tick = match i.is_multiple_of(every_middle) {
                _ if labelled => long,
                true => middling,
                false => short,
            };
            d.add("M##v#", &[x, edge, s.way * tick]);
            if labelled {
                let text = super::number::num(value);
                let half = width(&text, s.font, false) / 2.0 + 4.0;
                if x + half < self.x1 && avoid.iter().all(|[a, w]| (a - x).abs() > half + w) {
                    pen.text(x, s.y, s.font, "", Anchor::Middle, &text);
                }
            }
            i += 1;
        }
        pen.path("s", &d.0);
    }

    /// A reading: a notch cut into the upper edge, with a thin line down to `to`.
    pub(crate) fn notch(&self, pen: &mut Pen<'_>, x: f64, half: f64, depth: f64, to: f64) {
        let foot = self.top + depth;
        let cut = |y: f64| [x - half, y, x, foot, x + half, y];
        pen.shape("fp", "M##L##L##Z", &cut(self.top - 1.5));
        pen.shape("s", "M##L##L##", &cut(self.top));
        if to > foot {
            pen.line("s", x, foot, x, to);
        }
    }
}
