//! The question as the fragment of a link, `v=1&species=Norway+maple&size=14+1%2F2&…`, and back.
//!
//! The keys are those of the element's attributes, else the names of the question. `size` or `girth` begins a
//! stem, `target` a thing that it could hit; what follows belongs to it. A link tells the region and the half of
//! the world, never a point, a table of temperatures, or a crew's own rate.

use calc::question::{
    Keyed, LeafOutTyped, PlaceTyped, Slot, StemTyped, TargetTyped, Text, Typed, slot_of_link,
};

/// The longest fragment, in characters: what mail programs and notices leave whole.
pub const LONGEST: usize = 400;
/// The version of these keys. What a later one adds must not change what these mean.
const VERSION: &str = "1";
/// The units of a stem's size, before the first of them.
const SIZE_UNIT: &str = "size-unit";
/// What stands for a tick.
const TICKED: &str = "yes";

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
    out.own(&mut typed);
    let metric = typed
        .units
        .as_ref()
        .is_some_and(|units| units.trimmed() == "metric");
    out.pair(SIZE_UNIT, if metric { "cm" } else { "in" });
    for stem in &mut typed.stems {
        // The key of its size begins a stem.
        if stem.girth.is_none() {
            out.pair("size", &stem.diameter.take().unwrap_or_default().0);
        } else {
            out.pair("girth", &stem.girth.take().unwrap_or_default().0);
            stem.diameter = None;
        }
        out.own(stem);
    }
    for target in &mut typed.targets {
        out.pair("target", &target.kind.take().unwrap_or_default().0);
        out.own(target);
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
        out.own(&mut leaf);
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
    let Some(slot) = slot(typed, key) else {
        return false;
    };
    let value = match (key, value) {
        (SIZE_UNIT, "cm" | "mm") => "metric",
        (SIZE_UNIT, _) => "us",
        (_, value) => value,
    };
    match slot {
        Slot::Text(text) => *text = Some(Text::from(value)).filter(|text| !text.is_empty()),
        Slot::Held(held) => *held = value == TICKED,
        _ => return false,
    }
    true
}

/// The place of what a key tells: in the question, in its last stem or target, in its place, or in what was seen.
fn slot<'t>(typed: &'t mut Typed, key: &str) -> Option<Slot<'t>> {
    let tells = |record: &dyn Keyed| record.keys().iter().any(|it| it.in_link == Some(key));
    let record: &mut dyn Keyed = if tells(typed) {
        typed
    } else if tells(&StemTyped::default()) {
        typed.stems.last_mut()?
    } else if tells(&TargetTyped::default()) {
        typed.targets.last_mut()?
    } else if tells(&PlaceTyped::default()) {
        typed.place.get_or_insert_default()
    } else if tells(&LeafOutTyped::default()) {
        typed.leafed_out.get_or_insert_default()
    } else {
        return None;
    };
    slot_of_link(record, key)
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

    /// The texts and ticks that a record has, each under its name in a link, where there is something. Units are
    /// told by the stems' own key.
    fn own(&mut self, record: &mut dyn Keyed) {
        for (at, key) in record.keys().iter().enumerate() {
            let Some(name) = key.in_link.filter(|name| *name != SIZE_UNIT) else {
                continue;
            };
            match record.at(at) {
                Some(Slot::Text(Some(text))) if !text.is_empty() => self.pair(name, &text.0),
                Some(Slot::Held(true)) => self.pair(name, TICKED),
                _ => {}
            }
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
