//! A season laid out: every day of a year, spans for the year tape, the next good stretches.

use super::envelope;
use super::season::Season;
use super::verdict::{Fill, Verdict};
use chrono::{Days, NaiveDate};

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

/// First and last day of a calendar year.
fn ends_of(year: i32) -> (NaiveDate, NaiveDate) {
    let on = |month, day| NaiveDate::from_ymd_opt(year, month, day).unwrap_or_default();
    (on(1, 1), on(12, 31))
}

impl Season<'_> {
    /// Every day of a calendar year, 29 February included.
    pub fn days(&self, year: i32) -> impl Iterator<Item = DayRow> {
        let (first, last) = ends_of(year);
        let days = days_from(first).take_while(move |day| *day <= last);
        days.map(|date| DayRow {
            date,
            probability: self.probability(date),
            verdict: self.verdict(date),
        })
    }

    /// The year tape's bark lane: the calendar year in runs of the same word, without holes.
    #[must_use]
    pub fn tape(&self, year: i32) -> Vec<Span> {
        let (first, last) = ends_of(year);
        self.spans(first, last)
    }

    /// The same of the days from a first to a last one, both counted.
    #[must_use]
    pub fn spans(&self, first: NaiveDate, last: NaiveDate) -> Vec<Span> {
        let mut spans: Vec<Span> = Vec::new();
        for (from, to) in self.runs(first, last) {
            let verdict = self.verdict(from);
            match spans.last_mut() {
                Some(span) if span.verdict == verdict => span.to = to,
                _ => spans.push(Span {
                    from,
                    to,
                    verdict,
                    fill: verdict.fill(),
                }),
            }
        }
        spans
    }

    /// Days in runs on which the bark is spoken of in one way: the first and the last day of each, both counted.
    pub(super) fn runs(
        &self,
        first: NaiveDate,
        last: NaiveDate,
    ) -> impl Iterator<Item = (NaiveDate, NaiveDate)> {
        let mut next = Some(first);
        core::iter::from_fn(move || {
            let from = next.filter(|day| *day <= last)?;
            next = self.next_turn(from);
            let to = next.and_then(|turn| turn.pred_opt());
            Some((from, to.map_or(last, |to| to.min(last))))
        })
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

    /// The days from `from` on on which a ring may be tried, within so many days, and whether each is a best one.
    fn open_days(&self, from: NaiveDate, within: u64) -> impl Iterator<Item = (NaiveDate, bool)> {
        let end = from.checked_add_days(Days::new(within));
        let last = end.and_then(|end| end.pred_opt()).unwrap_or(from);
        self.runs(from, last)
            .map(|run| (run, self.bark(run.0)))
            .filter(|(_, bark)| bark.in_stretch)
            .flat_map(|((from, to), bark)| {
                let days = days_from(from).take_while(move |day| *day <= to);
                days.map(move |day| (day, bark.best))
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
