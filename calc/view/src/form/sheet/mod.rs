//! What stands in each control, by the control's name. Read from a page ([`Sheet::push`]), or made from a
//! question (`fill`); what it says as a question stands in `say`.

mod asked;
mod fill;
mod names;
mod pack;
mod say;

pub use asked::{
    ASK_CLONE, ASK_FAR, ASK_HEIGHT, ASK_KIND, ASK_LINE, ASK_NOTHING, ASK_REGION, Unfinished,
};
pub(super) use names::{clear, names, slot};

use super::day::written;
use super::length::Length;
use super::place::named::region_of as region_named;
use calc::models::calibrate::Rate;
use calc::question::{Keyed, Typed};
use calc::terms::number::read_number;
use chrono::NaiveDate;

/// The list that says what the number of the first stem means: unit and way of measuring. A sheet holds the two apart.
pub(super) const AS: &str = "stems.as";
/// The kind of thing that says that nothing is there.
pub(super) const NOTHING: &str = "nothing";
/// Controls that no field of a question has, and that hold for the next tree too.
const OF_THE_FORM: [&str; 2] = ["day", "town"];

/// Names and contents of the controls: text as typed, the value of what is picked, `on` for a tick.
/// A name stands more than once where several boxes share it.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Sheet {
    entries: Vec<(String, String)>,
    /// The crew's own rate, which has no control.
    rate: Option<Rate>,
    /// Whether the day is written before the month, which is as the page's language has it.
    day_first: bool,
}

impl Sheet {
    /// A sheet of a new form: one empty stem, one empty thing, the day today, units of the United States.
    pub fn new() -> Self {
        let mut sheet = Self::default();
        sheet.set("stems[0].diameter", "");
        sheet.set("targets[0].distance", "");
        sheet.set("day", "today");
        sheet
    }

    /// Adds what stands in a control.
    pub fn push(&mut self, name: impl Into<String>, text: impl Into<String>) {
        let (name, text) = (name.into(), text.into());
        match text.split_once(' ') {
            Some((unit, way)) if name == AS => {
                self.set("stems.unit", unit);
                self.set(&how(0), way);
            }
            _ => self.entries.push((name, text)),
        }
    }

