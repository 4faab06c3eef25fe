//! What a plan comes to: one sentence, what binds, what is left and why, and the next work day.

use super::season::PlanBefore;
use super::{button, columns, open_fold_at};
use crate::measure::{day_short, day_year, reach};
use crate::page::Page;
use crate::plan::asked::Asked;
use crate::plan::made::Made;
use crate::plan::read::ReadList;
use crate::words::phrase::first_of;
use crate::words::{Word, m};
use calc::terms::quantity::Units;
use calc::terms::small::decimals::fixed;
use calc::terms::small::order::sort_by_key;
use calc_list::Note;
use calc_plan::{ComesTo, CountedAs, LooserLimit};
use chrono::NaiveDate;

/// So many trees that moved are named.
const MOVED: usize = 12;
/// So many tags of a crew's day are named; its sheet has all.
const TAGS: usize = 8;

/// What a list has, before it is planned.
#[must_use]
pub fn counted(list: &ReadList, name: &str) -> String {
    let counts = &list.counts;
    m::property_list(m::PropertyList {
        name,
        trees: counts.trees().to_string(),
        ready: counts.ready.to_string(),
        fix: counts.to_fix.to_string(),
    })
}

/// What a list has; how its columns were read stands here until there is a plan.
pub fn list(
    out: &mut Page<'_>,
    list: &ReadList,
    name: &str,
    unplanned: bool,
    notes: &[Note],
    changed: &[String],
) {
    if unplanned {
        out.p_class("lede", counted(list, name));
    }
    let (blank, others) = (list.counts.blank, list.counts.no_trees());
    if blank + others > 0 {
        let (blank, others) = (blank.to_string(), others.to_string());
        out.p_class(
            "soft",
            m::property_other_rows(m::PropertyOtherRows { blank, others }),
        );
    }
    if unplanned && !(notes.is_empty() && changed.is_empty()) {
        let count = notes.len() + usize::from(!changed.is_empty());
        let line = m::property_notes_line(count.to_string());
        open_fold_at(out, 2, "notes", &m::PROPERTY_NOTES, &line, None);
        columns::notes(out, notes, changed);
        out.close_two();
    }
}

/// What a plan comes to, in one sentence.
#[must_use]
pub fn sentence(made: &Made, asked: &Asked) -> String {
    let count = |name: &str| made.file.counts.get(name).copied().unwrap_or(0).to_string();
    let crew = &asked.season.crew;
    m::property_sentence(m::PropertySentence {
        trees: count("trees"),
        ready: count("ready"),
        fix: count("to_fix"),
        planned: count("planned"),
        people: crew.people.to_string(),
        days: asked.season.days.len().to_string(),
        professional: count("professional"),
    })
}

fn part(reason: CountedAs) -> Word {
    match reason {
        CountedAs::Planned => m::PROPERTY_PART_PLANNED,
        CountedAs::NoHours => m::PROPERTY_PART_NO_HOURS,
        CountedAs::NoDay => m::PROPERTY_PART_NO_DAY,
        CountedAs::Pacing => m::PROPERTY_PART_PACING,
        CountedAs::OtherMethod => m::PROPERTY_PART_OTHER_METHOD,
        CountedAs::LeaveIt => m::PROPERTY_PART_LEAVE_IT,
        CountedAs::Professional => m::PROPERTY_PART_PROFESSIONAL,
        CountedAs::CannotTell => m::PROPERTY_PART_CANNOT_TELL,
        CountedAs::Dead => m::PROPERTY_PART_DEAD,
        CountedAs::Done => m::PROPERTY_PART_DONE,
        CountedAs::Skipped => m::PROPERTY_PART_SKIPPED,
    }
}

/// Sentence, parts, what binds, and the next work day.
pub fn result(
    out: &mut Page<'_>,
    list: &ReadList,
    (made, before): (&Made, Option<&PlanBefore>),
    asked: &Asked,
    units: Units,
) {
    out.open_heading(2, "said");
    out.attr("id", "l-sentence");
    out.attr("tabindex", "-1");
    out.text(sentence(made, asked));
    out.close();
    if let Some(before) = before {
        was(out, made, before, asked);
    }
    // The parts, which add up to all trees.
    out.open_class("ul", "parts-of");
    let count = |name: &str| made.file.counts.get(name).copied().unwrap_or(0);
    let parts = CountedAs::ALL.map(|reason| (count(reason.word()), part(reason)));
    for (trees, word) in parts
        .into_iter()
        .chain([(count("to_fix"), m::PROPERTY_PART_TO_FIX)])
    {
        if trees > 0 {
            out.open("li");
            out.leaf("b", trees.to_string());
            out.text([" ", word.text()].concat());
            out.close();
        }
    }
    out.close();
    if let Some(bind) = made.binds.first() {
        let trees = bind.trees_more.to_string();
        out.open_class("div", "binds");
        let (said, act) = match bind.change {
            LooserLimit::MorePeople(people) => {
                let people = people.to_string();
                let said = m::plan_binds_people(m::PlanBindsPeople {
                    people: people.as_str(),
                    trees,
                });
                (said, Some(("data-people", people)))
            }
            LooserLimit::OneMoreDay(day) => {
                let said = m::plan_binds_day(day_year(day), trees);
                (said, Some(("data-day", calc::terms::day::iso(day))))
            }
            LooserLimit::NoPacing => (m::plan_binds_pacing(trees), None),
        };
        out.p(said);
        if let Some((key, value)) = act {
            let values = [(key, value.as_str())];
            button(out, "btn ghost", "more", &values, &m::PROPERTY_PLAN_WITH_IT);
        }
        out.close();
    }
    out.p_class("soft", m::PLAN_LOOK_FIRST);
    next_day(out, list, made, asked, units);
}

