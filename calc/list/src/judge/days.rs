//! Columns of days: planned ones, those that a spreadsheet counted, and the order of day and month.

use super::{Judge, NotRead, Note};
use crate::ask::ListQuestion;
use crate::reading::DayOrder;
use crate::row::days::{counted, slashed, year_of};
use calc_data::list::Column;

impl Judge<'_> {
    /// Planned days: past ones are no plan, and slashes need an order.
    pub(super) fn days(&mut self) {
        for at in [self.all(Column::Date), self.all(Column::DoneDate)].concat() {
            self.counted_days(at);
        }
        for at in self.all(Column::Date) {
            let today = self.reading.options.today.clone();
            let (mut past, mut days, mut both) = (0, 0, None);
            let (mut day_first, mut month_first) = (false, false);
            for row in self.rows {
                let cell = row.cell(at).trim();
                if self.words.is_missing(cell) {
                    continue;
                }
                let written = counted(cell);
                let cell = written
                    .as_deref()
                    .filter(|_| self.reading.columns[at].counted)
                    .unwrap_or(cell);
                days += 1;
                let year = year_of(cell);
                past += usize::from(match calc::question::read_day(cell) {
                    Ok(day) => calc::terms::day::iso(day) < today,
                    Err(_) => year.is_some_and(|year| {
                        today.get(..4).is_some_and(|this| year.as_str() < this)
                    }),
                });
                if let Some((a, b)) = slashed(cell) {
                    day_first |= a > 12;
                    month_first |= b > 12;
                    both.get_or_insert_with(|| cell.to_owned());
                }
            }
            if days > 0 && past * 2 >= days && !self.is_decided(at) && !today.is_empty() {
                self.not_read(at, NotRead::PastDays);
                self.reading.columns[at].is = Column::SurveyDate;
                continue;
            }
            let said = self.decided[at].order.as_deref().unwrap_or("");
            self.reading.day_order = match (said, day_first, month_first) {
                (said, ..) if said.starts_with("day") => Some(DayOrder::Day),
                (said, ..) if said.starts_with("month") => Some(DayOrder::Month),
                (_, true, false) => Some(DayOrder::Day),
                (_, false, true) => Some(DayOrder::Month),
                _ => None,
            };
            if let (Some(example), None) = (both, self.reading.day_order) {
                self.ask(at, days, ListQuestion::DayOrder { example });
            }
        }
    }

    /// A column all of whose cells are days as a spreadsheet counts them is read so, and that is said once. A number among
    /// days that are written out may be anything: it is told row by row.
    fn counted_days(&mut self, at: usize) {
        let stats = self.stats(at);
        let mut first = None;
        for value in stats.values.keys() {
            let Some(day) = counted(value) else {
                return;
            };
            first.get_or_insert((value.clone(), day));
        }
        if let Some((number, day)) = first {
            self.reading.columns[at].counted = true;
            let header = self.reading.columns[at].header.clone();
            self.notes.push(Note::DaysCounted {
                header,
                number,
                day,
            });
        }
    }
}
