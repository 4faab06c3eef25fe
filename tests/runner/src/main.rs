//! Runs the tests of a WebAssembly module in a headless browser. Cargo calls
//! it for `cargo test --target wasm32-unknown-unknown`; see `.cargo/config.toml`.
//! It needs a browser and its driver on the path, such as `chromedriver`.

use std::process::ExitCode;

fn main() -> ExitCode {
    match wasm_bindgen_cli::wasm_bindgen_test_runner::run_cli_with_args(std::env::args_os()) {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => {
            eprintln!("The tests in the browser failed: {error:?}");
            ExitCode::from(1)
        }
    }
}
