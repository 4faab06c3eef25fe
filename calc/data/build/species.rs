//! Species: one line each of the join table, with the row of every other table that it names.

use crate::emit;
use crate::rules::{Sources, grade, split_names};
use crate::table::{Problem, Row, Table};
use calc::evidence::Grade;
use calc::reference::Trait;
use std::fmt::Write as _;
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
}

pub fn write(content: &Path, sources: &Sources, out: &mut String) -> Result<(), Problem> {
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
    };
    let mut rows: Vec<Row<'_>> = join.rows().collect();
    rows.sort_by_key(|row| row.text("scientific_name").unwrap_or("").to_owned());
    let _ = writeln!(out, "static SPECIES: &[Species] = &[");
    for row in &rows {
        species(row, &tables, sources, out)?;
    }
    let unknown = rules("unknown_species")?;
    for row in unknown.rows() {
        unknown_species(&row, sources, out)?;
    }
    let _ = writeln!(out, "];");
    for (table, column) in [
        (&tables.traits, "scientific_name"),
        (&tables.names, "scientific_name"),
    ] {
        for row in table.rows() {
            let name = row.text(column)?;
            if join.find("scientific_name", name).is_none() {
                return Err(row.problem(format!("{name} is no species of species_join.csv")));
            }
        }
    }
    Ok(())
}

