//! What outlives the page: the draft on this device, and the question in a link. Each only where the host's
//! attributes say so; nothing is stored before its reader has typed.

use crate::calculator::{Begin, Calculator};
use crate::device;
use crate::device::today;
use crate::dom::{self, DomOut, get};
use crate::export;
use calc::terms::place::Hemisphere;
use calc::terms::small::find::behind;
use calc_view::form::{Sheet, TIMED_LINE, timed_from};
use calc_view::page::Page;
use calc_view::share;
use calc_view::words::device as w;
use calc_view::words::{Word, m};
use js_sys::{Object, Reflect};
use std::rc::Rc;
use wasm_bindgen::{JsCast, JsValue};

/// What the key of a draft begins with: the address of its page follows.
const DRAFT: &str = "slipbark-draft ";
const TIMED: &str = "slipbark-timed-trees";
/// What a link to a question begins with.
const LINK: &str = "#v=";
/// Where in the shadow root is said what came with a link, and what is kept.
const NOTES: [&str; 2] = ["shared", "kept"];

fn part(name: &str) -> Option<JsValue> {
    get(web_sys::window()?.as_ref(), name)
}

/// What is kept on this device under a key. Storage that is refused holds nothing.
fn stored(key: &str) -> Option<String> {
    get(&part("localStorage")?, key)?.as_string()
}

fn store(key: &str, text: &str) -> bool {
    part("localStorage").is_some_and(|storage| {
        Reflect::set(&storage, &key.into(), &text.into()).is_ok()
            && stored(key).as_deref() == Some(text)
    })
}

fn drop(key: &str) {
    if let Some(storage) = part("localStorage") {
        let _ = Reflect::delete_property(storage.unchecked_ref::<Object>(), &key.into());
    }
}

/// A part of the page's address.
fn address(name: &str) -> String {
    let text = part("location").and_then(|location| get(&location, name)?.as_string());
    text.unwrap_or_default()
}

/// The fragment of the page's address, if it is a question.
fn fragment() -> Option<String> {
    let hash = address("hash");
    hash.starts_with(LINK).then(|| behind(&hash, 1).to_owned())
}

impl Calculator {
    fn has(&self, attribute: &str, value: &str) -> bool {
        self.host.get_attribute(attribute).as_deref() == Some(value)
    }

    /// Whether the page's address is a link to a question.
    pub(crate) fn is_linked(&self) -> bool {
        fragment().is_some()
    }

    /// Whether a link to the question may be had here.
    pub(crate) fn shares(&self) -> bool {
        self.has("share", "fragment")
    }

