//! The answer region as markup, in its fixed order; and in its place, what to fix in a question.

pub mod another;
pub mod article;
mod calculators;
mod card;
mod cautions;
mod confidence;
mod effort;
pub mod figure;
mod frame;
pub mod group;
mod habitat;
mod method;
mod missing;
mod outlook;
pub mod reach;
pub mod ring;
pub mod season;
mod sources;
pub mod species;
mod stop;
#[cfg(test)]
mod tests;
mod verdict;
mod visits;
mod working;

use crate::draw::ruler;
use crate::kind::Kind;
use crate::out::Out;
use crate::page::Page;
use crate::words::{self, Say, phrase};
use calc::answer::{Answer, Outcome};
use calc::question::settings::AskingGroup;
use calc::question::{Problem, Question};
use calc::reference::Reference;
pub use confidence::look_alike;
use frame::{Part, Region, folded, shown};
pub use ring::ring_of;
pub use visits::ADVICE_ID;

/// What the host decides about the region.
#[derive(Clone, Copy, Debug)]
pub struct HostOptions<'a> {
    /// The group whose page it stands on, with its settings.
    pub group: Option<&'a AskingGroup>,
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
    /// What the marks of "Try another" are moved from; none where there is nothing to try.
    pub another: Option<another::Trial<'a>>,
}

impl Default for HostOptions<'_> {
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
            another: None,
        }
    }
}

/// Writes the whole answer region: one `section` with class `answer-region`.
pub fn answer(
    out: &mut dyn Out,
    reference: &'static Reference,
    question: &Question,
    answer: &Answer,
    options: &HostOptions<'_>,
) {
    let cx = region(reference, question, answer, options);
    let out = &mut Page::new(out);
    open_region(out);
    first(out, &cx);
    parts(out, &cx);
    out.close();
}

/// Writes the same `section` with its first screen alone: the card, or what a small calculator answers with. It is marked
/// as busy until [`below`] stands in it.
pub fn first_screen(
    out: &mut dyn Out,
    reference: &'static Reference,
    question: &Question,
    answer: &Answer,
    options: &HostOptions<'_>,
) {
    let cx = region(reference, question, answer, options);
    let out = &mut Page::new(out);
    open_region(out);
    out.attr("aria-busy", "true");
    first(out, &cx);
    out.close();
}

/// Writes what stands in the `section` under its first screen.
pub fn below(
    out: &mut dyn Out,
    reference: &'static Reference,
    question: &Question,
    answer: &Answer,
    options: &HostOptions<'_>,
) {
    let cx = region(reference, question, answer, options);
    parts(&mut Page::new(out), &cx);
}

fn open_region(out: &mut Page<'_>) {
    out.open_class("section", "answer-region");
    out.attr("aria-label", &words::m::CARD_THE_ANSWER);
}

fn first(out: &mut Page<'_>, cx: &Region<'_>) {
    match cx.options.kind {
        Kind::TreePlan => card::card(out, cx),
        _ => calculators::first(out, cx),
    }
}

fn parts(out: &mut Page<'_>, cx: &Region<'_>) {
    match (cx.options.kind, cx.say.answer.outcome) {
        (_, Outcome::Professional) => stop::parts(out, cx),
        (_, Outcome::CannotTell) => missing::parts(out, cx),
        (Kind::TreePlan, Outcome::Wait) => waiting(out, cx),
        (Kind::TreePlan, Outcome::Do | Outcome::OtherMethod) => doing(out, cx),
        _ => calculators::parts(out, cx),
    }
    working::on_paper(out, cx);
    ruler::foot(out.sink(), PAPER_MM, phrase::INCH, phrase::CM);
}

fn region<'a>(
    reference: &'static Reference,
    question: &'a Question,
    answer: &'a Answer,
    options: &'a HostOptions<'a>,
) -> Region<'a> {
    Region {
        say: Say {
            reference,
            question,
            answer,
            group: options.group,
        },
        options,
        prefix: options.id_prefix.into(),
        level: options.heading_level.clamp(2, 6),
        nested: false,
    }
}

