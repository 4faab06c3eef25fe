//! The fields of a question: the one list that the interface, the command line, the form and the links share.
//!
//! Each line is a key, what kind of value it takes, and who else tells it: `form` where a control of the form has the
//! path of the field as its name, `picked` where that control is a list to pick from,
//! `link` where a link tells it under its own name, `link_as` under another, `stays` where it
//! holds for the next tree too (place, day, crew). Structures,
//! their schema, the reading of objects key by key, the form's names and the link all come from these lines.
//! How a field is understood stands in `read`; the ranges that numbers must lie in stand at the end.

use super::Text;
use super::record::record;
use crate::models::calibrate::Rate;
use crate::terms::quantity::Range;
use serde::{Deserialize, Serialize};

record! {
    /// A question as typed. Everything but `version`, `species`, one stem and `date` may be left out.
    /// Values are text as typed; a bare number takes `units`.
    pub struct Typed {
        /// Version of these names: 1.
        version: Number;
        /// `us` or `metric`; `us` when left out.
        units: Text, link_as("size-unit");
        /// Common name, scientific name or plant code; or one of the unknown kinds.
        species: Text, link;
        /// One stem or more.
        stems: Records of StemTyped, form;
        /// `woods` or `open`.
        setting: Text, form, link, picked;
        /// The planned day as `2027-06-12`, or `year`.
        date: Text, link, stays;
        /// The asker's today, for `year` and for the year tape; hosts with a clock fill it in.
        today: Text;
        /// Latitude, longitude and elevation, or only the hemisphere.
        place: Record of PlaceTyped, form, stays;
        /// ISO 3166 code of state or country, as `US-MA` or `GB`.
        /// Left out, the cautious months hold: it is never taken from the place.
        region: Text, form, link, stays;
        /// Leaf-out seen this year.
        leafed_out: Record of LeafOutTyped, form;
        /// This spring's daily temperatures as a table: date, minimum, maximum.
        spring: Text, form, stays;
        /// `celsius` or `fahrenheit`, where the table does not say.
        spring_scale: Text, form, stays;
        /// Total height, if measured.
        height: Text, form, link;
        /// Readings that give the height from the ground, where `height` is left out; beside it they say how it was measured.
        height_aid: Record of HeightAidTyped, form;
        /// True once the asker has confirmed a height that looks odd.
        height_confirmed: Held, form, link;
        /// True once the asker has confirmed a trunk that is wider than almost any.
        size_confirmed: Held, form, link;
        /// What the tree could hit.
        targets: Records of TargetTyped, form;
        /// `yes`, `no` or `cant_tell`: any overhead line within two heights?
        line_within_reach: Text, form, link, picked;
        /// No building, road, path, line, property line or neighbour's tree within two heights.
        none_in_reach: Held, form, link;
        /// `alive`, `declining` or `dead`.
        condition: Text, form, link, picked;
        /// Signs seen on the tree.
        signs: Texts, form, link_as("sign"), picked;
        /// `not_said`, `no`, `licensed` or `yes`.
        herbicide: Text, form, link, stays, picked;
        /// `wildlife`, `kill` or `spare_one`.
        goal: Text, form, link, stays;
        /// Index of the stem to spare.
        spare: MaybeNumber, form, link;
        /// `not_said`, `yes` or `no`: can every stem of the clone be ringed?
        whole_clone: Text, form, link, picked;
        /// `not_said`, `yes` or `no`: living trees of the same genus near?
        same_genus_near: Text, form, link, picked;
        /// `slow`, `ordinary` or `fast`.
        vigour: Text, form, link, picked;
        /// `none`, `two_weeks` or `month`.
        dry_spell: Text, form, link, stays, picked;
        /// `none`, `some` or `many`: limbs below the ring.
        limbs: Text, form, link, picked;
        /// Walking from the last tree, minutes or a distance.
        walk: Text, form, link, stays;
        /// A practised crew.
        practised: Held, form, link, stays;
        /// The crew's own rate, as calibration gave it.
        rate: Rate;
        /// Trees that the crew rang and timed: they update the rate.
        timed: Record of TimedTyped, form, stays;
        /// The job must be done on that day.
        cannot_wait: Held, form, link, stays;
        /// What is seen at a visit after the ring.
        visit: Record of VisitTyped, form;
    }
}

