//! What the device is asked for: its day; and only when its reader says so, where it is, and a file.

use crate::calculator::Calculator;
use crate::dom::{self, call, get};
use calc_view::form::{POSITION_ID, TIMED_LINE, timed_from};
use calc_view::words::m;
use chrono::NaiveDate;
use js_sys::{Date, Function, Object, Promise, Reflect};
use std::rc::Rc;
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::Element;

/// How long the device may look for its position, and how old one may be: milliseconds.
const LOOK_MS: u32 = 20_000;
const OLD_MS: u32 = 600_000;
/// A spring of daily temperatures has far fewer bytes; a longer file is another one.
const MOST_BYTES: f64 = 200_000.0;

fn geolocation() -> Option<JsValue> {
    get(&navigator()?, "geolocation")
}

/// The browser, as it tells of itself.
pub(crate) fn navigator() -> Option<JsValue> {
    get(web_sys::window()?.as_ref(), "navigator")
}

/// Whether the device can be asked where it is.
pub(crate) fn has_position() -> bool {
    geolocation().is_some()
}

/// Asks the device where it is, and fills that in to 0.01°, which is finer than any climate table.
pub(crate) fn position(calculator: &Rc<Calculator>) {
    let Some(geolocation) = geolocation() else {
        tell(calculator, &m::DEVICE_NO_POSITION);
        return;
    };
    tell(calculator, &m::DEVICE_LOOKING);
    let weak = Rc::downgrade(calculator);
    let found = Closure::once_into_js(move |position: JsValue| {
        let Some(calculator) = weak.upgrade() else {
            return;
        };
        let coords = get(&position, "coords");
        let degrees = |key: &str| get(coords.as_ref()?, key)?.as_f64();
        calculator.speak(|| match (degrees("latitude"), degrees("longitude")) {
            (Some(lat), Some(lon)) => {
                let text = |value: f64| calc_view::measure::plain(value, 2);
                calculator.fill(&[
                    ("place.latitude", text(lat)),
                    ("place.longitude", text(lon)),
                ]);
                tell(&calculator, &m::DEVICE_POSITION_FILLED);
            }
            _ => tell(&calculator, &m::DEVICE_NO_POSITION),
        });
    });
    let weak = Rc::downgrade(calculator);
    let refused = Closure::once_into_js(move |error: JsValue| {
        let Some(calculator) = weak.upgrade() else {
            return;
        };
        let denied = get(&error, "code").and_then(|code| code.as_f64()) == Some(1.0);
        let words = if denied {
            m::DEVICE_DENIED
        } else {
            m::DEVICE_NO_POSITION
        };
        calculator.speak(|| tell(&calculator, &words));
    });
    let options = Object::new();
    let _ = Reflect::set(&options, &"timeout".into(), &LOOK_MS.into());
    let _ = Reflect::set(&options, &"maximumAge".into(), &OLD_MS.into());
    let asked = get(&geolocation, "getCurrentPosition")
        .and_then(|ask| ask.dyn_into::<Function>().ok())
        .and_then(|ask| ask.call3(&geolocation, &found, &refused, &options).ok());
    if asked.is_none() {
        tell(calculator, &m::DEVICE_NO_POSITION);
    }
}

fn tell(calculator: &Calculator, words: &str) {
    if let Some(line) = dom::by_id(&calculator.root, POSITION_ID) {
        line.set_text_content(Some(words));
        dom::show(&line, true);
    }
}

/// Puts the text of the file that was chosen, or dropped, into its fields: the table of this spring, or timed trees.
pub(crate) fn file(calculator: &Rc<Calculator>, chosen: &Element, spring: bool) {
    let line = if spring { "spring-a" } else { TIMED_LINE };
    let Some(file) = get(chosen, "files").and_then(|files| get(&files, "0")) else {
        return;
    };
    let size = get(&file, "size").and_then(|size| size.as_f64());
    if size.is_none_or(|size| size > MOST_BYTES) {
        note(calculator, line, &m::DEVICE_FILE_LONG);
        return;
    }
    let text = call(&file, "text").and_then(|text| text.dyn_into::<Promise>().ok());
    let weak = Rc::downgrade(calculator);
    let read = Closure::once_into_js(move |text: JsValue| {
        if let (Some(calculator), Some(text)) = (weak.upgrade(), text.as_string()) {
            calculator.speak(|| {
                if spring {
                    calculator.fill(&[("spring", text)]);
                    return;
                }
                match timed_from(&text) {
                    Some(fields) => {
                        calculator.fill(&fields);
                        calculator.say(&m::DEVICE_TIMED_OPENED);
                    }
                    None => note(&calculator, line, &m::DEVICE_TIMED_OTHER),
                }
            });
        }
    });
    let weak = Rc::downgrade(calculator);
    let unread = Closure::once_into_js(move |_: JsValue| {
        if let Some(calculator) = weak.upgrade() {
            calculator.speak(|| note(&calculator, line, &m::DEVICE_FILE_UNREAD));
        }
    });
    let then = text
        .as_ref()
        .and_then(|text| get(text, "then")?.dyn_into::<Function>().ok());
    if let (Some(text), Some(then)) = (text, then) {
        let _ = then.call2(&text, &read, &unread);
    }
}

/// Says it, and writes it at the field until what is typed there is followed again.
pub(crate) fn note(calculator: &Calculator, line: &str, words: &str) {
    calculator.say(words);
    if let Some(line) = dom::by_id(&calculator.root, line) {
        line.set_text_content(Some(words));
        dom::show(&line, true);
    }
}

/// Today where the reader is.
pub(crate) fn today() -> NaiveDate {
    let now = Date::new_0();
    let day = NaiveDate::from_ymd_opt(
        now.get_full_year() as i32,
        now.get_month() + 1,
        now.get_date(),
    );
    day.unwrap_or_default()
}
