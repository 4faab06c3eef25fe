//! Reads one value each: what it must be, and what is told where it is not.

use super::Reader;
use crate::question::read_day;
use crate::question::settings::{KEYS, SettingsFault, Told, Value};
use crate::terms::quantity::Range;
use crate::terms::small::decimals::fixed;
use crate::terms::small::find::holds;
use chrono::NaiveDate;

/// Pieces of keys that would take a stop or a caution away, or make it milder.
const HIDING: [&str; 7] = [
    "hide", "caution", "stop", "loosen", "disable", "suppress", "skip",
];
/// Longest name, text and address, in characters; most entries of a list.
pub(super) const NAME: usize = 80;
pub(super) const TEXT: usize = 600;
pub(super) const URL: usize = 300;
pub(super) const MOST: usize = 200;

/// An object that is being read.
pub(super) struct Fields<'v> {
    pub(super) path: String,
    entries: &'v [(String, Value)],
}

impl<'v> Fields<'v> {
    pub(super) fn get(&self, key: &str) -> Option<&'v Value> {
        let entry = self.entries.iter().find(|(known, _)| known == key);
        entry
            .map(|(_, value)| value)
            .filter(|it| **it != Value::Null)
    }

    pub(super) fn at(&self, key: &str) -> String {
        let dot = if self.path.is_empty() { "" } else { "." };
        [&self.path, dot, key].concat()
    }
}

fn element(path: &str, at: usize) -> String {
    [path, "[", &fixed(at as f64, 0), "]"].concat()
}

impl Reader {
    pub(super) fn tell(&mut self, path: &str, what: SettingsFault) {
        let path = path.chars().take(NAME).collect();
        self.told.push(Told { path, what });
    }

