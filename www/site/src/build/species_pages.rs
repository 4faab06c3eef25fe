//! A page for each species: what it is, how it is told, whether a ring suits it, when its bark slips, and what five
//! trunks of it ask for. Made by the calculator's own code, so that it is the whole answer without script.

use super::species_asked::{answered, free, is_clone, named, shown, suits};
use super::static_answers::{ask, question};
use super::{leaf_marks, look_alikes, species_after, species_list};
use crate::build::natives::Natives;
use anyhow::Result;
use calc::answer::{Answer, Outcome, without_changes};
use calc::models::season::Local;
use calc::question::{Question, TargetTyped, Text, Typed, region_names};
use calc::terms::leaf::LeafKind;
use calc::terms::method::Method;
use calc::terms::species::{Species, Suitability};
use calc_view::answer::{self, HostOptions, ring_of};
use calc_view::draw::glyph::glyph;
use calc_view::draw::plate::{self, Marks};
use calc_view::measure;
use calc_view::out::Html;
use calc_view::page::Page;
use calc_view::words::{m, phrase, region};
use chrono::{Datelike as _, NaiveDate};
use rayon::prelude::*;
use std::collections::BTreeMap;
use std::path::Path;

/// Trunk sizes of the tables, inches.
const SIZES: [&str; 5] = ["4 in", "8 in", "14 in", "20 in", "28 in"];
/// The size that the parts in words speak of: the middle one.
const MIDDLE: usize = 2;
/// How far a path stands, feet.
const FAR: [&str; 5] = ["40 ft", "70 ft", "100 ft", "130 ft", "190 ft"];

/// Whether a file is the page of one species. There are some 160 of them: they are packed at a quicker level, and no
/// device keeps them before they are read.
pub(crate) fn is_one(path: &str) -> bool {
    let own = super::languages::of(path).1;
    own.strip_prefix("species/")
        .is_some_and(|rest| rest != "index.html")
}

/// What the calculator says of a species, whatever the language.
pub(crate) struct Facts {
    pub(crate) species: &'static Species,
    /// The folder of its page: its English name.
    pub(crate) folder: String,
    marks: Option<Marks>,
    /// For each size, with nothing in reach.
    sizes: Vec<(Question, Answer)>,
    /// For each size, beside a path at each distance.
    near: Vec<Vec<Outcome>>,
    /// For each size, in each month.
    months: Vec<Vec<Outcome>>,
    /// The best days of each state and province that has some, from the earliest.
    states: Vec<(&'static str, NaiveDate, NaiveDate)>,
}

/// Asks for all species that have a name.
///
/// # Errors
/// A listed tree without marks, or a question that is none any more.
pub(crate) fn facts(root: &Path) -> Result<Vec<Facts>> {
    let marks = leaf_marks::read(root)?;
    let named = calc_data::whole().species.iter().filter(|it| !it.unknown);
    let named: Vec<&'static Species> = named.collect();
    let facts = named.par_iter().map(|species| {
        let marks = leaf_marks::of(&marks, species.scientific)?;
        Facts::of(species, *marks)
    });
    // Of several errors the first is told.
    facts.collect::<Vec<_>>().into_iter().collect()
}

/// The folder of a species' page.
pub(crate) fn folder(species: &Species) -> String {
    let letter = |c: char| {
        if c.is_ascii_alphanumeric() {
            c.to_ascii_lowercase()
        } else {
            ' '
        }
    };
    let plain: String = species.name.chars().map(letter).collect();
    let words: Vec<&str> = plain.split_whitespace().collect();
    format!("species/{}/", words.join("-"))
}

/// A link to the page of a species, by its name.
pub(super) fn link(out: &mut Page<'_>, species: &Species, home: &str) {
    out.open("b");
    out.open("a");
    out.attr("href", &format!("{home}{}", folder(species)));
    out.text(phrase::sentence(phrase::tree(species)));
    out.close_two();
    out.text(" ");
    out.latin(species.scientific);
}

impl Facts {
    fn of(species: &'static Species, marks: Marks) -> Result<Self> {
        // The parts in words speak of the middle size, and of what would change its answer.
        let asked = SIZES.iter().enumerate().map(|(at, size)| match at {
            MIDDLE => ask(calc_data::whole(), &free(species, size)),
            _ => answered(&free(species, size)),
        });
        let sizes: Result<Vec<_>> = asked.collect();
        let mut near = Vec::new();
        let mut months = Vec::new();
        for size in SIZES {
            let beside = FAR.map(|far| {
                outcome(&Typed {
                    targets: vec![TargetTyped {
                        kind: Some(Text::from("path")),
                        distance: Some(Text::from(far)),
                        ..TargetTyped::default()
                    }],
                    line_within_reach: Some(Text::from("no")),
                    none_in_reach: false,
                    ..free(species, size)
                })
            });
            near.push(beside.into_iter().collect::<Result<_>>()?);
            let by_month = (1..=12).map(|month| {
                let day = format!("2027-{month:02}-15");
                outcome(&Typed {
                    date: Some(Text::from(day.as_str())),
                    ..free(species, size)
                })
            });
            months.push(by_month.collect::<Result<_>>()?);
        }
        Ok(Self {
            species,
            folder: folder(species),
            marks: Some(marks).filter(has_plates),
            sizes: sizes?,
            near,
            months,
            states: states(&free(species, SIZES[MIDDLE]))?,
        })
    }

