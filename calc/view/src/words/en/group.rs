//! A group's own settings: what is wrong with them, and what stands in an answer in the group's name.

use super::say::Say;
use super::{phrase, problem};
use crate::measure;
use calc::question::settings::{CodeTopic, Contact, ContactKind, Group, Told, What};
use chrono::NaiveDate;

/// What is told of one place of the settings, and what to do.
pub fn settings_told(told: &Told) -> String {
    match &told.what {
        What::UnknownKey => "This is not read. Check its spelling, or take it out.".into(),
        What::NoDay => "Add the day that it was checked.".into(),
        What::Hides => "No setting hides or loosens a stop or a caution. Take it out.".into(),
        What::NotTighter => cat!(
            "Only what makes advice more cautious stands here: ",
            phrase::either(calc::question::settings::KEYS[5].1),
            "."
        ),
        What::Loosens => "Under 1 it would loosen the distances. Give 1 or more.".into(),
        What::Missing => "This is needed. Fill it in.".into(),
        What::NoWay => "Add a telephone or a link.".into(),
        What::WrongType(kind) => cat!("This must be of the kind “", kind, "”."),
        What::TooLarge => cat!("These settings are too large: at most ", measure::number((calc::question::settings::LARGEST / 1000) as u32), " kB."),
        What::TooLong(most) => cat!("At most ", measure::number(*most as u32), " here."),
        What::Markup => "Plain text only: no < or >, no script, no hidden signs.".into(),
        What::Link => "A link starts with https://, http:// or tel: and has no space, hidden sign or user name (@) in it.".into(),
        What::Phone => "A telephone has digits, spaces and + ( ) - . / alone.".into(),
        What::Day => "Write the day as 2026-05-01.".into(),
        What::NotOneOf(words) => cat!("Use ", phrase::either(words), "."),
        What::OutOfRange(range) => cat!(
            "Give a number from ",
            measure::plain(range.low, 1),
            " to ",
            measure::plain(range.high, 0),
            "."
        ),
        What::Version => "“schema” must be 1.".into(),
        What::Field(problem) => problem::problem_text(problem),
        What::Heads => "The first line names the columns: code,first,alias_en,note_en.".into(),
        What::NoList => "The list of species could not be had.".into(),
        What::TwoLists => "Name a list or paste one, not both.".into(),
        What::Quotes => "In the list of species a quote is opened and never closed.".into(),
    }
}

/// Above the form, where a group's settings could not be had or taken.
pub const SETTINGS_LEFT_OUT: &str = "The settings of this page's group can't be used now. What follows has none of its local contacts and rules in it.";

/// Somebody to ask, by what they are asked for.
pub fn contact(contact: &Contact) -> String {
    cat!(contact_kind(contact.kind), ": ", &contact.name)
}

/// What somebody is asked for.
pub fn contact_kind(kind: ContactKind) -> &'static str {
    match kind {
        ContactKind::Extension => "Advice",
        ContactKind::Utility => "Line owner",
        ContactKind::Professional => "Professional",
        ContactKind::Permit => "Permission",
        ContactKind::Emergency => "Emergency",
    }
}

/// What a local rule is about.
pub fn code_topic(topic: CodeTopic) -> &'static str {
    match topic {
        CodeTopic::StreetTrees => "Street trees",
        CodeTopic::Nesting => "Nesting",
        CodeTopic::Burning => "Burning and moving wood",
        CodeTopic::Products => "Products",
        CodeTopic::ProtectedSpecies => "Protected species",
        CodeTopic::WorkNearLines => "Work near lines",
    }
}

/// How old something is that a group has checked.
pub fn checked(group: &Group, day: Option<NaiveDate>) -> String {
    match day {
        Some(day) if group.is_old(day) => {
            cat!("Last checked ", measure::day_year(day), ": confirm first.")
        }
        Some(day) => cat!("Checked ", measure::day_year(day), "."),
        None => "It is not said when this was checked: confirm first.".into(),
    }
}

/// The age of the whole, where it is old.
pub fn settings_age(group: &Group) -> Option<String> {
    let day = group.settings.checked.filter(|day| group.is_old(*day))?;
    let day = measure::day_year(day);
    Some(cat!(
        "All that stands here from ",
        &group.settings.name,
        " was last checked ",
        day,
        ": confirm first."
    ))
}

/// Above what a group says itself.
pub fn from_group(name: &str) -> String {
    cat!("From ", name)
}

/// Who decides on a local rule stands behind this.
pub const AUTHORITY: &str = "Who decides: ";

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
            .map(|(_, note)| cat!(self.group_name(), ": ", note))
            .collect()
    }

    /// That distances are larger than the models ask for.
    pub fn group_farther(&self) -> Option<String> {
        let factor = self.group_factor()?;
        Some(cat!(
            self.group_name(),
            " asks for more room: distances here are for a tree ",
            factor,
            " times as tall."
        ))
    }

    /// Why the group's size makes it a professional's, where it does.
    pub fn group_stops(&self) -> Option<String> {
        let group = self.group_answer().filter(|group| group.stops)?;
        let most = measure::size(group.volunteers_mm?).text(self.units());
        Some(cat!(
            "it is ",
            self.size(),
            " across, and ",
            &group.name,
            " leaves trees over ",
            most,
            " to a professional"
        ))
    }
}
