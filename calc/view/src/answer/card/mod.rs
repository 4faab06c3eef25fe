//! The card: the tag, one sentence, the numbers that people carry, one caution, what can be done with it. One phone
//! screen; it is what a screen reader meets first and what paper begins with.

mod ask;
pub(super) mod numbers;

use super::frame::{Region, level_over};
use super::group;
use crate::draw::glyph::{Glyph, glyph};
use crate::measure;
use crate::page::Page;
use crate::words::{Word, m};
use calc::answer::Outcome;
use calc::models::reach::ReachOutcome as Reached;

/// Class of an outcome in the style sheet.
pub(super) fn role(outcome: Outcome) -> &'static str {
    match outcome {
        Outcome::Do => "do",
        Outcome::Wait => "wait",
        Outcome::OtherMethod => "other",
        Outcome::Professional => "stop",
        Outcome::CannotTell => "cant",
    }
}

/// The card of an answer.
pub(super) fn card(out: &mut Page<'_>, cx: &Region<'_>) {
    let outcome = cx.say.answer.outcome;
    out.open_class("section", &cat!("card ", role(outcome)));
    let id = cx.id("say");
    out.attr("aria-labelledby", &id);
    out.open_class("span", "ear");
    out.attr("aria-hidden", "true");
    out.close();
    tag(out, cx);
    out.open_class("div", "in");
    sentence(out, cx, &id);
    match outcome {
        Outcome::Professional => call(out, cx),
        Outcome::CannotTell => ask::questions(out, cx),
        Outcome::Do | Outcome::Wait | Outcome::OtherMethod => {}
    }
    numbers::four(out, cx);
    caution(out, cx);
    out.close();
    actions(out, cx);
    out.close();
}

/// The tag: shape and word of the outcome, the day.
fn tag(out: &mut Page<'_>, cx: &Region<'_>) {
    let answer = cx.say.answer;
    out.open_class("div", "tag");
    out.open_class("i", "rim");
    out.attr("aria-hidden", "true");
    out.close();
    glyph(out.sink(), answer.outcome.into());
    out.leaf("b", m::card_tag(answer.outcome));
    out.text(" ");
    out.open_class("span", "when");
    out.open_class("span", "tagno");
    out.text(m::CARD_TAG_NUMBER);
    out.close();
    if let Some(day) = answer.asked_day.or(answer.advised_day) {
        out.text(measure::day_year_short(day));
    }
    out.close_two();
}

/// The sentence, and the line under it where one is owed.
fn sentence(out: &mut Page<'_>, cx: &Region<'_>, id: &str) {
    out.open_heading(level_over(cx.level), "say");
    out.attr("id", id);
    out.attr("tabindex", "-1");
    out.text(cx.say.card());
    out.close();
    if let Some(next) = cx.say.card_next() {
        out.p_class("next", next);
    }
    if let Some(line) = cx.say.group_farther() {
        out.p_class("next grp", line);
    }
    for note in &cx.say.group_notes() {
        out.p_class("next grp", note.as_str());
    }
}

/// Whom to call, in a stop.
fn call(out: &mut Page<'_>, cx: &Region<'_>) {
    let line = cx.say.answer.reach.outcome == Reached::Line;
    out.p_class(
        "no",
        if line {
            m::CARD_NO_TOUCH
        } else {
            m::CARD_NO_WORK
        },
    );
    if group::to_call(out, cx) {
        return;
    }
    out.open_class("a", "btn call");
    out.attr("href", &cat!("#", cx.id("phone")));
    glyph(out.sink(), Glyph::Call);
    out.text(if line {
        m::CARD_CALL_LINE
    } else {
        m::CARD_CALL_ARBORIST
    });
    out.close();
}

/// The one caution that decides.
fn caution(out: &mut Page<'_>, cx: &Region<'_>) {
    let [ask, why] = cx.say.card_caution();
    out.open_class("div", "hold");
    glyph(out.sink(), Glyph::Caution);
    out.open("p");
    out.leaf("b", ask);
    out.text(" ");
    out.text(why);
    out.close_two();
}

/// Print, share, calendar: only where the host wires them.
pub(super) fn actions(out: &mut Page<'_>, cx: &Region<'_>) {
    if !cx.options.with_buttons {
        return;
    }
    let outcome = cx.say.answer.outcome;
    let mut buttons: Vec<(&str, Glyph, Word)> = Vec::new();
    if outcome != Outcome::CannotTell {
        buttons.push(("print", Glyph::Print, m::CARD_PRINT));
    }
    buttons.push(if cx.options.with_link {
        ("link", Glyph::Share, m::CARD_SHARE)
    } else {
        ("copy", Glyph::Share, m::CARD_COPY)
    });
    if matches!(outcome, Outcome::Do | Outcome::Wait) && !cx.say.answer.visits.is_empty() {
        buttons.push(("calendar", Glyph::Calendar, m::CARD_CALENDAR));
    }
    if cx.options.with_form && !cx.nested {
        buttons.push(("next", Glyph::Next, m::CARD_NEXT_TREE));
    }
    out.open_class("ul", "acts");
    for (act, sign, word) in buttons {
        out.open("li");
        out.open("button");
        out.attr("type", "button");
        out.attr("data-act", act);
        glyph(out.sink(), sign);
        out.text(word);
        out.close_two();
    }
    out.close();
}
