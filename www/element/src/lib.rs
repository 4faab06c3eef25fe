//! The WebAssembly module: the calculator's custom element, and the call for programs.
//!
//! The page's script defines the class; each callback of it comes to [`calls`] with the host element. `calculator` is one
//! calculator in one host: its form, its answer, its reader. `host` is what only a page that hosts the element can use:
//! attributes, properties and events, objects in and out, a group's settings, a draft and links.

mod calculator;
pub mod calls;
mod device;
mod dom;
mod export;
mod fetched;
mod host;
