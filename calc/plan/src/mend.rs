//! Mends a plan: better days, and one tree out for a better one in.

use crate::greedy::{Book, by_worth, fill, left_out};
use crate::price::Market;
use std::collections::BTreeSet;

/// Passes at most.
const PASSES: usize = 4;
/// Days of a tree that is out at which a swap is tried: its best ones.
const DAYS_TRIED: usize = 8;
/// Trees of a day that are tried as the one to go: those that are worth least.
const VICTIMS: usize = 6;

/// Moves trees to better days, fills up, swaps; until nothing is won.
pub(crate) fn mend(book: &mut Book<'_>, market: &Market<'_>) {
    for _ in 0..PASSES {
        let before = book.value();
        better_days(book, market);
        fill(book, market);
        swap(book, market);
        if book.value() <= before * (1.0 + 1e-9) {
            break;
        }
    }
}

/// Each tree to the likeliest day that has room for it, in the order of the ids.
fn better_days(book: &mut Book<'_>, market: &Market<'_>) {
    let property = book.property;
    for (at, tree) in property.trees.iter().enumerate() {
        if tree.pinned.is_some() {
            continue;
        }
        let Some(now) = book.placed[at].as_ref().map(|placed| placed.choice) else {
            continue;
        };
        let better = by_worth(property, tree, |choice| choice.p);
        if better.first().is_none_or(|(p, _)| *p <= now.p) {
            continue;
        }
        let Some(placed) = book.remove(at) else {
            continue;
        };
        let moved = better
            .into_iter()
            .take_while(|(p, _)| *p > now.p)
            .any(|(_, choice)| book.place(at, choice, market));
        if !moved {
            book.put_back(at, placed);
        }
    }
}

/// One tree out, a better one in: the one that goes takes another day if one has room.
fn swap(book: &mut Book<'_>, market: &Market<'_>) {
    let mut on_day = on_days(book);
    let out = left_out(book);
    swap_each(book, market, &mut on_day, &out);
}

/// The same for some trees alone.
pub(crate) fn swap_in(book: &mut Book<'_>, market: &Market<'_>, trees: &[usize]) {
    let mut on_day = on_days(book);
    let trees: BTreeSet<usize> = trees.iter().copied().collect();
    let out: Vec<usize> = left_out(book)
        .into_iter()
        .filter(|at| trees.contains(at))
        .collect();
    swap_each(book, market, &mut on_day, &out);
}

/// The trees of each day, without those whose day was chosen.
fn on_days(book: &Book<'_>) -> Vec<Vec<usize>> {
    let property = book.property;
    let mut on_day: Vec<Vec<usize>> = vec![Vec::new(); property.days.len()];
    for (at, placed) in book.placed.iter().enumerate() {
        if let Some(placed) = placed
            && property.trees[at].pinned.is_none()
        {
            on_day[placed.choice.day].push(at);
        }
    }
    on_day
}

fn swap_each(book: &mut Book<'_>, market: &Market<'_>, on_day: &mut [Vec<usize>], out: &[usize]) {
    let property = book.property;
    let gain = |book: &Book<'_>, at: usize| {
        let p = book.placed[at]
            .as_ref()
            .map_or(0.0, |placed| placed.choice.p);
        property.trees[at].value * p
    };
    for at in out.iter().copied() {
        let tree = &property.trees[at];
        let days = by_worth(property, tree, |choice| choice.p);
        'days: for (p, choice) in days.into_iter().take(DAYS_TRIED) {
            let worth = tree.value * p;
            let mut victims: Vec<(f64, usize)> = on_day[choice.day]
                .iter()
                .map(|victim| (gain(book, *victim), *victim))
                .filter(|(lost, _)| *lost < worth * (1.0 - 1e-9))
                .collect();
            victims.sort_by(|a, b| a.0.total_cmp(&b.0).then(a.1.cmp(&b.1)));
            for (_, victim) in victims.into_iter().take(VICTIMS) {
                let Some(out) = book.remove(victim) else {
                    continue;
                };
                if !book.place(at, choice, market) {
                    book.put_back(victim, out);
                    continue;
                }
                on_day[choice.day].retain(|there| *there != victim);
                on_day[choice.day].push(at);
                for (_, elsewhere) in by_worth(property, &property.trees[victim], |day| day.p) {
                    if book.place(victim, elsewhere, market) {
                        on_day[elsewhere.day].push(victim);
                        break;
                    }
                }
                break 'days;
            }
        }
    }
}
