//! Where a tree stands: degrees in two columns, two numbers in one cell, text forms of a point.

use crate::reading::PointOrder;
use calc::question::region_names;
use calc::terms::number::read_number;

/// Degrees of one cell: `42.36`, `42.36° N`, `40°26'46" N`, with a decimal comma too.
#[must_use]
pub(crate) fn degrees(cell: &str) -> Option<f64> {
    let text = cell.trim();
    if text.is_empty() || text.len() > 40 {
        return None;
    }
    let upper = text.to_uppercase();
    let sign = if upper.ends_with(['S', 'W']) || upper.starts_with(['S', 'W']) {
        -1.0
    } else {
        1.0
    };
    let bare =
        upper.trim_matches(|c: char| matches!(c, 'N' | 'S' | 'E' | 'W' | 'O') || c.is_whitespace());
    let parts: Vec<f64> = bare
        .split(['°', '\'', '"', '′', '″', '’', '”', '#', ' '])
        .filter(|part| !part.trim().is_empty())
        .map(|part| {
            read_number(part.trim())
                .ok()
                .filter(|number| number.unit.is_none())
                .map(|number| number.value)
        })
        .collect::<Option<Vec<f64>>>()?;
    match parts.as_slice() {
        [whole] => Some(sign * whole),
        [whole, minutes] if bare.contains('°') => Some(sign * (whole + minutes / 60.0)),
        [whole, minutes, seconds] => Some(sign * (whole + minutes / 60.0 + seconds / 3600.0)),
        _ => None,
    }
}

/// Two numbers in one cell, in their order: between a comma, a semicolon or a space; `POINT (-93.1 44.9)`; a JSON point.
#[must_use]
pub(crate) fn two_numbers(cell: &str) -> Option<(f64, f64)> {
    let text = cell.trim();
    if text.len() > 120 {
        return None;
    }
    let inside = match (text.find("POINT"), text.find("\"coordinates\"")) {
        (Some(at), _) => &text[at + 5..],
        (_, Some(at)) => &text[at + 13..],
        _ => text,
    };
    let bare: String = inside
        .chars()
        .map(|c| {
            if matches!(c, '(' | ')' | '[' | ']' | '{' | '}' | ':') {
                ' '
            } else {
                c
            }
        })
        .collect();
    let parts: Vec<&str> = bare
        .split([',', ';', ' ', '|'])
        .map(str::trim)
        .filter(|part| !part.is_empty())
        .collect();
    let [a, b] = parts.as_slice() else {
        return None;
    };
    let number = |part: &str| {
        let digits = part.strip_prefix('-').unwrap_or(part);
        let plain = digits.chars().all(|c| c.is_ascii_digit() || c == '.') && digits.contains('.');
        plain
            .then(|| read_number(part).ok().map(|number| number.value))
            .flatten()
    };
    Some((number(a)?, number(b)?))
}

/// Latitude and longitude of two numbers; none where they are no degrees.
#[must_use]
pub(crate) fn point(cell: &str, order: PointOrder) -> Option<(f64, f64)> {
    let (a, b) = two_numbers(cell)?;
    Some(match order {
        PointOrder::Latitude => (a, b),
        PointOrder::Longitude => (b, a),
    })
}

/// A number of degrees as text: rounded to a hundredth, for the climate.
#[must_use]
pub(crate) fn rounded(degrees: f64) -> String {
    calc::question::Text::of_number((degrees * 100.0).round() / 100.0).0
}

/// A whole code of a state, province or country (ISO 3166), as field mode writes it. None where it could mean another place:
/// two letters that a state of the United States has too (CA, DE).
#[must_use]
pub(crate) fn region(cell: &str) -> Option<&'static str> {
    let codes = || region_names().map(|(code, _)| code);
    let code = codes().find(|code| *code == cell)?;
    let is_state = codes().any(|of| of.strip_prefix("US-") == Some(code));
    (!is_state).then_some(code)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_place_is_read_in_its_forms() {
        for (cell, value) in [
            ("42.36", 42.36),
            ("-71,06", -71.06),
            ("71.06 W", -71.06),
            ("40°26'46\" N", 40.446_111),
            ("N40 26 46", 40.446_111),
        ] {
            let read = degrees(cell).expect(cell);
            assert!((read - value).abs() < 1e-5, "{cell}: {read}");
        }
        for cell in ["48.8735, 2.2904", "48.8735 2.2904", "(48.8735, 2.2904)"] {
            assert_eq!(two_numbers(cell), Some((48.8735, 2.2904)), "{cell}");
        }
        assert_eq!(
            point("POINT (-93.1 44.9)", PointOrder::Longitude),
            Some((44.9, -93.1))
        );
        assert!(two_numbers("{\"type\": \"Point\", \"coordinates\": [-79.35, 43.68]}").is_some());
        for cell in ["12 Main Street", "inf", "nan", "SU 387 148", "12 14"] {
            assert_eq!(two_numbers(cell), None, "{cell}");
        }
    }

    #[test]
    fn a_region_is_a_whole_code_and_nothing_else() {
        for code in ["US-MA", "CA-QC", "GB"] {
            assert_eq!(region(code), Some(code));
        }
        for cell in [
            "MA",
            "CA",
            "DE",
            "us-ma",
            "Massachusetts",
            "US-XX",
            "North",
            "",
        ] {
            assert_eq!(region(cell), None, "{cell}");
        }
    }
}
