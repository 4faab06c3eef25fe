//! A group's own settings in a page: fetched, set, refused, gone missing.

use crate::browser::{Browser, in_browser};
use crate::narrow::expect_no_sideways_scroll;
use crate::rules::expect_no_violations;
use crate::site::{Server, folder};
use serde_json::{Value, json};

/// Invented: the group and its people do not exist.
pub(crate) fn group() -> Value {
    json!({
        "schema": 1, "id": "river-friends", "name": { "en": "River Friends", "es": "Amigos del Río" }, "checked": "2026-05-01",
        "units": "metric", "region": "US-MA", "place": { "latitude": "42.36", "longitude": "-71.06" }, "colour of the house": "red",
        "species": {
            "first": ["AIAL", "ACPL"], "only": true, "aliases": { "stink tree": "AIAL" },
            "notes": { "ACPL": { "en": "Ask Mara first.", "es": "Pregunte a Mara." } }
        },
        "contacts": [
            { "kind": "professional", "name": "Elm Street Arborists", "phone": "555 010 0123", "checked": "2026-05-01" },
            { "kind": "permit", "name": "Town of Rivermead", "url": "https://example.org/trees", "checked": "2026-05-01", "fax": "no" }
        ],
        "codes": [{ "topic": "nesting", "text": "No work by the pond before July.", "authority": "Town of Rivermead", "checked": "2026-05-01" }],
        "tighten": { "min_distance_factor": 1.25, "max_size_for_volunteers_cm": 30, "months_blocked": [4, 5] },
        "crew": { "size": 4, "hours_per_day": 3 }, "share": "none"
    })
}

/// A host page beside files of its own.
fn host(
    test: &str,
    site: &Server,
    attributes: &str,
    after: &str,
    files: &[(&str, &str)],
) -> Server {
    let folder = folder(test);
    for (name, text) in files {
        let path = folder.join(name);
        std::fs::create_dir_all(path.parent().expect("a folder")).expect("it can be made");
        std::fs::write(path, text).expect("the file can be written");
    }
    let page = format!(
        "<!doctype html><html lang=\"en\"><head><meta charset=\"utf-8\"><title>A land trust</title><link rel=\"icon\" href=\"data:,\">\
         <script>window.heard = []; for (const name of ['slipbark-failure', 'slipbark-ready']) addEventListener(name, ({{ type, detail }}) => heard.push([type, detail.code ?? '', (detail.problems ?? []).map((it) => it.path)]));</script>\
         <script src=\"{0}v1/embed.js\" defer></script></head><body><main><h1>A land trust</h1>\
         <slipbark-tree-plan id=\"calculator\" {attributes}><p><a href=\"{0}\">Plan one tree</a></p></slipbark-tree-plan></main>{after}</body></html>",
        site.address
    );
    std::fs::write(folder.join("index.html"), page).expect("the page can be written");
    Server::of(&folder, 0)
}

/// Asks about a tree by the properties, and gives what the page shows of it.
const ASK: &str = "
  const calculator = document.getElementById('calculator');
  calculator.inputs = { version: 1, species: 'ACPL', stems: [{ diameter: '14 in' }], date: '2027-06-12', none_in_reach: true };
  const { outcome, group } = calculator.compute();
  const root = calculator.shadowRoot;
  return [outcome, group?.name ?? null, root.getElementById('left-out')?.textContent.slice(0, 12) ?? null,
    [...root.querySelectorAll('.card.stop a')].map((a) => a.getAttribute('href')), root.querySelectorAll('b, script, img').length > 0 && [...root.querySelectorAll('script, img, [onerror]')].length];";

