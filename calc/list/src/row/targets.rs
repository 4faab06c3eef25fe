//! What the tree of a row could hit: every column of targets with its distance, distances to something, wires, lines, the lean.

use super::{Rows, Tag, Told, with_unit};
use crate::problem::{RowFault, Severity};
use crate::record::Record;
use calc::question::{TargetTyped, Text, Typed};
use calc::terms::number::{Unit, read_number};
use calc_data::list::{Column, WordKind};

impl Rows {
    /// What it could hit: `path 60 ft; line 90 ft`, a distance in its own column, wires, lines. A second column of targets
    /// counts as the first does.
    pub(super) fn targets(
        &self,
        record: &Record,
        typed: &mut Typed,
        tag: &mut Tag,
        told: &mut Told<'_>,
    ) {
        let mut unknown = false;
        for at in &self.reading.targets {
            unknown |= self.target(record, *at, typed, tag, told);
        }
        for (at, column) in self.reading.columns.iter().enumerate() {
            if column.is == Column::TargetDistance
                && let Some(cell) = self.filled_at(record, at)
            {
                // A distance says that something is there.
                tag.says_targets = true;
                let mut targets = self.reading.targets.iter();
                let of = targets.find(|(_, beside)| *beside == Some(at));
                let stands = of.is_some_and(|(of, _)| {
                    let kind = self.words.means(WordKind::Target, record.cell(*of));
                    self.filled_at(record, *of).is_some() && kind != Some("none")
                });
                if column.hits.is_none() && !stands {
                    told.add(at, Severity::Check, RowFault::DistanceAlone);
                    unknown = true;
                }
                if let Some(kind) = column.hits {
                    typed.targets.push(TargetTyped {
                        kind: Some(Text::from(kind)),
                        distance: Some(Text(with_unit(cell, column.unit))),
                        ..TargetTyped::default()
                    });
                }
            }
        }
        self.line(record, typed, told);
        let alone = typed.targets.is_empty();
        for (at, column) in self.reading.columns.iter().enumerate() {
            if column.is == Column::Wires
                && let Some(cell) = self.worded_at(record, at, WordKind::Line)
                && let Some(kind) = self.wires(at, cell, typed, told)
            {
                // Something else stands in the way there, who knows how far off.
                tag.says_targets = true;
                if alone && typed.targets.is_empty() {
                    typed.targets.push(TargetTyped {
                        kind: Some(Text::from(kind)),
                        ..TargetTyped::default()
                    });
                }
            }
        }
        if unknown && typed.line_within_reach.is_none() && !typed.targets.is_empty() {
            // What nobody knows beside what is known may be a wire.
            typed.line_within_reach = Some(Text::from("cant_tell"));
        }
        if unknown || !typed.targets.is_empty() {
            // Where "none" stands beside one, the reader asks which holds only of what lies near. Nothing is cleared here.
            typed.none_in_reach = false;
        }
        let line = typed.line_within_reach.as_ref();
        tag.says_targets |= line.is_some_and(|line| line.0 != "no");
        self.slope(record, typed, tag, told);
        if let Some((at, cell)) = self.worded(record, Column::Lean, WordKind::Lean) {
            match self.words.means(WordKind::Lean, cell) {
                Some("toward") => typed.signs.push(Text::from("lean_toward")),
                Some("away") => typed.signs.push(Text::from("lean_away")),
                Some(_) => {}
                // A lean that nobody can read is no word that it stands straight.
                None => told.add(at, Severity::Fix, RowFault::LeanUnknown),
            }
        }
    }

