//! The first sentence: one fixed frame a verdict, the single input that decides, with its number, and what stands beside it.

use super::say::Say;
use super::{method, missing, outlook, phrase, reach, region};
use crate::measure;
use crate::words::m;
use calc::answer::{Also, AlsoKind, Outcome};
use calc::models::native::Native;
use calc::models::provisos::Proviso;
use calc::models::reach::{Outcome as Reached, Why};
use calc::reference::Reference;
use calc::terms::method::{Level, Method};
use calc::terms::region::country;
use calc::terms::tree::Goal;
use calc::timing::Verdict;
use calc::timing::closed_months::Topic;
use chrono::NaiveDate;

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
    let said = say.first(kind).unwrap_or_else(|| say.card());
    let tagged = m::card_spoken(m::CardSpoken {
        tag: m::card_tag(answer.outcome),
        sentence: said.as_str(),
    });
    if tagged.chars().count() <= MOST_SPOKEN {
        tagged
    } else {
        said
    }
}

/// What is spoken is no longer than this.
const MOST_SPOKEN: usize = 140;

impl Say<'_> {
    /// Whether the species is native where the tree stands: the second thing said. Where one stem is spared it is a
    /// caution only.
    pub fn native(&self) -> Option<String> {
        if matches!(self.question.tree.goal, Goal::SpareOne(_)) {
            return None;
        }
        let code = self.question.region.as_deref().unwrap_or("");
        let here = &region::in_sentence(code);
        let land = &region::in_sentence(country(code));
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
                    .filter(|also| also.kind != AlsoKind::KillsMore)
                    // The reason says it already.
                    .filter(|also| also.kind != AlsoKind::NoRingHere || !self.never_is_why())
                    .map(|also| self.beside(also)),
            );
            if !stops {
                list.extend(self.other_stems());
            }
        }
        let close = answer.reach.outcome == Reached::ClearPeopleOut;
        if !stops && close {
            list.push(self.near_said());
        }
        if let Some(near) = answer.near_limit {
            list.push(cat!(
                "Near a size limit: ",
                if near.over { "over " } else { "under " },
                measure::size(near.limit_mm).text(self.units()),
                " across, the answer would be to ",
                &m::method_act(near.method),
                "."
            ));
        }
        let weak = matches!(answer.reach.why, Why::WeakTree | Why::LineNoDistance);
        if answer.height.measure_first && !weak {
            list.push(self.measure_first());
        }
        if answer.height.too_low {
            list.push("So low a height does not fit this trunk, confirmed or not: the taller one rules. Measure it again, or check the diameter.".into());
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
            let poor = outlook::outlook_poor(&outlook::share(&season.share));
            list.push(match self.kills_more() {
                Some(more) => cat!(poor, " ", more),
                None => poor,
            });
        }
        list
    }

    /// The method that kills more than the ring, as a sentence.
    fn kills_more(&self) -> Option<String> {
        let answer = self.answer;
        let mut beside = answer.next_line.iter().chain(&answer.also);
        let also = beside.rfind(|it| it.kind == AlsoKind::KillsMore)?;
        let by = method::by(
            also.method,
            also.by_professional,
            self.question.tree.herbicide,
        );
        Some(cat!(
            "More would die by another method: ",
            &m::method_act(also.method),
            by,
            "."
        ))
    }

    /// A line beside the headline.
    pub fn beside(&self, also: &Also) -> String {
        let by = if also.trained_to_fell {
            let who = method::trained_to_fell(also.method.needs_herbicide());
            cat!(" ", m::method_by_behind(who))
        } else {
            method::by(
                also.method,
                also.by_professional,
                self.question.tree.herbicide,
            )
        };
        let what = cat!(&m::method_act(also.method), &by);
        let and_level = match by.strip_suffix(')') {
            Some(by) => cat!(
                &m::method_act(also.method),
                by,
                ", ",
                &m::method_level(also.level),
                ")"
            ),
            None => cat!(
                &m::method_act(also.method),
                " (",
                &m::method_level(also.level),
                ")"
            ),
        };
        match also.kind {
            AlsoKind::Otherwise => cat!("Otherwise: ", what, "."),
            AlsoKind::WithoutHerbicide if also.method == Method::LeaveIt => {
                "Without herbicide: leave it as it is.".into()
            }
            AlsoKind::OrProfessional => missing::OR_PROFESSIONAL.into(),
            AlsoKind::Today if also.method == Method::LeaveIt => {
                "Until then leave it as it is.".into()
            }
            AlsoKind::Today if also.take_away_or_peel => cat!(
                "Today: ",
                and_level,
                ". ",
                &method::proviso(Proviso::TakeAwayOrPeel, self.south())
            ),
            AlsoKind::Today => cat!("Today: ", and_level, "."),
            AlsoKind::KillsMore => self.kills_more().unwrap_or_default(),
            AlsoKind::WithoutHerbicide => match also.day {
                Some(day) => cat!(
                    "Without herbicide: ",
                    and_level,
                    ", ",
                    stretch(day, also.to),
                    "."
                ),
                None => cat!("Without herbicide: ", and_level, "."),
            },
            AlsoKind::RingLater => match also.day {
                Some(day) => cat!("Or ring it: ", stretch(day, also.to), "."),
                None => "Or ring it later.".into(),
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
                "If it is not ringed, leave it as it is.".into()
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
            &m::method_act(answer.headline_method),
            if answer.provisos.contains(&Proviso::TrainedToFell) {
                cat!(" (by ", &self.who_does_it(), ")")
            } else {
                method::by(
                    answer.headline_method,
                    answer.headline_by_professional,
                    self.question.tree.herbicide,
                )
            }
        )
    }

    /// The frame alone.
    pub fn frame(&self) -> String {
        let answer = self.answer;
        match answer.outcome {
            Outcome::Do if answer.asked_day.is_none() => {
                cat!("Ring ", self.ringed(), ": ", self.stretch(), ".")
            }
            Outcome::Do => cat!("Ring ", self.ringed(), "."),
            Outcome::Wait if answer.headline_method == Method::BarkRing => {
                let ringed = self.ringed();
                let then = if ringed == "this tree" {
                    String::new()
                } else {
                    cat!(", then ring ", ringed)
                };
                cat!("Wait until ", self.window(), then, ".")
            }
            Outcome::Wait => cat!(
                "Wait until ",
                self.window(),
                ", then use another method: ",
                self.head(),
                "."
            ),
            Outcome::OtherMethod if answer.headline_method == Method::LeaveIt => {
                "Leave this tree as it is.".into()
            }
            Outcome::OtherMethod => cat!("Use another method: ", self.head(), "."),
            Outcome::Professional => "Leave this one to a professional.".into(),
            Outcome::CannotTell => "We can't tell yet.".into(),
        }
    }

    /// The day to wait for, with the end of its stretch.
    fn window(&self) -> String {
        let Some(day) = self.answer.advised_day else {
            return "the bark slips".into();
        };
        match self.answer.advised_to.filter(|to| *to > day) {
            Some(to) => cat!(
                measure::day_year(day),
                " (good to ",
                measure::day_beside(to, Some(day)),
                ")"
            ),
            None => measure::day_year(day),
        }
    }

    /// The stretch of an answer without a day: `1 May to 30 June 2027`.
    fn stretch(&self) -> String {
        match self.answer.advised_day {
            Some(day) => stretch(day, self.answer.advised_to),
            None => "while the bark slips".into(),
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
        cat!("on ", day, " its bark ", &m::season_bark(verdict), chance)
    }

    fn why_do(&self) -> String {
        let timing = &self.answer.timing;
        match self.answer.advised_day {
            Some(day) => self.bark_on(day, timing.verdict, timing.probability),
            None => cat!("its bark ", &m::season_bark(timing.verdict)),
        }
    }

    fn why_wait(&self) -> String {
        let answer = self.answer;
        let (Some(day), Some(verdict)) = (answer.asked_day, answer.asked_verdict) else {
            return self.why_do();
        };
        let head = answer.headline_method;
        if head == Method::BarkRing
            && let Some(closed) = self.closed(day)
        {
            return closed;
        }
        match answer.waits_for {
            Some("bark_not_slipping") | None => {
                self.bark_on(day, verdict, answer.asked_probability)
            }
            Some(row) => self.rule_of(row, head),
        }
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
        let dead = self.question.tree.nothing_left();
        if dead && self.question.tree.stems.len() > 1 {
            return "no living stem is left to ring".into();
        }
        if dead {
            return "it is dead already, so there is nothing to ring".into();
        }
        if answer.reach.hollow_alone {
            return cat!(
                "it has ",
                reach::signs(&self.question.tree.signs),
                ", and nothing that counts stands within ",
                self.reach(answer.reach.two_heights_m)
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
            Some(_) if self.never_is_why() => match self.oak_months() {
                Some(months) => cat!(
                    "oaks must not be wounded here from ",
                    months,
                    ", and the bark slips at no other time"
                ),
                None => "the months in which the bark slips are all ruled out".into(),
            },
            Some(reason) => self.rule_said(reason.rule),
            None => cat!("at ", self.size(), " across a ring does not suit it"),
        }
    }

    /// Whether the ring is not at the head since the months in which the bark slips are all ruled out.
    fn never_is_why(&self) -> bool {
        let answer = self.answer;
        let mut beside = answer.next_line.iter().chain(&answer.also);
        let not_today = self.line(Method::BarkRing).is_some_and(|ring| {
            let mut reasons = ring.reasons.iter();
            reasons
                .find(|reason| reason.at_most == ring.level)
                .is_some_and(|reason| reason.rule == "bark_not_slipping")
        });
        answer.outcome == Outcome::OtherMethod
            && not_today
            && beside.any(|also| also.kind == AlsoKind::NoRingHere)
    }

    /// The oak-wilt months of the place, whatever the day.
    fn oak_months(&self) -> Option<String> {
        let mut rules = self.answer.rules.iter();
        let rule = rules.find(|rule| rule.closes && rule.topic == Topic::OakWilt)?;
        Some(measure::month_days(rule.from_md, rule.to_md))
    }

    /// A row of the table, with the number that made it hold.
    fn rule_said(&self, id: &'static str) -> String {
        self.rule_of(id, Method::BarkRing)
    }

    /// The same, as it lowers a method.
    fn rule_of(&self, id: &'static str, lowered: Method) -> String {
        let answer = self.answer;
        let words =
            method::rule(id, lowered).map_or("a ring does not suit it", crate::words::Word::text);
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
            "heaven_out_of_season" if self.south() => {
                "herbicide suits this tree from 15 January to 15 April".into()
            }
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

/// A day with the end of its stretch: `1 May to 30 June 2027`, else `from 1 May 2027 on`.
fn stretch(from: NaiveDate, to: Option<NaiveDate>) -> String {
    match to.filter(|to| *to > from) {
        Some(to) => measure::days(from, to),
        None => cat!("from ", measure::day_year(from), " on"),
    }
}
