//! The towns, one list a country. A list is fetched once a name is typed; until it is here the form
//! says so, and where it can't be had, what to type instead.

use crate::plans;
use calc::timing::pack::towns::{self, Town};
use calc_view::form::{MOST, Towns};
use js_sys::{Date, Function};
use std::cell::RefCell;
use wasm_bindgen::JsValue;

/// A list that could not be had is asked for again by the next key, but not sooner than this.
pub const AGAIN_MS: f64 = 5000.0;

enum List {
    Coming,
    Failed(f64),
    Here(Vec<Town>),
}

/// A name that was looked up: country, text, towns.
type Looked = (String, String, Vec<Town>);

thread_local! {
    static LISTS: RefCell<Vec<(String, List)>> = const { RefCell::new(Vec::new()) };
    static LAST: RefCell<Option<Looked>> = const { RefCell::new(None) };
    static WANTED: RefCell<Option<Function>> = const { RefCell::new(None) };
}

/// Keeps what to call with the code of a country whose list is wanted.
pub fn when_wanted(call: Function) {
    WANTED.with(|wanted| *wanted.borrow_mut() = Some(call));
}

/// Whether lists can be had at all: the form offers no search without.
pub fn can_be_had() -> bool {
    WANTED.with(|wanted| wanted.borrow().is_some())
}

fn put(country: &str, list: List) {
    LISTS.with(|lists| {
        let mut lists = lists.borrow_mut();
        lists.retain(|(code, _)| code != country);
        lists.push((country.to_owned(), list));
    });
}

/// Takes a packed list. False where the bytes are no such list.
pub fn take(country: &str, bytes: &[u8]) -> bool {
    let Ok(list) = towns::decode(bytes) else {
        return false;
    };
    LAST.with(|last| *last.borrow_mut() = None);
    put(country, List::Here(list));
    plans::follow();
    true
}

/// Notes that a list could not be had.
pub fn failed(country: &str) {
    put(country, List::Failed(Date::now()));
    plans::follow();
}

/// The towns of a country for a name as typed so far.
pub fn find(country: &str, typed: &str) -> Towns {
    let known = LISTS.with(|lists| {
        let lists = lists.borrow();
        let (_, list) = lists.iter().find(|(code, _)| code == country)?;
        match list {
            List::Here(all) => Some(Towns::Found(look_up(all, country, typed))),
            List::Coming => Some(Towns::Coming),
            List::Failed(at) if Date::now() - at < AGAIN_MS => Some(Towns::Failed),
            List::Failed(_) => None,
        }
    });
    if let Some(known) = known {
        return known;
    }
    let call = WANTED.with(|wanted| wanted.borrow().clone());
    let Some(call) = call else {
        return Towns::Failed;
    };
    put(country, List::Coming);
    let _ = call.call1(&JsValue::UNDEFINED, &country.into());
    Towns::Coming
}

/// The last name is remembered, since the form follows every key of every field.
fn look_up(all: &[Town], country: &str, typed: &str) -> Vec<Town> {
    LAST.with(|last| {
        let mut last = last.borrow_mut();
        match &*last {
            Some((code, text, found)) if code == country && text == typed => found.clone(),
            _ => {
                let found: Vec<Town> = towns::find(all, typed, MOST).into_iter().cloned().collect();
                *last = Some((country.to_owned(), typed.to_owned(), found.clone()));
                found
            }
        }
    })
}
