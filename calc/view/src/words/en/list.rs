//! What a list of trees asks and says: the words of its problems, its columns, its rows and its counts.

use super::phrase::first_of;
use super::problem::problem_text;
use crate::measure;
use crate::words::m;
use calc::answer::Outcome;
use calc::question::SizeInDoubt;
use calc_list::{Ask, Counts, ListQuestion, NotList, NotRead, Note, RowFault, RowProblem, letter};

/// So many values of a column are named in a question.
const MOST_NAMED: usize = 12;

/// What is wrong with a cell, and what to type; without its place.
#[must_use]
pub fn what(problem: &RowProblem) -> String {
    let typed = problem.value.as_str();
    match &problem.code {
        RowFault::Question(problem) => problem_text(problem),
        RowFault::SizeMissing { girth: false } => m::LIST_SIZE_MISSING.into(),
        RowFault::SizeMissing { girth: true } => m::LIST_GIRTH_MISSING.into(),
        RowFault::SizeWide { doubt, said } => size_wide(typed, doubt, *said),
        RowFault::DistanceAlone => m::LIST_DISTANCE_ALONE.into(),
        RowFault::NameMissing => m::LIST_NAME_MISSING.into(),
        RowFault::NameUnknown => m::list_name_unknown(typed),
        RowFault::NotListed { name, choose } => m::list_not_listed(m::ListNotListed {
            name: *name,
            choose: choose.as_str(),
        }),
        RowFault::GenusOnly { of } if of.is_empty() => m::list_genus_only(typed),
        RowFault::GenusOnly { of } => m::list_genus_of(m::ListGenusOf {
            typed,
            of_: super::phrase::either(of),
        }),
        RowFault::SeveralTrees { of } => m::list_several_trees(m::ListSeveralTrees {
            typed,
            of_: super::phrase::either(of),
        }),
        RowFault::TwoTrees => m::list_two_trees(typed),
        RowFault::NamesDisagree => m::LIST_NAMES_DISAGREE.into(),
        RowFault::Shortened => m::list_shortened(typed),
        RowFault::Doubted => m::list_doubted(typed),
        RowFault::CodeUnknown => m::list_code_unknown(typed),
        RowFault::CodeNotListed => m::list_code_not_listed(typed),
        RowFault::CodeUndecided => m::list_code_undecided(typed),
        RowFault::DecisionUnknown { decided } => m::list_decision_unknown(decided.as_str()),
        RowFault::TagTwice { first } => m::list_tag_twice(m::ListTagTwice {
            typed,
            first: first.to_string(),
        }),
        RowFault::TagMangled => m::list_tag_mangled(typed),
        RowFault::Broken => m::LIST_BROKEN.into(),
        RowFault::Formula => m::LIST_FORMULA.into(),
        RowFault::StemSizes { stems: None } => m::LIST_STEM_SIZES.into(),
        RowFault::StemSizes { stems: Some(stems) } => m::list_stem_sizes_of(*stems as usize),
        RowFault::Range => m::list_range(typed),
        RowFault::Open => m::list_open(typed),
        RowFault::MadeADay => m::list_made_a_day(typed),
        RowFault::TwoNumbers => m::list_two_numbers(typed),
        RowFault::Year => m::list_year(typed),
        RowFault::Estimate => m::LIST_ESTIMATE.into(),
        RowFault::ClassUndecided => m::list_class_undecided(typed),
        RowFault::SizesDisagree => m::LIST_SIZES_DISAGREE.into(),
        RowFault::Shrunk { year } => m::list_shrunk(year.to_string()),
        RowFault::MeasuredOff => m::LIST_MEASURED_OFF.into(),
        RowFault::StemCount => m::LIST_STEM_COUNT.into(),
        RowFault::ConditionUnknown => m::list_condition_unknown(typed),
        RowFault::StatusUnknown => m::list_status_unknown(typed),
        RowFault::LeanUnknown => m::list_lean_unknown(typed),
        RowFault::TargetUnknown => m::list_target_unknown(typed),
        RowFault::NotYesNo => m::list_not_yes_no(typed),
        RowFault::PlaceSwapped => m::LIST_PLACE_SWAPPED.into(),
        RowFault::NotOnEarth => m::LIST_NOT_ON_EARTH.into(),
        RowFault::NotDegrees => m::LIST_NOT_DEGREES.into(),
        RowFault::DayPast => m::list_day_past(typed),
        RowFault::CountsAs { known, counts_as } => m::list_counts_as(m::ListCountsAs {
            typed,
            known: *known,
            word: *counts_as,
        }),
        RowFault::DoneDay => m::list_done_day(typed),
        RowFault::NoteGone => m::LIST_NOTE_GONE.into(),
        RowFault::NoteStems => m::LIST_NOTE_STEMS.into(),
        RowFault::NoteWire { open: true } => m::LIST_NOTE_WIRE.into(),
        RowFault::NoteThing { open: true } => m::LIST_NOTE_TARGET.into(),
        RowFault::NoteWire { open: false } | RowFault::NoteThing { open: false } => {
            m::LIST_NOTE_LOOK.into()
        }
        RowFault::NoteFault => m::LIST_NOTE_FAULT.into(),
        RowFault::NoteKeep => m::LIST_NOTE_KEEP.into(),
        RowFault::SlopeUnknown => m::list_slope_unknown(typed),
        RowFault::Steep => m::list_steep(typed),
        RowFault::TooLong => m::LIST_TOO_LONG.into(),
        RowFault::CellTooLong => m::LIST_CELL_TOO_LONG.into(),
        RowFault::QuoteOpen => m::LIST_QUOTE_OPEN.into(),
        RowFault::SamePlace => m::LIST_SAME_PLACE.into(),
    }
}

