//! "Try another": the notch, the flag and the caliper under an answer, moved by keys, by pointer and by what is typed
//! beside them. The tree is invented: a Norway maple of 14½ in with a path at 180 ft, asked about for 12 June of a later
//! year, so that the checks hold on any day.

use crate::Outcome;
use crate::browser::{Browser, in_browser, in_firefox};
use crate::embed::host_with;
use crate::narrow::expect_no_sideways_scroll;
use crate::rules::expect_no_violations;
use crate::site::Server;
use fantoccini::actions::{InputSource as _, MouseActions, PointerAction};
use fantoccini::key::Key;
use serde_json::{Value, json};
use std::time::Duration;

/// What a script begins with: the calculator, and what stands in "Try another".
const LOOK: &str = "
    const calculator = document.querySelector('slipbark-tree-plan'), root = calculator.shadowRoot;
    const slider = (mark) => root.getElementById('try-' + mark);
    const field = (mark) => root.getElementById('try-' + mark + '-typed');
    const says = (mark) => slider(mark).getAttribute('aria-valuetext');
    const card = () => root.querySelector('.card').className;
    const changes = () => root.getElementById('try-now').textContent;
    const top = (mark) => Math.round(slider(mark).getBoundingClientRect().top);
    const frames = (then) => requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(then)));";

/// Runs a script's body that knows [`LOOK`].
async fn look(browser: &Browser, script: &str) -> Result<Value, fantoccini::error::CmdError> {
    browser.run(&format!("{LOOK} {script}")).await
}

/// Asks about the maple, and waits for the answer.
pub(crate) async fn ask(browser: &Browser) -> Outcome {
    look(
        browser,
        "const year = new Date().getFullYear() + 2;
         calculator.inputs = { version: 1, species: 'Norway maple', stems: [{ diameter: '14 1/2 in' }], date: year + '-06-12',
           region: 'US-MA', targets: [{ kind: 'path', distance: '180 ft' }], line_within_reach: 'no' };
         root.querySelector('button[type=submit]').click();",
    )
    .await?;
    browser
        .until(
            "the marks",
            "document.querySelector('slipbark-tree-plan').shadowRoot.getElementById('try-day')",
        )
        .await
}

/// Gives the focus to a slider, in the middle of the window.
async fn take(browser: &Browser, mark: &str) -> Outcome {
    look(
        browser,
        &format!("slider('{mark}').scrollIntoView({{ block: 'center' }}); slider('{mark}').focus({{ preventScroll: true }});"),
    )
    .await?;
    Ok(())
}

/// What a mark says and which card stands, two frames on; fails where the slider is no longer where it was.
async fn stands(
    browser: &Browser,
    mark: &str,
    top: &Value,
) -> Result<Value, Box<dyn std::error::Error + Send + Sync>> {
    let seen = browser
        .run_until_done(&format!(
            "{LOOK} frames(() => done([says('{mark}'), card(), top('{mark}')]));"
        ))
        .await?;
    // A window scrolls by whole pixels of the screen.
    let apart = seen[2].as_f64().unwrap_or(f64::NAN) - top.as_f64().unwrap_or(f64::NAN);
    assert!(
        apart.abs() <= 1.0,
        "{mark} stays where it is in the window, at {top}: {seen}"
    );
    Ok(json!([seen[0], seen[1]]))
}

async fn top(browser: &Browser, mark: &str) -> Result<Value, fantoccini::error::CmdError> {
    look(browser, &format!("return top('{mark}');")).await
}

/// Keys move each mark; the card and the line follow, the answer that was asked for stays.
async fn by_keys(browser: &Browser) -> Outcome {
    take(browser, "day").await?;
    let at = top(browser, "day").await?;
    let right = Key::Right.into();
    for (keys, says, card) in [
        (vec![right, right, right], "15 June, best", "card do"),
        (vec![Key::PageDown.into()], "8 June, best", "card do"),
        (vec![Key::Left.into()], "7 June, best", "card do"),
        (
            vec![Key::End.into()],
            "31 December, does not slip",
            "card wait",
        ),
        (
            vec![Key::Home.into()],
            "1 January, does not slip",
            "card wait",
        ),
        (
            vec![Key::PageUp.into()],
            "8 January, does not slip",
            "card wait",
        ),
    ] {
        browser.keys(&keys).await?;
        assert_eq!(stands(browser, "day", &at).await?, json!([says, card]));
    }
    let line = look(browser, "return [changes(), calculator.result.outcome];").await?;
    let text = line[0].as_str().unwrap_or_default();
    assert!(text.contains("Changed: day 12 June → 8 January."), "{text}");
    assert_eq!(line[1], "do", "what was asked still has its answer");
    // It is said once, when nothing moves any more.
    browser
        .until(
            "the sentence for those who listen",
            "document.querySelector('slipbark-tree-plan').shadowRoot.querySelector('[role=status].vh:not(form *)').textContent.includes('Wait until')",
        )
        .await?;
    take(browser, "far").await?;
    browser
        .keys(&[Key::PageDown.into(), Key::Left.into()])
        .await?;
    assert_eq!(
        look(browser, "return says('far');").await?,
        "169 feet, outside"
    );
    take(browser, "size").await?;
    browser.keys(&[Key::PageUp.into(), right]).await?;
    assert_eq!(
        look(browser, "return [says('size'), field('size').value];").await?,
        json!(["17 inches", "17 in"])
    );
    put_back(browser).await
}

