//! Fruits, a shape a kind.

mod cones;
mod dry;
mod fleshy;

use super::{Marks, Point, SIZE};
use crate::draw::pen::Pen;
use crate::out::Out;
use calc::terms::leaf::Fruit;

/// Draws the fruit that the marks name.
pub fn fruit(out: &mut dyn Out, marks: &Marks, says: &str) {
    let pen = &mut Pen { out };
    pen.svg("d", SIZE[0], SIZE[1], says);
    match marks.fruit {
        Fruit::WingedPair => dry::pair(pen),
        Fruit::WingedSingle => dry::single_wings(pen),
        Fruit::WingedRound => dry::round_wing(pen),
        Fruit::WingedCone => cones::cone(
            pen,
            cones::Cone {
                half: 44.0,
                top: 96.0,
                foot: 290.0,
                upright: true,
                rows: 7,
            },
        ),
        Fruit::Pod => dry::pods(pen, &[(130.0, 190.0), (228.0, 170.0)], 15.0),
        Fruit::PodLong => dry::pods(pen, &[(110.0, 306.0), (180.0, 314.0), (250.0, 296.0)], 6.0),
        Fruit::Capsule => dry::capsule(pen, false),
        Fruit::CapsuleWoody => dry::capsule(pen, true),
        Fruit::Cotton => dry::cotton(pen),
        Fruit::Berry | Fruit::Drupe => fleshy::drupes(pen, marks.fruit == Fruit::Berry),
        Fruit::Pome => fleshy::pome(pen),
        Fruit::Mulberry => fleshy::mulberry(pen),
        Fruit::NutBur => fleshy::bur(pen),
        Fruit::NutHusk => fleshy::husk(pen),
        Fruit::NutBract => dry::bract(pen),
        Fruit::Hop => dry::hop(pen),
        Fruit::Acorn => fleshy::acorn(pen),
        Fruit::Cone => cones::cone(
            pen,
            cones::Cone {
                half: 62.0,
                top: 78.0,
                foot: 330.0,
                upright: false,
                rows: 9,
            },
        ),
        Fruit::ConeUpright => cones::cone(
            pen,
            cones::Cone {
                half: 40.0,
                top: 46.0,
                foot: 300.0,
                upright: true,
                rows: 9,
            },
        ),
        Fruit::ConeRed => cones::red_cone(pen),
        Fruit::BerryCone => cones::berry_cone(pen),
        Fruit::WoodyCone => cones::small_cones(pen),
        Fruit::BirchCone => cones::catkin(pen),
        Fruit::BallFuzzy => fleshy::ball(pen, fleshy::Ball::Fuzzy),
        Fruit::BallSpiny => fleshy::ball(pen, fleshy::Ball::Spiny),
        Fruit::BallGreen => fleshy::ball(pen, fleshy::Ball::Green),
        Fruit::Grain => dry::grain(pen),
    }
    pen.end();
}

/// The twig that a fruit hangs from.
fn bough(pen: &mut Pen<'_>) {
    pen.shape(
        "s3",
        "M##C######",
        &[24.0, 44.0, 120.0, 26.0, 220.0, 48.0, 336.0, 34.0],
    );
}

fn ellipse(pen: &mut Pen<'_>, class: &str, [x, y]: Point, across: f64, down: f64) {
    // Four quarter curves; the factor makes them round.
    let (a, b) = (across * 0.5523, down * 0.5523);
    pen.shape(
        class,
        "M##C######C######C######C######Z",
        &[
            x,
            y - down,
            x + a,
            y - down,
            x + across,
            y - b,
            x + across,
            y,
            x + across,
            y + b,
            x + a,
            y + down,
            x,
            y + down,
            x - a,
            y + down,
            x - across,
            y + b,
            x - across,
            y,
            x - across,
            y - b,
            x - a,
            y - down,
            x,
            y - down,
        ],
    );
}
