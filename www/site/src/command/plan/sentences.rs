//! A plan in a few sentences: what there is, what can be ringed, what is left and why, what limits it.

use calc::terms::day::iso;
use calc::terms::quantity::Units;
use calc::terms::small::decimals::fixed;
use calc_plan::plan_file::shape::UnitOf;
use calc_plan::{ComesTo, LooserLimit};
use calc_view::plan::after_sentences::TAGS;
use calc_view::plan::asked::{Asked, NotASeason, PlanField};
use calc_view::plan::how_good::{gap_percent, walking};
use calc_view::plan::land::under_crowns;
use calc_view::plan::made::Made;
use calc_view::plan::paper::counted;
use calc_view::plan::read::ReadList;
use calc_view::plan::replant::Replanting;
use calc_view::plan::screen::hit::{CloneToAsk, ToAsk, UnitToAsk};
use calc_view::words::phrase::first_of;
use calc_view::words::prose::bare;
use calc_view::words::{Word, m};
use chrono::NaiveDate;
use std::collections::BTreeMap;
use std::path::Path;

/// So many days are named where no tree can be ringed on those that were.
const NEAREST: usize = 3;

/// All of it, a line each. What is none is left out; the parts add up to the trees that are ready.
pub(super) fn of(
    (made, read): (&Made, &ReadList),
    asked: &Asked,
    (folder, files, shown_in): (&Path, &[&str], Units),
) -> String {
    let (file, planned, binds) = (&made.file, &made.planned, &made.binds);
    let crew = &asked.season.crew;
    let mut lines = counted(file);
    let limit = binds.first().map(|bind| {
        let trees = bind.trees_more.to_string();
        match bind.change {
            LooserLimit::MorePeople(people) => m::plan_binds_people(m::PlanBindsPeople {
                people: people.to_string(),
                trees,
            }),
            LooserLimit::OneMoreDay(day) => m::plan_binds_day(iso(day), trees),
            LooserLimit::NoPacing => m::plan_binds_pacing(trees),
        }
    });
    // Behind the first two sentences, in front of what is left.
    lines.splice(2..2, days_past(asked).into_iter().chain(limit));
    lines.extend(asked_once(read, shown_in));
    if !asked.season.kept.is_empty() {
        let which = first_tags(file.moved.iter().map(|it| it.tree_id.as_str()));
        lines.push(match file.moved.len() {
            0 => m::PLAN_KEPT_ALL.into(),
            trees => m::plan_moved(trees.to_string(), which),
        });
        if let Some(percent) = made.fresh_percent {
            lines.push(m::plan_fresh(fixed(percent, 1)));
        }
    }
    lines.extend(file.units.iter().filter_map(crowns));
    let trees = planned.plan.trees.iter().flatten();
    let open = trees
        .flat_map(|tree| &tree.visits)
        .filter(|visit| visit.day.is_none());
    let open = open.count();
    if open > 0 {
        lines.push(m::plan_needs_day(open.to_string()));
    }
    let before = file.counts.get("done").copied().unwrap_or(0);
    if before > 0 && file.after.is_none() {
        lines.push(m::plan_ringed_before(before as usize));
    }
    let refused: Vec<&str> = file
        .trees
        .iter()
        .filter(|tree| tree.pinned && tree.day.is_none())
        .map(|tree| tree.tree_id.as_str())
        .collect();
    if !refused.is_empty() {
        let which = first_tags(refused.iter().copied());
        let trees = refused.len().to_string();
        lines.push(m::plan_pins_refused(trees, which));
    }
    lines.push(m::plan_work_hours(m::PlanWorkHours {
        hours: fixed(crew.working_hours(), 2),
        get_ready: fixed(crew.ready_minutes, 0),
    }));
    if planned.plan.planned() > 0 {
        lines.push(m::plan_gap(gap_percent(made)));
        lines.push(walking(made));
    }
    lines.push(m::plan_written(m::PlanWritten {
        folder: folder.display().to_string(),
        files: files.join(", "),
    }));
    lines.push(m::PLAN_LOOK_FIRST.into());
    lines.join("\n") + "\n"
}

/// How many work days have passed: a season of another year may have been typed.
fn days_past(asked: &Asked) -> Option<String> {
    let days = &asked.season.days;
    let past = days.iter().filter(|day| **day < asked.today).count();
    (past > 0).then(|| {
        m::plan_days_past(m::PlanDaysPast {
            past: past.to_string(),
            days: days.len().to_string(),
            today: iso(asked.today),
        })
    })
}

/// What may stand where trees die.
pub(super) fn replanting(told: Replanting) -> String {
    let words = |words: Vec<Word>| words.into_iter().map(|word| word.text().to_owned());
    let mut lines = told.gap;
    lines.push(m::AFTER_SAY_SPACING.into());
    lines.extend(told.parts);
    lines.extend(words(told.limits));
    lines.extend(told.natives.iter().map(|line| bare(line.as_str().into())));
    lines.extend(words(told.notes));
    lines.join("\n") + "\n"
}

