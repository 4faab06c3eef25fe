//! The pages of the species: their numbers are those of the command line, and a phone shows one in a few screens.

use crate::browser::in_browser;
use crate::site::{Server, built, every_page, is_species, program};
use serde_json::{Value, json};
use std::io::Write as _;
use std::process::{Command, Stdio};

/// Screens of 390 × 844 CSS pixels.
const MOST_SCREENS: f64 = 5.0;
/// Packed bytes of a page without the calculator.
const MOST_BYTES: u64 = 60_000;

/// What the command line answers for a trunk with nothing in reach.
fn answer(species: &str, size: &str) -> Value {
    let question = json!({
        "version": 1, "species": species, "stems": [{ "diameter": size }],
        "date": "year", "today": "2027-01-01", "none_in_reach": true,
    });
    let mut asked = Command::new(program())
        .args(["answer", "-"])
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .expect("the program runs");
    let mut input = asked.stdin.take().expect("it reads");
    input
        .write_all(question.to_string().as_bytes())
        .expect("it takes the question");
    drop(input);
    let out = asked.wait_with_output().expect("it answers");
    serde_json::from_slice(&out.stdout).expect("JSON")
}

/// The row of a size in the first table of a page, without its markup.
fn row<'p>(page: &'p str, size: &str) -> &'p str {
    let head = format!(">{size}</th>");
    let (_, behind) = page.split_once(&head).expect("a row of that size");
    behind.split_once("</tr>").expect("it ends").0
}

#[test]
#[ignore = "needs the built site; tests/all runs it"]
fn the_ring_and_the_ground_of_a_page_are_those_of_the_command_line() {
    let sizes = ["4 in", "8 in", "14 in", "20 in", "28 in"];
    let trees = [
        ("Norway maple", "norway-maple"),
        ("Scots pine", "scots-pine"),
        ("European larch", "european-larch"),
        ("Tree-of-heaven", "tree-of-heaven"),
    ];
    let mut rings = 0;
    for (name, folder) in trees {
        let file = built().join("species").join(folder).join("index.html");
        let page = std::fs::read_to_string(file).expect("the page is built");
        for size in sizes {
            let said = row(&page, size).replace('\u{a0}', " ");
            let answer = answer(name, size);
            // Lengths that keep people out, and the least ring, are rounded up.
            let metres = answer["reach"]["zone_m"].as_f64().expect("a reach").ceil();
            assert!(
                said.contains(&format!("({metres} m)")),
                "{name}, {size}: {said}"
            );
            if answer["headline_method"] == "bark_ring" {
                let mm = answer["stems"][0]["ring"]["better_mm"]
                    .as_f64()
                    .expect("a ring");
                let centimetres = (mm / 10.0).ceil();
                assert!(
                    said.contains(&format!("({centimetres} cm)")),
                    "{name}, {size}: {said}"
                );
                rings += 1;
            } else {
                assert!(!said.contains(" cm)"), "{name}, {size} has no ring: {said}");
            }
        }
    }
    assert!(rings >= 10, "{rings} rings were compared");
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_phone_shows_the_page_of_a_species_in_few_screens() {
    let server = Server::of_the_site();
    in_browser(async move |browser| {
        browser.window(390, 844).await?;
        let pages = every_page();
        for page in pages.iter().filter(|page| is_species(page)) {
            let packed = built().join(page).join("index.html.gz");
            let bytes = std::fs::metadata(packed).expect("it is packed").len();
            assert!(bytes <= MOST_BYTES, "/{page} is {bytes} bytes");
            browser
                .open_page(&format!("{}{page}", server.address))
                .await?;
            let seen = browser
                .run("return [document.documentElement.scrollHeight / 844, document.querySelectorAll('.plates svg').length, document.documentElement.scrollWidth];")
                .await?;
            println!("/{page}: {seen}");
            let screens = seen[0].as_f64().expect("a height");
            assert!(screens <= MOST_SCREENS, "/{page} is {screens:.1} screens");
            assert_eq!(seen[2], 390, "/{page} is as wide as the window");
            let groups = ["palms", "bamboo", "yucca"];
            let group = groups.iter().any(|name| page.contains(name));
            assert_eq!(seen[1].as_u64() == Some(0), group, "/{page}: plates");
        }
        Ok(())
    });
}
