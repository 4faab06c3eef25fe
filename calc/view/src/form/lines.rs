//! The lines that follow what is typed: units in labels, echoes, assumptions, distances.

use super::field::unit_word;
use super::length::{Kind, Length};
use super::sheet::{entry, names, path};
use super::{View, aids, near, seen, species, town, tree, words as w};
use crate::field_id;
use crate::measure::{self, Both};
use calc::quantity::{Unit, Units, read_number};
use calc::timing::PointClimate;

/// Every line: id and text.
pub(super) fn lines(view: &View<'_>) -> Vec<(String, String)> {
    let sheet = view.sheet;
    let mut lines = vec![
        (species::COUNT_ID.to_owned(), species::count(view)),
        (
            "f-stems-0-diameter-h".to_owned(),
            tree::size_hint(sheet).to_owned(),
        ),
    ];
    for name in names(sheet.count("stems"), sheet.count("targets")) {
        if let Some(length) = Length::of(&name) {
            let id = field_id(&name);
            let unit = unit_word(sheet.unit_of(&length)).to_owned();
            lines.push(([&id, "-u"].concat(), unit));
            lines.push(([&id, "-r"].concat(), echo(view, &name, &length)));
        }
    }
    let mut line = |id: &str, text: String| lines.push((id.to_owned(), text));
    let how = sheet.get("stems.how").is_empty();
    line("stems-how-a", said(how, w::HOW_OPEN));
    let two = two_heights(view);
    line("none-d", two.clone());
    line("line-d", two);
    let none = sheet.ticked("none_in_reach");
    let empty = (0..sheet.count("targets")).all(|at| {
        sheet.get(&path("targets", at, "kind")).is_empty()
            && sheet
                .get(&path("targets", at, "distance"))
                .trim()
                .is_empty()
    });
    line("targets-a", said(empty && !none, w::NOT_ASKED));
    let listed =
        (0..sheet.count("targets")).any(|at| sheet.get(&path("targets", at, "kind")) == "line");
    let unasked = sheet.get("line_within_reach").is_empty() && !none && !listed;
    line("line-a", said(unasked, w::NOT_ASKED));
    line("height-a", height(view));
    line("bark-a", bark(view));
    for (at, search) in town::SEARCHES.iter().enumerate() {
        line(search.line, town::line(view, at));
    }
    line(near::LINE_ID, near::line(view));
    line(seen::CARRIED_ID, seen::carried(view));
    line("f-place-longitude-m", meant(view));
    line("elevation-a", elevation(view));
    line(seen::READ_ID, seen::read(view));
    line(aids::HEIGHT_LINE, aids::height_line(view));
    line(aids::TIMED_LINE, aids::timed_line(view));
    lines
}

fn said(holds: bool, words: &str) -> String {
    if holds {
        words.to_owned()
    } else {
        String::new()
    }
}

/// What a number was read as, where its unit is not the one beside it, or where a girth was given.
fn echo(view: &View<'_>, name: &str, length: &Length) -> String {
    let text = view.sheet.get(name).trim();
    let kind = length.kind;
    let beside = view.sheet.unit_of(length);
    let Ok(number) = read_number(text) else {
        return String::new();
    };
    let unit = number.unit.map_or(beside, sign);
    let Some(scale) = mm_in(unit) else {
        return String::new();
    };
    let mm = number.value * scale;
    let metric = matches!(unit, "mm" | "cm" | "m");
    let units = if metric { Units::Metric } else { Units::Us };
    if kind == Kind::Elevation {
        let mut echo = [
            w::READ_AS,
            &measure::above_sea(mm / 1000.0).text(units),
            ".",
        ]
        .concat();
        if name == "place.elevation" {
            echo.push_str(&feet_or_metres(view));
        }
        return echo;
    }
    if mm <= 0.0 {
        return String::new();
    }
    let mut echo = String::new();
    if number.unit.is_some() && unit != beside {
        echo = [w::READ_AS, &shown(kind, mm).text(units), "."].concat();
    }
    let girth = entry(name, "stems").is_some_and(|stem| view.sheet.around(stem));
    if kind == Kind::Trunk && girth {
        if !echo.is_empty() {
            echo.push(' ');
        }
        let across = shown(kind, mm / core::f64::consts::PI);
        let value = measure::plain(number.value, 3);
        echo.push_str(&[across.first(units), w::READ_ACROSS, &value, w::OVER_PI].concat());
    }
    echo
}

