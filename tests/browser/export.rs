//! What a host may take and reach: the calendar file, before it is downloaded or as a text, and the parts of the style.

use crate::browser::in_browser;
use crate::embed::host;
use crate::hosts::element;
use crate::site::Server;
use serde_json::json;

const ASK: &str = "const calculator = document.querySelector('slipbark-tree-plan');
    const ask = (more) => { calculator.inputs = { version: 1, species: 'Norway maple', stems: [{ diameter: '14 1/2' }], date: '2027-06-12', ...more }; return calculator.compute().outcome; };";

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_host_may_take_the_calendar_before_it_is_downloaded_and_gets_none_of_a_stop() {
    let site = Server::of_the_site();
    let host = host("export", "", &element(&site));
    in_browser(async move |browser| {
        browser.open(&host.address).await?;
        browser.until_ready().await?;
        let told = browser
            .run(&format!(
                "{ASK}
                 const before = calculator.exportIcs() === undefined;
                 const outcome = ask({{ none_in_reach: true }});
                 let files = 0;
                 const make = URL.createObjectURL;
                 URL.createObjectURL = (blob) => {{ files += 1; return make.call(URL, blob); }};
                 const heard = [];
                 const take = (event) => {{ heard.push(event.detail); event.preventDefault(); }};
                 document.addEventListener('slipbark-export', take);
                 const button = () => calculator.shadowRoot.querySelector('[data-act=calendar]').click();
                 button();
                 const taken = files;
                 document.removeEventListener('slipbark-export', take);
                 button();
                 const text = calculator.exportIcs();
                 const events = (text) => text.split('BEGIN:VEVENT').length - 1;
                 return [before, outcome, taken, files, heard.map((it) => [it.schema, it.kind, it.filename, events(it.text)]),
                   events(text), calculator.result.visits.length];"
            ))
            .await?;
        let visits = told[6].clone();
        assert!(visits.as_u64().is_some_and(|visits| visits > 0), "{told}");
        let heard = json!([[1, "text/calendar", "slipbark-visits.ics", visits]]);
        assert_eq!(told, json!([true, "do", 0, 1, heard, visits, visits]));
        let stopped = browser
            .run(&format!(
                "{ASK} return [ask({{ targets: [{{ kind: 'path', distance: '20 ft' }}] }}), calculator.exportIcs() === undefined];"
            ))
            .await?;
        assert_eq!(stopped, json!(["professional", true]));
        browser.expect_quiet().await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_style_sheet_reaches_the_named_parts_and_no_caution() {
    let site = Server::of_the_site();
    let host = host(
        "parts",
        "<style>slipbark-tree-plan::part(tag) { outline: 7px solid rgb(1, 2, 3); } slipbark-tree-plan::part(plot) { opacity: .5; }</style>",
        &element(&site),
    );
    in_browser(async move |browser| {
        browser.open(&host.address).await?;
        browser.until_ready().await?;
        let told = browser
            .run(&format!(
                "{ASK} ask({{ none_in_reach: true }});
                 const root = calculator.shadowRoot;
                 const parts = [...new Set([...root.querySelectorAll('[part]')].map((it) => it.getAttribute('part')))].sort();
                 const cautions = [...root.querySelectorAll('.note')];
                 const style = (part) => getComputedStyle(root.querySelector(`.result [part=${{part}}]`));
                 return [parts, style('tag').outlineWidth, style('plot').opacity, cautions.length > 3,
                   cautions.some((it) => it.closest('[part]:not([part=result])') || it.querySelector('[part]'))];"
            ))
            .await?;
        let parts = [
            "button", "field", "form", "plot", "result", "tag", "working",
        ];
        assert_eq!(told, json!([parts, "7px", "0.5", true, false]));
        browser.expect_quiet().await
    });
}
