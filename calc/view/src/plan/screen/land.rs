//! Land and crowns: a row a part with how much land it is and how much of it lies under crowns now, and the floor of canopy
//! to keep.

use super::{heading_of_fold, open_form, send, typed};
use crate::page::Page;
use crate::plan::land::{self, LandTyped, land_m2, percent, under_crowns};
use crate::plan::made::Made;
use crate::plan::read::ReadList;
use crate::words::m;
use calc::terms::quantity::Units;
use calc::terms::small::decimals::fixed;
use calc_data::list::plan_constants;
use calc_plan::UnitLand;

/// What is typed of the land of one part.
#[derive(Clone, Debug, Default, PartialEq)]
struct PartLand {
    unit: String,
    area: String,
    closure: String,
}

/// What is typed of land.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct LandForm {
    parts: Vec<PartLand>,
    floor: String,
}

/// What is typed of land, to be kept: parts with area and share, and the floor.
pub type KeptLand = (Vec<(String, String, String)>, String);

/// The id of the first of what is wrong.
pub const FIRST_WRONG: &str = "l-land-wrong";

/// The floor's field.
const FLOOR: &str = "land-floor";

fn area_id(at: usize) -> String {
    ["land-area-", &at.to_string()].concat()
}

fn closure_id(at: usize) -> String {
    ["land-crowns-", &at.to_string()].concat()
}

impl LandForm {
    /// Of the fields of the form, which has a row a part in the order of the list.
    #[must_use]
    pub fn of(list: &ReadList, entries: &[(String, String)]) -> Self {
        let typed = |name: &str| {
            let mut all = entries.iter().filter(|(key, _)| key == name);
            all.next().map_or("", |(_, typed)| typed.trim()).to_owned()
        };
        let parts = list.units().into_iter().enumerate();
        Self {
            parts: parts
                .map(|(at, unit)| PartLand {
                    unit: unit.to_owned(),
                    area: typed(&area_id(at)),
                    closure: typed(&closure_id(at)),
                })
                .filter(|it| !(it.area.is_empty() && it.closure.is_empty()))
                .collect(),
            floor: typed(FLOOR),
        }
    }

    fn part(&self, unit: &str) -> Option<&PartLand> {
        self.parts.iter().find(|it| it.unit == unit)
    }

    /// What is wrong, by the id of its field.
    #[must_use]
    pub fn wrong(&self, list: &ReadList, units: Units) -> Vec<(String, String)> {
        let mut wrong = Vec::new();
        for (at, unit) in list.units().into_iter().enumerate() {
            let Some(of) = self.part(unit) else { continue };
            if of.area.is_empty() {
                wrong.push((area_id(at), m::PROPERTY_LAND_AREA_FIRST.into()));
            } else if land_m2(&of.area, units).is_none() {
                wrong.push((area_id(at), m::property_land_no_area(of.area.as_str())));
            }
            if !of.closure.is_empty() && percent(&of.closure).is_none() {
                let said = m::property_land_no_share(of.closure.as_str());
                wrong.push((closure_id(at), said));
            }
        }
        if !self.floor.is_empty() && percent(&self.floor).is_none() {
            let said = m::property_land_no_share(self.floor.as_str());
            wrong.push((FLOOR.to_owned(), said));
        } else if !self.floor.is_empty() && self.parts.is_empty() {
            wrong.push((FLOOR.to_owned(), m::PROPERTY_LAND_AREA_FIRST.into()));
        }
        wrong
    }

    /// The same as options of the command line, each with its value: of the parts that the list has.
    #[must_use]
    pub fn options(&self, list: &ReadList) -> Vec<(&'static str, String)> {
        let mut all = Vec::new();
        let there = || self.parts.iter().filter(|it| list.has_unit(&it.unit));
        let said = |it: &PartLand, what: &str| [&it.unit, "=", what].concat();
        all.extend(there().map(|it| ("area", said(it, &it.area))));
        let closures = there().filter(|it| !it.closure.is_empty());
        all.extend(closures.map(|it| ("closure", said(it, &it.closure))));
        if !all.is_empty() && !self.floor.is_empty() {
            all.push(("floor", self.floor.clone()));
        }
        all
    }

