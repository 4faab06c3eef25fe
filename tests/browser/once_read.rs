//! Pages that are many of a kind, of trees, the key, plates and articles: with no signal those are there that were read
//! once, of one version, or all of a language where its reader asked for that.

use crate::Outcome;
use crate::browser::{Browser, in_browser};
use crate::narrow::expect_no_sideways_scroll_at;
use crate::odd_host::{Habit, OddHost};
use crate::offline::{SAVED, open_and_save};
use crate::rules::expect_no_violations;
use crate::site::{Server, built, copy, every_page, is_kept_once_read};
use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use fantoccini::Locator;
use serde_json::{Value, json};
use sha2::{Digest as _, Sha256};
use std::path::{Path, PathBuf};
use std::sync::OnceLock;

type Failure = Box<dyn std::error::Error + Send + Sync>;

/// A page of each kind: tree, article, step of the key, plates, paper, the same in Spanish. None of them is the first page.
const READ: [&str; 6] = [
    "species/norway-maple/",
    "articles/how-wide-and-why/",
    "key/alternate-pinnate/",
    "plates/leaflets/",
    "paper/card/",
    "es/species/palms/",
];

const SAVED_IN_ANY: &str = "/^(Saved on this device|Guardado en este aparato)/.test(document.getElementById('saved')?.textContent)";

/// What the page about use with no signal says of what is kept.
const KEPT_SAID: &str = "document.getElementById('kept-said').textContent";

/// Opens a page with a signal, and waits until it is said to be kept.
async fn read(browser: &Browser, address: &str, page: &str) -> Outcome {
    browser.open_page(&format!("{address}{page}")).await?;
    browser
        .until(&format!("/{page} to be saved"), SAVED_IN_ANY)
        .await
}

/// The heading of a page as it was built.
fn heading_of(folder: &Path, page: &str) -> String {
    let file = folder.join(page).join("index.html");
    let text = std::fs::read_to_string(file).expect("it is built");
    let (_, rest) = text.split_once("<h1").expect("a heading");
    let (_, rest) = rest.split_once('>').expect("its tag ends");
    rest.split_once("</h1>").expect("it ends").0.to_owned()
}

/// A page is shown as it was built, styled, and says that it is saved.
async fn expect_there(browser: &Browser, folder: &Path, address: &str, page: &str) -> Outcome {
    browser.open_page(&format!("{address}{page}")).await?;
    let seen = browser
        .run("return [location.pathname, document.querySelector('h1')?.innerHTML, document.styleSheets.length > 0];")
        .await?;
    let wanted = json!([format!("/{page}"), heading_of(folder, page), true]);
    assert_eq!(seen, wanted, "/{page}");
    browser
        .until(&format!("/{page} to say that it is saved"), SAVED_IN_ANY)
        .await
}

/// A page that is not kept: the one about use with no signal in its language stands in for it and names it.
async fn expect_said_not_kept(browser: &Browser, address: &str, page: &str) -> Outcome {
    browser.open(&format!("{address}{page}")).await?;
    let home = if page.starts_with("es/") { "/es" } else { "" };
    let seen = browser
        .run("const note = document.getElementById('not-kept'); const link = document.getElementById('not-kept-page');
              return [location.pathname, note?.hidden, link?.href, link?.textContent];")
        .await?;
    let wanted = json!([
        format!("{home}/offline/"),
        false,
        format!("{address}{page}"),
        page
    ]);
    assert_eq!(seen, wanted, "/{page}");
    Ok(())
}

/// The build that each page in the one cache names, each once, and how many pages are kept once they were read.
async fn builds_kept(browser: &Browser) -> Result<Value, Failure> {
    let script = "(async () => {
           const names = await caches.keys();
           const builds = new Set();
           let once = 0;
           for (const name of names) {
             const cache = await caches.open(name);
             for (const request of await cache.keys()) {
               const response = await cache.match(request);
               if (!response.headers.get('Content-Type')?.startsWith('text/html')) continue;
               const build = /(?:build |\\()([0-9a-f]{8})\\b/.exec(await response.text());
               if (build) builds.add(build[1]);
               once += /\\/(species|articles|key)\\/.|\\/plates\\//.test(new URL(request.url).pathname) ? 1 : 0;
             }
           }
           return [names.length, [...builds], once];
         })().then(done, (error) => done(String(error)));";
    Ok(browser.run_until_done(script).await?)
}

