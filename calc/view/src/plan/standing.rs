//! The register of standing dead trees: those of the list that are ringed or dead already, each with its ground and the day
//! on which somebody looks at it next; those that are overdue first.

use super::asked::Asked;
use super::read::{Listed, ReadList};
use calc::models::visits::after_ring;
use calc::question::{Question, read_day};
use calc::terms::day::iso;
use calc::terms::small::decimals::fixed;
use calc::terms::small::order::sort_by;
use calc_list::write;
use calc_plan::{ComesTo, Progress};
use chrono::NaiveDate;

/// Its columns.
const COLUMNS: [&str; 11] = [
    "tree_id",
    "ringed_on",
    "dead_on",
    "zone_m",
    "zone_from",
    "last_looked",
    "next_look",
    "looked_by",
    "state",
    "down_on",
    "near",
];

/// A row of it.
struct Registered {
    tree_id: String,
    ringed_on: Option<NaiveDate>,
    dead_on: Option<NaiveDate>,
    zone_m: Option<f64>,
    last_looked: Option<NaiveDate>,
    next_look: Option<NaiveDate>,
    state: &'static str,
    down_on: Option<NaiveDate>,
    near: String,
}

/// The register; none where no tree of the list is in it.
pub(super) fn standing(list: &ReadList, asked: &Asked, zones: &[Option<f64>]) -> Option<String> {
    let mut all = Vec::new();
    for line in &list.lines {
        let Listed::Row(_, row, Some(at)) = line else {
            continue;
        };
        let tree = &list.trees[*at];
        let after = tree.after.as_ref();
        let fallen = row.tag.status == "fallen" || after.is_some_and(|it| it.down_on.is_some());
        let ringed = match &tree.standing {
            _ if after.is_some() => true,
            Progress::Done => true,
            Progress::Dead => false,
            Progress::Open(judged) if matches!(judged.comes_to, ComesTo::Dead) => false,
            Progress::Skipped | Progress::Open(_) => continue,
        };
        let question = list.questions[*at]
            .as_ref()
            .map(|(question, _)| &**question);
        let ringed_on = match after {
            Some(after) => after.ringed_on,
            None => read_day(&row.tag.done_date).ok(),
        };
        let next_look = match (fallen, after, ringed_on, question) {
            (true, ..) => None,
            (false, Some(after), ..) => after.next_look,
            (false, None, Some(day), Some(question)) if ringed => next_look(list, question, day),
            // Nobody knows when somebody looked at it: today.
            (false, None, ..) => Some(asked.today),
        };
        all.push(Registered {
            tree_id: row.tag.tree_id.clone(),
            ringed_on,
            dead_on: after.and_then(|it| it.dead_on),
            zone_m: zones[*at],
            last_looked: after.and_then(|it| it.looked_on),
            next_look,
            state: if fallen { "down" } else { "standing" },
            down_on: after.and_then(|it| it.down_on),
            near: question.map_or(String::new(), near),
        });
    }
    if all.is_empty() {
        return None;
    }
    sort_by(&mut all, |a, b| {
        let key = |it: &Registered| (it.next_look.is_none(), it.next_look);
        key(a).cmp(&key(b)).then(a.tree_id.cmp(&b.tree_id))
    });
    let mut text = write::MARK.to_owned();
    write::row(COLUMNS, &mut text);
    for tree in all {
        let day = |day: Option<NaiveDate>| day.map_or(String::new(), iso);
        let cells = [
            tree.tree_id,
            day(tree.ringed_on),
            day(tree.dead_on),
            tree.zone_m.map_or(String::new(), |m| fixed(m, 1)),
            day(tree.ringed_on),
            day(tree.last_looked),
            day(tree.next_look),
            String::new(),
            tree.state.to_owned(),
            day(tree.down_on),
            tree.near,
        ];
        let guarded: Vec<_> = cells.iter().map(|cell| write::guarded(cell)).collect();
        write::row(guarded.iter().map(AsRef::as_ref), &mut text);
    }
    Some(text)
}

/// The first look after a ring: nobody wrote down that one was made.
fn next_look(list: &ReadList, question: &Question, ringed_on: NaiveDate) -> Option<NaiveDate> {
    let visits = after_ring(
        &list.reference.constants.visits,
        question.tree.species,
        question.place.hemisphere(),
        ringed_on,
    );
    visits.first().map(|visit| visit.from)
}

/// What stands near, with its distance: `path 18.3 m`.
fn near(question: &Question) -> String {
    let each: Vec<String> = question
        .tree
        .targets
        .iter()
        .map(|target| match target.distance {
            Some(distance) => [target.kind.word(), " ", &fixed(distance.m(), 1), " m"].concat(),
            None => target.kind.word().to_owned(),
        })
        .collect();
    each.join("; ")
}
