//! `plan`: a season's work for a list of trees: which on which day, their visits, what is left and what limits it.

mod after;
mod sentences;

use crate::command::list::{Problems, decisions, group, opened, refused, told};
use crate::{args, terminal};
use anyhow::{Context, Result};
use calc_view::plan::asked::{Asked, PlanTyped};
use calc_view::plan::earlier;
use calc_view::plan::land::{LandTyped, land};
use calc_view::plan::made::{About, Made};
use calc_view::plan::read::{ListFile, ReadList, judged_trees};
use calc_view::plan::replant::{Natives, PlantingAsked, replanting, spacing_m};
use calc_view::plan::said::{Said, SaidTyped};
use calc_view::words::message::pack;
use calc_view::words::{m, within};
use std::process::ExitCode;

/// Runs `plan`. Exit codes: 0 some tree was planned; 1 none was, or a file could not be read or written; 2 the command
/// line or the decisions were not understood, or a column asks.
///
/// # Errors
/// When the list can't be read.
pub(crate) fn run(options: &args::Plan) -> Result<ExitCode> {
    within(pack(&options.reading.lang), || plan(options))
}

fn plan(options: &args::Plan) -> Result<ExitCode> {
    let reading = &options.reading;
    let (Some(told), Some(decisions), Some(group)) =
        (told(reading)?, decisions(reading)?, group(reading)?)
    else {
        return Ok(ExitCode::from(2));
    };
    let typed = PlanTyped {
        from: &options.from,
        to: &options.to,
        on: &options.on,
        days: &options.days,
        closed: &options.closed,
        crew: &options.crew,
        teams: &options.teams,
        hours: &options.hours,
        ready: &options.ready,
        pairs: options.pairs,
        slip: &options.slip,
        share: options.share.as_deref(),
        wage: options.wage.as_deref(),
        today: &told.today,
    };
    let reference = calc_data::whole();
    let said = SaidTyped {
        nothing_within: &options.nothing_within,
        said_by: &options.said_by,
        whole_clone: &options.whole_clone,
        same_genus_near: &options.same_genus_near,
    };
    let of_land = LandTyped {
        area: &options.area,
        closure: &options.closure,
        floor: options.floor.as_deref(),
    };
    let Some(spacing) = spacing_m(&options.spacing, reading.units) else {
        terminal::tell(&m::after_not_a_spacing(options.spacing.as_str()));
        return Ok(ExitCode::from(2));
    };
    let asked = Asked::of(&typed).and_then(|mut asked| {
        asked.said = Said::of(reference, &said, reading.units)?;
        (asked.season.land, asked.season.canopy_floor) = land(&of_land, reading.units)?;
        Ok(asked)
    });
    let mut asked = match asked {
        Ok(asked) => asked,
        Err(what) => {
            terminal::tell(&sentences::not_a_season(&what));
            return Ok(ExitCode::from(2));
        }
    };
    if let Some(name) = &options.keep {
        let text = String::from_utf8(read_file(name)?).ok();
        let Some(kept) = text.and_then(|text| earlier::kept(&text)) else {
            terminal::tell(&m::plan_not_a_plan(name.as_str()));
            return Ok(ExitCode::from(2));
        };
        asked.season.kept = kept;
    }
    let bytes = read_file(&options.file)?;
    let file = match ListFile::of(&bytes, &decisions) {
        Ok(file) => file,
        Err(why) => return Ok(refused(why)),
    };
    let opened = match opened(file.first_rows()?, &told, &decisions)? {
        Ok(opened) => opened,
        Err(code) => return Ok(code),
    };
    let mut problems = Problems::new(&opened);
    problems.notes(&opened, &file.changed);
    let mut read = ReadList::of(&file, reference, opened)?;
    for problem in read.rows().flat_map(|(_, row)| &row.problems) {
        problems.problem(problem);
    }
    problems.counted(&read.counts);
    let said = asked.said.nothing_within.iter().map(|(name, _)| name);
    let lands = asked.season.land.iter().map(|land| &land.unit);
    if let Some(name) = said.chain(lands).find(|name| !read.has_unit(name)) {
        terminal::tell(&m::plan_no_such_unit(m::PlanNoSuchUnit {
            unit: name.as_str(),
            units: read.units().join(", "),
        }));
        return Ok(ExitCode::from(2));
    }
    let mut answers = judged_trees(reference, calc_data::places::places(), group.clone());
    while read.judge(usize::MAX, &asked, &mut answers) {}
    let after = match &options.found {
        None => None,
        Some(name) => match after::found(name, &mut read, &mut asked, options, &mut answers)? {
            Some(after) => Some(after),
            None => return Ok(ExitCode::from(2)),
        },
    };
    let about = About {
        name: options
            .file
            .rsplit(['/', '\\'])
            .next()
            .unwrap_or("")
            .to_owned(),
        whole: options.whole,
        units: reading.units,
        group,
    };
    let mut made = Made::of(&read, &asked, &about);
    made.file.after = after.as_ref().map(|after| after.file(options.own_rate));
    let mut texts = Vec::new();
    let files = made.files(&read, &asked);
    for name in &files {
        texts.push((*name, made.file(name, &read, &asked)));
    }
    let written = std::fs::create_dir_all(&options.out).and_then(|()| {
        texts
            .iter()
            .try_for_each(|(name, text)| std::fs::write(options.out.join(name), text))
    });
    if let Err(why) = written {
        terminal::tell(&m::plan_unwritten(m::PlanUnwritten {
            folder: options.out.display().to_string(),
            why: why.to_string(),
        }));
        return Ok(ExitCode::from(1));
    }
    let said = sentences::of(
        (&made, &read),
        &asked,
        (&options.out, &files, reading.units),
    );
    terminal::print(&said)?;
    if let Some(after) = &after {
        terminal::print(&after::sentences(after, options.own_rate))?;
    }
    let planting = PlantingAsked {
        spacing_m: spacing,
        units: reading.units,
        land: &asked.season.land,
    };
    let natives = Natives::of(calc_data::NATIVES);
    if let Some(told) = replanting(&read, &made, planting, natives.as_ref()) {
        terminal::print(&sentences::replanting(told))?;
    }
    if made.planned.plan.planned() == 0 {
        terminal::tell(&sentences::none_planned(&asked, &read));
        return Ok(ExitCode::from(1));
    }
    Ok(ExitCode::SUCCESS)
}

pub(super) fn read_file(name: &str) -> Result<Vec<u8>> {
    let unread = || m::list_unreadable(name);
    if name == "-" {
        let mut bytes = Vec::new();
        std::io::Read::read_to_end(&mut std::io::stdin(), &mut bytes).with_context(unread)?;
        return Ok(bytes);
    }
    std::fs::read(name).with_context(unread)
}
