//! Do: the numbers to carry, the steps, the trunk.

pub mod drawing;

use super::frame::key;
use super::frame::{Part, Region, items, lead, open_fold, table, twin};
use super::sources::weakest;
use crate::answer::ring::drawing::{CutLabels, Trunk, TrunkLabels, cut, trunk};
use crate::draw::mark::Swatch;
use crate::measure::{self, Both};
use crate::page::Page;
use crate::words::{self, Word, m, method};
use crate::words::{ring as w, ring::Ringing};
use calc::answer::{Answer, StemAnswer};
use calc::models::provisos::Proviso;
use calc::models::ring::Ring;
use calc::terms::cite::Grade;
use calc::terms::method::Method;
use calc::terms::quantity::Units;
use calc::terms::tree::{Condition, Goal};

/// From this thickness on bark asks for a mallet: the effort table's limit between medium and thick, 3/4 in.
const THICK_MM: f64 = 0.75 * 25.4;
/// Below this it is thin: 1/4 in of the same table.
const THIN_MM: f64 = 0.25 * 25.4;

/// The part: what to do, by a ring or by another method.
pub(super) fn part(cx: &Region<'_>) -> Part {
    Part {
        class: "p-do",
        id: "do",
        title: m::RING_DO.into(),
        key: cx.say.key_do(),
        body,
    }
}

fn body(out: &mut Page<'_>, cx: &Region<'_>) {
    let answer = cx.say.answer;
    let largest = largest(cx);
    let ring = largest.and_then(|stem| Some((stem, stem.ring.as_ref()?)));
    match ring {
        Some((stem, ring)) if answer.headline_method == Method::BarkRing => {
            ring_part(out, cx, stem, ring)
        }
        _ => other_steps(out, cx),
    }
}

/// The stem that the answer speaks of: the thickest living one that is not the one to keep.
pub(super) fn largest<'a>(cx: &Region<'a>) -> Option<&'a StemAnswer> {
    largest_of(cx.say.answer)
}

fn largest_of(answer: &Answer) -> Option<&StemAnswer> {
    let key = |stem: &StemAnswer| (stem.live_share > 0.0, stem.dbh_mm);
    let mut largest: Option<&StemAnswer> = None;
    for stem in answer.stems.iter().filter(|stem| !stem.spared) {
        if largest.is_none_or(|known| key(stem) >= key(known)) {
            largest = Some(stem);
        }
    }
    largest
}

/// The ring of that stem.
pub fn ring_of(answer: &Answer) -> Option<&Ring> {
    largest_of(answer)?.ring.as_ref()
}

fn ring_part(out: &mut Page<'_>, cx: &Region<'_>, stem: &StemAnswer, ring: &Ring) {
    let question = cx.say.question;
    out.open_class("div", "split");
    out.open("figure");
    draw(out, cx, stem, ring);
    out.close();
    out.open("div");
    let bark = stem.bark.as_ref().map_or(0.0, |bark| bark.mm);
    let bark_said = measure::bark(bark).text(cx.say.units());
    let width = measure::ring(ring.better_mm);
    let spared = match question.tree.goal {
        Goal::SpareOne(at) => Some(at + 1),
        Goal::Wildlife | Goal::Kill => None,
    };
    let mut steps = w::ring_steps(&Ringing {
        width: width.first(cx.say.units()),
        limbs: question.tree.limbs,
        live: (stem.live_share < 1.0).then_some(stem.live_share * 100.0),
        thick: (bark >= THICK_MM).then_some(&bark_said),
        stems: cx.say.rings().len(),
        spared,
        thorns: thorns(cx),
    });
    steps.extend(cx.say.provisos().iter().map(|step| (*step).into()));
    items(out, "ol", "steps", steps);
    let least = measure::ring(ring.at_least_mm);
    let least = least.first(cx.say.units());
    let on_trunk = match cx.say.units() {
        Units::Us => m::ring_where_on_trunk(least),
        Units::Metric => m::ring_where_on_trunk_metric(least),
    };
    let tools = w::ring_tools(bark >= THICK_MM, bark < THIN_MM);
    out.p_class("soft", cat!(on_trunk, " ", &tools, " ", &m::RING_CREW));
    draw_cut(out, cx, stem);
    out.close_two();
    if !cx.tables_apart() {
        twin(out, cx, &m::RING_TWIN_TRUNK, &w::HEAD_PART);
        rows(out, cx, stem, ring);
        out.close_table();
    }
    if question.tree.stems.len() > 1 {
        stems(out, cx, true);
    }
}

