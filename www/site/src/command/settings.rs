//! A group's own settings from a file: for `answer --settings`, and to be checked by `settings`.

use crate::args;
use anyhow::{Context, Result};
use calc::question::settings::{Settings, Told, Value, read};
use serde_json::Value as Json;
use std::path::Path;
use std::process::ExitCode;

/// Runs `settings`: what is wrong with a file, in words.
///
/// # Errors
/// When the file can't be read.
pub(crate) fn run(options: &args::Settings) -> Result<ExitCode> {
    let (told, code) = match load(&options.file)? {
        Ok((settings, told)) => {
            println!("{} can be used by {}.", options.file, settings.name);
            (lines(&told), ExitCode::SUCCESS)
        }
        Err(told) => (told, ExitCode::from(2)),
    };
    for line in told {
        println!("{line}");
    }
    Ok(code)
}

/// What was read, and its warnings; or all that is told of refused settings, a line each.
pub(crate) type Loaded = Result<(Settings, Vec<Told>), Vec<String>>;

/// Loads a file, and the list of species beside it that it may name.
///
/// # Errors
/// When the file itself can't be read; what is wrong in it is no such error.
pub(crate) fn load(file: &str) -> Result<Loaded> {
    let text = std::fs::read_to_string(file).with_context(|| {
        format!("{file} could not be read. Give the name of a JSON file of settings")
    })?;
    let json: Json = match serde_json::from_str(text.strip_prefix('\u{feff}').unwrap_or(&text)) {
        Ok(json) => json,
        Err(error) => {
            let whole = error.to_string();
            let what = whole.rsplit_once(" at line ").map_or(&*whole, |it| it.0);
            let (line, column) = (error.line(), error.column());
            return Ok(Err(vec![format!(
                "Line {line}, column {column}: this is not JSON: {what}."
            )]));
        }
    };
    let named = json["species"]["list"].as_str();
    let list = named.and_then(|name| {
        let folder = Path::new(file).parent().unwrap_or(Path::new(""));
        std::fs::read_to_string(folder.join(name)).ok()
    });
    let taken = read(calc_data::whole(), &value(&json), list.as_deref());
    Ok(taken.map_err(|told| lines(&told)))
}

/// What is told, a line each with its place.
pub(crate) fn lines(told: &[Told]) -> Vec<String> {
    let line = |told: &Told| {
        let words = calc_view::settings_told(told);
        let warning = if told.refuses() { "" } else { " (a warning)" };
        match &*told.path {
            "" => format!("{words}{warning}"),
            path => format!("{path}: {words}{warning}"),
        }
    };
    told.iter().map(line).collect()
}

/// JSON as the core's reader takes it.
fn value(json: &Json) -> Value {
    match json {
        Json::Null => Value::Null,
        Json::Bool(held) => Value::Bool(*held),
        Json::Number(number) => Value::Number(number.as_f64().unwrap_or(f64::NAN)),
        Json::String(text) => Value::Text(text.clone()),
        Json::Array(list) => Value::List(list.iter().map(value).collect()),
        Json::Object(map) => {
            let pair = |(key, inner): (&String, &Json)| (key.clone(), value(inner));
            Value::Map(map.iter().map(pair).collect())
        }
    }
}
