//! What an answer rests on: what was assumed, and every source.

use crate::answer::{Answer, StemAnswer};
use crate::models::height;
use crate::question::Question;
use crate::reference::Reference;
use crate::terms::cite::Cite;
use crate::terms::place::Place;
use crate::terms::source::SourceLine;
use crate::terms::tree::Herbicide;
use serde::Serialize;

/// A field that was not given.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct Assumed {
    /// The field.
    pub field: &'static str,
    /// The number used, in the core's unit (mm, m, minutes), where it is one.
    pub value: Option<f64>,
    /// The word used, where it is one.
    pub word: Option<&'static str>,
}

/// What was not given, and what was used. Only fields that some model read.
/// `by_region`: the state or country that was said settles where in the world it stands.
pub(super) fn assumed(
    question: &Question,
    height: &height::Height,
    stems: &[StemAnswer],
    by_region: bool,
) -> Vec<Assumed> {
    let mut list = Vec::new();
    let number = |field, value| Assumed {
        field,
        value: Some(value),
        word: None,
    };
    let word = |field, word| Assumed {
        field,
        value: None,
        word: Some(word),
    };
    let largest = question.tree.largest();
    if largest.bark.is_none()
        && let Some(bark) = stems
            .iter()
            .find(|stem| stem.dbh_mm == largest.dbh.mm())
            .and_then(|stem| stem.bark.as_ref())
    {
        list.push(number("bark", bark.mm));
    }
    if !height.measured {
        list.push(number("height", height.hazard_m));
        list.push(word("setting", question.tree.setting.word()));
    }
    if question.leafed_out.is_none()
        && !by_region
        && let Place::Hemisphere(hemisphere) = question.place
    {
        let name = match hemisphere {
            crate::terms::place::Hemisphere::North => "north",
            crate::terms::place::Hemisphere::South => "south",
        };
        list.push(word("place", name));
    }
    if question.region.is_none() {
        list.push(word("region", "cautious_default"));
    }
    if question.pace.walk_min.is_none() {
        list.push(word("walk", "two_minutes"));
    }
    if question.tree.herbicide == Herbicide::NotSaid {
        list.push(word("herbicide", "not_said"));
    }
    if height.whole_table || question.tree.targets.is_empty() && !question.tree.none_in_reach {
        list.push(word("targets", "not_checked"));
    }
    list
}

/// Every source that the answer rests on, each once, in the order of the ids.
pub(super) fn sources(reference: &Reference, answer: &Answer) -> Vec<SourceLine> {
    let mut rests_on = vec![false; reference.sources_by_id().len()];
    let mut take = |cites: &[Cite]| {
        for cite in cites {
            rests_on[cite.source.number()] = true;
        }
    };
    for stem in &answer.stems {
        if let Some(bark) = &stem.bark {
            take(&bark.because);
        }
        if let Some(ring) = &stem.ring {
            take(&ring.because);
        }
    }
    take(&answer.height.because);
    take(&answer.timing.because);
    if let Some(crown) = &answer.crown_m {
        take(&crown.because);
    }
    take(&answer.reach.because);
    for line in &answer.methods {
        for reason in &line.reasons {
            take(reason.because);
        }
    }
    if let Some(effort) = &answer.effort {
        take(&effort.because);
    }
    for work in &answer.work {
        take(&work.because);
    }
    if let Some(habitat) = &answer.habitat {
        take(&habitat.because);
        for guide in &habitat.guides {
            take(&[guide.because]);
        }
        for user in &habitat.users {
            take(&[user.because]);
        }
    }
    if let Some(outlook) = &answer.outlook {
        for season in &outlook.seasons {
            take(&season.because);
        }
        take(&outlook.second_ring.because);
        if let Some(sprouting) = &outlook.sprouting {
            take(&sprouting.because);
        }
        for later in &outlook.later {
            take(later.because);
        }
    }
    for rule in &answer.rules {
        take(&[rule.because]);
    }
    for line in &answer.cautions {
        take(&line.because);
    }
    let by_id = reference.sources_by_id().iter();
    let used = by_id.filter(|id| rests_on[id.number()]);
    used.filter_map(|id| reference.source(*id))
        .copied()
        .collect()
}
