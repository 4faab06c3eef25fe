//! After the work: what was found at visits goes through the visit of each tree's own question, and the plan moves on.
//! Trees that stand ringed keep hours for their visits, rings that failed are planned again, dead ones go into the register.

use super::asked::Asked;
use super::read::ReadList;
use calc::answer::{Answer, without_sources};
use calc::models::at_visit::{Act, Advice, NoAdvice, RingJudged, Seen};
use calc::models::calibrate::{NoRate, Rate, update};
use calc::models::effort::{self, Pace, StemWork};
use calc::models::effort_constants::Three;
use calc::models::season::Local;
use calc::question::{Question, VisitAt, VisitSeen, read_day};
use calc::terms::day::iso;
use calc::terms::small::order::sort_by_key;
use calc_data::list::plan_constants;
use calc_list::found::{FoundColumn, FoundFault, FoundFile, FoundRow};
use calc_plan::plan_file::after_shape::{AfterOf, FoundOf, KillRateOf, RateOf, ShareOfTrees};
use calc_plan::{
    AfterRing, KillRate, LookedAt, Progress, RingedTree, ShareOf, kill_rates, next_look,
    on_ring_day, open_visits, rings_that_held,
};
use chrono::NaiveDate;
use std::collections::BTreeMap;
use std::rc::Rc;

/// What was found at a tree on a day.
#[derive(Clone, Debug)]
pub struct FoundHere {
    /// The tree's tag.
    pub tree_id: String,
    /// The row of the file of visits.
    pub row: u64,
    /// The day.
    pub visited_on: NaiveDate,
    /// The day of the ring that was looked at.
    pub ringed_on: Option<NaiveDate>,
    /// It was found dead and is not down: people keep out from under it, whatever else was seen.
    pub stands_dead: bool,
    /// What to do; why nothing is said; or none, where it is dead or down by its own word.
    pub advice: Option<Result<Advice, NoAdvice>>,
}

/// The crew's rate from rings that were timed.
#[derive(Clone, Copy, Debug)]
pub struct TimedRings {
    /// How many.
    pub trees: usize,
    /// Person-minutes together, without walking.
    pub person_minutes: f64,
    /// The rate, or why they give none.
    pub rate: Result<Rate, NoRate>,
    /// The crew's minutes over those that are reckoned.
    pub factor: Three,
}

/// What was found.
pub struct AfterWork {
    /// By row.
    pub found: Vec<FoundHere>,
    /// By species, size class and season.
    pub kill_rates: Vec<KillRate>,
    /// Rings without a bridge.
    pub held: ShareOf,
    /// None where nothing was timed.
    pub timed: Option<TimedRings>,
}

/// A tree of the list with the rows of what was found at it, in the order of their days.
struct OfTree<'a> {
    ringed_before: Option<NaiveDate>,
    rows: Vec<&'a FoundRow>,
    question: &'a Question,
    local: &'a Local,
}

/// What was found, while it is taken up tree by tree: in slices, so that a page can stop between two.
pub struct TakingUp {
    work: AfterWork,
    ringed: Vec<RingedTree>,
    timing: Timing,
    before: Vec<Option<NaiveDate>>,
    /// Trees by their place in the list, with the places of their rows in the file.
    left: std::vec::IntoIter<(usize, Vec<usize>)>,
    trees: usize,
}