/// A trunk wider than almost any: in a list nobody ticks that it was measured.
fn size_wide(typed: &str, doubt: &SizeInDoubt, said: bool) -> String {
    let across = measure::length(doubt.across_m);
    if said {
        return m::list_size_wide_said(m::ListSizeWideSaid {
            typed,
            us: across.us,
            metric: across.metric,
        });
    }
    m::list_size_wide(m::ListSizeWide {
        typed,
        us: across.us,
        metric: across.metric,
        meant: super::problem::meant_size(doubt),
        right: [&measure::plain(doubt.number, 2), " ", doubt.unit].concat(),
    })
}

/// The same with row, column and header in front.
#[must_use]
pub fn problem(problem: &RowProblem, header: &str) -> String {
    let row = problem.row.to_string();
    let what = what(problem);
    match problem.column {
        Some(at) => m::list_at(m::ListAt {
            row,
            column: letter(at),
            header,
            what,
        }),
        None => m::list_at_row(m::ListAtRow { row, what }),
    }
}

/// What is said of a column once.
#[must_use]
pub fn note(note: &Note) -> String {
    match note {
        Note::UnitAssumed {
            header,
            unit,
            median,
        } => m::list_unit_assumed(m::ListUnitAssumed {
            header: header.as_str(),
            unit: unit.sign(),
            median: measure::plain(*median, 2),
        }),
        Note::UnitProven { header, unit, by } => m::list_unit_proven(m::ListUnitProven {
            header: header.as_str(),
            unit: unit.sign(),
            by: by.as_str(),
        }),
        Note::OursDropped { columns } => m::list_ours_dropped(*columns),
        Note::Newest { headers } => m::list_newest(headers.join(", ")),
        Note::DaysCounted {
            header,
            number,
            day,
        } => m::list_days_counted(m::ListDaysCounted {
            header: header.as_str(),
            number: number.as_str(),
            day: day.as_str(),
        }),
        Note::MeasuredOff { header, metres } => {
            m::list_column_measured_off(m::ListColumnMeasuredOff {
                header: header.as_str(),
                height: measure::plain(*metres, 2),
            })
        }
        Note::Many { rows, columns } => {
            let named: Vec<String> = columns
                .iter()
                .map(|(header, values)| format!("{header} ({values})"))
                .collect();
            m::list_many(m::ListMany {
                rows: rows.to_string(),
                columns: named.join(", "),
            })
        }
        Note::NotRead { header, why } => {
            let header = header.as_str();
            match why {
                NotRead::NoStemCount => m::list_no_stem_count(header),
                NotRead::HeightClasses => m::list_height_classes(header),
                NotRead::PastDays => m::list_past_days(header),
                NotRead::NotDegrees => m::list_column_not_degrees(header),
                NotRead::Doubled => m::list_doubled(header),
                NotRead::NoGroups => m::list_no_groups(header),
                NotRead::OwnWords => m::list_own_words(header),
                NotRead::NoneIsNothing => m::list_none_is_nothing(header),
            }
        }
    }
}

/// The name of a note, as a program prints it.
#[must_use]
pub fn note_name(note: &Note) -> &'static str {
    match note {
        Note::UnitAssumed { .. } => "unit_assumed",
        Note::UnitProven { .. } => "unit_proven",
        Note::OursDropped { .. } => "ours_dropped",
        Note::Newest { .. } => "newest",
        Note::DaysCounted { .. } => "days_counted",
        Note::MeasuredOff { .. } => "column_measured_off",
        Note::Many { .. } => "many",
        Note::NotRead { why, .. } => match why {
            NotRead::NoStemCount => "no_stem_count",
            NotRead::HeightClasses => "height_classes",
            NotRead::PastDays => "past_days",
            NotRead::NotDegrees => "not_degrees",
            NotRead::Doubled => "doubled",
            NotRead::NoGroups => "no_groups",
            NotRead::OwnWords => "own_words",
            NotRead::NoneIsNothing => "none_is_nothing",
        },
    }
}

/// What an older encoding was read as.
#[must_use]
pub fn old_letters(words: &[String]) -> String {
    m::list_old_letters(words.join(", "))
}

