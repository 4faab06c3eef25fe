//! The region of the answer: drawn anew as a whole, with what the reader had unfolded left as it was.

use crate::dom::{self, DomOut};
use crate::plan::Plan;
use calc::answer::Answer;
use calc::question::{Problem, Question};
use calc_view::out::Out;
use calc_view::page::Page;
use calc_view::{answer, problem_text};
use web_sys::Element;

/// While a changed field can't be read.
pub const WAITS: &str = "The plan waits for an answer that can be read.";

/// Draws an answer.
pub fn draw(plan: &Plan, question: &Question, answer: &Answer) {
    let before = folds(&plan.region);
    let focused = focused(plan);
    let mut out = DomOut::new(&plan.document);
    answer::answer(
        &mut out,
        calc_data::reference(),
        question,
        answer,
        &plan.options(),
    );
    out.into(&plan.region);
    for (key, fold) in folds(&plan.region) {
        if let Some((_, old)) = before.iter().find(|(other, _)| *other == key) {
            let _ = fold.toggle_attribute_with_force("open", old.has_attribute("open"));
        }
    }
    if let Some(at) = focused
        && plan.root.active_element().is_none()
        && let Some(control) = controls(&plan.region).get(at)
    {
        dom::focus(control);
    }
}

/// What folds, by its summary and how many with the same came before it.
fn folds(region: &Element) -> Vec<(String, Element)> {
    let mut folds: Vec<(String, Element)> = Vec::new();
    for fold in dom::all(region, "details") {
        let summary = fold.query_selector("summary").ok().flatten();
        let mut key = summary
            .and_then(|summary| summary.text_content())
            .unwrap_or_default();
        while folds.iter().any(|(other, _)| *other == key) {
            key.push('+');
        }
        folds.push((key, fold));
    }
    folds
}

fn controls(region: &Element) -> Vec<Element> {
    dom::all(region, "a, button, input, select, summary, [tabindex]")
}

/// Which control of the region has the focus, by its place: what is drawn anew takes it with it.
fn focused(plan: &Plan) -> Option<usize> {
    let active = plan.root.active_element()?;
    controls(&plan.region)
        .iter()
        .position(|control| *control == active)
}

/// In place of an answer, while what was changed can't be read yet: no alarm, no marks.
pub fn waits(out: &mut dyn Out, problems: &[Problem]) {
    let out = &mut Page::new(out);
    out.open_class("div", "waits");
    out.leaf_class("p", "say", WAITS);
    out.open("ul");
    for problem in problems {
        out.leaf("li", problem_text(problem));
    }
    out.close();
    out.close();
}
