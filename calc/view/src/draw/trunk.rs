//! The trunk to scale: from above, the tape, from the side, and a hand. One scale for all of it.

use super::Both;
use super::number::whole;
use super::pen::{At, D, Pen, halves, ring, width, within};
use super::tape::{INCH, Scale, TENS, Tape};
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
    pub bark_size: Both<'a>,
    /// Wood, in the section.
    pub wood: &'a str,
    /// Dead bark, two short lines; drawn if the live share is under 1.
    pub dead_bark: [&'a str; 2],
    /// Diameter.
    pub size: Both<'a>,
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
    pub at_least_size: Both<'a>,
    /// Beside the better ring.
    pub better: &'a str,
    /// Height of the better ring.
    pub better_size: Both<'a>,
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
const WIDEST: f64 = 184.0;
const HIGHEST: f64 = 230.0;
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
        top: section + 30.0,
        bottom: section + 93.0,
    };
    let side_top = tape.bottom + 34.0;
    let (least, better) = t.ring.map_or((0.0, 0.0), |h| {
        (h.at_least_mm * px, h.better_mm.max(h.at_least_mm) * px)
    });
    let ring_top = side_top + 44.0;
    let hand = HAND_MM * px;
    let below = (hand + 74.0).max(124.0);
    let bottom = ring_top + better + below;
    pen.svg("d trunk", W, bottom + 12.0, l.aria);
    let y = section / 2.0;
    above(&mut pen, t, l, [x, y, r, bark, px]);

    for (edge, from) in [(X0, y), (X0 + 2.0 * r, y)] {
        pen.line("dash", edge, from + 14.0, edge, tape.top - 4.0);
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
    let right = X0 + 2.0 * r;
    if right + 12.0 + width(l.size.us, 17.0, true) < W {
        pen.text(
            right + 12.0,
            tape.top - 8.0,
            17.0,
            "tb",
            At::Start,
            l.size.us,
        );
        pen.text(
            right + 12.0,
            tape.bottom + 20.0,
            TEXT,
            "",
            At::Start,
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
    pen.text(W - 2.0, top - 26.0, 15.0, "", At::End, l.hand);
    pen.text(W - 2.0, top - 8.0, 15.0, "", At::End, l.hand_size);
    pen.end();
}

/// The size tape's two scales, shared with the form: inches above, centimetres below.
pub(super) fn size_scale(
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
    for (px, steps, ticks, way, y) in [
        (px * 25.4, &INCH[..], [6.0, 11.0, 15.0], 1.0, mid - 2.0),
        (
            px * 10.0,
            &TENS[..],
            [5.0, 9.0, 14.0],
            -1.0,
            mid + font - 2.0,
        ),
    ] {
        let scale = Scale {
            px,
            steps,
            least: [4.9, 34.0],
            ticks,
            way,
            y,
            font,
        };
        tape.scale(pen, &scale, &avoid);
        let name = if way > 0.0 { inch } else { cm };
        pen.text(names, y, font, "mut", At::Start, name);
    }
    if let Some(x) = x {
        tape.notch(pen, x, 9.0, 15.0, tape.bottom);
    }
}

/// The section from above.
fn above(pen: &mut Pen<'_>, t: &Trunk, l: &TrunkLabels<'_>, [x, y, r, bark, px]: [f64; 5]) {
    let inner = r - bark;
    pen.circle("s fwood2", x, y, r);
    pen.circle("fwood", x, y, inner);
    // Year rings are texture: evenly spaced, off centre, no meaning.
    let mut d = D::default();
    let rings = (inner / 8.0) as u32;
    for i in 1..=rings {
        let share = f64::from(i) / f64::from(rings + 1);
        let off = 4.0 * (1.0 - share);
        ring(&mut d, x - off, y + off * 0.6, inner * share);
    }
    pen.path("s1", &d.0);
    let dead = within(1.0 - t.live_share, 0.0, 1.0);
    let on =
        |radius: f64, angle: f64| [x + radius * libm::cos(angle), y + radius * libm::sin(angle)];
    if dead < 0.005 {
        pen.circle("live", x, y, inner);
    } else {
        // The dead part stands to the lower right; where it really is, nobody told us.
        let half = core::f64::consts::PI * dead.min(0.999);
        let (from, to) = (DEAD - half, DEAD + half);
        let large = f64::from(u8::from(dead > 0.5));
        let ([ax, ay], [bx, by]) = (on(r, from), on(r, to));
        let ([cx, cy], [ex, ey]) = (on(inner, to), on(inner, from));
        if dead < 0.995 {
            let mut d = D::default();
            d.c('M', &[cx, cy])
                .c('A', &[inner, inner, 0.0, 1.0 - large, 1.0, ex, ey]);
            pen.path("live", &d.0);
        }
        let mut d = D::default();
        d.c('M', &[ax, ay])
            .c('A', &[r, r, 0.0, large, 1.0, bx, by])
            .c('L', &[cx, cy])
            .c('A', &[inner, inner, 0.0, large, 0.0, ex, ey])
            .c('Z', &[]);
        pen.path("fp", &d.0);
        pen.hatched("dash", &d.0, "url(#h)");
        let [dx, dy] = on(r - bark / 2.0, DEAD);
        let wide = l.dead_bark.map(|t| width(t, TEXT, true));
        let lx = leader_x(x + r).min(W - 4.0 - wide[0].max(wide[1]));
        let ly = (y + r * 0.75).max(y + 46.0);
        leader(pen, [dx, dy], [lx - 12.0, ly], lx - 6.0);
        pen.text(lx, ly + 2.0, TEXT, "tb", At::Start, l.dead_bark[0]);
        pen.text(lx, ly + 20.0, TEXT, "tb", At::Start, l.dead_bark[1]);
    }
    pen.circle("s", x, y, r);
    if r > 30.0 {
        pen.circle("fi", x - 4.0, y + 2.4, 2.4);
        if width(l.wood, TEXT, true) < inner * 1.5 {
            pen.text(x, y + inner * 0.45, TEXT, "tb halo", At::Middle, l.wood);
        }
    }
    // The bark, upper right, and the living layer, upper left.
    let lx = leader_x(x + r);
    let by = if r < 50.0 { 20.0 } else { y - r + 20.0 };
    let [px_, py] = on(r - bark / 2.0, -0.69);
    leader(pen, [px_, py], [lx - 10.0, by - 5.0], lx - 4.0);
    pen.text(lx, by, TEXT, "tb", At::Start, l.bark);
    pen.text(lx, by + 19.0, TEXT, "", At::Start, l.bark_size.us);
    pen.text(lx, by + 37.0, TEXT, "", At::Start, l.bark_size.metric);
    let [vx, vy] = on(inner, -2.45);
    leader(pen, [vx, vy], [62.0, 32.0], 62.0);
    pen.text(0.0, 20.0, TEXT, "tb", At::Start, l.living_layer[0]);
    pen.text(0.0, 38.0, TEXT, "tb", At::Start, l.living_layer[1]);
    if bark < 2.0 {
        inset(pen, t.bark_mm * px, [lx, by + 46.0]);
    }
}

/// The middle of the dead part, radians clockwise from the right.
const DEAD: f64 = 0.9;

/// Where labels right of the section begin.
fn leader_x(edge: f64) -> f64 {
    within(edge + 26.0, 180.0, 292.0)
}

fn leader(pen: &mut Pen<'_>, [x, y]: [f64; 2], [kx, ky]: [f64; 2], end: f64) {
    let mut d = D::default();
    d.line(x, y, kx, ky);
    if end != kx {
        d.c('H', &[end]);
    }
    pen.path("s", &d.0);
    pen.circle("fi", x, y, 3.0);
}

/// A band too thin to see, magnified: wood, living layer, bark, and the factor in print.
fn inset(pen: &mut Pen<'_>, band: f64, [x, y]: [f64; 2]) {
    let factor = [2_u16, 5, 10, 20, 50, 100]
        .into_iter()
        .find(|f| band * f64::from(*f) >= 8.0)
        .unwrap_or(100);
    let thick = band * f64::from(factor);
    let w = thick + 20.0;
    pen.rect("fwood", [x, y, w, 30.0], "");
    pen.rect("fwood2", [x + 20.0, y, thick, 30.0], "");
    pen.line("live", x + 20.0, y, x + 20.0, y + 30.0);
    pen.rect("s", [x, y, w, 30.0], "");
    let mut text = String::from("× ");
    whole(&mut text, u64::from(factor));
    pen.text(x + w + 6.0, y + 21.0, 15.0, "", At::Start, &text);
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
        d.c(
            'C',
            &[
                from + way * r * 0.5,
                y - 11.0,
                from + way * r * 0.8,
                y + 11.0,
                from + way * r * 1.2,
                y,
            ],
        );
        d.c(
            'S',
            &[from + way * r * 1.8, y - 8.0, from + way * r * 2.0, y],
        );
    };
    let mut d = D::default();
    d.c('M', &[left, top]);
    wave(&mut d, left, 1.0, top);
    if t.ring.is_some() {
        for (edge, way) in [(right, -1.0), (left, 1.0)] {
            let (y0, y1) = if way < 0.0 {
                (ring_top, ring_top + least)
            } else {
                (ring_top + least, ring_top)
            };
            if way > 0.0 {
                d.c('L', &[right, bottom]);
                wave(&mut d, right, -1.0, bottom);
            }
            d.c('L', &[edge, y0])
                .c('H', &[edge + way * bark])
                .c('V', &[y1])
                .c('H', &[edge]);
        }
    } else {
        d.c('L', &[right, bottom]);
        wave(&mut d, right, -1.0, bottom);
    }
    d.c('Z', &[]);
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
    let mut cuts = D::default();
    let mut live = D::default();
    for (y, inside) in [(ring_top, 1.5), (ring_top + least, -1.5)] {
        cuts.c('M', &[left, y]).c('H', &[right]);
        live.c('M', &[left + 1.0, y + inside])
            .c('H', &[right - 1.0]);
    }
    pen.path("s", &cuts.0);
    pen.path("live", &live.0);
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
    let stack = |pen: &mut Pen<'_>, x: f64, y: f64, name: &str, size: &Both<'_>| {
        match halves(name) {
            Some((first, rest)) if x + width(name, 15.5, false) > if x < X0 { 56.0 } else { W } => {
                pen.text(x, y - 33.0, 15.5, "", At::Start, first);
                pen.text(x, y - 16.0, 15.5, "", At::Start, rest);
            }
            _ => pen.text(x, y - 16.0, 15.5, "", At::Start, name),
        }
        pen.text(x, y + 5.0, 18.0, "tb", At::Start, size.us);
        pen.text(x, y + 24.0, TEXT, "", At::Start, size.metric);
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
        let across = libm::cos(core::f64::consts::PI * f64::from(i) / f64::from(lines));
        let sway = (1.0 - across.abs()) * 9.0 + 2.0;
        let step = if i % 2 == 0 { 16.0 } else { 13.0 };
        let mut y = top + f64::from(i % 3) * 5.0;
        let mut first = true;
        while y + step < bottom {
            if first {
                d.c('M', &[x + r * across, y]).c(
                    'q',
                    &[if i % 2 == 0 { sway } else { -sway }, step / 2.0, 0.0, step],
                );
                first = false;
            } else {
                d.c('t', &[0.0, step]);
            }
            y += step;
        }
    }
    pen.path("s1 tex", &d.0);
}

/// An open hand standing on (`x`, `y`), `height` pixels from wrist to the tip of the middle finger.
fn palm(pen: &mut Pen<'_>, x: f64, y: f64, height: f64) {
    // Drawn 90 tall: an outline of fingers as thick round strokes, ink first, then paper inside.
    let u = height / 90.0;
    let p = |dx: f64, dy: f64| [x + dx * u, y + dy * u];
    for (class, thinner) in [("hand", 0.0), ("hand in", 4.0)] {
        for ([ax, ay], [bx, by], w) in FINGERS {
            let mut d = D::default();
            let ([ax, ay], [bx, by]) = (p(ax, ay), p(bx, by));
            d.line(ax, ay, bx, by);
            pen.out.open("path");
            pen.out.attr("class", class);
            pen.out.attr("d", &d.0);
            pen.out.attr(
                "stroke-width",
                &super::number::num((w * u - thinner).max(1.0)),
            );
            pen.end();
        }
        let mut d = D::default();
        let mut command = 'M';
        let inset = thinner / 2.0;
        for [dx, dy] in PALM {
            let [px, py] = p(dx, dy);
            let towards = if dx < 0.0 { inset } else { -inset };
            d.c(command, &[px + towards, py]);
            command = 'L';
        }
        d.c('Z', &[]);
        pen.path(if thinner == 0.0 { "fi" } else { "fp" }, &d.0);
    }
}

/// Fingers from the palm outwards, and the thumb: base, tip, thickness; feet of the hand at zero.
const FINGERS: [([f64; 2], [f64; 2], f64); 5] = [
    ([-14.0, -46.0], [-18.5, -75.0], 11.5),
    ([-5.0, -48.0], [-5.5, -84.0], 12.0),
    ([5.5, -48.0], [7.5, -80.0], 11.5),
    ([15.0, -44.0], [20.0, -66.0], 10.5),
    ([-14.0, -18.0], [-32.0, -46.0], 12.5),
];
const PALM: [[f64; 2]; 7] = [
    [-14.0, 0.0],
    [-20.0, -24.0],
    [-20.0, -48.0],
    [0.0, -53.0],
    [20.0, -47.0],
    [19.0, -22.0],
    [14.0, 0.0],
];
