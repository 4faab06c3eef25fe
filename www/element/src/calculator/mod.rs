//! One calculator in one host: its form, its answer, and what the reader does with them.
//!
//! `form` is what is drawn and follows the typing, `controls` what stands in its fields, `reader` what the reader does,
//! `answer` what is worked out and shown, `another` the marks under it, `problems` what can't be read,
//! `early` what was typed before the module was there, `rehearsal` a form that is drawn for nobody to see. What the host
//! says and hears stands in `crate::host`.

mod another;
mod answer;
pub(crate) mod controls;
mod early;
mod form;
pub(crate) mod problems;
mod reader;
pub(crate) mod rehearsal;

use crate::dom::{self, DomOut, get};
use calc::answer::Answer;
use calc::question::Question;
use calc_view::form::{BUILT, Part, Sheet, frame};
use calc_view::words::message::{Pack, pack};
use calc_view::words::within;
use early::Early;
use js_sys::Array;
use std::cell::{Cell, OnceCell, RefCell};
use std::rc::{Rc, Weak};
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{
    CssStyleSheet, Document, Element, Event, HtmlElement, ShadowRoot, ShadowRootInit,
    ShadowRootMode,
};

/// After a change the answer is worked out again so many milliseconds later, if nothing else changes.
const WAIT_MS: i32 = 400;
/// The sentence for those who listen changes at most once in so many milliseconds.
const SPOKEN_MS: f64 = 1000.0;
/// What the calculator listens to.
pub(crate) const EVENTS: [&str; 6] = ["input", "change", "click", "submit", "keydown", "focusin"];
/// Parts that are drawn anew when what they show has changed.
const LIVING: [Part; 3] = [Part::Towns, Part::SeenTowns, Part::Near];

/// A calculator.
pub(crate) struct Calculator {
    /// Itself, for what comes later.
    me: Weak<Self>,
    pub(crate) host: HtmlElement,
    pub(crate) root: ShadowRoot,
    pub(crate) document: Document,
    pub(crate) body: Element,
    errors: Element,
    /// What the form folds into once it is answered; its summary says what was asked.
    asked: Element,
    recap: Element,
    /// The way past the form to its answer.
    skip: Element,
    pub(crate) form: Element,
    status: Element,
    pub(crate) region: Element,
    pub(crate) state: RefCell<State>,
    /// What the marks under the answer are moved from, and where they stand.
    tried: RefCell<another::Tried>,
    /// What is still to be written under the card; none where the answer stands whole.
    below: RefCell<Option<answer::Below>>,
    /// Its tapes as they were last drawn anew: two that read alike look alike.
    tapes: RefCell<[String; 3]>,
    spoke: Cell<f64>,
    /// What is said next, once nothing moves any more.
    saying: RefCell<Option<String>>,
    /// Whether the answer is to be worked out anew then.
    due: Cell<bool>,
    timer: Cell<Option<i32>>,
    /// Whether what follows the controls of a form that was taken over is still to follow them.
    following: Cell<Following>,
    /// Whether an answer was worked out for nobody to see.
    warmth: Cell<Warmth>,
    /// The language it speaks.
    words: Cell<&'static Pack>,
}

/// What is still to follow the controls of a form that was taken over: two steps, between which the page may draw and hear.
#[derive(Clone, Copy, Default, PartialEq)]
enum Following {
    /// Nothing.
    #[default]
    Nothing,
    /// All of it. What it follows from is worked out first, for nobody to see: most of that time is the browser's, which
    /// compiles each piece of the module where it first runs.
    All,
    /// What is drawn.
    Drawn,
}

/// Where the first, unseen answer stands.
#[derive(Clone, Copy, Default, PartialEq)]
enum Warmth {
    /// Nobody has typed.
    #[default]
    Cold,
    /// Somebody types; it comes in the first pause.
    Waiting,
    /// It was worked out.
    Warm,
}

#[derive(Default)]
pub(crate) struct State {
    /// What the host has set.
    pub(crate) hosted: crate::host::Hosted,
    /// Whether an answer was asked for by the button; from then on changes are answered by themselves.
    pub(crate) answered: bool,
    /// The last answer, with what it answers, and as an object once the host has asked for that.
    pub(crate) last: Option<(Question, Answer, OnceCell<JsValue>)>,
    /// What was picked at a visit: its controls go with the answer, and come back with the next one.
    visit: Sheet,
    /// Whether the reader has been in the field of the name: its first names are shown then.
    pub(crate) listed: bool,
    /// Fields that are marked.
    marked: Vec<String>,
    /// These parts as they are drawn.
    living: [String; LIVING.len()],
    pub(crate) listener: Option<Closure<dyn Fn(Event)>>,
    pub(crate) tick: Option<Closure<dyn FnMut()>>,
}