impl TakingUp {
    /// For a list whose trees were judged. What is wrong is added to the file's problems, and such rows count for nothing.
    #[must_use]
    pub fn begin(list: &ReadList, asked: &Asked, file: &mut FoundFile) -> Self {
        let tags: BTreeMap<&str, usize> = list
            .trees
            .iter()
            .enumerate()
            .map(|(at, tree)| (tree.tree_id.as_str(), at))
            .collect();
        let mut by_tree: BTreeMap<usize, Vec<usize>> = BTreeMap::new();
        let mut unknown = Vec::new();
        for (place, row) in file.rows.iter().enumerate() {
            match tags.get(row.tree_id.as_str()) {
                Some(at) if list.questions[*at].is_some() => {
                    by_tree.entry(*at).or_default().push(place);
                }
                _ => unknown.push((row.row, row.tree_id.clone())),
            }
        }
        for (row, tag) in unknown {
            file.problem(row, FoundColumn::TreeId, &tag, FoundFault::NoSuchTree);
        }
        let by_tree: Vec<(usize, Vec<usize>)> = by_tree.into_iter().collect();
        Self {
            work: AfterWork {
                found: Vec::new(),
                kill_rates: Vec::new(),
                held: ShareOf::default(),
                timed: None,
            },
            ringed: Vec::new(),
            timing: Timing::default(),
            before: ringed_before(list, asked),
            trees: by_tree.len(),
            left: by_tree.into_iter(),
        }
    }

    /// Takes up so many trees more, which move on; false where none was left.
    pub fn step(
        &mut self,
        trees: usize,
        list: &mut ReadList,
        asked: &Asked,
        file: &mut FoundFile,
    ) -> bool {
        let all = std::mem::take(&mut file.rows);
        for (at, places) in self.left.by_ref().take(trees) {
            let Some((question, local)) = list.questions[at].clone() else {
                continue;
            };
            let mut rows: Vec<&FoundRow> = places.iter().map(|place| &all[*place]).collect();
            sort_by_key(&mut rows, |row| (row.visited_on, row.row));
            let of = OfTree {
                ringed_before: self.before[at],
                rows,
                question: &question,
                local: &local,
            };
            let counted = (&mut self.ringed, &mut self.timing);
            let (after, standing) = self.work.tree(list, asked, &of, counted, file);
            let tree = &mut Rc::make_mut(&mut list.trees)[at];
            if let Some(standing) = standing {
                tree.standing = standing;
            }
            tree.after = after;
        }
        file.rows = all;
        self.left.len() > 0
    }

    /// How many trees were taken up, of how many.
    #[must_use]
    pub fn taken_up(&self) -> (usize, usize) {
        (self.trees - self.left.len(), self.trees)
    }

    /// What it comes to, once all were taken up.
    #[must_use]
    pub fn done(self, list: &ReadList, asked: &Asked) -> AfterWork {
        let (mut work, mut ringed) = (self.work, self.ringed);
        // Trees that were ringed before and that nobody looked at are counted as such.
        ringed.extend(list.trees.iter().enumerate().filter_map(|(at, tree)| {
            let unseen = tree.after.is_none() && matches!(tree.standing, Progress::Done);
            let (question, _) = list.questions[at].as_ref().filter(|_| unseen)?;
            ringed_tree(question, self.before[at]?, Vec::new())
        }));
        sort_by_key(&mut work.found, |found| found.row);
        work.kill_rates = kill_rates((list.reference, plan_constants()), &ringed, asked.today);
        work.held = rings_that_held(&ringed);
        work.timed = self.timing.rate(list);
        work
    }
}

impl AfterWork {
    /// Of a file of visits, all at once: see [`TakingUp`].
    #[must_use]
    pub fn of(list: &mut ReadList, asked: &Asked, file: &mut FoundFile) -> Self {
        let mut taking = TakingUp::begin(list, asked, file);
        while taking.step(usize::MAX, list, asked, file) {}
        taking.done(list, asked)
    }

