//! A draft of a list: off until pressed, back after a reload, one tab at a time, and words for what keeps it from being kept.

use crate::Outcome;
use crate::browser::{Browser, in_browser};
use crate::property_page::{click, open, open_file, open_sample, plan, planned_sample, text};
use crate::rules::expect_no_violations;
use crate::site::Server;
use serde_json::{Value, json};

/// The records that are kept, without their bytes; makes no base.
const KEPT: &str = "
    indexedDB.databases().then((all) => {
      if (!all.some((it) => it.name === 'slipbark-lists')) return done(null);
      const asked = indexedDB.open('slipbark-lists');
      asked.onsuccess = () => {
        const lists = asked.result.transaction('lists').objectStore('lists').getAll();
        lists.onsuccess = () => { asked.result.close(); done(lists.result.map(({ bytes, ...rest }) => ({ ...rest, size: bytes.byteLength }))); };
      };
    });";

async fn kept(browser: &Browser) -> Result<Value, Box<dyn std::error::Error + Send + Sync>> {
    Ok(browser.run_until_done(KEPT).await?)
}

async fn until_said(browser: &Browser, words: &str) -> Outcome {
    browser
        .until(
            words,
            &format!("document.getElementById('l-kept').textContent.includes('{words}')"),
        )
        .await
}

/// A list of some rows, the second with a word for a number.
const LIST: &str = "Tag,Species,DBH (in),Target\\n1,Norway maple,14,none\\n2,Norway maple,fourteen,none\\n3,Norway maple,9,none";

async fn open_list(browser: &Browser) -> Outcome {
    open_file(browser, "hedge.csv", &format!("'{LIST}'")).await?;
    browser
        .until(
            "the fields",
            "document.querySelector('#area-season form') && document.querySelector('#area-fix form')",
        )
        .await
}

