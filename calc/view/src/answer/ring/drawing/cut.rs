//! The cut from the side: through bark and living layer, and not into the wood. It shows an order, no sizes.

use crate::draw::pen::{Anchor, Pen, halves, width};
use crate::out::Out;

/// Words of the cut.
#[derive(Clone, Copy, Default)]
pub struct CutLabels<'a> {
    /// What the picture says, for those who do not see it.
    pub aria: &'a str,
    /// The bark.
    pub bark: &'a str,
    /// The same with its thickness.
    pub bark_size: &'a str,
    /// Between the two edges of bark.
    pub bare: &'a str,
    /// In the wood.
    pub wood: &'a str,
}

const W: f64 = 358.0;
const TEXT: f64 = 15.0;
/// The upper face of the bark, of the wood, and its foot.
const BARK: f64 = 20.0;
const WOOD: f64 = 44.0;
const FOOT: f64 = 104.0;
/// The ring, from edge to edge of the bark.
const RING: [f64; 2] = [120.0, 238.0];

/// Draws the cut, 358 wide (class `d cut`).
pub fn cut(out: &mut dyn Out, l: &CutLabels<'_>) {
    let mut pen = Pen { out };
    let (left, right) = (8.0, W - 8.0);
    pen.svg("d cut", W, FOOT + 2.0, l.aria);
    for [from, to] in [[left, RING[0]], [RING[1], right]] {
        pen.rect("s fwood2", [from, BARK, to - from, WOOD - BARK], "");
    }
    pen.rect("fwood", [left, WOOD, right - left, FOOT - WOOD], "");
    pen.shape("s", "M##V#H#V#", &[left, FOOT, WOOD, right, FOOT]);
    let live = [left, WOOD, RING[0], RING[1], WOOD, right];
    pen.shape("live", "M##H#M##H#", &live);
    let grain = [
        left,
        WOOD + 14.0,
        right,
        left,
        WOOD + 30.0,
        right,
        left,
        WOOD + 48.0,
        right,
    ];
    pen.shape("s1", "M##H#M##H#M##H#", &grain);
    let base = WOOD - 7.0;
    // A fifth and more to spare, for larger letters.
    let fits = |text: &str, bold: bool, room: f64| width(text, TEXT, bold) * 1.2 < room;
    let [bark, room] = [(left + RING[0]) / 2.0, RING[0] - left];
    let sized = fits(l.bark_size, false, room);
    let first = if sized { l.bark_size } else { l.bark };
    for (x, text) in [(bark, first), (W - bark, l.bark)] {
        pen.text(x, base, TEXT, "", Anchor::Middle, text);
    }
    let x = W / 2.0;
    match halves(l.bare) {
        Some((first, rest)) if !fits(l.bare, true, RING[1] - RING[0]) => {
            pen.text(x, base - 19.0, TEXT, "tb", Anchor::Middle, first);
            pen.text(x, base, TEXT, "tb", Anchor::Middle, rest);
        }
        _ => pen.text(x, base, TEXT, "tb", Anchor::Middle, l.bare),
    }
    pen.text(x, WOOD + 44.0, TEXT, "halo", Anchor::Middle, l.wood);
    pen.end();
}
