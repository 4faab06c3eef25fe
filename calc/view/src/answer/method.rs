//! The method that leads where it is no ring, in short steps; and the nine methods side by side.

use super::frame::{Region, lead, open_part, table};
use super::ring;
use super::sources::{cited, is_bare, source};
use crate::page::Page;
use crate::words::{self, method as w};
use calc::answer::Outcome;
use calc::models::effort::MethodWork;
use calc::models::method::MethodLine;
use calc::models::provisos::Proviso;
use calc::models::reach::Outcome as Reached;
use calc::terms::cite::Cite;
use calc::terms::method::{Level, Method};
use calc::terms::tree::Condition;

/// The part: nine rows, level, who, reasons.
pub(super) fn part(out: &mut Page<'_>, cx: &Region<'_>) {
    let answer = cx.say.answer;
    open_part(
        out,
        cx,
        "p-hide p-meth",
        "meth",
        w::METHODS,
        if answer.reach.outcome == Reached::NotChecked && answer.outcome == Outcome::CannotTell {
            words::missing::METHODS_IF_CLEAR
        } else {
            w::METHODS_ASKED
        },
    );
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
        let [cost, end] = w::CITY_COST;
        out.text(cost);
        source(out, cx, "CANNON1982");
        out.text(end);
        out.close();
    }
    out.close();
}

/// A row: name, level and who, reasons, minutes.
fn method(out: &mut Page<'_>, cx: &Region<'_>, line: &MethodLine, work: &MethodWork) {
    let level = w::level(line.level);
    let stands = if line.level >= Level::NotAdvised {
        cat!(level, ".")
    } else {
        let who = w::who(
            line.method,
            line.by_professional,
            cx.say.question.tree.herbicide,
        );
        cat!(level, ", ", w::BY, who, ".")
    };
    let mut name = words::phrase::sentence(w::method(line.method));
    if line.method == cx.say.answer.headline_method {
        name.push_str(w::THIS_ONE);
    }
    out.cell(name);
    out.open_cell();
    out.leaf("b", words::phrase::sentence(&stands));
    out.text(" ");
    out.text(why(line));
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
fn why(line: &MethodLine) -> String {
    let mut list: Vec<&str> = Vec::new();
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
        cat!(words::phrase::sentence(&list.join("; ")), ". ")
    };
    if line.level >= Level::NotAdvised {
        return because.trim_end().into();
    }
    cat!(
        because,
        words::phrase::sentence(w::months(line.method)),
        ". ",
        w::LEAVES_BEHIND,
        w::leaves(line.method),
        "."
    )
}

/// Short steps of another method.
pub(super) fn steps(out: &mut Page<'_>, cx: &Region<'_>) {
    let answer = cx.say.answer;
    let question = cx.say.question;
    let method = answer.headline_method;
    open_part(out, cx, "do p-left", "do", words::ring::DO, w::DO_OTHER);
    let dead =
        question.tree.condition == Condition::Dead || question.tree.heading().live_share <= 0.0;
    if dead {
        out.p(w::NO_RING_DEAD);
    }
    lead(
        out,
        cat!(words::phrase::sentence(w::act(method)), "."),
        cat!(w::WHO_DOES_IT, cx.say.who_does_it(), "."),
    );
    let hands_on = !answer.headline_by_professional
        && !matches!(method, Method::LeaveIt | Method::Frill | Method::BasalBark);
    out.open_class("ol", "todo");
    if hands_on && ring::thorns(cx) {
        out.leaf("li", words::ring::THORNS);
    }
    let wood_goes = answer
        .provisos
        .iter()
        .any(|it| matches!(it, Proviso::TakeAwayOrPeel | Proviso::BarkOff));
    for step in w::other_steps(method, dead, answer.headline_by_professional) {
        if w::step_stands(step, wood_goes) {
            out.leaf("li", *step);
        }
    }
    for step in cx.say.provisos() {
        out.leaf("li", step);
    }
    out.close();
    if question.tree.stems.len() > 1 {
        ring::stems(out, cx, false);
    }
    out.close();
}
