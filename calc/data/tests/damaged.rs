//! Content that is damaged stops the build, at a file and a line. Each check copies `content/`, damages one thing, and
//! reads the copy with the build's own code.

#[path = "../build/content/mod.rs"]
#[allow(dead_code, reason = "the build reads more of a problem")]
mod content;
#[path = "damaged/copy.rs"]
mod copy;
#[path = "damaged/leaf_marks.rs"]
mod leaf_marks;
#[path = "../src/list_tables.rs"]
#[allow(unreachable_pub, dead_code, reason = "the library uses all of it")]
mod list_tables;
#[path = "damaged/natives.rs"]
mod natives;
#[path = "damaged/plan_constants.rs"]
mod plan_constants;
#[path = "damaged/sources.rs"]
mod sources;
#[path = "../src/table.rs"]
#[allow(unreachable_pub, dead_code, reason = "the library uses all of it")]
mod table;

use copy::Copy;

const JOIN: &str = "evidence/species_join";
const CAUTIONS: &str = "evidence/cautions";
const NAMED: &str = "rules/caution_species";
const METHODS: &str = "rules/methods";
const CONSTANTS: &str = "rules/constants";
const TIMING: &str = "rules/timing_constants";

/// Tables in which each species has a row of its own name.
const OWN: [&str; 6] = [
    "evidence/status",
    "evidence/identification",
    "evidence/leaf_marks",
    "evidence/listed_site",
    "rules/durability",
    "rules/species_traits",
];

#[test]
fn an_undamaged_copy_is_read() {
    let copy = Copy::new("undamaged");
    let read = content::read(&copy.folder).unwrap_or_else(|problem| panic!("{problem}"));
    assert_eq!(
        format!("{read:?}"),
        format!("{:?}", calc_data::whole()),
        "what the build packs comes back as it was read"
    );
}

#[test]
fn a_species_without_one_of_its_own_rows_stops_the_build_at_its_line() {
    for (at, table) in OWN.into_iter().enumerate() {
        let copy = Copy::new(&format!("species-own-{at}"));
        copy.without(table, "Morus alba,");
        copy.stops_at(
            JOIN,
            "Morus alba,",
            &[&format!("content/{table}.csv has no row \"Morus alba\"")],
        );
    }
}

#[test]
fn a_new_species_is_told_every_row_that_is_missing_at_once() {
    let copy = Copy::new("species-new");
    let old = copy.text(JOIN);
    let line = old
        .lines()
        .find(|of| of.starts_with("Quercus alba,"))
        .expect("white oak");
    copy.add(JOIN, &line.replace("Quercus alba", "Quercus bicolor"));
    let tables = OWN.map(|table| format!("{table}.csv has no row"));
    let mut says: Vec<&str> = tables.iter().map(String::as_str).collect();
    says.extend([
        "species_response.csv has no row \"Quercus bicolor; Q. macrocarpa; Q. robur\"",
        "bark.csv has no row \"Quercus bicolor\"",
        "height.csv has no usable row \"WYKOFF@FVS-CS\" of Quercus bicolor",
        "crown.csv has no usable row",
        "mature_height.csv has no row",
        "gdd_thresholds.csv has no row",
        "genus_marks.csv asks each Quercus for oak",
        "none, because",
    ]);
    copy.stops_at(JOIN, "Quercus bicolor,", &says);
}

#[test]
fn a_row_that_a_species_names_and_that_is_not_there_stops_the_build() {
    for (at, (species, table, line)) in [
        (
            "Morus alba,",
            "evidence/species_response",
            "White mulberry,",
        ),
        ("Morus alba,", "evidence/bark", "Morus alba,"),
        ("Morus alba,", "evidence/height", "Morus alba,"),
        ("Morus alba,", "evidence/crown", "Morus alba,"),
        ("Morus alba,", "evidence/mature_height", "Morus alba,"),
        (
            "Paulownia tomentosa,",
            "evidence/gdd_thresholds",
            "Paulownia tomentosa,",
        ),
        (
            "Gleditsia triacanthos,",
            "evidence/sprout_probability",
            "GLTR,",
        ),
    ]
    .into_iter()
    .enumerate()
    {
        let copy = Copy::new(&format!("species-named-{at}"));
        copy.without(table, line);
        copy.stops_at(JOIN, species, &[&format!("content/{table}.csv has no")]);
    }
}

