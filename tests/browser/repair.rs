//! What keeps the copy for no signal from being whole: hosts that redirect, bytes that were changed, files that are not
//! there, no room, and files that the browser lost. The site goes on online, says it once, and mends the copy.

use crate::Outcome;
use crate::browser::{Browser, in_browser, in_firefox};
use crate::deploy::asset;
use crate::odd_host::{Habit, OddHost};
use crate::offline::{SAVED, caches, expect_every_page, open_and_save};
use crate::site::{Server, built, copy, is_kept_once_read, pages};
use serde_json::json;

/// What a page says of a copy that is not whole.
const UNSAVED: &str = "document.getElementById('unsaved').textContent";

/// A host that drops the slash of each address: every page opens online after the site is saved, by both of its
/// addresses, and with no signal.
async fn expect_pages_of_a_host_that_drops_slashes(browser: Browser, host: OddHost) -> Outcome {
    open_and_save(&browser, &host.address).await?;
    expect_every_page(&browser, &host.address).await?;
    let english = |page: &&String| !page.starts_with("es/") && !page.is_empty();
    for page in pages().iter().filter(english) {
        let bare = page.trim_end_matches('/');
        let address = format!("{}{bare}", host.address);
        browser.open_page(&address).await?;
        let heading = "return document.querySelector('h1')?.textContent ?? '';";
        assert_ne!(browser.run(heading).await?, "", "/{bare}");
    }
    host.stop();
    expect_every_page(&browser, &host.address).await?;
    // Those that are kept once they were read are there too, by both addresses.
    let read = |page: &&String| english(page) && is_kept_once_read(page);
    for page in pages().iter().filter(read) {
        for path in [&**page, page.trim_end_matches('/')] {
            browser
                .open_page(&format!("{}{path}", host.address))
                .await?;
            let shown = browser.run("return location.pathname;").await?;
            assert_eq!(shown, format!("/{page}"), "/{path}");
        }
    }
    browser.open(&host.address).await?;
    browser.until_ready().await?;
    browser.fill_in_a_tree().await?;
    browser.show_the_answer().await?;
    assert_eq!(browser.outcome().await?, "do");
    Ok(())
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_host_that_redirects_slashes_serves_every_page_after_the_first_visit() {
    let host = OddHost::of(built(), &Habit::DropsSlashes);
    in_browser(async move |browser| expect_pages_of_a_host_that_drops_slashes(browser, host).await);
}

#[test]
#[ignore = "needs Firefox and geckodriver; tests/all runs it where both are found"]
fn firefox_opens_every_page_of_a_host_that_redirects_slashes() {
    let host = OddHost::of(built(), &Habit::DropsSlashes);
    in_firefox(async move |browser| expect_pages_of_a_host_that_drops_slashes(browser, host).await);
}

/// A page that could not be saved says so once, with the file's name, claims nothing, keeps nothing, and answers.
async fn expect_said_once(browser: &Browser, address: &str, words: &str, file: &str) -> Outcome {
    browser.open(address).await?;
    browser.until_ready().await?;
    browser
        .until("the note", &format!("{UNSAVED} !== ''"))
        .await?;
    let said = browser.run(&format!("return {UNSAVED};")).await?;
    let said = said.as_str().unwrap_or_default();
    assert!(
        said.contains(words) && said.contains(file),
        "{file}: {said}"
    );
    let state = browser
        .run("return [document.body.innerText.split('Not saved on this device').length - 1, document.getElementById('saved').textContent];")
        .await?;
    assert_eq!(state, json!([1, ""]), "{said}");
    assert_eq!(
        caches(browser).await?,
        json!([]),
        "no half of a copy is left"
    );
    browser.fill_in_a_tree().await?;
    browser.show_the_answer().await?;
    assert_eq!(browser.outcome().await?, "do");
    expect_every_page(browser, address).await
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn bytes_changed_on_their_way_are_said_once_by_the_files_name() {
    let host = OddHost::of(built(), &Habit::Adds("/species/index.html"));
    in_browser(async move |browser| {
        expect_said_once(
            &browser,
            &host.address,
            "was changed on its way",
            "species/index.html",
        )
        .await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_host_whose_answers_vary_by_all_that_is_asked_is_kept_all_the_same() {
    let host = OddHost::of(built(), &Habit::Says("Vary: *"));
    in_browser(async move |browser| {
        open_and_save(&browser, &host.address).await?;
        host.stop();
        expect_every_page(&browser, &host.address).await?;
        browser.open(&host.address).await?;
        browser.until_ready().await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_half_upload_is_said_once_by_the_missing_files_name_and_mended_by_the_whole_one() {
    let site = copy("half-upload");
    let lost = asset(&site, "climate", "bin");
    let path = site.join("assets").join(&lost);
    let bytes = std::fs::read(&path).expect("it is built");
    std::fs::remove_file(&path).expect("it was there");
    let server = Server::of(&site, 0);
    in_browser(async move |browser| {
        let words = "did not arrive whole";
        expect_said_once(&browser, &server.address, words, &lost).await?;
        std::fs::write(&path, bytes)?;
        open_and_save(&browser, &server.address).await?;
        assert_eq!(browser.run(&format!("return {UNSAVED};")).await?, "");
        Ok(())
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn no_room_on_the_device_is_said_once_by_a_files_name() {
    let server = Server::of_the_site();
    in_browser(async move |browser| {
        // Little enough that the first large file is too much.
        let quota = json!({ "origin": server.origin(), "quotaSize": 200_000 });
        browser
            .devtools("Storage.overrideQuotaForOrigin", quota)
            .await?;
        expect_said_once(&browser, &server.address, "there was no room left", ".").await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_next_version_that_can_not_be_saved_is_said_beside_the_one_that_is() {
    let site = copy("half-update");
    let mut server = Server::of(&site, 0);
    in_browser(async move |browser| {
        open_and_save(&browser, &server.address).await?;
        let port = server.port();
        server.stop();
        let worker = std::fs::read_to_string(site.join("sw.js"))?;
        std::fs::write(site.join("sw.js"), crate::offline::renamed(&worker))?;
        // What the browser still has of the same bytes would do in its place; this it never asked for.
        let lost = "v1/config.schema.json";
        std::fs::remove_file(site.join(lost))?;
        let server = Server::of(&site, port);
        browser.open(&server.address).await?;
        browser
            .until("the notice of the old version", SAVED)
            .await?;
        browser
            .until("the note", &format!("{UNSAVED} !== ''"))
            .await?;
        let said = browser.run(&format!("return {UNSAVED};")).await?;
        let said = said.as_str().unwrap_or_default();
        assert!(
            said.contains("A newer version") && said.contains(lost),
            "{said}"
        );
        Ok(())
    });
}

/// What was lost is there again after the next visit with a signal: one file first, then the whole cache.
async fn expect_lost_files_again(browser: Browser, mut server: Server) -> Outcome {
    open_and_save(&browser, &server.address).await?;
    let count = "(async () => { const all = []; for (const name of await caches.keys()) all.push(...(await (await caches.open(name)).keys()).map(({ url }) => url));
                   return all.sort(); })().then(done, (error) => done(String(error)));";
    let whole = browser.run_until_done(count).await?;
    assert!(
        whole.as_array().is_some_and(|all| all.len() > 20),
        "{whole}"
    );
    for lose in [
        "(async () => { const [name] = await caches.keys(); const cache = await caches.open(name);
           return [await cache.delete(new URL('method/', document.baseURI)), await cache.delete(document.baseURI)]; })().then(done);",
        "(async () => { const [name] = await caches.keys(); return [await caches.delete(name), true]; })().then(done);",
    ] {
        let lost = browser.run_until_done(lose).await?;
        assert_eq!(lost, json!([true, true]));
        open_and_save(&browser, &server.address).await?;
        assert_eq!(browser.run_until_done(count).await?, whole);
    }
    server.stop();
    expect_every_page(&browser, &server.address).await
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn files_that_the_browser_lost_are_there_again_after_the_next_visit() {
    let server = Server::of_the_site();
    in_browser(async move |browser| expect_lost_files_again(browser, server).await);
}

#[test]
#[ignore = "needs Firefox and geckodriver; tests/all runs it where both are found"]
fn firefox_has_lost_files_again_after_the_next_visit() {
    let server = Server::of_the_site();
    in_firefox(async move |browser| expect_lost_files_again(browser, server).await);
}
