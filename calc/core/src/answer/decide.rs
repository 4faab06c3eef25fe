//! The outcome order: the first that holds. What is at the head, for which day, and what stands beside it.

use super::facts::{Facts, Levels, level};
use super::open;
use crate::answer::Conditional;
use crate::models::method;
use crate::models::reach;
use crate::question::{Day, Question};
use crate::terms::method::{Level, Method};
use crate::terms::tree::{Herbicide, Stem};
use crate::terms::words::words;
use chrono::{Datelike, NaiveDate};
use serde::Serialize;

words! {
    /// The five outcomes.
    pub enum Outcome {
        /// Ring it.
        Do,
        /// Ring it, on a later day.
        Wait,
        /// Another method.
        OtherMethod,
        /// Leave it to a professional.
        Professional,
        /// Something decisive is not known.
        CannotTell,
    }
}

/// Something that stands beside the headline.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct Also {
    /// What it is.
    pub kind: AlsoKind,
    /// The method.
    pub method: Method,
    /// Its level.
    pub level: Level,
    /// Whether only a professional, or a licensed applicator, may do it.
    pub by_professional: bool,
    /// The day, where it is for another day.
    #[serde(serialize_with = "crate::terms::day::maybe_day")]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<String>"),
        ts(type = "string | null")
    )]
    pub day: Option<NaiveDate>,
}

words! {
    /// Kinds of such lines.
    pub enum AlsoKind {
        /// The best method if the condition does not hold.
        Otherwise,
        /// The best method without herbicide.
        WithoutHerbicide,
        /// A ring on a later day.
        RingLater,
        /// A ring is possible, though something stands against it.
        RingPossible,
        /// The next method behind a ring that is only possible.
        NextMethod,
        /// The ring is ruled out on every day at this place.
        NoRingHere,
    }
}

/// What was decided: the outcome, the day that it is for, and the lines beside it.
pub struct Decision {
    /// The outcome.
    pub outcome: Outcome,
    /// The method at the head.
    pub headline: Method,
    /// Whether only a professional may do it.
    pub by_professional: bool,
    /// The day that it is for.
    pub day: NaiveDate,
    /// The next best thing to say.
    pub next_line: Option<Also>,
    /// What else stands beside it.
    pub also: Vec<Also>,
    /// What is open.
    pub open: Vec<Conditional>,
    /// Whether the group's size for volunteers, and nothing else, makes it a professional's.
    pub by_size: bool,
}

/// The outcome order: the first that holds. A tree thicker than the group leaves to volunteers is a professional's,
/// unless the answer is to leave it alone.
pub fn decide(facts: &Facts<'_>) -> Decision {
    let mut decision = by_the_models(facts);
    let dbh = facts.question.tree.largest().dbh.mm();
    let work = decision.outcome == Outcome::CannotTell || decision.headline != Method::LeaveIt;
    if work
        && decision.outcome != Outcome::Professional
        && facts.question.tree.tighten.too_large(dbh)
    {
        decision = Decision {
            outcome: Outcome::Professional,
            day: match facts.question.day {
                Day::On(day) => day,
                Day::Year { .. } => decision.day,
            },
            next_line: None,
            also: Vec::new(),
            by_size: true,
            ..decision
        };
    }
    decision
}

fn by_the_models(facts: &Facts<'_>) -> Decision {
    let question = facts.question;
    let stem = question.tree.largest();
    let start = question.day.start();
    // The first best day is fixed before its headline is tested.
    let closed = |day: NaiveDate| facts.ring_closed(day);
    let first_best = facts.season.best_day(start, &closed);
    let asked = match question.day {
        Day::On(day) => day,
        Day::Year { .. } => first_best.unwrap_or(start),
    };
    let lines = facts.lines(stem, asked);
    let headline = facts.head(&lines, stem);
    let mut decision = Decision {
        outcome: Outcome::OtherMethod,
        headline,
        by_professional: professional(&lines, headline),
        day: asked,
        next_line: None,
        also: Vec::new(),
        open: Vec::new(),
        by_size: false,
    };
    if stopped(facts, &lines) {
        decision.outcome = Outcome::Professional;
        return decision;
    }
    let possible_best = facts
        .season
        .best_day(start, &|_| false)
        .filter(|_| facts.oak_open());
    decision.open = open::conditions(facts, asked, first_best.or(possible_best));
    if !decision.open.is_empty() {
        let lines = facts.levels(&open::otherwise(facts, stem, asked, &decision.open));
        decision.outcome = Outcome::CannotTell;
        decision.headline = facts.head(&lines, stem);
        decision.by_professional = professional(&lines, decision.headline);
        decision.next_line = Some(also(AlsoKind::Otherwise, &lines, decision.headline, None));
        decision
            .also
            .extend(without_herbicide(facts, &lines, decision.headline));
        return decision;
    }
    if headline == Method::BarkRing {
        decision.outcome = Outcome::Do;
        beside_ring(facts, &lines, &mut decision);
        return decision;
    }
    let later = ring_later(facts, stem, asked, first_best);
    if let Later::On(day) = later
        && !question.cannot_wait
    {
        let wait = (day - asked).num_days() as f64;
        let long = wait > facts.reference.constants.answer.long_wait_days;
        let instead = long.then(|| now_instead(facts, &lines, stem)).flatten();
        if let Some(method) = instead {
            decision.headline = method;
            decision.by_professional = professional(&lines, method);
            let then = facts.lines(stem, day);
            decision.next_line = Some(also(
                AlsoKind::RingLater,
                &then,
                Method::BarkRing,
                Some(day),
            ));
        } else {
            let then = facts.lines(stem, day);
            decision.outcome = Outcome::Wait;
            decision.headline = Method::BarkRing;
            decision.by_professional = professional(&then, Method::BarkRing);
            decision.day = day;
            beside_ring(facts, &then, &mut decision);
        }
        return decision;
    }
    if headline == Method::LeaveIt
        && !question.cannot_wait
        && let Some((day, method)) = other_later(facts, stem, asked)
    {
        let then = facts.lines(stem, day);
        decision.outcome = Outcome::Wait;
        decision.headline = method;
        decision.by_professional = professional(&then, method);
        decision.day = day;
        decision.next_line = (later == Later::Never)
            .then(|| also(AlsoKind::NoRingHere, &then, Method::BarkRing, None));
        decision
            .also
            .extend(without_herbicide(facts, &then, method));
        return decision;
    }
    beside_other(facts, &lines, later, &mut decision);
    decision
}

