//! Which species: a text field, and under it, once something is typed, the few names that it may be. Left empty it means
//! that the tree is unknown.

use super::View;
use super::item::Item;
use crate::control::{hint_of, label_of, open_input, tick, tick_text};
use crate::page::Page;
use crate::words::phrase::{sentence, tree};
use crate::words::problem::not_listed;
use crate::words::{Lines, m};
use calc::models::native::{Native, native};
use calc::question::NotListed;
use calc::question::settings::SpeciesList;
use calc::terms::region::country;
use calc::terms::regional::OtherTree;
use calc::terms::small::find::holds;
use calc::terms::species::Species;

/// What a tree can be whose name is not known: each as it is typed.
pub(super) const UNKNOWN_NAMES: Lines = &[
    ("unknown broadleaf", m::FORM_UNKNOWN_NAMES_UNKNOWN_BROADLEAF),
    ("unknown conifer", m::FORM_UNKNOWN_NAMES_UNKNOWN_CONIFER),
    ("unknown shrub", m::FORM_UNKNOWN_NAMES_UNKNOWN_SHRUB),
    ("palm", m::FORM_UNKNOWN_NAMES_PALM),
    ("bamboo", m::FORM_UNKNOWN_NAMES_BAMBOO),
];
/// The value that opens the kinds.
pub(super) const UNKNOWN: &str = "?";
/// The element of the kinds.
pub(super) const UNKNOWN_ID: &str = "m-species-kind";
/// The line that counts.
pub(super) const COUNT_ID: &str = "f-species-n";
/// At most so many stand in the list before anything is typed.
const FIRST: usize = 8;
/// At most so many names stand under what is typed, before the line for none of them.
const MOST: usize = 4;

/// The field: name, list, kinds.
pub(super) const FIELD: Item = Item::Field(&[
    Item::Own(name),
    Item::Part(super::Part::Species),
    Item::Own(kinds),
]);

fn name(view: &View<'_>, out: &mut Page<'_>) {
    label_of(out, "", "f-find", &m::FORM_WHICH_TREE);
    hint_of(out, "f-find", &m::FORM_WHICH_TREE_HINT);
    open_input(out, "wf", "", "f-find", "find", view.sheet.get("find"));
    out.attr("spellcheck", "false");
    out.attr("autocapitalize", "none");
    out.attr("aria-describedby", &cat!("f-find-h ", COUNT_ID));
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
    view.radios(out, "species.kind", UNKNOWN_NAMES);
    out.close();
}

/// The names that may be meant, and the line for none of them; the one that is picked stays. Nothing while nothing is
/// typed and the reader has not been in the field.
pub(super) fn list(view: &View<'_>, out: &mut Page<'_>) {
    let picked = view.sheet.get("species");
    if view.sheet.blank("find") && picked.is_empty() && !listed_at_once(view) {
        return;
    }
    let mut others = others(view);
    let mut found = found(view);
    if view.sheet.blank("find") && !listed_at_once(view) {
        found.retain(|species| species.name == picked);
    } else if !view.sheet.blank("find") {
        found.truncate(MOST);
    }
    others.retain(|other| found.len() < MOST || other.asked_as() == picked);
    others.truncate(MOST.saturating_sub(found.len()).max(1));
    if found.is_empty() && others.is_empty() {
        out.leaf_class("p", "hint", m::FORM_NONE_ALIKE);
    }
    out.open_class("fieldset", "pick");
    out.leaf_class("legend", "vh", m::FORM_PICK_TREE);
    for species in found {
        let (name, on) = (species.name, species.name == picked);
        tick(out, "radio", "species", name, on, &|out| {
            out.text(tree(species));
            out.open("small");
            for alias in aliases(view, species) {
                out.text(alias);
                out.text(", ");
            }
            out.latin(species.scientific);
            out.close();
        });
    }
    for tree in others {
        other(view, out, tree);
    }
    tick_text(
        out,
        "radio",
        "species",
        UNKNOWN,
        unknown(view.sheet),
        &m::FORM_NONE_OF_THESE,
    );
    if !view.sheet.blank("find") && matching(view).len() > MOST {
        // The line that counts is read out already.
        out.open_class("p", "hint");
        out.attr("aria-hidden", "true");
        out.text(view.line(COUNT_ID));
        out.close();
    }
    out.close();
}

