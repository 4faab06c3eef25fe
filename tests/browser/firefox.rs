//! The same in Firefox: the page, another site's page, a page that refuses
//! WebAssembly, no signal, and the single file from a disk.

use crate::browser::{Browser, in_firefox};
use crate::calculator::ANSWER;
use crate::embed::host;
use crate::site::{Server, pages};
use crate::{Outcome, rules, single};
use serde_json::json;

/// A tree is asked about and answered.
async fn expect_an_answer(browser: &Browser) -> Outcome {
    browser.until_ready().await?;
    browser.fill_in_a_tree().await?;
    browser.show_the_answer().await?;
    assert_eq!(browser.outcome().await?, "do");
    Ok(())
}

/// What the page has loaded came from these places alone, by its own record.
async fn expect_loaded_only_from(browser: &Browser, from: &[&str]) -> Outcome {
    let loaded = browser
        .run("return performance.getEntriesByType('resource').map((entry) => entry.name);")
        .await?;
    for address in loaded.as_array().into_iter().flatten() {
        let address = address.as_str().unwrap_or_default();
        let own = from.iter().any(|start| address.starts_with(start));
        assert!(own, "{address} was loaded");
    }
    Ok(())
}

#[test]
#[ignore = "needs Firefox and geckodriver; tests/all runs it where both are found"]
fn firefox_answers_on_the_page_and_breaks_no_rule() {
    let server = Server::of_the_site();
    in_firefox(async move |browser| {
        browser.open(&server.address).await?;
        expect_an_answer(&browser).await?;
        rules::expect_no_violations(&browser, "the page in Firefox").await?;
        expect_loaded_only_from(&browser, &[&server.address]).await
    });
}

#[test]
#[ignore = "needs Firefox and geckodriver; tests/all runs it where both are found"]
fn firefox_answers_on_another_site_and_keeps_nothing() {
    let site = Server::of_the_site();
    let lines = format!(
        "<style>html {{ font-size: 62.5% }} body * {{ all: revert }}</style>\
         <script src=\"{}v1/embed.js\" defer></script><slipbark-tree-plan></slipbark-tree-plan>",
        site.address
    );
    let host = host("firefox-element", "", &lines);
    in_firefox(async move |browser| {
        browser.open(&host.address).await?;
        expect_an_answer(&browser).await?;
        let state = browser
            .run(
                "const style = getComputedStyle(document.querySelector('slipbark-tree-plan').shadowRoot.querySelector('.sb'));
                 return [style.fontSize, localStorage.length, sessionStorage.length, document.cookie];",
            )
            .await?;
        assert_eq!(state, json!(["16px", 0, 0, ""]));
        expect_loaded_only_from(&browser, &[&host.address, &site.address, "data:"]).await
    });
}

#[test]
#[ignore = "needs Firefox and geckodriver; tests/all runs it where both are found"]
fn firefox_steps_down_to_a_frame_where_webassembly_is_refused() {
    let site = Server::of_the_site();
    let head = format!(
        "<meta http-equiv=\"Content-Security-Policy\" content=\"script-src {0}; connect-src {0}; frame-src {0}\">",
        site.origin()
    );
    let lines = format!(
        "<script src=\"{0}v1/embed.js\" defer></script><slipbark-tree-plan><p><a href=\"{0}\">Plan one tree</a></p></slipbark-tree-plan>",
        site.address
    );
    let host = host("firefox-strict", &head, &lines);
    in_firefox(async move |browser| {
        browser.open(&host.address).await?;
        browser
            .until(
                "the frame",
                "document.querySelector('slipbark-tree-plan iframe')?.offsetHeight >= 320 && document.querySelector('slipbark-tree-plan p').hidden",
            )
            .await?;
        let frame = browser.client.find(fantoccini::Locator::Css("iframe"));
        frame.await?.enter_frame().await?;
        browser.until_ready().await?;
        browser.fill_in_a_tree().await?;
        // The driver does not scroll the page around a frame of another origin, so the button is out of its reach.
        browser
            .run("document.querySelector('slipbark-tree-plan').shadowRoot.querySelector('button[type=submit]').click();")
            .await?;
        browser.until("the answer", ANSWER).await?;
        assert_eq!(browser.outcome().await?, "do");
        Ok(())
    });
}

