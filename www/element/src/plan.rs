//! One calculator in one host: its form, its answer, and what the reader does with them.

use crate::boundary;
use crate::climate;
use crate::dom::{self, DomOut};
use crate::fields;
use crate::marks;
use crate::object;
use crate::paper;
use crate::plans;
use crate::region;
use crate::today::today;
use calc::answer::Answer;
use calc::question::{Problem, Question, StemTyped, Text, Typed, read};
use calc_view::form::{Options, Part, Sheet, View};
use calc_view::out::Html;
use calc_view::{field_id, html};
use js_sys::Object;
use std::cell::{Cell, RefCell};
use std::rc::{Rc, Weak};
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{
    CustomEvent, CustomEventInit, Document, Element, Event, HtmlElement, KeyboardEvent, ShadowRoot,
    ShadowRootInit, ShadowRootMode,
};

/// After a change the plan is worked out again so many milliseconds later, if nothing else changes.
const WAIT_MS: i32 = 400;
/// The sentence for those who listen changes at most once in so many milliseconds.
const SPOKEN_MS: f64 = 1000.0;
/// What the calculator listens to.
const EVENTS: [&str; 5] = ["input", "change", "click", "submit", "keydown"];
/// Parts that are drawn anew when what they show has changed.
const TAPES: [Part; 3] = [Part::SizeTape, Part::FarTape, Part::YearTape];

/// A calculator.
pub struct Plan {
    pub(crate) host: HtmlElement,
    pub(crate) root: ShadowRoot,
    pub(crate) document: Document,
    pub(crate) body: Element,
    errors: Element,
    form: Element,
    status: Element,
    pub(crate) region: Element,
    state: RefCell<State>,
    spoke: Cell<f64>,
    timer: Cell<Option<i32>>,
}

#[derive(Default)]
struct State {
    /// What the host has set as inputs: some of it has no control.
    given: Option<Typed>,
    /// Whether an answer was asked for by the button; from then on changes are answered by themselves.
    answered: bool,
    /// The last answer, with what it answers.
    last: Option<(Question, Answer)>,
    /// The last answer as an object.
    result: Option<JsValue>,
    /// Fields that are marked.
    marked: Vec<String>,
    /// The tapes as they are drawn.
    tapes: [String; 3],
    listener: Option<Closure<dyn FnMut(Event)>>,
    tick: Option<Closure<dyn FnMut()>>,
}

