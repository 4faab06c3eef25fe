//! Holds the languages against each other, against the kinds of gap and against the enums of calc.

use crate::file::{Ask, Message, Part, Place, Problems, Told, Wording, asked, gaps_of, push_text};
use crate::languages::{Language, is_beside};
use crate::markup;
use crate::pack::MOST_GAPS;
use crate::tables::{self, Said, Text};

/// A kind of gap: its name in comments, the Rust type that fills it, whether a plural is chosen by it.
pub(crate) struct Kind {
    pub name: &'static str,
    pub rust: &'static str,
    pub counts: bool,
}

const fn kind(name: &'static str, rust: &'static str, counts: bool) -> Kind {
    Kind { name, rust, counts }
}

/// All of them. What is already words when it comes to the message is a `SaidText` in Rust.
pub(crate) const KINDS: [Kind; 15] = [
    kind("Text", "SaidText", false),
    kind("Phrase", "SaidText", false),
    kind("Length", "SaidText", false),
    kind("Span", "SaidText", false),
    kind("And", "SaidText", false),
    kind("Or", "SaidText", false),
    kind("Name", "Name", false),
    kind("Date", "Date", false),
    kind("Count", "Count", true),
    kind("Small", "Small", true),
    kind("Number", "ShownNumber", true),
    kind("Percent", "Percent", true),
    kind("Minutes", "Minutes", true),
    kind("Years", "Years", true),
    kind("Node", "Node", false),
];

/// What a language needs beside its words: its plurals (CLDR) and its decimal sign. What chooses a plural is `plural`
/// in `src/words/gap.rs`.
struct Rules {
    language: &'static str,
    plurals: &'static [&'static str],
    decimal: char,
}

const RULES: [Rules; 3] = [
    Rules {
        language: "en",
        plurals: &["one", "other"],
        decimal: '.',
    },
    // The United States, Mexico and most of Central America write a point.
    Rules {
        language: "es",
        plurals: &["one", "many", "other"],
        decimal: '.',
    },
    Rules {
        language: "es-ES",
        plurals: &["one", "many", "other"],
        decimal: ',',
    },
];

/// An enum of calc that messages may word: its name, its path, its variants.
pub(crate) struct Enum {
    pub name: String,
    pub path: String,
    pub variants: Vec<String>,
}

/// A gap of a message.
#[derive(Clone)]
pub(crate) struct Gap {
    pub name: String,
    pub kind: usize,
}

/// The type of a message of words under keys, for which Rust asks by text: `# $of (Key)`. Its words are listed by the
/// first language, and a test beside the code that asks holds them against the keys.
pub(crate) const KEY: &str = "Key";

/// The type of a message of the lines of a list to pick from: `# $of (Value)`. Each word is a value of a field as it is
/// typed, with dashes for what joins its words; [`UNSAID`] is the empty one.
pub(crate) const VALUE: &str = "Value";
/// The word of the line that stands picked while nothing is.
pub(crate) const UNSAID: &str = "unsaid";

/// How the words of a message are asked for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Asked {
    /// It has one wording, or those of an enum.
    ByName,
    /// By text: [`KEY`].
    ByKey,
    /// All at once, with their values: [`VALUE`].
    AsLines,
}

/// A message of the first language, checked.
pub(crate) struct Checked {
    pub asked: Asked,
    pub id: String,
    /// Whether its gaps and words are in order, so that other languages can be held against it.
    pub clear: bool,
    pub gaps: Vec<Gap>,
    /// Which enum it words.
    pub of: Option<usize>,
    /// Its wordings, in the order of the enum.
    pub wordings: Vec<Wording>,
}

/// A language, checked: its wordings in the order of the first one's.
pub(crate) struct Whole {
    pub name: String,
    pub decimal: char,
    pub wordings: Vec<Vec<Part>>,
    /// Names of trees, as [`Language`] has them.
    pub names: Vec<[String; 3]>,
    /// What it says for texts of tables.
    pub prose: Vec<Said>,
}

