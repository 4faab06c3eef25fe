//! The bark on a day, and the months of law and biology.

use super::say::Say;
use super::{phrase, region};
use crate::measure;
use calc::models::season::{DiseaseLine, RegionDates};
use calc::timing::closed_months::Topic;
use calc::timing::disease::DiseaseStatus;
use calc::timing::{Basis, Flag, Site, Verdict, YearsInTen};

/// Where the climate comes from.
pub fn nearest_place(km: f64, elevation: Option<&str>) -> String {
    let high = elevation.map_or_else(String::new, |high| cat!(", for ", high, " above the sea"));
    cat!(
        "Climate from the four nearest places, the nearest ",
        measure::plain(km, 0),
        " km (",
        measure::plain(km / 1.609_344, 0),
        " miles) off",
        high,
        "."
    )
}

/// The climate table could not be had.
pub const TABLE_MISSING: &str =
    "The climate table was not at hand, so the place could not be used: the dates are wider.";
/// The day.
pub const WHEN: &str = "When";
/// The question that this part answers.
pub const WHEN_ASKED: &str = "does the bark slip?";
/// The day of another method.
pub const WHEN_OTHER: &str = "months, and what law and biology say";
/// Year.
pub const TWIN_YEAR: &str = "The year tape as a table";
/// Rules by month.
pub const MORE_RULES: &str = "All months that law and biology name here";
/// Year.
pub const HEAD_YEAR: [&str; 4] = ["From", "To", "Bark", "Rules"];
/// Rules.
pub const HEAD_RULES: [&str; 4] = ["About", "From", "To", "Who says so"];
/// No rule meets the day.
pub const NO_RULE_ON_DAY: &str =
    "No months of law or biology in our table meet this day. Look for nests and bats all the same.";
/// All year.
pub const ALL_YEAR: &str = "all year";

/// A probability as people read it, in brackets behind a word.
pub fn years_in_ten(years: YearsInTen) -> String {
    match years {
        YearsInTen::HardlyEver => "hardly ever".into(),
        YearsInTen::About(1) => "about 1 year in 10".into(),
        YearsInTen::About(years) => {
            cat!("about ", measure::number(u32::from(years)), " years in 10")
        }
        YearsInTen::NearlyEvery => "nearly every year".into(),
    }
}

/// What the bark does on a day, as a clause about "its bark"; the number in brackets follows.
pub fn bark(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Dormant => "does not slip yet",
        Verdict::TooEarly => "seldom slips so early",
        Verdict::OpeningTest => "is beginning to slip",
        Verdict::Best => "slips",
        Verdict::ClosingTest => "is beginning to bind again",
        Verdict::Late => "has usually bound again",
        Verdict::Bonded => "is bound again",
        Verdict::TestFirst => "slips, as a rule: test first",
        Verdict::Unknown => "does not slip, as a rule",
    }
}

/// The same in a word or two, for tables and tags.
pub fn verdict(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Dormant => "dormant",
        Verdict::TooEarly => "too early: test",
        Verdict::OpeningTest => "opening: test first",
        Verdict::Best => "best",
        Verdict::ClosingTest => "closing: test first",
        Verdict::Late => "late: usually bonding",
        Verdict::Bonded => "bonded",
        Verdict::TestFirst => "test first",
        Verdict::Unknown => "does not slip, as a rule",
    }
}

