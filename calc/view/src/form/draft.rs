//! An answer to what is there so far: what can't be read yet is left out, so that the tapes and the
//! assumptions beside the fields follow the typing.

use super::Options;
use calc::answer::{Answer, without_changes};
use calc::model::season::Local;
use calc::question::{Found, Question, StemTyped, Text, Typed, find_species, read};
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
    pub fn of(reference: &'static Reference, typed: &Typed, options: &Options<'_>) -> Self {
        let today = options.today;
        let mut typed = typed.clone();
        let name = typed.species.clone().unwrap_or_default();
        let named = matches!(
            find_species(reference.species, name.trimmed()),
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
                    question.group = options.group.cloned();
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
        Some(question.largest().dbh.mm())
    }
}

fn leave_out(typed: &mut Typed, field: &str, today: NaiveDate) {
    let at = || {
        let number = field.split_once('[')?.1.split_once(']')?.0;
        number.bytes().try_fold(0_usize, |sum, c| {
            c.is_ascii_digit().then(|| sum * 10 + usize::from(c - b'0'))
        })
    };
    let key = field.rsplit('.').next().unwrap_or_default();
    let head = field.split(['.', '[']).next().unwrap_or_default();
    match (head, key) {
        ("stems", "live_share" | "bark") => {
            if let Some(stem) = at().and_then(|at| typed.stems.get_mut(at)) {
                match key {
                    "bark" => stem.bark = None,
                    _ => stem.live_share = None,
                }
            }
        }
        ("stems", "diameter" | "girth") => {
            if let Some(at) = at().filter(|at| *at < typed.stems.len()) {
                typed.stems.remove(at);
            }
        }
        ("stems", _) => typed.stems.clear(),
        ("targets", "distance") if typed.none_in_reach => typed.none_in_reach = false,
        ("targets", "distance" | "slope" | "voltage") => {
            if let Some(target) = at().and_then(|at| typed.targets.get_mut(at)) {
                match key {
                    "distance" => target.distance = None,
                    "slope" => target.slope = None,
                    _ => target.voltage = None,
                }
            }
        }
        ("targets", "kind") => {
            if let Some(at) = at().filter(|at| *at < typed.targets.len()) {
                typed.targets.remove(at);
            }
        }
        ("targets", _) => typed.targets.clear(),
        ("date" | "today", _) => {
            let iso = Text(calc::answer::iso(today));
            typed.date = Some(iso.clone());
            typed.today = Some(iso);
        }
        ("place", _) => typed.place = None,
        ("spring" | "spring_scale", _) => {
            typed.spring = None;
            typed.spring_scale = None;
        }
        ("leafed_out", _) => typed.leafed_out = None,
        ("height", _) => typed.height = None,
        ("height_aid", _) => typed.height_aid = None,
        ("timed", _) => typed.timed = None,
        ("visit", _) => typed.visit = None,
        ("region", _) => typed.region = None,
        ("goal" | "spare", _) => {
            typed.goal = None;
            typed.spare = None;
        }
        ("walk", _) => typed.walk = None,
        _ => {
            // Words picked from a list are always known; a host may have set others.
            typed.setting = None;
            typed.condition = None;
            typed.herbicide = None;
            typed.whole_clone = None;
            typed.same_genus_near = None;
            typed.vigour = None;
            typed.dry_spell = None;
            typed.limbs = None;
            typed.line_within_reach = None;
            typed.units = typed
                .units
                .take()
                .filter(|units| units.trimmed() == "metric");
            typed.signs.clear();
        }
    }
}
