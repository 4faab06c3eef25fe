//! What may stand where trees die: the gap, how many trees fill it, and natives that want the same light and water; the same
//! sentences for the page and the program.

use super::made::Made;
use super::read::ReadList;
use crate::measure::length;
use crate::words::gap::other_tree;
use crate::words::phrase::{row, sentence, tree};
use crate::words::region::in_sentence;
use crate::words::{Word, m};
use calc::terms::number::read_number;
use calc::terms::quantity::{M_PER_FT, Units};
use calc::terms::small::decimals::fixed;
use calc::terms::small::order::sort_by_key;
use calc::terms::species::Species;
use calc_data::list::plan_constants;
use calc_plan::{CountedAs, CrownGap, UnitLand, crown_m2, gaps};
use std::collections::BTreeMap;

/// The nearest and the farthest between two trees that are planted, metres: shrubs of a hedge to the widest park trees.
const SPACING_M: (f64, f64) = (0.3, 30.0);
/// So many kinds of light and water are told, those where most trees die first.
const SITES: usize = 3;
/// So many of the species that die are named of each.
const DYING: usize = 3;
/// So many natives are named of each that a list and a range map have there, and of those that one has.
const NATIVES: [usize; 2] = [5, 3];

/// The distance between two trees that are planted, metres: what was typed, else what is proposed. None where it is none.
#[must_use]
pub fn spacing_m(typed: &str, units: Units) -> Option<f64> {
    let own = plan_constants();
    let bare = match units {
        Units::Us => M_PER_FT,
        Units::Metric => 1.0,
    };
    if typed.trim().is_empty() {
        return Some(match units {
            Units::Us => own.plant_feet * bare,
            Units::Metric => own.plant_metres,
        });
    }
    let read = read_number(typed).ok()?;
    let in_m = match read.unit {
        Some(unit) => unit.in_mm()? / 1000.0,
        None => bare,
    };
    let metres = read.value * in_m;
    (SPACING_M.0..=SPACING_M.1)
        .contains(&metres)
        .then_some(metres)
}

/// What stands somewhere: light and water, as words of the tables.
type Site = (&'static str, &'static str);

/// A native.
struct Native {
    scientific: &'static str,
    name: &'static str,
    height_m: Option<f64>,
    site: Site,
    /// Codes of states: where a list and a range map have it, where one of the two has it; and of provinces.
    places: [&'static str; 3],
}

impl Native {
    /// How sure it is that it is native in a state or province: 0 where a list and a range map have it there, 1 where one
    /// has.
    fn sureness(&self, region: &str) -> Option<usize> {
        let has = |places: &str, code: &str| places.split(' ').any(|place| place == code);
        match region.split_once('-')? {
            ("US", state) if has(self.places[0], state) => Some(0),
            ("US", state) if has(self.places[1], state) => Some(1),
            ("CA", province) if has(self.places[2], province) => Some(1),
            _ => None,
        }
    }

    fn spread(&self) -> usize {
        self.places.map(str::len).iter().sum()
    }
}

/// The file of natives: what [`calc_data::NATIVES`] holds.
#[derive(Default)]
pub struct Natives {
    all: Vec<Native>,
    /// Light and water of a tree, by its scientific name, and whether they were read in a source.
    sites: BTreeMap<&'static str, (Site, bool)>,
}

impl Natives {
    /// Of the text of the file. None where a line is none of it.
    #[must_use]
    pub fn of(text: &'static str) -> Option<Self> {
        let mut natives = Self::default();
        for line in text.lines() {
            let cells: Vec<&str> = line.split('\t').collect();
            match *cells.as_slice() {
                [scientific, light, water, read] => {
                    let site = ((light, water), read == "read");
                    natives.sites.insert(scientific, site);
                }
                [scientific, name, feet, light, water, both, one, provinces] => {
                    natives.all.push(Native {
                        scientific,
                        name,
                        height_m: read_number(feet).ok().map(|feet| feet.value * M_PER_FT),
                        site: (light, water),
                        places: [both, one, provinces],
                    });
                }
                _ => return None,
            }
        }
        (!natives.all.is_empty()).then_some(natives)
    }
}

/// What is asked of replanting.
#[derive(Clone, Copy)]
pub struct PlantingAsked<'a> {
    /// Between two trees, metres.
    pub spacing_m: f64,
    /// In which units it is told.
    pub units: Units,
    /// Land of parts.
    pub land: &'a [UnitLand],
}

/// A tree that dies: by its ring in this plan, or by one that it has already.
struct Dying<'a> {
    unit: &'a str,
    species: &'static Species,
    region: Option<&'a str>,
    crown_m2: Option<f64>,
}

