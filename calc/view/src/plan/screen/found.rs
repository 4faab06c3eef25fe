//! After the work: the table of what was found, opened beside the list or saved to be filled in, and what it tells.

use super::{
    button, fold_of_rows_at, heading_of_fold, open_fold_at, open_form, open_rows, option, send,
    turn_buttons,
};
use crate::measure::day_year_short;
use crate::page::Page;
use crate::plan::after::{AfterWork, FoundHere};
use crate::plan::after_sentences::{acts, kill_rates, last_looks, problem, rate, rings_held};
use crate::plan::made::Made;
use crate::plan::read::ReadList;
use crate::plan::screen::table::TreeTable;
use crate::words::m;
use calc::models::at_visit::NoAdvice;
use calc_list::found::{COLUMNS, FoundProblem};
use calc_list::write;
use calc_plan::{CountedAs, ListTree};
use chrono::NaiveDate;

/// The file of what was found, as an example of it is saved.
pub const FOUND: &str = "found.csv";

/// The table of trees with what was found at them.
pub const FOUND_TREES: &str = "found-trees";

/// So many rows to fix are told; the others by their number.
const TO_FIX: usize = 20;

/// What was found, as the page tells it.
#[derive(Clone, Copy)]
pub struct FoundShown<'a> {
    /// The name of the file.
    pub name: &'a str,
    /// What it comes to.
    pub after: &'a AfterWork,
    /// What is wrong with its rows, in their order.
    pub problems: &'a [FoundProblem],
    /// Whether the plan is made with the crew's own rate.
    pub own_rate: bool,
}

/// The fold; `wrong` is why a file that was opened last is no table of visits.
pub fn found(
    out: &mut Page<'_>,
    list: &ReadList,
    made: &Made,
    shown: Option<FoundShown<'_>>,
    wrong: Option<&str>,
) {
    let before = made.file.counts.get("done").copied().unwrap_or(0);
    let line = match shown {
        None if before > 0 => m::property_found_before(before.to_string()),
        None => m::PROPERTY_FOUND_NONE.text().to_owned(),
        Some(shown) => m::property_found_line(m::PropertyFoundLine {
            file: shown.name,
            looks: shown.after.found.len().to_string(),
            fix: rows_to_fix(shown.problems).to_string(),
        }),
    };
    let open = wrong.map(|_| true);
    open_fold_at(out, 3, "found", &m::PROPERTY_FOUND, &line, open);
    if let Some(wrong) = wrong {
        out.open_class("p", "errmsg");
        out.attr("role", "alert");
        out.attr("id", "l-found-wrong");
        out.text(wrong);
        out.close();
    }
    match shown {
        Some(shown) => told(out, list, shown),
        None if before > 0 => out.p(m::PROPERTY_FOUND_BEFORE_IS),
        None => {}
    }
    out.p(m::PROPERTY_FOUND_IS);
    out.p_class("soft", m::PROPERTY_FOUND_WORDS);
    out.open_class("div", "picks");
    out.open("label");
    out.attr("class", "btn ghost");
    out.attr("for", "l-found-open");
    out.text(m::PROPERTY_FOUND_OPEN);
    out.close();
    out.open("input");
    out.attr("class", "vh");
    out.attr("type", "file");
    out.attr("id", "l-found-open");
    out.attr("data-do", "found");
    out.attr(
        "accept",
        ".csv,.txt,.tsv,text/csv,text/plain,text/tab-separated-values",
    );
    out.close();
    let kind = [("data-kind", FOUND)];
    button(out, "btn ghost", "file", &kind, &m::PROPERTY_FOUND_EXAMPLE);
    if shown.is_some() {
        button(out, "btn ghost", "found-out", &[], &m::PROPERTY_FOUND_OUT);
    }
    out.close();
    out.p_class("soft", m::PROPERTY_FOUND_DROP);
    out.close_two();
}

/// How many rows have something wrong with them.
fn rows_to_fix(problems: &[FoundProblem]) -> usize {
    let mut rows: Vec<u64> = problems.iter().map(|it| it.row).collect();
    rows.dedup();
    rows.len()
}

