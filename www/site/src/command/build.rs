//! `build`: writes the static site into a folder.

use crate::build::assets::File;
use crate::build::{self, folder, hosts, packed, version};
use crate::command::{question, speaker};
use crate::{args, project, terminal};
use anyhow::Result;
use std::path::Path;

/// Runs `build`.
///
/// # Errors
/// Whatever keeps the site from being made or written; the message says what
/// to do.
pub(crate) fn run(options: &args::Build) -> Result<()> {
    let root = project::root()?;
    let say = speaker(options.quiet);
    if let Some(out) = &options.npm {
        let site = match &*options.origin {
            "" => String::new(),
            origin => format!("{origin}{}", options.base),
        };
        package(out, || build::npm::files(&root, &site, options.quiet, &say))?;
    }
    if let Some(out) = &options.library {
        package(out, || build::library::files(&root))?;
    }
    let Some(out) = &options.out else {
        return Ok(());
    };
    let out = std::path::absolute(out)?;
    folder::may_write(&out)?;
    // A plugin has its own place in a site, which may lie in any folder of its host; another one is named as ever.
    let base = match &*options.base {
        "/" if options.wordpress => hosts::WORDPRESS_BASE,
        base => base,
    };
    let anywhere = options.wordpress && &*options.base == "/" && options.origin.is_empty();
    let own = options.own.as_deref().map(folder::of_a_group).transpose()?;
    let place = build::Options {
        base,
        anywhere,
        origin: &options.origin,
        contact: &options.contact,
        own: own.as_deref(),
        offline: !options.no_offline,
    };
    let mut files = build::site(&root, &place, options.quiet, &say)?;
    if options.wordpress {
        files = hosts::wordpress(&root, files)?;
    }
    if folder::changes_full(&out, &files) {
        say(&format!(
            "{0}/ held other files before. Pages that hold them to their digests will refuse these: raise the version before you publish.",
            version::FULL
        ));
    }
    say("Writing the files, packed ones beside them ...");
    folder::write(&out, &files, question::today_day(), &packed::cache(&root))?;
    let path = if anywhere { "any folder" } else { base };
    say(&format!("{} files for {path} are in:", files.len()));
    terminal::print(&format!("{}\n", out.display()))
}

/// Writes a package into a folder, and says where it is.
fn package(out: &Path, make: impl FnOnce() -> Result<Vec<File>>) -> Result<()> {
    let out = std::path::absolute(out)?;
    folder::may_write(&out)?;
    folder::write_plain(&out, &make()?)?;
    terminal::print(&format!("{}\n", out.display()))
}
