//! Which fields some rule reads for this species and this size: the others are not asked.

use super::sheet::clear;
use calc::models::height;
use calc::question::{Found, StemTyped, Text, Typed, find_species, read, slot_of};
use calc::reference::Reference;
use calc::terms::number::{Unit, read_number};
use calc::terms::quantity::MM_PER_IN;
use calc::terms::species::{Group, Species, SproutVigor, Suitability, Trait, WoodClass};

macro_rules! fields {
    ($($(#[$doc:meta])* $name:ident = $id:literal of $keys:expr),+ $(,)?) => {
        /// A field that is asked only where it matters.
        #[derive(Clone, Copy, Debug, PartialEq, Eq)]
        pub enum Field { $($(#[$doc])* $name),+ }

        impl Field {
            /// All of them.
            pub const ALL: &'static [Self] = &[$(Self::$name),+];

            /// The id of its element in the form.
            #[must_use]
            pub fn id(self) -> &'static str {
                match self { $(Self::$name => $id),+ }
            }

            /// What it fills of a question, or of a stem.
            fn keys(self) -> &'static [&'static str] {
                match self { $(Self::$name => &$keys),+ }
            }
        }
    };
}

fields! {
    /// Bark thickness.
    Bark = "m-bark" of ["bark"],
    /// Share of live bark.
    LiveShare = "m-live-share" of ["live_share"],
    /// Woods or open.
    Setting = "m-setting" of ["setting"],
    /// Whether the clone can be ringed whole.
    WholeClone = "m-whole-clone" of ["whole_clone"],
    /// Living trees of its genus near.
    SameGenusNear = "m-same-genus-near" of ["same_genus_near"],
    /// Vigour.
    Vigour = "m-vigour" of ["vigour"],
    /// Dry spell.
    DrySpell = "m-dry-spell" of ["dry_spell"],
    /// Limbs below the ring.
    Limbs = "m-limbs" of ["limbs"],
    /// Walking.
    Walk = "m-walk" of ["walk"],
    /// A practised crew.
    Practised = "m-practised" of ["practised"],
    /// Trees that were timed.
    Timed = "m-timed" of ["timed", "rate"],
    /// The day is fixed.
    CannotWait = "m-cannot-wait" of ["cannot_wait"],
    /// Leaf-out seen.
    LeafedOut = "m-leafed-out" of ["leafed_out"],
    /// This spring's temperatures.
    Spring = "m-spring" of ["spring", "spring_scale"],
    /// Herbicide.
    Herbicide = "m-herbicide" of ["herbicide"],
    /// Which stem is spared.
    Spare = "m-spare" of ["spare"],
    /// A confirmed trunk: asked once one was typed that is wider than almost any.
    SizeConfirmed = "m-size-confirmed" of ["size_confirmed"],
    /// A confirmed height: asked once a height was typed that looks odd.
    Confirmed = "m-height-confirmed" of ["height_confirmed"],
}

/// A set of fields.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct FieldSet(u32);

impl FieldSet {
    /// Whether a field is in it.
    #[must_use]
    pub fn holds(self, field: Field) -> bool {
        self.0 & (1 << field as u32) != 0
    }

    fn put(&mut self, field: Field, held: bool) {
        self.0 |= u32::from(held) << field as u32;
    }

    /// Takes everything out of a question that is not in the set.
    pub fn keep(self, typed: &mut Typed) {
        for field in Field::ALL {
            if self.holds(*field) {
                continue;
            }
            for key in field.keys() {
                clear(slot_of(typed, key));
                for stem in &mut typed.stems {
                    clear(slot_of(stem, key));
                }
            }
        }
    }
}

/// The fields that matter for a question as far as it has been typed. While the species is open all but
/// those of single kinds of trees do.
#[must_use]
pub fn matters(reference: &'static Reference, typed: &Typed) -> FieldSet {
    let species = match find_species(reference, word(&typed.species).trim(), region_of(typed)) {
        Found::One(species) => Some(species),
        Found::Other(_) | Found::Like(_) | Found::NotHere => None,
    };
    let is = |test: fn(&Species) -> bool| species.is_none_or(test);
    let only = |test: fn(&Species) -> bool| species.is_some_and(test);
    let bark = is(|species| species.group != Group::Monocot && species.bark.is_some());
    let alive = word(&typed.condition) != "dead";
    // Too thin for a ring whatever else is said; shrubs are judged by the base.
    let thin = thickest_in(typed).is_some_and(|inches| {
        let group = species.map(|species| species.group);
        reference.too_thin_to_ring(group, inches)
    });
    let ring_open = is(ring_open) || word(&typed.herbicide).trim() == "no" && is(ring_guided);
    let ringed = bark && alive && !thin && ring_open;
    // A conifer opens by the warmth of ordinary years.
    let warmed = is(|species| species.wood != Some(WoodClass::Conifer));
    let dated = is(|species| {
        let wood = species.wood;
        matches!(
            wood,
            Some(WoodClass::Ring | WoodClass::Diffuse | WoodClass::Conifer)
        )
    });
    let leaf = typed
        .leafed_out
        .as_ref()
        .is_some_and(|seen| seen.date.is_some());
    let point = typed
        .place
        .as_ref()
        .is_some_and(|place| place.latitude.is_some());
    let season_known = leaf || point || typed.spring.is_some();
    let mut set = FieldSet(0);
    for (field, held) in [
        (Field::Bark, bark),
        (Field::LiveShare, bark && alive),
        (Field::Setting, open_matters(reference, typed)),
        (
            Field::WholeClone,
            only(|species| {
                species.suckering == SproutVigor::Strong
                    && matches!(
                        species.suitability,
                        Suitability::Suitable | Suitability::Conditional
                    )
            }),
        ),
        (
            Field::SameGenusNear,
            only(|species| species.has(Trait::Pine)),
        ),
        (Field::Vigour, bark && alive),
        (Field::DrySpell, dated && season_known && warmed),
        (Field::Limbs, ringed),
        (Field::Walk, ringed),
        (Field::Practised, ringed),
        (Field::Timed, ringed),
        (
            Field::CannotWait,
            // Herbicide has months of its own in tree-of-heaven, however thin it is.
            word(&typed.date) != "year"
                && bark
                && (!thin && is(day_decides) || only(|species| species.has(Trait::TreeOfHeaven))),
        ),
        (Field::LeafedOut, dated),
        (Field::Spring, dated && warmed),
        (Field::Herbicide, true),
        (
            Field::Spare,
            typed.stems.len() > 1 && word(&typed.goal) == "spare_one",
        ),
        (
            Field::SizeConfirmed,
            thickest_in(typed)
                .is_some_and(|inches| inches * MM_PER_IN > reference.constants.answer.ask_trunk_mm),
        ),
        (Field::Confirmed, typed.height.is_some()),
    ] {
        set.put(field, held);
    }
    set
}

/// Woods or open is asked where open lowers the height that hazard is judged by by so much (our own assumption).
const OPEN_LOWERS: f64 = 0.2;

/// Whether it is worth asking if the tree grew in the open: it stands lower then by a fifth or more. What was said stays,
/// and while species, size or place can't be read yet it is asked.
fn open_matters(reference: &'static Reference, typed: &Typed) -> bool {
    if word(&typed.setting).trim() == "open" {
        return true;
    }
    let tree = Typed {
        version: 1,
        units: typed.units.clone(),
        species: typed.species.clone(),
        stems: typed.stems.clone(),
        date: Some(Text::from("year")),
        today: Some(Text::from("2027-01-01")),
        place: typed.place.clone(),
        region: typed.region.clone(),
        ..Typed::default()
    };
    read(reference, &tree).map_or(true, |question| {
        height::open_lowers(&reference.heights(), &question.tree) >= OPEN_LOWERS
    })
}

/// Whether a bark ring can ever come to stand, so that its minutes are read.
fn ring_open(species: &Species) -> bool {
    !species.has(Trait::AmericanElm) && species.suitability != Suitability::NotAlone
}

/// The same where herbicide may not be used.
fn ring_guided(species: &Species) -> bool {
    !species.has(Trait::AmericanElm) && species.has(Trait::RingGuidance)
}

/// Whether another day can have another method at the head.
fn day_decides(species: &Species) -> bool {
    !species.has(Trait::AmericanElm)
}

/// The thickest stem as far as it can be read, inches.
fn thickest_in(typed: &Typed) -> Option<f64> {
    let metric = typed
        .units
        .as_ref()
        .is_some_and(|units| units.trimmed() == "metric");
    let bare = if metric { Unit::Centimetre } else { Unit::Inch };
    let read = |text: &Option<Text>, over: f64| {
        let number = read_number(text.as_ref()?.trimmed()).ok()?;
        let mm = number.value * number.unit.unwrap_or(bare).in_mm()?;
        Some(mm / over / MM_PER_IN)
    };
    let stem = |stem: &StemTyped| {
        read(&stem.diameter, 1.0).or_else(|| read(&stem.girth, core::f64::consts::PI))
    };
    typed.stems.iter().filter_map(stem).max_by(f64::total_cmp)
}

/// The region as typed, where there is one.
pub(super) fn region_of(typed: &Typed) -> Option<&str> {
    Some(word(&typed.region).trim()).filter(|region| !region.is_empty())
}

fn word(text: &Option<Text>) -> &str {
    text.as_ref().map_or("", |text| &text.0)
}
