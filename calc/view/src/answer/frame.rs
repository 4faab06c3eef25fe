//! Small pieces that every part is built from.

use crate::draw::mark::{Swatch, swatch};
use crate::kind::Shown;
use crate::page::{Cells, Page, Words};
use crate::words::{self, Say};
use calc::answer::{Also, AlsoKind};
use calc::terms::cite::{Cite, Grade};
use calc::terms::method::{Level, Method};
use calc::terms::small::find;

use super::Options;

/// What a part needs to know.
pub struct Cx<'a> {
    /// Question, answer, tables.
    pub say: Say<'a>,
    /// The host's wishes.
    pub options: &'a Options<'a>,
    /// Before every id.
    pub prefix: String,
    /// Level of the parts' headings.
    pub level: u8,
    /// Whether this is the answer behind an "If".
    pub nested: bool,
}

impl Cx<'_> {
    /// Whether a part stands in this calculator's answer.
    pub fn shows(&self, part: Shown) -> bool {
        self.options.kind.shows(part)
    }

    /// The name of the tree, as the caption of its tables.
    pub fn title(&self) -> String {
        cat!(self.say.answer.species.name, ", ", self.say.size())
    }

    /// An id of this answer.
    pub fn id(&self, name: &str) -> String {
        cat!(&self.prefix, "p-", name)
    }

    /// Whether the bark of a day matters here: the ring leads, is possible, or waits.
    pub fn about_ring(&self) -> bool {
        let answer = self.say.answer;
        if answer.timing.tape.is_empty() {
            return false;
        }
        let possible = self
            .say
            .line(Method::BarkRing)
            .is_some_and(|line| line.level <= Level::Possible);
        let ring = |also: &Also| matches!(also.kind, AlsoKind::RingLater | AlsoKind::NoRingHere);
        let later = answer.next_line.as_ref().is_some_and(ring) || answer.also.iter().any(ring);
        answer.headline_method == Method::BarkRing || possible || later
    }
}

/// Opens a part: a section with its title, and the question that it answers at the right.
pub fn open_part(
    out: &mut Page<'_>,
    cx: &Cx<'_>,
    class: &str,
    id: &str,
    title: &str,
    question: &str,
) {
    let id = cx.id(id);
    out.open_class("section", &cat!("part ", class));
    out.attr("aria-labelledby", &id);
    out.open_heading(cx.level, "");
    out.attr("id", &id);
    out.text(title);
    if !question.is_empty() {
        out.text(" ");
        out.leaf_class("span", "q", question);
    }
    out.close();
}

/// A heading inside a part.
pub fn sub(out: &mut Page<'_>, cx: &Cx<'_>, text: &str) {
    out.heading(cx.level + 1, "", "", text);
}

/// A paragraph with a bold lead.
#[inline(never)]
pub fn lead(out: &mut Page<'_>, bold: impl Words, rest: impl Words) {
    out.open("p");
    out.leaf("b", bold.as_ref());
    let rest = rest.as_ref();
    if !rest.is_empty() {
        out.text(" ");
        out.text(rest);
    }
    out.close();
}

/// The first sentence bold, the rest not.
pub fn lead_first(out: &mut Page<'_>, text: &str) {
    match find::place(text, ". ") {
        Some(at) => lead(out, find::cut(text, at + 1).0, find::behind(text, at + 2)),
        None => lead(out, text, ""),
    }
}

/// A list of plain items.
pub fn items(out: &mut Page<'_>, tag: &'static str, class: &str, list: Vec<String>) {
    out.open_class(tag, class);
    for item in &list {
        out.leaf("li", item.as_str());
    }
    out.close();
}

/// A key below a drawing: symbol, name, what it stands for.
pub fn key(out: &mut Page<'_>, rows: &[(Swatch, &str, &str)]) {
    out.open_class("ul", "key");
    for (mark, name, rest) in rows {
        out.open("li");
        swatch(out.sink(), *mark);
        out.open("span");
        out.leaf("b", *name);
        out.text(" ");
        out.text(*rest);
        out.close_two();
    }
    out.close();
}

/// Opens folded text.
pub fn open_details(out: &mut Page<'_>, class: &str, summary: &str) {
    out.open_class("details", class);
    out.leaf("summary", summary);
}

/// A button that the host wires.
pub fn button(out: &mut Page<'_>, act: &str, word: &str) {
    out.open_class("button", "btn ghost");
    out.attr("type", "button");
    out.attr("data-act", act);
    out.text(word);
    out.close();
}

