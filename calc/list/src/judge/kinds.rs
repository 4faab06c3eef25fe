//! Columns whose header does not settle what they hold: their values do.

use super::{Judge, NotRead, Note};
use crate::ask::ListQuestion;
use crate::header::LengthUnit;
use crate::reading::NameColumns;
use calc::terms::quantity::Units;
use calc_data::list::{Column, WordKind, header_key};

impl Judge<'_> {
    pub(super) fn kinds(&mut self) {
        self.states_without_a_name();
        self.dead_by_its_words();
        self.people_without_a_name();
        self.days_called_dia();
        self.unit_or_place();
        self.stem_counts();
        self.heights();
        self.coordinates();
        self.names();
        self.one_tag();
    }

    /// `dia` is a day in Spanish and Portuguese, a diameter elsewhere.
    fn days_called_dia(&mut self) {
        for at in self.all(Column::Dia) {
            let other_size =
                !self.all(Column::Dbh).is_empty() || !self.all(Column::Girth).is_empty();
            let headers = &self.layout.headers;
            let romance = headers.iter().filter(|header| header.romance).count();
            let accent = self.reading.columns[at].header.contains(['í', 'Í']);
            let stats = self.stats(at);
            let no_number =
                stats.filled > 0 && stats.numbers.len() + stats.with_unit < stats.filled / 2;
            let day = other_size || accent || no_number || romance > 1;
            self.reading.columns[at].is = if day { Column::SurveyDate } else { Column::Dbh };
        }
    }

    /// A column whose header says nothing and whose cells all say that trees live or are dead is the status.
    fn states_without_a_name(&mut self) {
        for at in self.all(Column::Keep) {
            if self.layout.headers[at].column.is_some() || self.reading.columns[at].ours {
                continue;
            }
            let stats = self.stats(at);
            let dead = |value: &String| self.words.dead(value).is_some();
            let known = |value: &String| {
                dead(value) || self.words.means(WordKind::Condition, value).is_some()
            };
            let mut values = stats.values.keys();
            if values.clone().any(dead) && values.all(known) {
                self.reading.columns[at].is = Column::Status;
            }
        }
    }

    /// A column whose header speaks of dead trees, all of whose cells say yes or no: `Is it dead?`.
    fn dead_by_its_words(&mut self) {
        for at in self.all(Column::Keep) {
            let header = &self.reading.columns[at];
            if self.layout.headers[at].column.is_some() || header.ours || self.is_decided(at) {
                continue;
            }
            let key = calc_data::list::fold(&header.header);
            let mut words = key.split(|c: char| !c.is_ascii_alphanumeric());
            let stats = self.stats(at);
            let mut values = stats.values.keys();
            if words.any(|word| self.words.dead(word) == Some("dead"))
                && stats.filled > 0
                && values.all(|value| self.words.means(WordKind::YesNo, value).is_some())
            {
                self.reading.columns[at].is = Column::Dead;
            }
        }
    }

    /// Each column of targets has the distance that stands between it and the next; where there are as many of one as of the
    /// other, they belong together in order.
    fn distances_of_targets(&mut self) {
        let targets = self.all(Column::Target);
        for at in targets.iter().map(|at| at + 1) {
            // "Distance (m)" says nothing by itself, and all behind a target.
            let Some(column) = self.reading.columns.get(at) else {
                continue;
            };
            let strange = column.is == Column::Keep && self.layout.headers[at].column.is_none();
            if strange
                && !self.is_decided(at)
                && let Some(unit) = crate::header::of_distance(self.tables, &column.header)
            {
                let column = &mut self.reading.columns[at];
                column.is = Column::TargetDistance;
                column.unit = column.unit.or(unit);
            }
        }
        let mut distances = self.all(Column::TargetDistance);
        distances.retain(|at| self.reading.columns[*at].hits.is_none());
        let beside = |at: usize, place: usize| {
            let next = targets.get(place + 1).copied().unwrap_or(usize::MAX);
            let mut between = distances
                .iter()
                .copied()
                .filter(|it| (at..next).contains(it));
            between.next()
        };
        let mut paired = Vec::new();
        for (place, at) in targets.iter().copied().enumerate() {
            let found = if targets.len() == distances.len() {
                distances.get(place).copied()
            } else if targets.len() == 1 {
                distances.first().copied()
            } else {
                beside(at, place)
            };
            paired.push((at, found));
        }
        self.reading.targets = paired;
    }

    /// A column whose cells name things that a tree could hit under a header that nobody knows is asked for: were it left
    /// alone, a wire that it names would be lost.
    pub(super) fn targets(&mut self) {
        self.distances_of_targets();
        for at in self.all(Column::Keep) {
            let strange = self.layout.headers[at].column.is_none() && !self.is_decided(at);
            if !strange || self.reading.columns[at].ours {
                continue;
            }
            // `none` and `unknown` stand for nothing elsewhere: they are no sign.
            let thing = |value: &str| {
                let mut parts = value.split([';', ',', '/']).map(str::trim);
                parts.any(|part| {
                    let found = self.words.target(part).map(|(kind, _)| kind);
                    found.is_some_and(|kind| kind != "none" && kind != "unknown")
                })
            };
            let nothing = |value: &str| self.words.means(WordKind::Target, value).is_some();
            let stats = self.stats(at);
            let (mut things, mut read) = (0, 0);
            for (value, rows) in &stats.values {
                let is_thing = thing(value);
                things += rows * usize::from(is_thing);
                read += rows * usize::from(is_thing || nothing(value));
            }
            if things > 0 && read * 2 >= stats.filled {
                let values = stats.frequent();
                self.ask(at, stats.filled, ListQuestion::Target { values });
            }
        }
    }

    /// A column of priorities or positions whose words are mostly its own is told once, not row by row.
    pub(super) fn weights(&mut self) {
        for (column, known) in [
            (Column::Priority, &["1", "2", "4", "1.0", "2.0", "4.0"][..]),
            (Column::Position, &["outlying", "edge", "inside"][..]),
        ] {
            for at in self.all(column) {
                let stats = self.stats(at);
                let own = |value: &str| !known.contains(&value.to_lowercase().as_str());
                let values = stats.values.iter();
                let strange: usize = values.filter(|(value, _)| own(value)).map(|it| it.1).sum();
                if strange > 2 && strange * 2 > stats.filled && !self.is_decided(at) {
                    self.not_read(at, NotRead::OwnWords);
                }
            }
        }
    }

    /// A column whose header says nothing and in which a mail address stands is one of people.
    fn people_without_a_name(&mut self) {
        for at in self.all(Column::Keep) {
            let strange = self.layout.headers[at].column.is_none() && !self.is_decided(at);
            let address = |value: &String| {
                let mut words = value.split(|c: char| c.is_whitespace() || "<>;,".contains(c));
                words.any(|word| {
                    word.split_once('@').is_some_and(|(name, host)| {
                        !name.is_empty() && host.contains('.') && !host.ends_with('.')
                    })
                })
            };
            if strange
                && !self.reading.columns[at].ours
                && self.stats(at).values.keys().any(address)
            {
                self.reading.columns[at].is = Column::People;
            }
        }
    }

    /// A column called unit holds units of measure, or places.
    fn unit_or_place(&mut self) {
        for at in self.all(Column::Unit) {
            let stats = self.stats(at);
            let units = stats
                .values
                .keys()
                .filter(|value| LengthUnit::parse(value).is_some())
                .count();
            if units > 0 && units == stats.values.len() {
                self.reading.columns[at].is = Column::DbhUnit;
            } else if stats.filled >= 3 && stats.values.len() == stats.filled {
                // A flat or a house: it groups nothing.
                self.not_read(at, NotRead::NoGroups);
            }
        }
        // A column called region is one where each cell is a whole code; else it is kept.
        for at in self.all(Column::Region) {
            let stats = self.stats(at);
            let mut values = stats.values.keys();
            if !values.all(|cell| crate::place::region(cell).is_some()) {
                self.reading.columns[at].is = Column::Keep;
            }
        }
        // A column called site or the like may hold a place on the map.
        for at in self.all(Column::Site) {
            let stats = self.stats(at);
            let points = stats
                .values
                .keys()
                .filter(|value| crate::place::two_numbers(value).is_some())
                .count();
            if points > 0
                && points * 4 >= stats.values.len() * 3
                && self.all(Column::Point).is_empty()
            {
                self.reading.columns[at].is = Column::Point;
            }
        }
    }

    /// A count of stems has no fractions and none over fifty.
    fn stem_counts(&mut self) {
        for at in self.all(Column::Stems) {
            let stats = self.stats(at);
            let over = stats.numbers.last().is_some_and(|most| *most > 50.0);
            if (stats.with_part > 0 || over) && !self.is_decided(at) {
                self.not_read(at, NotRead::NoStemCount);
            }
        }
    }

    /// Heights of one to five are classes, never feet; heights of about 130 are where the tape went.
    fn heights(&mut self) {
        for at in self.all(Column::Height) {
            if self.is_decided(at) || self.decided[at].classes.is_some() {
                continue;
            }
            let stats = self.stats(at);
            if stats.numbers.len() >= LEAST_ROWS && stats.are_classes() {
                self.not_read(at, NotRead::HeightClasses);
                continue;
            }
            // All of them between 1.2 and 1.5 m: the height of the tape.
            let unit = self.reading.columns[at].unit;
            let metres = |value: f64| value * unit.unwrap_or(LengthUnit::Metre).mm() / 1000.0;
            let low = stats.numbers.first().copied().unwrap_or(0.0);
            let tape = |value: f64| {
                (0.2..=2.0).contains(&metres(value))
                    || (20.0..=200.0).contains(&value) && unit.is_none()
            };
            let is_tape = stats.numbers.len() >= LEAST_ROWS
                && stats.median() > 0.0
                && tape(low)
                && tape(stats.median())
                && stats.values.len() < 4;
            if is_tape {
                self.reading.columns[at].is = Column::MeasuredAt;
            } else if unit.is_none() && stats.with_unit * 2 < stats.filled {
                let assumed = match self.reading.options.units {
                    Units::Us => LengthUnit::Foot,
                    Units::Metric => LengthUnit::Metre,
                };
                self.reading.columns[at].unit = Some(assumed);
                self.reading.columns[at].assumed = true;
                self.notes.push(Note::UnitAssumed {
                    header: self.reading.columns[at].header.clone(),
                    unit: assumed,
                    median: stats.median(),
                });
            }
        }
    }

    /// Latitude and longitude that are no degrees are kept, and not mapped.
    fn coordinates(&mut self) {
        self.projected();
        for column in [Column::Lat, Column::Lon] {
            let most = if column == Column::Lat { 90.0 } else { 180.0 };
            for at in self.all(column) {
                let mut numbers = 0;
                let mut over = 0;
                for row in self.rows {
                    if let Some(degrees) = crate::place::degrees(row.cell(at)) {
                        numbers += 1;
                        // Swapped columns are told row by row.
                        over +=
                            usize::from(degrees.abs() > if most < 100.0 { 180.0 } else { most });
                    }
                }
                if numbers > 0 && over * 2 > numbers && !self.is_decided(at) {
                    self.not_read(at, NotRead::NotDegrees);
                    self.reading.columns[at].is = Column::Projected;
                }
            }
        }
        if self.all(Column::Lat).is_empty() != self.all(Column::Lon).is_empty() {
            for at in [self.all(Column::Lat), self.all(Column::Lon)].concat() {
                self.not_read(at, NotRead::NotDegrees);
            }
        }
    }

    /// Columns called X and Y are degrees only where both are finely written and fit; else metres of a plot or a map, kept
    /// and not mapped, with the zone beside them.
    fn projected(&mut self) {
        let all = self.all(Column::Projected);
        let axis = |judge: &Self, name: &str| {
            let of = |at: &usize| header_key(&judge.reading.columns[*at].header) == name;
            all.iter().copied().find(of)
        };
        if let (Some(x), Some(y)) = (axis(self, "x"), axis(self, "y"))
            && self.all(Column::Lat).is_empty()
            && self.all(Column::Lon).is_empty()
        {
            let fits = |judge: &Self, at: usize, most: f64| {
                let mut cells = 0;
                let fine = judge.rows.iter().all(|row| {
                    let cell = row.cell(at).trim();
                    if judge.words.is_missing(cell) {
                        return true;
                    }
                    cells += 1;
                    let parts = cell.split_once('.').map_or(0, |(_, parts)| parts.len());
                    parts >= DEGREE_PARTS
                        && crate::place::degrees(cell).is_some_and(|it| it.abs() <= most)
                });
                fine && cells > 0
            };
            if fits(self, x, 180.0) && fits(self, y, 90.0) {
                self.reading.columns[x].is = Column::Lon;
                self.reading.columns[y].is = Column::Lat;
                return;
            }
        }
        for at in &all {
            if self.stats(*at).filled > 0 {
                let header = self.reading.columns[*at].header.clone();
                let why = NotRead::NotDegrees;
                self.notes.push(Note::NotRead { header, why });
            }
        }
        for at in self.all(Column::Site) {
            let zone = |value: &String| {
                let digits = value.trim_end_matches(|c: char| c.is_ascii_alphabetic());
                value.len() <= 3 && !digits.is_empty() && digits.bytes().all(|c| c.is_ascii_digit())
            };
            if !all.is_empty()
                && header_key(&self.reading.columns[at].header).contains("zone")
                && self.stats(at).values.keys().all(zone)
            {
                self.reading.columns[at].is = Column::Projected;
            }
        }
    }

    /// Which columns name the tree: a column called species that holds single small words beside a genus is the epithet;
    /// one that holds capitals alone is a code.
    fn names(&mut self) {
        let genus = self.all(Column::Genus).first().copied();
        for at in [
            self.all(Column::Species),
            self.all(Column::Scientific),
            self.all(Column::Common),
        ]
        .concat()
        {
            if self.is_decided(at) {
                continue;
            }
            let stats = self.stats(at);
            let small = |value: &&String| {
                !value.contains(' ') && value.chars().next().is_some_and(char::is_lowercase)
            };
            let singles = stats.values.keys().filter(small).count();
            if genus.is_some()
                && self.reading.columns[at].is == Column::Species
                && singles * 2 > stats.values.len()
            {
                self.reading.columns[at].is = Column::Epithet;
            } else if self.decided[at].codes.is_some() || super::codes::are_codes(&stats) {
                self.reading.columns[at].is = Column::Code;
            }
        }
        // A name of people may be the name of the tree, where nothing else is.
        let first = |judge: &Self, column| judge.all(column).first().copied();
        let names = NameColumns {
            species: first(self, Column::Species),
            scientific: first(self, Column::Scientific),
            common: first(self, Column::Common),
            genus,
            epithet: first(self, Column::Epithet),
            code: first(self, Column::Code),
        };
        let mut names = names;
        if names.first().is_none() {
            names.species = self.trees_called_name();
            if let Some(at) = names.species {
                self.reading.columns[at].is = Column::Species;
            }
        }
        self.reading.names = names;
    }

    /// A column called name whose values are known trees.
    fn trees_called_name(&mut self) -> Option<usize> {
        let mut columns = self.all(Column::People).into_iter();
        columns.find(|at| {
            let stats = self.stats(*at);
            let trees = stats.values.keys().filter(|value| {
                let value = value.to_lowercase();
                let words = [
                    "maple",
                    "oak",
                    "ash",
                    "elm",
                    "pine",
                    "locust",
                    "cherry",
                    "birch",
                    "poplar",
                    "buckthorn",
                    "heaven",
                ];
                words
                    .iter()
                    .any(|word| value.split([' ', '-']).any(|part| part == *word))
            });
            let trees = trees.count();
            trees > 0 && trees * 2 > stats.values.len()
        })
    }

    /// Of several columns of tags the one that is unique.
    fn one_tag(&mut self) {
        let all = self.all(Column::TreeId);
        let unique = |at: &usize| {
            let stats = self.stats(*at);
            (stats.values.len() * 100) / stats.filled.max(1)
        };
        // The first of the best: a column of tags stands in front of a running number.
        let mut best: Option<(usize, usize)> = None;
        for at in &all {
            let share = unique(at);
            if best.is_none_or(|(most, _)| share > most + 2) {
                best = Some((share, *at));
            }
        }
        for at in all {
            if best.is_some_and(|(_, chosen)| chosen != at) && !self.is_decided(at) {
                self.not_read(at, NotRead::Doubled);
            }
        }
        self.reading.id = best.map(|(_, at)| at);
    }
}

/// Degrees of a tree have so many digits behind the point at least: metres of a plot have fewer.
const DEGREE_PARTS: usize = 4;

/// The fewest rows that say anything of a column.
pub(super) const LEAST_ROWS: usize = 10;

impl super::Stats {
    /// Under twenty different small whole numbers, nearly all from 1 to 9.
    pub(super) fn are_classes(&self) -> bool {
        let small = self.numbers.iter().filter(|number| **number <= 9.0).count();
        let different = self.values.len();
        self.with_part == 0
            && self.with_unit == 0
            && different < 20
            && !self.numbers.is_empty()
            && self.numbers.len() * 10 >= self.filled * 9
            && small * 100 >= self.numbers.len() * 95
    }
}
