//! A group's own settings from a file: for `answer --settings`, and to be checked by `settings`.

use crate::{args, terminal};
use anyhow::{Context, Result};
use calc::question::settings::{LARGEST, Settings, Told, Value, read};
use calc_view::words::message::pack;
use calc_view::words::{m, within};
use serde_json::Value as Json;
use std::io::Read as _;
use std::path::{Component, Path};
use std::process::ExitCode;

/// Runs `settings`: what is wrong with a file, in words.
///
/// # Errors
/// When the file can't be read.
pub(crate) fn run(options: &args::Settings) -> Result<ExitCode> {
    within(pack(&options.lang), || judge(options))
}

fn judge(options: &args::Settings) -> Result<ExitCode> {
    let (told, code) = match load(&options.file)? {
        Ok((settings, told)) => {
            let (file, group) = (options.file.as_str(), settings.name.as_str());
            let usable = m::command_usable(m::CommandUsable { file, group });
            terminal::print(&(usable + "\n"))?;
            (lines(&told), ExitCode::SUCCESS)
        }
        Err(told) => (told, ExitCode::from(2)),
    };
    for line in told {
        terminal::print(&format!("{line}\n"))?;
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
    let text = limited(Path::new(file)).with_context(|| m::command_unreadable_settings(file))?;
    // Before it is read as JSON: that takes many times the room.
    if text.len() > LARGEST {
        return Ok(Err(lines(&[Told::too_large()])));
    }
    let json: Json = match serde_json::from_str(text.strip_prefix('\u{feff}').unwrap_or(&text)) {
        Ok(json) => json,
        Err(error) => {
            let whole = error.to_string();
            let what = whole.rsplit_once(" at line ").map_or(&*whole, |it| it.0);
            return Ok(Err(vec![m::command_not_json(m::CommandNotJson {
                line: error.line().to_string(),
                column: error.column().to_string(),
                why: what,
            })]));
        }
    };
    let named = json["species"]["list"].as_str();
    let list = match named.map(|name| beside(file, name)) {
        Some(Beside::Outside) => return Ok(Err(vec![m::COMMAND_OUTSIDE.into()])),
        Some(Beside::Text(text)) => Some(text),
        Some(Beside::None) | None => None,
    };
    let taken = read(calc_data::whole(), &value(&json), list.as_deref());
    Ok(taken.map_err(|told| lines(&told)))
}

/// The text of a file, of a larger one than is taken no more than its beginning.
fn limited(file: &Path) -> std::io::Result<String> {
    let mut bytes = Vec::new();
    let most = LARGEST as u64 + 1;
    std::fs::File::open(file)?
        .take(most)
        .read_to_end(&mut bytes)?;
    if bytes.len() > LARGEST {
        // The last character may be cut in two.
        return Ok(String::from_utf8_lossy(&bytes).into_owned());
    }
    String::from_utf8(bytes).map_err(std::io::Error::other)
}

/// A list of species as `species.list` names it.
enum Beside {
    Text(String),
    /// It can't be had.
    None,
    /// It would be read from somewhere else: settings of other people reach no file but their own.
    Outside,
}

fn beside(file: &str, name: &str) -> Beside {
    let name = Path::new(name);
    let plain = |part| matches!(part, Component::Normal(_) | Component::CurDir);
    if !name.components().all(plain) {
        return Beside::Outside;
    }
    let folder = match Path::new(file).parent() {
        Some(folder) if folder != Path::new("") => folder,
        _ => Path::new("."),
    };
    // Links are followed before the two are compared.
    let (Ok(inside), Ok(list)) = (folder.canonicalize(), folder.join(name).canonicalize()) else {
        return Beside::None;
    };
    if !list.starts_with(inside) {
        return Beside::Outside;
    }
    limited(&list).map_or(Beside::None, Beside::Text)
}

/// What is told, a line each with its place.
pub(crate) fn lines(told: &[Told]) -> Vec<String> {
    let line = |told: &Told| {
        let words = calc_view::settings_told(told);
        let words = match told.refuses() {
            true => words,
            false => m::command_warning(words),
        };
        match &*told.path {
            "" => words,
            path => format!("{path}: {words}"),
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
