//! An answer that can't be given yet: what is missing first, then the answer if it is so, then otherwise.

use super::frame::{Region, field_link, lead, open_details};
use super::{cautions, method, plan_parts, reach, stop, verdict};
use crate::kind::ShownPart;
use crate::page::Page;
use crate::words::{self, Say, missing as w};
use calc::answer::{Also, Conditional, If, Outcome};
use calc::models::reach::Outcome as Reached;

/// The region.
pub(super) fn answer(out: &mut Page<'_>, cx: &Region<'_>) {
    let answer = cx.say.answer;
    // What it could hit is asked in the style of a stop until it is answered.
    if answer.reach.outcome == Reached::NotChecked || answer.reach.line_open() {
        stop::block(out, cx, words::stop::STOP_OPEN, &|_| {});
    } else {
        verdict::block(out, cx);
    }
    super::columns(out, cx, false, &|out| {
        missing(out, cx);
        if let Some(open_if) = &answer.conditional {
            conditional(out, cx, open_if);
        }
        otherwise(out, cx);
        if cx.shows(ShownPart::Clear) {
            reach::part(out, cx);
        }
        // With the line question open no method is offered; what would stand is folded above.
        if cx.shows(ShownPart::Rest) && !answer.reach.line_open() {
            method::part(out, cx);
        }
        cautions::part(out, cx);
    });
}

/// What to find out, each row with a link to its field.
fn missing(out: &mut Page<'_>, cx: &Region<'_>) {
    super::frame::open_part(out, cx, "p-full p-open", "open", w::MISSING, "");
    let answer = cx.say.answer;
    let within = cx.say.reach(answer.reach.two_heights_m);
    let mut rows: Vec<(String, &'static str)> = Vec::new();
    for why in &answer.reach.missing {
        if let Some(row) = w::settle(*why, &within) {
            rows.push(row);
        }
    }
    let conditional = answer.conditional.as_ref();
    for condition in conditional.map_or(&[][..], |it| &it.conditions) {
        let known = matches!(condition, Conditional::NothingInReach { .. });
        if let Some((text, field)) = w::settle_condition(*condition).filter(|_| !known)
            && !rows.iter().any(|(_, path)| *path == field)
        {
            rows.push((text.into(), field));
        }
    }
    out.open_class("ol", "todo");
    for (text, path) in &rows {
        out.open("li");
        out.text(text.as_str());
        if cx.options.with_form {
            out.text(" ");
            field_link(out, cx, path, w::GIVE, &words::fields::field(path));
        }
        out.close();
    }
    out.close_two();
}

/// "If …: that answer", its own plan in full, marked as conditional.
fn conditional(out: &mut Page<'_>, cx: &Region<'_>, open_if: &If) {
    let nested = Region {
        say: Say {
            reference: cx.say.reference,
            question: cx.say.question,
            answer: &open_if.answer,
            group: cx.say.group,
        },
        options: cx.options,
        prefix: cat!(&cx.prefix, "if-"),
        level: (cx.level + 1).min(6),
        nested: true,
    };
    out.open_class("section", "part conditional");
    let id = cx.id("if");
    out.attr("aria-labelledby", &id);
    let condition = cx.say.conditions();
    out.heading(cx.level, "", &id, &cat!(w::IF, condition));
    out.p_class("asm", w::ONLY_IF);
    match open_if.answer.outcome {
        Outcome::Professional => {
            out.p_class("say", nested.say.verdict());
        }
        Outcome::Do | Outcome::Wait | Outcome::OtherMethod | Outcome::CannotTell => {
            let folded = cx.say.answer.reach.line_open();
            if folded {
                open_details(out, "", w::FOLDED);
            }
            verdict::block(out, &nested);
            plan_parts(out, &nested);
            if folded {
                out.close();
            }
        }
    }
    out.close();
}

/// The best method if it is not so.
fn otherwise(out: &mut Page<'_>, cx: &Region<'_>) {
    let answer = cx.say.answer;
    super::frame::open_part(out, cx, "p-full p-else", "else", w::OTHERWISE, "");
    // The first stands out.
    let mut first = true;
    let mut say = |also: &Also| {
        let line = cx.say.beside(also);
        if first {
            lead(out, line, w::OTHERWISE_HOLDS);
        } else {
            out.p(line);
        }
        first = false;
    };
    if let Some(next) = &answer.next_line {
        say(next);
    }
    answer.also.iter().for_each(say);
    out.close();
}
