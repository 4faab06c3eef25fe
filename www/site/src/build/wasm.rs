//! Compiles the modules to WebAssembly and binds them, with no tool to install:
//! cargo does the first, the binding library the second.

use crate::build::notices::{self, Crate};
use anyhow::{Context, Result, bail};
use std::ffi::OsString;
use std::path::Path;
use std::process::{Command, Stdio};
use wasm_bindgen_cli_support::Bindgen;

const TARGET: &str = "wasm32-unknown-unknown";

/// The module as the browser gets it.
pub(crate) struct Module {
    /// The JavaScript side, an ES module.
    pub js: String,
    /// The WebAssembly.
    pub wasm: Vec<u8>,
    /// Whose work is in it beside our own.
    pub crates: Vec<Crate>,
}

/// A package that is compiled, and what it is to people.
pub(crate) struct Package {
    name: &'static str,
    is: &'static str,
}

/// The calculator of one tree.
pub(crate) const CALCULATOR: Package = Package {
    name: "www-element",
    is: "calculator",
};

/// What the page of a list does its work with.
pub(crate) const LISTS: Package = Package {
    name: "www-list",
    is: "module for lists",
};

/// Compiles and binds a module, telling `say` what it is doing.
///
/// # Errors
/// A missing compiler target that can't be installed, code or content that
/// does not compile, a file that can't be read: each with what to do.
pub(crate) fn module(
    package: &Package,
    root: &Path,
    target: &Path,
    quiet: bool,
    say: &dyn Fn(&str),
) -> Result<Module> {
    let Package { name, is } = package;
    ensure_target(root, say)?;
    say(&format!("Compiling the {is} to WebAssembly ..."));
    // A folder of its own: the outer cargo may still hold the lock of the usual one.
    let folder = target.join("web");
    let build = cargo()
        .current_dir(root)
        .args(["rustc", "--package", name, "--lib"])
        .args(["--profile", "wasm", "--target", TARGET])
        // The library is an rlib in its manifest, since a cdylib beside it
        // spoils the link-time optimisation of both.
        .args(["--crate-type", "cdylib"])
        .arg("--target-dir")
        .arg(&folder)
        .args(quiet.then_some("--quiet"))
        // What people read still goes to the error stream.
        .args(["--message-format", "json-render-diagnostics"])
        .stdout(Stdio::piped())
        .env("CARGO_ENCODED_RUSTFLAGS", remapped_paths(root))
        .env_remove("RUSTFLAGS")
        .env_remove("CARGO_BUILD_TARGET")
        .spawn()
        .and_then(std::process::Child::wait_with_output)
        .context(
            "cargo could not be started. Install Rust from https://rustup.rs and run this again",
        )?;
    if !build.status.success() {
        bail!(
            "The {is} did not compile. The lines above say in which file and line; correct that and run this again."
        );
    }
    let compiled = folder
        .join(TARGET)
        .join(format!("wasm/{}.wasm", name.replace('-', "_")));
    say("Binding it for the browser ...");
    let mut output = Bindgen::new()
        .input_path(&compiled)
        .web(true)?
        .typescript(false)
        .remove_name_section(true)
        .remove_producers_section(true)
        .omit_default_module_path(true)
        .generate_output()
        .with_context(|| format!("{} could not be bound", compiled.display()))?;
    let js = output.js().to_owned();
    let messages = String::from_utf8_lossy(&build.stdout);
    let crates = notices::read(&messages, TARGET, root)?;
    Ok(Module {
        js,
        crates,
        wasm: output.wasm_mut().emit_wasm(),
    })
}

fn cargo() -> Command {
    Command::new(std::env::var_os("CARGO").unwrap_or_else(|| OsString::from("cargo")))
}

/// Looks for the compiler's WebAssembly target and installs it if it can.
/// rustup does that by itself on many machines, but not where its automatic
/// installs are turned off, and the compiler's own message says little.
fn ensure_target(root: &Path, say: &dyn Fn(&str)) -> Result<()> {
    if has_target(root)? {
        return Ok(());
    }
    say(&format!(
        "The compiler has no {TARGET} yet. Running: rustup target add {TARGET}"
    ));
    let added = Command::new("rustup")
        .current_dir(root)
        .args(["target", "add", TARGET])
        .status();
    let why = match added {
        Ok(status) if status.success() && has_target(root)? => return Ok(()),
        Ok(_) => "rustup could not add it",
        Err(_) => "rustup is not on this machine, so it could not be added",
    };
    bail!(
        "Rust's {TARGET} target is missing and {why}.\n\
         With rustup and a network, type this in the project's folder and run again:\n\n    \
         rustup target add {TARGET}\n\n\
         With Rust from a distribution, install its package for that target \
         (Debian: libstd-rust-dev-wasm32; Fedora: rust-std-static-wasm32-unknown-unknown)."
    )
}

fn has_target(root: &Path) -> Result<bool> {
    let rustc = std::env::var_os("RUSTC").unwrap_or_else(|| OsString::from("rustc"));
    let output = Command::new(rustc)
        .current_dir(root)
        .args(["--print", "target-libdir", "--target", TARGET])
        .output()
        .context(
            "rustc could not be started. Install Rust from https://rustup.rs and run this again",
        )?;
    if !output.status.success() {
        bail!(
            "rustc failed: {}",
            String::from_utf8_lossy(&output.stderr).trim()
        );
    }
    Ok(Path::new(String::from_utf8_lossy(&output.stdout).trim()).is_dir())
}

/// Compiler flags that keep this machine's folders out of the module: the
/// places of panics are strings in it, and the same source should give the
/// same bytes, and so the same name, on every machine.
fn remapped_paths(root: &Path) -> OsString {
    let home = std::env::var_os("CARGO_HOME")
        .map(std::path::PathBuf::from)
        .or_else(|| {
            std::env::var_os("HOME")
                .or_else(|| std::env::var_os("USERPROFILE"))
                .map(|home| Path::new(&home).join(".cargo"))
        });
    let mut flags = OsString::new();
    let mut add = |from: &Path, to: &str| {
        if !flags.is_empty() {
            flags.push("\u{1f}");
        }
        flags.push("--remap-path-prefix=");
        flags.push(from);
        flags.push("=");
        flags.push(to);
    };
    // One folder a registry; its name differs between machines too.
    let registries = home.and_then(|home| std::fs::read_dir(home.join("registry/src")).ok());
    for registry in registries.into_iter().flatten().flatten() {
        add(&registry.path(), "crates");
    }
    add(root, "slipbark");
    flags
}
