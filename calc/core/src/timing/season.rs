//! The season of one tree at one place, and what it says of any day.

use super::constants::SeasonConstants;
use super::curve::Curve;
use super::doy::{YEAR, absolute, date, nearest_date};
use super::marks::Marks;
use super::verdict::{Side, Verdict, YearsInTen, probability};
use super::{Flag, envelope};
use crate::terms::place::Hemisphere;
use chrono::{Datelike, Months, NaiveDate};
use core::cell::OnceCell;
use serde::Serialize;

/// What the dates of a season rest on.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
#[serde(rename_all = "snake_case", tag = "kind")]
pub enum Basis {
    /// Leaf-out seen at the tree this season.
    ObservedHere,
    /// Leaf-out seen elsewhere this season and carried here.
    ObservedElsewhere {
        /// Days added.
        shift_days: f64,
    },
    /// This spring's own temperatures, the rest from normals.
    OwnSpring {
        /// Days with their own temperatures up to budbreak.
        own_days: u32,
        /// Days between them filled from normals.
        gap_days: u32,
        /// Share of the sum that they give, 0–1.
        share: f64,
    },
    /// The place's normals.
    Climate,
    /// A leaf-out of another year, where nothing better is known: two years' spreads wider.
    OtherYear,
}

/// The dates of one season.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Dates {
    /// The year in which the season began (in the south the year of its spring).
    pub year: i32,
    /// What they rest on.
    pub basis: Basis,
    /// Half the buds open.
    pub budbreak: NaiveDate,
    /// The bark lets go.
    pub opens: NaiveDate,
    /// First of the best days.
    pub best_from: NaiveDate,
    /// Last of the best days.
    pub best_to: NaiveDate,
    /// The bark binds.
    pub closes: NaiveDate,
    /// Last day on which a trial is worth while.
    pub last_possible: NaiveDate,
    /// Standard deviation of the opening, days.
    pub sd_open: f64,
    /// Standard deviation of the closing, days.
    pub sd_close: f64,
}

/// Which kind of knowledge there is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Knowledge {
    /// Palms, bamboo, yucca.
    NotTimed,
    /// The hemisphere's months; one month longer for conifers and evergreens.
    Envelope {
        hemisphere: Hemisphere,
        longer: bool,
    },
    /// A conifer without a winter: test in any wet, growing month.
    AnyGrowingMonth { hemisphere: Hemisphere },
    /// A date model: every year's curve, and one year's own.
    Dated {
        ordinary: (Curve, Basis),
        own: Option<(i32, Curve, Basis)>,
    },
}

/// What is known of the bark of one tree, for every day. Made by [`super::season()`].
#[derive(Debug, Clone)]
pub struct Season<'c> {
    pub(super) c: &'c SeasonConstants,
    pub(super) kind: Knowledge,
    pub(super) flags: Vec<Flag>,
    /// See [`Self::dating`].
    dating: OnceCell<Dating>,
}

/// The days of a date model that are asked for again and again, found once.
#[derive(Debug, Clone)]
struct Dating {
    /// Of the ordinary season.
    ordinary: Marks,
    /// Of the season with knowledge of its own, and the year in which it began.
    own: Option<(i32, Marks)>,
    /// Where a season ends, days from the start of its year: an ordinary one before another, an ordinary one before the
    /// one with knowledge of its own, and that one.
    ends: [f64; 3],
    /// How many years before its own the season of a day may have begun.
    back: i32,
}

impl Dating {
    fn of(ordinary: &Curve, own: Option<(i32, &Curve)>, c: &SeasonConstants) -> Self {
        // One season ends half-way between its closing and the next opening.
        let end = |this: &Curve, next: &Curve| (this.closes + next.opens + f64::from(YEAR)) / 2.0;
        let special = own.map_or(ordinary, |(_, curve)| curve);
        let ends = [
            end(ordinary, ordinary),
            end(ordinary, special),
            end(special, ordinary),
        ];
        let last = ends[0].max(ends[1]).max(ends[2]);
        Self {
            ordinary: Marks::of(ordinary, c),
            own: own.map(|(year, curve)| (year, Marks::of(curve, c))),
            ends,
            back: (last / f64::from(YEAR)) as i32,
        }
    }

    /// The year of the season that a day belongs to, and the day counted from the start of that year.
    fn place(&self, day: NaiveDate) -> (i32, i32) {
        let mut year = day.year() - self.back;
        let mut at = absolute(day) - YEAR * year;
        while f64::from(at) >= self.end(year) {
            year += 1;
            at -= YEAR;
        }
        (year, at)
    }

    /// Where the season that began in a year ends, days from the start of that year.
    fn end(&self, year: i32) -> f64 {
        match self.own {
            Some((own, _)) if own == year => self.ends[2],
            Some((own, _)) if own == year + 1 => self.ends[1],
            _ => self.ends[0],
        }
    }

