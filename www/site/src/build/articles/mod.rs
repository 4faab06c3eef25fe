//! Articles: Markdown files with a head, a folder a language, the project's own and those of a group.

mod head;
mod markup;
mod note;
pub(crate) mod picture;
mod text;

use crate::build::lines::Lines;
use crate::build::sources::Known;
use crate::build::{json_ld, languages};
use anyhow::{Context as _, Result, bail};
use calc_view::out::{Html, escaped};
use calc_view::page::Page;
use calc_view::words::m;
use chrono::NaiveDate;
use head::Head;
use markup::With;
use note::{At, Notes};
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use text::{Around, BARE, Section};

/// Where the project's own are.
const FOLDER: &str = "content/articles";
/// Texts of pages that are written as articles are.
const PAGES: &str = "content/pages";

/// A file of an article in one language.
struct Written {
    /// The file, as people are told of it.
    file: String,
    text: String,
    head: Head,
    /// Where the text begins behind the head, at which byte.
    begin: usize,
}

/// An article, in the languages that it is written in.
pub(crate) struct Article {
    /// Its name in addresses: that of its file.
    pub(crate) id: String,
    written: BTreeMap<&'static str, Written>,
    /// Whether it is a group's.
    own: bool,
}

/// All articles, and what they are made with.
pub(crate) struct Articles {
    all: Vec<Article>,
    /// The texts of other pages.
    pages: Vec<Article>,
    root: PathBuf,
    /// The folder of a group.
    own: Option<PathBuf>,
    /// The group's notes, by the name of the article that they stand in.
    notes: BTreeMap<String, Notes>,
    sources: BTreeMap<String, Known>,
}

/// What the page of an article shows.
pub(crate) struct Shown {
    pub(crate) title: String,
    pub(crate) summary: String,
    pub(crate) body: String,
    /// Whether there is a calculator in it.
    pub(crate) calculates: bool,
    /// The day when it was last read through.
    pub(crate) reviewed: NaiveDate,
    /// What it is, for programs.
    pub(crate) json_ld: String,
    /// The markup of its drawing, and what stands under that; nothing where it has none.
    pub(crate) drawn: Option<(String, String)>,
}

/// Whether a file is the page of an article: no device keeps it before it is read.
pub(crate) fn is_one(path: &str) -> bool {
    let own = languages::of(path).1;
    own.strip_prefix("articles/")
        .is_some_and(|rest| rest != "index.html")
}

/// The folder of an article's page.
pub(crate) fn folder(id: &str) -> String {
    format!("articles/{id}/")
}

/// Reads the project's articles, and those in the folder `articles` of a group's own folder, with its `notes`.
///
/// # Errors
/// A file that is no article, with file and line; one of the project's that a language lacks.
pub(crate) fn read(
    root: &Path,
    own: Option<&Path>,
    sources: BTreeMap<String, Known>,
) -> Result<Articles> {
    let mut all = gather(&root.join(FOLDER), FOLDER, false)?;
    let pages = gather(&root.join(PAGES), PAGES, false)?;
    for (article, folder) in all
        .iter()
        .map(|it| (it, FOLDER))
        .chain(pages.iter().map(|it| (it, PAGES)))
    {
        for language in languages::all() {
            if !article.written.contains_key(language) {
                bail!("{folder}/{language}/{}.md is not there", article.id);
            }
        }
    }
    if let Some(folder) = own.map(|own| own.join("articles")).filter(|it| it.is_dir()) {
        for article in gather(&folder, &folder.display().to_string(), true)? {
            // A group may say something in other words; its own article stands in place of ours.
            all.retain(|known| known.id != article.id);
            all.push(article);
        }
    }
    let rank = |article: &Article| {
        let head = &article.in_language(languages::FIRST).0.head;
        (head.order, head.title.to_lowercase())
    };
    all.sort_by_key(rank);
    let known: Vec<&str> = all.iter().map(|article| article.id.as_str()).collect();
    let notes = match own {
        Some(own) => note::gather(own, &known)?,
        None => BTreeMap::new(),
    };
    Ok(Articles {
        notes,
        all,
        pages,
        root: root.to_owned(),
        own: own.map(Path::to_owned),
        sources,
    })
}

