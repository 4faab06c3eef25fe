//! The question as the fragment of a link, `v=1&species=Norway+maple&size=14+1%2F2&…`, and back.
//!
//! The keys are those of the element's attributes, else the names of the question. `size` or `girth` begins a
//! stem, `target` a thing that it could hit; what follows belongs to it. A link tells the region and the half of
//! the world, never a point, a table of temperatures, or a crew's own rate.

use calc::question::{Record, Slot, StemTyped, TargetTyped, Text, Typed, slot_of};

/// The longest fragment, in characters: what mail programs and notices leave whole.
pub const LONGEST: usize = 400;
/// The version of these keys. What a later one adds must not change what these mean.
const VERSION: &str = "1";
/// What stands for a tick.
const TICKED: &str = "yes";

/// Texts and ticks of a question that a link tells under their own names.
const PLAIN: [&str; 19] = [
    "species",
    "date",
    "region",
    "height",
    "height_confirmed",
    "none_in_reach",
    "line_within_reach",
    "setting",
    "condition",
    "herbicide",
    "goal",
    "whole_clone",
    "same_genus_near",
    "vigour",
    "dry_spell",
    "limbs",
    "walk",
    "practised",
    "cannot_wait",
];

/// A question that came with a link.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Shared {
    /// The question.
    pub typed: Typed,
    /// Keys that this version does not know, as they stood there.
    pub unknown: Vec<String>,
}

/// Writes a question; `south` of the equator. None where it would be longer than [`LONGEST`].
#[must_use]
pub fn write(typed: &Typed, south: bool) -> Option<String> {
    let mut out = LinkWriter(["v=", VERSION].concat());
    let mut typed = typed.clone();
    for key in &PLAIN {
        out.slot(key, &mut typed, key);
    }
    let metric = typed
        .units
        .as_ref()
        .is_some_and(|units| units.trimmed() == "metric");
    out.pair("size-unit", if metric { "cm" } else { "in" });
    for stem in &mut typed.stems {
        let (key, size) = match &stem.girth {
            Some(girth) => ("girth", &girth.0),
            None => ("size", &stem.diameter.get_or_insert_default().0),
        };
        out.pair(key, size);
        for key in ["bark", "live_share"] {
            out.slot(key, stem, key);
        }
    }
    for target in &mut typed.targets {
        out.pair("target", &target.kind.get_or_insert_default().0);
        for key in ["distance", "slope", "voltage", "downhill"] {
            out.slot(key, target, key);
        }
    }
    for sign in &typed.signs {
        out.pair("sign", &sign.0);
    }
    if let Some(spare) = typed.spare {
        out.pair("spare", &crate::measure::number(spare));
    }
    if south {
        out.pair("hemisphere", "south");
    }
    // Leaves seen elsewhere say nothing without the place.
    if let Some(mut leaf) = typed.leafed_out.filter(|leaf| leaf.place.is_none()) {
        out.slot("leaf", &mut leaf, "stage");
        out.slot("leaf_date", &mut leaf, "date");
    }
    Some(out.0).filter(|text| text.len() <= LONGEST)
}

/// Reads what [`write`] wrote, in this version or another. None where it is longer than [`LONGEST`].
#[must_use]
pub fn read(fragment: &str) -> Option<Shared> {
    if fragment.len() > LONGEST {
        return None;
    }
    let mut shared = Shared::default();
    shared.typed.version = 1;
    for (key, value) in pairs(fragment) {
        if !take(&mut shared.typed, &key, &value) {
            shared.unknown.push(key);
        }
    }
    Some(shared)
}

