//! Mends a plan: better days, and one tree out for a better one in.

use crate::greedy::{Book, PLACED, fill, left_out};
use crate::market::Market;
use crate::property::RingDay;
use crate::rests::Rests;
use core::cmp::Ordering;
use std::collections::BTreeSet;

/// Passes at most.
const PASSES: usize = 4;
/// Days of a tree that is out at which a swap is tried: its best ones.
const DAYS_TRIED: usize = 8;
/// Trees of a day that are tried as the one to go: those that are worth least.
const VICTIMS: usize = 6;

/// Moves trees to better days, fills up, swaps; until nothing is won.
pub(crate) async fn mend(book: &mut Book<'_>, market: &Market<'_>, rests: &Rests) {
    for _ in 0..PASSES {
        let before = book.value();
        better_days(book, market, rests).await;
        fill(book, market, rests).await;
        swap(book, market, rests).await;
        if book.value() <= before * (1.0 + 1e-9) {
            break;
        }
    }
}

/// Each tree to the likeliest day that has room for it, in the order of the ids.
async fn better_days(book: &mut Book<'_>, market: &Market<'_>, rests: &Rests) {
    let property = book.property;
    for (at, tree) in property.trees.iter().enumerate() {
        rests.done(1).await;
        if tree.pinned.is_some() {
            continue;
        }
        let Some(now) = book.placed[at].as_ref().map(|placed| placed.choice) else {
            continue;
        };
        let is_better = |choice: &RingDay| choice.p > now.p;
        if book
            .likely_day(at, 0)
            .as_ref()
            .is_none_or(|choice| !is_better(choice))
        {
            continue;
        }
        let Some(placed) = book.remove(at) else {
            continue;
        };
        let mut rank = 0;
        let moved = loop {
            match book.likely_day(at, rank).filter(is_better) {
                None => break false,
                Some(choice) if book.place(at, choice, market) => break true,
                Some(_) => rank += 1,
            }
        };
        if !moved {
            book.put_back(at, placed);
        }
    }
}

/// One tree out, a better one in: the one that goes takes another day if one has room.
async fn swap(book: &mut Book<'_>, market: &Market<'_>, rests: &Rests) {
    let mut on_day = on_days(book);
    let out = left_out(book);
    swap_each(book, (market, rests), &mut on_day, &out).await;
}

/// The same for some trees alone.
pub(crate) async fn swap_in(
    book: &mut Book<'_>,
    market: &Market<'_>,
    trees: &[usize],
    rests: &Rests,
) {
    let mut on_day = on_days(book);
    let trees: BTreeSet<usize> = trees.iter().copied().collect();
    let out: Vec<usize> = left_out(book)
        .into_iter()
        .filter(|at| trees.contains(at))
        .collect();
    swap_each(book, (market, rests), &mut on_day, &out).await;
}

/// The trees of each day, without those whose day was chosen, with what each is worth there: the least first.
type OnDays = Vec<Vec<(f64, usize)>>;

fn on_days(book: &Book<'_>) -> OnDays {
    let property = book.property;
    let mut on_day: OnDays = vec![Vec::new(); property.days.len()];
    for (at, placed) in book.placed.iter().enumerate() {
        if let Some(placed) = placed
            && property.trees[at].pinned.is_none()
        {
            on_day[placed.choice.day].push((property.trees[at].value * placed.choice.p, at));
        }
    }
    for of_day in &mut on_day {
        of_day.sort_by(by_gain);
    }
    on_day
}

fn by_gain(a: &(f64, usize), b: &(f64, usize)) -> Ordering {
    a.0.total_cmp(&b.0).then(a.1.cmp(&b.1))
}

/// Puts a tree among those of its day.
fn join(of_day: &mut Vec<(f64, usize)>, tree: (f64, usize)) {
    let at = of_day.partition_point(|it| by_gain(it, &tree).is_lt());
    of_day.insert(at, tree);
}

async fn swap_each(
    book: &mut Book<'_>,
    (market, rests): (&Market<'_>, &Rests),
    on_day: &mut OnDays,
    out: &[usize],
) {
    let property = book.property;
    for at in out.iter().copied() {
        rests.done(PLACED).await;
        let tree = &property.trees[at];
        'days: for rank in 0..DAYS_TRIED {
            let Some(choice) = book.likely_day(at, rank) else {
                break;
            };
            let worth = tree.value * choice.p;
            let minutes = tree.minutes(choice.p);
            for tried in 0..VICTIMS {
                let Some((lost, victim)) = on_day[choice.day].get(tried).copied() else {
                    break;
                };
                if lost >= worth * (1.0 - 1e-9) {
                    break;
                }
                // What can't come in for want of minutes or area is not tried.
                let area = property.trees[victim].unit == tree.unit || book.has_area(tree);
                if !(area && book.has_room_without(choice.day, minutes, victim)) {
                    continue;
                }
                let Some(gone) = book.remove(victim) else {
                    continue;
                };
                if !book.place(at, choice, market) {
                    book.put_back(victim, gone);
                    continue;
                }
                on_day[choice.day].remove(tried);
                join(&mut on_day[choice.day], (worth, at));
                if let Some(elsewhere) = book.place_likeliest(victim, market) {
                    let worth = property.trees[victim].value * elsewhere.p;
                    join(&mut on_day[elsewhere.day], (worth, victim));
                }
                break 'days;
            }
        }
    }
}
