//! One open list, and what is being done with it.

mod areas;
mod asked;
pub(crate) mod found;
mod handed_out;
mod kept;
mod land;
mod opening;
mod replant;

use calc::terms::quantity::Units;
use calc::timing::places::climate::Places;
use calc_list::reader::CellEdits;
use calc_list::{Ask, Decisions, ListContext, Note};
use calc_plan::Kept;
use calc_view::plan::asked::Asked;
use calc_view::plan::earlier;
use calc_view::plan::leftover::Leftover;
use calc_view::plan::made::{About, Made};
use calc_view::plan::making::Making;
use calc_view::plan::read::{JudgedTrees, ListBeingRead, ReadList, judged_trees};
use calc_view::plan::screen::hit::{Replied, ToAsk};
use calc_view::plan::screen::land::LandForm;
use calc_view::plan::screen::replant::SPACING;
use calc_view::plan::screen::season::{
    Offered, PlanBefore, SeasonForm, offered, year_of_saturdays,
};
use calc_view::plan::screen::{columns, result};
use calc_view::words::message::{Pack, pack, tree_names};
use calc_view::words::{m, within};
use found::{FoundTable, FoundTold, FoundWork};
use opening::CutFile;
use replant::Planting;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// What a control asks for.
#[derive(Deserialize)]
struct Act {
    r#do: String,
    /// What stands at the control.
    #[serde(default)]
    data: BTreeMap<String, String>,
    /// The fields of the form around it.
    #[serde(default)]
    entries: Vec<(String, String)>,
}

/// What is told to the page.
#[derive(Default, Serialize)]
struct Told {
    more: bool,
    /// Whether the next slice is of other work: how long its rows take is not known yet.
    anew: bool,
    done: usize,
    of: usize,
    what: String,
    /// Areas drawn anew.
    areas: BTreeMap<String, Vec<String>>,
    /// One sentence for those who listen.
    said: String,
    /// Where the reader is led, by its id.
    to: &'static str,
    /// Whether cells were changed that no file has yet.
    edited: bool,
    /// The list that is open, by the id of its bytes.
    id: String,
}

/// What is being done.
enum Work {
    /// Nothing.
    None,
    /// The file is cut into rows, if it was not; then its columns are judged.
    Opening(Option<Box<CutFile>>),
    /// Rows are read.
    Reading(Box<ListBeingRead>),
    /// Trees are judged for every Saturday of a year.
    Looking,
    /// Trees are judged for the work days.
    Judging,
    /// What was found at visits is taken up.
    TakingUp(Box<FoundWork>),
    /// The plan is made, step by step.
    Planning(Box<Making>),
    /// What it comes to is drawn.
    Showing,
    /// A file is written, row by row.
    Writing(String),
}

/// Days, with the trees that were judged for them.
struct ForDays {
    asked: Asked,
    trees: JudgedTrees,
}

pub(crate) struct Session {
    words: &'static Pack,
    options: ListContext,
    places: &'static Places,
    name: String,
    bytes: Vec<u8>,
    decisions: Decisions,
    edits: CellEdits,
    filled: SeasonForm,
    wrong: Option<String>,
    asks: Vec<Ask>,
    headers: Vec<String>,
    notes: Vec<Note>,
    changed: Vec<String>,
    work: Work,
    /// What was decided or typed since the list was read is not in it yet.
    unread: bool,
    list: Option<ReadList>,
    look: Option<ForDays>,
    offered: Vec<Offered>,
    to_ask: ToAsk,
    replied: Replied,
    season: Option<ForDays>,
    /// A plan was asked for with the days that are offered, and these are still looked for.
    plan_follows: bool,
    made: Option<Made>,
    /// The plan before, and the days that the next one keeps.
    before: Option<PlanBefore>,
    kept: Kept,
    /// What was filled in when the plan was asked for.
    planned_as: SeasonForm,
    /// What was found when the plan was made, and when the one before was.
    planned_with: Option<FoundTable>,
    found_before: Option<FoundTable>,
    /// What was found at visits.
    found: Option<FoundTable>,
    found_told: Option<FoundTold>,
    /// Why the file that was opened last is no table of visits.
    no_found: Option<String>,
    /// Land of parts; and what was typed of it last where something of that is wrong, by the ids of its fields.
    land: LandForm,
    land_wrong: Option<(LandForm, Vec<(String, String)>)>,
    planting: Planting,
    /// The row that was mended last.
    last_row: Option<u64>,
    /// Rows of lists and plans before.
    leftover: Leftover,
    told: Told,
}

