//! The form's tapes, 280 wide: what was typed, drawn back at once.

use crate::answer::ring::drawing::size_scale;
use crate::draw::Reading;
use crate::draw::pen::{Anchor, Pen, width};
use crate::draw::tape::{Rule, TENS, Tape, TapeScale};
use crate::out::Out;

/// Words of the size tape.
#[derive(Clone, Copy, Default)]
pub struct SizeLabels<'a> {
    /// What the picture says, for those who do not see it.
    pub aria: &'a str,
    /// Names of the two scales.
    pub inch: &'a str,
    /// Centimetres.
    pub cm: &'a str,
    /// The reading.
    pub size: Reading<'a>,
}

const X0: f64 = 4.0;
const X1: f64 = 272.0;

/// Draws the size tape; without a reading the tape alone. 20 in long, longer for a thicker stem.
pub fn size_tape(out: &mut dyn Out, dbh_mm: Option<f64>, l: &SizeLabels<'_>) {
    let mut pen = Pen { out };
    let longest = dbh_mm.map_or(508.0, |d| (d * 1.2).max(508.0));
    let px = (X1 - X0) / longest;
    pen.svg("d", 280.0, 112.0, l.aria);
    let tape = Tape {
        x0: X0,
        x1: X1,
        top: 30.0,
        bottom: 88.0,
    };
    let reading = dbh_mm.map(|d| d * px);
    size_scale(&mut pen, &tape, px, [l.inch, l.cm], reading, 13.0);
    if let Some(r) = reading {
        label(&mut pen, X0 + r, 22.0, 16.0, "tb", l.size.us);
        label(&mut pen, X0 + r, 107.0, 15.0, "", l.size.metric);
    }
    pen.end();
}

/// Text centred at `x`, moved in from the edges.
fn label(pen: &mut Pen<'_>, x: f64, y: f64, size: f64, class: &str, text: &str) {
    let half = width(text, size, class == "tb") / 2.0;
    pen.text(
        x.max(half + 2.0).min(278.0 - half),
        y,
        size,
        class,
        Anchor::Middle,
        text,
    );
}

/// Distances of the place, metres.
#[derive(Clone, Copy, Debug)]
pub struct Distance<'a> {
    /// Height used; none while it is not known.
    pub height_used_m: Option<f64>,
    /// End of the ground it can throw wood on.
    pub zone_m: Option<f64>,
    /// Distances given, nearest named.
    pub targets_m: &'a [f64],
    /// Whether the scale counts metres; else feet.
    pub metric: bool,
}

/// Words of the distance tape.
#[derive(Clone, Copy, Default)]
pub struct DistanceLabels<'a> {
    /// What the picture says, for those who do not see it.
    pub aria: &'a str,
    /// The nearest thing: `"path, 100 ft"`.
    pub nearest: &'a str,
    /// Name of the scale: `"ft"` or `"m"`.
    pub unit: &'a str,
}

/// Draws the distance tape: hatched where it can land, wide hatch where it can throw, a notch a thing.
pub fn distance_tape(out: &mut dyn Out, d: &Distance<'_>, l: &DistanceLabels<'_>) {
    let mut pen = Pen { out };
    pen.svg("d", 280.0, 108.0, l.aria);
    let nearest = d.targets_m.iter().copied().fold(f64::INFINITY, f64::min);
    let h = d.height_used_m.unwrap_or(15.0);
    let mut longest = (d.zone_m.unwrap_or(0.0) * 1.25).max(h * 2.0);
    if nearest.is_finite() {
        // A thing beyond three heights lies past the torn end.
        longest = longest.max((nearest * 1.15).min(h * 3.0));
    }
    let px = (X1 - X0) / longest;
    let tape = Tape {
        x0: X0,
        x1: X1,
        top: 32.0,
        bottom: 80.0,
    };
    if let (Some(h), Some(zone)) = (d.height_used_m, d.zone_m) {
        pen.rect("s", [X0, 49.0, h * px, 31.0], "url(#h)");
        pen.rect("s", [X0 + h * px, 49.0, (zone - h) * px, 31.0], "url(#hw)");
    }
    tape.edges(&mut pen, true, true);
    let scale = TapeScale {
        px: px * if d.metric { 1.0 } else { 0.3048 },
        rule: &Rule {
            steps: &TENS,
            least: [9.0, 50.0],
            ticks: [7.0, 7.0, 13.0],
        },
        way: 1.0,
        y: 100.0,
        font: 14.0,
    };
    let name = width(l.unit, 14.0, false);
    tape.scale(&mut pen, &scale, &[[X1 + 4.0 - name / 2.0, name / 2.0]]);
    pen.text(X0 + 8.0, 100.0, 14.0, "", Anchor::Start, "0");
    pen.text(X1 + 4.0, 100.0, 14.0, "mut", Anchor::End, l.unit);
    for m in d.targets_m {
        let x = X0 + m * px;
        if x < X1 - 2.0 {
            tape.notch(&mut pen, x, 8.0, 14.0, tape.bottom);
        }
    }
    if nearest.is_finite() {
        label(
            &mut pen,
            X0 + (nearest * px).min(X1),
            23.0,
            16.0,
            "tb",
            l.nearest,
        );
    }
    pen.end();
}
