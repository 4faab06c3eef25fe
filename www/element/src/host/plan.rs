//! What the host says, sets and hears.

use super::{boundary, object, towns};
use crate::climate;
use crate::device::{self, navigator};
use crate::dom::get;
use crate::plan::{Begin, EVENTS, Plan};
use crate::today::today;
use calc::question::settings::Settings;
use calc::question::{Problem, StemTyped, Text, Typed, read};
use calc::terms::quantity::Units;
use calc_view::answer;
use calc_view::form::{Options, Sheet, View};
use calc_view::kind::Kind;
use js_sys::{Object, TypeError};
use std::cell::Cell;
use std::sync::Arc;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{CustomEvent, CustomEventInit};

thread_local! {
    /// The address of the page of sources.
    static SOURCES: Cell<&'static str> = const { Cell::new("") };
}

/// Keeps the address of the page of sources, once for all calculators of a page.
pub fn locate(sources: String) {
    SOURCES.set(sources.leak());
}

/// What a calculator has from its host.
#[derive(Default)]
pub struct Hosted {
    /// What the host has set as inputs: some of it has no control.
    pub(super) given: Option<Typed>,
    /// Whether the question came with a link: it is not this reader's own.
    pub(super) shared: bool,
    /// The group's own settings.
    pub(super) settings: Option<Arc<Settings>>,
}

impl Plan {
    pub(super) fn attribute(&self, name: &str) -> String {
        self.host.get_attribute(name).unwrap_or_default()
    }

    fn lang(&self) -> String {
        let near = self.host.closest("[lang]").ok().flatten();
        let root = || self.document.document_element();
        near.or_else(root)
            .and_then(|element| element.get_attribute("lang"))
            .unwrap_or_default()
    }

    fn heading_level(&self) -> u8 {
        match self.attribute("heading-level").trim() {
            "2" => 2,
            "4" => 4,
            "5" => 5,
            _ => 3,
        }
    }

    /// Which calculator it is: the element's name says it.
    pub(crate) fn kind(&self) -> Kind {
        Kind::of_element(&self.host.local_name())
    }

    /// The form as the host's attributes preset it.
    pub(crate) fn preset(&self) -> Sheet {
        let text = |name: &str| {
            Some(self.attribute(name))
                .filter(|text| !text.is_empty())
                .map(Text)
        };
        let own = self.state.borrow().hosted.settings.clone();
        let metric = match (
            self.attribute("size-unit").trim(),
            &*self.attribute("units"),
        ) {
            ("cm" | "mm", _) | ("", "metric") => true,
            ("", "") => own
                .as_ref()
                .is_some_and(|own| own.units == Some(Units::Metric)),
            _ => false,
        };
        let typed = Typed {
            version: 1,
            units: Some(Text::from(if metric { "metric" } else { "us" })),
            species: text("species"),
            stems: vec![StemTyped {
                diameter: text("size"),
                ..StemTyped::default()
            }],
            date: text("date"),
            region: text("region").or_else(|| own.as_ref()?.region.clone()),
            place: own.as_ref().and_then(|own| own.place.clone()),
            ..Typed::default()
        };
        let mut sheet = Sheet::of(calc_data::reference(), &typed, today());
        if self.attribute("size").is_empty() {
            // A size that is not given was measured in no way.
            sheet.set("stems.how", "");
        }
        sheet
    }

    /// Looks at the form over a sheet.
    pub(crate) fn with_view<T>(&self, sheet: &Sheet, look: impl FnOnce(&View<'_>) -> T) -> T {
        let lang = self.lang();
        let group = self.group();
        let options = Options {
            group: group.as_ref(),
            lang: &lang,
            kind: self.kind(),
            heading_level: self.heading_level(),
            today: today(),
            local: climate::local,
            answered: self.state.borrow().answered,
            country: &country(),
            towns: towns::can_be_had().then_some(towns::find),
            position: device::has_position(),
            near: towns::near,
            keeps: self.keeps(),
        };
        look(&View::new(calc_data::reference(), sheet, &options))
    }

    /// How answers are shown.
    pub(crate) fn options(&self) -> answer::Options<'static> {
        let kind = self.kind();
        answer::Options {
            // Under the heading that is the calculator's own question.
            heading_level: self.heading_level() + u8::from(kind != Kind::TreePlan),
            kind,
            id_prefix: "",
            sources_base: SOURCES.get(),
            with_form: true,
            with_buttons: self.attribute("print") != "none",
            with_link: self.shares(),
        }
    }

    /// A question for events: without coordinates, unless the host asks for them.
    fn public(&self, typed: &Typed) -> JsValue {
        let mut typed = typed.clone();
        if self.attribute("events") != "full" {
            let seen = typed.leafed_out.as_mut().and_then(|it| it.place.as_mut());
            for place in typed.place.as_mut().into_iter().chain(seen) {
                place.latitude = None;
                place.longitude = None;
                place.elevation = None;
            }
        }
        boundary::question_object(typed)
    }

    /// Tells what was typed, and keeps it.
    pub(crate) fn told_input(&self, changed: &str) {
        let detail = Object::new();
        boundary::set(&detail, "inputs", &self.public(&self.typed()));
        boundary::set(&detail, "changed", &changed.into());
        self.tell("slipbark-input", &detail);
        self.keep();
    }

