//! The inputs as read, what was assumed, and how to keep the answer.

use super::say::Say;
use super::{fields, phrase, reach, region};
use crate::measure;
use crate::words::{Word, m};
use calc::answer::Assumed;
use calc::question::Day;
use calc::terms::place::Place;
use calc::terms::tree::{Condition, DrySpell, Goal, Herbicide, Limbs, Vigour};
use calc::timing::Rates;

/// One input as read.
pub struct Input {
    /// The field's path.
    pub field: String,
    /// Its label.
    pub label: String,
    /// Its value in words.
    pub value: String,
}

/// Inputs in the order of the form.
struct Inputs(Vec<Input>);

impl Inputs {
    /// Adds one.
    fn told(&mut self, field: &str, value: String) {
        self.0.push(Input {
            label: fields::field(field),
            field: field.into(),
            value,
        });
    }

    /// Adds one that a word tells, where it was said.
    fn said(&mut self, said: bool, field: &str, word: Word) {
        if said {
            self.told(field, word.into());
        }
    }
}

/// A field that was not given, in the words of the list of assumptions.
pub fn assumed_field(field: &str) -> Option<Word> {
    m::working_assumed_field(field)
}

/// The word that was used instead.
pub fn assumed_word(word: &str) -> Option<Word> {
    m::working_assumed_word(word)
}

/// The field of the form that settles an assumption.
pub fn assumed_path(field: &str) -> &str {
    match field {
        "bark" => "stems[0].bark",
        other => other,
    }
}

