//! Words of the small aids: at a visit, measuring a height, timing one's own trees, pasted temperatures.

use crate::measure;
use calc::answer::{Before, TimingAnswer, VisitAnswer};
use calc::model::at_visit::{Act, NoAdvice, RingJudged, Seen};
use calc::model::calibrate::NoRate;
use calc::model::effort::Three;
use calc::model::height_aid::HeightBy;
use calc::model::height_aid::NoHeight;
use calc::timing::spring::{Doubt, Trouble};

/// What may be seen at a visit, in the order of a list.
pub const SEEN: [Seen; 8] = [
    Seen::Bridge,
    Seen::Sprouts,
    Seen::Suckers,
    Seen::CrownFull,
    Seen::CrownThin,
    Seen::CrownBare,
    Seen::Decay,
    Seen::Nothing,
];

/// What is seen.
#[must_use]
pub fn seen(seen: Seen) -> &'static str {
    match seen {
        Seen::Bridge => "Bark bridging the ring",
        Seen::Sprouts => "Sprouts below the ring",
        Seen::Suckers => "Suckers from the roots",
        Seen::CrownFull => "A full crown",
        Seen::CrownThin => "A thin crown",
        Seen::CrownBare => "A bare crown in leaf season",
        Seen::Decay => "Fungus, or limbs on the ground",
        Seen::Nothing => "Nothing of all this",
    }
}

/// What to do now.
#[must_use]
pub fn act_now(act: Act) -> &'static str {
    match act {
        Act::KeepOut => "keep out from under it",
        Act::ReopenBridge => "cut the bridge out and scrape",
        Act::TakeSprouts => "take the sprouts off",
        Act::TakeSuckers => "cut the suckers off, and go on for years",
        Act::RingAgain => "ring it again, wider",
        Act::Wait => "wait",
    }
}

/// How the ring stands.
#[must_use]
pub fn ring_judged(judged: RingJudged) -> &'static str {
    match judged {
        RingJudged::TooSoon => "too soon to tell",
        RingJudged::Working => "it works",
        RingJudged::Failed => "it failed",
        RingJudged::Dead => "dead above the ring",
        RingJudged::LookAtCrown => "the crown tells: full, thin or bare?",
    }
}

/// Why there is no advice.
#[must_use]
pub fn no_advice(why: NoAdvice) -> &'static str {
    match why {
        NoAdvice::BeforeTheRing => "The visit is before the ring. Check both days.",
        NoAdvice::Contradiction => "These can't both be. Tick what you see, and only that.",
        NoAdvice::NoSuchVisit => {
            "The list has no visit of that number. Pick one of it, or give a day."
        }
        NoAdvice::Stopped => {
            "Do nothing to it at a visit: settle first what is said here, and keep out from under it."
        }
        NoAdvice::NoRing => "No ring is advised here. Give the day on which it was ringed.",
    }
}

/// What to do at the visit that was asked about, how the ring stands, and when to come back.
#[must_use]
pub fn visit_advice(visit: &VisitAnswer) -> String {
    let Some(advice) = &visit.advice else {
        let why = visit.why_not.map_or("", no_advice);
        return match (visit.why_not, visit.ringed) {
            (Some(NoAdvice::BeforeTheRing), Some(ringed)) => {
                cat!("The ring is of ", measure::day_year(ringed), ". ", why)
            }
            _ => why.into(),
        };
    };
    let acts: Vec<&str> = advice.acts.iter().map(|act| act_now(*act)).collect();
    let day = visit.day.map_or_else(String::new, measure::day_year);
    let back = advice.come_back.map_or_else(
        || "No visit is left on the list.".into(),
        |back| cat!("Come back by ", measure::day_year(back), "."),
    );
    cat!(
        super::sentence(&acts.join("; ")),
        ". On ",
        day,
        ": ",
        ring_judged(advice.judged),
        ". ",
        back
    )
}

/// How a height was measured from the ground.
#[must_use]
pub fn height_by(by: HeightBy) -> &'static str {
    match by {
        HeightBy::Shadow => "by its shadow",
        HeightBy::Angles => "by a distance and two angles",
        HeightBy::Stick => "by a stick held upright",
    }
}

/// What timed trees make: the crew's minutes over the model's, or why not.
#[must_use]
pub fn timed(trees: usize, minutes: f64, no_rate: Option<NoRate>, factor: Option<Three>) -> String {
    let count = cat!(
        super::small(trees),
        if trees == 1 {
            " tree in "
        } else {
            " trees in "
        },
        measure::plain(minutes, 1),
        " minutes"
    );
    match (no_rate, factor) {
        (None, Some(factor)) => cat!(
            "From your own trees: ",
            count,
            ". That is ",
            times(factor),
            " our minutes, and used here."
        ),
        (why, _) => cat!(
            "Can't tell yet from ",
            count,
            ". ",
            why.map_or("", no_rate_said),
            " Our own rate is used."
        ),
    }
}

/// The crew's minutes over the model's: `1.2 times (0.9 to 1.6)`.
#[must_use]
pub fn times(factor: Three) -> String {
    let number = |value| measure::plain(value, 2);
    cat!(
        number(factor.likely),
        " times (",
        super::to(number(factor.low), number(factor.high)),
        ")"
    )
}

