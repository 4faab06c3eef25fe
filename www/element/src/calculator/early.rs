//! The form that stood in the page before the module: taken over with what was typed meanwhile, the caret where it is.

use super::{Begin, Calculator, Following, controls};
use crate::device::today;
use crate::dom::get;
use calc_view::form::{BUILT, PRESSED, SEARCHES, Sheet, has_towns};
use js_sys::Reflect;
use wasm_bindgen::JsCast;
use web_sys::{Element, HtmlInputElement};

/// What a reader has done before the module was there.
pub(super) struct Early {
    /// What stands otherwise than the page brought it.
    sheet: Sheet,
    /// Whether the button was pressed.
    pub(super) pressed: bool,
}

impl Early {
    /// What was done in a form that the page brought; none where it is no such one.
    pub(super) fn of(body: Option<&Element>) -> Option<Self> {
        let body = body.filter(|body| body.has_attribute(BUILT))?;
        Some(Self {
            sheet: controls::touched(body),
            pressed: body.has_attribute(PRESSED),
        })
    }
}

impl Calculator {
    /// Begins with what the page begins with, and what was typed over it. A form that shows nothing else already is left
    /// as it stands: a word that is being typed is not broken off.
    pub(super) fn take_over(&self, mut begin: Begin, early: &Early, stands: bool) {
        let bare = !begin.answered && begin.sheet == self.preset();
        let own = !self.is_linked() || !self.shares();
        if own {
            if !early.sheet.blank("find") {
                // Another tree than the one that was picked before.
                begin.sheet.set("species", "");
            }
            early.sheet.lay_over(&mut begin.sheet);
        }
        if stands && bare {
            self.adopt();
        } else {
            let caret = self.caret();
            self.begin_with(begin);
            if own && !early.sheet.blank("town") {
                self.place_typed();
                self.follow_on();
            }
            self.put_caret(caret);
        }
        if !early.sheet.is_empty() {
            self.keep();
        }
    }

    /// Takes the controls as they stand; what only the reader's own browser knows is filled in. What follows them follows
    /// a moment later: until then the page can be used as it stands.
    fn adopt(&self) {
        let sheet = self.sheet();
        controls::set(&self.form, "day", &sheet.day_shown(today()));
        let country = crate::host::attributes::country();
        if has_towns(&country) {
            for search in &SEARCHES {
                controls::set(&self.form, &search.field(".country"), &country);
            }
        }
        if let Ok(Some(button)) = self
            .form
            .query_selector(".go > [type='button']:not([data-act])")
        {
            let _ = button.set_attribute("type", "submit");
        }
        if let Ok(Some(soon)) = self.form.query_selector(".soon") {
            soon.remove();
        }
        controls::let_units_follow(&self.form);
        if !sheet.blank("town") {
            self.place_typed();
        }
        self.state.borrow_mut().listed = self.focused().as_deref() == Some("#f-find");
        self.following.set(Following::All);
    }

    /// Where the caret is in the field that has the focus.
    fn caret(&self) -> Option<[u32; 2]> {
        let field = self.root.active_element()?;
        let at = |key: &str| Some(get(&field, key)?.as_f64()? as u32);
        Some([at("selectionStart")?, at("selectionEnd")?])
    }

    fn put_caret(&self, caret: Option<[u32; 2]>) {
        let field = self.root.active_element();
        let field = field.and_then(|field| field.dyn_into::<HtmlInputElement>().ok());
        if let (Some(field), Some([from, to])) = (field, caret) {
            let _ = Reflect::set(&field, &"selectionStart".into(), &from.into());
            let _ = Reflect::set(&field, &"selectionEnd".into(), &to.into());
        }
    }
}