async fn fix(browser: &Browser) -> Outcome {
    browser
        .run("document.querySelector('#area-fix form input').value = '14';")
        .await?;
    click(browser, "#area-fix form button").await?;
    browser
        .until(
            "the fix",
            "document.querySelector('#area-list .lede').textContent.includes('3 ready')",
        )
        .await
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_draft_of_a_list_is_kept_once_asked_for_and_comes_back_with_what_was_typed() {
    let site = Server::of_the_site();
    in_browser(async move |browser| {
        open(&browser, &site, "").await?;
        open_list(&browser).await?;
        until_said(&browser, "Nothing is kept here").await?;
        assert_eq!(
            kept(&browser).await?,
            Value::Null,
            "nothing before the press"
        );
        click(&browser, "#l-keep").await?;
        until_said(&browser, "Draft kept on this device at").await?;
        fix(&browser).await?;
        until_said(&browser, "up to row 3").await?;
        expect_no_violations(&browser, "a list with a draft").await?;
        let records = kept(&browser).await?;
        let record = &records[0];
        assert_eq!(
            (&record["name"], &record["version"], &record["edits"]),
            (&json!("hedge.csv"), &json!(1), &json!([[3, 2, "14"]]))
        );
        assert!(
            record["size"].as_u64().is_some_and(|it| it > 50),
            "{record}"
        );
        // Loaded again in the middle: what was typed is there.
        open(&browser, &site, "").await?;
        browser
            .until("the draft", "document.querySelector('#l-drafts button')")
            .await?;
        expect_no_violations(&browser, "drafts of earlier visits").await?;
        // The same file opened again does not write over it.
        open_list(&browser).await?;
        click(&browser, "#l-keep").await?;
        until_said(&browser, "Draft of hedge.csv").await?;
        assert_eq!(kept(&browser).await?[0]["edits"], json!([[3, 2, "14"]]));
        click(&browser, "#l-drafts button").await?;
        browser
            .until(
                "the list as it was left",
                "document.querySelector('#area-list .lede')?.textContent.includes('3 ready')",
            )
            .await?;
        // Forgotten, nothing of it is left.
        click(&browser, "#l-forget").await?;
        until_said(&browser, "Nothing is kept here").await?;
        for _ in 0..50 {
            if kept(&browser).await? == json!([]) {
                break;
            }
            tokio::time::sleep(std::time::Duration::from_millis(100)).await;
        }
        assert_eq!(kept(&browser).await?, json!([]));
        browser.expect_quiet().await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_second_tab_reads_the_draft_and_keeps_nothing_and_a_full_device_is_said() {
    let site = Server::of_the_site();
    in_browser(async move |browser| {
        open(&browser, &site, "").await?;
        open_list(&browser).await?;
        click(&browser, "#l-keep").await?;
        until_said(&browser, "Draft kept on this device at").await?;
        let first = browser.client.window().await?;
        let second = browser.client.new_window(true).await?.handle;
        browser.client.switch_to_window(second).await?;
        open(&browser, &site, "").await?;
        browser
            .until("the draft", "document.querySelector('#l-drafts button')")
            .await?;
        click(&browser, "#l-drafts button").await?;
        browser
            .until("the list", "document.querySelector('#area-fix form')")
            .await?;
        until_said(&browser, "Another tab").await?;
        fix(&browser).await?;
        browser.client.close_window().await?;
        browser.client.switch_to_window(first).await?;
        assert_eq!(
            kept(&browser).await?[0]["edits"],
            json!([]),
            "the second tab wrote"
        );
        // No room: what was kept stays, and it is said.
        browser
            .run("IDBObjectStore.prototype.put = function () { throw new DOMException('', 'QuotaExceededError'); };")
            .await?;
        fix(&browser).await?;
        until_said(&browser, "no room left").await?;
        assert_eq!(kept(&browser).await?.as_array().map(Vec::len), Some(1));
        // A browser that keeps nothing.
        browser
            .run("IDBFactory.prototype.open = function () { throw new DOMException('', 'SecurityError'); };")
            .await?;
        click(&browser, "#l-keep").await?;
        until_said(&browser, "keeps nothing for this page").await?;
        browser.expect_quiet().await
    });
}

/// Opens the page, whose workers are kept as `workers` from its first script on.
async fn open_keeping_workers(browser: &Browser, site: &Server) -> Outcome {
    let keep_workers = "window.workers = []; const Made = Worker;
        window.Worker = class extends Made { constructor(...of) { super(...of); workers.push(this); } };";
    browser
        .devtools(
            "Page.addScriptToEvaluateOnNewDocument",
            json!({ "source": keep_workers }),
        )
        .await?;
    open(browser, site, "").await
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn what_works_on_a_list_is_there_before_the_first_press_and_begins_anew_where_it_broke() {
    let site = Server::of_the_site();
    in_browser(async move |browser| {
        open_keeping_workers(&browser, &site).await?;
        browser.until("a worker", "workers.length === 1").await?;
        browser.run("workers[0].onerror();").await?;
        // Nobody asked for anything yet: nothing is said.
        assert_eq!(text(&browser, "#l-told").await?, "");
        open_list(&browser).await?;
        assert_eq!(browser.run("return workers.length;").await?, 2);
        browser.expect_quiet().await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_worker_that_breaks_gives_the_list_back_as_it_was_left() {
    let site = Server::of_the_site();
    in_browser(async move |browser| {
        open_keeping_workers(&browser, &site).await?;
        open_list(&browser).await?;
        fix(&browser).await?;
        // What brings the list back is asked for a second after the last change.
        tokio::time::sleep(std::time::Duration::from_millis(1_600)).await;
        browser
            .run("document.querySelector('#area-list').replaceChildren(); workers[0].onerror();")
            .await?;
        browser
            .until(
                "the list as it was left",
                "document.querySelector('#area-list .lede')?.textContent.includes('3 ready')",
            )
            .await?;
        assert_eq!(browser.run("return workers.length;").await?, 2);
        browser.expect_quiet().await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn what_if_says_what_was_and_what_is_now_which_trees_moved_and_puts_it_back() {
    let site = Server::of_the_site();
    in_browser(async move |browser| {
        open(&browser, &site, "").await?;
        planned_sample(&browser).await?;
        let before = text(&browser, "#l-sentence").await?;
        assert_eq!(text(&browser, "#l-was").await?, "");
        click(&browser, "#l-what-if [data-people='-1']").await?;
        browser
            .until("what was", "document.getElementById('l-was')")
            .await?;
        let was = text(&browser, "#l-was p").await?;
        assert!(
            was.contains("4 people") && was.contains("3 people"),
            "{was}"
        );
        // The day that is added is named.
        let day = text(&browser, "#l-what-if [data-day]").await?;
        assert!(
            day.starts_with("One more day: ") && day.contains("2027"),
            "{day}"
        );
        expect_no_violations(&browser, "what if").await?;
        // A work day that closes moves the trees it had, and they are named.
        click(&browser, "#l-what-if [data-closed]").await?;
        browser
            .until(
                "a day fewer",
                "document.querySelector('#l-was p')?.textContent.includes('5 days')",
            )
            .await?;
        let moved = text(&browser, "#l-was").await?;
        assert!(moved.contains("moved: "), "{moved}");
        let command = text(&browser, "#l-good code").await?;
        assert!(
            command.contains("--closed 2027-") && command.contains("--keep plan-before.json"),
            "{command}"
        );
        click(&browser, "#l-was [data-do=back]").await?;
        browser
            .until(
                "six days",
                "document.querySelector('#l-sentence').textContent.includes('3 people × 6 days')",
            )
            .await?;
        click(&browser, "#l-what-if [data-people='1']").await?;
        browser
            .until(
                "the plan as it was",
                &format!(
                    "document.querySelector('#l-sentence').textContent === {}",
                    json!(before)
                ),
            )
            .await?;
        browser.expect_quiet().await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn the_map_is_drawn_from_the_list_alone_with_a_table_beside_it() {
    let site = Server::of_the_site();
    in_browser(async move |browser| {
        open(&browser, &site, "").await?;
        open_sample(&browser).await?;
        plan(&browser).await?;
        browser
            .run("document.getElementById('l-map').open = true;")
            .await?;
        browser
            .until("the drawing", "document.querySelector('#t-map svg.map')")
            .await?;
        let drawn = browser
            .run("const svg = document.querySelector('#t-map svg.map');
                  return [svg.namespaceURI, svg.querySelectorAll('circle, rect, path').length, document.querySelectorAll('#t-places tbody tr').length];")
            .await?;
        assert_eq!(drawn[0], "http://www.w3.org/2000/svg");
        assert!(drawn[1].as_u64().is_some_and(|it| it > 250), "{drawn}");
        assert_eq!(drawn[2], 100, "a part of a long table");
        expect_no_violations(&browser, "the map").await?;
        // One work day, in the order of its trees.
        click(&browser, "#t-map [data-table=map][data-from='1']").await?;
        browser
            .until("its way", "document.querySelector('#t-map svg .dash')")
            .await?;
        browser.expect_quiet().await?;
        browser.expect_requests_only_to(&[&site.address]).await
    });
}
