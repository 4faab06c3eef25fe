//! Field mode on phones: each question, answer and card one screen of large keys, in each language and theme. Sizes and gaps are
//! the project's own design: 56 pixels or more, 8 or more between two.

use crate::Outcome;
use crate::browser::{Browser, in_browser};
use crate::field_page::{go_on, hold_to_rules, open, others, press, put, saved, until_asked};
use crate::narrow::expect_no_sideways_scroll;
use crate::property_page::click;
use crate::rules::expect_contrast;
use crate::site::Server;
use serde_json::json;

/// What is lower than 56 pixels of what can be pressed or typed into; pairs that are nearer than 8; where the keys end.
const SIZES: &str = "
    const found = [];
    const controls = [];
    const look = (tree) => {
      for (const it of tree.querySelectorAll('*')) {
        if (it.shadowRoot) look(it.shadowRoot);
        if (!it.matches('a[href], button, input:not([type=hidden]), select, summary') || !it.checkVisibility()) continue;
        const key = it.closest('label') ?? it;
        const box = key.getBoundingClientRect();
        // A link in a line of a list or an answer is text.
        if (box.width > 2 && !it.closest('.hint, #fm-list > :not(summary)')) controls.push([key, box]);
      }
    };
    look(document.getElementById('field'));
    const name = (it) => `${it.localName} ${it.id} ${it.textContent.trim().slice(0, 20)}`;
    for (const [it, box] of controls) {
      if (box.height < 56) found.push(`${name(it)}: ${box.height} px high`);
      if (box.right > innerWidth || box.left < 0) found.push(`${name(it)} stands over the edge`);
    }
    for (const [i, [it, a]] of controls.entries()) for (const [other, b] of controls.slice(i + 1)) {
      const across = Math.max(a.left, b.left) - Math.min(a.right, b.right);
      const down = Math.max(a.top, b.top) - Math.min(a.bottom, b.bottom);
      if (Math.max(across, down) < 7.9) found.push(`${name(it)} and ${name(other)}: ${Math.max(across, down)} px apart`);
    }
    return [found, Math.round(document.getElementById('fm-end').getBoundingClientRect().bottom + scrollY), controls.length];";

/// Holds a screen to its sizes, and to the rules of accessibility.
async fn hold(browser: &Browser, language: &str, step: &str) -> Outcome {
    for width in [320, 390, 1280] {
        browser.window(width, 844).await?;
        let what = format!("{language}field/, {step}, at {width}");
        let seen = browser.run(SIZES).await?;
        assert_eq!(seen[0], json!([]), "{what}");
        assert!(seen[2].as_u64().is_some_and(|it| it > 1), "{what}: {seen}");
        // A narrow phone is a tall one: 320 pixels are those of an old one, or of letters that somebody made larger.
        let most = match (width, language, step) {
            (320, ..) => 1000,
            _ => 844,
        };
        println!("{what}: {} px", seen[1]);
        assert!(
            seen[1].as_u64().is_some_and(|it| it <= most),
            "{what}: {seen}"
        );
        expect_no_sideways_scroll(browser, &what).await?;
    }
    browser.window(390, 844).await?;
    hold_to_rules(browser, &format!("{language}field/, {step}")).await?;
    for theme in ["dark", "sun"] {
        browser
            .run(&format!(
                "document.documentElement.dataset.theme = '{theme}';"
            ))
            .await?;
        expect_contrast(browser, &format!("{language}field/, {step}, {theme}")).await?;
    }
    browser
        .run("delete document.documentElement.dataset.theme;")
        .await?;
    browser.console().await?;
    Ok(())
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn each_question_is_one_screen_of_large_keys_in_each_language() {
    let site = Server::of_the_site();
    in_browser(async move |browser| {
        for language in ["", "es/"] {
            open(&browser, &site, language, "place").await?;
            hold(&browser, language, "place").await?;
            put(&browser, "#f-town", "Massachusetts").await?;
            go_on(&browser, "day").await?;
            hold(&browser, language, "day").await?;
            go_on(&browser, "tree").await?;
            put(&browser, "#f-find", "acer").await?;
            hold(&browser, language, "tree").await?;
            press(&browser, "[name=species]").await?;
            go_on(&browser, "size").await?;
            // Wrong: told in the words of the form, at its field, and nothing goes on.
            put(&browser, "#f-stems-0-diameter", "fourteen").await?;
            click(&browser, "#fm-go").await?;
            press(&browser, ".errmsg").await?;
            until_asked(&browser, "size").await?;
            put(&browser, "#f-stems-0-diameter", "14 1/2").await?;
            hold(&browser, language, "size").await?;
            click(&browser, "#fm-stems input[value=several]").await?;
            go_on(&browser, "others").await?;
            others(&browser, "9; 7 1/2").await?;
            hold(&browser, language, "others").await?;
            click(&browser, "#fm-back").await?;
            until_asked(&browser, "size").await?;
            click(&browser, "#fm-stems input[value=one]").await?;
            go_on(&browser, "near").await?;
            click(&browser, "#fm-near input[value=path]").await?;
            hold(&browser, language, "near").await?;
            go_on(&browser, "far").await?;
            put(&browser, "#f-targets-0-distance", "160").await?;
            hold(&browser, language, "far").await?;
            go_on(&browser, "line").await?;
            hold(&browser, language, "line").await?;
            press(&browser, "[name=line_within_reach][value=no]").await?;
            go_on(&browser, "answer").await?;
            hold(&browser, language, "answer").await?;
            click(&browser, "#fm-more").await?;
            browser
                .until("the steps", "document.getElementById('calculator').shadowRoot.querySelector('.answer-region > .two').checkVisibility()")
                .await?;
            go_on(&browser, "tree").await?;
            hold(&browser, language, "the next tree").await?;
            click(&browser, "#fm-recent button").await?;
            until_asked(&browser, "size").await?;
            put(&browser, "#f-stems-0-diameter", "9").await?;
            go_on(&browser, "near").await?;
            hold(&browser, language, "near, as at the tree before").await?;
            go_on(&browser, "line").await?;
            go_on(&browser, "answer").await?;
            hold(&browser, language, "can't tell").await?;
            // What the card asks is answered there, and goes into the row of the tree.
            press(&browser, ".card [name='ask.line'][value=yes]").await?;
            browser
                .until(
                    "a stop",
                    "document.getElementById('calculator').shadowRoot.querySelector('.card.stop')",
                )
                .await?;
            let row = saved(&browser).await?;
            assert!(
                row.lines().nth(2).is_some_and(|it| it.contains(",yes,")),
                "{row}"
            );
            click(&browser, "#fm-list > summary").await?;
            hold_to_rules(&browser, &format!("{language}field/, the list")).await?;
            click(&browser, "#fm-new").await?;
            click(&browser, "#fm-new").await?;
            until_asked(&browser, "place").await?;
        }
        browser.expect_quiet().await
    });
}
