//! Everything that hangs on the decision: stems, minutes, visits, outlook, habitat, cautions.

use super::decide::Decision;
use super::scene::{Scene, level};
use super::types::{
    Answer, Conditional, EffortAnswer, GroupAnswer, Near, Outcome, SpeciesLine, StemAnswer,
};
use super::{open, rest, season_lines};
use crate::model::caution;
use crate::model::effort::{self, Work};
use crate::model::method::{self, Level, Method};
use crate::model::{bark, habitat, height, outlook, ring, stand, visits};
use crate::order;
use crate::question::{Condition, Day};
use crate::settings::Tighten;
use chrono::NaiveDate;

/// Everything else, for the day that was decided.
pub fn assemble(scene: &Scene<'_>, height: height::Height, decision: &Decision) -> Answer {
    let reference = scene.reference;
    let question = scene.question;
    let stem = question.largest();
    let day = decision.day;
    let asked = match question.day {
        Day::On(day) => Some(day),
        Day::Year { .. } => None,
    };
    let stops = decision.outcome == Outcome::Professional;
    let case = open::otherwise(scene, stem, day, &decision.open);
    let methods = scene.judge(&case);
    let stems = stem_answers(scene, day, &decision.open);
    let ring_open = !stops && level(&scene.levels(&case), Method::BarkRing) <= Level::Possible;
    let effort = (ring_open || decision.headline == Method::BarkRing)
        .then(|| minutes(scene, &stems, day))
        .flatten();
    let rings = matches!(
        decision.headline,
        Method::BarkRing | Method::SawRing | Method::Frill | Method::BasalBark
    );
    let comes_back = !stops && !matches!(decision.headline, Method::LeaveIt | Method::PullOrDig);
    let mut visits = if comes_back {
        visits::plan(question, day)
    } else {
        Vec::new()
    };
    if !rings {
        visits.retain(|visit| {
            matches!(
                visit.kind,
                visits::VisitKind::Sprouts | visits::VisitKind::Yearly
            )
        });
    }
    let rules = season_lines::rules(scene, asked, day);
    let days: Vec<NaiveDate> = [asked, Some(day)].into_iter().flatten().collect();
    let cautions = caution::judge(
        reference,
        &caution::Case {
            question,
            reach: &scene.reach,
            methods: &methods,
            headline: decision.headline,
            stopped: stops,
            days: &days,
            oak_wilt: days.iter().any(|day| scene.oak_closed(*day)),
            ash_borer: scene.ash_borer(),
        },
    );
    let near_limit = (!stops)
        .then(|| method::near_limit(reference.method_rules, &case, decision.headline))
        .flatten()
        .map(|(inches, method)| Near {
            limit_mm: inches * crate::quantity::MM_PER_IN,
            method,
        });
    let mut answer = Answer {
        version: 1,
        data_version: reference.data_version,
        outcome: decision.outcome,
        headline_method: decision.headline,
        headline_by_professional: decision.by_professional,
        species: SpeciesLine {
            name: question.species.name,
            scientific: question.species.scientific,
            code: question.species.code,
            group: question.species.group,
            suitability: question.species.suitability,
            native_here: caution::native_here(question),
            look_alikes: question.species.look_alikes,
        },
        crown_m: height::crown_m(
            question.species,
            question.setting,
            stand::combined_mm(question.stems.iter().map(|stem| stem.dbh.mm())),
        ),
        timing: season_lines::timing(scene, asked, day),
        asked_day: asked,
        advised_day: Some(day),
        asked_verdict: asked.map(|day| scene.season.verdict(day)),
        asked_probability: asked.and_then(|day| scene.season.probability(day)),
        effort,
        visits,
        outlook: ring_open
            .then(|| outlook::judge(reference, question.species, stem.dbh.mm()))
            .flatten(),
        habitat: (!stops).then(|| {
            let region = question.region.as_deref();
            habitat::judge(
                reference,
                question.species,
                stem.dbh.mm(),
                height.shown_m,
                region,
            )
        }),
        assumed: rest::assumed(question, &height, &stems),
        methods,
        stems,
        height,
        reach: scene.reach.clone(),
        rules,
        cautions,
        conditional: None,
        next_line: decision.next_line,
        also: decision.also.clone(),
        near_limit,
        group: group(scene, decision),
        changes: Vec::new(),
        sources: Vec::new(),
    };
    answer.sources = rest::sources(reference, &answer);
    answer
}

/// What the group asked for, where it asked for anything.
fn group(scene: &Scene<'_>, decision: &Decision) -> Option<GroupAnswer> {
    let group = scene.question.group.as_ref()?;
    let tighten = group.settings.tighten;
    (tighten != Tighten::default()).then(|| GroupAnswer {
        name: group.settings.name.clone(),
        distance_factor: tighten.distance_factor,
        volunteers_mm: tighten.volunteers_mm,
        months_blocked: tighten.runs(),
        stops: decision.by_size,
    })
}

fn stem_answers(scene: &Scene<'_>, day: NaiveDate, open: &[Conditional]) -> Vec<StemAnswer> {
    let question = scene.question;
    let spared = question.spared();
    question
        .stems
        .iter()
        .enumerate()
        .map(|(index, stem)| {
            let bark = bark::thickness(stem, question.species);
            let dead = question.condition == Condition::Dead;
            let is_spared = spared == Some(index);
            let ring = bark
                .as_ref()
                .filter(|_| !dead && !is_spared)
                .and_then(|bark| {
                    ring::width(&scene.reference.constants.ring, question, stem, bark.mm)
                });
            let case = open::otherwise(scene, stem, day, open);
            StemAnswer {
                dbh_mm: stem.dbh.mm(),
                inside_bark_mm: bark
                    .as_ref()
                    .map(|bark| bark::inside_mm(stem.dbh.mm(), bark.mm)),
                live_share: stem.live_share,
                headline_method: scene.head(&scene.levels(&case), stem),
                methods: scene.judge(&case),
                ring,
                bark,
                spared: is_spared,
            }
        })
        .collect()
}

fn minutes(scene: &Scene<'_>, stems: &[StemAnswer], day: NaiveDate) -> Option<EffortAnswer> {
    let constants = &scene.reference.constants.effort;
    let mut work: Vec<Work> = stems
        .iter()
        .filter_map(|stem| {
            Some(Work {
                dbh_mm: stem.dbh_mm,
                bark_mm: stem.bark.as_ref()?.mm,
                width_mm: stem.ring.as_ref()?.better_mm,
                live_share: stem.live_share,
            })
        })
        .collect();
    let key = |w: &Work| [w.dbh_mm, w.bark_mm, w.live_share];
    order::sort(&mut work, |a, b| key(a) < key(b));
    let slip = scene.season.p_for_rules(day);
    let effort = effort::minutes(constants, scene.question, &work, slip)?;
    let visit = constants.visit;
    let once = |share: f64, minutes: f64| share * (minutes - effort.walk_min) + effort.walk_min;
    Some(EffortAnswer {
        visit_min: (
            once(visit.low, effort.likely_min),
            once(visit.likely, effort.likely_min),
            once(visit.high, effort.likely_min),
        ),
        low_min: effort.low_min,
        likely_min: effort.likely_min,
        high_min: effort.high_min,
        mean_min: effort.mean_min,
        slip: effort.slip,
        walk_min: effort.walk_min,
        tasks: effort.tasks,
        because: effort.because,
    })
}
