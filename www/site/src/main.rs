//! The `slipbark` program: serves the site on this machine (the default), builds
//! it into a folder, answers one question on the command line, or every row of a list.
//!
//! Exit codes: 0 done, 1 something failed (the message says what to do),
//! 2 the command line or the question was not understood.

mod args;
mod build;
mod command;
mod places;
mod project;
mod server;
mod terminal;

use args::{Command, Line};
use calc_view::words::message::pack;
use calc_view::words::{m, within};
use clap::Parser as _;
use std::process::ExitCode;

fn main() -> ExitCode {
    let command = match Line::try_parse() {
        Ok(line) => line.command(),
        Err(told) => {
            let text = told.to_string();
            // Help and version are what was asked for; all else was not understood.
            if told.use_stderr() {
                terminal::tell(text.trim_end());
                return ExitCode::from(2);
            }
            return match terminal::print(&text) {
                Ok(()) => ExitCode::SUCCESS,
                Err(_) => ExitCode::from(1),
            };
        }
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
