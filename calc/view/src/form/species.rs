//! Which species: a text field that shortens a plain list of radios.

use super::item::Item;
use super::{View, words as w};
use crate::control::{label_of, open_input, tick};
use crate::page::Page;
use crate::words::m;
use crate::words::phrase::{sentence, tree};
use crate::words::problem::not_listed;
use calc::question::NotListed;
use calc::question::settings::SpeciesList;
use calc::terms::region::country;
use calc::terms::regional::OtherTree;
use calc::terms::small::find::holds;
use calc::terms::species::Species;

/// The value that opens the kinds.
pub(super) const UNKNOWN: &str = "?";
/// The element of the kinds.
pub(super) const UNKNOWN_ID: &str = "m-species-kind";
/// The line that counts.
pub(super) const COUNT_ID: &str = "f-species-n";
/// At most so many stand in the list before anything is typed.
const FIRST: usize = 12;
/// At most so many trees that are not on the list stand under it.
const MOST_OTHERS: usize = 4;

/// The field: filter, list, kinds.
pub(super) const FIELD: Item = Item::Set(
    "species",
    m::FORM_SPECIES,
    &[
        Item::Own(filter),
        Item::Part(super::Part::Species),
        Item::Radio("species", UNKNOWN, m::FORM_UNKNOWN),
        Item::Own(kinds),
    ],
);

fn filter(view: &View<'_>, out: &mut Page<'_>) {
    label_of(out, "hint", "f-find", &m::FORM_FILTER);
    open_input(out, "wf", "", "f-find", "find", view.sheet.get("find"));
    out.attr("spellcheck", "false");
    out.attr("autocapitalize", "none");
    out.attr("aria-describedby", COUNT_ID);
    out.close();
    out.open_class("p", "vh");
    out.attr("id", COUNT_ID);
    out.attr("role", "status");
    out.text(view.line(COUNT_ID));
    out.close();
}

/// Whether the species is not on the list.
pub(super) fn unknown(sheet: &super::Sheet) -> bool {
    sheet.is("species", UNKNOWN)
}

fn kinds(view: &View<'_>, out: &mut Page<'_>) {
    out.open_class("fieldset", "sub");
    out.attr("id", UNKNOWN_ID);
    if !unknown(view.sheet) {
        out.attr("hidden", "");
    }
    out.leaf("legend", m::FORM_UNKNOWN_KIND);
    view.radios(out, "species.kind", w::UNKNOWN_NAMES);
    out.close();
}

/// The species that match what is typed; the one that is picked stays.
pub(super) fn list(view: &View<'_>, out: &mut Page<'_>) {
    let found = found(view);
    let others = others(view);
    if found.is_empty() && others.is_empty() {
        out.leaf_class("p", "hint", m::FORM_NONE_ALIKE);
    }
    let picked = view.sheet.get("species");
    for species in found {
        let (name, on) = (species.name, species.name == picked);
        tick(out, "radio", "species", name, on, &|out| {
            out.text(tree(species));
            out.open("small");
            for alias in aliases(view, species) {
                out.text(alias);
                out.text(", ");
            }
            out.open("i");
            out.attr("lang", "la");
            out.text(species.scientific);
            out.close_two();
        });
    }
    for tree in others {
        other(view, out, tree);
    }
}

/// The trees that are not on the list and match what is typed; the one that is picked stays.
fn others(view: &View<'_>) -> Vec<&'static OtherTree> {
    let Some(regional) = view.reference.regional.get() else {
        return Vec::new();
    };
    let wanted = plain(view.sheet.get("find"));
    let wanted = wanted.trim_start();
    let spaced = cat!(" ", wanted);
    let picked = view.sheet.get("species");
    let fits = |name: &&'static str| {
        let name = plain(name);
        name.starts_with(wanted) || holds(&name, &spaced)
    };
    let mut found: Vec<&'static OtherTree> = Vec::new();
    for other in regional.others {
        let matches =
            wanted.len() > 2 && found.len() < MOST_OTHERS && other.names.iter().any(&fits);
        if matches || other.asked_as() == picked {
            found.push(other);
        }
    }
    found
}

/// A tree that is not on the list: whether it is native there, and the entry that holds for it.
fn other(view: &View<'_>, out: &mut Page<'_>, tree: &'static OtherTree) {
    let choose = tree.asked_as();
    let region = Some(view.sheet.get("region")).filter(|region| !region.is_empty());
    tick(
        out,
        "radio",
        "species",
        &choose,
        choose == view.sheet.get("species"),
        &|out| {
            out.text(sentence(tree.names[0]));
            out.open("small");
            out.text(m::FORM_NOT_LISTED);
            out.open("i");
            out.attr("lang", "la");
            out.text(tree.scientific);
            out.close_two();
        },
    );
    out.p_class("hint", not_listed(&NotListed::of(tree, region)));
}

/// How many match, for those who do not see the list.
pub(super) fn count(view: &View<'_>) -> String {
    let all = listed(view).len();
    if view.sheet.blank("find") {
        let shown = found(view).len();
        m::form_shown(m::FormShown { shown, all })
    } else {
        let matching = matching(view).len();
        let beside = others(view).len();
        if matching == 0 && beside > 0 {
            m::form_none_on_list(beside)
        } else if matching == 0 {
            m::FORM_NONE_ALIKE.into()
        } else {
            m::form_matching(m::FormMatching { matching, all })
        }
    }
}

