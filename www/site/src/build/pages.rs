//! Renders the static pages from their files in `www/pages`.

use crate::build::articles::Articles;
use crate::build::assets::{Assets, File};
use crate::build::gallery;
use crate::build::head_scripts::{asks_ahead, element_script};
use crate::build::key::{self, Key};
use crate::build::local::{self, Local};
use crate::build::natives::Natives;
use crate::build::page_list::{NAV, PAGES, folders};
use crate::build::paper::{self, Card};
use crate::build::pictures::{self, Easel, Planned};
use crate::build::policy::{FRAME_POLICY, NOWHERE, POLICY};
use crate::build::snippets::{self, Gaps};
use crate::build::species_pages::{self, Facts};
use crate::build::template::{Template, fill};
use crate::build::{
    addresses, articles, interface, json_ld, languages, markdown, notices, sources, species_list,
    static_answers, version,
};
use anyhow::{Context, Result, bail};
use calc_view::form::{FormOptions, Sheet, Towns, View, frame, no_table};
use calc_view::kind::Kind;
use calc_view::out::escaped;
use calc_view::words::m;
use chrono::NaiveDate;
use rayon::prelude::*;
use std::collections::BTreeMap;
use std::path::Path;

/// What pages tell of the build.
pub(crate) struct AboutTheBuild<'a> {
    /// Whether the site is kept on the device, and says so.
    pub offline: bool,
    /// Where mistakes are told: mailto: or https:, or nothing.
    pub contact: &'a str,
    /// The folder of a group, with articles, sources and pages of its own.
    pub own: Option<&'a Path>,
    /// The day of the source.
    pub day: Option<NaiveDate>,
    /// Whose work is in the module.
    pub crates: &'a [notices::Crate],
}

/// Stands for the build's id until all bytes are known.
pub(crate) const BUILD_MARK: &str = "@@build@@";

/// All pages, and the pictures that programs show beside links to them, to be drawn.
pub(crate) struct Rendered {
    pub(crate) files: Vec<File>,
    pub(crate) pictures: Vec<Planned>,
}

/// Renders all pages for a site that will live under `base`, in every language.
///
/// # Errors
/// A page file that can't be read or names something unknown, or a broken
/// table of sources: with file and line.
pub(crate) fn render(
    root: &Path,
    base: &str,
    about: &AboutTheBuild,
    assets: &Assets,
    full: &[File],
) -> Result<Rendered> {
    let mut files = Vec::new();
    let easel = Easel::read(root)?;
    let mut pictures = BTreeMap::new();
    let facts = species_pages::facts(root)?;
    let key = Key::read(root)?;
    let card = Card::of_all_trees()?;
    let today = about.day.unwrap_or(WRITTEN);
    let groups = local::read(about.own, today)?;
    let articles = articles::read(root, about.own, sources::known(root, about.own)?)?;
    let natives = Natives::read(root)?;
    let languages: Vec<&'static str> = languages::all().collect();
    let in_each = languages.par_iter().map(|&language| {
        let site = Site {
            root,
            base,
            about,
            language,
            facts: &facts,
            key: &key,
            articles: &articles,
            natives: &natives,
            groups: &groups,
            card: &card,
            easel: &easel,
        };
        languages::speaking(language, || site.render(assets, full))
    });
    for rendered in in_each.collect::<Vec<Result<Rendered>>>() {
        let rendered = rendered?;
        files.extend(rendered.files);
        // The first language's, where several have the same.
        for picture in rendered.pictures {
            pictures.entry(picture.path.clone()).or_insert(picture);
        }
    }
    for group in &groups {
        files.extend(group.files().iter().cloned());
    }
    let pictures = pictures.into_values().collect();
    Ok(Rendered { files, pictures })
}

/// The site in one language, which is in use while its pages are made.
struct Site<'a> {
    root: &'a Path,
    base: &'a str,
    about: &'a AboutTheBuild<'a>,
    language: &'static str,
    /// What the pages of the species say.
    facts: &'a [Facts],
    /// The steps of the key.
    key: &'a Key,
    articles: &'a Articles,
    /// What may follow a tree.
    natives: &'a Natives,
    /// The groups that have a page.
    groups: &'a [Local],
    card: &'a Card,
    easel: &'a Easel,
}

