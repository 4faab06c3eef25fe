//! The card: picks its sentence, what stands beside it, its one caution.

use super::say::Say;
use super::{outlook, phrase, region};
use crate::measure;
use crate::words::gap::Date;
use crate::words::{Word, m};
use calc::answer::{Also, AlsoKind, Conditional, Outcome};
use calc::models::native::Native;
use calc::models::provisos::Proviso;
use calc::models::reach::{ReachOutcome, Why, nearer};
use calc::terms::method::{Level, Method};
use calc::terms::region::country;
use calc::terms::tree::{Condition, Goal, Herbicide, TargetKind};
use calc::timing::Verdict;
use chrono::Datelike;

impl Say<'_> {
    /// The card's sentence: 52 characters at most where names and dates allow it.
    pub fn card(&self) -> String {
        match self.answer.outcome {
            Outcome::Do => self.card_do(),
            Outcome::Wait => self.card_wait(),
            Outcome::OtherMethod => self.card_other(),
            Outcome::Professional => self.card_stop(),
            Outcome::CannotTell => self.card_open(),
        }
    }

    fn card_do(&self) -> String {
        let answer = self.answer;
        let Some(day) = answer.asked_day.and(answer.advised_day) else {
            return self.frame();
        };
        if let Some(stems) = self.some_stems() {
            return m::card_ring_stems(stems);
        }
        let line = self
            .line(Method::BarkRing)
            .filter(|line| line.level == Level::Possible);
        if let Some(line) = line {
            let against = line.reasons.iter().find(|it| it.at_most == Level::Possible);
            return m::card_may_ring(but(against.map_or("", |it| it.rule)));
        }
        match answer.timing.verdict {
            Verdict::Best => m::card_ring_best(Date::day(day)),
            Verdict::OpeningTest
            | Verdict::ClosingTest
            | Verdict::TestFirst
            | Verdict::TooEarly
            | Verdict::Late
            | Verdict::Dormant
            | Verdict::Bonded
            | Verdict::Unknown => m::card_ring_test(Date::day(day)),
        }
    }

    fn card_wait(&self) -> String {
        let answer = self.answer;
        let Some(day) = answer.advised_day else {
            return m::CARD_UNTIL_IT_SLIPS.into();
        };
        let head = answer.headline_method;
        if head != Method::BarkRing {
            return m::card_wait_act(day, self.card_act(head));
        }
        match self.some_stems() {
            Some(stems) => m::card_wait_stems(day, stems),
            None => m::card_wait_why(day, self.why_not_now()),
        }
    }

    /// Why a ring is not cut on the day asked about, as a short sentence without its stop.
    fn why_not_now(&self) -> Word {
        let answer = self.answer;
        if self.closed_months().is_some() {
            return m::CARD_OAKS_NOW;
        }
        let month = answer.asked_day.map(|day| day.month());
        if month.is_some_and(|month| self.question.tree.tighten.blocks(month)) {
            return m::CARD_GROUP_NOW;
        }
        match answer.waits_for {
            Some("bark_not_slipping") | None => bark_now(answer.asked_verdict),
            Some(row) => because(row),
        }
    }

    /// What to do by another method, as short as it goes.
    fn card_act(&self, method: Method) -> Word {
        let trained = self.answer.provisos.contains(&Proviso::TrainedToFell);
        let label = self.question.tree.herbicide == Herbicide::Yes;
        let pro = self.answer.headline_by_professional || trained;
        match method {
            Method::BarkRing => m::CARD_ACT_RING,
            Method::SawRing => m::CARD_ACT_SAW,
            Method::Frill if label => m::CARD_ACT_FRILL,
            Method::Frill => m::CARD_ACT_FRILL_LICENSED,
            Method::BasalBark if label => m::CARD_ACT_BASAL,
            Method::BasalBark => m::CARD_ACT_BASAL_LICENSED,
            Method::CutStump if pro => m::CARD_ACT_STUMP_PRO,
            Method::CutStump => m::CARD_ACT_STUMP,
            Method::PullOrDig => m::CARD_ACT_PULL,
            Method::Fell if pro => m::CARD_ACT_FELL_PRO,
            Method::Fell => m::CARD_ACT_FELL,
            Method::RepeatCutting if pro => m::CARD_ACT_REPEAT_PRO,
            Method::RepeatCutting => m::CARD_ACT_REPEAT,
            Method::LeaveIt => m::CARD_ACT_LEAVE,
        }
    }

    fn card_other(&self) -> String {
        let answer = self.answer;
        if answer.reach.hollow_alone {
            return m::CARD_HOLLOW.into();
        }
        if self.question.tree.nothing_left() {
            return m::CARD_DEAD.into();
        }
        let act = phrase::sentence(&self.card_act(answer.headline_method));
        let rule = self.size_rule().or_else(|| {
            let ring = self.line(Method::BarkRing)?;
            let lowers = ring.reasons.iter().find(|it| it.at_most == ring.level);
            lowers.map(|it| it.rule)
        });
        if self.never_is_why() {
            return m::card_act_why(m::CardActWhy {
                act,
                why: m::CARD_MONTHS_CLOSED,
            });
        }
        let size = measure::size(self.question.tree.heading().dbh.mm());
        let size = size.first(self.units());
        match rule {
            Some("under_1" | "1_to_2_5" | "thin_shrub") => {
                m::card_too_thin(m::CardTooThin { act, size })
            }
            Some("conifer_under_6") => m::card_no_snag(m::CardNoSnag { act, size }),
            Some("bark_not_slipping") => m::card_act_why(m::CardActWhy {
                act,
                why: bark_now(answer.asked_verdict),
            }),
            Some(rule) => m::card_act_why(m::CardActWhy {
                act,
                why: because(rule),
            }),
            None => m::card_act_alone(act),
        }
    }

    /// The row of the methods that says of a ring that the tree has not the size for it. A size stays as it is: it tells
    /// more than the bark of a day.
    fn size_rule(&self) -> Option<&'static str> {
        let ring = self.line(Method::BarkRing)?;
        let size = ring.reasons.iter().find(|it| SIZES.contains(&it.rule));
        size.map(|it| it.rule)
    }

    fn card_stop(&self) -> String {
        if self.group_stops().is_some() {
            return m::card_group_stops(self.group_name());
        }
        let reach = &self.answer.reach;
        if reach.outcome == ReachOutcome::Line {
            return m::CARD_LINE_STOPS.into();
        }
        let target = self.decided().or(self.nearest());
        let far = target.and_then(|target| {
            let far = measure::length(target.distance_m?);
            Some((target.kind, far.first(self.units()).to_owned()))
        });
        let Some((kind, far)) = far else {
            return match reach.why {
                Why::WeakTree => m::CARD_WEAK.into(),
                _ => m::CARD_STOP.into(),
            };
        };
        let thing = phrase::sentence(&m::card_thing(kind));
        match reach.why {
            Why::WeakTree => m::card_weak_near(m::CardWeakNear {
                thing: m::card_thing(kind),
                far,
            }),
            Why::TooSteep => m::card_steep(m::CardSteep { thing, far }),
            Why::InZone => m::card_throws(m::CardThrows {
                zone: measure::reach(reach.zone_m).first(self.units()),
                thing,
                far,
            }),
            _ => m::card_reaches(m::CardReaches {
                height: measure::length(reach.height_m).first(self.units()),
                thing,
                far,
            }),
        }
    }

    fn card_open(&self) -> String {
        let missing = &self.answer.reach.missing;
        let ground = |why: &Why| matches!(why, Why::ListOpen | Why::DistanceUnknown);
        let asked = if missing.iter().any(ground) {
            m::CARD_OPEN_HIT
        } else if self.answer.reach.line_open() {
            m::CARD_OPEN_LINE
        } else if missing.contains(&Why::HeightUnknown) {
            m::CARD_OPEN_HEIGHT
        } else {
            let open = self.answer.conditional.as_ref();
            match open.and_then(|it| it.conditions.first()) {
                Some(Conditional::NoOakWilt) => m::CARD_OPEN_STATE,
                Some(Conditional::WholeClone) => m::CARD_OPEN_CLONE,
                Some(Conditional::SpeciesSuits) => m::CARD_OPEN_SPECIES,
                Some(Conditional::HeightUnder { .. }) => m::CARD_OPEN_HEIGHT,
                Some(Conditional::NoLine { .. }) => m::CARD_OPEN_LINE,
                Some(Conditional::NothingInReach { .. }) | None => m::CARD_OPEN_HIT,
            }
        };
        m::card_open(asked)
    }

    /// The line under the sentence, where one is owed: native here, what kills more, what stands today, the best
    /// without herbicide. 70 characters at most, two lines of a phone.
    pub fn card_next(&self) -> Option<String> {
        let answer = self.answer;
        if matches!(answer.outcome, Outcome::Professional | Outcome::CannotTell) {
            return None;
        }
        let spares = matches!(self.question.tree.goal, Goal::SpareOne(_));
        let code = self.question.region.as_deref().unwrap_or("");
        match answer.species.native {
            Native::Here if !spares => return Some(m::card_native(region::in_sentence(code))),
            Native::InParts if !spares => {
                let land = region::in_sentence(country(code));
                return Some(m::card_native(m::card_parts_of(land)));
            }
            _ => {}
        }
        let all = || answer.next_line.iter().chain(&answer.also);
        let find = |kind: AlsoKind| all().find(|it| it.kind == kind);
        if let Some(more) = find(AlsoKind::KillsMore) {
            return Some(m::card_more_die(self.act_by(more)));
        }
        if let Some(today) = find(AlsoKind::Today) {
            return Some(match today.method {
                Method::LeaveIt => m::CARD_TODAY_LEAVE.into(),
                _ if today.take_away_or_peel => m::card_today_peel(self.act_by(today)),
                _ => m::card_today(self.act_by(today)),
            });
        }
        if let Some(without) = find(AlsoKind::WithoutHerbicide) {
            return Some(match without.method {
                Method::LeaveIt => m::CARD_WITHOUT_LEAVE.into(),
                Method::BarkRing if !without.by_professional && self.sprouts_if_ringed() => {
                    m::CARD_WITHOUT_RING.into()
                }
                Method::BarkRing if self.size_rule().is_some() => m::CARD_WITHOUT_THIN.into(),
                _ => m::card_without(self.act_by(without)),
            });
        }
        // Too thin to ring, says the sentence above.
        let said = |it: &&Also| it.kind == AlsoKind::RingPossible && self.size_rule().is_some();
        all().find(|it| !said(it)).map(|also| self.beside(also))
    }

    /// Whether a ring alone only makes the tree sprout.
    fn sprouts_if_ringed(&self) -> bool {
        let ring = self.line(Method::BarkRing);
        ring.is_some_and(|ring| ring.reasons.iter().any(|it| SPROUTS.contains(&it.rule)))
    }

    /// What another method does, and who does it in two or three words.
    fn act_by(&self, also: &Also) -> String {
        let act = m::method_act(also.method);
        if also.trained_to_fell {
            return match also.method.needs_herbicide() {
                true => m::card_by_trained_licensed(act),
                false => m::card_by_trained(act),
            };
        }
        match (also.method.needs_herbicide(), also.by_professional) {
            (true, false) if self.question.tree.herbicide == Herbicide::Yes => {
                m::card_by_label(act)
            }
            (true, _) => m::card_by_licensed(act),
            (false, true) => m::card_by_professional(act),
            (false, false) => act.into(),
        }
    }

    /// The one caution of a card: a bold ask, and its reason.
    pub fn card_caution(&self) -> [String; 2] {
        let answer = self.answer;
        let reach = &answer.reach;
        let units = self.units();
        let both = |ask: Word, why: Word| [ask.into(), why.into()];
        match answer.outcome {
            Outcome::Professional if reach.outcome == ReachOutcome::Line => {
                return both(m::CARD_LIVE, m::CARD_LIVE_WHY);
            }
            Outcome::Professional => {
                let ask = match self.question.tree.condition {
                    Condition::Dead => m::CARD_PIECES_DEAD,
                    Condition::Alive | Condition::Declining => m::CARD_PIECES,
                };
                return both(ask, m::CARD_PIECES_WHY);
            }
            // Where it is not the ground that is open, the reach is not what decides.
            Outcome::CannotTell if reach.missing.is_empty() => {
                return both(m::CARD_DO_NOT_START, m::CARD_TURNS_ON_IT);
            }
            Outcome::CannotTell => {
                let why = m::card_do_not_start_why(m::CardDoNotStartWhy {
                    height: measure::length(reach.height_m).first(units),
                    zone: measure::reach(reach.zone_m).first(units),
                });
                return [m::CARD_DO_NOT_START.into(), why];
            }
            Outcome::Do | Outcome::Wait | Outcome::OtherMethod => {}
        }
        if let Some(close) = self.close_by() {
            return close;
        }
        let ring = answer.headline_method == Method::BarkRing;
        if answer.outcome == Outcome::Wait {
            return match answer.waits_for {
                _ if self.closed_months().is_some() => {
                    both(m::CARD_NO_WOUND_NOW, m::CARD_NO_WOUND_NOW_WHY)
                }
                _ if ring => both(m::CARD_NO_RING_NOW, m::CARD_NO_RING_NOW_WHY),
                Some("heaven_out_of_season" | "heaven_stump") => {
                    both(m::CARD_NO_CUT_BEFORE, m::CARD_NO_CUT_BEFORE_WHY)
                }
                _ => both(m::CARD_NOT_BEFORE, m::CARD_NOT_BEFORE_WHY),
            };
        }
        let cuts = answer.headline_method == Method::Fell
            || answer.provisos.contains(&Proviso::FellingNeedsTraining);
        if cuts && !answer.headline_by_professional && !answer.headline_method.needs_herbicide() {
            return both(m::CARD_FELLING, m::CARD_FELLING_WHY);
        }
        if answer.headline_method == Method::PullOrDig {
            return both(m::CARD_BURIED, m::CARD_BURIED_WHY);
        }
        if answer.outcome == Outcome::Do && answer.timing.verdict != Verdict::Best {
            return both(m::CARD_TEST_FIRST, m::CARD_TEST_FIRST_WHY);
        }
        let third = answer.outlook.as_ref().and_then(|it| it.seasons.last());
        if let Some(third) = third.filter(|_| ring)
            && third.share.likely.is_some_and(|likely| likely < 50.0)
        {
            let share = phrase::sentence(&outlook::share(&third.share));
            return [m::CARD_FEW_DIE.into(), m::card_few_die_why(share)];
        }
        if answer.headline_method == Method::LeaveIt && !self.drops_wood() {
            return both(m::CARD_LOOK_UP, m::CARD_LOOK_UP_WHY);
        }
        if answer.headline_method == Method::LeaveIt {
            return both(m::CARD_STAY_OUT, m::CARD_STAY_OUT_WHY);
        }
        if answer.headline_method.needs_herbicide() {
            return both(m::CARD_LABEL, m::CARD_LABEL_WHY);
        }
        both(m::CARD_YOURS, m::CARD_YOURS_WHY)
    }

    /// That people are kept out of something that lies inside the ground of the work.
    fn close_by(&self) -> Option<[String; 2]> {
        let out = self.answer.people_out_m?;
        let near = self.nearest()?;
        let far = near.distance_m.filter(|far| nearer(*far, out))?;
        let ask = match near.kind {
            TargetKind::Road => m::CARD_CLOSE_ROAD.into(),
            TargetKind::Path => m::CARD_CLOSE_PATH.into(),
            kind => m::card_keep_from(m::reach_the_target(kind)),
        };
        let why = m::card_lies_inside(m::CardLiesInside {
            far: measure::length(far).first(self.units()),
            out: measure::reach(out).first(self.units()),
        });
        Some([ask, why])
    }
}

