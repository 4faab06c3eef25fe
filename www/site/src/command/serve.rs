//! Builds the site and hands it out on this machine.

use crate::build::{self, folder};
use crate::command::speaker;
use crate::server::Files;
use crate::{args, project, terminal};
use anyhow::{Context, Result, bail};
use std::io::ErrorKind;
use std::net::{Ipv4Addr, TcpListener};
use std::sync::Arc;
use std::time::{Duration, Instant};

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
    let files = match &options.dir {
        Some(folder) => folder::read(folder)?,
        None => {
            let root = project::root()?;
            let files = build::site(&root, &options.base, true, options.quiet, &say)?;
            folder::write(&project::target(&root).join("site"), &files)?;
            files
        }
    };
    let files = Arc::new(Files::new(&options.base, &files));
    say(&format!(
        "Ready after {:.1} s. Only this machine can reach it; stop it with Ctrl+C.",
        started.elapsed().as_secs_f32()
    ));
    terminal::print(&format!(
        "http://{}{}\n",
        listener.local_addr()?,
        options.base
    ))?;
    for stream in listener.incoming() {
        let Ok(stream) = stream else { continue };
        let files = Arc::clone(&files);
        std::thread::spawn(move || {
            // A client that says nothing for this long has gone.
            let _ = stream.set_read_timeout(Some(Duration::from_secs(60)));
            let _ = stream.set_nodelay(true);
            let _ = files.answer_all(&stream);
        });
    }
    Ok(())
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
