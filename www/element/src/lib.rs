//! The WebAssembly module: the custom element and the JavaScript call.

use wasm_bindgen::prelude::wasm_bindgen;

/// The version of the calculator.
#[wasm_bindgen]
pub fn version() -> String {
    env!("CARGO_PKG_VERSION").to_owned()
}

/// Puts the calculator into its host element.
#[wasm_bindgen]
pub fn connect(_host: &web_sys::HtmlElement) {}

/// Takes the calculator out of its host element.
#[wasm_bindgen]
pub fn disconnect(_host: &web_sys::HtmlElement) {}

/// Tells that an attribute of the host element has changed.
#[wasm_bindgen]
pub fn attribute_changed(
    _host: &web_sys::HtmlElement,
    _name: &str,
    _before: Option<String>,
    _after: Option<String>,
) {
}
