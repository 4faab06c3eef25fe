//! The work of a ring: its minutes, those of its visits, and the advice at one.

use super::facts::Facts;
use crate::answer::StemAnswer;
use crate::models::at_visit::VisitAnswer;
use crate::models::at_visit::{NoAdvice, advise};
use crate::models::effort;
use crate::models::effort::StemWork;
use crate::models::effort::{EffortAnswer, Long, MethodWork, OwnRate};
use crate::models::outlook::Share;
use crate::models::reach;
use crate::models::visits;
use crate::models::visits::{Followed, Visit};
use crate::question::VisitAt;
use crate::terms::cite::Cite;
use crate::terms::method::Method;
use crate::terms::quantity::inches;
use crate::terms::small::sort::sort;
use chrono::NaiveDate;

/// Seasons that "three years" speaks of.
const THREE: u8 = 3;

/// Minutes for the ring of every stem that has one.
pub(super) fn minutes(
    facts: &Facts<'_>,
    stems: &[StemAnswer],
    day: NaiveDate,
) -> Option<EffortAnswer> {
    let constants = &facts.reference.constants.effort;
    let question = facts.question;
    let mut work: Vec<StemWork> = stems
        .iter()
        .filter_map(|stem| {
            Some(StemWork {
                dbh_mm: stem.dbh_mm,
                bark_mm: stem.bark.as_ref()?.mm,
                width_mm: stem.ring.as_ref()?.better_mm,
                live_share: stem.live_share,
            })
        })
        .collect();
    let key = |w: &StemWork| [w.dbh_mm, w.bark_mm, w.live_share];
    sort(&mut work, |a, b| key(a) < key(b));
    let slip = facts.calendar.season.p_for_rules(day);
    let effort = effort::minutes(constants, question.tree.limbs, &question.pace, &work, slip)?;
    let visit = constants.visit;
    let once = |share: f64, minutes: f64| share * (minutes - effort.walk_min) + effort.walk_min;
    let after_ring = visits::after_ring(
        &facts.reference.constants.visits,
        question.tree.species,
        question.place.hemisphere(),
        day,
    );
    let long = |seasons: u8| {
        let visits = after_ring
            .iter()
            .filter(|visit| visit.is_work() && visit.season <= seasons)
            .count();
        Long {
            visits,
            minutes: effort.with_visits(constants, visits),
        }
    };
    Some(EffortAnswer {
        visit_min: (
            once(visit.low, effort.likely_min),
            once(visit.likely, effort.likely_min),
            once(visit.high, effort.likely_min),
        ),
        three_years: long(THREE),
        whole: long(u8::MAX),
        own: question.pace.rate.map(|rate| OwnRate {
            rate,
            factor: rate.factor(constants),
            timed: question
                .timed
                .filter(|timed| timed.no_rate.is_none())
                .map(|timed| (timed.trees, timed.minutes)),
        }),
        timed: question
            .timed
            .and_then(|timed| Some((timed.trees, timed.no_rate?))),
        means: effort.means(constants),
        low_min: effort.low_min,
        likely_min: effort.likely_min,
        high_min: effort.high_min,
        mean_min: effort.mean_min,
        slip: effort.slip,
        walk_min: effort.walk_min,
        tasks: effort.tasks,
        because: effort.because,
    })
}

/// Advice at the visit that was asked about; `advised` is the day of an advised ring. Where the answer stops, or what
/// the tree could hit is not checked, or it is hollow, nothing is done to it at a visit either.
pub(super) fn visit(
    facts: &Facts<'_>,
    stops: bool,
    advised: Option<NaiveDate>,
) -> Option<VisitAnswer> {
    let question = facts.question;
    let asked = question.visit.as_ref()?;
    let ringed = asked.ringed.or(advised);
    let mut answer = VisitAnswer {
        ringed,
        day: None,
        advice: None,
        why_not: None,
    };
    let hollow = question.tree.signs.iter().any(|sign| reach::hollow(*sign));
    let clear = matches!(
        facts.reach.outcome,
        reach::ReachOutcome::Clear | reach::ReachOutcome::ClearPeopleOut
    );
    if stops || hollow || !clear {
        answer.why_not = Some(NoAdvice::Stopped);
        return Some(answer);
    }
    let Some(ringed) = ringed else {
        answer.why_not = Some(NoAdvice::NoRing);
        return Some(answer);
    };
    let visits = visits::after_ring(
        &facts.reference.constants.visits,
        question.tree.species,
        question.place.hemisphere(),
        ringed,
    );
    answer.day = on(asked.at, &visits);
    let constants = &facts.reference.constants.visits;
    let hemisphere = question.place.hemisphere();
    let advice = match answer.day {
        Some(day) => advise(constants, ringed, day, &visits, &asked.seen, hemisphere),
        None => Err(NoAdvice::NoSuchVisit),
    };
    match advice {
        Ok(advice) => answer.advice = Some(advice),
        Err(why) => answer.why_not = Some(why),
    }
    Some(answer)
}

fn on(at: VisitAt, visits: &[Visit]) -> Option<NaiveDate> {
    match at {
        VisitAt::Today(day) | VisitAt::On(day) => Some(day),
        VisitAt::Number(number) => Some(visits.get(number.checked_sub(1)?)?.to),
    }
}

/// The nine methods: minutes of a ring as worked out, of others as printed for trees of this size and kind.
pub(super) fn of_methods(
    facts: &Facts<'_>,
    effort: Option<&EffortAnswer>,
    day: NaiveDate,
) -> Vec<MethodWork> {
    let species = facts.question.tree.species;
    let dbh = inches(facts.stem.dbh.mm());
    let counted = |method: Method| {
        let constants = &facts.reference.constants.visits;
        let hemisphere = facts.question.place.hemisphere();
        let visits = visits::after(constants, species, hemisphere, method, day).into_iter();
        let work = visits.filter(|visit| visit.is_work() && visit.season <= THREE);
        work.count()
    };
    // Visits that several methods share are laid out once.
    let mut known: Vec<(Followed, usize)> = Vec::new();
    Method::ALL
        .iter()
        .map(|method| {
            let followed = Followed::of(*method);
            let visits = match known.iter().find(|(of, _)| *of == followed) {
                Some((_, visits)) => *visits,
                None => {
                    let visits = counted(*method);
                    known.push((followed, visits));
                    visits
                }
            };
            let mut work = MethodWork {
                method: *method,
                now: None,
                three_years: None,
                visits,
                of: "",
                because: vec![Cite::own(
                    "visits: from the intervals of the response notes",
                )],
            };
            if let (Method::BarkRing, Some(effort)) = (method, effort) {
                work.now = Some(Share {
                    low: effort.low_min,
                    likely: Some(effort.likely_min),
                    high: effort.high_min,
                });
                let long = effort.three_years.minutes;
                work.three_years = Some(Share {
                    low: long.low,
                    likely: Some(long.likely),
                    high: long.high,
                });
                work.because.extend(&effort.because);
            }
            let printed = facts.reference.method_minutes.iter().find(|row| {
                row.method == *method
                    && row.group.is_none_or(|group| group == species.group)
                    && (row.dbh_in.0..=row.dbh_in.1).contains(&dbh)
            });
            if let Some(row) = printed {
                let (low, high) = row.minutes;
                work.now = Some(Share {
                    low,
                    likely: None,
                    high,
                });
                // Where nothing comes back there is nothing to add.
                work.three_years = work.now.filter(|_| visits == 0);
                work.of = row.of;
                work.because.push(row.cite);
            }
            work
        })
        .collect()
}
