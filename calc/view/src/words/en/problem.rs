//! What is wrong with a question, and what to do. Never whose fault it is.

use super::{fields, phrase, region};
use crate::measure;
use crate::words::m;
use calc::models::height_aid::NoHeight;
use calc::question::{Code, NotListed, Problem};

/// Why measurements make no height.
pub fn no_height(why: NoHeight) -> &'static str {
    match why {
        NoHeight::NotPositive => "Every length must be more than 0.",
        NoHeight::BadAngle => "Angles lie between −90 and 90 degrees.",
        NoHeight::AnglesDoNotMeet => "The top must be above the foot. Read both angles again.",
        NoHeight::OutOfRange => "That is beyond any tree. Check units and readings.",
    }
}

/// The heading of the summary.
pub fn heading(problems: usize) -> String {
    match problems {
        1 => "There is one thing to fix".into(),
        _ => cat!(
            "There are ",
            measure::number(problems as u32),
            " things to fix"
        ),
    }
}

/// The last name of a path.
fn last(path: &str) -> &str {
    path.rsplit(['.', ']']).next().unwrap_or("")
}

/// What a number of a field looks like.
fn example(path: &str) -> &'static str {
    crate::words::named(EXAMPLES, last(path)).unwrap_or("2")
}

const EXAMPLES: &str = concat!(
    "diameter=14 or 14 1/2|",
    "girth=44 or 44 1/2|",
    "bark=0.4 or 1/2|",
    "live_share=75|",
    "distance=52|",
    "height=52|",
    "slope=10|",
    "voltage=69|",
    "latitude=42.36|",
    "longitude=-71.06|",
    "elevation=300",
);

/// Units that a field may carry.
fn units(path: &str) -> &'static str {
    crate::words::named(UNITS, last(path)).unwrap_or("in, ft, mm, cm or m")
}

const UNITS: &str = concat!(
    "live_share=% or leave the unit out|",
    "slope=% or leave the unit out|",
    "voltage=V or kV|",
    "latitude=no unit, degrees only|",
    "longitude=no unit, degrees only|",
    "walk=min, ft or m|",
    "top=no unit, degrees only|",
    "foot=no unit, degrees only|",
    "minutes=min or leave the unit out",
);

/// The message of a problem: what it is and what to do. The same words at the field and in the summary.
pub fn problem_text(problem: &Problem) -> String {
    let path = problem.field.as_str();
    let label = fields::field(path);
    let typed = cat!(&label, ", “", &problem.typed, "”,");
    match &problem.code {
        Code::Missing => missing(path, &label),
        Code::NotNumber => cat!(
            typed,
            " is not a number. Type a number such as ",
            example(path),
            "."
        ),
        Code::Ambiguous => cat!(
            typed,
            " can be read two ways. Type it without a thousands mark, and a point for decimals."
        ),
        Code::TooLong => cat!(
            label,
            " is too long to read. Type a number such as ",
            example(path),
            "."
        ),
        Code::WrongUnit => cat!(
            typed,
            " has a unit that we can't use here. Use ",
            units(path),
            "."
        ),
        Code::NotPositive => cat!(
            typed,
            " must be more than 0. Type a number such as ",
            example(path),
            "."
        ),
        Code::OutOfRange(shown) => {
            let range = range(shown.range.low, shown.range.high, shown.unit);
            cat!(typed, " must be ", range, ".")
        }
        Code::Both => cat!(label, ": give the size across or around, not both."),
        Code::Neither => "Trunk size: type how thick the trunk is, across or around.".into(),
        Code::BarkTooThick(shown) => cat!(
            typed,
            " is thicker than half the trunk. It must be under ",
            measure::plain(shown.range.high, 1),
            " ",
            shown.unit,
            ": measure from the outside to the wood, on one side."
        ),
        Code::NoStem => "Trunk size: give at least one stem.".into(),
        Code::TooManyStems(most) if path.starts_with("timed") => {
            too_many(&label, *most, "Give those of one day.")
        }
        Code::TooManyStems(most) => too_many(&label, *most, "Give the thickest ones."),
        Code::TooManyTargets(most) => too_many(&label, *most, "Give the nearest ones."),
        Code::DayMissing => cat!(label, " must include a day, such as 2027-06-22."),
        Code::MonthMissing => cat!(label, " must include a month, 1 to 12 or its name."),
        Code::YearMissing => cat!(
            label,
            " must begin with a year of four digits, such as 2027-06-22."
        ),
        Code::NoSuchDay => cat!(typed, " is no day of the calendar. Check day and month."),
        Code::YearOutOfRange => cat!(typed, " must be between 1990 and 2100."),
        Code::NotOneOf(words) => cat!(typed, " must be ", phrase::either(words), "."),
        Code::UnknownSpecies(like) if like.is_empty() => cat!(
            typed,
            " is no species that we know. Choose one from the list, or “I don’t know”; in a file “unknown broadleaf”, “unknown conifer” or “unknown shrub”."
        ),
        Code::UnknownSpecies(like) => cat!(
            typed,
            " is no species that we know. Did you mean ",
            phrase::either(like),
            "? If it is none of these, choose “I don’t know”, or in a file “unknown broadleaf”, “unknown conifer” or “unknown shrub”."
        ),
        Code::NotListed(told) => not_listed(told),
        Code::NamesNotHere => cat!(
            typed,
            " is not on this list, and the names of other trees are not here yet. Choose one from the list, or “I don’t know”."
        ),
        Code::NoneBesideTarget { two_heights_m, .. } => {
            none_beside(&label, &problem.typed, *two_heights_m)
        }
        Code::NoSuchStem => "Stem to keep: choose one of two or more stems.".into(),
        Code::HalfPlace => cat!(label, ": give both latitude and longitude."),
        Code::NotRegion => cat!(typed, " must be a code such as US-MA or GB."),
        Code::UnknownKey => cat!(
            "“",
            path,
            "” is no field that we read. Check its spelling, or leave it out."
        ),
        Code::WrongType => cat!(
            "“",
            path,
            "” has the wrong type of value. Give text in quotes, a list or true and false as the format says."
        ),
        Code::WrongVersion => "“version” must be 1.".into(),
        Code::NotJson => {
            "The question can't be read as JSON. Check quotes, commas and brackets.".into()
        }
        Code::NotRate => {
            "Your own rate can't be used. Calibrate again on trees that you timed.".into()
        }
        Code::HeightBelowDiameter => cat!(
            label,
            ": a tree whose diameter is taken at 4 ft 6 in (1.37 m) can't be lower than that. Check the height, or its unit."
        ),
        Code::NoHeight(why) => cat!(label, ": ", no_height(*why)),
        Code::FarFromAnyCrew => cat!(
            typed,
            " is over 12 times, or under a twelfth of, what we expect. Check the minutes, the sizes and their unit."
        ),
        Code::NoTemperatures => cat!(
            label,
            ": no line can be used. Give a day, its lowest and its highest temperature on each line."
        ),
        Code::OtherSeason => cat!(
            typed,
            " is over a year from the day of the work. Give this year's leaf-out, or leave it out."
        ),
    }
}

