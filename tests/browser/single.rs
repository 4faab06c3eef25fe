//! The single file: from a disk, packed and unpacked, changed on its way, and from servers.

use crate::Outcome;
use crate::browser::{Browser, in_browser};
use crate::site::{Server, built, folder};
use serde_json::json;
use std::process::Command;

const NAME: &str = "slipbark-single.html";

/// What the build wrote.
pub fn single_file() -> Vec<u8> {
    std::fs::read(built().join(NAME)).expect("the single file is built")
}

/// Its address in a folder of its own: nothing lies beside it that it could load.
pub fn on_a_stick(test: &str, file: &[u8]) -> String {
    let path = folder(test).join(NAME);
    std::fs::write(&path, file).expect("the folder can be written");
    format!("file://{}", path.display())
}

/// Where what is packed begins, and how long it is.
fn packed(file: &[u8]) -> std::ops::Range<usize> {
    let after = |from: usize, text: &[u8]| {
        let mut places = file[from..].windows(text.len());
        from + places
            .position(|here| here == text)
            .expect("the page holds it")
            + text.len()
    };
    let begin = after(after(0, b" id=\"packed\""), b">");
    begin..after(begin, b"<") - 1
}

/// With one letter in the middle changed to its neighbour.
pub fn with_one_letter_changed(mut file: Vec<u8>) -> Vec<u8> {
    let packed = packed(&file);
    let at = (packed.start + packed.end) / 2;
    file[at] = if file[at] == b'a' { b'b' } else { b'a' };
    file
}

/// The answer is a ring. The file has no call for programs, so the tag of the answer says it.
pub async fn expect_a_ring(browser: &Browser) -> Outcome {
    let tag = "document.querySelector('slipbark-tree-plan').shadowRoot.querySelector('.verdict svg').getAttribute('aria-label')";
    browser
        .until("the tag of a ring", &format!("{tag}.startsWith('Do, ')"))
        .await
}

/// The verdict and the parts of the answer.
const PARTS: &str = "[...document.querySelector('slipbark-tree-plan').shadowRoot.querySelectorAll('.verdict, .parts')].map((part) => part.textContent).join()";

/// The invented tree's plan, then the point of Boston typed in.
async fn open_a_plan_in_boston(browser: &Browser, address: &str) -> Outcome {
    browser.open_a_plan(address).await?;
    browser.type_the_point_of_boston().await
}

/// The page says this, shows what the plan weighs, and has no calculator.
pub async fn expect_words_in_place_of_the_calculator(
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
        open_a_plan_in_boston(&browser, &server.address).await?;
        browser
            .until(
                "an answer from the climate there",
                "document.querySelector('slipbark-tree-plan').result?.asked_probability != null",
            )
            .await?;
        let parts = browser.run(&format!("return {PARTS};")).await?;
        browser.open("about:blank").await?;
        browser.requests().await?;
        open_a_plan_in_boston(&browser, &address).await?;
        expect_a_ring(&browser).await?;
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

/// Against another program for the format: `xz`.
#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn the_page_unpacks_to_the_byte_what_xz_does() {
    let file = single_file();
    let letters = file[packed(&file)].to_vec();
    let stick = folder("stick-unpacked");
    let address = on_a_stick("stick-unpacked-page", &file);
    in_browser(async move |browser| {
        browser.open(&address).await?;
        browser.until_ready().await?;
        let found = browser
            .run(
                "const { dataset, parts } = document.getElementById('packed');
                 const order = dataset.parts.split(' ').filter((_, at) => at % 2 === 0);
                 const letters = (bytes) => Array.from(bytes, (byte) => String.fromCharCode(byte)).join('');
                 return [Number(dataset.line), order.map((name) => letters(parts[name])).join('')];",
            )
            .await?;
        let line = found[0].as_u64().expect("a number") as usize;
        let ours: Vec<u8> = found[1]
            .as_str()
            .expect("letters")
            .chars()
            .map(|letter| u8::try_from(u32::from(letter)).expect("a byte"))
            .collect();
        // Each line holds a key, then bytes with the key added.
        let bytes: Vec<u8> = letters
            .chunks(line + 1)
            .flat_map(|line| line[1..].iter().map(|letter| letter.wrapping_sub(line[0])))
            .collect();
        std::fs::write(stick.join("packed.lzma"), bytes)?;
        let theirs = Command::new("xz")
            .current_dir(&stick)
            .args(["--format=lzma", "--decompress", "--stdout", "packed.lzma"])
            .output()?;
        assert!(
            theirs.status.success(),
            "{}",
            String::from_utf8_lossy(&theirs.stderr)
        );
        assert!(theirs.stdout.len() > 100_000, "{}", theirs.stdout.len());
        assert!(ours == theirs.stdout, "what the page unpacked differs");
        Ok(())
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_copy_that_was_changed_on_its_way_says_so() {
    let whole = single_file();
    let middle = (packed(&whole).start + packed(&whole).end) / 2;
    let cut = on_a_stick("stick-cut", &whole[..middle]);
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

/// A page under any other name is sent as UTF-8, as many hosts send every page.
#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_server_that_names_its_letters_shows_it_and_from_another_it_says_to_save_it() {
    let site = folder("single-served");
    for name in [NAME, "index.html"] {
        std::fs::write(site.join(name), single_file()).expect("the folder can be written");
    }
    let server = Server::of(&site, 0);
    in_browser(async move |browser| {
        browser
            .open_a_plan(&format!("{}{NAME}", server.address))
            .await?;
        expect_a_ring(&browser).await?;
        browser.open(&server.address).await?;
        expect_words_in_place_of_the_calculator(&browser, "letters", "Save the file").await?;
        let link =
            "const link = document.querySelector('#letters a'); return [link.href, link.download];";
        let link = browser.run(link).await?;
        assert_eq!(link, json!([server.address, NAME]));
        browser.expect_quiet().await?;
        let own = [server.address.as_str(), "data:", "blob:"];
        browser.expect_requests_only_to(&own).await
    });
}
