//! The element in its host, as a page sees it: the form, an answer, problems, what a host may set.

mod host;

use host::{Host, document, wait};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_test::{wasm_bindgen_test, wasm_bindgen_test_configure};
use web_sys::{Element, HtmlElement, ShadowRoot};

wasm_bindgen_test_configure!(run_in_browser);

#[wasm_bindgen_test]
fn the_form_stands_in_an_open_root_and_takes_no_focus() {
    let host = Host::new();
    assert!(host.has("form.ask .rows > .field:nth-child(6)"));
    assert!(host.value("#f-day").starts_with("Today, "));
    assert_eq!(host.focused(), "");
    assert!(!host.has("#answer > *") && !host.has(".errsum"));
    assert_eq!(host.root().adopted_style_sheets_count(), 1);
    // Once more changes nothing.
    host.type_in("#f-stems-0-diameter", "9");
    www_element::calls::connect(&host.element);
    assert_eq!(host.all("form").len(), 1);
    assert_eq!(host.value("#f-stems-0-diameter"), "9");
}

trait Sheets {
    fn adopted_style_sheets_count(&self) -> u32;
}

impl Sheets for ShadowRoot {
    fn adopted_style_sheets_count(&self) -> u32 {
        let sheets = js_sys::Reflect::get(self, &"adoptedStyleSheets".into()).expect("a list");
        js_sys::Reflect::get(&sheets, &"length".into())
            .ok()
            .and_then(|length| length.as_f64())
            .unwrap_or_default() as u32
    }
}

#[wasm_bindgen_test]
fn three_answers_and_the_button_give_an_answer() {
    let host = Host::new();
    host.fill_in_a_tree();
    assert!(
        !host.has(".answer-region"),
        "nothing is answered before it is asked"
    );
    let heard = host.hear();
    host.press_alone();
    assert!(host.has(".answer-region .tag"));
    let verdict = host.text(".answer-region .say");
    // The word on the tag, then the sentence.
    assert!(host.status().ends_with(&verdict), "{}", host.status());
    assert!(host.status().len() <= 140);
    assert!(
        host.root()
            .active_element()
            .is_some_and(|active| active.matches(".say").unwrap_or(false))
    );
    // The card stands first; what stands under it is told with the rest.
    assert!(host.has(".answer-region[aria-busy]") && heard.borrow().is_empty());
    host.ask_for_the_rest();
    assert!(!host.has(".answer-region[aria-busy]"));
    assert_eq!(host.result("outcome"), "do");
    assert_eq!(heard.take(), ["slipbark-result inputs,result,schema"]);
    let result = host.get("result");
    assert!(js_sys::Object::is_frozen(&result.into()));
}

#[wasm_bindgen_test]
fn problems_lead_to_their_fields_and_keep_what_was_typed() {
    let host = Host::new();
    host.type_in("#f-find", "norway maypole");
    host.type_in("#f-stems-0-diameter", "fourteen");
    host.type_in("#f-stems-as", "in around");
    host.type_in("#f-town", "Springfeild");
    host.type_in("#f-day", "31 June 2027");
    let heard = host.hear();
    host.press();
    assert_eq!(host.all(".errsum a").len(), 4, "in the order of the page");
    assert!(
        host.root()
            .active_element()
            .is_some_and(|active| active.matches(".errsum").unwrap_or(false))
    );
    assert_eq!(host.all(".errmsg").len(), 4);
    for (link, message) in host.all(".errsum a").iter().zip(host.all(".errmsg")) {
        assert_eq!(link.text_content(), message.text_content());
        let href = link.get_attribute("href").unwrap_or_default();
        assert!(host.has(&href), "{href} leads somewhere");
    }
    let size = host.one("#f-stems-0-diameter");
    assert_eq!(size.get_attribute("aria-invalid").as_deref(), Some("true"));
    let described = size.get_attribute("aria-describedby").unwrap_or_default();
    assert!(
        described.split(' ').all(|id| host.has(&format!("#{id}"))),
        "{described}"
    );
    assert!(host.one("#f-day").has_attribute("aria-invalid"));
    assert_eq!(host.value("#f-day"), "31 June 2027");
    assert_eq!(host.value("#f-find"), "norway maypole");
    assert_eq!(host.value("#f-stems-0-diameter"), "fourteen");
    host.all(".errsum a")[1]
        .unchecked_ref::<HtmlElement>()
        .click();
    assert_eq!(host.focused(), "f-stems-0-diameter");
    host.all(".errsum a")[2]
        .unchecked_ref::<HtmlElement>()
        .click();
    assert_eq!(host.focused(), "f-town");
    host.all(".errsum a")[3]
        .unchecked_ref::<HtmlElement>()
        .click();
    assert_eq!(host.focused(), "f-day");
    assert_eq!(*heard.borrow(), ["slipbark-invalid problems,schema"]);
    // What is settled goes; what was not asked about yet is not complained of.
    host.type_in("#f-stems-0-diameter", "44");
    assert_eq!(host.all(".errmsg").len(), 3);
    assert_eq!(host.all(".errsum a").len(), 3);
}

