//! The scripts of the site as one module, that imports nothing.

use crate::build::assets::script;
use anyhow::{Result, bail};
use std::path::Path;

/// A module as an expression with its own scope: `const binding = (() => …)();`,
/// and the names it exports.
pub(crate) fn closed(module: &str) -> Result<(String, Vec<String>)> {
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
pub(crate) fn open(folder: &Path, name: &str, engine: &[String]) -> Result<String> {
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
}
