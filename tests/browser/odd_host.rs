//! A server of static files with a habit of its own, as hosts have them: it drops slashes, or changes bytes.

use std::io::{BufRead as _, BufReader, Write as _};
use std::net::{TcpListener, TcpStream};
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};

/// What it does that the site's own server does not.
#[derive(Clone)]
pub(crate) enum Habit {
    /// Each page has an address without a slash and without `.html`, and all others lead there by a redirect.
    DropsSlashes,
    /// A line is added to each file whose path ends so.
    Adds(&'static str),
    /// This header is sent with each file.
    Says(&'static str),
}

/// Such a server, on a port of this machine; it ends with the test.
pub(crate) struct OddHost {
    /// Its origin with a slash.
    pub address: String,
    over: Arc<AtomicBool>,
}

impl OddHost {
    /// Serves a folder on a free port.
    pub(crate) fn of(folder: &Path, habit: &Habit) -> Self {
        let listener = TcpListener::bind("127.0.0.1:0").expect("a free port");
        let port = listener.local_addr().expect("it has an address").port();
        let over = Arc::new(AtomicBool::new(false));
        let (ended, folder, habit) = (over.clone(), folder.to_owned(), habit.clone());
        std::thread::spawn(move || {
            for connection in listener.incoming().flatten() {
                if ended.load(Ordering::SeqCst) {
                    return;
                }
                let (folder, habit) = (folder.clone(), habit.clone());
                std::thread::spawn(move || answer(&connection, &folder, &habit));
            }
        });
        Self {
            address: format!("http://127.0.0.1:{port}/"),
            over,
        }
    }

    /// Stops it: nothing is answered from now on.
    pub(crate) fn stop(&self) {
        if self.over.swap(true, Ordering::SeqCst) {
            return;
        }
        // It waits for a connection; this one lets it see that it is over.
        let address = self.address.trim_start_matches("http://");
        let _ = TcpStream::connect(address.trim_end_matches('/'));
    }
}

impl Drop for OddHost {
    fn drop(&mut self) {
        self.stop();
    }
}

/// What is sent for a request.
enum Sent {
    Moved(String),
    File(u16, PathBuf),
}

fn answer(mut connection: &TcpStream, folder: &Path, habit: &Habit) {
    let mut lines = BufReader::new(connection).lines().map_while(Result::ok);
    let Some(asked) = lines.next() else { return };
    // The request ends with an empty line.
    lines.take_while(|line| !line.is_empty()).for_each(drop);
    let address = asked.split(' ').nth(1).unwrap_or("/");
    let path = address.split('?').next().unwrap_or("/");
    let (head, body) = match find(folder, habit, path) {
        Sent::Moved(to) => (format!("308 Moved\r\nLocation: {to}"), Vec::new()),
        Sent::File(status, file) => {
            let mut bytes = std::fs::read(&file).unwrap_or_default();
            let name = file.to_string_lossy().replace('\\', "/");
            if matches!(habit, Habit::Adds(end) if name.ends_with(end)) {
                bytes.extend(b"\n<!-- seen by the host -->\n");
            }
            let says = match habit {
                Habit::Says(header) => format!("\r\n{header}"),
                _ => String::new(),
            };
            (
                format!("{status} -\r\nContent-Type: {}{says}", kind(&name)),
                bytes,
            )
        }
    };
    let length = body.len();
    let head = format!("HTTP/1.1 {head}\r\nContent-Length: {length}\r\nConnection: close\r\n\r\n");
    let _ = connection.write_all(head.as_bytes());
    let _ = connection.write_all(&body);
}

fn find(folder: &Path, habit: &Habit, path: &str) -> Sent {
    let file = folder.join(path.trim_start_matches('/'));
    if matches!(habit, Habit::DropsSlashes) {
        let bare = path
            .strip_suffix("index.html")
            .or(path.strip_suffix(".html"));
        let bare = bare.unwrap_or(path);
        let bare = if bare == "/" {
            bare
        } else {
            bare.trim_end_matches('/')
        };
        if bare != path {
            return Sent::Moved(bare.to_owned());
        }
        let page = file.with_extension("html");
        if page.is_file() {
            let status = if path == "/404" { 404 } else { 200 };
            return Sent::File(status, page);
        }
    }
    let page = file.join("index.html");
    if page.is_file() {
        return Sent::File(200, page);
    }
    if file.is_file() {
        return Sent::File(200, file);
    }
    Sent::File(404, folder.join("404.html"))
}

fn kind(name: &str) -> &'static str {
    match name.rsplit('.').next().unwrap_or_default() {
        "html" => "text/html; charset=utf-8",
        "js" => "text/javascript",
        "css" => "text/css",
        "wasm" => "application/wasm",
        "svg" => "image/svg+xml",
        "json" | "webmanifest" => "application/json",
        _ => "application/octet-stream",
    }
}
