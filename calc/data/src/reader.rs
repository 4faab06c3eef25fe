//! The streams of the packed tables, and the smallest things read from them.

use crate::tags;
use calc::terms::cite::Cite;
use core::str::Split;

/// The streams, and how far each is read. The build wrote them, so nothing is missing.
pub struct Reader {
    ints: &'static [u8],
    tags: &'static [u8],
    texts: Texts,
    prose: Texts,
    /// Codes of states and provinces, once they are read.
    pub states: &'static [&'static str],
}

/// Texts, in the order in which they are first used.
struct Texts {
    lines: Split<'static, char>,
    known: Vec<&'static str>,
}

impl Texts {
    fn new(lines: &'static str) -> Self {
        Self {
            lines: lines.split('\n'),
            known: Vec::new(),
        }
    }

    /// 0 is the next text; n is the nth of those before.
    fn at(&mut self, place: usize) -> &'static str {
        if place > 0 {
            return self.known[place - 1];
        }
        let next = self.lines.next().unwrap_or("");
        self.known.push(next);
        next
    }
}

impl Reader {
    pub fn new(
        ints: &'static [u8],
        tags: &'static [u8],
        texts: &'static str,
        prose: &'static str,
    ) -> Self {
        Self {
            ints,
            tags,
            texts: Texts::new(texts),
            prose: Texts::new(prose),
            states: &[],
        }
    }

    /// Whether everything was read.
    pub fn is_done(&self) -> bool {
        self.ints.is_empty() && self.tags.is_empty()
    }

    pub fn int(&mut self) -> usize {
        self.wide() as usize
    }

    pub fn wide(&mut self) -> u64 {
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

    #[inline(never)]
    pub fn tag(&mut self) -> usize {
        match self.tags.split_first() {
            Some((tag, rest)) => {
                self.tags = rest;
                usize::from(*tag)
            }
            None => 0,
        }
    }

    /// The build wrote the place in the same list.
    #[inline(never)]
    pub fn one_of<T: Copy>(&mut self, list: &[T]) -> T {
        list[self.tag()]
    }

    pub fn flag(&mut self) -> bool {
        self.tag() != 0
    }

    pub fn maybe(&mut self) -> Option<f64> {
        let tag = self.tag();
        if tag == 255 {
            return None;
        }
        let digits = self.wide() as f64;
        let mut scale = 1.0;
        for _ in 0..tag % 16 {
            scale *= 10.0;
        }
        let value = digits / scale;
        Some(if tag >= 16 { -value } else { value })
    }

    pub fn number(&mut self) -> f64 {
        self.maybe().unwrap_or(0.0)
    }

    pub fn text(&mut self) -> &'static str {
        let place = self.int();
        self.texts.at(place)
    }

    pub fn sentence(&mut self) -> &'static str {
        let place = self.int();
        self.prose.at(place)
    }

    #[inline(never)]
    pub fn list<T>(&mut self, item: fn(&mut Self) -> T) -> &'static [T] {
        let len = self.int();
        let list: Vec<T> = (0..len).map(|_| item(self)).collect();
        // The tables live as long as the program.
        list.leak()
    }

    pub fn strings(&mut self) -> &'static [&'static str] {
        self.list(Self::text)
    }

    /// Those of [`Self::states`] whose bit is set.
    pub fn some_states(&mut self) -> &'static [&'static str] {
        let bits = self.wide();
        let mut some = Vec::new();
        for (at, state) in self.states.iter().enumerate() {
            if bits >> at & 1 == 1 {
                some.push(*state);
            }
        }
        some.leak()
    }

    pub fn cite(&mut self) -> Cite {
        Cite {
            source: self.text(),
            place: self.text(),
            grade: self.one_of(tags::GRADES),
        }
    }

    pub fn cites(&mut self) -> &'static [Cite] {
        self.list(Self::cite)
    }
}
