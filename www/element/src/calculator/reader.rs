//! What the reader does: types, picks, adds, takes away, goes on to the next tree.

use super::{Calculator, controls, problems};
use crate::device::{self, today};
use crate::dom;
use crate::export;
use crate::host::kept;
use calc::question::read;
use calc_view::answer::ADVICE_ID;
use calc_view::field_id;
use calc_view::form::{
    ASK_FAR, FILE_ID, PLACED, Part, SEARCHES, Sheet, TIMED_FILE_ID, Unfinished, filled, has_towns,
    region_named,
};
use calc_view::words::m;
use std::rc::Rc;
use wasm_bindgen::JsCast;
use web_sys::{Element, Event, HtmlInputElement, KeyboardEvent};

/// Buttons of the card that take an answer along.
const TAKEN_ALONG: [&str; 4] = ["calendar", "print", "copy", "link"];

/// The words for today are no text to type into: a press takes them whole, and what is typed goes in their place.
fn whole_day(target: &Element) {
    let today = |field: &&HtmlInputElement| {
        field.name() == "day" && field.value() == Sheet::new().day_shown(today())
    };
    if let Some(field) = target.dyn_ref::<HtmlInputElement>().filter(today) {
        field.select();
    }
}

impl Calculator {
    pub(super) fn event(self: &Rc<Self>, event: &Event) {
        let Some(target) = event
            .target()
            .and_then(|target| target.dyn_into::<Element>().ok())
        else {
            return;
        };
        // The focus comes to the card before the rest of its answer does.
        if event.type_() != "focusin" {
            self.write_below();
        }
        match &*event.type_() {
            "submit" => {
                event.prevent_default();
                self.press();
            }
            "keydown" => {
                self.key(event, &target);
                self.try_page(event, &target);
            }
            "focusin" => self.names(&target),
            "click" => {
                self.names(&target);
                whole_day(&target);
                self.click(event, &target);
            }
            kind => {
                let done = kind == "change";
                if self.form.contains(Some(&target)) {
                    self.changed(&target, done);
                } else if !self.try_by(&target, done) && done && self.region.contains(Some(&target))
                {
                    let name = target.get_attribute("name").unwrap_or_default();
                    if name.starts_with("ask.") {
                        self.asked(false);
                    } else {
                        self.seen(&target);
                    }
                }
            }
        }
    }

    /// Enter in a field that only shortens a list goes to the list.
    pub(super) fn key(&self, event: &Event, target: &Element) {
        let enter = event
            .dyn_ref::<KeyboardEvent>()
            .is_some_and(|event| event.key() == "Enter" && !event.is_composing());
        let name = target.get_attribute("name").unwrap_or_default();
        let part = match SEARCHES.iter().find(|search| search.name == name) {
            Some(search) => search.part,
            None if name == "find" => Part::Species,
            None => return,
        };
        if enter {
            event.prevent_default();
            let list = format!("#{} input", part.id());
            if let Some(first) = dom::all(&self.root, &list).first() {
                dom::focus(first);
            }
        }
    }

    /// What is seen at a visit stands in the answer: it is worked out at once, and the advice is said.
    fn seen(&self, target: &Element) {
        self.told_input(&target.get_attribute("name").unwrap_or_default());
        self.cancel();
        self.work_out(true);
        let advice = dom::by_id(&self.root, &format!("p-{ADVICE_ID}"));
        let advice = advice.and_then(|advice| advice.text_content());
        self.say(&advice.unwrap_or_default());
    }

    /// What was answered inside the card goes into the form, and the answer follows at once. A thing without its
    /// distance waits for it; only the button says so.
    fn asked(&self, pressed: bool) {
        let mut sheet = self.sheet();
        self.take_tried(&mut sheet);
        match sheet.take_asked(&controls::read(&self.region)) {
            Ok(()) => {
                self.draw(&sheet);
                self.told_input("targets");
                self.press();
            }
            Err(Unfinished::Far) if pressed => {
                self.say(&m::DEVICE_TYPE_HOW_FAR);
                problems::go(&self.root, &field_id(ASK_FAR));
            }
            Err(Unfinished::Nothing) if pressed => {
                if let Ok(Some(first)) = self.region.query_selector(".asks :is(select, input)") {
                    dom::focus(&first);
                }
            }
            Err(Unfinished::Far | Unfinished::Nothing) => {}
        }
    }

