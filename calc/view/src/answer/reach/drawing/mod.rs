//! The ground a tree can reach: side view above the tape, plan below it, one scale.

mod flags;

use self::flags::{ROW, Taken, flags};
use crate::draw::glyph::octagon;
use crate::draw::number::within;
use crate::draw::pen::{Anchor, D, Pen, halves, width};
use crate::draw::tape::{Rule, TENS, Tape, TapeScale};
use crate::draw::tree::{Habit, person, tree};
use crate::out::Out;

/// Heights and distances, metres.
#[derive(Clone, Copy, Debug)]
pub struct ReachFigure<'a> {
    /// The height the answer used: the arc and the first edge.
    pub height_used_m: f64,
    /// The height estimated or measured: the tree is drawn this tall.
    pub height_estimate_m: f64,
    /// End of the ground it can throw wood on: 1.5 heights, or 2 downhill.
    pub zone_m: f64,
    /// Where people must be out to while working; none in an answer that stops.
    pub people_out_m: Option<f64>,
    /// Things it could hit.
    pub targets: &'a [DrawnTarget],
    /// How the tree is drawn.
    pub habit: Habit,
}

/// A thing it could hit. Its direction is not known, so the plan shows a ring.
#[derive(Clone, Debug)]
pub struct DrawnTarget {
    /// From the middle of the trunk, metres.
    pub distance_m: f64,
    /// Whether it stops the answer: drawn as an octagon.
    pub inside: bool,
    /// What it is and how far: `"path, 100 ft"`.
    pub label: String,
}

/// Words of the reach drawing.
#[derive(Clone, Copy, Default)]
pub struct ReachLabels<'a> {
    /// What the picture says, for those who do not see it.
    pub aria: &'a str,
    /// At the arc, wide drawing: `"60 ft (18 m), the height used"`.
    pub height: &'a str,
    /// At the arc, narrow drawing: `"60 ft used"`.
    pub height_short: &'a str,
    /// Names of the scales.
    pub foot: &'a str,
    /// Metres.
    pub metre: &'a str,
    /// In the first zone.
    pub can_land: &'a str,
    /// In the second.
    pub can_throw: &'a str,
    /// Beyond it.
    pub people_out: &'a str,
    /// Under the plan: `"1 height"`, `"1½ heights"`, `"2 heights"`; the second names the zone's end.
    pub heights: [&'a str; 3],
}

/// A person drawn for scale, metres.
pub const PERSON_M: f64 = 1.7;
/// A target beyond so many heights is named at the torn end instead of stretching the drawing.
const FARTHEST: f64 = 3.0;

struct Look {
    class: &'static str,
    w: f64,
    top: f64,
    /// Text and scale sizes.
    font: f64,
    small: f64,
    wide: bool,
    /// What its two scales may be divided into.
    rule: Rule,
}

const LOOKS: [Look; 2] = [
    Look {
        class: "d wide",
        w: 720.0,
        top: 34.0,
        font: 16.0,
        small: 15.0,
        wide: true,
        rule: Rule {
            steps: &TENS,
            least: [14.0, 62.0],
            ticks: [8.0, 8.0, 13.0],
        },
    },
    Look {
        class: "d narrow",
        w: 280.0,
        top: 22.0,
        font: 14.0,
        small: 13.0,
        wide: false,
        rule: Rule {
            steps: &TENS,
            least: [9.0, 36.0],
            ticks: [8.0, 8.0, 13.0],
        },
    },
];

impl ReachFigure<'_> {
    /// Metres left and right of the trunk that are drawn.
    fn span(&self) -> [f64; 2] {
        let h = self.height_used_m.max(1.0);
        let mut right = (self.zone_m * 1.12).max(self.people_out_m.unwrap_or(0.0) * 1.07);
        for t in self.targets {
            if t.distance_m <= FARTHEST * h {
                right = right.max(t.distance_m * 1.07);
            }
        }
        [0.37 * h.max(self.height_estimate_m), right]
    }

    /// Pixels a metre in a drawing `w` wide: one number for tape, plan, elevation and person.
    #[must_use]
    pub fn scale(&self, w: f64) -> f64 {
        let [left, right] = self.span();
        (w - 6.0) / (left + right)
    }
}

/// Draws the wide and the narrow figure.
pub fn reach(out: &mut dyn Out, r: &ReachFigure<'_>, l: &ReachLabels<'_>) {
    let mut pen = Pen { out };
    for look in &LOOKS {
        figure(&mut pen, r, l, look);
    }
}