#[wasm_bindgen_test]
async fn a_change_is_answered_by_itself_and_moves_nothing() {
    let host = Host::new();
    host.fill_in_a_tree();
    host.press();
    let folds = host.all("#answer details.fold");
    assert!(folds.len() >= 2);
    let opened = folds[1].id();
    folds[1].set_attribute("open", "").expect("it opens");
    // The form stands folded under what was asked: it is opened, as by Change.
    host.one(".asked")
        .set_attribute("open", "")
        .expect("it opens");
    host.one("#f-stems-0-diameter")
        .unchecked_into::<HtmlElement>()
        .focus()
        .expect("a focus");
    let before = host.text("#answer .four");
    host.type_in("#f-stems-0-diameter", "9");
    assert_eq!(host.text("#answer .four"), before, "not on each key");
    wait(1_200).await;
    assert_ne!(host.text("#answer .four"), before);
    assert_eq!(host.focused(), "f-stems-0-diameter");
    let open: Vec<String> = host
        .all("#answer details[open]")
        .iter()
        .map(Element::id)
        .collect();
    assert!(open.contains(&opened), "{open:?} has {opened}");
    // What can't be read leaves no old answer standing, and no alarm.
    host.type_in("#f-stems-0-diameter", "nine");
    wait(1_200).await;
    assert!(!host.has(".answer-region") && !host.has(".errsum"));
    assert!(host.text("#answer").contains("nine"));
    assert_eq!(host.get("result"), JsValue::NULL);
}

#[wasm_bindgen_test]
fn a_unit_says_what_a_number_means_and_is_echoed() {
    let host = Host::new();
    host.type_in("#f-stems-0-diameter", "35cm");
    assert_eq!(
        host.text("#f-stems-0-diameter-r"),
        "Read as 35 cm (13.8 in)."
    );
    host.type_in("#f-height", "50");
    host.type_in("#f-stems-as", "cm across");
    assert_eq!(host.value("#f-stems-0-diameter"), "35cm");
    assert_eq!(host.text("#f-stems-0-diameter-r"), "");
    // Beside what is typed the unit stays; beside what is empty it follows.
    assert_eq!(host.text("#f-height-u"), "feet");
    assert_eq!(host.text("#f-targets-0-distance-u"), "metres");
    assert!(host.text("#f-stems-0-diameter-h").starts_with("1.3 m"));
}

#[wasm_bindgen_test]
fn lists_grow_and_shrink_with_the_focus_beside() {
    let host = Host::new();
    host.type_in("#f-targets-0-kind", "path");
    host.type_in("#f-targets-0-distance", "100");
    host.click("[data-act=add-target]");
    assert_eq!(host.focused(), "f-targets-1-kind");
    host.type_in("#f-targets-1-kind", "line");
    assert!(!host.one("#m-voltage-1").has_attribute("hidden"));
    assert!(host.one("#m-voltage-0").has_attribute("hidden"));
    host.click("[data-act=remove-target][data-at='1']");
    assert_eq!(host.all(".entry").len(), 0);
    assert_eq!(host.value("#f-targets-0-kind"), "path");
    assert_eq!(host.focused(), "f-targets-0-kind");
    host.click("[data-act=add-stem]");
    assert_eq!(host.focused(), "f-stems-1-diameter");
    assert!(host.has("#f-stems-1-bark"));
}

#[wasm_bindgen_test]
fn only_fields_that_matter_are_shown() {
    let host = Host::new();
    let shown = |id: &str| !host.one(id).has_attribute("hidden");
    assert!(shown("#m-bark") && !shown("#m-same-genus-near") && !shown("#m-whole-clone"));
    host.type_in("#f-find", "scots");
    host.click("input[name=species][value='Scots pine']");
    assert!(shown("#m-same-genus-near"));
    host.click("input[name=species][value='?']");
    assert!(shown("#m-species-kind") && !shown("#m-same-genus-near"));
    host.click("input[name='species.kind'][value=palm]");
    assert!(!shown("#m-bark") && !shown("#m-limbs"));
}