fn told(out: &mut Page<'_>, list: &ReadList, shown: FoundShown<'_>) {
    let FoundShown {
        after, problems, ..
    } = shown;
    if !problems.is_empty() {
        out.open_class("div", "mend");
        out.attr("id", "l-found-fix");
        out.p(m::property_found_to_fix(rows_to_fix(problems).to_string()));
        lines(out, problems.iter().take(TO_FIX).map(problem));
        if problems.len() > TO_FIX {
            let more = (problems.len() - TO_FIX).to_string();
            out.p_class("soft", m::property_found_more(more));
        }
        out.close();
    }
    let acts = acts(after);
    heading_of_fold(out, &m::PROPERTY_FOUND_NOW);
    match acts.is_empty() {
        true => out.p(m::PROPERTY_FOUND_NOTHING_NOW),
        false => lines(out, acts.into_iter()),
    }
    let trees = list.trees.iter().filter(|tree| tree.after.is_some());
    let line = m::property_trees(trees.count().to_string());
    fold_of_rows_at(out, 4, FOUND_TREES, &m::PROPERTY_FOUND_TREES, &line);
    let shares: Vec<String> = kill_rates(after)
        .into_iter()
        .chain(rings_held(after))
        .collect();
    if !shares.is_empty() {
        heading_of_fold(out, &m::PROPERTY_FOUND_SHARES);
        lines(out, shares.into_iter());
    }
    heading_of_fold(out, &m::PROPERTY_FOUND_RATE);
    let Some(timed) = &after.timed else {
        out.p(m::PROPERTY_FOUND_NO_MINUTES);
        return;
    };
    out.p(rate(timed));
    if timed.rate.is_ok() {
        open_form(out, "", "own-rate", &[]);
        let label = m::PROPERTY_FOUND_OWN_RATE;
        option(out, "checkbox", "own-rate", "yes", shown.own_rate, &label);
        send(out, "btn ghost", &m::PROPERTY_PLAN_IT);
        out.close();
    }
}

fn lines(out: &mut Page<'_>, lines: impl Iterator<Item = String>) {
    out.open("ul");
    for line in lines {
        out.leaf("li", line);
    }
    out.close();
}

/// Trees with what was found at them, from one on: in the order of the list.
pub fn trees(out: &mut Page<'_>, list: &ReadList, after: &AfterWork, from: usize) {
    let last = last_looks(after);
    let heads = [
        m::PROPERTY_HEAD_TAG.text(),
        m::PROPERTY_HEAD_LOOKED.text(),
        m::PROPERTY_HEAD_NOW.text(),
        m::PROPERTY_HEAD_AGAIN.text(),
    ];
    let all: Vec<&ListTree> = list.trees.iter().filter(|it| it.after.is_some()).collect();
    let day = |day: Option<NaiveDate>| day.map(day_year_short).unwrap_or_default();
    for tree in &all[open_rows(out, m::PROPERTY_FOUND_TREES, &heads, from, all.len())] {
        let Some(after) = &tree.after else { continue };
        out.cell(tree.tree_id.as_str());
        out.cell(day(after.looked_on.or(after.ringed_on)));
        let look = last.get(tree.tree_id.as_str()).copied();
        out.cell(now(look, after.down_on.is_some(), after.dead_on.is_some()));
        out.cell(day(after.next_look));
    }
    out.close_table();
    turn_buttons(out, FOUND_TREES, from, all.len());
}

/// What to do at a tree, or what is known of it.
fn now(look: Option<&FoundHere>, down: bool, dead: bool) -> String {
    let known = || match (down, dead) {
        (true, _) => m::PROPERTY_FOUND_DOWN,
        (false, true) => m::PROPERTY_FOUND_DEAD,
        (false, false) => m::PROPERTY_FOUND_RINGED,
    };
    match look.map(|look| (look, &look.advice)) {
        Some((look, Some(Ok(advice)))) if !advice.acts.is_empty() && !down => {
            let acts = look.acts().into_iter();
            let acts: Vec<&str> = acts.map(|act| m::visits_act_now(act).text()).collect();
            acts.join("; ")
        }
        Some((_, Some(Err(NoAdvice::Stopped)))) => m::PROPERTY_FOUND_STOPPED.text().to_owned(),
        _ => known().text().to_owned(),
    }
}

/// A table to be filled in: the header, and the tags of the plan's trees in the order of their days, then those that stand
/// ringed.
#[must_use]
pub fn example(list: &ReadList, made: &Made) -> String {
    let mut text = write::MARK.to_owned();
    write::row(COLUMNS, &mut text);
    let reasons = made.planned.reasons.iter().enumerate();
    let ringed = reasons.filter(|(_, reason)| **reason == CountedAs::Done);
    let ringed = ringed.map(|(at, _)| at);
    for at in TreeTable::Planned.trees(made).into_iter().chain(ringed) {
        let day = made.file.trees[at].day.as_deref();
        let note = day.map(m::property_found_planned).unwrap_or_default();
        let tag = list.trees[at].tree_id.as_str();
        let mut cells = [""; COLUMNS.len()];
        (cells[0], cells[COLUMNS.len() - 1]) = (tag, &note);
        write::row(cells, &mut text);
    }
    text
}
