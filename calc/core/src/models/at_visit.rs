//! At a visit: from what is seen to what to do now, when to come back, and whether the ring failed.
//! Built from the intervals and findings of the response notes (E); the joining of them is our own assumption.

use crate::models::visits::{Visit, VisitConstants, VisitKind, season_on};
use crate::terms::place::Hemisphere;
use crate::terms::words::words;
use chrono::{Datelike, NaiveDate};
use serde::Serialize;

words! {
    /// What may be seen at a visit.
    pub enum Seen {
        /// New bark across the ring, or a strip that was missed.
        Bridge,
        /// Sprouts below the ring.
        Sprouts,
        /// Suckers from the roots.
        Suckers,
        /// A full crown.
        CrownFull,
        /// A thin crown.
        CrownThin,
        /// A bare crown in the growing season.
        CrownBare,
        /// Fungus, or limbs on the ground.
        Decay,
        /// Nothing of all this.
        Nothing,
    }
}
words! {
    /// What to do now.
    pub enum Act {
        /// Keep out from under it: the zone counts.
        KeepOut,
        /// Cut the bridge out and scrape.
        ReopenBridge,
        /// Take the sprouts off.
        TakeSprouts,
        /// Cut or treat the suckers.
        TakeSuckers,
        /// Ring it again, wider.
        RingAgain,
        /// Nothing: wait.
        Wait,
    }
}

words! {
    /// Whether the ring failed.
    pub enum RingJudged {
        /// It is too soon to tell.
        TooSoon,
        /// It works.
        Working,
        /// It failed.
        Failed,
        /// The stem is dead above the ring.
        Dead,
        /// So late the crown tells, and nothing was said of it.
        LookAtCrown,
    }
}

/// The advice at a visit.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct Advice {
    /// What to do now, the most pressing first.
    pub acts: Vec<Act>,
    /// How it stands.
    pub judged: RingJudged,
    /// Come back by this day.
    #[serde(serialize_with = "crate::terms::day::maybe_day")]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<String>"),
        ts(type = "string | null")
    )]
    pub come_back: Option<NaiveDate>,
}

/// Advice at a visit.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct VisitAnswer {
    /// The day of the ring.
    #[serde(serialize_with = "crate::terms::day::maybe_day")]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<String>"),
        ts(type = "string | null")
    )]
    pub ringed: Option<NaiveDate>,
    /// The day of the visit.
    #[serde(serialize_with = "crate::terms::day::maybe_day")]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<String>"),
        ts(type = "string | null")
    )]
    pub day: Option<NaiveDate>,
    /// The advice.
    pub advice: Option<Advice>,
    /// Why there is none.
    pub why_not: Option<NoAdvice>,
}

words! {
    /// Why there is no advice.
    pub enum NoAdvice {
        /// The visit is before the ring.
        BeforeTheRing,
        /// Full and bare, or nothing and something: they can't both be.
        Contradiction,
        /// The plan has no visit of that number.
        NoSuchVisit,
        /// No ring is advised, and no day of one was given.
        NoRing,
        /// Nobody may work at this tree, or what it could hit is not checked.
        Stopped,
    }
}

/// Advice for a visit on `day` to a tree ringed on `ringed`, whose visits are `plan`; in the south the seasons are
/// turned over.
///
/// # Errors
/// [`NoAdvice`] says why there is none.
///
/// ```
/// # use calc::question::read;
/// # let reference = calc_data::whole();
/// let question = read(reference, &examples::named("do")).expect("a good question");
/// use calc::models::{at_visit::{Seen, advise}, visits::after_ring};
/// use calc::terms::place::Hemisphere::North;
/// let (constants, ringed) = (&reference.constants.visits, question.day.start());
/// let visits = after_ring(constants, question.tree.species, North, ringed);
/// let advice = advise(constants, ringed, visits[0].to, &visits, &[Seen::Bridge], North);
/// assert_eq!(advice.expect("a day after the ring").acts.len(), 1);
/// ```
pub fn advise(
    constants: &VisitConstants,
    ringed: NaiveDate,
    day: NaiveDate,
    plan: &[Visit],
    seen: &[Seen],
    hemisphere: Hemisphere,
) -> Result<Advice, NoAdvice> {
    if day < ringed {
        return Err(NoAdvice::BeforeTheRing);
    }
    let has = |what: Seen| seen.contains(&what);
    let crowns = [Seen::CrownFull, Seen::CrownThin, Seen::CrownBare];
    if crowns.iter().filter(|crown| has(**crown)).count() > 1
        || (has(Seen::Nothing) && seen.len() > 1)
    {
        return Err(NoAdvice::Contradiction);
    }
    let season = season_on(constants, ringed, day, hemisphere);
    let autumn = constants.autumn.hold(day.month(), hemisphere);
    let second_autumn = season > 2 || (season == 2 && autumn);
    let may_fail = f64::from(season) >= constants.fails_from_season;
    let judged = if has(Seen::CrownBare) && second_autumn {
        RingJudged::Dead
    } else if has(Seen::CrownFull) && may_fail {
        RingJudged::Failed
    } else if has(Seen::CrownThin) {
        RingJudged::Working
    } else if may_fail && !crowns.iter().any(|crown| has(*crown)) {
        RingJudged::LookAtCrown
    } else {
        RingJudged::TooSoon
    };
    let mut acts = Vec::new();
    if has(Seen::Decay) || has(Seen::CrownBare) || has(Seen::CrownThin) {
        acts.push(Act::KeepOut);
    }
    if has(Seen::Bridge) {
        acts.push(Act::ReopenBridge);
    }
    if judged == RingJudged::Failed {
        acts.push(Act::RingAgain);
    }
    if has(Seen::Sprouts) {
        acts.push(Act::TakeSprouts);
    }
    if has(Seen::Suckers) {
        acts.push(Act::TakeSuckers);
    }
    if acts.is_empty() {
        acts.push(Act::Wait);
    }
    Ok(Advice {
        come_back: come_back(constants, day, plan, has(Seen::Bridge)),
        acts,
        judged,
    })
}

/// The next visit of the plan; sooner where a bridge was opened again.
fn come_back(
    constants: &VisitConstants,
    day: NaiveDate,
    plan: &[Visit],
    bridge: bool,
) -> Option<NaiveDate> {
    let weeks = day.checked_add_days(chrono::Days::new(constants.recheck_to_days as u64));
    let next = plan
        .iter()
        .filter(|visit| visit.from > day)
        .map(|visit| visit.to)
        .min();
    let yearly = plan.iter().any(|visit| visit.kind == VisitKind::Yearly);
    match (bridge, next) {
        (true, Some(next)) => weeks.map(|weeks| weeks.min(next)),
        (true, None) => weeks,
        (false, Some(next)) => Some(next),
        (false, None) if yearly => day.checked_add_days(chrono::Days::new(365)),
        (false, None) => None,
    }
}
