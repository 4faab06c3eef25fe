//! Small binary files that the browser fetches only when a place is asked for: the climate places ([`climate`]) and
//! the towns of a country ([`towns`]). Both directions stand here, so that the builder writes what the page reads.
//!
//! Every file: four letters, a version byte, then columns. Numbers are whole, written as variable-length zigzag
//! integers and mostly as differences to the row before, which is what compresses; text follows in one block, a line a
//! row. The file itself is not compressed: the server or the builder does that.

pub mod climate;
pub mod towns;

use super::climate::distance_km;

/// Why a file could not be read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Broken {
    /// It is not a file of this kind, or of a later version.
    WrongKind,
    /// It ends too soon, or more follows than its rows need.
    WrongLength,
    /// A number or a text in it cannot be.
    WrongValue,
}

/// Writes columns.
struct Writer(Vec<u8>);

impl Writer {
    fn new(kind: &[u8; 4], version: u8) -> Self {
        let mut bytes = kind.to_vec();
        bytes.push(version);
        Self(bytes)
    }

    fn unsigned(&mut self, mut value: u32) {
        while value > 0x7f {
            self.0.push((value as u8 & 0x7f) | 0x80);
            value >>= 7;
        }
        self.0.push(value as u8);
    }

    fn signed(&mut self, value: i32) {
        self.unsigned(((value << 1) ^ (value >> 31)) as u32);
    }

    /// A column as differences to the row before.
    fn column(&mut self, values: impl Iterator<Item = i32>) {
        let mut before = 0;
        for value in values {
            self.signed(value - before);
            before = value;
        }
    }

    /// A block of text lines. No line may hold a line break.
    fn lines<'a>(&mut self, lines: impl Iterator<Item = &'a str>) {
        let mut text = String::new();
        for line in lines {
            text.push_str(&line.replace('\n', " "));
            text.push('\n');
        }
        self.unsigned(text.len() as u32);
        self.0.extend_from_slice(text.as_bytes());
    }
}

/// Reads what [`Writer`] wrote.
struct Reader<'a>(&'a [u8]);

impl<'a> Reader<'a> {
    fn new(bytes: &'a [u8], kind: &[u8; 4], version: u8) -> Result<Self, Broken> {
        match bytes.split_at_checked(5) {
            Some((head, rest)) if &head[..4] == kind && head[4] == version => Ok(Self(rest)),
            _ => Err(Broken::WrongKind),
        }
    }

    fn unsigned(&mut self) -> Result<u32, Broken> {
        let mut value = 0_u32;
        for shift in [0, 7, 14, 21, 28] {
            let (&byte, rest) = self.0.split_first().ok_or(Broken::WrongLength)?;
            self.0 = rest;
            value |= u32::from(byte & 0x7f)
                .checked_shl(shift)
                .ok_or(Broken::WrongValue)?;
            if byte < 0x80 {
                return Ok(value);
            }
        }
        Err(Broken::WrongValue)
    }

    fn signed(&mut self) -> Result<i32, Broken> {
        let n = self.unsigned()?;
        Ok((n >> 1) as i32 ^ -((n & 1) as i32))
    }

    /// The count of rows that follow; no more than there are bytes left, so that a broken file cannot ask for much.
    fn count(&mut self) -> Result<usize, Broken> {
        let n = self.unsigned()? as usize;
        if n <= self.0.len() {
            Ok(n)
        } else {
            Err(Broken::WrongLength)
        }
    }

    fn column(&mut self, rows: usize) -> Result<Vec<i32>, Broken> {
        let mut before = 0_i32;
        (0..rows)
            .map(|_| {
                before = before
                    .checked_add(self.signed()?)
                    .ok_or(Broken::WrongValue)?;
                Ok(before)
            })
            .collect()
    }

    fn lines(&mut self, rows: usize) -> Result<Vec<String>, Broken> {
        let length = self.unsigned()? as usize;
        let (text, rest) = self.0.split_at_checked(length).ok_or(Broken::WrongLength)?;
        self.0 = rest;
        let text = core::str::from_utf8(text).map_err(|_| Broken::WrongValue)?;
        let lines: Vec<String> = text.split_terminator('\n').map(str::to_owned).collect();
        if lines.len() == rows {
            Ok(lines)
        } else {
            Err(Broken::WrongLength)
        }
    }

    fn end(self) -> Result<(), Broken> {
        if self.0.is_empty() {
            Ok(())
        } else {
            Err(Broken::WrongLength)
        }
    }
}

/// Whole units of a value: `value` times `scale`, to the nearest.
fn whole(value: f64, scale: f64) -> i32 {
    libm::round(value * scale) as i32
}

/// The groups of points, which stand together, each with the distance of its nearest to a point, km.
fn nearest(
    points: &mut dyn Iterator<Item = (&str, f64, f64)>,
    lat: f64,
    lon: f64,
) -> Vec<(String, f64)> {
    let mut near: Vec<(String, f64)> = Vec::new();
    for (group, north, east) in points {
        let km = distance_km(lat, lon, north, east);
        match near.last_mut() {
            Some((known, least)) if known == group => *least = least.min(km),
            _ => near.push((group.to_owned(), km)),
        }
    }
    near
}
