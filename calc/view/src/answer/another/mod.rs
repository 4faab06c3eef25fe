//! Try another: the year tape, the reach tape and the trunk, each with a mark that is moved by hand. The card and the line
//! "was → now" follow; what stands in the form stays until the reader says so.
//!
//! Without a form the tapes stand as plain drawings. The host that moves the marks asks for the pieces by themselves:
//!
//! ```text
//! Trying::new(reference, question, answer, &HostOptions)   the question and answer as they stand now
//!   .marks(&moved)                                      where each mark stands, and what it says
//!   .card(out)  .changes(out)  .tape(out, which)        what is drawn anew while a mark moves
//! ```

mod drawing;
mod marks;
#[cfg(test)]
mod tests;

pub use marks::{Mark, MovedMarks, Which};

use super::frame::{Part, Region, key};
use super::ring::ring_of;
use super::{HostOptions, card, region};
use crate::draw::glyph::glyph;
use crate::draw::mark::Swatch;
use crate::form::Sheet;
use crate::kind::Kind;
use crate::measure;
use crate::out::Out;
use crate::page::Page;
use crate::words::another as w;
use crate::words::{Say, Word, m, phrase};
use calc::answer::{Answer, Outcome};
use calc::question::{Problem, Question, Typed, read};
use calc::reference::Reference;
use calc::timing::{Doy, Span};
use chrono::NaiveDate;
use drawing::Marked;
use drawing::far::{Far, FarLabels, far};
use drawing::size::{Size, size};
use drawing::year::{Band, Lane, Year, YearLabels, year};
use marks::Now;

/// What the marks are moved from.
#[derive(Clone, Copy, Debug)]
pub struct Trial<'a> {
    /// The question as it was asked.
    pub question: &'a Question,
    /// Its answer.
    pub answer: &'a Answer,
    /// The bark on each day in which the notch may stand: [`calc::answer::year_ahead`].
    pub days: &'a [Span],
}

/// Ids of the line that tells what changed, and of the message of a mark whose value can't be read.
pub const CHANGES_ID: &str = "try-now";
/// What an id of a mark begins with: the slider `try-day`, its field `try-day-typed`, its tape `try-day-tape`, its
/// message `try-day-said`.
const IDS: [&str; 3] = ["try-day", "try-far", "try-size"];

/// The id of a mark's slider, behind the answer's prefix; that of what belongs to it has more behind.
#[must_use]
pub fn mark_id(which: Which) -> &'static str {
    IDS[which as usize]
}

/// A question with the marks where they stand, and what can't be read beside which of them.
pub type Read = (Question, Vec<(Which, Problem)>);

/// The question and answer of marks as they stand now.
pub struct Trying<'a>(Region<'a>);

impl<'a> Trying<'a> {
    /// Of a question and its answer; the options tell what they were tried from.
    #[must_use]
    pub fn new(
        reference: &'static Reference,
        question: &'a Question,
        answer: &'a Answer,
        options: &'a HostOptions<'a>,
    ) -> Self {
        Self(region(reference, question, answer, options))
    }

    /// Where each mark stands; none where there is nothing to try.
    #[must_use]
    pub fn marks(&self, moved: &MovedMarks) -> Vec<Mark> {
        marks::marks(&self.0, moved)
    }

    /// Moves a mark to a step of its tape.
    pub fn set_step(&self, moved: &mut MovedMarks, which: Which, step: i32) {
        if let Some(now) = Now::of(&self.0) {
            moved.set_step(&now, which, step);
        }
    }

    /// Takes what was typed beside a mark.
    pub fn set_text(&self, moved: &mut MovedMarks, which: Which, text: &str) {
        if let Some(now) = Now::of(&self.0) {
            moved.set_text(&now, which, text);
        }
    }

