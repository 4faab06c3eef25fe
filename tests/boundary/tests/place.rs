//! The place and the season as a page uses them: towns, leaves seen elsewhere, temperatures, the calendar.

mod host;

use calc::timing::Station;
use calc::timing::places::{climate, towns};
use host::{Host, wait};
use std::cell::RefCell;
use std::rc::Rc;
use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;
use wasm_bindgen::prelude::JsValue;
use wasm_bindgen_test::{wasm_bindgen_test, wasm_bindgen_test_configure};

wasm_bindgen_test_configure!(run_in_browser);

/// The countries whose lists are asked for from now on.
fn asked() -> Rc<RefCell<Vec<String>>> {
    let asked = Rc::new(RefCell::new(Vec::new()));
    let into = Rc::clone(&asked);
    let call = Closure::<dyn FnMut(String)>::new(move |country| into.borrow_mut().push(country));
    www_element::calls::when_towns_are_wanted(
        call.as_ref().unchecked_ref::<js_sys::Function>().clone(),
    );
    call.forget();
    asked
}

fn town(name: &str, region: &str, lat: f64, lon: f64, size: u8) -> towns::Town {
    let (name, region) = (name.to_owned(), region.to_owned());
    towns::Town {
        name,
        region,
        lat,
        lon,
        size,
    }
}

/// Ten towns of one name and two of a country with no states in the form.
fn packed(country: &str) -> Vec<u8> {
    towns::encode(&match country {
        "US" => (0..10)
            .map(|at| town("Madison", "US-WI", 43.0 + f64::from(at), -89.4, 8))
            .collect::<Vec<_>>(),
        _ => vec![town("Bath", "GB-ENG", 51.38, -2.36, 6)],
    })
}

/// An invented station near Madison, with a spring about as cold as there.
fn one_station() -> Vec<u8> {
    station("US", 43.1, -89.3)
}

fn station(country: &str, lat: f32, lon: f32) -> Vec<u8> {
    let near = climate::ClimatePlace {
        name: "Near".into(),
        country: country.into(),
        state: String::new(),
        station: Station {
            lat,
            lon,
            elev_m: 262.0,
            tmin: [
                -13.0, -11.0, -5.0, 1.0, 7.0, 13.0, 16.0, 14.0, 9.0, 3.0, -3.0, -10.0,
            ],
            tmax: [
                -4.0, -1.0, 6.0, 14.0, 21.0, 26.0, 28.0, 27.0, 22.0, 15.0, 6.0, -2.0,
            ],
        },
    };
    climate::encode(&[near], &[])
}

#[wasm_bindgen_test]
fn a_town_is_fetched_once_found_and_fills_the_place() {
    let asked = asked();
    let host = Host::new();
    host.type_in("#f-town-country", "US");
    host.type_in("#f-town", "m");
    assert!(asked.borrow().is_empty(), "one letter asks for nothing");
    host.type_in("#f-town", "mad");
    host.type_in("#f-town", "madi");
    assert_eq!(*asked.borrow(), ["US"]);
    assert!(host.text("#town-a").starts_with("Fetching"));
    assert!(!www_element::calls::take_towns("US", b"no list of towns"));
    www_element::calls::towns_failed("US");
    assert!(host.text("#town-a").contains("latitude and longitude"));
    assert!(www_element::calls::take_towns("US", &packed("US")));
    assert_eq!(host.all("#l-towns input").len(), 5);
    assert!(host.text("#l-towns").contains("Madison, WI"));
    host.click("#l-towns input[value='43 -89.4 US-WI']");
    assert_eq!(host.value("#f-place-latitude"), "43");
    assert_eq!(host.value("#f-place-longitude"), "-89.4");
    assert_eq!(host.value("#f-region"), "US-WI");
    assert_eq!(host.all("#l-towns input:checked").len(), 1);
    assert_eq!(host.text("#town-a"), "Used now: Madison, WI.");
    // What is typed over it is no longer that town's.
    host.type_in("#f-place-latitude", "43.5");
    assert!(!host.has("#l-towns input:checked"));
    assert_eq!(host.value("#f-region"), "US-WI");
    // Another country's list is another one.
    host.type_in("#f-town-country", "GB");
    assert_eq!(*asked.borrow(), ["US", "GB"]);
    www_element::calls::towns_failed("GB");
    assert!(host.text("#town-a").contains("could not be fetched"));
    assert!(www_element::calls::take_towns("GB", &packed("GB")));
    host.type_in("#f-town", "bath");
    host.click("#l-towns input");
    assert_eq!(host.value("#f-place-latitude"), "51.38");
    assert_eq!(host.value("#f-region"), "GB");
    // Another place typed over it takes both with it; a state alone has no point.
    host.type_in("#f-town", "New York");
    assert_eq!(host.value("#f-place-latitude"), "");
    assert_eq!(host.value("#f-region"), "US-NY");
    assert_eq!(host.text("#town-a"), "Used now: New York.");
    host.type_in("#f-town", "");
    assert_eq!(host.value("#f-region"), "");
}

