//! The small calculators: each answers its own question first, then says what could stop it, then shows its part.

use super::frame::{Part, Region, level_over, shown};
use super::{card, cautions, confidence, effort, reach, ring, season, visits};
use crate::draw::glyph::{Glyph, glyph};
use crate::kind::Kind;
use crate::page::Page;
use crate::words::m;
use calc::answer::Outcome;

/// The number that was asked for, and the band under it. A stop, or an open question, has its card instead, above
/// whatever number there is.
pub(super) fn first(out: &mut Page<'_>, cx: &Region<'_>) {
    let stops = matches!(
        cx.say.answer.outcome,
        Outcome::Professional | Outcome::CannotTell
    );
    let told = cx.say.first(cx.options.kind);
    if stops || told.is_none() {
        card::card(out, cx);
        return;
    }
    out.open_class("section", "mini");
    let id = cx.id("say");
    out.attr("aria-labelledby", &id);
    out.open_class("div", "ans");
    card::numbers::one(out, cx);
    out.open_heading(level_over(cx.level), "say");
    out.attr("id", &id);
    out.attr("tabindex", "-1");
    out.text(told.unwrap_or_default());
    out.close();
    out.p_class("next", cx.say.card());
    out.close();
    out.open_class("div", "hold");
    glyph(out.sink(), Glyph::Caution);
    out.open("p");
    out.leaf("b", m::CALCULATORS_FIRST_CHECK);
    out.text(" ");
    out.text(cx.say.near_said());
    out.close_two();
    card::actions(out, cx);
    out.close();
}

/// The part of the calculator, open; the rest that backs it, folded.
pub(super) fn parts(out: &mut Page<'_>, cx: &Region<'_>) {
    match part(cx) {
        Some(part) => shown(out, cx, &part),
        None => out.p(m::CALCULATORS_NO_SUCH_PART),
    }
    shown(out, cx, &cautions::part(cx));
    out.open_class("div", "folds");
    super::folded(out, cx, &confidence::part(cx));
    out.close();
}

fn part(cx: &Region<'_>) -> Option<Part> {
    match cx.options.kind {
        Kind::TreePlan | Kind::Ring => Some(ring::part(cx)),
        Kind::Year => Some(season::part(cx)),
        Kind::Reach => Some(reach::part(cx)),
        Kind::Effort => effort::part(cx),
        Kind::Checks => visits::part(cx),
    }
}
