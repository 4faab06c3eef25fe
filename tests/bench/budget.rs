//! The site's bytes against `budget.json`, strictly. It builds the site first.

use flate2::{Compression, write::GzEncoder};
use serde_json::Value;
use std::collections::BTreeMap;
use std::io::Write as _;
use std::path::{Path, PathBuf};
use std::process::Command;

fn root() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR"))
        .parent()
        .expect("the tests lie in the project")
}

fn build() -> PathBuf {
    let target = std::env::var_os("CARGO_TARGET_DIR")
        .map_or_else(|| root().join("target"), |folder| root().join(folder));
    let out = target.join("tests/measured");
    // Over an earlier build it would keep the assets of that one.
    let _ = std::fs::remove_dir_all(&out);
    let status = Command::new(env!("CARGO"))
        .current_dir(root())
        .args([
            "run",
            "--quiet",
            "--package",
            "slipbark",
            "--",
            "build",
            "--quiet",
            "--out",
        ])
        .arg(&out)
        .status()
        .expect("cargo can be started");
    assert!(status.success(), "the site did not build");
    out
}

/// Brotli (RFC 7932) at its best level and largest usual window, as a server sends what it has packed beforehand.
fn brotli(bytes: &[u8]) -> u64 {
    let params = brotli::enc::BrotliEncoderParams {
        quality: 11,
        lgwin: 24,
        size_hint: bytes.len(),
        ..Default::default()
    };
    let mut packed = Vec::new();
    brotli::BrotliCompress(&mut &*bytes, &mut packed, &params).expect("memory takes it");
    packed.len() as u64
}

fn gzip(bytes: &[u8]) -> u64 {
    let mut packer = GzEncoder::new(Vec::new(), Compression::best());
    packer.write_all(bytes).expect("memory takes it");
    packer.finish().expect("memory takes it").len() as u64
}

/// Whether a file is one of many pages of a kind: `species/NAME/index.html`, an article.
fn is_one_of(kind: &str, path: &Path) -> bool {
    let above = path.parent().and_then(Path::parent);
    above
        .and_then(Path::file_name)
        .is_some_and(|name| name == kind)
}

/// What is measured: each kind of file compressed, and all of the site as it is.
fn measure(folder: &Path) -> BTreeMap<&'static str, u64> {
    let mut sizes = BTreeMap::from([
        ("wasm_brotli", 0),
        ("list_wasm", 0),
        ("list_js", 0),
        ("list_css", 0),
        ("field_js", 0),
        ("field_css", 0),
        ("js", 0),
        ("css", 0),
        ("home_html", 0),
        ("single_html", 0),
        ("species_html", 0),
        ("article_html", 0),
        ("site_uncompressed", 0),
        ("site_whole", 0),
    ]);
    let mut folders = vec![folder.to_path_buf()];
    while let Some(next) = folders.pop() {
        for entry in std::fs::read_dir(&next).expect("the built site can be read") {
            let path = entry.expect("an entry").path();
            if path.is_dir() {
                // The folder of the full version is the same files once more, which a page loads instead.
                let name = path.file_name().and_then(|name| name.to_str());
                if !name.is_some_and(|name| name.starts_with(|first: char| first.is_ascii_digit()))
                {
                    folders.push(path);
                }
                continue;
            }
            // The packed files are the same ones once more.
            if path
                .extension()
                .is_some_and(|ending| ending == "br" || ending == "gz")
            {
                continue;
            }
            let bytes = std::fs::read(&path).expect("a built file can be read");
            // The kit is the site once more.
            if path != folder.join("slipbark-kit.zip") {
                *sizes.get_mut("site_whole").expect("named above") += bytes.len() as u64;
            }
            // Downloads: the kit is the site once more, the single file has a limit of its own.
            // The licences of others and the pictures for programs that show links are asked for by few.
            if [
                "slipbark-kit.zip",
                "notices.txt",
                "picture.png",
                "sources/slipbark.bib",
                "sources/slipbark.json",
            ]
            .iter()
            .any(|name| path == folder.join(name))
            {
                continue;
            }
            if path.starts_with(folder.join("pictures")) {
                continue;
            }
            if path == folder.join("slipbark-single.html") {
                sizes.insert("single_html", bytes.len() as u64);
                continue;
            }
            // The same in another language.
            if path == folder.join("slipbark-single-es.html") {
                continue;
            }
            // The pages of the species and the articles are kept by nobody before they are read: the largest of each has a
            // limit of its own.
            let many = [("species", "species_html"), ("articles", "article_html")];
            if let Some((_, limit)) = many.iter().find(|(kind, _)| is_one_of(kind, &path)) {
                let largest = sizes.get_mut(limit).expect("named above");
                *largest = (*largest).max(gzip(&bytes));
                continue;
            }
            *sizes.get_mut("site_uncompressed").expect("named above") += bytes.len() as u64;
            // What the page of a list, or that of field mode, alone loads has limits of its own.
            let name = path.file_name().and_then(|name| name.to_str());
            let of_lists = name.is_some_and(|name| name.starts_with("list"));
            let of_field = name.is_some_and(|name| name.starts_with("field"));
            let kind = match path.extension().and_then(|ending| ending.to_str()) {
                Some("wasm") if of_lists => "list_wasm",
                Some("js") if of_lists => "list_js",
                Some("css") if of_lists => "list_css",
                Some("js") if of_field => "field_js",
                Some("css") if of_field => "field_css",
                Some("wasm") => {
                    println!(
                        "wasm: {} bytes raw, {} after gzip",
                        bytes.len(),
                        gzip(&bytes)
                    );
                    *sizes.get_mut("wasm_brotli").expect("named above") += brotli(&bytes);
                    continue;
                }
                Some("js") => "js",
                Some("css") => "css",
                Some("html") if path == folder.join("index.html") => "home_html",
                _ => continue,
            };
            *sizes.get_mut(kind).expect("named above") += gzip(&bytes);
        }
    }
    sizes
}

#[test]
fn the_site_stays_within_its_budget_of_bytes() {
    let text = std::fs::read_to_string(root().join("tests/bench/budget.json"))
        .expect("the budget can be read");
    let budget: BTreeMap<String, Value> = serde_json::from_str(&text).expect("the budget is JSON");
    let sizes = measure(&build());
    let limits: BTreeMap<&str, u64> = budget
        .iter()
        .filter_map(|(name, limit)| Some((name.as_str(), limit.as_u64()?)))
        .collect();
    let measured: Vec<_> = sizes.keys().copied().collect();
    assert_eq!(
        limits.keys().copied().collect::<Vec<_>>(),
        measured,
        "each measure has its limit and each limit its measure"
    );
    let mut over = Vec::new();
    for (name, size) in &sizes {
        println!("{name}: {size} of {} bytes", limits[name]);
        assert!(*size > 0, "{name} was not found in the built site");
        if *size > limits[name] {
            over.push(format!(
                "{name}: {size} bytes, over its limit of {}",
                limits[name]
            ));
        }
    }
    assert!(over.is_empty(), "{}", over.join("; "));
}
