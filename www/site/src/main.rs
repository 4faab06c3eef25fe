//! The `site` program: serves the site on this machine (the default), builds
//! it into a folder, or answers one question on the command line.
//!
//! Exit codes: 0 done, 1 something failed (the message says what to do),
//! 2 the command line or the question was not understood.

mod answer_command;
mod args;
mod assets;
mod build;
mod headers;
mod http;
mod json_question;
mod kit;
mod markdown;
mod pages;
mod places;
mod project;
mod schema;
mod serve;
mod settings;
mod single;
mod sources;
mod static_answers;
mod template;
mod version;
mod wasm;
mod year_command;

use args::Command;
use std::process::ExitCode;

fn main() -> ExitCode {
    let command = match args::read(std::env::args().skip(1)) {
        Ok(command) => command,
        Err(message) => {
            eprintln!("{message}");
            return ExitCode::from(2);
        }
    };
    let outcome = match command {
        Command::Help => {
            print!("{}", args::HELP);
            Ok(ExitCode::SUCCESS)
        }
        Command::Serve(options) => serve::run(&options).map(|()| ExitCode::SUCCESS),
        Command::Build(options) => build::run(&options).map(|()| ExitCode::SUCCESS),
        Command::Answer(options) => answer_command::run(&options),
        Command::Settings(options) => settings::run(&options),
        Command::Year(options) => year_command::run(&options),
    };
    outcome.unwrap_or_else(|error| {
        eprintln!("\nStopped: {error:#}");
        ExitCode::from(1)
    })
}
