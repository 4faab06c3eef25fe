//! The style sheets: one for the calculators, which pages of ours link and the module's script fetches, one for our pages.

use anyhow::{Context, Result};
use std::path::Path;

/// Names of the calculators' sheets, in order.
const PARTS: [&str; 9] = include!("../../../style/sheets.rs");

/// What calculators show, with the tokens before it, which mean nothing inside a calculator and all on a page of ours.
///
/// # Errors
/// A sheet that can't be read.
pub(crate) fn calculator(root: &Path) -> Result<String> {
    let parts = PARTS.map(|name| format!("parts/{name}.css"));
    let mut all = read(root, "tokens.css")?;
    for part in parts {
        all.push_str(&read(root, &part)?);
    }
    Ok(packed(&all))
}

/// The pages' own rules, which may depend on those of the calculators: it stands behind them.
///
/// # Errors
/// A sheet that can't be read.
pub(crate) fn pages(root: &Path) -> Result<String> {
    Ok(packed(&read(root, "page.css")?))
}

/// A sheet that one page alone loads.
///
/// # Errors
/// A sheet that can't be read.
pub(crate) fn packed_file(root: &Path, name: &str) -> Result<String> {
    Ok(packed(&read(root, name)?))
}

fn read(root: &Path, name: &str) -> Result<String> {
    let path = root.join("www/style").join(name);
    std::fs::read_to_string(&path).with_context(|| format!("{} could not be read", path.display()))
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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn packing_takes_comments_and_gaps_and_keeps_what_stands_in_quotes() {
        let sheet =
            "/* a */\nb > c,\n d {\n  margin: 0 auto;\n}\ne::before { content: \"x  { y\"; }\n";
        assert_eq!(
            packed(sheet),
            "b > c,d{margin:0 auto}e::before{content:\"x  { y\"}"
        );
    }
}
