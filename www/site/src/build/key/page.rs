//! The pages of the key as markup: a section a step, of which a browser shows the one that was asked for.

use super::end::{self, words};
use super::steps::{Step, walk};
use super::table::{Known, Plate, Question, Tree};
use crate::build::leaf_marks;
use anyhow::{Context as _, Result};
use calc::terms::leaf::{Arrangement, LeafKind};
use calc_view::draw::plate::{self, Marks};
use calc_view::out::Html;
use calc_view::page::Page;
use calc_view::words::{m, phrase};
use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;

/// Where somebody is sent who can't tell any more.
const ASK: &str = "ask";
/// The first step of a page.
const FIRST: &str = "leaves";

/// The trees, the questions, the ways through them and what is drawn: the same in every language.
pub(crate) struct Key {
    known: Known,
    marks: BTreeMap<String, Marks>,
    pub(crate) pages: Vec<OnePage>,
}

/// One way that leaves stand, and one kind of leaf.
pub(crate) struct OnePage {
    arrangement: &'static str,
    kind: &'static str,
    /// Whether leaves that stand so are all of this kind.
    only_kind: bool,
    pub(super) steps: Vec<Step>,
}

impl OnePage {
    /// The folder of its page.
    pub(crate) fn folder(&self) -> String {
        format!("key/{}-{}/", self.arrangement, self.kind)
    }

    /// All its trees: those of its first step.
    pub(super) fn trees(&self) -> impl Iterator<Item = &usize> {
        let left = match self.steps.first() {
            Some(Step::Ask { left, .. } | Step::End { left, .. }) => &left[..],
            None => &[],
        };
        left.iter()
    }

    /// What its trees have in common, in words.
    pub(crate) fn says(&self) -> String {
        let stand = words("arrangement", self.arrangement);
        match self.only_kind {
            true => phrase::sentence(&stand),
            false => phrase::comma(phrase::sentence(&stand), &words("kind", self.kind)),
        }
    }
}

impl Key {
    /// Reads the tables and walks every way.
    ///
    /// # Errors
    /// As [`Known::read`] and [`leaf_marks::read`]; a drawing of a tree that has no row.
    pub(crate) fn read(root: &Path) -> Result<Self> {
        let known = Known::read(root)?;
        let marks = leaf_marks::read(root)?;
        for answer in known.questions.iter().flat_map(|it| &it.answers) {
            if let Some(name) = &answer.drawn_as {
                leaf_marks::of(&marks, name)?;
            }
        }
        let mut pages = Vec::new();
        for arrangement in Arrangement::ALL {
            let arrangement = arrangement.word();
            let kinds = kinds(&known, arrangement);
            let only_kind = kinds.len() == 1;
            for kind in kinds {
                pages.push(OnePage {
                    arrangement,
                    kind,
                    only_kind,
                    steps: walk(&known, arrangement, kind),
                });
            }
        }
        Ok(Self {
            known,
            marks,
            pages,
        })
    }

    /// The marks of every tree of the table.
    pub(crate) fn marks(&self) -> &BTreeMap<String, Marks> {
        &self.marks
    }

    /// A tree by its scientific name.
    pub(crate) fn tree(&self, scientific: &str) -> Option<&Tree> {
        self.known
            .trees
            .iter()
            .find(|it| it.scientific == scientific)
    }

    /// The drawing of a tree's fruit: its name, and the tree that it is drawn as.
    fn fruit(&self, tree: &Tree) -> Option<(String, &str)> {
        let question = self
            .known
            .questions
            .iter()
            .find(|it| it.column == "fruit")?;
        let answer = question.answers.iter().find(|it| question.has(tree, it))?;
        let name = answer.drawn_as.as_deref()?;
        Some((format!("d-{}-{}", question.id, answer.id), name))
    }

    #[cfg(test)]
    pub(super) fn known(&self) -> &Known {
        &self.known
    }
}

/// The kinds of leaf that stand so on some tree.
fn kinds(known: &Known, arrangement: &str) -> Vec<&'static str> {
    let kinds = LeafKind::ALL.iter().map(|kind| kind.word());
    let some = |kind: &&str| known.trees.iter().any(|it| it.bears(arrangement, kind));
    kinds.filter(some).collect()
}

/// The same with one blade for its leaflets: what is asked shows on one of them, and a hundred weigh much.
fn one_blade(marks: &Marks) -> Marks {
    match marks.is_compound() {
        true => marks.leaflet(),
        false => *marks,
    }
}