/// The button puts all three back, and the focus on the first of them.
async fn put_back(browser: &Browser) -> Outcome {
    browser.press("[data-act=try-back]").await?;
    let seen = look(
        browser,
        "return [says('day'), says('far'), says('size'), card(), root.querySelectorAll('.grip.ghost').length, root.activeElement?.name,
           root.querySelector('.answer-region').dataset.tried ?? ''];",
    )
    .await?;
    assert_eq!(
        seen,
        json!([
            "12 June, best",
            "180 feet, outside",
            "14½ inches",
            "card do",
            0,
            "try.day",
            ""
        ])
    );
    Ok(())
}

/// A finger or a mouse takes the flag along; the card answers before it is let go.
async fn by_pointer(browser: &Browser) -> Outcome {
    take(browser, "far").await?;
    let at = top(browser, "far").await?;
    // The tape holds 250 ft; the slider is half a thumb, 22 px, wider on each side.
    let place = look(
        browser,
        "const box = slider('far').getBoundingClientRect(), wide = box.width - 44;
         return [180, 140, 100, 40].map((ft) => [Math.round(box.left + 22 + wide * ft / 250), Math.round(box.top + 22)]);",
    )
    .await?;
    let [x, y] =
        [0, 1].map(|it| move |n: usize, place: &Value| place[n][it].as_i64().unwrap_or(-1));
    let to = |n: usize| PointerAction::MoveTo {
        duration: Some(Duration::from_millis(30)),
        x: x(n, &place) as f64,
        y: y(n, &place) as f64,
    };
    // What stands one frame after each move is written down.
    look(
        browser,
        "window.moves = [];
         slider('far').addEventListener('input', () => frames(() => moves.push([says('far'), card(), top('far')])));",
    )
    .await?;
    let button = fantoccini::actions::MOUSE_BUTTON_LEFT;
    let rest = || PointerAction::Pause {
        duration: Duration::from_millis(150),
    };
    let drag = MouseActions::new("mouse".into())
        .then(to(0))
        .then(PointerAction::Down { button })
        .then(to(1))
        .then(rest())
        .then(to(2))
        .then(rest())
        .then(to(3))
        .then(rest())
        .then(PointerAction::Up { button });
    browser.client.perform_actions(drag).await?;
    let seen = stands(browser, "far", &at).await?;
    let feet = |seen: &Value| {
        seen[0]
            .as_str()
            .and_then(|text| text.split(' ').next()?.parse::<f64>().ok())
    };
    assert!(
        feet(&seen).is_some_and(|ft| (38.0..=42.0).contains(&ft)),
        "{seen}"
    );
    let moves = browser.run("return moves;").await?;
    let moves = moves.as_array().map(Vec::as_slice).unwrap_or_default();
    let cards: Vec<&Value> = moves.iter().map(|it| &it[1]).collect();
    assert!(
        cards.contains(&&json!("card do")) && cards.contains(&&json!("card stop")),
        "the card answers on the way: {moves:?}"
    );
    for it in moves {
        let apart = it[2].as_f64().unwrap_or(f64::NAN) - at.as_f64().unwrap_or(f64::NAN);
        assert!(
            apart.abs() <= 1.0,
            "the slider stays under the hand: {moves:?}"
        );
    }
    // Nothing of the work is in sight under a stop, and its place is kept.
    let seen = look(
        browser,
        "const seen = (css) => [...root.querySelectorAll(css)].filter((e) => e.checkVisibility({ visibilityProperty: true })).length;
         return [card(), seen('.p-do'), seen('.folds'), seen('.p-try'), root.querySelector('.p-do').offsetHeight > 0, changes().includes('path 180 →')];",
    )
    .await?;
    assert_eq!(seen, json!(["card stop", 0, 0, 1, true, true]));
    Ok(())
}

