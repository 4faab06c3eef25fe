//! What is sent for what is asked, head by head.

use super::*;
use crate::build::assets::File;
use crate::build::folder;
use crate::build::policy::POLICY;

/// A folder with a site in it, removed at the end.
struct Served {
    whole: PathBuf,
    site: Site,
}

impl Drop for Served {
    fn drop(&mut self) {
        let _ = std::fs::remove_dir_all(&self.whole);
    }
}

/// A site of four files in a folder of the test's own, with things in and beside it that are not to be sent.
fn served(name: &str, base: &str) -> Served {
    let whole = std::env::temp_dir().join(format!("slipbark-sent-{name}-{}", std::process::id()));
    let _ = std::fs::remove_dir_all(&whole);
    let out = whole.join("site");
    let page = "<p>tree</p>".repeat(100);
    let files = [
        File::named("index.html", page.as_str()),
        File::named("404.html", "no such page"),
        File::named("sources/index.html", "sources"),
        File::named("assets/a.0.wasm", [0, 97, 115, 109]),
        File::named("two words.txt", "ten letters"),
    ];
    folder::write(
        &out,
        &files,
        chrono::NaiveDate::default(),
        &whole.join("packed"),
    )
    .unwrap();
    std::fs::write(whole.join("secret.txt"), "secret").unwrap();
    for hidden in [".git", "assets/.well"] {
        std::fs::create_dir_all(out.join(hidden)).unwrap();
        std::fs::write(out.join(hidden).join("config"), "secret").unwrap();
    }
    std::fs::write(out.join("assets/.env"), "secret").unwrap();
    #[cfg(unix)]
    {
        std::os::unix::fs::symlink(whole.join("secret.txt"), out.join("link.txt")).unwrap();
        std::os::unix::fs::symlink(&whole, out.join("up")).unwrap();
        std::os::unix::fs::symlink(out.join(".git/config"), out.join("shown.txt")).unwrap();
        std::os::unix::fs::symlink(out.join("two words.txt"), out.join("inner.txt")).unwrap();
    }
    let site = Site::new(base, &out).unwrap();
    Served { whole, site }
}

/// Status, headers and body of a request's answer.
struct Sent {
    status: u16,
    headers: HeaderMap,
    body: Vec<u8>,
}

impl Sent {
    fn header(&self, name: &str) -> &str {
        let value = self.headers.get(name).map(|it| it.to_str().unwrap());
        value.unwrap_or("")
    }
}

/// Asks as in `GET /path`, with headers as in `Range: bytes=0-3`; the host is this machine unless one is named.
fn ask(served: &Served, request: &str, headers: &[&str]) -> Sent {
    let (method, path) = request.split_once(' ').unwrap();
    let mut asked = Request::builder().method(method).uri(path);
    for header in headers {
        let (name, value) = header.split_once(": ").unwrap();
        asked = asked.header(name, value);
    }
    if !headers.iter().any(|header| header.starts_with("Host")) {
        asked = asked.header("Host", "127.0.0.1:4747");
    }
    let runtime = tokio::runtime::Builder::new_current_thread()
        .enable_all()
        .build()
        .unwrap();
    runtime.block_on(async {
        let response = served.site.answer(asked.body(()).unwrap()).await;
        let (head, body) = response.into_parts();
        Sent {
            status: head.status.as_u16(),
            headers: head.headers,
            body: body.collect().await.unwrap().to_bytes().to_vec(),
        }
    })
}

#[test]
fn a_page_is_sent_packed_to_who_can_read_that() {
    let site = served("packed", "/");
    let plain = ask(&site, "GET /", &[]);
    assert_eq!((plain.status, plain.header("content-encoding")), (200, ""));
    assert_eq!(plain.header("content-length"), plain.body.len().to_string());
    for (accepts, way) in [
        ("br, gzip", "br"),
        ("gzip, deflate, br, zstd", "br"),
        ("gzip", "gzip"),
        ("br;q=0, gzip;q=0.5", "gzip"),
        ("gzip;q=0", ""),
        ("identity", ""),
    ] {
        let sent = ask(
            &site,
            "GET /?a=b",
            &[&format!("Accept-Encoding: {accepts}")],
        );
        assert_eq!(
            (sent.status, sent.header("content-encoding")),
            (200, way),
            "{accepts}"
        );
        assert_eq!(sent.header("vary"), "Accept-Encoding");
        assert_eq!(sent.header("content-type"), "text/html; charset=utf-8");
        let mut body = Vec::new();
        match way {
            "br" => brotli::BrotliDecompress(&mut &*sent.body, &mut body).unwrap(),
            "gzip" => {
                let mut reader = flate2::read::GzDecoder::new(&*sent.body);
                io::Read::read_to_end(&mut reader, &mut body).unwrap();
            }
            _ => body.clone_from(&sent.body),
        }
        assert_eq!(body, plain.body, "{accepts}");
    }
}