    /// The marks that its plates show; none where it has no plates.
    pub(crate) fn marks(&self) -> Option<&Marks> {
        self.marks.as_ref()
    }

    fn middle(&self) -> &(Question, Answer) {
        &self.sizes[MIDDLE]
    }
}

/// Whether one tree stands for the name: groups of palms, bamboos and yuccas have no plate.
pub(super) fn has_plates(marks: &Marks) -> bool {
    !matches!(
        marks.kind,
        LeafKind::Fan | LeafKind::Feather | LeafKind::Blade | LeafKind::Sword
    )
}

/// Whether a twig is drawn: how needles and scales stand tells no tree from another.
pub(super) fn has_twig(marks: &Marks) -> bool {
    marks.kind == LeafKind::Simple || marks.is_compound()
}

fn outcome(typed: &Typed) -> Result<Outcome> {
    answered(typed).map(|(_, answer)| answer.outcome)
}

/// The best days in the middle of each state and province, from the earliest.
fn states(free: &Typed) -> Result<Vec<(&'static str, NaiveDate, NaiveDate)>> {
    let reference = calc_data::whole();
    let mut states = Vec::new();
    for (code, _) in region_names().filter(|(code, _)| code.contains('-')) {
        let question = question(
            reference,
            &Typed {
                region: Some(Text::from(code)),
                ..free.clone()
            },
        )?;
        let constants = &reference.constants.timing;
        let places = calc_data::places::places();
        let local = Local::of(constants, &question.place, Some(code), places);
        let timing = without_changes(reference, &question, &local).timing;
        if let (Some(from), Some(to)) = (timing.best_from, timing.best_to) {
            states.push((code, from, to));
        }
    }
    states.sort_by_key(|(code, from, _)| (*from, *code));
    Ok(states)
}

/// The body of the page, in the language in use. `all` has the marks of its look-alikes.
pub(crate) fn body(
    facts: &Facts,
    home: &str,
    natives: &Natives,
    all: &BTreeMap<String, Marks>,
) -> String {
    let sources = format!("{home}sources/");
    let options = HostOptions {
        heading_level: 2,
        sources_base: &sources,
        ..HostOptions::default()
    };
    let mut html = Html::default();
    calc_view::draw::mark::defs(&mut html);
    let out = &mut Page::new(&mut html);
    head(out, facts, home);
    know(out, facts, home, all);
    let (question, answer) = facts.middle();
    let when = |out: &mut Page<'_>| when(out, facts);
    let when: Option<&dyn Fn(&mut Page<'_>)> = is_ringed(facts).then_some(&when);
    answer::species::parts(
        out.sink(),
        calc_data::whole(),
        question,
        answer,
        &options,
        when,
    );
    wide(out, facts);
    out.open_class("div", "folds cols");
    near(out, facts);
    by_month(out, facts);
    species_after::cut(out, facts.species, facts.middle().0.units);
    species_after::follows(out, facts.species, natives, home);
    out.close();
    html.into_string()
}

fn head(out: &mut Page<'_>, facts: &Facts, home: &str) {
    let species = facts.species;
    let name = phrase::tree(species);
    let (_, answer) = facts.middle();
    out.open("p");
    out.open("a");
    out.attr("href", &format!("{home}species/"));
    out.text(m::SPECIES_ONE_ALL);
    out.close_two();
    out.open_class("div", "two sphead");
    out.open("div");
    out.leaf("h1", phrase::sentence(name));
    out.open_class("p", "lede");
    out.latin(species.scientific);
    out.text(". ");
    out.text(phrase::sentence(&species_list::after(species)));
    out.text(".");
    out.close();
    if let Some(link) = calc_view::share::write(&named(species), false) {
        out.open("p");
        out.open_class("a", "btn");
        out.attr("href", &format!("{home}#{link}"));
        out.text(m::species_one_ask(name));
        out.close_two();
    }
    out.close();
    out.open_class("dl", "four");
    let clone = is_clone(&facts.sizes);
    let suits = suits(species, &facts.sizes);
    let short = m::species_one_suits_short(suits).to_string();
    let more = match suits {
        Suitability::Suitable | Suitability::NotApplicable | Suitability::Unknown => String::new(),
        Suitability::Followup => m::SPECIES_ONE_FOLLOWUP.to_string(),
        Suitability::NotAlone => m::method_method(answer.headline_method).to_string(),
        Suitability::Conditional if clone => m::SPECIES_SUITS_CLONE.to_string(),
        Suitability::Conditional => m::species_suits(suits).to_string(),
    };
    fact(out, m::SPECIES_ONE_SUITS.as_ref(), short, &more);
    let timing = &answer.timing;
    if let (Some(from), Some(to)) = (timing.best_from, timing.best_to) {
        fact(
            out,
            m::SPECIES_ONE_BEST.as_ref(),
            measure::days(from, to),
            "",
        );
    }
    let last = answer
        .outlook
        .as_ref()
        .and_then(|outlook| outlook.seasons.last());
    if let Some(season) = last {
        let (low, high) = (season.share.low, season.share.high);
        fact(
            out,
            m::SPECIES_ONE_DEAD.as_ref(),
            m::species_one_dead_of(m::SpeciesOneDeadOf { low, high }).to_string(),
            "",
        );
    }
    if let Some(habitat) = &answer.habitat {
        let (low, _, high) = habitat.half_life_years;
        let (low, high) = (measure::years(low), measure::years(high));
        let years = m::species_one_years(m::SpeciesOneYears { low, high }).to_string();
        fact(out, m::SPECIES_ONE_STANDS.as_ref(), years, "");
    }
    out.close_two();
}

fn fact(out: &mut Page<'_>, name: &str, said: String, more: &str) {
    out.open("div");
    out.leaf("dt", name);
    out.open("dd");
    out.leaf("b", said);
    out.text(more);
    out.close_all(2);
}

/// Plates of its marks, and what it is mistaken for.
fn know(out: &mut Page<'_>, facts: &Facts, home: &str, all: &BTreeMap<String, Marks>) {
    section(out, "know", m::SPECIES_ONE_KNOW.as_ref());
    match &facts.marks {
        Some(marks) => {
            out.open_class("div", "plates");
            type Plate = fn(&mut dyn calc_view::out::Out, &Marks, &str);
            let plates: [(Plate, calc_view::words::Word, bool); 4] = [
                (plate::leaf, m::SPECIES_ONE_LEAF, true),
                (plate::twig, m::SPECIES_ONE_TWIG, has_twig(marks)),
                (plate::fruit, m::SPECIES_ONE_FRUIT, true),
                (plate::bark, m::SPECIES_ONE_BARK, true),
            ];
            for (draw, says, shown) in plates {
                if shown {
                    out.open("figure");
                    draw(out.sink(), marks, says.as_ref());
                    out.leaf("figcaption", says);
                    out.close();
                }
            }
            out.close();
            out.p_class("soft", m::SPECIES_ONE_DRAWN);
        }
        None => out.p(m::SPECIES_ONE_NO_MARKS),
    }
    if !facts.species.look_alikes.is_empty() {
        out.leaf("h3", m::SPECIES_ONE_MISTAKEN);
    }
    out.open("p");
    out.leaf("b", m::SPECIES_ONE_NOT_SURE);
    out.text(" ");
    out.open("a");
    out.attr("href", &format!("{home}key/"));
    out.text(m::KEY_TITLE);
    out.close_two();
    look_alikes::write(out, facts.species, all);
    out.close();
}

fn section(out: &mut Page<'_>, id: &str, title: &str) {
    out.open_class("section", "sec");
    out.attr("aria-labelledby", id);
    out.open("h2");
    out.attr("id", id);
    out.text(title);
    out.close();
}

/// Opens a table under its title: its region is told from the section around it by the tree's name.
fn table(out: &mut Page<'_>, facts: &Facts, title: &str, heads: &[impl AsRef<str>]) {
    let name = phrase::sentence(phrase::tree(facts.species));
    out.open_table("vh", &format!("{name}: {title}"), heads);
}

fn size(question: &Question) -> String {
    let size = measure::size(question.tree.heading().dbh.mm());
    size.first(question.units).to_owned()
}

/// A length in both systems that breaks between the two alone.
fn in_two(length: &measure::Both, question: &Question) -> String {
    let (first, second) = length.ordered(question.units);
    let whole = |reading: &str| reading.replace(' ', "\u{a0}");
    format!("{} ({})", whole(first), whole(second))
}

/// Ring, minutes and dangerous ground of five trunks; where none is ringed, that once, and the ground.
fn wide(out: &mut Page<'_>, facts: &Facts) {
    section(out, "wide", m::SPECIES_ONE_WIDE.as_ref());
    let method = |answer: &Answer| shown(answer).headline_method;
    let methods: Vec<Method> = facts.sizes.iter().map(|(_, it)| method(it)).collect();
    let rings = methods.contains(&Method::BarkRing);
    let same = methods.iter().all(|it| *it == methods[0]);
    let mut heads = vec![m::SPECIES_ONE_ACROSS];
    if rings {
        heads.extend([m::SPECIES_ONE_RING, m::SPECIES_ONE_MINUTES]);
    } else if same {
        let method = m::method_method(methods[0]);
        out.p(phrase::sentence(&m::species_one_no_ring(method)) + ".");
    } else {
        heads.push(m::SPECIES_ONE_INSTEAD);
    }
    heads.push(m::SPECIES_ONE_ZONE);
    table(out, facts, &m::SPECIES_ONE_WIDE, &heads);
    for (question, answer) in &facts.sizes {
        out.cell(size(question));
        let shown = shown(answer);
        let ring = ring_of(shown).filter(|_| method(answer) == Method::BarkRing);
        if rings || !same {
            out.cell(match ring {
                Some(ring) => in_two(&measure::ring(ring.better_mm), question),
                None if rings => {
                    m::species_one_no_ring(m::method_method(shown.headline_method)).to_string()
                }
                None => m::method_method(shown.headline_method).to_string(),
            });
        }
        if rings {
            let minutes = shown.effort.as_ref().filter(|_| ring.is_some());
            out.cell(minutes.map_or_else(String::new, |it| measure::minutes(it.likely_min)));
        }
        out.cell(in_two(&measure::reach(answer.reach.zone_m), question));
    }
    out.close_table();
    out.p_class(
        "soft",
        if rings {
            m::SPECIES_ONE_WIDE_NOTE
        } else {
            m::SPECIES_ONE_ZONE_NOTE
        },
    );
    out.close();
}

fn near(out: &mut Page<'_>, facts: &Facts) {
    fold(out, "near", &m::SPECIES_ONE_NEAR, &near_key(facts));
    let mut heads = vec![m::SPECIES_ONE_ACROSS.to_string()];
    heads.extend(FAR.map(str::to_owned));
    outcomes(out, facts, &m::SPECIES_ONE_NEAR, &heads, &facts.near);
    out.p_class("soft", m::SPECIES_ONE_NEAR_NOTE);
    out.close_two();
}

/// At which of the distances the middle trunk may be worked on; at the nearest one that lets it.
fn near_key(facts: &Facts) -> String {
    let middle = &facts.near[MIDDLE];
    let size = size(&facts.middle().0);
    let free = middle.iter().position(|it| *it != Outcome::Professional);
    match free {
        Some(at) => m::species_one_near_from(m::SpeciesOneNearFrom { size, far: FAR[at] }),
        None => m::species_one_near_never(size),
    }
}

fn by_month(out: &mut Page<'_>, facts: &Facts) {
    fold(
        out,
        "by-month",
        &m::SPECIES_ONE_BY_MONTH,
        &m::SPECIES_ONE_BY_MONTH_KEY,
    );
    let mut heads = vec![m::SPECIES_ONE_ACROSS.to_string()];
    heads.extend(m::MEASURE_MONTHS.split(' ').map(phrase::sentence));
    outcomes(out, facts, &m::SPECIES_ONE_BY_MONTH, &heads, &facts.months);
    out.p_class("soft", m::SPECIES_ONE_BY_MONTH_NOTE);
    out.close_two();
}

/// Outcomes of five trunks: signs in the cells with their words, and the signs once more below.
fn outcomes(
    out: &mut Page<'_>,
    facts: &Facts,
    title: &str,
    heads: &[String],
    cells: &[Vec<Outcome>],
) {
    table(out, facts, title, heads);
    let mut seen = Vec::new();
    for ((question, _), row) in facts.sizes.iter().zip(cells) {
        out.cell(size(question));
        for outcome in row {
            out.open_cell();
            glyph(out.sink(), (*outcome).into());
            out.leaf_class("span", "vh", m::species_one_outcome(*outcome));
            out.close_cell();
            if !seen.contains(outcome) {
                seen.push(*outcome);
            }
        }
    }
    out.close_table();
    out.open_class("ul", "key signs");
    for outcome in seen {
        out.open("li");
        glyph(out.sink(), outcome.into());
        out.leaf("span", m::species_one_outcome(outcome));
        out.close();
    }
    out.close();
}

/// Whether a ring is cut: where none is, no bark has to slip.
fn is_ringed(facts: &Facts) -> bool {
    facts.middle().1.headline_method == Method::BarkRing || is_clone(&facts.sizes)
}

/// The best days by bands of spring on a year, and folded the states of each; none for a tree without a date model.
fn when(out: &mut Page<'_>, facts: &Facts) {
    section(out, "bands", m::SPECIES_ONE_BY_STATE.as_ref());
    let bands = bands(&facts.states);
    let (Some(first), Some(last)) = (bands.first(), bands.last()) else {
        out.p(m::SPECIES_ONE_NO_BANDS);
        out.close();
        return;
    };
    let days = |band: &Band| measure::days(band.from, band.to);
    let key = m::species_one_by_state_key(m::SpeciesOneByStateKey {
        first: days(first),
        last: days(last),
        count: bands.len(),
    });
    let months: Vec<String> = m::MEASURE_MONTHS.split(' ').map(phrase::sentence).collect();
    let drawn: Vec<(String, [u32; 2])> = (1..)
        .zip(&bands)
        .map(|(at, band)| {
            let days = |day: NaiveDate| day.ordinal();
            (at.to_string(), [days(band.from), days(band.to)])
        })
        .collect();
    let says = m::species_one_bands_drawn(phrase::tree(facts.species));
    out.open("figure");
    calc_view::draw::bands::bands(out.sink(), &drawn, &months, &says);
    out.close();
    fold(out, "by-state", &m::SPECIES_ONE_STATES, &key);
    let heads = [
        m::SPECIES_ONE_BAND,
        m::SPECIES_ONE_FROM_TO,
        m::SPECIES_ONE_STATE,
    ];
    let heads = heads.map(|head| head.to_string());
    table(out, facts, &m::SPECIES_ONE_BY_STATE, &heads);
    for (at, band) in (1..).zip(&bands) {
        out.cell(at.to_string());
        out.cell(measure::days(band.from, band.to));
        let names: Vec<&str> = band
            .states
            .iter()
            .map(|code| region::region(code))
            .collect();
        out.cell(phrase::joined_by(&names, ", "));
    }
    out.close_table();
    out.p_class("soft", m::SPECIES_ONE_STATE_NOTE);
    out.close_all(3);
}

/// How many bands spring is cut into.
const BANDS: usize = 5;

/// States in which the best days begin at about the same time.
struct Band {
    /// The first and the last of the best days of any of them.
    from: NaiveDate,
    to: NaiveDate,
    states: Vec<&'static str>,
}

/// Cuts the time between the first and the last beginning into five equal pieces; one in which no state begins is left out.
fn bands(states: &[(&'static str, NaiveDate, NaiveDate)]) -> Vec<Band> {
    let (Some((_, first, _)), Some((_, last, _))) = (states.first(), states.last()) else {
        return Vec::new();
    };
    let whole = (*last - *first).num_days() + 1;
    let piece = |from: NaiveDate| (from - *first).num_days() * BANDS as i64 / whole;
    let pieces = states.chunk_by(|(_, a, _), (_, b, _)| piece(*a) == piece(*b));
    pieces
        .map(|states| Band {
            from: states[0].1,
            to: states.iter().map(|(_, _, to)| *to).max().unwrap_or(*last),
            states: states.iter().map(|(code, _, _)| *code).collect(),
        })
        .collect()
}

/// Opens a fold up to its body; two elements are open then.
pub(super) fn fold(out: &mut Page<'_>, id: &str, title: &str, key: &str) {
    out.open_class("details", "fold");
    out.attr("id", id);
    out.open_folded(2, title, key);
}
