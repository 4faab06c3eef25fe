//! The key "Which tree is it?" in a browser: one step shows at a time, without a script, and fits a narrow phone.

use crate::browser::in_browser;
use crate::narrow::expect_no_sideways_scroll_at;
use crate::site::Server;

/// The ids of the steps that show.
const SHOWN: &str = "return [...document.querySelectorAll('.step')].filter((it) => it.checkVisibility()).map((it) => it.id);";

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn one_step_of_the_key_shows_at_a_time_and_its_answers_lead_on() {
    let server = Server::of_the_site();
    in_browser(async move |browser| {
        for home in ["", "es/"] {
            browser.window(390, 844).await?;
            browser
                .open_page(&format!("{}{home}key/opposite-pinnate/", server.address))
                .await?;
            let mut steps = 0;
            loop {
                let shown = browser.run(SHOWN).await?;
                let shown = shown.as_array().expect("ids");
                assert_eq!(shown.len(), 1, "{home}: {shown:?}");
                expect_no_sideways_scroll_at(&browser, "a step of the key", &[320, 390]).await?;
                let next = browser
                    .run("const link = [...document.querySelectorAll('.step .looks a')].find((it) => it.checkVisibility()); link?.click(); return link?.hash ?? '';")
                    .await?;
                let next = next.as_str().expect("a hash").trim_start_matches('#');
                if next.is_empty() {
                    break;
                }
                let at = browser.run("return location.hash.slice(1);").await?;
                assert_eq!(at.as_str(), Some(next), "{home}");
                steps += 1;
            }
            assert!(steps >= 2, "{home}: {steps} answers lead to an end");
            let trees = browser
                .run("return [...document.querySelectorAll('.cands > li')].filter((it) => it.checkVisibility()).length;")
                .await?;
            assert!(
                trees.as_u64().is_some_and(|count| count > 0),
                "{home}: {trees}"
            );
        }
        Ok(())
    });
}
