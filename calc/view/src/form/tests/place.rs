//! The place: towns, points, leaves seen elsewhere, temperatures.

use super::{full, options, text, today, values};
use crate::form::{FormOptions, Part, Sheet, Towns, View, filled};
use crate::out::Html;
use calc::models::season::Local;
use calc::question::read;

/// Three invented stations: near Boston, Sydney and Berlin.
fn three_stations(question: &calc::question::Question) -> Local {
    let stations =
        [(42.4, -71.0), (-33.9, 151.2), (52.5, 13.4)].map(|(lat, lon)| calc::timing::Station {
            lat,
            lon,
            elev_m: 20.0,
            tmin: [0.0; 12],
            tmax: [10.0; 12],
        });
    let places = calc::timing::places::climate::Places {
        stations: stations.to_vec(),
        ..Default::default()
    };
    Local::of(
        &calc_data::whole().constants.timing,
        &question.place,
        question.region.as_deref(),
        &places,
    )
}

#[test]
fn a_lost_sign_a_swap_and_feet_for_metres_are_asked_about() {
    let reference = calc_data::whole();
    let options = FormOptions {
        group: None,
        local: three_stations,
        ..options()
    };
    let line = |id: &str, lat: &str, lon: &str, high: &str| {
        let mut sheet = Sheet::new();
        for (name, text) in [
            ("place.latitude", lat),
            ("place.longitude", lon),
            ("place.elevation", high),
        ] {
            sheet.set(name, text);
        }
        let view = View::new(reference, &sheet, &options);
        let found = view.lines().iter().find(|(known, _)| known == id).cloned();
        found.unwrap_or_else(|| panic!("no line {id}")).1
    };
    for (lat, lon, meant) in [
        ("42.36", "71.06", "Did you mean 42.36, −71.06?"),
        ("33.87", "151.21", "Did you mean −33.87, 151.21?"),
        ("-42.36", "71.06", "Did you mean 42.36, −71.06?"),
        ("13.4", "52.5", "Did you mean 52.5, 13.4?"),
    ] {
        let said = line("f-place-longitude-m", lat, lon, "");
        assert!(said.contains(meant), "{lat}, {lon}: {said}");
    }
    for (lat, lon) in [
        ("42.36", "-71.06"),
        ("0", "-30"),
        ("95", "10"),
        ("42.36", ""),
    ] {
        assert_eq!(
            line("f-place-longitude-m", lat, lon, ""),
            "",
            "{lat}, {lon}"
        );
    }
    let high = |text: &str| line("f-place-elevation-r", "42.36", "-71.06", text);
    assert_eq!(high("15 m"), "Read as 15 m (49 ft).");
    assert_eq!(high("50"), "Read as 50 ft (15 m).");
    assert_eq!(high("-3 m"), "Read as −3 m (−10 ft).");
    assert_eq!(
        high("500 m"),
        "Read as 500 m (1640 ft). The stations near stand at 66 ft (20 m): feet or metres?"
    );
    assert_eq!(
        line("elevation-a", "42.36", "-71.06", ""),
        "Left empty: 66 ft (20 m) used, that of the stations near. 100 m (330 ft) is about 2 days."
    );
    assert_eq!(line("elevation-a", "42.36", "-71.06", "15 m"), "");
    assert_eq!(line("elevation-a", "", "", ""), "");
}

