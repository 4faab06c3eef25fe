//! The ground round the trunk, along one line: how far it can land, throw wood, and people keep out; the flag.

use super::{Grip, Marked, NARROW, Strip, TOP};
use crate::draw::number::num;
use crate::draw::pen::{Anchor, width};
use crate::out::Out;

/// The tape in the reader's unit.
#[derive(Clone, Copy, Debug)]
pub(in crate::answer::another) struct Far {
    /// Ends of the three zones from the trunk on; one that does not stand ends where the one before it does.
    pub zones: [f64; 3],
    /// From one number of the scale to the next; five of them are the tape.
    pub step: f64,
    pub marked: Marked,
}

/// Words of the tape.
pub(in crate::answer::another) struct FarLabels<'a> {
    pub aria: &'a str,
    /// The zones, each in a long and a short form.
    pub zones: [[&'a str; 2]; 3],
    pub trunk: &'a str,
    pub unit: &'a str,
}

/// Numbers of the scale behind the first.
pub(in crate::answer::another) const STEPS: f64 = 5.0;
const FOOT: f64 = TOP + 42.0;

/// Draws the tape.
pub(in crate::answer::another) fn far(out: &mut dyn Out, far: &Far, l: &FarLabels<'_>) {
    let mut strip = Strip { out };
    strip.open(FOOT + 32.0, l.aria);
    let long = far.step * STEPS;
    let mut from = 0.0;
    let ends = far.zones.map(|end| (end / long * 100.0).min(100.0));
    let looks = [("url(#h)", "s"), ("url(#hw)", "s"), ("", "dash")];
    let mut words = Vec::new();
    for ((to, (fill, edge)), word) in ends.into_iter().zip(looks).zip(l.zones) {
        if to <= from {
            continue;
        }
        if !fill.is_empty() {
            strip.rect("", [from, to], [TOP, FOOT], fill);
        }
        if to < 100.0 {
            strip.upright(edge, to, [TOP, FOOT]);
        }
        words.push(([from, to], word));
        from = to;
    }
    for (ends, word) in words {
        strip.word("halo pl", ends, TOP + 26.0, word);
    }
    strip.rect("s", [0.0, 100.0], [TOP, FOOT], "");
    strip.hook(TOP - 6.0, FOOT + 8.0);
    let base = FOOT + 25.0;
    // On a narrow tape the hook alone says it where the word would run into the first number.
    let first = width(&num(far.step), 14.0, false) / 2.0;
    let fits = 6.0 + width(l.trunk, 14.0, false) + 6.0 < NARROW / STEPS - first;
    strip.at(if fits { "at" } else { "at cw" }, 0.0, |pen| {
        pen.text(6.0, base, 14.0, "", Anchor::Start, l.trunk);
    });
    for at in 1..=10_u32 {
        let x = f64::from(at) * 10.0;
        strip.upright("s", x, [FOOT, FOOT + 8.0]);
        if at % 2 == 0 {
            let text = num(far.step * f64::from(at / 2));
            if at == 10 {
                strip.text("", x, base, 14.0, Anchor::End, &cat!(&text, " ", l.unit));
            } else if at > 2 || text.len() < 3 {
                strip.text("", x, base, 14.0, Anchor::Middle, &text);
            }
        }
    }
    strip.marks(Grip::Flag, &far.marked, FOOT);
    strip.close();
}
