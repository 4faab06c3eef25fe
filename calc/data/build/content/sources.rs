//! The sources that may be cited, and the best grade that each allows.

use super::cells::{List, cell, keep};
use crate::table::{At, Defect, Table};
use calc::terms::cite::{Cite, Grade, Source};
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
    cited: RefCell<BTreeSet<String>>,
}

impl Sources {
    pub(crate) fn read(root: &Path) -> Result<Self, Defect> {
        let table = Table::<SourceRow>::read(root, "content/evidence/sources.csv")?;
        let mut lines = BTreeMap::new();
        let mut same_as = BTreeMap::new();
        let rows = table.by(|row| &row.id)?;
        for (id, row) in &rows {
            if row.label.is_empty() || row.label.chars().count() > LABEL {
                let what = format!("label: a source needs one of at most {LABEL} letters");
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
            ("own", "our own assumption", Grade::Assumption),
            ("practice", "common practice, no source", Grade::Practice),
            ("you", "what you told us", Grade::Measured),
        ] {
            lines.insert(id.to_owned(), (label.to_owned(), grade));
        }
        let cited = ["own", "practice", "you"].map(str::to_owned).into();
        Ok(Self {
            lines,
            same_as,
            cited: RefCell::new(cited),
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

    /// The id of a source, which then has a label.
    pub(crate) fn name(&self, id: &str) -> &'static str {
        let id = self.same_as.get(id).map_or(id, String::as_str);
        self.cited.borrow_mut().insert(id.to_owned());
        keep(id)
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

    /// The labels of the sources that something cites: a table, or the code of the models. Code says that a value was
    /// read in the source's own text, which the source has to allow.
    pub(crate) fn shown(&self, root: &Path) -> Result<&'static [Source], Defect> {
        for (at, id) in in_code(root, &root.join("calc/core/src")) {
            let allowed = self.grade(at, &id, Grade::Published)?;
            if allowed != Grade::Published {
                let ceiling = format!("{allowed:?}").to_uppercase();
                return Err(at.problem(format!(
                    "{id} is cited as PUBLISHED, but sources.csv allows {ceiling} at best"
                )));
            }
            self.name(&id);
        }
        let cited = self.cited.borrow();
        let shown = self.lines.iter().filter(|(id, _)| cited.contains(*id));
        Ok(shown
            .map(|(id, (label, _))| Source {
                id: keep(id),
                label: keep(label),
            })
            .collect::<Vec<_>>()
            .leak())
    }
}

/// The ids that the models cite themselves, `cite("A01", …)`, and where.
fn in_code(root: &Path, folder: &Path) -> Vec<(At, String)> {
    let mut found = Vec::new();
    for entry in std::fs::read_dir(folder).into_iter().flatten().flatten() {
        let path = entry.path();
        if path.is_dir() {
            found.extend(in_code(root, &path));
        } else if let Ok(code) = std::fs::read_to_string(&path) {
            let name = path.strip_prefix(root).unwrap_or(&path);
            let file = keep(&name.to_string_lossy().replace('\\', "/"));
            for (at, call) in code.match_indices("cite(") {
                let rest = code[at + call.len()..].trim_start();
                let id = rest
                    .strip_prefix('"')
                    .and_then(|rest| rest.split('"').next());
                let line = code[..at].lines().count() as u64;
                found.extend(id.map(|id| (At::new(file, line), id.to_owned())));
            }
        }
    }
    found
}
