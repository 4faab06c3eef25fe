//! The group's list of species: as keys, or as a table.

use super::Reader;
use super::fields::{Fields, MOST, NAME, TEXT, URL};
use crate::question::settings::{HEADS, SettingsFault, SpeciesList, Value, rows};
use crate::question::{Code, Found, NotListed, Problem, find_species};
use crate::terms::small::decimals::fixed;
use crate::terms::species::Species;

/// Longest table that is pasted, in bytes.
const TABLE: usize = 100_000;

impl Reader {
    pub(super) fn species(&mut self, top: &Fields<'_>, list: Option<&str>) -> SpeciesList {
        let mut species = SpeciesList::default();
        let Some(fields) = self.object(top, "species") else {
            return species;
        };
        for (path, value) in self.list(&fields, "first") {
            if let Value::Text(name) = value {
                if let Some(found) = self.find(name, &path) {
                    species.put_first(found);
                }
            } else {
                self.tell(&path, SettingsFault::WrongType("text"));
            }
        }
        match fields.get("only") {
            None => {}
            Some(Value::Bool(only)) => species.only = *only,
            Some(_) => self.tell(&fields.at("only"), SettingsFault::WrongType("yes or no")),
        }
        for (path, key, value) in self.pairs(&fields, "aliases") {
            let name = self.plain(key, &path, NAME);
            if let Value::Text(code) = value {
                let found = self.find(code, &path);
                species.aliases.extend(name.zip(found));
            } else {
                self.tell(&path, SettingsFault::WrongType("text"));
            }
        }
        for (path, key, value) in self.pairs(&fields, "notes") {
            let found = self.find(key, &path);
            let note = self.words(value, &path, TEXT);
            species.notes.extend(found.zip(note));
        }
        let named = fields.get("list").is_some();
        if named {
            // An address beside the file: what it names is at hand, or it can't be had.
            self.text(&fields, "list", URL);
        }
        let pasted = match fields.get("csv") {
            Some(Value::Text(text)) if text.len() <= TABLE => Some(text.as_str()),
            None => None,
            Some(_) => {
                self.tell("species.csv", SettingsFault::TooLong(TABLE));
                None
            }
        };
        match (named, list, pasted) {
            (true, _, Some(_)) => self.tell("species.csv", SettingsFault::TwoLists),
            (true, None, None) => self.tell("species.list", SettingsFault::NoList),
            (true, Some(text), None) | (false, _, Some(text)) => self.table(text, &mut species),
            (false, _, None) => {}
        }
        // A short list that would show nothing shows everything.
        species.only &= !species.first.is_empty();
        species
    }

    /// Keys and values of an object that has any keys.
    fn pairs<'v>(&mut self, fields: &Fields<'v>, key: &str) -> Vec<(String, &'v str, &'v Value)> {
        let path = fields.at(key);
        match fields.get(key) {
            None => Vec::new(),
            Some(Value::Map(entries)) if entries.len() <= MOST => entries
                .iter()
                .map(|(key, value)| ([&path, ".", key].concat(), key.as_str(), value))
                .collect(),
            Some(Value::Map(_)) => {
                self.tell(&path, SettingsFault::TooLong(MOST));
                Vec::new()
            }
            Some(_) => {
                self.tell(&path, SettingsFault::WrongType("object"));
                Vec::new()
            }
        }
    }

    fn find(&mut self, name: &str, path: &str) -> Option<&'static Species> {
        let code = match find_species(self.reference, name, None) {
            Found::One(species) => return Some(species),
            Found::Other(other) => Code::NotListed(NotListed::of(other, None)),
            Found::Like(names) => Code::UnknownSpecies(names),
            Found::NotHere => Code::NamesNotHere,
        };
        let problem = Problem::new("species", code, name);
        self.tell(path, SettingsFault::Field(problem));
        None
    }

    /// The table of species: what is wrong is told by column and row.
    fn table(&mut self, text: &str, species: &mut SpeciesList) {
        let Some(all) = rows(text) else {
            self.tell("species", SettingsFault::Quotes);
            return;
        };
        let mut all = all.into_iter();
        let head = all.next().map_or(Vec::new(), |row| row.cells);
        let column = |name: &str| head.iter().position(|cell| cell.trim() == name);
        let Some(code_at) = column("code") else {
            self.tell("A1", SettingsFault::Heads);
            return;
        };
        for (at, name) in head.iter().enumerate() {
            if !HEADS.contains(&name.trim()) {
                self.tell(&cell_name(at, 1), SettingsFault::UnknownKey);
            }
        }
        for row in all.take(MOST) {
            let place = |at: usize| cell_name(at, row.number);
            let text = |at: usize| row.cells.get(at).map_or("", |text| text.trim());
            let code = text(code_at);
            if code.is_empty() {
                self.tell(&place(code_at), SettingsFault::Missing);
                continue;
            }
            let Some(found) = self.find(code, &place(code_at)) else {
                continue;
            };
            let mut note = None;
            for (at, name) in head.iter().enumerate() {
                let (text, place) = (text(at), place(at));
                match (text, name.trim()) {
                    ("", _) => {}
                    (_, "first") => match text.to_ascii_lowercase().as_str() {
                        "yes" | "y" | "x" | "1" | "true" => species.put_first(found),
                        "no" | "n" | "0" | "false" => {}
                        _ => self.tell(&place, SettingsFault::NotOneOf(&["yes", "no"])),
                    },
                    (_, "alias_en" | "alias_es") => {
                        let alias = self.plain(text, &place, NAME);
                        species.aliases.extend(alias.map(|alias| (alias, found)));
                    }
                    (_, "note_en") => note = self.plain(text, &place, TEXT).or(note),
                    (_, "note_es") => note = note.or(self.plain(text, &place, TEXT)),
                    _ => {}
                }
            }
            species.notes.extend(note.map(|note| (found, note)));
        }
    }
}

impl SpeciesList {
    fn put_first(&mut self, species: &'static Species) {
        if !self.first.iter().any(|known| known.name == species.name) {
            self.first.push(species);
        }
    }
}

/// A cell as a spreadsheet names it: `B4`.
fn cell_name(column: usize, row: usize) -> String {
    let mut name = String::new();
    name.push(char::from(b'A' + (column % 26) as u8));
    name.push_str(&fixed(row as f64, 0));
    name
}
