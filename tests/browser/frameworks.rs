//! As frameworks do it: made, filled, moved, dropped and put back, also before the class is known.

use crate::browser::in_browser;
use crate::embed::host;
use crate::hosts::element;
use crate::site::Server;
use serde_json::json;

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn properties_set_before_the_element_is_defined_count() {
    let site = Server::of_the_site();
    // As frameworks do: made and filled before the script has come.
    let body = format!(
        "<div id=\"app\"></div><script>
           const calculator = document.createElement('slipbark-tree-plan');
           calculator.inputs = {{ version: 1, species: 'Norway maple', stems: [{{ diameter: '9 in' }}], date: '2027-06-12', none_in_reach: true, line_within_reach: 'no' }};
           document.getElementById('app').append(calculator);
         </script><script src=\"{}v1/embed.js\" defer></script>",
        site.address
    );
    let host = host("framework", "", &body);
    in_browser(async move |browser| {
        browser.open(&host.address).await?;
        browser.until_ready().await?;
        let answer = browser
            .run("return document.querySelector('slipbark-tree-plan').compute().stems?.[0].dbh_mm;")
            .await?;
        // 9 in × 25.4 mm/in, exact by definition of the inch.
        assert!(
            answer.as_f64().is_some_and(|mm| (mm - 228.6).abs() < 1e-9),
            "{answer}"
        );
        browser.expect_quiet().await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn what_was_typed_survives_a_move_and_a_return() {
    let site = Server::of_the_site();
    let host = host(
        "moved",
        "",
        &format!("<div id=\"a\">{}</div><div id=\"b\"></div>", element(&site)),
    );
    in_browser(async move |browser| {
        browser.open(&host.address).await?;
        browser.until_ready().await?;
        browser.fill_in_a_tree().await?;
        let moved = browser
            .run_until_done(
                "(async () => {
                   const calculator = document.querySelector('slipbark-tree-plan');
                   document.getElementById('b').append(calculator);
                   await new Promise((resolve) => setTimeout(resolve, 50));
                   const once = calculator.compute().outcome;
                   calculator.remove();
                   await new Promise((resolve) => setTimeout(resolve, 50));
                   document.getElementById('a').append(calculator);
                   return [once, calculator.compute().outcome, calculator.shadowRoot.querySelectorAll('form').length];
                 })().then(done, (error) => done(String(error)));",
            )
            .await?;
        assert_eq!(moved, json!(["do", "do", 1]));
        browser.show_the_answer().await?;
        browser.expect_quiet().await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_framework_that_sets_listens_reorders_and_drops_gets_what_it_set() {
    let site = Server::of_the_site();
    // As frameworks render a keyed list: elements from nothing, properties and listeners before the class is known, then
    // other orders of the same elements, one taken out while it is being made and put back later.
    let body = format!(
        "<div id=\"app\"></div><script>
           window.heard = [];
           const sizes = ['9 in', '12 in', '20 in'];
           const app = document.getElementById('app');
           const calculators = sizes.map((diameter, key) => {{
             const calculator = document.createElement('slipbark-tree-plan');
             calculator.addEventListener('slipbark-ready', () => heard.push(key));
             calculator.inputs = {{ version: 1, species: 'Norway maple', stems: [{{ diameter }}], date: '2027-06-12', none_in_reach: true, line_within_reach: 'no' }};
             calculator.setAttribute('units', 'metric');
             calculator.className = 'card';
             return calculator;
           }});
           app.append(...calculators);
           app.append(calculators[1], calculators[0], calculators[2]);
           calculators[2].remove();
           window.calculators = calculators;
         </script><script src=\"{}v1/embed.js\" defer></script>",
        site.address
    );
    let host = host("keyed", "", &body);
    in_browser(async move |browser| {
        browser.open(&host.address).await?;
        browser
            .until("both that stand there", "heard.length === 2")
            .await?;
        let seen = browser
            .run_until_done(
                "(async () => {
                   const app = document.getElementById('app');
                   // Another order, in one go and one by one, with an answer standing in each.
                   for (const calculator of calculators.slice(0, 2)) calculator.compute();
                   app.append(calculators[2], calculators[0]);
                   await calculators[2].ready;
                   app.replaceChildren(...[...calculators].reverse());
                   await new Promise((resolve) => setTimeout(resolve, 50));
                   const sizes = calculators.map((calculator) => calculator.compute().stems[0].dbh_mm);
                   const forms = calculators.map((calculator) => calculator.shadowRoot.querySelectorAll('form').length);
                   const lists = calculators.map((calculator) => calculator.className + calculator.getAttribute('units'));
                   // All gone: nothing of it goes on by itself.
                   app.replaceChildren();
                   await new Promise((resolve) => setTimeout(resolve, 50));
                   const after = calculators.map((calculator) => calculator.compute() === undefined);
                   return [sizes.map(Math.round), forms, lists, heard.sort().join(), after];
                 })().then(done, (error) => done(String(error)));",
            )
            .await?;
        // 9, 12 and 20 inches at 25.4 mm, exact by definition of the inch, to the whole millimetre.
        assert_eq!(
            seen,
            json!([
                [229, 305, 508],
                [1, 1, 1],
                ["cardmetric", "cardmetric", "cardmetric"],
                "0,1,2",
                [true, true, true]
            ])
        );
        browser.expect_quiet().await
    });
}
