//! The best days of several bands of states on one year: a row each, under a scale of months.

use super::MONTHS;
use super::pen::{Anchor, Pen};
use crate::out::Out;

/// Where the year begins, and how wide a day is.
const LEFT: f64 = 24.0;
const DAY: f64 = 0.9;
/// Height of the scale, and of a row.
const TOP: f64 = 26.0;
const ROW: f64 = 30.0;

/// Draws them: the name of each row with the first and the last day of the year that it is good on; the months in short. `says`
/// is the name for those who do not see it: the days stand in the table below.
pub fn bands(out: &mut dyn Out, rows: &[(String, [u32; 2])], months: &[String], says: &str) {
    let pen = &mut Pen { out };
    let x = |day: f64| LEFT + day * DAY;
    let width = x(365.0) + 2.0;
    let foot = TOP + ROW * rows.len() as f64;
    pen.svg("d", width, foot + 2.0, says);
    for (ends, month) in MONTHS.windows(2).zip(months) {
        let (from, to) = (x(ends[0]), x(ends[1]));
        pen.line("s1", from, TOP - 6.0, from, foot);
        let letter: String = month.chars().take(1).collect();
        let middle = (from + to) / 2.0;
        pen.text(middle, TOP - 8.0, 14.0, "", Anchor::Middle, &letter);
    }
    pen.line("s", x(0.0), TOP, x(365.0), TOP);
    for (at, (name, [from, to])) in rows.iter().enumerate() {
        let y = TOP + ROW * at as f64;
        pen.text(LEFT - 8.0, y + 20.0, 14.0, "tb", Anchor::End, name);
        let from = x(f64::from(*from) - 1.0);
        pen.rect(
            "s fband",
            [from, y + 6.0, x(f64::from(*to)) - from, ROW - 12.0],
            "",
        );
        pen.line("s1", x(0.0), y + ROW, x(365.0), y + ROW);
    }
    pen.line("s", x(0.0), TOP - 6.0, x(0.0), foot);
    pen.end();
}
