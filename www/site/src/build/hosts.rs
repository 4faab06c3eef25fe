//! Files for programs that make other people's sites: a shortcode for Hugo, a macro for Eleventy, a plugin for WordPress.
//! The lines in them are those of the page "Put it on your site".

use crate::build::assets::{File, script};
use crate::build::snippets::{self, Gaps};
use crate::build::{interface, languages, version};
use anyhow::Result;
use calc_view::kind::Kind;
use calc_view::words::m;
use std::path::Path;

/// Where WordPress has the plugin's own copy of the site, where it is installed at the root of a host.
pub(crate) const WORDPRESS_BASE: &str = "/wp-content/plugins/slipbark/site/";

/// The folder of the plugin.
const PLUGIN: &str = "slipbark";

/// The shortcode and the macro, with their names in the kit.
///
/// # Errors
/// A file that can't be read, or lacks the mark for its lines.
pub(crate) fn shortcodes(root: &Path, files: &[File]) -> Result<Vec<(String, String)>> {
    let digest = version::digest_of(files, "embed.js")?;
    let gaps = |site, kind, data| Gaps {
        site,
        home: site,
        kind,
        attributes: "",
        data,
        query: "",
        words: "Plan one tree",
        title: "",
        digests: [&digest, ""],
    };
    let nunjucks = "{% for name, value in more %} data-{{ name }}=\"{{ value }}\"{% endfor %}";
    let all = [
        (
            "hugo/slipbark.html",
            gaps("{{ $site }}", "{{ $kind }}", " {{ $data | safeHTMLAttr }}"),
        ),
        (
            "eleventy/slipbark.njk",
            gaps("{{ site }}", "{{ kind }}", nunjucks),
        ),
    ];
    let mut made = Vec::new();
    for (name, gaps) in all {
        let lines = snippets::filled("div", &gaps);
        let path = root.join("www/hosts").join(name);
        made.push((name.to_owned(), script(&path, &[("@@lines@@", &lines)])?));
    }
    Ok(made)
}

/// The folder of the plugin around a site that was built for [`WORDPRESS_BASE`] or another path.
///
/// # Errors
/// As [`shortcodes`].
pub(crate) fn wordpress(root: &Path, site: Vec<File>) -> Result<Vec<File>> {
    let digest = version::digest_of(&site, "embed.js")?;
    let gaps = Gaps {
        site: "",
        home: "%3$s",
        kind: "%1$s",
        attributes: "",
        data: "%2$s",
        query: "",
        words: "%4$s",
        title: "",
        digests: ["", ""],
    };
    let lines = snippets::filled("div", &gaps);
    let lines = lines.lines().next().unwrap_or_default();
    let list = |names: &[&str]| {
        let all: Vec<_> = names.iter().map(|name| format!("'{name}'")).collect();
        format!("array({})", all.join(", "))
    };
    let kinds = list(&Kind::ALL.map(Kind::name));
    let attributes = list(&interface::attribute_names());
    let folder = root.join("www/hosts/wordpress");
    let plugin = script(
        &folder.join("slipbark.php"),
        &[
            ("@@version@@", version::FULL),
            ("@@kinds@@", &kinds),
            ("@@attributes@@", &attributes),
            ("@@lines@@", lines),
            ("@@digest@@", &digest),
        ],
    )?;
    let mut files: Vec<File> = site
        .into_iter()
        .map(|file| File {
            path: format!("{PLUGIN}/site/{}", file.path),
            bytes: file.bytes,
        })
        .collect();
    let block = script(&folder.join("block.js"), &[])?;
    for (name, text) in [
        ("slipbark.php", plugin),
        ("block.js", block),
        ("words.json", words()?),
    ] {
        files.push(File::named(&format!("{PLUGIN}/{name}"), text));
    }
    Ok(files)
}

/// What the plugin says, by language.
fn words() -> Result<String> {
    let all = languages::by_language(|| {
        serde_json::json!({
            "link": m::SHELL_PLAN.to_string(),
            "about": m::EMBED_LINK_WORDS.to_string(),
            "which": m::BUILDER_WHICH.to_string(),
            "stands": m::EMBED_BLOCK_STANDS.to_string(),
            "kinds": languages::asked_by_kind(),
        })
    });
    Ok(serde_json::to_string_pretty(&all)?)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn site() -> Vec<File> {
        vec![File::named(
            &format!("{}/embed.js", version::FULL),
            "script",
        )]
    }

    #[test]
    fn shortcode_macro_and_plugin_have_the_lines_and_the_digest() {
        let root = crate::project::root().unwrap();
        let digest = version::integrity(b"script");
        let mut all = shortcodes(&root, &site()).unwrap();
        for file in wordpress(&root, site()).unwrap() {
            if file.path == "slipbark/slipbark.php" {
                all.push((file.path, String::from_utf8(file.bytes).unwrap()));
            }
        }
        assert_eq!(all.len(), 3);
        for (name, text) in all {
            assert!(!text.contains("@@"), "{name}: {text}");
            for part in [
                &digest,
                "crossorigin=\"anonymous\"",
                "<div data-slipbark=\"",
                "style=\"min-height:100vh\"><p><a href=\"",
            ] {
                assert!(text.contains(part), "{name} lacks {part}: {text}");
            }
        }
    }

    #[test]
    fn the_plugin_has_its_files_and_words_in_each_language() {
        let root = crate::project::root().unwrap();
        let files = wordpress(&root, site()).unwrap();
        let paths: Vec<&str> = files.iter().map(|file| file.path.as_str()).collect();
        let script = format!("slipbark/site/{}/embed.js", version::FULL);
        let all = [
            &*script,
            "slipbark/slipbark.php",
            "slipbark/block.js",
            "slipbark/words.json",
        ];
        assert_eq!(paths, all);
        let words: serde_json::Value = serde_json::from_slice(&files[3].bytes).unwrap();
        for language in languages::all() {
            let kinds = words[language]["kinds"].as_object().unwrap();
            assert_eq!(kinds.len(), Kind::ALL.len(), "{language}");
        }
    }
}