#[test]
fn what_was_packed_of_an_older_file_is_not_sent() {
    let site = served("older", "/");
    std::thread::sleep(std::time::Duration::from_millis(20));
    std::fs::write(site.whole.join("site/index.html"), "changed by hand").unwrap();
    let sent = ask(&site, "GET /", &["Accept-Encoding: br, gzip"]);
    assert_eq!(sent.body, b"changed by hand");
    assert_eq!(sent.header("content-encoding"), "");
}

#[test]
fn webassembly_has_its_type_may_cross_origins_and_is_kept() {
    let sent = ask(&served("wasm", "/"), "GET /assets/a.0.wasm", &[]);
    assert_eq!(sent.header("content-type"), "application/wasm");
    assert_eq!(sent.header("access-control-allow-origin"), "*");
    assert!(sent.header("cache-control").contains("immutable"));
    assert_eq!(sent.header("x-content-type-options"), "nosniff");
}

#[test]
fn our_policy_goes_with_our_pages_and_not_with_those_of_others() {
    let site = served("policy", "/");
    let sent = ask(&site, "GET /", &[]);
    assert_eq!(sent.header("content-security-policy"), "");
    let ours = format!("<meta content=\"{}\">", *POLICY);
    std::fs::write(site.whole.join("site/index.html"), ours).unwrap();
    let sent = ask(&site, "GET /", &[]);
    assert_eq!(sent.header("content-security-policy"), *POLICY);
}

#[test]
fn what_is_not_there_is_hidden_or_lies_outside_is_404_whatever_the_path_tries() {
    let site = served("outside", "/");
    for path in [
        "/x",
        "/../secret.txt",
        "/%2e%2e/secret.txt",
        "/sources/..%2f..%2fsecret.txt",
        "//etc/passwd",
        "/%2fetc/passwd",
        "/..%5csecret.txt",
        "/assets/",
        "/index.html/",
        "/sources//index.html",
        "/.slipbark-files",
        "/.git/config",
        "/assets/.env",
        "/assets/%2eenv",
        "/assets/.well/config",
        "/link.txt",
        "/up/secret.txt",
        "/shown.txt",
        "/a%00b",
        "/%ff",
        "/C:/x",
        "*",
    ] {
        for accepts in ["identity", "br, gzip"] {
            let accepts = format!("Accept-Encoding: {accepts}");
            let sent = ask(
                &site,
                &format!("GET {path}"),
                &[&accepts, "Range: bytes=0-1"],
            );
            assert_eq!(
                (sent.status, &*sent.body),
                (404, &b"no such page"[..]),
                "{path}"
            );
            assert_eq!(sent.header("content-type"), "text/html; charset=utf-8");
            assert_eq!(
                (sent.header("etag"), sent.header("last-modified")),
                ("", "")
            );
        }
    }
}

#[test]
fn a_name_is_decoded_and_a_link_within_the_folder_is_followed() {
    let site = served("decoded", "/");
    let paths: &[&str] = if cfg!(unix) {
        &["/two%20words.txt", "/inner.txt"]
    } else {
        &["/two%20words.txt"]
    };
    for path in paths {
        let sent = ask(&site, &format!("GET {path}"), &[]);
        assert_eq!(
            (sent.status, &*sent.body),
            (200, &b"ten letters"[..]),
            "{path}"
        );
    }
}

/// RFC 9110, 14: pieces, a piece of another version, and one that is not there.
#[test]
fn a_piece_of_a_file_is_sent_where_it_is_asked_for() {
    let site = served("piece", "/");
    let path = "GET /two%20words.txt";
    let whole = ask(&site, path, &[]);
    let tag = format!("If-Range: {}", whole.header("etag"));
    let packed = "Accept-Encoding: br, gzip";
    for held in [vec![packed], vec![packed, &tag]] {
        let sent = ask(&site, path, &[&["Range: bytes=4-6"], &*held].concat());
        assert_eq!((sent.status, &*sent.body), (206, &b"let"[..]));
        assert_eq!(sent.header("content-range"), "bytes 4-6/11");
        assert_eq!(sent.header("etag"), whole.header("etag"));
    }
    let sent = ask(&site, path, &["Range: bytes=-4"]);
    assert_eq!((sent.status, &*sent.body), (206, &b"ters"[..]));
    let sent = ask(
        &site,
        path,
        &["Range: bytes=4-6", "If-Range: \"of another\""],
    );
    assert_eq!((sent.status, sent.body.len()), (200, 11));
    let sent = ask(&site, path, &["Range: bytes=50-60"]);
    assert_eq!(
        (sent.status, sent.header("content-range")),
        (416, "bytes */11")
    );
}

#[test]
fn head_has_the_length_and_no_body() {
    let sent = ask(&served("head", "/"), "HEAD /sources/", &[]);
    assert_eq!((sent.status, sent.header("content-length")), (200, "7"));
    assert!(sent.body.is_empty());
}

#[test]
fn other_methods_are_refused() {
    let site = served("methods", "/");
    for method in ["POST", "PUT", "DELETE", "OPTIONS"] {
        let sent = ask(&site, &format!("{method} /"), &[]);
        assert_eq!(
            (sent.status, sent.header("allow")),
            (405, "GET, HEAD"),
            "{method}"
        );
    }
}

