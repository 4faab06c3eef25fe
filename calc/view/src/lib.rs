//! An answer in words, HTML, SVG and text. Nothing here decides: it only words what `calc` found.
//!
//! ```text
//! form::form(out, reference, typed, &FormOptions)                 the form; see [`form`]
//! answer::answer(out, reference, question, answer, &HostOptions)  the whole answer region, one `section`
//! answer::problems(out, &[Problem], &HostOptions)                 the error summary, links to the fields
//! problem_text(&Problem) -> String                                the same words for the message at the field
//! field_id("stems[0].diameter") -> "f-stems-0-diameter"           id of a field in the form
//! text::answer(reference, question, answer, group) -> String      the whole answer as plain text
//! share::write(&typed, south), share::read(fragment)              the question as the fragment of a link
//! status(kind, reference, question, answer) -> String             one sentence, at most 140 characters
//! ```
//!
//! `out` is any [`out::Out`]: [`out::Html`] for a page, a sink of DOM nodes in the browser.
//! The drawings need [`draw::mark::defs`] once in the same root.
//!
//! What the host wires: elements with `data-act="print"`, `"copy"` and `"calendar"` are buttons; links with
//! `data-act="change"` carry the id of a field in `data-field` and in `href` (`#f-species`). Links into the
//! answer itself are plain fragments of ids that start with [`answer::HostOptions::id_prefix`].

/// Puts pieces of text together: literals become one template, the rest fills its gaps. What is given by value is
/// used up, so that no caller drops it. The formatter, or an entry for each piece, would cost more bytes in the browser.
macro_rules! cat {
    (@ ($($text:literal)*) ($gap:expr,)) => {
        crate::fill::one(concat!($($text),*), crate::fill::Gap::piece($gap))
    };
    (@ ($($text:literal)*) ($first:expr, $second:expr,)) => {
        crate::fill::two(
            concat!($($text),*),
            crate::fill::Gap::piece($first),
            crate::fill::Gap::piece($second),
        )
    };
    (@ ($($text:literal)*) ($($gap:expr,)*)) => {{
        let mut filled = crate::fill::Filled::new(concat!($($text),*));
        $(crate::fill::Piece::fill(crate::fill::Gap::piece($gap), &mut filled);)*
        filled.done()
    }};
    (@ ($($text:literal)*) ($($gap:expr,)*) $piece:literal) => {
        cat!(@ ($($text)* $piece) ($($gap,)*))
    };
    (@ ($($text:literal)*) ($($gap:expr,)*) $piece:literal, $($rest:tt)*) => {
        cat!(@ ($($text)* $piece) ($($gap,)*) $($rest)*)
    };
    (@ ($($text:literal)*) ($($gap:expr,)*) $piece:expr) => {
        cat!(@ ($($text)* "\u{1}") ($($gap,)* $piece,))
    };
    (@ ($($text:literal)*) ($($gap:expr,)*) $piece:expr, $($rest:tt)*) => {
        cat!(@ ($($text)* "\u{1}") ($($gap,)* $piece,) $($rest)*)
    };
    ($($piece:tt)+) => { cat!(@ () () $($piece)+) };
}

pub mod answer;
mod control;
pub mod draw;
mod fill;
pub mod form;

pub mod ics;
pub mod kind;
#[cfg(feature = "list")]
pub mod list;
pub mod measure;
pub mod out;
pub mod page;
#[cfg(feature = "list")]
pub mod plan;
#[cfg(feature = "list")]
pub mod season_calendar;
pub mod share;
pub mod text;
pub mod words;

pub use control::field_id;
pub use words::group::settings_told;
pub use words::problem::{DAY_OF_FORM, PLACE_OF_FORM, problem_text};
pub use words::verdict::status;
