//! The three tapes: what was typed, drawn back at once.

use super::lines::units;
use super::{View, words as w};
use crate::draw::form::{Distance, DistanceLabels, SizeLabels, distance_tape, size_tape};
use crate::draw::year::{Span, Year, YearLabels, year_small};
use crate::measure;
use crate::out::Out;
use calc::answer::Answer;
use calc::quantity::Units;
use calc::timing::{Doy, Fill};

/// The trunk across.
pub(super) fn size(view: &View<'_>, out: &mut dyn Out) {
    let dbh = view.draft.dbh_mm();
    let read = dbh.map(measure::size_read).unwrap_or_default();
    let aria = if dbh.is_some() {
        [w::TAPE_SIZE, ": ", &read.text(units(view))].concat()
    } else {
        w::TAPE_SIZE.to_owned()
    };
    let labels = SizeLabels {
        aria: &aria,
        inch: "in",
        cm: "cm",
        size: read.drawn(),
    };
    size_tape(out, dbh, &labels);
}

/// The ground round the tree.
pub(super) fn far(view: &View<'_>, out: &mut dyn Out) {
    let answer = view.draft.whole();
    let question = view.draft.question.as_ref();
    let metric = units(view) == Units::Metric;
    let targets: Vec<(f64, &str)> = question
        .map_or(&[][..], |question| &question.targets)
        .iter()
        .filter_map(|target| Some((target.distance?.m(), target.kind.word())))
        .collect();
    let nearest = targets
        .iter()
        .min_by(|a, b| a.0.total_cmp(&b.0))
        .map_or_else(String::new, |(m, kind)| {
            let kind = w::KIND_SHORT.iter().find(|(word, _)| word == kind);
            let far = measure::length(*m);
            [
                kind.map_or("", |(_, words)| words),
                ", ",
                far.first(units(view)),
            ]
            .concat()
        });
    let distances: Vec<f64> = targets.iter().map(|(m, _)| *m).collect();
    let distance = Distance {
        height_used_m: answer.map(|answer| answer.height.hazard_m),
        zone_m: answer.map(|answer| answer.reach.zone_m),
        targets_m: &distances,
        metric,
    };
    let aria = if nearest.is_empty() {
        w::TAPE_FAR.to_owned()
    } else {
        [w::TAPE_FAR, ": ", &nearest].concat()
    };
    let labels = DistanceLabels {
        aria: &aria,
        nearest: &nearest,
        unit: if metric { "m" } else { "ft" },
    };
    distance_tape(out, &distance, &labels);
}

/// The year: the bark of the species, what the rules close, the day.
pub(super) fn year(view: &View<'_>, out: &mut dyn Out) {
    let answer = view.draft.answer.as_ref().filter(|_| view.draft.named);
    let (slips, may_slip) = answer.map_or_else(Default::default, bark);
    let (closed, caution) = answer.map_or_else(Default::default, rules);
    let day = view.draft.question.as_ref().map(|question| question.day);
    let asked = match day {
        Some(calc::question::Day::On(day)) => Some(day),
        _ => None,
    };
    let number = |day: chrono::NaiveDate| Doy::of(day).number() as u16;
    let today = view.options.today;
    let year = Year {
        slips: &slips,
        may_slip: &may_slip,
        closed: &closed,
        caution: &caution,
        today: (asked != Some(today)).then(|| number(today)),
        asked: asked.map(number),
        ..Year::default()
    };
    let words = asked.map(measure::day).unwrap_or_default();
    let aria = if words.is_empty() {
        w::TAPE_YEAR.to_owned()
    } else {
        [w::TAPE_YEAR, ": ", &words].concat()
    };
    let labels = YearLabels {
        aria: &aria,
        months: crate::words::MONTHS_SHORT,
        initials: crate::words::MONTHS_INITIAL,
        bark: crate::words::BARK_LANE,
        rules: crate::words::RULES_LANE,
        asked: &words,
        ..YearLabels::default()
    };
    year_small(out, &year, &labels);
}

fn bark(answer: &Answer) -> (Vec<Span>, Vec<Span>) {
    let of = |fill: Fill| {
        let spans = answer.timing.tape.iter().filter(|span| span.fill == fill);
        spans
            .map(|span| Span {
                from: Doy::of(span.from).number() as u16,
                to: Doy::of(span.to).number() as u16,
            })
            .collect()
    };
    (of(Fill::Solid), of(Fill::Hatched))
}

fn rules(answer: &Answer) -> (Vec<Span>, Vec<Span>) {
    let of = |closes: bool| {
        let day =
            |md: (u8, u8)| Doy::from_month_day(u32::from(md.0), u32::from(md.1)).number() as u16;
        let rules = answer.rules.iter().filter(|rule| rule.closes == closes);
        rules
            .map(|rule| Span {
                from: day(rule.from_md),
                to: day(rule.to_md),
            })
            .collect()
    };
    (of(true), of(false))
}
