//! What comes afterwards: visits, outlook, habitat, minutes.

use crate::measure;
use calc::model::visits::VisitKind;
use calc::reference::{OutlookClass, SizeClass};
use calc::terms::method::Method;
use calc::terms::small::find;
use calc::terms::species::Durability;

/// What to look for at a visit, and what to do, after a method.
#[must_use]
pub fn visit(kind: VisitKind, method: Method) -> &'static str {
    let ring = matches!(method, Method::BarkRing | Method::SawRing);
    match kind {
        VisitKind::Recheck if ring => {
            "Is the ring open all the way round? Bark bridging it: cut it out and scrape again."
        }
        VisitKind::Recheck => "Do leaves wilt all round? None yet is no failure. Keep people out.",
        VisitKind::EndOfSeason if ring => {
            "Bark bridging: cut it out. Sprouts below the ring: take them off. A full crown is no failure yet."
        }
        VisitKind::EndOfSeason => "Crown full, thin or bare? Sprouts: tell who treated it.",
        VisitKind::Sprouts if ring => {
            "Sprouts below the ring, suckers from the roots: take them off. Crown full, thin or bare? New bark across: cut it out."
        }
        VisitKind::Sprouts if method.needs_herbicide() => {
            "Sprouts and suckers: tell who treated it, or cut them off."
        }
        VisitKind::Sprouts => "Sprouts from the stump, suckers from the roots: cut them again.",
        VisitKind::Yearly => {
            "Once a year until two clean years in a row, and after storms. Look up before you go near."
        }
    }
}

/// What a visit's event in a calendar is called.
#[must_use]
pub fn calendar_title(
    question: &calc::question::Question,
    answer: &calc::answer::Answer,
) -> String {
    let size = measure::size(question.largest().dbh.mm()).text(question.units);
    cat!("Check the ", answer.species.name, ", ", size)
}

/// When death may be judged.
#[must_use]
pub fn judge_death(larch: bool) -> &'static str {
    if larch {
        "Do not call it dead before it should have leafed out again."
    } else {
        "Do not call it dead before the second autumn."
    }
}

/// The title's question of the visits.
#[must_use]
pub fn visits_count(count: usize, years: usize) -> String {
    let visits = if count == 1 { " visit" } else { " visits" };
    let years_word = if years == 1 { " year" } else { " years" };
    cat!(small(count), visits, " in ", small(years), years_word)
}

/// Small counts in words.
#[must_use]
pub fn small(count: usize) -> String {
    const WORDS: [&str; 13] = [
        "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
        "eleven", "twelve",
    ];
    WORDS
        .get(count)
        .map_or_else(|| measure::number(count as u32), |word| (*word).into())
}

/// A class of the outlook table.
#[must_use]
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
#[must_use]
pub fn size_class(size: SizeClass) -> &'static str {
    match size {
        SizeClass::All => "any size",
        SizeClass::Small => "under 6 in (15 cm)",
        SizeClass::Middle => "6 to 10 in (15 to 25 cm)",
        SizeClass::Large => "over 10 in (25 cm)",
        SizeClass::UnderTen => "under 10 in (25 cm)",
    }
}

/// A durability class.
#[must_use]
pub fn durability(class: Durability) -> &'static str {
    match class {
        Durability::A => "longest-lasting wood",
        Durability::B => "long-lasting wood",
        Durability::C => "middling wood",
        Durability::D => "short-lived wood",
    }
}

fn percents(low: f64, high: f64) -> String {
    super::to(measure::percent(low), measure::percent(high))
}

/// A share, low to high, with its likely value where there is one: `about 60 in 100 (40 to 80)`.
#[must_use]
pub fn share(share: &calc::reference::Share) -> String {
    let ends = percents(share.low, share.high);
    match share.likely {
        Some(likely) => cat!("about ", measure::percent(likely), " in 100 (", ends, ")"),
        None => cat!(ends, " in 100"),
    }
}

/// Over a bar: short, since it stands inside the drawing.
#[must_use]
pub fn season_bar(season: u8, share: &calc::reference::Share) -> String {
    let ends = percents(share.low, share.high);
    let said = match share.likely {
        Some(likely) => cat!(measure::percent(likely), " (", ends, ")"),
        None => ends,
    };
    cat!("season ", measure::number(u32::from(season)), ": ", said)
}

/// The lead of the outlook.
#[must_use]
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
#[must_use]
pub fn outlook_poor(share: &str) -> String {
    cat!(
        "Fewer than half are likely to be dead by the end of season 3: ",
        share,
        "."
    )
}

/// Share that needs a second ring.
#[must_use]
pub fn second_ring(low: f64, high: f64) -> String {
    cat!(percents(low, high), " in 100 need a second ring.")
}

/// Sprouting after cutting.
#[must_use]
pub fn sprouting(low: f64, high: f64) -> String {
    let (low, high) = (
        measure::percent(low * 100.0),
        measure::percent(high * 100.0),
    );
    let ends = if low == high {
        low
    } else {
        super::to(low, high)
    };
    cat!(
        "Of stems of this size that are cut, ",
        ends,
        " in 100 sprout: an upper bound for a ring."
    )
}

/// A species' own row.
#[must_use]
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
#[must_use]
pub fn season_name(when: &str) -> String {
    if when.bytes().all(|c| c.is_ascii_digit()) {
        return cat!("season ", when);
    }
    match when {
        "end" => "in the end".into(),
        other => cat!("after ", other),
    }
}

/// The stem that is spared.
pub const SPARED_UNPROVEN: &str = "Common practice says that the stem you leave lives on and the ringed ones die. \
We found no trial of it, so it is unproven.";

