//! The packages that others build on, as they get them: packed, installed, and asked.

use crate::Outcome;
use crate::browser::{Browser, in_browser};
use crate::site::{Server, answer_on_the_command_line, folder, program, scratch};
use serde_json::{Value, json};
use std::path::{Path, PathBuf};
use std::process::Command;
use std::sync::OnceLock;

pub(crate) const QUESTION: &str = r#"{"version":1,"species":"Norway maple","stems":[{"diameter":"14 1/2 in"}],"date":"2027-06-12",
  "today":"2027-06-01","place":{"latitude":"42.36","longitude":"-71.06"},"none_in_reach":true,"line_within_reach":"no"}"#;

/// Runs a command in a folder; gives what it prints.
pub(crate) fn run(folder: &Path, command: &mut Command) -> String {
    let output = command
        .current_dir(folder)
        .output()
        .unwrap_or_else(|error| panic!("{command:?} could not be started: {error}"));
    let printed = String::from_utf8_lossy(&output.stdout).into_owned();
    let said = String::from_utf8_lossy(&output.stderr);
    assert!(output.status.success(), "{command:?}: {printed}{said}");
    printed
}

/// Writes a package with `build`.
fn build(option: &str, to: &Path) {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("..");
    run(
        &root,
        Command::new(program())
            .args(["build", "--quiet", option])
            .arg(to),
    );
}

/// The archive that `npm pack` makes of the package for npm.
pub(crate) fn archive() -> &'static Path {
    static ARCHIVE: OnceLock<PathBuf> = OnceLock::new();
    ARCHIVE.get_or_init(|| {
        let all = folder("npm");
        build("--npm", &all.join("package"));
        let name = run(
            &all,
            Command::new("npm").args(["pack", "--silent", "./package"]),
        );
        all.join(name.trim())
    })
}

/// Makes an empty project, and installs the package into it without asking anybody.
pub(crate) fn install_into(user: &Path) {
    std::fs::create_dir_all(user).expect("a folder");
    std::fs::write(
        user.join("package.json"),
        r#"{"name":"user","private":true,"type":"module"}"#,
    )
    .expect("written");
    let quietly = ["--silent", "--offline", "--no-audit", "--no-fund"];
    run(
        user,
        Command::new("npm")
            .arg("install")
            .args(quietly)
            .arg(archive()),
    );
}

#[test]
#[ignore = "needs npm, Node, Chromium and chromedriver; tests/all runs it"]
fn the_npm_package_answers_in_node_and_in_a_page_as_the_command_line_does() {
    let user = folder("npm-user");
    install_into(&user);
    let script = format!(
        "import {{ answer, version }} from 'slipbark';\n\
         // As frameworks do that make the first page on the server.\n\
         import 'slipbark/element';\n\
         const bad = answer({{ version: 1, stems: [{{ diameter: 'wide' }}] }});\n\
         console.log(JSON.stringify([answer({QUESTION}), bad.problems?.length > 0, version()]));\n"
    );
    std::fs::write(user.join("ask.js"), script).expect("written");
    let printed = run(&user, Command::new("node").arg("ask.js"));
    let seen: Value = serde_json::from_str(&printed).expect("JSON");
    let expected: Value =
        serde_json::from_str(&answer_on_the_command_line(QUESTION)).expect("JSON");
    assert_eq!(numbers(&seen[0]), numbers(&expected));
    assert_eq!(seen[1], true);
    for file in [
        "answer.d.ts",
        "element.d.ts",
        "LICENSE-MIT",
        "notices.txt",
        "data/README.md",
        "README.md",
    ] {
        assert!(
            user.join("node_modules/slipbark").join(file).is_file(),
            "{file}"
        );
    }
    // What the `exports` of package.json lead to is there.
    let package = std::fs::read_to_string(user.join("node_modules/slipbark/package.json"))
        .expect("it is there");
    let package: Value = serde_json::from_str(&package).expect("JSON");
    let mut open = vec![&package["exports"]];
    while let Some(value) = open.pop() {
        match value {
            Value::String(path) => assert!(
                user.join("node_modules/slipbark").join(path).is_file(),
                "{path}"
            ),
            Value::Object(map) => open.extend(map.values()),
            other => panic!("{other}"),
        }
    }
    let page = format!(
        "<!doctype html><html lang=\"en\"><title>A page</title><link rel=\"icon\" href=\"data:,\">\
         <script type=\"importmap\">{{\"imports\":{{\"slipbark\":\"/node_modules/slipbark/answer.js\",\"slipbark/element\":\"/node_modules/slipbark/element.js\"}}}}</script>\
         <slipbark-tree-plan></slipbark-tree-plan>\
         <script type=\"module\">import {{ answer }} from 'slipbark'; import 'slipbark/element'; globalThis.seen = answer({QUESTION});</script></html>"
    );
    std::fs::write(user.join("index.html"), page).expect("written");
    let server = Server::of(&user, 0);
    in_browser(async move |browser| {
        // The policy of the site's own server allows no script inside a page; another server sends none.
        browser
            .devtools("Page.setBypassCSP", json!({ "enabled": true }))
            .await?;
        expect_an_answering_page(&browser, &server.address, &expected).await
    });
}

