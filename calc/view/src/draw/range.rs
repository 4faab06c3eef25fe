//! Ranges: minutes and years from low to high, and shares out of a hundred by season.

use super::RangeGrade;
use super::pen::{Anchor, FIGURES, Pen, width};
use super::tape::{Rule, TENS, Tape, TapeScale};
use crate::out::Out;

/// A range in one unit (minutes, years).
#[derive(Clone, Copy, Debug)]
pub struct RangeBar {
    /// Low end.
    pub low: f64,
    /// Typical; a tick stands here.
    pub likely: Option<f64>,
    /// High end.
    pub high: f64,
    /// How well it is known.
    pub grade: RangeGrade,
}

/// Words of a range.
#[derive(Clone, Copy, Default)]
pub struct RangeLabels<'a> {
    /// What the picture says, for those who do not see it.
    pub aria: &'a str,
    /// At the typical tick: `"20 min"`; at the middle of the bar if there is none.
    pub likely: &'a str,
    /// Name of the scale: `"min"`, `"years"`.
    pub unit: &'a str,
}

/// A share of a hundred, one bar.
#[derive(Clone, Debug)]
pub struct ShareBar {
    /// Low end, 0 to 100.
    pub low: f64,
    /// Typical.
    pub likely: Option<f64>,
    /// High end, 0 to 100.
    pub high: f64,
    /// How well it is known.
    pub grade: RangeGrade,
    /// Over the bar: `"season 1: 20 to 60 in 100"`.
    pub label: String,
}

/// Words of the shares drawing.
#[derive(Clone, Copy, Default)]
pub struct SharesLabels<'a> {
    /// What the picture says, for those who do not see it.
    pub aria: &'a str,
    /// Name of the scale: `"in 100"`.
    pub unit: &'a str,
}

/// Draws a range, wide and narrow.
pub fn range(out: &mut dyn Out, r: &RangeBar, l: &RangeLabels<'_>) {
    let mut pen = Pen { out };
    // Room beyond the high end, so that the tape visibly goes on.
    let longest = (r.high * 1.4).max(r.low + 1.0).max(1.0);
    for (class, w) in &FIGURES {
        pen.svg(class, *w, 112.0, l.aria);
        let tape = Tape {
            x0: 4.0,
            x1: w - 8.0,
            top: 30.0,
            bottom: 80.0,
        };
        let px = (tape.x1 - tape.x0) / longest;
        bar(
            &mut pen,
            [tape.x0 + r.low * px, 48.0, (r.high - r.low) * px, 32.0],
            r.grade,
        );
        tape.edges(&mut pen, true, true);
        axis(&mut pen, &tape, px, l.unit, 101.0);
        let x = tape.x0 + r.likely.unwrap_or((r.low + r.high) / 2.0) * px;
        if r.likely.is_some() {
            typical(&mut pen, x, 40.0, 80.0);
            pen.shape("fi", "M# 29h18l-9 13Z", &[x - 9.0]);
        }
        let half = width(l.likely, 17.0, true) / 2.0;
        pen.text(
            x.max(half + 2.0).min(w - half),
            21.0,
            17.0,
            "tb",
            Anchor::Middle,
            l.likely,
        );
        pen.end();
    }
}

/// Draws shares from 0 to 100, a bar a row on one tape, wide and narrow.
pub fn shares(out: &mut dyn Out, rows: &[ShareBar], l: &SharesLabels<'_>) {
    let mut pen = Pen { out };
    for (class, w) in &FIGURES {
        let foot = 24.0 + 58.0 * rows.len() as f64;
        pen.svg(class, *w, foot + 32.0, l.aria);
        let tape = Tape {
            x0: 4.0,
            x1: w - 14.0,
            top: 8.0,
            bottom: foot,
        };
        let px = (tape.x1 - tape.x0) / 100.0;
        for (i, r) in rows.iter().enumerate() {
            let y = 46.0 + 58.0 * i as f64;
            pen.text(12.0, y - 6.0, 15.0, "", Anchor::Start, &r.label);
            bar(
                &mut pen,
                [tape.x0 + r.low * px, y, (r.high - r.low) * px, 24.0],
                r.grade,
            );
            if let Some(v) = r.likely {
                typical(&mut pen, tape.x0 + v * px, y - 3.0, y + 27.0);
            }
        }
        tape.edges(&mut pen, true, false);
        axis(&mut pen, &tape, px, l.unit, foot + 21.0);
        pen.end();
    }
}

fn bar(pen: &mut Pen<'_>, b: [f64; 4], grade: RangeGrade) {
    match grade {
        RangeGrade::Measured => pen.rect("s fband", b, ""),
        RangeGrade::Estimated => pen.rect("s", b, "url(#h)"),
        RangeGrade::Assumed => pen.rect("dash", b, "url(#hw)"),
    }
}

/// The typical tick, on a paper edge so that it shows on a solid bar too.
fn typical(pen: &mut Pen<'_>, x: f64, top: f64, bottom: f64) {
    pen.rect("fp", [x - 5.5, top, 11.0, bottom - top], "");
    pen.rect("fi", [x - 3.5, top, 7.0, bottom - top], "");
}

/// Ticks along the upper edge, numbers and the unit below the tape.
fn axis(pen: &mut Pen<'_>, tape: &Tape, px: f64, unit: &str, y: f64) {
    let rule = if tape.x1 > 400.0 {
        &Rule {
            steps: &TENS,
            least: [12.0, 60.0],
            ticks: [8.0, 8.0, 13.0],
        }
    } else {
        &Rule {
            steps: &TENS,
            least: [7.0, 46.0],
            ticks: [8.0, 8.0, 13.0],
        }
    };
    let scale = TapeScale {
        px,
        rule,
        way: 1.0,
        y,
        font: 15.0,
    };
    let end = tape.x1 + 6.0;
    let name = width(unit, 15.0, false);
    let avoid = [[end - name / 2.0, name / 2.0]];
    tape.scale(pen, &scale, &avoid);
    pen.text(tape.x0 + 8.0, y, 15.0, "", Anchor::Start, "0");
    pen.text(end, y, 15.0, "mut", Anchor::End, unit);
}
