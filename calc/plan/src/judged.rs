//! What one tree of a list comes to in a season: ringed on some of its days, or why not. The answer itself is dropped.

use crate::need::{Need, need};
use calc::answer::{Answer, Conditional, Outcome, without_sources};
use calc::models::height::crown_m;
use calc::models::season::Local;
use calc::models::stand::{basal_area_m2, combined_mm};
use calc::question::{Day, Question};
use calc::reference::Reference;
use calc::terms::method::Method;
use calc::terms::place::Hemisphere;
use calc::terms::species::Species;
use calc::terms::tree::{Condition, Tree};
use calc_data::list::PlanConstants;
use chrono::NaiveDate;

/// What a tree comes to in a season.
#[derive(Clone, Debug)]
pub struct JudgedTree {
    /// Its species.
    pub species: &'static Species,
    /// The half of the world that it stands in.
    pub hemisphere: Hemisphere,
    /// The outcome over the year, and the method at its head.
    pub outcome: Outcome,
    /// That method.
    pub method: Method,
    /// Whether only a professional, or a licensed applicator, may do it.
    pub by_professional: bool,
    /// The stretch of days of that method, where it has one.
    pub days: Option<(NaiveDate, NaiveDate)>,
    /// Width of the circle of ground that stays dangerous, metres.
    pub zone_m: f64,
    /// The circle that is looked through before anything is cut, metres: twice the tree's height.
    pub reach_m: f64,
    /// Basal area of all its stems, m².
    pub basal_m2: f64,
    /// Area of its crown, m²; 0 where no table has one.
    pub crown_m2: f64,
    /// What would settle it, where something decisive is not known.
    pub asks: Vec<Conditional>,
    /// What it comes to.
    pub comes_to: ComesTo,
}

impl JudgedTree {
    /// Whether it is dead already.
    #[must_use]
    pub fn is_dead(&self) -> bool {
        matches!(self.comes_to, ComesTo::Dead)
    }
}

/// What a tree comes to.
#[derive(Clone, Debug)]
pub enum ComesTo {
    /// It may be ringed on some of the days.
    Ring(Need),
    /// It would be ringed, but on none of the days.
    NoDay,
    /// It is dead already.
    Dead,
    /// A professional's.
    Professional,
    /// Something decisive is not known.
    CannotTell,
    /// Nothing is done to it.
    LeaveIt,
    /// Another method.
    OtherMethod,
}

/// Judges a tree over the year that begins on `from`, with the days on which the crew works: the first that holds of
/// dead, a professional's, not known, left alone, another method, ringed.
///
/// ```
/// use calc::{models::season::Local, question::read};
/// use chrono::NaiveDate;
/// let reference = calc_data::whole();
/// let question = read(reference, &examples::named("do")).expect("a good question");
/// let from = NaiveDate::from_ymd_opt(2027, 5, 1).expect("a day");
/// let days = [NaiveDate::from_ymd_opt(2027, 6, 12).expect("a day")];
/// let own = calc_data::list::plan_constants();
/// let judged = calc_plan::judge((reference, own), &question, &Local::default(), (from, &days), 0.4);
/// assert!(matches!(judged.comes_to, calc_plan::ComesTo::Ring(need) if need.days[0].0 == days[0]));
/// ```
#[must_use]
pub fn judge(
    (reference, own): (&'static Reference, &PlanConstants),
    question: &Question,
    local: &Local,
    (from, days): (NaiveDate, &[NaiveDate]),
    slip: f64,
) -> JudgedTree {
    let mut over_the_year = question.clone();
    over_the_year.day = Day::Year { today: from };
    let answer = without_sources(reference, &over_the_year, local);
    let comes_to = match (answer.outcome, answer.headline_method) {
        _ if question.tree.condition == Condition::Dead => ComesTo::Dead,
        (Outcome::Professional, _) => ComesTo::Professional,
        (Outcome::CannotTell, _) => ComesTo::CannotTell,
        (_, Method::LeaveIt) => ComesTo::LeaveIt,
        (_, Method::BarkRing) => need((reference, own), question, local, days, slip)
            .map_or(ComesTo::NoDay, ComesTo::Ring),
        _ => ComesTo::OtherMethod,
    };
    judged(question, &answer, comes_to)
}

/// Area of a tree's crown, m²; none where no table has one. A crown is as round as a trunk.
#[must_use]
pub fn crown_m2(tree: &Tree) -> Option<f64> {
    let dbh_mm = combined_mm(tree.stems.iter().map(|stem| stem.dbh.mm()));
    let across = crown_m(tree.species, tree.setting, dbh_mm)?;
    Some(basal_area_m2(across.value * 1000.0))
}

fn judged(question: &Question, answer: &Answer, comes_to: ComesTo) -> JudgedTree {
    JudgedTree {
        species: question.tree.species,
        hemisphere: question.place.hemisphere(),
        outcome: answer.outcome,
        method: answer.headline_method,
        by_professional: answer.headline_by_professional,
        days: answer.advised_day.zip(answer.advised_to),
        zone_m: answer.reach.zone_m,
        reach_m: answer.reach.two_heights_m,
        basal_m2: basal_area_m2(combined_mm(
            question.tree.stems.iter().map(|stem| stem.dbh.mm()),
        )),
        crown_m2: crown_m2(&question.tree).unwrap_or(0.0),
        asks: answer
            .conditional
            .as_ref()
            .map_or(Vec::new(), |open| open.conditions.clone()),
        comes_to,
    }
}
