//! An open hand, for scale.

use crate::draw::pen::{D, Pen, outline};

/// An open hand standing on (`x`, `y`), `height` pixels from wrist to the tip of the middle finger.
pub(super) fn palm(pen: &mut Pen<'_>, x: f64, y: f64, height: f64) {
    // Drawn 90 tall: an outline of fingers as thick round strokes, ink first, then paper inside.
    let u = height / 90.0;
    let p = |dx: f64, dy: f64| [x + dx * u, y + dy * u];
    for (class, fill, thinner) in &[("hand", "fi", 0.0), ("hand in", "fp", 4.0)] {
        for ([ax, ay], [bx, by], w) in &FINGERS {
            let mut d = D::default();
            let ([ax, ay], [bx, by]) = (p(*ax, *ay), p(*bx, *by));
            d.add("M##L##", &[ax, ay, bx, by]);
            pen.out.open("path");
            pen.out.attr("class", class);
            pen.out.attr("d", &d.0);
            pen.at("stroke-width", (w * u - thinner).max(1.0));
            pen.end();
        }
        let inset = thinner / 2.0;
        let palm = PALM.map(|[dx, dy]| {
            let [px, py] = p(dx, dy);
            [px + if dx < 0.0 { inset } else { -inset }, py]
        });
        pen.path(fill, &outline(&palm, [0.0, 0.0], 1.0));
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
