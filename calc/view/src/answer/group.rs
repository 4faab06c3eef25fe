//! What a group says itself: whom to ask, local rules, how old that is. All of it is text; links are those that the
//! reader of the settings lets in.

use super::frame::{Region, sub};
use crate::out::Out;
use crate::page::Page;
use crate::words::group as w;
use crate::words::m;
use calc::answer::Outcome;
use calc::models::reach::ReachOutcome;
use calc::question::settings::{AskingGroup, Contact, ContactKind, LocalCode};

fn group<'a>(cx: &Region<'a>) -> Option<&'a AskingGroup> {
    cx.say.group
}

/// Who is asked in a stop.
const LINE: &[ContactKind] = &[ContactKind::Utility, ContactKind::Emergency];
/// Who is asked for a tree that is a professional's.
const PROFESSIONAL: &[ContactKind] = &[ContactKind::Professional];

/// Who of the group's contacts is named in a stop.
fn named(cx: &Region<'_>) -> &'static [ContactKind] {
    match (cx.say.answer.outcome, cx.say.answer.reach.outcome) {
        (Outcome::Professional, ReachOutcome::Line) => LINE,
        (Outcome::Professional, _) => PROFESSIONAL,
        _ => &[],
    }
}

/// Whom to ask in a stop: a telephone is a button to press. Says whether anybody is named.
pub(super) fn to_call(out: &mut Page<'_>, cx: &Region<'_>) -> bool {
    let Some(group) = group(cx) else {
        return false;
    };
    let mut any = false;
    for contact in &group.settings.contacts {
        if !named(cx).contains(&contact.kind) {
            continue;
        }
        let name = w::contact(contact);
        any = true;
        if let Some(phone) = &contact.phone {
            call(out, phone, &cat!(&name, ", ", phone), "btn call");
        }
        out.open("p");
        out.leaf("b", name);
        page(out, group, contact);
    }
    any
}

/// The page of a contact, and how old all of it is; closes its line.
fn page(out: &mut Page<'_>, group: &AskingGroup, contact: &Contact) {
    if let Some(url) = &contact.url {
        out.text(", ");
        link(out, url, url, "");
    }
    out.text(". ");
    out.text(w::checked(group, contact.checked));
    out.close();
}

/// A telephone as a link: digits and a plus.
fn call(out: &mut Page<'_>, phone: &str, text: &str, class: &str) {
    let mut to = String::from("tel:");
    for c in phone.chars() {
        if c.is_ascii_digit() || c == '+' {
            to.push(c);
        }
    }
    link(out, &to, text, class);
}

fn link(out: &mut Page<'_>, to: &str, text: &str, class: &str) {
    out.open_class("a", class);
    out.attr("href", to);
    if to.starts_with('h') {
        out.attr("target", "_blank");
        out.attr("rel", "noopener noreferrer");
    }
    out.text(text);
    out.close();
}

/// The local rules that stand beside a caution: those of a topic whose first caution in view it is.
pub(super) fn beside(out: &mut Page<'_>, cx: &Region<'_>, id: &str, in_view: &[&str]) {
    let Some(group) = group(cx) else {
        return;
    };
    for code in &group.settings.codes {
        if place(code, in_view) == Some(id) {
            rule(out, group, code);
        }
    }
}

/// The caution in view that a rule stands beside.
fn place(code: &LocalCode, in_view: &[&str]) -> Option<&'static str> {
    let mut wanted = code.topic.cautions().iter();
    wanted.find(|id| in_view.contains(id)).copied()
}

fn rule(out: &mut Page<'_>, group: &AskingGroup, code: &LocalCode) {
    out.open("p");
    out.leaf(
        "b",
        cat!(
            &group.settings.name,
            ", ",
            &m::group_code_topic(code.topic),
            ":"
        ),
    );
    out.text(" ");
    out.text(code.text.as_str());
    out.close();
    out.open_class("p", "ck");
    out.text(m::GROUP_AUTHORITY);
    match &code.url {
        Some(url) => link(out, url, &code.authority, ""),
        None => out.text(code.authority.as_str()),
    }
    out.text(". ");
    out.text(w::checked(group, code.checked));
    out.close();
}

/// Writes whom a group names, each with what they are asked for and when that was checked.
pub fn contacts(out: &mut dyn Out, group: &AskingGroup) {
    let out = &mut Page::new(out);
    for contact in &group.settings.contacts {
        person(out, group, contact);
    }
}

/// Writes a group's rules, each with who decides and when that was checked.
pub fn rules(out: &mut dyn Out, group: &AskingGroup) {
    let out = &mut Page::new(out);
    for code in &group.settings.codes {
        rule(out, group, code);
    }
    if let Some(age) = w::settings_age(group) {
        out.p(age);
    }
}

/// Somebody of a group, in a line.
fn person(out: &mut Page<'_>, group: &AskingGroup, contact: &Contact) {
    out.open("p");
    out.leaf("b", w::contact(contact));
    if let Some(phone) = &contact.phone {
        out.text(", ");
        call(out, phone, phone, "");
    }
    page(out, group, contact);
}

/// Rules that stand beside no caution in view, and everyone who is not named in the stop.
pub(super) fn rest(out: &mut Page<'_>, cx: &Region<'_>, in_view: &[&str]) {
    let Some(group) = group(cx) else {
        return;
    };
    let settings = &group.settings;
    let alone = |code: &&LocalCode| place(code, in_view).is_none();
    let other = |contact: &&Contact| !named(cx).contains(&contact.kind);
    let age = w::settings_age(group);
    if age.is_none()
        && !settings.codes.iter().any(|code| alone(&code))
        && !settings.contacts.iter().any(|it| other(&it))
    {
        return;
    }
    sub(out, cx, &w::from_group(&settings.name));
    for code in settings.codes.iter().filter(alone) {
        out.open_class("div", "own");
        rule(out, group, code);
        out.close();
    }
    for contact in settings.contacts.iter().filter(other) {
        person(out, group, contact);
    }
    if let Some(age) = age {
        out.p(age);
    }
}
