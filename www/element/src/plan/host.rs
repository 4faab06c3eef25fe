//! What the host says, sets and hears.

use super::Plan;
use crate::boundary;
use crate::climate;
use crate::device;
use crate::dom;
use crate::kept::Begin;
use crate::object;
use crate::plans;
use crate::today::today;
use crate::towns;
use calc::quantity::Units;
use calc::question::{StemTyped, Text, Typed, read};
use calc_view::form::{Options, Sheet, View};
use calc_view::html;
use calc_view::kind::Kind;
use js_sys::Object;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{CustomEvent, CustomEventInit};

impl Plan {
    pub(super) fn attribute(&self, name: &str) -> String {
        self.host.get_attribute(name).unwrap_or_default()
    }

    pub(super) fn lang(&self) -> String {
        let near = self.host.closest("[lang]").ok().flatten();
        let root = || self.document.document_element();
        near.or_else(root)
            .and_then(|element| element.get_attribute("lang"))
            .unwrap_or_default()
    }

    pub(super) fn heading_level(&self) -> u8 {
        match self.attribute("heading-level").trim() {
            "2" => 2,
            "4" => 4,
            "5" => 5,
            _ => 3,
        }
    }

    /// The form as the host's attributes preset it.
    pub(crate) fn preset(&self) -> Sheet {
        let text = |name: &str| {
            Some(self.attribute(name))
                .filter(|text| !text.is_empty())
                .map(Text)
        };
        let own = self.settings();
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

    pub(super) fn with_view<T>(&self, sheet: &Sheet, look: impl FnOnce(&View<'_>) -> T) -> T {
        let lang = self.lang();
        let group = self.group();
        let options = Options {
            group: group.as_ref(),
            lang: &lang,
            kind: self.kind,
            heading_level: self.heading_level(),
            today: today(),
            local: climate::local,
            answered: self.state.borrow().answered,
            country: &device::country(),
            towns: towns::can_be_had().then_some(towns::find),
            position: device::has_position(),
            near: towns::near,
            keeps: self.keeps(),
        };
        look(&View::new(calc_data::reference(), sheet, &options))
    }

    pub(crate) fn options<'a>(&self, sources: &'a str) -> html::Options<'a> {
        html::Options {
            // Under the heading that is the calculator's own question.
            heading_level: self.heading_level() + u8::from(self.kind != Kind::TreePlan),
            kind: self.kind,
            id_prefix: "",
            sources_base: sources,
            with_form: true,
            with_buttons: self.attribute("print") != "none",
            with_link: self.shares(),
        }
    }

    /// A question for events: without coordinates, unless the host asks for them.
    pub(super) fn public(&self, typed: &Typed) -> JsValue {
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

    pub(super) fn told_input(&self, changed: &str) {
        let detail = Object::new();
        boundary::set(&detail, "inputs", &self.public(&self.typed()));
        boundary::set(&detail, "changed", &changed.into());
        self.tell("slipbark-input", &detail);
        self.keep();
    }

    pub(crate) fn tell(&self, name: &str, detail: &JsValue) {
        self.ask(name, detail, false);
    }

    /// Tells of what is about to happen. False where the host keeps it from happening.
    pub(crate) fn ask(&self, name: &str, detail: &JsValue, may_stop: bool) -> bool {
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
            .map_err(|problem| plans::type_error(&calc_view::problem_text(&problem)))?;
        self.draw(&Sheet::of(calc_data::reference(), &typed, today()));
        self.state.borrow_mut().given = Some(typed);
        if self.state.borrow().answered {
            self.work_out(false);
        }
        Ok(())
    }

    /// The last answer.
    pub fn result(&self) -> JsValue {
        if let Some(result) = &self.state.borrow().result {
            return result.clone();
        }
        let result = self.with_last(|_, answer| boundary::answer_object(answer));
        self.state.borrow_mut().result.clone_from(&result);
        result.unwrap_or(JsValue::NULL)
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
        let sheet = self.preset();
        self.begin_with(Begin {
            sheet,
            answered: false,
            shared: false,
        });
    }

    /// The focus into the first field.
    pub fn focus_first(&self) {
        if let Some(first) = dom::by_id(&self.root, "f-find") {
            dom::focus(&first);
        }
    }
}
