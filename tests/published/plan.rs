//! The plan of many trees against a general-purpose solver: invented lists, for which SciPy's HiGHS (1.17.1; the script
//! is `vectors/plan/plans.py`) found the value of the linear relaxation and the best whole plan it could.

use calc_plan::{
    EarlierDays, KeptDays, Plan, PlanTree, PlanUnit, Profile, Property, RingDay, VisitNeed,
    WorkDay, prices, solve, solve_kept,
};
use chrono::{Days, NaiveDate};
use serde_json::Value;

/// A list with what the solver found.
struct Case {
    property: Property,
    /// Value of the linear relaxation: what no plan can exceed.
    lp: f64,
    /// The best whole plan found.
    whole: f64,
}

fn number(value: &Value) -> f64 {
    value.as_f64().expect("a number")
}

fn place(value: &Value) -> usize {
    usize::try_from(value.as_u64().expect("a place")).expect("a place")
}

fn list(value: &Value) -> impl Iterator<Item = &Value> {
    value.as_array().expect("a list").iter()
}

fn tree(it: &Value) -> PlanTree {
    PlanTree {
        unit: place(&it["unit"]),
        class: place(&it["class"]),
        profile: place(&it["profile"]),
        value: number(&it["value"]),
        work: [0, 1, 2].map(|at| number(&it["work"][at])),
        visits: [0, 1].map(|at| number(&it["visits"][at])),
        basal_m2: number(&it["basal_m2"]),
        crown_m2: it["crown_m2"].as_f64().unwrap_or(0.0),
        pinned: None,
    }
}

fn visit(it: &Value) -> VisitNeed {
    VisitNeed {
        index: u8::try_from(place(&it[0])).expect("few visits"),
        from: place(&it[1]),
        to: place(&it[2]),
        first_look: it[3] == 1,
    }
}

fn case(it: &Value) -> Case {
    let first = NaiveDate::from_ymd_opt(2027, 5, 1).expect("a day");
    let rings = place(&it["rings"]);
    let days = list(&it["minutes"])
        .enumerate()
        .map(|(at, minutes)| WorkDay {
            day: first + Days::new(7 * at as u64),
            minutes: number(minutes),
            rings: at < rings,
            agreed: at < rings,
        });
    let classes = list(&it["classes"]).map(|class| {
        let choice = |it: &Value| RingDay {
            day: place(&it[0]),
            p: number(&it[1]),
        };
        list(class).map(choice).collect()
    });
    let profiles = list(&it["profiles"]).map(|after| Profile {
        after: list(after)
            .map(|visits| list(visits).map(visit).collect())
            .collect(),
    });
    let units = list(&it["limits"]).map(|limit| PlanUnit {
        limit_m2: limit.as_f64(),
        crown_limit_m2: None,
    });
    Case {
        property: Property {
            trees: list(&it["trees"]).map(tree).collect(),
            classes: classes.collect(),
            profiles: profiles.collect(),
            days: days.collect(),
            units: units.collect(),
            ..Property::default()
        },
        lp: number(&it["lp"]),
        whole: number(&it["whole"]),
    }
}

fn cases() -> Vec<Case> {
    let text = include_str!("vectors/plan/plans.json");
    let whole: Value = serde_json::from_str(text).expect("JSON");
    list(&whole["lists"]).map(case).collect()
}

/// Value, minutes by day and area by unit, added up from the plan alone; every window is checked on the way.
fn added_up(property: &Property, plan: &Plan) -> (f64, Vec<f64>, Vec<f64>) {
    let (mut value, mut minutes) = (0.0, vec![0.0; property.days.len()]);
    let mut area = vec![0.0; property.units.len()];
    for (tree, planned) in property.trees.iter().zip(&plan.trees) {
        let Ok(planned) = planned else { continue };
        let allowed = RingDay {
            day: planned.day,
            p: planned.p,
        };
        assert!(
            property.classes[tree.class].contains(&allowed),
            "{planned:?}"
        );
        assert!(property.days[planned.day].rings);
        value += tree.value * planned.p;
        let [slip, tight, walk] = tree.work;
        minutes[planned.day] += planned.p * slip + (1.0 - planned.p) * tight + walk;
        area[tree.unit] += tree.basal_m2;
        let needs = &property.profiles[tree.profile].after[planned.day];
        assert_eq!(needs.len(), planned.visits.len());
        for (need, visit) in needs.iter().zip(&planned.visits) {
            assert_eq!(need.index, visit.index);
            let Some(day) = visit.day else {
                assert_eq!(
                    need.from, need.to,
                    "a visit has a day wherever its window has one"
                );
                continue;
            };
            assert!((need.from..need.to).contains(&day), "{need:?} on {day}");
            minutes[day] += tree.visits[if need.first_look { 0 } else { 1 }];
        }
    }
    (value, minutes, area)
}

