//! The page for a whole list of trees: its sample, a list that asks, cells typed anew, a stop, and the files of the plan
//! against those of the command line.

use crate::Outcome;
use crate::browser::{Browser, in_browser};
use crate::narrow::expect_no_sideways_scroll;
use crate::rules::{expect_contrast, expect_no_violations};
use crate::site::{Server, folder, on_the_command_line};
use serde_json::{Value, json};
use std::path::Path;

/// The day that the page takes for today.
const TODAY: &str = "2027-05-01";

/// Opens the page, with downloads caught before they become files.
pub(crate) async fn open(browser: &Browser, site: &Server, language: &str) -> Outcome {
    let address = format!("{}{language}list/?today={TODAY}", site.address);
    browser.open(&address).await?;
    let catch = "window.made = []; const url = URL.createObjectURL;
        URL.createObjectURL = (blob) => { blob.text().then((text) => made.push(text)); return url(blob); };
        HTMLAnchorElement.prototype.click = () => {};";
    browser.run(catch).await?;
    Ok(())
}

/// Opens a file of this text, or of what an expression gives.
pub(crate) async fn open_file(browser: &Browser, name: &str, text: &str) -> Outcome {
    let script = format!(
        "const files = new DataTransfer(); files.items.add(new File([{text}], '{name}'));
         const field = document.getElementById('l-open'); field.files = files.files;
         field.dispatchEvent(new Event('change', {{ bubbles: true }}));"
    );
    browser.run(&script).await?;
    Ok(())
}

pub(crate) async fn click(browser: &Browser, css: &str) -> Outcome {
    let script = format!(
        "const it = document.querySelector(`{css}`); it.scrollIntoView({{ block: 'center' }}); it.click();"
    );
    browser.run(&script).await?;
    Ok(())
}

pub(crate) async fn text(
    browser: &Browser,
    css: &str,
) -> Result<String, Box<dyn std::error::Error + Send + Sync>> {
    let script = format!("return document.querySelector(`{css}`)?.textContent ?? '';");
    let text = browser.run(&script).await?;
    Ok(text.as_str().unwrap_or_default().to_owned())
}

/// Opens the sample.
pub(crate) async fn open_sample(browser: &Browser) -> Outcome {
    click(browser, "#l-sample").await?;
    browser
        .until(
            "the fields",
            "document.querySelector('#area-season input[name=days]')",
        )
        .await
}

/// Opens the sample and plans it.
pub(crate) async fn planned_sample(browser: &Browser) -> Outcome {
    open_sample(browser).await?;
    plan(browser).await
}

pub(crate) async fn plan(browser: &Browser) -> Outcome {
    click(browser, "#area-season button[type=submit]").await?;
    browser
        .until("the plan", "document.getElementById('l-sentence')")
        .await
}

