//! What the device is asked for, each only when its reader says so: where it is, a file, a place to put one.

use crate::dom::{self, call, get};
use crate::plan::Plan;
use calc_view::form::{POSITION_ID, TIMED_LINE, timed_from};
use calc_view::{ics, words};
use js_sys::{Array, Date, Function, Object, Promise, Reflect};
use std::rc::Rc;
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{Element, HtmlElement};

/// How long the device may look for its position, and how old one may be: milliseconds.
const LOOK_MS: u32 = 20_000;
const OLD_MS: u32 = 600_000;
/// A spring of daily temperatures has far fewer bytes; a longer file is another one.
const MOST_BYTES: f64 = 200_000.0;

const LOOKING: &str = "Looking for the position …";
const FILLED: &str = "Filled in below, to about 1 km. It can be changed there.";
const DENIED: &str = "The browser may not tell the position. Allow it for this page, or type a town, or latitude and longitude.";
const NO_POSITION: &str = "No position could be had here. Type a town, or latitude and longitude.";
const FILE_LONG: &str = "That file is too long to be the one asked for. Pick another.";
const FILE_UNREAD: &str =
    "That file could not be read. Open it yourself, and type or paste what is in it.";

fn geolocation() -> Option<JsValue> {
    get(&navigator()?, "geolocation")
}

/// The browser, as it tells of itself.
pub fn navigator() -> Option<JsValue> {
    get(web_sys::window()?.as_ref(), "navigator")
}

/// Whether the device can be asked where it is.
pub fn has_position() -> bool {
    geolocation().is_some()
}

/// Asks the device where it is, and fills that in to 0.01°, which is finer than any climate table.
pub fn position(plan: &Rc<Plan>) {
    let Some(geolocation) = geolocation() else {
        tell(plan, NO_POSITION);
        return;
    };
    tell(plan, LOOKING);
    let weak = Rc::downgrade(plan);
    let found = Closure::once_into_js(move |position: JsValue| {
        let Some(plan) = weak.upgrade() else { return };
        let coords = get(&position, "coords");
        let degrees = |key: &str| get(coords.as_ref()?, key)?.as_f64();
        match (degrees("latitude"), degrees("longitude")) {
            (Some(lat), Some(lon)) => {
                let text = |value: f64| calc_view::measure::plain(value, 2);
                plan.fill(&[
                    ("place.latitude", text(lat)),
                    ("place.longitude", text(lon)),
                ]);
                tell(&plan, FILLED);
            }
            _ => tell(&plan, NO_POSITION),
        }
    });
    let weak = Rc::downgrade(plan);
    let refused = Closure::once_into_js(move |error: JsValue| {
        let Some(plan) = weak.upgrade() else { return };
        let denied = get(&error, "code").and_then(|code| code.as_f64()) == Some(1.0);
        tell(&plan, if denied { DENIED } else { NO_POSITION });
    });
    let options = Object::new();
    let _ = Reflect::set(&options, &"timeout".into(), &LOOK_MS.into());
    let _ = Reflect::set(&options, &"maximumAge".into(), &OLD_MS.into());
    let asked = get(&geolocation, "getCurrentPosition")
        .and_then(|ask| ask.dyn_into::<Function>().ok())
        .and_then(|ask| ask.call3(&geolocation, &found, &refused, &options).ok());
    if asked.is_none() {
        tell(plan, NO_POSITION);
    }
}

fn tell(plan: &Plan, words: &str) {
    if let Some(line) = dom::by_id(&plan.root, POSITION_ID) {
        line.set_text_content(Some(words));
        dom::show(&line, true);
    }
}

/// The timed trees as a file.
pub fn save_timed(plan: &Plan) {
    let text = plan.timed_file();
    let words = if text.is_empty() {
        words::device::TIMED_NONE
    } else if give(plan, &text, "text/csv", "slipbark-timed-trees.csv").is_some() {
        words::device::TIMED_SAVED
    } else {
        words::device::TIMED_REFUSED
    };
    note(plan, TIMED_LINE, words);
}

