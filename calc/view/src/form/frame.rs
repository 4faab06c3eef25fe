//! What stands around the form of a calculator. The module makes it in the browser; the builder writes it into a page of
//! ours, so that the form is there before the module, which then takes over what was typed.

use super::View;
use crate::out::Out;
use crate::page::Page;
use crate::words::m;

/// On what the builder wrote: the language that it is in.
pub const BUILT: &str = "data-built";
/// On the same: its button was pressed before the module was there.
pub const PRESSED: &str = "data-pressed";

/// Writes the parts of a calculator: notes, problems, the form where there is one, the status, and the answer's place.
pub fn frame(out: &mut dyn Out, lang: &str, built: Option<&View<'_>>) {
    let out = &mut Page::new(out);
    out.open_class("div", "sb");
    out.attr("lang", lang);
    if built.is_some() {
        out.attr(BUILT, lang);
    }
    place(out, "noprint", "shared");
    out.open_class("details", "asked");
    out.attr("open", "");
    empty(out, "summary", "recap");
    empty(out, "p", "past");
    empty(out, "div", "noprint problems");
    out.open_class("div", "formbox");
    if let Some(view) = built {
        view.form(out.sink());
    }
    out.close();
    // Where something is kept stands with the form: folded with it, it is in no reader's way to the card.
    place(out, "noprint", "kept");
    out.close();
    out.open_class("p", "vh said");
    out.attr("role", "status");
    out.close();
    out.open_class("div", "result");
    out.attr("part", "result");
    out.attr("id", "answer");
    out.close_two();
}

fn empty(out: &mut Page<'_>, tag: &'static str, class: &str) {
    out.open_class(tag, class);
    out.close();
}

fn place(out: &mut Page<'_>, class: &str, id: &str) {
    out.open_class("div", class);
    out.attr("id", id);
    out.close();
}

/// In the row of the button: that a press is kept until the module is there.
pub(super) fn soon(out: &mut Page<'_>) {
    out.open_class("p", "used soon");
    out.attr("role", "status");
    out.attr("hidden", "");
    out.text(m::FORM_SOON);
    out.close();
}
