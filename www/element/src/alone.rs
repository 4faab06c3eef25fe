//! In place of `host` in the single file: the page is the calculator's own. Nobody sets or hears anything, nothing is
//! kept, and there is nothing to fetch.

use crate::climate;
use crate::device;
use crate::dom::call;
use crate::plan::{Begin, Plan};
use crate::today::today;
use calc::question::settings::Group;
use calc::question::{Problem, Typed};
use calc_view::answer;
use calc_view::form::{Options, Sheet, View, none_near};
use calc_view::kind::Kind;
use std::rc::Rc;
use wasm_bindgen::JsValue;
use web_sys::Element;

/// Below the title of the page.
const HEADING_LEVEL: u8 = 2;

impl Plan {
    pub(crate) fn kind(&self) -> Kind {
        Kind::TreePlan
    }

    pub(crate) fn group(&self) -> Option<Group> {
        None
    }

    pub(crate) fn begin(&self) -> Begin {
        Begin {
            sheet: Sheet::new(),
            answered: false,
        }
    }

    /// Looks at the form over a sheet.
    pub(crate) fn with_view<T>(&self, sheet: &Sheet, look: impl FnOnce(&View<'_>) -> T) -> T {
        let options = Options {
            group: None,
            lang: "en",
            kind: self.kind(),
            heading_level: HEADING_LEVEL,
            today: today(),
            local: climate::local,
            answered: self.is_answered(),
            country: "",
            towns: None,
            position: device::has_position(),
            near: none_near,
            keeps: false,
        };
        look(&View::new(calc_data::reference(), sheet, &options))
    }

    /// How answers are shown. No page of sources comes along, so labels of sources are no links.
    pub(crate) fn options(&self) -> answer::Options<'static> {
        answer::Options {
            heading_level: HEADING_LEVEL,
            kind: self.kind(),
            id_prefix: "",
            sources_base: "",
            with_form: true,
            with_buttons: true,
            with_link: false,
        }
    }

    pub(crate) fn print(&self) -> Option<JsValue> {
        call(web_sys::window()?.as_ref(), "print")
    }

    pub(crate) fn picked(&self, _name: &str, _target: &Element) -> Option<String> {
        None
    }

    pub(crate) fn takes_file(&self, _kind: &str, _name: &str, _text: &str) -> bool {
        false
    }

    pub(crate) fn carry(&self, _sheet: &mut Sheet) {}

    pub(crate) fn keep(&self) {}

    pub(crate) fn told_input(&self, _changed: &str) {}

    pub(crate) fn told_result(&self, _typed: &Typed) {}

    pub(crate) fn told_problems(&self, _problems: &[Problem]) {}

    pub(crate) fn act(self: &Rc<Self>, _act: &str, _at: usize) {}
}
