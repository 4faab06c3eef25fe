//! When: the bark and the rules, in words and on the year tape.

pub mod drawing;
mod rules;

use crate::answer::frame::{Part, Region, key, lead, open_details, twin};
use crate::answer::season::drawing::{DaySpan, Pin, YearLabels, YearTape, year};
use crate::draw::mark::Swatch;
use crate::measure;
use crate::page::Page;
use crate::words::{self, season as w};
use crate::words::{Word, m};
use calc::models::season::{Rules, TapeSpan};
use calc::models::visits::Visit;
use calc::terms::method::Method;
use calc::terms::species::Trait;
use calc::timing::{Doy, Fill};
use chrono::{Datelike, NaiveDate};

/// The part.
pub(super) fn part(cx: &Region<'_>) -> Part {
    Part {
        class: "p-when",
        id: "when",
        title: m::SEASON_WHEN.into(),
        key: cx.say.key_when(cx.about_ring()),
        body,
    }
}

fn body(out: &mut Page<'_>, cx: &Region<'_>) {
    let answer = cx.say.answer;
    let head = answer.headline_method;
    let ring = cx.about_ring();
    if head != Method::BarkRing {
        lead(
            out,
            cat!(words::phrase::sentence(&m::method_act(head)), ":"),
            cat!(&cx.say.months_of(head), "."),
        );
    }
    if ring {
        bark(out, cx);
    }
    open_details(out, "", &m::SEASON_MORE_OF_DATES);
    if ring {
        notes(out, cx);
        if !cx.say.answer.timing.tape.is_empty() {
            twin(out, cx, &m::SEASON_TWIN_YEAR, &w::HEAD_YEAR);
            tape_rows(out, cx);
            out.close_table();
        }
    }
    rules::inside(out, cx);
    out.close();
}

/// What can be done before the day that is waited for.
pub(super) fn until_then() -> Part {
    Part {
        class: "p-now",
        id: "now",
        title: m::SEASON_UNTIL_THEN.into(),
        key: String::new(),
        body: now,
    }
}

fn now(out: &mut Page<'_>, cx: &Region<'_>) {
    out.open_class("ol", "steps");
    if let Some(day) = cx.say.answer.advised_day {
        out.leaf("li", m::season_note_the_day(day));
    }
    out.leaf("li", m::SEASON_TAG_IT);
    if !cx.say.answer.height.measured {
        out.leaf("li", m::REACH_MEASURE_HEIGHT);
    }
    let answer = cx.say.answer;
    for also in answer.next_line.iter().chain(&answer.also) {
        out.leaf("li", cx.say.beside(also));
    }
    out.close();
}

fn bark(out: &mut Page<'_>, cx: &Region<'_>) {
    let answer = cx.say.answer;
    let timing = &answer.timing;
    if let (Some(day), Some(verdict)) = (answer.asked_day, answer.asked_verdict) {
        let said = words::phrase::sentence(&cx.say.bark_on(day, verdict, answer.asked_probability));
        lead(out, cat!(said, "."), "");
    }
    if let Some(day) = answer.advised_day
        && answer.asked_day != Some(day)
    {
        let said =
            words::phrase::sentence(&cx.say.bark_on(day, timing.verdict, timing.probability));
        lead(out, cat!(said, "."), "");
    }
    if let (Some(before), Some(opens), Some(closes)) = (&timing.before, timing.opens, timing.closes)
    {
        out.p(words::spring::before_and_after(
            before,
            &measure::days(opens, closes),
        ));
    }
    out.p(stretches(cx));
    if let Some(site) = timing.meant {
        out.p(w::meant(site));
    }
    if answer.headline_method == Method::BarkRing {
        out.p_class("np", m::SEASON_ALWAYS_TEST);
    }
    tape(out, cx);
}

/// How sure the dates are, and where they come from.
fn notes(out: &mut Page<'_>, cx: &Region<'_>) {
    let timing = &cx.say.answer.timing;
    let mut notes = Notes(String::new());
    if timing.short_season {
        notes.add(&m::SEASON_SHORT_SEASON);
    }
    if let (Some(open), Some(close)) = (timing.sd_open, timing.sd_close) {
        notes.add(&w::give_or_take(open, close));
    }
    if let Some(km) = timing.nearest_km {
        let high = timing
            .elevation_m
            .map(|m| measure::above_sea(m).text(cx.say.units()));
        notes.add(&w::nearest_place(km, high.as_deref()));
    }
    if let Some(region) = &timing.region {
        let code = cx.say.question.region.as_deref().unwrap_or_default();
        notes.add(&w::region_dates(region, &words::region::in_sentence(code)));
    }
    if timing.table_missing {
        notes.add(&m::SEASON_TABLE_MISSING);
    }
    for note in &words::spring::spring_read(timing) {
        notes.add(note);
    }
    if timing.other_season && timing.spring.is_none() {
        notes.add(&m::SEASON_OTHER_SEASON);
    }
    for flag in &timing.flags {
        if !flag.of_spring() {
            notes.add(&m::season_flag(*flag));
        }
    }
    notes.add(&m::SEASON_SIDES);
    if cx.say.question.tree.species.has(Trait::GuideSaysLonger) {
        notes.add(&m::SEASON_GUIDE_LONGER);
    }
    out.p_class("soft np", notes.0);
}

