//! The stem from above: bark, living layer, wood, and an inset where the bark is too thin to see.

use super::{TEXT, Trunk, TrunkLabels, W};
use crate::draw::number::{whole, within};
use crate::draw::pen::{Anchor, D, Pen, ring, width};
use calc::terms::small::sine::{cos, sin};

/// The section from above.
pub(super) fn above(
    pen: &mut Pen<'_>,
    t: &Trunk,
    l: &TrunkLabels<'_>,
    [x, y, r, bark, px]: [f64; 5],
) {
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
    let on = |radius: f64, angle: f64| [x + radius * cos(angle), y + radius * sin(angle)];
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
            let live = [cx, cy, inner, inner, 1.0 - large, ex, ey];
            pen.shape("live", "M##A## 0# 1##", &live);
        }
        let mut d = D::default();
        d.add(
            "M##A## 0# 1##L##A## 0# 0##Z",
            &[
                ax, ay, r, r, large, bx, by, cx, cy, inner, inner, large, ex, ey,
            ],
        );
        pen.path("fp", &d.0);
        pen.hatched("dash", &d.0, "url(#h)");
        let [dx, dy] = on(r - bark / 2.0, DEAD);
        let wide = l.dead_bark.map(|t| width(t, TEXT, true));
        let lx = leader_x(x + r).min(W - 4.0 - wide[0].max(wide[1]));
        let ly = (y + r * 0.75).max(y + 46.0);
        leader(pen, [dx, dy], [lx - 12.0, ly], lx - 6.0);
        pen.text(lx, ly + 2.0, TEXT, "tb", Anchor::Start, l.dead_bark[0]);
        pen.text(lx, ly + 20.0, TEXT, "tb", Anchor::Start, l.dead_bark[1]);
    }
    pen.circle("s", x, y, r);
    if r > 30.0 {
        pen.circle("fi", x - 4.0, y + 2.4, 2.4);
        if width(l.wood, TEXT, true) < inner * 1.5 {
            pen.text(x, y + inner * 0.45, TEXT, "tb halo", Anchor::Middle, l.wood);
        }
    }
    // The bark, upper right, and the living layer, upper left.
    let lx = leader_x(x + r);
    let by = if r < 50.0 { 20.0 } else { y - r + 20.0 };
    let [px_, py] = on(r - bark / 2.0, -0.69);
    leader(pen, [px_, py], [lx - 10.0, by - 5.0], lx - 4.0);
    pen.text(lx, by, TEXT, "tb", Anchor::Start, l.bark);
    pen.text(lx, by + 19.0, TEXT, "", Anchor::Start, l.bark_size.us);
    pen.text(lx, by + 37.0, TEXT, "", Anchor::Start, l.bark_size.metric);
    let [vx, vy] = on(inner, -2.45);
    leader(pen, [vx, vy], [62.0, 32.0], 62.0);
    pen.text(0.0, 20.0, TEXT, "tb", Anchor::Start, l.living_layer[0]);
    pen.text(0.0, 38.0, TEXT, "tb", Anchor::Start, l.living_layer[1]);
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
    d.add("M##L##", &[x, y, kx, ky]);
    if end != kx {
        d.add("H#", &[end]);
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
    pen.text(x + w + 6.0, y + 21.0, 15.0, "", Anchor::Start, &text);
}
