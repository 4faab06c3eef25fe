//! Limits that turn an answer of the season, each tried on both of its sides. Months of pests are held against the print
//! that the row names; the others are our own rules (assumption, no outside source).

use crate::support::*;
use calc::terms::place::Hemisphere;
use calc::terms::species::WoodClass;
use calc::timing::closed_months::{Topic, cautious};
use calc::timing::doy::season_year;
use calc::timing::shift::{Rates, carry};
use calc::timing::spring::{Doubt, read};
use calc::timing::{Daily, Flag, Site, Where, season};

/// Elms: Alberta bans pruning from 1 April to 30 September (S49), and beetles fly until October in Colorado (S50).
/// Pines: engravers attack until September in northern Wisconsin (S51); March is our own, for the south.
#[test]
fn elm_and_pine_beetles_have_september() {
    let rows = calc_data::whole().restrictions;
    let months = |topic| {
        let held = cautious(rows, topic);
        let north = |month| held.hold(month, Hemisphere::North);
        (1..=12).filter(|month| north(*month)).collect::<Vec<u32>>()
    };
    assert_eq!(months(Topic::Elm), [4, 5, 6, 7, 8, 9]);
    assert_eq!(months(Topic::PineBeetles), [3, 4, 5, 6, 7, 8, 9]);
    for row in rows {
        if !matches!(row.topic, Topic::Elm | Topic::PineBeetles) {
            continue;
        }
        // Saskatchewan's ban ends on 31 August; every other row holds September to its end.
        let saskatchewan = row.codes == ["CA-SK"];
        assert_eq!(
            row.covers(day(2027, 9, 30)),
            !saskatchewan,
            "{}",
            row.jurisdiction
        );
        assert!(row.covers(day(2027, 8, 31)) && !row.covers(day(2027, 10, 1)));
    }
}

/// The southern season runs from July to June and is named by the year of its spring.
#[test]
fn the_southern_season_turns_between_june_and_july() {
    for (date, south) in [
        (day(2027, 6, 30), 2026),
        (day(2027, 7, 1), 2027),
        (day(2027, 7, 31), 2027),
        (day(2028, 1, 1), 2027),
    ] {
        assert_eq!(season_year(date, Hemisphere::South), south, "{date}");
        let year = chrono::Datelike::year(&date);
        assert_eq!(season_year(date, Hemisphere::North), year, "{date}");
    }
}

#[test]
fn one_missing_day_of_a_spring_is_a_gap_and_a_whole_spring_has_none() {
    let c = constants();
    let days: Vec<_> = day(2027, 3, 1).iter_days().take(40).collect();
    for (left_out, gap) in [(None, false), (Some(20), true)] {
        let kept = days
            .iter()
            .enumerate()
            .filter(|(at, _)| Some(*at) != left_out);
        let kept: Vec<_> = kept.map(|(_, date)| *date).collect();
        let text: String = kept.iter().map(|date| format!("{date},1,9\n")).collect();
        let table = read(&text, None, day(2027, 5, 20), Hemisphere::North, &c);
        assert_eq!(
            table.doubts.contains(&Doubt::Gaps),
            gap,
            "{:?}",
            table.doubts
        );
        let spring: Vec<Daily> = kept
            .iter()
            .map(|date| Daily {
                date: *date,
                tmin: 1.0,
                tmax: 9.0,
            })
            .collect();
        let all = stations();
        let p = point(&all, 42.36, -71.06, 15.0, &c);
        let mut asked = ask(tree(WoodClass::Diffuse, 180.0), Where::Climate(&p));
        asked.spring = &spring;
        assert_eq!(season(&asked, &c).flags().contains(&Flag::SpringGaps), gap);
    }
}

/// West of 100° W the ground is too uneven: both elevations are needed, whichever of the two sites lies there.
#[test]
fn in_the_west_a_leaf_out_is_carried_with_both_elevations_only() {
    let c = constants();
    let site = |lon, elev_m| Site {
        lat: 40.0,
        lon,
        elev_m,
    };
    let carried = |from, to| carry(from, to, Rates::Fitted, &c);
    let needs = Err(Flag::ObservedNeedsElevation);
    for (from, to) in [(-100.1, -99.9), (-99.9, -100.1), (-101.0, -102.0)] {
        assert_eq!(
            carried(site(from, None), site(to, Some(900.0))),
            needs,
            "{from} {to}"
        );
        assert_eq!(
            carried(site(from, Some(900.0)), site(to, None)),
            needs,
            "{from} {to}"
        );
        assert_eq!(
            carried(site(from, None), site(to, None)),
            needs,
            "{from} {to}"
        );
        assert!(carried(site(from, Some(900.0)), site(to, Some(900.0))).is_ok());
    }
    assert!(carried(site(-99.9, None), site(-99.0, None)).is_ok());
}

/// An elevation 300 to 1000 m off is asked again where feet taken for metres, or the other way round, would be near:
/// under a third as far off. Worked by hand: 370 m is 1213.9 m in feet for metres, 365 m is 1197.5 m.
#[test]
fn an_elevation_is_asked_again_where_the_other_unit_would_be_a_third_as_far_off() {
    let c = constants();
    let all = stations();
    let odd = |around: f64, elev: f64| {
        let mut p = point(&all, 42.36, -71.06, elev, &c);
        p.stations_m = around;
        p.elevation_odd(&c)
    };
    assert!(!odd(1000.0, 370.0), "213.9 m off, over a third of 630");
    assert!(odd(1000.0, 365.0), "197.5 m off, under a third of 635");
    assert!(odd(1000.0, 2001.0), "over 1000 m off");
    assert!(
        !odd(1000.0, 1600.0),
        "488 m in feet for metres: nearly as far off"
    );
    assert!(!odd(300.0, 590.0), "under 300 m off");
}
