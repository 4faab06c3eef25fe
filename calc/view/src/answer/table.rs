//! Tables, written cell by cell.

use super::frame::{Cx, open_details};
use crate::measure::Both;
use crate::out::{Cells, Page, Words};

impl Page<'_> {
    /// Opens the next cell; the first of a row is its heading.
    pub fn open_cell(&mut self) {
        if self.table.at == 0 {
            self.open("tr");
            self.open("th");
            self.attr("scope", "row");
        } else {
            self.open("td");
        }
    }

    /// Closes a cell, and behind the last one the row.
    pub fn close_cell(&mut self) {
        self.close();
        self.table.at += 1;
        if self.table.at == self.table.columns {
            self.table.at = 0;
            self.close();
        }
    }

    /// The next cell.
    #[inline(never)]
    pub fn cell(&mut self, text: impl Words) {
        self.open_cell();
        self.text(text.as_ref());
        self.close_cell();
    }

    /// Two cells, a unit each.
    #[inline(never)]
    pub fn cells(&mut self, value: Both) {
        self.cell(value.us);
        self.cell(value.metric);
    }

    /// Closes what was opened last of [`table`], [`folded_table`] and [`twin`].
    pub fn close_table(&mut self) {
        self.close_all(self.table.around);
    }
}

/// Opens a table that scrolls inside its own named region, as far as its rows.
pub fn table(out: &mut Page<'_>, caption: &str, heads: &[&str]) {
    open(out, "", caption, heads);
}

/// Opens a table in folded text: the summary above it says what its caption says.
pub fn folded_table(out: &mut Page<'_>, class: &str, caption: &str, heads: &[&str]) {
    open_details(out, class, caption);
    open(out, "vh", caption, heads);
    out.table.around += 1;
}

/// Opens the table twin of a drawing.
pub fn twin(out: &mut Page<'_>, cx: &Cx<'_>, summary: &str, heads: &[&str]) {
    open_details(out, "twin", summary);
    // Several twins of one tree stand in an answer: each region has a name of its own.
    table(out, &cat!(cx.title(), ": ", summary), heads);
    out.table.around += 1;
}

fn open(out: &mut Page<'_>, class: &str, caption: &str, heads: &[&str]) {
    out.open_class("div", "tw");
    out.attr("tabindex", "0");
    out.attr("role", "region");
    out.attr("aria-label", caption);
    out.open("table");
    out.open("caption");
    out.open_class("span", class);
    out.text(caption);
    out.close_two();
    out.open("thead");
    out.open("tr");
    for head in heads {
        out.open("th");
        out.attr("scope", "col");
        out.text(*head);
        out.close();
    }
    out.close_two();
    out.open("tbody");
    out.table = Cells {
        columns: heads.len(),
        at: 0,
        around: 3,
    };
}