/// The first language's messages, and every language's wordings.
pub(crate) fn languages(
    mut all: Vec<Language>,
    enums: &[Enum],
    texts: &[Text],
) -> Result<(Vec<Checked>, Vec<Whole>), Problems> {
    let mut problems = Problems::new();
    for language in &mut all {
        twice(language, &mut problems);
        put_in(language, &mut problems);
    }
    let (first, others) = all
        .split_first()
        .ok_or_else(|| vec!["content/words/en: there is no first language".to_owned()])?;
    let checked: Vec<Checked> = first
        .messages
        .iter()
        .map(|message| first_of(message, first, enums, &mut problems))
        .collect();
    let mut whole = vec![Whole {
        name: first.name.clone(),
        decimal: rules(first, &mut problems).decimal,
        wordings: wordings_of(&checked),
        names: first.names.clone(),
        prose: Vec::new(),
    }];
    for language in others {
        let base = language
            .name
            .split_once('-')
            .and_then(|(base, _)| whole.iter().find(|known| known.name == base));
        let prose = base.map(|base| base.prose.as_slice());
        let prose = tables::said(&language.folder, &language.tables, texts, prose);
        let prose = prose.unwrap_or_else(|wrong| {
            problems.extend(wrong);
            Vec::new()
        });
        let names = match base {
            Some(base) if language.names.is_empty() => base.names.clone(),
            _ => language.names.clone(),
        };
        let base = base.map(|base| base.wordings.clone());
        let other = other(language, &checked, base, &mut problems);
        whole.push(Whole {
            prose,
            names,
            ..other
        });
    }
    if problems.is_empty() {
        Ok((checked, whole))
    } else {
        Err(problems)
    }
}

fn wordings_of(checked: &[Checked]) -> Vec<Vec<Part>> {
    let all = checked.iter().flat_map(|message| &message.wordings);
    all.map(|wording| wording.parts.clone()).collect()
}

fn rules(language: &Language, problems: &mut Problems) -> &'static Rules {
    RULES
        .iter()
        .find(|rules| rules.language == language.name)
        .unwrap_or_else(|| {
            problems.push(format!(
                "{}: the plurals and the decimal sign of {} are not told: RULES in calc/view/build/check.rs",
                language.folder, language.name
            ));
            &RULES[0]
        })
}

fn twice(language: &Language, problems: &mut Problems) {
    for (at, message) in language.messages.iter().enumerate() {
        let before = language.messages[..at].iter();
        if let Some(known) = before.clone().find(|known| known.id == message.id) {
            problems.push(format!(
                "{}: {}: stands also at {}",
                message.place, message.id, known.place
            ));
        }
        for (at, wording) in message.wordings.iter().enumerate() {
            let mut before = message.wordings[..at].iter();
            if let Some(known) = before.find(|known| known.word == wording.word) {
                problems.push(format!(
                    "{}: {}.{}: stands also at {}",
                    wording.place, message.id, wording.word, known.place
                ));
            }
        }
    }
}

/// Puts words of other messages in where they are named.
fn put_in(language: &mut Language, problems: &mut Problems) {
    let plain: Vec<(String, String)> = language
        .messages
        .iter()
        .flat_map(|message| message.wordings.iter().map(move |it| (message, it)))
        .filter_map(|(message, wording)| match &*wording.parts {
            [Part::Text(text)] if wording.word.is_empty() => {
                Some((message.id.clone(), text.clone()))
            }
            [Part::Text(text)] => Some((format!("{}.{}", message.id, wording.word), text.clone())),
            _ => None,
        })
        .collect();
    for message in &mut language.messages {
        for wording in &mut message.wordings {
            let parts = std::mem::take(&mut wording.parts);
            let (id, place) = (&message.id, &wording.place);
            wording.parts = with_others(parts, &plain, id, place, problems);
        }
    }
}

fn with_others(
    parts: Vec<Part>,
    plain: &[(String, String)],
    id: &str,
    place: &Place,
    problems: &mut Problems,
) -> Vec<Part> {
    let mut done = Vec::new();
    for part in parts {
        match part {
            Part::Text(text) => push_text(&mut done, &text),
            Part::Other(other) => match plain.iter().find(|(known, _)| *known == other) {
                Some((_, text)) => push_text(&mut done, text),
                None => problems.push(format!("{place}: {id}: {other} is no plain message")),
            },
            Part::Choice { name, cases } => {
                let with = |(key, parts)| (key, with_others(parts, plain, id, place, problems));
                done.push(Part::Choice {
                    name,
                    cases: cases.into_iter().map(with).collect(),
                });
            }
            gap @ Part::Gap(_) => done.push(gap),
        }
    }
    done
}

