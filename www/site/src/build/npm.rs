//! The package for npm: the same calculator for programs in Node, and for pages that a bundler makes.

use crate::build::assets::{File, script};
use crate::build::{kit, languages, notices, schema, style, wasm};
use crate::project;
use anyhow::Result;
use calc::question::settings::LARGEST;
use calc_data::places::{CLIMATE, TOWNS};
use std::path::Path;

/// The address of the site that the element's script reads from its own place; a package lies in none.
const SITE: &str = "new URL(\"../\", import.meta.url).href";

/// Makes the files of the package. Its answers link to the list of sources of `site`, the whole address of a copy; where
/// that is empty they name their sources without links.
///
/// # Errors
/// Code or content that is broken, a file that can't be read.
pub(crate) fn files(root: &Path, site: &str, quiet: bool, say: &dyn Fn(&str)) -> Result<Vec<File>> {
    let module = wasm::module(&wasm::CALCULATOR, root, &project::target(root), quiet, say)?;
    let scripts = root.join("www/pages/js");
    let mut files = vec![
        File::named("engine.wasm", module.wasm),
        File::named("calculator.css", style::calculator(root)?),
        File::named("climate.bin", CLIMATE),
        File::named("regional.bin", calc_data::REGIONAL),
    ];
    for (country, towns) in TOWNS {
        files.push(File::named(&format!("towns-{country}.bin"), *towns));
    }
    for (language, words) in languages::others() {
        files.push(File::named(&format!("words-{language}.bin"), words));
    }
    // A bundler finds a file by an address that is written out in this way.
    let names: Vec<_> = files
        .iter()
        .map(|file| {
            let name = format!("\"./{}\"", file.path);
            let address = format!("new URL({name}, import.meta.url).href");
            (name, address)
        })
        .collect();
    let mut names: Vec<_> = names.iter().map(|(a, b)| (&**a, &**b)).collect();
    let site = format!("\"{site}\"");
    names.push((SITE, &site));
    let element = script(&scripts.join("element.js"), &names)?;
    let largest = LARGEST.to_string();
    let config = script(&scripts.join("config.js"), &[("\"@@largest@@\"", &largest)])?;
    files.push(File::named("engine.js", module.js));
    files.push(File::named("element.js", element));
    files.push(File::named("config.js", config));
    for name in ["answer.js", "node.js", "no-element.js"] {
        let code = script(&scripts.join("npm").join(name), &[])?;
        files.push(File::named(name, code));
    }
    files.push(File::named("answer.d.ts", schema::typescript()?));
    files.push(File::named("element.d.ts", ELEMENT_TYPES));
    for (name, text) in [
        ("question.schema.json", schema::question()?),
        ("answer.schema.json", schema::answer()?),
    ] {
        files.push(File::named(name, text));
    }
    files.extend(kit::licences(root)?);
    files.push(notices::text(&module.crates));
    files.push(File::named("package.json", package()));
    files.push(File::named("README.md", README));
    Ok(files)
}

/// The manifest. In `exports` the order counts: the first condition that holds is taken.
fn package() -> String {
    format!(
        r#"{{
  "name": "slipbark",
  "version": "{version}",
  "description": "What about my tree? Plans a ring on one unwanted tree that is to die standing.",
  "license": "MIT OR Apache-2.0",
  "type": "module",
  "engines": {{ "node": ">=20" }},
  "exports": {{
    ".": {{ "types": "./answer.d.ts", "node": "./node.js", "default": "./answer.js" }},
    "./element": {{ "types": "./element.d.ts", "node": "./no-element.js", "default": "./element.js" }},
    "./question.schema.json": "./question.schema.json",
    "./answer.schema.json": "./answer.schema.json",
    "./package.json": "./package.json"
  }},
  "types": "./answer.d.ts",
  "sideEffects": ["./element.js"],
  "files": ["*.js", "*.d.ts", "*.css", "*.wasm", "*.bin", "*.schema.json", "LICENSE-*", "data/", "{notices}"]
}}
"#,
        version = env!("CARGO_PKG_VERSION"),
        notices = notices::NAME,
    )
}

/// Types of the entry that registers the elements: they stand with those of the call, tags and all.
const ELEMENT_TYPES: &str =
    "export type { SlipbarkAttributes, SlipbarkElement, SlipbarkEvents } from \"./answer.js\";\n";

const README: &str = r#"# Slipbark

What about my tree? Species, size and date in; method, ring width, effort, a verdict on the date and cautions out, each with
its reason and its source. Nothing here says that anything is free of danger, legal or permitted: it says who decides.

In Node (20 or newer) and in pages:

```js
import { answer } from "slipbark";
answer({ version: 1, species: "Norway maple", stems: [{ diameter: "14 1/2 in" }], date: "2027-06-12", none_in_reach: true,
  line_within_reach: "no" });
answer(question, { changes: false }); // without the search for what would change it, which takes most of the time
```

A bad question gives `problems`; nothing is thrown. `question.schema.json` and `answer.schema.json` tell the names.

The elements, registered by the import alone; in Node, where a framework makes the first page, the import does nothing:

```js
import "slipbark/element";
```

```html
<slipbark-tree-plan units="us" heading-level="3"></slipbark-tree-plan>
```

Code: MIT or Apache-2.0, as you like. Data: see `data/README.md`. Code of others: see `notices.txt`.
"#;
