//! One tree with all that is settled about it, asked for one day after another.

use crate::models::condition::Case;
use crate::models::method;
use crate::models::method::{MethodLine, Standing};
use crate::models::outlook;
use crate::models::reach;
use crate::models::reach::Reach;
use crate::models::season;
use crate::models::season::Local;
use crate::question::Question;
use crate::reference::Reference;
use crate::terms::method::{Level, Method};
use crate::terms::months::Months;
use crate::terms::place::Hemisphere;
use crate::terms::species::{Trait, Vigor};
use crate::terms::tree::{Goal, Herbicide, Stem};
use crate::timing::Season;
use crate::timing::closed_months::{self, Scope, Topic};
use crate::timing::disease::{Disease, DiseaseStatus, disease};
use chrono::{Datelike, Days, NaiveDate};

/// What is settled before any day is looked at.
pub struct Facts<'a> {
    /// What is known.
    pub reference: &'static Reference,
    /// The question.
    pub question: &'a Question,
    /// What is known of the place.
    pub local: &'a Local,
    /// The reach.
    pub reach: Reach,
    /// The season.
    pub season: Season<'static>,
    /// Oak wilt in the region; none for other trees.
    pub oak_wilt: Option<Disease>,
    /// The ash borer in the region; none for other trees.
    pub ash_borer: Option<Disease>,
    /// When fresh wood of pine breeds beetles.
    pub pine_beetles: Months,
    /// Conditions that are taken as met.
    pub met: TakenAsMet,
}

impl<'a> Facts<'a> {
    /// Settles the season and the pests of the region.
    pub fn new(
        reference: &'static Reference,
        question: &'a Question,
        local: &'a Local,
        reach: Reach,
        met: TakenAsMet,
    ) -> Self {
        let season = season::of(&reference.constants.timing, &question.season(), local);
        let species = question.tree.species;
        let region = question.region.as_deref();
        // Neither disease is known in the south of the world, whatever the country.
        let north = region.is_some() || question.place.hemisphere() == Hemisphere::North;
        let here = |mark, topic| {
            let cautious = reference
                .restrictions
                .iter()
                .find(|row| row.topic == topic && row.scope == Scope::North);
            (species.has(mark) && north)
                .then(|| disease(reference.disease_regions, cautious, topic, region))
        };
        let oak_wilt = here(Trait::Oak, Topic::OakWilt);
        let ash_borer = here(Trait::Ash, Topic::AshBorer);
        Self {
            reference,
            question,
            local,
            reach,
            season,
            oak_wilt,
            ash_borer,
            pine_beetles: closed_months::cautious(reference.restrictions, Topic::PineBeetles),
            met,
        }
    }

    /// Whether the oak-wilt months close the day.
    pub fn oak_closed(&self, day: NaiveDate) -> bool {
        !self.met.no_oak_wilt && self.oak_wilt.is_some_and(|wilt| wilt.closed(day))
    }

    /// Whether a day lies in the oak-wilt months of a region that oak wilt is near.
    pub fn oak_near(&self, day: NaiveDate) -> bool {
        !self.met.no_oak_wilt && self.oak_wilt.is_some_and(|wilt| wilt.near(day))
    }

    /// Whether oak wilt itself is an open question: no state was said.
    pub fn oak_open(&self) -> bool {
        let assumed = |wilt: Disease| wilt.status == DiseaseStatus::Assumed;
        !self.met.no_oak_wilt && self.oak_wilt.is_some_and(assumed)
    }

    /// Whether the ash borer is there, near, or taken to be.
    pub fn ash_borer(&self) -> bool {
        let there = |borer: Disease| borer.status != DiseaseStatus::NotKnown;
        self.ash_borer.is_some_and(there)
    }

    /// Whether the bark slips well enough on a day to try a ring.
    pub fn slips(&self, day: NaiveDate) -> bool {
        self.season.p_for_rules(day) >= self.reference.constants.timing.p_test
    }

