//! What was found at visits, on the command line: read, told in sentences, and what is wrong with it.

use super::read_file;
use crate::{args, terminal};
use anyhow::Result;
use calc_list::found::FoundFile;
use calc_view::plan::after::AfterWork;
use calc_view::plan::after_sentences::{self, no_file};
use calc_view::plan::asked::Asked;
use calc_view::plan::read::{JudgedTrees, ReadList};
use calc_view::words::m;

/// What was found; none where the file holds nothing of it, which is told. With the crew's own rate the trees are judged
/// anew.
pub(super) fn found(
    name: &str,
    list: &mut ReadList,
    asked: &mut Asked,
    options: &args::Plan,
    answers: &mut JudgedTrees,
) -> Result<Option<AfterWork>> {
    let bytes = read_file(name)?;
    let mut file = match FoundFile::of(&bytes, options.reading.units)? {
        Ok(file) => file,
        Err(why) => {
            terminal::tell(&format!("{name}: {}", no_file(why)));
            return Ok(None);
        }
    };
    let mut after = AfterWork::of(list, asked, &mut file);
    file.problems.sort_by_key(|problem| problem.row);
    for problem in &file.problems {
        terminal::tell(&format!("{name}: {}", after_sentences::problem(problem)));
    }
    let rate = after.timed.and_then(|timed| timed.rate.ok());
    if options.own_rate {
        let Some(rate) = rate else {
            terminal::tell(m::AFTER_NO_OWN_RATE.text());
            return Ok(None);
        };
        asked.said.rate = Some(rate);
        list.judge_anew();
        while list.judge(usize::MAX, asked, answers) {}
        after = AfterWork::of(list, asked, &mut file);
    }
    Ok(Some(after))
}

/// What was found in sentences: what to do now, shares of dead trees, rings that held, the crew's rate.
pub(super) fn sentences(after: &AfterWork, used: bool) -> String {
    let mut lines = vec![after_sentences::looks(after)];
    lines.extend(after_sentences::acts(after));
    lines.extend(after_sentences::kill_rates(after));
    lines.extend(after_sentences::rings_held(after));
    if let Some(timed) = &after.timed {
        lines.push(after_sentences::rate(timed));
        if timed.rate.is_ok() {
            lines.push(match used {
                true => m::AFTER_RATE_USED.into(),
                false => m::AFTER_RATE_TO_USE.into(),
            });
        }
    }
    lines.join("\n") + "\n"
}