/// What the drawing of the trunk shows, as a table: where there is such a drawing.
pub(super) fn in_table(out: &mut Page<'_>, cx: &Region<'_>) {
    let ring = largest(cx).and_then(|stem| Some((stem, stem.ring.as_ref()?)));
    if let Some((stem, ring)) = ring
        && cx.say.answer.headline_method == Method::BarkRing
    {
        table(out, &m::RING_TWIN_TRUNK, &w::HEAD_PART);
        rows(out, cx, stem, ring);
        out.close_table();
    }
}

/// The trunk alone, where a ring may be cut.
pub(super) fn drawn(out: &mut Page<'_>, cx: &Region<'_>) {
    if let Some((stem, ring)) = largest(cx).and_then(|stem| Some((stem, stem.ring.as_ref()?))) {
        out.open("figure");
        draw(out, cx, stem, ring);
        out.close();
    }
}

/// The cut from the side alone.
pub(super) fn cut_alone(out: &mut Page<'_>, cx: &Region<'_>) {
    if let Some(stem) = largest(cx) {
        draw_cut(out, cx, stem);
    }
}

/// Whether the species has thorns.
fn thorns(cx: &Region<'_>) -> bool {
    cx.say.question.tree.species.cautions.contains(&"TH1")
}

fn draw(out: &mut Page<'_>, cx: &Region<'_>, stem: &StemAnswer, ring: &Ring) {
    let units = cx.say.units();
    let size = measure::size(stem.dbh_mm);
    let bark = stem.bark.as_ref().map_or(0.0, |bark| bark.mm);
    let least = measure::ring(ring.at_least_mm);
    let better = measure::ring(ring.better_mm);
    let aria = m::ring_trunk_aria(m::RingTrunkAria {
        least: &least.spoken(units),
        better: &better.spoken(units),
    });
    let [upper, lower, person] = match units {
        Units::Us => ["4½ ft", "3 ft", "5 ft 7 in"],
        Units::Metric => ["1.4 m", "0.9 m", "1.7 m"],
    };
    let (first, second) = better.ordered(units);
    trunk(
        out.sink(),
        &Trunk {
            dbh_mm: stem.dbh_mm,
            bark_mm: bark,
            at_least_mm: ring.at_least_mm,
            better_mm: ring.better_mm,
        },
        &TrunkLabels {
            aria: &aria,
            bare: &m::RING_BARE,
            across: &m::ring_trunk_across(size.first(units)),
            at_least: [least.first(units), &m::RING_AT_LEAST],
            better: [first, second],
            up: [&m::ring_up(upper), &m::ring_up(lower)],
            person,
        },
    );
}

/// The cut from the side, and what its coloured line is.
fn draw_cut(out: &mut Page<'_>, cx: &Region<'_>, stem: &StemAnswer) {
    let units = cx.say.units();
    let bark = stem.bark.as_ref().map(|bark| measure::bark(bark.mm));
    let bark_size = bark.map(|bark| m::ring_cut_bark(bark.first(units)));
    out.open_class("figure", "noprint");
    cut(
        out.sink(),
        &CutLabels {
            aria: &m::RING_CUT_ARIA,
            bark: &m::RING_BARK,
            bark_size: bark_size.as_deref().unwrap_or(&m::RING_BARK),
            bare: &m::RING_CUT_BARE,
            wood: &m::RING_CUT_WOOD,
        },
    );
    key(out, &[(Swatch::Living, "", &m::RING_CUT_LIVING)]);
    out.close();
}

