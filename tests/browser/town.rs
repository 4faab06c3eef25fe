//! A town by name: its country's list is fetched once it is typed, picking one gives dates for that place;
//! without a signal too.

use crate::Outcome;
use crate::browser::{Browser, in_browser};
use crate::site::Server;
use serde_json::Value;

const ROOT: &str = "document.querySelector('slipbark-tree-plan').shadowRoot";

/// Types a town, picks it, asks for the answer; gives what the answer says of the season.
async fn season_in(
    browser: &Browser,
    country: &str,
    town: &str,
    label: &str,
) -> Result<Value, Box<dyn std::error::Error + Send + Sync>> {
    browser.press(".more > summary").await?;
    browser
        .press(&format!("#f-town-country option[value={country}]"))
        .await?;
    browser.type_into("#f-town", town).await?;
    let listed = format!("{ROOT}.querySelector('#l-towns input')");
    browser.until("the towns", &listed).await?;
    let picked = format!(
        "const row = [...{ROOT}.querySelectorAll('#l-towns label')].find((row) => row.textContent.startsWith('{label}'));
         row?.click(); return Boolean(row);"
    );
    assert_eq!(browser.run(&picked).await?, true, "{label} is offered");
    browser.fill_in_a_tree().await?;
    browser.show_the_answer().await?;
    let dated = "document.querySelector('slipbark-tree-plan').result?.timing.nearest_km != null";
    browser.until("the climate", dated).await?;
    let timing = "return document.querySelector('slipbark-tree-plan').result.timing;";
    Ok(browser.run(timing).await?)
}

fn expect_dates(timing: &Value, country: &str) {
    for key in ["budbreak", "opens", "best_from", "best_to", "closes"] {
        assert!(timing[key].is_string(), "{country}: {key} in {timing}");
    }
    assert!(timing["nearest_km"].as_f64().is_some_and(|km| km < 100.0));
    assert_eq!(timing["table_missing"], false);
    let flags = timing["flags"].as_array().expect("flags");
    for flag in flags {
        assert_ne!(flag, "no_place", "{country}");
        assert_ne!(flag, "far_from_places", "{country}");
    }
    // A list of towns has no elevation, and the answer says so.
    assert!(flags.iter().any(|flag| flag == "elevation_assumed"));
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_town_gives_dates_with_a_signal_and_without() {
    let mut server = Server::of_the_site();
    in_browser(async move |browser| {
        browser.open(&server.address).await?;
        browser.until_ready().await?;
        let timing = season_in(&browser, "US", "Madison", "Madison, WI").await?;
        expect_dates(&timing, "US");
        let region = format!("return {ROOT}.querySelector('#f-region').value;");
        assert_eq!(browser.run(&region).await?, "US-WI");
        browser.expect_quiet().await?;
        browser.expect_requests_only_to(&[&server.address]).await?;
        let saved =
            "document.getElementById('saved')?.textContent.startsWith('Saved on this device')";
        browser
            .until("the notice that the site is saved", saved)
            .await?;
        server.stop();
        // Without the draft of the first question.
        browser.run("localStorage.clear();").await?;
        browser.client.refresh().await?;
        browser.until_ready().await?;
        // A list that was never opened before, and half of the world away.
        let timing = season_in(&browser, "NZ", "Hamilton", "Hamilton, WKO").await?;
        expect_dates(&timing, "NZ");
        assert!(
            timing["opens"]
                .as_str()
                .is_some_and(|day| &day[5..7] >= "08"),
            "{timing}"
        );
        Ok(())
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn without_the_list_a_message_says_what_to_type() {
    let folder = crate::site::copy("no-towns");
    let assets = std::fs::read_dir(folder.join("assets")).expect("the assets can be listed");
    for file in assets.flatten() {
        if file.file_name().to_string_lossy().starts_with("towns-US.") {
            std::fs::remove_file(file.path()).expect("it can be removed");
        }
    }
    let server = Server::of(&folder, 0);
    in_browser(async move |browser| -> Outcome {
        browser.open(&server.address).await?;
        browser.until_ready().await?;
        browser.press(".more > summary").await?;
        browser.press("#f-town-country option[value=US]").await?;
        browser.type_into("#f-town", "Madison").await?;
        let said = format!(
            "{ROOT}.querySelector('#town-a').textContent.includes('latitude and longitude below')"
        );
        browser.until("the message", &said).await?;
        browser.type_into("#f-place-latitude", "43.07").await?;
        browser.type_into("#f-place-longitude", "-89.40").await?;
        browser.fill_in_a_tree().await?;
        browser.show_the_answer().await?;
        let dated = "document.querySelector('slipbark-tree-plan').result?.timing.nearest_km < 100";
        browser.until("dates for the point", dated).await
    });
}
