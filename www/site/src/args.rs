//! The command line: its commands and options, and what the program says of itself.

use clap::{Args, Parser, Subcommand};
use std::path::PathBuf;

/// The port `serve` takes when none is asked for.
pub(crate) const DEFAULT_PORT: u16 = 4747;

const AFTER: &str = "\
With no command it serves. In the project's folder `cargo run --release` builds the program and runs it; what follows
`--` goes to it, as in: cargo run --release -- answer question.json --text

Exit codes: 0 done; 1 failed, and the message says what to do; 2 the command line or the question was not understood.";

/// Slipbark: one tree, one answer.
#[derive(Debug, PartialEq, Eq, Parser)]
#[command(name = "slipbark", version, after_help = AFTER, args_conflicts_with_subcommands = true)]
pub(crate) struct Line {
    #[command(subcommand)]
    command: Option<Command>,
    #[command(flatten)]
    serve: Serve,
}

impl Line {
    /// The command that was typed; with none it serves.
    pub(crate) fn command(self) -> Command {
        self.command.unwrap_or(Command::Serve(self.serve))
    }
}

/// One command with its options.
#[derive(Debug, PartialEq, Eq, Subcommand)]
pub(crate) enum Command {
    /// Build the site and serve it on this machine
    Serve(Serve),
    /// Write the static site into a folder
    Build(Build),
    /// Answer the question in FILE (JSON), or - for standard input
    Answer(Answer),
    /// Answer every row of the list of trees in FILE (CSV), or - for standard input
    List(List),
    /// Plan a season's work for the list of trees in FILE (CSV): which trees on which day, and their visits
    Plan(Box<Plan>),
    /// Say in words what is wrong with a group's settings in FILE (JSON)
    Settings(Settings),
    /// Say when the bark slips at a place, for every species or for one
    Year(Year),
}

impl Command {
    /// The language that it speaks: a site is built and served for people of all.
    pub(crate) fn language(&self) -> &str {
        match self {
            Self::Answer(options) => &options.lang,
            Self::List(options) => &options.reading.lang,
            Self::Plan(options) => &options.reading.lang,
            Self::Settings(options) => &options.lang,
            Self::Year(options) => &options.lang,
            Self::Serve(_) | Self::Build(_) => "en",
        }
    }
}

/// Options of `serve`.
#[derive(Args, Debug, PartialEq, Eq)]
pub(crate) struct Serve {
    /// The port on 127.0.0.1, which nothing outside this machine can reach; 0 picks a free one
    #[arg(long, value_name = "N", default_value_t = DEFAULT_PORT)]
    pub port: u16,
    /// Serve a folder that was built before, as it is
    #[arg(long)]
    pub dir: Option<PathBuf>,
    /// The path that the site will live under
    #[arg(long, value_name = "/PATH/", default_value = "/", value_parser = base_path)]
    pub base: String,
    /// Print only the address
    #[arg(long)]
    pub quiet: bool,
}

/// Options of `build`.
#[derive(Args, Debug, PartialEq, Eq)]
pub(crate) struct Build {
    /// The folder for the site: an empty or a new one, or one that was built before
    #[arg(long, value_name = "DIR", required_unless_present_any = ["npm", "library"])]
    pub out: Option<PathBuf>,
    /// The folder for a package for npm: for programs in Node, and for pages that a bundler makes
    #[arg(long, value_name = "DIR")]
    pub npm: Option<PathBuf>,
    /// The folder for a Rust crate with the tables in it, for other programs
    #[arg(long = "crate", value_name = "DIR")]
    pub library: Option<PathBuf>,
    /// The path that the site will live under
    #[arg(long, value_name = "/PATH/", default_value = "/", value_parser = base_path)]
    pub base: String,
    /// The origin that it will live at, as https://trees.example.org: then pages tell their whole addresses, and a
    /// sitemap lists them
    #[arg(long, value_name = "ORIGIN", default_value = "", value_parser = origin)]
    pub origin: String,
    /// A site that keeps nothing on the device, and removes what an earlier one kept
    #[arg(long)]
    pub no_offline: bool,
    /// A plugin for WordPress with the site in it, to be put into wp-content/plugins
    #[arg(long)]
    pub wordpress: bool,
    /// Print only the folder
    #[arg(long)]
    pub quiet: bool,
}

