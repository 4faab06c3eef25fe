//! Things that the tree could hit.

use super::numbers::Measure;
use super::{MOST_TARGETS, Reader};
use crate::quantity::{Slope, TargetDistance, Unit, Voltage};
use crate::question::problem::Shown;
use crate::question::{Code, Target, TargetKind, TargetTyped, Text};

impl Reader {
    pub(super) fn targets(&mut self, typed: &[TargetTyped]) -> Vec<Target> {
        if typed.len() > MOST_TARGETS {
            self.problem("targets", Code::TooManyTargets(MOST_TARGETS), "");
            return Vec::new();
        }
        typed
            .iter()
            .enumerate()
            .filter_map(|(at, target)| self.target(at, target))
            .collect()
    }

    pub(super) fn target(&mut self, at: usize, typed: &TargetTyped) -> Option<Target> {
        let field = |name: &str| format!("targets[{at}].{name}");
        let kind = match typed.kind.as_ref().filter(|text| !text.is_empty()) {
            None => {
                self.problem(field("kind"), Code::Missing, "");
                None
            }
            Some(text) => {
                let kind = TargetKind::parse(text.trimmed());
                if kind.is_none() {
                    let code = Code::NotOneOf(TargetKind::WORDS);
                    self.problem(field("kind"), code, text.trimmed());
                }
                kind
            }
        };
        let distance = self
            .length(&field("distance"), typed.distance.as_ref(), Measure::Ground)
            .and_then(|mm| TargetDistance::new(mm / 1000.0));
        let slope = typed
            .slope
            .as_ref()
            .filter(|text| !text.is_empty())
            .and_then(|text| self.plain(&field("slope"), text, Unit::Percent, "%", Slope::RANGE))
            .and_then(Slope::new);
        let voltage = typed
            .voltage
            .as_ref()
            .filter(|text| !text.is_empty())
            .and_then(|text| self.voltage(&field("voltage"), text));
        Some(Target {
            kind: kind?,
            distance,
            slope,
            downhill: typed.downhill,
            voltage,
        })
    }

    /// A bare number is kilovolts.
    pub(super) fn voltage(&mut self, field: &str, text: &Text) -> Option<Voltage> {
        let number = self.number(field, text.trimmed())?;
        let kv = match number.unit {
            None | Some(Unit::Kilovolt) => number.value,
            Some(Unit::Volt) => number.value / 1000.0,
            Some(_) => {
                self.problem(field, Code::WrongUnit, text.trimmed());
                return None;
            }
        };
        let taken = Voltage::new(kv);
        if taken.is_none() {
            let shown = Shown {
                range: Voltage::RANGE,
                unit: "kV",
            };
            self.problem(field, Code::OutOfRange(shown), text.trimmed());
        }
        taken
    }
}
