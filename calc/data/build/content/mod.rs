//! Reads and checks `content/`: a struct for each table says what a row holds, and what is wrong is told with its file
//! and line. The build packs what comes out; a check reads a damaged copy of the folder the same way.

mod bark_and_height;
mod cautions;
mod cells;
mod constants;
mod curves;
mod diseases;
mod habitat;
mod leaf_marks;
pub(crate) mod list;
mod methods;
mod months;
mod names;
pub(crate) mod natives;
mod outlook;
mod regional;
mod sizes;
mod sources;
mod species;
mod species_tables;
mod trials;

use crate::table::Defect;
use calc::reference::Reference;
use std::path::Path;
use std::sync::OnceLock;

/// The day of the tables.
const DATA_VERSION: &str = "2026-11-29";

/// All that is known, from the tables under the repository's root.
///
/// # Errors
/// The first thing that is wrong with a table, with its file and line.
pub(crate) fn read(root: &Path) -> Result<Reference, Defect> {
    let sources = sources::Sources::read(root)?;
    let listed = species::read(root, &sources)?;
    natives::check(root)?;
    let others = regional::others(root, &sources, listed)?;
    let (outlook, outlook_species) = outlook::read(root, &sources, listed)?;
    let mut reference = Reference {
        sources: &[],
        sources_by_id: &[],
        species: listed,
        method_rules: methods::rules(root, &sources)?,
        constants: Box::leak(Box::new(constants::read(root, &sources)?)),
        cautions: cautions::read(root, &sources, listed, others)?,
        outlook,
        outlook_species,
        cavity_users: habitat::cavity_users(root, &sources)?,
        snag_guides: habitat::snag_guides(root, &sources)?,
        method_minutes: methods::minutes(root, &sources)?,
        restrictions: months::read(root, &sources)?,
        disease_regions: diseases::read(root, &sources)?,
        names_by_place: regional::names_by_place(root, listed, others)?,
        regions: bark_and_height::regions(root)?,
        bark_ranges: bark_and_height::bark_ranges(root, &sources)?,
        height_hazard: bark_and_height::hazard(root, &sources, listed)?,
        data_version: DATA_VERSION,
        regional: OnceLock::new(),
    };
    reference.sources = sources.lines_from(0);
    reference.sources_by_id = sources.by_id();
    reference.regional = OnceLock::from(regional::read(root, &sources, others)?);
    Ok(reference)
}
