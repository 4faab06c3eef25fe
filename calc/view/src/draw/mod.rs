//! The drawings: markup made from plain numbers and from words passed in.
//!
//! Every drawing takes millimetres, metres, minutes or days of the year, and a `…Labels` struct of
//! words in one language; no word stands in the code. Readings arrive worded (`"14½ in"`), so
//! fractions and decimal marks follow the language; only whole numbers of scales are written here.
//! An empty label is left out. Nothing here decides: spans, zones and inside or outside are given.
//!
//! ```text
//! mark::defs(out)                                       once a root: the hatch patterns
//! mark::swatch(out, Swatch::Hatch)                      inline key symbol, class gm
//! mark::brand(out)  mark::sun(out)                      page head
//! glyph::glyph(out, Glyph::Do)                           the outcomes and the buttons, class gl
//! bands::bands(out, &rows, &months, says)               best days of bands of states, a row each
//! range::range(out, &RangeBar, &RangeLabels)            minutes or years, low to high
//! range::shares(out, &[ShareBar], &SharesLabels)        0 to 100 in 100, one bar a row
//! ruler::foot(out, width_mm, inches, centimetres)       print: 1:1
//! ruler::head(out)                                      the ruled line of page head and foot
//! tree::stand(out)                                      the tree of the home page, decor
//! plate::leaf, twig, fruit, bark(out, &marks, says)     a species by its marks, on its own page
//! ```
//!
//! Drawings that one part alone has stand with it, and use the same pens:
//!
//! ```text
//! answer::ring::drawing::trunk(out, &Trunk, &TrunkLabels)            a person at work beside the stem; one SVG, 366 wide
//! answer::ring::drawing::cut(out, &CutLabels)                        bark, living layer and wood from the side, 358 wide
//! answer::reach::drawing::reach(out, &ReachFigure, &ReachLabels)     wide and narrow
//! answer::season::drawing::year(out, &YearTape, &YearLabels)         wide and narrow (two rows of six months)
//! answer::season::drawing::year_small(out, &YearTape, &YearLabels)   the form's tape, 280 wide
//! answer::season::drawing::visits(out, &[VisitYear], &VisitsLabels)  one row a year, wide and narrow
//! ```
//!
//! Strokes do not scale (`vector-effect` in calc.css). Hatches are presentation attributes
//! (`fill="url(#h)"`), since policies refuse style attributes; the ids live in [`mark::defs`].

pub mod bands;
pub mod glyph;
pub mod mark;
pub mod number;
pub(crate) mod pen;
pub mod plate;
pub mod range;
pub mod ruler;

pub(crate) mod tape;
pub mod tree;
mod wobble;

/// First day of each month, counted from zero, and the end of the year.
pub(crate) const MONTHS: [f64; 13] = [
    0.0, 31.0, 59.0, 90.0, 120.0, 151.0, 181.0, 212.0, 243.0, 273.0, 304.0, 334.0, 365.0,
];

/// One reading worded in both systems: `"14½ in"` and `"37 cm"`.
#[derive(Clone, Copy, Default)]
pub struct Reading<'a> {
    /// US units.
    pub us: &'a str,
    /// Metric units.
    pub metric: &'a str,
}

/// How well a range is known; the same marks as in every key.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum RangeGrade {
    /// Measured: solid.
    Measured,
    /// Estimated or field practice: hatched.
    Estimated,
    /// Our own assumption: hatched inside a dashed edge.
    Assumed,
}

#[cfg(test)]
mod tests;
