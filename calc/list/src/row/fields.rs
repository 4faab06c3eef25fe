//! The other cells of a row: its state, its place, what it could hit, and what only its tag has.

use super::condition::Condition;
use super::{Rows, Tag, Told, days, with_unit};
use crate::place;
use crate::problem::{RowFault, Severity};
use crate::record::Record;
use calc::question::{PlaceTyped, Text, Typed};
use calc::terms::number::read_number;
use calc_data::list::{Column, WordKind, fold};

/// So many trees at one place are looked at.
const SAME_PLACE: u32 = 3;
/// Trees of one list lie within so many degrees of its middle.
pub(crate) const NEAR_DEGREES: f64 = 5.0;
/// Latitudes at which trees grow, from memory: Tierra del Fuego to Taymyr.
const TREES_GROW: std::ops::RangeInclusive<f64> = -57.0..=73.0;

impl Rows {
    /// Condition and status, the newest year that has one. Words of both are known in either.
    pub(super) fn state(
        &self,
        record: &Record,
        typed: &mut Typed,
        tag: &mut Tag,
        dead: &mut Option<&'static str>,
        told: &mut Told<'_>,
    ) {
        let (mut condition_seen, mut status_seen) = (false, false);
        // Who writes what nobody reads of one tree, among others that are read, says something of it: it may be dead, or
        // ringed already. A piece of a file does not know how others are written.
        let strange = match self.reading.of_a_piece {
            true => Severity::Check,
            false => Severity::Fix,
        };
        for at in &self.reading.states {
            let column = self.reading.columns[*at].is;
            let Some(cell) = self.filled_at(record, *at) else {
                continue;
            };
            if column == Column::Dead || column == Column::Alive {
                match self.words.yes(cell) {
                    Some(yes) if yes == (column == Column::Dead) => *dead = Some("dead"),
                    Some(_) => {}
                    None => told.add(*at, Severity::Check, RowFault::NotYesNo),
                }
                continue;
            }
            if column == Column::Planting {
                continue;
            }
            if let Some(word) = self.words.dead(cell) {
                if !condition_seen && !status_seen {
                    *dead = Some(word);
                    condition_seen = true;
                    status_seen = true;
                }
                continue;
            }
            // "girdled 2026"
            let bare = cell.trim_end_matches(|c: char| c.is_ascii_digit() || "/-. ".contains(c));
            let status = self.words.means(WordKind::Status, cell);
            if let Some(status) = status.or_else(|| self.words.means(WordKind::Status, bare)) {
                if !status_seen {
                    tag.status = status;
                    match status {
                        "dead_standing" => *dead = Some("dead"),
                        "fallen" => *dead = Some("fallen"),
                        _ => {}
                    }
                }
                status_seen = true;
                continue;
            }
            let words = Condition::of(self.words, cell);
            if column == Column::Condition || !words.signs.is_empty() {
                if let (Some(condition), false) = (words.condition, condition_seen) {
                    condition_seen = true;
                    if condition != "unknown" {
                        typed.condition = Some(Text::from(condition));
                    }
                }
                typed.signs.extend(words.signs.into_iter().map(Text::from));
                let own = column == Column::Condition && self.reading.own_conditions;
                if words.strange && !own {
                    told.add(*at, strange, RowFault::ConditionUnknown);
                }
                continue;
            }
            if let Some(condition) = words.condition.filter(|_| !words.strange) {
                if !condition_seen && condition != "unknown" {
                    typed.condition = Some(Text::from(condition));
                }
                condition_seen = true;
                continue;
            }
            if column == Column::Status && self.reading.own_states {
                continue;
            }
            told.add(*at, strange, RowFault::StatusUnknown);
        }
    }

