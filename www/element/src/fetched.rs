//! What is fetched only when it is asked for: the climate places once a question names a point, a state or a country, the towns, one list
//! a country, once a name is typed, and what differs by country once a region is said or a tree is looked for by name. The page's script fetches them. Until a file is here, answers and the form say so;
//! where it can't be had, the form says what to type instead.

use crate::calculator::{self, Calculator};
use calc::models::season::Local;
use calc::question::Question;
use calc::timing::places::climate::{self, Places, countries_near};
use calc::timing::places::towns::{self, Town};
use calc_view::form::{MOST, SEARCHES, Towns, has_towns};
use js_sys::{Date, Function};
use std::cell::{Cell, RefCell};
use std::rc::Rc;
use wasm_bindgen::JsValue;

/// A file that could not be had is asked for again by the next key, but not sooner than this.
const AGAIN_MS: f64 = 5000.0;

thread_local! {
    static PLACES: RefCell<Places> = const { RefCell::new(Places { stations: Vec::new(), names: Vec::new(), regions: Vec::new() }) };
    static CLIMATE_CALL: RefCell<Option<Function>> = const { RefCell::new(None) };
    static CLIMATE_ASKED: Cell<f64> = const { Cell::new(0.0) };
    static REGIONAL_CALL: RefCell<Option<Function>> = const { RefCell::new(None) };
    static REGIONAL_ASKED: Cell<f64> = const { Cell::new(0.0) };
}

/// Keeps what to call when the table is wanted; while it can't be had, again and again.
pub(crate) fn when_climate_is_wanted(call: Function) {
    CLIMATE.keep(call);
}

/// Takes the packed table, and lets every answer that waits for it be worked out again. False where
/// the bytes are not such a table.
pub(crate) fn take_climate(bytes: &[u8]) -> bool {
    let Ok(places) = climate::decode(bytes) else {
        return false;
    };
    PLACES.with(|kept| *kept.borrow_mut() = places);
    calculator::each(Calculator::refresh);
    true
}

/// Looks at the table; it is empty until it is here.
pub(crate) fn with_places<T>(look: impl FnOnce(&Places) -> T) -> T {
    PLACES.with(|places| look(&places.borrow()))
}

/// What is known of a question's place. Asks for the table where a point, a state or a country is named and it is not
/// here.
pub(crate) fn local(question: &Question) -> Local {
    let constants = calc_data::reference().constants;
    let region = question.region.as_deref();
    let local = with_places(|places| Local::of(&constants.timing, &question.place, region, places));
    if local.table_missing {
        CLIMATE.want();
    }
    if question.region.is_some() {
        want_regional();
    }
    local
}

/// Keeps what to call when the file of what differs by country is wanted.
pub(crate) fn when_regional_is_wanted(call: Function) {
    REGIONAL.keep(call);
}

/// Takes that file, and lets every form and answer follow. False where the bytes are no such file.
pub(crate) fn take_regional(bytes: &[u8]) -> bool {
    let taken = calc_data::take_regional(bytes);
    if taken {
        calculator::each(Calculator::follow_names);
        calculator::each(Calculator::refresh);
    }
    taken
}

/// Asks for that file where it is not here.
pub(crate) fn want_regional() {
    if calc_data::reference().regional.get().is_none() {
        REGIONAL.want();
    }
}

/// A file that is asked for by a call of the page's script; one that could not be had is asked for again by the next
/// key, but not sooner than [`AGAIN_MS`].
struct Asked(
    &'static std::thread::LocalKey<RefCell<Option<Function>>>,
    &'static std::thread::LocalKey<Cell<f64>>,
);

const CLIMATE: Asked = Asked(&CLIMATE_CALL, &CLIMATE_ASKED);
const REGIONAL: Asked = Asked(&REGIONAL_CALL, &REGIONAL_ASKED);

impl Asked {
    fn keep(&self, call: Function) {
        self.0.with(|kept| *kept.borrow_mut() = Some(call));
    }

    fn want(&self) {
        let call = self.0.with(|kept| kept.borrow().clone());
        let now = Date::now();
        if let Some(call) = call
            && now - self.1.with(Cell::get) >= AGAIN_MS
        {
            self.1.with(|asked| asked.set(now));
            let _ = call.call0(&JsValue::UNDEFINED);
        }
    }
}

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
    static TOWNS_CALL: RefCell<Option<Function>> = const { RefCell::new(None) };
}

/// Keeps what to call with the code of a country whose list is wanted.
pub(crate) fn when_towns_are_wanted(call: Function) {
    TOWNS_CALL.with(|wanted| *wanted.borrow_mut() = Some(call));
}

/// Whether lists can be had at all: the form offers no search without.
pub(crate) fn towns_can_be_had() -> bool {
    TOWNS_CALL.with(|wanted| wanted.borrow().is_some())
}

fn put(country: &str, list: List) {
    LISTS.with(|lists| {
        let mut lists = lists.borrow_mut();
        lists.retain(|(code, _)| code != country);
        lists.push((country.to_owned(), list));
    });
}

/// Takes a packed list. False where the bytes are no such list.
pub(crate) fn take_towns(country: &str, bytes: &[u8]) -> bool {
    let Ok(list) = towns::decode(bytes) else {
        return false;
    };
    LAST.with(|last| last.borrow_mut().clear());
    put(country, List::Here(Rc::new(list)));
    calculator::each(Calculator::follow_on);
    true
}

/// Notes that a list could not be had.
pub(crate) fn towns_failed(country: &str) {
    put(country, List::Failed(Date::now()));
    calculator::each(Calculator::follow_on);
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
    let call = TOWNS_CALL.with(|wanted| wanted.borrow().clone());
    let Some(call) = call.filter(|_| fetch) else {
        return Err(Towns::Failed);
    };
    put(country, List::Coming);
    let _ = call.call1(&JsValue::UNDEFINED, &country.into());
    Err(Towns::Coming)
}

/// The towns of a country for a name as typed so far.
pub(crate) fn find_towns(country: &str, typed: &str) -> Towns {
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
pub(crate) fn regions_near(latitude: f64, longitude: f64, stands: &str) -> Vec<(String, f64)> {
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
    let countries = with_places(|places| countries_near(places, latitude, longitude, constants));
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
