//! A tree is asked about and answered in the page.

use crate::browser::in_browser;
use crate::calculator::ANSWER;
use crate::narrow::expect_no_sideways_scroll;
use crate::rules::expect_no_violations;
use crate::site::Server;
use fantoccini::key::Key;
use serde_json::json;

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn species_size_and_date_give_an_answer_in_any_colours_and_width() {
    let server = Server::of_the_site();
    in_browser(async move |browser| {
        let said = browser.open_an_answer(&server.address).await?;
        assert!(said.len() > 20, "{said}");
        assert_eq!(browser.outcome().await?, "do", "{said}");
        for theme in ["light", "dark", "sun"] {
            browser
                .run(&format!(
                    "document.documentElement.dataset.theme = '{theme}';"
                ))
                .await?;
            expect_no_violations(&browser, &format!("an answer in {theme}")).await?;
        }
        expect_no_sideways_scroll(&browser, "an answer").await?;
        browser.expect_quiet().await?;
        browser.expect_requests_only_to(&[&server.address]).await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_path_within_reach_stops_the_answer_and_shows_no_ring() {
    let server = Server::of_the_site();
    in_browser(async move |browser| {
        browser.open(&server.address).await?;
        browser.until_ready().await?;
        browser.fill_in_a_tree().await?;
        browser
            .press("#f-targets-0-kind option[value=nothing]")
            .await?;
        browser
            .press("[name='targets[0].kind'] option[value=path]")
            .await?;
        browser
            .type_into("[name='targets[0].distance']", "20")
            .await?;
        browser.show_the_answer().await?;
        assert_eq!(browser.outcome().await?, "professional");
        // Numbers for the professional may be folded away; nothing to carry out stands in sight.
        let seen = browser
            .run(
                "const region = document.querySelector('slipbark-tree-plan').shadowRoot.querySelector('.answer-region');
                 const seen = (css) => [...region.querySelectorAll(css)].filter((e) => e.checkVisibility()).length;
                 return [seen('.p-do'), seen('.card.do'), seen('.card.stop')];",
            )
            .await?;
        assert_eq!(seen, json!([0, 0, 1]), "a stop stands alone");
        for theme in ["light", "dark", "sun"] {
            browser
                .run(&format!(
                    "document.documentElement.dataset.theme = '{theme}';"
                ))
                .await?;
            expect_no_violations(&browser, &format!("a stop in {theme}")).await?;
        }
        expect_no_sideways_scroll(&browser, "a stop").await?;
        browser.expect_quiet().await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn the_keyboard_alone_leads_from_the_top_to_the_answer() {
    let server = Server::of_the_site();
    in_browser(async move |browser| {
        let space = ' ';
        browser.open(&server.address).await?;
        browser.until_ready().await?;
        browser.tab_to("#f-find").await?;
        browser.keys(&['a', 'i', 'l', 'a', 'n', 't', 'h']).await?;
        browser.tab_to("input[name=species]").await?;
        browser.keys(&[space]).await?;
        browser.tab_to("[name='stems[0].diameter']").await?;
        browser.keys(&['9']).await?;
        browser.tab_to("#f-targets-0-kind").await?;
        browser.keys(&['N', 'o', 't']).await?;
        browser.tab_to("button[type=submit]").await?;
        browser.keys(&[Key::Enter.into()]).await?;
        browser.until("the answer", ANSWER).await?;
        let state = browser
            .run(
                "const root = document.querySelector('slipbark-tree-plan').shadowRoot;
                 const status = root.querySelector('[role=status].vh:not(form *)').textContent;
                 return [root.activeElement?.matches('.say') ?? false, status.length > 0 && status.length <= 140];",
            )
            .await?;
        assert_eq!(
            state,
            json!([true, true]),
            "the focus is on the answer, and one sentence is spoken"
        );
        browser.expect_quiet().await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn problems_stand_together_lead_to_their_fields_and_keep_what_was_typed() {
    let server = Server::of_the_site();
    in_browser(async move |browser| {
        browser.open(&server.address).await?;
        browser.until_ready().await?;
        browser
            .type_into("[name='stems[0].diameter']", "ten-ish")
            .await?;
        browser.type_over("#f-day", "31 June 2027").await?;
        browser.press("button[type=submit]").await?;
        let root = "document.querySelector('slipbark-tree-plan').shadowRoot";
        browser
            .until(
                "the list of problems",
                &format!("{root}.querySelector('.errsum a')"),
            )
            .await?;
        let seen = browser
            .run(&format!(
                "const root = {root};
                 const summary = root.querySelector('.errsum');
                 const links = [...summary.querySelectorAll('a')];
                 return [root.activeElement === summary || summary.contains(root.activeElement), links.length >= 2,
                   links.every((link) => root.querySelector(link.getAttribute('href').replace(/[.[\\]]/g, '\\\\$&'))),
                   root.querySelector(`[name='stems[0].diameter']`).value];"
            ))
            .await?;
        assert_eq!(seen, json!([true, true, true, "ten-ish"]));
        browser.press(".errsum a").await?;
        let focused = browser.run(&format!("return Boolean({root}.activeElement?.matches('input, select, fieldset, [tabindex]'));")).await?;
        assert_eq!(focused, true, "a problem's link leads into its field");
        expect_no_violations(&browser, "problems").await?;
        expect_no_sideways_scroll(&browser, "problems").await?;
        browser.expect_quiet().await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_change_after_the_answer_changes_the_answer_and_moves_no_focus() {
    let server = Server::of_the_site();
    in_browser(async move |browser| {
        browser.open_an_answer(&server.address).await?;
        let dbh = "return document.querySelector('slipbark-tree-plan').result?.stems[0].dbh_mm;";
        // 14.5 in × 25.4 mm/in, exact by definition of the inch.
        let typed = browser.run(dbh).await?.as_f64();
        assert!(
            typed.is_some_and(|mm| (mm - 368.3).abs() < 1e-9),
            "{typed:?}"
        );
        browser.press("[name='stems[0].diameter']").await?;
        browser
            .type_into(
                "[name='stems[0].diameter']",
                "\u{e010}\u{e003}\u{e003}\u{e003}\u{e003}\u{e003}\u{e003}9",
            )
            .await?;
        // Leaving the field is the change; where the focus goes then is the reader's doing.
        browser.keys(&[Key::Tab.into()]).await?;
        let focus = "return document.querySelector('slipbark-tree-plan').shadowRoot.activeElement?.getAttribute('name') ?? null;";
        let before = browser.run(focus).await?;
        let changed = "Math.abs((document.querySelector('slipbark-tree-plan').result?.stems[0].dbh_mm ?? 0) - 228.6) < 1e-9";
        browser.until("the answer for 9 in", changed).await?;
        assert_eq!(browser.run(focus).await?, before);
        browser.expect_quiet().await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn the_climate_is_fetched_once_a_point_is_named_and_not_before() {
    let server = Server::of_the_site();
    in_browser(async move |browser| {
        browser.open_an_answer(&server.address).await?;
        let fetched = "performance.getEntriesByType('resource').filter((entry) => entry.name.includes('climate.')).length";
        assert_eq!(browser.run(&format!("return {fetched};")).await?, 0);
        browser.type_the_point_of_boston().await?;
        let known =
            "document.querySelector('slipbark-tree-plan').result?.asked_probability != null";
        browser
            .until("an answer from the climate there", known)
            .await?;
        let missing = browser
            .run("return document.querySelector('slipbark-tree-plan').result.timing.table_missing;")
            .await?;
        assert_eq!(missing, false);
        assert_eq!(browser.run(&format!("return {fetched};")).await?, 1);
        browser.expect_quiet().await?;
        browser.expect_requests_only_to(&[&server.address]).await
    });
}

/// The calculator with a question in it, its button, and what the press does: whether its region is busy, the parts in it, and
/// whether anything under the calculator stands in sight.
const PRESSED: &str = "
    const calculator = document.querySelector('slipbark-tree-plan'), root = calculator.shadowRoot;
    calculator.inputs = { version: 1, species: 'Norway maple', stems: [{ diameter: '14 1/2 in' }], date: '2027-06-12', none_in_reach: true, line_within_reach: 'no' };
    const press = () => root.querySelector('button[type=submit]').click();
    const region = () => root.querySelector('.answer-region');
    const stands = () => [region().ariaBusy, region().children.length > 1, root.activeElement === root.querySelector('.say'),
      document.querySelector('footer').getBoundingClientRect().top < innerHeight];
    let told = 0;
    calculator.addEventListener('slipbark-result', () => { told += 1; });";

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn the_card_is_painted_before_the_rest_which_moves_nothing_in_sight() {
    let server = Server::of_the_site();
    in_browser(async move |browser| {
        for (width, height) in [(390, 844), (1280, 1000)] {
            browser.window(width, height).await?;
            browser.open(&server.address).await?;
            browser.until_ready().await?;
            let seen = browser
                .run_until_done(&format!(
                    "{PRESSED}
                     press();
                     const card = root.querySelector('.card'), top = card.getBoundingClientRect().top;
                     const first = [...stands(), told];
                     calculator.addEventListener('slipbark-result', () => requestAnimationFrame(() => setTimeout(() =>
                       done([first, [...stands(), told], card === root.querySelector('.card'), card.getBoundingClientRect().top - top]))));"
                ))
                .await?;
            let first = json!(["true", false, true, false, 0]);
            let then = json!([null, true, true, false, 1]);
            assert_eq!(seen, json!([first, then, true, 0]), "at {width}");
        }
        // Who reads the answer by script, or goes on at once, has it whole.
        let at_once = browser
            .run(&format!(
                "{PRESSED}
                 calculator.reset();
                 calculator.inputs = {{ version: 1, species: 'Norway maple', stems: [{{ diameter: '9 in' }}], date: '2027-06-12', none_in_reach: true, line_within_reach: 'no' }};
                 press();
                 const busy = region().ariaBusy;
                 root.querySelector('.say').dispatchEvent(new KeyboardEvent('keydown', {{ key: 'Shift', bubbles: true }}));
                 const keyed = [region().ariaBusy, region().children.length > 1, told];
                 press();
                 calculator.compute();
                 return [busy, keyed, region().ariaBusy, region().children.length > 1];"
            ))
            .await?;
        assert_eq!(at_once, json!(["true", [null, true, 1], null, true]));
        browser.expect_quiet().await
    });
}
