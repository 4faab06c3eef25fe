//! The conditions of the method table: one small predicate each. The table itself is data, and so are the sizes of stem
//! that a row speaks of.

use crate::models::reach::{ReachOutcome, Surroundings};
use crate::terms::cite::Cite;
use crate::terms::constants::constants;
use crate::terms::method::Cell;
use crate::terms::months::{Months, YearStretch};
use crate::terms::quantity::inches;
use crate::terms::species::{Group, SproutVigor, Suitability, Trait};
use crate::terms::tree::Tree;
use crate::terms::tree::{Goal, Herbicide};

constants! {
    /// Constants of the methods; content/rules/constants.csv says where each comes from.
    pub struct MethodConstants {
        /// The smallest dbh for cavities, inches: a thinner snag offers feeding wood only, and ties change.
        pub cavities_in: f64,
        /// How near a limit of size both sides are named, as a share of it.
        pub near_limit: f64,
        /// The smallest limit at breast height that is named, inches.
        pub near_from_in: f64,
        /// Months of strong flow of sap, in which cuts with herbicide wash out.
        pub sap_flow: Months,
        /// Months in which an oak may be cut into the wood.
        pub oak_saw: Months,
        /// When herbicide suits tree-of-heaven.
        pub heaven: YearStretch,
    }
}

/// The sizes of stem that a row of the table speaks of, inches.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sizes {
    /// The group that they are for; none is for every group without sizes of its own.
    pub group: Option<Group>,
    /// Whether the base is meant, not breast height.
    pub at_base: bool,
    /// The smallest, and whether it is itself one of them.
    pub from: Option<(f64, bool)>,
    /// The largest, and whether it is itself one of them.
    pub to: Option<(f64, bool)>,
    /// From so many stems on any size counts.
    pub or_stems: Option<u8>,
}

impl Sizes {
    /// Those of a row that count for a group; none where the row speaks of every size.
    #[must_use]
    pub fn of(sizes: &[Self], group: Option<Group>) -> Option<&Self> {
        let own = |wanted: Option<Group>| sizes.iter().find(|sizes| sizes.group == wanted);
        own(group).or_else(|| own(None))
    }

    /// The limits, inches.
    pub fn limits(&self) -> impl Iterator<Item = f64> {
        [self.from, self.to].into_iter().flatten().map(|(at, _)| at)
    }

    /// Whether a stem of these diameters, at breast height and at its base, is one of them.
    #[must_use]
    pub fn hold(&self, dbh_in: f64, base_in: f64) -> bool {
        let inches = if self.at_base { base_in } else { dbh_in };
        let above = |(at, with): (f64, bool)| inches > at || with && inches == at;
        let below = |(at, with): (f64, bool)| inches < at || with && inches == at;
        self.from.is_none_or(above) && self.to.is_none_or(below)
    }
}

/// Nine cells of one row of the method table.
#[derive(Clone, Copy, Debug)]
pub struct MethodRule {
    /// Name of the row; also the reason that is kept.
    pub id: &'static str,
    /// Its condition.
    pub condition: RowCondition,
    /// The sizes of stem that it speaks of.
    pub sizes: &'static [Sizes],
    /// What the row does to each method, in the order of [`crate::terms::method::Method::ALL`].
    pub cells: [Cell; 9],
    /// What it rests on.
    pub cites: &'static [Cite],
}

/// The rows of the table whose sizes a stem has: bit 0 is the first row.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct RowsOfSize(u128);

// Each condition has one row.
const _: () = assert!(RowCondition::IDS.len() <= u128::BITS as usize);

impl RowsOfSize {
    /// Those of a stem of a tree, by its diameter and that of its base, inches.
    #[must_use]
    pub fn of(rows: &[MethodRule], tree: &Tree, dbh_in: f64, base_in: f64) -> Self {
        let (group, stems) = (tree.species.group, tree.stems.len());
        let fits = |row: &MethodRule| {
            Sizes::of(row.sizes, Some(group)).is_none_or(|sizes| {
                let many = |least: u8| stems >= usize::from(least);
                sizes.hold(dbh_in, base_in) || sizes.or_stems.is_some_and(many)
            })
        };
        let bit = |at: usize| 1_u128.checked_shl(at as u32).unwrap_or(0);
        let fitting = rows.iter().enumerate().filter(|(_, row)| fits(row));
        Self(fitting.fold(0, |all, (at, _)| all | bit(at)))
    }

