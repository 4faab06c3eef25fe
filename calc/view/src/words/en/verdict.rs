//! The whole sentence: one fixed frame a verdict, the single input that decides, with its number, and what stands
//! beside it.

use super::say::Say;
use super::{method, outlook, phrase, reach, region};
use crate::measure;
use crate::words::gap::Date;
use crate::words::m;
use calc::answer::{Also, AlsoKind, Outcome};
use calc::models::native::Native;
use calc::models::provisos::Proviso;
use calc::models::reach::{ReachOutcome, Why};
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
            Native::Here => m::verdict_native_here(here),
            Native::InParts => m::verdict_native_parts(land),
            Native::Ask => m::verdict_native_ask(land),
            Native::Elsewhere => {
                m::verdict_native_elsewhere(m::VerdictNativeElsewhere { land, place: here })
            }
            Native::NotHere => m::verdict_native_not(land),
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
        let close = answer.reach.outcome == ReachOutcome::ClearPeopleOut;
        if !stops && close {
            list.push(self.near_said());
        }
        if let Some(near) = answer.near_limit {
            let limit = measure::size(near.limit_mm).text(self.units());
            let act = m::method_act(near.method);
            list.push(if near.over {
                m::verdict_near_over(m::VerdictNearOver { limit, act })
            } else {
                m::verdict_near_under(m::VerdictNearUnder { limit, act })
            });
        }
        let weak = matches!(answer.reach.why, Why::WeakTree | Why::LineNoDistance);
        if answer.height.measure_first && !weak {
            list.push(self.measure_first());
        }
        if answer.height.too_low {
            list.push(m::VERDICT_TOO_LOW.into());
        }
        if answer.height.ask_again {
            list.push(m::VERDICT_ASK_AGAIN.into());
        }
        if answer.height.larger_than_grows {
            list.push(m::VERDICT_LARGER.into());
        }
        list
    }

    /// Measuring the height could change the answer: the height at which it does, and the way.
    pub fn measure_first(&self) -> String {
        let height = &self.answer.height;
        match height.changes_at_m {
            Some(at) if at > height.hazard_m => m::verdict_measure_from(self.length(at)),
            Some(at) => m::verdict_measure_under(self.length(at)),
            None => m::VERDICT_MEASURE.into(),
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
            list.push(m::verdict_only_possible(phrase::row(&against)));
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
        let act = cat!(&m::method_act(also.method), by);
        Some(m::verdict_kills_more(act))
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
        let act = m::method_act(also.method);
        let what = cat!(&act, &by);
        let and_level = self.act_and_level(also);
        match also.kind {
            AlsoKind::Otherwise => m::verdict_otherwise(what),
            AlsoKind::WithoutHerbicide if also.method == Method::LeaveIt => {
                m::VERDICT_WITHOUT_LEAVE.into()
            }
            AlsoKind::OrProfessional => m::MISSING_OR_PROFESSIONAL.into(),
            AlsoKind::Today if also.method == Method::LeaveIt => m::VERDICT_TODAY_LEAVE.into(),
            AlsoKind::Today if also.take_away_or_peel => cat!(
                m::verdict_today(and_level),
                " ",
                &method::proviso(Proviso::TakeAwayOrPeel, self.south())
            ),
            AlsoKind::Today => m::verdict_today(and_level),
            AlsoKind::KillsMore => self.kills_more().unwrap_or_default(),
            AlsoKind::WithoutHerbicide => match also.day {
                Some(day) => m::verdict_without_in(m::VerdictWithoutIn {
                    act: and_level,
                    stretch: stretch(day, also.to),
                }),
                None => m::verdict_without(and_level),
            },
            AlsoKind::RingLater => match also.day {
                Some(day) => m::verdict_ring_later(stretch(day, also.to)),
                None => m::VERDICT_RING_SOME_DAY.into(),
            },
            AlsoKind::RingPossible => {
                let against: Vec<String> = self
                    .line(Method::BarkRing)
                    .iter()
                    .flat_map(|line| &line.reasons)
                    .map(|reason| self.rule_said(reason.rule))
                    .collect();
                m::verdict_ring_possible(phrase::row(&against))
            }
            AlsoKind::NextMethod if also.method == Method::LeaveIt => m::VERDICT_NEXT_LEAVE.into(),
            AlsoKind::NextMethod => m::verdict_next(and_level),
            AlsoKind::NoRingHere => m::VERDICT_NO_RING_HERE.into(),
        }
    }

    /// What another method does, who may do it, and how it stands: `fell it (by a professional, possible)`.
    fn act_and_level(&self, also: &Also) -> String {
        let act = m::method_act(also.method);
        let level = m::method_level(also.level);
        let herbicide = also.method.needs_herbicide();
        let who = if also.trained_to_fell {
            method::trained_to_fell(herbicide)
        } else {
            method::who(
                also.method,
                also.by_professional,
                self.question.tree.herbicide,
            )
        };
        match who {
            m::METHOD_WHO_YOU => m::verdict_act_level(m::VerdictActLevel { act, level }),
            m::METHOD_WHO_YOU_AS_LABEL => {
                m::verdict_act_label_level(m::VerdictActLabelLevel { act, level })
            }
            who => m::verdict_act_who_level(m::VerdictActWhoLevel { act, who, level }),
        }
    }

    /// The whole sentence: frame and reason.
    pub fn verdict(&self) -> String {
        m::verdict_whole(m::VerdictWhole {
            frame: self.frame(),
            reason: phrase::sentence(&self.reason()),
        })
    }

    /// The method at the head, and who does it.
    fn head(&self) -> String {
        let answer = self.answer;
        cat!(
            &m::method_act(answer.headline_method),
            if answer.provisos.contains(&Proviso::TrainedToFell) {
                cat!(" ", m::method_by_behind(self.who_does_it()))
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
            Outcome::Do if answer.asked_day.is_none() => m::verdict_ring_in(m::VerdictRingIn {
                ringed: self.ringed(),
                stretch: self.stretch(),
            }),
            Outcome::Do => m::verdict_ring(self.ringed()),
            Outcome::Wait => self.frame_wait(),
            Outcome::OtherMethod if answer.headline_method == Method::LeaveIt => {
                m::VERDICT_LEAVE.into()
            }
            Outcome::OtherMethod => m::verdict_other(self.head()),
            Outcome::Professional => m::VERDICT_PROFESSIONAL.into(),
            Outcome::CannotTell => m::VERDICT_CANNOT_TELL.into(),
        }
    }

    /// The frame of a wait: the day, with the end of its stretch, and what then.
    fn frame_wait(&self) -> String {
        let answer = self.answer;
        let Some(day) = answer.advised_day else {
            return m::VERDICT_WAIT_SLIPS.into();
        };
        let window = match answer.advised_to.filter(|to| *to > day) {
            Some(to) => m::verdict_window(m::VerdictWindow {
                day,
                to: Date::beside(to, Some(day)),
            }),
            None => m::verdict_window_day(day),
        };
        if answer.headline_method != Method::BarkRing {
            let act = self.head();
            return m::verdict_wait_other(m::VerdictWaitOther { window, act });
        }
        match self.some_stems() {
            Some(ringed) => m::verdict_wait_then(m::VerdictWaitThen { window, ringed }),
            None => m::verdict_wait(window),
        }
    }

    /// The stretch of an answer without a day: `1 May to 30 June 2027`.
    fn stretch(&self) -> String {
        match self.answer.advised_day {
            Some(day) => stretch(day, self.answer.advised_to),
            None => m::VERDICT_WHILE_IT_SLIPS.into(),
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
        let day = Date::beside(day, self.answer.asked_day.or(self.answer.advised_day));
        let bark = m::season_bark(verdict);
        match (self.chance(p), verdict) {
            (None, _) => m::verdict_bark(day, bark),
            (Some(chance), Verdict::Best) => {
                m::verdict_bark_chance(m::VerdictBarkChance { day, bark, chance })
            }
            (Some(chance), _) => m::verdict_bark_slips(m::VerdictBarkSlips { day, bark, chance }),
        }
    }

    fn why_do(&self) -> String {
        let timing = &self.answer.timing;
        match self.answer.advised_day {
            Some(day) => self.bark_on(day, timing.verdict, timing.probability),
            None => m::verdict_its_bark(m::season_bark(timing.verdict)),
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
            return Some(m::verdict_oaks(months));
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
            return m::VERDICT_NO_LIVING_STEM.into();
        }
        if dead {
            return m::VERDICT_DEAD.into();
        }
        if answer.reach.hollow_alone {
            return m::verdict_hollow(m::VerdictHollow {
                signs: reach::signs(&self.question.tree.signs),
                within: self.reach(answer.reach.two_heights_m),
            });
        }
        let (Some(ring), Some(head)) = (
            self.line(Method::BarkRing),
            self.line(answer.headline_method),
        ) else {
            return m::verdict_not_suited_at(self.size());
        };
        if ring.level <= head.level {
            return match answer.next_line {
                Some(Also {
                    kind: AlsoKind::RingLater,
                    day: Some(day),
                    ..
                }) => m::verdict_has_to_wait(day),
                _ => m::verdict_as_well(self.size()),
            };
        }
        match ring
            .reasons
            .iter()
            .find(|reason| reason.at_most == ring.level)
        {
            Some(_) if self.never_is_why() => match self.oak_months() {
                Some(months) => m::verdict_oaks_never(months),
                None => m::VERDICT_NEVER.into(),
            },
            Some(reason) => self.rule_said(reason.rule),
            None => m::verdict_not_suited_at(self.size()),
        }
    }

    /// Whether the ring is not at the head since the months in which the bark slips are all ruled out.
    pub(super) fn never_is_why(&self) -> bool {
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
        let words = method::rule(id, lowered).unwrap_or(m::VERDICT_NOT_SUITED);
        match id {
            "bark_not_slipping" => match (answer.asked_day, answer.asked_verdict) {
                (Some(day), Some(verdict)) => self.bark_on(day, verdict, answer.asked_probability),
                _ => words.into(),
            },
            "inside" => match self.decided() {
                Some(target) => m::verdict_inside(m::VerdictInside {
                    away: self.away(target),
                    zone: self.reach(target.zone_m),
                }),
                None => words.into(),
            },
            "oak_wilt_months" => match self.closed_months() {
                Some(months) => m::verdict_oaks(months),
                None => words.into(),
            },
            "heaven_out_of_season" if self.south() => m::VERDICT_HEAVEN_SOUTH.into(),
            "group_months" => self.group_months().unwrap_or_else(|| words.into()),
            "under_1" => m::verdict_under_1(self.size()),
            "1_to_2_5" => m::verdict_hardly(self.size()),
            "thin_shrub" => m::verdict_thin_shrub(self.size()),
            "conifer_under_6" => m::verdict_no_snag(self.size()),
            _ => words.into(),
        }
    }
}

/// A day with the end of its stretch: `1 May to 30 June 2027`, else `from 1 May 2027 on`.
fn stretch(from: NaiveDate, to: Option<NaiveDate>) -> String {
    match to.filter(|to| *to > from) {
        Some(to) => measure::days(from, to),
        None => m::verdict_from_day(from),
    }
}
