//! What outlives the page: the draft on the device and the question in a link, on our own pages alone.

use crate::Outcome;
use crate::browser::{Browser, in_browser};
use crate::calculator::ANSWER;
use crate::embed::host;
use crate::rules::expect_no_violations;
use crate::site::Server;
use serde_json::{Value, json};

const ROOT: &str = "document.querySelector('slipbark-tree-plan').shadowRoot";
/// All that the page keeps on the device beside its own files.
const HELD: &str = "return [Object.keys(localStorage), sessionStorage.length, document.cookie];";

/// The key of the draft of our own first page.
const DRAFT: &str = "slipbark-draft /#calculator";

/// Presses the button that keeps a draft; under an answer the form is folded.
pub(crate) async fn keep_a_draft(browser: &Browser) -> Outcome {
    browser
        .run(&format!("{ROOT}.querySelector('.asked').open = true;"))
        .await?;
    browser.press("[data-act=keep]").await
}

impl Browser {
    /// What stands in the field of the trunk's size, and what is said of draft and link.
    async fn size_and_notes(&self) -> Result<Value, fantoccini::error::CmdError> {
        self.run(&format!(
            "const root = {ROOT};
             return [root.querySelector(`[name='stems[0].diameter']`).value,
               root.getElementById('kept').querySelector('b')?.textContent ?? '',
               root.getElementById('shared').querySelector('b')?.textContent ?? ''];"
        ))
        .await
    }

