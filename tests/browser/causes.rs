//! What goes wrong on servers and in pages, and what the console says of it: the true cause, in words, once.

use crate::browser::{Browser, in_browser};
use crate::embed::host;
use crate::hosts::element;
use crate::site::{Server, built};
use serde_json::json;
use std::io::{BufRead as _, BufReader, Write as _};
use std::net::{TcpListener, TcpStream};

/// What a server does wrong.
#[derive(Clone, Copy)]
enum Fault {
    /// It sends a page in place of a file that it lacks, with the status of success.
    Page,
    Missing,
    Type(&'static str),
    /// It lets no other origin read its files.
    NoHeader,
    Half,
}

/// Serves the built site to other origins but for one fault, in each file whose name begins and ends so. It ends with
/// the program of the tests.
fn faulty(begins: &'static str, ends: &'static str, fault: Fault) -> String {
    let listener = TcpListener::bind("127.0.0.1:0").expect("a port");
    let port = listener.local_addr().expect("an address").port();
    std::thread::spawn(move || {
        for stream in listener.incoming().flatten() {
            std::thread::spawn(move || {
                let _ = answer(&stream, begins, ends, fault);
            });
        }
    });
    format!("http://127.0.0.1:{port}/")
}

fn answer(mut stream: &TcpStream, begins: &str, ends: &str, fault: Fault) -> std::io::Result<()> {
    let mut lines = BufReader::new(stream).lines();
    let first = lines.next().transpose()?.unwrap_or_default();
    for line in lines {
        if line?.is_empty() {
            break;
        }
    }
    let path = first.split(' ').nth(1).unwrap_or("/");
    let path = path
        .split('?')
        .next()
        .unwrap_or("/")
        .trim_start_matches('/');
    let path = if path.is_empty() || path.ends_with('/') {
        format!("{path}index.html")
    } else {
        path.to_owned()
    };
    let name = path.rsplit('/').next().unwrap_or_default();
    let mut kind = match name.rsplit('.').next().unwrap_or_default() {
        "js" => "text/javascript",
        "wasm" => "application/wasm",
        "css" => "text/css",
        "svg" => "image/svg+xml",
        "html" => "text/html",
        _ => "application/octet-stream",
    };
    let mut status = "200 OK";
    let mut opens = "Access-Control-Allow-Origin: *\r\n";
    let mut body = std::fs::read(built().join(&path)).unwrap_or_else(|_| {
        status = "404 Not Found";
        Vec::new()
    });
    if name.starts_with(begins) && name.ends_with(ends) {
        match fault {
            Fault::Page => {
                (body, kind) = (
                    b"<!doctype html><title>Nothing here</title>".to_vec(),
                    "text/html",
                )
            }
            Fault::Missing => (status, body) = ("404 Not Found", Vec::new()),
            Fault::Type(other) => kind = other,
            Fault::NoHeader => opens = "",
            Fault::Half => body.truncate(body.len() / 2),
        }
    }
    let head = format!(
        "HTTP/1.1 {status}\r\nContent-Type: {kind}\r\nX-Content-Type-Options: nosniff\r\nContent-Length: {}\r\n{opens}Connection: close\r\n\r\n",
        body.len()
    );
    stream.write_all(head.as_bytes())?;
    stream.write_all(&body)
}

/// What we said in the console.
async fn said(browser: &Browser) -> Result<Vec<String>, fantoccini::error::CmdError> {
    let console = browser.console().await?;
    let ours = console
        .into_iter()
        .filter(|line| line.contains("Slipbark:"));
    // Quotes come escaped, and those in them again.
    Ok(ours.map(|line| line.replace('\\', "")).collect())
}

/// What we say first in the console, waited for up to ten seconds; nothing where it stays silent.
async fn first_said(browser: &Browser) -> Result<Vec<String>, fantoccini::error::CmdError> {
    for _ in 0..100 {
        let lines = said(browser).await?;
        if !lines.is_empty() {
            return Ok(lines);
        }
        tokio::time::sleep(std::time::Duration::from_millis(100)).await;
    }
    Ok(Vec::new())
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn the_console_names_what_a_server_does_wrong() {
    let cases = [
        (
            "engine.",
            ".wasm",
            Fault::Page,
            "is not there: its server sends a page in its place",
        ),
        (
            "engine.",
            ".wasm",
            Fault::Missing,
            "is not there: its server answers 404",
        ),
        ("engine.", ".wasm", Fault::Half, "is not as it was made"),
        (
            "calculator.",
            ".css",
            Fault::Missing,
            "is not there: its server answers 404",
        ),
        (
            "engine.",
            ".wasm",
            Fault::NoHeader,
            "without the header Access-Control-Allow-Origin: *",
        ),
        (
            "element.",
            ".js",
            Fault::Page,
            "is not there: its server sends a page in its place",
        ),
        (
            "element.",
            ".js",
            Fault::Type("text/plain"),
            "comes as \"text/plain\"",
        ),
        (
            "engine.",
            ".js",
            Fault::Missing,
            "is not there: its server answers 404",
        ),
        (
            "",
            "",
            Fault::NoHeader,
            "without the header Access-Control-Allow-Origin: *",
        ),
    ];
    let hosts = cases.map(|(begins, ends, fault, words)| {
        let site = faulty(begins, ends, fault);
        let lines = format!(
            "<script src=\"{site}v1/embed.js\" defer></script>\
             <slipbark-tree-plan><p><a href=\"{site}\">Plan one tree</a></p></slipbark-tree-plan>"
        );
        (
            host(
                &format!("cause-{begins}{ends}-{}", words.len()), // A frame from the same server would say the same in a console of its own.
                if begins.is_empty() {
                    ""
                } else {
                    "<meta http-equiv=\"Content-Security-Policy\" content=\"frame-src 'none'\">"
                },
                &lines,
            ),
            format!("{begins}{ends}: {words}"),
            words,
        )
    });
    in_browser(async move |browser| {
        for (host, what, words) in &hosts {
            browser.open(&host.address).await?;
            let lines = first_said(&browser).await?;
            assert_eq!(lines.len(), 1, "{what}: {lines:#?}");
            assert!(lines[0].contains(words), "{what}: {lines:#?}");
            assert!(!lines[0].contains("unsafe-eval"), "{what}: {lines:#?}");
        }
        // A server that lets no other origin use its modules lets itself be framed.
        let (host, ..) = hosts.last().expect("cases");
        browser.open(&host.address).await?;
        let shown = "document.querySelector('slipbark-tree-plan iframe')?.offsetHeight >= 320";
        browser.until("the frame", shown).await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_module_of_another_type_still_starts() {
    let site = faulty("engine.", ".wasm", Fault::Type("application/octet-stream"));
    let lines = format!(
        "<script src=\"{site}v1/embed.js\" defer></script><slipbark-tree-plan></slipbark-tree-plan>"
    );
    let host = host("cause-type", "", &lines);
    in_browser(async move |browser| {
        browser.open(&host.address).await?;
        browser.until_ready().await?;
        let console = browser.console().await?;
        assert!(
            console.iter().any(|line| line.contains("application/wasm")),
            "{console:#?}"
        );
        Ok(())
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_policy_that_refuses_two_things_is_told_both_at_once() {
    let site = Server::of_the_site();
    let policy = format!(
        "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; script-src {}\">",
        site.address
    );
    let host = host("two-refusals", &policy, &element(&site));
    in_browser(async move |browser| {
        browser.open(&host.address).await?;
        let lines = first_said(&browser).await?;
        assert_eq!(lines.len(), 1, "{lines:#?}");
        for words in [
            "'wasm-unsafe-eval' to its script-src",
            "script-src and connect-src have to name",
        ] {
            assert!(lines[0].contains(words), "{words}: {lines:#?}");
        }
        Ok(())
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn attributes_that_are_not_known_are_told_once_in_words() {
    let site = Server::of_the_site();
    let lines = element(&site).replace(
        "<slipbark-tree-plan>",
        "<slipbark-tree-plan theme=\"night\" heading-level=\"7\" units=\"metric\" headinglevel=\"4\" evnets=\"full\" class=\"wide\" data-aos=\"fade\" species=\"Nortway mapel\" size=\"thick\" date=\"2027-13-01\" region=\"Nowhereland\" storage=\"none\">",
    );
    // What stands right in a list of codes that ends may still be none of them (ISO 3166-2: no such state).
    let again = "<slipbark-ring theme=\"night\" region=\"US-ZZ\"></slipbark-ring><slipbark-year region=\"US-MA\"></slipbark-year>";
    let host = host("attributes", "", &format!("{lines}{again}"));
    in_browser(async move |browser| {
        browser.open(&host.address).await?;
        browser.until_ready().await?;
        browser.run("document.querySelector('slipbark-tree-plan').setAttribute('theme', 'dark'); document.querySelector('slipbark-tree-plan').setAttribute('theme', 'night');").await?;
        tokio::time::sleep(std::time::Duration::from_millis(1500)).await;
        let lines = said(&browser).await?;
        for words in [
            "theme=\"night\" of u003Cslipbark-tree-plan> is not known",
            "theme=\"night\" of u003Cslipbark-ring> is not known",
            "heading-level=\"7\"",
            "the attribute headinglevel",
            "the attribute evnets of u003Cslipbark-tree-plan> is not known. Write events",
            "species=\"Nortway mapel\"",
            "size=\"thick\"",
            "date=\"2027-13-01\"",
            "region=\"Nowhereland\"",
            "region=\"US-ZZ\"",
        ] {
            let count = lines.iter().filter(|line| line.contains(words)).count();
            assert_eq!(count, 1, "{words}: {lines:#?}");
        }
        assert_eq!(lines.len(), 10, "{lines:#?}");
        // It works all the same.
        browser.until_ready().await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_region_that_is_not_known_is_told_in_the_form_in_each_language() {
    let site = Server::of_the_site();
    let hosts = [
        ("en", "is no state or country that we know"),
        ("es", "no es un estado ni un país que conozcamos"),
    ]
    .map(|(language, words)| {
        let lines = element(&site).replace(
            "<slipbark-tree-plan>",
            &format!("<slipbark-tree-plan lang=\"{language}\" region=\"Nowhereland\">"),
        );
        (host(&format!("region-{language}"), "", &lines), words)
    });
    in_browser(async move |browser| {
        for (host, words) in &hosts {
            browser.open(&host.address).await?;
            browser.until_ready().await?;
            let shown = "const calculator = document.querySelector('slipbark-tree-plan'); calculator.compute();
                 return calculator.shadowRoot.querySelector('.problems')?.textContent ?? '';";
            let shown = browser.run(shown).await?;
            let shown = shown.as_str().unwrap_or_default();
            assert_eq!(shown.matches("Nowhereland").count(), 1, "{shown}");
            assert!(shown.contains(words), "{shown}");
        }
        Ok(())
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_size_in_millimetres_is_read_and_what_has_no_answer_is_told_by_an_event() {
    let site = Server::of_the_site();
    let lines = element(&site).replace(
        "<slipbark-tree-plan>",
        "<slipbark-tree-plan species=\"Norway maple\" size=\"370\" size-unit=\"mm\">",
    );
    let host = host("millimetres", "", &lines);
    in_browser(async move |browser| {
        browser.open(&host.address).await?;
        browser.until_ready().await?;
        let asked = "const calculator = document.querySelector('slipbark-tree-plan');
             window.invalid = [];
             document.addEventListener('slipbark-invalid', ({ detail }) => invalid.push(detail.problems[0].field));
             const size = calculator.inputs.stems[0].diameter;
             const answer = calculator.compute();
             const dbh = Math.round(answer.stems[0].dbh_mm), said = calculator.shadowRoot.querySelector('.say') !== null;
             calculator.shadowRoot.querySelector('button[type=submit]').click();
             const form = calculator.shadowRoot.querySelector('.asked'), folded = !form.open;
             calculator.inputs = { species: 'Norway maple' };
             const wrong = calculator.compute().problems[0].field;
             return [size, dbh, said, wrong, calculator.result, calculator.shadowRoot.querySelector('.say'), invalid, folded, form.open];";
        assert_eq!(
            browser.run(asked).await?,
            json!([
                "370 mm",
                370,
                true,
                "stems[0].diameter",
                null,
                null,
                ["stems[0].diameter"],
                true,
                true
            ])
        );
        assert_eq!(said(&browser).await?, Vec::<String>::new());
        Ok(())
    });
}
