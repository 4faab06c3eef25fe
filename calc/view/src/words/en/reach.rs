//! What the tree could hit.

use super::phrase;
use super::say::Say;
use crate::words::{Word, m};
use calc::models::reach::{Judged, ReachOutcome};
use calc::terms::tree::{Sign, TargetKind};

/// Reach.
pub const HEAD_REACH: [Word; 4] = [
    m::REACH_HEAD_REACH_WHAT,
    m::REACH_HEAD_REACH_US,
    m::REACH_HEAD_REACH_METRIC,
    m::REACH_HEAD_REACH_WHAT_IT_MEANS,
];

/// Signs in a row.
pub fn signs(list: &[Sign]) -> String {
    let words: Vec<Word> = list.iter().map(|it| m::reach_sign(*it)).collect();
    phrase::row(&words)
}

/// What a target comes to, in a table.
pub fn judged(outcome: Option<ReachOutcome>, damage: bool) -> Word {
    match outcome {
        None if damage => m::REACH_JUDGED_DAMAGE,
        None => m::REACH_JUDGED_OUTSIDE,
        Some(ReachOutcome::Clear) => m::REACH_JUDGED_CLEAR,
        Some(ReachOutcome::ClearPeopleOut) => m::REACH_JUDGED_PEOPLE_OUT,
        Some(ReachOutcome::NotChecked) => m::REACH_JUDGED_NOT_CHECKED,
        Some(ReachOutcome::Inside) => m::REACH_JUDGED_INSIDE,
        Some(ReachOutcome::Professional) => m::REACH_JUDGED_PROFESSIONAL,
        Some(ReachOutcome::Line) => m::REACH_JUDGED_LINE,
    }
}

/// What lies near, beside a reach that does not stop the answer.
pub struct NearestThing<'a> {
    /// What the reach comes to.
    pub outcome: ReachOutcome,
    /// The nearest thing that counts, with its distance.
    pub nearest: Option<(TargetKind, &'a str)>,
    /// The zone.
    pub zone: &'a str,
    /// Two heights.
    pub out: &'a str,
    /// Whether it lies inside the ground that is closed while anyone works.
    pub close: bool,
    /// Whether an overhead line is still asked about.
    pub line_open: bool,
    /// The asker said that nothing is in reach.
    pub none_said: bool,
}

/// What lies near, in a sentence.
pub fn clear(near: &NearestThing<'_>) -> String {
    let (zone, out) = (near.zone, near.out);
    if near.line_open {
        return m::reach_line_open(out);
    }
    match (near.outcome, near.nearest) {
        (ReachOutcome::NotChecked, _) => m::reach_not_checked(out),
        (ReachOutcome::ClearPeopleOut, Some((kind, distance))) => {
            let target = m::reach_the_target(kind);
            let said = phrase::sentence(&if first_number(distance) == first_number(zone) {
                m::reach_at_the_end(m::ReachAtTheEnd {
                    target,
                    distance,
                    zone,
                })
            } else {
                m::reach_outside(m::ReachOutside {
                    target,
                    distance,
                    zone,
                })
            });
            match kind {
                _ if !near.close => said,
                TargetKind::Road | TargetKind::Path => cat!(said, " ", &m::REACH_CLOSE_IT),
                _ => cat!(said, " ", &m::REACH_KEEP_PEOPLE_AWAY),
            }
        }
        (ReachOutcome::Inside, Some((kind, distance))) => {
            phrase::sentence(&m::reach_inside(m::ReachInside {
                target: m::reach_the_target(kind),
                distance,
                zone,
            }))
        }
        (_, Some((kind, distance))) => phrase::sentence(&m::reach_farther(m::ReachFarther {
            target: m::reach_the_target(kind),
            distance,
        })),
        (_, None) if near.none_said => m::reach_none_said(out),
        (_, None) => m::reach_only_if_none(out),
    }
}

/// A length without the one in other units behind it.
fn first_number(length: &str) -> &str {
    length.split(" (").next().unwrap_or(length)
}

/// Under the reach drawing.
pub fn reach_caption(targets: usize) -> String {
    m::reach_caption(targets)
}

/// The ends of a zone in the key; the unit stands once.
pub fn zone(from: &str, to: &str) -> String {
    let bare = from.rsplit_once(' ').map_or(from, |(number, _)| number);
    phrase::to(bare.into(), to.into())
}

/// Heights under the plan; the second is the end of the zone.
pub fn heights(zone_over_height: f64) -> [&'static str; 3] {
    let zone = if zone_over_height > 1.75 {
        m::REACH_TWO_HEIGHTS_LABEL
    } else {
        m::REACH_ONE_AND_A_HALF_LABEL
    };
    [
        m::REACH_ONE_HEIGHT_LABEL.text(),
        zone.text(),
        m::REACH_TWO_HEIGHTS_LABEL.text(),
    ]
}

/// The list of things that are near, for a phone call.
pub fn near(list: &[String]) -> String {
    phrase::either(list)
}

/// The lead of the reach: nobody works at a tree that is left.
pub fn people_out(within: Option<&str>, zone: &str) -> String {
    match within {
        Some(within) => m::reach_bystanders(within),
        None => m::reach_throws(zone),
    }
}

/// A fence, a field, a tree to keep.
pub fn may_damage(target: &str) -> String {
    phrase::sentence(&m::reach_may_damage(target))
}

/// At the arc.
pub fn height_used(height: &str) -> String {
    m::reach_height_used_label(height)
}

/// At the arc, in short.
pub fn height_used_short(height: &str) -> String {
    m::reach_height_used_short_label(height)
}

/// The drawing for those who do not see it.
pub fn reach_aria<'a>(used: &str, zone: &str, targets: impl Iterator<Item = &'a str>) -> String {
    let mut text = m::reach_aria(m::ReachAria { used, zone });
    for target in targets {
        text = phrase::comma(text, target);
    }
    text
}

impl Say<'_> {
    /// What lies near, in a sentence.
    pub fn near_said(&self) -> String {
        let reach = &self.answer.reach;
        let nearest = self.decided().or(self.nearest());
        let distance =
            nearest.and_then(|target| Some((target.kind, self.length(target.distance_m?))));
        clear(&NearestThing {
            outcome: reach.outcome,
            nearest: distance.as_ref().map(|(kind, far)| (*kind, far.as_str())),
            zone: &self.reach(reach.zone_m),
            out: &self.reach(reach.two_heights_m),
            close: nearest
                .and_then(|target| target.distance_m)
                .is_some_and(|far| {
                    let out = self.answer.people_out_m;
                    out.is_some_and(|out| calc::models::reach::nearer(far, out))
                }),
            line_open: reach.line_open(),
            none_said: self.question.tree.none_in_reach,
        })
    }

    /// `a path is 20 ft (6 m) away`.
    pub fn away(&self, judged: &Judged) -> String {
        let target = m::reach_target(judged.kind);
        match judged.distance_m {
            Some(far) => m::reach_away(m::ReachAway {
                target,
                distance: self.length(far),
            }),
            None => m::reach_near_unknown(target),
        }
    }

    /// The kind of a target, known, with its distance: `the path, 100 ft (30 m)`.
    pub fn target_said(&self, judged: &Judged) -> String {
        let target = m::reach_the_target(judged.kind);
        match judged.distance_m {
            Some(far) => m::reach_target_said(m::ReachTargetSaid {
                target,
                distance: self.length(far),
            }),
            None => m::reach_target_unknown(target),
        }
    }
}
