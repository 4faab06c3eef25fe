//! Makes the whole site in memory: the order of its parts, a file each.

mod addresses;
mod articles;
pub(crate) mod assets;
mod day;
mod device;
mod feed;
pub(crate) mod folder;
mod gallery;
mod head_scripts;
pub(crate) mod headers;
pub(crate) mod hosts;
mod interface;
mod json_ld;
pub(crate) mod kept;
mod key;
mod kit;
pub(crate) mod languages;
mod leaf_marks;
pub(crate) mod library;
mod lines;
#[cfg(test)]
mod links;
mod local;
mod look_alikes;
mod markdown;
mod natives;
mod notices;
pub(crate) mod npm;
pub(crate) mod packed;
mod page_list;
pub(crate) mod pages;
mod paper;
mod pictures;
pub(crate) mod policy;
mod schema;
mod single;
mod sitemap;
mod snippets;
mod sources;
mod species_after;
mod species_asked;
mod species_list;
mod species_pages;
mod static_answers;
pub(crate) mod style;
mod template;
pub(crate) mod version;
mod wasm;

use crate::project;
use anyhow::{Context, Result};
use assets::{Assets, File, digest, script, tidy};
use calc::question::settings::LARGEST;
use calc_data::places::{CLIMATE, TOWNS};
use calc_view::words::m;
use std::path::Path;

/// Where a site will live, and what it does there.
pub(crate) struct Options<'a> {
    /// Its path: `/trees/`.
    pub base: &'a str,
    /// Whether its path is not known: its pages name each other by steps, as those of the kit.
    pub anywhere: bool,
    /// Its origin, `https://example.org`, or nothing.
    pub origin: &'a str,
    /// Where mistakes are told: mailto: or https:, or nothing.
    pub contact: &'a str,
    /// The folder of a group, with articles, sources and pages of its own.
    pub own: Option<&'a Path>,
    /// Whether it is kept on the device. Without, its worker is the one that removes what an earlier site kept.
    pub offline: bool,
}

/// The modules that its pages load.
struct Modules {
    calculator: wasm::Module,
    lists: wasm::Module,
}

/// A site but for pictures and kit: as it lies under its path, and as it may lie anywhere, which goes into the kit.
struct Made {
    files: Vec<File>,
    anywhere: Vec<File>,
    /// What is still to be drawn for both.
    pictures: Vec<pictures::Planned>,
}

/// Makes every file of the site.
///
/// # Errors
/// Code, content or pages that are broken: with file and line.
pub(crate) fn site(
    root: &Path,
    options: &Options,
    quiet: bool,
    say: &dyn Fn(&str),
) -> Result<Vec<File>> {
    let target = project::target(root);
    let modules = Modules {
        calculator: wasm::module(&wasm::CALCULATOR, root, &target, quiet, say)?,
        lists: wasm::module(&wasm::LISTS, root, &target, quiet, say)?,
    };
    say("Rendering the pages ...");
    let Made {
        mut files,
        mut anywhere,
        pictures,
    } = made(root, options, modules)?;
    say("Drawing the pictures of pages ...");
    let drawn = pictures::draw(&pictures, &pictures::cache(root))?;
    anywhere.extend(drawn.iter().cloned());
    files.extend(drawn);
    say("Packing the kit ...");
    files.push(kit::pack(root, &packed::cache(root), anywhere)?);
    Ok(files)
}

