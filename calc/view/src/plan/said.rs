//! What was said once for many trees: that nothing stands near any tree of a unit, and what a rule of a species leaves
//! open. A row that says something itself keeps what it says.

use super::asked::{NotASeason, PlanField};
use calc::models::calibrate::Rate;
use calc::question::{Found, Text, Typed, find_species};
use calc::reference::Reference;
use calc::terms::number::read_number;
use calc::terms::quantity::Units;
use calc_data::list::{WordKind, fold, plan_constants, tables};

/// What can be said, as typed: `Old field=230 ft`; `Black locust=yes`, or `Black locust@Old field=no` for one unit.
#[derive(Clone, Copy, Debug, Default)]
pub struct SaidTyped<'a> {
    /// Nothing stands within a distance of any tree of a unit.
    pub nothing_within: &'a [String],
    /// Who said that.
    pub said_by: &'a str,
    /// Whether every stem of the clones of a species can be ringed.
    pub whole_clone: &'a [String],
    /// Whether others of its genus stand near.
    pub same_genus_near: &'a [String],
}

/// A reply for a species, everywhere or in one unit.
#[derive(Clone, Debug)]
struct Reply {
    /// Its scientific name.
    species: &'static str,
    unit: Option<String>,
    yes: bool,
}

/// What was said.
#[derive(Clone, Debug, Default)]
pub struct Said {
    /// Units, and the distance in metres within which nothing stands.
    pub nothing_within: Vec<(String, f64)>,
    /// Who said so; empty where no name was given.
    pub by: String,
    whole_clone: Vec<Reply>,
    same_genus_near: Vec<Reply>,
    /// The crew's own rate.
    pub rate: Option<Rate>,
}

impl Said {
    /// Of what was typed. Distances without a unit are in the list's.
    ///
    /// # Errors
    /// What was not understood.
    pub fn of(
        reference: &'static Reference,
        typed: &SaidTyped<'_>,
        units: Units,
    ) -> Result<Self, NotASeason> {
        let replies = |field: PlanField, all: &[String]| -> Result<Vec<Reply>, NotASeason> {
            all.iter()
                .map(|typed| {
                    reply(reference, typed)
                        .ok_or_else(|| NotASeason::NotAReply(field, typed.clone()))
                })
                .collect()
        };
        let within = typed.nothing_within.iter().map(|typed| {
            distance(typed, units)
                .ok_or_else(|| NotASeason::NotAUnit(PlanField::NothingWithin, typed.clone()))
        });
        Ok(Self {
            nothing_within: within.collect::<Result<_, _>>()?,
            by: typed.said_by.trim().to_owned(),
            whole_clone: replies(PlanField::WholeClone, typed.whole_clone)?,
            same_genus_near: replies(PlanField::SameGenusNear, typed.same_genus_near)?,
            rate: None,
        })
    }

    /// The distance within which nothing stands at any tree of a unit, metres.
    #[must_use]
    pub fn within(&self, unit: &str) -> Option<f64> {
        let mut units = self.nothing_within.iter();
        units.find(|(of, _)| of == unit).map(|(_, metres)| *metres)
    }

    /// A tree with what was said of its species filled in, and the crew's own rate; none where nothing is.
    pub(super) fn filled(&self, typed: &Typed, species: &str, unit: &str) -> Option<Typed> {
        let of = |replies: &[Reply], slot: &Option<Text>| {
            let reply = said_of(replies, species, unit).filter(|_| slot.is_none())?;
            Some(Text(if reply { "yes" } else { "no" }.to_owned()))
        };
        let whole_clone = of(&self.whole_clone, &typed.whole_clone);
        let same_genus_near = of(&self.same_genus_near, &typed.same_genus_near);
        if whole_clone.is_none() && same_genus_near.is_none() && self.rate.is_none() {
            return None;
        }
        let mut filled = typed.clone();
        filled.whole_clone = whole_clone.or(filled.whole_clone);
        filled.same_genus_near = same_genus_near.or(filled.same_genus_near);
        filled.rate = filled.rate.or(self.rate);
        Some(filled)
    }
}

/// What was said of a unit goes before what was said everywhere.
fn said_of(replies: &[Reply], species: &str, unit: &str) -> Option<bool> {
    let of = |in_unit: Option<&str>| {
        let mut all = replies.iter();
        all.find(|it| it.species == species && it.unit.as_deref() == in_unit)
    };
    of(Some(unit)).or_else(|| of(None)).map(|reply| reply.yes)
}

fn distance(typed: &str, units: Units) -> Option<(String, f64)> {
    let (unit, distance) = typed.rsplit_once('=')?;
    let number = read_number(distance).ok()?;
    let in_mm = match (number.unit, units) {
        (Some(unit), _) => unit.in_mm()?,
        (None, Units::Us) => calc::terms::quantity::M_PER_FT * 1000.0,
        (None, Units::Metric) => 1000.0,
    };
    let metres = number.value * in_mm / 1000.0;
    let own = plan_constants();
    let fits = (own.said_from..=own.said_to).contains(&metres);
    fits.then(|| (unit.trim().to_owned(), metres))
}

fn reply(reference: &'static Reference, typed: &str) -> Option<Reply> {
    let (of, reply) = typed.rsplit_once('=')?;
    let (species, unit) = match of.split_once('@') {
        Some((species, unit)) => (species, Some(unit.trim().to_owned())),
        None => (of, None),
    };
    let Found::One(species) = find_species(reference, species.trim(), None) else {
        return None;
    };
    let yes = match tables().word(WordKind::YesNo, &fold(reply.trim()))? {
        "yes" => true,
        "no" => false,
        _ => return None,
    };
    Some(Reply {
        species: species.scientific,
        unit,
        yes,
    })
}
