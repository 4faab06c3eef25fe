//! Species: one line each of the join table, with the row of every other table that it names.

use crate::pack::Pack;
use crate::rules::{Sources, grade, split_names};
use crate::table::{Problem, Row, Table};
use crate::tags;
use calc::terms::cite::Grade;
use calc::terms::species::WoodClass;
use calc::terms::species::{Confidence, Durability, Group, Suitability, Trait, Vigor};
use std::collections::BTreeSet;
use std::path::Path;

struct Tables {
    response: Table,
    bark: Table,
    height: Table,
    crown: Table,
    mature: Table,
    gdd: Table,
    sprout: Table,
    status: Table,
    identification: Table,
    mortality: Table,
    traits: Table,
    cautions: Table,
    durability: Table,
    names: Table,
    alike_names: Table,
    all_bark: Table,
}

pub fn write(content: &Path, sources: &Sources, pack: &mut Pack) -> Result<(), Problem> {
    let evidence = |name: &str| Table::read(content, "evidence", name);
    let rules = |name: &str| Table::read(content, "rules", name);
    let join = evidence("species_join")?;
    let tables = Tables {
        response: evidence("species_response")?,
        bark: evidence("bark")?,
        height: evidence("height")?,
        crown: evidence("crown")?,
        mature: evidence("mature_height")?,
        gdd: evidence("gdd_thresholds")?,
        sprout: evidence("sprout_probability")?,
        status: evidence("status")?,
        identification: evidence("identification")?,
        mortality: evidence("mortality")?,
        traits: rules("species_traits")?,
        cautions: rules("caution_species")?,
        durability: rules("durability")?,
        names: rules("species_names")?,
        alike_names: rules("look_alike_names")?,
        all_bark: evidence("bark_all_species")?,
    };
    let mut rows: Vec<Row<'_>> = join.rows().collect();
    rows.sort_by_key(|row| row.text("scientific_name").unwrap_or("").to_owned());
    let unknown = rules("unknown_species")?;
    let codes = state_codes(&tables)?;
    pack.texts(codes.iter().copied());
    pack.len(rows.len() + unknown.rows().count());
    for row in &rows {
        species(row, &tables, &codes, sources, pack)?;
    }
    for row in unknown.rows() {
        unknown_species(&row, sources, pack)?;
    }
    for table in [
        &tables.traits,
        &tables.names,
        &tables.cautions,
        &tables.durability,
    ] {
        for row in table.rows() {
            let name = row.text("scientific_name")?;
            if join.find("scientific_name", name).is_none() {
                return Err(row.problem(format!("{name} is no species of species_join.csv")));
            }
        }
    }
    Ok(())
}

fn vigor(row: &Row<'_>, column: &str) -> Result<Vigor, Problem> {
    Ok(match row.text(column)? {
        "none" => Vigor::None,
        "weak" => Vigor::Weak,
        "moderate" => Vigor::Moderate,
        "strong" => Vigor::Strong,
        other => return Err(row.problem(format!("{column}: \"{other}\" is not known"))),
    })
}

fn group(row: &Row<'_>) -> Result<Group, Problem> {
    Ok(match row.text("group")? {
        "hardwood" => Group::Hardwood,
        "conifer" => Group::Conifer,
        "shrub" => Group::Shrub,
        "monocot" => Group::Monocot,
        other => return Err(row.problem(format!("group: \"{other}\" is not known"))),
    })
}