    pub(super) fn changed(self: &Rc<Self>, target: &Element, done: bool) {
        let file = target.id();
        if done && (file == FILE_ID || file == TIMED_FILE_ID) {
            device::file(self, target, file == FILE_ID);
            return;
        }
        let mut name = target.get_attribute("name").unwrap_or_default();
        if done && name == "stems.as" {
            controls::let_units_follow(&self.form);
        } else if done && let Some(filled) = self.picked(&name, target) {
            name = filled;
        }
        let sheet = self.sheet();
        let parts: &[Part] = match &*name {
            "find" if !done => &[Part::Species],
            _ => &[],
        };
        self.follow(&sheet, parts);
        self.warm_up_soon();
        if !done || name == "find" && !sheet.get("species").is_empty() {
            self.keep();
            return;
        }
        self.told_input(&name);
        self.after_change();
    }

    /// Fills fields in, as if it had been typed.
    pub(crate) fn fill(&self, texts: &[(&str, String)]) {
        for (name, text) in texts {
            controls::set(&self.form, name, text);
        }
        self.follow_on();
        if let Some((name, _)) = texts.first() {
            self.told_input(name.split('.').next().unwrap_or_default());
        }
        self.after_change();
    }

    /// Marks that are settled go; an answer that stands is worked out again in a moment.
    pub(super) fn after_change(&self) {
        let marked = self.state.borrow().marked.clone();
        if !marked.is_empty() {
            let mut problems = read(calc_data::reference(), &self.to_answer())
                .err()
                .unwrap_or_default();
            problems = self.as_asked(&problems);
            problems.retain(|problem| marked.contains(&problem.field));
            self.mark(&problems);
        }
        if self.state.borrow().answered {
            self.soon();
        }
    }

    pub(super) fn click(self: &Rc<Self>, event: &Event, target: &Element) {
        let Ok(Some(acting)) = target.closest("[data-act], a[href^='#']") else {
            return;
        };
        let at = acting
            .get_attribute("data-at")
            .and_then(|at| at.parse().ok())
            .unwrap_or(0);
        let act = acting.get_attribute("data-act").unwrap_or_default();
        if TAKEN_ALONG.contains(&&*act) {
            // The card says what was tried: that is what goes along, with all that belongs to it.
            self.try_use();
        }
        match &*act {
            "add-stem" => self.add("stems", "diameter"),
            "add-target" => self.add("targets", "kind"),
            "remove-stem" => self.remove("stems", at, "diameter"),
            "remove-target" => self.remove("targets", at, "kind"),
            "next" => self.next_tree(),
            "finish" => self.asked(true),
            "try-back" => self.try_back(),
            "try-use" => self.try_use(),
            "aid" => self.aid(),
            "save-timed" => export::save_timed(self),
            "position" => device::position(self),
            "calendar" => export::calendar(self),
            "print" => export::print(self),
            "copy" => export::copy(self),
            _ => {
                // Fragments lead nowhere out of a shadow root by themselves.
                self.act(&act, at);
                if let Some(id) = acting.get_attribute("href").filter(|href| href.len() > 1) {
                    event.prevent_default();
                    problems::go(&self.root, id.get(1..).unwrap_or_default());
                }
            }
        }
    }

    /// Fills in the height that the readings make, or goes to what is wrong with them.
    fn aid(&self) {
        match self.sheet().measured() {
            Ok(height) => {
                self.fill(&[("height", height)]);
                self.say(&m::DEVICE_HEIGHT_FILLED);
                problems::go(&self.root, "f-height");
            }
            Err((field, words)) => {
                self.say(&words);
                problems::go(&self.root, &field);
            }
        }
    }

    pub(super) fn add(&self, list: &str, key: &str) {
        let mut sheet = self.sheet();
        let at = sheet.count(list);
        sheet.add(list);
        self.follow(&sheet, parts_of(list));
        self.go_entry(list, at, key);
        self.told_input(list);
    }

