//! The self-host kit: one zip with the built site, its checksums, the licences,
//! and ready files that tell common servers which headers to send.

use crate::build::assets::{File, hex};
use crate::build::{headers, single};
use anyhow::{Context, Result};
use sha2::{Digest as _, Sha256};
use std::fmt::Write as _;
use std::io::{Cursor, Write as _};
use std::path::Path;
use zip::write::SimpleFileOptions;

/// Its name at the root of the site.
pub(crate) const NAME: &str = "slipbark-kit.zip";

/// Files that go in as they lie in the project, with their names in the kit.
const LICENCES: [(&str, &str); 5] = [
    ("LICENSE-MIT", "LICENSE-MIT"),
    ("LICENSE-APACHE", "LICENSE-APACHE"),
    ("content/README.md", "data/README.md"),
    ("content/places/README.md", "data/places/README.md"),
    ("content/places/PROVENANCE.md", "data/places/PROVENANCE.md"),
];

/// Makes the kit of a site that was built for `base`. The same files give the
/// same bytes: entries are sorted and carry no time.
///
/// # Errors
/// A licence that can't be read, named with its path.
pub(crate) fn pack(root: &Path, base: &str, files: &[File]) -> Result<File> {
    let mut entries: Vec<(String, Vec<u8>)> = files
        .iter()
        .map(|file| (format!("site/{}", file.path), file.bytes.clone()))
        .collect();
    for (from, name) in LICENCES {
        let bytes = std::fs::read(root.join(from))
            .with_context(|| format!("{from} could not be read: the kit carries it"))?;
        entries.push((name.to_owned(), bytes));
    }
    for (name, text) in [
        ("site/_headers", headers::underscore(base, files)),
        ("site/.htaccess", headers::htaccess(base)),
        ("nginx.conf", headers::nginx(base)),
        ("README.txt", readme(base)),
    ] {
        entries.push((name.to_owned(), text.into_bytes()));
    }
    entries.sort();
    let mut sums = String::new();
    for (name, bytes) in &entries {
        let _ = writeln!(sums, "{}  {name}", hex(&Sha256::digest(bytes)));
    }
    entries.push(("SHA256SUMS".to_owned(), sums.into_bytes()));

    let mut zip = zip::ZipWriter::new(Cursor::new(Vec::new()));
    let options = SimpleFileOptions::default()
        .compression_method(zip::CompressionMethod::Deflated)
        .compression_level(Some(9))
        .last_modified_time(zip::DateTime::default())
        .unix_permissions(0o644);
    for (name, bytes) in &entries {
        zip.start_file(name.as_str(), options)?;
        zip.write_all(bytes)?;
    }
    Ok(File::named(NAME, zip.finish()?.into_inner()))
}

fn readme(base: &str) -> String {
    format!(
        "Slipbark {version}: a kit to serve it from your own site\n\
         \n\
         1. Check the files:  sha256sum -c SHA256SUMS\n\
         2. Put everything inside the folder site/ on a host for static files, so that\n\
         \x20  site/index.html answers at {base} of your address. The addresses in the pages are\n\
         \x20  for that path; another path needs a kit that was built for it.\n\
         3. Let the host send the right headers. site/_headers and site/.htaccess are read by\n\
         \x20  the hosts that know them; nginx.conf is for your own server.\n\
         4. Put slipbark-kit.zip itself beside index.html, if people are to find it on the page\n\
         \x20  \"Put it on your site\".\n\
         \n\
         The headers, for any other host:\n\
         - assets/* and {version}/*: Cache-Control: public, max-age=31536000, immutable (a change\n\
         \x20 gives them other names)\n\
         - all else: Cache-Control: no-cache (also sw.js and v1/*, or an update would not arrive)\n\
         - everything but .html: Access-Control-Allow-Origin: *, or other origins can't embed it\n\
         - .wasm: Content-Type: application/wasm\n\
         - text, .wasm, .bin: packed by brotli or gzip as they are sent, if the host can; with\n\
         \x20 `slipbark build` from the project each has a packed one (.br, .gz) beside it\n\
         - .html: the Content-Security-Policy that stands in _headers. Each page states it too,\n\
         \x20 so a host that can't send it loses nothing else. {single} has its own.\n\
         \n\
         On other pages: <script src=\".../v1/embed.js\" defer></script> and one of the elements\n\
         slipbark-tree-plan, -year, -ring, -reach, -effort, -checks; in a frame: embed/NAME/.\n\
         \n\
         v1/ follows the newest version. {version}/ never changes; v1/integrity.json lists the digests\n\
         of its files, for the integrity attribute of a script.\n\
         \n\
         https is needed for use with no signal: browsers run service workers only there, and\n\
         on the machine itself.\n\
         \n\
         Nothing here computes on a server, sets a cookie or asks another host for anything.\n\
         \n\
         Licences: the code under MIT or Apache-2.0, as you choose (LICENSE-MIT, LICENSE-APACHE);\n\
         the data as data/README.md and data/places/ say: the climate table is CC BY-SA 4.0, the\n\
         town names CC BY 4.0. Keep those files with the kit.\n",
        version = env!("CARGO_PKG_VERSION"),
        single = single::NAME,
    )
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::io::Read as _;

    fn kit() -> File {
        let root = Path::new(env!("CARGO_MANIFEST_DIR")).ancestors().nth(2);
        let files = [
            File::named("index.html", "page"),
            File::named("assets/engine.0.wasm", [0, 97, 115, 109]),
        ];
        pack(root.unwrap(), "/trees/", &files).unwrap()
    }

    #[test]
    fn the_same_site_gives_the_same_kit() {
        assert_eq!(kit().bytes, kit().bytes);
    }

    #[test]
    fn every_file_of_the_kit_has_its_sum() {
        let mut zip = zip::ZipArchive::new(Cursor::new(kit().bytes)).unwrap();
        let mut sums = String::new();
        let mut listed = zip.by_name("SHA256SUMS").unwrap();
        listed.read_to_string(&mut sums).unwrap();
        drop(listed);
        assert_eq!(sums.lines().count() + 1, zip.len());
        for line in sums.lines() {
            let (sum, name) = line.split_once("  ").unwrap();
            let mut bytes = Vec::new();
            zip.by_name(name).unwrap().read_to_end(&mut bytes).unwrap();
            assert_eq!(hex(&Sha256::digest(&bytes)), sum, "{name}");
        }
        for name in ["LICENSE-MIT", "site/.htaccess", "data/places/PROVENANCE.md"] {
            assert!(sums.contains(&format!("  {name}\n")), "{name}:\n{sums}");
        }
    }
}
