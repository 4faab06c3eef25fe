//! What is asked of a list before its rows are read: a question a column, with what was seen and what is proposed.

use crate::decisions::{Codes, ColumnDecision, Decisions, PLANTS};
use crate::header::LengthUnit;
use crate::problem::RowFault;
use crate::row::{Is, Row};
use calc::terms::small::order::sort_by;
use std::collections::BTreeMap;

/// A question about a column or the whole file.
#[derive(Clone, Debug, PartialEq)]
pub struct Ask {
    /// The column, from 0; none for the file.
    pub column: Option<usize>,
    /// Its header.
    pub header: String,
    /// How many rows it bears on, of those that were looked at.
    pub rows: usize,
    /// What is asked.
    pub what: ListQuestion,
}

/// What is asked.
#[derive(Clone, Debug, PartialEq)]
pub enum ListQuestion {
    /// A diameter that looks like a girth: the median in its unit, and its unit.
    Girth {
        /// The median.
        median: f64,
        /// The unit that it would have.
        unit: LengthUnit,
        /// The unit stands in the header or was proven.
        said: bool,
    },
    /// Sizes that look like metres.
    Metres {
        /// The median.
        median: f64,
    },
    /// Classes instead of sizes: the values, with their rows.
    Classes {
        /// Which.
        values: Vec<(String, usize)>,
    },
    /// Codes that are not those of the plant list, or not all.
    Codes {
        /// Which, most frequent first.
        codes: Vec<(String, usize)>,
        /// One that is no symbol that we know.
        stranger: String,
    },
    /// A value that may stand for nothing.
    Missing {
        /// The value.
        value: String,
        /// In how many rows.
        rows: usize,
    },
    /// Numbered columns: which is the newest, or are they stems?
    Numbered {
        /// Their headers.
        headers: Vec<String>,
    },
    /// Tags repeat: these columns together are unique, or nearly.
    Key {
        /// Their headers.
        columns: Vec<String>,
        /// How many rows repeat a tag.
        repeats: usize,
    },
    /// No column has a species.
    NoSpecies,
    /// No column has a size.
    NoSize,
    /// There is no header: the first row, to be told.
    NoHeader {
        /// The cells of the first row.
        first: Vec<String>,
    },
    /// Day or month first.
    DayOrder {
        /// A cell that reads both ways.
        example: String,
    },
    /// Latitude or longitude first.
    PointOrder {
        /// A cell.
        example: String,
    },
    /// No column is known to tell what a tree could hit, and this one has words for it.
    Target {
        /// Which, most frequent first.
        values: Vec<(String, usize)>,
    },
    /// The header was cut off, and its unit may have been.
    UnitLost {
        /// What a neighbour has.
        proposal: Option<LengthUnit>,
    },
}

impl ListQuestion {
    /// Its name.
    #[must_use]
    pub fn name(&self) -> &'static str {
        match self {
            Self::Girth { .. } => "girth",
            Self::Metres { .. } => "metres",
            Self::Classes { .. } => "classes",
            Self::Codes { .. } => "codes",
            Self::Missing { .. } => "missing",
            Self::Numbered { .. } => "numbered",
            Self::Key { .. } => "key",
            Self::NoSpecies => "no_species",
            Self::NoSize => "no_size",
            Self::NoHeader { .. } => "no_header",
            Self::DayOrder { .. } => "day_order",
            Self::PointOrder { .. } => "point_order",
            Self::Target { .. } => "target",
            Self::UnitLost { .. } => "unit_lost",
        }
    }
}

/// A name that nobody could settle but the list's owner: one question for all its rows.
#[derive(Clone, Debug, PartialEq)]
pub struct NameAsk {
    /// The name as it stands in its rows; a decision is taken under it.
    pub typed: String,
    /// Its rows.
    pub rows: Vec<u64>,
    /// Why it is open.
    pub code: RowFault,
    /// What is proposed: an entry for a tree without a name of its own; none where only the owner knows.
    pub proposal: Option<String>,
}