fn counted_values(values: &[(String, usize)]) -> String {
    let named = values
        .iter()
        .map(|(value, rows)| format!("{value} ({rows})"));
    first_of(named, MOST_NAMED, ", ")
}

/// A question about a column or the file.
#[must_use]
pub fn ask(ask: &Ask) -> String {
    let header = ask.header.as_str();
    match &ask.what {
        ListQuestion::Girth { median, unit, .. } => m::list_ask_girth(m::ListAskGirth {
            header,
            median: measure::plain(*median, 1),
            unit: unit.sign(),
            across: measure::plain(*median / core::f64::consts::PI, 1),
        }),
        ListQuestion::Metres { median } => m::list_ask_metres(m::ListAskMetres {
            header,
            median: measure::plain(*median, 2),
        }),
        ListQuestion::Classes { values } => m::list_ask_classes(m::ListAskClasses {
            header,
            values: counted_values(values),
        }),
        ListQuestion::Codes { codes, .. } => m::list_ask_codes(m::ListAskCodes {
            header,
            codes: counted_values(codes),
        }),
        ListQuestion::Missing { value, rows } => m::list_ask_missing(m::ListAskMissing {
            header,
            value: value.as_str(),
            rows: rows.to_string(),
        }),
        ListQuestion::Numbered { headers } => m::list_ask_numbered(headers.join(", ")),
        ListQuestion::Key { columns, repeats } => {
            m::list_ask_key(repeats.to_string(), columns.join(", "))
        }
        ListQuestion::NoSpecies => m::LIST_ASK_NO_SPECIES.into(),
        ListQuestion::NoSize => m::LIST_ASK_NO_SIZE.into(),
        ListQuestion::NoHeader { first } => m::list_ask_no_header(first.join(" | ")),
        ListQuestion::DayOrder { example } => m::list_ask_day_order(m::ListAskDayOrder {
            header,
            example: example.as_str(),
        }),
        ListQuestion::PointOrder { example } => m::list_ask_point_order(m::ListAskPointOrder {
            header,
            example: example.as_str(),
        }),
        ListQuestion::Target { values } => m::list_ask_target(m::ListAskTarget {
            header,
            values: counted_values(values),
        }),
        ListQuestion::UnitLost { .. } => m::list_ask_unit_lost(header),
    }
}

/// How many questions there are, and what to do.
#[must_use]
pub fn asked(questions: usize) -> String {
    m::list_asked(questions)
}

/// A decision that names no column.
#[must_use]
pub fn stranger(name: &str) -> String {
    m::list_stranger(name)
}

/// Why a file is no list, and what to do.
#[must_use]
pub fn not_list(why: NotList) -> String {
    match why {
        NotList::Empty => m::LIST_EMPTY,
        NotList::Workbook => m::LIST_WORKBOOK,
        NotList::NotText => m::LIST_NOT_TEXT,
        NotList::OneColumn => m::LIST_ONE_COLUMN,
        NotList::HeaderAlone => m::LIST_HEADER_ALONE,
        NotList::Sideways => m::LIST_SIDEWAYS,
        NotList::Counts => m::LIST_COUNTS,
    }
    .into()
}

/// No row has an answer.
#[must_use]
pub fn nothing_answered() -> String {
    m::LIST_NOTHING_ANSWERED.into()
}

/// What a row says that has no answer, by its reason: `to_fix`, `not_a_tree`, `skipped`, `done`, `dead`; `decided` where
/// a decision left it out.
#[must_use]
pub fn without_answer(reason: &str, decided: bool) -> String {
    match reason {
        "to_fix" => m::LIST_ROW_TO_FIX,
        "skipped" if decided => m::LIST_ROW_LEFT_OUT,
        "skipped" => m::LIST_ROW_SKIP,
        "done" => m::LIST_ROW_DONE,
        "dead" => m::LIST_ROW_FALLEN,
        _ => m::LIST_ROW_NO_TREE,
    }
    .into()
}

/// How many rows of each kind there are.
#[must_use]
pub fn counted(counts: &Counts) -> String {
    m::list_counted(m::ListCounted {
        rows: counts.rows.to_string(),
        trees: counts.trees().to_string(),
        ready: counts.ready.to_string(),
        fix: counts.to_fix.to_string(),
        blank: counts.blank.to_string(),
        others: counts.no_trees().to_string(),
    })
}

/// How many trees have an outcome; none for those without work.
#[must_use]
pub fn outcome(outcome: Option<Outcome>, trees: u64) -> String {
    let trees = trees.to_string();
    match outcome {
        Some(outcome) => m::list_outcome(m::ListOutcome {
            outcome: m::card_tag(outcome),
            trees,
        }),
        None => m::list_no_work(trees),
    }
}

/// Rows that share a problem.
#[must_use]
pub fn group(rows: &[u64], what: &str) -> String {
    m::list_group(m::ListGroup {
        rows: rows.len().to_string(),
        what,
        which: first_of(rows, MOST_NAMED, ", "),
    })
}
