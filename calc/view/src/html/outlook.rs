//! What share of such stems dies, by season: inside the part of the visits.

use super::build::{Cx, Rows, cites, folded_table, lead, open_details, source, twin};
use super::make::title;
use crate::draw::Grade;
use crate::draw::range::{Share, SharesLabels, shares};
use crate::heading::heading;
use crate::measure;
use crate::out::Page;
use crate::words as w;
use calc::model::outlook::{Outlook, SeasonShare};
use calc::reference::Trait;

/// Lead, bars, the species' own rows, what they rest on.
pub fn inside(out: &mut Page<'_>, cx: &Cx<'_>, outlook: &Outlook) {
    heading(out, cx.level + 1, "np", "", w::HOW_MANY_DIE);
    if let Some(third) = outlook.seasons.last() {
        lead(
            out,
            &w::outlook_lead(&w::share(&third.share), outlook.stem_only),
            w::OUTLOOK_IF,
        );
    }
    let labels: Vec<String> = outlook
        .seasons
        .iter()
        .map(|season| w::season_bar(season.season, &season.share))
        .collect();
    let rows: Vec<Share<'_>> = outlook
        .seasons
        .iter()
        .zip(&labels)
        .map(|(season, label)| Share {
            low: season.share.low,
            likely: season.share.likely,
            high: season.share.high,
            grade: outlook_grade(outlook, season),
            label,
        })
        .collect();
    out.open("figure");
    shares(
        out.sink(),
        &rows,
        &SharesLabels {
            aria: w::HOW_MANY_DIE,
            unit: w::IN_100,
        },
    );
    out.close();
    let mut notes = vec![w::second_ring(
        outlook.second_ring.low,
        outlook.second_ring.high,
    )];
    if let Some((low, high)) = outlook
        .sprouting
        .as_ref()
        .map(|known| (known.low, known.high))
    {
        notes.push(w::sprouting(low, high));
    }
    out.p(&notes.join(" "));
    for season in &outlook.seasons {
        if let Some(row) = &season.species_row {
            let when = w::season_name(&measure::number(u32::from(season.season)));
            own_row(
                out,
                cx,
                &w::own_row(&when, &w::share(&season.share), row.n, row.note),
                &season.because,
            );
        }
    }
    for later in &outlook.later {
        let when = w::season_name(later.when);
        let text = w::own_row(&when, &w::share(&later.share), later.row.n, later.row.note);
        own_row(out, cx, &text, later.because);
    }
    deaths(out, cx);
    open_details(out, "", w::OUTLOOK_BASIS);
    let basis = w::outlook_basis(outlook.class, outlook.size, outlook.anchors, outlook.own);
    out.p(&basis);
    out.open("p");
    out.text(w::SOURCES);
    let mut because = outlook.second_ring.because.clone();
    if let Some(sprouting) = &outlook.sprouting {
        because.extend(&sprouting.because);
    }
    cites(out, cx, &because);
    out.text(".");
    out.close_two();
    if cx.say.question.species.has(Trait::Oak) {
        oaks(out, cx);
    }
    let mut table = Rows::default();
    for season in &outlook.seasons {
        let share = &season.share;
        let number = measure::number(u32::from(season.season));
        table
            .put(cat!(w::SEASON, number))
            .put(measure::percent(share.low))
            .put(
                share
                    .likely
                    .map_or_else(|| w::NOT_KNOWN.into(), measure::percent),
            )
            .put(measure::percent(share.high));
    }
    twin(out, w::TWIN_OUTLOOK, &title(cx), &w::HEAD_OUTLOOK, &table);
}

/// A season's own grade: the species' own row, counts that bound it, or our own assumption, as the table says.
fn outlook_grade(outlook: &Outlook, season: &SeasonShare) -> Grade {
    if season.species_row.is_some() {
        return Grade::Measured;
    }
    if calc::model::outlook::is_own(outlook.own, season.season) {
        Grade::Assumed
    } else {
        Grade::Estimated
    }
}

fn own_row(out: &mut Page<'_>, cx: &Cx<'_>, text: &str, because: &[calc::evidence::Cite]) {
    out.open("p");
    out.text(&w::sentence(text));
    out.text(". ");
    if !because.is_empty() {
        out.text(w::SOURCE);
        cites(out, cx, because);
        out.text(".");
    }
    out.close();
}

/// What was counted on this species, as printed.
fn deaths(out: &mut Page<'_>, cx: &Cx<'_>) {
    let rows = cx.say.question.species.deaths;
    if rows.is_empty() {
        return;
    }
    open_details(out, "", w::DEATHS);
    let mut list = Rows::default();
    for row in rows {
        let known = cx.say.reference.source(row.source);
        let label = known.map_or(row.source, |source| source.label);
        for cell in [
            row.dead, row.after, row.n, row.dbh, row.ring, row.season, label,
        ] {
            list.cell(cell);
        }
    }
    folded_table(out, w::DEATHS, &w::HEAD_DEATHS, &list);
    out.close();
}

fn oaks(out: &mut Page<'_>, cx: &Cx<'_>) {
    out.open_class("p", "soft");
    for (at, piece) in w::OAKS_DISAGREE.iter().enumerate() {
        out.text(piece);
        if let Some(id) = w::OAKS_SOURCES.get(at) {
            out.text("(");
            source(out, cx, id);
            out.text(")");
        }
    }
    out.close();
}
