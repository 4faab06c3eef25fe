//! The day of a build, as pages tell it: the same source gives the same day.

use chrono::NaiveDate;
use std::path::Path;
use std::process::Command;

/// The day that `SOURCE_DATE_EPOCH` states (seconds since 1970, reproducible-builds.org), else the day of the newest commit
/// of the project at `root`; none where neither is known.
pub(crate) fn of_the_source(root: &Path) -> Option<NaiveDate> {
    if let Ok(seconds) = std::env::var("SOURCE_DATE_EPOCH") {
        return day(&seconds);
    }
    let git = Command::new("git")
        .current_dir(root)
        .args(["log", "-1", "--format=%ct"])
        .output();
    day(&String::from_utf8_lossy(&git.ok()?.stdout))
}

fn day(seconds: &str) -> Option<NaiveDate> {
    let seconds = seconds.trim().parse().ok()?;
    Some(chrono::DateTime::from_timestamp(seconds, 0)?.date_naive())
}

#[cfg(test)]
mod tests {
    use super::*;

    /// POSIX.1-2017, 4.16: seconds since the Epoch; 1,800,000,000 s are 20,833 days and a third.
    #[test]
    fn seconds_are_a_day() {
        assert_eq!(day("1800000000\n"), NaiveDate::from_ymd_opt(2027, 1, 15));
        assert_eq!((day(""), day("yesterday")), (None, None));
    }
}
