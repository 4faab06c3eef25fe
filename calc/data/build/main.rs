//! Reads and checks `content/` and writes it as Rust constants. The build stops at a file and a line.

mod emit;
mod rules;
mod species;
mod table;

use std::path::{Path, PathBuf};

fn main() {
    let content = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../content");
    println!(
        "cargo::rerun-if-changed={}",
        content.join("evidence").display()
    );
    println!(
        "cargo::rerun-if-changed={}",
        content.join("rules").display()
    );
    println!("cargo::rerun-if-changed=build");
    let out = PathBuf::from(std::env::var("OUT_DIR").expect("cargo sets OUT_DIR"));
    match write(&content) {
        Ok(text) => std::fs::write(out.join("reference.rs"), text).expect("OUT_DIR takes a file"),
        Err(problem) => {
            // Cargo shows an error of a build script whole; a panic would bury it in a backtrace.
            println!("cargo::error={problem}");
            std::process::exit(1);
        }
    }
}

fn write(content: &Path) -> Result<String, table::Problem> {
    let sources = rules::Sources::read(content)?;
    let mut out = String::from(
        "use calc::evidence::{Cite, Grade};\nuse calc::model::effort::{EffortConstants, Three};\n\
         use calc::model::height::HeightConstants;\nuse calc::model::method::{Cell, Condition, Level};\n\
         use calc::model::reach::ReachConstants;\nuse calc::model::ring::RingConstants;\n\
         use calc::reference::*;\nuse calc::timing::WoodClass;\n\
         use calc::timing::restrictions::{DiseaseRegion, Restriction, Scope, Topic};\n\n",
    );
    species::write(content, &sources, &mut out)?;
    rules::methods(content, &sources, &mut out)?;
    rules::constants(content, &sources, &mut out)?;
    rules::cautions(content, &sources, &mut out)?;
    rules::outlook(content, &sources, &mut out)?;
    rules::cavity_users(content, &sources, &mut out)?;
    rules::restrictions(content, &sources, &mut out)?;
    sources.write(&mut out);
    Ok(out)
}