#[test]
#[ignore = "needs Firefox and geckodriver; tests/all runs it where both are found"]
fn firefox_answers_after_the_server_has_stopped() {
    let mut server = Server::of_the_site();
    in_firefox(async move |browser| {
        browser.open(&server.address).await?;
        browser
            .until(
                "the notice that the site is saved",
                "document.getElementById('saved')?.textContent.startsWith('Saved on this device')",
            )
            .await?;
        server.stop();
        // The driver's own reload passes the worker by; a reader's does not.
        browser
            .run("window.isBefore = true; location.reload();")
            .await?;
        browser
            .until(
                "the page again",
                "!window.isBefore && navigator.serviceWorker.controller",
            )
            .await?;
        expect_an_answer(&browser).await?;
        crate::kept::keep_a_draft(&browser).await?;
        // Every page, none of which was opened before, each as if its address were typed.
        for page in pages() {
            browser
                .open_page(&format!("{}{page}", server.address))
                .await?;
            let seen = browser
                .run("const asked = document.querySelectorAll('link[rel=stylesheet]').length;
                     return [document.querySelector('h1')?.textContent ?? '', asked, document.styleSheets.length];")
                .await?;
            let headed = seen[0].as_str().is_some_and(|heading| !heading.is_empty());
            let styled = seen[1] != 0 && seen[1] == seen[2];
            assert!(headed && styled, "/{page}: {seen}");
        }
        // The page where a draft was kept holds it still.
        browser.open(&server.address).await?;
        browser.until_ready().await?;
        let kept = "return document.querySelector('slipbark-tree-plan').inputs.stems[0].diameter;";
        assert_eq!(browser.run(kept).await?, "14 1/2");
        Ok(())
    });
}

#[test]
#[ignore = "needs Firefox and geckodriver; tests/all runs it where both are found"]
fn firefox_keeps_a_frame_as_tall_as_what_it_shows() {
    let site = Server::of_the_site();
    let lines = format!(
        "<iframe src=\"{0}embed/ring/\" title=\"Ring\" width=\"100%\" height=\"400\" style=\"border:0\"></iframe>\
         <script src=\"{0}v1/frame-height.js\" defer></script>",
        site.address
    );
    let host = host("firefox-frame", "", &lines);
    in_firefox(async move |browser| {
        browser.open(&host.address).await?;
        let tall = "document.querySelector('iframe').style.height";
        browser.until("a height of its own", tall).await?;
        let height = "return document.querySelector('iframe').offsetHeight;";
        let before = browser.run(height).await?.as_u64();
        let frame = browser.client.find(fantoccini::Locator::Css("iframe"));
        frame.await?.enter_frame().await?;
        browser.until_ready().await?;
        browser
            .run(
                "const calculator = document.getElementById('calculator');
                 calculator.inputs = { version: 1, species: 'Norway maple', stems: [{ diameter: '14 1/2 in' }], date: '2027-06-12', none_in_reach: true, line_within_reach: 'no' };
                 calculator.compute();",
            )
            .await?;
        let fits = "Math.abs(innerHeight - document.body.getBoundingClientRect().height) < 6";
        browser.until("a frame as tall as its page", fits).await?;
        let kept = "return [localStorage.length, sessionStorage.length, document.cookie];";
        assert_eq!(browser.run(kept).await?, json!([0, 0, ""]));
        browser.client.enter_parent_frame().await?;
        let after = browser.run(height).await?.as_u64();
        assert!(after > before, "{before:?} {after:?}");
        Ok(())
    });
}

#[test]
#[ignore = "needs Firefox and geckodriver; tests/all runs it where both are found"]
fn firefox_answers_from_the_single_file_on_a_disk() {
    let address = single::on_a_stick("stick-firefox", &single::single_file());
    let changed = single::with_one_letter_changed(single::single_file());
    let changed = single::on_a_stick("stick-firefox-changed", &changed);
    in_firefox(async move |browser| {
        browser.open(&address).await?;
        expect_an_answer(&browser).await?;
        expect_loaded_only_from(&browser, &[&address, "data:", "blob:"]).await?;
        browser.open(&changed).await?;
        single::expect_words_in_place_of_the_calculator(&browser, "changed", "Fetch the file again")
            .await
    });
}