#[test]
fn a_picked_town_fills_the_point_and_its_region() {
    fn towns(country: &str, typed: &str) -> Towns {
        let town = |name: &str, region: &str, lat, lon| calc::timing::places::towns::Town {
            name: name.to_owned(),
            region: region.to_owned(),
            lat,
            lon,
            size: 7,
        };
        Towns::Found(match (country, typed) {
            ("US", "mad") => vec![town("Madison", "US-WI", 43.07, -89.4)],
            ("GB", "mad") => vec![town("Madeley", "GB-ENG", 52.63, -2.45)],
            _ => vec![],
        })
    }
    let reference = calc_data::whole();
    let options = FormOptions {
        group: None,
        towns: Some(towns),
        ..options()
    };
    let offered = |sheet: &Sheet| {
        let view = View::new(reference, sheet, &options);
        let mut out = Html::default();
        view.part(&mut out, crate::form::Part::Towns);
        let html = out.into_string();
        let line = view.lines().iter().find(|(id, _)| id == "town-a").cloned();
        (html, line.unwrap().1)
    };
    let mut sheet = Sheet::new();
    sheet.set("town", "m");
    assert_eq!(offered(&sheet), (String::new(), String::new()));
    sheet.set("town", "mad");
    let (html, line) = offered(&sheet);
    assert!(
        html.contains("Madison, WI") && html.contains("Wisconsin, 43.07, −89.4"),
        "{html}"
    );
    assert!(
        !html.contains("checked") && line.starts_with("Pick the town"),
        "{line}"
    );
    let value = values(&html, "value")[0].to_owned();
    for (name, text) in filled("town.at", &value) {
        sheet.set(&name, &text);
    }
    assert_eq!(sheet.get("region"), "US-WI");
    let (html, line) = offered(&sheet);
    assert!(
        html.contains("checked") && line == "Used now: Madison, WI.",
        "{line}"
    );
    let typed = sheet.typed(reference, today());
    let place = typed.place.unwrap();
    assert_eq!(
        (place.latitude, place.longitude),
        (text("43.07"), text("-89.4"))
    );
    assert_eq!(filled("region", &value), [], "another field is no pick");
    // The region leads to the country; its parts that the form does not name become the country.
    let mut sheet = Sheet::new();
    sheet.set("town", "mad");
    sheet.set("region", "GB");
    let (html, _) = offered(&sheet);
    let value = values(&html, "value")[0].to_owned();
    assert_eq!(
        filled("town.at", &value)[2],
        ("region".to_owned(), "GB".to_owned())
    );
    sheet.set("region", "");
    sheet.set("town", "qqq");
    assert!(offered(&sheet).1.starts_with("No town here"));
}

#[test]
fn a_state_or_country_is_typed_in_the_field_of_the_town() {
    let reference = calc_data::whole();
    let options = options();
    let seen = |town: &str| {
        let mut sheet = Sheet::new();
        sheet.set("town", town);
        let view = View::new(reference, &sheet, &options);
        let mut out = Html::default();
        view.part(&mut out, Part::Towns);
        let line = view.lines().iter().find(|(id, _)| id == "town-a").cloned();
        let region = sheet.typed(reference, today()).region;
        (out.into_string(), line.unwrap().1, region)
    };
    let (html, line, region) = seen("wis");
    assert_eq!(values(&html, "value"), ["US-WI"]);
    assert_eq!((&*line, region), ("", text("wis")));
    assert_eq!(
        filled("town.at", "US-WI")[2],
        ("region".to_owned(), "US-WI".to_owned())
    );
    for (town, code, used) in [
        ("Wisconsin", "US-WI", "Used now: Wisconsin."),
        ("Sample Falls, NY", "US-NY", "Used now: New York."),
        ("germany", "DE", "Used now: Germany."),
    ] {
        let (html, line, region) = seen(town);
        assert_eq!((&*html, &*line, region), ("", used, text(code)), "{town}");
    }
    // What is no place that we know is not passed over.
    let mut sheet = Sheet::of(reference, &full(), today());
    for name in ["region", "place.latitude", "place.longitude"] {
        sheet.set(name, "");
    }
    sheet.set("town", "Nowhere");
    let problems = read(reference, &sheet.typed(reference, today())).unwrap_err();
    assert!(
        problems.iter().any(|problem| problem.field == "region"),
        "{problems:?}"
    );
}

