//! Pages of groups: `/local/ID/`, made from the settings that a group also gives to its calculators, and its own words.

use crate::build::assets::File;
use crate::build::{languages, markdown, species_pages};
use crate::command::settings;
use anyhow::{Context as _, Result, bail};
use calc::question::settings::AskingGroup;
use calc_view::answer::group;
use calc_view::measure;
use calc_view::out::{Html, escaped};
use calc_view::page::Page;
use calc_view::words::{m, phrase, region};
use chrono::NaiveDate;
use std::collections::BTreeMap;
use std::path::Path;
use std::sync::Arc;

/// A group with a page.
pub(crate) struct Local {
    group: AskingGroup,
    /// The settings as they are, and the list of species beside them, for the calculator on the page.
    files: Vec<File>,
    /// Its own words, a text a language.
    words: BTreeMap<&'static str, String>,
}

/// Reads `local/*.json` in the folder of a group: each is settings, `local/ID.LANG.md` beside it are its words. `today` is
/// the day by which the age of what was checked is told.
///
/// # Errors
/// Settings that are refused, with each reason; two of one id.
pub(crate) fn read(own: Option<&Path>, today: NaiveDate) -> Result<Vec<Local>> {
    let Some(folder) = own.map(|own| own.join("local")).filter(|it| it.is_dir()) else {
        return Ok(Vec::new());
    };
    let mut all: BTreeMap<String, Local> = BTreeMap::new();
    let entries = std::fs::read_dir(&folder)
        .with_context(|| format!("{} can't be read", folder.display()))?;
    for entry in entries {
        let path = entry?.path();
        if path.extension().is_none_or(|ending| ending != "json") {
            continue;
        }
        let told = path.display().to_string();
        let settings = match settings::load(&told)? {
            Ok((settings, _)) => settings,
            Err(lines) => bail!("{told}: these settings are refused:\n{}", lines.join("\n")),
        };
        let id = settings.id.clone();
        let fits = |c: char| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-';
        if id.is_empty() || !id.chars().all(fits) {
            bail!(
                "{told}: id: \"{id}\" can't be an address: small letters, digits and -, as hollow-brook"
            );
        }
        let mut files = vec![file(&id, "settings.json", &path)?];
        let text = std::fs::read_to_string(&path)?;
        let json: serde_json::Value = serde_json::from_str(text.trim_start_matches('\u{feff}'))?;
        if let Some(list) = json["species"]["list"].as_str() {
            files.push(file(&id, list, &folder.join(list))?);
        }
        let mut words = BTreeMap::new();
        for language in languages::all() {
            let path = folder.join(format!("{id}.{language}.md"));
            if path.is_file() {
                words.insert(language, std::fs::read_to_string(&path)?);
            }
        }
        let local = Local {
            group: AskingGroup {
                settings: Arc::new(settings),
                today,
            },
            files,
            words,
        };
        if all.insert(id.clone(), local).is_some() {
            bail!("{told}: another file has the id \"{id}\" too");
        }
    }
    Ok(all.into_values().collect())
}

fn file(id: &str, name: &str, path: &Path) -> Result<File> {
    let bytes = std::fs::read(path).with_context(|| format!("{} can't be read", path.display()))?;
    Ok(File::named(&format!("{}{name}", folder(id)), bytes))
}

/// The folder of a group's page.
fn folder(id: &str) -> String {
    format!("local/{id}/")
}

impl Local {
    /// Where its page lies under the home of a language.
    pub(crate) fn folder(&self) -> String {
        folder(&self.group.settings.id)
    }

    /// The group's name.
    pub(crate) fn name(&self) -> &str {
        &self.group.settings.name
    }

    /// What its calculator reads.
    pub(crate) fn files(&self) -> &[File] {
        &self.files
    }

    /// The body of its page, in the language in use.
    pub(crate) fn body(&self, language: &str, home: &str, base: &str) -> String {
        let settings = &self.group.settings;
        let mut html = Html::default();
        let out = &mut Page::new(&mut html);
        out.open_class("div", "top");
        out.leaf("h1", settings.name.as_str());
        if let Some(code) = &settings.region {
            out.p_class("lede", region::region(&code.0));
        }
        out.close();
        let top = html.into_string();
        let mut html = Html::default();
        let out = &mut Page::new(&mut html);
        out.open_class("div", "prose");
        if !settings.contacts.is_empty() {
            out.heading(2, "", "", &m::LOCAL_CONTACTS);
            group::contacts(out.sink(), &self.group);
        }
        if !settings.codes.is_empty() {
            out.heading(2, "", "", &m::LOCAL_RULES);
        }
        group::rules(out.sink(), &self.group);
        stricter(out, &self.group);
        trees(out, &self.group, home);
        out.close();
        // Words in another language than the page's say which.
        let found = self
            .words
            .get_key_value(language)
            .or(self.words.first_key_value());
        let own = found.map_or(String::new(), |(spoken, text)| {
            let text = markdown::render(text);
            format!("<div class=\"prose\" lang=\"{spoken}\">\n{text}</div>\n")
        });
        let config = format!("{base}{}settings.json", self.folder());
        let plan = escaped(&m::SHELL_PLAN);
        let later = escaped(&m::ARTICLES_CALCULATOR_LATER);
        format!(
            "{top}{own}{}<slipbark-tree-plan class=\"reserve\" lang=\"{language}\" heading-level=\"2\" config=\"{config}\"><h2>{plan}</h2><p>{later}</p></slipbark-tree-plan>\n",
            html.into_string()
        )
    }
}

