//! Just enough of HTTP/1.1 to hand out files that are in memory: GET and HEAD,
//! compression, validators, connections that stay open.

use crate::assets::File;
use crate::headers;
use crate::pages::POLICY;
use flate2::{Compression, write::GzEncoder};
use std::collections::BTreeMap;
use std::io::{BufRead, BufReader, Read as _, Write};

/// No request line and headers of a browser are longer.
const LONGEST_HEAD: u64 = 32 * 1024;

/// A file as it is sent.
struct Entry {
    bytes: Vec<u8>,
    /// Compressed, when that is smaller.
    gzip: Option<Vec<u8>>,
    path: String,
    /// Whether it is a page that states our policy itself: a folder that is served as it is may
    /// hold pages of other people.
    states_policy: bool,
    tag: String,
}

/// The files of one site under its base path. Only what is in this map can be
/// sent, so no path leads out of it.
pub struct Files {
    base: String,
    entries: BTreeMap<String, Entry>,
}

/// What a client asked for.
struct Request {
    method: String,
    target: String,
    gzip: bool,
    close: bool,
    none_match: Option<String>,
}

impl Files {
    /// Prepares `files` to be served under `base`.
    pub fn new(base: &str, files: &[File]) -> Self {
        let entries = files
            .iter()
            .map(|file| (format!("{base}{}", file.address()), entry(file)));
        Self {
            base: base.to_owned(),
            entries: entries.collect(),
        }
    }

    /// Answers requests on one connection until it is closed.
    ///
    /// # Errors
    /// When the connection breaks; the client has gone and nobody need be told.
    pub fn answer_all(&self, stream: &std::net::TcpStream) -> std::io::Result<()> {
        let mut reader = BufReader::new(stream);
        let mut writer = stream;
        loop {
            let Some(request) = read_request(&mut reader)? else {
                return Ok(());
            };
            writer.write_all(&self.answer(&request))?;
            writer.flush()?;
            if request.close {
                return Ok(());
            }
        }
    }

    fn answer(&self, request: &Request) -> Vec<u8> {
        if request.method != "GET" && request.method != "HEAD" {
            let line = "405 Method Not Allowed";
            return respond(
                request,
                line,
                &["Allow: GET, HEAD".into()],
                b"Only GET and HEAD are answered here.\n",
            );
        }
        // Question marks and what follows never choose a file here.
        let path = request.target.split(['?', '#']).next().unwrap_or_default();
        if let Some(entry) = self.entries.get(path) {
            return self.send(request, "200 OK", entry);
        }
        // A folder without its slash, or a page by its file's name: the page has one address.
        let folder = path
            .strip_suffix("index.html")
            .map_or_else(|| format!("{path}/"), str::to_owned);
        if self.entries.contains_key(&folder) {
            let headers = [format!("Location: {folder}")];
            return respond(request, "301 Moved Permanently", &headers, b"");
        }
        if self.base != "/" && path == "/" {
            let headers = [format!("Location: {}", self.base)];
            return respond(request, "302 Found", &headers, b"");
        }
        match self.entries.get(&format!("{}404.html", self.base)) {
            Some(page) => self.send(request, "404 Not Found", page),
            None => respond(request, "404 Not Found", &[], b"There is no such page.\n"),
        }
    }

    fn send(&self, request: &Request, status: &str, entry: &Entry) -> Vec<u8> {
        let found = status.starts_with("200");
        let packed = entry.gzip.as_ref().filter(|_| request.gzip);
        let tag = format!(
            "\"{}{}\"",
            entry.tag,
            if packed.is_some() { "-gz" } else { "" }
        );
        let mut headers = vec![
            format!("Content-Type: {}", headers::kind(&entry.path)),
            "Vary: Accept-Encoding".to_owned(),
        ];
        if found {
            headers.push(format!("ETag: {tag}"));
        }
        // What is sent in place of a missing file is not kept as that file would be.
        for (name, value) in headers::of(&entry.path) {
            if name == headers::POLICY_NAME && !entry.states_policy {
                continue;
            }
            headers.push(format!("{name}: {value}"));
        }
        if found
            && request
                .none_match
                .as_ref()
                .is_some_and(|tags| tags.contains(&tag))
        {
            return respond(request, "304 Not Modified", &headers, b"");
        }
        if packed.is_some() {
            headers.push("Content-Encoding: gzip".to_owned());
        }
        respond(request, status, &headers, packed.unwrap_or(&entry.bytes))
    }
}