/// A message of the first language: its gaps with their kinds, its enum.
fn first_of(
    message: &Message,
    language: &Language,
    enums: &[Enum],
    problems: &mut Problems,
) -> Checked {
    let id = &message.id;
    let before = problems.len();
    let mut of = None;
    let mut gaps: Vec<Gap> = Vec::new();
    // In the order of its own comment, then as they stand in the text.
    let mut names: Vec<String> = Vec::new();
    let mut asked = Asked::ByName;
    for told in &message.told {
        if told.kind == KEY {
            asked = Asked::ByKey;
        } else if told.kind == VALUE {
            asked = Asked::AsLines;
        } else if let Some(at) = enums.iter().position(|it| it.name == told.kind) {
            of = Some(at);
        } else if !names.contains(&told.name) {
            names.push(told.name.clone());
        }
    }
    for wording in &message.wordings {
        gaps_of(&wording.parts, &mut names);
    }
    for name in names {
        let here = |told: &&Told| told.name == name;
        let told = message.told.iter().find(here);
        let Some(told) = told.or_else(|| message.group.iter().find(here)) else {
            problems.push(format!(
                "{}: {id}: say what ${name} is, as `# ${name} (Length)`",
                message.place
            ));
            continue;
        };
        match KINDS.iter().position(|kind| kind.name == told.kind) {
            Some(kind) => gaps.push(Gap { name, kind }),
            None => problems.push(format!(
                "{}: {id}: ${name}: no type `{}`",
                told.place, told.kind
            )),
        }
    }
    if gaps.len() > MOST_GAPS {
        problems.push(format!(
            "{}: {id}: {} gaps are too many: split the sentence",
            message.place,
            gaps.len()
        ));
    }
    let wordings = match of {
        Some(of) => variants(message, &enums[of], problems),
        None => {
            let mut words = message.wordings.iter();
            if asked == Asked::ByName && words.any(|wording| !wording.word.is_empty()) {
                problems.push(format!(
                    "{}: {id}: say whose words these are, as `# $of (TargetKind)`",
                    message.place
                ));
            }
            message.wordings.clone()
        }
    };
    let rules = rules(language, problems);
    let shown = shown_gaps(&wordings, &gaps);
    // What follows from a wrong gap is no news.
    let clear = problems.len() == before;
    if clear {
        for wording in &wordings {
            check(id, wording, &gaps, &shown, rules, problems);
        }
    }
    Checked {
        asked,
        id: id.clone(),
        clear,
        gaps,
        of,
        wordings,
    }
}

/// The words of an enum in its order.
fn variants(message: &Message, of: &Enum, problems: &mut Problems) -> Vec<Wording> {
    for wording in &message.wordings {
        if !of.variants.contains(&wording.word) {
            problems.push(format!(
                "{}: {}.{}: {} has no such variant",
                wording.place, message.id, wording.word, of.name
            ));
        }
    }
    let mut ordered = Vec::new();
    for variant in &of.variants {
        match message.wordings.iter().find(|it| it.word == *variant) {
            Some(wording) => ordered.push(wording.clone()),
            None => problems.push(format!(
                "{}: {}: .{variant} is missing",
                message.place, message.id
            )),
        }
    }
    ordered
}

/// The gaps that the first language shows, and not only chooses by.
fn shown_gaps(wordings: &[Wording], gaps: &[Gap]) -> Vec<String> {
    fn shows(parts: &[Part], name: &str) -> bool {
        parts.iter().any(|part| match part {
            Part::Gap(gap) => gap == name,
            Part::Choice { cases, .. } => cases.iter().any(|(_, parts)| shows(parts, name)),
            Part::Text(_) | Part::Other(_) => false,
        })
    }
    let shown = |gap: &&Gap| wordings.iter().any(|it| shows(&it.parts, &gap.name));
    gaps.iter()
        .filter(shown)
        .map(|gap| gap.name.clone())
        .collect()
}

/// One wording against the gaps of its message.
fn check(
    id: &str,
    wording: &Wording,
    gaps: &[Gap],
    shown: &[String],
    rules: &Rules,
    problems: &mut Problems,
) {
    let id = if wording.word.is_empty() {
        id.to_owned()
    } else {
        format!("{id}.{}", wording.word)
    };
    let place = &wording.place;
    let mut named = Vec::new();
    gaps_of(&wording.parts, &mut named);
    for name in &named {
        if !gaps.iter().any(|gap| gap.name == *name) {
            problems.push(format!("{place}: {id}: ${name} is not a gap of it"));
        }
    }
    for name in shown {
        if let Some(case) = lacks(&wording.parts, name, gaps) {
            let case = case.map_or_else(String::new, |case| format!(" in [{case}]"));
            problems.push(format!("{place}: {id}: ${name} is missing{case}"));
        }
    }
    keys(&id, place, &wording.parts, gaps, rules, problems);
}

fn counts(gaps: &[Gap], name: &str) -> bool {
    let gap = gaps.iter().find(|gap| gap.name == name);
    gap.is_some_and(|gap| KINDS[gap.kind].counts)
}

