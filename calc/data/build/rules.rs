//! Rules, cautions, outlook, users, restrictions, sources.

use crate::pack::Pack;
use crate::table::{Problem, Row, Table};
use crate::tags;
use calc::models::cautions::When;
use calc::models::condition::Condition;
use calc::models::outlook::{OutlookClass, SizeClass};
use calc::terms::cite::Grade;
use calc::terms::method::Cell;
use std::cell::RefCell;
use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;

/// The sources that may be cited.
pub struct Sources {
    lines: BTreeMap<String, (String, Grade)>,
    cited: RefCell<BTreeSet<String>>,
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
        Ok(Self {
            lines,
            cited: RefCell::default(),
        })
    }

    /// What a source is called on the page.
    pub fn label(&self, id: &str) -> Option<&str> {
        self.lines.get(id).map(|(label, _)| label.as_str())
    }

    /// Packs a cite, no better than its source allows.
    pub fn cite(
        &self,
        pack: &mut Pack,
        row: &Row<'_>,
        id: &str,
        place: &str,
        grade: Grade,
    ) -> Result<(), Problem> {
        let grade = self.check(row, id, grade)?;
        self.name(pack, id);
        pack.text(place);
        pack.one_of(tags::GRADES, &grade);
        Ok(())
    }

    /// Packs the id of a source, which then has a label.
    pub fn name(&self, pack: &mut Pack, id: &str) {
        self.label_is_shown(id);
        pack.text(id);
    }

    fn label_is_shown(&self, id: &str) {
        self.cited.borrow_mut().insert(id.to_owned());
    }

    /// The grade that a value from a source may carry.
    pub fn check(&self, row: &Row<'_>, id: &str, grade: Grade) -> Result<Grade, Problem> {
        let (_, ceiling) = self
            .lines
            .get(id)
            .ok_or_else(|| row.problem(format!("the source \"{id}\" is not in sources.csv")))?;
        Ok(grade.max(*ceiling))
    }

    /// Packs `A01@Table 1;B22@summary`, or ids alone.
    pub fn cites(
        &self,
        pack: &mut Pack,
        row: &Row<'_>,
        text: &str,
        grade: Grade,
    ) -> Result<(), Problem> {
        let parts: Vec<&str> = text
            .split(';')
            .map(str::trim)
            .filter(|part| !part.is_empty())
            .collect();
        if parts.is_empty() {
            return Err(row.problem("a source is needed"));
        }
        pack.len(parts.len());
        for part in parts {
            let (id, place) = part.split_once('@').unwrap_or((part, ""));
            self.cite(pack, row, id.trim(), place, grade)?;
        }
        Ok(())
    }

    /// Packs the labels of the sources that something cites: a table, or the code of the models.
    pub fn write(&self, core: &Path, pack: &mut Pack) {
        let mut cited = self.cited.borrow().clone();
        cited.extend(["own", "practice", "you"].map(str::to_owned));
        cited.extend(in_code(core));
        let lines: Vec<_> = self
            .lines
            .iter()
            .filter(|(id, _)| cited.contains(*id))
            .collect();
        pack.len(lines.len());
        for (id, (label, _)) in lines {
            pack.text(id);
            pack.text(label);
        }
    }
}

/// The ids that the models cite themselves: `cite("A01", …)`.
fn in_code(folder: &Path) -> Vec<String> {
    let mut ids = Vec::new();
    for entry in std::fs::read_dir(folder).into_iter().flatten().flatten() {
        let path = entry.path();
        if path.is_dir() {
            ids.extend(in_code(&path));
        } else if let Ok(code) = std::fs::read_to_string(&path) {
            ids.extend(code.split("cite(").skip(1).filter_map(|rest| {
                let rest = rest.trim_start().strip_prefix('"')?;
                Some(rest.split('"').next()?.to_owned())
            }));
        }
    }
    ids
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
    Grade::of_table(text).ok_or_else(|| row.problem(format!("{column}: \"{text}\" is no grade")))
}

