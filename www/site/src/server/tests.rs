//! What is sent for what is asked, head by head.

use super::*;
use crate::build::pages::POLICY;

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
