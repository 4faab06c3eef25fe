//! Renders the static pages from their files in `www/pages`.

use crate::build::assets::{Assets, File};
use crate::build::template::{Template, fill};
use crate::build::{markdown, sources, species_list, static_answers, version};
use anyhow::{Context, Result};
use calc_view::kind::Kind;
use calc_view::out::escaped;
use std::collections::BTreeMap;
use std::path::Path;

/// A page: its folder under the base, and its file in `www/pages`.
struct Page {
    folder: &'static str,
    file: &'static str,
}

/// Every page that has the head and the foot.
const PAGES: &[Page] = &[
    Page {
        folder: "",
        file: "home.html",
    },
    Page {
        folder: "species/",
        file: "species.html",
    },
    Page {
        folder: "example/",
        file: "example.html",
    },
    Page {
        folder: "method/",
        file: "method.html",
    },
    Page {
        folder: "sources/",
        file: "sources.html",
    },
    Page {
        folder: "embed/",
        file: "embed.html",
    },
    Page {
        folder: "embed/build/",
        file: "build.html",
    },
    Page {
        folder: "offline/",
        file: "offline.html",
    },
    Page {
        folder: "changes/",
        file: "changes.html",
    },
    Page {
        folder: "accessibility/",
        file: "accessibility.html",
    },
    Page {
        folder: "privacy/",
        file: "privacy.html",
    },
];

/// The pages named in the head, in order.
const NAV: &[(&str, &str)] = &[
    ("", "Tree"),
    ("species/", "Species"),
    ("method/", "Method"),
    ("sources/", "Sources"),
];

/// Stands for the build's id until all bytes are known.
pub(crate) const BUILD_MARK: &str = "@@build@@";

/// Renders all pages for a site that will live under `base`.
///
/// # Errors
/// A page file that can't be read or names something unknown, or a broken
/// table of sources: with file and line.
pub(crate) fn render(root: &Path, base: &str, assets: &Assets, full: &[File]) -> Result<Vec<File>> {
    let folder = root.join("www/pages");
    let read = |name: &str| {
        std::fs::read_to_string(folder.join(name))
            .with_context(|| format!("www/pages/{name} could not be read"))
    };
    let mut common = common_values(root, base, assets)?;
    let embed = full.iter().find(|file| file.path.ends_with("/embed.js"));
    common.insert(
        "embed-integrity",
        embed.map_or_else(String::new, |file| version::integrity(&file.bytes)),
    );
    let shell = read("shell.html")?;
    let calculator = fill(
        "www/pages/calculator-head.html",
        &read("calculator-head.html")?,
        &common,
    )?;
    common.insert("weighs", read("weighs.html")?);
    let mut tree = calc_view::out::Html::default();
    calc_view::draw::tree::stand(&mut tree);
    common.insert("tree", tree.into_string());
    let mut files = Vec::new();
    let mut write = |path: String,
                     name: &str,
                     here: Option<&str>,
                     common: &mut BTreeMap<&str, String>|
     -> Result<()> {
        let file = format!("www/pages/{name}");
        let page = Template::read(&file, &read(name)?)?;
        common.insert("title", escaped(page.head("title")?));
        common.insert("description", escaped(page.head("description")?));
        common.insert("nav", nav(base, here));
        common.insert("head", head_of(&page, &calculator));
        let body = page.body(common)?;
        common.insert("body", body);
        files.push(File::named(
            &path,
            fill("www/pages/shell.html", &shell, common)?,
        ));
        Ok(())
    };
    for page in PAGES {
        write(
            format!("{}index.html", page.folder),
            page.file,
            Some(page.folder),
            &mut common,
        )?;
    }
    write("404.html".to_owned(), "404.html", None, &mut common)?;
    // The bare pages for frames have neither head nor foot.
    let bare = Template::read("www/pages/frame.html", &read("frame.html")?)?;
    common.insert("head", head_of(&bare, &calculator));
    common.insert("policy", FRAME_POLICY.to_owned());
    for kind in Kind::ALL {
        let name = kind.name();
        common.insert("title", escaped(&calc_view::words::calculators::asks(kind)));
        common.insert("tag", format!("slipbark-{name}"));
        files.push(File::named(
            &format!("embed/{name}/index.html"),
            bare.body(&common)?,
        ));
    }
    Ok(files)
}