fn rows(out: &mut Page<'_>, cx: &Region<'_>, stem: &StemAnswer, ring: &Ring) {
    let measured = m::confidence_grade(Grade::Measured);
    row(
        out,
        &m::RING_ROW_ACROSS,
        measure::size(stem.dbh_mm),
        &measured,
    );
    if let Some(bark) = &stem.bark {
        let standing = bark_standing(cx, bark);
        row(out, &m::RING_ROW_BARK, measure::bark(bark.mm), &standing);
    }
    if let Some(inside) = stem.inside_bark_mm {
        row(out, &m::RING_ROW_INSIDE, measure::size(inside), "");
    }
    let standing = m::confidence_grade(weakest(&ring.because));
    let least = measure::ring(ring.at_least_mm);
    row(out, &m::RING_ROW_AT_LEAST, least, &standing);
    let better = measure::ring(ring.better_mm);
    row(out, &m::RING_ROW_BETTER, better, &standing);
}

/// A row of a twin: what, in both units, and how it stands.
pub(super) fn row(out: &mut Page<'_>, name: &str, value: Both, standing: &str) {
    out.cell(name);
    out.cells(value);
    out.cell(standing);
}

/// How a bark thickness stands: measured, or estimated with its range.
pub(super) fn bark_standing(cx: &Region<'_>, bark: &calc::models::bark::Bark) -> String {
    if bark.measured {
        return m::confidence_grade(Grade::Measured).into();
    }
    let units = cx.say.units();
    w::estimated(
        measure::bark(bark.low_mm).first(units),
        measure::bark(bark.high_mm).first(units),
        bark.confidence,
    )
}

/// Each stem by itself, with its ring where the answer is one: folded under what is done with each.
fn stems(out: &mut Page<'_>, cx: &Region<'_>, rings: bool) {
    let units = cx.say.units();
    let heads: &[Word] = if rings {
        &w::HEAD_STEMS[..]
    } else {
        &w::HEAD_STEMS_ONLY
    };
    let key = cx.say.key_stems();
    open_fold(out, cx, "p-stems", "stems", &m::RING_STEMS, &key);
    out.open_table("vh", &m::RING_STEMS, heads);
    let mut number = 0;
    for stem in &cx.say.answer.stems {
        number += 1;
        out.cell(measure::number(number));
        out.cell(measure::size(stem.dbh_mm).first(units));
        match &stem.ring {
            _ if !rings => {}
            Some(ring) if stem.headline_method == Method::BarkRing => {
                out.cell(measure::ring(ring.at_least_mm).first(units));
                out.cell(measure::ring(ring.better_mm).first(units));
            }
            _ => {
                out.cell("–");
                out.cell("–");
            }
        }
        out.cell(plan_of(stem));
    }
    out.close_table();
    if rings && cx.say.question.tree.spared().is_some() {
        out.p(m::RING_SPARED_UNPROVEN);
    }
    out.close_two();
}

/// What is done with a stem.
fn plan_of(stem: &StemAnswer) -> &'static str {
    if stem.spared {
        m::RING_KEEP_STEM.text()
    } else {
        m::method_act(stem.headline_method).text()
    }
}

/// Short steps of another method than a ring.
fn other_steps(out: &mut Page<'_>, cx: &Region<'_>) {
    let answer = cx.say.answer;
    let question = cx.say.question;
    let other = answer.headline_method;
    let dead =
        question.tree.condition == Condition::Dead || question.tree.heading().live_share <= 0.0;
    if dead {
        out.p(m::METHOD_NO_RING_DEAD);
    }
    lead(
        out,
        cat!(words::phrase::sentence(&m::method_act(other)), "."),
        m::method_who_does_it(cx.say.who_does_it()),
    );
    let hands_on = !answer.headline_by_professional
        && !matches!(other, Method::LeaveIt | Method::Frill | Method::BasalBark);
    out.open_class("ol", "steps");
    if hands_on && thorns(cx) {
        out.leaf("li", m::RING_THORNS);
    }
    let wood_goes = answer
        .provisos
        .iter()
        .any(|it| matches!(it, Proviso::TakeAwayOrPeel | Proviso::BarkOff));
    for step in method::other_steps(
        other,
        (dead, cx.say.drops_wood()),
        answer.headline_by_professional,
    ) {
        if method::step_stands(*step, wood_goes) {
            out.leaf("li", *step);
        }
    }
    for step in cx.say.provisos() {
        out.leaf("li", step);
    }
    out.close();
    if question.tree.stems.len() > 1 {
        stems(out, cx, false);
    }
}
