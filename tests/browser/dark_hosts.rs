//! What a host page looks like and is built like: dark ground gets a dark calculator, headings stand at the level that
//! was asked for, and a root whose text is huge does not blow it up.

use crate::browser::in_browser;
use crate::embed::{host, host_with};
use crate::hosts::element;
use crate::rules::expect_no_violations;
use crate::site::Server;
use calc_view::kind::Kind;

/// Lightness of the calculator's own ground, 0 to 1, from the colour that the browser computed.
const GROUND: &str = "(() => {
    const body = document.querySelector('slipbark-tree-plan').shadowRoot.querySelector('.sb');
    const [r, g, b] = getComputedStyle(body).backgroundColor.match(/[\\d.]+/g).map(Number);
    return (r + g + b) / 765; })()";

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn dark_ground_gets_a_dark_calculator_unless_its_theme_says_otherwise() {
    let site = Server::of_the_site();
    let dark = "body { background: #10141a; color: #e8e8e8 }";
    let themed = |theme: &str| {
        element(&site).replace(
            "<slipbark-tree-plan>",
            &format!("<slipbark-tree-plan theme=\"{theme}\">"),
        )
    };
    let plain = element(&site);
    let cases = [
        (
            "a light page",
            "body { background: #fff; color: #222 }",
            plain.clone(),
            false,
        ),
        ("a page that paints nothing", "", plain.clone(), false),
        (
            "grey text on white",
            "body { color: #808080 }",
            plain.clone(),
            false,
        ),
        ("a dark body", dark, plain.clone(), true),
        (
            "a dark root in another notation",
            "html { background: oklch(0.2 0.02 250); color: oklch(0.95 0 0) }",
            plain.clone(),
            true,
        ),
        (
            "a scheme alone",
            ":root { color-scheme: dark }",
            plain.clone(),
            true,
        ),
        (
            "a dark picture under light text",
            "body { background: linear-gradient(#111, #222); color: #fff }",
            plain.clone(),
            true,
        ),
        (
            "a white card in a dark page",
            "body { background: #111; color: #eee } main { background: #fff; color: #111 }",
            plain.clone(),
            false,
        ),
        (
            "a dark card in a light page",
            "main { background: color(srgb 0.1 0.1 0.12); color: #eee }",
            plain.clone(),
            true,
        ),
        (
            "a surface of the page's own",
            "body { background: #111; color: #eee } slipbark-tree-plan { --slipbark-surface: #fff }",
            plain.clone(),
            false,
        ),
        ("theme light", dark, themed("light"), false),
        ("theme dark", "", themed("dark"), true),
        ("theme sun", dark, themed("sun"), false),
        ("theme inherit", dark, themed("inherit"), true),
    ];
    let hosts = cases.map(|(name, style, body, is_dark)| {
        let page = host(
            &format!("ground {name}"),
            &format!("<style>{style}</style>"),
            &body,
        );
        (name, page, is_dark)
    });
    in_browser(async move |browser| {
        for (name, page, is_dark) in &hosts {
            browser.open(&page.address).await?;
            browser.until_ready().await?;
            let ground = browser.run(&format!("return {GROUND};")).await?;
            let light = ground.as_f64().unwrap_or(-1.0);
            assert!(
                if *is_dark { light < 0.2 } else { light > 0.8 },
                "{name}: {ground}"
            );
        }
        let (name, page, _) = &hosts[3];
        browser.open(&page.address).await?;
        browser.until_ready().await?;
        browser.fill_in_a_tree().await?;
        browser.show_the_answer().await?;
        expect_no_violations(&browser, name).await?;
        // A switch of the page's own is followed, also where its colours fade.
        browser
            .run("document.body.style.transition = 'background-color .3s';
                  document.body.style.backgroundColor = '#fff'; document.body.style.color = '#111';")
            .await?;
        browser
            .until("light ground", &format!("{GROUND} > 0.8"))
            .await?;
        browser
            .run("document.body.removeAttribute('style');")
            .await?;
        browser
            .until("dark ground", &format!("{GROUND} < 0.2"))
            .await?;
        browser.expect_quiet().await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn headings_stand_at_the_level_that_was_asked_for() {
    let site = Server::of_the_site();
    let levels = [None, Some(2), Some(3), Some(4), Some(5)];
    let hosts = levels.map(|level| {
        let asked = level.map_or(String::new(), |level| format!(" heading-level=\"{level}\""));
        let all: String = Kind::ALL
            .iter()
            .map(|kind| format!("<slipbark-{0}{asked}></slipbark-{0}>", kind.name()))
            .collect();
        let script = format!(
            "<script src=\"{}v1/embed.js\" defer></script>",
            site.address
        );
        let name = format!("headings-{}", level.unwrap_or(0));
        (
            level.unwrap_or(2),
            host(&name, "", &format!("{script}{all}")),
        )
    });
    in_browser(async move |browser| {
        for (level, page) in &hosts {
            browser.open(&page.address).await?;
            browser.until_ready().await?;
            let seen = browser
                .run("const levels = (root) => [...root.querySelectorAll('h1, h2, h3, h4, h5, h6')].map((it) => Number(it.localName[1]));
                      return [...document.querySelectorAll('main > *')].filter((it) => it.localName.startsWith('slipbark-')).map((calculator) => {
                        const before = levels(calculator.shadowRoot);
                        calculator.inputs = { version: 1, species: 'Norway maple', stems: [{ diameter: '14 1/2 in' }], date: '2027-06-12', none_in_reach: true, line_within_reach: 'no' };
                        calculator.compute();
                        return [calculator.localName, before, levels(calculator.shadowRoot)];
                      });")
                .await?;
            let calculators = seen.as_array().expect("a list");
            assert_eq!(calculators.len(), Kind::ALL.len());
            for it in calculators {
                let of = |at: usize| -> Vec<u64> {
                    it[at]
                        .as_array()
                        .into_iter()
                        .flatten()
                        .filter_map(|it| it.as_u64())
                        .collect()
                };
                let all = of(2);
                assert_eq!(all.iter().min(), Some(level), "asked {level}: {it}");
                assert!(
                    of(1).iter().chain(&all).all(|it| (*level..=6).contains(it)),
                    "asked {level}: {it}"
                );
                let mut before = *level;
                for next in all {
                    assert!(
                        next <= before + 1,
                        "asked {level}, a level is left out: {it}"
                    );
                    before = next;
                }
            }
        }
        Ok(())
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_root_of_40_pixels_does_not_blow_it_up() {
    let site = Server::of_the_site();
    // Themes that make rem a unit of their own set the text of their body back; others have such text.
    let hosts = [("40px", "16px", 24.0), ("40px", "1rem", 32.0)].map(|(root, body, most)| {
        let style = format!("<style>html {{ font-size: {root} }} body {{ font-size: {body}; margin: 0 }} h1 {{ font-size: 1em; overflow-wrap: anywhere }}</style>");
        (most, host_with(&format!("huge-{body}"), "lang=\"en\"", &style, &element(&site)))
    });
    in_browser(async move |browser| {
        for (most, page) in &hosts {
            browser.open(&page.address).await?;
            browser.until_ready().await?;
            browser.fill_in_a_tree().await?;
            browser.show_the_answer().await?;
            let size = "return parseFloat(getComputedStyle(document.querySelector('slipbark-tree-plan').shadowRoot.querySelector('.sb')).fontSize);";
            let size = browser.run(size).await?;
            assert_eq!(size.as_f64(), Some(*most), "the size of its text");
            crate::narrow::expect_no_sideways_scroll_at(
                &browser,
                "a root of 40 pixels",
                &[360, 768, 1280],
            )
            .await?;
        }
        Ok(())
    });
}
