//! The numbers that people carry: four at most, each with its name, its unit, and the other unit below.

use crate::answer::frame::Region;
use crate::answer::ring::largest;
use crate::kind::Kind;
use crate::measure::{self, Both};
use crate::page::Page;
use crate::words::phrase;
use crate::words::{Word, m};
use calc::answer::Outcome;
use calc::models::provisos::Proviso;
use calc::models::reach::ReachOutcome as Reached;
use calc::terms::method::Method;
use calc::terms::tree::Herbicide;
use chrono::NaiveDate;

/// A number to carry.
struct Number {
    name: String,
    value: String,
    unit: String,
    below: String,
}

impl Number {
    fn new(name: Word, value: impl Into<String>, below: impl Into<String>) -> Self {
        Self {
            name: name.into(),
            value: value.into(),
            unit: String::new(),
            below: below.into(),
        }
    }

    /// A length in the reader's unit; `below` is told the other.
    fn length(
        cx: &Region<'_>,
        name: impl Into<String>,
        length: &Both,
        below: impl Fn(&str) -> String,
    ) -> Self {
        let (first, other) = length.ordered(cx.say.units());
        let (value, unit) = measure::parted(first);
        Self {
            name: name.into(),
            value: value.into(),
            unit: unit.into(),
            below: below(other),
        }
    }
}

/// The numbers of an answer, as a list of names and values. None where nothing can be told yet.
pub(super) fn four(out: &mut Page<'_>, cx: &Region<'_>) {
    let numbers = match cx.say.answer.outcome {
        Outcome::Do => doing(cx),
        Outcome::Wait => waiting(cx),
        Outcome::OtherMethod => another(cx),
        Outcome::Professional => stopped(cx),
        Outcome::CannotTell => return,
    };
    list(out, "four", &numbers);
}

/// The number that a small calculator was asked for, alone; nothing where this answer has none.
pub(in crate::answer) fn one(out: &mut Page<'_>, cx: &Region<'_>) {
    let answer = cx.say.answer;
    let number = match cx.options.kind {
        Kind::TreePlan => None,
        Kind::Year if answer.outcome == Outcome::Wait => Some(next_day(cx)),
        Kind::Year => Some(days(cx)),
        Kind::Ring => ring(cx),
        Kind::Reach => {
            let zone = measure::reach(answer.reach.zone_m);
            Some(Number::length(cx, m::CARD_N_REACH, &zone, |other| {
                m::card_n_with_wood(other)
            }))
        }
        Kind::Effort => minutes(cx),
        Kind::Checks => answer.visits.first().map(|first| {
            Number::new(
                m::CARD_N_FIRST_LOOK,
                measure::day_short(first.from),
                m::card_n_until(measure::day_year_short(first.to)),
            )
        }),
    };
    if let Some(number) = number {
        list(out, "one", &[number]);
    }
}

fn list(out: &mut Page<'_>, class: &str, numbers: &[Number]) {
    out.open_class("dl", class);
    for number in numbers {
        out.open("div");
        out.leaf("dt", number.name.as_str());
        out.open("dd");
        // A word is wider than a number: it is set smaller.
        let word = !number.value.bytes().any(|c| c.is_ascii_digit());
        out.open_class("b", if word { "word" } else { "" });
        big(out, &number.value);
        if !number.unit.is_empty() {
            out.text(" ");
            out.leaf("i", number.unit.as_str());
        }
        out.close();
        out.text(" ");
        out.leaf("span", number.below.as_str());
        out.close_two();
    }
    out.close();
}

/// A number whose fraction is set raised, so that it can be told from afar.
fn big(out: &mut Page<'_>, text: &str) {
    match text
        .char_indices()
        .find(|(_, c)| matches!(c, '¼' | '½' | '¾'))
    {
        Some((at, fraction)) if at > 0 => {
            let (whole, rest) = calc::terms::small::find::cut(text, at);
            let (fraction, rest) = calc::terms::small::find::cut(rest, fraction.len_utf8());
            out.text(whole);
            out.leaf_class("span", "h", fraction);
            if !rest.is_empty() {
                out.text(rest);
            }
        }
        _ => out.text(text),
    }
}

fn doing(cx: &Region<'_>) -> Vec<Number> {
    let mut list = Vec::new();
    list.extend(ring(cx));
    list.extend(minutes(cx));
    list.push(days(cx));
    list.extend(people(cx));
    list
}

