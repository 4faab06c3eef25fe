//! What is kept on this device or copied from the page: the draft, the link, timed trees.

use super::phrase;
use crate::words::{Word, m};

/// A draft may be kept: lead, words, button.
pub const OFFER: [Word; 2] = [m::DEVICE_OFFER_LEAD, m::DEVICE_OFFER_MORE];
/// A draft is there: lead, words, button.
pub const DRAFT: [Word; 2] = [m::DEVICE_DRAFT_LEAD, m::DEVICE_DRAFT_MORE];
/// The draft is gone.
pub const FORGOTTEN: [Word; 2] = [m::DEVICE_FORGOTTEN_LEAD, m::DEVICE_FORGOTTEN_MORE];
/// Storage is refused.
pub const NO_DRAFT: [Word; 2] = [m::DEVICE_NO_DRAFT_LEAD, m::DEVICE_NO_DRAFT_MORE];
/// A question that came with a link: lead, words, button.
pub const SHARED: [Word; 2] = [m::DEVICE_SHARED_LEAD, m::DEVICE_SHARED_MORE];
/// Keys of a link that are not known.
pub fn shared_unknown(keys: &[String]) -> String {
    m::device_shared_unknown(phrase::row(keys))
}

/// A link that was not read.
pub const SHARED_LONG: [Word; 2] = [m::DEVICE_SHARED_LONG_LEAD, m::DEVICE_SHARED_LONG_MORE];