#[wasm_bindgen_test]
fn the_country_of_the_towns_follows_the_region_until_a_town_is_typed() {
    let _ = asked();
    let host = Host::with(&[("region", "NZ")]);
    assert_eq!(host.value("#f-town-country"), "NZ");
    host.type_in("#f-region", "CA-ON");
    assert_eq!(host.value("#f-town-country"), "CA");
    host.type_in("#f-town", "x");
    host.type_in("#f-region", "DE");
    assert_eq!(host.value("#f-town-country"), "CA");
}

#[wasm_bindgen_test]
fn the_place_of_leaves_seen_elsewhere_is_found_by_its_town_too() {
    let _ = asked();
    assert!(www_element::calls::take_towns("CA", &packed("US")));
    let host = Host::new();
    host.fill_in_a_tree();
    host.type_in("#f-place-latitude", "44.2");
    host.type_in("#f-place-longitude", "-89.4");
    host.type_in("#f-leafed-out-stage", "buds_open");
    for (key, text) in [("m", "5"), ("d", "2"), ("y", "2027")] {
        host.type_in(&format!("#f-leafed-out-date-{key}"), text);
    }
    host.type_in("#f-leafed-out-where", "elsewhere");
    host.type_in("#f-leafed-out-town-country", "CA");
    host.type_in("#f-leafed-out-town", "mad");
    assert_eq!(host.all("#l-seen-towns input").len(), 5);
    assert!(!host.has("#l-towns input"));
    assert!(host.text("#seen-town-a").contains("5 towns"));
    // By keys alone: Enter leads to the list.
    let enter = "
        for (const fold of root.querySelectorAll('details')) fold.open = true;
        const field = root.querySelector('#f-leafed-out-town'); field.focus();
        field.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true, composed: true, cancelable: true }));
        return root.activeElement?.name;";
    let focused = js_sys::Function::new_with_args("root", enter)
        .call1(&JsValue::NULL, &host.root())
        .expect("it runs");
    assert_eq!(focused.as_string().as_deref(), Some("leafed_out.town.at"));
    host.click("#l-seen-towns input[value='43 -89.4 US-WI']");
    assert_eq!(host.value("#f-leafed-out-place-latitude"), "43");
    assert_eq!(host.value("#f-leafed-out-place-longitude"), "-89.4");
    // The tree's own place, and its state, stay as they were.
    assert_eq!(host.value("#f-place-latitude"), "44.2");
    assert_eq!(host.value("#f-region"), "");
    assert!(host.text("#seen-town-a").starts_with("Filled in"));
    assert!(
        host.text("#seen-a").contains("carried here: +4 days"),
        "{}",
        host.text("#seen-a")
    );
    host.press();
    assert!(!host.has(".errsum"));
    let timing = host.get("result");
    let timing = js_sys::Reflect::get(&timing, &"timing".into()).expect("timing");
    let basis = js_sys::Reflect::get(&timing, &"basis".into()).expect("a basis");
    let kind = js_sys::Reflect::get(&basis, &"kind".into()).expect("a kind");
    assert_eq!(kind.as_string().as_deref(), Some("observed_elsewhere"));
}