impl Session {
    pub(crate) fn new(language: &str, today: &str, units: &str, places: &'static Places) -> Self {
        Self {
            words: pack(language),
            options: ListContext {
                units: match units {
                    "metric" => Units::Metric,
                    _ => Units::Us,
                },
                names: tree_names(),
                today: today.to_owned(),
                ..ListContext::default()
            },
            places,
            name: String::new(),
            bytes: Vec::new(),
            decisions: Decisions::default(),
            edits: CellEdits::new(),
            filled: SeasonForm::default(),
            wrong: None,
            asks: Vec::new(),
            headers: Vec::new(),
            notes: Vec::new(),
            changed: Vec::new(),
            work: Work::None,
            unread: false,
            list: None,
            look: None,
            offered: Vec::new(),
            to_ask: ToAsk::default(),
            replied: Replied::default(),
            season: None,
            plan_follows: false,
            made: None,
            before: None,
            kept: Kept::default(),
            planned_as: SeasonForm::default(),
            planned_with: None,
            found_before: None,
            found: None,
            found_told: None,
            no_found: None,
            land: LandForm::default(),
            land_wrong: None,
            planting: Planting::default(),
            last_row: None,
            leftover: Leftover::default(),
            told: Told::default(),
        }
    }

    /// Runs in the language of the page.
    pub(crate) fn speaking<T>(&mut self, run: impl FnOnce(&mut Self) -> T) -> T {
        within(self.words, || run(self))
    }

