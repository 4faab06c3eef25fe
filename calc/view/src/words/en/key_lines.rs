//! The line under the title of each folded part: its key number, true without opening it, 75 characters at most.

use super::say::Say;
use super::{effort, phrase};
use crate::measure;
use crate::words::gap::other_tree;
use crate::words::m;
use calc::answer::{Changed, Conditional, Outcome};
use calc::models::effort::EffortAnswer;
use calc::terms::method::{Level, Method};
use calc::terms::quantity::Units;
use chrono::Datelike;

/// The longest key line.
pub const MOST: usize = 75;

/// The first text that fits, else the last.
fn fitting<const N: usize>(texts: [String; N]) -> String {
    let mut last = String::new();
    for text in texts {
        if text.chars().count() <= MOST {
            return text;
        }
        last = text;
    }
    last
}

/// An open condition, as the title of what stands behind it.
fn condition(condition: Conditional, units: Units) -> String {
    let reach = |m: f64| measure::reach(m).first(units).to_owned();
    match condition {
        Conditional::NothingInReach { within_m } => m::lines_if_nothing(reach(within_m)),
        Conditional::NoLine { within_m } => m::lines_if_no_line(reach(within_m)),
        Conditional::HeightUnder { height_m } => {
            m::lines_if_under(measure::length(height_m).first(units))
        }
        Conditional::WholeClone => m::LINES_IF_CLONE.into(),
        Conditional::NoOakWilt => m::LINES_IF_NO_WILT.into(),
        Conditional::SpeciesSuits => m::LINES_IF_SUITS.into(),
    }
}

/// How long a ring takes now: `about 4 minutes (3 to 6)`.
fn minutes_now(effort: &EffortAnswer) -> String {
    let (span, hours) =
        measure::span_of_minutes(effort.low_min, effort.likely_min, effort.high_min);
    effort::minutes_said(&span, hours)
}