fn missing(path: &str, label: &str) -> String {
    match path {
        "species" => "Species: choose one from the list, or “I don't know”.".into(),
        "date" => "Day of the work: choose today, another day or the year.".into(),
        "spare" => "Stem to keep: say which one.".into(),
        _ if path.ends_with(".kind") => "What it could hit: choose what it is.".into(),
        _ => cat!(label, " is needed. Fill it in."),
    }
}

fn too_many(label: &str, most: usize, instead: &str) -> String {
    cat!(
        label,
        ": at most ",
        measure::number(most as u32),
        ". ",
        instead
    )
}

fn range(low: f64, high: f64, unit: &str) -> String {
    let number = |value: f64| {
        let places = if value < 1.0 { 2 } else { 0 };
        measure::plain(value, places)
    };
    cat!(phrase::to(number(low), number(high)), " ", unit)
}

fn none_beside(label: &str, kind: &str, two_heights_m: Option<f64>) -> String {
    let what = calc::terms::tree::TargetKind::parse(kind)
        .map_or_else(|| kind.to_owned(), |kind| m::reach_target(kind).into());
    match two_heights_m {
        Some(m) => {
            let within = measure::reach(m);
            cat!(
                label,
                ": ",
                what,
                " stands within two heights (",
                within.us,
                ", ",
                within.metric,
                "), and “nothing in reach” is ticked too. Take one of them off."
            )
        }
        None => cat!(
            label,
            ": ",
            what,
            " is listed, and “nothing in reach” is ticked too. Type its distance, or take one of them off."
        ),
    }
}

/// A tree that is known and is not on the list: whether it is native there, and what to choose if it must go.
pub fn not_listed(told: &NotListed) -> String {
    let name = &phrase::sentence(told.name);
    let choose = cat!("“", &told.choose, "”");
    let place = told.region.as_deref().map(region::in_sentence);
    let mut said = match place.as_deref().filter(|_| told.native == Some(true)) {
        Some(place) => cat!(
            name,
            " is native in ",
            place,
            " and is not on this list. Make sure what it is, and ask why it must go. If it must, choose ",
            choose,
            "."
        ),
        None if told.no_trial => cat!(
            name,
            " is not on this list yet: we read no trial of ringing it. Choose ",
            choose,
            "; the estimates are then wider.",
            if told.sprouts { " Expect sprouts." } else { "" }
        ),
        None => cat!(
            name,
            " is not on this list. ",
            if told.make_sure {
                "Make sure what it is. "
            } else {
                ""
            },
            "If it must go, choose ",
            choose,
            "; the estimates are then wider."
        ),
    };
    if !told.mind.is_empty() {
        said.push(' ');
        said.push_str(told.mind);
    }
    said
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn fields_have_labels() {
        assert_eq!(fields::field("stems[0].diameter"), "Trunk size");
        assert_eq!(fields::field("stems[2].bark"), "Bark thickness, stem 3");
        assert_eq!(fields::field("targets[1].distance"), "Distance, thing 2");
        assert_eq!(fields::field("place.latitude"), "Latitude");
        assert_eq!(
            fields::field("leafed_out.place.latitude"),
            "Place where you saw the leaves"
        );
    }

    #[test]
    fn a_message_says_what_to_do() {
        let text = |field: &str, code, typed| problem_text(&Problem::new(field, code, typed));
        assert_eq!(
            text("stems[0].diameter", Code::NotNumber, "fourteen"),
            "Trunk size, “fourteen”, is not a number. Type a number such as 14 or 14 1/2."
        );
        assert_eq!(
            text("date", Code::MonthMissing, "2027"),
            "Day of the work must include a month, 1 to 12 or its name."
        );
        assert_eq!(
            text(
                "species",
                Code::UnknownSpecies(vec!["red oak", "red ash"]),
                "red osk"
            ),
            "Species, “red osk”, is no species that we know. Did you mean red oak or red ash? \
             If it is none of these, choose “I don’t know”, or in a file “unknown broadleaf”, “unknown conifer” or “unknown shrub”."
        );
    }
}