/// The names that are open, those with most rows first. A decision for each goes into [`Decisions::names`]: a species, one
/// of the entries for a tree without a name, or `leave out`.
#[must_use]
pub fn open_names<'a>(rows: impl IntoIterator<Item = &'a Row>) -> Vec<NameAsk> {
    let mut asks: BTreeMap<&str, NameAsk> = BTreeMap::new();
    let to_fix = rows.into_iter().filter(|row| matches!(row.is, Is::ToFix));
    for row in to_fix {
        let name = row.tag.species.as_str();
        let open = row
            .problems
            .iter()
            .find(|problem| is_of_name(&problem.code));
        let Some(problem) = open.filter(|_| !name.is_empty()) else {
            continue;
        };
        let ask = asks.entry(name).or_insert_with(|| NameAsk {
            typed: name.to_owned(),
            rows: Vec::new(),
            code: problem.code.clone(),
            proposal: match &problem.code {
                RowFault::NotListed { choose, .. } => Some(choose.clone()),
                _ => None,
            },
        });
        ask.rows.push(row.row);
    }
    let mut all: Vec<NameAsk> = asks.into_values().collect();
    sort_by(&mut all, |a, b| {
        b.rows.len().cmp(&a.rows.len()).then(a.typed.cmp(&b.typed))
    });
    all
}

fn is_of_name(code: &RowFault) -> bool {
    matches!(
        code,
        RowFault::NameUnknown
            | RowFault::NotListed { .. }
            | RowFault::GenusOnly { .. }
            | RowFault::SeveralTrees { .. }
            | RowFault::TwoTrees
            | RowFault::Shortened
            | RowFault::CodeUnknown
            | RowFault::CodeNotListed
            | RowFault::CodeUndecided
            | RowFault::DecisionUnknown { .. }
    )
}

/// The decisions that were made, with what is asked filled in: a proposal where what was seen gives one, else empty.
#[must_use]
pub fn filled_in(decided: &Decisions, asks: &[Ask]) -> Decisions {
    let mut filled = decided.clone();
    // Its header is for the owner to type: the name that stands there till then names no column, and is told so.
    let told = |is: &str, unit: Option<String>| ColumnDecision {
        is: Some(is.into()),
        unit,
        ..ColumnDecision::default()
    };
    for ask in asks {
        let mut column = |decision: ColumnDecision| {
            let header = match (&ask.what, &decision.is) {
                (ListQuestion::NoSpecies | ListQuestion::NoSize, Some(is)) => ["? ", is].concat(),
                _ => ask.header.clone(),
            };
            filled.columns.insert(header, decision);
        };
        let unit = |unit: LengthUnit| Some(unit.sign().to_owned());
        match &ask.what {
            ListQuestion::Girth { unit: said, .. } => column(ColumnDecision {
                is: Some("girth".into()),
                unit: unit(*said),
                ..ColumnDecision::default()
            }),
            ListQuestion::Metres { .. } => column(ColumnDecision {
                unit: unit(LengthUnit::Metre),
                ..ColumnDecision::default()
            }),
            ListQuestion::Target { .. } => column(ColumnDecision {
                is: Some("target".into()),
                ..ColumnDecision::default()
            }),
            ListQuestion::UnitLost { proposal } => column(ColumnDecision {
                unit: proposal.and_then(unit).or_else(|| Some(String::new())),
                ..ColumnDecision::default()
            }),
            ListQuestion::Classes { values } => column(ColumnDecision {
                classes: Some(
                    values
                        .iter()
                        .map(|(value, _)| (value.clone(), None))
                        .collect(),
                ),
                ..ColumnDecision::default()
            }),
            ListQuestion::Codes { codes, stranger } => column(ColumnDecision {
                codes: Some(if stranger.is_empty() {
                    Codes::Known(PLANTS.into())
                } else {
                    let own: BTreeMap<_, _> =
                        codes.iter().map(|(code, _)| (code.clone(), None)).collect();
                    Codes::Own(own)
                }),
                ..ColumnDecision::default()
            }),
            ListQuestion::Numbered { headers } => {
                for (at, header) in headers.iter().enumerate() {
                    let order = Some((headers.len() - at).to_string());
                    let decision = ColumnDecision {
                        order,
                        ..ColumnDecision::default()
                    };
                    filled.columns.insert(header.clone(), decision);
                }
            }
            ListQuestion::DayOrder { .. } => column(ColumnDecision {
                order: Some(String::new()),
                ..ColumnDecision::default()
            }),
            ListQuestion::PointOrder { .. } => column(ColumnDecision {
                order: Some(String::new()),
                ..ColumnDecision::default()
            }),
            ListQuestion::Missing { value, .. } => filled.missing.push(value.clone()),
            ListQuestion::Key { columns, .. } => filled.key.clone_from(columns),
            ListQuestion::NoSpecies => {
                column(told("species", None));
                filled.every = Some(String::new());
            }
            ListQuestion::NoHeader { first } => {
                filled.header = Some(vec![String::new(); first.len()])
            }
            ListQuestion::NoSize => column(told("dbh", unit(LengthUnit::Inch))),
        }
    }
    filled
}