/// In the order in which the reader takes a species apart.
fn species(
    row: &Row<'_>,
    tables: &Tables,
    codes: &[&str],
    sources: &Sources,
    pack: &mut Pack,
) -> Result<(), Problem> {
    let name = row.text("scientific_name")?;
    let response_name = row.text("response_row")?;
    let response = tables
        .response
        .find("scientific_name", response_name)
        .ok_or_else(|| row.problem(format!("no response row \"{response_name}\"")))?;
    let guidance = response.text("girdle_guidance")?;
    let suitability = match guidance.split(':').next().unwrap_or("") {
        "SUITABLE" => Suitability::Suitable,
        "FOLLOWUP" => Suitability::Followup,
        "CONDITIONAL" => Suitability::Conditional,
        "NOT_ALONE" => Suitability::NotAlone,
        "NOT_APPLICABLE" => Suitability::NotApplicable,
        other => return Err(response.problem(format!("\"{other}\" is no class"))),
    };
    let names = names(row, &response, tables)?;
    pack.texts(names.iter().map(String::as_str));
    pack.text(name);
    pack.text(row.text("plants_code")?);
    pack.flag(false);
    pack.one_of(tags::GROUPS, &group(&response)?);
    pack.one_of(tags::VIGORS, &vigor(&response, "basal_sprouting")?);
    pack.one_of(tags::VIGORS, &vigor(&response, "root_suckering")?);
    pack.one_of(tags::SUITABILITIES, &suitability);
    let id = response
        .text("source_ids")?
        .split(';')
        .next()
        .unwrap_or("MEM");
    let grade = sources.check(&response, id, response_grade(&response)?)?;
    pack.one_of(tags::GRADES, &grade);
    let has_bark = suitability != Suitability::NotApplicable;
    pack.flag(has_bark);
    if has_bark {
        bark(row, tables, sources, pack)?;
    }
    curves(
        row,
        &tables.height,
        "height_rows",
        "height_from",
        sources,
        pack,
    )?;
    pack.flag(row.text("height_from")?.contains('('));
    curves(
        row,
        &tables.crown,
        "crown_rows",
        "crown_from",
        sources,
        pack,
    )?;
    let mature = tables
        .mature
        .find("scientific_name", row.text("mature_height_row")?);
    for column in ["height_mature_ft", "utd_max_height_ft"] {
        pack.maybe(mature.map_or(Ok(None), |row| row.maybe(column))?);
    }
    budbreak(row, tables, sources, pack)?;
    sprouting(row, tables, pack)?;
    pack.one_of(tags::DURABILITIES, &durability(name, tables)?);
    warn_states(name, tables, codes, pack)?;
    look_alikes(name, tables, pack)?;
    deaths(name, tables, sources, pack)?;
    traits(name, tables, sources, pack)?;
    pack.texts(
        tables
            .cautions
            .rows()
            .filter(|row| row.text("scientific_name").is_ok_and(|text| text == name))
            .filter_map(|row| row.text("caution").ok()),
    );
    Ok(())
}

/// The grade of the guidance field: `B=..|R=..|G=..|C=..`.
fn response_grade(row: &Row<'_>) -> Result<Grade, Problem> {
    let text = row.text("grade")?;
    text.split('|')
        .find_map(|part| part.strip_prefix("G="))
        .and_then(Grade::of_table)
        .ok_or_else(|| row.problem(format!("grade: \"{text}\" grades no guidance")))
}

/// All names, the shown one first: the bark table's, the response table's parts, ours, scientific ones.
fn names(row: &Row<'_>, response: &Row<'_>, tables: &Tables) -> Result<Vec<String>, Problem> {
    let scientific = row.text("scientific_name")?;
    let mut names: Vec<String> = Vec::new();
    let mut add = |name: &str| {
        let name = name.trim();
        if !name.is_empty() && !names.iter().any(|known| known.eq_ignore_ascii_case(name)) {
            names.push(name.to_owned());
        }
    };
    let response_names = response.text("common_name")?;
    let alone = !response.text("scientific_name")?.contains(';');
    let bark = tables.bark.find("scientific_name", row.text("bark_row")?);
    let own_bark = bark.filter(|bark| bark.text("scientific_name").is_ok_and(|n| n == scientific));
    let shown = match own_bark {
        Some(bark) => bark.text("common_name")?,
        None => response_names,
    };
    add(&title(shown));
    let bracketed = Some(shown).filter(|name| name.contains('('));
    for cell in bracketed.into_iter().chain(alone.then_some(response_names)) {
        for name in spellings(cell) {
            add(&title(&name));
        }
    }
    for extra in tables.names.rows() {
        if extra.text("scientific_name")? == scientific {
            add(&title(extra.text("name")?));
        }
    }
    add(scientific);
    if let Some((_, synonym)) = row.text("note")?.split_once("synonym or spelling: ") {
        for part in synonym.split(';').next().unwrap_or("").split(',') {
            let words = part.trim();
            let latin = words.split(' ').count() <= 4 && words.starts_with(char::is_uppercase);
            if latin {
                add(words);
            }
        }
    }
    Ok(names)
}

