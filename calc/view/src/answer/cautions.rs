//! Cautions: at most eight in view, the rest folded, none dropped; who decides stands with each.

use super::frame::{Region, lead, open_details, open_part};
use super::group;
use super::sources::{cited, is_bare};
use crate::measure;
use crate::page::Page;
use crate::words::{self, cautions as w};
use calc::models::cautions::{Caution, CautionLine, When};
use calc::terms::small::find;

/// Cautions by where they stand, each once.
#[derive(Default)]
struct Sorted<'a> {
    view: Vec<&'a CautionLine>,
    folded: Vec<&'a CautionLine>,
    merged: Vec<&'a CautionLine>,
}

impl<'a> Sorted<'a> {
    fn take(&mut self, lines: &'a [CautionLine]) {
        for line in lines {
            let known = [&self.view, &self.folded, &self.merged];
            if known
                .iter()
                .any(|all| all.iter().any(|it| it.id == line.id))
            {
                continue;
            }
            let into = if line.merged {
                &mut self.merged
            } else if line.folded {
                &mut self.folded
            } else {
                &mut self.view
            };
            into.push(line);
        }
    }
}

/// The part, with the cautions of the answer and those that only the conditional answer has.
pub(super) fn part(out: &mut Page<'_>, cx: &Region<'_>) {
    let answer = cx.say.answer;
    let mut lines = Sorted::default();
    lines.take(&answer.cautions);
    if let Some(open_if) = &answer.conditional {
        // What only the conditional answer says stays in view unless it was folded there.
        lines.take(&open_if.answer.cautions);
    }
    open_part(
        out,
        cx,
        "p-left local",
        "cautions",
        w::CAUTIONS,
        w::CAUTIONS_ASKED,
    );
    let mut in_view: Vec<&str> = Vec::new();
    for line in &lines.view {
        in_view.push(line.id);
    }
    for line in &lines.view {
        caution(out, cx, line, &in_view);
    }
    let count = measure::number(lines.folded.len() as u32);
    folded(out, cx, cat!(w::MORE_CAUTIONS, count), &lines.folded);
    let mut names: Vec<&str> = Vec::new();
    for line in &lines.merged {
        names.push(w::caution_short(line.id).unwrap_or(line.id));
    }
    folded(
        out,
        cx,
        cat!(w::CHECK_TOO, words::phrase::row(&names), "."),
        &lines.merged,
    );
    group::rest(out, cx, &in_view);
    out.close();
}

/// Cautions behind a summary. Nothing where there is none.
fn folded(out: &mut Page<'_>, cx: &Region<'_>, summary: String, lines: &[&CautionLine]) {
    if lines.is_empty() {
        return;
    }
    open_details(out, "", &summary);
    for line in lines {
        caution(out, cx, line, &[]);
    }
    out.close();
}

fn known(cx: &Region<'_>, id: &str) -> Option<&'static Caution> {
    cx.say
        .reference
        .cautions
        .iter()
        .find(|caution| caution.id == id)
}

/// What a caution says, with the answer's own distance in it.
fn sentence(cx: &Region<'_>, caution: &Caution) -> String {
    const PEOPLE_OUT: &str = "{people_out}";
    match find::place(caution.sentence, PEOPLE_OUT) {
        Some(at) => {
            let (before, rest) = find::cut(caution.sentence, at);
            let answer = cx.say.answer;
            let people = cx
                .say
                .reach(answer.people_out_m.unwrap_or(answer.reach.two_heights_m));
            cat!(before, people, find::behind(rest, PEOPLE_OUT.len()))
        }
        None => caution.sentence.into(),
    }
}

fn caution(out: &mut Page<'_>, cx: &Region<'_>, line: &CautionLine, in_view: &[&str]) {
    let Some(caution) = known(cx, line.id) else {
        return;
    };
    out.open_class("div", "who");
    lead(out, caution.subject, sentence(cx, caution));
    out.open_class("p", "ck");
    out.text(w::when(caution.when));
    if !line.who.is_empty() {
        out.text(cat!(" ", w::DECIDES, line.who, "."));
        if !line.law.is_empty() {
            out.text(cat!(" ", line.law, "."));
        } else if caution.when == When::Law {
            out.text(w::ASK);
        }
    }
    out.close();
    let cites = &line.because;
    if cites.iter().any(|cite| !is_bare(cite)) {
        out.open_class("p", "ck np");
        cited(out, cx, &words::m::MEASURE_SOURCE, cites);
        out.close();
    } else if !cites.is_empty() {
        out.p_class("ck np", w::NO_SOURCE);
    }
    group::beside(out, cx, line.id, in_view);
    out.close();
}
