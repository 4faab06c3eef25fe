//! The files of a plan of the sample property: names as they are fixed, maps read back by another library, and nothing
//! of a column with people in any file that is handed on.

use super::plan_of_sample::planned_sample;
use geojson::{FeatureCollection, GeoJson, GeometryValue, Position};
use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

/// Names of property files: all there may be.
const NAMES: [&str; 10] = [
    "cover.html",
    "crew-sheets.html",
    "plan.json",
    "reach.geojson",
    "season.ics",
    "standing.csv",
    "tags.html",
    "trees-plan.csv",
    "trees-to-fix.csv",
    "trees.geojson",
];

fn text(folder: &Path, name: &str) -> String {
    fs::read_to_string(folder.join(name)).unwrap_or_else(|error| panic!("{name}: {error}"))
}

fn table(text: &str) -> Vec<csv::StringRecord> {
    let text = text.trim_start_matches('\u{feff}');
    let mut reader = csv::ReaderBuilder::new()
        .has_headers(false)
        .from_reader(text.as_bytes());
    reader.records().collect::<Result<_, _>>().expect("CSV")
}

pub(crate) fn map(folder: &Path, name: &str) -> FeatureCollection {
    let read: GeoJson = text(folder, name).parse().expect("GeoJSON");
    FeatureCollection::try_from(read).expect("a collection")
}

/// Metres between two positions, by the haversine on a sphere of 6,371 km.
pub(crate) fn metres(a: &Position, b: &Position) -> f64 {
    let [lon_a, lat_a, lon_b, lat_b] = [
        a.as_slice()[0],
        a.as_slice()[1],
        b.as_slice()[0],
        b.as_slice()[1],
    ]
    .map(f64::to_radians);
    let half = |angle: f64| (angle / 2.0).sin().powi(2);
    let chord = half(lat_b - lat_a) + lat_a.cos() * lat_b.cos() * half(lon_b - lon_a);
    2.0 * 6_371_000.0 * chord.sqrt().asin()
}

#[test]
fn a_folder_holds_the_files_that_are_told_and_no_others() {
    let folder = planned_sample("files-names", 2027, &[]).folder;
    let mut names: Vec<String> = fs::read_dir(&folder)
        .expect("a folder")
        .map(|entry| {
            entry
                .expect("an entry")
                .file_name()
                .into_string()
                .expect("a name")
        })
        .collect();
    names.sort();
    assert_eq!(names, NAMES);

    // RFC 7946 by another library: positions are longitude first, rings are closed and run anticlockwise.
    let plan: serde_json::Value = serde_json::from_str(&text(&folder, "plan.json")).expect("JSON");
    let trees = map(&folder, "trees.geojson");
    let rows = table(&text(&folder, "trees-plan.csv"));
    let people = rows[0]
        .iter()
        .position(|name| name == "Surveyed by")
        .expect("people");
    let columns: BTreeSet<&str> = rows[0]
        .iter()
        .enumerate()
        .filter(|(at, _)| *at != people)
        .map(|(_, name)| name)
        .collect();
    let counts = |name: &str| plan["counts"][name].as_u64().expect("a count");
    assert_eq!(trees.features.len() as u64, counts("trees"));
    let mut places = std::collections::BTreeMap::new();
    let mut ids = BTreeSet::new();
    for feature in &trees.features {
        let properties = feature.properties.as_ref().expect("properties");
        let names: BTreeSet<&str> = properties.keys().map(String::as_str).collect();
        assert_eq!(names, columns);
        let Some(geojson::feature::Id::String(id)) = &feature.id else {
            panic!("{feature:?}");
        };
        // The commonly used identifier of a feature (3.2): the list has one tag twice.
        assert!(ids.insert(id.clone()), "{id} stands twice");
        if let Some(geometry) = &feature.geometry {
            let GeometryValue::Point { coordinates: at } = &geometry.value else {
                panic!("{feature:?}");
            };
            assert!(
                (at.as_slice()[0] + 71.5).abs() < 0.1 && (at.as_slice()[1] - 42.36).abs() < 0.1,
                "{at:?}"
            );
            places.insert(id.clone(), at.clone());
        }
    }
    let circles = map(&folder, "reach.geojson");
    let standing = counts("planned") + counts("done") + counts("dead");
    assert!(circles.features.len() as u64 <= standing && circles.features.len() > 20);
    for feature in &circles.features {
        let Some(geojson::feature::Id::String(id)) = &feature.id else {
            panic!("{feature:?}");
        };
        let properties = feature.properties.as_ref().expect("properties");
        assert_eq!(properties["kind"], "standing_zone");
        let zone = properties["zone_m"].as_f64().expect("metres");
        let geometry = feature.geometry.as_ref().map(|it| &it.value);
        let Some(GeometryValue::Polygon { coordinates: rings }) = geometry else {
            panic!("{feature:?}");
        };
        let [ring] = rings.as_slice() else {
            panic!("one ring")
        };
        assert!(ring.len() == 65 && ring.first() == ring.last());
        let at =
            |index: usize, axis: usize| ring[index].as_slice()[axis] - ring[0].as_slice()[axis];
        let twice_the_area: f64 = (0..64)
            .map(|index| at(index, 0) * at(index + 1, 1) - at(index + 1, 0) * at(index, 1))
            .sum();
        assert!(twice_the_area > 0.0, "anticlockwise");
        for position in ring {
            let far = metres(position, &places[id]);
            assert!((far - zone).abs() < 0.3, "{id}: {far} m, not {zone} m");
        }
    }

    // Nobody's name leaves in a file that is handed on.
    let mut names: BTreeSet<&str> = rows[1..].iter().map(|row| &row[people]).collect();
    names.remove("");
    assert!(names.len() > 2, "{names:?}");
    for file in NAMES {
        if ["trees-plan.csv", "trees-to-fix.csv"].contains(&file) {
            continue;
        }
        let text = text(&folder, file);
        for name in &names {
            assert!(!text.contains(name), "{file} names {name}");
        }
    }

    // The register: every tree that is ringed or dead, those that are overdue first.
    let register = table(&text(&folder, "standing.csv"));
    assert_eq!(register.len() as u64 - 1, counts("done") + counts("dead"));
    let next: Vec<&str> = register[1..]
        .iter()
        .map(|row| &row[6])
        .filter(|day| !day.is_empty())
        .collect();
    assert!(next.is_sorted(), "{next:?}");

    // Each tree that is planned has one tag, and one line on the sheet of its day.
    let tags = text(&folder, "tags.html");
    let sheets = text(&folder, "crew-sheets.html");
    assert_eq!(
        tags.matches("class=\"tag\"").count() as u64,
        counts("planned")
    );
    // What stands dead is named there for those who work near it, by tag.
    let mut trees = plan["trees"].as_array().expect("trees").iter();
    let dead = trees.find(|tree| tree["reason"] == "dead");
    let tag = dead.expect("a dead tree")["tree_id"]
        .as_str()
        .expect("a tag");
    let says = format!("dead or were ringed before:</b> {tag}, ");
    assert!(sheets.contains(&says), "{tag}");
    for tree in plan["trees"].as_array().expect("trees") {
        let tag = tree["tree_id"].as_str().expect("a tag");
        let ringed = tree["day"].is_string();
        assert_eq!(tags.contains(&format!("<h2>{tag}</h2>")), ringed, "{tag}");
        assert_eq!(
            sheets.contains(&format!("scope=\"row\">{tag}</th>")),
            ringed,
            "{tag}"
        );
    }
}