    /// Reads the question as it was typed, with what was moved in it. What was seen of one spring is left out where the
    /// day lies in another. What can't be read beside a mark is left out too: that mark rests, and its problem is told.
    ///
    /// # Errors
    /// The question can't be read without any of the marks.
    pub fn read(&self, moved: &MovedMarks, typed: &Typed) -> Result<Read, Vec<Problem>> {
        let whole = self.with(moved, typed);
        let (readable, problems) = match whole {
            Ok(question) => return Ok((question, Vec::new())),
            Err(_) => moved.parted(|alone| self.with(alone, typed).err()),
        };
        Ok((self.with(&readable, typed)?, problems))
    }

    fn with(&self, moved: &MovedMarks, typed: &Typed) -> Result<Question, Vec<Problem>> {
        let mut typed = typed.clone();
        if let Some(now) = Now::of(&self.0) {
            moved.put(&now, &mut typed);
        }
        let reference = self.0.say.reference;
        read(reference, &typed).or_else(|problems| {
            let of_spring = |problem: &Problem| problem.field.starts_with("leafed_out");
            if !problems.iter().all(of_spring) {
                return Err(problems);
            }
            typed.leafed_out = None;
            read(reference, &typed)
        })
    }

    /// Writes what was moved into the controls of the form.
    pub fn write(&self, moved: &MovedMarks, sheet: &mut Sheet, today: NaiveDate) {
        if let Some(now) = Now::of(&self.0) {
            moved.write(&now, sheet, self.0.say.reference, today);
        }
    }

    /// Writes the card.
    pub fn card(&self, out: &mut dyn Out) {
        card::card(&mut Page::new(out), &self.0);
    }

    /// Writes what stands in the line of changes.
    pub fn changes(&self, out: &mut dyn Out) {
        if let Some(now) = Now::of(&self.0) {
            changes(&mut Page::new(out), &now);
        }
    }

    /// Draws a tape.
    pub fn tape(&self, out: &mut dyn Out, which: Which) {
        if let Some(now) = Now::of(&self.0) {
            tape(out, &now, which);
        }
    }
}

/// The part, where there is something to try.
pub(super) fn part(cx: &Region<'_>) -> Option<Part> {
    let now = Now::of(cx).filter(|_| cx.options.kind == Kind::TreePlan && !cx.nested)?;
    let title = if now.has(Which::Day) {
        m::ANOTHER_TITLE
    } else {
        m::ANOTHER_TITLE_NO_DAY
    };
    Some(Part {
        class: "p-try",
        id: "try",
        title: title.into(),
        key: String::new(),
        body,
    })
}

fn body(out: &mut Page<'_>, cx: &Region<'_>) {
    let Some(now) = Now::of(cx) else { return };
    let live = cx.options.with_form;
    if live {
        out.open_class("div", "now");
        out.attr("id", &cat!(&cx.prefix, CHANGES_ID));
        changes(out, &now);
        out.close();
    }
    for mark in &marks::marks(cx, &MovedMarks::default()) {
        one(out, cx, &now, mark, live);
        if mark.which == Which::Day {
            bands(out, &now);
        }
    }
}

/// A mark: its name, the field beside it, the tape with the slider over it.
fn one(out: &mut Page<'_>, cx: &Region<'_>, now: &Now<'_>, mark: &Mark, live: bool) {
    let id = cat!(&cx.prefix, mark_id(mark.which));
    let name = label(now, mark.which);
    out.open_class("div", "lab");
    if live {
        let typed = cat!(&id, "-typed");
        crate::control::label_of(out, "", &typed, &name);
        out.open("input");
        out.attr(
            "type",
            if mark.which == Which::Day {
                "date"
            } else {
                "text"
            },
        );
        out.attr("id", &typed);
        out.attr("name", &cat!(mark.which.name(), ".typed"));
        out.attr("value", &mark.typed);
        out.attr("autocomplete", "off");
        out.attr("aria-describedby", &cat!(&id, "-said"));
        out.close();
    } else {
        out.leaf("b", &*name);
        out.leaf("span", now.value(mark.which, &now.now));
    }
    out.close();
    if live {
        out.open_class("p", "errmsg");
        out.attr("id", &cat!(&id, "-said"));
        out.attr("hidden", "");
        out.close();
    }
    out.open_class("div", "tape");
    out.attr("id", &cat!(&id, "-tape"));
    if live {
        out.open_class("span", "over");
        slider(out, &id, &name, mark);
        out.close();
    }
    tape(out.sink(), now, mark.which);
    out.close();
}