fn gather(folder: &Path, told: &str, own: bool) -> Result<Vec<Article>> {
    let mut all: BTreeMap<String, BTreeMap<&'static str, Written>> = BTreeMap::new();
    for language in languages::all() {
        let inside = folder.join(language);
        if !inside.is_dir() {
            continue;
        }
        let entries = std::fs::read_dir(&inside)
            .with_context(|| format!("{} can't be read", inside.display()))?;
        for entry in entries {
            let path = entry?.path();
            if path.extension().is_none_or(|ending| ending != "md") {
                continue;
            }
            let id = path.file_stem().unwrap_or_default().to_string_lossy();
            let file = format!("{told}/{language}/{id}.md");
            let fits = |c: char| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-';
            if id.is_empty() || !id.chars().all(fits) {
                bail!("{file}:1: a name is of small letters, digits and -, as before-you-start.md");
            }
            let text = std::fs::read_to_string(&path)
                .with_context(|| format!("{file} can't be read"))?
                .replace("\r\n", "\n");
            let (head, begin) = head::read(&Lines::of(&file, &text))?;
            let written = Written {
                file,
                text,
                head,
                begin,
            };
            all.entry(id.into_owned())
                .or_default()
                .insert(language, written);
        }
    }
    let article = |(id, written)| Article { id, written, own };
    Ok(all.into_iter().map(article).collect())
}

impl Article {
    /// It in a language, or in one that it is written in, with that one.
    fn in_language(&self, language: &str) -> (&Written, &'static str) {
        let found = self.written.get_key_value(language);
        let first = self.written.first_key_value();
        let (language, written) = found.or(first).expect("it is written in a language");
        (written, language)
    }
}

impl Articles {
    /// The folders of their pages.
    pub(crate) fn ids(&self) -> impl Iterator<Item = &str> {
        self.all.iter().map(|article| article.id.as_str())
    }

    /// The list of them in the language in use.
    pub(crate) fn list(&self, language: &str, home: &str) -> String {
        let mut html = Html::default();
        let out = &mut Page::new(&mut html);
        out.open_class("ul", "ways");
        for article in &self.all {
            let (written, spoken) = article.in_language(language);
            out.open("li");
            if spoken != language {
                out.attr("lang", spoken);
            }
            out.open("a");
            out.attr("href", &format!("{home}{}", folder(&article.id)));
            out.text(written.head.title.as_str());
            out.close();
            out.p(written.head.summary.as_str());
            out.close();
        }
        out.close();
        html.into_string()
    }

    /// The text of another page in the language in use: its contents, and its sections.
    ///
    /// # Errors
    /// What is wrong in it, with file and line.
    pub(crate) fn page(&self, id: &str, language: &str, home: &str) -> Result<[String; 2]> {
        let page = self.pages.iter().find(|page| page.id == id);
        let page = page.with_context(|| format!("no page is called {id}"))?;
        let (written, _) = page.in_language(language);
        let (_, sections) = self.sections(page, written, home)?;
        let with = With {
            head: &written.head,
            drawn: "",
            language,
            home,
            sources: &self.sources,
        };
        let (mut contents, mut parts) = (String::new(), String::new());
        markup::contents(&mut contents, &sections);
        markup::parts(&mut parts, &sections, &with);
        Ok([contents, parts])
    }

