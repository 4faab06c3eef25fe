//! The bark on a day, and the months of law and biology.

use super::say::Say;
use super::{phrase, region};
use crate::measure;
use crate::words::gap::Date;
use crate::words::prose::prose;
use crate::words::{Word, m};
use calc::models::season::{DiseaseLine, RegionDates};
use calc::terms::source::{M01, S02, SourceId};
use calc::timing::closed_months::Topic;
use calc::timing::disease::DiseaseStatus;
use calc::timing::{Basis, Site, YearsInTen};

/// Where the climate comes from.
pub fn nearest_place(km: f64, elevation: Option<&str>) -> String {
    let (km, miles) = (measure::plain(km, 0), measure::plain(km / 1.609_344, 0));
    match elevation {
        Some(elevation) => m::season_nearest_high(m::SeasonNearestHigh {
            km,
            miles,
            elevation,
        }),
        None => m::season_nearest(m::SeasonNearest { km, miles }),
    }
}

/// Year.
pub const HEAD_YEAR: [Word; 4] = [
    m::SEASON_HEAD_YEAR_FROM,
    m::SEASON_HEAD_YEAR_TO,
    m::SEASON_HEAD_YEAR_BARK,
    m::SEASON_HEAD_YEAR_RULES,
];
/// Rules.
pub const HEAD_RULES: [Word; 4] = [
    m::SEASON_HEAD_RULES_ABOUT,
    m::SEASON_HEAD_RULES_FROM,
    m::SEASON_HEAD_RULES_TO,
    m::SEASON_HEAD_RULES_WHO_SAYS_SO,
];

/// A probability as people read it, in brackets behind a word.
pub fn years_in_ten(years: YearsInTen) -> String {
    match years {
        YearsInTen::HardlyEver => m::SEASON_HARDLY_EVER.into(),
        YearsInTen::About(years) => m::season_years_in_ten(years),
        YearsInTen::NearlyEvery => m::SEASON_NEARLY_EVERY.into(),
    }
}

/// Where a point out of reach of every station may have been meant to be.
pub fn meant(site: Site) -> String {
    let degrees = |value: f64| measure::plain(value, 2).replace('-', "−");
    m::season_meant(m::SeasonMeant {
        lat: degrees(site.lat),
        lon: degrees(site.lon),
    })
}

/// Dates of a state or country: whose they are, and when the bark opens in a warm and a cold place of it.
#[must_use]
pub fn region_dates(region: &RegionDates, name: &str) -> String {
    if region.warm == region.cold {
        return m::season_region(m::SeasonRegion {
            town: &region.middle,
            region: name,
        });
    }
    m::season_region_wide(m::SeasonRegionWide {
        town: &region.middle,
        region: name,
        warm: &region.warm,
        warm_day: Date::day(region.warm_opens),
        cold: &region.cold,
        cold_day: Date::day(region.cold_opens),
    })
}

/// What the dates rest on.
pub fn basis(basis: Basis) -> String {
    match basis {
        Basis::ObservedHere => m::SEASON_SEEN_HERE.into(),
        Basis::ObservedElsewhere { shift_days } => {
            let sign = if shift_days < 0.0 { "−" } else { "+" };
            m::season_seen_elsewhere(cat!(sign, measure::plain(libm::fabs(shift_days), 0)))
        }
        Basis::OwnSpring {
            own_days, share, ..
        } => m::season_own_spring(own_days, share * 100.0),
        Basis::Climate => m::SEASON_CLIMATE.into(),
        Basis::OtherYear => m::SEASON_OTHER_YEAR.into(),
    }
}

/// Oak wilt or the ash borer where the tree stands; none where no state was said, which is asked in its own place.
pub fn disease(line: &DiseaseLine, region: Option<&str>) -> Option<String> {
    let place = &region::in_sentence(region?);
    let oak = line.topic == Topic::OakWilt;
    let who = prose(line.authority);
    let who = who.as_str();
    Some(match (line.status, oak) {
        (DiseaseStatus::Known, true) => {
            m::season_oak_wilt_known(m::SeasonOakWiltKnown { place, who })
        }
        (DiseaseStatus::Known, false) => m::season_borer_known(m::SeasonBorerKnown { place, who }),
        (DiseaseStatus::Near, true) => m::season_oak_wilt_near(m::SeasonOakWiltNear { place, who }),
        (DiseaseStatus::Near, false) => m::season_borer_near(m::SeasonBorerNear { place, who }),
        (DiseaseStatus::NotKnown, true) if who.is_empty() => m::season_oak_wilt_unknown(place),
        (DiseaseStatus::NotKnown, false) if who.is_empty() => m::season_borer_unknown(place),
        (DiseaseStatus::NotKnown, true) => {
            m::season_oak_wilt_unknown_ask(m::SeasonOakWiltUnknownAsk { place, who })
        }
        (DiseaseStatus::NotKnown, false) => {
            m::season_borer_unknown_ask(m::SeasonBorerUnknownAsk { place, who })
        }
        (DiseaseStatus::Assumed, _) => return None,
    })
}

/// Where a rule comes from, and how binding it is.
pub fn rule_force(jurisdiction: &str, force: &str, is_default: bool) -> String {
    if is_default {
        return m::SEASON_RULE_DEFAULT.into();
    }
    m::season_rule_force(m::SeasonRuleForce {
        whose: jurisdiction,
        force,
    })
}

/// The next good stretch.
pub fn next_good(first: &str, after: Option<&str>) -> String {
    match after {
        Some(after) => m::season_next_two(m::SeasonNextTwo { first, after }),
        None => m::season_next_good(first),
    }
}

/// Give or take, for dates.
pub fn give_or_take(opens: f64, closes: f64) -> String {
    m::season_give_or_take(m::SeasonGiveOrTake {
        opens: measure::plain(opens, 0),
        closes: measure::plain(closes, 0),
    })
}

/// The sources of the two halves of `season-contested`.
pub const CONTESTED_SOURCES: [SourceId; 2] = [S02, M01];

/// Bracket, long.
pub fn window(days: &str) -> String {
    m::season_window_label(days)
}

/// The year tape for those who do not see it.
pub fn year_aria(year: &str, bands: &[(&str, &str)], asked: &str) -> String {
    let mut text = m::season_year_aria(year);
    for (name, days) in bands.iter().filter(|(_, days)| !days.is_empty()) {
        text = phrase::comma(text, &cat!(*name, " ", *days));
    }
    if asked.is_empty() {
        text
    } else {
        phrase::comma(text, &m::season_year_asked(asked))
    }
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
            m::season_group_months(m::SeasonGroupMonths {
                group: self.group_name(),
                months: phrase::row(&months),
            })
        })
    }
}
