//! Rules, cautions, outlook, users, restrictions, sources.

use crate::emit;
use crate::table::{Problem, Row, Table};
use calc::evidence::Grade;
use calc::model::method::{Cell, Condition};
use std::collections::BTreeMap;
use std::fmt::Write as _;
use std::path::Path;

/// The sources that may be cited.
pub struct Sources {
    lines: BTreeMap<String, (String, Grade)>,
}

impl Sources {
    pub fn read(content: &Path) -> Result<Self, Problem> {
        let table = Table::read(content, "evidence", "sources")?;
        let mut lines = BTreeMap::new();
        for row in table.rows() {
            let id = row.text("id")?;
            let ceiling = grade(&row, "grade_ceiling")?;
            if lines
                .insert(id.to_owned(), (label(&row)?, ceiling))
                .is_some()
            {
                return Err(row.problem(format!("the id {id} stands twice")));
            }
        }
        for (id, label, grade) in [
            ("own", "our own assumption", Grade::Assumption),
            ("practice", "common practice, no source", Grade::Practice),
            ("you", "what you told us", Grade::Measured),
        ] {
            lines.insert(id.to_owned(), (label.to_owned(), grade));
        }
        Ok(Self { lines })
    }

    /// A cite, no better than its source allows.
    pub fn cite(
        &self,
        row: &Row<'_>,
        id: &str,
        place: &str,
        grade: Grade,
    ) -> Result<String, Problem> {
        let (_, ceiling) = self
            .lines
            .get(id)
            .ok_or_else(|| row.problem(format!("the source \"{id}\" is not in sources.csv")))?;
        Ok(emit::cite(id, place, grade.max(*ceiling)))
    }

    /// `A01@Table 1;B22@summary`, or ids alone with one place.
    pub fn cites(&self, row: &Row<'_>, text: &str, grade: Grade) -> Result<String, Problem> {
        let mut list = Vec::new();
        for part in text
            .split(';')
            .map(str::trim)
            .filter(|part| !part.is_empty())
        {
            let (id, place) = part.split_once('@').unwrap_or((part, ""));
            // An id in brackets or behind words names a remark, not a source.
            let id = id.trim();
            list.push(self.cite(row, id, place, grade)?);
        }
        if list.is_empty() {
            return Err(row.problem("a source is needed"));
        }
        Ok(format!("&[{}]", list.join(", ")))
    }

    pub fn write(&self, out: &mut String) {
        let _ = writeln!(out, "static SOURCES: &[Source] = &[");
        for (id, (label, _)) in &self.lines {
            let _ = writeln!(out, "Source {{ id: {id:?}, label: {label:?} }},");
        }
        let _ = writeln!(out, "];");
    }
}

/// Author, or who published it, and the year.
fn label(row: &Row<'_>) -> Result<String, Problem> {
    let authors: Vec<&str> = row.text("authors")?.split(';').map(str::trim).collect();
    let who = match authors.as_slice() {
        [""] | [] => row.text("container")?.to_owned(),
        [one] => (*one).to_owned(),
        [one, two] => format!("{one} and {two}"),
        [one, ..] => format!("{one} et al."),
    };
    let who = if who.is_empty() {
        row.text("title")?.to_owned()
    } else {
        who
    };
    let year = row.text("year")?;
    Ok(if year.is_empty() {
        who
    } else {
        format!("{who} {year}")
    })
}

pub fn grade(row: &Row<'_>, column: &str) -> Result<Grade, Problem> {
    let text = row.text(column)?;
    // Where a cell grades several fields the weakest counts.
    Grade::parse(text).ok_or_else(|| row.problem(format!("{column}: \"{text}\" is no grade")))
}

