//! The answer taken along: printed, copied as text, its visits as a calendar file; and timed trees as a file.

use crate::calculator::{Calculator, sheet_text};
use crate::device::note;
use crate::dom::{self, call, get};
use calc_view::form::TIMED_LINE;
use calc_view::words::m;
use calc_view::{ics, words};
use js_sys::{Array, Date, Function, Object, Promise, Reflect};
use std::rc::Rc;
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{Element, HtmlElement, ShadowRoot, ShadowRootInit, ShadowRootMode};

/// Prints the answer.
pub(crate) fn print(calculator: &Calculator) {
    if calculator.print().is_none() {
        calculator.say(&m::DEVICE_NO_PRINT);
    }
}

/// Copies the answer as text. Where the page may not write to the clipboard, the text is shown to be taken.
pub(crate) fn copy(calculator: &Rc<Calculator>) {
    let reference = calc_data::reference();
    let group = calculator.group();
    let text = calculator.with_last(|question, answer| {
        calc_view::text::answer(reference, question, answer, group.as_ref())
    });
    if let Some(text) = text {
        let (copied, label) = (m::DEVICE_COPIED, m::DEVICE_TEXT_LABEL);
        copy_text(calculator, text, copied.text(), label.text());
    }
}

/// Copies a text; says so, or shows it under a label to be taken.
pub(crate) fn copy_text(
    calculator: &Rc<Calculator>,
    text: String,
    done: &'static str,
    label: &'static str,
) {
    let clipboard = web_sys::window()
        .and_then(|window| get(&window, "navigator"))
        .and_then(|navigator| get(&navigator, "clipboard"));
    let write = clipboard
        .as_ref()
        .and_then(|clipboard| get(clipboard, "writeText")?.dyn_into::<Function>().ok());
    let promise = clipboard
        .zip(write)
        .and_then(|(clipboard, write)| write.call1(&clipboard, &text.as_str().into()).ok())
        .and_then(|promise| promise.dyn_into::<Promise>().ok());
    let Some(promise) = promise else {
        show(calculator, &text, label);
        return;
    };
    let weak = Rc::downgrade(calculator);
    let copied = Closure::once_into_js(move |_: JsValue| {
        if let Some(calculator) = weak.upgrade() {
            told(&calculator, done);
        }
    });
    let weak = Rc::downgrade(calculator);
    let refused = Closure::once_into_js(move |_: JsValue| {
        if let Some(calculator) = weak.upgrade() {
            calculator.speak(|| show(&calculator, &text, label));
        }
    });
    if let Some(then) = get(&promise, "then").and_then(|then| then.dyn_into::<Function>().ok()) {
        let _ = then.call2(&promise, &copied, &refused);
    }
}

/// Says a sentence under the buttons, to those who look and to those who listen.
pub(crate) fn told(calculator: &Calculator, text: &str) {
    for old in dom::all(&calculator.region, ".told") {
        old.remove();
    }
    if let (Ok(Some(keep)), Ok(line)) = (
        calculator.region.query_selector(".card, .mini"),
        calculator.document.create_element("p"),
    ) {
        line.set_class_name("told soft");
        line.set_text_content(Some(text));
        let _ = keep.append_child(&line);
    }
    calculator.say(text);
}

/// A field with the text in it, marked to be taken.
fn show(calculator: &Calculator, text: &str, label: &str) {
    let Ok(area) = calculator.document.create_element("textarea") else {
        return;
    };
    for old in dom::all(&calculator.region, "textarea") {
        old.remove();
    }
    let _ = area.set_attribute("readonly", "");
    let _ = area.set_attribute("aria-label", label);
    area.set_text_content(Some(text));
    let _ = calculator.region.append_child(&area);
    dom::focus(&area);
    let _ = call(&area, "select");
    calculator.say(&m::DEVICE_TEXT_MARKED);
}

impl Calculator {
    /// Prints: the page itself where it is ours (`print="page"`), else a sheet. Nothing where that can't be.
    pub(crate) fn print(&self) -> Option<JsValue> {
        if self.attribute("print") == "page" {
            call(web_sys::window()?.as_ref(), "print")
        } else {
            print_sheet(self)
        }
    }
}

