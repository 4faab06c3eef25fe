//! The parts of an answer that the page of one species shows: no card, nothing that speaks of one tree's own place.

use super::frame::{folded, shown};
use super::{HostOptions, cautions, confidence, habitat, method, region, season, visits, working};
use crate::out::Out;
use crate::page::Page;
use calc::answer::Answer;
use calc::question::Question;
use calc::reference::Reference;

/// Writes when the bark slips, the cautions, and folded behind them what comes after, the methods and the working. `when` says
/// the first in the page's own way; the part of the answer is then folded too.
pub fn parts(
    out: &mut dyn Out,
    reference: &'static Reference,
    question: &Question,
    answer: &Answer,
    options: &HostOptions<'_>,
    when: Option<&dyn Fn(&mut Page<'_>)>,
) {
    let cx = region(reference, question, answer, options);
    let out = &mut Page::new(out);
    out.open_class("div", "two");
    out.open("div");
    match when {
        Some(when) => when(out),
        None => shown(out, &cx, &season::part(&cx)),
    }
    out.close();
    out.open("div");
    shown(out, &cx, &cautions::part(&cx));
    out.close_two();
    out.open_class("div", "folds cols");
    if when.is_some() {
        folded(out, &cx, &season::part(&cx));
    }
    let after = visits::part(&cx).into_iter().chain(habitat::part(&cx));
    let rest = [method::part(&cx), confidence::part(&cx), working::part(&cx)];
    for part in after.chain(rest) {
        folded(out, &cx, &part);
    }
    out.close();
}
