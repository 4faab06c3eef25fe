//! `plan`: a season's work for a list of trees: which on which day, their visits, what is left and what limits it.

mod asked;
mod sentences;
mod tables;

use crate::command::list::{decisions, group, opened, reason, refused, told};
use crate::{args, terminal};
use anyhow::{Context, Result};
use asked::Asked;
use calc::models::season::Local;
use calc::question::Question;
use calc::terms::place::Place;
use calc_list::reader::{Cut, Item, Reader, as_text};
use calc_list::{Answers, Counts, Is, Layout, Record, Row};
use calc_plan::{Judged, ListTree, Position, Standing};
use calc_view::season_calendar::season_calendar;
use calc_view::words::message::{pack, take_all};
use calc_view::words::{m, within};
use std::process::ExitCode;
use std::rc::Rc;

/// Runs `plan`. Exit codes: 0 some tree was planned; 1 none was, or a file could not be read or written; 2 the command
/// line or the decisions were not understood, or a column asks.
///
/// # Errors
/// When the list can't be read.
pub(crate) fn run(options: &args::Plan) -> Result<ExitCode> {
    take_all();
    within(pack(&options.reading.lang), || plan(options))
}

/// A line of the list, as it goes out again.
pub(crate) enum Listed {
    /// A title line, the header, or a row of units.
    Above(Record),
    /// Empty lines.
    Lines(u64),
    /// A row of empty cells.
    Blank(Record),
    /// Any other row; its tree by its place among the trees, where it is one that was understood.
    Row(Record, Box<Row>, Option<usize>),
}

/// A list that was read, with its trees judged.
pub(crate) struct ReadList {
    layout: Layout,
    /// Columns of an earlier run: left out.
    ours: Vec<bool>,
    lines: Vec<Listed>,
    counts: Counts,
    trees: Vec<ListTree>,
    /// The question of each tree that was judged.
    questions: Vec<Option<AtPlace>>,
}

/// A question as the group's settings leave it, with the climate of its place.
type AtPlace = (Question, Rc<Local>);

fn plan(options: &args::Plan) -> Result<ExitCode> {
    let reading = &options.reading;
    let (Some(told), Some(decisions), Some(group)) =
        (told(reading)?, decisions(reading)?, group(reading)?)
    else {
        return Ok(ExitCode::from(2));
    };
    let asked = match Asked::of(options, &told.today) {
        Ok(asked) => asked,
        Err(what) => {
            terminal::tell(&what);
            return Ok(ExitCode::from(2));
        }
    };
    let reference = calc_data::whole();
    let bytes = read_file(&options.file)?;
    let (text, encoding) = match as_text(&bytes) {
        Ok(read) => read,
        Err(why) => return Ok(refused(why)),
    };
    let cut = match Cut::of(&text, encoding, &decisions) {
        Ok(cut) => cut,
        Err(why) => return Ok(refused(why)),
    };
    let (mut first, mut records, mut record) =
        (Vec::new(), cut.records(&*text, 1)?, Record::default());
    while records.next(&mut record)?.0 {
        first.push(record.clone());
    }
    let mut opened = match opened(&first, &told, &decisions)? {
        Ok(opened) => opened,
        Err(code) => return Ok(code),
    };
    drop(first);
    let mut answers = Answers::new(reference, calc_data::places::places(), group);
    let mut read = ReadList {
        layout: opened.layout.clone(),
        ours: opened
            .rows
            .plan()
            .columns
            .iter()
            .map(|it| it.ours)
            .collect(),
        lines: Vec::new(),
        counts: Counts::default(),
        trees: Vec::new(),
        questions: Vec::new(),
    };
    let mut reader = Reader::new(cut.records(&*text, 1)?, &mut opened);
    while let Some(item) = reader.read_next()? {
        let line = match item {
            Item::Above(record) => Listed::Above(record.clone()),
            Item::Lines(lines) => Listed::Lines(lines),
            Item::Blank(record) => Listed::Blank(record.clone()),
            Item::Row(record, row) => {
                let record = record.clone();
                let tree = tree(&row, &asked, &mut answers);
                let place = tree.map(|(tree, question)| {
                    read.trees.push(tree);
                    read.questions.push(question);
                    read.trees.len() - 1
                });
                Listed::Row(record, row, place)
            }
        };
        read.lines.push(line);
    }
    read.counts = reader.counts().clone();
    let constants = &reference.constants.visits;
    let planned = calc_plan::plan_list(constants, &asked.season, &read.trees);
    let binds = calc_plan::binds(constants, &asked.season, &read.trees, &planned, asked.spare);
    let id = calc_plan::fingerprint(&bytes);
    let name = options.file.rsplit(['/', '\\']).next().unwrap_or("");
    let file = calc_plan::plan_file(
        constants,
        &calc_plan::Asked {
            product_version: env!("CARGO_PKG_VERSION"),
            data_version: reference.data_version,
            made_on: asked.today,
            list_id: &id,
            list_name: name,
            columns: read.layout.texts.len(),
            rows: read.counts.rows,
            blank: read.counts.blank,
            not_trees: read.counts.no_trees(),
            to_fix: read.counts.to_fix,
            closed: &asked.closed,
            wage: asked.wage,
            whole: options.whole,
        },
        &asked.season,
        &read.trees,
        &planned,
        &binds,
    );
    // The asker's day decides, so that two runs give the same bytes.
    let stamp = calc::terms::day::iso(asked.today).replace('-', "") + "T000000Z";
    let made = [
        ("plan.json", serde_json::to_string(&file)? + "\n"),
        ("trees-plan.csv", tables::plan(&read, &planned, &asked)),
        ("trees-to-fix.csv", tables::to_fix(&read)),
        ("season.ics", season_calendar(&file, &stamp)),
    ];
    let written = std::fs::create_dir_all(&options.out).and_then(|()| {
        made.iter()
            .try_for_each(|(name, text)| std::fs::write(options.out.join(name), text))
    });
    if let Err(why) = written {
        terminal::tell(&m::plan_unwritten(m::PlanUnwritten {
            folder: options.out.display().to_string(),
            why: why.to_string(),
        }));
        return Ok(ExitCode::from(1));
    }
    let said = sentences::of(&file, &planned, &binds, &asked, &options.out);
    terminal::print(&said)?;
    if planned.plan.planned() == 0 {
        terminal::tell(&sentences::none_planned(&asked, &read));
        return Ok(ExitCode::from(1));
    }
    Ok(ExitCode::SUCCESS)
}

