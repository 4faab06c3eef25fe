//! What was made of `content/words`: a pack of words a language, and what fills the gaps of a message.
//!
//! A program has one language at a time: [`within`] sets it for what is called inside. No word and no text is kept beyond.

use super::gap::*;
use std::cell::Cell;
use std::sync::{OnceLock, RwLock};

/// The messages, one constant or function each.
pub mod m {
    use super::*;
    include!(concat!(env!("OUT_DIR"), "/messages.rs"));
}

const ENGLISH: &str = include_str!(concat!(env!("OUT_DIR"), "/words-en.bin"));
/// What it says of lists of trees: the module that answers one tree goes without them.
#[cfg(any(feature = "list", not(target_family = "wasm")))]
const ENGLISH_LISTS: &str = include_str!(concat!(env!("OUT_DIR"), "/lists-en.bin"));
#[cfg(not(any(feature = "list", not(target_family = "wasm"))))]
const ENGLISH_LISTS: &str = "";
/// What it says on pages and the command line: the module writes none.
#[cfg(not(target_family = "wasm"))]
const ENGLISH_PAGES: &str = include_str!(concat!(env!("OUT_DIR"), "/pages-en.bin"));
#[cfg(target_family = "wasm")]
const ENGLISH_PAGES: &str = "";

/// The words of a language.
pub struct Pack {
    language: &'static str,
    /// Between whole and part of a number.
    decimal: char,
    /// Names of trees: `scientific=name=gender`, a bar between.
    names: &'static str,
    /// Texts of tables, a line each: the key of the English, then what the language says.
    prose: &'static str,
    texts: Vec<&'static str>,
}

impl Pack {
    /// `None` where it is no pack of this build. `more` is what it says of lists, on pages and on the command line, where they are written.
    fn read(file: &'static str, more: [&'static str; 2]) -> Option<Self> {
        let mark = |file: &'static str| file.split('\0').nth(1);
        if mark(file) != mark(ENGLISH) {
            return None;
        }
        let mut texts = file.split('\0');
        let language = texts.next()?;
        let decimal = texts.nth(1)?.chars().next()?;
        let names = texts.next()?;
        let prose = texts.next()?;
        Some(Self {
            language,
            decimal,
            names,
            prose,
            texts: texts
                .chain(more.into_iter().flat_map(|part| part.split('\0')))
                .collect(),
        })
    }

    /// Its tag: `es`.
    #[must_use]
    pub fn language(&self) -> &'static str {
        self.language
    }

    /// Its names of trees, as the pack has them.
    pub(super) fn names(&self) -> &'static str {
        self.names
    }

    /// Its texts of tables, as the pack has them.
    pub(super) fn prose(&self) -> &'static str {
        self.prose
    }

    /// All its wordings as they stand in the pack, for checks.
    #[must_use]
    pub fn texts(&self) -> &[&'static str] {
        &self.texts
    }
}

fn english() -> &'static Pack {
    static PACK: OnceLock<Pack> = OnceLock::new();
    PACK.get_or_init(|| {
        Pack::read(ENGLISH, [ENGLISH_LISTS, ENGLISH_PAGES]).unwrap_or(Pack {
            language: "en",
            decimal: '.',
            names: "",
            prose: "",
            texts: Vec::new(),
        })
    })
}

/// Packs that were fetched, or that a program has inside.
static TAKEN: RwLock<Vec<&'static Pack>> = RwLock::new(Vec::new());

/// Takes the words of a language, as fetched. False where the bytes are no pack of this build.
pub fn take_words(file: &[u8]) -> bool {
    take_words_of_lists(file, &[])
}

/// The same with what the language says of lists of trees.
pub fn take_words_of_lists(file: &[u8], lists: &[u8]) -> bool {
    let (Ok(text), Ok(lists)) = (std::str::from_utf8(file), std::str::from_utf8(lists)) else {
        return false;
    };
    // A language stays as long as the page does.
    let Some(pack) = Pack::read(String::from(text).leak(), [String::from(lists).leak(), ""]) else {
        return false;
    };
    take(pack)
}