/// Puts the text of the file that was chosen, or dropped, into its fields: the table of this spring, or timed trees.
pub fn file(plan: &Rc<Plan>, chosen: &Element, spring: bool) {
    let line = if spring { "spring-a" } else { TIMED_LINE };
    let Some(file) = get(chosen, "files").and_then(|files| get(&files, "0")) else {
        return;
    };
    let size = get(&file, "size").and_then(|size| size.as_f64());
    if size.is_none_or(|size| size > MOST_BYTES) {
        note(plan, line, FILE_LONG);
        return;
    }
    let text = call(&file, "text").and_then(|text| text.dyn_into::<Promise>().ok());
    let weak = Rc::downgrade(plan);
    let read = Closure::once_into_js(move |text: JsValue| {
        if let (Some(plan), Some(text)) = (weak.upgrade(), text.as_string()) {
            if spring {
                plan.fill(&[("spring", text)]);
                return;
            }
            match timed_from(&text) {
                Some(fields) => {
                    plan.fill(&fields);
                    plan.say(words::device::TIMED_OPENED);
                }
                None => note(&plan, line, words::device::TIMED_OTHER),
            }
        }
    });
    let weak = Rc::downgrade(plan);
    let unread = Closure::once_into_js(move |_: JsValue| {
        if let Some(plan) = weak.upgrade() {
            note(&plan, line, FILE_UNREAD);
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
pub fn note(plan: &Plan, line: &str, words: &str) {
    plan.say(words);
    if let Some(line) = dom::by_id(&plan.root, line) {
        line.set_text_content(Some(words));
        dom::show(&line, true);
    }
}

/// The visits as the text of a calendar file; none without an answer.
pub fn calendar_text(plan: &Plan) -> Option<String> {
    let stamp: String = String::from(Date::new_0().to_iso_string())
        .chars()
        .filter(|c| !matches!(c, '-' | ':'))
        .collect();
    // As the standard writes a moment: 20270612T080000Z, without the thousandths.
    let stamp = [stamp.split('.').next().unwrap_or_default(), "Z"].concat();
    plan.with_last(|question, answer| {
        let about = words::visits::calendar_title(question, answer);
        (!answer.visits.is_empty()).then(|| {
            ics::visits(answer, &stamp, &about, &|at| {
                let visit = answer.visits.get(at);
                visit.map_or_else(String::new, |visit| {
                    words::visits::visit(visit.kind, answer.headline_method).to_owned()
                })
            })
        })
    })?
}

/// The visits as a calendar file, put where the browser puts what is downloaded.
pub fn calendar(plan: &Rc<Plan>) {
    let given = calendar_text(plan)
        .and_then(|text| give(plan, &text, "text/calendar", "slipbark-visits.ics"));
    plan.say(if given.is_some() {
        "The visits are in a calendar file."
    } else {
        "This page lets nothing be saved. Copy the answer as text instead."
    });
}

/// Lets the browser download a text, unless the host takes it: it hears of the file first.
fn give(plan: &Plan, text: &str, kind_of: &str, name: &str) -> Option<()> {
    if plan.takes_file(kind_of, name, text) {
        return Some(());
    }
    let window = web_sys::window()?;
    let kind = Object::new();
    Reflect::set(&kind, &"type".into(), &kind_of.into()).ok()?;
    let class: Function = get(&window, "Blob")?.dyn_into().ok()?;
    let parts = Array::of2(&Array::of1(&text.into()), &kind);
    let blob = Reflect::construct(&class, &parts).ok()?;
    let urls = get(&window, "URL")?;
    let make: Function = get(&urls, "createObjectURL")?.dyn_into().ok()?;
    let address = make.call1(&urls, &blob).ok()?.as_string()?;
    let link = plan.document.create_element("a").ok()?;
    link.set_attribute("href", &address).ok()?;
    link.set_attribute("download", name).ok()?;
    link.toggle_attribute("hidden").ok()?;
    plan.body.append_child(&link).ok()?;
    link.dyn_ref::<HtmlElement>()?.click();
    link.remove();
    // The download has its own hold on the bytes only once it has begun.
    let drop = Closure::once_into_js(move || {
        if let Some(revoke) =
            get(&urls, "revokeObjectURL").and_then(|revoke| revoke.dyn_into::<Function>().ok())
        {
            let _ = revoke.call1(&urls, &address.into());
        }
    });
    let _ =
        window.set_timeout_with_callback_and_timeout_and_arguments_0(drop.unchecked_ref(), 10_000);
    Some(())
}
