//! Temperatures of one spring, as they were read.

use super::season;
use crate::measure;
use calc::models::season::{Before, TimingAnswer};
use calc::timing::spring::{Doubt, Trouble};

/// What is wrong with a line of temperatures.
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
    list.extend(flags.map(|it| season::flag(*it).to_owned()));
    if timing.other_season {
        list.push(season::OTHER_SEASON.into());
    }
    list
}

/// Dates without this year's own knowledge beside those with it.
pub fn before_and_after(before: &Before, after: &str) -> String {
    cat!(
        "From ordinary years the bark would slip ",
        measure::days(before.opens, before.closes),
        "; with what you gave of this year, ",
        after,
        "."
    )
}