/// A link to a field of the form. Only where there is one.
pub fn field_link(out: &mut Page<'_>, cx: &Cx<'_>, path: &str, word: &str, what: &str) {
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
pub fn to_field(out: &mut Page<'_>, path: &str) {
    let id = words::problem::field_id(path);
    out.attr("href", &cat!("#", &id));
    out.attr("data-act", "change");
    out.attr("data-field", &id);
}

/// A source by its label, linked to its line of the sources page. Our own assumptions and the like have none.
pub fn source(out: &mut Page<'_>, cx: &Cx<'_>, id: &str) {
    let known = cx.say.reference.source(id);
    let own = if id == "group" {
        cx.say.group_name()
    } else {
        id
    };
    let label = known.map_or(own, |source| source.label);
    if known.is_none() || cx.options.sources_base.is_empty() {
        out.text(label);
        return;
    }
    out.open("a");
    out.attr("href", &cat!(cx.options.sources_base, "#", id));
    out.text(label);
    out.close();
}

/// A line of sources with grade words for those that have no line of their own. Nothing where there is none.
pub fn cites(out: &mut Page<'_>, cx: &Cx<'_>, list: &[Cite]) {
    let mut seen: Vec<&str> = Vec::new();
    for cite in list {
        let bare = is_bare(cite);
        let id = if bare {
            words::confidence::grade(cite.grade)
        } else {
            cite.source
        };
        if seen.contains(&id) {
            continue;
        }
        out.text(if seen.is_empty() { "" } else { "; " });
        seen.push(id);
        if bare {
            out.text(id);
        } else {
            source(out, cx, cite.source);
        }
    }
}

/// The word for sources, then a line of them.
pub fn cited(out: &mut Page<'_>, cx: &Cx<'_>, word: &str, list: &[Cite]) {
    out.text(word);
    cites(out, cx, list);
    out.text(".");
}

/// A soft paragraph in pieces, behind each but the last the source that it names.
pub fn with_sources(out: &mut Page<'_>, cx: &Cx<'_>, pieces: &[&str], ids: &[&str]) {
    out.open_class("p", "soft");
    let mut ids = ids.iter();
    for piece in pieces {
        out.text(*piece);
        if let Some(id) = ids.next() {
            out.text("(");
            source(out, cx, id);
            out.text(")");
        }
    }
    out.close();
}

/// Whether a cite is worded by its grade: our own assumption, the trade, the asker, or memory, which is
/// never shown as sourced.
pub fn is_bare(cite: &Cite) -> bool {
    cite.grade == Grade::Memory || matches!(cite.source, "own" | "practice" | "you")
}

/// The mark of a grade, the same as in the drawings.
pub fn grade_mark(grade: Grade) -> Swatch {
    match grade {
        Grade::Measured | Grade::Published => Swatch::Ink,
        Grade::Related | Grade::Derived | Grade::Secondary => Swatch::Half,
        Grade::Practice => Swatch::Hatch,
        Grade::Assumption | Grade::Memory => Swatch::Dash,
    }
}

/// The grade of a range in a drawing.
pub fn drawn_grade(grade: Grade) -> crate::draw::Grade {
    match grade {
        Grade::Measured | Grade::Published => crate::draw::Grade::Measured,
        Grade::Assumption | Grade::Memory => crate::draw::Grade::Assumed,
        Grade::Related | Grade::Derived | Grade::Secondary | Grade::Practice => {
            crate::draw::Grade::Estimated
        }
    }
}

/// The weakest grade of some cites.
pub fn weakest(list: &[Cite]) -> Grade {
    list.iter()
        .map(|cite| cite.grade)
        .max()
        .unwrap_or(Grade::Assumption)
}

/// Opens a table that scrolls inside its own named region, as far as its rows.
pub fn table(out: &mut Page<'_>, caption: &str, heads: &[&str]) {
    open_table(out, "", caption, heads);
}

/// Opens a table in folded text: the summary above it says what its caption says.
pub fn folded_table(out: &mut Page<'_>, class: &str, caption: &str, heads: &[&str]) {
    open_details(out, class, caption);
    open_table(out, "vh", caption, heads);
    out.table.around += 1;
}

/// Opens the table twin of a drawing.
pub fn twin(out: &mut Page<'_>, cx: &Cx<'_>, summary: &str, heads: &[&str]) {
    open_details(out, "twin", summary);
    // Several twins of one tree stand in an answer: each region has a name of its own.
    table(out, &cat!(cx.title(), ": ", summary), heads);
    out.table.around += 1;
}

fn open_table(out: &mut Page<'_>, class: &str, caption: &str, heads: &[&str]) {
    out.open_class("div", "tw");
    out.attr("tabindex", "0");
    out.attr("role", "region");
    out.attr("aria-label", caption);
    out.open("table");
    out.open("caption");
    out.open_class("span", class);
    out.text(caption);
    out.close_two();
    out.open("thead");
    out.open("tr");
    for head in heads {
        out.open("th");
        out.attr("scope", "col");
        out.text(*head);
        out.close();
    }
    out.close_two();
    out.open("tbody");
    out.table = Cells {
        columns: heads.len(),
        at: 0,
        around: 3,
    };
}
