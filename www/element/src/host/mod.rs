//! What only a page that hosts the element can use: attributes, properties and events, objects in and out, a group's
//! settings, a draft and links, lists of towns.

mod boundary;
pub mod calls;
mod kept;
mod object;
mod parts;
mod plan;
mod print;
mod reader;
mod settings;
mod towns;

pub use plan::Hosted;
