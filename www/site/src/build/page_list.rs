//! The pages that have the head and the foot: where each lies, and which file it is made from.

use calc_view::words::m;
use calc_view::words::message::Word;

/// A page: its folder under the base, and its file in `www/pages`.
pub(crate) struct Page {
    pub(crate) folder: &'static str,
    pub(crate) file: &'static str,
}

/// Every page that has the head and the foot.
pub(crate) const PAGES: &[Page] = &[
    Page {
        folder: "",
        file: "home.html",
    },
    Page {
        folder: "list/",
        file: "list.html",
    },
    Page {
        folder: "field/",
        file: "field.html",
    },
    Page {
        folder: "species/",
        file: "species.html",
    },
    Page {
        folder: "articles/",
        file: "articles.html",
    },
    Page {
        folder: "help/",
        file: "help.html",
    },
    Page {
        folder: "paper/card/",
        file: "paper-card.html",
    },
    Page {
        folder: "paper/day/",
        file: "paper-day.html",
    },
    Page {
        folder: "example/",
        file: "example.html",
    },
    Page {
        folder: "method/",
        file: "method.html",
    },
    Page {
        folder: "sources/",
        file: "sources.html",
    },
    Page {
        folder: "embed/",
        file: "embed.html",
    },
    Page {
        folder: "embed/build/",
        file: "build.html",
    },
    Page {
        folder: "offline/",
        file: "offline.html",
    },
    Page {
        folder: "changes/",
        file: "changes.html",
    },
    Page {
        folder: "notices/",
        file: "notices.html",
    },
    Page {
        folder: "accessibility/",
        file: "accessibility.html",
    },
    Page {
        folder: "privacy/",
        file: "privacy.html",
    },
];

/// The folders of the pages that have the head and the foot, under the home of a language.
pub(crate) fn folders(offline: bool) -> impl Iterator<Item = &'static str> {
    let all = PAGES.iter().map(|page| page.folder);
    all.filter(move |folder| offline || *folder != "offline/")
}

/// The pages named in the head, in order.
pub(crate) const NAV: &[(&str, Word)] = &[
    ("", m::SHELL_NAV_TREE),
    ("list/", m::TREES_NAV),
    ("species/", m::SHELL_NAV_SPECIES),
    ("articles/", m::ARTICLES_TITLE),
    ("method/", m::SHELL_NAV_METHOD),
];
