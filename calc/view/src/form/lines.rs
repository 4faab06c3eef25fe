//! The lines that follow what is typed: units in labels, echoes, assumptions, distances.

use super::day::{self, leaf_out};
use super::field::unit_word;
use super::length::{Length, LengthKind};
use super::place::region;
use super::sheet::{entry, names};
use super::{View, aids, more, place, species, town, tree};
use crate::field_id;
use crate::measure::{self, Both};
use crate::words::m;
use calc::terms::number::{Unit, read_number};
use calc::terms::quantity::Units;
use calc::timing::PointClimate;

/// What a line says of a form.
type Says = fn(&View<'_>) -> String;

/// The lines beside those of lengths: the id of each, and what it says.
const LINES: [(&str, Says); 14] = [
    (species::COUNT_ID, species::count),
    ("f-stems-0-diameter-h", tree::size_hint_line),
    (place::TWO_HEIGHTS_ID, place::two_heights),
    (day::LINE_ID, day::line),
    ("height-a", height),
    ("bark-a", bark),
    (town::SEARCHES[0].line, town::place_line),
    (town::SEARCHES[1].line, |view| town::line(view, 1)),
    (region::LINE_ID, region::line),
    (town::CARRIED_ID, leaf_out::carried),
    ("f-place-longitude-m", meant),
    ("elevation-a", elevation),
    (leaf_out::READ_ID, leaf_out::read),
    (aids::HEIGHT_LINE, aids::height_line),
];

/// Every line: id and text.
pub(super) fn lines(view: &View<'_>) -> Vec<(String, String)> {
    let sheet = view.sheet;
    let mut lines = Vec::new();
    for name in names(sheet.count("stems"), sheet.count("targets")) {
        if let Some(length) = Length::of(&name) {
            let id = field_id(&name);
            let unit = unit_word(sheet.unit_of(&length));
            lines.push((cat!(&id, "-u"), unit.to_owned()));
            lines.push((cat!(id, "-r"), echo(view, &name, &length)));
        }
    }
    for (id, say) in &LINES {
        lines.push(((*id).to_owned(), say(view)));
    }
    lines.push((aids::TIMED_LINE.to_owned(), aids::timed_line(view)));
    lines.extend(more::lines(view));
    lines
}

/// What a number was read as, where its unit is not the one beside it, or where a girth was given.
fn echo(view: &View<'_>, name: &str, length: &Length) -> String {
    let text = view.sheet.trimmed(name);
    let kind = length.kind;
    let beside = unit_of(view.sheet.unit_of(length));
    let Ok(number) = read_number(text) else {
        return String::new();
    };
    let unit = number.unit.unwrap_or(beside);
    let Some(scale) = unit.in_mm() else {
        return String::new();
    };
    let mm = number.value * scale;
    let units = match unit {
        Unit::Inch | Unit::Foot => Units::Us,
        _ => Units::Metric,
    };
    if kind == LengthKind::Elevation {
        let mut echo = m::form_read_as(shown(kind, mm).text(units));
        if name == "place.elevation" {
            let asked = feet_or_metres(view);
            if !asked.is_empty() {
                echo = cat!(echo, " ", asked);
            }
        }
        return echo;
    }
    if mm <= 0.0 {
        return String::new();
    }
    let mut echo = String::new();
    if unit != beside {
        echo = m::form_read_as(shown(kind, mm).text(units));
    }
    let girth = entry(name, "stems").is_some_and(|stem| view.sheet.around(stem));
    if kind == LengthKind::Trunk && girth {
        if !echo.is_empty() {
            echo.push(' ');
        }
        let across = shown(kind, mm / core::f64::consts::PI);
        let value = measure::plain(number.value, 3);
        echo.push_str(&m::form_read_across(m::FormReadAcross {
            size: across.first(units),
            girth: value,
        }));
    }
    echo
}

fn shown(kind: LengthKind, mm: f64) -> Both {
    match kind {
        LengthKind::Trunk => measure::size_read(mm),
        LengthKind::Bark => measure::bark(mm),
        LengthKind::Ground => measure::length(mm / 1000.0),
        LengthKind::Elevation => measure::above_sea(mm / 1000.0),
    }
}

/// The unit of a control's value.
fn unit_of(value: &str) -> Unit {
    match value {
        "in" => Unit::Inch,
        "ft" => Unit::Foot,
        "mm" => Unit::Millimetre,
        "cm" => Unit::Centimetre,
        _ => Unit::Metre,
    }
}

/// The units of the question.
pub(super) fn units(view: &View<'_>) -> Units {
    if view.sheet.metric() {
        Units::Metric
    } else {
        Units::Us
    }
}

fn height(view: &View<'_>) -> String {
    if !view.sheet.blank("height") {
        return aids::measured_by(view).unwrap_or_else(|| m::FORM_TOLD.into());
    }
    let Some(answer) = view.draft.whole() else {
        return m::FORM_HEIGHT_EMPTY.into();
    };
    let height = &answer.height;
    let used = measure::length(height.hazard_m).text(units(view));
    if height.whole_table {
        return m::form_height_table(used);
    }
    let raised = height
        .over_tallest
        .filter(|over| libm::fabs(height.tallest_m * over - height.hazard_m) < 0.01);
    if let Some(over) = raised {
        let times = measure::plain(over, 2);
        m::form_height_over(m::FormHeightOver {
            height: used,
            times,
        })
    } else {
        m::form_height_used(used)
    }
}

/// The bark of the first stem, if it was not measured.
fn bark(view: &View<'_>) -> String {
    if !view.sheet.blank("stems[0].bark") {
        return m::FORM_TOLD.into();
    }
    let stem = view.draft.whole().and_then(|answer| answer.stems.first());
    let Some(bark) = stem.and_then(|stem| stem.bark.as_ref()) else {
        return m::FORM_BARK_EMPTY.into();
    };
    let units = units(view);
    let number = |mm: f64| {
        let both = measure::bark(mm);
        let text = both.first(units);
        text.split(' ').next().unwrap_or_default().to_owned()
    };
    let used = measure::bark(bark.mm).text(units);
    let (low, high) = (number(bark.low_mm), number(bark.high_mm));
    m::form_bark_used(m::FormBarkUsed {
        bark: used,
        low,
        high,
    })
}

/// Where a point that is out of reach may have been meant to be.
fn meant(view: &View<'_>) -> String {
    let meant = view.draft.local.meant;
    meant.map_or_else(String::new, crate::words::season::meant)
}

/// The elevation that is used where none was typed.
fn elevation(view: &View<'_>) -> String {
    let typed = !view.sheet.blank("place.elevation");
    let half = ["place.latitude", "place.longitude"]
        .iter()
        .any(|name| view.sheet.blank(name));
    if typed || half {
        return String::new();
    }
    match view
        .draft
        .local
        .climate
        .and_then(|climate| climate.site.elev_m)
    {
        Some(high) => {
            let used = measure::above_sea(high).text(units(view));
            m::form_elevation_used(used)
        }
        None => m::FORM_ELEVATION_EMPTY.into(),
    }
}

/// Asks whether feet were taken for metres, or metres for feet, where the stations near stand at quite another height.
fn feet_or_metres(view: &View<'_>) -> String {
    let climate = view.draft.local.climate;
    let odd = |climate: &PointClimate| climate.elevation_odd(&view.reference.constants.timing);
    climate.filter(odd).map_or_else(String::new, |climate| {
        let at = measure::above_sea(climate.stations_m).text(units(view));
        m::form_feet_or_metres(at)
    })
}
