//! From what was typed to what was meant. All problems at once; nothing is guessed.

mod aids;
mod numbers;
mod place;
mod stem;
mod target;

pub use self::aids::{height_aid as read_height_aid, timed as read_timed};

use self::numbers::NumberOf;
use super::fields::{MOST_TARGETS, WALK};
use super::problem::Shown;
use super::{
    Code, Day, Found, NotListed, PlaceTyped, Problem, Question, Text, Typed, find_species, read_day,
};
use crate::models::calibrate::Rate;
use crate::models::effort::Pace;
use crate::models::grown;
use crate::models::height;
use crate::reference::Reference;
use crate::terms::number::Unit;
use crate::terms::place::Hemisphere;
use crate::terms::place::{Grown, Place};
use crate::terms::quantity::{TotalHeight, Units};
use crate::terms::small::decimals::fixed;
use crate::terms::small::sort::sort;
use crate::terms::tighten::Tighten;
use crate::terms::tree::Tree;
use crate::terms::tree::{Condition, DrySpell, Goal, Herbicide, Limbs, Setting, Sign, Vigour};
use crate::terms::words::Word;

/// Reads a question.
///
/// # Errors
/// Every problem of it, in the order of the fields.
///
/// ```
/// use calc::question::{Typed, read};
/// let reference = calc_data::whole();
/// let nothing = Typed { version: 1, ..Typed::default() };
/// let problems = read(reference, &nothing).expect_err("nothing was typed");
/// assert_eq!((problems[0].field.as_str(), problems[0].code.name()), ("species", "missing"));
/// ```
pub fn read(reference: &'static Reference, typed: &Typed) -> Result<Question, Vec<Problem>> {
    let mut reader = Reader::new(typed);
    let question = reader.question(reference, typed);
    match question {
        Some(question) if reader.problems.is_empty() => {
            let beside = beside_nothing(reference, &question);
            if !beside.is_empty() {
                return Err(beside);
            }
            aids::rate(reference, question, typed)
        }
        _ => Err(reader.problems),
    }
}

/// What is wrong with a place and a region alone, as a group's settings have them.
#[must_use]
pub fn problems_of_place(
    units: Units,
    place: Option<&PlaceTyped>,
    region: &Option<Text>,
) -> Vec<Problem> {
    let mut reader = Reader {
        units,
        problems: Vec::new(),
    };
    if let Some(place) = place {
        reader.place("place", place);
    }
    reader.region(region);
    reader.problems
}

