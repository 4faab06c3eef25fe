//! What each page tells programs that read, list and show it; its version and day; and whose work is in it.

use crate::browser::in_browser;
use crate::site::{Server, built, every_page, folder, program};
use std::path::Path;
use std::process::Command;

fn text(site: &Path, page: &str) -> String {
    let path = site.join(page).join("index.html");
    std::fs::read_to_string(&path).unwrap_or_else(|error| panic!("{}: {error}", path.display()))
}

/// The content of a tag that begins so.
fn value<'a>(text: &'a str, before: &str) -> &'a str {
    let after = text
        .split_once(before)
        .unwrap_or_else(|| panic!("no {before}"))
        .1;
    after.split('"').next().unwrap_or_default()
}

/// Pages with head and foot: those in frames are listed by nobody.
fn listed() -> Vec<String> {
    let framed = |page: &String| {
        page.contains("embed/") && !page.ends_with("embed/") && !page.ends_with("build/")
    };
    every_page()
        .into_iter()
        .filter(|page| !framed(page))
        .collect()
}

#[test]
#[ignore = "needs the built site; tests/all runs it"]
fn each_page_tells_its_address_its_picture_its_version_and_its_day() {
    let listed = listed();
    assert!(listed.len() > 20, "{listed:?}");
    let mut own_pictures = 0;
    for page in &listed {
        let text = text(built(), page);
        assert_eq!(
            value(&text, "rel=\"canonical\" href=\""),
            format!("/{page}")
        );
        assert_eq!(
            value(&text, "property=\"og:url\" content=\""),
            format!("/{page}")
        );
        let picture = value(&text, "property=\"og:image\" content=\"/");
        // A tree that has plates and an article show their own drawings, all else the site's.
        let own = page
            .strip_prefix("es/")
            .unwrap_or(page)
            .trim_end_matches('/');
        let drawn = format!("pictures/{own}.png");
        match built().join(&drawn).is_file() {
            true => assert_eq!(picture, drawn),
            false => assert_eq!(picture, "picture.png", "/{page}"),
        }
        own_pictures += usize::from(picture == drawn);
        // PNG (W3C, third edition), 11.2.1: width and height stand at bytes 16 and 20.
        let bytes = std::fs::read(built().join(picture)).expect("the picture is there");
        assert!(bytes.starts_with(b"\x89PNG\r\n\x1a\n"), "{picture}");
        for (name, at) in [("width", 16), ("height", 20)] {
            let said = value(&text, &format!("property=\"og:image:{name}\" content=\""));
            let part: [u8; 4] = bytes[at..at + 4].try_into().expect("four bytes");
            assert_eq!(said, u32::from_be_bytes(part).to_string(), "{picture}");
        }
        assert!(
            (1_000..60_000).contains(&bytes.len()),
            "{picture}: {} bytes",
            bytes.len()
        );
        for name in ["og:title", "og:description", "og:image:alt"] {
            let said = value(&text, &format!("property=\"{name}\" content=\""));
            assert!(
                said.len() > 3 && !said.contains("{{"),
                "/{page}: {name}: {said}"
            );
        }
        let spanish = page.starts_with("es/");
        let before = if spanish { "Versión " } else { "Version " };
        let version = text
            .rsplit_once(before)
            .unwrap_or_else(|| panic!("/{page}"))
            .1;
        let version = version.split('<').next().unwrap_or_default();
        // A copy of the source without its history knows no day.
        let of = Command::new("git")
            .args(["log", "-1", "--format=%cs"])
            .current_dir(env!("CARGO_MANIFEST_DIR"))
            .output();
        if let Some(day) = of
            .ok()
            .and_then(|out| String::from_utf8(out.stdout).ok())
            .filter(|day| day.len() > 9)
        {
            assert!(
                version.contains(&day[..4]) && version.contains(env!("CARGO_PKG_VERSION")),
                "/{page}: {version}"
            );
        }
    }
    assert!(
        own_pictures > 150,
        "{own_pictures} pages show their own drawings"
    );
    let robots = std::fs::read_to_string(built().join("robots.txt")).expect("it is built");
    assert!(
        robots.contains("User-agent: *\nAllow: /") && !robots.contains("Sitemap"),
        "{robots}"
    );
}

