//! From what was typed to what was meant. All problems at once; nothing is guessed.

use super::{
    Code, Condition, Day, Dry, Found, Goal, Herbicide, LeafOut, LeafOutTyped, Limbs, Place,
    PlaceTyped, Problem, Question, Reply, Setting, Sign, Stage, Stem, StemTyped, Target,
    TargetKind, TargetTyped, Text, Typed, Vigour, find_species, read_day,
};
use crate::quantity::{
    BarkThickness, Dbh, Elevation, M_PER_FT, MM_PER_IN, NotNumber, Range, Slope, TargetDistance,
    TotalHeight, Unit, Units, Voltage, read_number,
};
use crate::question::problem::Shown;
use crate::reference::Reference;
use crate::timing::spring::{self, Doubt, Scale, Table};
use crate::timing::{Hemisphere, Rates};

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

/// What a bare number of a field means, and which units it may carry.
#[derive(Clone, Copy)]
enum Measure {
    Trunk,
    Bark,
    Ground,
    Height,
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

    fn stems(&mut self, typed: &[StemTyped]) -> Option<Vec<Stem>> {
        if typed.is_empty() {
            self.problem("stems", Code::NoStem, "");
            return None;
        }
        if typed.len() > MOST_STEMS {
            self.problem("stems", Code::TooManyStems(MOST_STEMS), "");
            return None;
        }
        let stems: Vec<Option<Stem>> = typed
            .iter()
            .enumerate()
            .map(|(at, stem)| self.stem(at, stem))
            .collect();
        stems.into_iter().collect()
    }

    fn stem(&mut self, at: usize, typed: &StemTyped) -> Option<Stem> {
        let field = |name: &str| format!("stems[{at}].{name}");
        let given = |text: &Option<Text>| text.as_ref().is_some_and(|text| !text.is_empty());
        let from_girth = given(&typed.girth);
        let dbh = match (given(&typed.diameter), from_girth) {
            (true, true) => {
                let girth = typed.girth.clone().unwrap_or_default();
                self.problem(field("girth"), Code::Both, &girth.0);
                None
            }
            (false, false) => {
                self.problem(field("diameter"), Code::Neither, "");
                None
            }
            (true, false) => self.size(field("diameter"), typed.diameter.as_ref(), 1.0),
            (false, true) => self.size(field("girth"), typed.girth.as_ref(), core::f64::consts::PI),
        };
        let live_share = self.live_share(field("live_share"), typed.live_share.as_ref());
        let bark = self.length(&field("bark"), typed.bark.as_ref(), Measure::Bark);
        if let (Some(dbh), Some(bark)) = (dbh, bark)
            && bark * 2.0 >= dbh.mm()
        {
            let shown = self.shown(
                Range {
                    low: 0.0,
                    high: dbh.mm() / 2.0,
                },
                Measure::Bark,
            );
            let text = typed.bark.clone().unwrap_or_default();
            self.problem(field("bark"), Code::BarkTooThick(shown), &text.0);
        }
        Some(Stem {
            dbh: dbh?,
            from_girth,
            live_share: live_share?,
            bark: bark.and_then(BarkThickness::new),
        })
    }

    /// A diameter, or a girth where `round` is pi.
    fn size(&mut self, field: String, typed: Option<&Text>, round: f64) -> Option<Dbh> {
        let range = Range {
            low: Dbh::RANGE.low * round,
            high: Dbh::RANGE.high * round,
        };
        let mm = self.length_in(&field, typed, Measure::Trunk, range)?;
        // Rounding at the very end of the range must not lose a girth that was taken.
        Dbh::new((mm / round).clamp(Dbh::RANGE.low, Dbh::RANGE.high))
    }

    fn live_share(&mut self, field: String, typed: Option<&Text>) -> Option<f64> {
        let percent = Range {
            low: 0.0,
            high: 100.0,
        };
        match typed.filter(|text| !text.is_empty()) {
            None => Some(1.0),
            Some(text) => self
                .plain(&field, text, Unit::Percent, "%", percent)
                .map(|share| share / 100.0),
        }
    }

