//! The self-host kit: one zip with the built site, its checksums, the licences,
//! and ready files that tell common servers which headers to send.

use crate::build::assets::{File, hex};
use crate::build::device::is_read_first;
use crate::build::{headers, hosts, notices, packed, single};
use anyhow::{Context, Result};
use sha2::{Digest as _, Sha256};
use std::fmt::Write as _;
use std::io::{Cursor, Write as _};
use std::path::Path;
use zip::CompressionMethod;
use zip::write::SimpleFileOptions;

/// Its name at the root of the site.
pub(crate) const NAME: &str = "slipbark-kit.zip";

/// Files that go in as they lie in the project, with their names in the kit.
pub(crate) const LICENCES: [(&str, &str); 5] = [
    ("LICENSE-MIT", "LICENSE-MIT"),
    ("LICENSE-APACHE", "LICENSE-APACHE"),
    ("content/README.md", "data/README.md"),
    ("content/places/README.md", "data/places/README.md"),
    ("content/places/PROVENANCE.md", "data/places/PROVENANCE.md"),
];

/// The path that its files for servers name, which is changed there in a line each.
const PATH: &str = "/";

/// The licences of the code and of the data, which each package carries.
///
/// # Errors
/// One that can't be read, named with its path.
pub(crate) fn licences(root: &Path) -> Result<Vec<File>> {
    LICENCES
        .iter()
        .map(|(from, name)| {
            let bytes = std::fs::read(root.join(from))
                .with_context(|| format!("{from} could not be read: a package carries it"))?;
            Ok(File::named(name, bytes))
        })
        .collect()
}

/// Makes the kit of a site whose pages work anywhere, each file with its packed ones beside it, from the folder `kept` if
/// they are there. Pages that are many of a kind go without: a server packs them as it sends them, and the kit is half as large. The same files give the same bytes: entries are sorted and carry no time.
///
/// # Errors
/// A licence that can't be read, named with its path.
pub(crate) fn pack(root: &Path, kept: &Path, mut files: Vec<File>) -> Result<File> {
    for (name, text) in [
        ("_headers", headers::underscore(PATH, &files)),
        (".htaccess", headers::htaccess(PATH)),
    ] {
        files.push(File::named(name, text));
    }
    // The single files are there to be downloaded.
    let worth = |file: &&File| {
        packed::is_worth_it(&file.path) && !single::is(&file.path) && !is_read_first(&file.path)
    };
    let (to_pack, mut entries): (Vec<_>, Vec<_>) = files.iter().partition(worth);
    let texts: Vec<_> = to_pack.iter().map(|file| packed::Text::of(file)).collect();
    let mut beside = Vec::new();
    for (file, ways) in to_pack.iter().zip(packed::pack(&texts, kept)) {
        for ((ending, _), bytes) in packed::WAYS.iter().zip(ways) {
            beside.extend(bytes.map(|bytes| File::named(&format!("{}{ending}", file.path), bytes)));
        }
    }
    entries.extend(to_pack);
    entries.extend(&beside);
    let mut entries: Vec<(String, Vec<u8>)> = entries
        .iter()
        .map(|file| (format!("site/{}", file.path), file.bytes.clone()))
        .collect();
    let licences = licences(root)?.into_iter();
    entries.extend(licences.map(|file| (file.path, file.bytes)));
    let notices = files.iter().find(|file| file.path == notices::NAME);
    if let Some(file) = notices {
        entries.push(("LICENSES-OF-OTHERS.txt".to_owned(), file.bytes.clone()));
    }
    for (name, text) in [
        ("nginx.conf", headers::nginx(PATH)),
        ("README.txt", readme()),
    ] {
        entries.push((name.to_owned(), text.into_bytes()));
    }
    for (name, text) in hosts::shortcodes(root, &files)? {
        entries.push((name, text.into_bytes()));
    }
    entries.sort();
    let mut sums = String::new();
    for (name, bytes) in &entries {
        let _ = writeln!(sums, "{}  {name}", hex(&Sha256::digest(bytes)));
    }
    entries.push(("SHA256SUMS".to_owned(), sums.into_bytes()));

    let mut zip = zip::ZipWriter::new(Cursor::new(Vec::new()));
    let options = SimpleFileOptions::default()
        .last_modified_time(zip::DateTime::default())
        .unix_permissions(0o644);
    for (name, bytes) in &entries {
        let is_packed = packed::WAYS
            .iter()
            .any(|(ending, _)| name.ends_with(ending));
        let method = if is_packed {
            CompressionMethod::Stored
        } else {
            CompressionMethod::Deflated
        };
        zip.start_file(name.as_str(), options.compression_method(method))?;
        zip.write_all(bytes)?;
    }
    Ok(File::named(NAME, zip.finish()?.into_inner()))
}

