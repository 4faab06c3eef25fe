//! What the pages for print say of sizes: the table of the field card, made by the core from every tree of the list.

use super::species_asked::{answered, free, shown};
use anyhow::Result;
use calc::terms::method::Method;
use calc::terms::quantity::Units;
use calc_view::answer::ring_of;
use calc_view::measure::{self, Both};
use calc_view::out::Html;
use calc_view::page::Page;
use calc_view::words::{m, phrase};

/// Trunk sizes of the card, inches.
const SIZES: [&str; 8] = [
    "3 in", "4 in", "6 in", "8 in", "12 in", "16 in", "20 in", "24 in",
];
/// Empty lines of the handout.
const LINES: usize = 16;

/// A line of the card: millimetres and metres.
pub(crate) struct Size {
    dbh_mm: f64,
    least_mm: [f64; 2],
    better_mm: [f64; 2],
    /// One and a half heights of the tallest tree.
    zone_m: f64,
}

/// A range with nothing in it yet.
const NOTHING: [f64; 2] = [f64::INFINITY, 0.0];

/// A range that takes in one more value.
fn wider([low, high]: [f64; 2], value: f64) -> [f64; 2] {
    [low.min(value), high.max(value)]
}

/// A length in both systems that breaks between the two alone.
fn whole(length: &Both) -> String {
    let (first, second) = length.ordered(Units::Us);
    let whole = |reading: &str| reading.replace(' ', "\u{a0}");
    format!("{} ({})", whole(first), whole(second))
}

/// The card's table.
pub(crate) struct Card {
    sizes: Vec<Size>,
    /// How many kinds of trees it was made from.
    pub(crate) kinds: usize,
}

impl Card {
    /// Asks for every tree that has a name, in each size.
    ///
    /// # Errors
    /// A question that is none any more.
    pub(crate) fn of_all_trees() -> Result<Self> {
        let trees = calc_data::whole().species.iter().filter(|it| !it.unknown);
        let trees: Vec<_> = trees.collect();
        let mut sizes = Vec::new();
        for size in SIZES {
            let mut line = Size {
                dbh_mm: 0.0,
                least_mm: NOTHING,
                better_mm: NOTHING,
                zone_m: 0.0,
            };
            for species in &trees {
                let (question, answer) = answered(&free(species, size))?;
                line.dbh_mm = question.tree.heading().dbh.mm();
                line.zone_m = line.zone_m.max(answer.reach.zone_m);
                let shown = shown(&answer);
                let rings = shown.headline_method == Method::BarkRing;
                if let Some(ring) = ring_of(shown).filter(|_| rings) {
                    line.least_mm = wider(line.least_mm, ring.at_least_mm);
                    line.better_mm = wider(line.better_mm, ring.better_mm);
                }
            }
            sizes.push(line);
        }
        Ok(Self {
            sizes,
            kinds: trees.len(),
        })
    }

    /// It as markup, in the language in use.
    pub(crate) fn table(&self) -> String {
        let mut html = Html::default();
        let out = &mut Page::new(&mut html);
        let heads = [
            m::PAPER_COL_ACROSS,
            m::PAPER_COL_LEAST,
            m::PAPER_COL_BETTER,
            m::PAPER_COL_ZONE,
        ];
        let heads = heads.map(|head| head.to_string());
        out.open_table("vh", &m::PAPER_SIZES, &heads);
        for size in &self.sizes {
            out.cell(whole(&measure::size(size.dbh_mm)));
            for range in [size.least_mm, size.better_mm] {
                // No tree of that size is ringed where nothing is in it.
                if range == NOTHING {
                    out.cell("–");
                    continue;
                }
                let [low, high] = range.map(|mm| whole(&measure::ring(mm)));
                out.cell(if low == high {
                    low
                } else {
                    phrase::to(low, high)
                });
            }
            out.cell(whole(&measure::reach(size.zone_m)));
        }
        out.close_table();
        html.into_string()
    }
}

/// Empty rows of the handout, to be filled in by hand.
pub(crate) fn rows() -> String {
    let row = format!("<tr>{}</tr>\n", "<td>&#160;</td>".repeat(6));
    row.repeat(LINES)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// What the card says must hold for each tree: no ring of an answer is under its least, no reach beyond its last column.
    #[test]
    fn the_card_holds_for_trees_of_every_kind() -> Result<()> {
        let card = Card::of_all_trees()?;
        assert!(card.kinds > 70 && card.sizes.len() == SIZES.len());
        for pair in card.sizes.windows(2) {
            assert!(
                pair[0].zone_m <= pair[1].zone_m && pair[0].better_mm[1] <= pair[1].better_mm[1]
            );
        }
        let maple = calc_data::whole()
            .species
            .iter()
            .find(|it| it.scientific == "Acer platanoides");
        let maple = maple.expect("it is listed");
        for (line, size) in card.sizes.iter().zip(SIZES) {
            let (_, answer) = answered(&free(maple, size))?;
            assert!(answer.reach.zone_m <= line.zone_m, "{size}");
            if let Some(ring) = ring_of(shown(&answer)) {
                let [low, high] = line.least_mm;
                let least = ring.at_least_mm;
                assert!(low >= 150.0 && (low..=high).contains(&least), "{size}");
            }
        }
        Ok(())
    }
}