fn found(view: &View<'_>) -> Vec<&'static Species> {
    let mut found = matching(view);
    let picked = view.sheet.get("species");
    for species in all(view) {
        if species.name == picked && !found.iter().any(|other| other.name == picked) {
            found.insert(0, species);
        }
    }
    found
}

/// All that can be named; the kinds for the others stand behind the last line.
fn all(view: &View<'_>) -> Vec<&'static Species> {
    let kinds = w::UNKNOWN_NAMES;
    let mut all: Vec<&'static Species> = Vec::new();
    for species in view.reference.species {
        if kind_in(kinds, species).is_none() {
            all.push(species);
        }
    }
    all
}

/// Those of the list: all, or a group's own alone.
fn listed(view: &View<'_>) -> Vec<&'static Species> {
    let mut listed = all(view);
    if let Some(own) = own(view).filter(|own| own.only) {
        listed.retain(|species| is_first(own, species));
    }
    listed
}

fn own<'a>(view: &View<'a>) -> Option<&'a SpeciesList> {
    view.options.group.map(|group| &group.settings.species)
}

fn is_first(own: &SpeciesList, species: &Species) -> bool {
    own.first.iter().any(|first| first.name == species.name)
}

/// The group's names of a species.
fn aliases<'a>(view: &View<'a>, species: &Species) -> impl Iterator<Item = &'a str> {
    let name = species.name;
    let all = own(view).map_or(&[][..], |own| &own.aliases);
    all.iter()
        .filter(move |(_, of)| of.name == name)
        .map(|(alias, _)| &**alias)
}

fn matching(view: &View<'_>) -> Vec<&'static Species> {
    let wanted = plain(view.sheet.get("find"));
    let wanted = wanted.trim_start();
    if wanted.trim().is_empty() {
        return first(view);
    }
    let spaced = cat!(" ", wanted);
    let mut found: Vec<&'static Species> = Vec::new();
    // Where no name has a word that starts so, those that have it inside.
    for inside in [false, true] {
        if inside && (wanted.len() <= 2 || !found.is_empty()) {
            break;
        }
        let fits = |name: &str| {
            let name = plain(name);
            if inside {
                holds(&name, wanted.trim())
            } else {
                name.starts_with(wanted) || holds(&name, &spaced)
            }
        };
        for species in listed(view) {
            let code = plain(species.code);
            let coded = !inside && !code.is_empty() && code == wanted.trim();
            if coded
                || species.names.iter().any(|name| fits(name))
                || fits(tree(species))
                || aliases(view, species).any(fits)
            {
                found.push(species);
            }
        }
    }
    let mut found = by_name(found);
    // The group's own stand first, by name too while a name is looked for.
    if let Some(own) = own(view) {
        calc::terms::small::sort::sort(&mut found, |a, b| is_first(own, a) && !is_first(own, b));
    }
    found
}

/// Before anything is typed: the species that were ringed in trials, the most first, but
/// for those that are native in some state, since a tap on one of those may be a mistake.
fn first(view: &View<'_>) -> Vec<&'static Species> {
    if let Some(own) = own(view).filter(|own| !own.first.is_empty()) {
        return own.first.clone();
    }
    let mut first = listed(view);
    first.retain(|species| species.trials > 0 && !in_america(species));
    while first.len() > FIRST {
        let least = (0..first.len()).min_by_key(|at| first[*at].trials);
        first.remove(least.unwrap_or(0));
    }
    by_name(first)
}

/// Native somewhere in the United States or Canada.
fn in_america(species: &Species) -> bool {
    let mut codes = species.native.codes.iter();
    codes.any(|code| matches!(country(code), "US" | "CA"))
}

/// In the order of the names. The sort of the standard library would be many times its bytes.
fn by_name(list: Vec<&'static Species>) -> Vec<&'static Species> {
    let mut sorted: Vec<&'static Species> = Vec::with_capacity(list.len());
    for species in list {
        let at = sorted.iter().position(|other| tree(other) > tree(species));
        sorted.insert(at.unwrap_or(sorted.len()), species);
    }
    sorted
}

/// Small letters, marks as spaces: what a name is compared by while it is typed.
fn plain(name: &str) -> String {
    name.chars()
        .filter(|c| !matches!(c, '\'' | '’'))
        .map(|c| match c.to_ascii_lowercase() {
            '-' | '(' | ')' | ',' | '.' => ' ',
            '×' => 'x',
            'á' => 'a',
            'é' => 'e',
            'í' => 'i',
            'ó' => 'o',
            'ú' | 'ü' => 'u',
            'ñ' => 'n',
            c => c,
        })
        .collect()
}

/// Which kind behind the last line an entry of the table is.
pub(super) fn kind_of(species: &Species) -> Option<&'static str> {
    kind_in(w::UNKNOWN_NAMES, species)
}

fn kind_in(kinds: w::Choice, species: &Species) -> Option<&'static str> {
    let named = |key: &str| {
        let mut names = species.names.iter();
        names.any(|name| name.eq_ignore_ascii_case(key))
    };
    let kind = kinds.iter().find(|(key, _)| named(key));
    kind.map(|(key, _)| *key)
}
