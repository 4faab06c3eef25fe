//! What the program says of its commands and options, and of a command line that it does not understand: the words stand
//! in `content/words/LANG/program/help.ftl`, each under the name of its command and the long name of its option.

use calc_view::words::{Word, m};
use clap::error::{ContextKind, ContextValue, ErrorKind};
use clap::{Arg, Command, Error};
use std::error::Error as _;

/// How help is laid out; the heading of the usage is put into it.
const LAYOUT: &str = "{about-with-newline}\n{usage-heading} {usage}\n\n{all-args}{after-help}";

/// The language in which a command line asks to be spoken to, before anything of it is understood: `--lang es`.
pub(crate) fn language_of(words: &[String]) -> String {
    let mut words = words.iter();
    while let Some(word) = words.next() {
        if word == "--lang" {
            return words.next().cloned().unwrap_or_default();
        }
        if let Some(tag) = word.strip_prefix("--lang=") {
            return tag.to_owned();
        }
    }
    String::new()
}

/// The command line with the words of the language in use.
pub(crate) fn worded(mut line: Command) -> Command {
    // Only then it has the options and the command that clap adds by itself.
    line.build();
    let names: Vec<String> = names_of(&line);
    let line = names.iter().fold(line, |line, name| {
        line.mut_subcommand(name, |command| worded_command(command, name))
    });
    let after = format!("{}\n\n{}", m::HELP_AFTER, m::HELP_CODES);
    options_of(laid_out(line), "serve")
        .about(m::HELP_PROGRAM.text())
        .after_help(after)
        .subcommand_help_heading(m::HELP_COMMANDS.text())
}

fn names_of(line: &Command) -> Vec<String> {
    let names = line.get_subcommands().map(|it| it.get_name().to_owned());
    names.collect()
}

fn worded_command(command: Command, name: &str) -> Command {
    if name == "help" {
        // It has every command under it once more.
        return names_of(&command).iter().fold(
            command.about(m::HELP_HELP_OF.text()),
            |line, name| {
                line.mut_subcommand(name, |it| match m::help_about(name) {
                    Some(about) => it.about(about.text()),
                    None => it.about(m::HELP_HELP_OF.text()),
                })
            },
        );
    }
    let about = m::help_about(name).map_or("", Word::text);
    options_of(laid_out(command), name).about(about)
}

fn laid_out(command: Command) -> Command {
    let layout = LAYOUT.replace("{usage-heading}", m::HELP_USAGE.text());
    command.help_template(layout)
}

fn options_of(command: Command, of: &str) -> Command {
    command.mut_args(|option| {
        let heading = match option.get_long() {
            Some(_) => m::HELP_OPTIONS,
            None => m::HELP_ARGUMENTS,
        };
        let text = said_of(of, &option);
        option
            .help_heading(heading.text())
            .hide_default_value(true)
            .help(text)
    })
}

/// What is said of an option, with what it is when it is left out.
fn said_of(command: &str, option: &Arg) -> String {
    let text = words_of(command, option).map_or("", Word::text);
    let left_out = option.get_default_values().first();
    match left_out.and_then(|value| value.to_str()) {
        Some(value)
            if !value.is_empty()
                && takes_a_value(option)
                && !option.is_hide_default_value_set() =>
        {
            format!("{text} [{}]", m::help_unless_said(value))
        }
        _ => text.to_owned(),
    }
}

fn takes_a_value(option: &Arg) -> bool {
    option.get_action().takes_values()
}

/// The words of an option: those of its command, or of what the commands for lists share.
fn words_of(command: &str, option: &Arg) -> Option<Word> {
    let key = option
        .get_long()
        .unwrap_or_else(|| option.get_id().as_str());
    match (command, key) {
        (_, "help") => Some(m::HELP_HELP),
        (_, "version") => Some(m::HELP_VERSION),
        ("serve", key) => m::help_serve(key),
        ("build", key) => m::help_build(key),
        ("answer", key) => m::help_answer(key),
        ("list", key) => m::help_list(key).or_else(|| m::help_reading(key)),
        ("plan", key) => m::help_plan(key).or_else(|| m::help_reading(key)),
        ("settings", key) => m::help_settings(key),
        ("year", key) => m::help_year(key),
        _ => None,
    }
}

