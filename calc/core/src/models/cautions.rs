//! Which cautions speak, in which order, and which of them stand in view. What makes each speak stands in
//! `trigger.rs`, the words in content.

use crate::models::trigger::{Case, Input, Trigger};
use crate::terms::cite::Cite;
use crate::terms::constants::constants;
use crate::terms::small::sort::sort;
use crate::terms::species::Species;
use crate::terms::words::words;
use serde::Serialize;

words! {
    /// When a caution speaks.
    pub enum When {
        /// It stops the work.
        Stop,
        /// Before the start.
        Before,
        /// While working.
        Work,
        /// Afterwards.
        After,
        /// Law and permission.
        Law,
    }
}

/// A caution as written in content.
#[derive(Clone, Copy, Debug)]
pub struct Caution {
    /// Its id.
    pub id: &'static str,
    /// What makes it speak.
    pub trigger: Trigger,
    /// What it says.
    pub text: &'static str,
    /// Who decides.
    pub defers_to: &'static str,
    /// When it speaks.
    pub when: When,
    /// What it rests on.
    pub cites: &'static [Cite],
}

impl Caution {
    /// Whether it goes into the merged line "check these too", since nothing that is asked decides it.
    #[must_use]
    pub fn is_merged(&self) -> bool {
        self.trigger.input() == Input::Unasked
    }
}

constants! {
    /// Constants of the cautions; content/rules/constants.csv says where each comes from.
    pub struct CautionConstants {
        /// At most so many in view.
        pub in_view: f64,
        /// The slope from which ground is steep to work on, percent.
        pub steep: f64,
    }
}

/// A caution that speaks.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct CautionLine {
    /// Its id.
    pub id: &'static str,
    /// When it speaks.
    pub when: When,
    /// Whether it goes into the merged line "check these too".
    pub merged: bool,
    /// Whether it stands at once, or folded behind the first eight.
    pub folded: bool,
}

/// Those that always stand with a ring.
const ALWAYS: [&str; 2] = ["HZ3", "HZ5"];

/// The cautions of an answer, in the order stop, before, work, after, law.
#[must_use]
pub fn judge(cautions: &'static [Caution], case: &Case<'_>) -> Vec<CautionLine> {
    let mut lines: Vec<CautionLine> = cautions
        .iter()
        .filter(|caution| {
            let kept = ["HZ", "PL", "LW"]
                .iter()
                .any(|family| caution.id.starts_with(family));
            if case.stopped && !kept {
                return false;
            }
            caution.trigger.speaks(case)
        })
        .map(|caution| CautionLine {
            id: caution.id,
            when: caution.when,
            merged: caution.is_merged(),
            folded: false,
        })
        .collect();
    sort(&mut lines, |a, b| a.when < b.when);
    fold(&mut lines, case.constants);
    lines
}

/// Adds those that are not there yet, in the order of the page.
pub fn join<'a>(
    lines: &mut Vec<CautionLine>,
    constants: &CautionConstants,
    more: impl IntoIterator<Item = &'a CautionLine>,
) {
    for line in more {
        if !lines.iter().any(|known| known.id == line.id) {
            lines.push(line.clone());
        }
    }
    for line in lines.iter_mut() {
        line.folded = false;
    }
    sort(lines, |a, b| a.when < b.when);
    fold(lines, constants);
}

/// Stops, what always stands and the pest rules stay in view; the rest is folded from the end.
fn fold(lines: &mut [CautionLine], constants: &CautionConstants) {
    let must = |line: &CautionLine| {
        line.when == When::Stop
            || ALWAYS.contains(&line.id)
            || line.id == "LW5"
            || line.id == "LW11"
            || line.id.starts_with("DZ")
    };
    let mut room = (constants.in_view as usize).saturating_sub(
        lines
            .iter()
            .filter(|line| !line.merged && must(line))
            .count(),
    );
    for line in lines.iter_mut().filter(|line| !line.merged) {
        if must(line) {
            continue;
        }
        if room > 0 {
            room -= 1;
        } else {
            line.folded = true;
        }
    }
}

/// Whether the species is native in the asker's state, so that killing it may be a mistake.
#[must_use]
pub fn native_here(species: &Species, region: Option<&str>) -> bool {
    region.is_some_and(|code| {
        code.split_once('-')
            .is_some_and(|(_, part)| species.warn_states.contains(&part))
    })
}