    /// What becomes of a tree; nothing where none of its rows counts.
    fn tree(
        &mut self,
        list: &ReadList,
        asked: &Asked,
        of: &OfTree<'_>,
        (ringed, timing): (&mut Vec<RingedTree>, &mut Timing),
        file: &mut FoundFile,
    ) -> (Option<AfterRing>, Option<Progress>) {
        // A tree that was dead on the day of its ring, or before, was dead without it: nobody ringed it on the day that the
        // earlier plan names.
        let dead_without = |ring: NaiveDate| {
            let mut gone = of.rows.iter().filter(|row| row.dead || row.fallen);
            gone.any(|row| row.visited_on <= ring)
        };
        let mut after = AfterRing {
            ringed_on: of.ringed_before.filter(|ring| !dead_without(*ring)),
            ..AfterRing::default()
        };
        let mut first_ring = after.ringed_on;
        let (mut looks, mut last): (Vec<LookedAt>, Option<Result<Advice, NoAdvice>>) =
            (Vec::new(), None);
        let mut counts = false;
        for row in &of.rows {
            // A year typed wrong would put off the next look at the tree.
            if row.visited_on > asked.today {
                let (column, day) = (FoundColumn::VisitedOn, iso(row.visited_on));
                file.problem(row.row, column, &day, FoundFault::NotYet);
                continue;
            }
            if let Some(day) = row.ringed_on {
                if day > row.visited_on {
                    file.problem(
                        row.row,
                        FoundColumn::RingedOn,
                        &iso(day),
                        FoundFault::BeforeTheRing,
                    );
                    continue;
                }
                after.ringed_on = after.ringed_on.max(Some(day));
                first_ring = Some(first_ring.map_or(day, |first| first.min(day)));
                if day == row.visited_on {
                    timing.add(list, of, row, day);
                }
            }
            if row.seen.is_empty() && !row.dead && !row.fallen {
                // The work itself: a new ring begins anew.
                counts = true;
                last = None;
                continue;
            }
            let ring = after.ringed_on.filter(|day| *day <= row.visited_on);
            let gone = row.dead || row.fallen;
            let advice = match (ring, row.seen.is_empty()) {
                (_, true) => None,
                (Some(ring), false) => Some(advice(list, of, ring, row)),
                (None, false) if gone => None,
                (None, false) => {
                    let fault = match after.ringed_on {
                        Some(_) => FoundFault::BeforeTheRing,
                        None => FoundFault::NoRingDay,
                    };
                    file.problem(row.row, FoundColumn::VisitedOn, &iso(row.visited_on), fault);
                    continue;
                }
            };
            if let Some(Err(NoAdvice::Contradiction)) = advice {
                let words: Vec<&str> = row.seen.iter().map(|seen| seen.word()).collect();
                file.problem(
                    row.row,
                    FoundColumn::Found,
                    &words.join("; "),
                    FoundFault::Contradiction,
                );
                continue;
            }
            counts = true;
            let judged = advice
                .as_ref()
                .and_then(|it| it.as_ref().ok())
                .map(|it| it.judged);
            let dead = gone || judged == Some(RingJudged::Dead);
            after.looked_on = Some(row.visited_on);
            after.dead_on = after.dead_on.or(dead.then_some(row.visited_on));
            after.down_on = after.down_on.or(row.fallen.then_some(row.visited_on));
            looks.push(LookedAt {
                day: row.visited_on,
                dead,
                bridge: row.seen.contains(&Seen::Bridge),
            });
            last.clone_from(&advice);
            self.found.push(FoundHere {
                tree_id: row.tree_id.clone(),
                row: row.row,
                visited_on: row.visited_on,
                ringed_on: ring,
                stands_dead: row.dead && !row.fallen,
                advice,
            });
        }
        if !counts {
            return (None, None);
        }
        let of_ring = first_ring.filter(|ring| !dead_without(*ring));
        ringed.extend(of_ring.and_then(|ring| ringed_tree(of.question, ring, looks)));
        let last = last.and_then(Result::ok);
        let failed = last
            .as_ref()
            .is_some_and(|it| it.acts.contains(&Act::RingAgain));
        let again = failed && after.dead_on.is_none();
        plan_looks(list, of, &mut after, last.as_ref(), again);
        let standing = if after.dead_on.is_some() {
            Progress::Dead
        } else if again {
            let known = (list.reference, plan_constants());
            let days = (asked.season.from, asked.judged_on.as_slice());
            let (slip, local) = (asked.season.slip, of.local);
            Progress::Open(Rc::new(calc_plan::judge(
                known,
                of.question,
                local,
                days,
                slip,
            )))
        } else {
            Progress::Done
        };
        (Some(after), Some(standing))
    }

