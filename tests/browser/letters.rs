//! Letters of the answers' drawings and tags: large enough on paper and on a small screen, as large as the reader's own,
//! and no word wider than what it stands in, whatever the typeface and the language. And no key of a drawing that is not
//! there. Looked at in pages that hold every answer of the named questions in one language.

use crate::Outcome;
use crate::browser::{Browser, in_browser};
use crate::site::{Server, folder};
use calc::answer::{answer, year_ahead};
use calc::models::season::Local;
use calc::question::read;
use calc_view::answer::{HostOptions, another::Trial};
use calc_view::draw::mark::defs;
use calc_view::out::Html;
use calc_view::words::message::{pack, take_all, within};
use serde_json::{Value, json};
use std::path::PathBuf;
use std::sync::OnceLock;

/// English, Spanish, and English made two in five longer.
const LANGUAGES: [&str; 3] = ["en", "es", "qps"];

/// The style sheets as they are written: tokens, calculators, pages. A host is the page here.
fn sheets() -> String {
    let names: [&str; 9] = include!("../../www/style/sheets.rs");
    let style = concat!(env!("CARGO_MANIFEST_DIR"), "/../www/style");
    let read =
        |name: &str| std::fs::read_to_string(format!("{style}/{name}.css")).expect("a sheet");
    let parts = names.map(|name| read(&format!("parts/{name}"))).concat();
    [
        read("tokens"),
        parts.replace(":host", ":root"),
        read("page"),
    ]
    .concat()
}

/// A page with every answer in a language.
fn page(language: &str) -> String {
    let reference = calc_data::whole();
    let mut body = Html::default();
    defs(&mut body);
    let mut body = body.into_string();
    for (name, typed) in examples::all(&examples::folder()) {
        let Ok(question) = read(reference, &typed) else {
            continue;
        };
        let answer = answer(reference, &question, &Local::default());
        let days = year_ahead(reference, &question, &Local::default());
        let prefix = format!("{name}-");
        let mut out = Html::default();
        let options = HostOptions {
            id_prefix: &prefix,
            with_form: true,
            with_buttons: true,
            another: Some(Trial {
                question: &question,
                answer: &answer,
                days: &days,
            }),
            ..HostOptions::default()
        };
        calc_view::answer::answer(&mut out, reference, &question, &answer, &options);
        body.push_str(&format!(
            "<div data-of=\"{name}\">{}</div>",
            out.into_string()
        ));
    }
    format!(
        "<!doctype html><html lang=\"{language}\" data-theme=\"light\"><meta charset=\"utf-8\"><title>Answers</title>\
         <link rel=\"stylesheet\" href=\"../letters.css\"><main class=\"wrap answer\"><div class=\"sb\">{body}</div></main></html>"
    )
}

/// A server of such pages, each in a folder of its language.
fn pages() -> Server {
    static WRITTEN: OnceLock<PathBuf> = OnceLock::new();
    let folder = WRITTEN.get_or_init(|| {
        take_all();
        let folder = folder("letters");
        let write = |name: &str, text: &str| {
            std::fs::write(folder.join(name), text).expect("the target folder can be written");
        };
        write("letters.css", &sheets());
        write("index.html", "<!doctype html><title>Letters</title>");
        for language in LANGUAGES {
            std::fs::create_dir_all(folder.join(language)).expect("a folder can be made");
            let text = within(pack(language), || page(language));
            write(&format!("{language}/index.html"), &text);
        }
        folder
    });
    Server::of(folder, 0)
}

/// What a script begins with: the letters of drawings that are in sight, each with its size in pixels of the screen.
const LETTERS: &str = "
    const px = (text) => parseFloat(getComputedStyle(text).fontSize) * Math.abs(text.getScreenCTM().d);
    const of = (e) => e.closest('[data-of]').dataset.of;
    const letters = () => [...document.querySelectorAll('svg:not(.ruler) text')].filter((text) => text.checkVisibility() && text.getBoundingClientRect().width > 0);
    const small = (least) => letters().filter((text) => px(text) < least - 0.05)
      .map((text) => [of(text), text.textContent, Math.round(px(text) * 100) / 100]);";