    /// The case of a stem on a day under an outcome of the reach.
    pub fn case(&self, stem: &'a Stem, day: NaiveDate, outcome: reach::Outcome) -> Case<'_> {
        Case {
            tree: &self.question.tree,
            hemisphere: self.question.place.hemisphere(),
            stem,
            dbh_mm: stem.dbh.mm(),
            base_over_dbh: self.reference.constants.base_over_dbh,
            constants: &self.reference.constants.method,
            pine_beetles: self.pine_beetles,
            reach: &self.reach,
            outcome,
            month: day.month(),
            day: day.day(),
            slips: Some(self.slips(day)),
            oak_wilt: self.oak_closed(day),
            oak_near: self.oak_near(day),
            ash_borer: self.ash_borer(),
            whole_clone: if self.met.whole_clone {
                Some(true)
            } else {
                self.question.tree.whole_clone
            },
            name_known: self.met.species_suits,
            name_against: false,
            ignore_months: false,
            herbicide: self.question.tree.herbicide,
            line_open: false,
            last_resort: false,
        }
    }

    /// The outcome that methods are judged under: a reach that is not checked, and does not matter since the tree is
    /// pulled or left alone either way, counts as inside.
    pub fn outcome(&self) -> reach::Outcome {
        match self.reach.outcome {
            reach::Outcome::NotChecked => reach::Outcome::Inside,
            outcome => outcome,
        }
    }

    /// The nine methods of a case, with their reasons.
    pub fn judge(&self, case: &Case<'_>) -> Vec<MethodLine> {
        method::judge(self.reference.method_rules, case)
    }

    /// How the nine methods stand in a case.
    pub fn levels(&self, case: &Case<'_>) -> Levels {
        method::levels(self.reference.method_rules, case)
    }

    /// The nine methods of a stem on a day.
    pub fn lines(&self, stem: &'a Stem, day: NaiveDate) -> Levels {
        self.levels(&self.case(stem, day, self.outcome()))
    }

    /// The same as if the bark slipped that day and no month of its own ruled the ring out.
    pub fn lines_in_season(&self, stem: &'a Stem, day: NaiveDate) -> Levels {
        let mut case = self.case(stem, day, self.outcome());
        case.slips = None;
        case.oak_wilt = false;
        case.oak_near = false;
        case.ignore_months = true;
        self.levels(&case)
    }

    /// The nine methods of a stem on a day, as if this were said of herbicide.
    pub fn lines_with(&self, stem: &'a Stem, day: NaiveDate, herbicide: Herbicide) -> Levels {
        let mut case = self.case(stem, day, self.outcome());
        case.herbicide = herbicide;
        self.levels(&case)
    }

    /// The same without the ring: its days are looked for apart.
    pub fn lines_without_ring(
        &self,
        stem: &'a Stem,
        day: NaiveDate,
        herbicide: Herbicide,
    ) -> Levels {
        let mut case = self.case(stem, day, self.outcome());
        case.herbicide = herbicide;
        case.slips = Some(false);
        self.levels(&case)
    }

    /// The best of the methods that `may` allows.
    pub fn best(&self, lines: &Levels, stem: &Stem, may: impl Fn(&Standing) -> bool) -> Method {
        let constants = &self.reference.constants.method;
        method::headline(
            lines,
            constants,
            self.question.tree.goal,
            stem.dbh.mm(),
            may,
        )
    }

    /// The method at the head of some lines. Where the tree shall only be dead, and a ring is likely to kill fewer
    /// than half, the best of those that kill more goes before it.
    pub fn head(&self, lines: &Levels, stem: &Stem) -> Method {
        let head = self.best(lines, stem, |_| true);
        if head == Method::BarkRing && self.gives_way(stem) {
            return self.kills_more(lines, stem).unwrap_or(head);
        }
        head
    }

    /// Whether the ring gives way to what kills more: the tree shall only be dead, and a ring kills few.
    pub fn gives_way(&self, stem: &Stem) -> bool {
        self.question.tree.goal == Goal::Kill && self.kills_few(stem)
    }

    /// Whether a ring is likely to kill fewer than half by the end of season 3.
    pub fn kills_few(&self, stem: &Stem) -> bool {
        outlook::likely_dead(
            self.reference.outlook,
            self.reference.outlook_species,
            self.question.tree.species,
            stem.dbh.mm(),
        )
        .is_some_and(|share| share < self.reference.constants.answer.few_dead)
    }

    /// The best method at possible or better that kills more than a ring: herbicide, pulling, and felling where it
    /// does not sprout.
    pub fn kills_more(&self, lines: &Levels, stem: &Stem) -> Option<Method> {
        let species = self.question.tree.species;
        let method = self.best(lines, stem, |line| match line.method {
            Method::Frill | Method::BasalBark | Method::CutStump | Method::PullOrDig => true,
            Method::Fell => species.basal == Vigor::None && species.suckering == Vigor::None,
            Method::BarkRing | Method::SawRing | Method::RepeatCutting | Method::LeaveIt => false,
        });
        (method != Method::LeaveIt).then_some(method)
    }

    /// Whether the ring stands at the head on a day, and the bark slips.
    pub fn ring_heads(&self, day: NaiveDate, herbicide: Herbicide) -> bool {
        let stem = self.question.tree.heading();
        self.slips(day)
            && self.head(&self.lines_with(stem, day, herbicide), stem) == Method::BarkRing
    }

    /// A day that is named, and the last of its stretch, lies so many days before what ends it.
    fn margin(&self) -> u64 {
        self.reference.constants.answer.margin_days as u64
    }

    /// Whether a day may be named for a ring: it and the week behind it lie inside the window and outside every month
    /// that rules the ring out; with `closed` false the months are left out.
    pub fn may_name(&self, day: NaiveDate, closed: bool) -> bool {
        (0..self.margin()).all(|by| {
            day.checked_add_days(Days::new(by))
                .is_some_and(|day| self.season.is_open(day) && !(closed && self.ring_closed(day)))
        })
    }

    /// The first day of the stretch that is named for a ring from a day on, fixed before its headline is tested: the
    /// first best day; where no day is best up to two weeks that end on the day nearest to the best, which is never
    /// named alone.
    pub fn first_best(&self, from: NaiveDate, closed: bool) -> Option<NaiveDate> {
        let may_name = |day: NaiveDate| self.may_name(day, closed);
        let best = self.season.best_day(from, &|day| !may_name(day))?;
        let goes_on = best.succ_opt().is_some_and(may_name);
        if self.season.is_best(best) && goes_on {
            return Some(best);
        }
        let word = self.season.verdict(best);
        let mut first = best;
        for _ in 1..self.reference.constants.answer.stretch_days as usize {
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
    pub fn soon_closed(&self, day: NaiveDate) -> bool {
        !self.oak_closed(day)
            && (1..self.margin())
                .filter_map(|by| day.checked_add_days(Days::new(by)))
                .any(|day| self.oak_closed(day))
    }

    /// Whether a month rules the ring out on a day, apart from the bark: oak wilt, beetles in living pines near, or
    /// the group.
    pub fn ring_closed(&self, day: NaiveDate) -> bool {
        self.oak_closed(day) || self.question.tree.tighten.blocks(day.month()) || {
            let pines = self.question.tree.species.has(Trait::Pine)
                && self.question.tree.same_genus_near == Some(true);
            let hemisphere = self.question.place.hemisphere();
            pines && self.pine_beetles.hold(day.month(), hemisphere)
        }
    }
}

/// How the nine methods stand.
pub type Levels = [Standing; 9];

/// The level of one method.
pub fn level(lines: &Levels, method: Method) -> Level {
    lines
        .iter()
        .find(|line| line.method == method)
        .map_or(Level::RuledOut, |line| line.level)
}

/// Conditions taken as met, which no field of the question carries.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct TakenAsMet {
    /// Every stem of the clone can be ringed.
    pub whole_clone: bool,
    /// Oak wilt is not in the state.
    pub no_oak_wilt: bool,
    /// An unknown species is one that a ring suits.
    pub species_suits: bool,
}
