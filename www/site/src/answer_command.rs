//! `answer`: one question from a file or standard input, answered in print.

use crate::args;
use anyhow::{Result, bail};
use std::process::ExitCode;

/// Runs `answer`.
///
/// # Errors
/// When the file can't be read.
pub fn run(_options: &args::Answer) -> Result<ExitCode> {
    bail!("The command line can't answer yet: the models are not in this build.")
}
