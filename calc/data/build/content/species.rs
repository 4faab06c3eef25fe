//! Species: one line each of `species_join.csv`, with the row of every other table that it names or that bears its
//! name. A row that is missing stops the build: a species goes live whole, or not at all.

use super::bark_and_height;
use super::cells::{List, keep};
use super::curves::{self, CurveRow};
use super::leaf_marks;
use super::names::{Collected, first_spelling, spellings, title};
use super::sources::Sources;
use super::species_tables::{
    BarkRow, DurabilityRow, JoinRow, Mark, MarksRow, MatureRow, Origin, RangeRow, ResponseRow,
    SproutCells, StatusRow, SumRow, Tables, TraitRow, UnknownRow,
};
use super::trials;
use crate::table::{At, Defect, RowAt, Table};
use calc::terms::cite::{Cite, Grade};
use calc::terms::region::country;
use calc::terms::species::{
    AskedFor, BarkRatio, Confidence, Durability, Group, LookAlike, NativeRange, Species, SproutRow,
    Suitability, Trait, WoodClass,
};
use std::collections::BTreeMap;
use std::path::Path;

/// All species, sorted by scientific name, then those whose name the asker does not know.
pub(crate) fn read(root: &Path, sources: &Sources) -> Result<&'static [Species], Defect> {
    let tables = Tables::read(root)?;
    let join = Table::<JoinRow>::read(root, "content/evidence/species_join.csv")?;
    let listed = join.by(|row| &row.scientific_name)?;
    tables.strangers(&listed)?;
    let mut species = Vec::new();
    let mut known: BTreeMap<String, &str> = BTreeMap::new();
    let mut codes: BTreeMap<&str, &str> = BTreeMap::new();
    for (name, row) in &listed {
        let one = one(row, &tables, sources)?;
        if let Some(other) = codes
            .insert(one.code, name)
            .filter(|_| !one.code.is_empty())
        {
            return Err(row.at.problem(format!(
                "plants_code: {} of {name} is that of {other} already",
                one.code
            )));
        }
        for spelling in one.names {
            if let Some(other) = known.insert(spelling.to_lowercase(), name) {
                return Err(row.at.problem(format!(
                    "the name \"{spelling}\" of {name} finds {other} already; names stand in bark.csv, \
                     species_response.csv and species_names.csv"
                )));
            }
        }
        species.push(one);
    }
    leaf_marks::check(root, &tables.leaves, &listed, &tables.marks)?;
    let unknown = Table::<UnknownRow>::read(root, "content/rules/unknown_species.csv")?;
    for row in &unknown.rows {
        species.push(unknown_species(row, sources)?);
    }
    Ok(species.leak())
}

/// The rows of one species.
struct Rows<'a> {
    response: &'a RowAt<ResponseRow>,
    status: &'a RowAt<StatusRow>,
    range: &'a RowAt<RangeRow>,
    marks: &'a RowAt<MarksRow>,
    durability: &'a RowAt<DurabilityRow>,
    bark: Option<&'a RowAt<BarkRow>>,
    mature: Option<&'a RowAt<MatureRow>>,
    sum: Option<&'a RowAt<SumRow>>,
    heights: Vec<&'a RowAt<CurveRow>>,
    crowns: Vec<&'a RowAt<CurveRow>>,
    sprouts: Vec<&'a RowAt<SproutCells>>,
    traits: Vec<&'a RowAt<TraitRow>>,
    cautions: Vec<&'static str>,
}

/// The species' own name, or that of the one whose rows it borrows.
fn owner<'a>(row: &'a JoinRow, borrowed_from: &'a str) -> &'a str {
    match borrowed_from {
        "" => &row.scientific_name,
        other => other,
    }
}

