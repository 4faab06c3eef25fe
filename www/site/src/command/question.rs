//! Reads a question from JSON, and today from the clock: the core has neither.

use calc::question::{Code, Problem, Text, Typed};
use calc_view::words::{m, scientific_of};
use serde_json::error::Category;
use std::time::{SystemTime, UNIX_EPOCH};

/// Reads the JSON of a question; a day that is not in it, today, comes from
/// the clock (in UTC).
///
/// # Errors
/// The one thing that is wrong with the JSON: its field as far as it is known,
/// and the line and column.
pub(crate) fn from_json(bytes: &[u8]) -> Result<Typed, JsonProblem> {
    let text = std::str::from_utf8(bytes).map_err(|error| {
        let line = bytes[..error.valid_up_to()]
            .iter()
            .filter(|byte| **byte == b'\n')
            .count()
            + 1;
        JsonProblem {
            problem: Problem::new("", Code::NotJson, ""),
            message: m::command_not_utf8(line.to_string()),
        }
    })?;
    // Some editors begin a file with a byte order mark.
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    if !text.trim_start().starts_with(['{']) {
        return Err(JsonProblem {
            problem: Problem::new("", Code::NotJson, text.trim()),
            message: m::COMMAND_NOT_OBJECT.into(),
        });
    }
    let mut reader = serde_json::Deserializer::from_str(text);
    let mut typed: Typed = serde_path_to_error::deserialize(&mut reader).map_err(|error| {
        let path = error.path().to_string();
        json_problem(&path, error.inner())
    })?;
    reader.end().map_err(|error| json_problem("", &error))?;
    if typed.today.is_none() {
        typed.today = Some(Text(today()));
    }
    Ok(typed)
}

/// The question with its tree by its scientific name, where it has the name of the language in use: the core knows those
/// of English.
pub(crate) fn with_scientific_name(mut typed: Typed) -> Typed {
    if let Some(name) = &typed.species
        && let Some(scientific) = scientific_of(&name.0)
    {
        typed.species = Some(scientific.into());
    }
    typed
}

/// A problem of the JSON itself, worded here: line and column are known to
/// nobody else.
#[derive(Debug)]
pub(crate) struct JsonProblem {
    /// Field and code.
    pub problem: Problem,
    /// What is wrong, where, and what to do.
    pub message: String,
}

fn json_problem(path: &str, error: &serde_json::Error) -> JsonProblem {
    let (line, column) = (error.line().to_string(), error.column().to_string());
    // The reader ends its message with the place, which stands first here.
    let whole = error.to_string();
    let what = whole
        .rsplit_once(" at line ")
        .map_or(whole.as_str(), |(what, _)| what);
    let field = if matches!(path, "." | "?") { "" } else { path };
    let (code, message) = if error.classify() != Category::Data {
        let gaps = m::CommandNotJson {
            line,
            column,
            why: what,
        };
        (Code::NotJson, m::command_not_json(gaps))
    } else if let Some(rest) = what.strip_prefix("unknown field ") {
        let (name, known) = rest.split_once(", expected ").unwrap_or((rest, ""));
        let gaps = m::CommandNoSuchName {
            line,
            column,
            name: name.replace('`', ""),
            known: known.trim_start_matches("one of ").replace('`', ""),
        };
        (Code::UnknownKey, m::command_no_such_name(gaps))
    } else {
        let gaps = m::CommandWrongType {
            line,
            column,
            why: what,
        };
        (Code::WrongType, m::command_wrong_type(gaps))
    };
    JsonProblem {
        problem: Problem::new(field, code, ""),
        message,
    }
}

/// The year of today, UTC.
pub(crate) fn this_year() -> i32 {
    today()
        .split('-')
        .next()
        .and_then(|year| year.parse().ok())
        .unwrap_or(2027)
}

/// Today in UTC as `2027-06-12`.
pub(crate) fn today() -> String {
    calc::terms::day::iso(today_day())
}

/// Today in UTC.
pub(crate) fn today_day() -> chrono::NaiveDate {
    let seconds = SystemTime::now()
        .duration_since(UNIX_EPOCH)
        .map_or(0, |since| since.as_secs());
    let days = i32::try_from(seconds / 86_400).unwrap_or(i32::MAX);
    // 1970-01-01 is day 719,163 of the Gregorian calendar counted from 0001-01-01 as day 1.
    chrono::NaiveDate::from_num_days_from_ce_opt(days.saturating_add(719_163)).unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn problem(text: &str) -> (String, &'static str, String) {
        let wrong = from_json(text.as_bytes()).expect_err(text);
        (
            wrong.problem.field,
            wrong.problem.code.name(),
            wrong.message,
        )
    }

    #[test]
    fn a_question_is_read_and_today_is_filled_in() {
        let typed = from_json(
            "\u{feff} {\"version\":1,\"species\":\"ash\",\"stems\":[{\"diameter\":12}]}".as_bytes(),
        )
        .unwrap();
        assert_eq!(typed.species, Some("ash".into()));
        assert_eq!(typed.stems[0].diameter, Some("12".into()));
        let today = typed.today.unwrap().0;
        assert!(
            today.len() == 10 && today.as_str() > "2026-01-01",
            "{today}"
        );
        let typed = from_json(br#"{"today":"2027-06-12"}"#).unwrap();
        assert_eq!(typed.today, Some("2027-06-12".into()));
    }

    #[test]
    fn an_unknown_key_is_named_with_its_place_and_the_keys_there_are() {
        let (field, code, message) =
            problem("{\"stems\":[{\"diameter\":\"1\"},\n{\"girht\":\"3\"}]}");
        assert_eq!((field.as_str(), code), ("stems[1].girht", "unknown_key"));
        assert!(
            message.starts_with("Line 2, column ") && message.contains("`girht`"),
            "{message}"
        );
        assert!(
            message.contains("diameter, girth, live_share, bark"),
            "{message}"
        );
    }

    #[test]
    fn a_wrong_type_names_its_field() {
        let (field, code, message) = problem(r#"{"stems":[{"diameter":true}]}"#);
        assert_eq!((field.as_str(), code), ("stems[0].diameter", "wrong_type"));
        assert!(message.contains("text as typed"), "{message}");
        assert_eq!(problem(r#"{"version":1,"version":1}"#).1, "wrong_type");
    }

    #[test]
    fn what_is_not_json_says_where() {
        for text in [
            "",
            "[]",
            "12",
            "{",
            "{\"version\":1}x",
            "{'version':1}",
            "{\"version\":NaN}",
        ] {
            let (_, code, message) = problem(text);
            assert_eq!(code, "not_json", "{text}");
            assert!(message.starts_with("Line 1"), "{text}: {message}");
        }
        let wrong = from_json(b"{\"a\":\n\"\xff\"}").unwrap_err();
        assert!(wrong.message.starts_with("Line 2: "), "{}", wrong.message);
    }
}