/// Makes every file but the pictures and the kit.
fn made(root: &Path, options: &Options, modules: Modules) -> Result<Made> {
    let &Options {
        base,
        anywhere: is_anywhere,
        origin,
        contact,
        own,
        offline,
    } = options;
    let Modules {
        calculator: module,
        lists: of_lists,
    } = modules;
    let mut crates = module.crates.clone();
    crates.extend(of_lists.crates.iter().cloned());
    crates.sort();
    crates.dedup();
    let scripts = root.join("www/pages/js");
    let mut assets = Assets::default();
    assets.add("site.css", style::pages(root)?);
    assets.add("icon.svg", read(&root.join("www/pages/icon.svg"))?);
    let style = style::calculator(root)?;
    let parts = single::Parts {
        engine: &module.js,
        style: &style,
        wasm: &module.wasm,
        climate: CLIMATE,
        regional: calc_data::REGIONAL,
    };
    let mut singles: Vec<File> = languages::all()
        .map(|language| single::render(root, &parts, language))
        .collect::<Result<_>>()?;
    assets.add("calculator.css", style.clone());
    assets.add("engine.wasm", module.wasm);
    assets.add("climate.bin", CLIMATE);
    assets.add("regional.bin", calc_data::REGIONAL.to_vec());
    for (country, towns) in TOWNS {
        assets.add(&format!("towns-{country}.bin"), *towns);
    }
    for (language, words) in languages::others() {
        assets.add(&format!("words-{language}.bin"), words);
    }
    assets.add("engine.js", tidy(&module.js));
    // The limit of a group's settings stands once, with their reader.
    let largest = LARGEST.to_string();
    let largest = [("\"@@largest@@\"", largest.as_str())];
    assets.add("config.js", script(&scripts.join("config.js"), &largest)?);
    // What the element's script names: each as a literal of its own in it.
    let mut named = vec![
        "engine.js".to_owned(),
        "engine.wasm".to_owned(),
        "calculator.css".to_owned(),
        "climate.bin".to_owned(),
        "regional.bin".to_owned(),
        "config.js".to_owned(),
    ];
    named.extend(languages::others().map(|(language, _)| format!("words-{language}.bin")));
    named.extend(
        TOWNS
            .iter()
            .map(|(country, _)| format!("towns-{country}.bin")),
    );
    let element = naming(&scripts, "element.js", &assets, &named, &[])?;
    assets.add("element.js", element);
    let build = ["element.js".to_owned()];
    let build = naming(&scripts, "build.js", &assets, &build, &largest)?;
    assets.add("build.js", build);
    list_page(root, &scripts, &mut assets, of_lists)?;
    field_page(root, &scripts, &mut assets)?;
    assets.add("page.js", tidy(&script(&scripts.join("page.js"), &[])?));
    for name in ["filter.js", "frame.js", "offline.js"] {
        assets.add(name, script(&scripts.join(name), &[])?);
    }
    assets.add("stepdown.js", version::stepdown(&scripts)?);

    let full = version::full(&scripts, &assets, &named)?;
    let about = pages::AboutTheBuild {
        offline,
        contact,
        own,
        day: day::of_the_source(root),
        crates: &crates,
    };
    let pages::Rendered {
        mut files,
        pictures,
    } = pages::render(root, addresses::MARK, &about, &assets, &full)?;
    let sample = read(&root.join("content/sample/trees.csv"))?;
    files.push(File::named("sample/trees.csv", sample));
    files.extend(version::newest(&scripts, &assets)?);
    files.push(version::list(&full)?);
    let manifest = std::fs::read_to_string(root.join("www/pages/manifest.json"))
        .context("www/pages/manifest.json could not be read")?;
    let mark = addresses::MARK;
    for language in languages::all() {
        let folder = languages::folder(language);
        let [app, does] = languages::speaking(language, || {
            [m::SHELL_APP.to_string(), m::SHELL_APP_DOES.to_string()]
        });
        let values = std::collections::BTreeMap::from([
            ("app", app),
            ("app-does", does),
            ("lang", language.to_owned()),
            ("home", format!("{mark}{folder}")),
            ("icon", format!("{mark}{}", assets.path("icon.svg")?)),
        ]);
        let manifest = template::fill("www/pages/manifest.json", &manifest, &values)?;
        let path = format!("{folder}manifest.webmanifest");
        files.push(File::named(&path, manifest));
    }
    files.extend(assets.into_files());

    // Name the build by its bytes, then put the name where people see it.
    let build = digest(
        files
            .iter()
            .map(|file| (file.path.as_str(), file.bytes.as_slice())),
    );
    let pages = files.iter_mut().filter(|file| file.path.ends_with(".html"));
    for file in pages.chain(&mut singles) {
        let page = std::str::from_utf8(&file.bytes)
            .with_context(|| format!("{} is no text", file.path))?;
        file.bytes = page.replace(pages::BUILD_MARK, &build[..8]).into_bytes();
    }
    let worker = |files: &[File]| {
        Ok::<_, anyhow::Error>(if offline {
            device::files(&scripts, files)?.to_vec()
        } else {
            vec![File::named("sw.js", read(&scripts.join("sw-off.js"))?)]
        })
    };
    // To be downloaded or named by other sites, not part of what the site keeps on a device.
    let mut also = singles;
    also.push(notices::text(&crates));
    also.extend(sources::files(root, own)?);
    also.extend(full);
    let feed = [feed::make(root)?];
    let mut anywhere = addresses::relative(&files);
    anywhere.extend(worker(&anywhere)?);
    anywhere.extend(addresses::relative(&feed));
    anywhere.extend(also.iter().cloned());
    anywhere.push(sitemap::robots("", base));
    let mut files = addresses::under(origin, base, &files);
    files.extend(worker(&files)?);
    files.extend(addresses::under(origin, base, &feed));
    files.extend(also);
    files.push(sitemap::robots(origin, base));
    if !origin.is_empty() {
        files.push(sitemap::make(origin, base, &files));
    }
    if is_anywhere {
        files.clone_from(&anywhere);
    }
    Ok(Made {
        files,
        anywhere,
        pictures,
    })
}

