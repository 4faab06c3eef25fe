//! What a page without script shows: a worked example and a table of all
//! species, made by the same core and the same view as the live answer.

use anyhow::{Result, bail};
use calc::answer::Answer;
use calc::models::season::Local;
use calc::question::{Question, StemTyped, Text, Typed, read};
use calc::reference::Reference;
use calc::terms::species::{Species, Suitability};
use calc_view::out::{Html, escaped};
use calc_view::words::m;
use calc_view::{answer, draw, measure};

/// The example: an invented maple in an invented hedgerow, on a day of its own.
const EXAMPLE: &str = include_str!("../../../../content/examples/front_page.json");
/// The day from which the table speaks: no clock, so that a build is the same
/// on every day.
const NEW_YEAR: &str = "2027-01-01";
/// Trunk sizes of the table, inches.
const SIZES: [&str; 3] = ["6 in", "12 in", "20 in"];

/// The answer to the example.
///
/// # Errors
/// If the example is no good question any more.
pub(crate) fn example(base: &str) -> Result<String> {
    let typed: Typed = serde_json::from_str(EXAMPLE)?;
    let reference = calc_data::whole();
    let (question, answer) = ask(reference, &typed)?;
    let sources = format!("{base}sources/");
    let options = answer::Options {
        heading_level: 2,
        sources_base: &sources,
        ..answer::Options::default()
    };
    let mut out = Html::default();
    draw::mark::defs(&mut out);
    answer::answer(&mut out, reference, &question, &answer, &options);
    Ok(out.into_string())
}

/// One row a species: whether a ring alone suits it, and for three sizes the
/// method at the head, the better width, and how far it can reach.
///
/// # Errors
/// If a row is no good question any more.
pub(crate) fn species_rows() -> Result<String> {
    let reference = calc_data::whole();
    let mut species: Vec<_> = reference.species.iter().collect();
    species.sort_by_key(|species| species.name.to_lowercase());
    let mut rows = String::new();
    for species in species {
        let mut cells = String::new();
        for size in SIZES {
            let (question, answer) = ask(reference, &row(species.names[0], size))?;
            cells.push_str(&format!("<td>{}</td>", escaped(&cell(&question, &answer))));
        }
        let latin = if species.unknown {
            String::new()
        } else {
            format!("<br><i lang=\"la\">{}</i>", escaped(species.scientific))
        };
        rows.push_str(&format!(
            "<tr><th scope=\"row\">{}{latin}</th><td>{}</td>{cells}</tr>\n",
            escaped(species.name),
            suits(species.suitability),
        ));
    }
    Ok(rows)
}

/// A button for each species that can be named, to be found by any of its names.
pub(crate) fn species_choices() -> String {
    let mut species: Vec<_> = calc_data::whole().species.iter().collect();
    species.retain(|species| !species.unknown);
    species.sort_by_key(|species| species.name.to_lowercase());
    let button = |species: &&Species| {
        let said = if species.code.is_empty() {
            species.scientific
        } else {
            species.code
        };
        let mut names = vec![said.to_lowercase(), species.scientific.to_lowercase()];
        names.extend(species.names.iter().map(|name| name.to_lowercase()));
        format!(
            "<button type=\"button\" class=\"btn ghost\" hidden data-said=\"{}\" data-name=\"{}\" data-names=\"{}\">Add {}</button>\n",
            escaped(said),
            escaped(species.name),
            escaped(&names.join("|")),
            escaped(species.name)
        )
    };
    species.iter().map(button).collect()
}

fn row(name: &str, size: &str) -> Typed {
    Typed {
        version: 1,
        species: Some(Text::from(name)),
        stems: vec![StemTyped {
            diameter: Some(Text::from(size)),
            ..StemTyped::default()
        }],
        date: Some(Text::from("year")),
        today: Some(Text::from(NEW_YEAR)),
        none_in_reach: true,
        ..Typed::default()
    }
}

fn ask(reference: &'static Reference, typed: &Typed) -> Result<(Question, Answer)> {
    match read(reference, typed) {
        Ok(question) => {
            let answer = calc::answer::answer(reference, &question, &Local::default());
            Ok((question, answer))
        }
        Err(problems) => bail!("a question of the static pages has problems: {problems:?}"),
    }
}

/// The answer of one cell in a line: method, width of a ring, reach.
fn cell(question: &Question, answer: &Answer) -> String {
    // Where a fact is missing the answer hangs on it, and the cell says the answer if it is so.
    let (open, shown) = match &answer.conditional {
        Some(conditional) => ("If its condition holds: ", conditional.answer.as_ref()),
        None => ("", answer),
    };
    let method = m::method_method(shown.headline_method);
    let ring = shown
        .stems
        .first()
        .and_then(|stem| stem.ring.as_ref())
        .filter(|_| shown.headline_method == calc::terms::method::Method::BarkRing)
        .map_or_else(String::new, |ring| {
            format!(
                ", {} wide",
                measure::ring(ring.better_mm).text(question.units)
            )
        });
    let zone = measure::reach(answer.reach.zone_m).text(question.units);
    format!("{open}{method}{ring}. Zone {zone}.")
}

fn suits(suitability: Suitability) -> &'static str {
    match suitability {
        Suitability::Suitable => "yes",
        Suitability::Followup => "with visits: expect sprouts or bridges",
        Suitability::Conditional => "on a condition: a clone, a disease or a growth form decides",
        Suitability::NotAlone => "not alone: it sprouts or suckers",
        Suitability::NotApplicable => "no: there is no bark ring to cut",
        Suitability::Unknown => "its name decides",
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_pages_without_script_have_an_answer_for_every_species() -> Result<()> {
        let rows = species_rows()?;
        assert_eq!(
            rows.matches("<tr>").count(),
            calc_data::whole().species.len()
        );
        assert!(example("/")?.contains("14½ in"));
        Ok(())
    }
}
