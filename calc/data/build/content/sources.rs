//! The sources that may be cited, and the best grade that each allows.

use super::cells::{List, cell, keep};
use crate::table::{At, Problem, Table};
use calc::reference::Source;
use calc::terms::cite::{Cite, Grade};
use serde::Deserialize;
use std::cell::RefCell;
use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;

#[derive(Deserialize)]
struct SourceRow {
    id: String,
    #[serde(deserialize_with = "cell")]
    authors: List,
    container: String,
    title: String,
    year: String,
    #[serde(deserialize_with = "cell")]
    grade_ceiling: Grade,
}

impl SourceRow {
    /// Author, or who published it, and the year.
    fn label(&self) -> String {
        let who = match &*self.authors {
            [] if self.container.is_empty() => self.title.clone(),
            [] => self.container.clone(),
            [one] => one.clone(),
            [one, two] => format!("{one} and {two}"),
            [one, ..] => format!("{one} et al."),
        };
        match self.year.as_str() {
            "" => who,
            year => format!("{who} {year}"),
        }
    }
}

/// The sources that may be cited.
pub struct Sources {
    lines: BTreeMap<String, (String, Grade)>,
    cited: RefCell<BTreeSet<String>>,
}

impl Sources {
    pub fn read(root: &Path) -> Result<Self, Problem> {
        let table = Table::<SourceRow>::read(root, "content/evidence/sources.csv")?;
        let mut lines = BTreeMap::new();
        for (id, row) in table.by(|row| &row.id)? {
            lines.insert(id.to_owned(), (row.label(), row.grade_ceiling));
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
            cited: RefCell::new(cited),
        })
    }

    /// What a source is called on the page.
    pub fn label(&self, id: &str) -> Option<&str> {
        self.lines.get(id).map(|(label, _)| label.as_str())
    }

    /// The grade that a value from a source may carry: no better than its source allows.
    pub fn grade(&self, at: At, id: &str, grade: Grade) -> Result<Grade, Problem> {
        let line = self.lines.get(id);
        let (_, ceiling) =
            line.ok_or_else(|| at.problem(format!("the source \"{id}\" is not in sources.csv")))?;
        Ok(grade.max(*ceiling))
    }

    /// A place in a source, which then has a label.
    pub fn cite(&self, at: At, id: &str, place: &str, grade: Grade) -> Result<Cite, Problem> {
        let grade = self.grade(at, id, grade)?;
        Ok(Cite {
            source: self.name(id),
            place: keep(place),
            grade,
        })
    }

    /// The id of a source, which then has a label.
    pub fn name(&self, id: &str) -> &'static str {
        self.cited.borrow_mut().insert(id.to_owned());
        keep(id)
    }

    /// `A01@Table 1;B22@summary`, or ids alone.
    pub fn cites(&self, at: At, list: &List, grade: Grade) -> Result<&'static [Cite], Problem> {
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
    pub fn first(&self, at: At, ids: &List, place: &str, grade: Grade) -> Result<Cite, Problem> {
        let id = match (grade, ids.first()) {
            (Grade::Assumption, _) => "own",
            (_, Some(id)) => id,
            (_, None) => return Err(at.problem("a source is needed")),
        };
        self.cite(at, id, place, grade)
    }

    /// The labels of the sources that something cites: a table, or the code of the models.
    pub fn shown(&self, core: &Path) -> &'static [Source] {
        let mut cited = self.cited.borrow().clone();
        cited.extend(in_code(core));
        let shown = self.lines.iter().filter(|(id, _)| cited.contains(*id));
        shown
            .map(|(id, (label, _))| Source {
                id: keep(id),
                label: keep(label),
            })
            .collect::<Vec<_>>()
            .leak()
    }
}

/// The ids that the models cite themselves: `cite("A01", …)`.
fn in_code(folder: &Path) -> Vec<String> {
    let mut ids = Vec::new();
    for entry in std::fs::read_dir(folder).into_iter().flatten().flatten() {
        let path = entry.path();
        if path.is_dir() {
            ids.extend(in_code(&path));
        } else if let Ok(code) = std::fs::read_to_string(&path) {
            ids.extend(code.split("cite(").skip(1).filter_map(|rest| {
                let rest = rest.trim_start().strip_prefix('"')?;
                Some(rest.split('"').next()?.to_owned())
            }));
        }
    }
    ids
}
