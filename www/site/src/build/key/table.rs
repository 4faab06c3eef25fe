//! What the key knows: every tree of `content/evidence/leaf_marks.csv`, and the questions of `content/rules/key.csv` with the
//! marks that each answer stands for. The build of the tables has checked the cells of the former.

use crate::build::leaf_marks::{self, range};
use anyhow::{Result, bail};
use calc_data::table::Table;
use serde::de::Error as _;
use serde::{Deserialize, Deserializer};
use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;

const QUESTIONS: &str = "content/rules/key.csv";

/// A tree with its cells as they stand.
pub(crate) struct Tree {
    pub(crate) scientific: String,
    /// Its English name.
    pub(crate) name: &'static str,
    /// Whether it has a page of its own.
    pub(crate) listed: bool,
    /// Whether it is native to the United States or Canada.
    pub(crate) native: bool,
    cells: BTreeMap<String, String>,
    read: BTreeSet<String>,
}

impl Tree {
    fn of(cells: BTreeMap<String, String>) -> Self {
        let cell = |column: &str| cells.get(column).cloned().unwrap_or_default();
        let read = cell("read_cells");
        Self {
            scientific: cell("scientific_name"),
            name: cell("common_name").leak(),
            listed: cell("role") == "listed",
            native: cell("native_us_ca") == "yes",
            read: read.split(';').map(str::to_owned).collect(),
            cells,
        }
    }

    /// The words of a column: several where either occurs, none where nothing helps.
    pub(crate) fn words(&self, column: &str) -> impl Iterator<Item = &str> {
        let cell = self.cells.get(column).map_or("", String::as_str);
        cell.split('/').filter(|word| !word.is_empty())
    }

    /// Whether a word is one of a column's.
    pub(crate) fn has(&self, column: &str, word: &str) -> bool {
        self.words(column).any(|it| it == word)
    }

    /// Whether its leaves stand so and are of this kind, on some twigs at least.
    pub(crate) fn bears(&self, arrangement: &str, kind: &str) -> bool {
        self.has("arrangement", arrangement) && self.has("kind", kind)
    }

    /// Whether a column of it was read in a source; the rest is remembered.
    pub(crate) fn was_read(&self, column: &str) -> bool {
        self.read.contains(column)
    }
}

/// When a question is asked.
#[derive(Clone, Copy, Deserialize, PartialEq)]
pub(crate) enum Turn {
    /// Where it stands among the questions.
    #[serde(rename = "in order")]
    InOrder,
    /// Behind those, where it parts the trees that are left better than the others.
    #[serde(rename = "where it parts most")]
    WhereItPartsMost,
}

/// Which plate shows an answer.
#[derive(Clone, Copy, Deserialize, PartialEq)]
#[serde(rename_all = "lowercase")]
pub(crate) enum Plate {
    Leaf,
    Twig,
    Fruit,
    Bark,
}

/// A row of the questions: one answer.
#[derive(Deserialize)]
struct Row {
    question: String,
    column: String,
    turn: Turn,
    plate: Option<Plate>,
    answer: String,
    marks: String,
    #[serde(deserialize_with = "yes")]
    keeps: bool,
    #[serde(deserialize_with = "yes")]
    hands: bool,
    drawn_as: String,
}

/// A cell that says `yes`, or nothing.
fn yes<'de, D: Deserializer<'de>>(from: D) -> Result<bool, D::Error> {
    match String::deserialize(from)?.as_str() {
        "yes" => Ok(true),
        "" => Ok(false),
        other => Err(D::Error::custom(format!(
            "\"{other}\" is not yes, or nothing"
        ))),
    }
}

/// An answer, and the words of the column that it stands for.
pub(crate) struct Answer {
    pub(crate) id: String,
    marks: Marks,
    /// Whether it rules nothing out: having no thorns to show is no mark.
    keeps: bool,
    /// The tree whose plate shows it.
    pub(crate) drawn_as: Option<String>,
}

enum Marks {
    Words(Vec<String>),
    Range([f64; 2]),
}

