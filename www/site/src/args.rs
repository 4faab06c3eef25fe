//! Reads the command line. By hand: there are three commands and a few
//! options, and a message that says what to type is the point of it.

use std::path::PathBuf;

/// What `help` prints.
pub(crate) const HELP: &str = "\
Slipbark: one tree, one answer.

  cargo run --release                          build the site and serve it on this machine
  cargo run --release -- serve [--port N]      the same; port 4747 unless said, 0 picks a free one
  cargo run --release -- serve --dir DIR       serve a folder that was built before, as it is
  cargo run --release -- build --out DIR       write the static site into DIR
  cargo run --release -- answer FILE           answer the question in FILE (JSON), or - for standard input
  cargo run --release -- settings FILE         what is wrong with a group's settings in FILE (JSON), in words
  cargo run --release -- year --place PLACE    when the bark slips there, for every species or for one
  cargo run --release -- help                  this text

Options
  --port N        serve: the port on 127.0.0.1; nothing outside this machine can reach it
  --base /PATH/   serve, build: the path the site will live under; / unless said
  --quiet         serve, build: print only the address or the folder
  --no-offline    build: a site that keeps nothing on the device, and removes what an earlier one kept
  --text          answer: words for people instead of JSON
  --ics           answer: the visits as a calendar file
  --settings FILE answer: under a group's own settings
  --place PLACE   year: latitude, longitude and elevation, as 42.36,-71.06,15 m, or a town, as \"Madison, WI\"
  --species NAME  year: one species; all unless said
  --year N        year: which year; this one unless said
  --csv           year: a table instead of text

Exit codes: 0 done; 1 failed, and the message says what to do; 2 the command line or the question was not understood.
";

/// The port `serve` takes when none is asked for.
pub(crate) const DEFAULT_PORT: u16 = 4747;

/// One command with its options.
#[derive(Debug, PartialEq, Eq)]
pub(crate) enum Command {
    /// Print the help text.
    Help,
    /// Build into the target folder and serve.
    Serve(Serve),
    /// Build into a folder.
    Build(Build),
    /// Answer one question.
    Answer(Answer),
    /// Check a group's settings.
    Settings(Settings),
    /// Lay out a year.
    Year(Year),
}

/// Options of `settings`.
#[derive(Debug, PartialEq, Eq)]
pub(crate) struct Settings {
    /// The file.
    pub file: String,
}

/// Options of `year`.
#[derive(Debug, PartialEq, Eq)]
pub(crate) struct Year {
    /// The place as typed.
    pub place: String,
    /// One species, or all.
    pub species: Option<String>,
    /// Which year.
    pub year: i32,
    /// A table instead of text.
    pub csv: bool,
}

/// Options of `serve`.
#[derive(Debug, PartialEq, Eq)]
pub(crate) struct Serve {
    /// The port on 127.0.0.1; 0 lets the system pick.
    pub port: u16,
    /// A folder to serve as it is, instead of building.
    pub dir: Option<PathBuf>,
    /// The path the site lives under; begins and ends with a slash.
    pub base: String,
    /// Print the address alone.
    pub quiet: bool,
}

/// Options of `build`.
#[derive(Debug, PartialEq, Eq)]
pub(crate) struct Build {
    /// The folder to write.
    pub out: PathBuf,
    /// The path the site lives under; begins and ends with a slash.
    pub base: String,
    /// Whether the site keeps itself on the device.
    pub offline: bool,
    /// Print the folder alone.
    pub quiet: bool,
}

/// Options of `answer`.
#[derive(Debug, PartialEq, Eq)]
pub(crate) struct Answer {
    /// The file with the question, or `-`.
    pub file: String,
    /// Words instead of JSON.
    pub text: bool,
    /// The visits as a calendar file.
    pub ics: bool,
    /// The file of a group's settings.
    pub settings: Option<String>,
}

