//! What may follow a tree: a word that is in no set, a code that is none, a name twice, a range turned round.

use super::copy::Copy;

#[test]
fn a_native_with_a_cell_that_cannot_be_stops_the_build_at_its_line() {
    const NATIVES: &str = "evidence/natives";
    const WILDLIFE: &str = "evidence/wildlife_value";
    for (at, (table, line, from, to, says)) in [
        (
            NATIVES,
            "Acer rubrum,",
            ",tree,",
            ",vine,",
            "form: \"vine\" is not one of: tree, shrub",
        ),
        (
            NATIVES,
            "Acer rubrum,",
            ",intermediate,",
            ",much,",
            "shade_tolerance: \"much\" is no",
        ),
        (
            NATIVES,
            "Acer rubrum,",
            "AL AR",
            "AL Ark",
            "native_states: ",
        ),
        (
            NATIVES,
            "Acer rubrum,",
            "Acer rubrum,",
            "Acer saccharum,",
            "Acer saccharum",
        ),
        (
            WILDLIFE,
            "genus,Quercus,",
            "genus,Quercus",
            "family,Quercus",
            "level: \"family\" is not one of",
        ),
        (
            WILDLIFE,
            "genus,Quercus,",
            ",534,",
            ",-534,",
            "such a range can't be",
        ),
    ]
    .into_iter()
    .enumerate()
    {
        let copy = Copy::new(&format!("natives-{at}"));
        copy.replace(table, line, from, to);
        let problem = copy.problem();
        assert!(problem.contains(says), "{problem}");
        assert!(
            problem.contains(&format!("content/{table}.csv:")),
            "{problem}"
        );
    }
}
