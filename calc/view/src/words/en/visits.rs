//! Visits: what to look at and what to do at one.

use super::phrase;
use crate::measure;
use crate::words::{Word, m};
use calc::models::at_visit::{NoAdvice, Seen, VisitAnswer};
use calc::models::visits::VisitKind;
use calc::terms::method::Method;

/// What to look for at a visit, and what to do, after a method.
pub fn visit(kind: VisitKind, method: Method) -> Word {
    let ring = matches!(method, Method::BarkRing | Method::SawRing);
    match kind {
        VisitKind::Recheck if ring => m::VISITS_RECHECK_RING,
        VisitKind::Recheck => m::VISITS_WILT,
        VisitKind::FirstLook if matches!(method, Method::Frill | Method::BasalBark) => {
            m::VISITS_WILT
        }
        VisitKind::FirstLook => m::VISITS_FIRST_LOOK,
        VisitKind::Look if ring => m::VISITS_LOOK_RING,
        VisitKind::Look => m::VISITS_LOOK,
        VisitKind::EndOfSeason if ring => m::VISITS_END_OF_SEASON_RING,
        VisitKind::EndOfSeason => m::VISITS_END_OF_SEASON,
        VisitKind::Sprouts if ring => m::VISITS_SPROUTS_RING,
        VisitKind::Sprouts if method.needs_herbicide() => m::VISITS_SPROUTS_HERBICIDE,
        VisitKind::Sprouts if method == Method::PullOrDig => m::VISITS_SPROUTS_PULLED,
        VisitKind::Sprouts => m::VISITS_SPROUTS_CUT,
        VisitKind::Yearly => m::VISITS_YEARLY,
    }
}

/// What a visit's event in a calendar is called.
pub fn calendar_title(
    question: &calc::question::Question,
    answer: &calc::answer::Answer,
) -> String {
    let size = measure::size(question.tree.largest().dbh.mm()).text(question.units);
    m::visits_calendar_title(m::VisitsCalendarTitle {
        tree: crate::words::gap::tree_name(answer.species.scientific, answer.species.name).0,
        size,
    })
}

/// When death may be judged.
pub fn judge_death(larch: bool) -> Word {
    if larch {
        m::VISITS_JUDGE_LARCH
    } else {
        m::VISITS_JUDGE
    }
}

/// The title's question of the visits.
pub fn visits_count(count: usize, years: usize) -> String {
    m::visits_count(m::VisitsCount {
        visits: count,
        years,
    })
}

/// What may be seen at a visit, in the order of a list.
pub const SEEN: [Seen; 8] = [
    Seen::Bridge,
    Seen::Sprouts,
    Seen::Suckers,
    Seen::CrownFull,
    Seen::CrownThin,
    Seen::CrownBare,
    Seen::Decay,
    Seen::Nothing,
];

/// What to do at the visit that was asked about, how the ring stands, and when to come back.
pub fn visit_advice(visit: &VisitAnswer) -> String {
    let Some(advice) = &visit.advice else {
        return match (visit.why_not, visit.ringed) {
            (Some(NoAdvice::BeforeTheRing), Some(ringed)) => m::visits_before_the_ring(ringed),
            (Some(why), _) => m::visits_no_advice(why).into(),
            (None, _) => String::new(),
        };
    };
    let acts: Vec<Word> = advice
        .acts
        .iter()
        .map(|act| m::visits_act_now(*act))
        .collect();
    let back = match advice.come_back {
        Some(back) => m::visits_come_back(back),
        None => m::VISITS_NONE_LEFT.into(),
    };
    let day = visit.day.map_or_else(String::new, measure::day_year);
    let said = m::visits_advice_said(m::VisitsAdviceSaid {
        acts: phrase::sentence(&phrase::joined_by(&acts, "; ")),
        day,
        judged: m::visits_ring_judged(advice.judged),
    });
    cat!(said, " ", back)
}

/// Its heads.
pub const HEAD_VISIT: [Word; 4] = [
    m::VISITS_HEAD_VISIT_YOU_SEE,
    m::VISITS_HEAD_VISIT_DO_NOW,
    m::VISITS_HEAD_VISIT_AT_FIRST,
    m::VISITS_HEAD_VISIT_IN_SEASON_3,
];
