//! The kit behind the servers that it has ready files for, as Debian has them: nginx, without and with its module for
//! brotli, and Apache. Each sends what the built-in server sends, packed.

use crate::browser::in_browser;
use crate::kit::unpacked;
use crate::site::Server;
use std::collections::BTreeMap;
use std::io::{Read as _, Write as _};
use std::net::{TcpListener, TcpStream};
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};

/// A server of somebody else's that runs for a test.
struct Foreign {
    process: Child,
    port: u16,
}

impl Drop for Foreign {
    fn drop(&mut self) {
        // Asked to end, so that it ends its own helpers too.
        let _ = Command::new("kill")
            .arg(self.process.id().to_string())
            .status();
        let _ = self.process.wait();
    }
}

/// A port that was free a moment ago.
fn free_port() -> u16 {
    let listener = TcpListener::bind("127.0.0.1:0").expect("a free port");
    listener.local_addr().expect("it has an address").port()
}

/// Starts a server and waits until it takes connections.
fn started(program: &str, arguments: &[&str], port: u16) -> Foreign {
    let process = Command::new(program)
        .args(arguments)
        .stdout(Stdio::null())
        .spawn()
        .unwrap_or_else(|error| {
            panic!("{program} could not be started: install it, or run tests/all. ({error})")
        });
    let server = Foreign { process, port };
    for _ in 0..200 {
        if TcpStream::connect(("127.0.0.1", port)).is_ok() {
            return server;
        }
        std::thread::sleep(std::time::Duration::from_millis(50));
    }
    panic!("{program} takes no connection");
}

/// The kit in the folder `trees` of a server's own folder, as its README says; gives the kit and that folder.
fn in_a_folder(test: &str) -> (PathBuf, PathBuf) {
    let kit = unpacked(test);
    let root = kit.join("root");
    std::fs::create_dir_all(&root).expect("a folder");
    std::fs::rename(kit.join("site"), root.join("trees")).expect("moved");
    (kit, root)
}

fn nginx(test: &str, brotli: bool) -> (Foreign, PathBuf) {
    let (kit, root) = in_a_folder(test);
    let piece = std::fs::read_to_string(kit.join("nginx.conf")).expect("it is in the kit");
    let mut piece = piece
        .replace(
            "error_page 404 /404.html;",
            "error_page 404 /trees/404.html;",
        )
        .replace("location / {", "location /trees/ {");
    let mut module = "";
    if brotli {
        module = "load_module /usr/lib/nginx/modules/ngx_http_brotli_static_module.so;";
        piece = piece.replace("#brotli_static on;", "brotli_static on;");
    }
    std::fs::write(kit.join("nginx.conf"), piece).expect("written");
    let (port, own) = (free_port(), kit.display());
    let temporary: String = ["client_body", "proxy", "fastcgi", "uwsgi", "scgi"]
        .iter()
        .map(|name| format!("{name}_temp_path {own}/{name};"))
        .collect();
    // It reads the files as whoever runs the check.
    let user = if is_root() { "user root;" } else { "" };
    let text = format!(
        "{module} {user} daemon off; pid {own}/pid; error_log stderr; events {{}}\n\
         http {{ include /etc/nginx/mime.types; access_log off; {temporary}\n\
         server {{ listen 127.0.0.1:{port}; root {root}; include {own}/nginx.conf; }} }}\n",
        root = root.display()
    );
    let file = kit.join("whole.conf");
    std::fs::write(&file, text).expect("written");
    let arguments = [
        "-p",
        &own.to_string(),
        "-e",
        "stderr",
        "-c",
        &file.display().to_string(),
    ];
    (started("nginx", &arguments, port), root)
}

