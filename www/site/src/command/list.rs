//! `list`: an answer for every row of a list of trees, row by row: JSON Lines, or the list with columns added.

mod output;
mod problems;
mod source;
mod summary;

use crate::command::{question as json_question, settings};
use crate::{args, places, terminal};
use anyhow::{Context, Result};
use calc::answer::{Answer, Outcome};
use calc::question::Question;
use calc::question::settings::AskingGroup;
use calc_list::reader::{Item, Reader};
use calc_list::{Answers, Decisions, Is, Line, ListContext, NotList, Opened, Record};
use calc_view::words::list as words;
use calc_view::words::message::{pack, tree_names};
use calc_view::words::{m, within};
use output::Output;
pub(crate) use problems::Problems;
use source::Source;
use std::process::ExitCode;
use std::sync::Arc;
use summary::Summary;

/// Runs `list`. Exit codes: 0 some row was answered; 1 none was, or the file could not be read; 2 the command line or the
/// decisions were not understood, or a column asks.
///
/// # Errors
/// When a file can't be read or the output not be written.
pub(crate) fn run(options: &args::List) -> Result<ExitCode> {
    within(pack(&options.reading.lang), || list(options))
}

/// What is kept of an answer: it is printed for each row that asks the same.
pub(crate) struct Made {
    outcome: Outcome,
    line: Line,
    message: String,
    cells: Vec<String>,
    /// The whole answer as JSON, where it was asked for.
    whole: Option<String>,
}

fn list(options: &args::List) -> Result<ExitCode> {
    let reference = calc_data::whole();
    let (Some(asked), Some(decisions), Some(group)) = (
        told(&options.reading)?,
        decisions(&options.reading)?,
        group(&options.reading)?,
    ) else {
        return Ok(ExitCode::from(2));
    };
    let mut source = match Source::open(&options.file, &decisions)? {
        Ok(source) => source,
        Err(why) => return Ok(refused(why)),
    };
    let first = source.first_rows(options.first_row)?;
    let mut opened = match opened(first, &asked, &decisions)? {
        Ok(opened) => opened,
        Err(code) => return Ok(code),
    };
    let records = source.records(options.first_row)?;
    let mut answers = Answers::new(reference, calc_data::places::places(), group);
    let mut output = Output::new(options, &opened)?;
    let mut summary = Summary::default();
    output.problems.notes(&opened, source.changed_words());
    let mut reader = Reader::new(records, &mut opened);
    while let Some(item) = reader.read_next().context(m::LIST_CUT_SHORT.text())? {
        match item {
            Item::Above(record) => output.above(record)?,
            Item::Lines(lines) => output.lines(lines)?,
            Item::Blank(record) => output.blank(record)?,
            Item::Row(record, row) => {
                let reason = row.without_answer();
                let made = match (&row.is, reason) {
                    (Is::Tree(typed, question), None) => {
                        let of = |question: &Question, local: &_, answer: &Answer| {
                            made(options, question, local, answer)
                        };
                        Some(answers.of(typed, question, of))
                    }
                    _ => None,
                };
                summary.take(&row, reason, made.as_deref());
                output.row(record, &row, reason, made.as_deref())?;
            }
        }
        if output.is_gone() {
            break;
        }
    }
    let counts = reader.counts().clone();
    if options.text {
        output.text(&summary.told(&counts))?;
    }
    output.done(&counts)?;
    if summary.answered() == 0 && !output.is_gone() {
        terminal::tell(&words::nothing_answered());
        return Ok(ExitCode::from(1));
    }
    Ok(ExitCode::SUCCESS)
}

/// A list whose columns are all understood; else the exit code, and why not is told.
pub(crate) fn opened(
    first: Vec<Record>,
    asked: &ListContext,
    decisions: &Decisions,
) -> Result<Result<Opened, ExitCode>> {
    let opened = match calc_list::open(calc_data::whole(), first, asked, decisions) {
        Ok(opened) => opened,
        Err(why) => return Ok(Err(refused(why))),
    };
    if !opened.strangers.is_empty() {
        for name in &opened.strangers {
            terminal::tell(&words::stranger(name));
        }
        return Ok(Err(ExitCode::from(2)));
    }
    if !opened.asks.is_empty() {
        ask(&opened, decisions)?;
        return Ok(Err(ExitCode::from(2)));
    }
    Ok(Ok(opened))
}

