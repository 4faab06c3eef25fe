//! The `slipbark` program: serves the site on this machine (the default), builds
//! it into a folder, answers one question on the command line, or every row of a list.
//!
//! Exit codes: 0 done, 1 something failed (the message says what to do),
//! 2 the command line or the question was not understood.

mod args;
mod build;
mod command;
mod help;
mod places;
mod project;
mod server;
mod terminal;

use args::{Command, Line};
use calc_view::words::message::{pack, take_all};
use calc_view::words::{m, within};
use clap::{CommandFactory as _, FromArgMatches as _};
use std::process::ExitCode;

fn main() -> ExitCode {
    take_all();
    let words: Vec<String> = std::env::args_os()
        .map(|word| word.to_string_lossy().into_owned())
        .collect();
    let command = within(pack(&help::language_of(&words)), || {
        let matches = help::worded(Line::command()).try_get_matches()?;
        Line::from_arg_matches(&matches).map(Line::typed)
    });
    let command = match command {
        Ok(command) => command,
        Err(told) => return tell(&told, &words),
    };
    let language = command.language().to_owned();
    let outcome = match command {
        Command::Serve(options) => command::serve::run(&options).map(|()| ExitCode::SUCCESS),
        Command::Build(options) => command::build::run(&options).map(|()| ExitCode::SUCCESS),
        Command::Answer(options) => command::answer::run(&options),
        Command::List(options) => command::list::run(&options),
        Command::Plan(options) => command::plan::run(&options),
        Command::Settings(options) => command::settings::run(&options),
        Command::Year(options) => command::year::run(&options),
    };
    outcome.unwrap_or_else(|error| {
        let why = format!("{error:#}");
        let stopped = within(pack(&language), || m::command_stopped(why));
        terminal::tell(&format!("\n{stopped}"));
        ExitCode::from(1)
    })
}

/// Help and version are what was asked for; all else was not understood.
fn tell(told: &clap::Error, words: &[String]) -> ExitCode {
    if told.use_stderr() {
        let refusal = within(pack(&help::language_of(words)), || help::refusal(told));
        terminal::tell(refusal.trim_end());
        return ExitCode::from(2);
    }
    match terminal::print(&told.to_string()) {
        Ok(()) => ExitCode::SUCCESS,
        Err(_) => ExitCode::from(1),
    }
}
