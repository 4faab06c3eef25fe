//! What a value rests on: its sources with links, and the mark of its grade.

use super::frame::Region;
use crate::draw::mark::Swatch;
use crate::page::Page;
use crate::words::m;
use crate::words::message::{Parts, Piece};
use crate::words::prose::prose;
use calc::terms::cite::{Cite, Grade};
use calc::terms::source::{self, SourceId};

/// A source by its label, linked to its line of the sources page. Our own assumptions and the like have none.
pub(super) fn source(out: &mut Page<'_>, cx: &Region<'_>, id: SourceId) {
    let label = label(cx, id);
    if id == source::GROUP || cx.options.sources_base.is_empty() {
        out.text(prose(label));
        return;
    }
    out.open("a");
    out.attr("href", &cat!(cx.options.sources_base, "#", id.text()));
    out.text(prose(label));
    out.close();
}

/// What a source is called.
pub(super) fn label<'a>(cx: &'a Region<'_>, id: SourceId) -> &'a str {
    if id == source::GROUP {
        return cx.say.group_name();
    }
    let line = cx.say.reference.source(id);
    line.map_or(id.text(), |line| line.label)
}

/// A line of sources with grade words for those that have no line of their own. Nothing where there is none.
pub(super) fn cites(out: &mut Page<'_>, cx: &Region<'_>, list: &[Cite]) {
    let mut seen: Vec<&str> = Vec::new();
    for cite in list {
        let bare = is_bare(cite);
        // Parts of one source share its label: it is named once.
        let label = if bare {
            m::confidence_grade(cite.grade).text()
        } else {
            label(cx, cite.source)
        };
        if seen.contains(&label) {
            continue;
        }
        out.text(if seen.is_empty() { "" } else { "; " });
        seen.push(label);
        if bare {
            out.text(label);
        } else {
            source(out, cx, cite.source);
        }
    }
}

/// The word for sources, then a line of them.
pub(super) fn cited(out: &mut Page<'_>, cx: &Region<'_>, word: &str, list: &[Cite]) {
    out.text(word);
    cites(out, cx, list);
    out.text(".");
}

/// A soft paragraph whose nodes are sources: `say` is the message.
pub(super) fn with_sources(
    out: &mut Page<'_>,
    cx: &Region<'_>,
    ids: &[SourceId],
    say: fn(Parts<'_>),
) {
    out.open_class("p", "soft");
    say(&mut |piece| match piece {
        Piece::Text(text) => out.text(text),
        Piece::Node(at) => source(out, cx, ids[at]),
    });
    out.close();
}

/// Whether a cite is worded by its grade: our own assumption, the trade, the asker, or memory, which is
/// never shown as sourced.
pub(super) fn is_bare(cite: &Cite) -> bool {
    cite.grade == Grade::Memory
        || matches!(cite.source, source::OWN | source::PRACTICE | source::YOU)
}

/// The mark of a grade, the same as in the drawings.
pub(super) fn grade_mark(grade: Grade) -> Swatch {
    match grade {
        Grade::Measured | Grade::Published => Swatch::Ink,
        Grade::Related | Grade::Derived | Grade::Secondary => Swatch::Half,
        Grade::Practice => Swatch::Hatch,
        Grade::Assumption | Grade::Memory => Swatch::Dash,
    }
}

/// The grade of a range in a drawing.
pub(super) fn drawn_grade(grade: Grade) -> crate::draw::RangeGrade {
    match grade {
        Grade::Measured | Grade::Published => crate::draw::RangeGrade::Measured,
        Grade::Assumption | Grade::Memory => crate::draw::RangeGrade::Assumed,
        Grade::Related | Grade::Derived | Grade::Secondary | Grade::Practice => {
            crate::draw::RangeGrade::Estimated
        }
    }
}

/// The weakest grade of some cites.
pub(super) fn weakest(list: &[Cite]) -> Grade {
    list.iter()
        .map(|cite| cite.grade)
        .max()
        .unwrap_or(Grade::Assumption)
}
