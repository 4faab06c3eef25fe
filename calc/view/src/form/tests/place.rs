//! The place: towns, points, leaves seen elsewhere, temperatures.

use super::{full, options, text, today, values};
use crate::form::{Options, Sheet, Towns, View, filled};
use crate::out::Html;
use calc::model::season::Local;
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
    Local::of(calc_data::reference().constants, question, &stations)
}

#[test]
fn a_lost_sign_a_swap_and_feet_for_metres_are_asked_about() {
    let reference = calc_data::reference();
    let options = Options {
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
fn a_picked_town_fills_the_point_and_a_region_only_where_none_was_given() {
    fn towns(country: &str, typed: &str) -> Towns {
        let town = |name: &str, region: &str, lat, lon| calc::timing::pack::towns::Town {
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
    let reference = calc_data::reference();
    let options = Options {
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
        !html.contains("checked") && line.starts_with("1 town"),
        "{line}"
    );
    let value = values(&html, "value")[0].to_owned();
    for (name, text) in filled(&value, "") {
        sheet.set(name, &text);
    }
    assert_eq!(sheet.get("region"), "US-WI");
    let (html, line) = offered(&sheet);
    assert!(
        html.contains("checked") && line.starts_with("Filled in"),
        "{line}"
    );
    let typed = sheet.typed(reference, today());
    let place = typed.place.unwrap();
    assert_eq!(
        (place.latitude, place.longitude),
        (text("43.07"), text("-89.4"))
    );
    assert_eq!(filled(&value, "US-IL").len(), 2, "a region stays");
    // The region leads to the country; its parts that the form does not name become the country.
    let mut sheet = Sheet::new();
    sheet.set("town", "mad");
    sheet.set("region", "GB");
    let (html, _) = offered(&sheet);
    let value = values(&html, "value")[0].to_owned();
    assert_eq!(filled(&value, "")[2], ("region", "GB".to_owned()));
    sheet.set("town", "qqq");
    assert!(offered(&sheet).1.starts_with("No town here"));
}

#[test]
fn leaves_seen_elsewhere_need_their_place() {
    let reference = calc_data::reference();
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
    let reference = calc_data::reference();
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