/// Rows of the methods that say that a stem is too thin.
const SIZES: [&str; 4] = ["under_1", "1_to_2_5", "thin_shrub", "conifer_under_6"];

/// What the bark does on the day asked about.
fn bark_now(verdict: Option<Verdict>) -> Word {
    match verdict {
        Some(Verdict::Dormant | Verdict::Unknown) | None => m::CARD_BARK_TIGHT,
        Some(Verdict::TooEarly | Verdict::OpeningTest) => m::CARD_BARK_MOSTLY_TIGHT,
        Some(Verdict::Best | Verdict::TestFirst) => m::CARD_BARK_SLIPS,
        Some(Verdict::ClosingTest | Verdict::Late) => m::CARD_BARK_BINDS,
        Some(Verdict::Bonded) => m::CARD_BARK_BOUND,
    }
}

/// What stands against a ring that is possible, by the row of the methods.
pub fn but(rule: &str) -> Word {
    match rule {
        "ring_doubted" => m::CARD_BUT_TRIALS,
        "1_to_2_5" => m::CARD_BUT_THIN,
        "conifer_under_6" => m::CARD_BUT_SNAG,
        "clone_not_known" | "suitable_clone" => m::CARD_BUT_CLONE,
        "unknown_species" => m::CARD_BUT_NAME,
        "oak_wilt_near" => m::CARD_BUT_OAK_WILT,
        "sprouts_below" | "not_alone_guided" => m::CARD_BUT_SPROUTS,
        _ => m::CARD_BUT_SOMETHING,
    }
}