    /// A length in millimetres, within the range of its kind.
    fn length(&mut self, field: &str, typed: Option<&Text>, measure: Measure) -> Option<f64> {
        let scale = |range: Range| Range {
            low: range.low * 1000.0,
            high: range.high * 1000.0,
        };
        let range = match measure {
            Measure::Trunk => Dbh::RANGE,
            Measure::Bark => BarkThickness::RANGE,
            Measure::Ground => scale(TargetDistance::RANGE),
            Measure::Height => scale(TotalHeight::RANGE),
        };
        self.length_in(field, typed, measure, range)
    }

    fn length_in(
        &mut self,
        field: &str,
        typed: Option<&Text>,
        measure: Measure,
        range: Range,
    ) -> Option<f64> {
        let text = typed.filter(|text| !text.is_empty())?.trimmed();
        let number = self.number(field, text)?;
        let bare = match (measure, self.units) {
            (Measure::Trunk | Measure::Bark, Units::Us) => Unit::Inch,
            (Measure::Trunk, Units::Metric) => Unit::Centimetre,
            (Measure::Bark, Units::Metric) => Unit::Millimetre,
            (Measure::Ground | Measure::Height, Units::Us) => Unit::Foot,
            (Measure::Ground | Measure::Height, Units::Metric) => Unit::Metre,
        };
        let Some(scale) = number.unit.unwrap_or(bare).in_mm() else {
            self.problem(field, Code::WrongUnit, text);
            return None;
        };
        let mm = number.value * scale;
        // A target may stand at the trunk itself; every other length is above zero.
        if mm < 0.0 || (mm == 0.0 && range.low > 0.0) {
            self.problem(field, Code::NotPositive, text);
            return None;
        }
        if !range.holds(mm) {
            let shown = self.shown(range, measure);
            self.problem(field, Code::OutOfRange(shown), text);
            return None;
        }
        Some(mm)
    }

    /// A range in millimetres, in the unit that the asker uses for such a thing.
    fn shown(&self, mm: Range, measure: Measure) -> Shown {
        let (scale, unit) = match (measure, self.units) {
            (Measure::Trunk | Measure::Bark, Units::Us) => (MM_PER_IN, "in"),
            (Measure::Trunk, Units::Metric) => (10.0, "cm"),
            (Measure::Bark, Units::Metric) => (1.0, "mm"),
            (Measure::Ground | Measure::Height, Units::Us) => (M_PER_FT * 1000.0, "ft"),
            (Measure::Ground | Measure::Height, Units::Metric) => (1000.0, "m"),
        };
        Shown {
            range: Range {
                low: mm.low / scale,
                high: mm.high / scale,
            },
            unit,
        }
    }

    fn number(&mut self, field: &str, text: &str) -> Option<crate::quantity::Number> {
        match read_number(text) {
            Ok(number) => Some(number),
            Err(why) => {
                let code = match why {
                    NotNumber::Empty => Code::Missing,
                    NotNumber::Unreadable => Code::NotNumber,
                    NotNumber::Ambiguous => Code::Ambiguous,
                    NotNumber::TooLong => Code::TooLong,
                    NotNumber::UnknownUnit => Code::WrongUnit,
                };
                self.problem(field, code, text);
                None
            }
        }
    }

    /// A number in one unit only.
    fn plain(
        &mut self,
        field: &str,
        text: &Text,
        unit: Unit,
        sign: &'static str,
        range: Range,
    ) -> Option<f64> {
        let number = self.number(field, text.trimmed())?;
        if number.unit.is_some_and(|typed| typed != unit) {
            self.problem(field, Code::WrongUnit, text.trimmed());
            return None;
        }
        if !range.holds(number.value) {
            let shown = Shown { range, unit: sign };
            self.problem(field, Code::OutOfRange(shown), text.trimmed());
            return None;
        }
        Some(number.value)
    }

    fn day(&mut self, typed: &Typed) -> Option<Day> {
        let Some(text) = typed.date.as_ref().filter(|text| !text.is_empty()) else {
            self.problem("date", Code::Missing, "");
            return None;
        };
        if text.trimmed() != "year" {
            return self.date("date", text).map(Day::On);
        }
        match typed.today.as_ref() {
            Some(today) => self.date("today", today).map(|today| Day::Year { today }),
            None => {
                self.problem("today", Code::Missing, "");
                None
            }
        }
    }

