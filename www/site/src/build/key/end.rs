//! What the key says at its end: the trees that fit with the marks that tell them apart, or whom to ask.

use super::page::open_step;
use super::table::Tree;
use crate::build::{species_asked, species_pages};
use calc::terms::species::Species;
use calc_view::page::Page;
use calc_view::words::gap::other_tree;
use calc_view::words::prose::prose;
use calc_view::words::{m, phrase};

/// Columns by which trees are set beside each other, the ones that tell most first, and the names of their words.
const COLUMNS: [(&str, &str); 16] = [
    ("fruit", "fruit"),
    ("thorns", "thorns"),
    ("lobes", "lobes"),
    ("margin", "margin"),
    ("bark_pattern", "bark"),
    ("inner_bark_or_pith", "inner"),
    ("sap", "sap"),
    ("underside", "underside"),
    ("smell", "smell"),
    ("buds", "buds"),
    ("fruit_color", "fruit-color"),
    ("upper_face", "upper-face"),
    ("shape", "shape"),
    ("base", "base"),
    ("tip", "tip"),
    ("arrangement", "arrangement"),
];
/// So many of them are told.
const TOLD: usize = 3;

/// A word of a mark as a sentence has it.
///
/// # Panics
/// Where a mark has no words; a test holds every word of the tables against them.
pub(crate) fn words(column: &str, word: &str) -> String {
    let key = format!("{column}-{}", word.replace(['_', ' '], "-"));
    match m::leaf_mark(&key) {
        Some(said) => said.to_string(),
        None => panic!("content/words/en/pages/leaf_marks.ftl: leaf-mark has no .{key}"),
    }
}

/// A mark of a tree in words, `a or b` where either occurs; nothing where none is known.
fn mark(tree: &Tree, column: &str, name: &str) -> Option<String> {
    let said: Vec<String> = tree
        .words(column)
        // `palmate 3-5`: the count is left out.
        .map(|word| match column {
            "lobes" => word.split(' ').next().unwrap_or(word),
            _ => word,
        })
        .map(|word| words(name, word))
        .collect();
    (!said.is_empty()).then(|| phrase::either(&said))
}

/// The same, with a star where it is only remembered.
pub(crate) fn starred(tree: &Tree, column: &str, name: &str) -> Option<String> {
    let star = if tree.was_read(column) { "" } else { "*" };
    Some(mark(tree, column, name)? + star)
}

/// The same behind what it is a mark of: `Edge: small teeth*`.
pub(crate) fn labelled(tree: &Tree, column: &str, name: &str) -> Option<String> {
    let said = starred(tree, column, name)?;
    Some(format!("{}: {said}", m::leaf_mark_of(name)?.text()))
}

fn species(tree: &Tree) -> Option<&'static Species> {
    let mut all = calc_data::whole().species.iter();
    all.find(|it| tree.listed && it.scientific == tree.scientific)
}

/// Its name in the language in use.
fn name(tree: &Tree) -> String {
    match species(tree) {
        Some(species) => phrase::tree(species).to_owned(),
        None => other_tree(&tree.scientific, tree.name),
    }
}

/// The heading over the trees that fit.
pub(super) fn title(trees: &[&Tree], named: bool) -> String {
    match trees {
        [one] if named => m::key_named(name(one)),
        all => m::key_fit(all.len()),
    }
}

/// What a tree may do to who touches it, for those that are left and can.
pub(super) fn touch<'t>(out: &mut Page<'_>, trees: impl Iterator<Item = &'t Tree>) {
    let hurts: Vec<String> = trees.filter_map(hurt).collect();
    if hurts.is_empty() {
        return;
    }
    out.open_class("div", "note");
    out.open("p");
    out.leaf("b", m::KEY_TOUCH);
    out.text(" ");
    out.text(phrase::joined_by(&hurts, "; "));
    out.text(".");
    out.close_two();
}

