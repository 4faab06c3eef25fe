//! From the bytes of a file to text: which encoding it is, and whether it is a text at all.

/// Why a file is no list.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NotList {
    /// Nothing in it.
    Empty,
    /// A workbook of a spreadsheet program: it begins with `PK`.
    Workbook,
    /// A picture, a PDF, or another file with bytes that no text has.
    NotText,
    /// One column only.
    OneColumn,
    /// A header and nothing below it.
    HeaderAlone,
    /// Columns are trees and rows are fields.
    Sideways,
    /// Counts of trees instead of a row a tree.
    Counts,
}

impl NotList {
    /// Its name in what a program prints.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Empty => "empty",
            Self::Workbook => "workbook",
            Self::NotText => "not_text",
            Self::OneColumn => "one_column",
            Self::HeaderAlone => "header_alone",
            Self::Sideways => "sideways",
            Self::Counts => "counts",
        }
    }
}

/// How letters are written in a file.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Encoding {
    /// UTF-8, with or without a mark of order.
    #[default]
    Utf8,
    /// UTF-16, the small byte first.
    Utf16Le,
    /// UTF-16, the large byte first.
    Utf16Be,
    /// Windows-1252: what is no UTF-8 anywhere is read so as a whole.
    Windows1252,
}

/// Looks at the bytes of a file, in slices, before anything is read.
#[derive(Debug, Default)]
pub struct Look {
    start: Vec<u8>,
    /// Bytes of a letter that the last slice cut.
    open: Vec<u8>,
    nul: bool,
    broken: bool,
    any: bool,
}

impl Look {
    /// Takes the next slice.
    pub fn take(&mut self, slice: &[u8]) {
        self.any |= !slice.is_empty();
        if self.start.len() < 8 {
            self.start.extend(slice.iter().take(8 - self.start.len()));
        }
        self.nul |= slice.contains(&0);
        if self.broken {
            return;
        }
        let mut rest = slice;
        while !self.open.is_empty() && !rest.is_empty() {
            self.open.push(rest[0]);
            rest = &rest[1..];
            match std::str::from_utf8(&self.open) {
                Ok(_) => self.open.clear(),
                Err(error) if error.error_len().is_some() => {
                    self.broken = true;
                    return;
                }
                Err(_) => {}
            }
        }
        if let Err(error) = std::str::from_utf8(rest) {
            if error.error_len().is_some() {
                self.broken = true;
            } else {
                self.open.extend(&rest[error.valid_up_to()..]);
            }
        }
    }

    /// What it is.
    ///
    /// # Errors
    /// Why it is no list.
    pub fn done(&self) -> Result<Encoding, NotList> {
        if !self.any {
            return Err(NotList::Empty);
        }
        match self.start.as_slice() {
            [0xff, 0xfe, ..] => return Ok(Encoding::Utf16Le),
            [0xfe, 0xff, ..] => return Ok(Encoding::Utf16Be),
            [b'P', b'K', 3 | 5 | 7, ..] => return Err(NotList::Workbook),
            // The workbook of older programs, and common pictures and documents.
            [0xd0, 0xcf, 0x11, 0xe0, ..] => return Err(NotList::Workbook),
            [0x89, b'P', b'N', b'G', ..]
            | [0xff, 0xd8, 0xff, ..]
            | [b'%', b'P', b'D', b'F', ..] => {
                return Err(NotList::NotText);
            }
            _ => {}
        }
        if self.nul {
            return Err(NotList::NotText);
        }
        if self.broken || !self.open.is_empty() {
            return Ok(Encoding::Windows1252);
        }
        Ok(Encoding::Utf8)
    }
}

/// Windows-1252 in the range where it differs from Latin-1 (Unicode's own table, CP1252.TXT); bytes that it leaves
/// open are the control characters of the same number.
const HIGH: [char; 32] = [
    '€', '\u{81}', '‚', 'ƒ', '„', '…', '†', '‡', 'ˆ', '‰', 'Š', '‹', 'Œ', '\u{8d}', 'Ž', '\u{8f}',
    '\u{90}', '‘', '’', '“', '”', '•', '–', '—', '˜', '™', 'š', '›', 'œ', '\u{9d}', 'ž', 'Ÿ',
];

