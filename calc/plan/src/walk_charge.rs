//! The charge of walks set right. Minutes are reckoned with one walk to each tree, before anybody knows who goes where; the
//! way between the trees of a day comes out once a plan is made. So the charge is multiplied by what ways take to what they
//! were charged, and the plan is made again, twice.

use crate::rests::Rests;
use crate::teams::CrewDay;
use crate::walk::WalkPace;

/// Plans that are made again with another charge, at most.
pub(crate) const ROUNDS: u32 = 2;
/// To find the way to a tree takes as long as to look at so many.
pub(crate) const WALKED: usize = 10;
/// Crew-days whose ways set the charge, at most, evenly through the season: each holds dozens of walks.
const SAMPLE: usize = 30;
/// A charge that changes by a smaller share stays: planning again would move trees for nothing.
const ENOUGH: f64 = 0.01;
/// The charge stays within so many times and a share of what was reckoned.
const LEAST: f64 = 0.05;
const MOST: f64 = 10.0;
/// The charge is rounded to one in so many, so that it is printed and read again as it was.
const STEPS: f64 = 1000.0;

/// What the walk to a tree is multiplied by next, from the ways of a sample of crew-days; none where it stays.
pub(crate) async fn corrected(
    factor: f64,
    crew_days: &[CrewDay],
    pace: WalkPace,
    rests: &Rests,
) -> Option<f64> {
    let drawn: Vec<&CrewDay> = crew_days.iter().filter(|it| it.drawn).collect();
    let every = drawn.len().div_ceil(SAMPLE).max(1);
    let (mut reckoned, mut taken) = (0.0, 0.0);
    for crew_day in drawn.into_iter().step_by(every) {
        rests.done(crew_day.many() * WALKED).await;
        let mut crew_day = crew_day.clone();
        crew_day.route();
        let walked = crew_day.walked(pace);
        let said = walked.charged - walked.elsewhere - walked.reckoned;
        reckoned += walked.reckoned;
        taken += walked.routed - walked.elsewhere - said;
    }
    if reckoned <= 0.0 {
        return None;
    }
    let next = (factor * taken / reckoned).clamp(LEAST, MOST);
    let next = libm::round(next * STEPS) / STEPS;
    (libm::fabs(next / factor - 1.0) > ENOUGH).then_some(next)
}
