//! The first sentence: one fixed frame a verdict, the single input that decides, with its number, and what stands beside it.

use super::say::Say;
use super::{method, outlook, phrase, reach, region, season};
use crate::measure;
use calc::answer::{Also, AlsoKind, Outcome};
use calc::models::native::Native;
use calc::models::reach::{Outcome as Reached, Why};
use calc::reference::Reference;
use calc::terms::method::{Level, Method};
use calc::terms::region::country;
use calc::terms::tree::{Condition, Goal};
use calc::timing::Verdict;
use calc::timing::closed_months::Topic;
use chrono::NaiveDate;

/// The word on the tag.
pub fn tag(outcome: Outcome) -> &'static str {
    match outcome {
        Outcome::Do => "Do",
        Outcome::Wait => "Wait",
        Outcome::OtherMethod => "Other way",
        Outcome::Professional => "Professional",
        Outcome::CannotTell => "Can’t tell",
    }
}

/// The region's own heading.
pub const THE_ANSWER: &str = "The answer";
/// Head of the printed page.
pub const SHEET: &str = "Slipbark";
/// Behind it.
pub const SHEET_MORE: &str = " one tree, one answer";
/// The 1:1 ruler.
pub const SHEET_RULER: &str = "Printed at 100 %, the foot of this page is a ruler.";

/// The one polite sentence for a status region, at most 140 characters.
pub fn status(
    kind: crate::kind::Kind,
    reference: &'static Reference,
    question: &calc::question::Question,
    answer: &calc::answer::Answer,
) -> String {
    let say = Say {
        reference,
        question,
        answer,
        group: None,
    };
    let whole = say.first(kind).unwrap_or_else(|| say.verdict());
    if whole.chars().count() <= 140 {
        return whole;
    }
    cat!(say.frame(), " The reason stands in the answer.")
}

