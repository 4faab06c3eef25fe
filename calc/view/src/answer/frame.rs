//! Small pieces that every part is built from.

use super::{HostOptions, article};
use crate::draw::mark::{Swatch, swatch};
use crate::kind::Kind;
use crate::page::{Page, Wording};
use crate::words::{Say, Word, m};
use calc::answer::{Also, AlsoKind, Outcome};
use calc::terms::method::{Level, Method};

/// What a part needs to know.
pub(super) struct Region<'a> {
    /// Question, answer, tables.
    pub say: Say<'a>,
    /// The host's wishes.
    pub options: &'a HostOptions<'a>,
    /// Before every id.
    pub prefix: String,
    /// Level of the parts' headings.
    pub level: u8,
    /// Whether this is the answer behind an "If".
    pub nested: bool,
}

impl Region<'_> {
    /// Whether the answer stops: nothing is done here.
    pub(super) fn stops(&self) -> bool {
        self.say.answer.outcome == Outcome::Professional
    }

    /// Whether the tables of the drawings stand together under the working, and not each below its drawing.
    pub(super) fn tables_apart(&self) -> bool {
        self.options.kind == Kind::TreePlan && !self.nested
    }

    /// The name of the tree, as the caption of its tables.
    pub(super) fn title(&self) -> String {
        cat!(
            crate::words::phrase::tree(self.say.question.tree.species),
            ", ",
            self.say.size()
        )
    }

    /// An id of this answer.
    pub(super) fn id(&self, name: &str) -> String {
        cat!(&self.prefix, "p-", name)
    }

    /// As [`about_ring`], of this answer.
    pub(super) fn about_ring(&self) -> bool {
        about_ring(&self.say)
    }
}

/// Whether the bark of a day matters for an answer: the ring leads, is possible, or waits.
pub(super) fn about_ring(say: &Say<'_>) -> bool {
    let answer = say.answer;
    if answer.timing.tape.is_empty() {
        return false;
    }
    let possible = say
        .line(Method::BarkRing)
        .is_some_and(|line| line.level <= Level::Possible);
    let ring = |also: &Also| matches!(also.kind, AlsoKind::RingLater | AlsoKind::NoRingHere);
    let later = answer.next_line.as_ref().is_some_and(ring) || answer.also.iter().any(ring);
    answer.headline_method == Method::BarkRing || possible || later
}

/// The level of the heading over parts whose own stand at `level`: the answer's sentence, or the problems in its place. A
/// page has its own first heading.
pub(super) fn level_over(level: u8) -> u8 {
    level.saturating_sub(1).clamp(2, 6)
}

/// A part of an answer: where it stands, what it is called, the line that says its key number, and what is in it.
pub(super) struct Part {
    /// Class for the style sheet.
    pub class: &'static str,
    /// Its id, behind the answer's prefix.
    pub id: &'static str,
    /// Its title.
    pub title: String,
    /// What it says in one line: shown while it is folded.
    pub key: String,
    /// Writes what is in it.
    pub body: fn(&mut Page<'_>, &Region<'_>),
}

/// Opens a section with its title; what is in it stands behind.
pub(super) fn open_part(
    out: &mut Page<'_>,
    cx: &Region<'_>,
    class: &str,
    id: &str,
    title: impl Wording,
) {
    let id = cx.id(id);
    out.open_class("section", &cat!("sec ", class));
    out.attr("aria-labelledby", &id);
    out.open_heading(cx.level, "");
    out.attr("id", &id);
    out.text(title);
    out.close();
}

/// A part that is open.
pub(super) fn shown(out: &mut Page<'_>, cx: &Region<'_>, part: &Part) {
    open_part(out, cx, part.class, part.id, &*part.title);
    // Beside the title, where it takes no line of its own.
    articles(out, cx, part.id, 1);
    (part.body)(out, cx);
    out.close();
}

/// A part folded under its title and its key line.
pub(super) fn folded(out: &mut Page<'_>, cx: &Region<'_>, part: &Part) {
    open_fold(out, cx, part.class, part.id, &part.title, &part.key);
    (part.body)(out, cx);
    articles(out, cx, part.id, usize::MAX);
    out.close_two();
}

/// Writes links to the articles that explain a part, at most so many: none inside an answer that stands in another, nor where
/// nobody knows the page of sources, beside which the articles stand.
fn articles(out: &mut Page<'_>, cx: &Region<'_>, id: &str, most: usize) {
    let Some(home) = cx.options.sources_base.strip_suffix("sources/") else {
        return;
    };
    let rings = cx.say.answer.headline_method == Method::BarkRing;
    let all = article::of_part(id, rings, cx.about_ring());
    if cx.nested || all.is_empty() {
        return;
    }
    out.open_class("p", "read noprint");
    for (at, (name, word)) in all.iter().take(most).enumerate() {
        out.text(if at == 0 { "" } else { " · " });
        out.open("a");
        out.attr("href", &cat!(home, "articles/", name, "/"));
        out.text(*word);
        out.close();
    }
    out.close();
}