#[test]
fn an_empty_key_of_a_species_is_no_reason_for_none() {
    let copy = Copy::new("species-empty");
    copy.replace(
        JOIN,
        "Quercus robur,",
        "\"none, because it is not in the list of plant characteristics\"",
        "",
    );
    copy.stops_at(JOIN, "Quercus robur,", &["write \"none, because …\""]);
    let copy = Copy::new("species-bare");
    copy.replace(
        "rules/durability",
        "Acer rubrum,",
        "\"none, because no class of it was read: taken as C\"",
        "none",
    );
    copy.stops_at(
        "rules/durability",
        "Acer rubrum,",
        &["class: \"none\" gives no reason"],
    );
}

#[test]
fn a_native_tree_without_a_state_to_warn_of_stops_the_build() {
    let copy = Copy::new("species-native");
    copy.replace("evidence/status", "Morus alba,", ",introduced,", ",native,");
    copy.stops_at(
        "evidence/native_range",
        "Morus alba,",
        &["native in the lower 48, and no state is here"],
    );
    let copy = Copy::new("species-native-twice");
    copy.replace(
        "evidence/native_range",
        "Acer rubrum,",
        "GB IE DE",
        "US GB IE DE",
    );
    copy.stops_at(
        "evidence/native_range",
        "Acer rubrum,",
        &["US is native or doubtful too"],
    );
}

#[test]
fn a_company_as_authority_and_months_with_one_end_stop_the_build() {
    const WILT: &str = "evidence/oak_wilt_regions";
    let copy = Copy::new("wilt-company");
    copy.replace(
        WILT,
        "US-MN,",
        "Minnesota DNR Forestry",
        "Oakwood Tree Care Company",
    );
    copy.stops_at(WILT, "US-MN,", &["is a company's"]);
    let copy = Copy::new("wilt-months");
    copy.replace(WILT, "US-WI,", "07-31", "");
    copy.stops_at(WILT, "US-WI,", &["the months have one end"]);
}

#[test]
fn a_listed_tree_among_the_names_that_are_not_on_the_list_stops_the_build() {
    const OTHERS: &str = "evidence/other_names";
    let copy = Copy::new("others-listed");
    copy.replace(OTHERS, "sugar maple,", "Acer saccharum", "Acer platanoides");
    copy.stops_at(
        OTHERS,
        "sugar maple,",
        &["is on the list: its row here must go"],
    );
}

#[test]
fn an_oak_without_its_mark_stops_the_build() {
    for (at, mark) in ["oak", "white_oak", "dust"].into_iter().enumerate() {
        let copy = Copy::new(&format!("species-mark-{at}"));
        copy.without("rules/species_traits", &format!("Quercus alba,{mark},"));
        copy.stops_at(
            JOIN,
            "Quercus alba,",
            &["genus_marks.csv asks each Quercus for", mark],
        );
    }
    let copy = Copy::new("species-cherry");
    copy.without(NAMED, "Prunus avium,DZ7");
    copy.stops_at(
        JOIN,
        "Prunus avium,",
        &["genus_marks.csv asks each Prunus for DZ7"],
    );
}

#[test]
fn a_name_that_finds_another_species_already_stops_the_build() {
    let copy = Copy::new("species-name");
    copy.add("rules/species_names", "Morus alba,Norway maple,invented");
    copy.stops_at(
        JOIN,
        "Morus alba,",
        &["the name \"Norway maple\"", "Acer platanoides"],
    );
}

#[test]
fn a_plant_code_of_two_species_stops_the_build() {
    let copy = Copy::new("species-code");
    copy.replace(JOIN, "Betula pendula,", ",BEPE3,", ",BELE,");
    copy.stops_at(JOIN, "Betula pendula,", &["BELE", "Betula lenta"]);
}