/// Bytes of a cell as text.
pub(crate) fn decode(bytes: &[u8], encoding: Encoding, into: &mut String) {
    if encoding != Encoding::Windows1252
        && let Ok(text) = std::str::from_utf8(bytes)
    {
        into.push_str(text);
        return;
    }
    into.extend(bytes.iter().map(|byte| match byte {
        0x80..=0x9f => HIGH[usize::from(byte - 0x80)],
        byte => char::from(*byte),
    }));
}

/// The first three different words of a file of Windows-1252 that have letters beyond ASCII, as they were read: whoever
/// knows the list sees at once whether they are right.
#[must_use]
pub fn changed_words(bytes: &[u8]) -> Vec<String> {
    let mut words: Vec<String> = Vec::new();
    let ends = |byte: &u8| byte.is_ascii() && !byte.is_ascii_alphanumeric();
    for word in bytes.split(ends).filter(|word| !word.is_ascii()) {
        let mut text = String::new();
        decode(word, Encoding::Windows1252, &mut text);
        if !words.contains(&text) {
            words.push(text);
        }
        if words.len() == 3 {
            break;
        }
    }
    words
}

/// A whole file of UTF-16 as UTF-8; what is no letter becomes the sign for it.
#[must_use]
pub fn from_utf16(bytes: &[u8], encoding: Encoding) -> String {
    let units = bytes.chunks_exact(2).map(|pair| match encoding {
        Encoding::Utf16Be => u16::from_be_bytes([pair[0], pair[1]]),
        _ => u16::from_le_bytes([pair[0], pair[1]]),
    });
    char::decode_utf16(units)
        .map(|letter| letter.unwrap_or('\u{fffd}'))
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn look(bytes: &[u8], slice: usize) -> Result<Encoding, NotList> {
        let mut look = Look::default();
        for part in bytes.chunks(slice) {
            look.take(part);
        }
        look.done()
    }

    #[test]
    fn the_encoding_is_seen_whatever_the_slices() {
        for slice in [1, 2, 3, 7, 1000] {
            assert_eq!(
                look("árbol, Höhe ½ 🌲".as_bytes(), slice),
                Ok(Encoding::Utf8)
            );
            assert_eq!(look(b"\xef\xbb\xbfa,b", slice), Ok(Encoding::Utf8));
            assert_eq!(look(b"a,\xe1rbol", slice), Ok(Encoding::Windows1252));
            assert_eq!(look(b"a,b\xe1", slice), Ok(Encoding::Windows1252));
            assert_eq!(look(b"\xff\xfea\0", slice), Ok(Encoding::Utf16Le));
            assert_eq!(look(b"PK\x03\x04..", slice), Err(NotList::Workbook));
            assert_eq!(look(b"a,\0b", slice), Err(NotList::NotText));
            assert_eq!(look(b"%PDF-1.7", slice), Err(NotList::NotText));
        }
        assert_eq!(look(b"", 1), Err(NotList::Empty));
    }

    #[test]
    fn windows_letters_are_those_of_its_table() {
        let mut text = String::new();
        decode(
            b"\x93Stra\xdfe\x94 \x80 \xbd",
            Encoding::Windows1252,
            &mut text,
        );
        assert_eq!(text, "“Straße” € ½");
        assert_eq!(
            changed_words(b"a,\xe1rbol viejo,\xe1rbol\nse\xf1al,H\xf6he,Stra\xdfe"),
            ["árbol", "señal", "Höhe"]
        );
        assert_eq!(
            from_utf16(b"\xff\xfea\0\xe1\0", Encoding::Utf16Le),
            "\u{feff}aá"
        );
    }
}
