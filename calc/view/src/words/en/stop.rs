//! A stop: why a professional is asked for, whom to call, what to say on the phone.

use super::say::Say;
use super::{phrase, reach};
use crate::measure;
use crate::words::m;
use calc::models::reach::Why;

/// An estimate with its range.
pub fn estimated_from(low: &str, high: &str) -> String {
    if low == high {
        return m::STOP_ESTIMATED.into();
    }
    m::stop_estimated_from(m::StopEstimatedFrom { low, high })
}

impl Say<'_> {
    /// What it could hit, for a phone call.
    pub fn could_hit(&self) -> String {
        let mut list: Vec<String> = self
            .answer
            .reach
            .targets
            .iter()
            .map(|judged| match judged.distance_m {
                Some(m) => m::stop_thing(m::StopThing {
                    thing: m::reach_target(judged.kind),
                    far: self.length(m),
                }),
                None => m::stop_thing_open(m::reach_target(judged.kind)),
            })
            .collect();
        // The worst and nearest stand first, so what reads alike stands together.
        list.dedup();
        if list.is_empty() {
            return m::STOP_NOT_CHECKED.into();
        }
        m::stop_sentence(phrase::sentence(&list.join("; ")))
    }

    /// What it is, for a phone call.
    pub fn what_it_is(&self) -> String {
        let q = self.question;
        let tree = phrase::sentence(phrase::tree(q.tree.species));
        let latin = q.tree.species.scientific;
        let life = m::fields_life(q.tree.condition);
        let stems = q.tree.stems.len();
        if q.tree.signs.is_empty() {
            return m::stop_tree(m::StopTree {
                tree,
                latin,
                life,
                stems,
            });
        }
        m::stop_tree_signs(m::StopTreeSigns {
            tree,
            latin,
            life,
            stems,
            signs: reach::signs(&q.tree.signs),
        })
    }

    /// How big it is, for a phone call.
    pub fn how_big(&self) -> String {
        let measured = self.answer.height.measured;
        let height = self.length(self.answer.height.hazard_m);
        let size = measure::size(self.question.tree.largest().dbh.mm()).text(self.units());
        if measured {
            m::stop_size_measured(m::StopSizeMeasured { size, height })
        } else {
            m::stop_size_used(m::StopSizeUsed { size, height })
        }
    }

    /// The target, its reach and what of both calls for a professional.
    pub(super) fn why_professional(&self) -> String {
        if let Some(own) = self.group_stops() {
            return own;
        }
        let reach = &self.answer.reach;
        let Some(judged) = self.decided() else {
            return self.why_weak();
        };
        let away = self.away(judged);
        match reach.why {
            Why::LineWithin => m::stop_because_line(m::StopBecauseLine {
                away,
                zone: self.reach(judged.zone_m),
            }),
            Why::LineNoDistance => m::STOP_BECAUSE_LINE_OPEN.into(),
            Why::TooSteep => {
                let slope = judged
                    .index
                    .and_then(|at| self.question.tree.targets.get(at)?.slope)
                    .map_or(0.0, |slope| slope.percent());
                m::stop_because_steep(away, slope)
            }
            Why::InZone => m::stop_because_zone(m::StopBecauseZone {
                away,
                zone: self.reach(judged.zone_m),
            }),
            _ => m::stop_because_lands(m::StopBecauseLands {
                away,
                height: self.length(reach.height_m),
            }),
        }
    }

    /// Weak points, and what is near.
    fn why_weak(&self) -> String {
        let near = match self.nearest() {
            Some(target) => self.away(target),
            None => m::STOP_BECAUSE_UNCHECKED.into(),
        };
        m::stop_because_weak(m::StopBecauseWeak {
            signs: reach::signs(&self.question.tree.signs),
            near,
        })
    }
}
