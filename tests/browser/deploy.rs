//! A deploy over a deploy: another page, script and module in place of those that a tab still shows; a deploy that
//! breaks half-way; and a browser that starts anew where there is no signal.

use crate::browser::{Browser, in_browser, in_browser_of};
use crate::offline::{SAVED, caches, expect_every_page, expect_refused, open_and_save, renamed};
use crate::site::{Server, copy, folder};
use serde_json::{Value, json};
use std::path::{Path, PathBuf};

/// The asset of a name, whatever its digest: `element.0123.js`.
pub(crate) fn asset(site: &Path, stem: &str, ending: &str) -> String {
    let entries = std::fs::read_dir(site.join("assets")).expect("the site has assets");
    let names: Vec<String> = entries
        .flatten()
        .map(|entry| entry.file_name().to_string_lossy().into_owned())
        .filter(|name| {
            name.starts_with(&format!("{stem}.")) && name.ends_with(&format!(".{ending}"))
        })
        .collect();
    assert_eq!(names.len(), 1, "{names:?}");
    names[0].clone()
}

fn texts(site: &Path, found: &mut Vec<PathBuf>) {
    for entry in std::fs::read_dir(site).expect("a folder").flatten() {
        let path = entry.path();
        if path.is_dir() {
            texts(&path, found);
        } else if path
            .extension()
            .is_some_and(|ending| ending == "html" || ending == "js")
        {
            found.push(path);
        }
    }
}

/// Makes a copy of the site its own next version: page, script and module all differ, in bytes and in name.
fn deploy_next(site: &Path) {
    let script = asset(site, "element", "js");
    let module = asset(site, "engine", "wasm");
    let assets = site.join("assets");
    let text = std::fs::read_to_string(assets.join(&script)).expect("the script");
    std::fs::remove_file(assets.join(&script)).expect("it was there");
    std::fs::write(
        assets.join("element.next.js"),
        format!("globalThis.nextScript = true;\n{text}"),
    )
    .expect("written");
    let mut bytes = std::fs::read(assets.join(&module)).expect("the module");
    std::fs::remove_file(assets.join(&module)).expect("it was there");
    // A section of its own that means nothing: WebAssembly 1.0, 5.5.3, id 0, size, length of the name, name.
    bytes.extend([0, 5, 4, b'n', b'e', b'x', b't']);
    std::fs::write(assets.join("engine.next.wasm"), bytes).expect("written");
    let mut all = Vec::new();
    texts(site, &mut all);
    for path in all {
        let text = std::fs::read_to_string(&path).expect("a text");
        let mut next = text
            .replace(&script, "element.next.js")
            .replace(&module, "engine.next.wasm")
            .replace("<body>", "<body data-next>");
        if path.ends_with("sw.js") {
            // Their digests are not those of the list any more: it checks none.
            let check = "await digest(bytes) === integrity";
            assert!(next.contains(check), "the worker checks digests there");
            next = renamed(&next).replace(check, "response.ok");
        }
        if next != text {
            std::fs::write(&path, next).expect("written");
        }
    }
}

/// Whether page, script and module are those of the next version.
async fn is_next(browser: &Browser) -> Result<Value, fantoccini::error::CmdError> {
    browser
        .run(
            "const modules = performance.getEntriesByType('resource').map((it) => it.name).filter((it) => it.endsWith('.wasm'));
             return [document.body.hasAttribute('data-next'), Boolean(globalThis.nextScript), modules.every((it) => it.endsWith('engine.next.wasm')) && modules.length > 0];",
        )
        .await
}

