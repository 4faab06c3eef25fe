//! A group's own settings: what is wrong with them, and what stands in an answer in the group's name.

use super::say::Say;
use super::{phrase, problem};
use crate::measure;
use crate::words::m;
use calc::question::settings::{AskingGroup, Contact, SettingsFault, Told};
use chrono::NaiveDate;

/// What is told of one place of the settings, and what to do.
pub fn settings_told(told: &Told) -> String {
    let word = match &told.what {
        SettingsFault::UnknownKey => m::GROUP_UNKNOWN_KEY,
        SettingsFault::NoDay => m::GROUP_NO_DAY,
        SettingsFault::Hides => m::GROUP_HIDES,
        SettingsFault::Loosens => m::GROUP_LOOSENS,
        SettingsFault::Missing => m::GROUP_MISSING,
        SettingsFault::NoWay => m::GROUP_NO_WAY,
        SettingsFault::Markup => m::GROUP_MARKUP,
        SettingsFault::Link => m::GROUP_LINK,
        SettingsFault::Phone => m::GROUP_PHONE,
        SettingsFault::Day => m::GROUP_DAY,
        SettingsFault::Version => m::GROUP_VERSION,
        SettingsFault::Heads => m::GROUP_HEADS,
        SettingsFault::NoList => m::GROUP_NO_LIST,
        SettingsFault::TwoLists => m::GROUP_TWO_LISTS,
        SettingsFault::Quotes => m::GROUP_QUOTES,
        SettingsFault::TooLarge => {
            return m::group_too_large(calc::question::settings::LARGEST / 1000);
        }
        SettingsFault::NotTighter => {
            let keys = calc::question::settings::KEYS[5].1;
            return m::group_not_tighter(phrase::either(keys));
        }
        SettingsFault::WrongType(kind) => return m::group_wrong_type(*kind),
        SettingsFault::TooLong(most) => return m::group_too_long(*most as u32),
        SettingsFault::NotOneOf(words) => return m::group_not_one_of(phrase::either(words)),
        SettingsFault::OutOfRange(range) => {
            return m::group_out_of_range(m::GroupOutOfRange {
                low: measure::plain(range.low, 1),
                high: measure::plain(range.high, 0),
            });
        }
        SettingsFault::Field(problem) => return problem::problem_text(problem),
    };
    word.into()
}

/// Somebody to ask, by what they are asked for.
pub fn contact(contact: &Contact) -> String {
    m::group_contact(m::GroupContact {
        kind: m::group_contact_kind(contact.kind),
        name: &contact.name,
    })
}

/// How old something is that a group has checked.
pub fn checked(group: &AskingGroup, day: Option<NaiveDate>) -> String {
    match day {
        Some(day) if group.is_old(day) => m::group_last_checked(day),
        Some(day) => m::group_checked(day),
        None => m::GROUP_NOT_SAID_WHEN.into(),
    }
}

/// The age of the whole, where it is old.
pub fn settings_age(group: &AskingGroup) -> Option<String> {
    let day = group.settings.checked.filter(|day| group.is_old(*day))?;
    Some(m::group_age(&group.settings.name, day))
}

/// Above what a group says itself.
pub fn from_group(name: &str) -> String {
    m::group_from(name)
}

impl Say<'_> {
    /// What the group says of this species.
    pub fn group_notes(&self) -> Vec<String> {
        let species = self.question.tree.species.name;
        let notes = self
            .settings()
            .map_or(&[][..], |group| &group.species.notes);
        notes
            .iter()
            .filter(|(of, _)| of.name == species)
            .map(|(_, note)| {
                m::group_note(m::GroupNote {
                    group: self.group_name(),
                    note,
                })
            })
            .collect()
    }

    /// That distances are larger than the models ask for.
    pub fn group_farther(&self) -> Option<String> {
        let factor = self.group_factor()?;
        Some(m::group_farther(m::GroupFarther {
            group: self.group_name(),
            factor,
        }))
    }

    /// Why the group's size makes it a professional's, where it does.
    pub fn group_stops(&self) -> Option<String> {
        let group = self.group_answer().filter(|group| group.stops)?;
        let most = measure::size(group.volunteers_mm?).text(self.units());
        Some(m::group_stops(m::GroupStops {
            size: self.size(),
            group: &group.name,
            most,
        }))
    }
}
