//! One reader for every number a person types: fractions, both decimal marks, a unit behind it.

use crate::terms::small::find::{behind, cut, is_letter};

/// A unit that may stand behind a number.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Unit {
    /// Inches.
    Inch,
    /// Feet.
    Foot,
    /// Millimetres.
    Millimetre,
    /// Centimetres.
    Centimetre,
    /// Metres.
    Metre,
    /// Percent.
    Percent,
    /// Minutes.
    Minute,
    /// Volts.
    Volt,
    /// Kilovolts.
    Kilovolt,
}

impl Unit {
    /// Millimetres in one of this unit, for a unit of length.
    #[must_use]
    pub fn in_mm(self) -> Option<f64> {
        match self {
            Self::Inch => Some(super::quantity::MM_PER_IN),
            Self::Foot => Some(super::quantity::M_PER_FT * 1000.0),
            Self::Millimetre => Some(1.0),
            Self::Centimetre => Some(10.0),
            Self::Metre => Some(1000.0),
            Self::Percent | Self::Minute | Self::Volt | Self::Kilovolt => None,
        }
    }

    /// Its sign.
    #[must_use]
    pub fn sign(self) -> &'static str {
        match self {
            Self::Inch => "in",
            Self::Foot => "ft",
            Self::Millimetre => "mm",
            Self::Centimetre => "cm",
            Self::Metre => "m",
            Self::Percent => "%",
            Self::Minute => "min",
            Self::Volt => "V",
            Self::Kilovolt => "kV",
        }
    }
}

/// A number as read, with the unit typed behind it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Number {
    /// The value in its own unit; feet and inches together come out in inches.
    pub value: f64,
    /// The unit that was typed, if any.
    pub unit: Option<Unit>,
}

/// Why a text is no number of ours.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NotNumber {
    /// Nothing was typed.
    Empty,
    /// It can't be read as a number.
    Unreadable,
    /// `1,234`: a thousand and more, or one and a bit? Only the writer knows.
    Ambiguous,
    /// More than fits: over 15 digits, or a text of over 40 characters.
    TooLong,
    /// The unit behind the number is not one we know.
    UnknownUnit,
}

/// The longest text read as a number, in characters.
const LONGEST: usize = 40;

/// Reads `14 1/2 in`, `14½`, `14-1/2`, `36,8 cm`, `5 ft 3 in`, `100 %`, `-71.06`.
///
/// Digits go into an integer and one division makes the value, so it is correctly rounded
/// and the same on every machine.
///
/// # Errors
/// [`NotNumber`] says why the text can't be read.
pub fn read_number(text: &str) -> Result<Number, NotNumber> {
    let text = text.trim();
    if text.is_empty() {
        return Err(NotNumber::Empty);
    }
    if text.chars().count() > LONGEST {
        return Err(NotNumber::TooLong);
    }
    let mut scan = Scan { rest: text };
    let first = scan.quantity()?;
    if scan.rest.is_empty() {
        return Ok(first);
    }
    // Only feet may be followed by inches: 5 ft 3 in, 5' 3".
    if first.unit != Some(Unit::Foot) || first.value < 0.0 {
        return Err(NotNumber::Unreadable);
    }
    let second = scan.quantity()?;
    let inches = matches!(second.unit, Some(Unit::Inch) | None);
    if !inches || !scan.rest.is_empty() || !(0.0..12.0).contains(&second.value) {
        return Err(NotNumber::Unreadable);
    }
    Ok(Number {
        value: first.value * 12.0 + second.value,
        unit: Some(Unit::Inch),
    })
}

struct Scan<'a> {
    rest: &'a str,
}