/// Reads the arguments after the program's name.
///
/// # Errors
/// A message for the person at the keyboard: what was not understood and what
/// to type instead.
pub(crate) fn read(arguments: impl Iterator<Item = String>) -> Result<Command, String> {
    let mut name: Option<String> = None;
    let mut given: Vec<(String, Option<String>)> = Vec::new();
    let mut rest: Vec<String> = Vec::new();
    let mut arguments = arguments.peekable();
    while let Some(argument) = arguments.next() {
        if argument == "-h" || argument == "--help" {
            return Ok(Command::Help);
        }
        if let Some(option) = argument.strip_prefix("--") {
            let (option, value) = match option.split_once('=') {
                Some((option, value)) => (option.to_owned(), Some(value.to_owned())),
                None => (option.to_owned(), None),
            };
            let takes_value = matches!(
                option.as_str(),
                "port" | "dir" | "out" | "base" | "place" | "species" | "year" | "settings"
            );
            let value = if takes_value && value.is_none() {
                arguments.next()
            } else {
                value
            };
            if takes_value && value.is_none() {
                return Err(format!(
                    "--{option} needs a value after it. Type `help` to see how."
                ));
            }
            given.push((option, value));
        } else if name.is_none() && argument != "-" {
            name = Some(argument);
        } else {
            rest.push(argument);
        }
    }
    let name = name.unwrap_or_else(|| "serve".to_owned());
    let allowed: &[&str] = match name.as_str() {
        "serve" => &["port", "dir", "base", "quiet"],
        "build" => &["out", "base", "no-offline", "quiet"],
        "answer" => &["text", "ics", "settings"],
        "settings" => &[],
        "year" => &["place", "species", "year", "csv"],
        "help" => return Ok(Command::Help),
        other => {
            return Err(format!(
                "There is no command `{other}`. The commands are serve, build, answer, settings, year and help."
            ));
        }
    };
    for (option, value) in &given {
        if !allowed.contains(&option.as_str()) {
            return Err(if allowed.is_empty() {
                format!("`{name}` has no options.")
            } else {
                let list = allowed.join(", --");
                format!("`{name}` has no option --{option}. It takes: --{list}.")
            });
        }
        if matches!(
            option.as_str(),
            "quiet" | "text" | "no-offline" | "csv" | "ics"
        ) && value.is_some()
        {
            return Err(format!(
                "--{option} takes no value: leave out what follows the `=`."
            ));
        }
    }
    let value = |option: &str| {
        given
            .iter()
            .rev()
            .find(|(given, _)| given == option)
            .and_then(|(_, value)| value.clone())
    };
    let flag = |option: &str| given.iter().any(|(given, _)| given == option);
    let base = base_path(value("base").as_deref().unwrap_or("/"))?;
    if name == "answer" {
        return match rest.as_slice() {
            [file] => Ok(Command::Answer(Answer {
                file: file.clone(),
                text: flag("text"),
                ics: flag("ics"),
                settings: value("settings"),
            })),
            [] => Err(
                "`answer` needs the question: a JSON file's name, or - for standard input.".into(),
            ),
            _ => {
                Err("`answer` takes one question: one file's name, or - for standard input.".into())
            }
        };
    }
    if name == "settings" {
        return match <[String; 1]>::try_from(rest) {
            Ok([file]) => Ok(Command::Settings(Settings { file })),
            Err(_) => Err("`settings` takes one file: the JSON of a group's settings.".into()),
        };
    }
    if let Some(extra) = rest.first() {
        return Err(format!(
            "`{name}` takes no `{extra}`. Type `help` to see what it takes."
        ));
    }
    if name == "year" {
        let Some(place) = value("place") else {
            return Err("`year` needs a place: add --place \"42.36,-71.06,15 m\" or --place \"Madison, WI\".".into());
        };
        let year = match value("year") {
            None => crate::command::question::this_year(),
            Some(text) => text
                .parse()
                .ok()
                .filter(|year| (1990..=2100).contains(year))
                .ok_or_else(|| format!("--year {text} is not a year from 1990 to 2100."))?,
        };
        return Ok(Command::Year(Year {
            place,
            species: value("species"),
            year,
            csv: flag("csv"),
        }));
    }
    if name == "build" {
        let Some(out) = value("out") else {
            return Err("`build` needs a folder to write: add --out DIR.".into());
        };
        return Ok(Command::Build(Build {
            out: PathBuf::from(out),
            base,
            offline: !flag("no-offline"),
            quiet: flag("quiet"),
        }));
    }
    let port = match value("port") {
        None => DEFAULT_PORT,
        Some(text) => text.parse().map_err(|_| {
            format!("--port {text} is not a port: give a whole number from 0 to 65535 (0 picks a free one).")
        })?,
    };
    Ok(Command::Serve(Serve {
        port,
        dir: value("dir").map(PathBuf::from),
        base,
        quiet: flag("quiet"),
    }))
}

