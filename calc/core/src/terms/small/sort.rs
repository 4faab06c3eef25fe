//! Sorting of short lists. The library's sorts are made for long ones, and each kind of item brings some 3 kB of
//! code into the browser; ours is a few lines.

/// Sorts a short list in place, keeping the order of equals (insertion sort).
pub fn sort<T>(list: &mut [T], before: impl Fn(&T, &T) -> bool) {
    for end in 1..list.len() {
        let mut at = end;
        while at > 0 && before(&list[at], &list[at - 1]) {
            list.swap(at, at - 1);
            at -= 1;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::sort;

    #[test]
    fn equals_keep_their_order() {
        let mut list = [(2, 'a'), (1, 'b'), (2, 'c'), (1, 'd'), (0, 'e')];
        sort(&mut list, |a, b| a.0 < b.0);
        assert_eq!(list, [(0, 'e'), (1, 'b'), (1, 'd'), (2, 'a'), (2, 'c')]);
    }
}
