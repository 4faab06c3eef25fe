//! What is told of a group's settings: a reason to refuse them, or a warning. The view words it.

use crate::question::Problem;
use crate::terms::quantity::Range;

/// Something told of one place.
#[derive(Clone, Debug, PartialEq)]
pub struct Told {
    /// Where: `contacts[0].url`, or a cell of the list of species: `B4`.
    pub path: String,
    /// What.
    pub what: SettingsFault,
}

/// What is wrong with settings, or worth a warning.
#[derive(Clone, Debug, PartialEq)]
pub enum SettingsFault {
    /// A warning: this key does nothing.
    UnknownKey,
    /// A warning: nobody knows how old it is.
    NoDay,
    /// A key that would hide or loosen something.
    Hides,
    /// A key beside those of `tighten`.
    NotTighter,
    /// A factor under 1.
    Loosens,
    /// It is needed.
    Missing,
    /// A contact without telephone and address.
    NoWay,
    /// Not of the kind that is needed: `text`, `number`, `yes or no`, `list`, `object`.
    WrongType(&'static str),
    /// The whole is larger than is taken at all.
    TooLarge,
    /// Longer than this.
    TooLong(usize),
    /// Markup, or a script.
    Markup,
    /// Not a link to a page or a telephone.
    Link,
    /// Not a telephone number.
    Phone,
    /// Not a day.
    Day,
    /// Not one of these.
    NotOneOf(&'static [&'static str]),
    /// Out of this range.
    OutOfRange(Range),
    /// A version that is not read.
    Version,
    /// A field of the question, as the form words it.
    Field(Problem),
    /// The first line of the list is not its heads.
    Heads,
    /// The list is named, and its text is not at hand.
    NoList,
    /// A list is named and pasted too.
    TwoLists,
    /// An odd number of quotes.
    Quotes,
}

impl Told {
    /// The whole is larger than [`super::LARGEST`].
    #[must_use]
    pub fn too_large() -> Self {
        Self {
            path: String::new(),
            what: SettingsFault::TooLarge,
        }
    }

    /// Whether the settings can't be taken as they are.
    #[must_use]
    pub fn refuses(&self) -> bool {
        !matches!(self.what, SettingsFault::UnknownKey | SettingsFault::NoDay)
    }
}