pub fn methods(content: &Path, sources: &Sources, out: &mut String) -> Result<(), Problem> {
    let table = Table::read(content, "rules", "methods")?;
    let columns = [
        "bark_ring",
        "saw_ring",
        "frill",
        "basal_bark",
        "cut_stump",
        "pull_or_dig",
        "fell",
        "repeat_cutting",
        "leave_it",
    ];
    let mut seen = Vec::new();
    let _ = writeln!(out, "static METHOD_RULES: &[MethodRule] = &[");
    for row in table.rows() {
        let id = row.text("id")?;
        let condition = Condition::parse(id)
            .ok_or_else(|| row.problem(format!("the code has no condition \"{id}\"")))?;
        let mut cells = String::new();
        for column in columns {
            let text = row.text(column)?;
            let cell = Cell::parse(text).ok_or_else(|| {
                row.problem(format!(
                    "{column}: \"{text}\" is not one of . P N R with * or !"
                ))
            })?;
            let _ = write!(
                cells,
                "Cell {{ at_most: Level::{:?}, by_professional: {}, holds: {} }}, ",
                cell.at_most, cell.by_professional, cell.holds
            );
        }
        let cites = sources.cites(&row, row.text("cites")?, Grade::Published)?;
        let _ = writeln!(
            out,
            "MethodRule {{ id: {id:?}, condition: Condition::{}, cells: [{cells}], cites: {cites} }},",
            condition.variant()
        );
        seen.push(id);
    }
    let _ = writeln!(out, "];");
    match Condition::IDS.iter().find(|id| !seen.contains(id)) {
        Some(missing) => {
            let last = table.rows().last().expect("methods.csv has rows");
            Err(last.problem(format!("the condition \"{missing}\" has no row")))
        }
        None => Ok(()),
    }
}

pub fn constants(content: &Path, sources: &Sources, out: &mut String) -> Result<(), Problem> {
    let table = Table::read(content, "rules", "constants")?;
    let mut values: BTreeMap<&str, f64> = BTreeMap::new();
    for row in table.rows() {
        let name = row.text("name")?;
        for id in row.text("source_id")?.split(';') {
            sources.cite(&row, id.trim(), row.text("place")?, grade(&row, "grade")?)?;
        }
        if values.insert(name, row.number("value")?).is_some() {
            return Err(row.problem(format!("{name} stands twice")));
        }
    }
    let first = table.rows().next().expect("constants.csv has rows");
    let mut used = Vec::new();
    let mut get = |name: &str| {
        used.push(name.to_owned());
        values
            .get(name)
            .map(|value| format!("{value:?}"))
            .ok_or_else(|| first.problem(format!("the constant {name} is missing")))
    };
    let mut block = |out: &mut String, prefix: &str, kind: &str, names: &[&str]| {
        let _ = write!(out, "{kind} {{ ");
        for name in names {
            let value = get(&format!("{prefix}.{name}"))?;
            let _ = write!(out, "{name}: {value}, ");
        }
        Ok::<(), Problem>(())
    };
    let mut text = String::from("static CONSTANTS: Constants = Constants { ring: ");
    block(
        &mut text,
        "ring",
        "RingConstants",
        &[
            "least_mm",
            "most_mm",
            "closure_factor",
            "seasons_short",
            "seasons_long",
            "seasons_large",
            "large_mm",
            "seasons_spared",
            "least_share",
        ],
    )?;
    text.push_str("closure_mm: CLOSURE }, height: ");
    let height = [
        "hazard",
        "tall",
        "shrub",
        "shrub_default_ft",
        "ask_below",
        "ask_above",
    ];
    block(&mut text, "height", "HeightConstants", &height)?;
    text.push_str("}, reach: ");
    let reach = [
        "can_land",
        "zone",
        "zone_downhill",
        "steep",
        "too_steep",
        "too_steep_heights",
        "people_out",
        "line_ft",
        "line_step_in",
        "line_step_kv",
        "line_base_kv",
        "small_mm",
        "small_m",
    ];
    block(&mut text, "reach", "ReachConstants", &reach)?;
    text.push_str("}, effort: ");
    block(
        &mut text,
        "effort",
        "EffortConstants",
        &["walk_min", "walk_m_per_min", "practised"],
    )?;
    let mut threes = String::new();
    for name in [
        "fixed", "peel", "scrape", "tight", "delays", "limbs", "visit",
    ] {
        let _ = write!(threes, "{name}: ");
        block(
            &mut threes,
            &format!("effort.{name}"),
            "Three",
            &["low", "likely", "high"],
        )?;
        threes.push_str("}, ");
    }
    threes.push_str("score: [");
    for name in ["thin", "medium", "thick"] {
        block(
            &mut threes,
            &format!("effort.score_{name}"),
            "Three",
            &["low", "likely", "high"],
        )?;
        threes.push_str("}, ");
    }
    threes.push_str("], ");
    text.push_str(&threes);
    let mut list = |label: &str, names: &[&str]| {
        let mut items = Vec::new();
        for name in names {
            items.push(get(name)?);
        }
        Ok::<String, Problem>(format!("{label}{}", items.join(", ")))
    };
    let mm = [
        "effort.score_thin_mm",
        "effort.score_medium_mm",
        "effort.score_thick_mm",
    ];
    let limby = [
        "effort.limby_none_ft",
        "effort.limby_some_ft",
        "effort.limby_many_ft",
    ];
    let sticking = ["effort.sticking_likely", "effort.sticking_high"];
    let closure = [
        "ring.closure_slow_mm",
        "ring.closure_ordinary_mm",
        "ring.closure_fast_mm",
    ];
    let _ = write!(
        text,
        "score_mm: [{}], limby_ft: [{}], sticking: ({}) }}, base_over_dbh: {}, timing: {} }};\n\
         const CLOSURE: [f64; 3] = [{}];\n",
        list("", &mm)?,
        list("", &limby)?,
        list("", &sticking)?,
        list("", &["base_over_dbh"])?,
        timing(content)?,
        list("", &closure)?,
    );
    if let Some(extra) = values
        .keys()
        .find(|name| !used.iter().any(|used| used == *name))
    {
        let row = table.find("name", extra).unwrap_or(first);
        return Err(row.problem(format!("nothing reads the constant {extra}")));
    }
    out.push_str(&text);
    Ok(())
}

