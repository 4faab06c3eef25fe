//! Things that the tree could hit.

use super::numbers::NumberOf;
use super::{Reader, entry, given};
use crate::question::fields::MOST_TARGETS;
use crate::question::problem::Shown;
use crate::question::{Code, TargetTyped};
use crate::terms::number::Unit;
use crate::terms::quantity::{Slope, TargetDistance, Voltage};
use crate::terms::tree::Target;

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
        let field = |name: &str| entry("targets", at, name);
        let kind = self
            .needed(&field("kind"), &typed.kind)
            .and_then(|_| self.word_of(&field("kind"), &typed.kind));
        let distance = self
            .length(&field("distance"), &typed.distance, NumberOf::Ground)
            .and_then(|mm| TargetDistance::new(mm / 1000.0));
        let slope = given(&typed.slope)
            .and_then(|text| self.plain(&field("slope"), text, Unit::Percent, "%", Slope::RANGE))
            .and_then(Slope::new);
        let voltage = given(&typed.voltage).and_then(|text| self.voltage(&field("voltage"), text));
        Some(Target {
            kind: kind?,
            distance,
            slope,
            downhill: typed.downhill,
            voltage,
        })
    }

    /// A bare number is kilovolts.
    pub(super) fn voltage(&mut self, field: &str, text: &str) -> Option<Voltage> {
        let number = self.number(field, text)?;
        let kv = match number.unit {
            None | Some(Unit::Kilovolt) => number.value,
            Some(Unit::Volt) => number.value / 1000.0,
            Some(_) => {
                self.problem(field, Code::WrongUnit, text);
                return None;
            }
        };
        let taken = Voltage::new(kv);
        if taken.is_none() {
            let shown = Shown {
                range: Voltage::RANGE,
                unit: "kV",
            };
            self.problem(field, Code::OutOfRange(shown), text);
        }
        taken
    }
}
