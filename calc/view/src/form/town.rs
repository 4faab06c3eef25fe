//! Where it is: a town by name, the device's own position, or a point as typed.

use super::field::{TextField, UnitOf, button, labelled, open_group, open_set, option};
use super::regions::REGIONS;
use super::{Part, View, words as w};
use crate::field_id;
use crate::out::{Out, OutExt};
use calc::timing::pack::towns::Town;

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
/// The line that says how the search stands.
pub(super) const LINE_ID: &str = "town-a";
/// The line that says what became of the device's position: the host writes it.
pub const POSITION_ID: &str = "position-a";

/// The country whose towns are searched: picked, else that of the region, else the reader's, else the United States.
pub(super) fn country<'v>(view: &'v View<'_>) -> &'v str {
    let region = view.sheet.get("region").split('-').next();
    [
        view.sheet.get("town.country"),
        region.unwrap_or_default(),
        view.options.country,
    ]
    .into_iter()
    .find(|code| w::TOWN_COUNTRIES.iter().any(|(known, _)| known == code))
    .unwrap_or("US")
}

/// Looks the typed name up.
pub(super) fn look(view: &View<'_>) -> Towns {
    let typed = view.sheet.get("town").trim();
    match view.options.towns {
        Some(find) if typed.chars().count() >= FROM_LETTERS => find(country(view), typed),
        _ => Towns::NotAsked,
    }
}

/// The fields of the place.
pub(super) fn place(view: &View<'_>, out: &mut dyn Out) {
    open_set(out, "place", w::WHERE);
    if view.options.towns.is_some() {
        search(view, out);
    }
    if view.options.position {
        out.open_class("div", "field");
        out.leaf_class("p", "hint", w::POSITION_HINT);
        button(out, "position", None, w::POSITION, false);
        out.open_class("p", "asm");
        out.attr("id", POSITION_ID);
        out.attr("role", "status");
        out.attr("hidden", "");
        out.close();
        out.close();
    }
    out.leaf_class("p", "hint", w::POINT_HINT);
    point(view, out, "place", "place.unit");
    view.select(out, "place.hemisphere", w::HALF, "", w::HALVES);
    out.close();
}

/// Latitude, longitude, elevation under a name.
pub(super) fn point(view: &View<'_>, out: &mut dyn Out, under: &str, unit: &str) {
    for (key, label, line) in [
        (".latitude", w::LATITUDE, ""),
        (".longitude", w::LONGITUDE, "-m"),
    ] {
        let name = [under, key].concat();
        out.open_class("div", "field");
        // The keypad of digits has no minus on some phones.
        view.bare_field(
            out,
            &TextField {
                decimal: false,
                ..TextField::number(&name, label)
            },
        );
        if !line.is_empty() && under == "place" {
            view.live_line(out, "p", "echo", &[&field_id(&name), line].concat());
        }
        out.close();
    }
    let name = [under, ".elevation"].concat();
    out.open_class("div", "field");
    view.bare_field(
        out,
        &TextField {
            unit: Some(UnitOf::here(unit, "ft", "m")),
            ..TextField::number(&name, w::ELEVATION)
        },
    );
    if under == "place" {
        view.live_line(out, "p", "asm", "elevation-a");
    }
    out.close();
}

fn search(view: &View<'_>, out: &mut dyn Out) {
    let id = field_id("town.country");
    out.open_class("div", "field");
    labelled(out, &id, w::TOWN_COUNTRY, "");
    out.open_class("select", "wf");
    out.attr("id", &id);
    out.attr("name", "town.country");
    for (code, name) in w::TOWN_COUNTRIES {
        option(out, code, name, *code == country(view));
    }
    out.close();
    out.close();
    out.open_class("div", "field");
    let hint_id = labelled(out, "f-town", w::TOWN, w::TOWN_HINT);
    out.open_class("input", "wf");
    out.attr("type", "text");
    out.attr("id", "f-town");
    out.attr("name", "town");
    out.attr("value", view.sheet.get("town"));
    out.attr("spellcheck", "false");
    out.attr("aria-describedby", &hint_id);
    out.close();
    out.open_class("p", "asm");
    out.attr("id", LINE_ID);
    out.attr("role", "status");
    let line = view.line(LINE_ID);
    if line.is_empty() {
        out.attr("hidden", "");
    }
    out.text(line);
    out.close();
    view.whole_part(out, Part::Towns);
    out.close();
}

