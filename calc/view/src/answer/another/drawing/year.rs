//! Twelve months by their bark: four bands, a named lane for each rule, the notch at the day.

use super::{Grip, Marked, NARROW, Strip, TOP};
use crate::draw::MONTHS;
use crate::draw::pen::{Anchor, halves, width};
use crate::out::Out;

/// What the bark does in some days.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(in crate::answer::another) enum Band {
    Best,
    Test,
    /// Mostly tight, before it slips, or bonding, behind it.
    Tight,
    DoesNotSlip,
}

/// A rule over its stretches of the year.
#[derive(Clone, Debug)]
pub(in crate::answer::another) struct Lane {
    pub name: String,
    /// Whether no ring is cut then; else it is a caution.
    pub closes: bool,
    /// From and to, per cent of the year.
    pub spans: Vec<[f64; 2]>,
}

/// Twelve months; from and to in per cent of the year.
#[derive(Clone, Debug)]
pub(in crate::answer::another) struct Year {
    /// Without holes, from 1 January on.
    pub bands: Vec<([f64; 2], Band)>,
    pub lanes: Vec<Lane>,
    pub marked: Marked,
}

/// Words of the tape.
pub(in crate::answer::another) struct YearLabels<'a> {
    pub aria: &'a str,
    pub months: [&'a str; 12],
    pub initials: [&'a str; 12],
    pub best: &'a str,
    pub test: &'a str,
    pub does_not_slip: &'a str,
}

const SCALE: f64 = TOP + 24.0;
const FOOT: f64 = SCALE + 42.0;
/// Pixels of a lane: its name, its line.
const LANE: f64 = 34.0;
/// Letters of its name, and from one line of it to the next.
const NAME: f64 = 14.0;
const LINE: f64 = 17.0;

/// Draws the year.
pub(in crate::answer::another) fn year(out: &mut dyn Out, year: &Year, l: &YearLabels<'_>) {
    let mut strip = Strip { out };
    let mut height = FOOT + 12.0;
    for lane in &year.lanes {
        height += lane_of(lane).height;
    }
    strip.open(height, l.aria);
    for (ends, [name, initial]) in MONTHS.windows(2).zip(names(l)) {
        let [from, middle, to] = [ends[0], ends[0] + 15.0, ends[1]].map(|day| day / 365.0 * 100.0);
        strip.upright("s", from, [TOP, TOP + 10.0]);
        strip.upright("s", middle, [TOP, TOP + 5.0]);
        let at = (from + to) / 2.0;
        strip.text("cn", at, SCALE - 4.0, 13.0, Anchor::Middle, initial);
        strip.text("cw", at, SCALE - 4.0, 14.0, Anchor::Middle, name);
    }
    for (ends, band) in &year.bands {
        let (class, fill) = match band {
            Band::Best => ("fband", ""),
            Band::Test => ("", "url(#h)"),
            Band::Tight => ("", "url(#dots)"),
            Band::DoesNotSlip => ("", ""),
        };
        if *band != Band::DoesNotSlip {
            strip.rect(class, *ends, [SCALE, FOOT], fill);
        }
        if ends[0] > 0.0 {
            strip.upright("s", ends[0], [SCALE, FOOT]);
        }
    }
    for (ends, band) in &year.bands {
        let y = SCALE + 26.0;
        match band {
            Band::Best => strip.word("on tb", *ends, y, [l.best; 2]),
            Band::Test => strip.word("halo pl", *ends, y, [l.test; 2]),
            Band::Tight => {}
            Band::DoesNotSlip => strip.word("mut", *ends, y, [l.does_not_slip; 2]),
        }
    }
    strip.rect("s", [0.0, 100.0], [TOP, FOOT], "");
    strip.line("s1", [0.0, 100.0], [SCALE, SCALE]);
    strip.hook(TOP - 5.0, FOOT + 7.0);
    let mut top = FOOT;
    for lane in &year.lanes {
        draw_lane(&mut strip, lane, top);
        top += lane_of(lane).height;
    }
    strip.marks(Grip::Notch, &year.marked, SCALE);
    strip.close();
}

fn names<'a>(l: &YearLabels<'a>) -> impl Iterator<Item = [&'a str; 2]> {
    let both = l.months.into_iter().zip(l.initials);
    both.map(|(name, initial)| [name, initial])
}

/// A lane's name in the lines that the narrowest tape has room for, the longest of them in per cent of it.
struct LaneName<'a> {
    lines: [&'a str; 2],
    longest: f64,
    height: f64,
}

fn lane_of(lane: &Lane) -> LaneName<'_> {
    let needs = |text: &str| width(text, NAME, false) / NARROW * 100.0;
    let whole = needs(&lane.name);
    match halves(&lane.name) {
        Some((first, second)) if whole > 100.0 => LaneName {
            lines: [first, second],
            longest: needs(first).max(needs(second)),
            height: LANE + LINE,
        },
        _ => LaneName {
            lines: [&lane.name, ""],
            longest: whole,
            height: LANE,
        },
    }
}

fn draw_lane(strip: &mut Strip<'_>, lane: &Lane, top: f64) {
    let name = lane_of(lane);
    let y = top + name.height - 8.0;
    for ends in &lane.spans {
        let [from, to] = *ends;
        if lane.closes {
            strip.rect("s", *ends, [y - 7.0, y + 7.0], "url(#x)");
        } else {
            strip.line("dot", *ends, [y, y]);
            strip.upright("s", from, [y - 6.0, y + 6.0]);
            strip.upright("s", to, [y - 6.0, y + 6.0]);
        }
    }
    // The name begins where the longest stretch does, or so far left of it as it needs to end on the tape.
    let long = |[from, to]: &[f64; 2]| to - from;
    let longest = lane.spans.iter().max_by(|a, b| long(a).total_cmp(&long(b)));
    let from = longest.map_or(0.0, |ends| ends[0]);
    let from = from.min(100.0 - name.longest).max(0.0);
    let mut base = top + 16.0;
    for line in name.lines {
        if !line.is_empty() {
            strip.text("halo", from, base, NAME, Anchor::Start, line);
        }
        base += LINE;
    }
}
