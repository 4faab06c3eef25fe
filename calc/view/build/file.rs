//! Reads one file of messages: the part of Fluent that is taken here, each thing with its place.

use fluent_syntax::ast;
use fluent_syntax::parser;

/// A file and a line.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Place {
    pub file: String,
    pub line: usize,
}

impl std::fmt::Display for Place {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{}:{}", self.file, self.line)
    }
}

/// What stops the build: a place, and what is wrong there.
pub(crate) type Problems = Vec<String>;

/// A piece of a text.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Part {
    Text(String),
    /// `{ $name }`
    Gap(String),
    /// `{ other-message }` or `{ other-message.word }`: put in before anything is checked.
    Other(String),
    /// `{ $name -> [key] … *[key] … }`; the last case is the one for all else.
    Choice {
        name: String,
        cases: Vec<(String, Vec<Part>)>,
    },
}

/// One wording: of a message, or of one word of an enum.
#[derive(Clone, Debug)]
pub(crate) struct Wording {
    /// Name of the enum's variant in kebab-case; empty where the message has one wording.
    pub word: String,
    pub place: Place,
    pub parts: Vec<Part>,
}

/// A gap that a comment tells of.
#[derive(Clone, Debug)]
pub(crate) struct Told {
    pub name: String,
    pub kind: String,
    pub place: Place,
}

/// A message.
#[derive(Clone, Debug)]
pub(crate) struct Message {
    pub id: String,
    pub place: Place,
    /// What its own comment tells of its gaps.
    pub told: Vec<Told>,
    /// What the comment of its group tells.
    pub group: Vec<Told>,
    pub wordings: Vec<Wording>,
}

struct Reader<'a> {
    file: &'a str,
    text: &'a str,
    problems: Problems,
}

/// Reads a file; `file` is its name as problems say it.
pub(crate) fn read(file: &str, text: &str) -> Result<Vec<Message>, Problems> {
    let mut reader = Reader {
        file,
        text,
        problems: Vec::new(),
    };
    let tree = match parser::parse(text) {
        Ok(tree) => tree,
        // What follows from a wrong line is no news: only the syntax is told.
        Err((_, errors)) => {
            return Err(errors
                .iter()
                .map(|error| format!("{}: {}", reader.line(error.pos.start), error.kind))
                .collect());
        }
    };
    let mut messages = Vec::new();
    let mut group = Vec::new();
    for entry in &tree.body {
        match entry {
            ast::Entry::Message(message) => {
                let message = reader.message(message, &group);
                messages.push(message);
            }
            ast::Entry::GroupComment(comment) => group = reader.told(comment),
            ast::Entry::Comment(_) | ast::Entry::ResourceComment(_) => {}
            ast::Entry::Term(term) => {
                let place = reader.place(term.id.name);
                reader.problems.push(format!(
                    "{place}: -{}: no terms are read here",
                    term.id.name
                ));
            }
            ast::Entry::Junk { content } => {
                let place = reader.place(content);
                reader.problems.push(format!("{place}: not understood"));
            }
        }
    }
    if reader.problems.is_empty() {
        Ok(messages)
    } else {
        Err(reader.problems)
    }
}