    /// The sections of a file.
    fn sections<'w>(
        &self,
        article: &Article,
        written: &'w Written,
        home: &str,
    ) -> Result<(Lines<'w>, Vec<Section>)> {
        let head = &written.head;
        let lines = Lines::of(&written.file, &written.text);
        for source in head
            .sources
            .iter()
            .filter(|id| !BARE.contains(&id.as_str()))
        {
            match self.sources.get(source) {
                None => {
                    let what = format!("sources: {source} is in no table of sources");
                    return Err(lines.problem(0, what));
                }
                Some(known) if known.remembered => {
                    let what = format!("sources: {source} is only remembered: nothing rests on it");
                    return Err(lines.problem(0, what));
                }
                Some(_) => {}
            }
        }
        let around = Around {
            home,
            sources: &head.sources,
            strict: !article.own,
        };
        let sections = text::read(&lines, written.begin, &around)?;
        Ok((lines, sections))
    }

    /// An article's page in the language in use.
    ///
    /// # Errors
    /// What is wrong in its text or its head, with file and line.
    pub(crate) fn show(&self, id: &str, language: &str, home: &str) -> Result<Shown> {
        let article = self.all.iter().find(|article| article.id == id);
        let article = article.with_context(|| format!("no article is called {id}"))?;
        let (written, spoken) = article.in_language(language);
        let head = &written.head;
        let (lines, sections) = self.sections(article, written, home)?;
        let has = |holds: fn(&Section) -> bool| sections.iter().any(holds);
        for (name, there, said) in [
            ("picture", head.picture.is_some(), has(|it| it.pictured)),
            (
                "calculator",
                head.calculator.is_some(),
                has(|it| it.calculates),
            ),
        ] {
            if there != said {
                let what =
                    format!("{name} stands in the head and {{{name}}} in the text, or neither");
                return Err(lines.problem(0, what));
            }
        }
        let drawn = match &head.picture {
            Some(picture) => picture
                .draw(&self.root, self.own.as_deref(), home)
                .map_err(|error| lines.problem(0, format!("{error:#}")))?,
            None => String::new(),
        };
        let with = With {
            head,
            drawn: &drawn,
            language,
            home,
            sources: &self.sources,
        };
        let mut body = String::from("<article class=\"art\">\n");
        let notes = self.notes.get(id);
        markup::top(&mut body, &with);
        body.push_str(&note::shown(notes, At::Top, language, home)?);
        markup::contents(&mut body, &sections);
        markup::parts(&mut body, &sections, &with);
        body.push_str(&note::shown(notes, At::Foot, language, home)?);
        body.push_str("</article>\n");
        if spoken != language {
            let note = escaped(&m::ARTICLES_OTHER_LANGUAGE);
            body = format!("<p class=\"soft\">{note}</p><div lang=\"{spoken}\">{body}</div>");
        }
        Ok(Shown {
            title: escaped(&head.title),
            summary: escaped(&head.summary),
            body,
            calculates: head.calculator.is_some(),
            reviewed: head.reviewed,
            drawn: head
                .picture
                .as_ref()
                .map(|it| (drawn, escaped(&it.caption))),
            json_ld: json_ld::article(&json_ld::Text {
                title: &head.title,
                summary: &head.summary,
                language: spoken,
                address: &format!("{home}{}", folder(id)),
                reviewed: head.reviewed,
                by: &head.by,
                sources: head
                    .sources
                    .iter()
                    .filter_map(|id| Some(self.sources.get(id)?.label.as_str()))
                    .collect(),
            }),
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::build::sources;
    use crate::project;

    #[test]
    fn the_articles_of_the_project_are_made_in_every_language() -> Result<()> {
        let root = project::root()?;
        let articles = read(&root, None, sources::known(&root, None)?)?;
        assert!(articles.ids().count() >= 10);
        for name in calc_view::answer::article::names() {
            assert!(articles.ids().any(|id| id == name), "{name} is not there");
        }
        let mut wrong = Vec::new();
        for language in languages::all() {
            languages::speaking(language, || {
                if let Err(error) = articles.page("method", language, "/") {
                    wrong.push(format!("{error:#}"));
                }
                for id in articles.ids() {
                    match articles.show(id, language, "/") {
                        Ok(shown) => assert!(shown.body.contains("<figure"), "{id}"),
                        Err(error) => wrong.push(format!("{error:#}")),
                    }
                }
            });
        }
        assert!(wrong.is_empty(), "{}", wrong.join("\n"));
        Ok(())
    }

    #[test]
    fn a_group_adds_its_own_articles_and_sources_and_may_speak_one_language_alone() -> Result<()> {
        let own = std::env::temp_dir().join(format!("slipbark-own-{}", std::process::id()));
        std::fs::create_dir_all(own.join("articles/en"))?;
        let header =
            std::fs::read_to_string(project::root()?.join("content/evidence/sources.csv"))?;
        let header = header.lines().next().unwrap_or_default();
        let columns = header.split(',').count();
        let mut row = vec!["OUR1", "practice"];
        row.resize(columns, "");
        let mut row: Vec<String> = row.into_iter().map(str::to_owned).collect();
        for (at, column) in header.split(',').enumerate() {
            match column {
                "title" | "label" => row[at] = "Our own count".to_owned(),
                "part_read" => row[at] = "whole".to_owned(),
                "grade_ceiling" => row[at] = "PUBLISHED".to_owned(),
                _ => {}
            }
        }
        std::fs::write(
            own.join("sources.csv"),
            format!("{header}\n{}\n", row.join(",")),
        )?;
        let text = "---\ntitle: Our wood\nsummary: Where we work.\nsources: OUR1\nreviewed: 2026-11-01\nby: The <b> group\n---\nWe ring 9 trees [OUR1].\n";
        std::fs::write(own.join("articles/en/our-wood.md"), text)?;
        let root = project::root()?;
        let articles = read(&root, Some(&own), sources::known(&root, Some(&own))?)?;
        let english = languages::speaking("en", || articles.show("our-wood", "en", "/"))?;
        assert!(
            english.body.contains("The &lt;b&gt; group, from 1 source"),
            "{}",
            english.body
        );
        assert!(
            english.body.contains("Our own count</a>"),
            "{}",
            english.body
        );
        let spanish = languages::speaking("es", || articles.show("our-wood", "es", "/es/"))?;
        assert!(
            spanish.body.contains("aún no está en español"),
            "{}",
            spanish.body
        );
        assert!(
            spanish.body.contains("<div lang=\"en\">"),
            "{}",
            spanish.body
        );
        std::fs::remove_dir_all(&own)?;
        Ok(())
    }
}
