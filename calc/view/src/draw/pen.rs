//! Shapes and path data over a sink of markup.

use super::number::{num, push_tenths, tenths};
use crate::out::Out;

/// Where text stands against its x.
#[derive(Clone, Copy, PartialEq)]
pub(crate) enum Anchor {
    Start,
    Middle,
    End,
}

/// Class and width of the two figures that most drawings are.
pub(crate) const FIGURES: [(&str, f64); 2] = [("d wide", 720.0), ("d narrow", 280.0)];

/// Path data.
#[derive(Default)]
pub(crate) struct D(pub String);

impl D {
    /// Commands as they stand in path data; each `#` is the next of the numbers.
    pub(crate) fn add(&mut self, commands: &str, numbers: &[f64]) {
        let mut numbers = numbers.iter();
        for c in commands.chars() {
            if c != '#' {
                self.0.push(c);
                continue;
            }
            let n = tenths(*numbers.next().unwrap_or(&0.0));
            // A minus separates two numbers by itself.
            if n >= 0 && self.0.ends_with(|c: char| c.is_ascii_digit()) {
                self.0.push(' ');
            }
            push_tenths(&mut self.0, n);
        }
        debug_assert!(numbers.len() == 0, "a number without a place");
    }
}

/// Writes SVG elements.
pub(crate) struct Pen<'o> {
    pub out: &'o mut dyn Out,
}

impl Pen<'_> {
    /// Opens a drawing: an image with a name for those who do not see it.
    pub(crate) fn svg(&mut self, class: &str, w: f64, h: f64, aria: &str) {
        let mut view = D::default();
        view.add("0 0##", &[w, h]);
        self.out.open("svg");
        self.out.attr("class", class);
        self.out.attr("viewBox", &view.0);
        if aria.is_empty() {
            self.out.attr("aria-hidden", "true");
        } else {
            self.out.attr("role", "img");
            self.out.attr("aria-label", aria);
        }
    }
    pub(crate) fn end(&mut self) {
        self.out.close();
    }
    fn class(&mut self, class: &str) {
        if !class.is_empty() {
            self.out.attr("class", class);
        }
    }
    /// An attribute that is a number.
    pub(crate) fn at(&mut self, key: &'static str, v: f64) {
        self.out.attr(key, &num(v));
    }
    pub(crate) fn path(&mut self, class: &str, d: &str) {
        if d.is_empty() {
            return;
        }
        self.out.open("path");
        self.class(class);
        self.out.attr("d", d);
        self.end();
    }
    /// A path of one shape; see [`D::add`].
    pub(crate) fn shape(&mut self, class: &str, commands: &str, numbers: &[f64]) {
        let mut d = D::default();
        d.add(commands, numbers);
        self.path(class, &d.0);
    }
    /// A path filled with a pattern of [`super::mark::defs`].
    pub(crate) fn hatched(&mut self, class: &str, d: &str, pattern: &str) {
        self.out.open("path");
        self.class(class);
        self.out.attr("d", d);
        self.out.attr("fill", pattern);
        self.end();
    }
    pub(crate) fn line(&mut self, class: &str, x0: f64, y0: f64, x1: f64, y1: f64) {
        self.shape(class, "M##L##", &[x0, y0, x1, y1]);
    }
    /// A rectangle; `fill` names a pattern or is empty.
    pub(crate) fn rect(&mut self, class: &str, b: [f64; 4], fill: &str) {
        self.out.open("rect");
        self.class(class);
        let [x, y, width, height] = b;
        self.at("x", x);
        self.at("y", y);
        self.at("width", width);
        self.at("height", height);
        if !fill.is_empty() {
            self.out.attr("fill", fill);
        }
        self.end();
    }
    pub(crate) fn circle(&mut self, class: &str, x: f64, y: f64, r: f64) {
        self.out.open("circle");
        self.class(class);
        self.at("cx", x);
        self.at("cy", y);
        self.at("r", r);
        self.end();
    }
    /// Text on a baseline; an empty text draws nothing.
    pub(crate) fn text(&mut self, x: f64, y: f64, size: f64, class: &str, at: Anchor, text: &str) {
        if text.is_empty() {
            return;
        }
        self.out.open("text");
        self.class(class);
        self.at("x", x);
        self.at("y", y);
        self.at("font-size", size);
        match at {
            Anchor::Start => {}
            Anchor::Middle => self.out.attr("text-anchor", "middle"),
            Anchor::End => self.out.attr("text-anchor", "end"),
        }
        self.out.text(text);
        self.end();
    }
    /// Bold text on paper of its own shape, in any typeface, centred on (`x`, `y`); says whether it fitted in `room`.
    pub(crate) fn plate(&mut self, x: f64, y: f64, size: f64, room: f64, text: &str) -> bool {
        if text.is_empty() || width(text, size, true) + 14.0 > room {
            return false;
        }
        self.text(x, y + size * 0.35, size, "halo pl", Anchor::Middle, text);
        true
    }
    /// A number in a circle: a visit or a target.
    pub(crate) fn pin(&mut self, x: f64, y: f64, n: u8) {
        self.circle("s fp", x, y, 11.0);
        let mut s = String::new();
        super::number::whole(&mut s, u64::from(n));
        self.text(x, y + 5.0, 14.0, "tb", Anchor::Middle, &s);
    }
    /// A dimension line from `y0` down to `y1` with end bars; heads only where they fit.
    pub(crate) fn dimension(&mut self, x: f64, y0: f64, y1: f64) {
        let (left, right) = (x - 7.0, x + 7.0);
        let line = [x, y0, y1, left, y0, right, left, y1, right];
        self.shape("s", "M##V#M##H#M##H#", &line);
        if y1 - y0 > 26.0 {
            let points = [x, y0 + 1.0, x, y1 - 1.0];
            self.shape("fi", "M##l-4.5 11h9ZM##l-4.5-11h9Z", &points);
        }
    }
}

