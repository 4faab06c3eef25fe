//! Which cautions speak, in which order, and which of them stand in view. What makes each speak stands in
//! `trigger.rs`, the words in content.

use crate::models::native::Native;
use crate::models::trigger::{CautionCase, CautionConstants, CautionInput, Trigger};
use crate::terms::cite::{Cite, Grade};
use crate::terms::method::{Level, Method};
use crate::terms::region::{country, lies_in_any};
use crate::terms::regional::Regional;
use crate::terms::small::sort::sort;
use crate::terms::source;
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
    /// When it speaks, in words: with the sentence it stands alone.
    pub subject: &'static str,
    /// What it says. `{people_out}` is filled with the answer's own distance.
    pub sentence: &'static str,
    /// Who decides, in general words; empty where nobody does.
    pub who: &'static str,
    /// The methods that it speaks of; empty for all.
    pub methods: &'static [Method],
    /// Countries in which it is not told.
    pub not_in: &'static [&'static str],
    /// When it speaks.
    pub when: When,
    /// What it rests on.
    pub cites: &'static [Cite],
}

impl Caution {
    /// Whether it goes into the merged line "check these too", since nothing that is asked decides it.
    #[must_use]
    pub fn is_merged(&self) -> bool {
        self.trigger.input() == CautionInput::Unasked
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
    /// Who decides where the tree stands; in general words where that is not known. Empty where nobody does.
    pub who: &'static str,
    /// What the law says there, in plain words; empty where nobody of us read it, or it is not known where.
    pub law: &'static str,
    /// What it rests on. Under law and permission outside the United States that is the country's own law alone.
    pub because: Vec<Cite>,
}

/// Those that always stand with a ring.
const ALWAYS: [&str; 2] = ["HZ3", "HZ5"];

/// The cautions of an answer, in the order stop, before, work, after, law. `regional` is none until its file is here:
/// who decides is told in general words then.
#[must_use]
pub fn judge(
    cautions: &'static [Caution],
    regional: Option<&'static Regional>,
    case: &CautionCase<'_>,
) -> Vec<CautionLine> {
    let mut lines: Vec<CautionLine> = cautions
        .iter()
        .filter(|caution| {
            let kept = ["HZ", "PL", "LW"]
                .iter()
                .any(|family| caution.id.starts_with(family));
            if case.stopped && !kept {
                return false;
            }
            caution.trigger.speaks(case) && is_told(caution, case)
        })
        .map(|caution| line(caution, regional, case))
        .collect();
    sort(&mut lines, |a, b| a.when < b.when);
    fold(&mut lines, case.constants);
    lines
}

/// Whether a caution is told in the tree's country, and for one of the methods that stand: what is said of the work, or
/// of the time after, is said only of methods that are not ruled out.
fn is_told(caution: &Caution, case: &CautionCase<'_>) -> bool {
    let region = case.region;
    if region.is_some_and(|region| lies_in_any(region, caution.not_in)) {
        return false;
    }
    let stands = |method| {
        let mut lines = case.methods.iter();
        lines.any(|line| line.method == method && line.level < Level::RuledOut)
    };
    !matches!(caution.when, When::Work | When::After)
        || caution.methods.is_empty()
        || caution.methods.iter().any(|method| stands(*method))
}

/// A caution as it is told where the tree stands: who decides there, and what the law says.
fn line(
    caution: &'static Caution,
    regional: Option<&'static Regional>,
    case: &CautionCase<'_>,
) -> CautionLine {
    let mut line = CautionLine {
        id: caution.id,
        when: caution.when,
        merged: caution.is_merged() && !case.named(caution.trigger),
        folded: false,
        who: caution.who,
        law: "",
        because: read_somewhere(caution.cites),
    };
    if caution.trigger == Trigger::Lw11 {
        line.merged = !matches!(case.native, Native::Here | Native::InParts | Native::Ask);
    }
    let own = match caution.trigger {
        Trigger::Dz1 => case.oak_authority,
        Trigger::Dz2 => case.ash_authority,
        _ => "",
    };
    if !own.is_empty() {
        line.who = own;
    }
    let Some(region) = case.region else {
        return line;
    };
    if caution.when == When::Law && country(region) != "US" {
        line.because = vec![Cite::practice("who decides")];
    }
    if let Some(authority) = regional.and_then(|all| all.authority(caution.id, region)) {
        if own.is_empty() && !authority.who.is_empty() {
            line.who = authority.who;
        }
        line.law = authority.law;
        if !authority.law.is_empty() {
            line.because.retain(|cite| cite.source != source::PRACTICE);
            line.because.insert(0, authority.cite);
        }
    }
    line
}

/// What was read of a caution; where everything is remembered it is a fact of the trade.
fn read_somewhere(cites: &[Cite]) -> Vec<Cite> {
    let remembered = |cite: &&Cite| cite.grade == Grade::Memory;
    if cites.iter().all(|cite| remembered(&cite)) {
        return vec![Cite::practice("usual caution")];
    }
    cites
        .iter()
        .filter(|cite| !remembered(cite))
        .copied()
        .collect()
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