/// Checks a base path: slashes at both ends, and only letters, digits, `.`,
/// `_`, `~` and `-` between them, so that it needs no escaping anywhere.
fn base_path(text: &str) -> Result<String, String> {
    let plain = |c: char| c.is_ascii_alphanumeric() || "._~-".contains(c);
    let inner = text.strip_prefix('/').and_then(|t| t.strip_suffix('/'));
    let good = text == "/"
        || inner.is_some_and(|inner| {
            inner.split('/').all(|part| {
                !part.is_empty() && part != ".." && part != "." && part.chars().all(plain)
            })
        });
    if good {
        Ok(text.to_owned())
    } else {
        Err(format!(
            "--base {text} does not do: it begins and ends with a slash and has only letters, digits, . _ ~ - between slashes, as in /trees/."
        ))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn parse(line: &str) -> Result<Command, String> {
        read(line.split_whitespace().map(str::to_owned))
    }

    #[test]
    fn nothing_typed_serves_on_the_usual_port() {
        let expected = Serve {
            port: DEFAULT_PORT,
            dir: None,
            base: "/".into(),
            quiet: false,
        };
        assert_eq!(parse(""), Ok(Command::Serve(expected)));
    }

    #[test]
    fn a_port_may_follow_or_stand_after_an_equals_sign() {
        for line in ["serve --port 5000", "--port=5000", "--port 5000 serve"] {
            let Ok(Command::Serve(serve)) = parse(line) else {
                panic!("{line} was not read as serve");
            };
            assert_eq!(serve.port, 5000, "{line}");
        }
    }

    #[test]
    fn what_is_unknown_is_named_with_what_to_type() {
        for (line, part) in [
            ("sreve", "`sreve`"),
            ("serve --prot 1", "--prot"),
            ("serve --port 70000", "65535"),
            ("serve --port", "needs a value"),
            ("serve --port -1", "-1"),
            ("build", "--out"),
            ("build --out d --base trees", "/trees/"),
            ("build --out d --base /a/../b/", "--base"),
            ("build --out d --base //", "--base"),
            ("answer", "JSON"),
            ("answer a b", "one question"),
            ("answer a --port 3", "--port"),
            ("answer a --text=yes", "--text"),
            ("serve extra", "`extra`"),
            ("settings", "one file"),
            ("settings a --text", "no options"),
            ("answer a --settings", "needs a value"),
        ] {
            let message = parse(line).expect_err(line);
            assert!(message.contains(part), "{line}: {message}");
        }
    }

    #[test]
    fn an_answer_reads_standard_input_or_a_file() {
        let answer = |file: &str, text| {
            Ok(Command::Answer(Answer {
                file: file.into(),
                text,
                ics: false,
                settings: None,
            }))
        };
        assert_eq!(parse("answer -"), answer("-", false));
        assert_eq!(parse("answer --text tree.json"), answer("tree.json", true));
    }
}