fn apache(test: &str) -> (Foreign, PathBuf) {
    let (kit, root) = in_a_folder(test);
    let file = root.join("trees/.htaccess");
    let text = std::fs::read_to_string(&file).expect("it is in the kit");
    let text = text.replace(
        "ErrorDocument 404 /404.html",
        "ErrorDocument 404 /trees/404.html",
    );
    std::fs::write(file, text).expect("written");
    let (port, own) = (free_port(), kit.display());
    let modules: String = [
        "mpm_event",
        "authz_core",
        "mime",
        "dir",
        "headers",
        "rewrite",
        "filter",
        "deflate",
    ]
    .iter()
    .map(|name| format!("LoadModule {name}_module /usr/lib/apache2/modules/mod_{name}.so\n"))
    .collect();
    let text = format!(
        "{modules}ServerRoot {own}\nServerName localhost\nListen 127.0.0.1:{port}\nPidFile {own}/pid\nErrorLog {own}/errors\n\
         {user}DefaultRuntimeDir {own}\nMutex file:{own} default\nTypesConfig /etc/mime.types\nDocumentRoot {root}\n\
         <Directory {root}>\nAllowOverride All\nRequire all granted\nOptions FollowSymLinks\n</Directory>\n",
        user = if is_root() {
            "User www-data\nGroup www-data\n"
        } else {
            ""
        },
        root = root.display()
    );
    let file = kit.join("whole.conf");
    std::fs::write(&file, text).expect("written");
    (
        started(
            "apache2",
            &["-D", "FOREGROUND", "-f", &file.display().to_string()],
            port,
        ),
        root,
    )
}

fn is_root() -> bool {
    let id = Command::new("id")
        .arg("-u")
        .output()
        .expect("`id` can be started");
    id.stdout == b"0\n"
}

/// What a server sends: the status, headers by small names, the body.
type Sent = (u16, BTreeMap<String, String>, Vec<u8>);

fn get(port: u16, path: &str, takes: &str) -> Sent {
    let mut connection = TcpStream::connect(("127.0.0.1", port)).expect("it listens");
    let asked = format!(
        "GET {path} HTTP/1.1\r\nHost: 127.0.0.1:{port}\r\nAccept-Encoding: {takes}\r\nConnection: close\r\n\r\n"
    );
    connection
        .write_all(asked.as_bytes())
        .expect("it takes a question");
    let mut all = Vec::new();
    connection.read_to_end(&mut all).expect("it answers");
    let end = all
        .windows(4)
        .position(|it| it == b"\r\n\r\n")
        .expect("a head");
    let head = String::from_utf8_lossy(&all[..end]).into_owned();
    let mut lines = head.lines();
    let status = lines
        .next()
        .and_then(|line| line.split(' ').nth(1)?.parse().ok());
    let mut headers: BTreeMap<String, String> = BTreeMap::new();
    for (name, value) in lines.filter_map(|line| line.split_once(": ")) {
        let before = headers.insert(name.to_lowercase(), value.to_owned());
        assert_eq!(before, None, "{path}: {name} is sent twice");
    }
    let body = &all[end + 4..];
    let body = match headers.get("transfer-encoding") {
        Some(_) => joined(body),
        None => body.to_vec(),
    };
    (status.expect("a status"), headers, body)
}

/// A body that was sent in chunks (RFC 9112, 7.1), in one piece.
fn joined(mut chunks: &[u8]) -> Vec<u8> {
    let mut body = Vec::new();
    loop {
        let line = chunks.windows(2).position(|it| it == b"\r\n");
        let line = line.expect("the length of a chunk");
        let length = String::from_utf8_lossy(&chunks[..line]).into_owned();
        let length = usize::from_str_radix(length.trim(), 16).expect("a number to base 16");
        if length == 0 {
            return body;
        }
        body.extend_from_slice(&chunks[line + 2..][..length]);
        chunks = &chunks[line + 2 + length + 2..];
    }
}

fn unpack(headers: &BTreeMap<String, String>, body: &[u8]) -> Vec<u8> {
    let mut plain = Vec::new();
    match headers.get("content-encoding").map(String::as_str) {
        Some("br") => {
            brotli::BrotliDecompress(&mut &*body, &mut plain).expect("brotli");
        }
        Some("gzip") => {
            flate2::read::GzDecoder::new(body)
                .read_to_end(&mut plain)
                .expect("gzip");
        }
        None => plain = body.to_vec(),
        Some(other) => panic!("{other}"),
    }
    plain
}

