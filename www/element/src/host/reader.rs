//! What the reader does that only a page with a host offers.

use super::kept;
use crate::fields;
use crate::marks;
use crate::plan::Plan;
use calc_view::form::{SEARCHES, filled, has_towns};
use std::rc::Rc;
use web_sys::Element;

impl Plan {
    /// What hangs on a field that was picked: the country of the towns on the region, a point on its town. Gives the
    /// name of what was filled in instead.
    pub(crate) fn picked(&self, name: &str, target: &Element) -> Option<String> {
        if name == "region" {
            self.country_follows();
            return None;
        }
        let value = target.get_attribute("value").unwrap_or_default();
        let texts = filled(name, &value, self.sheet().get("region"));
        for (name, text) in &texts {
            fields::set(&self.form, name, text);
        }
        let (under, _) = texts.first()?.0.rsplit_once('.')?;
        Some(under.to_owned())
    }

    /// The country of the towns follows the region, while no town is typed.
    fn country_follows(&self) {
        let sheet = fields::read(&self.form);
        let country = sheet.get("region").split('-').next().unwrap_or_default();
        for search in SEARCHES.iter().filter(|_| has_towns(country)) {
            if sheet.get(search.name).trim().is_empty() {
                fields::set(&self.form, &search.field(".country"), country);
            }
        }
    }

    /// What a button does that only a page with a host has.
    pub(crate) fn act(self: &Rc<Self>, act: &str, at: usize) {
        match act {
            "region" => self.take_region(at),
            "keep-timed" => self.keep_timed(true),
            "forget-timed" => self.keep_timed(false),
            "link" => kept::copy_link(self),
            "forget" => self.forget_draft(),
            "own" => self.back_to_own(),
            _ => {}
        }
    }

    /// Takes the region that was proposed for the point, and shows where it stands.
    fn take_region(&self, at: usize) {
        let code = self.with_view(&self.sheet(), |view| view.near().get(at).copied());
        if let Some(code) = code {
            self.fill(&[("region", code.to_owned())]);
            self.country_follows();
            marks::go(&self.root, "f-region");
        }
    }
}
