//! The shape of a settings file, for its published schema alone: the reader is `read`, and a test holds the keys of
//! both against each other.

use schemars::JsonSchema;
use std::collections::BTreeMap;

/// A group's own settings. Texts are plain text, links are https, http or tel; anything else is refused. Nothing here
/// can hide a caution or make advice milder.
#[derive(JsonSchema)]
#[schemars(rename = "Settings")]
pub struct SettingsShape {
    /// The address of this schema, for editors.
    #[schemars(rename = "$schema")]
    pub schema_address: Option<String>,
    /// Version of these names: 1.
    #[schemars(range(min = 1, max = 1))]
    pub schema: u32,
    /// The group's short name.
    pub id: Option<String>,
    /// The group's name.
    pub name: Words,
    /// When the whole was last checked: `2026-05-01`. After 18 months the page says so.
    pub checked: Option<String>,
    /// Units of a new form.
    pub units: Option<UnitsShape>,
    /// State or country of a new form, ISO 3166: `US-MD`.
    pub region: Option<String>,
    /// Place of a new form.
    pub place: Option<PlaceShape>,
    /// The group's species.
    pub species: Option<SpeciesShape>,
    /// Whom to ask.
    pub contacts: Option<Vec<ContactShape>>,
    /// Local rules.
    pub codes: Option<Vec<CodeShape>>,
    /// What makes advice more cautious. There are no keys that make it milder.
    pub tighten: Option<TightenShape>,
    /// The crew of a work day.
    pub crew: Option<CrewShape>,
    /// Whether a link may carry what was typed.
    pub share: Option<ShareShape>,
}

/// A text, or one for each language.
#[derive(JsonSchema)]
#[schemars(untagged)]
pub enum Words {
    /// In English.
    Plain(String),
    /// By language; English is shown where it is there.
    Languages {
        /// English.
        en: Option<String>,
        /// Spanish.
        es: Option<String>,
    },
}

/// A text as typed, or a number.
#[derive(JsonSchema)]
#[schemars(untagged)]
pub enum TextOrNumber {
    /// As typed, with its unit.
    Text(String),
    /// A bare number.
    Number(f64),
}

/// Units.
#[derive(JsonSchema)]
#[schemars(rename = "UnitsOfSettings", rename_all = "lowercase")]
pub enum UnitsShape {
    /// Inches and feet.
    Us,
    /// Centimetres and metres.
    Metric,
    /// As the page has them.
    Both,
}

/// A point, or a half of the world.
#[derive(JsonSchema)]
#[schemars(rename = "PlaceOfSettings")]
pub struct PlaceShape {
    /// Degrees; north is positive.
    pub latitude: Option<TextOrNumber>,
    /// Degrees; east is positive.
    pub longitude: Option<TextOrNumber>,
    /// Height above the sea, as `15 m`.
    pub elevation: Option<TextOrNumber>,
    /// `north` or `south`, instead of a point.
    pub hemisphere: Option<String>,
}

/// The group's species. A species is named by its plant code, its common or its scientific name.
#[derive(JsonSchema)]
pub struct SpeciesShape {
    /// Those at the head of the list, in this order.
    pub first: Option<Vec<String>>,
    /// Whether the list has no others, but "not on this list".
    pub only: Option<bool>,
    /// Local names: each names its species.
    pub aliases: Option<BTreeMap<String, String>>,
    /// The group's words on a species, by species.
    pub notes: Option<BTreeMap<String, Words>>,
    /// Address of a table with the columns code, first, alias_en, note_en, alias_es, note_es; beside this file.
    pub list: Option<String>,
    /// The same table itself.
    pub csv: Option<String>,
}

/// Somebody to ask: with a telephone, a page or both.
#[derive(JsonSchema)]
pub struct ContactShape {
    /// `extension`, `utility`, `professional`, `permit` or `emergency`.
    pub kind: String,
    /// Name.
    pub name: Words,
    /// Telephone.
    pub phone: Option<String>,
    /// Address of a page.
    pub url: Option<String>,
    /// When this was last checked.
    pub checked: Option<String>,
}

/// A local rule.
#[derive(JsonSchema)]
pub struct CodeShape {
    /// `street-trees`, `nesting`, `burning`, `products`, `protected-species` or `work-near-lines`.
    pub topic: String,
    /// The group's words.
    pub text: Words,
    /// Address of the rule.
    pub url: Option<String>,
    /// Who decides.
    pub authority: Words,
    /// When this was last checked.
    pub checked: Option<String>,
}

/// What makes advice more cautious.
#[derive(JsonSchema)]
pub struct TightenShape {
    /// All distances are judged with the height times this.
    #[schemars(range(min = 1, max = 10))]
    pub min_distance_factor: Option<f64>,
    /// A thicker tree is a professional's, cm at breast height.
    #[schemars(range(min = 1, max = 500))]
    pub max_size_for_volunteers_cm: Option<f64>,
    /// Months in which no ring is cut, 1 to 12.
    pub months_blocked: Option<Vec<u8>>,
}

/// A crew.
#[derive(JsonSchema)]
pub struct CrewShape {
    /// People.
    #[schemars(range(min = 1, max = 200))]
    pub size: f64,
    /// Hours of work a day.
    #[schemars(range(min = 0.5, max = 24))]
    pub hours_per_day: f64,
}

/// Links with what was typed.
#[derive(JsonSchema)]
#[schemars(rename_all = "lowercase")]
pub enum ShareShape {
    /// None.
    None,
    /// In the part of the address that is never sent.
    Fragment,
}
