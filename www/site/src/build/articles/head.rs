//! The head of an article: lines `key: value` between two lines `---`, before its text.

use super::picture::Picture;
use crate::build::lines::Lines;
use anyhow::Result;
use calc_view::kind::Kind;
use chrono::NaiveDate;
use std::collections::BTreeMap;

/// What the head of an article tells.
pub(crate) struct Head {
    pub(crate) title: String,
    /// One or two sentences: under the title, in lists, for programs that show a link.
    pub(crate) summary: String,
    /// Where it stands in the list of articles; without, behind those that say so, by its title.
    pub(crate) order: u32,
    /// The ids of its sources, each cited in the text.
    pub(crate) sources: Vec<String>,
    /// The day when somebody last read it through.
    pub(crate) reviewed: NaiveDate,
    /// The calculator in it, with what is preset.
    pub(crate) calculator: Option<Calculator>,
    /// The drawing in it.
    pub(crate) picture: Option<Picture>,
    /// Who wrote it; nothing: the project.
    pub(crate) by: String,
}

/// A calculator in an article: which, and the attributes of its element.
pub(crate) struct Calculator {
    pub(crate) kind: Kind,
    /// Name and value of each preset.
    pub(crate) presets: Vec<(&'static str, String)>,
}

/// Every key that a head may have, and whether it must.
const KEYS: [(&str, bool); 9] = [
    ("title", true),
    ("summary", true),
    ("order", false),
    ("sources", true),
    ("reviewed", true),
    ("calculator", false),
    ("picture", false),
    ("caption", false),
    ("by", false),
];

/// What may be preset in a calculator.
const PRESETS: [&str; 3] = ["species", "size", "region"];

/// Values by their keys, each with the byte where its line begins.
pub(super) type Said<'a> = BTreeMap<&'a str, (&'a str, usize)>;

/// The values of a head, and the byte where the text behind it begins. `keys` are those it may have, and whether it must; `is` what the file is, for people.
///
/// # Errors
/// A head that is missing, not closed, or a line of it that says nothing or too much: with file and line.
pub(super) fn keys<'a>(
    lines: &Lines<'a>,
    keys: &[(&str, bool)],
    is: &str,
) -> Result<(Said<'a>, usize)> {
    let text = lines.text;
    let Some(rest) = text.strip_prefix("---\n") else {
        let what = format!("{is} begins with a line --- and lines `key: value`");
        return Err(lines.problem(0, what));
    };
    let Some(end) = rest.find("\n---\n") else {
        return Err(lines.problem(0, "the head is not closed by a second line ---"));
    };
    let begin = "---\n".len();
    let mut found = Said::new();
    let mut at = begin;
    for line in rest[..end].lines() {
        let here = at;
        at += line.len() + 1;
        if line.trim().is_empty() || line.starts_with('#') {
            continue;
        }
        let Some((key, value)) = line.split_once(':') else {
            return Err(lines.problem(here, format!("\"{line}\" is not `key: value`")));
        };
        let (key, value) = (key.trim(), unquoted(value.trim()));
        if !keys.iter().any(|(known, _)| *known == key) {
            let known: Vec<&str> = keys.iter().map(|(known, _)| *known).collect();
            let what = format!("\"{key}\" is no key of a head: {}", known.join(", "));
            return Err(lines.problem(here, what));
        }
        if value.is_empty() {
            return Err(lines.problem(here, format!("{key} says nothing")));
        }
        if found.insert(key, (value, here)).is_some() {
            return Err(lines.problem(here, format!("{key} stands twice")));
        }
    }
    for (key, must) in keys {
        if *must && !found.contains_key(key) {
            return Err(lines.problem(0, format!("the head has no {key}")));
        }
    }
    Ok((found, begin + end + "\n---\n".len()))
}

/// The day of a head's line `reviewed`.
///
/// # Errors
/// No day, with file and line.
pub(super) fn reviewed(lines: &Lines<'_>, (value, at): (&str, usize)) -> Result<NaiveDate> {
    NaiveDate::parse_from_str(value, "%Y-%m-%d").map_err(|_| {
        let what = format!("reviewed: \"{value}\" is no day as 2026-11-30");
        lines.problem(at, what)
    })
}

/// Reads the head of a file, and tells where the text begins: at which byte.
///
/// # Errors
/// As [`keys`], and a value that can't be read.
pub(crate) fn read(lines: &Lines<'_>) -> Result<(Head, usize)> {
    let (found, begin) = keys(lines, &KEYS, "an article")?;
    let said = |key: &str| found.get(key).map_or("", |(value, _)| value).to_owned();
    let reviewed = reviewed(lines, found["reviewed"])?;
    let order = match found.get("order") {
        Some((order, at)) => order
            .parse()
            .map_err(|_| lines.problem(*at, format!("order: \"{order}\" is no number")))?,
        None => u32::MAX,
    };
    let sources = said("sources");
    let sources = sources.split(',').map(|id| id.trim().to_owned()).collect();
    let calculator = match found.get("calculator") {
        Some((value, at)) => Some(calculator(value).map_err(|what| lines.problem(*at, what))?),
        None => None,
    };
    let picture = match found.get("picture") {
        Some((value, at)) => {
            let caption = said("caption");
            if caption.is_empty() {
                return Err(lines.problem(*at, "a picture needs a caption"));
            }
            Some(Picture::of(value, caption).map_err(|what| lines.problem(*at, what))?)
        }
        None => None,
    };
    let head = Head {
        title: said("title"),
        summary: said("summary"),
        order,
        sources,
        reviewed,
        calculator,
        picture,
        by: said("by"),
    };
    Ok((head, begin))
}

/// A value without the quotes around it, which readers of heads allow.
fn unquoted(value: &str) -> &str {
    let inside = value.strip_prefix('"').and_then(|it| it.strip_suffix('"'));
    inside.unwrap_or(value)
}

/// `ring`, or `ring species=Norway maple; size=14`.
fn calculator(value: &str) -> Result<Calculator, String> {
    let (name, presets) = value.split_once(' ').unwrap_or((value, ""));
    let Some(kind) = Kind::ALL.into_iter().find(|kind| kind.name() == name) else {
        let all = Kind::ALL.map(Kind::name).join(", ");
        return Err(format!("calculator: \"{name}\" is none of {all}"));
    };
    let presets = presets
        .split(';')
        .map(str::trim)
        .filter(|it| !it.is_empty());
    let presets = presets.map(|preset| {
        let (key, value) = preset.split_once('=').unwrap_or((preset, ""));
        match PRESETS.into_iter().find(|known| *known == key.trim()) {
            Some(key) if !value.trim().is_empty() => Ok((key, value.trim().to_owned())),
            _ => {
                let all = PRESETS.join(", ");
                Err(format!(
                    "calculator: \"{preset}\" presets nothing: {all}, each as size=14"
                ))
            }
        }
    });
    Ok(Calculator {
        kind,
        presets: presets.collect::<Result<_, _>>()?,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    const GOOD: &str = "---\ntitle: A: b\nsummary: C.\nsources: S02, own\nreviewed: 2026-11-30\n\
        calculator: ring size=14; species=Norway maple\n---\nText\n";

    #[test]
    fn a_head_is_read_and_the_text_begins_behind_it() {
        let (head, begin) = read(&Lines::of("a.md", GOOD)).expect("a good head");
        assert_eq!(&GOOD[begin..], "Text\n");
        assert_eq!((head.title.as_str(), head.sources.len()), ("A: b", 2));
        let calculator = head.calculator.expect("there is one");
        assert_eq!(calculator.kind, Kind::Ring);
        assert_eq!(calculator.presets[1].1, "Norway maple");
    }

    #[test]
    fn what_is_wrong_is_told_with_its_line() {
        for (was, now, line, part) in [
            ("title: A: b\n", "", 1, "no title"),
            ("title: A: b", "titel: A", 2, "\"titel\""),
            ("summary: C.", "summary:", 3, "says nothing"),
            ("summary: C.", "summary", 3, "key: value"),
            ("summary: C.", "title: C", 3, "twice"),
            ("2026-11-30", "November", 5, "no day"),
            ("ring size", "rung size", 6, "\"rung\""),
            ("size=14", "height=14", 6, "\"height=14\""),
            ("\n---\nText", "\nText", 1, "not closed"),
        ] {
            let text = GOOD.replacen(was, now, 1);
            let said = read(&Lines::of("a.md", &text))
                .err()
                .map(|it| it.to_string());
            let said = said.unwrap_or_default();
            assert!(said.starts_with(&format!("a.md:{line}: ")), "{now}: {said}");
            assert!(said.contains(part), "{now}: {said}");
        }
    }
}
