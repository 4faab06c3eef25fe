//! Makes the whole site in memory, and writes it into a folder.

use crate::assets::{Assets, File, digest, script};
use crate::{args, kit, pages, places, project, single, version, wasm};
use anyhow::{Context, Result, bail};
use std::collections::BTreeSet;
use std::path::Path;

/// Lists what a build wrote into a folder: the next one removes what it no
/// longer makes, and a folder with other things in it is left alone.
const MARKER: &str = ".slipbark-files";

/// Runs `build`.
///
/// # Errors
/// Whatever keeps the site from being made or written; the message says what
/// to do.
pub(crate) fn run(options: &args::Build) -> Result<()> {
    let root = project::root()?;
    let say = speaker(options.quiet);
    let out = std::path::absolute(&options.out)?;
    may_write(&out)?;
    let files = site(&root, &options.base, options.offline, options.quiet, &say)?;
    if changes_full(&out, &files) {
        say(&format!(
            "{0}/ held other files before. Pages that hold them to their digests will refuse these: raise the version before you publish.",
            version::FULL
        ));
    }
    write(&out, &files)?;
    say(&format!(
        "{} files for {} are in:",
        files.len(),
        options.base
    ));
    println!("{}", options.out.display());
    Ok(())
}

/// Says what is being done, on the error stream, unless asked to be quiet.
pub(crate) fn speaker(quiet: bool) -> impl Fn(&str) {
    move |line| {
        if !quiet {
            eprintln!("{line}");
        }
    }
}

/// Makes every file of the site that will live under `base`; without `offline`
/// its worker is the one that removes what an earlier site kept.
///
/// # Errors
/// Code, content or pages that are broken: with file and line.
pub(crate) fn site(
    root: &Path,
    base: &str,
    offline: bool,
    quiet: bool,
    say: &dyn Fn(&str),
) -> Result<Vec<File>> {
    let module = wasm::module(root, &project::target(root), quiet, say)?;
    say("Rendering the pages ...");
    let scripts = root.join("www/pages/js");
    let mut assets = Assets::default();
    assets.add("site.css", stylesheet(root)?);
    assets.add("icon.svg", read(&root.join("www/pages/icon.svg"))?);
    let climate = places::pack_climate(root)?;
    let parts = single::Parts {
        engine: &module.js,
        wasm: &module.wasm,
        climate: &climate,
        regional: calc_data::REGIONAL,
    };
    let mut single = single::render(root, &parts)?;
    assets.add("engine.wasm", module.wasm);
    assets.add("climate.bin", climate);
    assets.add("regional.bin", calc_data::REGIONAL.to_vec());
    for country in places::COUNTRIES {
        assets.add(
            &format!("towns-{country}.bin"),
            places::pack_towns(root, country)?,
        );
    }
    assets.add("engine.js", module.js);
    assets.add("config.js", script(&scripts.join("config.js"), &[])?);
    // What the element's script names: each as a literal of its own in it.
    let mut named = vec![
        "engine.js".to_owned(),
        "engine.wasm".to_owned(),
        "climate.bin".to_owned(),
        "regional.bin".to_owned(),
        "config.js".to_owned(),
    ];
    named.extend(places::COUNTRIES.map(|country| format!("towns-{country}.bin")));
    let element = naming(&scripts, "element.js", &assets, &named)?;
    assets.add("element.js", element);
    let build = naming(&scripts, "build.js", &assets, &["element.js".to_owned()])?;
    assets.add("build.js", build);
    assets.add("page.js", script(&scripts.join("page.js"), &[])?);
    for name in ["frame.js", "stepdown.js"] {
        assets.add(name, script(&scripts.join(name), &[])?);
    }

    let full = version::full(&scripts, &assets, &named)?;
    let mut files = pages::render(root, base, &assets, &full)?;
    files.extend(version::newest(&scripts, &assets)?);
    files.push(version::list(&full)?);
    let manifest = std::fs::read_to_string(root.join("www/pages/manifest.json"))
        .context("www/pages/manifest.json could not be read")?;
    let values = std::collections::BTreeMap::from([
        ("base", base.to_owned()),
        ("icon", format!("{base}{}", assets.path("icon.svg")?)),
    ]);
    let manifest = crate::template::fill("www/pages/manifest.json", &manifest, &values)?;
    files.push(File::named("manifest.webmanifest", manifest));
    files.extend(assets.into_files());

    // Name the build by its bytes, then put the name where people see it.
    let build = digest(
        files
            .iter()
            .map(|file| (file.path.as_str(), file.bytes.as_slice())),
    );
    let pages = files.iter_mut().filter(|file| file.path.ends_with(".html"));
    for file in pages.chain([&mut single]) {
        let page = std::str::from_utf8(&file.bytes)
            .with_context(|| format!("{} is no text", file.path))?;
        file.bytes = page.replace(pages::BUILD_MARK, &build[..8]).into_bytes();
    }
    files.push(if offline {
        worker(&scripts, &files)?
    } else {
        File::named("sw.js", read(&scripts.join("sw-off.js"))?)
    });
    // To be downloaded or named by other sites, not part of what the site keeps on a device.
    files.push(single);
    files.extend(full);
    files.push(kit::pack(root, base, &files)?);
    Ok(files)
}

/// A script whose literals `"./name"` become those of the assets of that name, which lie beside it.
fn naming(scripts: &Path, file: &str, assets: &Assets, named: &[String]) -> Result<String> {
    let names = named
        .iter()
        .map(|name| {
            Ok((
                format!("\"./{name}\""),
                format!("\"./{}\"", assets.name(name)?),
            ))
        })
        .collect::<Result<Vec<_>>>()?;
    let names: Vec<(&str, &str)> = names.iter().map(|(a, b)| (&**a, &**b)).collect();
    script(&scripts.join(file), &names)
}

