//! The marks: where each stands on its tape, what it says, and what a move makes of the question.
//!
//! A mark's place is a whole count of steps from the beginning of its tape: days of the year; feet or metres; half
//! inches or centimetres. What was typed beside a mark is read as the form's own fields are.

use super::Trial;
use super::drawing::year::Band;
use crate::answer::frame::{Region, about_ring};
use crate::form::Sheet;
use crate::measure;
use crate::words::another as w;
use crate::words::{Say, m};
use calc::answer::Outcome;
use calc::question::{Day, Problem, Question, TargetTyped, Text, Typed};
use calc::reference::Reference;
use calc::terms::number::read_number;
use calc::terms::quantity::{M_PER_FT, MM_PER_IN, Units};
use calc::terms::tree::TargetKind;
use calc::timing::{Doy, Span, Verdict};
use chrono::{Datelike, NaiveDate};

/// Which mark.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Which {
    /// The notch: the day of the work.
    Day,
    /// The flag: how far the nearest thing is.
    Far,
    /// The caliper: the trunk across.
    Size,
}

impl Which {
    /// All, in the order of the page.
    pub const ALL: [Self; 3] = [Self::Day, Self::Far, Self::Size];

    /// The name of its slider. That of the field beside it has `.typed` behind.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Day => "try.day",
            Self::Far => "try.far",
            Self::Size => "try.size",
        }
    }

    /// The mark whose slider or field has this name, and whether it is the field.
    #[must_use]
    pub fn named(name: &str) -> Option<(Self, bool)> {
        let (of, typed) = match name.strip_suffix(".typed") {
            Some(of) => (of, true),
            None => (name, false),
        };
        let found = Self::ALL.into_iter().find(|which| which.name() == of)?;
        Some((found, typed))
    }

    fn at(self) -> usize {
        self as usize
    }
}

/// The marks that were moved, each as text of a field; none where it rests as it was asked.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct MovedMarks([Option<String>; 3]);

/// A mark as it stands.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Mark {
    /// Which.
    pub which: Which,
    /// Steps from the beginning of the tape; at its end where the value lies beyond.
    pub at: i32,
    /// The first and the last step.
    pub ends: [i32; 2],
    /// Steps of a page key.
    pub page: i32,
    /// What the field beside it holds.
    pub typed: String,
    /// Value and band, for those who listen.
    pub said: String,
}

/// The nearest thing that counts: its place in the question's list, none where a path is only supposed; and its kind.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Thing {
    pub at: Option<usize>,
    pub kind: TargetKind,
}

/// A trial, and the question and answer as they stand now.
pub(super) struct Now<'a> {
    pub trial: Trial<'a>,
    pub was: Say<'a>,
    pub now: Say<'a>,
}

impl<'a> Now<'a> {
    /// The trial of a region; none where the answer before it has nothing to try: where it stops, or can't be given.
    pub(super) fn of(cx: &Region<'a>) -> Option<Self> {
        let trial = cx.options.another?;
        let tries = matches!(
            trial.answer.outcome,
            Outcome::Do | Outcome::Wait | Outcome::OtherMethod
        );
        let was = Say {
            question: trial.question,
            answer: trial.answer,
            ..cx.say
        };
        tries.then_some(Self {
            trial,
            was,
            now: cx.say,
        })
    }

    pub(super) fn units(&self) -> Units {
        self.was.units()
    }

    fn metric(&self) -> bool {
        self.units() == Units::Metric
    }

    /// Whether a mark stands.
    pub(super) fn has(&self, which: Which) -> bool {
        match which {
            Which::Day => !self.trial.days.is_empty() && about_ring(&self.was),
            Which::Far => self.thing().is_some(),
            Which::Size => true,
        }
    }

    pub(super) fn thing(&self) -> Option<Thing> {
        let nearest = self.was.nearest();
        if let Some(at) = nearest.and_then(|it| it.index) {
            let kind = self.was.question.tree.targets.get(at)?.kind;
            return Some(Thing { at: Some(at), kind });
        }
        let free = nearest.is_none() && self.was.question.tree.none_in_reach;
        free.then_some(Thing {
            at: None,
            kind: TargetKind::Path,
        })
    }

    /// The stem between the jaws: the thickest, as it was asked.
    fn stem(&self) -> usize {
        let tree = &self.was.question.tree;
        let largest = tree.largest();
        let at = tree.stems.iter().position(|stem| stem == largest);
        at.unwrap_or(0)
    }

    /// The day at the notch: the one asked about, else the one advised.
    pub(super) fn day(say: &Say<'_>) -> NaiveDate {
        match say.question.day {
            Day::On(day) => day,
            Day::Year { today } => say.answer.advised_day.unwrap_or(today),
        }
    }