    fn date(&mut self, field: &str, text: &Text) -> Option<chrono::NaiveDate> {
        match read_day(text.trimmed()) {
            Ok(day) => Some(day),
            Err(code) => {
                self.problem(field, code, text.trimmed());
                None
            }
        }
    }

    fn place(&mut self, field: &str, typed: &PlaceTyped) -> Option<Place> {
        let given = |text: &Option<Text>| text.clone().filter(|text| !text.is_empty());
        let (latitude, longitude) = (given(&typed.latitude), given(&typed.longitude));
        if latitude.is_none() && longitude.is_none() {
            return match typed.hemisphere.as_ref().map(Text::trimmed) {
                None | Some("north" | "") => Some(Place::Hemisphere(Hemisphere::North)),
                Some("south") => Some(Place::Hemisphere(Hemisphere::South)),
                Some(other) => {
                    let words = &["north", "south"];
                    self.problem(format!("{field}.hemisphere"), Code::NotOneOf(words), other);
                    None
                }
            };
        }
        let (Some(latitude), Some(longitude)) = (latitude, longitude) else {
            self.problem(field, Code::HalfPlace, "");
            return None;
        };
        let degrees = |most: f64| Range {
            low: -most,
            high: most,
        };
        let lat_field = format!("{field}.latitude");
        let lon_field = format!("{field}.longitude");
        let latitude = self.plain(&lat_field, &latitude, Unit::Percent, "°", degrees(90.0));
        let longitude = self.plain(&lon_field, &longitude, Unit::Percent, "°", degrees(180.0));
        let elevation = self.elevation(&format!("{field}.elevation"), typed.elevation.as_ref());
        Some(Place::Point {
            latitude: latitude?,
            longitude: longitude?,
            elevation,
        })
    }

    fn elevation(&mut self, field: &str, typed: Option<&Text>) -> Option<f64> {
        let text = typed.filter(|text| !text.is_empty())?;
        let number = self.number(field, text.trimmed())?;
        let bare = match self.units {
            Units::Us => Unit::Foot,
            Units::Metric => Unit::Metre,
        };
        let Some(scale) = number.unit.unwrap_or(bare).in_mm() else {
            self.problem(field, Code::WrongUnit, text.trimmed());
            return None;
        };
        let m = number.value * scale / 1000.0;
        let taken = Elevation::new(m);
        if taken.is_none() {
            let range = Elevation::RANGE;
            let mm = Range {
                low: range.low * 1000.0,
                high: range.high * 1000.0,
            };
            let shown = self.shown(mm, Measure::Ground);
            self.problem(field, Code::OutOfRange(shown), text.trimmed());
        }
        taken.map(Elevation::m)
    }

    /// `US-WI` or `GB`: two letters, and up to three letters or digits behind a dash (ISO 3166).
    fn region(&mut self, typed: Option<&Text>) -> Option<String> {
        let text = typed.filter(|text| !text.is_empty())?.trimmed();
        let code = text.to_ascii_uppercase();
        let (country, part) = code.split_once('-').unwrap_or((&code, "-"));
        let letters = country.len() == 2 && country.bytes().all(|c| c.is_ascii_uppercase());
        let rest = part == "-"
            || ((1..=3).contains(&part.len()) && part.bytes().all(|c| c.is_ascii_alphanumeric()));
        if letters && rest {
            return Some(code);
        }
        self.problem("region", Code::NotRegion, text);
        None
    }

