//! Where it is: a town by name, the device's own position, or a point as typed.

use super::field::{NUMBER, Takes, TextField};
use super::item::Item;
use super::place::named;
use super::place::region::{self, country_codes, known};
use super::{Part, View};
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
/// At most so many places stand under what is typed.
const SHOWN: usize = 5;
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

/// The control that keeps what the field of the place has filled in: the value of the pick, or the code of the region.
pub const PLACED: &str = "town.placed";
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

/// The country whose towns are searched: that of what is typed behind a comma, else picked, else that of the region,
/// else the reader's, else the United States.
fn country<'v>(view: &'v View<'_>, search: &Search) -> &'v str {
    let region = view.sheet.region().split('-').next();
    let behind = view.sheet.get(search.name).rsplit_once(',');
    let behind = behind.and_then(|(_, behind)| named::region_of(behind));
    [
        behind
            .and_then(|code| code.split('-').next())
            .unwrap_or_default(),
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
    country_codes().any(|known| known == country)
}

/// Looks the typed name up.
pub(super) fn look(view: &View<'_>, search: &Search) -> Towns {
    let text = view.sheet.get(search.name);
    // What is the name of a state is no town.
    if search.name == "town" && !text.contains(',') && named::region_of(text).is_some() {
        return Towns::NotAsked;
    }
    let typed = named::town_of(text);
    match view.options.towns {
        Some(find) if typed.chars().count() >= FROM_LETTERS => {
            let mut towns = find(country(view, search), typed);
            let region = text.rsplit_once(',').and_then(|_| named::region_of(text));
            if let (Towns::Found(found), Some(region)) = (&mut towns, region) {
                found.retain(|town| known(&town.region) == region);
            }
            towns
        }
        _ => Towns::NotAsked,
    }
}

/// The question where it is: one field for a town, a state, a province or a country.
pub(super) const GROUP: &[Item] = &[Item::Own(place)];

fn place(view: &View<'_>, out: &mut Page<'_>) {
    let search = &SEARCHES[0];
    name_of(
        view,
        out,
        search,
        &m::FORM_WHICH_PLACE,
        &m::FORM_WHICH_PLACE_HINT,
    );
    out.open("input");
    out.attr("type", "hidden");
    out.attr("name", PLACED);
    out.attr("value", view.sheet.get(PLACED));
    out.close();
}

/// The fields of the place.
pub(super) const PLACE: Item = Item::Set(
    "place",
    m::FORM_WHERE,
    &[
        Item::Own(|view, out| country_of(view, out, &SEARCHES[0])),
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
        Item::Select("place.hemisphere", m::FORM_HALF, Word::NONE, m::FORM_HALVES),
    ],
);

/// The fields of the place where the leaves were seen.
pub(super) const SEEN_PLACE: Item = Item::Set(
    "leafed_out.place",
    m::FORM_SEEN_POINT,
    &[
        Item::Note("hint", m::FORM_SEEN_HINT),
        Item::Own(|view, out| {
            let search = &SEARCHES[1];
            country_of(view, out, search);
            if view.options.towns.is_some() {
                name_of(view, out, search, &m::FORM_TOWN, &m::FORM_TOWN_HINT);
            }
        }),
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
        Item::Select(
            "leafed_out.rates",
            m::FORM_RATES,
            Word::NONE,
            m::FORM_RATE_WORDS,
        ),
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

/// The country whose towns are looked up. Nothing where no list can be had.
fn country_of(view: &View<'_>, out: &mut Page<'_>, search: &Search) {
    if view.options.towns.is_none() {
        return;
    }
    open_select(out, &search.field(".country"), &m::FORM_TOWN_COUNTRY, "");
    let searched = country(view, search);
    for code in country_codes() {
        option(out, code, region(code), code == searched);
    }
    out.close_two();
}

/// The name, how the search stands, the matches.
fn name_of(view: &View<'_>, out: &mut Page<'_>, search: &Search, label: &str, hint: &str) {
    let id = field_id(search.name);
    let hint_id = labelled(out, &id, label, hint);
    let typed = view.sheet.get(search.name);
    open_input(out, "wf", "", &id, search.name, typed);
    out.attr("spellcheck", "false");
    out.attr("aria-describedby", &cat!(hint_id, " ", search.line));
    out.close();
    view.whole_part(out, search.part);
    view.status_line(out, search.line);
    out.close();
}

/// The regions that may be meant by what is typed, unless one is named whole.
fn regions_like(view: &View<'_>, at: usize) -> Vec<(&'static str, &'static str)> {
    let text = view.sheet.get(SEARCHES[0].name);
    if at > 0 || named::region_of(text).is_some() {
        return Vec::new();
    }
    named::like(text)
}

/// The matches, to pick one from: states and countries first, then towns.
pub(super) fn list(view: &View<'_>, out: &mut Page<'_>, at: usize) {
    let none = Vec::new();
    let towns = match &view.towns[at] {
        Towns::Found(found) => found,
        _ => &none,
    };
    let mut regions = regions_like(view, at);
    regions.truncate(if towns.is_empty() { SHOWN } else { 2 });
    if towns.is_empty() && regions.is_empty() {
        return;
    }
    let search = &SEARCHES[at];
    let pick = search.field(".at");
    out.open_class("fieldset", "pick");
    out.leaf_class("legend", "vh", m::FORM_TOWN_PICK);
    for (code, name) in &regions {
        let on = view.sheet.is("region", code);
        crate::control::tick_text(out, "radio", &pick, code, on, name);
    }
    for town in towns.iter().take(SHOWN - regions.len()) {
        let on = picked(view, search, town);
        crate::control::tick(out, "radio", &pick, &value(town), on, &|out| {
            out.text(name(town));
            out.leaf("small", shown(town));
        });
    }
    out.close();
}

/// What is used of the place that was typed, or what to do that it can be.
pub(super) fn place_line(view: &View<'_>) -> String {
    let found = match &view.towns[0] {
        Towns::Found(found) => &found[..],
        _ => &[],
    };
    if let Some(town) = found.iter().find(|town| picked(view, &SEARCHES[0], town)) {
        return m::form_place_used(name(town));
    }
    let code = view.sheet.region();
    let used = if code.is_empty() {
        String::new()
    } else {
        m::form_place_used(region(code))
    };
    if view.sheet.blank("town") {
        return used;
    }
    let next: String = match &view.towns[0] {
        Towns::Coming => m::FORM_TOWN_COMING.into(),
        Towns::Failed => m::FORM_TOWN_FAILED.into(),
        Towns::Found(_) if !found.is_empty() => m::FORM_TOWN_CHOOSE.into(),
        Towns::Found(_) if code.is_empty() && regions_like(view, 0).is_empty() => {
            m::FORM_TOWN_NONE.into()
        }
        _ => String::new(),
    };
    match (used.is_empty(), next.is_empty()) {
        (false, false) => cat!(used, " ", next),
        _ => cat!(used, next),
    }
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
            let count = found.len().min(SHOWN) as u32;
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

/// The fields that the value of a pick fills, with their texts: the pick's name says of which search. A state or country
/// has no point of its own; the tree's own place takes its region with it.
#[must_use]
pub fn filled(pick: &str, value: &str) -> Vec<(String, String)> {
    let mut filled = Vec::new();
    let Some(at) = SEARCHES
        .iter()
        .position(|search| search.field(".at") == pick)
    else {
        return filled;
    };
    let under = SEARCHES[at].under;
    let parts: Vec<&str> = value.split(' ').collect();
    let (lat, lon, region) = match *parts {
        [lat, lon, region] => (lat, lon, region),
        [lat, lon] => (lat, lon, ""),
        _ => ("", "", value),
    };
    filled.push((cat!(under, ".latitude"), lat.to_owned()));
    filled.push((cat!(under, ".longitude"), lon.to_owned()));
    if at == 0 {
        filled.push(("region".to_owned(), region.to_owned()));
    }
    filled
}
