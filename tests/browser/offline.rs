//! No signal: the site saves itself whole, keeps one version until its reader
//! agrees to the next, and a broken next one leaves no trace.

use crate::Outcome;
use crate::browser::{Browser, in_browser};
use crate::site::{Server, copy, is_kept_once_read, pages};
use serde_json::json;
use std::path::Path;

pub(crate) const SAVED: &str =
    "document.getElementById('saved')?.textContent.startsWith('Saved on this device')";

/// Opens the home page and waits until it claims to be saved.
pub(crate) async fn open_and_save(browser: &Browser, address: &str) -> Outcome {
    browser.open(address).await?;
    browser.until_ready().await?;
    browser
        .until("the notice that the site is saved", SAVED)
        .await
}

/// The names of the caches.
pub(crate) async fn caches(
    browser: &Browser,
) -> Result<serde_json::Value, fantoccini::error::CmdError> {
    browser.run_until_done("caches.keys().then(done);").await
}

/// A next version that can't be kept whole is refused: nothing waits, and nothing is offered.
pub(crate) async fn expect_refused(browser: &Browser) -> Outcome {
    let tried = browser
        .run_until_done(
            "(async () => {
               const registration = await navigator.serviceWorker.ready;
               await registration.update().catch(() => {});
               const worker = registration.installing;
               if (worker) await new Promise((resolve) => worker.addEventListener('statechange', () => { if (worker.state === 'redundant') resolve(); }));
               return [Boolean(registration.waiting), document.getElementById('update').hidden];
             })().then(done, (error) => done(String(error)));",
        )
        .await?;
    assert_eq!(tried, json!([false, true]));
    Ok(())
}

/// Every page in English opens with a heading and its style sheets: the page for lists has one of its own beside the site's.
pub(crate) async fn expect_every_page(browser: &Browser, address: &str) -> Outcome {
    let kept = |page: &&String| !page.starts_with("es/") && !is_kept_once_read(page);
    for page in pages().iter().filter(kept) {
        browser.open_page(&format!("{address}{page}")).await?;
        let seen = browser
            .run("return [document.querySelector('h1')?.textContent ?? '', document.styleSheets.length];")
            .await?;
        assert!(
            seen[0].as_str().is_some_and(|heading| !heading.is_empty())
                && seen[1].as_u64() >= Some(1),
            "/{page}: {seen}"
        );
    }
    Ok(())
}

/// The worker's text under another version's name.
pub(crate) fn renamed(worker: &str) -> String {
    let (before, rest) = worker
        .split_once("const VERSION = \"")
        .expect("the worker has a version");
    let (_, after) = rest.split_once('"').expect("the version ends");
    format!("{before}const VERSION = \"next\"{after}")
}

