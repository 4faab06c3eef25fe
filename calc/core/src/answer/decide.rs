//! The outcome order: the first that holds. What is at the head, and for which day.

use super::beside::{Also, AlsoKind, also, beside_other, beside_ring, without_herbicide};
use super::facts::{Facts, Levels};
use super::head_on_day::{
    HeadOnDay, Later, NOTHING, better, professional, rank, ring_later, ring_with,
};
use super::open;
use crate::answer::Conditional;
use crate::models::provisos;
use crate::models::reach;
use crate::question::Day;
use crate::terms::method::{Level, Method};
use crate::terms::tree::{Herbicide, Stem};
use crate::terms::words::words;
use chrono::NaiveDate;

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

/// What was decided: the outcome, the day that it is for, and the lines beside it.
pub(super) struct Decision {
    /// The outcome.
    pub outcome: Outcome,
    /// The method at the head.
    pub headline: Method,
    /// Whether only a professional may do it.
    pub by_professional: bool,
    /// The day that it is for.
    pub day: NaiveDate,
    /// The row that keeps the method from the day asked about, where the answer waits.
    pub waits_for: Option<&'static str>,
    /// The next best thing to say.
    pub next_line: Option<Also>,
    /// What else stands beside it.
    pub also: Vec<Also>,
    /// What is open.
    pub open: Vec<Conditional>,
    /// Whether the group's size for volunteers, and nothing else, makes it a professional's.
    pub by_size: bool,
}

impl Decision {
    fn new(outcome: Outcome, lines: &Levels, headline: Method, day: NaiveDate) -> Self {
        Self {
            outcome,
            headline,
            by_professional: professional(lines, headline),
            day,
            waits_for: None,
            next_line: None,
            also: Vec::new(),
            open: Vec::new(),
            by_size: false,
        }
    }

    /// Lines beside the headline: the first is the next line.
    fn beside(mut self, lines: impl IntoIterator<Item = Also>) -> Self {
        let mut lines = lines.into_iter();
        self.next_line = lines.next();
        self.also = lines.collect();
        self
    }
}

/// The outcome order: the first that holds. A tree thicker than the group leaves to volunteers is a professional's,
/// unless the answer is to leave it alone.
pub(super) fn decide(facts: &Facts<'_>) -> Decision {
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
            waits_for: None,
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
    let stem = facts.stem;
    let start = question.day.start();
    // The first best day is fixed before its headline is tested; a stop on a day that was asked about needs none.
    let first_best = || facts.calendar.first_best(start, true);
    let asked = match question.day {
        Day::On(day) => day,
        Day::Year { .. } => first_best().unwrap_or(start),
    };
    let lines = facts.lines(stem, asked);
    let headline = facts.head(&lines, stem);
    if stopped(facts, &lines, asked) {
        return Decision::new(Outcome::Professional, &lines, headline, asked);
    }
    let first_best = first_best();
    let possible_best = facts
        .calendar
        .oak_open()
        .then(|| facts.calendar.first_best(start, false))
        .flatten();
    let open = open::conditions(facts, asked, first_best.or(possible_best));
    if !open.is_empty() {
        return cannot_tell(facts, asked, open);
    }
    let ring = ring_with(facts, start, first_best, question.tree.herbicide);
    let later = ring_later(facts, stem, start, first_best, ring);
    let decision = match question.day {
        Day::On(_) => on_a_day(facts, asked, ring, later),
        Day::Year { .. } => in_a_year(facts, start, ring, later),
    };
    // Pulled or left alone today whatever stands near: another method on a later day does ask what stands near.
    let pulled = matches!(decision.headline, Method::PullOrDig | Method::LeaveIt);
    if facts.reach.outcome == reach::ReachOutcome::NotChecked && !pulled {
        return cannot_tell(facts, asked, open::of_reach(facts));
    }
    decision
}

