//! Where the flags of the targets stand over the tape.

use super::{Look, ReachFigure};
use crate::draw::pen::{Anchor, sort, width};

/// A flag over the tape: a label, or a number with a label.
pub(super) struct TargetFlag {
    /// Where it stands; not over its target where two stand too close.
    pub x: f64,
    /// Left and right of what is drawn.
    pub from: f64,
    pub to: f64,
    pub row: usize,
    pub at: Anchor,
    pub named: bool,
    /// Beyond the torn end.
    pub far: bool,
}

/// Pixels between rows of flags.
pub(super) const ROW: f64 = 24.0;

/// What flags must not cover: the crown (a single label) and the caption of the arc.
pub(super) struct Taken {
    pub x0: f64,
    pub crown: f64,
    pub from: f64,
    pub to: f64,
    pub up: f64,
}

/// Places a flag for each target, farthest first, in the lowest row where neither labels nor their
/// lines cross; where two stand too close the nearer one's flag moves left. A label that fits nowhere
/// is dropped and its number stays. Also the number of rows used.
pub(super) fn flags(
    r: &ReachFigure<'_>,
    look: &Look,
    at: &dyn Fn(f64) -> f64,
    x1: f64,
    taken: &Taken,
) -> (Vec<Option<TargetFlag>>, usize) {
    let numbered = r.targets.len() > 1;
    let most = if look.wide { 8 } else { 5 };
    let mut order: Vec<usize> = (0..r.targets.len()).collect();
    sort(&mut order, |i| -r.targets[*i].distance_m);
    let mut flags: Vec<Option<TargetFlag>> = (0..r.targets.len()).map(|_| None).collect();
    let mut rows = 0;
    for (done, i) in order.iter().copied().enumerate() {
        let t = &r.targets[i];
        let far = at(t.distance_m) >= x1 - 2.0;
        // A far one hangs at the edge, left of the arrow.
        let own = if far {
            x1 - if numbered { 22.0 } else { 12.0 }
        } else {
            at(t.distance_m)
        };
        let w = width(&t.label, look.font, true);
        let sides: &[Anchor] = match (numbered, far) {
            (_, true) => &[Anchor::End],
            (true, false) => &[Anchor::Start, Anchor::End],
            // One label stands over its target, but not over the tree.
            (false, false) if own - w / 2.0 > taken.x0 + taken.crown => {
                &[Anchor::Middle, Anchor::End]
            }
            (false, false) => &[Anchor::Start, Anchor::Middle, Anchor::End],
        };
        let fits = |named: bool, strict: bool, aside: f64, row: usize, side: Anchor| {
            let x = own - aside;
            let text = if named { w } else { 0.0 };
            let pin = if numbered { 12.0 } else { 0.0 };
            let beside = if numbered { 16.0 } else { 0.0 };
            let (from, to) = match side {
                Anchor::Middle => (x - text / 2.0, x + text / 2.0),
                Anchor::Start => (x - pin, x + beside + text),
                Anchor::End => (x - beside - text, x + pin),
            };
            let mut ok = from >= 0.0 && to <= look.w;
            // The caption of the arc.
            let height = row as f64 * ROW;
            ok &= (height - taken.up).abs() > 19.0 || to < taken.from || from > taken.to;
            // A name to the left leaves as many rows below it as lines still have to pass there.
            if numbered && named && side == Anchor::End {
                let to_come = order[done + 1..].iter();
                ok &= row
                    >= to_come
                        .filter(|o| at(r.targets[**o].distance_m) > from - 26.0)
                        .count();
            }
            for f in flags.iter().flatten() {
                let touch = row == f.row && from < f.to + 4.0 && f.from - 4.0 < to;
                let line_through_me = f.row > row && !f.far && f.x > from - 3.0 && f.x < to + 3.0;
                let line_through_it = row > f.row && !far && x > f.from - 3.0 && x < f.to + 3.0;
                let crossed = strict && numbered && (line_through_me || line_through_it);
                ok &= !touch && !crossed;
            }
            ok.then_some(TargetFlag {
                x,
                from,
                to,
                row,
                at: side,
                named,
                far,
            })
        };
        let mut found = None;
        // With a name, then the number alone, then wherever a number fits at all.
        'search: for (named, strict, rows) in
            [(true, true, most), (false, true, 8), (false, false, 8)]
        {
            for aside in [0.0, 14.0, 28.0, 42.0] {
                if aside > 0.0 && (far || !numbered) {
                    break;
                }
                for row in 0..rows {
                    for side in sides {
                        found = fits(named, strict, aside, row, *side);
                        if found.is_some() {
                            break 'search;
                        }
                    }
                }
            }
        }
        if let Some(f) = &found {
            rows = rows.max(f.row + 1);
        }
        flags[i] = found;
    }
    (flags, rows)
}
