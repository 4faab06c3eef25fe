//! Numbers of every kind, within their range, in the unit that the asker uses.

use super::{Reader, given};
use crate::question::problem::Shown;
use crate::question::{Code, Text};
use crate::terms::number::{NotNumber, Number, Unit, read_number};
use crate::terms::quantity::{
    BarkThickness, Dbh, M_PER_FT, MM_PER_IN, Range, TargetDistance, TotalHeight, Units,
};

/// What a bare number of a field means, and which units it may carry.
#[derive(Clone, Copy)]
pub(super) enum NumberOf {
    Trunk,
    Bark,
    Ground,
    Height,
}

impl Reader {
    /// A length in millimetres, within the range of its kind.
    pub(super) fn length(
        &mut self,
        field: &str,
        typed: &Option<Text>,
        measure: NumberOf,
    ) -> Option<f64> {
        let scale = |range: Range| Range {
            low: range.low * 1000.0,
            high: range.high * 1000.0,
        };
        let range = match measure {
            NumberOf::Trunk => Dbh::RANGE,
            NumberOf::Bark => BarkThickness::RANGE,
            NumberOf::Ground => scale(TargetDistance::RANGE),
            NumberOf::Height => scale(TotalHeight::RANGE),
        };
        self.length_in(field, typed, measure, range)
    }

    pub(super) fn length_in(
        &mut self,
        field: &str,
        typed: &Option<Text>,
        measure: NumberOf,
        range: Range,
    ) -> Option<f64> {
        let text = given(typed)?;
        let number = self.number(field, text)?;
        let Some(scale) = number.unit.unwrap_or(self.bare(measure)).in_mm() else {
            self.problem(field, Code::WrongUnit, text);
            return None;
        };
        let mm = number.value * scale;
        // A target may stand at the trunk itself; every other length is above zero.
        if mm < 0.0 || (mm == 0.0 && range.low > 0.0) {
            self.problem(field, Code::NotPositive, text);
            return None;
        }
        if !range.holds(mm) {
            let shown = self.shown(range, measure);
            self.problem(field, Code::OutOfRange(shown), text);
            return None;
        }
        Some(mm)
    }

    /// The unit of a number without one.
    pub(super) fn bare(&self, measure: NumberOf) -> Unit {
        match (measure, self.units) {
            (NumberOf::Trunk | NumberOf::Bark, Units::Us) => Unit::Inch,
            (NumberOf::Trunk, Units::Metric) => Unit::Centimetre,
            (NumberOf::Bark, Units::Metric) => Unit::Millimetre,
            (NumberOf::Ground | NumberOf::Height, Units::Us) => Unit::Foot,
            (NumberOf::Ground | NumberOf::Height, Units::Metric) => Unit::Metre,
        }
    }

    /// A range in millimetres, in the unit that the asker uses for such a thing.
    pub(super) fn shown(&self, mm: Range, measure: NumberOf) -> Shown {
        let (scale, unit) = match (measure, self.units) {
            (NumberOf::Trunk | NumberOf::Bark, Units::Us) => (MM_PER_IN, "in"),
            (NumberOf::Trunk, Units::Metric) => (10.0, "cm"),
            (NumberOf::Bark, Units::Metric) => (1.0, "mm"),
            (NumberOf::Ground | NumberOf::Height, Units::Us) => (M_PER_FT * 1000.0, "ft"),
            (NumberOf::Ground | NumberOf::Height, Units::Metric) => (1000.0, "m"),
        };
        Shown {
            range: Range {
                low: mm.low / scale,
                high: mm.high / scale,
            },
            unit,
        }
    }

    pub(super) fn number(&mut self, field: &str, text: &str) -> Option<Number> {
        match read_number(text) {
            Ok(number) => Some(number),
            Err(why) => {
                let code = match why {
                    NotNumber::Empty => Code::Missing,
                    NotNumber::Unreadable => Code::NotNumber,
                    NotNumber::Ambiguous => Code::Ambiguous,
                    NotNumber::TooLong => Code::TooLong,
                    NotNumber::UnknownUnit => Code::WrongUnit,
                };
                self.problem(field, code, text);
                None
            }
        }
    }

    /// A number in one unit only.
    pub(super) fn plain(
        &mut self,
        field: &str,
        text: &str,
        unit: Unit,
        sign: &'static str,
        range: Range,
    ) -> Option<f64> {
        let number = self.number(field, text)?;
        if number.unit.is_some_and(|typed| typed != unit) {
            self.problem(field, Code::WrongUnit, text);
            return None;
        }
        if !range.holds(number.value) {
            let shown = Shown { range, unit: sign };
            self.problem(field, Code::OutOfRange(shown), text);
            return None;
        }
        Some(number.value)
    }
}
