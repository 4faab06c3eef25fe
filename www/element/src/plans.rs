//! Which host has which calculator.

use crate::plan::Plan;
use js_sys::Array;
use std::cell::{OnceCell, RefCell};
use std::rc::Rc;
use web_sys::{CssStyleSheet, HtmlElement, ShadowRoot};

/// The text of the style sheet.
pub const SHEET: &str = include_str!(concat!(env!("OUT_DIR"), "/calc.css"));

thread_local! {
    static PLANS: RefCell<Vec<Rc<Plan>>> = const { RefCell::new(Vec::new()) };
    static STYLE: OnceCell<Option<CssStyleSheet>> = const { OnceCell::new() };
}

/// Gives a shadow root the one style sheet that all calculators of a page share. A policy that ignores
/// style elements does not ignore this.
pub fn dress(root: &ShadowRoot) {
    STYLE.with(|style| {
        let sheet = style.get_or_init(|| {
            let sheet = CssStyleSheet::new().ok()?;
            sheet.replace_sync(SHEET).ok()?;
            Some(sheet)
        });
        if let Some(sheet) = sheet {
            root.set_adopted_style_sheets(&Array::of1(sheet));
        }
    });
}

/// The calculator of a host.
pub fn of(host: &HtmlElement) -> Option<Rc<Plan>> {
    PLANS.with(|plans| {
        let plans = plans.borrow();
        plans.iter().find(|plan| plan.is_of(host)).cloned()
    })
}

/// Lets every calculator do something: what they all show has changed.
pub fn each(act: fn(&Plan)) {
    let plans = PLANS.with(|plans| plans.borrow().clone());
    for plan in plans {
        act(&plan);
    }
}

/// Puts a calculator into a host that has none.
pub fn connect(host: &HtmlElement) {
    if of(host).is_some() {
        return;
    }
    if let Some(plan) = Plan::start(host) {
        PLANS.with(|plans| plans.borrow_mut().push(plan));
    }
}

/// Forgets the calculator of a host.
pub fn disconnect(host: &HtmlElement) {
    let plan = PLANS.with(|plans| {
        let mut plans = plans.borrow_mut();
        let at = plans.iter().position(|plan| plan.is_of(host))?;
        Some(plans.swap_remove(at))
    });
    if let Some(plan) = plan {
        plan.stop();
    }
}
