//! Bark of an old stem, a texture a pattern.

use super::{Marks, SIZE};
use crate::draw::pen::{D, Pen};
use crate::draw::wobble::Wobble;
use crate::out::Out;
use calc::terms::leaf::BarkPattern;

/// The stem's edges.
const LEFT: f64 = 40.0;
const RIGHT: f64 = 320.0;
const TOP: f64 = 6.0;
const FOOT: f64 = 366.0;

/// Draws the bark that the marks name.
pub fn bark(out: &mut dyn Out, marks: &Marks, says: &str) {
    let pen = &mut Pen { out };
    pen.svg("d", SIZE[0], SIZE[1], says);
    let wobble = &mut Wobble(7);
    let is_trunk = !matches!(
        marks.bark,
        BarkPattern::Herb | BarkPattern::Vine | BarkPattern::Cane
    );
    if is_trunk {
        let fill = match marks.bark {
            BarkPattern::SmoothPale | BarkPattern::PeelingCurls => "fp",
            _ => "fwood2",
        };
        pen.rect(fill, [LEFT, TOP, RIGHT - LEFT, FOOT - TOP], "");
    }
    match marks.bark {
        BarkPattern::Smooth => flecks(pen, wobble, 9),
        BarkPattern::SmoothPale => pale(pen, wobble),
        BarkPattern::NetRidges => net(pen, wobble, "s", 11, 15.0),
        BarkPattern::FlatRidges => flat_ridges(pen, wobble),
        BarkPattern::Scaly => scales(pen, wobble, 34.0, 40.0),
        BarkPattern::Plates => scales(pen, wobble, 68.0, 100.0),
        BarkPattern::Blocks => blocks(pen, wobble),
        BarkPattern::Furrowed => net(pen, wobble, "s3", 7, 16.0),
        BarkPattern::FlakingPatches => patches(pen, wobble),
        BarkPattern::CrossLines => cross_lines(pen, wobble),
        BarkPattern::PeelingStrips => strips(pen, wobble, false),
        BarkPattern::Shaggy => strips(pen, wobble, true),
        BarkPattern::PeelingCurls => curls(pen, wobble),
        BarkPattern::Corky => net(pen, wobble, "s3", 4, 36.0),
        BarkPattern::OrangeTop => {
            scales(pen, wobble, 60.0, 70.0);
            pen.rect("fwood", [LEFT, TOP, RIGHT - LEFT, 140.0], "");
            flecks(pen, wobble, 4);
        }
        BarkPattern::Stringy => threads(pen, wobble, 18, 240.0),
        BarkPattern::Shreddy => threads(pen, wobble, 16, 90.0),
        BarkPattern::LeafBases => leaf_bases(pen),
        BarkPattern::Rings => rings(pen, 34.0),
        BarkPattern::Cane => canes(pen),
        BarkPattern::Muscle => muscles(pen),
        BarkPattern::Warty => warts(pen, wobble),
        BarkPattern::Herb => stems(pen, 5),
        BarkPattern::Vine => stems(pen, 2),
    }
    if is_trunk {
        pen.shape("s3", "M##V#M##V#", &[LEFT, TOP, FOOT, RIGHT, TOP, FOOT]);
    }
    pen.end();
}

/// A few short marks on smooth bark.
fn flecks(pen: &mut Pen<'_>, wobble: &mut Wobble, count: usize) {
    let mut d = D::default();
    for i in 0..count {
        let y = TOP
            + 20.0
            + (FOOT - TOP - 40.0) * (i as f64 + 0.5 + wobble.next() * 0.3) / count as f64;
        let x = 180.0 + wobble.next() * 110.0;
        d.add("M##h#", &[x, y, 14.0 + wobble.next() * 5.0]);
    }
    pen.path("s1", &d.0);
}

