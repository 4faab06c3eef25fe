//! The year tape: what the bark does and what the rules allow, day by day; and the visits that follow.

mod visits;

pub use self::visits::{VisitYear, VisitsLabels, visits};

use crate::draw::MONTHS;
use crate::draw::pen::{Anchor, D, Pen, sort, width};
use crate::draw::tape::Tape;
use crate::out::Out;

/// Days of the year, 1 to 365, both included; wraps the new year if `to` is before `from`.
/// 29 February counts as 28.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct DaySpan {
    /// First day.
    pub from: u16,
    /// Last day.
    pub to: u16,
}

/// A numbered visit.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Pin {
    /// Day of the year, 1 to 365.
    pub day: u16,
    /// Its number in the list beside the drawing.
    pub number: u8,
}

/// What a year tape shows.
#[derive(Clone, Copy, Default, Debug)]
pub struct YearTape<'a> {
    /// Bark slips: solid.
    pub slips: &'a [DaySpan],
    /// Bark may slip: hatched.
    pub may_slip: &'a [DaySpan],
    /// Closed by a rule: crossed.
    pub closed: &'a [DaySpan],
    /// Cautions that close nothing (nesting, bats): a dotted line.
    pub caution: &'a [DaySpan],
    /// Both open: bracketed.
    pub window: &'a [DaySpan],
    /// Today: a small notch; left out where it is the day asked.
    pub today: Option<u16>,
    /// The day asked about: a notch with a line through the lanes.
    pub asked: Option<u16>,
    /// Visits in this year.
    pub visits: &'a [Pin],
}

/// Words of a year tape.
#[derive(Clone, Copy, Default)]
pub struct YearLabels<'a> {
    /// What the picture says, for those who do not see it.
    pub aria: &'a str,
    /// Short names, January first.
    pub months: [&'a str; 12],
    /// One letter each.
    pub initials: [&'a str; 12],
    /// Lane of the bark.
    pub bark: &'a str,
    /// Lane of the rules.
    pub rules: &'a str,
    /// The day asked about.
    pub asked: &'a str,
    /// Today.
    pub today: &'a str,
    /// Beside the longest bracket, wide drawing: `"your window: 1 June to 4 July"`.
    pub window: &'a str,
    /// The same, narrow drawing.
    pub window_short: &'a str,
}

/// From the tape's upper edge: foot of the scale, foot of the bark lane, lower edge.
const SCALE: f64 = 31.0;
const BARK: f64 = 65.0;
const FOOT: f64 = 91.0;

/// A stretch of the year on one tape.
struct TapeRow {
    x0: f64,
    x1: f64,
    /// The months as [`MONTHS`] has them, and the day behind the last.
    months: &'static [f64],
    top: f64,
    font: f64,
}

impl TapeRow {
    /// The middle of nothing: the left edge of a day counted from zero.
    fn x(&self, day: f64) -> f64 {
        let (from, to) = self.ends();
        self.x0 + (day - from) / (to - from) * (self.x1 - self.x0)
    }
    fn ends(&self) -> (f64, f64) {
        let day = |day: Option<&f64>| day.copied().unwrap_or(0.0);
        (day(self.months.first()), day(self.months.last()))
    }
    /// First day of each month and of the next, counted from zero.
    fn each_month(&self) -> impl Iterator<Item = (f64, f64)> {
        self.months.windows(2).map(|ends| (ends[0], ends[1]))
    }
    /// The parts of spans that lie in this row, as x from and to; a span that wraps gives two.
    fn pieces(&self, spans: &[DaySpan]) -> Vec<[f64; 2]> {
        let (from, to) = self.ends();
        let mut all = Vec::new();
        for s in spans {
            let (a, b) = (f64::from(s.from) - 1.0, f64::from(s.to));
            let parts = if s.to < s.from {
                [[a, 365.0], [0.0, b]]
            } else {
                [[a, b], [0.0, 0.0]]
            };
            for [a, b] in parts {
                let (a, b) = (a.max(from), b.min(to));
                if a < b {
                    all.push([self.x(a), self.x(b)]);
                }
            }
        }
        all
    }
    /// The middle of a day, if it lies in this row.
    fn day(&self, day: u16) -> Option<f64> {
        let (from, to) = self.ends();
        let at = f64::from(day.min(365)) - 0.5;
        (day > 0 && at > from && at < to).then(|| self.x(at))
    }
}

/// Draws the year, wide, and narrow in two rows of six months.
pub fn year(out: &mut dyn Out, y: &YearTape<'_>, l: &YearLabels<'_>) {
    let mut pen = Pen { out };
    let wide = TapeRow {
        x0: 3.0,
        x1: 717.0,
        months: &MONTHS,
        top: 46.0,
        font: 15.0,
    };
    let end = pins_foot(&wide, y.visits, wide.top + FOOT, 20.0);
    pen.svg("d wide", 720.0, end, l.aria);
    row(&mut pen, &wide, y, l, &l.months, l.window);
    pen.end();
    let half = |months: &'static [f64], top: f64| TapeRow {
        x0: 3.0,
        x1: 277.0,
        months,
        top,
        font: 13.0,
    };
    let first = half(&MONTHS[..7], 46.0);
    let foot = pins_foot(&first, y.visits, first.top + FOOT, 20.0);
    let second = half(&MONTHS[6..], foot + 42.0);
    let end = pins_foot(&second, y.visits, second.top + FOOT, 20.0);
    pen.svg("d narrow", 280.0, end, l.aria);
    // Only the row that holds more of the window names it.
    let longest = |r: &TapeRow| {
        r.pieces(y.window)
            .iter()
            .map(|[a, b]| b - a)
            .fold(0.0, f64::max)
    };
    let in_first = longest(&first) >= longest(&second);
    let window = |named: bool| if named { l.window_short } else { "" };
    row(&mut pen, &first, y, l, &l.months[..6], window(in_first));
    row(&mut pen, &second, y, l, &l.months[6..], window(!in_first));
    pen.end();
}

