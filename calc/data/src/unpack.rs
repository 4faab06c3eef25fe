//! Reads the packed tables back; what is packed, and in which order, stands in `tables.rs`.

use calc::reference::Constants;
use calc::terms::constants::Constant;
use calc::terms::source::{SourceId, SourceLine};
use core::str::Split;
use std::sync::OnceLock;

/// The streams, and how far each is read. The build wrote them, so nothing is missing.
pub(crate) struct Streams {
    ints: &'static [u8],
    tags: &'static [u8],
    lines: Split<'static, char>,
    known: Vec<&'static str>,
    sources: Vec<SourceId>,
}

impl Streams {
    pub(crate) fn new(ints: &'static [u8], tags: &'static [u8], texts: &'static str) -> Self {
        Self {
            ints,
            tags,
            lines: texts.split('\n'),
            known: Vec::new(),
            sources: Vec::new(),
        }
    }

    /// The same, whose sources come after those of another table.
    pub(crate) fn after(self, sources: &[SourceLine]) -> Self {
        Self {
            sources: sources.iter().map(|line| line.id).collect(),
            ..self
        }
    }

    /// Whether everything was read.
    pub(crate) fn is_done(&self) -> bool {
        self.ints.is_empty() && self.tags.is_empty()
    }

    fn int(&mut self) -> u64 {
        let (mut value, mut shift) = (0_u64, 0);
        while let Some((byte, rest)) = self.ints.split_first() {
            self.ints = rest;
            value |= u64::from(byte & 0x7f) << shift;
            shift += 7;
            if *byte < 0x80 {
                break;
            }
        }
        value
    }

    /// A small number.
    pub(crate) fn tag(&mut self) -> usize {
        match self.tags.split_first() {
            Some((tag, rest)) => {
                self.tags = rest;
                usize::from(*tag)
            }
            None => 0,
        }
    }

    /// Digits and their decimals: one division gives the double nearest to the printed number.
    fn number(&mut self) -> f64 {
        let tag = self.tag();
        let digits = self.int() as f64;
        let mut scale = 1.0;
        for _ in 0..tag % 16 {
            scale *= 10.0;
        }
        let value = digits / scale;
        if tag >= 16 { -value } else { value }
    }

    /// 0 is the next text; n is the nth of those before.
    fn text(&mut self) -> &'static str {
        let place = self.int() as usize;
        if place > 0 {
            return self.known[place - 1];
        }
        let next = self.lines.next().unwrap_or("");
        self.known.push(next);
        next
    }
}

/// What can be read back.
pub(crate) trait Unpack: Sized {
    /// Reads it.
    fn unpack(from: &mut Streams) -> Self;
}

/// Each field of a struct, in the order of the list.
macro_rules! packed {
    ($($name:ident { $($field:ident),+ $(,)? })+) => {
        $(impl crate::unpack::Unpack for $name {
            fn unpack(from: &mut crate::unpack::Streams) -> Self {
                // Before the struct is made: its fields are read in the order of the list.
                $(let $field = crate::unpack::Unpack::unpack(from);)+
                Self { $($field),+ }
            }
        })+
    };
}

/// A value by its place among all of its type.
macro_rules! tagged {
    ($($name:ident),+ $(,)?) => {
        $(impl crate::unpack::Unpack for $name {
            fn unpack(from: &mut crate::unpack::Streams) -> Self {
                $name::ALL[from.tag()]
            }
        })+
    };
}

impl Unpack for f64 {
    fn unpack(from: &mut Streams) -> Self {
        from.number()
    }
}

impl Unpack for u8 {
    fn unpack(from: &mut Streams) -> Self {
        from.tag() as u8
    }
}

impl Unpack for bool {
    fn unpack(from: &mut Streams) -> Self {
        from.tag() != 0
    }
}

impl Unpack for &'static str {
    fn unpack(from: &mut Streams) -> Self {
        from.text()
    }
}

/// A line of the table of sources: its place is the number of the source.
impl Unpack for SourceLine {
    fn unpack(from: &mut Streams) -> Self {
        let id = SourceId::new(from.sources.len() as u16, from.text());
        from.sources.push(id);
        let label = from.text();
        Self { id, label }
    }
}

/// A source by its number: the table of sources was read before.
impl Unpack for SourceId {
    fn unpack(from: &mut Streams) -> Self {
        let number = from.int() as usize;
        from.sources[number]
    }
}

impl<T: Unpack> Unpack for Option<T> {
    fn unpack(from: &mut Streams) -> Self {
        bool::unpack(from).then(|| T::unpack(from))
    }
}

/// What comes later, or is made when it is asked for.
impl<T> Unpack for OnceLock<T> {
    fn unpack(_: &mut Streams) -> Self {
        Self::new()
    }
}

impl<T: Unpack, const N: usize> Unpack for [T; N] {
    fn unpack(from: &mut Streams) -> Self {
        core::array::from_fn(|_| T::unpack(from))
    }
}

impl<T: Unpack> Unpack for &'static [T] {
    fn unpack(from: &mut Streams) -> Self {
        let list: Vec<T> = (0..from.int()).map(|_| T::unpack(from)).collect();
        // The tables live as long as the program.
        list.leak()
    }
}

impl<A: Unpack, B: Unpack> Unpack for (A, B) {
    fn unpack(from: &mut Streams) -> Self {
        let first = A::unpack(from);
        (first, B::unpack(from))
    }
}

impl Unpack for &'static Constants {
    fn unpack(from: &mut Streams) -> Self {
        Box::leak(Box::new(Constants::in_order(&mut || from.number())))
    }
}