/// What was not understood, in the language in use, with what to type instead where something is near.
pub(crate) fn refusal(error: &Error) -> String {
    let has = |kind| error.get(kind).map(text_of).unwrap_or_default();
    let argument = has(ContextKind::InvalidArg);
    let value = has(ContextKind::InvalidValue);
    let told = match error.kind() {
        ErrorKind::UnknownArgument => m::help_unknown_option(argument),
        ErrorKind::InvalidSubcommand => {
            m::help_unknown_command(has(ContextKind::InvalidSubcommand))
        }
        ErrorKind::InvalidValue if value.is_empty() => m::help_no_value(argument),
        ErrorKind::InvalidValue => m::help_wrong_value(m::HelpWrongValue { argument, value }),
        ErrorKind::ValueValidation => {
            let why = error.source().map(ToString::to_string).unwrap_or_default();
            m::help_refused_value(m::HelpRefusedValue {
                argument,
                value,
                why,
            })
        }
        ErrorKind::MissingRequiredArgument => m::help_missing_option(argument),
        ErrorKind::ArgumentConflict => match has(ContextKind::PriorArg) {
            prior if prior == argument => m::help_twice(argument),
            prior => m::help_conflict(m::HelpConflict {
                argument,
                other: prior,
            }),
        },
        ErrorKind::TooManyValues => m::help_wrong_value(m::HelpWrongValue { argument, value }),
        ErrorKind::NoEquals | ErrorKind::TooFewValues | ErrorKind::WrongNumberOfValues => {
            m::help_no_value(argument)
        }
        // Nothing else comes of this command line: clap says it in English.
        _ => return error.to_string(),
    };
    let near = [
        ContextKind::SuggestedSubcommand,
        ContextKind::SuggestedArg,
        ContextKind::SuggestedValue,
    ]
    .into_iter()
    .find_map(|kind| error.get(kind))
    .map(|names| m::help_did_you_mean(text_of(names)));
    let usage = error.get(ContextKind::Usage).map(text_of);
    let usage = usage.map(|usage| usage.replacen("Usage:", m::HELP_USAGE.text(), 1));
    let lines = [Some(told), near, usage, Some(m::HELP_MORE.into())];
    lines.into_iter().flatten().collect::<Vec<_>>().join("\n\n")
}

fn text_of(value: &ContextValue) -> String {
    match value {
        ContextValue::Strings(all) => all.join(", "),
        ContextValue::None => String::new(),
        other => other.to_string(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::args::Line;
    use calc_view::words::message::{pack, take_all};
    use calc_view::words::within;
    use clap::CommandFactory as _;

    fn every_option(of: &Command, name: &str, lacking: &mut Vec<String>) {
        for option in of.get_arguments() {
            if words_of(name, option).is_none() {
                lacking.push(format!("{name} {}", option.get_id()));
            }
        }
    }

    #[test]
    fn every_command_and_option_has_its_words() {
        let mut line = Line::command();
        line.build();
        let mut lacking = Vec::new();
        every_option(&line, "serve", &mut lacking);
        for command in line.get_subcommands().filter(|it| it.get_name() != "help") {
            let name = command.get_name();
            assert!(m::help_about(name).is_some(), "{name}");
            every_option(command, name, &mut lacking);
        }
        assert_eq!(
            lacking,
            Vec::<String>::new(),
            "content/words/en/program/help.ftl lacks these"
        );
    }

    #[test]
    fn help_and_refusals_are_in_the_language_that_was_asked_for() {
        take_all();
        let said = |words: &[&str]| {
            let words: Vec<String> = words.iter().map(|it| (*it).to_owned()).collect();
            within(pack(&language_of(&words)), || {
                let typed = std::iter::once("slipbark".to_owned()).chain(words.clone());
                let error = worded(Line::command())
                    .try_get_matches_from(typed)
                    .expect_err("it is told");
                if error.use_stderr() {
                    refusal(&error)
                } else {
                    error.to_string()
                }
            })
        };
        let help = said(&["plan", "--help", "--lang", "es"]);
        for part in [
            "Uso:",
            "Opciones",
            "Argumentos",
            "Su último día",
            "4 si no se dice",
            "Escribe esto",
        ] {
            assert!(help.contains(part), "{part}: {help}");
        }
        for english in ["Usage", "Options", "Arguments", "Print", "default", "The "] {
            assert!(!help.contains(english), "{english}: {help}");
        }
        let root = said(&["--help", "--lang=es"]);
        assert!(
            root.contains("Órdenes") && root.contains("Códigos de salida"),
            "{root}"
        );
        assert!(!root.contains("Print"), "{root}");
        for (typed, part) in [
            (vec!["anwser", "--lang", "es"], "¿Quiso decir answer?"),
            (
                vec!["plan", "--lang", "es", "a"],
                "Falta: --out <DIR>, --from <DAY>, --to <DAY>",
            ),
            (
                vec!["list", "a", "--units", "x", "--lang", "es"],
                "no admite x: ",
            ),
            (
                vec!["answer", "a", "--text", "--ics", "--lang", "es"],
                "no va junto con",
            ),
            (vec!["serve", "--lang", "es", "--port"], "necesita un valor"),
        ] {
            let told = said(&typed);
            assert!(
                told.contains(part) && told.contains("escriba --help"),
                "{typed:?}: {told}"
            );
            assert!(
                !told.contains("Usage") && !told.contains("error:"),
                "{told}"
            );
        }
        assert!(said(&["answer"]).contains("These are missing: <FILE>"));
    }
}
