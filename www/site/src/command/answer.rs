//! `answer`: one question from a file or standard input, answered in print.

use crate::command::{question as json_question, settings};
use crate::{args, terminal};
use anyhow::{Context, Result};
use calc::models::season::Local;
use calc::question::Problem;
use calc::question::settings::AskingGroup;
use calc::timing::Flag;
use calc_view::words::message::pack;
use calc_view::words::{m, season, within};
use serde::Serialize;
use std::io::Read as _;
use std::process::ExitCode;
use std::sync::Arc;

/// Runs `answer`. A question that was not understood is an answer too: all its
/// problems, on the same stream, and exit code 2.
///
/// # Errors
/// When the file can't be read.
pub(crate) fn run(options: &args::Answer) -> Result<ExitCode> {
    within(pack(&options.lang), || answer(options))
}

fn answer(options: &args::Answer) -> Result<ExitCode> {
    let bytes = read(&options.file)?;
    let reference = calc_data::whole();
    let typed = match json_question::from_json(&bytes) {
        Ok(typed) => json_question::with_scientific_name(typed),
        Err(wrong) => {
            return print_problems(&[(wrong.problem, wrong.message)], options.text);
        }
    };
    let settings = match &options.settings {
        None => None,
        Some(file) => match settings::load(file)? {
            Ok((settings, told)) => {
                for line in settings::lines(&told) {
                    terminal::tell(&format!("{file}: {line}"));
                }
                Some(settings)
            }
            Err(told) => {
                for line in told {
                    terminal::tell(&format!("{file}: {line}"));
                }
                return Ok(ExitCode::from(2));
            }
        },
    };
    let mut question = match calc::question::read(reference, &typed) {
        Ok(question) => question,
        Err(problems) => {
            let worded: Vec<_> = problems
                .into_iter()
                .map(|problem| {
                    let message = calc_view::problem_text(&problem);
                    (problem, message)
                })
                .collect();
            return print_problems(&worded, options.text);
        }
    };
    let group = settings.map(|settings| AskingGroup {
        settings: Arc::new(settings),
        today: json_question::today_day(),
    });
    if let Some(group) = &group {
        group.settings.apply(&mut question);
    }
    let local = Local::of(
        &reference.constants.timing,
        &question.place,
        question.region.as_deref(),
        calc_data::places::places(),
    );
    let answer = calc::answer::answer(reference, &question, &local);
    if options.ics {
        let about = calc_view::words::visits::calendar_title(&question, &answer);
        let summary = |at: usize| {
            let visit = &answer.visits[at];
            calc_view::words::visits::visit(visit.kind, answer.headline_method).into()
        };
        let stamp = format!("{}T000000Z", json_question::today().replace('-', ""));
        let calendar = calc_view::ics::visits(&answer, &stamp, &about, &summary);
        terminal::print_as_it_is(&calendar)?;
        return Ok(ExitCode::SUCCESS);
    }
    let group = group.as_ref();
    let shown = match (options.text, options.full) {
        (false, _) => serde_json::to_string_pretty(&answer)?,
        (true, false) => calc_view::text::short(reference, &question, &answer, group),
        (true, true) => calc_view::text::answer(reference, &question, &answer, group),
    };
    if options.text && !options.full {
        // In short the season is folded; a place that was hardly meant so is told all the same.
        let timing = &answer.timing;
        let odd = |flag: &&Flag| matches!(flag, Flag::FarFromPlaces | Flag::ElevationOdd);
        for flag in timing.flags.iter().filter(odd) {
            terminal::tell(&m::season_flag(*flag));
        }
        if let Some(site) = timing.meant {
            terminal::tell(&season::meant(site));
        }
    }
    print(&shown, options.text)?;
    Ok(ExitCode::SUCCESS)
}

fn read(file: &str) -> Result<Vec<u8>> {
    if file == "-" {
        let mut bytes = Vec::new();
        std::io::stdin()
            .read_to_end(&mut bytes)
            .with_context(|| m::COMMAND_UNREADABLE_INPUT)?;
        return Ok(bytes);
    }
    std::fs::read(file).with_context(|| m::command_unreadable(file))
}

/// Prints text or JSON.
fn print(shown: &str, text: bool) -> Result<()> {
    let shown = shown.trim_end();
    let made = if text {
        terminal::plain(shown)
    } else {
        terminal::json(shown)
    };
    terminal::print_as_it_is(&(made + "\n"))
}

/// One problem as printed.
#[derive(Serialize)]
struct Shown<'a> {
    field: &'a str,
    code: &'static str,
    message: &'a str,
}

fn print_problems(problems: &[(Problem, String)], text: bool) -> Result<ExitCode> {
    let list: Vec<_> = problems
        .iter()
        .map(|(problem, message)| Shown {
            field: &problem.field,
            code: problem.code.name(),
            message,
        })
        .collect();
    let shown = if text {
        let line = |problem: &Shown| match problem.field {
            "" => problem.message.to_owned(),
            field => format!("{field}: {}", problem.message),
        };
        list.iter().map(line).collect::<Vec<_>>().join("\n")
    } else {
        let whole = std::collections::BTreeMap::from([("problems", list)]);
        serde_json::to_string_pretty(&whole)?
    };
    print(&shown, text)?;
    Ok(ExitCode::from(2))
}
