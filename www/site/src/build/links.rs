//! Every link of every built page leads somewhere: to a file of the site, and in it to a part of that name.

use crate::build::assets::File;
use crate::build::hosts::WORDPRESS_BASE;
use crate::build::wasm::Module;
use crate::build::{Made, Modules, Options, kit, made};
use html5gum::{HtmlString, StartTag, Token, Tokenizer};
use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;
use url::Url;

/// Where the sites that are looked at stand.
const HOST: &str = "https://site.example/";

/// What a page has: names of its parts, and addresses with the tag that each stands in.
#[derive(Default)]
struct Page {
    parts: BTreeSet<String>,
    links: Vec<(String, String)>,
}

fn text(bytes: &HtmlString) -> String {
    String::from_utf8_lossy(bytes).into_owned()
}

impl Page {
    fn read(file: &File) -> Self {
        let mut page = Self::default();
        let html = std::str::from_utf8(&file.bytes).expect("a page is text");
        for token in Tokenizer::new(html) {
            let Ok(token) = token;
            if let Token::StartTag(tag) = token {
                page.take(&tag);
            }
        }
        page
    }

    fn take(&mut self, tag: &StartTag<()>) {
        let name = text(&tag.name);
        let attribute = |name: &str| {
            let value = tag.attributes.get(name.as_bytes())?;
            Some(text(&value.value))
        };
        self.parts.extend(attribute("id"));
        for of in ["href", "src", "action", "poster"] {
            self.links
                .extend(attribute(of).map(|link| (name.clone(), link)));
        }
        // Programs that show a link to the page read these.
        let named = attribute("property").is_some_and(|it| it == "og:url" || it == "og:image");
        if named {
            self.links
                .extend(attribute("content").map(|link| (name, link)));
        }
        // What a control or a part names by its id is a part of the same page too.
        for of in [
            "for",
            "aria-labelledby",
            "aria-describedby",
            "aria-controls",
        ] {
            let ids = attribute(of).unwrap_or_default();
            let ids = ids.split_ascii_whitespace();
            self.links
                .extend(ids.map(|id| (of.to_owned(), format!("#{id}"))));
        }
    }
}

/// What is wrong with the links of a site under `base`, by page.
fn broken(files: &[File], base: &str, lacks: &[&str]) -> Vec<String> {
    let home = Url::parse(HOST).unwrap().join(base).unwrap();
    let at = |path: &str| home.join(path).unwrap();
    let all: BTreeMap<String, &File> = files
        .iter()
        .map(|file| (at(file.address()).path().to_owned(), file))
        .collect();
    let is_page = |file: &&File| file.path.ends_with(".html");
    let pages: BTreeMap<String, Page> = files
        .iter()
        .filter(is_page)
        .map(|file| (at(file.address()).path().to_owned(), Page::read(file)))
        .collect();
    let mut wrong = Vec::new();
    for (path, page) in &pages {
        let here = Url::parse(HOST).unwrap().join(path).unwrap();
        for (tag, link) in &page.links {
            let Ok(to) = here.join(link) else {
                wrong.push(format!("{path}: <{tag}> {link:?} is no address"));
                continue;
            };
            if to.origin() != here.origin() || lacks.iter().any(|it| to.path().ends_with(it)) {
                continue;
            }
            if !all.contains_key(to.path()) {
                wrong.push(format!("{path}: <{tag}> {link:?} leads nowhere"));
                continue;
            }
            // What stands behind `v=` is a question.
            let part = to.fragment().filter(|part| !part.is_empty());
            let Some(part) = part.filter(|part| !part.starts_with("v=")) else {
                continue;
            };
            let part = percent_encoding::percent_decode_str(part).decode_utf8_lossy();
            if pages
                .get(to.path())
                .is_some_and(|page| !page.parts.contains(&*part))
            {
                wrong.push(format!("{path}: <{tag}> {link:?} has no such part"));
            }
        }
    }
    wrong.sort();
    wrong.dedup();
    wrong
}

/// The site as it is built, but for its modules and pictures, which no link looks into.
fn site(base: &str, anywhere: bool, offline: bool) -> Made {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("../..");
    let module = || Module {
        js: "export function answer() {}\n".to_owned(),
        wasm: Vec::new(),
        crates: Vec::new(),
    };
    let options = Options {
        base,
        anywhere,
        origin: "",
        contact: "mailto:trees@example.org",
        own: None,
        offline,
    };
    let modules = Modules {
        calculator: module(),
        lists: module(),
    };
    let mut made = made(&root, &options, modules).expect("it is built");
    let pictures = made.pictures.iter();
    let pictures: Vec<File> = pictures.map(|it| File::named(&it.path, "")).collect();
    made.files.extend(pictures.iter().cloned());
    made.anywhere.extend(pictures);
    made
}

#[test]
fn every_link_leads_to_a_file_and_a_part_of_it() {
    for offline in [true, false] {
        let Made {
            files, anywhere, ..
        } = site("/trees/", false, offline);
        let pages = files.iter().filter(|file| file.path.ends_with(".html"));
        assert!(pages.count() > 250, "both languages are there");
        // The kit is packed of these; in itself it is not, and its pages take that link out.
        let own = [kit::NAME];
        assert_eq!(broken(&files, "/trees/", &own), [""; 0], "{offline}");
        // In the kit pages name each other by steps, which may not lead out of its folder.
        let folder = "/any/folder/";
        assert_eq!(broken(&anywhere, folder, &own), [""; 0], "{offline}");
    }
}

/// A blog is often no more than a part of a site: WordPress lies in a folder of the host, and its plugins in that.
#[test]
fn the_plugin_for_wordpress_may_lie_in_any_folder() {
    let files = site(WORDPRESS_BASE, true, true).files;
    let index = files.iter().find(|file| file.path == "index.html");
    assert!(index.is_some_and(|page| !page.bytes.is_empty()));
    let folder = format!("/blog{WORDPRESS_BASE}");
    assert_eq!(broken(&files, &folder, &[kit::NAME]), [""; 0]);
}

#[test]
fn a_link_that_leads_nowhere_is_found() {
    let page = |path: &str, text: &str| File::named(path, text);
    let files = [
        page(
            "index.html",
            "<p id=a><a href='b/#c'>x</a><a href='#a'>x</a><a href='b/?q#v=1'>x</a><a href='https://other.example/'>x</a>",
        ),
        page(
            "b/index.html",
            "<img src=../none.png><a href='../#d'>x</a><label for=e>x</label><a href='../../'>x</a>",
        ),
    ];
    let wanted = [
        "/t/: <a> \"b/#c\" has no such part",
        "/t/b/: <a> \"../#d\" has no such part",
        "/t/b/: <a> \"../../\" leads nowhere",
        "/t/b/: <for> \"#e\" has no such part",
        "/t/b/: <img> \"../none.png\" leads nowhere",
    ];
    assert_eq!(broken(&files, "/t/", &[]), wanted);
    assert_eq!(broken(&files, "/t/", &["none.png"]).len(), 4);
}
