//! The automatic accessibility rules of axe-core (MPL-2.0, from the npm
//! registry), put into each page by the driver: no page's policy is loosened.

use crate::Outcome;
use crate::browser::{Browser, in_browser};
use crate::site::{Server, pages, scratch};
use std::process::Command;
use std::sync::OnceLock;

const AXE: &str = "axe-core@4.14.1";

/// The checker's source, fetched once into the target folder.
fn axe() -> &'static str {
    static AXE_SOURCE: OnceLock<String> = OnceLock::new();
    AXE_SOURCE.get_or_init(|| {
        let folder = scratch().join("npm");
        let file = folder.join("node_modules/axe-core/axe.min.js");
        if !file.is_file() {
            std::fs::create_dir_all(&folder).expect("the target folder can be written");
            let status = Command::new("npm")
                .args([
                    "install",
                    "--no-save",
                    "--no-audit",
                    "--no-fund",
                    "--ignore-scripts",
                    "--prefix",
                ])
                .arg(&folder)
                .arg(AXE)
                .status()
                .expect("npm could not be started: install it (Debian: npm)");
            assert!(status.success(), "npm could not fetch {AXE}");
        }
        std::fs::read_to_string(&file).expect("the package has axe.min.js")
    })
}

/// Fails when the checker finds anything in the page as it is.
pub(crate) async fn expect_no_violations(browser: &Browser, what: &str) -> Outcome {
    expect(browser, what, "{ resultTypes: ['violations'] }").await
}

/// The same by the rule of contrast alone, the one that other colours can break.
pub(crate) async fn expect_contrast(browser: &Browser, what: &str) -> Outcome {
    expect(
        browser,
        what,
        "{ resultTypes: ['violations'], runOnly: ['color-contrast'] }",
    )
    .await
}

async fn expect(browser: &Browser, what: &str, options: &str) -> Outcome {
    if browser.run("return typeof axe;").await? == "undefined" {
        browser.run(axe()).await?;
    }
    let found = browser
        .run_until_done(&format!(
            "axe.run(document, {options}).then((found) => done(found.violations.map((rule) =>
               [rule.id, rule.help, rule.nodes.slice(0, 5).map((node) => [node.target, node.failureSummary])])), (error) => done(String(error)));"
        ))
        .await?;
    let none = found.as_array().is_some_and(Vec::is_empty);
    assert!(none, "{what}: {}", serde_json::to_string_pretty(&found)?);
    Ok(())
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn no_page_breaks_an_accessibility_rule_in_any_colours() {
    let server = Server::of_the_site();
    in_browser(async move |browser| {
        for page in pages() {
            browser
                .open_page(&format!("{}{page}", server.address))
                .await?;
            for theme in ["light", "dark", "sun"] {
                browser
                    .run(&format!(
                        "document.documentElement.dataset.theme = '{theme}';"
                    ))
                    .await?;
                let what = format!("/{page} in {theme}");
                match theme {
                    "light" => expect_no_violations(&browser, &what).await?,
                    _ => expect_contrast(&browser, &what).await?,
                }
            }
        }
        Ok(())
    });
}
