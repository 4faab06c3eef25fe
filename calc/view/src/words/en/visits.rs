//! Visits: what to look at and what to do at one.

use super::phrase;
use crate::measure;
use calc::models::at_visit::{Act, NoAdvice, RingJudged, Seen, VisitAnswer};
use calc::models::visits::VisitKind;
use calc::terms::method::Method;

/// What to look for at a visit, and what to do, after a method.
pub fn visit(kind: VisitKind, method: Method) -> &'static str {
    let ring = matches!(method, Method::BarkRing | Method::SawRing);
    match kind {
        VisitKind::Recheck if ring => {
            "Is the ring open all the way round? Bark bridging it: cut it out and scrape again."
        }
        VisitKind::Recheck => "Do leaves wilt all round? None yet is no failure. Keep people out.",
        VisitKind::FirstLook if matches!(method, Method::Frill | Method::BasalBark) => {
            "Do leaves wilt all round? None yet is no failure. Keep people out."
        }
        VisitKind::FirstLook => {
            "Is anything coming back, from the stump or the roots? Take it off."
        }
        VisitKind::Look if ring => {
            "Crown full, thin or bare? New bark across: cut it out. It does not sprout."
        }
        VisitKind::Look => {
            "A look is enough: it does not sprout. Pull its seedlings while they are small."
        }
        VisitKind::EndOfSeason if ring => {
            "Bark bridging: cut it out. Sprouts below the ring: take them off. A full crown is no failure yet."
        }
        VisitKind::EndOfSeason => "Crown full, thin or bare? Sprouts: tell who treated it.",
        VisitKind::Sprouts if ring => {
            "Sprouts below the ring, suckers from the roots: take them off. Crown full, thin or bare? New bark across: cut it out."
        }
        VisitKind::Sprouts if method.needs_herbicide() => {
            "Sprouts and suckers: tell who treated it, or cut them off."
        }
        VisitKind::Sprouts if method == Method::PullOrDig => {
            "Sprouts from roots that stayed in the ground: pull them."
        }
        VisitKind::Sprouts => "Sprouts from the stump, suckers from the roots: cut them again.",
        VisitKind::Yearly => {
            "Once a year until two clean years in a row, and after storms. Look up before you go near."
        }
    }
}

/// What a visit's event in a calendar is called.
pub fn calendar_title(
    question: &calc::question::Question,
    answer: &calc::answer::Answer,
) -> String {
    let size = measure::size(question.tree.largest().dbh.mm()).text(question.units);
    cat!("Check the ", answer.species.name, ", ", size)
}

/// When death may be judged.
pub fn judge_death(larch: bool) -> &'static str {
    if larch {
        "Do not call it dead before it should have leafed out again."
    } else {
        "Do not call it dead before the second autumn."
    }
}

/// The title's question of the visits.
pub fn visits_count(count: usize, years: usize) -> String {
    let visits = if count == 1 { " visit" } else { " visits" };
    let years_word = if years == 1 { " year" } else { " years" };
    cat!(
        phrase::small(count),
        visits,
        " in ",
        phrase::small(years),
        years_word
    )
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

/// What is seen.
pub fn seen(seen: Seen) -> &'static str {
    match seen {
        Seen::Bridge => "Bark bridging the ring",
        Seen::Sprouts => "Sprouts below the ring",
        Seen::Suckers => "Suckers from the roots",
        Seen::CrownFull => "A full crown",
        Seen::CrownThin => "A thin crown",
        Seen::CrownBare => "A bare crown in leaf season",
        Seen::Decay => "Fungus, or limbs on the ground",
        Seen::Nothing => "Nothing of all this",
    }
}

/// What to do now.
pub fn act_now(act: Act) -> &'static str {
    match act {
        Act::KeepOut => "keep out from under it",
        Act::ReopenBridge => "cut the bridge out and scrape",
        Act::TakeSprouts => "take the sprouts off",
        Act::TakeSuckers => "cut the suckers off, and go on for years",
        Act::RingAgain => "ring it again, wider",
        Act::Wait => "wait",
    }
}

/// How the ring stands.
pub fn ring_judged(judged: RingJudged) -> &'static str {
    match judged {
        RingJudged::TooSoon => "too soon to tell",
        RingJudged::Working => "it works",
        RingJudged::Failed => "it failed",
        RingJudged::Dead => "dead above the ring",
        RingJudged::LookAtCrown => "the crown tells: full, thin or bare?",
    }
}

/// Why there is no advice.
pub fn no_advice(why: NoAdvice) -> &'static str {
    match why {
        NoAdvice::BeforeTheRing => "The visit is before the ring. Check both days.",
        NoAdvice::Contradiction => "These can't both be. Tick what you see, and only that.",
        NoAdvice::NoSuchVisit => {
            "The list has no visit of that number. Pick one of it, or give a day."
        }
        NoAdvice::Stopped => {
            "Do nothing to it at a visit: settle first what is said here, and keep out from under it."
        }
        NoAdvice::NoRing => "No ring is advised here. Give the day on which it was ringed.",
    }
}

/// What to do at the visit that was asked about, how the ring stands, and when to come back.
pub fn visit_advice(visit: &VisitAnswer) -> String {
    let Some(advice) = &visit.advice else {
        let why = visit.why_not.map_or("", no_advice);
        return match (visit.why_not, visit.ringed) {
            (Some(NoAdvice::BeforeTheRing), Some(ringed)) => {
                cat!("The ring is of ", measure::day_year(ringed), ". ", why)
            }
            _ => why.into(),
        };
    };
    let acts: Vec<&str> = advice.acts.iter().map(|act| act_now(*act)).collect();
    let day = visit.day.map_or_else(String::new, measure::day_year);
    let back = advice.come_back.map_or_else(
        || "No visit is left on the list.".into(),
        |back| cat!("Come back by ", measure::day_year(back), "."),
    );
    cat!(
        phrase::sentence(&acts.join("; ")),
        ". On ",
        day,
        ": ",
        ring_judged(advice.judged),
        ". ",
        back
    )
}

/// Puts the visits into a calendar file.
pub const CALENDAR: &str = "Add to calendar";
/// At a visit, folded.
pub const AT_A_VISIT: &str = "At a visit: what you see, and what to do";
/// Its heads.
pub const HEAD_VISIT: [&str; 4] = ["You see", "Do now", "At first", "In season 3"];
/// The choice at a visit, folded.
pub const VISIT_NOW: &str = "You are at a visit: tell what you see";
/// When the visit is.
pub const VISIT_WHEN: &str = "Which visit is it?";
/// Today, as a choice.
pub const VISIT_TODAY: &str = "Today";
/// The crown, as a choice.
pub const VISIT_CROWN: &str = "The crown";
/// Nothing was said of the crown.
pub const VISIT_NO_CROWN: &str = "Not looked at";
/// The rest, as a choice.
pub const VISIT_SEEN: &str = "Tick what else you see";
/// Before the advice.
pub const VISIT_ADVICE: &str = "At this visit:";
/// Visits.
pub const THEN_CHECK: &str = "Then check";
/// At the work day of another method.
pub const WORK_SHORT: &str = "work";
/// At the ring in the visits drawing.
pub const RING_SHORT: &str = "ring";