    /// One column of targets, with the distance that stands beside it; whether it says that nobody knows.
    fn target(
        &self,
        record: &Record,
        (at, beside): (usize, Option<usize>),
        typed: &mut Typed,
        tag: &mut Tag,
        told: &mut Told<'_>,
    ) -> bool {
        let Some(cell) = self.worded_at(record, at, WordKind::Target) else {
            return false;
        };
        let mut unknown = false;
        let distance = beside.and_then(|at| {
            let unit = self.reading.columns[at].unit;
            Some(Text(with_unit(self.filled_at(record, at)?, unit)))
        });
        let parts: Vec<&str> = cell
            .split(';')
            .map(str::trim)
            .filter(|part| !part.is_empty())
            .collect();
        tag.says_targets |= !parts.is_empty();
        for part in &parts {
            match self.words.target(part) {
                Some(("none", _)) => typed.none_in_reach = true,
                Some(("unknown", _)) => unknown = true,
                Some((kind, own)) => {
                    let alone = parts.len() == 1;
                    typed.targets.push(TargetTyped {
                        kind: Some(Text::from(kind)),
                        distance: own
                            .map(|own| Text(own.to_owned()))
                            .or_else(|| distance.clone().filter(|_| alone)),
                        ..TargetTyped::default()
                    });
                }
                None => told.add(at, Severity::Fix, RowFault::TargetUnknown),
            }
        }
        unknown
    }

    fn line(&self, record: &Record, typed: &mut Typed, told: &mut Told<'_>) {
        let Some((at, cell)) = self.worded(record, Column::LineWithinReach, WordKind::Line) else {
            return;
        };
        let word = self.words.means(WordKind::Line, cell);
        match word.or_else(|| self.words.means(WordKind::YesNo, cell)) {
            Some(word) => {
                typed.line_within_reach = Some(Text::from(if word == "unknown" {
                    "cant_tell"
                } else {
                    word
                }))
            }
            None => told.add(at, Severity::Fix, RowFault::NotYesNo),
        }
    }

    /// How steep the ground is, for what lies near: which way it falls is not said, so the target counts as lying downhill.
    /// On very steep ground what is said of a whole part does not hold, since a trunk goes farther there than it is long.
    fn slope(&self, record: &Record, typed: &mut Typed, tag: &mut Tag, told: &mut Told<'_>) {
        let Some((at, cell)) = self.filled(record, Column::Slope) else {
            return;
        };
        if self.words.yes(cell) == Some(false)
            || self.words.means(WordKind::Slope, cell) == Some("level")
        {
            return;
        }
        let number = read_number(cell.trim_end_matches(['%', '°', ' ']));
        let in_degrees = self.reading.columns[at].degrees || cell.ends_with('°');
        let percent = match number {
            Ok(number) if matches!(number.unit, None | Some(Unit::Percent)) => {
                if in_degrees {
                    libm::tan(number.value.to_radians()) * 100.0
                } else {
                    number.value
                }
            }
            _ => {
                told.add(at, Severity::Check, RowFault::SlopeUnknown);
                tag.says_targets = true;
                return;
            }
        };
        for target in &mut typed.targets {
            target.slope = Some(Text([&Text::of_number(percent.round()).0, "%"].concat()));
            target.downhill = percent > 0.0;
        }
        if percent >= self.too_steep && !tag.says_targets {
            told.add(at, Severity::Check, RowFault::Steep);
            tag.says_targets = true;
        }
    }

    /// What a column of wires says: a wire there is a line; no wire in the growing space clears nothing; a word that nobody
    /// can read may well name a wire. What comes back is a target of another kind.
    fn wires(
        &self,
        at: usize,
        cell: &str,
        typed: &mut Typed,
        told: &mut Told<'_>,
    ) -> Option<&'static str> {
        let line = self
            .words
            .yes(cell)
            .map(|yes| if yes { "yes" } else { "no" })
            .or_else(|| self.words.means(WordKind::Line, cell))
            .or_else(|| self.words.means(WordKind::YesNo, cell));
        let says = line.or_else(|| self.words.target(cell).map(|(kind, _)| kind));
        match says {
            Some("yes" | "line") => typed.line_within_reach = Some(Text::from("yes")),
            Some("no" | "none") => {}
            Some("unknown" | "cant_tell") | None => {
                if says.is_none() {
                    told.add(at, Severity::Check, RowFault::NotYesNo);
                }
                if typed.line_within_reach.is_none() {
                    typed.line_within_reach = Some(Text::from("cant_tell"));
                }
            }
            other => return other,
        }
        None
    }
}
