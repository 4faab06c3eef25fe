//! `build`: writes the static site into a folder.

use crate::build::{self, folder, hosts, packed, version};
use crate::command::{question, speaker};
use crate::{args, project, terminal};
use anyhow::Result;

/// Runs `build`.
///
/// # Errors
/// Whatever keeps the site from being made or written; the message says what
/// to do.
pub(crate) fn run(options: &args::Build) -> Result<()> {
    let root = project::root()?;
    let say = speaker(options.quiet);
    let out = std::path::absolute(&options.out)?;
    folder::may_write(&out)?;
    // A plugin has its own place in a site; another one is named as ever.
    let base = match &*options.base {
        "/" if options.wordpress => hosts::WORDPRESS_BASE,
        base => base,
    };
    let mut files = build::site(&root, base, !options.no_offline, options.quiet, &say)?;
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
    say(&format!("{} files for {base} are in:", files.len()));
    terminal::print(&format!("{}\n", options.out.display()))
}