/// The names in a cell: parts between slashes; `Sweet (black) birch` is sweet birch and black birch. A single word
/// before a bracket at the end is a genus, and no name of one species.
fn spellings(cell: &str) -> Vec<String> {
    let Some((before, rest)) = cell.split_once('(') else {
        return cell.split('/').map(|part| part.trim().to_owned()).collect();
    };
    let (inside, after) = rest.split_once(')').unwrap_or((rest, ""));
    let (before, after) = (before.trim(), after.trim());
    if after.is_empty() {
        let species = before.contains(' ');
        return species.then(|| before.to_owned()).into_iter().collect();
    }
    vec![format!("{before} {after}"), format!("{inside} {after}")]
}

/// First letter in capitals; the rest as written.
fn title(name: &str) -> String {
    let name = name.trim();
    let mut letters = name.chars();
    letters.next().map_or_else(String::new, |first| {
        first.to_uppercase().collect::<String>() + letters.as_str()
    })
}

fn bark(row: &Row<'_>, tables: &Tables, sources: &Sources, pack: &mut Pack) -> Result<(), Problem> {
    let key = row.text("bark_row")?;
    let bark = tables
        .bark
        .find("scientific_name", key)
        .ok_or_else(|| row.problem(format!("no bark row \"{key}\"")))?;
    let confidence = match bark.text("confidence")? {
        "good" => Confidence::Good,
        "fair" => Confidence::Fair,
        "poor" => Confidence::Poor,
        other => return Err(bark.problem(format!("confidence: \"{other}\" is not known"))),
    };
    let class = bark.text("class")?;
    let place = if class.is_empty() {
        "group or regression value".to_owned()
    } else {
        format!("class {class}")
    };
    pack.number(bark.within("coef_in_per_in", 0.005, 0.12)?);
    pack.one_of(tags::CONFIDENCES, &confidence);
    sources.cite(
        pack,
        &bark,
        bark.text("source_id")?,
        &place,
        grade(&bark, "grade")?,
    )
}

/// Rows named `form@region`, under the species' own name or under the one that they are borrowed from.
fn curves(
    row: &Row<'_>,
    table: &Table,
    rows: &str,
    from: &str,
    sources: &Sources,
    pack: &mut Pack,
) -> Result<(), Problem> {
    let own = row.text("scientific_name")?;
    let from = row.text(from)?;
    let is_own = from.starts_with("own") || matches!(from, "surrogate" | "none" | "");
    let owner = if is_own {
        own
    } else {
        from.split('(').next().unwrap_or(from).trim()
    };
    let pairs: Vec<&str> = row
        .text(rows)?
        .split(';')
        .map(str::trim)
        .filter(|pair| !pair.is_empty())
        .collect();
    pack.len(pairs.len());
    for pair in pairs {
        let (form, region) = pair
            .split_once('@')
            .ok_or_else(|| row.problem(format!("\"{pair}\" is not form@region")))?;
        let curve = table
            .rows()
            .find(|curve| {
                let is =
                    |column: &str, value: &str| curve.text(column).is_ok_and(|text| text == value);
                is("scientific_name", owner)
                    && is("form", form)
                    && is("region", region)
                    && !curve
                        .text("note")
                        .is_ok_and(|note| note.contains("DO NOT USE"))
            })
            .ok_or_else(|| row.problem(format!("no usable row {pair} of {owner}")))?;
        one_curve(&curve, form, region, sources, pack)?;
    }
    Ok(())
}

