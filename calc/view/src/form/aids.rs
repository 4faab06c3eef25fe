//! The small aids of the form: a height measured from the ground, trees that were timed. Each is folded, each says
//! at once what its readings make.

use super::field::{NUMBER, Takes, TextField, open_shown};
use super::item::Item;
use super::{Field, Sheet, View};
use crate::page::Page;
use crate::words::{Word, m};
use crate::{field_id, measure, problem_text, words};
use calc::question::{Problem, Typed, read_height_aid, read_timed};
use calc::terms::quantity::M_PER_FT;

/// The line that says what the readings make.
pub(super) const HEIGHT_LINE: &str = "aid-a";
/// The line that says what the timed trees make.
pub const TIMED_LINE: &str = "timed-a";
/// The field of a file of timed trees: it has no name, since what it fills in is what counts.
pub const TIMED_FILE_ID: &str = "f-timed-file";

/// Where its readings stand.
const UNDER: &str = "height_aid.";

/// A reading, and the ways of measuring that take it.
struct Reading {
    field: TextField,
    by: &'static [&'static str],
}

const READINGS: [Reading; 7] = [
    Reading {
        field: TextField {
            name: "tree_shadow",
            label: m::FORM_TREE_SHADOW,
            hint: m::FORM_TREE_SHADOW_HINT,
            ..NUMBER
        },
        by: &["shadow"],
    },
    Reading {
        field: TextField {
            name: "distance",
            label: m::FORM_AID_DISTANCE,
            ..NUMBER
        },
        by: &["angles", "stick"],
    },
    Reading {
        field: TextField {
            name: "stick",
            label: m::FORM_STICK,
            ..NUMBER
        },
        by: &["shadow", "stick"],
    },
    Reading {
        field: TextField {
            name: "stick_shadow",
            label: m::FORM_STICK_SHADOW,
            ..NUMBER
        },
        by: &["shadow"],
    },
    Reading {
        field: TextField {
            name: "eye_to_stick",
            label: m::FORM_EYE_TO_STICK,
            hint: m::FORM_EYE_HINT,
            ..NUMBER
        },
        by: &["stick"],
    },
    Reading {
        field: TextField {
            name: "top",
            label: m::FORM_TOP,
            takes: Takes::Signed,
            ..NUMBER
        },
        by: &["angles"],
    },
    Reading {
        field: TextField {
            name: "foot",
            label: m::FORM_FOOT,
            hint: m::FORM_FOOT_HINT,
            takes: Takes::Signed,
            ..NUMBER
        },
        by: &["angles"],
    },
];

/// Which readings are shown: the id of each, and whether it is.
pub(super) fn shown(sheet: &Sheet) -> impl Iterator<Item = (String, bool)> {
    let by = sheet.get("height_aid.by");
    READINGS
        .iter()
        .map(move |it| (cat!("m-aid-", it.field.name), it.by.contains(&by)))
}

/// The folded part beside the height.
pub(super) const HEIGHT: Item = Item::Fold(
    m::FORM_AID,
    |sheet| !sheet.is("height_aid.by", ""),
    &[
        Item::Select(
            "height_aid.by",
            m::FORM_AID_BY,
            Word::NONE,
            m::FORM_AID_WAYS,
        ),
        Item::Own(readings),
        Item::Field(&[
            Item::Button("aid", m::FORM_AID_FILL),
            Item::Line("asm", HEIGHT_LINE),
        ]),
    ],
);

fn readings(view: &View<'_>, out: &mut Page<'_>) {
    for ((id, shown), it) in shown(view.sheet).zip(&READINGS) {
        open_shown(out, &id, shown);
        out.open_class("div", "field");
        view.text(out, UNDER, "", "", &it.field);
        out.close_two();
    }
}

/// The height that the readings make, as the field beside its unit takes it; or what is wrong with them. None while
/// nothing was picked.
pub(super) fn made(sheet: &Sheet, typed: &Typed) -> Option<Result<String, Vec<Problem>>> {
    typed.height_aid.as_ref()?.by.as_ref()?;
    let in_feet = sheet.unit("height") == "ft";
    Some(read_height_aid(typed).map(|(_, height)| {
        let m = height.m();
        measure::plain(if in_feet { m / M_PER_FT } else { m }, 1)
    }))
}

impl Sheet {
    /// The height that the readings of the aid make, for the field above it.
    ///
    /// # Errors
    /// What is wrong with them: the id of the field to go to, and the words.
    pub fn measured(&self) -> Result<String, (String, String)> {
        match made(self, &self.all()) {
            Some(Ok(text)) => Ok(text),
            Some(Err(problems)) => {
                let field = problems.first().map_or("", |problem| &problem.field);
                Err((field_id(field), all(&problems)))
            }
            None => Err((field_id("height_aid.by"), m::FORM_AID_PICK.into())),
        }
    }
}

fn all(problems: &[Problem]) -> String {
    let texts: Vec<String> = problems.iter().map(problem_text).collect();
    texts.join(" ")
}

