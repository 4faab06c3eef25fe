//! What a group adds to the site by its own folder: the page `/local/ID/`, and a note in one of the project's articles.

use crate::browser::in_browser;
use crate::narrow::expect_no_sideways_scroll_at;
use crate::rules::{expect_contrast, expect_no_violations};
use crate::site::{Server, built_with, folder};
use serde_json::json;
use std::path::{Path, PathBuf};
use std::sync::OnceLock;

/// Invented: the group, its people and its rules do not exist.
const SETTINGS: &str = r#"{
  "schema": 1, "id": "hollow-brook", "name": "Hollow Brook Trust", "checked": "2026-10-02", "region": "US-MA",
  "species": { "first": ["ACPL", "AIAL"], "notes": { "ACPL": "Ask Mara first." } },
  "contacts": [
    { "kind": "professional", "name": "Elm Street Arborists", "phone": "+1 413 555 0100", "checked": "2026-10-02" },
    { "kind": "permit", "name": "Town of Rivermead", "url": "https://example.org/a-long-address-of-a-page-about-trees", "checked": "2026-10-02" }
  ],
  "codes": [{ "topic": "nesting", "text": "No work by the pond before July.", "authority": "Town of Rivermead", "checked": "2026-10-02" }],
  "tighten": { "min_distance_factor": 1.25, "max_size_for_volunteers_cm": 30, "months_blocked": [4, 5] }
}"#;

/// The site with what the group adds.
fn built_with_the_group() -> &'static Path {
    static BUILT: OnceLock<PathBuf> = OnceLock::new();
    BUILT.get_or_init(|| {
        let own = folder("own");
        for (path, text) in [
            ("local/hollow-brook.json", SETTINGS),
            ("local/hollow-brook.en.md", "## Our wood\n\nWe meet at the gate.\n"),
            ("local/hollow-brook.es.md", "## Nuestro bosque\n\nNos vemos en la puerta.\n"),
            (
                "notes/en/when-bark-slips.md",
                "---\nby: Hollow Brook Trust\nreviewed: 2026-11-01\nat: top\n---\nBy our pond bark slips a week later. [Ask us](local/hollow-brook/).\n",
            ),
        ] {
            let path = own.join(path);
            std::fs::create_dir_all(path.parent().expect("a folder")).expect("it can be made");
            std::fs::write(path, text).expect("it can be written");
        }
        built_with("site-of-a-group", &["--own".as_ref(), own.as_os_str()])
    })
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn the_page_of_a_group_says_all_that_it_told_in_each_language_on_a_phone_too() {
    let server = Server::of(built_with_the_group(), 0);
    in_browser(async move |browser| {
        for (home, parts) in [
            (
                "",
                [
                    "Whom to ask",
                    "Rules here",
                    "Stricter here",
                    "Trees here",
                    "We meet at the gate.",
                    "hecked 2 October",
                    "No ring is cut in April, May.",
                    "1.25 times as tall",
                    "Norway maple: Ask Mara first.",
                    "Tree-of-heaven",
                ],
            ),
            (
                "es/",
                [
                    "A quién preguntar",
                    "Reglas de aquí",
                    "Más estricto aquí",
                    "Árboles de aquí",
                    "Nos vemos en la puerta.",
                    " 2 de octubre",
                    "No se corta ningún anillo en abril, mayo.",
                    "1.25 veces más alto",
                    ": Ask Mara first.",
                    "Árbol del cielo",
                ],
            ),
        ] {
            let page = format!("{home}local/hollow-brook/");
            browser
                .open_page(&format!("{}{page}", server.address))
                .await?;
            let seen = browser
                .run("const own = document.querySelector('main');
                      return [document.querySelector('h1').textContent, own.innerText, document.documentElement.lang,
                        [...own.querySelectorAll('a')].map((a) => a.getAttribute('href')),
                        document.querySelector('slipbark-tree-plan').getAttribute('config')];")
                .await?;
            assert_eq!(seen[0], "Hollow Brook Trust");
            let told = seen[1].as_str().unwrap_or_default();
            let common = [
                "Elm Street Arborists",
                "Town of Rivermead",
                "No work by the pond before July.",
            ];
            for part in parts.iter().chain(&common) {
                assert!(told.contains(part), "/{page}: {part}: {told}");
            }
            assert_eq!(seen[2], if home.is_empty() { "en" } else { "es" });
            let links = seen[3].to_string();
            for link in [
                "tel:+14135550100",
                "https://example.org/a-long-address-of-a-page-about-trees",
                &format!("/{home}species/norway-maple/"),
                &format!("/{home}species/tree-of-heaven/"),
            ] {
                assert!(
                    links.contains(&format!("\"{link}\"")),
                    "/{page}: {link}: {links}"
                );
            }
            // Its calculator goes by the group: what it blocks is blocked.
            assert_eq!(seen[4], "/local/hollow-brook/settings.json");
            let asked = browser
                .run("const calculator = document.querySelector('slipbark-tree-plan');
                      calculator.inputs = { version: 1, species: 'ACPL', stems: [{ diameter: '14 in' }], date: '2027-06-12', none_in_reach: true };
                      const { outcome, group } = calculator.compute();
                      return [outcome, group.name];")
                .await?;
            assert_eq!(asked, json!(["professional", "Hollow Brook Trust"]));
            let theme = |name: &str| format!("document.documentElement.dataset.theme = '{name}';");
            for width in [320, 390, 1280] {
                let what = format!("/{page} at {width}");
                expect_no_sideways_scroll_at(&browser, &what, &[width]).await?;
                browser.run(&theme("light")).await?;
                expect_no_violations(&browser, &what).await?;
                browser.run(&theme("dark")).await?;
                expect_contrast(&browser, &format!("{what}, dark")).await?;
            }
            browser.expect_quiet().await?;
        }
        Ok(())
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_groups_note_stands_in_an_article_marked_as_the_groups() {
    let server = Server::of(built_with_the_group(), 0);
    in_browser(async move |browser| {
        for (home, name, lang) in [
            ("", "Local note, by Hollow Brook Trust", ""),
            ("es/", "Nota local, de Hollow Brook Trust", "en"),
        ] {
            let page = format!("{home}articles/when-bark-slips/");
            browser
                .open_page(&format!("{}{page}", server.address))
                .await?;
            let seen = browser
                .run("const note = document.querySelector('aside.note');
                      return [note.getAttribute('aria-label'), note.querySelector('h2').textContent, note.querySelector('div').lang,
                        note.querySelector('a').getAttribute('href'), note.nextElementSibling.className];")
                .await?;
            let link = format!("/{home}local/hollow-brook/");
            assert_eq!(seen, json!([name, name, lang, link, "toc"]), "/{page}");
            for width in [320, 390, 1280] {
                let what = format!("/{page} at {width}");
                expect_no_sideways_scroll_at(&browser, &what, &[width]).await?;
                expect_no_violations(&browser, &what).await?;
            }
        }
        // No other article has it.
        browser
            .open_page(&format!("{}articles/what-a-ring-does/", server.address))
            .await?;
        let others = browser
            .run("return document.querySelectorAll('aside.note').length;")
            .await?;
        assert_eq!(others, 0);
        Ok(())
    });
}
