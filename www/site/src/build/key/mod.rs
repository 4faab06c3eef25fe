//! The key "Which tree is it?": a first page that asks how the leaves stand and what one leaf is, and behind it a page for
//! each pair of the two that some tree has. A page holds every step as an anchor, so that it needs no script.
//!
//! Marks that are only remembered may narrow what is left; a tree is named where every answer that narrowed down to it was to
//! a mark that was read in a source.

mod end;
mod page;
mod steps;
mod table;

pub(crate) use end::{labelled, starred};
pub(crate) use page::{Key, first, one};

#[cfg(test)]
mod tests;

/// Whether a file is a page behind the first one: it is kept on the device once it was read.
pub(crate) fn is_one(path: &str) -> bool {
    let own = super::languages::of(path).1;
    own.strip_prefix("key/")
        .is_some_and(|rest| rest != "index.html")
}