/// The timing constants: the type itself says which names it takes.
fn timing(content: &Path) -> Result<String, Problem> {
    let table = Table::read(content, "rules", "timing_constants")?;
    let first = table.rows().next().expect("timing_constants.csv has rows");
    let mut pairs = Vec::new();
    for row in table.rows() {
        grade(&row, "grade")?;
        pairs.push((row.text("name")?, row.number("value")?));
    }
    let checked = calc::timing::Constants::from_pairs(pairs.iter().copied())
        .map_err(|what| first.problem(what))?;
    // Its Debug form is the struct literal of plain numbers.
    Ok(format!("calc::timing::{checked:?}"))
}

pub fn cautions(content: &Path, sources: &Sources, out: &mut String) -> Result<(), Problem> {
    let table = Table::read(content, "evidence", "cautions")?;
    let _ = writeln!(out, "static CAUTIONS: &[Caution] = &[");
    for row in table.rows() {
        let when = match row.text("when")? {
            "stop" => "Stop",
            "before" => "Before",
            "work" => "Work",
            "after" => "After",
            "law" => "Law",
            other => return Err(row.problem(format!("when: \"{other}\" is not known"))),
        };
        let input = row.text("input")?;
        let decided = input.starts_with("from the question") || input == "always";
        if !decided && !input.starts_with("none") {
            return Err(row.problem(format!("input: \"{input}\" is not known")));
        }
        let cites = sources.cites(&row, row.text("source_id")?, grade(&row, "grade")?)?;
        let _ = writeln!(
            out,
            "Caution {{ id: {:?}, text: {:?}, defers_to: {:?}, when: When::{when}, decided: {decided}, cites: {cites} }},",
            row.text("id")?,
            row.text("plain_text_in_your_own_words")?,
            row.text("defers_to")?.trim_matches('-').trim(),
        );
    }
    let _ = writeln!(out, "];");
    Ok(())
}