fn professional(lines: &Levels, method: Method) -> bool {
    lines
        .iter()
        .any(|line| line.method == method && line.by_professional)
}

/// A line, a stop, or inside with nothing left but felling.
fn stopped(facts: &Facts<'_>, lines: &Levels) -> bool {
    match facts.reach.outcome {
        reach::Outcome::Line | reach::Outcome::Professional => true,
        reach::Outcome::Inside => {
            let mut left = lines
                .iter()
                .filter(|line| line.level <= Level::Possible && line.method != Method::LeaveIt)
                .peekable();
            // A small stem is cut by whoever asks: that is what its row is for.
            !facts.reach.small
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
    facts: &Facts<'_>,
    stem: &Stem,
    asked: NaiveDate,
    first_best: Option<NaiveDate>,
) -> Later {
    let in_season = facts.lines_in_season(facts.question.tree.largest(), asked);
    if facts.head(&in_season, stem) != Method::BarkRing {
        return Later::No;
    }
    let Some(best) = first_best else {
        return Later::Never;
    };
    if facts.ring_heads(best) {
        return Later::On(best);
    }
    // The best day has another headline; a later day of the window may still have the ring.
    let shut = |day: NaiveDate| !facts.ring_heads(day);
    facts
        .season
        .best_day(asked, &shut)
        .map_or(Later::No, Later::On)
}

/// A recommended method that stands now and needs no herbicide, unless herbicide is allowed.
fn now_instead(facts: &Facts<'_>, lines: &Levels, stem: &Stem) -> Option<Method> {
    let allowed = herbicide_allowed(facts.question);
    let method = method::headline(
        lines,
        &facts.reference.constants.method,
        facts.question.tree.goal,
        stem.dbh.mm(),
        |line| line.level == Level::Recommended && (allowed || !line.method.needs_herbicide()),
    );
    (method != Method::LeaveIt).then_some(method)
}

fn herbicide_allowed(question: &Question) -> bool {
    matches!(
        question.tree.herbicide,
        Herbicide::Licensed | Herbicide::Yes
    )
}

/// The first later day, within a year, on which some method stands at possible or better.
fn other_later(facts: &Facts<'_>, stem: &Stem, asked: NaiveDate) -> Option<(NaiveDate, Method)> {
    // Methods depend on the day by its month and half-months only, and on the bark.
    core::iter::successors(asked.succ_opt(), NaiveDate::succ_opt)
        .take(366)
        .filter(|day| matches!(day.day(), 1 | 15 | 16))
        .find_map(|day| {
            let lines = facts.lines(facts.question.tree.largest(), day);
            let method = facts.head(&lines, stem);
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
fn without_herbicide(facts: &Facts<'_>, lines: &Levels, headline: Method) -> Option<Also> {
    if facts.question.tree.herbicide != Herbicide::NotSaid || !headline.needs_herbicide() {
        return None;
    }
    let dbh = facts.question.tree.largest().dbh.mm();
    let method = method::headline(
        lines,
        &facts.reference.constants.method,
        facts.question.tree.goal,
        dbh,
        |line| !line.method.needs_herbicide(),
    );
    Some(also(AlsoKind::WithoutHerbicide, lines, method, None))
}

/// Beside a ring that is only possible stands the next method.
fn beside_ring(facts: &Facts<'_>, lines: &Levels, decision: &mut Decision) {
    if level(lines, Method::BarkRing) == Level::Recommended {
        return;
    }
    let dbh = facts.question.tree.largest().dbh.mm();
    let next = method::headline(
        lines,
        &facts.reference.constants.method,
        facts.question.tree.goal,
        dbh,
        |line| line.method != Method::BarkRing,
    );
    decision.next_line = Some(also(AlsoKind::NextMethod, lines, next, None));
    decision.also.extend(without_herbicide(facts, lines, next));
}

/// Beside another method: what stands without herbicide, and how the ring stands.
fn beside_other(facts: &Facts<'_>, lines: &Levels, later: Later, decision: &mut Decision) {
    let mut beside: Vec<Also> = Vec::new();
    beside.extend(without_herbicide(facts, lines, decision.headline));
    match later {
        Later::Never => beside.push(also(AlsoKind::NoRingHere, lines, Method::BarkRing, None)),
        Later::On(day) => {
            let then = facts.lines(facts.question.tree.largest(), day);
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