fn figure(pen: &mut Pen<'_>, r: &ReachFigure<'_>, l: &ReachLabels<'_>, look: &'static Look) {
    let px = r.scale(look.w);
    let x0 = r.span()[0] * px;
    let high = r.height_used_m * px;
    let person_px = PERSON_M * px;
    let person_row = person_px.max(8.0) + 8.0;
    let at = |m: f64| x0 + m * px;
    let x1 = look.w - 6.0;
    let caption = if look.wide { l.height } else { l.height_short };
    let taken = Taken {
        x0,
        crown: 0.3 * r.height_estimate_m * px,
        from: x0 + 12.0,
        to: x0 + 12.0 + width(caption, look.small, false),
        // How far over row 0 the caption of the arc stands.
        up: high + 7.0 - person_row,
    };
    let (flags, rows) = flags(r, look, &at, x1, &taken);
    // A low tree under many flags: the sky is made high enough for them.
    let sky = high.max(person_row + rows as f64 * ROW - 8.0);
    let ground = look.top + sky;
    let tape = Tape {
        x0,
        x1,
        top: ground,
        bottom: ground + 56.0,
    };
    let plan_h = within(high * if look.wide { 0.667 } else { 0.45 }, 48.0, 210.0);
    let plan = tape.bottom + plan_h;
    pen.svg(
        look.class,
        look.w,
        plan + if look.wide { 30.0 } else { 10.0 },
        l.aria,
    );

    // Side view: the arc from the top of the height used, the tree at the estimate.
    let tip = ground - high;
    let arc = [x0, tip, high, high, at(r.height_used_m), ground];
    pen.shape("dash", "M##A## 0 0 1##", &arc);
    let dim = if look.wide { 12.0 } else { 8.0 };
    pen.line("s", dim - 7.0, tip, x0 + 10.0, tip);
    pen.line("s", dim - 7.0, ground, x0, ground);
    pen.dimension(dim, tip, ground);
    tree(pen, x0, ground, r.height_estimate_m * px, r.habit);
    pen.text(x0 + 12.0, tip - 7.0, look.small, "", Anchor::Start, caption);

    plan_view(pen, r, l, look, [x0, px, tape.bottom, plan_h]);

    tape.edges(pen, false, true);
    pen.line("s3", x0, ground, x0, tape.bottom);
    let drawn: Vec<f64> = r
        .targets
        .iter()
        .map(|t| at(t.distance_m))
        .filter(|x| *x < x1 - 2.0)
        .collect();
    let mut avoid: Vec<[f64; 2]> = drawn.iter().map(|x| [*x, 1.0]).collect();
    avoid.push([x0 + 16.0, 8.0]);
    let mut scale = |px: f64, way: f64, y: f64, name: &str| {
        let scale = TapeScale {
            px,
            rule: &look.rule,
            way,
            y,
            font: look.small,
        };
        tape.scale(pen, &scale, &avoid);
        pen.text(x0 + 9.0, y, look.small, "mut", Anchor::Start, name);
    };
    scale(px * 0.3048, 1.0, ground + 27.0, l.foot);
    scale(px, -1.0, ground + 42.0, l.metre);
    pen.circle("fi", x0, tape.bottom, if look.wide { 7.0 } else { 5.0 });
    for x in &drawn {
        tape.notch(pen, *x, 8.0, 14.0, tape.bottom);
    }
    for (t, x) in r
        .targets
        .iter()
        .map(|t| (t, at(t.distance_m)))
        .filter(|(_, x)| *x < x1 - 2.0)
    {
        if t.inside {
            pen.path("fstop s", &octagon(x, tape.bottom, 12.0));
        } else {
            pen.circle("fi", x, tape.bottom, 5.0);
        }
    }
    let stands = match r.targets {
        [one] if at(one.distance_m) < x1 - 8.0 => one.distance_m,
        _ => r.people_out_m.unwrap_or(r.zone_m),
    };
    person(pen, at(stands), ground - 1.0, person_px);
    let numbered = r.targets.len() > 1;
    for ((f, t), number) in flags.iter().zip(r.targets).zip(1..) {
        let Some(f) = f else { continue };
        let y = ground - person_row - f.row as f64 * ROW;
        if numbered && !f.far {
            let from = at(t.distance_m);
            let line = [from, ground, f.x, ground - person_row + 6.0, y];
            pen.shape("s", "M##L##V#", &line);
        }
        if f.named {
            let pin = if numbered { 16.0 } else { 0.0 };
            let x = match f.at {
                Anchor::Start => f.x + pin,
                Anchor::Middle => f.x,
                Anchor::End => f.x - pin,
            };
            pen.text(x, y, look.font, "tb halo", f.at, &t.label);
        }
        if numbered {
            pen.pin(f.x, y - 5.0, number);
        }
        if f.far {
            // Beyond the torn end: an arrow, no place.
            pen.shape("fi", "M##l-10-4.5v9Z", &[look.w - 2.0, y - 5.0]);
        }
    }
    pen.end();
}

