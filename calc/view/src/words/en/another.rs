//! Try another: what a mark says, and what changed by it.

use super::phrase;
use crate::words::{Word, m};
use calc::answer::Answer;
use calc::models::reach::nearer;
use calc::models::season::Rules;
use calc::timing::Verdict;

/// What the bark does on a day, in a word or two.
pub fn verdict(verdict: Verdict) -> Word {
    match verdict {
        Verdict::Best => m::ANOTHER_BEST,
        Verdict::OpeningTest | Verdict::ClosingTest | Verdict::TestFirst => m::ANOTHER_TEST,
        Verdict::TooEarly => m::ANOTHER_MOSTLY_TIGHT,
        Verdict::Late => m::ANOTHER_BONDING,
        Verdict::Dormant | Verdict::Bonded | Verdict::Unknown => m::ANOTHER_DOES_NOT_SLIP,
    }
}

/// What reaches a distance.
pub fn zone(answer: &Answer, far_m: f64) -> Word {
    let reach = &answer.reach;
    if nearer(far_m, reach.height_m) {
        m::ANOTHER_IT_CAN_LAND
    } else if nearer(far_m, reach.zone_m) {
        m::ANOTHER_IT_CAN_THROW
    } else if nearer(far_m, answer.people_out_m.unwrap_or(reach.two_heights_m)) {
        m::ANOTHER_KEEP_OUT
    } else {
        m::ANOTHER_OUTSIDE
    }
}

/// The name of a rule's lane.
pub fn lane(rule: &Rules) -> String {
    let topic = m::season_topic(rule.topic);
    if rule.closes {
        m::another_no_ring(topic)
    } else {
        m::another_look_first(topic)
    }
}

/// A length with its unit spelled out.
pub fn spoken(length: &str) -> String {
    let words: Vec<&str> = length.split(' ').map(phrase::spoken_unit).collect();
    phrase::joined_by(&words, " ")
}