    /// As plan.json has it; `used` says whether the plan is made with the crew's own rate.
    #[must_use]
    pub fn file(&self, used: bool) -> AfterOf {
        let rates = self.kill_rates.iter().map(|rate| KillRateOf {
            species: rate.species.scientific,
            size: rate.size.word(),
            season: rate.season,
            dead: share_of(rate.dead),
            not_looked_at: rate.not_looked_at,
            outlook_low: rate.outlook.map(|(low, _)| low),
            outlook_high: rate.outlook.map(|(_, high)| high),
        });
        let rate = self.timed.and_then(|timed| {
            let rate = timed.rate.ok()?;
            Some(RateOf {
                trees: timed.trees,
                person_minutes: timed.person_minutes,
                log_mean: rate.log_mean,
                log_sd: rate.log_sd,
                low: timed.factor.low,
                likely: timed.factor.likely,
                high: timed.factor.high,
                used,
            })
        });
        AfterOf {
            found: self.found.iter().map(found_of).collect(),
            kill_rate: rates.collect(),
            rings_held: share_of(self.held),
            rate,
        }
    }
}

fn share_of(trees: ShareOf) -> ShareOfTrees {
    let share = trees.told(plan_constants());
    ShareOfTrees {
        trees: trees.hits,
        looked_at: trees.of,
        percent: share.map(|(share, ..)| 100.0 * share),
        low: share.map(|(_, low, _)| 100.0 * low),
        high: share.map(|(.., high)| 100.0 * high),
    }
}

impl FoundHere {
    /// What is due, the first first: people keep out from under what was found dead, without any advice too.
    #[must_use]
    pub fn acts(&self) -> Vec<Act> {
        let mut acts = match &self.advice {
            Some(Ok(advice)) => advice.acts.clone(),
            _ => Vec::new(),
        };
        if self.stands_dead && !acts.contains(&Act::KeepOut) {
            acts.insert(0, Act::KeepOut);
        }
        acts
    }
}

fn found_of(found: &FoundHere) -> FoundOf {
    let advice = found.advice.as_ref().and_then(|it| it.as_ref().ok());
    let why_not = found.advice.as_ref().and_then(|it| it.as_ref().err());
    FoundOf {
        tree_id: found.tree_id.clone(),
        row: found.row,
        visited_on: iso(found.visited_on),
        ringed_on: found.ringed_on.map(iso),
        acts: found.acts().iter().map(|act| act.word()).collect(),
        judged: advice.map(|it| it.judged.word()),
        come_back: advice.and_then(|it| it.come_back).map(iso),
        why_not: why_not.map(|why| why.word()),
    }
}

/// The day on which each tree was ringed before any row of the file says so: the list's, else that of the earlier plan.
fn ringed_before(list: &ReadList, asked: &Asked) -> Vec<Option<NaiveDate>> {
    let mut ringed = vec![None; list.trees.len()];
    for (_, row) in list.rows() {
        if let Some(at) = list.tree_of(row.row) {
            let kept = asked.season.kept.trees.get(&list.trees[at].tree_id);
            let done = read_day(&row.tag.done_date).ok();
            ringed[at] = done.or_else(|| kept?.ringed_before(asked.today));
        }
    }
    ringed
}

fn ringed_tree(
    question: &Question,
    ringed_on: NaiveDate,
    looks: Vec<LookedAt>,
) -> Option<RingedTree> {
    let largest = question
        .tree
        .stems
        .iter()
        .map(|stem| stem.dbh.mm())
        .reduce(f64::max)?;
    Some(RingedTree {
        species: question.tree.species,
        dbh_mm: largest,
        hemisphere: question.place.hemisphere(),
        ringed_on,
        looks,
    })
}

