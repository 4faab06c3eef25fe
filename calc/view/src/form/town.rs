//! Where it is: a town by name, the device's own position, or a point as typed.

use super::field::{NUMBER, Takes, TextField};
use super::item::Item;
use super::place::region::{self, countries, known};
use super::{Part, View, words as w};
use crate::control::{labelled, open_input, open_select, option};
use crate::field_id;
use crate::page::Page;
use crate::words::region::region;
use crate::words::{Word, m};
use calc::timing::places::towns::Town;

/// Towns for a name while it is typed.
#[derive(Clone, Debug, Default, PartialEq)]
pub enum Towns {
    /// None were asked for.
    #[default]
    NotAsked,
    /// The country's list is on its way.
    Coming,
    /// It could not be had.
    Failed,
    /// The best matches, best first.
    Found(Vec<Town>),
}

/// A name is looked up from so many letters on.
const FROM_LETTERS: usize = 2;
/// At most so many are offered.
pub const MOST: usize = 8;
/// The line that says what became of the device's position: the host writes it.
pub const POSITION_ID: &str = "position-a";

/// A search for a town, and the point that its pick fills.
pub struct Search {
    /// The field of the name; its country and its pick are `.country` and `.at` of it.
    pub name: &'static str,
    /// The fields that the pick fills: `.latitude` and `.longitude` of it.
    under: &'static str,
    /// The part with the matches.
    pub part: Part,
    /// The line that says how the search stands.
    pub(super) line: &'static str,
}

/// The line that says whether the date could be carried to the tree.
pub(super) const CARRIED_ID: &str = "seen-a";

/// The place of the tree, and the place where the leaves were seen.
pub const SEARCHES: [Search; 2] = [
    Search {
        name: "town",
        under: "place",
        part: Part::Towns,
        line: "town-a",
    },
    Search {
        name: "leafed_out.town",
        under: "leafed_out.place",
        part: Part::SeenTowns,
        line: "seen-town-a",
    },
];

impl Search {
    /// The field of one of its parts.
    #[must_use]
    pub fn field(&self, key: &str) -> String {
        cat!(self.name, key)
    }
}

/// The country whose towns are searched: picked, else that of the region, else the reader's, else the United States.
fn country<'v>(view: &'v View<'_>, search: &Search) -> &'v str {
    let region = view.sheet.get("region").split('-').next();
    [
        view.sheet.get(&search.field(".country")),
        region.unwrap_or_default(),
        view.options.country,
    ]
    .into_iter()
    .find(|code| has_towns(code))
    .unwrap_or("US")
}

/// Whether a country (ISO 3166-1) has a list of towns.
#[must_use]
pub fn has_towns(country: &str) -> bool {
    countries().any(|(known, _)| known == country)
}

/// Looks the typed name up.
pub(super) fn look(view: &View<'_>, search: &Search) -> Towns {
    let typed = view.sheet.trimmed(search.name);
    match view.options.towns {
        Some(find) if typed.chars().count() >= FROM_LETTERS => find(country(view, search), typed),
        _ => Towns::NotAsked,
    }
}

/// The fields of the place.
pub(super) const PLACE: Item = Item::Set(
    "place",
    m::FORM_WHERE,
    &[
        Item::Own(|view, out| search(view, out, &SEARCHES[0])),
        Item::Own(position),
        Item::Note("hint", m::FORM_POINT_HINT),
        Item::Field(&[Item::Text(TextField {
            name: "place.latitude",
            ..LATITUDE
        })]),
        Item::Field(&[
            Item::Text(TextField {
                name: "place.longitude",
                ..LONGITUDE
            }),
            Item::Line("echo", "f-place-longitude-m"),
        ]),
        Item::Field(&[
            Item::Text(TextField {
                name: "place.elevation",
                ..ELEVATION
            }),
            Item::Line("asm", "elevation-a"),
        ]),
        Item::Field(&[Item::Status(region::LINE_ID), Item::Part(Part::Near)]),
        Item::Select("place.hemisphere", m::FORM_HALF, Word::NONE, w::HALVES),
    ],
);

/// The fields of the place where the leaves were seen.
pub(super) const SEEN_PLACE: Item = Item::Set(
    "leafed_out.place",
    m::FORM_SEEN_POINT,
    &[
        Item::Note("hint", m::FORM_SEEN_HINT),
        Item::Own(|view, out| search(view, out, &SEARCHES[1])),
        Item::Field(&[Item::Text(TextField {
            name: "leafed_out.place.latitude",
            ..LATITUDE
        })]),
        Item::Field(&[Item::Text(TextField {
            name: "leafed_out.place.longitude",
            ..LONGITUDE
        })]),
        Item::Field(&[Item::Text(TextField {
            name: "leafed_out.place.elevation",
            ..ELEVATION
        })]),
        Item::Field(&[Item::Status(CARRIED_ID)]),
        Item::Select("leafed_out.rates", m::FORM_RATES, Word::NONE, w::RATE_WORDS),
    ],
);

