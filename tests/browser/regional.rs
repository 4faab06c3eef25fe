//! What differs by country comes in a file of its own: names of trees that are not on the list, who decides.

use crate::browser::in_browser;
use crate::site::Server;

const ROOT: &str = "document.querySelector('slipbark-tree-plan').shadowRoot";

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_name_that_is_not_on_the_list_is_told_once_its_file_is_here_and_no_look_alike_is_offered() {
    let server = Server::of_the_site();
    in_browser(async move |browser| {
        browser.open(&server.address).await?;
        browser.until_ready().await?;
        let fetched = "performance.getEntriesByType('resource').filter((entry) => entry.name.includes('regional.')).length";
        assert_eq!(browser.run(&format!("return {fetched};")).await?, 0);
        browser.type_into("#f-find", "sugar maple").await?;
        let told = format!("{ROOT}.textContent.includes('Sugar maple is not on this list.')");
        browser.until("what is told of it", &told).await?;
        let offered = format!(
            "return [...{ROOT}.querySelectorAll('input[name=species]')].map((input) => input.value);"
        );
        let offered = browser.run(&offered).await?;
        let offered = offered.as_array().expect("a list");
        assert!(
            offered
                .iter()
                .any(|name| name == "unknown broadleaf (sugar maple)"),
            "{offered:?}"
        );
        assert!(
            !offered.iter().any(|name| name == "Norway maple"),
            "{offered:?}"
        );
        assert_eq!(browser.run(&format!("return {fetched};")).await?, 1);
        browser.expect_quiet().await?;
        browser.expect_requests_only_to(&[&server.address]).await
    });
}