/// Writes what was asked, in one line: the summary that the form folds under once it is answered.
pub fn recap(
    out: &mut dyn Out,
    reference: &'static Reference,
    question: &Question,
    answer: &Answer,
) {
    let say = Say {
        reference,
        question,
        answer,
        group: None,
    };
    let out = &mut Page::new(out);
    out.open("span");
    out.leaf("b", say.recap_tree());
    out.text(" ");
    out.text(say.recap_rest());
    out.close();
    out.text(" ");
    out.leaf_class("span", "change", words::m::CARD_RECAP_CHANGE);
}

/// Writes the way past the form to its answer, for a form that stands open in front of it.
pub fn skip(out: &mut dyn Out) {
    let out = &mut Page::new(out);
    out.open("a");
    out.attr("href", "#p-say");
    out.text(words::m::CARD_SKIP_TO_ANSWER);
    out.close();
}

/// What fits between the margins of Letter and of A4.
const PAPER_MM: u16 = 183;

/// Writes the contents, what is beside each other on a wide screen, then the folds, and the way back to the card.
fn columns(out: &mut Page<'_>, cx: &Region<'_>, left: &[Part], right: &[Part], folds: &[Part]) {
    let another = another::part(cx);
    frame::contents(
        out,
        cx,
        left.iter().chain(right).chain(&another).chain(folds),
    );
    out.open_class("div", "two");
    if another.is_some() && cx.options.with_form {
        out.p_class("turned soft noprint", words::m::ANOTHER_ABOVE);
    }
    out.open("div");
    for part in left {
        shown(out, cx, part);
    }
    out.close();
    out.open("div");
    for part in right.iter().chain(&another) {
        shown(out, cx, part);
    }
    out.close_two();
    out.open_class("div", "folds cols");
    for part in folds {
        folded(out, cx, part);
    }
    out.close();
    out.open_class("p", "back noprint");
    frame::to_card(out, cx, words::m::CARD_BACK_TO_ANSWER);
    out.close();
}

/// Do, or another method, today.
fn doing(out: &mut Page<'_>, cx: &Region<'_>) {
    let mut folds = vec![season::part(cx)];
    folds.extend(after(cx));
    columns(
        out,
        cx,
        &[ring::part(cx), reach::part(cx)],
        &[cautions::part(cx)],
        &folds,
    );
}

/// A wait: when it is, what can be done now, and the day's work folded.
fn waiting(out: &mut Page<'_>, cx: &Region<'_>) {
    let day = Part {
        title: words::m::LINES_DO_THEN.into(),
        ..ring::part(cx)
    };
    let mut folds = vec![day, reach::part(cx)];
    folds.extend(after(cx));
    columns(
        out,
        cx,
        &[season::part(cx), cautions::part(cx)],
        &[season::until_then()],
        &folds,
    );
}

/// The parts of a plan that only stands under a condition.
fn plan(cx: &Region<'_>) -> Vec<Part> {
    let mut parts = vec![ring::part(cx), reach::part(cx), season::part(cx)];
    parts.extend(effort::part(cx));
    parts.extend(visits::part(cx));
    parts
}

/// The folds that every plan ends with.
fn after(cx: &Region<'_>) -> Vec<Part> {
    let mut folds: Vec<Part> = Vec::new();
    folds.extend(effort::part(cx));
    folds.extend(visits::part(cx));
    folds.extend(habitat::part(cx));
    folds.push(method::part(cx));
    folds.extend(confidence::identity(cx));
    folds.push(confidence::part(cx));
    folds.push(working::part(cx));
    folds
}

/// Writes the summary: `div.errsum`, focusable, with a heading and one link a problem. Nothing without problems.
pub fn problems(out: &mut dyn Out, problems: &[Problem], options: &HostOptions<'_>) {
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
    out.heading(frame::level_over(options.heading_level), "", &id, &title);
    out.open("ul");
    for problem in problems {
        out.open("li");
        out.open("a");
        frame::to_field(out, &problem.field);
        out.text(words::problem::problem_on_page(problem));
        out.close_two();
    }
    out.close_two();
}
