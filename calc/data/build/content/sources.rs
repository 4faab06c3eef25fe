//! The sources that may be cited, and the best grade that each allows.

use super::cells::{List, cell, keep};
use crate::table::{At, Defect, Table};
use calc::terms::cite::{Cite, Grade};
use calc::terms::source::{self, CITED_IN_CODE, SourceId, SourceLine};
use serde::Deserialize;
use std::cell::RefCell;
use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;

#[derive(Deserialize)]
struct SourceRow {
    id: String,
    label: String,
    same_as: String,
    #[serde(deserialize_with = "cell")]
    grade_ceiling: Grade,
}

/// A label has at most so many letters.
const LABEL: usize = 40;

/// The sources that may be cited.
pub(crate) struct Sources {
    lines: BTreeMap<String, (String, Grade)>,
    /// Ids of one paper that stands under another id too: that other one is used.
    same_as: BTreeMap<String, String>,
    /// Those that are cited, each in the place of its number.
    cited: RefCell<Vec<SourceId>>,
}

impl Sources {
    pub(crate) fn read(root: &Path) -> Result<Self, Defect> {
        let table = Table::<SourceRow>::read(root, "content/evidence/sources.csv")?;
        let mut lines = BTreeMap::new();
        let mut labels = BTreeSet::new();
        let mut same_as = BTreeMap::new();
        let rows = table.by(|row| &row.id)?;
        for (id, row) in &rows {
            if row.label.is_empty() || row.label.chars().count() > LABEL {
                let what = format!("label: a source needs one of at most {LABEL} letters");
                return Err(row.at.problem(what));
            }
            if row.same_as.is_empty() && !labels.insert(&row.label) {
                let what = format!("label: another source has \"{}\" too", row.label);
                return Err(row.at.problem(what));
            }
            lines.insert((*id).to_owned(), (row.label.clone(), row.grade_ceiling));
            match row.same_as.as_str() {
                "" => {}
                other
                    if rows
                        .get(other)
                        .is_some_and(|other| other.same_as.is_empty()) =>
                {
                    same_as.insert((*id).to_owned(), other.to_owned());
                }
                other => {
                    let what = format!("same_as: {other} is no id that stands for itself");
                    return Err(row.at.problem(what));
                }
            }
        }
        for (id, label, grade) in [
            (source::OWN, "our own assumption", Grade::Assumption),
            (
                source::PRACTICE,
                "common practice, no source",
                Grade::Practice,
            ),
            (source::YOU, "what you told us", Grade::Measured),
            (source::GROUP, "", Grade::Practice),
        ] {
            lines.insert(id.text().to_owned(), (label.to_owned(), grade));
        }
        for (id, grade) in CITED_IN_CODE {
            let id = id.text();
            let Some((_, ceiling)) = lines.get(id) else {
                return Err(table.problem(format!("the code cites {id}, which has no line")));
            };
            if ceiling > grade {
                let what = format!("grade_ceiling: the code cites {id} as {grade:?}");
                return Err(rows[id].at.problem(what));
            }
        }
        Ok(Self {
            lines,
            same_as,
            cited: RefCell::new(CITED_IN_CODE.iter().map(|(id, _)| *id).collect()),
        })
    }

    /// What a source is called on the page.
    pub(crate) fn label(&self, id: &str) -> Option<&str> {
        self.lines.get(id).map(|(label, _)| label.as_str())
    }

    /// The grade that a value from a source may carry: no better than its source allows.
    pub(crate) fn grade(&self, at: At, id: &str, grade: Grade) -> Result<Grade, Defect> {
        let line = self.lines.get(id);
        let (_, ceiling) =
            line.ok_or_else(|| at.problem(format!("the source \"{id}\" is not in sources.csv")))?;
        Ok(grade.max(*ceiling))
    }

    /// A place in a source, which then has a label. It is printed as it stands, so no id of a source and no name of a
    /// column may be part of it.
    pub(crate) fn cite(&self, at: At, id: &str, place: &str, grade: Grade) -> Result<Cite, Defect> {
        let mut words = place.split(|c: char| !(c.is_ascii_alphanumeric() || c == '_'));
        if let Some(code) = words.find(|word| {
            word.contains('_')
                || self.lines.contains_key(*word) && word.contains(|c: char| c.is_ascii_digit())
        }) {
            return Err(at.problem(format!(
                "the place \"{place}\" has the code {code} in it: say it in words"
            )));
        }
        let grade = self.grade(at, id, grade)?;
        Ok(Cite {
            source: self.name(id),
            place: keep(place),
            grade,
        })
    }

    /// A source that is cited: it then has a number and a line of the packed table.
    pub(crate) fn name(&self, id: &str) -> SourceId {
        let id = self.same_as.get(id).map_or(id, String::as_str);
        let mut cited = self.cited.borrow_mut();
        if let Some(known) = cited.iter().find(|known| known.text() == id) {
            return *known;
        }
        let number = u16::try_from(cited.len()).expect("sources are few");
        cited.push(SourceId::new(number, keep(id)));
        cited[usize::from(number)]
    }

    /// `A01@Table 1;B22@summary`, or ids alone.
    pub(crate) fn cites(
        &self,
        at: At,
        list: &List,
        grade: Grade,
    ) -> Result<&'static [Cite], Defect> {
        if list.is_empty() {
            return Err(at.problem("a source is needed"));
        }
        let one = |part: &String| {
            let (id, place) = part.split_once('@').unwrap_or((part, ""));
            self.cite(at, id.trim(), place, grade)
        };
        Ok(list.iter().map(one).collect::<Result<Vec<_>, _>>()?.leak())
    }

    /// The first source of a value; an assumption is our own.
    pub(crate) fn first(
        &self,
        at: At,
        ids: &List,
        place: &str,
        grade: Grade,
    ) -> Result<Cite, Defect> {
        let id = match (grade, ids.first()) {
            (Grade::Assumption, _) => "own",
            (_, Some(id)) => id,
            (_, None) => return Err(at.problem("a source is needed")),
        };
        self.cite(at, id, place, grade)
    }

    /// The sources that something has cited so far, in the order of their ids.
    pub(crate) fn by_id(&self) -> &'static [SourceId] {
        let mut cited = self.cited.borrow().clone();
        cited.sort_by_key(|id| id.text());
        cited.leak()
    }

    /// The lines of the sources that something has cited so far, by number, from one number on.
    pub(crate) fn lines_from(&self, first: usize) -> &'static [SourceLine] {
        let cited = self.cited.borrow();
        let line = |id: &SourceId| SourceLine {
            id: *id,
            label: keep(&self.lines[id.text()].0),
        };
        cited[first..].iter().map(line).collect::<Vec<_>>().leak()
    }
}