/// Opens a fold up to its body; two elements are open then.
pub(super) fn open_fold(
    out: &mut Page<'_>,
    cx: &Region<'_>,
    class: &str,
    id: &str,
    title: &str,
    key: &str,
) {
    out.open_class("details", &cat!("fold ", class));
    out.attr("id", &cx.id(id));
    out.open_folded(cx.level, title, key);
}

/// The parts by name, each a link to it: shown where the screen is wide.
pub(super) fn contents<'p>(
    out: &mut Page<'_>,
    cx: &Region<'_>,
    parts: impl Iterator<Item = &'p Part>,
) {
    out.open_class("nav", "toc noprint");
    out.attr("aria-label", &m::CARD_CONTENTS);
    out.open("ul");
    for part in parts {
        out.open("li");
        out.open("a");
        out.attr("href", &cat!("#", cx.id(part.id)));
        out.text(&*part.title);
        out.close_two();
    }
    out.close_two();
}

/// A link to the sentence of the card.
pub(super) fn to_card(out: &mut Page<'_>, cx: &Region<'_>, word: Word) {
    out.open("a");
    out.attr("href", &cat!("#", cx.id("say")));
    out.text(word);
    out.close();
}

/// A heading inside a part.
pub(super) fn sub(out: &mut Page<'_>, cx: &Region<'_>, text: &str) {
    out.heading(cx.level + 1, "", "", text);
}

/// A paragraph with a bold lead.
pub(super) fn lead(out: &mut Page<'_>, bold: impl Wording, rest: impl Wording) {
    out.open("p");
    out.leaf("b", bold.as_ref());
    let rest = rest.as_ref();
    if !rest.is_empty() {
        out.text(" ");
        out.text(rest);
    }
    out.close();
}

/// A list of plain items.
pub(super) fn items(out: &mut Page<'_>, tag: &'static str, class: &str, list: Vec<String>) {
    out.open_class(tag, class);
    for item in &list {
        out.leaf("li", item.as_str());
    }
    out.close();
}

/// A key below a drawing: symbol, name, what it stands for.
pub(super) fn key(out: &mut Page<'_>, rows: &[(Swatch, &str, &str)]) {
    out.open_class("ul", "key");
    for (mark, name, rest) in rows {
        match mark {
            Swatch::Notch | Swatch::Pin => out.open_class("li", "mark"),
            _ => out.open("li"),
        }
        swatch(out.sink(), *mark);
        out.open("span");
        if !name.is_empty() {
            out.leaf("b", *name);
            out.text(" ");
        }
        out.text(*rest);
        out.close_two();
    }
    out.close();
}

/// Opens folded text.
pub(super) fn open_details(out: &mut Page<'_>, class: &str, summary: &str) {
    out.open_class("details", class);
    out.leaf("summary", summary);
}

/// A button that the host wires.
pub(super) fn button(out: &mut Page<'_>, act: &str, word: &str) {
    out.open_class("button", "btn ghost");
    out.attr("type", "button");
    out.attr("data-act", act);
    out.text(word);
    out.close();
}

/// A link to a field of the form. Only where there is one.
pub(super) fn field_link(out: &mut Page<'_>, cx: &Region<'_>, path: &str, word: &str, what: &str) {
    if !cx.options.with_form {
        return;
    }
    out.open_class("a", "ch");
    to_field(out, path);
    out.text(word);
    if !what.is_empty() {
        out.open_class("span", "vh");
        out.text(" ");
        out.text(what);
        out.close();
    }
    out.close();
}

/// What makes a link lead to a field of the form.
pub(super) fn to_field(out: &mut Page<'_>, path: &str) {
    let id = crate::field_id(path);
    out.attr("href", &cat!("#", &id));
    out.attr("data-act", "change");
    out.attr("data-field", &id);
}

/// Opens a table that scrolls inside its own named region, as far as its rows.
pub(super) fn table(out: &mut Page<'_>, caption: &str, heads: &[impl AsRef<str>]) {
    out.open_table("", caption, heads);
}

/// Opens a table in folded text: the summary above it says what its caption says.
pub(super) fn folded_table(
    out: &mut Page<'_>,
    class: &str,
    caption: &str,
    heads: &[impl AsRef<str>],
) {
    open_details(out, class, caption);
    out.open_table("vh", caption, heads);
    out.table.around += 1;
}

/// Opens the table twin of a drawing.
pub(super) fn twin(out: &mut Page<'_>, cx: &Region<'_>, summary: &str, heads: &[impl AsRef<str>]) {
    open_details(out, "twin", summary);
    // Several twins of one tree stand in an answer: each region has a name of its own.
    table(out, &cat!(cx.title(), ": ", summary), heads);
    out.table.around += 1;
}