impl Say<'_> {
    /// The title of the plan behind an open question: `If nothing stands within 163 ft`.
    pub fn if_title(&self) -> String {
        let open = self.answer.conditional.iter().flat_map(|it| &it.conditions);
        let all: Vec<String> = open.map(|it| condition(*it, self.units())).collect();
        m::lines_if(phrase::row(&all))
    }

    /// When: the stretch, or the best time of another method. A stretch for a ring that does not lead says so.
    pub fn key_when(&self, about_ring: bool) -> String {
        let timing = &self.answer.timing;
        let head = self.answer.headline_method;
        let months = m::lines_sentence(phrase::sentence(&m::method_months(head)));
        if !about_ring {
            return months;
        }
        if head != Method::BarkRing {
            return match timing.next_good.zip(timing.next_good_to) {
                Some((from, to)) => m::lines_ring_days(measure::days(from, to)),
                None => months,
            };
        }
        match (timing.best_from.zip(timing.best_to), timing.sd_open) {
            (Some((from, to)), Some(spread)) => {
                let days = measure::days(from, to);
                fitting([
                    m::lines_best_spread(m::LinesBestSpread {
                        days: days.as_str(),
                        spread: weeks(spread),
                    }),
                    m::lines_best(days.as_str()),
                ])
            }
            (Some((from, to)), None) => m::lines_best(measure::days(from, to)),
            (None, _) => match timing.next_good.zip(timing.next_good_to) {
                Some((from, to)) => m::lines_next(measure::days(from, to)),
                None => months,
            },
        }
    }

    /// Keep clear: the two distances.
    pub fn key_keep(&self) -> String {
        let units = self.units();
        let zone = measure::reach(self.answer.reach.zone_m);
        let zone = zone.first(units);
        match self.answer.people_out_m.map(measure::reach) {
            Some(out) => m::lines_keep(m::LinesKeep {
                out: out.first(units),
                zone,
            }),
            None => m::lines_throws(zone),
        }
    }

    /// How long: minutes now, and with the visits; those of a ring where nobody timed what leads. None where no number
    /// is known.
    pub fn key_long(&self) -> Option<String> {
        let answer = self.answer;
        if answer.headline_method == Method::BarkRing {
            let effort = answer.effort.as_ref()?;
            let now = phrase::sentence(&minutes_now(effort));
            let long = effort.three_years;
            if long.visits == 0 {
                return Some(m::lines_sentence(now));
            }
            let whole = long.minutes;
            let ([_, whole, _], hours) =
                measure::span_of_minutes(whole.low, whole.likely, whole.high);
            let visits = long.visits;
            return Some(if hours {
                m::lines_long_hours(m::LinesLongHours { now, whole, visits })
            } else {
                m::lines_long(m::LinesLong { now, whole, visits })
            });
        }
        let mut all = answer.work.iter();
        let work = all.find(|it| it.method == answer.headline_method);
        let Some(now) = work.and_then(|it| it.now.as_ref()) else {
            let effort = answer.effort.as_ref()?;
            return Some(m::lines_ring_work(minutes_now(effort)));
        };
        let range = phrase::to(measure::minutes(now.low), measure::minutes(now.high));
        Some(match now.likely.map(measure::minutes) {
            Some(likely) => m::lines_work(m::LinesWork { likely, range }),
            None => m::lines_work_range(range),
        })
    }

    /// Then check: the first look, and how many follow.
    pub fn key_check(&self) -> Option<String> {
        let visits = &self.answer.visits;
        let (first, last) = (visits.first()?, visits.last()?);
        let days = measure::days(first.from, first.to);
        Some(match visits.len() - 1 {
            0 => m::lines_one_look(days),
            more => m::lines_looks(m::LinesLooks {
                days,
                more,
                year: last.to.year(),
            }),
        })
    }

    /// What it leaves.
    pub fn key_leaves(&self) -> Option<String> {
        let habitat = self.answer.habitat.as_ref()?;
        let (low, _, high) = habitat.half_life_years;
        Some(if habitat.feeding_wood_only {
            m::lines_leaves_feeding(m::LinesLeavesFeeding { low, high })
        } else {
            m::lines_leaves_holes(m::LinesLeavesHoles { low, high })
        })
    }

    /// Stem by stem: what is done with each.
    pub fn key_stems(&self) -> String {
        let units = self.units();
        let mut all: Vec<String> = Vec::new();
        for stem in &self.answer.stems {
            let number = all.len() + 1;
            all.push(match &stem.ring {
                _ if stem.spared => m::lines_stem_keep(number),
                Some(ring) if stem.headline_method == Method::BarkRing => {
                    let ring = measure::ring(ring.better_mm);
                    m::lines_stem_ring(number, ring.first(units))
                }
                _ => m::lines_stem_other(number, m::method_act(stem.headline_method)),
            });
        }
        let some = |most: usize| match all.len() > most {
            true => m::lines_stems_more(all[..most].join(", ")),
            false => m::lines_sentence(all.join(", ")),
        };
        fitting([some(all.len()), some(4), some(3), some(2), some(1)])
    }

    /// Methods: how many fit, and the first of them.
    pub fn key_methods(&self) -> String {
        let mut fits: Vec<&str> = Vec::new();
        for level in [Level::Recommended, Level::Possible] {
            for line in &self.answer.methods {
                if line.level == level {
                    fits.push(m::lines_method(line.method).text());
                }
            }
        }
        let (fit, all) = (fits.len(), self.answer.methods.len());
        if fits.is_empty() {
            return m::lines_fit_none(m::LinesFitNone { fit, all });
        }
        let some = |most: usize| {
            let shown = fit.min(most);
            let names = fits[..shown].join(", ");
            match fit - shown {
                0 => m::lines_fit(m::LinesFit { fit, all, names }),
                more => m::lines_fit_more(m::LinesFitMore {
                    fit,
                    all,
                    names,
                    more,
                }),
            }
        };
        fitting([some(4), some(3), some(2), some(1)])
    }

    /// Is it this tree?
    pub fn key_is(&self) -> String {
        if self.question.tree.species.unknown {
            return m::LINES_NAME_OPEN.into();
        }
        let alike = self.answer.species.look_alikes;
        let native = alike.iter().filter(|it| it.native);
        let names = native.map(|it| other_tree(it.scientific, it.name));
        let names: Vec<String> = names.collect();
        let count = alike.len();
        if names.is_empty() {
            return m::lines_alike(count);
        }
        fitting([
            m::lines_alike_native(count, phrase::row(&names)),
            m::lines_alike_count(m::LinesAlikeCount {
                count,
                native: names.len(),
            }),
        ])
    }

    /// How sure: the grade of the height, and the change that weighs most.
    pub fn key_sure(&self) -> String {
        let height = |change: &str| match self.answer.height.measured {
            true => m::lines_sure_measured(change),
            false => m::lines_sure_like_trees(change),
        };
        let changes = &self.answer.changes;
        let mut all = changes.iter();
        let first = all.find(|it| it.outcome == Outcome::Professional);
        match first.or(changes.first()) {
            Some(first) => {
                let said = self.change(first);
                fitting([
                    height(&said),
                    said,
                    height(&m::lines_changes(changes.len())),
                ])
            }
            None => height(&m::LINES_NO_CHANGE),
        }
    }

    /// Working: how many of each.
    pub fn key_working(&self, stops: bool) -> String {
        m::lines_working(m::LinesWorking {
            steps: self.made(stops).len(),
            sources: self.answer.sources.len(),
            assumed: self.assumed(stops).len(),
        })
    }

    /// What would change a stop: the distance or height at which it turns.
    pub fn key_changes(&self) -> String {
        let mut all = self.answer.changes.iter();
        let turns = all.find(|it| {
            matches!(
                it.changed,
                Changed::Distance { .. } | Changed::Height { .. }
            )
        });
        match turns {
            Some(first) => self.change(first),
            None => m::CONFIDENCE_NOTHING_CHANGES.into(),
        }
    }

    /// Do, where it is folded: the width and the stretch of the trunk.
    pub fn key_do(&self) -> String {
        match crate::answer::ring_of(self.answer) {
            Some(ring) if self.answer.headline_method == Method::BarkRing => {
                m::lines_do_ring(measure::ring(ring.better_mm).first(self.units()))
            }
            _ => m::lines_sentence(phrase::sentence(&m::method_act(
                self.answer.headline_method,
            ))),
        }
    }

    /// The numbers for a professional, in one line.
    pub fn key_professional(&self) -> String {
        let reach = &self.answer.reach;
        let units = self.units();
        m::lines_professional(m::LinesProfessional {
            height: measure::length(reach.height_m).first(units),
            zone: measure::reach(reach.zone_m).first(units),
            trunk: measure::size(self.question.tree.largest().dbh.mm()).first(units),
        })
    }

    /// How many cautions are folded, and what they are about.
    pub fn key_cautions(&self, names: &[&str]) -> String {
        let count = names.len();
        let some = |most: usize| {
            let shown = count.min(most);
            let names = names[..shown].join(", ");
            if shown < count {
                m::lines_cautions_more(count, names)
            } else {
                m::lines_cautions(count, names)
            }
        };
        fitting([some(6), some(4), some(3), some(2), some(1)])
    }
}

/// Days as weeks, from about two weeks on.
fn weeks(days: f64) -> String {
    if days < 11.0 {
        return m::lines_days(measure::plain(days, 0));
    }
    m::lines_weeks(measure::plain(days / 7.0, 0))
}
