//! Markup as nodes: no text of a person or of ours is ever parsed as HTML here.

use calc_view::out::Out;
use js_sys::{Function, Reflect};
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{Document, Element, HtmlElement, Node, ShadowRoot};

/// What a host's style sheet may reach by `::part`, by the class that has it. Cautions have none.
const PARTS: [(&str, &str); 4] = [
    ("field", "field"),
    ("btn", "button"),
    ("tag", "tag"),
    ("p-work", "working"),
];

const SVG: &str = "http://www.w3.org/2000/svg";

/// A sink that makes nodes.
pub(crate) struct DomOut {
    document: Document,
    top: Node,
    open: Vec<Element>,
    svg: usize,
}

impl DomOut {
    /// A sink into a fragment.
    pub(crate) fn new(document: &Document) -> Self {
        Self {
            document: document.clone(),
            top: document.create_document_fragment().into(),
            open: Vec::new(),
            svg: 0,
        }
    }

    /// The first element that was made, by itself.
    pub(crate) fn first(self) -> Option<Element> {
        let first: Element = self.top.first_child()?.dyn_into().ok()?;
        let _ = self.top.remove_child(&first);
        Some(first)
    }

    /// Puts what was made behind what stands in an element.
    pub(crate) fn behind(self, parent: &Element) {
        let _ = parent.append_child(&self.top);
    }

    /// Puts what was made into an element, in place of what stood there.
    pub(crate) fn into(self, parent: &Element) {
        parent.set_text_content(None);
        let _ = parent.append_child(&self.top);
    }
}

impl Out for DomOut {
    fn open(&mut self, tag: &'static str) {
        if tag == "svg" || self.svg > 0 {
            self.svg += 1;
        }
        let made = if self.svg > 0 {
            self.document.create_element_ns(Some(SVG), tag)
        } else {
            self.document.create_element(tag)
        };
        // Tags are fixed words of ours, so none is refused.
        if let Ok(element) = made {
            if tag == "figure" {
                let _ = element.set_attribute("part", "plot");
            }
            self.open.push(element);
        }
    }

    fn attr(&mut self, key: &'static str, value: &str) {
        if let Some(element) = self.open.last() {
            let _ = element.set_attribute(key, value);
            if key == "class" {
                let mut words = value.split(' ');
                let part = words.find_map(|word| PARTS.iter().find(|(class, _)| *class == word));
                if let Some((_, part)) = part {
                    let _ = element.set_attribute("part", part);
                }
            }
        }
    }

    fn text(&mut self, text: &str) {
        if let Some(element) = self.open.last() {
            let _ = element.append_child(&self.document.create_text_node(text));
        }
    }

    fn close(&mut self) {
        self.svg = self.svg.saturating_sub(1);
        if let Some(element) = self.open.pop() {
            let parent = self.open.last().map_or(&self.top, |parent| parent);
            let _ = parent.append_child(&element);
        }
    }
}

/// The document.
pub(crate) fn document() -> Option<Document> {
    web_sys::window()?.document()
}

/// An element by its id.
pub(crate) fn by_id(root: &ShadowRoot, id: &str) -> Option<Element> {
    root.get_element_by_id(id)
}

/// A property that is there.
pub(crate) fn get(object: &JsValue, key: &str) -> Option<JsValue> {
    Reflect::get(object, &key.into())
        .ok()
        .filter(|value| !value.is_undefined() && !value.is_null())
}

/// Sets a declaration of an element's own style. A policy that refuses style attributes does not refuse this.
pub(crate) fn style(element: &Element, name: &str, text: &str) {
    if let Some(style) = get(element, "style") {
        let _ = Reflect::set(&style, &name.into(), &text.into());
    }
}

/// Calls a method without arguments; none where there is no such method, or it throws.
pub(crate) fn call(object: &JsValue, name: &str) -> Option<JsValue> {
    let function: Function = get(object, name)?.dyn_into().ok()?;
    function.call0(object).ok()
}

/// Shows or hides an element.
pub(crate) fn show(element: &Element, shown: bool) {
    if element.has_attribute("hidden") == shown {
        let _ = element.toggle_attribute_with_force("hidden", !shown);
    }
}

/// Runs something once what stands in the page now was painted. Never, where the page is not drawn any more.
pub(crate) fn after_paint(run: impl FnOnce() + 'static) {
    // The frame is drawn behind its callbacks: a timer that they set comes after it.
    let painted = Closure::once_into_js(run);
    let frame = Closure::once_into_js(move || {
        if let Some(window) = web_sys::window() {
            let _ = window.set_timeout_with_callback(painted.unchecked_ref());
        }
    });
    if let Some(window) = web_sys::window() {
        let _ = window.request_animation_frame(frame.unchecked_ref());
    }
}

/// Puts the focus on an element; it comes into view.
pub(crate) fn focus(element: &Element) {
    if let Some(element) = element.dyn_ref::<HtmlElement>() {
        let _ = element.focus();
    }
}

/// All elements that a selector finds.
pub(crate) fn all(root: &Node, selector: &str) -> Vec<Element> {
    let found = match (root.dyn_ref::<Element>(), root.dyn_ref::<ShadowRoot>()) {
        (Some(element), _) => element.query_selector_all(selector),
        (None, Some(root)) => root.query_selector_all(selector),
        (None, None) => return Vec::new(),
    };
    let Ok(found) = found else { return Vec::new() };
    (0..found.length())
        .filter_map(|at| found.item(at)?.dyn_into().ok())
        .collect()
}