    /// The marks of the season that began in a year.
    fn marks(&self, year: i32) -> &Marks {
        match &self.own {
            Some((own, marks)) if *own == year => marks,
            _ => &self.ordinary,
        }
    }
}

impl<'c> Season<'c> {
    pub(super) fn new(c: &'c SeasonConstants, kind: Knowledge, flags: Vec<Flag>) -> Self {
        Self {
            c,
            kind,
            flags,
            dating: OnceCell::new(),
        }
    }
}

/// What is asked of a day to find a good one.
pub(super) struct BarkOn {
    /// See [`Season::is_open`].
    pub(super) open: bool,
    /// See `Season::in_stretch`.
    pub(super) in_stretch: bool,
    /// See [`Season::is_best`].
    pub(super) best: bool,
}

impl Season<'_> {
    /// Why the answer is less sure than usual, and what was not used; sorted, each once.
    #[must_use]
    pub fn flags(&self) -> &[Flag] {
        &self.flags
    }

    /// False for palms, bamboo and yucca: nothing is said of their bark.
    #[must_use]
    pub fn is_timed(&self) -> bool {
        self.kind != Knowledge::NotTimed
    }

    /// True where there are dates and probabilities; false for the envelope, for "any growing month" and for palms.
    #[must_use]
    pub fn is_dated(&self) -> bool {
        matches!(self.kind, Knowledge::Dated { .. })
    }

    /// True for a conifer without a winter: test in any wet, growing month.
    #[must_use]
    pub fn is_any_growing_month(&self) -> bool {
        matches!(self.kind, Knowledge::AnyGrowingMonth { .. })
    }

    /// The days on which the steps are passed, found once, when a day is first asked for; none without a date model.
    fn dating(&self) -> Option<&Dating> {
        let Knowledge::Dated { ordinary, own } = &self.kind else {
            return None;
        };
        let find = || {
            let own = own.as_ref().map(|(year, curve, _)| (*year, curve));
            Dating::of(&ordinary.0, own, self.c)
        };
        Some(self.dating.get_or_init(find))
    }

    /// The curve of the season that began in `year`.
    fn curve(&self, year: i32) -> Option<(&Curve, Basis)> {
        match &self.kind {
            Knowledge::Dated {
                own: Some((y, curve, basis)),
                ..
            } if *y == year => Some((curve, *basis)),
            Knowledge::Dated { ordinary, .. } => Some((&ordinary.0, ordinary.1)),
            _ => None,
        }
    }

    /// The year of the season that a day belongs to, and the day counted from the start of that year.
    fn of(&self, day: NaiveDate) -> Option<(i32, i32)> {
        Some(self.dating()?.place(day))
    }

    /// The chance that the bark slips on a day, 0–1; None where there is no date model.
    #[must_use]
    pub fn probability(&self, day: NaiveDate) -> Option<f64> {
        let (year, d) = self.of(day)?;
        let (k, _) = self.curve(year)?;
        Some(probability(
            f64::from(d),
            k.opens,
            k.sd_open,
            k.closes,
            k.sd_close,
        ))
    }

    /// The same as people read it.
    #[must_use]
    pub fn years_in_ten(&self, day: NaiveDate) -> Option<YearsInTen> {
        self.probability(day).map(|p| YearsInTen::of(p, self.c))
    }

    /// A probability for the rules and the minutes, which always need one: the model's; without one 0.6 inside the
    /// envelope and 0 outside; 0 for palms.
    #[must_use]
    pub fn p_for_rules(&self, day: NaiveDate) -> f64 {
        match self.kind {
            Knowledge::NotTimed => 0.0,
            Knowledge::AnyGrowingMonth { .. } => self.c.p_envelope,
            Knowledge::Envelope { hemisphere, longer } => {
                if envelope::inside(day, hemisphere, longer, self.c) {
                    self.c.p_envelope
                } else {
                    0.0
                }
            }
            Knowledge::Dated { .. } => self.probability(day).unwrap_or(0.0),
        }
    }

    /// The one word for a day. `Unknown` for palms.
    #[must_use]
    pub fn verdict(&self, day: NaiveDate) -> Verdict {
        match self.kind {
            Knowledge::NotTimed => Verdict::Unknown,
            Knowledge::AnyGrowingMonth { .. } => Verdict::TestFirst,
            Knowledge::Envelope { hemisphere, longer } => {
                envelope::verdict(day, hemisphere, longer, self.c)
            }
            Knowledge::Dated { .. } => self.marked(day).map_or(Verdict::Unknown, |(marks, day)| {
                let side = if marks.opening(day) {
                    Side::Opening
                } else {
                    Side::Closing
                };
                Verdict::of_steps(marks.best(day), marks.test(day), marks.poor(day), side)
            }),
        }
    }

    /// The marks of the season that a day belongs to, and the day counted from the start of the season's year.
    fn marked(&self, day: NaiveDate) -> Option<(&Marks, i32)> {
        let dating = self.dating()?;
        let (year, at) = dating.place(day);
        Some((dating.marks(year), at))
    }

    /// The first day after a day on which the bark may be spoken of in another way: until then every day is as that one.
    /// None at the end of the calendar.
    pub(super) fn next_turn(&self, day: NaiveDate) -> Option<NaiveDate> {
        let Some(dating) = self.dating() else {
            // What is not dated turns with a month.
            return day.with_day(1)?.checked_add_months(Months::new(1));
        };
        let (year, at) = dating.place(day);
        let end = libm::ceil(dating.end(year)) as i32;
        let turn = dating.marks(year).next_turn(at);
        Some(date(YEAR * year + turn.map_or(end, |turn| turn.min(end))))
    }

    /// True on a day that belongs to the best stretch: verdict `best`, or the envelope's best months.
    #[must_use]
    pub fn is_best(&self, day: NaiveDate) -> bool {
        match self.kind {
            Knowledge::NotTimed => false,
            Knowledge::Envelope { hemisphere, .. } | Knowledge::AnyGrowingMonth { hemisphere } => {
                envelope::best(day, hemisphere, self.c)
            }
            Knowledge::Dated { .. } => self.verdict(day) == Verdict::Best,
        }
    }

    /// True on a day on which a ring may be tried: p ≥ 0.4, or inside the envelope.
    #[must_use]
    pub fn is_open(&self, day: NaiveDate) -> bool {
        match self.kind {
            Knowledge::Dated { .. } => self.marked(day).is_some_and(|(marks, day)| marks.test(day)),
            _ => self.is_timed() && self.p_for_rules(day) >= self.c.p_test,
        }
    }

    /// All of that at once, for many days.
    pub(super) fn bark(&self, day: NaiveDate) -> BarkOn {
        let of = |open, in_stretch, best| BarkOn {
            open,
            in_stretch,
            best,
        };
        match self.kind {
            Knowledge::Dated { .. } => {
                self.marked(day)
                    .map_or(of(false, false, false), |(marks, day)| {
                        let open = marks.test(day);
                        of(open, open, marks.best(day))
                    })
            }
            _ => of(self.is_open(day), self.in_stretch(day), self.is_best(day)),
        }
    }

    /// The dates of the season that a day belongs to. After the closing this is still the past season, until
    /// half-way to the next; [`Season::dates_of`] gives any year's.
    #[must_use]
    pub fn window(&self, day: NaiveDate) -> Option<Dates> {
        self.dates_of(self.of(day)?.0)
    }

    /// The dates of the season that began in a year (in the south the year of its spring).
    #[must_use]
    pub fn dates_of(&self, year: i32) -> Option<Dates> {
        let (k, basis) = self.curve(year)?;
        let on = |d: f64| nearest_date(f64::from(YEAR * year) + d);
        Some(Dates {
            year,
            basis,
            budbreak: on(k.budbreak),
            opens: on(k.opens),
            best_from: on(k.best_from),
            best_to: on(k.best_to),
            closes: on(k.closes),
            last_possible: on(k.last_possible),
            sd_open: k.sd_open,
            sd_close: k.sd_close,
        })
    }

    /// The season that leaf-out or temperatures were taken in for: the year in which it began.
    #[must_use]
    pub fn own_year(&self) -> Option<i32> {
        match self.kind {
            Knowledge::Dated {
                own: Some((year, _, basis)),
                ..
            } => Some(year).filter(|_| basis != Basis::Climate && basis != Basis::OtherYear),
            _ => None,
        }
    }

    /// The unrounded curve of a season, for the working and for checks: days from the start of `year`.
    #[must_use]
    pub fn curve_of(&self, year: i32) -> Option<Curve> {
        self.curve(year).map(|(k, _)| *k)
    }

    /// True where no day of the day's season reaches 0.8: "short season here, test every time".
    #[must_use]
    pub fn is_short(&self, day: NaiveDate) -> bool {
        self.marked(day).is_some_and(|(marks, _)| marks.short())
    }

    /// The months in which the envelope, or "any growing month", places its stretches.
    pub(super) fn envelope_hemisphere(&self) -> Option<(Hemisphere, bool)> {
        match self.kind {
            Knowledge::Envelope { hemisphere, longer } => Some((hemisphere, longer)),
            Knowledge::AnyGrowingMonth { hemisphere } => Some((hemisphere, true)),
            _ => None,
        }
    }
}
