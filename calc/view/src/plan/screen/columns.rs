//! What only the list's owner can know of its columns: the questions, and what the answers decide.

use super::{field, heading, open_form, open_group, option, send};
use crate::measure;
use crate::page::Page;
use crate::words::list as words;
use crate::words::m;
use crate::words::phrase::spoken_unit;
use calc_list::decisions::{Codes, ColumnDecision, PLANTS};
use calc_list::{Ask, Decisions, ListQuestion, Note};
use std::collections::BTreeMap;

/// So many questions stand in view; those after them come when these are answered.
const IN_VIEW: usize = 5;
/// So many codes or classes of a column are asked for.
const MOST_CODES: usize = 60;
/// Units of a size.
const UNITS: [&str; 5] = ["in", "cm", "mm", "m", "ft"];
/// What a size may be, in the words of a decision.
const SIZES: [&str; 8] = [
    "dbh in", "dbh cm", "dbh mm", "dbh m", "girth in", "girth cm", "girth mm", "girth m",
];

/// What is asked, the question with most rows first.
pub fn columns(out: &mut Page<'_>, asks: &[Ask], headers: &[String]) {
    heading(out, &m::PROPERTY_COLUMNS);
    out.p(m::PROPERTY_COLUMNS_WHY);
    open_form(out, "", "decide", &[]);
    for (at, ask) in asks.iter().take(IN_VIEW).enumerate() {
        open_group(out, &words::ask(ask));
        let name = ["a", &at.to_string()].concat();
        for (value, label) in choices(ask) {
            option(out, "radio", &name, &value, false, &label);
        }
        fields(out, ask, headers, &name);
        out.close();
    }
    if asks.len() > IN_VIEW {
        out.p(m::property_columns_more((asks.len() - IN_VIEW).to_string()));
    }
    send(out, "btn", &m::PROPERTY_GO_ON);
    out.close();
}

/// What the judging of columns said.
pub fn notes(out: &mut Page<'_>, notes: &[Note], changed: &[String]) {
    out.open("ul");
    if !changed.is_empty() {
        out.leaf("li", words::old_letters(changed));
    }
    for note in notes {
        out.leaf("li", words::note(note));
    }
    out.close();
}

/// The answers to pick from, each with its value.
fn choices(ask: &Ask) -> Vec<(String, String)> {
    let one = |value: &str, label: String| (value.to_owned(), label);
    let units = || {
        let all = UNITS.iter();
        all.map(|unit| one(unit, spoken_unit(unit).to_owned()))
            .collect()
    };
    match &ask.what {
        ListQuestion::Girth { median, unit, .. } => {
            let across = measure::plain(*median / core::f64::consts::PI, 1);
            let median = measure::plain(*median, 1);
            vec![
                one(
                    "girth",
                    m::property_girth_yes(m::PropertyGirthYes {
                        across,
                        unit: unit.sign(),
                    }),
                ),
                one(
                    "dbh",
                    m::property_girth_no(m::PropertyGirthNo {
                        median,
                        unit: unit.sign(),
                    }),
                ),
                one("keep", m::PROPERTY_LEAVE_COLUMN.into()),
            ]
        }
        ListQuestion::Metres { .. } | ListQuestion::UnitLost { .. } => units(),
        ListQuestion::Codes { stranger, .. } => {
            let mut all = vec![one("own", m::PROPERTY_CODES_OWN.into())];
            if stranger.is_empty() {
                all.insert(0, one("plants", m::PROPERTY_CODES_PLANTS.into()));
            }
            all
        }
        ListQuestion::Missing { value, .. } => vec![
            one("nothing", m::property_missing_yes(value.as_str())),
            one("keep", m::PROPERTY_LEAVE_COLUMN.into()),
        ],
        ListQuestion::Key { columns, .. } => vec![
            one("these", m::property_key_these(columns.join(", "))),
            one("alone", m::PROPERTY_KEY_ALONE.into()),
        ],
        ListQuestion::Numbered { headers } => {
            let newest = headers
                .iter()
                .enumerate()
                .map(|(at, header)| one(&at.to_string(), m::property_newest(header.as_str())));
            let stems = one("stems", m::PROPERTY_STEMS.into());
            newest.chain([stems]).collect()
        }
        ListQuestion::Target { .. } => vec![
            one("target", m::PROPERTY_TARGET_YES.into()),
            one("keep", m::PROPERTY_TARGET_NO.into()),
        ],
        ListQuestion::DayOrder { .. } => vec![
            one("day first", m::PROPERTY_DAY_FIRST.into()),
            one("month first", m::PROPERTY_MONTH_FIRST.into()),
        ],
        ListQuestion::PointOrder { .. } => vec![
            one("latitude first", m::PROPERTY_LATITUDE_FIRST.into()),
            one("longitude first", m::PROPERTY_LONGITUDE_FIRST.into()),
        ],
        ListQuestion::Classes { .. }
        | ListQuestion::NoSpecies
        | ListQuestion::NoSize
        | ListQuestion::NoHeader { .. } => Vec::new(),
    }
}

