//! Everything that hangs on the decision: stems, minutes, visits, outlook, habitat, cautions.

use super::decide::Decision;
use super::facts::{Facts, Levels, level};
use super::{open, season_lines, sources, stretch, work};
use crate::answer::{
    Also, AlsoKind, Answer, Conditional, GroupAnswer, Near, Outcome, SpeciesLine, StemAnswer,
};
use crate::models::cautions;
use crate::models::method;
use crate::models::native::{Native, native};
use crate::models::reach;
use crate::models::{
    bark, grown, habitat, height, outlook, provisos, ring, stand, trigger, visits,
};
use crate::question::{Day, Question};
use crate::reference::Reference;
use crate::terms::method::{Level, Method};
use crate::terms::quantity::Dbh;
use crate::terms::tighten::Tighten;
use crate::terms::tree::{Condition, Herbicide, Stem};
use crate::timing::closed_months::{self, Topic};
use chrono::NaiveDate;

/// Everything else, for the day that was decided.
pub(super) fn assemble(facts: &Facts<'_>, height: height::Height, decision: &Decision) -> Answer {
    let reference = facts.reference;
    let question = facts.question;
    let stem = facts.stem;
    let day = decision.day;
    let asked = match question.day {
        Day::On(day) => Some(day),
        Day::Year { .. } => None,
    };
    let stops = decision.outcome == Outcome::Professional;
    let case = open::otherwise(facts, stem, day, &decision.open);
    let methods = facts.judge(&case);
    let stems = stem_answers(facts, day, &decision.open);
    let ring_open = !stops && level(&facts.levels(&case), Method::BarkRing) <= Level::Possible;
    let effort = (ring_open || decision.headline == Method::BarkRing)
        .then(|| work::minutes(facts, &stems, day))
        .flatten();
    let visits = if stops {
        Vec::new()
    } else {
        visits::after(
            &reference.constants.visits,
            question.tree.species,
            question.place.hemisphere(),
            decision.headline,
            day,
        )
    };
    let rules = season_lines::rules(facts, asked, day);
    let days: Vec<NaiveDate> = [asked, Some(day)].into_iter().flatten().collect();
    let native = native(&question.tree.species.native, question.region.as_deref());
    let cautions = cautions::judge(
        reference.cautions,
        reference.regional.get(),
        &trigger::CautionCase {
            tree: &question.tree,
            hemisphere: question.place.hemisphere(),
            region: question.region.as_deref(),
            reach: facts.reach,
            methods: &methods,
            headline: decision.headline,
            stopped: stops,
            days: &days,
            oak_wilt: days
                .iter()
                .any(|day| facts.calendar.oak_closed(*day) || facts.calendar.oak_near(*day)),
            oak_authority: facts.calendar.oak_wilt.map_or("", |wilt| wilt.authority()),
            ash_borer: facts.calendar.ash_borer_there(),
            elm_beetles: closed_months::cautious(reference.restrictions, Topic::Elm),
            pine_beetles: facts.calendar.pine_beetles,
            constants: &reference.constants.cautions,
            ash_authority: facts
                .calendar
                .ash_borer
                .map_or("", |borer| borer.authority()),
            laurel_wilt: season_lines::laurel_wilt(facts),
            native,
        },
    );
    let near_limit = (!stops)
        .then(|| {
            let heads = |lines: &Levels, dbh_mm: f64| {
                let other = Stem {
                    dbh: Dbh::new(dbh_mm).unwrap_or(stem.dbh),
                    ..*stem
                };
                facts.head(lines, &other)
            };
            method::near_limit(reference.method_rules, &case, decision.headline, heads)
        })
        .flatten()
        .map(|(inches, over, method)| Near {
            limit_mm: inches * crate::terms::quantity::MM_PER_IN,
            over,
            method,
        });
    Answer {
        version: 1,
        data_version: reference.data_version,
        outcome: decision.outcome,
        headline_method: decision.headline,
        headline_by_professional: decision.by_professional,
        species: SpeciesLine {
            name: question.tree.species.name,
            scientific: question.tree.species.scientific,
            code: question.tree.species.code,
            group: question.tree.species.group,
            suitability: question.tree.species.suitability,
            native,
            native_here: native == Native::Here,
            look_alikes: question.tree.species.look_alikes,
        },
        crown_m: height::crown_m(
            question.tree.species,
            question.tree.setting,
            stand::combined_mm(question.tree.stems.iter().map(|stem| stem.dbh.mm())),
        ),
        timing: season_lines::timing(facts, asked, day),
        asked_day: asked,
        advised_day: Some(day),
        advised_to: advised_to(facts, decision),
        waits_for: decision.waits_for,
        people_out_m: people_out_m(facts, decision),
        provisos: provisos::of(&provisos::AdvisedWork {
            case: &case,
            method: decision.headline,
            by_professional: decision.by_professional,
            small_mm: reference.constants.reach.small_mm,
        }),
        asked_verdict: asked.map(|day| facts.calendar.season.verdict(day)),
        asked_probability: asked.and_then(|day| facts.calendar.season.probability(day)),
        visit: work::visit(
            facts,
            stops,
            (decision.headline == Method::BarkRing).then_some(day),
        ),
        work: if stops {
            Vec::new()
        } else {
            work::of_methods(facts, effort.as_ref(), day)
        },
        effort,
        visits,
        outlook: ring_open
            .then(|| {
                outlook::judge(
                    reference.outlook,
                    reference.outlook_species,
                    question.tree.species,
                    stem.dbh.mm(),
                )
            })
            .flatten(),
        habitat: (!stops).then(|| {
            habitat::judge(
                &reference.constants.habitat,
                reference.cavity_users,
                reference.snag_guides,
                reference.constants.method.cavities_in,
                &habitat::Snag {
                    species: question.tree.species,
                    dbh_mm: stem.dbh.mm(),
                    height_m: height.shown_m,
                    region: question.region.as_deref(),
                },
            )
        }),
        assumed: sources::assumed(
            question,
            &height,
            &stems,
            settled_by_region(reference, question),
        ),
        methods,
        stems,
        height,
        reach: facts.reach.clone(),
        rules,
        diseases: season_lines::diseases(facts),
        cautions,
        conditional: None,
        next_line: decision.next_line.map(|also| whole_line(facts, &also)),
        also: decision
            .also
            .iter()
            .map(|also| whole_line(facts, also))
            .collect(),
        near_limit,
        group: group(facts, decision),
        changes: Vec::new(),
        sources: Vec::new(),
    }
}