impl Plan {
    /// Builds the calculator in the host's shadow root; one that stood there before is taken over with
    /// what was typed.
    pub fn start(host: &HtmlElement) -> Option<Rc<Self>> {
        let document = dom::document()?;
        let kept = host.shadow_root();
        let root = match &kept {
            Some(root) => root.clone(),
            None => host
                .attach_shadow(&ShadowRootInit::new(ShadowRootMode::Open))
                .ok()?,
        };
        let before = kept.and_then(|root| root.query_selector("form").ok()?);
        let sheet = before.map(|form| fields::read(&form));
        let answered = dom::by_id(&root, "answer").is_some_and(|answer| answer.has_child_nodes());
        plans::dress(&root);
        while let Some(old) = root.last_child() {
            let _ = root.remove_child(&old);
        }
        let new = |tag: &str, class: &str| {
            let element = document.create_element(tag).ok()?;
            element.set_class_name(class);
            Some(element)
        };
        let body = new("div", "sb")?;
        let marks = new("div", "defs")?;
        let mut out = DomOut::new(&document);
        calc_view::draw::mark::defs(&mut out);
        out.into(&marks);
        let errors = new("div", "noprint")?;
        let form = new("div", "formbox")?;
        let status = new("p", "vh")?;
        let region = new("div", "result")?;
        let _ = status.set_attribute("role", "status");
        let _ = region.set_attribute("part", "result");
        region.set_id("answer");
        for part in [&marks, &errors, &form, &status, &region] {
            let _ = body.append_child(part);
        }
        let plan = Rc::new(Self {
            host: host.clone(),
            root,
            document,
            body,
            errors,
            form,
            status,
            region,
            state: RefCell::default(),
            spoke: Cell::new(0.0),
            timer: Cell::new(None),
        });
        plan.state.borrow_mut().answered = answered;
        let sheet = sheet.unwrap_or_else(|| plan.preset());
        plan.draw(&sheet);
        plan.listen();
        let _ = plan.root.append_child(&plan.body);
        if answered {
            plan.work_out(false);
        }
        Some(plan)
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

    /// Whether this is the calculator of a host.
    pub fn is_of(&self, host: &HtmlElement) -> bool {
        self.host == *host
    }

    fn listen(self: &Rc<Self>) {
        let weak: Weak<Self> = Rc::downgrade(self);
        let listener = Closure::<dyn FnMut(Event)>::new(move |event: Event| {
            if let Some(plan) = weak.upgrade() {
                plan.event(&event);
            }
        });
        for name in EVENTS {
            let _ = self
                .body
                .add_event_listener_with_callback(name, listener.as_ref().unchecked_ref());
        }
        let weak: Weak<Self> = Rc::downgrade(self);
        let tick = Closure::<dyn FnMut()>::new(move || {
            if let Some(plan) = weak.upgrade() {
                plan.timer.set(None);
                plan.work_out(true);
            }
        });
        let mut state = self.state.borrow_mut();
        state.listener = Some(listener);
        state.tick = Some(tick);
    }

    // What the host says.

    fn attribute(&self, name: &str) -> String {
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

    /// The form as the host's attributes preset it.
    fn preset(&self) -> Sheet {
        let text = |name: &str| {
            Some(self.attribute(name))
                .filter(|text| !text.is_empty())
                .map(Text)
        };
        let metric = match self.attribute("size-unit").trim() {
            "cm" | "mm" => true,
            "" => self.attribute("units") == "metric",
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
            region: text("region"),
            ..Typed::default()
        };
        let mut sheet = Sheet::of(calc_data::reference(), &typed, today());
        if self.attribute("size").is_empty() {
            // A size that is not given was measured in no way.
            sheet.set("stems.how", "");
        }
        sheet
    }

    fn with_view<T>(&self, sheet: &Sheet, look: impl FnOnce(&View<'_>) -> T) -> T {
        let lang = self.lang();
        let options = Options {
            lang: &lang,
            today: today(),
            local: climate::local,
            answered: self.state.borrow().answered,
        };
        look(&View::new(calc_data::reference(), sheet, &options))
    }

    pub(crate) fn options<'a>(&self, sources: &'a str) -> html::Options<'a> {
        html::Options {
            heading_level: self.heading_level(),
            id_prefix: "",
            sources_base: sources,
            with_form: true,
            with_buttons: self.attribute("print") != "none",
        }
    }

    // The form.

    /// What stands in the form.
    fn sheet(&self) -> Sheet {
        let mut sheet = fields::read(&self.form);
        if let Some(given) = &self.state.borrow().given {
            sheet.carry(given);
        }
        sheet
    }

    fn typed(&self) -> Typed {
        self.sheet().typed(calc_data::reference(), today())
    }

    /// Draws the whole form anew.
    fn draw(&self, sheet: &Sheet) {
        let focused = self.focused();
        self.with_view(sheet, |view| {
            let mut out = DomOut::new(&self.document);
            view.form(&mut out);
            out.into(&self.form);
            let mut state = self.state.borrow_mut();
            for (at, part) in TAPES.iter().enumerate() {
                state.tapes[at] = text_of(view, *part);
            }
            state.marked.clear();
        });
        self.errors.set_text_content(None);
        self.focus_again(&focused);
    }

    /// Lets everything that follows the typing follow it; no control is touched.
    fn follow(&self, sheet: &Sheet, parts: &[Part]) {
        let focused = self.focused();
        self.with_view(sheet, |view| {
            for part in parts {
                self.draw_part(view, *part);
            }
            for (id, text) in view.lines() {
                if let Some(line) = dom::by_id(&self.root, id) {
                    if line.text_content().as_deref() != Some(text) {
                        line.set_text_content(Some(text));
                    }
                    dom::show(&line, !text.is_empty());
                }
            }
            for (id, shown) in view.shown() {
                if let Some(element) = dom::by_id(&self.root, &id) {
                    dom::show(&element, shown);
                }
            }
            for (at, part) in TAPES.iter().enumerate() {
                let text = text_of(view, *part);
                let drawn = self.state.borrow().tapes[at] == text;
                if !drawn {
                    self.draw_part(view, *part);
                    self.state.borrow_mut().tapes[at] = text;
                }
            }
        });
        self.focus_again(&focused);
    }

    fn draw_part(&self, view: &View<'_>, part: Part) {
        if let Some(element) = dom::by_id(&self.root, part.id()) {
            let mut out = DomOut::new(&self.document);
            view.part(&mut out, part);
            out.into(&element);
        }
    }

    /// Where the focus is, by the id or the name and value of its control.
    fn focused(&self) -> Option<String> {
        let element = self.root.active_element()?;
        if !element.id().is_empty() {
            return Some(["#", &element.id()].concat());
        }
        let name = element.get_attribute("name")?;
        let value = element.get_attribute("value").unwrap_or_default();
        let mark = |text: &str| text.replace(['"', '\\'], "");
        Some(
            [
                "[name=\"",
                &mark(&name),
                "\"][value=\"",
                &mark(&value),
                "\"]",
            ]
            .concat(),
        )
    }

    /// Gives the focus back to a control that was drawn anew under it.
    fn focus_again(&self, selector: &Option<String>) {
        if let Some(selector) = selector
            && self.root.active_element().is_none()
            && let Some(control) = dom::all(&self.root, selector).first()
        {
            dom::focus(control);
        }
    }

    // What the reader does.

    fn event(self: &Rc<Self>, event: &Event) {
        let Some(target) = event
            .target()
            .and_then(|target| target.dyn_into::<Element>().ok())
        else {
            return;
        };
        match &*event.type_() {
            "submit" => {
                event.prevent_default();
                self.press();
            }
            "keydown" => self.key(event, &target),
            "click" => self.click(event, &target),
            kind => {
                if self.form.contains(Some(&target)) {
                    self.changed(&target, kind == "change");
                }
            }
        }
    }

    /// Enter in the field that only shortens the list goes to the list.
    fn key(&self, event: &Event, target: &Element) {
        let enter = event
            .dyn_ref::<KeyboardEvent>()
            .is_some_and(|event| event.key() == "Enter" && !event.is_composing());
        if enter && target.id() == "f-find" {
            event.prevent_default();
            if let Some(first) = dom::all(&self.root, "#l-species input").first() {
                dom::focus(first);
            }
        }
    }

    fn changed(&self, target: &Element, done: bool) {
        let name = target.get_attribute("name").unwrap_or_default();
        if done && name == "stems.unit" {
            fields::let_units_follow(&self.form);
        }
        let sheet = self.sheet();
        let parts: &[Part] = match &*name {
            "find" if !done => &[Part::Species],
            _ => &[],
        };
        self.follow(&sheet, parts);
        if !done || name == "find" && !sheet.get("species").is_empty() {
            return;
        }
        self.told_input(&name);
        self.after_change();
    }

    /// Marks that are settled go; an answer that stands is worked out again in a moment.
    fn after_change(&self) {
        let marked = self.state.borrow().marked.clone();
        if !marked.is_empty() {
            let mut problems = read(calc_data::reference(), &self.typed())
                .err()
                .unwrap_or_default();
            problems.retain(|problem| marked.contains(&problem.field));
            self.mark(&problems);
        }
        if self.state.borrow().answered {
            self.soon();
        }
    }

    fn click(self: &Rc<Self>, event: &Event, target: &Element) {
        let Ok(Some(acting)) = target.closest("[data-act], a[href^='#']") else {
            return;
        };
        let at = acting
            .get_attribute("data-at")
            .and_then(|at| at.bytes().next())
            .map_or(0, |_| {
                number(&acting.get_attribute("data-at").unwrap_or_default())
            });
        let act = acting.get_attribute("data-act").unwrap_or_default();
        match &*act {
            "add-stem" => self.add("stems", "diameter"),
            "add-target" => self.add("targets", "kind"),
            "remove-stem" => self.remove("stems", at, "diameter"),
            "remove-target" => self.remove("targets", at, "kind"),
            "next" => self.next_tree(),
            "print" => paper::print(self),
            "copy" => paper::copy(self),
            _ => {
                // Fragments lead nowhere out of a shadow root by themselves.
                if let Some(id) = acting.get_attribute("href").filter(|href| href.len() > 1) {
                    event.prevent_default();
                    marks::go(&self.root, &id[1..]);
                }
            }
        }
    }

    fn add(&self, list: &str, key: &str) {
        let mut sheet = self.sheet();
        let at = sheet.count(list);
        sheet.add(list);
        self.follow(&sheet, parts_of(list));
        self.go_entry(list, at, key);
        self.told_input(list);
    }

    fn remove(&self, list: &str, at: usize, key: &str) {
        let mut sheet = self.sheet();
        sheet.remove(list, at);
        self.follow(&sheet, parts_of(list));
        self.go_entry(list, at.saturating_sub(1), key);
        self.told_input(list);
        self.after_change();
    }

    fn go_entry(&self, list: &str, at: usize, key: &str) {
        let number = calc_view::measure::number(at as u32);
        let id = field_id(&[list, "[", &number, "].", key].concat());
        marks::go(&self.root, &id);
    }

    /// The place, the day and the crew stay; the tree goes, and its answer with it.
    fn next_tree(&self) {
        let mut sheet = self.sheet();
        sheet.next_tree();
        self.forget();
        self.draw(&sheet);
        self.told_input("species");
        self.focus_first();
    }

    fn forget(&self) {
        self.cancel();
        {
            let mut state = self.state.borrow_mut();
            state.answered = false;
            state.last = None;
            state.result = None;
        }
        self.region.set_text_content(None);
        self.say("");
    }

    // The answer.

    /// The button: an answer, or what is missing for one; the focus goes there.
    fn press(&self) {
        self.cancel();
        let typed = self.typed();
        match read(calc_data::reference(), &typed) {
            Err(problems) => {
                self.state.borrow_mut().answered = false;
                self.clear_answer();
                self.mark(&problems);
                self.tell("slipbark-invalid", &boundary::problems_object(&problems));
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
    }

    fn show_next(&self) {
        if let Ok(Some(next)) = self.form.query_selector("[data-act='next']") {
            dom::show(&next, self.state.borrow().answered);
        }
    }

    fn clear_answer(&self) {
        let mut state = self.state.borrow_mut();
        state.last = None;
        state.result = None;
        drop(state);
        self.region.set_text_content(None);
    }

    /// Works out again what is shown: something beside the form has changed.
    pub fn refresh(&self) {
        self.follow(&self.sheet(), &[]);
        if self.state.borrow().answered {
            self.work_out(true);
        }
    }

    /// Works the answer out again after a change. The focus stays where it is.
    fn work_out(&self, tell: bool) {
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
                    self.tell("slipbark-invalid", &boundary::problems_object(&problems));
                }
            }
        }
    }