/// Pale bark: black scars where limbs were, thin lines across.
fn pale(pen: &mut Pen<'_>, wobble: &mut Wobble) {
    flecks(pen, wobble, 16);
    for [x, y] in [[110.0, 84.0], [240.0, 176.0], [132.0, 288.0]] {
        pen.shape("fi", "M##l24 -16l24 16l-24 9Z", &[x, y]);
    }
}

/// Lines from top to foot that come together and part: many as a net, few as furrows.
fn net(pen: &mut Pen<'_>, wobble: &mut Wobble, class: &str, count: usize, swing: f64) {
    let mut d = D::default();
    let apart = (RIGHT - LEFT) / count as f64;
    for i in 0..=count {
        let x = LEFT + apart * i as f64;
        let mut way = if i.is_multiple_of(2) { 1.0 } else { -1.0 };
        let mut y = TOP;
        d.add("M##", &[x, y]);
        while y < FOOT {
            let step = (52.0 + wobble.next() * 12.0).min(FOOT - y);
            let bulge = way * (swing + wobble.next() * swing * 0.2);
            let side = (x + bulge).clamp(LEFT, RIGHT);
            d.add("Q####", &[side, y + step / 2.0, x, y + step]);
            y += step + 0.01;
            way = -way;
        }
    }
    pen.path(class, &d.0);
}

/// Broad flat ridges with furrows between them.
fn flat_ridges(pen: &mut Pen<'_>, wobble: &mut Wobble) {
    let mut x = LEFT + 22.0;
    while x < RIGHT - 24.0 {
        let (a, b) = (x + wobble.next() * 6.0, x + wobble.next() * 6.0);
        let mut d = D::default();
        d.add(
            "M##C######L##C######Z",
            &[
                x,
                TOP,
                a,
                120.0,
                b,
                240.0,
                x,
                FOOT,
                x + 9.0,
                FOOT,
                b + 9.0,
                240.0,
                a + 9.0,
                120.0,
                x + 9.0,
                TOP,
            ],
        );
        pen.path("fi", &d.0);
        x += 46.0;
    }
}

/// Rows of plates with gaps.
fn scales(pen: &mut Pen<'_>, wobble: &mut Wobble, wide: f64, high: f64) {
    let mut d = D::default();
    let mut y = TOP;
    let mut shift = 0.0;
    while y < FOOT {
        let mut x = LEFT - shift;
        while x < RIGHT {
            let w = wide + wobble.next() * wide * 0.15;
            let (l, r) = ((x + 3.0).max(LEFT), (x + w - 3.0).min(RIGHT));
            let (t, b) = (y + 3.0, (y + high - 3.0).min(FOOT));
            if r - l > 8.0 && b - t > 8.0 {
                let lip = wobble.next() * 4.0;
                d.add(
                    "M##L##L##Q####L##Z",
                    &[
                        l,
                        t + 4.0,
                        l + 5.0,
                        t,
                        r,
                        t + 2.0,
                        r + lip.min(0.0),
                        (t + b) / 2.0,
                        r - 4.0,
                        b,
                        l + 4.0,
                        b - 3.0,
                    ],
                );
            }
            x += w;
        }
        y += high;
        shift = if shift > 0.0 { 0.0 } else { wide * 0.5 };
    }
    pen.path("s fwood", &d.0);
}

/// Small square blocks, as of an alligator's back.
fn blocks(pen: &mut Pen<'_>, wobble: &mut Wobble) {
    let mut d = D::default();
    for row in 0..9 {
        for column in 0..7 {
            let x = LEFT + 40.0 * f64::from(column) + 3.0;
            let y = TOP + 40.0 * f64::from(row) + 3.0;
            let j = wobble.next() * 3.0;
            d.add(
                "M##L##L##L##Z",
                &[
                    x,
                    y + j,
                    x + 34.0,
                    y - j,
                    x + 34.0 - j,
                    y + 34.0,
                    x + j,
                    y + 34.0 + j,
                ],
            );
        }
    }
    pen.path("s fwood", &d.0);
}