/// The build that a page of a site names.
fn build_of(folder: &Path) -> String {
    let page = std::fs::read_to_string(folder.join("index.html")).expect("it is built");
    let (_, rest) = page.split_once(", build ").expect("it names its build");
    rest[..8].to_owned()
}

/// The digest of a file as the worker lists it.
fn digest(bytes: &[u8]) -> String {
    format!("sha256-{}", STANDARD.encode(Sha256::digest(bytes)))
}

/// Another version of the site: each of its pages names another build, and its worker holds the digests of those.
fn next_version() -> &'static Path {
    static MADE: OnceLock<PathBuf> = OnceLock::new();
    MADE.get_or_init(|| {
        let folder = copy("once-read-next");
        let build = build_of(built());
        let list = folder.join("once-read.json");
        let worker = folder.join("sw.js");
        let read = |path: &Path| std::fs::read_to_string(path).expect("it is built");
        let [mut listed, mut held] = [read(&list), crate::offline::renamed(&read(&worker))];
        let pages = every_page()
            .into_iter()
            .map(|page| format!("{page}index.html"));
        for page in pages.chain(["404.html".to_owned()]) {
            let path = folder.join(page);
            let before = read(&path);
            let after = before.replace(&build, "0000beef");
            for text in [&mut listed, &mut held] {
                *text = text.replace(&digest(before.as_bytes()), &digest(after.as_bytes()));
            }
            std::fs::write(&path, after).expect("it can be written");
        }
        held = held.replace(&digest(read(&list).as_bytes()), &digest(listed.as_bytes()));
        std::fs::write(list, listed).expect("it can be written");
        std::fs::write(worker, held).expect("it can be written");
        folder
    })
}

/// The addresses of all pages in English that are kept once they were read, and their bytes.
fn once_read_in_english() -> (Vec<String>, u64) {
    let english = |page: &String| !page.starts_with("es/") && is_kept_once_read(page);
    let pages: Vec<String> = every_page().into_iter().filter(english).collect();
    let size = |page: &String| {
        let file = built().join(page).join("index.html");
        std::fs::metadata(file).expect("it is built").len()
    };
    let bytes = pages.iter().map(size).sum();
    (pages, bytes)
}

/// Presses a button of the page.
async fn press(browser: &Browser, css: &str) -> Outcome {
    let button = browser.client.find(Locator::Css(css)).await?;
    Ok(button.click().await?)
}

/// Opens the page about use with no signal, and waits until it tells what is kept.
async fn open_what_is_kept(browser: &Browser, address: &str) -> Outcome {
    browser.open(&format!("{address}offline/")).await?;
    browser
        .until("what is kept", &format!("{KEPT_SAID} !== ''"))
        .await
}

/// Presses the button that keeps all pages, and waits until they are there.
async fn keep_all(browser: &Browser, pages: usize) -> Outcome {
    press(browser, "#keep-all").await?;
    browser
        .until(
            "all pages",
            &format!("{KEPT_SAID}.startsWith('All {pages} pages')"),
        )
        .await
}

