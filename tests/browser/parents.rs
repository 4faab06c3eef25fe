//! Parents that are as wide as what they hold: the calculator has a width of its own in each, in Chromium and Firefox.

use crate::Outcome;
use crate::browser::{Browser, in_browser, in_firefox};
use crate::hosts::element;
use crate::site::{Server, folder};
use serde_json::Value;

/// A parent's name, what stands before and behind the calculator, and whether it has the room of its line to itself.
const PARENTS: [(&str, &str, &str, bool); 15] = [
    ("a block", "<div>", "</div>", true),
    (
        "a row",
        "<div style='display:flex;gap:8px'><p>Beside.</p>",
        "</div>",
        true,
    ),
    (
        "a row that centres",
        "<div style='display:flex;justify-content:center;align-items:center'>",
        "</div>",
        true,
    ),
    (
        "a row that wraps",
        "<div style='display:flex;flex-wrap:wrap;gap:8px'><p>Beside.</p>",
        "</div>",
        true,
    ),
    (
        "a centred column",
        "<div style='display:flex;flex-direction:column;align-items:center'>",
        "</div>",
        true,
    ),
    (
        "a grid that centres",
        "<div style='display:grid;place-items:center'>",
        "</div>",
        true,
    ),
    (
        "an inline grid",
        "<div style='display:inline-grid'>",
        "</div>",
        false,
    ),
    ("a float", "<div style='float:left'>", "</div>", false),
    (
        "a table cell",
        "<table><tr><td>Cell</td><td>",
        "</td></tr></table>",
        false,
    ),
    (
        "a dialog",
        "<dialog open style='position:static'>",
        "</dialog>",
        false,
    ),
    (
        "an inline block",
        "<div style='display:inline-block'>",
        "</div>",
        false,
    ),
    (
        "as wide as it fits",
        "<div style='width:fit-content'>",
        "</div>",
        false,
    ),
    (
        "taken out of the flow",
        "<div style='position:absolute'>",
        "</div>",
        false,
    ),
    // As WordPress writes its blocks Row and Stack, with the rules that its style sheet has for them.
    (
        "a WordPress Row",
        "<div class='wp-block-group is-content-justification-center is-nowrap is-layout-flex wp-block-group-is-layout-flex'><p>Beside.</p>",
        "</div>",
        true,
    ),
    (
        "a WordPress Stack",
        "<div class='wp-block-group is-vertical is-layout-flex wp-block-group-is-layout-flex' style='flex-direction:column;align-items:flex-start'>",
        "</div>",
        true,
    ),
];

const WORDPRESS: &str = "<style>body .is-layout-flex { display: flex } .is-layout-flex { flex-wrap: wrap; align-items: center; gap: 8px }
    .is-nowrap { flex-wrap: nowrap } .is-content-justification-center { justify-content: center } .is-layout-flex > :is(*, div) { margin: 0 }</style>";

/// A page for each parent, with the element and with the div that stands in for it.
fn pages(site: &Server, folder_name: &str) -> Server {
    let folder = folder(folder_name);
    let script = format!(
        "<script src=\"{}v1/embed.js\" defer></script>",
        site.address
    );
    let forms = [
        element(site).replace(&script, ""),
        "<div data-slipbark='tree-plan'></div>".to_owned(),
    ];
    assert!(!forms[0].contains("<script"), "{}", forms[0]);
    for (form, tag) in forms.iter().enumerate() {
        for (at, (_, before, behind, _)) in PARENTS.iter().enumerate() {
            let page = format!(
                "<!doctype html><html lang=\"en\"><meta charset=\"utf-8\"><title>A parent</title>\
                 <link rel=\"icon\" href=\"data:,\">{WORDPRESS}{script}<body>{before}{tag}{behind}</body></html>"
            );
            std::fs::write(folder.join(format!("{form}-{at}.html")), page).expect("a page");
        }
    }
    let index = "<!doctype html><html lang=\"en\"><meta charset=\"utf-8\"><title>Parents</title>\
         <link rel=\"icon\" href=\"data:,\"><iframe title=\"A parent\" height=\"900\" style=\"border:0\"></iframe></html>";
    std::fs::write(folder.join("index.html"), index).expect("a page");
    Server::of(&folder, 0)
}

/// Looks at every page at both widths, each in a frame that is so wide: Firefox has no narrower window.
async fn expect_a_width_in_every_parent(browser: &Browser, host: &Server) -> Outcome {
    browser.open(&host.address).await?;
    for form in 0..2 {
        for (at, (name, _, _, roomy)) in PARENTS.iter().enumerate() {
            let look = format!(
                "(async () => {{
                   const frame = document.querySelector('iframe');
                   frame.width = 360;
                   await new Promise((loaded) => {{ frame.onload = loaded; frame.src = '{form}-{at}.html'; }});
                   const inner = frame.contentWindow;
                   await inner.customElements.whenDefined('slipbark-tree-plan');
                   const calculator = inner.document.querySelector('slipbark-tree-plan');
                   await calculator.ready;
                   const seen = [];
                   for (const width of [360, 1280]) {{
                     frame.width = width;
                     const body = calculator.shadowRoot.querySelector('.sb');
                     const root = inner.document.documentElement;
                     seen.push([inner.innerWidth, calculator.getBoundingClientRect().width, body.getBoundingClientRect().width, root.scrollWidth - root.clientWidth]);
                   }}
                   return seen;
                 }})().then(done, (error) => done(String(error)));"
            );
            let seen = browser.run_until_done(&look).await?;
            let number = |width: usize, at: usize| seen[width][at].as_f64().unwrap_or(-1.0);
            for (width, asked) in [360.0, 1280.0].into_iter().enumerate() {
                let told = |value: &Value| format!("{name}, form {form}, at {asked}: {value}");
                assert!((number(width, 0) - asked).abs() < 0.5, "{}", told(&seen));
                // 18 em of 16 pixels, or three quarters of a phone.
                let least = (0.75 * asked).min(288.0) - 0.5;
                assert!(number(width, 1) >= least, "{}", told(&seen));
                assert!(number(width, 2) >= least, "{}", told(&seen));
                assert!(number(width, 3) <= 0.0, "{}", told(&seen));
                if *roomy && asked > 1000.0 {
                    assert!(number(width, 1) > 1000.0, "{}", told(&seen));
                }
            }
        }
    }
    Ok(())
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn parents_that_shrink_to_what_they_hold_give_it_a_width() {
    let site = Server::of_the_site();
    let host = pages(&site, "parents");
    in_browser(async move |browser| {
        browser.window(1300, 1000).await?;
        expect_a_width_in_every_parent(&browser, &host).await
    });
}

#[test]
#[ignore = "needs Firefox and geckodriver; tests/all runs it where both are found"]
fn firefox_gives_it_a_width_in_parents_that_shrink_to_what_they_hold() {
    let site = Server::of_the_site();
    let host = pages(&site, "firefox-parents");
    in_firefox(async move |browser| expect_a_width_in_every_parent(&browser, &host).await);
}