fn size(row: &Row<'_>) -> Result<&'static str, Problem> {
    Ok(match row.text("size")? {
        "all" => "All",
        "<6 in" => "Small",
        "6-10 in" => "Middle",
        ">10 in" => "Large",
        "<10 in" => "UnderTen",
        other => return Err(row.problem(format!("size: \"{other}\" is not known"))),
    })
}

fn share(row: &Row<'_>, prefix: &str) -> Result<String, Problem> {
    let low = row.within(&format!("{prefix}low"), 0.0, 100.0)?;
    let high = row.within(&format!("{prefix}high"), low, 100.0)?;
    let likely = row.maybe(&format!("{prefix}likely"))?;
    if likely.is_some_and(|likely| !(low..=high).contains(&likely)) {
        return Err(row.problem("the likely value lies outside its range"));
    }
    Ok(format!(
        "Share {{ low: {low:?}, likely: {likely:?}, high: {high:?} }}"
    ))
}

pub fn outlook(content: &Path, sources: &Sources, out: &mut String) -> Result<(), Problem> {
    let table = Table::read(content, "evidence", "outlook")?;
    let _ = writeln!(out, "static OUTLOOK: &[OutlookRow] = &[");
    for row in table.rows() {
        let class = match row.text("class")? {
            "SUITABLE conifer" => "SuitableConifer",
            "SUITABLE hardwood" => "SuitableHardwood",
            "FOLLOWUP" => "Followup",
            "CONDITIONAL red oak group" => "RedOak",
            "CONDITIONAL white oak group" => "WhiteOak",
            "CONDITIONAL clones and shrubs (ringed stem)" => "CloneOrShrub",
            "NOT_ALONE (ringed stem; roots live on)" => "NotAlone",
            "PARTIAL RING, any class" => "Partial",
            other => return Err(row.problem(format!("class: \"{other}\" is not known"))),
        };
        let _ = writeln!(
            out,
            "OutlookRow {{ class: OutlookClass::{class}, size: SizeClass::{}, seasons: [{}, {}, {}], \
             second_ring: ({:?}, {:?}), anchors: {:?}, own: {:?} }},",
            size(&row)?,
            share(&row, "s1_")?,
            share(&row, "s2_")?,
            share(&row, "s3_")?,
            row.within("second_ring_low", 0.0, 100.0)?,
            row.within("second_ring_high", 0.0, 100.0)?,
            row.text("anchors")?,
            row.text("our_own_assumption")?,
        );
    }
    let _ = writeln!(out, "];\nstatic OUTLOOK_SPECIES: &[OutlookOverride] = &[");
    let table = Table::read(content, "evidence", "outlook_species")?;
    for row in table.rows() {
        for name in split_names(row.text("scientific_name")?) {
            let cites = sources.cites(&row, row.text("source_ids")?, grade(&row, "grade")?)?;
            let _ = writeln!(
                out,
                "OutlookOverride {{ scientific: {name:?}, size: SizeClass::{}, season: {:?}, share: {}, n: {:?}, note: {:?}, cites: {cites} }},",
                size(&row)?,
                row.text("season")?,
                share(&row, "")?,
                row.text("n")?,
                row.text("note")?,
            );
        }
    }
    let _ = writeln!(out, "];");
    Ok(())
}

/// `Quercus alba; Q. macrocarpa` names two species of one genus.
pub fn split_names(text: &str) -> Vec<String> {
    let genus = text.split(' ').next().unwrap_or("");
    let initial = genus.chars().next().unwrap_or(' ');
    text.split(';')
        .map(|name| {
            let name = name.trim();
            name.strip_prefix(&format!("{initial}. "))
                .map_or_else(|| name.to_owned(), |epithet| format!("{genus} {epithet}"))
        })
        .collect()
}

pub fn cavity_users(content: &Path, sources: &Sources, out: &mut String) -> Result<(), Problem> {
    let regions = Table::read(content, "evidence", "regions")?;
    let table = Table::read(content, "evidence", "cavity_users")?;
    let _ = writeln!(out, "static CAVITY_USERS: &[CavityUser] = &[");
    for row in table.rows() {
        let grade = grade(&row, "grade")?;
        if grade == Grade::Memory {
            // Never shown as sourced, so it stays out of the bundle.
            continue;
        }
        let words = row.text("region")?;
        let region = regions
            .find("region_text", words)
            .ok_or_else(|| row.problem(format!("region: \"{words}\" is not in regions.csv")))?;
        let codes = emit::texts(region.text("codes")?.split(' '));
        let cite = sources.cite(&row, row.text("source_id")?, "", grade)?;
        let _ = writeln!(
            out,
            "CavityUser {{ name: {:?}, regions: {codes}, min_dbh_in: {}, min_height_ft: {}, note: {:?}, cite: {cite} }},",
            row.text("common_name")?,
            emit::maybe(row.maybe("min_dbh_in")?.or(row.maybe("typical_dbh_in")?)),
            emit::maybe(row.maybe("min_height_ft")?),
            row.text("note")?,
        );
    }
    let _ = writeln!(out, "];");
    Ok(())
}

fn month_day(row: &Row<'_>, column: &str) -> Result<String, Problem> {
    let text = row.text(column)?;
    let parsed = text
        .split_once('-')
        .and_then(|(month, day)| Some((month.parse::<u8>().ok()?, day.parse::<u8>().ok()?)))
        .filter(|(month, day)| (1..=12).contains(month) && (1..=31).contains(day));
    match parsed {
        Some((month, day)) => Ok(format!("({month}, {day})")),
        None => Err(row.problem(format!("{column}: \"{text}\" is not a month and a day"))),
    }
}

pub fn restrictions(content: &Path, sources: &Sources, out: &mut String) -> Result<(), Problem> {
    use calc::timing::restrictions::{Scope, Topic};
    let table = Table::read(content, "rules", "seasonal_restrictions")?;
    let _ = writeln!(out, "static RESTRICTIONS: &[Restriction] = &[");
    let topic = |row: &Row<'_>| {
        let word = row.text("kind")?;
        Topic::parse(word).ok_or_else(|| row.problem(format!("kind: \"{word}\" is not known")))
    };
    let codes = |text: &str| emit::texts(text.split(' ').filter(|code| !code.is_empty()));
    for row in table.rows() {
        let grade = grade(&row, "grade")?;
        let id = row.text("source_id")?.split(';').next().unwrap_or("");
        let id = if grade == Grade::Assumption {
            "own"
        } else {
            id
        };
        let scope = row.text("scope")?;
        let scope = Scope::parse(scope)
            .ok_or_else(|| row.problem(format!("scope: \"{scope}\" is not known")))?;
        let _ = writeln!(
            out,
            "Restriction {{ jurisdiction: {:?}, codes: {}, topic: Topic::{:?}, words: {:?}, scope: Scope::{scope:?}, \
             from_md: {}, to_md: {}, force: {:?}, note: {:?}, cite: {} }},",
            row.text("jurisdiction")?,
            codes(row.text("codes")?),
            topic(&row)?,
            row.text("topic")?,
            month_day(&row, "from_md")?,
            month_day(&row, "to_md")?,
            row.text("force")?,
            row.text("note")?,
            sources.cite(&row, id, row.text("source")?, grade)?,
        );
    }
    let _ = writeln!(out, "];\nstatic DISEASE_REGIONS: &[DiseaseRegion] = &[");
    let table = Table::read(content, "rules", "disease_regions")?;
    for row in table.rows() {
        let _ = writeln!(
            out,
            "DiseaseRegion {{ topic: Topic::{:?}, known_only_in: {}, not_known_in: {} }},",
            topic(&row)?,
            codes(row.text("known_only_in")?),
            codes(row.text("not_known_in")?),
        );
    }
    let _ = writeln!(out, "];");
    Ok(())
}
