//! Takes connections and answers on them, each within limits of time and size: a client that stops speaking or listening
//! is let go.

use super::{Site, say};
use anyhow::{Context, Result};
use http::StatusCode;
use hyper::server::conn::http1;
use hyper::service::service_fn;
use hyper_util::rt::{TokioIo, TokioTimer};
use std::convert::Infallible;
use std::net::TcpListener;
use std::pin::pin;
use std::sync::Arc;
use std::time::Duration;
use tokio::time::timeout;

/// A request's head comes within this time, also the next one on a connection that stays open.
const HEAD: Duration = Duration::from_secs(60);
/// A file is found and opened within this time.
const ANSWER: Duration = Duration::from_secs(30);
/// A connection is asked to end after this time, and left after that much more.
const CONNECTION: Duration = Duration::from_secs(600);
const LAST: Duration = Duration::from_secs(60);
/// No request line and headers of a browser are longer, bytes.
const LONGEST_HEAD: usize = 32 * 1024;

/// Answers on `listener` until the program is stopped.
///
/// # Errors
/// A listener that the system takes away.
pub(crate) fn run(listener: TcpListener, site: Site) -> Result<()> {
    listener.set_nonblocking(true)?;
    let runtime = tokio::runtime::Builder::new_current_thread()
        .enable_all()
        .build()
        .context("the server could not be started")?;
    let site = Arc::new(site);
    runtime.block_on(async move {
        let listener = tokio::net::TcpListener::from_std(listener)?;
        loop {
            let Ok((stream, _)) = listener.accept().await else {
                // No more files may be open for now: some connection will end.
                tokio::time::sleep(Duration::from_millis(50)).await;
                continue;
            };
            let _ = stream.set_nodelay(true);
            tokio::spawn(answer_all(stream, Arc::clone(&site)));
        }
    })
}

/// Answers on one connection until it is closed or its time is over.
async fn answer_all(stream: tokio::net::TcpStream, site: Arc<Site>) {
    let answer = service_fn(|request| {
        let site = Arc::clone(&site);
        async move {
            let late = "That took too long. Ask again.\n";
            let answer = timeout(ANSWER, site.answer(request)).await;
            Ok::<_, Infallible>(
                answer.unwrap_or_else(|_| say(StatusCode::SERVICE_UNAVAILABLE, late)),
            )
        }
    });
    let mut connection = pin!(
        http1::Builder::new()
            .timer(TokioTimer::new())
            .header_read_timeout(HEAD)
            .max_buf_size(LONGEST_HEAD)
            .serve_connection(TokioIo::new(stream), answer)
    );
    // A connection that breaks has nobody left to be told.
    if timeout(CONNECTION, connection.as_mut()).await.is_err() {
        connection.as_mut().graceful_shutdown();
        let _ = timeout(LAST, connection).await;
    }
}