/// The rows that a line of the join table names, and those that bear the species' own name; one complaint names all
/// that are missing.
fn rows<'a>(row: &'a RowAt<JoinRow>, tables: &'a Tables) -> Result<Rows<'a>, Defect> {
    let name = row.scientific_name.as_str();
    let mut missing: Vec<String> = Vec::new();
    let mut unnamed = |file: &str, key: &str| missing.push(format!("{file} has no row \"{key}\""));

    let response = find(&tables.response, |of| {
        of.scientific_name == row.response_row
    });
    let status = find(&tables.status, |of| of.scientific_name == name);
    let range = find(&tables.ranges, |of| of.scientific_name == name);
    let marks = find(&tables.marks, |of| of.scientific_name == name);
    let leaf = find(&tables.leaves, |of| of.is_of(name));
    let site = find(&tables.sites, |of| of.scientific_name == name);
    let durability = find(&tables.durability, |of| of.scientific_name == name);
    let traits = all(&tables.traits, |of| of.scientific_name == name);
    for (file, key, there) in [
        (
            tables.response.file(),
            row.response_row.as_str(),
            response.is_some(),
        ),
        (tables.status.file(), name, status.is_some()),
        (tables.ranges.file(), name, range.is_some()),
        (tables.marks.file(), name, marks.is_some()),
        (tables.leaves.file(), name, leaf.is_some()),
        (tables.sites.file(), name, site.is_some()),
        (tables.durability.file(), name, durability.is_some()),
        (tables.traits.file(), name, !traits.is_empty()),
    ] {
        if !there {
            unnamed(file, key);
        }
    }
    let bark = row.bark_row.is().map(|key| {
        let found = find(&tables.bark, |of| of.scientific_name == *key);
        found.or_else(|| {
            unnamed(tables.bark.file(), key);
            None
        })
    });
    let mature = row.mature_height_row.is().map(|key| {
        let found = find(&tables.mature, |of| of.scientific_name == *key);
        found.or_else(|| {
            unnamed(tables.mature.file(), key);
            None
        })
    });
    let sum = row.gdd_species.is().map(|key| {
        let found = find(&tables.sums, |of| {
            of.species == *key
                && of.event == row.gdd_event
                && of.unit == "degC.d"
                && of.base == "5 C"
        });
        found.or_else(|| {
            unnamed(tables.sums.file(), &format!("{key}, {}", row.gdd_event));
            None
        })
    });
    let mut sprouts = Vec::new();
    for variant in row
        .sprout_variants
        .is()
        .into_iter()
        .flat_map(|list| list.iter())
    {
        let found = all(&tables.sprouts, |of| {
            of.usda_symbol == row.sprout_symbol && of.fvs_variant == *variant && of.usable.0
        });
        if found.is_empty() {
            unnamed(
                tables.sprouts.file(),
                &format!("{} {variant}", row.sprout_symbol),
            );
        }
        sprouts.extend(found);
    }
    sprouts.sort_by_key(|row| row.at.line());
    let height_of = owner(row, &row.height_borrowed_from);
    let (heights, lost) = curves::find(&tables.height, &row.height_rows, height_of);
    missing.extend(lost);
    let crown_of = owner(row, &row.crown_borrowed_from);
    let (crowns, lost) = curves::find(&tables.crown, &row.crown_rows, crown_of);
    missing.extend(lost);

    let named = all(&tables.cautions, |of| of.scientific_name == name);
    let cautions: Vec<&'static str> = named.iter().map(|row| row.caution.id()).collect();
    let genus = name.split(' ').next().unwrap_or(name);
    for asked in all(&tables.genera, |of| of.genus == genus) {
        let carries = |mark: &str| {
            let is = |row: &&RowAt<TraitRow>| match row.mark.is() {
                Some(Mark::Is(of)) => Trait::parse(mark) == Some(*of),
                _ => false,
            };
            cautions.contains(&mark) || traits.iter().any(is)
        };
        if !asked.marks.split(" or ").any(carries) {
            missing.push(format!(
                "genus_marks.csv asks each {genus} for {}: a row of species_traits.csv or caution_species.csv",
                asked.marks
            ));
        }
    }
    match (response, status, range, marks, durability) {
        (Some(response), Some(status), Some(range), Some(marks), Some(durability))
            if missing.is_empty() =>
        {
            Ok(Rows {
                response,
                status,
                range,
                marks,
                durability,
                bark: bark.flatten(),
                mature: mature.flatten(),
                sum: sum.flatten(),
                heights,
                crowns,
                sprouts,
                traits,
                cautions,
            })
        }
        _ => Err(row.at.problem(format!(
            "{name} is not complete: {}; a row may say \"none, because …\"",
            missing.join("; ")
        ))),
    }
}

fn find<T>(table: &Table<T>, is: impl Fn(&T) -> bool) -> Option<&RowAt<T>> {
    table.rows.iter().find(|row| is(row))
}

fn all<T>(table: &Table<T>, is: impl Fn(&T) -> bool) -> Vec<&RowAt<T>> {
    table.rows.iter().filter(|row| is(row)).collect()
}