    /// The place of the row, else that of the list; rounded for the climate, whole in the tag.
    pub(super) fn place(
        &mut self,
        record: &Record,
        typed: &mut Typed,
        tag: &mut Tag,
        told: &mut Told<'_>,
    ) {
        let (lat, lon) = (
            self.filled(record, Column::Lat),
            self.filled(record, Column::Lon),
        );
        let mut found = None;
        if let (Some((at, lat)), Some((_, lon))) = (lat, lon) {
            found = match (place::degrees(lat), place::degrees(lon)) {
                (Some(lat), Some(lon)) => Some((at, lat, lon)),
                _ => {
                    told.add(at, Severity::Check, RowFault::NotDegrees);
                    None
                }
            };
        } else if let Some((at, cell)) = self.filled(record, Column::Point) {
            found = place::point(cell, self.reading.point).map(|(lat, lon)| (at, lat, lon));
            if found.is_none() {
                told.add(at, Severity::Check, RowFault::NotDegrees);
            }
        }
        let mut elevation = None;
        if let Some((at, lat, lon)) = found {
            if lat == 0.0 && lon == 0.0 {
                // What programs write for no place.
            } else if lat.abs() > 180.0 || lon.abs() > 180.0 {
                told.add(at, Severity::Check, RowFault::NotOnEarth);
            } else if lat.abs() > 90.0 || self.is_swapped(lat, lon) {
                told.add(at, Severity::Check, RowFault::PlaceSwapped);
            } else {
                tag.point = Some((lat, lon));
                elevation = self
                    .filled(record, Column::Elevation)
                    .and_then(|(at, cell)| {
                        let number = read_number(cell).ok()?;
                        let scale = match number.unit {
                            Some(unit) => unit.in_mm()?,
                            None => self.reading.columns[at]
                                .unit
                                .map_or(1000.0, crate::header::LengthUnit::mm),
                        };
                        Some(number.value * scale / 1000.0)
                    });
                self.same_place(at, lat, lon, told);
            }
        }
        let here = tag
            .point
            .map(|(lat, lon)| (lat, lon, elevation))
            .or(self.reading.options.place);
        if let Some((lat, lon, elevation)) = here {
            typed.place = Some(PlaceTyped {
                latitude: Some(Text(place::rounded(lat))),
                longitude: Some(Text(place::rounded(lon))),
                elevation: elevation.map(|metres| {
                    let step = (metres / 30.0).round() * 30.0;
                    Text([&Text::of_number(step).0, " m"].concat())
                }),
                hemisphere: None,
            });
        }
        tag.coord_m = self
            .filled(record, Column::CoordM)
            .and_then(|(_, cell)| read_number(cell).ok())
            .map(|number| number.value);
    }

    /// Whether the two numbers lie where the list does once they change places, or where no tree stands.
    fn is_swapped(&self, lat: f64, lon: f64) -> bool {
        let near = |a: f64, b: f64| (a - b).abs() < NEAR_DEGREES;
        match self.reading.middle {
            Some((middle_lat, middle_lon)) => {
                let here = near(lat, middle_lat) && near(lon, middle_lon);
                // A sign that was lost on the way, too: 71.5 east is far from 71.5 west.
                let (a, b) = (lat.abs(), lon.abs());
                let (middle_a, middle_b) = (middle_lat.abs(), middle_lon.abs());
                let mirrored = near(a, middle_a) && near(b, middle_b);
                let swapped = near(b, middle_a) && near(a, middle_b);
                !here && (mirrored || swapped)
            }
            None => !TREES_GROW.contains(&lat),
        }
    }

    fn same_place(&mut self, at: usize, lat: f64, lon: f64, told: &mut Told<'_>) {
        if self.reading.of_a_piece || self.places.len() >= super::MOST_TAGS {
            return;
        }
        let key = [Text::of_number(lat).0, Text::of_number(lon).0].join(" ");
        let trees = self.places.entry(key).or_default();
        *trees += 1;
        if *trees >= SAME_PLACE {
            told.add(at, Severity::Check, RowFault::SamePlace);
        }
    }

