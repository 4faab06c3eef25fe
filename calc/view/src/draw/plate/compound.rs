//! Leaves of several leaflets.

use super::Marks;
use super::blade::{self, Place};
use crate::draw::pen::{D, Pen};
use calc::terms::leaf::LeafKind;

/// The stalk's foot and the top of its axis.
const FOOT: f64 = 356.0;

/// Draws a leaf of three leaflets, of leaflets on both sides of an axis, or of such axes.
pub(super) fn draw(pen: &mut Pen<'_>, marks: &Marks) {
    let leaflet = marks.leaflet();
    match marks.kind {
        LeafKind::Bipinnate => twice(pen),
        LeafKind::Trifoliate => axis(pen, &leaflet, 3.0, 150.0),
        _ => {
            let [few, many] = marks.leaflets.unwrap_or([7.0, 7.0]);
            // As many as can be told apart; odd, so that one ends the leaf.
            let count = ((few + many) / 2.0).min(21.0);
            let pairs = libm::floor((count - 1.0) / 2.0).max(1.0);
            let long = (620.0 / (pairs + 3.0)).clamp(58.0, 128.0);
            axis(pen, &leaflet, pairs * 2.0 + 1.0, long);
        }
    }
}

/// An axis with leaflets in pairs and one at its end.
fn axis(pen: &mut Pen<'_>, leaflet: &Marks, count: f64, long: f64) {
    let pairs = ((count - 1.0) / 2.0) as usize;
    let (low, top) = (306.0, 22.0 + long);
    pen.line("s3", 180.0, FOOT, 180.0, top);
    for i in 0..pairs {
        let share = if pairs > 1 {
            i as f64 / (pairs - 1) as f64
        } else {
            0.7
        };
        let y = low + (top + long * 0.16 - low) * share;
        let size = long * (0.86 + 0.14 * (1.0 - (share * 2.0 - 1.0).abs()));
        for way in [1.0, -1.0] {
            let turned = way * (72.0 - 14.0 * share);
            blade::draw(
                pen,
                leaflet,
                &Place::new([180.0 + way * 3.0, y], turned, size),
            );
        }
    }
    blade::draw(pen, leaflet, &Place::new([180.0, top], 0.0, long));
}

/// An axis with axes, each with many small leaflets.
fn twice(pen: &mut Pen<'_>) {
    pen.line("s3", 180.0, FOOT, 180.0, 60.0);
    let mut axes = D::default();
    let mut leaflets = D::default();
    for i in 0..6 {
        let y = 300.0 - 46.0 * f64::from(i);
        let long = 150.0 - 16.0 * f64::from(i);
        for way in [1.0, -1.0] {
            let (dx, dy) = (way * 0.88, -0.47);
            axes.add("M##L##", &[180.0, y, 180.0 + dx * long, y + dy * long]);
            for k in 1..=10 {
                let at = long * f64::from(k) / 10.0;
                let [x, y] = [180.0 + dx * at, y + dy * at];
                for across in [1.0, -1.0] {
                    // A leaflet: a slim lens across its axis, leaning forward.
                    let (ox, oy) = (
                        -dy * across * 0.9 + dx * 0.35,
                        dx * across * 0.9 + dy * 0.35,
                    );
                    let (lx, ly) = (ox * 11.0, oy * 11.0);
                    leaflets.add(
                        "M##Q####Q####Z",
                        &[
                            x,
                            y,
                            x + lx * 0.5 + ly * 0.3,
                            y + ly * 0.5 - lx * 0.3,
                            x + lx,
                            y + ly,
                            x + lx * 0.5 - ly * 0.3,
                            y + ly * 0.5 + lx * 0.3,
                            x,
                            y,
                        ],
                    );
                }
            }
        }
    }
    pen.path("s1 fleaf", &leaflets.0);
    pen.path("s", &axes.0);
}
