//! How many die, and when.

use super::phrase;
use crate::measure;
use calc::models::outlook::{OutlookClass, SizeClass};

/// A class of the outlook table.
pub fn outlook_class(class: OutlookClass) -> &'static str {
    match class {
        OutlookClass::SuitableConifer => "conifers that a ring suits",
        OutlookClass::SuitableHardwood => "broadleaves that a ring suits",
        OutlookClass::Followup => "trees that need follow-up",
        OutlookClass::RedOak => "red oaks",
        OutlookClass::WhiteOak => "white oaks",
        OutlookClass::CloneOrShrub => "stems of clones and shrubs",
        OutlookClass::NotAlone => "stems whose roots live on",
        OutlookClass::Partial => "stems with a bridge of live bark",
    }
}

/// A size class.
pub fn size_class(size: SizeClass) -> &'static str {
    match size {
        SizeClass::All => "any size",
        SizeClass::Small => "under 6 in (15 cm)",
        SizeClass::Middle => "6 to 10 in (15 to 25 cm)",
        SizeClass::Large => "over 10 in (25 cm)",
        SizeClass::UnderTen => "under 10 in (25 cm)",
    }
}

/// A share, low to high, with its likely value where there is one: `about 60 in 100 (40 to 80)`.
pub fn share(share: &calc::models::outlook::Share) -> String {
    let ends = phrase::percents(share.low, share.high);
    match share.likely {
        Some(likely) => cat!("about ", measure::percent(likely), " in 100 (", ends, ")"),
        None => cat!(ends, " in 100"),
    }
}

/// Over a bar: short, since it stands inside the drawing.
pub fn season_bar(season: u8, share: &calc::models::outlook::Share) -> String {
    let ends = phrase::percents(share.low, share.high);
    let said = match share.likely {
        Some(likely) => cat!(measure::percent(likely), " (", ends, ")"),
        None => ends,
    };
    cat!("season ", measure::number(u32::from(season)), ": ", said)
}

/// The lead of the outlook.
pub fn outlook_lead(share: &str, stem_only: bool) -> String {
    let what = if stem_only { "stems" } else { "trees" };
    let but = if stem_only {
        " It speaks of the stem: the roots live on."
    } else {
        ""
    };
    cat!(
        "By the end of season 3, ",
        share,
        " such ",
        what,
        " are dead.",
        but
    )
}

/// What the outlook supposes.
pub const OUTLOOK_IF: &str = "It supposes a ring that is complete and scraped clean, and sprouts taken off. \
A bridge of live bark, and practically none die. A ring narrower than half the trunk: expect the low end.";

/// Fewer than half are likely to be dead.
pub fn outlook_poor(share: &str) -> String {
    cat!(
        "Fewer than half are likely to be dead by the end of season 3: ",
        share,
        "."
    )
}

/// Share that needs a second ring.
pub fn second_ring(low: f64, high: f64) -> String {
    cat!(phrase::percents(low, high), " in 100 need a second ring.")
}

/// Sprouting after cutting.
pub fn sprouting(low: f64, high: f64) -> String {
    let (low, high) = (
        measure::percent(low * 100.0),
        measure::percent(high * 100.0),
    );
    let ends = if low == high {
        low
    } else {
        phrase::to(low, high)
    };
    cat!(
        "Of stems of this size that are cut, ",
        ends,
        " in 100 sprout: an upper bound for a ring."
    )
}

/// A species' own row.
pub fn own_row(when: &str, share: &str, n: &str, note: &str) -> String {
    cat!(
        when,
        ": ",
        share,
        " dead; trees: ",
        n,
        if note.is_empty() { "" } else { "; " },
        note
    )
}

/// A season's name.
pub fn season_name(when: &str) -> String {
    if when.bytes().all(|c| c.is_ascii_digit()) {
        return cat!("season ", when);
    }
    match when {
        "end" => "in the end".into(),
        other => cat!("after ", other),
    }
}

/// Trials that disagree on oaks.
pub const OAKS_DISAGREE: [&str; 4] = [
    "Trials disagree on oaks: English oak 0 dead in five years ",
    ", sessile oak all in three ",
    ", red oak 75 in 100 in 14 months ",
    ".",
];
/// Their sources.
pub const OAKS_SOURCES: [&str; 3] = ["S02", "REQUE2007", "M01"];

/// What the outlook's cell rests on, as the table says it.
pub fn outlook_basis(class: OutlookClass, size: SizeClass, anchors: &str, own: &str) -> String {
    let own = if own.is_empty() {
        String::new()
    } else {
        cat!(" Our own assumption, drawn dashed: ", own, ".")
    };
    let anchors = if anchors.is_empty() {
        String::new()
    } else {
        cat!(" Bounded by counts: ", anchors, ".")
    };
    cat!(
        "From the row for ",
        outlook_class(class),
        ", ",
        size_class(size),
        ".",
        anchors,
        own
    )
}

/// What the shares rest on, folded.
pub const OUTLOOK_BASIS: &str = "What these shares rest on";
/// Outlook.
pub const HOW_MANY_DIE: &str = "How many die, and when";
/// Outlook.
pub const TWIN_OUTLOOK: &str = "The shares as a table";
/// Outlook.
pub const HEAD_OUTLOOK: [&str; 4] = ["By the end of", "Low", "Likely", "High"];
/// A season, in a table.
pub const SEASON: &str = "season ";
/// Deaths counted on this species.
pub const DEATHS: &str = "Deaths counted on this species";
/// Heads of that table.
pub const HEAD_DEATHS: [&str; 7] = [
    "Dead, in 100",
    "After, months or seasons",
    "Trees",
    "Across",
    "Ring",
    "Season",
    "Source",
];