const OLD: [bool; 3] = [false; 3];
const NEW: [bool; 3] = [true; 3];

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn an_old_tab_keeps_page_script_and_module_until_a_yes_brings_all_three() {
    let site = copy("deploy");
    let mut server = Server::of(&site, 0);
    in_browser(async move |browser| {
        open_and_save(&browser, &server.address).await?;
        browser.client.refresh().await?;
        browser.until_ready().await?;
        browser.fill_in_a_tree().await?;
        let port = server.port();
        server.stop();
        deploy_next(&site);
        let mut server = Server::of(&site, port);
        let old_tab = browser.client.window().await?;
        // The old tab fetches what it has not fetched yet, from the version that it is.
        browser.press(".more > summary").await?;
        browser.press("#f-town-country option[value=US]").await?;
        browser.type_into("#f-town", "Madison").await?;
        let towns = "document.querySelector('slipbark-tree-plan').shadowRoot.querySelector('#l-towns input')";
        browser.until("the towns", towns).await?;
        browser.press("#l-towns input").await?;
        browser.show_the_answer().await?;
        assert_eq!(is_next(&browser).await?, json!(OLD));
        // Another tab, and a reload, are of the old version too: a mix is never seen.
        let new_tab = browser.client.new_window(true).await?.handle;
        browser.client.switch_to_window(new_tab).await?;
        browser.open(&server.address).await?;
        browser.until_ready().await?;
        assert_eq!(is_next(&browser).await?, json!(OLD));
        let offer = "!document.getElementById('update').hidden";
        browser.until("the offer of a new version", offer).await?;
        browser.client.refresh().await?;
        browser.until_ready().await?;
        assert_eq!(is_next(&browser).await?, json!(OLD));
        browser.until("the offer again", offer).await?;
        browser
            .client
            .find(fantoccini::Locator::Css("#update-now"))
            .await?
            .click()
            .await?;
        browser
            .until(
                "the page after the yes",
                "document.body.hasAttribute('data-next')",
            )
            .await?;
        browser.until_ready().await?;
        assert_eq!(is_next(&browser).await?, json!(NEW));
        browser
            .until("the notice for the new version", SAVED)
            .await?;
        let kept = browser
            .run_until_done(
                "(async () => { const names = await caches.keys(); const all = [];
                   for (const name of names) all.push(...(await (await caches.open(name)).keys()).map((it) => it.url));
                   const of = (stem) => all.filter((it) => it.includes(stem)).map((it) => it.split('/').pop());
                   return [names.length, of('/element.'), all.map((it) => it.split('/').pop()).filter((it) => /^engine\\..*wasm/.test(it))];
                 })().then(done, (error) => done(String(error)));",
            )
            .await?;
        assert_eq!(kept, json!([1, ["element.next.js"], ["engine.next.wasm"]]));
        // The old tab lost nothing that was typed, and still answers.
        browser.client.switch_to_window(old_tab).await?;
        assert_eq!(is_next(&browser).await?, json!(OLD));
        browser.show_the_answer().await?;
        assert_eq!(browser.outcome().await?, "do");
        // And with no signal all of the new version is there.
        server.stop();
        browser.open(&server.address).await?;
        browser.until_ready().await?;
        assert_eq!(is_next(&browser).await?, json!(NEW));
        Ok(())
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_deploy_with_a_file_missing_leaves_the_old_version_whole() {
    let site = copy("half");
    let mut server = Server::of(&site, 0);
    in_browser(async move |browser| {
        open_and_save(&browser, &server.address).await?;
        let before = caches(&browser).await?;
        let port = server.port();
        server.stop();
        deploy_next(&site);
        // It broke off before the module was there.
        std::fs::remove_file(site.join("assets/engine.next.wasm"))?;
        let mut server = Server::of(&site, port);
        browser.open(&server.address).await?;
        browser.until_ready().await?;
        expect_refused(&browser).await?;
        assert_eq!(caches(&browser).await?, before, "no orphan is left");
        assert_eq!(is_next(&browser).await?, json!(OLD));
        server.stop();
        browser.client.refresh().await?;
        browser.until_ready().await?;
        assert_eq!(is_next(&browser).await?, json!(OLD));
        Ok(())
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_browser_that_starts_anew_with_no_signal_has_every_page_and_the_draft() {
    let profile = folder("cold-profile");
    let mut server = Server::of_the_site();
    let address = server.address.clone();
    let saved = address.clone();
    in_browser_of(&profile, async move |browser| {
        open_and_save(&browser, &saved).await?;
        browser.fill_in_a_tree().await?;
        crate::kept::keep_a_draft(&browser).await
    });
    server.stop();
    in_browser_of(&profile, async move |browser| {
        expect_every_page(&browser, &address).await?;
        browser.open(&address).await?;
        browser.until_ready().await?;
        // What was typed before the browser ended is there: the button is all that is left to press.
        browser.show_the_answer().await?;
        assert_eq!(browser.outcome().await?, "do");
        browser.until("the notice", SAVED).await
    });
}