fn slider(out: &mut Page<'_>, id: &str, name: &str, mark: &Mark) {
    let number = |n: i32| measure::number(n.unsigned_abs());
    out.open("input");
    out.attr("type", "range");
    out.attr("id", id);
    out.attr("name", mark.which.name());
    out.attr("min", &number(mark.ends[0]));
    out.attr("max", &number(mark.ends[1]));
    out.attr("value", &number(mark.at));
    out.attr("data-page", &number(mark.page));
    out.attr("aria-label", name);
    out.attr("aria-valuetext", &mark.said);
    out.close();
}

fn label(now: &Now<'_>, which: Which) -> String {
    match which {
        Which::Day => m::ANOTHER_DAY.into(),
        Which::Far => match now.thing() {
            Some(thing) if thing.at.is_some() => {
                m::another_far(phrase::sentence(&m::reach_target_short(thing.kind)))
            }
            _ => m::ANOTHER_FAR_IF.into(),
        },
        Which::Size if now.was.question.tree.stems.len() > 1 => m::ANOTHER_SIZE_OF_SEVERAL.into(),
        Which::Size => m::ANOTHER_SIZE.into(),
    }
}

/// The key of the bands that the year has.
fn bands(out: &mut Page<'_>, now: &Now<'_>) {
    let all = [
        (Band::Best, Swatch::Solid, m::ANOTHER_BEST),
        (Band::Test, Swatch::Hatch, m::ANOTHER_TEST),
        (Band::Tight, Swatch::Dotted, m::ANOTHER_BOTH_ENDS),
        (Band::DoesNotSlip, Swatch::Empty, m::ANOTHER_DOES_NOT_SLIP),
    ];
    let days = now.trial.days;
    let there = |band: Band| days.iter().any(|span| marks::band(span.verdict) == band);
    let rows = all.iter().filter(|(band, ..)| there(*band));
    let rows: Vec<_> = rows
        .map(|(_, mark, name)| (*mark, "", name.text()))
        .collect();
    key(out, &rows);
}

/// What the answer was and is, with what changed; or what to do.
fn changes(out: &mut Page<'_>, now: &Now<'_>) {
    let moved = marks::stands_apart(now.was.question, now.now.question);
    out.open_class("div", "chs");
    chip(out, now.was.answer.outcome, moved);
    if !moved {
        out.leaf("span", m::ANOTHER_MOVE);
        out.close();
        return;
    }
    out.open("span");
    out.attr("aria-hidden", "true");
    out.text("→");
    out.close();
    out.leaf_class("span", "vh", m::ANOTHER_NOW);
    chip(out, now.now.answer.outcome, false);
    act(out, "try-back", m::ANOTHER_BACK);
    out.close();
    out.open("p");
    out.leaf("b", now.now.card());
    out.text(" ");
    out.leaf_class("span", "soft", m::another_changed(changed(now)));
    out.close();
    out.open_class("div", "use");
    out.leaf_class("p", "soft", m::ANOTHER_ABOVE);
    act(out, "try-use", m::ANOTHER_USE);
    out.close();
}

fn act(out: &mut Page<'_>, name: &str, word: Word) {
    out.open("button");
    out.attr("type", "button");
    out.attr("data-act", name);
    out.text(word);
    out.close();
}

fn chip(out: &mut Page<'_>, outcome: Outcome, old: bool) {
    let old = if old { " old" } else { "" };
    out.open_class("span", &cat!("chip ", card::role(outcome), old));
    glyph(out.sink(), outcome.into());
    out.text(m::card_tag(outcome));
    out.close();
}

