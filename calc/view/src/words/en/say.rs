//! An answer with what it answers, and what of it several sentences name.

use super::{method, season};
use crate::measure;
use crate::words::{Word, m};
use calc::answer::{Answer, GroupAnswer};
use calc::models::method::MethodLine;
use calc::models::provisos::Proviso;
use calc::models::reach::Judged;
use calc::question::Question;
use calc::question::settings::{AskingGroup, Settings};
use calc::reference::Reference;
use calc::terms::method::Method;
use calc::terms::place::Hemisphere;
use calc::terms::quantity::Units;
use calc::terms::species::Trait;
use calc::terms::tree::Condition;
use calc::timing::YearsInTen;

/// An answer with what it answers.
#[derive(Clone, Copy)]
pub struct Say<'a> {
    /// What is known.
    pub reference: &'static Reference,
    /// The question.
    pub question: &'a Question,
    /// The answer.
    pub answer: &'a Answer,
    /// The group whose page it stands on, with its settings.
    pub group: Option<&'a AskingGroup>,
}

impl Say<'_> {
    /// The nearest thing that counts.
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

    /// The group's settings.
    pub fn settings(&self) -> Option<&Settings> {
        self.group.map(|group| &*group.settings)
    }

    /// Its name.
    pub fn group_name(&self) -> &str {
        self.question.group.as_deref().unwrap_or("")
    }

    /// What the group asked for, where it asked for anything.
    pub fn group_answer(&self) -> Option<&GroupAnswer> {
        self.answer.group.as_ref()
    }

    /// The group's factor, where it is over 1.
    pub fn group_factor(&self) -> Option<String> {
        let factor = self.question.tree.tighten.distance_factor;
        (factor > 1.0).then(|| measure::plain(factor, 2))
    }

    /// The reader's units.
    pub fn units(&self) -> Units {
        self.question.units
    }

    /// A length in both units, the reader's first.
    pub fn length(&self, m: f64) -> String {
        measure::length(m).text(self.units())
    }

    /// A reach, rounded up, in both units.
    pub fn reach(&self, m: f64) -> String {
        measure::reach(m).text(self.units())
    }

    /// Size of the stem that the answer speaks of, in both units.
    pub fn size(&self) -> String {
        measure::size(self.question.tree.heading().dbh.mm()).text(self.units())
    }

    /// Whether it is tree-of-heaven, which has months of its own.
    pub fn is_heaven(&self) -> bool {
        self.question.tree.species.has(Trait::TreeOfHeaven)
    }

    /// Whether it drops wood already: dead, declining, or with a sign that was seen.
    pub fn drops_wood(&self) -> bool {
        let tree = &self.question.tree;
        tree.nothing_left() || tree.condition != Condition::Alive || !tree.signs.is_empty()
    }

    /// When a method works on this tree, apart from law.
    pub fn months_of(&self, of: Method) -> String {
        let heaven = self.is_heaven();
        match of {
            Method::Frill | Method::BasalBark if heaven && self.south() => {
                m::METHOD_MONTHS_HEAVEN_SOUTH.to_string()
            }
            Method::Frill | Method::BasalBark if heaven => m::METHOD_MONTHS_HEAVEN.to_string(),
            _ => m::method_months(of).to_string(),
        }
    }

    /// Whether the tree stands south of the equator.
    pub fn south(&self) -> bool {
        self.question.place.hemisphere() == Hemisphere::South
    }

    /// What the work must keep to, as steps.
    pub fn provisos(&self) -> Vec<Word> {
        let list = self.answer.provisos.iter();
        list.map(|it| method::proviso(*it, self.south())).collect()
    }

    /// Who may do the method at the head.
    pub fn who_does_it(&self) -> Word {
        let answer = self.answer;
        let head = answer.headline_method;
        if answer.provisos.contains(&Proviso::TrainedToFell) {
            return method::trained_to_fell(head.needs_herbicide());
        }
        method::who(
            head,
            answer.headline_by_professional,
            self.question.tree.herbicide,
        )
    }

    /// How a method stands for the largest stem.
    pub fn line(&self, method: Method) -> Option<&MethodLine> {
        self.answer
            .methods
            .iter()
            .find(|line| line.method == method)
    }

    /// A probability as `about 9 years in 10`, where there is one.
    pub fn chance(&self, p: Option<f64>) -> Option<String> {
        let p = p?;
        Some(season::years_in_ten(YearsInTen::of(
            p,
            &self.reference.constants.timing,
        )))
    }

    /// The target that decides.
    pub fn decided(&self) -> Option<&Judged> {
        let reach = &self.answer.reach;
        reach.decided_by.and_then(|at| reach.targets.get(at))
    }
}
