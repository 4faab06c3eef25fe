//! Packs the style sheet that the module brings: the same rules without comments and spare spaces.

use std::path::PathBuf;

/// Names of the sheets, in order.
const SHEETS: [&str; 9] = include!("../style/sheets.rs");

fn main() {
    println!("cargo::rerun-if-changed=../style");
    println!("cargo::rerun-if-changed=build.rs");
    let out = PathBuf::from(std::env::var("OUT_DIR").expect("cargo sets OUT_DIR"));
    let mut all = String::new();
    for name in SHEETS {
        let path = format!("../style/parts/{name}.css");
        match std::fs::read_to_string(&path) {
            Ok(sheet) => all.push_str(&sheet),
            Err(error) => println!("cargo::error={path} could not be read: {error}"),
        }
    }
    std::fs::write(out.join("calculator.css"), packed(&all)).expect("OUT_DIR takes a file");
}

/// Without comments; a gap is one space, and none beside a sign that ends a name, a value or a rule. What stands in
/// quotes stays.
fn packed(sheet: &str) -> String {
    let mut out = String::new();
    let mut quoted = false;
    for part in sheet.split("/*") {
        let rules = part.split_once("*/").map_or(part, |(_, rules)| rules);
        for letter in rules.chars() {
            quoted ^= letter == '"';
            if !quoted && letter.is_whitespace() {
                if !out.is_empty() && !out.ends_with(['{', '}', ';', ':', ',', ' ']) {
                    out.push(' ');
                }
                continue;
            }
            if !quoted && matches!(letter, '{' | '}') {
                out.truncate(out.trim_end_matches([' ', ';']).len());
            }
            out.push(letter);
        }
    }
    out.truncate(out.trim_end().len());
    out
}