    /// Whether the row at a place is one of them.
    #[must_use]
    pub fn hold(self, at: usize) -> bool {
        self.0
            .checked_shr(at as u32)
            .is_some_and(|bits| bits & 1 == 1)
    }
}

/// What a day's part of the year says to the methods. They look at nothing else of a day but whether the bark slips, so
/// days of one part stand alike.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct PartOfYear {
    /// Heavy flow of sap.
    pub sap_flow: bool,
    /// A month in which an oak may be cut into the wood.
    pub oak_saw: bool,
    /// Herbicide suits tree-of-heaven.
    pub heaven: bool,
    /// Fresh wood of pine breeds beetles.
    pub pine_beetles: bool,
    /// The group cuts no ring.
    pub group_month: bool,
    /// The oak-wilt months of the region.
    pub oak_wilt: bool,
    /// The oak-wilt months of a region that oak wilt is near.
    pub oak_near: bool,
}

/// One stem on one day: everything that a condition may look at.
#[derive(Clone, Copy, Debug)]
pub struct Case<'a> {
    /// The tree.
    pub tree: &'a Tree,
    /// The diameter of the stem, mm: the table looks at the rows of its size instead.
    pub dbh_mm: f64,
    /// The base over dbh.
    pub base_over_dbh: f64,
    /// Constants of the methods.
    pub constants: &'a MethodConstants,
    /// The rows of its size: that of the stem, or of the other side of a size limit.
    pub sizes: RowsOfSize,
    /// Whether it is larger than the group leaves to volunteers.
    pub over_group_size: bool,
    /// Whether it is dead.
    pub dead: bool,
    /// What of the reach counts beside its outcome.
    pub surroundings: Surroundings,
    /// What the reach comes to, or what it would come to under an open condition.
    pub outcome: ReachOutcome,
    /// The part of the year.
    pub part: PartOfYear,
    /// Whether the bark slips well enough to ring: none when the day is left open.
    pub slips: Option<bool>,
    /// Whether the ash borer is in the region, near it, or taken to be.
    pub ash_borer: bool,
    /// What is said of herbicide, or taken as said.
    pub herbicide: Herbicide,
    /// Whether nobody knows yet that no line is within reach.
    pub line_open: bool,
    /// Whether nothing but leaving it stands otherwise, so that cutting and cutting again is all there is.
    pub last_resort: bool,
    /// Whether every stem of the clone can be ringed.
    pub whole_clone: Option<bool>,
    /// Whether an unknown species is taken to be one that a ring suits.
    pub name_known: bool,
    /// Whether an unknown species is taken to be one that a ring does not suit.
    pub name_against: bool,
    /// Whether the months of the beetles and of the group are left out, to see the ring apart from its months.
    pub ignore_months: bool,
}

/// All that differs between the cases of one tree that the table is asked about: equal ones stand alike.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct CaseKey {
    sizes: RowsOfSize,
    part: PartOfYear,
    surroundings: Surroundings,
    outcome: ReachOutcome,
    herbicide: Herbicide,
    slips: Option<bool>,
    whole_clone: Option<bool>,
    flags: [bool; 8],
}

impl Case<'_> {
    /// Gives the stem another diameter.
    pub fn set_size(&mut self, rows: &[MethodRule], dbh_mm: f64) {
        self.dbh_mm = dbh_mm;
        let dbh_in = inches(dbh_mm);
        self.sizes = RowsOfSize::of(rows, self.tree, dbh_in, dbh_in * self.base_over_dbh);
        self.over_group_size = self.tree.tighten.too_large(dbh_mm);
    }

    /// What tells it from other cases of the same tree.
    #[must_use]
    pub fn key(&self) -> CaseKey {
        // Field by field, so that a new one is not forgotten. The sizes hold what counts of the diameter.
        let Self {
            tree: _,
            dbh_mm: _,
            base_over_dbh: _,
            constants: _,
            sizes,
            over_group_size,
            dead,
            surroundings,
            outcome,
            part,
            slips,
            ash_borer,
            herbicide,
            line_open,
            last_resort,
            whole_clone,
            name_known,
            name_against,
            ignore_months,
        } = *self;
        CaseKey {
            sizes,
            part,
            surroundings,
            outcome,
            herbicide,
            slips,
            whole_clone,
            flags: [
                over_group_size,
                dead,
                ash_borer,
                line_open,
                last_resort,
                name_known,
                name_against,
                ignore_months,
            ],
        }
    }
}

