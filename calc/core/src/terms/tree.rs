//! A tree as the models look at it: its stems, what it could hit, its health, what is wanted of it. Nothing of a form.

use crate::terms::quantity::{BarkThickness, Dbh, Slope, TargetDistance, Voltage};
use crate::terms::words::words;
use serde::Serialize;

/// One stem.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stem {
    /// Diameter at breast height.
    pub dbh: Dbh,
    /// Whether a girth was given and divided by pi.
    pub from_girth: bool,
    /// Share of the bark that is alive, 0 to 1.
    pub live_share: f64,
    /// Measured bark, one side.
    pub bark: Option<BarkThickness>,
}

/// Something the tree could hit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Target {
    /// What it is.
    pub kind: TargetKind,
    /// How far from the trunk's centre; none when not known.
    pub distance: Option<TargetDistance>,
    /// Slope of the ground towards it.
    pub slope: Option<Slope>,
    /// Whether it lies downhill.
    pub downhill: bool,
    /// Voltage of a line, when known.
    pub voltage: Option<Voltage>,
}

words! {
    /// Where it grew.
    pub enum Setting {
        /// In the woods.
        Woods,
        /// Yard, street, hedgerow.
        Open,
    }
}
words! {
    /// Kind of thing it could hit.
    pub enum TargetKind {
        /// A building.
        Building,
        /// A road or street.
        Road,
        /// A path or place that people use.
        Path,
        /// A power or phone line.
        Line,
        /// A property line or a neighbour's tree.
        PropertyLine,
        /// A fence or field.
        Fence,
        /// A tree to keep.
        KeepTree,
    }
}
words! {
    /// Signs on the tree.
    pub enum Sign {
        /// A cavity.
        Cavity,
        /// Cracks.
        Cracks,
        /// Fungus at the base.
        Conks,
        /// Hung limbs.
        HungLimbs,
        /// A lean toward a target.
        LeanToward,
        /// A lean away from it.
        LeanAway,
        /// A dead top.
        DeadTop,
        /// Vines into the crown.
        Vines,
    }
}
words! {
    /// Alive, declining, dead.
    pub enum Condition {
        /// Alive.
        Alive,
        /// Declining.
        Declining,
        /// Dead.
        Dead,
    }
}
words! {
    /// Whether herbicide may be used.
    pub enum Herbicide {
        /// Nothing was said.
        NotSaid,
        /// No.
        No,
        /// By a licensed applicator.
        Licensed,
        /// Yes.
        Yes,
    }
}
words! {
    /// An answer to the line question.
    pub enum Reply {
        /// Yes.
        Yes,
        /// No.
        No,
        /// Can't tell.
        CantTell,
    }
}
words! {
    /// Growth in an ordinary year.
    pub enum Vigour {
        /// Slow.
        Slow,
        /// Ordinary.
        Ordinary,
        /// Fast.
        Fast,
    }
}
words! {
    /// How long it has been dry.
    pub enum Dry {
        /// It has not.
        None,
        /// Two weeks.
        TwoWeeks,
        /// A month or more.
        Month,
    }
}
words! {
    /// Limbs below the ring.
    pub enum Limbs {
        /// None.
        None,
        /// Some.
        Some,
        /// Many.
        Many,
    }
}
words! {
    /// What was seen of the leaves.
    pub enum Stage {
        /// Half the buds are open.
        BudsOpen,
        /// Leaves are nearly full size.
        LeavesFull,
        /// The first leaf.
        FirstLeaf,
    }
}

/// What the work is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Goal {
    /// A standing dead tree for wildlife.
    Wildlife,
    /// Only to kill it.
    Kill,
    /// To spare one stem of several: its index.
    SpareOne(usize),
}

impl Goal {
    /// The words taken.
    pub const WORDS: &'static [&'static str] = &["wildlife", "kill", "spare_one"];
}
