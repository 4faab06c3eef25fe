//! What the table "Measured" of DEVELOPERS.md tells of pages: bytes of each way onto another page, time to ready on a
//! slow net and processor, what it does to the page around it, and the first answer of a browser that starts anew with
//! no signal. Not part of `tests/all`, since times differ from machine to machine:
//! `cargo test --package tests --test browser -- --ignored --nocapture measured`

use crate::browser::{Browser, in_browser, in_browser_of};
use crate::calculator::ANSWER;
use crate::embed::host;
use crate::offline::open_and_save;
use crate::rungs::{rungs, vitals};
use crate::site::{Server, folder};
use serde_json::{Value, json};

/// Each is measured so often; the middle one is printed.
const TIMES: usize = 3;

type Failure = Box<dyn std::error::Error + Send + Sync>;

/// The middle of some numbers.
fn middle(mut all: Vec<f64>) -> f64 {
    all.sort_by(f64::total_cmp);
    all[all.len() / 2]
}

/// Opens a page some times; gives bytes, what shifted, and in milliseconds largest paint, ready, and the largest paint
/// of the page itself.
async fn measure(browser: &Browser, address: &str) -> Result<[f64; 5], Failure> {
    let mut all = [const { Vec::new() }; 5];
    for _ in 0..TIMES {
        // Every run is a first visit.
        browser.open("about:blank").await?;
        for (name, of) in [
            ("Network.clearBrowserCache", json!({})),
            (
                "Storage.clearDataForOrigin",
                json!({ "origin": address.trim_end_matches('/'), "storageTypes": "all" }),
            ),
        ] {
            browser.devtools(name, of).await?;
        }
        browser.bytes_received().await?;
        let seen = vitals(browser, address).await?;
        all[0].push(browser.bytes_received().await?);
        for (at, list) in all[1..].iter_mut().enumerate() {
            list.push(
                seen[at]
                    .as_f64()
                    .ok_or_else(|| format!("{address}: {seen}"))?,
            );
        }
    }
    Ok(all.map(middle))
}

#[test]
#[ignore = "prints times; run by hand, see the top of this file"]
fn measured_on_a_host_page() {
    let site = Server::of_the_site();
    let text = "<p>We plant and we fell, and some trees we leave standing. A paragraph of a host page, invented.</p>".repeat(4);
    let with = |name: &str, lines: &str| {
        let body = format!("{text}{lines}{text}");
        host(&format!("measured-{name}"), "", &body)
    };
    let mut hosts = vec![("the page alone", with("alone", ""))];
    for (name, lines) in rungs(&site) {
        hosts.push((name, with(name, &lines)));
    }
    in_browser(async move |browser| {
        println!(
            "Slow 4G (1.6 Mbit/s, 150 ms), processor slowed 4 times, first visit, middle of {TIMES}:"
        );
        println!(
            "| way | width | kB more | ready, s | largest paint of the page itself, s | with the calculator, s | shift added |"
        );
        println!("|---|---|---|---|---|---|---|");
        for (width, height) in [(360, 740), (1280, 900)] {
            browser.window(width, height).await?;
            let mut alone = None;
            for (name, host) in &hosts {
                let [bytes, shift, largest, ready, own] = measure(&browser, &host.address).await?;
                let [bytes_alone, shift_alone] = *alone.get_or_insert([bytes, shift]);
                println!(
                    "| {name} | {width} | {:.1} | {:.2} | {:.2} | {:.2} | {:.3} |",
                    (bytes - bytes_alone) / 1000.0,
                    ready / 1000.0,
                    own / 1000.0,
                    largest / 1000.0,
                    shift - shift_alone
                );
                assert!(
                    shift - shift_alone <= 0.02,
                    "{name} at {width} shifts the page"
                );
            }
        }
        let [bytes, shift, largest, ready, own] = measure(&browser, &site.address).await?;
        println!(
            "| the site's own first page | 1280 | {:.1} in all | {:.2} | {:.2} | {:.2} | {shift:.3} |",
            bytes / 1000.0,
            ready / 1000.0,
            own / 1000.0,
            largest / 1000.0
        );
        Ok(())
    });
}