/// A target within two heights beside "nothing in reach": one of the two is wrong, and only the asker knows which.
fn beside_nothing(reference: &'static Reference, question: &Question) -> Vec<Problem> {
    if !question.tree.none_in_reach {
        return Vec::new();
    }
    let hazard = height::hazard_m(&reference.heights(), &question.tree);
    let two = hazard * reference.constants.reach.people_out;
    question
        .tree
        .targets
        .iter()
        .enumerate()
        .filter(|(_, target)| target.kind.counts())
        .filter(|(_, target)| {
            target
                .distance
                .is_none_or(|distance| crate::models::reach::nearer(distance.m(), two))
        })
        .map(|(at, target)| {
            let code = Code::NoneBesideTarget {
                beside: "none_in_reach",
                two_heights_m: target.distance.map(|_| two),
            };
            let field = entry("targets", at, "distance");
            Problem::new(field, code, target.kind.word())
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
        if reader.choice("units", &typed.units, &["us", "metric"]) == Some(1) {
            reader.units = Units::Metric;
        }
        reader
    }

    fn problem(&mut self, field: &str, code: Code, typed: &str) {
        self.problems.push(Problem::new(field, code, typed));
    }

    fn question(&mut self, reference: &'static Reference, typed: &Typed) -> Option<Question> {
        if typed.version != 1 {
            self.problem("version", Code::WrongVersion, "");
        }
        // The region says what a name means; what is wrong with it is told in its place.
        let mut aside = Reader {
            units: self.units,
            problems: Vec::new(),
        };
        let region = aside.region(&typed.region);
        let species = self.species_in("species", reference, &typed.species, region.as_deref());
        let ask_over_mm = match typed.size_confirmed {
            true => f64::INFINITY,
            false => reference.constants.answer.ask_trunk_mm,
        };
        let stems = self.stems(&typed.stems, ask_over_mm);
        let day = self.day(typed);
        let place = typed
            .place
            .as_ref()
            .map_or(Some(Place::Hemisphere(Hemisphere::North)), |place| {
                self.place("place", place)
            });
        self.problems.append(&mut aside.problems);
        let place = place.map(|place| settled_by(reference, region.as_deref(), place));
        let leafed_out = typed
            .leafed_out
            .as_ref()
            .and_then(|seen| self.leafed_out(seen));
        if let (Some(seen), Some(Day::On(asked))) = (leafed_out, day)
            && (asked - seen.date).num_days().abs() > 365
        {
            let date = typed.leafed_out.as_ref();
            let date = date.and_then(|seen| seen.date.as_ref());
            let text = date.map_or("", |text| &text.0);
            self.problem("leafed_out.date", Code::OtherSeason, text);
        }
        let spring = self.spring(typed, day, place.as_ref(), &reference.constants.timing);
        let height = self
            .length("height", &typed.height, NumberOf::Height)
            .and_then(|mm| TotalHeight::new(mm / 1000.0));
        let aid = typed.height_aid.as_ref().and_then(|aid| self.aid(aid));
        let least_m = reference.constants.height.least_m;
        let low = |height: TotalHeight| crate::models::reach::nearer(height.m(), least_m);
        if height.is_some_and(low) {
            let text = given(&typed.height).unwrap_or("");
            self.problem("height", Code::HeightBelowDiameter, text);
        } else if height.is_none() && aid.is_some_and(|(_, height)| low(height)) {
            self.problem("height_aid.by", Code::HeightBelowDiameter, "");
        }
        let visit = typed
            .visit
            .as_ref()
            .and_then(|visit| self.visit(typed, visit));
        let targets = self.targets(&typed.targets);
        let goal = self.goal(typed, stems.as_ref().map_or(0, Vec::len));
        let line_within_reach = self.word_of("line_within_reach", &typed.line_within_reach);
        let setting: Setting = self.word("setting", &typed.setting);
        let condition: Condition = self.word("condition", &typed.condition);
        let herbicide: Herbicide = self.word("herbicide", &typed.herbicide);
        let whole_clone = self.yes_no("whole_clone", &typed.whole_clone);
        let same_genus_near = self.yes_no("same_genus_near", &typed.same_genus_near);
        let vigour: Vigour = self.word("vigour", &typed.vigour);
        let dry_spell: DrySpell = self.word("dry_spell", &typed.dry_spell);
        let limbs: Limbs = self.word("limbs", &typed.limbs);
        let signs = self.signs(&typed.signs);
        let pace = Pace {
            walk_min: self.walk(reference, &typed.walk),
            practised: typed.practised,
            rate: self.rate(reference, typed),
        };
        let height_by = aid
            .filter(|(_, aid)| height.is_none_or(|height| aids::agree(height, *aid)))
            .map(|(by, _)| by);
        let tree = Tree {
            species: species?,
            stems: stems?,
            setting,
            grown: grown(reference, region.as_deref(), place.as_ref()?),
            height: height.or(aid.map(|(_, height)| height)),
            height_confirmed: typed.height_confirmed,
            targets,
            line_within_reach,
            none_in_reach: typed.none_in_reach,
            condition,
            signs,
            vigour,
            limbs,
            whole_clone,
            same_genus_near,
            goal: goal?,
            herbicide,
            tighten: Tighten::default(),
        };
        Some(Question {
            tree,
            units: self.units,
            day: day?,
            today: given(&typed.today).and_then(|text| read_day(text).ok()),
            place: place?,
            region,
            leafed_out,
            spring,
            dry_spell,
            height_by,
            pace,
            timed: None,
            cannot_wait: typed.cannot_wait,
            group: None,
            visit,
        })
    }

    /// A rate that calibration can't have given is refused: it would make any number of minutes.
    fn rate(&mut self, reference: &Reference, typed: &Typed) -> Option<Rate> {
        let rate = typed.rate?;
        if !rate.is_sound(&reference.constants.effort) {
            self.problem("rate", Code::NotRate, "");
        }
        Some(rate)
    }

    fn species_in(
        &mut self,
        field: &str,
        reference: &'static Reference,
        typed: &Option<Text>,
        region: Option<&str>,
    ) -> Option<&'static crate::terms::species::Species> {
        let text = self.needed(field, typed)?;
        let code = match find_species(reference, text, region) {
            Found::One(species) => return Some(species),
            Found::Other(other) => Code::NotListed(NotListed::of(other, region)),
            Found::Like(names) => Code::UnknownSpecies(names),
            Found::NotHere => Code::NamesNotHere,
        };
        self.problem(field, code, text);
        None
    }

    fn walk(&mut self, reference: &Reference, typed: &Option<Text>) -> Option<f64> {
        let text = given(typed)?;
        let number = self.number("walk", text)?;
        let minutes = match number.unit {
            None | Some(Unit::Minute) => number.value,
            Some(unit) => match unit.in_mm() {
                Some(scale) => {
                    number.value * scale / 1000.0 / reference.constants.effort.walk_m_per_min
                }
                None => {
                    self.problem("walk", Code::WrongUnit, text);
                    return None;
                }
            },
        };
        if !WALK.holds(minutes) {
            let shown = Shown {
                range: WALK,
                unit: "min",
            };
            self.problem("walk", Code::OutOfRange(shown), text);
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
                    let field = entry("signs", at, "");
                    self.problem(&field, Code::NotOneOf(Sign::WORDS), text.trimmed());
                }
            }
        }
        sort(&mut signs, |a, b| a < b);
        signs
    }

    fn goal(&mut self, typed: &Typed, stems: usize) -> Option<Goal> {
        let at = self.choice("goal", &typed.goal, Goal::WORDS);
        match at {
            None if given(&typed.goal).is_some() => return None,
            None | Some(0) => return Some(Goal::Wildlife),
            Some(1) => return Some(Goal::Kill),
            Some(_) => {}
        }
        let code = match typed.spare.map(|index| index as usize) {
            // With no list at all the stems have their own problem.
            Some(index) if stems == 0 || (stems > 1 && index < stems) => {
                return Some(Goal::SpareOne(index));
            }
            Some(_) => Code::NoSuchStem,
            None => Code::Missing,
        };
        self.problem("spare", code, "");
        None
    }

    fn yes_no(&mut self, field: &str, typed: &Option<Text>) -> Option<bool> {
        let at = self.choice(field, typed, &["not_said", "yes", "no"])?;
        (at > 0).then_some(at == 1)
    }

    /// The value of a word; its default for a field left empty, and beside a problem.
    fn word<W: Word + Default>(&mut self, field: &str, typed: &Option<Text>) -> W {
        self.word_of(field, typed).unwrap_or_default()
    }

    /// The value of a word; none for a field left empty, and beside a problem.
    fn word_of<W: Word>(&mut self, field: &str, typed: &Option<Text>) -> Option<W> {
        let at = self.choice(field, typed, W::WORDS)?;
        W::ALL.get(at).copied()
    }

    /// Which of the words was typed; none when nothing was, or something else, which is a problem.
    /// One reader of words for all fields: each kind of its own would cost bytes in the browser.
    fn choice(
        &mut self,
        field: &str,
        typed: &Option<Text>,
        words: &'static [&'static str],
    ) -> Option<usize> {
        let text = given(typed)?;
        let at = words.iter().position(|word| *word == text);
        if at.is_none() {
            self.problem(field, Code::NotOneOf(words), text);
        }
        at
    }

    /// What was typed in a field that is needed; nothing is a problem.
    fn needed<'a>(&mut self, field: &str, typed: &'a Option<Text>) -> Option<&'a str> {
        let text = given(typed);
        if text.is_none() {
            self.problem(field, Code::Missing, "");
        }
        text
    }
}

