//! All wording, one module a language. Every enum of the core is worded by one `match` without a catch-all,
//! so a missing wording does not compile.

mod en;

pub use en::*;