/// Makes the folder's worker a new version: another name, and in `broken` a
/// file whose bytes are not the ones it lists.
fn next_version(folder: &Path, broken: bool) {
    let path = folder.join("sw.js");
    let text = std::fs::read_to_string(&path).expect("the worker can be read");
    let mut text = renamed(&text);
    if broken {
        let start = text.find("sha256-").expect("the worker lists digests");
        text.replace_range(start..start + 10, "sha256-AAA");
    }
    std::fs::write(&path, text).expect("the worker can be written");
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn after_the_server_stops_every_page_and_the_calculator_still_work() {
    let mut server = Server::of_the_site();
    in_browser(async move |browser| {
        open_and_save(&browser, &server.address).await?;
        server.stop();
        // The page itself first, then all others, none of which was opened before.
        browser.client.refresh().await?;
        browser.until_ready().await?;
        browser.until("the notice without a server", SAVED).await?;
        browser.fill_in_a_tree().await?;
        browser.show_the_answer().await?;
        assert_eq!(browser.outcome().await?, "do");
        expect_every_page(&browser, &server.address).await?;
        browser
            .open(&format!("{}method/index.html?x=1", server.address))
            .await?;
        assert_eq!(
            browser
                .run("return document.querySelector('h1').textContent;")
                .await?,
            "How answers are made"
        );
        browser
            .open(&format!("{}nothing/here", server.address))
            .await?;
        assert_eq!(
            browser
                .run("return document.querySelector('h1').textContent;")
                .await?,
            "There is no page here"
        );
        Ok(())
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_new_version_waits_for_a_yes_and_then_replaces_all_of_the_old_one() {
    let folder = copy("update");
    let mut server = Server::of(&folder, 0);
    in_browser(async move |browser| {
        open_and_save(&browser, &server.address).await?;
        let before = caches(&browser).await?;
        assert_eq!(before.as_array().map(Vec::len), Some(1), "{before}");
        let port = server.port();
        server.stop();
        next_version(&folder, false);
        let server = Server::of(&folder, port);
        browser.open(&server.address).await?;
        browser
            .until(
                "the offer of a new version",
                "!document.getElementById('update').hidden",
            )
            .await?;
        browser.client.refresh().await?;
        browser
            .until(
                "the offer again: a reload is no yes",
                "!document.getElementById('update').hidden",
            )
            .await?;
        assert_eq!(
            caches(&browser).await?.as_array().map(Vec::len),
            Some(2),
            "old and new are both kept"
        );
        browser
            .client
            .find(fantoccini::Locator::Css("#update-now"))
            .await?
            .click()
            .await?;
        browser
            .until(
                "the reload after the yes",
                "document.getElementById('update')?.hidden",
            )
            .await?;
        browser
            .until("the notice for the new version", SAVED)
            .await?;
        let after = caches(&browser).await?;
        let names = after.as_array().expect("names");
        assert!(
            names.len() == 1
                && names[0]
                    .as_str()
                    .is_some_and(|name| name.ends_with(" next")),
            "{after}"
        );
        Ok(())
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_broken_new_version_leaves_the_old_one_serving_and_no_cache_behind() {
    let folder = copy("broken");
    let mut server = Server::of(&folder, 0);
    in_browser(async move |browser| {
        open_and_save(&browser, &server.address).await?;
        let before = caches(&browser).await?;
        let port = server.port();
        server.stop();
        next_version(&folder, true);
        let mut server = Server::of(&folder, port);
        browser.open(&server.address).await?;
        expect_refused(&browser).await?;
        assert_eq!(caches(&browser).await?, before, "no orphan is left");
        server.stop();
        browser.client.refresh().await?;
        browser.until_ready().await?;
        browser.until("the notice for the old version", SAVED).await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_site_built_without_offline_removes_what_an_earlier_one_kept() {
    let folder = copy("off");
    let mut server = Server::of(&folder, 0);
    let without_offline = crate::site::built_without_offline();
    in_browser(async move |browser| {
        open_and_save(&browser, &server.address).await?;
        let port = server.port();
        server.stop();
        let server = Server::of(without_offline, port);
        // Notes whether any page claims to be saved, from the first load on.
        let watch = "new MutationObserver(() => { if (document.getElementById('saved')?.textContent) sessionStorage.setItem('claimed', location.href); })
                       .observe(document, { childList: true, subtree: true, characterData: true });";
        browser
            .devtools(
                "Page.addScriptToEvaluateOnNewDocument",
                json!({ "source": watch }),
            )
            .await?;
        browser.open(&server.address).await?;
        browser
            .until(
                "the page from the server",
                "!document.getElementById('saved') && document.readyState === 'complete'",
            )
            .await?;
        browser.until_ready().await?;
        let left = "(async () => { for (let i = 0; i < 100; i++) {
               const left = [(await caches.keys()).length, (await navigator.serviceWorker.getRegistrations()).length];
               if (left[0] + left[1] === 0) return [...left, sessionStorage.getItem('claimed')];
               await new Promise((resolve) => setTimeout(resolve, 100)); } return 'something is left'; })().then(done, (error) => done(String(error)));";
        assert_eq!(browser.run_until_done(left).await?, json!([0, 0, null]));
        // And it stays as it is: no page is loaded again and again.
        browser.run("globalThis.here = true;").await?;
        tokio::time::sleep(std::time::Duration::from_millis(1500)).await;
        assert_eq!(browser.run("return globalThis.here;").await?, true);
        browser.expect_quiet().await
    });
}

#[test]
#[ignore = "builds the site; tests/all runs it"]
fn a_site_built_without_offline_says_nothing_of_it_on_any_page() {
    let site = crate::site::built_without_offline();
    let words = [
        "no signal",
        "sin señal",
        "Saved on this device",
        "Guardado en este aparato",
        "offline/",
    ];
    for page in pages().into_iter().filter(|page| !is_kept_once_read(page)) {
        // What changed in the program is told as it was, and an answer may say that a wood has no signal.
        if page.ends_with("changes/") {
            continue;
        }
        let Ok(text) = std::fs::read_to_string(site.join(&page).join("index.html")) else {
            assert!(page.ends_with("offline/"), "{page} is built");
            continue;
        };
        for word in words {
            assert!(!text.contains(word), "/{page}: {word}");
        }
    }
}

/// The paths of pages and words that the one cache holds, without those in frames.
async fn kept(browser: &Browser) -> Result<Vec<String>, Box<dyn std::error::Error + Send + Sync>> {
    let found = browser
        .run_until_done(
            "(async () => {
               const [name] = await caches.keys();
               const all = (await (await caches.open(name)).keys()).map(({ url }) => new URL(url).pathname);
               return all.filter((path) => path.endsWith('/') && !path.includes('/embed/') || path.includes('words-')).sort();
             })().then(done, (error) => done(String(error)));",
        )
        .await?;
    let all = found.as_array().ok_or("a list")?;
    Ok(all
        .iter()
        .filter_map(|it| it.as_str().map(str::to_owned))
        .collect())
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_language_is_kept_once_it_is_read_and_no_other_is_fetched() {
    let mut server = Server::of_the_site();
    in_browser(async move |browser| {
        open_and_save(&browser, &server.address).await?;
        let english = kept(&browser).await?;
        assert!(english.contains(&"/species/".to_owned()), "{english:?}");
        assert!(
            !english
                .iter()
                .any(|path| path.starts_with("/es/") || path.contains("words-es")),
            "{english:?}"
        );
        let spanish = format!("{}es/", server.address);
        browser.open(&spanish).await?;
        browser.until_ready().await?;
        browser
            .until(
                "the notice in Spanish",
                "document.getElementById('saved').textContent.startsWith('Guardado en este aparato')",
            )
            .await?;
        let both = kept(&browser).await?;
        assert_eq!(both.len(), 2 * english.len() + 1, "{both:?}");
        server.stop();
        browser.client.refresh().await?;
        browser.until_ready().await?;
        let lang =
            "return document.getElementById('calculator').shadowRoot.querySelector('.sb').lang;";
        assert_eq!(browser.run(lang).await?, "es");
        browser.open_page(&format!("{spanish}method/")).await?;
        let heading = "return document.querySelector('h1').textContent;";
        assert_eq!(browser.run(heading).await?, "Cómo se hacen las respuestas");
        Ok(())
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn with_no_signal_a_page_in_a_language_that_is_not_kept_is_had_in_one_that_is() {
    let mut server = Server::of_the_site();
    in_browser(async move |browser| {
        let spanish = format!("{}es/", server.address);
        browser.open(&spanish).await?;
        browser.until_ready().await?;
        browser
            .until(
                "the notice in Spanish",
                "document.getElementById('saved').textContent.startsWith('Guardado en este aparato')",
            )
            .await?;
        let all = kept(&browser).await?;
        assert!(
            all.iter()
                .all(|path| path.starts_with("/es/") || path.contains("words-es")),
            "{all:?}"
        );
        server.stop();
        browser
            .open_page(&format!("{}method/", server.address))
            .await?;
        let seen = "return [location.pathname, document.documentElement.lang];";
        assert_eq!(browser.run(seen).await?, json!(["/es/method/", "es"]));
        Ok(())
    });
}
