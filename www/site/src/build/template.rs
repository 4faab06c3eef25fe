//! Fills `{{name}}` in page files: a value of the page, or else a message of the language in use.

use crate::build::markdown;
use anyhow::{Context as _, Result, bail};
use calc_view::out::escaped;
use calc_view::words::message::on_page;
use std::collections::BTreeMap;

/// A page file: what stands in its opening comment, and the rest.
pub(crate) struct Template {
    head: BTreeMap<String, String>,
    body: String,
    file: String,
}

impl Template {
    /// Reads a page file's text. Its opening comment holds lines `key: value`.
    ///
    /// # Errors
    /// When the comment is missing or one of its lines has no colon.
    pub(crate) fn read(file: &str, text: &str) -> Result<Self> {
        let Some((head, body)) = text
            .strip_prefix("<!--\n")
            .and_then(|rest| rest.split_once("-->\n"))
        else {
            bail!("{file}:1: a page begins with a comment of lines `key: value`");
        };
        let mut read = BTreeMap::new();
        for (index, line) in head.lines().enumerate() {
            let Some((key, value)) = line.split_once(':') else {
                bail!("{file}:{}: `{line}` is not `key: value`", index + 2);
            };
            read.insert(key.trim().to_owned(), value.trim().to_owned());
        }
        Ok(Self {
            head: read,
            body: body.to_owned(),
            file: file.to_owned(),
        })
    }

    /// A value of the opening comment.
    ///
    /// # Errors
    /// When it is not there.
    pub(crate) fn head(&self, key: &str) -> Result<&str> {
        match self.head.get(key) {
            Some(value) => Ok(value),
            None => bail!("{}: the opening comment has no `{key}`", self.file),
        }
    }

    /// The page's own part with its placeholders filled.
    ///
    /// # Errors
    /// As for [`fill`].
    pub(crate) fn body(&self, values: &BTreeMap<&str, String>) -> Result<String> {
        fill(&self.file, &self.body, values)
    }
}

/// Ends what hangs on a condition.
const END: &str = "{{end}}";

/// Replaces each `{{name}}` in `text` by its value, or else by the message of that id, whose gaps are such names too.
/// Values go in as they are: who makes them escapes them. `{{said:id}}` is a message for a script: its gaps stay, as
/// `{name}`. What stands between `{{if name}}` and `{{end}}` is left out where the value is empty, or not there; between
/// `{{if not name}}` and `{{end}}` where it is.
///
/// # Errors
/// With `file` and line: a name without a value, or an opening without an end.
pub(crate) fn fill(file: &str, text: &str, values: &BTreeMap<&str, String>) -> Result<String> {
    let mut filled = String::with_capacity(text.len());
    let mut rest = text;
    while let Some(start) = rest.find("{{") {
        let line = || {
            text[..text.len() - rest.len() + start]
                .lines()
                .count()
                .max(1)
        };
        let Some(length) = rest[start..].find("}}") else {
            bail!("{file}:{}: `{{{{` without `}}}}`", line());
        };
        let name = rest[start + 2..start + length].trim();
        filled.push_str(&rest[..start]);
        if let Some(condition) = name.strip_prefix("if ") {
            let (name, wanted) = match condition.strip_prefix("not ") {
                Some(name) => (name, false),
                None => (condition, true),
            };
            let holds = values.get(name).is_some_and(|value| !value.is_empty());
            let after = &rest[start + length + 2..];
            let Some(end) = after.find(END) else {
                bail!("{file}:{}: `{{{{{}}}}}` without `{END}`", line(), condition);
            };
            rest = if holds == wanted {
                after
            } else {
                &after[end..]
            };
            continue;
        }
        if name == "end" {
            // Of a condition that held.
        } else if let Some(value) = values.get(name) {
            filled.push_str(value);
        } else {
            let said = said(name, values).with_context(|| format!("{file}:{}", line()))?;
            filled.push_str(&said);
        }
        rest = &rest[start + length + 2..];
    }
    filled.push_str(rest);
    Ok(filled)
}

/// A message in the language in use as HTML.
fn said(name: &str, values: &BTreeMap<&str, String>) -> Result<String> {
    if let Some(text) = name.strip_prefix("said:").and_then(on_page) {
        return Ok(escaped(&text.replace("{{", "{").replace("}}", "}")));
    }
    let Some(text) = on_page(name) else {
        bail!("nothing is called {{{{{name}}}}}");
    };
    let folder = |name: &str| values.get(name).map_or("", String::as_str);
    let html = markdown::inline(&text, folder("home"), folder("base"))
        .with_context(|| format!("the message {name}"))?;
    fill(&format!("the message {name}"), &html, values)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_are_filled_and_unknown_ones_reported_with_their_line() {
        let values = BTreeMap::from([("a", "1".to_owned()), ("b", "{{a}}".to_owned())]);
        assert_eq!(fill("f", "x{{a}}y{{ b }}", &values).unwrap(), "x1y{{a}}");
        let error = fill("f.html", "one\ntwo {{c}}", &values).unwrap_err();
        assert_eq!(format!("{error:#}"), "f.html:2: nothing is called {{c}}");
        let error = fill("f.html", "{{a}}\n\n{{a", &values).unwrap_err();
        assert!(error.to_string().starts_with("f.html:"), "{error}");
    }

    #[test]
    fn a_part_stands_where_its_condition_holds() {
        let text = "a{{if x}}b{{x}}{{end}}{{if not x}}c{{end}}d";
        let with = |x: &str| fill("f", text, &BTreeMap::from([("x", x.to_owned())])).unwrap();
        assert_eq!((with("1"), with("")), ("ab1d".to_owned(), "acd".to_owned()));
        assert_eq!(fill("f", text, &BTreeMap::new()).unwrap(), "acd");
        let error = fill("f", "a\nb{{if x}}", &BTreeMap::new()).unwrap_err();
        assert!(error.to_string().starts_with("f:2: "), "{error}");
    }

    #[test]
    fn a_name_without_a_value_is_a_message_with_gaps_and_links_of_its_own() {
        let values = BTreeMap::from([
            ("shown", "<b>2</b>".to_owned()),
            ("all", "9".to_owned()),
            ("home", "/t/es/".to_owned()),
            ("base", "/t/".to_owned()),
        ]);
        let fill = |text: &str| fill("f", text, &values).unwrap();
        assert_eq!(
            fill("<p>{{filter-told}}</p>"),
            "<p><b>2</b> of 9 shown.</p>"
        );
        assert_eq!(fill("{{said:filter-told}}"), "{shown} of {all} shown.");
        let linked = fill("{{builder-without-script}}");
        assert!(
            linked.contains("<a href=\"/t/v1/config.schema.json\">schema</a>"),
            "{linked}"
        );
        let linked = fill("{{method-page-numbers-are}}");
        assert!(linked.contains("<a href=\"/t/es/sources/\">"), "{linked}");
        assert!(fill("{{offline-stick}}").contains("html\" download>one file</a>"));
    }
}
