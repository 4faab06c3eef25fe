//! A twig: how leaves stand, with buds and thorns.

use super::blade::{self, Place};
use super::{Marks, Point, SIZE};
use crate::draw::pen::{D, Pen};
use crate::out::Out;
use calc::terms::leaf::{Arrangement, Buds, LeafKind, Thorns};

/// Where leaves leave the twig, from the foot up.
const NODES: [f64; 3] = [292.0, 214.0, 136.0];
/// The twig's end.
const TOP: f64 = 84.0;

/// Draws a twig.
pub fn twig(out: &mut dyn Out, marks: &Marks, says: &str) {
    let pen = &mut Pen { out };
    pen.svg("d", SIZE[0], SIZE[1], says);
    pen.line("s3", 180.0, 366.0, 180.0, TOP);
    for (i, y) in NODES.into_iter().enumerate() {
        for turned in turns(marks.arrangement, i) {
            leaf(pen, marks, [180.0, y], turned);
            thorn(pen, marks.thorns, [180.0, y], turned.signum());
        }
    }
    if matches!(marks.thorns, Thorns::Prickles) {
        for (i, y) in [330.0, 256.0, 178.0, 110.0].into_iter().enumerate() {
            let way = if i.is_multiple_of(2) { 1.0 } else { -1.0 };
            pen.shape(
                "fi",
                "M##l##l##Z",
                &[180.0, y - 5.0, way * 16.0, 3.0, way * -16.0, 7.0],
            );
        }
    }
    if marks.thorns == Thorns::TwigTip {
        pen.shape("fi", "M##l7 -64l7 64Z", &[173.0, TOP]);
    } else {
        bud(pen, marks.buds, [180.0, TOP]);
    }
    pen.end();
}

/// How leaves of a node are turned from the twig, in degrees.
fn turns(arrangement: Arrangement, node: usize) -> Vec<f64> {
    match arrangement {
        Arrangement::Opposite => vec![58.0, -58.0],
        Arrangement::Whorled => vec![64.0, -64.0, 18.0],
        _ if node.is_multiple_of(2) => vec![58.0],
        _ => vec![-58.0],
    }
}

/// One small leaf; a compound one as an axis with a few leaflets.
fn leaf(pen: &mut Pen<'_>, marks: &Marks, [x, y]: Point, turned: f64) {
    let turn = turned.to_radians();
    let way = [libm::sin(turn), -libm::cos(turn)];
    let broad = marks.kind == LeafKind::Simple && blade::reach(marks) > 1.0;
    let (stalk, long) = if broad { (46.0, 66.0) } else { (16.0, 104.0) };
    let from = [x + way[0] * stalk, y + way[1] * stalk];
    pen.line("s", x, y, from[0], from[1]);
    if marks.kind == LeafKind::Simple {
        blade::draw(pen, marks, &Place::new(from, turned, long));
        return;
    }
    let leaflet = marks.leaflet();
    let end = [from[0] + way[0] * 100.0, from[1] + way[1] * 100.0];
    pen.line("s", from[0], from[1], end[0], end[1]);
    let pairs = if marks.kind == LeafKind::Trifoliate {
        1
    } else {
        3
    };
    for k in 1..=pairs {
        let share = f64::from(k) / f64::from(pairs + 1) * 1.05;
        let at = [
            from[0] + way[0] * 100.0 * share,
            from[1] + way[1] * 100.0 * share,
        ];
        for side in [62.0, -62.0] {
            blade::draw(pen, &leaflet, &Place::new(at, turned + side, 36.0));
        }
    }
    blade::draw(pen, &leaflet, &Place::new(end, turned, 38.0));
}

