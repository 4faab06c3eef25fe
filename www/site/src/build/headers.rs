//! The headers a server sends with each file: one rule, from which the built-in
//! server answers and the ready files for other servers are written.

use crate::build::assets::File;
use crate::build::policy::{FRAME_POLICY, NOWHERE, NOWHERE_POLICY, POLICY, frames, policy};
use crate::build::{single, version};
use std::fmt::Write as _;

/// For files whose names change with their content: a year, the longest that
/// RFC 2616 (14.21) called sensible, and no question in between (RFC 8246).
const KEPT: &str = "public, max-age=31536000, immutable";
/// For files whose names stay: kept, but asked about each time (RFC 9111, 5.2.2.4).
const ASKED: &str = "no-cache";

/// The header that states what a page may load.
pub(crate) const POLICY_NAME: &str = "Content-Security-Policy";

/// Sent with every file.
const ALWAYS: [(&str, &str); 3] = [
    ("X-Content-Type-Options", "nosniff"),
    ("Referrer-Policy", "no-referrer"),
    // Pages that let in only what asks to be let in (`Cross-Origin-Embedder-Policy: require-corp`) may hold it too.
    ("Cross-Origin-Resource-Policy", "cross-origin"),
];

/// The headers of the file at `path` of the site, but for its type and length.
pub(crate) fn of(path: &str) -> Vec<(&'static str, &'static str)> {
    let mut headers = ALWAYS.to_vec();
    headers.push((
        "Cache-Control",
        if path.starts_with("assets/") || version::is_full(path) {
            KEPT
        } else {
            ASKED
        },
    ));
    if !path.ends_with(".html") {
        // Pages of other origins may load the element, its module and data.
        headers.push(("Access-Control-Allow-Origin", "*"));
    } else if !single::is(path) {
        // The single file states its own policy: its script stands inside it.
        headers.push((POLICY_NAME, policy(path)));
    }
    headers
}

/// The media type by the name's ending.
pub(crate) fn kind(path: &str) -> &'static str {
    match path.rsplit_once('.').map_or("", |(_, ending)| ending) {
        "html" => "text/html; charset=utf-8",
        "css" => "text/css; charset=utf-8",
        "js" => "text/javascript; charset=utf-8",
        "wasm" => "application/wasm",
        "json" => "application/json",
        "webmanifest" => "application/manifest+json",
        "svg" => "image/svg+xml",
        "png" => "image/png",
        "csv" => "text/csv; charset=utf-8",
        "zip" => "application/zip",
        "ts" | "txt" | "md" => "text/plain; charset=utf-8",
        _ => "application/octet-stream",
    }
}

/// `_headers`, as several hosts of static files read it: an address, then its
/// headers, indented. Where two addresses match a file both count, and a header
/// named by both would be sent twice: so no two rules here share one.
pub(crate) fn underscore(base: &str, files: &[File]) -> String {
    let mut out = String::from(
        "# Headers of each address. Put this file where the site's index.html lies.\n",
    );
    let mut rule = |address: &str, headers: &[(&str, &str)]| {
        let _ = writeln!(out, "\n{base}{address}");
        for (name, value) in headers {
            let _ = writeln!(out, "  {name}: {value}");
        }
    };
    rule("*", &ALWAYS);
    let own = |path: &str| -> Vec<_> {
        let all = of(path);
        all.into_iter()
            .filter(|one| !ALWAYS.contains(one))
            .collect()
    };
    let full = format!("{}/", version::FULL);
    let folders = ["assets/", "v1/", &full];
    for folder in folders {
        rule(&format!("{folder}*"), &own(&format!("{folder}x.js")));
    }
    for file in files {
        let foldered = folders.iter().any(|f| file.path.starts_with(f));
        let mut headers = if foldered {
            Vec::new()
        } else {
            own(&file.path)
        };
        if [".wasm", ".webmanifest"]
            .iter()
            .any(|e| file.path.ends_with(e))
        {
            headers.push(("Content-Type", kind(&file.path)));
        }
        if !headers.is_empty() {
            rule(file.address(), &headers);
        }
    }
    out
}

