//! What is wrong with a row, as data: a column, a code and its figures. The view words it.

use calc::question;

/// How much a problem matters.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Severity {
    /// The row has no answer until it is mended.
    Fix,
    /// The row is answered; look at it.
    Check,
    /// Only said.
    Note,
}

impl Severity {
    /// Its word.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::Fix => "fix",
            Self::Check => "check",
            Self::Note => "note",
        }
    }
}

/// One problem of one row.
#[derive(Clone, Debug, PartialEq)]
pub struct RowProblem {
    /// The row, as the spreadsheet shows it.
    pub row: u64,
    /// The column, from 0; none for the row as a whole.
    pub column: Option<usize>,
    /// How much it matters.
    pub level: Severity,
    /// What is wrong.
    pub code: RowFault,
    /// The cell, shortened to what a message can carry.
    pub value: String,
}

/// What is wrong with a row, or may be.
#[derive(Clone, Debug, PartialEq)]
pub enum RowFault {
    /// What the reader of a question says of the value.
    Question(question::Problem),
    /// A trunk wider than almost any.
    SizeWide {
        /// As it was read.
        doubt: question::SizeInDoubt,
        /// Its cell says the unit with it.
        said: bool,
    },
    /// No size.
    SizeMissing {
        /// The column has girths.
        girth: bool,
    },
    /// No name.
    NameMissing,
    /// A name that nobody of us knows.
    NameUnknown,
    /// A tree that is known and is not on the list; the group that it is taken as.
    NotListed {
        /// Its name.
        name: &'static str,
        /// `unknown broadleaf`, with its name.
        choose: String,
    },
    /// A genus alone.
    GenusOnly {
        /// Listed trees of it.
        of: Vec<&'static str>,
    },
    /// A name of several trees.
    SeveralTrees {
        /// Which.
        of: Vec<&'static str>,
    },
    /// Two names of different trees.
    TwoTrees,
    /// The scientific and the common name are of two trees.
    NamesDisagree,
    /// A first word that is shortened.
    Shortened,
    /// The name is doubted.
    Doubted,
    /// A code that the table of codes does not have.
    CodeUnknown,
    /// A symbol of the plant list whose tree is not on ours.
    CodeNotListed,
    /// What the codes mean was not decided.
    CodeUndecided,
    /// The name was decided as something that is no species.
    DecisionUnknown {
        /// What was decided.
        decided: String,
    },
    /// The tag stands in an earlier row.
    TagTwice {
        /// That row.
        first: u64,
    },
    /// The tag looks as if a spreadsheet made it.
    TagMangled,
    /// The spreadsheet lost the value.
    Broken,
    /// A formula as text.
    Formula,
    /// Several stems without their sizes.
    StemSizes {
        /// How many.
        stems: Option<u32>,
    },
    /// A range of sizes.
    Range,
    /// A size without an upper or lower end.
    Open,
    /// A range or fraction that a spreadsheet made a day.
    MadeADay,
    /// Two numbers in one cell.
    TwoNumbers,
    /// A year in a column of sizes.
    Year,
    /// An estimate.
    Estimate,
    /// A class whose size was not decided.
    ClassUndecided,
    /// Girth and diameter don't agree.
    SizesDisagree,
    /// Thinner than in an earlier year.
    Shrunk {
        /// That year.
        year: u32,
    },
    /// Measured off breast height: the size is used as it is.
    MeasuredOff,
    /// A count of stems that is none.
    StemCount,
    /// A word of the condition that is not known.
    ConditionUnknown,
    /// A status that is not known.
    StatusUnknown,
    /// A lean that is not known.
    LeanUnknown,
    /// A target that is not known.
    TargetUnknown,
    /// A distance beside which no target stands.
    DistanceAlone,
    /// A yes or no that is neither.
    NotYesNo,
    /// Latitude and longitude change places.
    PlaceSwapped,
    /// No place on earth.
    NotOnEarth,
    /// A place that is not degrees: kept, not mapped.
    NotDegrees,
    /// The planned day has passed.
    DayPast,
    /// A word that is none of those that its column may have.
    CountsAs {
        /// Those that it may have.
        known: &'static str,
        /// What it counts as.
        counts_as: &'static str,
    },
    /// No past day on which the work was done.
    DoneDay,
    /// The note says that the tree may be gone.
    NoteGone,
    /// The note tells of stems.
    NoteStems,
    /// A text of the row speaks of a wire.
    NoteWire {
        /// The row itself does not say where it is: the tree is kept out.
        open: bool,
    },
    /// The note speaks of something that the tree could hit.
    NoteThing {
        /// The row says nothing else of it: what is said of its whole part does not hold.
        open: bool,
    },
    /// A text of the row speaks of a broken, hung or hollow part.
    NoteFault,
    /// A text of the row asks to leave the tree.
    NoteKeep,
    /// A slope that is no percentage.
    SlopeUnknown,
    /// Ground so steep that a trunk goes farther than it is long.
    Steep,
    /// The row has more cells than the header.
    TooLong,
    /// A cell that no spreadsheet keeps.
    CellTooLong,
    /// A quote was never closed.
    QuoteOpen,
    /// The same place as other trees.
    SamePlace,
}

