//! Sorting of lists of any length. The library's sort is made anew for each kind of item and brings some 4 kB of code
//! each time: 53 of them were 220 kB of the 1,317 kB of code of the module for lists. Here it is made once, for places.
//! Where a plan sorts most often the library's own stays.

use core::cmp::Ordering;

/// Sorts a list in place, keeping the order of equals: as the library's `sort_by`.
///
/// ```
/// let mut list = [(2, 'a'), (1, 'b'), (2, 'c'), (1, 'd')];
/// calc::terms::small::order::sort_by(&mut list, |a, b| a.0.cmp(&b.0));
/// assert_eq!(list, [(1, 'b'), (1, 'd'), (2, 'a'), (2, 'c')]);
/// ```
pub fn sort_by<T>(list: &mut [T], mut compare: impl FnMut(&T, &T) -> Ordering) {
    let mut order = order(list.len(), &mut |a, b| compare(&list[a], &list[b]));
    // Places that change among each other make a circle: it is walked once, a swap a step.
    for start in 0..list.len() {
        let mut at = start;
        loop {
            let from = core::mem::replace(&mut order[at], at);
            if from == start {
                break;
            }
            list.swap(at, from);
            at = from;
        }
    }
}

/// Sorts a list in place by what `key` makes of each item, keeping the order of equals.
pub fn sort_by_key<T, K: Ord>(list: &mut [T], key: impl Fn(&T) -> K) {
    sort_by(list, |a, b| key(a).cmp(&key(b)));
}

/// The places of so many items, in order.
#[inline(never)]
fn order(items: usize, compare: &mut dyn FnMut(usize, usize) -> Ordering) -> Vec<usize> {
    let mut order: Vec<usize> = (0..items).collect();
    order.sort_by(|a, b| compare(*a, *b));
    order
}

#[cfg(test)]
mod tests {
    use super::{sort_by, sort_by_key};

    /// Against the library's sort: lists of every length up to 300, with many equals.
    #[test]
    fn lists_are_sorted_as_the_library_sorts_them() {
        let mut state = 20_270_612_u32;
        for items in 0..300 {
            let list: Vec<(u32, usize)> = (0..items)
                .map(|at| {
                    state = state.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
                    ((state >> 16) % 20, at)
                })
                .collect();
            let mut sorted = list.clone();
            sorted.sort_by_key(|it| it.0);
            let mut ours = list.clone();
            sort_by(&mut ours, |a, b| a.0.cmp(&b.0));
            assert_eq!(ours, sorted);
            let mut ours = list;
            sort_by_key(&mut ours, |it| it.0);
            assert_eq!(ours, sorted);
        }
    }
}