fn one(row: &RowAt<JoinRow>, tables: &Tables, sources: &Sources) -> Result<Species, Defect> {
    let name = row.scientific_name.as_str();
    let rows = rows(row, tables)?;
    let response = rows.response;
    let monocot = response.group == Group::Monocot;
    if response.girdle_class == Suitability::Unknown {
        return Err(response
            .at
            .problem("girdle_class: \"unknown\" is for unknown species"));
    }
    if monocot != (response.girdle_class == Suitability::NotApplicable) {
        return Err(response
            .at
            .problem("girdle_class: not_applicable is for monocots, and for them alone"));
    }
    if rows.bark.is_none() != monocot {
        return Err(row.at.problem("bark_row: only monocots have none"));
    }
    let names: Vec<&'static str> = names(row, response, tables)?
        .iter()
        .map(|n| keep(n))
        .collect();
    let guidance = response.source_ids.first().map_or("MEM", String::as_str);
    let (wood, budbreak_sum, budbreak) = budbreak(row, &rows, sources)?;
    let (traits, ring_minimum_mm) = traits(&rows, sources)?;
    let trials = trials::read(name, &tables.deaths, sources)?;
    Ok(Species {
        scientific: keep(name),
        name: names[0],
        names: names.leak(),
        code: keep(&row.plants_code),
        unknown: false,
        group: response.group,
        basal: response.basal_sprouting,
        suckering: response.root_suckering,
        suitability: response.girdle_class,
        response: sources.grade(response.at, guidance, response.grade.guidance)?,
        bark: rows.bark.map(|row| bark(row, sources)).transpose()?,
        heights: curves_of(&rows.heights, tables, sources)?,
        small: bark_and_height::is_small(&tables.hazard, name),
        heights_borrowed: !row.height_borrowed_from.is_empty(),
        crowns: curves_of(&rows.crowns, tables, sources)?,
        mature_height_ft: rows.mature.and_then(|row| row.height_mature_ft),
        urban_height_ft: rows.mature.and_then(|row| row.utd_max_height_ft),
        wood,
        budbreak_sum,
        budbreak,
        sprouting: sprouting(&rows)?,
        durability: rows.durability.class.is().copied().unwrap_or(Durability::C),
        native: native(rows.range, rows.status)?,
        look_alikes: look_alikes(rows.marks, tables)?,
        deaths: trials.deaths.leak(),
        trials_told: trials.told.leak(),
        asked_for: asked_for(name, &rows, tables)?,
        traits,
        ring_minimum_mm,
        cautions: rows
            .cautions
            .iter()
            .map(|id| keep(id))
            .collect::<Vec<_>>()
            .leak(),
    })
}

/// All names, the shown one first: the bark table's, the response table's parts, ours, scientific ones.
fn names(
    row: &RowAt<JoinRow>,
    response: &ResponseRow,
    tables: &Tables,
) -> Result<Vec<String>, Defect> {
    let scientific = row.scientific_name.as_str();
    let mut names = Collected::default();
    let alone = !response.scientific_name.contains(';');
    let response_name = alone.then_some(&response.common_name);
    let bark = find(&tables.bark, |bark| bark.scientific_name == scientific);
    let own: Vec<&String> = all(&tables.names, |own| own.scientific_name == scientific)
        .iter()
        .map(|own| &own.name)
        .collect();
    let shown = bark.map(|bark| &bark.common_name).or(response_name);
    let Some(shown) = shown.or(own.first().copied()) else {
        return Err(row.at.problem(format!(
            "{scientific} has no name of its own: add one to species_names.csv"
        )));
    };
    names.add(&title(shown));
    let bracketed = Some(shown).filter(|name| name.contains('('));
    for cell in bracketed.into_iter().chain(response_name) {
        for name in spellings(cell) {
            names.add(&title(&name));
        }
    }
    for extra in own {
        names.add(&title(extra));
    }
    names.add(scientific);
    for synonym in row.synonyms.iter() {
        names.add(synonym);
    }
    // A name that means another tree elsewhere goes by the place, and is no name of one species.
    let mut all = names.all();
    all.retain(|name| {
        let mut by_place = tables.by_place.rows.iter();
        !by_place.any(|row| row.name.eq_ignore_ascii_case(name))
    });
    Ok(all)
}

/// Thinnest and thickest bark over diameter that can be meant.
const BARK: std::ops::RangeInclusive<f64> = 0.005..=0.12;

fn bark(row: &RowAt<BarkRow>, sources: &Sources) -> Result<BarkRatio, Defect> {
    let place = match row.class.as_str() {
        "" => "group or regression value".to_owned(),
        class => format!("bark class {class}"),
    };
    Ok(BarkRatio {
        coefficient: within(row.at, "coef_in_per_in", row.coef_in_per_in, BARK)?,
        confidence: row.confidence,
        cite: sources.cite(row.at, &row.source_id, &place, row.grade)?,
    })
}