/// Trials that disagree on oaks.
pub const OAKS_DISAGREE: [&str; 4] = [
    "Trials disagree on oaks: English oak 0 dead in five years ",
    ", sessile oak all in three ",
    ", red oak 75 in 100 in 14 months ",
    ".",
];
/// Their sources.
pub const OAKS_SOURCES: [&str; 3] = ["S02", "M07", "M01"];

/// What it leaves, in a sentence.
#[must_use]
pub fn leaves_lead(feeding_only: bool, users: usize, region_known: bool, size: &str) -> String {
    if feeding_only {
        return cat!(
            "Feeding wood, no cavities: ",
            size,
            " is under the 6 in (15 cm) at which the smallest cavity nesters begin."
        );
    }
    if !region_known {
        return cat!(
            "Thick enough for cavities at ",
            size,
            ". Give the state, and the animals that may use it stand here."
        );
    }
    match users {
        0 => cat!(
            "At ",
            size,
            " no cavity nester of the table reaches its size here; it is still feeding wood."
        ),
        1 => "One cavity user of this region may use a tree of this size.".into(),
        users => cat!(
            super::sentence(&small(users)),
            " cavity users of this region may use a tree of this size."
        ),
    }
}

/// Half-life, in words.
#[must_use]
pub fn standing(low: f64, likely: f64, high: f64) -> String {
    cat!(
        "Half of such trees are down ",
        measure::years(low),
        " to ",
        measure::years(high),
        " years after death, typically ",
        measure::years(likely),
        ". Death comes 1 to 3 years after the ring. Our own assumption."
    )
}

/// What a snag does not do.
pub const NOT_GOOD_FOR: &str =
    "A dying tree can shed limbs before it looks dead. Keep paths, seats and camps away.";

/// How long it takes: the lead, and what makes it slower.
#[must_use]
pub fn minutes_lead(span: &[String; 3], hours: bool) -> String {
    cat!(super::sentence(&minutes_said(span, hours)), ".")
}

/// The same inside a sentence.
#[must_use]
pub fn minutes_said(span: &[String; 3], hours: bool) -> String {
    let unit = if hours { " hours (" } else { " minutes (" };
    cat!("about ", &span[1], unit, &span[0], " to ", &span[2], ")")
}

/// At the tick.
#[must_use]
pub fn minutes_tick(likely: &str, hours: bool) -> String {
    cat!(likely, if hours { " h" } else { " min" })
}

/// What they are for.
#[must_use]
pub fn minutes_for(width: &str, walk: f64, practised: bool) -> String {
    let crew = if practised { " A practised crew." } else { "" };
    let walk = if walk > 0.0 {
        cat!(
            " Walking from the last tree in it: ",
            measure::minutes(walk),
            " min."
        )
    } else {
        String::new()
    };
    cat!(
        "For the better width, ",
        width,
        ". Tight bark, thick bark and poor footing make it slower.",
        walk,
        crew
    )
}

/// Several stems have several widths.
pub const EACH_BETTER: &str = "each stem's own";

/// Visits cost time too.
#[must_use]
pub fn visit_minutes(low: f64, likely: f64, high: f64) -> String {
    cat!(
        "Each visit to take sprouts off: about ",
        measure::minutes(likely),
        " minutes (",
        measure::minutes(low),
        " to ",
        measure::minutes(high),
        ")."
    )
}

/// Over three years, and over the whole list of visits.
#[must_use]
pub fn long_minutes(three: (usize, String), whole: (usize, String)) -> String {
    cat!(
        "With the ",
        small(three.0),
        " visits of the three years it comes to ",
        three.1,
        "; with all ",
        small(whole.0),
        " on the list, ",
        whole.1,
        ". The first look is not counted: nobody timed one."
    )
}

/// What is not known of minutes.
pub const NO_TABLE: &str = "No published table of minutes by diameter exists. These are put together from rates of like work.";

/// Names of the tasks, and of the rest.
pub const TASKS: [&str; 5] = [
    "Find a stand, tools, look up",
    "Clear limbs below the ring",
    "Score two lines",
    "Peel",
    "Scrape and check",
];
/// The walk, as a row.
pub const TASK_WALK: &str = "Walk from the last tree";
/// The sum with rest and delays, as a row.
pub const TASK_ALL: &str = "All, with rest and delays";
/// Axis of minutes.
pub const MIN: &str = "min";
/// Axis of hours.
pub const HOURS: &str = "h";
/// Axis of years.
pub const YEARS: &str = "years";
/// Axis of shares.
pub const IN_100: &str = "in 100";

/// What the outlook's cell rests on, as the table says it.
#[must_use]
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
/// Snags an acre, folded.
pub const SNAG_GUIDES: &str = "How many such trees an acre? What guidelines ask for";
/// Its heads.
pub const HEAD_GUIDES: [&str; 3] = ["Whose", "Snags an acre", "Source"];
/// The region's own guideline.
#[must_use]
pub fn snag_guide(guidance: &str, per_acre: &str) -> String {
    cat!(guidance, ": ", per_acre, " snags an acre.")
}
/// How each animal uses a tree, folded.
pub const USERS_HOW: &str = "How each of them uses a dead tree";

/// The part of a remark that says how an animal uses a tree; the rest names size classes and rows.
#[must_use]
pub fn user_note(note: &'static str) -> &'static str {
    let end = [";", ": see also"]
        .iter()
        .filter_map(|mark| find::place(note, mark))
        .min()
        .unwrap_or(note.len());
    find::cut(note, end).0
}
