//! What of an open list is kept beside its bytes: what was decided and typed since, who works when, and the days of the plan.
//! The page keeps it in the memory of its tab, and on the device where somebody asked for that.

use crate::session::found::FoundTable;
use calc_list::Decisions;
use calc_list::reader::CellEdits;
use calc_view::plan::screen::hit::KeptReplies;
use calc_view::plan::screen::land::KeptLand;
use calc_view::plan::screen::season::SeasonForm;
use serde::{Deserialize, Serialize};
use serde_json::Value;

/// A list as it was left.
#[derive(Default, Deserialize, Serialize)]
#[serde(default)]
pub(crate) struct Draft {
    /// What was decided of columns and names.
    pub(crate) decisions: Decisions,
    /// Cells that were typed anew: row, column, text.
    edits: Vec<(u64, usize, String)>,
    /// Who works when.
    #[serde(with = "Crew")]
    pub(crate) crew: SeasonForm,
    /// Days that somebody chose stand in the column of days: nothing is kept of them here.
    pins: [u8; 0],
    /// What was found at visits: a table of it, or none.
    pub(crate) found: Vec<KeptFound>,
    /// Land of parts.
    pub(crate) land: KeptLand,
    /// The distance between two trees that are planted.
    pub(crate) spacing: String,
    /// What was said once for many trees.
    pub(crate) replied: KeptReplies,
    /// Whether a plan was made.
    pub(crate) planned: bool,
    /// The days of the plan, as plan.json has them.
    pub(crate) days: Option<Value>,
    /// The row that was mended last.
    pub(crate) last_row: Option<u64>,
}

/// A table of visits as it was opened.
#[derive(Deserialize, Serialize)]
pub(crate) struct KeptFound {
    name: String,
    /// Its text; a letter a byte where `bytes` says so, as in a file that is not UTF-8.
    text: String,
    bytes: bool,
    own_rate: bool,
}

impl From<&FoundTable> for KeptFound {
    fn from(found: &FoundTable) -> Self {
        let text = std::str::from_utf8(&found.bytes);
        Self {
            name: found.name.clone(),
            bytes: text.is_err(),
            text: match text {
                Ok(text) => text.to_owned(),
                Err(_) => found.bytes.iter().copied().map(char::from).collect(),
            },
            own_rate: found.own_rate,
        }
    }
}

impl From<KeptFound> for FoundTable {
    fn from(kept: KeptFound) -> Self {
        Self {
            name: kept.name,
            bytes: match kept.bytes {
                true => kept.text.chars().map(|letter| letter as u8).collect(),
                false => kept.text.into_bytes(),
            },
            own_rate: kept.own_rate,
        }
    }
}

/// The names that the form has in a draft; what is not there is as in a new form. serde asks for the default here too.
#[derive(Default, Deserialize, Serialize)]
#[serde(remote = "SeasonForm", default)]
struct Crew {
    people: String,
    hours: String,
    days: Option<Vec<String>>,
    more_days: String,
    closed: String,
    place: String,
    region: String,
    keep_days: bool,
}

impl Draft {
    pub(crate) fn of(
        decisions: &Decisions,
        edits: &CellEdits,
        filled: &SeasonForm,
        replied: KeptReplies,
        last_row: Option<u64>,
    ) -> Self {
        let edits = edits.iter();
        Self {
            decisions: decisions.clone(),
            edits: edits
                .map(|((row, column), text)| (*row, *column, text.clone()))
                .collect(),
            crew: filled.clone(),
            replied,
            last_row,
            ..Self::default()
        }
    }

    pub(crate) fn edits(&self) -> CellEdits {
        let edits = self.edits.iter();
        edits
            .map(|(row, column, text)| ((*row, *column), text.clone()))
            .collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_was_kept_comes_back() {
        let edits = CellEdits::from([((8, 2), "14 1/2".to_owned()), ((9, 0), String::new())]);
        let filled = SeasonForm {
            people: "6".into(),
            days: Some(vec!["2027-05-08".into()]),
            closed: "2027-05-15".into(),
            ..SeasonForm::default()
        };
        let draft = Draft::of(
            &Decisions::default(),
            &edits,
            &filled,
            KeptReplies::default(),
            Some(9),
        );
        let text = serde_json::to_string(&draft).expect("JSON");
        let back: Draft = serde_json::from_str(&text).expect("a draft");
        assert_eq!(back.edits(), edits);
        let form = back.crew;
        assert_eq!(
            (&form.people, &form.days, &form.closed),
            (&filled.people, &filled.days, &filled.closed)
        );
        // What an earlier page did not keep is as it is at the start; it kept nothing of what was found.
        for earlier in ["{}", r#"{"found": [], "pins": []}"#] {
            assert!(serde_json::from_str::<Draft>(earlier).is_ok(), "{earlier}");
        }
    }

    #[test]
    fn a_table_of_visits_comes_back_to_the_byte() {
        for bytes in [
            "tree_id,found\nÁ-1,dead\n".as_bytes(),
            b"tree_id;found\n\xc1-1;dead\n",
        ] {
            let table = FoundTable {
                name: "found.csv".into(),
                bytes: bytes.to_vec(),
                own_rate: true,
            };
            let kept = serde_json::to_string(&KeptFound::from(&table)).expect("JSON");
            let back: KeptFound = serde_json::from_str(&kept).expect("what was kept");
            let back = FoundTable::from(back);
            assert_eq!((back.bytes, back.own_rate), (table.bytes, true));
        }
    }
}
