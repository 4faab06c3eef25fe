//! The way round some points: nearest neighbour, then 2-opt (Croes 1958, "A method for solving traveling-salesman problems";
//! from memory). Metres on flat ground. The same points in the same order give the same way, to the last digit.

use calc::terms::small::order::sort_by;

/// Metres east and north of somewhere.
pub(crate) type Metres = [f64; 2];

/// A piece of the way that is turned round holds so many points at most: all of an ordinary day's, and a long day does not
/// take the square of its points.
const PIECE: usize = 60;
/// So often every piece is tried.
const PASSES: usize = 20;
/// A way that is shorter by less is not shorter.
const SLACK: f64 = 1e-9;

/// Metres between two points.
pub(crate) fn between(a: Metres, b: Metres) -> f64 {
    let [east, north] = [a[0] - b[0], a[1] - b[1]];
    libm::sqrt(east * east + north * north)
}

/// The points in the order of a way that begins at the first of them, passes each once and comes back.
pub(crate) fn round(points: &[Metres]) -> Vec<usize> {
    let mut way = nearest_next(points);
    shorten(points, &mut way);
    way
}

/// The legs of a way back to where it began; none where there is one point.
pub(crate) fn legs<'a>(points: &'a [Metres], way: &'a [usize]) -> impl Iterator<Item = f64> + 'a {
    let next = way.iter().cycle().skip(1);
    let many = if way.len() < 2 { 0 } else { way.len() };
    way.iter()
        .zip(next)
        .take(many)
        .map(|(a, b)| between(points[*a], points[*b]))
}

/// From the first point on always to the nearest that is left; of equally near ones to the first. Points are looked at from
/// where the way stands to the east and to the west, and no farther than the nearest one that was found.
pub(crate) fn nearest_next(points: &[Metres]) -> Vec<usize> {
    let mut by_east: Vec<usize> = (0..points.len()).collect();
    sort_by(&mut by_east, |a, b| {
        points[*a][0].total_cmp(&points[*b][0]).then(a.cmp(b))
    });
    let mut rank = vec![0; points.len()];
    for (at, point) in by_east.iter().enumerate() {
        rank[*point] = at;
    }
    // The next one to each side that is left, by rank; a side without one has the number of points.
    let none = points.len();
    let mut east: Vec<usize> = (1..=points.len()).collect();
    let mut west: Vec<usize> = (0..points.len())
        .map(|at| at.checked_sub(1).unwrap_or(none))
        .collect();
    let mut way = Vec::with_capacity(points.len());
    let mut now = 0;
    while way.len() < points.len() {
        way.push(now);
        let at = rank[now];
        let (mut to_west, mut to_east) = (west[at], east[at]);
        if to_west != none {
            east[to_west] = to_east;
        }
        if to_east != none {
            west[to_east] = to_west;
        }
        let mut best = (f64::INFINITY, none);
        while to_west != none || to_east != none {
            for (side, further) in [(&mut to_west, &west), (&mut to_east, &east)] {
                if *side == none {
                    continue;
                }
                let there = by_east[*side];
                if libm::fabs(points[there][0] - points[now][0]) > best.0 {
                    *side = none;
                    continue;
                }
                let found = (between(points[now], points[there]), there);
                if found < best {
                    best = found;
                }
                *side = further[*side];
            }
        }
        now = best.1;
    }
    way
}

/// Turns pieces round as long as that makes the way shorter.
fn shorten(points: &[Metres], way: &mut [usize]) {
    let many = way.len();
    let leg = |a: usize, b: usize| between(points[a], points[b]);
    for _ in 0..PASSES {
        let mut shorter = false;
        for before in 0..many {
            let last = many.min(before + PIECE + 1);
            for end in before + 2..last {
                let behind = way[(end + 1) % many];
                let (a, b, c) = (way[before], way[before + 1], way[end]);
                if behind != a && leg(a, c) + leg(b, behind) < leg(a, b) + leg(c, behind) - SLACK {
                    way[before + 1..=end].reverse();
                    shorter = true;
                }
            }
        }
        if !shorter {
            break;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Points by Knuth's MMIX constants; any will do.
    fn points(many: usize, seed: u64) -> Vec<Metres> {
        let mut state = seed;
        let mut draw = || {
            state = state
                .wrapping_mul(6_364_136_223_846_793_005)
                .wrapping_add(1_442_695_040_888_963_407);
            (state >> 33) as f64 / f64::from(u32::MAX) * 2000.0
        };
        (0..many).map(|_| [draw(), draw()]).collect()
    }

    fn length(points: &[Metres], way: &[usize]) -> f64 {
        legs(points, way).sum()
    }

    /// The shortest way round, by trying each.
    fn shortest(points: &[Metres], way: &mut Vec<usize>, left: &mut Vec<usize>) -> f64 {
        if left.is_empty() {
            return length(points, way);
        }
        let mut best = f64::INFINITY;
        for at in 0..left.len() {
            let next = left.remove(at);
            way.push(next);
            best = best.min(shortest(points, way, left));
            way.pop();
            left.insert(at, next);
        }
        best
    }

    #[test]
    fn few_points_get_nearly_the_shortest_way_of_all() {
        let (mut all, mut least) = (0.0, 0.0);
        for seed in 0..40 {
            let points = points(8, seed);
            let found = length(&points, &round(&points));
            let best = shortest(&points, &mut vec![0], &mut (1..8).collect());
            assert!(
                found >= best - 1e-9 && found <= 1.25 * best,
                "{found} {best}"
            );
            (all, least) = (all + found, least + best);
        }
        assert!(all <= 1.05 * least, "{all} {least}");
    }

    #[test]
    fn a_way_passes_each_point_once_and_is_no_longer_than_nearest_first() {
        for many in [0, 1, 2, 3, 4, 59, 300] {
            let points = points(many, 7);
            let way = round(&points);
            let mut each = way.clone();
            each.sort_unstable();
            assert_eq!(each, (0..many).collect::<Vec<_>>());
            assert!(way.first().is_none_or(|first| *first == 0));
            assert!(length(&points, &way) <= length(&points, &nearest_next(&points)) + 1e-9);
        }
    }

    /// The next point is the nearest of all that are left, as looking at each of them finds it.
    #[test]
    fn the_next_point_is_the_nearest_that_is_left() {
        let points = points(200, 3);
        let way = nearest_next(&points);
        for (at, pair) in way.windows(2).enumerate() {
            let leg = between(points[pair[0]], points[pair[1]]);
            let rest = way[at + 1..].iter();
            assert!(
                rest.map(|it| between(points[pair[0]], points[*it]))
                    .all(|it| it >= leg)
            );
        }
    }

    #[test]
    fn points_of_a_square_are_gone_round() {
        let square = [[0.0, 0.0], [10.0, 10.0], [10.0, 0.0], [0.0, 10.0]];
        assert_eq!(length(&square, &round(&square)), 40.0);
        assert_eq!(
            length(&square[..2], &round(&square[..2])),
            2.0 * between(square[0], square[1])
        );
        assert_eq!(length(&square[..1], &round(&square[..1])), 0.0);
    }
}