fn read_file(name: &str) -> Result<Vec<u8>> {
    let unread = || m::list_unreadable(name);
    if name == "-" {
        let mut bytes = Vec::new();
        std::io::Read::read_to_end(&mut std::io::stdin(), &mut bytes).with_context(unread)?;
        return Ok(bytes);
    }
    std::fs::read(name).with_context(unread)
}

/// The tree of a row, where it was understood, and the question that was judged.
fn tree(
    row: &Row,
    asked: &Asked,
    answers: &mut Answers<(Rc<Judged>, Question)>,
) -> Option<(ListTree, Option<AtPlace>)> {
    let mut question = None;
    let mut place = None;
    let standing = match (&row.is, reason(row)) {
        (_, Some("to_fix" | "not_a_tree")) => return None,
        (_, Some("skipped")) | (Is::LeftOut, _) => Standing::Skipped,
        (_, Some("done")) => Standing::Done,
        (_, Some("dead")) => Standing::Dead,
        (Is::Tree(typed, of), _) => {
            let local = answers.local(typed, of);
            let judged = answers.each(typed, of, |question, local| {
                let days = (asked.season.from, asked.judged_on.as_slice());
                let judged =
                    calc_plan::judge(calc_data::whole(), question, local, days, asked.season.slip);
                (Rc::new(judged), question.clone())
            });
            place = match &judged.1.place {
                Place::Point {
                    latitude,
                    longitude,
                    elevation,
                } => Some((*latitude, *longitude, *elevation)),
                Place::Hemisphere(_) => None,
            };
            question = Some((judged.1.clone(), local));
            Standing::Open(Rc::clone(&judged.0))
        }
        (Is::ToFix | Is::NotTree(_), _) => return None,
    };
    let tag = &row.tag;
    let unit = if tag.unit.is_empty() {
        &tag.site
    } else {
        &tag.unit
    };
    let tree = ListTree {
        tree_id: tag.tree_id.clone(),
        row: row.row,
        unit: unit.clone(),
        priority: tag.priority,
        position: Position::of(tag.position),
        pinned: calc::question::read_day(&tag.pin).ok(),
        place,
        standing,
    };
    Some((tree, question))
}
