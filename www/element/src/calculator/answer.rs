//! The answer: asked for by the button, then worked out again after each change. At the button the card is painted first,
//! what stands under it right behind: a slow phone takes some tenths of a second for that, the card one.

use super::another::Tried;
use super::{Calculator, Following, SPOKEN_MS, WAIT_MS, Warmth, problems};
use crate::device::today;
use crate::dom::{self, DomOut};
use crate::fetched;
use crate::host::objects;
use calc::answer::{Answer, year_ahead};
use calc::models::season::Local;
use calc::question::{Problem, Question, StemTyped, Text, Typed, read};
use calc::terms::day::iso;
use calc::timing::Span;
use calc_view::answer::another::Trial;
use calc_view::kind::Kind;
use calc_view::out::Out;
use calc_view::page::Page;
use calc_view::words::m;
use calc_view::{DAY_OF_FORM, PLACE_OF_FORM, answer, field_id, problem_text};
use std::cell::OnceCell;
use wasm_bindgen::JsCast;
use web_sys::Element;

/// What a page sees of a host that shows an answer: it may take its own head away then.
const ANSWERED: &str = "data-answered";

/// An answer of which the card alone stands in the page.
pub(super) struct Below {
    /// What folded in the answer before, and whether it was open.
    folds: Vec<(String, bool)>,
}

impl Calculator {
    /// The button: an answer, or what is missing for one; the focus goes there.
    pub(super) fn press(&self) {
        self.cancel();
        self.tried.take();
        let typed = self.to_answer();
        match read(calc_data::reference(), &typed) {
            Err(problems) => self.no_answer(&problems),
            Ok(question) => {
                self.mark(&[]);
                self.state.borrow_mut().answered = true;
                if self.kind() == Kind::TreePlan {
                    self.show_card(question, &typed);
                } else {
                    self.show_answer(question, &typed, true);
                }
                self.fold();
            }
        }
        self.show_next();
        self.keep();
        // Last: the browser lays the page out for it, and once is enough.
        if self.is_answered() {
            self.go_to_answer();
        } else if let Ok(Some(summary)) = self.errors.query_selector(".errsum") {
            dom::focus(&summary);
        }
    }

    /// The focus to the sentence of the answer, where there is one.
    pub(super) fn go_to_answer(&self) {
        if let Ok(Some(verdict)) = self.region.query_selector(".say") {
            let _ = verdict.set_attribute("tabindex", "-1");
            dom::focus(&verdict);
        }
    }

    /// The form under one line that says what was asked.
    pub(super) fn fold(&self) {
        if self.state.borrow().last.is_some() {
            self.asked.set_class_name("asked done");
            let _ = self.asked.remove_attribute("open");
            let _ = self.host.set_attribute(ANSWERED, "");
        }
    }

    /// The form as it stands before anything was asked.
    pub(super) fn unfold(&self) {
        self.asked.set_class_name("asked");
        let _ = self.asked.set_attribute("open", "");
        let _ = self.host.remove_attribute(ANSWERED);
    }

    pub(crate) fn show_next(&self) {
        if let Ok(Some(next)) = self.form.query_selector("[data-act='next']") {
            dom::show(&next, self.state.borrow().answered);
        }
    }

    /// What is asked has no answer: the form stands open with what is wrong, and the host hears of it.
    pub(crate) fn no_answer(&self, problems: &[Problem]) {
        self.state.borrow_mut().answered = false;
        self.unfold();
        self.clear_answer();
        self.mark(problems);
        self.told_problems(problems);
    }

    pub(super) fn clear_answer(&self) {
        self.below.take();
        self.state.borrow_mut().last = None;
        self.region.set_text_content(None);
    }

    /// Works out again what is shown: something beside the form has changed.
    pub(crate) fn refresh(&self) {
        self.follow_on();
        if self.state.borrow().answered {
            self.work_out(true);
        }
    }

    /// Works the answer out again after a change. The focus stays where it is.
    pub(crate) fn work_out(&self, tell: bool) {
        let typed = self.to_answer();
        match read(calc_data::reference(), &typed) {
            Ok(question) => self.show_answer(question, &typed, tell),
            Err(problems) => {
                self.clear_answer();
                let mut out = DomOut::new(&self.document);
                draw_waits(&mut out, &self.as_asked(&problems));
                out.into(&self.region);
                self.say(&m::DEVICE_WAITS);
                if tell {
                    self.told_problems(&problems);
                }
            }
        }
    }

