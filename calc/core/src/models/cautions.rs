//! Which cautions speak. One predicate each; the words stand in content.

use crate::models::method::MethodLine;
use crate::models::reach::{Outcome, Reach};
use crate::terms::cite::Cite;
use crate::terms::method::{Level, Method};
use crate::terms::place::Hemisphere;
use crate::terms::small::sort::sort;
use crate::terms::species::{Species, Trait};
use crate::terms::tree::Tree;
use crate::terms::tree::{Sign, TargetKind};
use crate::terms::words::words;
use chrono::{Datelike, NaiveDate};
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
    /// What it says.
    pub text: &'static str,
    /// Who decides.
    pub defers_to: &'static str,
    /// When it speaks.
    pub when: When,
    /// Whether any input decides it; if not it goes into the merged line.
    pub decided: bool,
    /// What it rests on.
    pub cites: &'static [Cite],
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

/// What a caution may look at.
pub struct Case<'a> {
    /// The tree.
    pub tree: &'a Tree,
    /// Its half of the world.
    pub hemisphere: Hemisphere,
    /// State or country, where it was told.
    pub region: Option<&'a str>,
    /// The reach.
    pub reach: &'a Reach,
    /// The nine methods of the largest stem.
    pub methods: &'a [MethodLine],
    /// Method at the head.
    pub headline: Method,
    /// Whether the answer stops before any procedure.
    pub stopped: bool,
    /// The days that dates are judged on: the asked and the advised.
    pub days: &'a [NaiveDate],
    /// Whether oak wilt speaks on one of them.
    pub oak_wilt: bool,
    /// Whether the ash borer is there or taken to be.
    pub ash_borer: bool,
}

/// At most so many in view.
const IN_VIEW: usize = 8;
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
            !caution.decided || speaks(caution.id, case)
        })
        .map(|caution| CautionLine {
            id: caution.id,
            when: caution.when,
            merged: !caution.decided,
            folded: false,
        })
        .collect();
    sort(&mut lines, |a, b| a.when < b.when);
    fold(&mut lines);
    lines
}

/// Adds those that are not there yet, in the order of the page.
pub fn join<'a>(lines: &mut Vec<CautionLine>, more: impl IntoIterator<Item = &'a CautionLine>) {
    for line in more {
        if !lines.iter().any(|known| known.id == line.id) {
            lines.push(line.clone());
        }
    }
    for line in lines.iter_mut() {
        line.folded = false;
    }
    sort(lines, |a, b| a.when < b.when);
    fold(lines);
}

/// Stops, what always stands and the pest rules stay in view; the rest is folded from the end.
fn fold(lines: &mut [CautionLine]) {
    let must = |line: &CautionLine| {
        line.when == When::Stop
            || ALWAYS.contains(&line.id)
            || line.id == "LW5"
            || line.id == "LW11"
            || line.id.starts_with("DZ")
    };
    let mut room = IN_VIEW.saturating_sub(
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

fn speaks(id: &'static str, case: &Case<'_>) -> bool {
    let tree = case.tree;
    let reach = case.reach;
    let has = |mark: Trait| tree.species.has(mark);
    let uk = case
        .region
        .is_some_and(|code| code == "GB" || code.starts_with("GB-"));
    let america = case
        .region
        .is_none_or(|code| code.starts_with("US") || code.starts_with("CA"));
    let open = |method: Method| {
        case.methods
            .iter()
            .any(|line| line.method == method && line.level <= Level::Possible)
    };
    // What is said about the herbicide takes no caution away: where guidance for a ring is published, one may follow.
    let ring = open(Method::BarkRing)
        || open(Method::SawRing)
        || open(Method::Frill)
        || has(Trait::RingGuidance);
    let judged = |wanted: Outcome| reach.targets.iter().any(|t| t.outcome == Some(wanted));
    let h = reach.height_m;
    let people = |within: f64| {
        reach.targets.iter().any(|t| {
            !matches!(
                t.kind,
                TargetKind::Fence | TargetKind::KeepTree | TargetKind::Line
            ) && t.distance_m.is_some_and(|d| d < within)
        })
    };
    let month = |wanted: fn(u32) -> bool| {
        case.days.iter().any(|day| {
            let south = case.hemisphere == Hemisphere::South;
            let month = if south {
                (day.month() + 5) % 12 + 1
            } else {
                day.month()
            };
            wanted(month)
        })
    };
    match id {
        // A small stem is cut or pulled, not left: the two that forbid it are not meant for it.
        "HZ1" => !reach.small && people(h),
        "HZ2" => !reach.small && judged(Outcome::Inside),
        "HZ3" => reach.outcome != Outcome::Line,
        "HZ4" => reach.targets.iter().any(|t| t.downhill),
        "HZ5" => true,
        "HZ6" => ring && !case.stopped,
        "HZ7" => {
            let two = reach.people_out_m;
            let near = reach
                .targets
                .iter()
                .any(|t| t.distance_m.is_some_and(|d| d < two));
            tree.signs.iter().any(|sign| match sign {
                Sign::Cavity | Sign::Cracks | Sign::Conks | Sign::HungLimbs | Sign::LeanToward => {
                    true
                }
                Sign::DeadTop | Sign::Vines | Sign::LeanAway => near,
            })
        }
        "HZ9" => tree.stems.len() > 1,
        "PL1" => reach.outcome == Outcome::Line,
        "PL2" => reach.targets.iter().any(|t| t.kind == TargetKind::Line),
        "PL4" => open(Method::PullOrDig) && !case.stopped,
        "ED1" => matches!(
            case.headline,
            Method::Fell | Method::SawRing | Method::CutStump | Method::RepeatCutting
        ),
        "ED2" => open(Method::BarkRing) || open(Method::Frill),
        "ED4" => true,
        "TX7" => has(Trait::Dust),
        "TX2" | "TX3" | "TX4" | "TX5" | "TX6" | "TH1" | "DZ5" | "DZ6" | "DZ7" => {
            let named = tree.species.cautions.contains(&id);
            named && (id != "DZ6" || america)
        }
        "LW1" => true,
        "LW4" => Method::ALL
            .iter()
            .any(|method| method.needs_herbicide() && open(*method)),
        "LW5" => true,
        "LW6" => {
            tree.condition == crate::terms::tree::Condition::Dead
                || tree.signs.contains(&Sign::Cavity)
                || has(Trait::BatBark)
                || tree.stems.iter().any(|stem| stem.live_share <= 0.0)
        }
        "LW8" | "LW9" => uk,
        "LW10" => {
            uk && tree
                .signs
                .iter()
                .any(|s| matches!(s, Sign::Cavity | Sign::Cracks))
        }
        "LW11" => native_here(tree.species, case.region),
        "ST2" => tree
            .targets
            .iter()
            .any(|target| target.slope.is_some_and(|slope| slope.percent() >= 30.0)),
        "DZ1" => has(Trait::Oak) && case.oak_wilt,
        "DZ2" => has(Trait::Ash) && case.ash_borer,
        "DZ3" => has(Trait::Elm) && month(|m| (4..=9).contains(&m)),
        "DZ4" => {
            has(Trait::Pine)
                && tree.same_genus_near != Some(false)
                && month(|m| (3..=9).contains(&m))
        }
        // Whole-property cautions speak in a plan of many trees.
        _ => false,
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
