//! The marks by which a tree is drawn, from `content/evidence/leaf_marks.csv`. The build of the tables has checked every
//! cell; where a cell has two words, the first is drawn, but a leaf that may have a thumb is drawn with one: it tells.

use anyhow::{Context, Result};
use calc::terms::leaf::{
    Arrangement, BarkPattern, Base, Buds, Fruit, LeafKind, Lobing, Margin, Shape, Thorns, Tip,
};
use calc_data::table::Table;
use calc_view::draw::plate::Marks;
use serde::Deserialize;
use std::collections::BTreeMap;
use std::path::Path;

/// The table.
pub(crate) const FILE: &str = "content/evidence/leaf_marks.csv";

/// A row as it stands, the columns that are drawn.
#[derive(Deserialize)]
struct LeafRow {
    scientific_name: String,
    arrangement: String,
    kind: String,
    leaflets: String,
    margin: String,
    lobes: String,
    shape: String,
    base: String,
    tip: String,
    sap: String,
    thorns: String,
    buds: String,
    fruit: String,
    bark_pattern: String,
}

/// The marks of every tree of the table, by scientific name.
///
/// # Errors
/// A table that can't be read, or a word that is none of its column: with file and line.
pub(crate) fn read(root: &Path) -> Result<BTreeMap<String, Marks>> {
    let table = Table::<LeafRow>::read(root, FILE)?;
    let mut all = BTreeMap::new();
    for row in &table.rows {
        let marks =
            marks(row).ok_or_else(|| row.at.problem("a word that is none of its column"))?;
        all.insert(row.scientific_name.clone(), marks);
    }
    Ok(all)
}

/// The first of the words of a cell.
fn first(cell: &str) -> &str {
    cell.split('/').next().unwrap_or_default()
}

/// `5-9` or `3`: from, to.
pub(crate) fn range(cell: &str) -> Option<[f64; 2]> {
    let (from, to) = cell.split_once('-').unwrap_or((cell, cell));
    Some([from.parse().ok()?, to.parse().ok()?])
}

/// `none`, `mitten`, `palmate 3-5`: the kind, and how many lobes stand for it.
fn lobes(cell: &str) -> Option<(Lobing, f64)> {
    if cell.split('/').any(|word| word == "mitten") {
        return Some((Lobing::Mitten, 0.0));
    }
    let (word, count) = first(cell).split_once(' ').unwrap_or((first(cell), "0"));
    let [from, to] = range(count)?;
    Some((Lobing::parse(word)?, (from + to) / 2.0))
}

fn marks(row: &LeafRow) -> Option<Marks> {
    Some(Marks {
        arrangement: Arrangement::parse(first(&row.arrangement))?,
        kind: LeafKind::parse(first(&row.kind))?,
        leaflets: range(&row.leaflets),
        margin: Margin::parse(first(&row.margin))?,
        lobes: lobes(&row.lobes)?,
        shape: Shape::parse(first(&row.shape))?,
        // Needles and the like have no foot and no tip to tell.
        base: Base::parse(first(&row.base)).unwrap_or(Base::Rounded),
        tip: Tip::parse(first(&row.tip)).unwrap_or(Tip::Pointed),
        milky: first(&row.sap) == "milky",
        thorns: Thorns::parse(first(&row.thorns))?,
        buds: Buds::parse(first(&row.buds))?,
        fruit: Fruit::parse(first(&row.fruit))?,
        bark: BarkPattern::parse(first(&row.bark_pattern))?,
    })
}

/// The marks of a tree by its scientific name.
///
/// # Errors
/// A listed tree without a row: the build of the tables asks for one too.
pub(crate) fn of<'m>(all: &'m BTreeMap<String, Marks>, scientific: &str) -> Result<&'m Marks> {
    all.get(scientific)
        .with_context(|| format!("{FILE}: {scientific} has no row"))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::build::species_pages::has_plates;
    use crate::project;
    use calc_view::draw::plate;
    use calc_view::out::{Html, Out};

    type Plate = fn(&mut dyn Out, &Marks, &str);
    const PLATES: [Plate; 4] = [plate::leaf, plate::twig, plate::fruit, plate::bark];

    fn drawn(marks: &Marks) -> [String; 4] {
        PLATES.map(|draw| {
            let mut html = Html::default();
            draw(&mut html, marks, "a tree");
            html.into_string()
        })
    }

    #[test]
    fn a_tree_and_one_it_is_mistaken_for_are_drawn_apart_where_their_marks_differ() -> Result<()> {
        let all = read(&project::root()?)?;
        let mut compared = 0;
        for species in calc_data::whole().species.iter().filter(|it| !it.unknown) {
            let own = of(&all, species.scientific)?;
            for other in species.look_alikes {
                let Some(other_marks) = all.get(other.scientific) else {
                    continue;
                };
                if own != other_marks && has_plates(own) {
                    let same = drawn(own) == drawn(other_marks);
                    assert!(!same, "{} and {}", species.name, other.scientific);
                    compared += 1;
                }
            }
        }
        assert!(compared > 100, "{compared} pairs");
        Ok(())
    }

    #[test]
    fn a_leaf_that_may_have_a_thumb_is_drawn_with_one() {
        assert_eq!(
            lobes("none/mitten/palmate 3-5"),
            Some((Lobing::Mitten, 0.0))
        );
        assert_eq!(lobes("palmate 5-7"), Some((Lobing::Palmate, 6.0)));
        assert_eq!(lobes("lobed"), None);
    }
}
