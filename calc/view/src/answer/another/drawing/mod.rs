//! The three tapes that marks are moved along. Each is one SVG as wide as the page gives it, with x in per cent and all
//! heights in em, so that words follow the reader's letters at any width; a word that has two lengths swaps by the width
//! of the tape.
//!
//! ```text
//! year::year(out, &Year, &YearLabels)      the bark of twelve months, a lane a rule, the notch
//! far::far(out, &Far, &FarLabels)          how far it can land and throw, the flag
//! size::size(out, &Size, aria)             the trunk across, the caliper
//! ```

pub(super) mod far;
pub(super) mod size;
pub(super) mod year;

use crate::draw::pen::{Anchor, Pen, width};
use crate::out::Out;
use calc::terms::small::decimals::fixed;

/// Where the scale begins: above it stands the mark.
const TOP: f64 = 44.0;
/// Heights and letters are told in pixels of a tape whose letters have this size.
const EM: f64 = 16.0;
/// The narrowest tape that words are measured for, and the narrowest wide one: 18 and 34 em. The style sheet lets no
/// tape be narrower: letters that are too large for a small screen become smaller.
const NARROW: f64 = 288.0;
const WIDE: f64 = 544.0;

/// A mark: where it is, where it was, whether the value lies beyond the end of the tape. Per cent of the tape.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Marked {
    pub at: f64,
    pub was: Option<f64>,
    pub beyond: bool,
}

/// Which mark is drawn.
#[derive(Clone, Copy, PartialEq)]
enum Grip {
    Notch,
    Flag,
    Caliper,
}

/// Draws along a tape: x in per cent of its width, y in pixels.
struct Strip<'o> {
    out: &'o mut dyn Out,
}

fn percent(x: f64) -> String {
    cat!(fixed(x, 2), "%")
}

/// A length in em, of letters of this size.
fn em(length: f64, size: f64) -> String {
    cat!(fixed(length / size, 3), "em")
}

impl Strip<'_> {
    fn open(&mut self, height: f64, aria: &str) {
        self.out.open("svg");
        self.out.attr("class", "strip");
        self.out.attr("width", "100%");
        self.out.attr("height", &em(height, EM));
        self.out.attr("role", "img");
        self.out.attr("aria-label", aria);
    }

    fn close(&mut self) {
        self.out.close();
    }

    fn line(&mut self, class: &str, [x0, x1]: [f64; 2], [y0, y1]: [f64; 2]) {
        self.out.open("line");
        self.out.attr("class", class);
        self.out.attr("x1", &percent(x0));
        self.out.attr("x2", &percent(x1));
        self.out.attr("y1", &em(y0, EM));
        self.out.attr("y2", &em(y1, EM));
        self.out.close();
    }

    /// A line from edge to edge at one place.
    fn upright(&mut self, class: &str, x: f64, ys: [f64; 2]) {
        self.line(class, [x, x], ys);
    }

    /// `fill` names a pattern or is empty.
    fn rect(&mut self, class: &str, [x0, x1]: [f64; 2], [y0, y1]: [f64; 2], fill: &str) {
        self.out.open("rect");
        if !class.is_empty() {
            self.out.attr("class", class);
        }
        self.out.attr("x", &percent(x0));
        self.out.attr("width", &percent(x1 - x0));
        self.out.attr("y", &em(y0, EM));
        self.out.attr("height", &em(y1 - y0, EM));
        if !fill.is_empty() {
            self.out.attr("fill", fill);
        }
        self.out.close();
    }

    fn text(&mut self, class: &str, x: f64, y: f64, size: f64, at: Anchor, text: &str) {
        self.out.open("text");
        if !class.is_empty() {
            self.out.attr("class", class);
        }
        self.out.attr("x", &percent(x));
        // Of its own letters.
        self.out.attr("y", &em(y, size));
        self.out.attr("font-size", &em(size, EM));
        match at {
            Anchor::Start => {}
            Anchor::Middle => self.out.attr("text-anchor", "middle"),
            Anchor::End => self.out.attr("text-anchor", "end"),
        }
        self.out.text(text);
        self.out.close();
    }

    /// A word in the middle of a band: the long one on a wide tape, the short one on a narrow one, each where it fits.
    fn word(&mut self, class: &str, [x0, x1]: [f64; 2], y: f64, [long, short]: [&str; 2]) {
        for (turn, text, size, room) in [("cw", long, 15.0, WIDE), ("cn", short, 13.5, NARROW)] {
            let wide = (x1 - x0) / 100.0 * room;
            if width(text, size, true) + 6.0 <= wide {
                let class = cat!(turn, " ", class);
                self.text(&class, (x0 + x1) / 2.0, y, size, Anchor::Middle, text);
            }
        }
    }

    /// Draws at a place of the tape, from there on in the same pixels.
    fn at(&mut self, class: &str, x: f64, draw: impl FnOnce(&mut Pen<'_>)) {
        self.out.open("svg");
        self.out.attr("class", class);
        self.out.attr("x", &percent(x));
        self.out.attr("width", "1em");
        self.out.attr("height", "1em");
        self.out.attr("viewBox", "0 0 16 16");
        draw(&mut Pen { out: self.out });
        self.out.close();
    }

    /// The hook at the beginning, from `y0` to `y1`.
    fn hook(&mut self, y0: f64, y1: f64) {
        self.at("at", 0.0, |pen| pen.shape("s3", "M1#V#h8", &[y0, y1]));
    }

    /// The mark where it was, then where it is, with a stem down to `foot`.
    fn marks(&mut self, grip: Grip, marked: &Marked, foot: f64) {
        if let Some(was) = marked.was {
            self.grip("grip ghost", grip, was, foot, false);
        }
        self.grip("grip", grip, marked.at, foot, marked.beyond);
    }

    fn grip(&mut self, class: &str, grip: Grip, x: f64, foot: f64, beyond: bool) {
        // Near the end a flag flies the other way, so that it stays on the page.
        let turned = x > 88.0 && grip != Grip::Notch;
        self.at(class, x, |pen| {
            for (class, by) in [("ring1", 7.0), ("ring2", 4.0), ("ring3", 1.0)] {
                let side = 44.0 + 2.0 * by;
                pen.out.open("rect");
                pen.out.attr("class", class);
                pen.at("x", -22.0 - by);
                pen.at("y", -by);
                pen.at("width", side);
                pen.at("height", side);
                pen.at("rx", 2.0 + by);
                pen.end();
            }
            pen.shape("under", "M0 42V#", &[foot]);
            pen.shape("stem", "M0 42V#", &[foot]);
            if turned {
                pen.out.open("g");
                pen.out.attr("transform", "scale(-1 1)");
            }
            match grip {
                Grip::Notch => {
                    pen.path("knob", "M-14 3H14V24L0 42L-14 24Z");
                    pen.path("fine", "M-6 10V21M0 10V21M6 10V21");
                }
                Grip::Flag => {
                    pen.path("stem", "M0 3V44");
                    pen.path("knob", "M0 4H21L14 12.5L21 21H0Z");
                    pen.path("fine", "M5 9.5H11M5 15.5H11");
                }
                Grip::Caliper => {
                    pen.path("knob", "M-10 6H18V24H5L0 43V6");
                    pen.path("fine", "M6 11V19M12 11V19");
                }
            }
            if turned {
                pen.end();
            }
            if beyond {
                pen.path("fi", "M-30 7L-19 13L-30 19ZM-42 11.5H-29V14.5H-42Z");
            }
        });
    }
}