impl RowFault {
    /// Its name, as problems are printed.
    #[must_use]
    pub fn name(&self) -> &'static str {
        match self {
            Self::Question(problem) => problem.code.name(),
            Self::SizeWide { .. } => "size_in_doubt",
            Self::DistanceAlone => "distance_alone",
            Self::SizeMissing { .. } => "size_missing",
            Self::NameMissing => "species_missing",
            Self::NameUnknown => "unknown_species",
            Self::NotListed { .. } => "not_listed",
            Self::GenusOnly { .. } => "genus_only",
            Self::SeveralTrees { .. } => "several_trees",
            Self::TwoTrees => "two_trees",
            Self::NamesDisagree => "names_disagree",
            Self::Shortened => "shortened_name",
            Self::Doubted => "doubted_name",
            Self::CodeUnknown => "unknown_code",
            Self::CodeNotListed => "code_not_listed",
            Self::CodeUndecided => "code_undecided",
            Self::DecisionUnknown { .. } => "decision_unknown",
            Self::TagTwice { .. } => "tag_twice",
            Self::TagMangled => "tag_mangled",
            Self::Broken => "broken_formula",
            Self::Formula => "formula",
            Self::StemSizes { .. } => "stem_sizes_missing",
            Self::Range => "range",
            Self::Open => "open_ended",
            Self::MadeADay => "made_a_day",
            Self::TwoNumbers => "two_numbers",
            Self::Year => "year_for_size",
            Self::Estimate => "estimate",
            Self::ClassUndecided => "class_undecided",
            Self::SizesDisagree => "sizes_disagree",
            Self::Shrunk { .. } => "shrunk",
            Self::MeasuredOff => "measured_off",
            Self::StemCount => "stem_count",
            Self::ConditionUnknown => "unknown_condition",
            Self::StatusUnknown => "unknown_status",
            Self::LeanUnknown => "unknown_lean",
            Self::TargetUnknown => "unknown_target",
            Self::NotYesNo => "not_yes_or_no",
            Self::PlaceSwapped => "place_swapped",
            Self::NotOnEarth => "not_on_earth",
            Self::NotDegrees => "not_degrees",
            Self::DayPast => "day_past",
            Self::CountsAs { .. } => "unknown_word",
            Self::DoneDay => "no_done_day",
            Self::NoteGone => "note_gone",
            Self::NoteStems => "note_stems",
            Self::NoteWire { .. } => "note_wire",
            Self::NoteThing { .. } => "note_target",
            Self::NoteFault => "note_fault",
            Self::NoteKeep => "note_keep",
            Self::SlopeUnknown => "unknown_slope",
            Self::Steep => "steep",
            Self::TooLong => "more_cells",
            Self::CellTooLong => "cell_too_long",
            Self::QuoteOpen => "quote_open",
            Self::SamePlace => "same_place",
        }
    }
}

/// The longest piece of a cell that a message repeats, in characters.
pub(crate) const REPEATED: usize = 60;

/// A cell as a message repeats it.
pub(crate) fn repeated(cell: &str) -> String {
    cell.chars().take(REPEATED).collect()
}