/// Whether a text can come out without a gap: `None` where it can't, else the case in which it does, if it is one.
/// A case of one number, or of a plural, may say the number in words.
fn lacks(parts: &[Part], name: &str, gaps: &[Gap]) -> Option<Option<String>> {
    if parts
        .iter()
        .any(|part| matches!(part, Part::Gap(gap) if gap == name))
    {
        return None;
    }
    let mut without = None;
    for part in parts {
        let Part::Choice { name: by, cases } = part else {
            continue;
        };
        let by_it = asked(by).0 == name && counts(gaps, name);
        let named = if by_it { cases.len() - 1 } else { 0 };
        let bad = cases.iter().skip(named).find_map(|(key, parts)| {
            lacks(parts, name, gaps).map(|case| case.unwrap_or_else(|| key.clone()))
        });
        match bad {
            None => return None,
            Some(case) => without = without.or(Some(case)),
        }
    }
    Some(without)
}

/// Whether each case of a choice is one that its gap can have.
fn keys(
    id: &str,
    place: &Place,
    parts: &[Part],
    gaps: &[Gap],
    rules: &Rules,
    problems: &mut Problems,
) {
    for part in parts {
        let Part::Choice { name, cases } = part else {
            continue;
        };
        let (gap, ask) = asked(name);
        let kind = gaps.iter().find(|known| known.name == gap);
        let kind = kind.map_or("", |gap| KINDS[gap.kind].name);
        let suits = match ask {
            Ask::Number => counts(gaps, gap) || kind.is_empty(),
            Ask::Gender => matches!(kind, "Name" | ""),
            Ask::Sound => !matches!(kind, "Node"),
        };
        if !suits {
            problems.push(format!(
                "{place}: {id}: nothing is chosen by ${name} ({kind})"
            ));
        }
        for (key, parts) in cases {
            let (known, what) = match ask {
                Ask::Number => (
                    rules.plurals.contains(&&**key) || key.parse::<u32>().is_ok(),
                    "plural",
                ),
                Ask::Gender => (matches!(&**key, "f" | "m" | "f-el"), "gender"),
                Ask::Sound => (matches!(&**key, "i" | "o" | "other"), "sound"),
            };
            if !known {
                problems.push(format!(
                    "{place}: {id}: [{key}] is no {what} of {}",
                    rules.language
                ));
            }
            keys(id, place, parts, gaps, rules, problems);
        }
    }
}

/// A language beside the first; `base` are the wordings that it only changes.
fn other(
    language: &Language,
    checked: &[Checked],
    base: Option<Vec<Vec<Part>>>,
    problems: &mut Problems,
) -> Whole {
    let rules = rules(language, problems);
    let first = &language.folder;
    for message in &language.messages {
        let Some(known) = checked.iter().find(|known| known.id == message.id) else {
            problems.push(format!(
                "{}: {} is not a message of en",
                message.place, message.id
            ));
            continue;
        };
        if !known.clear {
            continue;
        }
        let shown = shown_gaps(&known.wordings, &known.gaps);
        for wording in &message.wordings {
            let first = known.wordings.iter().find(|it| it.word == wording.word);
            if let Some(first) = first {
                check(&message.id, wording, &known.gaps, &shown, rules, problems);
                if is_beside(&wording.place) {
                    problems.extend(markup::differs(&message.id, wording, first));
                }
            } else {
                problems.push(format!(
                    "{}: {}.{}: no such word in en",
                    wording.place, message.id, wording.word
                ));
            }
        }
    }
    let mut wordings = Vec::new();
    for known in checked {
        let message = language.messages.iter().find(|it| it.id == known.id);
        for of in &known.wordings {
            let at = wordings.len();
            let said = message.and_then(|it| it.wordings.iter().find(|it| it.word == of.word));
            if let Some(said) = said {
                wordings.push(said.parts.clone());
            } else if let Some(base) = &base {
                wordings.push(base.get(at).cloned().unwrap_or_default());
            } else {
                problems.push(match message {
                    Some(message) => {
                        format!("{}: {}: .{} is missing", message.place, known.id, of.word)
                    }
                    None => format!(
                        "{first}: {} is missing; it stands at {}",
                        known.id, of.place
                    ),
                });
                wordings.push(Vec::new());
                if message.is_none() {
                    // Told once, not for each of its words.
                    let rest = known.wordings.len() - 1;
                    wordings.extend(std::iter::repeat_n(Vec::new(), rest));
                    break;
                }
            }
        }
    }
    Whole {
        name: language.name.clone(),
        decimal: rules.decimal,
        wordings,
        names: Vec::new(),
        prose: Vec::new(),
    }
}
