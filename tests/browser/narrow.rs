//! Widths: no page scrolls sideways (WCAG 2.2, 1.4.10 Reflow asks for 320 CSS
//! pixels; sidebars are narrower, so 280 is held too).

use crate::Outcome;
use crate::browser::{Browser, in_browser};
use crate::site::{Server, every_page, is_key_or_plates, pages};

/// Fails when the page as it is scrolls sideways at any of the widths.
pub(crate) async fn expect_no_sideways_scroll(browser: &Browser, what: &str) -> Outcome {
    expect_no_sideways_scroll_at(browser, what, &[280, 320, 360, 768, 1280]).await
}

/// The same at these widths.
pub(crate) async fn expect_no_sideways_scroll_at(
    browser: &Browser,
    what: &str,
    widths: &[u32],
) -> Outcome {
    for width in widths.iter().copied() {
        browser.width(width).await?;
        let script = "const root = document.documentElement;
             const wide = [];
             const look = (tree) => { for (const e of tree.querySelectorAll('*')) {
               if (e.getBoundingClientRect().right > root.clientWidth + 1) wide.push(e.tagName + '.' + e.getAttribute('class'));
               if (e.shadowRoot) look(e.shadowRoot);
             } };
             if (root.scrollWidth > root.clientWidth) look(document);
             return [innerWidth, root.clientWidth, root.scrollWidth, wide.slice(0, 8)];";
        let seen = browser.run(script).await?;
        assert_eq!(
            seen[0], width,
            "{what}: the page should be {width} wide: {seen}"
        );
        assert!(
            seen[2].as_u64() <= seen[1].as_u64(),
            "{what} scrolls sideways at {width}: {seen}"
        );
    }
    Ok(())
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn no_page_scrolls_sideways() {
    let server = Server::of_the_site();
    in_browser(async move |browser| {
        for page in pages() {
            browser
                .open_page(&format!("{}{page}", server.address))
                .await?;
            expect_no_sideways_scroll(&browser, &format!("/{page}")).await?;
        }
        Ok(())
    });
}

/// The list of all trees, each step of the key and all plates, with what is folded open.
#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn trees_key_and_plates_fit_320_pixels_unfolded() {
    let server = Server::of_the_site();
    in_browser(async move |browser| {
        let own = |page: &String| {
            let own = page.strip_prefix("es/").unwrap_or(page);
            own == "species/" || own == "key/" || is_key_or_plates(page)
        };
        let all: Vec<String> = every_page().into_iter().filter(own).collect();
        assert!(all.len() > 20, "{all:?}");
        for page in all {
            browser
                .open_page(&format!("{}{page}", server.address))
                .await?;
            browser
                .run("for (const fold of document.querySelectorAll('details')) fold.open = true;")
                .await?;
            expect_no_sideways_scroll_at(&browser, &format!("/{page}"), &[320]).await?;
        }
        Ok(())
    });
}

/// A drawing drops labels where it is narrow, and shrinks none: 12 CSS pixels is the least that is read.
#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn no_label_of_a_drawing_is_smaller_than_12_pixels() {
    let server = Server::of_the_site();
    in_browser(async move |browser| {
        browser.open(&server.address).await?;
        browser.until_ready().await?;
        for (date, distance) in [
            ("2027-06-12", "200"),
            ("2027-11-12", "200"),
            ("2027-06-12", "40"),
        ] {
            let ask = format!(
                "const calculator = document.querySelector('slipbark-tree-plan');
                 calculator.inputs = {{ version: 1, species: 'Norway maple', stems: [{{ diameter: '14 1/2' }}], date: '{date}',
                   targets: [{{ kind: 'path', distance: '{distance}' }}, {{ kind: 'fence', distance: '30' }}], line_within_reach: 'no' }};
                 calculator.compute();"
            );
            browser.run(&ask).await?;
            for width in [280, 320, 360, 768, 1280] {
                browser.width(width).await?;
                let script = "const root = document.querySelector('slipbark-tree-plan').shadowRoot; const small = []; let seen = 0;
                     // What is folded away is laid out only when it is opened.
                     for (const fold of root.querySelectorAll('details')) fold.open = true;
                     for (const text of root.querySelectorAll('svg text')) {
                       if (!text.getBoundingClientRect().width) continue;
                       const scale = text.getScreenCTM(); seen += 1;
                       const px = parseFloat(getComputedStyle(text).fontSize) * Math.hypot(scale.a, scale.b);
                       if (px < 12) small.push([text.textContent, px]);
                     }
                     return [seen, small];";
                let found = browser.run(script).await?;
                assert!(found[0].as_u64() > Some(10), "drawings are there: {found}");
                assert_eq!(found[1], serde_json::json!([]), "at {width}");
            }
        }
        Ok(())
    });
}
