//! Puts an answer together: reach first, then the methods, then the day, then everything that hangs on them.

use super::open::{self, Lifted};
use super::scene::{Levels, Scene, level};
use super::types::{
    Also, AlsoKind, Answer, Assumed, Before, Conditional, EffortAnswer, If, Near, Outcome, Rules,
    SourceLine, SpeciesLine, SpringAnswer, StemAnswer, TapeSpan, TimingAnswer,
};
use crate::evidence::Cite;
use crate::model::caution;
use crate::model::effort::{self, Work};
use crate::model::method::{self, Level, Method};
use crate::model::reach;
use crate::model::season::Local;
use crate::model::{bark, habitat, height, outlook, ring, season, visits};
use crate::question::{Condition, Day, Herbicide, Place, Question};
use crate::reference::{Reference, Trait, cite};
use crate::timing::restrictions::{self, OakWilt, Topic};
use chrono::{Datelike, NaiveDate};

/// A wait of more days than this yields to another method that stands now.
const LONG_WAIT_DAYS: i64 = 120;

/// What was decided: the outcome, the day that it is for, and the lines beside it.
struct Decision {
    outcome: Outcome,
    headline: Method,
    by_professional: bool,
    day: NaiveDate,
    next_line: Option<Also>,
    also: Vec<Also>,
    open: Vec<Conditional>,
}

/// The whole answer; `nest` asks for the answer under the open conditions too.
pub fn compose(
    reference: &'static Reference,
    question: &Question,
    local: &Local,
    lifted: Lifted,
    nest: bool,
) -> Answer {
    let (scene, height) = settle(reference, question, local, lifted);
    let decision = decide(&scene);
    let mut answer = assemble(&scene, height, &decision);
    if nest && !decision.open.is_empty() {
        let (settled, lifted) = open::settled(question, &decision.open, lifted);
        let names: Vec<&str> = decision.open.iter().map(|open| open.name()).collect();
        answer.conditional = Some(If {
            condition: names.join("+"),
            conditions: decision.open,
            answer: Box::new(compose(reference, &settled, local, lifted, false)),
        });
    }
    answer
}

/// Outcome and headline alone: what a search over changed questions asks for.
pub fn verdict(
    reference: &'static Reference,
    question: &Question,
    local: &Local,
) -> (Outcome, Method) {
    let (scene, _) = settle(reference, question, local, Lifted::default());
    let decision = decide(&scene);
    (decision.outcome, decision.headline)
}

/// What is settled before any day is looked at: height, reach, season.
fn settle<'a>(
    reference: &'static Reference,
    question: &'a Question,
    local: &'a Local,
    lifted: Lifted,
) -> (Scene<'a>, height::Height) {
    let constants = reference.constants;
    let mut height = height::judge(reference, question);
    let known = !height.whole_table;
    let judge = |m: f64| reach::judge(&constants.reach, question, m, known, height.smallest_m);
    let reach = judge(height.hazard_m);
    if known && !height.measured {
        let (small, tall) = (height.smallest_m, height.tallest_m * constants.height.tall);
        (height.measure_first, height.changes_at_m) = measure_first(&judge(small), &judge(tall));
    }
    (
        Scene::new(reference, question, local, reach, lifted),
        height,
    )
}

/// Whether the smallest and the tall height give different answers to "may it stand?", and where it changes.
fn measure_first(small: &reach::Reach, tall: &reach::Reach) -> (bool, Option<f64>) {
    let stands = |reach: &reach::Reach| {
        let worst = reach
            .targets
            .iter()
            .filter_map(|target| target.outcome)
            .max();
        worst.is_none_or(|outcome| outcome < reach::Outcome::NotChecked)
    };
    let differs = stands(small) && !stands(tall);
    let at = tall
        .targets
        .iter()
        .filter(|target| target.outcome.is_some())
        .filter_map(|target| Some(target.distance_m? / (target.zone_m / tall.height_m)))
        .min_by(f64::total_cmp);
    (differs, at.filter(|_| differs))
}

