//! Visits that trees ringed before still need: they take hours of the work days before any tree is ringed on them.

use crate::list_tree::{AfterRing, OpenVisit};
use crate::property::WorkDay;
use crate::solve::PlannedVisit;
use calc::models::effort::Means;
use calc::models::visits::{Visit, VisitConstants, VisitKind, after_ring, comes_back};
use calc::terms::place::Hemisphere;
use calc::terms::species::Species;
use calc_data::list::PlanConstants;
use chrono::{Days, NaiveDate};

/// Once a year a tree that was ringed is looked at until it is down, where nothing is due sooner.
const YEAR: u64 = 365;

/// The day by which somebody looks again at a tree that is not down: the one that the last visit's advice names, else the
/// end of the next visit's weeks; a year after the last look at the latest.
#[must_use]
pub fn next_look(
    constants: &VisitConstants,
    (species, hemisphere): (&Species, Hemisphere),
    after: &AfterRing,
    come_back: Option<NaiveDate>,
) -> Option<NaiveDate> {
    let due = after.ringed_on.and_then(|ring| {
        let visits = after_ring(constants, species, hemisphere, ring);
        let mut left = visits.iter().filter(|visit| comes(visit, after));
        left.next().map(|visit| visit.to)
    });
    let in_a_year = after.looked_on.map(|day| later(day, YEAR));
    come_back.or(due).into_iter().chain(in_a_year).min()
}

/// The visits after the ring that counts that are still to be made behind the last look, with the mean minutes of a first
/// look and of a visit to take sprouts off. Where the stem is dead, only what sprouts from below the ring is still gone
/// to. A bridge that the last look found is cut out, `reopened`, and looked at again within weeks.
#[must_use]
pub fn open_visits(
    (constants, own): (&VisitConstants, &PlanConstants),
    (species, hemisphere): (&Species, Hemisphere),
    after: &AfterRing,
    reopened: bool,
    means: &Means,
) -> Vec<OpenVisit> {
    let open = |visit: &Visit| {
        let costs = visit.kind == VisitKind::Recheck || visit.is_work();
        let worth = after.dead_on.is_none() || visit.is_work() && comes_back(species);
        costs && comes(visit, after) && worth && f64::from(visit.season) <= own.plan_years
    };
    let again = after.looked_on.filter(|_| reopened).map(|day| OpenVisit {
        kind: VisitKind::Recheck,
        from: later(day, constants.recheck_from_days as u64),
        to: later(day, constants.recheck_to_days as u64),
        minutes: means.first_look,
        walk: means.walk,
    });
    let ringed = after.ringed_on.into_iter();
    let visits = ringed.flat_map(|ring| after_ring(constants, species, hemisphere, ring));
    let due = visits.filter(open).map(|visit| OpenVisit {
        kind: visit.kind,
        from: visit.from,
        to: visit.to,
        minutes: match visit.kind {
            VisitKind::Recheck => means.first_look,
            _ => means.sprouts,
        },
        walk: means.walk,
    });
    again.into_iter().chain(due).collect()
}

/// Whether a visit begins behind the last look.
fn comes(visit: &Visit, after: &AfterRing) -> bool {
    after.looked_on.is_none_or(|looked| visit.from > looked)
}

fn later(day: NaiveDate, days: u64) -> NaiveDate {
    day.checked_add_days(Days::new(days)).unwrap_or(day)
}

/// The days of the open visits of many trees, and the minutes that they take of each work day. `trees` holds the unit of
/// each tree and its visits. Visits that end first choose first; each takes a day of its weeks on which somebody is in its
/// unit anyway, else the one with most time left; where no day has room it has none.
pub(crate) fn give_days(
    days: &[WorkDay],
    trees: &[(usize, &[OpenVisit])],
    minutes_of: impl Fn(usize, &OpenVisit) -> f64,
) -> (Vec<Vec<PlannedVisit>>, Vec<f64>) {
    let mut planned: Vec<Vec<PlannedVisit>> = trees
        .iter()
        .enumerate()
        .map(|(tree, (_, visits))| {
            let of = visits.iter().enumerate().map(|(at, visit)| PlannedVisit {
                index: at as u8,
                day: None,
                minutes: minutes_of(tree, visit),
            });
            of.collect()
        })
        .collect();
    let mut order: Vec<(NaiveDate, usize, usize)> = Vec::new();
    for (tree, (_, visits)) in trees.iter().enumerate() {
        order.extend(
            visits
                .iter()
                .enumerate()
                .map(|(at, visit)| (visit.to, tree, at)),
        );
    }
    order.sort_unstable();
    let mut taken = vec![0.0; days.len()];
    let mut units_on: Vec<Vec<usize>> = vec![Vec::new(); days.len()];
    for (_, tree, at) in order {
        let (unit, visit) = (trees[tree].0, trees[tree].1[at]);
        let minutes = planned[tree][at].minutes;
        let from = days.partition_point(|day| day.day < visit.from);
        let to = days.partition_point(|day| day.day <= visit.to);
        let mut best: Option<(bool, f64, usize)> = None;
        for day in from..to.max(from) {
            let left = days[day].minutes - taken[day] - minutes;
            let there = units_on[day].contains(&unit);
            let better = |(known, most, _): (bool, f64, usize)| (there, left) > (known, most);
            if left >= 0.0 && best.is_none_or(better) {
                best = Some((there, left, day));
            }
        }
        if let Some((there, _, day)) = best {
            taken[day] += minutes;
            if !there {
                units_on[day].push(unit);
            }
            planned[tree][at].day = Some(day);
        }
    }
    (planned, taken)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn day(text: &str) -> NaiveDate {
        text.parse().expect("a day")
    }

    #[test]
    fn visits_take_days_of_their_weeks_with_room_and_share_a_trip_to_a_unit() {
        let days: Vec<WorkDay> = ["2027-06-05", "2027-06-12", "2027-06-19"]
            .map(|text| WorkDay {
                day: day(text),
                minutes: 30.0,
                rings: true,
                agreed: true,
            })
            .to_vec();
        let visit = |from: &str, to: &str| OpenVisit {
            kind: VisitKind::Recheck,
            from: day(from),
            to: day(to),
            minutes: 10.0,
            walk: 2.0,
        };
        let wide = [visit("2027-06-01", "2027-06-20")];
        let narrow = [visit("2027-06-12", "2027-06-13")];
        let never = [visit("2027-06-13", "2027-06-18")];
        let trees: [(usize, &[OpenVisit]); 4] = [(0, &wide), (0, &narrow), (1, &never), (0, &wide)];
        let (planned, taken) = give_days(&days, &trees, |_, visit| visit.minutes);
        let on: Vec<Option<usize>> = planned.iter().map(|visits| visits[0].day).collect();
        // The narrow one goes first, and the others of its unit join it while there is room.
        assert_eq!(on, [Some(1), Some(1), None, Some(1)]);
        assert_eq!(taken, [0.0, 30.0, 0.0]);
        let (planned, taken) = give_days(&days, &trees, |_, visit| 2.0 * visit.minutes);
        let on: Vec<Option<usize>> = planned.iter().map(|visits| visits[0].day).collect();
        assert_eq!(on, [Some(0), Some(1), None, Some(2)]);
        assert_eq!(taken, [20.0; 3]);
    }
}
