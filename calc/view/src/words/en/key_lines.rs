//! The line under the title of each folded part: its key number, true without opening it, 75 characters at most.

use super::say::Say;
use super::{effort, phrase};
use crate::measure;
use crate::words::m;
use calc::answer::{Changed, Conditional, Outcome};
use calc::terms::method::{Level, Method};
use calc::terms::quantity::Units;

/// Titles that only folds have.
pub const SURE_AND_CHANGES: &str = "How sure, and what would change it";
/// In a stop.
pub const FOR_PROFESSIONAL: &str = "Numbers for the professional";
/// In a stop at a line.
pub const FOR_LINE_OWNER: &str = "For the owner’s people";
/// Do, where the answer waits.
pub const DO_THEN: &str = "Do, on the day";
/// What else stands, where the answer waits.
pub const CANT_WAIT: &str = "Can’t wait?";
/// What else stands beside the headline.
pub const BESIDE: &str = "Why, and what else stands";
/// The cautions that are not in view.
pub const CHECK_THESE_TOO: &str = "Check these too";
/// Under it.
pub const ONLY_THEN: &str = "Then, and only then, there is a plan. Not this tree’s answer.";
/// What to hold against the other outcome.
pub const OTHERWISE: &str = "Otherwise";

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
        Conditional::NothingInReach { within_m } => cat!("nothing stands within ", reach(within_m)),
        Conditional::NoLine { within_m } => cat!("no line is within ", reach(within_m)),
        Conditional::HeightUnder { height_m } => {
            cat!(
                "it is under ",
                measure::length(height_m).first(units),
                " tall"
            )
        }
        Conditional::WholeClone => "its whole clone can be ringed".into(),
        Conditional::NoOakWilt => "oak wilt is not there".into(),
        Conditional::SpeciesSuits => "a ring suits its kind".into(),
    }
}

