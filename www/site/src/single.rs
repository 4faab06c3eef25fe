//! The single file: one page with everything in it, for a memory stick. Pages
//! opened from a disk may load no module and fetch nothing, so the scripts
//! stand in the page and the rest is packed into it.

use crate::assets::{File, script};
use crate::template::{Template, escape};
use anyhow::{Context, Result, bail};
use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use flate2::{Compression, write::GzEncoder};
use sha2::{Digest as _, Sha256};
use std::collections::BTreeMap;
use std::io::Write as _;
use std::path::Path;

/// Its name at the root of the site.
pub const NAME: &str = "slipbark-single.html";

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
    let pages = root.join("www/pages");
    let (engine, names) = closed(parts.engine)?;
    let element = open(&pages.join("js"), "element.js", &names)?;
    let start = script(&pages.join("js/single.js"), &[])?;
    // A module of its own scope: what it calls `fetch` gives what is packed here.
    let module = tidy(&format!("{start}\n{engine}\n{element}"));
    if module.contains("</script") || module.contains("<!--") {
        bail!(
            "a script of the single file would end its own element: look for `</script` in www/pages/js"
        );
    }
    let sheet = |name: &str| -> Result<String> {
        std::fs::read_to_string(root.join("www/style").join(name))
            .with_context(|| format!("www/style/{name} could not be read"))
    };
    let style = tidy(&format!("{}\n{}", sheet("tokens.css")?, sheet("page.css")?));
    let policy = format!(
        "default-src 'none'; script-src '{}' 'wasm-unsafe-eval'; style-src '{}'; img-src data:; base-uri 'none'; form-action 'none'",
        hash(&module),
        hash(&style)
    );
    let text = |file: &str| {
        std::fs::read_to_string(root.join(file))
            .with_context(|| format!("{file} could not be read"))
    };
    let file = "www/pages/single.html";
    let page = Template::read(file, &text(file)?)?;
    let values = BTreeMap::from([
        ("title", escape(page.head("title")?)),
        ("weighs", text("www/pages/weighs.html")?),
        ("policy", policy),
        ("style", style),
        ("module", module),
        ("wasm", packed(parts.wasm)?),
        ("climate", packed(parts.climate)?),
        ("version", env!("CARGO_PKG_VERSION").to_owned()),
        ("build", crate::pages::BUILD_MARK.to_owned()),
    ]);
    Ok(File::named(NAME, page.body(&values)?))
}

/// A module as an expression with its own scope: `const binding = (() => …)();`,
/// and the names it exports.
fn closed(module: &str) -> Result<(String, Vec<String>)> {
    let mut names = Vec::new();
    let mut body = String::with_capacity(module.len());
    for line in module.lines() {
        let Some(rest) = line.strip_prefix("export ") else {
            body.push_str(line);
            body.push('\n');
            continue;
        };
        if rest.trim() == "{ initSync, __wbg_init as default };" {
            continue;
        }
        let name = rest
            .strip_prefix("function ")
            .or_else(|| rest.strip_prefix("class "))
            .and_then(|rest| {
                rest.split(|c: char| !c.is_alphanumeric() && c != '_')
                    .next()
            });
        let Some(name) = name.filter(|name| !name.is_empty()) else {
            bail!("the binding exports `{rest}`, which the single file can't take in");
        };
        names.push(name.to_owned());
        body.push_str(rest);
        body.push('\n');
    }
    let list = names.join(", ");
    Ok((
        format!(
            "const binding = (() => {{\n{body}\nreturn {{ init: __wbg_init, {list} }};\n}})();\n"
        ),
        names,
    ))
}

/// One of our own modules without its imports and exports, to stand in one
/// scope with the others; those it imports stand before it.
fn open(folder: &Path, name: &str, engine: &[String]) -> Result<String> {
    let text = script(&folder.join(name), &[])?;
    let mut out = String::new();
    for line in text.lines() {
        if line == "import init, * as engine from \"./engine.js\";" {
            if engine.is_empty() {
                bail!("the binding exports nothing");
            }
            // No page of sources comes along, so labels of sources are no links; no town, so none is looked up.
            out.push_str(
                "const init = binding.init, engine = { ...binding, locate() {}, when_towns_are_wanted() {} };\n",
            );
        } else if let Some(rest) = line.strip_prefix("import ") {
            let inner = rest
                .strip_suffix("\";")
                .and_then(|rest| rest.split_once("} from \"./"));
            let Some((_, inner)) = inner.filter(|_| rest.starts_with('{')) else {
                bail!(
                    "www/pages/js/{name} has `{line}`; the single file takes in `import {{ name }} from \"./file.js\";` alone"
                );
            };
            let inner = open(folder, inner, engine)?;
            out.insert_str(0, &inner);
        } else {
            out.push_str(line.strip_prefix("export ").unwrap_or(line));
            out.push('\n');
        }
    }
    Ok(out)
}

/// Without indents, blank lines and comments that have lines to themselves.
fn tidy(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    let mut comment = false;
    for line in text.lines().map(str::trim) {
        let begins = line.starts_with("/*");
        let ends = line.ends_with("*/");
        if comment || begins {
            // What follows a comment on its last line is kept, with the comment.
            comment = !line.contains("*/");
            if comment || ends {
                continue;
            }
        }
        if !line.is_empty() && !line.starts_with("//") {
            out.push_str(line);
            out.push('\n');
        }
    }
    out
}

/// For a policy: the SHA-256 of what stands in an element.
fn hash(text: &str) -> String {
    format!("sha256-{}", STANDARD.encode(Sha256::digest(text)))
}

/// Compressed, then in letters that any page can hold.
fn packed(bytes: &[u8]) -> Result<String> {
    let mut packer = GzEncoder::new(Vec::new(), Compression::best());
    packer.write_all(bytes)?;
    Ok(STANDARD.encode(packer.finish()?))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_module_becomes_a_value_with_its_exports() {
        let module = "let wasm;\nexport function answer(q) {\n}\nexport class A {\n}\nexport { initSync, __wbg_init as default };\n";
        let (text, names) = closed(module).unwrap();
        assert_eq!(names, ["answer", "A"]);
        assert!(
            text.contains("return { init: __wbg_init, answer, A };"),
            "{text}"
        );
        assert!(!text.contains("export"), "{text}");
        let error = closed("export * from \"x\";").unwrap_err().to_string();
        assert!(error.contains("* from"), "{error}");
    }

    #[test]
    fn tidying_takes_comments_and_keeps_rules_and_code() {
        let text = "/** a\n * b\n */\n  let x = 1; // kept\n// gone\n\n/* one */\n* { margin: 0 }\n/* c */ p { }\n";
        assert_eq!(
            tidy(text),
            "let x = 1; // kept\n* { margin: 0 }\n/* c */ p { }\n"
        );
    }

    #[test]
    fn what_is_packed_unpacks() {
        let text = packed(b"bark").unwrap();
        let bytes = STANDARD.decode(text).unwrap();
        let mut out = Vec::new();
        std::io::Read::read_to_end(
            &mut flate2::read::GzDecoder::new(bytes.as_slice()),
            &mut out,
        )
        .unwrap();
        assert_eq!(out, b"bark");
    }
}