/// The trees that die, each once.
fn dying<'a>(list: &'a ReadList, made: &'a Made) -> impl Iterator<Item = Dying<'a>> {
    let trees = list.trees.iter().zip(&list.questions);
    let all = trees.zip(&made.planned.reasons);
    all.filter_map(|((tree, question), reason)| {
        let (question, _) = question.as_ref()?;
        let dies = match reason {
            CountedAs::Planned | CountedAs::Done => true,
            // One that was dead when the list was made left its gap before.
            CountedAs::Dead => tree.after.as_ref().is_some_and(|it| it.ringed_on.is_some()),
            _ => false,
        };
        dies.then(|| Dying {
            unit: &tree.unit,
            species: question.tree.species,
            region: question.region.as_deref(),
            crown_m2: crown_m2(&question.tree),
        })
    })
}

/// What is told of replanting.
pub struct Replanting {
    /// How many trees fill the gaps.
    pub to_plant: usize,
    /// How wide they open, and how many trees that is.
    pub gap: Vec<String>,
    /// The same by part of the property, where there are several.
    pub parts: Vec<String>,
    /// What limits these numbers.
    pub limits: Vec<Word>,
    /// What natives are told, then these by the light and water of the trees that die; empty where nobody asked for them.
    pub natives: Vec<String>,
    /// What holds for them.
    pub notes: Vec<Word>,
}

/// An area as it is told: square feet or square metres, three digits of it.
fn area(m2: f64, units: Units) -> String {
    let told = |area: f64| {
        let mut step = 1.0;
        while area / step >= 1000.0 {
            step *= 10.0;
        }
        fixed(step * libm::round(area / step), 0)
    };
    match units {
        Units::Us => m::property_area_us(told(m2 / (M_PER_FT * M_PER_FT))),
        Units::Metric => m::property_area_metric(told(m2)),
    }
}

/// What is told of replanting; with natives where their file is there. None where no tree dies.
#[must_use]
pub fn replanting(
    list: &ReadList,
    made: &Made,
    asked: PlantingAsked<'_>,
    natives: Option<&Natives>,
) -> Option<Replanting> {
    let all: Vec<Dying<'_>> = dying(list, made).collect();
    let open = gaps(all.iter().map(|it| (it.unit, it.crown_m2)), asked.land);
    if open.is_empty() {
        return None;
    }
    let plants = |gap: &CrownGap| gap.to_plant(asked.spacing_m);
    let to_plant: usize = open.iter().map(plants).sum();
    let all_m2: f64 = open.iter().map(|gap| gap.open_m2).sum();
    let mut gap = vec![
        m::after_gap(all.len().to_string(), area(all_m2, asked.units)),
        m::after_plant(
            length(asked.spacing_m).first(asked.units),
            to_plant.to_string(),
        ),
    ];
    let without: usize = open.iter().map(|gap| gap.without_crown).sum();
    if without > 0 {
        gap.push(m::after_no_crown(without.to_string()));
    }
    gap.push(m::AFTER_PLANT_WHEN.into());
    let parts = open.iter().map(|gap| {
        m::after_plant_part(m::AfterPlantPart {
            unit: match gap.unit.as_str() {
                "" => m::PROPERTY_NO_PART.text(),
                unit => unit,
            },
            count: plants(gap).to_string(),
            area: area(gap.open_m2, asked.units),
        })
    });
    let mut limits = vec![m::AFTER_GAP_OVERLAPS];
    if open.iter().any(|gap| gap.is_capped) {
        limits.push(m::AFTER_GAP_CAPPED);
    }
    let (mut named, mut notes) = (Vec::new(), Vec::new());
    if let Some(natives) = natives {
        (named, notes) = natives_of(&all, natives, asked.units);
        notes.push(m::AFTER_ASK_NURSERY);
    }
    Some(Replanting {
        to_plant,
        gap,
        parts: if open.len() > 1 {
            parts.collect()
        } else {
            Vec::new()
        },
        limits,
        natives: named,
        notes,
    })
}

/// The most frequent first; of those alike the first in order.
fn by_count<T: Ord + Copy>(all: impl Iterator<Item = T>) -> Vec<(T, usize)> {
    let mut counts: BTreeMap<T, usize> = BTreeMap::new();
    for it in all {
        *counts.entry(it).or_default() += 1;
    }
    let mut counts: Vec<(T, usize)> = counts.into_iter().collect();
    sort_by_key(&mut counts, |(_, count)| usize::MAX - count);
    counts
}