/// Tells why a file is no list of trees.
pub(crate) fn refused(why: NotList) -> ExitCode {
    terminal::tell(&words::not_list(why));
    ExitCode::from(1)
}

/// What holds for the whole list, from the command line; none where it was not understood, which is told.
pub(crate) fn told(options: &args::Reading) -> Result<Option<ListContext>> {
    let today = match &options.today {
        None => json_question::today(),
        Some(day) => match calc::question::read_day(day) {
            Ok(day) => calc::terms::day::iso(day),
            Err(_) => {
                terminal::tell(&m::list_not_a_day(day.as_str()));
                return Ok(None);
            }
        },
    };
    let mut region = options.region.clone();
    let place = match &options.place {
        None => None,
        Some(typed) => match places::find(typed) {
            Ok((site, state)) => {
                region = region.or(state);
                Some((site.lat, site.lon, site.elev_m))
            }
            Err(error) => {
                terminal::tell(&m::list_no_place(error.to_string()));
                return Ok(None);
            }
        },
    };
    if let Some(code) = &region
        && !calc::question::region_names().any(|(known, _)| known.eq_ignore_ascii_case(code))
    {
        terminal::tell(&m::list_not_a_region(code.as_str()));
        return Ok(None);
    }
    Ok(Some(ListContext {
        units: options.units,
        region,
        place,
        names: tree_names(),
        today,
    }))
}

/// The file of decisions; none where it was not understood, which is told.
pub(crate) fn decisions(options: &args::Reading) -> Result<Option<Decisions>> {
    let Some(file) = &options.columns else {
        return Ok(Some(Decisions::default()));
    };
    let text =
        std::fs::read_to_string(file).with_context(|| m::list_unreadable_columns(file.as_str()))?;
    let text = text.strip_prefix('\u{feff}').unwrap_or(&text);
    match serde_json::from_str(text) {
        Ok(decisions) => Ok(Some(decisions)),
        Err(error) => {
            let whole = error.to_string();
            let what = whole.rsplit_once(" at line ").map_or(&*whole, |it| it.0);
            let told = m::command_not_json(m::CommandNotJson {
                line: error.line().to_string(),
                column: error.column().to_string(),
                why: what,
            });
            terminal::tell(&format!("{file}: {told}"));
            Ok(None)
        }
    }
}

/// A group's own settings; the inner none where none were asked for, the outer where they can't be used, which is told.
pub(crate) fn group(options: &args::Reading) -> Result<Option<Option<AskingGroup>>> {
    let Some(file) = &options.settings else {
        return Ok(Some(None));
    };
    let (settings, told) = match settings::load(file)? {
        Ok((settings, told)) => (Some(settings), settings::lines(&told)),
        Err(told) => (None, told),
    };
    for line in told {
        terminal::tell(&format!("{file}: {line}"));
    }
    Ok(settings.map(|settings| {
        Some(AskingGroup {
            settings: Arc::new(settings),
            today: json_question::today_day(),
        })
    }))
}

fn made(
    options: &args::List,
    question: &Question,
    local: &calc::models::season::Local,
    answer: &Answer,
) -> Made {
    let reference = calc_data::whole();
    let line = Line::of(question, answer);
    let kind = calc_view::kind::Kind::default();
    let cells = match options.csv {
        true => calc_view::list::cells(question, answer, &line),
        false => Vec::new(),
    };
    // The whole answer is that of the question asked alone, with what would change it.
    let whole = options.whole.then(|| {
        let whole = calc::answer::answer(reference, question, local);
        serde_json::to_string(&whole).unwrap_or_default()
    });
    Made {
        outcome: answer.outcome,
        message: calc_view::status(kind, reference, question, answer),
        line,
        cells,
        whole,
    }
}

/// Prints what is asked: questions in words on the error stream, the file to fill in on the other.
fn ask(opened: &Opened, decisions: &Decisions) -> Result<()> {
    terminal::tell(&words::asked(opened.asks.len()));
    for ask in &opened.asks {
        terminal::tell(&format!("- {}", words::ask(ask)));
    }
    let filled = calc_list::filled_in(decisions, &opened.asks);
    let file = serde_json::to_string_pretty(&filled)?;
    terminal::print_as_it_is(&(terminal::json(&file) + "\n"))
}