/// White oak shares its row of the responses with two others, and that row's name is of all three.
#[test]
fn a_species_without_a_name_of_its_own_stops_the_build() {
    let copy = Copy::new("species-nameless");
    copy.replace(
        "evidence/bark",
        "Quercus macrocarpa,",
        "Quercus macrocarpa",
        "Quercus stellata",
    );
    copy.replace(
        JOIN,
        "Quercus macrocarpa,",
        ",Quercus macrocarpa,own,",
        ",Quercus alba,own,",
    );
    copy.stops_at(JOIN, "Quercus macrocarpa,", &["has no name of its own"]);
}

#[test]
fn a_row_of_a_species_that_is_not_in_the_list_stops_the_build() {
    for table in [
        "rules/species_names",
        "rules/durability",
        "rules/species_traits",
        NAMED,
    ] {
        let copy = Copy::new(&format!("stranger-{}", table.replace('/', "-")));
        let text = copy.text(table);
        let (name, rest) = text
            .lines()
            .nth(1)
            .and_then(|line| line.split_once(','))
            .expect("a row");
        copy.add(table, &format!("Abies invented,{rest}"));
        copy.stops_at(
            table,
            "Abies invented,",
            &["no species of species_join.csv"],
        );
        assert_ne!(name, "Abies invented");
    }
}

#[test]
fn a_caution_that_is_renamed_or_taken_out_stops_the_build() {
    let copy = Copy::new("caution-renamed");
    copy.replace(CAUTIONS, "HZ3,", "HZ3", "HZ33");
    copy.stops_at(
        CAUTIONS,
        "HZ33,",
        &["\"HZ33\" is no caution that the code knows"],
    );
    let copy = Copy::new("caution-out");
    copy.without(CAUTIONS, "HZ8,");
    copy.stops_at_the_end(CAUTIONS, "the caution \"HZ8\" has no row");
    let copy = Copy::new("caution-twice");
    let text = copy.text(CAUTIONS);
    copy.add(CAUTIONS, text.lines().nth(1).expect("a caution"));
    assert!(copy.problem().contains("HZ1 stands twice"));
}

#[test]
fn a_caution_whose_input_the_code_does_not_bear_out_stops_the_build() {
    for (at, (line, from, to)) in [
        (
            "HZ8,",
            "\"none: a line under \"\"check these too\"\"\"",
            "from the question",
        ),
        (
            "HZ1,",
            "from the question",
            "\"none: a line under \"\"check these too\"\"\"",
        ),
        ("HZ5,", ",always", ",from the question"),
        ("ST1,", "from a plan", "from the question"),
        ("TX2,", "from the species", "from the question"),
        ("TX4,", "none: no species of the list", "from the species"),
    ]
    .into_iter()
    .enumerate()
    {
        let copy = Copy::new(&format!("caution-input-{at}"));
        copy.replace(CAUTIONS, line, from, to);
        copy.stops_at(CAUTIONS, line, &["input: ", "the code decides it"]);
    }
    let copy = Copy::new("caution-input-word");
    copy.replace(CAUTIONS, "HZ1,", "from the question", "from the questions");
    copy.stops_at(
        CAUTIONS,
        "HZ1,",
        &["input: \"from the questions\" is no input"],
    );
}

#[test]
fn a_caution_that_nothing_decides_stops_the_build() {
    let copy = Copy::new("caution-nobody");
    copy.without(NAMED, "Robinia pseudoacacia,TX5");
    copy.stops_at(CAUTIONS, "TX5,", &["TX5 is decided by nothing"]);
    let copy = Copy::new("caution-unasked-species");
    copy.add(NAMED, "Morus alba,TX4,invented");
    copy.stops_at(CAUTIONS, "TX4,", &["names Morus alba for TX4"]);
    let copy = Copy::new("caution-no-such");
    copy.add(NAMED, "Morus alba,TX99,invented");
    copy.stops_at(
        NAMED,
        "Morus alba,TX99",
        &["caution: \"TX99\" is no caution"],
    );
}