/// A page of somebody else's that uses the package answers as the command line does, by itself and by its form, and asks
/// nobody else.
pub(crate) async fn expect_an_answering_page(
    browser: &Browser,
    address: &str,
    expected: &Value,
) -> Outcome {
    browser.open(address).await?;
    browser.until_ready().await?;
    browser.until("the answer", "globalThis.seen").await?;
    let seen = browser.run("return globalThis.seen;").await?;
    assert_eq!(numbers(&seen), numbers(expected));
    browser.fill_in_a_tree().await?;
    browser.show_the_answer().await?;
    assert_eq!(browser.outcome().await?, "do");
    browser.expect_requests_only_to(&[address, "data:"]).await
}

/// The same with every number as JavaScript writes it: 120 for 120.0.
pub(crate) fn numbers(value: &Value) -> Value {
    match value {
        Value::Number(number) => json!(number.as_f64()),
        Value::Array(all) => all.iter().map(numbers).collect(),
        Value::Object(map) => map
            .iter()
            .map(|(key, value)| (key.clone(), numbers(value)))
            .collect::<serde_json::Map<_, _>>()
            .into(),
        other => other.clone(),
    }
}

#[test]
#[ignore = "packages and compiles a crate; tests/all runs it"]
fn the_crate_is_packaged_documented_and_used_by_a_fresh_program() {
    let all = folder("crate");
    let library = all.join("library");
    build("--crate", &library);
    // One folder for all that is compiled, so that each crate is compiled once.
    let target = scratch().join("crate-target");
    let cargo = |arguments: &[&str]| {
        let mut cargo = Command::new(env!("CARGO"));
        cargo
            .args(arguments)
            .arg("--offline")
            .env("CARGO_TARGET_DIR", &target);
        // As somebody else's cargo: nothing of this run's.
        for name in ["RUSTFLAGS", "CARGO_ENCODED_RUSTFLAGS", "CARGO_BUILD_TARGET"] {
            cargo.env_remove(name);
        }
        cargo
    };
    run(
        &library,
        &mut cargo(&["package", "--quiet", "--allow-dirty"]),
    );
    run(
        &library,
        cargo(&["doc", "--quiet", "--no-deps"]).env("RUSTDOCFLAGS", "-D warnings"),
    );
    let examples = run(&library, &mut cargo(&["test", "--doc"]));
    let ran = examples.lines().find_map(|line| {
        line.strip_prefix("test result: ok. ")?
            .split(' ')
            .next()?
            .parse::<u32>()
            .ok()
    });
    assert!(ran.is_some_and(|ran| ran > 10), "{examples}");
    // Unpacked as a registry would hand it out.
    let packed = format!("slipbark-calc-{}", env!("CARGO_PKG_VERSION"));
    run(
        &all,
        Command::new("tar")
            .arg("xzf")
            .arg(target.join("package").join(format!("{packed}.crate"))),
    );
    let user = all.join("user");
    std::fs::create_dir_all(user.join("src")).expect("a folder");
    std::fs::write(
        user.join("Cargo.toml"),
        format!(
            "[package]\nname = \"user\"\nversion = \"0.1.0\"\nedition = \"2024\"\n\n[dependencies]\nslipbark-calc = {{ path = \"../{packed}\" }}\nserde_json = \"1\"\n\n[workspace]\n"
        ),
    )
    .expect("written");
    let code = format!(
        "use calc::{{answer::answer, models::season::Local, question::{{Typed, read}}}};\n\
         fn main() {{\n    let reference = calc::data::whole();\n\
         \x20   let typed: Typed = serde_json::from_str(r##\"{QUESTION}\"##).unwrap();\n\
         \x20   let question = read(reference, &typed).unwrap_or_else(|_| panic!(\"a good question\"));\n\
         \x20   println!(\"{{}}\", answer(reference, &question, &Local::default()).outcome.word());\n}}\n"
    );
    std::fs::write(user.join("src/main.rs"), code).expect("written");
    assert_eq!(run(&user, &mut cargo(&["run", "--quiet"])), "do\n");
}