fn entry(file: &File) -> Entry {
    let mut packer = GzEncoder::new(Vec::new(), Compression::best());
    let gzip = packer
        .write_all(&file.bytes)
        .and_then(|()| packer.finish())
        .ok()
        .filter(|packed| packed.len() < file.bytes.len());
    Entry {
        gzip,
        path: file.path.clone(),
        states_policy: std::str::from_utf8(&file.bytes).is_ok_and(|text| text.contains(POLICY)),
        tag: crate::assets::digest([("", file.bytes.as_slice())])[..16].to_owned(),
        bytes: file.bytes.clone(),
    }
}

/// Reads one request; nothing when the client has closed or does not speak HTTP.
fn read_request(reader: &mut impl BufRead) -> std::io::Result<Option<Request>> {
    let mut head = reader.take(LONGEST_HEAD);
    let mut line = String::new();
    if head.read_line(&mut line)? == 0 {
        return Ok(None);
    }
    let mut words = line.split_whitespace();
    let (Some(method), Some(target), Some(version)) = (words.next(), words.next(), words.next())
    else {
        return Ok(None);
    };
    let mut request = Request {
        method: method.to_owned(),
        target: target.to_owned(),
        gzip: false,
        close: version == "HTTP/1.0",
        none_match: None,
    };
    loop {
        let mut line = String::new();
        if head.read_line(&mut line)? == 0 {
            return Ok(None);
        }
        let line = line.trim_end();
        if line.is_empty() {
            return Ok(Some(request));
        }
        let Some((name, value)) = line.split_once(':') else {
            return Ok(None);
        };
        let value = value.trim();
        match name.to_ascii_lowercase().as_str() {
            "accept-encoding" => {
                request.gzip = value.split(',').any(|way| {
                    let (way, weight) = way.split_once(';').unwrap_or((way, "q=1"));
                    way.trim() == "gzip" && !matches!(weight.trim(), "q=0" | "q=0.0")
                });
            }
            "connection" => request.close |= value.eq_ignore_ascii_case("close"),
            "if-none-match" => request.none_match = Some(value.to_owned()),
            // A body would be read as the next request: answer, then hang up.
            "content-length" | "transfer-encoding" => request.close |= value != "0",
            _ => {}
        }
    }
}

