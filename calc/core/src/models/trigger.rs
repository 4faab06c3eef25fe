//! What makes each caution speak: one small predicate for each row of cautions.csv that a question decides.

use crate::models::method::MethodLine;
use crate::models::native::Native;
use crate::models::reach::{Reach, ReachOutcome, nearer};
use crate::terms::constants::constants;
use crate::terms::method::{Level, Method};
use crate::terms::months::Months;
use crate::terms::place::Hemisphere;
use crate::terms::quantity::Slope;
use crate::terms::species::Trait;
use crate::terms::tree::{Condition, Sign, TargetKind, Tree};
use crate::terms::words::words;
use chrono::{Datelike, NaiveDate};

words! {
    /// What decides a caution, as the table says it.
    pub enum CautionInput {
        /// It stands with every tree.
        Always = "always",
        /// A question about a tree.
        Question = "from the question",
        /// The species, by a table of their names.
        Species = "from the species",
        /// A species that is not in the list yet.
        Unlisted = "none: no species of the list",
        /// A plan of many trees; a question about one tree never.
        Plan = "from a plan",
        /// Nothing that is asked: it goes into the line "check these too".
        Unasked = "none: a line under \"check these too\"",
    }
}

constants! {
    /// Constants of the cautions; content/rules/constants.csv says where each comes from.
    pub struct CautionConstants {
        /// At most so many in view.
        pub in_view: f64,
        /// The slope from which ground is steep to work on, percent.
        pub steep: f64,
    }
}

/// What a caution may look at.
pub struct CautionCase<'a> {
    /// The tree.
    pub tree: &'a Tree,
    /// Its half of the world.
    pub hemisphere: Hemisphere,
    /// State or country, where it was told.
    pub region: Option<&'a str>,
    /// The reach.
    pub reach: &'a Reach,
    /// The nine methods of the largest stem.
    pub methods: &'a [MethodLine],
    /// Method at the head.
    pub headline: Method,
    /// Whether the answer stops before any procedure.
    pub stopped: bool,
    /// The days that dates are judged on: the asked and the advised.
    pub days: &'a [NaiveDate],
    /// Whether one of them lies in oak-wilt months, where it is known, near, or taken to be.
    pub oak_wilt: bool,
    /// Who decides about oak wilt in the state; empty where no row says so.
    pub oak_authority: &'static str,
    /// Whether the ash borer is there or taken to be.
    pub ash_borer: bool,
    /// When fresh wood of elm breeds beetles.
    pub elm_beetles: Months,
    /// When fresh wood of pine does.
    pub pine_beetles: Months,
    /// Constants of the cautions.
    pub constants: &'a CautionConstants,
    /// Who decides about it in the state; empty where no row says so.
    pub ash_authority: &'static str,
    /// Whether laurel wilt is there, or no state was said.
    pub laurel_wilt: bool,
    /// Whether the species is native where the tree stands.
    pub native: Native,
}

impl CautionCase<'_> {
    fn has(&self, mark: Trait) -> bool {
        self.tree.species.has(mark)
    }

    /// Whether a table names the species for it.
    pub(super) fn named(&self, trigger: Trigger) -> bool {
        self.tree.species.cautions.contains(&trigger.id())
    }

    fn signs(&self, of: &[Sign]) -> bool {
        self.tree.signs.iter().any(|sign| of.contains(sign))
    }

    fn in_region(&self, is: fn(&str) -> bool) -> Option<bool> {
        self.region.map(is)
    }

    fn uk(&self) -> bool {
        self.in_region(|code| code == "GB" || code.starts_with("GB-")) == Some(true)
    }

    /// The United States or Canada, or nobody said where.
    fn america(&self) -> bool {
        self.in_region(|code| code.starts_with("US") || code.starts_with("CA")) != Some(false)
    }

    fn open(&self, method: Method) -> bool {
        let stands = |line: &MethodLine| line.method == method && line.level <= Level::Possible;
        self.methods.iter().any(stands)
    }

    fn judged(&self, wanted: ReachOutcome) -> bool {
        self.reach
            .targets
            .iter()
            .any(|target| target.outcome == Some(wanted))
    }

    /// Something of people stands nearer than this, metres.
    fn people_within(&self, metres: f64) -> bool {
        self.reach.targets.iter().any(|target| {
            target.kind.counts()
                && target.kind != TargetKind::Line
                && target
                    .distance_m
                    .is_some_and(|distance| nearer(distance, metres))
        })
    }

    /// Anything stands within two heights.
    fn target_within_two_heights(&self) -> bool {
        let near = |distance: f64| nearer(distance, self.reach.two_heights_m);
        self.reach
            .targets
            .iter()
            .any(|target| target.distance_m.is_some_and(near))
    }

    /// A day that is judged lies in the cautious months of a pest.
    fn flies(&self, beetles: &Months) -> bool {
        let hemisphere = self.hemisphere;
        let lies = |day: &NaiveDate| beetles.hold(day.month(), hemisphere);
        self.days.iter().any(lies)
    }
}

