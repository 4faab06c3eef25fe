//! How hard a text is to read. English: the Flesch-Kincaid grade (Kincaid, Fishburne, Rogers and Chissom 1975, Derivation of
//! new readability formulas for Navy enlisted personnel). Spanish: the Fernández Huerta score (1959; formula from memory).

use crate::support::rows;
use pulldown_cmark::{Event, Options, Parser, Tag, TagEnd};

/// What is counted in a text.
#[derive(Debug, Default, PartialEq, Eq)]
pub(crate) struct Counted {
    pub(crate) words: usize,
    pub(crate) sentences: usize,
    pub(crate) syllables: usize,
}

impl Counted {
    fn ratios(&self) -> (f64, f64) {
        let words = self.words as f64;
        (words / self.sentences as f64, self.syllables as f64 / words)
    }

    /// The school grade in the United States.
    pub(crate) fn grade(&self) -> f64 {
        let (long, syllables) = self.ratios();
        0.39 * long + 11.8 * syllables - 15.59
    }

    /// From 0 to 100, easy: 60 is a plain text.
    pub(crate) fn ease_in_spanish(&self) -> f64 {
        let (long, syllables) = self.ratios();
        206.84 - 60.0 * syllables - 1.02 * long
    }

    /// Counts a text without marks, whose end is that of a sentence too.
    pub(crate) fn add(&mut self, text: &str, syllables: fn(&str) -> usize) {
        let mut open = 0;
        for piece in text.split_whitespace() {
            let words = piece.split(['-', '–', '/']);
            let words: Vec<&str> = words
                .filter(|it| it.contains(char::is_alphanumeric))
                .collect();
            open += words.len();
            self.words += words.len();
            self.syllables += words.iter().map(|word| syllables(word)).sum::<usize>();
            if open > 0
                && piece
                    .trim_end_matches(['"', ')', '»', '”'])
                    .ends_with(['.', '!', '?', ':'])
            {
                self.sentences += 1;
                open = 0;
            }
        }
        self.sentences += usize::from(open > 0);
    }
}

/// Counts a Markdown text: each block ends a sentence. Sources in brackets, code and places of drawings are not read aloud.
pub(crate) fn count(markdown: &str, syllables: fn(&str) -> usize) -> Counted {
    let mut counted = Counted::default();
    let mut block = String::new();
    let mut cite = |_: pulldown_cmark::BrokenLink<'_>| Some(("cite:".into(), "".into()));
    let parser =
        Parser::new_with_broken_link_callback(markdown, Options::ENABLE_TABLES, Some(&mut cite));
    let mut cited = false;
    for event in parser {
        match event {
            Event::Start(Tag::Link { dest_url, .. }) if dest_url.starts_with("cite:") => {
                cited = true
            }
            Event::End(TagEnd::Link) => cited = false,
            Event::Text(text) if !cited && !text.starts_with('{') => block.push_str(&text),
            Event::SoftBreak => block.push(' '),
            Event::End(
                TagEnd::Paragraph | TagEnd::Item | TagEnd::Heading(_) | TagEnd::TableCell,
            ) => counted.add(&std::mem::take(&mut block), syllables),
            _ => {}
        }
    }
    counted
}

const VOWELS: [char; 6] = ['a', 'e', 'i', 'o', 'u', 'y'];