    async fn expect_notes(&self, size: &str, kept: &str, shared: &str) -> Outcome {
        assert_eq!(self.size_and_notes().await?, json!([size, kept, shared]));
        Ok(())
    }
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_draft_survives_reload_and_return_until_it_is_forgotten() {
    let server = Server::of_the_site();
    in_browser(async move |browser| {
        browser.open(&server.address).await?;
        browser.until_ready().await?;
        assert_eq!(browser.run(HELD).await?, json!([[], 0, ""]));
        browser.expect_notes("", "", "").await?;
        browser.fill_in_a_tree().await?;
        // Nothing before its reader has asked for it.
        browser
            .expect_notes("14 1/2", "No draft is kept.", "")
            .await?;
        assert_eq!(browser.run(HELD).await?, json!([[], 0, ""]));
        browser.press("[data-act=keep]").await?;
        browser
            .expect_notes("14 1/2", "Draft on this device.", "")
            .await?;
        assert_eq!(browser.run(HELD).await?, json!([[DRAFT], 0, ""]));
        expect_no_violations(&browser, "a form with a draft").await?;
        browser.client.refresh().await?;
        browser.until_ready().await?;
        browser
            .expect_notes("14 1/2", "Draft on this device.", "")
            .await?;
        let picked = format!(
            "return [...{ROOT}.querySelectorAll('form :checked')].map((it) => it.value).filter((it) => /maple|across|nothing/.test(it));"
        );
        assert_eq!(
            browser.run(&picked).await?,
            json!(["Norway maple", "in across", "nothing"])
        );
        browser.show_the_answer().await?;
        // As when a phone is locked and the page is thrown away: it begins anew, answer and all.
        browser.open(&format!("{}method/", server.address)).await?;
        browser.open(&server.address).await?;
        browser.until_ready().await?;
        browser.until("the answer", ANSWER).await?;
        let quiet = "return [scrollY, document.activeElement === document.body];";
        assert_eq!(
            browser.run(quiet).await?,
            json!([0, true]),
            "nothing moves by itself"
        );
        browser.press("[data-act=forget]").await?;
        browser.expect_notes("14 1/2", "Forgotten.", "").await?;
        browser.press("[name='stems[0].diameter']").await?;
        browser.type_into("[name='stems[0].diameter']", "7").await?;
        assert_eq!(browser.run(HELD).await?, json!([[], 0, ""]));
        browser.client.refresh().await?;
        browser.until_ready().await?;
        browser.expect_notes("", "", "").await?;
        browser.expect_quiet().await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn where_storage_is_refused_or_full_it_says_so_and_answers() {
    let server = Server::of_the_site();
    in_browser(async move |browser| {
        // Full: the browser itself refuses to take more.
        browser.open(&format!("{}method/", server.address)).await?;
        let fill = "let size = 1 << 20; for (let all = ''; size >= 1; ) {
             try { localStorage.setItem('full', all + 'x'.repeat(size)); all += 'x'.repeat(size); } catch { size >>= 1; } }";
        browser.run(fill).await?;
        browser.open_an_answer(&server.address).await?;
        keep_a_draft(&browser).await?;
        browser.expect_notes("14 1/2", "No draft.", "").await?;
        expect_no_violations(&browser, "no draft").await?;
        browser.run("localStorage.clear();").await?;
        // Refused: each look at it throws, as browsers do where cookies are blocked.
        let refuse = "for (const name of ['localStorage', 'sessionStorage']) Object.defineProperty(window, name,
             { get() { throw new DOMException('Access is denied for this document.', 'SecurityError'); } });";
        browser
            .devtools(
                "Page.addScriptToEvaluateOnNewDocument",
                json!({ "source": refuse }),
            )
            .await?;
        browser.open_an_answer(&server.address).await?;
        keep_a_draft(&browser).await?;
        browser.expect_notes("14 1/2", "No draft.", "").await?;
        assert_eq!(browser.outcome().await?, "do");
        browser.press(".p-work > summary").await?;
        browser.press("[data-act=copy]").await?;
        browser.expect_quiet().await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn on_another_site_there_is_no_draft_and_no_link() {
    let site = Server::of_the_site();
    let host = host(
        "no-draft",
        "",
        &format!(
            "<script src=\"{}v1/embed.js\" defer></script><slipbark-tree-plan></slipbark-tree-plan>",
            site.address
        ),
    );
    in_browser(async move |browser| {
        // A link's fragment on their page is theirs.
        let address = format!("{}#v=1&species=ash&size=9", host.address);
        browser.open_an_answer(&address).await?;
        browser.expect_notes("14 1/2", "", "").await?;
        let buttons =
            format!("return {ROOT}.querySelectorAll('[data-act=link], [data-act=forget]').length;");
        assert_eq!(browser.run(&buttons).await?, 0);
        assert_eq!(browser.run(HELD).await?, json!([[], 0, ""]));
        browser.expect_quiet().await
    });
}

/// Presses "Copy link" and gives what went to the clipboard.
async fn copied_link(
    browser: &Browser,
) -> Result<String, Box<dyn std::error::Error + Send + Sync>> {
    browser
        .run("Object.defineProperty(navigator, 'clipboard', { configurable: true, value: { writeText: async (text) => { window.copied = text; } } });")
        .await?;
    browser.press("[data-act=link]").await?;
    browser
        .until(
            "word that it is copied",
            &format!("{ROOT}.querySelector('.told')?.textContent.startsWith('Copied.')"),
        )
        .await?;
    let link = browser.run("return window.copied;").await?;
    Ok(link.as_str().unwrap_or_default().to_owned())
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_link_shows_someone_else_s_tree_and_leaves_the_draft_alone() {
    let server = Server::of_the_site();
    in_browser(async move |browser| {
        browser.open_an_answer(&server.address).await?;
        let link = copied_link(&browser).await?;
        let (page, fragment) = link.split_once('#').expect("a fragment");
        assert_eq!(page, server.address);
        assert_eq!(
            fragment,
            "v=1&species=Norway+maple&date=2027-06-12&line_within_reach=no&none_in_reach=yes&size-unit=in&size=14+1%2F2"
        );
        let answer = browser
            .run(&format!("return {ANSWER}.textContent;"))
            .await?;
        // The reader's own draft, with another size.
        keep_a_draft(&browser).await?;
        browser.press("[name='stems[0].diameter']").await?;
        browser.type_into("[name='stems[0].diameter']", "7").await?;
        let draft = &format!("return localStorage.getItem('{DRAFT}');");
        let before = browser.run(draft).await?;
        assert!(before.is_string(), "{before}");
        // Opened over the page that stands there, as from a bar of addresses.
        browser
            .run(&format!("location.hash = '{fragment}';"))
            .await?;
        browser
            .until(
                "the banner",
                &format!("{ROOT}.getElementById('shared').textContent"),
            )
            .await?;
        browser.until("the answer", ANSWER).await?;
        browser
            .expect_notes("14 1/2", "", "Someone else’s tree.")
            .await?;
        assert_eq!(
            browser
                .run(&format!("return {ANSWER}.textContent;"))
                .await?,
            answer
        );
        expect_no_violations(&browser, "someone else's tree").await?;
        crate::narrow::expect_no_sideways_scroll(&browser, "someone else's tree").await?;
        browser.type_into("[name='stems[0].diameter']", "9").await?;
        browser.show_the_answer().await?;
        assert_eq!(browser.run(draft).await?, before, "the draft is as it was");
        browser.press("[data-act=own]").await?;
        assert_eq!(browser.run("return location.hash;").await?, "");
        let notes = browser.size_and_notes().await?;
        assert_eq!(notes[2], "");
        assert_ne!(notes[0], "14 1/2", "{notes}");
        assert!(
            notes[0].as_str().is_some_and(|size| size.contains('7')),
            "{notes}"
        );
        browser.expect_quiet().await?;
        let requests = browser.requests().await?;
        assert!(
            requests.iter().all(|request| !request.contains("Norway")),
            "{requests:?}"
        );
        Ok(())
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_link_with_too_much_or_unknown_things_is_told_in_words() {
    let server = Server::of_the_site();
    in_browser(async move |browser| {
        browser
            .open(&format!(
                "{}#v=7&species=ash&size=9&wind=strong&date=2027-06-12",
                server.address
            ))
            .await?;
        browser.until_ready().await?;
        browser
            .expect_notes("9", "", "Someone else’s tree.")
            .await?;
        let said =
            format!("return {ROOT}.getElementById('shared').querySelector('p').textContent;");
        let said = browser.run(&said).await?;
        assert!(
            said.as_str()
                .is_some_and(|said| said.contains("v and wind")),
            "{said}"
        );
        browser.open(&format!("{}method/", server.address)).await?;
        let long = "x".repeat(400);
        browser
            .open(&format!("{}#v=1&species={long}", server.address))
            .await?;
        browser.until_ready().await?;
        browser
            .expect_notes("", "", "The link was not read.")
            .await?;
        expect_no_violations(&browser, "a link that was not read").await?;
        // A question too long for a link is refused in words too.
        browser
            .run("localStorage.clear(); location.hash = '';")
            .await?;
        browser.fill_in_a_tree().await?;
        browser
            .run(
                "const calculator = document.querySelector('slipbark-tree-plan');
                 calculator.inputs = { ...calculator.inputs, none_in_reach: false, line_within_reach: 'no',
                   targets: Array.from({ length: 12 }, (_, i) => ({ kind: 'fence', distance: `${200 + i} ft` })) };
                 calculator.compute();",
            )
            .await?;
        browser.press("[data-act=link]").await?;
        browser
            .until(
                "the refusal",
                &format!("{ROOT}.querySelector('.told')?.textContent.includes('400')"),
            )
            .await?;
        browser.expect_quiet().await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn each_page_has_its_own_draft_and_what_it_presets_comes_first() {
    let site = Server::of_the_site();
    let folder = crate::site::folder("drafts");
    let page = |presets: &str| {
        format!(
            "<!doctype html><html lang=\"en\"><meta charset=\"utf-8\"><title>A land trust</title><link rel=\"icon\" href=\"data:,\">\
             <script src=\"{0}v1/embed.js\" defer></script><slipbark-tree-plan storage=\"draft\"{presets}></slipbark-tree-plan></html>",
            site.address
        )
    };
    let write = |name: &str, presets: &str| {
        std::fs::write(folder.join(name), page(presets)).expect("the page can be written");
    };
    write("index.html", "");
    write("other.html", "");
    let host = Server::of(&folder, 0);
    let preset = folder.join("index.html");
    let with_presets = page(" species=\"Red maple\" size=\"9\" region=\"US-VT\"");
    in_browser(async move |browser| {
        browser.open(&host.address).await?;
        browser.until_ready().await?;
        browser.fill_in_a_tree().await?;
        keep_a_draft(&browser).await?;
        let keys = "return Object.keys(localStorage).sort();";
        assert_eq!(browser.run(keys).await?, json!(["slipbark-draft /#"]));
        // Another page, and the same one with another query, know nothing of it.
        for other in ["other.html", "?p=2"] {
            browser.open(&format!("{}{other}", host.address)).await?;
            browser.until_ready().await?;
            browser.expect_notes("", "", "").await?;
        }
        browser.open(&host.address).await?;
        browser.until_ready().await?;
        browser
            .expect_notes("14 1/2", "Draft on this device.", "")
            .await?;
        // The page says now what it is about: that counts, and the rest of the draft stays.
        std::fs::write(preset, with_presets)?;
        browser.open(&host.address).await?;
        browser.until_ready().await?;
        browser
            .expect_notes("9", "Draft on this device.", "")
            .await?;
        let inputs = "const { species, region, date } = document.querySelector('slipbark-tree-plan').inputs; return [species, region, date];";
        assert_eq!(
            browser.run(inputs).await?,
            json!(["Red maple", "US-VT", "2027-06-12"])
        );
        browser.expect_quiet().await
    });
}
