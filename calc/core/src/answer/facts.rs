//! One tree with all that is settled about it, asked for one day after another.

use super::calendar::{Calendar, TakenAsMet};
use crate::models::condition::{Case, CaseKey, PartOfYear, RowsOfSize};
use crate::models::method;
use crate::models::method::{MethodLine, Standing};
use crate::models::outlook;
use crate::models::reach;
use crate::models::reach::Reach;
use crate::models::season::Local;
use crate::question::Question;
use crate::reference::Reference;
use crate::terms::method::{Level, Method};
use crate::terms::quantity::inches;
use crate::terms::species::SproutVigor;
use crate::terms::tree::{Condition, Goal, Herbicide, Stem};
use chrono::NaiveDate;
use core::cell::RefCell;

/// What is settled before any day is looked at.
pub(super) struct Facts<'a> {
    /// What is known.
    pub reference: &'static Reference,
    /// The question.
    pub question: &'a Question,
    /// The stem that the answer speaks of.
    pub stem: &'a Stem,
    /// What is known of the place.
    pub local: &'a Local,
    /// The reach.
    pub reach: &'a Reach,
    /// The days.
    pub calendar: &'a Calendar,
    /// Conditions that are taken as met.
    pub met: TakenAsMet,
    /// Whether outcome and headline are all that is asked for: nothing that stands beside them is looked for then.
    pub head_alone: bool,
    known: &'a Known,
}

/// How the methods stood in the cases that were judged already. It holds for one tree: of the changes that a search asks
/// about, the table sees none but those that a case holds.
#[derive(Debug, Default)]
pub(super) struct Known {
    levels: RefCell<Vec<(CaseKey, Levels)>>,
    sizes: RefCell<Vec<(f64, RowsOfSize)>>,
}

impl<'a> Facts<'a> {
    /// Brings together what is settled.
    pub(super) fn new(
        reference: &'static Reference,
        question: &'a Question,
        local: &'a Local,
        (reach, calendar): (&'a Reach, &'a Calendar),
        met: TakenAsMet,
        known: &'a Known,
    ) -> Self {
        Self {
            reference,
            question,
            stem: question.tree.heading(),
            local,
            reach,
            calendar,
            met,
            head_alone: false,
            known,
        }
    }

    /// The rows of the table that speak of a stem's size.
    fn sizes(&self, dbh_in: f64) -> RowsOfSize {
        let mut sizes = self.known.sizes.borrow_mut();
        if let Some((_, rows)) = sizes.iter().rev().find(|(inches, _)| *inches == dbh_in) {
            return *rows;
        }
        let base = dbh_in * self.reference.constants.base_over_dbh;
        let rows = RowsOfSize::of(
            self.reference.method_rules,
            &self.question.tree,
            dbh_in,
            base,
        );
        sizes.push((dbh_in, rows));
        rows
    }

