//! What a plan is made from: trees, work days and their hours, units and how much of each may go a year.

use chrono::NaiveDate;

/// A day on which the crew works.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WorkDay {
    /// The day.
    pub day: NaiveDate,
    /// Person-minutes of all crews.
    pub minutes: f64,
    /// Whether trees are ringed on it; later years' days take visits only.
    pub rings: bool,
    /// Whether the crew agreed to it; later years' days are supposed to be the same week days.
    pub agreed: bool,
}

/// A unit of land, with what may be killed of it in the season.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct PlanUnit {
    /// Basal area, m², at most; none where nothing limits it.
    pub limit_m2: Option<f64>,
    /// Crown area, m², at most: what a floor of canopy leaves; none where nothing limits it.
    pub crown_limit_m2: Option<f64>,
}

/// One visit of a tree ringed on some day: the work days on which it can be made, and who pays for it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct VisitNeed {
    /// Its place among the visits of the answer.
    pub index: u8,
    /// First work day, by its place in [`Property::days`].
    pub from: usize,
    /// Behind the last one; equal to `from` where no work day lies in its window.
    pub to: usize,
    /// Whether it is the first look, which costs other minutes than those to take sprouts off.
    pub first_look: bool,
}

/// Visits by day of ringing: trees of one species in one half of the world share them.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Profile {
    /// For each work day, in the order of [`Property::days`], the visits that cost minutes.
    pub after: Vec<Vec<VisitNeed>>,
}

/// A tree as a plan sees it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PlanTree {
    /// Its unit, by place in [`Property::units`].
    pub unit: usize,
    /// Its days, by place in [`Property::classes`].
    pub class: usize,
    /// Its visits, by place in [`Property::profiles`].
    pub profile: usize,
    /// What it is worth to ring it while the bark slips: priority times order.
    pub value: f64,
    /// Mean person-minutes of the ring where the bark slips, where it is tight, and of the walk.
    pub work: [f64; 3],
    /// Mean person-minutes of the first look, and of a visit to take sprouts off.
    pub visits: [f64; 2],
    /// Basal area of its stems, m².
    pub basal_m2: f64,
    /// Area of its crown, m².
    pub crown_m2: f64,
    /// The work day that somebody chose, by place in [`Property::days`].
    pub pinned: Option<usize>,
}

impl PlanTree {
    /// Person-minutes of the ring on a day with this probability of slip.
    #[must_use]
    pub fn minutes(&self, p: f64) -> f64 {
        let [slip, tight, walk] = self.work;
        p * slip + (1.0 - p) * tight + walk
    }

    /// Person-minutes of a visit.
    #[must_use]
    pub fn visit_minutes(&self, visit: &VisitNeed) -> f64 {
        self.visits[usize::from(!visit.first_look)]
    }
}

/// A day and its probability of slip.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RingDay {
    /// The work day, by place in [`Property::days`].
    pub day: usize,
    /// Probability of slip, 0 to 1, rounded to 0.005.
    pub p: f64,
}

/// Days of a class, the likeliest first, the earlier of equals.
pub(crate) fn likeliest_first(days: &[RingDay]) -> Vec<RingDay> {
    let mut days = days.to_vec();
    days.sort_by(|a, b| b.p.total_cmp(&a.p).then(a.day.cmp(&b.day)));
    days
}

/// Person-minutes that going to a unit is charged, where the crew is in no other place of it on the day: they choose
/// between days, and are no minutes of the plan.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Enter {
    /// For a visit.
    pub to_visit: f64,
    /// For a ring.
    pub to_ring: f64,
}

/// A list of trees, and what there is to do them with. Trees stand in the order of their ids: ties go by it.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Property {
    /// The trees.
    pub trees: Vec<PlanTree>,
    /// For each class of trees alike in place and species: the days on which they may be ringed, in order.
    pub classes: Vec<Vec<RingDay>>,
    /// Visits by species.
    pub profiles: Vec<Profile>,
    /// Work days, in order.
    pub days: Vec<WorkDay>,
    /// Units of land.
    pub units: Vec<PlanUnit>,
    /// What going there is charged.
    pub enter: Enter,
}

impl Property {
    /// The place of a work day among its days, which stand in order, each once; none where it is no work day.
    pub(crate) fn day_at(&self, day: NaiveDate) -> Option<usize> {
        self.days.binary_search_by_key(&day, |it| it.day).ok()
    }

    /// The days on which a tree may be ringed: the chosen one alone where somebody chose.
    pub(crate) fn choices<'a>(&'a self, tree: &'a PlanTree) -> impl Iterator<Item = RingDay> + 'a {
        self.classes[tree.class]
            .iter()
            .copied()
            .filter(|choice| tree.pinned.is_none_or(|day| day == choice.day))
    }

    /// Visits of a tree ringed on a day.
    pub(crate) fn visits(&self, tree: &PlanTree, day: usize) -> &[VisitNeed] {
        self.profiles[tree.profile]
            .after
            .get(day)
            .map_or(&[], Vec::as_slice)
    }
}