/// Sentences, one behind the other.
struct Notes(String);

impl Notes {
    fn add(&mut self, note: &str) {
        if !self.0.is_empty() {
            self.0.push(' ');
        }
        self.0.push_str(note);
    }
}

/// The next good stretch, and the one after.
fn stretches(cx: &Region<'_>) -> String {
    let timing = &cx.say.answer.timing;
    let span = |from: Option<NaiveDate>, to: Option<NaiveDate>| Some(measure::days(from?, to?));
    match span(timing.next_good, timing.next_good_to) {
        Some(first) => {
            let after = span(timing.after_next, timing.after_next_to);
            w::next_good(&first, after.as_deref())
        }
        None => m::SEASON_NO_STRETCH.into(),
    }
}

/// Runs of one fill; runs that touch are one.
fn spans(tape: &[TapeSpan], fill: Fill) -> Vec<DaySpan> {
    let mut spans: Vec<DaySpan> = Vec::new();
    for it in tape.iter().filter(|it| it.fill == fill) {
        let (from, to) = (doy(it.from), doy(it.to));
        match spans.last_mut() {
            Some(last) if last.to + 1 == from => last.to = to,
            _ => spans.push(DaySpan { from, to }),
        }
    }
    spans
}

fn months(list: &[Rules], closes: bool) -> Vec<DaySpan> {
    let mut months = Vec::new();
    for rule in list {
        if rule.closes == closes && !all_year(rule) {
            months.push(DaySpan {
                from: doy_md(rule.from_md),
                to: doy_md(rule.to_md),
            });
        }
    }
    months
}

/// The words of a tape that are the same for all.
fn year_labels() -> YearLabels<'static> {
    YearLabels {
        aria: "",
        months: words::phrase::months_short(),
        initials: words::phrase::months_initial(),
        bark: &m::SEASON_BARK_LANE,
        rules: &m::SEASON_RULES_LANE,
        asked: "",
        today: &m::SEASON_TODAY,
        window: "",
        window_short: &m::SEASON_WINDOW_SHORT,
    }
}

/// The year tape with its key.
pub(super) fn tape(out: &mut Page<'_>, cx: &Region<'_>) {
    let answer = cx.say.answer;
    let timing = &answer.timing;
    let Some(first) = timing.tape.first() else {
        return;
    };
    let shown = first.from.year();
    let bands = [
        band(
            Swatch::Solid,
            &m::SEASON_SLIPS,
            spans(&timing.tape, Fill::Solid),
        ),
        band(
            Swatch::Hatch,
            &m::SEASON_MAY_SLIP,
            spans(&timing.tape, Fill::Hatched),
        ),
        band(
            Swatch::Cross,
            &m::SEASON_CLOSED,
            months(&answer.rules, true),
        ),
        band(
            Swatch::Dots,
            &m::SEASON_CAUTION,
            months(&answer.rules, false),
        ),
    ];
    let [slips, may_slip, closed, caution] = &bands;
    let good = timing
        .next_good
        .zip(timing.next_good_to)
        .filter(|(from, _)| from.year() == shown);
    let window = good.map(|(from, to)| DaySpan {
        from: doy(from),
        to: if to.year() == shown { doy(to) } else { 365 },
    });
    let visits = pins(cx, shown);
    let asked = answer
        .asked_day
        .filter(|day| day.year() == shown)
        .or(answer.advised_day.filter(|day| day.year() == shown));
    let today = cx.say.question.today.filter(|day| day.year() == shown);
    // A tape of another year than the asked day's says its year.
    let other = answer.asked_day.is_some_and(|day| day.year() != shown);
    let day = if other {
        measure::day_year
    } else {
        measure::day
    };
    let asked_said = asked.map_or_else(String::new, day);
    let window_said = good.map_or_else(String::new, |(from, to)| {
        let to = if to.year() == shown {
            measure::day(to)
        } else {
            measure::day_year(to)
        };
        w::window(&m::measure_days(m::MeasureDays {
            from: measure::day(from),
            to,
        }))
    });
    let aria = w::year_aria(
        &measure::number(shown as u32),
        &[slips, may_slip, closed].map(|band| (band.name, &*band.said)),
        &asked_said,
    );
    let mut labels = year_labels();
    labels.aria = &aria;
    labels.asked = &asked_said;
    labels.window = &window_said;
    out.open("figure");
    year(
        out.sink(),
        &YearTape {
            slips: &slips.spans,
            may_slip: &may_slip.spans,
            closed: &closed.spans,
            caution: &caution.spans,
            window: window.as_slice(),
            today: today.map(doy),
            asked: asked.map(doy),
            visits: &visits,
        },
        &labels,
    );
    out.close();
    let mut rows: Vec<(Swatch, &str, &str)> = Vec::new();
    for band in &bands {
        // What it does not do stands behind what it does, before the rules.
        if band.mark == Swatch::Cross {
            rows.push((Swatch::Empty, &m::SEASON_DOES_NOT, &m::SEASON_REST_OF_YEAR));
        }
        if !band.spans.is_empty() {
            rows.push((band.mark, band.name, &band.said));
        }
    }
    if asked.is_some() {
        rows.push((Swatch::Notch, &m::SEASON_NOTCH, &m::SEASON_NOTCH_IS));
    }
    if !visits.is_empty() {
        rows.push((Swatch::Pin, &m::SEASON_PIN, &m::SEASON_PIN_IS));
    }
    key(out, &rows);
}

