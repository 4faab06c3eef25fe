//! Try another: the three marks under an answer. The card and the line "was → now" follow each move; the rest of the
//! answer, and the form, stay as asked until the reader takes over what was tried.

use super::Calculator;
use crate::device::today;
use crate::dom::{self, DomOut, get};
use crate::fetched;
use calc::answer::Answer;
use calc::question::{Problem, Question, Typed};
use calc::timing::Span;
use calc_view::answer::another::{CHANGES_ID, Mark, MovedMarks, Trial, Trying, Which, mark_id};
use calc_view::out::Html;
use calc_view::{answer, problem_text};
use js_sys::Reflect;
use wasm_bindgen::JsCast;
use web_sys::{Element, Event, HtmlElement, HtmlInputElement, KeyboardEvent};

/// On the answer while a mark stands elsewhere than it was asked: `same`, or `turned` where another outcome follows.
const TRIED: &str = "data-tried";

/// What the marks of the answer that stands are moved from.
#[derive(Default)]
pub(super) struct Tried {
    typed: Typed,
    days: Vec<Span>,
    moved: MovedMarks,
}

impl Tried {
    pub(super) fn new(typed: &Typed, days: Vec<Span>) -> Self {
        Self {
            typed: typed.clone(),
            days,
            moved: MovedMarks::default(),
        }
    }
}

/// A question with the marks where they stand, its answer, and what can't be read beside which mark.
struct Stands {
    question: Question,
    answer: Answer,
    unread: Vec<(Which, Problem)>,
}

impl Calculator {
    /// The days of the year from that of the answer, for the marks.
    pub(super) fn days(&self) -> Vec<Span> {
        self.tried.borrow().days.clone()
    }

    /// The question of the answer that stands, as it was typed.
    pub(super) fn typed_of_answer(&self) -> Typed {
        self.tried.borrow().typed.clone()
    }

    /// Something was typed, picked or moved at a mark. False where the control is none of a mark.
    pub(super) fn try_by(&self, target: &Element, done: bool) -> bool {
        let name = target.get_attribute("name").unwrap_or_default();
        let Some((which, typed)) = Which::named(&name) else {
            return false;
        };
        if let Some(input) = target.dyn_ref::<HtmlInputElement>() {
            let text = input.value();
            // A slider tells its last place twice: as it comes there, and as it is let go.
            if typed || !done {
                self.try_moved(|trying, moved| {
                    if typed {
                        trying.set_text(moved, which, &text);
                    } else {
                        trying.set_step(moved, which, text.parse().unwrap_or_default());
                    }
                });
                self.try_again(target, done);
            }
        }
        true
    }

    /// Page keys move a slider by its larger step, the same in every browser.
    pub(super) fn try_page(&self, event: &Event, target: &Element) {
        let key = event.dyn_ref::<KeyboardEvent>().map(KeyboardEvent::key);
        let sign = match key.as_deref() {
            Some("PageUp") => 1,
            Some("PageDown") => -1,
            _ => return,
        };
        let page = target.get_attribute("data-page").unwrap_or_default();
        if let (Ok(page), Some(slider)) =
            (page.parse::<i32>(), target.dyn_ref::<HtmlInputElement>())
        {
            event.prevent_default();
            let at = slider.value().parse().unwrap_or(0) + sign * page;
            // The slider keeps it within its ends.
            slider.set_value(&at.to_string());
            self.try_by(target, false);
        }
    }

    /// The marks of the answer before this one go on, where it answers the same question as typed.
    pub(super) fn try_on(&self, mut tried: Tried) {
        let before = self.tried.take();
        if before.typed == tried.typed {
            tried.moved = before.moved;
        }
        let goes_on = !tried.moved.none();
        self.tried.replace(tried);
        self.tapes.take();
        if goes_on {
            self.draw_tried(None);
        }
    }

