//! The two parts of the timing verdict: the bark, and the months of law and biology.

use super::facts::Facts;
use crate::models::season;
use crate::models::season::{
    Before, DiseaseLine, RegionDates, Rules, SpringAnswer, TapeSpan, TimingAnswer,
};
use crate::terms::cite::{Cite, cite};
use crate::terms::source;
use crate::terms::species::Trait;
use crate::timing::Basis;
use crate::timing::closed_months;
use crate::timing::closed_months::Topic;
use crate::timing::disease::DiseaseStatus;
use chrono::{Datelike, NaiveDate};

/// The last day of each month.
const LAST_DAYS: [u8; 12] = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/// The dates without anything of this year's own, where those of the day rest on it.
fn before(facts: &Facts<'_>, day: NaiveDate) -> Option<Before> {
    facts.local.climate.as_ref()?;
    let own = match facts.calendar.season.window(day)?.basis {
        Basis::ObservedHere | Basis::ObservedElsewhere { .. } | Basis::OwnSpring { .. } => true,
        Basis::Climate | Basis::OtherYear => false,
    };
    if !own {
        return None;
    }
    let mut plain = facts.question.clone();
    plain.leafed_out = None;
    plain.spring = None;
    let season = season::of(
        &facts.reference.constants.timing,
        &plain.season(),
        facts.local,
    );
    let dates = season.window(day)?;
    Some(Before {
        budbreak: dates.budbreak,
        opens: dates.opens,
        closes: dates.closes,
        probability: season.probability(day),
    })
}

/// The dates of a warm and a cold place of the state or country, where the dates of the day are its middle's.
fn region(facts: &Facts<'_>, day: NaiveDate) -> Option<RegionDates> {
    let region = facts.local.region.as_ref()?;
    let dates = facts.calendar.season.window(day)?;
    if dates.basis != Basis::Climate {
        return None;
    }
    let opens = |climate| {
        let asked = facts.question.season();
        let season = season::ordinary_at(&facts.reference.constants.timing, &asked, climate);
        season.dates_of(dates.year).map(|dates| dates.opens)
    };
    Some(RegionDates {
        middle: region.middle.clone(),
        warm: region.warm.0.clone(),
        warm_opens: opens(&region.warm.1)?,
        cold: region.cold.0.clone(),
        cold_opens: opens(&region.cold.1)?,
        spread_days: region.spread_days,
    })
}

/// What the dates rest on: the species' sum, the climate table or what was seen, the offsets.
fn timing_because(facts: &Facts<'_>) -> Vec<Cite> {
    let species = facts.question.tree.species;
    if !facts.calendar.season.is_dated() {
        return vec![
            Cite::practice("late winter to early summer"),
            Cite::own("the hemisphere's months"),
        ];
    }
    let mut because = vec![species.budbreak];
    if facts.local.climate.is_some() {
        because.push(cite(source::WORLDCLIM14, "monthly means 1960-1990"));
    }
    if facts.question.leafed_out.is_some() {
        because.push(Cite::measured("leaf-out"));
    }
    because.push(cite(source::FOWLER, "tanbark"));
    because.push(cite(source::DOW2022, "growth dates"));
    because.push(Cite::own("timing: offsets and spreads"));
    because
}

pub(super) fn timing(facts: &Facts<'_>, asked: Option<NaiveDate>, day: NaiveDate) -> TimingAnswer {
    let season = &facts.calendar.season;
    let dates = season.window(day);
    let from = asked.unwrap_or_else(|| facts.question.day.start());
    let closed = |day: NaiveDate| facts.calendar.ring_closed(day);
    let next = season.next_stretches(from, &closed, 2);
    let stretch = |at: usize| next.get(at).map(|s| s.best.unwrap_or((s.from, s.to)));
    TimingAnswer {
        verdict: season.verdict(day),
        probability: season.probability(day),
        budbreak: dates.map(|dates| dates.budbreak),
        opens: dates.map(|dates| dates.opens),
        best_from: dates.map(|dates| dates.best_from),
        best_to: dates.map(|dates| dates.best_to),
        closes: dates.map(|dates| dates.closes),
        sd_open: dates.map(|dates| dates.sd_open),
        sd_close: dates.map(|dates| dates.sd_close),
        next_good: stretch(0).map(|s| s.0),
        next_good_to: stretch(0).map(|s| s.1),
        after_next: stretch(1).map(|s| s.0),
        after_next_to: stretch(1).map(|s| s.1),
        basis: dates.map(|dates| dates.basis),
        before: before(facts, day),
        region: region(facts, day),
        spring: facts.question.spring.as_ref().map(|table| SpringAnswer {
            used: matches!(
                dates.map(|dates| dates.basis),
                Some(Basis::OwnSpring { .. })
            ),
            days: table.days.len(),
            bad: table.bad.clone(),
            doubts: table.doubts.clone(),
        }),
        nearest_km: facts
            .local
            .climate
            .as_ref()
            .filter(|_| facts.local.region.is_none())
            .map(|climate| climate.nearest_km),
        elevation_m: facts
            .local
            .climate
            .as_ref()
            .and_then(|climate| climate.site.elev_m),
        meant: facts.local.meant,
        other_season: dates
            .is_some_and(|dates| season.own_year().is_some_and(|own| own != dates.year)),
        table_missing: facts.local.table_missing,
        because: timing_because(facts),
        flags: season.flags().to_vec(),
        short_season: season.is_short(day),
        tape: if season.is_timed() {
            season
                .tape(day.year())
                .into_iter()
                .map(|span| TapeSpan {
                    from: span.from,
                    to: span.to,
                    fill: span.fill,
                })
                .collect()
        } else {
            Vec::new()
        },
    }
}

