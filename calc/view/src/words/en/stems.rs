//! Several stems of one tree: which are ringed, which is left, and what is done with the others.

use super::phrase;
use super::say::Say;
use crate::measure;
use crate::words::m;
use calc::answer::StemAnswer;
use calc::terms::method::Method;
use calc::terms::tree::Condition;

impl Say<'_> {
    /// Numbers of the stems that a test picks, counted from 1.
    fn stems_that(&self, picks: impl Fn(&StemAnswer) -> bool) -> Vec<String> {
        let mut numbers = Vec::new();
        for (stem, number) in self.answer.stems.iter().zip(1..) {
            if picks(stem) {
                numbers.push(measure::number(number));
            }
        }
        numbers
    }

    /// Whether a stem may still die by something.
    fn is_living(&self, stem: &StemAnswer) -> bool {
        !stem.spared && stem.live_share > 0.0 && self.question.tree.condition != Condition::Dead
    }

    /// The living stems that are ringed, by their numbers.
    pub fn rings(&self) -> Vec<String> {
        self.stems_that(|stem| self.is_living(stem) && stem.headline_method == Method::BarkRing)
    }

    /// What is ringed: this tree, or some stems of it and the one that is left.
    pub(super) fn ringed(&self) -> String {
        let some = self.some_stems();
        some.unwrap_or_else(|| m::STEMS_THIS_TREE.into())
    }

    /// The stems that are ringed, where they are not all of them, and the one that is left.
    pub(super) fn some_stems(&self) -> Option<String> {
        let rings = self.rings();
        let kept = self.stems_that(|stem| stem.spared);
        if rings.is_empty() || rings.len() == self.answer.stems.len() {
            return None;
        }
        let ringed = phrase::row(&rings);
        let kept_said = phrase::row(&kept);
        Some(match (rings.len(), kept.len()) {
            (1, 0) => m::stems_one(ringed),
            (_, 0) => m::stems_several(ringed),
            (1, 1) => m::stems_one_leave_one(m::StemsOneLeaveOne {
                ringed,
                kept: kept_said,
            }),
            (_, 1) => m::stems_several_leave_one(m::StemsSeveralLeaveOne {
                ringed,
                kept: kept_said,
            }),
            (1, _) => m::stems_one_leave_several(m::StemsOneLeaveSeveral {
                ringed,
                kept: kept_said,
            }),
            (..) => m::stems_several_leave_several(m::StemsSeveralLeaveSeveral {
                ringed,
                kept: kept_said,
            }),
        })
    }

    /// Stems of the tree that the headline does not speak of.
    pub(super) fn other_stems(&self) -> Vec<String> {
        let mut list = Vec::new();
        let head = self.answer.headline_method;
        for (stem, number) in self.answer.stems.iter().zip(1_u32..) {
            if self.is_living(stem) && stem.headline_method != head {
                list.push(m::stems_other(number, m::method_act(stem.headline_method)));
            } else if !stem.spared
                && !self.is_living(stem)
                && self.question.tree.condition != Condition::Dead
            {
                list.push(m::stems_dead(number));
            } else if stem.spared && head != Method::BarkRing {
                list.push(m::stems_keep(number));
            }
        }
        list
    }
}