/// `.htaccess` for Apache 2.4 with its modules `headers`, `mime` and `rewrite`. One line names the path of the site.
pub(crate) fn htaccess(base: &str) -> String {
    let (single, frames) = (single::NAMES, frames());
    let (of_pages, of_frames) = (&*POLICY, &*FRAME_POLICY);
    let (nowhere, of_nowhere) = (NOWHERE.replace('.', "\\."), &*NOWHERE_POLICY);
    let always: String = ALWAYS
        .iter()
        .map(|(name, value)| format!("Header set {name} \"{value}\"\n"))
        .collect();
    let packed: String = [("br", "br"), ("gzip", "gz")]
        .iter()
        .map(|(name, ending)| {
            // A folder's own page is packed too. What is asked for with its ending is sent as it is.
            format!(
                "RewriteCond %{{HTTP:Accept-Encoding}} \\b{name}\\b\n\
                 RewriteCond %{{REQUEST_FILENAME}}.{ending} -f\n\
                 RewriteRule ^(.+)$ $1.{ending} [E=packed:1,L]\n\
                 RewriteCond %{{HTTP:Accept-Encoding}} \\b{name}\\b\n\
                 RewriteCond %{{REQUEST_FILENAME}}/index.html.{ending} -f\n\
                 RewriteRule ^(.+/)?$ $1index.html.{ending} [E=packed:1,L]\n"
            )
        })
        .collect();
    format!(
        "# For Apache 2.4. Put this file where the site's index.html lies; the server has to allow it\n\
         # (AllowOverride All). The next line names the path of the site: for a folder write /FOLDER/404.html.\n\
         ErrorDocument 404 {base}404.html\n\
         AddType application/wasm .wasm\n\
         AddType application/manifest+json .webmanifest\n\
         AddType text/javascript .js\n\
         DirectoryIndex index.html\n\
         # The packed file beside each file, for browsers that take it.\n\
         <IfModule mod_rewrite.c>\n\
         RewriteEngine On\n\
         {packed}\
         </IfModule>\n\
         # What has none is packed as it is sent.\n\
         <IfModule mod_deflate.c>\n\
         <IfModule mod_filter.c>\n\
         AddOutputFilterByType DEFLATE text/html\n\
         </IfModule>\n\
         </IfModule>\n\
         RemoveType .gz\n\
         RemoveLanguage .br\n\
         AddEncoding br .br\n\
         AddEncoding gzip .gz\n\
         <IfModule mod_headers.c>\n\
         {always}\
         Header merge Vary Accept-Encoding\n\
         Header set Cache-Control \"{ASKED}\"\n\
         Header set Access-Control-Allow-Origin \"*\"\n\
         <FilesMatch \"\\.html(\\.br|\\.gz)?$\">\n\
         Header unset Access-Control-Allow-Origin\n\
         Header set Content-Security-Policy \"{of_pages}\"\n\
         </FilesMatch>\n\
         <FilesMatch \"^{single}\">\n\
         Header unset Content-Security-Policy\n\
         </FilesMatch>\n\
         <FilesMatch \"^{nowhere}\">\n\
         Header set Content-Security-Policy \"{of_nowhere}\"\n\
         </FilesMatch>\n\
         <If \"%{{REQUEST_URI}} =~ m#/{frames}#\">\n\
         Header set Content-Security-Policy \"{of_frames}\"\n\
         </If>\n\
         <If \"%{{REQUEST_URI}} =~ m#/(assets|[0-9]+\\.[0-9]+\\.[0-9]+)/#\">\n\
         Header set Cache-Control \"{KEPT}\"\n\
         </If>\n\
         </IfModule>\n"
    )
}

