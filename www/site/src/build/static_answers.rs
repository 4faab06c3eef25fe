//! What a page without script shows: a worked example, made by the same core and the same view as the live answer, and
//! the buttons of the page that makes a group's settings.

use anyhow::{Result, bail};
use calc::answer::Answer;
use calc::models::season::Local;
use calc::question::{Question, Typed, read};
use calc::reference::Reference;
use calc::terms::species::Species;
use calc_view::out::{Html, escaped};
use calc_view::words::{m, phrase};
use calc_view::{answer, draw};

/// The example: an invented maple in an invented hedgerow, on a day of its own.
const EXAMPLE: &str = include_str!("../../../../content/examples/front_page.json");
/// The answer to the example.
///
/// # Errors
/// If the example is no good question any more.
pub(crate) fn example(base: &str) -> Result<String> {
    let typed: Typed = serde_json::from_str(EXAMPLE)?;
    let reference = calc_data::whole();
    let (question, answer) = ask(reference, &typed)?;
    let days = calc::answer::year_ahead(reference, &question, &Local::default());
    let sources = format!("{base}sources/");
    let options = answer::HostOptions {
        heading_level: 2,
        sources_base: &sources,
        another: Some(answer::another::Trial {
            question: &question,
            answer: &answer,
            days: &days,
        }),
        ..answer::HostOptions::default()
    };
    let mut out = Html::default();
    draw::mark::defs(&mut out);
    answer::answer(&mut out, reference, &question, &answer, &options);
    Ok(out.into_string())
}

/// A button for each species that can be named, to be found by any of its names.
pub(crate) fn species_choices() -> String {
    let mut species: Vec<_> = calc_data::whole().species.iter().collect();
    species.retain(|species| !species.unknown);
    species.sort_by_key(|species| phrase::tree(species).to_lowercase());
    let button = |species: &&Species| {
        let said = if species.code.is_empty() {
            species.scientific
        } else {
            species.code
        };
        let name = phrase::tree(species);
        let mut names = vec![said.to_lowercase(), species.scientific.to_lowercase()];
        names.push(name.to_lowercase());
        names.extend(species.names.iter().map(|name| name.to_lowercase()));
        format!(
            "<button type=\"button\" class=\"btn ghost\" hidden data-said=\"{}\" data-name=\"{}\" data-names=\"{}\">{}</button>\n",
            escaped(said),
            escaped(name),
            escaped(&names.join("|")),
            escaped(&m::builder_add_tree(name))
        )
    };
    species.iter().map(button).collect()
}

/// A box for each month.
pub(crate) fn month_boxes() -> String {
    let months = m::MEASURE_MONTHS.split(' ').enumerate();
    let boxes = months.map(|(at, month)| {
        format!(
            "<label class=\"opt\"><input type=\"checkbox\" name=\"month\" value=\"{}\">{}</label>",
            at + 1,
            escaped(&phrase::sentence(month))
        )
    });
    boxes.collect()
}

pub(super) fn ask(reference: &'static Reference, typed: &Typed) -> Result<(Question, Answer)> {
    let question = question(reference, typed)?;
    let answer = calc::answer::answer(reference, &question, &Local::default());
    Ok((question, answer))
}

/// Reads a question that the pages ask.
///
/// # Errors
/// If it is no good question any more.
pub(super) fn question(reference: &'static Reference, typed: &Typed) -> Result<Question> {
    match read(reference, typed) {
        Ok(question) => Ok(question),
        Err(problems) => bail!("a question of the static pages has problems: {problems:?}"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_page_without_script_has_an_answer() -> Result<()> {
        assert!(example("/")?.contains("14½ in"));
        Ok(())
    }
}
