//! What a page is, for programs that look through sites: JSON-LD in the terms of schema.org.

use crate::build::addresses;
use calc::terms::species::Species;
use chrono::NaiveDate;
use serde_json::{Value, json};

/// A text with a day and sources.
pub(crate) struct Text<'a> {
    pub(crate) title: &'a str,
    pub(crate) summary: &'a str,
    pub(crate) language: &'a str,
    /// The address of its page behind the origin.
    pub(crate) address: &'a str,
    pub(crate) reviewed: NaiveDate,
    /// Who wrote it; nothing: the project.
    pub(crate) by: &'a str,
    /// What people know its sources by.
    pub(crate) sources: Vec<&'a str>,
}

/// An article.
pub(crate) fn article(text: &Text<'_>) -> String {
    let by = match text.by {
        "" => "Slipbark",
        by => by,
    };
    let mut article = page(
        "Article",
        text.title,
        text.summary,
        text.language,
        text.address,
    );
    article["dateModified"] = json!(text.reviewed.to_string());
    article["author"] = json!({ "@type": "Organization", "name": by });
    article["citation"] = json!(text.sources);
    block(&article)
}

/// The page of one species, in the language in use.
pub(crate) fn species(
    species: &Species,
    name: &str,
    summary: &str,
    language: &str,
    address: &str,
) -> String {
    let mut page = page("WebPage", name, summary, language, address);
    let mut names: Vec<&str> = vec![name];
    let others = species.names.iter().copied();
    names.extend(others.filter(|known| !known.eq_ignore_ascii_case(name)));
    page["about"] = json!({
        "@type": "Taxon",
        "name": species.scientific,
        "taxonRank": "species",
        "alternateName": names,
    });
    block(&page)
}

/// The first page: a program in the browser.
pub(crate) fn application(title: &str, summary: &str, language: &str, address: &str) -> String {
    let mut page = page("WebApplication", title, summary, language, address);
    page["applicationCategory"] = json!("UtilitiesApplication");
    page["operatingSystem"] = json!("Any");
    page["browserRequirements"] = json!("WebAssembly");
    page["softwareVersion"] = json!(env!("CARGO_PKG_VERSION"));
    page["isAccessibleForFree"] = json!(true);
    block(&page)
}

fn page(kind: &str, title: &str, summary: &str, language: &str, address: &str) -> Value {
    let named = if kind == "Article" {
        "headline"
    } else {
        "name"
    };
    json!({
        "@context": "https://schema.org",
        "@type": kind,
        named: title,
        "description": summary,
        "inLanguage": language,
        "url": format!("{}{address}", addresses::ORIGIN),
        "isPartOf": { "@type": "WebSite", "name": "Slipbark" },
    })
}

/// The element of a page's head. A `<` in it could end it, so that it is written as an escape.
fn block(value: &Value) -> String {
    let text = value.to_string().replace('<', "\\u003c");
    format!("<script type=\"application/ld+json\">{text}</script>\n")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_text_cannot_end_its_element() {
        let html = article(&Text {
            title: "A </script><b>",
            summary: "\"x\"",
            language: "en",
            address: "/articles/a/",
            reviewed: NaiveDate::default(),
            by: "",
            sources: vec!["Neely 1979"],
        });
        let inside = html
            .strip_prefix("<script type=\"application/ld+json\">")
            .and_then(|rest| rest.strip_suffix("</script>\n"))
            .expect("one element");
        assert!(!inside.contains('<'), "{inside}");
        let value: Value = serde_json::from_str(inside).expect("JSON");
        assert_eq!(value["headline"], "A </script><b>");
        assert_eq!(value["citation"], json!(["Neely 1979"]));
    }
}