/// Why measurements make no height.
#[must_use]
pub fn no_height(why: NoHeight) -> &'static str {
    match why {
        NoHeight::NotPositive => "Every length must be more than 0.",
        NoHeight::BadAngle => "Angles lie between −90 and 90 degrees.",
        NoHeight::AnglesDoNotMeet => "The top must be above the foot. Read both angles again.",
        NoHeight::OutOfRange => "That is beyond any tree. Check units and readings.",
    }
}

/// Why trees give no rate.
#[must_use]
pub fn no_rate_said(why: NoRate) -> &'static str {
    match why {
        NoRate::TooFewTrees => {
            "Time at least two trees: one says more about the tree than about you."
        }
        NoRate::NoMinutes => "Type how many minutes they took together.",
        NoRate::FarOff => "That is far from any crew. Check minutes and diameters.",
    }
}

/// What is wrong with a line of temperatures.
#[must_use]
pub fn trouble(trouble: Trouble) -> &'static str {
    match trouble {
        Trouble::TooFewCells => "fewer than three cells",
        Trouble::NoDate => "its date can't be read",
        Trouble::NoNumber => "a temperature is missing or no number",
        Trouble::MinimumAboveMaximum => "the lowest is above the highest",
        Trouble::OutOfRange => "beyond what air has been measured at",
        Trouble::Twice => "the day was there before, with other values",
    }
}

/// What is doubtful about a table of temperatures.
#[must_use]
pub fn doubt(doubt: Doubt) -> &'static str {
    match doubt {
        Doubt::Nothing => "No line of the temperatures could be used.",
        Doubt::TooLong => "Only the first four years of temperatures were read.",
        Doubt::NoScale => "Nobody said °C or °F: °C was taken.",
        Doubt::LooksLikeFahrenheit => "The numbers look like °F and are called °C.",
        Doubt::ColumnsSwapped => {
            "Lowest and highest seem to stand the other way round: they were read so."
        }
        Doubt::DayOrMonthFirst => "Day or month first? No line shows it: write 2027-04-12.",
        Doubt::OtherSeason => "Every day lies in another season than the day of the work.",
        Doubt::Gaps => "Days are missing between the first and the last.",
    }
}

/// Lines that are named one by one; the others are counted.
const NAMED: usize = 5;

/// A table of temperatures as it was read: days, doubts, bad lines, and why it was not used if it was not.
#[must_use]
pub fn spring_read(timing: &TimingAnswer) -> Vec<String> {
    let Some(spring) = &timing.spring else {
        return Vec::new();
    };
    let count = |value: usize| measure::number(value as u32);
    let mut list = vec![cat!("Days of temperatures read: ", count(spring.days), ".")];
    list.extend(spring.doubts.iter().map(|it| doubt(*it).to_owned()));
    for bad in spring.bad.iter().take(NAMED) {
        list.push(cat!(
            "Line ",
            count(bad.line),
            " was not used: ",
            trouble(bad.trouble),
            "."
        ));
    }
    if spring.bad.len() > NAMED {
        list.push(cat!(
            count(spring.bad.len() - NAMED),
            " more lines were not used."
        ));
    }
    let flags = timing.flags.iter().filter(|it| it.of_spring());
    list.extend(flags.map(|it| super::flag(*it).to_owned()));
    if timing.other_season {
        list.push(super::OTHER_SEASON.into());
    }
    list
}

/// Dates without this year's own knowledge beside those with it.
#[must_use]
pub fn before_and_after(before: &Before, after: &str) -> String {
    cat!(
        "From ordinary years the bark would slip ",
        measure::days(before.opens, before.closes),
        "; with what you gave of this year, ",
        after,
        "."
    )
}

/// Where the climate comes from.
#[must_use]
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
/// Puts the visits into a calendar file.
pub const CALENDAR: &str = "Add to calendar";
/// At a visit, folded.
pub const AT_A_VISIT: &str = "At a visit: what you see, and what to do";
/// Its heads.
pub const HEAD_VISIT: [&str; 4] = ["You see", "Do now", "At first", "In season 3"];

/// The choice at a visit, folded.
pub const VISIT_NOW: &str = "You are at a visit: tell what you see";
/// When the visit is.
pub const VISIT_WHEN: &str = "Which visit is it?";
/// Today, as a choice.
pub const VISIT_TODAY: &str = "Today";
/// The crown, as a choice.
pub const VISIT_CROWN: &str = "The crown";
/// Nothing was said of the crown.
pub const VISIT_NO_CROWN: &str = "Not looked at";
/// The rest, as a choice.
pub const VISIT_SEEN: &str = "Tick what else you see";
/// A rate that came with the question.
pub const OWN_RATE: &str = "With your own rate, from trees that you timed: ours ";
/// Before the advice.
pub const VISIT_ADVICE: &str = "At this visit:";
/// Timed trees: kept, taken off, refused, none, in a file, opened, another file.
pub const TIMED_KEPT: &str = "Kept on this device, for every tree on this page.";
/// Taken off the device.
pub const TIMED_FORGOTTEN: &str = "No longer kept. What stands in the fields stays.";
/// Nothing can be kept or saved.
pub const TIMED_REFUSED: &str = "This page can keep nothing. Write them down.";
/// Nothing to keep.
pub const TIMED_NONE: &str = "Type the sizes of your own trees and their minutes first.";
/// In a file.
pub const TIMED_SAVED: &str = "The timed trees are in a file.";
/// Filled in from a file.
pub const TIMED_OPENED: &str = "The timed trees of that file are filled in.";
/// Another file.
pub const TIMED_OTHER: &str =
    "That is no file of timed trees of this version. Open one that was downloaded here.";