impl Case<'_> {
    fn has(&self, mark: Trait) -> bool {
        self.tree.species.has(mark)
    }

    fn class(&self, class: Suitability) -> bool {
        self.tree.species.suitability == class
    }

    fn suckers(&self) -> bool {
        self.tree.species.suckering == SproutVigor::Strong
    }

    /// A winter month outside the oak-wilt months: an oak is cut into the wood only then.
    fn winter_saw(&self) -> bool {
        self.part.oak_saw && !self.part.oak_wilt && !self.part.oak_near
    }

    fn sprouter(&self) -> bool {
        let species = self.tree.species;
        species.group != Group::Conifer
            && species.group != Group::Monocot
            && (species.basal >= SproutVigor::Moderate
                || species.suckering >= SproutVigor::Moderate)
    }

    fn bites(&self) -> bool {
        matches!(self.herbicide, Herbicide::Licensed | Herbicide::Yes)
    }

    fn crown_sprouts(&self) -> bool {
        self.class(Suitability::NotAlone) && !self.suckers()
    }
}

macro_rules! conditions {
    ($($(#[$doc:meta])* $variant:ident = $id:literal => $holds:expr),+ $(,)?) => {
        /// A condition of the table, by the name that the table gives it.
        #[derive(Clone, Copy, Debug, PartialEq, Eq)]
        pub enum RowCondition { $($(#[$doc])* $variant),+ }

        impl RowCondition {
            /// Every condition's name, for the check that each has a row and a case.
            pub const IDS: &'static [&'static str] = &[$($id),+];

            /// All of them, in the order of their names.
            pub const ALL: &'static [Self] = &[$(Self::$variant),+];

            /// Its name.
            #[must_use]
            pub fn id(self) -> &'static str {
                match self { $(Self::$variant => $id),+ }
            }

            /// The condition of a name.
            #[must_use]
            pub fn parse(id: &str) -> Option<Self> {
                match id { $($id => Some(Self::$variant),)+ _ => None }
            }

            /// Whether it holds for a case, its sizes apart.
            #[must_use]
            pub fn holds(self, case: &Case<'_>) -> bool {
                match self {
                    $(Self::$variant => {
                        let holds: fn(&Case<'_>) -> bool = $holds;
                        holds(case)
                    })+
                }
            }
        }
    };
}

conditions! {
    /// Every tree.
    Always = "always" => |_| true,
    /// Every tree but a small conifer.
    AlwaysFell = "always_fell" => |_| true,
    /// Over 6 in.
    OverSix = "over_6" => |_| true,
    /// Palm, bamboo, yucca.
    NoRing = "no_ring_to_cut" => |c| c.tree.species.group == Group::Monocot,
    /// A line.
    Line = "line" => |c| c.outcome == ReachOutcome::Line,
    /// A professional.
    Professional = "professional" => |c| c.outcome == ReachOutcome::Professional,
    /// The line question is open.
    LineOpen = "line_open" => |c| c.line_open,
    /// Inside.
    Inside = "inside" => |c| c.outcome == ReachOutcome::Inside,
    /// Inside, herbicide on a tree that stays standing.
    InsideHerbicide = "inside_herbicide" => |c| c.outcome == ReachOutcome::Inside && !c.has(Trait::TreeOfHeaven),
    /// Inside, tree-of-heaven up to 6 in: killed standing, and cut down dead 30 days later.
    InsideHeaven = "inside_heaven" => |c| c.outcome == ReachOutcome::Inside && c.has(Trait::TreeOfHeaven),
    /// Inside, a larger tree-of-heaven.
    InsideHeavenLarge = "inside_heaven_over_6" => |c| c.outcome == ReachOutcome::Inside && c.has(Trait::TreeOfHeaven),
    /// Inside, over 6 in.
    InsideOverSix = "inside_over_6" => |c| c.outcome == ReachOutcome::Inside,
    /// Hollow with nothing near.
    Hollow = "hollow_alone" => |c| c.surroundings.hollow_alone && c.outcome <= ReachOutcome::ClearPeopleOut,
    /// Follow-up, but for the mulberry.
    Followup = "followup" => |c| c.class(Suitability::Followup) && !c.has(Trait::SawRingTried),
    /// The mulberry.
    FollowupTried = "followup_saw_tried" => |c| c.class(Suitability::Followup) && c.has(Trait::SawRingTried),
    /// Conditional, whatever the ring.
    Conditional = "conditional" => |c| c.class(Suitability::Conditional),
    /// Conditional, a cut into the wood; oaks have rows of their own.
    ConditionalSaw = "conditional_saw" => |c| c.class(Suitability::Conditional) && !c.has(Trait::Oak),
    /// Conditional clone, not known to be ringed whole.
    CloneOpen = "clone_not_known" => |c| c.class(Suitability::Conditional) && c.suckers()
        && c.whole_clone != Some(true),
    /// Conditional by its form: it sprouts from below.
    ConditionOpen = "sprouts_below" => |c| c.class(Suitability::Conditional) && !c.suckers()
        && ![Trait::Oak, Trait::Ash, Trait::AmericanElm].iter().any(|mark| c.has(*mark)),
    /// Conditional clone that can't be ringed whole.
    CloneNot = "clone_not_whole" => |c| c.class(Suitability::Conditional) && c.suckers() && c.whole_clone == Some(false),
    /// Aspens.
    Aspen = "suitable_clone" => |c| c.class(Suitability::Suitable) && c.suckers() && c.whole_clone != Some(true),
    /// Aspens that can't be ringed whole.
    AspenNot = "suitable_clone_not_whole" => |c| c.class(Suitability::Suitable) && c.suckers() && c.whole_clone == Some(false),
    /// Aspens, other methods.
    AspenOther = "suitable_clone_other" => |c| c.class(Suitability::Suitable) && c.suckers(),
    /// Not alone, no guidance for a ring.
    NotAlone = "not_alone" => |c| c.class(Suitability::NotAlone)
        && !(c.has(Trait::RingGuidance) && c.herbicide == Herbicide::No),
    /// Not alone, guidance published and no herbicide.
    NotAloneGuided = "not_alone_guided" => |c| c.class(Suitability::NotAlone)
        && c.has(Trait::RingGuidance) && c.herbicide == Herbicide::No,
    /// Not alone, saw ring never tried.
    NotAloneSaw = "not_alone_saw" => |c| c.class(Suitability::NotAlone) && !c.has(Trait::SawRingTried),
    /// Chinaberry.
    NotAloneTried = "not_alone_saw_tried" => |c| c.class(Suitability::NotAlone) && c.has(Trait::SawRingTried),
    /// Suckers: felling.
    Suckers = "suckers" => |c| c.suckers(),
    /// Suckers: pulling a thicker base.
    SuckersBase = "suckers_base" => |c| c.suckers(),
    /// Suckers: cutting alone, while anything else stands.
    SuckersCut = "suckers_cut" => |c| c.suckers() && c.tree.species.group != Group::Monocot
        && (!c.last_resort || c.has(Trait::TreeOfHeaven)),
    /// Sprouts from the crown: felling, while anything else stands.
    CrownFell = "crown_fell" => |c| c.crown_sprouts() && !c.last_resort,
    /// A stem of the clump is spared.
    StemSpared = "stem_spared" => |c| c.tree.spared().is_some(),
    /// Siberian elm.
    DeepCut = "deep_cut_resprouts" => |c| c.has(Trait::DeepCutResprouts),
    /// Unknown species.
    Unknown = "unknown_species" => |c| c.tree.species.unknown
        && c.tree.species.group != Group::Monocot && !c.name_known,
    /// Unknown species, taken to be one that a ring does not suit.
    NameAgainst = "unknown_species_against" => |c| c.tree.species.unknown && c.name_against,
    /// White oaks and hickories.
    Doubted = "ring_doubted" => |c| c.has(Trait::WhiteOak) || c.has(Trait::Hickory),
    /// Hickory, cut into the wood.
    HickorySaw = "hickory_saw_ring" => |c| c.has(Trait::Hickory),
    /// Oak, cut into the wood while it grows or in its oak-wilt months.
    OakSaw = "oak_saw_ring" => |c| c.has(Trait::Oak) && !c.winter_saw(),
    /// Oak, cut into the wood in winter.
    OakSawWinter = "oak_saw_ring_winter" => |c| c.has(Trait::Oak) && c.winter_saw(),
    /// Shrub with many or thin stems.
    ThinShrub = "thin_shrub" => |c| c.tree.species.group == Group::Shrub,
    /// Under 1 in.
    UnderOne = "under_1" => |_| true,
    /// 1 to 2.5 in.
    OneToTwoHalf = "1_to_2_5" => |_| true,
    /// 1 to 2 in.
    OneToTwo = "1_to_2" => |_| true,
    /// Conifer under 6 in.
    SmallConifer = "conifer_under_6" => |c| c.tree.species.group == Group::Conifer,
    /// Sprouter under 6 in, no herbicide for the stump.
    SmallSprouterFell = "sprouter_under_6_fell" => |c| c.sprouter() && !c.bites(),
    /// Sprouter under 6 in.
    SmallSprouter = "sprouter_under_6" => |c| c.sprouter(),
    /// 10 in and over.
    TenAndOver = "10_and_over" => |_| true,
    /// Base too thick to pull.
    BaseTooThick = "base_too_thick" => |_| true,
    /// A shrub to dig.
    DigShrub = "dig_shrub" => |c| c.tree.species.group == Group::Shrub,
    /// Basal bark over 4 in.
    BasalOverFour = "basal_over_4" => |_| true,
    /// Basal bark over 6 in.
    BasalOverSix = "basal_over_6" => |_| true,
    /// Cut stump under half an inch.
    StumpThin = "stump_under_half" => |_| true,
    /// Conifer.
    Conifer = "conifer" => |c| c.tree.species.group == Group::Conifer,
    /// Oak in its months.
    OakWilt = "oak_wilt_months" => |c| c.part.oak_wilt,
    /// Oak in the oak-wilt months of a region that it is near.
    OakWiltNear = "oak_wilt_near" => |c| c.has(Trait::RedOak) && c.part.oak_near,
    /// Ash with the borer.
    AshBorer = "ash_borer" => |c| c.has(Trait::Ash) && c.ash_borer,
    /// American elm.
    AmericanElm = "american_elm" => |c| c.has(Trait::AmericanElm),
    /// Living pines near, in the beetles' months.
    PinesNear = "pines_near" => |c| c.has(Trait::Pine)
        && c.tree.same_genus_near == Some(true) && c.part.pine_beetles && !c.ignore_months,
    /// The bark does not slip on the day.
    NotSlipping = "bark_not_slipping" => |c| c.slips == Some(false),
    /// Heavy flow of sap.
    SapFlow = "sap_flow" => |c| c.part.sap_flow,
    /// Tree-of-heaven out of its season.
    HeavenSeason = "heaven_out_of_season" => |c| c.has(Trait::TreeOfHeaven) && !c.part.heaven,
    /// Tree-of-heaven.
    HeavenStump = "heaven_stump" => |c| c.has(Trait::TreeOfHeaven),
    /// No herbicide.
    NoHerbicide = "no_herbicide" => |c| c.herbicide == Herbicide::No,
    /// Only to kill.
    KillOnly = "kill_only" => |c| c.tree.goal == Goal::Kill,
    /// Dead.
    Dead = "dead" => |c| c.dead,
    /// Dead, and something stands in the zone.
    DeadClear = "dead_nothing_near" => |c| c.dead && !c.surroundings.target_in_zone,
}
