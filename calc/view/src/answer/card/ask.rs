//! The question that a card asks where nothing can be told yet: its fields stand in the card, and the answer follows
//! the moment they are filled. Without a form beside it, and on paper, it is told in words what to find out.

use crate::answer::frame::Region;
use crate::answer::missing::to_find_out;
use crate::control::{field_id, label_of, open_control, open_input, option};
use crate::form::{ASK_CLONE, ASK_FAR, ASK_HEIGHT, ASK_KIND, ASK_LINE, ASK_NOTHING, ASK_REGION};
use crate::measure;
use crate::page::Page;
use crate::words::{self, Word, m};
use calc::answer::Conditional;
use calc::models::reach::Why;
use calc::terms::quantity::Units;

/// What is asked, in the order of the card.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Asked {
    /// The nearest thing and how far away it is.
    Near,
    /// Whether a line is in reach.
    Line,
    /// The height.
    Height,
    /// The state, for oak wilt.
    Region,
    /// Whether the whole clone can be ringed.
    Clone,
}

/// Answers to the question of a line, with the values of their field.
const LINE_REPLIES: [(&str, Word); 3] = [
    ("yes", m::CARD_ASK_YES),
    ("no", m::CARD_ASK_NO),
    ("cant_tell", m::CARD_ASK_CANT_TELL),
];
/// Two answers, with the values of their field.
const YES_NO: [(&str, Word); 2] = [("yes", m::CARD_ASK_YES), ("no", m::CARD_ASK_NO)];

/// How a length is typed.
fn unit(cx: &Region<'_>) -> Word {
    match cx.say.units() {
        Units::Us => m::CARD_ASK_IN_FEET,
        Units::Metric => m::CARD_ASK_IN_METRES,
    }
}

/// What is open, each once.
fn asked(cx: &Region<'_>) -> Vec<Asked> {
    let answer = cx.say.answer;
    let mut list = Vec::new();
    let mut add = |asked: Asked| {
        if !list.contains(&asked) {
            list.push(asked);
        }
    };
    let missing = &answer.reach.missing;
    if missing.contains(&Why::ListOpen) || missing.contains(&Why::DistanceUnknown) {
        add(Asked::Near);
    }
    if missing.contains(&Why::LineOpen) {
        add(Asked::Line);
    }
    if missing.contains(&Why::HeightUnknown) {
        add(Asked::Height);
    }
    let open = answer.conditional.as_ref();
    for condition in open.map_or(&[][..], |it| &it.conditions) {
        match condition {
            Conditional::NothingInReach { .. } => {}
            Conditional::NoLine { .. } => add(Asked::Line),
            Conditional::HeightUnder { .. } => add(Asked::Height),
            Conditional::WholeClone => add(Asked::Clone),
            Conditional::NoOakWilt => add(Asked::Region),
            Conditional::SpeciesSuits => {}
        }
    }
    list
}

/// The questions, or what to find out.
pub(super) fn questions(out: &mut Page<'_>, cx: &Region<'_>) {
    let live = cx.options.with_form && cx.options.with_buttons;
    let list = asked(cx);
    // A name is looked for in the form: no short list would be honest.
    let open = cx.say.answer.conditional.as_ref();
    let named = open.is_none_or(|it| !it.conditions.contains(&Conditional::SpeciesSuits));
    if live && named && !list.is_empty() {
        fields(out, cx, &list);
        out.open_class("div", "onpaper");
        to_find_out(out, cx, false);
        out.close();
    } else {
        to_find_out(out, cx, cx.options.with_form);
    }
}

fn fields(out: &mut Page<'_>, cx: &Region<'_>, list: &[Asked]) {
    let units = cx.say.units();
    let within = measure::reach(cx.say.answer.reach.two_heights_m);
    let within = within.first(units);
    out.open_class("div", "asks noprint");
    for (asked, number) in list.iter().zip(1..) {
        // Numbers help only where there is more than one.
        let number = if list.len() > 1 {
            cat!(measure::number(number), ". ")
        } else {
            String::new()
        };
        let legend = cat!(
            number,
            match asked {
                Asked::Near => m::card_ask_near(within),
                Asked::Line => m::card_ask_line(within),
                Asked::Height => m::CARD_ASK_HEIGHT.into(),
                Asked::Region => m::CARD_ASK_REGION.into(),
                Asked::Clone => m::CARD_ASK_CLONE.into(),
            }
        );
        out.open_class("fieldset", "ask1");
        out.leaf("legend", legend.as_str());
        match asked {
            Asked::Near => near(out, cx, within),
            Asked::Line => segments(out, ASK_LINE, &LINE_REPLIES),
            Asked::Clone => segments(out, ASK_CLONE, &YES_NO),
            Asked::Height => {
                text(out, ASK_HEIGHT, m::CARD_ASK_HEIGHT, unit(cx));
            }
            Asked::Region => regions(out),
        }
        out.close();
    }
    out.open_class("button", "btn");
    out.attr("type", "button");
    out.attr("data-act", "finish");
    out.text(m::CARD_ASK_FINISH);
    out.close_two();
}

/// The kind of the nearest thing and its distance, beside each other.
fn near(out: &mut Page<'_>, cx: &Region<'_>, within: &str) {
    let targets = &cx.say.question.tree.targets;
    let open = targets.iter().find(|target| target.distance.is_none());
    let picked = open.map_or("", |target| target.kind.word());
    out.open_class("div", "duo");
    out.open("div");
    let id = field_id(ASK_KIND);
    label_of(out, "vh", &id, &m::CARD_ASK_WHAT);
    open_control(out, "select", "", &id, ASK_KIND);
    for &(value, said) in m::FORM_KINDS {
        option(out, value, &said, value == picked);
    }
    option(out, ASK_NOTHING, &m::card_ask_nothing(within), false);
    out.close_two();
    text(out, ASK_FAR, m::CARD_ASK_HOW_FAR, unit(cx));
    out.close();
}

/// A text of one line; its unit stands in the hint.
fn text(out: &mut Page<'_>, name: &str, label: Word, hint: Word) {
    out.open("div");
    let id = field_id(name);
    label_of(out, "vh", &id, &label);
    open_input(out, "", "text", &id, name, "");
    out.attr("placeholder", &hint);
    out.close_two();
}

/// One of two or three, as wide buttons.
fn segments(out: &mut Page<'_>, name: &str, choices: &[(&str, Word)]) {
    out.open_class("div", "seg");
    for (value, said) in choices {
        out.open("label");
        out.open("input");
        out.attr("type", "radio");
        out.attr("name", name);
        out.attr("value", value);
        out.close();
        out.text(*said);
        out.close();
    }
    out.close();
}

/// The states, provinces and countries.
fn regions(out: &mut Page<'_>) {
    let id = field_id(ASK_REGION);
    label_of(out, "vh", &id, &m::CARD_ASK_REGION);
    open_control(out, "select", "wf", &id, ASK_REGION);
    option(out, "", &m::CARD_ASK_PICK, true);
    for (code, name) in words::region::regions() {
        option(out, code, name, false);
    }
    out.close();
}
