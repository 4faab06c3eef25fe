//! The small aids: readings of a height, trees that were timed, what is seen at a visit.

use super::numbers::NumberOf;
use super::{Reader, given};
use crate::models::at_visit::Seen;
use crate::models::bark;
use crate::models::calibrate::{NoRate, Rate, update};
use crate::models::effort;
use crate::models::effort::Pace;
use crate::models::effort::StemWork;
use crate::models::effort_constants::Three;
use crate::models::height_aid::HeightBy;
use crate::models::height_aid::{by_angles, by_shadow, by_stick};
use crate::question::fields::{ANGLE, MOST_TIMED, RING_WIDTH, TIMED_MINUTES};
use crate::question::{
    Code, HeightAidTyped, Problem, Question, Text, Timed, TimedTyped, Typed, VisitAt, VisitSeen,
    VisitTyped,
};
use crate::reference::Reference;
use crate::terms::number::Unit;
use crate::terms::quantity::TotalHeight;
use crate::terms::small::sort::sort;
use crate::terms::tree::{Limbs, Stem};

/// A height beside its own readings is theirs when it is this near: a field shows it rounded.
const AGREES: f64 = 0.01;

/// Whether a height was measured by these readings.
pub(super) fn agree(height: TotalHeight, aid: TotalHeight) -> bool {
    libm::fabs(height.m() - aid.m()) <= AGREES * aid.m()
}

/// Reads the height aid of a question alone.
///
/// # Errors
/// Every problem of its readings.
pub fn height_aid(typed: &Typed) -> Result<(HeightBy, TotalHeight), Vec<Problem>> {
    let mut reader = Reader::new(typed);
    let aid = typed.height_aid.clone().unwrap_or_default();
    let height = reader.aid(&aid);
    height.ok_or(reader.problems)
}

/// Reads the timed trees of a question alone: what was timed, and the rate where they give one.
///
/// # Errors
/// Every problem of what was typed.
pub fn timed(
    reference: &'static Reference,
    typed: &Typed,
) -> Result<(Timed, Option<Rate>), Vec<Problem>> {
    let mut reader = Reader::new(typed);
    let timed = typed.timed.clone().unwrap_or_default();
    let read = reader.timed(reference, &timed, typed.rate);
    read.filter(|_| reader.problems.is_empty())
        .ok_or(reader.problems)
}

/// A question with the rate of the trees that were timed.
pub(super) fn rate(
    reference: &'static Reference,
    mut question: Question,
    typed: &Typed,
) -> Result<Question, Vec<Problem>> {
    if typed.timed.is_some() {
        let (read, rate) = timed(reference, typed)?;
        question.timed = Some(read);
        question.pace.rate = rate.or(question.pace.rate);
    }
    Ok(question)
}

impl Reader {
    /// A length on the ground, or of a stick, in metres. It is needed.
    fn reading(&mut self, field: &str, typed: &Option<Text>) -> Option<f64> {
        self.needed(field, typed)?;
        let mm = self.length(field, typed, NumberOf::Ground)?;
        if mm == 0.0 {
            self.problem(field, Code::NotPositive, given(typed).unwrap_or(""));
            return None;
        }
        Some(mm / 1000.0)
    }

    fn angle(&mut self, field: &str, typed: &Option<Text>) -> Option<f64> {
        let text = self.needed(field, typed)?;
        self.plain(field, text, Unit::Percent, "°", ANGLE)
    }

    /// The height that readings give. All that are needed are asked for at once.
    pub(super) fn aid(&mut self, typed: &HeightAidTyped) -> Option<(HeightBy, TotalHeight)> {
        self.needed("height_aid.by", &typed.by)?;
        let by = self.word_of("height_aid.by", &typed.by)?;
        let (what, height) = match by {
            HeightBy::Shadow => {
                let tree = self.reading("height_aid.tree_shadow", &typed.tree_shadow);
                let stick = self.reading("height_aid.stick", &typed.stick);
                let shadow = self.reading("height_aid.stick_shadow", &typed.stick_shadow);
                ("height_aid.tree_shadow", by_shadow(tree?, stick?, shadow?))
            }
            HeightBy::Angles => {
                let distance = self.reading("height_aid.distance", &typed.distance);
                let top = self.angle("height_aid.top", &typed.top);
                let foot = self.angle("height_aid.foot", &typed.foot);
                ("height_aid.top", by_angles(distance?, top?, foot?))
            }
            HeightBy::Stick => {
                let distance = self.reading("height_aid.distance", &typed.distance);
                let stick = self.reading("height_aid.stick", &typed.stick);
                let arm = self.reading("height_aid.eye_to_stick", &typed.eye_to_stick);
                ("height_aid.distance", by_stick(distance?, stick?, arm?))
            }
        };
        match height {
            Ok(height) => Some((by, height)),
            Err(why) => {
                self.problem(what, Code::NoHeight(why), "");
                None
            }
        }
    }

