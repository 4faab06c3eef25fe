//! The small aids: readings of a height, timed trees and their file.

use super::{full, options, text, today};
use crate::form::{Sheet, View, timed_from};
use calc::question::{HeightAidTyped, Typed};

fn line(sheet: &Sheet, id: &str) -> String {
    let options = options();
    let view = View::new(calc_data::whole(), sheet, &options);
    let found = view.lines().iter().find(|(known, _)| known == id).cloned();
    found.unwrap_or_else(|| panic!("no line {id}")).1
}

fn sheet(fields: &[(&str, &str)]) -> Sheet {
    let typed = Typed {
        height: None,
        ..full()
    };
    let mut sheet = Sheet::of(calc_data::whole(), &typed, today());
    for (name, text) in fields {
        sheet.set(name, text);
    }
    sheet
}

const ANGLES: [(&str, &str); 4] = [
    ("height_aid.by", "angles"),
    ("height_aid.distance", "100"),
    ("height_aid.top", "45"),
    ("height_aid.foot", "0"),
];

#[test]
fn readings_count_as_measured_the_moment_they_are_complete_and_the_button_fills_them_in() {
    let reference = calc_data::whole();
    let mut sheet = sheet(&ANGLES);
    assert_eq!(
        line(&sheet, "aid-a"),
        "These make 100 ft. This counts as the measured height. The button fills it in above."
    );
    let typed = sheet.typed(reference, today());
    assert_eq!(typed.height, None);
    let asked = calc::question::read(reference, &typed).expect("a question");
    let metres = asked.tree.height.map(|height| height.m());
    assert!(
        metres.is_some_and(|m| (m - 30.48).abs() < 1e-9),
        "{metres:?}"
    );
    sheet.set("height_aid.top", "");
    assert_eq!(
        sheet.typed(reference, today()).height_aid,
        None,
        "not complete"
    );
    sheet.set("height_aid.top", "45");
    assert_eq!(sheet.measured(), Ok("100".into()));
    sheet.set("height", "100");
    assert_eq!(
        line(&sheet, "height-a"),
        "As measured by a distance and two angles below. It can be changed here."
    );
    let typed = sheet.typed(reference, today());
    assert_eq!(typed.height, text("100"));
    assert_eq!(
        typed.height_aid.as_ref().map(|aid| &aid.top),
        Some(&text("45"))
    );
    // Changed by hand it is the asker's own, and the readings stay where they are.
    sheet.set("height", "80");
    assert_eq!(line(&sheet, "height-a"), "You told it.");
    assert_eq!(sheet.typed(reference, today()).height_aid, None);
    assert_eq!(sheet.get("height_aid.top"), "45");
}

#[test]
fn readings_that_can_t_meet_say_what_to_do() {
    let mut sheet = sheet(&ANGLES);
    sheet.set("height_aid.foot", "50");
    assert_eq!(
        line(&sheet, "aid-a"),
        "Angle to the top: The top must be above the foot. Read both angles again."
    );
    sheet.set("height_aid.by", "shadow");
    sheet.set("height_aid.tree_shadow", "60");
    sheet.set("height_aid.stick", "6");
    sheet.set("height_aid.stick_shadow", "0");
    let (field, words) = sheet.measured().expect_err("no shadow");
    assert_eq!(field, "f-height-aid-stick-shadow");
    assert!(words.contains("must be more than 0"), "{words}");
    sheet.set("height_aid.by", "");
    assert_eq!(
        sheet.measured().expect_err("nothing picked").0,
        "f-height-aid-by"
    );
    assert_eq!(line(&sheet, "aid-a"), "");
}

#[test]
fn readings_without_a_height_come_back_with_it_filled_in() {
    let typed = Typed {
        height: None,
        height_aid: Some(HeightAidTyped {
            by: text("stick"),
            distance: text("25 m"),
            stick: text("50 cm"),
            eye_to_stick: text("62.5 cm"),
            ..HeightAidTyped::default()
        }),
        ..full()
    };
    let sheet = Sheet::of(calc_data::whole(), &typed, today());
    assert_eq!(sheet.get("height"), "65.6", "20 m in feet");
    let again = sheet.typed(calc_data::whole(), today());
    assert_eq!(again.height_aid, typed.height_aid);
}

#[test]
fn timed_trees_say_their_rate_or_why_there_is_none() {
    let mut sheet = sheet(&[("timed.trees", "12\n9 1/2; 14"), ("timed.minutes", "31")]);
    let said = line(&sheet, "timed-a");
    assert!(
        said.starts_with("From your own trees: three trees in 31 minutes. That is 1."),
        "{said}"
    );
    for (trees, minutes, says) in [
        ("12", "9", "Time at least two trees"),
        ("", "9", "Time at least two trees"),
        ("12\n14", "0", "must be more than 0"),
        ("12\n14", "5000", "is over 12 times"),
        ("12\n14", "0.1", "or under a twelfth of"),
        ("12\n14", "", "is needed"),
        ("12\nfourteen", "9", "“fourteen”"),
    ] {
        sheet.set("timed.trees", trees);
        sheet.set("timed.minutes", minutes);
        let said = line(&sheet, "timed-a");
        assert!(said.contains(says), "{trees:?} {minutes:?}: {said}");
    }
    sheet.set("timed.trees", "12\n14");
    sheet.set("timed.minutes", "20");
    sheet.set("timed.species", "no such tree");
    assert!(line(&sheet, "timed-a").contains("no species that we know"));
}

#[test]
fn timed_trees_come_back_from_their_file_with_their_units() {
    let mut sheet = Sheet::new();
    sheet.set("stems.unit", "cm");
    sheet.set("timed.trees", "30\n 12 1/2 in;25,5\n\n");
    sheet.set("timed.minutes", "41");
    sheet.set("timed.species", "Norway maple");
    let file = sheet.timed_file();
    assert_eq!(
        file,
        "slipbark timed trees,1\r\ntree,30 cm\r\ntree,12 1/2 in\r\ntree,25,5 cm\r\nminutes,41\r\nspecies,Norway maple\r\n"
    );
    let fields = timed_from(&file).expect("our own file");
    assert_eq!(fields[0].1, "30 cm\n12 1/2 in\n25,5 cm");
    assert_eq!(fields[1], ("timed.minutes", "41".to_owned()));
    assert_eq!(fields[2], ("timed.width", String::new()));
    assert_eq!(fields[3], ("timed.species", "Norway maple".to_owned()));
    assert!(timed_from("slipbark timed trees,2\ntree,3 in").is_none());
    assert!(timed_from("date,low,high\n2027-03-01,2,9").is_none());
}
