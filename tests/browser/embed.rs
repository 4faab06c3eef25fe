//! The calculator on someone else's page: another origin, one script line.

use crate::browser::in_browser;
use crate::site::{Server, folder};

/// Writes a host page and serves it from an origin of its own.
pub(crate) fn host(test: &str, head: &str, body: &str) -> Server {
    host_with(test, "lang=\"en\"", head, body)
}

/// The same with attributes of its root.
pub(crate) fn host_with(test: &str, root: &str, head: &str, body: &str) -> Server {
    let folder = folder(test);
    let page = format!(
        "<!doctype html><html {root}><head><meta charset=\"utf-8\"><title>A land trust</title>\
         <link rel=\"icon\" href=\"data:,\">{head}</head><body><main><h1>A land trust</h1>{body}</main></body></html>"
    );
    std::fs::write(folder.join("index.html"), page).expect("the page can be written");
    Server::of(&folder, 0)
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn one_line_puts_it_on_another_origin() {
    let site = Server::of_the_site();
    let line = format!(
        "<script src=\"{}v1/embed.js\" defer></script>\
         <slipbark-tree-plan><p><a href=\"{}\">Plan one tree</a></p></slipbark-tree-plan>",
        site.address, site.address
    );
    let host = host("one-line", "", &line);
    in_browser(async move |browser| {
        browser.open(&host.address).await?;
        browser.until_ready().await?;
        // The module is asked for beside the scripts, not after them, and once.
        let asked = browser
            .run(
                "return performance.getEntriesByType('resource').filter(({ name }) => name.endsWith('.wasm'))
                   .map(({ initiatorType }) => initiatorType);",
            )
            .await?;
        assert_eq!(asked, serde_json::json!(["link"]));
        // It takes neither the focus nor the page's place, and stores nothing.
        let state = browser
            .run_until_done(
                "(async () => [document.activeElement === document.body, scrollY, localStorage.length, document.cookie,
                   (await navigator.serviceWorker.getRegistrations()).length, (await caches.keys()).length])().then(done, (e) => done(String(e)));",
            )
            .await?;
        assert_eq!(state, serde_json::json!([true, 0, 0, "", 0, 0]));
        browser.fill_in_a_tree().await?;
        browser.show_the_answer().await?;
        assert_eq!(browser.outcome().await?, "do");
        crate::rules::expect_no_violations(&browser, "an answer on another site").await?;
        browser.expect_quiet().await?;
        browser
            .expect_requests_only_to(&[&host.address, &site.address, "data:"])
            .await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn loaded_twice_moved_and_removed_it_still_works() {
    let site = Server::of_the_site();
    let script = format!(
        "<script src=\"{}v1/embed.js\" defer></script>",
        site.address
    );
    let host = host(
        "twice",
        &format!("{script}{script}"),
        &format!(
            "<div id=\"a\"><slipbark-tree-plan></slipbark-tree-plan></div><div id=\"b\"></div>{script}"
        ),
    );
    in_browser(async move |browser| {
        browser.open(&host.address).await?;
        browser.until_ready().await?;
        let outcome = browser
            .run_until_done(
                "(async () => {
                   const calculator = document.querySelector('slipbark-tree-plan');
                   document.getElementById('b').append(calculator);
                   await calculator.ready;
                   calculator.remove();
                   await new Promise((resolve) => setTimeout(resolve, 50));
                   document.getElementById('a').append(calculator);
                   await calculator.ready;
                   const fresh = document.createElement('slipbark-tree-plan');
                   document.body.append(fresh);
                   await fresh.ready;
                   return document.querySelectorAll('slipbark-tree-plan').length;
                 })().then(done, (error) => done(String(error)));",
            )
            .await?;
        assert_eq!(outcome, 2);
        browser.expect_quiet().await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_script_line_or_a_div_stands_in_where_unknown_tags_are_removed() {
    let site = Server::of_the_site();
    let body = format!(
        "<p id=\"before\">Before</p><script src=\"{0}v1/embed.js\" data-slipbark=\"tree-plan\" data-heading-level=\"4\" defer></script>\
         <p id=\"after\">After</p><div data-slipbark=\"tree-plan\" data-units=\"metric\"></div>",
        site.address
    );
    let host = host("script-line", "", &body);
    in_browser(async move |browser| {
        browser.open(&host.address).await?;
        browser.until_ready().await?;
        let places = browser
            .run(
                "const all = [...document.querySelectorAll('slipbark-tree-plan')];
                 return all.map((e) => [e.previousElementSibling?.tagName ?? e.parentElement.tagName, e.getAttribute('heading-level'), e.getAttribute('units')]);",
            )
            .await?;
        assert_eq!(
            places,
            serde_json::json!([["SCRIPT", "4", null], ["DIV", null, "metric"]])
        );
        browser.expect_quiet().await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_policy_that_refuses_webassembly_keeps_the_link_and_says_why_once() {
    let site = Server::of_the_site();
    let policy = format!(
        "<meta http-equiv=\"Content-Security-Policy\" content=\"script-src {0}; connect-src {0}; frame-src 'none'\">",
        site.origin()
    );
    let body = format!(
        "<script src=\"{0}v1/embed.js\" defer></script>\
         <slipbark-tree-plan><p id=\"link\"><a href=\"{0}\">Plan one tree</a></p></slipbark-tree-plan>",
        site.address
    );
    let host = host("strict", &policy, &body);
    in_browser(async move |browser| {
        browser.open(&host.address).await?;
        let failed = "document.querySelector('slipbark-tree-plan').ready?.then(() => done('ready'), (e) => done(String(e))) ?? done('not defined');";
        browser
            .until(
                "the element's class",
                "customElements.get('slipbark-tree-plan')",
            )
            .await?;
        let why = browser.run_until_done(failed).await?;
        assert!(
            why.as_str().is_some_and(|why| why.contains("unsafe-eval")),
            "{why}"
        );
        let height = browser
            .run("return document.getElementById('link').offsetHeight;")
            .await?;
        assert!(
            height.as_u64() > Some(0),
            "the link stays visible: {height}"
        );
        let console = browser.console().await?;
        let ours: Vec<_> = console
            .iter()
            .filter(|line| line.contains("Slipbark:"))
            .collect();
        assert_eq!(ours.len(), 1, "{console:#?}");
        assert!(ours[0].contains("'wasm-unsafe-eval'"), "{ours:?}");
        Ok(())
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn in_a_frame_it_tells_its_height_and_no_more() {
    let site = Server::of_the_site();
    let body = format!(
        "<iframe src=\"{}embed/tree-plan/?units=metric&id=one&onclick=x\" title=\"Tree plan\" width=\"300\" height=\"400\"></iframe>",
        site.address
    );
    // The host page counts messages as they come.
    let head = "<script>window.told = []; addEventListener('message', (event) => told.push([event.origin, event.data]));</script>";
    let host = host("frame", head, &body);
    in_browser(async move |browser| {
        browser.open(&host.address).await?;
        browser.until("the height", "told.length").await?;
        let told = browser.run("return told[0];").await?;
        assert_eq!(told[0], site.origin());
        let keys = browser
            .run("return [Object.keys(told[0][1]).sort().join(), told[0][1].type, told[0][1].id];")
            .await?;
        assert_eq!(
            keys,
            serde_json::json!(["h,id,slipbark,type", "height", "one"])
        );
        let frame = browser
            .client
            .find(fantoccini::Locator::Css("iframe"))
            .await?;
        frame.enter_frame().await?;
        browser.until_ready().await?;
        let given = browser.run("const p = document.getElementById('calculator'); return [p.getAttribute('units'), p.hasAttribute('onclick')];").await?;
        assert_eq!(given, serde_json::json!(["metric", false]));
        Ok(())
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_div_that_comes_later_is_filled_and_every_form_brings_its_own_link() {
    let site = Server::of_the_site();
    let words = "Our own words";
    let own = |form: &str| crate::rungs::snippet(&site, form).replace("Plan one tree", words);
    let host = host("later", "", &format!("{}{}", own("script"), own("div")));
    let later = serde_json::Value::from(own("div").lines().next().unwrap_or_default());
    in_browser(async move |browser| {
        browser.open(&host.address).await?;
        browser.until_ready().await?;
        // As page builders and frameworks do it: markup set, and an element that is made and put in.
        browser
            .run(&format!(
                "const box = document.createElement('div'); box.innerHTML = {later}; document.body.append(box);
                 const made = Object.assign(document.createElement('div'), {{ id: 'made' }}); made.dataset.slipbark = 'ring';
                 document.body.append(made);"
            ))
            .await?;
        browser
            .until("four of them", "document.querySelectorAll('slipbark-tree-plan').length === 3 && document.querySelector('#made > slipbark-ring')?.version")
            .await?;
        let links = "return [...document.querySelectorAll('slipbark-tree-plan')].map((it) => [it.querySelectorAll('a').length, it.textContent]);";
        let one = serde_json::json!([1, words]);
        assert_eq!(
            browser.run(links).await?,
            serde_json::json!([one, one, one])
        );
        let outside = "return [...document.querySelectorAll('a')].filter((it) => !it.closest('slipbark-tree-plan, slipbark-ring')).length;";
        assert_eq!(browser.run(outside).await?, 0);
        browser.expect_quiet().await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_script_in_a_bundle_says_that_it_has_no_line_of_its_own() {
    let site = Server::of_the_site();
    let script =
        std::fs::read_to_string(crate::site::built().join("v1/embed.js")).expect("it is built");
    // Put into the page as an optimiser does it; and as a module beside its own line.
    let bundled = host(
        "bundled",
        "",
        &format!("<script>{script}</script><slipbark-tree-plan><p>x</p></slipbark-tree-plan>"),
    );
    let module = host(
        "as-module",
        "",
        &format!(
            "<script type=\"module\" src=\"{0}v1/embed.js\"></script><slipbark-tree-plan></slipbark-tree-plan>",
            site.address
        ),
    );
    in_browser(async move |browser| {
        for (host, words) in [
            (&bundled, "Nothing is loaded."),
            (&module, "It uses those beside"),
        ] {
            browser.open(&host.address).await?;
            if words.starts_with("It") {
                browser.until_ready().await?;
            }
            let console = browser.console().await?;
            assert_eq!(console.len(), 1, "{console:#?}");
            assert!(
                console[0].contains("without a script line of its own")
                    && console[0].contains(words),
                "{console:#?}"
            );
        }
        Ok(())
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn module_binding_and_style_are_asked_for_with_the_script_and_not_after_it() {
    let site = Server::of_the_site();
    let line = format!(
        "<script src=\"{}v1/embed.js\" defer></script><slipbark-tree-plan></slipbark-tree-plan>",
        site.address
    );
    let host = host("ahead", "", &line);
    in_browser(async move |browser| {
        browser.open(&host.address).await?;
        browser.until_ready().await?;
        let asked = "const all = performance.getEntriesByType('resource');
             const first = (name) => all.filter((entry) => name.test(entry.name)).sort((a, b) => a.startTime - b.startTime)[0];
             const there = first(/element\\.\\w+\\.js$/).responseEnd;
             return [/engine\\.\\w+\\.wasm$/, /engine\\.\\w+\\.js$/, /calculator\\.\\w+\\.css$/].map((name) => first(name)?.startTime < there);";
        assert_eq!(
            browser.run(asked).await?,
            serde_json::json!([true, true, true])
        );
        browser.expect_quiet().await
    });
}
