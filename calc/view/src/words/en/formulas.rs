//! How each number was made: a formula in words with its values, and what it rests on.

use super::say::Say;
use super::{confidence, effort, phrase, reach, season};
use crate::measure;
use crate::words::gap::Date;
use crate::words::m;
use calc::models::ring::{Ring, WidthRule};
use calc::terms::cite::{Cite, cite};
use calc::terms::place::Hemisphere;
use calc::terms::source::AUSDEA1915;

/// A step of the working.
pub struct WorkingStep {
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
struct Steps(Vec<WorkingStep>);

impl Steps {
    /// Adds a step.
    fn made(&mut self, how: String, result: String, because: &[Cite]) {
        self.more(how, result, String::new(), because);
    }

    /// Adds a step of which more is to be said.
    fn more(&mut self, how: String, result: String, rest: String, because: &[Cite]) {
        self.0.push(WorkingStep {
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
    pub fn made(&self, stops: bool) -> Vec<WorkingStep> {
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
            list.made(
                m::FORMULAS_GROUP_SIZE.into(),
                measure::size(most).text(self.units()),
                &own,
            );
        }
        if let Some(months) = self.group_months() {
            list.made(m::formulas_sentence(months), String::new(), &own);
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
            let how = m::formulas_across(girth.first(units));
            list.made(how, across.text(units), &[]);
        }
        let Some(stem) = self.answer.stems.iter().find(|stem| stem.dbh_mm == dbh) else {
            return;
        };
        if let (Some(bark), Some(row)) = (&stem.bark, q.tree.species.bark)
            && !bark.measured
        {
            let how = m::formulas_bark(m::FormulasBark {
                factor: measure::plain(row.coefficient, 4),
                size: across.first(units),
            });
            let ends = m::formulas_bark_between(m::FormulasBarkBetween {
                low: measure::bark(bark.low_mm).first(units),
                high: measure::bark(bark.high_mm).first(units),
            });
            let result = measure::bark(bark.mm).text(units);
            list.more(how, result, ends, &bark.because);
        }
        if let Some(inside) = stem.inside_bark_mm {
            list.made(
                m::FORMULAS_INSIDE.into(),
                measure::size_read(inside).text(units),
                &[],
            );
        }
        if let Some(ring) = &stem.ring {
            self.made_widths(list, ring);
        }
    }

    fn made_widths(&self, list: &mut Steps, ring: &Ring) {
        let units = self.units();
        let constants = &self.reference.constants.ring;
        let least = self.question.tree.species.ring_minimum_mm;
        let any = mm(constants.least_mm);
        let how = match least {
            Some(least) => m::formulas_least_species(m::FormulasLeastSpecies {
                any,
                species: mm(least),
            }),
            None => m::formulas_least(any),
        };
        list.made(how, measure::ring(ring.at_least_mm).text(units), &[]);
        let rule = match ring.decided_by {
            WidthRule::Least => m::FORMULAS_RULE_LEAST.into(),
            WidthRule::OutlastsCallus => {
                m::formulas_rule_callus(measure::plain(constants.closure_factor, 0))
            }
            WidthRule::HalfDiameter => m::FORMULAS_RULE_HALF.into(),
            WidthRule::WholeDiameter => m::FORMULAS_RULE_WHOLE.into(),
            WidthRule::Most => m::formulas_rule_most(mm(constants.most_mm)),
        };
        let how = m::formulas_better(m::FormulasBetter {
            rule,
            width: mm(ring.better_mm),
        });
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
        list.made(m::FORMULAS_AREA.into(), area, &[]);
    }

    fn made_reach(&self, list: &mut Steps) {
        let answer = self.answer;
        let height = &answer.height;
        let constants = &self.reference.constants;
        let how: String = if height.measured {
            m::FORMULAS_HEIGHT_MEASURED.into()
        } else if height.whole_table {
            m::FORMULAS_HEIGHT_TABLE.into()
        } else if let Some(over) = height.over_tallest {
            m::formulas_height_over(measure::plain(over, 2))
        } else if height.larger_than_grows {
            m::FORMULAS_HEIGHT_SHRUB.into()
        } else {
            m::FORMULAS_HEIGHT_ONE_IN_TEN.into()
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
            let how = m::FORMULAS_HEIGHT_SHOWN;
            list.more(how.into(), self.length(shown), ends, &[]);
        }
        let zone = answer.reach.zone_m / answer.reach.height_m;
        let how = m::formulas_reach(measure::plain(zone, 1));
        let people = m::formulas_reach_asked(m::FormulasReachAsked {
            factor: measure::plain(constants.reach.people_out, 0),
            reach: self.reach(answer.reach.two_heights_m),
        });
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
                m::formulas_degree_days(measure::plain(sum, 0))
            });
            let how = m::formulas_buds(season::basis(basis));
            list.more(how, measure::day_year(budbreak), sum, &[]);
        }
        if let (Some(opens), Some(closes)) = (timing.opens, timing.closes) {
            let best = match (timing.best_from, timing.best_to) {
                (Some(from), Some(to)) => m::formulas_best(measure::days(from, to)),
                _ => String::new(),
            };
            let how = m::FORMULAS_SLIPS;
            let days = measure::days(opens, closes);
            list.more(how.into(), days, best, &timing.because);
        }
        if let (Some(p), Some(day)) = (timing.probability, self.answer.advised_day) {
            let how = m::formulas_chance(Date::day(day));
            list.made(how, m::formulas_in_100(p * 100.0), &[]);
        }
        if timing.budbreak.is_none() && !timing.tape.is_empty() {
            let how = match self.question.place.hemisphere() {
                Hemisphere::North => m::FORMULAS_MONTHS_NORTH,
                Hemisphere::South => m::FORMULAS_MONTHS_SOUTH,
            };
            let how = String::from(how);
            let result = m::FORMULAS_TEST_FIRST;
            list.made(how, result.into(), &timing.because);
        }
    }

    fn made_after(&self, list: &mut Steps) {
        let answer = self.answer;
        let range = |likely: String, low: String, high: String| {
            cat!(likely, " (", phrase::to(low, high), ")")
        };
        if let Some(effort) = &answer.effort {
            let tasks = effort.tasks;
            let sum = tasks.fixed + tasks.limbs + tasks.score + tasks.peel + tasks.scrape;
            let how = m::formulas_minutes(measure::plain(sum, 1), effort.slip * 100.0);
            let minutes = range(
                measure::minutes(effort.likely_min),
                measure::minutes(effort.low_min),
                measure::minutes(effort.high_min),
            );
            list.made(how, minutes, &effort.because);
            if let Some(own) = effort.own {
                let how = m::FORMULAS_OWN_RATE;
                list.made(how.into(), effort::times(own.factor), &[Cite::measured("")]);
            }
            let whole = effort.whole.minutes;
            let how = m::formulas_visits(effort.whole.visits);
            let minutes = range(
                measure::minutes(whole.likely),
                measure::minutes(whole.low),
                measure::minutes(whole.high),
            );
            let because = [cite(AUSDEA1915, "price of a pass")];
            list.made(how, minutes, &because);
        }
        if let Some(habitat) = &answer.habitat {
            let (low, likely, high) = habitat.half_life_years;
            let how = m::formulas_standing(m::habitat_durability(habitat.durability));
            let years = range(
                m::habitat_years_label(likely),
                measure::years(low),
                measure::years(high),
            );
            list.made(how, years, &habitat.because);
        }
    }
}
