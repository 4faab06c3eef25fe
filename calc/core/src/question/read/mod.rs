//! From what was typed to what was meant. All problems at once; nothing is guessed.

mod numbers;
mod place;
mod stem;
mod target;

use self::numbers::Measure;
use super::problem::Shown;
use super::{
    Code, Condition, Day, Dry, Found, Goal, Herbicide, Limbs, Place, Problem, Question, Reply,
    Setting, Sign, Target, TargetKind, Text, Typed, Vigour, find_species,
};
use crate::model::calibrate::Rate;
use crate::order;
use crate::quantity::{Range, TotalHeight, Unit, Units};
use crate::reference::Reference;
use crate::timing::Hemisphere;

/// The most stems that one tree may have.
const MOST_STEMS: usize = 50;
/// The most targets in one list.
const MOST_TARGETS: usize = 50;
/// Minutes of walking taken, and the pace that turns a distance into minutes: the likely pace of the effort table.
const WALK: Range = Range {
    low: 0.0,
    high: 600.0,
};

/// Reads a question.
///
/// # Errors
/// Every problem of it, in the order of the fields.
pub fn read(reference: &'static Reference, typed: &Typed) -> Result<Question, Vec<Problem>> {
    let mut reader = Reader::new(typed);
    let question = reader.question(reference, typed);
    match question {
        Some(question) if reader.problems.is_empty() => {
            let beside = beside_nothing(reference, &question);
            if beside.is_empty() {
                Ok(question)
            } else {
                Err(beside)
            }
        }
        _ => Err(reader.problems),
    }
}

/// A target within two heights beside "nothing in reach": one of the two is wrong, and only the asker knows which.
fn beside_nothing(reference: &'static Reference, question: &Question) -> Vec<Problem> {
    if !question.none_in_reach {
        return Vec::new();
    }
    let hazard = crate::model::height::hazard_m(reference, question);
    let two = hazard * reference.constants.reach.people_out;
    let counts = |target: &Target| !matches!(target.kind, TargetKind::Fence | TargetKind::KeepTree);
    question
        .targets
        .iter()
        .enumerate()
        .filter(|(_, target)| counts(target))
        .filter(|(_, target)| target.distance.is_none_or(|distance| distance.m() < two))
        .map(|(at, target)| {
            let code = Code::NoneBesideTarget {
                beside: "none_in_reach",
                two_heights_m: target.distance.map(|_| two),
            };
            Problem::new(format!("targets[{at}].distance"), code, target.kind.word())
        })
        .collect()
}

struct Reader {
    units: Units,
    problems: Vec<Problem>,
}

impl Reader {
    fn new(typed: &Typed) -> Self {
        let mut reader = Self {
            units: Units::Us,
            problems: Vec::new(),
        };
        match typed.units.as_ref().map(Text::trimmed) {
            None | Some("us" | "") => {}
            Some("metric") => reader.units = Units::Metric,
            Some(other) => reader.problem("units", Code::NotOneOf(&["us", "metric"]), other),
        }
        reader
    }

    fn problem(&mut self, field: impl Into<String>, code: Code, typed: &str) {
        self.problems.push(Problem::new(field, code, typed));
    }

    fn question(&mut self, reference: &'static Reference, typed: &Typed) -> Option<Question> {
        if typed.version != 1 {
            self.problem("version", Code::WrongVersion, "");
        }
        let species = self.species(reference, typed.species.as_ref());
        let stems = self.stems(&typed.stems);
        let day = self.day(typed);
        let place = typed
            .place
            .as_ref()
            .map_or(Some(Place::Hemisphere(Hemisphere::North)), |place| {
                self.place("place", place)
            });
        let region = self.region(typed.region.as_ref());
        let leafed_out = typed
            .leafed_out
            .as_ref()
            .and_then(|seen| self.leafed_out(seen));
        if let (Some(seen), Some(Day::On(asked))) = (leafed_out, day)
            && (asked - seen.date).num_days().abs() > 365
        {
            let date = typed.leafed_out.as_ref().and_then(|seen| seen.date.clone());
            self.problem(
                "leafed_out.date",
                Code::OtherSeason,
                &date.unwrap_or_default().0,
            );
        }
        let spring = self.spring(typed, day, place.as_ref());
        let height = self
            .length("height", typed.height.as_ref(), Measure::Height)
            .and_then(|mm| TotalHeight::new(mm / 1000.0));
        let targets = self.targets(&typed.targets);
        let goal = self.goal(typed, stems.as_ref().map_or(0, Vec::len));
        Some(Question {
            units: self.units,
            line_within_reach: self.word_or(
                "line_within_reach",
                typed.line_within_reach.as_ref(),
                Reply::WORDS,
                None,
                |w| Reply::parse(w).map(Some),
            ),
            setting: self.word_or(
                "setting",
                typed.setting.as_ref(),
                Setting::WORDS,
                Setting::Woods,
                Setting::parse,
            ),
            condition: self.word_or(
                "condition",
                typed.condition.as_ref(),
                Condition::WORDS,
                Condition::Alive,
                Condition::parse,
            ),
            herbicide: self.word_or(
                "herbicide",
                typed.herbicide.as_ref(),
                Herbicide::WORDS,
                Herbicide::NotSaid,
                Herbicide::parse,
            ),
            whole_clone: self.yes_no("whole_clone", typed.whole_clone.as_ref()),
            same_genus_near: self.yes_no("same_genus_near", typed.same_genus_near.as_ref()),
            vigour: self.word_or(
                "vigour",
                typed.vigour.as_ref(),
                Vigour::WORDS,
                Vigour::Ordinary,
                Vigour::parse,
            ),
            dry_spell: self.word_or(
                "dry_spell",
                typed.dry_spell.as_ref(),
                Dry::WORDS,
                Dry::None,
                Dry::parse,
            ),
            limbs: self.word_or(
                "limbs",
                typed.limbs.as_ref(),
                Limbs::WORDS,
                Limbs::None,
                Limbs::parse,
            ),
            signs: self.signs(&typed.signs),
            walk_min: self.walk(reference, typed.walk.as_ref()),
            none_in_reach: typed.none_in_reach,
            height_confirmed: typed.height_confirmed,
            practised: typed.practised,
            rate: self.rate(typed),
            cannot_wait: typed.cannot_wait,
            species: species?,
            stems: stems?,
            day: day?,
            place: place?,
            goal: goal?,
            region,
            leafed_out,
            spring,
            height,
            targets,
        })
    }