/// A piece of an nginx configuration, for inside `server { }`. Two lines name the path of the site. Headers of an
/// outer block do not reach into a `location` that has its own, so each block names all of them.
pub(crate) fn nginx(base: &str) -> String {
    let mut out = format!(
        "# For nginx: include it inside server {{ }}, with `root` set so that the path leads to the folder that holds\n\
         # the site's index.html. The next two lines name the path: for a folder write /FOLDER/404.html and /FOLDER/.\n\
         # A `location` of the same path that stands there already, as `location /` of Debian's default site does, has\n\
         # to go, or nginx stops with: duplicate location \"/\". The one below takes its place.\n\
         error_page 404 {base}404.html;\n\
         location {base} {{\n\
         index index.html;\n\
         # The packed file beside each file, for browsers that take it.\n\
         gzip_static on;\n\
         gzip_vary on;\n\
         # Pages that have none are packed as they are sent.\n\
         gzip on;\n\
         # With nginx's module for brotli take away the # in front of the next line:\n\
         #brotli_static on;\n"
    );
    let headers = |path: &str| -> String {
        of(path)
            .iter()
            .map(|(name, value)| format!("  add_header {name} \"{value}\";\n"))
            .collect()
    };
    let mut location = |matches: &str, path: &str, types: bool| {
        let _ = writeln!(out, "location ~ {matches} {{");
        if types {
            let _ = writeln!(out, "  types {{ }}\n  default_type \"{}\";", kind(path));
        }
        let _ = writeln!(out, "{}}}", headers(path));
    };
    let kept = "/(assets|[0-9]+\\.[0-9]+\\.[0-9]+)/";
    location(&format!("/{}$", single::NAMES), single::NAME, true);
    location(&format!("\"{kept}.*\\.wasm$\""), "assets/x.wasm", true);
    location(&format!("\"{kept}.*\\.js$\""), "assets/x.js", true);
    location(&format!("\"{kept}\""), "assets/x.css", false);
    location("\\.js$", "sw.js", true);
    location("/manifest\\.webmanifest$", "manifest.webmanifest", true);
    location(
        &format!("/{}", frames()),
        "embed/tree-plan/index.html",
        false,
    );
    location("/404\\.html$", NOWHERE, false);
    location("(/|\\.html)$", "index.html", false);
    let _ = writeln!(out, "{}}}", headers("v1/x.json"));
    out
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::collections::BTreeMap;

    const PATHS: [&str; 17] = [
        concat!(env!("CARGO_PKG_VERSION"), "/embed.js"),
        concat!(env!("CARGO_PKG_VERSION"), "/engine.wasm"),
        "index.html",
        "sources/index.html",
        "embed/tree-plan/index.html",
        "es/sources/index.html",
        "es/embed/tree-plan/index.html",
        "404.html",
        "slipbark-single.html",
        "slipbark-single-es.html",
        "sw.js",
        "manifest.webmanifest",
        "es/manifest.webmanifest",
        "v1/embed.js",
        "v1/question.schema.json",
        "assets/engine.0.wasm",
        "assets/site.0.css",
    ];

    /// What a host that reads `_headers` sends for an address.
    fn sent(rules: &str, address: &str) -> BTreeMap<String, String> {
        let mut sent = BTreeMap::new();
        let mut matches = false;
        for line in rules.lines().filter(|line| !line.starts_with('#')) {
            if let Some(header) = line.strip_prefix("  ") {
                let (name, value) = header.split_once(": ").unwrap();
                if matches {
                    let twice = sent.insert(name.to_owned(), value.to_owned());
                    assert_eq!(twice, None, "{name} is sent twice for {address}");
                }
            } else {
                matches = match line.strip_suffix('*') {
                    Some(start) => address.starts_with(start),
                    None => line == address,
                };
            }
        }
        sent
    }

    #[test]
    fn ready_headers_are_those_of_the_built_in_server() {
        let files: Vec<_> = PATHS.iter().map(|path| File::named(path, "")).collect();
        for base in ["/", "/trees/"] {
            let rules = underscore(base, &files);
            for file in &files {
                let mut sent = sent(&rules, &format!("{base}{}", file.address()));
                if let Some(kind_sent) = sent.remove("Content-Type") {
                    assert_eq!(kind_sent, kind(&file.path));
                }
                let of: BTreeMap<_, _> = of(&file.path)
                    .into_iter()
                    .map(|(name, value)| (name.to_owned(), value.to_owned()))
                    .collect();
                assert_eq!(sent, of, "{base}{}", file.path);
            }
        }
    }

    #[test]
    fn only_names_that_change_with_their_content_are_kept_unasked() {
        let cache = |path: &str| {
            let found = of(path)
                .into_iter()
                .find(|(name, _)| *name == "Cache-Control");
            found.unwrap().1
        };
        for path in PATHS {
            let kept = path.starts_with("assets/") || version::is_full(path);
            assert_eq!(cache(path) == KEPT, kept, "{path}");
            assert_eq!(cache(path) == ASKED, !kept, "{path}");
        }
    }

    #[test]
    fn every_ready_file_names_every_header() {
        let files: Vec<_> = PATHS.iter().map(|path| File::named(path, "")).collect();
        for text in [underscore("/t/", &files), htaccess("/t/"), nginx("/t/")] {
            for part in [
                KEPT,
                ASKED,
                &POLICY,
                &FRAME_POLICY,
                &NOWHERE_POLICY,
                "application/wasm",
                "Access-Control-Allow-Origin",
                "nosniff",
                "Cross-Origin-Resource-Policy",
                "no-referrer",
                "/t/",
            ] {
                assert!(text.contains(part), "{part} is missing:\n{text}");
            }
        }
    }
}
