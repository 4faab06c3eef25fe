//! The answer region as markup, in its fixed order; and in its place, what to fix in a question.

mod cautions;
mod confidence;
mod effort;
mod frame;
mod group;
mod habitat;
mod method;
mod missing;
mod outlook;
pub mod reach;
pub mod ring;
pub mod season;
mod sources;
mod stop;
#[cfg(test)]
mod tests;
mod verdict;
mod visits;
mod working;

use crate::kind::{Kind, ShownPart};
use crate::measure;
use crate::out::Out;
use crate::page::Page;
use crate::words::m;
use crate::words::{self, Say, verdict as w};
use calc::answer::{Answer, Outcome};
use calc::question::settings::Group;
use calc::question::{Problem, Question};
use calc::reference::Reference;
use frame::Region;
pub use ring::ring_of;
pub use visits::ADVICE_ID;

/// What the host decides about the region.
#[derive(Clone, Copy, Debug)]
pub struct Options<'a> {
    /// The group whose page it stands on, with its settings.
    pub group: Option<&'a Group>,
    /// Level of the parts' headings, 2 to 5. The region's own hidden heading stands one above it, from 3 up.
    pub heading_level: u8,
    /// Which calculator answers.
    pub kind: Kind,
    /// Before every id of the region, where several answers share a root.
    pub id_prefix: &'a str,
    /// Before `#ID` of a source: the address of the sources page. Empty: labels without links.
    pub sources_base: &'a str,
    /// Whether a form stands in the same root, so that rows link to its fields.
    pub with_form: bool,
    /// Whether buttons to print and copy are wired.
    pub with_buttons: bool,
    /// Whether the button that copies a link is wired.
    pub with_link: bool,
}

impl Default for Options<'_> {
    fn default() -> Self {
        Self {
            group: None,
            heading_level: 3,
            kind: Kind::TreePlan,
            id_prefix: "",
            sources_base: "",
            with_form: false,
            with_buttons: false,
            with_link: false,
        }
    }
}

/// Writes the whole answer region: one `section` with class `answer-region`.
pub fn answer(
    out: &mut dyn Out,
    reference: &'static Reference,
    question: &Question,
    answer: &Answer,
    options: &Options<'_>,
) {
    let cx = Region {
        say: Say {
            reference,
            question,
            answer,
            group: options.group,
        },
        options,
        prefix: options.id_prefix.into(),
        level: options.heading_level.clamp(2, 5),
        nested: false,
    };
    let out = &mut Page::new(out);
    out.open_class("section", "answer-region");
    let title = cx.id("a");
    out.attr("aria-labelledby", &title);
    if cx.level > 2 {
        out.heading(cx.level - 1, "vh", &title, w::THE_ANSWER);
    } else {
        out.open_class("p", "vh");
        out.attr("id", &title);
        out.text(w::THE_ANSWER);
        out.close();
    }
    sheet(out, &cx);
    match answer.outcome {
        Outcome::Professional => stop::answer(out, &cx),
        Outcome::CannotTell => missing::answer(out, &cx),
        Outcome::Do | Outcome::Wait | Outcome::OtherMethod => plan(out, &cx),
    }
    out.close();
}

/// The head of the printed page.
fn sheet(out: &mut Page<'_>, cx: &Region<'_>) {
    out.open_class("div", "sheet");
    out.open("p");
    out.leaf("b", w::SHEET);
    out.text(w::SHEET_MORE);
    out.close();
    out.p(w::SHEET_RULER);
    if let Some(day) = cx.say.answer.asked_day.or(cx.say.answer.advised_day) {
        out.p(measure::day_year(day));
    }
    out.close();
}

/// An answer with a plan: do, wait, another method.
fn plan(out: &mut Page<'_>, cx: &Region<'_>) {
    verdict::block(out, cx);
    columns(out, cx, false, &|out| {
        plan_parts(out, cx);
        if cx.shows(ShownPart::Rest) {
            method::part(out, cx);
        }
        cautions::part(out, cx);
    });
}

/// The parts of an answer, beside them what backs it, and under both the printed ruler.
fn columns(out: &mut Page<'_>, cx: &Region<'_>, stops: bool, parts: &dyn Fn(&mut Page<'_>)) {
    out.open_class("div", "both");
    out.open_class("div", "parts");
    parts(out);
    out.close();
    aside(out, cx, stops);
    out.close();
    print_ruler(out);
}

/// What to do, when, and what follows: the parts that a conditional answer shows too.
fn plan_parts(out: &mut Page<'_>, cx: &Region<'_>) {
    type Write = fn(&mut Page<'_>, &Region<'_>);
    const PARTS: [(ShownPart, Write); 6] = [
        (ShownPart::Make, ring::part),
        (ShownPart::Clear, reach::part),
        (ShownPart::When, season::part),
        (ShownPart::Effort, effort::part),
        (ShownPart::Visits, visits::part),
        (ShownPart::Rest, habitat::part),
    ];
    for (shown, part) in &PARTS {
        if cx.shows(*shown) {
            part(out, cx);
        }
    }
    let answer = cx.say.answer;
    let none = match cx.options.kind {
        Kind::Effort => answer.effort.is_none(),
        Kind::Checks => answer.visits.is_empty(),
        Kind::TreePlan | Kind::Year | Kind::Ring | Kind::Reach => false,
    };
    if none {
        out.p(m::CALCULATORS_NO_SUCH_PART);
    }
}

/// The column beside the answer; the order in the document stays.
fn aside(out: &mut Page<'_>, cx: &Region<'_>, stops: bool) {
    out.open_class("div", "aside");
    confidence::part(out, cx, stops);
    confidence::identity(out, cx);
    working::part(out, cx, stops);
    working::keep(out, cx, stops);
    out.close();
}

fn print_ruler(out: &mut Page<'_>) {
    // 183 mm fit between the margins of Letter and of A4.
    crate::draw::ruler::foot(out.sink(), 183, words::phrase::INCH, words::phrase::CM);
}

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
    let title = words::problem::heading(problems.len());
    out.heading(options.heading_level.clamp(2, 5), "", &id, &title);
    out.open("ul");
    for problem in problems {
        out.open("li");
        out.open("a");
        frame::to_field(out, &problem.field);
        out.text(words::problem::problem_text(problem));
        out.close_two();
    }
    out.close_two();
}