/// A band of the tape.
struct Band {
    mark: Swatch,
    name: &'static str,
    spans: Vec<DaySpan>,
    said: String,
}

fn band(mark: Swatch, name: &'static str, spans: Vec<DaySpan>) -> Band {
    let said = said(&spans);
    Band {
        mark,
        name,
        spans,
        said,
    }
}

/// Spans in words, by their first day; overlapping ones are one.
fn said(list: &[DaySpan]) -> String {
    let mut merged: Vec<DaySpan> = Vec::new();
    for day in 1..=365 {
        for span in list.iter().filter(|span| span.from == day) {
            match merged.last_mut() {
                // Months that run over the new year stand apart: they end before they begin.
                Some(last)
                    if last.from <= last.to && span.from <= span.to && span.from <= last.to + 1 =>
                {
                    last.to = last.to.max(span.to);
                }
                Some(last) if last == span => {}
                _ => merged.push(*span),
            }
        }
    }
    let day = |number: u16| {
        let (month, day) = Doy::wrap(i32::from(number)).month_day();
        measure::month_day((month as u8, day as u8))
    };
    let mut words: Vec<String> = Vec::new();
    for span in &merged {
        words.push(m::measure_days(m::MeasureDays {
            from: day(span.from),
            to: day(span.to),
        }));
    }
    words::phrase::row(&words)
}

fn tape_rows(out: &mut Page<'_>, cx: &Region<'_>) {
    let answer = cx.say.answer;
    for span in &answer.timing.tape {
        let mut rules: Vec<Word> = Vec::new();
        for rule in &answer.rules {
            let topic = m::season_topic(rule.topic);
            if !all_year(rule) && meets(rule, span) && rules.last() != Some(&topic) {
                rules.push(topic);
            }
        }
        out.cell(measure::day(span.from));
        out.cell(measure::day(span.to));
        out.cell(match span.fill {
            Fill::Solid => m::SEASON_SLIPS,
            Fill::Hatched => m::SEASON_MAY_SLIP,
            Fill::Empty => m::SEASON_DOES_NOT,
        });
        let mut rules = words::phrase::joined_by(&rules, ", ");
        rules.make_ascii_lowercase();
        out.cell(rules);
    }
}

/// Whether a rule's months meet a span of the tape.
fn meets(rule: &Rules, span: &TapeSpan) -> bool {
    let (from, to) = (doy_md(rule.from_md), doy_md(rule.to_md));
    let (a, b) = (doy(span.from), doy(span.to));
    if from <= to {
        from <= b && a <= to
    } else {
        b >= from || a <= to
    }
}

/// A day of the drawings' year.
pub(super) fn doy(day: NaiveDate) -> u16 {
    Doy::of(day).number() as u16
}

/// The same from month and day.
pub(super) fn doy_md(md: (u8, u8)) -> u16 {
    Doy::from_month_day(u32::from(md.0), u32::from(md.1)).number() as u16
}

/// A rule of the whole year marks no months.
pub(super) fn all_year(rule: &Rules) -> bool {
    rule.from_md == (1, 1) && rule.to_md == (12, 31)
}

/// The day that stands for a visit in a drawing.
pub(super) fn middle(visit: &Visit) -> NaiveDate {
    let half = (visit.to - visit.from).num_days().unsigned_abs() / 2;
    visit
        .from
        .checked_add_days(chrono::Days::new(half))
        .unwrap_or(visit.from)
}

/// Pins of the visits of a year: the day with the number of the list.
pub(super) fn pins(cx: &Region<'_>, year: i32) -> Vec<Pin> {
    let mut pins = Vec::new();
    for (visit, number) in cx.say.answer.visits.iter().zip(1..) {
        let day = middle(visit);
        if day.year() == year {
            pins.push(Pin {
                day: doy(day),
                number,
            });
        }
    }
    pins
}
