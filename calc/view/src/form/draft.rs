//! An answer to what is there so far: what can't be read yet is left out, so that the tapes and the
//! assumptions beside the fields follow the typing.

use super::FormOptions;
use super::relevant::region_of;
use super::sheet::{clear, entry, slot};
use calc::answer::{Answer, without_changes};
use calc::models::season::Local;
use calc::question::{Found, Keyed, Question, StemTyped, Text, Typed, find_species, read};
use calc::reference::Reference;
use chrono::NaiveDate;

/// A draft of an answer. Where the species or the size is still open, another stands in for it, and only
/// what does not hang on it may be shown.
#[derive(Clone, Debug)]
pub struct Draft {
    /// The question that was answered.
    pub question: Option<Question>,
    /// What was known of its place.
    pub local: Local,
    /// The answer.
    pub answer: Option<Answer>,
    /// Whether the species is known.
    pub named: bool,
    /// Whether a size is known.
    pub sized: bool,
}

/// Rounds of leaving things out: one for what can't be read, one more for what then contradicts.
const ROUNDS: usize = 4;
/// Stands in for a size, so that the season of a species can be shown before its size is known.
const STAND_IN: &str = "10 in";

impl Draft {
    /// Drafts an answer.
    #[must_use]
    pub fn of(reference: &'static Reference, typed: &Typed, options: &FormOptions<'_>) -> Self {
        let today = options.today;
        let mut typed = typed.clone();
        let name = typed.species.clone().unwrap_or_default();
        let named = matches!(
            find_species(reference, name.trimmed(), region_of(&typed)),
            Found::One(_)
        );
        if !named {
            let other = reference.species.iter().find(|species| species.unknown);
            typed.species = other.map(|species| Text::from(species.name));
        }
        let mut sized = true;
        for _ in 0..ROUNDS {
            match read(reference, &typed) {
                Ok(mut question) => {
                    if let Some(group) = options.group {
                        group.settings.apply(&mut question);
                    }
                    let local = (options.local)(&question);
                    let answer = without_changes(reference, &question, &local);
                    return Self {
                        question: Some(question),
                        local,
                        answer: Some(answer),
                        named,
                        sized,
                    };
                }
                Err(problems) => {
                    // From the end, so that the places of what is in front stay true.
                    for problem in problems.iter().rev() {
                        leave_out(&mut typed, &problem.field, today);
                    }
                    if typed.stems.is_empty() {
                        sized = false;
                        typed.stems.push(StemTyped {
                            diameter: Some(Text::from(STAND_IN)),
                            ..StemTyped::default()
                        });
                    }
                }
            }
        }
        Self {
            question: None,
            local: Local::default(),
            answer: None,
            named,
            sized: false,
        }
    }

    /// The answer, where species and size are both known.
    #[must_use]
    pub fn whole(&self) -> Option<&Answer> {
        self.answer.as_ref().filter(|_| self.named && self.sized)
    }

    /// Diameter of the largest stem, millimetres.
    #[must_use]
    pub fn dbh_mm(&self) -> Option<f64> {
        let question = self.question.as_ref().filter(|_| self.sized)?;
        Some(question.tree.largest().dbh.mm())
    }
}

/// What was picked from a list is always known; a host may have set others.
fn clear_picked(typed: &mut Typed) {
    for key in typed.keys().iter().filter(|key| key.picked) {
        clear(slot(typed, key.name));
    }
}

fn leave_out(typed: &mut Typed, field: &str, today: NaiveDate) {
    let key = field.rsplit('.').next().unwrap_or_default();
    let head = field.split(['.', '[']).next().unwrap_or_default();
    let fields: &[&str] = match (head, key) {
        ("stems", "diameter" | "girth") => {
            let at = entry(field, head).filter(|at| *at < typed.stems.len());
            at.map(|at| typed.stems.remove(at));
            &[]
        }
        ("targets", "kind") => {
            let at = entry(field, head).filter(|at| *at < typed.targets.len());
            at.map(|at| typed.targets.remove(at));
            &[]
        }
        ("targets", "distance") if typed.none_in_reach => &["none_in_reach"],
        ("stems", "live_share" | "bark") | ("targets", "distance" | "slope" | "voltage") => {
            &[field]
        }
        ("date" | "today", _) => {
            let iso = Text(calc::terms::day::iso(today));
            typed.date = Some(iso.clone());
            typed.today = Some(iso);
            &[]
        }
        ("spring" | "spring_scale", _) => &["spring", "spring_scale"],
        ("goal" | "spare", _) => &["goal", "spare"],
        (
            "stems" | "targets" | "place" | "leafed_out" | "height" | "height_aid" | "timed"
            | "visit" | "region" | "walk",
            _,
        ) => &[head],
        _ => {
            typed.units.take_if(|units| units.trimmed() != "metric");
            clear_picked(typed);
            &[]
        }
    };
    for field in fields {
        clear(slot(typed, field));
    }
}
