//! After the work: shares of trees found dead with their interval, and a crew's rate, against print and a general-purpose
//! library (SciPy 1.17.1: `scipy.stats.binomtest(...).proportion_ci(method="wilson")`, `scipy.integrate.quad`).

use super::support::reference;
use calc::models::calibrate::{Rate, update};
use calc::models::effort_constants::Three;
use calc::models::outlook::SizeClass;
use calc::question::{Found, find_species};
use calc::terms::place::Hemisphere::North;
use calc_plan::{LookedAt, RingedTree, ShareOf, kill_rates, rings_that_held};
use chrono::NaiveDate;

fn day(text: &str) -> NaiveDate {
    text.parse().expect("a day")
}

/// Newcombe 1998, "Two-sided confidence intervals for the single proportion: comparison of seven methods", Statistics in
/// Medicine 17, table I, method 3 (score): four decimals, from memory; SciPy gives the same, and more of them.
#[test]
fn wilsons_interval_is_that_of_print_and_of_scipy() {
    for (hits, of, low, high, printed) in [
        (
            81,
            263,
            0.255_288_519_878_274_2,
            0.366_209_576_982_800_04,
            Some((0.2553, 0.3662)),
        ),
        (
            15,
            148,
            0.062_386_399_530_736_29,
            0.160_487_241_723_308_03,
            Some((0.0624, 0.1605)),
        ),
        (0, 20, 0.0, 0.161_125_158_052_819_35, Some((0.0, 0.1611))),
        (
            1,
            29,
            0.006_113_214_292_762_667,
            0.171_755_218_793_202_82,
            Some((0.0061, 0.1718)),
        ),
        (7, 10, 0.396_778_147_461_145_26, 0.892_208_732_593_699, None),
        (10, 10, 0.722_467_200_137_110_9, 1.0, None),
        (43, 57, 0.628_977_037_672_441, 0.847_671_625_297_096, None),
    ] {
        let (share, from, to) = ShareOf { hits, of }.wilson().expect("some were looked at");
        assert!((share - hits as f64 / of as f64).abs() < 1e-15);
        assert!(
            (from - low).abs() < 1e-12,
            "{hits} of {of}: {from} for {low}"
        );
        assert!((to - high).abs() < 1e-12, "{hits} of {of}: {to} for {high}");
        if let Some((low, high)) = printed {
            assert!(
                (from - low).abs() < 5e-5 && (to - high).abs() < 5e-5,
                "{hits} of {of}"
            );
        }
    }
    assert_eq!(ShareOf::default().wilson(), None);
}

/// The posterior of a normal mean, known variance, by numerical integration: three trees of different sizes that took 60
/// person-minutes together.
#[test]
fn a_crews_rate_from_several_trees_is_the_posterior_by_integration() {
    let constants = &reference().constants.effort;
    let three = |low, likely, high| Three { low, likely, high };
    let trees = [
        three(12.0, 20.0, 33.0),
        three(6.0, 10.0, 16.5),
        three(3.0, 5.0, 9.0),
    ];
    let rate = update(constants, Rate::prior(constants), &trees, 60.0).expect("a rate");
    assert!(
        (rate.log_mean - 0.239_931_219_780_612).abs() < 1e-8,
        "{rate:?}"
    );
    assert!((rate.log_sd - 0.153_358_024_509_5).abs() < 1e-8, "{rate:?}");
}

/// Twelve trees of one species, counted by hand: seasons are those of the visits (a ring before midsummer counts as the
/// season's own; the next begins in spring).
#[test]
fn trees_are_counted_by_season_and_size_and_those_nobody_saw_stand_beside() {
    let Found::One(species) = find_species(reference(), "Norway maple", None) else {
        panic!("a species");
    };
    let tree = |inches: f64, looks: &[(&str, bool, bool)]| RingedTree {
        species,
        dbh_mm: inches * 25.4,
        hemisphere: North,
        ringed_on: day("2027-06-05"),
        looks: looks
            .iter()
            .map(|(on, dead, bridge)| LookedAt {
                day: day(on),
                dead: *dead,
                bridge: *bridge,
            })
            .collect(),
    };
    let mut trees = vec![
        // Found dead once: dead in every later season, whoever looks.
        tree(8.0, &[("2027-09-20", true, false)]),
        // Alive two weeks after its ring, which says nothing of that season's end.
        tree(
            8.0,
            &[("2027-06-20", false, true), ("2028-09-20", true, false)],
        ),
        // Seen alive, then not seen.
        tree(8.0, &[("2027-09-20", false, false)]),
        tree(8.0, &[]),
        tree(5.9, &[("2028-09-20", false, false)]),
        tree(10.1, &[("2028-09-20", true, false)]),
    ];
    trees.extend((0..6).map(|_| tree(8.0, &[("2028-09-20", false, false)])));
    let own = calc_data::list::plan_constants();
    let rates = kill_rates((reference(), own), &trees, day("2028-10-01"));
    let told: Vec<(SizeClass, u8, usize, usize, usize)> = rates
        .iter()
        .map(|it| {
            (
                it.size,
                it.season,
                it.dead.hits,
                it.dead.of,
                it.not_looked_at,
            )
        })
        .collect();
    assert_eq!(
        told,
        [
            (SizeClass::Small, 1, 0, 0, 1),
            (SizeClass::Small, 2, 0, 1, 0),
            (SizeClass::Middle, 1, 1, 2, 8),
            (SizeClass::Middle, 2, 2, 8, 2),
            (SizeClass::Large, 1, 0, 0, 1),
            (SizeClass::Large, 2, 1, 1, 0),
        ]
    );
    // Before its end nothing is told of a season, nor of the second in its spring.
    let seasons = |today: &str| {
        let rates = kill_rates((reference(), own), &trees, day(today));
        rates.iter().map(|it| it.season).max()
    };
    let on = ["2027-08-31", "2027-09-01", "2028-06-30", "2028-07-01"];
    assert_eq!(on.map(seasons), [None, Some(1), Some(1), Some(2)]);
    // Eight are too few for a share, and no third season has come.
    assert!(rates.iter().all(|rate| rate.dead.told(own).is_none()));
    assert_eq!(rings_that_held(&trees), ShareOf { hits: 10, of: 11 });
    // The range beside it is that of the outlook for such stems: evidence/outlook.csv, hardwoods that need follow-up.
    let middle = rates
        .iter()
        .find(|it| (it.size, it.season) == (SizeClass::Middle, 1));
    assert_eq!(middle.and_then(|it| it.outlook), Some((0.0, 30.0)));
}