/// Whether the first names stand there before any is typed: once the reader has been in the field, and at once where a
/// group has a list of its own.
fn listed_at_once(view: &View<'_>) -> bool {
    view.options.listed || own(view).is_some_and(|own| !own.first.is_empty())
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
        let matches = wanted.len() > 2 && found.len() < MOST && other.names.iter().any(&fits);
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
            out.latin(tree.scientific);
            out.close();
        },
    );
    out.p_class("hint", not_listed(&NotListed::of(tree, region)));
}

/// How many match, for those who do not see the list.
pub(super) fn count(view: &View<'_>) -> String {
    let all = listed(view).len();
    if view.sheet.blank("find") {
        if !listed_at_once(view) {
            return String::new();
        }
        let shown = found(view).len();
        m::form_shown(m::FormShown { shown, all })
    } else {
        let matching = matching(view).len();
        let beside = others(view).len();
        if matching == 0 && beside > 0 {
            m::form_none_on_list(beside)
        } else if matching == 0 {
            m::FORM_NONE_ALIKE.into()
        } else if matching > MOST {
            m::form_matching_more(m::FormMatchingMore {
                shown: MOST,
                matching,
            })
        } else {
            m::form_matching(m::FormMatching { matching, all })
        }
    }
}

fn found(view: &View<'_>) -> Vec<&'static Species> {
    let mut found = matching(view);
    let picked = view.sheet.get("species");
    for species in all(view) {
        if species.name == picked {
            found.retain(|other| other.name != picked);
            found.insert(0, species);
        }
    }
    found
}

/// All that can be named; the kinds for the others stand behind the last line.
fn all(view: &View<'_>) -> Vec<&'static Species> {
    let kinds = UNKNOWN_NAMES;
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
    let mut found = by_rank(view, found);
    // The group's own stand first, by name too while a name is looked for.
    if let Some(own) = own(view) {
        calc::terms::small::sort::sort(&mut found, |a, b| is_first(own, a) && !is_first(own, b));
    }
    found
}

/// Before anything is typed: the trees that are asked for most where the asker is, and not native there; in our own
/// order.
fn first(view: &View<'_>) -> Vec<&'static Species> {
    if let Some(own) = own(view).filter(|own| !own.first.is_empty()) {
        return own.first.clone();
    }
    let mut first = listed(view);
    first.retain(|species| rank(view, species) < NO_RANK);
    let mut first = by_rank(view, first);
    first.truncate(FIRST);
    first
}

/// Behind every rank.
const NO_RANK: u8 = u8::MAX;

/// Where a tree stands among those that are asked for where the asker is. The United States where that is not known.
fn rank(view: &View<'_>, species: &Species) -> u8 {
    let place = match (view.sheet.region(), view.options.country) {
        ("", "") => "US",
        ("", country) => country,
        (region, _) => region,
    };
    let stranger = matches!(
        native(&species.native, Some(place)),
        Native::NotHere | Native::Elsewhere
    );
    let asked = species
        .asked_for
        .filter(|asked| stranger && asked_in(asked.codes, place));
    asked.map_or(NO_RANK, |asked| asked.rank)
}

/// Whether a list of regions has a place: itself, its country, or for a country alone one of its parts.
fn asked_in(codes: &[&str], place: &str) -> bool {
    let land = country(place);
    codes
        .iter()
        .any(|code| *code == place || *code == land || place == land && country(code) == land)
}

/// Those that are asked for first, the others behind them by name. The sort of the standard library would be many times
/// its bytes.
fn by_rank(view: &View<'_>, list: Vec<&'static Species>) -> Vec<&'static Species> {
    let mut sorted: Vec<(u8, &'static Species)> = Vec::with_capacity(list.len());
    for species in list {
        let rank = rank(view, species);
        let behind =
            |(other, of): &(u8, &'static Species)| (*other, tree(of)) > (rank, tree(species));
        let at = sorted.iter().position(behind);
        sorted.insert(at.unwrap_or(sorted.len()), (rank, species));
    }
    sorted.into_iter().map(|(_, species)| species).collect()
}

/// Small letters, marks as spaces: what a name is compared by while it is typed.
pub(super) fn plain(name: &str) -> String {
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
    kind_in(UNKNOWN_NAMES, species)
}

fn kind_in(kinds: Lines, species: &Species) -> Option<&'static str> {
    let named = |key: &str| {
        let mut names = species.names.iter();
        names.any(|name| name.eq_ignore_ascii_case(key))
    };
    let kind = kinds.iter().find(|(key, _)| named(key));
    kind.map(|(key, _)| *key)
}
