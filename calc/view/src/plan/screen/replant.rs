//! Replanting: how many trees fill the gaps, the distance between them, and natives, whose file comes when the fold is opened.

use super::{FIELD_WRONG, fold_of_rows, open_form, send, typed};
use crate::page::Page;
use crate::plan::made::Made;
use crate::plan::read::ReadList;
use crate::plan::replant::{Natives, PlantingAsked, Replanting, replanting, spacing_m};
use crate::words::m;
use calc::terms::quantity::Units;
use calc_plan::UnitLand;

/// The name of the part, as the page asks for it.
pub const REPLANT: &str = "replant";
/// Its field.
pub const SPACING: &str = "spacing";

/// What is typed of replanting.
#[derive(Clone, Copy)]
pub struct PlantingShown<'a> {
    /// The distance between two trees, as typed; what is none is told beside the field, and what is proposed is used.
    pub typed: &'a str,
    /// In which units it is told.
    pub units: Units,
    /// Land of parts.
    pub land: &'a [UnitLand],
}

impl PlantingShown<'_> {
    fn told(&self, list: &ReadList, made: &Made, natives: Option<&Natives>) -> Option<Replanting> {
        let typed = spacing_m(self.typed, self.units);
        let planting = PlantingAsked {
            spacing_m: typed.or_else(|| spacing_m("", self.units))?,
            units: self.units,
            land: self.land,
        };
        replanting(list, made, planting, natives)
    }
}

/// The fold, empty until it is opened; none where no tree dies.
pub(super) fn fold(out: &mut Page<'_>, list: &ReadList, made: &Made, shown: PlantingShown<'_>) {
    if let Some(told) = shown.told(list, made, None) {
        let line = m::property_replant_line(told.to_plant.to_string());
        fold_of_rows(out, REPLANT, &m::PROPERTY_REPLANT, &line);
    }
}

/// What stands in it. Without the file of natives it says so.
pub fn replant(
    out: &mut Page<'_>,
    list: &ReadList,
    made: &Made,
    shown: PlantingShown<'_>,
    natives: Option<&Natives>,
) {
    let Some(told) = shown.told(list, made, natives) else {
        return;
    };
    for line in told.gap {
        out.p(line);
    }
    list_of(out, told.parts);
    open_form(out, "land", SPACING, &[]);
    let wrong: Vec<(String, String)> = match spacing_m(shown.typed, shown.units) {
        Some(_) => Vec::new(),
        None => vec![(SPACING.to_owned(), m::property_no_spacing(shown.typed))],
    };
    let hint = m::PROPERTY_SPACING_HINT.text();
    let label = m::PROPERTY_SPACING;
    typed(out, &wrong, SPACING, FIELD_WRONG, &label, hint, shown.typed);
    send(out, "btn ghost", &m::PROPERTY_RECKON);
    out.close();
    for word in told.limits {
        out.p_class("soft", word);
    }
    if natives.is_none() {
        out.p(m::PROPERTY_NO_NATIVES);
    }
    let mut natives = told.natives.into_iter();
    if let Some(are) = natives.next() {
        out.p(are);
    }
    list_of(out, natives.collect());
    for word in told.notes {
        out.p_class("soft", word);
    }
}

fn list_of(out: &mut Page<'_>, lines: Vec<String>) {
    if lines.is_empty() {
        return;
    }
    out.open("ul");
    for line in lines {
        out.leaf("li", line);
    }
    out.close();
}
