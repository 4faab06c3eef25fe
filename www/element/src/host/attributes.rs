//! What the host says by its attributes: which calculator it is, what the form begins with, how answers are shown.

use crate::calculator::{self, Calculator};
use crate::device::{self, navigator, today};
use crate::dom::get;
use crate::fetched;
use calc::question::{StemTyped, Text, Typed};
use calc::terms::quantity::Units;
use calc_view::answer;
use calc_view::form::{FormOptions, Sheet, View};
use calc_view::kind::Kind;
use calc_view::words::message::{in_use, pack};
use calc_view::words::within;
use std::cell::{Cell, RefCell};

thread_local! {
    /// The address of the site.
    static SITE: Cell<&'static str> = const { Cell::new("") };
    /// The page of sources in each language that was spoken.
    static SOURCES: RefCell<Vec<(&'static str, &'static str)>> = const { RefCell::new(Vec::new()) };
}

/// Keeps the address of the site, once for all calculators of a page.
pub(crate) fn locate(site: String) {
    SITE.set(site.leak());
}

/// The address of the page of sources in the language in use: of English at the root of the site, else in a folder.
fn sources() -> &'static str {
    let language = in_use().language();
    SOURCES.with_borrow_mut(|all| {
        if let Some((_, known)) = all.iter().find(|(of, _)| *of == language) {
            return *known;
        }
        let site = SITE.get();
        let address: &str = match (site, language) {
            ("", _) => "",
            (_, "en") => [site, "sources/"].concat().leak(),
            _ => [site, language, "/sources/"].concat().leak(),
        };
        all.push((language, address));
        address
    })
}

/// Attributes that say what the form begins with.
const PRESETS: [&str; 5] = ["species", "size", "size-unit", "date", "region"];

/// The fields that one of them fills.
fn preset_keys(name: &str) -> &'static [&'static str] {
    match name {
        "species" => &["species", "species.kind", "find"],
        "size" => &["stems[0].diameter", "stems.how"],
        "size-unit" => &["stems.unit"],
        "date" => &["day"],
        _ => &["region"],
    }
}

impl Calculator {
    pub(crate) fn attribute(&self, name: &str) -> String {
        self.host.get_attribute(name).unwrap_or_default()
    }

    fn heading_level(&self) -> u8 {
        match self.attribute("heading-level").trim() {
            "3" => 3,
            "4" => 4,
            "5" => 5,
            _ => 2,
        }
    }

    /// Which calculator it is: the element's name says it.
    pub(crate) fn kind(&self) -> Kind {
        Kind::of_element(&self.host.local_name())
    }

    /// The size that the form begins with. Of millimetres, which the form has no choice for, it carries the unit itself.
    fn size(&self) -> Option<Text> {
        let size = self.attribute("size");
        let bare = size
            .trim_end()
            .ends_with(|last: char| last.is_ascii_digit());
        match self.attribute("size-unit").trim() {
            _ if size.is_empty() => None,
            "mm" if bare => Some(Text([size.trim_end(), " mm"].concat())),
            _ => Some(Text(size)),
        }
    }

    /// The question that the host's attributes and settings preset.
    pub(crate) fn preset_question(&self) -> Typed {
        let text = |name: &str| {
            Some(self.attribute(name))
                .filter(|text| !text.is_empty())
                .map(Text)
        };
        let own = self.state.borrow().hosted.settings.clone();
        let metric = match (
            self.attribute("size-unit").trim(),
            &*self.attribute("units"),
        ) {
            ("cm" | "mm", _) | ("", "metric") => true,
            ("", "") => own
                .as_ref()
                .is_some_and(|own| own.units == Some(Units::Metric)),
            _ => false,
        };
        Typed {
            version: 1,
            units: Some(Text::from(if metric { "metric" } else { "us" })),
            species: text("species"),
            stems: vec![StemTyped {
                diameter: self.size(),
                ..StemTyped::default()
            }],
            date: text("date"),
            region: text("region").or_else(|| own.as_ref()?.region.clone()),
            place: own.as_ref().and_then(|own| own.place.clone()),
            ..Typed::default()
        }
    }

    /// The form as the host's attributes preset it.
    pub(crate) fn preset(&self) -> Sheet {
        let typed = self.preset_question();
        let mut sheet = Sheet::of(calc_data::reference(), &typed, today());
        if self.attribute("size").is_empty() {
            // A size that is not given was measured in no way.
            sheet.set("stems.how", "");
        }
        sheet
    }

    /// Lays what the host's attributes preset over what stands in a form: a page's own word counts before a draft.
    pub(crate) fn preset_over(&self, sheet: &mut Sheet) {
        let preset = self.preset();
        for name in PRESETS {
            if !self.attribute(name).trim().is_empty() {
                for key in preset_keys(name) {
                    sheet.set(key, preset.get(key));
                }
            }
        }
    }

    /// Looks at the form over a sheet.
    pub(crate) fn with_view<T>(&self, sheet: &Sheet, look: impl FnOnce(&View<'_>) -> T) -> T {
        let lang = calculator::lang(&self.host);
        let group = self.group();
        let options = FormOptions {
            group: group.as_ref(),
            lang: &lang,
            kind: self.kind(),
            heading_level: self.heading_level(),
            today: today(),
            local: fetched::local,
            answered: self.state.borrow().answered,
            country: &country(),
            towns: fetched::towns_can_be_had().then_some(fetched::find_towns),
            position: device::has_position(),
            near: fetched::regions_near,
            keeps: self.keeps(),
            listed: self.state.borrow().listed,
            built: false,
        };
        // A name may be one of a tree that is not on the list, and a region has laws of its own.
        if !sheet.blank("find") || !sheet.blank("region") || !sheet.blank("town") {
            fetched::want_regional();
        }
        look(&View::new(calc_data::reference(), sheet, &options))
    }

    /// How answers are shown.
    pub(crate) fn options(&self) -> answer::HostOptions<'static> {
        let kind = self.kind();
        answer::HostOptions {
            group: None,
            // The answer's own sentence stands at the level that is asked for, beside the question of the
            // calculator, and its parts under it.
            heading_level: self.heading_level() + 1,
            kind,
            id_prefix: "",
            sources_base: sources(),
            with_form: true,
            with_buttons: self.attribute("print") != "none",
            with_link: self.shares(),
            another: None,
        }
    }

    /// An attribute of the host has changed.
    pub(crate) fn attribute_changed(&self, name: &str) {
        let mut sheet = self.sheet();
        match name {
            name if PRESETS.contains(&name) => {
                let preset = self.preset();
                for key in preset_keys(name) {
                    sheet.set(key, preset.get(key));
                }
            }
            "lang" | "units" | "heading-level" | "print" => {}
            _ => return,
        }
        self.draw(&sheet);
        if self.state.borrow().answered {
            self.work_out(false);
        }
    }

    /// The language of the host has changed, and its words are here where there are any: all is drawn anew in it, and
    /// what was typed stays.
    pub(crate) fn language_changed(&self) {
        self.follow_language();
        within(pack(&calculator::lang(&self.host)), || {
            self.attribute_changed("lang");
        });
    }
}

/// The country of the reader's language (ISO 3166-1), or nothing: the last part of two capitals.
pub(crate) fn country() -> String {
    let language = navigator().and_then(|navigator| get(&navigator, "language")?.as_string());
    let language = language.unwrap_or_default();
    let capitals = |part: &&str| part.len() == 2 && part.bytes().all(|c| c.is_ascii_uppercase());
    let found = language.split('-').rfind(capitals);
    found.unwrap_or_default().to_owned()
}