    fn leafed_out(&mut self, typed: &LeafOutTyped) -> Option<LeafOut> {
        let stage = match typed.stage.as_ref().filter(|text| !text.is_empty()) {
            None => {
                self.problem("leafed_out.stage", Code::Missing, "");
                None
            }
            Some(text) => {
                let stage = Stage::parse(text.trimmed());
                if stage.is_none() {
                    let code = Code::NotOneOf(Stage::WORDS);
                    self.problem("leafed_out.stage", code, text.trimmed());
                }
                stage
            }
        };
        let date = match typed.date.as_ref().filter(|text| !text.is_empty()) {
            None => {
                self.problem("leafed_out.date", Code::Missing, "");
                None
            }
            Some(text) => self.date("leafed_out.date", text),
        };
        let rates = match typed.rates.as_ref().map(Text::trimmed) {
            None | Some("" | "fitted") => Some(Rates::Fitted),
            Some("hopkins") => Some(Rates::Hopkins),
            Some(other) => {
                let words = &["fitted", "hopkins"];
                self.problem("leafed_out.rates", Code::NotOneOf(words), other);
                None
            }
        };
        let elsewhere = typed
            .place
            .as_ref()
            .and_then(|place| self.place("leafed_out.place", place));
        Some(LeafOut {
            stage: stage?,
            date: date?,
            rates: rates?,
            elsewhere: match elsewhere {
                Some(Place::Point {
                    latitude,
                    longitude,
                    elevation,
                }) => Some((latitude, longitude, elevation)),
                _ => None,
            },
        })
    }

    /// A table of which no line can be used is a problem; bad lines of a good one are told with the answer.
    fn spring(&mut self, typed: &Typed, day: Option<Day>, place: Option<&Place>) -> Option<Table> {
        let text = typed.spring.as_ref().filter(|text| !text.is_empty())?;
        let scale = match typed.spring_scale.as_ref().map(Text::trimmed) {
            None | Some("") => None,
            Some("celsius") => Some(Scale::Celsius),
            Some("fahrenheit") => Some(Scale::Fahrenheit),
            Some(other) => {
                let words = &["celsius", "fahrenheit"];
                self.problem("spring_scale", Code::NotOneOf(words), other);
                None
            }
        };
        let hemisphere = place.map_or(Hemisphere::North, Place::hemisphere);
        let table = spring::read(&text.0, scale, day?.start(), hemisphere);
        if table.doubts.contains(&Doubt::Nothing) {
            self.problem("spring", Code::NoTemperatures, text.trimmed());
            return None;
        }
        Some(table)
    }

    fn targets(&mut self, typed: &[TargetTyped]) -> Vec<Target> {
        if typed.len() > MOST_TARGETS {
            self.problem("targets", Code::TooManyTargets(MOST_TARGETS), "");
            return Vec::new();
        }
        typed
            .iter()
            .enumerate()
            .filter_map(|(at, target)| self.target(at, target))
            .collect()
    }

    fn target(&mut self, at: usize, typed: &TargetTyped) -> Option<Target> {
        let field = |name: &str| format!("targets[{at}].{name}");
        let kind = match typed.kind.as_ref().filter(|text| !text.is_empty()) {
            None => {
                self.problem(field("kind"), Code::Missing, "");
                None
            }
            Some(text) => {
                let kind = TargetKind::parse(text.trimmed());
                if kind.is_none() {
                    let code = Code::NotOneOf(TargetKind::WORDS);
                    self.problem(field("kind"), code, text.trimmed());
                }
                kind
            }
        };
        let distance = self
            .length(&field("distance"), typed.distance.as_ref(), Measure::Ground)
            .and_then(|mm| TargetDistance::new(mm / 1000.0));
        let slope = typed
            .slope
            .as_ref()
            .filter(|text| !text.is_empty())
            .and_then(|text| self.plain(&field("slope"), text, Unit::Percent, "%", Slope::RANGE))
            .and_then(Slope::new);
        let voltage = typed
            .voltage
            .as_ref()
            .filter(|text| !text.is_empty())
            .and_then(|text| self.voltage(&field("voltage"), text));
        Some(Target {
            kind: kind?,
            distance,
            slope,
            downhill: typed.downhill,
            voltage,
        })
    }

    /// A bare number is kilovolts.
    fn voltage(&mut self, field: &str, text: &Text) -> Option<Voltage> {
        let number = self.number(field, text.trimmed())?;
        let kv = match number.unit {
            None | Some(Unit::Kilovolt) => number.value,
            Some(Unit::Volt) => number.value / 1000.0,
            Some(_) => {
                self.problem(field, Code::WrongUnit, text.trimmed());
                return None;
            }
        };
        let taken = Voltage::new(kv);
        if taken.is_none() {
            let shown = Shown {
                range: Voltage::RANGE,
                unit: "kV",
            };
            self.problem(field, Code::OutOfRange(shown), text.trimmed());
        }
        taken
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
        signs.sort();
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