#[test]
fn the_place_where_the_leaves_were_seen_has_a_search_of_its_own() {
    fn towns(country: &str, typed: &str) -> Towns {
        let town = calc::timing::places::towns::Town {
            name: [typed, "town"].concat(),
            region: [country, "-XX"].concat(),
            lat: if country == "DE" { 52.0 } else { 41.0 },
            lon: -73.5,
            size: 3,
        };
        Towns::Found(vec![town])
    }
    let reference = calc_data::whole();
    let options = FormOptions {
        towns: Some(towns),
        local: three_stations,
        ..options()
    };
    let mut sheet = Sheet::of(reference, &full(), today());
    sheet.set("leafed_out.where", "elsewhere");
    sheet.set("leafed_out.rates", "fitted");
    sheet.set("leafed_out.town", "new");
    let part = |sheet: &Sheet, part| {
        let mut out = Html::default();
        View::new(reference, sheet, &options).part(&mut out, part);
        out.into_string()
    };
    let found = part(&sheet, Part::SeenTowns);
    assert!(
        found.contains("newtown") && found.contains("name=\"leafed_out.town.at\""),
        "{found}"
    );
    assert_eq!(
        part(&sheet, Part::Towns),
        "",
        "the tree's own search is another"
    );
    let value = values(&found, "value")[0].to_owned();
    let texts = filled("leafed_out.town.at", &value);
    assert_eq!(texts.len(), 2, "the tree's region is its own: {texts:?}");
    for (name, text) in texts {
        sheet.set(&name, &text);
    }
    sheet.set("place.latitude", "42.36");
    sheet.set("place.longitude", "-71.06");
    assert!(part(&sheet, Part::SeenTowns).contains("checked"));
    let typed = sheet.typed(reference, today());
    let seen = typed.leafed_out.unwrap().place.unwrap();
    assert_eq!((seen.latitude, seen.longitude), (text("41"), text("-73.5")));
    assert_eq!(typed.place.unwrap().latitude, text("42.36"));
    // Whether it can be carried is said beside it.
    let line = |sheet: &Sheet| {
        let view = View::new(reference, sheet, &options);
        let found = view.lines().iter().find(|(id, _)| id == "seen-a").cloned();
        found.unwrap().1
    };
    let said = line(&sheet);
    assert!(said.contains("carried here: +6 days"), "{said}");
    sheet.set("leafed_out.place.longitude", "73.5");
    assert!(line(&sheet).contains("too far away"), "{}", line(&sheet));
    sheet.set("leafed_out.where", "");
    assert_eq!(line(&sheet), "");
    // Its country follows the tree's until it is picked.
    let country = |sheet: &Sheet| {
        let mut out = Html::default();
        View::new(reference, sheet, &options).form(&mut out);
        let html = out.into_string();
        let at = html.find("f-leafed-out-town-country\"").unwrap();
        let picked = html[at..].find("selected").unwrap();
        html[at..at + picked].rsplit("value=\"").next().unwrap()[..2].to_owned()
    };
    sheet.set("region", "CA-ON");
    assert_eq!(country(&sheet), "CA");
    sheet.set("leafed_out.town.country", "DE");
    assert_eq!(country(&sheet), "DE");
}

