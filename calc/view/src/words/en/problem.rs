//! What is wrong with a question, and what to do. Never whose fault it is.

use super::{fields, phrase, region};
use crate::measure;
use crate::words::gap::other_tree;
use crate::words::m;
use crate::words::prose::{bare, is_marked, prose};
use calc::question::{Code, Like, NotListed, Problem, SizeInDoubt};

/// The heading of the summary.
pub fn heading(problems: usize) -> String {
    m::problem_heading(problems)
}

/// The last name of a path.
fn last(path: &str) -> &str {
    path.rsplit(['.', ']']).next().unwrap_or("")
}

/// What a number of a field looks like.
fn example(path: &str) -> &'static str {
    m::problem_example(last(path))
        .unwrap_or(m::PROBLEM_EXAMPLE_ELSE)
        .text()
}

/// Units that a field may carry.
fn units(path: &str) -> &'static str {
    m::problem_unit(last(path))
        .unwrap_or(m::PROBLEM_UNIT_ELSE)
        .text()
}

/// The one field of the form for the day, in which it may be written in other ways than a question has it.
pub const DAY_OF_FORM: &str = "day";

/// The one field of the form for the place, in which a town may stand that nobody picked.
pub const PLACE_OF_FORM: &str = "town";

/// The message of a problem: what it is and what to do. The same words at the field and in the summary.
pub fn problem_text(problem: &Problem) -> String {
    bare(problem_on_page(problem))
}

/// The same for a page, with what is English in it marked.
pub fn problem_on_page(problem: &Problem) -> String {
    let path = problem.field.as_str();
    let typed = &problem.typed;
    match problem.code {
        Code::NoSuchDay if path == DAY_OF_FORM => return m::problem_typed_no_such_day(typed),
        Code::DayMissing | Code::MonthMissing | Code::YearMissing if path == DAY_OF_FORM => {
            return m::problem_typed_day(typed);
        }
        _ if path == PLACE_OF_FORM => return m::problem_typed_place(typed),
        _ => {}
    }
    let field = &fields::field(if path == DAY_OF_FORM { "date" } else { path });
    match &problem.code {
        Code::Missing => missing(path, field),
        Code::NotNumber => m::problem_not_number(m::ProblemNotNumber {
            field,
            typed,
            example: example(path),
        }),
        Code::Ambiguous => m::problem_ambiguous(m::ProblemAmbiguous { field, typed }),
        Code::TooLong => m::problem_too_long(m::ProblemTooLong {
            field,
            example: example(path),
        }),
        Code::WrongUnit => m::problem_wrong_unit(m::ProblemWrongUnit {
            field,
            typed,
            units: units(path),
        }),
        Code::NotPositive => m::problem_not_positive(m::ProblemNotPositive {
            field,
            typed,
            example: example(path),
        }),
        Code::OutOfRange(shown) => m::problem_out_of_range(m::ProblemOutOfRange {
            field,
            typed,
            range: range(shown.range.low, shown.range.high, shown.unit),
        }),
        Code::SizeInDoubt(doubt) => size_in_doubt(field, typed, doubt),
        Code::Both => m::problem_both(field),
        Code::Neither => m::PROBLEM_NEITHER.into(),
        Code::BarkTooThick(shown) => m::problem_bark_too_thick(m::ProblemBarkTooThick {
            field,
            typed,
            most: cat!(measure::plain(shown.range.high, 1), " ", shown.unit),
        }),
        Code::NoStem => m::PROBLEM_NO_STEM.into(),
        Code::TooManyStems(most) if path.starts_with("timed") => {
            m::problem_too_many_timed(field, *most)
        }
        Code::TooManyStems(most) => m::problem_too_many_stems(field, *most),
        Code::TooManyTargets(most) => m::problem_too_many_targets(field, *most),
        Code::DayMissing => m::problem_day_missing(field),
        Code::MonthMissing => m::problem_month_missing(field),
        Code::YearMissing => m::problem_year_missing(field),
        Code::NoSuchDay => m::problem_no_such_day(m::ProblemNoSuchDay { field, typed }),
        Code::YearOutOfRange => {
            m::problem_year_out_of_range(m::ProblemYearOutOfRange { field, typed })
        }
        Code::NotOneOf(words) => m::problem_not_one_of(m::ProblemNotOneOf {
            field,
            typed,
            words: phrase::either(words),
        }),
        Code::UnknownSpecies(like) if like.is_empty() => {
            m::problem_unknown_species(m::ProblemUnknownSpecies { field, typed })
        }
        Code::UnknownSpecies(like) => m::problem_species_like(m::ProblemSpeciesLike {
            field,
            typed,
            like: phrase::either(&names(like)),
        }),
        Code::NotListed(told) => not_listed(told),
        Code::NamesNotHere => m::problem_names_not_here(m::ProblemNamesNotHere { field, typed }),
        Code::NoneBesideTarget { two_heights_m, .. } => none_beside(field, typed, *two_heights_m),
        Code::NoSuchStem => m::PROBLEM_NO_SUCH_STEM.into(),
        Code::HalfPlace => m::problem_half_place(field),
        Code::NotRegion => m::problem_not_region(m::ProblemNotRegion { field, typed }),
        Code::UnknownKey => m::problem_unknown_key(path),
        Code::WrongType => m::problem_wrong_type(path),
        Code::WrongVersion => m::PROBLEM_WRONG_VERSION.into(),
        Code::NotJson => m::PROBLEM_NOT_JSON.into(),
        Code::NotRate => m::PROBLEM_NOT_RATE.into(),
        Code::HeightBelowDiameter => m::problem_height_below_diameter(field),
        Code::NoHeight(why) => m::problem_no_height_said(m::ProblemNoHeightSaid {
            field,
            why: m::problem_no_height(*why),
        }),
        Code::FarFromAnyCrew => {
            m::problem_far_from_any_crew(m::ProblemFarFromAnyCrew { field, typed })
        }
        Code::NoTemperatures => m::problem_no_temperatures(field),
        Code::OtherSeason => m::problem_other_season(m::ProblemOtherSeason { field, typed }),
    }
}

