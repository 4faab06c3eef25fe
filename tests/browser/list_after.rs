//! After the work, on the page for lists: a table of what was found at visits, and land of parts, move the plan on as on the
//! command line, and come back with the draft.

use crate::Outcome;
use crate::browser::{Browser, in_browser};
use crate::property_page::{click, files_as_written, open, planned_sample, saved, text};
use crate::rules::expect_no_violations;
use crate::site::{Server, folder};
use serde_json::{Value, json};

/// Opens a table of visits beside the list, in its own fold.
async fn open_visits(browser: &Browser, name: &str, table: &str) -> Outcome {
    let script = format!(
        "const files = new DataTransfer(); files.items.add(new File([{}], '{name}'));
         const field = document.getElementById('l-found-open'); field.closest('details').open = true;
         field.files = files.files; field.dispatchEvent(new Event('change', {{ bubbles: true }}));",
        json!(table)
    );
    browser.run(&script).await?;
    Ok(())
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn what_was_found_and_how_much_land_there_is_move_the_plan_as_on_the_command_line() {
    let site = Server::of_the_site();
    in_browser(async move |browser| {
        open(&browser, &site, "").await?;
        planned_sample(&browser).await?;
        // The tags of the plan come with a table to be filled in.
        let empty = saved(&browser, "found.csv").await?;
        let tags: Vec<&str> = empty
            .lines()
            .skip(1)
            .filter_map(|line| line.split(',').next())
            .take(20)
            .collect();
        assert_eq!(tags.len(), 20, "{empty}");
        let header = empty.lines().next().unwrap_or_default();
        let half = "tree_id,found\nHB-001,dead\n";
        open_visits(&browser, "half.csv", half).await?;
        browser
            .until("what is wrong", "document.getElementById('l-found-wrong')")
            .await?;
        let wrong = text(&browser, "#l-found-wrong").await?;
        assert!(wrong.contains("visited_on"), "{wrong}");
        let mut table = format!("{header}\n");
        for tag in &tags {
            table += &format!("{tag},2026-05-16,,20,2,2026-05-16,4 in,\n");
        }
        for (tag, found) in tags
            .iter()
            .zip(["dead", "fallen", "bridge", "sprouts", "withered"])
        {
            table += &format!("{tag},2027-04-20,{found},,,,,\n");
        }
        open_visits(&browser, "found.csv", &table).await?;
        browser
            .until("what was found", "document.getElementById('l-found-fix')")
            .await?;
        let fix = text(&browser, "#l-found-fix").await?;
        assert!(fix.contains("Row 26, column C"), "{fix}");
        let told = text(&browser, "#l-found").await?;
        for says in [
            "found.csv: 4 visits",
            "cut the bridge out and scrape",
            "20, in 800 person-minutes",
        ] {
            assert!(told.contains(says), "{says}: {told}");
        }
        // Tree by tree, once that is opened.
        click(&browser, "#l-found-trees > summary").await?;
        browser
            .until(
                "the trees",
                "document.querySelectorAll('#t-found-trees tbody tr').length === 20",
            )
            .await?;
        let trees = text(&browser, "#t-found-trees").await?;
        for says in [
            "stands dead",
            "is down",
            "take the sprouts off",
            "is ringed",
        ] {
            assert!(trees.contains(says), "{says}: {trees}");
        }
        expect_no_violations(&browser, "list/, what was found").await?;
        click(&browser, "#l-found-trees > summary").await?;
        click(&browser, "#l-found [name=own-rate]").await?;
        click(&browser, "#l-found form button").await?;
        browser
            .until(
                "the crew's own rate",
                "document.querySelector('#l-good code').textContent.includes('--own-rate')",
            )
            .await?;
        // Land of a part: what is none is told beside its field, and what was typed stays.
        let part = "[...document.querySelectorAll('#l-stand fieldset')].find((it) => it.textContent.startsWith('Oak wood'))";
        let type_land = async |area: &str| -> Outcome {
            browser
                .run(&format!(
                    "const [land, crowns] = {part}.querySelectorAll('input'); land.value = '{area}'; crowns.value = '70%';
                     document.getElementById('land-floor').value = '60'; {part}.closest('form').requestSubmit();"
                ))
                .await?;
            Ok(())
        };
        browser
            .run("document.getElementById('l-stand').open = true;")
            .await?;
        type_land("12 miles").await?;
        browser
            .until(
                "the field",
                "document.querySelector('#l-stand [aria-invalid]')",
            )
            .await?;
        let wrong = text(&browser, "#l-land-wrong").await?;
        assert!(wrong.contains("12 miles"), "{wrong}");
        expect_no_violations(&browser, "list/, land that is none").await?;
        type_land("1500 m2").await?;
        browser
            .until(
                "the floor",
                "document.querySelector('#l-good code').textContent.includes('--floor')",
            )
            .await?;
        let crowns = text(&browser, "#l-stand").await?;
        assert!(crowns.contains("Oak wood: 70 % of the land"), "{crowns}");
        // The program is given what the page has: the table of visits, and the plan before.
        let beside = folder("beside-the-page");
        let (found, before) = (beside.join("found.csv"), beside.join("plan-before.json"));
        std::fs::write(&found, &table)?;
        std::fs::write(&before, saved(&browser, "plan-before.json").await?)?;
        let made = folder("plan-of-what-was-found");
        let files = [("--found", found.as_path()), ("--keep", before.as_path())];
        let names = files_as_written(&browser, &made, &files).await?;
        assert!(names.contains(&"standing.csv".to_owned()), "{names:?}");
        let plan: Value = serde_json::from_str(&std::fs::read_to_string(made.join("plan.json"))?)?;
        assert_eq!(plan["after"]["rate"]["used"], true);
        assert_eq!(plan["after"]["found"].as_array().map(Vec::len), Some(4));
        // A reload brings the draft back with what was found and typed.
        click(&browser, "#l-keep").await?;
        browser
            .until(
                "the draft",
                "document.getElementById('l-kept').textContent.includes('Draft kept')",
            )
            .await?;
        let told = text(&browser, "#l-found").await?;
        open(&browser, &site, "").await?;
        browser
            .until("the draft", "document.querySelector('#l-drafts button')")
            .await?;
        click(&browser, "#l-drafts button").await?;
        browser
            .until("the plan", "document.getElementById('l-sentence')")
            .await?;
        assert_eq!(text(&browser, "#l-found").await?, told);
        let command = text(&browser, "#l-good code").await?;
        for option in ["--own-rate", "--floor", "Oak wood=1500 m2"] {
            assert!(command.contains(option), "{option}: {command}");
        }
        browser.expect_quiet().await
    });
}