impl Say<'_> {
    /// Every input that was given, in the order of the form.
    pub fn told(&self) -> Vec<Input> {
        let q = self.question;
        let units = self.units();
        let mut list = Inputs(Vec::new());
        list.told(
            "species",
            m::working_species(m::WorkingSpecies {
                name: phrase::tree(q.tree.species),
                latin: q.tree.species.scientific,
            }),
        );
        for (at, stem) in q.tree.stems.iter().enumerate() {
            let path = cat!("stems[", measure::number(at as u32), "].");
            let mm = stem.dbh.mm();
            let across = measure::size_read(mm).text(units);
            let mut across = (m::working_across(&across), across);
            let mut field = "diameter";
            if stem.from_girth {
                let girth = measure::size_read(mm * core::f64::consts::PI);
                across.0 = m::working_around(m::WorkingAround {
                    girth: girth.text(units),
                    size: across.1,
                });
                field = "girth";
            }
            list.told(&cat!(&path, field), across.0);
            if stem.live_share < 1.0 {
                let share = m::working_live_share(stem.live_share * 100.0);
                list.told(&cat!(&path, "live_share"), share);
            }
            if let Some(bark) = stem.bark {
                let bark = measure::bark(bark.mm()).text(units);
                list.told(&cat!(path, "bark"), bark);
            }
        }
        list.told(
            "date",
            match q.day {
                Day::On(day) => measure::day_year(day),
                Day::Year { today } => m::working_the_year(today),
            },
        );
        for (at, target) in q.tree.targets.iter().enumerate() {
            let kind = m::reach_target_short(target.kind);
            let mut value = match target.distance {
                Some(distance) => m::reach_target_said(m::ReachTargetSaid {
                    target: kind,
                    distance: self.length(distance.m()),
                }),
                None => m::reach_target_unknown(kind),
            };
            if let Some(slope) = target.slope {
                let slope = m::working_slope(measure::plain(slope.percent(), 0));
                value = phrase::comma(value, &slope);
            }
            if target.downhill {
                value = phrase::comma(value, &m::WORKING_DOWNHILL);
            }
            if let Some(voltage) = target.voltage {
                let kv = cat!(measure::plain(voltage.kv(), 1), " kV");
                value = phrase::comma(value, &kv);
            }
            let path = cat!("targets[", measure::number(at as u32), "].");
            list.0.push(Input {
                label: fields::field(&cat!(&path, "kind")),
                field: cat!(path, "distance"),
                value,
            });
        }
        if q.tree.none_in_reach {
            let within = self.reach(self.answer.reach.two_heights_m);
            list.told("none_in_reach", m::working_within(within));
        }
        if let Some(reply) = q.tree.line_within_reach {
            list.told("line_within_reach", m::fields_reply(reply).into());
        }
        if let Some(height) = q.tree.height {
            let said = self.length(height.m());
            list.told(
                "height",
                match q.height_by {
                    Some(by) => phrase::comma(said, &m::fields_height_by(by)),
                    None => said,
                },
            );
        }
        if let Place::Point {
            latitude,
            longitude,
            elevation,
        } = &q.place
        {
            let mut at = cat!(
                measure::plain(*latitude, 2),
                "°, ",
                measure::plain(*longitude, 2),
                "°"
            );
            if let Some(high) = elevation {
                at = phrase::comma(at, &m::working_above_sea(self.length(*high)));
            }
            list.told("place.latitude", at);
        }
        if let Some(region) = &q.region {
            list.told("region", region::region(region).into());
        }
        if let Some(seen) = q.leafed_out {
            let said = m::working_leaves(m::fields_stage(seen.stage), seen.date);
            let said = match (seen.elsewhere, seen.rates) {
                (None, _) => said,
                (Some(_), Rates::Fitted) => phrase::comma(said, &m::WORKING_ELSEWHERE),
                (Some(_), Rates::Hopkins) => phrase::comma(said, &m::WORKING_HOPKINS),
            };
            list.told("leafed_out.stage", said);
        }
        if let Some(table) = &q.spring {
            list.told("spring", m::working_spring(table.days.len()));
        }
        if !q.tree.signs.is_empty() {
            list.told("signs", reach::signs(&q.tree.signs));
        }
        let herbicide = q.tree.herbicide;
        let said = herbicide != Herbicide::NotSaid;
        list.said(said, "herbicide", m::fields_herbicide(herbicide));
        match q.tree.goal {
            Goal::Wildlife => {}
            Goal::Kill => list.told("goal", m::WORKING_ONLY_KILL.into()),
            Goal::SpareOne(at) => {
                list.told("goal", m::working_keep_stem(at + 1));
            }
        }
        for (field, value) in [
            ("whole_clone", q.tree.whole_clone),
            ("same_genus_near", q.tree.same_genus_near),
        ] {
            let yes = fields::yes_no(value.unwrap_or_default());
            list.said(value.is_some(), field, yes);
        }
        let said = q.tree.condition != Condition::Alive;
        list.said(said, "condition", m::fields_life(q.tree.condition));
        let said = q.tree.vigour != Vigour::Ordinary;
        list.said(said, "vigour", m::fields_vigour(q.tree.vigour));
        let said = q.dry_spell != DrySpell::None;
        list.said(said, "dry_spell", m::fields_dry(q.dry_spell));
        list.said(
            q.tree.limbs != Limbs::None,
            "limbs",
            m::fields_limbs(q.tree.limbs),
        );
        if let Some(walk) = q.pace.walk_min {
            let walk = measure::plain(walk, 1);
            list.told("walk", m::effort_walk_given(walk));
        }
        if let Some(timed) = q.timed {
            let minutes = measure::plain(timed.minutes, 1);
            list.told("timed.trees", m::effort_timed_given(timed.trees, minutes));
        } else {
            list.said(q.pace.rate.is_some(), "rate", m::WORKING_TIMED);
        }
        list.said(q.pace.practised, "practised", m::FIELDS_YES);
        list.said(q.cannot_wait, "cannot_wait", m::FIELDS_YES);
        list.0
    }

    /// Fields left at what they are for most trees: one sentence, for the working and the printed page.
    pub fn left(&self) -> String {
        let q = self.question;
        let mut list: Vec<Word> = Vec::new();
        let mut take = |left: bool, words| {
            if left {
                list.push(words);
            }
        };
        take(q.tree.condition == Condition::Alive, m::WORKING_LEFT_ALIVE);
        take(q.tree.signs.is_empty(), m::WORKING_LEFT_NO_SIGNS);
        take(
            q.tree.stems.iter().all(|stem| stem.live_share >= 1.0),
            m::WORKING_LEFT_BARK,
        );
        take(q.tree.vigour == Vigour::Ordinary, m::WORKING_LEFT_GROWTH);
        take(q.dry_spell == DrySpell::None, m::WORKING_LEFT_NO_DRY_SPELL);
        take(q.tree.limbs == Limbs::None, m::WORKING_LEFT_NO_LIMBS);
        take(q.tree.goal == Goal::Wildlife, m::WORKING_LEFT_GOAL);
        take(q.leafed_out.is_none(), m::WORKING_LEFT_NO_LEAF_OUT);
        take(!q.pace.practised, m::WORKING_LEFT_ONE_PERSON);
        take(!q.cannot_wait, m::WORKING_LEFT_CAN_WAIT);
        m::working_left(phrase::joined_by(&list, ", "))
    }

    /// What was not given, and what was used instead: label, value, field.
    pub fn assumed(&self, stops: bool) -> Vec<Input> {
        let value = |it: &Assumed| match (it.field, it.value) {
            ("bark", Some(mm)) => measure::bark(mm).text(self.units()),
            ("height", Some(high)) => m::working_for_reach(self.length(high)),
            (_, Some(value)) => measure::plain(value, 1),
            (_, None) => it.word.and_then(assumed_word).unwrap_or(Word::NONE).into(),
        };
        self.answer
            .assumed
            .iter()
            // A stop rests on the reach alone.
            .filter(|it| !stops || !matches!(it.field, "bark" | "walk" | "herbicide"))
            .map(|it| Input {
                field: assumed_path(it.field).into(),
                label: assumed_field(it.field).map_or(it.field, Word::text).into(),
                value: value(it),
            })
            .collect()
    }
}
