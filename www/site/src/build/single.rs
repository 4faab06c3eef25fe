//! The single file: one page with everything in it, for a memory stick. Pages opened from a disk may load no module and
//! fetch nothing, so all stands in the page: the style sheet, the scripts, the site's own WebAssembly and the climate, as
//! one gzip stream in base64. A short script in plain letters unpacks it with the browser's own `DecompressionStream`,
//! which also finds a copy that was changed on its way: gzip ends in a checksum and the length (RFC 1952, 2.3.1).

mod scripts;

use crate::build::assets::{File, script, tidy};
use crate::build::languages;
use crate::build::packed;
use crate::build::template::{Template, fill};
use anyhow::{Context, Result, bail};
use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use scripts::{closed, open};
use sha2::{Digest as _, Sha256};
use std::collections::BTreeMap;
use std::path::Path;

/// Its name at the root of the site, in the first language.
pub(crate) const NAME: &str = "slipbark-single.html";
/// Its names in every language, as servers that match by a pattern know them.
pub(crate) const NAMES: &str = "slipbark-single(-[a-z]+)?\\.html";

/// Its name in a language.
pub(crate) fn name(language: &str) -> String {
    match language {
        "" | languages::FIRST => NAME.to_owned(),
        other => format!("slipbark-single-{other}.html"),
    }
}

/// Whether a path of the site is that of a single file.
pub(crate) fn is(path: &str) -> bool {
    languages::all().any(|language| path == name(language))
}

/// What goes in, as the site has it.
pub(crate) struct Parts<'a> {
    /// The binding's script, an ES module.
    pub engine: &'a str,
    /// The WebAssembly.
    pub wasm: &'a [u8],
    /// The style sheet of the calculators.
    pub style: &'a str,
    /// The packed climate places.
    pub climate: &'a [u8],
    /// What differs by country.
    pub regional: &'a [u8],
}

/// Makes the file in a language, with that language's words in it. Its build mark is filled in with those of the pages.
///
/// # Errors
/// A page or script that can't be read, or that has changed so that it can't
/// be put together in this way: the message names it.
pub(crate) fn render(root: &Path, parts: &Parts<'_>, language: &str) -> Result<File> {
    languages::speaking(language, || spoken(root, parts, language))
}

fn spoken(root: &Path, parts: &Parts<'_>, language: &str) -> Result<File> {
    let scripts = root.join("www/pages/js");
    let (engine, names) = closed(parts.engine)?;
    let element = open(&scripts, "element.js", &names)?;
    let start = script(&scripts.join("single.js"), &[])?;
    // A module of its own scope: what it calls `fetch` gives what was packed here.
    let module = tidy(&format!("{start}\n{engine}\n{element}"));
    let text = |file: &str| {
        std::fs::read_to_string(root.join(file))
            .with_context(|| format!("{file} could not be read"))
    };
    let style = tidy(&format!(
        "{}\n{}",
        text("www/style/tokens.css")?,
        text("www/style/page.css")?
    ));
    // What stands in the page as it is.
    let first = tidy(&text("www/style/first.css")?);
    let unpack = tidy(&script(&scripts.join("unpack.js"), &[])?);
    for (name, text) in [("unpack.js", &unpack), ("first.css", &first)] {
        if text.contains("</") || text.contains("<!--") {
            bail!(
                "{name}, which stands in the single file as it is, has `</` or `<!--`: the page would end it there"
            );
        }
    }
    let policy = format!(
        "default-src 'none'; script-src '{}' '{}' 'wasm-unsafe-eval'; style-src '{}' '{}'; img-src data:; base-uri 'none'; form-action 'none'",
        hash(&unpack),
        hash(&module),
        hash(&first),
        hash(&style)
    );

    let words = format!("words-{language}.bin");
    let mut in_order = vec![
        ("climate.bin", parts.climate),
        ("regional.bin", parts.regional),
        ("engine.wasm", parts.wasm),
        ("calculator.css", parts.style.as_bytes()),
        ("module.js", module.as_bytes()),
        ("style.css", style.as_bytes()),
    ];
    // Those of the first language are inside the WebAssembly.
    let own = languages::others().find(|(other, _)| *other == language);
    in_order.extend(own.map(|(_, text)| (words.as_str(), text.as_bytes())));
    let sizes: Vec<String> = in_order
        .iter()
        .map(|(name, bytes)| format!("{name} {}", bytes.len()))
        .collect();
    let bytes: Vec<&[u8]> = in_order.iter().map(|(_, bytes)| *bytes).collect();
    let packed = packed::kept_gzip(&bytes.concat(), &packed::cache(root));

    let shell = "www/pages/single.html";
    let page = Template::read(shell, &text(shell)?)?;
    let weighs = fill(
        "www/pages/weighs.html",
        &text("www/pages/weighs.html")?,
        &BTreeMap::new(),
    )?;
    let title = fill(
        shell,
        &format!("{{{{{}}}}}", page.head("title")?),
        &BTreeMap::new(),
    )?;
    let values = BTreeMap::from([
        ("title", title),
        ("lang", language.to_owned()),
        ("weighs", weighs),
        ("policy", policy),
        ("first", first),
        ("unpack", unpack),
        ("parts", sizes.join(" ")),
        ("packed", STANDARD.encode(packed)),
        ("version", env!("CARGO_PKG_VERSION").to_owned()),
        ("build", crate::build::pages::BUILD_MARK.to_owned()),
    ]);
    Ok(File::named(&name(language), page.body(&values)?))
}