/// What decides a caution.
enum Decided {
    /// The question, by a predicate.
    Question(fn(&CautionCase<'_>) -> bool),
    /// The species that caution_species.csv names, and a predicate beside.
    Species(fn(&CautionCase<'_>) -> bool),
    /// It stands with every tree.
    Always,
    /// Only a plan of many trees.
    Plan,
    /// A species that is not in the list.
    Unlisted,
    /// Nothing that is asked: it stands in the line "check these too".
    Unasked,
}

macro_rules! cautions {
    ($($(#[$doc:meta])* $variant:ident = $id:literal => $decided:expr),+ $(,)?) => {
        /// What makes a caution speak, by the id of its row.
        #[derive(Clone, Copy, Debug, PartialEq, Eq)]
        pub enum Trigger { $($(#[$doc])* $variant),+ }

        impl Trigger {
            /// All of them, in the order of the table.
            pub const ALL: &'static [Self] = &[$(Self::$variant),+];

            /// The id of its row.
            #[must_use]
            pub fn id(self) -> &'static str {
                match self { $(Self::$variant => $id),+ }
            }

            /// The trigger of an id.
            #[must_use]
            pub fn parse(id: &str) -> Option<Self> {
                Self::ALL.iter().copied().find(|trigger| trigger.id() == id)
            }

            fn decided(self) -> Decided {
                use Decided::{Always, Plan, Question, Species, Unasked, Unlisted};
                match self { $(Self::$variant => $decided),+ }
            }
        }
    };
}

impl Trigger {
    /// What decides it, as the table says it.
    #[must_use]
    pub fn input(self) -> CautionInput {
        match self.decided() {
            Decided::Question(_) => CautionInput::Question,
            Decided::Species(_) => CautionInput::Species,
            Decided::Always => CautionInput::Always,
            Decided::Plan => CautionInput::Plan,
            Decided::Unlisted => CautionInput::Unlisted,
            Decided::Unasked => CautionInput::Unasked,
        }
    }

    /// Whether it speaks for a tree.
    #[must_use]
    pub fn speaks(self, case: &CautionCase<'_>) -> bool {
        match self.decided() {
            Decided::Question(holds) => holds(case),
            Decided::Species(holds) => case.named(self) && holds(case),
            Decided::Always | Decided::Unasked => true,
            Decided::Plan | Decided::Unlisted => false,
        }
    }
}

cautions! {
    /// It could reach what is to be kept. A small stem is cut or pulled, not left.
    Hz1 = "HZ1" => Question(|c| !c.reach.small && c.people_within(c.reach.height_m)),
    /// Inside the zone.
    Hz2 = "HZ2" => Question(|c| !c.reach.small && c.judged(ReachOutcome::Inside)),
    /// People out while work is under way.
    Hz3 = "HZ3" => Question(|c| c.reach.outcome != ReachOutcome::Line),
    /// A target downhill.
    Hz4 = "HZ4" => Question(|c| c.reach.targets.iter().any(|target| target.downhill)),
    /// It sheds limbs before it looks dead.
    Hz5 = "HZ5" => Always,
    /// Bark alone, no cut into the wood.
    Hz6 = "HZ6" => Question(|c| !c.stopped),
    /// Weak points; some count only with a target near.
    Hz7 = "HZ7" => Question(|c| {
        c.signs(&[Sign::Cavity, Sign::Cracks, Sign::Conks, Sign::HungLimbs, Sign::LeanToward])
            || c.target_within_two_heights() && c.signs(&[Sign::DeadTop, Sign::Vines, Sign::LeanAway])
    }),
    /// Wind, ice, lightning.
    Hz8 = "HZ8" => Unasked,
    /// Several stems.
    Hz9 = "HZ9" => Question(|c| c.tree.stems.len() > 1),
    /// A line within reach.
    Pl1 = "PL1" => Question(|c| c.reach.outcome == ReachOutcome::Line),
    /// A line near.
    Pl2 = "PL2" => Question(|c| c.reach.targets.iter().any(|target| target.kind == TargetKind::Line)),
    /// A branch on a line.
    Pl3 = "PL3" => Unasked,
    /// Digging.
    Pl4 = "PL4" => Question(|c| c.open(Method::PullOrDig) && !c.stopped),
    /// A chain saw.
    Ed1 = "ED1" => Question(|c| {
        matches!(c.headline, Method::Fell | Method::SawRing | Method::CutStump | Method::RepeatCutting)
    }),
    /// Hand tools.
    Ed2 = "ED2" => Question(|c| c.open(Method::BarkRing) || c.open(Method::Frill)),
    /// Alone.
    Ed3 = "ED3" => Unasked,
    /// Look up first.
    Ed4 = "ED4" => Always,
    /// A ladder.
    Ed5 = "ED5" => Unasked,
    /// Heat.
    Ed6 = "ED6" => Unasked,
    /// Ticks.
    Ed7 = "ED7" => Unasked,
    /// Plants that give a rash.
    Tx1 = "TX1" => Unasked,
    /// Sap of tree-of-heaven.
    Tx2 = "TX2" => Species(|_| true),
    /// Sap of the sumac family.
    Tx3 = "TX3" => Species(|_| true),
    /// Manchineel.
    Tx4 = "TX4" => Unlisted,
    /// Black locust.
    Tx5 = "TX5" => Species(|_| true),
    /// Oleander and yew.
    Tx6 = "TX6" => Species(|_| true),
    /// Dust.
    Tx7 = "TX7" => Question(|c| c.has(Trait::Dust)),
    /// Thorns.
    Th1 = "TH1" => Species(|_| true),
    /// Whose tree it is.
    Lw1 = "LW1" => Always,
    /// Rules of a town.
    Lw2 = "LW2" => Unasked,
    /// Water near.
    Lw3 = "LW3" => Unasked,
    /// The label of a herbicide.
    Lw4 = "LW4" => Question(|c| {
        Method::ALL.iter().any(|method| method.needs_herbicide() && c.open(*method))
    }),
    /// Nests.
    Lw5 = "LW5" => Always,
    /// Roosts of bats.
    Lw6 = "LW6" => Question(|c| {
        c.tree.condition == Condition::Dead
            || c.signs(&[Sign::Cavity])
            || c.has(Trait::BatBark)
            || c.tree.stems.iter().any(|stem| stem.live_share <= 0.0)
    }),
    /// Wood that is moved.
    Lw7 = "LW7" => Unasked,
    /// Protected trees of the United Kingdom.
    Lw8 = "LW8" => Question(|c| c.uk()),
    /// Felling licences of the United Kingdom.
    Lw9 = "LW9" => Question(|c| c.uk()),
    /// Bats of the United Kingdom.
    Lw10 = "LW10" => Question(|c| c.uk() && c.signs(&[Sign::Cavity, Sign::Cracks])),
    /// Native where it stands; elsewhere it stands in the line "check these too", for old and protected trees.
    Lw11 = "LW11" => Question(|_| true),
    /// Public land.
    Lw12 = "LW12" => Unasked,
    /// A wood, a forest, native vegetation.
    Lw13 = "LW13" => Unasked,
    /// Many trees of a stand.
    St1 = "ST1" => Plan,
    /// A steep slope.
    St2 = "ST2" => Question(|c| {
        let steep = |slope: Slope| slope.percent() >= c.constants.steep;
        c.tree.targets.iter().any(|target| target.slope.is_some_and(steep))
    }),
    /// Enough snags.
    St3 = "ST3" => Plan,
    /// Many patches.
    St4 = "ST4" => Plan,
    /// Oak wilt.
    Dz1 = "DZ1" => Question(|c| c.has(Trait::Oak) && c.oak_wilt),
    /// Emerald ash borer.
    Dz2 = "DZ2" => Question(|c| c.has(Trait::Ash) && c.ash_borer),
    /// Dutch elm disease, while its beetles fly.
    Dz3 = "DZ3" => Question(|c| c.has(Trait::Elm) && c.flies(&c.elm_beetles)),
    /// Engraver beetles, while they fly.
    Dz4 = "DZ4" => Question(|c| {
        c.has(Trait::Pine) && c.tree.same_genus_near != Some(false) && c.flies(&c.pine_beetles)
    }),
    /// Laurel wilt, in the south-eastern states.
    Dz5 = "DZ5" => Species(|c| c.laurel_wilt),
    /// Spotted lanternfly, which is in North America.
    Dz6 = "DZ6" => Species(|c| c.america()),
    /// Wilted cherry leaves.
    Dz7 = "DZ7" => Species(|_| true),
    /// Spruce bark beetles.
    Dz8 = "DZ8" => Species(|_| true),
}