fn files_in(folder: &Path, found: &mut Vec<PathBuf>) {
    for entry in std::fs::read_dir(folder).expect("a folder").flatten() {
        let path = entry.path();
        if path.is_dir() {
            files_in(&path, found);
        } else {
            found.push(path);
        }
    }
}

/// Every file of the kit has the headers that the built-in server sends, the right bytes, and where there is a packed
/// file beside it, that one for those who take it.
fn expect_every_file(server: &Foreign, root: &Path, packed: &str) {
    let own = Server::of(&root.join("trees"), 0);
    let mut files = Vec::new();
    files_in(&root.join("trees"), &mut files);
    let ending = if packed == "br" { "br" } else { "gz" };
    let (mut count, mut small) = (0, 0);
    for file in files {
        let path = file
            .strip_prefix(root.join("trees"))
            .expect("inside")
            .to_string_lossy()
            .into_owned();
        let is_packed = path.ends_with(".br") || path.ends_with(".gz");
        if is_packed || path == ".htaccess" || path == "_headers" {
            continue;
        }
        let address = path.strip_suffix("index.html").unwrap_or(&path);
        let bytes = std::fs::read(&file).expect("a file");
        let (_, expected, _) = get(own.port(), &format!("/{address}"), "identity");
        for takes in ["identity", packed] {
            let (status, headers, body) = get(server.port, &format!("/trees/{address}"), takes);
            assert_eq!(status, 200, "{address}");
            assert_eq!(unpack(&headers, &body), bytes, "{address} for {takes}");
            for name in [
                "cache-control",
                "content-security-policy",
                "access-control-allow-origin",
                "cross-origin-resource-policy",
                "x-content-type-options",
                "referrer-policy",
            ] {
                assert_eq!(
                    headers.get(name),
                    expected.get(name),
                    "{address} for {takes}: {name}"
                );
            }
            let kind = |headers: &BTreeMap<String, String>| {
                let kind = headers.get("content-type").map(String::as_str);
                kind.unwrap_or("application/octet-stream")
                    .split(';')
                    .next()
                    .unwrap_or_default()
                    .to_owned()
            };
            if [
                ".html",
                ".js",
                ".css",
                ".wasm",
                ".webmanifest",
                ".json",
                ".svg",
            ]
            .iter()
            .any(|end| path.ends_with(end))
            {
                assert_eq!(kind(&headers), kind(&expected), "{address} for {takes}");
            }
            // A page that has no packed file beside it is packed as it is sent.
            if takes == "gzip" && path.ends_with("index.html") {
                let encoding = headers.get("content-encoding").map(String::as_str);
                assert_eq!(encoding, Some("gzip"), "{address}");
            }
            let beside = PathBuf::from(format!("{}.{ending}", file.display()));
            if takes != "identity" && beside.is_file() {
                assert!(
                    headers.contains_key("content-encoding"),
                    "{address} is sent packed"
                );
                assert_eq!(
                    body.len() as u64,
                    beside.metadata().expect("a file").len(),
                    "{address}"
                );
                assert!(
                    headers
                        .get("vary")
                        .is_some_and(|vary| vary.contains("Accept-Encoding")),
                    "{address}"
                );
                small += 1;
            }
        }
        count += 1;
    }
    assert!(count > 60 && small > 50, "{count} files, {small} packed");
    let (status, _, body) = get(server.port, "/trees/no/such/page", packed);
    assert!(
        status == 404 && !body.is_empty(),
        "a page for what is not there"
    );
}

