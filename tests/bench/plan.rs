//! How long the planner takes, natively, in processor time: `cargo bench -p tests --bench plan`. Invented lists whose hours
//! bind; the aims are those of a page that plans again after each change. It also tells how far each plan can stay under what
//! no plan exceeds.

use calc_plan::{
    EarlierDays, KeptDays, PlanTree, PlanUnit, Profile, Property, RingDay, VisitNeed, WorkDay,
    solve, solve_kept,
};
use chrono::{Days, NaiveDate};
use rand::rngs::StdRng;
use rand::{Rng as _, SeedableRng as _};
use rand_distr::{Distribution as _, LogNormal};
use std::hint::black_box;

#[path = "processor.rs"]
mod processor;

const SEED: u64 = 20_270_612;
/// The work days of a season for which the aims were set; a longer one has so much more time, since each tree is looked at on
/// each of its days.
const DAYS: usize = 18;
/// Other work on the machine makes the same instructions dearer: so many times the aim is too long anywhere.
const TOO_LONG: f64 = 4.0;

/// An invented list: `load` is the hours that there are over those that all rings and visits would take.
fn property(trees: usize, days: usize, load: f64, share: Option<f64>) -> Property {
    let mut random = StdRng::seed_from_u64(SEED);
    let later = days;
    let all = days + later;
    let classes: Vec<Vec<RingDay>> = (0..24)
        .map(|_| {
            let middle = random.random_range(0.0..days as f64);
            let width = random.random_range(0.15..0.7) * days as f64;
            let p = |day: usize| {
                let off = (day as f64 - middle) / width;
                ((1.0 - off * off / 2.0).min(0.97) / 0.005).round() * 0.005
            };
            let open = (0..days).filter(|day| p(*day) >= 0.4);
            open.map(|day| RingDay { day, p: p(day) }).collect()
        })
        .collect();
    let profiles: Vec<Profile> = (1..4)
        .map(|rounds| Profile {
            after: (0..all)
                .map(|day| {
                    let mut needs = Vec::new();
                    if day < days {
                        needs.push(VisitNeed {
                            index: 0,
                            from: (day + 1).min(all),
                            to: (day + 1 + days / 6).min(all),
                            first_look: true,
                        });
                        for round in 0..rounds {
                            let from = days + round * later / 3;
                            needs.push(VisitNeed {
                                index: round as u8 + 1,
                                from,
                                to: from + (later / 4).max(1),
                                first_look: false,
                            });
                        }
                    }
                    needs
                })
                .collect(),
        })
        .collect();
    let minutes = LogNormal::new(2.0, 0.6).expect("a spread");
    let across = LogNormal::new(2.1, 0.45).expect("a spread");
    let units = (trees / 150).clamp(3, 60);
    let of_list: Vec<PlanTree> = (0..trees)
        .map(|_| {
            let slip: f64 = minutes.sample(&mut random);
            let dbh_m = across.sample(&mut random) * 0.0254;
            PlanTree {
                unit: random.random_range(0..units),
                class: random.random_range(0..classes.len()),
                profile: random.random_range(0..3),
                value: [1.0, 1.0, 2.0, 4.0][random.random_range(0..4)]
                    * [1.0, 1.2, 1.5][random.random_range(0..3)],
                work: [slip, 2.4 * slip, 2.0],
                visits: [3.5, 0.27 * slip + 2.0],
                basal_m2: core::f64::consts::PI / 4.0 * dbh_m * dbh_m,
                crown_m2: 0.0,
                pinned: None,
            }
        })
        .collect();
    let work: f64 = of_list
        .iter()
        .map(|tree| tree.work[0] + tree.work[2] + tree.visits[0] + 2.0 * tree.visits[1])
        .sum();
    let first = NaiveDate::from_ymd_opt(2027, 5, 1).expect("a day");
    let limits = (0..units).map(|unit| {
        let basal = of_list
            .iter()
            .filter(|tree| tree.unit == unit)
            .map(|tree| tree.basal_m2);
        let largest = basal.clone().fold(0.0, f64::max);
        PlanUnit {
            limit_m2: share.map(|share| (share * basal.sum::<f64>()).max(largest)),
            crown_limit_m2: None,
        }
    });
    Property {
        units: limits.collect(),
        days: (0..all)
            .map(|at| WorkDay {
                day: first + Days::new(at as u64),
                minutes: work * load / all as f64,
                rings: at < days,
                agreed: at < days,
            })
            .collect(),
        trees: of_list,
        classes,
        profiles,
        enter: calc_plan::Enter {
            to_visit: 3.0,
            to_ring: 0.5,
        },
    }
}

fn main() {
    println!(
        "{:<40} {:>8} {:>8} {:>8} {:>9} {:>8}",
        "invented list, hours as a share of all work", "ms", "aim", "again ms", "planned", "gap %"
    );
    let mut too_long = Vec::new();
    for (trees, days, aim) in [
        (300, DAYS, 50.0),
        (2_000, DAYS, 100.0),
        (10_000, DAYS, 300.0),
        (20_000, DAYS, 800.0),
        (20_000, 60, 800.0),
    ] {
        let aim = aim * days as f64 / DAYS as f64;
        for (load, share) in [(0.3, None), (0.6, None), (1.2, None), (1.2, Some(0.15))] {
            let property = property(trees, days, load, share);
            let rounds = if trees > 2_000 { 1 } else { 5 };
            let (mut least, mut plan) = (f64::INFINITY, None);
            for _ in 0..rounds {
                let begin = processor::micros();
                plan = Some(black_box(solve(&property)));
                least = least.min((processor::micros() - begin) / 1e3);
            }
            let plan = plan.expect("a plan");
            // One row changed: the days of the others stay.
            let before: Vec<EarlierDays> = plan
                .trees
                .iter()
                .enumerate()
                .map(|(at, tree)| match tree {
                    Ok(tree) if at > 0 => EarlierDays::On(KeptDays {
                        day: tree.day,
                        visits: tree.visits.iter().map(|visit| visit.day).collect(),
                    }),
                    Err(_) if at > 0 => EarlierDays::Out,
                    _ => EarlierDays::New,
                })
                .collect();
            let begin = processor::micros();
            black_box(solve_kept(&property, &before));
            let again = (processor::micros() - begin) / 1e3;
            let name = match share {
                Some(_) => format!("{trees} trees, {days} days, 120 %, paced"),
                None => format!("{trees} trees, {days} days, {:.0} %", 100.0 * load),
            };
            println!(
                "{name:<40} {least:>8.1} {aim:>8.0} {again:>8.1} {:>9} {:>8.2}",
                plan.planned(),
                plan.gap_percent()
            );
            if least >= TOO_LONG * aim {
                too_long.push(name);
            }
        }
    }
    assert!(too_long.is_empty(), "too long: {too_long:?}");
}
