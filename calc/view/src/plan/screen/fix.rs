//! What is to mend: names first, a question for all rows of one, then rows, each with the cell to type anew.

use super::{button, field, heading, open_form, send};
use crate::page::Page;
use crate::plan::read::ReadList;
use crate::words::phrase::first_of;
use crate::words::{list as words, m};
use calc_list::decisions::LEAVE_OUT;
use calc_list::{Is, NameAsk, Record, Row, RowProblem, Severity, open_names};
use std::collections::BTreeSet;

/// So many stand in front; all of them are folded.
const IN_FRONT: usize = 3;
/// So many rows of a name are told by their number.
const ROWS_TOLD: usize = 6;

/// What is to mend: a name, or a row.
enum ToMend<'a> {
    Name(Box<NameAsk>, &'a RowProblem),
    Row(&'a Record, &'a Row),
}

/// All that is to mend, names with most rows first.
pub struct Fixes<'a> {
    list: &'a ReadList,
    all: Vec<ToMend<'a>>,
}

impl<'a> Fixes<'a> {
    /// Of a list.
    #[must_use]
    pub fn of(list: &'a ReadList) -> Self {
        let names = open_names(list.rows().map(|(_, row)| row));
        let of_names: BTreeSet<u64> = names.iter().flat_map(|ask| ask.rows.clone()).collect();
        let mut all: Vec<ToMend<'_>> = Vec::new();
        for ask in names {
            let row = ask.rows.first().and_then(|row| list.row(*row));
            let problem =
                row.and_then(|(_, row)| row.problems.iter().find(|it| it.code == ask.code));
            if let Some(problem) = problem {
                all.push(ToMend::Name(Box::new(ask), problem));
            }
        }
        let rows = list
            .rows()
            .filter(|(_, row)| matches!(row.is, Is::ToFix) && !of_names.contains(&row.row));
        all.extend(rows.map(|(record, row)| ToMend::Row(record, row)));
        Self { list, all }
    }

    /// How many.
    #[must_use]
    pub fn len(&self) -> usize {
        self.all.len()
    }

    /// Whether nothing is to mend.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.all.is_empty()
    }

    /// The first of them, under a heading; what that is for is told until there is a plan.
    pub fn front(&self, out: &mut Page<'_>, planned: bool) {
        heading(out, &m::PROPERTY_FIX);
        if !planned {
            let rows = self.list.counts.to_fix.to_string();
            out.p_class("soft", m::property_fix_rows(rows));
        }
        self.some(out, "f", 0, IN_FRONT);
    }

    /// Some of them; ids begin with `prefix`.
    pub fn some(&self, out: &mut Page<'_>, prefix: &str, from: usize, to: usize) {
        for mend in self.all.iter().take(to).skip(from) {
            match mend {
                ToMend::Name(ask, problem) => self.name(out, prefix, ask, problem),
                ToMend::Row(record, row) => self.row(out, prefix, record, row),
            }
        }
    }

    fn name(&self, out: &mut Page<'_>, prefix: &str, ask: &NameAsk, problem: &RowProblem) {
        let id = [prefix, "-n-", &problem.row.to_string()].concat();
        let name: [(&'static str, &str); 1] = [("data-name", &ask.typed)];
        open_form(out, "mend", "name", &name);
        let what = words::what(problem);
        out.p(m::property_fix_name(m::PropertyFixName {
            rows: ask.rows.len().to_string(),
            which: first_of(&ask.rows, ROWS_TOLD, ", "),
            what,
        }));
        out.open_class("div", "typed");
        field(out, &id, "wf", &m::PROPERTY_FIX_SPECIES, "", "");
        send(out, "btn ghost", &m::PROPERTY_FIX_IT);
        out.close();
        out.open_class("div", "picks");
        for (value, label) in [
            ("unknown broadleaf", m::PROPERTY_BROADLEAF),
            ("unknown conifer", m::PROPERTY_CONIFER),
            (LEAVE_OUT, m::PROPERTY_LEAVE_OUT),
        ] {
            let values = [("data-name", ask.typed.as_str()), ("data-as", value)];
            button(out, "btn ghost", "name", &values, &label);
        }
        out.close_two();
    }

    fn row(&self, out: &mut Page<'_>, prefix: &str, record: &Record, row: &Row) {
        let fixes = row.problems.iter().filter(|it| it.level == Severity::Fix);
        let mut any = false;
        for problem in fixes {
            any = true;
            let header = problem.column.and_then(|at| self.list.layout.texts.get(at));
            let text = words::problem(problem, header.map_or("", String::as_str));
            let (Some(at), number) = (problem.column, row.row.to_string()) else {
                out.p_class("mend", text);
                continue;
            };
            let column = at.to_string();
            let id = [prefix, "-", &number, "-", &column].concat();
            let place = [("data-row", number.as_str()), ("data-column", &column)];
            open_form(out, "mend", "edit", &place);
            out.open_class("div", "typed");
            field(out, &id, "wf", &text, "", record.cell(at).trim());
            send(out, "btn ghost", &m::PROPERTY_FIX_IT);
            out.close_two();
        }
        if !any {
            out.p_class("mend", m::property_fix_look(row.row.to_string()));
        }
    }
}
