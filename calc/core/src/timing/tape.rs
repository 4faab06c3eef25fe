//! A season laid out: every day of a year, spans for the year tape, the next good stretches.

use super::envelope;
use super::season::Season;
use super::verdict::{Fill, Verdict};
use chrono::{Datelike, Days, NaiveDate};

/// How far ahead a day is looked for: two years hold a whole season from any day on.
const HORIZON_DAYS: u64 = 730;

/// One day of the year table.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DayRow {
    /// The day.
    pub date: NaiveDate,
    /// The chance that the bark slips, where there is a date model.
    pub probability: Option<f64>,
    /// The one word.
    pub verdict: Verdict,
}

/// A run of days with the same word, both ends counted.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Span {
    /// First day.
    pub from: NaiveDate,
    /// Last day.
    pub to: NaiveDate,
    /// The word.
    pub verdict: Verdict,
    /// How it is drawn.
    pub fill: Fill,
}

/// A run of allowed days on which a ring may be tried, both ends counted.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Stretch {
    /// First day with p ≥ 0.4 (or inside the envelope).
    pub from: NaiveDate,
    /// Last one.
    pub to: NaiveDate,
    /// First and last of its best days, where it has any.
    pub best: Option<(NaiveDate, NaiveDate)>,
}

/// The days from `first` on, to the end of the calendar.
pub(crate) fn days_from(first: NaiveDate) -> impl Iterator<Item = NaiveDate> {
    core::iter::successors(Some(first), NaiveDate::succ_opt)
}

/// The days of a calendar year.
fn days_of(year: i32) -> impl Iterator<Item = NaiveDate> {
    let first = NaiveDate::from_ymd_opt(year, 1, 1).unwrap_or_default();
    days_from(first).take_while(move |day| day.year() == year)
}

impl Season<'_> {
    /// Every day of a calendar year, 29 February included.
    pub fn days(&self, year: i32) -> impl Iterator<Item = DayRow> {
        days_of(year).map(|date| DayRow {
            date,
            probability: self.probability(date),
            verdict: self.verdict(date),
        })
    }

    /// The year tape's bark lane: the calendar year in runs of the same word, without holes.
    #[must_use]
    pub fn tape(&self, year: i32) -> Vec<Span> {
        self.spans(days_of(year))
    }

    /// The same of any days, in the order of time and without holes.
    pub fn spans(&self, days: impl Iterator<Item = NaiveDate>) -> Vec<Span> {
        let mut spans: Vec<Span> = Vec::new();
        for date in days {
            let verdict = self.verdict(date);
            match spans.last_mut() {
                Some(span) if span.verdict == verdict => span.to = date,
                _ => spans.push(Span {
                    from: date,
                    to: date,
                    verdict,
                    fill: verdict.fill(),
                }),
            }
        }
        spans
    }

    /// The next stretches from `from` on (counted) outside the forbidden days, at most `most`, in the order of time.
    /// A stretch that has begun starts at `from`; forbidden days cut a stretch in two.
    #[must_use]
    pub fn next_stretches(
        &self,
        from: NaiveDate,
        forbidden: &dyn Fn(NaiveDate) -> bool,
        most: usize,
    ) -> Vec<Stretch> {
        let mut found: Vec<Stretch> = Vec::new();
        for (day, is_best) in self
            .open_days(from, HORIZON_DAYS)
            .filter(|(day, _)| !forbidden(*day))
        {
            let goes_on = found.last().is_some_and(|s| s.to.succ_opt() == Some(day));
            if !goes_on {
                if found.len() >= most {
                    break;
                }
                found.push(Stretch {
                    from: day,
                    to: day,
                    best: None,
                });
            }
            if let Some(stretch) = found.last_mut() {
                stretch.to = day;
                if is_best {
                    stretch.best = Some((stretch.best.map_or(day, |b| b.0), day));
                }
            }
        }
        found
    }

    /// The days from `from` on on which a ring may be tried, within so many days, and whether each is a best one; closed
    /// months are leapt over.
    fn open_days(&self, from: NaiveDate, within: u64) -> impl Iterator<Item = (NaiveDate, bool)> {
        let end = from.checked_add_days(Days::new(within));
        let mut next = Some(from);
        core::iter::from_fn(move || {
            let mut day = next.filter(|day| Some(*day) < end)?;
            loop {
                let bark = self.bark(day);
                if bark.in_stretch {
                    next = day.succ_opt();
                    return Some((day, bark.best));
                }
                let later = self.opens_after(day).or_else(|| day.succ_opt());
                day = later.filter(|day| Some(*day) < end)?;
            }
        })
    }

    /// As [`Season::is_open`], but "any growing month" is looked for in the envelope's months.
    pub(super) fn in_stretch(&self, day: NaiveDate) -> bool {
        match self.envelope_hemisphere() {
            Some((hemisphere, longer)) => envelope::inside(day, hemisphere, longer, self.c),
            None => self.is_open(day),
        }
    }
}