/// Draws the form's year tape, 280 wide: twelve months in one row, initials only.
pub fn year_small(out: &mut dyn Out, y: &YearTape<'_>, l: &YearLabels<'_>) {
    let mut pen = Pen { out };
    let r = TapeRow {
        x0: 4.0,
        x1: 276.0,
        months: &MONTHS,
        top: 36.0,
        font: 13.0,
    };
    pen.svg("d", 280.0, r.top + FOOT + 12.0, l.aria);
    let plain = YearTape {
        visits: &[],
        window: &[],
        ..*y
    };
    row(&mut pen, &r, &plain, l, &l.initials, "");
    pen.end();
}

fn row(
    pen: &mut Pen<'_>,
    r: &TapeRow,
    y: &YearTape<'_>,
    l: &YearLabels<'_>,
    names: &[&str],
    window: &str,
) {
    let tape = Tape {
        x0: r.x0,
        x1: r.x1,
        top: r.top,
        bottom: r.top + FOOT,
    };
    let (starts, stops) = r.ends();
    let first = starts == 0.0;
    let (scale, bark) = (r.top + SCALE, r.top + BARK);
    let mut lane = Vec::new();
    let mut bark_on = |spans: &[DaySpan], class: &str, fill: &str| {
        for [a, b] in r.pieces(spans) {
            pen.rect(class, [a, scale, b - a, bark - scale], fill);
            lane.push([a, b]);
        }
    };
    bark_on(y.may_slip, "s", "url(#h)");
    bark_on(y.slips, "s fband", "");
    let closed = r.pieces(y.closed);
    for [a, b] in &closed {
        crosses(pen, r, *a, *b, bark + 4.0, 14.0);
    }
    let cautions = r.pieces(y.caution);
    let mut dots = D::default();
    let mut ends = D::default();
    for [a, b] in &cautions {
        let low = tape.bottom - 4.5;
        dots.add("M##L##", &[a + 4.0, low, b - 3.0, low]);
        for x in [a, b] {
            ends.add("M##V#", &[*x, low - 3.0, tape.bottom]);
        }
    }
    pen.path("dot", &dots.0);
    pen.path("s", &ends.0);
    tape.edges(pen, first, false);
    let mut d = D::default();
    for y in [scale, bark] {
        d.add("M##H#", &[r.x0, y, r.x1]);
    }
    pen.path("s1", &d.0);
    let mut d = D::default();
    for ((from, to), name) in r.each_month().zip(names) {
        let middle = (from + to) / 2.0;
        pen.text(r.x(middle), r.top + 26.0, r.font, "", Anchor::Middle, name);
        d.add("M##v7", &[r.x(from + 15.0), r.top]);
        if to < stops {
            d.add("M##v#", &[r.x(to), r.top, SCALE]);
        }
    }
    pen.path("s", &d.0);
    // The names of the lanes stand where the lane is empty.
    let rules: Vec<[f64; 2]> = closed.iter().chain(&cautions).copied().collect();
    let asked = y.asked.and_then(|d| r.day(d));
    let mut name = |text: &str, taken: &[[f64; 2]], base: f64| {
        let (x, class) = gap(r, taken, asked, width(text, r.font, false));
        pen.text(x, base, r.font, class, Anchor::Start, text);
    };
    if first {
        name(l.bark, &lane, scale + 22.0);
        name(l.rules, &rules, bark + 17.0);
    }
    brackets(pen, r, y, window);
    // The day asked about, then today if it is another; labels stay inside and never touch.
    let base = r.top - if y.window.is_empty() { 8.0 } else { 24.0 };
    let mut taken: Option<[f64; 2]> = None;
    let today = y
        .today
        .filter(|d| y.asked != Some(*d))
        .and_then(|d| r.day(d));
    let mut name = |pen: &mut Pen<'_>, x: f64, text: &str, size: f64, class: &str| {
        let w = width(text, size, class == "tb") / 2.0;
        let inside = x.max(r.x0 + w).min(r.x1 - w);
        if taken.is_none_or(|[a, b]| inside - w > b + 8.0 || inside + w < a - 8.0) {
            pen.text(inside, base, size, class, Anchor::Middle, text);
            taken = Some([inside - w, inside + w]);
        }
    };
    if let Some(x) = asked {
        tape.notch(pen, x, 8.0, 11.0, 0.0);
        pen.line("s", x, scale, x, tape.bottom);
        name(pen, x, l.asked, 17.0, "tb");
    }
    if let Some(x) = today
        && asked.is_none_or(|a| (a - x).abs() >= 15.0)
    {
        tape.notch(pen, x, 5.0, 8.0, 0.0);
        name(pen, x, l.today, 15.0, "");
    }
    pins(pen, r, y.visits, tape.bottom, 20.0);
}

