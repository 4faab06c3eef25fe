//! The climate places. They are a file of their own, which the page fetches once a question names a
//! point; until it is here, answers say that the table is missing.

use crate::plan::Plan;
use crate::plans;
use calc::models::season::Local;
use calc::question::Question;
use calc::terms::place::Place;
use calc::timing::places::climate;
use calc::timing::places::climate::Places;
use js_sys::{Date, Function};
use std::cell::{Cell, RefCell};
use wasm_bindgen::JsValue;

/// A file of places that could not be had is asked for again by the next key, but not sooner than this.
pub const AGAIN_MS: f64 = 5000.0;

thread_local! {
    static PLACES: RefCell<Places> = const { RefCell::new(Places { stations: Vec::new(), names: Vec::new() }) };
    static WANTED: RefCell<Option<Function>> = const { RefCell::new(None) };
    static ASKED: Cell<f64> = const { Cell::new(0.0) };
}

/// Keeps what to call when the table is wanted; while it can't be had, again and again.
pub fn when_wanted(call: Function) {
    WANTED.with(|wanted| *wanted.borrow_mut() = Some(call));
}

/// Takes the packed table, and lets every answer that waits for it be worked out again. False where
/// the bytes are not such a table.
pub fn take(bytes: &[u8]) -> bool {
    let Ok(places) = climate::decode(bytes) else {
        return false;
    };
    PLACES.with(|kept| *kept.borrow_mut() = places);
    plans::each(Plan::refresh);
    true
}

/// Looks at the table; it is empty until it is here.
pub fn with_places<T>(look: impl FnOnce(&Places) -> T) -> T {
    PLACES.with(|places| look(&places.borrow()))
}

/// What is known of a question's place. Asks for the table where a point is named and it is not here.
pub fn local(question: &Question) -> Local {
    let constants = calc_data::reference().constants;
    let local = with_places(|places| Local::of(constants, question, &places.stations));
    if local.table_missing && matches!(question.place, Place::Point { .. }) {
        let call = WANTED.with(|wanted| wanted.borrow().clone());
        let now = Date::now();
        if let Some(call) = call
            && now - ASKED.with(Cell::get) >= AGAIN_MS
        {
            ASKED.with(|asked| asked.set(now));
            let _ = call.call0(&JsValue::UNDEFINED);
        }
    }
    local
}
