//! The ring: a person at work beside the trunk, at one scale; and the cut from the side.

mod cut;
mod person;

pub use cut::{CutLabels, cut};

use self::person::person;
use crate::draw::number::within;
use crate::draw::pen::{Anchor, D, Pen, halves, width};
use crate::out::Out;

/// Sizes of one stem and its ring, millimetres.
#[derive(Clone, Copy, Debug)]
pub struct Trunk {
    /// Diameter over bark where the ring goes.
    pub dbh_mm: f64,
    /// Bark, one side.
    pub bark_mm: f64,
    /// How high the least ring is on the stem.
    pub at_least_mm: f64,
    /// How high the better one is; no lower than the least is drawn.
    pub better_mm: f64,
}

/// Words of the trunk drawing.
#[derive(Clone, Copy, Default)]
pub struct TrunkLabels<'a> {
    /// What the picture says, for those who do not see it.
    pub aria: &'a str,
    /// In the ring.
    pub bare: &'a str,
    /// Under the trunk: its diameter.
    pub across: &'a str,
    /// Beside the least ring: its height, then what it is.
    pub at_least: [&'a str; 2],
    /// Height of the better ring in the reader's unit, and in the other.
    pub better: [&'a str; 2],
    /// At the heights between which a ring is cut: the upper, the lower.
    pub up: [&'a str; 2],
    /// How tall the person is.
    pub person: &'a str,
}

/// Width of the drawing, and what stays free right of the trunk for labels.
const W: f64 = 366.0;
const RIGHT: f64 = 112.0;
/// Pixels a millimetre where the person is drawn as large as may be.
const FINEST: f64 = 0.2072;
/// The heights between which a ring is cut, mm: 4½ and 3 ft (common practice, no source).
const UP_MM: [f64; 2] = [4.5 * 304.8, 3.0 * 304.8];
/// Where the tool is at work: the middle of the ring, mm.
const WORK_MM: f64 = 1125.0;
/// Below this share of the largest size labels stand in one column: beside a thick trunk the person is small.
const SMALL: f64 = 0.8;
const TEXT: f64 = 15.0;

impl Trunk {
    /// Pixels a millimetre: one number for the whole drawing.
    #[must_use]
    pub fn scale(&self) -> f64 {
        let across = (person::REACH + FINEST * self.dbh_mm).max(1.0);
        FINEST * ((W - RIGHT) / across).min(1.0)
    }
}

/// Draws the trunk with a person at work on its ring, 366 wide, as tall as the person (class `d trunk`).
pub fn trunk(out: &mut dyn Out, t: &Trunk, l: &TrunkLabels<'_>) {
    let mut pen = Pen { out };
    let px = t.scale();
    let k = px / FINEST;
    let left = person::REACH * k;
    let r = t.dbh_mm * px / 2.0;
    let (x, right) = (left + r, left + 2.0 * r);
    // The column of labels beside a small person is higher than the person.
    let small = k < SMALL;
    let top = if small { 18.0 } else { 0.0 };
    let ground = top + person::GROUND * k;
    let up = |mm: f64| ground - mm * px;
    let least = t.at_least_mm;
    let better = t.better_mm.max(least);
    let ring_top = up((WORK_MM + better / 2.0).min(UP_MM[0]));
    let ring = Ring {
        bark: (t.bark_mm * px).min(r * 0.9),
        top: ring_top,
        least: ring_top + least * px,
        foot: ring_top + better * px,
    };
    pen.svg("d trunk", W, ground + 32.0, l.aria);
    stem(&mut pen, [x, r, top + 12.0 * k, ground], &ring, k);
    if ring.least - ring_top > 24.0 && width(l.bare, TEXT, true) + 6.0 < 2.0 * (r - ring.bark) {
        pen.text(x, ring_top + 19.0, TEXT, "tb", Anchor::Middle, l.bare);
    }
    let apart = better > least + 1.0;
    pen.dimension(right + 16.0, ring_top, ring.foot);
    if apart {
        pen.dimension(left - 13.0, ring_top, ring.least);
    }
    person(&mut pen, left, ground, k);
    pen.line("s", 0.0, ground, W, ground);
    let middle = (ring_top + ring.foot) / 2.0;
    let tx = right + 27.0;
    let mut rows = vec![(l.better[0], "tb", 19.0), (l.better[1], "mut", TEXT)];
    if small && apart {
        rows.extend([(l.at_least[0], "tb", TEXT), (l.at_least[1], "mut", TEXT)]);
    }
    let mut y = within(middle - 19.0 * (rows.len() as f64) / 2.0, 0.0, ground);
    for (text, class, size) in rows {
        for part in parted(text, size, W - tx) {
            y += 19.0;
            pen.text(tx, y, size, class, Anchor::Start, part);
        }
    }
    if !small {
        let ends = [up(UP_MM[0]), up(UP_MM[1])];
        for (y, base, text) in [(ends[0], -7.0, l.up[0]), (ends[1], 19.0, l.up[1])] {
            pen.line("dash", right + 26.0, y, W, y);
            pen.text(W, y + base, TEXT, "mut", Anchor::End, text);
        }
        if apart {
            let room = left - 6.0 - person::FACE * k;
            let mut lines = vec![(l.at_least[0], "tb", 16.0)];
            let what = parted(l.at_least[1], TEXT, room);
            lines.extend(what.into_iter().map(|text| (text, "mut", TEXT)));
            let mut y = ring_top - 8.0 - 17.0 * (lines.len() as f64 - 1.0);
            for (text, class, size) in lines {
                pen.text(left - 6.0, y, size, class, Anchor::End, text);
                y += 17.0;
            }
        }
    }
    feet(&mut pen, l, [person::MIDDLE * k, x, ground + 23.0]);
    pen.end();
}

/// A text in one line, or in two where it is wider than its room.
fn parted(text: &str, size: f64, room: f64) -> Vec<&str> {
    match halves(text) {
        Some((first, rest)) if width(text, size, false) * 1.2 > room => vec![first, rest],
        _ => vec![text],
    }
}

/// What stands under the ground: how tall the person is, how thick the trunk.
fn feet(pen: &mut Pen<'_>, l: &TrunkLabels<'_>, [person, x, y]: [f64; 3]) {
    // An eighth and more to spare, for larger letters.
    let half = |text: &str, bold: bool| width(text, TEXT, bold) * 0.6;
    let (own, trunk) = (half(l.person, false), half(l.across, true));
    let person = person.max(own);
    let x = within(x, (person + own + 10.0 + trunk).min(W - trunk), W - trunk);
    pen.text(person, y, TEXT, "mut", Anchor::Middle, l.person);
    pen.text(x, y, TEXT, "tb", Anchor::Middle, l.across);
}

/// The ring on the stem: bark on each side, and the lines from above to below, in the drawing's pixels.
struct Ring {
    bark: f64,
    top: f64,
    least: f64,
    foot: f64,
}

/// The stem from the side with the ring.
fn stem(pen: &mut Pen<'_>, [x, r, top, ground]: [f64; 4], ring: &Ring, k: f64) {
    let (left, right) = (x - r, x + r);
    let flare = 26.0 * k;
    let mut d = D::default();
    let (low, wide) = (ground - 8.0 * k, 20.0 * k);
    d.add(
        "M##V#Q####H#Q####V#",
        &[
            left,
            top,
            ground - flare,
            left - 4.0 * k,
            low,
            left - wide,
            ground,
            right + wide,
            right + 4.0 * k,
            low,
            right,
            ground - flare,
            top,
        ],
    );
    pen.path("s fwood2", &d.0);
    texture(pen, [x, r], [top + 4.0, ring.top - 4.0]);
    texture(pen, [x, r], [ring.foot + 6.0, ground - 6.0]);
    let bare = [
        left + ring.bark,
        ring.top,
        2.0 * (r - ring.bark),
        ring.foot - ring.top,
    ];
    pen.rect("s fwood", bare, "");
    let (from, to) = (left - 3.0, right + 3.0);
    let live = [from, ring.top, to, from, ring.foot, to];
    pen.shape("live", "M##H#M##H#", &live);
    if ring.foot > ring.least + 1.0 {
        pen.line("dash", left + 3.0, ring.least, right - 3.0, ring.least);
    }
}

/// Bark: wavy lines, closer towards the edges as on a round stem. Texture, no meaning.
fn texture(pen: &mut Pen<'_>, [x, r]: [f64; 2], [top, bottom]: [f64; 2]) {
    let lines = (r / 6.0) as u32;
    let mut d = D::default();
    for i in 1..lines {
        let across =
            calc::terms::small::sine::cos(core::f64::consts::PI * f64::from(i) / f64::from(lines));
        let sway = (1.0 - across.abs()) * 9.0 + 2.0;
        let step = if i % 2 == 0 { 16.0 } else { 13.0 };
        let mut y = top + f64::from(i % 3) * 5.0;
        let mut first = true;
        while y + step < bottom {
            if first {
                let sway = if i % 2 == 0 { sway } else { -sway };
                let wave = [x + r * across, y, sway, step / 2.0, step];
                d.add("M##q## 0#", &wave);
                first = false;
            } else {
                d.add("t0#", &[step]);
            }
            y += step;
        }
    }
    pen.path("s1 tex", &d.0);
}