    /// The case of a stem on a day under an outcome of the reach.
    pub(super) fn case(
        &self,
        stem: &Stem,
        day: NaiveDate,
        outcome: reach::ReachOutcome,
    ) -> Case<'_> {
        let part = self.calendar.part(day);
        self.case_in(stem, part, Some(self.calendar.slips(day)), outcome)
    }

    fn case_in(
        &self,
        stem: &Stem,
        part: PartOfYear,
        slips: Option<bool>,
        outcome: reach::ReachOutcome,
    ) -> Case<'_> {
        let tree = &self.question.tree;
        let dbh_in = inches(stem.dbh.mm());
        Case {
            tree,
            dbh_mm: stem.dbh.mm(),
            base_over_dbh: self.reference.constants.base_over_dbh,
            constants: &self.reference.constants.method,
            sizes: self.sizes(dbh_in),
            over_group_size: tree.tighten.too_large(stem.dbh.mm()),
            dead: tree.condition == Condition::Dead || stem.live_share <= 0.0,
            surroundings: self.reach.surroundings(),
            outcome,
            part,
            slips,
            ash_borer: self.calendar.ash_borer_there(),
            whole_clone: if self.met.whole_clone {
                Some(true)
            } else {
                tree.whole_clone
            },
            name_known: self.met.species_suits,
            name_against: false,
            ignore_months: false,
            herbicide: tree.herbicide,
            line_open: false,
            last_resort: false,
        }
    }

    /// The outcome that methods are judged under: a reach that is not checked, and does not matter since the tree is
    /// pulled or left alone either way, counts as inside.
    pub(super) fn outcome(&self) -> reach::ReachOutcome {
        match self.reach.outcome {
            reach::ReachOutcome::NotChecked => reach::ReachOutcome::Inside,
            outcome => outcome,
        }
    }

    /// The nine methods of a case, with their reasons.
    pub(super) fn judge(&self, case: &Case<'_>) -> Vec<MethodLine> {
        method::judge(self.reference.method_rules, case)
    }

    /// How the nine methods stand in a case.
    pub(super) fn levels(&self, case: &Case<'_>) -> Levels {
        let key = case.key();
        let mut known = self.known.levels.borrow_mut();
        if let Some((_, levels)) = known.iter().find(|(known, _)| *known == key) {
            return *levels;
        }
        let levels = method::levels(self.reference.method_rules, case);
        known.push((key, levels));
        levels
    }

    /// The nine methods of a stem on a day.
    pub(super) fn lines(&self, stem: &Stem, day: NaiveDate) -> Levels {
        self.levels(&self.case(stem, day, self.outcome()))
    }

    /// The same as if the bark slipped that day and no month of its own ruled the ring out.
    pub(super) fn lines_in_season(&self, stem: &Stem, day: NaiveDate) -> Levels {
        let mut case = self.case(stem, day, self.outcome());
        case.slips = None;
        case.part.oak_wilt = false;
        case.part.oak_near = false;
        case.ignore_months = true;
        self.levels(&case)
    }

    /// The nine methods of a stem on a day, as if this were said of herbicide.
    pub(super) fn lines_with(&self, stem: &Stem, day: NaiveDate, herbicide: Herbicide) -> Levels {
        let mut case = self.case(stem, day, self.outcome());
        case.herbicide = herbicide;
        self.levels(&case)
    }

    /// The same of the stem that the answer speaks of, without the ring: its days are looked for apart.
    pub(super) fn lines_without_ring(&self, part: PartOfYear, herbicide: Herbicide) -> Levels {
        let mut case = self.case_in(self.stem, part, Some(false), self.outcome());
        case.herbicide = herbicide;
        self.levels(&case)
    }

    /// The best of the methods that `may` allows.
    pub(super) fn best(
        &self,
        lines: &Levels,
        stem: &Stem,
        may: impl Fn(&Standing) -> bool,
    ) -> Method {
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
    pub(super) fn head(&self, lines: &Levels, stem: &Stem) -> Method {
        self.head_if(lines, stem, self.met)
    }

    /// As [`Self::head`], with these conditions taken as met.
    pub(super) fn head_if(&self, lines: &Levels, stem: &Stem, met: TakenAsMet) -> Method {
        // Nobody rings a tree that has no name.
        let ringed = !self.question.tree.species.unknown || met.species_suits;
        let head = self.best(lines, stem, |line| {
            ringed || line.method != Method::BarkRing
        });
        if head == Method::BarkRing && self.gives_way(stem) {
            return self.kills_more(lines, stem).unwrap_or(head);
        }
        head
    }

    /// Whether the ring gives way to what kills more: the tree shall only be dead, and a ring kills few.
    pub(super) fn gives_way(&self, stem: &Stem) -> bool {
        self.question.tree.goal == Goal::Kill && self.kills_few(stem)
    }

    /// Whether a ring is likely to kill fewer than half by the end of season 3.
    pub(super) fn kills_few(&self, stem: &Stem) -> bool {
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
    pub(super) fn kills_more(&self, lines: &Levels, stem: &Stem) -> Option<Method> {
        let species = self.question.tree.species;
        let method = self.best(lines, stem, |line| match line.method {
            Method::Frill | Method::BasalBark | Method::CutStump | Method::PullOrDig => true,
            Method::Fell => {
                species.basal == SproutVigor::None && species.suckering == SproutVigor::None
            }
            Method::BarkRing | Method::SawRing | Method::RepeatCutting | Method::LeaveIt => false,
        });
        (method != Method::LeaveIt).then_some(method)
    }

    /// Whether the ring stands at the head on a day, and the bark slips.
    pub(super) fn ring_heads(&self, day: NaiveDate, herbicide: Herbicide) -> bool {
        self.calendar.slips(day)
            && self.head(&self.lines_with(self.stem, day, herbicide), self.stem) == Method::BarkRing
    }
}

/// How the nine methods stand, in the order of `Method::ALL`.
pub(super) type Levels = [Standing; 9];

/// The level of one method.
pub(super) fn level(lines: &Levels, method: Method) -> Level {
    lines[method as usize].level
}