/// A closed outline through points, enlarged and moved so that their zero lies on (`x`, `y`).
pub(crate) fn outline(points: &[[f64; 2]], [x, y]: [f64; 2], enlarged: f64) -> String {
    let mut d = D::default();
    for [dx, dy] in points {
        let command = if d.0.is_empty() { "M##" } else { "L##" };
        d.add(command, &[x + dx * enlarged, y + dy * enlarged]);
    }
    d.0.push('Z');
    d.0
}

/// About how wide text will be, in the unit of `size`. The typeface is the reader's own, so this errs
/// on the wide side; it decides what fits, never where a line ends.
pub(crate) fn width(text: &str, size: f64, bold: bool) -> f64 {
    let em: f64 = text
        .chars()
        .map(|c| match c {
            'i' | 'j' | 'l' | 't' | 'f' | 'I' | ' ' | '.' | ',' | ':' | '\'' | '’' => 0.34,
            'r' | 's' | '-' => 0.48,
            'm' | 'w' | 'M' | 'W' | '%' | '½' | '¼' | '¾' => 0.92,
            'A'..='Z' => 0.68,
            _ => 0.58,
        })
        .sum();
    em * size * if bold { 1.07 } else { 1.0 }
}

/// A text parted at the space nearest its middle, if it has one.
pub(crate) fn halves(text: &str) -> Option<(&str, &str)> {
    let middle = text.len() / 2;
    let spaces = text.bytes().enumerate().filter(|(_, b)| *b == b' ');
    let (at, _) = spaces.min_by_key(|(at, _)| at.abs_diff(middle))?;
    let (first, rest) = calc::terms::small::find::cut(text, at);
    Some((first, calc::terms::small::find::behind(rest, 1)))
}

/// Sorts a handful of things by a number, keeping equal ones in order. A few dozen bytes where the
/// library's sort costs some thousand for each type.
pub(crate) fn sort<T>(all: &mut [T], key: impl Fn(&T) -> f64) {
    for i in 1..all.len() {
        let mut j = i;
        while j > 0 && key(&all[j - 1]) > key(&all[j]) {
            all.swap(j - 1, j);
            j -= 1;
        }
    }
}
