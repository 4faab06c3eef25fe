//! The trunk across, between the jaws of a caliper: inches above, centimetres below.

use super::{Grip, Marked, Strip, TOP};
use crate::draw::number::num;
use crate::draw::pen::Anchor;
use crate::out::Out;
use calc::terms::quantity::MM_PER_IN;

/// The tape.
#[derive(Clone, Copy, Debug)]
pub(in crate::answer::another) struct Size {
    /// Its length, mm.
    pub long_mm: f64,
    pub marked: Marked,
}

const FOOT: f64 = TOP + 42.0;
/// So many small ticks of inches a tape has at most.
const FINEST: f64 = 31.0;

/// Draws the tape; `aria` is what it is called.
pub(in crate::answer::another) fn size(out: &mut dyn Out, size: &Size, aria: &str) {
    let mut strip = Strip { out };
    strip.open(FOOT + 26.0, aria);
    strip.rect("s fp", [0.0, 100.0], [TOP, FOOT], "");
    if size.marked.at > 0.0 {
        strip.rect("s fwood", [0.0, size.marked.at], [TOP, FOOT], "");
    }
    // The fixed jaw, and the beam to the other one.
    strip.hook(8.0, FOOT + 8.0);
    strip.line("s3", [0.0, size.marked.at], [10.0, 10.0]);
    let mut every = 1.0;
    while size.long_mm / MM_PER_IN / every > FINEST {
        every *= 2.0;
    }
    let mut scale = |step_mm: f64, shown: f64, inches: bool| {
        let mut at = 1_u32;
        loop {
            let x = step_mm * f64::from(at) / size.long_mm * 100.0;
            if x > 99.0 {
                break;
            }
            let named = at.is_multiple_of(4);
            let tick = if named { 10.0 } else { 5.5 };
            let (ys, base) = if inches {
                ([TOP, TOP + tick], TOP + 25.0)
            } else {
                ([FOOT - tick, FOOT], FOOT + 18.0)
            };
            strip.upright("s", x, ys);
            if named && x < 88.0 {
                let text = num(shown * f64::from(at));
                strip.text("", x, base, 13.5, Anchor::Middle, &text);
            }
            at += 1;
        }
        let base = if inches { TOP + 25.0 } else { FOOT + 18.0 };
        let unit = if inches { "in" } else { "cm" };
        strip.text("", 99.0, base, 13.5, Anchor::End, unit);
    };
    scale(MM_PER_IN * every, every, true);
    scale(50.0 * every, 5.0 * every, false);
    strip.marks(Grip::Caliper, &size.marked, FOOT);
    strip.close();
}
