//! How each number was made: a formula in words with its values, and what it rests on.

use super::say::Say;
use super::{confidence, effort, phrase, reach, season};
use crate::measure;
use crate::words::m;
use calc::models::ring::{Ring, WidthRule};
use calc::terms::cite::Cite;
use calc::terms::place::Hemisphere;

/// A step of the working.
pub struct Made {
    /// What comes out and how, up to the result.
    pub how: String,
    /// The result.
    pub result: String,
    /// What is to be said of it.
    pub rest: String,
    /// What it rests on.
    pub because: Vec<Cite>,
}

/// The steps in their order.
struct Steps(Vec<Made>);

impl Steps {
    /// Adds a step.
    fn made(&mut self, how: String, result: String, because: &[Cite]) {
        self.more(how, result, String::new(), because);
    }

    /// Adds a step of which more is to be said.
    fn more(&mut self, how: String, result: String, rest: String, because: &[Cite]) {
        self.0.push(Made {
            how,
            result,
            rest,
            because: because.to_vec(),
        });
    }
}

fn mm(value: f64) -> String {
    cat!(measure::plain(value, 0), " mm")
}

impl Say<'_> {
    /// How each number was made, in the order of the answer. A stop shows only what it rests on.
    pub fn made(&self, stops: bool) -> Vec<Made> {
        let mut list = Steps(Vec::new());
        self.made_group(&mut list);
        // Widths and slip dates belong to an answer that has a ring in it, its own or one under a condition.
        let answer = self.answer;
        let ring = !stops && (answer.effort.is_some() || answer.conditional.is_some());
        if ring {
            self.made_ring(&mut list);
        }
        self.made_reach(&mut list);
        if ring {
            self.made_season(&mut list);
        }
        if !stops {
            self.made_after(&mut list);
        }
        list.0
    }

    /// What the group asks for beyond the models, with the group as its source.
    fn made_group(&self, list: &mut Steps) {
        let Some(group) = self.group_answer() else {
            return;
        };
        let own = [Cite::group("own rule")];
        if let Some(most) = group.volunteers_mm {
            let how = "A professional's tree, by the group's own rule: over ";
            list.made(how.into(), measure::size(most).text(self.units()), &own);
        }
        if let Some(months) = self.group_months() {
            list.made(cat!(months, "."), String::new(), &own);
        }
    }

    fn made_ring(&self, list: &mut Steps) {
        let q = self.question;
        let units = self.units();
        let largest = q.tree.largest();
        let dbh = largest.dbh.mm();
        let across = measure::size_read(dbh);
        if largest.from_girth {
            let girth = measure::size_read(dbh * core::f64::consts::PI);
            let how = cat!(
                "Across = around ÷ 3.1416 = ",
                girth.first(units),
                " ÷ 3.1416 = "
            );
            list.made(how, across.text(units), &[]);
        }
        let Some(stem) = self.answer.stems.iter().find(|stem| stem.dbh_mm == dbh) else {
            return;
        };
        if let (Some(bark), Some(row)) = (&stem.bark, q.tree.species.bark)
            && !bark.measured
        {
            let how = cat!(
                "Bark = ",
                measure::plain(row.coefficient, 4),
                " × ",
                across.first(units),
                " = "
            );
            let ends = cat!(
                "; it lies between ",
                measure::bark(bark.low_mm).first(units),
                " and ",
                measure::bark(bark.high_mm).first(units)
            );
            let result = measure::bark(bark.mm).text(units);
            list.more(how, result, ends, &bark.because);
        }
        if let Some(inside) = stem.inside_bark_mm {
            let how = "Inside the bark = across − 2 × bark = ";
            list.made(how.into(), measure::size_read(inside).text(units), &[]);
        }
        if let Some(ring) = &stem.ring {
            self.made_widths(list, ring);
        }
    }

    fn made_widths(&self, list: &mut Steps, ring: &Ring) {
        let units = self.units();
        let constants = &self.reference.constants.ring;
        let least = self.question.tree.species.ring_minimum_mm;
        let minimum = least.map_or_else(String::new, |least| {
            cat!(", ", mm(least), " for this species")
        });
        let how = cat!(
            "Ring, at least = ",
            mm(constants.least_mm),
            " for any tree",
            minimum,
            ", rounded up = "
        );
        list.made(how, measure::ring(ring.at_least_mm).text(units), &[]);
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
        let how = cat!(
            "Better = ",
            rule,
            " = ",
            mm(ring.better_mm),
            ", rounded up = "
        );
        list.made(
            how,
            measure::ring(ring.better_mm).text(units),
            &ring.because,
        );
        let area = cat!(
            measure::plain(ring.area_mm2 / 92_903.04, 1),
            " ft² (",
            measure::plain(ring.area_mm2 / 1.0e6, 2),
            " m²)"
        );
        let how = "Bark taken off = live share × π × (across − bark) × better width = ";
        list.made(how.into(), area, &[]);
    }

    fn made_reach(&self, list: &mut Steps) {
        let answer = self.answer;
        let height = &answer.height;
        let constants = &self.reference.constants;
        let how: String = if height.measured {
            "Height used = as measured".into()
        } else if height.whole_table {
            "Height used = the tallest of the whole table at this size, since the species is not known".into()
        } else if let Some(over) = height.over_tallest {
            cat!("Height used = tallest estimate × ", measure::plain(over, 2))
        } else if height.larger_than_grows {
            "Height used = the tallest that this shrub is taken to grow".into()
        } else {
            "Height used = what at most 1 in 10 measured trees of this size pass".into()
        };
        let (how, mut because) = (how, height.because.clone());
        let how = match self.group_factor() {
            Some(factor) => {
                because.push(Cite::group("distance"));
                cat!(how, " × ", factor, " = ")
            }
            None => cat!(how, " = "),
        };
        list.made(how, self.length(answer.reach.height_m), &because);
        if let (Some(shown), false) = (height.shown_m, height.measured) {
            let ends = match (height.low_m, height.high_m) {
                (Some(low), Some(high)) if high - low > 0.5 => {
                    confidence::rows_from(&self.length(low), &self.length(high))
                }
                _ => String::new(),
            };
            let how = "Height shown = mean of the rows for this size = ";
            list.more(how.into(), self.length(shown), ends, &[]);
        }
        let zone = answer.reach.zone_m / answer.reach.height_m;
        let how = cat!("Reach = ", measure::plain(zone, 1), " × height = ");
        let people = cat!(
            "; asked about to ",
            measure::plain(constants.reach.people_out, 0),
            " × height = ",
            self.reach(answer.reach.two_heights_m)
        );
        let zone = self.reach(answer.reach.zone_m);
        list.more(how, zone, people, &answer.reach.because);
        for target in &answer.reach.targets {
            let how = cat!(phrase::sentence(&self.target_said(target)), ": ");
            let judged = reach::judged(target.outcome, target.damage);
            list.made(how, judged.into(), &[]);
        }
    }

    fn made_season(&self, list: &mut Steps) {
        let timing = &self.answer.timing;
        let sum = self.question.tree.species.budbreak_sum;
        if let (Some(budbreak), Some(basis)) = (timing.budbreak, timing.basis) {
            let sum = sum.map_or_else(String::new, |sum| {
                cat!(
                    "; this species needs ",
                    measure::plain(sum, 0),
                    " degree-days over 5 °C"
                )
            });
            let how = cat!("Half the buds open, from ", season::basis(basis), " = ");
            list.more(how, measure::day_year(budbreak), sum, &[]);
        }
        if let (Some(opens), Some(closes)) = (timing.opens, timing.closes) {
            let best = match (timing.best_from, timing.best_to) {
                (Some(from), Some(to)) => cat!("; best ", measure::days(from, to)),
                _ => String::new(),
            };
            let how = "The bark lets go and binds again = ";
            let days = measure::days(opens, closes);
            list.more(how.into(), days, best, &timing.because);
        }
        if let (Some(p), Some(day)) = (timing.probability, self.answer.advised_day) {
            let how = cat!(
                "Chance that it slips on ",
                measure::day(day),
                " = chance that it has opened × chance that it has not closed = "
            );
            list.made(how, cat!(measure::percent(p * 100.0), " in 100"), &[]);
        }
        if timing.budbreak.is_none() && !timing.tape.is_empty() {
            let half = match self.question.place.hemisphere() {
                Hemisphere::North => "the northern",
                Hemisphere::South => "the southern",
            };
            let how = cat!(
                "Months in which bark slips = those of ",
                half,
                " half of the world: "
            );
            let result = "no number, only “test first”";
            list.made(how, result.into(), &timing.because);
        }
    }

    fn made_after(&self, list: &mut Steps) {
        let answer = self.answer;
        let range = |likely: String, unit: &str, low: String, high: String| {
            cat!(likely, unit, " (", phrase::to(low, high), ")")
        };
        if let Some(effort) = &answer.effort {
            let tasks = effort.tasks;
            let sum = tasks.fixed + tasks.limbs + tasks.score + tasks.peel + tasks.scrape;
            let how = cat!(
                "Minutes = delays × (fixed + limbs + bark work, longer where it is tight) + walk; likely work before delays ",
                measure::plain(sum, 1),
                " min, bark slips in ",
                measure::percent(effort.slip * 100.0),
                " in 100 = "
            );
            let minutes = range(
                measure::minutes(effort.likely_min),
                "",
                measure::minutes(effort.low_min),
                measure::minutes(effort.high_min),
            );
            list.made(how, minutes, &effort.because);
            if let Some(own) = effort.own {
                let how = "Your own rate = minutes of your own trees over ours, with ours as the starting point = ";
                list.made(how.into(), effort::times(own.factor), &[Cite::measured("")]);
            }
            let whole = effort.whole.minutes;
            let how = cat!(
                "With ",
                phrase::small(effort.whole.visits),
                " visits = minutes × (1 + visits × share of a visit) + their walks = "
            );
            let minutes = range(
                measure::minutes(whole.likely),
                "",
                measure::minutes(whole.low),
                measure::minutes(whole.high),
            );
            let because = [calc::terms::cite::cite("AUSDEA1915", "price of a pass")];
            list.made(how, minutes, &because);
        }
        if let Some(habitat) = &answer.habitat {
            let (low, likely, high) = habitat.half_life_years;
            let how = cat!(
                "Years standing: half-life of ",
                &m::habitat_durability(habitat.durability),
                ", × ½ to × 2 = "
            );
            let years = range(
                measure::years(likely),
                " years",
                measure::years(low),
                measure::years(high),
            );
            list.made(how, years, &habitat.because);
        }
    }
}
