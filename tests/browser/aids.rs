//! The small aids on the page: a height measured from the ground, timed trees kept and as a file, a visit.

use crate::Outcome;
use crate::browser::{Browser, in_browser};
use crate::site::Server;
use serde_json::Value;

type Failure = Box<dyn std::error::Error + Send + Sync>;

const ROOT: &str = "document.querySelector('slipbark-tree-plan').shadowRoot";
const CALCULATOR: &str = "document.querySelector('slipbark-tree-plan')";

async fn text(browser: &Browser, id: &str) -> Result<String, Failure> {
    let said = browser
        .run(&format!(
            "return {ROOT}.getElementById('{id}').textContent;"
        ))
        .await?;
    Ok(said.as_str().unwrap_or_default().to_owned())
}

async fn value(browser: &Browser, id: &str) -> Result<Value, Failure> {
    Ok(browser
        .run(&format!("return {ROOT}.getElementById('{id}').value;"))
        .await?)
}

/// Types in place of what stands in a field, and leaves it.
async fn retype(browser: &Browser, id: &str, text: &str) -> Outcome {
    browser
        .run(&format!("{ROOT}.getElementById('{id}').value = '';"))
        .await?;
    browser.type_into(&format!("#{id}"), text).await?;
    browser
        .run(&format!("{ROOT}.activeElement.blur();"))
        .await?;
    Ok(())
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn readings_fill_the_height_in_and_what_can_t_be_says_why() {
    let server = Server::of_the_site();
    in_browser(async move |browser| {
        browser.open(&server.address).await?;
        browser.until_ready().await?;
        browser.fill_in_a_tree().await?;
        browser
            .press("details:not(.more, .asked, .give):has(#f-height-aid-by) > summary")
            .await?;
        browser
            .press("#f-height-aid-by option[value=angles]")
            .await?;
        browser.type_into("#f-height-aid-distance", "60").await?;
        browser.type_into("#f-height-aid-top", "5").await?;
        browser.type_into("#f-height-aid-foot", "40").await?;
        browser.press("[data-act=aid]").await?;
        assert!(
            text(&browser, "aid-a")
                .await?
                .contains("must be above the foot")
        );
        assert_eq!(
            value(&browser, "f-height").await?,
            "",
            "nothing is filled in"
        );
        let at = format!("return {ROOT}.activeElement.id;");
        assert_eq!(browser.run(&at).await?, "f-height-aid-top");
        retype(&browser, "f-height-aid-top", "40").await?;
        retype(&browser, "f-height-aid-foot", "-4").await?;
        browser.press("[data-act=aid]").await?;
        assert_eq!(value(&browser, "f-height").await?, "54.5");
        assert_eq!(browser.run(&at).await?, "f-height");
        assert!(
            text(&browser, "height-a")
                .await?
                .starts_with("As measured by a distance")
        );
        browser.show_the_answer().await?;
        let told = format!("return {ROOT}.querySelector('.p-work').textContent;");
        let told = browser.run(&told).await?;
        assert!(
            told.as_str()
                .is_some_and(|it| it.contains("by a distance and two angles"))
        );
        // Changed by hand it is the reader's own; the readings stay.
        retype(&browser, "f-height", "60").await?;
        assert_eq!(text(&browser, "height-a").await?, "You told it.");
        assert_eq!(value(&browser, "f-height-aid-top").await?, "40");
        browser.expect_quiet().await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn timed_trees_change_the_minutes_and_are_kept_only_when_asked() {
    let server = Server::of_the_site();
    in_browser(async move |browser| {
        browser.open(&server.address).await?;
        browser.until_ready().await?;
        browser.fill_in_a_tree().await?;
        browser.show_the_answer().await?;
        let likely = format!("return {CALCULATOR}.result.effort.likely_min;");
        let before = browser.run(&likely).await?.as_f64().expect("minutes");
        browser.press(".more > summary").await?;
        browser.press("#m-timed summary").await?;
        browser.type_into("#f-timed-trees", "12").await?;
        retype(&browser, "f-timed-minutes", "9").await?;
        assert!(
            text(&browser, "timed-a")
                .await?
                .starts_with("Can't tell yet from one tree")
        );
        retype(&browser, "f-timed-minutes", "0").await?;
        assert!(
            text(&browser, "timed-a")
                .await?
                .contains("must be more than 0")
        );
        // Each on its own line, as a reader types them.
        let lines = format!(
            "const area = {ROOT}.getElementById('f-timed-trees'); area.value = '12\\n9 1/2\\n14';
             area.dispatchEvent(new Event('input', {{ bubbles: true }}));
             area.dispatchEvent(new Event('change', {{ bubbles: true }}));"
        );
        browser.run(&lines).await?;
        retype(&browser, "f-timed-minutes", "60").await?;
        let own = format!("{CALCULATOR}.result?.effort?.own?.timed?.[1] === 60");
        browser.until("the minutes of their own rate", &own).await?;
        let after = browser.run(&likely).await?.as_f64().expect("minutes");
        assert!(after > before * 1.5, "{before} and then {after}");
        let kept = "return localStorage.getItem('slipbark-timed-trees');";
        assert_eq!(
            browser.run(kept).await?,
            Value::Null,
            "nothing before it is asked"
        );
        browser.press("[data-act=keep-timed]").await?;
        assert_eq!(
            browser.run(kept).await?,
            "slipbark timed trees,1\r\ntree,12 in\r\ntree,9 1/2 in\r\ntree,14 in\r\nminutes,60\r\n"
        );
        // No draft was asked for; the timed trees stay.
        assert_eq!(browser.run("return localStorage.length;").await?, 1);
        browser.client.refresh().await?;
        browser.until_ready().await?;
        assert_eq!(
            value(&browser, "f-timed-trees").await?,
            "12 in\n9 1/2 in\n14 in"
        );
        browser.press(".more > summary").await?;
        browser.press("[data-act=forget-timed]").await?;
        assert_eq!(browser.run(kept).await?, Value::Null);
        assert!(
            text(&browser, "timed-a")
                .await?
                .starts_with("No longer kept")
        );
        // A file is opened into the same fields; another one says what it should be.
        let open = |content: &str| {
            format!(
                "const field = {ROOT}.getElementById('f-timed-file'); const list = new DataTransfer();
                 list.items.add(new File(['{content}'], 'trees.csv')); field.files = list.files;
                 field.dispatchEvent(new Event('change', {{ bubbles: true }}));"
            )
        };
        browser.run(&open("date,low,high")).await?;
        let other =
            format!("{ROOT}.getElementById('timed-a').textContent.startsWith('That is no file')");
        browser.until("the message", &other).await?;
        browser
            .run(&open(
                "slipbark timed trees,1\\r\\ntree,30 cm\\r\\ntree,25 cm\\r\\nminutes,15",
            ))
            .await?;
        let filled = format!("{ROOT}.getElementById('f-timed-trees').value === '30 cm\\n25 cm'");
        browser.until("the trees of the file", &filled).await?;
        assert_eq!(value(&browser, "f-timed-minutes").await?, "15");
        browser.expect_quiet().await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn what_is_seen_at_a_visit_gets_advice_by_keyboard_and_keeps_the_focus() {
    let server = Server::of_the_site();
    in_browser(async move |browser| {
        browser.open(&server.address).await?;
        browser.until_ready().await?;
        browser.fill_in_a_tree().await?;
        // A day to ring on, whatever today is.
        let ring = format!(
            "const calculator = {CALCULATOR}; calculator.inputs = {{ version: 1, species: 'Norway maple', stems: [{{ diameter: '12' }}],
             date: '2027-06-12', none_in_reach: true }}; calculator.compute();"
        );
        browser.run(&ring).await?;
        browser.press(".p-check > summary").await?;
        browser
            .press(".p-check details:has(#f-visit-at) > summary")
            .await?;
        browser
            .press("[name='visit.crown'][value=crown_bare]")
            .await?;
        let said = format!(
            "{ROOT}.getElementById('p-visit-a')?.textContent.includes('The visit is before the ring.')"
        );
        browser
            .until("that today is before the ring", &said)
            .await?;
        browser.press("#f-visit-at option[value='5']").await?;
        let said = format!(
            "{ROOT}.getElementById('p-visit-a').textContent.includes('dead above the ring')"
        );
        browser.until("the advice", &said).await?;
        let at = format!("return {ROOT}.activeElement?.id;");
        assert_eq!(browser.run(&at).await?, "f-visit-at");
        browser.press("[name='visit.seen'][value=sprouts]").await?;
        let said = format!(
            "{ROOT}.getElementById('p-visit-a').textContent.includes('take the sprouts off')"
        );
        browser.until("both", &said).await?;
        let open = format!("return {ROOT}.querySelector('details:has(#f-visit-at)').open;");
        assert_eq!(browser.run(&open).await?, true);
        let heard = format!("return {ROOT}.querySelector('.sb > [role=status]').textContent;");
        let heard = browser.run(&heard).await?;
        assert!(
            heard
                .as_str()
                .is_some_and(|it| it.starts_with("At this visit:")),
            "{heard}"
        );
        let visit = browser
            .run(&format!("return {CALCULATOR}.inputs.visit;"))
            .await?;
        assert_eq!(visit["at"], "5");
        // A form that can't be read takes the answer away; what was seen comes back with the next one.
        retype(&browser, "f-stems-0-diameter", "wide").await?;
        browser
            .until(
                "no answer",
                &format!("!{ROOT}.getElementById('f-visit-at')"),
            )
            .await?;
        retype(&browser, "f-stems-0-diameter", "12").await?;
        browser.until("the advice again", &said).await?;
        browser.expect_quiet().await
    });
}

/// Everything that folds is open, in the form and in the answer: no rule is broken, nothing scrolls sideways, and
/// what is pressed is 44 pixels high.
#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn unfolded_the_aids_keep_the_rules_and_fit_280_pixels() {
    let server = Server::of_the_site();
    in_browser(async move |browser| {
        browser.open(&server.address).await?;
        browser.until_ready().await?;
        let open = format!(
            "const calculator = {CALCULATOR}; calculator.inputs = {{ version: 1, species: 'Norway maple', stems: [{{ diameter: '12' }}],
             date: '2027-06-12', region: 'US-VT', none_in_reach: true,
             height_aid: {{ by: 'angles', distance: '60', top: '40', foot: '-4' }},
             timed: {{ trees: ['12', '14'], minutes: '20' }}, visit: {{ at: '3', seen: ['sprouts'] }} }}; calculator.compute();
             for (const fold of {ROOT}.querySelectorAll('details')) fold.open = true;"
        );
        browser.run(&open).await?;
        crate::narrow::expect_no_sideways_scroll(&browser, "unfolded").await?;
        browser.width(280).await?;
        let low = format!(
            "return [...{ROOT}.querySelectorAll('#f-visit-at, [name^=visit], [name^=timed], [name^=height_aid], [data-act$=timed], [data-act=aid]')]
               .map((control) => control.closest('label') ?? control).filter((control) => control.offsetParent)
               .map((control) => [control.textContent.slice(0, 30), control.getBoundingClientRect().height])
               .filter(([, height]) => height < 44);"
        );
        assert_eq!(browser.run(&low).await?, serde_json::json!([]));
        for theme in ["light", "dark", "sun"] {
            browser
                .run(&format!(
                    "document.documentElement.dataset.theme = '{theme}';"
                ))
                .await?;
            crate::rules::expect_no_violations(&browser, theme).await?;
        }
        Ok(())
    });
}
