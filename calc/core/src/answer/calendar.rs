//! The days of one species at one place: what its bark, its pests and its closed months say of each. It is made once for
//! a question and for every changed question that a search asks, and keeps what it has found.

use crate::models::condition::PartOfYear;
use crate::models::season::{self, Local};
use crate::question::Question;
use crate::reference::Constants;
use crate::reference::Reference;
use crate::terms::months::Months;
use crate::terms::place::Hemisphere;
use crate::terms::species::Trait;
use crate::terms::tighten::Tighten;
use crate::timing::closed_months::{self, Scope, Topic};
use crate::timing::disease::{Disease, DiseaseStatus, disease};
use crate::timing::{OpenDays, Season};
use chrono::{Datelike, Days, NaiveDate};
use core::cell::{Cell, OnceCell, RefCell};
use std::rc::Rc;

/// A better method is looked for so many days ahead: a leap year's.
const YEAR_DAYS: u64 = 366;
/// Days of a month on which a part of the year may begin or end: months, and half-months.
const TURNS: [u32; 3] = [1, 15, 16];

/// Conditions taken as met, which no field of the question carries.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) struct TakenAsMet {
    /// Every stem of the clone can be ringed.
    pub whole_clone: bool,
    /// Oak wilt is not in the state.
    pub no_oak_wilt: bool,
    /// An unknown species is one that a ring suits.
    pub species_suits: bool,
}

/// The days of one species at one place.
#[derive(Debug)]
pub(super) struct Calendar {
    /// The season.
    pub season: Season<'static>,
    /// Oak wilt in the region; none for other trees.
    pub oak_wilt: Option<Disease>,
    /// The ash borer in the region; none for other trees.
    pub ash_borer: Option<Disease>,
    /// When fresh wood of pine breeds beetles.
    pub pine_beetles: Months,
    constants: &'static Constants,
    hemisphere: Hemisphere,
    tighten: Tighten,
    pines_near: bool,
    oak_wilt_is_out: bool,
    /// The first and the last day from which a day may be looked for.
    asked: (NaiveDate, NaiveDate),
    /// The days laid out, the closed ones left out, and with them.
    open: [OnceCell<OpenDays>; 2],
    /// The day from which a best one was looked for last, and what was found: the closed days left out, and with them.
    best: [Cell<Last<Option<NaiveDate>>>; 2],
    /// The day after which turns were looked for last, and what was found.
    turns: RefCell<Last<Rc<[Turn]>>>,
}

/// The day that was asked about last, and what was found for it.
type Last<T> = Option<(NaiveDate, T)>;

/// The first day of a part of the year that comes after another day.
#[derive(Clone, Copy, Debug)]
pub(super) struct Turn {
    /// The day.
    pub day: NaiveDate,
    /// Its part of the year.
    pub part: PartOfYear,
    /// Whether it lies in the week before the months in which an oak may not be wounded.
    pub soon_closed: bool,
}

impl Calendar {
    /// Settles the season and the pests of the region. Days are looked for from the question's day on, or from one that
    /// lies at most `around` days away.
    pub(super) fn new(
        reference: &'static Reference,
        question: &Question,
        local: &Local,
        met: TakenAsMet,
        around: u64,
    ) -> Self {
        let constants = reference.constants;
        let species = question.tree.species;
        let region = question.region.as_deref();
        let hemisphere = question.place.hemisphere();
        // Neither disease is known in the south of the world, whatever the country.
        let north = region.is_some() || hemisphere == Hemisphere::North;
        let here = |mark, topic| {
            let cautious = reference
                .restrictions
                .iter()
                .find(|row| row.topic == topic && row.scope == Scope::North);
            (species.has(mark) && north)
                .then(|| disease(reference.disease_regions, cautious, topic, region))
        };
        let start = question.day.start();
        let around = Days::new(around);
        let away = |day: Option<NaiveDate>| day.unwrap_or(start);
        Self {
            season: season::of(&constants.timing, &question.season(), local),
            oak_wilt: here(Trait::Oak, Topic::OakWilt),
            ash_borer: here(Trait::Ash, Topic::AshBorer),
            pine_beetles: closed_months::cautious(reference.restrictions, Topic::PineBeetles),
            constants,
            hemisphere,
            tighten: question.tree.tighten,
            pines_near: species.has(Trait::Pine) && question.tree.same_genus_near == Some(true),
            oak_wilt_is_out: met.no_oak_wilt,
            asked: (
                away(start.checked_sub_days(around)),
                away(start.checked_add_days(around)),
            ),
            open: Default::default(),
            best: Default::default(),
            turns: RefCell::default(),
        }
    }