/// What a form begins with.
pub(crate) struct Begin {
    /// What stands in it.
    pub sheet: Sheet,
    /// Whether its answer is shown too.
    pub answered: bool,
}

impl Calculator {
    /// Builds the calculator in the host's shadow root; one that stood there before is taken over with
    /// what was typed.
    pub(crate) fn start(host: &HtmlElement, words: &'static Pack) -> Option<Rc<Self>> {
        let document = dom::document()?;
        let stood = host.shadow_root();
        let root = match &stood {
            Some(root) => root.clone(),
            None => host
                .attach_shadow(&ShadowRootInit::new(ShadowRootMode::Open))
                .ok()?,
        };
        let before = root.query_selector(".sb").ok().flatten();
        let early = Early::of(before.as_ref());
        let pressed = early.as_ref().is_some_and(|early| early.pressed);
        let sheet = before.as_ref().filter(|_| early.is_none());
        let sheet = sheet.map(controls::read);
        let answered = dom::by_id(&root, "answer").is_some_and(|answer| answer.has_child_nodes());
        dress(&root);
        let built =
            before.filter(|body| body.get_attribute(BUILT).as_deref() == Some(words.language()));
        let body = match &built {
            Some(body) => {
                for other in dom::all(&root, "link, noscript, slot") {
                    other.remove();
                }
                let _ = body.remove_attribute(BUILT);
                body.clone()
            }
            None => {
                while let Some(old) = root.last_child() {
                    let _ = root.remove_child(&old);
                }
                let mut out = DomOut::new(&document);
                frame(&mut out, words.language(), None);
                let body = out.first()?;
                let _ = root.append_child(&body);
                body
            }
        };
        let part = |class: &str| body.query_selector(class).ok().flatten();
        let marks = document.create_element("div").ok()?;
        marks.set_class_name("defs");
        let mut out = DomOut::new(&document);
        calc_view::draw::mark::defs(&mut out);
        out.into(&marks);
        let first = get(&body, "firstChild").map(JsCast::unchecked_into);
        let _ = body.insert_before(&marks, first.as_ref());
        let errors = part(".problems")?;
        let asked = part(".asked")?;
        let recap = part(".recap")?;
        let skip = part(".past")?;
        let form = part(".formbox")?;
        let status = part(".said")?;
        let region = part(".result")?;
        let calculator = Rc::new_cyclic(|me| Self {
            me: me.clone(),
            host: host.clone(),
            root,
            document,
            body,
            errors,
            asked,
            recap,
            skip,
            form,
            status,
            region,
            state: RefCell::default(),
            tried: RefCell::default(),
            below: RefCell::default(),
            tapes: RefCell::default(),
            spoke: Cell::new(0.0),
            saying: RefCell::default(),
            due: Cell::new(false),
            timer: Cell::new(None),
            following: Cell::default(),
            warmth: Cell::default(),
            words: Cell::new(words),
        });
        let mut begin = calculator.begin();
        if let Some(sheet) = sheet {
            begin.sheet = sheet;
            begin.answered = answered;
        }
        match early {
            Some(early) => calculator.take_over(begin, &early, built.is_some()),
            None => calculator.begin_with(begin),
        }
        // A link to a question opens at its answer.
        if calculator.is_linked() && calculator.shares() {
            calculator.go_to_answer();
        }
        calculator.listen();
        if calculator.following.get() != Following::Nothing {
            calculator.wait(0);
        }
        if pressed {
            calculator.press();
        }
        Some(calculator)
    }

    /// Begins anew with a form, and its answer where there was one.
    pub(crate) fn begin_with(&self, begin: Begin) {
        self.state.borrow_mut().answered = begin.answered;
        self.draw(&begin.sheet);
        if begin.answered {
            self.work_out(false);
            self.fold();
        } else {
            self.unfold();
        }
    }

    /// Does something in the language of this calculator.
    pub(crate) fn speak<T>(&self, run: impl FnOnce() -> T) -> T {
        within(self.words.get(), run)
    }

    /// Speaks the language that the host asks for from now on, if its words are here; else English.
    pub(crate) fn follow_language(&self) {
        let words = pack(&lang(&self.host));
        self.words.set(words);
        let _ = self.body.set_attribute("lang", words.language());
    }