/// Options of `answer`.
#[derive(Args, Debug, PartialEq, Eq)]
pub(crate) struct Answer {
    /// The file with the question, or - for standard input
    pub file: String,
    /// Words for people instead of JSON: in short, as the page shows it before anything is unfolded
    #[arg(long)]
    pub text: bool,
    /// With --text: all of the answer, with its tables, working and sources
    #[arg(long, requires = "text")]
    pub full: bool,
    /// The visits as a calendar file
    #[arg(long, conflicts_with = "text")]
    pub ics: bool,
    /// A file of a group's own settings to answer under
    #[arg(long, value_name = "FILE")]
    pub settings: Option<String>,
    /// The language of words and problems: en, es, or a tag such as es-MX
    #[arg(long, value_name = "TAG", default_value = "en", value_parser = language)]
    pub lang: String,
}

/// How a list of trees is read.
#[derive(Args, Debug, PartialEq, Eq)]
pub(crate) struct Reading {
    /// A file of decisions (JSON): what the columns of the list hold, where it asks
    #[arg(long, value_name = "FILE", visible_alias = "decisions")]
    pub columns: Option<String>,
    /// Where the list is, for rows without a place: 42.36,-71.06,15 m, or a town, as "Madison, WI"
    #[arg(long, allow_hyphen_values = true)]
    pub place: Option<String>,
    /// The state or country of the list, as US-MA or GB
    #[arg(long, value_name = "CODE")]
    pub region: Option<String>,
    /// Units of sizes for which the list says none: us or metric
    #[arg(long, default_value = "us", value_parser = units)]
    pub units: calc::terms::quantity::Units,
    /// A file of a group's own settings to answer under
    #[arg(long, value_name = "FILE")]
    pub settings: Option<String>,
    /// The day from which days are reckoned, as 2027-05-01: today unless said
    #[arg(long, value_name = "DAY")]
    pub today: Option<String>,
    /// The language of words and problems: en, es, or a tag such as es-MX
    #[arg(long, value_name = "TAG", default_value = "en", value_parser = language)]
    pub lang: String,
}

/// Options of `list`.
#[derive(Args, Debug, PartialEq, Eq)]
pub(crate) struct List {
    /// The list, or - for standard input
    pub file: String,
    /// The list as it came, with plan_ columns, instead of a line of JSON a row
    #[arg(long)]
    pub csv: bool,
    /// With each line of JSON the whole answer: 31 kB a row, 620 MB for 20,000
    #[arg(long, conflicts_with_all = ["csv", "text"])]
    pub whole: bool,
    /// Words for people: how many rows of each kind, and what to mend
    #[arg(long, conflicts_with = "csv")]
    pub text: bool,
    /// The number of the first row, for a piece of a longer file
    #[arg(long, value_name = "N", default_value_t = 1)]
    pub first_row: u64,
    #[command(flatten)]
    pub reading: Reading,
}