/// The ground from above.
fn plan_view(
    pen: &mut Pen<'_>,
    r: &ReachFigure<'_>,
    l: &ReachLabels<'_>,
    look: &Look,
    [x0, px, top, h]: [f64; 4],
) {
    let used = r.height_used_m * px;
    let zone = r.zone_m * px;
    let half = |d: &mut D, radius: f64| {
        let (left, right) = (x0 - radius, x0 + radius);
        d.add("M# 0A## 0 0 0# 0", &[left, radius, radius, right]);
    };
    // A nested svg clips what runs out of it; no id is needed.
    pen.out.open("svg");
    pen.out.attr("class", "clip");
    pen.at("y", top);
    pen.at("width", look.w);
    pen.at("height", h);
    let mut d = D::default();
    half(&mut d, zone);
    d.add("L# 0A## 0 0 1# 0Z", &[x0 + used, used, used, x0 - used]);
    pen.hatched("", &d.0, "url(#hw)");
    let mut d = D::default();
    half(&mut d, used);
    d.add("Z", &[]);
    pen.hatched("", &d.0, if look.wide { "url(#hp)" } else { "url(#h)" });
    let mut d = D::default();
    half(&mut d, used);
    half(&mut d, zone);
    pen.path("s", &d.0);
    if let Some(out_to) = r.people_out_m.filter(|m| *m > r.zone_m * 1.01) {
        let mut d = D::default();
        half(&mut d, out_to * px);
        pen.path("dash", &d.0);
    }
    for t in r.targets {
        if x0 + t.distance_m * px < look.w - 8.0 {
            let mut d = D::default();
            half(&mut d, t.distance_m * px);
            pen.path("dot", &d.0);
        }
    }
    pen.end();
    let mut d = D::default();
    let step = if look.wide { 18.0 } else { 20.0 };
    d.add("M0#q#-5# 0", &[top + h, step / 2.0, step]);
    for _ in 1..(look.w / step) as u32 {
        d.add("t# 0", &[step]);
    }
    pen.path("s", &d.0);
    if !look.wide {
        return;
    }
    let beyond = r
        .people_out_m
        .filter(|m| *m > r.zone_m * 1.01)
        .map_or(zone, |m| m * px);
    // Each plate stands between its two arcs at its own depth.
    let mut plate = |from: f64, to: f64, depth: f64, text: &str| {
        let y = h * depth;
        let cross = |radius: f64| (radius * radius - y * y).max(0.0).sqrt();
        let (a, b) = (cross(from), cross(to));
        let (mid, room) = (x0 + (a + b) / 2.0, b - a + 24.0);
        if b - a > 30.0
            && !pen.plate(mid, top + y, 15.0, room, text)
            && let Some((first, rest)) = halves(text)
            && width(first, 15.0, true).max(width(rest, 15.0, true)) + 14.0 < room
        {
            pen.plate(mid, top + y - 11.0, 15.0, room, first);
            pen.plate(mid, top + y + 11.0, 15.0, room, rest);
        }
    };
    plate(0.0, used, 0.55, l.can_land);
    plate(used, zone, 0.32, l.can_throw);
    plate(zone, beyond, 0.72, l.people_out);
    let mut last = 0.0;
    for (radius, text) in [used, zone, beyond].iter().zip(l.heights) {
        let x = x0 + (radius * radius - h * h).max(0.0).sqrt();
        let w = width(text, 15.0, false) / 2.0;
        if x - w > last && x + w <= look.w {
            pen.text(x, top + h + 21.0, 15.0, "", Anchor::Middle, text);
            last = x + w + 8.0;
        }
    }
}
