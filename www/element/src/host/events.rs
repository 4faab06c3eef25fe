//! What the host hears: events, each with what was typed or answered.

use super::objects;
use crate::calculator::Calculator;
use calc::question::{Problem, Typed};
use js_sys::Object;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{CustomEvent, CustomEventInit};

impl Calculator {
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
        objects::question_object(typed)
    }

    /// Tells what was typed, and keeps it.
    pub(crate) fn told_input(&self, changed: &str) {
        let detail = Object::new();
        objects::set(&detail, "inputs", &self.public(&self.typed()));
        objects::set(&detail, "changed", &changed.into());
        self.tell("slipbark-input", &detail);
        self.keep();
    }

    /// Tells that an answer stands there.
    pub(crate) fn told_result(&self, typed: &Typed) {
        let detail = Object::new();
        objects::set(&detail, "inputs", &self.public(typed));
        objects::set(&detail, "result", &self.result());
        self.tell("slipbark-result", &detail);
    }

    /// Tells why no answer stands there.
    pub(crate) fn told_problems(&self, problems: &[Problem]) {
        self.tell("slipbark-invalid", &objects::problems_object(problems));
    }

    /// Tells of a file that is about to be saved. True where the host takes it, and keeps it from being saved here.
    pub(crate) fn takes_file(&self, kind: &str, name: &str, text: &str) -> bool {
        let detail = Object::new();
        for (key, value) in [("kind", kind), ("filename", name), ("text", text)] {
            objects::set(&detail, key, &value.into());
        }
        !self.ask("slipbark-export", &detail, true)
    }

    pub(crate) fn tell(&self, name: &str, detail: &JsValue) {
        self.ask(name, detail, false);
    }

    /// Tells of what is about to happen. False where the host keeps it from happening.
    fn ask(&self, name: &str, detail: &JsValue, may_stop: bool) -> bool {
        if let Some(object) = detail.dyn_ref::<Object>() {
            objects::set(object, "schema", &1.into());
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
}
