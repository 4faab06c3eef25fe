//! Days as the year tape counts them.

use calc::models::season::Rules;
use calc::timing::Doy;
use chrono::NaiveDate;

/// A day of the drawings' year.
pub fn doy(day: NaiveDate) -> u16 {
    Doy::of(day).number() as u16
}

/// The same from month and day.
pub fn doy_md(md: (u8, u8)) -> u16 {
    Doy::from_month_day(u32::from(md.0), u32::from(md.1)).number() as u16
}

/// A rule of the whole year marks no months.
pub fn all_year(rule: &Rules) -> bool {
    rule.from_md == (1, 1) && rule.to_md == (12, 31)
}
