//! Reads and checks `content/` and packs it. The build stops at a file and a line.

mod guides;
mod pack;
mod rules;
mod species;
mod table;
#[path = "../src/tags.rs"]
mod tags;

use std::path::{Path, PathBuf};

fn main() {
    let content = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../content");
    for watched in ["evidence", "rules"] {
        println!(
            "cargo::rerun-if-changed={}",
            content.join(watched).display()
        );
    }
    // The models cite sources of their own.
    println!("cargo::rerun-if-changed=../core/src");
    println!("cargo::rerun-if-changed=build");
    println!("cargo::rerun-if-changed=src/tags.rs");
    let out = PathBuf::from(std::env::var("OUT_DIR").expect("cargo sets OUT_DIR"));
    match write(&content) {
        Ok(streams) => {
            for (name, bytes) in ["ints", "tags", "texts", "prose"].iter().zip(streams) {
                std::fs::write(out.join(name), bytes).expect("OUT_DIR takes a file");
            }
        }
        Err(problem) => {
            // Cargo shows an error of a build script whole; a panic would bury it in a backtrace.
            println!("cargo::error={problem}");
            std::process::exit(1);
        }
    }
}

/// In the order in which `src/unpack.rs` reads.
fn write(content: &Path) -> Result<[Vec<u8>; 4], table::Problem> {
    let sources = rules::Sources::read(content)?;
    let mut pack = pack::Pack::default();
    species::write(content, &sources, &mut pack)?;
    rules::methods(content, &sources, &mut pack)?;
    rules::constants(content, &sources, &mut pack)?;
    rules::cautions(content, &sources, &mut pack)?;
    rules::outlook(content, &sources, &mut pack)?;
    rules::cavity_users(content, &sources, &mut pack)?;
    guides::snags(content, &sources, &mut pack)?;
    guides::method_minutes(content, &sources, &mut pack)?;
    rules::restrictions(content, &sources, &mut pack)?;
    sources.write(&content.join("../calc/core/src"), &mut pack);
    Ok(pack.finish())
}