fn thorn(pen: &mut Pen<'_>, thorns: Thorns, [x, y]: Point, way: f64) {
    let spike = |pen: &mut Pen<'_>, way: f64, long: f64| {
        pen.shape(
            "fi",
            "M##l##l##Z",
            &[x, y - 16.0, way * long, -7.0, way * -long, 15.0],
        );
    };
    match thorns {
        Thorns::Single => spike(pen, -way, 40.0),
        Thorns::Pair => {
            spike(pen, way, 24.0);
            spike(pen, -way, 24.0);
        }
        Thorns::Branched => {
            spike(pen, -way, 66.0);
            let foot = x - way * 30.0;
            pen.shape(
                "fi",
                "M##l##l##Z",
                &[foot, y - 14.0, way * -16.0, -24.0, way * 7.0, 26.0],
            );
            pen.shape(
                "fi",
                "M##l##l##Z",
                &[foot, y - 12.0, way * -16.0, 24.0, way * 7.0, -26.0],
            );
        }
        Thorns::Spur => {
            spike(pen, -way, 58.0);
            let mut d = D::default();
            for at in [18.0, 32.0] {
                d.add("M##l##", &[x - way * at, y - 16.0, 0.0, -9.0]);
            }
            pen.path("s", &d.0);
        }
        Thorns::None
        | Thorns::Prickles
        | Thorns::TwigTip
        | Thorns::LeafSpines
        | Thorns::StalkSpines => {}
    }
}

/// What a bud's outline is: half its width, its height, and how its tip runs out.
fn bud(pen: &mut Pen<'_>, buds: Buds, [x, y]: Point) {
    let (half, high, class) = match buds {
        Buds::RoundSmall | Buds::LopsidedRed => (9.0, 17.0, "s fwood"),
        Buds::BluntFat => (17.0, 40.0, "s fwood"),
        Buds::LargeLoose => (20.0, 54.0, "s fwood"),
        Buds::Woolly | Buds::Silver | Buds::WhiteHairy | Buds::WhiteScaly => (10.0, 28.0, "s fp"),
        Buds::SharpSmall | Buds::OneScale | Buds::TwoScale | Buds::Silky => (8.0, 25.0, "s fwood"),
        Buds::ScalyPointed | Buds::Sticky => (12.0, 40.0, "s fwood"),
        Buds::SharpSlender => (7.0, 44.0, "s fwood"),
        Buds::Spear => (6.0, 66.0, "s fwood"),
        Buds::NakedFuzzy | Buds::BrownVelvet => (11.0, 24.0, "s fwood2"),
        Buds::Stalked => (9.0, 30.0, "s fwood"),
        Buds::DuckBill => (14.0, 42.0, "s fleaf"),
        Buds::OneBud => (18.0, 46.0, "s fleaf"),
        Buds::Clustered => (8.0, 27.0, "s fwood"),
        Buds::Hidden => return,
    };
    let foot = if buds == Buds::Stalked {
        pen.line("s", x, y, x, y - 12.0);
        y - 12.0
    } else {
        y
    };
    let mut one = |at: f64, foot: f64, half: f64, high: f64| {
        pen.shape(
            class,
            "M##C######C######Z",
            &[
                at - half * 0.6,
                foot,
                at - half * 1.5,
                foot - high * 0.4,
                at - half * 0.7,
                foot - high * 0.75,
                at,
                foot - high,
                at + half * 0.7,
                foot - high * 0.75,
                at + half * 1.5,
                foot - high * 0.4,
                at + half * 0.6,
                foot,
            ],
        );
    };
    if buds == Buds::Clustered {
        one(x - 13.0, foot + 4.0, half * 0.85, high * 0.85);
        one(x + 13.0, foot + 4.0, half * 0.85, high * 0.85);
    }
    one(x, foot, half, high);
    match buds {
        Buds::ScalyPointed
        | Buds::LargeLoose
        | Buds::BluntFat
        | Buds::SharpSlender
        | Buds::Spear
        | Buds::WhiteScaly => {
            let mut d = D::default();
            for share in [0.3, 0.55] {
                let h = foot - high * share;
                d.add(
                    "M##Q####",
                    &[x - half * 0.9, h, x, h - high * 0.16, x + half * 0.9, h],
                );
            }
            pen.path("s1", &d.0);
        }
        Buds::TwoScale | Buds::DuckBill => pen.line("s1", x, foot, x, foot - high),
        Buds::Woolly | Buds::WhiteHairy | Buds::NakedFuzzy | Buds::BrownVelvet => {
            let mut d = D::default();
            for k in 0..5 {
                d.add(
                    "M##l4 -6",
                    &[
                        x - half * 0.6 + half * 0.3 * f64::from(k),
                        foot - high * 0.3,
                    ],
                );
            }
            pen.path("s1", &d.0);
        }
        _ => {}
    }
}
