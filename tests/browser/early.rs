//! The form stands in the page before its module: what is typed and pressed until then is there afterwards.

use crate::browser::{Browser, in_browser};
use crate::calculator::ANSWER;
use crate::site::{Server, copy};
use crate::{Outcome, site};
use serde_json::{Value, json};
use std::time::Duration;

const ROOT: &str = "document.querySelector('slipbark-tree-plan').shadowRoot";

/// A copy of the site whose module waits for `letGo()`.
fn held_back(name: &str) -> std::path::PathBuf {
    let folder = copy(name);
    let assets = std::fs::read_dir(folder.join("assets")).expect("it is built");
    let mut held = 0;
    for file in assets.map(|file| file.expect("a file").path()) {
        let name = file.file_name().unwrap_or_default().to_string_lossy();
        if !name.starts_with("element") || !name.ends_with(".js") {
            continue;
        }
        let script = std::fs::read_to_string(&file).expect("a script");
        let begin = "await init(";
        let waits = format!("await new Promise((go) => {{ globalThis.letGo = go; }}); {begin}");
        assert_eq!(
            script.matches(begin).count(),
            1,
            "one place where the module begins"
        );
        held += 1;
        std::fs::write(&file, script.replace(begin, &waits)).expect("the copy takes it");
    }
    // A folder that was built into before has scripts of earlier builds too.
    assert!(held >= 1, "no script begins the module");
    folder
}

async fn let_go(browser: &Browser) -> Outcome {
    // Longer than what follows a key is put down to it.
    tokio::time::sleep(Duration::from_millis(700)).await;
    browser.run("letGo();").await?;
    browser.until_ready().await
}

/// A press before the module is there is said, and answered once it is.
async fn a_press_is_kept(browser: &Browser) -> Outcome {
    browser.type_into("#f-find", "Norway maple").await?;
    browser
        .type_into("[name='stems[0].diameter']", "12")
        .await?;
    browser.press(".go > button").await?;
    let said = format!("return {ROOT}.querySelector('.soon').offsetHeight > 0;");
    assert_eq!(browser.run(&said).await?, true, "it is said");
    let_go(browser).await?;
    browser.until("the answer", ANSWER).await
}

/// Where nothing is typed nothing moves as the module comes.
async fn nothing_moves(browser: &Browser, address: &str) -> Outcome {
    for (width, height) in [(390, 844), (1280, 900)] {
        browser.window(width, height).await?;
        browser.open(address).await?;
        browser
            .run(
                "window.shift = 0;
                 new PerformanceObserver((list) => { for (const e of list.getEntries()) shift += e.value; })
                   .observe({ type: 'layout-shift', buffered: true });",
            )
            .await?;
        let_go(browser).await?;
        tokio::time::sleep(Duration::from_millis(300)).await;
        // The foot may say meanwhile that all is saved on this device.
        let shift = browser.run("return shift;").await?;
        assert!(
            shift.as_f64().is_some_and(|sum| sum < 0.002),
            "at {width}: {shift}"
        );
    }
    Ok(())
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn what_is_typed_before_the_module_is_there_stays_and_nothing_moves() {
    let server = Server::of(&held_back("early"), 0);
    in_browser(async move |browser| {
        nothing_moves(&browser, &server.address).await?;
        browser.open(&server.address).await?;
        let there = browser
            .run(&format!(
                "window.field = {ROOT}.querySelector('#f-find');
                 return [Boolean(window.letGo), field.getBoundingClientRect().height > 40, {ROOT}.querySelectorAll('[data-built]').length];"
            ))
            .await?;
        assert_eq!(there, json!([true, true, 1]), "the form, and no module");
        browser
            .type_into("[name='stems[0].diameter']", "14 1/2")
            .await?;
        browser.press("option[value='in around']").await?;
        browser.type_into("#f-town", "Wisconsin").await?;
        browser
            .press("input[name=line_within_reach][value=no]")
            .await?;
        browser.type_into("#f-find", "norwy").await?;
        browser.run("field.setSelectionRange(4, 4);").await?;
        let_go(&browser).await?;
        let kept = format!(
            "const root = {ROOT}; const value = (css) => root.querySelector(css).value;
             return [value('[name=\"stems[0].diameter\"]'), value('[name=\"stems.as\"]'), value('#f-town'), value('#f-find'),
               root.querySelector('[name=line_within_reach]:checked')?.value, value('#f-day').startsWith('Today, '),
               root.querySelector('#f-find') === field, root.activeElement === field, field.selectionStart,
               root.querySelectorAll('[data-built], link, .soon').length];"
        );
        assert_eq!(
            browser.run(&kept).await?,
            json!([
                "14 1/2",
                "in around",
                "Wisconsin",
                "norwy",
                "no",
                true,
                true,
                true,
                4,
                0
            ])
        );
        // Typing goes on where it was: the module follows now.
        browser.keys(&['a']).await?;
        let follows = format!(
            "return [{ROOT}.querySelector('#f-find').value, {ROOT}.querySelector(\"#l-species input\").value, {ROOT}.querySelector('#f-region').value,
               {ROOT}.querySelector('#f-stems-0-diameter-r').textContent];"
        );
        let follows = browser.run(&follows).await?;
        assert_eq!(follows[0], "norway");
        assert_eq!(follows[1], "Norway maple");
        assert_eq!(follows[2], "US-WI");
        assert!(
            follows[3]
                .as_str()
                .is_some_and(|said| said.contains("across")),
            "{follows}"
        );

        // Nothing was kept that nobody asked to keep. What is typed before the module stays.
        browser.open(&server.address).await?;
        browser
            .type_into("[name='stems[0].diameter']", "20")
            .await?;
        let_go(&browser).await?;
        let seen = format!(
            "return [{ROOT}.querySelector('#f-find').value, {ROOT}.querySelector(\"[name='stems[0].diameter']\").value, {ROOT}.activeElement?.name];"
        );
        assert_eq!(
            browser.run(&seen).await?,
            json!(["", "20", "stems[0].diameter"])
        );

        // A press is kept too, and said.
        browser.open(&server.address).await?;
        a_press_is_kept(&browser).await?;
        browser.expect_quiet().await
    });
}

