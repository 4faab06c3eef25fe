//! The ways onto another page, each as the page "Put it on your site" writes
//! it: what it costs, what it keeps, and that nobody else can speak for it.

use crate::Outcome;
use crate::browser::{Browser, in_browser};
use crate::embed::host;
use crate::rules::expect_no_violations;
use crate::site::{Server, built, folder};
use serde_json::{Value, json};

/// The lines of a form as the page "Put it on your site" shows them, for a site.
pub(crate) fn snippet(site: &Server, form: &str) -> String {
    let page = std::fs::read_to_string(built().join("embed/index.html")).expect("it is built");
    let begins = format!("<code data-snippet=\"{form}\">");
    let (_, rest) = page.split_once(&begins).expect("the page shows it");
    let (shown, _) = rest.split_once("</code>").expect("an end");
    let text = shown
        .replace("<span data-origin></span>", site.origin())
        .replace("<br>", "");
    let text = text.replace("&lt;", "<").replace("&gt;", ">");
    text.replace("&quot;", "\"").replace("&amp;", "&")
}

/// Each rung's name and its lines for a site.
pub(crate) fn rungs(site: &Server) -> [(&'static str, String); 5] {
    let framed = format!("{}\n{}", snippet(site, "frame"), snippet(site, "height"));
    [
        ("element", snippet(site, "element")),
        ("script", snippet(site, "script")),
        ("div", snippet(site, "div")),
        ("frame", framed),
        ("link", snippet(site, "link")),
    ]
}

/// What the page and its frame hold on the device: all of it should be nothing.
async fn expect_nothing_kept(browser: &Browser, what: &str) -> Outcome {
    let kept = browser
        .run_until_done(
            "(async () => [localStorage.length, sessionStorage.length, document.cookie, (await indexedDB.databases()).length,
               (await caches.keys()).length, (await navigator.serviceWorker.getRegistrations()).length])().then(done, (error) => done(String(error)));",
        )
        .await?;
    assert_eq!(kept, json!([0, 0, "", 0, 0, 0]), "{what}");
    Ok(())
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn every_rung_answers_breaks_no_rule_and_keeps_nothing() {
    let site = Server::of_the_site();
    let hosts = rungs(&site).map(|(name, lines)| (name, host(&format!("rung-{name}"), "", &lines)));
    in_browser(async move |browser| {
        for (name, host) in &hosts {
            browser.open(&host.address).await?;
            if *name == "link" {
                expect_no_violations(&browser, name).await?;
                continue;
            }
            if *name == "frame" {
                let frame = browser.client.find(fantoccini::Locator::Css("iframe"));
                frame.await?.enter_frame().await?;
            }
            browser.until_ready().await?;
            browser.fill_in_a_tree().await?;
            browser.show_the_answer().await?;
            assert_eq!(browser.outcome().await?, "do", "{name}");
            expect_nothing_kept(&browser, name).await?;
            browser.client.enter_parent_frame().await?;
            expect_nothing_kept(&browser, name).await?;
            // Before the checker, which speaks to frames and complains that they don't answer.
            browser.expect_quiet().await?;
            expect_no_violations(&browser, name).await?;
            browser.console().await?;
            browser
                .expect_requests_only_to(&[&host.address, &site.address, "data:"])
                .await?;
        }
        Ok(())
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_frame_takes_its_own_height_and_no_other_frame_can_give_it_one() {
    let snippet = std::fs::metadata(built().join("v1/frame-height.js")).expect("it is built");
    assert!(
        snippet.len() <= 1000,
        "the snippet has {} bytes",
        snippet.len()
    );
    let site = Server::of_the_site();
    // A page of a third origin that speaks as the calculator would, to whoever holds it and to the frame beside it.
    let stranger = folder("stranger");
    let lies = "<!doctype html><title>x</title><script>
        const lie = () => { for (const to of [parent, ...Array.from(parent, (_, i) => parent[i])])
          to.postMessage({ slipbark: 1, type: 'height', id: '', h: 7777 }, '*'); };
        setInterval(lie, 20);</script>";
    std::fs::write(stranger.join("index.html"), lies).expect("the page can be written");
    let stranger = Server::of(&stranger, 0);
    let (_, lines) = &rungs(&site)[3];
    let body = format!(
        "{lines}<iframe src=\"{}\" title=\"Another\" width=\"300\" height=\"200\"></iframe>",
        stranger.address
    );
    // Counts what the stranger says, and says it itself too, as a script of the page could.
    let head = "<script>window.lies = 0; addEventListener('message', ({ data }) => { lies += data.h === 7777; });
        setInterval(() => postMessage({ slipbark: 1, type: 'height', id: '', h: 7777 }, '*'), 20);</script>";
    let host = host("spoofed", head, &body);
    in_browser(async move |browser| {
        browser.open(&host.address).await?;
        browser.until("many lies", "lies > 50").await?;
        browser
            .until(
                "a height of its own",
                "document.querySelector('iframe').style.height",
            )
            .await?;
        let heights =
            "return [...document.querySelectorAll('iframe')].map((frame) => frame.offsetHeight);";
        let before = browser.run(heights).await?;
        assert!(
            before[0].as_u64().is_some_and(|h| (320..7777).contains(&h)),
            "{before}"
        );
        assert!(before[1].as_u64().is_some_and(|h| h < 210), "{before}");
        // It grows with what it shows, and nothing in it scrolls.
        let frame = browser.client.find(fantoccini::Locator::Css("iframe"));
        frame.await?.enter_frame().await?;
        browser.until_ready().await?;
        browser.fill_in_a_tree().await?;
        browser.show_the_answer().await?;
        browser
            .until(
                "a frame as tall as its page",
                "Math.abs(innerHeight - document.body.getBoundingClientRect().height) < 6",
            )
            .await?;
        browser.client.enter_parent_frame().await?;
        let after = browser.run(heights).await?;
        assert!(after[0].as_u64() > before[0].as_u64(), "{before} {after}");
        Ok(())
    });
}

/// Opens a page on a slow processor and gives what shifted in it, when its largest thing was drawn, when the
/// calculator was ready, and when the largest thing of the page itself was drawn.
pub(crate) async fn vitals(
    browser: &Browser,
    address: &str,
) -> Result<Value, fantoccini::error::CmdError> {
    let slow = json!({ "rate": 4 });
    browser
        .devtools("Emulation.setCPUThrottlingRate", slow)
        .await?;
    // Slow 4G as WebPageTest and Lighthouse put it, from memory: 1.6 Mbit/s and 150 ms.
    let net = json!({ "offline": false, "latency": 150, "downloadThroughput": 200_000, "uploadThroughput": 93_750 });
    browser.devtools("Network.enable", json!({})).await?;
    browser
        .devtools("Network.emulateNetworkConditions", net)
        .await?;
    browser
        .devtools("Network.setCacheDisabled", json!({ "cacheDisabled": true }))
        .await?;
    browser.client.goto(address).await?;
    browser
        .run_until_done(
            "let shift = 0, largest = 0, ready = 0, own = 0;
             new PerformanceObserver((list) => { for (const e of list.getEntries()) if (!e.hadRecentInput) shift += e.value; }).observe({ type: 'layout-shift', buffered: true });
             new PerformanceObserver((list) => { // What stands in a shadow tree has no element here: the rest is the page's own.
               for (const e of list.getEntries()) { largest = e.startTime; if (e.element) own = e.startTime; } }).observe({ type: 'largest-contentful-paint', buffered: true });
             const calculator = document.querySelector('slipbark-tree-plan, [data-slipbark]');
             const frame = document.querySelector('iframe');
             const end = () => setTimeout(() => done([shift, largest, ready, own]), 1500);
             if (frame) new MutationObserver(() => { ready ||= performance.now(); end(); }).observe(frame, { attributeFilter: ['style'] });
             else if (!calculator) end();
             else customElements.whenDefined('slipbark-tree-plan').then(() => document.querySelector('slipbark-tree-plan').ready)
               .then(() => { ready = performance.now(); end(); }, (error) => done(String(error)));",
        )
        .await
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn the_page_around_it_does_not_jump_as_it_comes() {
    let site = Server::of_the_site();
    let text = "<p>We plant and we fell, and some trees we leave standing. A paragraph of a host page, invented.</p>".repeat(4);
    let with = |name: &str, lines: &str| {
        host(
            &format!("vitals-{name}"),
            "",
            &format!("{text}{lines}{text}"),
        )
    };
    let mut hosts = vec![("alone", with("alone", ""))];
    for (name, lines) in rungs(&site) {
        hosts.push((name, with(name, &lines)));
    }
    in_browser(async move |browser| {
        for (name, host) in &hosts {
            for (width, height) in [(360, 740), (1280, 900)] {
                browser.window(width, height).await?;
                let seen = vitals(&browser, &host.address).await?;
                println!(
                    "{name} at {width}: shift, largest paint, ready, own largest paint (ms) {seen}"
                );
                // The embed's own limit, a tenth of what is called good in general.
                assert!(
                    seen[0].as_f64().is_some_and(|sum| sum <= 0.01),
                    "{name} at {width}: {seen}"
                );
            }
        }
        Ok(())
    });
}
