//! Why a professional is asked for, and why an answer stays open.

use super::verdict::Say;
use super::{open, row, signs};
use crate::measure;
use calc::model::reach::Why;

impl Say<'_> {
    /// The target, its reach and what of both calls for a professional.
    pub(super) fn why_professional(&self) -> String {
        if let Some(own) = self.group_stops() {
            return own;
        }
        let reach = &self.answer.reach;
        let Some(judged) = self.decided() else {
            return self.why_weak();
        };
        match reach.why {
            Why::LineWithin => cat!(
                self.away(judged),
                "; this tree can reach ",
                self.reach(judged.zone_m)
            ),
            Why::LineNoDistance => {
                "a power or phone line is within reach, and how far is not known".into()
            }
            Why::TooSteep => {
                let slope = judged
                    .index
                    .and_then(|at| self.question.targets.get(at)?.slope)
                    .map_or(0.0, |slope| slope.percent());
                cat!(
                    self.away(judged),
                    ", down a slope of ",
                    measure::percent(slope),
                    " in 100"
                )
            }
            Why::InZone => cat!(
                self.away(judged),
                ", inside the ",
                self.reach(judged.zone_m),
                " in which it can throw wood, and only felling is left"
            ),
            _ => cat!(
                self.away(judged),
                "; a tree this tall can reach ",
                self.length(reach.height_m)
            ),
        }
    }

    /// Weak points, and what is near.
    fn why_weak(&self) -> String {
        let near = match self.nearest() {
            Some(target) => self.away(target),
            None => "what it could hit is not checked".into(),
        };
        cat!("it has ", signs(&self.question.signs), ", and ", near)
    }

    /// What is not known yet.
    pub(super) fn why_open(&self) -> String {
        let answer = self.answer;
        let within = self.reach(answer.reach.people_out_m);
        let Some(open_if) = &answer.conditional else {
            return super::missing(answer.reach.why, &within);
        };
        let mut list: Vec<String> = Vec::new();
        for it in &open_if.conditions {
            match it {
                calc::answer::Conditional::NothingInReach { .. }
                    if !answer.reach.missing.is_empty() =>
                {
                    list.extend(
                        answer
                            .reach
                            .missing
                            .iter()
                            .take(1)
                            .map(|why| super::missing(*why, &within)),
                    );
                }
                other => list.push(open(*other, self.units())),
            }
        }
        row(&list)
    }
}