fn take(pack: Pack) -> bool {
    let Ok(mut taken) = TAKEN.write() else {
        return false;
    };
    if taken.iter().all(|known| known.language != pack.language) {
        taken.push(Box::leak(Box::new(pack)));
    }
    true
}

/// Takes every language that was built, for programs that have all inside.
pub fn take_all() {
    static ONCE: OnceLock<()> = OnceLock::new();
    ONCE.get_or_init(|| {
        for (_, file, more) in m::FILES {
            if let Some(pack) = Pack::read(file, *more) {
                take(pack);
            }
        }
    });
}

/// Names of trees in every language that was taken, each with the scientific name.
#[must_use]
pub fn tree_names() -> Vec<(String, String)> {
    let Ok(taken) = TAKEN.read() else {
        return Vec::new();
    };
    let rows = taken.iter().flat_map(|pack| pack.names.split('|'));
    let names = rows.filter_map(|row| {
        let (scientific, rest) = row.split_once('=')?;
        let (name, _) = rest.split_once('=')?;
        Some((name.to_owned(), scientific.to_owned()))
    });
    names.collect()
}

/// The words for a language tag: of `es-MX` those of `es-MX`, else of `es`, of those that were taken; else English.
#[must_use]
pub fn pack(tag: &str) -> &'static Pack {
    let mut tag = tag;
    if let Ok(taken) = TAKEN.read() {
        loop {
            let named = |pack: &&&Pack| pack.language.eq_ignore_ascii_case(tag);
            if let Some(pack) = taken.iter().find(named) {
                return pack;
            }
            match tag.rsplit_once('-') {
                Some((front, _)) => tag = front,
                None => break,
            }
        }
    }
    english()
}

thread_local! {
    static IN_USE: Cell<Option<&'static Pack>> = const { Cell::new(None) };
}

/// Speaks a language in what it calls.
pub fn within<T>(pack: &'static Pack, run: impl FnOnce() -> T) -> T {
    /// Goes back to the language before, also when what was called fails.
    struct Back(Option<&'static Pack>);
    impl Drop for Back {
        fn drop(&mut self) {
            IN_USE.set(self.0);
        }
    }
    let _back = Back(IN_USE.replace(Some(pack)));
    run()
}

/// The language that is spoken.
#[must_use]
#[inline(never)]
pub fn in_use() -> &'static Pack {
    IN_USE.get().unwrap_or_else(english)
}

/// A message without gaps: two bytes, so that it may stand in a table. It reads as the words of the language in use.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Word(u16);

impl Word {
    /// No words.
    pub const NONE: Self = Self(u16::MAX);

    /// Its words in the language in use. Kept from being put in line, as what fills gaps is: each stands at a thousand calls.
    #[must_use]
    #[inline(never)]
    pub fn text(self) -> &'static str {
        in_use()
            .texts
            .get(usize::from(self.0))
            .copied()
            .unwrap_or("")
    }
}

impl std::ops::Deref for Word {
    type Target = str;
    fn deref(&self) -> &str {
        self.text()
    }
}

impl AsRef<str> for Word {
    fn as_ref(&self) -> &str {
        self.text()
    }
}

impl std::fmt::Display for Word {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(self.text())
    }
}

impl From<Word> for String {
    #[inline(never)]
    fn from(word: Word) -> Self {
        word.text().into()
    }
}

/// The lines of a list to pick from: a value as it is typed, and its words. The empty value stands picked while nothing is.
pub(crate) type Lines = &'static [(&'static str, Word)];

/// A word under a key: `keys` are those of words that follow each other from `first` on.
fn keyed(keys: &str, key: &str, first: u16) -> Option<Word> {
    let at = keys.split('|').position(|known| known == key)?;
    Some(Word(first + at as u16))
}

/// A piece of a message that has nodes in it.
pub enum Piece<'a> {
    /// Words between the nodes.
    Text(&'a str),
    /// A node that the caller draws: its place among those of the message.
    Node(usize),
}

