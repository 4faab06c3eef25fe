//! What was asked, in one line over the answer: which tree, what stands near, where.

use super::say::Say;
use super::{phrase, region};
use crate::measure;
use crate::words::m;
use calc::terms::tree::Reply;

impl Say<'_> {
    /// The tree and its size: `Norway maple, 14½ in.`
    pub fn recap_tree(&self) -> String {
        let size = measure::size(self.question.tree.heading().dbh.mm());
        m::card_recap_tree(m::CardRecapTree {
            tree: phrase::sentence(phrase::tree(self.question.tree.species)),
            size: size.first(self.units()),
        })
    }

    /// What stands near, and where: `Path 160 ft, no line near. Vermont.`
    pub fn recap_rest(&self) -> String {
        let tree = &self.question.tree;
        let near = match self.nearest_of(true) {
            Some(near) => {
                let thing = phrase::sentence(&m::reach_target_short(near.kind));
                match near.distance_m {
                    Some(m) => m::card_recap_thing(m::CardRecapThing {
                        thing,
                        far: measure::length(m).first(self.units()),
                    }),
                    None => m::card_recap_thing_open(thing),
                }
            }
            None if tree.none_in_reach => {
                let within = measure::reach(self.answer.reach.two_heights_m);
                m::card_ask_nothing(within.first(self.units()))
            }
            None => m::CARD_RECAP_OPEN.into(),
        };
        let near = match tree.line_within_reach {
            Some(Reply::No) => m::card_recap_no_line(near),
            Some(Reply::Yes) => m::card_recap_line(near),
            Some(Reply::CantTell) => m::card_recap_line_open(near),
            None => m::card_recap_near(near),
        };
        match self.question.region.as_deref() {
            Some(code) => cat!(near, " ", m::card_recap_place(region::region(code))),
            None => near,
        }
    }
}