    /// The distance at the flag, metres; none where nothing is near.
    pub(super) fn far_m(&self, say: &Say<'_>) -> Option<f64> {
        let thing = self.thing()?;
        let supposed = self.was.question.tree.targets.len();
        let target = say
            .question
            .tree
            .targets
            .get(thing.at.unwrap_or(supposed))?;
        Some(target.distance?.m())
    }

    /// The trunk between the jaws, mm.
    pub(super) fn size_mm(&self, say: &Say<'_>) -> f64 {
        let tree = &say.question.tree;
        let stem = tree.stems.get(self.stem());
        stem.unwrap_or(tree.largest()).dbh.mm()
    }

    /// One step of a mark: a day; metres; millimetres.
    fn step(&self, which: Which) -> f64 {
        match (which, self.metric()) {
            (Which::Day, _) | (Which::Far, true) => 1.0,
            (Which::Far, false) => M_PER_FT,
            (Which::Size, true) => 10.0,
            (Which::Size, false) => MM_PER_IN / 2.0,
        }
    }

    /// From one number of the distance tape to the next, feet or metres: two heights lie on the tape, and the nearest
    /// thing where it is not much farther.
    pub(super) fn far_step(&self) -> f64 {
        let reach = &self.was.answer.reach;
        let mut long = reach.two_heights_m * 1.2;
        if let Some(far) = self.far_m(&self.was).filter(|far| *far < long * 1.5) {
            long = long.max(far * 1.1);
        }
        let long = long / self.step(Which::Far) / super::drawing::far::STEPS;
        let steps = [
            2.0, 4.0, 5.0, 10.0, 20.0, 30.0, 40.0, 50.0, 60.0, 80.0, 100.0,
        ];
        let found = steps.into_iter().find(|step| *step >= long);
        found.unwrap_or(200.0)
    }

    /// The last step of a tape.
    fn most(&self, which: Which) -> i32 {
        match which {
            Which::Day => 365,
            Which::Far => (self.far_step() * super::drawing::far::STEPS) as i32,
            Which::Size => {
                let [least, ten] = if self.metric() { [75, 25] } else { [60, 20] };
                let wants = (self.size_mm(&self.was) * 1.25 / self.step(which)) as i32;
                if wants <= least {
                    least
                } else {
                    (wants / ten + 1) * ten
                }
            }
        }
    }

    /// The length of the size tape, mm.
    pub(super) fn size_long_mm(&self) -> f64 {
        f64::from(self.most(Which::Size)) * self.step(Which::Size)
    }

    /// Where a question stands on a tape, in steps and parts of one; beyond the end where it is.
    fn steps(&self, which: Which, say: &Say<'_>) -> f64 {
        let step = self.step(which);
        match which {
            Which::Day => {
                let day = Self::day(say);
                let number = f64::from(Doy::of(day).number());
                match (self.trial.days.first(), self.trial.days.last()) {
                    (Some(first), _) if day < first.from => 0.0,
                    (_, Some(last)) if day > last.to => 366.0,
                    _ => number,
                }
            }
            // Where nothing is near the flag waits at the end.
            Which::Far => match self.far_m(say) {
                Some(far) => far / step,
                None => f64::from(self.most(which)),
            },
            Which::Size => self.size_mm(say) / step,
        }
    }

    /// The same in per cent, and whether it lies beyond an end.
    pub(super) fn place(&self, which: Which, say: &Say<'_>) -> (f64, bool) {
        let first = if which == Which::Day { 1.0 } else { 0.0 };
        let most = f64::from(self.most(which));
        let at = self.steps(which, say);
        let on = crate::draw::number::within(at, first, most);
        ((on - first) / (most - first) * 100.0, at != on)
    }

    /// The mark as it stands, with what was typed beside it.
    fn mark(&self, which: Which, moved: &MovedMarks) -> Mark {
        let most = self.most(which);
        let first = i32::from(which == Which::Day);
        let at = whole(self.steps(which, &self.now));
        let at = at.max(first).min(most);
        let page = match (which, self.metric()) {
            (Which::Day, _) => 7,
            (Which::Far, false) => 10,
            (Which::Far, true) => 3,
            (Which::Size, false) => 4,
            (Which::Size, true) => 5,
        };
        let typed = moved.0[which.at()].clone();
        Mark {
            which,
            at,
            ends: [first, most],
            page,
            typed: typed.unwrap_or_else(|| self.written(which)),
            said: self.said(which),
        }
    }