async fn look(browser: &Browser, script: &str) -> Result<Value, fantoccini::error::CmdError> {
    browser.run(&format!("{LETTERS} {script}")).await
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn letters_of_drawings_print_at_seven_points_or_more() {
    let server = pages();
    in_browser(async move |browser| -> Outcome {
        browser
            .devtools("Emulation.setEmulatedMedia", json!({ "media": "print" }))
            .await?;
        for language in LANGUAGES {
            browser
                .open(&format!("{}{language}/", server.address))
                .await?;
            // Between the margins of A4, 184 mm, and of Letter, 189.9 mm: 96 pixels an inch.
            for width in [695, 718] {
                browser.width(width).await?;
                let seen = look(&browser, "return [small(7 / 0.75), letters().length];").await?;
                assert_eq!(seen[0], json!([]), "{language} at {width}");
                assert!(seen[1].as_u64() > Some(50), "there are letters: {seen}");
            }
        }
        Ok(())
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn letters_of_drawings_follow_the_reader_s_own_and_are_never_small() {
    let server = pages();
    in_browser(async move |browser| -> Outcome {
        for language in LANGUAGES {
            browser
                .open(&format!("{}{language}/", server.address))
                .await?;
            browser
                .run("for (const fold of document.querySelectorAll('details')) fold.open = true;")
                .await?;
            browser.width(320).await?;
            assert_eq!(
                look(&browser, "return small(12);").await?,
                json!([]),
                "{language} at 320"
            );
            // As wide as twice the letters need, so that the room is the same in letters.
            let mut least = Vec::new();
            for (width, size) in [(640, "100%"), (1280, "200%")] {
                browser.width(width).await?;
                let script = format!(
                    "document.documentElement.style.fontSize = '{size}';
                     Object.assign(document.querySelector('main').style, {{ padding: '0 2%', maxWidth: 'none', margin: '0' }});
                     return letters().map((text) => [of(text), text.textContent, px(text)]);"
                );
                least.push(look(&browser, &script).await?);
            }
            let [once, twice] = [0, 1].map(|at| least[at].as_array().expect("a list").clone());
            assert_eq!(
                once.len(),
                twice.len(),
                "{language}: the same letters stand in both"
            );
            for (one, two) in once.iter().zip(&twice) {
                let [a, b] = [one, two].map(|it| it[2].as_f64().unwrap_or(f64::NAN));
                assert!((b / a - 2.0).abs() < 0.1, "{language}: {one} {two}");
            }
        }
        Ok(())
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn tags_and_plates_hold_their_words_in_any_typeface() {
    let server = pages();
    in_browser(async move |browser| -> Outcome {
        for language in LANGUAGES {
            browser
                .open(&format!("{}{language}/", server.address))
                .await?;
            for width in [320, 390, 1280] {
                browser.width(width).await?;
                for face in [
                    "Liberation Sans, Arial",
                    "DejaVu Sans, Verdana",
                    "monospace",
                    "serif",
                ] {
                    let script = format!(
                        "document.querySelector('.sb').style.fontFamily = '{face}'; const out = [];
                         const inside = (inner, outer, what) => {{
                           const a = inner.getBoundingClientRect(), b = outer.getBoundingClientRect();
                           if (a.width && (a.left < b.left - 1 || a.right > b.right + 1 || a.top < b.top - 1 || a.bottom > b.bottom + 1))
                             out.push([what, inner.textContent.slice(0, 40), [a.left, a.right], [b.left, b.right]]);
                         }};
                         for (const tag of document.querySelectorAll('.tag')) {{
                           for (const part of tag.children) if (!part.matches('.rim')) inside(part, tag, of(tag));
                           const words = [...tag.querySelectorAll('b, .when')].map((e) => e.getBoundingClientRect());
                           if (words.length > 1 && words[0].right > words[1].left + 1 && words[0].bottom > words[1].top + 1 && words[0].left < words[1].right && words[0].top < words[1].bottom)
                             out.push([of(tag), 'the word and the day touch']);
                           for (const word of tag.querySelectorAll('b')) if (word.scrollWidth > word.clientWidth + 1 && getComputedStyle(word).display !== 'inline') out.push([of(tag), word.textContent, 'is cut']);
                         }}
                         for (const chip of document.querySelectorAll('.chip')) inside(chip, chip.closest('.now'), of(chip));
                         for (const number of document.querySelectorAll('.four > div')) for (const part of number.children) inside(part, number, of(number));
                         // A plate is the paper around its own letters: it needs nothing but the drawing's room.
                         for (const plate of document.querySelectorAll('svg text.pl')) if (plate.checkVisibility()) inside(plate, plate.closest('.d, .tape, .strip'), of(plate));
                         return out;"
                    );
                    let out = look(&browser, &script).await?;
                    assert_eq!(out, json!([]), "{language} at {width} in {face}");
                }
            }
        }
        Ok(())
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn no_key_stands_without_the_drawing_it_explains() {
    let server = pages();
    in_browser(async move |browser| -> Outcome {
        browser.open(&format!("{}en/", server.address)).await?;
        let seen = look(
            &browser,
            "for (const fold of document.querySelectorAll('details')) fold.open = true;
             const bad = []; let rows = 0;
             for (const key of document.querySelectorAll('ul.key')) {
               const part = key.closest('figure, .sec, .fold');
               const drawn = [...part.querySelectorAll('svg.d, svg.strip')].filter((svg) => svg.checkVisibility());
               if (!drawn.length) bad.push([of(key), key.textContent, 'stands alone']);
               for (const row of key.children) {
                 rows++;
                 const mark = row.querySelector('.gm > *'), fill = mark.getAttribute('fill');
                 const telling = ['fband', 'live', 'dot', 'fstop'].find((name) => mark.classList.contains(name));
                 const css = fill ? `[fill=\"${fill}\"]` : telling ? '.' + telling : null;
                 if (css && !drawn.some((svg) => svg.querySelector(css))) bad.push([of(key), row.textContent, css]);
               }
             }
             return [bad, rows];",
        )
        .await?;
        assert_eq!(seen[0], json!([]));
        assert!(seen[1].as_u64() > Some(40), "there are keys: {seen}");
        Ok(())
    });
}
