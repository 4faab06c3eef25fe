//! The outcome order: the first that holds. What is at the head, for which day, and what stands beside it.

use super::facts::{Facts, Levels, level};
use super::open;
use crate::answer::Conditional;
use crate::models::provisos;
use crate::models::reach;
use crate::question::Day;
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
    /// Whether its wood breeds beetles then, so that it is taken away or peeled within three weeks.
    pub take_away_or_peel: bool,
    /// Whether only someone trained to fell may do it, since something stands near.
    pub trained_to_fell: bool,
    /// The day, where it is for another day.
    #[serde(serialize_with = "crate::terms::day::maybe_day")]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<String>"),
        ts(type = "string | null")
    )]
    pub day: Option<NaiveDate>,
    /// The last day of the stretch that this day begins; none where it may be any day from then on.
    #[serde(serialize_with = "crate::terms::day::maybe_day")]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<String>"),
        ts(type = "string | null")
    )]
    pub to: Option<NaiveDate>,
}

words! {
    /// Kinds of such lines.
    pub enum AlsoKind {
        /// The best method if the condition does not hold.
        Otherwise,
        /// What it could hit, or a line, is not known: if something is there, a professional or the line's owner.
        OrProfessional,
        /// The best method on the day asked about, where the answer waits for a better one.
        Today,
        /// The best method without herbicide.
        WithoutHerbicide,
        /// A method that kills more than the ring, which is likely to kill fewer than half.
        KillsMore,
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

/// A better method is looked for so many days ahead: a leap year's.
const YEAR_DAYS: usize = 366;

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
    let stem = question.tree.heading();
    let start = question.day.start();
    // The first best day is fixed before its headline is tested.
    let first_best = facts.first_best(start, true);
    let asked = match question.day {
        Day::On(day) => day,
        Day::Year { .. } => first_best.unwrap_or(start),
    };
    let lines = facts.lines(stem, asked);
    let headline = facts.head(&lines, stem);
    if stopped(facts, &lines, asked) {
        return Decision::new(Outcome::Professional, &lines, headline, asked);
    }
    let possible_best = facts
        .oak_open()
        .then(|| facts.first_best(start, false))
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
    if facts.reach.outcome == reach::Outcome::NotChecked && !pulled {
        return cannot_tell(facts, asked, open::of_reach(facts));
    }
    decision
}

/// Something decisive is not known. Where that is a line or the reach, nobody is told to do anything, and what stands
/// if something is there is a professional's or the line's owner's.
fn cannot_tell(facts: &Facts<'_>, asked: NaiveDate, open: Vec<Conditional>) -> Decision {
    let stem = facts.question.tree.heading();
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
fn on_a_day(facts: &Facts<'_>, asked: NaiveDate, ring: Option<Found>, later: Later) -> Decision {
    let question = facts.question;
    let stem = question.tree.heading();
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
fn in_a_year(facts: &Facts<'_>, start: NaiveDate, ring: Option<Found>, later: Later) -> Decision {
    let question = facts.question;
    let stem = question.tree.heading();
    let now = facts.lines_without_ring(stem, start, question.tree.herbicide);
    let today = facts.head(&now, stem);
    let mut best = Found {
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
    let lines = facts.lines_without_ring(stem, best.day, question.tree.herbicide);
    let beside = beside_other(facts, &lines, best.day, best.method, later);
    Decision::new(Outcome::OtherMethod, &lines, best.method, best.day).beside(beside)
}

fn wait_for_ring(facts: &Facts<'_>, asked: NaiveDate, day: NaiveDate) -> Decision {
    let stem = facts.question.tree.heading();
    let then = facts.lines(stem, day);
    let now = facts.lines(stem, asked);
    let today = facts.head(&now, stem);
    let today = also(AlsoKind::Today, &now, today, None);
    let beside = core::iter::once(today).chain(beside_ring(facts, &then, day));
    let mut decision = Decision::new(Outcome::Wait, &then, Method::BarkRing, day).beside(beside);
    decision.waits_for = waits_for(facts, Method::BarkRing, asked, day);
    decision
}

fn wait_for_other(facts: &Facts<'_>, asked: NaiveDate, found: Found, later: Later) -> Decision {
    let stem = facts.question.tree.heading();
    let now = facts.lines(stem, asked);
    let then = facts.lines_without_ring(stem, found.day, facts.question.tree.herbicide);
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
    let stem = facts.question.tree.heading();
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

fn professional(lines: &Levels, method: Method) -> bool {
    lines
        .iter()
        .any(|line| line.method == method && line.by_professional)
}

/// How high something heads: leaving it alone counts below possible.
fn rank(lines: &Levels, head: Method) -> u8 {
    match (head, level(lines, head)) {
        (Method::LeaveIt, _) => NOTHING,
        (_, Level::Recommended) => 0,
        (_, Level::Possible) => 1,
        (_, Level::NotAdvised | Level::RuledOut) => NOTHING,
    }
}

/// The rank of leaving it alone.
const NOTHING: u8 = 2;

/// A line or a stop; inside with nothing left but felling; inside with nothing left on any day of twelve months.
fn stopped(facts: &Facts<'_>, lines: &Levels, asked: NaiveDate) -> bool {
    match facts.reach.outcome {
        reach::Outcome::Line | reach::Outcome::Professional => true,
        // A small stem is cut by whoever asks: that is what its row is for.
        reach::Outcome::Inside if !facts.reach.small => {
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

/// Whether, and when, the ring would be at the head but for the day.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Later {
    /// On this day, with its rank.
    On(NaiveDate, u8),
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
    ring: Option<Found>,
) -> Later {
    let in_season = facts.lines_in_season(facts.question.tree.heading(), asked);
    if facts.head(&in_season, stem) != Method::BarkRing {
        return Later::No;
    }
    match first_best {
        None => Later::Never,
        Some(_) => ring.map_or(Later::No, |found| Later::On(found.day, found.rank)),
    }
}

/// A method that heads on a day, and how high.
#[derive(Clone, Copy)]
struct Found {
    day: NaiveDate,
    method: Method,
    rank: u8,
}

/// The ring on its first best day, where it heads then.
fn ring_with(
    facts: &Facts<'_>,
    from: NaiveDate,
    first_best: Option<NaiveDate>,
    herbicide: Herbicide,
) -> Option<Found> {
    let day = first_best?;
    // Where it shall only be dead, a ring that kills few gives way to what kills more on any day.
    if facts.gives_way(facts.question.tree.heading()) && kills_more_later(facts, from, herbicide) {
        return None;
    }
    let lines = facts.lines_with(facts.question.tree.heading(), day, herbicide);
    facts.ring_heads(day, herbicide).then(|| Found {
        day,
        method: Method::BarkRing,
        rank: rank(&lines, Method::BarkRing),
    })
}

/// Whether a method that kills more than a ring stands on a day or on a later one within a year.
fn kills_more_later(facts: &Facts<'_>, from: NaiveDate, herbicide: Herbicide) -> bool {
    let stem = facts.question.tree.heading();
    core::iter::once(from).chain(turning_days(from)).any(|day| {
        let lines = facts.lines_without_ring(stem, day, herbicide);
        facts.kills_more(&lines, stem).is_some()
    })
}

/// The later days within a year on which the methods apart from the ring may change: they depend on the day by its
/// month and half-months only.
fn turning_days(asked: NaiveDate) -> impl Iterator<Item = NaiveDate> {
    core::iter::successors(asked.succ_opt(), NaiveDate::succ_opt)
        .take(YEAR_DAYS)
        .filter(|day| matches!(day.day(), 1 | 15 | 16))
}

/// The method that heads highest on a later day within a year, apart from the ring, on the first such day.
fn better(facts: &Facts<'_>, asked: NaiveDate, herbicide: Herbicide) -> Option<Found> {
    let stem = facts.question.tree.heading();
    let mut best: Option<Found> = None;
    for day in turning_days(asked).filter(|day| !facts.soon_closed(*day)) {
        let lines = facts.lines_without_ring(stem, day, herbicide);
        let method = facts.head(&lines, stem);
        let rank = rank(&lines, method);
        if rank < best.map_or(NOTHING, |best| best.rank) {
            best = Some(Found { day, method, rank });
        }
    }
    best
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

fn also(kind: AlsoKind, lines: &Levels, method: Method, day: Option<NaiveDate>) -> Also {
    Also {
        kind,
        method,
        level: level(lines, method),
        by_professional: professional(lines, method),
        take_away_or_peel: false,
        trained_to_fell: false,
        day,
        to: None,
    }
}

/// Nothing was said of herbicide and the head needs it: the best method without stands beside it, on that day, else on
/// the first day within a year on which one stands.
fn without_herbicide(facts: &Facts<'_>, day: NaiveDate, headline: Method) -> Option<Also> {
    if facts.question.tree.herbicide != Herbicide::NotSaid || !headline.needs_herbicide() {
        return None;
    }
    let stem = facts.question.tree.heading();
    let kind = AlsoKind::WithoutHerbicide;
    let lines = facts.lines_with(stem, day, Herbicide::No);
    let method = facts.head(&lines, stem);
    if method != Method::LeaveIt || facts.question.cannot_wait {
        return Some(also(kind, &lines, method, None));
    }
    let ring = ring_with(facts, day, facts.first_best(day, true), Herbicide::No);
    let other = better(facts, day, Herbicide::No);
    let found = match (ring, other) {
        (Some(ring), Some(other)) if other.rank < ring.rank => Some(other),
        (Some(ring), _) => Some(ring),
        (None, other) => other,
    };
    Some(match found {
        Some(found) => {
            let lines = facts.lines_with(stem, found.day, Herbicide::No);
            also(kind, &lines, found.method, Some(found.day))
        }
        None => also(kind, &lines, Method::LeaveIt, None),
    })
}

/// Beside a ring stands the method that kills more, where the ring kills few; beside one that is only possible the
/// next method.
fn beside_ring(facts: &Facts<'_>, lines: &Levels, day: NaiveDate) -> Vec<Also> {
    let stem = facts.question.tree.heading();
    let mut beside = Vec::new();
    if level(lines, Method::BarkRing) != Level::Recommended {
        let next = facts.best(lines, stem, |line| line.method != Method::BarkRing);
        beside.push(also(AlsoKind::NextMethod, lines, next, None));
        beside
            .extend(without_herbicide(facts, day, next).filter(|it| it.method != Method::BarkRing));
    }
    if facts.kills_few(stem)
        && let Some(method) = facts.kills_more(lines, stem)
    {
        beside.push(also(AlsoKind::KillsMore, lines, method, None));
    }
    beside
}

/// Beside another method: what stands without herbicide, and how the ring stands.
fn beside_other(
    facts: &Facts<'_>,
    lines: &Levels,
    day: NaiveDate,
    headline: Method,
    later: Later,
) -> Vec<Also> {
    let mut beside: Vec<Also> = Vec::new();
    beside.extend(without_herbicide(facts, day, headline));
    match later {
        Later::Never => beside.push(also(AlsoKind::NoRingHere, lines, Method::BarkRing, None)),
        Later::On(day, _) => {
            let then = facts.lines(facts.question.tree.heading(), day);
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
    beside
}
