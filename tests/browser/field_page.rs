//! Field mode: a question a screen, trees typed one after the other, the file of the list against the command line, and
//! what keeps the list from being kept. Sizes and gaps are the project's own design: 56 pixels or more, 8 or more between two.

use crate::Outcome;
use crate::browser::{Browser, in_browser, in_browser_of};
use crate::property_page::{click, text};
use crate::rules::expect_no_violations;
use crate::site::{Server, folder, program};
use serde_json::{Value, json};
use std::process::Command;

pub(crate) type Told<T> = Result<T, Box<dyn std::error::Error + Send + Sync>>;

const ROOT: &str = "const page = document.getElementById('calculator'), root = page.shadowRoot;";

/// Waits until a question, or the answer, is on the screen.
pub(crate) async fn until_asked(browser: &Browser, step: &str) -> Outcome {
    browser
        .until(
            step,
            &format!(
                "document.getElementById('calculator')?.dataset.ask === '{step}' && !document.getElementById('calculator').hidden"
            ),
        )
        .await
}

/// Opens the page; a file that is saved is caught before it goes to the disk.
pub(crate) async fn open(browser: &Browser, site: &Server, language: &str, step: &str) -> Outcome {
    browser
        .open(&format!("{}{language}field/", site.address))
        .await?;
    until_asked(browser, step).await?;
    let catch = "window.made = []; const url = URL.createObjectURL;
        URL.createObjectURL = (blob) => { blob.arrayBuffer().then((bytes) => made.push(new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes))); return url(blob); };
        HTMLAnchorElement.prototype.click = () => {};";
    browser.run(catch).await?;
    Ok(())
}

/// Types into a field of the question.
pub(crate) async fn put(browser: &Browser, field: &str, text: &str) -> Outcome {
    browser
        .run(&format!(
            "{ROOT} const field = root.querySelector(`{field}`); field.focus(); field.value = `{text}`;
             field.dispatchEvent(new Event('input', {{ bubbles: true, composed: true }}));
             field.dispatchEvent(new Event('change', {{ bubbles: true }}));"
        ))
        .await?;
    Ok(())
}

/// Presses something in the calculator.
pub(crate) async fn press(browser: &Browser, css: &str) -> Outcome {
    browser
        .until(
            css,
            &format!("document.getElementById('calculator').shadowRoot.querySelector(`{css}`)"),
        )
        .await?;
    browser
        .run(&format!("{ROOT} root.querySelector(`{css}`).click();"))
        .await?;
    Ok(())
}

/// Types into the field of the other stems.
pub(crate) async fn others(browser: &Browser, text: &str) -> Outcome {
    browser
        .run(&format!(
            "const field = document.getElementById('fm-others-in'); field.value = '{text}';
             field.dispatchEvent(new Event('input', {{ bubbles: true }}));"
        ))
        .await?;
    Ok(())
}

/// Continue, and the question that comes then.
pub(crate) async fn go_on(browser: &Browser, step: &str) -> Outcome {
    click(browser, "#fm-go").await?;
    until_asked(browser, step).await
}

/// The first tree of a list, up to a question of it.
async fn first_tree(browser: &Browser, up_to: &str) -> Outcome {
    put(browser, "#f-town", "Massachusetts").await?;
    go_on(browser, "day").await?;
    go_on(browser, "tree").await?;
    put(browser, "#f-find", "norway m").await?;
    press(browser, "[name=species][value='Norway maple']").await?;
    go_on(browser, "size").await?;
    put(browser, "#f-stems-0-diameter", "14").await?;
    click(browser, "#fm-keys button[value='1/2']").await?;
    if up_to == "size" {
        return Ok(());
    }
    go_on(browser, "near").await?;
    click(browser, "#fm-near input[value=path]").await?;
    go_on(browser, "far").await?;
    put(browser, "#f-targets-0-distance", "160").await?;
    go_on(browser, "line").await?;
    press(browser, "[name=line_within_reach][value=no]").await?;
    go_on(browser, "answer").await
}

/// The next tree with its name, up to the question of its size.
async fn next_tree(browser: &Browser, typed: &str, species: &str) -> Outcome {
    go_on(browser, "tree").await?;
    if !typed.is_empty() {
        put(browser, "#f-find", typed).await?;
        press(browser, &format!("[name=species][value='{species}']")).await?;
    }
    go_on(browser, "size").await
}

/// The sentence of the card, the outcome and the day that is advised.
async fn says(browser: &Browser) -> Told<Value> {
    let say = format!(
        "{ROOT} return [root.querySelector('.card .say').textContent, page.result.outcome, page.result.advised_day];"
    );
    Ok(browser.run(&say).await?)
}

