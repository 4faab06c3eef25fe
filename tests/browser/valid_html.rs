//! Every page that the build makes, in both languages, by the Nu Html Checker (MIT, `vnu-jar` of the npm registry): the
//! parser and the rules of the HTML Standard (WHATWG) and of ARIA in HTML (W3C). Its errors alone: its warnings count
//! files of the site as forbidden by the page's policy, since it reads them from a disk.

use crate::kit::pages_in;
use crate::site::{built, folder, scratch};
use serde_json::Value;
use std::path::PathBuf;
use std::process::Command;

const CHECKER: &str = "vnu-jar@26.9.27";

/// The checker's program, fetched once into the target folder.
fn checker() -> PathBuf {
    let home = scratch().join("npm-html");
    let jar = home.join("node_modules/vnu-jar/build/dist/vnu.jar");
    if !jar.is_file() {
        std::fs::create_dir_all(&home).expect("the target folder can be written");
        let quietly = ["--no-save", "--no-audit", "--no-fund", "--ignore-scripts"];
        let status = Command::new("npm")
            .arg("install")
            .args(quietly)
            .arg("--prefix")
            .arg(&home)
            .arg(CHECKER)
            .status()
            .expect("npm could not be started: install it (Debian: npm)");
        assert!(status.success(), "npm could not fetch {CHECKER}");
    }
    jar
}

/// What is wrong in pages: a line each, with file and line.
fn errors(pages: &[PathBuf]) -> Vec<String> {
    let output = Command::new("java")
        .arg("-jar")
        .arg(checker())
        .args(["--errors-only", "--format", "json", "--stdout"])
        .args(pages)
        .output()
        .expect("java could not be started: install it (Debian: default-jre-headless)");
    let said: Value = serde_json::from_slice(&output.stdout).unwrap_or_else(|error| {
        let told = String::from_utf8_lossy(&output.stderr);
        panic!("the checker does not answer in JSON: {error}: {told}")
    });
    let messages = said["messages"].as_array().expect("a list of messages");
    let line = |it: &Value| format!("{}:{}: {}", it["url"], it["lastLine"], it["message"]);
    messages.iter().map(line).collect()
}

#[test]
#[ignore = "needs the built site, npm and Java; tests/all runs it"]
fn every_page_of_both_languages_is_valid_html() {
    let mut pages = Vec::new();
    pages_in(built(), &mut pages);
    assert!(pages.len() > 270, "{} pages", pages.len());
    let spanish = pages
        .iter()
        .filter(|page| page.starts_with(built().join("es")));
    assert!(spanish.count() > 120, "and both languages");
    let wrong = errors(&pages);
    assert!(
        wrong.is_empty(),
        "{} errors, the first of them:\n{}",
        wrong.len(),
        wrong[..wrong.len().min(20)].join("\n")
    );
}

#[test]
#[ignore = "needs npm and Java; tests/all runs it"]
fn the_checker_of_html_finds_what_is_wrong() {
    let page = folder("wrong-html").join("index.html");
    let text = "<!doctype html><html lang=\"en\"><head><meta charset=\"utf-8\"><title>x</title></head>\
                <body><ul><p id=\"a\">a</p></ul><p id=\"a\">b</p></div></body></html>";
    std::fs::write(&page, text).expect("the target folder can be written");
    let wrong = errors(&[page]).join("\n");
    // A child that a list may not have, an id twice, an end without a beginning.
    for part in ["not allowed as child", "Duplicate ID", "Stray end tag"] {
        assert!(wrong.contains(part), "{part}: {wrong}");
    }
}
