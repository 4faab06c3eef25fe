//! The whole sentence with its reason, and all that stands beside it: what a card has no room for.

use super::frame::Region;
use crate::page::Page;
use crate::words::visits;
use calc::terms::method::Method;

/// The sentence, then its lines.
pub(super) fn whole(out: &mut Page<'_>, cx: &Region<'_>) {
    out.open("p");
    out.leaf("b", cx.say.verdict());
    out.close();
    if let Some(native) = cx.say.native() {
        let warned = cx.say.answer.species.native_here;
        out.p_class(if warned { "native" } else { "" }, native);
    }
    for line in &cx.say.also() {
        out.p(line.as_str());
    }
    // A visit is asked about where no ring is advised today: it has no part of its own.
    if let Some(visit) = cx.say.answer.visit.as_ref().filter(|_| !has_visits(cx)) {
        out.p(visits::visit_advice(visit));
    }
}

/// Whether the part of the visits gives the advice at one.
fn has_visits(cx: &Region<'_>) -> bool {
    let answer = cx.say.answer;
    !answer.visits.is_empty() && answer.headline_method == Method::BarkRing
}
