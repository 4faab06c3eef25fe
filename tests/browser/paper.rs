//! On paper: an answer is one page, Letter or A4, in one ink, in each language.

use crate::Outcome;
use crate::browser::{Browser, in_browser};
use crate::screens::{LANGUAGES, questions};
use crate::site::Server;
use fantoccini::wd::{PrintConfiguration, PrintMargins, PrintSize};

/// What the named questions lack: the aids, a place with dates, three stems with one to keep and a visit, an oak's months.
const MORE: [&str; 3] = [
    "{ species: 'Norway maple', stems: [{ diameter: '14 1/2' }], date: '2027-06-05', region: 'US-MA', none_in_reach: true,
       place: { latitude: '42.4', longitude: '-71' }, timed: { trees: ['12', '14'], minutes: '30' } }",
    "{ species: 'Red maple', stems: [{ diameter: '10' }, { diameter: '8' }, { diameter: '12' }], date: '2027-06-01',
       region: 'US-VT', none_in_reach: true, goal: 'spare_one', spare: 0, height: '60', signs: ['vines'],
       timed: { trees: ['12', '14'], minutes: '30' }, visit: { at: '3', seen: ['sprouts', 'crown_thin'] } }",
    "{ species: 'Northern red oak', stems: [{ diameter: '12' }], date: '2027-05-15', region: 'US-WI', none_in_reach: true }",
];

/// How many pages the page prints on.
pub(crate) async fn pages(
    browser: &Browser,
    size: PrintSize,
) -> Result<usize, Box<dyn std::error::Error + Send + Sync>> {
    // The style sheet's own margins, in centimetres.
    let margins = PrintMargins {
        top: 0.8,
        bottom: 0.7,
        left: 1.4,
        right: 1.2,
    };
    let paper = PrintConfiguration::builder()
        .size(size)
        .margins(margins)
        .shrink_to_fit(false)
        .build()
        .expect("a size of paper");
    let pdf = browser.client.print(paper).await?;
    Ok(String::from_utf8_lossy(&pdf)
        .matches("/Type /Page\n")
        .count())
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn an_answer_is_one_page_on_letter_and_on_a4() {
    let server = Server::of_the_site();
    in_browser(async move |browser| -> Outcome {
        browser.open(&server.address).await?;
        browser.until_ready().await?;
        let mut asked = questions();
        asked.extend(MORE.map(|text| (text.to_owned(), format!("{{ version: 1, ...{text} }}"))));
        let mut wrong: Vec<String> = Vec::new();
        for language in LANGUAGES {
            browser.speak(language).await?;
            for (name, question) in &asked {
                browser.ask(question).await?;
                // What fits the shorter sheet fits the narrower one but for a line or two: that is printed where it is long.
                let both = [PrintSize::US_LETTER, PrintSize::A4];
                let sizes = if language == "en" {
                    &both[..1]
                } else {
                    &both[..]
                };
                for size in sizes {
                    let pages = pages(&browser, size.clone()).await?;
                    if pages != 1 {
                        wrong.push(format!("{pages} pages of {size:?}: {name} in {language}"));
                    }
                }
            }
        }
        assert!(wrong.is_empty(), "{wrong:#?}");
        Ok(())
    });
}

/// The field card and the handout are two sides of a sheet, on both sizes of paper.
#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn pages_made_for_paper_are_two_sides_of_a_sheet() {
    let server = Server::of_the_site();
    in_browser(async move |browser| -> Outcome {
        let mut wrong: Vec<String> = Vec::new();
        for page in [
            "paper/card/",
            "paper/day/",
            "es/paper/card/",
            "es/paper/day/",
        ] {
            browser
                .open_page(&format!("{}{page}", server.address))
                .await?;
            for size in [PrintSize::US_LETTER, PrintSize::A4] {
                let sides = pages(&browser, size.clone()).await?;
                if sides != 2 {
                    wrong.push(format!("{sides} sides of {size:?}: /{page}"));
                }
            }
        }
        assert!(wrong.is_empty(), "{wrong:#?}");
        Ok(())
    });
}
