//! The answer: asks the models in order (reach first) and puts together what they say. It does no arithmetic.

mod assemble;
mod beside;
mod calendar;
mod changes;
mod compose;
mod decide;
mod facts;
mod head_on_day;
mod open;
mod ring_days;
mod season_lines;
mod sources;
mod stretch;
mod work;
mod year_ahead;

pub use beside::{Also, AlsoKind};
pub use changes::{Change, Changed};
pub use decide::Outcome;
pub use open::{Conditional, If};
pub use ring_days::ring_days;
pub use sources::Assumed;
pub use year_ahead::year_ahead;

use crate::models::at_visit::VisitAnswer;
use crate::models::bark::Bark;
use crate::models::cautions::{self, CautionLine};
use crate::models::effort::{EffortAnswer, MethodWork};
use crate::models::habitat::Habitat;
use crate::models::height::Height;
use crate::models::method::MethodLine;
use crate::models::native::Native;
use crate::models::outlook::Outlook;
use crate::models::provisos::Proviso;
use crate::models::reach::Reach;
use crate::models::ring::Ring;
use crate::models::season::{DiseaseLine, Local, Rules, TimingAnswer};
use crate::models::visits::Visit;
use crate::question::Question;
use crate::reference::Reference;
use crate::terms::cite::Finding;
use crate::terms::method::Method;
use crate::terms::source::SourceLine;
use crate::terms::species::{Group, LookAlike, Suitability};
use crate::terms::tighten::Tighten;
use crate::timing::Verdict;
use calendar::{Calendar, TakenAsMet};
use chrono::NaiveDate;
use compose::{With, compose};
use facts::Known;
use serde::Serialize;

/// Answers a question. Given a question that was read, it cannot fail.
///
/// ```
/// # use calc::question::read;
/// # let reference = calc_data::whole();
/// let question = read(reference, &examples::named("do")).expect("a good question");
/// use calc::{answer::{Outcome, answer}, models::season::Local};
/// let answer = answer(reference, &question, &Local::default());
/// assert_eq!((answer.outcome, answer.height.hazard_m.round()), (Outcome::Do, 27.0));
/// ```
#[must_use]
pub fn answer(reference: &'static Reference, question: &Question, local: &Local) -> Answer {
    let days = reference.constants.answer.change_days as u64;
    let (mut answer, kept) = plain(reference, question, local, days, true);
    // While nobody knows of a line, nothing else is worth saying.
    if !answer.reach.line_open() {
        answer.changes = changes::search(reference, question, local, kept, &answer);
    }
    answer
}

/// The same without the search for what would change it.
///
/// ```
/// # use calc::question::read;
/// # let reference = calc_data::whole();
/// let question = read(reference, &examples::named("do")).expect("a good question");
/// use calc::{answer::without_changes, models::season::Local, terms::method::Method};
/// let answer = without_changes(reference, &question, &Local::default());
/// assert_eq!((answer.headline_method, answer.changes.len()), (Method::BarkRing, 0));
/// ```
#[must_use]
pub fn without_changes(
    reference: &'static Reference,
    question: &Question,
    local: &Local,
) -> Answer {
    plain(reference, question, local, 0, true).0
}

/// The same without its sources too: what a list of many trees asks for.
#[must_use]
pub fn without_sources(
    reference: &'static Reference,
    question: &Question,
    local: &Local,
) -> Answer {
    plain(reference, question, local, 0, false).0
}

/// An answer without changes, with what a search for them needs again: its days, which reach `around` days to both
/// sides of the question's day, and what is known of the methods.
fn plain(
    reference: &'static Reference,
    question: &Question,
    local: &Local,
    around: u64,
    with_sources: bool,
) -> (Answer, (Calendar, Known)) {
    let with = With {
        conditional: true,
        sources: with_sources,
    };
    let met = TakenAsMet::default();
    let ask = |question: &Question, around: u64| {
        let calendar = Calendar::new(reference, question, local, met, around);
        let known = Known::default();
        let answer = compose(reference, question, local, (&calendar, &known), met, with);
        (answer, (calendar, known))
    };
    let (mut answer, kept) = ask(question, around);
    // What a group asks for may turn the answer, and with it what it warns of: nothing that stands without the
    // group is lost.
    if answer.group.is_some() {
        let mut plain = question.clone();
        plain.tree.tighten = Tighten::default();
        plain.group = None;
        let (plain, _) = ask(&plain, 0);
        cautions::join(
            &mut answer.cautions,
            &reference.constants.cautions,
            &plain.cautions,
        );
        let inner = plain.conditional.iter().flat_map(|it| &it.answer.cautions);
        cautions::join(&mut answer.cautions, &reference.constants.cautions, inner);
        if with_sources {
            answer.sources = sources::sources(reference, &answer);
        }
    }
    (answer, kept)
}

