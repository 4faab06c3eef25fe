//! The trunk to scale: from above, the tape, from the side, and a hand. One scale for all of it.

mod hand;
mod section;

use self::hand::palm;
use self::section::above;
use crate::draw::Reading;
use crate::draw::pen::{Anchor, D, Pen, halves, width};
use crate::draw::tape::{INCH, Rule, TENS, Tape, TapeScale};
use crate::out::Out;

/// Sizes of one stem, millimetres.
#[derive(Clone, Copy, Debug)]
pub struct Trunk {
    /// Diameter over bark where the ring goes.
    pub dbh_mm: f64,
    /// Bark, one side.
    pub bark_mm: f64,
    /// Share of the bark that is alive all round, 0 to 1.
    pub live_share: f64,
    /// The ring, if the answer has one.
    pub ring: Option<RingHeights>,
}

/// How high the ring is on the stem, millimetres. Both start at the same upper line.
#[derive(Clone, Copy, Debug)]
pub struct RingHeights {
    /// The least.
    pub at_least_mm: f64,
    /// The better one; not drawn apart if it is no higher than the least.
    pub better_mm: f64,
}

/// Words of the trunk drawing.
#[derive(Clone, Copy, Default)]
pub struct TrunkLabels<'a> {
    /// What the picture says, for those who do not see it.
    pub aria: &'a str,
    /// The living layer, two short lines.
    pub living_layer: [&'a str; 2],
    /// Bark.
    pub bark: &'a str,
    /// Bark thickness, one side.
    pub bark_size: Reading<'a>,
    /// Wood, in the section.
    pub wood: &'a str,
    /// Dead bark, two short lines; drawn if the live share is under 1.
    pub dead_bark: [&'a str; 2],
    /// Diameter.
    pub size: Reading<'a>,
    /// Names of the two scales.
    pub inch: &'a str,
    /// Centimetres.
    pub cm: &'a str,
    /// In the ring.
    pub bare_wood: &'a str,
    /// In the part the better ring adds.
    pub better_too: &'a str,
    /// Beside the least ring.
    pub at_least: &'a str,
    /// Height of the least ring.
    pub at_least_size: Reading<'a>,
    /// Beside the better ring.
    pub better: &'a str,
    /// Height of the better ring.
    pub better_size: Reading<'a>,
    /// Over the hand.
    pub hand: &'a str,
    /// Its length in both units.
    pub hand_size: &'a str,
}

/// Length of the hand that stands beside the trunk, mm: drawn for scale only.
pub const HAND_MM: f64 = 180.0;
/// The left edge of the trunk: zero of the tape.
const X0: f64 = 80.0;
const W: f64 = 372.0;
/// The trunk is drawn at most this wide, the ring this high, and nothing above this scale.
const WIDEST: f64 = 160.0;
const HIGHEST: f64 = 180.0;
const FINEST: f64 = 0.6;
const TEXT: f64 = 16.0;

impl Trunk {
    /// Pixels a millimetre: one number for the whole drawing.
    #[must_use]
    pub fn scale(&self) -> f64 {
        let high = self.ring.map_or(0.0, |r| r.better_mm.max(r.at_least_mm));
        FINEST
            .min(WIDEST / self.dbh_mm.max(1.0))
            .min(HIGHEST / high.max(1.0))
    }
}

/// Draws the trunk, 372 wide, as tall as it must be (class `d trunk`). A band of bark under 2 px gets
/// an inset that prints its factor.
pub fn trunk(out: &mut dyn Out, t: &Trunk, l: &TrunkLabels<'_>) {
    let mut pen = Pen { out };
    let px = t.scale();
    let r = t.dbh_mm * px / 2.0;
    let bark = (t.bark_mm * px).min(r * 0.9);
    let x = X0 + r;
    // The section stands in the middle of a fixed height, so the tape lies where the eye expects it.
    let section = (2.0 * r + 24.0).max(if t.live_share < 0.995 { 160.0 } else { 120.0 });
    let tape = Tape {
        x0: X0,
        x1: 362.0,
        top: section + 24.0,
        bottom: section + 87.0,
    };
    let side_top = tape.bottom + 28.0;
    let (least, better) = t.ring.map_or((0.0, 0.0), |h| {
        (h.at_least_mm * px, h.better_mm.max(h.at_least_mm) * px)
    });
    let ring_top = side_top + 34.0;
    let hand = HAND_MM * px;
    // The words over the hand stand under those beside the ring.
    let below = (hand + 70.0 - better / 2.0).max(64.0);
    let bottom = ring_top + better + below;
    pen.svg("d trunk", W, bottom + 12.0, l.aria);
    let y = section / 2.0;
    above(&mut pen, t, l, [x, y, r, bark, px]);

    let right = X0 + 2.0 * r;
    for edge in [X0, right] {
        pen.line("dash", edge, y + 14.0, edge, tape.top - 4.0);
        pen.line("dash", edge, tape.bottom + 12.0, edge, side_top - 6.0);
    }
    size_scale(
        &mut pen,
        &tape,
        px,
        [l.inch, l.cm],
        Some(2.0 * r),
        TEXT - 1.0,
    );
    if right + 12.0 + width(l.size.us, 17.0, true) < W {
        pen.text(
            right + 12.0,
            tape.top - 8.0,
            17.0,
            "tb",
            Anchor::Start,
            l.size.us,
        );
        pen.text(
            right + 12.0,
            tape.bottom + 20.0,
            TEXT,
            "",
            Anchor::Start,
            l.size.metric,
        );
    }
    side(
        &mut pen,
        t,
        l,
        [x, r, bark, side_top, ring_top, least, better, bottom],
    );
    let hand_x = W - 6.0 - hand * 0.34;
    palm(&mut pen, hand_x, bottom + 6.0, hand);
    let top = bottom + 6.0 - hand;
    pen.text(W - 2.0, top - 26.0, 15.0, "", Anchor::End, l.hand);
    pen.text(W - 2.0, top - 8.0, 15.0, "", Anchor::End, l.hand_size);
    pen.end();
}

const INCHES: Rule = Rule {
    steps: &INCH,
    least: [4.9, 34.0],
    ticks: [6.0, 11.0, 15.0],
};
const CENTIMETRES: Rule = Rule {
    steps: &TENS,
    least: [4.9, 34.0],
    ticks: [5.0, 9.0, 14.0],
};

/// The size tape's two scales, shared with the form: inches above, centimetres below.
pub(crate) fn size_scale(
    pen: &mut Pen<'_>,
    tape: &Tape,
    px: f64,
    [inch, cm]: [&str; 2],
    reading: Option<f64>,
    font: f64,
) {
    tape.edges(pen, true, true);
    let x = reading.map(|r| tape.x0 + r);
    // No number under the names of the scales nor under the line of the reading; a reading near zero
    // moves the names behind it.
    let half = width(inch, font, false).max(width(cm, font, false)) / 2.0;
    let names = match reading {
        Some(r) if r < 2.0 * half + 22.0 => tape.x0 + r + 12.0,
        _ => tape.x0 + 8.0,
    };
    let avoid = [[names + half, half], [x.unwrap_or(names), 0.0]];
    let mid = (tape.top + tape.bottom) / 2.0;
    let mut draw = |px: f64, rule: &'static Rule, way: f64, y: f64, name: &str| {
        let scale = TapeScale {
            px,
            rule,
            way,
            y,
            font,
        };
        tape.scale(pen, &scale, &avoid);
        pen.text(names, y, font, "mut", Anchor::Start, name);
    };
    draw(px * 25.4, &INCHES, 1.0, mid - 2.0, inch);
    draw(px * 10.0, &CENTIMETRES, -1.0, mid + font - 2.0, cm);
    if let Some(x) = x {
        tape.notch(pen, x, 9.0, 15.0, tape.bottom);
    }
}