    /// What the field of a mark holds as it was asked.
    pub(super) fn written(&self, which: Which) -> String {
        match which {
            Which::Day => match self.was.question.day {
                Day::On(day) => calc::terms::day::iso(day),
                Day::Year { .. } => String::new(),
            },
            Which::Far => match self.far_m(&self.was) {
                Some(far) => measure::length(far).first(self.units()).to_owned(),
                None => String::new(),
            },
            Which::Size => {
                let size = measure::size_read(self.size_mm(&self.was));
                size.first(self.units()).to_owned()
            }
        }
    }

    /// A value in words, without its band.
    pub(super) fn value(&self, which: Which, say: &Say<'_>) -> String {
        match which {
            Which::Day => measure::day_beside(Self::day(say), Some(Self::day(&self.was))),
            Which::Far => match self.far_m(say) {
                Some(far) => measure::length(far).first(self.units()).to_owned(),
                None => m::ANOTHER_NOTHING.into(),
            },
            Which::Size => {
                let size = measure::size_read(self.size_mm(say));
                size.first(self.units()).to_owned()
            }
        }
    }

    /// Value and band.
    fn said(&self, which: Which) -> String {
        let value = self.value(which, &self.now);
        let spoken = match which {
            Which::Day => value,
            Which::Far | Which::Size => w::spoken(&value),
        };
        let band = match which {
            Which::Day => {
                let day = Self::day(&self.now);
                let span = self
                    .trial
                    .days
                    .iter()
                    .find(|span| span.from <= day && day <= span.to);
                span.map(|span| w::verdict(span.verdict))
            }
            Which::Far => self
                .far_m(&self.now)
                .map(|far| w::zone(self.now.answer, far)),
            Which::Size => None,
        };
        let (_, beyond) = self.place(which, &self.now);
        let band = band.or(beyond.then_some(m::ANOTHER_BEYOND));
        match band {
            Some(band) => m::another_value(m::AnotherValue {
                value: &spoken,
                band,
            }),
            None => spoken,
        }
    }
}

fn whole(steps: f64) -> i32 {
    libm::floor(steps + 0.5) as i32
}

/// The band of a word.
pub(super) fn band(verdict: Verdict) -> Band {
    match verdict {
        Verdict::Best => Band::Best,
        Verdict::OpeningTest | Verdict::ClosingTest | Verdict::TestFirst => Band::Test,
        Verdict::TooEarly | Verdict::Late => Band::Tight,
        Verdict::Dormant | Verdict::Bonded | Verdict::Unknown => Band::DoesNotSlip,
    }
}

/// All marks of an answer as they stand.
pub(super) fn marks(cx: &Region<'_>, moved: &MovedMarks) -> Vec<Mark> {
    let Some(now) = Now::of(cx) else {
        return Vec::new();
    };
    let all = Which::ALL.into_iter().filter(|which| now.has(*which));
    all.map(|which| now.mark(which, moved)).collect()
}

/// The date of a day of the year within twelve months.
fn date(days: &[Span], number: i32) -> Option<NaiveDate> {
    let first = days.first()?.from;
    let day = Doy::wrap(number);
    let same = day.in_year(first.year());
    Some(if same < first {
        day.in_year(first.year() + 1)
    } else {
        same
    })
}

impl MovedMarks {
    /// Whether none was moved.
    #[must_use]
    pub fn none(&self) -> bool {
        self.0.iter().all(Option::is_none)
    }

    /// Those that can be read each by itself, and what is wrong with the others.
    pub(super) fn parted(
        &self,
        wrong: impl Fn(&Self) -> Option<Vec<Problem>>,
    ) -> (Self, Vec<(Which, Problem)>) {
        let mut readable = Self::default();
        let mut all = Vec::new();
        for which in Which::ALL {
            let mut alone = Self::default();
            alone.0[which.at()].clone_from(&self.0[which.at()]);
            match wrong(&alone).map(|problems| problems.into_iter().next()) {
                None => readable.0[which.at()].clone_from(&self.0[which.at()]),
                Some(problem) => all.extend(problem.map(|problem| (which, problem))),
            }
        }
        (readable, all)
    }

    /// Moves a mark to a step of its tape; back to where it was asked, it rests.
    pub(super) fn set_step(&mut self, now: &Now<'_>, which: Which, step: i32) {
        let [first, most] = [i32::from(which == Which::Day), now.most(which)];
        let step = step.max(first).min(most);
        let asked = whole(now.steps(which, &now.was));
        let text = match which {
            _ if step == asked.max(first).min(most) => None,
            Which::Day => date(now.trial.days, step).map(calc::terms::day::iso),
            Which::Far => {
                let unit = if now.metric() { "m" } else { "ft" };
                Some(cat!(measure::number(step.unsigned_abs()), " ", unit))
            }
            Which::Size if now.metric() => {
                Some(cat!(measure::number(step.max(1).unsigned_abs()), " cm"))
            }
            Which::Size => Some(cat!(measure::quarters(f64::from(step.max(1)) / 2.0), " in")),
        };
        self.0[which.at()] = text;
    }

