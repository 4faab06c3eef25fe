//! What the dead tree offers, and how long it may stand.

use super::build::{
    Cx, cites, close_table, lead, open_details, open_part, open_table, row_head, source,
};
use crate::draw::Grade;
use crate::draw::range::{Range, RangeLabels, range};
use crate::measure;
use crate::out::Page;
use crate::words as w;
use calc::model::habitat::Habitat;
use calc::model::method::Method;
use calc::reference::Group;

/// Snags an acre: the region's own guideline in view, all of them folded.
fn guides(out: &mut Page<'_>, cx: &Cx<'_>, habitat: &Habitat) {
    for guide in &habitat.guides[..habitat.guides_here] {
        out.p(&w::snag_guide(guide.guidance, guide.per_acre));
    }
    open_details(out, "", w::SNAG_GUIDES);
    open_table(out, true, w::SNAG_GUIDES, &w::HEAD_GUIDES);
    for guide in &habitat.guides {
        out.open("tr");
        row_head(out, guide.guidance);
        let note = if guide.note.is_empty() { "" } else { "; " };
        out.leaf("td", &cat!(guide.per_acre, note, guide.note));
        out.open("td");
        source(out, cx, guide.because.source);
        out.close_two();
    }
    close_table(out);
    out.close();
}

/// The part. Nothing where nothing is left standing.
pub fn part(out: &mut Page<'_>, cx: &Cx<'_>) {
    let answer = cx.say.answer;
    let Some(habitat) = &answer.habitat else {
        return;
    };
    // What is pulled, felled or cut leaves nothing standing; a palm is no snag of the table.
    let stands =
        answer.headline_method.leaves_standing() || answer.headline_method == Method::LeaveIt;
    if !stands || answer.species.group == Group::Monocot {
        return;
    }
    let question = if answer.headline_method == Method::LeaveIt {
        w::LEAVES_STANDING
    } else {
        w::LEAVES[1]
    };
    open_part(out, cx, "p-hide p-leave", "leave", w::LEAVES[0], question);
    let size = cx.say.size();
    let words = w::leaves_lead(
        habitat.feeding_wood_only,
        habitat.users.len(),
        habitat.region_known,
        &size,
    );
    lead(out, &words, "");
    if !habitat.feeding_wood_only && !habitat.users.is_empty() {
        let names: Vec<&str> = habitat.users.iter().map(|user| user.name).collect();
        out.p(&cat!(w::row(&names), "."));
        open_details(out, "", w::USERS_HOW);
        out.open("ul");
        for user in &habitat.users {
            out.leaf("li", &cat!(user.name, ": ", w::user_note(user.note), "."));
        }
        out.close_two();
    }
    guides(out, cx, habitat);
    let (low, likely, high) = habitat.half_life_years;
    let said = w::standing(low, likely, high);
    out.open("figure");
    range(
        out.sink(),
        &Range {
            low,
            likely: Some(likely),
            high,
            grade: Grade::Assumed,
        },
        &RangeLabels {
            aria: &said,
            likely: &cat!(measure::years(likely), " ", w::YEARS),
            unit: w::YEARS,
        },
    );
    out.close();
    out.p_class("soft", &said);
    out.p(w::NOT_GOOD_FOR);
    out.open_class("p", "soft");
    out.text(w::SOURCES);
    let mut because = habitat.because.clone();
    because.extend(habitat.users.iter().map(|user| user.because));
    cites(out, cx, &because);
    out.text(".");
    out.close_two();
}
