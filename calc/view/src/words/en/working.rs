//! The inputs as read, what was assumed, and how each number was made.

use super::{Say, signs};
use crate::measure;
use calc::answer::Assumed;
use calc::evidence::Cite;
use calc::model::ring::WidthRule;
use calc::question::{Condition, Day, Dry, Goal, Herbicide, Limbs, Place, Vigour};
use calc::timing::Hemisphere;

/// One input as read.
pub struct Told {
    /// The field's path.
    pub field: String,
    /// Its label.
    pub label: String,
    /// Its value in words.
    pub value: String,
}

/// A step of the working: a formula in words with its values, and what it rests on.
pub struct Made {
    /// What comes out and how, up to the result.
    pub how: String,
    /// The result.
    pub result: String,
    /// What it rests on.
    pub because: Vec<Cite>,
}

fn told(field: &str, value: String) -> Told {
    Told {
        label: super::field(field),
        field: field.into(),
        value,
    }
}

/// A field that was not given, in the words of the list of assumptions.
#[must_use]
pub fn assumed_field(field: &str) -> Option<&'static str> {
    Some(match field {
        "bark" => "Bark, not measured",
        "height" => "Height, not measured",
        "setting" => "Where it grew",
        "place" => "Place, not given",
        "region" => "State or country, not given",
        "walk" => "Walk, not given",
        "herbicide" => "Herbicide, not said",
        "targets" => "What it could hit",
        _ => return None,
    })
}

/// The word that was used instead.
#[must_use]
pub fn assumed_word(word: &str) -> Option<&'static str> {
    Some(match word {
        "woods" => "woods",
        "open" => "open: yard, street or hedgerow",
        "north" => "the northern half of the world",
        "south" => "the southern half of the world",
        "cautious_default" => "the cautious months",
        "two_minutes" => "2 minutes",
        "not_said" => "only by a licensed applicator, with the best way without beside it",
        "not_checked" => "not checked",
        _ => return None,
    })
}

/// The field of the form that settles an assumption.
#[must_use]
pub fn assumed_path(field: &str) -> &str {
    match field {
        "bark" => "stems[0].bark",
        other => other,
    }
}

