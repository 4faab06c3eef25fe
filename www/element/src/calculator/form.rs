//! The form: drawn once, then followed; no control is touched while someone types.

use super::{Calculator, LIVING, controls, lang};
use crate::device::today;
use crate::dom::{self, DomOut};
use calc::question::Typed;
use calc_view::form::{Part, Sheet, View, month_first};
use calc_view::out::Html;

impl Calculator {
    /// What stands in the form.
    pub(crate) fn sheet(&self) -> Sheet {
        let mut sheet = controls::read(&self.form);
        sheet.write_days(month_first(&lang(&self.host)));
        sheet.settle_day(today());
        if self
            .region
            .query_selector("#f-visit-at")
            .is_ok_and(|it| it.is_some())
        {
            self.state.borrow_mut().visit = controls::read(&self.region);
        }
        sheet.take(&self.state.borrow().visit, "visit");
        self.carry(&mut sheet);
        sheet
    }

    /// The timed trees as a file.
    pub(crate) fn timed_file(&self) -> String {
        self.sheet().timed_file()
    }

    pub(crate) fn typed(&self) -> Typed {
        self.sheet().typed(calc_data::reference(), today())
    }

    /// The question as it is answered.
    pub(crate) fn to_answer(&self) -> Typed {
        self.sheet().asked(calc_data::reference(), today())
    }

    /// Draws the whole form anew.
    pub(crate) fn draw(&self, sheet: &Sheet) {
        let mut visit = Sheet::default();
        visit.take(sheet, "visit");
        self.state.borrow_mut().visit = visit;
        let focused = self.focused();
        self.with_view(sheet, |view| {
            let mut out = DomOut::new(&self.document);
            view.form(&mut out);
            out.into(&self.form);
            let mut state = self.state.borrow_mut();
            for (at, part) in LIVING.iter().enumerate() {
                state.living[at] = text_of(view, *part);
            }
            state.marked.clear();
        });
        self.errors.set_text_content(None);
        self.focus_again(&focused);
    }

    /// Lets everything that follows the typing follow it; no control is touched.
    pub(super) fn follow(&self, sheet: &Sheet, parts: &[Part]) {
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
            for (at, part) in LIVING.iter().enumerate() {
                let text = text_of(view, *part);
                let drawn = self.state.borrow().living[at] == text;
                if !drawn {
                    self.draw_part(view, *part);
                    self.state.borrow_mut().living[at] = text;
                }
            }
        });
        self.focus_again(&focused);
    }

    /// Follows what has come in beside the form.
    pub(crate) fn follow_on(&self) {
        self.follow(&self.sheet(), &[]);
    }

    /// The same, with the list of species: the names of more trees are here.
    pub(crate) fn follow_names(&self) {
        self.follow(&self.sheet(), &[Part::Species]);
    }

    pub(super) fn draw_part(&self, view: &View<'_>, part: Part) {
        if let Some(element) = dom::by_id(&self.root, part.id()) {
            let mut out = DomOut::new(&self.document);
            view.part(&mut out, part);
            out.into(&element);
        }
    }

    /// The focus into the first field.
    pub(crate) fn focus_first(&self) {
        if let Some(first) = dom::by_id(&self.root, "f-find") {
            dom::focus(&first);
        }
    }

    /// Where the focus is, by the id or the name and value of its control.
    pub(super) fn focused(&self) -> Option<String> {
        let element = self.root.active_element()?;
        if !element.id().is_empty() {
            return Some(format!("#{}", element.id()));
        }
        let name = element.get_attribute("name")?;
        let value = element.get_attribute("value").unwrap_or_default();
        let bare = |text: &str| text.replace(['"', '\\'], "");
        let (name, value) = (bare(&name), bare(&value));
        Some(format!("[name=\"{name}\"][value=\"{value}\"]"))
    }

    /// Gives the focus back to a control that was drawn anew under it.
    pub(super) fn focus_again(&self, selector: &Option<String>) {
        if let Some(selector) = selector
            && self.root.active_element().is_none()
            && let Some(control) = dom::all(&self.root, selector).first()
        {
            dom::focus(control);
        }
    }
}

/// A drawing as text: two that read alike look alike.
fn text_of(view: &View<'_>, part: Part) -> String {
    let mut html = Html::default();
    view.part(&mut html, part);
    html.into_string()
}
