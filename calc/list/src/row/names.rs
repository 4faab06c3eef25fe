//! The name of a row's tree: each different cell is looked up once.

use crate::decisions::LEAVE_OUT;
use crate::problem::{RowFault, Severity};
use crate::reading::{CodeMeaning, ListReading};
use crate::record::Record;
use crate::words::WordFinder;
use calc::question::{FoundName, InList, ListNames, find_in_list};
use calc::reference::Reference;
use calc::terms::species::Species;
use calc_data::list::{WordKind, fold};
use std::collections::BTreeMap;

/// What a row's name comes to.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Name {
    /// As the question takes it; none where it is open.
    pub species: Option<String>,
    /// The text that was looked up: what a decision names.
    pub typed: String,
    /// What is wrong, at the column.
    pub problem: Option<(usize, Severity, RowFault)>,
    /// It was decided that such rows are left out.
    pub left_out: bool,
    /// The cell says that the tree is dead, and not what it is.
    pub dead: Option<&'static str>,
}

/// Looks names up.
pub(super) struct Namer {
    reference: &'static Reference,
    names: ListNames,
    words: WordFinder,
    known: BTreeMap<String, Name>,
}

/// How many different names are kept.
const MOST_KEPT: usize = 100_000;

impl Namer {
    pub(super) fn new(
        reference: &'static Reference,
        words: WordFinder,
        reading: &ListReading,
    ) -> Self {
        let more = reading.options.names.iter();
        let more = more.map(|(name, scientific)| (name.as_str(), scientific.as_str()));
        Self {
            reference,
            names: ListNames::new(reference).with(more),
            words,
            known: BTreeMap::new(),
        }
    }

    /// The name of a row.
    pub(super) fn of(&mut self, reading: &ListReading, row: &Record) -> Name {
        let mut key = String::new();
        let columns = &reading.names;
        for at in [
            columns.scientific,
            columns.genus,
            columns.epithet,
            columns.species,
            columns.common,
            columns.code,
        ]
        .into_iter()
        .flatten()
        {
            key.push_str(row.cell(at).trim());
            key.push('\u{1f}');
        }
        if let Some(name) = self.known.get(&key) {
            return name.clone();
        }
        let name = self.look_up(reading, row);
        if self.known.len() < MOST_KEPT {
            self.known.insert(key, name.clone());
        }
        name
    }

    fn look_up(&self, reading: &ListReading, row: &Record) -> Name {
        let columns = &reading.names;
        let filled = |at: Option<usize>| {
            at.map(|at| (at, row.cell(at).trim()))
                .filter(|(_, cell)| !self.words.is_missing(cell))
        };
        let genus = filled(columns.genus);
        let joined = genus.map(|(at, genus)| {
            let epithet = filled(columns.epithet).map_or("", |(_, epithet)| epithet);
            (at, [genus, " ", epithet].concat().trim().to_owned())
        });
        let own = |it: Option<(usize, &str)>| it.map(|(at, cell)| (at, cell.to_owned()));
        let scientific = own(filled(columns.scientific)).or(joined);
        let species = own(filled(columns.species));
        let common = own(filled(columns.common));
        // The scientific name is the first; what stands beside it must not be another tree's.
        let candidates: Vec<(usize, String)> = [scientific, species, common]
            .into_iter()
            .flatten()
            .collect();
        if let Some((at, code)) = filled(columns.code).filter(|_| candidates.is_empty()) {
            return self.code(reading, at, code);
        }
        let Some((at, typed)) = candidates.first().cloned() else {
            return self.none(reading);
        };
        let mut name = self.name(reading, at, &typed);
        for (other, text) in &candidates[1..] {
            let beside = self.name(reading, *other, text);
            name = together(name, beside, *other);
        }
        name
    }

    /// No cell names it.
    fn none(&self, reading: &ListReading) -> Name {
        if let Some(every) = &reading.every {
            return self.decided(reading.names.first().unwrap_or(0), "", every, reading);
        }
        let column = reading.names.first().unwrap_or(0);
        Name {
            species: None,
            typed: String::new(),
            problem: Some((column, Severity::Fix, RowFault::NameMissing)),
            left_out: false,
            dead: None,
        }
    }

