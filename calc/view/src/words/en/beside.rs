//! What stands beside the first sentence: other methods, what would change it, what to say on the phone.

use super::{Near, Say, act, by, region, row, sentence, signs, target};
use crate::measure;
use calc::answer::{Also, AlsoKind, Change, Changed, Outcome};
use calc::model::reach::{self, Judged, Why};
use calc::terms::method::{Level, Method};

impl Say<'_> {
    /// A tree that is native where it stands: the first thing said.
    #[must_use]
    pub fn native(&self) -> Option<String> {
        let region_said = region(self.question.region.as_deref().unwrap_or(""));
        self.answer.species.native_here.then(|| {
            cat!(
                "This species is native in ",
                region_said,
                ". Make sure that it is this tree, and ask why it must go."
            )
        })
    }

    /// The nearest thing that counts.
    #[must_use]
    pub fn nearest(&self) -> Option<&Judged> {
        self.nearest_of(false)
    }

    /// The nearest thing, whether it counts or not.
    pub(super) fn nearest_of(&self, all: bool) -> Option<&Judged> {
        let targets = self.answer.reach.targets.iter();
        let asked = targets.filter(|target| all || target.outcome.is_some());
        let known = asked.filter_map(|target| Some((target.distance_m?, target)));
        let nearest = known.min_by(|(a, _), (b, _)| a.total_cmp(b));
        nearest.map(|(_, target)| target)
    }

    /// What lies near, in a sentence.
    #[must_use]
    pub fn near_said(&self) -> String {
        let reach = &self.answer.reach;
        let nearest = self.decided().or(self.nearest());
        let distance =
            nearest.and_then(|target| Some((target.kind, self.length(target.distance_m?))));
        super::clear(&Near {
            outcome: reach.outcome,
            nearest: distance.as_ref().map(|(kind, m)| (*kind, m.as_str())),
            zone: &self.reach(reach.zone_m),
            out: &self.reach(reach.people_out_m),
            none_said: self.question.none_in_reach,
        })
    }

    /// What stands under the first sentence, most telling first.
    #[must_use]
    pub fn also(&self) -> Vec<String> {
        let answer = self.answer;
        let mut list = Vec::new();
        let stops = answer.outcome == Outcome::Professional;
        if !stops && answer.headline_method == Method::BarkRing {
            list.extend(self.only_possible());
        }
        if answer.outcome != Outcome::CannotTell {
            list.extend(
                answer
                    .next_line
                    .iter()
                    .chain(&answer.also)
                    .map(|also| self.beside(also)),
            );
        }
        let close = answer.reach.outcome == reach::Outcome::ClearPeopleOut;
        if !stops && close {
            list.push(self.near_said());
        }
        if let Some(near) = answer.near_limit {
            list.push(cat!(
                "Near a size limit: past ",
                measure::size(near.limit_mm).text(self.units()),
                " across, the answer would be to ",
                act(near.method),
                "."
            ));
        }
        let weak = matches!(answer.reach.why, Why::WeakTree | Why::LineNoDistance);
        if answer.height.measure_first && !weak {
            list.push(self.measure_first());
        }
        if answer.height.ask_again {
            list.push("The height looks odd for this size: feet or metres? Confirm it. Until then the taller rules.".into());
        }
        if answer.height.larger_than_grows {
            list.push("This is larger than the species grows: check the name.".into());
        }
        list
    }

    /// Measuring the height could change the answer: the height at which it does, and the way.
    #[must_use]
    pub fn measure_first(&self) -> String {
        let height = &self.answer.height;
        match height.changes_at_m {
            Some(at) if at > height.hazard_m => cat!(
                "Measure the height first: from ",
                self.length(at),
                " on, this answer changes."
            ),
            Some(at) => cat!(
                "Measure the height first: under ",
                self.length(at),
                " this answer changes."
            ),
            None => "Measure the height first: it could change this answer.".into(),
        }
    }

    /// A ring that is only possible: what stands against it. And few that die.
    fn only_possible(&self) -> Vec<String> {
        let mut list = Vec::new();
        if let Some(line) = self.line(Method::BarkRing)
            && line.level == Level::Possible
        {
            let against: Vec<String> = line
                .reasons
                .iter()
                .filter(|reason| reason.at_most == Level::Possible)
                .map(|reason| self.rule_said(reason.rule))
                .collect();
            list.push(cat!(
                "A ring is possible here, not recommended: ",
                row(&against),
                "."
            ));
        }
        let third = self
            .answer
            .outlook
            .as_ref()
            .and_then(|outlook| outlook.seasons.last());
        if let Some(season) = third
            && season.share.likely.is_some_and(|likely| likely < 50.0)
        {
            list.push(super::outlook_poor(&super::share(&season.share)));
        }
        list
    }

    /// A line beside the headline.
    #[must_use]
    pub fn beside(&self, also: &Also) -> String {
        let by = by(also.method, also.by_professional, self.question.herbicide);
        let what = cat!(act(also.method), &by);
        let and_level = match by.strip_suffix(')') {
            Some(by) => cat!(act(also.method), by, ", ", super::level(also.level), ")"),
            None => cat!(act(also.method), " (", super::level(also.level), ")"),
        };
        match also.kind {
            AlsoKind::Otherwise => cat!("Otherwise: ", what, "."),
            AlsoKind::WithoutHerbicide if also.method == Method::LeaveIt => {
                "Without herbicide no method stands.".into()
            }
            AlsoKind::WithoutHerbicide => cat!("Without herbicide: ", and_level, "."),
            AlsoKind::RingLater => match also.day {
                Some(day) => cat!("A ring could follow on ", measure::day_year(day), "."),
                None => "A ring could follow later.".into(),
            },
            AlsoKind::RingPossible => {
                let against: Vec<String> = self
                    .line(Method::BarkRing)
                    .iter()
                    .flat_map(|line| &line.reasons)
                    .map(|reason| self.rule_said(reason.rule))
                    .collect();
                cat!("A ring is possible too; against it: ", row(&against), ".")
            }
            AlsoKind::NextMethod if also.method == Method::LeaveIt => {
                "No other method stands.".into()
            }
            AlsoKind::NextMethod => cat!("The next method: ", and_level, "."),
            AlsoKind::NoRingHere => {
                "No ring here: the months in which the bark slips are all ruled out.".into()
            }
        }
    }

    /// A single change that flips the answer.
    #[must_use]
    pub fn change(&self, change: &Change) -> String {
        let units = self.units();
        let largest = self.question.largest().dbh.mm();
        let more =
            |more: bool, value: String| cat!(value, if more { " or more" } else { " or less" });
        let what = match change.changed {
            Changed::Date { to } => cat!("on ", measure::day_year(to)),
            Changed::Distance { to_m } => {
                let nearest = self.nearest().and_then(|target| target.distance_m);
                let nearest = nearest.unwrap_or(0.0);
                let m = self.length(to_m);
                if to_m > nearest {
                    cat!("with all that counts at least ", m, " away")
                } else {
                    cat!("with something only ", m, " away")
                }
            }
            Changed::Height { to_m } => cat!(
                "with a measured height of ",
                more(to_m > self.answer.height.hazard_m, self.length(to_m))
            ),
            Changed::Herbicide { allowed: true } => {
                "with herbicide by a licensed applicator".into()
            }
            Changed::Herbicide { allowed: false } => "without herbicide".into(),
            Changed::WholeClone { to: true } => "if every stem of the clone can be ringed".into(),
            Changed::WholeClone { to: false } => "if part of the clone can't be ringed".into(),
            Changed::Diameter { to_mm } => cat!(
                "with a trunk of ",
                more(to_mm > largest, measure::size(to_mm).text(units)),
                " across"
            ),
        };
        cat!(
            sentence(&what),
            ": ",
            self.then(change.outcome, change.headline_method),
            "."
        )
    }

    /// Another answer in a few words.
    fn then(&self, outcome: Outcome, method: Method) -> String {
        match outcome {
            Outcome::Do => "ring it".into(),
            Outcome::Wait if method == Method::BarkRing => "wait, then ring it".into(),
            Outcome::Wait => cat!("wait, then ", act(method)),
            Outcome::OtherMethod => act(method).into(),
            Outcome::Professional => "leave it to a professional".into(),
            Outcome::CannotTell => "we could not tell".into(),
        }
    }

    /// What it could hit, for a phone call.
    #[must_use]
    pub fn could_hit(&self) -> String {
        let mut list: Vec<String> = self
            .answer
            .reach
            .targets
            .iter()
            .map(|judged| match judged.distance_m {
                Some(m) => cat!(target(judged.kind), ", ", self.length(m), " away"),
                None => cat!(target(judged.kind), ", distance not known"),
            })
            .collect();
        // The worst and nearest stand first, so what reads alike stands together.
        list.dedup();
        if list.is_empty() {
            return "Not checked yet: they will look.".into();
        }
        cat!(sentence(&list.join("; ")), ".")
    }

    /// What it is, for a phone call.
    #[must_use]
    pub fn what_it_is(&self) -> String {
        let q = self.question;
        let stems = if q.stems.len() == 1 {
            "one stem".to_owned()
        } else {
            cat!(super::small(q.stems.len()), " stems")
        };
        let signs_said = if q.signs.is_empty() {
            String::new()
        } else {
            cat!(", with ", signs(&q.signs))
        };
        cat!(
            sentence(q.species.name),
            " (",
            q.species.scientific,
            "), ",
            super::life(q.condition),
            ", ",
            stems,
            signs_said,
            "."
        )
    }

    /// How big it is, for a phone call.
    #[must_use]
    pub fn how_big(&self) -> String {
        let height = &self.answer.height;
        let tall = if height.measured {
            cat!("Height measured, ", self.length(height.hazard_m))
        } else {
            cat!(
                "Height not measured; we used ",
                self.length(height.hazard_m)
            )
        };
        cat!(self.size(), " across. ", tall, ".")
    }
}
