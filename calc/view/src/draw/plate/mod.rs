//! Plates of a tree: its leaf, a twig, its fruit and its bark, drawn from the marks of a table and from nothing else, so
//! that two trees with the same marks look the same. No portrait: a shape stands for its word.
//!
//! ```text
//! leaf(out, &marks, says)    one whole leaf: blade, leaflets, needles, fan …
//! twig(out, &marks, says)    how leaves stand, with buds and thorns
//! fruit(out, &marks, says)   one fruit or two
//! bark(out, &marks, says)    a stem of an old tree
//! ```
//!
//! All four are 360 wide and 372 high; `says` is the name for those who do not see them.

mod bark;
mod blade;
mod compound;
mod edge;
mod fruit;
mod needle;
mod side;
mod twig;

pub use bark::bark;
pub use fruit::fruit;
pub use twig::twig;

use super::pen::Pen;
use crate::out::Out;
use calc::terms::leaf::{
    Arrangement, BarkPattern, Base, Buds, Fruit, LeafKind, Lobing, Margin, Shape, Thorns, Tip,
};

/// Width and height of every plate.
pub const SIZE: [f64; 2] = [360.0, 372.0];

/// The marks of one tree that are drawn. Where a table has two words for one mark, the first is drawn.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Marks {
    /// How leaves stand.
    pub arrangement: Arrangement,
    /// What a leaf is.
    pub kind: LeafKind,
    /// How many leaflets, fewest and most.
    pub leaflets: Option<[f64; 2]>,
    /// The edge of a leaf or leaflet.
    pub margin: Margin,
    /// How it is lobed, and the most lobes.
    pub lobes: (Lobing, f64),
    /// Outline of a leaf or leaflet.
    pub shape: Shape,
    /// Its foot.
    pub base: Base,
    /// Its tip.
    pub tip: Tip,
    /// Whether white sap runs out of a snapped stalk.
    pub milky: bool,
    /// Thorns.
    pub thorns: Thorns,
    /// Winter buds.
    pub buds: Buds,
    /// Fruit.
    pub fruit: Fruit,
    /// Bark of an old stem.
    pub bark: BarkPattern,
}

impl Marks {
    /// Whether a leaf is made of leaflets.
    #[must_use]
    pub fn is_compound(&self) -> bool {
        matches!(
            self.kind,
            LeafKind::Trifoliate | LeafKind::Pinnate | LeafKind::Bipinnate
        )
    }

    /// One leaflet of a compound leaf, as a leaf of its own.
    #[must_use]
    pub fn leaflet(&self) -> Self {
        Self {
            kind: LeafKind::Simple,
            lobes: (Lobing::None, 0.0),
            ..*self
        }
    }
}

/// A point of a drawing.
pub(crate) type Point = [f64; 2];

/// The point so far from another, `degrees` to the right of straight up.
fn polar([x, y]: Point, degrees: f64, far: f64) -> Point {
    let turn = degrees.to_radians();
    [x + libm::sin(turn) * far, y - libm::cos(turn) * far]
}

/// Draws one leaf.
pub fn leaf(out: &mut dyn Out, marks: &Marks, says: &str) {
    let pen = &mut Pen { out };
    pen.svg("d", SIZE[0], SIZE[1], says);
    match marks.kind {
        LeafKind::Simple => {
            let place = blade::Place::new([180.0, 282.0], 0.0, 262.0 / blade::reach(marks));
            blade::draw(pen, marks, &place);
            stalk(pen, marks);
        }
        LeafKind::Trifoliate | LeafKind::Pinnate | LeafKind::Bipinnate => {
            compound::draw(pen, marks)
        }
        LeafKind::Needle => needle::needles(pen, marks),
        LeafKind::Scale => needle::scales(pen),
        LeafKind::Blade => needle::grass(pen),
        LeafKind::Sword => needle::sword(pen, marks),
        LeafKind::Fan => needle::fan(pen),
        LeafKind::Feather => needle::feather(pen),
    }
    pen.end();
}

/// The stalk of a blade, with a drop where its sap is white.
fn stalk(pen: &mut Pen<'_>, marks: &Marks) {
    if marks.base == Base::Stalkless {
        return;
    }
    pen.shape(
        "s3",
        "M##C######",
        &[180.0, 282.0, 181.0, 306.0, 174.0, 330.0, 168.0, 352.0],
    );
    if marks.milky {
        pen.circle("s fp", 168.0, 358.0, 6.0);
    }
}