    /// Whether the oak-wilt months close the day.
    pub(super) fn oak_closed(&self, day: NaiveDate) -> bool {
        !self.oak_wilt_is_out && self.oak_wilt.is_some_and(|wilt| wilt.closed(day))
    }

    /// Whether a day lies in the oak-wilt months of a region that oak wilt is near.
    pub(super) fn oak_near(&self, day: NaiveDate) -> bool {
        !self.oak_wilt_is_out && self.oak_wilt.is_some_and(|wilt| wilt.near(day))
    }

    /// Whether oak wilt itself is an open question: no state was said.
    pub(super) fn oak_open(&self) -> bool {
        let assumed = |wilt: Disease| wilt.status == DiseaseStatus::Assumed;
        !self.oak_wilt_is_out && self.oak_wilt.is_some_and(assumed)
    }

    /// Whether the ash borer is there, near, or taken to be.
    pub(super) fn ash_borer_there(&self) -> bool {
        let there = |borer: Disease| borer.status != DiseaseStatus::NotKnown;
        self.ash_borer.is_some_and(there)
    }

    /// Whether the bark slips well enough on a day to try a ring.
    pub(super) fn slips(&self, day: NaiveDate) -> bool {
        self.season.is_open(day)
    }

    /// What a day's part of the year says to the methods.
    pub(super) fn part(&self, day: NaiveDate) -> PartOfYear {
        let (month, hemisphere) = (day.month(), self.hemisphere);
        let method = &self.constants.method;
        PartOfYear {
            sap_flow: method.sap_flow.hold(month, hemisphere),
            oak_saw: method.oak_saw.hold(month, hemisphere),
            heaven: method.heaven.holds(month, day.day(), hemisphere),
            pine_beetles: self.pine_beetles.hold(month, hemisphere),
            group_month: self.tighten.blocks(month),
            oak_wilt: self.oak_closed(day),
            oak_near: self.oak_near(day),
        }
    }

    /// A day that is named, and the last of its stretch, lies so many days before what ends it.
    fn margin(&self) -> u16 {
        self.constants.answer.margin_days as u16
    }

    /// The days laid out; with `closed` false the months that rule a ring out are left out of it.
    fn open(&self, closed: bool) -> &OpenDays {
        self.open[usize::from(closed)].get_or_init(|| self.lay_out(self.asked, closed))
    }

    /// The days from which a day may be looked for, and a year behind them.
    fn lay_out(&self, (first, last): (NaiveDate, NaiveDate), closed: bool) -> OpenDays {
        let last = last.checked_add_days(Days::new(YEAR_DAYS)).unwrap_or(last);
        let forbidden = |day: NaiveDate| closed && self.ring_closed(day);
        OpenDays::new(&self.season, (first, last), self.margin(), &forbidden)
    }

    /// Whether a day may be named for a ring: it and the week behind it lie inside the window and outside every month
    /// that rules the ring out; with `closed` false the months are left out.
    pub(super) fn may_name(&self, day: NaiveDate, closed: bool) -> bool {
        self.open(closed).counts(day).unwrap_or_else(|| {
            (0..self.margin()).all(|by| {
                day.checked_add_days(Days::new(by.into()))
                    .is_some_and(|day| {
                        self.season.is_open(day) && !(closed && self.ring_closed(day))
                    })
            })
        })
    }