record! {
    /// A stem as typed: `diameter` or `girth`, not both.
    pub struct StemTyped {
        /// Diameter at breast height.
        diameter: Text, form, link_as("size");
        /// Girth at breast height.
        girth: Text, link;
        /// Share of the bark that is alive all round, percent.
        live_share: Text, form, link;
        /// Bark thickness, one side, if measured.
        bark: Text, form, link;
    }
}

record! {
    /// Something it could hit, as typed.
    pub struct TargetTyped {
        /// `building`, `road`, `path`, `line`, `property_line`, `fence` or `keep_tree`.
        kind: Text, form, link_as("target");
        /// Distance from the trunk's centre.
        distance: Text, form, link;
        /// Slope of the ground, percent.
        slope: Text, form, link;
        /// Whether it lies downhill.
        downhill: Held, form, link;
        /// Voltage of a line, if known.
        voltage: Text, form, link;
    }
}

record! {
    /// A place as typed.
    pub struct PlaceTyped {
        /// Degrees; north is positive.
        latitude: Text, form;
        /// Degrees; east is positive.
        longitude: Text, form;
        /// Height above the sea.
        elevation: Text, form;
        /// `north` or `south`, instead of a point.
        hemisphere: Text, form, link;
    }
}

record! {
    /// Leaf-out as typed.
    pub struct LeafOutTyped {
        /// `buds_open`, `leaves_full` or `first_leaf`.
        stage: Text, form, link_as("leaf");
        /// The day it was seen.
        date: Text, link_as("leaf_date");
        /// Where it was seen, if not here.
        place: Record of PlaceTyped, form;
        /// Rates that carry the date here: `fitted` or `hopkins`.
        rates: Text, form;
    }
}

record! {
    /// Readings of a height as typed: those of one way.
    pub struct HeightAidTyped {
        /// `shadow`, `angles` or `stick`.
        by: Text, form;
        /// Length of the tree's shadow, for `shadow`.
        tree_shadow: Text, form;
        /// Length of the stick, for `shadow` and `stick`.
        stick: Text, form;
        /// Length of the stick's shadow, for `shadow`.
        stick_shadow: Text, form;
        /// Distance from the eye to the trunk, for `angles` and `stick`.
        distance: Text, form;
        /// Angle from the level to the top, degrees, for `angles`.
        top: Text, form;
        /// Angle from the level to the foot, degrees, minus below the eye, for `angles`.
        foot: Text, form;
        /// From the eye to the stick, for `stick`.
        eye_to_stick: Text, form;
    }
}

record! {
    /// Trees that were ringed and timed, as typed. Walking is not in the minutes, and the bark slipped.
    pub struct TimedTyped {
        /// Diameter of each.
        trees: Texts;
        /// Person-minutes that they took together.
        minutes: Text, form;
        /// Width of their rings; 6 in when left out.
        width: Text, form;
        /// Their species; bark of middling thickness when left out.
        species: Text, form;
    }
}

record! {
    /// A visit after the ring, as typed.
    pub struct VisitTyped {
        /// `today` (when left out), the number of a visit of the answer, or a day.
        at: Text, form;
        /// The day of the ring; the advised day when left out.
        ringed: Text, form;
        /// What is seen: `bridge`, `sprouts`, `suckers`, `crown_full`, `crown_thin`, `crown_bare`, `decay`, `nothing`.
        seen: Texts, form;
    }
}

/// A range in the unit that stands beside its name.
const fn range(low: f64, high: f64) -> Range {
    Range { low, high }
}

/// The most stems that one tree may have.
pub const MOST_STEMS: usize = 50;
/// The most targets in one list.
pub const MOST_TARGETS: usize = 50;
/// The most trees that are timed together.
pub const MOST_TIMED: usize = 100;
/// Live share of a stem, percent.
pub const LIVE_SHARE: Range = range(0.0, 100.0);
/// Latitude, degrees.
pub const LATITUDE: Range = range(-90.0, 90.0);
/// Longitude, degrees.
pub const LONGITUDE: Range = range(-180.0, 180.0);
/// Walking from the last tree, minutes.
pub const WALK: Range = range(0.0, 600.0);
/// Person-minutes of all timed trees together.
pub const TIMED_MINUTES: Range = range(0.0, 10_000.0);
/// Width of a ring, mm.
pub const RING_WIDTH: Range = range(20.0, 1500.0);
/// Angles to the top and the foot of a tree, degrees: the model says which of them can be.
pub const ANGLE: Range = range(-360.0, 360.0);