impl Say<'_> {
    /// The title of the plan behind an open question: `If nothing stands within 163 ft`.
    pub fn if_title(&self) -> String {
        let open = self.answer.conditional.iter().flat_map(|it| &it.conditions);
        let all: Vec<String> = open.map(|it| condition(*it, self.units())).collect();
        cat!("If ", phrase::row(&all))
    }

    /// When: the stretch, or the best time of another method.
    pub fn key_when(&self, about_ring: bool) -> String {
        let timing = &self.answer.timing;
        let head = self.answer.headline_method;
        let months = cat!(phrase::sentence(&m::method_months(head)), ".");
        if !about_ring {
            return months;
        }
        let year = timing.best_from.zip(timing.best_to);
        let spread = timing
            .sd_open
            .map_or_else(String::new, |days| cat!(", give or take ", weeks(days)));
        match year {
            Some((from, to)) => {
                let best = measure::days(from, to);
                fitting([
                    cat!("Best ", &best, &spread, "."),
                    cat!("Best ", &best, "."),
                ])
            }
            None => match (timing.next_good, timing.next_good_to) {
                (Some(from), Some(to)) => cat!("Next good days: ", measure::days(from, to), "."),
                _ => months,
            },
        }
    }

    /// Keep clear: the two distances.
    pub fn key_keep(&self) -> String {
        let units = self.units();
        let zone = measure::reach(self.answer.reach.zone_m);
        let zone = zone.first(units);
        match self.answer.people_out_m.map(measure::reach) {
            Some(out) => cat!(
                "People ",
                out.first(units),
                " off while you work; it can throw wood ",
                zone,
                "."
            ),
            None => cat!("It can throw wood ", zone, "."),
        }
    }

    /// How long: minutes now, and with the visits. None where no number is known.
    pub fn key_long(&self) -> Option<String> {
        let answer = self.answer;
        if answer.headline_method == Method::BarkRing {
            let effort = answer.effort.as_ref()?;
            let (span, hours) =
                measure::span_of_minutes(effort.low_min, effort.likely_min, effort.high_min);
            let now = phrase::sentence(&effort::minutes_said(&span, hours));
            let long = effort.three_years;
            if long.visits == 0 {
                return Some(cat!(now, "."));
            }
            let whole = long.minutes;
            let (whole, hours) = measure::span_of_minutes(whole.low, whole.likely, whole.high);
            return Some(cat!(
                now,
                "; about ",
                &whole[1],
                if hours { " hours" } else { "" },
                " with ",
                phrase::small(long.visits),
                if long.visits == 1 {
                    " visit."
                } else {
                    " visits."
                }
            ));
        }
        let work = answer
            .work
            .iter()
            .find(|it| it.method == answer.headline_method)?;
        let now = work.now.as_ref()?;
        let said = |value: f64| measure::minutes(value);
        Some(match now.likely {
            Some(likely) => cat!(
                "About ",
                said(likely),
                " minutes (",
                phrase::to(said(now.low), said(now.high)),
                ")."
            ),
            None => cat!(phrase::to(said(now.low), said(now.high)), " minutes."),
        })
    }

    /// Then check: the first look, and how many follow.
    pub fn key_check(&self) -> Option<String> {
        let visits = &self.answer.visits;
        let (first, last) = (visits.first()?, visits.last()?);
        let first = measure::days(first.from, first.to);
        let more = visits.len() - 1;
        if more == 0 {
            return Some(cat!("One look, ", first, "."));
        }
        let year = measure::number(chrono::Datelike::year(&last.to).unsigned_abs());
        let rest = cat!(
            ", then ",
            measure::number(more as u32),
            if more == 1 {
                " visit to "
            } else {
                " visits to "
            },
            year,
            "."
        );
        Some(cat!("First look ", first, rest))
    }

    /// What it leaves.
    pub fn key_leaves(&self) -> Option<String> {
        let habitat = self.answer.habitat.as_ref()?;
        let (low, _, high) = habitat.half_life_years;
        let size = if habitat.feeding_wood_only {
            "Feeding wood, no holes. "
        } else {
            "Big enough for holes. "
        };
        Some(cat!(
            size,
            "Half such snags fall ",
            measure::years(low),
            " to ",
            measure::years(high),
            " years after death."
        ))
    }

    /// Methods: how many fit, and the first of them.
    pub fn key_methods(&self) -> String {
        let mut fit: Vec<&str> = Vec::new();
        for level in [Level::Recommended, Level::Possible] {
            for line in &self.answer.methods {
                if line.level == level {
                    fit.push(name(line.method));
                }
            }
        }
        let count = cat!(
            measure::number(fit.len() as u32),
            " of ",
            measure::number(self.answer.methods.len() as u32),
            " fit"
        );
        if fit.is_empty() {
            return cat!(count, ".");
        }
        let some = |most: usize| {
            let shown = fit.len().min(most);
            let rest = fit.len() - shown;
            let names = fit[..shown].join(", ");
            let more = if rest > 0 {
                cat!(" and ", measure::number(rest as u32), " more")
            } else {
                String::new()
            };
            cat!(&count, ": ", names, more, ".")
        };
        fitting([some(4), some(3), some(2), some(1)])
    }

    /// Is it this tree?
    pub fn key_is(&self) -> String {
        if self.question.tree.species.unknown {
            return "Its name is open: have it named before you kill it.".into();
        }
        let alike = self.answer.species.look_alikes;
        let native = alike.iter().filter(|it| it.native).count();
        let names: Vec<&str> = alike
            .iter()
            .filter(|it| it.native)
            .map(|it| it.name)
            .collect();
        let count = cat!(
            measure::number(alike.len() as u32),
            if alike.len() == 1 {
                " looks alike"
            } else {
                " look alike"
            }
        );
        if native == 0 {
            return cat!(count, ".");
        }
        fitting([
            cat!(&count, "; native: ", phrase::row(&names), "."),
            cat!(
                &count,
                ", ",
                measure::number(native as u32),
                " of them native."
            ),
        ])
    }

    /// How sure: the grade of the dates or the height, and the nearest change.
    pub fn key_sure(&self) -> String {
        let height = if self.answer.height.measured {
            "Height: measured. "
        } else {
            "Height: like trees. "
        };
        let changes = &self.answer.changes;
        let first = changes
            .iter()
            .find(|it| it.outcome == Outcome::Professional)
            .or(changes.first());
        match first {
            Some(first) => {
                let said = self.change(first);
                fitting([
                    cat!(height, &said),
                    said,
                    match changes.len() {
                        1 => cat!(height, "One change would turn it."),
                        count => cat!(
                            height,
                            measure::number(count as u32),
                            " changes would turn it."
                        ),
                    },
                ])
            }
            None => cat!(height, "No single change near these values turns it."),
        }
    }

    /// Working: how many of each.
    pub fn key_working(&self, stops: bool) -> String {
        let number = |count: usize| measure::number(count as u32);
        let made = self.made(stops).len();
        let assumed = self.assumed(stops).len();
        let sources = self.answer.sources.len();
        cat!(
            number(made),
            if made == 1 { " step, " } else { " steps, " },
            number(sources),
            if sources == 1 {
                " source, "
            } else {
                " sources, "
            },
            number(assumed),
            if assumed == 1 {
                " thing assumed."
            } else {
                " things assumed."
            }
        )
    }

    /// What would change a stop: the distance or height at which it turns.
    pub fn key_changes(&self) -> String {
        let turns: Vec<String> = self
            .answer
            .changes
            .iter()
            .filter(|it| {
                matches!(
                    it.changed,
                    Changed::Distance { .. } | Changed::Height { .. }
                )
            })
            .map(|it| self.change(it))
            .collect();
        match turns.into_iter().next() {
            Some(first) => first,
            None => m::CONFIDENCE_NOTHING_CHANGES.into(),
        }
    }

    /// Do, where it is folded: the width and the stretch of the trunk.
    pub fn key_do(&self) -> String {
        match crate::answer::ring_of(self.answer) {
            Some(ring) if self.answer.headline_method == Method::BarkRing => cat!(
                "Ring ",
                measure::ring(ring.better_mm).first(self.units()),
                ", between 3 and 4½ ft (0.9 to 1.4 m) up."
            ),
            _ => cat!(
                phrase::sentence(&m::method_act(self.answer.headline_method)),
                "."
            ),
        }
    }

    /// The numbers for a professional, in one line.
    pub fn key_professional(&self) -> String {
        let reach = &self.answer.reach;
        let units = self.units();
        cat!(
            "Reach ",
            measure::reach(reach.height_m).first(units),
            " and ",
            measure::reach(reach.zone_m).first(units),
            ", trunk ",
            measure::size(self.question.tree.largest().dbh.mm()).first(units),
            "."
        )
    }

    /// How many cautions are folded, and what they are about.
    pub fn key_cautions(&self, names: &[&str]) -> String {
        let count = measure::number(names.len() as u32);
        let some = |most: usize| {
            let shown = names.len().min(most);
            let more = if shown < names.len() { " …" } else { "." };
            cat!(&count, ": ", names[..shown].join(", "), more)
        };
        fitting([some(6), some(4), some(3), some(2), cat!(&count, ".")])
    }
}

/// Days as weeks, from two weeks on.
fn weeks(days: f64) -> String {
    if days < 11.0 {
        return cat!(measure::plain(days, 0), " days");
    }
    cat!(measure::plain(days / 7.0, 0), " weeks")
}

/// A method in a word or two.
pub fn name(method: Method) -> &'static str {
    match method {
        Method::BarkRing => "bark ring",
        Method::SawRing => "saw ring",
        Method::Frill => "frill (licensed)",
        Method::BasalBark => "basal bark (licensed)",
        Method::CutStump => "cut stump (licensed)",
        Method::PullOrDig => "pull or dig",
        Method::Fell => "fell",
        Method::RepeatCutting => "repeat cutting",
        Method::LeaveIt => "leave it",
    }
}
