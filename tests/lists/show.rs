//! What came of a list, in print: compared with the file beside it, line by line.

use calc::question::Typed;
use calc_list::{Column, Decisions, Is, ListContext, NotList, Row, Whole, letter, read_whole};
use std::fmt::Write as _;
use std::path::{Path, PathBuf};

/// What is told of a list from outside.
#[derive(Clone, Copy, Default)]
pub(crate) struct Told {
    /// The page is metric.
    pub metric: bool,
    /// The state or country.
    pub region: &'static str,
    /// The file of decisions.
    pub decisions: &'static str,
}

impl Told {
    /// With a file of decisions.
    pub(crate) const fn decided(decisions: &'static str) -> Self {
        Self {
            metric: false,
            region: "",
            decisions,
        }
    }

    /// On a metric page.
    pub(crate) const METRIC: Self = Self {
        metric: true,
        region: "",
        decisions: "",
    };

    pub(crate) fn options(&self) -> ListContext {
        ListContext {
            units: if self.metric {
                calc::terms::quantity::Units::Metric
            } else {
                calc::terms::quantity::Units::Us
            },
            region: Some(self.region.to_owned()).filter(|region| !region.is_empty()),
            today: "2027-05-01".to_owned(),
            names: {
                calc_view::words::message::take_all();
                calc_view::words::message::tree_names()
            },
            ..ListContext::default()
        }
    }

    pub(crate) fn decisions(&self) -> Decisions {
        if self.decisions.is_empty() {
            return Decisions::default();
        }
        serde_json::from_str(self.decisions).expect("a file of decisions")
    }
}

/// The folder of these checks.
pub(crate) fn folder() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("lists")
}

/// A list of a folder as it lies there.
pub(crate) fn file(folder_name: &str, name: &str) -> String {
    let path = folder().join(folder_name).join(name).with_extension("csv");
    std::fs::read_to_string(&path).unwrap_or_else(|error| panic!("{}: {error}", path.display()))
}

/// Reads a list as it was told.
pub(crate) fn read(bytes: &[u8], told: &Told) -> Result<Whole, NotList> {
    read_whole(
        calc_data::whole(),
        bytes,
        &told.options(),
        &told.decisions(),
    )
}

/// Holds what comes of a list against `folder/expected.out`.
pub(crate) fn hold(folder_name: &str, expected: &str, bytes: &[u8], told: &Told) {
    let shown = shown(bytes, told);
    let path = folder()
        .join(folder_name)
        .join(expected)
        .with_extension("out");
    let wanted = std::fs::read_to_string(&path).unwrap_or_default();
    if shown != wanted {
        let differ = shown
            .lines()
            .zip(wanted.lines())
            .position(|(a, b)| a != b)
            .unwrap_or_else(|| shown.lines().count().min(wanted.lines().count()));
        panic!(
            "{folder_name}/{expected}: line {}: \"{}\" came out, \"{}\" should. All of it:\n{shown}",
            differ + 1,
            shown.lines().nth(differ).unwrap_or(""),
            wanted.lines().nth(differ).unwrap_or("")
        );
    }
}

/// All that is known of a list after it was read.
pub(crate) fn shown(bytes: &[u8], told: &Told) -> String {
    let mut out = String::new();
    let list = match read(bytes, told) {
        Ok(list) => list,
        Err(why) => return format!("no list: {}\n", why.name()),
    };
    let layout = &list.opened.layout;
    let _ = writeln!(
        out,
        "{:?}, {:?}, header in row {}, list from row {}",
        list.cut.encoding,
        char::from(list.cut.start.delimiter),
        layout
            .header_row
            .map_or("none".to_owned(), |row| row.to_string()),
        layout.first_row
    );
    if !list.changed.is_empty() {
        let _ = writeln!(out, "changed words: {}", list.changed.join(", "));
    }
    let reading = list.opened.rows.reading();
    for (at, column) in reading.columns.iter().enumerate() {
        let _ = write!(
            out,
            "{} \"{}\": {}",
            letter(at),
            column.header,
            column.is.name()
        );
        if let Some(unit) = column.unit.filter(|_| column.is != Column::Keep) {
            let _ = write!(out, " in {}", unit.sign());
        }
        if column.assumed {
            out.push_str(", assumed");
        }
        out.push('\n');
    }
    for note in &list.opened.notes {
        let _ = writeln!(out, "note {note:?}");
    }
    for stranger in &list.opened.strangers {
        let _ = writeln!(out, "decision names no column: {stranger}");
    }
    for ask in &list.opened.asks {
        let column = ask.column.map_or("file".to_owned(), letter);
        let _ = writeln!(
            out,
            "asks {column} \"{}\", {} rows: {:?}",
            ask.header, ask.rows, ask.what
        );
    }
    for row in &list.rows {
        write_row(&mut out, row);
    }
    if list.opened.asks.is_empty() {
        let counts = &list.counts;
        let _ = writeln!(
            out,
            "{} rows = {} ready + {} to fix + {} blank + {} no trees {:?}",
            counts.rows,
            counts.ready,
            counts.to_fix,
            counts.blank,
            counts.no_trees(),
            counts.not_trees
        );
    }
    out
}

