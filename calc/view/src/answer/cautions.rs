//! Cautions: at most eight in view, the rest folded, none dropped; who decides stands with each.

use super::frame::{Region, lead_first, open_details, open_part};
use super::group;
use super::sources::{cited, is_bare};
use crate::measure;
use crate::page::Page;
use crate::words::{self, cautions as w};
use calc::models::cautions::{Caution, CautionLine};

/// Cautions by where they stand, each once.
#[derive(Default)]
struct Sorted {
    view: Vec<&'static str>,
    folded: Vec<&'static str>,
    merged: Vec<&'static str>,
}

impl Sorted {
    fn take(&mut self, lines: &[CautionLine]) {
        for line in lines {
            let known = [&self.view, &self.folded, &self.merged];
            if known.iter().any(|ids| ids.contains(&line.id)) {
                continue;
            }
            let into = if line.merged {
                &mut self.merged
            } else if line.folded {
                &mut self.folded
            } else {
                &mut self.view
            };
            into.push(line.id);
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
    for id in &lines.view {
        caution(out, cx, id, &lines.view);
    }
    let count = measure::number(lines.folded.len() as u32);
    folded(out, cx, cat!(w::MORE_CAUTIONS, count), &lines.folded);
    let mut names: Vec<&str> = Vec::new();
    for id in &lines.merged {
        names.push(w::caution_short(id).unwrap_or(id));
    }
    folded(
        out,
        cx,
        cat!(w::CHECK_TOO, words::phrase::row(&names), "."),
        &lines.merged,
    );
    group::rest(out, cx, &lines.view);
    out.close();
}

/// Cautions behind a summary. Nothing where there is none.
fn folded(out: &mut Page<'_>, cx: &Region<'_>, summary: String, ids: &[&str]) {
    if ids.is_empty() {
        return;
    }
    open_details(out, "", &summary);
    for id in ids {
        caution(out, cx, id, &[]);
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

fn caution(out: &mut Page<'_>, cx: &Region<'_>, id: &str, in_view: &[&str]) {
    let Some(caution) = known(cx, id) else {
        return;
    };
    out.open_class("div", "who");
    lead_first(out, caution.text);
    out.open_class("p", "ck");
    out.text(w::when(caution.when));
    if !matches!(caution.defers_to, "" | "-") {
        out.text(" ");
        out.text(w::DECIDES);
        out.text(caution.defers_to);
        out.text(".");
    }
    out.close();
    if caution.cites.iter().any(|cite| !is_bare(cite)) {
        out.open_class("p", "ck np");
        cited(out, cx, words::phrase::SOURCE, caution.cites);
        out.close();
    } else if !caution.cites.is_empty() {
        out.p_class("ck np", w::NO_SOURCE);
    }
    group::beside(out, cx, id, in_view);
    out.close();
}