fn one_curve(
    curve: &Row<'_>,
    form: &str,
    region: &str,
    sources: &Sources,
    pack: &mut Pack,
) -> Result<(), Problem> {
    let tag = tags::FORMS
        .iter()
        .position(|(name, ..)| *name == form)
        .ok_or_else(|| curve.problem(format!("form: \"{form}\" is not known")))?;
    pack.tag(tag);
    for (at, column) in ["b1", "b2", "b3", "b4", "b5"].into_iter().enumerate() {
        let b = curve.maybe(column)?.unwrap_or(0.0);
        if at < tags::FORMS[tag].2 {
            pack.number(b);
        } else if b != 0.0 {
            return Err(curve.problem(format!("{column}: {form} has no such coefficient")));
        }
    }
    pack.maybe(curve.maybe("out_min")?);
    pack.maybe(curve.maybe("out_max")?);
    let peak = match curve.text("increasing")?.split_once("peak at ") {
        Some((_, rest)) => {
            let number = rest.split(' ').next().unwrap_or("");
            let value: f64 = number
                .parse()
                .map_err(|_| curve.problem(format!("increasing: \"{number}\" is no diameter")))?;
            Some(value)
        }
        None => None,
    };
    pack.maybe(peak);
    pack.text(region);
    // The reader makes the place of form and region.
    let id = curve.text("source_id")?;
    let grade = sources.check(curve, id, grade(curve, "grade")?)?;
    sources.name(pack, id);
    pack.one_of(tags::GRADES, &grade);
    Ok(())
}

/// Wood class, sum, and what the sum rests on.
fn budbreak(
    row: &Row<'_>,
    tables: &Tables,
    sources: &Sources,
    pack: &mut Pack,
) -> Result<(), Problem> {
    let species = row.text("gdd_species")?;
    if species.is_empty() {
        let monocot = row.text("bark_row")?.is_empty();
        let wood = (!monocot).then_some(WoodClass::EvergreenBroadleaf);
        pack.one_of(tags::WOODS, &wood);
        pack.maybe(None);
        return sources.cite(pack, row, "own", "no date model", Grade::Assumption);
    }
    let event = row.text("gdd_event")?;
    let found = tables
        .gdd
        .rows()
        .find(|gdd| {
            let is = |column: &str, value: &str| gdd.text(column).is_ok_and(|text| text == value);
            is("species", species)
                && is("event", event)
                && is("unit", "degC.d")
                && is("base", "5 C")
        })
        .ok_or_else(|| row.problem(format!("no degree-day row {species}, {event}")))?;
    let wood = match found.text("wood_class")? {
        "ring" => WoodClass::Ring,
        "diffuse" => WoodClass::Diffuse,
        "conifer" => WoodClass::Conifer,
        other => return Err(found.problem(format!("wood_class: \"{other}\" is not known"))),
    };
    let value = found.within("value", 10.0, 900.0)?;
    if (value - row.number("gdd_value")?).abs() > 0.5 {
        return Err(row.problem("gdd_value differs from the row that it names"));
    }
    pack.one_of(tags::WOODS, &Some(wood));
    pack.maybe(Some(value));
    let grade = grade(&found, "grade")?;
    let id = found
        .text("source_id")?
        .split([';', '+'])
        .next()
        .unwrap_or("");
    let id = if grade == Grade::Assumption {
        "own"
    } else {
        id
    };
    sources.cite(pack, &found, id, "degree-days to budbreak", grade)
}