/// Something decisive is not known. Where that is a line or the reach, nobody is told to do anything, and what stands
/// if something is there is a professional's or the line's owner's.
fn cannot_tell(facts: &Facts<'_>, asked: NaiveDate, open: Vec<Conditional>) -> Decision {
    let stem = facts.stem;
    let lines = facts.levels(&open::otherwise(facts, stem, asked, &open));
    let mut decision = if open::reach_is_open(&open) {
        let kind = AlsoKind::OrProfessional;
        Decision::new(Outcome::CannotTell, &lines, Method::LeaveIt, asked).beside([also(
            kind,
            &lines,
            Method::LeaveIt,
            None,
        )])
    } else {
        let headline = facts.head(&lines, stem);
        let without = without_herbicide(facts, asked, headline);
        Decision::new(Outcome::CannotTell, &lines, headline, asked).beside(
            [
                Some(also(AlsoKind::Otherwise, &lines, headline, None)),
                without,
            ]
            .into_iter()
            .flatten(),
        )
    };
    decision.open = open;
    decision
}

/// The answer for a planned day: what heads on it, or a wait for what heads higher.
fn on_a_day(
    facts: &Facts<'_>,
    asked: NaiveDate,
    ring: Option<HeadOnDay>,
    later: Later,
) -> Decision {
    let question = facts.question;
    let stem = facts.stem;
    let lines = facts.lines(stem, asked);
    let today = facts.head(&lines, stem);
    let now = rank(&lines, today);
    // Nothing heads higher than what is recommended: the year is looked through only where something may.
    if !question.cannot_wait && (now > 0 || matches!(later, Later::On(_, rank) if rank == 0)) {
        let other = (now > 0)
            .then(|| better(facts, asked, question.tree.herbicide))
            .flatten();
        let best_other = other.map_or(NOTHING, |found| found.rank);
        // Nothing heads higher than the ring will: it goes first.
        if let Later::On(day, rank) = later
            && today != Method::BarkRing
            && rank <= now
            && rank <= best_other
        {
            let wait = (day - asked).num_days() as f64;
            let long = wait > facts.reference.constants.answer.long_wait_days;
            return match long.then(|| now_instead(facts, &lines, stem)).flatten() {
                Some(instead) => {
                    let then = facts.lines(stem, day);
                    let line = also(AlsoKind::RingLater, &then, Method::BarkRing, Some(day));
                    Decision::new(Outcome::OtherMethod, &lines, instead, asked).beside([line])
                }
                None => wait_for_ring(facts, asked, day),
            };
        }
        let ring = ring.filter(|found| found.rank < now);
        let other = other.filter(|found| found.rank < now);
        match (ring, other) {
            (Some(ring), other) if other.is_none_or(|other| ring.rank <= other.rank) => {
                return wait_for_ring(facts, asked, ring.day);
            }
            (_, Some(other)) => return wait_for_other(facts, asked, other, later),
            _ => {}
        }
    }
    if today == Method::BarkRing {
        let beside = beside_ring(facts, &lines, asked);
        return Decision::new(Outcome::Do, &lines, today, asked).beside(beside);
    }
    let beside = beside_other(facts, &lines, asked, today, later);
    Decision::new(Outcome::OtherMethod, &lines, today, asked).beside(beside)
}

/// The best day of the twelve months, where no day was asked about: the ring's first best day while nothing heads
/// higher, else the first day of what does.
fn in_a_year(
    facts: &Facts<'_>,
    start: NaiveDate,
    ring: Option<HeadOnDay>,
    later: Later,
) -> Decision {
    let question = facts.question;
    let stem = facts.stem;
    let now = facts.lines_without_ring(facts.calendar.part(start), question.tree.herbicide);
    let today = facts.head(&now, stem);
    let mut best = HeadOnDay {
        day: start,
        method: today,
        rank: rank(&now, today),
    };
    if best.rank > 0
        && let Some(other) = better(facts, start, question.tree.herbicide)
        && other.rank < best.rank
    {
        best = other;
    }
    if let Some(ring) = ring
        && ring.rank <= best.rank
    {
        let lines = facts.lines(stem, ring.day);
        let beside = beside_ring(facts, &lines, ring.day);
        return Decision::new(Outcome::Do, &lines, Method::BarkRing, ring.day).beside(beside);
    }
    let lines = facts.lines_without_ring(facts.calendar.part(best.day), question.tree.herbicide);
    let beside = beside_other(facts, &lines, best.day, best.method, later);
    Decision::new(Outcome::OtherMethod, &lines, best.method, best.day).beside(beside)
}