/// The stem from the side with the ring.
fn side(
    pen: &mut Pen<'_>,
    t: &Trunk,
    l: &TrunkLabels<'_>,
    [x, r, bark, top, ring_top, least, better, bottom]: [f64; 8],
) {
    let (left, right) = (x - r, x + r);
    let wave = |d: &mut D, from: f64, way: f64, y: f64| {
        let at = |share: f64| from + way * r * share;
        d.add(
            "C######S####",
            &[
                at(0.5),
                y - 11.0,
                at(0.8),
                y + 11.0,
                at(1.2),
                y,
                at(1.8),
                y - 8.0,
                at(2.0),
                y,
            ],
        );
    };
    let mut d = D::default();
    d.add("M##", &[left, top]);
    wave(&mut d, left, 1.0, top);
    let ring_low = ring_top + least;
    if t.ring.is_some() {
        let cut = [right, ring_top, right - bark, ring_low, right];
        d.add("L##H#V#H#", &cut);
    }
    d.add("L##", &[right, bottom]);
    wave(&mut d, right, -1.0, bottom);
    if t.ring.is_some() {
        let cut = [left, ring_low, left + bark, ring_top, left];
        d.add("L##H#V#H#", &cut);
    }
    d.add("Z", &[]);
    pen.path("fwood2", &d.0);
    if t.ring.is_some() {
        texture(pen, [x, r], [top + 8.0, ring_top - 4.0]);
        texture(pen, [x, r], [ring_top + least + 6.0, bottom - 12.0]);
        pen.rect(
            "fwood",
            [left + bark, ring_top, 2.0 * (r - bark), least],
            "",
        );
        if better > least + 1.0 {
            pen.rect(
                "dash",
                [left, ring_top + least, 2.0 * r, better - least],
                "url(#h)",
            );
        }
    } else {
        texture(pen, [x, r], [top + 8.0, bottom - 12.0]);
    }
    pen.path("s", &d.0);
    if t.ring.is_none() {
        return;
    }
    let two_lines = "M##H#M##H#";
    let cuts = [left, ring_top, right, left, ring_low, right];
    pen.shape("s", two_lines, &cuts);
    let (from, to) = (left + 1.0, right - 1.0);
    let live = [from, ring_top + 1.5, to, from, ring_low - 1.5, to];
    pen.shape("live", two_lines, &live);
    let room = 2.0 * (r - bark) - 8.0;
    if least > 30.0 {
        pen.plate(x, ring_top + least / 2.0, TEXT, room, l.bare_wood);
    }
    if better - least > 30.0 {
        pen.plate(
            x,
            ring_top + (least + better) / 2.0,
            TEXT,
            room,
            l.better_too,
        );
    }
    pen.dimension(left - 18.0, ring_top, ring_top + least);
    let stack = |pen: &mut Pen<'_>, x: f64, y: f64, name: &str, size: &Reading<'_>| {
        match halves(name) {
            Some((first, rest)) if x + width(name, 15.5, false) > if x < X0 { 56.0 } else { W } => {
                pen.text(x, y - 33.0, 15.5, "", Anchor::Start, first);
                pen.text(x, y - 16.0, 15.5, "", Anchor::Start, rest);
            }
            _ => pen.text(x, y - 16.0, 15.5, "", Anchor::Start, name),
        }
        pen.text(x, y + 5.0, 18.0, "tb", Anchor::Start, size.us);
        pen.text(x, y + 24.0, TEXT, "", Anchor::Start, size.metric);
    };
    stack(
        pen,
        0.0,
        ring_top + least / 2.0,
        l.at_least,
        &l.at_least_size,
    );
    if better > least + 1.0 {
        pen.dimension(right + 20.0, ring_top, ring_top + better);
        stack(
            pen,
            right + 32.0,
            ring_top + better / 2.0,
            l.better,
            &l.better_size,
        );
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