#[test]
fn a_row_of_the_methods_that_is_renamed_or_taken_out_or_twice_stops_the_build() {
    let copy = Copy::new("method-renamed");
    copy.replace(METHODS, "conifer,", "conifer", "conifers");
    copy.stops_at(
        METHODS,
        "conifers,",
        &["\"conifers\" is no condition of the code"],
    );
    let copy = Copy::new("method-out");
    copy.without(METHODS, "oak_wilt_months,");
    copy.stops_at_the_end(METHODS, "the condition \"oak_wilt_months\" has no row");
    let copy = Copy::new("method-twice");
    copy.add(METHODS, "dead,,.,.,.,.,.,.,.,.,.,own@invented,own,invented");
    assert!(copy.problem().contains("dead stands twice"));
}

/// Places of sources are printed: they are words.
#[test]
fn a_code_in_the_place_of_a_source_and_a_curve_without_its_region_in_words_stop_the_build() {
    let copy = Copy::new("place-code");
    let line = "unknown broadleaf,";
    let place = "other hardwoods of the northeastern states";
    copy.replace("rules/unknown_species", line, place, "as S51 says");
    copy.stops_at("rules/unknown_species", line, &["S51", "say it in words"]);
    let copy = Copy::new("curve-region");
    copy.without("rules/curve_regions", "FVS-UT,");
    let says = ["region: FVS-UT has no row in content/rules/curve_regions.csv"];
    copy.stops_at("evidence/height", "Abies concolor,WYKOFF,", &says);
}

#[test]
fn a_size_of_the_methods_that_can_t_be_read_stops_the_build() {
    for (from, to, says) in [
        ("> 6", "over 6", "\"over 6\" is no size"),
        ("> 6", "> 6 < 2", "\"> 6 < 2\" is no size"),
        ("> 6", "> 6 > 2", "\"> 6 > 2\" is no size"),
        ("> 6", "> six", "\"> six\" is no size"),
        ("> 6", "bush: > 6", "\"bush: > 6\" is no size"),
        (
            "> 6",
            "> 6 or many stems",
            "\"> 6 or many stems\" is no size",
        ),
        ("> 6", "> 6; < 2", "\"< 2\" is a second size"),
    ] {
        let copy = Copy::new("method-size");
        copy.replace(METHODS, "over_6,", from, to);
        copy.stops_at(METHODS, "over_6,", &["size_in: ", says]);
    }
}

#[test]
fn a_constant_that_is_renamed_missing_or_twice_stops_the_build() {
    let copy = Copy::new("constant-renamed");
    copy.replace(CONSTANTS, "ring.least_mm,", "least", "smallest");
    let says = [
        "the code has no constant ring.smallest_mm",
        "no row for ring.least_mm",
    ];
    copy.stops_at(CONSTANTS, "ring.smallest_mm,", &says);
    let copy = Copy::new("constant-out");
    copy.without(CONSTANTS, "effort.peel.");
    let says = "no row for effort.peel.low, effort.peel.likely, effort.peel.high";
    copy.stops_at_the_end(CONSTANTS, says);
    let copy = Copy::new("constant-twice");
    copy.add(CONSTANTS, "ring.least_mm,1,mm,own,invented,ASSUMPTION,");
    assert!(copy.problem().contains("ring.least_mm stands twice"));
    let copy = Copy::new("constant-placeless");
    copy.replace(CONSTANTS, "ring.most_mm,", "50 cm or more possible", "");
    copy.stops_at(CONSTANTS, "ring.most_mm,", &["place is empty"]);
}

#[test]
fn a_constant_of_the_season_that_is_renamed_or_missing_stops_the_build() {
    let copy = Copy::new("timing-renamed");
    copy.replace(TIMING, "lapse,", "lapse", "laps");
    copy.stops_at(
        TIMING,
        "laps,",
        &["no constant timing.laps", "no row for timing.lapse"],
    );
    let copy = Copy::new("timing-out");
    copy.without(TIMING, "p_best,");
    copy.stops_at_the_end(TIMING, "no row for timing.p_best");
}

