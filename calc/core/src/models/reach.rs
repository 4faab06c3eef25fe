//! Reach: what could it hit? Settled before any method; the worst outcome wins.

use crate::terms::cite::{Cite, cite};
use crate::terms::constants::constants;
use crate::terms::quantity::{M_PER_FT, MM_PER_IN};
use crate::terms::small::sort::sort;
use crate::terms::source;
use crate::terms::species::Group;
use crate::terms::tree::Tree;
use crate::terms::tree::{Reply, Sign, Target, TargetKind};
use crate::terms::words::words;
use serde::Serialize;

constants! {
    /// Constants of the reach; content/rules/constants.csv says where each comes from.
    pub struct ReachConstants {
        /// Within this many heights: not left standing by an amateur.
        pub can_land: f64,
        /// Within this many heights: inside the zone.
        pub zone: f64,
        /// The zone where a target lies downhill on steep ground.
        pub zone_downhill: f64,
        /// Steep ground, percent.
        pub steep: f64,
        /// Ground so steep that a target downhill is a stop, percent.
        pub too_steep: f64,
        /// Within this many heights downhill on such ground.
        pub too_steep_heights: f64,
        /// People stay out to this many heights while anyone works.
        pub people_out: f64,
        /// Approach distance to a line up to the base voltage, feet.
        pub line_ft: f64,
        /// More for each step over it, inches.
        pub line_step_in: f64,
        /// The step, kV.
        pub line_step_kv: f64,
        /// The base voltage, kV.
        pub line_base_kv: f64,
        /// Largest stem that counts as small, mm.
        pub small_mm: f64,
        /// Greatest height that counts as small, metres.
        pub small_m: f64,
        /// Largest stem of a trail crew's small tree, mm.
        pub trail_mm: f64,
        /// Greatest measured height of such a tree, metres.
        pub trail_m: f64,
        /// The line question is asked from this diameter on, mm.
        pub line_asked_mm: f64,
    }
}

words! {
    /// What the reach comes to. The order is from mild to severe; `NotChecked` stands outside it.
    pub enum ReachOutcome {
        /// Nothing within two heights.
        Clear,
        /// Something between the zone and two heights: it may stand, people out while working.
        ClearPeopleOut,
        /// Something is not known.
        NotChecked,
        /// Inside the zone: not left standing.
        Inside,
        /// Only a professional.
        Professional,
        /// A power line: no method at all.
        Line,
    }
}

words! {
    /// Why an outcome holds.
    pub enum Why {
        /// A line within reach.
        LineWithin,
        /// A line without a distance.
        LineNoDistance,
        /// A weak tree with something near.
        WeakTree,
        /// It can land on the target.
        CanLand,
        /// Very steep ground above the target.
        TooSteep,
        /// Inside the zone.
        InZone,
        /// A small stem: cut or pull it, leave nothing standing.
        SmallStem,
        /// A trail crew's small tree beside a path: cut down by someone trained, the path closed.
        TrailTree,
        /// A distance is not known.
        DistanceUnknown,
        /// The line question is open.
        LineOpen,
        /// The list of targets is not complete.
        ListOpen,
        /// The height is not known.
        HeightUnknown,
        /// Between the zone and two heights.
        PeopleOut,
        /// Nothing near.
        Nothing,
    }
}

/// Judgement of one target.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct Judged {
    /// Its place in the list as given; none for the line that only the question named. It is not part of the
    /// interface: the order in which things are listed decides nothing.
    #[serde(skip)]
    pub index: Option<usize>,
    /// Its kind.
    pub kind: TargetKind,
    /// Its distance, metres.
    #[serde(serialize_with = "crate::terms::lengths::maybe_m")]
    pub distance_m: Option<f64>,
    /// Whether it lies downhill on steep ground.
    pub downhill: bool,
    /// The zone that counts for it, metres.
    #[serde(serialize_with = "crate::terms::lengths::m")]
    pub zone_m: f64,
    /// What it comes to alone; none for a fence, a field or a tree to keep.
    pub outcome: Option<ReachOutcome>,
    /// Whether it may be damaged.
    pub damage: bool,
}

/// The reach of a tree.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct Reach {
    /// The worst outcome.
    pub outcome: ReachOutcome,
    /// Why.
    pub why: Why,
    /// The target that decides, as a place in `targets`.
    pub decided_by: Option<usize>,
    /// Each target.
    pub targets: Vec<Judged>,
    /// The zone, metres: the ground that stays dangerous from the day of treatment on.
    #[serde(serialize_with = "crate::terms::lengths::m")]
    pub zone_m: f64,
    /// Two heights, metres: within this everything that it could hit is asked for.
    #[serde(serialize_with = "crate::terms::lengths::m")]
    pub two_heights_m: f64,
    /// The height used, metres.
    #[serde(serialize_with = "crate::terms::lengths::m")]
    pub height_m: f64,
    /// Whether it is a small stem: near something it is cut or pulled at once, and not left standing.
    pub small: bool,
    /// Whether it is one as a trail crew meets it: up to 6 in, measured, with nothing near but what can be closed.
    pub trail: bool,
    /// A hollow or cracked tree with nothing near: left alone.
    pub hollow_alone: bool,
    /// What is still missing.
    pub missing: Vec<Why>,
    /// What it rests on.
    pub because: Vec<Cite>,
}

