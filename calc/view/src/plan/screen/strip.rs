//! The season as a strip of bars: person-hours a work day, rings below and visits on them, under what there is.

use crate::draw::pen::{Anchor, Pen};
use crate::measure::{month_short, plain};
use crate::page::Page;
use crate::words::m;
use calc::question::read_day;
use calc_plan::plan_file::shape::DayOf;
use chrono::Datelike;

const WIDE: f64 = 360.0;
/// Height of the bars, and room left of them, over and under them.
const HIGH: f64 = 110.0;
const LEFT: f64 = 30.0;
const OVER: f64 = 16.0;
const UNDER: f64 = 32.0;
/// More days than these have no number under their bar, and more than these no hours over it.
const NUMBERED: usize = 24;
const HOURS: usize = 10;

/// Draws it; nothing where no day has hours.
pub(super) fn strip(out: &mut Page<'_>, days: &[&DayOf]) {
    let most = days.iter().map(|day| day.minutes.max(day.used));
    let most = most.fold(0.0, f64::max);
    if most <= 0.0 {
        return;
    }
    out.open("figure");
    let mut pen = Pen { out: out.sink() };
    let low = OVER + HIGH;
    let up = |minutes: f64| minutes / most * HIGH;
    pen.svg("d map", WIDE, low + UNDER, &m::PROPERTY_STRIP);
    let wide = (WIDE - LEFT) / days.len() as f64;
    let bar = (wide * 0.8).min(46.0);
    let mut month = 0;
    for (at, day) in days.iter().enumerate() {
        let middle = LEFT + wide * (at as f64 + 0.5);
        let x = middle - bar / 2.0;
        let (rings, visits) = (up(day.rings), up(day.visits));
        if rings > 0.0 {
            pen.rect("fgo s", [x, low - rings, bar, rings], "");
        }
        if visits > 0.0 {
            pen.rect("fp s", [x, low - rings - visits, bar, visits], "");
        }
        let there = low - up(day.minutes);
        pen.line(
            "dash",
            middle - wide / 2.0,
            there,
            middle + wide / 2.0,
            there,
        );
        if days.len() <= HOURS {
            let text = plain(day.used / 60.0, 1);
            let over = (low - rings - visits - 4.0).max(11.0);
            pen.text(middle, over, 11.0, "halo", Anchor::Middle, &text);
        }
        let Ok(on) = read_day(&day.day) else { continue };
        if days.len() <= NUMBERED {
            pen.text(
                middle,
                low + 14.0,
                11.0,
                "",
                Anchor::Middle,
                &on.day().to_string(),
            );
        }
        if on.month() != month {
            month = on.month();
            pen.text(
                middle,
                low + 28.0,
                11.0,
                "tb",
                Anchor::Middle,
                month_short(month),
            );
        }
    }
    pen.line("s", LEFT, low, WIDE, low);
    let top = plain(most / 60.0, 0);
    pen.text(LEFT - 4.0, OVER + 4.0, 11.0, "", Anchor::End, &top);
    pen.text(LEFT - 4.0, low + 4.0, 11.0, "", Anchor::End, "0");
    pen.end();
    out.leaf("figcaption", m::PROPERTY_STRIP);
    out.close();
}