/// Natives of the state or province of most of the trees that die, and what holds for them.
fn natives_of(all: &[Dying<'_>], natives: &Natives, units: Units) -> (Vec<String>, Vec<Word>) {
    let Some((region, _)) = by_count(all.iter().filter_map(|it| it.region))
        .first()
        .copied()
    else {
        return (Vec::new(), vec![m::AFTER_NATIVES_WHERE]);
    };
    if !natives.all.iter().any(|it| it.sureness(region).is_some()) {
        return (Vec::new(), vec![m::AFTER_NATIVES_ELSEWHERE]);
    }
    let site_of = |species: &Species| natives.sites.get(species.scientific);
    let sites = all.iter().filter_map(|it| Some(site_of(it.species)?.0));
    let (mut told, mut from_memory) = (Vec::new(), false);
    for (site, _) in by_count(sites).into_iter().take(SITES) {
        let of_site = all.iter().map(|it| it.species).filter(|species| {
            let known = site_of(species).filter(|(known, _)| *known == site);
            from_memory |= known.is_some_and(|(_, read)| !read);
            known.is_some()
        });
        let names = by_count(of_site.map(|species| (tree(species), species.scientific)));
        let names = names.iter().take(DYING).map(|((name, _), _)| *name);
        let names: Vec<&str> = names.collect();
        let mut follow: Vec<(usize, &Native)> = natives
            .all
            .iter()
            .filter(|it| it.site == site)
            .filter(|it| {
                all.iter()
                    .all(|dead| dead.species.scientific != it.scientific)
            })
            .filter_map(|it| Some((it.sureness(region)?, it)))
            .collect();
        sort_by_key(&mut follow, |(sure, it)| {
            (*sure, usize::MAX - it.spread(), it.scientific)
        });
        let light_and_water = m::after_light(site.0).zip(m::after_water(site.1));
        let Some((light, water)) = light_and_water.filter(|_| !follow.is_empty()) else {
            continue;
        };
        let mut line = m::after_natives(m::AfterNatives {
            names: row(&names),
            light: light.text(),
            water: water.text(),
        });
        for (sure, most) in NATIVES.into_iter().enumerate() {
            let of_these = follow.iter().filter(|(of, _)| *of == sure).take(most);
            let names: Vec<String> = of_these.map(|(_, it)| named(it, units)).collect();
            if !names.is_empty() {
                line.push(' ');
                let (region, names) = (in_sentence(region), row(&names));
                line.push_str(&match sure {
                    0 => m::after_natives_both(m::AfterNativesBoth { names, region }),
                    _ => m::after_natives_one(m::AfterNativesOne { names, region }),
                });
            }
        }
        told.push(sentence(&line));
    }
    let mut notes = Vec::new();
    match told.is_empty() {
        true => notes.push(m::AFTER_NATIVES_NONE),
        false => told.insert(0, m::AFTER_NATIVES_ARE.into()),
    }
    if from_memory {
        notes.push(m::AFTER_NATIVES_MEMORY);
    }
    (told, notes)
}

/// A native with its height.
fn named(native: &Native, units: Units) -> String {
    let name = other_tree(native.scientific, native.name);
    match native.height_m {
        Some(m) => [&name, " (", length(m).first(units), ")"].concat(),
        None => name,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_distance_is_read_in_any_unit_and_else_is_none() {
        let near = |typed: &str, units, m: f64| {
            let read = spacing_m(typed, units).unwrap_or(f64::NAN);
            assert!((read - m).abs() < 1e-9, "{typed}: {read}");
        };
        near("", Units::Us, 3.048);
        near("", Units::Metric, 3.0);
        near("8", Units::Us, 2.4384);
        near("8 ft", Units::Metric, 2.4384);
        near("2,5", Units::Metric, 2.5);
        near("2.5 m", Units::Us, 2.5);
        for typed in ["0", "-3", "ten", "200 ft", "10 acres", "3 %"] {
            assert_eq!(spacing_m(typed, Units::Us), None, "{typed}");
        }
    }

    #[test]
    fn the_file_is_read_whole_and_says_how_sure_a_place_is() {
        let natives = Natives::of(calc_data::NATIVES).expect("the file");
        assert!(natives.all.len() > 200 && natives.sites.len() > 70);
        let of = |name: &str| {
            let mut all = natives.all.iter();
            all.find(|it| it.scientific == name).expect("it is native")
        };
        // As content/evidence/natives.csv has them: balsam fir is listed in Indiana outside its range map, and beach plum
        // has no range map. A state of another country is none.
        let fir = of("Abies balsamea");
        assert_eq!(fir.sureness("US-ME"), Some(0));
        assert_eq!(fir.sureness("US-IN"), Some(1));
        assert_eq!(fir.sureness("CA-QC"), Some(1));
        assert_eq!(fir.sureness("US-CA"), None);
        assert_eq!(fir.sureness("AU-NT"), None);
        assert_eq!(of("Prunus maritima").sureness("US-MA"), Some(1));
        assert!(Natives::of("half a line").is_none());
    }
}