const LATITUDE: TextField = TextField {
    label: m::FORM_LATITUDE,
    takes: Takes::Signed,
    ..NUMBER
};
const LONGITUDE: TextField = TextField {
    label: m::FORM_LONGITUDE,
    ..LATITUDE
};
const ELEVATION: TextField = TextField {
    label: m::FORM_ELEVATION,
    unit_here: true,
    ..NUMBER
};

/// The device's own position, where it can be asked for it.
fn position(view: &View<'_>, out: &mut Page<'_>) {
    if view.options.position {
        view.items(
            out,
            &[Item::Field(&[
                Item::Note("hint", m::FORM_POSITION_HINT),
                Item::Button("position", m::FORM_POSITION),
                Item::Status(POSITION_ID),
            ])],
        );
    }
}

/// The country, the name, how the search stands, the matches. Nothing where no list can be had.
fn search(view: &View<'_>, out: &mut Page<'_>, search: &Search) {
    if view.options.towns.is_none() {
        return;
    }
    open_select(out, &search.field(".country"), &m::FORM_TOWN_COUNTRY, "");
    for (code, name) in countries() {
        option(out, code, name, code == country(view, search));
    }
    out.close_two();
    let id = field_id(search.name);
    let hint_id = labelled(out, &id, &m::FORM_TOWN, &m::FORM_TOWN_HINT);
    let typed = view.sheet.get(search.name);
    open_input(out, "wf", "", &id, search.name, typed);
    out.attr("spellcheck", "false");
    out.attr("aria-describedby", &hint_id);
    out.close();
    view.status_line(out, search.line);
    view.whole_part(out, search.part);
    out.close();
}

/// The matches, to pick one from.
pub(super) fn list(view: &View<'_>, out: &mut Page<'_>, at: usize) {
    let Towns::Found(found) = &view.towns[at] else {
        return;
    };
    if found.is_empty() {
        return;
    }
    let search = &SEARCHES[at];
    out.open_class("fieldset", "sub");
    out.leaf_class("legend", "vh", m::FORM_TOWN_PICK);
    for town in found.iter().take(MOST) {
        crate::control::tick(
            out,
            "radio",
            &search.field(".at"),
            &value(town),
            picked(view, search, town),
            &|out| {
                out.text(name(town));
                out.leaf("small", shown(town));
            },
        );
    }
    out.close();
}

/// Whether it is this town's point that stands in the fields.
fn picked(view: &View<'_>, search: &Search, town: &Town) -> bool {
    let [lat, lon] = degrees(town);
    let stands = |key: &str, text: String| view.sheet.is(&cat!(search.under, key), &text);
    stands(".latitude", lat) && stands(".longitude", lon)
}

/// How the search stands, for those who look and those who listen.
pub(super) fn line(view: &View<'_>, at: usize) -> String {
    let picked = |town: &Town| picked(view, &SEARCHES[at], town);
    match &view.towns[at] {
        Towns::NotAsked => String::new(),
        Towns::Coming => m::FORM_TOWN_COMING.into(),
        Towns::Failed => m::FORM_TOWN_FAILED.into(),
        Towns::Found(found) if found.is_empty() => m::FORM_TOWN_NONE.into(),
        Towns::Found(found) if found.iter().any(picked) => m::FORM_TOWN_FILLED.into(),
        Towns::Found(found) => {
            let count = found.len().min(MOST) as u32;
            m::form_towns_match(count)
        }
    }
}

/// `Madison, WI`.
fn name(town: &Town) -> String {
    match town.region.split_once('-') {
        Some((_, part)) => cat!(&town.name, ", ", part),
        None => town.name.clone(),
    }
}

/// The state where we have a name for it, and the point, which parts towns of one name.
fn shown(town: &Town) -> String {
    let state = match known(&town.region) {
        code if code == town.region => cat!(region(code), ", "),
        _ => String::new(),
    };
    let [lat, lon] = degrees(town);
    cat!(&*state, &lat, ", ", &lon).replace('-', "−")
}

fn degrees(town: &Town) -> [String; 2] {
    [town.lat, town.lon].map(|value| crate::measure::plain(value, 2))
}

/// What a town fills in: latitude, longitude, and the code of its state or country as the form has it.
fn value(town: &Town) -> String {
    let [lat, lon] = degrees(town);
    let region = match known(&town.region) {
        "" => town.region.split('-').next().unwrap_or_default(),
        region => region,
    };
    [&*lat, &lon, region].join(" ")
}

/// The fields that the value of a picked town fills, with their texts: the pick's name says of which search. The
/// region only for the tree's own place, and only where none was given.
#[must_use]
pub fn filled(pick: &str, value: &str, region: &str) -> Vec<(String, String)> {
    let mut filled = Vec::new();
    let Some(at) = SEARCHES
        .iter()
        .position(|search| search.field(".at") == pick)
    else {
        return filled;
    };
    let under = SEARCHES[at].under;
    let mut parts = value.split(' ').map(str::to_owned);
    for key in [".latitude", ".longitude"] {
        filled.extend(parts.next().map(|text| (cat!(under, key), text)));
    }
    if at == 0 && region.is_empty() {
        filled.extend(parts.next().map(|text| ("region".to_owned(), text)));
    }
    filled
}