/// What the methods look at of a reach beside its outcome.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Surroundings {
    /// Something that counts stands inside the zone, or at a distance that is not known.
    pub target_in_zone: bool,
    /// A hollow or cracked tree with nothing near.
    pub hollow_alone: bool,
    /// A small tree as a trail crew meets it.
    pub trail: bool,
}

impl Reach {
    /// What the methods look at beside the outcome.
    #[must_use]
    pub fn surroundings(&self) -> Surroundings {
        let in_zone = |target: &Judged| {
            target.kind.counts() && target.distance_m.is_none_or(|d| nearer(d, target.zone_m))
        };
        Surroundings {
            target_in_zone: self.targets.iter().any(in_zone),
            hollow_alone: self.hollow_alone,
            trail: self.trail,
        }
    }

    /// Whether nobody has said yet that no overhead line is within reach: the first tree of all.
    #[must_use]
    pub fn line_open(&self) -> bool {
        self.missing.contains(&Why::LineOpen)
    }

    /// Whether a distance that counts is not known, beside something that is inside the zone.
    #[must_use]
    pub fn distance_open(&self) -> bool {
        self.missing.contains(&Why::DistanceUnknown)
    }
}

/// Whether a distance is less than a limit, both in metres and compared to the nearest millimetre: a limit that is
/// met is not under it, whatever a product of floats makes of it.
#[must_use]
pub fn nearer(distance_m: f64, limit_m: f64) -> bool {
    let mm = |m: f64| libm::round(m * 1000.0);
    mm(distance_m) < mm(limit_m)
}

/// Approach distance to a line, metres: 10 ft, and 4 in more for each 10 kV or part of it over 50 kV (D01, D02).
#[must_use]
pub fn approach_m(constants: &ReachConstants, kv: Option<f64>) -> f64 {
    let over = kv.map_or(0.0, |kv| libm::fmax(0.0, kv - constants.line_base_kv));
    let steps = libm::ceil(over / constants.line_step_kv);
    constants.line_ft * M_PER_FT + steps * constants.line_step_in * MM_PER_IN / 1000.0
}

/// Whether what the reach comes to may hang on the height of a tree: where nothing is listed that it could hit, a thick
/// stem without a measured height comes to the same at any.
#[must_use]
pub fn looks_at_height(constants: &ReachConstants, tree: &Tree) -> bool {
    !tree.targets.is_empty()
        || tree.height.is_some()
        || tree.largest().dbh.mm() <= constants.small_mm
}

/// Judges the reach with a height in metres, by which everything scales.
/// `height_known` is false for an unknown species without a measured height; `shortest_m` is then the smallest
/// height that the table gives, within which anything is in reach whatever it is.
///
/// ```
/// # use calc::question::read;
/// # let reference = calc_data::whole();
/// let question = read(reference, &examples::named("do")).expect("a good question");
/// use calc::models::reach::{ReachOutcome, judge};
/// // A path at 180 ft (54.9 m) and a tree of 20 m: nothing within two heights.
/// let reach = judge(&reference.constants.reach, &question.tree, 20.0, true, 20.0);
/// assert_eq!((reach.outcome, reach.two_heights_m), (ReachOutcome::Clear, 40.0));
/// ```
#[must_use]
pub fn judge(
    constants: &ReachConstants,
    tree: &Tree,
    height_m: f64,
    height_known: bool,
    shortest_m: f64,
) -> Reach {
    let largest = tree.largest().dbh.mm();
    let shrub = tree.species.group == Group::Shrub;
    let short = !nearer(constants.small_m, height_m);
    let small = largest <= constants.small_mm && (short || shrub);
    let mut cx = Context {
        constants,
        tree,
        height_m,
        height_known,
        shortest_m,
        small,
        trail: false,
    };
    cx.trail = cx.is_trail(largest);
    let targets = cx.targets();
    let missing = cx.missing();
    let weak = cx.weak(&missing);
    let mut worst = (ReachOutcome::Clear, Why::Nothing, None);
    let mut take = |outcome: ReachOutcome, why: Why, by: Option<usize>| {
        if outcome > worst.0 {
            worst = (outcome, why, by);
        }
    };
    for (at, target) in targets.iter().enumerate() {
        if let Some(outcome) = target.outcome {
            take(outcome, cx.why(target, outcome), Some(at));
        }
    }
    if weak {
        take(ReachOutcome::Professional, Why::WeakTree, None);
    }
    if let Some(why) = missing.first() {
        take(ReachOutcome::NotChecked, *why, None);
    }
    let downhill = targets.iter().any(|target| target.downhill);
    let zone = if downhill {
        constants.zone_downhill
    } else {
        constants.zone
    };
    let strong = tree.signs.iter().any(|sign| hollow(*sign));
    let two = height_m * constants.people_out;
    let near = targets
        .iter()
        .any(|target| target.kind.counts() && target.distance_m.is_none_or(|d| nearer(d, two)));
    Reach {
        outcome: worst.0,
        why: worst.1,
        decided_by: worst.2,
        zone_m: height_m * zone,
        two_heights_m: two,
        height_m,
        small: small || cx.trail,
        trail: cx.trail,
        hollow_alone: strong
            && !near
            && missing.is_empty()
            && worst.0 <= ReachOutcome::ClearPeopleOut,
        missing,
        targets,
        because: vec![
            cite(source::C01, "29 CFR 1910.266(h)(1)(vi)"),
            cite(source::C03, "Figs 1-3"),
            cite(source::C05, "target rows"),
            cite(source::D02, "1910.269(x)"),
            Cite::own("reach: slope, small stems"),
        ],
    }
}