    fn open(at: usize, typed: &str, code: RowFault) -> Name {
        Name {
            species: None,
            typed: typed.to_owned(),
            problem: Some((at, Severity::Fix, code)),
            left_out: false,
            dead: None,
        }
    }

    fn taken(typed: &str, species: &'static Species) -> Name {
        Name {
            species: Some(
                if species.unknown {
                    species.name
                } else {
                    species.scientific
                }
                .to_owned(),
            ),
            typed: typed.to_owned(),
            problem: None,
            left_out: false,
            dead: None,
        }
    }

    fn region<'a>(&self, reading: &'a ListReading) -> Option<&'a str> {
        reading.options.region.as_deref()
    }

    fn name(&self, reading: &ListReading, at: usize, typed: &str) -> Name {
        if let Some(decided) = reading.decided.get(&fold(typed)) {
            return self.decided(at, typed, decided, reading);
        }
        if typed.starts_with('=') {
            return Self::open(at, typed, RowFault::Formula);
        }
        if self.words.means(WordKind::Broken, typed).is_some() {
            return Self::open(at, typed, RowFault::Broken);
        }
        if let Some(dead) = self.words.dead(typed) {
            // No ring is cut on it whatever it was: it is told, and goes on.
            let unknown = self
                .reference
                .species
                .iter()
                .find(|species| species.unknown);
            let mut name = match unknown {
                Some(species) => Self::taken(typed, species),
                None => Self::open(at, typed, RowFault::NameMissing),
            };
            name.problem = Some((at, Severity::Check, RowFault::NameMissing));
            name.dead = Some(dead);
            return name;
        }
        if let Some(group) = self.words.means(WordKind::UnknownName, typed) {
            // An entry of the list that the cell itself says is taken; a bare "unknown" is asked.
            let entry = self
                .reference
                .species
                .iter()
                .find(|species| species.unknown && species.name == group);
            let said = fold(typed).starts_with("unknown ");
            return match entry.filter(|_| said) {
                Some(species) => Self::taken(typed, species),
                None => Self::open(at, typed, RowFault::NameUnknown),
            };
        }
        let named = find_in_list(&self.names, typed, self.region(reading));
        self.found(at, typed, &named)
    }

    fn found(&self, at: usize, typed: &str, named: &FoundName) -> Name {
        let mut name = match &named.found {
            InList::One(species) => Self::taken(typed, species),
            InList::Other(other) => Self::open(
                at,
                typed,
                RowFault::NotListed {
                    name: other.names[0],
                    choose: other.asked_as(),
                },
            ),
            InList::Several(of) => Self::open(at, typed, RowFault::SeveralTrees { of: of.clone() }),
            InList::Genus(of) => Self::open(at, typed, RowFault::GenusOnly { of: of.clone() }),
            InList::Two(..) => Self::open(at, typed, RowFault::TwoTrees),
            InList::Shortened => Self::open(at, typed, RowFault::Shortened),
            InList::None => Self::open(at, typed, RowFault::NameUnknown),
        };
        if named.doubted && name.problem.is_none() {
            name.problem = Some((at, Severity::Check, RowFault::Doubted));
        }
        name
    }

    /// What a person decided for such a name: a species, an entry for one without a name, or nothing.
    fn decided(&self, at: usize, typed: &str, decided: &str, reading: &ListReading) -> Name {
        let decided = decided.trim();
        if decided.eq_ignore_ascii_case(LEAVE_OUT) {
            let mut name = Self::open(at, typed, RowFault::NameUnknown);
            name.problem = None;
            name.left_out = true;
            return name;
        }
        if decided.is_empty() {
            let named = find_in_list(&self.names, typed, self.region(reading));
            return self.found(at, typed, &named);
        }
        match calc::question::find_species(self.reference, decided, self.region(reading)) {
            calc::question::Found::One(species) => Name {
                species: Some(
                    if species.unknown {
                        species.name
                    } else {
                        species.scientific
                    }
                    .to_owned(),
                ),
                ..Self::taken(typed, species)
            },
            calc::question::Found::Other(other) => Self::open(
                at,
                typed,
                RowFault::NotListed {
                    name: other.names[0],
                    choose: other.asked_as(),
                },
            ),
            _ => Self::open(
                at,
                typed,
                RowFault::DecisionUnknown {
                    decided: decided.to_owned(),
                },
            ),
        }
    }

    fn code(&self, reading: &ListReading, at: usize, typed: &str) -> Name {
        if let Some(decided) = reading.decided.get(&fold(typed)) {
            return self.decided(at, typed, decided, reading);
        }
        if self.words.means(WordKind::UnknownName, typed).is_some() {
            return Self::open(at, typed, RowFault::NameUnknown);
        }
        let doubted = typed.contains('?');
        let bare = typed.replace('?', "");
        let bare = bare.trim();
        let mut name = match &reading.codes {
            CodeMeaning::None | CodeMeaning::Undecided => {
                Self::open(at, typed, RowFault::CodeUndecided)
            }
            CodeMeaning::Own(table) => {
                let found = table
                    .iter()
                    .find(|(code, _)| code.trim().eq_ignore_ascii_case(bare));
                match found {
                    Some((_, Some(is))) if !is.trim().is_empty() => {
                        self.decided(at, typed, is, reading)
                    }
                    Some(_) => Self::open(at, typed, RowFault::CodeUndecided),
                    None => Self::open(at, typed, RowFault::CodeUnknown),
                }
            }
            CodeMeaning::Plants => {
                let mut species = self.reference.species.iter();
                match species.find(|species| {
                    !species.code.is_empty() && species.code.eq_ignore_ascii_case(bare)
                }) {
                    Some(species) => Self::taken(typed, species),
                    None if self.words.is_symbol(&bare.to_ascii_uppercase()) => {
                        Self::open(at, typed, RowFault::CodeNotListed)
                    }
                    None => Self::open(at, typed, RowFault::CodeUnknown),
                }
            }
        };
        if doubted && name.problem.is_none() && !name.left_out {
            name.problem = Some((at, Severity::Check, RowFault::Doubted));
        }
        name
    }
}

