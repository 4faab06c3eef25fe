//! The answer: asked for by the button, then worked out again after each change.

use super::{Plan, SPOKEN_MS, WAIT_MS};
use crate::climate;
use crate::dom::{self, DomOut};
use crate::marks;
use crate::region;
use calc::answer::Answer;
use calc::question::{Problem, Question, Typed, read};
use calc_view::answer;
use std::cell::OnceCell;
use wasm_bindgen::JsCast;

impl Plan {
    /// The button: an answer, or what is missing for one; the focus goes there.
    pub(super) fn press(&self) {
        self.cancel();
        let typed = self.typed();
        match read(calc_data::reference(), &typed) {
            Err(problems) => {
                self.state.borrow_mut().answered = false;
                self.clear_answer();
                self.mark(&problems);
                self.told_problems(&problems);
                if let Ok(Some(summary)) = self.errors.query_selector(".errsum") {
                    dom::focus(&summary);
                }
            }
            Ok(question) => {
                self.mark(&[]);
                self.state.borrow_mut().answered = true;
                self.show_answer(question, &typed, true);
                if let Ok(Some(verdict)) = self.region.query_selector(".say") {
                    let _ = verdict.set_attribute("tabindex", "-1");
                    dom::focus(&verdict);
                }
            }
        }
        self.show_next();
        self.keep();
    }

    pub(crate) fn show_next(&self) {
        if let Ok(Some(next)) = self.form.query_selector("[data-act='next']") {
            dom::show(&next, self.state.borrow().answered);
        }
    }

    pub(super) fn clear_answer(&self) {
        self.state.borrow_mut().last = None;
        self.region.set_text_content(None);
    }

    /// Works out again what is shown: something beside the form has changed.
    pub fn refresh(&self) {
        self.follow_on();
        if self.state.borrow().answered {
            self.work_out(true);
        }
    }

    /// Works the answer out again after a change. The focus stays where it is.
    pub(crate) fn work_out(&self, tell: bool) {
        let typed = self.typed();
        match read(calc_data::reference(), &typed) {
            Ok(question) => self.show_answer(question, &typed, tell),
            Err(problems) => {
                self.clear_answer();
                let mut out = DomOut::new(&self.document);
                region::waits(&mut out, &problems);
                out.into(&self.region);
                self.say(region::WAITS);
                if tell {
                    self.told_problems(&problems);
                }
            }
        }
    }

    pub(crate) fn show_answer(&self, mut question: Question, typed: &Typed, tell: bool) {
        let reference = calc_data::reference();
        question.group = self.group();
        let answer = calc::answer::answer(reference, &question, &climate::local(&question));
        region::draw(self, &question, &answer);
        self.say(&calc_view::status(
            self.kind(),
            reference,
            &question,
            &answer,
        ));
        self.state.borrow_mut().last = Some((question, answer, OnceCell::new()));
        if tell {
            self.told_result(typed);
        }
    }

    /// The last answer with what it answers.
    pub(crate) fn with_last<T>(&self, look: impl FnOnce(&Question, &Answer) -> T) -> Option<T> {
        let state = self.state.borrow();
        let (question, answer, _) = state.last.as_ref()?;
        Some(look(question, answer))
    }

    /// Shows problems above the form and at their fields, or takes them away.
    pub(crate) fn mark(&self, problems: &[Problem]) {
        marks::clear(&self.form);
        let mut out = DomOut::new(&self.document);
        answer::problems(&mut out, problems, &self.options());
        out.into(&self.errors);
        // Some fields share a control with another: the link leads to what is there.
        for link in dom::all(&self.errors, "a") {
            let id = link.get_attribute("data-field").unwrap_or_default();
            if let Some(field) = marks::find(&self.root, &id) {
                let _ = link.set_attribute("href", &["#", &field.id()].concat());
            }
        }
        for problem in problems {
            marks::mark(&self.document, &self.root, problem);
        }
        let fields = problems.iter().map(|problem| problem.field.clone());
        self.state.borrow_mut().marked = fields.collect();
    }

    /// Says one sentence to those who listen.
    pub(crate) fn say(&self, sentence: &str) {
        self.spoke.set(js_sys::Date::now());
        self.status.set_text_content(Some(sentence));
    }

    pub(super) fn soon(&self) {
        self.cancel();
        let since = js_sys::Date::now() - self.spoke.get();
        let wait = WAIT_MS.max((SPOKEN_MS - since) as i32);
        let state = self.state.borrow();
        if let (Some(window), Some(tick)) = (web_sys::window(), &state.tick) {
            let id = window.set_timeout_with_callback_and_timeout_and_arguments_0(
                tick.as_ref().unchecked_ref(),
                wait,
            );
            self.timer.set(id.ok());
        }
    }

    pub(crate) fn cancel(&self) {
        if let (Some(window), Some(id)) = (web_sys::window(), self.timer.take()) {
            window.clear_timeout_with_handle(id);
        }
    }
}
