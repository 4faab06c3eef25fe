//! From a question to a season: which knowledge of the place and the leaf-out the timing engine is given.

use crate::evidence::Grade;
use crate::question::{Condition, Dry, LeafOut, Place, Question, Stage, Vigour};
use crate::reference::Constants;
use crate::timing::{
    self, Ask, Daily, DrySpell, Growth, Observed, PointClimate, Rates, Season, Site, TreeTiming,
    Where,
};

/// What is known of the place beyond the question: fetched or pasted, so it is handed in.
#[derive(Clone, Debug, Default)]
pub struct Local {
    /// The climate at the point, from the stations.
    pub climate: Option<PointClimate>,
    /// This spring's own daily temperatures.
    pub spring: Vec<Daily>,
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
        spring: &local.spring,
        dry_spell: match question.dry_spell {
            Dry::None => DrySpell::None,
            Dry::TwoWeeks => DrySpell::TwoWeeks,
            Dry::Month => DrySpell::Month,
        },
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
        rates: Rates::Fitted,
    }
}