/// Puts a value where it belongs; false for a key that is not known.
fn take(typed: &mut Typed, key: &str, value: &str) -> bool {
    match key {
        "v" => return value == VERSION,
        "size" | "girth" => typed.stems.push(StemTyped::default()),
        "target" => typed.targets.push(TargetTyped::default()),
        "spare" => {
            typed.spare = crate::form::whole(value);
            return true;
        }
        "sign" => {
            typed.signs.push(Text::from(value));
            return true;
        }
        _ => {}
    }
    let (record, name): (Option<&mut dyn Record>, &str) = match key {
        "size-unit" => (Some(typed), "units"),
        "size" | "girth" | "bark" | "live_share" => {
            let name = if key == "size" { "diameter" } else { key };
            (typed.stems.last_mut().map(|it| it as _), name)
        }
        "target" | "distance" | "slope" | "voltage" | "downhill" => {
            let name = if key == "target" { "kind" } else { key };
            (typed.targets.last_mut().map(|it| it as _), name)
        }
        "hemisphere" => (Some(typed.place.get_or_insert_default()), key),
        "leaf" => (Some(typed.leafed_out.get_or_insert_default()), "stage"),
        "leaf_date" => (Some(typed.leafed_out.get_or_insert_default()), "date"),
        _ if PLAIN.contains(&key) => (Some(typed), key),
        _ => return false,
    };
    let slot = record.and_then(|record| slot_of(record, name));
    let value = match (key, value) {
        ("size-unit", "cm" | "mm") => "metric",
        ("size-unit", _) => "us",
        (_, value) => value,
    };
    match slot {
        Some(Slot::Text(text)) => *text = Some(Text::from(value)).filter(|text| !text.is_empty()),
        Some(Slot::Held(held)) => *held = value == TICKED,
        _ => return false,
    }
    true
}

/// Writes `key=value&key=value`, each as a form of a page is sent.
#[derive(Default)]
pub struct LinkWriter(pub String);

impl LinkWriter {
    /// The next pair.
    pub fn pair(&mut self, key: &str, value: &str) {
        if !self.0.is_empty() {
            self.0.push('&');
        }
        escape(&mut self.0, key);
        self.0.push('=');
        escape(&mut self.0, value);
    }

    /// What a record has under a name, where there is something.
    fn slot(&mut self, key: &str, record: &mut dyn Record, name: &str) {
        match slot_of(record, name) {
            Some(Slot::Text(Some(text))) if !text.is_empty() => self.pair(key, &text.0),
            Some(Slot::Held(true)) => self.pair(key, TICKED),
            _ => {}
        }
    }
}

/// The pairs of such a text, in order. A broken escape stands for itself.
pub fn pairs(text: &str) -> impl Iterator<Item = (String, String)> {
    text.split('&').filter(|pair| !pair.is_empty()).map(|pair| {
        let (key, value) = pair.split_once('=').unwrap_or((pair, ""));
        (unescape(key), unescape(value))
    })
}

const DIGITS: &[u8; 16] = b"0123456789ABCDEF";

fn escape(into: &mut String, text: &str) {
    for &byte in text.as_bytes() {
        match byte {
            b' ' => into.push('+'),
            b'-' | b'.' | b'_' | b'0'..=b'9' | b'A'..=b'Z' | b'a'..=b'z' => {
                into.push(char::from(byte))
            }
            _ => {
                into.push('%');
                for digit in [byte >> 4, byte & 15] {
                    into.push(char::from(DIGITS[usize::from(digit)]));
                }
            }
        }
    }
}

fn unescape(text: &str) -> String {
    let bytes = text.as_bytes();
    let digit = |at: usize| {
        let byte = bytes.get(at)?.to_ascii_uppercase();
        let value = DIGITS.iter().position(|digit| *digit == byte)?;
        Some(value as u8)
    };
    let mut out = Vec::new();
    let mut at = 0;
    while let Some(&byte) = bytes.get(at) {
        let escaped = (byte == b'%')
            .then(|| digit(at + 1).zip(digit(at + 2)))
            .flatten();
        match escaped {
            Some((high, low)) => {
                out.push(high * 16 + low);
                at += 2;
            }
            None => out.push(if byte == b'+' { b' ' } else { byte }),
        }
        at += 1;
    }
    String::from_utf8(out).unwrap_or_default()
}
