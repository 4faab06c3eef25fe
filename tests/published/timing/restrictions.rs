//! The season's law and biology by region, against the rows of seasonal_restrictions.csv (each names its authority).

use crate::support::{Row, day, rows};
use calc::terms::cite::{Cite, Grade};
use calc::terms::place::Hemisphere::{North, South};
use calc::terms::source::SourceId;
use calc::timing::closed_months::for_region;
use calc::timing::{Applied, Restriction, Scope, Topic};
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
            source: SourceId::new(0, leak(&r["source_id"])),
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

/// Month and day.
type MonthDay = (u8, u8);

/// From, to, and whether it is a default of our own.
fn months(applied: &[Applied]) -> Vec<(MonthDay, MonthDay, bool)> {
    applied
        .iter()
        .map(|a| (a.restriction.from_md, a.restriction.to_md, a.is_default))
        .collect()
}

#[test]
fn birds_nest_by_the_country_s_own_months_or_the_cautious_default() {
    let r = records();
    let birds = |region, hemisphere| months(&for_region(r, region, hemisphere, &[Topic::Birds]));
    assert_eq!(birds(Some("GB"), North), vec![((3, 1), (8, 31), false)]);
    assert_eq!(birds(Some("GB-SCT"), North), vec![((3, 1), (8, 31), false)]);
    assert_eq!(birds(Some("NZ"), South), vec![((9, 1), (12, 31), false)]);
    // BNatSchG s. 39(5) (LR56), SOR/2022-105 (LR53), the Wildlife Act 1976 of Ireland (LR59).
    assert_eq!(birds(Some("DE-BY"), North), vec![((3, 1), (9, 30), false)]);
    assert!(birds(Some("CA-ON"), North).contains(&((3, 15), (8, 31), false)));
    assert_eq!(birds(Some("IE"), North), vec![((3, 1), (8, 31), false)]);
    for (region, hemisphere, from, to) in [
        (None, North, (2, 15), (8, 31)),
        (Some("MX"), North, (2, 15), (8, 31)),
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
            // The defaults are the envelope of the rows of the United States.
            let american = row.codes.iter().any(|code| code.starts_with("US"));
            if !american || (row.from_md, row.to_md) == ((1, 1), (12, 31)) {
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
            !r.cite.source.text().is_empty() || r.cite.grade == Grade::Assumption,
            "{}",
            r.jurisdiction
        );
    }
}

#[test]
fn the_printed_rows_are_kept_as_printed() {
    // A row of the evidence table stands unchanged in the rules; ours say that they are.
    let printed = rows("content/evidence/seasonal_restrictions.csv");
    let ours = rows("content/rules/seasonal_restrictions.csv");
    let key = |r: &Row| (r["jurisdiction"].clone(), r["topic"].clone());
    let mut kept = 0;
    for r in &ours {
        match printed.iter().find(|p| key(p) == key(r)) {
            Some(p) => {
                kept += 1;
                for column in ["from_md", "to_md", "force", "grade", "source", "note"] {
                    assert_eq!(r[column], p[column], "{}", r["jurisdiction"]);
                }
            }
            None => assert!(
                r["note"].starts_with("row added by us"),
                "{}",
                r["jurisdiction"]
            ),
        }
        assert!(!r["codes_basis"].is_empty());
    }
    assert!(kept > 24, "{kept}");
    // Oak-wilt months are read from oak_wilt_regions.csv; the print behind them stays in the evidence.
    let oak = printed
        .iter()
        .filter(|r| r["topic"].starts_with("oak wilt"));
    assert_eq!(oak.count() - 1, printed.len() - kept);
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
