//! The days around one, laid out once: on which the bark is open, for how long without a closed day, and which are best.
//! Many days may then be asked for a good one at little cost.

use super::season::Season;
use super::tape::days_from;
use chrono::{Days, NaiveDate};
use core::cell::Cell;

/// A best day is looked for so many days ahead: a leap year's.
const YEAR_DAYS: usize = 366;
/// Half a year, and more days than lie between two best ones.
const HALF_YEAR: u16 = 183;

/// The days from a first one on.
#[derive(Debug)]
pub struct OpenDays {
    first: NaiveDate,
    days: Vec<OnDay>,
    margin: u16,
}

/// What is known of one day.
#[derive(Debug, Clone)]
struct OnDay {
    /// How many days, from this one on, are open and not forbidden without a break.
    run: u16,
    /// Whether it lies in a stretch on which a ring may be tried.
    in_stretch: bool,
    /// Whether it is a best one.
    best: bool,
    /// Its chance for the rules, and the days from it to the nearest best one, once they were asked for.
    chance: Cell<Option<f64>>,
    apart: Cell<Option<u16>>,
}

impl OpenDays {
    /// Lays out the days from `first` on. They may be asked for until `last`; a day counts where it and those behind it,
    /// `margin` together, are open and not `forbidden`.
    #[must_use]
    pub fn new(
        season: &Season<'_>,
        (first, last): (NaiveDate, NaiveDate),
        margin: u16,
        forbidden: &dyn Fn(NaiveDate) -> bool,
    ) -> Self {
        let end = last.checked_add_days(Days::new(u64::from(margin)));
        let last = end.and_then(|end| end.pred_opt()).unwrap_or(last);
        let count = (last - first).num_days() + 1;
        let mut days: Vec<OnDay> = Vec::with_capacity(count.max(0) as usize);
        for (from, to) in season.runs(first, last) {
            let bark = season.bark(from);
            let begin = days.len();
            let all_alike = OnDay {
                run: 0,
                in_stretch: bark.in_stretch,
                best: bark.best,
                chance: Cell::new(None),
                apart: Cell::new(None),
            };
            days.resize(begin + (to - from).num_days() as usize + 1, all_alike);
            if bark.open {
                for (on_day, day) in days[begin..].iter_mut().zip(days_from(from)) {
                    on_day.run = u16::from(!forbidden(day));
                }
            }
        }
        let mut run = 0;
        for day in days.iter_mut().rev() {
            run = if day.run > 0 { run + 1 } else { 0 };
            day.run = run;
        }
        Self {
            first,
            days,
            margin,
        }
    }

    /// Whether a day counts; none for one that was not laid out.
    #[must_use]
    pub fn counts(&self, day: NaiveDate) -> Option<bool> {
        let at = self.place(day)?;
        (at + usize::from(self.margin) <= self.days.len()).then(|| self.days[at].run >= self.margin)
    }

    /// The first best day from `from` on (counted) that counts, within a year; else the day of the highest
    /// probability ≥ 0.4 (the envelope, which has one for all its days: the day nearest to its best months) within a
    /// year; None where no such day counts, and for palms. `from` must have been laid out with a year behind it.
    #[must_use]
    pub fn best(&self, season: &Season<'_>, from: NaiveDate) -> Option<NaiveDate> {
        let from = self.place(from)?;
        let to = (from + YEAR_DAYS).min(self.days.len());
        let counts = |at: &usize| {
            let day = &self.days[*at];
            day.in_stretch && day.run >= self.margin
        };
        if let Some(at) = (from..to).filter(counts).find(|at| self.days[*at].best) {
            return self.day(at);
        }
        let mut top: Option<(f64, usize)> = None;
        for at in (from..to).filter(counts) {
            let p = self.chance(season, at);
            let better = |(q, known): (f64, usize)| {
                p > q || (p == q && self.apart(season, at) < self.apart(season, known))
            };
            if top.is_none_or(better) {
                top = Some((p, at));
            }
        }
        self.day(top?.1)
    }

    fn place(&self, day: NaiveDate) -> Option<usize> {
        let at = usize::try_from((day - self.first).num_days()).ok()?;
        (at < self.days.len()).then_some(at)
    }

    fn day(&self, at: usize) -> Option<NaiveDate> {
        self.first.checked_add_days(Days::new(at as u64))
    }

    fn chance(&self, season: &Season<'_>, at: usize) -> f64 {
        let known = &self.days[at].chance;
        known.get().unwrap_or_else(|| {
            let p = self.day(at).map_or(0.0, |day| season.p_for_rules(day));
            known.set(Some(p));
            p
        })
    }

    /// Days to the nearest best day before or after; half a year where there is none.
    fn apart(&self, season: &Season<'_>, at: usize) -> u16 {
        let known = &self.days[at].apart;
        known.get().unwrap_or_else(|| {
            let best = |away: i64| {
                let laid_out = usize::try_from(at as i64 + away).ok();
                laid_out.and_then(|at| self.days.get(at)).map_or_else(
                    || {
                        let day = self.day(at)?;
                        let by = Days::new(away.unsigned_abs());
                        let other = if away < 0 {
                            day.checked_sub_days(by)
                        } else {
                            day.checked_add_days(by)
                        };
                        Some(season.is_best(other?))
                    },
                    |day| Some(day.best),
                )
            };
            let on = |away: i64| best(away) == Some(true);
            let apart = (0..HALF_YEAR)
                .find(|apart| on(i64::from(*apart)) || on(-i64::from(*apart)))
                .unwrap_or(HALF_YEAR);
            known.set(Some(apart));
            apart
        })
    }
}

impl Season<'_> {
    /// The best day from `from` on that is not forbidden: see [`OpenDays::best`].
    #[must_use]
    pub fn best_day(
        &self,
        from: NaiveDate,
        forbidden: &dyn Fn(NaiveDate) -> bool,
    ) -> Option<NaiveDate> {
        let last = from.checked_add_days(Days::new(YEAR_DAYS as u64 - 1))?;
        OpenDays::new(self, (from, last), 1, forbidden).best(self, from)
    }
}
