//! A tree as the models look at it: its stems, what it could hit, its health, what is wanted of it. Nothing of a form.

use crate::terms::place::Grown;
use crate::terms::quantity::{BarkThickness, Dbh, Slope, TargetDistance, TotalHeight, Voltage};
use crate::terms::species::Species;
use crate::terms::tighten::Tighten;
use crate::terms::words::words;
use serde::Serialize;

/// A tree: what the models look at.
#[derive(Clone, Debug)]
pub struct Tree {
    /// The species.
    pub species: &'static Species,
    /// One stem or more, in the order given.
    pub stems: Vec<Stem>,
    /// Woods or open-grown.
    pub setting: Setting,
    /// Where it grew, as far as bark and height differ by it.
    pub grown: Grown,
    /// Measured total height.
    pub height: Option<TotalHeight>,
    /// Whether the asker confirmed a height that looks odd for this species and size.
    pub height_confirmed: bool,
    /// What it could hit.
    pub targets: Vec<Target>,
    /// Any overhead line within two heights?
    pub line_within_reach: Option<Reply>,
    /// Nothing that counts stands within two heights.
    pub none_in_reach: bool,
    /// Alive, declining, dead.
    pub condition: Condition,
    /// Signs of damage or lean.
    pub signs: Vec<Sign>,
    /// How fast it grows.
    pub vigour: Vigour,
    /// Limby stem below the ring.
    pub limbs: Limbs,
    /// Whether every stem of the clone can be ringed.
    pub whole_clone: Option<bool>,
    /// Whether living trees of its genus stand near (pines and elms).
    pub same_genus_near: Option<bool>,
    /// What it is for.
    pub goal: Goal,
    /// Whether herbicide may be used.
    pub herbicide: Herbicide,
    /// What the group that asks makes more cautious; nothing without a group.
    pub tighten: Tighten,
}

impl Tree {
    /// The thickest stem: it decides height and reach.
    #[must_use]
    pub fn largest(&self) -> &Stem {
        // No reader lets an empty list through, so the first stem is there. Ties go by bark and live share, so that
        // the order of the list decides nothing.
        let key = |stem: &Stem| {
            let bark = stem.bark.map_or(0.0, |bark| bark.mm());
            [stem.dbh.mm(), stem.live_share, bark]
        };
        self.stems.iter().fold(&self.stems[0], |largest, stem| {
            if key(stem) > key(largest) {
                stem
            } else {
                largest
            }
        })
    }

    /// The stem that the answer speaks of: the thickest living one that is to die. Where none is left alive, the
    /// thickest that is not spared. Height and reach stay with the largest of all.
    #[must_use]
    pub fn heading(&self) -> &Stem {
        let key = |stem: &Stem| {
            let alive = f64::from(u8::from(stem.live_share > 0.0));
            let bark = stem.bark.map_or(0.0, |bark| bark.mm());
            [alive, stem.dbh.mm(), stem.live_share, bark]
        };
        let mut heading: Option<&Stem> = None;
        for (at, stem) in self.stems.iter().enumerate() {
            if self.spared() != Some(at) && heading.is_none_or(|known| key(stem) > key(known)) {
                heading = Some(stem);
            }
        }
        heading.unwrap_or(&self.stems[0])
    }

    /// Whether every stem that may die is dead already, so that nothing is left to ring.
    #[must_use]
    pub fn nothing_left(&self) -> bool {
        self.condition == Condition::Dead || self.heading().live_share <= 0.0
    }

    /// Which stem is spared, when the goal says so.
    #[must_use]
    pub fn spared(&self) -> Option<usize> {
        match self.goal {
            Goal::SpareOne(stem) => Some(stem),
            Goal::Wildlife | Goal::Kill => None,
        }
    }
}

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
    #[derive(Default)]
    pub enum Setting {
        /// In the woods.
        #[default]
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

impl TargetKind {
    /// Whether it is people, property or a line: what stops, and what completes the list. A fence, a field and a tree to
    /// keep may be damaged; nobody is hurt.
    #[must_use]
    pub fn counts(self) -> bool {
        !matches!(self, Self::Fence | Self::KeepTree)
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
    #[derive(Default)]
    pub enum Condition {
        /// Alive.
        #[default]
        Alive,
        /// Declining.
        Declining,
        /// Dead.
        Dead,
    }
}
words! {
    /// Whether herbicide may be used.
    #[derive(Default)]
    pub enum Herbicide {
        /// Nothing was said.
        #[default]
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
    /// How fast it grows in an ordinary year.
    #[derive(Default)]
    pub enum Vigour {
        /// Slow: the bark binds earlier.
        Slow,
        /// Ordinary.
        #[default]
        Ordinary,
        /// Fast: the bark binds later.
        Fast,
    }
}
words! {
    /// How long it has been dry.
    #[derive(Default)]
    pub enum DrySpell {
        /// It has not.
        #[default]
        None,
        /// Two weeks.
        TwoWeeks,
        /// A month or more.
        Month,
    }
}
words! {
    /// Limbs below the ring.
    #[derive(Default)]
    pub enum Limbs {
        /// None.
        #[default]
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
        /// Half the buds are open: the day itself is the budbreak.
        BudsOpen,
        /// Leaves are nearly full size (75 %): the budbreak was 22 days before.
        LeavesFull,
        /// The first leaf was seen: half the buds follow 4 days later.
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