/// What is typed beside a mark moves it and stays as it was typed; what can't be read is said there.
async fn by_typing(browser: &Browser) -> Outcome {
    let type_beside = async |mark: &str, text: &str| -> Outcome {
        look(
            browser,
            &format!("field('{mark}').focus(); field('{mark}').select();"),
        )
        .await?;
        browser.keys(&text.chars().collect::<Vec<_>>()).await
    };
    type_beside("size", "16").await?;
    assert_eq!(
        look(browser, "return [says('size'), field('size').value, changes().includes('trunk 14½ → 16 in; ring 14½ → 16 in')];").await?,
        json!(["16 inches", "16", true])
    );
    type_beside("far", "900 ft").await?;
    browser.keys(&[Key::Tab.into()]).await?;
    assert_eq!(
        look(browser, "return [says('far'), slider('far').value, slider('far').max, field('far').value, field('size').value];").await?,
        json!(["900 feet, outside", "250", "250", "900 ft", "16"])
    );
    type_beside("far", "ten-ish").await?;
    browser.keys(&[Key::Tab.into()]).await?;
    let seen = look(
        browser,
        "const said = root.getElementById('try-far-said');
         return [field('far').value, field('far').getAttribute('aria-invalid'), said.checkVisibility() && said.textContent.length > 10,
           field('far').getAttribute('aria-describedby'), says('size')];",
    )
    .await?;
    assert_eq!(
        seen,
        json!(["ten-ish", "true", true, "try-far-said", "16 inches"])
    );
    // The other marks still move, and leave alone what was typed there.
    take(browser, "day").await?;
    browser.keys(&[Key::Right.into()]).await?;
    assert_eq!(
        look(browser, "return [says('day'), field('far').value];").await?,
        json!(["13 June, best", "ten-ish"])
    );
    put_back(browser).await?;
    let seen = look(browser, "return [field('far').value, field('far').hasAttribute('aria-invalid'), root.getElementById('try-far-said').hidden];").await?;
    assert_eq!(seen, json!(["180 ft", false, true]));
    Ok(())
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn marks_move_by_keys_by_pointer_and_by_typing_and_the_answer_follows() {
    let server = Server::of_the_site();
    in_browser(async move |browser| {
        browser.open(&server.address).await?;
        browser.until_ready().await?;
        ask(&browser).await?;
        by_keys(&browser).await?;
        by_typing(&browser).await?;
        by_pointer(&browser).await?;
        for theme in ["light", "dark", "sun"] {
            browser
                .run(&format!(
                    "document.documentElement.dataset.theme = '{theme}';"
                ))
                .await?;
            expect_no_violations(&browser, &format!("marks that were moved, in {theme}")).await?;
        }
        expect_no_sideways_scroll(&browser, "marks that were moved").await?;
        browser.expect_quiet().await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn what_was_tried_goes_into_the_form_when_it_is_used_and_not_before() {
    let server = Server::of_the_site();
    in_browser(async move |browser| {
        browser.open(&server.address).await?;
        browser.until_ready().await?;
        ask(&browser).await?;
        take(&browser, "far").await?;
        browser
            .keys(&[Key::Home.into(), Key::PageUp.into(), Key::PageUp.into()])
            .await?;
        let form = "root.querySelector(\"[name='targets[0].distance']\").value";
        let seen = look(
            &browser,
            &format!("return [says('far'), card(), {form}, calculator.result.outcome];"),
        )
        .await?;
        assert_eq!(
            seen,
            json!(["20 feet, it can land here", "card stop", "180 ft", "do"])
        );
        browser.press("[data-act=try-use]").await?;
        let seen = look(&browser, &format!("return [card(), parseFloat({form}), calculator.result.outcome, root.querySelectorAll('.p-try').length, root.activeElement?.matches('.say')];")).await?;
        assert_eq!(seen, json!(["card stop", 20, "professional", 0, true]));
        browser.expect_quiet().await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn marks_speak_the_language_of_the_page_around_them() {
    let site = Server::of_the_site();
    let line = format!(
        "<script src=\"{}v1/embed.js\" defer></script><slipbark-tree-plan></slipbark-tree-plan>",
        site.address
    );
    let host = host_with("marks-spanish", "lang=\"es\"", "", &line);
    in_browser(async move |browser| {
        browser.width(390).await?;
        browser.open(&host.address).await?;
        browser.until_ready().await?;
        ask(&browser).await?;
        take(&browser, "day").await?;
        let at = top(&browser, "day").await?;
        browser.keys(&[Key::End.into()]).await?;
        let seen = stands(&browser, "day", &at).await?;
        assert_eq!(seen, json!(["31 de diciembre, no se despega", "card wait"]));
        expect_no_violations(&browser, "marks in Spanish").await?;
        expect_no_sideways_scroll(&browser, "marks in Spanish").await
    });
}

#[test]
#[ignore = "needs Firefox and geckodriver; tests/all runs it where both are found"]
fn firefox_moves_the_marks_by_keys_by_pointer_and_by_typing() {
    let server = Server::of_the_site();
    in_firefox(async move |browser| {
        browser.open(&server.address).await?;
        browser.until_ready().await?;
        ask(&browser).await?;
        by_keys(&browser).await?;
        by_typing(&browser).await?;
        by_pointer(&browser).await?;
        expect_no_violations(&browser, "marks that were moved, in Firefox").await
    });
}