fn write_row(out: &mut String, row: &Row) {
    let _ = write!(out, "{} [{}] ", row.row, row.tag.tree_id);
    match &row.is {
        Is::Tree(typed, _) => out.push_str(&of_tree(typed)),
        Is::ToFix => out.push_str("to fix"),
        Is::NotTree(what) => {
            let _ = write!(out, "no tree: {what}");
        }
        Is::LeftOut => out.push_str("left out"),
    }
    let tag = &row.tag;
    for (name, value) in [
        ("site", tag.site.as_str()),
        ("unit", &tag.unit),
        ("pin", &tag.pin),
    ] {
        if !value.is_empty() {
            let _ = write!(out, " | {name} {value}");
        }
    }
    if tag.status != "planned" {
        let _ = write!(out, " | {}", tag.status);
    }
    if let Some((lat, lon)) = tag.point {
        let _ = write!(out, " | at {lat} {lon}");
    }
    out.push('\n');
    for problem in &row.problems {
        let column = problem.column.map_or(String::new(), letter);
        let _ = writeln!(
            out,
            "    {column} {} {} \"{}\"",
            problem.level.word(),
            problem.code.name(),
            problem.value.chars().take(30).collect::<String>()
        );
    }
}

/// The question of a row without what all rows of a list have.
fn of_tree(typed: &Typed) -> String {
    let mut value = serde_json::to_value(typed).expect("a question is written");
    let object = value.as_object_mut().expect("an object");
    for same in ["version", "units", "today", "region"] {
        object.remove(same);
    }
    let text = |value: &serde_json::Value| value.as_str().unwrap_or("").to_owned();
    let species = object.remove("species").map(|it| text(&it));
    let stems = object.remove("stems").unwrap_or_default();
    let stems = stems.as_array().cloned().unwrap_or_default();
    let stem = |stem: &serde_json::Value| {
        let girth = text(&stem["girth"]);
        let size = match girth.is_empty() {
            true => text(&stem["diameter"]),
            false => format!("girth {girth}"),
        };
        match text(&stem["bark"]) {
            bark if bark.is_empty() => size,
            bark => format!("{size}, bark {bark}"),
        }
    };
    let mut parts = vec![
        species.unwrap_or_default(),
        stems.iter().map(stem).collect::<Vec<_>>().join(" + "),
    ];
    for (name, value) in object {
        let empty = value.is_null()
            || value.as_bool() == Some(false)
            || value.as_array().is_some_and(Vec::is_empty)
            || (name == "date" && value == "year");
        if !empty {
            parts.push(format!("{name} {}", bare(value)));
        }
    }
    parts.join(" | ")
}

/// A value without what is empty in it.
fn bare(value: &serde_json::Value) -> String {
    match value {
        serde_json::Value::String(text) => text.clone(),
        serde_json::Value::Array(all) => all.iter().map(bare).collect::<Vec<_>>().join("; "),
        serde_json::Value::Object(object) => object
            .values()
            .filter(|value| !value.is_null() && value.as_bool() != Some(false))
            .map(bare)
            .collect::<Vec<_>>()
            .join(" "),
        other => other.to_string(),
    }
}