    pub(crate) fn is_answered(&self) -> bool {
        self.state.borrow().answered
    }

    /// Whether this is the calculator of a host.
    pub(crate) fn is_of(&self, host: &HtmlElement) -> bool {
        self.host == *host
    }

    pub(super) fn listen(&self) {
        let weak = self.me.clone();
        let listener = Closure::<dyn Fn(Event)>::new(move |event: Event| {
            if let Some(calculator) = weak.upgrade() {
                calculator.speak(|| calculator.event(&event));
            }
        });
        for name in EVENTS {
            let _ = self
                .body
                .add_event_listener_with_callback(name, listener.as_ref().unchecked_ref());
        }
        let weak = self.me.clone();
        let tick = Closure::<dyn FnMut()>::new(move || {
            if let Some(calculator) = weak.upgrade() {
                calculator.speak(|| calculator.on_time());
            }
        });
        let mut state = self.state.borrow_mut();
        state.listener = Some(listener);
        state.tick = Some(tick);
    }

    /// Takes the listeners and the clock down. The form stays, so that a host put back goes on.
    pub(crate) fn stop(&self) {
        self.following.set(Following::Nothing);
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

thread_local! {
    /// The text of the style sheet, which comes as a file of its own: pages of ours have it before the module.
    static SHEET: Cell<&'static str> = const { Cell::new("") };
    static CALCULATORS: RefCell<Vec<Rc<Calculator>>> = const { RefCell::new(Vec::new()) };
    static STYLE: OnceCell<Option<CssStyleSheet>> = const { OnceCell::new() };
}

/// Keeps the text of the style sheet, once for all calculators of a page, and reads it.
pub(crate) fn take_style(text: String) {
    SHEET.set(text.leak());
    with_style(|_| ());
}

/// The text of the style sheet; empty before it came.
pub(crate) fn sheet_text() -> &'static str {
    SHEET.get()
}

/// Gives a shadow root the one style sheet that all calculators of a page share. A policy that ignores
/// style elements does not ignore this.
pub(crate) fn dress(root: &ShadowRoot) {
    with_style(|sheet| root.set_adopted_style_sheets(&Array::of1(sheet)));
}

fn with_style(run: impl FnOnce(&CssStyleSheet)) {
    STYLE.with(|style| {
        let sheet = style.get_or_init(|| {
            let sheet = CssStyleSheet::new().ok()?;
            sheet.replace_sync(sheet_text()).ok()?;
            Some(sheet)
        });
        if let Some(sheet) = sheet {
            run(sheet);
        }
    });
}

/// The calculator of a host.
fn of(host: &HtmlElement) -> Option<Rc<Calculator>> {
    CALCULATORS.with(|calculators| {
        let calculators = calculators.borrow();
        calculators
            .iter()
            .find(|calculator| calculator.is_of(host))
            .cloned()
    })
}

/// Does something with the calculator of a host, in its language.
pub(crate) fn with<T>(host: &HtmlElement, run: impl FnOnce(&Calculator) -> T) -> Option<T> {
    let calculator = of(host)?;
    Some(calculator.speak(|| run(&calculator)))
}

/// The language around a host: its own, else that of what it stands in.
pub(crate) fn lang(host: &HtmlElement) -> String {
    let near = host.closest("[lang]").ok().flatten();
    let root = || dom::document().and_then(|document| document.document_element());
    near.or_else(root)
        .and_then(|element| element.get_attribute("lang"))
        .unwrap_or_default()
}

/// Lets every calculator do something: what they all show has changed.
pub(crate) fn each(act: fn(&Calculator)) {
    let calculators = CALCULATORS.with(|calculators| calculators.borrow().clone());
    for calculator in calculators {
        calculator.speak(|| act(&calculator));
    }
}

/// Puts a calculator into a host that has none.
pub(crate) fn connect(host: &HtmlElement) {
    if of(host).is_some() {
        return;
    }
    let words = pack(&lang(host));
    if let Some(calculator) = within(words, || Calculator::start(host, words)) {
        CALCULATORS.with(|calculators| calculators.borrow_mut().push(calculator));
    }
}

/// Forgets the calculator of a host.
pub(crate) fn disconnect(host: &HtmlElement) {
    let calculator = CALCULATORS.with(|calculators| {
        let mut calculators = calculators.borrow_mut();
        let at = calculators
            .iter()
            .position(|calculator| calculator.is_of(host))?;
        Some(calculators.swap_remove(at))
    });
    if let Some(calculator) = calculator {
        calculator.stop();
    }
}