#[wasm_bindgen_test]
fn the_state_of_a_point_is_proposed_and_taken_by_its_button_alone() {
    let _ = asked();
    assert!(www_element::calls::take_climate(&station(
        "CA", 45.3, -75.7
    )));
    let three = [
        town("Ottawa", "CA-ON", 45.42, -75.7, 9),
        town("Hull", "CA-QC", 45.43, -75.73, 6),
        town("Smiths Falls", "CA-ON", 44.9, -76.02, 3),
    ];
    assert!(www_element::calls::take_towns("CA", &towns::encode(&three)));
    let host = Host::new();
    host.fill_in_a_tree();
    assert_eq!(host.text("#near-a"), "");
    host.type_in("#f-place-latitude", "44.91");
    host.type_in("#f-place-longitude", "-76.02");
    let said = host.text("#near-a");
    assert!(said.contains("lies in Ontario"), "{said}");
    assert_eq!(host.all("[data-act=region]").len(), 1);
    // At the border both are named, and neither is taken.
    host.type_in("#f-place-latitude", "45.42");
    host.type_in("#f-place-longitude", "-75.7");
    let said = host.text("#near-a");
    assert!(said.contains("near a border"), "{said}");
    assert_eq!(host.all("[data-act=region]").len(), 2);
    assert_eq!(host.value("#f-region"), "");
    host.press();
    assert_eq!(host.result("outcome"), "do");
    host.click("[data-act=region][data-at='1']");
    assert_eq!(host.value("#f-region"), "CA-QC");
    assert_eq!(host.focused(), "f-region");
    assert_eq!(host.all("[data-act=region]").len(), 0);
    assert_eq!(host.text("#near-a"), "");
    assert_eq!(host.value("#f-town-country"), "CA");
    // One that can't be is contradicted, and stays until the reader changes it.
    host.type_in("#f-region", "NZ");
    let said = host.text("#near-a");
    assert!(said.ends_with("says otherwise."), "{said}");
    assert_eq!(host.value("#f-region"), "NZ");
}

#[wasm_bindgen_test]
fn this_springs_temperatures_show_before_and_after() {
    assert!(www_element::calls::take_climate(&one_station()));
    let host = Host::new();
    host.fill_in_a_tree();
    host.type_in("#f-place-latitude", "43.07");
    host.type_in("#f-place-longitude", "-89.4");
    assert!(host.text("#elevation-a").contains("262 m"));
    host.press();
    assert!(!host.text("#answer").contains("From ordinary years"));
    // A warm spring: the bark slips sooner than in ordinary years.
    let mut table = String::from("date,tmin,tmax\n");
    for (month, days) in [(3, 31), (4, 30)] {
        for day in 1..=days {
            table.push_str(&format!("2027-{month:02}-{day:02},6,20\n"));
        }
    }
    table.push_str("2027-05-01,20\n2027-05-02,6,warm\n");
    host.type_in("#f-spring", &table);
    host.click("input[name=spring_scale][value=celsius]");
    let read = host.text("#spring-a");
    assert!(read.contains("Days of temperatures read: 61."), "{read}");
    assert!(
        read.contains("Line 63 was not used: fewer than three"),
        "{read}"
    );
    assert!(read.contains("Line 64 was not used"), "{read}");
    host.press();
    let answer = host.text("#answer .p-when");
    assert!(
        answer.contains("From ordinary years the bark would slip"),
        "{answer}"
    );
    assert!(answer.contains("Line 63 was not used"), "{answer}");
    // A table of which nothing can be used is told at its field, and nothing is made of it.
    host.type_in("#f-spring", "nothing of use");
    host.press();
    assert_eq!(host.all(".errmsg").len(), 1);
    let field = host.one("#f-spring");
    assert_eq!(field.get_attribute("aria-invalid").as_deref(), Some("true"));
    host.click(".errsum a");
    assert_eq!(host.focused(), "f-spring");
    assert!(!field.has_attribute("tabindex"));
}

#[wasm_bindgen_test]
async fn a_file_of_temperatures_goes_into_the_same_field() {
    let host = Host::new();
    let make = |text: &str| {
        let code = "const list = new DataTransfer(); list.items.add(new File([text], 'spring.csv')); return list.files;";
        let files = js_sys::Function::new_with_args("text", code)
            .call1(&JsValue::NULL, &text.into())
            .expect("files");
        js_sys::Reflect::set(&host.one("#f-spring-file"), &"files".into(), &files).expect("set");
        host.send("#f-spring-file", "change");
    };
    make("2027-03-01,2,9\n2027-03-02,3,8\n");
    wait(200).await;
    assert_eq!(host.value("#f-spring"), "2027-03-01,2,9\n2027-03-02,3,8\n");
    assert!(host.text("#spring-a").contains("read: 2."));
    make(&"2027-03-01,2,9\n".repeat(20_000));
    wait(200).await;
    assert!(host.text("#spring-a").contains("too long"));
    assert_eq!(host.value("#f-spring"), "2027-03-01,2,9\n2027-03-02,3,8\n");
}