    /// Takes what was typed beside a mark; what stood there, or nothing, lets it rest.
    pub(super) fn set_text(&mut self, now: &Now<'_>, which: Which, text: &str) {
        let text = text.trim();
        let rests = text.is_empty() || text == now.written(which);
        self.0[which.at()] = (!rests).then(|| text.to_owned());
    }

    /// Puts what was moved into a question as typed.
    pub(super) fn put(&self, now: &Now<'_>, typed: &mut Typed) {
        let text = |which: Which| self.0[which.at()].as_deref().map(Text::from);
        if let Some(day) = text(Which::Day) {
            typed.date = Some(day);
        }
        if let (Some(far), Some(thing)) = (text(Which::Far), now.thing()) {
            let at = thing.at.unwrap_or_else(|| {
                typed.none_in_reach = false;
                typed.targets.push(TargetTyped {
                    kind: Some(Text::from(TargetKind::Path.word())),
                    ..TargetTyped::default()
                });
                typed.targets.len() - 1
            });
            if let Some(target) = typed.targets.get_mut(at) {
                target.distance = Some(far);
            }
        }
        if let Some(size) = text(Which::Size)
            && let Some(stem) = typed.stems.get_mut(now.stem())
        {
            stem.girth = None;
            stem.diameter = Some(size);
            // A height that was measured was so of this tree; whether it suits another size is not asked here.
            typed.height_confirmed = true;
            // Nor whether anybody meant so wide a trunk: the mark stands there to be seen.
            typed.size_confirmed = true;
        }
    }

    /// Writes what was moved into the controls of the form.
    pub(super) fn write(
        &self,
        now: &Now<'_>,
        sheet: &mut Sheet,
        reference: &'static Reference,
        today: NaiveDate,
    ) {
        let units: [&str; 2] = if now.metric() {
            ["m", "cm"]
        } else {
            ["ft", "in"]
        };
        if let Some(day) = &self.0[0] {
            let on = Typed {
                date: Some(Text::from(&**day)),
                ..Typed::default()
            };
            // Whatever the form asks a day by says this one.
            let other = Sheet::of(reference, &on, today);
            for name in ["day", "date", "date.y", "date.m", "date.d"] {
                if !other.get(name).is_empty() {
                    sheet.set(name, other.get(name));
                }
            }
        }
        if let (Some(far), Some(thing)) = (&self.0[1], now.thing()) {
            let control =
                |at: usize, key: &str| cat!("targets[", measure::number(at as u32), "].", key);
            let count = sheet.count("targets");
            let told = |at: &usize| {
                let keys = ["kind", "distance", "slope", "downhill"];
                let says = |key: &&str| {
                    let control = control(*at, key);
                    // That nothing is there is no thing.
                    !sheet.blank(&control) && !sheet.is(&control, "nothing")
                };
                keys.iter().any(says)
            };
            let at = match thing.at {
                Some(at) => (0..count).filter(told).nth(at),
                None => (0..count).find(|at| !told(at)),
            };
            let at = at.unwrap_or_else(|| {
                sheet.add("targets");
                count
            });
            if thing.at.is_none() {
                sheet.set("none_in_reach", "");
                sheet.set(&control(at, "kind"), TargetKind::Path.word());
            }
            sheet.set(&control(at, "distance"), &with_unit(far, units[0]));
        }
        if let Some(size) = &self.0[2] {
            let stem = cat!("stems[", measure::number(now.stem() as u32), "].");
            let how = if now.stem() == 0 {
                "stems.how".into()
            } else {
                cat!(&stem, "how")
            };
            sheet.set(&how, "across");
            sheet.set(&cat!(stem, "diameter"), &with_unit(size, units[1]));
        }
    }
}

/// A number with its unit behind it; text that carries its own, or is no number, as it is.
fn with_unit(text: &str, unit: &str) -> String {
    match read_number(text) {
        Ok(number) if number.unit.is_none() => cat!(text, " ", unit),
        _ => text.to_owned(),
    }
}

/// The question of a trial, told apart from the one asked by nothing but the marks.
pub(super) fn stands_apart(was: &Question, now: &Question) -> bool {
    let far = |question: &Question| -> Vec<f64> {
        let targets = question.tree.targets.iter();
        targets
            .map(|it| it.distance.map_or(-1.0, |far| far.m()))
            .collect()
    };
    let size = |question: &Question| -> Vec<f64> {
        question
            .tree
            .stems
            .iter()
            .map(|stem| stem.dbh.mm())
            .collect()
    };
    was.day != now.day || far(was) != far(now) || size(was) != size(now)
}