    /// What the list beside the first stem's number says.
    #[must_use]
    pub fn measured_as(&self) -> &'static str {
        match (self.metric(), self.around(0)) {
            (false, false) => "in across",
            (false, true) => "in around",
            (true, false) => "cm across",
            (true, true) => "cm around",
        }
    }

    /// Says in which order the page's language writes a day.
    pub fn write_days(&mut self, month_first: bool) {
        self.day_first = !month_first;
    }

    /// The day as the question has it; none where none is written.
    pub(super) fn day_written(&self, today: NaiveDate) -> Option<String> {
        written::read(self.get("day"), !self.day_first, today)
    }

    /// What the field of the day shows for what a sheet has in it.
    #[must_use]
    pub fn day_shown(&self, today: NaiveDate) -> String {
        written::shown(self.get("day"), Some(today))
    }

    /// Puts what stands here over what stands in another sheet.
    pub fn lay_over(&self, other: &mut Self) {
        for (name, text) in &self.entries {
            // Several boxes share this name.
            if name == "signs" {
                other.push(name, text);
            } else {
                other.set(name, text);
            }
        }
    }

    /// Whether nothing stands in it.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.entries.is_empty()
    }

    /// Keeps today as a word, so that a draft that is opened tomorrow says tomorrow's.
    pub fn settle_day(&mut self, today: NaiveDate) {
        if self.day_written(today).as_deref() == Some(&*calc::terms::day::iso(today)) {
            self.set("day", written::TODAY);
        }
    }

    /// Whether the day was written in a short way, so that it is told how it was read.
    pub(super) fn is_bare_day(&self, today: NaiveDate) -> bool {
        let text = self.trimmed("day");
        let digits = |part: &str| part.bytes().filter(u8::is_ascii_digit).count();
        let whole = text
            .split(|c: char| !c.is_ascii_alphanumeric())
            .any(|part| digits(part) == 4);
        let named = text.bytes().any(|c| c.is_ascii_alphabetic());
        let iso = text.split('-').next().is_some_and(|part| digits(part) == 4);
        !(whole && (named || iso)) && digits(text) > 0 && self.day_written(today).is_some()
    }

    /// Whether a control of such a name says something.
    pub(super) fn any(&self, of: impl Fn(&str) -> bool) -> bool {
        let mut entries = self.entries.iter();
        entries.any(|(name, text)| of(name) && !text.trim().is_empty())
    }

    /// The code of the region: the one that is picked, else the one that the place names.
    pub(super) fn region(&self) -> &str {
        match self.trimmed("region") {
            "" => region_named(self.get("town")).unwrap_or_default(),
            region => region,
        }
    }

    /// What stands in a control; empty if there is no such control, or nothing in it.
    pub fn get(&self, name: &str) -> &str {
        let found = self.entries.iter().find(|(known, _)| known == name);
        found.map_or("", |(_, text)| text)
    }

    /// The same without space round it.
    pub fn trimmed(&self, name: &str) -> &str {
        self.get(name).trim()
    }

    /// Whether nothing but space stands in a control.
    pub fn blank(&self, name: &str) -> bool {
        self.trimmed(name).is_empty()
    }

    /// Whether just this stands in a control.
    pub fn is(&self, name: &str, value: &str) -> bool {
        self.get(name) == value
    }

    /// Whether a box is ticked.
    pub fn ticked(&self, name: &str) -> bool {
        self.is(name, "on")
    }

    /// Whether one of the boxes of a name with this value is ticked.
    pub fn holds(&self, name: &str, value: &str) -> bool {
        self.entries.iter().any(|(n, v)| n == name && v == value)
    }

    /// Sets what stands in a control.
    pub fn set(&mut self, name: &str, text: &str) {
        match self.entries.iter_mut().find(|(known, _)| known == name) {
            Some((_, old)) => text.clone_into(old),
            None => self.push(name, text),
        }
    }

    /// What was preset and still stands as it was follows another preset.
    pub fn follow(&mut self, before: &Self, after: &Self) {
        for (name, _) in before.entries.iter().chain(&after.entries) {
            let now = after.get(name);
            if before.get(name) != now && self.get(name) == before.get(name) {
                self.set(name, now);
            }
        }
    }

    /// Keeps what a host has set and the form has no control for: the crew's rate.
    pub fn carry(&mut self, given: &Typed) {
        self.rate = given.rate;
    }

    /// Takes over what another sheet says of one thing: its names up to the first dot.
    pub fn take(&mut self, other: &Self, thing: &str) {
        let of = |name: &str| name.split('.').next() == Some(thing);
        let entries = other.entries.iter().filter(|(name, _)| of(name));
        self.entries.extend(entries.cloned());
    }

    /// How many entries a list has: `stems` or `targets`.
    pub fn count(&self, list: &str) -> usize {
        let mut count = 0;
        while self
            .entries
            .iter()
            .any(|(name, _)| entry(name, list) == Some(count))
        {
            count += 1;
        }
        count
    }

    /// Adds an empty entry to a list.
    pub fn add(&mut self, list: &str) {
        let at = self.count(list);
        let first = if list == "stems" {
            "diameter"
        } else {
            "distance"
        };
        self.push(path(list, at, first), "");
        // What is added is measured as the one before it was, until it is said otherwise.
        if list == "stems" {
            let before = self.get(&how(at.saturating_sub(1))).to_owned();
            self.set(&how(at), &before);
        } else if at > 0 {
            let before = self.get(&path(list, at - 1, "unit")).to_owned();
            self.set(&path(list, at, "unit"), &before);
        }
    }

    /// Takes an entry out of a list; those behind it move up.
    pub fn remove(&mut self, list: &str, at: usize) {
        if list == "stems" && at == 0 {
            // The second becomes the first, whose control has another name.
            let next = self.get(&how(1)).to_owned();
            self.set(&how(0), &next);
            self.entries.retain(|(name, _)| *name != how(1));
        }
        self.entries
            .retain(|(name, _)| entry(name, list) != Some(at));
        for (name, _) in &mut self.entries {
            if let Some(old) = entry(name, list).filter(|old| *old > at) {
                let key = name.rsplit('.').next().unwrap_or_default().to_owned();
                *name = path(list, old - 1, &key);
            }
        }
        if self.count(list) == 0 {
            self.add(list);
        }
    }

    /// Clears what belongs to one tree and keeps what belongs to the place, the day and the crew.
    pub fn next_tree(&mut self) {
        let typed = Typed::default();
        let stays = |first: &str| {
            let mut keys = typed.keys().iter();
            OF_THE_FORM.contains(&first) || keys.any(|key| key.stays && key.name == first)
        };
        self.entries.retain(|(name, value)| {
            let first = name.split('.').next().unwrap_or_default();
            let unit = name.ends_with("unit") && !name.contains('[');
            unit || name == "stems.how" || (stays(first) && value != "spare_one")
        });
        self.add("stems");
        self.add("targets");
    }

    /// The unit that a field's numbers are read in; empty where it holds no length.
    pub(super) fn unit(&self, field: &str) -> &'static str {
        Length::of(field).map_or("", |length| self.unit_of(&length))
    }

    /// The unit of a length: what is picked, else the one that goes with the trunk's.
    pub(super) fn unit_of(&self, length: &Length) -> &'static str {
        let [us, metric] = length.units();
        match self.get(&length.control) {
            picked if picked == us => us,
            picked if picked == metric => metric,
            _ if self.metric() => metric,
            _ => us,
        }
    }

    /// Whether the trunk is measured in centimetres.
    pub fn metric(&self) -> bool {
        self.is("stems.unit", "cm")
    }

    /// Whether the girth of a stem is given.
    pub fn around(&self, stem: usize) -> bool {
        self.is(&how(stem), "around")
    }
}

/// How a stem was measured: the control of the first one has a name without a number.
pub(in crate::form) fn how(stem: usize) -> String {
    if stem == 0 {
        "stems.how".to_owned()
    } else {
        path("stems", stem, "how")
    }
}

/// `stems[2].bark`.
pub(in crate::form) fn path(list: &str, at: usize, key: &str) -> String {
    let number = crate::measure::number(at as u32);
    [list, "[", &number, "].", key].concat()
}

/// A number with a unit behind it; text that carries its own, or is no number, as it is.
pub(in crate::form) fn with_unit(text: &str, unit: &str) -> String {
    match read_number(text.trim()) {
        Ok(number) if number.unit.is_none() => [text.trim(), " ", unit].concat(),
        _ => text.to_owned(),
    }
}

/// Which entry of a list a name belongs to.
pub(in crate::form) fn entry(name: &str, list: &str) -> Option<usize> {
    let rest = name.strip_prefix(list)?.strip_prefix('[')?;
    whole(rest.split_once(']')?.0).map(|at| at as usize)
}

/// A whole number of at most three digits.
pub(crate) fn whole(text: &str) -> Option<u32> {
    let fits = (1..=3).contains(&text.len()) && text.bytes().all(|c| c.is_ascii_digit());
    fits.then(|| {
        text.bytes()
            .fold(0, |sum, c| sum * 10 + u32::from(c - b'0'))
    })
}
