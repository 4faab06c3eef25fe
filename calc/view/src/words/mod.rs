//! What picks the messages of `content/words` and fills their gaps: a file a part of the answer. Every enum of the core
//! is worded by one `match` without a catch-all, so a missing wording does not compile.

mod en;
pub mod gap;
pub mod message;
pub mod prose;
mod text_key;

#[cfg(feature = "list")]
pub use en::list;
pub use en::{
    another, calculators, card, confidence, device, effort, fields, formulas, group, habitat,
    key_lines, method, missing, outlook, phrase, problem, reach, recap, region, ring, say, season,
    spring, stop, verdict, visits, working,
};
pub use gap::scientific_of;
pub(crate) use message::Lines;
pub use message::{Word, m, within};

pub(crate) use en::say::Say;