/// Syllables of an English word by its letters: groups of vowels, without those that are silent. A number is one.
pub(crate) fn in_english(word: &str) -> usize {
    let letters: Vec<char> = word
        .to_lowercase()
        .replace(['\'', '’'], "")
        .chars()
        .filter(|c| c.is_alphabetic())
        .collect();
    let vowel = |at: usize| letters.get(at).is_some_and(|c| VOWELS.contains(c));
    let mut count = (0..letters.len())
        .filter(|at| vowel(*at) && (*at == 0 || !vowel(at - 1)))
        .count() as isize;
    let ends = |end: &str| letters.iter().collect::<String>().ends_with(end);
    let before = |back: usize| letters.len().checked_sub(back).map(|at| letters[at]);
    let consonant = |back: usize| before(back).is_some_and(|c| !VOWELS.contains(&c));
    // A silent e: "cambie", "peeled", "leaves", but not "needle", "wounded", "branches".
    if ends("e") && consonant(2) && !(before(2) == Some('l') && consonant(3)) {
        count -= 1;
    }
    if ends("ed") && consonant(3) && !matches!(before(3), Some('t' | 'd')) {
        count -= 1;
    }
    let hisses = ["s", "x", "z", "c", "g", "sh", "ch"]
        .iter()
        .any(|hiss| ends(&format!("{hiss}es")));
    let little = before(3) == Some('l') && consonant(4);
    if ends("es") && consonant(3) && !hisses && !little {
        count -= 1;
    }
    // Two vowels that are said apart: "radio", "area" is not told from "sea".
    for pair in letters.windows(3) {
        match pair {
            ['t' | 'c' | 's', 'i', 'a'] => {}
            [_, 'i', 'a'] => count += 1,
            ['i', 'o', next] if !matches!(next, 'u' | 'n') => count += 1,
            ['y', 'i', 'n'] => count += 1,
            _ => {}
        }
    }
    count.max(1) as usize
}

/// Syllables of a Spanish word: each a, e, o and each í, ú is one; i and u lean on those beside them.
pub(crate) fn in_spanish(word: &str) -> usize {
    let text = word
        .to_lowercase()
        .replace("qu", "q")
        .replace("gue", "ge")
        .replace("gui", "gi");
    let (mut count, mut run, mut strong) = (0, false, 0);
    let mut end = |run: &mut bool, strong: &mut usize| {
        if *run {
            count += (*strong).max(1);
        }
        (*run, *strong) = (false, 0);
    };
    for letter in text.chars() {
        match letter {
            'a' | 'e' | 'o' | 'á' | 'é' | 'ó' | 'í' | 'ú' => {
                (run, strong) = (true, strong + 1)
            }
            'i' | 'u' | 'ü' | 'y' => run = true,
            _ => end(&mut run, &mut strong),
        }
    }
    end(&mut run, &mut strong);
    count.max(1)
}

/// The example that the formula is taught with: 13 words, 24 syllables, grade 11.3 ("Flesch-Kincaid readability tests",
/// an encyclopedia's article).
#[test]
fn the_grade_is_that_of_the_printed_example() {
    let text = "The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.";
    let counted = count(text, in_english);
    assert_eq!((counted.words, counted.sentences), (13, 1));
    let printed = Counted {
        syllables: 24,
        ..counted
    };
    assert!((printed.grade() - 11.3).abs() < 0.05, "{}", printed.grade());
    // By letters "Australian" and "reptilian" have one more each than as they are said.
    assert!(counted.syllables.abs_diff(24) <= 2, "{}", counted.syllables);
}

/// Against the CMU Pronouncing Dictionary: of words in running text nearly all, and no drift to one side.
#[test]
fn syllables_are_those_of_a_dictionary() {
    let (mut all, mut same, mut ours, mut theirs) = (0, 0, 0, 0);
    for row in rows("tests/published/vectors/reading/syllables.csv") {
        let printed: usize = row["syllables"].parse().expect("a number");
        let counted = in_english(&row["word"]);
        all += 1;
        same += usize::from(counted == printed);
        (ours, theirs) = (ours + counted, theirs + printed);
    }
    assert!(all > 800, "{all} words");
    assert!(same * 100 >= all * 95, "{same} of {all} words");
    assert!(
        ours.abs_diff(theirs) * 100 <= theirs * 2,
        "{ours} and {theirs}"
    );
}

/// Words parted as the grammar parts them (Real Academia, Ortografía 2010: diphthong, hiatus), from memory.
#[test]
fn syllables_in_spanish_are_those_of_the_grammar() {
    for (word, count) in [
        ("árbol", 2),
        ("corteza", 3),
        ("raíces", 3),
        ("anillo", 3),
        ("tiene", 2),
        ("que", 1),
        ("guía", 2),
        ("oruga", 3),
        ("antigua", 3),
        ("muy", 1),
        ("ciudad", 2),
        ("leer", 2),
    ] {
        assert_eq!(in_spanish(word), count, "{word}");
    }
}
