//! A group's own settings in a page: read from an object, taken or left out as a whole, never half.

use super::objects;
use crate::calculator::{Calculator, controls};
use crate::device::today;
use crate::dom::{self, get};
use calc::question::settings::{AskingGroup, LARGEST, Settings, Told, Value, read};
use calc_view::settings_told;
use calc_view::words::m;
use js_sys::{Array, JsString, Object, Reflect};
use std::sync::Arc;
use wasm_bindgen::{JsCast, JsValue};

/// Nothing that is read lies deeper.
const DEEPEST: usize = 6;
/// The line that says that settings are left out.
const NOTE: &str = "left-out";

/// An object as the reader takes it. What is no JSON, and what lies too deep, is nothing. `left` is how much more is
/// taken, as [`Value::weight`] counts; where that is used up nothing more is converted.
fn value(object: &JsValue, deep: usize, left: &mut Option<usize>) -> Value {
    let text = object.dyn_ref::<JsString>();
    let Some(rest) = left.and_then(|it| it.checked_sub(1 + text.map_or(0, length))) else {
        *left = None;
        return Value::Null;
    };
    *left = Some(rest);
    if let Some(text) = text {
        return Value::Text(text.into());
    }
    if let Some(number) = object.as_f64() {
        return Value::Number(number);
    }
    if let Some(held) = object.as_bool() {
        return Value::Bool(held);
    }
    if deep == 0 || !object.is_object() || object.is_function() {
        return Value::Null;
    }
    if let Some(list) = object.dyn_ref::<Array>() {
        let mut all = Vec::new();
        for it in list.iter() {
            if left.is_none() {
                break;
            }
            all.push(value(&it, deep - 1, left));
        }
        return Value::List(all);
    }
    let plain: &Object = object.unchecked_ref();
    let mut all = Vec::new();
    for key in Object::keys(plain).iter() {
        if left.is_none() {
            break;
        }
        *left = left.and_then(|it| it.checked_sub(key.dyn_ref().map_or(0, length)));
        let inner = Reflect::get(object, &key).unwrap_or(JsValue::NULL);
        let inner = value(&inner, deep - 1, left);
        all.push((key.as_string().unwrap_or_default(), inner));
    }
    Value::Map(all)
}

/// The length of a text in UTF-16: no more than its bytes in UTF-8.
fn length(text: &JsString) -> usize {
    text.length() as usize
}

fn taken(object: &JsValue, list: Option<&str>) -> Result<(Settings, Vec<Told>), Vec<Told>> {
    let mut left = Some(LARGEST);
    let value = value(object, DEEPEST, &mut left);
    if left.is_none() {
        return Err(vec![Told::too_large()]);
    }
    read(calc_data::reference(), &value, list)
}

/// What is told, as `[{path, message, refuses}]`.
fn told_list(told: &[Told]) -> Array {
    let list = Array::new();
    for it in told {
        let object = Object::new();
        objects::set(&object, "path", &it.path.as_str().into());
        objects::set(&object, "message", &settings_told(it).into());
        objects::set(&object, "refuses", &it.refuses().into());
        list.push(&object);
    }
    list
}

/// What is told of settings, without using them.
pub(crate) fn check(object: &JsValue, list: Option<&str>) -> Array {
    match taken(object, list) {
        Ok((_, told)) | Err(told) => told_list(&told),
    }
}

impl Calculator {
    /// The group that questions are asked for.
    pub(crate) fn group(&self) -> Option<AskingGroup> {
        let settings = self.state.borrow().hosted.settings.clone()?;
        Some(AskingGroup {
            settings,
            today: today(),
        })
    }

    /// Takes settings, or none for nothing at all. Those that are refused, or could not be had, leave none behind:
    /// the page says so, and the host hears it. Gives what is told.
    pub(crate) fn take_settings(
        &self,
        object: &JsValue,
        list: Option<&str>,
        failed: bool,
    ) -> Array {
        let nothing = !failed && (object.is_null() || object.is_undefined());
        let result = if failed {
            Err(Vec::new())
        } else if nothing {
            Ok((Settings::default(), Vec::new()))
        } else {
            taken(object, list)
        };
        let refused = result.is_err();
        let (settings, told) = match result {
            Ok((settings, told)) => (Some(settings).filter(|_| !nothing), told_list(&told)),
            Err(told) => (None, told_list(&told)),
        };
        let share = settings.as_ref().is_some_and(|it| it.share == Some(true));
        let before = self.preset();
        self.state.borrow_mut().hosted.settings = settings.map(Arc::new);
        let mut sheet = self.sheet();
        if !self.state.borrow().hosted.shared {
            let now = self.preset();
            // Units say what a number means: those beside one that is typed stay.
            if now.metric() != before.metric() && sheet.get("stems[0].diameter").is_empty() {
                let (from, to) = if now.metric() {
                    ("in", "cm")
                } else {
                    ("cm", "in")
                };
                let read = sheet.measured_as().replace(from, to);
                controls::set(&self.form, "stems.as", &read);
                controls::let_units_follow(&self.form);
                sheet = self.sheet();
            }
            sheet.follow(&before, &now);
        }
        self.note_left_out(refused);
        self.draw(&sheet);
        // A link to a question is read where the settings let links be.
        if share && !self.host.has_attribute("share") && !self.is_answered() {
            let _ = self.host.set_attribute("share", "fragment");
            if self.is_linked() {
                self.begin_with(self.begin());
            }
        }
        if self.is_answered() {
            self.work_out(false);
        }
        if refused {
            let detail = Object::new();
            objects::set(&detail, "code", &"config".into());
            objects::set(&detail, "problems", &told);
            self.tell("slipbark-failure", &detail);
        }
        told
    }

    /// Says above the form that the settings are left out, or takes that back.
    fn note_left_out(&self, out: bool) {
        if let Some(note) = dom::by_id(&self.root, NOTE) {
            note.remove();
        }
        if !out {
            return;
        }
        if let Ok(note) = self.document.create_element("p") {
            note.set_id(NOTE);
            note.set_class_name("own");
            note.set_text_content(Some(&m::GROUP_SETTINGS_LEFT_OUT));
            let first = get(&self.body, "firstChild").map(JsCast::unchecked_into);
            let _ = self.body.insert_before(&note, first.as_ref());
            self.say(&m::GROUP_SETTINGS_LEFT_OUT);
        }
    }
}