    fn show_answer(&self, question: Question, typed: &Typed, tell: bool) {
        let reference = calc_data::reference();
        let answer = calc::answer::answer(reference, &question, &climate::local(&question));
        region::draw(self, &question, &answer);
        self.say(&calc_view::status(reference, &question, &answer));
        if tell {
            let result = self.result_of(&answer);
            let detail = Object::new();
            boundary::set(&detail, "inputs", &self.public(typed));
            boundary::set(&detail, "result", &result);
            self.tell("slipbark-result", &detail);
        } else {
            self.state.borrow_mut().result = None;
        }
        self.state.borrow_mut().last = Some((question, answer));
    }

    fn result_of(&self, answer: &Answer) -> JsValue {
        let result = boundary::answer_object(answer);
        self.state.borrow_mut().result = Some(result.clone());
        result
    }

    /// The last answer with what it answers.
    pub(crate) fn with_last<T>(&self, look: impl FnOnce(&Question, &Answer) -> T) -> Option<T> {
        let state = self.state.borrow();
        let (question, answer) = state.last.as_ref()?;
        Some(look(question, answer))
    }

    /// Shows problems above the form and at their fields, or takes them away.
    fn mark(&self, problems: &[Problem]) {
        marks::clear(&self.form);
        let mut out = DomOut::new(&self.document);
        html::problems(&mut out, problems, &self.options(""));
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

    fn soon(&self) {
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

    fn cancel(&self) {
        if let (Some(window), Some(id)) = (web_sys::window(), self.timer.take()) {
            window.clear_timeout_with_handle(id);
        }
    }

    // What the host hears and sets.

    /// A question for events: without coordinates, unless the host asks for them.
    fn public(&self, typed: &Typed) -> JsValue {
        let mut typed = typed.clone();
        if self.attribute("events") != "full"
            && let Some(place) = &mut typed.place
        {
            place.latitude = None;
            place.longitude = None;
            place.elevation = None;
        }
        boundary::question_object(&typed)
    }

    fn told_input(&self, changed: &str) {
        let detail = Object::new();
        boundary::set(&detail, "inputs", &self.public(&self.typed()));
        boundary::set(&detail, "changed", &changed.into());
        self.tell("slipbark-input", &detail);
    }

    fn tell(&self, name: &str, detail: &JsValue) {
        if let Some(object) = detail.dyn_ref::<Object>() {
            boundary::set(object, "schema", &1.into());
        }
        let init = CustomEventInit::new();
        init.set_bubbles(true);
        init.set_composed(true);
        init.set_detail(detail);
        if let Ok(event) = CustomEvent::new_with_event_init_dict(name, &init) {
            let _ = self.host.dispatch_event(&event);
        }
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
        boundary::question_object(&self.typed())
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
        self.state.borrow_mut().given = None;
        let sheet = self.preset();
        self.draw(&sheet);
    }

    /// The focus into the first field.
    pub fn focus_first(&self) {
        if let Some(first) = dom::by_id(&self.root, "f-find") {
            dom::focus(&first);
        }
    }
}

/// A drawing as text: two that read alike look alike.
fn text_of(view: &View<'_>, part: Part) -> String {
    let mut html = Html::default();
    view.part(&mut html, part);
    html.into_string()
}

fn parts_of(list: &str) -> &'static [Part] {
    if list == "stems" {
        &[Part::Stems, Part::StemsMore, Part::Goal]
    } else {
        &[Part::Targets]
    }
}

fn number(text: &str) -> usize {
    text.bytes()
        .filter(u8::is_ascii_digit)
        .take(3)
        .fold(0, |sum, c| sum * 10 + usize::from(c - b'0'))
}
