//! What the elements have: attributes, properties, methods and events, once. From here come the lists in the scripts, the
//! table on the page "Put it on your site", that of the README, and the types of the element in `slipbark.d.ts`.

use crate::build::markdown;
use anyhow::Result;
use calc_view::kind::Kind;
use calc_view::out::escaped;
use calc_view::words::m;
use calc_view::words::message::Word;

/// An attribute of the elements.
struct Attribute {
    name: &'static str,
    /// All that it may be; else examples of it.
    values: &'static [&'static str],
    /// Whether `values` is all.
    closed: bool,
    /// What holds without it, where that is one of its values.
    default: &'static str,
    /// Whether a frame takes it in its address.
    framed: bool,
    does: Word,
}

const fn one_of(
    name: &'static str,
    values: &'static [&'static str],
    default: &'static str,
    framed: bool,
    does: Word,
) -> Attribute {
    Attribute {
        name,
        values,
        closed: true,
        default,
        framed,
        does,
    }
}

const fn such_as(name: &'static str, values: &'static [&'static str], does: Word) -> Attribute {
    Attribute {
        name,
        values,
        closed: false,
        default: "",
        framed: true,
        does,
    }
}

const ATTRIBUTES: [Attribute; 14] = [
    such_as("lang", &["en", "es", "es-ES"], m::INTERFACE_ATTRIBUTE_LANG),
    one_of(
        "units",
        &["us", "metric", "both"],
        "both",
        true,
        m::INTERFACE_ATTRIBUTE_UNITS,
    ),
    such_as("config", &["our-trees.json"], m::INTERFACE_ATTRIBUTE_CONFIG),
    such_as("species", &["Norway maple"], m::INTERFACE_ATTRIBUTE_SPECIES),
    such_as("size", &["14 1/2"], m::INTERFACE_ATTRIBUTE_SIZE),
    one_of(
        "size-unit",
        &["in", "cm", "mm"],
        "in",
        true,
        m::INTERFACE_ATTRIBUTE_SIZE_UNIT,
    ),
    such_as("date", &["2027-06-12"], m::INTERFACE_ATTRIBUTE_DATE),
    such_as("region", &["US-MA"], m::INTERFACE_ATTRIBUTE_REGION),
    one_of(
        "theme",
        &["inherit", "auto", "light", "dark", "sun"],
        "inherit",
        true,
        m::INTERFACE_ATTRIBUTE_THEME,
    ),
    one_of(
        "heading-level",
        &["2", "3", "4", "5"],
        "2",
        true,
        m::INTERFACE_ATTRIBUTE_HEADING_LEVEL,
    ),
    one_of(
        "share",
        &["fragment", "none"],
        "none",
        false,
        m::INTERFACE_ATTRIBUTE_SHARE,
    ),
    one_of(
        "storage",
        &["draft", "none"],
        "none",
        false,
        m::INTERFACE_ATTRIBUTE_STORAGE,
    ),
    one_of(
        "print",
        &["self", "page", "none"],
        "self",
        true,
        m::INTERFACE_ATTRIBUTE_PRINT,
    ),
    one_of(
        "events",
        &["full", "none"],
        "none",
        false,
        m::INTERFACE_ATTRIBUTE_EVENTS,
    ),
];

/// A property: its name, whether a page may set it, its type in TypeScript, and what it is.
const PROPERTIES: [(&str, bool, &str, Word); 6] = [
    (
        "config",
        true,
        "object | undefined",
        m::INTERFACE_PROPERTY_CONFIG,
    ),
    ("inputs", true, "Question", m::INTERFACE_PROPERTY_INPUTS),
    (
        "result",
        false,
        "Answer | null | undefined",
        m::INTERFACE_PROPERTY_RESULT,
    ),
    ("ready", false, "Promise<void>", m::INTERFACE_PROPERTY_READY),
    (
        "version",
        false,
        "string | undefined",
        m::INTERFACE_PROPERTY_VERSION,
    ),
    (
        "dataVersion",
        false,
        "string | undefined",
        m::INTERFACE_PROPERTY_DATA_VERSION,
    ),
];

/// A method without arguments, what it gives in TypeScript, and what it does.
const METHODS: [(&str, &str, Word); 4] = [
    (
        "compute",
        "Answer | Problems | undefined",
        m::INTERFACE_METHOD_COMPUTE,
    ),
    ("reset", "void", m::INTERFACE_METHOD_RESET),
    (
        "exportIcs",
        "string | undefined",
        m::INTERFACE_METHOD_EXPORT_ICS,
    ),
    ("focusFirst", "void", m::INTERFACE_METHOD_FOCUS_FIRST),
];

/// An event, what its `detail` has beside `schema: 1` in TypeScript, and when it comes.
const EVENTS: [(&str, &str, Word); 6] = [
    (
        "slipbark-ready",
        "version: string, dataVersion: string",
        m::INTERFACE_EVENT_READY,
    ),
    (
        "slipbark-input",
        "inputs: Question, changed: string",
        m::INTERFACE_EVENT_INPUT,
    ),
    (
        "slipbark-result",
        "inputs: Question, result: Answer",
        m::INTERFACE_EVENT_RESULT,
    ),
    (
        "slipbark-invalid",
        "problems: Array<Problem>",
        m::INTERFACE_EVENT_INVALID,
    ),
    (
        "slipbark-export",
        "kind: string, filename: string, text: string",
        m::INTERFACE_EVENT_EXPORT,
    ),
    (
        "slipbark-failure",
        "code: \"wasm-blocked\" | \"network\" | \"config\" | \"data\", problems?: Array<object>",
        m::INTERFACE_EVENT_FAILURE,
    ),
];

/// The attributes as a script's object: each with all that it may be, or null.
pub(crate) fn attributes() -> String {
    let all = ATTRIBUTES.iter().map(|it| {
        let values = if it.closed {
            it.values.into()
        } else {
            serde_json::Value::Null
        };
        (it.name.to_owned(), values)
    });
    serde_json::Value::Object(all.collect()).to_string()
}

/// The names of the attributes.
pub(crate) fn attribute_names() -> [&'static str; 14] {
    ATTRIBUTES.each_ref().map(|it| it.name)
}

/// The attributes that a frame takes in its address, as a script's list.
pub(crate) fn passed() -> String {
    let all = ATTRIBUTES.iter().filter(|it| it.framed);
    let all: Vec<_> = all.map(|it| it.name).collect();
    serde_json::Value::from(all).to_string()
}

/// A row of the table: what it is, its name, its values, what holds without it, and what it does.
struct Row {
    kind: String,
    name: String,
    values: Vec<String>,
    default: String,
    does: String,
}

fn rows() -> Vec<Row> {
    let row = |of: Word, name: &str, values: &[&str], default: &str, does: Word| Row {
        kind: of.to_string(),
        name: name.to_owned(),
        values: values.iter().map(|it| (*it).to_owned()).collect(),
        default: default.to_owned(),
        does: does.to_string(),
    };
    let attributes = ATTRIBUTES.iter().map(|it| {
        let of = m::INTERFACE_ATTRIBUTE;
        row(of, it.name, it.values, it.default, it.does)
    });
    let properties = PROPERTIES.iter().map(|(name, set, kind, does)| {
        let of = if *set {
            m::INTERFACE_PROPERTY
        } else {
            m::INTERFACE_READ
        };
        row(of, name, &[kind], "", *does)
    });
    let methods = METHODS.iter().map(|(name, gives, does)| {
        let name = format!("{name}()");
        row(m::INTERFACE_METHOD, &name, &[gives], "", *does)
    });
    let events = EVENTS.iter().map(|(name, detail, does)| {
        let of = m::INTERFACE_EVENT;
        row(of, name, &[detail], "", *does)
    });
    attributes
        .chain(properties)
        .chain(methods)
        .chain(events)
        .collect()
}

fn heads() -> [String; 5] {
    [
        m::INTERFACE_WHAT.to_string(),
        m::INTERFACE_NAME.to_string(),
        m::INTERFACE_VALUES.to_string(),
        m::INTERFACE_DEFAULT.to_string(),
        m::INTERFACE_DOES.to_string(),
    ]
}

/// The table for a page, in the language in use.
///
/// # Errors
/// A row that says more than plain words, code and bold.
pub(crate) fn table() -> Result<String> {
    let mut out = String::from("<thead><tr>");
    for head in heads() {
        out += &format!("<th scope=\"col\">{}</th>", escaped(&head));
    }
    out += "</tr></thead>\n<tbody>\n";
    let code = |text: &str| {
        if text.is_empty() {
            "–".to_owned()
        } else {
            format!("<code>{}</code>", escaped(text))
        }
    };
    for row in rows() {
        let values: Vec<_> = row.values.iter().map(|value| code(value)).collect();
        out += &format!(
            "<tr><td>{}</td><th scope=\"row\"><code>{}</code></th><td>{}</td><td>{}</td><td>{}</td></tr>\n",
            escaped(&row.kind),
            row.name,
            values.join(", "),
            code(&row.default),
            markdown::inline(&row.does, "", "")?,
        );
    }
    Ok(out + "</tbody>")
}

/// The same as Markdown.
#[cfg(test)]
fn markdown_table() -> String {
    let mut out = format!("| {} |\n|---|---|---|---|---|\n", heads().join(" | "));
    let code = |text: &str| {
        if text.is_empty() {
            "–".to_owned()
        } else {
            // A bar would end the cell.
            format!("`{}`", text.replace('|', "\\|"))
        }
    };
    for row in rows() {
        let values: Vec<_> = row.values.iter().map(|value| code(value)).collect();
        out += &format!(
            "| {} | {} | {} | {} | {} |\n",
            row.kind,
            code(&row.name),
            values.join(", "),
            code(&row.default),
            row.does
        );
    }
    out
}

/// The element in TypeScript; `Question`, `Answer`, `Problem` and `Problems` stand before it.
pub(crate) fn typescript() -> String {
    let mut out = String::new();
    let says = |does: Word| format!("  /** {} */\n", does.text().replace("*/", "* /"));
    out += "/** The attributes of each element. */\nexport interface SlipbarkAttributes {\n";
    for it in &ATTRIBUTES {
        let kind = if it.closed {
            let all: Vec<_> = it.values.iter().map(|it| format!("\"{it}\"")).collect();
            all.join(" | ")
        } else {
            "string".to_owned()
        };
        out += &says(it.does);
        out += &format!("  \"{}\"?: {kind},\n", it.name);
    }
    out += "}\n/** What the events carry as `detail`. */\nexport interface SlipbarkEvents {\n";
    for (name, detail, does) in EVENTS {
        out += &says(does);
        out += &format!("  \"{name}\": {{ schema: 1, {detail}, }},\n");
    }
    out += "}\n/** A calculator in a page. */\nexport interface SlipbarkElement extends HTMLElement {\n";
    for (name, set, kind, does) in PROPERTIES {
        out += &says(does);
        let read = if set { "" } else { "readonly " };
        out += &format!("  {read}{name}: {kind};\n");
    }
    for (name, gives, does) in METHODS {
        out += &says(does);
        out += &format!("  {name}(): {gives};\n");
    }
    out += "}\ndeclare global {\n  interface HTMLElementTagNameMap {\n";
    for kind in Kind::ALL {
        out += &format!("    \"slipbark-{}\": SlipbarkElement,\n", kind.name());
    }
    out += "  }\n  interface HTMLElementEventMap {\n";
    for (name, ..) in EVENTS {
        out += &format!("    \"{name}\": CustomEvent<SlipbarkEvents[\"{name}\"]>,\n");
    }
    out + "  }\n}\n"
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::build::languages;

    #[test]
    fn the_readme_has_the_table() {
        let root = crate::project::root().unwrap();
        let readme = std::fs::read_to_string(root.join("README.md")).unwrap();
        let table = languages::speaking("en", markdown_table);
        assert!(
            readme.contains(&table),
            "README.md should have this table:\n\n{table}"
        );
    }

    #[test]
    fn every_language_says_what_each_part_does() {
        let english = languages::speaking("en", rows);
        assert_eq!(english.len(), 30);
        for language in languages::all().skip(1) {
            for (row, first) in languages::speaking(language, rows).iter().zip(&english) {
                assert_ne!(row.does, first.does, "{language}: {}", row.name);
            }
        }
    }

    #[test]
    fn the_scripts_hold_what_is_listed_here() {
        let root = crate::project::root().unwrap();
        let script =
            |name: &str| std::fs::read_to_string(root.join("www/pages/js").join(name)).unwrap();
        let element = script("element.js");
        for (name, set, ..) in PROPERTIES {
            assert!(element.contains(&format!("  get {name}()")), "{name}");
            assert_eq!(element.contains(&format!("  set {name}(")), set, "{name}");
        }
        for (name, ..) in METHODS {
            assert!(element.contains(&format!("  {name}() {{")), "{name}");
        }
        let events = std::fs::read_to_string(root.join("www/element/src/host/events.rs")).unwrap();
        let settings =
            std::fs::read_to_string(root.join("www/element/src/host/settings.rs")).unwrap();
        for (name, ..) in EVENTS {
            let told = [&element, &events, &settings]
                .iter()
                .any(|text| text.contains(&format!("\"{name}\"")));
            assert!(told, "{name}");
        }
        for file in ["element.js", "frame.js", "stepdown.js"] {
            let made = crate::build::assets::script(&root.join("www/pages/js").join(file), &[]);
            assert!(made.unwrap().contains("\"heading-level\""), "{file}");
        }
    }
}