fn sprouting(row: &Row<'_>, tables: &Tables, pack: &mut Pack) -> Result<(), Problem> {
    let symbol = row.text("sprout_symbol")?;
    let variants: Vec<&str> = row.text("sprout_variants")?.split(';').collect();
    let mut rows = Vec::new();
    for sprout in tables.sprout.rows() {
        let variant = sprout.text("fvs_variant")?;
        let wanted = !symbol.is_empty()
            && sprout.text("usda_symbol")? == symbol
            && variants.contains(&variant)
            && !sprout.text("basis")?.contains("CODE DEFAULT");
        if wanted {
            rows.push((variant, sprout));
        }
    }
    pack.len(rows.len());
    for (variant, sprout) in rows {
        pack.text(variant);
        for size in ["4", "8", "12", "20"] {
            pack.number(sprout.within(&format!("p_sprout_dbh{size}in"), 0.0, 1.0)?);
        }
    }
    Ok(())
}

fn durability(name: &str, tables: &Tables) -> Result<Durability, Problem> {
    let Some(row) = tables.durability.find("scientific_name", name) else {
        return Ok(Durability::C);
    };
    grade(&row, "grade")?;
    Ok(match row.text("class")? {
        "A" => Durability::A,
        "B" => Durability::B,
        "C" => Durability::C,
        "D" => Durability::D,
        other => return Err(row.problem(format!("class: \"{other}\" is not known"))),
    })
}

/// The codes of states and provinces, each once, the countries one after the other.
fn state_codes(tables: &Tables) -> Result<Vec<&str>, Problem> {
    let mut codes = Vec::new();
    for column in ["warn_states", "native_provinces"] {
        let mut of_country = BTreeSet::new();
        for row in tables.status.rows() {
            of_country.extend(row.text(column)?.split_whitespace());
        }
        codes.extend(of_country);
    }
    Ok(codes)
}

fn warn_states(
    name: &str,
    tables: &Tables,
    known: &[&str],
    pack: &mut Pack,
) -> Result<(), Problem> {
    let mut codes = Vec::new();
    if let Some(row) = tables.status.find("scientific_name", name) {
        for column in ["warn_states", "native_provinces"] {
            codes.extend(row.text(column)?.split_whitespace());
        }
    }
    pack.some_of(known, &codes);
    Ok(())
}

/// Look-alikes with a mark that was read in a source; marks from memory are never shown as sourced.
fn look_alikes(name: &str, tables: &Tables, pack: &mut Pack) -> Result<(), Problem> {
    let Some(row) = tables.identification.find("scientific_name", name) else {
        pack.len(0);
        return Ok(());
    };
    let split = |column: &str| -> Result<Vec<&str>, Problem> {
        let text = row.text(column)?;
        Ok(if text.is_empty() {
            Vec::new()
        } else {
            text.split(';').map(str::trim).collect()
        })
    };
    let (others, marks, native) = (
        split("lookalikes")?,
        split("telling_mark")?,
        split("lookalike_is_native")?,
    );
    if others.len() != marks.len() || others.len() != native.len() {
        return Err(row.problem("look-alikes, marks and natives are not as many"));
    }
    let read = Grade::of_table(row.text("grade")?) != Some(Grade::Memory);
    let shown: Vec<(&str, &str, bool)> = others
        .iter()
        .zip(marks)
        .zip(native)
        .filter(|_| read)
        .map(|((other, mark), native)| {
            let mark = mark.split_once(": ").map_or(mark, |(_, mark)| mark);
            (*other, mark, native == "yes")
        })
        .collect();
    pack.len(shown.len());
    for (other, mark, native) in shown {
        pack.text(&alike_name(other, tables)?);
        pack.text(other);
        pack.prose(mark);
        pack.flag(native);
    }
    Ok(())
}

