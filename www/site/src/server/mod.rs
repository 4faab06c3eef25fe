//! Hands out a folder on this machine: which file an address means, and with which headers it goes. The file itself is
//! sent by the service of `tower-http`: ranges, the packed file beside it, what is asked only if it changed.

mod listen;
mod place;

pub(crate) use listen::run;

use crate::build::{headers, policy};
use bytes::Bytes;
use http::header::{self, HeaderMap, HeaderName, HeaderValue};
use http::{Method, Request, Response, StatusCode};
use http_body_util::combinators::UnsyncBoxBody;
use http_body_util::{BodyExt as _, Full};
use place::Place;
use std::fs::Metadata;
use std::io;
use std::path::{Path, PathBuf};
use std::time::UNIX_EPOCH;
use tower_http::services::ServeFile;

/// What a response carries.
type Body = UnsyncBoxBody<Bytes, io::Error>;

/// A folder that holds a site.
pub(crate) struct Site {
    base: String,
    /// With every link followed: what lies outside of it is not sent.
    root: PathBuf,
}

impl Site {
    /// The folder `root`, to be served under `base`.
    ///
    /// # Errors
    /// A folder that is not there.
    pub(crate) fn new(base: &str, root: &Path) -> io::Result<Self> {
        Ok(Self {
            base: base.to_owned(),
            root: root.canonicalize()?,
        })
    }

    /// Answers one request.
    async fn answer<B>(&self, request: Request<B>) -> Response<Body> {
        if !is_meant_for_this_machine(&request) {
            return say(
                StatusCode::FORBIDDEN,
                "Ask for 127.0.0.1 or localhost: this server answers to no other name.\n",
            );
        }
        if !matches!(*request.method(), Method::GET | Method::HEAD) {
            let mut refused = say(
                StatusCode::METHOD_NOT_ALLOWED,
                "Only GET and HEAD are answered here.\n",
            );
            let allowed = HeaderValue::from_static("GET, HEAD");
            refused.headers_mut().insert(header::ALLOW, allowed);
            return refused;
        }
        match place::find(&self.root, &self.base, request.uri().path()) {
            Place::File { path, real } => self.send(request, &path, &real).await,
            Place::Moved(status, location) => moved(status, &location),
            Place::Nowhere => self.nowhere(request).await,
        }
    }

    /// Sends a file; `path` is its path in the folder, `real` where it lies.
    async fn send<B>(&self, request: Request<B>, path: &str, real: &Path) -> Response<Body> {
        let Ok(meta) = real.metadata() else {
            return self.nowhere(request).await;
        };
        let mut asked = request.map(|_| ());
        let tag = tag(&meta);
        let whole = keep_what_holds(asked.headers_mut(), &quoted(&tag, ""));
        let known = asked.headers_mut().remove(header::IF_NONE_MATCH);
        let mut response = file(asked, real, &meta, whole).await;
        if !response.status().is_success() && response.status() != StatusCode::NOT_MODIFIED {
            return response;
        }
        let packed = response.headers().get(header::CONTENT_ENCODING);
        let tag = quoted(&tag, packed.and_then(|it| it.to_str().ok()).unwrap_or(""));
        if known.is_some_and(|tags| names(&tags, &tag)) {
            *response.status_mut() = StatusCode::NOT_MODIFIED;
            *response.body_mut() = nothing();
            for of_the_body in [header::CONTENT_LENGTH, header::CONTENT_ENCODING] {
                response.headers_mut().remove(of_the_body);
            }
        }
        self.dress(response.headers_mut(), path, real);
        set(response.headers_mut(), header::ETAG, &tag);
        response
    }

    /// The page that says that there is no such page. It is not kept as the missing file would be.
    async fn nowhere<B>(&self, request: Request<B>) -> Response<Body> {
        let page = "404.html";
        let real = self.root.join(page);
        let Ok(meta) = real.metadata() else {
            return say(StatusCode::NOT_FOUND, "There is no such page.\n");
        };
        let mut asked = request.map(|_| ());
        let of_another = [
            header::RANGE,
            header::IF_MODIFIED_SINCE,
            header::IF_UNMODIFIED_SINCE,
        ];
        for name in of_another {
            asked.headers_mut().remove(name);
        }
        let mut response = file(asked, &real, &meta, true).await;
        if response.status().is_success() {
            *response.status_mut() = StatusCode::NOT_FOUND;
            response.headers_mut().remove(header::LAST_MODIFIED);
            self.dress(response.headers_mut(), page, &real);
        }
        response
    }

    /// The headers that any server of this site sends with a file.
    fn dress(&self, sent: &mut HeaderMap, path: &str, real: &Path) {
        set(sent, header::CONTENT_TYPE, headers::kind(path));
        set(sent, header::VARY, "Accept-Encoding");
        for (name, value) in headers::of(path) {
            // A folder that is served as it is may hold pages of other people.
            if name == headers::POLICY_NAME && !states_policy(path, real) {
                continue;
            }
            if let Ok(name) = HeaderName::from_bytes(name.as_bytes()) {
                set(sent, name, value);
            }
        }
    }
}