/// Patches of several tones, as pieces fall.
fn patches(pen: &mut Pen<'_>, wobble: &mut Wobble) {
    for (i, [x, y]) in [
        [86.0, 60.0],
        [180.0, 40.0],
        [268.0, 92.0],
        [120.0, 150.0],
        [222.0, 176.0],
        [84.0, 240.0],
        [166.0, 268.0],
        [272.0, 262.0],
        [122.0, 336.0],
        [226.0, 340.0],
    ]
    .into_iter()
    .enumerate()
    {
        let mut d = D::default();
        let (w, h) = (38.0 + wobble.next() * 8.0, 34.0 + wobble.next() * 8.0);
        let (t, b) = ((y - h).max(TOP), f64::min(y + h, FOOT));
        let (l, r) = ((x - w).max(LEFT), f64::min(x + w, RIGHT));
        d.add(
            "M##C######C######C######C######Z",
            &[
                x,
                t,
                r,
                t,
                r - 8.0,
                y - 6.0,
                r,
                y,
                r,
                b - 6.0,
                x + 12.0,
                b,
                x,
                b,
                l,
                b,
                l + 8.0,
                y + 8.0,
                l,
                y,
                l,
                t + 6.0,
                x - 14.0,
                t,
                x,
                t,
            ],
        );
        pen.path(
            if i.is_multiple_of(2) {
                "s fp"
            } else {
                "s fwood"
            },
            &d.0,
        );
    }
}

/// Short lines across, in rows.
fn cross_lines(pen: &mut Pen<'_>, wobble: &mut Wobble) {
    let mut d = D::default();
    for i in 0..26 {
        let y = TOP + 12.0 + 13.6 * f64::from(i);
        let x = LEFT + 30.0 + (wobble.next() + 1.0) * 80.0;
        let long = 34.0 + wobble.next() * 18.0;
        d.add(
            "M##h#M##h#",
            &[
                x,
                y,
                long,
                (x + long + 34.0).min(RIGHT - 30.0),
                y + 3.0,
                24.0,
            ],
        );
    }
    pen.path("s", &d.0);
}

/// Long strips; shaggy ones stand off at their ends.
fn strips(pen: &mut Pen<'_>, wobble: &mut Wobble, shaggy: bool) {
    for column in 0..6 {
        let x = LEFT + 8.0 + 45.0 * f64::from(column);
        let mut y = TOP + 10.0 + (wobble.next() + 1.0) * 24.0;
        while y < FOOT - 40.0 {
            let long = (120.0 + wobble.next() * 34.0).min(FOOT - y - 6.0);
            let lift = if shaggy { 15.0 } else { 5.0 };
            let mut d = D::default();
            d.add(
                "M##L##Q####L##Q####Z",
                &[
                    x,
                    y,
                    x + 34.0,
                    y,
                    x + 34.0,
                    y + long * 0.6,
                    (x + 34.0 + lift).min(RIGHT + lift),
                    y + long,
                    x + 12.0 + lift,
                    y + long - 10.0,
                    x,
                    y + long * 0.6,
                    x,
                    y,
                ],
            );
            pen.path("s fwood", &d.0);
            y += long + 14.0;
        }
    }
}

/// Thin sheets that roll back across the stem.
fn curls(pen: &mut Pen<'_>, wobble: &mut Wobble) {
    flecks(pen, wobble, 12);
    for [x, y, wide] in [
        [70.0, 74.0, 110.0],
        [170.0, 138.0, 120.0],
        [62.0, 204.0, 120.0],
        [180.0, 268.0, 116.0],
        [80.0, 326.0, 100.0],
    ] {
        pen.shape(
            "s fwood",
            "M##L##Q####Q####Z",
            &[
                x,
                y,
                x + wide,
                y - 8.0,
                x + wide + 12.0,
                y + 12.0,
                x + wide - 6.0,
                y + 18.0,
                x + wide * 0.5,
                y + 8.0,
                x,
                y,
            ],
        );
    }
}

