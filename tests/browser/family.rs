//! The other calculators of the family: the same interface, each with its own question and part, and a stop first.

use crate::browser::{Browser, in_browser};
use crate::embed::host;
use crate::rules::expect_no_violations;
use crate::site::Server;
use calc_view::kind::Kind;
use serde_json::{Value, json};

/// An invented maple with a path at a distance; nothing else near.
fn tree(distance: &str) -> String {
    format!(
        "{{ version: 1, species: 'Norway maple', region: 'US-MA', stems: [{{ diameter: '14 1/2 in' }}], date: '2027-06-12',
           targets: [{{ kind: 'path', distance: '{distance}' }}], line_within_reach: 'no' }}"
    )
}

/// The part that a calculator promises, by its id, and how its first sentence begins; none for the tree plan itself.
fn promised(kind: Kind) -> Option<(&'static str, &'static str)> {
    match kind {
        Kind::TreePlan => None,
        Kind::Year => Some((
            "p-when",
            "Norway maple in Massachusetts: on 12 June its bark ",
        )),
        Kind::Ring => Some(("p-do", "Cut a ring ")),
        Kind::Reach => Some((
            "p-keep",
            "Path, 200 ft (61 m) away: outside the reach used here, ",
        )),
        Kind::Effort => Some(("p-long", "About ")),
        Kind::Checks => Some(("p-check", "")),
    }
}

const OWN: [&str; 5] = ["p-when", "p-do", "p-keep", "p-long", "p-check"];