/// What is kept on the device: the trees, and where somebody is; null where nothing is.
async fn kept(browser: &Browser) -> Told<Value> {
    let read = "
        indexedDB.databases().then((all) => {
          if (!all.some((it) => it.name === 'slipbark-lists')) return done(null);
          const asked = indexedDB.open('slipbark-lists');
          asked.onsuccess = () => {
            const field = asked.result.transaction('lists').objectStore('lists').get('field');
            field.onsuccess = () => { asked.result.close(); done(field.result ? { trees: field.result.trees, place: field.result.place } : null); };
          };
        });";
    Ok(browser.run_until_done(read).await?)
}

async fn until_said(browser: &Browser, words: &str) -> Outcome {
    browser
        .until(
            words,
            &format!("document.getElementById('fm-kept').textContent.includes('{words}')"),
        )
        .await
}

/// The file as it is saved.
pub(crate) async fn saved(browser: &Browser) -> Told<String> {
    browser.run("made.length = 0;").await?;
    click(browser, "#fm-save").await?;
    browser.until("the file", "made.length === 1").await?;
    let file = browser.run("return made[0];").await?;
    Ok(file.as_str().unwrap_or_default().to_owned())
}

/// Holds what stands there to the rules of accessibility. The checker itself writes styles, which the page's policy refuses
/// and the console tells: what the page told stands before that.
pub(crate) async fn hold_to_rules(browser: &Browser, what: &str) -> Outcome {
    browser.expect_quiet().await?;
    expect_no_violations(browser, what).await?;
    browser.console().await?;
    Ok(())
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn five_trees_are_typed_and_the_command_line_answers_their_file_alike() {
    let site = Server::of_the_site();
    in_browser(async move |browser| {
        open(&browser, &site, "", "place").await?;
        assert_eq!(kept(&browser).await?, Value::Null, "nothing before a press");
        let mut said = Vec::new();
        first_tree(&browser, "answer").await?;
        said.push(says(&browser).await?);
        // The second: four presses and the digits of its size (place, day, units stay).
        click(&browser, "#fm-go").await?;
        until_asked(&browser, "tree").await?;
        assert!(text(&browser, "#fm-same").await?.contains("Massachusetts"));
        click(&browser, "#fm-recent button").await?;
        until_asked(&browser, "size").await?;
        put(&browser, "#f-stems-0-diameter", "9").await?;
        go_on(&browser, "near").await?;
        let as_first = text(&browser, "#fm-as").await?;
        assert!(
            as_first.contains("160") && as_first.contains("No"),
            "{as_first}"
        );
        click(&browser, "#fm-as").await?;
        until_asked(&browser, "answer").await?;
        said.push(says(&browser).await?);
        // A girth, and nothing near: no line is asked for then.
        next_tree(&browser, "siberian", "Siberian elm").await?;
        click(&browser, "#fm-as-measured input[value='cm around']").await?;
        put(&browser, "#f-stems-0-diameter", "75.5").await?;
        go_on(&browser, "near").await?;
        click(&browser, "#fm-near input[value=nothing]").await?;
        go_on(&browser, "answer").await?;
        said.push(says(&browser).await?);
        // No name, a neighbour's line, and nobody can tell of a wire.
        next_tree(&browser, "", "").await?;
        put(&browser, "#f-stems-0-diameter", "110").await?;
        go_on(&browser, "near").await?;
        click(&browser, "#fm-near input[value='property_line']").await?;
        go_on(&browser, "far").await?;
        put(&browser, "#f-targets-0-distance", "9").await?;
        go_on(&browser, "line").await?;
        press(&browser, "[name=line_within_reach][value=cant_tell]").await?;
        go_on(&browser, "answer").await?;
        said.push(says(&browser).await?);
        // A house in reach, and a tag of its own, which a spreadsheet would take for a formula.
        next_tree(&browser, "black loc", "Black locust").await?;
        // Several stems, the largest first; what is no size is told, and none of them is lost on the way back.
        click(&browser, "#fm-stems input[value=several]").await?;
        assert!(text(&browser, "#fm-ask").await?.contains("largest"));
        put(&browser, "#f-stems-0-diameter", "94").await?;
        go_on(&browser, "others").await?;
        click(&browser, "#fm-go").await?;
        assert!(
            text(&browser, "#fm-others-e")
                .await?
                .contains("at least one")
        );
        others(&browser, "70; thick").await?;
        click(&browser, "#fm-go").await?;
        assert!(text(&browser, "#fm-others-e").await?.contains("“thick”"));
        others(&browser, "70").await?;
        click(&browser, "#fm-another").await?;
        browser
            .run("document.getElementById('fm-others-in').value += '50.5';")
            .await?;
        go_on(&browser, "near").await?;
        click(&browser, "#fm-back").await?;
        until_asked(&browser, "others").await?;
        let typed = browser
            .run("return document.getElementById('fm-others-in').value;")
            .await?;
        assert_eq!(typed, "70; 50.5");
        go_on(&browser, "near").await?;
        click(&browser, "#fm-near input[value=building]").await?;
        go_on(&browser, "far").await?;
        put(&browser, "#f-targets-0-distance", "12").await?;
        go_on(&browser, "line").await?;
        press(&browser, "[name=line_within_reach][value=no]").await?;
        go_on(&browser, "answer").await?;
        said.push(says(&browser).await?);
        click(&browser, "#fm-tag").await?;
        browser
            .run("document.getElementById('fm-tag-in').value = 'T001';")
            .await?;
        click(&browser, "#fm-go").await?;
        assert!(text(&browser, "#fm-tag-e").await?.contains("Tree 1"));
        browser
            .run("document.getElementById('fm-tag-in').value = '=5, \"gate\"';")
            .await?;
        go_on(&browser, "answer").await?;

        let file = saved(&browser).await?;
        assert!(
            file.starts_with('\u{feff}') && file.ends_with("\r\n"),
            "{file}"
        );
        let today = kept(&browser).await?["trees"][0]["q"]["today"].clone();
        let today = today.as_str().ok_or("a day")?;
        assert!(
            file.contains("94 cm around; 70 cm around; 50.5 cm around")
                || file.contains("94 cm; 70 cm; 50.5 cm"),
            "{file}"
        );
        let path = folder("field").join("field-trees.csv");
        std::fs::write(&path, &file)?;
        let command = text(&browser, "#fm-program").await?;
        assert_eq!(command, "slipbark list field-trees.csv --region US-MA");
        let told = Command::new(program())
            .arg("list")
            .arg(&path)
            .args(["--today", today])
            .output()?;
        let lines = String::from_utf8(told.stdout)?;
        let rows: Vec<Value> = lines
            .lines()
            .map(serde_json::from_str)
            .collect::<Result<_, _>>()?;
        assert_eq!(rows.len(), 5, "{lines}");
        for (at, (row, say)) in rows.iter().zip(&said).enumerate() {
            assert_eq!(row["outcome"], say[1], "{row}");
            assert_eq!(row["advised_day"], say[2], "{row}");
            // From the third on it was measured in centimetres: the program speaks in feet.
            let message = row["message"].as_str().unwrap_or_default();
            let sentence = say[0].as_str().unwrap_or_default();
            assert!(at > 1 || message.ends_with(sentence), "{message}: {say}");
            assert_eq!(row["problems"], json!([]), "{row}");
        }
        let tags: Vec<&str> = rows
            .iter()
            .filter_map(|row| row["tree_id"].as_str())
            .collect();
        assert_eq!(tags, ["T001", "T002", "T003", "T004", "=5, \"gate\""]);

        // The list so far names each, and the page for lists opens it.
        let shown = browser
            .run("return [...document.querySelectorAll('#fm-list tbody tr')].map((row) => row.lastChild.textContent);")
            .await?;
        let sentences: Vec<&Value> = said.iter().map(|say| &say[0]).collect();
        assert_eq!(shown, json!(sentences));
        until_said(&browser, "Trees answered: 5").await?;
        let list = browser
            .run("return document.getElementById('fm-open').href;")
            .await?;
        browser.open(list.as_str().unwrap_or_default()).await?;
        browser
            .until(
                "the list",
                "document.querySelector('#area-list .lede')?.textContent.startsWith('field-trees.csv: 5 trees, 5 ready, 0 to fix')",
            )
            .await?;
        browser.expect_quiet().await?;
        browser.expect_requests_only_to(&[&site.address]).await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_reload_a_killed_browser_and_the_way_back_lose_nothing() {
    let server = Server::of_the_site();
    let profile = folder("field-profile");
    let address = server.address.clone();
    in_browser_of(&profile, async move |browser| {
        browser.open(&format!("{address}field/")).await?;
        until_asked(&browser, "place").await?;
        first_tree(&browser, "size").await?;
        let typed = "document.getElementById('calculator').shadowRoot.querySelector('#f-stems-0-diameter').value === '14 1/2'";
        let written = async || -> Outcome {
            for _ in 0..50 {
                let size = &kept(&browser).await?["trees"][0]["q"]["stems"][0]["diameter"];
                if *size == "14 1/2" {
                    return Ok(());
                }
                tokio::time::sleep(std::time::Duration::from_millis(100)).await;
            }
            Err("the size was not kept".into())
        };
        // Typed, and not gone on from: kept a moment after the last key.
        written().await?;
        browser.client.refresh().await?;
        until_asked(&browser, "size").await?;
        browser.until("what was typed", typed).await?;
        // Back of the browser, then forward: the question before with its reply, and this one.
        browser.client.back().await?;
        until_asked(&browser, "tree").await?;
        let picked = browser
            .run(&format!(
                "{ROOT} return root.querySelector('[name=species]:checked').value;"
            ))
            .await?;
        assert_eq!(picked, "Norway maple");
        browser.client.forward().await?;
        until_asked(&browser, "size").await?;
        browser.until("what was typed", typed).await?;
        browser.expect_quiet().await
    });
    let address = server.address.clone();
    in_browser_of(&profile, async move |browser| {
        browser.open(&format!("{address}field/")).await?;
        until_asked(&browser, "size").await?;
        browser
            .until(
                "what was typed before the browser ended",
                "document.getElementById('calculator').shadowRoot.querySelector('#f-stems-0-diameter').value === '14 1/2'",
            )
            .await?;
        // Back leads through the questions of this tree where this browser has no way back of its own.
        click(&browser, "#fm-back").await?;
        until_asked(&browser, "tree").await?;
        browser.expect_quiet().await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn refused_storage_a_full_device_and_a_second_tab_are_said_and_lose_nothing() {
    let site = Server::of_the_site();
    in_browser(async move |browser| {
        open(&browser, &site, "", "place").await?;
        first_tree(&browser, "answer").await?;
        until_said(&browser, "Trees answered: 1").await?;
        // No room: it is said, what was kept stays, and the file has all.
        browser
            .run(
                "window.put = IDBObjectStore.prototype.put;
                 IDBObjectStore.prototype.put = function () { throw new DOMException('', 'QuotaExceededError'); };",
            )
            .await?;
        next_tree(&browser, "siberian", "Siberian elm").await?;
        until_said(&browser, "no room left").await?;
        hold_to_rules(&browser, "no room for the list").await?;
        put(&browser, "#f-stems-0-diameter", "8").await?;
        go_on(&browser, "near").await?;
        click(&browser, "#fm-near input[value=nothing]").await?;
        go_on(&browser, "answer").await?;
        assert_eq!(
            kept(&browser).await?["trees"].as_array().map(Vec::len),
            Some(1)
        );
        assert_eq!(saved(&browser).await?.lines().count(), 3);
        // Room again: the next change is kept with all before it.
        browser
            .run("IDBObjectStore.prototype.put = window.put;")
            .await?;
        go_on(&browser, "tree").await?;
        until_said(&browser, "Trees answered: 2").await?;
        // A second tab shows the list, writes nothing, and says so.
        let first = browser.client.window().await?;
        let second = browser.client.new_window(true).await?.handle;
        browser.client.switch_to_window(second).await?;
        open(&browser, &site, "", "tree").await?;
        until_said(&browser, "Another tab keeps the draft").await?;
        put(&browser, "#f-find", "black loc").await?;
        press(&browser, "[name=species][value='Black locust']").await?;
        go_on(&browser, "size").await?;
        put(&browser, "#f-stems-0-diameter", "7").await?;
        go_on(&browser, "near").await?;
        click(&browser, "#fm-near input[value=nothing]").await?;
        go_on(&browser, "answer").await?;
        assert_eq!(
            saved(&browser).await?.lines().count(),
            4,
            "its own row goes into its file"
        );
        browser.client.close_window().await?;
        browser.client.switch_to_window(first).await?;
        let trees = kept(&browser).await?;
        assert_eq!(
            trees["trees"][2]["done"], false,
            "the second tab wrote: {trees}"
        );
        // Forgotten only at the second press.
        click(&browser, "#fm-new").await?;
        assert!(text(&browser, "#fm-told").await?.contains("Press again"));
        click(&browser, "#fm-new").await?;
        until_asked(&browser, "place").await?;
        assert_eq!(kept(&browser).await?, Value::Null);
        browser.expect_quiet().await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_browser_that_keeps_nothing_says_so_and_the_file_has_every_tree() {
    let site = Server::of_the_site();
    in_browser(async move |browser| {
        let refuse = "IDBFactory.prototype.open = function () { throw new DOMException('', 'SecurityError'); };";
        browser
            .devtools(
                "Page.addScriptToEvaluateOnNewDocument",
                json!({ "source": refuse }),
            )
            .await?;
        open(&browser, &site, "", "place").await?;
        until_said(&browser, "keeps nothing for this page").await?;
        first_tree(&browser, "answer").await?;
        until_said(&browser, "keeps nothing for this page").await?;
        let file = saved(&browser).await?;
        assert!(
            file.contains("T001,Norway maple,14 1/2 in,path 160 ft,no"),
            "{file}"
        );
        let open = browser
            .run("return document.getElementById('fm-open').hidden;")
            .await?;
        assert_eq!(
            open, true,
            "there is nothing that the other page could read"
        );
        browser.expect_quiet().await
    });
}
