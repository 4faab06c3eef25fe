//! The small aids of the form: a height measured from the ground, trees that were timed. Each is folded, each says
//! at once what its readings make.

use super::field::{TextField, button, open_shown};
use super::{Field, Sheet, View, words as w};
use crate::control::labelled;
use crate::field_id;
use crate::measure;
use crate::out::{Out, OutExt};
use crate::problem_text;
use crate::words;
use calc::quantity::M_PER_FT;
use calc::question::{Problem, Typed, read_height_aid, read_timed};

/// The line that says what the readings make.
pub(super) const HEIGHT_LINE: &str = "aid-a";
/// The line that says what the timed trees make.
pub const TIMED_LINE: &str = "timed-a";
/// The field of a file of timed trees: it has no name, since what it fills in is what counts.
pub const TIMED_FILE_ID: &str = "f-timed-file";

/// A reading: its key, label, hint, whether it is a length, and the ways of measuring that take it.
struct Reading {
    key: &'static str,
    label: &'static str,
    hint: &'static str,
    length: bool,
    by: &'static [&'static str],
}

const READINGS: [Reading; 7] = [
    Reading {
        key: "tree_shadow",
        label: w::TREE_SHADOW,
        hint: w::TREE_SHADOW_HINT,
        length: true,
        by: &["shadow"],
    },
    Reading {
        key: "distance",
        label: w::AID_DISTANCE,
        hint: "",
        length: true,
        by: &["angles", "stick"],
    },
    Reading {
        key: "stick",
        label: w::STICK,
        hint: "",
        length: true,
        by: &["shadow", "stick"],
    },
    Reading {
        key: "stick_shadow",
        label: w::STICK_SHADOW,
        hint: "",
        length: true,
        by: &["shadow"],
    },
    Reading {
        key: "eye_to_stick",
        label: w::EYE_TO_STICK,
        hint: w::EYE_HINT,
        length: true,
        by: &["stick"],
    },
    Reading {
        key: "top",
        label: w::TOP,
        hint: "",
        length: false,
        by: &["angles"],
    },
    Reading {
        key: "foot",
        label: w::FOOT,
        hint: w::FOOT_HINT,
        length: false,
        by: &["angles"],
    },
];

fn name(key: &str) -> String {
    ["height_aid.", key].concat()
}

fn reading_id(key: &str) -> String {
    ["m-aid-", key].concat()
}

/// Which readings are shown: the id of each, and whether it is.
pub(super) fn shown(sheet: &Sheet) -> impl Iterator<Item = (String, bool)> {
    let by = sheet.get("height_aid.by");
    READINGS
        .iter()
        .map(move |it| (reading_id(it.key), it.by.contains(&by)))
}

/// The folded part beside the height.
pub(super) fn height(view: &View<'_>, out: &mut dyn Out) {
    let by = view.sheet.get("height_aid.by");
    out.open("details");
    if !by.is_empty() {
        out.attr("open", "");
    }
    out.leaf("summary", w::AID);
    view.select(out, "height_aid.by", w::AID_BY, "", w::AID_WAYS);
    for it in &READINGS {
        open_shown(out, &reading_id(it.key), it.by.contains(&by));
        view.text_field(
            out,
            &TextField {
                hint: it.hint,
                // The keypad of digits has no minus on some phones.
                decimal: it.length,
                ..TextField::number(&name(it.key), it.label)
            },
        );
        out.close();
    }
    out.open_class("div", "field");
    button(out, "aid", None, w::AID_FILL, false);
    view.live_line(out, "p", "asm", HEIGHT_LINE);
    out.close();
    out.close();
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
            None => Err((field_id("height_aid.by"), w::AID_PICK.to_owned())),
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
        Some(Ok(text)) if text == view.sheet.get("height").trim() => w::AID_FILLED.to_owned(),
        Some(Ok(text)) => {
            let unit = view.sheet.unit("height");
            [w::AID_MAKES, &text, " ", unit, w::AID_PRESS].concat()
        }
    }
}

/// Where the height came from, where it is as the aid filled it in.
pub(super) fn measured_by(view: &View<'_>) -> Option<String> {
    let by = view.draft.question.as_ref()?.height_by?;
    Some([w::MEASURED, words::height_by(by), w::MEASURED_END].concat())
}

