//! Writes the answers to the named questions of `content/examples` as one page, to be looked at, or as text.
//! `cargo run -p calc-view --example answers -- dark > page.html` (light, dark, sun, or text; then a name).

use calc::models::season::Local;
use calc::question::read;
use calc_view::answer::{self, HostOptions};
use calc_view::draw::mark::defs;
use calc_view::out::Html;

/// The sheets of a page, joined.
fn sheets() -> String {
    let names: [&str; 9] = include!("../../../www/style/sheets.rs");
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/../../www/style");
    let read = |path: &str| std::fs::read_to_string(format!("{folder}/{path}")).expect(path);
    let calculators = names
        .map(|name| read(&format!("parts/{name}.css")))
        .concat();
    [read("tokens.css"), calculators, read("page.css")].concat()
}

fn main() {
    let mut args = std::env::args().skip(1);
    let theme = args.next().unwrap_or_else(|| "light".into());
    let only = args.next();
    let reference = calc_data::whole();
    let mut body = String::new();
    for (name, typed) in examples::all(&examples::folder()) {
        if only.as_deref().is_some_and(|only| *only != *name) {
            continue;
        }
        let question = match read(reference, &typed) {
            Ok(question) => question,
            Err(problems) => {
                let mut out = Html::default();
                answer::problems(&mut out, &problems, &HostOptions::default());
                body.push_str(&out.into_string());
                continue;
            }
        };
        let answer = calc::answer::answer(reference, &question, &Local::default());
        if theme == "text" {
            println!("== {name} ==");
            println!(
                "{}",
                calc_view::status(
                    calc_view::kind::Kind::TreePlan,
                    reference,
                    &question,
                    &answer
                )
            );
            println!(
                "{}",
                calc_view::text::answer(reference, &question, &answer, None)
            );
            continue;
        }
        let prefix = format!("{name}-");
        let days = calc::answer::year_ahead(reference, &question, &Local::default());
        let mut out = Html::default();
        answer::answer(
            &mut out,
            reference,
            &question,
            &answer,
            &HostOptions {
                id_prefix: &prefix,
                sources_base: "sources/",
                with_form: true,
                with_buttons: true,
                another: Some(answer::another::Trial {
                    question: &question,
                    answer: &answer,
                    days: &days,
                }),
                ..HostOptions::default()
            },
        );
        let html = out.into_string();
        eprintln!("{name}: {} bytes", html.len());
        body.push_str(&format!("<h1>{name}</h1>{html}"));
    }
    if theme == "text" {
        return;
    }
    let mut head = Html::default();
    defs(&mut head);
    println!(
        "<!doctype html><html lang=en data-theme={theme}><meta charset=utf-8><meta name=viewport content=\"width=device-width\"><title>Answers</title><style>{}</style><body>{}<main class=\"wrap answer\"><div class=sb>{body}</div></main></body></html>",
        sheets(),
        head.into_string()
    );
}