/// Oak wilt and the ash borer where they matter: whether they are there, and who decides.
pub(super) fn diseases(facts: &Facts<'_>) -> Vec<DiseaseLine> {
    let both = [
        (Topic::OakWilt, facts.calendar.oak_wilt),
        (Topic::AshBorer, facts.calendar.ash_borer),
    ];
    let mut lines = Vec::new();
    for (topic, disease) in both {
        if let Some(disease) = disease {
            lines.push(DiseaseLine {
                topic,
                status: disease.status,
                authority: disease.authority(),
            });
        }
    }
    lines
}

/// Whether laurel wilt is in the region; taken so where none was said.
pub(super) fn laurel_wilt(facts: &Facts<'_>) -> bool {
    let Some(region) = facts.question.region.as_deref() else {
        return true;
    };
    let mut rows = facts.reference.restrictions.iter();
    rows.any(|row| row.topic == Topic::LaurelWilt && (row.names(region) || region == "US"))
}

/// Months of law and biology for this tree: birds and bats for any, pests for their hosts.
pub(super) fn rules(facts: &Facts<'_>, asked: Option<NaiveDate>, day: NaiveDate) -> Vec<Rules> {
    let question = facts.question;
    let has = |mark: Trait| question.tree.species.has(mark);
    let mut topics = vec![Topic::Birds, Topic::Bats];
    for (mark, topic) in [(Trait::Elm, Topic::Elm), (Trait::Pine, Topic::PineBeetles)] {
        if has(mark) {
            topics.push(topic);
        }
    }
    let region = question.region.as_deref();
    let hemisphere = question.place.hemisphere();
    let mut rows: Vec<(closed_months::Applied, bool)> =
        closed_months::for_region(facts.reference.restrictions, region, hemisphere, &topics)
            .into_iter()
            .map(|row| (row, false))
            .collect();
    if let Some(wilt) = facts.calendar.oak_wilt
        && let Some(restriction) = wilt.months
    {
        // Where it is near, or taken not to be there, its months are told, and close nothing.
        let closes = wilt.status != DiseaseStatus::Near && !facts.met.no_oak_wilt;
        let is_default = wilt.status == DiseaseStatus::Assumed;
        let applied = closed_months::Applied {
            restriction,
            is_default,
        };
        rows.push((applied, closes));
    }
    if let Some(months) = facts.calendar.ash_borer.and_then(|borer| borer.months) {
        let is_default = months.codes.is_empty();
        let applied = closed_months::Applied {
            restriction: months,
            is_default,
        };
        rows.push((applied, false));
    }
    let own = facts
        .question
        .tree
        .tighten
        .runs()
        .into_iter()
        .map(|(from, to)| {
            let on = |day: NaiveDate| {
                let month = day.month() as u8;
                if from <= to {
                    from <= month && month <= to
                } else {
                    month >= from || month <= to
                }
            };
            Rules {
                topic: Topic::Group,
                from_md: (from, 1),
                to_md: (to, LAST_DAYS[usize::from(to) - 1]),
                jurisdiction: "",
                force: "",
                is_default: false,
                closes: true,
                on_the_day: on(day) || asked.is_some_and(on),
                because: Cite::group("months without a ring"),
            }
        });
    let rows = rows.into_iter().map(|(applied, closes)| {
        let row = applied.restriction;
        Rules {
            topic: row.topic,
            from_md: row.from_md,
            to_md: row.to_md,
            jurisdiction: row.jurisdiction,
            force: row.force,
            is_default: applied.is_default,
            closes,
            on_the_day: row.covers(day) || asked.is_some_and(|asked| row.covers(asked)),
            because: row.cite,
        }
    });
    rows.chain(own).collect()
}
