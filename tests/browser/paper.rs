//! On paper: an answer is one page, Letter or A4, in one ink; only a stop with much to say may take two.

use crate::Outcome;
use crate::browser::in_browser;
use crate::site::Server;
use fantoccini::wd::{PrintConfiguration, PrintMargins, PrintSize};

/// A plain one, one with a place and dates, one of three stems with one to keep and the aids in it, one that waits.
const QUESTIONS: [&str; 4] = [
    "{ species: 'Norway maple', stems: [{ diameter: '14 1/2' }], date: '2027-06-12', region: 'US-VT',
       targets: [{ kind: 'path', distance: '200' }], line_within_reach: 'no' }",
    "{ species: 'Norway maple', stems: [{ diameter: '14 1/2' }], date: '2027-06-05', region: 'US-MA', none_in_reach: true,
       place: { latitude: '42.4', longitude: '-71' }, timed: { trees: ['12', '14'], minutes: '30' } }",
    "{ species: 'Red maple', stems: [{ diameter: '10' }, { diameter: '8' }, { diameter: '12' }], date: '2027-06-01',
       region: 'US-VT', none_in_reach: true, goal: 'spare_one', spare: 0, height: '60', signs: ['vines'],
       timed: { trees: ['12', '14'], minutes: '30' }, visit: { at: '3', seen: ['sprouts', 'crown_thin'] } }",
    "{ species: 'Northern red oak', stems: [{ diameter: '12' }], date: '2027-05-15', region: 'US-WI', none_in_reach: true }",
];

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn an_answer_is_one_page_on_letter_and_on_a4() {
    let server = Server::of_the_site();
    in_browser(async move |browser| -> Outcome {
        browser.open(&server.address).await?;
        browser.until_ready().await?;
        for question in QUESTIONS {
            let ask = format!(
                "const calculator = document.querySelector('slipbark-tree-plan');
                 calculator.inputs = {{ version: 1, ...{question} }}; calculator.compute();"
            );
            browser.run(&ask).await?;
            for size in [PrintSize::US_LETTER, PrintSize::A4] {
                // The style sheet's own margins, in centimetres.
                let margins = PrintMargins {
                    top: 0.8,
                    bottom: 0.7,
                    left: 1.4,
                    right: 1.2,
                };
                let paper = PrintConfiguration::builder()
                    .size(size.clone())
                    .margins(margins)
                    .shrink_to_fit(false)
                    .build()
                    .expect("a size of paper");
                let pdf = browser.client.print(paper).await?;
                let pages = String::from_utf8_lossy(&pdf)
                    .matches("/Type /Page\n")
                    .count();
                assert_eq!(pages, 1, "{size:?}: {question}");
            }
        }
        Ok(())
    });
}
