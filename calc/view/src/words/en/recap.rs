//! What was asked, in one line over the answer: which tree, what stands near, where.

use super::say::Say;
use super::{phrase, region};
use crate::measure;
use crate::words::m;
use calc::terms::tree::Reply;

/// Opens the form again.
pub const CHANGE: &str = "Change";

impl Say<'_> {
    /// The tree and its size: `Norway maple, 14½ in.`
    pub fn recap_tree(&self) -> String {
        let size = measure::size(self.question.tree.heading().dbh.mm());
        cat!(
            phrase::sentence(self.answer.species.name),
            ", ",
            size.first(self.units()),
            "."
        )
    }

    /// What stands near, and where: `Path 160 ft, no line near. Vermont.`
    pub fn recap_rest(&self) -> String {
        let tree = &self.question.tree;
        let near = match self.nearest_of(true) {
            Some(near) => {
                let what = phrase::sentence(&m::reach_target_short(near.kind));
                match near.distance_m {
                    Some(m) => cat!(what, " ", measure::length(m).first(self.units())),
                    None => cat!(what, ", distance not given"),
                }
            }
            None if tree.none_in_reach => {
                let within = measure::reach(self.answer.reach.two_heights_m);
                cat!("Nothing within ", within.first(self.units()))
            }
            None => "What it could hit: not given".into(),
        };
        let line = match tree.line_within_reach {
            Some(Reply::No) => ", no line near",
            Some(Reply::Yes) => ", a line near",
            Some(Reply::CantTell) => ", line: can’t tell",
            None => "",
        };
        let place = match self.question.region.as_deref() {
            Some(code) => cat!(" ", region::region(code), "."),
            None => String::new(),
        };
        cat!(near, line, ".", place)
    }
}