/// Whether a request names this machine. A page of another site whose name was made to lead here would name that site,
/// and must not read what is served here as its own.
fn is_meant_for_this_machine<B>(request: &Request<B>) -> bool {
    let named = request.headers().get(header::HOST);
    let named = named.and_then(|host| host.to_str().ok()).map(str::to_owned);
    let asked = request.uri().authority().map(ToString::to_string);
    let mut names = named.iter().chain(&asked).peekable();
    names.peek().is_some() && names.all(|name| is_this_machine(name))
}

/// A loopback name or address, perhaps with a port (RFC 9110, 7.2; RFC 6761, 6.3 for `localhost`).
fn is_this_machine(name: &str) -> bool {
    let host = match name.rsplit_once(':') {
        Some((host, port)) if port.bytes().all(|byte| byte.is_ascii_digit()) => host,
        _ => name,
    };
    host.eq_ignore_ascii_case("localhost") || matches!(host, "127.0.0.1" | "[::1]")
}

/// Which version of a file it is: by its length and the time of its last change.
fn tag(meta: &Metadata) -> String {
    let changed = meta.modified().ok();
    let since = changed.and_then(|time| time.duration_since(UNIX_EPOCH).ok());
    format!("{:x}-{:x}", meta.len(), since.map_or(0, |it| it.as_nanos()))
}

/// A tag as it is sent, with the way that the file is packed.
fn quoted(tag: &str, packed: &str) -> String {
    match packed {
        "" => format!("\"{tag}\""),
        packed => format!("\"{tag}-{packed}\""),
    }
}

/// Whether a list of tags names this one, or any (RFC 9110, 13.1.2).
fn names(tags: &HeaderValue, tag: &str) -> bool {
    let tags = tags.to_str().unwrap_or("");
    let mut each = tags.split(',').map(str::trim);
    each.any(|one| one == "*" || one.trim_start_matches("W/") == tag)
}

/// Leaves of the conditions and ranges those that hold; whether the whole file is asked for, which may be sent packed.
fn keep_what_holds(asked: &mut HeaderMap, tag: &str) -> bool {
    // A tag tells more than a time (RFC 9110, 13.2.2).
    if asked.contains_key(header::IF_NONE_MATCH) {
        asked.remove(header::IF_MODIFIED_SINCE);
    }
    // A piece of another version would not fit (RFC 9110, 13.1.5).
    if asked
        .remove(header::IF_RANGE)
        .is_some_and(|held| held != tag)
    {
        asked.remove(header::RANGE);
    }
    !asked.contains_key(header::RANGE)
}

/// The file as the service sends it, packed where the whole is asked for.
async fn file(asked: Request<()>, real: &Path, meta: &Metadata, whole: bool) -> Response<Body> {
    let mut service = ServeFile::new(real);
    // What is older than its file was packed from another one.
    let fresh = |ending: &str| {
        let mut name = real.as_os_str().to_owned();
        name.push(ending);
        let packed = Path::new(&name).metadata().and_then(|it| it.modified());
        whole && matches!((packed, meta.modified()), (Ok(packed), Ok(made)) if packed >= made)
    };
    if fresh(".br") {
        service = service.precompressed_br();
    }
    if fresh(".gz") {
        service = service.precompressed_gzip();
    }
    match service.try_call(asked).await {
        Ok(response) => response.map(|body| body.map_err(io::Error::other).boxed_unsync()),
        Err(error) => say(
            StatusCode::INTERNAL_SERVER_ERROR,
            &format!("The file could not be read: {error}.\n"),
        ),
    }
}

/// Whether a page states our policy itself, which its header may only repeat.
fn states_policy(path: &str, real: &Path) -> bool {
    std::fs::read_to_string(real).is_ok_and(|page| page.contains(policy::policy(path)))
}

fn moved(status: StatusCode, location: &str) -> Response<Body> {
    let mut response = say(status, "");
    set(response.headers_mut(), header::LOCATION, location);
    response
}

fn say(status: StatusCode, words: &str) -> Response<Body> {
    let body = Full::new(Bytes::copy_from_slice(words.as_bytes()));
    let mut response = Response::new(body.map_err(|never| match never {}).boxed_unsync());
    *response.status_mut() = status;
    set(
        response.headers_mut(),
        header::CONTENT_TYPE,
        headers::kind("x.txt"),
    );
    response
}

fn nothing() -> Body {
    let body = Full::new(Bytes::new());
    body.map_err(|never| match never {}).boxed_unsync()
}

fn set(sent: &mut HeaderMap, name: HeaderName, value: &str) {
    if let Ok(value) = HeaderValue::from_str(value) {
        sent.insert(name, value);
    }
}

#[cfg(test)]
mod tests;
