//! The long lists of the site, all trees and all sources: narrowed by what is typed, whole without script.

use crate::browser::{Browser, in_browser};
use crate::site::{Server, built};
use fantoccini::Locator;
use serde_json::{Value, json};

/// What stands in the list: the bold name of each line in sight.
const SHOWN: &str = "return [...document.querySelectorAll('main section li')].filter((line) => line.checkVisibility())
    .map((line) => line.querySelector('b').textContent);";

async fn shown_for(
    browser: &Browser,
    words: &str,
) -> Result<Vec<String>, Box<dyn std::error::Error + Send + Sync>> {
    let field = browser.client.find(Locator::Css("#find")).await?;
    field.clear().await?;
    field.send_keys(words).await?;
    let shown = browser.run(SHOWN).await?;
    let shown = shown.as_array().into_iter().flatten();
    Ok(shown.filter_map(Value::as_str).map(str::to_owned).collect())
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn trees_are_found_by_english_spanish_and_latin_names_and_by_what_a_ring_does() {
    let server = Server::of_the_site();
    in_browser(async move |browser| {
        browser.open(&format!("{}species/", server.address)).await?;
        browser
            .until(
                "the fields",
                "!document.querySelector('form.filter').hidden",
            )
            .await?;
        let all = browser.run(SHOWN).await?;
        let all = all.as_array().map_or(0, Vec::len);
        // The 80 species of the list and the three entries for a tree without a name.
        assert_eq!(all, 83);
        for words in ["norway map", "ACER PLATANOIDES", "arce noruego", "acpl"] {
            let shown = shown_for(&browser, words).await?;
            assert_eq!(shown, ["Norway maple"], "{words}");
        }
        // An accent may be left out, as on a keyboard without one; words in any order.
        let shown = shown_for(&browser, "arbol cielo").await?;
        assert_eq!(shown, ["Tree-of-heaven"]);
        let none = shown_for(&browser, "baobab").await?;
        assert_eq!(none, Vec::<String>::new());
        let told = "return document.querySelector('form.filter [role=status]').textContent;";
        assert_eq!(browser.run(told).await?, "0 of 83 shown.");
        shown_for(&browser, "palm").await?;
        let pick = browser
            .client
            .find(Locator::Css("#show option[value=not_applicable]"));
        pick.await?.click().await?;
        let palms = browser.run(SHOWN).await?;
        assert!(
            palms.as_array().is_some_and(|palms| !palms.is_empty()),
            "{palms}"
        );
        // A line opens to what the calculator says of three trunks.
        let open = "document.querySelector('main li:not([hidden]) summary').click();
             return document.querySelector('main li:not([hidden]) details').open
               && document.querySelectorAll('main li:not([hidden]) details[open] dd').length;";
        assert_eq!(browser.run(open).await?, 3);
        browser.expect_quiet().await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn sources_are_found_by_their_words_and_a_link_to_one_leads_to_it() {
    let server = Server::of_the_site();
    in_browser(async move |browser| {
        browser
            .open(&format!("{}sources/#M09", server.address))
            .await?;
        browser
            .until("the field", "!document.querySelector('form.filter').hidden")
            .await?;
        // Two ids of one paper: the link of either leads to its line.
        let line = "return document.getElementById('M09').closest('li').id;";
        assert_eq!(browser.run(line).await?, "B10");
        let shown = shown_for(&browser, "silva fennica").await?;
        assert!(!shown.is_empty() && shown.len() < 10, "{shown:?}");
        let links =
            "return [...document.querySelectorAll('#sources a[href]')].map((link) => link.href)
             .filter((link) => !/^https:\\/\\/doi\\.org\\/10\\./.test(link));";
        assert_eq!(browser.run(links).await?, json!([]));
        // No id of ours is read on the page: they are anchors alone.
        let ids = "const words = new Set(document.querySelector('#sources').textContent.split(/[^A-Za-z0-9]+/));
             return [...document.querySelectorAll('#sources [id]')].map((at) => at.id)
               .filter((id) => /^([A-Z]{1,2}\\d{2}|[A-Z]{4,}\\d{4})$/.test(id) && words.has(id));";
        assert_eq!(browser.run(ids).await?, json!([]));
        browser.expect_quiet().await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn without_script_the_lists_stand_whole_and_show_no_field_that_does_nothing() {
    for (page, least) in [("species", 83), ("sources", 600)] {
        let html = std::fs::read_to_string(built().join(page).join("index.html")).expect("a page");
        let form = html.split("<form class=\"filter\"").nth(1).expect("a form");
        let tag = form.split('>').next().unwrap_or_default();
        assert!(tag.ends_with(" hidden"), "{tag}");
        let lines = html
            .split("<section")
            .skip(1)
            .map(|section| section.matches("<li").count());
        let lines: usize = lines.sum();
        assert!(lines >= least, "{page}: {lines}");
        assert!(!html.contains("<li hidden"), "{page}");
    }
}
