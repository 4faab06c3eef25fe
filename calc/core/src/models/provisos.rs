//! What the work must keep to, beside its steps: wood that breeds beetles goes, a path is closed, who may fell.

use crate::models::condition::Case;
use crate::models::reach::ReachOutcome;
use crate::terms::method::Method;
use crate::terms::species::{SproutVigor, Suitability, Trait};
use crate::terms::tree::Herbicide;
use crate::terms::words::words;

words! {
    /// Something that a step must carry.
    pub enum Proviso {
        /// Fresh pine breeds beetles: it is taken away or peeled within three weeks, or the work waits for October.
        TakeAwayOrPeel,
        /// Fresh elm breeds the beetles of elm disease: its bark comes off, or it is chipped.
        BarkOff,
        /// Only someone trained to fell cuts it down.
        TrainedToFell,
        /// It is cut down by hand and thicker than a small stem: felling needs training.
        FellingNeedsTraining,
        /// The path is closed and watched for the hour.
        PathClosed,
        /// Killed standing near something, it is cut down dead, 30 days later, by someone trained.
        CutDownDead,
        /// A dead ash is brittle: it is felled, or people are kept out.
        DeadAshBrittle,
        /// Its sprouts are cut three times a season.
        SproutsThreeTimes,
    }
}

/// The work that is advised.
pub struct AdvisedWork<'a> {
    /// The stem on the advised day.
    pub case: &'a Case<'a>,
    /// The method at the head.
    pub method: Method,
    /// Whether only a professional may do it.
    pub by_professional: bool,
    /// Up to here a stem is small, mm.
    pub small_mm: f64,
}

/// What holds for the work, the most pressing first. A professional knows who may fell.
#[must_use]
pub fn of(work: &AdvisedWork<'_>) -> Vec<Proviso> {
    let case = work.case;
    let has = |mark: Trait| case.tree.species.has(mark);
    let trained = trained_to_fell(case.outcome, work.by_professional, work.method);
    let inside = case.outcome == ReachOutcome::Inside;
    let sprouts = case.tree.species.suitability == Suitability::NotAlone
        && case.tree.species.basal != SproutVigor::None;
    let ours = !work.by_professional;
    let rules = [
        (Proviso::TrainedToFell, trained),
        (
            Proviso::FellingNeedsTraining,
            // Felling says so in its own steps.
            ours && !trained
                && matches!(work.method, Method::CutStump | Method::RepeatCutting)
                && case.dbh_mm > work.small_mm,
        ),
        (
            Proviso::PathClosed,
            ours && case.surroundings.trail && inside,
        ),
        (
            Proviso::CutDownDead,
            inside && matches!(work.method, Method::Frill | Method::BasalBark),
        ),
        (Proviso::TakeAwayOrPeel, breeds_beetles(case, work.method)),
        (
            Proviso::BarkOff,
            has(Trait::AmericanElm) && cuts_down(work.method),
        ),
        (
            Proviso::DeadAshBrittle,
            has(Trait::Ash) && work.method != Method::PullOrDig,
        ),
        (
            Proviso::SproutsThreeTimes,
            sprouts
                && case.herbicide == Herbicide::No
                && matches!(work.method, Method::Fell | Method::BarkRing),
        ),
    ];
    rules
        .into_iter()
        .filter_map(|(proviso, holds)| holds.then_some(proviso))
        .collect()
}

/// Whether only someone trained to fell may do it: something stands near, and no professional does it.
#[must_use]
pub fn trained_to_fell(outcome: ReachOutcome, by_professional: bool, method: Method) -> bool {
    !by_professional && outcome == ReachOutcome::Inside && cuts_down(method)
}

/// Whether a method leaves fresh wood of a pine on the ground while its beetles fly and living pines stand near.
#[must_use]
pub fn breeds_beetles(case: &Case<'_>, method: Method) -> bool {
    case.tree.species.has(Trait::Pine)
        && case.tree.same_genus_near == Some(true)
        && case.part.pine_beetles
        && (cuts_down(method) || method == Method::PullOrDig)
}

fn cuts_down(method: Method) -> bool {
    matches!(
        method,
        Method::Fell | Method::CutStump | Method::RepeatCutting
    )
}