/// What the readings make, in words.
pub(super) fn height_line(view: &View<'_>) -> String {
    match made(view.sheet, &view.sheet.all()) {
        None => String::new(),
        Some(Err(problems)) => all(&problems),
        Some(Ok(text)) if text == view.sheet.trimmed("height") => m::FORM_AID_FILLED.into(),
        Some(Ok(text)) => {
            let unit = view.sheet.unit("height");
            let height = cat!(text, " ", unit);
            if view.sheet.blank("height") {
                m::form_aid_counts(height)
            } else {
                m::form_aid_press(height)
            }
        }
    }
}

/// Where the height came from, where it is as the aid filled it in.
pub(super) fn measured_by(view: &View<'_>) -> Option<String> {
    let by = view.draft.question.as_ref()?.height_by?;
    Some(m::form_measured(m::fields_height_by(by)))
}

/// The folded part of one's own trees.
pub(super) const TIMED: Item = Item::Where(
    Field::Timed,
    &[Item::Fold(
        m::FORM_TIMED,
        |sheet| sheet.all().timed.is_some(),
        &[
            Item::Note("hint", m::FORM_TIMED_HOW),
            Item::Own(trees),
            Item::Field(&[Item::Text(TextField {
                name: "timed.minutes",
                label: m::FORM_TIMED_MINUTES,
                ..NUMBER
            })]),
            Item::Field(&[Item::Text(TextField {
                name: "timed.width",
                label: m::FORM_TIMED_WIDTH,
                hint: m::FORM_TIMED_WIDTH_HINT,
                ..NUMBER
            })]),
            Item::Field(&[Item::Text(TextField {
                name: "timed.species",
                label: m::FORM_TIMED_SPECIES,
                hint: m::FORM_TIMED_SPECIES_HINT,
                takes: Takes::Words,
                ..NUMBER
            })]),
            Item::Field(&[Item::Line("asm", TIMED_LINE)]),
            Item::Own(keep),
            Item::File(TIMED_FILE_ID, m::FORM_TIMED_OPEN, ".csv,text/csv"),
        ],
    )],
);

fn trees(view: &View<'_>, out: &mut Page<'_>) {
    let unit = super::field::unit_word(view.sheet.unit("timed.width"));
    let label = m::form_timed_trees(unit);
    let hint = m::FORM_TIMED_TREES_HINT;
    view.long_text(out, "timed.trees", &label, &hint, "4", TIMED_LINE);
    out.close();
}

fn keep(view: &View<'_>, out: &mut Page<'_>) {
    out.open_class("div", "field pair");
    let all = [
        Item::Button("keep-timed", m::FORM_TIMED_KEEP),
        Item::Button("forget-timed", m::FORM_TIMED_FORGET),
        Item::Button("save-timed", m::FORM_TIMED_SAVE),
    ];
    let first = if view.options.keeps { 0 } else { 2 };
    view.items(out, &all[first..]);
    out.close();
}

/// What the timed trees make, in words.
pub(super) fn timed_line(view: &View<'_>) -> String {
    let typed = view.sheet.all();
    if view.draft.question.is_none() || typed.timed.is_none() {
        return String::new();
    }
    match read_timed(view.reference, &typed) {
        Err(problems) => all(&problems),
        Ok((timed, rate)) => words::effort::timed(
            timed.trees,
            timed.minutes,
            timed.no_rate,
            rate.map(|rate| rate.factor(&view.reference.constants.effort)),
        ),
    }
}

/// The first line of a file of timed trees.
const FILE_HEAD: &str = "slipbark timed trees,1";
/// Its other lines: a name, and the field that it fills.
const FILE_LINES: [(&str, &str); 3] = [
    ("minutes", "timed.minutes"),
    ("width", "timed.width"),
    ("species", "timed.species"),
];

impl Sheet {
    /// The timed trees as a file: a name and a value on each line, sizes with their unit. Empty without a tree.
    #[must_use]
    pub fn timed_file(&self) -> String {
        let timed = self.all().timed.unwrap_or_default();
        if timed.trees.is_empty() {
            return String::new();
        }
        let mut text = cat!(FILE_HEAD, "\r\n");
        let mut line = |name: &str, value: &str| {
            if !value.is_empty() {
                text.push_str(&cat!(name, ",", value, "\r\n"));
            }
        };
        let unit = self.unit("timed.width");
        for tree in &timed.trees {
            line("tree", &super::sheet::with_unit(tree.trimmed(), unit));
        }
        for (name, field) in &FILE_LINES {
            let value = self.trimmed(field);
            match *name {
                "width" => line(name, &super::sheet::with_unit(value, unit)),
                _ => line(name, value),
            }
        }
        text
    }
}

/// The fields that a file of timed trees fills. None where it is no such file, or one of a later version.
#[must_use]
pub fn timed_from(file: &str) -> Option<Vec<(&'static str, String)>> {
    let head = file.trim_start_matches('\u{feff}').lines().next()?;
    if head.trim() != FILE_HEAD {
        return None;
    }
    let values = |name: &str| {
        let mut values: Vec<&str> = Vec::new();
        for line in file.lines() {
            let value = line.strip_prefix(name).and_then(|it| it.strip_prefix(','));
            values.extend(value.map(str::trim));
        }
        values
    };
    let mut fields = vec![("timed.trees", values("tree").join("\n"))];
    for (name, field) in &FILE_LINES {
        let value = values(name).first().copied().unwrap_or_default();
        fields.push((*field, value.to_owned()));
    }
    Some(fields)
}
