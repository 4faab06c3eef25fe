//! An answer in words, HTML, SVG and text. Nothing here decides: it only words what `calc` found.
//!
//! ```text
//! form::form(out, reference, typed, &form::Options)          the form; see [`form`]
//! html::answer(out, reference, question, answer, &Options)   the whole answer region, one `section`
//! html::problems(out, &[Problem], &Options)                  the error summary, links to the fields
//! problem_text(&Problem) -> String                           the same words for the message at the field
//! field_id("stems[0].diameter") -> "f-stems-0-diameter"      id of a field in the form
//! text::answer(reference, question, answer) -> String        the whole answer as plain text
//! status(reference, question, answer) -> String              one sentence, at most 140 characters
//! ```
//!
//! `out` is any [`out::Out`]: [`out::Html`] for a page, a sink of DOM nodes in the browser.
//! The drawings need [`draw::mark::defs`] once in the same root.
//!
//! What the host wires: elements with `data-act="print"` and `data-act="copy"` are buttons; links with
//! `data-act="change"` carry the id of a field in `data-field` and in `href` (`#f-species`). Links into the
//! answer itself are plain fragments of ids that start with [`html::Options::id_prefix`].

/// Puts pieces of text together. The formatter would cost more bytes in the browser.
macro_rules! cat {
    ($($piece:expr),+ $(,)?) => {
        [$(AsRef::<str>::as_ref(&$piece)),+].concat()
    };
}

pub mod draw;
pub mod form;
pub mod html;
pub mod measure;
pub mod out;
pub mod text;
pub mod words;

pub use words::{field_id, problem_text, status};