    /// The first day of the stretch that is named for a ring from a day on, fixed before its headline is tested: the
    /// first best day; where no day is best up to two weeks that end on the day nearest to the best, which is never
    /// named alone.
    pub(super) fn first_best(&self, from: NaiveDate, closed: bool) -> Option<NaiveDate> {
        let last = &self.best[usize::from(closed)];
        if let Some((known, best)) = last.get()
            && known == from
        {
            return best;
        }
        let best = self.look_for_best(from, closed);
        last.set(Some((from, best)));
        best
    }

    fn look_for_best(&self, from: NaiveDate, closed: bool) -> Option<NaiveDate> {
        let may_name = |day: NaiveDate| self.may_name(day, closed);
        let (first, last) = self.asked;
        let best = if first <= from && from <= last {
            self.open(closed).best(&self.season, from)?
        } else {
            self.lay_out((from, from), closed)
                .best(&self.season, from)?
        };
        let goes_on = best.succ_opt().is_some_and(may_name);
        if self.season.is_best(best) && goes_on {
            return Some(best);
        }
        let word = self.season.verdict(best);
        let mut first = best;
        for _ in 1..self.constants.answer.stretch_days as usize {
            match first
                .pred_opt()
                .filter(|day| *day >= from && may_name(*day) && self.season.verdict(*day) == word)
            {
                Some(day) => first = day,
                None => break,
            }
        }
        (first < best || goes_on).then_some(first)
    }

    /// Whether a day lies in the week before the months in which an oak may not be wounded.
    pub(super) fn soon_closed(&self, day: NaiveDate) -> bool {
        self.oak_wilt.is_some()
            && !self.oak_closed(day)
            && (1..self.margin())
                .filter_map(|by| day.checked_add_days(Days::new(by.into())))
                .any(|day| self.oak_closed(day))
    }

    /// Whether a month rules the ring out on a day, apart from the bark: oak wilt, beetles in living pines near, or
    /// the group.
    pub(super) fn ring_closed(&self, day: NaiveDate) -> bool {
        self.oak_closed(day)
            || self.tighten.blocks(day.month())
            || self.pines_near && self.pine_beetles.hold(day.month(), self.hemisphere)
    }

    /// The later days within a year on which the methods apart from the ring may stand in another way: the first day of
    /// each part of the year, in the order of time. They depend on the day by its month and half-months only.
    pub(super) fn turns(&self, after: NaiveDate) -> Rc<[Turn]> {
        let mut last = self.turns.borrow_mut();
        if let Some((known, turns)) = last.as_ref()
            && *known == after
        {
            return turns.clone();
        }
        let turns: Rc<[Turn]> = self.look_for_turns(after).into();
        *last = Some((after, turns.clone()));
        turns
    }

    fn look_for_turns(&self, after: NaiveDate) -> Vec<Turn> {
        let last = after
            .checked_add_days(Days::new(YEAR_DAYS))
            .unwrap_or(after);
        let first_month = after.year() * 12 + after.month0() as i32;
        let mut turns: Vec<Turn> = Vec::new();
        // The month that it lies in, and twelve more.
        for month in first_month..=first_month + 12 {
            for day in TURNS {
                let (year, month) = (month.div_euclid(12), month.rem_euclid(12) as u32 + 1);
                let date = NaiveDate::from_ymd_opt(year, month, day);
                let Some(day) = date.filter(|date| after < *date && *date <= last) else {
                    continue;
                };
                let (part, soon_closed) = (self.part(day), self.soon_closed(day));
                let is_new = |turn: &Turn| turn.part != part || turn.soon_closed != soon_closed;
                if turns.iter().all(is_new) {
                    turns.push(Turn {
                        day,
                        part,
                        soon_closed,
                    });
                }
            }
        }
        turns
    }
}