/// Draws a plate, or what stands in it for others to use.
fn draw(plate: Plate, marks: &Marks) -> String {
    let mut html = Html::default();
    let draw = match plate {
        Plate::Leaf => plate::leaf,
        Plate::Twig => plate::twig,
        Plate::Fruit => plate::fruit,
        Plate::Bark => plate::bark,
    };
    draw(&mut html, marks, "");
    let text = html.into_string();
    let inside = text.split_once('>').map_or("", |(_, inside)| inside);
    inside.strip_suffix("</svg>").unwrap_or(inside).to_owned()
}

/// Drawings that are used by name, each once.
#[derive(Default)]
struct Drawings {
    ids: BTreeSet<String>,
    text: String,
}

impl Drawings {
    /// Adds one; nothing where it is there.
    fn add(&mut self, id: &str, plate: Plate, marks: &Marks) {
        if self.ids.insert(id.to_owned()) {
            self.text += &format!("<g id=\"{id}\">{}</g>", draw(plate, marks));
        }
    }

    fn into_string(self) -> String {
        let mut html = Html::default();
        calc_view::draw::mark::defs(&mut html);
        format!(
            "{}<svg class=\"defs\" width=\"0\" height=\"0\" aria-hidden=\"true\"><defs>{}</defs></svg>",
            html.into_string(),
            self.text
        )
    }
}

/// Shows a drawing by its name.
fn shown(out: &mut Page<'_>, id: &str) {
    let out = out.sink();
    out.open("svg");
    out.attr("class", "d");
    let [width, height] = plate::SIZE;
    out.attr("viewBox", &format!("0 0 {width} {height}"));
    out.attr("aria-hidden", "true");
    out.open("use");
    out.attr("href", &format!("#{id}"));
    out.close();
    out.close();
}

/// The first page, in the language in use.
///
/// # Errors
/// A way that leaves stand without a tree to draw.
pub(crate) fn first(key: &Key, home: &str) -> Result<String> {
    let mut drawings = Drawings::default();
    let mut html = Html::default();
    let out = &mut Page::new(&mut html);
    out.open_class("div", "steps");
    open_step(out, FIRST, m::KEY_LEAVES.as_ref());
    out.p_class("hint", m::KEY_LEAVES_LOOK);
    out.open_class("ul", "looks");
    let mut seen: Vec<&str> = Vec::new();
    for page in &key.pages {
        if seen.contains(&page.arrangement) {
            continue;
        }
        seen.push(page.arrangement);
        let to = match page.only_kind {
            true => format!("{home}{}", page.folder()),
            false => format!("#{}", page.arrangement),
        };
        let plate = match page.kind {
            "simple" => Plate::Twig,
            _ => Plate::Leaf,
        };
        let id = format!("a-{}", page.arrangement);
        drawings.add(&id, plate, &example(key, page)?);
        look(out, &to, Some(&id), &words("arrangement", page.arrangement));
    }
    out.close();
    ways_out(out, ASK, ASK);
    out.close();
    for arrangement in seen {
        let pages = key.pages.iter().filter(|it| it.arrangement == arrangement);
        let pages: Vec<&OnePage> = pages.collect();
        if pages.len() < 2 {
            continue;
        }
        open_step(out, arrangement, m::KEY_KIND.as_ref());
        let stand = words("arrangement", arrangement);
        out.p(phrase::sentence(&stand) + ".");
        out.p_class("hint", m::KEY_KIND_LOOK);
        out.open_class("ul", "looks");
        for page in pages {
            let id = format!("k-{}", page.kind);
            drawings.add(&id, Plate::Leaf, &example(key, page)?);
            let to = format!("{home}{}", page.folder());
            look(out, &to, Some(&id), &words("kind", page.kind));
        }
        out.close();
        ways_out(out, ASK, ASK);
        again(out, &format!("#{FIRST}"));
        out.close();
    }
    end::ask(out, ASK, home);
    out.close();
    Ok(drawings.into_string() + &html.into_string())
}

/// The marks that stand for a pair: those of a tree without lobes, a listed one if there is one that has no other pair.
fn example(key: &Key, page: &OnePage) -> Result<Marks> {
    let fits = |tree: &&Tree| tree.bears(page.arrangement, page.kind) && tree.has("lobes", "none");
    let worth = |tree: &&Tree| {
        let first = tree.words("arrangement").next() == Some(page.arrangement);
        u8::from(!tree.listed) + 2 * u8::from(!first)
    };
    let tree = key.known.trees.iter().filter(fits).min_by_key(worth);
    let tree = tree.with_context(|| format!("{} has no tree to draw", page.folder()))?;
    let marks = leaf_marks::of(&key.marks, &tree.scientific)?;
    // Where it has either, that of the page is drawn.
    Ok(Marks {
        arrangement: Arrangement::parse(page.arrangement).unwrap_or(marks.arrangement),
        kind: LeafKind::parse(page.kind).unwrap_or(marks.kind),
        ..*marks
    })
}