fn waiting(cx: &Region<'_>) -> Vec<Number> {
    let mut list = vec![next_day(cx)];
    if cx.say.answer.headline_method == Method::BarkRing {
        list.extend(ring(cx));
        list.extend(minutes(cx));
    } else {
        list.push(who(cx));
        list.push(work(cx));
    }
    list.extend(people(cx));
    list
}

fn another(cx: &Region<'_>) -> Vec<Number> {
    let answer = cx.say.answer;
    if answer.headline_method == Method::LeaveIt {
        let mut list = vec![height(cx)];
        if cx.say.drops_wood() {
            let zone = measure::reach(answer.reach.zone_m);
            list.push(Number::length(cx, m::CARD_N_KEEP_OUT, &zone, |other| {
                m::card_n_from_now(other)
            }));
        } else {
            let nothing = m::CARD_N_NOTHING;
            list.push(Number::new(m::CARD_N_TO_DO, nothing, m::CARD_N_LIVES_ON));
        }
        list.push(trunk(cx));
        list.push(Number::new(
            m::CARD_N_LOOK,
            m::CARD_N_YEARLY,
            m::CARD_N_AFTER_STORMS,
        ));
        return list;
    }
    let [best, below] = best_when(cx);
    let mut list = vec![who(cx), work(cx), Number::new(m::CARD_N_BEST, best, below)];
    list.extend(people(cx));
    list
}

/// The best time of the method at the head; tree-of-heaven has months of its own.
fn best_when(cx: &Region<'_>) -> [Word; 2] {
    let head = cx.say.answer.headline_method;
    match head {
        Method::Frill | Method::BasalBark if cx.say.is_heaven() && cx.say.south() => {
            [m::CARD_N_HEAVEN_SOUTH, m::CARD_N_HEAVEN_SOUTH_TO]
        }
        Method::Frill | Method::BasalBark if cx.say.is_heaven() => {
            [m::CARD_N_HEAVEN, m::CARD_N_HEAVEN_TO]
        }
        head => [m::card_n_best_when(head), m::card_n_best_more(head)],
    }
}

fn stopped(cx: &Region<'_>) -> Vec<Number> {
    let line = cx.say.answer.reach.outcome == Reached::Line;
    let mut list = vec![height(cx)];
    let target = cx.say.decided().or(cx.say.nearest());
    if let Some((kind, far)) = target.and_then(|it| Some((it.kind, it.distance_m?))) {
        let name = phrase::sentence(&m::reach_target_short(kind));
        list.push(Number::length(cx, name, &measure::length(far), |other| {
            m::card_n_away(other)
        }));
    }
    if !line {
        list.push(trunk(cx));
        list.push(Number::new(
            m::CARD_N_ASK,
            m::CARD_N_CHECK,
            m::CARD_N_IN_WRITING,
        ));
    }
    list
}

fn ring(cx: &Region<'_>) -> Option<Number> {
    let ring = largest(cx)?.ring.as_ref()?;
    let least = measure::ring(ring.at_least_mm);
    let least = least.first(cx.say.units());
    let better = measure::ring(ring.better_mm);
    Some(Number::length(cx, m::CARD_N_RING, &better, |other| {
        m::card_n_least(m::CardNLeast { other, least })
    }))
}

fn minutes(cx: &Region<'_>) -> Option<Number> {
    let effort = cx.say.answer.effort.as_ref()?;
    let (span, hours) =
        measure::span_of_minutes(effort.low_min, effort.likely_min, effort.high_min);
    let long = effort.three_years;
    let whole = measure::span_of_minutes(long.minutes.low, long.minutes.likely, long.minutes.high);
    // In one unit only: `6 to 15; in all 40`.
    let whole = (long.visits > 0 && whole.1 == hours).then_some(whole.0);
    let [low, likely, high] = span;
    let mut below = range(&low, &high);
    if let Some([_, whole, _]) = &whole {
        let all = m::card_n_in_all(m::CardNInAll {
            low: &low,
            high: &high,
            whole,
        });
        if all.chars().count() <= BELOW {
            below = all;
        }
    }
    let mut number = Number::new(m::CARD_N_WORK, likely, below);
    number.unit = if hours {
        m::MEASURE_HOURS_LABEL
    } else {
        m::MEASURE_MINUTES_LABEL
    }
    .into();
    Some(number)
}

/// Minutes from one end to the other.
fn range(low: &str, high: &str) -> String {
    m::measure_range(m::MeasureRange { low, high })
}

