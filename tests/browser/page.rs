//! The home page: the calculator in its first host.

use crate::browser::in_browser;
use crate::site::{Server, copy, pages};
use fantoccini::key::Key;
use serde_json::json;

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn the_calculator_becomes_ready_and_asks_nobody_else() {
    let server = Server::of_the_site();
    in_browser(async move |browser| {
        browser.open(&server.address).await?;
        browser.until_ready().await?;
        let version = browser
            .run("return document.querySelector('slipbark-tree-plan').version;")
            .await?;
        assert_eq!(version, env!("CARGO_PKG_VERSION"));
        browser.expect_quiet().await?;
        browser.expect_requests_only_to(&[&server.address]).await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_press_on_the_words_for_today_takes_them_whole_and_a_typed_day_stays() {
    let server = Server::of_the_site();
    in_browser(async move |browser| {
        browser.open(&server.address).await?;
        browser.until_ready().await?;
        let taken = "const day = document.querySelector('slipbark-tree-plan').shadowRoot.querySelector('[name=day]');
            return [day.value.startsWith('Today, '), day.selectionEnd - day.selectionStart === day.value.length];";
        browser.press("[name=day]").await?;
        assert_eq!(browser.run(taken).await?, json!([true, true]));
        let typed = "const day = document.querySelector('slipbark-tree-plan').shadowRoot.querySelector('[name=day]');
            day.value = '1 June 2027'; day.setSelectionRange(0, 0);";
        browser.run(typed).await?;
        browser.press("[name=day]").await?;
        assert_eq!(browser.run(taken).await?, json!([false, false]));
        Ok(())
    });
}

/// The tokens and the calculators' sheets as they are written, joined.
fn calculator_sheets() -> String {
    let names: [&str; 9] = include!("../../www/style/sheets.rs");
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/../www/style");
    let parts = names.map(|name| format!("parts/{name}"));
    std::iter::once("tokens".to_owned())
        .chain(parts)
        .map(|name| std::fs::read_to_string(format!("{folder}/{name}.css")).expect("a sheet"))
        .collect()
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn the_packed_style_sheet_has_the_rules_of_the_written_one() {
    let server = Server::of_the_site();
    let written = serde_json::json!(calculator_sheets());
    let compare = format!(
        "const rules = (sheet) => [...sheet.cssRules].map((rule) => rule.cssText.replaceAll(/, */g, ','));
         const written = new CSSStyleSheet();
         written.replaceSync({written});
         const element = document.querySelector('slipbark-tree-plan');
         const packed = rules(element.shadowRoot.adoptedStyleSheets[0]);
         return [packed.length > 100, rules(written).filter((rule, at) => rule !== packed[at])];"
    );
    in_browser(async move |browser| {
        browser.open(&server.address).await?;
        browser.until_ready().await?;
        let differ = browser.run(&compare).await?;
        assert_eq!(differ, serde_json::json!([true, []]));
        Ok(())
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn every_page_loads_without_a_complaint_and_no_link_is_dead() {
    let server = Server::of_the_site();
    in_browser(async move |browser| {
        for page in pages() {
            browser.open(&format!("{}{page}", server.address)).await?;
            let dead = browser
                .run_until_done(
                    "const links = [...document.querySelectorAll('a[href], link[href]')].map((a) => new URL(a.href));
                     const own = links.filter((url) => url.origin === location.origin);
                     Promise.all(own.map(async (url) => {
                       const answer = await fetch(url, { cache: 'no-store' });
                       if (!answer.ok) return url.href;
                       // What stands behind #v= is a question, and no part of the page.
                       if (!url.hash || url.hash.startsWith('#v=')) return null;
                       const page = new DOMParser().parseFromString(await answer.text(), 'text/html');
                       return page.getElementById(decodeURIComponent(url.hash.slice(1))) ? null : url.href;
                     })).then((all) => done(all.filter(Boolean)), (error) => done([String(error)]));",
                )
                .await?;
            assert_eq!(dead, serde_json::json!([]), "dead links on /{page}");
            browser.expect_quiet().await?;
        }
        browser.expect_requests_only_to(&[&server.address]).await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn the_colours_are_kept_only_once_they_are_picked() {
    let server = Server::of_the_site();
    in_browser(async move |browser| {
        let kept = "return [localStorage.length, document.cookie, document.documentElement.dataset.theme ?? null];";
        browser.open(&server.address).await?;
        assert_eq!(browser.run(kept).await?, serde_json::json!([0, "", null]));
        browser
            .client
            .find(fantoccini::Locator::Css(".sunsw"))
            .await?
            .click()
            .await?;
        assert_eq!(browser.run(kept).await?, serde_json::json!([1, "", "sun"]));
        browser.open(&format!("{}method/", server.address)).await?;
        assert_eq!(
            browser
                .run("return document.documentElement.dataset.theme;")
                .await?,
            "sun"
        );
        assert_eq!(
            browser
                .run("return document.getElementById('sun').checked;")
                .await?,
            true
        );
        browser
            .client
            .find(fantoccini::Locator::Css(".sunsw"))
            .await?
            .click()
            .await?;
        assert_eq!(browser.run(kept).await?, serde_json::json!([0, "", null]));
        browser.expect_quiet().await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn what_stands_on_the_page_does_not_jump_when_the_calculator_comes() {
    let server = Server::of_the_site();
    in_browser(async move |browser| {
        let sizes = [(360, 900), (768, 1100), (1280, 900), (1280, 2400)];
        let pages = ["", "field/"].into_iter();
        for (page, (width, height)) in pages.flat_map(|page| sizes.map(|size| (page, size))) {
            browser.window(width, height).await?;
            // A slow processor: what comes late is seen to come late.
            let slow = serde_json::json!({ "rate": 4 });
            browser
                .devtools("Emulation.setCPUThrottlingRate", slow)
                .await?;
            browser.open(&format!("{}{page}", server.address)).await?;
            browser.until_ready().await?;
            let shift = browser
                .run_until_done(
                    "new PerformanceObserver((list, observer) => {
                       observer.disconnect();
                       const entries = list.getEntries().filter((entry) => !entry.hadRecentInput);
                       done([entries.reduce((sum, entry) => sum + entry.value, 0),
                         entries.flatMap((entry) => entry.sources.map((source) => source.node?.className || source.node?.nodeName))]);
                     }).observe({ type: 'layout-shift', buffered: true });
                     setTimeout(() => done([0, []]), 1000);",
                )
                .await?;
            // The site's own limit, a fifth of what is called good in general.
            assert!(
                shift[0].as_f64().is_some_and(|sum| sum <= 0.02),
                "/{page} at {width} by {height}: {shift}"
            );
        }
        Ok(())
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_link_opens_at_its_answer_whose_parts_are_one_press_away() {
    let server = Server::of_the_site();
    in_browser(async move |browser| {
        let link = "#v=1&size-unit=in&species=Norway+maple&size=14.5&date=2027-06-12&none_in_reach=yes&line_within_reach=no";
        browser.open(&format!("{}{link}", server.address)).await?;
        browser.until_ready().await?;
        let root = "document.querySelector('slipbark-tree-plan').shadowRoot";
        let focused = format!("{root}.activeElement?.className === 'say'");
        browser.until("the focus on the answer", &focused).await?;
        // Each name in the contents leads to a part that stands there; one that is folded opens.
        let parts = browser
            .run(&format!(
                "return [...{root}.querySelectorAll('.toc a')].map((link) => {{
                   const part = {root}.getElementById(link.hash.slice(1));
                   link.click();
                   return [link.checkVisibility(), Boolean(part), part?.localName !== 'details' || part.open];
                 }});"
            ))
            .await?;
        let parts = parts.as_array().cloned().unwrap_or_default();
        assert!(parts.len() >= 8, "{parts:?}");
        for part in parts {
            assert_eq!(part, json!([true, true, true]));
        }
        browser.press(".back a").await?;
        browser.until("the answer again", &focused).await?;
        // In front of the open form stands the way past it.
        browser.press("summary.recap").await?;
        browser.keys(&[Key::Tab.into()]).await?;
        let past = format!("return {root}.activeElement.closest('.past') !== null;");
        assert_eq!(browser.run(&past).await?, true);
        browser.keys(&[Key::Enter.into()]).await?;
        browser.until("the answer a third time", &focused).await?;
        browser.expect_quiet().await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_calculator_that_can_not_start_says_so_in_the_page() {
    let broken = copy("broken-module");
    let assets = std::fs::read_dir(broken.join("assets")).expect("it has assets");
    let module = assets
        .flatten()
        .map(|entry| entry.path())
        .find(|path| {
            // Lists have a module of their own.
            let name = path.file_name().unwrap_or_default().to_string_lossy();
            name.starts_with("engine.") && name.ends_with(".wasm")
        })
        .expect("one of them is the module");
    std::fs::write(module, "no module").expect("the copy may be changed");
    let server = Server::of(&broken, 0);
    in_browser(async move |browser| {
        for page in ["", "es/", "embed/tree-plan/"] {
            browser.open(&format!("{}{page}", server.address)).await?;
            browser
                .until("the words", "!document.getElementById('failed').hidden")
                .await?;
            let said = "const note = document.getElementById('failed');
                 return [note.getAttribute('role'), note.checkVisibility(), note.textContent.length > 60];";
            assert_eq!(
                browser.run(said).await?,
                json!(["alert", true, true]),
                "/{page}"
            );
        }
        Ok(())
    });
}