fn vigor(row: &Row<'_>, column: &str) -> Result<&'static str, Problem> {
    Ok(match row.text(column)? {
        "none" => "None",
        "weak" => "Weak",
        "moderate" => "Moderate",
        "strong" => "Strong",
        other => return Err(row.problem(format!("{column}: \"{other}\" is not known"))),
    })
}

fn group(row: &Row<'_>) -> Result<&'static str, Problem> {
    Ok(match row.text("group")? {
        "hardwood" => "Hardwood",
        "conifer" => "Conifer",
        "shrub" => "Shrub",
        "monocot" => "Monocot",
        other => return Err(row.problem(format!("group: \"{other}\" is not known"))),
    })
}

fn species(
    row: &Row<'_>,
    tables: &Tables,
    sources: &Sources,
    out: &mut String,
) -> Result<(), Problem> {
    let name = row.text("scientific_name")?;
    let response_name = row.text("response_row")?;
    let response = tables
        .response
        .find("scientific_name", response_name)
        .ok_or_else(|| row.problem(format!("no response row \"{response_name}\"")))?;
    let guidance = response.text("girdle_guidance")?;
    let suitability = match guidance.split(':').next().unwrap_or("") {
        "SUITABLE" => "Suitable",
        "FOLLOWUP" => "Followup",
        "CONDITIONAL" => "Conditional",
        "NOT_ALONE" => "NotAlone",
        "NOT_APPLICABLE" => "NotApplicable",
        other => return Err(response.problem(format!("\"{other}\" is no class"))),
    };
    let monocot = suitability == "NotApplicable";
    let names = names(row, &response, tables)?;
    let (wood, sum, budbreak) = budbreak(row, tables, sources)?;
    let mature = tables
        .mature
        .find("scientific_name", row.text("mature_height_row")?);
    let number = |column: &str| mature.map_or(Ok(None), |row| row.maybe(column));
    let response_cite = {
        let id = response
            .text("source_ids")?
            .split(';')
            .next()
            .unwrap_or("MEM");
        sources.cite(&response, id, "species page", response_grade(&response)?)?
    };
    let (traits, ring_minimum) = traits(name, tables, sources)?;
    let _ = writeln!(
        out,
        "Species {{ scientific: {name:?}, name: {:?}, names: {}, code: {:?}, unknown: false, group: Group::{}, \
         basal: Vigor::{}, suckering: Vigor::{}, suitability: Suitability::{suitability}, response: {response_cite}, \
         bark: {}, heights: {}, heights_borrowed: {}, crowns: {}, mature_height_ft: {}, urban_height_ft: {}, \
         wood: {wood}, budbreak_sum: {sum}, budbreak: {budbreak}, sprouting: {}, durability: Durability::{}, \
         warn_states: {}, look_alikes: {}, deaths: {}, traits: &[{traits}], ring_minimum_mm: {}, cautions: {} }},",
        names[0],
        emit::texts(names.iter().map(String::as_str)),
        row.text("plants_code")?,
        group(&response)?,
        vigor(&response, "basal_sprouting")?,
        vigor(&response, "root_suckering")?,
        if monocot {
            "None".to_owned()
        } else {
            bark(row, tables, sources)?
        },
        curves(row, &tables.height, "height_rows", "height_from", sources)?,
        row.text("height_from")?.contains('('),
        curves(row, &tables.crown, "crown_rows", "crown_from", sources)?,
        emit::maybe(number("height_mature_ft")?),
        emit::maybe(number("utd_max_height_ft")?),
        sprouting(row, tables)?,
        durability(name, tables)?,
        warn_states(name, tables)?,
        look_alikes(name, tables)?,
        deaths(name, tables, sources)?,
        emit::maybe(ring_minimum),
        emit::texts(
            tables
                .cautions
                .rows()
                .filter(|row| row.text("scientific_name").is_ok_and(|text| text == name))
                .filter_map(|row| row.text("caution").ok()),
        ),
    );
    Ok(())
}

/// The grade of the guidance field: `B=..|R=..|G=..|C=..`.
fn response_grade(row: &Row<'_>) -> Result<Grade, Problem> {
    let text = row.text("grade")?;
    text.split('|')
        .find_map(|part| part.strip_prefix("G="))
        .and_then(Grade::parse)
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
    match own_bark {
        Some(bark) => add(&title(bark.text("common_name")?)),
        None => add(&title(response_names)),
    }
    if alone {
        for part in response_names.split('/') {
            add(&title(part.split('(').next().unwrap_or(part)));
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

/// First letter in capitals; the rest as written.
fn title(name: &str) -> String {
    let name = name.trim();
    let mut letters = name.chars();
    letters.next().map_or_else(String::new, |first| {
        first.to_uppercase().collect::<String>() + letters.as_str()
    })
}

fn bark(row: &Row<'_>, tables: &Tables, sources: &Sources) -> Result<String, Problem> {
    let key = row.text("bark_row")?;
    let bark = tables
        .bark
        .find("scientific_name", key)
        .ok_or_else(|| row.problem(format!("no bark row \"{key}\"")))?;
    let confidence = match bark.text("confidence")? {
        "good" => "Good",
        "fair" => "Fair",
        "poor" => "Poor",
        other => return Err(bark.problem(format!("confidence: \"{other}\" is not known"))),
    };
    let class = bark.text("class")?;
    let place = if class.is_empty() {
        "group or regression value".to_owned()
    } else {
        format!("class {class}")
    };
    let cite = sources.cite(
        &bark,
        bark.text("source_id")?,
        &place,
        grade(&bark, "grade")?,
    )?;
    Ok(format!(
        "Some(Bark {{ coefficient: {:?}, confidence: Confidence::{confidence}, cite: {cite} }})",
        bark.within("coef_in_per_in", 0.005, 0.12)?
    ))
}

/// Rows named `form@region`, under the species' own name or under the one that they are borrowed from.
fn curves(
    row: &Row<'_>,
    table: &Table,
    rows: &str,
    from: &str,
    sources: &Sources,
) -> Result<String, Problem> {
    let own = row.text("scientific_name")?;
    let from = row.text(from)?;
    let owner =
        if from.starts_with("own") || from == "surrogate" || from == "none" || from.is_empty() {
            own
        } else {
            from.split('(').next().unwrap_or(from).trim()
        };
    let mut text = String::from("&[");
    for pair in row
        .text(rows)?
        .split(';')
        .map(str::trim)
        .filter(|pair| !pair.is_empty())
    {
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
        text.push_str(&one_curve(&curve, form, region, sources)?);
        text.push_str(", ");
    }
    text.push(']');
    Ok(text)
}

fn one_curve(
    curve: &Row<'_>,
    form: &str,
    region: &str,
    sources: &Sources,
) -> Result<String, Problem> {
    let variant = match form {
        "WYKOFF" => "Wykoff".to_owned(),
        "CURTIS_ARNEY" => "CurtisArney".to_owned(),
        "QUAD" => "Quad".to_owned(),
        "UTD_lin" | "UTD_quad" | "UTD_cub" | "UTD_quart" => "Polynomial".to_owned(),
        _ => {
            let (kind, number) = form
                .strip_prefix("UTD_loglogw")
                .map(|n| ("LogLog", n))
                .or_else(|| form.strip_prefix("UTD_expow").map(|n| ("Exp", n)))
                .ok_or_else(|| curve.problem(format!("form: \"{form}\" is not known")))?;
            format!("{kind}({number})")
        }
    };
    let mut b = Vec::new();
    for column in ["b1", "b2", "b3", "b4", "b5"] {
        b.push(format!("{:?}", curve.maybe(column)?.unwrap_or(0.0)));
    }
    let out = match (curve.maybe("out_min")?, curve.maybe("out_max")?) {
        (Some(low), Some(high)) => format!("Some(({low:?}, {high:?}))"),
        _ => "None".to_owned(),
    };
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
    let place = format!("{form} {region}");
    let cite = sources.cite(
        curve,
        curve.text("source_id")?,
        &place,
        grade(curve, "grade")?,
    )?;
    Ok(format!(
        "HeightRow {{ form: Form::{variant}, b: [{}], out: {out}, peak: {}, region: {region:?}, cite: {cite} }}",
        b.join(", "),
        emit::maybe(peak),
    ))
}

fn budbreak(
    row: &Row<'_>,
    tables: &Tables,
    sources: &Sources,
) -> Result<(String, String, String), Problem> {
    let species = row.text("gdd_species")?;
    let none = || emit::cite("own", "no date model", Grade::Assumption);
    if species.is_empty() {
        let monocot = row.text("bark_row")?.is_empty();
        let wood = if monocot {
            "None"
        } else {
            "Some(WoodClass::EvergreenBroadleaf)"
        };
        return Ok((wood.to_owned(), "None".to_owned(), none()));
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
        "ring" => "Ring",
        "diffuse" => "Diffuse",
        "conifer" => "Conifer",
        other => return Err(found.problem(format!("wood_class: \"{other}\" is not known"))),
    };
    let value = found.within("value", 10.0, 900.0)?;
    if (value - row.number("gdd_value")?).abs() > 0.5 {
        return Err(row.problem("gdd_value differs from the row that it names"));
    }
    let grade = grade(&found, "grade")?;
    let id = found
        .text("source_id")?
        .split([';', '+'])
        .next()
        .unwrap_or("");
    let (id, grade) = if grade == Grade::Assumption {
        ("own", grade)
    } else {
        (id, grade)
    };
    let cite = sources.cite(&found, id, "degree-days to budbreak", grade)?;
    Ok((
        format!("Some(WoodClass::{wood})"),
        format!("Some({value:?})"),
        cite,
    ))
}

fn sprouting(row: &Row<'_>, tables: &Tables) -> Result<String, Problem> {
    let symbol = row.text("sprout_symbol")?;
    let variants: Vec<&str> = row.text("sprout_variants")?.split(';').collect();
    let mut text = String::from("&[");
    for sprout in tables.sprout.rows() {
        let variant = sprout.text("fvs_variant")?;
        let wanted = !symbol.is_empty()
            && sprout.text("usda_symbol")? == symbol
            && variants.contains(&variant)
            && !sprout.text("basis")?.contains("CODE DEFAULT");
        if wanted {
            let p = |column: &str| sprout.within(column, 0.0, 1.0);
            let _ = write!(
                text,
                "SproutRow {{ variant: {variant:?}, p: [{:?}, {:?}, {:?}, {:?}] }}, ",
                p("p_sprout_dbh4in")?,
                p("p_sprout_dbh8in")?,
                p("p_sprout_dbh12in")?,
                p("p_sprout_dbh20in")?
            );
        }
    }
    text.push(']');
    Ok(text)
}

fn durability(name: &str, tables: &Tables) -> Result<&'static str, Problem> {
    let Some(row) = tables.durability.find("scientific_name", name) else {
        return Ok("C");
    };
    grade(&row, "grade")?;
    Ok(match row.text("class")? {
        "A" => "A",
        "B" => "B",
        "C" => "C",
        "D" => "D",
        other => return Err(row.problem(format!("class: \"{other}\" is not known"))),
    })
}

fn warn_states(name: &str, tables: &Tables) -> Result<String, Problem> {
    Ok(match tables.status.find("scientific_name", name) {
        Some(row) => emit::texts(
            row.text("warn_states")?
                .split(' ')
                .chain(row.text("native_provinces")?.split(' '))
                .filter(|code| !code.is_empty()),
        ),
        None => "&[]".to_owned(),
    })
}

/// Native look-alikes with a mark that was read in a source; marks from memory are never shown as sourced.
fn look_alikes(name: &str, tables: &Tables) -> Result<String, Problem> {
    let Some(row) = tables.identification.find("scientific_name", name) else {
        return Ok("&[]".to_owned());
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
    let mut text = String::from("&[");
    if Grade::parse(row.text("grade")?) != Some(Grade::Memory) {
        for ((other, mark), native) in others.iter().zip(marks).zip(native) {
            if native == "yes" {
                let mark = mark.split_once(": ").map_or(mark, |(_, mark)| mark);
                let _ = write!(
                    text,
                    "LookAlike {{ scientific: {other:?}, mark: {mark:?}, native: true }}, "
                );
            }
        }
    }
    text.push(']');
    Ok(text)
}

fn deaths(name: &str, tables: &Tables, sources: &Sources) -> Result<String, Problem> {
    let mut text = String::from("&[");
    for row in tables.mortality.rows() {
        if !split_names(row.text("species")?)
            .iter()
            .any(|listed| listed == name)
        {
            continue;
        }
        let id = row.text("source_id")?.split(';').next().unwrap_or("");
        let graded = grade(&row, "grade")?;
        sources.cite(&row, id, "", graded)?;
        if graded == Grade::Memory {
            continue;
        }
        let _ = write!(
            text,
            "DeathRow {{ n: {:?}, dbh: {:?}, ring: {:?}, season: {:?}, after: {:?}, dead: {:?}, source: {id:?} }}, ",
            row.text("n")?,
            row.text("dbh_range")?,
            row.text("girdle_type")?,
            row.text("season")?,
            row.text("months_or_seasons_after")?,
            row.text("percent_dead")?,
        );
    }
    text.push(']');
    Ok(text)
}

fn traits(
    name: &str,
    tables: &Tables,
    sources: &Sources,
) -> Result<(String, Option<f64>), Problem> {
    let mut marks = Vec::new();
    let mut minimum = None;
    for row in tables.traits.rows() {
        if row.text("scientific_name")? != name {
            continue;
        }
        sources.cite(
            &row,
            row.text("source_id")?,
            row.text("place")?,
            grade(&row, "grade")?,
        )?;
        let word = row.text("trait")?;
        if word == "ring_minimum_mm" {
            minimum = Some(row.within("value", 100.0, 500.0)?);
            continue;
        }
        let mark = Trait::parse(word)
            .ok_or_else(|| row.problem(format!("trait: \"{word}\" is not known")))?;
        marks.push(format!("Trait::{mark:?}"));
    }
    Ok((marks.join(", "), minimum))
}

fn unknown_species(row: &Row<'_>, sources: &Sources, out: &mut String) -> Result<(), Problem> {
    let key = row.text("key")?;
    let bark_cite = sources.cite(
        row,
        row.text("bark_source")?,
        row.text("bark_place")?,
        Grade::Related,
    )?;
    let own = emit::cite("own", "unknown species", Grade::Assumption);
    let names: Vec<&str> = [key]
        .into_iter()
        .chain(row.text("names")?.split(';').map(str::trim))
        .collect();
    let _ = writeln!(
        out,
        "Species {{ scientific: {key:?}, name: {:?}, names: {}, code: \"\", unknown: true, group: Group::{}, \
         basal: Vigor::{}, suckering: Vigor::{}, suitability: Suitability::Unknown, response: {own}, \
         bark: Some(Bark {{ coefficient: {:?}, confidence: Confidence::Poor, cite: {bark_cite} }}), heights: &[], \
         heights_borrowed: false, crowns: &[], mature_height_ft: None, urban_height_ft: None, \
         wood: Some(WoodClass::Unknown), budbreak_sum: None, budbreak: {own}, sprouting: &[], \
         durability: Durability::C, warn_states: &[], look_alikes: &[], deaths: &[], traits: &[], \
         ring_minimum_mm: None, cautions: &[] }},",
        row.text("name")?,
        emit::texts(names),
        group(row)?,
        vigor(row, "basal_sprouting")?,
        vigor(row, "root_suckering")?,
        row.within("bark_coefficient", 0.005, 0.12)?,
    );
    Ok(())
}
