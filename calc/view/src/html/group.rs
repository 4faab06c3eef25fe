//! What a group says itself: whom to ask, local rules, how old that is. All of it is text; links are those that the
//! reader of the settings lets in.

use super::build::{Cx, sub};
use crate::out::Page;
use crate::words as w;
use calc::answer::Outcome as Answered;
use calc::model::reach::Outcome;
use calc::settings::{Contact, ContactKind, Group, LocalCode};

fn group<'a>(cx: &Cx<'a>) -> Option<&'a Group> {
    cx.say.question.group.as_ref()
}

/// Who is asked in a stop.
const LINE: &[ContactKind] = &[ContactKind::Utility, ContactKind::Emergency];
/// Who is asked for a tree that is a professional's.
const PROFESSIONAL: &[ContactKind] = &[ContactKind::Professional];

/// Who of the group's contacts is named in a stop.
pub fn named(cx: &Cx<'_>) -> &'static [ContactKind] {
    match (cx.say.answer.outcome, cx.say.answer.reach.outcome) {
        (Answered::Professional, Outcome::Line) => LINE,
        (Answered::Professional, _) => PROFESSIONAL,
        _ => &[],
    }
}

/// The contacts of these kinds, each in a line.
pub fn contacts(out: &mut Page<'_>, cx: &Cx<'_>, kinds: &[ContactKind]) {
    each(cx, kinds, |group, contact| {
        out.open("p");
        out.leaf("b", &w::contact(contact));
        if let Some(phone) = &contact.phone {
            out.text(", ");
            link(out, &call(phone), phone, "");
        }
        page(out, group, contact);
        out.close();
    });
}

/// The same in a stop: a telephone is a button to press.
pub fn to_call(out: &mut Page<'_>, cx: &Cx<'_>, kinds: &[ContactKind]) {
    each(cx, kinds, |group, contact| {
        let name = w::contact(contact);
        if let Some(phone) = &contact.phone {
            out.open_class("p", "call");
            link(out, &call(phone), &cat!(&name, ", ", phone), "btn");
            out.close();
        }
        out.open("p");
        out.leaf("b", &name);
        page(out, group, contact);
        out.close();
    });
}

fn each(cx: &Cx<'_>, kinds: &[ContactKind], mut one: impl FnMut(&Group, &Contact)) {
    let group = group(cx);
    let all = group.map_or(&[][..], |group| &group.settings.contacts);
    for contact in all.iter().filter(|it| kinds.contains(&it.kind)) {
        group.into_iter().for_each(|group| one(group, contact));
    }
}

/// The page of a contact, and how old all of it is.
fn page(out: &mut Page<'_>, group: &Group, contact: &Contact) {
    if let Some(url) = &contact.url {
        out.text(", ");
        link(out, url, url, "");
    }
    out.text(". ");
    out.text(&w::checked(group, contact.checked));
}

/// A telephone as a link has it: digits and a plus.
fn call(phone: &str) -> String {
    let digits = |c: &char| c.is_ascii_digit() || *c == '+';
    let digits: String = phone.chars().filter(digits).collect();
    cat!("tel:", digits)
}

fn link(out: &mut Page<'_>, to: &str, text: &str, class: &str) {
    out.open("a");
    if !class.is_empty() {
        out.attr("class", class);
    }
    out.attr("href", to);
    if to.starts_with('h') {
        out.attr("target", "_blank");
        out.attr("rel", "noopener noreferrer");
    }
    out.text(text);
    out.close();
}

/// The local rules that stand beside a caution: those of a topic whose first caution in view it is.
pub fn beside(out: &mut Page<'_>, cx: &Cx<'_>, id: &str, in_view: &[&str]) {
    for (group, code) in codes(cx) {
        if place(code, in_view) == Some(id) {
            rule(out, group, code);
        }
    }
}

fn codes<'a>(cx: &Cx<'a>) -> impl Iterator<Item = (&'a Group, &'a LocalCode)> + use<'a> {
    let of = |group: &'a Group| group.settings.codes.iter().map(move |code| (group, code));
    group(cx).into_iter().flat_map(of)
}

/// The caution in view that a rule stands beside.
fn place(code: &LocalCode, in_view: &[&str]) -> Option<&'static str> {
    let mut wanted = code.topic.cautions().iter();
    wanted.find(|id| in_view.contains(id)).copied()
}

fn rule(out: &mut Page<'_>, group: &Group, code: &LocalCode) {
    out.open("p");
    out.leaf(
        "b",
        &cat!(&group.settings.name, ", ", w::code_topic(code.topic), ":"),
    );
    out.text(" ");
    out.text(&code.text);
    out.close();
    out.open_class("p", "ck");
    out.text(w::AUTHORITY);
    match &code.url {
        Some(url) => link(out, url, &code.authority, ""),
        None => out.text(&code.authority),
    }
    out.text(". ");
    out.text(&w::checked(group, code.checked));
    out.close();
}

/// Rules that stand beside no caution in view, and everyone who is not named in the stop.
pub fn rest(out: &mut Page<'_>, cx: &Cx<'_>, in_view: &[&str], named: &[ContactKind]) {
    let Some(group) = group(cx) else {
        return;
    };
    let alone: Vec<&LocalCode> = codes(cx)
        .map(|(_, code)| code)
        .filter(|code| place(code, in_view).is_none())
        .collect();
    let others: Vec<ContactKind> = ContactKind::ALL
        .iter()
        .copied()
        .filter(|kind| !named.contains(kind))
        .collect();
    let age = w::settings_age(group);
    let asks = group
        .settings
        .contacts
        .iter()
        .any(|it| others.contains(&it.kind));
    if alone.is_empty() && !asks && age.is_none() {
        return;
    }
    sub(out, cx, &w::from_group(&group.settings.name));
    for code in alone {
        out.open_class("div", "own");
        rule(out, group, code);
        out.close();
    }
    contacts(out, cx, &others);
    if let Some(age) = age {
        out.p(&age);
    }
}
