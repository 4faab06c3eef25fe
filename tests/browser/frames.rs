//! Frames between different sites, which browsers keep apart more than two ports of one host: they take the place of what
//! can't start, and are as tall as what they show. And keys typed into a field, which stay in it.

use crate::Outcome;
use crate::browser::{Browser, in_browser, in_firefox};
use crate::embed::host;
use crate::hosts::element;
use crate::rungs::rungs;
use crate::site::Server;
use serde_json::json;

/// The same page by the machine's other name: to a browser another site than the calculator's.
fn elsewhere(host: &Server) -> String {
    host.address.replace("127.0.0.1", "localhost")
}

const SHOWN: &str = "(() => { const frame = document.querySelector('slipbark-tree-plan iframe');
     return frame && frame.offsetHeight >= 320 && frame.checkVisibility({ visibilityProperty: true })
       && document.querySelector('slipbark-tree-plan p').hidden; })()";

/// Policies under which the element can't start, and a frame may.
fn strict(site: &Server, test: &str) -> [(&'static str, Server); 2] {
    let origin = site.origin();
    [
        (
            "no WebAssembly",
            format!("script-src {origin}; connect-src {origin}; frame-src {origin}"),
        ),
        (
            "nothing is fetched",
            format!(
                "script-src {origin} 'wasm-unsafe-eval'; connect-src 'none'; frame-src {origin}"
            ),
        ),
    ]
    .map(|(name, policy)| {
        let head = format!("<meta http-equiv=\"Content-Security-Policy\" content=\"{policy}\">");
        let test = format!("{test}-{}", name.replace(' ', "-"));
        (name, host(&test, &head, &element(site)))
    })
}

async fn expect_a_frame_on_another_site(browser: &Browser, hosts: &[(&str, Server)]) -> Outcome {
    for (name, host) in hosts {
        browser.open(&elsewhere(host)).await?;
        browser.until(&format!("the frame; {name}"), SHOWN).await?;
    }
    Ok(())
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn what_can_t_start_on_another_site_steps_down_to_a_frame() {
    let site = Server::of_the_site();
    let hosts = strict(&site, "other-site");
    in_browser(async move |browser| expect_a_frame_on_another_site(&browser, &hosts).await);
}

#[test]
#[ignore = "needs Firefox and geckodriver; tests/all runs it where both are found"]
fn firefox_steps_down_to_a_frame_on_another_site() {
    let site = Server::of_the_site();
    let hosts = strict(&site, "firefox-other-site");
    in_firefox(async move |browser| expect_a_frame_on_another_site(&browser, &hosts).await);
}

/// Opens a narrow frame with an answer, all of it unfolded and something tall behind it, and expects it to show all.
async fn expect_no_cap(browser: &Browser, host: &Server) -> Outcome {
    browser.open(&elsewhere(host)).await?;
    browser
        .run("document.querySelector('iframe').width = 320;")
        .await?;
    let frame = browser.client.find(fantoccini::Locator::Css("iframe"));
    frame.await?.enter_frame().await?;
    browser.until_ready().await?;
    let height = browser
        .run("const calculator = document.getElementById('calculator');
              calculator.inputs = { version: 1, species: 'tree of heaven', stems: [{ diameter: '9 in' }, { diameter: '4 in' }], date: '2027-06-12', region: 'US-MA',
                targets: [{ kind: 'path', distance: '300 ft' }], line_within_reach: 'no' };
              calculator.compute();
              for (const it of calculator.shadowRoot.querySelectorAll('details')) it.open = true;
              const answer = document.body.getBoundingClientRect().height;
              // Whatever comes to stand in an answer one day.
              document.body.append(Object.assign(document.createElement('div'), { id: 'tall' }));
              document.getElementById('tall').style.height = '13000px';
              return answer;")
        .await?;
    println!("an answer unfolded, 320 pixels wide: {height} pixels");
    let fits = "Math.abs(innerHeight - document.body.getBoundingClientRect().height) < 6 && innerHeight > 13000";
    browser.until("a frame as tall as its page", fits).await?;
    browser.client.enter_parent_frame().await?;
    Ok(())
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_frame_is_as_tall_as_the_whole_answer() {
    let site = Server::of_the_site();
    let host = host("tall", "", &rungs(&site)[3].1);
    in_browser(async move |browser| expect_no_cap(&browser, &host).await);
}

#[test]
#[ignore = "needs Firefox and geckodriver; tests/all runs it where both are found"]
fn firefox_makes_a_frame_as_tall_as_the_whole_answer() {
    let site = Server::of_the_site();
    let host = host("firefox-tall", "", &rungs(&site)[3].1);
    in_firefox(async move |browser| expect_no_cap(&browser, &host).await);
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn what_is_typed_into_a_field_is_no_shortcut_of_the_page() {
    let site = Server::of_the_site();
    let head = "<script>window.heard = []; for (const name of ['keydown', 'keypress', 'keyup'])
        document.addEventListener(name, (event) => { heard.push(event.key); if (event.key === '/') event.preventDefault(); });</script>";
    let host = host("shortcuts", head, &element(&site));
    in_browser(async move |browser| {
        browser.open(&host.address).await?;
        browser.until_ready().await?;
        browser
            .type_into("[name='stems[0].diameter']", "14 1/2")
            .await?;
        let size = "return document.querySelector('slipbark-tree-plan').shadowRoot.querySelector(\"[name='stems[0].diameter']\").value;";
        assert_eq!(browser.run(size).await?, "14 1/2");
        assert_eq!(browser.run("return heard;").await?, json!([]));
        // What leaves the field or closes what it stands in is the page's too.
        browser
            .run("const root = document.querySelector('slipbark-tree-plan').shadowRoot;
                  const press = (css, key, more) => root.querySelector(css).dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, composed: true, ...more }));
                  press(\"[name='stems[0].diameter']\", 'Escape'); press(\"[name='stems[0].diameter']\", 'Tab');
                  press(\"[name='stems[0].diameter']\", 'k', { ctrlKey: true }); press('button[type=submit]', '?'); press('select', 'j');")
            .await?;
        assert_eq!(
            browser.run("return heard;").await?,
            json!(["Escape", "Tab", "k", "?"])
        );
        browser.expect_quiet().await
    });
}
