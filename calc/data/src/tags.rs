// Shared by the build, which writes a value as its place in one of these lists, and by the reader.

use calc::models::cautions::When;
use calc::models::outlook::{OutlookClass, SizeClass};
use calc::terms::cite::Grade;
use calc::terms::method::{Cell, Level};
use calc::terms::species::WoodClass;
use calc::terms::species::{Confidence, Durability, Form, Group, Suitability, Trait, Vigor};
use calc::timing::closed_months::{Scope, Topic};

pub const GRADES: &[Grade] = &[
    Grade::Measured,
    Grade::Published,
    Grade::Related,
    Grade::Derived,
    Grade::Secondary,
    Grade::Practice,
    Grade::Assumption,
    Grade::Memory,
];
pub const GROUPS: &[Group] = &[
    Group::Hardwood,
    Group::Conifer,
    Group::Shrub,
    Group::Monocot,
];
pub const VIGORS: &[Vigor] = &[Vigor::None, Vigor::Weak, Vigor::Moderate, Vigor::Strong];
pub const SUITABILITIES: &[Suitability] = &[
    Suitability::Suitable,
    Suitability::Followup,
    Suitability::Conditional,
    Suitability::NotAlone,
    Suitability::NotApplicable,
    Suitability::Unknown,
];
pub const CONFIDENCES: &[Confidence] = &[Confidence::Good, Confidence::Fair, Confidence::Poor];
pub const DURABILITIES: &[Durability] =
    &[Durability::A, Durability::B, Durability::C, Durability::D];
/// The last stands for none.
pub const WOODS: &[Option<WoodClass>] = &[
    Some(WoodClass::Ring),
    Some(WoodClass::Diffuse),
    Some(WoodClass::Conifer),
    Some(WoodClass::EvergreenBroadleaf),
    Some(WoodClass::Unknown),
    None,
];
pub const LEVELS: &[Level] = &[
    Level::Recommended,
    Level::Possible,
    Level::NotAdvised,
    Level::RuledOut,
];
/// The cell of a tag: two bits of the level, one for a professional, one for a cell that holds.
pub fn cell(tag: usize) -> Cell {
    Cell {
        at_most: LEVELS[tag % 4],
        by_professional: tag & 4 != 0,
        holds: tag & 8 != 0,
    }
}
/// A form as the tables name it, what it is, and how many coefficients it has.
pub const FORMS: &[(&str, Form, usize)] = &[
    ("WYKOFF", Form::Wykoff, 2),
    ("CURTIS_ARNEY", Form::CurtisArney, 4),
    ("QUAD", Form::Quad, 3),
    ("UTD_lin", Form::Polynomial, 2),
    ("UTD_quad", Form::Polynomial, 3),
    ("UTD_cub", Form::Polynomial, 4),
    ("UTD_loglogw1", Form::LogLog(1), 3),
    ("UTD_loglogw2", Form::LogLog(2), 3),
    ("UTD_loglogw3", Form::LogLog(3), 3),
    ("UTD_loglogw4", Form::LogLog(4), 3),
    ("UTD_expow1", Form::Exp(1), 3),
];
pub const WHENS: &[When] = &[When::Stop, When::Before, When::Work, When::After, When::Law];
pub const CLASSES: &[OutlookClass] = &[
    OutlookClass::SuitableConifer,
    OutlookClass::SuitableHardwood,
    OutlookClass::Followup,
    OutlookClass::RedOak,
    OutlookClass::WhiteOak,
    OutlookClass::CloneOrShrub,
    OutlookClass::NotAlone,
    OutlookClass::Partial,
];
pub const SIZES: &[SizeClass] = &[
    SizeClass::All,
    SizeClass::Small,
    SizeClass::Middle,
    SizeClass::Large,
    SizeClass::UnderTen,
];
pub const TOPICS: &[Topic] = &[
    Topic::Birds,
    Topic::Bats,
    Topic::Snags,
    Topic::OakWilt,
    Topic::Elm,
    Topic::PineBeetles,
    Topic::AshBorer,
    Topic::LaurelWilt,
];
pub const SCOPES: &[Scope] = &[Scope::Whole, Scope::Part, Scope::North, Scope::South];
pub const TRAITS: &[Trait] = Trait::ALL;