/// What a page with the calculator in it loads, so that the browser asks for
/// all of it at once and not for one file after the other.
fn head_of(page: &Template, calculator: &str) -> String {
    let has_it = page.head("calculator").is_ok_and(|value| value == "yes");
    if has_it {
        calculator.to_owned()
    } else {
        String::new()
    }
}

/// What any page may name.
fn common_values(
    root: &Path,
    base: &str,
    assets: &Assets,
) -> Result<BTreeMap<&'static str, String>> {
    let address = |name: &str| Ok::<_, anyhow::Error>(format!("{base}{}", assets.path(name)?));
    let mut values = BTreeMap::from([
        ("base", base.to_owned()),
        ("css", address("site.css")?),
        ("page-js", address("page.js")?),
        ("frame-js", address("frame.js")?),
        ("build-js", address("build.js")?),
        ("filter-js", address("filter.js")?),
        ("element-js", address("element.js")?),
        ("engine-js", address("engine.js")?),
        ("engine-wasm", address("engine.wasm")?),
        ("icon", address("icon.svg")?),
        ("version", env!("CARGO_PKG_VERSION").to_owned()),
        ("build", BUILD_MARK.to_owned()),
        ("policy", POLICY.to_owned()),
    ]);
    let sources = sources::make(root)?;
    values.insert("source-count", sources.count.to_string());
    values.insert("source-groups", sources.groups);
    values.insert("source-list", sources.list);
    let names = ["rule-count", "rules-print", "rules-practice", "rules-own"];
    for (name, count) in names.into_iter().zip(sources::rules(root)?) {
        values.insert(name, count.to_string());
    }
    let climate = calc_data::places::places();
    let thousands = |count: usize| calc_view::measure::number(count as u32);
    values.insert("climate-count", thousands(climate.stations.len()));
    values.insert("town-countries", thousands(calc_data::places::TOWNS.len()));
    values.insert("changes", changes(root)?);
    let species = species_list::make(base)?;
    values.insert("species-count", species.count.to_string());
    values.insert("species-letters", species.letters);
    values.insert("species-suits", species.choices);
    values.insert("species-list", species.list);
    let kinds = Kind::ALL.map(|kind| {
        let asks = escaped(&calc_view::words::calculators::asks(kind));
        format!("<option value=\"{}\">{asks}</option>", kind.name())
    });
    values.insert("kinds", kinds.concat());
    values.insert("species-choices", static_answers::species_choices());
    values.insert("example", static_answers::example(base)?);
    Ok(values)
}

/// The policy of our own pages: nothing but our own files, and WebAssembly.
pub(crate) const POLICY: &str = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; \
     img-src 'self'; connect-src 'self'; manifest-src 'self'; worker-src 'self'; base-uri 'none'; form-action 'self'";

/// That of the bare page for frames: it reads settings from the address that its host names, and nothing else from there.
pub(crate) const FRAME_POLICY: &str = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; \
     img-src 'self'; connect-src 'self' http: https:; manifest-src 'self'; worker-src 'self'; base-uri 'none'; form-action 'self'";

/// The folders of the bare pages for frames, as a pattern.
pub(crate) fn frames() -> String {
    Kind::ALL.map(Kind::name).join("|")
}

/// The policy of the page at `path`.
pub(crate) fn policy(path: &str) -> &'static str {
    let folder = path
        .strip_prefix("embed/")
        .and_then(|rest| rest.strip_suffix("/index.html"));
    if Kind::ALL.iter().any(|kind| folder == Some(kind.name())) {
        FRAME_POLICY
    } else {
        POLICY
    }
}

fn nav(base: &str, here: Option<&str>) -> String {
    NAV.iter()
        .map(|(folder, name)| {
            let current = if here == Some(*folder) {
                " aria-current=\"page\""
            } else {
                ""
            };
            format!("<li><a href=\"{base}{folder}\"{current}>{name}</a></li>")
        })
        .collect()
}

/// The changes file as HTML.
fn changes(root: &Path) -> Result<String> {
    let path = root.join("content/changes.md");
    if !path.is_file() {
        return Ok("<p>No release yet: this is the first.</p>".to_owned());
    }
    let text = std::fs::read_to_string(&path).context("content/changes.md could not be read")?;
    // Its title is the page's, which the page's own file states.
    let rest = markdown::title_and_rest(&text).map_or(text.as_str(), |(_, rest)| rest);
    Ok(markdown::render(rest))
}
