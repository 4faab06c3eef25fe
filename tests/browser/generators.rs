//! The kit's files for programs that make other people's sites, each in the program that it is for: Hugo as Debian has it,
//! and Eleventy from the npm registry.

use crate::browser::in_browser;
use crate::bundled::{say, tools};
use crate::kit::unpacked;
use crate::packages::run;
use crate::site::{Server, folder};
use serde_json::json;
use std::path::Path;
use std::process::Command;

/// A value that would break out of an attribute.
const AWKWARD: &str = "Norway maple\"><b>'&";

/// Opens a page that has two of them, the second with attributes, and asks each whether it has come with its own.
fn expect_two_that_answer(site: &Path, page: &str) {
    let server = Server::of(site, 0);
    let page = format!("{}{page}", server.address);
    in_browser(async move |browser| {
        browser
            .devtools("Page.setBypassCSP", json!({ "enabled": true }))
            .await?;
        browser.open(&page).await?;
        browser.until_ready().await?;
        let there = "document.querySelector('slipbark-ring')?.shadowRoot?.querySelector('form')";
        browser.until("the second", there).await?;
        let seen = "const ring = document.querySelector('slipbark-ring');
             return [ring.getAttribute('species'), ring.getAttribute('units'), ring.getAttribute('size-unit'), document.querySelectorAll('b').length];";
        assert_eq!(
            browser.run(seen).await?,
            json!([AWKWARD, "metric", "cm", 0])
        );
        browser.fill_in_a_tree().await?;
        browser.show_the_answer().await?;
        assert_eq!(browser.outcome().await?, "do");
        Ok(())
    });
}

#[test]
#[ignore = "needs Hugo, Chromium and chromedriver; tests/all runs it"]
fn the_shortcode_for_hugo_puts_it_into_a_page() {
    let copy = Server::of_the_site();
    let kit = unpacked("hugo-kit");
    let site = folder("hugo");
    let write = |name: &str, text: &str| {
        let path = site.join(name);
        std::fs::create_dir_all(path.parent().expect("a folder")).expect("a folder");
        std::fs::write(path, text).expect("written");
    };
    let page = "<!doctype html><html lang=\"en\"><title>{{ .Title }}</title><link rel=\"icon\" href=\"data:,\"><body>{{ .Content }}</body></html>";
    write("layouts/_default/single.html", page);
    write("layouts/_default/list.html", page);
    let shortcode = std::fs::read_to_string(kit.join("hugo/slipbark.html")).expect("in the kit");
    write("layouts/shortcodes/slipbark.html", &shortcode);
    write(
        "content/one.md",
        &format!(
            "---\ntitle: One\n---\nBefore.\n\n{{{{< slipbark >}}}}\n\n{{{{< slipbark kind=\"ring\" species={AWKWARD:?} units=\"metric\" size-unit=\"cm\" >}}}}\n"
        ),
    );
    let settings = "baseURL = \"https://group.example.org/\"\ntitle = \"A group\"\n";
    let named = format!("{settings}[params]\nslipbark = \"{}\"\n", copy.address);
    write("config.toml", &named);
    run(&site, Command::new("hugo").arg("--quiet"));
    expect_two_that_answer(&site.join("public"), "one/");
    // Without the address of a copy it says what is missing and where, and makes no page that does nothing.
    write("config.toml", settings);
    let failed = Command::new("hugo")
        .current_dir(&site)
        .output()
        .expect("Hugo can be started");
    let said = [failed.stdout, failed.stderr].concat();
    let said = String::from_utf8_lossy(&said);
    assert!(!failed.status.success(), "{said}");
    assert!(
        said.contains("name no address of a copy") && said.contains("one.md"),
        "{said}"
    );
}

#[test]
#[ignore = "needs npm, Node 20 or newer, Chromium and chromedriver; tests/all runs it"]
fn the_macro_for_eleventy_puts_it_into_a_page() {
    let Some(tools) = tools() else { return };
    let copy = Server::of_the_site();
    let kit = unpacked("eleventy-kit");
    let site = folder("eleventy");
    std::fs::create_dir_all(site.join("_includes")).expect("a folder");
    std::fs::copy(
        kit.join("eleventy/slipbark.njk"),
        site.join("_includes/slipbark.njk"),
    )
    .expect("in the kit");
    let page = format!(
        "<!doctype html><html lang=\"en\"><title>One</title><link rel=\"icon\" href=\"data:,\"><body>\n\
         {{% from \"slipbark.njk\" import slipbark %}}\n\
         {{{{ slipbark(\"{0}\") }}}}\n\
         {{{{ slipbark(\"{0}\", \"ring\", {{ species: {AWKWARD:?}, units: \"metric\", \"size-unit\": \"cm\" }}) }}}}\n</body></html>",
        copy.address
    );
    std::fs::write(site.join("one.njk"), page).expect("written");
    std::fs::write(site.join("index.njk"), "Another page of theirs.").expect("written");
    say(tools, "eleventy", &site, &["--quiet"]);
    expect_two_that_answer(&site.join("_site"), "one/");
}