/// The marks that were moved, then the numbers that followed.
fn changed(now: &Now<'_>) -> String {
    let mut all: Vec<String> = Vec::new();
    let [was, is] = [&now.was, &now.now];
    if was.question.day != is.question.day {
        let from = match was.question.day {
            calc::question::Day::On(day) => measure::day(day),
            calc::question::Day::Year { .. } => m::ANOTHER_YEAR.into(),
        };
        let to = now.value(Which::Day, is);
        all.push(m::another_day_change(m::AnotherDayChange {
            from: &from,
            to: &to,
        }));
    }
    if let Some(thing) = now.thing()
        && now.far_m(was) != now.far_m(is)
    {
        let to = now.value(Which::Far, is);
        all.push(match thing.at {
            None => m::another_far_if_change(&to),
            Some(_) => m::another_far_change(m::AnotherFarChange {
                thing: m::reach_target_short(thing.kind),
                from: before(&now.value(Which::Far, was), &to),
                to: &to,
            }),
        });
    }
    if now.size_mm(was) != now.size_mm(is) {
        let (from, to) = (now.value(Which::Size, was), now.value(Which::Size, is));
        all.push(m::another_size_change(m::AnotherSizeChange {
            from: before(&from, &to),
            to: &to,
        }));
    }
    // A stop and an open question have no such numbers.
    let works = !matches!(
        is.answer.outcome,
        Outcome::Professional | Outcome::CannotTell
    );
    if works {
        follow(&mut all, [was, is], ring, |from, to| {
            m::another_ring_change(m::AnotherRingChange { from, to })
        });
        follow(&mut all, [was, is], minutes, |from, to| {
            m::another_minutes_change(m::AnotherMinutesChange { from, to })
        });
        follow(&mut all, [was, is], people, |from, to| {
            m::another_people_change(m::AnotherPeopleChange { from, to })
        });
    }
    let mut all = all.into_iter();
    let first = all.next().unwrap_or_default();
    all.fold(first, |first, last| {
        m::another_and(m::AnotherAnd { first, last })
    })
}

/// Adds a number that both answers have and that is another one now.
fn follow(
    all: &mut Vec<String>,
    [was, is]: [&Say<'_>; 2],
    number: fn(&Say<'_>) -> Option<String>,
    words: fn(&str, &str) -> String,
) {
    if let (Some(from), Some(to)) = (number(was), number(is))
        && from != to
    {
        all.push(words(before(&from, &to), &to));
    }
}

/// The first of two readings: without its unit where the second has the same.
fn before<'a>(from: &'a str, to: &str) -> &'a str {
    let (number, unit) = measure::parted(from);
    if unit == measure::parted(to).1 {
        number
    } else {
        from
    }
}

fn ring(say: &Say<'_>) -> Option<String> {
    let ring = measure::ring(ring_of(say.answer)?.better_mm);
    Some(ring.first(say.units()).to_owned())
}

fn minutes(say: &Say<'_>) -> Option<String> {
    let effort = say.answer.effort.as_ref()?;
    let (span, hours) =
        measure::span_of_minutes(effort.low_min, effort.likely_min, effort.high_min);
    let [_, likely, _] = span;
    Some(if hours {
        cat!(likely, " ", &*m::MEASURE_HOURS_LABEL)
    } else {
        likely
    })
}

fn people(say: &Say<'_>) -> Option<String> {
    let out = measure::reach(say.answer.people_out_m?);
    Some(out.first(say.units()).to_owned())
}

/// Draws the tape of a mark.
fn tape(out: &mut dyn Out, now: &Now<'_>, which: Which) {
    let (at, beyond) = now.place(which, &now.now);
    let (was, _) = now.place(which, &now.was);
    let marked = Marked {
        at,
        was: (at != was).then_some(was),
        beyond,
    };
    match which {
        Which::Day => draw_year(out, now, marked),
        Which::Far => draw_far(out, now, marked),
        Which::Size => {
            let drawn = Size {
                long_mm: now.size_long_mm(),
                marked,
            };
            size(out, &drawn, &m::ANOTHER_SIZE_ARIA);
        }
    }
}

/// Days of the year, both counted, as per cent of it; those that run over the new year are two.
fn parts(from: u16, to: u16) -> Vec<[f64; 2]> {
    let at = |day: u16| f64::from(day) / 365.0 * 100.0;
    let (from_at, to_at) = (at(from - 1), at(to));
    if from <= to {
        vec![[from_at, to_at]]
    } else {
        vec![[0.0, to_at], [from_at, 100.0]]
    }
}