/// The outcome order: the first that holds.
fn decide(scene: &Scene<'_>) -> Decision {
    let question = scene.question;
    let stem = question.largest();
    let start = question.day.start();
    // The first best day is fixed before its headline is tested.
    let closed = |day: NaiveDate| scene.ring_closed(day);
    let first_best = scene.season.best_day(start, &closed);
    let asked = match question.day {
        Day::On(day) => day,
        Day::Year { .. } => first_best.unwrap_or(start),
    };
    let lines = scene.lines(stem, asked);
    let headline = scene.head(&lines, stem);
    let mut decision = Decision {
        outcome: Outcome::OtherMethod,
        headline,
        by_professional: professional(&lines, headline),
        day: asked,
        next_line: None,
        also: Vec::new(),
        open: Vec::new(),
    };
    if stopped(scene, &lines) {
        decision.outcome = Outcome::Professional;
        return decision;
    }
    let possible_best = scene
        .season
        .best_day(start, &|_| false)
        .filter(|_| scene.oak_open());
    decision.open = open::conditions(scene, asked, first_best.or(possible_best));
    if !decision.open.is_empty() {
        let lines = scene.levels(&open::otherwise(scene, stem, asked, &decision.open));
        decision.outcome = Outcome::CannotTell;
        decision.headline = scene.head(&lines, stem);
        decision.by_professional = professional(&lines, decision.headline);
        decision.next_line = Some(also(AlsoKind::Otherwise, &lines, decision.headline, None));
        decision
            .also
            .extend(without_herbicide(scene, &lines, decision.headline));
        return decision;
    }
    if headline == Method::BarkRing {
        decision.outcome = Outcome::Do;
        beside_ring(scene, &lines, &mut decision);
        return decision;
    }
    let later = ring_later(scene, stem, asked, first_best);
    if let Later::On(day) = later
        && !question.cannot_wait
    {
        let long = (day - asked).num_days() > LONG_WAIT_DAYS;
        let instead = long.then(|| now_instead(scene, &lines, stem)).flatten();
        if let Some(method) = instead {
            decision.headline = method;
            decision.by_professional = professional(&lines, method);
            let then = scene.lines(stem, day);
            decision.next_line = Some(also(
                AlsoKind::RingLater,
                &then,
                Method::BarkRing,
                Some(day),
            ));
        } else {
            let then = scene.lines(stem, day);
            decision.outcome = Outcome::Wait;
            decision.headline = Method::BarkRing;
            decision.by_professional = professional(&then, Method::BarkRing);
            decision.day = day;
            beside_ring(scene, &then, &mut decision);
        }
        return decision;
    }
    if headline == Method::LeaveIt
        && !question.cannot_wait
        && let Some((day, method)) = other_later(scene, stem, asked)
    {
        let then = scene.lines(stem, day);
        decision.outcome = Outcome::Wait;
        decision.headline = method;
        decision.by_professional = professional(&then, method);
        decision.day = day;
        return decision;
    }
    beside_other(scene, &lines, later, &mut decision);
    decision
}

fn professional(lines: &Levels, method: Method) -> bool {
    lines
        .iter()
        .any(|line| line.method == method && line.by_professional)
}

/// A line, a stop, or inside with nothing left but felling.
fn stopped(scene: &Scene<'_>, lines: &Levels) -> bool {
    match scene.reach.outcome {
        reach::Outcome::Line | reach::Outcome::Professional => true,
        reach::Outcome::Inside => {
            let mut left = lines
                .iter()
                .filter(|line| line.level <= Level::Possible && line.method != Method::LeaveIt)
                .peekable();
            // A small stem is cut by whoever asks: that is what its row is for.
            !scene.reach.small
                && left.peek().is_some()
                && left.all(|line| matches!(line.method, Method::Fell | Method::CutStump))
        }
        _ => false,
    }
}

/// Whether, and when, the ring would be at the head but for the day.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Later {
    /// On this day.
    On(NaiveDate),
    /// On no day at this place, though the tree would suit it.
    Never,
    /// The ring is not what the day keeps from the head.
    No,
}

fn ring_later(
    scene: &Scene<'_>,
    stem: &crate::question::Stem,
    asked: NaiveDate,
    first_best: Option<NaiveDate>,
) -> Later {
    let in_season = scene.lines_in_season(scene.question.largest(), asked);
    if scene.head(&in_season, stem) != Method::BarkRing {
        return Later::No;
    }
    let Some(best) = first_best else {
        return Later::Never;
    };
    if scene.ring_heads(best) {
        return Later::On(best);
    }
    // The best day has another headline; a later day of the window may still have the ring.
    let shut = |day: NaiveDate| !scene.ring_heads(day);
    scene
        .season
        .best_day(asked, &shut)
        .map_or(Later::No, Later::On)
}

