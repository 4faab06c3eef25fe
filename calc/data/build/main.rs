//! Reads and checks `content/` and packs it. The build stops at a file and a line.

#[path = "../src/container.rs"]
mod container;
mod content;
#[path = "../src/list_tables.rs"]
#[allow(unreachable_pub, reason = "the library's own way to it is public")]
#[allow(dead_code, reason = "the reader asks for more of it")]
mod list_tables;
#[macro_use]
mod pack;
mod places;
#[path = "../src/table.rs"]
#[allow(dead_code, reason = "a builder of its own asks for more of it")]
#[allow(unreachable_pub, reason = "the library's own way to it is public")]
mod table;
#[path = "../src/tables.rs"]
mod tables;

use pack::{Pack, Streams};
use std::path::{Path, PathBuf};

fn main() {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("../..");
    for watched in ["evidence", "rules", "places"] {
        println!(
            "cargo::rerun-if-changed={}",
            root.join("content").join(watched).display()
        );
    }
    println!("cargo::rerun-if-changed=build");
    println!("cargo::rerun-if-changed=src/tables.rs");
    println!("cargo::rerun-if-changed=src/table.rs");
    println!("cargo::rerun-if-changed=src/container.rs");
    println!("cargo::rerun-if-changed=src/list_tables.rs");
    let out = PathBuf::from(std::env::var("OUT_DIR").expect("cargo sets OUT_DIR"));
    let all = content::read(&root).and_then(|read| {
        Ok((
            read,
            places::files(&root)?,
            content::list::read(&root)?,
            content::natives::file(&root)?,
        ))
    });
    match all {
        Ok((reference, places, list, natives)) => {
            std::fs::write(out.join("natives"), natives).expect("OUT_DIR takes a file");
            let mut of_list = Streams::default();
            list.pack(&mut of_list);
            for (name, bytes) in ["list-ints", "list-tags", "list-texts"]
                .iter()
                .zip(of_list.finish())
            {
                std::fs::write(out.join(name), bytes).expect("OUT_DIR takes a file");
            }
            let mut streams = Streams::default();
            reference.pack(&mut streams);
            let regional = reference
                .regional
                .get()
                .expect("the file beside the module");
            let mut beside = Streams::default();
            regional.pack(&mut beside);
            let file = container::write(&beside.finish());
            std::fs::write(out.join("regional"), file).expect("OUT_DIR takes a file");
            for (name, bytes) in ["ints", "tags", "texts"].iter().zip(streams.finish()) {
                std::fs::write(out.join(name), bytes).expect("OUT_DIR takes a file");
            }
            for (name, bytes) in places {
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
