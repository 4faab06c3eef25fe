//! The towns, one list a country. A list is fetched once a name is typed; until it is here the form
//! says so, and where it can't be had, what to type instead.

use crate::climate::{self, AGAIN_MS};
use crate::plan::Plan;
use crate::plans;
use calc::timing::places::climate::countries_near;
use calc::timing::places::towns;
use calc::timing::places::towns::Town;
use calc_view::form::{MOST, SEARCHES, Towns, has_towns};
use js_sys::{Date, Function};
use std::cell::RefCell;
use std::rc::Rc;
use wasm_bindgen::JsValue;

enum List {
    Coming,
    Failed(f64),
    Here(Rc<Vec<Town>>),
}

/// A name that was looked up: country, text, towns.
type Looked = (String, String, Vec<Town>);
/// A point whose regions were looked up.
type Regions = ([f64; 2], Vec<(String, f64)>);

thread_local! {
    static LISTS: RefCell<Vec<(String, List)>> = const { RefCell::new(Vec::new()) };
    static LAST: RefCell<Vec<Looked>> = const { RefCell::new(Vec::new()) };
    static NEAR: RefCell<Regions> = const { RefCell::new(([0.0; 2], Vec::new())) };
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
    LAST.with(|last| last.borrow_mut().clear());
    put(country, List::Here(Rc::new(list)));
    plans::each(Plan::follow_on);
    true
}

/// Notes that a list could not be had.
pub fn failed(country: &str) {
    put(country, List::Failed(Date::now()));
    plans::each(Plan::follow_on);
}

/// The list of a country, asked for if it is not here and `fetch` says so; else how that stands.
fn list(country: &str, fetch: bool) -> Result<Rc<Vec<Town>>, Towns> {
    let known = LISTS.with(|lists| {
        let lists = lists.borrow();
        let (_, list) = lists.iter().find(|(code, _)| code == country)?;
        match list {
            List::Here(all) => Some(Ok(Rc::clone(all))),
            List::Coming => Some(Err(Towns::Coming)),
            List::Failed(at) if Date::now() - at < AGAIN_MS => Some(Err(Towns::Failed)),
            List::Failed(_) => None,
        }
    });
    if let Some(known) = known {
        return known;
    }
    let call = WANTED.with(|wanted| wanted.borrow().clone());
    let Some(call) = call.filter(|_| fetch) else {
        return Err(Towns::Failed);
    };
    put(country, List::Coming);
    let _ = call.call1(&JsValue::UNDEFINED, &country.into());
    Err(Towns::Coming)
}

/// The towns of a country for a name as typed so far.
pub fn find(country: &str, typed: &str) -> Towns {
    match list(country, true) {
        Ok(all) => Towns::Found(look_up(&all, country, typed)),
        Err(how) => how,
    }
}

/// The last names are remembered, one a search, since the form follows every key of every field.
fn look_up(all: &[Town], country: &str, typed: &str) -> Vec<Town> {
    LAST.with(|last| {
        let mut last = last.borrow_mut();
        let known = last
            .iter()
            .find(|(code, text, _)| code == country && text == typed);
        if let Some((_, _, found)) = known {
            return found.clone();
        }
        let found: Vec<Town> = towns::find(all, typed, MOST).into_iter().cloned().collect();
        last.truncate(SEARCHES.len() - 1);
        last.insert(0, (country.to_owned(), typed.to_owned(), found.clone()));
        found
    })
}

/// The regions near a point, by the towns of every country that it may lie in; none until all of these are here. They
/// are not asked for where the region that stands is in one of these countries.
pub fn near(latitude: f64, longitude: f64, stands: &str) -> Vec<(String, f64)> {
    let known = NEAR.with(|near| {
        let near = near.borrow();
        let same = near.0 == [latitude, longitude] && !near.1.is_empty();
        same.then(|| near.1.clone())
    });
    if let Some(known) = known {
        return known;
    }
    let mut near = Vec::new();
    let mut open = false;
    let constants = &calc_data::reference().constants.timing;
    let countries =
        climate::with_places(|places| countries_near(places, latitude, longitude, constants));
    let fetch = !countries
        .iter()
        .any(|(country, _)| stands.starts_with(country.as_str()));
    for (country, km) in countries {
        if !has_towns(&country) {
            near.push((country, km));
            continue;
        }
        match list(&country, fetch) {
            Ok(all) => near.extend(towns::regions_near(&all, latitude, longitude)),
            Err(_) => open = true,
        }
    }
    if open {
        return Vec::new();
    }
    NEAR.with(|kept| *kept.borrow_mut() = ([latitude, longitude], near.clone()));
    near
}
