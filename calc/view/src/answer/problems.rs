//! The error summary: what to fix, each line a link to its field.

use super::Options;
use super::frame::to_field;
use crate::out::Out;
use crate::page::Page;
use crate::words::problem as w;
use calc::question::Problem;

/// Writes the summary: `div.errsum`, focusable, with a heading and one link a problem. Nothing without problems.
pub fn problems(out: &mut dyn Out, problems: &[Problem], options: &Options<'_>) {
    if problems.is_empty() {
        return;
    }
    let out = &mut Page::new(out);
    out.open_class("div", "errsum");
    let id = cat!(options.id_prefix, "p-fix");
    out.attr("role", "group");
    out.attr("tabindex", "-1");
    out.attr("aria-labelledby", &id);
    let title = w::heading(problems.len());
    out.heading(options.heading_level.clamp(2, 5), "", &id, &title);
    out.open("ul");
    for problem in problems {
        out.open("li");
        out.open("a");
        to_field(out, &problem.field);
        out.text(w::problem_text(problem));
        out.close_two();
    }
    out.close_two();
}