/// The numbers of a text, in order.
pub(crate) fn numbers(text: &str) -> Vec<u64> {
    let parts = text.split(|c: char| !c.is_ascii_digit());
    parts.filter_map(|part| part.parse().ok()).collect()
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn the_sample_opens_with_one_press_and_the_parts_of_its_plan_add_up() {
    let site = Server::of_the_site();
    in_browser(async move |browser| {
        for (language, trees) in [("", "300 trees"), ("es/", "300 árboles")] {
            open(&browser, &site, language).await?;
            expect_no_violations(&browser, &format!("{language}list/, nothing open")).await?;
            planned_sample(&browser).await?;
            let sentence = text(&browser, "#l-sentence").await?;
            assert!(sentence.starts_with(trees), "{sentence}");
            let said = numbers(&sentence);
            let parts = browser
                .run("return [...document.querySelectorAll('.parts-of b')].map((it) => Number(it.textContent));")
                .await?;
            let parts: Vec<u64> = serde_json::from_value(parts)?;
            // Trees; ready, to fix; planned, people, days; a professional's.
            assert_eq!(said.len(), 7, "{sentence}");
            assert_eq!(said[0], said[1] + said[2], "{sentence}");
            assert_eq!(parts.iter().sum::<u64>(), said[0], "{parts:?}");
            assert!(
                parts.contains(&said[3]) && parts.contains(&said[6]),
                "{parts:?}"
            );
            assert_eq!(text(&browser, "#l-told").await?, sentence);
            // The first screens are short on a phone, which has no scroll bar beside the page.
            browser
                .devtools("Emulation.setScrollbarsHidden", json!({ "hidden": true }))
                .await?;
            browser.window(390, 844).await?;
            let height = browser
                .run("return document.documentElement.scrollHeight;")
                .await?;
            println!("{language}list/ at 390: {height} px");
            assert!(height.as_u64().is_some_and(|it| it <= 3 * 844), "{height}");
            expect_no_sideways_scroll(&browser, "the planned sample").await?;
            browser.window(1280, 900).await?;
            expect_no_violations(&browser, &format!("{language}list/, planned")).await?;
            // Every table, opened.
            browser
                .run("for (const fold of document.querySelectorAll('.folds > details')) fold.open = true;")
                .await?;
            browser
                .until(
                    "the tables",
                    "document.querySelectorAll('[id^=t-]:empty').length === 0",
                )
                .await?;
            expect_no_violations(&browser, &format!("{language}list/, unfolded")).await?;
            browser
                .run("document.documentElement.dataset.theme = 'dark';")
                .await?;
            expect_contrast(&browser, &format!("{language}list/, dark")).await?;
            let rows = "return document.querySelectorAll('#t-planned tbody tr').length;";
            let shown = browser.run(rows).await?;
            assert_eq!(shown, said[3].min(100), "a part of a long table");
        }
        browser.expect_quiet().await?;
        browser.expect_requests_only_to(&[&site.address]).await
    });
}

/// The words of a command, those in quotes as one.
pub(crate) fn words_of(command: &str) -> Vec<String> {
    let parts = command.split('"').enumerate();
    parts
        .flat_map(|(at, part)| match at % 2 {
            0 => part.split_whitespace().map(str::to_owned).collect(),
            _ => vec![part.to_owned()],
        })
        .collect()
}

/// What a file of the page holds, as it is saved; a blob read as text has lost its mark of order.
pub(crate) async fn saved(
    browser: &Browser,
    name: &str,
) -> Result<String, Box<dyn std::error::Error + Send + Sync>> {
    let before = browser.run("return made.length;").await?;
    click(browser, &format!("button[data-kind='{name}']")).await?;
    browser
        .until(name, &format!("made.length > {before}"))
        .await?;
    let text = browser.run("return made[made.length - 1];").await?;
    Ok(text.as_str().unwrap_or_default().to_owned())
}

/// Runs the command that the page names, with the options that name a file taking that of this folder, and holds each file
/// of the page against what is written there; gives their names.
pub(crate) async fn files_as_written(
    browser: &Browser,
    made: &Path,
    beside: &[(&str, &Path)],
) -> Result<Vec<String>, Box<dyn std::error::Error + Send + Sync>> {
    let mut words = words_of(&text(browser, "#l-good code").await?);
    assert_eq!(words[..3], ["slipbark", "plan", "trees.csv"]);
    let sample = Path::new(env!("CARGO_MANIFEST_DIR")).join("../content/sample/trees.csv");
    words[2] = sample.display().to_string();
    for (option, value) in [("--out", made)].iter().chain(beside) {
        let at = words.iter().position(|word| word == option);
        words[at.expect(option) + 1] = value.display().to_string();
    }
    on_the_command_line(&words[1..]);
    let names = browser
        .run("return [...document.querySelectorAll('#l-files button[data-kind]')].map((it) => it.dataset.kind);")
        .await?;
    let mut names: Vec<String> = serde_json::from_value(names)?;
    names.retain(|name| name != "plan-before.json");
    let mut written: Vec<String> = std::fs::read_dir(made)?
        .map(|entry| Ok(entry?.file_name().to_string_lossy().into_owned()))
        .collect::<std::io::Result<_>>()?;
    written.sort();
    let mut offered = names.clone();
    offered.sort();
    assert_eq!(offered, written, "the page offers what the program writes");
    for name in &names {
        let page = saved(browser, name).await?;
        let program = std::fs::read_to_string(made.join(name))?;
        let program = program.strip_prefix('\u{feff}').unwrap_or(&program);
        assert!(
            page == program,
            "{name} differs: {} and {} bytes",
            page.len(),
            program.len()
        );
    }
    Ok(names)
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn the_files_of_the_page_are_those_of_the_command_line_to_the_byte() {
    let site = Server::of_the_site();
    in_browser(async move |browser| {
        open(&browser, &site, "").await?;
        open_sample(&browser).await?;
        // What the trees of a part could hit, and what a species' rule leaves open, is said once.
        browser
            .run(
                "document.querySelector('#area-hit input[name=u0][value=none]').click();
                 document.querySelector('#area-hit input[name=c0][value=yes]')?.click();
                 document.getElementById('by').value = 'A. Alder';
                 window.before = document.querySelector('#area-season form');",
            )
            .await?;
        click(&browser, "#area-hit button[type=submit]").await?;
        browser
            .until(
                "what was said",
                "document.querySelector('#area-season form') !== window.before",
            )
            .await?;
        plan(&browser).await?;
        let made = folder("plan-of-the-page");
        let names = files_as_written(&browser, &made, &[]).await?;
        for name in &names {
            let page = std::fs::read_to_string(made.join(name))?;
            let page = page.as_str();
            assert!(page.len() > 100, "{name}");
            if name == "plan.json" {
                let plan: Value = serde_json::from_str(page)?;
                let units = plan["units"].as_array().expect("units");
                let said = units.iter().filter(|it| it["said_by"] == "A. Alder");
                assert_eq!(
                    said.count(),
                    1,
                    "one part was said to have nothing in reach"
                );
            }
        }
        browser.expect_quiet().await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_list_asks_of_its_columns_first_and_takes_what_is_typed_in_place_of_a_cell() {
    let site = Server::of_the_site();
    // Invented: girths in a column that is called diameter, a word for a number, no size, and a tree that is not ours.
    let mut list = "Tag,Species,DBH,Unit,Target\n".to_owned();
    for tag in 1..=40 {
        let size = match tag {
            7 => "ninety".to_owned(),
            9 => String::new(),
            tag => (80 + tag).to_string(),
        };
        let species = if tag == 12 { "Zelkova" } else { "Norway maple" };
        list += &format!("{tag},{species},{size},Hedge,none\n");
    }
    in_browser(async move |browser| {
        open(&browser, &site, "").await?;
        open_file(&browser, "dirty.csv", &json!(list).to_string()).await?;
        browser
            .until(
                "the question",
                "document.querySelector('#area-columns input[value=girth]')",
            )
            .await?;
        expect_no_violations(&browser, "a question about a column").await?;
        // Nothing is read while a column asks, and nothing is picked for anybody.
        assert_eq!(
            browser.run("return [document.querySelectorAll('#area-columns :checked').length, document.getElementById('area-season').childElementCount];").await?,
            json!([0, 0])
        );
        click(&browser, "#area-columns input[value=girth]").await?;
        click(&browser, "#area-columns button[type=submit]").await?;
        browser
            .until("the list", "document.querySelector('#area-fix form')")
            .await?;
        assert_eq!(
            numbers(&text(&browser, "#area-list .lede").await?),
            [40, 37, 3]
        );
        expect_no_violations(&browser, "trees to fix").await?;
        // What is typed for another row and not sent stays while one is fixed.
        let fix = "[data-row='8'][data-column='2']";
        let other = "[data-row='10'][data-column='2']";
        browser
            .run(&format!(
                "document.querySelector(\"#area-fix {other} input\").value = '91';
                 document.querySelector(\"#area-fix {fix} input\").value = '88';"
            ))
            .await?;
        click(&browser, &format!("#area-fix {fix} button")).await?;
        browser
            .until(
                "the fix",
                "document.querySelector('#area-list .lede').textContent.includes('38 ready')",
            )
            .await?;
        assert_eq!(
            browser
                .run(&format!(
                    "return document.querySelector(\"#area-fix {other} input\").value;"
                ))
                .await?,
            "91"
        );
        // A name is decided once for all its rows.
        click(&browser, "#area-fix [data-as='unknown broadleaf']").await?;
        browser
            .until(
                "the name",
                "document.querySelector('#area-list .lede').textContent.includes('39 ready')",
            )
            .await?;
        browser
            .run("document.getElementById('region').value = 'US-MA';")
            .await?;
        click(&browser, "#area-season button[type=submit]").await?;
        browser
            .until("the plan", "document.getElementById('l-sentence')")
            .await?;
        click(&browser, "button[data-kind='plan.json']").await?;
        browser.until("plan.json", "made.length === 1").await?;
        let plan = browser.run("return made[0];").await?;
        let plan: Value = serde_json::from_str(plan.as_str().unwrap_or_default())?;
        assert_eq!(
            plan["edits"],
            json!([{ "row": 8, "column": "DBH", "was": "ninety", "is": "88" }])
        );
        assert_eq!(
            (&plan["counts"]["ready"], &plan["counts"]["to_fix"]),
            (&json!(39), &json!(1))
        );
        // What is no list is said, and replaces nothing.
        open_file(
            &browser,
            "picture.png",
            "new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0, 1, 2])",
        )
        .await?;
        browser
            .until(
                "what is wrong",
                "!document.getElementById('l-told').textContent.includes('saved')",
            )
            .await?;
        assert_eq!(
            numbers(&text(&browser, "#l-sentence").await?)[..3],
            [40, 39, 1]
        );
        browser.expect_quiet().await
    });
}

/// A list of so many rows, all different, as an expression for the page.
fn long_list(rows: usize) -> String {
    format!(
        "'Tag,Species,DBH (in),Lat,Lon,Target\\n' + Array.from({{ length: {rows} }}, (_, at) =>
           `${{at}},Norway maple,${{(4 + at / 2000).toFixed(4)}},${{(42 + at % 100 / 100).toFixed(2)}},-71.5,none`).join('\\n')"
    )
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_long_list_shows_its_progress_and_stops_when_told() {
    let site = Server::of_the_site();
    in_browser(async move |browser| {
        open(&browser, &site, "").await?;
        open_file(&browser, "long.csv", &long_list(20_000)).await?;
        browser
            .until("the progress", "!document.getElementById('l-progress').hidden && document.getElementById('l-what').textContent")
            .await?;
        // What was counted is there while the trees are still looked at, one after the other.
        browser
            .until("the counts", "document.querySelector('#area-list .lede')")
            .await?;
        assert_eq!(
            numbers(&text(&browser, "#area-list .lede").await?),
            [20_000, 20_000, 0]
        );
        let done = async || numbers(&text(&browser, "#l-what").await.unwrap_or_default());
        browser
            .until(
                "a number that grows",
                "document.getElementById('l-what').textContent.includes('/')",
            )
            .await?;
        let before = done().await;
        browser
            .until(
                "more that was done",
                &format!("(Number(document.getElementById('l-what').textContent.match(/\\d+/)?.[0] ?? 0) > {})", before[0]),
            )
            .await?;
        // A stop is heard between two slices.
        let heard = browser
            .run_until_done(
                "const began = performance.now(); document.getElementById('l-stop').click();
                 const look = () => document.getElementById('l-told').textContent.startsWith('Stopped') ? done(performance.now() - began) : setTimeout(look, 4); look();",
            )
            .await?;
        println!("a stop was heard after {heard} ms");
        assert!(heard.as_f64().is_some_and(|ms| ms < 900.0), "{heard}");
        assert_eq!(
            browser
                .run("return document.getElementById('l-progress').hidden;")
                .await?,
            true
        );
        // The page goes on with another list.
        planned_sample(&browser).await?;
        browser.expect_quiet().await
    });
}

#[test]
#[ignore = "prints times; run by hand, see the top of measured.rs"]
fn measured_on_the_page_of_a_list() {
    let site = Server::of_the_site();
    in_browser(async move |browser| {
        open(&browser, &site, "").await?;
        browser
            .run("window.long = []; new PerformanceObserver((list) => long.push(...list.getEntries().map((it) => Math.round(it.duration)))).observe({ type: 'longtask', buffered: true });")
            .await?;
        let timed = async |what: &str, act: &str, until: &str| -> Outcome {
            let script = format!(
                "const began = performance.now(); {act};
                 const look = () => ({until}) ? done(performance.now() - began) : setTimeout(look, 4); look();"
            );
            println!("{what}: {} ms", browser.run_until_done(&script).await?);
            Ok(())
        };
        // A reader looks at the page before the first press; what works on a list is fetched meanwhile.
        browser.run_until_done("setTimeout(done, 3000)").await?;
        timed(
            "open the sample, first call, 3 s after the page was there",
            "document.getElementById('l-sample').click()",
            "document.querySelector('#area-season input[name=days]')",
        )
        .await?;
        timed(
            "plan it",
            "document.querySelector('#area-season button[type=submit]').click()",
            "document.getElementById('l-sentence')",
        )
        .await?;
        timed("fix a cell", "const form = document.querySelector('#area-fix form[data-do=edit]'); form.querySelector('input').value = '14'; window.before = document.getElementById('l-sentence').textContent; form.querySelector('button').click()", "document.getElementById('l-sentence').textContent !== window.before").await?;
        println!(
            "tasks over 50 ms on the page, ms: {}",
            browser.run("return long;").await?
        );
        let text = long_list(20_000);
        let open = format!(
            "const files = new DataTransfer(); files.items.add(new File([{text}], 'long.csv')); const field = document.getElementById('l-open'); field.files = files.files; field.dispatchEvent(new Event('change', {{ bubbles: true }}))"
        );
        timed(
            "open 20,000 rows, all different",
            &open,
            "document.querySelector('#area-list .lede')?.textContent.startsWith('long')",
        )
        .await?;
        timed(
            "– and look at each tree",
            "",
            "document.querySelector('#area-season button[type=submit]')",
        )
        .await?;
        // Of 20,000 that may all be ringed a plan takes longer than a script may run.
        open_file(&browser, "shorter.csv", &long_list(5_000)).await?;
        browser
            .until(
                "the shorter list",
                "document.querySelector('#area-list .lede')?.textContent.startsWith('shorter') && document.querySelector('#area-season button[type=submit]')",
            )
            .await?;
        timed(
            "plan 5,000 of them",
            "document.querySelector('#area-season button[type=submit]').click()",
            "document.getElementById('l-sentence')",
        )
        .await?;
        println!(
            "tasks over 50 ms on the page, ms: {}",
            browser.run("return long;").await?
        );
        Ok(())
    });
}
