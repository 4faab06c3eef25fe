//! The WebAssembly module of the page for lists. It runs in a worker and knows no document: what is shown it records,
//! and the page's script plays that back.
//!
//! [`calls`] is what the worker's script calls. `session` is one open list and what is being done with it, in slices, so
//! that a stop is heard between two; `record` is where markup goes; `draft` is what is kept of a list.

pub mod calls;
mod draft;
mod record;
mod session;