/// What is typed or picked from a list.
fn fields(out: &mut Page<'_>, ask: &Ask, headers: &[String], name: &str) {
    let id = |at: usize| [name, "-", &at.to_string()].concat();
    match &ask.what {
        ListQuestion::Codes { codes: values, .. } | ListQuestion::Classes { values } => {
            let class = matches!(ask.what, ListQuestion::Classes { .. });
            for (at, (value, rows)) in values.iter().take(MOST_CODES).enumerate() {
                let label = m::property_value(value.as_str(), rows.to_string());
                let hint = match (at, class) {
                    (0, true) => m::PROPERTY_CLASS_HINT.text(),
                    (0, false) => m::PROPERTY_CODE_HINT.text(),
                    _ => "",
                };
                field(out, &id(at), "wf", &label, hint, "");
            }
        }
        ListQuestion::NoSpecies => {
            pick_column(out, &id(0), headers);
            field(out, &id(1), "wf", &m::PROPERTY_EVERY, "", "");
        }
        ListQuestion::NoSize => {
            pick_column(out, &id(0), headers);
            crate::control::labelled(out, &id(1), &m::PROPERTY_SIZE_IS, "");
            crate::control::open_control(out, "select", "wf", &id(1), &id(1));
            for size in SIZES {
                let (is, unit) = size.split_once(' ').unwrap_or((size, ""));
                let unit = spoken_unit(unit);
                let label = match is {
                    "girth" => m::property_girth_in(unit),
                    _ => m::property_diameter_in(unit),
                };
                choice(out, size, &label);
            }
            out.close_two();
        }
        ListQuestion::NoHeader { first } => {
            for (at, cell) in first.iter().enumerate() {
                let label = m::property_first_cell(m::PropertyFirstCell {
                    letter: calc_list::letter(at),
                    cell: cell.as_str(),
                });
                let hint = match at {
                    0 => m::PROPERTY_HEADER_HINT.text(),
                    _ => "",
                };
                field(out, &id(at), "wf", &label, hint, "");
            }
        }
        _ => {}
    }
}

fn choice(out: &mut Page<'_>, value: &str, label: &str) {
    out.open("option");
    out.attr("value", value);
    out.text(label);
    out.close();
}

fn pick_column(out: &mut Page<'_>, id: &str, headers: &[String]) {
    crate::control::labelled(out, id, &m::PROPERTY_WHICH_COLUMN, "");
    crate::control::open_control(out, "select", "wf", id, id);
    choice(out, "", &m::PROPERTY_NO_COLUMN);
    for header in headers.iter().filter(|header| !header.trim().is_empty()) {
        choice(out, header, header);
    }
    out.close_two();
}

/// What the fields of the form decide; what nobody answered is asked again.
pub fn decide(decisions: &mut Decisions, asks: &[Ask], entries: &[(String, String)]) {
    let typed = |name: &str| {
        let mut all = entries.iter();
        let entry = all.find(|(known, _)| known == name);
        entry.map_or("", |(_, value)| value.trim())
    };
    for (at, ask) in asks.iter().take(IN_VIEW).enumerate() {
        let name = ["a", &at.to_string()].concat();
        let sub = |at: usize| typed(&[&name, "-", &at.to_string()].concat());
        one(decisions, ask, typed(&name), &sub);
    }
}