/// Brackets over the days when both bark and rules are open; the longest is named beside it.
fn brackets(pen: &mut Pen<'_>, r: &TapeRow, y: &YearTape<'_>, window: &str) {
    let open = r.pieces(y.window);
    let wraps = y.window.iter().any(|s| s.to < s.from);
    let (starts, stops) = r.ends();
    let mut d = D::default();
    for [a, b] in &open {
        // A window that runs over the end of the row, or over the new year, is left open there.
        if *a > r.x0 + 0.5 || (starts == 0.0 && !wraps) {
            d.add("M##v-10", &[*a, r.top - 2.0]);
        } else {
            d.add("M##", &[*a, r.top - 12.0]);
        }
        d.add("H#", &[*b]);
        if *b < r.x1 - 0.5 || (stops == 365.0 && !wraps) {
            d.add("v10", &[]);
        }
    }
    pen.path("s3", &d.0);
    let Some([a, b]) = open
        .iter()
        .copied()
        .max_by(|p, q| (p[1] - p[0]).total_cmp(&(q[1] - q[0])))
    else {
        return;
    };
    let w = width(window, r.font, false);
    let free = |from: f64, to: f64| {
        from >= r.x0 && to <= r.x1 && open.iter().all(|[c, e]| to < *c || from > *e)
    };
    if free(b + 10.0, b + 10.0 + w) {
        pen.text(b + 10.0, r.top - 6.0, r.font, "", Anchor::Start, window);
    } else if free(a - 10.0 - w, a - 10.0) {
        pen.text(a - 10.0, r.top - 6.0, r.font, "", Anchor::End, window);
    }
}

/// Crossed out, corner to corner in each half month.
fn crosses(pen: &mut Pen<'_>, r: &TapeRow, a: f64, b: f64, y: f64, h: f64) {
    let mut d = D::default();
    d.add("M##H#v#H#Z", &[a, y, b, h, a]);
    let mut cut = |from: f64, to: f64| {
        let (from, to) = (from.max(a), to.min(b));
        if to - from > 1.0 {
            let (top, low) = (y, y + h);
            d.add("M##L##M##L##", &[from, top, to, low, to, top, from, low]);
        }
    };
    for (from, to) in r.each_month() {
        cut(r.x(from), r.x(from + 15.0));
        cut(r.x(from + 15.0), r.x(to));
    }
    pen.path("s", &d.0);
}

/// Where a lane's name can stand: the first gap that holds it; else at the left, on paper.
fn gap(r: &TapeRow, taken: &[[f64; 2]], line: Option<f64>, w: f64) -> (f64, &'static str) {
    let mut first: Option<f64> = None;
    let mut start = |s: f64| {
        let (from, to) = (s + 9.0, s + 12.0 + w);
        let clear = taken.iter().all(|[a, b]| to < *a || from > *b)
            && line.is_none_or(|x| to < x || from > x);
        if to < r.x1 && clear && first.is_none_or(|first| from < first) {
            first = Some(from);
        }
    };
    start(r.x0);
    for [_, end] in taken {
        start(*end);
    }
    if let Some(x) = line {
        start(x);
    }
    first.map_or((r.x0 + 9.0, "halo"), |from| (from, ""))
}

/// Where pins hang: day's x, pin's x, number. Pins keep their order and stand 25 apart; where days lie
/// closer the stems slant.
fn hung(r: &TapeRow, visits: &[Pin]) -> Vec<(f64, f64, u8)> {
    let mut pins: Vec<(f64, f64, u8)> = visits
        .iter()
        .filter_map(|v| r.day(v.day).map(|x| (x, x, v.number)))
        .collect();
    sort(&mut pins, |p| p.0);
    let mut least = r.x0 + 9.0;
    for p in &mut pins {
        p.1 = p.1.max(least);
        least = p.1 + 25.0;
    }
    let mut most = r.x1 - 9.0;
    for p in pins.iter_mut().rev() {
        p.1 = p.1.min(most);
        most = p.1 - 25.0;
    }
    pins
}

fn pins(pen: &mut Pen<'_>, r: &TapeRow, visits: &[Pin], foot: f64, stem: f64) {
    for (x, hang, n) in hung(r, visits) {
        pen.line("s", x, foot, hang, foot + stem);
        pen.pin(hang, foot + stem + 11.0, n);
    }
}

/// The lower end of a row with its pins.
fn pins_foot(r: &TapeRow, visits: &[Pin], foot: f64, stem: f64) -> f64 {
    let pinned = visits.iter().any(|visit| r.day(visit.day).is_some());
    foot + if pinned { stem + 24.0 } else { 12.0 }
}