impl Say<'_> {
    /// Every input that was given, in the order of the form.
    #[must_use]
    pub fn told(&self) -> Vec<Told> {
        let q = self.question;
        let units = self.units();
        let mut list = vec![told(
            "species",
            cat!(q.species.name, " (", q.species.scientific, ")"),
        )];
        for (at, stem) in q.stems.iter().enumerate() {
            let path = cat!("stems[", measure::number(at as u32), "].");
            let across = measure::size_read(stem.dbh.mm()).text(units);
            list.push(if stem.from_girth {
                let girth = measure::size_read(stem.dbh.mm() * core::f64::consts::PI).text(units);
                told(
                    &cat!(path, "girth"),
                    cat!(girth, " around, ", across, " across"),
                )
            } else {
                told(&cat!(path, "diameter"), cat!(across, " across"))
            });
            if stem.live_share < 1.0 {
                let share = measure::percent(stem.live_share * 100.0);
                list.push(told(
                    &cat!(path, "live_share"),
                    cat!(share, " in 100 of the way round"),
                ));
            }
            if let Some(bark) = stem.bark {
                list.push(told(
                    &cat!(path, "bark"),
                    measure::bark(bark.mm()).text(units),
                ));
            }
        }
        list.push(told(
            "date",
            match q.day {
                Day::On(day) => measure::day_year(day),
                Day::Year { today } => cat!("the year, from ", measure::day_year(today)),
            },
        ));
        for (at, target) in q.targets.iter().enumerate() {
            let mut value = super::target_short(target.kind).to_owned();
            match target.distance {
                Some(distance) => value = cat!(value, ", ", self.length(distance.m())),
                None => value.push_str(", distance not known"),
            }
            if let Some(slope) = target.slope {
                value = cat!(value, ", slope ", measure::plain(slope.percent(), 0), " %");
            }
            if target.downhill {
                value.push_str(", downhill");
            }
            if let Some(voltage) = target.voltage {
                value = cat!(value, ", ", measure::plain(voltage.kv(), 1), " kV");
            }
            let path = cat!("targets[", measure::number(at as u32), "].");
            list.push(Told {
                field: cat!(path, "distance"),
                label: super::field(&cat!(path, "kind")),
                value,
            });
        }
        if q.none_in_reach {
            let within = self.reach(self.answer.reach.people_out_m);
            list.push(told("none_in_reach", cat!("within ", within)));
        }
        if let Some(reply) = q.line_within_reach {
            list.push(told("line_within_reach", super::reply(reply).into()));
        }
        if let Some(height) = q.height {
            list.push(told("height", self.length(height.m())));
        }
        if let Place::Point {
            latitude,
            longitude,
            elevation,
        } = &q.place
        {
            let high = elevation.map_or_else(String::new, |m| {
                cat!(", ", measure::length(m).text(units), " above the sea")
            });
            list.push(told(
                "place.latitude",
                cat!(
                    measure::plain(*latitude, 2),
                    "°, ",
                    measure::plain(*longitude, 2),
                    "°",
                    high
                ),
            ));
        }
        if let Some(region) = &q.region {
            list.push(told("region", super::region(region).into()));
        }
        if let Some(seen) = q.leafed_out {
            let elsewhere = if seen.elsewhere.is_some() {
                ", elsewhere"
            } else {
                ""
            };
            list.push(told(
                "leafed_out.stage",
                cat!(
                    super::stage(seen.stage),
                    " on ",
                    measure::day_year(seen.date),
                    elsewhere
                ),
            ));
        }
        if !q.signs.is_empty() {
            list.push(told("signs", signs(&q.signs)));
        }
        if q.herbicide != Herbicide::NotSaid {
            list.push(told("herbicide", super::herbicide(q.herbicide).into()));
        }
        match q.goal {
            Goal::Wildlife => {}
            Goal::Kill => list.push(told("goal", "only to kill it".into())),
            Goal::SpareOne(at) => {
                list.push(told(
                    "goal",
                    cat!("keep stem ", measure::number(at as u32 + 1)),
                ));
            }
        }
        for (field, value) in [
            ("whole_clone", q.whole_clone),
            ("same_genus_near", q.same_genus_near),
        ] {
            if let Some(value) = value {
                list.push(told(field, super::yes_no(value).into()));
            }
        }
        if q.condition != Condition::Alive {
            list.push(told("condition", super::life(q.condition).into()));
        }
        if q.vigour != Vigour::Ordinary {
            list.push(told("vigour", super::vigour(q.vigour).into()));
        }
        if q.dry_spell != Dry::None {
            list.push(told("dry_spell", super::dry(q.dry_spell).into()));
        }
        if q.limbs != Limbs::None {
            list.push(told("limbs", super::limbs(q.limbs).into()));
        }
        if let Some(walk) = q.walk_min {
            list.push(told("walk", cat!(measure::plain(walk, 1), " minutes")));
        }
        if q.practised {
            list.push(told("practised", "yes".into()));
        }
        if q.cannot_wait {
            list.push(told("cannot_wait", "yes".into()));
        }
        list
    }

    /// Fields left at what they are for most trees: one sentence, for the working and the printed page.
    #[must_use]
    pub fn left(&self) -> String {
        let q = self.question;
        let mut list: Vec<&str> = Vec::new();
        let mut take = |left: bool, words| {
            if left {
                list.push(words);
            }
        };
        take(q.condition == Condition::Alive, "condition alive");
        take(q.signs.is_empty(), "no signs ticked");
        take(
            q.stems.iter().all(|stem| stem.live_share >= 1.0),
            "bark alive all round",
        );
        take(q.vigour == Vigour::Ordinary, "ordinary growth");
        take(q.dry_spell == Dry::None, "no dry spell");
        take(q.limbs == Limbs::None, "no limbs below the ring");
        take(q.goal == Goal::Wildlife, "goal: a standing dead tree");
        take(q.leafed_out.is_none(), "no leaf-out seen");
        take(!q.practised, "one person, not practised");
        take(!q.cannot_wait, "the work can wait");
        cat!("Left as for most trees: ", list.join(", "), ".")
    }

    /// What was not given, and what was used instead: label, value, field.
    #[must_use]
    pub fn assumed(&self) -> Vec<Told> {
        let value = |it: &Assumed| match (it.field, it.value) {
            ("bark", Some(mm)) => measure::bark(mm).text(self.units()),
            ("height", Some(m)) => cat!(self.length(m), " for what it could reach"),
            (_, Some(value)) => measure::plain(value, 1),
            (_, None) => it.word.and_then(assumed_word).unwrap_or("").into(),
        };
        self.answer
            .assumed
            .iter()
            .map(|it| Told {
                field: assumed_path(it.field).into(),
                label: assumed_field(it.field).unwrap_or(it.field).into(),
                value: value(it),
            })
            .collect()
    }

    /// How each number was made, in the order of the answer. A stop shows only what it rests on.
    #[must_use]
    pub fn made(&self, stops: bool) -> Vec<Made> {
        let mut list = Vec::new();
        if !stops {
            self.made_ring(&mut list);
        }
        self.made_reach(&mut list);
        if !stops {
            self.made_season(&mut list);
            self.made_after(&mut list);
        }
        list
    }

    fn made_ring(&self, list: &mut Vec<Made>) {
        let q = self.question;
        let units = self.units();
        let largest = q.largest();
        let constants = &self.reference.constants.ring;
        let dbh = largest.dbh.mm();
        if largest.from_girth {
            list.push(Made {
                how: cat!(
                    "Across = around ÷ 3.1416 = ",
                    measure::size_read(dbh * core::f64::consts::PI).first(units),
                    " ÷ 3.1416 = "
                ),
                result: measure::size_read(dbh).text(units),
                because: Vec::new(),
            });
        }
        let Some(stem) = self.answer.stems.iter().find(|stem| stem.dbh_mm == dbh) else {
            return;
        };
        if let (Some(bark), Some(row)) = (&stem.bark, q.species.bark)
            && !bark.measured
        {
            list.push(Made {
                how: cat!(
                    "Bark = ",
                    measure::plain(row.coefficient, 4),
                    " × ",
                    measure::size_read(dbh).first(units),
                    " = "
                ),
                result: cat!(
                    measure::bark(bark.mm).text(units),
                    "; it lies between ",
                    measure::bark(bark.low_mm).first(units),
                    " and ",
                    measure::bark(bark.high_mm).first(units)
                ),
                because: bark.because.clone(),
            });
        }
        if let Some(inside) = stem.inside_bark_mm {
            list.push(Made {
                how: "Inside the bark = across − 2 × bark = ".into(),
                result: measure::size_read(inside).text(units),
                because: Vec::new(),
            });
        }
        let Some(ring) = &stem.ring else {
            return;
        };
        let mm = |value: f64| cat!(measure::plain(value, 0), " mm");
        let minimum = q.species.ring_minimum_mm.map_or_else(String::new, |least| {
            cat!(", ", mm(least), " for this species")
        });
        list.push(Made {
            how: cat!(
                "Ring, at least = ",
                mm(constants.least_mm),
                " for any tree",
                minimum,
                ", rounded up = "
            ),
            result: measure::ring(ring.at_least_mm).text(units),
            because: Vec::new(),
        });
        let rule = match ring.decided_by {
            WidthRule::Least => "the least width".into(),
            WidthRule::OutlastsCallus => cat!(
                "wide enough to outlast callus, ",
                measure::plain(constants.closure_factor, 0),
                " × closure a season × seasons it may live"
            ),
            WidthRule::HalfDiameter => "half the diameter".into(),
            WidthRule::WholeDiameter => "the whole diameter, since this species bridges".into(),
            WidthRule::Most => cat!("held at ", mm(constants.most_mm)),
        };
        list.push(Made {
            how: cat!(
                "Better = ",
                rule,
                " = ",
                mm(ring.better_mm),
                ", rounded up = "
            ),
            result: measure::ring(ring.better_mm).text(units),
            because: ring.because.clone(),
        });
        list.push(Made {
            how: "Bark taken off = live share × π × (across − bark) × better width = ".into(),
            result: cat!(
                measure::plain(ring.area_mm2 / 92_903.04, 1),
                " ft² (",
                measure::plain(ring.area_mm2 / 1.0e6, 2),
                " m²)"
            ),
            because: Vec::new(),
        });
    }

    fn made_reach(&self, list: &mut Vec<Made>) {
        let answer = self.answer;
        let height = &answer.height;
        let constants = &self.reference.constants;
        let how: String = if height.measured {
            "Height used = as measured = ".into()
        } else if height.whole_table {
            "Height used = the tallest of the whole table at this size, since the species is not known = ".into()
        } else {
            cat!(
                "Height used = tallest estimate × ",
                measure::plain(constants.height.hazard, 2),
                " = "
            )
        };
        list.push(Made {
            how,
            result: self.length(answer.reach.height_m),
            because: height.because.clone(),
        });
        if let (Some(shown), false) = (height.shown_m, height.measured) {
            let ends = match (height.low_m, height.high_m) {
                (Some(low), Some(high)) if high - low > 0.5 => cat!(
                    "; rows from ",
                    measure::length(low).first(self.units()),
                    super::TO,
                    measure::length(high).first(self.units())
                ),
                _ => String::new(),
            };
            list.push(Made {
                how: "Height shown = mean of the rows for this size = ".into(),
                result: cat!(self.length(shown), ends),
                because: Vec::new(),
            });
        }
        let zone = answer.reach.zone_m / answer.reach.height_m;
        list.push(Made {
            how: cat!("Reach = ", measure::plain(zone, 1), " × height = "),
            result: cat!(
                self.reach(answer.reach.zone_m),
                "; people out to ",
                measure::plain(constants.reach.people_out, 0),
                " × height = ",
                self.reach(answer.reach.people_out_m)
            ),
            because: answer.reach.because.clone(),
        });
        for target in &answer.reach.targets {
            list.push(Made {
                how: cat!(self.target_said(target), ": "),
                result: super::judged(target.outcome, target.damage).into(),
                because: Vec::new(),
            });
        }
    }

    fn made_season(&self, list: &mut Vec<Made>) {
        let timing = &self.answer.timing;
        let species = self.question.species;
        if let (Some(budbreak), Some(basis)) = (timing.budbreak, timing.basis) {
            let sum = species.budbreak_sum.map_or_else(String::new, |sum| {
                cat!(
                    "; this species needs ",
                    measure::plain(sum, 0),
                    " degree-days over 5 °C"
                )
            });
            list.push(Made {
                how: cat!("Half the buds open, from ", super::basis(basis), sum, " = "),
                result: measure::day_year(budbreak),
                because: vec![species.budbreak],
            });
        }
        if let (Some(opens), Some(closes)) = (timing.opens, timing.closes) {
            let best = match (timing.best_from, timing.best_to) {
                (Some(from), Some(to)) => cat!("; best ", measure::days(from, to)),
                _ => String::new(),
            };
            list.push(Made {
                how: "The bark lets go and binds again = ".into(),
                result: cat!(measure::days(opens, closes), best),
                because: vec![Cite::own("opening and closing days by wood class")],
            });
        }
        if let (Some(p), Some(day)) = (timing.probability, self.answer.advised_day) {
            list.push(Made {
                how: cat!(
                    "Chance that it slips on ",
                    measure::day(day),
                    " = chance that it has opened × chance that it has not closed = "
                ),
                result: cat!(measure::percent(p * 100.0), " in 100"),
                because: Vec::new(),
            });
        }
        if timing.budbreak.is_none() && !timing.tape.is_empty() {
            let half = match self.question.place.hemisphere() {
                Hemisphere::North => "the northern",
                Hemisphere::South => "the southern",
            };
            list.push(Made {
                how: cat!(
                    "Months in which bark slips = those of ",
                    half,
                    " half of the world: "
                ),
                result: "no number, only “test first”".into(),
                because: vec![Cite::practice("late winter to early summer")],
            });
        }
    }

    fn made_after(&self, list: &mut Vec<Made>) {
        let answer = self.answer;
        if let Some(effort) = &answer.effort {
            let tasks = effort.tasks;
            let sum = tasks.fixed + tasks.limbs + tasks.score + tasks.peel + tasks.scrape;
            list.push(Made {
                how: cat!(
                    "Minutes = delays × (fixed + limbs + bark work, longer where it is tight) + walk; likely work before delays ",
                    measure::plain(sum, 1),
                    " min, bark slips in ",
                    measure::percent(effort.slip * 100.0),
                    " in 100 = "
                ),
                result: cat!(
                    measure::minutes(effort.likely_min),
                    " (",
                    measure::minutes(effort.low_min),
                    super::TO,
                    measure::minutes(effort.high_min),
                    ")"
                ),
                because: effort.because.clone(),
            });
        }
        if let Some(habitat) = &answer.habitat {
            list.push(Made {
                how: cat!(
                    "Years standing: half-life of ",
                    super::durability(habitat.durability),
                    ", × ½ to × 2 = "
                ),
                result: cat!(
                    measure::years(habitat.half_life_years.1),
                    " years (",
                    measure::years(habitat.half_life_years.0),
                    super::TO,
                    measure::years(habitat.half_life_years.2),
                    ")"
                ),
                because: habitat.because.clone(),
            });
        }
    }
}
