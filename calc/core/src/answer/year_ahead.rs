//! The twelve months in which another day may be tried in the place of the one asked about.

use crate::models::season;
use crate::models::season::Local;
use crate::question::{Day, Question};
use crate::reference::Reference;
use crate::timing::Span;
use chrono::{Datelike, Months, NaiveDate};

/// The bark on each day of twelve months, in runs of the same word: from the asker's today on where the day asked about
/// lies in the same year, so that no day is gone by; else the calendar year of that day. None where no month has a word.
///
/// ```
/// # use calc::question::read;
/// # let reference = calc_data::whole();
/// let question = read(reference, &examples::named("do")).expect("a good question");
/// use calc::{answer::year_ahead, models::season::Local};
/// let year = year_ahead(reference, &question, &Local::default());
/// assert_eq!(year[0].from.to_string(), "2027-03-02");
/// ```
#[must_use]
pub fn year_ahead(reference: &Reference, question: &Question, local: &Local) -> Vec<Span> {
    let season = season::of(&reference.constants.timing, &question.season(), local);
    if !season.is_timed() {
        return Vec::new();
    }
    let first = first(question);
    let end = first.checked_add_months(Months::new(12));
    let last = end.and_then(|end| end.pred_opt());
    season.spans(first, last.unwrap_or(NaiveDate::MAX))
}

/// The first of the twelve months.
fn first(question: &Question) -> NaiveDate {
    let day = question.day.start();
    let today = match question.day {
        Day::Year { today } => Some(today),
        Day::On(_) => question.today,
    };
    let ahead = today.filter(|today| today.year() == day.year() && *today <= day);
    ahead.unwrap_or_else(|| NaiveDate::from_ymd_opt(day.year(), 1, 1).unwrap_or(day))
}
