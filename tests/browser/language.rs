//! The language of the page around it: its words are fetched once, and English stands where there are none.

use crate::browser::in_browser;
use crate::embed::host_with;
use crate::site::{Server, pages};

const ROOT: &str = "document.querySelector('slipbark-tree-plan').shadowRoot";
const FETCHED: &str = "performance.getEntriesByType('resource').filter((entry) => entry.name.includes('words-')).length";

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_page_in_spanish_is_answered_in_spanish_and_a_change_of_language_keeps_what_was_typed() {
    let site = Server::of_the_site();
    let line = format!(
        "<script src=\"{}v1/embed.js\" defer></script><slipbark-tree-plan></slipbark-tree-plan>",
        site.address
    );
    let host = host_with("spanish", "lang=\"es-MX\"", "", &line);
    in_browser(async move |browser| {
        browser.open(&host.address).await?;
        browser.until_ready().await?;
        let lang = format!("return {ROOT}.querySelector('.sb').lang;");
        assert_eq!(browser.run(&lang).await?, "es");
        assert_eq!(browser.run(&format!("return {FETCHED};")).await?, 1);
        browser.fill_in_a_tree().await?;
        browser.show_the_answer().await?;
        let answered = |words: &str| {
            format!("{ROOT}.querySelector('#answer').textContent.includes('{words}')")
        };
        browser
            .until("an answer in Spanish", &answered("Mantenga despejado"))
            .await?;
        let size = format!("return {ROOT}.querySelector('#f-stems-0-diameter').value;");
        let typed = browser.run(&size).await?;
        let change = "document.querySelector('slipbark-tree-plan').setAttribute('lang', 'en');";
        browser.run(change).await?;
        browser
            .until("the answer in English", &answered("Keep clear"))
            .await?;
        assert_eq!(browser.run(&lang).await?, "en");
        assert_eq!(browser.run(&size).await?, typed);
        let change = "document.querySelector('slipbark-tree-plan').setAttribute('lang', 'es');";
        browser.run(change).await?;
        browser
            .until(
                "the answer in Spanish again",
                &answered("Mantenga despejado"),
            )
            .await?;
        assert_eq!(browser.run(&format!("return {FETCHED};")).await?, 1);
        browser.expect_quiet().await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_page_in_a_language_without_words_is_answered_in_english_that_is_marked_so() {
    let site = Server::of_the_site();
    let line = format!(
        "<script src=\"{}v1/embed.js\" defer></script><slipbark-tree-plan></slipbark-tree-plan>",
        site.address
    );
    let host = host_with("german", "lang=\"de\"", "", &line);
    in_browser(async move |browser| {
        browser.open(&host.address).await?;
        browser.until_ready().await?;
        let lang = format!("return {ROOT}.querySelector('.sb').lang;");
        assert_eq!(browser.run(&lang).await?, "en");
        assert_eq!(browser.run(&format!("return {FETCHED};")).await?, 0);
        browser.expect_quiet().await
    });
}

/// Every page stands in both languages, says so to programs, leads to the other one, and its calculator speaks as it does.
#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn each_page_has_a_sibling_in_spanish_that_says_who_has_not_read_it() {
    let site = Server::of_the_site();
    in_browser(async move |browser| {
        let all = pages();
        let english: Vec<&String> = all.iter().filter(|page| !page.starts_with("es/")).collect();
        assert_eq!(2 * english.len(), all.len(), "{all:?}");
        for page in english {
            let seen = "return [document.documentElement.lang, document.title,
               [...document.querySelectorAll('link[hreflang]')].map((it) => it.hreflang + ' ' + new URL(it.href).pathname).join(),
               [...document.querySelectorAll('nav.site a[hreflang]')].map((it) => it.textContent + ' ' + it.getAttribute('href')).join(),
               document.querySelector('.unread')?.textContent ?? ''];";
            browser
                .open_page(&format!("{}{page}", site.address))
                .await?;
            let here = browser.run(seen).await?;
            browser
                .open_page(&format!("{}es/{page}", site.address))
                .await?;
            let there = browser.run(seen).await?;
            assert_eq!(here[0], "en", "{page}");
            assert_eq!(there[0], "es", "{page}");
            assert_ne!(here[1], there[1], "{page}: {here}");
            if page.starts_with("embed/") && page != "embed/" && page != "embed/build/" {
                continue; // A bare page for a frame has no head.
            }
            assert_eq!(here[2], format!("en /{page},es /es/{page}"), "{page}");
            assert_eq!(there[2], here[2], "{page}");
            assert_eq!(here[3], format!("Español /es/{page}"));
            assert_eq!(there[3], format!("English /{page}"));
            assert_eq!(here[4], "", "{page}");
            assert!(
                there[4]
                    .as_str()
                    .is_some_and(|it| it.contains("hablante nativo"))
            );
        }
        Ok(())
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn the_form_of_a_group_and_the_filters_of_lists_speak_spanish() {
    let site = Server::of_the_site();
    in_browser(async move |browser| {
        browser
            .open_page(&format!("{}es/embed/build/", site.address))
            .await?;
        let type_in =
            "const field = document.querySelector('[id=\"b-tighten.min_distance_factor\"]');
            field.value = '0,5'; field.dispatchEvent(new Event('input', { bubbles: true }));";
        browser.run(type_in).await?;
        browser
            .until(
                "what is wrong, in Spanish",
                "document.getElementById('b-count').textContent.startsWith('Por corregir antes de usar el archivo: ')",
            )
            .await?;
        let told = browser
            .run("return document.getElementById('b-told').textContent;")
            .await?;
        let told = told.as_str().unwrap_or_default();
        assert!(
            told.contains("Distancias, por: ") && !told.contains("would"),
            "{told}"
        );
        let lines = "return [document.getElementById('b-line-0').value, document.querySelector('label[for=b-line-0]').textContent];";
        let lines = browser.run(lines).await?;
        assert!(
            lines[0]
                .as_str()
                .is_some_and(|it| it.contains("/es/\">Planear un árbol<")
                    && it.contains(":")
                    && it.contains("/embed.js\" integrity=\"sha384-")),
            "{lines}"
        );
        assert_eq!(lines[1], "El elemento");
        browser
            .open_page(&format!("{}es/species/", site.address))
            .await?;
        let narrow = "const field = document.getElementById('find'); field.value = 'arce'; field.dispatchEvent(new Event('input', { bubbles: true }));
            return document.querySelector('.filter [role=status]').textContent;";
        let told = browser.run(narrow).await?;
        assert!(
            told.as_str()
                .is_some_and(|it| it.starts_with("Se muestran ") && it.contains(" de ")),
            "{told}"
        );
        browser.expect_quiet().await
    });
}

/// Texts of a page and of the calculator in it that are English and don't say so, and how many letters say that they are.
const ENGLISH: &str = r"
const known = /(^|[^\p{L}])(the|and|with|of|is|are|not|for|from|which|where|that|by|at|after|to)([^\p{L}]|$)/u;
// Names of offices and laws stay as they are in any language.
const names = ['US Fish and Wildlife Service', 'Wildlife & Countryside Act', 'US Government'];
const found = new Set();
let marked = 0;
let all = 0;
const judge = (text, of) => {
  let said = text.trim();
  if (!said || of.closest('script, style, code, textarea, option[value=en]')) return;
  all += said.length;
  const lang = (of.closest('[lang]') ?? of.getRootNode().host?.closest('[lang]') ?? document.documentElement).lang;
  if (lang === 'en') marked += said.length;
  for (const name of names) said = said.replaceAll(name, '');
  if (lang === 'es' && known.test(said)) found.add(said.slice(0, 160));
};
const walk = (tree) => {
  const walker = document.createTreeWalker(tree, NodeFilter.SHOW_ELEMENT | NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    if (node.nodeType === Node.TEXT_NODE) judge(node.data, node.parentElement);
    else {
      for (const name of ['aria-label', 'title', 'placeholder', 'alt']) if (node.hasAttribute(name)) judge(node.getAttribute(name), node);
      if (node.shadowRoot) walk(node.shadowRoot);
    }
  }
};
walk(document.documentElement);
return [[...found], marked, all];
";

/// What is English on a page in Spanish says so, for those who listen: titles of sources, the list of changes, names of trees
/// that have no other.
#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn no_english_stands_unmarked_on_a_page_in_spanish() {
    let site = Server::of_the_site();
    in_browser(async move |browser| {
        let mut unmarked = Vec::new();
        for page in pages().iter().filter(|page| page.starts_with("es/")) {
            browser
                .open_page(&format!("{}{page}", site.address))
                .await?;
            let seen = browser.run(ENGLISH).await?;
            for text in seen[0].as_array().into_iter().flatten() {
                unmarked.push(format!("/{page}: {text}"));
            }
            println!(
                "/{page}: {} of {} letters are marked as English",
                seen[1], seen[2]
            );
        }
        assert!(
            unmarked.is_empty(),
            "{} texts: {unmarked:#?}",
            unmarked.len()
        );
        Ok(())
    });
}