#[wasm_bindgen_test]
fn attributes_preset_the_form_and_properties_set_it() {
    let host = Host::with(&[
        ("species", "ACPL"),
        ("size", "14"),
        ("size-unit", "cm"),
        ("date", "2027-06-12"),
        ("region", "US-MA"),
        ("heading-level", "4"),
    ]);
    assert!(host.has("input[value='Norway maple']:checked"));
    assert_eq!(host.value("#f-stems-0-diameter"), "14");
    assert_eq!(host.value("#f-day"), "12 June 2027");
    let heard = host.hear();
    let answer = www_element::calls::compute(&host.element);
    assert!(js_sys::Reflect::has(&answer, &"outcome".into()).unwrap_or(false));
    assert_eq!(*heard.borrow(), ["slipbark-result inputs,result,schema"]);
    assert!(host.has("#answer h4") && !host.has("#answer h2"));
    heard.borrow_mut().clear();
    let inputs = host.get("inputs");
    js_sys::Reflect::set(&inputs, &"height".into(), &"40 ft".into()).expect("it is ours");
    // What the form has no control for is kept all the same.
    let spring = "2027-03-01,2,9";
    js_sys::Reflect::set(&inputs, &"spring".into(), &spring.into()).expect("it is ours");
    www_element::calls::set_property(&host.element, "inputs", &inputs).expect("good inputs");
    assert_eq!(host.value("#f-height"), "40 ft");
    assert!(heard.borrow().is_empty(), "a host that sets hears nothing");
    let again = host.get("inputs");
    for key in ["height", "spring", "species", "date", "region", "units"] {
        let of = |object: &JsValue| js_sys::Reflect::get(object, &key.into()).expect("an object");
        assert_eq!(of(&again), of(&inputs), "{key}");
    }
    js_sys::Reflect::set(&inputs, &"hight".into(), &"40 ft".into()).expect("it is ours");
    let refused =
        www_element::calls::set_property(&host.element, "inputs", &inputs).expect_err("a slip");
    let message = refused
        .dyn_into::<js_sys::TypeError>()
        .expect("a TypeError")
        .message();
    assert!(String::from(message).contains("hight"));
    www_element::calls::reset(&host.element);
    assert_eq!(host.value("#f-height"), "");
    assert_eq!(host.value("#f-stems-0-diameter"), "14");
    assert!(!host.has("#answer > *"));
    www_element::calls::focus_first(&host.element);
    assert_eq!(host.focused(), "f-find");
}

#[wasm_bindgen_test]
fn taken_out_and_put_back_it_goes_on() {
    let host = Host::new();
    host.fill_in_a_tree();
    host.press();
    host.element.remove();
    www_element::calls::disconnect(&host.element);
    assert_eq!(host.get("inputs"), JsValue::UNDEFINED);
    document()
        .body()
        .expect("a body")
        .append_child(&host.element)
        .expect("a child");
    www_element::calls::connect(&host.element);
    assert_eq!(host.value("#f-stems-0-diameter"), "14 1/2");
    assert_eq!(host.value("#f-day"), "12 June 2027");
    assert!(host.has("input[value='Norway maple']:checked"));
    assert_eq!(host.result("outcome"), "do");
}

#[wasm_bindgen_test]
fn the_next_tree_keeps_the_day_and_clears_the_tree() {
    let host = Host::new();
    host.fill_in_a_tree();
    assert!(host.one("[data-act=next]").has_attribute("hidden"));
    host.press();
    host.click("[data-act=next]");
    assert_eq!(host.value("#f-stems-0-diameter"), "");
    assert_eq!(host.value("#f-day"), "12 June 2027");
    assert!(!host.has("input[name=species]:checked") && !host.has("#answer > *"));
    assert_eq!(host.focused(), "f-find");
}

#[wasm_bindgen_test]
fn events_carry_no_coordinates_unless_the_host_asks() {
    for (attributes, told) in [(&[][..], false), (&[("events", "full")][..], true)] {
        let host = Host::with(attributes);
        let last = host.last_of("slipbark-input");
        host.type_in("#f-place-latitude", "42.36");
        assert_eq!(last.borrow().contains("42.36"), told, "{}", last.borrow());
    }
}

#[wasm_bindgen_test]
fn what_a_person_types_is_never_markup() {
    let host = Host::new();
    let evil = "<img src=x onerror=alert(1)>";
    host.type_in("#f-find", evil);
    host.type_in("#f-stems-0-diameter", evil);
    host.press();
    assert!(!host.has("img"));
    assert!(host.text(".errsum").contains("<img"));
    assert_eq!(host.value("#f-stems-0-diameter"), evil);
}