/// Names in the language in use; where it has none, the scientific one with the English one, marked as such.
fn names(like: &[Like]) -> Vec<String> {
    let name = |it: &Like| {
        let said = other_tree(it.scientific, it.name);
        // A name that stays English, in another language.
        match is_marked(&said) {
            true => cat!(it.scientific, " (", said, ")"),
            false => said,
        }
    };
    like.iter().map(name).collect()
}

/// What else may have been meant by a trunk wider than almost any.
pub(super) fn meant_size(doubt: &SizeInDoubt) -> String {
    let said = |number: f64, unit: &str| cat!(measure::plain(number, 2), " ", unit);
    let mut meant = vec![said(doubt.number / 10.0, doubt.unit)];
    if doubt.unit == phrase::INCH {
        meant.push(said(doubt.number, phrase::CM));
    }
    phrase::either(&meant)
}

/// A trunk wider than almost any: what else may have been meant. Nothing is changed.
fn size_in_doubt(field: &str, typed: &str, doubt: &SizeInDoubt) -> String {
    let across = measure::length(doubt.across_m);
    m::problem_size_in_doubt(m::ProblemSizeInDoubt {
        field,
        typed,
        us: across.us,
        metric: across.metric,
        meant: meant_size(doubt),
        tick: m::FORM_SIZE_SURE,
    })
}

fn missing(path: &str, field: &str) -> String {
    match path {
        "species" => m::PROBLEM_SPECIES_MISSING.into(),
        "date" => m::PROBLEM_DATE_MISSING.into(),
        "spare" => m::PROBLEM_SPARE_MISSING.into(),
        _ if path.ends_with(".kind") => m::PROBLEM_KIND_MISSING.into(),
        _ => m::problem_missing(field),
    }
}

fn range(low: f64, high: f64, unit: &str) -> String {
    let number = |value: f64| {
        let places = if value < 1.0 { 2 } else { 0 };
        measure::plain(value, places)
    };
    cat!(phrase::to(number(low), number(high)), " ", unit)
}

fn none_beside(field: &str, kind: &str, two_heights_m: Option<f64>) -> String {
    let target = calc::terms::tree::TargetKind::parse(kind)
        .map_or(kind, |kind| m::reach_target(kind).text());
    match two_heights_m {
        Some(far) => {
            let within = measure::reach(far);
            m::problem_none_beside(m::ProblemNoneBeside {
                field,
                target,
                us: within.us,
                metric: within.metric,
            })
        }
        None => m::problem_none_beside_unknown(m::ProblemNoneBesideUnknown { field, target }),
    }
}

/// A tree that is known and is not on the list: whether it is native there, and what to choose if it must go.
pub fn not_listed(told: &NotListed) -> String {
    let name = told.name;
    let choose = &told.choose;
    let place = told.region.as_deref().map(region::in_sentence);
    let mut said = match place.as_deref().filter(|_| told.native == Some(true)) {
        Some(place) => m::problem_native(m::ProblemNative {
            name,
            place,
            choose,
        }),
        None if told.no_trial => {
            let said = m::problem_no_trial(m::ProblemNoTrial { name, choose });
            if told.sprouts {
                cat!(said, " ", &m::PROBLEM_EXPECT_SPROUTS)
            } else {
                said
            }
        }
        None if told.make_sure => {
            m::problem_not_listed_sure(m::ProblemNotListedSure { name, choose })
        }
        None => m::problem_not_listed(m::ProblemNotListed { name, choose }),
    };
    said = phrase::sentence(&said);
    if !told.mind.is_empty() {
        said.push(' ');
        said.push_str(&prose(told.mind));
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
                Code::UnknownSpecies(vec![
                    Like {
                        name: "red oak",
                        scientific: "Quercus rubra"
                    },
                    Like {
                        name: "red ash",
                        scientific: "Fraxinus pennsylvanica"
                    },
                ]),
                "red osk"
            ),
            "Species, “red osk”, is no species that we know. Did you mean red oak or red ash? \
             If it is none of these, choose “I don’t know”, or in a file “unknown broadleaf”, “unknown conifer” or “unknown shrub”."
        );
    }
}
