//! Pages of other people that mean no harm and do some: their styles, their
//! text direction, their policies, their page builders.

use crate::Outcome;
use crate::browser::{Browser, in_browser};
use crate::embed::{host, host_with};
use crate::rules::expect_no_violations;
use crate::site::{Server, copy};
use serde_json::{Value, json};

/// Rules as themes have them, and worse.
const THEME: &str = "<style>
  html { font-size: 62.5%; }
  * { box-sizing: content-box; letter-spacing: .2em; text-transform: uppercase; line-height: 3; text-align: justify; }
  body { font: italic 700 1.4rem/1 fantasy; text-indent: 3em; white-space: pre; color: #808080; word-spacing: 1em; }
  button, input, select, textarea, fieldset, legend, label, a, p, h1, h2, h3, ul, li, table, td, svg, details, summary {
    display: block !important; float: right !important; width: 500px !important; padding: 40px !important; margin: 30px !important;
    background: red !important; color: lime !important; border: 9px dotted blue !important; font-size: 40px !important; appearance: auto !important; }
  div, section, form { position: absolute; max-width: 30px; } [hidden] { display: block !important; }
</style>";

/// What is measured in the calculator: sizes and looks that a host must not change.
const LOOKS: &str = "
  const root = document.querySelector('slipbark-tree-plan').shadowRoot;
  const looks = (css, names) => {
    const element = root.querySelector(css);
    if (!element) return [css, 'is missing'];
    const style = getComputedStyle(element);
    return [css, ...names.map((name) => style[name])];
  };
  return [
    looks('.sb', ['fontSize', 'fontStyle', 'fontWeight', 'letterSpacing', 'wordSpacing', 'textTransform', 'textIndent', 'whiteSpace', 'direction', 'textAlign', 'color']),
    looks('button[type=submit]', ['display', 'boxSizing', 'float', 'backgroundColor', 'fontSize', 'textTransform', 'letterSpacing', 'paddingTop']),
    looks('input[type=text], input:not([type])', ['boxSizing', 'float', 'backgroundColor', 'color', 'fontSize', 'marginTop', 'height', 'letterSpacing']),
    looks('legend', ['fontSize', 'color', 'textTransform', 'marginTop']),
  ];";

pub(crate) fn element(site: &Server) -> String {
    format!(
        "<script src=\"{0}v1/embed.js\" defer></script>\
         <slipbark-tree-plan><p><a href=\"{0}\">Plan one tree</a></p></slipbark-tree-plan>",
        site.address
    )
}

/// Opens a host page and gives what its calculator looks like.
async fn looks(
    browser: &Browser,
    host: &Server,
) -> Result<Value, Box<dyn std::error::Error + Send + Sync>> {
    browser.open(&host.address).await?;
    browser.until_ready().await?;
    Ok(browser.run(LOOKS).await?)
}

/// A tree is asked about and answered, whatever stands around.
async fn expect_an_answer(browser: &Browser) -> Outcome {
    browser.fill_in_a_tree().await?;
    browser.show_the_answer().await?;
    assert_eq!(browser.outcome().await?, "do");
    Ok(())
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_theme_with_rules_for_everything_changes_nothing_in_it() {
    let site = Server::of_the_site();
    let plain = host("plain", "", &element(&site));
    let themed = host("themed", THEME, &element(&site));
    in_browser(async move |browser| {
        let expected = looks(&browser, &plain).await?;
        let seen = looks(&browser, &themed).await?;
        assert_eq!(seen, expected);
        expect_an_answer(&browser).await?;
        browser.expect_quiet().await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn rules_that_reset_all_leave_it_a_block_that_measures_itself() {
    let site = Server::of_the_site();
    let plain = host("plain-again", "", &element(&site));
    let all = ["revert", "unset", "initial"];
    let hosts = all.map(|value| {
        host(
            &format!("all-{value}"),
            &format!("<style>html {{ font-size: 62.5% }} body, body * {{ all: {value} }}</style>"),
            &element(&site),
        )
    });
    in_browser(async move |browser| {
        browser.width(360).await?;
        let width = "const sb = document.querySelector('slipbark-tree-plan').shadowRoot.querySelector('.sb');
             const rect = sb.getBoundingClientRect();
             const style = getComputedStyle(sb);
             return [style.display, style.containerType, rect.width > 300 && rect.right <= innerWidth];";
        let expected = looks(&browser, &plain).await?;
        for (value, host) in all.iter().zip(&hosts) {
            assert_eq!(looks(&browser, host).await?, expected, "all: {value}");
            assert_eq!(
                browser.run(width).await?,
                json!(["block", "inline-size", true]),
                "all: {value}"
            );
        }
        expect_an_answer(&browser).await?;
        browser.expect_quiet().await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn text_is_never_under_16_pixels_and_grows_with_the_readers_own() {
    let site = Server::of_the_site();
    let hosts = [10, 16, 24, 32].map(|root| {
        let page = host(
            &format!("root-{root}"),
            &format!("<style>html {{ font-size: {root}px }}</style>"),
            &element(&site),
        );
        (root, page)
    });
    in_browser(async move |browser| {
        for (root, page) in &hosts {
            browser.open(&page.address).await?;
            browser.until_ready().await?;
            let size = browser
                .run("return getComputedStyle(document.querySelector('slipbark-tree-plan').shadowRoot.querySelector('.sb')).fontSize;")
                .await?;
            assert_eq!(size, format!("{}px", root.max(&16)), "root {root}px");
        }
        // WCAG 2.2, 1.4.4: text at twice its size loses nothing.
        crate::narrow::expect_no_sideways_scroll(&browser, "a root of 32 pixels").await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_sidebar_of_280_pixels_and_a_page_from_right_to_left_hold_it() {
    let site = Server::of_the_site();
    let body = format!(
        "<div style=\"display:flex\"><div style=\"flex:1 1 0;min-width:0\">Text</div><aside style=\"width:280px;flex:none\">{}</aside></div>",
        element(&site)
    );
    let sidebar = host("sidebar", "", &body);
    let rtl = host_with("rtl", "lang=\"ar\" dir=\"rtl\"", "", &element(&site));
    in_browser(async move |browser| {
        let fits = "const host = document.querySelector('slipbark-tree-plan');
             const box = host.getBoundingClientRect();
             const out = [...host.shadowRoot.querySelectorAll('*')].filter((e) => {
               const r = e.getBoundingClientRect();
               // A slider is wider than its tape by half a mark on each side, so that thumb and drawing agree.
               if (r.width < 2 || e.closest('.tw') || e.closest('svg') || e.type === 'range') return false;
               return r.right > box.right + 1 || r.left < box.left - 1;
             });
             return [Math.round(box.width), out.slice(0, 5).map((e) => `${e.tagName}.${e.className}`)];";
        browser.open(&sidebar.address).await?;
        browser.until_ready().await?;
        expect_an_answer(&browser).await?;
        assert_eq!(browser.run(fits).await?, json!([280, []]), "the sidebar");
        expect_no_violations(&browser, "the sidebar").await?;
        browser.open(&rtl.address).await?;
        browser.until_ready().await?;
        // Its words are English: read from the left, whatever is around them.
        let direction = "return getComputedStyle(document.querySelector('slipbark-tree-plan').shadowRoot.querySelector('.sb')).direction;";
        assert_eq!(browser.run(direction).await?, "ltr");
        expect_an_answer(&browser).await?;
        assert_eq!(browser.run(fits).await?[1], json!([]), "right to left");
        browser.expect_quiet().await
    });
}

/// A head with a policy.
fn policy(text: &str) -> String {
    format!("<meta http-equiv=\"Content-Security-Policy\" content=\"{text}\">")
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn the_documented_policy_is_enough_also_with_trusted_types() {
    let site = Server::of_the_site();
    let head = policy(&format!(
        "default-src 'none'; script-src {0} 'wasm-unsafe-eval'; connect-src {0}; img-src data:; require-trusted-types-for 'script'; trusted-types 'none'",
        site.origin()
    ));
    let host = host("trusted-types", &head, &element(&site));
    in_browser(async move |browser| {
        browser.open(&host.address).await?;
        browser.until_ready().await?;
        expect_an_answer(&browser).await?;
        // Styles are there too: the policy allows no style element.
        let size = "return getComputedStyle(document.querySelector('slipbark-tree-plan').shadowRoot.querySelector('button[type=submit]')).minHeight;";
        assert_eq!(browser.run(size).await?, "56px");
        browser.expect_quiet().await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn where_webassembly_is_refused_a_frame_takes_its_place() {
    let site = Server::of_the_site();
    let head = policy(&format!(
        "script-src {0}; connect-src {0}; frame-src {0}; require-trusted-types-for 'script'",
        site.origin()
    ));
    let body = element(&site).replace(
        "<slipbark-tree-plan>",
        "<slipbark-tree-plan units=\"metric\">",
    );
    let host = host("step-down", &head, &body);
    in_browser(async move |browser| {
        browser.open(&host.address).await?;
        let shown = "(() => { const frame = document.querySelector('slipbark-tree-plan iframe');
             return frame && frame.offsetHeight >= 320 && frame.checkVisibility({ visibilityProperty: true }) && document.querySelector('slipbark-tree-plan p').hidden; })()";
        browser.until("the frame", shown).await?;
        let console = browser.console().await?;
        let ours: Vec<_> = console
            .iter()
            .filter(|line| line.contains("Slipbark:"))
            .collect();
        assert_eq!(ours.len(), 1, "{console:#?}");
        assert!(
            ours[0].contains("'wasm-unsafe-eval'") && ours[0].contains("frame-src"),
            "{ours:?}"
        );
        expect_no_violations(&browser, "stepped down to a frame").await?;
        browser
            .client
            .find(fantoccini::Locator::Css("iframe"))
            .await?
            .enter_frame()
            .await?;
        browser.until_ready().await?;
        let units = "return document.querySelector('slipbark-tree-plan').getAttribute('units');";
        assert_eq!(browser.run(units).await?, "metric");
        expect_an_answer(&browser).await?;
        let held = "return [localStorage.length, sessionStorage.length, document.cookie];";
        assert_eq!(browser.run(held).await?, json!([0, 0, ""]));
        Ok(())
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn where_frames_are_refused_too_the_link_stays() {
    let site = Server::of_the_site();
    let head = policy(&format!(
        "script-src {0}; connect-src {0}; frame-src 'none'",
        site.origin()
    ));
    let host = host("no-frame", &head, &element(&site));
    in_browser(async move |browser| {
        browser.open(&host.address).await?;
        browser
            .until("the attempt", "performance.getEntriesByType('resource').some((entry) => entry.name.includes('stepdown'))")
            .await?;
        let state = "(() => { const calculator = document.querySelector('slipbark-tree-plan');
             return !calculator.querySelector('iframe') && calculator.querySelector('a').offsetHeight > 0; })()";
        tokio::time::sleep(std::time::Duration::from_millis(500)).await;
        browser.until("the link alone", state).await?;
        expect_no_violations(&browser, "the link").await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn two_versions_on_one_page_say_so_and_the_first_works() {
    let site = Server::of_the_site();
    let folder = copy("second-version");
    let second = Server::of(&folder, 0);
    let body = format!(
        "{}<script src=\"{}v1/embed.js\" defer></script>",
        element(&site),
        second.address
    );
    let host = host("two-versions", "", &body);
    in_browser(async move |browser| {
        browser.open(&host.address).await?;
        browser.until_ready().await?;
        expect_an_answer(&browser).await?;
        let console = browser.console().await?;
        assert_eq!(console.len(), 1, "{console:#?}");
        assert!(
            console[0].contains(&site.address) && console[0].contains(&second.address),
            "{console:?}"
        );
        Ok(())
    });
}
