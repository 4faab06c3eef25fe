//! The answer printed as a sheet of its own, without the host's page around it.

use crate::dom::{self, call, get};
use crate::plan::Plan;
use crate::plans;
use js_sys::{Array, Function, Reflect};
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{Element, ShadowRoot, ShadowRootInit, ShadowRootMode};

impl Plan {
    /// Prints: the page itself where it is ours (`print="page"`), else a sheet. Nothing where that can't be.
    pub(crate) fn print(&self) -> Option<JsValue> {
        if self.attribute("print") == "page" {
            call(web_sys::window()?.as_ref(), "print")
        } else {
            sheet(self)
        }
    }
}

/// An empty frame with the answer alone in it. Its own realm needs its own style sheet. It stays until
/// the next one, since some browsers print after this has returned.
fn sheet(plan: &Plan) -> Option<JsValue> {
    for old in dom::all(&plan.root, "iframe") {
        old.remove();
    }
    let frame = plan.document.create_element("iframe").ok()?;
    // A frame that is not displayed prints nothing in some browsers.
    frame.set_class_name("vh");
    for (key, value) in [
        ("aria-hidden", "true"),
        ("tabindex", "-1"),
        ("title", "Print"),
    ] {
        frame.set_attribute(key, value).ok()?;
    }
    plan.body.append_child(&frame).ok()?;
    call(&fill(plan, &frame)?, "print")
}

fn fill(plan: &Plan, frame: &Element) -> Option<JsValue> {
    let window = get(frame, "contentWindow")?;
    let document: web_sys::Document = get(&window, "document")?.dyn_into().ok().or_else(|| {
        // A document of another realm is one all the same.
        get(&window, "document").map(JsCast::unchecked_into)
    })?;
    let body: Element = get(&document, "body")?.unchecked_into();
    let host = document.create_element("div").ok()?;
    body.append_child(&host).ok()?;
    let root: ShadowRoot = host
        .attach_shadow(&ShadowRootInit::new(ShadowRootMode::Open))
        .ok()?;
    let class: Function = get(&window, "CSSStyleSheet")?.dyn_into().ok()?;
    let style = Reflect::construct(&class, &Array::new()).ok()?;
    let replace: Function = get(&style, "replaceSync")?.dyn_into().ok()?;
    replace.call1(&style, &plans::SHEET.into()).ok()?;
    Reflect::set(&root, &"adoptedStyleSheets".into(), &Array::of1(&style)).ok()?;
    let wrap = document.create_element("div").ok()?;
    wrap.set_class_name("sb");
    for part in dom::all(&plan.root, ".defs, #answer") {
        let copy = document.import_node_with_deep(&part, true).ok()?;
        wrap.append_child(&copy).ok()?;
    }
    root.append_child(&wrap).ok()?;
    Some(window)
}
