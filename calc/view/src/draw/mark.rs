//! Symbols of keys, the brand, and the hatch patterns every root needs once.

use super::pen::Pen;
use crate::out::Out;

/// A symbol in a key; the same marks as in the drawings and the certainty grades.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Swatch {
    /// Yes.
    Solid,
    /// Known at first hand.
    Ink,
    /// Known from related things.
    Half,
    /// Estimated, or can land here.
    Hatch,
    /// Can throw wood.
    Wide,
    /// No.
    Empty,
    /// People out; rule of thumb.
    Dash,
    /// Closed by a rule.
    Cross,
    /// Bark that is mostly tight, or bonding.
    Dotted,
    /// A caution that closes nothing.
    Dots,
    /// The living layer.
    Living,
    /// A visit.
    Pin,
    /// A reading, a day.
    Notch,
    /// Somewhere on this ring: a thing it could hit.
    Ring,
    /// A thing inside the reach.
    Octagon,
}

const BOX: [f64; 4] = [1.0, 1.0, 32.0, 16.0];

/// Draws a swatch, 34 × 18, hidden from readers (its text stands beside it).
pub fn swatch(out: &mut dyn Out, kind: Swatch) {
    let mut pen = Pen { out };
    pen.svg("gm", 34.0, 18.0, "");
    match kind {
        Swatch::Solid => pen.rect("s fband", BOX, ""),
        Swatch::Ink => pen.rect("s fi", BOX, ""),
        Swatch::Half => {
            pen.rect("s", BOX, "");
            pen.rect("fi", [1.0, 1.0, 16.0, 16.0], "");
        }
        Swatch::Hatch => pen.rect("s", BOX, "url(#h)"),
        Swatch::Wide => pen.rect("s", BOX, "url(#hw)"),
        Swatch::Dotted => pen.rect("s", BOX, "url(#dots)"),
        Swatch::Empty => pen.rect("s", BOX, ""),
        Swatch::Dash => pen.rect("dash d5", BOX, ""),
        Swatch::Cross => pen.path(
            "s",
            "M1 1H33V17H1ZM1 1L17 17M17 1L1 17M17 1L33 17M33 1L17 17",
        ),
        Swatch::Dots => {
            pen.path("dot", "M4 9H31");
            pen.path("s", "M2 4V14M33 4V14");
        }
        Swatch::Living => pen.path("live", "M1 9H33"),
        Swatch::Pin => {
            pen.path("s", "M0 1H34M17 1V5");
            pen.circle("s", 17.0, 11.0, 5.6);
        }
        Swatch::Notch => pen.path("s", "M0 2H9L17 15L25 2H34"),
        Swatch::Ring => {
            pen.path("dot", "M4 16A14 14 0 0 1 30 16");
            pen.circle("fi", 17.0, 2.5, 2.5);
        }
        Swatch::Octagon => pen.path("fstop s", &super::glyph::octagon(17.0, 9.0, 8.0)),
    }
    pen.end();
}

/// The brand: nested rings, one with a gap (the ring of bark that is off), 34 × 34.
pub fn brand(out: &mut dyn Out) {
    let mut pen = Pen { out };
    pen.svg("mark", 34.0, 34.0, "");
    pen.path("m1", "M17 3a14 14 0 1 0 14 14");
    pen.circle("m2", 17.0, 17.0, 8.4);
    pen.circle("fi", 17.0, 17.0, 2.6);
    pen.end();
}

/// The sun of the switch, 22 × 22.
pub fn sun(out: &mut dyn Out) {
    let mut pen = Pen { out };
    pen.svg("sun", 22.0, 22.0, "");
    pen.circle("fi", 11.0, 11.0, 4.5);
    pen.path(
        "m2",
        "M11 0V4M11 18V22M0 11H4M18 11H22M3 3L6 6M16 16L19 19M3 19L6 16M16 6L19 3",
    );
    pen.end();
}

/// Pattern: name, size, path, turned.
const PATTERNS: [(&str, [&str; 2], &str, &str); 6] = [
    ("h", ["7", "7"], "M1 0V7", "2"),
    ("hp", ["10", "10"], "M1 0V10", "2"),
    ("hw", ["20", "20"], "M1 0V20", "1.5"),
    ("dots", ["7", "7"], "M1 2h2.4M4.4 5.5h2.4", "2.4"),
    ("x", ["14", "14"], "M0 0L14 14M14 0L0 14", "1.6"),
    (
        "in",
        ["96", "20"],
        "M1 0V18M13 0V6M25 0V9M37 0V6M49 0V13M61 0V6M73 0V9M85 0V6",
        "2",
    ),
];

/// The patterns: `h` estimated, `hp` can land, `hw` can throw, `dots` mostly tight, `x` closed, `in` the ruled line in
/// CSS inches.
/// Every document and every shadow root that holds drawings needs them once.
pub fn defs(out: &mut dyn Out) {
    out.open("svg");
    for (key, v) in [
        ("class", "defs"),
        ("aria-hidden", "true"),
        ("width", "0"),
        ("height", "0"),
    ] {
        out.attr(key, v);
    }
    out.open("defs");
    for (id, [w, h], d, weight) in PATTERNS {
        out.open("pattern");
        out.attr("id", id);
        out.attr("width", w);
        out.attr("height", h);
        out.attr("patternUnits", "userSpaceOnUse");
        if id.starts_with('h') {
            out.attr("patternTransform", "rotate(45)");
        }
        out.open("path");
        out.attr("d", d);
        out.attr("stroke", "currentColor");
        out.attr("stroke-width", weight);
        out.close();
        out.close();
    }
    out.close();
    out.close();
}
