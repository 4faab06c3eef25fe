//! The packed form of the tables: whole numbers, small tags, short texts and sentences in streams of their own, which
//! compress far better than structures in memory. `src/unpack.rs` reads it in the same order.

use std::collections::HashMap;

/// The streams.
#[derive(Default)]
pub struct Pack {
    ints: Vec<u8>,
    tags: Vec<u8>,
    texts: Texts,
    prose: Texts,
}

/// Texts, each once.
#[derive(Default)]
struct Texts {
    lines: Vec<String>,
    known: HashMap<String, usize>,
}

impl Texts {
    /// 0 for a text that comes next; n for the nth of those that stand already.
    fn place(&mut self, text: &str) -> u64 {
        assert!(!text.contains('\n'), "a text of a table is one line");
        if let Some(at) = self.known.get(text) {
            return *at as u64;
        }
        self.lines.push(text.to_owned());
        self.known.insert(text.to_owned(), self.lines.len());
        0
    }
}

impl Pack {
    /// A whole number, as a variable count of bytes.
    pub fn int(&mut self, value: u64) {
        let mut value = value;
        while value >= 0x80 {
            self.ints.push((value as u8) | 0x80);
            value >>= 7;
        }
        self.ints.push(value as u8);
    }

    /// A small number.
    pub fn tag(&mut self, tag: usize) {
        self.tags.push(u8::try_from(tag).expect("a tag is small"));
    }

    /// A value as its place in a list that the reader shares.
    pub fn one_of<T: PartialEq>(&mut self, list: &[T], value: &T) {
        let at = list.iter().position(|known| known == value);
        self.tag(at.expect("the list of tags has every value"));
    }

    /// Yes or no.
    pub fn flag(&mut self, flag: bool) {
        self.tag(usize::from(flag));
    }

    /// A decimal number: its digits as a whole number, its decimals as a tag. Read back by one division, it is the
    /// double nearest to the printed number.
    pub fn number(&mut self, value: f64) {
        let text = format!("{}", value.abs());
        assert!(
            !text.contains('e') && value.is_finite(),
            "{text} is no plain number"
        );
        let decimals = text.split_once('.').map_or(0, |(_, part)| part.len());
        let digits: u64 = text.replace('.', "").parse().expect("digits");
        assert!(
            digits < 1 << 53 && decimals < 16,
            "{text} has too many digits"
        );
        self.tag(decimals + if value.is_sign_negative() { 16 } else { 0 });
        self.int(digits);
    }

    /// A number that may be missing.
    pub fn maybe(&mut self, value: Option<f64>) {
        match value {
            Some(value) => self.number(value),
            None => self.tag(255),
        }
    }

    /// A name, an id or a place.
    pub fn text(&mut self, text: &str) {
        let at = self.texts.place(text);
        self.int(at);
    }

    /// A sentence, which is like other sentences rather than like names.
    pub fn prose(&mut self, text: &str) {
        let at = self.prose.place(text);
        self.int(at);
    }

    /// Some of a list that the reader has, in its order, as bits.
    pub fn some_of(&mut self, list: &[&str], some: &[&str]) {
        let bits = list
            .iter()
            .enumerate()
            .filter(|(_, item)| some.contains(item))
            .fold(0, |bits, (at, _)| bits | 1 << at);
        self.int(bits);
    }

    /// A list of texts.
    pub fn texts<'a>(&mut self, list: impl IntoIterator<Item = &'a str>) {
        let list: Vec<&str> = list.into_iter().collect();
        self.int(list.len() as u64);
        for text in list {
            self.text(text);
        }
    }

    /// The length of a list whose items follow.
    pub fn len(&mut self, len: usize) {
        self.int(len as u64);
    }

    /// The streams: whole numbers, tags, short texts and sentences by line.
    pub fn finish(self) -> [Vec<u8>; 4] {
        let [texts, prose] = [self.texts, self.prose].map(|texts| texts.lines.join("\n").into());
        [self.ints, self.tags, texts, prose]
    }
}