/// What is asked once for many trees. Parts of the property whose trees wait for what they could hit, most trees first, with
/// the distance to ask for: twice the height of the tallest of them; then species whose clones nobody told of.
fn asked_once(read: &ReadList, shown_in: Units) -> Vec<String> {
    let ask = |of: UnitToAsk| {
        m::plan_ask_within(m::PlanAskWithin {
            unit: &of.unit,
            trees: of.trees.to_string(),
            distance: &of.within,
        })
    };
    let of_clone = |of: CloneToAsk| {
        m::plan_ask_clone(m::PlanAskClone {
            species: of.name,
            trees: of.trees.to_string(),
            name: of.species,
        })
    };
    let asked = ToAsk::of(read, shown_in);
    let clones = asked.clones.into_iter().map(of_clone);
    asked.units.into_iter().map(ask).chain(clones).collect()
}

/// How much of a unit's land lies under crowns, and how to say it where only the list's trees are counted.
fn crowns(unit: &UnitOf) -> Option<String> {
    let (told, all_counted) = under_crowns(unit)?;
    Some(match all_counted {
        true => told,
        false => [&told, " ", &m::after_say_closure(unit.unit.as_str())].concat(),
    })
}

/// The first of some tags; that there are more is shown.
fn first_tags<'t>(tags: impl Iterator<Item = &'t str>) -> String {
    first_of(tags, TAGS, ", ")
}

/// Why nothing was planned, and the days on which most trees could be.
pub(super) fn none_planned(asked: &Asked, read: &ReadList) -> String {
    let mut told: String = m::PLAN_NONE_PLANNED.into();
    let wanted: Vec<usize> = read
        .trees
        .iter()
        .enumerate()
        .filter(|(_, tree)| {
            let judged = tree.judged().map(|it| &it.comes_to);
            matches!(judged, Some(ComesTo::NoDay | ComesTo::Ring(_)))
        })
        .map(|(at, _)| at)
        .collect();
    let week_day = asked.season.days.first().map(chrono::Datelike::weekday);
    let year: Vec<NaiveDate> = asked
        .season
        .from
        .iter_days()
        .take(366)
        .filter(|day| Some(chrono::Datelike::weekday(day)) == week_day)
        .filter(|day| !asked.closed.contains(day))
        .collect();
    let mut trees_on: BTreeMap<NaiveDate, usize> = BTreeMap::new();
    for at in wanted {
        let Some((question, local)) = &read.questions[at] else {
            continue;
        };
        let days = calc::answer::ring_days(calc_data::whole(), question, local, &year);
        for (day, p) in year.iter().zip(days) {
            if p.is_some_and(|p| p >= asked.season.slip) {
                *trees_on.entry(*day).or_default() += 1;
            }
        }
    }
    let mut best: Vec<(NaiveDate, usize)> = trees_on.into_iter().collect();
    best.sort_by_key(|(day, trees)| (std::cmp::Reverse(*trees), *day));
    if !best.is_empty() {
        let days: Vec<String> = best
            .iter()
            .take(NEAREST)
            .map(|(day, _)| iso(*day))
            .collect();
        told.push(' ');
        told.push_str(&m::plan_nearest_days(days.join(", ")));
    }
    told
}

/// Why the options of a plan were not understood.
pub(super) fn not_a_season(why: &NotASeason) -> String {
    let option = |field: &PlanField| ["--", field.name()].concat();
    match why {
        NotASeason::NotADay(field, typed) => m::plan_not_a_day(m::PlanNotADay {
            option: option(field),
            typed: typed.as_str(),
        }),
        NotASeason::ToBeforeFrom => m::PLAN_TO_BEFORE_FROM.into(),
        NotASeason::TooLong => m::PLAN_SEASON_TOO_LONG.into(),
        NotASeason::NotWeekDays(typed) => m::plan_not_week_days(typed.as_str()),
        NotASeason::NoDays => m::PLAN_NO_DAYS.into(),
        NotASeason::NotAUnit(PlanField::Area, typed) => m::after_not_an_area(typed.as_str()),
        NotASeason::NotAUnit(PlanField::Closure | PlanField::Floor, typed) => {
            m::after_not_a_closure(typed.as_str())
        }
        NotASeason::NotAUnit(field, typed) => m::plan_not_a_unit(m::PlanNotAUnit {
            option: option(field),
            typed,
        }),
        NotASeason::NotAReply(field, typed) => m::plan_not_a_reply(m::PlanNotAReply {
            option: option(field),
            typed,
        }),
        NotASeason::OutOfRange(field, from, to, typed) => m::plan_out_of_range(m::PlanOutOfRange {
            option: option(field),
            from: from.to_string(),
            to: to.to_string(),
            typed: typed.as_str(),
        }),
    }
}