/// Why the dates are less sure, as a sentence.
pub fn flag(flag: Flag) -> &'static str {
    match flag {
        Flag::NoPlace => "No place was given: the months of this half of the world are used.",
        Flag::RegionTooWide => {
            "The towns of this state or country differ too much for dates: the months of this half of the world are used. Name a town."
        }
        Flag::RegionWithoutDates => {
            "No dates of this state or country are at hand: the months of this half of the world are used. Name a town."
        }
        Flag::FarFromPlaces => {
            "The nearest climate station is over 300 km (190 miles) off: the months of this half of the world are used."
        }
        Flag::ElevationAssumed => {
            "The elevation was not given: that of the stations near is used. 100 m (330 ft) is about 2 days."
        }
        Flag::MildWinter => "Winters are mild here: opening dates mean little.",
        Flag::NoOpeningDate => "No month is cold here: test in any wet, growing month.",
        Flag::EarlyBudbreak => "Buds open very early here: the dates are less sure.",
        Flag::LowLatitude => "So near the equator the dates are less sure.",
        Flag::HighLatitude => "So near the pole the dates are less sure.",
        Flag::ElevationOdd => {
            "The elevation is far from that of the stations near: feet or metres? 100 m (330 ft) is about 2 days."
        }
        Flag::EstimatedSum => "The warmth this species needs is our own estimate.",
        Flag::EvergreenBroadleaf => {
            "An evergreen broadleaf has no dates: its bark slips whenever it grows and is wet. Test."
        }
        Flag::UnknownWood => {
            "How this wood grows is not known: the months of this half of the world are used."
        }
        Flag::ConiferNeedsPlace => "A conifer's dates come from temperatures: give the place.",
        Flag::TooCold => {
            "It never gets warm enough here by the table: the months of this half of the world are used."
        }
        Flag::ObservedOutOfSeason => {
            "The leaf-out you saw lies outside any spring here. It was not used."
        }
        Flag::ObservedFarFromClimate => {
            "The leaf-out you saw is over 45 days from what the climate gives. It was used: look at it again."
        }
        Flag::ObservedTooFar => {
            "The leaf-out was seen too far away to be carried here. It was not used."
        }
        Flag::ObservedNeedsElevation => {
            "The leaf-out needs both elevations to be carried here. It was not used."
        }
        Flag::ObservedNeedsPlace => {
            "Give the place of this tree, so that the leaf-out can be carried here."
        }
        Flag::SpringNeedsPlace => {
            "This spring's temperatures need a place with a climate station near. They were not used."
        }
        Flag::SpringBehindLeafOut => {
            "The leaf-out you saw counts before this spring's temperatures. They were not used."
        }
        Flag::SpringNotUsed => {
            "This spring's temperatures hold no day before leaf-out. They were not used."
        }
        Flag::SpringImpossible => {
            "This spring's temperatures can't be those of this place: look at unit, place and columns. They were not used."
        }
        Flag::SpringGaps => "This spring's temperatures have gaps, filled from ordinary years.",
        Flag::SpringFarFromClimate => {
            "This spring's temperatures are far from ordinary years: look at unit, place and columns. The dates are less sure."
        }
    }
}

/// Knowledge of one spring that the dates of another can't rest on.
pub const OTHER_SEASON: &str =
    "What you gave of one spring serves that season alone: the dates here are of another.";

/// Where a point out of reach of every station may have been meant to be.
pub fn meant(site: Site) -> String {
    let degrees = |value: f64| measure::plain(value, 2).replace('-', "−");
    cat!(
        "No station within 300 km (190 miles) of this point. Did you mean ",
        degrees(site.lat),
        ", ",
        degrees(site.lon),
        "? West and south are minus."
    )
}

/// Dates of a state or country: whose they are, and when the bark opens in a warm and a cold place of it.
#[must_use]
pub fn region_dates(region: &RegionDates, name: &str) -> String {
    let middle = cat!(
        "No town was given: these are the dates of ",
        &region.middle,
        ", in the middle of ",
        name
    );
    if region.warm == region.cold {
        return cat!(middle, ". Name a town for its own.");
    }
    cat!(
        middle,
        ": earlier in ",
        &region.warm,
        " (",
        measure::day(region.warm_opens),
        "), later in ",
        &region.cold,
        " (",
        measure::day(region.cold_opens),
        "). Name a town for its own."
    )
}

/// What the dates rest on.
pub fn basis(basis: Basis) -> String {
    let days = |value: f64| {
        let sign = if value < 0.0 { "−" } else { "+" };
        cat!(sign, measure::plain(libm::fabs(value), 0), " days")
    };
    match basis {
        Basis::ObservedHere => "leaf-out that you saw here this year".into(),
        Basis::ObservedElsewhere { shift_days } => {
            cat!(
                "leaf-out seen elsewhere this year, carried here: ",
                days(shift_days)
            )
        }
        Basis::OwnSpring {
            own_days, share, ..
        } => cat!(
            "this spring's own temperatures on ",
            measure::number(own_days),
            " days, ",
            measure::percent(share * 100.0),
            " in 100 of the warmth needed; the rest from ordinary years"
        ),
        Basis::Climate => "the climate of the place".into(),
        Basis::OtherYear => "a leaf-out of another year".into(),
    }
}

/// Oak wilt or the ash borer where the tree stands; none where no state was said, which is asked in its own place.
pub fn disease(line: &DiseaseLine, region: Option<&str>) -> Option<String> {
    let place = &region::in_sentence(region?);
    let (what, judged) = match line.topic {
        Topic::OakWilt => ("Oak wilt", "nothing is ruled out by it"),
        _ => (
            "The emerald ash borer",
            "an ash is judged as where it is known",
        ),
    };
    let who = line.authority;
    Some(match line.status {
        DiseaseStatus::Known => cat!(what, " is known in ", place, ". Ask ", who, "."),
        DiseaseStatus::Near => cat!(
            what,
            " is near ",
            place,
            ": ask whether it has arrived; ",
            judged,
            ". Ask ",
            who,
            "."
        ),
        DiseaseStatus::NotKnown if who.is_empty() => cat!(what, " is not known in ", place, "."),
        DiseaseStatus::NotKnown => cat!(what, " is not known in ", place, ". Ask ", who, "."),
        DiseaseStatus::Assumed => return None,
    })
}