/// A state or country settles the half of the world.
fn settled_by(reference: &Reference, region: Option<&str>, place: Place) -> Place {
    match (
        region.and_then(|code| grown::region(reference.regions, code)),
        place,
    ) {
        (Some(region), Place::Hemisphere(_)) => Place::Hemisphere(if region.south {
            Hemisphere::South
        } else {
            Hemisphere::North
        }),
        (_, place) => place,
    }
}

/// Where the tree grew.
fn grown(reference: &Reference, region: Option<&str>, place: &Place) -> Grown {
    let point = match place {
        Place::Point {
            latitude,
            longitude,
            ..
        } => Some((*latitude, *longitude)),
        Place::Hemisphere(_) => None,
    };
    grown::of(
        reference.regions,
        &reference.constants.grown,
        region,
        point,
        place.hemisphere() == Hemisphere::South,
    )
}

/// What was typed, without space round it; none for nothing.
fn given(typed: &Option<Text>) -> Option<&str> {
    let text = typed.as_ref()?.trimmed();
    (!text.is_empty()).then_some(text)
}

/// The path of a field inside an entry of a list: `stems[0].diameter`, or of the entry itself: `signs[0]`.
/// Put together by hand: the formatter would come into the browser with it.
fn entry(list: &str, at: usize, name: &str) -> String {
    let dot = if name.is_empty() { "" } else { "." };
    [list, "[", &fixed(at as f64, 0), "]", dot, name].concat()
}
