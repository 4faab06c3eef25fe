//! How many die, and when.

use super::phrase;
use crate::measure;
use crate::words::prose::prose;
use crate::words::{Word, m};
use calc::models::outlook::{OutlookClass, Share, SizeClass};
use calc::terms::source::{M01, REQUE2007, S02, SourceId};

/// A share, low to high, with its likely value where there is one: `about 60 in 100 (40 to 80)`.
pub fn share(share: &Share) -> String {
    let range = phrase::percents(share.low, share.high);
    match share.likely {
        Some(likely) if measure::percent(share.low) != measure::percent(share.high) => {
            m::outlook_share_about(likely, range)
        }
        _ => m::outlook_share(range),
    }
}

/// Over a bar: short, since it stands inside the drawing.
pub fn season_bar(season: u8, share: &Share) -> String {
    let range = phrase::percents(share.low, share.high);
    match share.likely {
        Some(likely) => m::outlook_season_likely_label(season, likely, range),
        None => m::outlook_season_label(season, range),
    }
}

/// The lead of the outlook.
pub fn outlook_lead(share: &str, stem_only: bool) -> String {
    if stem_only {
        m::outlook_stems(share)
    } else {
        m::outlook_trees(share)
    }
}

/// Fewer than half are likely to be dead.
pub fn outlook_poor(share: &str) -> String {
    m::outlook_poor(share)
}

/// Share that needs a second ring.
pub fn second_ring(low: f64, high: f64) -> String {
    m::outlook_second_ring(phrase::percents(low, high))
}

/// Sprouting after cutting.
pub fn sprouting(low: f64, high: f64) -> String {
    let (low, high) = (
        measure::percent(low * 100.0),
        measure::percent(high * 100.0),
    );
    m::outlook_sprouting(if low == high {
        low
    } else {
        phrase::to(low, high)
    })
}

/// A species' own row.
pub fn own_row(when: &str, share: &str, n: &str, note: &str) -> String {
    let said = m::outlook_own_row(m::OutlookOwnRow {
        when,
        share,
        trees: prose(n),
    });
    if note.is_empty() {
        said
    } else {
        cat!(said, "; ", prose(note))
    }
}

/// A season's name.
pub fn season_name(when: &str) -> String {
    if when.bytes().all(|c| c.is_ascii_digit()) {
        return m::outlook_season(when);
    }
    match when {
        "end" => m::OUTLOOK_IN_THE_END.into(),
        other => m::outlook_after(prose(other)),
    }
}

/// Their sources.
pub const OAKS_SOURCES: [SourceId; 3] = [S02, REQUE2007, M01];

/// What the outlook's cell rests on, as the table says it.
pub fn outlook_basis(class: OutlookClass, size: SizeClass, anchors: &str, own: &str) -> String {
    let mut said = m::outlook_basis_row(m::OutlookBasisRow {
        class: m::outlook_class(class),
        size: m::outlook_size_class(size),
    });
    if !anchors.is_empty() {
        said = cat!(said, " ", m::outlook_bounded(prose(anchors)));
    }
    if !own.is_empty() {
        said = cat!(said, " ", m::outlook_own(prose(own)));
    }
    said
}

/// Outlook.
pub const HEAD_OUTLOOK: [Word; 4] = [
    m::OUTLOOK_HEAD_OUTLOOK_BY_THE_END_OF,
    m::OUTLOOK_HEAD_OUTLOOK_LOW,
    m::OUTLOOK_HEAD_OUTLOOK_LIKELY,
    m::OUTLOOK_HEAD_OUTLOOK_HIGH,
];
/// Heads of that table.
pub const HEAD_DEATHS: [Word; 7] = [
    m::OUTLOOK_HEAD_DEATHS_DEAD_IN_100,
    m::OUTLOOK_HEAD_DEATHS_AFTER_MONTHS_OR_SEASONS,
    m::OUTLOOK_HEAD_DEATHS_TREES,
    m::OUTLOOK_HEAD_DEATHS_ACROSS,
    m::OUTLOOK_HEAD_DEATHS_RING,
    m::OUTLOOK_HEAD_DEATHS_SEASON,
    m::OUTLOOK_HEAD_DEATHS_SOURCE,
];