    pub(crate) fn show_answer(&self, mut question: Question, typed: &Typed, tell: bool) {
        self.below.take();
        let (answer, days) = self.answer_in_place(&mut question);
        draw_answer(self, &question, &answer, &days);
        self.is_shown(question, answer, typed, days);
        if tell {
            self.told_result(typed);
        }
    }

    /// Shows the card, and what stands under it once that was painted.
    fn show_card(&self, mut question: Question, typed: &Typed) {
        let (answer, days) = self.answer_in_place(&mut question);
        let before = folded(&self.region);
        let mut out = DomOut::new(&self.document);
        self.with_options(&question, &answer, &days, |options| {
            answer::first_screen(
                &mut out,
                calc_data::reference(),
                &question,
                &answer,
                options,
            );
        });
        out.into(&self.region);
        self.is_shown(question, answer, typed, days);
        self.below.replace(Some(Below { folds: before }));
        let me = self.me.clone();
        dom::after_paint(move || {
            if let Some(calculator) = me.upgrade() {
                calculator.speak(|| calculator.write_below());
            }
        });
    }

    /// Writes what is still missing under a card, and tells that an answer stands there. Does nothing where it is whole.
    pub(super) fn write_below(&self) {
        let Some(below) = self.below.take() else {
            return;
        };
        let Ok(Some(region)) = self.region.query_selector("[aria-busy]") else {
            return;
        };
        let mut out = DomOut::new(&self.document);
        self.with_last(|question, answer| {
            let days = self.days();
            self.with_options(question, answer, &days, |options| {
                answer::below(&mut out, calc_data::reference(), question, answer, options);
            });
        });
        out.behind(&region);
        let _ = region.remove_attribute("aria-busy");
        fold_again(&self.region, &below.folds);
        let typed = self.typed_of_answer();
        self.told_result(&typed);
    }

    /// Answers a question where it is asked: by the rules of the group, with what was fetched for its place.
    fn answer_in_place(&self, question: &mut Question) -> (Answer, Vec<Span>) {
        if let Some(group) = self.group() {
            group.settings.apply(question);
        }
        self.answer_of(question, &fetched::local(question))
    }

    /// An answer stands in the page: what stands beside it, and what the marks begin with.
    fn is_shown(&self, question: Question, answer: Answer, typed: &Typed, days: Vec<Span>) {
        self.say_answer(&question, &answer);
        self.state.borrow_mut().last = Some((question, answer, OnceCell::new()));
        self.try_on(Tried::new(typed, days));
    }

    /// What stands beside an answer: the line that the form folds under, the way to the card, what is said.
    fn say_answer(&self, question: &Question, answer: &Answer) {
        let reference = calc_data::reference();
        let mut out = DomOut::new(&self.document);
        calc_view::answer::recap(&mut out, reference, question, answer);
        out.into(&self.recap);
        let mut out = DomOut::new(&self.document);
        calc_view::answer::skip(&mut out);
        out.into(&self.skip);
        self.say(&calc_view::status(self.kind(), reference, question, answer));
    }

    /// The answer, and the year of its day for the marks under it.
    fn answer_of(&self, question: &Question, local: &Local) -> (Answer, Vec<Span>) {
        let reference = calc_data::reference();
        let answer = calc::answer::answer(reference, question, local);
        let days = match self.kind() {
            Kind::TreePlan => year_ahead(reference, question, local),
            _ => Vec::new(),
        };
        (answer, days)
    }

    fn write_answer(&self, out: &mut DomOut, question: &Question, answer: &Answer, days: &[Span]) {
        self.with_options(question, answer, days, |options| {
            answer::answer(out, calc_data::reference(), question, answer, options);
        });
    }

