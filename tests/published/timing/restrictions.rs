//! The season's law and biology by region, against the rows of seasonal_restrictions.csv (each names its authority).

use crate::support::{Row, day, rows};
use calc::terms::cite::{Cite, Grade};
use calc::terms::place::Hemisphere::{North, South};
use calc::timing::closed_months::{for_region, oak_wilt, presence};
use calc::timing::{Applied, DiseaseRegion, OakWilt, Presence, Restriction, Scope, Topic};
use chrono::NaiveDate;

fn leak(text: &str) -> &'static str {
    String::leak(text.to_owned())
}

fn codes(text: &str) -> &'static [&'static str] {
    Vec::leak(text.split_whitespace().map(leak).collect())
}

fn month_day(text: &str) -> (u8, u8) {
    let (m, d) = text.split_once('-').expect("MM-DD");
    let md = (m.parse().expect("a month"), d.parse().expect("a day"));
    assert!(
        NaiveDate::from_ymd_opt(2027, u32::from(md.0), u32::from(md.1)).is_some(),
        "{text}"
    );
    md
}

fn restriction(r: &Row) -> Restriction {
    Restriction {
        jurisdiction: leak(&r["jurisdiction"]),
        codes: codes(&r["codes"]),
        topic: Topic::parse(&r["kind"]).unwrap_or_else(|| panic!("no topic {}", r["kind"])),
        scope: Scope::parse(&r["scope"]).unwrap_or_else(|| panic!("no scope {}", r["scope"])),
        from_md: month_day(&r["from_md"]),
        to_md: month_day(&r["to_md"]),
        force: leak(&r["force"]),
        cite: Cite {
            source: leak(&r["source_id"]),
            place: leak(&r["source"]),
            grade: Grade::of_table(&r["grade"])
                .unwrap_or_else(|| panic!("no grade {}", r["grade"])),
        },
    }
}

fn records() -> &'static [Restriction] {
    Vec::leak(
        rows("content/rules/seasonal_restrictions.csv")
            .iter()
            .map(restriction)
            .collect(),
    )
}

fn diseases() -> Vec<DiseaseRegion> {
    rows("content/rules/disease_regions.csv")
        .iter()
        .map(|r| DiseaseRegion {
            topic: Topic::parse(&r["kind"]).expect("a topic"),
            known_only_in: codes(&r["known_only_in"]),
            not_known_in: codes(&r["not_known_in"]),
        })
        .collect()
}

/// Month and day.
type MonthDay = (u8, u8);

/// From, to, and whether it is a default of our own.
fn months(applied: &[Applied]) -> Vec<(MonthDay, MonthDay, bool)> {
    applied
        .iter()
        .map(|a| (a.restriction.from_md, a.restriction.to_md, a.is_default))
        .collect()
}

/// Michigan DNR (White Lake Beacon 2023), Wisconsin DNR (2016), Minnesota (2020), Iowa DNR, Texas A&M Forest Service.
#[test]
fn each_state_has_the_oak_wilt_months_that_its_agency_gives() {
    let (records, diseases) = (records(), diseases());
    for (state, from, to) in [
        ("US-MI", (4, 15), (7, 15)),
        ("US-WI", (4, 1), (7, 31)),
        ("US-MN", (4, 1), (7, 31)),
        ("US-IA", (3, 1), (10, 15)),
        ("US-TX", (2, 1), (6, 30)),
    ] {
        match oak_wilt(records, &diseases, Some(state)) {
            Some(OakWilt::State(row)) => {
                assert_eq!((row.from_md, row.to_md), (from, to), "{state}")
            }
            other => panic!("{state}: {other:?}"),
        }
    }
    let michigan = oak_wilt(records, &diseases, Some("US-MI")).expect("a row");
    assert!(michigan.closed(day(2027, 4, 15)) && michigan.closed(day(2027, 7, 15)));
    assert!(!michigan.closed(day(2027, 4, 14)) && !michigan.closed(day(2027, 7, 16)));
}

#[test]
fn an_oak_without_a_region_or_in_a_state_without_a_row_gets_the_cautious_months_as_a_default() {
    let (records, diseases) = (records(), diseases());
    for region in [
        None,
        Some("US"),
        Some("US-OH"),
        Some("US-NY"),
        Some("CA-ON"),
        Some("CA"),
    ] {
        match oak_wilt(records, &diseases, region) {
            Some(OakWilt::Default(row)) => {
                assert_eq!((row.from_md, row.to_md), ((2, 1), (10, 15)), "{region:?}")
            }
            other => panic!("{region:?}: {other:?}"),
        }
    }
}

/// From memory (model.md 5): not known in these states and provinces, nor outside North America.
#[test]
fn where_oak_wilt_is_not_known_nothing_is_closed() {
    let (records, diseases) = (records(), diseases());
    let known_free =
        "US-WA US-OR US-CA US-NV US-ID US-UT US-AZ US-AK US-HI CA-BC GB GB-ENG DE FR NZ AU-VIC";
    for region in known_free.split(' ') {
        let found = oak_wilt(records, &diseases, Some(region)).expect("an answer");
        assert_eq!(found, OakWilt::NotKnownThere, "{region}");
        assert!(!found.closed(day(2027, 5, 1)));
    }
}