/// The folded part of one's own trees.
pub(super) fn timed(view: &View<'_>, out: &mut dyn Out) {
    view.open_where(out, Field::Timed);
    out.open("details");
    if view.sheet.all().timed.is_some() {
        out.attr("open", "");
    }
    out.leaf("summary", w::TIMED);
    out.leaf_class("p", "hint", w::TIMED_HOW);
    out.open_class("div", "field");
    let id = field_id("timed.trees");
    let unit = view.sheet.unit("timed.width");
    let label = [w::TIMED_TREES, super::field::unit_word(unit)].concat();
    let hint = labelled(out, &id, &label, w::TIMED_TREES_HINT);
    out.open("textarea");
    out.attr("id", &id);
    out.attr("name", "timed.trees");
    out.attr("rows", "4");
    out.attr("spellcheck", "false");
    out.attr("aria-describedby", &[&hint, " ", TIMED_LINE].concat());
    out.text(view.sheet.get("timed.trees"));
    out.close();
    out.close();
    view.text_field(out, &TextField::number("timed.minutes", w::TIMED_MINUTES));
    view.text_field(
        out,
        &TextField {
            hint: w::TIMED_WIDTH_HINT,
            ..TextField::number("timed.width", w::TIMED_WIDTH)
        },
    );
    view.text_field(
        out,
        &TextField {
            hint: w::TIMED_SPECIES_HINT,
            decimal: false,
            wide: true,
            ..TextField::number("timed.species", w::TIMED_SPECIES)
        },
    );
    out.open_class("div", "field");
    view.live_line(out, "p", "asm", TIMED_LINE);
    out.close();
    out.open_class("div", "field pair");
    if view.options.keeps {
        button(out, "keep-timed", None, w::TIMED_KEEP, false);
        button(out, "forget-timed", None, w::TIMED_FORGET, false);
    }
    button(out, "save-timed", None, w::TIMED_SAVE, false);
    out.close();
    out.open_class("div", "field");
    labelled(out, TIMED_FILE_ID, w::TIMED_OPEN, "");
    out.open_class("input", "wf");
    out.attr("type", "file");
    out.attr("id", TIMED_FILE_ID);
    out.attr("accept", ".csv,text/csv");
    out.close();
    out.close();
    out.close();
    out.close();
}

/// What the timed trees make, in words.
pub(super) fn timed_line(view: &View<'_>) -> String {
    let typed = view.sheet.all();
    let Some(question) = view
        .draft
        .question
        .as_ref()
        .filter(|_| typed.timed.is_some())
    else {
        return String::new();
    };
    let mut before = question.clone();
    before.rate = None;
    match read_timed(view.reference, &before, &typed) {
        Err(problems) => all(&problems),
        Ok((timed, rate)) => words::timed(
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
        let mut text = [FILE_HEAD, "\r\n"].concat();
        let mut line = |name: &str, value: &str| {
            if !value.is_empty() {
                text.push_str(&[name, ",", value, "\r\n"].concat());
            }
        };
        let unit = self.unit("timed.width");
        for tree in &timed.trees {
            line("tree", &super::sheet::with_unit(tree.trimmed(), unit));
        }
        for (name, field) in FILE_LINES {
            let value = self.get(field).trim();
            match name {
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
    let mut lines = file.trim_start_matches('\u{feff}').lines();
    if lines.next()?.trim() != FILE_HEAD {
        return None;
    }
    let mut trees: Vec<&str> = Vec::new();
    let mut fields = vec![("timed.trees", String::new())];
    for (name, field) in FILE_LINES {
        fields.push((field, String::new()));
        let value = file
            .lines()
            .find_map(|line| line.strip_prefix(name)?.strip_prefix(','));
        if let (Some(value), Some(last)) = (value, fields.last_mut()) {
            value.trim().clone_into(&mut last.1);
        }
    }
    for line in lines {
        trees.extend(line.strip_prefix("tree,").map(str::trim));
    }
    fields[0].1 = trees.join("\n");
    Some(fields)
}