    pub(crate) fn act(&mut self, asked: &str) {
        let Ok(act) = serde_json::from_str::<Act>(asked) else {
            return;
        };
        let data = |name: &str| act.data.get(name).map_or("", String::as_str);
        match act.r#do.as_str() {
            "decide" => {
                columns::decide(&mut self.decisions, &self.asks, &act.entries);
                self.read_anew();
            }
            "name" => {
                let typed = act.entries.first().map_or("", |(_, typed)| typed.trim());
                let is = match data("as") {
                    "" => typed,
                    named => named,
                };
                if !is.is_empty() {
                    let name = data("name").to_owned();
                    self.decisions.names.insert(name, is.to_owned());
                    self.told.to = "area-fix";
                    self.read_anew();
                }
            }
            "edit" => {
                let (row, column) = (data("row").parse(), data("column").parse());
                if let (Ok(row), Ok(column), Some((_, typed))) = (row, column, act.entries.first())
                {
                    self.edits.insert((row, column), typed.trim().to_owned());
                    self.last_row = Some(row);
                    self.told.to = "area-fix";
                    self.read_anew();
                }
            }
            "said" => {
                self.replied.take(&self.to_ask, &act.entries);
                self.said();
            }
            "plan" => {
                self.filled.take(&act.entries);
                self.plan();
            }
            "more" => {
                let people = data("people").parse::<i32>().unwrap_or(0);
                if let Ok(now) = self.filled.people.trim().parse::<i32>() {
                    self.filled.people = (now + people).max(1).to_string();
                }
                if !data("closed").is_empty() {
                    let typed = [self.filled.closed.trim(), data("closed")];
                    let typed = typed.into_iter().filter(|it| !it.is_empty());
                    self.filled.closed = typed.collect::<Vec<_>>().join(", ");
                }
                if !data("day").is_empty() {
                    let days = self.filled.days.get_or_insert_default();
                    days.push(data("day").to_owned());
                }
                self.plan();
            }
            "back" => {
                if let Some(before) = self.before.take() {
                    self.filled = before.filled;
                    self.found = self.found_before.take();
                    self.plan();
                    self.kept = earlier::kept_of(&before.file);
                }
            }
            "pin" => self.pin(&act.entries),
            "own-rate" => {
                if let Some(found) = &mut self.found {
                    found.own_rate = !act.entries.is_empty();
                    self.plan_with_found();
                }
            }
            "found-out" => {
                self.found = None;
                self.plan_with_found();
            }
            "land" => self.take_land(&act.entries),
            SPACING => self.take_spacing(&act.entries),
            _ => {}
        }
    }

    fn judge_nothing(&self) -> JudgedTrees {
        judged_trees(calc_data::reference(), self.places, None)
    }

    /// Begins to judge the trees anew: a plan of them as they were would name trees that are not there.
    fn judge_for(&mut self, work: Work) {
        self.forget_plan();
        self.without_own_rate();
        if let Some(list) = &mut self.list {
            list.judge_anew();
            self.work = work;
        }
    }

    pub(crate) fn step(&mut self, rows: usize) -> String {
        let (mut done, mut of, mut what) = (0, 0, String::new());
        let before = std::mem::discriminant(&self.work);
        self.leftover.give_back(rows);
        match std::mem::replace(&mut self.work, Work::None) {
            Work::None => {}
            Work::Opening(cut) => {
                what = m::PROPERTY_READING.into();
                self.opened_on(cut);
            }
            Work::Reading(mut reading) => {
                what = m::PROPERTY_READING.into();
                if reading.read(rows).unwrap_or(false) {
                    done = reading.lines();
                    self.work = Work::Reading(reading);
                } else {
                    if let Some(before) = self.list.replace(reading.done()) {
                        self.leftover.of_list(before);
                    }
                    self.forget_plan();
                    self.unread = false;
                    self.after_reading();
                    // What was counted and what is to mend is there before any tree is looked at; a plan stays until
                    // there is another.
                    if self.season.is_none() {
                        self.draw();
                    }
                }
            }
            Work::Looking => {
                what = m::PROPERTY_LOOKING.into();
                if let (Some(list), Some(look)) = (&mut self.list, &mut self.look) {
                    if list.judge(rows, &look.asked, &mut look.trees) {
                        (done, of) = list.judged();
                        self.work = Work::Looking;
                    } else {
                        self.offered = offered(list);
                        self.to_ask = ToAsk::of(list, self.options.units);
                        match self.season {
                            _ if std::mem::take(&mut self.plan_follows) => self.plan(),
                            Some(_) => self.judge_for(Work::Judging),
                            None => self.shown(),
                        }
                    }
                }
            }
            Work::Judging => {
                what = m::PROPERTY_LOOKING.into();
                if let (Some(list), Some(season)) = (&mut self.list, &mut self.season) {
                    let more = list.judge(rows, &season.asked, &mut season.trees);
                    (done, of) = list.judged();
                    if more {
                        self.work = Work::Judging;
                    } else {
                        // A row that was mended may ask of its unit or its species.
                        self.to_ask = ToAsk::of(list, self.options.units);
                        season.asked.season.kept = match self.filled.keep_days {
                            true => self.kept.clone(),
                            false => Kept::default(),
                        };
                        let units = self.options.units;
                        let of_plan = &mut season.asked.season;
                        (of_plan.land, of_plan.canopy_floor) = self.land.land(list, units);
                        self.work = self.after_judging();
                    }
                }
            }
            Work::TakingUp(taking) => {
                what = m::PROPERTY_LOOKING.into();
                (done, of) = self.take_up(rows, taking);
            }
            Work::Planning(mut making) => {
                what = m::PROPERTY_PLANNING.into();
                if let (Some(list), Some(season)) = (&self.list, &self.season) {
                    let about = About {
                        name: self.name.clone(),
                        whole: false,
                        units: self.options.units,
                        group: None,
                    };
                    self.made = making.step(rows, list, &season.asked, &about);
                    self.work = match self.made {
                        Some(_) => Work::Showing,
                        None => Work::Planning(making),
                    };
                    self.found_into_plan();
                }
            }
            Work::Showing => self.shown(),
            Work::Writing(name) => {
                what = m::PROPERTY_WRITING.into();
                (done, of) = self.write(rows, name);
            }
        }
        let mut told = std::mem::take(&mut self.told);
        told.more = !matches!(self.work, Work::None);
        told.anew = before != std::mem::discriminant(&self.work);
        told.edited = !self.edits.is_empty() || self.decisions != Decisions::default();
        if !told.more {
            told.id = self.id();
        }
        if told.more {
            (told.done, told.of, told.what) = (done, of, what);
            // Where the reader is led is told at the end.
            self.told.to = told.to;
        }
        serde_json::to_string(&told).unwrap_or_default()
    }

    fn after_reading(&mut self) {
        if self.look.is_none() {
            // The asker's day was read from a clock.
            let Ok(mut asked) = year_of_saturdays(&self.options.today) else {
                return;
            };
            asked.said = self.what_was_said();
            let trees = self.judge_nothing();
            self.look = Some(ForDays { asked, trees });
        }
        self.without_own_rate();
        self.work = match self.season {
            // The days that are offered stay as they were.
            Some(_) if !self.offered.is_empty() => Work::Judging,
            _ => Work::Looking,
        };
    }

    /// All is done: it is drawn and said.
    fn shown(&mut self) {
        self.draw();
        let Some(list) = &self.list else { return };
        self.told.said = match (&self.made, &self.season) {
            (Some(made), Some(season)) => {
                // On a work day the page opens at who goes where.
                if result::works_today(made, &season.asked) {
                    self.told.to = "l-day";
                }
                result::sentence(made, &season.asked)
            }
            _ => result::counted(list, &self.name),
        };
    }

    pub(crate) fn stop(&mut self) {
        self.work = Work::None;
        self.plan_follows = false;
        self.draw();
        self.told.said = m::PROPERTY_STOPPED.into();
    }
}
