//! The sheets of a season on paper: the sample property planned by the program, printed on Letter and on A4, in each
//! language. Every sheet is one page, letters have ten points or more, tags fourteen.

use crate::Outcome;
use crate::browser::{Browser, in_browser};
use crate::paper::pages;
use crate::screens::LANGUAGES;
use crate::site::plan_of_the_sample;
use fantoccini::wd::PrintSize;

/// The least size of the letters that are seen, in points, of those elements that a selector finds.
fn least(selector: &str) -> String {
    format!(
        "const sizes = [...document.querySelectorAll('{selector}')]
           .filter(it => [...it.childNodes].some(node => node.nodeType === 3 && node.data.trim()))
           .map(it => parseFloat(getComputedStyle(it).fontSize) * 0.75);
         return Math.min(...sizes);"
    )
}

/// So many elements.
async fn count(
    browser: &Browser,
    selector: &str,
) -> Result<usize, Box<dyn std::error::Error + Send + Sync>> {
    let script = format!("return document.querySelectorAll('{selector}').length");
    let count = browser.run(&script).await?;
    Ok(usize::try_from(count.as_u64().unwrap_or(0))?)
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn cover_crew_sheets_and_tags_fit_on_letter_and_on_a4() {
    in_browser(async move |browser| -> Outcome {
        for language in LANGUAGES {
            let folder = plan_of_the_sample(language);
            for file in ["cover.html", "crew-sheets.html", "tags.html"] {
                let address = url::Url::from_file_path(folder.join(file)).expect("a path");
                browser.client.goto(address.as_str()).await?;
                let told = format!("{file} in {language}");
                let size = browser.run(&least("body *")).await?;
                assert!(size.as_f64() >= Some(9.99), "{told}: {size} points");
                let wide = browser
                    .run("return [...document.querySelectorAll('table, .tag, .head')].filter(it => it.scrollWidth > it.clientWidth + 1 || it.getBoundingClientRect().width > 719).length")
                    .await?;
                assert_eq!(wide, 0, "{told}: wider than the paper");
                let expected = match file {
                    "cover.html" => 1,
                    _ => count(&browser, ".sheet").await?,
                };
                for paper in [PrintSize::US_LETTER, PrintSize::A4] {
                    let pages = pages(&browser, paper.clone()).await?;
                    assert_eq!(pages, expected, "{told} on {paper:?}");
                }
                match file {
                    "tags.html" => {
                        let tags = count(&browser, ".tag").await?;
                        assert!(tags > 21, "{told}: {tags}");
                        assert_eq!(expected, tags.div_ceil(21), "{told}: 21 a page");
                        let size = browser.run(&least(".tag h2")).await?;
                        assert!(size.as_f64() >= Some(13.99), "{told}: {size} points");
                        let cut = browser
                            .run("return [...document.querySelectorAll('.tag')].filter(it => it.scrollHeight > it.clientHeight).map(it => it.innerText)")
                            .await?;
                        assert_eq!(cut, serde_json::json!([]), "{told}: cut off");
                    }
                    "crew-sheets.html" => {
                        let most = browser
                            .run("return Math.max(...[...document.querySelectorAll('.sheet')].map(it => it.querySelectorAll('tbody tr').length))")
                            .await?;
                        assert!(most.as_u64() >= Some(20), "{told}: {most} trees a page");
                        let size = browser.run(&least(".no")).await?;
                        assert!(size.as_f64() >= Some(13.99), "{told}: {size} points");
                    }
                    _ => {}
                }
            }
        }
        Ok(())
    });
}
