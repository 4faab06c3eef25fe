//! `plan`: a season's work for a list of trees: which on which day, their visits, what is left and what limits it.

mod sentences;

use crate::command::list::{decisions, group, opened, refused, told};
use crate::{args, terminal};
use anyhow::{Context, Result};
use calc_view::plan::asked::{Asked, PlanTyped};
use calc_view::plan::earlier;
use calc_view::plan::made::{About, Made};
use calc_view::plan::read::{ListFile, ReadList, judged_trees};
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
    let asked = Asked::of(&typed).and_then(|mut asked| {
        asked.said = Said::of(reference, &said, reading.units)?;
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
    let opened = match opened(&file.first_rows()?, &told, &decisions)? {
        Ok(opened) => opened,
        Err(code) => return Ok(code),
    };
    let mut read = ReadList::of(&file, reference, opened)?;
    if let Some((name, _)) = asked
        .said
        .nothing_within
        .iter()
        .find(|(name, _)| !read.has_unit(name))
    {
        terminal::tell(&m::plan_no_such_unit(m::PlanNoSuchUnit {
            unit: name.as_str(),
            units: read.units().join(", "),
        }));
        return Ok(ExitCode::from(2));
    }
    let mut answers = judged_trees(reference, calc_data::places::places(), group.clone());
    while read.judge(usize::MAX, &asked, &mut answers) {}
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
    let made = Made::of(&read, &asked, &about);
    let mut texts = Vec::new();
    let files = made.files(&read, &asked);
    for name in &files {
        texts.push((*name, made.file(name, &read, &asked)?));
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
    if made.planned.plan.planned() == 0 {
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