fn keeps_to_its_limits(property: &Property, plan: &Plan) {
    let (value, minutes, area) = added_up(property, plan);
    assert!((value - plan.value).abs() < 1e-9, "{value} {}", plan.value);
    for (at, day) in property.days.iter().enumerate() {
        assert!(
            minutes[at] <= day.minutes + 1e-6,
            "day {at}: {} of {}",
            minutes[at],
            day.minutes
        );
        let [rings, visits] = plan.used[at];
        assert!((rings + visits - minutes[at]).abs() < 1e-6);
    }
    for (at, unit) in property.units.iter().enumerate() {
        assert!(
            unit.limit_m2.is_none_or(|limit| area[at] <= limit + 1e-9),
            "unit {at}"
        );
    }
}

/// The bound lies on the linear relaxation or up to half a per cent above it; the plan within 2 % of the solver's best.
#[test]
fn plans_and_their_bounds_hold_against_a_solver() {
    for (at, case) in cases().into_iter().enumerate() {
        let plan = solve(&case.property);
        keeps_to_its_limits(&case.property, &plan);
        let bound = plan.priced.bound;
        let told = format!(
            "list {at}: plan {:.3}, best {:.3}, relaxation {:.3}, bound {bound:.3}",
            plan.value, case.whole, case.lp
        );
        assert!(bound >= case.lp - 1e-6, "{told}");
        assert!(bound <= case.lp * 1.005, "{told}");
        assert!(plan.value <= case.whole * (1.0 + 1e-4) + 1e-9, "{told}");
        assert!(plan.value >= 0.98 * case.whole, "{told}");
        println!("{told}");
    }
}

/// More hours, more days, more area or a lower threshold never lower the bound by more than the steps leave open.
#[test]
fn what_is_loosened_never_lowers_the_bound() {
    for case in cases() {
        let before = prices(&case.property).bound;
        let mut loosened = vec![case.property.clone(); 3];
        for day in &mut loosened[0].days {
            day.minutes *= 1.25;
        }
        for unit in &mut loosened[1].units {
            unit.limit_m2 = unit.limit_m2.map(|limit| limit * 1.5);
        }
        for unit in &mut loosened[2].units {
            unit.limit_m2 = None;
        }
        for (at, property) in loosened.iter().enumerate() {
            let after = prices(property).bound;
            assert!(
                after >= before * 0.999,
                "loosened {at}: {before} to {after}"
            );
        }
    }
}

/// No bound is under the value of any plan: here of plans drawn without the planner's own prices.
#[test]
fn the_bound_holds_for_plans_of_fewer_hours() {
    for case in cases() {
        let bound = prices(&case.property).bound;
        for share in [0.3, 0.6, 0.9] {
            let mut fewer = case.property.clone();
            for day in &mut fewer.days {
                day.minutes *= share;
            }
            let plan = solve(&fewer);
            keeps_to_its_limits(&case.property, &plan);
            assert!(plan.value <= bound + 1e-9);
        }
    }
}

