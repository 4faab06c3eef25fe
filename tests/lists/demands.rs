//! What real lists demand, on invented ones: a column is judged before any cell is, what only the owner can know is
//! asked, and nothing is guessed.

use crate::show::{Told, file, hold, read};

fn holds(name: &str) {
    told(name, name, &Told::default());
}

fn metric(name: &str) {
    told(name, name, &Told::METRIC);
}

fn told(name: &str, expected: &str, told: &Told) {
    hold("demands", expected, file("demands", name).as_bytes(), told);
}

fn decided(name: &str, expected: &str, decisions: &'static str) {
    told(name, expected, &Told::decided(decisions));
}

#[test]
fn a_column_is_judged_and_its_unit_is_said_once() {
    holds("judged");
}

#[test]
fn a_diameter_that_is_a_girth_is_asked() {
    holds("girth");
    decided(
        "girth",
        "girth_decided",
        r#"{"DBH (cm)":{"is":"girth","unit":"cm"},"missing":["999"]}"#,
    );
    metric("girth_by_height");
}

#[test]
fn a_column_that_may_tell_what_a_tree_could_hit_is_asked() {
    holds("target_asked");
    decided(
        "target_asked",
        "target_asked_decided",
        r#"{"Anything near?":{"is":"target"}}"#,
    );
    decided(
        "target_asked",
        "target_asked_left",
        r#"{"Anything near?":{"is":"keep"}}"#,
    );
}

/// A height on the trunk in a header of millimetres, days as a spreadsheet counts them, faults in a condition, a figure
/// that lost its point, steep ground, a note that speaks of a wire.
#[test]
fn what_a_careful_reader_would_ask_of_a_row_is_told() {
    holds("careful");
}

#[test]
fn another_column_proves_the_unit() {
    holds("proved_by_area");
    metric("proved_by_girth");
    holds("metres");
}

#[test]
fn each_row_stands_in_the_state_that_it_names_by_a_whole_code() {
    let of_list = Told {
        region: "US-VT",
        ..Told::default()
    };
    // Districts of a city are no states: the column is kept, and the list's own state holds.
    let districts = file("demands", "regions").replace("US-WI", "North");
    for (text, wanted) in [
        (file("demands", "regions"), ["US-MA", "US-WI", "US-VT"]),
        (districts, ["US-VT"; 3]),
    ] {
        let Ok(list) = read(text.as_bytes(), &of_list) else {
            panic!("a list");
        };
        let regions: Vec<&str> = list
            .rows
            .iter()
            .filter_map(|row| match &row.is {
                calc_list::Is::Tree(_, question) => question.region.as_deref(),
                _ => None,
            })
            .collect();
        assert_eq!(regions, wanted);
    }
}

#[test]
fn classes_are_no_sizes_until_they_are_decided() {
    holds("classes");
    decided(
        "classes",
        "classes_decided",
        r#"{"dbh":{"classes":{"1":"3 in","2":"9 in","3":"15 in","4":"21 in","5":"27 in"}}}"#,
    );
}

#[test]
fn codes_are_trusted_only_where_the_whole_column_fits() {
    holds("codes_plants");
    holds("codes_local");
    decided(
        "codes_local",
        "codes_local_decided",
        r#"{"SPP":{"codes":{"NM":"Acer platanoides","SM":"Acer saccharum","RM":"Acer rubrum","BL":"black locust","TOH":"tree-of-heaven","SE":"Ulmus pumila","BX":"","WM":"white mulbery"}}}"#,
    );
    holds("codes_city");
}

#[test]
fn names_are_cut_and_never_changed() {
    holds("names");
    told(
        "names",
        "names_in_britain",
        &Told {
            region: "GB",
            ..Told::default()
        },
    );
    decided(
        "names",
        "names_decided",
        r#"{"names":{"Zelkova serrata":"unknown broadleaf","maple":"leave out","Sugar maple":"leave out","Acer sp.":"Acer platanoides"}}"#,
    );
}

#[test]
fn places_without_a_tree_are_skipped_and_counted_by_word() {
    holds("no_trees");
    decided(
        "no_trees",
        "no_trees_taken_back",
        r#"{"trees":["vacant lot","hedge"]}"#,
    );
}

#[test]
fn columns_by_year_are_one_family_and_numbers_are_no_years() {
    holds("years");
    holds("numbered");
    decided(
        "numbered",
        "numbered_newest",
        r#"{"dbh1 (in)":{"order":"2"},"dbh2 (in)":{"order":"1"}}"#,
    );
    decided(
        "numbered",
        "numbered_stems",
        r#"{"dbh1 (in)":{"order":"stems"},"dbh2 (in)":{"order":"stems"}}"#,
    );
}

#[test]
fn several_stems_are_never_one_size_many_times() {
    holds("stems");
    holds("stem_count_is_not");
}

#[test]
fn a_value_that_stands_for_nothing_is_asked_once() {
    holds("missing_codes");
    decided(
        "missing_codes",
        "missing_codes_decided",
        r#"{"missing":["999"]}"#,
    );
}

#[test]
fn tags_that_repeat_get_a_column_beside_them() {
    holds("keys");
    decided("keys", "keys_decided", r#"{"key":["Street","No"]}"#);
}

#[test]
fn places_are_degrees_or_they_are_kept() {
    holds("one_cell_places");
    holds("longitude_first");
    holds("asked_order");
    holds("projected");
    holds("plot_metres");
}

#[test]
fn headers_are_read_by_their_values_too() {
    holds("epithets");
    holds("form_headers");
    metric("dia_es");
    metric("names_es");
    holds("cut_off");
    holds("state_without_a_name");
}

#[test]
fn the_tail_is_no_trees() {
    holds("tail");
    holds("totals_by_tag");
}

#[test]
fn where_the_tape_went_is_no_height() {
    metric("tape_height");
    metric("trunk_height_header");
}

#[test]
fn what_it_could_hit_is_read_and_never_cleared_by_a_guess() {
    holds("targets");
}

#[test]
fn open_names_are_one_question_each_the_commonest_first_and_a_decision_settles_all_its_rows() {
    let mut text = String::from("Tag,Species,DBH in\n");
    for row in 0..30 {
        let name = match row % 10 {
            0..=4 => "Zelkova serrata",
            5..=7 => "maple",
            8 => "Acer platanoides",
            _ => "Sugar maple",
        };
        text.push_str(&format!("{row},{name},{}\n", 8 + row % 7));
    }
    let list = read(text.as_bytes(), &Told::default()).expect("a list");
    let asks = calc_list::open_names(&list.rows);
    let told: Vec<(&str, usize, bool)> = asks
        .iter()
        .map(|ask| (ask.typed.as_str(), ask.rows.len(), ask.proposal.is_some()))
        .collect();
    assert_eq!(
        told,
        [
            ("Zelkova serrata", 15, true),
            ("maple", 9, false),
            ("Sugar maple", 3, true)
        ]
    );
    let decided = Told::decided(
        r#"{"names":{"zelkova SERRATA":"unknown broadleaf","maple":"leave out","Sugar maple":"unknown broadleaf"}}"#,
    );
    let list = read(text.as_bytes(), &decided).expect("a list");
    assert!(calc_list::open_names(&list.rows).is_empty());
    assert_eq!((list.counts.ready, list.counts.left_out), (30, 9));
}