/// A question.
pub(crate) struct Question {
    pub(crate) id: String,
    pub(crate) column: String,
    pub(crate) turn: Turn,
    pub(crate) plate: Option<Plate>,
    /// Whether somebody must snap, cut or crush the tree to answer.
    pub(crate) hands: bool,
    pub(crate) answers: Vec<Answer>,
}

impl Answer {
    /// Whether a tree has one of its marks.
    fn stands_for(&self, tree: &Tree, column: &str) -> bool {
        let stands = |word: &str| match &self.marks {
            // `palmate 3-5`: the count is no other mark.
            Marks::Words(marks) => marks.iter().any(|mark| {
                word.strip_prefix(mark.as_str())
                    .is_some_and(|rest| rest.is_empty() || range(rest.trim_start()).is_some())
            }),
            Marks::Range([from, to]) => {
                range(word).is_some_and(|[low, high]| low <= *to && *from <= high)
            }
        };
        tree.words(column).any(stands)
    }
}

impl Question {
    /// Whether it can be asked of such leaves: the length of a blade tells little.
    pub(crate) fn is_for(&self, kind: &str) -> bool {
        self.column != "length_cm" || kind == "needle"
    }

    /// Whether a tree stays after an answer. One of which nothing is known stays.
    pub(crate) fn stays(&self, tree: &Tree, answer: &Answer) -> bool {
        answer.keeps
            || tree.words(&self.column).next().is_none()
            || answer.stands_for(tree, &self.column)
    }

    /// Whether a tree is known to have a mark of an answer.
    pub(crate) fn has(&self, tree: &Tree, answer: &Answer) -> bool {
        answer.stands_for(tree, &self.column)
    }
}

/// The trees and the questions.
pub(crate) struct Known {
    pub(crate) trees: Vec<Tree>,
    pub(crate) questions: Vec<Question>,
}

impl Known {
    /// Reads both.
    ///
    /// # Errors
    /// With file and line: a table that can't be read, rows of one question that differ in what they say of it, a mark that
    /// no answer stands for.
    pub(crate) fn read(root: &Path) -> Result<Self> {
        let rows = Table::<BTreeMap<String, String>>::read(root, leaf_marks::FILE)?;
        let trees = rows.rows.into_iter().map(|row| Tree::of(row.cells));
        let known = Self {
            trees: trees.collect(),
            questions: questions(root)?,
        };
        for question in &known.questions {
            for tree in &known.trees {
                let answered = question.answers.iter().any(|it| question.has(tree, it));
                let has_some = tree.words(&question.column).next().is_some();
                if has_some && !answered {
                    bail!(
                        "{QUESTIONS}: {}: no answer stands for what {} has",
                        question.id,
                        tree.scientific
                    );
                }
            }
        }
        Ok(known)
    }
}

fn questions(root: &Path) -> Result<Vec<Question>> {
    let mut questions: Vec<Question> = Vec::new();
    for row in &Table::<Row>::read(root, QUESTIONS)?.rows {
        let numbers = matches!(row.column.as_str(), "leaflets" | "length_cm");
        let marks = match numbers {
            true => {
                let range = range(&row.marks);
                Marks::Range(range.ok_or_else(|| row.at.problem("marks: it is a range, as 3-9"))?)
            }
            false => Marks::Words(row.marks.split(';').map(str::to_owned).collect()),
        };
        let answer = Answer {
            id: row.answer.clone(),
            marks,
            keeps: row.keeps,
            drawn_as: Some(row.drawn_as.clone()).filter(|name| !name.is_empty()),
        };
        match questions.last_mut().filter(|last| last.id == row.question) {
            Some(last) => {
                let same = last.column == row.column
                    && last.turn == row.turn
                    && last.plate == row.plate
                    && last.hands == row.hands;
                if !same {
                    let what = format!("question: {} is told otherwise above", row.question);
                    return Err(row.at.problem(what).into());
                }
                last.answers.push(answer);
            }
            None => questions.push(Question {
                id: row.question.clone(),
                column: row.column.clone(),
                turn: row.turn,
                plate: row.plate,
                hands: row.hands,
                answers: vec![answer],
            }),
        }
    }
    Ok(questions)
}