fn hurt(tree: &Tree) -> Option<String> {
    let what = mark(tree, "touch", "touch")?;
    Some(m::key_hurts(m::KeyHurts {
        tree: name(tree),
        what,
    }))
}

/// The trees that fit: a line each with what tells it from the others.
pub(super) fn trees(
    out: &mut Page<'_>,
    trees: &[&Tree],
    named: bool,
    home: &str,
    mut drawing: impl FnMut(&mut Page<'_>, &Tree),
) {
    out.p(match (trees.len(), named) {
        (1, true) => m::KEY_NAMED_MORE,
        (1, false) => m::KEY_ONE_MORE,
        _ => m::KEY_SOME_MORE,
    });
    let differing: Vec<_> = COLUMNS
        .iter()
        .filter(|(column, name)| {
            let first = mark(trees[0], column, name);
            trees.len() == 1 || trees.iter().any(|it| mark(it, column, name) != first)
        })
        .take(TOLD)
        .collect();
    out.open_class("ul", "cands");
    let mut remembered = false;
    for tree in trees {
        out.open("li");
        drawing(out, tree);
        out.open("div");
        out.open("p");
        if let Some(species) = species(tree) {
            species_pages::link(out, species, home);
        } else {
            out.leaf("b", phrase::sentence(&name(tree)));
            out.text(" ");
            out.latin(&tree.scientific);
        }
        if tree.native {
            out.text(m::CONFIDENCE_NATIVE);
        }
        out.close();
        for said in telling(tree, trees) {
            out.open("p");
            out.leaf("b", m::KEY_TELLING);
            out.text(" ");
            out.text(said);
            out.text(".");
            out.close();
        }
        let marks = differing.iter();
        let marks = marks.filter_map(|(column, name)| labelled(tree, column, name));
        let marks: Vec<String> = marks.collect();
        remembered |= marks.iter().any(|it| it.ends_with('*'));
        if !marks.is_empty() {
            out.p(phrase::joined_by(&marks, ". ") + ".");
        }
        if let Some(what) = mark(tree, "touch", "touch") {
            out.open("p");
            out.leaf("b", phrase::sentence(&what) + ".");
            out.close();
        }
        links(out, tree, named, home);
        out.close_two();
    }
    out.close();
    if remembered {
        out.p_class("soft", m::KEY_REMEMBERED);
    }
}

/// What sources say tells a tree from the others that fit.
fn telling(tree: &Tree, trees: &[&Tree]) -> Vec<String> {
    let others = trees.iter().filter(|it| it.scientific != tree.scientific);
    let said = others.filter_map(|other| {
        let alike = species(other)?.look_alikes.iter();
        let mut alike = alike.filter(|it| it.scientific == tree.scientific);
        alike.next().map(|it| prose(it.mark))
    });
    said.collect()
}

/// To the form where it is named; that there is no page where it is not listed.
fn links(out: &mut Page<'_>, tree: &Tree, named: bool, home: &str) {
    let Some(species) = species(tree) else {
        out.p_class("soft", m::KEY_NOT_LISTED);
        return;
    };
    let link = calc_view::share::write(&species_asked::named(species), false);
    if let Some(link) = link.filter(|_| named) {
        out.open("p");
        out.open_class("a", "btn");
        out.attr("href", &format!("{home}#{link}"));
        out.text(m::species_one_ask(phrase::tree(species)));
        out.close_two();
    }
}

/// The step for who can't tell, or finds nothing that fits.
pub(super) fn ask(out: &mut Page<'_>, id: &str, home: &str) {
    open_step(out, id, m::KEY_ASK.as_ref());
    out.p(m::KEY_ASK_MORE);
    out.p(m::KEY_ASK_TAKE);
    out.open("p");
    out.open("a");
    out.attr("href", &format!("{home}key/"));
    out.text(m::KEY_AGAIN);
    out.close_two();
    out.close();
}
