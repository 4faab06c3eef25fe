//! The package for npm in a page that a bundler makes, and what linters of packages say of it. Vite, publint and attw
//! (`@arethetypeswrong/cli`) come from the npm registry; where that can't be reached, what needs them says so and is left out.

use crate::browser::in_browser;
use crate::packages::{QUESTION, archive, expect_an_answering_page, install_into};
use crate::site::{Server, answer_on_the_command_line, folder, scratch};
use serde_json::{Value, json};
use std::path::{Path, PathBuf};
use std::process::Command;
use std::sync::OnceLock;

/// Each with the version that was tried.
const TOOLS: [&str; 4] = [
    "@11ty/eleventy@3.1.8",
    "vite@8.4.0",
    "publint@0.3.25",
    "@arethetypeswrong/cli@0.18.5",
];

/// Where these tools are, fetched once into the target folder; nothing where the registry can't be reached.
pub(crate) fn tools() -> Option<&'static Path> {
    static THERE: OnceLock<Option<PathBuf>> = OnceLock::new();
    let there = THERE.get_or_init(|| {
        let tools = scratch().join("npm-tools");
        let programs = tools.join("node_modules/.bin");
        if ["eleventy", "vite", "publint", "attw"]
            .iter()
            .all(|name| programs.join(name).exists())
        {
            return Some(tools);
        }
        std::fs::create_dir_all(&tools).expect("the target folder can be written");
        let quietly = ["--no-save", "--no-audit", "--no-fund", "--silent"];
        let fetched = Command::new("npm")
            .arg("install")
            .args(quietly)
            .arg("--prefix")
            .arg(&tools)
            .args(TOOLS)
            .status()
            .expect("npm could not be started: install it (Debian: npm)");
        if fetched.success() {
            return Some(tools);
        }
        let reached = Command::new("npm")
            .args(["ping", "--silent"])
            .status()
            .is_ok_and(|status| status.success());
        assert!(!reached, "npm could not fetch {TOOLS:?}");
        println!("Not run: the npm registry can't be reached, which has {TOOLS:?}.");
        None
    });
    there.as_deref()
}

/// Runs one of the tools in a folder; gives all that it says.
pub(crate) fn say(tools: &Path, name: &str, folder: &Path, arguments: &[&str]) -> String {
    let output = Command::new(tools.join("node_modules/.bin").join(name))
        .args(arguments)
        .current_dir(folder)
        .env("NO_COLOR", "1")
        .output()
        .unwrap_or_else(|error| panic!("{name} could not be started: {error}"));
    let said = [output.stdout, output.stderr].map(|it| String::from_utf8_lossy(&it).into_owned());
    let said = said.concat();
    assert!(output.status.success(), "{name}: {said}");
    said
}

#[test]
#[ignore = "needs npm, Node 20.19 or newer, Chromium and chromedriver; tests/all runs it"]
fn a_fresh_page_made_by_vite_has_the_elements_and_answers() {
    let Some(tools) = tools() else { return };
    let user = folder("vite-user");
    install_into(&user);
    std::fs::write(
        user.join("index.html"),
        "<!doctype html><html lang=\"en\"><title>A page</title><link rel=\"icon\" href=\"data:,\">\
         <slipbark-tree-plan></slipbark-tree-plan><script type=\"module\" src=\"/main.js\"></script></html>",
    )
    .expect("written");
    std::fs::write(
        user.join("main.js"),
        format!(
            "import {{ answer }} from \"slipbark\";\nimport \"slipbark/element\";\nglobalThis.seen = answer({QUESTION});\n"
        ),
    )
    .expect("written");
    let said = say(tools, "vite", &user, &["build"]);
    for bad in ["warn", "WARN", "doesn't exist", "rror"] {
        assert!(!said.contains(bad), "{said}");
    }
    let expected: Value =
        serde_json::from_str(&answer_on_the_command_line(QUESTION)).expect("JSON");
    let server = Server::of(&user.join("dist"), 0);
    in_browser(async move |browser| {
        expect_an_answering_page(&browser, &server.address, &expected).await?;
        // The page has no list of sources, so no answer leads to one there.
        let links = "return [...document.querySelector('slipbark-tree-plan').shadowRoot.querySelectorAll('a[href]')].map((link) => link.href).filter((address) => address.includes('sources/'));";
        assert_eq!(browser.run(links).await?, json!([]));
        Ok(())
    });
}

#[test]
#[ignore = "needs npm and Node 20 or newer; tests/all runs it"]
fn linters_of_packages_find_nothing_in_it() {
    let Some(tools) = tools() else { return };
    let archive = archive().to_string_lossy();
    let user = folder("lint");
    let said = say(tools, "publint", &user, &["run", &archive, "--strict"]);
    assert!(said.contains("All good"), "{said}");
    // An ES module alone: `require` of it is no way in, and is not promised.
    let said = say(
        tools,
        "attw",
        &user,
        &[&archive, "--profile", "esm-only", "--format", "json"],
    );
    let said: Value = serde_json::from_str(&said).expect("JSON");
    let entries = &said["analysis"]["entrypoints"];
    for name in [".", "./element", "./answer.schema.json"] {
        assert!(entries[name].is_object(), "{name}: {said}");
    }
    // Its types, read by TypeScript's own compiler as strictly as it can.
    install_into(&user);
    std::fs::write(
        user.join("ask.mts"),
        format!(
            "import {{ answer, version }} from \"slipbark\";\nimport type {{ SlipbarkElement }} from \"slipbark/element\";\n\
             const seen = answer({QUESTION}, {{ changes: false }});\n\
             const outcome: string = \"problems\" in seen ? version() : seen.outcome;\n\
             export const filled = (tree: SlipbarkElement): string => {{ tree.focusFirst(); return outcome; }};\n"
        ),
    )
    .expect("written");
    let strictly = [
        "--noEmit", "--strict", "--module", "nodenext", "--target", "es2022", "ask.mts",
    ];
    say(tools, "tsc", &user, &strictly);
}