/// schema.org: what a page is, in JSON-LD that a reader of JSON takes.
#[test]
#[ignore = "needs the built site; tests/all runs it"]
fn articles_and_trees_say_what_they_are_to_programs() {
    let (mut articles, mut trees) = (0, 0);
    for page in listed() {
        let text = text(built(), &page);
        let block = text
            .split_once("<script type=\"application/ld+json\">")
            .and_then(|(_, rest)| rest.split_once("</script>"));
        let own = page.strip_prefix("es/").unwrap_or(&page);
        let wanted = match own.split('/').collect::<Vec<_>>()[..] {
            ["articles", id, ""] if !id.is_empty() => "Article",
            ["species", id, ""] if !id.is_empty() => "WebPage",
            [""] => "WebApplication",
            _ => {
                assert!(block.is_none(), "/{page}");
                continue;
            }
        };
        let block = block.unwrap_or_else(|| panic!("/{page} says nothing")).0;
        let said: serde_json::Value = serde_json::from_str(block).expect("it is JSON");
        assert_eq!(said["@context"], "https://schema.org");
        assert_eq!(said["@type"], wanted, "/{page}");
        assert_eq!(said["url"], format!("/{page}"));
        let language = if page.starts_with("es/") { "es" } else { "en" };
        assert_eq!(said["inLanguage"], language);
        let title = said["headline"].as_str().or(said["name"].as_str());
        assert!(title.is_some_and(|title| title.len() > 3), "/{page}");
        if wanted == "Article" {
            articles += 1;
            let cited = said["citation"].as_array().map_or(0, Vec::len);
            assert!(cited > 3 && said["dateModified"].is_string(), "/{page}");
        }
        if wanted == "WebPage" {
            trees += 1;
            assert_eq!(said["about"]["@type"], "Taxon", "/{page}");
        }
    }
    assert!(articles >= 20 && trees > 150, "{articles} and {trees}");
}

#[test]
#[ignore = "builds the site; tests/all runs it"]
fn a_build_that_is_told_its_origin_lists_every_page_by_its_whole_address() {
    let site = folder("with-origin");
    let status = Command::new(program())
        .current_dir(Path::new(env!("CARGO_MANIFEST_DIR")).join(".."))
        .args([
            "build",
            "--quiet",
            "--base",
            "/t/",
            "--origin",
            "https://trees.example.org",
            "--out",
        ])
        .arg(&site)
        .status();
    assert!(status.is_ok_and(|status| status.success()));
    let top = "https://trees.example.org/t/";
    let sitemap = std::fs::read_to_string(site.join("sitemap.xml")).expect("it is built");
    let listed = listed();
    assert_eq!(sitemap.matches("<loc>").count(), listed.len(), "{sitemap}");
    for page in &listed {
        assert!(
            sitemap.contains(&format!("<loc>{top}{page}</loc>")),
            "/{page}"
        );
        let text = text(&site, page);
        assert_eq!(
            value(&text, "rel=\"canonical\" href=\""),
            format!("{top}{page}")
        );
        assert_eq!(
            value(&text, "property=\"og:image\" content=\""),
            format!(
                "{top}{}",
                value(
                    &self::text(built(), page),
                    "property=\"og:image\" content=\"/"
                )
            )
        );
        let other = page.strip_prefix("es/").unwrap_or(page);
        assert_eq!(
            value(&text, "hreflang=\"es\" href=\""),
            format!("{top}es/{other}")
        );
        assert!(!text.contains("@@"), "/{page} is finished");
    }
    let robots = std::fs::read_to_string(site.join("robots.txt")).expect("it is built");
    assert!(
        robots.contains("Sitemap: https://trees.example.org/t/sitemap.xml"),
        "{robots}"
    );
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn the_licences_of_others_stand_on_a_page_and_in_one_file() {
    let all = std::fs::read_to_string(built().join("notices.txt")).expect("it is built");
    let server = Server::of_the_site();
    in_browser(async move |browser| {
        browser.open(&format!("{}notices/", server.address)).await?;
        let rows = browser
            .run("return [...document.querySelectorAll('tbody tr')].map((row) => [...row.children].map((cell) => cell.textContent));")
            .await?;
        let rows = rows.as_array().expect("rows");
        assert!(rows.len() > 5, "{rows:?}");
        // Rust is compiled from these crates: what binds the module, what writes objects, what counts days.
        for name in ["wasm-bindgen", "serde-wasm-bindgen", "chrono"] {
            let row = rows
                .iter()
                .find(|row| row[0] == name)
                .unwrap_or_else(|| panic!("{name}"));
            let title = format!(
                "{name} {}: {}",
                row[1].as_str().unwrap_or_default(),
                row[2].as_str().unwrap_or_default()
            );
            assert!(all.contains(&title), "{title}");
        }
        assert!(all.contains("Permission is hereby granted") && all.contains("Apache License"));
        crate::rules::expect_no_violations(&browser, "the licences of others").await?;
        browser.expect_quiet().await
    });
}
