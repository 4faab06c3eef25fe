//! The packed form of the tables: numbers and tags in one stream, texts each once in another, which compress far better
//! than structures in memory. `src/unpack.rs` reads them back; what is packed, and in which order, stands in
//! `src/tables.rs` for both.

use calc::reference::Constants;
use calc::terms::constants::Constant;
use calc::terms::source::{SourceId, SourceLine};
use std::collections::HashMap;
use std::sync::OnceLock;

/// The streams.
#[derive(Default)]
pub(crate) struct Streams {
    ints: Vec<u8>,
    tags: Vec<u8>,
    texts: Vec<String>,
    known: HashMap<String, usize>,
}

impl Streams {
    /// A whole number, as a variable count of bytes.
    fn int(&mut self, value: u64) {
        let mut value = value;
        while value >= 0x80 {
            self.ints.push((value as u8) | 0x80);
            value >>= 7;
        }
        self.ints.push(value as u8);
    }

    /// A small number.
    pub(crate) fn tag(&mut self, tag: usize) {
        self.tags.push(u8::try_from(tag).expect("a tag is small"));
    }

    /// A decimal number: its digits as a whole number, its decimals as a tag. Read back by one division, it is the
    /// double nearest to the printed number.
    fn number(&mut self, value: f64) {
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

    /// 0 for a text that comes next; n for the nth of those that stand already.
    fn text(&mut self, text: &str) {
        assert!(!text.contains('\n'), "a text of a table is one line");
        match self.known.get(text) {
            Some(at) => self.int(*at as u64),
            None => {
                self.texts.push(text.to_owned());
                self.known.insert(text.to_owned(), self.texts.len());
                self.int(0);
            }
        }
    }

    /// Whole numbers, tags, and texts by line.
    pub(crate) fn finish(self) -> [Vec<u8>; 3] {
        [self.ints, self.tags, self.texts.join("\n").into()]
    }
}

/// What can be packed.
pub(crate) trait Pack {
    /// Writes it.
    fn pack(&self, to: &mut Streams);
}

/// Each field of a struct, in the order of the list.
macro_rules! packed {
    ($($name:ident { $($field:ident),+ $(,)? })+) => {
        $(impl crate::pack::Pack for $name {
            fn pack(&self, to: &mut crate::pack::Streams) {
                let Self { $($field),+ } = self;
                $(crate::pack::Pack::pack($field, to);)+
            }
        })+
    };
}

/// A value by its place among all of its type.
macro_rules! tagged {
    ($($name:ident),+ $(,)?) => {
        $(impl crate::pack::Pack for $name {
            fn pack(&self, to: &mut crate::pack::Streams) {
                let at = $name::ALL.iter().position(|known| known == self);
                to.tag(at.expect("ALL has every value"));
            }
        })+
    };
}

impl Pack for f64 {
    fn pack(&self, to: &mut Streams) {
        to.number(*self);
    }
}

impl Pack for u8 {
    fn pack(&self, to: &mut Streams) {
        to.tag(usize::from(*self));
    }
}

impl Pack for bool {
    fn pack(&self, to: &mut Streams) {
        to.tag(usize::from(*self));
    }
}

impl Pack for str {
    fn pack(&self, to: &mut Streams) {
        to.text(self);
    }
}

/// Its place tells its number.
impl Pack for SourceLine {
    fn pack(&self, to: &mut Streams) {
        to.text(self.id.text());
        to.text(self.label);
    }
}

impl Pack for SourceId {
    fn pack(&self, to: &mut Streams) {
        to.int(self.number() as u64);
    }
}

impl<T: Pack> Pack for Option<T> {
    fn pack(&self, to: &mut Streams) {
        self.is_some().pack(to);
        if let Some(value) = self {
            value.pack(to);
        }
    }
}

/// What comes later, or is made when it is asked for.
impl<T> Pack for OnceLock<T> {
    fn pack(&self, _: &mut Streams) {}
}

impl<T: Pack, const N: usize> Pack for [T; N] {
    fn pack(&self, to: &mut Streams) {
        for item in self {
            item.pack(to);
        }
    }
}

impl<T: Pack> Pack for [T] {
    fn pack(&self, to: &mut Streams) {
        to.int(self.len() as u64);
        for item in self {
            item.pack(to);
        }
    }
}

impl<T: Pack + ?Sized> Pack for &T {
    fn pack(&self, to: &mut Streams) {
        (**self).pack(to);
    }
}

impl<A: Pack, B: Pack> Pack for (A, B) {
    fn pack(&self, to: &mut Streams) {
        self.0.pack(to);
        self.1.pack(to);
    }
}

impl Pack for Constants {
    fn pack(&self, to: &mut Streams) {
        self.each(&mut |value| to.number(value));
    }
}