/// What the group makes stricter than the calculator does.
fn stricter(out: &mut Page<'_>, group: &AskingGroup) {
    let tighten = &group.settings.tighten;
    let mut said: Vec<String> = Vec::new();
    let names: Vec<&str> = m::MEASURE_MONTHS.text().split(' ').collect();
    let blocked: Vec<&str> = names
        .iter()
        .enumerate()
        .filter(|(at, _)| tighten.months & (1 << at) != 0)
        .map(|(_, name)| *name)
        .collect();
    if !blocked.is_empty() {
        said.push(m::local_months(blocked.join(", ")));
    }
    if tighten.distance_factor > 1.0 {
        said.push(m::local_farther(measure::plain(tighten.distance_factor, 2)));
    }
    if let Some(most) = tighten.volunteers_mm {
        let units = group.settings.units.unwrap_or_default();
        said.push(m::local_size(measure::size(most).text(units)));
    }
    if said.is_empty() {
        return;
    }
    out.heading(2, "", "", &m::LOCAL_STRICTER);
    out.open("ul");
    for line in said {
        out.leaf("li", line);
    }
    out.close();
}

/// Its own trees, each with its page, and the group's words on it.
fn trees(out: &mut Page<'_>, group: &AskingGroup, home: &str) {
    let list = &group.settings.species;
    let named = list.first.iter().filter(|species| !species.unknown);
    let named: Vec<_> = named.collect();
    if named.is_empty() {
        return;
    }
    out.heading(2, "", "", &m::LOCAL_TREES);
    out.open("ul");
    for species in named {
        out.open("li");
        out.open("a");
        out.attr("href", &format!("{home}{}", species_pages::folder(species)));
        out.text(phrase::sentence(phrase::tree(species)));
        out.close();
        let notes = list
            .notes
            .iter()
            .filter(|(of, _)| std::ptr::eq(*of, *species));
        for (_, note) in notes {
            out.text(format!(": {note}"));
        }
        out.close();
    }
    out.close();
}

#[cfg(test)]
mod tests {
    use super::*;

    const SETTINGS: &str = r#"{
      "schema": 1, "id": "hollow-brook", "name": "Hollow Brook & Trust", "checked": "2026-10-01", "region": "US-MA",
      "species": { "first": ["Norway maple"] },
      "contacts": [{ "kind": "professional", "name": "An invented arborist", "phone": "+1 413 555 0100", "checked": "2026-10-01" }],
      "codes": [{ "topic": "nesting", "text": "No rings in May.", "authority": "The trust", "checked": "2026-10-01" }],
      "tighten": { "months_blocked": [5], "min_distance_factor": 1.2 }
    }"#;

    fn made(settings: &str) -> Result<Vec<Local>> {
        let own = std::env::temp_dir().join(format!(
            "slipbark-local-{}-{}",
            std::process::id(),
            settings.len()
        ));
        std::fs::create_dir_all(own.join("local"))?;
        std::fs::write(own.join("local/a.json"), settings)?;
        std::fs::write(
            own.join("local/hollow-brook.en.md"),
            "## Our wood\n\nWe meet at the <b> gate.\n",
        )?;
        let read = read(
            Some(&own),
            NaiveDate::from_ymd_opt(2026, 11, 1).unwrap_or_default(),
        );
        std::fs::remove_dir_all(&own)?;
        read
    }

    #[test]
    fn a_group_has_a_page_with_whom_to_ask_its_rules_its_trees_and_its_words() -> Result<()> {
        let all = made(SETTINGS)?;
        let page = languages::speaking("en", || all[0].body("en", "/", "/"));
        for part in [
            "<h1>Hollow Brook &amp; Trust</h1>",
            "href=\"tel:+14135550100\"",
            "No rings in May.",
            "Checked 1 October",
            "href=\"/species/norway-maple/\"",
            "<h2>Our wood</h2>",
            "&lt;b&gt;",
            "config=\"/local/hollow-brook/settings.json\"",
            "May",
        ] {
            assert!(page.contains(part), "{part}: {page}");
        }
        assert_eq!(all[0].files()[0].path, "local/hollow-brook/settings.json");
        let spanish = languages::speaking("es", || all[0].body("es", "/es/", "/"));
        assert!(
            spanish.contains("<div class=\"prose\" lang=\"en\">"),
            "{spanish}"
        );
        Ok(())
    }

    #[test]
    fn settings_that_are_refused_stop_the_build_with_each_reason() {
        let said = made(&SETTINGS.replace("1.2", "0.5"))
            .err()
            .map(|it| it.to_string());
        let said = said.unwrap_or_default();
        assert!(
            said.contains("a.json") && said.contains("min_distance_factor"),
            "{said}"
        );
        let said = made(&SETTINGS.replace("hollow-brook", "Hollow Brook"))
            .err()
            .map(|it| it.to_string());
        assert!(said.is_some(), "an id that is no address");
    }
}
