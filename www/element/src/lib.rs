//! The WebAssembly module: the calculator's custom element, and the call for programs.
//!
//! The page's script defines the class; each callback of it comes here with the host element. What only a page that
//! hosts the element can use stands in `host`.

mod climate;
mod device;
mod dom;
mod fields;
mod host;
mod marks;
mod paper;
mod plan;
mod plans;
mod region;
mod today;

pub use host::calls::*;

use wasm_bindgen::prelude::wasm_bindgen;
use web_sys::HtmlElement;

/// The version of the calculator.
#[wasm_bindgen]
#[must_use]
pub fn version() -> String {
    env!("CARGO_PKG_VERSION").to_owned()
}

/// The version of the tables behind it.
#[wasm_bindgen(js_name = dataVersion)]
#[must_use]
pub fn data_version() -> String {
    calc_data::reference().data_version.to_owned()
}

/// Tells what to call when a question names a point and the climate places are not here yet.
#[wasm_bindgen]
pub fn when_climate_is_wanted(call: js_sys::Function) {
    climate::when_wanted(call);
}

/// Takes the packed climate places; answers that are shown follow. False if the bytes are no such table.
#[wasm_bindgen]
#[must_use]
pub fn take_climate(bytes: &[u8]) -> bool {
    climate::take(bytes)
}

/// Puts the calculator into its host element. Once is enough; more does no harm.
#[wasm_bindgen]
pub fn connect(host: &HtmlElement) {
    plans::connect(host);
}