#[test]
#[ignore = "prints times; run by hand, see the top of this file"]
fn measured_from_a_cold_start_with_no_signal() {
    let profile = folder("measured-profile");
    let mut server = Server::of_the_site();
    let address = server.address.clone();
    let saved = address.clone();
    in_browser_of(&profile, async move |browser| {
        open_and_save(&browser, &saved).await
    });
    server.stop();
    let mut all = [const { Vec::new() }; 4];
    for _ in 0..TIMES {
        let (sender, seen) = std::sync::mpsc::channel();
        let address = address.clone();
        in_browser_of(&profile, async move |browser| {
            browser
                .devtools("Emulation.setCPUThrottlingRate", json!({ "rate": 4 }))
                .await?;
            let began = std::time::Instant::now();
            browser.open(&address).await?;
            browser.until_ready().await?;
            let ready = began.elapsed().as_secs_f64();
            let inside = browser.run("return performance.now();").await?;
            // From a real press of the button to the frame with its card, as the browser itself tells it (Event Timing), and
            // to the whole answer.
            browser
                .run(
                    "const calculator = document.querySelector('slipbark-tree-plan');
                     calculator.inputs = { version: 1, species: 'Norway maple', stems: [{ diameter: '14 1/2 in' }], date: '2027-06-12', none_in_reach: true, line_within_reach: 'no' };
                     window.clicks = [];
                     new PerformanceObserver((list) => clicks.push(...list.getEntriesByName('click'))).observe({ type: 'event', durationThreshold: 16 });
                     calculator.addEventListener('slipbark-result', () => { window.whole = performance.now(); }, { once: true });",
                )
                .await?;
            browser.press("button[type=submit]").await?;
            browser
                .until(
                    "the press and its answer",
                    &format!("window.whole && clicks.length && {ANSWER}"),
                )
                .await?;
            let answer = browser
                .run("const [click] = clicks; return [click.duration, whole - click.startTime];")
                .await?;
            sender.send((ready, inside, answer))?;
            Ok(())
        });
        let (ready, inside, answer): (f64, Value, Value) = seen.recv().expect("it was measured");
        all[0].push(ready * 1000.0);
        all[1].push(inside.as_f64().expect("a time"));
        for (at, list) in all[2..].iter_mut().enumerate() {
            list.push(answer[at].as_f64().unwrap_or_else(|| panic!("{answer}")));
        }
    }
    let [ready, inside, card, whole] = all.map(middle);
    println!("No signal, browser just started, processor slowed 4 times, middle of {TIMES}:");
    println!(
        "ready {ready:.0} ms after the address was given ({inside:.0} ms by the page's own clock); the card painted {card:.0} ms after the press, the whole answer there after {whole:.0}"
    );
}

#[test]
#[ignore = "prints times; run by hand, see the top of this file"]
fn measured_of_a_mark_that_moves() {
    let server = Server::of_the_site();
    in_browser(async move |browser| {
        for (width, height) in [(390, 844), (1280, 900)] {
            browser.window(width, height).await?;
            browser.open(&server.address).await?;
            browser.until_ready().await?;
            crate::another::ask(&browser).await?;
            browser
                .devtools("Emulation.setCPUThrottlingRate", json!({ "rate": 4 }))
                .await?;
            for mark in ["day", "far", "size"] {
                // A step as a slider makes it: from its event to the nodes laid out, and to the end of the next frame.
                let seen = browser
                    .run_until_done(&format!(
                        "const root = document.querySelector('slipbark-tree-plan').shadowRoot, slider = root.getElementById('try-{mark}');
                         slider.scrollIntoView({{ block: 'center' }});
                         const times = [], frames = [], steps = 40, span = slider.max - slider.min;
                         const step = (n) => {{
                           if (n === steps) return done([times, frames]);
                           slider.value = Number(slider.min) + Math.round(span * n / steps);
                           const began = performance.now();
                           slider.dispatchEvent(new Event('input', {{ bubbles: true, composed: true }}));
                           slider.getBoundingClientRect();
                           times.push(performance.now() - began);
                           requestAnimationFrame(() => setTimeout(() => {{ frames.push(performance.now() - began); step(n + 1); }}));
                         }};
                         setTimeout(() => step(0), 600);"
                    ))
                    .await?;
                let list = |of: &Value| -> Vec<f64> {
                    of.as_array()
                        .into_iter()
                        .flatten()
                        .filter_map(Value::as_f64)
                        .collect()
                };
                let (times, frames) = (list(&seen[0]), list(&seen[1]));
                let least = times.iter().copied().fold(f64::MAX, f64::min);
                let most = times.iter().copied().fold(0.0, f64::max);
                println!(
                    "a step of {mark} at {width}, processor slowed 4 times: {:.1} ms in the middle of {}, {least:.1} to {most:.1}; to the end of the frame {:.1}",
                    middle(times.clone()),
                    times.len(),
                    middle(frames)
                );
            }
            browser
                .devtools("Emulation.setCPUThrottlingRate", json!({ "rate": 1 }))
                .await?;
        }
        Ok(())
    });
}
