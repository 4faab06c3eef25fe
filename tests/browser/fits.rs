//! Words of longer languages fit: on the form and on the answer of each outcome nothing is cut off, leaves the page or
//! its drawing, or lies over another label, in Spanish and in English made two in five longer.

use crate::browser::{Browser, in_browser};
use crate::deploy::asset;
use crate::site::{Server, copy};
use calc_view::words::m;
use serde_json::Value;
use std::collections::BTreeSet;
use std::path::Path;

/// What does not fit in the calculator as it stands, each with its words.
const LOOK: &str = r"
const root = document.querySelector('slipbark-tree-plan').shadowRoot;
const wide = document.documentElement.clientWidth;
const found = new Set();
const name = (e) => `${e.closest('[class]')?.getAttribute('class') ?? e.localName} “${e.textContent.trim().slice(0, 70)}”`;
if (document.documentElement.scrollWidth > wide) found.add('the page scrolls sideways');
const beyond = (inner, outer, slack) => inner.right > outer.right + slack || inner.left < outer.left - slack
  || inner.bottom > outer.bottom + slack || inner.top < outer.top - slack;
const hidden = new Set(['hidden', 'clip']);
const walker = document.createTreeWalker(root, NodeFilter.SHOW_TEXT);
const range = document.createRange();
const labels = new Map();
for (let node = walker.nextNode(); node; node = walker.nextNode()) {
  const of = node.parentElement;
  if (!node.data.trim() || ['STYLE', 'OPTION'].includes(of.tagName) || of.localName === 'title' || of.localName === 'desc') continue;
  if (of.closest('.vh') || !of.checkVisibility({ visibilityProperty: true })) continue;
  range.selectNodeContents(node);
  const rects = [...range.getClientRects()].filter((it) => it.width && it.height);
  const drawing = of.closest('svg');
  if (drawing && of.closest('text')) {
    const label = of.closest('text');
    const box = label.getBoundingClientRect();
    const edge = drawing.getBoundingClientRect();
    // What shows past the edge may pass it by a hair: the page has room beside it.
    const slack = getComputedStyle(drawing).overflow === 'visible' ? 4 : 1;
    if (beyond(box, edge, slack)) found.add(`beyond its drawing: ${name(label)}`);
    if (!labels.has(drawing)) labels.set(drawing, new Map());
    labels.get(drawing).set(label, box);
    continue;
  }
  for (const rect of rects) {
    let scrolls = false;
    for (let up = of; up; up = up.parentElement) {
      const style = getComputedStyle(up);
      const box = up.getBoundingClientRect();
      if (style.overflowX === 'auto' || style.overflowX === 'scroll') { scrolls = true; break; }
      if (hidden.has(style.overflowX) && beyond(rect, box, 1)) found.add(`cut off: ${name(of)}`);
      if (up.matches('button, .btn, .tag, summary') && (rect.right > box.right + 1 || rect.left < box.left - 1)) found.add(`beyond its box: ${name(of)}`);
    }
    if (!scrolls && (rect.right > wide + 1 || rect.left < -1)) found.add(`off the page: ${name(of)}`);
  }
}
for (const all of labels.values()) {
  const list = [...all];
  list.forEach(([one, a], at) => {
    for (const [two, b] of list.slice(at + 1)) {
      const across = Math.min(a.right, b.right) - Math.max(a.left, b.left);
      const down = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
      if (across > 2 && down > 0.3 * Math.min(a.height, b.height)) found.add(`one over another: ${name(one)}, ${name(two)}`);
    }
  });
}
const measure = document.createElement('canvas').getContext('2d');
for (const select of root.querySelectorAll('select')) {
  if (!select.checkVisibility()) continue;
  const style = getComputedStyle(select);
  measure.font = style.font;
  // Its arrow takes room too.
  const room = select.clientWidth - parseFloat(style.paddingLeft) - parseFloat(style.paddingRight) - 18;
  const chosen = select.selectedOptions[0]?.text ?? '';
  if (measure.measureText(chosen).width > room + 1) found.add(`cut in its list: ${chosen}`);
}
return [...found];
";

async fn look(browser: &Browser, place: &str, found: &mut BTreeSet<String>) -> crate::Outcome {
    for width in [320, 390] {
        browser.width(width).await?;
        // A frame for what is drawn anew at another width.
        browser
            .run_until_done("requestAnimationFrame(() => setTimeout(done, 60));")
            .await?;
        let seen = browser.run(LOOK).await?;
        let seen = seen.as_array().cloned().unwrap_or_default();
        found.extend(
            seen.iter()
                .filter_map(Value::as_str)
                .map(|it| format!("{place}, {width}: {it}")),
        );
    }
    Ok(())
}

/// A question for each outcome.
const QUESTIONS: [&str; 6] = ["do", "wait", "other", "professional", "unknown", "year"];

fn question(name: &str) -> String {
    let file = examples::folder().join(name).with_extension("json");
    std::fs::read_to_string(file).expect("a question")
}

/// Adds the words of the language for the layout to a site: no site for people has them.
fn add_stretched(site: &Path) {
    let (_, words, _) = m::FILES
        .iter()
        .find(|(language, ..)| *language == "qps")
        .expect("it is made");
    let assets = site.join("assets");
    std::fs::write(assets.join("words-qps.bin"), words).expect("written");
    let script = assets.join(asset(site, "element", "js"));
    let text = std::fs::read_to_string(&script).expect("the script");
    let with = text.replacen("es: \"", "qps: \"./words-qps.bin\", es: \"", 1);
    assert_ne!(with, text, "the script names the words of Spanish");
    std::fs::write(script, with).expect("written");
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn nothing_is_cut_off_in_a_longer_language() {
    let folder = copy("fits");
    add_stretched(&folder);
    let server = Server::of(&folder, 0);
    in_browser(async move |browser| {
        let mut found = BTreeSet::new();
        for (page, language) in [("es/", "es"), ("", "qps")] {
            browser.open(&format!("{}{page}", server.address)).await?;
            browser.until_ready().await?;
            let speak = format!(
                "document.querySelector('slipbark-tree-plan').setAttribute('lang', '{language}');"
            );
            browser.run(&speak).await?;
            let speaks = format!(
                "document.querySelector('slipbark-tree-plan').shadowRoot.querySelector('.sb').lang === '{language}'"
            );
            browser.until("the language", &speaks).await?;
            let unfold = "for (const it of document.querySelector('slipbark-tree-plan').shadowRoot.querySelectorAll('details')) it.open = true;";
            look(&browser, &format!("{language}, the form"), &mut found).await?;
            browser.run(unfold).await?;
            look(
                &browser,
                &format!("{language}, the form unfolded"),
                &mut found,
            )
            .await?;
            for name in QUESTIONS {
                let ask = format!(
                    "const calculator = document.querySelector('slipbark-tree-plan'); calculator.reset(); calculator.inputs = {}; calculator.compute();",
                    question(name)
                );
                browser.run(&ask).await?;
                look(&browser, &format!("{language}, {name}"), &mut found).await?;
                browser.run(unfold).await?;
                look(
                    &browser,
                    &format!("{language}, {name} unfolded"),
                    &mut found,
                )
                .await?;
            }
        }
        assert!(found.is_empty(), "{} places: {found:#?}", found.len());
        Ok(())
    });
}