async fn heard(browser: &Browser) -> Result<Value, fantoccini::error::CmdError> {
    browser.run("return window.heard;").await
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn settings_at_an_address_are_there_before_anything_is_answered() {
    let site = Server::of_the_site();
    let mut settings = group();
    settings["species"]["list"] = json!("trees.csv");
    let files = [
        ("ours.json", &*settings.to_string()),
        ("trees.csv", "code,first,alias_en\nROPS,yes,river locust\n"),
    ];
    let host = host("settings-at", &site, "config=\"ours.json\"", "", &files);
    in_browser(async move |browser| {
        browser.open(&host.address).await?;
        browser.until_ready().await?;
        let list = "return [...document.getElementById('calculator').shadowRoot.querySelectorAll('#l-species label')].map((it) => it.textContent);";
        assert_eq!(
            browser.run(list).await?,
            json!([
                "Tree-of-heavenstink tree, Ailanthus altissima",
                "Norway mapleAcer platanoides",
                "Black locustriver locust, Robinia pseudoacacia",
                "None of these, or I don’t know"
            ])
        );
        let preset = "const root = document.getElementById('calculator').shadowRoot; return ['[name=\"stems.as\"]', '[name=region]', '[name=\"place.latitude\"]'].map((css) => root.querySelector(css).value);";
        assert_eq!(
            browser.run(preset).await?,
            json!(["cm across", "US-MA", "42.36"])
        );
        browser
            .in_calculator("#f-find")
            .await?
            .send_keys("STINK")
            .await?;
        assert_eq!(
            browser.run(list).await?,
            json!([
                "Tree-of-heavenstink tree, Ailanthus altissima",
                "None of these, or I don’t know"
            ])
        );
        assert_eq!(
            browser.run(ASK).await?,
            json!(["professional", "River Friends", null, ["tel:5550100123"], 0])
        );
        assert_eq!(heard(&browser).await?, json!([["slipbark-ready", "", []]]));
        expect_no_violations(&browser, "a stop in the name of a group").await?;
        expect_no_sideways_scroll(&browser, "a stop in the name of a group").await?;
        // On paper the telephone stands too, and what the group says of the tree.
        browser
            .devtools("Emulation.setEmulatedMedia", json!({ "media": "print" }))
            .await?;
        let shown = "const root = document.getElementById('calculator').shadowRoot; return ['.btn.call', '.grp'].map((css) => getComputedStyle(root.querySelector(css)).display !== 'none');";
        assert_eq!(browser.run(shown).await?, json!([true, true]));
        browser
            .devtools("Emulation.setEmulatedMedia", json!({ "media": "" }))
            .await?;
        // A key that is not read is told in the console, with its path.
        let console = browser.console().await?.join("\n");
        assert!(
            console.contains("colour of the house") && console.contains("contacts[1].fax"),
            "{console}"
        );
        Ok(())
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn settings_that_can_not_be_had_or_used_are_left_out_as_a_whole_with_a_note() {
    let site = Server::of_the_site();
    let mut loose = group();
    loose["tighten"]["min_distance_factor"] = json!(0.5);
    loose["hide_cautions"] = json!(true);
    let mut markup = group();
    markup["contacts"][0]["name"] = json!("<img src=x onerror=alert(1)>");
    markup["contacts"][1]["url"] = json!("javascript:alert(1)");
    let mut large = group();
    large["note"] = json!("x".repeat(1_000_000));
    let mut out = group();
    out["species"]["list"] = json!("../trees.csv");
    let files = [
        ("loose.json", &*loose.to_string()),
        ("markup.json", &*markup.to_string()),
        ("text.json", "{ \"schema\": 1,"),
        ("large.json", &*large.to_string()),
        ("inner/out.json", &*out.to_string()),
        ("trees.csv", "code,first\nROPS,yes\n"),
    ];
    let host = host("settings-refused", &site, "", "", &files);
    in_browser(async move |browser| {
        for (file, paths) in [
            ("none.json", json!([])),
            ("text.json", json!([])),
            ("http://127.0.0.1:1/x.json", json!([])),
            ("large.json", json!([])),
            ("inner/out.json", json!([])),
            (
                "loose.json",
                json!([
                    "hide_cautions",
                    "colour of the house",
                    "contacts[1].fax",
                    "tighten.min_distance_factor"
                ]),
            ),
            (
                "markup.json",
                json!([
                    "colour of the house",
                    "contacts[0].name",
                    "contacts[1].url",
                    "contacts[1].fax"
                ]),
            ),
        ] {
            browser.open(&host.address).await?;
            browser.until_ready().await?;
            let set = format!(
                "heard.length = 0; document.getElementById('calculator').setAttribute('config', '{file}');"
            );
            browser.run(&set).await?;
            browser.until("the failure", "window.heard.length").await?;
            let found = heard(&browser).await?;
            let mut told: Vec<String> = serde_json::from_value(found[0][2].clone())?;
            let mut wanted: Vec<String> = serde_json::from_value(paths)?;
            told.sort();
            wanted.sort();
            assert_eq!(
                (&found[0][0], &found[0][1], told),
                (&json!("slipbark-failure"), &json!("config"), wanted),
                "{file}"
            );
            assert_eq!(
                browser.run(ASK).await?,
                json!(["do", null, "The settings", [], 0]),
                "{file}"
            );
        }
        expect_no_violations(&browser, "settings left out").await?;
        let console = browser.console().await?.join("\n");
        for part in ["larger than 1000000 bytes", "does not lie in the folder"] {
            assert!(console.contains(part), "{part}: {console}");
        }
        // An object is looked at before it is taken apart.
        let begun = std::time::Instant::now();
        let vast = "heard.length = 0; const calculator = document.getElementById('calculator'); \
             calculator.config = { schema: 1, name: 'x'.repeat(5e7) }; \
             calculator.config = { schema: 1, name: 'x', list: new Array(2e6).fill(0) };";
        browser.run(vast).await?;
        browser.until("the failure", "window.heard.length").await?;
        assert_eq!(heard(&browser).await?[0][2], json!([""]));
        assert!(begun.elapsed().as_secs() < 20, "{:?}", begun.elapsed());
        // Good ones take the note away.
        let good = format!(
            "document.getElementById('calculator').config = {};",
            group()
        );
        browser.run(&good).await?;
        assert_eq!(browser.run(ASK).await?[2], Value::Null);
        browser.run("document.getElementById('calculator').config = null; document.getElementById('calculator').removeAttribute('config');").await?;
        assert_eq!(browser.run(ASK).await?, json!(["do", null, null, [], 0]));
        Ok(())
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_property_set_before_the_definition_counts_and_beats_the_attribute() {
    let site = Server::of_the_site();
    let script = format!(
        "<script>document.getElementById('calculator').config = {};</script>",
        group()
    );
    let host = host(
        "settings-early",
        &site,
        "config=\"none.json\"",
        &script,
        &[],
    );
    in_browser(async move |browser| {
        browser.open(&host.address).await?;
        browser.until_ready().await?;
        assert_eq!(
            browser.run(ASK).await?,
            json!(["professional", "River Friends", null, ["tel:5550100123"], 0])
        );
        assert_eq!(heard(&browser).await?, json!([["slipbark-ready", "", []]]));
        let kept = "const calculator = document.getElementById('calculator'); const same = calculator.config.id; document.querySelector('h1').after(calculator); return new Promise((resolve) => setTimeout(() => resolve([same, calculator.compute().group?.name]), 300));";
        assert_eq!(
            browser.run(kept).await?,
            json!(["river-friends", "River Friends"]),
            "a moved element keeps them"
        );
        Ok(())
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_frame_has_the_settings_of_its_host_and_a_page_of_ours_has_nobody_s() {
    let site = Server::of_the_site();
    let files = [("ours.json", &*group().to_string())];
    let host = host("settings-frame", &site, "hidden", "", &files);
    let address = format!(
        "{}embed/tree-plan/?config={}ours.json",
        site.address, host.address
    );
    in_browser(async move |browser| {
        browser.open(&host.address).await?;
        browser.until_ready().await?;
        let frame = format!(
            "const frame = document.createElement('iframe'); frame.id = 'f'; frame.src = '{address}'; frame.height = 900; document.body.append(frame);"
        );
        browser.run(&frame).await?;
        let frame = browser.client.find(fantoccini::Locator::Id("f")).await?;
        frame.enter_frame().await?;
        browser.until_ready().await?;
        let only = "return document.getElementById('calculator').shadowRoot.querySelectorAll('#l-species label').length;";
        assert_eq!(
            browser.run(only).await?,
            3,
            "two names of the group, and none of them"
        );
        assert_eq!(browser.run(ASK).await?[1], "River Friends");
        browser.client.enter_parent_frame().await?;
        browser.open(&address).await?;
        browser.until_ready().await?;
        assert_eq!(browser.run(ASK).await?, json!(["do", null, null, [], 0]));
        Ok(())
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn the_other_ways_onto_a_page_carry_the_settings_too() {
    let site = Server::of_the_site();
    let files = [("ours.json", &*group().to_string())];
    let ways = format!(
        "<div data-slipbark=\"tree-plan\" data-config=\"ours.json\"></div>\
         <script src=\"{}v1/embed.js\" data-slipbark=\"ring\" data-config=\"ours.json\" defer></script>",
        site.address
    );
    let host = host("settings-ways", &site, "hidden", &ways, &files);
    in_browser(async move |browser| {
        browser.open(&host.address).await?;
        let listed = "[...document.querySelectorAll('[config]')].map((it) => it.shadowRoot?.querySelectorAll('#l-species label').length)";
        browser
            .until("both", &format!("String({listed}) === '3,3'"))
            .await?;
        // A frame that takes the element's place has the address in full.
        let framed = "const script = document.querySelector('script[src]').src; const holder = document.createElement('div'); holder.setAttribute('config', 'ours.json'); document.body.append(holder);
             const list = new URL('v1/integrity.json', new URL('../', script)); fetch(list).then((it) => it.json())
               .then(({ version }) => import(new URL(`../${version}/stepdown.js`, script).href))
               .then(() => { window[Symbol.for('slipbark.step-down')](holder, new URL('../', script).href); done(new URL(holder.querySelector('iframe').src).searchParams.get('config')); }, (e) => done(String(e)));";
        let address = browser.run_until_done(framed).await?;
        assert_eq!(address, format!("{}ours.json", host.address));
        Ok(())
    });
}
