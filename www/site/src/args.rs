//! The command line: its commands and options. What is said of each stands in `content/words/LANG/program/help.ftl`.

use calc_view::words::m;
use clap::{Args, Parser, Subcommand};
use std::path::PathBuf;

/// The port `serve` takes when none is asked for.
pub(crate) const DEFAULT_PORT: u16 = 4747;

/// Slipbark: one tree, one answer.
#[derive(Debug, PartialEq, Eq, Parser)]
#[command(name = "slipbark", version, args_conflicts_with_subcommands = true)]
pub(crate) struct Line {
    #[command(subcommand)]
    command: Option<Command>,
    #[command(flatten)]
    serve: Serve,
}

impl Line {
    /// The command that was typed; with none it serves.
    pub(crate) fn typed(self) -> Command {
        self.command.unwrap_or(Command::Serve(self.serve))
    }
}

/// One command with its options.
#[derive(Debug, PartialEq, Eq, Subcommand)]
pub(crate) enum Command {
    Serve(Serve),
    Build(Build),
    Answer(Answer),
    List(List),
    Plan(Box<Plan>),
    Settings(Settings),
    Year(Year),
}

impl Command {
    /// The language that it speaks. A site is built and served for people of all.
    pub(crate) fn language(&self) -> &str {
        match self {
            Self::Answer(options) => &options.lang,
            Self::List(options) => &options.reading.lang,
            Self::Plan(options) => &options.reading.lang,
            Self::Settings(options) => &options.lang,
            Self::Year(options) => &options.lang,
            Self::Serve(options) => &options.lang,
            Self::Build(options) => &options.lang,
        }
    }
}

/// Options of `serve`.
#[derive(Args, Debug, PartialEq, Eq)]
pub(crate) struct Serve {
    #[arg(long, value_name = "N", default_value_t = DEFAULT_PORT)]
    pub port: u16,
    #[arg(long)]
    pub dir: Option<PathBuf>,
    #[arg(long, value_name = "/PATH/", default_value = "/", value_parser = base_path)]
    pub base: String,
    #[arg(long)]
    pub quiet: bool,
    #[arg(long, value_name = "TAG", default_value = "en", value_parser = language)]
    pub lang: String,
}

/// Options of `build`.
#[derive(Args, Debug, PartialEq, Eq)]
pub(crate) struct Build {
    #[arg(long, value_name = "DIR", required_unless_present_any = ["npm", "library"])]
    pub out: Option<PathBuf>,
    #[arg(long, value_name = "DIR")]
    pub npm: Option<PathBuf>,
    #[arg(long = "crate", value_name = "DIR")]
    pub library: Option<PathBuf>,
    #[arg(long, value_name = "/PATH/", default_value = "/", value_parser = base_path)]
    pub base: String,
    #[arg(long, value_name = "ORIGIN", default_value = "", value_parser = origin)]
    pub origin: String,
    #[arg(long, value_name = "DIR")]
    pub own: Option<PathBuf>,
    #[arg(long, value_name = "ADDRESS", default_value = "", value_parser = contact)]
    pub contact: String,
    #[arg(long)]
    pub no_offline: bool,
    #[arg(long)]
    pub wordpress: bool,
    #[arg(long)]
    pub quiet: bool,
    #[arg(long, value_name = "TAG", default_value = "en", value_parser = language)]
    pub lang: String,
}

/// Options of `answer`.
#[derive(Args, Debug, PartialEq, Eq)]
pub(crate) struct Answer {
    pub file: String,
    #[arg(long)]
    pub text: bool,
    #[arg(long, requires = "text")]
    pub full: bool,
    #[arg(long, conflicts_with = "text")]
    pub ics: bool,
    #[arg(long, value_name = "FILE")]
    pub settings: Option<String>,
    #[arg(long, value_name = "TAG", default_value = "en", value_parser = language)]
    pub lang: String,
}

/// How a list of trees is read.
#[derive(Args, Debug, PartialEq, Eq)]
pub(crate) struct Reading {
    #[arg(long, value_name = "FILE", alias = "decisions")]
    pub columns: Option<String>,
    #[arg(long, allow_hyphen_values = true)]
    pub place: Option<String>,
    #[arg(long, value_name = "CODE")]
    pub region: Option<String>,
    #[arg(long, default_value = "us", value_parser = units)]
    pub units: calc::terms::quantity::Units,
    #[arg(long, value_name = "FILE")]
    pub settings: Option<String>,
    #[arg(long, value_name = "DAY")]
    pub today: Option<String>,
    #[arg(long, value_name = "TAG", default_value = "en", value_parser = language)]
    pub lang: String,
}

