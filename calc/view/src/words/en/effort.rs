//! Minutes of the work, and rates from trees that somebody timed.

use super::phrase;
use crate::measure;
use calc::models::calibrate::NoRate;
use calc::models::effort::Three;
use calc::question::settings::Crew;

/// How long it takes: the lead, and what makes it slower.
pub fn minutes_lead(span: &[String; 3], hours: bool) -> String {
    cat!(phrase::sentence(&minutes_said(span, hours)), ".")
}

/// The same inside a sentence.
pub fn minutes_said(span: &[String; 3], hours: bool) -> String {
    let unit = match (hours, &*span[1]) {
        (true, "1") => "hour",
        (true, _) => "hours",
        (false, number) => minutes_word(number),
    };
    cat!(
        "about ", &span[1], " ", unit, " (", &span[0], " to ", &span[2], ")"
    )
}

/// What stands behind a number of minutes.
pub fn minutes_word(number: &str) -> &'static str {
    if number == "1" { "minute" } else { "minutes" }
}

/// At the tick.
pub fn minutes_tick(likely: &str, hours: bool) -> String {
    cat!(likely, if hours { " h" } else { " min" })
}

/// What they are for.
pub fn minutes_for(width: &str, walk: f64, practised: bool) -> String {
    let crew = if practised { " A practised crew." } else { "" };
    let walk = if walk > 0.0 {
        cat!(
            " Walking from the last tree in it: ",
            measure::minutes(walk),
            " min."
        )
    } else {
        String::new()
    };
    cat!(
        "For the better width, ",
        width,
        ". Tight bark, thick bark and poor footing make it slower.",
        walk,
        crew
    )
}

/// Several stems have several widths.
pub const EACH_BETTER: &str = "each stem's own";

/// Visits cost time too.
pub fn visit_minutes(low: f64, likely: f64, high: f64) -> String {
    let likely = measure::minutes(likely);
    cat!(
        "Each visit to take sprouts off: about ",
        &likely,
        " ",
        minutes_word(&likely),
        " (",
        measure::minutes(low),
        " to ",
        measure::minutes(high),
        ")."
    )
}

/// Over three years, and over the whole list of visits.
pub fn long_minutes(three: (usize, String), whole: (usize, String)) -> String {
    cat!(
        "With the ",
        phrase::small(three.0),
        " visits of the three years it comes to ",
        three.1,
        "; with all ",
        phrase::small(whole.0),
        " on the list, ",
        whole.1,
        ". The first look is not counted: nobody timed one."
    )
}

/// What is not known of minutes.
pub const NO_TABLE: &str = "No published table of minutes by diameter exists. These are put together from rates of like work.";
/// Names of the tasks, and of the rest.
pub const TASKS: [&str; 5] = [
    "Find a stand, tools, look up",
    "Clear limbs below the ring",
    "Score two lines",
    "Peel",
    "Scrape and check",
];
/// The walk, as a row.
pub const TASK_WALK: &str = "Walk from the last tree";
/// The sum with rest and delays, as a row.
pub const TASK_ALL: &str = "All, with rest and delays";

/// What timed trees make: the crew's minutes over the model's, or why not.
pub fn timed(trees: usize, minutes: f64, no_rate: Option<NoRate>, factor: Option<Three>) -> String {
    let minutes = measure::plain(minutes, 1);
    let count = cat!(
        phrase::small(trees),
        if trees == 1 {
            " tree in "
        } else {
            " trees in "
        },
        &minutes,
        " ",
        minutes_word(&minutes)
    );
    match (no_rate, factor) {
        (None, Some(factor)) => cat!(
            "From your own trees: ",
            count,
            ". That is ",
            times(factor),
            " our minutes, and used here."
        ),
        (why, _) => cat!(
            "Can't tell yet from ",
            count,
            ". ",
            why.map_or("", no_rate_said),
            " Our own rate is used."
        ),
    }
}

/// The crew's minutes over the model's: `1.2 times (0.9 to 1.6)`.
pub fn times(factor: Three) -> String {
    let number = |value| measure::plain(value, 2);
    cat!(
        number(factor.likely),
        " times (",
        phrase::to(number(factor.low), number(factor.high)),
        ")"
    )
}

/// Why trees give no rate.
pub fn no_rate_said(why: NoRate) -> &'static str {
    match why {
        NoRate::TooFewTrees => {
            "Time at least two trees: one says more about the tree than about you."
        }
        NoRate::NoMinutes => "Type how many minutes they took together.",
        NoRate::FarOff => "That is far from any crew. Check minutes and diameters.",
    }
}

/// A rate that came with the question.
pub const OWN_RATE: &str = "With your own rate, from trees that you timed: ours ";
/// Minutes.
pub const HOW_LONG: &str = "How long";
/// The question that this part answers.
pub const HOW_LONG_ASKED: &str = "one person, this tree";
/// Minutes.
pub const TWIN_MINUTES: &str = "The minutes as a table";
/// Minutes.
pub const HEAD_MINUTES: [&str; 2] = ["Step", "Likely minutes"];
/// Minutes of a ring that is not the headline.
pub const IF_RINGED: &str = "If you ring it:";

/// What a crew does in a day.
pub fn crew_day(crew: Crew, mean_min: f64) -> String {
    let number = |value: f64| measure::plain(value, 1);
    let trees = crew.trees_a_day(mean_min);
    cat!(
        "A crew of ",
        number(crew.size),
        " with ",
        number(crew.hours),
        " hours: about ",
        measure::number(trees as u32),
        if trees == 1.0 {
            " tree like this in a day."
        } else {
            " trees like this in a day."
        }
    )
}
