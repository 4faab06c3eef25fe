//! Puts the property together, tree by tree: what trees share stands once.

use crate::need::Need;
use crate::property::{Enter, PlanTree, PlanUnit, Profile, Property, RingDay, VisitNeed, WorkDay};
use calc::models::visits::{self, VisitConstants, VisitKind};
use calc::terms::place::Hemisphere;
use calc::terms::species::Species;
use calc_data::list::PlanConstants;
use chrono::NaiveDate;
use std::collections::BTreeMap;

/// The constants that a plan is made by: when visits are due, and what a plan assumes.
#[derive(Clone, Copy, Debug)]
pub struct PlanningConstants<'a> {
    /// When visits are due.
    pub visits: &'a VisitConstants,
    /// What a plan assumes.
    pub own: &'a PlanConstants,
    /// Metres that people walk in a minute.
    pub walk_m_per_min: f64,
}

/// What a row of a list says beyond its question.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Listed {
    /// Its unit, by place in the units.
    pub unit: usize,
    /// Priority times order.
    pub value: f64,
    /// The day that somebody chose.
    pub pinned: Option<NaiveDate>,
    /// Area of its crown, m².
    pub crown_m2: f64,
    /// Person-minutes that a minute of work at it costs: 2 where two people work at a tree.
    pub heads: f64,
    /// What the walk to it is multiplied by.
    pub walk: f64,
}

/// Puts a [`Property`] together.
#[derive(Debug)]
pub struct Builder<'a> {
    constants: PlanningConstants<'a>,
    property: Property,
    /// The place of each class, by its days and the bits of their probabilities.
    classes: BTreeMap<Vec<(usize, u64)>, usize>,
    /// Species and hemisphere of each profile.
    known: Vec<(&'static str, Hemisphere)>,
}

impl<'a> Builder<'a> {
    /// Begins with the work days, in order, and the units.
    #[must_use]
    pub fn new(constants: PlanningConstants<'a>, days: Vec<WorkDay>, units: Vec<PlanUnit>) -> Self {
        Self {
            constants,
            property: Property {
                days,
                units,
                enter: Enter {
                    to_visit: constants.own.enter_to_visit,
                    to_ring: constants.own.enter_to_ring,
                },
                ..Property::default()
            },
            classes: BTreeMap::new(),
            known: Vec::new(),
        }
    }

    /// Takes a tree in; of its days those count on which the crew rings.
    pub fn add(&mut self, need: &Need, species: &Species, hemisphere: Hemisphere, listed: Listed) {
        let on = |day: NaiveDate| {
            let at = self.property.day_at(day)?;
            self.property.days[at].rings.then_some(at)
        };
        let choices: Vec<RingDay> = need
            .days
            .iter()
            .filter_map(|(day, p)| {
                Some(RingDay {
                    day: on(*day)?,
                    p: *p,
                })
            })
            .collect();
        // A day that is no work day is no day of this tree: it stays out, and the plan says so.
        let pinned = listed.pinned.map(|day| on(day).unwrap_or(usize::MAX));
        let class = self.class(choices);
        let profile = self.profile(species, hemisphere);
        let means = &need.means;
        self.property.trees.push(PlanTree {
            unit: listed.unit,
            class,
            profile,
            value: listed.value,
            work: [means.slip, means.tight, means.walk * listed.walk].map(|it| it * listed.heads),
            visits: [means.first_look, means.sprouts]
                .map(|it| (it + means.walk * (listed.walk - 1.0)) * listed.heads),
            basal_m2: need.basal_m2,
            crown_m2: listed.crown_m2,
            pinned,
        });
    }

    /// The class of some days, which stands once: thousands of trees share it.
    fn class(&mut self, choices: Vec<RingDay>) -> usize {
        let key = choices.iter().map(|it| (it.day, it.p.to_bits())).collect();
        let classes = &mut self.property.classes;
        *self.classes.entry(key).or_insert_with(|| {
            classes.push(choices);
            classes.len() - 1
        })
    }

    fn profile(&mut self, species: &Species, hemisphere: Hemisphere) -> usize {
        let key = (species.scientific, hemisphere);
        if let Some(at) = self.known.iter().position(|known| *known == key) {
            return at;
        }
        let days = &self.property.days;
        let after = days.iter().map(|day| {
            if !day.rings {
                return Vec::new();
            }
            let visits = visits::after_ring(self.constants.visits, species, hemisphere, day.day);
            let mut needs = Vec::new();
            for (index, visit) in visits.iter().enumerate() {
                let first_look = visit.kind == VisitKind::Recheck;
                if f64::from(visit.season) <= self.constants.own.plan_years
                    && (first_look || visit.is_work())
                {
                    needs.push(VisitNeed {
                        index: index as u8,
                        from: days.partition_point(|day| day.day < visit.from),
                        to: days.partition_point(|day| day.day <= visit.to),
                        first_look,
                    });
                }
            }
            needs
        });
        let after = after.collect();
        self.known.push(key);
        self.property.profiles.push(Profile { after });
        self.property.profiles.len() - 1
    }

    /// The property.
    #[must_use]
    pub fn finish(self) -> Property {
        self.property
    }
}