/// The common name of a look-alike: as the species is shown here, else as the large bark table or our own list names
/// it. Empty where none does.
fn alike_name(scientific: &str, tables: &Tables) -> Result<String, Problem> {
    for (table, column) in [
        (&tables.bark, "common_name"),
        (&tables.all_bark, "common_name"),
        (&tables.alike_names, "name"),
    ] {
        if let Some(row) = table.find("scientific_name", scientific) {
            let name = row.text(column)?;
            return Ok(title(name.split(" (").next().unwrap_or(name)));
        }
    }
    Ok(String::new())
}

fn deaths(name: &str, tables: &Tables, sources: &Sources, pack: &mut Pack) -> Result<(), Problem> {
    let mut rows = Vec::new();
    for row in tables.mortality.rows() {
        let named = split_names(row.text("species")?)
            .iter()
            .any(|listed| listed == name);
        let grade = grade(&row, "grade")?;
        if named && grade != Grade::Memory {
            rows.push((row, grade));
        }
    }
    pack.len(rows.len());
    for (row, grade) in rows {
        for column in [
            "n",
            "dbh_range",
            "girdle_type",
            "season",
            "months_or_seasons_after",
            "percent_dead",
        ] {
            pack.text(row.text(column)?);
        }
        let id = row.text("source_id")?.split(';').next().unwrap_or("");
        sources.check(&row, id, grade)?;
        sources.name(pack, id);
    }
    Ok(())
}

/// The marks of a species, then its own least width.
fn traits(name: &str, tables: &Tables, sources: &Sources, pack: &mut Pack) -> Result<(), Problem> {
    let mut marks = Vec::new();
    let mut minimum = None;
    for row in tables.traits.rows() {
        if row.text("scientific_name")? != name {
            continue;
        }
        sources.check(&row, row.text("source_id")?, grade(&row, "grade")?)?;
        let word = row.text("trait")?;
        if word == "ring_minimum_mm" {
            minimum = Some(row.within("value", 100.0, 500.0)?);
            continue;
        }
        let mark = Trait::parse(word)
            .ok_or_else(|| row.problem(format!("trait: \"{word}\" is not known")))?;
        marks.push(mark);
    }
    pack.len(marks.len());
    for mark in marks {
        pack.one_of(tags::TRAITS, &mark);
    }
    pack.maybe(minimum);
    Ok(())
}

fn unknown_species(row: &Row<'_>, sources: &Sources, pack: &mut Pack) -> Result<(), Problem> {
    let key = row.text("key")?;
    let own =
        |pack: &mut Pack| sources.cite(pack, row, "own", "unknown species", Grade::Assumption);
    let shown = row.text("name")?;
    pack.texts(
        [shown]
            .into_iter()
            .chain(row.text("names")?.split(';').map(str::trim)),
    );
    pack.text(key);
    pack.text("");
    pack.flag(true);
    pack.one_of(tags::GROUPS, &group(row)?);
    pack.one_of(tags::VIGORS, &vigor(row, "basal_sprouting")?);
    pack.one_of(tags::VIGORS, &vigor(row, "root_suckering")?);
    pack.one_of(tags::SUITABILITIES, &Suitability::Unknown);
    pack.one_of(tags::GRADES, &Grade::Assumption);
    pack.flag(true);
    pack.number(row.within("bark_coefficient", 0.005, 0.12)?);
    pack.one_of(tags::CONFIDENCES, &Confidence::Poor);
    sources.cite(
        pack,
        row,
        row.text("bark_source")?,
        row.text("bark_place")?,
        Grade::Related,
    )?;
    pack.len(0);
    pack.flag(false);
    pack.len(0);
    pack.maybe(None);
    pack.maybe(None);
    pack.one_of(tags::WOODS, &Some(WoodClass::Unknown));
    pack.maybe(None);
    own(pack)?;
    pack.len(0);
    pack.one_of(tags::DURABILITIES, &Durability::C);
    pack.some_of(&[], &[]);
    for _list in ["look-alikes", "deaths", "traits"] {
        pack.len(0);
    }
    pack.maybe(None);
    pack.len(0);
    Ok(())
}
