//! What only a page that hosts the element can use: attributes, properties and events, objects in and out, a group's
//! settings, a draft and links.

pub(crate) mod attributes;
mod events;
pub(crate) mod kept;
pub(crate) mod objects;
mod properties;
mod question;
pub(crate) mod settings;

use calc::question::Typed;
use calc::question::settings::Settings;
use std::sync::Arc;

/// What a calculator has from its host.
#[derive(Default)]
pub(crate) struct Hosted {
    /// What the host has set as inputs: some of it has no control.
    pub(crate) given: Option<Typed>,
    /// Whether the question came with a link: it is not this reader's own.
    pub(crate) shared: bool,
    /// The group's own settings.
    pub(crate) settings: Option<Arc<Settings>>,
}