/// What a rule is about.
pub fn topic(topic: Topic) -> &'static str {
    match topic {
        Topic::Birds => "Nesting birds",
        Topic::Bats => "Bats that roost in trees",
        Topic::Snags => "Snags kept for bats",
        Topic::OakWilt => "Oak wilt",
        Topic::Elm => "Elm disease and its beetles",
        Topic::PineBeetles => "Pine beetles",
        Topic::AshBorer => "Ash borer",
        Topic::LaurelWilt => "Laurel wilt",
        Topic::Group => "The group's own months",
    }
}

/// Where a rule comes from, and how binding it is.
pub fn rule_force(jurisdiction: &str, force: &str, is_default: bool) -> String {
    if is_default {
        return "A cautious default of our own: your state or country has no months of its own here, or was not given.".into();
    }
    cat!(jurisdiction, ": ", force, ".")
}

/// What stays true however good the day.
pub const ALWAYS_TEST: &str = "Open a patch the size of your hand first. If it tears, stop. Scrape the wood, and look again in 2 to 6 weeks.";
/// A short season.
pub const SHORT_SEASON: &str = "The season is short here: test every time.";

/// The next good stretch.
pub fn next_good(first: &str, after: Option<&str>) -> String {
    let more = match after {
        Some(after) => cat!(" The one after: ", after, "."),
        None => String::new(),
    };
    cat!(
        "The next good stretch, outside the months that rule a ring out: ",
        first,
        ".",
        more
    )
}

/// No stretch at all.
pub const NO_STRETCH: &str = "There is no good stretch in the next two years.";

/// Give or take, for dates.
pub fn give_or_take(opens: f64, closes: f64) -> String {
    cat!(
        "Give or take ",
        measure::plain(opens, 0),
        " days at the opening and ",
        measure::plain(closes, 0),
        " at the closing."
    )
}

/// Sunny side and fire, without a number.
pub const SIDES: &str = "The sunny side and old fire scars bind sooner: test there too.";
/// Guides that disagree with the model on this species.
pub const GUIDE_LONGER: &str = "Guides let this tree be ringed from late spring to midsummer; the model ends sooner. Both stand here: test.";
/// The sources of the two halves of `season-contested`.
pub const CONTESTED_SOURCES: [&str; 2] = ["S02", "M01"];
/// Names of the two lanes, and of what stands on the tape.
pub const BARK_LANE: &str = "Bark";
/// The lane of law and biology.
pub const RULES_LANE: &str = "Rules";
/// A notch.
pub const TODAY: &str = "today";

/// Bracket, long.
pub fn window(days: &str) -> String {
    cat!("your window: ", days)
}

/// Bracket, short.
pub const WINDOW_SHORT: &str = "window";
/// Key of the year tape.
pub const SLIPS: &str = "slips";
/// Hatched.
pub const MAY_SLIP: &str = "may slip: test";
/// Empty.
pub const DOES_NOT: &str = "does not";
/// Crossed.
pub const CLOSED: &str = "closed by a rule";
/// Dotted.
pub const CAUTION: &str = "a caution, closes nothing";
/// Notch.
pub const NOTCH: &str = "notch";
/// What it stands for.
pub const NOTCH_IS: &str = "your day";
/// Pin.
pub const PIN: &str = "pin";
/// What it stands for.
pub const PIN_IS: &str = "a visit, see below";
/// Beside an empty band.
pub const REST_OF_YEAR: &str = "the rest of the year";

/// The year tape for those who do not see it.
pub fn year_aria(year: &str, bands: &[(&str, &str)], asked: &str) -> String {
    let mut text = cat!("The bark in ", year);
    for (name, days) in bands.iter().filter(|(_, days)| !days.is_empty()) {
        text = cat!(text, ", ", name, " ", days);
    }
    if !asked.is_empty() {
        text = cat!(text, ", your day ", asked);
    }
    text
}

impl Say<'_> {
    /// The group's months: `1 April to 30 June and …`.
    pub fn group_months(&self) -> Option<String> {
        let months: Vec<String> = self
            .answer
            .rules
            .iter()
            .filter(|rule| rule.topic == calc::timing::closed_months::Topic::Group)
            .map(|rule| measure::month_days(rule.from_md, rule.to_md))
            .collect();
        (!months.is_empty()).then(|| {
            cat!(
                self.group_name(),
                " cuts no ring from ",
                phrase::row(&months)
            )
        })
    }
}
