//! Marks by which a tree is told: a word that is in no set, a range turned round, a tree without its row.

use super::copy::Copy;

#[test]
fn a_mark_that_is_no_word_of_its_set_or_was_read_nowhere_stops_the_build() {
    const MARKS: &str = "evidence/leaf_marks";
    for (at, (line, from, to, says)) in [
        (
            "Morus alba,",
            ",milky,",
            ",white,",
            "sap: \"white\" is no sap: clear, milky, resin",
        ),
        (
            "Morus alba,",
            "palmate 3-5",
            "palmate",
            "lobes: \"none/mitten/palmate\": \"palmate\" is not one of",
        ),
        (
            "Morus alba,",
            ",6-18,",
            ",18-6,",
            "length_cm: \"18-6\" is no range as 3.5-5",
        ),
        (
            "Morus alba,",
            "arrangement;kind",
            "leaflets;kind",
            "read_cells: leaflets is empty",
        ),
        (
            "Morus alba,",
            "Sassafras albidum",
            "Sassafras",
            "look_alike_of: Sassafras has no row",
        ),
        ("Morus alba,", "listed", "next", "has no row \"Morus alba\""),
        ("Acer saccharum,", "look-alike", "listed", "role: "),
    ]
    .into_iter()
    .enumerate()
    {
        let copy = Copy::new(&format!("marks-{at}"));
        if !copy
            .text(MARKS)
            .lines()
            .any(|row| row.starts_with(line) && row.contains(from))
        {
            panic!("{line} {from}");
        }
        copy.replace(MARKS, line, from, to);
        assert!(copy.problem().contains(says), "{}", copy.problem());
    }
}
