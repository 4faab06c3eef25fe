//! Temperatures of one spring, as they were read.

use crate::measure;
use crate::words::m;
use calc::models::season::{Before, TimingAnswer};

/// Lines that are named one by one; the others are counted.
const NAMED: usize = 5;

/// A table of temperatures as it was read: days, doubts, bad lines, and why it was not used if it was not.
pub fn spring_read(timing: &TimingAnswer) -> Vec<String> {
    let Some(spring) = &timing.spring else {
        return Vec::new();
    };
    let mut list = vec![m::spring_days(spring.days)];
    list.extend(spring.doubts.iter().map(|it| m::spring_doubt(*it).into()));
    for bad in spring.bad.iter().take(NAMED) {
        list.push(m::spring_bad_line(bad.line, m::spring_trouble(bad.trouble)));
    }
    if spring.bad.len() > NAMED {
        list.push(m::spring_more_lines(spring.bad.len() - NAMED));
    }
    let flags = timing.flags.iter().filter(|it| it.of_spring());
    list.extend(flags.map(|it| m::season_flag(*it).into()));
    if timing.other_season {
        list.push(m::SEASON_OTHER_SEASON.into());
    }
    list
}

/// Dates without this year's own knowledge beside those with it.
pub fn before_and_after(before: &Before, after: &str) -> String {
    m::spring_before_and_after(m::SpringBeforeAndAfter {
        ordinary: measure::days(before.opens, before.closes),
        after,
    })
}
