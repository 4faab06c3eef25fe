//! The gallery of plates: on its first page trees that must not be confused, five beside each other, each with the mark that
//! tells it; behind it a page each for leaves of one blade, other leaves, fruit and bark of all listed trees.

use super::key::{Key, labelled, starred};
use super::look_alikes::one;
use super::species_pages::{self, link};
use calc::terms::leaf::LeafKind;
use calc::terms::species::{LookAlike, Species};
use calc_view::draw::plate::{self, Marks};
use calc_view::out::{Html, Out};
use calc_view::page::Page;
use calc_view::words::{Word, m, phrase};

/// The most trees beside each other: one of the list, and what it is mistaken for.
const BESIDE: usize = 5;

/// A page of plates.
pub(crate) struct Plates {
    /// Its folder.
    pub(crate) folder: &'static str,
    /// Its name.
    pub(crate) title: Word,
    draw: fn(&mut dyn Out, &Marks, &str),
    /// Which trees it shows.
    shows: fn(&Marks) -> bool,
    /// The columns of the table that its captions say, and what each is of.
    says: &'static [(&'static str, &'static str)],
}

const LEAF: &[(&str, &str)] = &[
    ("arrangement", "arrangement"),
    ("kind", "kind"),
    ("lobes", "lobes"),
    ("margin", "margin"),
];

/// All of them.
pub(crate) const PLATES: [Plates; 4] = [
    Plates {
        folder: "plates/blades/",
        title: m::GALLERY_BLADES,
        draw: plate::leaf,
        shows: |marks| !has_leaflets(marks),
        says: LEAF,
    },
    Plates {
        folder: "plates/leaflets/",
        title: m::GALLERY_LEAFLETS,
        draw: plate::leaf,
        shows: has_leaflets,
        says: LEAF,
    },
    Plates {
        folder: "plates/fruit/",
        title: m::GALLERY_FRUIT,
        draw: plate::fruit,
        shows: |_| true,
        says: &[("fruit", "fruit"), ("fruit_color", "fruit-color")],
    },
    Plates {
        folder: "plates/bark/",
        title: m::GALLERY_BARK,
        draw: plate::bark,
        shows: |_| true,
        says: &[("bark_pattern", "bark")],
    },
];

/// Whether a file is one of its pages.
pub(crate) fn is_one(path: &str) -> bool {
    super::languages::of(path).1.starts_with("plates/")
}

/// Whether a leaf has leaflets on one stalk. Those divided twice stand with the blades, so that no page weighs too much.
fn has_leaflets(marks: &Marks) -> bool {
    matches!(marks.kind, LeafKind::Trifoliate | LeafKind::Pinnate)
}

/// The listed trees that have plates, by their names.
fn drawn(key: &Key) -> Vec<(&'static Species, &Marks)> {
    let all = calc_data::whole().species.iter();
    let mut drawn: Vec<_> = all
        .filter(|species| !species.unknown)
        .filter_map(|species| Some((species, key.marks().get(species.scientific)?)))
        .filter(|(_, marks)| species_pages::has_plates(marks))
        .collect();
    drawn.sort_by_key(|(species, _)| phrase::tree(species));
    drawn
}

/// One page of plates, in the language in use: a figure a tree, and its marks in words.
pub(crate) fn one_page(plates: &Plates, key: &Key, home: &str) -> String {
    let mut html = Html::default();
    calc_view::draw::mark::defs(&mut html);
    let out = &mut Page::new(&mut html);
    ways(out, plates.folder, home);
    out.open_class("div", "plates many");
    for (species, marks) in drawn(key).into_iter().filter(|(_, it)| (plates.shows)(it)) {
        out.open("figure");
        (plates.draw)(out.sink(), marks, "");
        out.open("figcaption");
        link(out, species, home);
        out.text(". ");
        out.text(phrase::sentence(&said(key, species, plates.says)));
        out.text(".");
        out.close_two();
    }
    out.close();
    out.p_class("soft", m::KEY_REMEMBERED);
    html.into_string()
}

