//! Several stems of one tree: which are ringed, which is left, and what is done with the others.

use super::say::Say;
use super::{method, phrase};
use crate::measure;
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

    /// `stem 2`, `stems 2 and 3`.
    fn stems_named(numbers: &[String]) -> String {
        let word = if numbers.len() == 1 {
            "stem "
        } else {
            "stems "
        };
        cat!(word, phrase::row(numbers))
    }

    /// Whether a stem may still die by something.
    fn is_living(&self, stem: &StemAnswer) -> bool {
        !stem.spared && stem.live_share > 0.0 && self.question.tree.condition != Condition::Dead
    }

    /// What is ringed: this tree, or some stems of it and the one that is left.
    pub(super) fn ringed(&self) -> String {
        let rings = self
            .stems_that(|stem| self.is_living(stem) && stem.headline_method == Method::BarkRing);
        let kept = self.stems_that(|stem| stem.spared);
        if rings.is_empty() || rings.len() == self.answer.stems.len() {
            return "this tree".into();
        }
        let rings = Self::stems_named(&rings);
        if kept.is_empty() {
            rings
        } else {
            cat!(rings, "; leave ", Self::stems_named(&kept))
        }
    }

    /// Stems of the tree that the headline does not speak of.
    pub(super) fn other_stems(&self) -> Vec<String> {
        let mut list = Vec::new();
        let head = self.answer.headline_method;
        for (stem, number) in self.answer.stems.iter().zip(1..) {
            let number = measure::number(number);
            if self.is_living(stem) && stem.headline_method != head {
                list.push(cat!(
                    "Stem ",
                    number,
                    ": ",
                    method::act(stem.headline_method),
                    "."
                ));
            } else if !stem.spared
                && !self.is_living(stem)
                && self.question.tree.condition != Condition::Dead
            {
                list.push(cat!("Stem ", number, " is dead already."));
            } else if stem.spared && head != Method::BarkRing {
                list.push(cat!(
                    "Leave stem ",
                    number,
                    " alone: it is the one to keep."
                ));
            }
        }
        list
    }
}
