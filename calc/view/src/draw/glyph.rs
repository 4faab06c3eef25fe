//! Small signs: the five outcomes by their shape, the mark of a caution, and what a button does. Each stands beside
//! its word, so none has a name of its own; the size comes from the style sheet.

use super::pen::{Pen, outline};
use crate::out::Out;
use calc::answer::Outcome;

/// A sign.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Glyph {
    /// Do: a disc.
    Do,
    /// Do, with more to mind: a disc, half of it full.
    HalfDo,
    /// Wait: an hourglass.
    Wait,
    /// Another way: a square arrow.
    OtherWay,
    /// Stop: an octagon.
    Stop,
    /// Can't tell: a dashed ring.
    CantTell,
    /// A caution: a triangle with a stroke.
    Caution,
    /// Onto paper.
    Print,
    /// To somebody else.
    Share,
    /// Into a calendar.
    Calendar,
    /// By telephone.
    Call,
    /// On to the next tree.
    Next,
}

impl From<Outcome> for Glyph {
    /// The sign of an outcome.
    fn from(outcome: Outcome) -> Self {
        match outcome {
            Outcome::Do => Self::Do,
            Outcome::Wait => Self::Wait,
            Outcome::OtherMethod => Self::OtherWay,
            Outcome::Professional => Self::Stop,
            Outcome::CannotTell => Self::CantTell,
        }
    }
}

/// Draws a sign, class `gl`, hidden from readers.
pub fn glyph(out: &mut dyn Out, glyph: Glyph) {
    let mut pen = Pen { out };
    let side = match glyph {
        Glyph::Do
        | Glyph::HalfDo
        | Glyph::Wait
        | Glyph::OtherWay
        | Glyph::Stop
        | Glyph::CantTell => 44.0,
        Glyph::Caution => 30.0,
        Glyph::Print | Glyph::Share | Glyph::Calendar | Glyph::Call | Glyph::Next => 22.0,
    };
    pen.svg("gl", side, side, "");
    match glyph {
        Glyph::Do => pen.circle("fi", 22.0, 22.0, 20.0),
        Glyph::HalfDo => {
            pen.circle("s", 22.0, 22.0, 19.0);
            pen.path("fi", "M22 3A19 19 0 0 0 22 41Z");
        }
        Glyph::Wait => pen.path("fi", "M8 3H36V9L26 22L36 35V41H8V35L18 22L8 9Z"),
        Glyph::OtherWay => pen.path("fi", "M4 8H24V1L42 22L24 43V36H4Z"),
        Glyph::Stop => pen.path("fi", &octagon(22.0, 22.0, 20.0)),
        Glyph::CantTell => pen.circle("s td", 22.0, 22.0, 18.0),
        Glyph::Caution => pen.path("s3", "M15 3L28.5 27.5H1.5ZM15 10V19M15 21.5V24.5"),
        Glyph::Print => pen.path("s", "M5 8V2H17V8M5 16H2V8H20V16H17M5 13H17V20H5Z"),
        Glyph::Share => pen.path("s", "M11 14V2M6.5 6L11 2L15.5 6M4 10H2V20H20V10H18"),
        Glyph::Calendar => pen.path("s", "M2 4H20V20H2ZM2 9H20M7 1V6M15 1V6"),
        Glyph::Next => pen.path("s", "M2 11H19M12 4L19 11L12 18"),
        Glyph::Call => pen.path(
            "s",
            "M5 2L9 7L7 10C8 12 10 14 12 15L15 13L20 17C19 20 17 20.5 15 20C8 18 4 14 2 7C1.5 5 3 3 5 2Z",
        ),
    }
    pen.end();
}

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