/// Asks, and gives outcome, first sentence, what stands first, and which parts are there.
async fn ask(
    browser: &Browser,
    element: &str,
    question: &str,
) -> Result<Value, fantoccini::error::CmdError> {
    browser
        .run(&format!(
            "const calculator = document.querySelector('{element}');
             calculator.inputs = {question};
             const answer = calculator.compute();
             const region = calculator.shadowRoot.querySelector('.answer-region');
             const first = [...region.children].find((e) => e.checkVisibility() && e.offsetHeight > 2 && !e.matches('.vh'));
             const ids = ['p-when', 'p-do', 'p-keep', 'p-long', 'p-check'].filter((id) => calculator.shadowRoot.getElementById(id));
             const spoken = calculator.shadowRoot.querySelector('.sb > [role=status]').textContent;
             return [answer.outcome, region.querySelector('.say').textContent, first.className, ids, region.querySelectorAll('.note').length > 0, spoken];"
        ))
        .await
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn each_shows_the_part_it_promises_and_a_stop_before_all_else() {
    let site = Server::of_the_site();
    in_browser(async move |browser| {
        for kind in Kind::ALL {
            let Some((part, begins)) = promised(kind) else {
                continue;
            };
            let name = kind.name();
            browser
                .open(&format!("{}embed/{name}/", site.address))
                .await?;
            browser.until_ready().await?;
            let heading = browser
                .run("return document.getElementById('calculator').shadowRoot.querySelector('h2').textContent;")
                .await?;
            assert_eq!(
                heading,
                calc_view::words::calculators::asks(kind).text(),
                "{name}"
            );
            assert!(
                heading.as_str().is_some_and(|text| text.ends_with('?')),
                "{name}"
            );
            expect_no_violations(&browser, name).await?;
            let seen = ask(&browser, "#calculator", &tree("200 ft")).await?;
            assert_eq!(seen[0], "do", "{name}: {seen}");
            let said = seen[1].as_str().unwrap_or_default();
            assert!(said.starts_with(begins), "{name}: {said}");
            let spoken = seen[5].as_str().unwrap_or_default();
            assert!(
                spoken.ends_with(said),
                "{name}: what is seen first is spoken"
            );
            assert_eq!(seen[3], json!([part]), "{name}: {seen}");
            assert_eq!(seen[4], true, "{name} keeps its cautions");
            // Its number stands first, as large on a phone as on a desk; no working and no look-alikes.
            let number = "const region = document.getElementById('calculator').shadowRoot.querySelector('.answer-region');
                 return [region.querySelector('.mini > .ans > :first-child').className, parseFloat(getComputedStyle(region.querySelector('.one b')).fontSize) >= 40,
                   region.querySelectorAll('.mini > .hold').length, region.querySelectorAll('#p-work, #p-ident').length];";
            let number = browser.run(number).await?;
            assert_eq!(number, json!(["one", true, 1, 0]), "{name}");
            expect_no_violations(&browser, &format!("{name}, an answer")).await?;
            crate::narrow::expect_no_sideways_scroll(&browser, name).await?;
            // A path that it can hit: the stop stands first, and no ring is told of.
            let seen = ask(&browser, "#calculator", &tree("40 ft")).await?;
            assert_eq!(seen[0], "professional", "{name}: {seen}");
            assert_eq!(seen[2], "card stop", "{name}: {seen}");
            let own = seen[3].as_array().expect("ids");
            assert!(
                own.is_empty(),
                "{name}: under a stop stands no answer: {seen}"
            );
            expect_no_violations(&browser, &format!("{name}, a stop")).await?;
            // A line within reach is a stop of its own.
            let line = tree("200 ft").replace("'no'", "'yes'");
            let seen = ask(&browser, "#calculator", &line).await?;
            assert_eq!(
                (&seen[0], &seen[2]),
                (&json!("professional"), &json!("card stop")),
                "{name}: {seen}"
            );
            // What was not checked is said first, in the style of a stop.
            let open = "{ version: 1, species: 'Norway maple', stems: [{ diameter: '14 1/2 in' }], date: '2027-06-12' }";
            let seen = ask(&browser, "#calculator", open).await?;
            assert_eq!(
                (&seen[0], &seen[2]),
                (&json!("cannot_tell"), &json!("card cant")),
                "{name}: {seen}"
            );
            browser.console().await?;
        }
        assert_eq!(OWN.len() + 1, Kind::ALL.len());
        Ok(())
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn what_is_missing_is_asked_in_the_card_and_answers_at_once() {
    let site = Server::of_the_site();
    in_browser(async move |browser| {
        browser
            .open(&format!("{}embed/year/", site.address))
            .await?;
        browser.until_ready().await?;
        let open = "{ version: 1, species: 'Norway maple', stems: [{ diameter: '14 1/2 in' }], date: '2027-06-12' }";
        ask(&browser, "#calculator", open).await?;
        // As a person does it: a value, then the change that the browser tells of.
        let answer = "const root = document.getElementById('calculator').shadowRoot;
             const card = () => root.querySelector('.card, .mini').className;
             const change = (css, value) => {
               const control = root.querySelector(css);
               if (control.type === 'radio') control.checked = true; else control.value = value;
               control.dispatchEvent(new Event('change', { bubbles: true, composed: true }));
             };";
        let went = browser
            .run(&format!(
                "{answer}
                 const asked = card();
                 change(\"[name='ask.kind']\", 'path');
                 const waits = card();
                 change(\"[name='ask.far']\", '200 ft');
                 const one = [card(), Boolean(root.querySelector(\"[name='ask.kind']\")), root.activeElement?.className];
                 change(\"[name='ask.line'][value=no]\", '');
                 return [asked, waits, one, card(), root.querySelector(\"[name='targets[0].distance']\").value];"
            ))
            .await?;
        let once = json!(["card cant", false, "say"]);
        assert_eq!(
            went,
            json!(["card cant", "card cant", once, "mini", "200 ft"])
        );
        browser.expect_quiet().await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn all_of_them_stand_on_one_page_of_another_site_with_one_interface() {
    let site = Server::of_the_site();
    let elements: String = Kind::ALL
        .iter()
        .map(|kind| match kind {
            // As page builders leave them.
            Kind::Reach => "<div data-slipbark=\"reach\" data-units=\"metric\" data-heading-level=\"2\"></div>".to_owned(),
            kind => format!(
                "<slipbark-{0} heading-level=\"2\" species=\"Norway maple\" size=\"9\"></slipbark-{0}>",
                kind.name()
            ),
        })
        .collect();
    let body = format!(
        "<script>window.told = []; for (const name of ['slipbark-ready', 'slipbark-result', 'slipbark-input'])
           document.addEventListener(name, (event) => told.push([name, event.target.localName, event.detail.schema]));</script>
         <script src=\"{}v1/embed.js\" defer></script>{elements}",
        site.address
    );
    let host = host("family", "", &body);
    in_browser(async move |browser| {
        browser.open(&host.address).await?;
        browser.until_ready().await?;
        for kind in Kind::ALL {
            let tag = format!("slipbark-{}", kind.name());
            let same = browser
                .run(&format!(
                    "const calculator = document.querySelector('{tag}');
                     const first = calculator.inputs.stems?.[0]?.diameter ?? null;
                     calculator.inputs = {};
                     const outcome = calculator.compute().outcome;
                     const frozen = Object.isFrozen(calculator.result);
                     const has = typeof calculator.version + typeof calculator.dataVersion;
                     calculator.focusFirst();
                     const focus = calculator.shadowRoot.activeElement?.id;
                     calculator.reset();
                     return [first, outcome, frozen, has, focus, calculator.result, calculator.isConnected];",
                    tree("200 ft")
                ))
                .await?;
            let first = if kind == Kind::Reach {
                json!(null)
            } else {
                json!("9")
            };
            assert_eq!(
                same,
                json!([first, "do", true, "stringstring", "f-find", null, true]),
                "{tag}"
            );
        }
        let told = browser.run("return told.filter(([name]) => name === 'slipbark-result').map(([, tag, schema]) => [tag, schema]);").await?;
        let wanted: Vec<Value> = Kind::ALL
            .iter()
            .map(|kind| json!([format!("slipbark-{}", kind.name()), 1]))
            .collect();
        assert_eq!(told, json!(wanted));
        let ready = browser
            .run("return told.filter(([name]) => name === 'slipbark-ready').length;")
            .await?;
        assert_eq!(ready, 6);
        expect_no_violations(&browser, "the family on one page").await?;
        browser.expect_quiet().await?;
        browser
            .expect_requests_only_to(&[&host.address, &site.address, "data:"])
            .await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn each_steps_down_to_its_own_frame() {
    let site = Server::of_the_site();
    let head = format!(
        "<meta http-equiv=\"Content-Security-Policy\" content=\"script-src {0}; connect-src {0}; frame-src {0}\">",
        site.origin()
    );
    let body = format!(
        "<script src=\"{}v1/embed.js\" defer></script><slipbark-ring units=\"metric\"><p>x</p></slipbark-ring>",
        site.address
    );
    let host = host("family-frame", &head, &body);
    in_browser(async move |browser| {
        browser.open(&host.address).await?;
        let shown = "document.querySelector('slipbark-ring iframe')?.offsetHeight >= 320 && document.querySelector('slipbark-ring p').hidden";
        browser.until("the frame", shown).await?;
        let frame = browser.client.find(fantoccini::Locator::Css("iframe"));
        frame.await?.enter_frame().await?;
        let where_to = "return [location.pathname, document.getElementById('calculator').localName, document.getElementById('calculator').getAttribute('units')];";
        assert_eq!(
            browser.run(where_to).await?,
            json!(["/embed/ring/", "slipbark-ring", "metric"])
        );
        Ok(())
    });
}