    /// The land of the list's parts, and the floor. What is typed was held against [`Self::wrong`].
    #[must_use]
    pub fn land(&self, list: &ReadList, units: Units) -> (Vec<UnitLand>, Option<f64>) {
        let all = self.options(list);
        let of = |name: &str| -> Vec<String> {
            let all = all.iter().filter(|(option, _)| *option == name);
            all.map(|(_, value)| value.clone()).collect()
        };
        let floor = of("floor");
        let typed = LandTyped {
            area: &of("area"),
            closure: &of("closure"),
            floor: floor.first().map(String::as_str),
        };
        land::land(&typed, units).unwrap_or_default()
    }

    /// As it is kept.
    #[must_use]
    pub fn kept(&self) -> KeptLand {
        let parts = self.parts.iter().cloned();
        let parts = parts.map(|it| (it.unit, it.area, it.closure));
        (parts.collect(), self.floor.clone())
    }

    /// Of what was kept.
    #[must_use]
    pub fn of_kept((parts, floor): KeptLand) -> Self {
        let parts = parts.into_iter().map(|(unit, area, closure)| PartLand {
            unit,
            area,
            closure,
        });
        Self {
            parts: parts.collect(),
            floor,
        }
    }
}

/// What is typed of land, and what of it is wrong.
#[derive(Clone, Copy)]
pub struct LandShown<'a> {
    /// What is typed.
    pub form: &'a LandForm,
    /// What is wrong, by the id of its field.
    pub wrong: &'a [(String, String)],
}

/// The fields, and what the plan leaves under crowns.
pub(super) fn land(out: &mut Page<'_>, list: &ReadList, made: &Made, shown: LandShown<'_>) {
    heading_of_fold(out, &m::PROPERTY_LAND);
    let units = list.units();
    if units.is_empty() {
        out.p_class("soft", m::PROPERTY_LAND_NO_PARTS);
        return;
    }
    let told: Vec<(String, bool)> = made.file.units.iter().filter_map(under_crowns).collect();
    for (told, _) in &told {
        out.p(told.as_str());
    }
    if told.iter().any(|(_, all_counted)| !all_counted) {
        out.p_class("soft", m::PROPERTY_LAND_ALL_CROWNS);
    }
    out.p(m::PROPERTY_LAND_IS);
    open_form(out, "land", "land", &[]);
    for (at, unit) in units.into_iter().enumerate() {
        let of = shown.form.part(unit).cloned().unwrap_or_default();
        out.open_class("fieldset", "field");
        out.leaf("legend", unit);
        out.open_class("div", "who");
        let hint = m::PROPERTY_LAND_AREA_HINT.text();
        let label = m::PROPERTY_LAND_AREA;
        typed(
            out,
            shown.wrong,
            &area_id(at),
            FIRST_WRONG,
            &label,
            hint,
            &of.area,
        );
        let hint = m::PROPERTY_LAND_CLOSURE_HINT.text();
        let label = m::PROPERTY_LAND_CLOSURE;
        typed(
            out,
            shown.wrong,
            &closure_id(at),
            FIRST_WRONG,
            &label,
            hint,
            &of.closure,
        );
        out.close_two();
    }
    let published = fixed(100.0 * plan_constants().canopy_floor, 0);
    let hint = m::property_land_floor_hint(published);
    let label = m::PROPERTY_LAND_FLOOR;
    typed(
        out,
        shown.wrong,
        FLOOR,
        FIRST_WRONG,
        &label,
        &hint,
        &shown.form.floor,
    );
    send(out, "btn ghost", &m::PROPERTY_PLAN_IT);
    out.close();
}