impl Site<'_> {
    /// Where its pages lie.
    fn home(&self) -> String {
        format!("{}{}", self.base, languages::folder(self.language))
    }

    fn render(&self, assets: &Assets, full: &[File]) -> Result<Rendered> {
        let folder = self.root.join("www/pages");
        let read = |name: &str| {
            std::fs::read_to_string(folder.join(name))
                .with_context(|| format!("www/pages/{name} could not be read"))
        };
        let mut common = self.common_values(assets)?;
        let digests = [
            version::digest_of(full, "embed.js")?,
            version::digest_of(full, "frame-height.js")?,
        ];
        self.snippets(&mut common, &digests);
        let shell = read("shell.html")?;
        let ahead = asks_ahead(&common["engine-wasm"]);
        let head = "calculator-head.html";
        let calculator = fill(&format!("www/pages/{head}"), &read(head)?, &common)?;
        let weighs = fill("www/pages/weighs.html", &read("weighs.html")?, &common)?;
        common.insert("weighs", weighs);
        let mut tree = calc_view::out::Html::default();
        calc_view::draw::tree::stand(&mut tree);
        common.insert("tree", tree.into_string());
        common.insert("form", self.form(&common["calculator-css"], true));
        let mut files = Vec::new();
        let mut pictures = Vec::new();
        let common_picture = articles::picture::of_the_site(self.root)?;
        let common_picture = self
            .easel
            .figure(pictures::COMMON.to_owned(), &common_picture);
        pictures.extend(common_picture);
        let [wide, high] = pictures::SIZE.map(|it| it.to_string());
        common.insert("picture-wide", wide);
        common.insert("picture-high", high);
        let mut write = |path: String,
                         name: &str,
                         here: Option<&str>,
                         common: &mut BTreeMap<&str, String>|
         -> Result<()> {
            let file = format!("www/pages/{name}");
            let page = Template::read(&file, &read(name)?)?;
            for key in ["title", "description"] {
                let said = fill(&file, &format!("{{{{{}}}}}", page.head(key)?), common)?;
                common.insert(key, said);
            }
            common.insert("nav", self.nav(here));
            common.insert("alternates", self.alternates(here));
            let calculates = fill(&file, page.head("calculator").unwrap_or_default(), common)?;
            let element = || element_script(&common["element-js"]);
            let [ahead, links, script] = match &*calculates {
                "yes" => [ahead.clone(), calculator.clone(), element()],
                // Down the page: what is read first is not to wait for it.
                "below" => [String::new(), String::new(), element()],
                _ => Default::default(),
            };
            common.insert("ahead", ahead);
            common.insert("links", links);
            common.insert("head", script);
            let ld = common.remove("ld").unwrap_or_default();
            common.insert("json-ld", ld);
            let own = common.remove("own-picture");
            common.insert(
                "picture",
                own.unwrap_or_else(|| pictures::COMMON.to_owned()),
            );
            let says = common.remove("own-picture-says");
            let says = says.unwrap_or_else(|| escaped(&m::SHELL_PICTURE));
            common.insert("picture-says", says);
            let reviewed = fill(&file, page.head("reviewed").unwrap_or_default(), common)?;
            common.insert("reviewed", read_through(&file, &reviewed)?);
            let body = page.body(common)?;
            common.insert("body", body);
            files.push(File::named(
                &path,
                fill("www/pages/shell.html", &shell, common)?,
            ));
            Ok(())
        };
        let home = languages::folder(self.language);
        let there: Vec<_> = folders(self.about.offline).collect();
        let site_home = self.home();
        for page in PAGES.iter().filter(|page| there.contains(&page.folder)) {
            let path = format!("{home}{}index.html", page.folder);
            if page.folder.is_empty() {
                let (title, does) = (m::HOME_TITLE.text(), m::HOME_DESCRIPTION.text());
                let ld = json_ld::application(title, does, self.language, &site_home);
                common.insert("ld", ld);
            }
            write(path, page.file, Some(page.folder), &mut common)?;
        }
        let site_home = self.home();
        let body = key::first(self.key, &site_home)?;
        common.insert("key-body", body);
        let path = format!("{home}key/index.html");
        write(path, "key.html", Some("key/"), &mut common)?;
        for page in &self.key.pages {
            common.insert("key-leaves", escaped(&page.says()));
            common.insert("key-body", key::one(self.key, page, &site_home)?);
            let folder = page.folder();
            let path = format!("{home}{folder}index.html");
            write(path, "key-one.html", Some(&folder), &mut common)?;
        }
        let body = gallery::first(self.key, &site_home);
        common.insert("gallery-body", body);
        let path = format!("{home}plates/index.html");
        write(path, "gallery.html", Some("plates/"), &mut common)?;
        for plates in &gallery::PLATES {
            common.insert("gallery-name", escaped(&plates.title));
            let body = gallery::one_page(plates, self.key, &site_home);
            common.insert("gallery-body", body);
            let path = format!("{home}{}index.html", plates.folder);
            write(path, "gallery-one.html", Some(plates.folder), &mut common)?;
        }
        for facts in self.facts {
            let name = calc_view::words::phrase::tree(facts.species);
            common.insert("species-name", calc_view::words::phrase::sentence(name));
            let body = species_pages::body(facts, &site_home, self.natives, self.key.marks());
            common.insert("species-one-body", body);
            let said = calc_view::words::phrase::sentence(name);
            let address = format!("{site_home}{}", facts.folder);
            let does = calc_view::words::message::on_page("species-one-description");
            let does = does.unwrap_or_default().replace("{{species-name}}", &said);
            let ld = json_ld::species(facts.species, &said, &does, self.language, &address);
            common.insert("ld", ld);
            if let Some(planned) = self.easel.species(facts) {
                common.insert("own-picture", planned.path.clone());
                let says = escaped(&m::species_one_picture(&said));
                common.insert("own-picture-says", says);
                pictures.push(planned);
            }
            let path = format!("{home}{}index.html", facts.folder);
            write(path, "species-one.html", Some(&facts.folder), &mut common)?;
        }
        for id in self.articles.ids() {
            let shown = self.articles.show(id, self.language, &site_home)?;
            let calculates = String::from(if shown.calculates { "below" } else { "" });
            common.insert("article-title", shown.title);
            common.insert("article-summary", shown.summary);
            common.insert("article-body", shown.body);
            common.insert("article-calculates", calculates);
            common.insert("article-reviewed", shown.reviewed.to_string());
            common.insert("ld", shown.json_ld);
            let folder = articles::folder(id);
            if let Some((drawn, says)) = shown.drawn
                && let Some(planned) = self.easel.figure(pictures::path(&folder), &drawn)
            {
                common.insert("own-picture", planned.path.clone());
                common.insert("own-picture-says", says);
                pictures.push(planned);
            }
            let path = format!("{home}{folder}index.html");
            write(path, "article.html", Some(&folder), &mut common)?;
        }
        for group in self.groups {
            common.insert("local-name", escaped(group.name()));
            let body = group.body(self.language, &site_home, self.base);
            common.insert("local-body", body);
            let folder = group.folder();
            let path = format!("{home}{folder}index.html");
            write(path, "local.html", Some(&folder), &mut common)?;
        }
        if self.language == languages::FIRST {
            // One for every language: a server knows one page for what it has not.
            common.insert("nowhere-in-others", self.nowhere_in_others());
            write(NOWHERE.to_owned(), NOWHERE, None, &mut common)?;
        }
        // The bare pages for frames have neither head nor foot.
        let bare = Template::read("www/pages/frame.html", &read("frame.html")?)?;
        common.insert("ahead", ahead);
        common.insert("links", calculator);
        common.insert("head", element_script(&common["element-js"]));
        common.insert("policy", FRAME_POLICY.clone());
        let form = self.form(&common["calculator-css"], false);
        for kind in Kind::ALL {
            let name = kind.name();
            let built = match kind {
                Kind::TreePlan => form.clone(),
                _ => String::new(),
            };
            common.insert("form", built);
            common.insert("title", escaped(&calc_view::words::calculators::asks(kind)));
            common.insert("tag", format!("slipbark-{name}"));
            let path = format!("{home}embed/{name}/index.html");
            files.push(File::named(&path, bare.body(&common)?));
        }
        Ok(Rendered { files, pictures })
    }

    /// The lines for other sites, and the table of what the elements have.
    fn snippets(&self, common: &mut BTreeMap<&str, String>, digests: &[String; 2]) {
        let names = [
            "snippet-element",
            "snippet-div",
            "snippet-script",
            "snippet-frame",
            "snippet-height",
            "snippet-link",
        ];
        for (name, form) in names.into_iter().zip(snippets::FORMS) {
            let words = match form {
                "link" => m::EMBED_LINK_WORDS,
                _ => m::SHELL_PLAN,
            };
            let gaps = Gaps {
                site: self.base,
                home: &self.home(),
                kind: Kind::TreePlan.name(),
                attributes: "",
                data: "",
                query: "",
                words: words.text(),
                title: m::EMBED_FRAME_TITLE.text(),
                digests: [&digests[0], &digests[1]],
            };
            common.insert(name, snippets::shown(form, self.base, &gaps));
        }
        let templates = snippets::templates().to_string();
        common.insert("snippet-templates", escaped(&templates));
        common.insert("embed-integrity", digests[0].clone());
    }

    /// The form of the first page, and of a frame, as it stands before its module, in the shadow root that the module takes
    /// over. Which day it is only the reader's browser knows. `keeps`: whether a draft can be kept.
    fn form(&self, css: &str, keeps: bool) -> String {
        let options = FormOptions {
            group: None,
            lang: self.language,
            kind: Kind::TreePlan,
            heading_level: 2,
            today: NaiveDate::default(),
            local: no_table,
            answered: false,
            country: "",
            towns: Some(|_, _| Towns::NotAsked),
            position: true,
            near: |_, _, _| Vec::new(),
            keeps,
            listed: false,
            built: true,
        };
        let sheet = Sheet::new();
        let view = View::new(calc_data::reference(), &sheet, &options);
        let mut html = calc_view::out::Html::default();
        frame(&mut html, self.language, Some(&view));
        let note = escaped(&m::HOME_NO_SCRIPT);
        format!(
            "<template shadowrootmode=\"open\"><link rel=\"stylesheet\" href=\"{css}\">\
             <noscript><p class=\"sb\"><b>{note}</b></p><slot></slot></noscript>{}</template>",
            html.into_string()
        )
    }

    /// What any page may name.
    fn common_values(&self, assets: &Assets) -> Result<BTreeMap<&'static str, String>> {
        let (root, base, home) = (self.root, self.base, self.home());
        let address = |name: &str| Ok::<_, anyhow::Error>(format!("{base}{}", assets.path(name)?));
        let mut values = BTreeMap::from([
            ("base", base.to_owned()),
            ("lang", self.language.to_owned()),
            ("css", address("site.css")?),
            ("calculator-css", address("calculator.css")?),
            ("page-js", address("page.js")?),
            ("frame-js", address("frame.js")?),
            ("build-js", address("build.js")?),
            ("filter-js", address("filter.js")?),
            ("offline-js", address("offline.js")?),
            ("list-css", address("list.css")?),
            ("list-js", address("list.js")?),
            ("field-css", address("field.css")?),
            ("field-js", address("field.js")?),
            ("element-js", address("element.js")?),
            ("engine-js", address("engine.js")?),
            ("engine-wasm", address("engine.wasm")?),
            ("icon", address("icon.svg")?),
            ("version", env!("CARGO_PKG_VERSION").to_owned()),
            ("build", BUILD_MARK.to_owned()),
            ("policy", POLICY.clone()),
            (
                "offline",
                String::from(if self.about.offline { "yes" } else { "" }),
            ),
        ]);
        let day = self.about.day.map(calc_view::measure::day_year);
        values.insert("day", day.as_deref().map(escaped).unwrap_or_default());
        values.insert("crates", notices::rows(self.about.crates));
        values.insert("origin", addresses::ORIGIN.to_owned());
        values.insert("not-reviewed", self.not_reviewed());
        // In the foot too: over an answer it would stand in the way of the card.
        let unread = match self.language {
            languages::FIRST => String::new(),
            _ => escaped(&m::SHELL_NOT_REVIEWED) + " ",
        };
        values.insert("unread", unread);
        let sources = sources::make(root, self.about.own)?;
        values.insert("source-count", sources.count.to_string());
        values.insert("source-groups", sources.groups);
        values.insert("source-list", sources.list);
        let names = ["rule-count", "rules-print", "rules-practice", "rules-own"];
        for (name, count) in names.into_iter().zip(sources::rules(root)?) {
            values.insert(name, count.to_string());
        }
        let climate = calc_data::places::places();
        let thousands = |count: usize| calc_view::measure::number(count as u32);
        values.insert("climate-count", thousands(climate.stations.len()));
        values.insert("town-countries", thousands(calc_data::places::TOWNS.len()));
        values.insert("journal", CLIMATE_PAPER.to_owned());
        values.insert("changes", self.changes()?);
        let species = species_list::make(&home)?;
        values.insert("species-count", species.count.to_string());
        values.insert("species-letters", species.letters);
        values.insert("species-suits", species.choices);
        values.insert("species-list", species.list);
        let kinds = Kind::ALL.map(|kind| {
            let asks = escaped(&calc_view::words::calculators::asks(kind));
            format!("<option value=\"{}\">{asks}</option>", kind.name())
        });
        values.insert("kinds", kinds.concat());
        values.insert("month-boxes", static_answers::month_boxes());
        values.insert("species-choices", static_answers::species_choices());
        values.insert("example", static_answers::example(&home)?);
        for (name, directive, more) in [
            ("script-src", "script-src", " 'wasm-unsafe-eval'"),
            ("connect-src", "connect-src", ""),
            ("frame-src", "frame-src", ""),
        ] {
            let origin = escaped(&m::EMBED_ORIGIN);
            let said = format!("<code>{directive} <span data-origin>{origin}</span>{more}</code>");
            values.insert(name, said);
        }
        let [contents, parts] = self.articles.page("method", self.language, &home)?;
        values.insert("method-contents", contents);
        values.insert("method-parts", parts);
        values.insert("paper-table", self.card.table());
        values.insert("paper-kinds", self.card.kinds.to_string());
        values.insert("paper-rows", paper::rows());
        values.insert("contact", escaped(self.about.contact));
        let shown = self.about.contact.trim_start_matches("mailto:");
        values.insert("contact-shown", escaped(shown));
        values.insert("article-list", self.articles.list(self.language, &home));
        values.insert("home", home);
        values.insert("interface", interface::table()?);
        Ok(values)
    }

    /// The links of the head, and the way to each other language.
    fn nav(&self, here: Option<&str>) -> String {
        let home = self.home();
        let mut links = String::new();
        for (folder, name) in NAV {
            let inside = here.is_some_and(|here| !folder.is_empty() && here.starts_with(folder));
            let current = if here == Some(*folder) || inside {
                " aria-current=\"page\""
            } else {
                ""
            };
            let name = escaped(name);
            links += &format!("<li><a href=\"{home}{folder}\"{current}>{name}</a></li>");
        }
        for (language, name) in others(self.language) {
            let address = self.same_page(language, here);
            links += &format!(
                "<li><a href=\"{address}\" hreflang=\"{language}\" lang=\"{language}\">{name}</a></li>"
            );
        }
        links
    }

    /// Where a page stands in another language.
    fn same_page(&self, language: &str, here: Option<&str>) -> String {
        let folder = languages::folder(language);
        format!("{}{folder}{}", self.base, here.unwrap_or(""))
    }

    /// Says to programs that read pages where a page stands, and the same one in each language. Addresses are whole ones in a
    /// build that is told its origin.
    fn alternates(&self, here: Option<&str>) -> String {
        let Some(here) = here else {
            return String::new();
        };
        let origin = addresses::ORIGIN;
        let link = |language: &str| {
            let address = self.same_page(language, Some(here));
            format!("<link rel=\"alternate\" hreflang=\"{language}\" href=\"{origin}{address}\">\n")
        };
        let own = self.same_page(self.language, Some(here));
        let others: String = languages::all().map(link).collect();
        format!(
            "<link rel=\"canonical\" href=\"{origin}{own}\">\n{others}<meta property=\"og:url\" content=\"{origin}{own}\">\n"
        )
    }

    /// Says over each page of a translation that no native speaker has read it.
    fn not_reviewed(&self) -> String {
        if self.language == languages::FIRST {
            return String::new();
        }
        let said = escaped(&m::SHELL_NOT_REVIEWED);
        format!("<div class=\"wrap unread\"><p class=\"soft\">{said}</p></div>\n")
    }

    /// What the page for no page says in the other languages.
    fn nowhere_in_others(&self) -> String {
        let mut all = String::new();
        for (language, _) in others(self.language) {
            let home = format!("{}{}", self.base, languages::folder(language));
            all += &languages::speaking(language, || {
                format!(
                    "<div lang=\"{language}\"><h2>{}</h2>\n<p>{}</p>\n<p><a href=\"{home}\">{}</a></p></div>\n",
                    escaped(&m::NOWHERE_HEADING),
                    escaped(&m::NOWHERE_LEDE),
                    escaped(&m::SHELL_PLAN),
                )
            });
        }
        all
    }

    /// The changes file as HTML. It is written in the first language, and says so on the pages of others.
    fn changes(&self) -> Result<String> {
        let path = self.root.join("content/changes.md");
        if !path.is_file() {
            return Ok(format!("<p>{}</p>", escaped(&m::CHANGES_NONE)));
        }
        let text =
            std::fs::read_to_string(&path).context("content/changes.md could not be read")?;
        // Its title is the page's, which the page's own file states.
        let rest = markdown::title_and_rest(&text).map_or(text.as_str(), |(_, rest)| rest);
        let list = markdown::render(rest);
        if self.language == languages::FIRST {
            return Ok(list);
        }
        let note = escaped(&m::CHANGES_IN_ENGLISH);
        let first = languages::FIRST;
        Ok(format!(
            "<p>{note}</p>\n<div lang=\"{first}\">\n{list}</div>"
        ))
    }
}

/// The languages beside one, with their own names.
fn others(beside: &str) -> impl Iterator<Item = (&'static str, String)> {
    let others = languages::all().filter(move |language| *language != beside);
    others.map(|language| {
        let name = languages::speaking(language, || escaped(&m::SHELL_LANGUAGE));
        (language, name)
    })
}

/// The paper of the climate grid, as it is printed.
const CLIMATE_PAPER: &str = "<span lang=\"en\">Hijmans, Cameron, Parra, Jones and Jarvis 2005, \
     <i>International Journal of Climatology</i> 25:1965–1978</span>";

/// The day by which ages are told where the day of the source is not known: none is old then.
const WRITTEN: NaiveDate = NaiveDate::MIN;

/// Says when a page was last read through, by the day in its opening comment; nothing for one that is made from tables.
fn read_through(file: &str, day: &str) -> Result<String> {
    if day.is_empty() {
        return Ok(String::new());
    }
    let Ok(day) = day.parse::<NaiveDate>() else {
        bail!("{file}: reviewed: \"{day}\" is no day as 2026-11-30");
    };
    Ok(escaped(&m::shell_reviewed(calc_view::measure::day_year(
        day,
    ))))
}