fn wait_for_ring(facts: &Facts<'_>, asked: NaiveDate, day: NaiveDate) -> Decision {
    let stem = facts.stem;
    let then = facts.lines(stem, day);
    let now = facts.lines(stem, asked);
    let today = facts.head(&now, stem);
    let today = also(AlsoKind::Today, &now, today, None);
    let beside = core::iter::once(today).chain(beside_ring(facts, &then, day));
    let mut decision = Decision::new(Outcome::Wait, &then, Method::BarkRing, day).beside(beside);
    decision.waits_for = waits_for(facts, Method::BarkRing, asked, day);
    decision
}

fn wait_for_other(facts: &Facts<'_>, asked: NaiveDate, found: HeadOnDay, later: Later) -> Decision {
    let stem = facts.stem;
    let now = facts.lines(stem, asked);
    let then = facts.lines_without_ring(
        facts.calendar.part(found.day),
        facts.question.tree.herbicide,
    );
    let mut today = also(AlsoKind::Today, &now, facts.head(&now, stem), None);
    today.take_away_or_peel =
        provisos::breeds_beetles(&facts.case(stem, asked, facts.outcome()), today.method);
    let mut beside = vec![today];
    beside.extend(without_herbicide(facts, asked, found.method));
    if later == Later::Never {
        beside.push(also(AlsoKind::NoRingHere, &then, Method::BarkRing, None));
    }
    let mut decision = Decision::new(Outcome::Wait, &then, found.method, found.day).beside(beside);
    decision.waits_for = waits_for(facts, found.method, asked, found.day);
    decision
}

/// The row that keeps a method from a day, and not from a later one: the worst of them.
fn waits_for(
    facts: &Facts<'_>,
    waited: Method,
    asked: NaiveDate,
    then: NaiveDate,
) -> Option<&'static str> {
    if facts.head_alone {
        return None;
    }
    let stem = facts.stem;
    let reasons = |day: NaiveDate| {
        let lines = facts.judge(&facts.case(stem, day, facts.outcome()));
        let line = lines.into_iter().find(|line| line.method == waited);
        line.map(|line| line.reasons).unwrap_or_default()
    };
    let then = reasons(then);
    let mut worst: Option<(Level, &'static str)> = None;
    for reason in reasons(asked) {
        let only_now = then.iter().all(|later| later.rule != reason.rule);
        if only_now && worst.is_none_or(|(level, _)| reason.at_most > level) {
            worst = Some((reason.at_most, reason.rule));
        }
    }
    worst.map(|(_, rule)| rule)
}

/// A line or a stop; inside with nothing left but felling; inside with nothing left on any day of twelve months.
fn stopped(facts: &Facts<'_>, lines: &Levels, asked: NaiveDate) -> bool {
    match facts.reach.outcome {
        reach::ReachOutcome::Line | reach::ReachOutcome::Professional => true,
        // A small stem is cut by whoever asks: that is what its row is for.
        reach::ReachOutcome::Inside if !facts.reach.small => {
            let question = facts.question;
            let mut left = lines
                .iter()
                .filter(|line| line.level <= Level::Possible && line.method != Method::LeaveIt)
                .peekable();
            if left.peek().is_some() {
                // Up to 6 in and measured it falls short of what stands there: someone trained to fell may.
                let trained = question.tree.height.is_some()
                    && question.tree.largest().dbh.mm()
                        <= facts.reference.constants.answer.trained_mm;
                return !trained
                    && left.all(|line| matches!(line.method, Method::Fell | Method::CutStump));
            }
            !question.tree.nothing_left() && better(facts, asked, question.tree.herbicide).is_none()
        }
        _ => false,
    }
}

/// A recommended method that stands now and needs no herbicide, unless herbicide is allowed.
fn now_instead(facts: &Facts<'_>, lines: &Levels, stem: &Stem) -> Option<Method> {
    let allowed = matches!(
        facts.question.tree.herbicide,
        Herbicide::Licensed | Herbicide::Yes
    );
    let method = facts.best(lines, stem, |line| {
        line.level == Level::Recommended && (allowed || !line.method.needs_herbicide())
    });
    (method != Method::LeaveIt).then_some(method)
}