fn within(
    at: At,
    column: &str,
    value: f64,
    range: std::ops::RangeInclusive<f64>,
) -> Result<f64, Defect> {
    if range.contains(&value) {
        return Ok(value);
    }
    let (low, high) = (range.start(), range.end());
    Err(at.problem(format!("{column}: {value} is not between {low} and {high}")))
}

fn curves_of(
    rows: &[&RowAt<CurveRow>],
    tables: &Tables,
    sources: &Sources,
) -> Result<&'static [calc::terms::species::HeightRow], Defect> {
    let curves = rows
        .iter()
        .map(|row| curves::curve(row, &tables.curve_regions, sources));
    Ok(curves.collect::<Result<Vec<_>, _>>()?.leak())
}

/// Wood class, sum, and what the sum rests on.
fn budbreak(
    row: &RowAt<JoinRow>,
    rows: &Rows<'_>,
    sources: &Sources,
) -> Result<(Option<WoodClass>, Option<f64>, Cite), Defect> {
    let Some(sum) = rows.sum else {
        let Some(wood) = &row.wood_class else {
            return Err(row
                .at
                .problem("wood_class is empty, and gdd_species gives none"));
        };
        let cite = sources.cite(row.at, "own", "no date model", Grade::Assumption)?;
        return Ok((wood.is().copied(), None, cite));
    };
    if row.wood_class.is_some() {
        return Err(row
            .at
            .problem("wood_class: the row that gdd_species names gives it"));
    }
    let wood = sum
        .wood_class
        .ok_or_else(|| sum.at.problem("wood_class is empty"))?;
    let value = sum.value.ok_or_else(|| sum.at.problem("value is empty"))?;
    let value = within(sum.at, "value", value, 10.0..=900.0)?;
    if row.gdd_value.is_none_or(|told| (value - told).abs() > 0.5) {
        return Err(row
            .at
            .problem("gdd_value differs from the row that gdd_species names"));
    }
    let cite = sources.first(sum.at, &sum.source_id, "degree-days to budbreak", sum.grade)?;
    Ok((Some(wood), Some(value), cite))
}

fn sprouting(rows: &Rows<'_>) -> Result<&'static [SproutRow], Defect> {
    let mut sprouting = Vec::new();
    for row in &rows.sprouts {
        let at = [
            (4.0, row.p_sprout_dbh4in),
            (8.0, row.p_sprout_dbh8in),
            (12.0, row.p_sprout_dbh12in),
            (20.0, row.p_sprout_dbh20in),
        ];
        for (_, p) in at {
            within(row.at, "p_sprout", p, 0.0..=1.0)?;
        }
        sprouting.push(SproutRow {
            variant: keep(&row.fvs_variant),
            at,
        });
    }
    Ok(sprouting.leak())
}

/// Where the species is native. One of which nothing is said would never be warned of, and the national list and the
/// ranges may not speak against each other.
fn native(row: &RowAt<RangeRow>, status: &RowAt<StatusRow>) -> Result<NativeRange, Defect> {
    let range = NativeRange {
        codes: row.native_codes.0,
        not_in: row.not_native_countries.0,
        doubtful: row.doubtful_countries.0,
    };
    if range == NativeRange::default() {
        return Err(row
            .at
            .problem("native_codes: neither native, nor not, nor doubtful anywhere"));
    }
    let native_in = |land: &str| range.codes.iter().any(|code| country(code) == land);
    let both = |land: &&&str| range.doubtful.contains(land) || native_in(land);
    if let Some(land) = range.not_in.iter().find(both) {
        let what = format!("not_native_countries: {land} is native or doubtful too");
        return Err(row.at.problem(what));
    }
    let listed = status.status_in_lower_48.is() == Some(&Origin::Native);
    if listed && !native_in("US") {
        return Err(row.at.problem(
            "native_codes: status.csv has it native in the lower 48, and no state is here",
        ));
    }
    Ok(range)
}

/// Where the species is among those that are named first. What is not native in the United States or Canada is named
/// where the national list has it.
fn asked_for(name: &str, rows: &Rows<'_>, tables: &Tables) -> Result<Option<AskedFor>, Defect> {
    let Some(row) = find(&tables.asked_for, |row| row.scientific_name == name) else {
        return Ok(None);
    };
    let mut codes: Vec<&'static str> = Vec::new();
    for land in row.codes.0 {
        let grown = match *land {
            "US" => &rows.status.introduced_states,
            "CA" => &rows.status.introduced_provinces,
            _ => "",
        };
        let parts = grown.split_whitespace();
        let before = codes.len();
        codes.extend(parts.map(|part| keep(&format!("{land}-{part}"))));
        if codes.len() == before {
            codes.push(land);
        }
        let range = rows.range;
        if !range.not_native_countries.0.contains(land) && *land != "US" {
            let what = format!("codes: {name} may be native in {land}, by native_range.csv");
            return Err(row.at.problem(what));
        }
    }
    Ok(Some(AskedFor {
        rank: row.asked_for,
        codes: codes.leak(),
    }))
}

/// Look-alikes with a mark that was read in a source; marks from memory are never shown as sourced.
fn look_alikes(row: &RowAt<MarksRow>, tables: &Tables) -> Result<&'static [LookAlike], Defect> {
    let none = List::default();
    let others = row.lookalikes.is().unwrap_or(&none);
    let (marks, native) = (&row.telling_mark, &row.lookalike_is_native);
    if others.len() != marks.len() || others.len() != native.len() {
        return Err(row
            .at
            .problem("look-alikes, marks and natives are not as many"));
    }
    if row.grade == Grade::Memory {
        return Ok(&[]);
    }
    let mut alike = Vec::new();
    for ((other, mark), native) in others.iter().zip(marks.iter()).zip(native.iter()) {
        let mark = mark
            .split_once(": ")
            .map_or(mark.as_str(), |(_, mark)| mark);
        let yes = match native.as_str() {
            "yes" => true,
            "no" => false,
            other => {
                let what = format!("lookalike_is_native: \"{other}\" is not yes or no");
                return Err(row.at.problem(what));
            }
        };
        alike.push(LookAlike {
            name: keep(&alike_name(other, tables)),
            scientific: keep(other),
            mark: keep(mark),
            native: yes,
        });
    }
    Ok(alike.leak())
}