/// A recommended method that stands now and needs no herbicide, unless herbicide is allowed.
fn now_instead(scene: &Scene<'_>, lines: &Levels, stem: &crate::question::Stem) -> Option<Method> {
    let allowed = herbicide_allowed(scene.question);
    let method = method::headline(lines, scene.question.goal, stem.dbh.mm(), |line| {
        line.level == Level::Recommended && (allowed || !line.method.needs_herbicide())
    });
    (method != Method::LeaveIt).then_some(method)
}

fn herbicide_allowed(question: &Question) -> bool {
    matches!(question.herbicide, Herbicide::Licensed | Herbicide::Yes)
}

/// The first later day, within a year, on which some method stands at possible or better.
fn other_later(
    scene: &Scene<'_>,
    stem: &crate::question::Stem,
    asked: NaiveDate,
) -> Option<(NaiveDate, Method)> {
    // Methods depend on the day by its month and half-months only, and on the bark.
    core::iter::successors(asked.succ_opt(), NaiveDate::succ_opt)
        .take(366)
        .filter(|day| matches!(day.day(), 1 | 15 | 16))
        .find_map(|day| {
            let lines = scene.lines(scene.question.largest(), day);
            let method = scene.head(&lines, stem);
            (method != Method::LeaveIt).then_some((day, method))
        })
}

fn also(kind: AlsoKind, lines: &Levels, method: Method, day: Option<NaiveDate>) -> Also {
    Also {
        kind,
        method,
        level: level(lines, method),
        by_professional: professional(lines, method),
        day,
    }
}

/// Nothing was said of herbicide and the head needs it: the best method without stands beside it.
fn without_herbicide(scene: &Scene<'_>, lines: &Levels, headline: Method) -> Option<Also> {
    if scene.question.herbicide != Herbicide::NotSaid || !headline.needs_herbicide() {
        return None;
    }
    let dbh = scene.question.largest().dbh.mm();
    let method = method::headline(lines, scene.question.goal, dbh, |line| {
        !line.method.needs_herbicide()
    });
    Some(also(AlsoKind::WithoutHerbicide, lines, method, None))
}

/// Beside a ring that is only possible stands the next method.
fn beside_ring(scene: &Scene<'_>, lines: &Levels, decision: &mut Decision) {
    if level(lines, Method::BarkRing) == Level::Recommended {
        return;
    }
    let dbh = scene.question.largest().dbh.mm();
    let next = method::headline(lines, scene.question.goal, dbh, |line| {
        line.method != Method::BarkRing
    });
    decision.next_line = Some(also(AlsoKind::NextMethod, lines, next, None));
    decision.also.extend(without_herbicide(scene, lines, next));
}

/// Beside another method: what stands without herbicide, and how the ring stands.
fn beside_other(scene: &Scene<'_>, lines: &Levels, later: Later, decision: &mut Decision) {
    let mut beside: Vec<Also> = Vec::new();
    beside.extend(without_herbicide(scene, lines, decision.headline));
    match later {
        Later::Never => beside.push(also(AlsoKind::NoRingHere, lines, Method::BarkRing, None)),
        Later::On(day) => {
            let then = scene.lines(scene.question.largest(), day);
            beside.push(also(
                AlsoKind::RingLater,
                &then,
                Method::BarkRing,
                Some(day),
            ));
        }
        Later::No if level(lines, Method::BarkRing) == Level::Possible => {
            beside.push(also(AlsoKind::RingPossible, lines, Method::BarkRing, None));
        }
        Later::No => {}
    }
    let mut beside = beside.into_iter();
    decision.next_line = beside.next();
    decision.also = beside.collect();
}

/// Everything else, for the day that was decided.
fn assemble(scene: &Scene<'_>, height: height::Height, decision: &Decision) -> Answer {
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
    let rules = rules(scene, asked, day);
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
        crown_m: height::crown_m(question.species, question.setting, combined_mm(question)),
        timing: timing(scene, asked, day),
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
        assumed: assumed(question, &height, &stems),
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
        changes: Vec::new(),
        sources: Vec::new(),
    };
    answer.sources = sources(reference, &answer);
    answer
}