    /// A rate that calibration can't have given is refused: it would make any number of minutes.
    fn rate(&mut self, typed: &Typed) -> Option<Rate> {
        let rate = typed.rate?;
        if !rate.is_sound() {
            self.problem("rate", Code::NotRate, "");
        }
        Some(rate)
    }

    fn species(
        &mut self,
        reference: &'static Reference,
        typed: Option<&Text>,
    ) -> Option<&'static crate::reference::Species> {
        let Some(text) = typed.filter(|text| !text.is_empty()) else {
            self.problem("species", Code::Missing, "");
            return None;
        };
        match find_species(reference.species, text.trimmed()) {
            Found::One(species) => Some(species),
            Found::Like(names) => {
                self.problem("species", Code::UnknownSpecies(names), text.trimmed());
                None
            }
        }
    }

    fn walk(&mut self, reference: &Reference, typed: Option<&Text>) -> Option<f64> {
        let text = typed.filter(|text| !text.is_empty())?;
        let number = self.number("walk", text.trimmed())?;
        let minutes = match number.unit {
            None | Some(Unit::Minute) => number.value,
            Some(unit) => match unit.in_mm() {
                Some(scale) => {
                    number.value * scale / 1000.0 / reference.constants.effort.walk_m_per_min
                }
                None => {
                    self.problem("walk", Code::WrongUnit, text.trimmed());
                    return None;
                }
            },
        };
        if !WALK.holds(minutes) {
            let shown = Shown {
                range: WALK,
                unit: "min",
            };
            self.problem("walk", Code::OutOfRange(shown), text.trimmed());
            return None;
        }
        Some(minutes)
    }

    fn signs(&mut self, typed: &[Text]) -> Vec<Sign> {
        let mut signs = Vec::new();
        for (at, text) in typed.iter().take(MOST_TARGETS).enumerate() {
            match Sign::parse(text.trimmed()) {
                Some(sign) if !signs.contains(&sign) => signs.push(sign),
                Some(_) => {}
                None => {
                    let field = format!("signs[{at}]");
                    self.problem(field, Code::NotOneOf(Sign::WORDS), text.trimmed());
                }
            }
        }
        order::sort(&mut signs, |a, b| a < b);
        signs
    }

    fn goal(&mut self, typed: &Typed, stems: usize) -> Option<Goal> {
        match typed.goal.as_ref().map(Text::trimmed) {
            None | Some("" | "wildlife") => Some(Goal::Wildlife),
            Some("kill") => Some(Goal::Kill),
            Some("spare_one") => {
                let spare = typed.spare.map(|index| index as usize);
                match spare {
                    None => {
                        self.problem("spare", Code::Missing, "");
                        None
                    }
                    // With no list at all the stems have their own problem.
                    Some(index) if stems > 1 && index < stems => Some(Goal::SpareOne(index)),
                    Some(index) if stems == 0 => Some(Goal::SpareOne(index)),
                    Some(_) => {
                        self.problem("spare", Code::NoSuchStem, "");
                        None
                    }
                }
            }
            Some(other) => {
                self.problem("goal", Code::NotOneOf(Goal::WORDS), other);
                None
            }
        }
    }

    fn yes_no(&mut self, field: &str, typed: Option<&Text>) -> Option<bool> {
        let words: &'static [&'static str] = &["not_said", "yes", "no"];
        self.word_or(field, typed, words, None, |word| match word {
            "not_said" => Some(None),
            "yes" => Some(Some(true)),
            "no" => Some(Some(false)),
            _ => None,
        })
    }

    fn word_or<T>(
        &mut self,
        field: &str,
        typed: Option<&Text>,
        words: &'static [&'static str],
        empty: T,
        parse: impl Fn(&str) -> Option<T>,
    ) -> T {
        match typed.filter(|text| !text.is_empty()) {
            None => empty,
            Some(text) => match parse(text.trimmed()) {
                Some(value) => value,
                None => {
                    self.problem(field, Code::NotOneOf(words), text.trimmed());
                    empty
                }
            },
        }
    }
}