fn one<'a>(decisions: &mut Decisions, ask: &Ask, value: &str, sub: &dyn Fn(usize) -> &'a str) {
    let header = &ask.header;
    let mut put = |header: &str, decision: ColumnDecision| {
        decisions.columns.insert(header.to_owned(), decision);
    };
    let is = |word: &str, unit: &str| ColumnDecision {
        is: Some(word.to_owned()),
        unit: (!unit.is_empty()).then(|| unit.to_owned()),
        ..ColumnDecision::default()
    };
    let order = |word: &str| ColumnDecision {
        order: Some(word.to_owned()),
        ..ColumnDecision::default()
    };
    match (&ask.what, value) {
        (ListQuestion::NoSpecies, _) if !sub(0).is_empty() => put(sub(0), is("species", "")),
        (ListQuestion::NoSpecies, _) if !sub(1).is_empty() => {
            decisions.every = Some(sub(1).to_owned())
        }
        (ListQuestion::NoSize, _) if !sub(0).is_empty() => {
            let (word, unit) = sub(1).split_once(' ').unwrap_or(("dbh", ""));
            put(sub(0), is(word, unit));
        }
        (ListQuestion::NoHeader { first }, _) => {
            decisions.header = Some((0..first.len()).map(|at| sub(at).to_owned()).collect());
        }
        (ListQuestion::Classes { values }, _) => {
            let all: BTreeMap<String, Option<String>> = told(values, sub);
            if all.values().any(Option::is_some) {
                put(
                    header,
                    ColumnDecision {
                        classes: Some(all),
                        ..ColumnDecision::default()
                    },
                );
            }
        }
        (_, "") => {}
        (ListQuestion::Girth { unit, .. }, "keep") => put(header, is("keep", unit.sign())),
        (ListQuestion::Girth { unit, .. }, word) => put(header, is(word, unit.sign())),
        (ListQuestion::Target { .. }, word) => put(header, is(word, "")),
        (ListQuestion::Missing { .. }, "keep") => put(header, is("keep", "")),
        (ListQuestion::Missing { value, .. }, _) => decisions.missing.push(value.clone()),
        (ListQuestion::Metres { .. } | ListQuestion::UnitLost { .. }, unit) => put(
            header,
            ColumnDecision {
                unit: Some(unit.to_owned()),
                ..ColumnDecision::default()
            },
        ),
        (ListQuestion::Codes { codes, .. }, word) => put(
            header,
            ColumnDecision {
                codes: Some(match word {
                    "plants" => Codes::Known(PLANTS.to_owned()),
                    _ => Codes::Own(told(codes, sub)),
                }),
                ..ColumnDecision::default()
            },
        ),
        (ListQuestion::Numbered { headers }, "stems") => {
            for header in headers {
                put(header, order("stems"));
            }
        }
        (ListQuestion::Numbered { headers }, newest) => {
            let mut place = 1;
            for (at, header) in headers.iter().enumerate().rev() {
                let first = newest == at.to_string();
                place += usize::from(!first);
                let place = if first { 1 } else { place };
                put(header, order(&place.to_string()));
            }
        }
        (ListQuestion::Key { columns, .. }, "these") => decisions.key.clone_from(columns),
        (ListQuestion::Key { .. }, _) => decisions.key = vec![header.clone()],
        (ListQuestion::DayOrder { .. } | ListQuestion::PointOrder { .. }, word) => {
            put(header, order(word))
        }
        (ListQuestion::NoSpecies | ListQuestion::NoSize, _) => {}
    }
}

/// What was typed for each value; nothing where the field is empty.
fn told<'a>(
    values: &[(String, usize)],
    sub: &dyn Fn(usize) -> &'a str,
) -> BTreeMap<String, Option<String>> {
    let all = values.iter().take(MOST_CODES).enumerate();
    all.map(|(at, (value, _))| {
        let typed = sub(at);
        (value.clone(), (!typed.is_empty()).then(|| typed.to_owned()))
    })
    .collect()
}