/// A day that somebody chose is kept, also where the hours do not suffice; a day on which the tree may not be ringed is not.
#[test]
fn a_chosen_day_is_kept_and_a_closed_one_never_planned() {
    let mut property = cases().remove(0).property;
    let allowed: Vec<usize> = property.classes[property.trees[0].class]
        .iter()
        .map(|choice| choice.day)
        .collect();
    let closed = (0..property.days.len())
        .find(|day| !allowed.contains(day))
        .expect("a closed day");
    property.trees[0].pinned = Some(allowed[1]);
    property.trees[1].pinned = Some(usize::MAX);
    let mut other = property.clone();
    let plan = solve(&property);
    assert_eq!(plan.trees[0].as_ref().map(|tree| tree.day), Ok(allowed[1]));
    assert_eq!(plan.trees[1], Err(calc_plan::NotPlanned::NoDay));

    other.trees[0].pinned = Some(closed);
    assert_eq!(solve(&other).trees[0], Err(calc_plan::NotPlanned::NoDay));

    property.days[allowed[1]].minutes = 0.0;
    let over = solve(&property);
    assert_eq!(over.trees[0].as_ref().map(|tree| tree.day), Ok(allowed[1]));
    assert!(over.used[allowed[1]][0] > 0.0);
}

/// The same property gives the same plan, to the last digit; hours without end give every tree its likeliest day.
#[test]
fn a_plan_is_the_same_twice_and_hours_without_end_take_the_best_days() {
    for case in cases() {
        let mut property = case.property;
        assert_eq!(solve(&property), solve(&property));
        for day in &mut property.days {
            day.minutes = 1e9;
        }
        for unit in &mut property.units {
            unit.limit_m2 = None;
        }
        let plan = solve(&property);
        for (tree, planned) in property.trees.iter().zip(&plan.trees) {
            let best = property.classes[tree.class]
                .iter()
                .map(|choice| choice.p)
                .reduce(f64::max);
            assert_eq!(planned.as_ref().ok().map(|planned| planned.p), best);
        }
        assert!(plan.gap_percent() < 1e-9);
    }
}

/// What a plan had for each tree.
fn had(plan: &Plan) -> Vec<EarlierDays> {
    let of = plan.trees.iter().map(|tree| match tree {
        Ok(tree) => EarlierDays::On(KeptDays {
            day: tree.day,
            visits: tree.visits.iter().map(|visit| visit.day).collect(),
        }),
        Err(_) => EarlierDays::Out,
    });
    of.collect()
}

/// One row changed: over 200 random edits at most five other trees move, all limits hold, and nothing that no longer may be
/// ringed is planned.
#[test]
fn one_changed_row_moves_few_trees() {
    let cases = cases();
    let mut random = 20_270_612_u64;
    let mut draw = |below: usize| {
        // Knuth's MMIX constants; any will do.
        random = random
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        (random >> 33) as usize % below
    };
    let plans: Vec<Plan> = cases.iter().map(|case| solve(&case.property)).collect();
    let mut most = 0;
    for _ in 0..200 {
        let at = draw(cases.len());
        let (plan, mut property) = (&plans[at], cases[at].property.clone());
        let tree = draw(property.trees.len());
        let mut before = had(plan);
        let edit = draw(5);
        match edit {
            0 => property.trees[tree].value *= 4.0,
            1 => property.trees[tree].work = property.trees[tree].work.map(|it| it * 2.0),
            2 => property.trees[tree].visits = property.trees[tree].visits.map(|it| it * 2.0),
            3 => {
                // A stop: it may be ringed on no day.
                property.classes.push(Vec::new());
                property.trees[tree].class = property.classes.len() - 1;
            }
            _ => property.trees[tree].class = draw(property.classes.len()),
        }
        if before[tree] == EarlierDays::Out {
            before[tree] = EarlierDays::New;
        }
        let again = solve_kept(&property, &before);
        keeps_to_its_limits(&property, &again);
        if edit == 3 {
            assert!(again.trees[tree].is_err(), "a stop is never planned");
        }
        let day = |plan: &Plan, at: usize| plan.trees[at].as_ref().ok().map(|tree| tree.day);
        let others = (0..property.trees.len()).filter(|at| *at != tree);
        let moved = others
            .filter(|at| day(plan, *at) != day(&again, *at))
            .count();
        assert!(moved <= 5, "edit {edit} of tree {tree}: {moved} moved");
        most = most.max(moved);
    }
    println!("at most {most} moved");
}