/// A page behind the first one, in the language in use.
pub(crate) fn one(key: &Key, page: &OnePage, home: &str) -> Result<String> {
    let mut drawings = Drawings::default();
    let mut html = Html::default();
    let out = &mut Page::new(&mut html);
    let begin = format!("{home}key/");
    out.open_class("div", "steps");
    for (at, step) in page.steps.iter().enumerate() {
        let id = step_id(at);
        match step {
            Step::Ask {
                question,
                left,
                answers,
                cant_tell,
            } => {
                let question = &key.known.questions[*question];
                open_step(out, &id, &asked(question)?);
                out.p_class("soft", m::key_left(left.len()));
                if question.hands {
                    // All trees of the page: somebody may have come here by a wrong answer.
                    end::touch(out, page.trees().map(|at| &key.known.trees[*at]));
                }
                let look_at =
                    m::leaf_mark_look(&question.id).context("how to look has no words")?;
                out.p_class("hint", look_at);
                let drawn = question.plate.is_some();
                out.open_class("ul", if drawn { "looks" } else { "looks plain" });
                for (answer, next) in answers {
                    let answer = &question.answers[*answer];
                    let drawing = question.plate.zip(answer.drawn_as.as_ref());
                    let id = format!("d-{}-{}", question.id, answer.id);
                    if let Some((plate, name)) = drawing {
                        let marks = leaf_marks::of(&key.marks, name)?;
                        drawings.add(&id, plate, &one_blade(marks));
                    }
                    let id = drawing.map(|_| id.as_str());
                    let says = words(&question.id, &answer.id);
                    look(out, &format!("#{}", step_id(*next)), id, &says);
                }
                out.close();
                let cant_tell = cant_tell.map_or_else(|| ASK.to_owned(), step_id);
                ways_out(out, &cant_tell, ASK);
            }
            Step::End { left, named } => {
                let trees: Vec<_> = left.iter().map(|at| &key.known.trees[*at]).collect();
                open_step(out, &id, &end::title(&trees, *named));
                // Its fruit, where that tells: the answers have drawn it already.
                let fruits = trees.iter().map(|tree| key.fruit(tree));
                let fruits: BTreeSet<_> = fruits.collect();
                let drawing = |out: &mut Page<'_>, tree: &Tree| {
                    if let Some((id, name)) = key.fruit(tree).filter(|_| fruits.len() > 1) {
                        if let Some(marks) = key.marks.get(name) {
                            drawings.add(&id, Plate::Fruit, marks);
                        }
                        shown(out, &id);
                    }
                };
                end::trees(out, &trees, *named, home, drawing);
            }
        }
        again(out, &begin);
        out.close();
    }
    end::ask(out, ASK, home);
    out.close();
    Ok(drawings.into_string() + &html.into_string())
}

fn step_id(at: usize) -> String {
    format!("s{at}")
}

fn asked(question: &Question) -> Result<String> {
    let words = m::leaf_mark_asked(&question.id);
    let words = words.with_context(|| format!("{} has no words", question.id))?;
    Ok(words.to_string())
}

/// Opens a step under its heading.
pub(super) fn open_step(out: &mut Page<'_>, id: &str, title: &str) {
    out.open_class("section", "sec step");
    out.attr("id", id);
    out.leaf("h2", title);
}

/// One answer: a drawing over its words, all of it a link.
fn look(out: &mut Page<'_>, to: &str, drawing: Option<&str>, says: &str) {
    out.open("li");
    out.open("a");
    out.attr("href", to);
    if let Some(id) = drawing {
        shown(out, id);
    }
    out.leaf("b", phrase::sentence(says));
    out.close_two();
}

/// The two answers that every question has.
fn ways_out(out: &mut Page<'_>, cant_tell: &str, none: &str) {
    out.open_class("p", "outs");
    for (to, says) in [(cant_tell, m::KEY_CANT_TELL), (none, m::KEY_NONE)] {
        out.open("a");
        out.attr("href", &format!("#{to}"));
        out.text(says);
        out.close();
        out.text(" ");
    }
    out.close();
}

fn again(out: &mut Page<'_>, to: &str) {
    out.open("p");
    out.open("a");
    out.attr("href", to);
    out.text(m::KEY_AGAIN);
    out.close_two();
}