    /// Height, day, walk, clone, priority, notes.
    pub(super) fn rest(
        &self,
        record: &Record,
        typed: &mut Typed,
        tag: &mut Tag,
        told: &mut Told<'_>,
    ) {
        if let Some((at, cell)) = self.filled(record, Column::Height) {
            let zero = read_number(cell).is_ok_and(|number| number.value <= 0.0);
            if !zero {
                let unit = self.reading.columns[at].unit;
                typed.height = Some(Text(with_unit(cell, unit)));
            }
        }
        if let Some((at, cell)) = self.filled(record, Column::Date) {
            let day = days::iso(
                cell,
                self.reading.day_order,
                self.reading.columns[at].counted,
            );
            let today = &self.reading.options.today;
            match calc::question::read_day(&day) {
                Ok(read) if calc::terms::day::iso(read) < *today => {
                    told.add(at, Severity::Check, RowFault::DayPast)
                }
                _ => {
                    tag.pin.clone_from(&day);
                    typed.date = Some(Text(day));
                }
            }
        }
        if typed.date.is_none() {
            typed.date = Some(Text::from("year"));
        }
        let dead = typed.condition.as_ref().is_some_and(|it| it.0 == "dead");
        self.done_day(record, dead, tag, told);
        if let Some((_, cell)) = self.filled(record, Column::WalkMin) {
            tag.walk_min = cell.to_owned();
            typed.walk = Some(Text(cell.to_owned()));
        }
        for (column, slot) in [
            (Column::WholeClone, &mut typed.whole_clone),
            (Column::SameGenusNear, &mut typed.same_genus_near),
        ] {
            if let Some((at, cell)) = self.filled(record, column) {
                match self.words.means(WordKind::YesNo, cell) {
                    Some("unknown") => {}
                    Some(word) => *slot = Some(Text::from(word)),
                    None => told.add(at, Severity::Fix, RowFault::NotYesNo),
                }
            }
        }
        self.weight(record, tag, told);
    }

    /// How much the tree matters, and where it stands in its patch.
    fn weight(&self, record: &Record, tag: &mut Tag, told: &mut Told<'_>) {
        if let Some((at, cell)) = self.filled(record, Column::Priority) {
            match read_number(cell).map(|number| number.value) {
                Ok(1.0) => {}
                Ok(2.0) => tag.priority = 2,
                Ok(4.0) => tag.priority = 4,
                _ => {
                    let (known, counts_as) = ("1, 2, 4", "1");
                    told.add(at, Severity::Check, RowFault::CountsAs { known, counts_as });
                }
            }
        }
        if let Some((at, cell)) = self.filled(record, Column::Position) {
            match fold(cell).as_str() {
                "outlying" => tag.position = "outlying",
                "edge" => tag.position = "edge",
                "inside" => {}
                _ => {
                    let (known, counts_as) = ("outlying, edge, inside", "inside");
                    told.add(at, Severity::Check, RowFault::CountsAs { known, counts_as });
                }
            }
        }
    }

