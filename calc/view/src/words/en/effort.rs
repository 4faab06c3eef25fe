//! Minutes of the work, and rates from trees that somebody timed.

use super::phrase;
use crate::measure;
use crate::words::{Word, m};
use calc::models::calibrate::NoRate;
use calc::models::effort_constants::Three;
use calc::question::settings::GroupCrew;

/// Low, likely and high, as [`measure::span_of_minutes`] shows them.
type Span = [String; 3];

/// How long it takes: the lead.
pub fn minutes_lead(span: &Span, hours: bool) -> String {
    cat!(phrase::sentence(&minutes_said(span, hours)), ".")
}

/// The same inside a sentence.
pub fn minutes_said([low, likely, high]: &Span, hours: bool) -> String {
    if hours {
        m::effort_hours(m::EffortHours { likely, low, high })
    } else {
        m::effort_minutes(m::EffortMinutes { likely, low, high })
    }
}

/// At the tick.
pub fn minutes_tick(likely: &str, hours: bool) -> String {
    if hours {
        m::effort_hours_label(likely)
    } else {
        m::effort_minutes_label(likely)
    }
}

/// What they are for, and what makes it slower.
pub fn minutes_for(width: &str, walk: f64, practised: bool) -> String {
    let mut said = m::effort_for(width);
    if walk > 0.0 {
        said = cat!(said, " ", m::effort_walk(walk));
    }
    if practised {
        said = cat!(said, " ", &m::EFFORT_PRACTISED);
    }
    said
}

/// Visits cost time too.
pub fn visit_minutes(low: f64, likely: f64, high: f64) -> String {
    m::effort_visit(m::EffortVisit { likely, low, high })
}

/// Over three years, and over the whole list of visits.
pub fn long_minutes(three: (usize, String), whole: (usize, String)) -> String {
    m::effort_long(m::EffortLong {
        visits: three.0,
        minutes: three.1,
        all_visits: whole.0,
        all_minutes: whole.1,
    })
}

/// Names of the tasks, and of the rest.
pub const TASKS: [Word; 5] = [
    m::EFFORT_TASKS_FIND_A_STAND_TOOLS,
    m::EFFORT_TASKS_CLEAR_LIMBS_BELOW_THE,
    m::EFFORT_TASKS_SCORE_TWO_LINES,
    m::EFFORT_TASKS_PEEL,
    m::EFFORT_TASKS_SCRAPE_AND_CHECK,
];

/// What timed trees make: the crew's minutes over the model's, or why not.
pub fn timed(trees: usize, minutes: f64, no_rate: Option<NoRate>, factor: Option<Three>) -> String {
    let trees = m::effort_trees_in(trees, measure::plain(minutes, 1));
    match (no_rate, factor) {
        (None, Some(factor)) => m::effort_timed(m::EffortTimed {
            trees,
            times: times(factor),
        }),
        (why, _) => m::effort_not_timed(m::EffortNotTimed {
            trees,
            why: why.map_or("", |why| m::effort_no_rate_said(why).text()),
        }),
    }
}

/// The crew's minutes over the model's: `1.2 times (0.9 to 1.6)`.
pub fn times(factor: Three) -> String {
    let number = |value| measure::plain(value, 2);
    m::effort_times(m::EffortTimes {
        likely: number(factor.likely),
        range: phrase::to(number(factor.low), number(factor.high)),
    })
}

/// A rate that came with the question.
pub fn own_rate(factor: Three) -> String {
    m::effort_own_rate(times(factor))
}

/// Minutes.
pub const HEAD_MINUTES: [Word; 2] = [
    m::EFFORT_HEAD_MINUTES_STEP,
    m::EFFORT_HEAD_MINUTES_LIKELY_MINUTES,
];

/// What a crew does in a day.
pub fn crew_day(crew: GroupCrew, mean_min: f64) -> String {
    let number = |value: f64| measure::plain(value, 1);
    m::effort_crew_day(m::EffortCrewDay {
        people: number(crew.size),
        hours: number(crew.hours),
        trees: crew.trees_a_day(mean_min) as u32,
    })
}
