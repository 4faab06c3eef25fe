//! From a question to a season: which knowledge of the place and the leaf-out the timing engine is given.

use crate::question::{LeafOut, Question};
use crate::reference::Constants;
use crate::terms::cite::Grade;
use crate::terms::place::Place;
use crate::terms::tree::{Condition, Dry, Stage, Vigour};
use crate::timing::doy::season_year;
use crate::timing::{
    self, Ask, DrySpell, Growth, Observed, PointClimate, Season, Site, Station, TreeTiming, Where,
    climate,
};

/// What is known of the place beyond the question: looked up in a table that is fetched, so it is handed in.
#[derive(Clone, Debug, Default)]
pub struct Local {
    /// The climate at the point, from the stations.
    pub climate: Option<PointClimate>,
    /// Whether a point was asked for and no table of stations was at hand.
    pub table_missing: bool,
    /// Where a point out of reach of every station may have been meant to be.
    pub meant: Option<Site>,
}

impl Local {
    /// Looks up the climate of a question's place; `stations` is empty where the table is not at hand.
    #[must_use]
    pub fn of(constants: &Constants, question: &Question, stations: &[Station]) -> Self {
        let Place::Point {
            latitude,
            longitude,
            elevation,
        } = question.place
        else {
            return Self::default();
        };
        let point = site(latitude, longitude, elevation);
        Self {
            climate: climate::at(stations, point, &constants.timing).ok(),
            table_missing: stations.is_empty(),
            meant: climate::meant(stations, point, &constants.timing),
        }
    }
}

/// The season of the tree of a question.
#[must_use]
pub fn of<'c>(constants: &'c Constants, question: &Question, local: &Local) -> Season<'c> {
    let species = question.species;
    let ask = Ask {
        tree: TreeTiming {
            wood: species.wood,
            f_sum: species.budbreak_sum,
            f_is_estimate: species.budbreak.grade == Grade::Assumption,
        },
        place: place(question, local),
        observed: question.leafed_out.map(observed),
        spring: question.spring.as_ref().map_or(&[], |table| &table.days),
        dry_spell: match question.dry_spell {
            Dry::None => DrySpell::None,
            Dry::TwoWeeks => DrySpell::TwoWeeks,
            Dry::Month => DrySpell::Month,
        },
        // How long it has been dry says nothing of the seasons after.
        dry_in: Some(season_year(
            question.day.start(),
            question.place.hemisphere(),
        )),
        growth: match (question.vigour, question.condition) {
            (Vigour::Slow, _) | (_, Condition::Declining) => Growth::Slow,
            (Vigour::Fast, _) => Growth::Fast,
            (Vigour::Ordinary, _) => Growth::Ordinary,
        },
    };
    timing::season(&ask, &constants.timing)
}

fn place<'a>(question: &Question, local: &'a Local) -> Where<'a> {
    match (&local.climate, &question.place) {
        (Some(climate), Place::Point { .. }) => Where::Climate(climate),
        (_, Place::Hemisphere(hemisphere)) => Where::Hemisphere(*hemisphere),
        (
            None,
            Place::Point {
                latitude,
                longitude,
                elevation,
            },
        ) => Where::Site(site(*latitude, *longitude, *elevation)),
    }
}

fn site(lat: f64, lon: f64, elev_m: Option<f64>) -> Site {
    Site { lat, lon, elev_m }
}

fn observed(seen: LeafOut) -> Observed {
    Observed {
        stage: match seen.stage {
            Stage::BudsOpen => timing::Stage::BudsOpen,
            Stage::LeavesFull => timing::Stage::LeavesFull,
            Stage::FirstLeaf => timing::Stage::FirstLeaf,
        },
        date: seen.date,
        elsewhere: seen
            .elsewhere
            .map(|(lat, lon, elev_m)| site(lat, lon, elev_m)),
        rates: seen.rates,
    }
}
