//! Cautions: at most eight in view, the rest folded, none dropped; who decides stands with each.

use super::build::{Cx, cites, is_bare, lead_first, open_details, open_part};
use super::group;
use crate::measure;
use crate::out::Page;
use crate::words as w;
use calc::model::caution::CautionLine;
use calc::reference::Caution;

/// The part, with the cautions of the answer and those that only the conditional answer has.
pub fn part(out: &mut Page<'_>, cx: &Cx<'_>) {
    let answer = cx.say.answer;
    let mut lines: Vec<CautionLine> = answer.cautions.clone();
    if let Some(open_if) = &answer.conditional {
        for line in &open_if.answer.cautions {
            if !lines.iter().any(|known| known.id == line.id) {
                // What only the conditional answer says stays in view unless it was folded there.
                lines.push(line.clone());
            }
        }
    }
    open_part(
        out,
        cx,
        "p-left local",
        "cautions",
        w::CAUTIONS[0],
        w::CAUTIONS[1],
    );
    let (view, folded): (Vec<_>, Vec<_>) = lines
        .iter()
        .filter(|line| !line.merged)
        .partition(|line| !line.folded);
    let in_view: Vec<&str> = view.iter().map(|line| line.id).collect();
    for id in &in_view {
        caution(out, cx, id, &in_view);
    }
    if !folded.is_empty() {
        open_details(
            out,
            "",
            &cat!(w::MORE_CAUTIONS, measure::number(folded.len() as u32)),
        );
        for line in &folded {
            caution(out, cx, line.id, &[]);
        }
        out.close();
    }
    let merged: Vec<&CautionLine> = lines.iter().filter(|line| line.merged).collect();
    if !merged.is_empty() {
        let names: Vec<&str> = merged
            .iter()
            .map(|line| w::caution_short(line.id).unwrap_or(line.id))
            .collect();
        open_details(out, "", &cat!(w::CHECK_TOO, w::row(&names), "."));
        for line in &merged {
            caution(out, cx, line.id, &[]);
        }
        out.close();
    }
    group::rest(out, cx, &in_view, group::named(cx));
    out.close();
}

fn known(cx: &Cx<'_>, id: &str) -> Option<&'static Caution> {
    cx.say
        .reference
        .cautions
        .iter()
        .find(|caution| caution.id == id)
}

fn caution(out: &mut Page<'_>, cx: &Cx<'_>, id: &str, in_view: &[&str]) {
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
        out.text(w::SOURCE);
        cites(out, cx, caution.cites);
        out.text(".");
        out.close();
    } else if !caution.cites.is_empty() {
        out.p_class("ck np", w::NO_SOURCE);
    }
    group::beside(out, cx, id, in_view);
    out.close();
}