/// Threads along the stem.
fn threads(pen: &mut Pen<'_>, wobble: &mut Wobble, columns: usize, long: f64) {
    let mut d = D::default();
    for i in 0..columns {
        let x = LEFT + (RIGHT - LEFT) * (i as f64 + 0.5) / columns as f64;
        let mut y = TOP + (wobble.next() + 1.0) * long * 0.2;
        while y < FOOT - 12.0 {
            let step = (long + wobble.next() * long * 0.3).min(FOOT - y);
            let lean = wobble.next() * 5.0;
            d.add("M##q####", &[x, y, lean, step / 2.0, lean * 0.6, step]);
            y += step + 10.0;
        }
    }
    pen.path("s", &d.0);
}

/// Stubs of old leaves, crossed.
fn leaf_bases(pen: &mut Pen<'_>) {
    let mut d = D::default();
    for row in 0..10 {
        let y = TOP + 36.0 * f64::from(row);
        let shift = if row % 2 == 0 { 0.0 } else { 28.0 };
        for column in 0..5 {
            let x = LEFT + shift + 56.0 * f64::from(column);
            if x + 50.0 < RIGHT && y + 46.0 < FOOT {
                d.add(
                    "M##L##L##L##Z",
                    &[
                        x + 4.0,
                        y + 10.0,
                        x + 28.0,
                        y,
                        x + 52.0,
                        y + 10.0,
                        x + 28.0,
                        y + 46.0,
                    ],
                );
            }
        }
    }
    pen.path("s fwood", &d.0);
}

fn rings(pen: &mut Pen<'_>, apart: f64) {
    let mut d = D::default();
    let mut y = TOP + apart;
    while y < FOOT - 6.0 {
        d.add("M##Q####", &[LEFT, y, 180.0, y + 12.0, RIGHT, y]);
        y += apart;
    }
    pen.path("s", &d.0);
}

/// Jointed canes.
fn canes(pen: &mut Pen<'_>) {
    for x in [70.0, 150.0, 230.0] {
        pen.rect("s fleaf", [x, TOP, 56.0, FOOT - TOP], "");
        let mut d = D::default();
        for y in [80.0, 176.0, 272.0] {
            d.add(
                "M##h64M##h64",
                &[x - 4.0, y + x / 10.0, x - 4.0, y + 7.0 + x / 10.0],
            );
        }
        pen.path("s", &d.0);
    }
}

/// Long swellings, as of muscles under a skin.
fn muscles(pen: &mut Pen<'_>) {
    let mut d = D::default();
    for (x, bend) in [
        (84.0, 22.0),
        (136.0, -20.0),
        (190.0, 24.0),
        (240.0, -18.0),
        (284.0, 14.0),
    ] {
        d.add(
            "M##C######",
            &[
                x,
                TOP,
                x + bend,
                120.0,
                x - bend,
                240.0,
                x + bend * 0.4,
                FOOT,
            ],
        );
    }
    pen.path("s", &d.0);
}

fn warts(pen: &mut Pen<'_>, wobble: &mut Wobble) {
    for row in 0..11 {
        for column in 0..6 {
            let x = LEFT + 24.0 + 46.0 * f64::from(column) + wobble.next() * 10.0;
            let y = TOP + 18.0 + 33.0 * f64::from(row) + wobble.next() * 8.0;
            pen.circle("s fwood", x.clamp(LEFT + 10.0, RIGHT - 10.0), y, 6.0);
        }
    }
}

/// Stems without bark.
fn stems(pen: &mut Pen<'_>, count: usize) {
    let mut d = D::default();
    for i in 0..count {
        let x = 180.0 + (i as f64 - (count as f64 - 1.0) / 2.0) * 50.0;
        d.add(
            "M##C######",
            &[x, FOOT, x + 24.0, 260.0, x - 24.0, 130.0, x + 6.0, TOP],
        );
    }
    pen.path("s3", &d.0);
}