pub fn methods(content: &Path, sources: &Sources, pack: &mut Pack) -> Result<(), Problem> {
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
    pack.len(table.rows().count());
    for row in table.rows() {
        let id = row.text("id")?;
        let condition = Condition::parse(id)
            .ok_or_else(|| row.problem(format!("the code has no condition \"{id}\"")))?;
        pack.one_of(Condition::ALL, &condition);
        for column in columns {
            let text = row.text(column)?;
            let cell = Cell::parse(text).ok_or_else(|| {
                row.problem(format!(
                    "{column}: \"{text}\" is not one of . P N R with * or !"
                ))
            })?;
            let tag = (0..16).find(|tag| tags::cell(*tag) == cell);
            pack.tag(tag.expect("a cell has four bits"));
        }
        sources.cites(pack, &row, row.text("cites")?, Grade::Published)?;
        seen.push(id);
    }
    match Condition::IDS.iter().find(|id| !seen.contains(id)) {
        Some(missing) => {
            let last = table.rows().last().expect("methods.csv has rows");
            Err(last.problem(format!("the condition \"{missing}\" has no row")))
        }
        None => Ok(()),
    }
}

/// The constants in the order of the reader; `name.low` and so on for three points.
const ORDER: &[&str] = &[
    "ring.least_mm",
    "ring.most_mm",
    "ring.closure_slow_mm",
    "ring.closure_ordinary_mm",
    "ring.closure_fast_mm",
    "ring.closure_factor",
    "ring.seasons_short",
    "ring.seasons_long",
    "ring.seasons_large",
    "ring.large_mm",
    "ring.seasons_spared",
    "ring.least_share",
    "height.hazard",
    "height.tall",
    "height.shrub",
    "height.shrub_default_ft",
    "height.ask_below",
    "height.ask_above",
    "reach.can_land",
    "reach.zone",
    "reach.zone_downhill",
    "reach.steep",
    "reach.too_steep",
    "reach.too_steep_heights",
    "reach.people_out",
    "reach.line_ft",
    "reach.line_step_in",
    "reach.line_step_kv",
    "reach.line_base_kv",
    "reach.small_mm",
    "reach.small_m",
    "effort.fixed.*",
    "effort.score_thin.*",
    "effort.score_medium.*",
    "effort.score_thick.*",
    "effort.score_thin_mm",
    "effort.score_medium_mm",
    "effort.score_thick_mm",
    "effort.peel.*",
    "effort.scrape.*",
    "effort.tight.*",
    "effort.delays.*",
    "effort.limbs.*",
    "effort.limby_none_ft",
    "effort.limby_some_ft",
    "effort.limby_many_ft",
    "effort.walk_min",
    "effort.walk_m_per_min",
    "effort.practised",
    "effort.visit.*",
    "effort.sticking_likely",
    "effort.sticking_high",
    "base_over_dbh",
];

pub fn constants(content: &Path, sources: &Sources, pack: &mut Pack) -> Result<(), Problem> {
    let table = Table::read(content, "rules", "constants")?;
    let mut values: BTreeMap<&str, f64> = BTreeMap::new();
    for row in table.rows() {
        let name = row.text("name")?;
        for id in row.text("source_id")?.split(';') {
            sources.check(&row, id.trim(), grade(&row, "grade")?)?;
            sources.label_is_shown(id.trim());
        }
        if row.text("place")?.is_empty() {
            return Err(row.problem("place is empty"));
        }
        if values.insert(name, row.number("value")?).is_some() {
            return Err(row.problem(format!("{name} stands twice")));
        }
    }
    let first = table.rows().next().expect("constants.csv has rows");
    for name in ORDER {
        let parts = match name.strip_suffix('*') {
            Some(stem) => vec![
                format!("{stem}low"),
                format!("{stem}likely"),
                format!("{stem}high"),
            ],
            None => vec![(*name).to_owned()],
        };
        for part in parts {
            let value = values
                .remove(part.as_str())
                .ok_or_else(|| first.problem(format!("the constant {part} is missing")))?;
            pack.number(value);
        }
    }
    if let Some(extra) = values.keys().next() {
        let row = table.find("name", extra).unwrap_or(first);
        return Err(row.problem(format!("nothing reads the constant {extra}")));
    }
    for value in timing(content)?.values() {
        pack.number(*value);
    }
    Ok(())
}