/// What takes the pieces, in order.
pub type Parts<'a> = &'a mut dyn FnMut(Piece<'_>);

// Entries for one gap and for two: most messages have no more, and an array at each call would cost more bytes.

#[inline(never)]
fn one(word: Word, gap: Gap<'_>) -> String {
    fill(word, &[gap])
}

#[inline(never)]
fn two(word: Word, first: Gap<'_>, second: Gap<'_>) -> String {
    fill(word, &[first, second])
}

#[inline(never)]
fn many<const COUNT: usize>(word: Word, gaps: [Gap<'_>; COUNT]) -> String {
    fill(word, &gaps)
}

#[inline(never)]
fn fill(word: Word, gaps: &[Gap<'_>]) -> String {
    let mut text = String::new();
    nodes(word, gaps, &mut |piece| {
        if let Piece::Text(piece) = piece {
            text.push_str(piece);
        }
    });
    text
}

/// A message of the pages by its id, in the language in use, as its file has it: its gaps in two braces, as in `{{count}}`.
/// `None` where there is no such message.
#[must_use]
pub fn on_page(id: &str) -> Option<String> {
    let (_, word, names) = m::PAGES.iter().find(|(known, ..)| *known == id)?;
    let mut gaps = Vec::new();
    for at in 0..names.len() {
        gaps.push(Gap::Node(at));
    }
    let mut said = String::new();
    nodes(*word, &gaps, &mut |piece| match piece {
        Piece::Text(piece) => said.push_str(piece),
        Piece::Node(at) => said.extend(["{{", names[at], "}}"]),
    });
    Some(said)
}

fn nodes(word: Word, gaps: &[Gap<'_>], parts: Parts<'_>) {
    walk(word.text(), gaps, true, parts);
}

/// Around a choice, behind the key of a case, behind its text: as `build/pack.rs` writes them.
const CHOICE: char = '\u{e}';
const KEY: char = '\u{f}';
const CASE: char = '\u{10}';

/// Goes through a wording, or one case of it, and gives what comes behind. A text that fills a gap is not read for signs.
fn walk<'t>(
    mut rest: &'t str,
    gaps: &[Gap<'_>],
    say: bool,
    parts: &mut dyn FnMut(Piece<'_>),
) -> &'t str {
    loop {
        let at = rest.find(|c| c <= CASE).unwrap_or(rest.len());
        let (text, behind) = rest.split_at(at);
        if say && !text.is_empty() {
            parts(Piece::Text(text));
        }
        let mut signs = behind.chars();
        match signs.next() {
            None => return "",
            Some(CASE) => return signs.as_str(),
            Some(CHOICE) => rest = choose(signs.as_str(), gaps, say, parts),
            Some(sign) => {
                let gap = gap(gaps, sign);
                match gap {
                    Some(Gap::Node(at)) if say => parts(Piece::Node(*at)),
                    Some(gap) if say => parts(Piece::Text(gap.text())),
                    _ => {}
                }
                rest = signs.as_str();
                // What was cut short ends in its own dots: no full stop stands behind them.
                if gap.is_some_and(|gap| gap.text().ends_with('…')) {
                    rest = rest.strip_prefix('.').unwrap_or(rest);
                }
            }
        }
    }
}

fn gap<'g, 'a>(gaps: &'g [Gap<'a>], sign: char) -> Option<&'g Gap<'a>> {
    gaps.get((sign as usize).wrapping_sub(1))
}

fn choose<'t>(
    choice: &'t str,
    gaps: &[Gap<'_>],
    say: bool,
    parts: &mut dyn FnMut(Piece<'_>),
) -> &'t str {
    let mut signs = choice.chars();
    let by = signs.next().and_then(|sign| gap(gaps, sign));
    let ask = signs.next().unwrap_or(' ');
    let mut rest = signs.as_str();
    let mut open = say;
    while let Some((key, case)) = rest.split_once(KEY).filter(|_| !rest.starts_with(CHOICE)) {
        let takes = open && (key == "*" || by.is_some_and(|by| by.is(ask, key)));
        rest = walk(case, gaps, takes, parts);
        open &= !takes;
    }
    rest.strip_prefix(CHOICE).unwrap_or("")
}

/// A number as Rust has it, with the decimal sign of the language in use.
pub(crate) fn with_decimal_sign(number: String) -> String {
    match in_use().decimal {
        '.' => number,
        sign => number.replace('.', sign.encode_utf8(&mut [0; 4])),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn said(text: &str, gaps: &[Gap<'_>]) -> String {
        let mut said = String::new();
        walk(text, gaps, true, &mut |piece| match piece {
            Piece::Text(text) => said.push_str(text),
            Piece::Node(at) => said.push_str(&format!("<{at}>")),
        });
        said
    }

    fn number(value: f64) -> Gap<'static> {
        Gap::Number(format!("{value}"), value)
    }

    #[test]
    fn a_text_that_fills_a_gap_is_never_read_for_signs() {
        let gaps = [Gap::Lent("\u{2}\u{e}"), Gap::Lent("b")];
        assert_eq!(said("a \u{1} \u{2}.", &gaps), "a \u{2}\u{e} b.");
        assert_eq!(said("\u{1}", &[Gap::Node(0)]), "<0>");
    }

    #[test]
    fn no_full_stop_stands_behind_what_was_cut_short() {
        let gaps = [Gap::Lent("a, b, …"), Gap::Lent("a, b")];
        assert_eq!(
            said("Moved: \u{1}. Then \u{2}.", &gaps),
            "Moved: a, b, … Then a, b."
        );
        assert_eq!(said("(\u{1}).", &gaps), "(a, b, …).");
    }

    #[test]
    fn a_choice_takes_the_exact_number_then_the_plural_then_all_else() {
        let choice =
            "\u{e}\u{1}n0\u{f}none\u{10}one\u{f}\u{1} visit\u{10}*\u{f}\u{1} visits\u{10}\u{e}.";
        assert_eq!(said(choice, &[number(0.0)]), "none.");
        assert_eq!(said(choice, &[number(1.0)]), "1 visit.");
        assert_eq!(said(choice, &[number(7.0)]), "7 visits.");
    }

    #[test]
    fn a_choice_may_stand_in_another() {
        let choice = "\u{e}\u{1}none\u{f}a \u{e}\u{2}n1\u{f}x\u{10}*\u{f}y\u{10}\u{e} b\u{10}*\u{f}\u{e}\u{2}n1\u{f}z\u{10}*\u{f}w\u{10}\u{e}\u{10}\u{e} end";
        assert_eq!(said(choice, &[number(1.0), number(1.0)]), "a x b end");
        assert_eq!(said(choice, &[number(1.0), number(2.0)]), "a y b end");
        assert_eq!(said(choice, &[number(2.0), number(1.0)]), "z end");
        assert_eq!(said(choice, &[number(2.0), number(2.0)]), "w end");
    }

    #[test]
    fn a_pack_of_another_build_is_refused() {
        assert!(!take_words(b"es\x00abcdef01\0.\0Hola"));
        assert!(!take_words(&[0xff, 0]));
    }

    #[test]
    fn a_tree_has_the_name_and_the_gender_of_the_language() {
        take_all();
        let name = || tree_name("Fagus sylvatica", "European beech");
        assert_eq!(name(), ("European beech", Gender::Masculine));
        let spanish = within(pack("es"), name);
        assert_eq!(spanish, ("haya europea", Gender::FeminineEl));
        let unlisted = within(pack("es"), || tree_name("Nulla arbor", "no tree"));
        assert_eq!(unlisted, ("no tree", Gender::Masculine));
    }

    #[test]
    fn a_language_is_spoken_within_and_no_longer() {
        take_all();
        let spanish = pack("es-MX");
        assert_eq!(spanish.language(), "es");
        assert_eq!(pack("de").language(), "en");
        let before = in_use().language();
        within(spanish, || assert_eq!(in_use().language(), "es"));
        assert_eq!(in_use().language(), before);
    }
}
