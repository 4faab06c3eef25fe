//! The module's exports, called in a browser as JavaScript calls them.

use wasm_bindgen_test::{wasm_bindgen_test, wasm_bindgen_test_configure};

wasm_bindgen_test_configure!(run_in_browser);

#[wasm_bindgen_test]
fn it_tells_the_version_of_this_workspace() {
    assert_eq!(www_element::calls::version(), env!("CARGO_PKG_VERSION"));
}
