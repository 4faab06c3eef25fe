//! The single file: one page with everything in it, for a memory stick. Pages
//! opened from a disk may load no module and fetch nothing, so all stands in
//! the page: the style sheet, the scripts, the WebAssembly and the climate as
//! one packed stream, and in plain letters what unpacks it.
//!
//! The page is in windows-1252, in which a letter holds a byte ([`packed`]).
//! From a disk browsers take that from the page. A server that calls it UTF-8
//! has the last word, and the letters are lost: so ours names the right set
//! for this one file, as do the ready files for others, the links to it save
//! it rather than show it, and where all that fails the page says to save it.
//! Fetching itself once more would do too, but this file asks nobody.

mod packed;
mod scripts;

use crate::assets::{File, script};
use crate::template::{Template, escape};
use anyhow::{Context, Result, bail};
use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use scripts::{closed, open, tidy};
use sha2::{Digest as _, Sha256};
use std::collections::BTreeMap;
use std::path::Path;

/// Its name at the root of the site.
pub const NAME: &str = "slipbark-single.html";

/// What it is, for the one who sends it.
pub const KIND: &str = "text/html; charset=windows-1252";

/// Stands in the page for what is packed, which is no text.
const PACKED_MARK: &str = "@@packed@@";

/// What goes in, as the site has it.
pub struct Parts<'a> {
    /// The binding's script, an ES module.
    pub engine: &'a str,
    /// The WebAssembly.
    pub wasm: &'a [u8],
    /// The packed climate places.
    pub climate: &'a [u8],
}

/// Makes the file. Its build mark is filled in with those of the pages.
///
/// # Errors
/// A page or script that can't be read, or that has changed so that it can't
/// be put together in this way: the message names it.
pub fn render(root: &Path, parts: &Parts<'_>) -> Result<File> {
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
    let unpack = script(&scripts.join("unpack.js"), &[])?;
    let unpack = tidy(&format!(
        "{}\n{unpack}",
        script(&scripts.join("lzma.js"), &[])?
    ));
    for (name, text) in [("a script", &unpack), ("first.css", &first)] {
        if !text.is_ascii() || text.contains("</") || text.contains("<!--") {
            bail!(
                "{name} that stands in the single file has a letter beyond ASCII, `</` or `<!--`: the page could not hold it as it is"
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

    let in_order = [
        ("climate.bin", parts.climate),
        ("engine.wasm", parts.wasm),
        ("module.js", module.as_bytes()),
        ("style.css", style.as_bytes()),
    ];
    let sizes = in_order.map(|(name, bytes)| format!("{name} {}", bytes.len()));
    let file = packed::lzma(&in_order.map(|(_, bytes)| bytes).concat())?;
    let mut sum = flate2::Crc::new();
    sum.update(&file);
    let (letters, line) = packed::letters(&file);

    let shell = "www/pages/single.html";
    let page = Template::read(shell, &text(shell)?)?;
    let values = BTreeMap::from([
        ("title", escape(page.head("title")?)),
        ("weighs", text("www/pages/weighs.html")?),
        ("policy", policy),
        ("first", first),
        ("unpack", unpack),
        ("name", NAME.to_owned()),
        ("parts", sizes.join(" ")),
        ("crc", sum.sum().to_string()),
        ("line", line.to_string()),
        ("packed", PACKED_MARK.to_owned()),
        ("version", env!("CARGO_PKG_VERSION").to_owned()),
        ("build", crate::pages::BUILD_MARK.to_owned()),
    ]);
    let page = ascii(&page.body(&values)?);
    let Some((before, after)) = page.split_once(PACKED_MARK) else {
        bail!("{shell} has no place for what is packed");
    };
    Ok(File::named(
        NAME,
        [before.as_bytes(), &letters, after.as_bytes()].concat(),
    ))
}

/// A page whose letters beyond ASCII are written as references, so that it says the same in any set of letters.
fn ascii(page: &str) -> String {
    let mut out = String::with_capacity(page.len());
    for c in page.chars() {
        if c.is_ascii() {
            out.push(c);
        } else {
            out.push_str(&format!("&#{};", u32::from(c)));
        }
    }
    out
}

/// For a policy: the SHA-256 of what stands in an element.
fn hash(text: &str) -> String {
    format!("sha256-{}", STANDARD.encode(Sha256::digest(text)))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn letters_beyond_ascii_become_references() {
        assert_eq!(
            ascii("<p>6 – 8 in, 20 °C</p>"),
            "<p>6 &#8211; 8 in, 20 &#176;C</p>"
        );
    }

    #[test]
    fn the_file_holds_its_parts_and_names_the_hashes_of_its_scripts_and_styles() {
        let root = crate::tree::root().unwrap();
        let parts = Parts {
            engine: "function __wbg_init() {\n}\nexport function answer(q) {\n}\nexport { initSync, __wbg_init as default };\n",
            wasm: b"wasm",
            climate: b"climate",
        };
        let file = render(&root, &parts).unwrap();
        // Every byte as the letter of its number, which is enough to cut by.
        let page: String = file.bytes.iter().map(|byte| char::from(*byte)).collect();
        let cut = |before: &str, after: &str| {
            let from = page.find(before).unwrap() + before.len();
            page[from..].split(after).next().unwrap().to_owned()
        };
        let line: usize = cut("data-line=\"", "\"").parse().unwrap();
        let letters: Vec<u8> = cut(&format!("data-crc=\"{}\">", cut("data-crc=\"", "\"")), "<")
            .chars()
            .map(|letter| u8::try_from(u32::from(letter)).unwrap())
            .collect();
        let packed = packed::tests::bytes_of(&letters, line);
        let mut sum = flate2::Crc::new();
        sum.update(&packed);
        assert_eq!(sum.sum().to_string(), cut("data-crc=\"", "\""));

        let all = packed::tests::unpacked(&packed);
        let sizes = cut("data-parts=\"", "\"");
        let sizes: Vec<&str> = sizes.split(' ').collect();
        let mut rest = all.as_slice();
        let found: BTreeMap<&str, &[u8]> = sizes
            .chunks(2)
            .map(|pair| (pair[0], rest.split_off(..pair[1].parse().unwrap()).unwrap()))
            .collect();
        assert!(rest.is_empty());
        assert_eq!(found["engine.wasm"], b"wasm");
        assert_eq!(found["climate.bin"], b"climate");
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
