//! The years after the ring, with their visits.

use super::{Pin, TapeRow, pins, pins_foot};
use crate::draw::MONTHS;
use crate::draw::pen::{Anchor, D, Pen, width};
use crate::draw::tape::Tape;
use crate::out::Out;

/// One year of visits.
#[derive(Clone, Debug)]
pub struct VisitYear {
    /// The year: `"2026"`.
    pub label: String,
    /// The day of the ring, if it is in this year.
    pub ring: Option<u16>,
    /// Visits of this year.
    pub visits: Vec<Pin>,
}

/// Words of the visits drawing.
#[derive(Clone, Copy, Default)]
pub struct VisitsLabels<'a> {
    /// What the picture says, for those who do not see it.
    pub aria: &'a str,
    /// At the day of the ring.
    pub ring: &'a str,
}

/// Draws the years of visits: side by side wide, one under the other narrow.
pub fn visits(out: &mut dyn Out, years: &[VisitYear], l: &VisitsLabels<'_>) {
    let mut pen = Pen { out };
    let n = years.len().max(1) as f64;
    let whole_row = |x0: f64, x1: f64, top: f64| TapeRow {
        x0,
        x1,
        months: &MONTHS,
        top,
        font: 15.0,
    };
    let each = 714.0 / n;
    let rows: Vec<TapeRow> = (0..years.len())
        .map(|i| whole_row(3.0 + each * i as f64, 3.0 + each * (i as f64 + 1.0), 34.0))
        .collect();
    let deep = rows
        .iter()
        .zip(years)
        .map(|(r, y)| pins_foot(r, &y.visits, 74.0, 16.0))
        .fold(86.0, f64::max);
    pen.svg("d wide", 720.0, deep, l.aria);
    Tape {
        x0: 3.0,
        x1: 717.0,
        top: 34.0,
        bottom: 74.0,
    }
    .edges(&mut pen, true, true);
    for (r, y) in rows.iter().zip(years) {
        year_of_visits(&mut pen, r, y, l, 74.0);
    }
    pen.end();
    let mut top = 34.0;
    let mut rows = Vec::new();
    for y in years {
        let r = whole_row(3.0, 277.0, top);
        top = pins_foot(&r, &y.visits, top + 34.0, 12.0) + 30.0;
        rows.push(r);
    }
    pen.svg("d narrow", 280.0, top - 28.0, l.aria);
    for (i, (r, y)) in rows.iter().zip(years).enumerate() {
        Tape {
            x0: 3.0,
            x1: 277.0,
            top: r.top,
            bottom: r.top + 34.0,
        }
        .edges(&mut pen, i == 0, i + 1 == years.len());
        year_of_visits(&mut pen, r, y, l, r.top + 34.0);
    }
    pen.end();
}

fn year_of_visits(pen: &mut Pen<'_>, r: &TapeRow, y: &VisitYear, l: &VisitsLabels<'_>, foot: f64) {
    let mut d = D::default();
    if r.x0 > 3.0 {
        d.add("M##V#", &[r.x0, r.top, foot]);
    }
    for (m, day) in MONTHS.iter().enumerate().take(12).skip(1) {
        let tick = if m % 3 == 0 { "M##v12" } else { "M##v7" };
        d.add(tick, &[r.x(*day), r.top]);
    }
    pen.path("s", &d.0);
    pen.text(r.x0 + 10.0, foot - 7.0, 16.0, "tb", Anchor::Start, &y.label);
    if let Some(x) = y.ring.and_then(|day| r.day(day)) {
        let tape = Tape {
            x0: r.x0,
            x1: r.x1,
            top: r.top,
            bottom: foot,
        };
        tape.notch(pen, x, 8.0, 14.0, foot);
        let w = width(l.ring, 16.0, true) / 2.0;
        pen.text(
            x.max(w).min(r.x1 - w),
            r.top - 9.0,
            16.0,
            "tb",
            Anchor::Middle,
            l.ring,
        );
    }
    pins(
        pen,
        r,
        &y.visits,
        foot,
        if foot - r.top > 36.0 { 16.0 } else { 12.0 },
    );
}