/// Whether the state or country that was said settles where in the world it stands.
fn settled_by_region(reference: &Reference, question: &Question) -> bool {
    let code = question.region.as_deref();
    code.is_some_and(|code| grown::region(reference.regions, code).is_some())
}

/// How far bystanders stay out while anyone works, metres, by what is done; none where nothing is.
fn people_out_m(facts: &Facts<'_>, decision: &Decision) -> Option<f64> {
    let reach = &facts.reach;
    if matches!(
        decision.outcome,
        Outcome::Professional | Outcome::CannotTell
    ) {
        return Some(reach.two_heights_m);
    }
    let question = facts.question;
    // A sound living tree keeps its strength on the day of the work: our own assumption.
    let sound = question.tree.condition == Condition::Alive
        && question.tree.signs.is_empty()
        && question.tree.stems.iter().all(|stem| stem.live_share > 0.0);
    let by_hand = matches!(
        decision.headline,
        Method::BarkRing | Method::Frill | Method::BasalBark | Method::PullOrDig
    );
    match decision.headline {
        Method::LeaveIt => None,
        _ if by_hand && sound && reach.outcome != reach::ReachOutcome::Inside => {
            Some(reach.height_m)
        }
        _ => Some(reach.two_heights_m),
    }
}

/// The last day of the stretch that an advised day begins. None where the day was asked about.
fn advised_to(facts: &Facts<'_>, decision: &Decision) -> Option<NaiveDate> {
    let year = matches!(facts.question.day, Day::Year { .. });
    let picked = match decision.outcome {
        Outcome::Wait => true,
        Outcome::Do | Outcome::OtherMethod => year,
        Outcome::Professional | Outcome::CannotTell => false,
    };
    let herbicide = facts.question.tree.herbicide;
    picked
        .then(|| stretch::last_day(facts, decision.headline, decision.day, herbicide))
        .flatten()
}

/// A line beside the headline, with who may fell and the end of its stretch, which nobody needs while the outcome is
/// looked for.
fn whole_line(facts: &Facts<'_>, also: &Also) -> Also {
    let herbicide = if also.kind == AlsoKind::WithoutHerbicide {
        Herbicide::No
    } else {
        facts.question.tree.herbicide
    };
    Also {
        trained_to_fell: provisos::trained_to_fell(
            facts.outcome(),
            also.by_professional,
            also.method,
        ),
        to: also
            .day
            .and_then(|day| stretch::last_day(facts, also.method, day, herbicide)),
        ..*also
    }
}

/// What the group asked for, where it asked for anything.
fn group(facts: &Facts<'_>, decision: &Decision) -> Option<GroupAnswer> {
    let name = facts.question.group.clone()?;
    let tighten = facts.question.tree.tighten;
    (tighten != Tighten::default()).then(|| GroupAnswer {
        name,
        distance_factor: tighten.distance_factor,
        volunteers_mm: tighten.volunteers_mm,
        months_blocked: tighten.runs(),
        stops: decision.by_size,
    })
}

fn stem_answers(facts: &Facts<'_>, day: NaiveDate, open: &[Conditional]) -> Vec<StemAnswer> {
    let question = facts.question;
    let spared = question.tree.spared();
    question
        .tree
        .stems
        .iter()
        .enumerate()
        .map(|(index, stem)| {
            let bark = bark::thickness(
                facts.reference.bark_ranges,
                stem,
                question.tree.species,
                question.tree.grown,
            );
            let dead = question.tree.condition == Condition::Dead;
            let is_spared = spared == Some(index);
            let ring = bark
                .as_ref()
                .filter(|_| !dead && !is_spared)
                .and_then(|bark| {
                    ring::width(
                        &facts.reference.constants.ring,
                        &question.tree,
                        stem,
                        bark.mm,
                    )
                });
            let case = open::otherwise(facts, stem, day, open);
            StemAnswer {
                dbh_mm: stem.dbh.mm(),
                inside_bark_mm: bark
                    .as_ref()
                    .map(|bark| bark::inside_mm(stem.dbh.mm(), bark.mm)),
                live_share: stem.live_share,
                headline_method: facts.head(&facts.levels(&case), stem),
                methods: facts.judge(&case),
                ring,
                bark,
                spared: is_spared,
            }
        })
        .collect()
}
