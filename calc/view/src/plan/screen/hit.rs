//! What could the trees of a part hit? Asked once a part, with the distance to look through; and once a species what its
//! rule leaves open.

use super::{field, heading, open_fold_at, open_form, open_group, option, send};
use crate::measure;
use crate::page::Page;
use crate::plan::asked::NotASeason;
use crate::plan::read::ReadList;
use crate::plan::said::{Said, SaidTyped};
use crate::words::m;
use crate::words::phrase::tree as tree_name;
use calc::answer::Conditional;
use calc::reference::Reference;
use calc::terms::quantity::Units;
use calc::terms::small::order::sort_by;
use std::collections::BTreeMap;

/// A part whose trees wait for what they could hit.
#[derive(Clone, Debug, PartialEq)]
pub struct UnitToAsk {
    /// Its name.
    pub unit: String,
    /// How many of its trees wait.
    pub trees: usize,
    /// The distance to look through, as typed: twice the height of the tallest of them.
    pub within: String,
}

/// A species whose trees wait for whether every stem of their clones can be ringed.
#[derive(Clone, Debug, PartialEq)]
pub struct CloneToAsk {
    /// Its scientific name.
    pub species: &'static str,
    /// As people call it.
    pub name: &'static str,
    /// How many trees.
    pub trees: usize,
}

/// What is asked once for many trees.
#[derive(Clone, Debug, Default)]
pub struct ToAsk {
    /// Parts, those with most trees first.
    pub units: Vec<UnitToAsk>,
    /// Species.
    pub clones: Vec<CloneToAsk>,
}

/// What was replied.
#[derive(Clone, Debug, Default)]
pub struct Replied {
    /// For each part that was asked the reply and the distance.
    units: BTreeMap<String, (String, UnitToAsk)>,
    /// For each species yes or no.
    clones: BTreeMap<&'static str, (String, CloneToAsk)>,
    /// Who said so.
    by: String,
}

/// What was replied, to be kept: parts with reply, trees and distance; species with reply and trees; who said so.
pub type KeptReplies = (
    Vec<(String, String, usize, String)>,
    Vec<(String, String, usize)>,
    String,
);

/// The reply that nothing is in reach.
const NONE: &str = "none";

impl ToAsk {
    /// Of a list whose trees were judged.
    #[must_use]
    pub fn of(list: &ReadList, shown_in: Units) -> Self {
        let mut units: BTreeMap<&str, (usize, f64)> = BTreeMap::new();
        let mut clones: BTreeMap<&'static str, CloneToAsk> = BTreeMap::new();
        let mut says = vec![false; list.trees.len()];
        for (_, row) in list.rows() {
            if let Some(at) = list.tree_of(row.row) {
                says[at] = row.tag.says_targets;
            }
        }
        for (tree, says) in list.trees.iter().zip(says) {
            let Some(judged) = tree.judged() else {
                continue;
            };
            for open in &judged.asks {
                match open {
                    // What is said of a part changes nothing for a row that says something itself.
                    Conditional::NothingInReach { within_m } if !tree.unit.is_empty() && !says => {
                        let of = units.entry(&tree.unit).or_default();
                        *of = (of.0 + 1, of.1.max(*within_m));
                    }
                    Conditional::WholeClone => {
                        let species = judged.species;
                        let of = clones.entry(species.scientific).or_insert(CloneToAsk {
                            species: species.scientific,
                            name: tree_name(species),
                            trees: 0,
                        });
                        of.trees += 1;
                    }
                    _ => {}
                }
            }
        }
        let mut units: Vec<UnitToAsk> = units
            .into_iter()
            .map(|(unit, (trees, within))| UnitToAsk {
                unit: unit.to_owned(),
                trees,
                within: measure::reach(within).first(shown_in).to_owned(),
            })
            .collect();
        sort_by(&mut units, |a, b| {
            b.trees.cmp(&a.trees).then(a.unit.cmp(&b.unit))
        });
        Self {
            units,
            clones: clones.into_values().collect(),
        }
    }
}

impl Replied {
    /// As it is kept.
    #[must_use]
    pub fn kept(&self) -> KeptReplies {
        let units = self
            .units
            .values()
            .map(|(reply, of)| (of.unit.clone(), reply.clone(), of.trees, of.within.clone()));
        let clones = self.clones.values();
        let clones = clones.map(|(reply, of)| (of.species.to_owned(), reply.clone(), of.trees));
        (units.collect(), clones.collect(), self.by.clone())
    }

    /// Of what was kept; a species that is not known any more is left out.
    #[must_use]
    pub fn of_kept(reference: &'static Reference, (units, clones, by): KeptReplies) -> Self {
        let units = units.into_iter().map(|(unit, reply, trees, within)| {
            let of = UnitToAsk {
                unit: unit.clone(),
                trees,
                within,
            };
            (unit, (reply, of))
        });
        let clones = clones.into_iter().filter_map(|(name, reply, trees)| {
            let mut all = reference.species.iter();
            let species = all.find(|it| it.scientific == name)?;
            let of = CloneToAsk {
                species: species.scientific,
                name: tree_name(species),
                trees,
            };
            Some((species.scientific, (reply, of)))
        });
        Self {
            units: units.collect(),
            clones: clones.collect(),
            by,
        }
    }