/// A first visit in a browser: it answers, and how many kilobytes it took.
fn expect_a_first_visit(name: &str, server: Foreign) {
    let address = format!("http://127.0.0.1:{}/trees/", server.port);
    let name = name.to_owned();
    in_browser(async move |browser| {
        // What the worker fetches afterwards is no part of it.
        browser
            .devtools(
                "Network.setBypassServiceWorker",
                serde_json::json!({ "bypass": true }),
            )
            .await?;
        browser.open(&address).await?;
        browser.until_ready().await?;
        let bytes = browser
            .run("return [...performance.getEntriesByType('navigation'), ...performance.getEntriesByType('resource')].reduce((sum, it) => sum + it.transferSize, 0);")
            .await?;
        println!("{name}: the first page took {bytes} bytes");
        browser.fill_in_a_tree().await?;
        browser.show_the_answer().await?;
        assert_eq!(browser.outcome().await?, "do");
        browser.expect_quiet().await?;
        browser.expect_requests_only_to(&[&address]).await?;
        // What is not there is said in the site's own dress at any depth, with links that lead home.
        for nowhere in ["no-such-page", "no/such/page/", "es/species/no-such-tree/"] {
            browser.open(&format!("{address}{nowhere}")).await?;
            let dressed = "return [getComputedStyle(document.querySelector('.head nav ul')).listStyleType, document.querySelector('.brand').href];";
            let dressed = browser.run(dressed).await?;
            assert_eq!(dressed[0], "none", "{nowhere}");
            assert_eq!(dressed[1], address.as_str(), "{nowhere}");
            // The page itself, and the note that it asked and waited.
            browser.console().await?;
        }
        crate::offline::expect_every_page(&browser, &address).await?;
        drop(server);
        Ok(())
    });
}

/// Debian's default site has a `location /` of its own, which nginx takes for the same as that of the piece: the piece
/// and the README say that it has to go, and without it nginx starts.
#[test]
#[ignore = "needs nginx; tests/all runs it"]
fn the_piece_for_nginx_says_what_has_to_go_from_debians_default_site() {
    let kit = unpacked("nginx-default");
    let tried = |own: &str| {
        let (kit, port) = (kit.display(), free_port());
        let text = format!(
            "daemon off; pid {kit}/pid; events {{}}\nhttp {{ include /etc/nginx/mime.types; access_log off;\n\
             server {{ listen 127.0.0.1:{port}; root {kit}/site; {own} include {kit}/nginx.conf; }} }}\n"
        );
        let file = format!("{kit}/whole.conf");
        std::fs::write(&file, text).expect("written");
        let said = Command::new("nginx")
            .args(["-t", "-e", "stderr", "-c", &file])
            .output()
            .unwrap_or_else(|error| panic!("nginx could not be started, install it: {error}"));
        let words = String::from_utf8_lossy(&said.stderr).into_owned();
        (said.status.success(), words)
    };
    let (starts, words) = tried("location / { try_files $uri $uri/ =404; }");
    let told = "duplicate location \"/\"";
    assert!(!starts && words.contains(told), "{words}");
    let (starts, words) = tried("");
    assert!(starts, "{words}");
    let piece = std::fs::read_to_string(kit.join("nginx.conf")).expect("it is in the kit");
    assert!(piece.contains(told), "{piece}");
    let readme = std::fs::read_to_string(kit.join("README.txt")).expect("it is in the kit");
    assert!(readme.contains("take its own \"location / {"), "{readme}");
}

#[test]
#[ignore = "needs nginx, Chromium and chromedriver; tests/all runs it"]
fn nginx_sends_the_kit_from_a_folder_packed_by_gzip() {
    let (server, root) = nginx("nginx-gzip", false);
    expect_every_file(&server, &root, "gzip");
    expect_a_first_visit("nginx, gzip", server);
}

#[test]
#[ignore = "needs nginx with its module for brotli, Chromium and chromedriver; tests/all runs it"]
fn nginx_sends_the_kit_from_a_folder_packed_by_brotli() {
    let (server, root) = nginx("nginx-brotli", true);
    expect_every_file(&server, &root, "br");
    expect_a_first_visit("nginx, brotli", server);
}

#[test]
#[ignore = "needs Apache, Chromium and chromedriver; tests/all runs it"]
fn apache_sends_the_kit_from_a_folder_packed() {
    let (server, root) = apache("apache");
    expect_every_file(&server, &root, "gzip");
    expect_every_file(&server, &root, "br");
    expect_a_first_visit("Apache", server);
}
