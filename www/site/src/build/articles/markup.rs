//! The markup of an article: its contents, its sections with notes at their side, and what it rests on.

use super::head::{Calculator, Head};
use super::text::Section;
use crate::build::sources::Known;
use calc_view::measure;
use calc_view::out::{Html, escaped};
use calc_view::page::Page;
use calc_view::words::m;
use std::collections::BTreeMap;
use std::fmt::Write as _;

/// What the parts of an article need beside its text.
pub(super) struct With<'a> {
    pub(super) head: &'a Head,
    /// The drawing, as markup.
    pub(super) drawn: &'a str,
    pub(super) language: &'a str,
    pub(super) home: &'a str,
    pub(super) sources: &'a BTreeMap<String, Known>,
}

/// The way back to all of them, title and summary.
pub(super) fn top(out: &mut String, with: &With<'_>) {
    let _ = writeln!(
        out,
        "<div class=\"top\"><p><a href=\"{}articles/\">{}</a></p><h1>{}</h1><p class=\"lede\">{}</p></div>",
        with.home,
        escaped(&m::ARTICLES_ALL),
        escaped(&with.head.title),
        escaped(&with.head.summary)
    );
}

/// Links to its sections.
pub(super) fn contents(out: &mut String, sections: &[Section]) {
    let inside = escaped(&m::ARTICLES_INSIDE);
    let _ = write!(out, "<nav class=\"toc\" aria-label=\"{inside}\"><ul>");
    for section in sections.iter().filter(|section| !section.title.is_empty()) {
        let (id, title) = (&section.id, escaped(&section.title));
        let _ = write!(out, "<li><a href=\"#{id}\">{title}</a></li>");
    }
    out.push_str("</ul></nav>\n");
}

/// Its sections, and what stands behind them.
pub(super) fn parts(out: &mut String, sections: &[Section], with: &With<'_>) {
    for section in sections {
        let (tag, label, title) = match section.title.is_empty() {
            true => ("div", String::new(), String::new()),
            false => {
                let (id, title) = (&section.id, escaped(&section.title));
                let label = format!(" aria-labelledby=\"{id}\"");
                ("section", label, format!("<h2 id=\"{id}\">{title}</h2>\n"))
            }
        };
        let _ = write!(
            out,
            "<{tag}{label} class=\"part\"><div class=\"body\">{title}{}</div>",
            section.body
        );
        if !section.side.is_empty() {
            let _ = write!(out, "<div class=\"side\">{}</div>", section.side);
        }
        if section.pictured {
            let _ = write!(out, "<div class=\"full\">{}</div>", with.drawn);
        }
        if let Some(calculator) = with.head.calculator.as_ref().filter(|_| section.calculates) {
            let element = element(calculator, with);
            let _ = write!(out, "<div class=\"full\">{element}</div>");
        }
        let _ = writeln!(out, "</{tag}>");
    }
    end(out, with);
}

/// What it rests on, who wrote it, and when it was read through.
fn end(out: &mut String, with: &With<'_>) {
    let mut html = Html::default();
    let page = &mut Page::new(&mut html);
    page.open_class("div", "part");
    page.open_class("div", "body");
    page.heading(2, "", "article-sources", &m::ARTICLES_SOURCES);
    page.open_class("ol", "cited");
    for (at, id) in with.head.sources.iter().enumerate() {
        let known = with.sources.get(id);
        page.open("li");
        page.attr("id", &format!("source-{}", at + 1));
        page.open("a");
        page.attr("href", &format!("{}sources/#{id}", with.home));
        page.attr("lang", "en");
        page.text(known.map_or(id.as_str(), |known| &known.label));
        page.close_two();
    }
    page.close_two();
    page.open_class("div", "side");
    page.heading(3, "", "", &m::ARTICLES_WRITTEN);
    let count = with.head.sources.len();
    let read = measure::day_year(with.head.reviewed);
    match with.head.by.as_str() {
        "" => page.p(m::articles_by_the_project(count, &read)),
        by => page.p(m::articles_by(m::ArticlesBy {
            by,
            count,
            read: &read,
        })),
    }
    page.p(m::ARTICLES_DEFERS);
    page.open("p");
    page.open_class("a", "btn");
    page.attr("href", with.home);
    page.text(m::SHELL_PLAN);
    page.close_all(4);
    out.push_str(&html.into_string());
}

/// The element of a calculator, with what stands there while it is not.
fn element(calculator: &Calculator, with: &With<'_>) -> String {
    let name = calculator.kind.name();
    let mut presets = String::new();
    for (key, value) in &calculator.presets {
        let _ = write!(presets, " {key}=\"{}\"", escaped(value));
    }
    let asks = escaped(&calc_view::words::calculators::asks(calculator.kind));
    format!(
        "<slipbark-{name} class=\"reserve\" lang=\"{}\" heading-level=\"2\"{presets}><h2>{asks}</h2><p>{}</p><p><a href=\"{}\">{}</a></p></slipbark-{name}>",
        with.language,
        escaped(&m::ARTICLES_CALCULATOR_LATER),
        with.home,
        escaped(&m::SHELL_PLAN)
    )
}
