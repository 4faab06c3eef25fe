//! What the host sets and asks for: the question, the answer, and to begin anew.

use super::{objects, question};
use crate::calculator::{Begin, Calculator};
use crate::device::today;
use calc::question::read;
use calc_view::form::Sheet;
use js_sys::TypeError;
use wasm_bindgen::JsValue;

impl Calculator {
    /// The question that the host's attributes and settings preset.
    pub(crate) fn preset_object(&self) -> JsValue {
        objects::question_object(self.preset_question())
    }

    /// What was typed, as a question.
    pub(crate) fn inputs(&self) -> JsValue {
        objects::question_object(self.typed())
    }

    /// Sets what is typed.
    pub(crate) fn set_inputs(&self, value: &JsValue) -> Result<(), JsValue> {
        if value.is_null() || value.is_undefined() {
            self.reset();
            return Ok(());
        }
        let typed = question::typed(value)
            .map_err(|problem| TypeError::new(&calc_view::problem_text(&problem)))?;
        self.draw(&Sheet::of(calc_data::reference(), &typed, today()));
        self.state.borrow_mut().hosted.given = Some(typed);
        if self.state.borrow().answered {
            self.work_out(false);
        }
        Ok(())
    }

    /// The last answer as an object, the same one each time.
    pub(crate) fn result(&self) -> JsValue {
        let state = self.state.borrow();
        state.last.as_ref().map_or(JsValue::NULL, |last| {
            last.2
                .get_or_init(|| objects::answer_object(&last.1))
                .clone()
        })
    }

    /// Shows the answer for the host; no focus moves.
    pub(crate) fn compute(&self) -> JsValue {
        self.cancel();
        let typed = self.to_answer();
        let given = match read(calc_data::reference(), &typed) {
            Ok(question) => {
                self.mark(&[]);
                self.state.borrow_mut().answered = true;
                self.show_answer(question, &typed, true);
                self.result()
            }
            Err(problems) => {
                self.no_answer(&problems);
                objects::problems_object(&problems)
            }
        };
        self.show_next();
        given
    }

    /// Back to what the host's attributes say.
    pub(crate) fn reset(&self) {
        self.forget();
        self.begins(false);
        self.begin_with(Begin {
            sheet: self.preset(),
            answered: false,
        });
    }

    /// Begins with a question of this reader's own, or with someone else's.
    pub(crate) fn begins(&self, shared: bool) {
        let hosted = &mut self.state.borrow_mut().hosted;
        hosted.given = None;
        hosted.shared = shared;
    }

    /// Fills what the host has set, and has no control, into what stands in the form.
    pub(crate) fn carry(&self, sheet: &mut Sheet) {
        if let Some(given) = &self.state.borrow().hosted.given {
            sheet.carry(given);
        }
    }
}
