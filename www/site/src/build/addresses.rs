//! Where the pages find the site's files: under a path that is known when they are built, or, in the kit, from where each
//! page itself lies, so that it works in any folder of any server.

use crate::build::assets::File;
use crate::build::policy::{NOWHERE, NOWHERE_POLICY, POLICY};

/// Stands in pages for the path of the site until that is known.
pub(crate) const MARK: &str = "/@@base@@/";
/// Stands in front of that where programs want a whole address; a build that is told no origin leaves it out.
pub(crate) const ORIGIN: &str = "@@origin@@";

/// Finds the site from wherever the kit's page for what is not there is shown; the policy of that page names its digest.
pub(crate) const FIND_SITE: &str = include_str!("../../../pages/js/find-site.js");

/// What stands in front of an address that a page shows to people: its script puts the origin there.
const SHOWN: &str = "data-origin></span>";

/// The files of a site that will live under `base` of an origin, if that is known.
pub(crate) fn under(origin: &str, base: &str, files: &[File]) -> Vec<File> {
    let put = |_: &File, text: &str| text.replace(ORIGIN, origin).replace(MARK, base);
    all(files, put)
}

/// The files of a site that may live anywhere: a page names what it needs by steps upwards from itself.
pub(crate) fn relative(files: &[File]) -> Vec<File> {
    let put = |file: &File, text: &str| {
        let up = match file.path.matches('/').count() {
            0 => "./".to_owned(),
            depth => "../".repeat(depth),
        };
        // What is shown is a whole address, which the page's script makes of the steps.
        let shown = format!("data-origin=\"{up}\"></span>");
        let text = match &*file.path {
            NOWHERE => found_from_anywhere(text),
            _ => text.to_owned(),
        };
        text.replace(&format!("{SHOWN}{MARK}"), &shown)
            .replace(ORIGIN, "")
            .replace(MARK, &up)
    };
    all(files, put)
}

/// The page for what is not there, which is shown at other addresses than its own.
fn found_from_anywhere(page: &str) -> String {
    let script = format!("<script>{FIND_SITE}</script>\n<title>");
    page.replace(POLICY.as_str(), &NOWHERE_POLICY)
        .replacen("<title>", &script, 1)
}

fn all(files: &[File], put: impl Fn(&File, &str) -> String) -> Vec<File> {
    let placed = |file: &File| match std::str::from_utf8(&file.bytes) {
        Ok(text) if text.contains(MARK) => File::named(&file.path, put(file, text)),
        _ => file.clone(),
    };
    files.iter().map(placed).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_page_for_what_is_not_there_may_run_what_finds_the_site() {
        let text = format!(
            "<meta content=\"{}\"><title>x</title><a href=\"{MARK}\">",
            *POLICY
        );
        let files = [File::named(NOWHERE, text), File::named("index.html", MARK)];
        let found = relative(&files);
        let text = std::str::from_utf8(&found[0].bytes).unwrap();
        let script = text.split_once("<script>").unwrap().1;
        let script = script.split_once("</script>").unwrap().0;
        let digest = File::named("", script).integrity();
        assert!(text.contains(&format!("'{digest}'")), "{text}");
        assert!(text.contains("base-uri 'self'") && !text.contains(POLICY.as_str()));
        assert_eq!(found[1].bytes, b"./");
    }

    #[test]
    fn a_page_finds_the_site_from_a_path_or_from_itself() {
        let page = |path: &str| {
            let text = format!(
                "<a href=\"{MARK}\">x</a> <link href=\"{MARK}assets/a.css\"> <span {SHOWN}{MARK}es/"
            );
            File::named(path, text)
        };
        let files = [
            page("index.html"),
            page("es/sources/index.html"),
            File::named("a.wasm", [0xff, 0]),
        ];
        let text = |file: &File| String::from_utf8(file.bytes.clone()).unwrap();
        let under = under("", "/t/", &files);
        assert!(
            text(&under[1]).starts_with("<a href=\"/t/\">")
                && text(&under[1]).ends_with("></span>/t/es/")
        );
        let relative = relative(&files);
        assert!(
            text(&relative[0]).starts_with("<a href=\"./\">x</a> <link href=\"./assets/a.css\">")
        );
        assert!(
            text(&relative[1])
                .starts_with("<a href=\"../../\">x</a> <link href=\"../../assets/a.css\">")
        );
        assert!(text(&relative[1]).ends_with("data-origin=\"../../\"></span>es/"));
        assert_eq!(relative[2].bytes, [0xff, 0]);
    }
}
