//! Minutes with the visits that follow. Against the same simulation: a visit takes the share that a pass cost in print
//! (AUSDEA1915: 8 to 12 cents an acre against 24 to 30 for the ring), the same share at every visit of a tree.

use super::*;

#[test]
fn a_simulation_with_seven_visits_agrees_within_5_percent_and_at_the_low_end_within_7() {
    let mut draws = Draws::new(1_915);
    let constants = &reference().constants.effort;
    let visit = draws.term("visit");
    assert_eq!((visit.low, visit.likely, visit.high), (0.27, 0.37, 0.50));
    for (stems, slip) in [
        (vec![stem(6.0, MEDIUM)], 1.0),
        (vec![stem(12.0, MEDIUM)], 1.0),
        (vec![stem(24.0, THICK)], 0.7),
        (vec![stem(12.0, THIN)], 0.0),
    ] {
        let asked = question(&with(tree("Norway maple", "12"), json!({ "walk": "0" })));
        let effort =
            minutes(constants, asked.tree.limbs, &asked.pace, &stems, slip).expect("a stem");
        for visits in [0, 3, 7] {
            let mut all: Vec<f64> = (0..40_000)
                .map(|_| {
                    draws.tree(&stems, slip, 0.0) * (1.0 + f64::from(visits) * draws.draw(visit))
                })
                .collect();
            all.sort_by(f64::total_cmp);
            let simulated = [0.1, 0.5, 0.9].map(|share| all[(share * 40_000.0) as usize]);
            let ours = effort.with_visits(constants, visits as usize);
            let (likely, high) = (constants.sticking_likely, constants.sticking_high);
            let ours = [
                ours.low,
                ours.likely / (1.0 + likely * slip),
                ours.high / (1.0 + high * slip),
            ];
            for ((ours, simulated), within) in
                ours.into_iter().zip(simulated).zip([0.07, 0.05, 0.05])
            {
                let apart = (ours / simulated - 1.0).abs();
                assert!(
                    apart <= within,
                    "{visits} visits, p {slip}: {ours} for {simulated}"
                );
            }
        }
    }
}

/// Lows are never added: the low end of many visits lies above the sum of lows, the high end below the sum of highs.
/// And each visit brings its walk.
#[test]
fn the_ends_of_a_sum_are_not_the_sums_of_the_ends() {
    let constants = &reference().constants.effort;
    let at = |walk: &str| {
        let asked = question(&with(tree("Norway maple", "12"), json!({ "walk": walk })));
        minutes(
            constants,
            asked.tree.limbs,
            &asked.pace,
            &[stem(12.0, MEDIUM)],
            1.0,
        )
        .expect("a stem")
    };
    let (still, far) = (at("0"), at("5 min"));
    let (once, often) = (
        still.with_visits(constants, 0),
        still.with_visits(constants, 7),
    );
    assert_eq!(once.low, still.low_min);
    assert!(often.low > once.low * (1.0 + 7.0 * 0.27));
    assert!(often.high < once.high * (1.0 + 7.0 * 0.50));
    near_to(
        far.with_visits(constants, 7).likely - often.likely,
        8.0 * 5.0,
        1e-9,
        "eight walks",
    );
}

/// The answer: visits of three seasons and of the whole list, none for the first look.
#[test]
fn an_answer_gives_three_years_and_the_whole_list_each_longer_than_the_last() {
    let answer = ask_plain(&tree("Norway maple", "12 in"));
    let effort = answer.effort.expect("a ring");
    assert_eq!(answer.visits.len(), effort.whole.visits + 1);
    assert!(effort.three_years.visits < effort.whole.visits);
    assert!(effort.likely_min < effort.three_years.minutes.likely);
    assert!(effort.three_years.minutes.likely < effort.whole.minutes.likely);
    assert!(effort.three_years.minutes.low > effort.low_min);
}
