//! Methods, their levels, who may do them, why they stand where they do, and their steps.

use super::phrase;
use crate::words::prose::prose;
use crate::words::{Word, m};
use calc::models::effort::MethodWork;
use calc::models::outlook::Share;
use calc::models::provisos::Proviso;
use calc::terms::method::Method;
use calc::terms::tree::Herbicide;

/// Methods.
pub const HEAD_METHODS: [Word; 2] = [
    m::METHOD_HEAD_METHODS_METHOD,
    m::METHOD_HEAD_METHODS_HOW_IT_STANDS_AND,
];
/// The two groups of methods.
pub fn group(herbicide: bool) -> Word {
    if herbicide {
        m::METHOD_WITH_HERBICIDE
    } else {
        m::METHOD_WITHOUT_HERBICIDE
    }
}

/// Who may do it. A herbicide method is the applicator's, unless the asker said that they may.
pub fn who(method: Method, by_professional: bool, herbicide: Herbicide) -> Word {
    match (method.needs_herbicide(), by_professional) {
        (true, true) => m::METHOD_WHO_PROFESSIONAL_APPLICATOR,
        (false, true) => m::METHOD_WHO_PROFESSIONAL,
        (true, false) if herbicide == Herbicide::Yes => m::METHOD_WHO_YOU_AS_LABEL,
        (true, false) => m::METHOD_WHO_APPLICATOR,
        (false, false) => m::METHOD_WHO_YOU,
    }
}

/// The same behind a method: ` (by a licensed applicator)`, or nothing.
pub fn by(method: Method, by_professional: bool, herbicide: Herbicide) -> String {
    match who(method, by_professional, herbicide) {
        m::METHOD_WHO_YOU => String::new(),
        m::METHOD_WHO_YOU_AS_LABEL => cat!(" ", &m::METHOD_LABEL_GOVERNS),
        who => cat!(" ", m::method_by_behind(who)),
    }
}

/// Who cuts down a tree near which something stands, and no professional is needed.
pub fn trained_to_fell(herbicide: bool) -> Word {
    if herbicide {
        m::METHOD_WHO_TRAINED_APPLICATOR
    } else {
        m::METHOD_WHO_TRAINED
    }
}

/// Minutes of a method: now, and over three years. Where nobody measured it that is said.
pub fn work(work: &MethodWork) -> String {
    if work.method == Method::LeaveIt {
        return m::METHOD_NO_MINUTES.into();
    }
    let Some(now) = &work.now else {
        return m::METHOD_NO_NUMBER.into();
    };
    let years = match (&work.three_years, work.visits) {
        (_, 0) => m::METHOD_NOTHING_COMES_BACK.into(),
        (Some(long), visits) => m::method_with_visits(minutes_said(long), visits),
        (None, _) => m::METHOD_NO_NUMBER_FOUND.into(),
    };
    let now = minutes_said(now);
    if work.of.is_empty() {
        m::method_work(m::MethodWork { now, years })
    } else {
        m::method_work_as(m::MethodWorkAs {
            now,
            of_: prose(work.of),
            years,
        })
    }
}

fn minutes_said(share: &Share) -> String {
    let (low, high) = (minutes(share.low), minutes(share.high));
    match share.likely {
        Some(likely) => m::method_about_range(m::MethodAboutRange {
            likely: minutes(likely),
            range: phrase::to(low, high),
        }),
        None if low == high => m::method_about(low),
        None => phrase::to(low, high),
    }
}

fn minutes(value: f64) -> String {
    if value < 10.0 {
        crate::measure::plain(value, 0)
    } else {
        crate::measure::minutes(value)
    }
}

/// Why a row of the table lowers a method, as a clause. None for a row without words: a test holds that
/// there is none.
pub fn rule(id: &str, method: Method) -> Option<Word> {
    let row = match (id, method) {
        ("always", Method::SawRing) => "always_saw",
        ("always", Method::RepeatCutting) => "always_cut",
        ("inside_over_6", Method::RepeatCutting) => "inside_over_6_cut",
        ("10_and_over", Method::PullOrDig | Method::RepeatCutting) => "10_and_over_small",
        _ => id,
    };
    m::method_rule(row)
}