#[test]
fn constants_in_another_order_are_the_same_constants() {
    for table in [CONSTANTS, TIMING] {
        let copy = Copy::new(&format!("order-{}", table.replace('/', "-")));
        let text = copy.text(table);
        let mut lines: Vec<&str> = text.lines().collect();
        lines[1..].reverse();
        copy.write(table, &(lines.join("\n") + "\n"));
        let read = content::read(&copy.folder).unwrap_or_else(|problem| panic!("{problem}"));
        let known = calc_data::whole().constants;
        assert_eq!(*read.constants, *known, "{table}");
    }
}

#[test]
fn a_cell_that_can_not_be_read_is_told_with_its_column() {
    for (at, (table, line, from, to, says)) in [
        (
            CONSTANTS,
            "ring.least_mm,",
            ",150,",
            ",15O,",
            "value: \"15O\" is not a number",
        ),
        (CONSTANTS, "ring.least_mm,", ",150,", ",,", "value is empty"),
        (
            CONSTANTS,
            "ring.least_mm,",
            ",150,",
            ",NaN,",
            "\"NaN\" is not a number",
        ),
        (
            CONSTANTS,
            "ring.most_mm,",
            "PUBLISHED",
            "PRINTED",
            "grade: \"PRINTED\" is no grade",
        ),
        (
            CONSTANTS,
            "ring.most_mm,",
            "NATNOE",
            "NATNOBODY",
            "\"NATNOBODY\" is not in sources.csv",
        ),
        (
            "evidence/species_response",
            "White mulberry,",
            "hardwood",
            "wood",
            "group: \"wood\" is no group: hardwood, conifer",
        ),
        (
            METHODS,
            "dead,",
            "R,R",
            "R,X",
            "saw_ring: \"X\" is not one of . P N R",
        ),
        (
            "rules/seasonal_restrictions",
            "USA Utah",
            "04-01",
            "04-00",
            "from_md: \"04-00\" is not a month and a day",
        ),
        (
            METHODS,
            "dead,",
            "R,R",
            "R,R,R",
            "15 cells where the header has 14",
        ),
    ]
    .into_iter()
    .enumerate()
    {
        let copy = Copy::new(&format!("cell-{at}"));
        copy.replace(table, line, from, to);
        copy.stops_at(table, line, &[says]);
    }
    let copy = Copy::new("basis-none");
    copy.replace(METHODS, "dead,", ",print,", ",printed,");
    copy.stops_at(
        METHODS,
        "dead,",
        &["basis: \"printed\" is not one of print practice own"],
    );
    let copy = Copy::new("basis-own");
    copy.replace(METHODS, "over_6,", ",own,", ",print,");
    copy.stops_at(METHODS, "over_6,", &["its cites do not bear that out"]);
    let copy = Copy::new("column");
    copy.replace(METHODS, "id,", "fell", "felling");
    copy.stops_at(METHODS, "always,", &["there is no column \"fell\""]);
}

#[test]
fn a_header_that_stands_twice_or_a_word_that_means_two_things_stops_the_build() {
    for (at, (table, line, from, to, says)) in [
        (
            "rules/list_headers",
            "Stammumfang,",
            "Stammumfang",
            "DBH",
            "\"DBH\" stands twice",
        ),
        (
            "rules/list_headers",
            "Stammumfang,",
            ",girth,",
            ",grith,",
            "\"grith\" is no column",
        ),
        (
            "rules/list_headers",
            "Stammumfang,",
            ",cm,",
            ",km,",
            "\"km\" is not one of",
        ),
        (
            "rules/list_words",
            "not_tree,tocón,",
            ",stump,",
            ",stmup,",
            "\"stmup\" is not one of vacant",
        ),
        (
            "rules/list_words",
            "condition,buena,",
            "buena",
            "poor",
            "\"poor\" means declining too",
        ),
    ]
    .into_iter()
    .enumerate()
    {
        let copy = Copy::new(&format!("list-{at}"));
        content::list::read(&copy.folder).unwrap_or_else(|problem| panic!("{problem}"));
        copy.replace(table, line, from, to);
        let problem = content::list::read(&copy.folder)
            .expect_err(says)
            .to_string();
        assert!(
            problem.contains(&format!("content/{table}.csv:")),
            "{problem}"
        );
        assert!(problem.contains(says), "{problem}");
    }
}
