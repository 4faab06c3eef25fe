//! The form that makes a group's settings: what is wrong as it is typed, the lines, a file opened and saved again.

use crate::Outcome;
use crate::browser::{Browser, in_browser};
use crate::narrow::expect_no_sideways_scroll;
use crate::rules::expect_no_violations;
use crate::settings::group;
use crate::site::Server;
use serde_json::{Value, json};

/// Puts a text into a field of the form as if it were typed.
async fn type_in(browser: &Browser, css: &str, text: &str) -> Outcome {
    let field = browser
        .client
        .find(fantoccini::Locator::Css(css))
        .await
        .map_err(|error| format!("{css}: {error}"))?;
    field.clear().await?;
    field.send_keys(text).await?;
    Ok(())
}

async fn click(browser: &Browser, css: &str) -> Outcome {
    let script = format!(
        "const it = document.querySelector(`{css}`); it.scrollIntoView({{ block: 'center' }}); it.click();"
    );
    browser.run(&script).await?;
    Ok(())
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn the_form_makes_settings_says_what_is_wrong_and_shows_the_calculator_with_them() {
    let site = Server::of_the_site();
    in_browser(async move |browser| {
        browser
            .open_page(&format!("{}embed/build/", site.address))
            .await?;
        type_in(&browser, "#b-name", "River Friends").await?;
        type_in(&browser, "#b-find", "of-heaven").await?;
        click(&browser, "#b-choices button:not([hidden])").await?;
        type_in(
            &browser,
            "#b-species [data-key=aliases]",
            "stink tree, sky palm",
        )
        .await?;
        click(&browser, "[data-add=contacts]").await?;
        type_in(
            &browser,
            "[data-list=contacts] [data-key=name]",
            "Elm Street Arborists",
        )
        .await?;
        type_in(
            &browser,
            "[data-list=contacts] [data-key=url]",
            "javascript:alert(1)",
        )
        .await?;
        type_in(&browser, "[id=\"b-tighten.min_distance_factor\"]", "0,5").await?;
        browser
            .until(
                "what is wrong",
                // Half-typed fields have as many things wrong with them: the last one typed is waited for.
                "document.querySelector('#b-told li:last-child')?.textContent.includes('would loosen')",
            )
            .await?;
        let told = browser
            .run("return [...document.querySelectorAll('#b-told li')].map((it) => it.textContent);")
            .await?;
        assert_eq!(
            told,
            json!([
                "Page: A link starts with https://, http:// or tel: and has no space, hidden sign or user name (@) in it.",
                "Day you checked it: Add the day that it was checked. (The file can be used as it is.)",
                "Distances, times: Under 1 it would loosen the distances. Give 1 or more."
            ])
        );
        expect_no_violations(&browser, "the form with things to put right").await?;
        expect_no_sideways_scroll(&browser, "the form with things to put right").await?;
        // A line of the list leads to its field.
        click(&browser, "#b-told a").await?;
        assert_eq!(
            browser.run("return document.activeElement.value;").await?,
            "javascript:alert(1)"
        );
        type_in(
            &browser,
            "[data-list=contacts] [data-key=url]",
            "https://example.org/trees",
        )
        .await?;
        type_in(&browser, "[id=\"b-tighten.min_distance_factor\"]", "1,5").await?;
        browser
            .until(
                "nothing wrong",
                "document.getElementById('b-count').textContent.startsWith('Nothing keeps')",
            )
            .await?;
        let seen = "return document.getElementById('preview').shadowRoot.querySelector('#l-species label').textContent;";
        assert_eq!(
            browser.run(seen).await?,
            "Tree-of-heavenstink tree, sky palm, Ailanthus altissima"
        );
        type_in(
            &browser,
            "#b-address",
            "https://example.org/our trees.json?a=\"b\"",
        )
        .await?;
        browser
            .until(
                "the lines",
                "document.getElementById('b-line-0')?.value.includes('example.org')",
            )
            .await?;
        let lines = browser.run("return [0, 1, 2, 3, 4].map((at) => document.getElementById(`b-line-${at}`).value);").await?;
        assert!(
            lines[0].as_str().is_some_and(|it| it
                .contains("config=\"https://example.org/our trees.json?a=&quot;b&quot;\"")
                && it.contains("embed.js\" integrity=\"sha384-")),
            "{lines}"
        );
        assert!(
            lines[1]
                .as_str()
                .is_some_and(|it| it
                    .contains("data-slipbark=\"tree-plan\" data-config=\"https://example.org/")),
            "{lines}"
        );
        assert!(
            lines[3].as_str().is_some_and(|it| it
                .contains("embed/tree-plan/?config=https%3A%2F%2Fexample.org%2Four%20trees.json")),
            "{lines}"
        );
        // Another calculator, and held to a version: the digest is that of the file.
        browser.run("document.getElementById('b-kind').value = 'ring'; document.getElementById('b-full').click();
             if (!document.getElementById('b-line-0').value.includes('v1/embed.js\" crossorigin')) throw new Error('the newest version is not named');
             document.getElementById('b-full').click();").await?;
        browser
            .until(
                "the digest",
                "document.getElementById('b-line-0').value.includes('integrity=')",
            )
            .await?;
        let held = browser.run_until_done(
            "const text = document.getElementById('b-line-0').value; const [, src, digest] = /src=\"([^\"]+)\" integrity=\"sha384-([^\"]+)\"/.exec(text);
             fetch(src).then((it) => it.arrayBuffer()).then((it) => crypto.subtle.digest('SHA-384', it))
               .then((it) => done([btoa(String.fromCharCode(...new Uint8Array(it))) === digest, text.includes('<slipbark-ring '), src.endsWith('/embed.js')]), (e) => done(String(e)));",
        ).await?;
        assert_eq!(held, json!([true, true, true]));
        browser.run("document.getElementById('b-kind').value = 'tree-plan'; document.getElementById('b-full').click(); document.getElementById('b-full').click();").await?;
        // What the lines make is a calculator with the address: the element in the first one.
        let made = browser.run("const box = document.createElement('div'); box.innerHTML = document.getElementById('b-line-0').value; return box.querySelector('slipbark-tree-plan').getAttribute('config');").await?;
        assert_eq!(made, "https://example.org/our trees.json?a=\"b\"");
        Ok(())
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_file_that_is_opened_and_downloaded_again_says_the_same() {
    let site = Server::of_the_site();
    in_browser(async move |browser| {
        browser
            .open_page(&format!("{}embed/build/", site.address))
            .await?;
        // The download is caught before it becomes a file.
        let catch = "window.made = []; const url = URL.createObjectURL; URL.createObjectURL = (blob) => { blob.text().then((text) => made.push(text)); return url(blob); };";
        browser.run(catch).await?;
        let open = |text: &str| {
            format!(
                "const files = new DataTransfer(); files.items.add(new File([{}], 'ours.json')); const field = document.getElementById('b-open');
                 field.files = files.files; field.dispatchEvent(new Event('change'));",
                json!(text)
            )
        };
        let mut settings = group();
        settings["$schema"] = json!("https://example.org/v1/config.schema.json");
        browser.run(&open(&format!("\u{feff}{settings}"))).await?;
        browser
            .until(
                "the file",
                "document.getElementById('b-opened').textContent.includes('is open')",
            )
            .await?;
        click(&browser, "#b-save").await?;
        browser.until("the download", "made.length").await?;
        let made: Value =
            serde_json::from_str(browser.run("return made[0];").await?.as_str().unwrap_or(""))?;
        assert_eq!(made, settings);
        assert_eq!(
            browser
                .run("return document.getElementById('b-saved').textContent;")
                .await?,
            "Saved as river-friends.json."
        );
        browser
            .until(
                "the preview",
                "document.getElementById('preview').config?.id === 'river-friends'",
            )
            .await?;
        // What is no JSON changes nothing.
        browser.run(&open("{")).await?;
        browser
            .until(
                "the message",
                "document.getElementById('b-opened').textContent.includes('nothing was changed')",
            )
            .await?;
        assert_eq!(
            browser
                .run("return document.getElementById('b-name').value;")
                .await?,
            "River Friends"
        );
        // What a file should not have is shown and said, not lost.
        settings["contacts"][0]["kind"] = json!("boss");
        settings["species"]["first"] = json!(["no such tree", "ACPL"]);
        browser.run(&open(&settings.to_string())).await?;
        browser
            .until(
                "what is wrong",
                "document.getElementById('b-count').textContent.startsWith('2 to')",
            )
            .await?;
        click(&browser, "#b-save").await?;
        browser.until("the download", "made.length > 1").await?;
        let made: Value =
            serde_json::from_str(browser.run("return made[1];").await?.as_str().unwrap_or(""))?;
        assert_eq!(
            (&made["contacts"], &made["species"]["first"]),
            (&settings["contacts"], &settings["species"]["first"])
        );
        Ok(())
    });
}
