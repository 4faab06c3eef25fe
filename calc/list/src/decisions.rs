//! The file of decisions: what a person said of the columns, the names and the words of a list. It is read, and printed
//! filled in where something is asked.

use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// Everything that was decided.
#[derive(Clone, Debug, Default, PartialEq, Deserialize, Serialize)]
#[serde(default)]
pub struct Decisions {
    /// The header: then the first line of the file is a row already, and nothing is asked.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub header: Option<Vec<String>>,
    /// What stands between the cells of a piece: a comma unless said.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub delimiter: Option<String>,
    /// Values that stand for nothing.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub missing: Vec<String>,
    /// The columns that together make a tag.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub key: Vec<String>,
    /// What a name is taken as: a species, one of the entries for a species without a name, or `leave out`.
    #[serde(skip_serializing_if = "BTreeMap::is_empty")]
    pub names: BTreeMap<String, String>,
    /// Words that look as if no tree stood there, and one does.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub trees: Vec<String>,
    /// The species of every row, where the list has no column for it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub every: Option<String>,
    /// Columns, by header or by canonical name.
    #[serde(flatten)]
    pub columns: BTreeMap<String, ColumnDecision>,
}

/// What was decided of one column.
#[derive(Clone, Debug, Default, PartialEq, Deserialize, Serialize)]
#[serde(default, deny_unknown_fields)]
pub struct ColumnDecision {
    /// The canonical name of what it holds; `keep` leaves it alone.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub is: Option<String>,
    /// `in`, `ft`, `cm`, `mm`, `m`.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub unit: Option<String>,
    /// What its codes mean.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub codes: Option<Codes>,
    /// The size to use for each class.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub classes: Option<BTreeMap<String, Option<String>>>,
    /// `day first` or `month first`; `latitude first` or `longitude first`; `stems`, or the place of a numbered column,
    /// 1 for the newest.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub order: Option<String>,
}

/// What codes of a species mean.
#[derive(Clone, Debug, PartialEq, Deserialize, Serialize)]
#[serde(untagged)]
pub enum Codes {
    /// `plants`: the symbols of the plant list that our tables use.
    Known(String),
    /// A table of the list's own: a code and its species, or nothing.
    Own(BTreeMap<String, Option<String>>),
}

/// The word for a name that is left out.
pub const LEAVE_OUT: &str = "leave out";
/// The word for the symbols of the plant list.
pub const PLANTS: &str = "plants";

impl Decisions {
    /// Whether pieces of a file are read: nothing looks across rows.
    #[must_use]
    pub fn of_a_piece(&self) -> bool {
        self.told_header().is_some()
    }

    /// The header that was told; a filled-in file that nobody edited tells none.
    #[must_use]
    pub fn told_header(&self) -> Option<&[String]> {
        let told = self.header.as_deref()?;
        let any = told.iter().any(|name| !name.trim().is_empty());
        any.then_some(told)
    }
}