fn respond(request: &Request, status: &str, headers: &[String], body: &[u8]) -> Vec<u8> {
    let mut out = format!("HTTP/1.1 {status}\r\n").into_bytes();
    for header in headers {
        out.extend(header.as_bytes());
        out.extend(b"\r\n");
    }
    if !status.starts_with("304") {
        out.extend(format!("Content-Length: {}\r\n", body.len()).as_bytes());
    }
    if request.close {
        out.extend(b"Connection: close\r\n");
    }
    out.extend(b"\r\n");
    if request.method != "HEAD" {
        out.extend(body);
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    fn files(base: &str) -> Files {
        let page = "<p>tree</p>".repeat(100);
        Files::new(
            base,
            &[
                File::named("index.html", page.as_str()),
                File::named("404.html", "no such page"),
                File::named("sources/index.html", "sources"),
                File {
                    path: "assets/a.0.wasm".into(),
                    bytes: vec![0, 97, 115, 109],
                    hashed: true,
                },
            ],
        )
    }

    fn ask(files: &Files, request: &str) -> (String, Vec<u8>) {
        let request = request.replace('\n', "\r\n");
        let request = read_request(&mut request.as_bytes())
            .unwrap()
            .expect("a request");
        let all = files.answer(&request);
        let split = all.windows(4).position(|four| four == b"\r\n\r\n").unwrap();
        (
            String::from_utf8(all[..split].to_vec()).unwrap(),
            all[split + 4..].to_vec(),
        )
    }

    #[test]
    fn a_page_is_compressed_for_who_can_read_that() {
        let files = files("/");
        let (plain, body) = ask(&files, "GET / HTTP/1.1\n\n");
        assert!(
            plain.starts_with("HTTP/1.1 200 OK") && !plain.contains("gzip"),
            "{plain}"
        );
        let (head, packed) = ask(&files, "GET /?a=b HTTP/1.1\nAccept-Encoding: br, gzip\n\n");
        assert!(
            head.contains("Content-Encoding: gzip") && packed.len() < body.len(),
            "{head}"
        );
        let mut unpacked = Vec::new();
        flate2::read::GzDecoder::new(packed.as_slice())
            .read_to_end(&mut unpacked)
            .unwrap();
        assert_eq!(unpacked, body);
        let (head, _) = ask(&files, "GET / HTTP/1.1\nAccept-Encoding: gzip;q=0\n\n");
        assert!(!head.contains("gzip"), "{head}");
    }

    #[test]
    fn webassembly_has_its_type_may_cross_origins_and_is_kept() {
        let (head, _) = ask(&files("/"), "GET /assets/a.0.wasm HTTP/1.1\n\n");
        for part in [
            "Content-Type: application/wasm",
            "Access-Control-Allow-Origin: *",
            "immutable",
        ] {
            assert!(head.contains(part), "{head}");
        }
    }

    #[test]
    fn our_policy_goes_with_our_pages_and_not_with_those_of_others() {
        let page = |text: &str| Files::new("/", &[File::named("index.html", text)]);
        let ours = page(&format!("<meta content=\"{POLICY}\">"));
        let (head, _) = ask(&ours, "GET / HTTP/1.1\n\n");
        assert!(head.contains(POLICY), "{head}");
        let (head, _) = ask(&page("<p>a host</p>"), "GET / HTTP/1.1\n\n");
        assert!(!head.contains("Content-Security-Policy"), "{head}");
    }

    #[test]
    fn what_is_not_there_is_404_whatever_the_path_tries() {
        let files = files("/");
        for path in [
            "/x",
            "/../Cargo.toml",
            "/%2e%2e/Cargo.toml",
            "//etc/passwd",
            "/assets/",
            "/..\\x",
            "*",
        ] {
            let (head, body) = ask(&files, &format!("GET {path} HTTP/1.1\n\n"));
            assert!(head.starts_with("HTTP/1.1 404"), "{path}: {head}");
            assert_eq!(body, b"no such page", "{path}");
        }
    }

    #[test]
    fn head_has_the_length_and_no_body() {
        let (head, body) = ask(&files("/"), "HEAD /sources/ HTTP/1.1\n\n");
        assert!(
            head.contains("Content-Length: 7") && body.is_empty(),
            "{head}"
        );
    }

    #[test]
    fn other_methods_are_refused_and_the_connection_ends() {
        let (head, _) = ask(&files("/"), "POST / HTTP/1.1\nContent-Length: 5\n\n");
        assert!(
            head.starts_with("HTTP/1.1 405") && head.contains("Allow: GET, HEAD"),
            "{head}"
        );
        assert!(head.contains("Connection: close"), "{head}");
    }

    #[test]
    fn a_page_that_is_known_is_not_sent_again() {
        let files = files("/");
        let (head, _) = ask(&files, "GET /sources/ HTTP/1.1\n\n");
        let tag = head
            .lines()
            .find_map(|line| line.strip_prefix("ETag: "))
            .unwrap();
        let (head, body) = ask(
            &files,
            &format!("GET /sources/ HTTP/1.1\nIf-None-Match: {tag}\n\n"),
        );
        assert!(
            head.starts_with("HTTP/1.1 304") && body.is_empty(),
            "{head}"
        );
    }

    #[test]
    fn a_site_may_live_under_a_path() {
        let files = files("/trees/");
        assert!(
            ask(&files, "GET /trees/ HTTP/1.1\n\n")
                .0
                .starts_with("HTTP/1.1 200")
        );
        assert!(
            ask(&files, "GET /trees HTTP/1.1\n\n")
                .0
                .contains("Location: /trees/")
        );
        assert!(
            ask(&files, "GET / HTTP/1.1\n\n")
                .0
                .contains("Location: /trees/")
        );
        assert!(
            ask(&files, "GET /trees/sources HTTP/1.1\n\n")
                .0
                .contains("Location: /trees/sources/")
        );
        assert!(
            ask(&files, "GET /trees/index.html HTTP/1.1\n\n")
                .0
                .contains("Location: /trees/")
        );
        assert!(
            ask(&files, "GET /sources/ HTTP/1.1\n\n")
                .0
                .starts_with("HTTP/1.1 404")
        );
    }

    #[test]
    fn noise_is_not_a_request() {
        for noise in [
            "",
            "\r\n",
            "hello\r\n\r\n",
            "GET / HTTP/1.1\r\nno colon\r\n\r\n",
        ] {
            assert!(
                read_request(&mut noise.as_bytes()).unwrap().is_none(),
                "{noise:?}"
            );
        }
        let endless = format!("GET / HTTP/1.1\r\nx: {}", "y".repeat(100_000));
        assert!(read_request(&mut endless.as_bytes()).unwrap().is_none());
    }
}
