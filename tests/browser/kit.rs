//! What people take home: the kit for their own server, and the single file.

use crate::browser::in_browser;
use crate::site::{Server, built, folder};
use fantoccini::key::Key;
use std::path::Path;
use std::process::Command;

/// Runs a tool in a folder; Debian has both tools that are used here.
fn run(folder: &Path, program: &str, arguments: &[&str]) {
    let status = Command::new(program)
        .current_dir(folder)
        .args(arguments)
        .status()
        .unwrap_or_else(|error| panic!("{program} could not be started, install it: {error}"));
    assert!(status.success(), "{program} {arguments:?} failed");
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn the_kit_unpacks_to_its_sums_and_serves_an_answer() {
    let unpacked = folder("kit");
    let zip = built().join("slipbark-kit.zip");
    run(&unpacked, "unzip", &["-q", &zip.to_string_lossy()]);
    run(
        &unpacked,
        "sha256sum",
        &["--check", "--quiet", "SHA256SUMS"],
    );
    for name in [
        "README.txt",
        "nginx.conf",
        "LICENSE-MIT",
        "site/_headers",
        "site/.htaccess",
    ] {
        assert!(unpacked.join(name).is_file(), "{name} is in the kit");
    }
    let server = Server::of(&unpacked.join("site"), 0);
    in_browser(async move |browser| {
        browser.open_a_plan(&server.address).await?;
        assert_eq!(browser.outcome().await?, "do");
        browser.expect_quiet().await?;
        browser.expect_requests_only_to(&[&server.address]).await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn the_single_file_answers_from_a_disk_and_asks_nobody() {
    // A folder of its own: nothing lies beside it that it could load.
    let stick = folder("stick");
    let file = stick.join("slipbark-single.html");
    std::fs::copy(built().join("slipbark-single.html"), &file).expect("the single file is built");
    let address = format!("file://{}", file.display());
    in_browser(async move |browser| {
        browser.open_a_plan(&address).await?;
        assert_eq!(browser.outcome().await?, "do");
        // Boston, by its own point: the climate is in the file.
        browser
            .run("document.querySelector('slipbark-tree-plan').shadowRoot.querySelectorAll('form details').forEach((fold) => { fold.open = true; });")
            .await?;
        browser
            .type_into("[name='place.latitude']", "42.36")
            .await?;
        browser
            .type_into("[name='place.longitude']", "-71.06")
            .await?;
        browser.keys(&[Key::Tab.into()]).await?;
        browser
            .until(
                "an answer from the climate there",
                "document.querySelector('slipbark-tree-plan').result?.asked_probability != null",
            )
            .await?;
        crate::rules::expect_no_violations(&browser, "the single file").await?;
        crate::narrow::expect_no_sideways_scroll(&browser, "the single file").await?;
        browser.expect_quiet().await?;
        // Data and blobs are of the page itself.
        browser
            .expect_requests_only_to(&[&address, "data:", "blob:"])
            .await
    });
}
