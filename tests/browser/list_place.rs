//! A list whose rows tell no place: which work days are picked before and after somebody says where it is.

use crate::Outcome;
use crate::browser::{Browser, in_browser};
use crate::property_page::{click, numbers, open_file, text};
use crate::site::Server;
use serde_json::Value;

/// Ten maples that can be ringed, without coordinates.
const LIST: &str = "'Tag,Species,DBH (in),Target\\n' + Array.from({ length: 10 }, (_, at) => `${at + 1},Norway maple,${at + 6},none`).join('\\n')";

/// Days that are offered, or those of them that are picked.
async fn days(
    browser: &Browser,
    picked: bool,
) -> Result<Vec<String>, Box<dyn std::error::Error + Send + Sync>> {
    let which = if picked { ":checked" } else { "" };
    let script = format!(
        "return [...document.querySelectorAll('#area-season input[name=days]{which}')].map((it) => it.value);"
    );
    Ok(serde_json::from_value::<Vec<String>>(
        browser.run(&script).await?,
    )?)
}

async fn say_place(browser: &Browser, place: &str, region: &str) -> Outcome {
    let script = format!(
        "document.querySelector('#area-season [name=place]').value = '{place}';
         document.querySelector('#area-season [name=region]').value = '{region}';
         document.getElementById('l-sentence')?.setAttribute('data-before', '');"
    );
    browser.run(&script).await?;
    click(browser, "#area-season button[type=submit]").await?;
    browser
        .until(
            "the plan, drawn anew",
            "document.querySelector('#l-sentence:not([data-before])')",
        )
        .await
}

/// Trees that are planned: the fourth number of the sentence.
async fn planned(browser: &Browser) -> Result<u64, Box<dyn std::error::Error + Send + Sync>> {
    Ok(numbers(&text(browser, "#l-sentence").await?)[3])
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn work_days_that_nobody_picked_follow_the_place_and_others_stay() {
    let site = Server::of_the_site();
    in_browser(async move |browser| {
        browser
            .open(&format!("{}list/?today=2027-01-10", site.address))
            .await?;
        open_file(&browser, "ten.csv", LIST).await?;
        browser
            .until(
                "the fields",
                "document.querySelector('#area-season input[name=days]')",
            )
            .await?;
        // Nobody has said where: the middle of the weeks that are offered, since their ends are some other place's.
        let (all, first) = (days(&browser, false).await?, days(&browser, true).await?);
        assert!(all.len() > first.len() + 2, "{all:?}");
        assert!(
            first[0] > all[0] && first[first.len() - 1] < all[all.len() - 1],
            "{first:?} of {all:?}"
        );
        // Place and state are asked before the days that follow from them.
        let order = "const at = (css) => document.querySelector(`#area-season ${css}`);
            return at('[name=region]').compareDocumentPosition(at('[name=days]')) & Node.DOCUMENT_POSITION_FOLLOWING;";
        assert_eq!(browser.run(order).await?, Value::from(4));
        // North-east Maine: its own weeks are offered and picked, and the plan is made in one press.
        say_place(&browser, "46.9, -68.0, 190 m", "US-ME").await?;
        assert_eq!(planned(&browser).await?, 10);
        let there = days(&browser, true).await?;
        assert!(!there.is_empty() && there[0] > first[0], "{there:?}");
        let line = text(&browser, "#l-season summary").await?;
        assert!(line.starts_with("Who and when? 4 people, "), "{line}");
        // Florida's come earlier.
        say_place(&browser, "29.7, -82.3, 50 m", "US-FL").await?;
        let south = days(&browser, true).await?;
        assert!(south[0] < there[0], "{south:?}, {there:?}");
        // What somebody picked stays picked, wherever it is.
        click(&browser, "#area-season input[name=days]:not(:checked)").await?;
        let own = days(&browser, true).await?;
        say_place(&browser, "46.9, -68.0, 190 m", "US-ME").await?;
        let sentence = text(&browser, "#l-sentence").await?;
        assert!(
            sentence.contains(&format!("× {} days", own.len())),
            "{sentence}"
        );
        browser.expect_quiet().await
    });
}
