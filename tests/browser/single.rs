//! The single file: from a disk, unpacked, changed on its way, in a browser that can't unpack it, and from a server.

use crate::Outcome;
use crate::browser::{Browser, in_browser};
use crate::deploy::asset;
use crate::site::{Server, built, folder};
use serde_json::json;

const NAME: &str = "slipbark-single.html";

/// What the build wrote.
pub(crate) fn single_file() -> Vec<u8> {
    std::fs::read(built().join(NAME)).expect("the single file is built")
}

/// Its address in a folder of its own: nothing lies beside it that it could load.
pub(crate) fn on_a_stick(test: &str, file: &[u8]) -> String {
    let path = folder(test).join(NAME);
    std::fs::write(&path, file).expect("the folder can be written");
    format!("file://{}", path.display())
}

/// With one letter in the middle of what is packed changed to its neighbour.
pub(crate) fn with_one_letter_changed(mut file: Vec<u8>) -> Vec<u8> {
    let at = middle(&file);
    file[at] = if file[at] == b'a' { b'b' } else { b'a' };
    file
}

/// The middle of what is packed.
fn middle(file: &[u8]) -> usize {
    let page = std::str::from_utf8(file).expect("it is text");
    let (_, after) = page.split_once(" id=\"packed\"").expect("it holds it");
    let (_, after) = after.split_once('>').expect("a tag ends");
    let (letters, _) = after.split_once('<').expect("the element ends");
    page.len() - after.len() + letters.len() / 2
}

/// The answer as it stands, but for its buttons and its links to articles: a page from a disk has nothing to share, and no
/// articles beside it.
const PARTS: &str = "[...document.querySelector('slipbark-tree-plan').shadowRoot.querySelectorAll('.answer-region')].map((part) => { const copy = part.cloneNode(true); copy.querySelectorAll('button, .read').forEach((it) => it.remove()); return copy.textContent; }).join()";

/// The invented tree's answer, then the point of Boston typed in.
async fn open_an_answer_in_boston(browser: &Browser, address: &str) -> Outcome {
    browser.open_an_answer(address).await?;
    browser.type_the_point_of_boston().await
}

/// The page says this, shows what is weighed, and has no calculator.
pub(crate) async fn expect_words_in_place_of_the_calculator(
    browser: &Browser,
    id: &str,
    words: &str,
) -> Outcome {
    browser
        .until(
            "a line that says why",
            &format!("!document.getElementById('{id}').hidden"),
        )
        .await?;
    let seen = browser
        .run(
            "return [
               [...document.querySelectorAll('[role=alert]')].filter((line) => line.checkVisibility()).map((line) => line.id),
               document.querySelector('[role=alert]:not([hidden])').textContent,
               document.querySelector('slipbark-tree-plan').version ?? null,
               document.querySelector('slipbark-tree-plan h2').checkVisibility(),
             ];",
        )
        .await?;
    assert_eq!(seen[0], json!([id]));
    assert!(
        seen[1].as_str().is_some_and(|line| line.contains(words)),
        "{seen}"
    );
    assert_eq!((&seen[2], &seen[3]), (&json!(null), &json!(true)));
    Ok(())
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn the_single_file_answers_from_a_disk_and_asks_nobody() {
    let address = on_a_stick("stick", &single_file());
    let server = Server::of_the_site();
    in_browser(async move |browser| {
        // The climate of Boston, by its own point, is fetched by the site and is in the file.
        open_an_answer_in_boston(&browser, &server.address).await?;
        browser
            .until(
                "an answer from the climate there",
                "document.querySelector('slipbark-tree-plan').result?.asked_probability != null",
            )
            .await?;
        let parts = browser.run(&format!("return {PARTS};")).await?;
        browser.open("about:blank").await?;
        browser.requests().await?;
        open_an_answer_in_boston(&browser, &address).await?;
        assert_eq!(browser.outcome().await?, "do");
        browser
            .until("the site's answer", &format!("{PARTS} === {parts}"))
            .await?;
        crate::rules::expect_no_violations(&browser, "the single file").await?;
        crate::narrow::expect_no_sideways_scroll(&browser, "the single file").await?;
        browser.expect_quiet().await?;
        // Data and blobs are of the page itself.
        browser
            .expect_requests_only_to(&[&address, "data:", "blob:"])
            .await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn what_the_page_unpacks_is_the_site_s_own_module_and_climate_to_the_byte() {
    let address = on_a_stick("stick-unpacked", &single_file());
    in_browser(async move |browser| {
        browser.open(&address).await?;
        browser.until_ready().await?;
        for (name, ending) in [("engine", "wasm"), ("climate", "bin")] {
            let script = format!(
                "return Array.from(document.getElementById('packed').parts['{name}.{ending}'], (byte) => String.fromCharCode(byte)).join('');"
            );
            let unpacked = browser.run(&script).await?;
            let unpacked: Vec<u8> = unpacked
                .as_str()
                .expect("letters")
                .chars()
                .map(|letter| u8::try_from(u32::from(letter)).expect("a byte"))
                .collect();
            let assets = built().join("assets");
            let own = std::fs::read(assets.join(asset(built(), name, ending)))?;
            assert!(unpacked == own, "{name}.{ending} differs from the site's");
        }
        Ok(())
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_copy_that_was_changed_on_its_way_says_so() {
    let whole = single_file();
    let cut = on_a_stick("stick-cut", &whole[..middle(&whole)]);
    let changed = on_a_stick("stick-changed", &with_one_letter_changed(whole));
    in_browser(async move |browser| {
        for address in [&changed, &cut] {
            browser.open(address).await?;
            expect_words_in_place_of_the_calculator(&browser, "changed", "Fetch the file again")
                .await?;
            browser.expect_quiet().await?;
        }
        browser.open(&changed).await?;
        crate::rules::expect_no_violations(&browser, "the changed single file").await?;
        crate::narrow::expect_no_sideways_scroll(&browser, "the changed single file").await
    });
}

/// As an older browser: what unpacks the file is taken away before the page's own script runs, and with it the policy,
/// which lets no other script run.
#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_browser_that_cannot_unpack_it_is_told_so() {
    let page = String::from_utf8(single_file()).expect("it is text");
    let older = page.replace(
        "<meta http-equiv=\"Content-Security-Policy\" content=",
        "<script>delete globalThis.DecompressionStream</script><meta name=\"policy\" content=",
    );
    assert_ne!(older, page);
    let address = on_a_stick("stick-older", older.as_bytes());
    in_browser(async move |browser| {
        browser.open(&address).await?;
        expect_words_in_place_of_the_calculator(&browser, "older", "Update the browser").await?;
        browser.expect_quiet().await?;
        crate::rules::expect_no_violations(&browser, "the single file, not unpacked").await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn it_starts_from_a_server_too() {
    let server = Server::of_the_site();
    in_browser(async move |browser| {
        browser
            .open_an_answer(&format!("{}{NAME}", server.address))
            .await?;
        assert_eq!(browser.outcome().await?, "do");
        browser.expect_quiet().await?;
        let own = [server.address.as_str(), "data:", "blob:"];
        browser.expect_requests_only_to(&own).await
    });
}