/// The advice of the tree's own question at that visit.
fn advice(
    list: &ReadList,
    of: &OfTree<'_>,
    ring: NaiveDate,
    row: &FoundRow,
) -> Result<Advice, NoAdvice> {
    let mut at_visit = of.question.clone();
    at_visit.visit = Some(VisitSeen {
        at: VisitAt::On(row.visited_on),
        ringed: Some(ring),
        seen: row.seen.clone(),
    });
    let answer = without_sources(list.reference, &at_visit, of.local);
    let Some(visit) = answer.visit else {
        return Err(NoAdvice::NoRing);
    };
    visit
        .advice
        .ok_or(visit.why_not.unwrap_or(NoAdvice::NoRing))
}

/// The next look, and the visits that are still to be made.
fn plan_looks(
    list: &ReadList,
    of: &OfTree<'_>,
    after: &mut AfterRing,
    last: Option<&Advice>,
    again: bool,
) {
    if after.down_on.is_some() {
        return;
    }
    let constants = &list.reference.constants.visits;
    let tree = (of.question.tree.species, of.question.place.hemisphere());
    let come_back = last.and_then(|advice| advice.come_back);
    after.next_look = next_look(constants, tree, after, come_back);
    let Some(ring) = after.ringed_on.filter(|_| !again) else {
        return;
    };
    let Some(effort) = answer_on(list, of, ring).effort else {
        return;
    };
    let reopened = last.is_some_and(|advice| advice.acts.contains(&Act::ReopenBridge));
    after.open = open_visits(
        (constants, plan_constants()),
        tree,
        after,
        reopened,
        &effort.means,
    );
}

/// The tree's own answer on the day of its ring.
fn answer_on(list: &ReadList, of: &OfTree<'_>, ring: NaiveDate) -> Answer {
    without_sources(list.reference, &on_ring_day(of.question, ring), of.local)
}

/// Rings that were timed: what is reckoned for each, and what they took.
#[derive(Default)]
struct Timing {
    predicted: Vec<Three>,
    minutes: f64,
}

impl Timing {
    /// Takes the row of a ring that was timed, where there is an answer with minutes for it.
    fn add(&mut self, list: &ReadList, of: &OfTree<'_>, row: &FoundRow, ring: NaiveDate) {
        let Some(minutes) = row.person_minutes else {
            return;
        };
        let answer = answer_on(list, of, ring);
        let Some(slip) = answer.effort.as_ref().map(|effort| effort.slip) else {
            return;
        };
        let work = answer
            .stems
            .iter()
            .filter(|stem| !stem.spared)
            .filter_map(|stem| {
                Some(StemWork {
                    dbh_mm: stem.dbh_mm,
                    bark_mm: stem.bark.as_ref()?.mm,
                    width_mm: row
                        .ring_mm
                        .or(stem.ring.as_ref().map(|ring| ring.better_mm))?,
                    live_share: stem.live_share,
                })
            });
        let work: Vec<StemWork> = work.collect();
        // Without the walk, and at the model's own rate.
        let pace = Pace {
            walk_min: Some(0.0),
            ..Pace::default()
        };
        let constants = &list.reference.constants.effort;
        let limbs = of.question.tree.limbs;
        let Some(effort) = effort::minutes(constants, limbs, &pace, &work, slip) else {
            return;
        };
        self.minutes += minutes;
        self.predicted.push(Three {
            low: effort.low_min,
            likely: effort.likely_min,
            high: effort.high_min,
        });
    }

    fn rate(self, list: &ReadList) -> Option<TimedRings> {
        if self.predicted.is_empty() {
            return None;
        }
        let constants = &list.reference.constants.effort;
        let rate = update(
            constants,
            Rate::prior(constants),
            &self.predicted,
            self.minutes,
        );
        Some(TimedRings {
            trees: self.predicted.len(),
            person_minutes: self.minutes,
            rate,
            factor: rate.unwrap_or(Rate::prior(constants)).factor(constants),
        })
    }
}
