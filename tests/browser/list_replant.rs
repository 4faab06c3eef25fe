//! Replanting on the page for lists: what the program says, natives from a file that nothing but this part fetches, and the
//! distance between two trees.

use crate::browser::in_browser;
use crate::narrow::expect_no_sideways_scroll_at;
use crate::property_page::{click, open, open_sample, plan, text, words_of};
use crate::rules::{expect_contrast, expect_no_violations};
use crate::site::{Server, copy, folder, program};
use std::path::Path;
use std::process::Command;

/// In front of the worker's script: tells of each fetch of the file of natives. The copy for no signal has a worker of its own.
const COUNTING: &str = "const plain = self.fetch; const counted = new BroadcastChannel('natives');
self.fetch = (...all) => { if (String(all[0]).includes('natives')) counted.postMessage(1); return plain(...all); };\n";

/// The site with a worker that tells of its fetches.
fn counting() -> std::io::Result<Server> {
    let site = copy("list-natives");
    for entry in std::fs::read_dir(site.join("assets"))? {
        let path = entry?.path();
        let name = path
            .file_name()
            .unwrap_or_default()
            .to_string_lossy()
            .into_owned();
        if name.starts_with("list-worker") {
            let script = std::fs::read_to_string(&path)?;
            std::fs::write(&path, [COUNTING, &script].concat())?;
        }
    }
    Ok(Server::of(&site, 0))
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn replanting_says_what_the_program_says_and_fetches_natives_only_when_it_is_opened() {
    let site = counting().expect("a copy of the site");
    in_browser(async move |browser| {
        for language in ["", "es/"] {
            open(&browser, &site, language).await?;
            browser
                .run("window.natives = 0; new BroadcastChannel('natives').onmessage = () => { window.natives += 1; };")
                .await?;
            open_sample(&browser).await?;
            browser
                .run("document.getElementById('region').value = 'US-MA';")
                .await?;
            plan(&browser).await?;
            let fetched = "return window.natives;";
            assert_eq!(browser.run(fetched).await?, 0, "before it is opened");
            click(&browser, "#l-replant > summary").await?;
            browser
                .until(
                    "natives",
                    "document.querySelectorAll('#t-replant ul').length === 2",
                )
                .await?;
            assert_eq!(browser.run(fetched).await?, 1);
            let said = async || -> Result<String, Box<dyn std::error::Error + Send + Sync>> {
                let said = text(&browser, "#t-replant").await?;
                Ok(said.split_whitespace().collect::<Vec<_>>().join(" "))
            };
            let by_program =
                async || -> Result<Vec<String>, Box<dyn std::error::Error + Send + Sync>> {
                    let mut words = words_of(&text(&browser, "#l-good code").await?);
                    let sample =
                        Path::new(env!("CARGO_MANIFEST_DIR")).join("../content/sample/trees.csv");
                    words[2] = sample.display().to_string();
                    let out = words
                        .iter()
                        .position(|word| word == "--out")
                        .expect("a folder");
                    words[out + 1] = folder("replanted").display().to_string();
                    let told = Command::new(program()).args(&words[1..]).output()?;
                    let told = String::from_utf8(told.stdout)?;
                    let lines = told
                        .lines()
                        .skip_while(|line| !line.contains(" ft²") && !line.contains(" m²"));
                    let lines = lines.filter(|line| !line.contains("--spacing"));
                    Ok(lines.map(str::to_owned).collect())
                };
            let (page, program) = (said().await?, by_program().await?);
            assert!(program.len() > 8, "{program:?}");
            for line in &program {
                assert!(page.contains(line), "{line}: {page}");
            }
            expect_no_violations(&browser, "list/, replanting").await?;
            expect_contrast(&browser, "list/, replanting").await?;
            expect_no_sideways_scroll_at(&browser, "list/, replanting", &[320, 390]).await?;
            // No distance: it is said beside the field, and what is proposed stays in use.
            for (typed, until) in [
                ("far", "#l-field-wrong"),
                ("2.5 m", "#t-replant:not(:has(#l-field-wrong))"),
            ] {
                browser
                    .run(&format!(
                        "const field = document.getElementById('spacing'); field.value = '{typed}'; field.form.requestSubmit();"
                    ))
                    .await?;
                browser
                    .until(typed, &format!("document.querySelector(`{until}`)"))
                    .await?;
            }
            browser
                .until("the command", "document.querySelector('#l-good code').textContent.includes('--spacing \"2.5 m\"')")
                .await?;
            let (page, program) = (said().await?, by_program().await?);
            for line in &program {
                assert!(page.contains(line), "{line}: {page}");
            }
            assert_eq!(browser.run(fetched).await?, 1, "once is enough");
            browser.expect_quiet().await?;
        }
        Ok(())
    });
}