    /// Puts every mark back where it was asked; the focus goes to the first that was moved.
    pub(super) fn try_back(&self) {
        let ghost = self.region.query_selector(".grip.ghost").ok().flatten();
        let tape = ghost.and_then(|ghost| ghost.closest(".tape").ok().flatten());
        self.tried.borrow_mut().moved = MovedMarks::default();
        self.draw_tried(None);
        let first = |tape: Element| tape.query_selector("input").ok().flatten();
        if let Some(slider) = tape.and_then(first) {
            dom::focus(&slider);
        }
    }

    /// Takes what was tried over into the form and answers it. Does nothing where no mark was moved.
    pub(super) fn try_use(&self) {
        let mut sheet = self.sheet();
        if self.take_tried(&mut sheet) {
            self.draw(&sheet);
            self.told_input("date");
            self.press();
        }
    }

    /// Writes what was tried into a sheet of the form; false where no mark was moved.
    pub(super) fn take_tried(&self, sheet: &mut calc_view::form::Sheet) -> bool {
        if self.tried.borrow().moved.none() {
            return false;
        }
        self.try_moved(|trying, moved| trying.write(moved, sheet, today()));
        true
    }

    /// Runs over the marks and the question that they are moved from.
    fn try_moved(&self, run: impl FnOnce(&Trying<'_>, &mut MovedMarks)) {
        let options = self.options();
        let state = self.state.borrow();
        let mut tried = self.tried.borrow_mut();
        let Tried { days, moved, .. } = &mut *tried;
        if let Some((question, answer, _)) = &state.last {
            let options = answer::HostOptions {
                another: Some(Trial {
                    question,
                    answer,
                    days,
                }),
                ..options
            };
            let trying = Trying::new(calc_data::reference(), question, answer, &options);
            run(&trying, moved);
        }
    }

    /// The question with the marks where they stand, and its answer.
    fn stands(&self) -> Option<Stands> {
        let typed = self.tried.borrow().typed.clone();
        let mut read = None;
        self.try_moved(|trying, moved| read = trying.read(moved, &typed).ok());
        let (mut question, unread) = read?;
        if let Some(group) = self.group() {
            group.settings.apply(&mut question);
        }
        let local = fetched::local(&question);
        let answer = calc::answer::without_changes(calc_data::reference(), &question, &local);
        Some(Stands {
            question,
            answer,
            unread,
        })
    }

    /// Answers the marks as they stand. What can't be read beside one is said once its field is left.
    fn try_again(&self, hand: &Element, done: bool) {
        let Some(stands) = self.draw_tried(Some(hand)) else {
            return;
        };
        let own = stands
            .unread
            .iter()
            .find(|(which, _)| hand.id().starts_with(mark_id(*which)));
        if let Some((which, problem)) = own.filter(|_| done)
            && let Some(said) = dom::by_id(&self.root, &format!("{}-said", mark_id(*which)))
        {
            said.set_text_content(Some(&problem_text(problem)));
            dom::show(&said, true);
            let _ = hand.set_attribute("aria-invalid", "true");
        }
        self.say_soon(calc_view::status(
            self.kind(),
            calc_data::reference(),
            &stands.question,
            &stands.answer,
        ));
    }

    /// Draws what follows the marks. The control under the hand stays as it is, and where it is in the window.
    fn draw_tried(&self, hand: Option<&Element>) -> Option<Stands> {
        let stands = self.stands()?;
        let Stands {
            question,
            answer,
            unread,
        } = &stands;
        let top = hand.map(top_of);
        let group = self.group();
        let state = self.state.borrow();
        let tried = self.tried.borrow();
        let (asked, before, _) = state.last.as_ref()?;
        let options = answer::HostOptions {
            group: group.as_ref(),
            another: Some(Trial {
                question: asked,
                answer: before,
                days: &tried.days,
            }),
            ..self.options()
        };
        let trying = Trying::new(calc_data::reference(), question, answer, &options);
        let region = self
            .region
            .query_selector(".answer-region")
            .ok()
            .flatten()?;
        // Both keep what they have grown to, so that nothing moves under the hand. Measured before anything is drawn:
        // the page is laid out once a step.
        let card = region.query_selector(".card").ok().flatten()?;
        let line = dom::by_id(&self.root, CHANGES_ID);
        let heights = [Some(&card), line.as_ref()].map(|it| it.map_or_else(String::new, height_of));
        if let Some(new) = self.drawn(|out| trying.card(out)) {
            dom::style(&new, "minHeight", &heights[0]);
            let _ = card.replace_with_with_node_1(&new);
        }
        if let Some(line) = line {
            dom::style(&line, "minHeight", &heights[1]);
            let mut out = DomOut::new(&self.document);
            trying.changes(&mut out);
            out.into(&line);
        }
        for mark in trying.marks(&tried.moved) {
            let bad = unread.iter().any(|(which, _)| *which == mark.which);
            self.draw_mark(&trying, &mark, bad, hand);
        }
        let word = match (tried.moved.none(), answer.outcome == before.outcome) {
            (true, _) => "",
            (false, true) => "same",
            (false, false) => "turned",
        };
        if word.is_empty() {
            let _ = region.remove_attribute(TRIED);
        } else {
            let _ = region.set_attribute(TRIED, word);
        }
        if let (Some(hand), Some(top)) = (hand, top) {
            keep_in_place(hand, top);
        }
        drop((state, tried));
        Some(stands)
    }

    /// An element as something draws it.
    fn drawn(&self, draw: impl FnOnce(&mut DomOut)) -> Option<Element> {
        let mut out = DomOut::new(&self.document);
        draw(&mut out);
        out.first()
    }

    fn draw_mark(&self, trying: &Trying<'_>, mark: &Mark, bad: bool, hand: Option<&Element>) {
        let id = mark_id(mark.which);
        let part = |name: &str| dom::by_id(&self.root, &format!("{id}{name}"));
        let old = part("-tape").and_then(|tape| tape.query_selector("svg").ok().flatten());
        let mut text = Html::default();
        trying.tape(&mut text, mark.which);
        let text = text.into_string();
        let mut tapes = self.tapes.borrow_mut();
        if let Some(old) = old.filter(|_| tapes[mark.which as usize] != text)
            && let Some(new) = self.drawn(|out| trying.tape(out, mark.which))
        {
            let _ = old.replace_with_with_node_1(&new);
            tapes[mark.which as usize] = text;
        }
        if let Some(slider) = part("") {
            let _ = slider.set_attribute("aria-valuetext", &mark.said);
            put(&slider, &mark.at.to_string(), hand);
        }
        if let Some(field) = part("-typed") {
            put(&field, &mark.typed, hand);
            if !bad {
                let _ = field.remove_attribute("aria-invalid");
            }
        }
        if let Some(said) = part("-said").filter(|_| !bad) {
            dom::show(&said, false);
        }
    }
}

/// Puts text into a control that is not under the hand.
fn put(control: &Element, text: &str, hand: Option<&Element>) {
    if hand != Some(control) {
        let _ = Reflect::set(control, &"value".into(), &text.into());
    }
}

fn height_of(element: &Element) -> String {
    let height = element.dyn_ref::<HtmlElement>();
    format!("{}px", height.map_or(0, HtmlElement::offset_height))
}

/// How far below the window's upper edge an element begins, CSS pixels.
fn top_of(element: &Element) -> f64 {
    let rect = dom::call(element, "getBoundingClientRect");
    let top = rect.and_then(|rect| get(&rect, "top")?.as_f64());
    top.unwrap_or(0.0)
}

/// Scrolls by as much as an element has moved in the window.
fn keep_in_place(element: &Element, top: f64) {
    let moved = top_of(element) - top;
    if let Some(window) = web_sys::window().filter(|_| moved != 0.0) {
        window.scroll_by_with_x_and_y(0.0, moved);
    }
}