/// Equal-basal-area diameter of all stems, mm: for crown and basal area only.
fn combined_mm(question: &Question) -> f64 {
    let mut squares: Vec<f64> = question
        .stems
        .iter()
        .map(|stem| stem.dbh.mm() * stem.dbh.mm())
        .collect();
    // Added up in one order, so that the order of the list changes nothing, not even a last digit.
    squares.sort_by(f64::total_cmp);
    libm::sqrt(squares.iter().sum())
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
    work.sort_by(|a, b| {
        let order = key(a).partial_cmp(&key(b));
        order.unwrap_or(core::cmp::Ordering::Equal)
    });
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

/// The dates without anything of this year's own, where there is something.
fn before(scene: &Scene<'_>, day: NaiveDate) -> Option<Before> {
    let question = scene.question;
    let own = question.leafed_out.is_some() || question.spring.is_some();
    let climate = scene.local.climate.is_some();
    if !own || !climate {
        return None;
    }
    let mut plain = question.clone();
    plain.leafed_out = None;
    plain.spring = None;
    let season = season::of(scene.reference.constants, &plain, scene.local);
    let dates = season.window(day)?;
    Some(Before {
        budbreak: dates.budbreak,
        opens: dates.opens,
        closes: dates.closes,
        probability: season.probability(day),
    })
}

/// What the dates rest on: the species' sum, the climate table or what was seen, the offsets.
fn timing_because(scene: &Scene<'_>) -> Vec<Cite> {
    let species = scene.question.species;
    if !scene.season.is_dated() {
        return vec![
            Cite::practice("late winter to early summer"),
            Cite::own("the hemisphere's months"),
        ];
    }
    let mut because = vec![species.budbreak];
    if scene.local.climate.is_some() {
        because.push(cite("WORLDCLIM14", "monthly means 1960-1990"));
    }
    if scene.question.leafed_out.is_some() {
        because.push(Cite::measured("leaf-out"));
    }
    because.push(cite("FOWLER", "tanbark"));
    because.push(cite("DOW2022", "growth dates"));
    because.push(Cite::own("timing: offsets and spreads"));
    because
}

fn timing(scene: &Scene<'_>, asked: Option<NaiveDate>, day: NaiveDate) -> TimingAnswer {
    let season = &scene.season;
    let dates = season.window(day);
    let from = asked.unwrap_or_else(|| scene.question.day.start());
    let closed = |day: NaiveDate| scene.ring_closed(day);
    let next = season.next_stretches(from, &closed, 2);
    let stretch = |at: usize| next.get(at).map(|s| s.best.unwrap_or((s.from, s.to)));
    TimingAnswer {
        verdict: season.verdict(day),
        probability: season.probability(day),
        budbreak: dates.map(|dates| dates.budbreak),
        opens: dates.map(|dates| dates.opens),
        best_from: dates.map(|dates| dates.best_from),
        best_to: dates.map(|dates| dates.best_to),
        closes: dates.map(|dates| dates.closes),
        sd_open: dates.map(|dates| dates.sd_open),
        sd_close: dates.map(|dates| dates.sd_close),
        next_good: stretch(0).map(|s| s.0),
        next_good_to: stretch(0).map(|s| s.1),
        after_next: stretch(1).map(|s| s.0),
        after_next_to: stretch(1).map(|s| s.1),
        basis: dates.map(|dates| dates.basis),
        before: before(scene, day),
        spring: scene.question.spring.as_ref().map(|table| SpringAnswer {
            days: table.days.len(),
            bad: table.bad.clone(),
            doubts: table.doubts.clone(),
        }),
        nearest_km: scene
            .local
            .climate
            .as_ref()
            .map(|climate| climate.nearest_km),
        elevation_m: scene
            .local
            .climate
            .as_ref()
            .and_then(|climate| climate.site.elev_m),
        table_missing: scene.local.table_missing,
        because: timing_because(scene),
        flags: season.flags().to_vec(),
        short_season: season.is_short(day),
        tape: if season.is_timed() {
            season
                .tape(day.year())
                .into_iter()
                .map(|span| TapeSpan {
                    from: span.from,
                    to: span.to,
                    fill: span.fill,
                })
                .collect()
        } else {
            Vec::new()
        },
    }
}

/// Months of law and biology for this tree: birds and bats for any, pests for their hosts.
fn rules(scene: &Scene<'_>, asked: Option<NaiveDate>, day: NaiveDate) -> Vec<Rules> {
    let question = scene.question;
    let has = |mark: Trait| question.species.has(mark);
    let mut topics = vec![Topic::Birds, Topic::Bats];
    for (mark, topic) in [
        (Trait::Elm, Topic::Elm),
        (Trait::Pine, Topic::PineBeetles),
        (Trait::Ash, Topic::AshBorer),
    ] {
        if has(mark) {
            topics.push(topic);
        }
    }
    let region = question.region.as_deref();
    let hemisphere = question.place.hemisphere();
    let mut rows: Vec<(restrictions::Applied, bool)> =
        restrictions::for_region(scene.reference.restrictions, region, hemisphere, &topics)
            .into_iter()
            .map(|row| (row, false))
            .collect();
    let oak = match scene.oak_wilt {
        Some(OakWilt::State(row)) => Some((row, false)),
        Some(OakWilt::Default(row)) => Some((row, true)),
        Some(OakWilt::NotKnownThere) | None => None,
    };
    if let Some((restriction, is_default)) = oak {
        rows.push((
            restrictions::Applied {
                restriction,
                is_default,
            },
            true,
        ));
    }
    rows.into_iter()
        .map(|(applied, closes)| {
            let row = applied.restriction;
            Rules {
                topic: row.topic,
                from_md: row.from_md,
                to_md: row.to_md,
                jurisdiction: row.jurisdiction,
                force: row.force,
                is_default: applied.is_default,
                closes,
                on_the_day: row.covers(day) || asked.is_some_and(|asked| row.covers(asked)),
                because: row.cite,
            }
        })
        .collect()
}

/// What was not given, and what was used. Only fields that some model read.
fn assumed(question: &Question, height: &height::Height, stems: &[StemAnswer]) -> Vec<Assumed> {
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
    let largest = question.largest();
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
        list.push(word("setting", question.setting.word()));
    }
    if question.leafed_out.is_none()
        && let Place::Hemisphere(hemisphere) = question.place
    {
        let name = match hemisphere {
            crate::timing::Hemisphere::North => "north",
            crate::timing::Hemisphere::South => "south",
        };
        list.push(word("place", name));
    }
    if question.region.is_none() {
        list.push(word("region", "cautious_default"));
    }
    if question.walk_min.is_none() {
        list.push(word("walk", "two_minutes"));
    }
    if question.herbicide == Herbicide::NotSaid {
        list.push(word("herbicide", "not_said"));
    }
    if height.whole_table || question.targets.is_empty() && !question.none_in_reach {
        list.push(word("targets", "not_checked"));
    }
    list
}