/// A scientific and a common name of one row: where both are known they must be one tree; where the first is open only
/// because it is a genus, or is not filled, the second may settle it.
fn together(first: Name, second: Name, at: usize) -> Name {
    let disagree = |first: &Name| Name {
        species: None,
        problem: Some((at, Severity::Fix, RowFault::NamesDisagree)),
        ..first.clone()
    };
    if first.left_out || second.left_out {
        return if first.left_out { first } else { second };
    }
    match (&first.species, &second.species) {
        (Some(a), Some(b)) if a == b => first,
        (Some(_), Some(_)) => disagree(&first),
        (Some(_), None) => match &second.problem {
            // A known tree that is not on the list beside one that is: two trees.
            Some((_, _, RowFault::NotListed { .. })) => disagree(&first),
            _ => first,
        },
        (None, Some(_)) => match &first.problem {
            Some((_, _, RowFault::GenusOnly { of })) => {
                // The genus must be that of the common name's tree.
                let fits = second.species.as_ref().is_some_and(|scientific| {
                    let genus = |name: &str| fold(name.split(' ').next().unwrap_or(""));
                    genus(scientific) == genus(&first.typed)
                        || of.iter().any(|name| fold(name) == fold(&second.typed))
                });
                if fits { second } else { disagree(&first) }
            }
            Some((_, _, RowFault::NameMissing)) => second,
            // The scientific name is another tree's, known or not.
            _ => first,
        },
        (None, None) => match (&first.problem, &second.problem) {
            (
                Some((
                    _,
                    _,
                    RowFault::NameUnknown | RowFault::GenusOnly { .. } | RowFault::NameMissing,
                )),
                Some((_, _, RowFault::NotListed { .. })),
            ) => second,
            _ => first,
        },
    }
}