/// What the page of a list alone loads: its module, with the words of lists in other languages, and the scripts around it.
fn list_page(root: &Path, scripts: &Path, assets: &mut Assets, module: wasm::Module) -> Result<()> {
    assets.add("list.css", read(&root.join("www/style/list.css"))?);
    assets.add("list-engine.wasm", module.wasm);
    assets.add("list-engine.js", module.js);
    for (language, words) in languages::of_lists() {
        assets.add(&format!("lists-{language}.bin"), words);
    }
    assets.add("natives.bin", calc_data::NATIVES);
    let named = [
        "list-engine.js",
        "list-engine.wasm",
        "natives.bin",
        "climate.bin",
        "regional.bin",
    ];
    // Names of trees are read in every language: the script names the words of each.
    let words = languages::of_lists()
        .flat_map(|(language, _)| ["words", "lists"].map(|of| format!("{of}-{language}.bin")));
    let named: Vec<String> = named.map(str::to_owned).into_iter().chain(words).collect();
    let worker = naming(scripts, "list-worker.js", assets, &named, &[])?;
    assets.add("list-worker.js", worker);
    let draft = naming(scripts, "list-draft.js", assets, &[], &[])?;
    assets.add("list-draft.js", draft);
    let named = ["list-worker.js", "list-draft.js"].map(str::to_owned);
    let page = naming(scripts, "list.js", assets, &named, &[])?;
    assets.add("list.js", page);
    Ok(())
}

/// What the page of field mode alone loads: its style sheet and its scripts, beside the calculator and the drafts of lists.
fn field_page(root: &Path, scripts: &Path, assets: &mut Assets) -> Result<()> {
    assets.add("field.css", style::packed_file(root, "field.css")?);
    for own in ["field-rows.js", "field-steps.js"] {
        let script = naming(scripts, own, assets, &[], &[])?;
        assets.add(own, script);
    }
    let named = [
        "element.js",
        "list-draft.js",
        "field-rows.js",
        "field-steps.js",
    ];
    let named = named.map(str::to_owned);
    let page = naming(scripts, "field.js", assets, &named, &[])?;
    assets.add("field.js", page);
    Ok(())
}

/// A script whose literals `"./name"` become those of the assets of that name, which lie beside it, and `more` what it says.
fn naming(
    scripts: &Path,
    file: &str,
    assets: &Assets,
    named: &[String],
    more: &[(&str, &str)],
) -> Result<String> {
    let names = named
        .iter()
        .map(|name| {
            Ok((
                format!("\"./{name}\""),
                format!("\"./{}\"", assets.name(name)?),
            ))
        })
        .collect::<Result<Vec<_>>>()?;
    let names = names.iter().map(|(a, b)| (&**a, &**b));
    let names: Vec<(&str, &str)> = names.chain(more.iter().copied()).collect();
    Ok(tidy(&script(&scripts.join(file), &names)?))
}

fn read(path: &Path) -> Result<Vec<u8>> {
    std::fs::read(path).with_context(|| format!("{} could not be read", path.display()))
}
