//! Small pieces that every part is built from.

use crate::draw::mark::{Swatch, swatch};
use crate::heading::{heading, open_heading};
use crate::kind::Shown;
use crate::out::Page;
use crate::words::{self as w, Say};
use calc::answer::AlsoKind;
use calc::evidence::{Cite, Grade};
use calc::model::method::{Level, Method};
use calc::piece;

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
        let later = answer
            .next_line
            .iter()
            .chain(&answer.also)
            .any(|also| matches!(also.kind, AlsoKind::RingLater | AlsoKind::NoRingHere));
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
    open_heading(out, cx.level);
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
    heading(out, cx.level + 1, "", "", text);
}

/// An element with a class and text.
pub fn text_in(out: &mut Page<'_>, tag: &'static str, class: &str, text: &str) {
    if class.is_empty() {
        out.leaf(tag, text);
    } else {
        out.leaf_class(tag, class, text);
    }
}

/// A paragraph with a bold lead.
pub fn lead(out: &mut Page<'_>, bold: &str, rest: &str) {
    out.open("p");
    out.leaf("b", bold);
    if !rest.is_empty() {
        out.text(" ");
        out.text(rest);
    }
    out.close();
}

/// The first sentence bold, the rest not.
pub fn lead_first(out: &mut Page<'_>, text: &str) {
    match piece::place(text, ". ") {
        Some(at) => lead(out, piece::cut(text, at + 1).0, piece::behind(text, at + 2)),
        None => lead(out, text, ""),
    }
}

/// A list of plain items.
pub fn items(out: &mut Page<'_>, tag: &'static str, class: &str, list: &[impl AsRef<str>]) {
    out.open(tag);
    if !class.is_empty() {
        out.attr("class", class);
    }
    for item in list {
        out.leaf("li", item.as_ref());
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
        out.leaf("b", name);
        out.text(" ");
        out.text(rest);
        out.close_two();
    }
    out.close();
}

/// The cells of a table, row by row in one list: a list for each row costs bytes at every place that makes one.
#[derive(Default)]
pub struct Rows(Vec<String>);

impl Rows {
    /// The next cell, of words at hand.
    #[inline(never)]
    pub fn cell(&mut self, text: &str) -> &mut Self {
        self.put(text.into())
    }

    /// The next cell, of words just made.
    #[inline(never)]
    pub fn put(&mut self, text: String) -> &mut Self {
        self.0.push(text);
        self
    }
}

/// A table in folded text: the summary above it says what its caption says.
pub fn folded_table(out: &mut Page<'_>, caption: &str, heads: &[&str], rows: &Rows) {
    any_table(out, true, caption, heads, rows);
}

/// A table that scrolls inside its own named region; the first cell of a row is its heading.
pub fn table(out: &mut Page<'_>, caption: &str, heads: &[&str], rows: &Rows) {
    any_table(out, false, caption, heads, rows);
}

fn any_table(out: &mut Page<'_>, folded: bool, caption: &str, heads: &[&str], rows: &Rows) {
    open_table(out, folded, caption, heads);
    for row in rows.0.chunks(heads.len().max(1)) {
        out.open("tr");
        for (at, cell) in row.iter().enumerate() {
            if at == 0 {
                row_head(out, cell);
            } else {
                out.leaf("td", cell);
            }
        }
        out.close();
    }
    close_table(out);
}

/// Opens a table as far as its rows.
pub fn open_table(out: &mut Page<'_>, folded: bool, caption: &str, heads: &[&str]) {
    out.open_class("div", "tw");
    out.attr("tabindex", "0");
    out.attr("role", "region");
    out.attr("aria-label", caption);
    out.open("table");
    out.open("caption");
    text_in(out, "span", if folded { "vh" } else { "" }, caption);
    out.close();
    out.open("thead");
    out.open("tr");
    for head in heads {
        out.open("th");
        out.attr("scope", "col");
        out.text(head);
        out.close();
    }
    out.close_two();
    out.open("tbody");
}

/// The heading of a row.
pub fn row_head(out: &mut Page<'_>, text: &str) {
    out.open("th");
    out.attr("scope", "row");
    out.text(text);
    out.close();
}

/// Closes what [`open_table`] opened.
pub fn close_table(out: &mut Page<'_>) {
    for _ in 0..3 {
        out.close();
    }
}

/// Opens folded text.
pub fn open_details(out: &mut Page<'_>, class: &str, summary: &str) {
    out.open("details");
    if !class.is_empty() {
        out.attr("class", class);
    }
    out.leaf("summary", summary);
}

/// The table twin of a drawing.
pub fn twin(out: &mut Page<'_>, summary: &str, caption: &str, heads: &[&str], rows: &Rows) {
    open_details(out, "twin", summary);
    // Several twins of one tree stand in an answer: each region has a name of its own.
    table(out, &cat!(caption, ": ", summary), heads, rows);
    out.close();
}

/// One row of a key-value list: a swatch before the value where there is one, a link behind it.
pub struct Row<'a> {
    /// Key.
    pub key: &'a str,
    /// Symbol of certainty.
    pub mark: Option<Swatch>,
    /// Value.
    pub value: &'a str,
    /// What follows the value.
    pub rest: &'a str,
    /// Path of the field, and the link's word.
    pub link: Option<(&'a str, &'a str)>,
}

/// A key-value row.
pub fn kv(out: &mut Page<'_>, cx: &Cx<'_>, row: &Row<'_>) {
    if row.link.is_some() {
        out.open_class("div", "c3");
    } else {
        out.open("div");
    }
    out.leaf("dt", row.key);
    out.open("dd");
    if let Some(mark) = row.mark {
        swatch(out.sink(), mark);
        out.text(" ");
        out.leaf("b", row.value);
    } else {
        out.text(row.value);
    }
    if !row.rest.is_empty() {
        out.leaf_class("span", "np", row.rest);
    }
    out.close();
    if let Some((path, word)) = row.link {
        out.open_class("dd", "chg");
        field_link(out, cx, path, word, row.key);
        out.close();
    }
    out.close();
}

/// A link to a field of the form. Only where there is one.
pub fn field_link(out: &mut Page<'_>, cx: &Cx<'_>, path: &str, word: &str, what: &str) {
    if !cx.options.with_form {
        return;
    }
    let id = w::field_id(path);
    out.open_class("a", "ch");
    out.attr("href", &cat!("#", &id));
    out.attr("data-act", "change");
    out.attr("data-field", &id);
    out.text(word);
    if !what.is_empty() {
        out.open_class("span", "vh");
        out.text(" ");
        out.text(what);
        out.close();
    }
    out.close();
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
            w::grade(cite.grade)
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

/// A soft line under another part.
pub fn soft(out: &mut Page<'_>, text: &str) {
    out.p_class("soft", text);
}
