//! What share of such stems dies, by season: inside the part of the visits.

use super::frame::{Region, folded_table, lead, open_details, twin};
use super::sources::{cited, label, source, with_sources};
use crate::draw::RangeGrade;
use crate::draw::range::{ShareBar, SharesLabels, shares};
use crate::measure;
use crate::page::Page;
use crate::words::m;
use crate::words::prose::prose;
use crate::words::{self, outlook as w};
use calc::models::outlook::{Outlook, SeasonShare};
use calc::terms::species::Trait;

/// Lead, bars, the species' own rows, what they rest on.
pub(super) fn inside(out: &mut Page<'_>, cx: &Region<'_>, outlook: &Outlook) {
    out.heading(cx.level + 1, "np", "", &m::OUTLOOK_HOW_MANY_DIE);
    if let Some(third) = outlook.seasons.last() {
        lead(
            out,
            w::outlook_lead(&w::share(&third.share), outlook.stem_only),
            m::OUTLOOK_IF,
        );
    }
    let mut rows: Vec<ShareBar> = Vec::new();
    for season in &outlook.seasons {
        rows.push(ShareBar {
            low: season.share.low,
            likely: season.share.likely,
            high: season.share.high,
            grade: outlook_grade(outlook, season),
            label: w::season_bar(season.season, &season.share),
        });
    }
    out.open("figure");
    shares(
        out.sink(),
        &rows,
        &SharesLabels {
            aria: &m::OUTLOOK_HOW_MANY_DIE,
            unit: &m::MEASURE_IN_100_LABEL,
        },
    );
    out.close();
    let second = &outlook.second_ring;
    let mut notes = w::second_ring(second.low, second.high);
    if let Some(known) = &outlook.sprouting {
        notes = cat!(notes, " ", w::sprouting(known.low, known.high));
    }
    out.p(notes);
    for season in &outlook.seasons {
        if let Some(row) = &season.species_row {
            let when = w::season_name(&measure::number(u32::from(season.season)));
            own_row(
                out,
                cx,
                w::own_row(&when, &w::share(&season.share), row.n, row.note),
                &season.because,
            );
        }
    }
    for later in &outlook.later {
        let when = w::season_name(later.when);
        let text = w::own_row(&when, &w::share(&later.share), later.row.n, later.row.note);
        own_row(out, cx, text, later.because);
    }
    deaths(out, cx);
    open_details(out, "", &m::OUTLOOK_BASIS);
    let basis = w::outlook_basis(outlook.class, outlook.size, outlook.anchors, outlook.own);
    out.p(basis);
    out.open("p");
    let mut because = outlook.second_ring.because.clone();
    if let Some(sprouting) = &outlook.sprouting {
        because.extend(&sprouting.because);
    }
    cited(out, cx, &m::MEASURE_SOURCES, &because);
    out.close_two();
    if cx.say.question.tree.species.has(Trait::Oak) {
        oaks(out, cx);
    }
    twin(out, cx, &m::OUTLOOK_TWIN_OUTLOOK, &w::HEAD_OUTLOOK);
    for season in &outlook.seasons {
        let share = &season.share;
        let number = measure::number(u32::from(season.season));
        out.cell(m::outlook_season(number));
        out.cell(measure::percent(share.low));
        match share.likely {
            Some(likely) => out.cell(measure::percent(likely)),
            None => out.cell(m::MEASURE_NOT_KNOWN),
        }
        out.cell(measure::percent(share.high));
    }
    out.close_table();
}

/// A season's own grade: the species' own row, counts that bound it, or our own assumption, as the table says.
fn outlook_grade(outlook: &Outlook, season: &SeasonShare) -> RangeGrade {
    if season.species_row.is_some() {
        return RangeGrade::Measured;
    }
    if calc::models::outlook::is_own(outlook.own, season.season) {
        RangeGrade::Assumed
    } else {
        RangeGrade::Estimated
    }
}

fn own_row(out: &mut Page<'_>, cx: &Region<'_>, text: String, because: &[calc::terms::cite::Cite]) {
    out.open("p");
    out.text(words::phrase::sentence(&text));
    out.text(". ");
    if !because.is_empty() {
        cited(out, cx, &m::MEASURE_SOURCE, because);
    }
    out.close();
}

/// What was counted on this species, as printed, and what other trials of it say.
fn deaths(out: &mut Page<'_>, cx: &Region<'_>) {
    for told in cx.say.question.tree.species.trials_told {
        out.open("p");
        out.text(prose(told.text));
        out.text(" ");
        out.text(m::MEASURE_SOURCE);
        source(out, cx, told.source);
        out.text(".");
        out.close();
    }
    let rows = cx.say.question.tree.species.deaths;
    if rows.is_empty() {
        return;
    }
    folded_table(out, "", &m::OUTLOOK_DEATHS, &w::HEAD_DEATHS);
    for row in rows {
        let printed = [
            row.dead,
            row.after,
            row.n,
            row.dbh,
            row.ring,
            row.season,
            label(cx, row.source),
        ];
        for cell in printed {
            out.cell(prose(cell));
        }
    }
    out.close_table();
}

fn oaks(out: &mut Page<'_>, cx: &Region<'_>) {
    with_sources(out, cx, &w::OAKS_SOURCES, m::outlook_oaks);
}