fn shown(kind: Kind, mm: f64) -> Both {
    match kind {
        Kind::Trunk => measure::size_read(mm),
        Kind::Bark => measure::bark(mm),
        Kind::Ground => measure::length(mm / 1000.0),
        Kind::Elevation => measure::above_sea(mm / 1000.0),
    }
}

fn sign(unit: Unit) -> &'static str {
    match unit {
        Unit::Inch => "in",
        Unit::Foot => "ft",
        Unit::Millimetre => "mm",
        Unit::Centimetre => "cm",
        Unit::Metre => "m",
        Unit::Percent | Unit::Minute | Unit::Volt | Unit::Kilovolt => "",
    }
}

fn mm_in(sign: &str) -> Option<f64> {
    let unit = match sign {
        "in" => Unit::Inch,
        "ft" => Unit::Foot,
        "mm" => Unit::Millimetre,
        "cm" => Unit::Centimetre,
        "m" => Unit::Metre,
        _ => return None,
    };
    unit.in_mm()
}

/// The units of the question.
pub(super) fn units(view: &View<'_>) -> Units {
    if view.sheet.metric() {
        Units::Metric
    } else {
        Units::Us
    }
}

/// Two heights, where species and size are known.
fn two_heights(view: &View<'_>) -> String {
    view.draft.whole().map_or_else(
        || w::TWO_HEIGHTS.to_owned(),
        |answer| measure::reach(answer.reach.people_out_m).text(units(view)),
    )
}

fn height(view: &View<'_>) -> String {
    if !view.sheet.get("height").trim().is_empty() {
        return aids::measured_by(view).unwrap_or_default();
    }
    let Some(answer) = view.draft.whole() else {
        return w::HEIGHT_EMPTY.to_owned();
    };
    let height = &answer.height;
    let used = measure::length(height.hazard_m).text(units(view));
    if height.whole_table {
        return [w::LEFT_EMPTY, &used, w::HEIGHT_TABLE].concat();
    }
    let over = view.reference.constants.height.hazard;
    let raised = libm::fabs(height.tallest_m * over - height.hazard_m) < 0.01;
    if raised {
        let more = measure::percent((over - 1.0) * 100.0);
        [w::LEFT_EMPTY, &used, w::HEIGHT_USED, &more, w::IN_100].concat()
    } else {
        [w::LEFT_EMPTY, &used, w::USED_STOP].concat()
    }
}

/// The bark of the first stem, if it was not measured.
fn bark(view: &View<'_>) -> String {
    if !view.sheet.get("stems[0].bark").trim().is_empty() {
        return String::new();
    }
    let stem = view.draft.whole().and_then(|answer| answer.stems.first());
    let Some(bark) = stem.and_then(|stem| stem.bark.as_ref()) else {
        return w::BARK_EMPTY.to_owned();
    };
    let units = units(view);
    let number = |mm: f64| {
        let both = measure::bark(mm);
        let text = both.first(units);
        text.split(' ').next().unwrap_or_default().to_owned()
    };
    let used = measure::bark(bark.mm).text(units);
    let range = [&number(bark.low_mm), w::TO, &number(bark.high_mm)].concat();
    [w::LEFT_EMPTY, &used, w::USED, &range, w::CLOSE].concat()
}

/// Where a point that is out of reach may have been meant to be.
fn meant(view: &View<'_>) -> String {
    let meant = view.draft.local.meant;
    meant.map_or_else(String::new, crate::words::meant)
}

/// The elevation that is used where none was typed.
fn elevation(view: &View<'_>) -> String {
    let typed = !view.sheet.get("place.elevation").trim().is_empty();
    let half = ["place.latitude", "place.longitude"]
        .iter()
        .any(|name| view.sheet.get(name).trim().is_empty());
    if typed || half {
        return String::new();
    }
    match view
        .draft
        .local
        .climate
        .and_then(|climate| climate.site.elev_m)
    {
        Some(m) => {
            let used = measure::above_sea(m).text(units(view));
            [w::LEFT_EMPTY, &used, w::ELEVATION_USED].concat()
        }
        None => w::ELEVATION_EMPTY.to_owned(),
    }
}

/// Asks whether feet were taken for metres, or metres for feet, where the stations near stand at quite another height.
fn feet_or_metres(view: &View<'_>) -> String {
    let climate = view.draft.local.climate;
    let odd = |climate: &PointClimate| climate.elevation_odd(&view.reference.constants.timing);
    climate.filter(odd).map_or_else(String::new, |climate| {
        let at = measure::above_sea(climate.stations_m).text(units(view));
        [w::STATIONS_AT, &at, w::FEET_OR_METRES].concat()
    })
}