    /// An object; keys that it does not have are told.
    pub(super) fn map<'v>(
        &mut self,
        value: &'v Value,
        path: &str,
        kind: &str,
    ) -> Option<Fields<'v>> {
        let Value::Map(entries) = value else {
            self.tell(path, SettingsFault::WrongType("object"));
            return None;
        };
        let fields = Fields {
            path: path.into(),
            entries,
        };
        let known = KEYS.iter().find(|(of, _)| *of == kind);
        let known = known.map_or(&[][..], |(_, keys)| keys);
        for (key, _) in entries {
            if known.contains(&key.as_str()) {
                continue;
            }
            let low = key.to_ascii_lowercase();
            let what = if HIDING.iter().any(|piece| holds(&low, piece)) {
                SettingsFault::Hides
            } else if kind == "tighten" {
                SettingsFault::NotTighter
            } else {
                SettingsFault::UnknownKey
            };
            self.tell(&fields.at(key), what);
        }
        Some(fields)
    }

    pub(super) fn object<'v>(&mut self, fields: &Fields<'v>, key: &str) -> Option<Fields<'v>> {
        let path = fields.at(key);
        self.map(fields.get(key)?, &path, key)
    }

    /// The values of a list, each with its path.
    pub(super) fn list<'v>(&mut self, fields: &Fields<'v>, key: &str) -> Vec<(String, &'v Value)> {
        let path = fields.at(key);
        match fields.get(key) {
            None => Vec::new(),
            Some(Value::List(values)) => {
                if values.len() > MOST {
                    self.tell(&path, SettingsFault::TooLong(MOST));
                }
                let each = values.iter().take(MOST).enumerate();
                each.map(|(at, value)| (element(&path, at), value))
                    .collect()
            }
            Some(_) => {
                self.tell(&path, SettingsFault::WrongType("list"));
                Vec::new()
            }
        }
    }

    /// The objects of a list.
    pub(super) fn each<'v>(&mut self, fields: &Fields<'v>, key: &str) -> Vec<Fields<'v>> {
        let kind = [key, "[]"].concat();
        let list = self.list(fields, key);
        list.into_iter()
            .filter_map(|(path, value)| self.map(value, &path, &kind))
            .collect()
    }

    pub(super) fn need(&mut self, fields: &Fields<'_>, key: &str) {
        if fields.get(key).is_none() {
            self.tell(&fields.at(key), SettingsFault::Missing);
        }
    }

    pub(super) fn needed(&mut self, fields: &Fields<'_>, key: &str, most: usize) -> String {
        self.need(fields, key);
        self.text(fields, key, most).unwrap_or_default()
    }

    pub(super) fn text(&mut self, fields: &Fields<'_>, key: &str, most: usize) -> Option<String> {
        self.words(fields.get(key)?, &fields.at(key), most)
    }

    /// A text, or one for each language, of which English is taken first.
    pub(super) fn words(&mut self, value: &Value, path: &str, most: usize) -> Option<String> {
        match value {
            Value::Text(text) => self.plain(text, path, most),
            Value::Map(entries) => {
                let mut taken = None;
                for (language, text) in entries {
                    let path = [path, ".", language].concat();
                    let (Value::Text(text), "en" | "es") = (text, language.as_str()) else {
                        self.tell(&path, SettingsFault::WrongType("text"));
                        continue;
                    };
                    let text = self.plain(text, &path, most);
                    if taken.is_none() || language == "en" {
                        taken = text;
                    }
                }
                taken
            }
            _ => {
                self.tell(path, SettingsFault::WrongType("text"));
                None
            }
        }
    }

    /// A text without markup, without space round it. An empty one is none, and where one is needed it is missed.
    pub(super) fn plain(&mut self, text: &str, path: &str, most: usize) -> Option<String> {
        let text = text.trim();
        let control = |c: char| hidden(c) && c != '\n' && c != '\t';
        let low = text.to_ascii_lowercase();
        let what = if text.is_empty() {
            SettingsFault::Missing
        } else if text.chars().any(|c| matches!(c, '<' | '>') || control(c))
            || holds(&low, "javascript:")
        {
            SettingsFault::Markup
        } else if text.chars().count() > most {
            SettingsFault::TooLong(most)
        } else {
            return Some(text.into());
        };
        self.tell(path, what);
        None
    }

    pub(super) fn word(
        &mut self,
        fields: &Fields<'_>,
        key: &str,
        words: &'static [&'static str],
    ) -> Option<usize> {
        let value = fields.get(key)?;
        let at = match value {
            Value::Text(text) => words.iter().position(|word| *word == text.trim()),
            _ => None,
        };
        if at.is_none() {
            self.tell(&fields.at(key), SettingsFault::NotOneOf(words));
        }
        at
    }

    pub(super) fn number(&mut self, fields: &Fields<'_>, key: &str, range: Range) -> Option<f64> {
        self.in_range(fields.get(key)?, &fields.at(key), range)
    }

    pub(super) fn in_range(&mut self, value: &Value, path: &str, range: Range) -> Option<f64> {
        let what = match value {
            Value::Number(number) if range.holds(*number) => return Some(*number),
            Value::Number(_) => SettingsFault::OutOfRange(range),
            _ => SettingsFault::WrongType("number"),
        };
        self.tell(path, what);
        None
    }

    pub(super) fn day(&mut self, fields: &Fields<'_>, key: &str) -> Option<NaiveDate> {
        let value = fields.get(key)?;
        let day = match value {
            Value::Text(text) => read_day(text).ok(),
            _ => None,
        };
        if day.is_none() {
            self.tell(&fields.at(key), SettingsFault::Day);
        }
        day
    }

    /// When an entry was last checked; one that does not say gets a warning.
    pub(super) fn checked(&mut self, fields: &Fields<'_>) -> Option<NaiveDate> {
        if fields.get("checked").is_none() {
            self.tell(&fields.at("checked"), SettingsFault::NoDay);
        }
        self.day(fields, "checked")
    }

    /// An address of a page or a telephone, and nothing that runs.
    pub(super) fn link(&mut self, fields: &Fields<'_>, key: &str) -> Option<String> {
        let value = fields.get(key)?;
        let found = match value {
            Value::Text(text) => Some(text.trim()).filter(|text| is_link(text)),
            _ => None,
        };
        if found.is_none() {
            self.tell(&fields.at(key), SettingsFault::Link);
        }
        found.map(str::to_owned)
    }
}

/// A sign that nobody sees, or that turns the order of what follows: a text could be made to read as another.
fn hidden(c: char) -> bool {
    let turns = matches!(c, '\u{61c}' | '\u{200e}' | '\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}');
    c.is_control() || turns
}

/// `https://`, `http://` or `tel:`, and no sign in it that ends an address or that nobody sees. A page's address names
/// nobody before its host: `https://known.example@other.example/` leads to the other.
fn is_link(text: &str) -> bool {
    let low = text.to_ascii_lowercase();
    let rest = ["https://", "http://", "tel:"]
        .iter()
        .find_map(|start| low.strip_prefix(start));
    let unseen = |c: char| {
        hidden(c)
            || matches!(
                c,
                '\u{200b}'..='\u{200d}' | '\u{2060}' | '\u{feff}' | '\u{ad}'
            )
    };
    let plain = !text.chars().any(|c| {
        c.is_whitespace() || unseen(c) || matches!(c, '<' | '>' | '"' | '\'' | '`' | '\\')
    });
    let names_none = |rest: &str| {
        let host = rest.split(['/', '?', '#']).next().unwrap_or("");
        rest.len() > 2 && !host.contains('@')
    };
    plain && text.len() <= URL && rest.is_some_and(names_none)
}

/// Digits with what people put between them.
pub(super) fn is_phone(text: &str) -> bool {
    let digits = text.bytes().filter(u8::is_ascii_digit).count();
    let between =
        |c: char| c.is_ascii_digit() || matches!(c, ' ' | '+' | '(' | ')' | '-' | '.' | '/');
    digits > 2 && text.chars().all(between)
}