/// Takes the newer version that is offered.
async fn take_the_new_version(browser: &Browser, address: &str) -> Outcome {
    browser.open(address).await?;
    browser
        .until(
            "the offer of a new version",
            "!document.getElementById('update').hidden",
        )
        .await?;
    press(browser, "#update-now").await?;
    browser
        .until(
            "the reload after the yes",
            "document.getElementById('update')?.hidden && navigator.serviceWorker.controller",
        )
        .await?;
    browser.until("the notice for the new version", SAVED).await
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_page_that_was_read_is_there_with_no_signal_and_another_is_said_not_to_be() {
    let mut server = Server::of_the_site();
    in_browser(async move |browser| {
        let address = server.address.clone();
        // The first one no worker serves, the others it does.
        read(&browser, &address, "species/tree-of-heaven/").await?;
        for page in READ {
            read(&browser, &address, page).await?;
        }
        browser.expect_quiet().await?;
        server.stop();
        for page in READ.into_iter().chain(["species/tree-of-heaven/"]) {
            expect_there(&browser, built(), &address, page).await?;
        }
        expect_said_not_kept(&browser, &address, "articles/before-you-start/").await?;
        expect_said_not_kept(&browser, &address, "es/articles/before-you-start/").await?;
        // One that was read in the other language alone is had in that.
        browser.open(&format!("{address}species/palms/")).await?;
        let path = browser.run("return location.pathname;").await?;
        assert_eq!(path, "/es/species/palms/");
        // The page about it names what was read, in its own language.
        open_what_is_kept(&browser, &address).await?;
        let told = browser
            .run("return [...document.querySelectorAll('#kept-list a')].map((a) => new URL(a.href).pathname).sort();")
            .await?;
        let english = json!([
            "/articles/how-wide-and-why/",
            "/key/alternate-pinnate/",
            "/plates/leaflets/",
            "/species/norway-maple/",
            "/species/tree-of-heaven/"
        ]);
        assert_eq!(told, english);
        Ok(())
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_new_version_has_the_pages_that_were_read_as_its_own() {
    let mut server = Server::of_the_site();
    let next = next_version();
    assert_ne!(build_of(built()), build_of(next));
    in_browser(async move |browser| {
        let address = server.address.clone();
        for page in READ {
            read(&browser, &address, page).await?;
        }
        let before = json!([1, [build_of(built())], 5]);
        assert_eq!(builds_kept(&browser).await?, before);
        let port = server.port();
        server.stop();
        let mut server = Server::of(next, port);
        browser.open(&address).await?;
        browser
            .until(
                "the offer of a new version",
                "!document.getElementById('update').hidden",
            )
            .await?;
        // Until its reader agrees the old one is shown, whole; what it never read comes from the server, and is not kept.
        for (page, folder) in [
            ("species/norway-maple/", built()),
            ("species/tree-of-heaven/", next),
        ] {
            browser.open(&format!("{address}{page}")).await?;
            let text = browser
                .run("return document.querySelector('.foot').textContent;")
                .await?;
            let build = build_of(folder);
            assert!(text.as_str().is_some_and(|text| text.contains(&build)));
        }
        take_the_new_version(&browser, &address).await?;
        let after = json!([1, [build_of(next)], 5]);
        assert_eq!(builds_kept(&browser).await?, after);
        server.stop();
        for page in READ {
            expect_there(&browser, next, &address, page).await?;
        }
        expect_said_not_kept(&browser, &address, "species/tree-of-heaven/").await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn all_pages_are_kept_where_they_are_wanted_and_given_up_again() {
    let mut server = Server::of_the_site();
    let (pages, bytes) = once_read_in_english();
    in_browser(async move |browser| {
        let address = server.address.clone();
        read(&browser, &address, "species/norway-maple/").await?;
        open_what_is_kept(&browser, &address).await?;
        let page = built().join("species/norway-maple/index.html");
        let missing = (bytes - std::fs::metadata(page)?.len()) as f64 / 1e6;
        let told = browser
            .run("return [document.getElementById('keep-size').textContent, document.getElementById('only-read').hidden];")
            .await?;
        let size = format!(
            "{} more are fetched. They take {missing:.1} MB",
            pages.len() - 1
        );
        let said = told[0].as_str().unwrap_or_default();
        assert!(said.contains(&size), "{said}; wanted: {size}");
        assert_eq!(told[1], true);
        expect_no_violations(&browser, "what is kept").await?;
        expect_no_sideways_scroll_at(&browser, "what is kept", &[320, 390, 1280]).await?;
        // Progress is told on the way.
        browser
            .run("globalThis.steps = new Set(); const bar = document.getElementById('kept-progress');
                  new MutationObserver(() => { if (!bar.hidden) steps.add(bar.value); }).observe(bar, { attributes: true });")
            .await?;
        keep_all(&browser, pages.len()).await?;
        let steps = browser.run("return steps.size;").await?;
        assert!(steps.as_u64() > Some(5), "{steps}");
        server.stop();
        for page in pages.iter().step_by(9) {
            expect_there(&browser, built(), &address, page).await?;
        }
        // What was opened since counts as read; the rest goes.
        let read = pages
            .iter()
            .step_by(9)
            .filter(|page| *page != "species/norway-maple/");
        let read = read.count() + 1;
        open_what_is_kept(&browser, &address).await?;
        press(&browser, "#only-read").await?;
        let left = format!(
            "Of {} pages of trees, key, plates and articles in this language, {read} are",
            pages.len()
        );
        browser
            .until(
                "what was read",
                &format!("{KEPT_SAID}.startsWith('{left}')"),
            )
            .await?;
        expect_there(&browser, built(), &address, "species/norway-maple/").await?;
        expect_there(&browser, built(), &address, &pages[9]).await?;
        expect_said_not_kept(&browser, &address, &pages[10]).await
    });
}

/// Leaves so many bytes of room on the device beside what the site has taken.
async fn leave_room(browser: &Browser, server: &Server, bytes: u64) -> Outcome {
    let used = browser
        .run_until_done("navigator.storage.estimate().then(({ usage }) => done(usage));")
        .await?;
    let quota = used.as_u64().ok_or("a number")? + bytes;
    let quota = json!({ "origin": server.origin(), "quotaSize": quota });
    browser
        .devtools("Storage.overrideQuotaForOrigin", quota)
        .await?;
    Ok(())
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn without_room_for_all_pages_what_was_read_stays_and_it_is_said() {
    let mut server = Server::of_the_site();
    let (pages, _) = once_read_in_english();
    in_browser(async move |browser| {
        let address = server.address.clone();
        read(&browser, &address, "species/norway-maple/").await?;
        open_what_is_kept(&browser, &address).await?;
        leave_room(&browser, &server, 1_000_000).await?;
        press(&browser, "#keep-all").await?;
        browser
            .until(
                "what is said of room",
                "document.getElementById('kept-trouble').textContent.startsWith('There is no room for all pages')",
            )
            .await?;
        let left = format!(
            "Of {} pages of trees, key, plates and articles in this language, 1 are",
            pages.len()
        );
        let said = browser.run(&format!("return {KEPT_SAID};")).await?;
        assert!(
            said.as_str().is_some_and(|said| said.starts_with(&left)),
            "{said}"
        );
        server.stop();
        open_and_save(&browser, &address).await?;
        expect_there(&browser, built(), &address, "species/norway-maple/").await
    });
}

/// Keeps all pages, and serves another version; gives its server.
async fn keep_all_then_serve_the_next(
    browser: &Browser,
    mut server: Server,
) -> Result<Server, Failure> {
    let address = server.address.clone();
    read(browser, &address, "species/norway-maple/").await?;
    open_what_is_kept(browser, &address).await?;
    keep_all(browser, once_read_in_english().0.len()).await?;
    let port = server.port();
    server.stop();
    Ok(Server::of(next_version(), port))
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_new_version_is_kept_with_all_pages_where_they_are_wanted() {
    let server = Server::of_the_site();
    let next = next_version();
    in_browser(async move |browser| {
        let mut server = keep_all_then_serve_the_next(&browser, server).await?;
        take_the_new_version(&browser, &server.address).await?;
        let pages = once_read_in_english().0;
        let wanted = json!([1, [build_of(next)], pages.len()]);
        assert_eq!(builds_kept(&browser).await?, wanted);
        server.stop();
        expect_there(&browser, next, &server.address, &pages[pages.len() / 2]).await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_new_version_without_room_for_all_pages_comes_with_those_that_were_read() {
    let server = Server::of_the_site();
    let next = next_version();
    in_browser(async move |browser| {
        let mut server = keep_all_then_serve_the_next(&browser, server).await?;
        // Enough for what every version has, not for all pages twice.
        leave_room(&browser, &server, 5_000_000).await?;
        take_the_new_version(&browser, &server.address).await?;
        let wanted = json!([1, [build_of(next)], 1]);
        assert_eq!(builds_kept(&browser).await?, wanted);
        open_what_is_kept(&browser, &server.address).await?;
        let said = browser
            .run("return document.getElementById('kept-trouble').textContent;")
            .await?;
        assert!(
            said.as_str()
                .is_some_and(|said| said.starts_with("You asked for all pages")),
            "{said}"
        );
        server.stop();
        expect_there(&browser, next, &server.address, "species/norway-maple/").await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_page_that_is_changed_on_its_way_is_shown_and_said_not_to_be_saved() {
    let host = OddHost::of(built(), &Habit::Adds("/species/norway-maple/index.html"));
    in_browser(async move |browser| {
        open_and_save(&browser, &host.address).await?;
        browser
            .open(&format!("{}species/norway-maple/", host.address))
            .await?;
        let unsaved = "document.getElementById('unsaved').textContent";
        browser
            .until("the note", &format!("{unsaved} !== ''"))
            .await?;
        let seen = browser
            .run(&format!(
                "return [{unsaved}, document.getElementById('saved').textContent, document.querySelector('h1').innerHTML];"
            ))
            .await?;
        let said = seen[0].as_str().unwrap_or_default();
        assert!(
            said.starts_with("This page could not be saved")
                && said.contains("species/norway-maple/index.html"),
            "{said}"
        );
        assert_eq!(seen[1], "");
        assert_eq!(seen[2], heading_of(built(), "species/norway-maple/"));
        // The rest of the site goes on, and another page of its kind is kept.
        read(&browser, &host.address, "species/tree-of-heaven/").await
    });
}