/// Rows of the methods that say of a ring that the tree sprouts from below it.
const SPROUTS: [&str; 5] = [
    "not_alone",
    "not_alone_guided",
    "followup",
    "sprouts_below",
    "deep_cut_resprouts",
];

/// Why a ring is not at the head, or waits, by the row of the methods.
fn because(rule: &str) -> Word {
    match rule {
        "no_ring_to_cut" => m::CARD_NO_BARK_RING,
        "line" | "line_open" => m::CARD_LINE_NEAR,
        "professional"
        | "inside"
        | "inside_over_6"
        | "inside_herbicide"
        | "inside_heaven"
        | "inside_heaven_over_6"
        | "inside_over_6_cut" => m::CARD_NOTHING_STANDING,
        "oak_wilt_months" => m::CARD_OAKS_NOW,
        "oak_wilt_near" => m::CARD_OAK_WILT_NEAR,
        "ash_borer" => m::CARD_ASH_BORER,
        "american_elm" => m::CARD_ELM_BEETLES,
        "pines_near" => m::CARD_PINE_BEETLES,
        "unknown_species" | "unknown_species_against" => m::CARD_NAME_OPEN,
        "group_months" => m::CARD_GROUP_NOW,
        "heaven_out_of_season" => m::CARD_HERBICIDE_THEN,
        "heaven_stump" | "suckers" | "suckers_cut" | "suckers_base" => m::CARD_CUT_FIRST,
        "sap_flow" => m::CARD_SAP,
        "clone_not_whole" | "suitable_clone_not_whole" => m::CARD_CLONE_REST,
        "clone_not_known" | "suitable_clone" => m::CARD_CLONE,
        "stem_spared" => m::CARD_REACHES_OTHER,
        rule if SPROUTS.contains(&rule) => m::CARD_SPROUTS,
        "dead" | "dead_nothing_near" => m::CARD_DEAD_ALREADY,
        "kill_only" => m::CARD_KILLS_MORE,
        _ => m::CARD_NOT_SUITED,
    }
}
