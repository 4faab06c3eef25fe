//! A tree of a list: a row that was understood, with what it came to and what became of it.

use crate::judged::JudgedTree;
use calc::models::visits::VisitKind;
use calc_data::list::PlanConstants;
use chrono::NaiveDate;
use std::rc::Rc;

/// Where in its patch a tree stands: outlying patches go first, then the edge that bears seed, then inward (Moody and
/// Mack 1988, "Controlling the spread of plant invasions: the importance of nascent foci"). The weights are our own
/// assumption ([`PlanConstants`]).
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Position {
    /// Outlying.
    Outlying,
    /// At the edge.
    Edge,
    /// Inside, or nothing said.
    #[default]
    Inside,
}

impl Position {
    /// Of its word in a list.
    #[must_use]
    pub fn of(word: &str) -> Self {
        match word {
            "outlying" => Self::Outlying,
            "edge" => Self::Edge,
            _ => Self::Inside,
        }
    }

    /// What a tree there counts.
    #[must_use]
    pub fn weight(self, own: &PlanConstants) -> f64 {
        match self {
            Self::Outlying => own.outlying,
            Self::Edge => own.edge,
            Self::Inside => 1.0,
        }
    }
}

/// How far a tree is when the list is read.
#[derive(Clone, Debug)]
pub enum Progress {
    /// Left out, by its row or by a decision on its name.
    Skipped,
    /// Ringed already.
    Done,
    /// Dead, standing or down.
    Dead,
    /// To be judged.
    Open(Rc<JudgedTree>),
}

/// A tree of a list: a row that was understood.
#[derive(Clone, Debug)]
pub struct ListTree {
    /// Its tag.
    pub tree_id: String,
    /// Its row, as the spreadsheet shows it.
    pub row: u64,
    /// Its part of the property; empty where the list has none.
    pub unit: String,
    /// 1, 2 or 4.
    pub priority: u8,
    /// Where in its patch it stands.
    pub position: Position,
    /// The day that somebody chose.
    pub pinned: Option<NaiveDate>,
    /// Latitude, longitude, and metres above the sea where known: as the climate was looked up.
    pub place: Option<(f64, f64, Option<f64>)>,
    /// Latitude and longitude of its own, where its row has them.
    pub point: Option<(f64, f64)>,
    /// They may be off by so many metres, where its row says so.
    pub coord_m: Option<f64>,
    /// Whether its row says how long the walk to it is.
    pub walk_said: bool,
    /// How far it is.
    pub standing: Progress,
    /// Nothing stands within this, metres: it was said of its unit, and nobody looked at this tree.
    pub said_within_m: Option<f64>,
    /// What became of it after its ring, where visits were read.
    pub after: Option<AfterRing>,
}

impl ListTree {
    /// Priority times order.
    #[must_use]
    pub fn value(&self, own: &PlanConstants) -> f64 {
        f64::from(self.priority.max(1)) * self.position.weight(own)
    }

    /// What its answer came to, where it was asked for.
    #[must_use]
    pub fn judged(&self) -> Option<&JudgedTree> {
        match &self.standing {
            Progress::Open(judged) => Some(judged),
            Progress::Skipped | Progress::Done | Progress::Dead => None,
        }
    }
}

/// A visit that is still to be made.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OpenVisit {
    /// What for.
    pub kind: VisitKind,
    /// First day.
    pub from: NaiveDate,
    /// Last day.
    pub to: NaiveDate,
    /// Mean person-minutes of one person at a time, with the walk.
    pub minutes: f64,
    /// Those of the walk.
    pub walk: f64,
}

/// What became of a tree after its ring.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct AfterRing {
    /// The day of the ring that counts: the last one.
    pub ringed_on: Option<NaiveDate>,
    /// The day on which it was first found dead.
    pub dead_on: Option<NaiveDate>,
    /// The day on which it was first found down.
    pub down_on: Option<NaiveDate>,
    /// The last day on which somebody looked at it.
    pub looked_on: Option<NaiveDate>,
    /// The day by which somebody looks again; none once it is down.
    pub next_look: Option<NaiveDate>,
    /// Visits that cost minutes and are still to be made, in order.
    pub open: Vec<OpenVisit>,
}