/// Cavity, cracks, fungus at the base or hung limbs.
pub(crate) fn hollow(sign: Sign) -> bool {
    matches!(
        sign,
        Sign::Cavity | Sign::Cracks | Sign::Conks | Sign::HungLimbs
    )
}

struct Context<'a> {
    constants: &'a ReachConstants,
    tree: &'a Tree,
    height_m: f64,
    height_known: bool,
    shortest_m: f64,
    small: bool,
    trail: bool,
}

impl Context<'_> {
    /// A trail crew's small tree: up to 6 in, its height measured and low, and within the zone nothing but paths and
    /// places that people use, which can be closed for the hour. What has no distance is not known to stand outside.
    fn is_trail(&self, largest_mm: f64) -> bool {
        let constants = self.constants;
        let low = self.tree.height.is_some() && !nearer(constants.trail_m, self.height_m);
        largest_mm <= constants.trail_mm
            && low
            && self
                .tree
                .targets
                .iter()
                .filter(|target| target.kind.counts() && target.kind != TargetKind::Path)
                .all(|target| {
                    let zone = self.height_m * self.zone_of(target);
                    target.distance.is_some_and(|d| !nearer(d.m(), zone))
                })
    }

    /// The zone that counts for a target, in heights.
    fn zone_of(&self, target: &Target) -> f64 {
        let slope = target.slope.map_or(0.0, |slope| slope.percent());
        if target.downhill && slope >= self.constants.steep {
            self.constants.zone_downhill
        } else {
            self.constants.zone
        }
    }

    /// The height that is known of it: of a tree without a name the smallest of the whole table.
    fn at_least_m(&self) -> f64 {
        if self.height_known {
            self.height_m
        } else {
            self.shortest_m
        }
    }

    fn targets(&self) -> Vec<Judged> {
        let mut judged: Vec<Judged> = self
            .tree
            .targets
            .iter()
            .enumerate()
            .map(|(index, target)| self.target(Some(index), target))
            .collect();
        let listed = self
            .tree
            .targets
            .iter()
            .any(|target| target.kind == TargetKind::Line);
        // "Yes" without a listed line is a line without a distance.
        if self.tree.line_within_reach == Some(Reply::Yes) && !listed {
            let line = Target {
                kind: TargetKind::Line,
                distance: None,
                slope: None,
                downhill: false,
                voltage: None,
            };
            judged.push(self.target(None, &line));
        }
        // The worst first, then the nearest: the order of the list as given decides nothing.
        let key = |t: &Judged| {
            let far = t.distance_m.unwrap_or(-1.0);
            (core::cmp::Reverse(t.outcome), far, t.kind, t.zone_m)
        };
        sort(&mut judged, |a, b| key(a) < key(b));
        judged
    }

    fn target(&self, index: Option<usize>, target: &Target) -> Judged {
        let constants = self.constants;
        let slope = target.slope.map_or(0.0, |slope| slope.percent());
        let downhill = target.downhill && slope >= constants.steep;
        let zone = self.zone_of(target);
        let mut zone_m = self.height_m * zone;
        let mut stop_m = self.at_least_m() * zone;
        if target.kind == TargetKind::Line {
            let kv = target.voltage.map(|v| v.kv());
            let factor = self.tree.tighten.distance_factor;
            let approach = approach_m(constants, kv) * factor;
            zone_m = zone_m.max(approach);
            stop_m = stop_m.max(approach);
        }
        let distance_m = target.distance.map(|distance| distance.m());
        let outcome = target
            .kind
            .counts()
            .then(|| match (target.kind, distance_m) {
                (TargetKind::Line, None) => ReachOutcome::Line,
                (TargetKind::Line, Some(d)) if nearer(d, stop_m) => ReachOutcome::Line,
                (_, None) => ReachOutcome::NotChecked,
                (_, Some(d)) => self.distance(d, zone_m, target, slope),
            });
        let damage = !target.kind.counts() && distance_m.is_none_or(|d| nearer(d, zone_m));
        Judged {
            index,
            kind: target.kind,
            distance_m,
            downhill,
            zone_m,
            outcome,
            damage,
        }
    }

    fn distance(&self, d: f64, zone_m: f64, target: &Target, slope: f64) -> ReachOutcome {
        let constants = self.constants;
        let line = target.kind == TargetKind::Line;
        let lands = self.at_least_m();
        let too_steep = target.downhill
            && slope >= constants.too_steep
            && nearer(d, self.height_m * constants.too_steep_heights);
        if !line && too_steep {
            return ReachOutcome::Professional;
        }
        if !line && nearer(d, lands * constants.can_land) {
            return if self.small || self.trail {
                ReachOutcome::Inside
            } else {
                ReachOutcome::Professional
            };
        }
        if !self.height_known {
            return ReachOutcome::NotChecked;
        }
        if nearer(d, zone_m) {
            ReachOutcome::Inside
        } else if nearer(d, self.height_m * constants.people_out) {
            ReachOutcome::ClearPeopleOut
        } else {
            ReachOutcome::Clear
        }
    }

    /// What keeps the list from being complete, the most telling first.
    fn missing(&self) -> Vec<Why> {
        let tree = self.tree;
        let none = tree.none_in_reach;
        let mut missing = Vec::new();
        let listed_line = tree
            .targets
            .iter()
            .any(|target| target.kind == TargetKind::Line);
        let complete = none
            || tree
                .targets
                .iter()
                .any(|target| target.kind.counts() && target.kind != TargetKind::Line);
        let unknown = tree
            .targets
            .iter()
            .any(|target| target.kind.counts() && target.distance.is_none());
        let answered = match tree.line_within_reach {
            Some(Reply::No | Reply::Yes) => true,
            Some(Reply::CantTell) => false,
            None => listed_line || none,
        };
        // Nobody pulls a line down with a seedling.
        let asked = tree.largest().dbh.mm() >= self.constants.line_asked_mm;
        if asked && !answered {
            missing.push(Why::LineOpen);
        }
        // Who says that nothing is within twice the tallest tree of the table needs no height.
        if !self.height_known && !none {
            missing.push(Why::HeightUnknown);
        }
        if !complete {
            missing.push(Why::ListOpen);
        }
        if unknown {
            missing.push(Why::DistanceUnknown);
        }
        missing
    }

    /// Whether weak points and something near make it a professional's tree.
    fn weak(&self, missing: &[Why]) -> bool {
        let two = self.height_m * self.constants.people_out;
        let signs = &self.tree.signs;
        let strong = signs
            .iter()
            .any(|sign| hollow(*sign) || *sign == Sign::LeanToward);
        let mild = signs
            .iter()
            .any(|sign| matches!(sign, Sign::DeadTop | Sign::Vines | Sign::LeanAway));
        let mut near = self
            .tree
            .targets
            .iter()
            .filter(|target| target.kind.counts())
            .filter_map(|target| target.distance);
        let within = near.any(|distance| nearer(distance.m(), two));
        (strong && (within || !missing.is_empty())) || (mild && within)
    }

    fn why(&self, target: &Judged, outcome: ReachOutcome) -> Why {
        match outcome {
            ReachOutcome::Line if target.distance_m.is_none() => Why::LineNoDistance,
            ReachOutcome::Line => Why::LineWithin,
            ReachOutcome::Professional => {
                let lands = self.at_least_m();
                if target
                    .distance_m
                    .is_some_and(|d| nearer(d, lands * self.constants.can_land))
                {
                    Why::CanLand
                } else {
                    Why::TooSteep
                }
            }
            ReachOutcome::Inside if self.small => Why::SmallStem,
            ReachOutcome::Inside if self.trail => Why::TrailTree,
            ReachOutcome::Inside => Why::InZone,
            ReachOutcome::NotChecked if target.distance_m.is_none() => Why::DistanceUnknown,
            ReachOutcome::NotChecked => Why::HeightUnknown,
            ReachOutcome::ClearPeopleOut => Why::PeopleOut,
            ReachOutcome::Clear => Why::Nothing,
        }
    }
}
