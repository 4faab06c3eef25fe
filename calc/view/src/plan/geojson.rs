//! The plan as points and as circles of ground for a map (GeoJSON, RFC 7946). Columns with people stay out.

use super::read::{Listed, ReadList};
use super::tables::{Told, added_names};
use calc::timing::climate::EARTH_KM;
use calc_data::list::Column;
use calc_list::{Row, RowFault, RowProblem};
use calc_plan::{CountedAs, SeasonPlan};
use core::f64::consts::TAU;
use std::collections::BTreeSet;

/// Mean radius of the earth, metres: a circle of some hundred metres is off by centimetres.
pub(super) const EARTH_M: f64 = EARTH_KM * 1000.0;
/// Points of a circle; the first comes again at the end.
const CIRCLE: usize = 64;
/// Decimals of a degree: a tenth of a metre.
const DECIMALS: usize = 6;

/// A text in JSON.
fn text(text: &str) -> String {
    serde_json::Value::from(text).to_string()
}

/// A position: longitude first (3.1.1).
fn position((latitude, longitude): (f64, f64)) -> String {
    format!("[{longitude:.DECIMALS$},{latitude:.DECIMALS$}]")
}

/// How a file of features begins.
pub(super) fn begin() -> String {
    let mut file = String::from("{\"type\":\"FeatureCollection\",\"generator\":\"slipbark ");
    file.push_str(env!("CARGO_PKG_VERSION"));
    file.push_str("\",\"features\":[\n");
    file
}

/// How it ends.
pub(super) const END: &str = "\n]}\n";

/// A feature behind those that stand in the file.
fn add(file: &mut String, feature: &str) {
    if file.ends_with('}') {
        file.push_str(",\n");
    }
    file.push_str(feature);
}

fn feature<'a>(
    tag: &str,
    geometry: &str,
    properties: impl Iterator<Item = (&'a str, String)>,
) -> String {
    let properties: Vec<String> = properties
        .map(|(name, value)| [text(name).as_str(), ":", &value].concat())
        .collect();
    [
        "{\"type\":\"Feature\",\"id\":",
        &text(tag),
        ",\"geometry\":",
        geometry,
        ",\"properties\":{",
        &properties.join(","),
        "}}",
    ]
    .concat()
}

/// The columns of the list that go out: their place and a name that no other has. Those of people stay out, as do those
/// that an earlier plan wrote.
fn columns(list: &ReadList) -> Vec<(usize, String)> {
    let mut used: BTreeSet<String> = added_names().map(str::to_owned).collect();
    let mut columns = Vec::new();
    for (at, column) in list.columns.iter().enumerate() {
        if column.ours || matches!(column.is, Column::People | Column::DoneBy) {
            continue;
        }
        let header = list.layout.texts.get(at).map_or("", |header| header.trim());
        let header = match header {
            "" => ["column_", &calc_list::letter(at)].concat(),
            header => header.to_owned(),
        };
        let mut name = header.clone();
        let mut more = 1;
        while !used.insert(name.clone()) {
            more += 1;
            name = [&header, "_", &more.to_string()].concat();
        }
        columns.push((at, name));
    }
    columns
}

/// A cell that we wrote: a number where it is one, else a text; null where it is empty.
fn value(cell: &str) -> String {
    let plain = cell.bytes().all(|c| c.is_ascii_digit() || c == b'.');
    match cell {
        "" => "null".to_owned(),
        cell if plain && serde_json::from_str::<serde_json::Number>(cell).is_ok() => {
            cell.to_owned()
        }
        cell => text(cell),
    }
}

/// The tag, which readers take as the key of a feature (RFC 7946, 3.2): a row whose tag stands in an earlier row has its own
/// row behind it, so that none is taken for the other. Its properties hold the tag as it stands in the list.
fn id(row: &Row) -> String {
    let tag = &row.tag.tree_id;
    let is_twice = |problem: &RowProblem| matches!(problem.code, RowFault::TagTwice { .. });
    match row.problems.iter().any(is_twice) {
        true => [tag, " (row ", &row.row.to_string(), ")"].concat(),
        false => tag.clone(),
    }
}

/// Every tree of some lines as a point with the cells of the list and of its plan; one without a place has no geometry.
/// `told` are the rows from the first of these lines on.
pub(super) fn trees(list: &ReadList, lines: &[Listed], told: &[Told], file: &mut String) {
    let columns = columns(list);
    let has_exact = columns.iter().any(|(_, name)| name == "coord_m");
    let rows = lines.iter().filter_map(|line| match line {
        Listed::Row(record, row, _) => Some((record, row)),
        _ => None,
    });
    for ((record, row), told) in rows.zip(told) {
        if matches!(row.is, calc_list::Is::NotTree(_)) {
            continue;
        }
        let geometry = match row.tag.point {
            Some(point) => [
                "{\"type\":\"Point\",\"coordinates\":",
                &position(point),
                "}",
            ]
            .concat(),
            None => "null".to_owned(),
        };
        let own = columns
            .iter()
            .map(|(at, name)| (name.as_str(), text(record.cell(*at))));
        let added = added_names().zip(told.cells.iter().map(|cell| value(cell)));
        let exact = row.tag.coord_m.filter(|_| !has_exact);
        let exact = exact.map(|metres| ("coord_m", metres.to_string()));
        let properties = own.chain(added).chain(exact);
        add(file, &feature(&id(row), &geometry, properties));
    }
}

/// The circle of ground round each tree of some lines that is ringed, or was, in which it may come down.
pub(super) fn reach(
    lines: &[Listed],
    planned: &SeasonPlan,
    zones: &[Option<f64>],
    file: &mut String,
) {
    for line in lines {
        let Listed::Row(_, row, Some(tree)) = line else {
            continue;
        };
        let standing = matches!(
            planned.reasons[*tree],
            CountedAs::Planned | CountedAs::Done | CountedAs::Dead
        );
        if let (true, Some(point), Some(zone_m)) = (standing, row.tag.point, zones[*tree]) {
            add(file, &circle(row, point, zone_m));
        }
    }
}

/// Anticlockwise and closed (3.1.6).
fn circle(row: &Row, (latitude, longitude): (f64, f64), zone_m: f64) -> String {
    let degrees = (zone_m / EARTH_M).to_degrees();
    let shrinks = libm::cos(latitude.to_radians()).max(f64::MIN_POSITIVE);
    let mut points: Vec<String> = (0..CIRCLE)
        .map(|at| {
            let turn = TAU * at as f64 / CIRCLE as f64;
            position((
                latitude + degrees * libm::sin(turn),
                longitude + degrees * libm::cos(turn) / shrinks,
            ))
        })
        .collect();
    points.extend(points.first().cloned());
    let geometry = [
        "{\"type\":\"Polygon\",\"coordinates\":[[",
        &points.join(","),
        "]]}",
    ]
    .concat();
    let properties = [
        ("kind", text("standing_zone")),
        ("zone_m", format!("{zone_m:.1}")),
    ];
    feature(&row.tag.tree_id, &geometry, properties.into_iter())
}