fn draw_year(out: &mut dyn Out, now: &Now<'_>, marked: Marked) {
    let day = |day: NaiveDate| Doy::of(day).number() as u16;
    let mut bands: Vec<([f64; 2], Band)> = Vec::new();
    let mut said: Vec<String> = Vec::new();
    for span in now.trial.days {
        let band = marks::band(span.verdict);
        // A year and a day less: only what runs past the last of December begins behind its end.
        for ends in parts(day(span.from), day(span.to)) {
            bands.push((ends, band));
        }
        if band != Band::DoesNotSlip {
            let days = measure::days_short(span.from, span.to);
            said.push(cat!(&*w::verdict(span.verdict), " ", days));
        }
    }
    crate::draw::pen::sort(&mut bands, |(ends, _)| ends[0]);
    let mut whole: Vec<([f64; 2], Band)> = Vec::new();
    for (ends, band) in bands {
        match whole.last_mut() {
            // A leap day counts twice, and today parts what is one.
            Some((last, same)) if *same == band => last[1] = ends[1].max(last[1]),
            _ => whole.push((ends, band)),
        }
    }
    let labels = YearLabels {
        aria: &m::another_year_aria(
            said.into_iter()
                .reduce(|first, last| phrase::comma(first, &last))
                .unwrap_or_default(),
        ),
        months: phrase::months_short(),
        initials: phrase::months_initial(),
        best: &m::ANOTHER_BEST,
        test: &m::ANOTHER_TEST_SHORT,
        does_not_slip: &m::ANOTHER_DOES_NOT_SLIP,
    };
    let drawn = Year {
        bands: whole,
        lanes: lanes(now.was.answer),
        marked,
    };
    year(out, &drawn, &labels);
}

/// A lane a rule that names months: those of one topic are one.
fn lanes(answer: &Answer) -> Vec<Lane> {
    let mut lanes: Vec<Lane> = Vec::new();
    for rule in &answer.rules {
        if super::season::all_year(rule) && !rule.closes {
            continue;
        }
        let day = super::season::doy_md;
        let spans = parts(day(rule.from_md), day(rule.to_md));
        let name = w::lane(rule);
        match lanes.iter_mut().find(|lane| lane.name == name) {
            Some(lane) => lane.spans.extend(spans),
            None => lanes.push(Lane {
                name,
                closes: rule.closes,
                spans,
            }),
        }
    }
    lanes
}

fn draw_far(out: &mut dyn Out, now: &Now<'_>, marked: Marked) {
    let answer = now.now.answer;
    let reach = &answer.reach;
    let out_m = answer.people_out_m.unwrap_or(reach.two_heights_m);
    let units = now.units();
    let metric = units == calc::terms::quantity::Units::Metric;
    let unit = if metric {
        1.0
    } else {
        calc::terms::quantity::M_PER_FT
    };
    let drawn = Far {
        zones: [reach.height_m, reach.zone_m, out_m].map(|m| m / unit),
        step: now.far_step(),
        marked,
    };
    let [land, throw] = [reach.height_m, reach.zone_m].map(measure::reach);
    let (land, throw) = (land.first(units), throw.first(units));
    let same = |word: Word| -> [&'static str; 2] { [word.text(); 2] };
    let labels = FarLabels {
        aria: &m::another_far_aria(m::AnotherFarAria { land, throw }),
        zones: [
            same(m::ANOTHER_CAN_LAND),
            [
                m::ANOTHER_CAN_THROW.text(),
                m::ANOTHER_CAN_THROW_SHORT.text(),
            ],
            [m::ANOTHER_KEEP_OUT.text(), m::ANOTHER_KEEP_OUT_SHORT.text()],
        ],
        trunk: &m::ANOTHER_TRUNK,
        unit: if metric { phrase::M } else { phrase::FT },
    };
    far(out, &drawn, &labels);
}
