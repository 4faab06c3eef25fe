//! Reading the tables of content as they are printed: rows, cells, places.
#![allow(dead_code, reason = "each check uses its own part")]

use calc::timing::Station;
use calc::timing::places::climate::{ClimatePlace, Places, RegionPlaces, decode, encode};
use calc_data::table::Table;
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

/// One row of a table by column name.
pub(crate) type Row = BTreeMap<String, String>;

/// The repository's root.
pub(crate) fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("..")
}

/// The rows of a CSV file, by its path from the repository's root.
pub(crate) fn rows(path: &str) -> Vec<Row> {
    let table = Table::read(&root(), path).unwrap_or_else(|problem| panic!("{problem}"));
    table.rows.into_iter().map(|row| row.cells).collect()
}

/// A cell as a number.
pub(crate) fn number(row: &Row, column: &str) -> f64 {
    row[column]
        .parse()
        .unwrap_or_else(|_| panic!("{column} is no number in {row:?}"))
}

/// The climate file as the page has it.
pub(crate) fn climate_file() -> Places {
    let (places, regions) = climate_rows();
    decode(&encode(&places, &regions)).expect("a whole file")
}

/// The rows behind it: content/places/climate_places.csv and content/evidence/region_places.csv.
pub(crate) fn climate_rows() -> (Vec<ClimatePlace>, Vec<RegionPlaces>) {
    let rows_of = rows("content/places/climate_places.csv");
    let all: Vec<ClimatePlace> = rows_of
        .iter()
        .zip(stations())
        .map(|(r, station)| ClimatePlace {
            name: r["name"].clone(),
            country: r["country"].clone(),
            state: r["state"].clone(),
            station,
        })
        .collect();
    let at = |id: &str| {
        let place = rows_of.iter().position(|r| r["id"] == id);
        place.unwrap_or_else(|| panic!("no climate place {id}"))
    };
    let regions: Vec<RegionPlaces> = rows("content/evidence/region_places.csv")
        .iter()
        .map(|r| RegionPlaces {
            region: r["region"].clone(),
            places: ["cold_id", "middle_id", "warm_id"].map(|column| at(&r[column])),
            spread_days: number(r, "spread_days"),
        })
        .collect();
    (all, regions)
}

/// The places of content/places/climate_places.csv.
pub(crate) fn stations() -> Vec<Station> {
    rows("content/places/climate_places.csv")
        .iter()
        .map(|r| {
            let months = |kind: &str| {
                std::array::from_fn(|m| number(r, &format!("{kind}{:02}", m + 1)) as f32)
            };
            Station {
                lat: number(r, "lat") as f32,
                lon: number(r, "lon") as f32,
                elev_m: number(r, "elev_m") as f32,
                tmin: months("tmin"),
                tmax: months("tmax"),
            }
        })
        .collect()
}