/// Every source that the answer rests on, each once.
fn sources(reference: &Reference, answer: &Answer) -> Vec<SourceLine> {
    let mut ids: Vec<&'static str> = Vec::new();
    let mut take = |cites: &[Cite]| ids.extend(cites.iter().map(|cite| cite.source));
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
    take(&answer.reach.because);
    for line in &answer.methods {
        for reason in &line.reasons {
            take(reason.because);
        }
    }
    if let Some(effort) = &answer.effort {
        take(&effort.because);
    }
    if let Some(habitat) = &answer.habitat {
        take(&habitat.because);
        for user in &habitat.users {
            take(&[user.because]);
        }
    }
    if let Some(outlook) = &answer.outlook {
        for season in &outlook.seasons {
            take(season.species_row.as_ref().map_or(&[], |row| row.because));
        }
        for later in &outlook.later {
            take(later.row.because);
        }
    }
    for rule in &answer.rules {
        take(&[rule.because]);
    }
    for line in &answer.cautions {
        let caution = reference
            .cautions
            .iter()
            .find(|caution| caution.id == line.id);
        take(caution.map_or(&[], |caution| caution.cites));
    }
    ids.sort_unstable();
    ids.dedup();
    ids.into_iter()
        .map(|id| SourceLine {
            id,
            label: reference.source(id).map_or("", |source| source.label),
        })
        .collect()
}
