//! All wording, one module a language, one file a part of the answer. Every enum of the core is worded by one
//! `match` without a catch-all, so a missing wording does not compile.

mod en;

pub use en::{
    calculators, cautions, confidence, device, effort, fields, formulas, group, habitat, method,
    missing, outlook, phrase, problem, reach, region, ring, say, season, spring, stop, verdict,
    visits, working,
};

pub(crate) use en::say::Say;