#[test]
fn the_region_of_a_point_is_proposed_and_never_filled_in() {
    fn near(latitude: f64, _: f64, stands: &str) -> Vec<(String, f64)> {
        let list: &[(&str, f64)] = match latitude as i32 {
            // Far from any border; near one; abroad, by parts that the form does not name; out of reach; not here yet.
            43 => &[("US-IL", 80.0), ("US-WI", 4.0)],
            42 => &[("US-IL", 9.0), ("US-WI", 4.0), ("US-IA", 60.0)],
            52 => &[("GB-SCT", 200.0), ("GB-ENG", 3.0), ("FR-HDF", 180.0)],
            20 => &[("MX", 40.0), ("US-TX", 500.0)],
            60 => &[("US-AK", 400.0)],
            _ => {
                assert_eq!(stands, "", "what stands is told");
                &[]
            }
        };
        list.iter().map(|(r, km)| ((*r).to_owned(), *km)).collect()
    }
    let reference = calc_data::whole();
    let options = FormOptions { near, ..options() };
    let said = |lat: &str, region: &str| {
        let mut sheet = Sheet::new();
        sheet.set("place.latitude", lat);
        sheet.set("place.longitude", "-89");
        sheet.set("region", region);
        let view = View::new(reference, &sheet, &options);
        let mut out = Html::default();
        view.part(&mut out, Part::Near);
        let line = view.lines().iter().find(|(id, _)| id == "near-a").cloned();
        assert_eq!(
            sheet.typed(reference, today()).region,
            text(region).filter(|_| !region.is_empty())
        );
        (view.near().to_vec(), line.unwrap().1, out.into_string())
    };
    let (codes, line, html) = said("43.07", "");
    assert_eq!(codes, ["US-WI"]);
    assert!(
        line.contains("lies in Wisconsin") && line.contains("not said yet"),
        "{line}"
    );
    assert!(
        html.contains(">Use Wisconsin<") && html.contains("data-act=\"region\""),
        "{html}"
    );
    let (codes, line, html) = said("42.5", "");
    assert_eq!(codes, ["US-WI", "US-IL"]);
    assert!(
        line.contains("near a border") && line.contains("Wisconsin or Illinois"),
        "{line}"
    );
    assert!(html.contains(">Use Illinois<"), "{html}");
    assert_eq!(said("52", "").0, ["GB"]);
    // What can't be told is not proposed.
    for (lat, region) in [("20", ""), ("60", ""), ("", "")] {
        let (codes, line, html) = said(lat, region);
        assert!(codes.is_empty() && line.is_empty(), "{lat}: {line}");
        assert!(!html.contains("button"), "{lat}: {html}");
    }
    // One that stands is right as far as the towns tell, or is contradicted.
    for region in ["US-WI", "US-IL"] {
        assert!(said("42.5", region).0.is_empty(), "{region}");
    }
    let (codes, line, _) = said("43.07", "US-IL");
    assert_eq!(codes, ["US-WI"]);
    assert!(line.ends_with("says otherwise."), "{line}");
}

#[test]
fn leaves_seen_elsewhere_need_their_place() {
    let reference = calc_data::whole();
    let mut typed = full();
    typed.leafed_out.as_mut().unwrap().place = Some(calc::question::PlaceTyped {
        latitude: text("41"),
        longitude: text("-73.5"),
        elevation: text("30 m"),
        ..Default::default()
    });
    let mut sheet = Sheet::of(reference, &typed, today());
    assert_eq!(sheet.typed(reference, today()), typed);
    sheet.set("leafed_out.place.longitude", "");
    sheet.set("leafed_out.place.latitude", "");
    sheet.set("goal", "kill");
    let problems = read(reference, &sheet.typed(reference, today())).unwrap_err();
    assert_eq!(problems[0].field, "leafed_out.place");
    sheet.set("leafed_out.where", "");
    let seen = sheet.typed(reference, today()).leafed_out.unwrap();
    assert_eq!(seen.place, None);
}

#[test]
fn a_table_of_temperatures_says_how_it_was_read() {
    let reference = calc_data::whole();
    let options = options();
    let mut sheet = Sheet::of(reference, &full(), today());
    let line = |sheet: &Sheet| {
        let view = View::new(reference, sheet, &options);
        let found = view
            .lines()
            .iter()
            .find(|(id, _)| id == "spring-a")
            .cloned();
        found.unwrap().1
    };
    sheet.set("spring", "2027-03-01,2,9\nnonsense\n2027-03-02,9,2 C\n");
    let said = line(&sheet);
    assert!(
        said.starts_with("Days of temperatures read: 1.") && said.contains("Line 2 was not used"),
        "{said}"
    );
    sheet.set("spring", "nothing of use");
    assert_eq!(line(&sheet), "", "the message at the field says it");
}
