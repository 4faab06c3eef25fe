//! The `slipbark` program: serves the site on this machine (the default), builds
//! it into a folder, or answers one question on the command line.
//!
//! Exit codes: 0 done, 1 something failed (the message says what to do),
//! 2 the command line or the question was not understood.

mod args;
mod build;
mod command;
mod places;
mod project;
mod server;

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
        Command::Serve(options) => command::serve::run(&options).map(|()| ExitCode::SUCCESS),
        Command::Build(options) => command::build::run(&options).map(|()| ExitCode::SUCCESS),
        Command::Answer(options) => command::answer::run(&options),
        Command::Settings(options) => command::settings::run(&options),
        Command::Year(options) => command::year::run(&options),
    };
    outcome.unwrap_or_else(|error| {
        eprintln!("\nStopped: {error:#}");
        ExitCode::from(1)
    })
}
