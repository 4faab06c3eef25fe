//! The verdict: a tree tag. Shape, then word, then number and day; colour comes last.

use super::number::within;
use super::pen::{Anchor, Pen, halves, outline, width};
use crate::out::Out;

/// The five verdicts, no more.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum TagKind {
    /// Disc, single rim.
    Do,
    /// Hourglass, dotted rim.
    Wait,
    /// Square arrow, corners only.
    OtherWay,
    /// Octagon, thick rim.
    Professional,
    /// Dashed ring, dashed plate, no fill.
    CantTell,
}

/// Words of a tag.
#[derive(Clone, Copy, Default)]
pub struct TagLabels<'a> {
    /// What the picture says, for those who do not see it.
    pub aria: &'a str,
    /// The verdict in a word or two.
    pub word: &'a str,
    /// Number of the tree and day; may be empty.
    pub line: &'a str,
}

/// Where the words begin and how far they may run.
const LEFT: f64 = 98.0;
const ROOM: f64 = 139.0;

/// Draws a tag, 260 × 152. Long words are set smaller, down to 17.
pub fn tag(out: &mut dyn Out, kind: TagKind, labels: &TagLabels<'_>) {
    let mut pen = Pen { out };
    pen.svg("tag", 260.0, 152.0, labels.aria);
    let fill = match kind {
        TagKind::Do => "fgo",
        TagKind::Wait => "fwait",
        TagKind::OtherWay => "fi",
        TagKind::Professional => "fstop",
        TagKind::CantTell => "fp s td",
    };
    pen.path(fill, PLATE);
    match kind {
        TagKind::Do => pen.rect("rim", [17.0, 43.0, 226.0, 96.0], ""),
        TagKind::Wait => pen.rect("rim rdot", [17.0, 43.0, 226.0, 96.0], ""),
        TagKind::OtherWay => pen.path(
            "rim",
            "M17 57V43H31M229 43H243V57M243 125V139H229M31 139H17V125",
        ),
        TagKind::Professional => pen.rect("rim r5", [16.5, 42.5, 227.0, 97.0], ""),
        TagKind::CantTell => {}
    }
    let clear = kind == TagKind::CantTell;
    pen.circle(if clear { "fp s" } else { "fp" }, 130.0, 30.0, 9.0);
    match kind {
        TagKind::Do => pen.circle("on", 58.0, 91.0, 27.0),
        TagKind::Wait => pen.path("on", "M34 62H82V68L64 91L82 114V120H34V114L52 91L34 68Z"),
        TagKind::OtherWay => pen.path("on", "M31 66H61L87 91L61 116H31Z"),
        TagKind::Professional => pen.path("on", &octagon(58.0, 91.0, 26.0)),
        TagKind::CantTell => pen.circle("s td", 58.0, 91.0, 25.0),
    }
    let ink = if clear { "tb" } else { "tb on" };
    let fit = |text: &str, most: f64, bold: bool| {
        within(
            ROOM / width(text, 1.0, bold),
            if bold { 17.0 } else { 13.0 },
            most,
        )
    };
    let size = fit(labels.word, 44.0, true);
    match halves(labels.word) {
        // Two lines before small print.
        Some((first, rest)) if size < 21.0 => {
            let size = fit(first, 25.0, true).min(fit(rest, 25.0, true));
            pen.text(LEFT, 77.0, size, ink, Anchor::Start, first);
            pen.text(LEFT, 77.0 + size, size, ink, Anchor::Start, rest);
        }
        _ => {
            let drop = if labels.line.is_empty() { 91.0 } else { 84.0 };
            pen.text(
                LEFT,
                drop + size * 0.33,
                size,
                ink,
                Anchor::Start,
                labels.word,
            );
        }
    }
    let ink = if clear { "" } else { "on" };
    pen.text(
        LEFT,
        122.0,
        fit(labels.line, 16.0, false),
        ink,
        Anchor::Start,
        labels.line,
    );
    pen.end();
}

/// The plate with its ear.
const PLATE: &str = "M10 44a8 8 0 0 1 8-8H104A26 26 0 0 1 156 36H242a8 8 0 0 1 8 8V138a8 8 0 0 1-8 8H18a8 8 0 0 1-8-8Z";

/// An octagon of inner radius `r`.
pub(crate) fn octagon(x: f64, y: f64, r: f64) -> String {
    // tan 22.5 degrees: half a side of an octagon of inner radius one.
    let s = r * 0.414_213_562;
    let corners = &[
        [-s, -r],
        [s, -r],
        [r, -s],
        [r, s],
        [s, r],
        [-s, r],
        [-r, s],
        [-r, -s],
    ];
    outline(corners, [x, y], 1.0)
}