/// An empty frame with the answer alone in it. Its own realm needs its own style sheet. It stays until
/// the next one, since some browsers print after this has returned.
fn print_sheet(calculator: &Calculator) -> Option<JsValue> {
    for old in dom::all(&calculator.root, "iframe") {
        old.remove();
    }
    let frame = calculator.document.create_element("iframe").ok()?;
    // A frame that is not displayed prints nothing in some browsers.
    frame.set_class_name("vh");
    for (key, value) in [
        ("aria-hidden", "true"),
        ("tabindex", "-1"),
        ("title", "Print"),
    ] {
        frame.set_attribute(key, value).ok()?;
    }
    calculator.body.append_child(&frame).ok()?;
    call(&fill_frame(calculator, &frame)?, "print")
}

fn fill_frame(calculator: &Calculator, frame: &Element) -> Option<JsValue> {
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
    replace.call1(&style, &sheet_text().into()).ok()?;
    Reflect::set(&root, &"adoptedStyleSheets".into(), &Array::of1(&style)).ok()?;
    let wrap = document.create_element("div").ok()?;
    wrap.set_class_name("sb");
    for part in dom::all(&calculator.root, ".defs, #answer") {
        let copy = document.import_node_with_deep(&part, true).ok()?;
        wrap.append_child(&copy).ok()?;
    }
    root.append_child(&wrap).ok()?;
    Some(window)
}

/// The timed trees as a file.
pub(crate) fn save_timed(calculator: &Calculator) {
    let text = calculator.timed_file();
    let words = if text.is_empty() {
        m::DEVICE_TIMED_NONE
    } else if give(calculator, &text, "text/csv", "slipbark-timed-trees.csv").is_some() {
        m::DEVICE_TIMED_SAVED
    } else {
        m::DEVICE_TIMED_REFUSED
    };
    note(calculator, TIMED_LINE, &words);
}

/// The visits as the text of a calendar file; none without an answer.
pub(crate) fn calendar_text(calculator: &Calculator) -> Option<String> {
    let stamp: String = String::from(Date::new_0().to_iso_string())
        .chars()
        .filter(|c| !matches!(c, '-' | ':'))
        .collect();
    // As the standard writes a moment: 20270612T080000Z, without the thousandths.
    let stamp = format!("{}Z", stamp.split('.').next().unwrap_or_default());
    calculator.with_last(|question, answer| {
        let about = words::visits::calendar_title(question, answer);
        (!answer.visits.is_empty()).then(|| {
            ics::visits(answer, &stamp, &about, &|at| {
                let visit = answer.visits.get(at);
                visit.map_or_else(String::new, |visit| {
                    words::visits::visit(visit.kind, answer.headline_method).into()
                })
            })
        })
    })?
}

/// The visits as a calendar file, put where the browser puts what is downloaded.
pub(crate) fn calendar(calculator: &Rc<Calculator>) {
    let given = calendar_text(calculator)
        .and_then(|text| give(calculator, &text, "text/calendar", "slipbark-visits.ics"));
    calculator.say(if given.is_some() {
        &m::DEVICE_CALENDAR
    } else {
        &m::DEVICE_NOT_SAVED
    });
}

/// Lets the browser download a text, unless the host takes it: it hears of the file first.
fn give(calculator: &Calculator, text: &str, kind_of: &str, name: &str) -> Option<()> {
    if calculator.takes_file(kind_of, name, text) {
        return Some(());
    }
    let window = web_sys::window()?;
    let kind = Object::new();
    Reflect::set(&kind, &"type".into(), &kind_of.into()).ok()?;
    let class: Function = get(&window, "Blob")?.dyn_into().ok()?;
    let parts = Array::of2(&Array::of1(&text.into()), &kind);
    let blob = Reflect::construct(&class, &parts).ok()?;
    let urls = get(&window, "URL")?;
    let make: Function = get(&urls, "createObjectURL")?.dyn_into().ok()?;
    let address = make.call1(&urls, &blob).ok()?.as_string()?;
    let link = calculator.document.create_element("a").ok()?;
    link.set_attribute("href", &address).ok()?;
    link.set_attribute("download", name).ok()?;
    link.toggle_attribute("hidden").ok()?;
    calculator.body.append_child(&link).ok()?;
    link.dyn_ref::<HtmlElement>()?.click();
    link.remove();
    // The download has its own hold on the bytes only once it has begun.
    let drop = Closure::once_into_js(move || {
        if let Some(revoke) =
            get(&urls, "revokeObjectURL").and_then(|revoke| revoke.dyn_into::<Function>().ok())
        {
            let _ = revoke.call1(&urls, &address.into());
        }
    });
    let _ =
        window.set_timeout_with_callback_and_timeout_and_arguments_0(drop.unchecked_ref(), 10_000);
    Some(())
}
