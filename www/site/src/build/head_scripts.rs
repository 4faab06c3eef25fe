//! What stands in the head of a page with a calculator in it, to load it.

use crate::build::assets::tidy;
use std::sync::LazyLock;

/// Asks for the module over a slow line: the one script that stands inside our pages, so that nothing is fetched before it.
pub(crate) static AHEAD: LazyLock<String> =
    LazyLock::new(|| tidy(include_str!("../../../pages/js/ahead.js")));

/// What asks for the module at `module` over a slow line. It stands in front of the style sheets: behind them it would wait
/// for them.
pub(crate) fn asks_ahead(module: &str) -> String {
    format!("<script data-module=\"{module}\">{}</script>\n", *AHEAD)
}

/// What a page with the calculator in it loads behind the links by which the browser asks for all scripts of it at once,
/// which stand before any script that holds the page up.
pub(crate) fn element_script(element: &str) -> String {
    format!("<script type=\"module\" src=\"{element}\"></script>\n")
}
