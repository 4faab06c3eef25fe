//! The nine methods side by side: how each stands, who does it, and why.

use super::frame::{Part, Region, table};
use super::sources::{cited, is_bare, source};
use crate::page::Page;
use crate::words::m;
use crate::words::message::Piece;
use crate::words::{self, Word, method as w};
use calc::answer::Outcome;
use calc::models::effort::MethodWork;
use calc::models::method::MethodLine;
use calc::models::reach::ReachOutcome as Reached;
use calc::terms::cite::Cite;
use calc::terms::method::Level;
use calc::terms::source::CANNON1982;

/// The part: nine rows, level, who, reasons.
pub(super) fn part(cx: &Region<'_>) -> Part {
    Part {
        class: "p-meth",
        id: "meth",
        title: m::METHOD_METHODS.into(),
        key: cx.say.key_methods(),
        body,
    }
}

fn body(out: &mut Page<'_>, cx: &Region<'_>) {
    let answer = cx.say.answer;
    if answer.reach.outcome == Reached::NotChecked && answer.outcome == Outcome::CannotTell {
        out.p(m::MISSING_METHODS_IF_CLEAR);
    }
    table(out, &cx.title(), &w::HEAD_METHODS);
    for herbicide in [false, true] {
        out.open("tr");
        out.open("th");
        out.attr("scope", "rowgroup");
        out.attr("colspan", "2");
        out.text(w::group(herbicide));
        out.close_two();
        for (line, work) in answer.methods.iter().zip(&answer.work) {
            if line.method.needs_herbicide() == herbicide {
                method(out, cx, line, work);
            }
        }
    }
    out.close_table();
    if answer.work.iter().any(|work| work.now.is_some()) {
        out.open_class("p", "soft np");
        m::method_city_cost(&mut |piece| match piece {
            Piece::Text(text) => out.text(text),
            Piece::Node(_) => source(out, cx, CANNON1982),
        });
        out.close();
    }
}

/// A row: name, level and who, reasons, minutes.
fn method(out: &mut Page<'_>, cx: &Region<'_>, line: &MethodLine, work: &MethodWork) {
    let level = m::method_level(line.level);
    let stands = if line.level >= Level::NotAdvised {
        cat!(words::phrase::sentence(&level), ".")
    } else {
        let who = w::who(
            line.method,
            line.by_professional,
            cx.say.question.tree.herbicide,
        );
        m::method_stands_by(m::MethodStandsBy {
            level: words::phrase::sentence(&level),
            who,
        })
    };
    let mut name = words::phrase::sentence(&m::method_method(line.method));
    if line.method == cx.say.answer.headline_method {
        name = m::method_this_one(name);
    }
    out.cell(name);
    out.open_cell();
    out.leaf("b", stands);
    out.text(" ");
    out.text(why(cx, line));
    if line.level < Level::NotAdvised {
        out.text(" ");
        out.text(w::work(work));
        let mut printed: Vec<Cite> = Vec::new();
        for cite in &work.because {
            if !is_bare(cite) {
                printed.push(*cite);
            }
        }
        if !work.of.is_empty() && !printed.is_empty() {
            out.text(" ");
            cited(out, cx, &words::m::MEASURE_SOURCE, &printed);
        }
    }
    out.close_cell();
}

/// The reasons that made the level, then when it works and what it leaves.
fn why(cx: &Region<'_>, line: &MethodLine) -> String {
    let mut list: Vec<Word> = Vec::new();
    for reason in &line.reasons {
        let lowers = reason.at_most == line.level && line.level > Level::Recommended;
        if (lowers || reason.by_professional)
            && let Some(words) = w::rule(reason.rule, line.method)
            && !list.contains(&words)
        {
            list.push(words);
        }
    }
    let because = if list.is_empty() {
        String::new()
    } else {
        cat!(
            words::phrase::sentence(&words::phrase::joined_by(&list, "; ")),
            ". "
        )
    };
    if line.level >= Level::NotAdvised {
        return because.trim_end().into();
    }
    cat!(
        because,
        words::phrase::sentence(&cx.say.months_of(line.method)),
        ". ",
        &m::method_leaves(line.method)
    )
}
