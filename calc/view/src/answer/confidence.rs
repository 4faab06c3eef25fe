//! How sure, what would change it, and whether it is this tree.

use super::frame::{Part, Region, items, open_details};
use super::sources::{grade_mark, weakest, with_sources};
use crate::draw::mark::swatch;
use crate::page::{Page, Wording};
use crate::words::gap::other_tree;
use crate::words::m;
use crate::words::prose::prose;
use crate::words::{self, confidence as w};
use calc::terms::cite::{Cite, Grade};
use calc::terms::method::Method;
use calc::terms::species::LookAlike;
use calc::timing::Basis;

/// Look-alikes in view; the others are folded.
const IN_VIEW: usize = 3;

/// The part: why, how sure, what would change it.
pub(super) fn part(cx: &Region<'_>) -> Part {
    Part {
        class: "p-sure",
        id: "sure",
        title: m::LINES_SURE.into(),
        key: cx.say.key_sure(),
        body,
    }
}

fn body(out: &mut Page<'_>, cx: &Region<'_>) {
    let stops = cx.stops();
    super::verdict::whole(out, cx);
    out.open_class("dl", "kv stk");
    grades(out, cx, stops);
    out.close();
    let mut changes: Vec<String> = Vec::new();
    for change in &cx.say.answer.changes {
        changes.push(cx.say.change(change));
    }
    out.open("p");
    out.leaf("b", m::CONFIDENCE_WHAT_CHANGES);
    if changes.is_empty() {
        out.text(" ");
        out.text(m::CONFIDENCE_NOTHING_CHANGES);
    }
    out.close();
    if !changes.is_empty() {
        items(out, "ul", "", changes);
    }
    if !stops && cx.about_ring() {
        contested(out, cx);
    }
}

/// A grade of what the answer rests on: name, grade, what to add.
fn graded(out: &mut Page<'_>, name: &str, grade: Grade, rest: impl Wording) {
    out.open("div");
    out.leaf("dt", name);
    out.open("dd");
    swatch(out.sink(), grade_mark(grade));
    out.text(" ");
    out.leaf("b", m::confidence_grade(grade));
    let rest = rest.as_ref();
    if !rest.is_empty() {
        out.leaf_class("span", "np", rest);
    }
    out.close_two();
}

/// The grades of what the answer rests on.
fn grades(out: &mut Page<'_>, cx: &Region<'_>, stops: bool) {
    let answer = cx.say.answer;
    let rings = !stops && answer.headline_method == Method::BarkRing;
    if rings && let Some(ring) = super::ring::largest(cx).and_then(|stem| stem.ring.as_ref()) {
        // The weakest of what the width rests on is what it is worth.
        graded(
            out,
            &m::CONFIDENCE_SURE_WIDTH,
            weakest(&ring.because),
            m::CONFIDENCE_WIDTHS_DIFFER,
        );
    }
    if !stops && cx.about_ring() {
        let timing = &answer.timing;
        let grade = match timing.basis {
            Some(Basis::ObservedHere) => Grade::Measured,
            Some(_) => cx
                .say
                .question
                .tree
                .species
                .budbreak
                .grade
                .max(Grade::Related),
            None => Grade::Practice,
        };
        let rest = timing.sd_open.map_or_else(String::new, w::take_days);
        graded(out, &m::CONFIDENCE_SURE_DATES, grade, rest);
    }
    let height = &answer.height;
    let grade = if height.measured {
        Grade::Measured
    } else if height.whole_table {
        Grade::Assumption
    } else if cx.say.question.tree.species.heights_borrowed {
        Grade::Related
    } else {
        height_grade(&height.because)
    };
    let rest = match (height.low_m, height.high_m) {
        (Some(low), Some(high)) if !height.measured && high - low > 0.5 => {
            let rows = w::rows_from(&cx.say.length(low), &cx.say.length(high));
            cat!(rows, &m::CONFIDENCE_WORTH_MEASURING)
        }
        _ => String::new(),
    };
    graded(out, &m::CONFIDENCE_SURE_HEIGHT, grade, rest);
    graded(
        out,
        &m::CONFIDENCE_SURE_REACH,
        Grade::Published,
        m::CONFIDENCE_REACH_SOURCES,
    );
    if let Some(effort) = answer.effort.as_ref().filter(|_| rings) {
        graded(
            out,
            &m::CONFIDENCE_SURE_MINUTES,
            weakest(&effort.because),
            "",
        );
    }
    if let Some(outlook) = answer.outlook.as_ref().filter(|_| rings) {
        let own = outlook
            .seasons
            .iter()
            .any(|season| season.species_row.is_some());
        let (grade, rest) = if own {
            (Grade::Published, m::CONFIDENCE_OUTLOOK_OWN)
        } else {
            (Grade::Related, m::CONFIDENCE_OUTLOOK_CLASS)
        };
        graded(out, &m::CONFIDENCE_SURE_DEATHS, grade, rest);
    }
    let response = cx.say.question.tree.species.response;
    graded(out, &m::CONFIDENCE_SURE_RESPONSE, response, "");
}

/// The best grade that a height's rows have: the assumption over them is said in the working.
fn height_grade(because: &[Cite]) -> Grade {
    because
        .iter()
        .map(|cite| cite.grade)
        .min()
        .unwrap_or(Grade::Assumption)
}

fn contested(out: &mut Page<'_>, cx: &Region<'_>) {
    with_sources(
        out,
        cx,
        &words::season::CONTESTED_SOURCES,
        words::m::season_contested,
    );
}

/// Is it this tree? Native look-alikes first.
pub(super) fn identity(cx: &Region<'_>) -> Option<Part> {
    let alike = cx.say.answer.species.look_alikes;
    let any = !alike.is_empty() || cx.say.question.tree.species.unknown;
    any.then(|| Part {
        class: "p-is",
        id: "is",
        title: m::CONFIDENCE_IS_IT.into(),
        key: cx.say.key_is(),
        body: identity_body,
    })
}

fn identity_body(out: &mut Page<'_>, cx: &Region<'_>) {
    let species = cx.say.question.tree.species;
    let alike = cx.say.answer.species.look_alikes;
    if species.unknown {
        out.p(m::CONFIDENCE_UNKNOWN_NAME);
    } else {
        out.p(m::CONFIDENCE_MISTAKE);
    }
    // Two passes, not a sort: a sort of its own costs five kilobytes in the browser.
    let mut sorted: Vec<&LookAlike> = Vec::new();
    for native in [true, false] {
        for it in alike {
            if it.native == native {
                sorted.push(it);
            }
        }
    }
    let (view, rest) = sorted.split_at(sorted.len().min(IN_VIEW));
    list(out, view);
    if !rest.is_empty() {
        open_details(out, "", &m::CONFIDENCE_MORE_ALIKE);
        list(out, rest);
        out.close();
    }
}

fn list(out: &mut Page<'_>, alike: &[&LookAlike]) {
    if alike.is_empty() {
        return;
    }
    out.open("ul");
    for it in alike {
        out.open("li");
        look_alike(out, it);
        out.close();
    }
    out.close();
}

/// What another tree is, and the mark that tells it apart.
pub fn look_alike(out: &mut Page<'_>, it: &LookAlike) {
    if !it.name.is_empty() {
        let name = other_tree(it.scientific, it.name);
        out.leaf("b", words::phrase::sentence(&name));
        out.text(" ");
    }
    out.latin(it.scientific);
    if it.native {
        out.text(m::CONFIDENCE_NATIVE);
    }
    out.text(": ");
    out.text(prose(it.mark));
    out.text(".");
}
