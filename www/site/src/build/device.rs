//! What a device keeps for no signal: the service worker with the list of the files that it keeps, and the list of the pages
//! that it keeps once they were read.

use crate::build::assets::{File, digest, script};
use crate::build::{articles, gallery, key, languages, read, species_pages};
use anyhow::{Context as _, Result};
use serde_json::{Value, json};
use std::path::Path;

/// Where the list of pages lies that are kept once they were read.
const ONCE_READ: &str = "once-read.json";

/// Whether a page is kept on a device only once it was read: one of many of its kind.
pub(crate) fn is_read_first(path: &str) -> bool {
    species_pages::is_one(path)
        || key::is_one(path)
        || articles::is_one(path)
        || gallery::is_one(path)
}

/// The service worker, and the list that it reads: of each page that is kept once it was read its address, digest, bytes
/// and title. The worker holds the list of all other files, each with its digest, and with its language where it is of use
/// in one alone; the list of pages is one of them, so that no page of another version is kept.
/// The cache's name is the digest of all paths and bytes, and of the worker's own code: a changed
/// worker must not install into the cache that the one before still serves.
///
/// # Errors
/// A worker that can't be read or lacks the place of a list, and a page without a title.
pub(crate) fn files(scripts: &Path, files: &[File]) -> Result<[File; 2]> {
    let path = scripts.join("sw.js");
    let code = read(&path)?;
    let all = files
        .iter()
        .map(|file| (file.path.as_str(), file.bytes.as_slice()));
    let version = digest(all.chain([("sw.js", code.as_slice())]));
    let (once, always): (Vec<&File>, Vec<&File>) =
        files.iter().partition(|file| is_read_first(&file.path));
    let once = once
        .into_iter()
        .map(listed)
        .collect::<Result<Vec<Value>>>()?;
    let once = File::named(ONCE_READ, serde_json::to_string(&once)?);
    let always: Vec<_> = always
        .into_iter()
        .chain([&once])
        .map(|file| {
            let mut entry = vec![file.address().to_owned(), file.integrity()];
            entry.extend(languages::only_in(&file.path).map(str::to_owned));
            entry
        })
        .collect();
    let text = script(
        &path,
        &[
            ("\"@@version@@\"", &format!("\"{}\"", &version[..16])),
            ("[\"@@files@@\"]", &serde_json::to_string(&always)?),
            ("\"@@once@@\"", &format!("\"{ONCE_READ}\"")),
        ],
    )?;
    Ok([File::named("sw.js", text), once])
}

/// What the list says of a page.
fn listed(file: &File) -> Result<Value> {
    let text = std::str::from_utf8(&file.bytes)?;
    let title = text
        .split_once("<meta property=\"og:title\" content=\"")
        .and_then(|(_, rest)| rest.split_once('"'))
        .with_context(|| format!("{}: a page has a title", file.path))?
        .0;
    Ok(json!([
        file.address(),
        file.integrity(),
        file.bytes.len(),
        plain(title)
    ]))
}

/// A text of a page without its entities.
fn plain(text: &str) -> String {
    let signs = [("&lt;", "<"), ("&gt;", ">"), ("&quot;", "\"")];
    let text = signs.iter().fold(text.to_owned(), |text, (entity, sign)| {
        text.replace(entity, sign)
    });
    text.replace("&amp;", "&")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn pages_that_are_many_of_a_kind_stand_in_the_list_and_all_else_in_the_worker() {
        let page = |path: &str| {
            let title = "<meta property=\"og:title\" content=\"A &amp; B\">";
            File::named(path, title)
        };
        let all = [
            page("index.html"),
            page("species/index.html"),
            page("species/box-elder/index.html"),
            page("es/articles/x/index.html"),
            page("es/paper/card/index.html"),
        ];
        let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("../pages/js");
        let [worker, once] = files(&root, &all).unwrap();
        let once: Value = serde_json::from_slice(&once.bytes).unwrap();
        let digest = page("").integrity();
        let listed = |address: &str| json!([address, digest, 46, "A & B"]);
        let wanted = ["species/box-elder/", "es/articles/x/"].map(listed);
        assert_eq!(once, json!(wanted));
        let worker = String::from_utf8(worker.bytes).unwrap();
        for (address, here) in [
            ("", true),
            ("species/", true),
            ("species/box-elder/", false),
            ("es/articles/x/", false),
            ("es/paper/card/", true),
            (ONCE_READ, true),
        ] {
            let entry = format!("[\"{address}\",\"sha256-");
            assert_eq!(worker.contains(&entry), here, "{address}");
        }
    }
}