/// A page for frames has its form too, where its address gives the calculator nothing to begin with.
#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_frame_has_its_form_before_the_module_unless_its_address_says_what_it_begins_with() {
    let server = Server::of(&held_back("early-frame"), 0);
    in_browser(async move |browser| {
        for language in ["", "es/"] {
            let address = format!("{}{language}embed/tree-plan/", server.address);
            nothing_moves(&browser, &address).await?;
            browser
                .open(&format!("{address}?id=one&theme=dark"))
                .await?;
            a_press_is_kept(&browser).await?;

            browser
                .open(&format!("{address}?size=14&units=metric"))
                .await?;
            let bare = format!("return {ROOT}.childElementCount;");
            assert_eq!(
                browser.run(&bare).await?,
                0,
                "no form that begins otherwise"
            );
            let_go(&browser).await?;
            let begins =
                format!("return {ROOT}.querySelector(\"[name='stems[0].diameter']\").value;");
            assert_eq!(browser.run(&begins).await?, "14");
        }
        browser.expect_quiet().await
    });
}

/// Where the module never comes the page says so, what was typed stays, and what weighs can be read.
#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn without_its_module_the_form_keeps_what_was_typed_and_the_page_says_so() {
    let folder = site::copy("never");
    for file in std::fs::read_dir(folder.join("assets")).expect("it is built") {
        let file = file.expect("a file").path();
        if file.extension().is_some_and(|end| end == "wasm") {
            std::fs::write(&file, b"no module").expect("the copy takes it");
        }
    }
    let server = Server::of(&folder, 0);
    in_browser(async move |browser| {
        browser.open(&server.address).await?;
        browser
            .until(
                "the page says so",
                "!document.getElementById('failed').hidden",
            )
            .await?;
        browser
            .type_into("[name='stems[0].diameter']", "14")
            .await?;
        let seen = format!(
            "const shown = (element) => element.getBoundingClientRect().height > 0;
             return [shown(document.getElementById('failed')), shown(document.querySelector('.waiting')), {ROOT}.querySelector(\"[name='stems[0].diameter']\").value];"
        );
        assert_eq!(browser.run(&seen).await?, json!([true, true, "14"]));
        Ok(())
    });
}

/// How often the page asked for its module, whether ahead, and whether that was before the script that wants it was there.
const ASKED: &str = "const of = (name) => performance.getEntriesByType('resource').filter((it) => it.name.includes(name));
     const [module] = of('.wasm'), [script] = of('/element.');
     return [of('.wasm').length, document.querySelectorAll('link[rel=preload]').length === 1, module.startTime < script.responseEnd];";

/// Opens each page and sees how its module was asked for.
async fn asked_for(browser: &Browser, pages: &[String], expected: Value) -> Outcome {
    for page in pages {
        browser.open(page).await?;
        browser.until_ready().await?;
        assert_eq!(browser.run(ASKED).await?, expected, "{page}");
    }
    Ok(())
}

/// Over a slow line the module is asked for ahead of its script; over a fast one the first paint has the line to itself.
/// Either way it is fetched once.
#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn the_module_is_asked_for_ahead_where_the_page_took_long_to_come_and_only_there() {
    let server = Server::of_the_site();
    in_browser(async move |browser| {
        let pages = ["", "es/", "embed/tree-plan/", "embed/ring/"];
        let pages = pages.map(|page| format!("{}{page}", server.address));
        let slow = json!({ "offline": false, "latency": 300, "downloadThroughput": 200_000, "uploadThroughput": 93_750 });
        browser.devtools("Network.enable", json!({})).await?;
        // Every visit is a first one.
        for (name, of) in [
            ("Network.setCacheDisabled", json!({ "cacheDisabled": true })),
            ("Network.setBypassServiceWorker", json!({ "bypass": true })),
        ] {
            browser.devtools(name, of).await?;
        }
        browser
            .devtools("Network.emulateNetworkConditions", slow)
            .await?;
        asked_for(&browser, &pages, json!([1, true, true])).await?;
        // However busy this machine is: a page that came at once.
        let fast = json!({ "offline": false, "latency": 0, "downloadThroughput": -1, "uploadThroughput": -1 });
        browser
            .devtools("Network.emulateNetworkConditions", fast)
            .await?;
        let at_once = json!({ "source": "performance.now = () => 1;" });
        browser
            .devtools("Page.addScriptToEvaluateOnNewDocument", at_once)
            .await?;
        asked_for(&browser, &pages, json!([1, false, false])).await?;
        browser.expect_quiet().await
    });
}
