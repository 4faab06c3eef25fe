//! The languages of the site: the pages of the first one lie at its base, those of each other in a folder of its name.

use crate::build::policy::NOWHERE;
use calc_view::kind::Kind;
use calc_view::words::calculators::asks;
use calc_view::words::message::{pack, take_all};
use calc_view::words::{m, within};

/// The language that the module has inside.
pub(crate) const FIRST: &str = "en";
/// The language that is made for checks of the layout: a site has it only when asked.
const STRETCHED: &str = "qps";

/// The languages beside the first one that are for people, with their words; those of a region among them, such as
/// `es-ES`, which calculators speak.
pub(crate) fn others() -> impl Iterator<Item = (&'static str, &'static str)> {
    let all = m::FILES.iter();
    let all = all.map(|(language, words, _)| (*language, *words));
    all.filter(|(language, _)| *language != STRETCHED)
}

/// What each other language that pages are in says of lists of trees.
pub(crate) fn of_lists() -> impl Iterator<Item = (&'static str, &'static str)> {
    let all = m::FILES.iter();
    let all = all.map(|(language, _, [lists, _])| (*language, *lists));
    all.filter(|(language, _)| *language != STRETCHED && !language.contains('-'))
}

/// Those that pages are in, the first one in front: a region has the pages of its language.
pub(crate) fn all() -> impl Iterator<Item = &'static str> {
    let others = others().map(|(language, _)| language);
    std::iter::once(FIRST).chain(others.filter(|language| !language.contains('-')))
}

/// Where the pages of a language lie under the base.
pub(crate) fn folder(language: &str) -> String {
    match language {
        FIRST => String::new(),
        other => format!("{other}/"),
    }
}

/// The language of the page at a path of the site, and the path without its folder.
pub(crate) fn of(path: &str) -> (&'static str, &str) {
    let other = all().skip(1).find_map(|language| {
        let rest = path.strip_prefix(language)?.strip_prefix('/')?;
        Some((language, rest))
    });
    other.unwrap_or((FIRST, path))
}

/// The language of a file that is of no use in any other: a page, or the words of one.
pub(crate) fn only_in(path: &str) -> Option<&'static str> {
    if path.ends_with(".html") && path != NOWHERE {
        return Some(of(path).0);
    }
    let words = path
        .strip_prefix("assets/words-")
        .or_else(|| path.strip_prefix("assets/lists-"))?;
    let (language, _) = words.split_once('.')?;
    let mut others = others();
    others.find_map(|(known, _)| (known == language).then_some(known))
}

/// Speaks a language of the site.
pub(crate) fn speaking<T>(language: &str, run: impl FnOnce() -> T) -> T {
    take_all();
    within(pack(language), run)
}

/// What is said in each language of the site, as a script's object.
pub(crate) fn by_language(say: impl Fn() -> serde_json::Value) -> serde_json::Value {
    all()
        .map(|language| (language.to_owned(), speaking(language, &say)))
        .collect::<serde_json::Map<_, _>>()
        .into()
}

/// What each calculator asks, by its name, in the language in use.
pub(crate) fn asked_by_kind() -> serde_json::Value {
    let all = Kind::ALL.map(|kind| (kind.name().to_owned(), asks(kind).text().into()));
    serde_json::Map::from_iter(all).into()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_path_tells_its_language() {
        assert_eq!(of("es/species/index.html"), ("es", "species/index.html"));
        assert_eq!(of("es/index.html"), ("es", "index.html"));
        assert_eq!(of("species/index.html"), ("en", "species/index.html"));
        assert_eq!(of("estimates/index.html"), ("en", "estimates/index.html"));
        assert_eq!(of("qps/index.html"), ("en", "qps/index.html"));
        assert_eq!(speaking("es", || m::SHELL_LANGUAGE.to_string()), "Español");
    }
}
