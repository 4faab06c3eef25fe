//! The words that fields take. One list makes the type, the reader and the message.

use serde::{Serialize, Serializer};

macro_rules! words {
    ($(#[$doc:meta])* $name:ident { $($(#[$vdoc:meta])* $variant:ident = $word:literal),+ $(,)? }) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
        #[cfg_attr(
            feature = "schema",
            derive(schemars::JsonSchema, ts_rs::TS),
            serde(rename_all = "snake_case")
        )]
        pub enum $name { $($(#[$vdoc])* $variant),+ }

        impl $name {
            /// The words taken, in order.
            pub const WORDS: &'static [&'static str] = &[$($word),+];
            /// All values, in the order of the words.
            pub const ALL: &'static [Self] = &[$(Self::$variant),+];

            /// The value of a word.
            #[must_use]
            pub fn parse(word: &str) -> Option<Self> {
                Self::WORDS.iter().position(|known| *known == word).map(|at| Self::ALL[at])
            }

            /// The word of a value.
            #[must_use]
            pub fn word(self) -> &'static str {
                match self { $(Self::$variant => $word),+ }
            }
        }

        impl Serialize for $name {
            fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                serializer.serialize_str(self.word())
            }
        }
    };
}

words!(
    /// Where it grew.
    Setting {
        /// In the woods.
        Woods = "woods",
        /// Yard, street, hedgerow.
        Open = "open",
    }
);
words!(
    /// Kind of thing it could hit.
    TargetKind {
        /// A building.
        Building = "building",
        /// A road or street.
        Road = "road",
        /// A path or place that people use.
        Path = "path",
        /// A power or phone line.
        Line = "line",
        /// A property line or a neighbour's tree.
        PropertyLine = "property_line",
        /// A fence or field.
        Fence = "fence",
        /// A tree to keep.
        KeepTree = "keep_tree",
    }
);
words!(
    /// Signs on the tree.
    Sign {
        /// A cavity.
        Cavity = "cavity",
        /// Cracks.
        Cracks = "cracks",
        /// Fungus at the base.
        Conks = "conks",
        /// Hung limbs.
        HungLimbs = "hung_limbs",
        /// A lean toward a target.
        LeanToward = "lean_toward",
        /// A lean away from it.
        LeanAway = "lean_away",
        /// A dead top.
        DeadTop = "dead_top",
        /// Vines into the crown.
        Vines = "vines",
    }
);
words!(
    /// Alive, declining, dead.
    Condition {
        /// Alive.
        Alive = "alive",
        /// Declining.
        Declining = "declining",
        /// Dead.
        Dead = "dead",
    }
);
words!(
    /// Whether herbicide may be used.
    Herbicide {
        /// Nothing was said.
        NotSaid = "not_said",
        /// No.
        No = "no",
        /// By a licensed applicator.
        Licensed = "licensed",
        /// Yes.
        Yes = "yes",
    }
);
words!(
    /// An answer to the line question.
    Reply {
        /// Yes.
        Yes = "yes",
        /// No.
        No = "no",
        /// Can't tell.
        CantTell = "cant_tell",
    }
);
words!(
    /// Growth in an ordinary year.
    Vigour {
        /// Slow.
        Slow = "slow",
        /// Ordinary.
        Ordinary = "ordinary",
        /// Fast.
        Fast = "fast",
    }
);
words!(
    /// How long it has been dry.
    Dry {
        /// It has not.
        None = "none",
        /// Two weeks.
        TwoWeeks = "two_weeks",
        /// A month or more.
        Month = "month",
    }
);
words!(
    /// Limbs below the ring.
    Limbs {
        /// None.
        None = "none",
        /// Some.
        Some = "some",
        /// Many.
        Many = "many",
    }
);
words!(
    /// What was seen of the leaves.
    Stage {
        /// Half the buds are open.
        BudsOpen = "buds_open",
        /// Leaves are nearly full size.
        LeavesFull = "leaves_full",
        /// The first leaf.
        FirstLeaf = "first_leaf",
    }
);

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

words!(
    /// What may be seen at a visit.
    Seen {
        /// New bark across the ring, or a strip that was missed.
        Bridge = "bridge",
        /// Sprouts below the ring.
        Sprouts = "sprouts",
        /// Suckers from the roots.
        Suckers = "suckers",
        /// A full crown.
        CrownFull = "crown_full",
        /// A thin crown.
        CrownThin = "crown_thin",
        /// A bare crown in the growing season.
        CrownBare = "crown_bare",
        /// Fungus, or limbs on the ground.
        Decay = "decay",
        /// Nothing of all this.
        Nothing = "nothing",
    }
);
words!(
    /// How a height was measured from the ground.
    HeightBy {
        /// By the ratio of shadows.
        Shadow = "shadow",
        /// By a distance and two angles.
        Angles = "angles",
        /// By a stick that covers the tree.
        Stick = "stick",
    }
);