/// The timing constants: the type itself says which names it takes.
fn timing(content: &Path) -> Result<calc::timing::Constants, Problem> {
    let table = Table::read(content, "rules", "timing_constants")?;
    let first = table.rows().next().expect("timing_constants.csv has rows");
    let mut pairs = Vec::new();
    for row in table.rows() {
        grade(&row, "grade")?;
        pairs.push((row.text("name")?, row.number("value")?));
    }
    calc::timing::Constants::from_pairs(pairs.iter().copied()).map_err(|what| first.problem(what))
}

pub fn cautions(content: &Path, sources: &Sources, pack: &mut Pack) -> Result<(), Problem> {
    let table = Table::read(content, "evidence", "cautions")?;
    pack.len(table.rows().count());
    for row in table.rows() {
        let when = match row.text("when")? {
            "stop" => When::Stop,
            "before" => When::Before,
            "work" => When::Work,
            "after" => When::After,
            "law" => When::Law,
            other => return Err(row.problem(format!("when: \"{other}\" is not known"))),
        };
        let input = row.text("input")?;
        let decided = input.starts_with("from the question") || input == "always";
        if !decided && !input.starts_with("none") {
            return Err(row.problem(format!("input: \"{input}\" is not known")));
        }
        pack.text(row.text("id")?);
        pack.prose(row.text("plain_text_in_your_own_words")?);
        pack.prose(row.text("defers_to")?.trim_matches('-').trim());
        pack.one_of(tags::WHENS, &when);
        pack.flag(decided);
        sources.cites(pack, &row, row.text("source_id")?, grade(&row, "grade")?)?;
    }
    Ok(())
}

fn size(row: &Row<'_>) -> Result<SizeClass, Problem> {
    Ok(match row.text("size")? {
        "all" => SizeClass::All,
        "<6 in" => SizeClass::Small,
        "6-10 in" => SizeClass::Middle,
        ">10 in" => SizeClass::Large,
        "<10 in" => SizeClass::UnderTen,
        other => return Err(row.problem(format!("size: \"{other}\" is not known"))),
    })
}

fn share(pack: &mut Pack, row: &Row<'_>, prefix: &str) -> Result<(), Problem> {
    let low = row.within(&format!("{prefix}low"), 0.0, 100.0)?;
    let high = row.within(&format!("{prefix}high"), low, 100.0)?;
    let likely = row.maybe(&format!("{prefix}likely"))?;
    if likely.is_some_and(|likely| !(low..=high).contains(&likely)) {
        return Err(row.problem("the likely value lies outside its range"));
    }
    pack.number(low);
    pack.maybe(likely);
    pack.number(high);
    Ok(())
}