/// For a policy: the SHA-256 of what stands in an element.
fn hash(text: &str) -> String {
    format!("sha256-{}", STANDARD.encode(Sha256::digest(text)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use flate2::read::GzDecoder;
    use std::io::Read as _;

    #[test]
    fn the_file_holds_its_parts_and_names_the_hashes_of_its_scripts_and_styles() {
        let root = crate::project::root().unwrap();
        let parts = Parts {
            engine: "function __wbg_init() {\n}\nexport function answer(q) {\n}\nexport { initSync, __wbg_init as default };\n",
            wasm: b"wasm",
            style: "style",
            climate: b"climate",
            regional: b"regional",
        };
        let file = render(&root, &parts, "es").unwrap();
        assert_eq!(file.path, "slipbark-single-es.html");
        assert!(is(&file.path) && is(NAME) && !is("es/index.html"));
        let page = String::from_utf8(file.bytes).unwrap();
        assert!(page.contains("<html lang=\"es\">"));
        let cut = |before: &str, after: &str| {
            let from = page.find(before).unwrap() + before.len();
            page[from..].split(after).next().unwrap().to_owned()
        };
        let sizes = cut("data-parts=\"", "\"");
        let packed = STANDARD
            .decode(cut(&format!("data-parts=\"{sizes}\">"), "<"))
            .unwrap();
        let mut all = Vec::new();
        GzDecoder::new(&*packed).read_to_end(&mut all).unwrap();

        let sizes: Vec<&str> = sizes.split(' ').collect();
        let mut rest = all.as_slice();
        let found: BTreeMap<&str, &[u8]> = sizes
            .chunks(2)
            .map(|pair| (pair[0], rest.split_off(..pair[1].parse().unwrap()).unwrap()))
            .collect();
        assert!(rest.is_empty());
        assert_eq!(found["engine.wasm"], b"wasm");
        let words = std::str::from_utf8(found["words-es.bin"]).unwrap();
        assert!(words.contains("Anille este árbol"));
        assert_eq!(found["climate.bin"], b"climate");
        assert_eq!(found["regional.bin"], b"regional");
        let policy = cut("Content-Security-Policy\" content=\"", "\"");
        for name in ["module.js", "style.css"] {
            let text = std::str::from_utf8(found[name]).unwrap();
            assert!(policy.contains(&hash(text)), "{name}");
        }
        for (before, after) in [
            ("<script type=\"module\">", "</script>"),
            ("<style>", "</style>"),
        ] {
            assert!(policy.contains(&hash(&cut(before, after))), "{before}");
        }
    }
}