    fn note(&self, at: usize, words: &[&str], act: Option<(&'static str, &str)>) {
        let Some(note) = dom::by_id(&self.root, NOTES[at]) else {
            return;
        };
        let mut nodes = DomOut::new(&self.document);
        let out = &mut Page::new(&mut nodes);
        if !words.is_empty() {
            out.open_class("div", "act");
            out.open("p");
            out.leaf("b", words[0]);
            for text in &words[1..] {
                out.text(" ");
                out.text(*text);
            }
            out.close();
            if let Some((act, words)) = act {
                out.open_class("button", "btn ghost");
                out.attr("type", "button");
                out.attr("data-act", act);
                out.text(words);
                out.close();
            }
            out.close();
        }
        nodes.into(&note);
    }

    /// The key of this page's draft: another page, and another calculator with an id, has its own.
    fn draft_key(&self) -> String {
        [
            DRAFT,
            &address("pathname"),
            &address("search"),
            "#",
            &self.host.id(),
        ]
        .concat()
    }

    fn note_draft(&self, words: [Word; 2], act: Option<(&'static str, &str)>) {
        let words = words.map(Word::text);
        let said = dom::by_id(&self.root, NOTES[1]).and_then(|note| note.text_content());
        // Drawn once, not at each key.
        if !said.is_some_and(|said| said.starts_with(words[0])) {
            self.note(1, &words, act);
        }
    }

    /// Says that a draft is kept, or that none can be.
    fn note_kept(&self, kept: bool) {
        if kept {
            self.note_draft(w::DRAFT, Some(("forget", &m::DEVICE_FORGET)));
        } else {
            self.note_draft(w::NO_DRAFT, None);
        }
    }

    /// What the form begins with: the question of the link, else the draft under what the host presets.
    pub(crate) fn begin(&self) -> Begin {
        let mut unread = false;
        if let Some(text) = fragment().filter(|_| self.shares()) {
            if let Some(shared) = share::read(&text) {
                let unknown = w::shared_unknown(&shared.unknown);
                let mut words = w::SHARED.map(Word::text).to_vec();
                if !shared.unknown.is_empty() {
                    words.push(&unknown);
                }
                self.note(0, &words, Some(("own", &m::DEVICE_OWN_TREE)));
                self.begins(true);
                return Begin {
                    sheet: Sheet::of(calc_data::reference(), &shared.typed, today()),
                    answered: true,
                };
            }
            unread = true;
        }
        let keeps = self.keeps();
        let kept = |key: &str| stored(key).filter(|_| keeps);
        let draft = kept(&self.draft_key()).map(|text| Sheet::unpack(&text));
        if draft.is_some() {
            self.note_kept(true);
        }
        let words = w::SHARED_LONG.map(Word::text);
        self.note(0, if unread { &words } else { &[] }, None);
        let answered = draft.as_ref().is_some_and(|draft| draft.ticked("answered"));
        let mut sheet = draft.unwrap_or_else(|| self.preset());
        self.preset_over(&mut sheet);
        // Timed trees that are kept serve every tree, but those of a draft are newer.
        if sheet.get("timed.trees").is_empty() {
            let fields = kept(TIMED).as_deref().and_then(timed_from);
            for (name, text) in fields.unwrap_or_default() {
                sheet.set(name, &text);
            }
        }
        self.begins(false);
        Begin { answered, sheet }
    }

    /// Whether this page may keep what its reader says.
    pub(crate) fn keeps(&self) -> bool {
        self.has("storage", "draft")
    }

    /// Keeps the timed trees for every tree to come, or takes them off the device.
    pub(crate) fn keep_timed(&self, keep: bool) {
        let text = self.timed_file();
        let words = if !keep {
            drop(TIMED);
            m::DEVICE_TIMED_FORGOTTEN
        } else if text.is_empty() {
            m::DEVICE_TIMED_NONE
        } else if self.keeps() && store(TIMED, &text) {
            m::DEVICE_TIMED_KEPT
        } else {
            m::DEVICE_TIMED_REFUSED
        };
        device::note(self, TIMED_LINE, &words);
    }

    /// Keeps what stands in the form, if this page keeps drafts and its reader has asked for one; else offers it.
    /// Someone else's question is never kept.
    pub(crate) fn keep(&self) {
        if !self.keeps() || self.state.borrow().hosted.shared {
            return;
        }
        if stored(&self.draft_key()).is_some() {
            self.keep_draft();
        } else if !dom::by_id(&self.root, NOTES[1]).is_some_and(|note| note.has_child_nodes()) {
            self.note_draft(w::OFFER, Some(("keep", &m::DEVICE_KEEP)));
        }
    }

    fn keep_draft(&self) {
        let mut sheet = self.sheet();
        if self.is_answered() {
            sheet.set("answered", "on");
        }
        sheet.settle_day(today());
        self.note_kept(store(&self.draft_key(), &sheet.pack()));
    }

    /// Keeps a draft from now on, as the reader has asked for.
    pub(crate) fn begin_draft(&self) {
        self.keep_draft();
        self.focus_note();
    }

    /// Takes the draft off the device. The form stays as it is.
    pub(crate) fn forget_draft(&self) {
        drop(&self.draft_key());
        let words = w::FORGOTTEN.map(Word::text);
        self.note(1, &words, Some(("keep", &m::DEVICE_KEEP)));
        self.focus_note();
    }

    /// The button is gone: the focus goes to what stands in its place.
    fn focus_note(&self) {
        if let Some(note) = dom::by_id(&self.root, NOTES[1]) {
            let _ = note.set_attribute("tabindex", "-1");
            dom::focus(&note);
        }
    }

    /// Leaves someone else's question for one's own.
    pub(crate) fn back_to_own(&self) {
        if let Some(location) = part("location") {
            let _ = Reflect::set(&location, &"hash".into(), &"".into());
        }
        self.forget();
        self.begin_with(self.begin());
        self.focus_first();
    }
}

/// Copies a link to the question.
pub(crate) fn copy_link(calculator: &Rc<Calculator>) {
    let south =
        calculator.with_last(|question, _| question.place.hemisphere() == Hemisphere::South);
    let address = part("location").and_then(|location| get(&location, "href")?.as_string());
    let (Some(south), Some(address)) = (south, address) else {
        return;
    };
    let page = address.split('#').next().unwrap_or_default();
    match share::write(&calculator.to_answer(), south) {
        Some(text) => {
            let link = format!("{page}#{text}");
            export::copy_text(
                calculator,
                link,
                m::DEVICE_LINK_COPIED.text(),
                m::DEVICE_LINK_LABEL.text(),
            );
        }
        None => export::told(calculator, &m::DEVICE_LINK_LONG),
    }
}
