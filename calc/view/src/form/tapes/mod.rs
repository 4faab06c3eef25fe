//! The three tapes: what was typed, drawn back at once.

pub mod drawing;

use super::View;
use super::lines::units;
use crate::answer::season::drawing::{DaySpan, YearLabels, YearTape, year_small};
use crate::form::tapes::drawing::{Distance, DistanceLabels, SizeLabels, distance_tape, size_tape};
use crate::measure;
use crate::page::Page;
use crate::words::m;
use calc::answer::Answer;
use calc::terms::quantity::Units;
use calc::timing::{Doy, Fill};

/// What a tape is called for those who listen, with what it shows.
fn aria(tape: &str, shows: &str) -> String {
    if shows.is_empty() {
        return tape.to_owned();
    }
    cat!(tape, ": ", shows)
}

/// The trunk across.
pub(super) fn size(view: &View<'_>, out: &mut Page<'_>) {
    let dbh = view.draft.dbh_mm();
    let read = dbh.map(measure::size_read).unwrap_or_default();
    let size = dbh.map(|_| read.text(units(view))).unwrap_or_default();
    let aria = aria(&m::FORM_TAPE_SIZE, &size);
    let labels = SizeLabels {
        aria: &aria,
        inch: "in",
        cm: "cm",
        size: read.drawn(),
    };
    size_tape(out.sink(), dbh, &labels);
}

/// The ground round the tree.
pub(super) fn far(view: &View<'_>, out: &mut Page<'_>) {
    let answer = view.draft.whole();
    let question = view.draft.question.as_ref();
    let metric = units(view) == Units::Metric;
    let mut distances: Vec<f64> = Vec::new();
    let mut nearest: Option<(f64, &str)> = None;
    for target in question.map_or(&[][..], |question| &question.tree.targets) {
        if let Some(distance) = target.distance {
            let m = distance.m();
            distances.push(m);
            if nearest.is_none_or(|(least, _)| m < least) {
                nearest = Some((m, target.kind.word()));
            }
        }
    }
    let nearest = nearest.map_or_else(String::new, |(m, kind)| {
        let far = measure::length(m);
        let kind = calc::terms::tree::TargetKind::parse(kind);
        let words = kind.map_or("", |kind| m::reach_target_short(kind).text());
        cat!(words, ", ", far.first(units(view)))
    });
    let distance = Distance {
        height_used_m: answer.map(|answer| answer.height.hazard_m),
        zone_m: answer.map(|answer| answer.reach.zone_m),
        targets_m: &distances,
        metric,
    };
    let aria = aria(&m::FORM_TAPE_FAR, &nearest);
    let labels = DistanceLabels {
        aria: &aria,
        nearest: &nearest,
        unit: if metric { "m" } else { "ft" },
    };
    distance_tape(out.sink(), &distance, &labels);
}

/// The year: the bark of the species, what the rules close, the day.
pub(super) fn year(view: &View<'_>, out: &mut Page<'_>) {
    let answer = view.draft.answer.as_ref().filter(|_| view.draft.named);
    let [slips, may_slip] = answer.map_or_else(Default::default, bark);
    let [closed, caution] = answer.map_or_else(Default::default, rules);
    let day = view.draft.question.as_ref().map(|question| question.day);
    let asked = match day {
        Some(calc::question::Day::On(day)) => Some(day),
        _ => None,
    };
    let number = |day: chrono::NaiveDate| Doy::of(day).number() as u16;
    let today = view.options.today;
    let year = YearTape {
        slips: &slips,
        may_slip: &may_slip,
        closed: &closed,
        caution: &caution,
        today: (asked != Some(today)).then(|| number(today)),
        asked: asked.map(number),
        ..YearTape::default()
    };
    let words = asked.map(measure::day).unwrap_or_default();
    let aria = aria(&m::FORM_TAPE_YEAR, &words);
    let labels = YearLabels {
        aria: &aria,
        months: crate::words::phrase::months_short(),
        initials: crate::words::phrase::months_initial(),
        bark: &m::SEASON_BARK_LANE,
        rules: &m::SEASON_RULES_LANE,
        asked: &words,
        ..YearLabels::default()
    };
    year_small(out.sink(), &year, &labels);
}

/// Days on which the bark slips, and on which it may.
fn bark(answer: &Answer) -> [Vec<DaySpan>; 2] {
    let mut spans = [Vec::new(), Vec::new()];
    for span in &answer.timing.tape {
        let at = match span.fill {
            Fill::Solid => 0,
            Fill::Hatched => 1,
            Fill::Empty => continue,
        };
        spans[at].push(DaySpan {
            from: Doy::of(span.from).number() as u16,
            to: Doy::of(span.to).number() as u16,
        });
    }
    spans
}

/// Days that rules close, and those on which they ask for caution.
fn rules(answer: &Answer) -> [Vec<DaySpan>; 2] {
    let mut spans = [Vec::new(), Vec::new()];
    let day = |(month, day): (u8, u8)| {
        Doy::from_month_day(u32::from(month), u32::from(day)).number() as u16
    };
    for rule in &answer.rules {
        spans[usize::from(!rule.closes)].push(DaySpan {
            from: day(rule.from_md),
            to: day(rule.to_md),
        });
    }
    spans
}
