//! What people take home for their own server: the kit.

use crate::browser::in_browser;
use crate::site::{Server, built, folder};
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
        browser.open_an_answer(&server.address).await?;
        assert_eq!(browser.outcome().await?, "do");
        browser.expect_quiet().await?;
        browser.expect_requests_only_to(&[&server.address]).await
    });
}