pub fn outlook(content: &Path, sources: &Sources, pack: &mut Pack) -> Result<(), Problem> {
    let table = Table::read(content, "evidence", "outlook")?;
    pack.len(table.rows().count());
    for row in table.rows() {
        let class = match row.text("class")? {
            "SUITABLE conifer" => OutlookClass::SuitableConifer,
            "SUITABLE hardwood" => OutlookClass::SuitableHardwood,
            "FOLLOWUP" => OutlookClass::Followup,
            "CONDITIONAL red oak group" => OutlookClass::RedOak,
            "CONDITIONAL white oak group" => OutlookClass::WhiteOak,
            "CONDITIONAL clones and shrubs (ringed stem)" => OutlookClass::CloneOrShrub,
            "NOT_ALONE (ringed stem; roots live on)" => OutlookClass::NotAlone,
            "PARTIAL RING, any class" => OutlookClass::Partial,
            other => return Err(row.problem(format!("class: \"{other}\" is not known"))),
        };
        pack.one_of(tags::CLASSES, &class);
        pack.one_of(tags::SIZES, &size(&row)?);
        for season in ["s1_", "s2_", "s3_"] {
            share(pack, &row, season)?;
        }
        pack.number(row.within("second_ring_low", 0.0, 100.0)?);
        pack.number(row.within("second_ring_high", 0.0, 100.0)?);
        for note in ["anchors", "our_own_assumption"] {
            pack.prose(&crate::guides::told(row.text(note)?, sources));
        }
        crate::guides::anchors(&row, sources, pack)?;
    }
    let table = Table::read(content, "evidence", "outlook_species")?;
    let rows: Vec<(Row<'_>, String)> = table
        .rows()
        .flat_map(|row| {
            let names = row
                .text("scientific_name")
                .map(split_names)
                .unwrap_or_default();
            names.into_iter().map(move |name| (row, name))
        })
        .collect();
    pack.len(rows.len());
    for (row, name) in &rows {
        pack.text(name);
        pack.one_of(tags::SIZES, &size(row)?);
        pack.text(row.text("season")?);
        share(pack, row, "")?;
        pack.text(row.text("n")?);
        pack.prose(row.text("note")?);
        sources.cites(pack, row, row.text("source_ids")?, grade(row, "grade")?)?;
    }
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

/// The rows of a table with their grades, but for what is only remembered: it is never shown as sourced, so it stays
/// out of the bundle.
pub fn shown(table: &Table) -> Result<Vec<(Row<'_>, Grade)>, Problem> {
    let mut rows = Vec::new();
    for row in table.rows() {
        let grade = grade(&row, "grade")?;
        if grade != Grade::Memory {
            rows.push((row, grade));
        }
    }
    Ok(rows)
}

pub fn cavity_users(content: &Path, sources: &Sources, pack: &mut Pack) -> Result<(), Problem> {
    let regions = Table::read(content, "evidence", "regions")?;
    let table = Table::read(content, "evidence", "cavity_users")?;
    let rows = shown(&table)?;
    pack.len(rows.len());
    for (row, grade) in rows {
        let words = row.text("region")?;
        let region = regions
            .find("region_text", words)
            .ok_or_else(|| row.problem(format!("region: \"{words}\" is not in regions.csv")))?;
        pack.text(row.text("common_name")?);
        pack.texts(region.text("codes")?.split(' '));
        pack.maybe(row.maybe("min_dbh_in")?.or(row.maybe("typical_dbh_in")?));
        pack.maybe(row.maybe("min_height_ft")?);
        pack.prose(row.text("note")?);
        sources.cite(pack, &row, row.text("source_id")?, "", grade)?;
    }
    Ok(())
}

fn month_day(pack: &mut Pack, row: &Row<'_>, column: &str) -> Result<(), Problem> {
    let text = row.text(column)?;
    let parsed = text
        .split_once('-')
        .and_then(|(month, day)| Some((month.parse::<u8>().ok()?, day.parse::<u8>().ok()?)))
        .filter(|(month, day)| (1..=12).contains(month) && (1..=31).contains(day));
    let Some((month, day)) = parsed else {
        return Err(row.problem(format!("{column}: \"{text}\" is not a month and a day")));
    };
    pack.tag(usize::from(month));
    pack.tag(usize::from(day));
    Ok(())
}

pub fn restrictions(content: &Path, sources: &Sources, pack: &mut Pack) -> Result<(), Problem> {
    use calc::timing::closed_months::{Scope, Topic};
    let topic = |row: &Row<'_>| {
        let word = row.text("kind")?;
        Topic::parse(word).ok_or_else(|| row.problem(format!("kind: \"{word}\" is not known")))
    };
    let codes = |pack: &mut Pack, text: &str| {
        let codes: Vec<&str> = text.split(' ').filter(|code| !code.is_empty()).collect();
        pack.texts(codes);
    };
    let table = Table::read(content, "rules", "seasonal_restrictions")?;
    pack.len(table.rows().count());
    for row in table.rows() {
        month_day(pack, &row, "from_md")?;
        month_day(pack, &row, "to_md")?;
        pack.text(row.text("jurisdiction")?);
        codes(pack, row.text("codes")?);
        pack.one_of(tags::TOPICS, &topic(&row)?);
        let scope = row.text("scope")?;
        let scope = Scope::parse(scope)
            .ok_or_else(|| row.problem(format!("scope: \"{scope}\" is not known")))?;
        pack.one_of(tags::SCOPES, &scope);
        pack.prose(row.text("force")?);
        let grade = grade(&row, "grade")?;
        let id = row.text("source_id")?.split(';').next().unwrap_or("");
        let id = if grade == Grade::Assumption {
            "own"
        } else {
            id
        };
        sources.cite(pack, &row, id, row.text("source")?, grade)?;
    }
    let table = Table::read(content, "rules", "disease_regions")?;
    pack.len(table.rows().count());
    for row in table.rows() {
        pack.one_of(tags::TOPICS, &topic(&row)?);
        codes(pack, row.text("known_only_in")?);
        codes(pack, row.text("not_known_in")?);
    }
    Ok(())
}
