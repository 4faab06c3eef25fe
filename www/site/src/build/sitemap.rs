//! What programs that look through sites read first: that they may, and which pages there are in which language.

use crate::build::assets::File;
use crate::build::languages;
use std::fmt::Write as _;

/// The file that says who may look through the site (RFC 9309).
const ROBOTS: &str = "robots.txt";
/// The list of pages.
const SITEMAP: &str = "sitemap.xml";

/// Everybody may; and where the list of pages is, if the origin is known: it holds whole addresses.
pub(crate) fn robots(origin: &str, base: &str) -> File {
    let mut text = String::from(
        "# Read at the top of an address only: a site in a folder has this in the one file there.\n\
         User-agent: *\nAllow: /\n",
    );
    if !origin.is_empty() {
        let _ = writeln!(text, "Sitemap: {origin}{base}{SITEMAP}");
    }
    File::named(ROBOTS, text)
}

/// The list of all pages among the files of a site, each with itself in every language (sitemaps.org, 0.9; `hreflang` as
/// search engines document it). Pages that are bare, for frames, tell no address of their own and are not listed.
pub(crate) fn make(origin: &str, base: &str, files: &[File]) -> File {
    let mut out = String::from(
        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n\
         <urlset xmlns=\"http://www.sitemaps.org/schemas/sitemap/0.9\" xmlns:xhtml=\"http://www.w3.org/1999/xhtml\">\n",
    );
    let address = |language: &str, folder: &str| {
        format!("{origin}{base}{}{folder}", languages::folder(language))
    };
    let is_listed = |file: &&File| {
        let mark = b"rel=\"canonical\"";
        file.path.ends_with(".html") && file.bytes.windows(mark.len()).any(|it| it == mark)
    };
    let mut folders: Vec<&str> = files
        .iter()
        .filter(is_listed)
        .filter(|file| languages::of(&file.path).0 == languages::FIRST)
        .map(File::address)
        .collect();
    folders.sort_unstable();
    for folder in folders {
        for language in languages::all() {
            let _ = writeln!(out, "<url><loc>{}</loc>", address(language, folder));
            for other in languages::all() {
                let _ = writeln!(
                    out,
                    "<xhtml:link rel=\"alternate\" hreflang=\"{other}\" href=\"{}\"/>",
                    address(other, folder)
                );
            }
            out.push_str("</url>\n");
        }
    }
    out.push_str("</urlset>\n");
    File::named(SITEMAP, out)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_page_stands_in_the_list_in_every_language() {
        let text = |file: File| String::from_utf8(file.bytes).unwrap();
        let page = |path: &str| File::named(path, "<link rel=\"canonical\" href=\"/x/\">");
        let files = [
            page("index.html"),
            page("es/index.html"),
            page("species/index.html"),
            page("es/species/index.html"),
            File::named("embed/ring/index.html", "bare"),
        ];
        let list = text(make("https://example.org", "/t/", &files));
        for address in ["/t/", "/t/es/", "/t/species/", "/t/es/species/"] {
            assert!(
                list.contains(&format!("<loc>https://example.org{address}</loc>")),
                "{list}"
            );
        }
        let spanish = "hreflang=\"es\" href=\"https://example.org/t/es/species/\"/>";
        assert_eq!(list.matches(spanish).count(), 2, "{list}");
        assert!(!list.contains("embed"), "{list}");
        assert!(
            text(robots("https://example.org", "/t/"))
                .ends_with("Sitemap: https://example.org/t/sitemap.xml\n")
        );
        assert!(!text(robots("", "/")).contains("Sitemap"));
    }
}
