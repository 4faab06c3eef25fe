//! Rulers: 1:1 at the foot of a printed page, and the ruled line of head and foot.

use super::number::whole;
use super::pen::{Anchor, D, Pen};
use crate::out::Out;

/// A ruler `width_mm` long and 12 mm high, inches above and millimetres below; its unit is the
/// millimetre and calc.css prints it as long as it says (class `ruler`). `inch` and `cm` name the scales.
pub fn foot(out: &mut dyn Out, width_mm: u16, inch: &str, cm: &str) {
    let length = f64::from(width_mm);
    out.open("svg");
    out.attr("class", "ruler");
    let mut view = D::default();
    view.add("0 0# 12", &[length]);
    out.attr("viewBox", &view.0);
    let mut mm = super::number::num(length);
    mm.push_str("mm");
    out.attr("width", &mm);
    out.attr("height", "12mm");
    out.attr("aria-hidden", "true");
    let mut pen = Pen { out };
    // In millimetres a tenth is too coarse for sixteenths of an inch (0.05 mm off), so ticks are
    // relative moves in a group scaled to the unit: 16 ticks of 1 in a group of 25.4 / 16.
    pen.out.open("g");
    pen.out.attr("transform", "scale(1.5875 1)");
    let mut d = D::default();
    let sixteenths = (length / 1.5875) as u64;
    for i in 1..=sixteenths {
        let long = match i % 16 {
            0 => 3.6,
            8 => 2.6,
            4 | 12 => 2.0,
            _ if i % 2 == 0 => 1.4,
            _ => 0.8,
        };
        d.add("M# 0v#", &[i as f64, long]);
    }
    pen.path("r1", &d.0);
    pen.end();
    let mut d = D::default();
    for i in 1..=u64::from(width_mm) {
        let long = if i % 10 == 0 {
            3.4
        } else if i % 5 == 0 {
            2.2
        } else {
            1.4
        };
        d.add("M# 12v#", &[i as f64, -long]);
    }
    d.add("M0 0H#M0 12H#", &[length, length]);
    pen.path("r1", &d.0);
    pen.path("r2", "M0 0V12");
    let mut label = |x: f64, y: f64, n: u64| {
        let mut s = String::new();
        whole(&mut s, n);
        pen.text(x, y, 3.0, "", Anchor::End, &s);
    };
    for n in 1..=sixteenths / 16 {
        label(n as f64 * 25.4 - 0.8, 5.2, n);
    }
    for n in 1..=u64::from(width_mm) / 10 {
        label(n as f64 * 10.0 - 0.8, 9.8, n);
    }
    pen.text(1.2, 5.2, 3.0, "", Anchor::Start, inch);
    pen.text(1.2, 9.8, 3.0, "", Anchor::Start, cm);
    pen.end();
}

/// The ruled line of the page's head and foot, in CSS inches; needs the pattern `in`.
pub fn head(out: &mut dyn Out) {
    out.open("svg");
    out.attr("class", "rule");
    out.attr("aria-hidden", "true");
    out.open("rect");
    out.attr("width", "100%");
    out.attr("height", "20");
    out.attr("fill", "url(#in)");
    out.close();
    out.open("path");
    out.attr("class", "s");
    out.attr("d", "M0 1H9999");
    out.close();
    out.close();
}
