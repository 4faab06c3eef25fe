//! What each page may load and run (Content Security Policy, level 3): told in the page itself, and by servers.

use crate::build::assets::File;
use crate::build::head_scripts::AHEAD;
use crate::build::{addresses, languages};
use calc_view::kind::Kind;
use std::sync::LazyLock;

/// The policy of our own pages: nothing but our own files, the script that asks for the module, and WebAssembly.
pub(crate) static POLICY: LazyLock<String> = LazyLock::new(|| reading_from("'self'"));

/// That of the bare page for frames: it reads settings from the address that its host names, and nothing else from there.
pub(crate) static FRAME_POLICY: LazyLock<String> =
    LazyLock::new(|| reading_from("'self' http: https:"));

/// The policy of a page whose scripts may fetch from `places`.
fn reading_from(places: &str) -> String {
    let ahead = File::named("", AHEAD.as_str()).integrity();
    format!(
        "default-src 'none'; script-src 'self' '{ahead}' 'wasm-unsafe-eval'; style-src 'self'; img-src 'self'; \
         connect-src {places}; manifest-src 'self'; worker-src 'self'; base-uri 'none'; form-action 'self'"
    )
}

/// The page for what is not there, at the root of the site.
pub(crate) const NOWHERE: &str = "404.html";

/// That of this page: in the kit it runs one script that stands inside it, and names the site as its base.
pub(crate) static NOWHERE_POLICY: LazyLock<String> = LazyLock::new(|| {
    let script = File::named("", addresses::FIND_SITE).integrity();
    POLICY
        .replace("script-src", &format!("script-src '{script}'"))
        .replace("base-uri 'none'", "base-uri 'self'")
});

/// The folders of the bare pages for frames, as a pattern.
pub(crate) fn frames() -> String {
    let folders: Vec<String> = languages::all().skip(1).map(languages::folder).collect();
    let names = Kind::ALL.map(Kind::name).join("|");
    format!("({})?embed/({names})/", folders.join("|"))
}

/// The policy of the page at `path`.
pub(crate) fn policy(path: &str) -> &'static str {
    let folder = languages::of(path)
        .1
        .strip_prefix("embed/")
        .and_then(|rest| rest.strip_suffix("/index.html"));
    if Kind::ALL.iter().any(|kind| folder == Some(kind.name())) {
        &FRAME_POLICY
    } else if path == NOWHERE {
        &NOWHERE_POLICY
    } else {
        &POLICY
    }
}
