//! What is known, as data: passed in, never global. The data crate compiles it from `content/`.

use crate::models::cautions::Caution;
use crate::models::condition::MethodRule;
use crate::models::condition::{RowCondition, Sizes};
use crate::models::effort::MethodMinutes;
use crate::models::habitat::{CavityUser, SnagGuide};
use crate::models::height::HeightTables;
use crate::models::outlook::{OutlookOverride, OutlookRow};
use crate::terms::constants::constants;
use crate::terms::regional::Regional;
use crate::terms::source::{SourceId, SourceLine};
use crate::terms::species::{Group, Species};
use crate::timing::closed_months::Restriction;
use crate::timing::disease::DiseaseRegion;
use std::sync::OnceLock;

/// Everything that the models read.
#[derive(Debug)]
pub struct Reference {
    /// The sources that something cites, each in the place of its number.
    pub sources: &'static [SourceLine],
    /// They in the order of their ids.
    pub sources_by_id: &'static [SourceId],
    /// Species, sorted by scientific name; unknown ones and palms last.
    pub species: &'static [Species],
    /// The table of nine methods, in order.
    pub method_rules: &'static [MethodRule],
    /// Cautions, in the order of the page.
    pub cautions: &'static [Caution],
    /// Share dead by season, by class and size.
    pub outlook: &'static [OutlookRow],
    /// Rows of single species that override them.
    pub outlook_species: &'static [OutlookOverride],
    /// Animals that may use the snag.
    pub cavity_users: &'static [CavityUser],
    /// Snags an acre that guidelines ask for.
    pub snag_guides: &'static [SnagGuide],
    /// Minutes of other methods, as printed.
    pub method_minutes: &'static [MethodMinutes],
    /// Months that law or biology names.
    pub restrictions: &'static [Restriction],
    /// Where diseases and pests are known at all.
    pub disease_regions: &'static [DiseaseRegion],
    /// Names that mean different trees in different countries.
    pub names_by_place: &'static [NameByPlace],
    /// Ranges of the bark.
    pub bark_ranges: &'static [crate::models::bark::BarkRange],
    /// How much taller than their curves trees stand.
    pub height_hazard: &'static [crate::models::height_hazard::HazardRow],
    /// States and countries of the climate table.
    pub regions: &'static [crate::models::grown::ClimateRegion],
    /// The constants that are our own or published and tunable.
    pub constants: &'static Constants,
    /// Version of the tables.
    pub data_version: &'static str,
    /// What differs by country, once its file is here.
    pub regional: OnceLock<Regional>,
}

impl Reference {
    /// What heights are judged by.
    #[must_use]
    pub fn heights(&self) -> HeightTables<'_> {
        HeightTables {
            constants: &self.constants.height,
            hazard: self.height_hazard,
            species: self.species,
        }
    }

    /// Whether a stem is too thin for a ring whatever else is said: the row `under_1` of the table of methods.
    #[must_use]
    pub fn too_thin_to_ring(&self, group: Option<Group>, dbh_in: f64) -> bool {
        let mut rows = self.method_rules.iter();
        let row = rows.find(|row| row.condition == RowCondition::UnderOne);
        let base_in = dbh_in * self.constants.base_over_dbh;
        row.and_then(|row| Sizes::of(row.sizes, group))
            .is_some_and(|sizes| sizes.hold(dbh_in, base_in))
    }

    /// The lines of all sources, by number; those of what differs by country only once its file is here.
    pub fn all_sources(&self) -> impl Iterator<Item = &'static SourceLine> {
        let regional = self.regional.get().map_or(&[][..], |it| it.sources);
        self.sources.iter().chain(regional)
    }

    /// All of them in the order of their ids.
    #[must_use]
    pub fn sources_by_id(&self) -> &'static [SourceId] {
        let regional = self.regional.get();
        regional.map_or(self.sources_by_id, |it| it.sources_by_id)
    }

    /// The line of a source; none where it is one of what differs by country and that file is not here.
    #[must_use]
    pub fn source(&self, id: SourceId) -> Option<&'static SourceLine> {
        let number = id.number();
        self.sources.get(number).or_else(|| {
            let regional = self.regional.get()?;
            regional.sources.get(number - self.sources.len())
        })
    }
}

/// A name that people of different countries give to different trees.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct NameByPlace {
    /// The name, in small letters.
    pub name: &'static str,
    /// Where it means this tree: codes of countries, states and provinces.
    pub codes: &'static [&'static str],
    /// Scientific name of the tree, on the list or not.
    pub scientific: &'static str,
}

constants! {
    /// Constants of what the answer decides, beyond its models.
    pub struct AnswerConstants {
        /// A wait of more days than this yields to another method that stands now.
        pub long_wait_days: f64,
        /// Days on both sides of the asked one among which one that changes the answer is looked for.
        pub change_days: f64,
        /// A trunk wider than this is asked about again, mm: a lost decimal point makes such sizes.
        pub ask_trunk_mm: f64,
        /// How near another diameter must be to be told beside other changes, as a share of it.
        pub change_near_size: f64,
        /// A day that is named, and the last of its stretch, lies so many days before what ends it.
        pub margin_days: f64,
        /// Where no day is best, the stretch that ends on the day nearest to the best has so many days at most.
        pub stretch_days: f64,
        /// A ring that is likely to kill fewer in a hundred gives way, where the tree shall only be dead.
        pub few_dead: f64,
        /// Someone trained to fell may fell up to here, mm, where a measured height falls short of what stands there.
        pub trained_mm: f64,
    }
}

constants! {
    /// Tunable constants. Each stands once, in `content/rules/constants.csv`, with its source or as our own assumption.
    pub struct Constants {
        /// Ring: see the model of the ring.
        pub ring: crate::models::ring::RingConstants,
        /// Where it grew.
        pub grown: crate::models::grown::GrownConstants,
        /// Heights.
        pub height: crate::models::height::HeightConstants,
        /// The standing curve.
        pub habitat: crate::models::habitat::HabitatConstants,
        /// Reach.
        pub reach: crate::models::reach::ReachConstants,
        /// Minutes.
        pub effort: crate::models::effort_constants::EffortConstants,
        /// Methods.
        pub method: crate::models::condition::MethodConstants,
        /// Visits.
        pub visits: crate::models::visits::VisitConstants,
        /// Cautions.
        pub cautions: crate::models::trigger::CautionConstants,
        /// What the answer decides by.
        pub answer: AnswerConstants,
        /// The base of a stem over its dbh.
        pub base_over_dbh: f64,
        /// The season.
        pub timing: crate::timing::SeasonConstants,
    }
}