impl Say<'_> {
    /// Whether the species is native where the tree stands: the second thing said. Where one stem is spared it is a
    /// caution only.
    pub fn native(&self) -> Option<String> {
        if matches!(self.question.tree.goal, Goal::SpareOne(_)) {
            return None;
        }
        let code = self.question.region.as_deref().unwrap_or("");
        let (here, land) = (region::region(code), region::region(country(code)));
        Some(match self.answer.species.native {
            Native::Here => cat!(
                "Native in ",
                here,
                ": make sure that it is this tree, and ask why it must go."
            ),
            Native::InParts => cat!(
                "Native in parts of ",
                land,
                ": make sure that it is this tree, and ask why it must go."
            ),
            Native::Ask => cat!("Whether it is native in ", land, " is doubtful: ask there."),
            Native::Elsewhere => cat!("Native in other parts of ", land, ", not in ", here, "."),
            Native::NotHere => cat!("Not native in ", land, "."),
            Native::NotKnown => return None,
        })
    }

    /// What stands under the first sentence, most telling first.
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
        let close = answer.reach.outcome == Reached::ClearPeopleOut;
        if !stops && close {
            list.push(self.near_said());
        }
        if let Some(near) = answer.near_limit {
            list.push(cat!(
                "Near a size limit: past ",
                measure::size(near.limit_mm).text(self.units()),
                " across, the answer would be to ",
                method::act(near.method),
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
                phrase::row(&against),
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
            list.push(outlook::outlook_poor(&outlook::share(&season.share)));
        }
        list
    }

    /// A line beside the headline.
    pub fn beside(&self, also: &Also) -> String {
        let by = method::by(
            also.method,
            also.by_professional,
            self.question.tree.herbicide,
        );
        let what = cat!(method::act(also.method), &by);
        let and_level = match by.strip_suffix(')') {
            Some(by) => cat!(
                method::act(also.method),
                by,
                ", ",
                method::level(also.level),
                ")"
            ),
            None => cat!(
                method::act(also.method),
                " (",
                method::level(also.level),
                ")"
            ),
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
                cat!(
                    "A ring is possible too; against it: ",
                    phrase::row(&against),
                    "."
                )
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

    /// The whole sentence: frame and reason.
    pub fn verdict(&self) -> String {
        cat!(self.frame(), " ", phrase::sentence(&self.reason()), ".")
    }

    /// The method at the head, and who does it.
    fn head(&self) -> String {
        let answer = self.answer;
        cat!(
            method::act(answer.headline_method),
            method::by(
                answer.headline_method,
                answer.headline_by_professional,
                self.question.tree.herbicide
            )
        )
    }

    /// The frame alone.
    pub fn frame(&self) -> String {
        let answer = self.answer;
        match answer.outcome {
            Outcome::Do => "Ring this tree.".into(),
            Outcome::Wait if answer.headline_method == Method::BarkRing => {
                cat!("Wait until ", self.window(), ".")
            }
            Outcome::Wait => cat!(
                "Wait until ",
                self.window(),
                ", then use another method: ",
                self.head(),
                "."
            ),
            Outcome::OtherMethod => cat!("Use another method: ", self.head(), "."),
            Outcome::Professional => "Leave this one to a professional.".into(),
            Outcome::CannotTell => "We can't tell yet.".into(),
        }
    }

    /// The day to wait for, to the end of its stretch where that is known.
    fn window(&self) -> String {
        let timing = &self.answer.timing;
        let Some(day) = self.answer.advised_day else {
            return "the bark slips".into();
        };
        match (timing.next_good, timing.next_good_to) {
            (Some(from), Some(to))
                if self.answer.headline_method == Method::BarkRing && from <= day && day < to =>
            {
                let to = measure::day_beside(to, Some(day));
                cat!(measure::day_year(day), " (good to ", to, ")")
            }
            _ => measure::day_year(day),
        }
    }

    /// The single deciding input, with its number, as a clause.
    pub fn reason(&self) -> String {
        match self.answer.outcome {
            Outcome::Do => self.why_do(),
            Outcome::Wait => self.why_wait(),
            Outcome::OtherMethod => self.why_other(),
            Outcome::Professional => self.why_professional(),
            Outcome::CannotTell => self.why_open(),
        }
    }

    /// What the bark does on a day, with its number.
    pub fn bark_on(&self, day: NaiveDate, verdict: Verdict, p: Option<f64>) -> String {
        let chance = match (self.chance(p), verdict) {
            (None, _) => String::new(),
            (Some(chance), Verdict::Best) => cat!(" (", chance, ")"),
            (Some(chance), _) => cat!(" (slips ", chance, ")"),
        };
        let day = measure::day_beside(day, self.answer.asked_day.or(self.answer.advised_day));
        cat!("on ", day, " its bark ", season::bark(verdict), chance)
    }

    fn why_do(&self) -> String {
        let timing = &self.answer.timing;
        match self.answer.advised_day {
            Some(day) => self.bark_on(day, timing.verdict, timing.probability),
            None => cat!("its bark ", season::bark(timing.verdict)),
        }
    }

    fn why_wait(&self) -> String {
        let answer = self.answer;
        let (Some(day), Some(verdict)) = (answer.asked_day, answer.asked_verdict) else {
            return self.why_do();
        };
        if let Some(closed) = self.closed(day) {
            return closed;
        }
        let slips = matches!(
            verdict,
            Verdict::Best | Verdict::OpeningTest | Verdict::ClosingTest | Verdict::TestFirst
        );
        if answer.headline_method != Method::BarkRing {
            return cat!(
                "on ",
                measure::day(day),
                " no method stands; then, ",
                method::act(answer.headline_method)
            );
        }
        if slips {
            return "in these months a dying tree breeds beetles".into();
        }
        self.bark_on(day, verdict, answer.asked_probability)
    }

    /// What closes a ring on a day, as a clause: oak wilt, or the group's own months.
    fn closed(&self, day: NaiveDate) -> Option<String> {
        if let Some(months) = self.closed_months() {
            return Some(cat!("oaks must not be wounded here from ", months));
        }
        let blocked = self
            .question
            .tree
            .tighten
            .blocks(chrono::Datelike::month(&day));
        self.group_months().filter(|_| blocked)
    }

    /// The oak-wilt months that close a ring on the asked or advised day: `1 April to 15 July`.
    pub fn closed_months(&self) -> Option<String> {
        let rule = self
            .answer
            .rules
            .iter()
            .find(|rule| rule.closes && rule.on_the_day && rule.topic == Topic::OakWilt)?;
        Some(measure::month_days(rule.from_md, rule.to_md))
    }

    /// Why the ring is not at the head.
    fn why_other(&self) -> String {
        let answer = self.answer;
        let dead = self.question.tree.condition == Condition::Dead
            || self.question.tree.largest().live_share <= 0.0;
        if dead {
            return "it is dead already, so there is nothing to ring".into();
        }
        if answer.reach.hollow_alone {
            return cat!(
                "it has ",
                reach::signs(&self.question.tree.signs),
                ", and nothing that counts stands within ",
                self.reach(answer.reach.people_out_m)
            );
        }
        let (Some(ring), Some(head)) = (
            self.line(Method::BarkRing),
            self.line(answer.headline_method),
        ) else {
            return cat!("at ", self.size(), " across a ring does not suit it");
        };
        if ring.level <= head.level {
            return match answer.next_line {
                Some(Also {
                    kind: AlsoKind::RingLater,
                    day: Some(day),
                    ..
                }) => {
                    cat!("a ring has to wait until ", measure::day_year(day))
                }
                _ => cat!("at ", self.size(), " across it does as well as a ring"),
            };
        }
        match ring
            .reasons
            .iter()
            .find(|reason| reason.at_most == ring.level)
        {
            Some(reason) => self.rule_said(reason.rule),
            None => cat!("at ", self.size(), " across a ring does not suit it"),
        }
    }

    /// A row of the table, with the number that made it hold.
    fn rule_said(&self, id: &'static str) -> String {
        let answer = self.answer;
        let words = method::rule(id, Method::BarkRing).unwrap_or("a ring does not suit it");
        match id {
            "bark_not_slipping" => match (answer.asked_day, answer.asked_verdict) {
                (Some(day), Some(verdict)) => self.bark_on(day, verdict, answer.asked_probability),
                _ => words.into(),
            },
            "inside" => match self.decided() {
                Some(target) => cat!(
                    self.away(target),
                    ", inside the ",
                    self.reach(target.zone_m),
                    " in which this tree can throw wood"
                ),
                None => words.into(),
            },
            "oak_wilt_months" => match self.closed_months() {
                Some(months) => cat!("oaks must not be wounded here from ", months),
                None => words.into(),
            },
            "group_months" => self.group_months().unwrap_or_else(|| words.into()),
            "under_1" => self.at_size("it is too small to ring"),
            "1_to_2_5" => self.at_size("it is hardly worth a ring"),
            "thin_shrub" => self.at_size("its stems are too thin or too many to ring"),
            "conifer_under_6" => self.at_size("it makes no snag; cut it below the lowest branch"),
            _ => words.into(),
        }
    }

    /// A clause with the size that made it hold.
    fn at_size(&self, words: &str) -> String {
        cat!("at ", self.size(), " across ", words)
    }
}
