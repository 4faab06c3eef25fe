//! The first sentence: one fixed frame a verdict, and the single input that decides, with its number.

use super::{act, by, condition, row, rule, sentence, signs, target, the_target, years_in_ten};
use crate::measure;
use calc::answer::{Also, AlsoKind, Answer, Outcome};
use calc::model::method::MethodLine;
use calc::model::reach::Judged;
use calc::question::Question;
use calc::reference::Reference;
use calc::terms::method::Method;
use calc::terms::quantity::Units;
use calc::terms::tree::Condition;
use calc::timing::restrictions::Topic;
use calc::timing::{Verdict, YearsInTen};
use chrono::NaiveDate;

/// An answer with what it answers.
#[derive(Clone, Copy)]
pub struct Say<'a> {
    /// What is known.
    pub reference: &'static Reference,
    /// The question.
    pub question: &'a Question,
    /// The answer.
    pub answer: &'a Answer,
}

impl Say<'_> {
    /// The reader's units.
    #[must_use]
    pub fn units(&self) -> Units {
        self.question.units
    }

    /// A length in both units, the reader's first.
    #[must_use]
    pub fn length(&self, m: f64) -> String {
        measure::length(m).text(self.units())
    }

    /// A reach, rounded up, in both units.
    #[must_use]
    pub fn reach(&self, m: f64) -> String {
        measure::reach(m).text(self.units())
    }

    /// Size of the largest stem in both units.
    #[must_use]
    pub fn size(&self) -> String {
        measure::size(self.question.largest().dbh.mm()).text(self.units())
    }

    /// How a method stands for the largest stem.
    #[must_use]
    pub fn line(&self, method: Method) -> Option<&MethodLine> {
        self.answer
            .methods
            .iter()
            .find(|line| line.method == method)
    }

    /// The whole sentence: frame and reason.
    #[must_use]
    pub fn verdict(&self) -> String {
        cat!(self.frame(), " ", sentence(&self.reason()), ".")
    }

    /// The method at the head, and who does it.
    fn head(&self) -> String {
        let answer = self.answer;
        cat!(
            act(answer.headline_method),
            by(
                answer.headline_method,
                answer.headline_by_professional,
                self.question.herbicide
            )
        )
    }

    /// The frame alone.
    #[must_use]
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
    #[must_use]
    pub fn reason(&self) -> String {
        match self.answer.outcome {
            Outcome::Do => self.why_do(),
            Outcome::Wait => self.why_wait(),
            Outcome::OtherMethod => self.why_other(),
            Outcome::Professional => self.why_professional(),
            Outcome::CannotTell => self.why_open(),
        }
    }

    /// A probability as `about 9 years in 10`, where there is one.
    #[must_use]
    pub fn chance(&self, p: Option<f64>) -> Option<String> {
        let p = p?;
        Some(years_in_ten(YearsInTen::of(
            p,
            &self.reference.constants.timing,
        )))
    }

    /// What the bark does on a day, with its number.
    #[must_use]
    pub fn bark_on(&self, day: NaiveDate, verdict: Verdict, p: Option<f64>) -> String {
        let chance = match (self.chance(p), verdict) {
            (None, _) => String::new(),
            (Some(chance), Verdict::Best) => cat!(" (", chance, ")"),
            (Some(chance), _) => cat!(" (slips ", chance, ")"),
        };
        let day = measure::day_beside(day, self.answer.asked_day.or(self.answer.advised_day));
        cat!("on ", day, " its bark ", super::bark(verdict), chance)
    }

    fn why_do(&self) -> String {
        let timing = &self.answer.timing;
        match self.answer.advised_day {
            Some(day) => self.bark_on(day, timing.verdict, timing.probability),
            None => cat!("its bark ", super::bark(timing.verdict)),
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
                act(answer.headline_method)
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
            .tighten()
            .blocks(chrono::Datelike::month(&day));
        self.group_months().filter(|_| blocked)
    }

    /// The oak-wilt months that close a ring on the asked or advised day: `1 April to 15 July`.
    #[must_use]
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
        let dead =
            self.question.condition == Condition::Dead || self.question.largest().live_share <= 0.0;
        if dead {
            return "it is dead already, so there is nothing to ring".into();
        }
        if answer.reach.hollow_alone {
            return cat!(
                "it has ",
                signs(&self.question.signs),
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
    pub(super) fn rule_said(&self, id: &'static str) -> String {
        let answer = self.answer;
        let words = rule(id, Method::BarkRing).unwrap_or("a ring does not suit it");
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

    /// The target that decides.
    #[must_use]
    pub fn decided(&self) -> Option<&Judged> {
        let reach = &self.answer.reach;
        reach.decided_by.and_then(|at| reach.targets.get(at))
    }

    /// `a path is 20 ft (6 m) away`.
    #[must_use]
    pub fn away(&self, judged: &Judged) -> String {
        match judged.distance_m {
            Some(m) => cat!(target(judged.kind), " is ", self.length(m), " away"),
            None => cat!(target(judged.kind), " is near, and how far is not known"),
        }
    }

    /// Behind "If": the open conditions in one sentence.
    #[must_use]
    pub fn conditions(&self) -> String {
        let list: Vec<String> = self
            .answer
            .conditional
            .iter()
            .flat_map(|open_if| &open_if.conditions)
            .map(|it| condition(*it, self.units()))
            .collect();
        row(&list)
    }

    /// The kind of a target, known, with its distance: `the path, 100 ft (30 m)`.
    #[must_use]
    pub fn target_said(&self, judged: &Judged) -> String {
        match judged.distance_m {
            Some(m) => cat!(the_target(judged.kind), ", ", self.length(m)),
            None => cat!(the_target(judged.kind), ", distance not known"),
        }
    }
}