/// An answer.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct Answer {
    /// Version of these names: 1.
    pub version: u32,
    /// Version of the tables behind it.
    pub data_version: &'static str,
    /// The outcome.
    pub outcome: Outcome,
    /// The method at the head; under `cannot_tell` the best method otherwise.
    pub headline_method: Method,
    /// Whether only a professional may do it.
    pub headline_by_professional: bool,
    /// The species as understood.
    pub species: SpeciesLine,
    /// The nine methods for the largest stem.
    pub methods: Vec<MethodLine>,
    /// Each stem, in the order given.
    pub stems: Vec<StemAnswer>,
    /// Height.
    pub height: Height,
    /// Crown width, metres: mean, low, high.
    #[serde(serialize_with = "crate::terms::lengths::maybe_found_m")]
    pub crown_m: Option<Finding<f64>>,
    /// Reach.
    pub reach: Reach,
    /// Timing on the advised day.
    pub timing: TimingAnswer,
    /// The day asked about; none for the whole year.
    #[serde(serialize_with = "crate::terms::day::maybe_day")]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<String>"),
        ts(type = "string | null")
    )]
    pub asked_day: Option<NaiveDate>,
    /// The day that the answer is for.
    #[serde(serialize_with = "crate::terms::day::maybe_day")]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<String>"),
        ts(type = "string | null")
    )]
    pub advised_day: Option<NaiveDate>,
    /// The last day of the stretch that begins with an advised day: the answer stands until then. None for a day that
    /// was asked about, and where any day will do.
    #[serde(serialize_with = "crate::terms::day::maybe_day")]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<String>"),
        ts(type = "string | null")
    )]
    pub advised_to: Option<NaiveDate>,
    /// Where the answer waits: the row that keeps the method from the day asked about.
    pub waits_for: Option<&'static str>,
    /// Bystanders stay out to here while anyone works, metres; none where nothing is done. The ground that stays
    /// dangerous afterwards is `reach.zone_m`.
    #[serde(serialize_with = "crate::terms::lengths::maybe_m")]
    pub people_out_m: Option<f64>,
    /// What the work must keep to, beside its steps.
    pub provisos: Vec<Proviso>,
    /// The bark on the day asked about.
    pub asked_verdict: Option<Verdict>,
    /// Probability of slip on the day asked about.
    pub asked_probability: Option<f64>,
    /// Minutes for the ring at its better width; none where no ring may be cut.
    pub effort: Option<EffortAnswer>,
    /// Work of the nine methods on the largest stem, in the order of `methods`.
    pub work: Vec<MethodWork>,
    /// Visits after it.
    pub visits: Vec<Visit>,
    /// Advice at the visit that was asked about.
    pub visit: Option<VisitAnswer>,
    /// Outlook of the largest stem, where a ring may be cut.
    pub outlook: Option<Outlook>,
    /// What a snag of it leaves, where it stays standing.
    pub habitat: Option<Habitat>,
    /// Months of law and biology that meet the asked or advised day or the window.
    pub rules: Vec<Rules>,
    /// Oak wilt for an oak, the ash borer for an ash: whether it is there, and who decides.
    pub diseases: Vec<DiseaseLine>,
    /// Cautions, in the order of the page.
    pub cautions: Vec<CautionLine>,
    /// Under `cannot_tell`: what would settle it, and what the answer then is.
    #[serde(rename = "if")]
    pub conditional: Option<If>,
    /// The next best thing to say.
    pub next_line: Option<Also>,
    /// What else stands beside it.
    pub also: Vec<Also>,
    /// The headline on the other side of a size limit that is near.
    pub near_limit: Option<Near>,
    /// What the group's own settings asked for beyond the models; none where nothing.
    pub group: Option<GroupAnswer>,
    /// Single changes that flip the outcome or the headline, the nearest of each kind.
    pub changes: Vec<Change>,
    /// What was not given, and what was used instead.
    pub assumed: Vec<Assumed>,
    /// Sources of everything above.
    pub sources: Vec<SourceLine>,
}

/// The species as understood.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct SpeciesLine {
    /// Common name.
    pub name: &'static str,
    /// Scientific name.
    pub scientific: &'static str,
    /// Plant code.
    pub code: &'static str,
    /// Growth form.
    pub group: Group,
    /// Whether a ring alone suits it.
    pub suitability: Suitability,
    /// Whether it is native in the region asked about.
    pub native: Native,
    /// Whether it is: a warning.
    pub native_here: bool,
    /// Native look-alikes.
    pub look_alikes: &'static [LookAlike],
}

/// One stem.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct StemAnswer {
    /// Diameter at breast height, mm.
    #[serde(serialize_with = "crate::terms::lengths::mm")]
    pub dbh_mm: f64,
    /// Diameter inside bark, mm; none without bark.
    #[serde(serialize_with = "crate::terms::lengths::maybe_mm")]
    pub inside_bark_mm: Option<f64>,
    /// Share of live bark, 0 to 1.
    pub live_share: f64,
    /// The ring; none where there is nothing to cut.
    pub ring: Option<Ring>,
    /// The bark; none for palms and the like.
    pub bark: Option<Bark>,
    /// The nine methods.
    pub methods: Vec<MethodLine>,
    /// Method at the head for this stem alone.
    pub headline_method: Method,
    /// Whether it is the one to spare.
    pub spared: bool,
}

/// Both sides of a size limit.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct Near {
    /// The limit, mm of dbh.
    #[serde(serialize_with = "crate::terms::lengths::mm")]
    pub limit_mm: f64,
    /// Whether the other side is that of thicker stems.
    pub over: bool,
    /// The headline on the other side.
    pub method: Method,
}

/// What a group's own settings asked for. They may only make an answer more cautious.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct GroupAnswer {
    /// The group.
    pub name: String,
    /// The reach is judged with the height times this.
    pub distance_factor: f64,
    /// The thickest tree that it leaves to volunteers, mm of dbh.
    #[serde(serialize_with = "crate::terms::lengths::maybe_mm")]
    pub volunteers_mm: Option<f64>,
    /// Months in which it cuts no ring: first and last month of each run.
    pub months_blocked: Vec<(u8, u8)>,
    /// Whether its size is what makes this a professional's tree.
    pub stops: bool,
}
