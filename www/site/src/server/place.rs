//! Which file of a folder an address means. Nothing hidden is ever meant, nor what lies outside of the folder, by dots or
//! by a link.

use http::StatusCode;
use percent_encoding::percent_decode_str;
use std::path::{Path, PathBuf};

/// Where an address leads.
#[derive(Debug, PartialEq, Eq)]
pub(super) enum Place {
    /// To a file.
    File {
        /// Its path in the folder, with forward slashes.
        path: String,
        /// Where it lies, with every link followed.
        real: PathBuf,
    },
    /// To another address of the same file: a page has one.
    Moved(StatusCode, String),
    /// To nothing that is sent.
    Nowhere,
}

/// Finds what `address`, the path of a request, means in the folder `root`, which has every link followed and is served
/// under `base`.
pub(super) fn find(root: &Path, base: &str, address: &str) -> Place {
    let Ok(plain) = percent_decode_str(address).decode_utf8() else {
        return Place::Nowhere;
    };
    let Some(path) = plain.strip_prefix(base) else {
        return if plain == "/" {
            Place::Moved(StatusCode::FOUND, base.to_owned())
        } else if format!("{plain}/") == base {
            Place::Moved(StatusCode::MOVED_PERMANENTLY, base.to_owned())
        } else {
            Place::Nowhere
        };
    };
    if !is_plain(path) {
        return Place::Nowhere;
    }
    let folder = path.is_empty() || path.ends_with('/');
    let Some(real) = inside(root, &root.join(path)) else {
        return Place::Nowhere;
    };
    match (folder, real.is_dir()) {
        (true, true) => match inside(root, &real.join("index.html")) {
            Some(page) if page.is_file() => Place::File {
                path: format!("{path}index.html"),
                real: page,
            },
            _ => Place::Nowhere,
        },
        (false, true) if real.join("index.html").is_file() => {
            Place::Moved(StatusCode::MOVED_PERMANENTLY, format!("{address}/"))
        }
        (false, false) if path == "index.html" || path.ends_with("/index.html") => {
            // Its letters may be encoded in the address; the folder ends where its last slash stands.
            let folder = address.rfind('/').map_or("/", |at| &address[..=at]);
            Place::Moved(StatusCode::MOVED_PERMANENTLY, folder.to_owned())
        }
        (false, false) if real.is_file() => Place::File {
            path: path.to_owned(),
            real,
        },
        _ => Place::Nowhere,
    }
}

/// Whether each name of a path is one: none is empty, begins with a dot, or has a sign in it that some system takes for
/// more than a letter.
fn is_plain(path: &str) -> bool {
    let names = path.strip_suffix('/').unwrap_or(path);
    let plain = |name: &str| {
        let odd = |c: char| c.is_control() || matches!(c, '\\' | ':');
        !name.is_empty() && !name.starts_with('.') && !name.contains(odd)
    };
    path.is_empty() || names.split('/').all(plain)
}

/// A path with every link followed, where it lies in the folder, and nowhere in it in a hidden place.
fn inside(root: &Path, path: &Path) -> Option<PathBuf> {
    let real = path.canonicalize().ok()?;
    let rest = real.strip_prefix(root).ok()?;
    let hidden = |name: &std::ffi::OsStr| name.to_string_lossy().starts_with('.');
    (!rest.iter().any(hidden)).then_some(real)
}