/// Options of `plan`.
#[derive(Args, Debug, PartialEq, Eq)]
pub(crate) struct Plan {
    /// The list
    pub file: String,
    /// The folder for the files of the plan
    #[arg(long, value_name = "DIR")]
    pub out: PathBuf,
    /// The first day of the season, as 2027-05-01
    #[arg(long, value_name = "DAY")]
    pub from: String,
    /// Its last day
    #[arg(long, value_name = "DAY")]
    pub to: String,
    /// Days of the week on which the crew works: sat, or sat,sun
    #[arg(long, value_name = "WEEKDAYS", default_value = "")]
    pub on: String,
    /// Work days, with a comma between them
    #[arg(long, value_name = "DAYS", default_value = "")]
    pub days: String,
    /// Days that are closed, with a comma between them
    #[arg(long, value_name = "DAYS", default_value = "")]
    pub closed: String,
    /// People on each work day
    #[arg(long, value_name = "N", default_value = "4")]
    pub crew: String,
    /// Crews that they work in
    #[arg(long, value_name = "N", default_value = "1")]
    pub teams: String,
    /// Hours of a work day, from arriving to leaving
    #[arg(long, value_name = "N", default_value = "3")]
    pub hours: String,
    /// Minutes of a work day to arrive, talk and fetch tools; 45 unless said, which is our own assumption
    #[arg(
        long,
        value_name = "MINUTES",
        default_value = "",
        hide_default_value = true
    )]
    pub ready: String,
    /// Two people at each tree
    #[arg(long)]
    pub pairs: bool,
    /// Ring only where the bark slips with at least this probability, 0.4 to 0.95
    #[arg(long, value_name = "P", default_value = "0.4")]
    pub slip: String,
    /// At most this share of the basal area of each unit in the season, as 20%
    #[arg(long, value_name = "SHARE")]
    pub share: Option<String>,
    /// What an hour of work costs: it is written into the plan
    #[arg(long, value_name = "N")]
    pub wage: Option<String>,
    /// Nothing that counts stands within a distance of any tree of a part of the property: "Old field=230 ft"
    #[arg(long, value_name = "UNIT=DISTANCE")]
    pub nothing_within: Vec<String>,
    /// Who said so
    #[arg(long, value_name = "NAME", default_value = "")]
    pub said_by: String,
    /// Whether every stem of a species' clones can be ringed: "Black locust=yes", or "Black locust@Old field=no"
    #[arg(long, value_name = "SPECIES=REPLY")]
    pub whole_clone: Vec<String>,
    /// Whether others of a species' genus stand near: "Scots pine=no"
    #[arg(long, value_name = "SPECIES=REPLY")]
    pub same_genus_near: Vec<String>,
    /// The plan.json of an earlier plan: its days stay unless something forces them
    #[arg(long, value_name = "FILE")]
    pub keep: Option<String>,
    /// With the plan what each tree adds to its bound
    #[arg(long)]
    pub whole: bool,
    #[command(flatten)]
    pub reading: Reading,
}

/// Options of `settings`.
#[derive(Args, Debug, PartialEq, Eq)]
pub(crate) struct Settings {
    /// The file of settings
    pub file: String,
    /// The language of what is said: en, es, or a tag such as es-MX
    #[arg(long, value_name = "TAG", default_value = "en", value_parser = language)]
    pub lang: String,
}

/// Options of `year`.
#[derive(Args, Debug, PartialEq, Eq)]
pub(crate) struct Year {
    /// Latitude, longitude and elevation, as 42.36,-71.06,15 m, or a town, as "Madison, WI"
    #[arg(long, allow_hyphen_values = true)]
    pub place: String,
    /// One species; all unless said
    #[arg(long, value_name = "NAME")]
    pub species: Option<String>,
    /// Which year, from 1990 to 2100; this one unless said
    #[arg(long, value_name = "N", value_parser = clap::value_parser!(i32).range(1990..=2100))]
    pub year: Option<i32>,
    /// A table instead of text
    #[arg(long)]
    pub csv: bool,
    /// The language of words: en, es, or a tag such as es-MX
    #[arg(long, value_name = "TAG", default_value = "en", value_parser = language)]
    pub lang: String,
}

fn units(word: &str) -> Result<calc::terms::quantity::Units, String> {
    match word {
        "us" => Ok(calc::terms::quantity::Units::Us),
        "metric" => Ok(calc::terms::quantity::Units::Metric),
        _ => Err("it is us or metric".to_owned()),
    }
}

/// A language tag whose words are here: `es-MX` has those of `es`.
fn language(tag: &str) -> Result<String, String> {
    let mut known = vec!["en"];
    known.extend(calc_view::words::m::FILES.iter().map(|(name, ..)| *name));
    let speaks = |name: &&str| tag == *name || tag.starts_with(&format!("{name}-"));
    if known.iter().any(speaks) {
        Ok(tag.to_owned())
    } else {
        Err(format!("no words of it are here: use {}", known.join(", ")))
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
        Err("write it like https://trees.example.org; the path goes into --base".to_owned())
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
        Err("it begins and ends with a slash and has only letters, digits, . _ ~ - between slashes, as in /trees/".into())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn parse(line: &str) -> Result<Command, String> {
        let words = std::iter::once("slipbark").chain(line.split_whitespace());
        Line::try_parse_from(words)
            .map(Line::command)
            .map_err(|error| error.to_string())
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
