//! The list of all species in the language in use: whether a ring suits each, what it does after a cut, and for three
//! sizes of trunk what the calculator says. Made by the same core and the same view as the live answer; it stands
//! without script, and each line carries the names by which a script finds it.

use super::species_asked::{answered, free, is_clone, named, shown, suits};
use super::species_pages;
use anyhow::Result;
use calc::answer::Answer;
use calc::question::Question;
use calc::terms::method::Method;
use calc::terms::species::{Species, SproutVigor, Suitability};
use calc_view::draw::glyph::{Glyph, glyph};
use calc_view::out::Html;
use calc_view::page::Page;
use calc_view::words::message::{pack, take_all};
use calc_view::words::{m, phrase, within};
use calc_view::{measure, share};

/// Trunk sizes, inches.
const SIZES: [&str; 3] = ["6 in", "12 in", "20 in"];
/// The languages whose names find a tree.
const LANGUAGES: [&str; 2] = ["en", "es"];
/// The heading over the entries without a name stands where no letter does.
const NAMELESS: char = '?';

/// A species with what it stands under, and what the calculator says of three sizes of trunk.
struct Line {
    species: &'static Species,
    /// Its name in the language in use.
    name: &'static str,
    /// The same to sort by: small letters without accents.
    key: String,
    letter: char,
    asked: Vec<(Question, Answer)>,
}

/// The page's parts: how many trees, the links to its letters, what a script lets pick, the list itself.
pub(crate) struct SpeciesList {
    pub(crate) count: usize,
    pub(crate) letters: String,
    pub(crate) choices: String,
    pub(crate) list: String,
}

/// Makes them, with links to the site under `base`.
///
/// # Errors
/// If a line is no good question any more.
pub(crate) fn make(base: &str) -> Result<SpeciesList> {
    take_all();
    let lines: Result<Vec<Line>> = calc_data::whole().species.iter().map(Line::of).collect();
    let mut lines = lines?;
    lines.sort_by(|a, b| (a.species.unknown, &a.key).cmp(&(b.species.unknown, &b.key)));
    let mut list = Html::default();
    let out = &mut Page::new(&mut list);
    let mut letters = Vec::new();
    for line in &lines {
        if letters.last() != Some(&line.letter) {
            if !letters.is_empty() {
                out.close_two();
            }
            letters.push(line.letter);
            out.open("section");
            heading(out, line.letter);
            out.open_class("ul", "trees");
        }
        row(out, base, line);
    }
    out.close_two();
    Ok(SpeciesList {
        count: lines.iter().filter(|line| !line.species.unknown).count(),
        letters: letter_links(&letters),
        choices: choices(&lines),
        list: list.into_string(),
    })
}

impl Line {
    fn of(species: &'static Species) -> Result<Self> {
        let name = phrase::tree(species);
        let key = plain(name);
        let asked = SIZES.map(|size| answered(&free(species, size)));
        let first = key.chars().next().unwrap_or(NAMELESS);
        Ok(Self {
            species,
            name,
            letter: if species.unknown {
                NAMELESS
            } else {
                first.to_ascii_uppercase()
            },
            key,
            asked: asked.into_iter().collect::<Result<_>>()?,
        })
    }

    fn suits(&self) -> Suitability {
        suits(self.species, &self.asked)
    }
}

/// Small letters without the accents that names of trees have.
fn plain(name: &str) -> String {
    let letter = |c: char| match c {
        'á' => 'a',
        'é' => 'e',
        'í' => 'i',
        'ó' => 'o',
        'ú' | 'ü' => 'u',
        'ñ' => 'n',
        c => c,
    };
    name.to_lowercase().chars().map(letter).collect()
}

/// The id of a letter's heading.
fn id(letter: char) -> String {
    match letter {
        NAMELESS => "nameless".to_owned(),
        letter => format!("letter-{letter}"),
    }
}

fn heading(out: &mut Page<'_>, letter: char) {
    out.open_class("h2", "letter");
    out.attr("id", &id(letter));
    match letter {
        NAMELESS => out.text(m::SPECIES_NAMELESS),
        letter => out.text(letter.to_string()),
    }
    out.close();
}

fn letter_links(letters: &[char]) -> String {
    let mut html = Html::default();
    let out = &mut Page::new(&mut html);
    for letter in letters.iter().filter(|letter| **letter != NAMELESS) {
        out.open("li");
        out.open("a");
        out.attr("href", &format!("#{}", id(*letter)));
        out.text(letter.to_string());
        out.close_two();
    }
    html.into_string()
}

/// All, then each answer that the list has, with how many trees have it.
fn choices(lines: &[Line]) -> String {
    let mut html = Html::default();
    let out = &mut Page::new(&mut html);
    let mut choice = |value: &str, words: String| {
        out.open("option");
        out.attr("value", value);
        out.text(words);
        out.close();
    };
    choice("", m::SPECIES_ALL.to_string());
    for suits in Suitability::ALL {
        let count = lines
            .iter()
            .filter(|line| line.species.suitability == *suits);
        let count = count.count();
        if count > 0 {
            let words = m::species_suits(*suits);
            choice(
                value(*suits),
                format!("{} ({count})", phrase::sentence(&words)),
            );
        }
    }
    html.into_string()
}

/// An answer as a line carries it for the script.
fn value(suits: Suitability) -> &'static str {
    suits.word()
}