    /// Takes the fields of the form.
    pub fn take(&mut self, asked: &ToAsk, entries: &[(String, String)]) {
        let (units, clones) = self.all(asked);
        for (name, value) in entries {
            if name == "by" {
                self.by.clone_from(value);
            } else if let Some(at) = name.strip_prefix("u").and_then(|at| at.parse().ok()) {
                let of: Option<&UnitToAsk> = units.get::<usize>(at);
                if let Some(of) = of {
                    let reply = (value.clone(), of.clone());
                    self.units.insert(of.unit.clone(), reply);
                }
            } else if let Some(at) = name.strip_prefix("c").and_then(|at| at.parse().ok()) {
                let of: Option<&CloneToAsk> = clones.get::<usize>(at);
                if let Some(of) = of {
                    self.clones.insert(of.species, (value.clone(), of.clone()));
                }
            }
        }
    }

    /// What was replied and what is still asked, in the order of the page.
    fn all(&self, asked: &ToAsk) -> (Vec<UnitToAsk>, Vec<CloneToAsk>) {
        let mut units: Vec<UnitToAsk> = self.units.values().map(|it| it.1.clone()).collect();
        let open = asked
            .units
            .iter()
            .filter(|it| !self.units.contains_key(&it.unit));
        units.extend(open.cloned());
        let mut clones: Vec<CloneToAsk> = self.clones.values().map(|it| it.1.clone()).collect();
        let open = asked
            .clones
            .iter()
            .filter(|it| !self.clones.contains_key(it.species));
        clones.extend(open.cloned());
        (units, clones)
    }

    /// The same as options of the command line, each with its value.
    #[must_use]
    pub fn options(&self) -> Vec<(&'static str, String)> {
        let mut all = Vec::new();
        for (reply, of) in self.units.values() {
            if reply == NONE {
                all.push(("nothing-within", [&of.unit, "=", &of.within].concat()));
            }
        }
        if !all.is_empty() && !self.by.trim().is_empty() {
            all.push(("said-by", self.by.trim().to_owned()));
        }
        for (reply, of) in self.clones.values() {
            if !reply.is_empty() {
                all.push(("whole-clone", [of.species, "=", reply].concat()));
            }
        }
        all
    }

    /// What it says of the trees.
    ///
    /// # Errors
    /// What was not understood.
    pub fn said(&self, reference: &'static Reference, units: Units) -> Result<Said, NotASeason> {
        let all = self.options();
        let of = |name: &str| -> Vec<String> {
            let all = all.iter().filter(|(option, _)| *option == name);
            all.map(|(_, value)| value.clone()).collect()
        };
        Said::of(
            reference,
            &SaidTyped {
                nothing_within: &of("nothing-within"),
                said_by: &self.by,
                whole_clone: &of("whole-clone"),
                same_genus_near: &[],
            },
            units,
        )
    }
}

/// The questions; folded once there is a plan.
pub fn hit(out: &mut Page<'_>, asked: &ToAsk, replied: &Replied, planned: bool) {
    let (units, clones) = replied.all(asked);
    if units.is_empty() && clones.is_empty() {
        return;
    }
    let open = asked.units.iter().map(|it| it.trees).sum::<usize>();
    if planned {
        let line = m::property_hit_line(open.to_string());
        open_fold_at(out, 2, "hit", &m::PROPERTY_HIT, &line, Some(false));
    } else {
        heading(out, &m::PROPERTY_HIT);
    }
    open_form(out, "", "said", &[]);
    for (at, it) in units.iter().enumerate() {
        open_group(
            out,
            &m::property_hit_unit(m::PropertyHitUnit {
                unit: it.unit.as_str(),
                trees: it.trees.to_string(),
                within: it.within.as_str(),
            }),
        );
        let name = ["u", &at.to_string()].concat();
        let said = replied.units.get(&it.unit).map_or("", |it| it.0.as_str());
        for (value, label) in [
            (NONE, m::PROPERTY_HIT_NONE),
            ("some", m::PROPERTY_HIT_SOME),
            ("wire", m::PROPERTY_HIT_WIRE),
            ("unknown", m::PROPERTY_HIT_UNKNOWN),
        ] {
            option(out, "radio", &name, value, said == value, &label);
        }
        if matches!(said, "some" | "wire") {
            let then = match said {
                "wire" => m::PROPERTY_HIT_THEN_WIRE,
                _ => m::PROPERTY_HIT_THEN_SOME,
            };
            out.p_class("asm", then);
        }
        out.close();
    }
    if !units.is_empty() {
        let hint = m::PROPERTY_HIT_BY_HINT.text();
        field(out, "by", "wf", &m::PROPERTY_HIT_BY, hint, &replied.by);
    }
    for (at, it) in clones.iter().enumerate() {
        open_group(out, &m::property_clone(it.name, it.trees.to_string()));
        let name = ["c", &at.to_string()].concat();
        let said = replied
            .clones
            .get(it.species)
            .map_or("", |it| it.0.as_str());
        option(out, "radio", &name, "yes", said == "yes", &m::PROPERTY_YES);
        option(out, "radio", &name, "no", said == "no", &m::PROPERTY_NO);
        out.close();
    }
    send(out, "btn ghost", &m::PROPERTY_HIT_SAY);
    out.close();
    if planned {
        out.close_two();
    }
}