/// The second line of a number has room for so many characters.
const BELOW: usize = 19;

/// Minutes of another method.
fn work(cx: &Region<'_>) -> Number {
    let answer = cx.say.answer;
    let mut all = answer.work.iter();
    let work = all.find(|work| work.method == answer.headline_method);
    let Some(now) = work.and_then(|work| work.now.as_ref()) else {
        return Number::new(m::CARD_N_WORK, m::CARD_N_NO_DATA, m::CARD_N_BY_NOBODY);
    };
    let [low, high] = [now.low, now.high].map(measure::minutes);
    let (value, below) = match now.likely {
        Some(likely) => (measure::minutes(likely), range(&low, &high)),
        None if low == high => (low, String::new()),
        None => (cat!(low, "–", high), String::new()),
    };
    let mut number = Number::new(m::CARD_N_WORK, value, below);
    number.unit = m::MEASURE_MINUTES_LABEL.into();
    number
}

/// Days of the stretch that are left from the day asked about on.
fn days(cx: &Region<'_>) -> Number {
    let answer = cx.say.answer;
    let timing = &answer.timing;
    let stretch = timing.next_good.zip(timing.next_good_to);
    let Some((from, to)) = stretch else {
        return Number::new(m::CARD_N_GOOD_DAYS, m::CARD_N_NONE, m::CARD_N_IN_A_YEAR);
    };
    let count = |from: NaiveDate| cat!(measure::number((to - from).num_days() as u32 + 1));
    match answer.asked_day {
        Some(day) if day >= from => Number::new(
            m::CARD_N_DAYS_LEFT,
            count(day),
            measure::days_short(day, to),
        ),
        Some(_) => Number::new(
            m::CARD_N_NEXT,
            measure::day_short(from),
            m::card_n_until(measure::day_short(to)),
        ),
        None => Number::new(
            m::CARD_N_GOOD_DAYS,
            count(from),
            measure::days_short(from, to),
        ),
    }
}

/// The day to wait for.
fn next_day(cx: &Region<'_>) -> Number {
    let answer = cx.say.answer;
    let Some(day) = answer.advised_day else {
        return Number::new(m::CARD_N_NEXT, m::CARD_N_TEST, m::CARD_N_PATCH);
    };
    let below = match answer.advised_to.filter(|to| *to > day) {
        Some(to) => m::card_n_until(measure::day_year_short(to)),
        None => measure::number(chrono::Datelike::year(&day).unsigned_abs()),
    };
    Number::new(m::CARD_N_NEXT, measure::day_short(day), below)
}

fn people(cx: &Region<'_>) -> Option<Number> {
    let out = measure::reach(cx.say.answer.people_out_m?);
    Some(Number::length(cx, m::CARD_N_PEOPLE, &out, |other| {
        m::card_n_as_you_work(other)
    }))
}

/// Who may do the method at the head, and with what.
fn who(cx: &Region<'_>) -> Number {
    let answer = cx.say.answer;
    let head = answer.headline_method;
    let label = cx.say.question.tree.herbicide == Herbicide::Yes;
    let trained = answer.provisos.contains(&Proviso::TrainedToFell);
    let (who, below) = match (head.needs_herbicide(), answer.headline_by_professional) {
        _ if trained => (m::CARD_N_TRAINED, m::CARD_N_TO_FELL),
        (_, true) => (m::CARD_N_ARBORIST, m::CARD_N_LIKE_EXPERT),
        (true, false) if label => (m::CARD_N_YOU, m::CARD_N_BY_LABEL),
        (true, false) => (m::CARD_N_LICENSED, m::CARD_N_APPLICATOR),
        (false, false) => (m::CARD_N_YOU, m::card_n_tools(head)),
    };
    Number::new(m::CARD_N_WHO, who, below)
}

fn height(cx: &Region<'_>) -> Number {
    let answer = cx.say.answer;
    let height = measure::length(answer.reach.height_m);
    let measured = answer.height.measured;
    Number::length(cx, m::CARD_N_REACH, &height, |other| match measured {
        true => m::card_n_measured(other),
        false => m::card_n_estimated(other),
    })
}

fn trunk(cx: &Region<'_>) -> Number {
    let size = measure::size(cx.say.question.tree.largest().dbh.mm());
    Number::length(cx, m::CARD_N_TRUNK, &size, |other| m::card_n_across(other))
}