/// The common name of a look-alike: the first that the species is shown by here, else as the large bark table or our own
/// list names it. Empty where none does.
fn alike_name(scientific: &str, tables: &Tables) -> String {
    let bark = find(&tables.bark, |row| row.scientific_name == scientific);
    let all_bark = find(&tables.all_bark, |row| row.scientific_name == scientific);
    let own = find(&tables.alike_names, |row| row.scientific_name == scientific);
    let name = bark.map(|row| &row.common_name);
    let name = name.or(all_bark.map(|row| &row.common_name));
    let name = name.or(own.map(|row| &row.name));
    name.map_or_else(String::new, |name| title(&first_spelling(name)))
}

/// The marks of a species, then its own least width.
fn traits(rows: &Rows<'_>, sources: &Sources) -> Result<(&'static [Trait], Option<f64>), Defect> {
    let (mut marks, mut minimum) = (Vec::new(), None);
    for row in &rows.traits {
        sources.grade(row.at, &row.source_id, row.grade)?;
        match row.mark.is() {
            Some(Mark::Is(mark)) => marks.push(*mark),
            Some(Mark::RingMinimum) => {
                let value = row.value.ok_or_else(|| row.at.problem("value is empty"))?;
                minimum = Some(within(row.at, "value", value, 100.0..=500.0)?);
            }
            None if rows.traits.len() > 1 => {
                return Err(row.at.problem("trait: another row of the species has one"));
            }
            None => {}
        }
    }
    Ok((marks.leak(), minimum))
}

fn unknown_species(row: &RowAt<UnknownRow>, sources: &Sources) -> Result<Species, Defect> {
    let names = [&row.name].into_iter().chain(row.names.iter());
    let names: Vec<&'static str> = names.map(|name| keep(name)).collect();
    let bark = BarkRatio {
        coefficient: within(row.at, "bark_coefficient", row.bark_coefficient, BARK)?,
        confidence: Confidence::Poor,
        cite: sources.cite(row.at, &row.bark_source, &row.bark_place, Grade::Related)?,
    };
    Ok(Species {
        scientific: keep(&row.key),
        name: names[0],
        names: names.leak(),
        code: "",
        unknown: true,
        group: row.group,
        basal: row.basal_sprouting,
        suckering: row.root_suckering,
        suitability: Suitability::Unknown,
        response: Grade::Assumption,
        bark: Some(bark),
        heights: &[],
        small: false,
        heights_borrowed: false,
        crowns: &[],
        mature_height_ft: None,
        urban_height_ft: None,
        wood: Some(row.wood),
        budbreak_sum: None,
        budbreak: sources.cite(row.at, "own", "unknown species", Grade::Assumption)?,
        sprouting: &[],
        durability: Durability::C,
        native: NativeRange::default(),
        look_alikes: &[],
        deaths: &[],
        trials_told: &[],
        asked_for: None,
        traits: &[],
        ring_minimum_mm: None,
        cautions: &[],
    })
}
