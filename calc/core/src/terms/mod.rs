//! Plain data and its words: what every layer above may name. No rule stands here.

pub mod cite;
pub mod constants;
pub mod day;
pub mod fingerprint;
pub mod leaf;
pub mod lengths;
pub mod method;
pub mod months;
pub mod number;
pub(crate) mod object;
pub mod place;
pub mod quantity;
pub mod region;
pub mod regional;
pub mod small;
pub mod source;
pub mod species;
pub mod tighten;
pub mod tree;
pub(crate) mod words;