/// One line: what a person needs at once, and the rest folded under it.
fn row(out: &mut Page<'_>, base: &str, line: &Line) {
    let species = line.species;
    let suits = line.suits();
    let words = match suits {
        Suitability::Conditional if is_clone(&line.asked) => m::SPECIES_SUITS_CLONE,
        suits => m::species_suits(suits),
    };
    out.open("li");
    out.attr("data-find", &names(species).join("|"));
    out.attr("data-pick", value(suits));
    out.open("details");
    out.open("summary");
    out.open("span");
    out.leaf("b", line.name);
    if !species.unknown {
        out.text(" ");
        out.latin(species.scientific);
    }
    out.close();
    out.open_class("span", "suits");
    glyph(out.sink(), sign(suits));
    out.leaf("span", words);
    out.close();
    out.leaf_class("span", "after", after(species));
    out.close();
    let others: Vec<&str> = species
        .names
        .iter()
        .copied()
        .filter(|name| *name != species.name)
        .collect();
    if !others.is_empty() {
        out.p(m::species_also(others.join(", ")));
    }
    for language in LANGUAGES {
        let name = name_in(language, species);
        if name == line.name || species.unknown {
            continue;
        }
        if let Some(label) = m::species_in_language(language) {
            out.open("p");
            out.text(label);
            out.text(" ");
            out.open("span");
            out.attr("lang", language);
            out.text(name);
            out.close_two();
        }
    }
    out.open("dl");
    for (question, answer) in &line.asked {
        let across = measure::size(question.tree.heading().dbh.mm()).text(question.units);
        out.leaf("dt", m::species_across(across));
        out.leaf("dd", cell(question, answer));
    }
    out.close();
    if !species.unknown {
        out.open("p");
        out.open("a");
        out.attr("href", &format!("{base}{}", species_pages::folder(species)));
        out.text(m::species_one_more(line.name));
        out.close_two();
    }
    if let Some(link) = share::write(&named(species), false) {
        out.open("p");
        out.open("a");
        out.attr("href", &format!("{base}#{link}"));
        out.text(m::SPECIES_ASK);
        out.close_two();
    }
    out.close_two();
}

fn sign(suits: Suitability) -> Glyph {
    match suits {
        Suitability::Suitable => Glyph::Do,
        Suitability::Followup | Suitability::Conditional => Glyph::HalfDo,
        Suitability::NotAlone | Suitability::NotApplicable => Glyph::OtherWay,
        Suitability::Unknown => Glyph::CantTell,
    }
}

/// What comes of a cut: sprouts from the base, suckers from the roots.
pub(super) fn after(species: &Species) -> String {
    let base = m::species_basal(species.basal);
    let roots = m::species_suckering(species.suckering);
    match (species.basal, species.suckering) {
        (SproutVigor::None, SproutVigor::None) => m::SPECIES_NEITHER.to_string(),
        (_, SproutVigor::None) => base.to_string(),
        (SproutVigor::None, _) => roots.to_string(),
        _ => phrase::comma(base.to_string(), &roots),
    }
}

/// The name in a language.
fn name_in(language: &str, species: &Species) -> &'static str {
    within(pack(language), || phrase::tree(species))
}

/// All names that find a species, of every language, in small letters.
fn names(species: &Species) -> Vec<String> {
    let latin = species.scientific.to_lowercase();
    let mut names = vec![latin, species.code.to_lowercase()];
    names.extend(species.names.iter().map(|name| plain(name)));
    names.extend(LANGUAGES.map(|language| plain(name_in(language, species))));
    names.retain(|name| !name.is_empty());
    names.sort();
    names.dedup();
    names
}

/// What the answer says in a line: method, width of a ring, reach.
fn cell(question: &Question, answer: &Answer) -> String {
    let shown = shown(answer);
    let zone = measure::reach(answer.reach.zone_m).text(question.units);
    let method = shown.headline_method;
    let stem = shown.stems.first().filter(|_| method == Method::BarkRing);
    let said = match stem.and_then(|stem| stem.ring.as_ref()) {
        Some(ring) => {
            let width = measure::ring(ring.better_mm).text(question.units);
            m::species_cell_ring(m::SpeciesCellRing { width, zone })
        }
        None => {
            let method = m::method_method(method);
            m::species_cell(m::SpeciesCell { method, zone })
        }
    };
    match &answer.conditional {
        Some(_) => m::species_cell_if(said),
        None => phrase::sentence(&said),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_species_has_a_line_that_its_names_find() -> Result<()> {
        let made = make("/trees/")?;
        let species = calc_data::whole().species;
        assert_eq!(made.list.matches("<li").count(), species.len());
        let maple = made
            .list
            .split("<li")
            .find(|line| line.contains(">Norway maple<"));
        let maple = maple.expect("it is listed");
        for part in [
            "acer platanoides|",
            "|arce noruego",
            "norwegian maple",
            "data-pick=\"followup\"",
            "<span lang=\"es\">arce noruego</span>",
            "href=\"/trees/#v=1&amp;species=Norway",
        ] {
            assert!(maple.contains(part), "{part}: {maple}");
        }
        assert_eq!(maple.matches("<dd").count(), SIZES.len());
        Ok(())
    }

    #[test]
    fn in_spanish_the_list_is_in_the_order_of_its_own_names() -> Result<()> {
        take_all();
        let made = within(pack("es"), || make("/"))?;
        let names: Vec<&str> = made
            .list
            .split("<b>")
            .skip(1)
            .filter_map(|line| line.split("</b>").next())
            .collect();
        let named = &names[..made.count];
        assert!(named.contains(&"arce noruego"), "{named:?}");
        assert!(named.is_sorted_by_key(|name| plain(name)), "{named:?}");
        assert!(
            made.list.contains("En inglés:"),
            "the other name says its language"
        );
        Ok(())
    }
}