/// Steps of another method. The label and the law stand above all of them.
pub fn other_steps(
    method: Method,
    (dead, drops_wood): (bool, bool),
    by_professional: bool,
) -> &'static [Word] {
    if by_professional {
        return &[
            m::METHOD_STEP_ASK_PROFESSIONAL_SAY,
            m::METHOD_STEP_SAY_WHAT_YOU,
        ];
    }
    match method {
        // The ring has steps of its own, made for the stem.
        Method::BarkRing => &[],
        Method::SawRing => &[
            m::METHOD_STEP_CUT_EVERY_BRANCH,
            m::METHOD_STEP_SAW_ONE_LEVEL,
            m::METHOD_STEP_EXPECT_TO_DIE,
            m::METHOD_STEP_TREE_WITH_CUT,
        ],
        Method::Frill => &[
            m::METHOD_STEP_ASK_LICENSED_APPLICATOR,
            m::METHOD_STEP_PRODUCT_LABEL_DECIDES,
            m::METHOD_STEP_CUTS_GO_ROUND,
        ],
        Method::BasalBark => &[
            m::METHOD_STEP_ASK_LICENSED_APPLICATOR,
            m::METHOD_STEP_PRODUCT_LABEL_DECIDES,
            m::METHOD_STEP_LOWEST_PART_STEM,
        ],
        Method::CutStump => &[
            m::METHOD_STEP_CUT_LOW_LEVEL,
            m::METHOD_STEP_STUMP_TREATED_ONCE,
            m::METHOD_STEP_KEEP_WOOD_WHERE,
        ],
        Method::PullOrDig => &[
            m::METHOD_STEP_WAIT_FOR_MOIST,
            m::METHOD_STEP_HAVE_BURIED_LINES,
            m::METHOD_STEP_LOOSEN_ROOT_CROWN,
            m::METHOD_STEP_SHAKE_OFF_SOIL,
        ],
        Method::Fell => &[
            m::METHOD_STEP_WALK_ALL_ROUND,
            m::METHOD_STEP_KEEP_EVERYONE_TWO,
            m::METHOD_STEP_CUT_BELOW_LOWEST,
            m::METHOD_STEP_FELLING_NEEDS_TRAINING,
        ],
        Method::RepeatCutting => &[
            m::METHOD_STEP_CUT_LOW_BELOW,
            m::METHOD_STEP_CUT_SPROUTS_EACH,
            m::METHOD_STEP_GO_ON_FOR,
        ],
        Method::LeaveIt if dead => &[
            m::METHOD_STEP_LEAVE_STANDING_SNAG,
            m::METHOD_STEP_KEEP_PEOPLE_OUT,
        ],
        Method::LeaveIt if drops_wood => {
            &[m::METHOD_STEP_DO_NOTHING_TO, m::METHOD_STEP_LOOK_ONCE_YEAR]
        }
        Method::LeaveIt => &[m::METHOD_STEP_DO_NOTHING, m::METHOD_STEP_LOOK_ONCE_YEAR],
    }
}

/// Steps that would leave wood on the ground, where it must not lie.
const LEAVES_WOOD: [Word; 2] = [m::METHOD_STEP_KEEP_WOOD_WHERE, m::METHOD_STEP_SAY_WHAT_YOU];

/// Whether a step stands, where wood must go.
pub fn step_stands(step: Word, wood_goes: bool) -> bool {
    !(wood_goes && LEAVES_WOOD.contains(&step))
}

/// What the work must keep to, as a step.
pub fn proviso(proviso: Proviso, south: bool) -> Word {
    match (proviso, south) {
        (Proviso::TakeAwayOrPeel, false) => m::METHOD_PEEL_OR_OCTOBER,
        (Proviso::TakeAwayOrPeel, true) => m::METHOD_PEEL_OR_APRIL,
        (Proviso::BarkOff, _) => m::METHOD_BARK_OFF,
        (Proviso::TrainedToFell, _) => m::METHOD_TRAINED_TO_FELL,
        (Proviso::FellingNeedsTraining, _) => m::METHOD_STEP_FELLING_NEEDS_TRAINING,
        (Proviso::PathClosed, _) => m::METHOD_PATH_CLOSED,
        (Proviso::CutDownDead, _) => m::METHOD_CUT_DOWN_DEAD,
        (Proviso::DeadAshBrittle, _) => m::METHOD_DEAD_ASH,
        (Proviso::SproutsThreeTimes, _) => m::METHOD_SPROUTS_THREE_TIMES,
    }
}

#[cfg(test)]
mod tests {
    use calc::models::condition::RowCondition;
    use calc::terms::method::Method;

    #[test]
    fn every_row_of_the_table_has_words() {
        for id in RowCondition::IDS {
            for method in Method::ALL {
                assert!(super::rule(id, *method).is_some(), "no words for {id}");
            }
        }
        assert!(super::rule("no such row", Method::Fell).is_none());
    }
}
