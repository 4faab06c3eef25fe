//! The address of a full version: a page holds it to its digest, and it loads nothing of another version.

use crate::browser::in_browser;
use crate::embed::host;
use crate::rules::expect_no_violations;
use crate::site::{Server, built, copy};
use serde_json::{Value, json};

/// The full version and the digest of its script, as `v1/integrity.json` tells them.
fn listed() -> (String, String) {
    let text = std::fs::read_to_string(built().join("v1/integrity.json")).expect("it is built");
    let list: Value = serde_json::from_str(&text).expect("JSON");
    let version = list["version"].as_str().expect("a version").to_owned();
    let files = list["files"].as_object().expect("files");
    for (path, digest) in files {
        assert!(path.starts_with(&format!("{version}/")), "{path}");
        assert!(
            digest
                .as_str()
                .is_some_and(|digest| digest.starts_with("sha384-"))
        );
        assert!(built().join(path).is_file(), "{path} is built");
    }
    let digest = files[&format!("{version}/embed.js")]
        .as_str()
        .expect("a digest");
    (version, digest.to_owned())
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_full_version_with_its_digest_loads_only_its_own_files() {
    let site = Server::of_the_site();
    let (version, digest) = listed();
    let lines = |digest: &str| {
        format!(
            "<script src=\"{0}{version}/embed.js\" integrity=\"{digest}\" crossorigin=\"anonymous\" defer></script>\
             <slipbark-tree-plan><p><a href=\"{0}\">Plan one tree</a></p></slipbark-tree-plan>",
            site.address
        )
    };
    let good = host("full-version", "", &lines(&digest));
    let bad = host(
        "full-version-changed",
        "",
        &lines(&digest.replace("sha384-", "sha384-AAAA")),
    );
    let own = format!("{}{version}/", site.address);
    in_browser(async move |browser| {
        browser.open_an_answer(&good.address).await?;
        assert_eq!(browser.outcome().await?, "do");
        // A town is fetched from there too, and a frame is not needed.
        browser
            .run("document.querySelector('slipbark-tree-plan').inputs = { version: 1, species: 'Norway maple', stems: [{ diameter: '9 in' }], date: '2027-06-12', place: { latitude: '42.36', longitude: '-71.06' }, none_in_reach: true };
                  document.querySelector('slipbark-tree-plan').compute();")
            .await?;
        browser
            .until(
                "the climate there",
                "document.querySelector('slipbark-tree-plan').result?.asked_probability != null",
            )
            .await?;
        browser.expect_quiet().await?;
        browser
            .expect_requests_only_to(&[&good.address, &own, "data:"])
            .await?;
        let kept = "fetch(document.querySelector('script').src).then((answer) => done(answer.headers.get('cache-control')), (error) => done(String(error)));";
        let kept = browser.run_until_done(kept).await?;
        assert!(
            kept.as_str().is_some_and(|kept| kept.contains("immutable")),
            "{kept}"
        );
        // Other bytes are refused, and the link stays.
        browser.open(&bad.address).await?;
        let state = "return [Boolean(customElements.get('slipbark-tree-plan')), document.querySelector('slipbark-tree-plan a').offsetHeight > 0];";
        assert_eq!(browser.run(state).await?, json!([false, true]));
        let console = browser.console().await?;
        assert!(
            console.iter().any(|line| line.contains("integrity")),
            "{console:?}"
        );
        expect_no_violations(&browser, "the link alone").await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_file_that_was_changed_behind_a_full_version_does_not_run() {
    let (version, digest) = listed();
    // Served by somebody who changed one file each, as after a break-in.
    let sites = ["element.js", "engine.js", "engine.wasm"].map(|name| {
        let site = copy(&format!("changed-{name}"));
        let path = site.join(&version).join(name);
        let mut bytes = std::fs::read(&path).expect("it is built");
        if name.ends_with(".js") {
            bytes.extend(b"\nglobalThis.changed = true;\n");
        } else {
            // A section of its own that means nothing: WebAssembly 1.0, 5.5.3.
            bytes.extend([0, 3, 2, b'n', b'o']);
        }
        std::fs::write(path, bytes).expect("written");
        let site = Server::of(&site, 0);
        let lines = format!(
            "<script src=\"{0}{version}/embed.js\" integrity=\"{digest}\" crossorigin=\"anonymous\" defer></script>\
             <slipbark-tree-plan><p><a href=\"{0}\">Plan one tree</a></p></slipbark-tree-plan>",
            site.address
        );
        let head = "<meta http-equiv=\"Content-Security-Policy\" content=\"frame-src 'none'\">";
        (name, host(&format!("behind-{name}"), head, &lines), site)
    });
    in_browser(async move |browser| {
        for (name, host, _site) in &sites {
            browser.open(&host.address).await?;
            let mut said = Vec::new();
            for _ in 0..100 {
                said.extend(browser.console().await?);
                if said.iter().any(|line| line.contains("Slipbark:")) {
                    break;
                }
                tokio::time::sleep(std::time::Duration::from_millis(100)).await;
            }
            assert!(
                said.iter().any(|line| line.contains("integrity")),
                "{name}: {said:#?}"
            );
            let state = "const calculator = document.querySelector('slipbark-tree-plan');
                 return [Boolean(globalThis.changed), Boolean(calculator.shadowRoot), calculator.querySelector('a').offsetHeight > 0];";
            assert_eq!(
                browser.run(state).await?,
                json!([false, false, true]),
                "{name}"
            );
        }
        Ok(())
    });
}
