//! An answer that can't be given yet: the ground to look at, then the answer if it is so, folded, then otherwise.

use super::frame::{Part, Region, field_link, lead};
use super::{cautions, confidence, method, reach, verdict, working};
use crate::page::Page;
use crate::words::{self, Say, m, missing as w};
use calc::answer::{Also, Conditional, Outcome};
use calc::models::reach::ReachOutcome as Reached;

/// What stands under the card.
pub(super) fn parts(out: &mut Page<'_>, cx: &Region<'_>) {
    let answer = cx.say.answer;
    let ground = about_ground(cx);
    let mut folds = Vec::new();
    if answer.conditional.is_some() {
        folds.push(Part {
            class: "p-if cond",
            id: "if",
            title: cx.say.if_title(),
            key: m::LINES_ONLY_THEN.into(),
            body: conditional,
        });
    }
    folds.push(Part {
        class: "p-else",
        id: "else",
        title: m::LINES_OTHERWISE.into(),
        key: otherwise_key(cx),
        body: otherwise,
    });
    // With the line question open no method is offered; what would stand is folded above.
    if !answer.reach.line_open() {
        folds.push(method::part(cx));
    }
    folds.push(cautions::all(cx));
    folds.extend(confidence::identity(cx));
    folds.push(confidence::part(cx));
    folds.push(working::part(cx));
    let look = Part {
        class: "p-keep",
        id: "keep",
        title: if ground {
            m::MISSING_LOOK_THIS_FAR.into()
        } else {
            m::REACH_KEEP_CLEAR.into()
        },
        key: String::new(),
        body: look,
    };
    let far = Part {
        class: "p-far",
        id: "far",
        title: cx.say.how_far_is(),
        key: String::new(),
        body: how_far,
    };
    let beside = if ground { vec![far] } else { Vec::new() };
    super::columns(out, cx, &[look], &beside, &folds);
}

/// Whether what stands around the tree is what is missing.
fn about_ground(cx: &Region<'_>) -> bool {
    let reach = &cx.say.answer.reach;
    reach.outcome == Reached::NotChecked || reach.line_open()
}

/// How far to look, drawn.
fn look(out: &mut Page<'_>, cx: &Region<'_>) {
    out.p(if about_ground(cx) {
        cx.say.what_counts()
    } else {
        cx.say.near_said()
    });
    reach::figure(out, cx, false);
}

/// How the ground is looked over.
fn how_far(out: &mut Page<'_>, cx: &Region<'_>) {
    let within = cx.say.answer.reach.two_heights_m;
    out.open_class("ol", "steps");
    out.leaf("li", w::pace_it(within, cx.say.units()));
    for step in [m::MISSING_GO_ROUND, m::MISSING_LOOK_UP] {
        out.leaf("li", step);
    }
    out.close();
}

/// What to find out, each row with a link to its field where there is a form.
pub(super) fn to_find_out(out: &mut Page<'_>, cx: &Region<'_>, links: bool) {
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
    out.open_class("ol", "steps");
    for (text, path) in &rows {
        out.open("li");
        out.text(text.as_str());
        if links {
            out.text(" ");
            field_link(out, cx, path, &m::MISSING_GIVE, &words::fields::field(path));
        }
        out.close();
    }
    out.close();
}

/// "If …: that answer", its own plan, marked as conditional.
fn conditional(out: &mut Page<'_>, cx: &Region<'_>) {
    let Some(open_if) = &cx.say.answer.conditional else {
        return;
    };
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
    let condition = cx.say.conditions();
    lead(out, m::missing_if(condition), nested.say.frame());
    out.p_class("soft", m::MISSING_ONLY_IF);
    verdict::whole(out, &nested);
    match open_if.answer.outcome {
        Outcome::Professional | Outcome::CannotTell => {}
        Outcome::Do | Outcome::Wait | Outcome::OtherMethod => {
            for part in super::plan(&nested) {
                super::shown(out, &nested, &part);
            }
        }
    }
}

/// The lines that hold if it is not so.
fn otherwise_lines(cx: &Region<'_>) -> Vec<String> {
    let answer = cx.say.answer;
    let say = |also: &Also| cx.say.beside(also);
    answer
        .next_line
        .iter()
        .chain(&answer.also)
        .map(say)
        .collect()
}

fn otherwise_key(cx: &Region<'_>) -> String {
    otherwise_lines(cx).into_iter().next().unwrap_or_default()
}

/// The best method if it is not so.
fn otherwise(out: &mut Page<'_>, cx: &Region<'_>) {
    out.p(m::MISSING_OTHERWISE_HOLDS);
    for line in &otherwise_lines(cx) {
        out.p(line.as_str());
    }
}
