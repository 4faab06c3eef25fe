//! The language of the page around it: its words are fetched once, and English stands where there are none.

use crate::browser::in_browser;
use crate::embed::host_with;
use crate::site::Server;

const ROOT: &str = "document.querySelector('slipbark-tree-plan').shadowRoot";
const FETCHED: &str = "performance.getEntriesByType('resource').filter((entry) => entry.name.includes('words-')).length";

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_page_in_spanish_is_answered_in_spanish_and_a_change_of_language_keeps_what_was_typed() {
    let site = Server::of_the_site();
    let line = format!(
        "<script src=\"{}v1/embed.js\" defer></script><slipbark-tree-plan></slipbark-tree-plan>",
        site.address
    );
    let host = host_with("spanish", "lang=\"es-MX\"", "", &line);
    in_browser(async move |browser| {
        browser.open(&host.address).await?;
        browser.until_ready().await?;
        let lang = format!("return {ROOT}.querySelector('.sb').lang;");
        assert_eq!(browser.run(&lang).await?, "es");
        assert_eq!(browser.run(&format!("return {FETCHED};")).await?, 1);
        browser.fill_in_a_tree().await?;
        browser.show_the_answer().await?;
        let answered = |words: &str| {
            format!("{ROOT}.querySelector('#answer').textContent.includes('{words}')")
        };
        browser
            .until("an answer in Spanish", &answered("Mantenga despejado"))
            .await?;
        let size = format!("return {ROOT}.querySelector('#f-stems-0-diameter').value;");
        let typed = browser.run(&size).await?;
        let change = "document.querySelector('slipbark-tree-plan').setAttribute('lang', 'en');";
        browser.run(change).await?;
        browser
            .until("the answer in English", &answered("Keep clear"))
            .await?;
        assert_eq!(browser.run(&lang).await?, "en");
        assert_eq!(browser.run(&size).await?, typed);
        let change = "document.querySelector('slipbark-tree-plan').setAttribute('lang', 'es');";
        browser.run(change).await?;
        browser
            .until(
                "the answer in Spanish again",
                &answered("Mantenga despejado"),
            )
            .await?;
        assert_eq!(browser.run(&format!("return {FETCHED};")).await?, 1);
        browser.expect_quiet().await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_page_in_a_language_without_words_is_answered_in_english_that_is_marked_so() {
    let site = Server::of_the_site();
    let line = format!(
        "<script src=\"{}v1/embed.js\" defer></script><slipbark-tree-plan></slipbark-tree-plan>",
        site.address
    );
    let host = host_with("german", "lang=\"de\"", "", &line);
    in_browser(async move |browser| {
        browser.open(&host.address).await?;
        browser.until_ready().await?;
        let lang = format!("return {ROOT}.querySelector('.sb').lang;");
        assert_eq!(browser.run(&lang).await?, "en");
        assert_eq!(browser.run(&format!("return {FETCHED};")).await?, 0);
        browser.expect_quiet().await
    });
}