impl Reader<'_> {
    fn line(&self, offset: usize) -> Place {
        let before = &self.text.as_bytes()[..offset.min(self.text.len())];
        Place {
            file: self.file.to_owned(),
            line: 1 + before.iter().filter(|byte| **byte == b'\n').count(),
        }
    }

    /// The tree borrows its texts from the file: where one begins tells its line.
    fn place(&self, piece: &str) -> Place {
        self.line((piece.as_ptr() as usize).saturating_sub(self.text.as_ptr() as usize))
    }

    fn message(&mut self, message: &ast::Message<&str>, group: &[Told]) -> Message {
        let id = message.id.name;
        let place = self.place(id);
        let kebab = |c: char| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-';
        if !id.chars().all(kebab) {
            self.problems.push(format!(
                "{place}: {id}: an id has small letters, digits and dashes"
            ));
        }
        let told = match &message.comment {
            Some(comment) => self.told(comment),
            None => Vec::new(),
        };
        let mut wordings = Vec::new();
        if let Some(value) = &message.value {
            wordings.push(Wording {
                word: String::new(),
                place: place.clone(),
                parts: self.pattern(id, value),
            });
        }
        for attribute in &message.attributes {
            let word = attribute.id.name;
            let place = self.place(word);
            if message.value.is_some() {
                self.problems.push(format!(
                    "{place}: {id}.{word}: a message with words of its own has no others"
                ));
            }
            wordings.push(Wording {
                word: word.to_owned(),
                place,
                parts: self.pattern(&format!("{id}.{word}"), &attribute.value),
            });
        }
        Message {
            id: id.to_owned(),
            place,
            told,
            group: group.to_vec(),
            wordings,
        }
    }

    /// Lines `$name (Kind)` and `$name (Kind): what it is` of a comment.
    fn told(&self, comment: &ast::Comment<&str>) -> Vec<Told> {
        let mut told = Vec::new();
        for line in &comment.content {
            let Some((name, rest)) = line
                .trim_start()
                .strip_prefix('$')
                .and_then(|line| line.split_once(" ("))
            else {
                continue;
            };
            if let Some((kind, _)) = rest.split_once(')') {
                told.push(Told {
                    name: name.to_owned(),
                    kind: kind.to_owned(),
                    place: self.place(line),
                });
            }
        }
        told
    }

    fn pattern(&mut self, id: &str, pattern: &ast::Pattern<&str>) -> Vec<Part> {
        let mut parts: Vec<Part> = Vec::new();
        for element in &pattern.elements {
            match element {
                ast::PatternElement::TextElement { value } => {
                    for (sign, why) in [('<', "markup"), ('\u{1}', "a sign")] {
                        if value.contains(sign) {
                            let place = self.place(value);
                            self.problems.push(format!(
                                "{place}: {id}: '{sign}' in it: words are text, not {why}"
                            ));
                        }
                    }
                    // A line that goes on in the next one is one line of text.
                    push_text(&mut parts, &value.replace('\n', " "));
                }
                ast::PatternElement::Placeable { expression } => {
                    if let Some(part) = self.placeable(id, expression) {
                        match part {
                            Part::Text(text) => push_text(&mut parts, &text),
                            part => parts.push(part),
                        }
                    }
                }
            }
        }
        parts
    }

    fn placeable(&mut self, id: &str, expression: &ast::Expression<&str>) -> Option<Part> {
        use ast::InlineExpression as Inline;
        match expression {
            ast::Expression::Inline(Inline::VariableReference { id: gap }) => {
                Some(Part::Gap(gap.name.to_owned()))
            }
            ast::Expression::Inline(Inline::StringLiteral { value }) => {
                Some(Part::Text((*value).to_owned()))
            }
            ast::Expression::Inline(Inline::MessageReference { id, attribute }) => {
                let word = attribute.as_ref().map(|word| format!(".{}", word.name));
                Some(Part::Other(
                    id.name.to_owned() + word.as_deref().unwrap_or(""),
                ))
            }
            ast::Expression::Select {
                selector: Inline::VariableReference { id: gap },
                variants,
            } => {
                let mut cases = Vec::new();
                let mut rest = None;
                for variant in variants {
                    let key = match variant.key {
                        ast::VariantKey::Identifier { name } => name,
                        ast::VariantKey::NumberLiteral { value } => value,
                    };
                    let case = (key.to_owned(), self.pattern(id, &variant.value));
                    if variant.default {
                        rest = Some(case);
                    } else {
                        cases.push(case);
                    }
                }
                // An exact number stands before the plural that it belongs to.
                cases.sort_by_key(|(key, _)| key.parse::<u32>().is_err());
                cases.extend(rest);
                Some(Part::Choice {
                    name: gap.name.to_owned(),
                    cases,
                })
            }
            other => {
                let place = place_of(other).map_or_else(|| self.line(0), |at| self.place(at));
                self.problems.push(format!(
                    "{place}: {id}: only {{ $gap }}, {{ message }}, {{ \"text\" }} and a choice by a gap are read here"
                ));
                None
            }
        }
    }
}

/// A name inside an expression that is not read, for its line.
fn place_of<'a>(expression: &ast::Expression<&'a str>) -> Option<&'a str> {
    use ast::InlineExpression as Inline;
    let inline = match expression {
        ast::Expression::Inline(inline) => inline,
        ast::Expression::Select { selector, .. } => selector,
    };
    match inline {
        Inline::StringLiteral { value } | Inline::NumberLiteral { value } => Some(value),
        Inline::FunctionReference { id, .. }
        | Inline::MessageReference { id, .. }
        | Inline::TermReference { id, .. }
        | Inline::VariableReference { id } => Some(id.name),
        Inline::Placeable { expression } => place_of(expression),
    }
}

/// Adds a text; texts that follow each other are one.
pub(crate) fn push_text(parts: &mut Vec<Part>, text: &str) {
    match parts.last_mut() {
        Some(Part::Text(last)) => last.push_str(text),
        _ => parts.push(Part::Text(text.to_owned())),
    }
}

/// Every gap that a text names, in order, each once.
pub(crate) fn gaps_of(parts: &[Part], into: &mut Vec<String>) {
    for part in parts {
        match part {
            Part::Gap(name) => add(into, name),
            Part::Choice { name, cases } => {
                add(into, asked(name).0);
                for (_, parts) in cases {
                    gaps_of(parts, into);
                }
            }
            Part::Text(_) | Part::Other(_) => {}
        }
    }
}

fn add(into: &mut Vec<String>, name: &str) {
    if !into.iter().any(|known| known == name) {
        into.push(name.to_owned());
    }
}

/// What a choice asks of its gap.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Ask {
    /// `$count`: its number.
    Number,
    /// `$tree-gender`: the gender of its name.
    Gender,
    /// `$last-sound`: what it begins with.
    Sound,
}

/// The gap of a choice, and what is asked of it.
pub(crate) fn asked(name: &str) -> (&str, Ask) {
    if let Some(gap) = name.strip_suffix("-gender") {
        (gap, Ask::Gender)
    } else if let Some(gap) = name.strip_suffix("-sound") {
        (gap, Ask::Sound)
    } else {
        (name, Ask::Number)
    }
}