    fn timed(
        &mut self,
        reference: &'static Reference,
        typed: &TimedTyped,
        before: Option<Rate>,
    ) -> Option<(Timed, Option<Rate>)> {
        if typed.trees.len() > MOST_TIMED {
            self.problem("timed.trees", Code::TooManyStems(MOST_TIMED), "");
            return None;
        }
        let minutes = self.person_minutes(&typed.minutes);
        let width_mm = match given(&typed.width) {
            Some(_) => self.length_in("timed.width", &typed.width, NumberOf::Trunk, RING_WIDTH)?,
            None => reference.constants.ring.least_mm,
        };
        let species = match given(&typed.species) {
            Some(_) => Some(self.species_in("timed.species", reference, &typed.species, None)?),
            None => None,
        };
        let constants = &reference.constants.effort;
        // The same work without what is this tree's own: walk, limbs, a crew's practice.
        let plain = Pace {
            walk_min: Some(0.0),
            ..Pace::default()
        };
        let mut predicted: Vec<Three> = Vec::new();
        for (at, text) in typed.trees.iter().enumerate() {
            let text = Some(text.clone());
            let field = super::entry("timed.trees", at, "");
            let Some(dbh) = self.size(&field, &text, 1.0) else {
                continue;
            };
            let stem = Stem {
                dbh,
                from_girth: false,
                live_share: 1.0,
                bark: None,
            };
            let bark = species.and_then(|species| bark::thickness_mm(&stem, species));
            let work = StemWork {
                dbh_mm: dbh.mm(),
                bark_mm: bark.unwrap_or(constants.score_medium_mm),
                width_mm,
                live_share: 1.0,
            };
            let effort = effort::minutes(constants, Limbs::None, &plain, &[work], 1.0)?;
            predicted.push(Three {
                low: effort.low_min,
                likely: effort.likely_min,
                high: effort.high_min,
            });
        }
        let minutes = minutes?;
        let prior = before.unwrap_or(Rate::prior(constants));
        let read = update(constants, prior, &predicted, minutes);
        if read == Err(NoRate::FarOff) {
            let text = typed.minutes.as_ref().map_or("", |text| &text.0);
            self.problem("timed.minutes", Code::FarFromAnyCrew, text);
        }
        let timed = Timed {
            trees: predicted.len(),
            minutes,
            no_rate: read.err(),
        };
        Some((timed, read.ok()))
    }

    /// Minutes that trees took together. One tree is told to be too few before minutes are asked for.
    fn person_minutes(&mut self, typed: &Option<Text>) -> Option<f64> {
        let field = "timed.minutes";
        let text = self.needed(field, typed)?;
        let minutes = self.plain(field, text, Unit::Minute, "min", TIMED_MINUTES)?;
        if minutes <= 0.0 {
            self.problem(field, Code::NotPositive, text);
            return None;
        }
        Some(minutes)
    }

    pub(super) fn visit(&mut self, typed: &Typed, visit: &VisitTyped) -> Option<VisitSeen> {
        let ringed = given(&visit.ringed).map(|text| self.date("visit.ringed", text));
        let at = self.visit_at(typed, &visit.at);
        let mut seen = Vec::new();
        for (at, text) in visit.seen.iter().take(Seen::ALL.len() * 2).enumerate() {
            match Seen::parse(text.trimmed()) {
                Some(what) if !seen.contains(&what) => seen.push(what),
                Some(_) => {}
                None => {
                    let field = super::entry("visit.seen", at, "");
                    self.problem(&field, Code::NotOneOf(Seen::WORDS), text.trimmed());
                }
            }
        }
        sort(&mut seen, |a, b| a < b);
        let ringed = match ringed {
            Some(day) => Some(day?),
            None => None,
        };
        Some(VisitSeen {
            at: at?,
            ringed,
            seen,
        })
    }

    fn visit_at(&mut self, typed: &Typed, at: &Option<Text>) -> Option<VisitAt> {
        let field = "visit.at";
        let text = given(at).unwrap_or("today");
        if text == "today" {
            let today = self.needed("today", &typed.today)?;
            return self.date("today", today).map(VisitAt::Today);
        }
        if text.len() <= 2 && text.bytes().all(|c| c.is_ascii_digit()) {
            let number = text
                .bytes()
                .fold(0, |sum, c| sum * 10 + usize::from(c - b'0'));
            return Some(VisitAt::Number(number));
        }
        self.date(field, text).map(VisitAt::On)
    }
}