/// The service worker with the list of all files in it. The cache's name is
/// the digest of all paths and bytes, and of the worker's own code: a changed
/// worker must not install into the cache that the one before still serves.
fn worker(scripts: &Path, files: &[File]) -> Result<File> {
    let path = scripts.join("sw.js");
    let code = read(&path)?;
    let all = files
        .iter()
        .map(|file| (file.path.as_str(), file.bytes.as_slice()));
    let version = digest(all.chain([("sw.js", code.as_slice())]));
    let list: Vec<_> = files
        .iter()
        .map(|file| [file.address().to_owned(), file.integrity()])
        .collect();
    let text = script(
        &path,
        &[
            ("\"@@version@@\"", &format!("\"{}\"", &version[..16])),
            ("[\"@@files@@\"]", &serde_json::to_string(&list)?),
        ],
    )?;
    Ok(File::named("sw.js", text))
}

/// The pages' stylesheet: the tokens, what the calculators show, then the
/// pages' own rules, which may depend on both.
fn stylesheet(root: &Path) -> Result<Vec<u8>> {
    let mut all = Vec::new();
    for sheet in ["tokens.css", "calc.css", "page.css"] {
        all.extend(read(&root.join("www/style").join(sheet))?);
        all.push(b'\n');
    }
    Ok(all)
}

fn read(path: &Path) -> Result<Vec<u8>> {
    std::fs::read(path).with_context(|| format!("{} could not be read", path.display()))
}

/// Refuses a folder that holds something which no build of ours wrote.
fn may_write(out: &Path) -> Result<()> {
    if out.is_file() {
        bail!(
            "{} is a file. Give --out the name of a folder.",
            out.display()
        );
    }
    let empty = std::fs::read_dir(out).map_or(true, |mut entries| entries.next().is_none());
    if !empty && !out.join(MARKER).is_file() {
        bail!(
            "{} holds files that no build of this site wrote. Give --out an empty or a new folder, or empty that one.",
            out.display()
        );
    }
    Ok(())
}

/// Whether a file of the full version stands in `out` with other bytes: it should never change.
fn changes_full(out: &Path, files: &[File]) -> bool {
    files.iter().any(|file| {
        version::is_full(&file.path)
            && std::fs::read(out.join(&file.path)).is_ok_and(|bytes| bytes != file.bytes)
    })
}

/// Writes the files into `out` and removes what an earlier build left there.
///
/// # Errors
/// A folder with other things in it, or one that can't be written.
pub(crate) fn write(out: &Path, files: &[File]) -> Result<()> {
    may_write(out)?;
    let marker = out.join(MARKER);
    let before = std::fs::read_to_string(&marker).unwrap_or_default();
    let now: BTreeSet<&str> = files.iter().map(|file| file.path.as_str()).collect();
    std::fs::create_dir_all(out).with_context(|| format!("{} could not be made", out.display()))?;
    let mut listed: BTreeSet<&str> = before.lines().collect();
    listed.extend(&now);
    // Both lists stand in the marker while files change, so that a build that
    // breaks half-way leaves nothing unaccounted for.
    std::fs::write(&marker, lines(&listed))?;
    for file in files {
        let path = out.join(&file.path);
        if let Some(folder) = path.parent() {
            std::fs::create_dir_all(folder)?;
        }
        std::fs::write(&path, &file.bytes)
            .with_context(|| format!("{} could not be written", path.display()))?;
    }
    let own = format!("{}/", version::FULL);
    // Folders of other full versions stay: somebody's page may name them.
    let gone = |old: &&str| !now.contains(old) && (old.starts_with(&own) || !version::is_full(old));
    for old in before.lines().filter(gone) {
        // Only names that a build can have written: never upwards, never absolute.
        let inside = Path::new(old)
            .components()
            .all(|part| matches!(part, std::path::Component::Normal(_)));
        if inside {
            let _ = std::fs::remove_file(out.join(old));
        }
    }
    std::fs::write(&marker, lines(&now))?;
    Ok(())
}

/// Reads a folder that was built before, for `serve --dir`.
///
/// # Errors
/// When it can't be read or has no page in it.
pub(crate) fn read_folder(folder: &Path) -> Result<Vec<File>> {
    let mut files = Vec::new();
    let mut folders = vec![folder.to_path_buf()];
    while let Some(next) = folders.pop() {
        let entries = std::fs::read_dir(&next)
            .with_context(|| format!("{} could not be read", next.display()))?;
        for entry in entries {
            let path = entry?.path();
            if path.is_dir() {
                folders.push(path);
                continue;
            }
            let inside = path.strip_prefix(folder)?;
            let names: Vec<_> = inside.iter().map(|name| name.to_string_lossy()).collect();
            if names.last().is_some_and(|name| !name.starts_with('.')) {
                let mut file = File::named(&names.join("/"), read(&path)?);
                file.hashed = file.path.starts_with("assets/");
                files.push(file);
            }
        }
    }
    if !files.iter().any(|file| file.path == "index.html") {
        bail!(
            "{} has no index.html in it. Build into it first: build --out {}",
            folder.display(),
            folder.display()
        );
    }
    Ok(files)
}

fn lines(names: &BTreeSet<&str>) -> String {
    names.iter().flat_map(|name| [name, "\n"]).collect()
}

#[cfg(test)]
mod tests;