#[test]
fn only_who_asks_for_this_machine_is_answered() {
    let site = served("host", "/");
    for host in [
        "127.0.0.1",
        "localhost",
        "LOCALHOST:4747",
        "[::1]:80",
        "127.0.0.1:1",
    ] {
        assert_eq!(
            ask(&site, "GET /", &[&format!("Host: {host}")]).status,
            200,
            "{host}"
        );
    }
    for host in [
        "trees.example",
        "trees.example:4747",
        "127.0.0.1.trees.example",
        "localhost.example",
        "localhost@trees.example",
        "0.0.0.0",
        "[::2]",
        "",
    ] {
        let sent = ask(&site, "GET /", &[&format!("Host: {host}")]);
        assert_eq!(sent.status, 403, "{host}");
        assert!(
            !String::from_utf8_lossy(&sent.body).contains("tree</p>"),
            "{host}"
        );
    }
    // The whole address in the request's first line counts too (RFC 9112, 3.2.2).
    assert_eq!(ask(&site, "GET http://trees.example/", &[]).status, 403);
    let none = Request::builder().uri("/").body(()).unwrap();
    assert!(
        !is_meant_for_this_machine(&none),
        "a request that names nobody"
    );
}

#[test]
fn a_page_that_is_known_is_not_sent_again() {
    let site = served("known", "/");
    for accepts in [
        "Accept-Encoding: identity",
        "Accept-Encoding: br",
        "Accept-Encoding: gzip",
    ] {
        let first = ask(&site, "GET /", &[accepts]);
        let tag = first.header("etag");
        for known in [tag.to_owned(), format!("\"x\", W/{tag}"), "*".to_owned()] {
            let old = "If-Modified-Since: Thu, 01 Jan 1970 00:00:00 GMT";
            let sent = ask(
                &site,
                "GET /",
                &[accepts, &format!("If-None-Match: {known}"), old],
            );
            assert_eq!((sent.status, sent.body.len()), (304, 0), "{known}");
            assert_eq!(sent.header("etag"), tag);
            assert_eq!(sent.header("cache-control"), first.header("cache-control"));
        }
        let now = "If-Modified-Since: Fri, 01 Jan 2100 00:00:00 GMT";
        let sent = ask(&site, "GET /", &[accepts, "If-None-Match: \"x\"", now]);
        assert_eq!(sent.status, 200, "a tag tells more than a time");
        assert_eq!(ask(&site, "GET /", &[accepts, now]).status, 304);
    }
}

#[test]
fn a_site_may_live_under_a_path() {
    let site = served("base", "/trees/");
    assert_eq!(ask(&site, "GET /trees/", &[]).status, 200);
    for (path, status, location) in [
        ("/trees", 301, "/trees/"),
        ("/", 302, "/trees/"),
        ("/trees/sources", 301, "/trees/sources/"),
        ("/trees/index.html", 301, "/trees/"),
        ("/trees/sources/index.htm%6c", 301, "/trees/sources/"),
    ] {
        let sent = ask(&site, &format!("GET {path}"), &[]);
        assert_eq!(
            (sent.status, sent.header("location")),
            (status, location),
            "{path}"
        );
    }
    assert_eq!(ask(&site, "GET /sources/", &[]).status, 404);
}

/// Over a real connection: what is no request gets an error and the connection ends; a long head is refused.
#[test]
fn noise_ends_the_connection() {
    use std::io::{Read as _, Write as _};
    let served = served("noise", "/");
    let site = Site::new("/", &served.whole.join("site")).unwrap();
    let listener = std::net::TcpListener::bind(("127.0.0.1", 0)).unwrap();
    let address = listener.local_addr().unwrap();
    std::thread::spawn(move || run(listener, site));
    let say = |text: &str| {
        let mut stream = std::net::TcpStream::connect(address).unwrap();
        let patience = std::time::Duration::from_secs(20);
        stream.set_read_timeout(Some(patience)).unwrap();
        // The other side may hang up before all of it is sent.
        let _ = stream.write_all(text.as_bytes());
        let mut answer = Vec::new();
        let _ = stream.read_to_end(&mut answer);
        String::from_utf8_lossy(&answer).into_owned()
    };
    let answer = say("GET / HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n");
    assert!(
        answer.starts_with("HTTP/1.1 200 OK") && answer.ends_with("</p>"),
        "{answer}"
    );
    for noise in ["hello\r\n\r\n", "GET / HTTP/1.1\r\nno colon\r\n\r\n"] {
        assert!(say(noise).starts_with("HTTP/1.1 400"), "{noise:?}");
    }
    let endless = format!("GET / HTTP/1.1\r\nx: {}", "y".repeat(100_000));
    let answer = say(&endless);
    assert!(
        answer.is_empty() || answer.starts_with("HTTP/1.1 431"),
        "{answer}"
    );
}