    pub(super) fn remove(&self, list: &str, at: usize, key: &str) {
        let mut sheet = self.sheet();
        sheet.remove(list, at);
        self.follow(&sheet, parts_of(list));
        self.go_entry(list, at.saturating_sub(1), key);
        self.told_input(list);
        self.after_change();
    }

    pub(super) fn go_entry(&self, list: &str, at: usize, key: &str) {
        let id = field_id(&format!("{list}[{at}].{key}"));
        problems::go(&self.root, &id);
    }

    /// The place, the day and the crew stay; the tree goes, and its answer with it.
    pub(super) fn next_tree(&self) {
        let mut sheet = self.sheet();
        sheet.next_tree();
        self.forget();
        self.draw(&sheet);
        self.told_input("species");
        self.focus_first();
    }

    pub(crate) fn forget(&self) {
        self.cancel();
        {
            let mut state = self.state.borrow_mut();
            state.answered = false;
            state.last = None;
        }
        self.region.set_text_content(None);
        self.unfold();
        self.say("");
    }

    /// What hangs on a field that was picked: the country of the towns on the region, a point on its town. Gives the
    /// name of what was filled in instead.
    pub(crate) fn picked(&self, name: &str, target: &Element) -> Option<String> {
        match name {
            "region" => {
                self.country_follows();
                return None;
            }
            "town" => return self.place_typed(),
            _ => {}
        }
        let value = target.get_attribute("value").unwrap_or_default();
        let texts = filled(name, &value);
        for (name, text) in &texts {
            controls::set(&self.form, name, text);
        }
        if name == SEARCHES[0].field(".at") {
            controls::set(&self.form, PLACED, &value);
        }
        let (under, _) = texts.first()?.0.rsplit_once('.')?;
        Some(under.to_owned())
    }

    /// What was typed as the place: the region and the point that this field filled in before go, and the region that is
    /// named comes. What was typed or picked in fields of their own stays, but for a region that is now another.
    pub(super) fn place_typed(&self) -> Option<String> {
        let sheet = self.sheet();
        for (name, text) in filled(&SEARCHES[0].field(".at"), sheet.get(PLACED)) {
            if !text.is_empty() && sheet.is(&name, &text) {
                controls::set(&self.form, &name, "");
            }
        }
        let named = region_named(sheet.get("town")).unwrap_or_default();
        controls::set(&self.form, PLACED, named);
        if !named.is_empty() {
            controls::set(&self.form, "region", named);
            let country = named.split('-').next().unwrap_or_default();
            if has_towns(country) {
                controls::set(&self.form, &SEARCHES[0].field(".country"), country);
            }
        }
        Some("place".to_owned())
    }

    /// Shows the first names once the reader is in the empty field.
    fn names(&self, target: &Element) {
        if target.id() == "f-find" && !self.state.borrow().listed {
            self.state.borrow_mut().listed = true;
            self.follow_names();
        }
    }

    /// The country of the towns follows the region, while no town is typed.
    fn country_follows(&self) {
        let sheet = self.sheet();
        let country = sheet.get("region").split('-').next().unwrap_or_default();
        for search in SEARCHES.iter().filter(|_| has_towns(country)) {
            if sheet.get(search.name).trim().is_empty() {
                controls::set(&self.form, &search.field(".country"), country);
            }
        }
    }

    /// What a button does that only a page with a host has.
    pub(crate) fn act(self: &Rc<Self>, act: &str, at: usize) {
        match act {
            "region" => self.take_region(at),
            "keep-timed" => self.keep_timed(true),
            "forget-timed" => self.keep_timed(false),
            "link" => kept::copy_link(self),
            "keep" => self.begin_draft(),
            "forget" => self.forget_draft(),
            "own" => self.back_to_own(),
            _ => {}
        }
    }

    /// Takes the region that was proposed for the point, and shows where it stands.
    fn take_region(&self, at: usize) {
        let code = self.with_view(&self.sheet(), |view| view.near().get(at).copied());
        if let Some(code) = code {
            self.fill(&[("region", code.to_owned())]);
            self.country_follows();
            problems::go(&self.root, "f-region");
        }
    }
}

fn parts_of(list: &str) -> &'static [Part] {
    if list == "stems" {
        &[Part::StemsMore, Part::Goal]
    } else {
        &[Part::Targets]
    }
}