    /// The day on which the work was done. A row that has one and no status was treated; one that nobody can read is mended
    /// first: a tree that may be ringed already is neither ringed again nor lost.
    fn done_day(&self, record: &Record, dead: bool, tag: &mut Tag, told: &mut Told<'_>) {
        let Some((at, cell)) = self.filled(record, Column::DoneDate) else {
            return;
        };
        let order = self.reading.day_order.or(days::order_of(cell));
        let day = days::iso(cell, order, self.reading.columns[at].counted);
        let today = &self.reading.options.today;
        let read = calc::question::read_day(&day).map(calc::terms::day::iso);
        match read {
            Ok(day) if today.is_empty() || day <= *today => {
                tag.done_date = day;
                if tag.status.is_empty() && !dead {
                    tag.status = "treated";
                }
            }
            _ if self.words.yes(cell) == Some(false) => {}
            _ => {
                let level = match tag.status {
                    "" | "planned" => Severity::Fix,
                    _ => Severity::Check,
                };
                told.add(at, level, RowFault::DoneDay);
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use crate::{Decisions, ListContext, read_whole};

    fn rows(file: &str) -> Vec<crate::Row> {
        let options = ListContext {
            today: "2027-05-01".into(),
            ..ListContext::default()
        };
        let list = read_whole(
            calc_data::whole(),
            file.as_bytes(),
            &options,
            &Decisions::default(),
        );
        list.expect("a list").rows
    }

    /// Whether each row says itself what its tree could hit.
    fn says(file: &str) -> Vec<bool> {
        rows(file).iter().map(|row| row.tag.says_targets).collect()
    }

    #[test]
    fn a_priority_or_a_position_that_is_none_is_told() {
        let file = "Tag,Species,DBH (in),Priority,Position\n\
            1,Norway maple,9,4,edge\n2,Norway maple,9,2.0,\n3,Norway maple,9,high,Interior\n";
        let rows = rows(file);
        let tags: Vec<_> = rows.iter().map(|row| &row.tag).collect();
        let weights: Vec<_> = tags
            .iter()
            .map(|tag| (tag.priority, tag.position))
            .collect();
        assert_eq!(weights, [(4, "edge"), (2, "inside"), (1, "inside")]);
        assert_eq!(rows[2].problems.len(), 2);
        assert!(rows[..2].iter().all(|row| row.problems.is_empty()));
        // Words of the list's own are told once, for the column.
        let file = "Tag,Species,DBH (in),Priority\n1,Norway maple,9,high\n2,Norway maple,9,low\n\
            3,Norway maple,9,mid\n";
        assert!(self::rows(file).iter().all(|row| row.problems.is_empty()));
    }

    #[test]
    fn a_place_that_lost_its_minus_is_told_and_not_used() {
        let mut file = String::from("Tag,Species,DBH (in),Lat,Lon\n");
        for tree in 1..=3 {
            file += &format!("{tree},Norway maple,9,42.36{tree},-71.50{tree}\n");
        }
        file += "4,Norway maple,9,42.364,71.504\n5,Norway maple,9,71.505,42.365\n6,Norway maple,9,45.1,-75.2\n";
        let rows = rows(&file);
        let placed: Vec<bool> = rows.iter().map(|row| row.tag.point.is_some()).collect();
        assert_eq!(placed, [true, true, true, false, false, true]);
        assert_eq!(rows[3].problems[0].code.name(), "place_swapped");
    }

    #[test]
    fn a_tree_with_a_day_on_which_it_was_done_is_not_planned_again() {
        let file = "Tag,Species,DBH (in),Status,Condition,Date done\n\
            1,Norway maple,9,,alive,2026-06-12\n2,Norway maple,9,,alive,\n3,Norway maple,9,planned,alive,2026-06-12\n\
            4,Norway maple,9,,alive,6/25/2026\n5,Norway maple,9,,alive,6/12/2026\n6,Norway maple,9,checked,alive,last June\n\
            7,Norway maple,9,,dead,2026-06-12\n8,Norway maple,9,,alive,no\n9,Norway maple,9,,alive,2028-06-12\n";
        let rows = rows(file);
        let reasons: Vec<_> = rows.iter().map(crate::Row::without_answer).collect();
        let done = Some("done");
        let fix = Some("to_fix");
        assert_eq!(
            reasons,
            [done, None, None, done, fix, done, None, None, fix]
        );
        assert_eq!(rows[3].tag.done_date, "2026-06-25");
    }

    #[test]
    fn a_row_says_what_its_tree_could_hit_by_a_target_a_distance_or_a_line() {
        let file = "Tag,Species,DBH (in),Target,Target distance,Line within reach\n\
            1,Norway maple,9,,,\n2,Norway maple,9,none,,\n3,Norway maple,9,unknown,,\n\
            4,Norway maple,9,path,60 ft,\n5,Norway maple,9,,60 ft,\n6,Norway maple,9,,,no\n\
            7,Norway maple,9,,,unknown\n";
        assert_eq!(
            says(file),
            [false, true, true, true, true, false, true],
            "no line near says nothing of a path"
        );
    }

    #[test]
    fn a_row_that_may_name_a_wire_keeps_its_tree_out_of_what_is_said_of_its_part() {
        let file = "Tag,Species,DBH (in),Utilities,Overhead wires\n\
            1,Norway maple,9,,\n2,Norway maple,9,,yes\n3,Norway maple,9,,overhead\n\
            4,Norway maple,9,,hv line 30 ft\n5,Norway maple,9,,zigzag\n6,Norway maple,9,,unknown\n\
            7,Norway maple,9,sidewalk,\n8,Norway maple,9,no,no\n9,Norway maple,9,,underground\n";
        assert_eq!(
            says(file),
            [false, true, true, true, true, true, true, false, false]
        );
    }

    #[test]
    fn a_list_that_writes_none_for_an_empty_cell_says_nothing_by_it() {
        let file = "Tag,Species,DBH (in),Target,Notes\n\
            1,Norway maple,9,None,None\n2,Norway maple,9,path 60 ft,None\n3,Norway maple,9,None,old\n";
        assert_eq!(says(file), [false, true, false]);
    }
}
