//! What the dead tree offers, and how long it may stand.

use super::frame::{Part, Region, folded_table, lead, open_details};
use super::sources::{cited, source};
use crate::draw::RangeGrade;
use crate::draw::range::{RangeBar, RangeLabels, range};
use crate::page::Page;
use crate::words::m;
use crate::words::prose::prose;
use crate::words::{self, habitat as w};
use calc::models::habitat::Habitat;
use calc::terms::method::Method;
use calc::terms::species::Group;

/// Snags an acre: the region's own guideline in view, all of them folded.
fn guides(out: &mut Page<'_>, cx: &Region<'_>, habitat: &Habitat) {
    for guide in habitat.guides.iter().take(habitat.guides_here) {
        out.p(w::snag_guide(
            &prose(guide.guidance),
            &prose(guide.per_acre),
        ));
    }
    folded_table(out, "", &m::HABITAT_SNAG_GUIDES, &w::HEAD_GUIDES);
    for guide in &habitat.guides {
        out.cell(prose(guide.guidance));
        let note = if guide.note.is_empty() { "" } else { "; " };
        out.cell(cat!(&prose(guide.per_acre), note, &prose(guide.note)));
        out.open_cell();
        source(out, cx, guide.because.source);
        out.close_cell();
    }
    out.close_table();
}

/// What it leaves, and how many die. None where nothing is left standing.
pub(super) fn part(cx: &Region<'_>) -> Option<Part> {
    let answer = cx.say.answer;
    // What is pulled, felled or cut leaves nothing standing; a palm is no snag of the table.
    let stands =
        answer.headline_method.leaves_standing() || answer.headline_method == Method::LeaveIt;
    if !stands || answer.species.group == Group::Monocot {
        return None;
    }
    Some(Part {
        class: "p-leave",
        id: "leave",
        title: m::HABITAT_LEAVES.into(),
        key: cx.say.key_leaves()?,
        body,
    })
}

fn body(out: &mut Page<'_>, cx: &Region<'_>) {
    let answer = cx.say.answer;
    let Some(habitat) = &answer.habitat else {
        return;
    };
    if answer.headline_method == Method::BarkRing
        && let Some(outlook) = &answer.outlook
    {
        super::outlook::inside(out, cx, outlook);
    }
    let size = cx.say.size();
    let words = w::leaves_lead(
        habitat.feeding_wood_only,
        habitat.users.len(),
        habitat.region_known,
        &size,
    );
    lead(out, words, "");
    if !habitat.feeding_wood_only && !habitat.users.is_empty() {
        let mut names: Vec<String> = Vec::new();
        for user in &habitat.users {
            names.push(prose(user.name));
        }
        out.p(cat!(words::phrase::row(&names), "."));
        open_details(out, "", &m::HABITAT_USERS_HOW);
        out.open("ul");
        for user in &habitat.users {
            out.leaf(
                "li",
                cat!(&prose(user.name), ": ", prose(w::user_note(user.note)), "."),
            );
        }
        out.close_two();
    }
    guides(out, cx, habitat);
    let (low, likely, high) = habitat.half_life_years;
    let said = w::standing(low, likely, high);
    out.open("figure");
    range(
        out.sink(),
        &RangeBar {
            low,
            likely: Some(likely),
            high,
            grade: RangeGrade::Assumed,
        },
        &RangeLabels {
            aria: &said,
            likely: &m::habitat_years_label(likely),
            unit: &m::MEASURE_YEARS_LABEL,
        },
    );
    out.close();
    out.p_class("soft", said);
    out.p(m::HABITAT_NOT_GOOD_FOR);
    out.open_class("p", "soft");
    let mut because = habitat.because.clone();
    for user in &habitat.users {
        because.push(user.because);
    }
    cited(out, cx, &m::MEASURE_SOURCES, &because);
    out.close();
}