    /// Does something with what this host decides about an answer.
    fn with_options(
        &self,
        question: &Question,
        answer: &Answer,
        days: &[Span],
        run: impl FnOnce(&answer::HostOptions<'_>),
    ) {
        let group = self.group();
        let options = answer::HostOptions {
            group: group.as_ref(),
            another: Some(Trial {
                question,
                answer,
                days,
            }),
            ..self.options()
        };
        run(&options);
    }

    /// The last answer with what it answers.
    pub(crate) fn with_last<T>(&self, look: impl FnOnce(&Question, &Answer) -> T) -> Option<T> {
        let state = self.state.borrow();
        let (question, answer, _) = state.last.as_ref()?;
        Some(look(question, answer))
    }

    /// Problems as the form tells them: the day as it was typed, all in the order of the page.
    pub(super) fn as_asked(&self, problems: &[Problem]) -> Vec<Problem> {
        let sheet = self.sheet();
        let ids: Vec<String> = dom::all(&self.form, "[id]")
            .iter()
            .map(Element::id)
            .collect();
        let mut placed: Vec<(usize, Problem)> = Vec::new();
        for problem in problems {
            let mut problem = problem.clone();
            if problem.field == "date" {
                problem.field = DAY_OF_FORM.to_owned();
                problem.typed = sheet.get(DAY_OF_FORM).to_owned();
            } else if problem.field == "region" && sheet.blank("region") {
                problem.field = PLACE_OF_FORM.to_owned();
            }
            let field = problems::find(&self.root, &field_id(&problem.field));
            let at = field.and_then(|field| ids.iter().position(|id| *id == field.id()));
            let at = at.unwrap_or(ids.len());
            let behind = placed.iter().position(|(other, _)| *other > at);
            placed.insert(behind.unwrap_or(placed.len()), (at, problem));
        }
        placed.into_iter().map(|(_, problem)| problem).collect()
    }

    /// Shows problems above the form and at their fields, or takes them away.
    pub(crate) fn mark(&self, problems: &[Problem]) {
        let problems = &*self.as_asked(problems);
        problems::clear(&self.form);
        let mut out = DomOut::new(&self.document);
        answer::problems(&mut out, problems, &self.options());
        out.into(&self.errors);
        // Some fields share a control with another: the link leads to what is there.
        for link in dom::all(&self.errors, "a") {
            let id = link.get_attribute("data-field").unwrap_or_default();
            if let Some(field) = problems::find(&self.root, &id) {
                let _ = link.set_attribute("href", &format!("#{}", field.id()));
            }
        }
        for problem in problems {
            problems::mark(&self.document, &self.root, problem);
        }
        let fields = problems.iter().map(|problem| problem.field.clone());
        self.state.borrow_mut().marked = fields.collect();
    }

    /// Says one sentence to those who listen.
    pub(crate) fn say(&self, sentence: &str) {
        self.spoke.set(js_sys::Date::now());
        self.status.set_text_content(Some(sentence));
    }

    /// Works the answer out once nothing changes any more.
    pub(super) fn soon(&self) {
        self.due.set(true);
        self.wait_to_speak();
    }

    /// Says a sentence once nothing moves any more.
    pub(super) fn say_soon(&self, sentence: String) {
        self.saying.replace(Some(sentence));
        self.wait_to_speak();
    }

    /// The time has come.
    pub(super) fn on_time(&self) {
        self.timer.set(None);
        match self.following.take() {
            Following::Nothing => {}
            Following::All => {
                self.with_view(&self.sheet(), |_| ());
                self.following.set(Following::Drawn);
                self.wait(0);
                return;
            }
            Following::Drawn => self.follow_names(),
        }
        let sentence = self.saying.take();
        if self.due.take() {
            self.work_out(true);
        } else if let Some(sentence) = sentence {
            self.say(&sentence);
        } else if self.warmth.get() == Warmth::Waiting {
            self.warmth.set(Warmth::Warm);
            self.warm_up();
        }
    }

    /// Works an answer out in the first pause of the typing, for nobody to see: the browser compiles each piece of the
    /// module where it first runs, and the reader waits for it less now than at the button.
    pub(super) fn warm_up_soon(&self) {
        if !self.is_answered() && self.warmth.get() != Warmth::Warm {
            self.warmth.set(Warmth::Waiting);
            self.wait(WAIT_MS);
        }
    }

    fn warm_up(&self) {
        // An invented tree of which the answer has every part: its best day of the year is told.
        let stem = StemTyped {
            diameter: Some(Text::from("14 in")),
            ..StemTyped::default()
        };
        let typed = Typed {
            version: 1,
            species: Some(Text::from("Norway maple")),
            stems: vec![stem],
            none_in_reach: true,
            line_within_reach: Some(Text::from("no")),
            date: Some(Text::from("year")),
            today: Some(Text(iso(today()))),
            ..Typed::default()
        };
        let Ok(question) = read(calc_data::reference(), &typed) else {
            return;
        };
        let (answer, days) = self.answer_of(&question, &Local::default());
        let mut out = DomOut::new(&self.document);
        self.write_answer(&mut out, &question, &answer, &days);
        objects::answer_object(&answer);
    }

    /// Lets the clock run, anew if it did: longer where a sentence was just said.
    fn wait_to_speak(&self) {
        let since = js_sys::Date::now() - self.spoke.get();
        self.wait(WAIT_MS.max((SPOKEN_MS - since) as i32));
    }

    pub(super) fn wait(&self, wait: i32) {
        self.clear_timer();
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
        self.below.take();
        self.due.set(false);
        if self.warmth.get() == Warmth::Waiting {
            self.warmth.set(Warmth::Cold);
        }
        self.saying.take();
        // What was taken over is still to be followed.
        if self.following.get() == Following::Nothing {
            self.clear_timer();
        }
    }

    fn clear_timer(&self) {
        if let (Some(window), Some(id)) = (web_sys::window(), self.timer.take()) {
            window.clear_timeout_with_handle(id);
        }
    }
}

/// Draws an answer.
fn draw_answer(calculator: &Calculator, question: &Question, answer: &Answer, days: &[Span]) {
    let before = folded(&calculator.region);
    let focused = focused(calculator);
    let mut out = DomOut::new(&calculator.document);
    calculator.write_answer(&mut out, question, answer, days);
    out.into(&calculator.region);
    fold_again(&calculator.region, &before);
    if let Some(at) = focused
        && calculator.root.active_element().is_none()
        && let Some(control) = controls(&calculator.region).get(at)
    {
        dom::focus(control);
    }
}

/// What folds, and whether it is open.
fn folded(region: &Element) -> Vec<(String, bool)> {
    let open = |(key, fold): (String, Element)| (key, fold.has_attribute("open"));
    folds(region).into_iter().map(open).collect()
}

/// Opens and folds what was so before.
fn fold_again(region: &Element, before: &[(String, bool)]) {
    for (key, fold) in folds(region) {
        if let Some((_, open)) = before.iter().find(|(other, _)| *other == key) {
            let _ = fold.toggle_attribute_with_force("open", *open);
        }
    }
}

/// What folds, by its id, else by its summary and how many with the same came before it.
fn folds(region: &Element) -> Vec<(String, Element)> {
    let mut folds: Vec<(String, Element)> = Vec::new();
    for fold in dom::all(region, "details") {
        let summary = fold.query_selector("summary").ok().flatten();
        // The line under a title follows the answer: an id does not.
        let mut key = match fold.id() {
            id if id.is_empty() => summary
                .and_then(|summary| summary.text_content())
                .unwrap_or_default(),
            id => id,
        };
        while folds.iter().any(|(other, _)| *other == key) {
            key.push('+');
        }
        folds.push((key, fold));
    }
    folds
}

fn controls(region: &Element) -> Vec<Element> {
    dom::all(region, "a, button, input, select, summary, [tabindex]")
}

/// Which control of the region has the focus, by its place: what is drawn anew takes it with it.
fn focused(calculator: &Calculator) -> Option<usize> {
    let active = calculator.root.active_element()?;
    controls(&calculator.region)
        .iter()
        .position(|control| *control == active)
}

/// In place of an answer, while what was changed can't be read yet: no alarm, no marks.
fn draw_waits(out: &mut dyn Out, problems: &[Problem]) {
    let out = &mut Page::new(out);
    out.open_class("div", "waits");
    out.leaf_class("p", "say", m::DEVICE_WAITS);
    out.open("ul");
    for problem in problems {
        out.leaf("li", problem_text(problem));
    }
    out.close();
    out.close();
}