/// The matches, to pick one from.
pub(super) fn list(view: &View<'_>, out: &mut dyn Out) {
    let Towns::Found(found) = &view.towns else {
        return;
    };
    if found.is_empty() {
        return;
    }
    out.open_class("fieldset", "sub");
    out.leaf_class("legend", "vh", w::TOWN_PICK);
    for town in found.iter().take(MOST) {
        super::field::tick(
            out,
            "radio",
            "town.at",
            &value(town),
            picked(view, town),
            |out| {
                out.text(&name(town));
                out.leaf("small", &shown(town));
            },
        );
    }
    out.close();
}

/// Whether it is this town's point that stands in the fields.
fn picked(view: &View<'_>, town: &Town) -> bool {
    let [lat, lon] = degrees(town);
    view.sheet.get("place.latitude") == lat && view.sheet.get("place.longitude") == lon
}

/// How the search stands, for those who look and those who listen.
pub(super) fn line(view: &View<'_>) -> String {
    match &view.towns {
        Towns::NotAsked => String::new(),
        Towns::Coming => w::TOWN_COMING.to_owned(),
        Towns::Failed => w::TOWN_FAILED.to_owned(),
        Towns::Found(found) if found.is_empty() => w::TOWN_NONE.to_owned(),
        Towns::Found(found) if found.iter().any(|town| picked(view, town)) => {
            w::TOWN_FILLED.to_owned()
        }
        Towns::Found(found) => {
            let count = found.len().min(MOST) as u32;
            let words = if count == 1 {
                w::TOWN_MATCHES
            } else {
                w::TOWNS_MATCH
            };
            [&crate::measure::number(count), words].concat()
        }
    }
}

/// `Madison, WI`.
fn name(town: &Town) -> String {
    match town.region.split_once('-') {
        Some((_, part)) => [&town.name, ", ", part].concat(),
        None => town.name.clone(),
    }
}

/// The state where we have a name for it, and the point, which parts towns of one name.
fn shown(town: &Town) -> String {
    let state = REGIONS
        .iter()
        .flat_map(|(_, rows)| *rows)
        .find(|(code, _)| *code == town.region)
        .map_or(String::new(), |(_, state)| [state, ", "].concat());
    let [lat, lon] = degrees(town);
    [&*state, &lat, ", ", &lon].concat().replace('-', "−")
}

fn degrees(town: &Town) -> [String; 2] {
    [town.lat, town.lon].map(|value| crate::measure::plain(value, 2))
}

/// What a town fills in: latitude, longitude, and the code of its state or country as the form has it.
fn value(town: &Town) -> String {
    let known = |code: &str| {
        let rows = REGIONS.iter().flat_map(|(_, rows)| *rows);
        rows.into_iter().any(|(other, _)| *other == code)
    };
    let country = town.region.split('-').next().unwrap_or_default();
    let region = if known(&town.region) {
        &town.region
    } else {
        country
    };
    let [lat, lon] = degrees(town);
    [&*lat, &lon, region].join(" ")
}

/// The fields that the value of a picked town fills, with their texts. The region only where none was given.
#[must_use]
pub fn filled(value: &str, region: &str) -> Vec<(&'static str, String)> {
    let mut parts = value.split(' ');
    let mut filled = Vec::new();
    for name in ["place.latitude", "place.longitude", "region"] {
        let Some(text) = parts.next() else { break };
        if name != "region" || region.is_empty() {
            filled.push((name, text.to_owned()));
        }
    }
    filled
}

/// The group of the folded part: state or country, then the place.
pub(super) fn group(view: &View<'_>, out: &mut dyn Out) {
    open_group(out, w::MORE_PLACE);
    region(view, out);
    place(view, out);
    super::seen::leaf_out(view, out);
    super::seen::spring(view, out);
    super::more::where_select(
        view,
        out,
        super::Field::DrySpell,
        "dry_spell",
        w::DRY,
        "",
        w::DRIES,
    );
    out.close();
}

/// States and countries by name; a code that a host has set and we have no name for stays as it is.
fn region(view: &View<'_>, out: &mut dyn Out) {
    let picked = view.sheet.get("region");
    out.open_class("div", "field");
    let hint_id = labelled(out, "f-region", w::REGION, w::REGION_HINT);
    out.open_class("select", "wf");
    out.attr("id", "f-region");
    out.attr("name", "region");
    out.attr("aria-describedby", &hint_id);
    option(out, "", w::REGION_OPEN, picked.is_empty());
    let mut known = picked.is_empty();
    for (group, rows) in REGIONS {
        out.open("optgroup");
        out.attr("label", group);
        for (code, name) in *rows {
            known |= *code == picked;
            option(out, code, name, *code == picked);
        }
        out.close();
    }
    if !known {
        option(out, picked, picked, true);
    }
    out.close();
    out.close();
}