/// Options of `list`.
#[derive(Args, Debug, PartialEq, Eq)]
pub(crate) struct List {
    pub file: String,
    #[arg(long)]
    pub csv: bool,
    #[arg(long, conflicts_with_all = ["csv", "text"])]
    pub whole: bool,
    #[arg(long, conflicts_with = "csv")]
    pub text: bool,
    #[arg(long, value_name = "N", default_value_t = 1)]
    pub first_row: u64,
    #[command(flatten)]
    pub reading: Reading,
}

/// Options of `plan`.
#[derive(Args, Debug, PartialEq, Eq)]
pub(crate) struct Plan {
    pub file: String,
    #[arg(long, value_name = "DIR")]
    pub out: PathBuf,
    #[arg(long, value_name = "DAY")]
    pub from: String,
    #[arg(long, value_name = "DAY")]
    pub to: String,
    #[arg(long, value_name = "WEEKDAYS", default_value = "")]
    pub on: String,
    #[arg(long, value_name = "DAYS", default_value = "")]
    pub days: String,
    #[arg(long, value_name = "DAYS", default_value = "")]
    pub closed: String,
    #[arg(long, value_name = "N", default_value = "", hide_default_value = true)]
    pub crew: String,
    #[arg(long, value_name = "N", default_value = "1")]
    pub teams: String,
    #[arg(long, value_name = "N", default_value = "", hide_default_value = true)]
    pub hours: String,
    #[arg(
        long,
        value_name = "MINUTES",
        default_value = "",
        hide_default_value = true
    )]
    pub ready: String,
    #[arg(long)]
    pub pairs: bool,
    #[arg(long, value_name = "P", default_value = "", hide_default_value = true)]
    pub slip: String,
    #[arg(long, value_name = "SHARE")]
    pub share: Option<String>,
    #[arg(long, value_name = "UNIT=AREA")]
    pub area: Vec<String>,
    #[arg(long, value_name = "UNIT=SHARE", requires = "area")]
    pub closure: Vec<String>,
    #[arg(long, value_name = "SHARE", requires = "area", num_args = 0..=1, default_missing_value = "")]
    pub floor: Option<String>,
    #[arg(
        long,
        value_name = "DISTANCE",
        default_value = "",
        hide_default_value = true
    )]
    pub spacing: String,
    #[arg(long, value_name = "N")]
    pub wage: Option<String>,
    #[arg(long, value_name = "UNIT=DISTANCE")]
    pub nothing_within: Vec<String>,
    #[arg(long, value_name = "NAME", default_value = "")]
    pub said_by: String,
    #[arg(long, value_name = "SPECIES=REPLY")]
    pub whole_clone: Vec<String>,
    #[arg(long, value_name = "SPECIES=REPLY")]
    pub same_genus_near: Vec<String>,
    #[arg(long, value_name = "FILE")]
    pub keep: Option<String>,
    #[arg(long, value_name = "FILE")]
    pub found: Option<String>,
    #[arg(long, requires = "found")]
    pub own_rate: bool,
    #[arg(long)]
    pub whole: bool,
    #[command(flatten)]
    pub reading: Reading,
}

/// Options of `settings`.
#[derive(Args, Debug, PartialEq, Eq)]
pub(crate) struct Settings {
    pub file: String,
    #[arg(long, value_name = "TAG", default_value = "en", value_parser = language)]
    pub lang: String,
}

/// Options of `year`.
#[derive(Args, Debug, PartialEq, Eq)]
pub(crate) struct Year {
    #[arg(long, allow_hyphen_values = true)]
    pub place: String,
    #[arg(long, value_name = "NAME")]
    pub species: Option<String>,
    #[arg(long, value_name = "N", value_parser = clap::value_parser!(i32).range(1990..=2100))]
    pub year: Option<i32>,
    #[arg(long)]
    pub csv: bool,
    #[arg(long, value_name = "TAG", default_value = "en", value_parser = language)]
    pub lang: String,
}

fn units(word: &str) -> Result<calc::terms::quantity::Units, String> {
    match word {
        "us" => Ok(calc::terms::quantity::Units::Us),
        "metric" => Ok(calc::terms::quantity::Units::Metric),
        _ => Err(m::HELP_US_OR_METRIC.into()),
    }
}

/// A language tag whose words are here: `es-MX` has those of `es`.
fn language(tag: &str) -> Result<String, String> {
    let mut known = vec!["en"];
    known.extend(m::FILES.iter().map(|(name, ..)| *name));
    let speaks = |name: &&str| tag == *name || tag.starts_with(&format!("{name}-"));
    if known.iter().any(speaks) {
        Ok(tag.to_owned())
    } else {
        Err(m::help_no_such_language(known.join(", ")))
    }
}

