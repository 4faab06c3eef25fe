//! Just enough of HTTP/1.1 to hand out files that are in memory: GET and HEAD,
//! compression, validators, connections that stay open.

use crate::build::assets::File;
use crate::build::headers;
use crate::build::pages::policy;
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
pub(crate) struct Files {
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
    pub(crate) fn new(base: &str, files: &[File]) -> Self {
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
    pub(crate) fn answer_all(&self, stream: &std::net::TcpStream) -> std::io::Result<()> {
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
        states_policy: std::str::from_utf8(&file.bytes)
            .is_ok_and(|text| text.contains(policy(&file.path))),
        tag: crate::build::assets::digest([("", file.bytes.as_slice())])[..16].to_owned(),
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
mod tests;