/// The marks of a tree in words, with a star where one is only remembered.
fn said(key: &Key, species: &Species, columns: &[(&str, &str)]) -> String {
    let Some(tree) = key.tree(species.scientific) else {
        return String::new();
    };
    // One mark speaks for itself; of several each says what it is of.
    if let [(column, name)] = columns {
        return starred(tree, column, name).unwrap_or_default();
    }
    let marks = columns.iter();
    let marks = marks.filter_map(|(column, name)| labelled(tree, column, name));
    phrase::joined_by(&marks.collect::<Vec<_>>(), ". ")
}

/// The links to the pages of plates.
fn ways(out: &mut Page<'_>, here: &str, home: &str) {
    out.open_class("p", "outs");
    let first = ("plates/", m::GALLERY_BESIDE);
    let pages = PLATES.iter().map(|it| (it.folder, it.title));
    for (folder, title) in [first].into_iter().chain(pages) {
        if folder != here {
            out.open("a");
            out.attr("href", &format!("{home}{folder}"));
            out.text(title);
            out.close();
            out.text(" ");
        }
    }
    out.close();
}

/// The first page: trees that must not be confused, five beside each other.
pub(crate) fn first(key: &Key, home: &str) -> String {
    let mut html = Html::default();
    calc_view::draw::mark::defs(&mut html);
    let out = &mut Page::new(&mut html);
    ways(out, "plates/", home);
    for (species, marks, alike) in beside(key) {
        let id = species_pages::folder(species).replace(['/'], "-");
        let id = id.trim_end_matches('-');
        out.open_class("section", "sec");
        out.attr("aria-labelledby", id);
        out.open("h2");
        out.attr("id", id);
        out.text(phrase::sentence(phrase::tree(species)));
        out.close();
        out.open_class("div", "plates five");
        out.open("figure");
        plate::leaf(out.sink(), marks, "");
        out.open("figcaption");
        link(out, species, home);
        out.text(". ");
        out.text(phrase::sentence(&said(key, species, &LEAF[2..])));
        out.text(".");
        out.close_two();
        for (other, marks) in alike {
            out.open("figure");
            plate::leaf(out.sink(), marks, "");
            out.open("figcaption");
            one(out, other);
            out.close_two();
        }
        out.close_two();
    }
    out.p_class("soft", m::KEY_REMEMBERED);
    html.into_string()
}

type Beside<'k> = (
    &'static Species,
    &'k Marks,
    Vec<(&'static LookAlike, &'k Marks)>,
);

/// Trees with leaves of one blade that have at least two look-alikes of that kind, native ones first.
fn beside(key: &Key) -> Vec<Beside<'_>> {
    let drawn = drawn(key);
    let blades = drawn
        .into_iter()
        .filter(|(_, marks)| marks.kind == LeafKind::Simple);
    let five = blades.filter_map(|(species, marks)| {
        let alike = species.look_alikes.iter();
        let mut alike: Vec<_> = alike
            .filter_map(|it| Some((it, key.marks().get(it.scientific)?)))
            .filter(|(_, marks)| marks.kind == LeafKind::Simple)
            .collect();
        alike.sort_by_key(|(it, _)| !it.native);
        alike.truncate(BESIDE - 1);
        (alike.len() > 1).then_some((species, marks, alike))
    });
    five.collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::build::languages;
    use crate::build::packed::expect_light;
    use crate::project;
    use anyhow::Result;

    #[test]
    fn every_listed_tree_stands_in_the_gallery_once_a_plate_and_its_pages_are_light() -> Result<()>
    {
        let key = Key::read(&project::root()?)?;
        for language in languages::all() {
            languages::speaking(language, || -> Result<()> {
                let pages = PLATES.each_ref().map(|it| one_page(it, &key, "/"));
                let count = |page: &String| page.matches("<figure").count();
                let all = drawn(&key).len();
                assert!(all > 70, "{all} trees have plates");
                assert_eq!(count(&pages[0]) + count(&pages[1]), all);
                assert_eq!([count(&pages[2]), count(&pages[3])], [all, all]);
                let five = first(&key, "/");
                let sets = five.matches("plates five").count();
                println!("{language}: {sets} sets beside each other");
                assert!(sets >= 5, "{sets} sets");
                for page in pages.iter().chain([&five]) {
                    expect_light(language, page)?;
                }
                Ok(())
            })?;
        }
        Ok(())
    }
}