/// Nothing changed: nothing moves.
#[test]
fn the_same_list_keeps_every_day() {
    for case in cases() {
        let plan = solve(&case.property);
        let again = solve_kept(&case.property, &had(&plan));
        assert!(again.value >= plan.value - 1e-9);
        for (a, b) in plan.trees.iter().zip(&again.trees) {
            if let Ok(a) = a {
                assert_eq!(Ok(a.day), b.as_ref().map(|b| b.day));
            }
        }
    }
}

/// It fails in both directions: a row without a case, and a line without a row or with a case.
#[test]
fn every_constant_of_plans_has_a_published_case_or_a_line_that_says_why_not() {
    use crate::methods::{PLANS, unchecked};
    let own = calc_data::list::plan_constants();
    // What a source outside gives.
    let published = [
        // Forest management sheet for summer habitat of Indiana bats (A08): at least 60 % closure.
        ("canopy_floor", own.canopy_floor, 0.60),
        // Windthrow lesson 2-07 (G02): usually leave more than 40 % of the basal area.
        ("basal_floor", own.basal_floor, 0.40),
        // Trees an acre by spacing: the text's own example is 10 x 10 ft (W10).
        ("plant_feet", own.plant_feet, 10.0),
        // Follow-up for three years: the seasons of the outlook's printed counts (evidence/outlook.csv).
        (
            "plan_years",
            own.plan_years,
            crate::support::reference().outlook[0].seasons.len() as f64,
        ),
    ];
    for (name, value, printed) in published {
        assert_eq!(value, printed, "{name}");
    }
    // Outlying patches first, then the edge, then inward (Moody and Mack 1988): the order, not the weights.
    assert!(own.outlying > own.edge && own.edge > 1.0);
    let names: Vec<&str> = calc_data::list::tables()
        .assumed
        .iter()
        .map(|it| it.name)
        .collect();
    let lines = unchecked(PLANS);
    for name in &names {
        let case = published.iter().any(|(known, ..)| known == name);
        let line = lines.iter().any(|(known, _)| known == name);
        assert!(
            case || line,
            "{name} has neither a case nor a line in unchecked.txt"
        );
        assert!(
            !(case && line),
            "{name} has a case: take its line out of unchecked.txt"
        );
    }
    for (name, _) in &lines {
        assert!(
            names.contains(&name.as_str()),
            "unchecked.txt names {name}, which is no row"
        );
    }
}

/// Crowns that stand at random: the share of points under at least one of many discs, by throwing them (a grid of points on
/// land without an edge), within a point of a hundred of 1 - exp(-C/A).
#[test]
fn the_share_of_land_under_crowns_is_that_of_discs_thrown_at_random() {
    let mut state = 20_270_612_u64;
    let mut draw = move || {
        // Knuth's MMIX constants; any will do.
        state = state
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        (state >> 11) as f64 / (1_u64 << 53) as f64
    };
    for crowns in [40_usize, 120, 300] {
        // Land of 100 by 100 m, crowns 8 m across.
        let (side, radius) = (100.0, 4.0);
        let (mut under, mut points) = (0, 0);
        for _ in 0..20 {
            let discs: Vec<[f64; 2]> = (0..crowns)
                .map(|_| [draw() * side, draw() * side])
                .collect();
            for at in 0..2_500 {
                let point = [(at % 50) as f64 * 2.0, (at / 50) as f64 * 2.0];
                let covers = |disc: &[f64; 2]| {
                    let apart = [0, 1].map(|axis| {
                        let apart: f64 = (disc[axis] - point[axis]).abs();
                        apart.min(side - apart)
                    });
                    apart[0] * apart[0] + apart[1] * apart[1] <= radius * radius
                };
                under += usize::from(discs.iter().any(covers));
                points += 1;
            }
        }
        let area = crowns as f64 * core::f64::consts::PI * radius * radius;
        let said = calc_plan::closure(area, side * side);
        let thrown = f64::from(u32::try_from(under).expect("few")) / points as f64;
        assert!((said - thrown).abs() < 0.01, "{crowns}: {said} {thrown}");
        assert!((calc_plan::crowns_for(said, side * side) - area).abs() < 1e-6);
    }
}