#[test]
fn the_ash_borer_is_taken_as_present_in_north_america_but_for_the_listed_regions() {
    let d = diseases();
    let of = |region| presence(&d, Topic::AshBorer, region);
    for region in "US-AK US-AZ US-HI US-ID US-MT US-NM US-NV US-UT US-WA US-WY CA-AB CA-BC GB DE NZ"
        .split(' ')
    {
        assert_eq!(of(Some(region)), Presence::NotKnownThere, "{region}");
    }
    for region in ["US-OH", "US-OR", "US-CO", "CA-ON", "US", "CA"] {
        assert_eq!(of(Some(region)), Presence::Present, "{region}");
    }
    assert_eq!(of(None), Presence::Assumed);
}

/// UK: Ask the Police Q701 (1 March to 31 August). New Zealand: an ecology plan's 1 September to 31 December.
#[test]
fn birds_nest_by_the_country_s_own_months_or_the_cautious_default() {
    let r = records();
    let birds = |region, hemisphere| months(&for_region(r, region, hemisphere, &[Topic::Birds]));
    assert_eq!(birds(Some("GB"), North), vec![((3, 1), (8, 31), false)]);
    assert_eq!(birds(Some("GB-SCT"), North), vec![((3, 1), (8, 31), false)]);
    assert_eq!(birds(Some("NZ"), South), vec![((9, 1), (12, 31), false)]);
    for (region, hemisphere, from, to) in [
        (None, North, (2, 15), (8, 31)),
        (Some("DE"), North, (2, 15), (8, 31)),
        (None, South, (8, 1), (1, 31)),
        (Some("AU-WA"), South, (8, 1), (1, 31)),
    ] {
        assert_eq!(
            birds(region, hemisphere),
            vec![(from, to, true)],
            "{region:?}"
        );
    }
    // A part of a state, and the law that holds at any date, stand beside the default and do not replace it.
    let california = birds(Some("US-CA"), North);
    assert!(
        california.contains(&((1, 1), (12, 31), false))
            && california.contains(&((2, 15), (8, 31), false))
    );
    assert!(
        california.contains(&((2, 15), (8, 31), true)),
        "{california:?}"
    );
}

#[test]
fn every_default_covers_the_dated_rows_that_it_claims_to_cover() {
    let all = records();
    for topic in [Topic::Birds, Topic::Bats, Topic::OakWilt] {
        let default = all
            .iter()
            .find(|r| r.topic == topic && r.scope == Scope::North)
            .expect("a default");
        for row in all
            .iter()
            .filter(|r| r.topic == topic && matches!(r.scope, Scope::Whole | Scope::Part))
        {
            let southern = row
                .codes
                .iter()
                .any(|c| c.starts_with("NZ") || c.starts_with("AU"));
            if southern || (row.from_md, row.to_md) == ((1, 1), (12, 31)) {
                continue;
            }
            for d in day(2027, 1, 1)
                .iter_days()
                .take(365)
                .filter(|d| row.covers(*d))
            {
                assert!(default.covers(d), "{} {d}", row.jurisdiction);
            }
        }
    }
}

#[test]
fn rows_from_memory_are_never_shown_and_every_row_has_an_authority_or_is_our_own() {
    let all = records();
    for region in [
        None,
        Some("AU-VIC"),
        Some("US-MN"),
        Some("GB"),
        Some("CA-AB"),
    ] {
        for hemisphere in [North, South] {
            let topics = [
                Topic::Birds,
                Topic::Bats,
                Topic::Snags,
                Topic::OakWilt,
                Topic::Elm,
                Topic::PineBeetles,
                Topic::AshBorer,
                Topic::LaurelWilt,
            ];
            for a in for_region(all, region, hemisphere, &topics) {
                assert_ne!(a.restriction.cite.grade, Grade::Memory);
                assert_eq!(
                    a.is_default,
                    matches!(a.restriction.scope, Scope::North | Scope::South)
                );
            }
        }
    }
    for r in all {
        assert!(!r.cite.place.is_empty(), "{}", r.jurisdiction);
        assert!(
            !r.cite.source.is_empty() || r.cite.grade == Grade::Assumption,
            "{}",
            r.jurisdiction
        );
    }
}

#[test]
fn the_printed_rows_are_kept_as_printed() {
    // The evidence table's 24 rows come first, unchanged; ours follow and say so.
    let ours = rows("content/rules/seasonal_restrictions.csv");
    assert!(ours.len() > 24);
    for (i, r) in ours.iter().enumerate() {
        assert_eq!(
            r["note"].starts_with("row added by us"),
            i >= 24,
            "{}: {}",
            r["jurisdiction"],
            r["topic"]
        );
        assert!(!r["codes_basis"].is_empty());
    }
}

#[test]
fn months_that_run_over_the_new_year_cover_both_ends_and_give_two_spans() {
    let r = records()
        .iter()
        .find(|r| r.topic == Topic::Birds && r.scope == Scope::South)
        .expect("a row");
    for (d, inside) in [
        ((8, 1), true),
        ((12, 31), true),
        ((1, 31), true),
        ((2, 1), false),
        ((7, 31), false),
    ] {
        assert_eq!(r.covers(day(2028, d.0, d.1)), inside, "{d:?}");
    }
    let spans = r.spans(2028);
    assert_eq!(
        spans,
        vec![
            (day(2028, 1, 1), day(2028, 1, 31)),
            (day(2028, 8, 1), day(2028, 12, 31))
        ]
    );
    let birds = records().iter().find(|r| r.codes == ["GB"]).expect("a row");
    assert_eq!(birds.spans(2028), vec![(day(2028, 3, 1), day(2028, 8, 31))]);
}