fn readme() -> String {
    format!(
        "Slipbark {version}: a kit to serve it from your own site\n\
         \n\
         1. Check the files:  sha256sum -c SHA256SUMS\n\
         2. Put everything inside the folder site/ where your server's files lie: at the top or in any\n\
         \x20  folder. The pages name each other by steps from themselves, so nothing in them is to be\n\
         \x20  changed. The server has to show site/species/index.html at .../species/, with the slash.\n\
         3. Let the server send the right headers, and the packed file (.br, .gz) beside each file to\n\
         \x20  browsers that take it: that is less than half of the bytes. Pages of one tree, of an article, of\n\
         \x20  the key and of plates have none beside them; the server packs those itself. Ready for that are\n\
         \x20  site/.htaccess (Apache reads it), nginx.conf (include it in your server block) and\n\
         \x20  site/_headers (for hosts of static files that read it; they pack by themselves).\n\
         \x20  Where the site is not at the top, write its path into nginx.conf and .htaccess: the lines\n\
         \x20  that name it are marked. In _headers it stands in front of each address. At the top of nginx's\n\
         \x20  default site take its own \"location / {{ … }}\" out: the one of nginx.conf takes its place.\n\
         4. Put slipbark-kit.zip itself beside index.html, if people are to find it on the page\n\
         \x20  \"Put it on your site\".\n\
         5. For a newer kit: unpack it over this one and leave the old files of assets/ for 90 days, as\n\
         \x20  pages and scripts that browsers still have name them. Send sw.js last, when all else is there.\n\
         \n\
         The headers, for any other host:\n\
         - assets/* and {version}/*: Cache-Control: public, max-age=31536000, immutable (a change\n\
         \x20 gives them other names)\n\
         - all else: Cache-Control: no-cache (also sw.js and v1/*, or an update would not arrive)\n\
         - everything but .html: Access-Control-Allow-Origin: *, or other origins can't embed it\n\
         - .wasm: Content-Type: application/wasm\n\
         - .html: the Content-Security-Policy that stands in _headers. Each page states it too,\n\
         \x20 so a host that can't send it loses nothing else. {single} has its own.\n\
         \n\
         A host that drops the slash at the end of addresses works with this kit at the top of an\n\
         address only. For a folder of such a host build the site for its path:\n\
         \x20 slipbark build --out site --base /trees/\n\
         \n\
         On other pages: <script src=\".../v1/embed.js\" defer></script> and one of the elements\n\
         slipbark-tree-plan, -year, -ring, -reach, -effort, -checks; in a frame: embed/NAME/.\n\
         \n\
         For sites made by a program: hugo/slipbark.html is a shortcode for Hugo, eleventy/slipbark.njk\n\
         a macro for Eleventy; how to use each stands at its top. A plugin for WordPress is made from\n\
         the project: slipbark build --wordpress --out DIR.\n\
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
         town names CC BY 4.0; code of others in the module as LICENSES-OF-OTHERS.txt says. Keep those\n\
         files with the kit.\n",
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
        let files = vec![
            File::named("index.html", "page ".repeat(50)),
            File::named("assets/engine.0.wasm", [0, 97, 115, 109]),
            File::named(
                &format!("{}/embed.js", crate::build::version::FULL),
                "script",
            ),
        ];
        let kept = std::env::temp_dir().join("slipbark-tests-packed");
        pack(root.unwrap(), &kept, files).unwrap()
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
        for name in [
            "LICENSE-MIT",
            "site/.htaccess",
            "site/index.html.br",
            "site/index.html.gz",
            "data/places/PROVENANCE.md",
        ] {
            assert!(sums.contains(&format!("  {name}\n")), "{name}:\n{sums}");
        }
    }
}
