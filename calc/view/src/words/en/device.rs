//! What is kept on this device or copied from the page: the draft, the link, timed trees.

use super::phrase;

/// Timed trees: kept, taken off, refused, none, in a file, opened, another file.
pub const TIMED_KEPT: &str = "Kept on this device, for every tree on this page.";
/// Taken off the device.
pub const TIMED_FORGOTTEN: &str = "No longer kept. What stands in the fields stays.";
/// Nothing can be kept or saved.
pub const TIMED_REFUSED: &str = "This page can keep nothing. Write them down.";
/// Nothing to keep.
pub const TIMED_NONE: &str = "Type the sizes of your own trees and their minutes first.";
/// In a file.
pub const TIMED_SAVED: &str = "The timed trees are in a file.";
/// Filled in from a file.
pub const TIMED_OPENED: &str = "The timed trees of that file are filled in.";
/// Another file.
pub const TIMED_OTHER: &str =
    "That is no file of timed trees of this version. Open one that was downloaded here.";
/// A draft is there: lead, words, button.
pub const DRAFT: [&str; 2] = [
    "Draft on this device.",
    " It is sent nowhere, and stays until you forget it.",
];
/// The button that forgets the draft.
pub const FORGET: &str = "Forget the draft";
/// The draft is gone.
pub const FORGOTTEN: [&str; 2] = [
    "Forgotten.",
    " No draft is on this device. What you type on is kept again.",
];
/// Storage is refused.
pub const NO_DRAFT: [&str; 2] = [
    "No draft.",
    " This browser lets the page keep nothing. What you type is gone once the page is closed.",
];
/// A question that came with a link: lead, words, button.
pub const SHARED: [&str; 2] = [
    "Someone else’s tree.",
    " This question came with the link. Your own draft stays as it was.",
];
/// The button that brings the own draft back.
pub const OWN_TREE: &str = "Back to my own tree";
/// Keys of a link that are not known.
pub fn shared_unknown(keys: &[String]) -> String {
    cat!(
        " The link also holds what this version does not know, and leaves out: ",
        phrase::row(keys),
        "."
    )
}

/// A link that was not read.
pub const SHARED_LONG: [&str; 2] = [
    "The link was not read.",
    " It holds more than 400 characters. Ask for the answer as text.",
];
/// It was copied.
pub const LINK_COPIED: &str =
    "Copied. The link holds the question and the region: no position, no temperatures.";
/// The link would be too long.
pub const LINK_LONG: &str =
    "This question makes a link of more than 400 characters. Copy the answer as text instead.";
/// What is copied where the page may not do it by itself.
pub const LINK_LABEL: &str = "The link";