/// An address to write to: `mailto:` or `https:`, without a space or a sign of markup.
fn contact(value: &str) -> Result<String, String> {
    let good = value.is_empty() || value.starts_with("mailto:") || value.starts_with("https://");
    if good && !value.contains(['<', '>', '"', ' ']) {
        Ok(value.to_owned())
    } else {
        Err(m::HELP_CONTACT_LIKE.into())
    }
}

/// An origin: a scheme, a host, a port if need be, and no path.
fn origin(text: &str) -> Result<String, String> {
    let plain = text.trim_end_matches('/');
    let host = plain
        .strip_prefix("https://")
        .or(plain.strip_prefix("http://"));
    let is_host = |host: &str| {
        !host.is_empty()
            && host
                .chars()
                .all(|sign| sign.is_ascii_alphanumeric() || ".-:[]".contains(sign))
    };
    if text.is_empty() || host.is_some_and(is_host) {
        Ok(plain.to_owned())
    } else {
        Err(m::HELP_ORIGIN_LIKE.into())
    }
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
        Err(m::HELP_PATH_LIKE.into())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn parse(line: &str) -> Result<Command, String> {
        let words = std::iter::once("slipbark").chain(line.split_whitespace());
        Line::try_parse_from(words)
            .map(Line::typed)
            .map_err(|error| error.to_string())
    }

    /// What the help says is used unless something is said is what is used.
    #[test]
    fn the_help_names_the_numbers_that_are_used() {
        let own = calc_data::list::plan_constants();
        let slip = calc_data::reference().constants.timing.p_test;
        let help = include_str!("../../../content/words/en/program/help.ftl");
        for said in [
            format!("work day; {} unless said", own.crew_people),
            format!("leaving; {} unless said", own.crew_hours),
            format!("tools; {} unless said", own.ready_minutes),
            format!("{slip} to {}; {slip} unless said", own.slip_most),
            format!("{}% where no share is named", 100.0 * own.canopy_floor),
        ] {
            assert!(help.contains(&said), "{said}");
        }
    }

    #[test]
    fn the_options_fit_together() {
        <Line as clap::CommandFactory>::command().debug_assert();
    }

    #[test]
    fn nothing_typed_serves_on_the_usual_port() {
        let expected = Serve {
            port: DEFAULT_PORT,
            dir: None,
            base: "/".into(),
            quiet: false,
            lang: "en".into(),
        };
        assert_eq!(parse(""), Ok(Command::Serve(expected)));
    }

    #[test]
    fn a_port_may_follow_or_stand_after_an_equals_sign() {
        for line in ["serve --port 5000", "--port=5000", "--port 5000"] {
            let Ok(Command::Serve(serve)) = parse(line) else {
                panic!("{line} was not read as serve");
            };
            assert_eq!(serve.port, 5000, "{line}");
        }
    }

    #[test]
    fn what_is_unknown_is_named_with_what_to_type() {
        for (line, part) in [
            ("sreve", "similar subcommand exists: 'serve'"),
            ("anwser", "'answer'"),
            ("serve --prot 1", "similar argument exists: '--port'"),
            ("build --outt d", "'--out'"),
            ("serve --port 70000", "65535"),
            ("serve --port", "a value is required"),
            ("serve --port -1", "-1"),
            ("--port 1 answer -", "'--port <N>'"),
            ("build", "--out <DIR>"),
            ("build --out d --base trees", "/trees/"),
            ("build --out d --base /a/../b/", "--base"),
            ("build --out d --base //", "--base"),
            ("answer", "<FILE>"),
            ("answer a b", "unexpected argument 'b'"),
            ("answer a --port 3", "'--port'"),
            ("answer a --text=yes", "'--text'"),
            ("answer a --text --ics", "'--ics'"),
            ("answer a --full", "--text"),
            ("serve extra", "'extra'"),
            ("list", "<FILE>"),
            ("list a --csv --whole", "'--whole'"),
            ("list a --units feet", "us or metric"),
            ("list a --first-row x", "'x'"),
            ("settings", "<FILE>"),
            ("settings a --text", "'--text'"),
            ("answer a --settings", "a value is required"),
            ("year", "--place <PLACE>"),
            ("year --place x --year 1900", "1990..=2100"),
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
                full: false,
                ics: false,
                settings: None,
                lang: "en".into(),
            }))
        };
        assert_eq!(parse("answer -"), answer("-", false));
        assert_eq!(parse("answer --text tree.json"), answer("tree.json", true));
    }

    #[test]
    fn a_place_may_begin_with_a_minus() {
        let Ok(Command::Year(year)) = parse("year --place -33.9,151.2") else {
            panic!("a southern place was not read");
        };
        assert_eq!(year.place, "-33.9,151.2");
    }
}