impl Scan<'_> {
    fn skip_space(&mut self) {
        self.rest = self.rest.trim_start();
    }

    fn quantity(&mut self) -> Result<Number, NotNumber> {
        self.skip_space();
        let negative = self.eat('-') || self.eat('\u{2212}');
        if !negative {
            self.eat('+');
        }
        let mut value = match self.vulgar() {
            Some(part) => part,
            None => self.decimal_then_fraction()?,
        };
        if negative {
            value = -value;
        }
        let unit = self.unit()?;
        self.skip_space();
        Ok(Number { value, unit })
    }

    fn eat(&mut self, c: char) -> bool {
        match self.rest.strip_prefix(c) {
            Some(rest) => {
                self.rest = rest;
                true
            }
            None => false,
        }
    }

    /// A single sign such as ½.
    fn vulgar(&mut self) -> Option<f64> {
        let c = self.rest.chars().next()?;
        let (over, under) = match c {
            '¼' => (1, 4),
            '½' => (1, 2),
            '¾' => (3, 4),
            '⅛' => (1, 8),
            '⅜' => (3, 8),
            '⅝' => (5, 8),
            '⅞' => (7, 8),
            '⅓' => (1, 3),
            '⅔' => (2, 3),
            _ => return None,
        };
        self.rest = behind(self.rest, c.len_utf8());
        Some(f64::from(over) / f64::from(under))
    }

    fn digits(&mut self) -> Result<Option<(u64, u32)>, NotNumber> {
        let end = self
            .rest
            .find(|c: char| !c.is_ascii_digit())
            .unwrap_or(self.rest.len());
        if end == 0 {
            return Ok(None);
        }
        if end > 15 {
            return Err(NotNumber::TooLong);
        }
        let (digits, rest) = cut(self.rest, end);
        self.rest = rest;
        let value = digits
            .bytes()
            .fold(0_u64, |sum, digit| sum * 10 + u64::from(digit - b'0'));
        Ok(Some((value, end as u32)))
    }

    fn decimal_then_fraction(&mut self) -> Result<f64, NotNumber> {
        let whole = self.digits()?;
        let mark = self
            .rest
            .chars()
            .next()
            .filter(|c| matches!(c, '.' | ','))
            .filter(|_| {
                behind(self.rest, 1).starts_with(|c: char| c.is_ascii_digit())
                    || (whole.is_some() && self.rest.starts_with('.'))
            });
        if let Some(mark) = mark {
            self.rest = behind(self.rest, 1);
            let (part, places) = self.digits()?.unwrap_or((0, 0));
            if mark == ',' && places == 3 && whole.is_some_and(|(value, _)| value > 0) {
                return Err(NotNumber::Ambiguous);
            }
            // A second mark makes it a grouped number, or nothing: ask.
            if self.rest.starts_with(['.', ',']) {
                return Err(NotNumber::Ambiguous);
            }
            let (whole, width) = whole.unwrap_or((0, 0));
            if width + places > 15 {
                return Err(NotNumber::TooLong);
            }
            let scale = 10_u64.pow(places);
            return Ok((whole * scale + part) as f64 / scale as f64);
        }
        let Some((whole, _)) = whole else {
            return Err(NotNumber::Unreadable);
        };
        if self.eat('/') {
            return self.under(whole);
        }
        // A fraction behind the whole: 14 1/2, 14-1/2, 14½, 14 ½.
        let before = self.rest;
        let gap = !self.rest.is_empty() && {
            let cut = self.rest.trim_start_matches([' ', '-', '\u{a0}']);
            let moved = cut.len() < self.rest.len();
            self.rest = cut;
            moved
        };
        if let Some(part) = self.vulgar() {
            return Ok(whole as f64 + part);
        }
        if gap
            && let Some((over, _)) = self.digits()?
            && self.eat('/')
        {
            let part = self.under(over)?;
            if part >= 1.0 {
                return Err(NotNumber::Unreadable);
            }
            return Ok(whole as f64 + part);
        }
        self.rest = before;
        Ok(whole as f64)
    }

    fn under(&mut self, over: u64) -> Result<f64, NotNumber> {
        match self.digits()? {
            Some((under, _)) if under > 0 => Ok(over as f64 / under as f64),
            _ => Err(NotNumber::Unreadable),
        }
    }

    fn unit(&mut self) -> Result<Option<Unit>, NotNumber> {
        self.skip_space();
        let end = self
            .rest
            .find(|c: char| c.is_ascii_digit() || c == ' ' || c == '-')
            .unwrap_or(self.rest.len());
        let (word, rest) = cut(self.rest, end);
        if word.is_empty() {
            return Ok(None);
        }
        let word = word.trim_end_matches('.');
        let is = |names: &[&str]| names.iter().any(|name| word.eq_ignore_ascii_case(name));
        let unit = if is(&["in", "inch", "inches", "\"", "″", "”", "''"]) {
            Unit::Inch
        } else if is(&["ft", "foot", "feet", "'", "′", "’"]) {
            Unit::Foot
        } else if is(&[
            "mm",
            "millimetre",
            "millimetres",
            "millimeter",
            "millimeters",
        ]) {
            Unit::Millimetre
        } else if is(&[
            "cm",
            "centimetre",
            "centimetres",
            "centimeter",
            "centimeters",
        ]) {
            Unit::Centimetre
        } else if is(&["m", "metre", "metres", "meter", "meters"]) {
            Unit::Metre
        } else if is(&["%", "percent"]) {
            Unit::Percent
        } else if is(&["min", "mins", "minute", "minutes"]) {
            Unit::Minute
        } else if is(&["kv", "kilovolt", "kilovolts"]) {
            Unit::Kilovolt
        } else if is(&["v", "volt", "volts"]) {
            Unit::Volt
        } else if word.starts_with(is_letter) {
            return Err(NotNumber::UnknownUnit);
        } else {
            return Err(NotNumber::Unreadable);
        };
        self.rest = rest;
        Ok(Some(unit))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(text: &str) -> Result<(f64, Option<Unit>), NotNumber> {
        read_number(text).map(|number| (number.value, number.unit))
    }

    #[test]
    fn every_way_of_writing_fourteen_and_a_half_is_the_same_number() {
        for text in ["14 1/2", "14½", "14-1/2", "14.5", "14,5", " 14 ½ ", "29/2"] {
            assert_eq!(read(text), Ok((14.5, None)), "{text}");
        }
    }

    #[test]
    fn a_typed_unit_is_kept() {
        assert_eq!(read("35cm"), Ok((35.0, Some(Unit::Centimetre))));
        assert_eq!(read("36,8 cm"), Ok((36.8, Some(Unit::Centimetre))));
        assert_eq!(read("1.2 ft"), Ok((1.2, Some(Unit::Foot))));
        assert_eq!(read("14 1/2 in"), Ok((14.5, Some(Unit::Inch))));
        assert_eq!(read("5 ft 3 in"), Ok((63.0, Some(Unit::Inch))));
        assert_eq!(read("5' 3 1/2\""), Ok((63.5, Some(Unit::Inch))));
        assert_eq!(read("100 %"), Ok((100.0, Some(Unit::Percent))));
        assert_eq!(read("69 kV"), Ok((69.0, Some(Unit::Kilovolt))));
    }

    #[test]
    fn a_thousand_or_one_is_never_guessed() {
        assert_eq!(read("1,234"), Err(NotNumber::Ambiguous));
        assert_eq!(read("1,234.5"), Err(NotNumber::Ambiguous));
        assert_eq!(read("0,125"), Ok((0.125, None)));
        assert_eq!(read("1.234"), Ok((1.234, None)));
    }

    #[test]
    fn what_is_no_number_says_why() {
        assert_eq!(read(""), Err(NotNumber::Empty));
        for text in ["fourteen", "NaN", "Infinity", "inf", "1e9", "14 cubits"] {
            assert!(
                matches!(
                    read(text),
                    Err(NotNumber::Unreadable | NotNumber::UnknownUnit)
                ),
                "{text}"
            );
        }
        for text in ["1/0", "14 3/2", "--3", "3 4", "5 ft 14 in", "½½"] {
            assert_eq!(read(text), Err(NotNumber::Unreadable), "{text}");
        }
        assert_eq!(read(&"9".repeat(1_000_000)), Err(NotNumber::TooLong));
        assert_eq!(read("-71.06"), Ok((-71.06, None)));
    }

    #[test]
    fn the_value_is_the_nearest_double() {
        for text in ["0.1", "36.8", "71.06", "123456.789012"] {
            assert_eq!(read(text).ok().map(|n| n.0), text.parse().ok());
        }
    }
}