#[wasm_bindgen_test]
fn leaves_seen_elsewhere_need_a_place_and_their_coordinates_are_not_told() {
    let host = Host::new();
    host.fill_in_a_tree();
    host.type_in("#f-leafed-out-stage", "buds_open");
    for (key, text) in [("m", "5"), ("d", "2"), ("y", "2027")] {
        host.type_in(&format!("#f-leafed-out-date-{key}"), text);
    }
    assert!(host.one("#m-leafed-out-place").has_attribute("hidden"));
    host.type_in("#f-leafed-out-where", "elsewhere");
    assert!(!host.one("#m-leafed-out-place").has_attribute("hidden"));
    host.press();
    assert!(
        host.text(".errsum").contains("both"),
        "{}",
        host.text(".errsum")
    );
    host.type_in("#f-leafed-out-place-latitude", "41.37");
    host.type_in("#f-leafed-out-place-longitude", "-73.52");
    host.type_in("#f-leafed-out-rates", "hopkins");
    let told = host.last_of("slipbark-result");
    host.press();
    assert!(!host.has(".errsum"));
    let told = told.borrow().clone();
    assert!(
        told.contains("hopkins") && !told.contains("41.37"),
        "{told}"
    );
}

#[wasm_bindgen_test]
fn a_position_is_asked_for_by_its_button_alone_and_what_is_refused_is_said() {
    let code = "
        const kept = navigator.geolocation; let asked = 0;
        const give = (value) => Object.defineProperty(navigator, 'geolocation', { value, configurable: true });
        give({ getCurrentPosition(found, refused) { asked += 1; if (window.refuse) refused({ code: 1 }); else found({ coords: { latitude: 43.0731, longitude: -89.4012 } }); } });
        return () => asked;";
    let asked = js_sys::Function::new_no_args(code)
        .call0(&JsValue::NULL)
        .expect("a stand-in");
    let asked = || {
        let asked: &js_sys::Function = asked.unchecked_ref();
        asked.call0(&JsValue::NULL).ok().and_then(|n| n.as_f64())
    };
    let host = Host::new();
    host.fill_in_a_tree();
    host.press();
    assert_eq!(asked(), Some(0.0));
    let refuse = |on: bool| {
        let window = web_sys::window().expect("a window");
        js_sys::Reflect::set(&window, &"refuse".into(), &on.into()).expect("set");
    };
    refuse(true);
    host.click("[data-act=position]");
    assert!(host.text("#position-a").contains("Allow it"));
    assert_eq!(host.value("#f-place-latitude"), "");
    refuse(false);
    host.click("[data-act=position]");
    assert_eq!(asked(), Some(2.0));
    assert_eq!(host.value("#f-place-latitude"), "43.07");
    assert_eq!(host.value("#f-place-longitude"), "-89.4");
    js_sys::Function::new_no_args("delete navigator.geolocation;")
        .call0(&JsValue::NULL)
        .expect("as it was");
}

#[wasm_bindgen_test]
async fn the_visits_are_downloaded_as_a_calendar() {
    let host = Host::new();
    host.fill_in_a_tree();
    host.press();
    // The file that the page makes is caught where the browser would take it.
    let code = "
        const make = URL.createObjectURL;
        return new Promise((done) => { URL.createObjectURL = (blob) => {
          URL.createObjectURL = make; blob.text().then((text) => done(`${blob.type} ${text}`)); return make.call(URL, blob);
        }; });";
    let caught = js_sys::Function::new_no_args(code)
        .call0(&JsValue::NULL)
        .expect("a promise");
    host.click("[data-act=calendar]");
    let text = js_sys::futures::JsFuture::from(js_sys::Promise::from(caught)).await;
    let text = text.expect("a file").as_string().unwrap_or_default();
    assert!(
        text.starts_with("text/calendar BEGIN:VCALENDAR\r\n"),
        "{text}"
    );
    assert!(
        text.contains("SUMMARY:Check the Norway maple\\, 14"),
        "{text}"
    );
    let result = host.get("result");
    let visits = js_sys::Reflect::get(&result, &"visits".into()).expect("a list");
    let visits = js_sys::Array::from(&visits).length() as usize;
    assert!(visits > 0);
    assert_eq!(text.matches("BEGIN:VEVENT").count(), visits);
    let stamp = text
        .split("DTSTAMP:")
        .nth(1)
        .and_then(|rest| rest.get(..16));
    let stamp = stamp.unwrap_or_default();
    let (day, time) = stamp.split_once('T').expect("a moment");
    assert!(
        day.len() == 8 && time.len() == 7 && time.ends_with('Z'),
        "{stamp}"
    );
    assert!(host.status().contains("calendar file"));
    // Where the host wants no buttons there is none.
    let bare = Host::with(&[("print", "none")]);
    bare.fill_in_a_tree();
    bare.press();
    assert!(bare.has(".p-check") && !bare.has("[data-act=calendar]"));
}
