//! Builds the site and hands it out on this machine.

use crate::build::{self, folder, packed};
use crate::command::{question, speaker};
use crate::server::{self, Site};
use crate::{args, project, terminal};
use anyhow::{Context, Result, bail};
use std::io::ErrorKind;
use std::net::{Ipv4Addr, TcpListener};
use std::time::Instant;

/// Runs `serve`: it ends only when it is stopped.
///
/// # Errors
/// A port that is taken, or a site that can't be made; the message says what
/// to do.
pub(crate) fn run(options: &args::Serve) -> Result<()> {
    let started = Instant::now();
    let say = speaker(options.quiet);
    // Before the build, so that a taken port is told at once.
    let listener = listen(options.port)?;
    let folder = match &options.dir {
        Some(folder) => {
            folder::holds_a_site(folder)?;
            folder.clone()
        }
        None => {
            let root = project::root()?;
            let files = build::site(
                &root,
                &build::Options {
                    base: &options.base,
                    anywhere: false,
                    origin: "",
                    contact: "",
                    own: None,
                    offline: true,
                },
                options.quiet,
                &say,
            )?;
            let folder = project::target(&root).join("site");
            say("Writing the files, packed ones beside them ...");
            folder::write(
                &folder,
                &files,
                question::today_day(),
                &packed::cache(&root),
            )?;
            folder
        }
    };
    let site = Site::new(&options.base, &folder)
        .with_context(|| format!("{} could not be read", folder.display()))?;
    say(&format!(
        "Ready after {:.1} s. Only this machine can reach it; stop it with Ctrl+C.",
        started.elapsed().as_secs_f32()
    ));
    terminal::print(&format!(
        "http://{}{}\n",
        listener.local_addr()?,
        options.base
    ))?;
    server::run(listener, site)
}

/// Takes the port on the loopback address, never on another.
fn listen(port: u16) -> Result<TcpListener> {
    match TcpListener::bind((Ipv4Addr::LOCALHOST, port)) {
        Ok(listener) => Ok(listener),
        Err(error) if error.kind() == ErrorKind::AddrInUse => bail!(
            "Port {port} is in use on this machine, perhaps by this same program in another window.\n\
             Stop that one, or take another port. Type:\n\n    cargo run --release -- serve --port {}\n\n\
             or --port 0 to let the system pick one.",
            port.checked_add(1).unwrap_or(args::DEFAULT_PORT)
        ),
        Err(error) if error.kind() == ErrorKind::PermissionDenied => {
            bail!(
                "This machine does not let you take port {port}. Take one above 1023: --port {}.",
                args::DEFAULT_PORT
            )
        }
        Err(error) => Err(error).with_context(|| format!("port {port} could not be taken")),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_taken_port_says_what_to_type() {
        let taken = listen(0).unwrap();
        let address = taken.local_addr().unwrap();
        assert!(address.ip().is_loopback());
        let error = listen(address.port()).unwrap_err().to_string();
        assert!(error.contains("serve --port"), "{error}");
    }
}
