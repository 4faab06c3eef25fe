//! A host of the calculator in the page, and what a test does with it.
#![allow(dead_code, reason = "each test file uses its own part")]

use std::cell::RefCell;
use std::rc::Rc;
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{
    CustomEvent, Document, Element, Event, EventInit, HtmlElement, HtmlInputElement,
    HtmlSelectElement, ShadowRoot,
};

/// A host in the page; it goes when the test ends.
pub(crate) struct Host {
    pub element: HtmlElement,
}

impl Host {
    pub(crate) fn new() -> Self {
        Self::with(&[])
    }

    pub(crate) fn with(attributes: &[(&str, &str)]) -> Self {
        let document = document();
        let element = document.create_element("div").expect("an element");
        for (name, value) in attributes {
            element.set_attribute(name, value).expect("an attribute");
        }
        element.set_inner_html("<p>Plan one tree</p>");
        document
            .body()
            .expect("a body")
            .append_child(&element)
            .expect("a child");
        let element: HtmlElement = element.unchecked_into();
        www_element::calls::connect(&element);
        Self { element }
    }

    pub(crate) fn root(&self) -> ShadowRoot {
        self.element.shadow_root().expect("an open shadow root")
    }

    pub(crate) fn all(&self, css: &str) -> Vec<Element> {
        let found = self.root().query_selector_all(css).expect("a selector");
        (0..found.length())
            .filter_map(|at| found.item(at)?.dyn_into().ok())
            .collect()
    }

    pub(crate) fn one(&self, css: &str) -> Element {
        self.root()
            .query_selector(css)
            .expect("a selector")
            .unwrap_or_else(|| panic!("there is no {css}"))
    }

    pub(crate) fn has(&self, css: &str) -> bool {
        !self.all(css).is_empty()
    }

    pub(crate) fn text(&self, css: &str) -> String {
        self.one(css).text_content().unwrap_or_default()
    }

    /// Types into a field, or picks from a list, as a person does: the events come with it.
    pub(crate) fn type_in(&self, css: &str, text: &str) {
        let field = self.one(css);
        if let Some(input) = field.dyn_ref::<HtmlInputElement>() {
            input.set_value(text);
        } else if let Some(select) = field.dyn_ref::<HtmlSelectElement>() {
            select.set_value(text);
        } else {
            js_sys::Reflect::set(&field, &"value".into(), &text.into()).expect("a field");
        }
        for name in ["input", "change"] {
            self.send(css, name);
        }
    }

    pub(crate) fn send(&self, css: &str, name: &str) {
        let init = EventInit::new();
        init.set_bubbles(true);
        let event = Event::new_with_event_init_dict(name, &init).expect("an event");
        self.one(css).dispatch_event(&event).expect("it is sent");
    }

    pub(crate) fn value(&self, css: &str) -> String {
        let value = js_sys::Reflect::get(&self.one(css), &"value".into());
        value
            .ok()
            .and_then(|value| value.as_string())
            .expect("a field")
    }

    pub(crate) fn click(&self, css: &str) {
        self.one(css).unchecked_into::<HtmlElement>().click();
    }

    pub(crate) fn focused(&self) -> String {
        let active = self.root().active_element();
        active.map_or_else(String::new, |active| active.id())
    }

    pub(crate) fn status(&self) -> String {
        self.text(".sb > [role=status]")
    }

    /// An invented tree with nothing near.
    pub(crate) fn fill_in_a_tree(&self) {
        self.type_in("#f-find", "norway");
        self.click("input[name=species][value='Norway maple']");
        self.type_in("#f-stems-0-diameter", "14 1/2");
        self.type_in("#f-targets-0-kind", "nothing");
        self.type_in("#f-day", "12 June 2027");
    }

    /// Presses the button: the card stands there, and the rest of its answer once that was painted.
    pub(crate) fn press_alone(&self) {
        self.click("button[type=submit]");
    }

    /// Presses the button and has the whole answer at once.
    pub(crate) fn press(&self) {
        self.press_alone();
        if self.has(".answer-region[aria-busy]") {
            self.ask_for_the_rest();
        }
    }

    /// Touches the card before what stands under it was painted: the rest of the answer stands there at once.
    pub(crate) fn ask_for_the_rest(&self) {
        self.click(".answer-region .tag");
    }

    pub(crate) fn get(&self, name: &str) -> JsValue {
        www_element::calls::get_property(&self.element, name)
    }

    pub(crate) fn result(&self, key: &str) -> String {
        let value = js_sys::Reflect::get(&self.get("result"), &key.into());
        value
            .ok()
            .and_then(|value| value.as_string())
            .unwrap_or_default()
    }

    /// The names of events that the host hears from now on, with the keys of their details.
    pub(crate) fn hear(&self) -> Rc<RefCell<Vec<String>>> {
        let heard = Rc::new(RefCell::new(Vec::new()));
        let into = Rc::clone(&heard);
        let listener = Closure::<dyn FnMut(CustomEvent)>::new(move |event: CustomEvent| {
            assert!(event.bubbles() && event.composed());
            let detail: js_sys::Object = event.detail().unchecked_into();
            let keys = js_sys::Object::keys(&detail).join(",");
            into.borrow_mut()
                .push(format!("{} {}", event.type_(), String::from(keys)));
        });
        for name in ["slipbark-input", "slipbark-result", "slipbark-invalid"] {
            self.element
                .add_event_listener_with_callback(name, listener.as_ref().unchecked_ref())
                .expect("it listens");
        }
        listener.forget();
        heard
    }

    /// The last event of a name from now on, as text.
    pub(crate) fn last_of(&self, name: &str) -> Rc<RefCell<String>> {
        let last = Rc::new(RefCell::new(String::new()));
        let into = Rc::clone(&last);
        let listener = Closure::<dyn FnMut(CustomEvent)>::new(move |event: CustomEvent| {
            let text = js_sys::JSON::stringify(&event.detail()).expect("JSON-safe");
            *into.borrow_mut() = text.into();
        });
        self.element
            .add_event_listener_with_callback(name, listener.as_ref().unchecked_ref())
            .expect("it listens");
        listener.forget();
        last
    }
}

impl Drop for Host {
    fn drop(&mut self) {
        self.element.remove();
        www_element::calls::disconnect(&self.element);
    }
}

pub(crate) fn document() -> Document {
    web_sys::window()
        .and_then(|window| window.document())
        .expect("a page")
}

pub(crate) async fn wait(milliseconds: i32) {
    let promise = js_sys::Promise::new(&mut |resolve, _| {
        web_sys::window()
            .expect("a window")
            .set_timeout_with_callback_and_timeout_and_arguments_0(&resolve, milliseconds)
            .expect("a clock");
    });
    js_sys::futures::JsFuture::from(promise)
        .await
        .expect("the clock goes");
}