/// What the plan before came to against this one, and which trees moved.
fn was(out: &mut Page<'_>, made: &Made, before: &PlanBefore, asked: &Asked) {
    let now = made.planned.plan.planned();
    out.open_class("div", "was");
    out.attr("id", "l-was");
    let crew = |people: &str, hours: &str, days: usize| {
        m::property_crew_of(m::PropertyCrewOf {
            people: people.trim(),
            hours: hours.trim(),
            days: days.to_string(),
        })
    };
    let before_crew = crew(&before.filled.people, &before.filled.hours, before.days);
    let people = asked.season.crew.people.to_string();
    let hours = crate::measure::plain(asked.season.crew.hours, 2);
    let now_crew = crew(&people, &hours, asked.season.days.len());
    out.p(m::property_was(m::PropertyWas {
        before: before.planned.to_string(),
        before_crew,
        now: now.to_string(),
        now_crew,
    }));
    let moved = &made.file.moved;
    if !asked.season.kept.is_empty() {
        let short = |day: &Option<String>| {
            let read = day
                .as_deref()
                .and_then(|day| calc::question::read_day(day).ok());
            read.map_or_else(|| m::PROPERTY_MOVED_NO_DAY.text().to_owned(), day_short)
        };
        let which = moved.iter().map(|it| {
            m::property_moved_tree(m::PropertyMovedTree {
                tag: it.tree_id.as_str(),
                from: short(&it.from),
                to: short(&it.to),
            })
        });
        out.p_class(
            "soft",
            match moved.len() {
                0 => m::PROPERTY_MOVED_NONE.text().to_owned(),
                trees => m::property_moved(trees.to_string(), first_of(which, MOVED, "; ")),
            },
        );
        if let Some(percent) = made.fresh_percent {
            out.p_class("soft", m::property_fresh(fixed(percent, 1)));
        }
    }
    button(out, "btn ghost", "back", &[], &m::PROPERTY_PUT_BACK);
    out.close();
}

/// Whether somebody works today: then the page opens at what they do.
#[must_use]
pub fn works_today(made: &Made, asked: &Asked) -> bool {
    let today = calc::terms::day::iso(asked.today);
    let mut days = made.file.work_days.iter();
    days.any(|day| day.agreed && day.day == today && day.rings > 0.0)
}

/// The first work day that is not over, a crew each.
fn next_day(out: &mut Page<'_>, list: &ReadList, made: &Made, asked: &Asked, units: Units) {
    let rings = |day: &str| {
        let trees = made.file.trees.iter();
        trees
            .filter(|tree| tree.day.as_deref() == Some(day))
            .count()
    };
    let today = calc::terms::day::iso(asked.today);
    let mut days = made
        .file
        .work_days
        .iter()
        .filter(|it| it.agreed && it.day >= today);
    let Some(day) = days.find(|it| rings(&it.day) > 0) else {
        return;
    };
    let Ok(on) = calc::question::read_day(&day.day) else {
        return;
    };
    let on: NaiveDate = on;
    let title = match day.day == today {
        true => m::property_this_day(day_short(on)),
        false => m::property_next_day(day_short(on)),
    };
    let line = m::property_next_day_trees(rings(&day.day).to_string());
    open_fold_at(out, 3, "day", &title, &line, Some(true));
    for team in 1..=made.file.crew.teams {
        let mut trees: Vec<_> = made
            .file
            .trees
            .iter()
            .filter(|tree| tree.day.as_deref() == Some(&day.day) && tree.team == Some(team))
            .collect();
        if trees.is_empty() {
            continue;
        }
        sort_by_key(&mut trees, |tree| tree.order);
        let minutes: f64 = trees.iter().filter_map(|tree| tree.minutes).sum();
        let tags = trees.iter().map(|it| it.tree_id.as_str());
        let far = trees
            .iter()
            .filter_map(|tree| list.tree_of(tree.row))
            .filter_map(|at| match &list.trees[at].judged()?.comes_to {
                ComesTo::Ring(need) => Some(need.people_out_m),
                _ => None,
            })
            .fold(0.0, f64::max);
        out.p(m::property_crew_day(m::PropertyCrewDay {
            team: team.to_string(),
            trees: trees.len().to_string(),
            hours: crate::measure::plain(minutes / 60.0, 1),
            tags: first_of(tags, TAGS, ", "),
        }));
        out.p(m::property_keep_off(reach(far).text(units)));
    }
    out.close_two();
}
