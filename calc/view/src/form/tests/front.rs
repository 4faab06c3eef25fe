//! What stands in front: nine controls, an empty name, one field of the day, names while one types.

use super::{markup, options, text, today, values};
use crate::form::{FormOptions, Part, Sheet, View};
use crate::out::Html;
use calc::question::{Typed, read};
use chrono::NaiveDate;

/// The limit is the design's: nine controls, three of which are one question.
#[test]
fn nine_controls_stand_in_front_and_the_rest_is_folded() {
    let html = markup(&Typed::default());
    let (front, folded) = html.split_once("<details class=\"more\"").unwrap();
    let hidden = front
        .find("id=\"m-far\" hidden")
        .expect("the distance waits for a thing");
    let after = hidden + front[hidden..].find("id=\"far-a\"").unwrap();
    let kinds = front
        .find("id=\"m-species-kind\" hidden")
        .expect("kinds wait for an unknown");
    let behind = kinds + front[kinds..].find("</fieldset>").unwrap();
    let seen = [&front[..kinds], &front[behind..hidden], &front[after..]].concat();
    let count = |tag: &str| seen.matches(tag).count();
    // A trunk is confirmed only where it is in doubt.
    let sure = seen.matches("id=\"m-size-confirmed\" hidden").count();
    assert_eq!(sure, 1, "the confirmation waits for a doubt");
    let unseen = count("type=\"hidden\"") + sure;
    assert_eq!(count("<input") + count("<select") - unseen, 9, "{seen}");
    assert_eq!(
        count("<button"),
        2,
        "the answer, and the next tree, which waits for it"
    );
    let rows = folded.matches("<details class=\"give\"").count();
    assert_eq!(
        folded.matches("Used now: ").count(),
        rows + usize::from(rows == 0)
    );
}

#[test]
fn an_empty_name_is_an_unknown_tree() {
    let reference = calc_data::whole();
    let mut sheet = Sheet::new();
    sheet.set("stems[0].diameter", "14");
    assert_eq!(sheet.typed(reference, today()).species, None);
    let asked = sheet.asked(reference, today());
    assert_eq!(asked.species, text("unknown broadleaf"));
    assert!(read(reference, &asked).is_ok());
    sheet.set("find", "no such tree");
    assert_eq!(
        sheet.asked(reference, today()).species,
        text("no such tree")
    );
}

#[test]
fn the_day_line_says_how_it_was_read_and_when_the_bark_slips_next() {
    let reference = calc_data::whole();
    let autumn = FormOptions {
        today: NaiveDate::from_ymd_opt(2026, 11, 29).unwrap(),
        ..options()
    };
    let line = |find: &str, day: &str| {
        let mut sheet = Sheet::new();
        sheet.set("find", find);
        sheet.set("day", day);
        let view = View::new(reference, &sheet, &autumn);
        let found = view.lines().iter().find(|(id, _)| id == "day-a").cloned();
        found.unwrap().1
    };
    assert_eq!(line("", "today"), "");
    assert_eq!(line("", "12 June"), "Read as 12 June 2027.");
    assert_eq!(line("", "12 June 2027"), "");
    let next = line("Norway maple", "today");
    assert!(
        next.starts_with("Bark slips next: ") && next.ends_with(" 2027."),
        "{next}"
    );
    assert!(line("Norway maple", "6/12/2027").starts_with("Read as 12 June 2027. "));
}

#[test]
fn what_an_older_draft_says_is_read_in_the_controls_of_today() {
    let reference = calc_data::whole();
    let old = "stems.unit=cm&stems.how=around&stems[0].diameter=44&none_in_reach=on&day=other&date.y=2027&date.m=June&date.d=20";
    let typed = Sheet::unpack(old).typed(reference, today());
    assert_eq!(typed.date, text("2027-06-20"));
    assert!(typed.none_in_reach && typed.targets.is_empty());
    assert_eq!(
        (&typed.units, &typed.stems[0].girth),
        (&text("metric"), &text("44"))
    );
}

#[test]
fn nothing_is_picked_for_the_asker() {
    let html = markup(&Typed::default());
    let picked: Vec<&str> = html
        .split("<input")
        .skip(1)
        .map(|rest| rest.split('>').next().unwrap())
        .filter(|input| input.contains(" checked"))
        .collect();
    assert_eq!(picked, Vec::<&str>::new());
    assert!(html.contains("value=\"Today, 12 June 2027\""));
}

#[test]
fn typing_shortens_the_list_and_what_is_picked_stays() {
    let reference = calc_data::whole();
    let options = options();
    let names = |find: &str, species: &str| {
        let mut sheet = Sheet::new();
        sheet.set("find", find);
        sheet.set("species", species);
        let view = View::new(reference, &sheet, &options);
        let mut out = Html::default();
        view.part(&mut out, Part::Species);
        let html = out.into_string();
        values(&html, "value")
            .iter()
            .map(|name| (*name).to_owned())
            .collect::<Vec<_>>()
    };
    assert!(names("", "").is_empty(), "names come while one types");
    let maples = names("maple", "");
    assert!(maples.len() == 5, "{maples:?}");
    assert_eq!(maples.last().unwrap(), "?", "the last is none of these");
    assert!(names("acer pl", "").contains(&"Norway maple".to_owned()));
    assert!(names("ACPL", "").contains(&"Norway maple".to_owned()));
    assert_eq!(names("qqq", "Norway maple"), ["Norway maple", "?"]);
    assert_eq!(names("qqq", ""), ["?"]);
}

/// The builder's form is the one that the module would draw, but for what only the reader's browser knows: the day, and
/// that the button waits.
#[test]
fn the_form_of_a_built_page_is_the_live_one() {
    let form = |built: bool, today: NaiveDate| {
        let options = FormOptions {
            built,
            today,
            ..options()
        };
        let mut out = Html::default();
        View::new(calc_data::whole(), &Sheet::new(), &options).form(&mut out);
        out.into_string()
    };
    let other_day = NaiveDate::from_ymd_opt(2031, 11, 29).unwrap();
    let built = form(true, today());
    assert_eq!(
        built,
        form(true, other_day),
        "no day of the build stands in it"
    );
    let soon = built.split("<p class=\"used soon\"").nth(1).unwrap();
    let soon = format!(
        "<p class=\"used soon\"{}</p>",
        soon.split("</p>").next().unwrap()
    );
    let live = built
        .replace(&soon, "")
        .replace("value=\"Today\"", "value=\"Today, 12 June 2027\"")
        .replacen(
            "class=\"btn\" type=\"button\"",
            "class=\"btn\" type=\"submit\"",
            1,
        );
    assert_eq!(live, form(false, today()));
}
