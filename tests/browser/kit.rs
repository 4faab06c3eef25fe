//! What people take home for their own server: the kit.

use crate::browser::in_browser;
use crate::site::{Server, built, folder};
use std::path::{Path, PathBuf};
use std::process::Command;
use url::Url;

/// Runs a tool in a folder; Debian has both tools that are used here.
fn run(folder: &Path, program: &str, arguments: &[&str]) {
    let status = Command::new(program)
        .current_dir(folder)
        .args(arguments)
        .status()
        .unwrap_or_else(|error| panic!("{program} could not be started, install it: {error}"));
    assert!(status.success(), "{program} {arguments:?} failed");
}

/// The kit, unpacked into a folder of a test's own.
pub(crate) fn unpacked(test: &str) -> PathBuf {
    let unpacked = folder(test);
    let zip = built().join("slipbark-kit.zip");
    run(&unpacked, "unzip", &["-q", &zip.to_string_lossy()]);
    unpacked
}

/// Every page below a folder.
pub(crate) fn pages_in(folder: &Path, found: &mut Vec<PathBuf>) {
    for entry in std::fs::read_dir(folder).expect("a folder").flatten() {
        let path = entry.path();
        if path.is_dir() {
            pages_in(&path, found);
        } else if path.extension().is_some_and(|ending| ending == "html") {
            found.push(path);
        }
    }
}

#[test]
#[ignore = "needs the built site; tests/all runs it"]
fn every_address_in_the_kit_leads_to_a_file_of_it_wherever_it_lies() {
    let site = unpacked("kit-links").join("site");
    let mut pages = Vec::new();
    pages_in(&site, &mut pages);
    let mut count = 0;
    let top = Url::parse("https://example.org/some/folder/").expect("an address");
    for page in &pages {
        let text = std::fs::read_to_string(page).expect("a page");
        assert!(!text.contains("@@"), "{} is finished", page.display());
        let path = page.strip_prefix(&site).expect("inside");
        let here = top.join(&path.to_string_lossy()).expect("an address");
        for piece in text.split([' ', '<']).filter_map(|piece| {
            piece
                .strip_prefix("href=\"")
                .or_else(|| piece.strip_prefix("src=\""))
        }) {
            let address = piece.split('"').next().unwrap_or_default();
            let mut to = here.join(address).expect("an address");
            if address.starts_with('#') || !["http", "https"].contains(&to.scheme()) {
                continue;
            }
            to.set_fragment(None);
            if to.host_str() != top.host_str() {
                assert!(address.starts_with("http"), "{address}");
                continue;
            }
            let Some(rest) = to.path().strip_prefix(top.path()) else {
                panic!("{}: {address} leads out of the folder", path.display());
            };
            let file = site.join(rest);
            let there = file.is_file()
                || file.join("index.html").is_file() && (rest.is_empty() || rest.ends_with('/'));
            assert!(
                there || rest == "slipbark-kit.zip",
                "{}: {address}",
                path.display()
            );
            count += 1;
        }
    }
    assert!(count > 500, "{count} addresses in {} pages", pages.len());
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn the_kit_unpacks_to_its_sums_and_serves_an_answer_from_a_folder() {
    let unpacked = unpacked("kit");
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
        "site/index.html.br",
        "site/index.html.gz",
    ] {
        assert!(unpacked.join(name).is_file(), "{name} is in the kit");
    }
    std::fs::write(unpacked.join("index.html"), "Another page of theirs.").expect("written");
    let mut server = Server::of(&unpacked, 0);
    let address = format!("{}site/", server.address);
    in_browser(async move |browser| {
        browser.open_an_answer(&address).await?;
        assert_eq!(browser.outcome().await?, "do");
        browser.expect_quiet().await?;
        browser.expect_requests_only_to(&[&address]).await?;
        // Addresses to be copied are whole, and a kit that is not there is not linked.
        browser.open(&format!("{address}embed/")).await?;
        let text = "return document.querySelector('main').innerText;";
        let shown = browser.run(text).await?;
        let shown = shown.as_str().unwrap_or_default();
        assert!(shown.contains(&format!("{address}v1/")), "{shown}");
        let linked = "!document.querySelector(\"a[href$='slipbark-kit.zip']\")";
        browser.until("no link to the kit", linked).await?;
        browser.console().await?;
        std::fs::copy(
            built().join("slipbark-kit.zip"),
            unpacked.join("site/slipbark-kit.zip"),
        )?;
        browser.open(&format!("{address}embed/build/")).await?;
        browser.until_ready().await?;
        browser.open(&format!("{address}embed/")).await?;
        let size = "fetch(document.querySelector(\"a[href$='slipbark-kit.zip']\").href).then((it) => it.blob()).then((it) => done(it.size), (error) => done(String(error)));";
        let size = browser.run_until_done(size).await?;
        assert_eq!(
            size.as_u64(),
            Some(built().join("slipbark-kit.zip").metadata()?.len())
        );
        // It is kept for no signal there, and not beyond its folder.
        crate::offline::open_and_save(&browser, &address).await?;
        server.stop();
        crate::offline::expect_every_page(&browser, &address).await
    });
}