    /// Tells that an answer stands there.
    pub(crate) fn told_result(&self, typed: &Typed) {
        let detail = Object::new();
        boundary::set(&detail, "inputs", &self.public(typed));
        boundary::set(&detail, "result", &self.result());
        self.tell("slipbark-result", &detail);
    }

    /// Tells why no answer stands there.
    pub(crate) fn told_problems(&self, problems: &[Problem]) {
        self.tell("slipbark-invalid", &boundary::problems_object(problems));
    }

    /// Tells of a file that is about to be saved. True where the host takes it, and keeps it from being saved here.
    pub(crate) fn takes_file(&self, kind: &str, name: &str, text: &str) -> bool {
        let detail = Object::new();
        for (key, value) in [("kind", kind), ("filename", name), ("text", text)] {
            boundary::set(&detail, key, &value.into());
        }
        !self.ask("slipbark-export", &detail, true)
    }

    pub(super) fn tell(&self, name: &str, detail: &JsValue) {
        self.ask(name, detail, false);
    }

    /// Tells of what is about to happen. False where the host keeps it from happening.
    fn ask(&self, name: &str, detail: &JsValue, may_stop: bool) -> bool {
        if let Some(object) = detail.dyn_ref::<Object>() {
            boundary::set(object, "schema", &1.into());
        }
        let init = CustomEventInit::new();
        init.set_bubbles(true);
        init.set_composed(true);
        init.set_cancelable(may_stop);
        init.set_detail(detail);
        CustomEvent::new_with_event_init_dict(name, &init)
            .and_then(|event| self.host.dispatch_event(&event))
            .unwrap_or(true)
    }

    /// An attribute of the host has changed.
    pub fn attribute_changed(&self, name: &str) {
        let mut sheet = self.sheet();
        match name {
            "species" | "size" | "size-unit" | "date" | "region" => {
                let preset = self.preset();
                let keys: &[&str] = match name {
                    "species" => &["species", "species.kind", "find"],
                    "size" => &["stems[0].diameter", "stems.how"],
                    "size-unit" => &["stems.unit"],
                    "date" => &["day", "date.y", "date.m", "date.d"],
                    _ => &["region"],
                };
                for key in keys {
                    sheet.set(key, preset.get(key));
                }
            }
            "lang" | "units" | "heading-level" | "print" => {}
            _ => return,
        }
        self.draw(&sheet);
        if self.state.borrow().answered {
            self.work_out(false);
        }
    }

    /// What was typed, as a question.
    pub fn inputs(&self) -> JsValue {
        boundary::question_object(self.typed())
    }

    /// Sets what is typed.
    pub fn set_inputs(&self, value: &JsValue) -> Result<(), JsValue> {
        if value.is_null() || value.is_undefined() {
            self.reset();
            return Ok(());
        }
        let typed = object::typed(value)
            .map_err(|problem| TypeError::new(&calc_view::problem_text(&problem)))?;
        self.draw(&Sheet::of(calc_data::reference(), &typed, today()));
        self.state.borrow_mut().hosted.given = Some(typed);
        if self.state.borrow().answered {
            self.work_out(false);
        }
        Ok(())
    }

    /// Fills what the host has set, and has no control, into what stands in the form.
    pub(crate) fn carry(&self, sheet: &mut Sheet) {
        if let Some(given) = &self.state.borrow().hosted.given {
            sheet.carry(given);
        }
    }

    /// The last answer as an object, the same one each time.
    pub fn result(&self) -> JsValue {
        let state = self.state.borrow();
        state.last.as_ref().map_or(JsValue::NULL, |last| {
            last.2
                .get_or_init(|| boundary::answer_object(&last.1))
                .clone()
        })
    }

    /// Shows the plan for the host; no focus moves.
    pub fn compute(&self) -> JsValue {
        self.cancel();
        let typed = self.typed();
        match read(calc_data::reference(), &typed) {
            Ok(question) => {
                self.mark(&[]);
                self.state.borrow_mut().answered = true;
                self.show_answer(question, &typed, true);
                self.show_next();
                self.result()
            }
            Err(problems) => {
                self.mark(&problems);
                boundary::problems_object(&problems)
            }
        }
    }

    /// Back to what the host's attributes say.
    pub fn reset(&self) {
        self.forget();
        self.begins(false);
        self.begin_with(Begin {
            sheet: self.preset(),
            answered: false,
        });
    }

    /// Begins with a question of this reader's own, or with someone else's.
    pub(super) fn begins(&self, shared: bool) {
        let hosted = &mut self.state.borrow_mut().hosted;
        hosted.given = None;
        hosted.shared = shared;
    }

    /// Takes the listeners and the clock down. The form stays, so that a host put back goes on.
    pub fn stop(&self) {
        self.cancel();
        let mut state = self.state.borrow_mut();
        if let Some(listener) = state.listener.take() {
            for name in EVENTS {
                let _ = self
                    .body
                    .remove_event_listener_with_callback(name, listener.as_ref().unchecked_ref());
            }
        }
        state.tick = None;
    }
}

/// The country of the reader's language (ISO 3166-1), or nothing: the last part of two capitals.
fn country() -> String {
    let language = navigator().and_then(|navigator| get(&navigator, "language")?.as_string());
    let language = language.unwrap_or_default();
    let capitals = |part: &&str| part.len() == 2 && part.bytes().all(|c| c.is_ascii_uppercase());
    let found = language.split('-').rfind(capitals);
    found.unwrap_or_default().to_owned()
}
