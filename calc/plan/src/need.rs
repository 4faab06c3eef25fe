//! What one tree asks of a plan, taken from its own answer, which is dropped at once: a list has thousands.

use calc::answer::{Outcome, ring_days, without_sources};
use calc::models::effort::Means;
use calc::models::season::Local;
use calc::models::stand::basal_area_m2;
use calc::models::visits::Visit;
use calc::question::{Day, Question};
use calc::reference::Reference;
use calc::terms::method::Method;
use calc_data::list::PlanConstants;
use chrono::NaiveDate;

/// What a tree that may be ringed asks of a plan.
#[derive(Clone, Debug, PartialEq)]
pub struct Need {
    /// The days on which it may be ringed, in order, with the probability of slip: 0.4 to 1, in steps of
    /// [`PlanConstants::step`].
    pub days: Vec<(NaiveDate, f64)>,
    /// Mean person-minutes.
    pub means: Means,
    /// Width of the ring of each stem to ring, mm.
    pub ring_mm: Vec<f64>,
    /// Basal area of those stems, m².
    pub basal_m2: f64,
    /// The ground that stays dangerous afterwards reaches so far, m.
    pub zone_m: f64,
    /// Bystanders stay out to here while anyone works, m.
    pub people_out_m: f64,
    /// Every visit after a ring on the first of its days.
    pub visits: Vec<Visit>,
}

/// What a tree asks of a plan: its days among `days` on which a ring heads and the bark slips with at least `slip`, and
/// the work. None where no day is left.
///
/// `slip` is a share from 0.4 up: the models let a ring head on no day below that, and nothing lowers it.
///
/// ```
/// use calc::{models::season::Local, question::read};
/// use chrono::NaiveDate;
/// let reference = calc_data::whole();
/// let question = read(reference, &examples::named("do")).expect("a good question");
/// let days = [(2027, 1, 9), (2027, 6, 12)].map(|(y, m, d)| NaiveDate::from_ymd_opt(y, m, d).expect("a day"));
/// let own = calc_data::list::plan_constants();
/// let need = calc_plan::need((reference, own), &question, &Local::default(), &days, 0.4).expect("a day in June");
/// assert!(need.days.len() == 1 && need.days[0].0 == days[1] && need.visits.len() == 9);
/// ```
#[must_use]
pub fn need(
    (reference, own): (&'static Reference, &PlanConstants),
    question: &Question,
    local: &Local,
    days: &[NaiveDate],
    slip: f64,
) -> Option<Need> {
    let found: Vec<(NaiveDate, f64)> = days
        .iter()
        .zip(ring_days(reference, question, local, days))
        .filter_map(|(day, p)| {
            Some((
                *day,
                p.filter(|p| *p >= slip).map(|p| stepped(p, own.step))?,
            ))
        })
        .collect();
    let (first, _) = *found.first()?;
    let answer = without_sources(reference, &on_ring_day(question, first), local);
    debug_assert_eq!(answer.outcome, Outcome::Do);
    let effort = answer.effort?;
    let ringed = answer
        .stems
        .iter()
        .filter(|stem| !stem.spared && stem.headline_method == Method::BarkRing);
    let (mut ring_mm, mut basal_m2) = (Vec::new(), 0.0);
    for stem in ringed {
        if let Some(ring) = &stem.ring {
            ring_mm.push(ring.better_mm);
            basal_m2 += basal_area_m2(stem.dbh_mm);
        }
    }
    Some(Need {
        days: found,
        means: effort.means,
        ring_mm,
        basal_m2,
        zone_m: answer.reach.zone_m,
        people_out_m: answer.people_out_m.unwrap_or(answer.reach.two_heights_m),
        visits: answer.visits,
    })
}

/// The question of a tree as it stands on the day of its ring, which cannot wait.
#[must_use]
pub fn on_ring_day(question: &Question, day: NaiveDate) -> Question {
    let mut on = question.clone();
    on.day = Day::On(day);
    on.cannot_wait = true;
    on
}

fn stepped(p: f64, step: f64) -> f64 {
    let steps = (p / step + 0.5) as u32;
    f64::from(steps) * step
}
