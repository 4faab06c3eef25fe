//! One drawing of an answer by itself, with the table of what it shows: what an article stands a picture of.

use super::frame::open_details;
use super::{HostOptions, effort, reach, region, ring, season, visits};
use crate::out::Out;
use crate::page::Page;
use crate::words::m;
use calc::answer::Answer;
use calc::question::Question;
use calc::reference::Reference;

/// A drawing that an answer can have.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Figure {
    /// The cut from the side, through the bark and not into the wood.
    Cut,
    /// The trunk with its ring, to scale.
    Trunk,
    /// How far the tree reaches, to scale.
    Reach,
    /// The year of the bark.
    Year,
    /// The visits of three years.
    Visits,
    /// The minutes, with their range.
    Minutes,
}

impl Figure {
    /// All of them.
    pub const ALL: [Self; 6] = [
        Self::Cut,
        Self::Trunk,
        Self::Reach,
        Self::Year,
        Self::Visits,
        Self::Minutes,
    ];

    /// Its name, as the head of an article has it.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Cut => "cut",
            Self::Trunk => "trunk",
            Self::Reach => "reach",
            Self::Year => "year",
            Self::Visits => "visits",
            Self::Minutes => "minutes",
        }
    }
}

/// Writes the drawing; nothing where the answer has none of that kind.
pub fn figure(
    out: &mut dyn Out,
    figure: Figure,
    reference: &'static Reference,
    question: &Question,
    answer: &Answer,
    options: &HostOptions<'_>,
) {
    let cx = region(reference, question, answer, options);
    let out = &mut Page::new(out);
    match figure {
        Figure::Cut => ring::cut_alone(out, &cx),
        Figure::Trunk => {
            ring::drawn(out, &cx);
            folded(out, &m::RING_TWIN_TRUNK, |out| ring::in_table(out, &cx));
        }
        Figure::Reach => {
            let working = !cx.stops();
            reach::drawn(out, &cx, working);
            folded(out, &m::REACH_TWIN_REACH, |out| {
                reach::in_table(out, &cx, working);
            });
        }
        Figure::Year => season::tape(out, &cx),
        Figure::Visits => visits::drawn(out, &cx),
        Figure::Minutes => effort::drawn(out, &cx),
    }
}

/// A table behind a line that says what it is.
fn folded(out: &mut Page<'_>, summary: &str, table: impl FnOnce(&mut Page<'_>)) {
    open_details(out, "twin", summary);
    table(out);
    out.close();
}
