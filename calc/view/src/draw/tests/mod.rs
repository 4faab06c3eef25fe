//! Geometry of the drawings against the numbers they were given. No printed source covers a drawing,
//! so each check is a property: one scale, ratios kept, nothing outside, labels apart, markup sound.

mod pieces;
mod reach;
mod trunk;
mod year;

use super::pen::width;
use crate::out::Out;

/// An element as it was drawn.
#[derive(Default, Clone, Debug)]
struct Drawn {
    tag: &'static str,
    attrs: Vec<(&'static str, String)>,
    text: String,
    /// Which outermost svg it stands in, counted from zero, and whether inside a nested one.
    figure: usize,
    nested: bool,
}

impl Drawn {
    fn get(&self, key: &str) -> &str {
        self.attrs
            .iter()
            .find(|(k, _)| *k == key)
            .map_or("", |(_, v)| v)
    }
    fn n(&self, key: &str) -> f64 {
        self.get(key)
            .parse()
            .unwrap_or_else(|_| panic!("{key} of {self:?}"))
    }
    fn has(&self, class: &str) -> bool {
        self.get("class").split(' ').any(|c| c == class)
    }
    /// Left, top, right, bottom of a text.
    fn text_box(&self, larger: f64) -> [f64; 4] {
        let size = self.n("font-size") * larger;
        let w = width(&self.text, size, self.has("tb")) * 0.94;
        let (x, y) = (self.n("x"), self.n("y"));
        let left = match self.get("text-anchor") {
            "middle" => x - w / 2.0,
            "end" => x - w,
            _ => x,
        };
        [left, y - size * 0.72, left + w, y + size * 0.05]
    }
}

/// A sink that keeps what was drawn.
#[derive(Default)]
struct Kept {
    all: Vec<Drawn>,
    open: Vec<usize>,
    figures: usize,
}

impl Out for Kept {
    fn open(&mut self, tag: &'static str) {
        let depth = self
            .open
            .iter()
            .filter(|i| self.all[**i].tag == "svg")
            .count();
        if tag == "svg" && depth == 0 {
            self.figures += 1;
        }
        self.open.push(self.all.len());
        self.all.push(Drawn {
            tag,
            figure: self.figures.saturating_sub(1),
            nested: depth > 1,
            ..Drawn::default()
        });
    }
    fn attr(&mut self, key: &'static str, value: &str) {
        let i = *self.open.last().expect("an open element");
        assert!(self.all[i].get(key).is_empty(), "{key} twice");
        assert_ne!(key, "style", "policies refuse style attributes");
        self.all[i].attrs.push((key, value.to_owned()));
    }
    fn text(&mut self, text: &str) {
        let i = *self.open.last().expect("an open element");
        self.all[i].text.push_str(text);
    }
    fn close(&mut self) {
        self.open.pop().expect("an open element");
    }
}

fn kept(draw: impl FnOnce(&mut dyn Out)) -> Vec<Drawn> {
    let mut kept = Kept::default();
    draw(&mut kept);
    assert!(kept.open.is_empty(), "an element was left open");
    for d in &kept.all {
        for (key, v) in &d.attrs {
            assert!(!v.contains("NaN") && !v.contains("inf"), "{key}={v}");
        }
        if d.tag == "text" {
            assert!(
                d.n("font-size") >= 12.0 || kept.all[0].has("ruler"),
                "{d:?}"
            );
        }
        if d.tag == "svg" && !d.nested && !d.has("clip") {
            let named = !d.get("aria-label").is_empty() && d.get("role") == "img";
            assert!(named || d.get("aria-hidden") == "true", "{d:?}");
        }
    }
    kept.all
}

/// Texts of one figure that touch, and texts that run out of it.
fn crowded(all: &[Drawn]) -> Vec<String> {
    crowded_in(all, 1.0)
}

/// The same in letters so much larger.
fn crowded_in(all: &[Drawn], larger: f64) -> Vec<String> {
    let mut found = Vec::new();
    let texts: Vec<&Drawn> = all.iter().filter(|d| d.tag == "text").collect();
    for (i, a) in texts.iter().enumerate() {
        let view: Vec<f64> = all
            .iter()
            .find(|d| d.tag == "svg" && d.figure == a.figure)
            .map(|d| {
                d.get("viewBox")
                    .split(' ')
                    .map(|n| n.parse().unwrap())
                    .collect()
            })
            .unwrap();
        let p = a.text_box(larger);
        if p[0] < -2.0 || p[1] < -2.0 || p[2] > view[2] + 2.0 || p[3] > view[3] + 2.0 {
            found.push(format!("{} runs out: {p:?} of {view:?}", a.text));
        }
        for b in &texts[i + 1..] {
            let q = b.text_box(larger);
            if a.figure == b.figure && p[0] < q[2] && q[0] < p[2] && p[1] < q[3] && q[1] < p[3] {
                found.push(format!("{} on {}", a.text, b.text));
            }
        }
    }
    found
}
