//! What may follow a tree: natives that want the same light and water, from `content/evidence/natives.csv`, with what was
//! published of the caterpillars on them (`content/evidence/wildlife_value.csv`). The build of the tables has checked both.

use crate::build::sources::{self, Known};
use anyhow::Result;
use calc_data::table::Table;
use serde::Deserialize;
use std::collections::BTreeMap;
use std::path::Path;

/// So many are shown.
const SHOWN: usize = 6;
/// Of the shrubs among them.
const SHRUBS: usize = 2;

#[derive(Deserialize)]
struct NativeRow {
    scientific_name: String,
    common_name: String,
    form: String,
    native_states: String,
    native_provinces: String,
    native_basis: String,
    shade_tolerance: String,
    moisture_use: String,
}

#[derive(Deserialize)]
struct WildlifeRow {
    level: String,
    name: String,
    value: f64,
}

#[derive(Deserialize)]
struct SiteRow {
    scientific_name: String,
    shade_tolerance: String,
    moisture_use: String,
    grade: String,
}

/// A native.
pub(crate) struct Native {
    pub(crate) scientific: &'static str,
    pub(crate) name: &'static str,
    pub(crate) shrub: bool,
    /// How many states and provinces it is native in.
    pub(crate) places: usize,
    /// Whether a range map says so too; else the list alone, which counts planted ones.
    pub(crate) mapped: bool,
    light: String,
    water: String,
    /// Of 100 branches looked at, how many had a caterpillar.
    pub(crate) branches: Option<f64>,
    /// Kinds of moths and butterflies whose caterpillars feed on its genus.
    pub(crate) kinds: Option<f64>,
}

/// Light and water of a listed tree, as words of the tables, and whether they were read in a source.
#[derive(Clone)]
pub(crate) struct Site {
    pub(crate) light: String,
    pub(crate) water: String,
    pub(crate) read: bool,
}

/// The natives, and where the listed trees stand.
pub(crate) struct Natives {
    all: Vec<Native>,
    sites: BTreeMap<String, Site>,
    /// The names of sources, by id.
    pub(crate) sources: BTreeMap<String, Known>,
}

impl Natives {
    /// Reads the tables.
    ///
    /// # Errors
    /// One that can't be read, with file and line.
    pub(crate) fn read(root: &Path) -> Result<Self> {
        let wildlife = Table::<WildlifeRow>::read(root, "content/evidence/wildlife_value.csv")?;
        let value = |level: &str, name: &str| {
            let mut rows = wildlife.rows.iter();
            let row = rows.find(|row| row.level == level && row.name == name);
            row.map(|row| row.value)
        };
        let natives = Table::<NativeRow>::read(root, "content/evidence/natives.csv")?;
        let all = natives.rows.into_iter().map(|row| {
            let row = row.cells;
            let genus = row.scientific_name.split(' ').next().unwrap_or_default();
            let places = [&row.native_states, &row.native_provinces];
            Native {
                branches: value("species", &row.scientific_name),
                kinds: value("genus", genus),
                places: places.iter().flat_map(|it| it.split_whitespace()).count(),
                mapped: row.native_basis != "PLANTS_ONLY",
                shrub: row.form == "shrub",
                light: row.shade_tolerance,
                water: row.moisture_use,
                name: row.common_name.leak(),
                scientific: row.scientific_name.leak(),
            }
        });
        let sites = Table::<SiteRow>::read(root, "content/evidence/listed_site.csv")?;
        let sites = sites.rows.into_iter().map(|row| {
            let row = row.cells;
            let site = Site {
                light: row.shade_tolerance,
                water: row.moisture_use,
                read: row.grade != "MEMORY",
            };
            (row.scientific_name, site)
        });
        Ok(Self {
            all: all.collect(),
            sites: sites.collect(),
            sources: sources::known(root, None)?,
        })
    }

    /// Those that want what a tree has, the ones native in most places first: four trees or more, and two shrubs. Nothing
    /// where nobody knows what it wants.
    pub(crate) fn after(&self, scientific: &str) -> Option<(Site, Vec<&Native>)> {
        let site = self.sites.get(scientific)?;
        if site.light.is_empty() || site.water.is_empty() {
            return None;
        }
        let same = |native: &&Native| {
            native.light == site.light
                && native.water == site.water
                && native.scientific != scientific
        };
        let mut same: Vec<&Native> = self.all.iter().filter(same).collect();
        same.sort_by_key(|it| (usize::MAX - it.places, it.scientific));
        let shrubs = same.iter().filter(|it| it.shrub).take(SHRUBS);
        let shrubs: Vec<&Native> = shrubs.copied().collect();
        let trees = same.iter().filter(|it| !it.shrub);
        let trees = trees.take(SHOWN - shrubs.len()).copied();
        let chosen: Vec<&Native> = trees.chain(shrubs.iter().copied()).collect();
        (!chosen.is_empty()).then(|| (site.clone(), chosen))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::project;

    #[test]
    fn what_follows_wants_the_same_light_and_water_and_is_never_the_tree_itself() -> Result<()> {
        let natives = Natives::read(&project::root()?)?;
        let mut with = 0;
        for species in calc_data::whole().species.iter().filter(|it| !it.unknown) {
            let Some((site, chosen)) = natives.after(species.scientific) else {
                continue;
            };
            with += 1;
            assert!(chosen.len() <= SHOWN, "{}", species.name);
            for native in chosen {
                assert_ne!(native.scientific, species.scientific);
                assert_eq!(native.light, site.light, "{}", species.name);
                assert_eq!(native.water, site.water, "{}", species.name);
                assert!(native.places > 0, "{}", native.scientific);
            }
        }
        // Palms, bamboos and yuccas have no row of light and water.
        assert!(with >= 75, "{with} species have natives that may follow");
        // As printed: NAT03 gives 534 for oaks, NAT04 13.67 in 100 branches for white oak.
        let oak = natives
            .all
            .iter()
            .find(|it| it.scientific == "Quercus alba");
        let oak = oak.expect("it is native");
        assert_eq!((oak.kinds, oak.branches), (Some(534.0), Some(13.67)));
        Ok(())
    }
}
