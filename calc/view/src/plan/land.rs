//! How much land a part of the property is, and how much of it stays under crowns: asked only where somebody says it.

use super::asked::{NotASeason, PlanField};
use crate::words::m;
use calc::models::stand::ACRE_M2;
use calc::terms::number::{Unit, read_number};
use calc::terms::quantity::{M_PER_FT, Units};
use calc::terms::small::decimals::fixed;
use calc_data::list::{fold, plan_constants};
use calc_plan::UnitLand;
use calc_plan::plan_file::shape::UnitOf;

/// A hectare, m².
const HECTARE_M2: f64 = 10_000.0;
/// The smallest and the largest land of a part, m²: a garden bed to 10,000 ha.
const LAND_M2: (f64, f64) = (10.0, 1e8);

/// What can be said of land, as typed: `North wood=12 acres`, `North wood=85%`, `60%`.
#[derive(Clone, Copy, Debug, Default)]
pub struct LandTyped<'a> {
    /// Area by part.
    pub area: &'a [String],
    /// Share under crowns now, by part.
    pub closure: &'a [String],
    /// Share that stays under crowns; empty: the one that is published.
    pub floor: Option<&'a str>,
}

/// Land by part, and the floor.
///
/// # Errors
/// What was not understood.
pub fn land(
    typed: &LandTyped<'_>,
    units: Units,
) -> Result<(Vec<UnitLand>, Option<f64>), NotASeason> {
    let wrong = |field: PlanField, typed: &str| NotASeason::NotAUnit(field, typed.to_owned());
    let mut all: Vec<UnitLand> = Vec::new();
    for each in typed.area {
        let (unit, area) = each.rsplit_once('=').unwrap_or_default();
        let area_m2 = land_m2(area, units).filter(|_| !unit.trim().is_empty());
        all.push(UnitLand {
            unit: unit.trim().to_owned(),
            area_m2: area_m2.ok_or_else(|| wrong(PlanField::Area, each))?,
            closure: None,
        });
    }
    for each in typed.closure {
        let (unit, share) = each.rsplit_once('=').unwrap_or_default();
        let land = all.iter_mut().find(|land| land.unit == unit.trim());
        match (land, percent(share)) {
            (Some(land), Some(share)) => land.closure = Some(share),
            _ => return Err(wrong(PlanField::Closure, each)),
        }
    }
    let floor = match typed.floor.map(str::trim) {
        None => None,
        Some("") => Some(plan_constants().canopy_floor),
        Some(share) => Some(percent(share).ok_or_else(|| wrong(PlanField::Floor, share))?),
    };
    if let (Some(_), Some(typed), true) = (floor, typed.floor, all.is_empty()) {
        return Err(wrong(PlanField::Floor, typed));
    }
    Ok((all, floor))
}

/// Square metres of the land of a part, as typed; none where it is no area, or no part's.
#[must_use]
pub fn land_m2(typed: &str, units: Units) -> Option<f64> {
    area_m2(typed, units).filter(|area| (LAND_M2.0..=LAND_M2.1).contains(area))
}

/// A share of 1 to 99 %, with its sign or without.
#[must_use]
pub fn percent(typed: &str) -> Option<f64> {
    let read = read_number(typed).ok()?;
    let plain = read.unit.is_none_or(|unit| unit == Unit::Percent);
    (plain && (1.0..=99.0).contains(&read.value)).then_some(read.value / 100.0)
}

/// Square metres of what was typed; a bare number is acres or hectares.
fn area_m2(typed: &str, units: Units) -> Option<f64> {
    let typed = fold(typed.trim());
    let digits = typed
        .find(|c: char| c.is_alphabetic())
        .unwrap_or(typed.len());
    let (number, unit) = typed.split_at(digits);
    let square_foot = M_PER_FT * M_PER_FT;
    let in_m2 = match (unit.trim().trim_end_matches('.'), units) {
        ("", Units::Us) | ("acre" | "acres" | "ac", _) => ACRE_M2,
        ("", Units::Metric) | ("ha" | "hectare" | "hectares" | "hectarea" | "hectareas", _) => {
            HECTARE_M2
        }
        ("m2" | "m²" | "sq m", _) => 1.0,
        ("ft2" | "ft²" | "sq ft", _) => square_foot,
        _ => return None,
    };
    let read = read_number(number)
        .ok()
        .filter(|read| read.unit.is_none())?;
    Some(read.value * in_m2)
}

/// How much of a part's land lies under crowns, now and with the trees of the plan dead; whether all trees there were
/// counted. None where nobody said how much land it is.
#[must_use]
pub fn under_crowns(unit: &UnitOf) -> Option<(String, bool)> {
    let land = unit.land.as_ref()?;
    let percent = |share: f64| fixed(100.0 * share, 0);
    let (unit, now, then) = (
        unit.unit.as_str(),
        percent(land.closure_before),
        percent(land.closure_after),
    );
    let told = match land.closure_said {
        true => m::after_crowns(m::AfterCrowns { unit, now, then }),
        false => m::after_crowns_of_list(m::AfterCrownsOfList { unit, now, then }),
    };
    Some((told, land.closure_said))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn areas_are_read_in_any_unit_and_nonsense_is_refused() {
        let near = |typed: &str, units, m2: f64| {
            let read = area_m2(typed, units).unwrap_or(f64::NAN);
            assert!((read / m2 - 1.0).abs() < 1e-6, "{typed}: {read}");
        };
        // An acre is 4,046.856 m² (NIST Special Publication 811, table of conversions; the international foot).
        for typed in ["12 acres", "12 ac", "12", "12.0 acres"] {
            near(typed, Units::Us, 48_562.277);
        }
        near("12", Units::Metric, 120_000.0);
        near("1,5 ha", Units::Metric, 15_000.0);
        near("500 m²", Units::Us, 500.0);
        near("500 m2", Units::Us, 500.0);
        near("43560 sq ft", Units::Us, 4_046.856_4);
        for typed in ["", "acres", "12 miles", "12 ft", "x"] {
            assert_eq!(area_m2(typed, Units::Us), None, "{typed}");
        }
        let said = |area: &str, closure: &str, floor| {
            land(
                &LandTyped {
                    area: &[area.to_owned()],
                    closure: &[closure.to_owned()],
                    floor,
                },
                Units::Us,
            )
        };
        let (lands, floor) = said("A=2 acres", "A = 85%", Some("")).expect("understood");
        assert_eq!((lands[0].closure, floor), (Some(0.85), Some(0.6)));
        for (area, closure, floor) in [
            ("2 acres", "A=85%", None),
            ("A=0.001 ft2", "A=85%", None),
            ("A=2 acres", "B=85%", None),
            ("A=2 acres", "A=0%", None),
            ("A=2 acres", "A=85%", Some("120%")),
        ] {
            assert!(
                said(area, closure, floor).is_err(),
                "{area} {closure} {floor:?}"
            );
        }
        assert!(
            land(
                &LandTyped {
                    floor: Some("60%"),
                    ..LandTyped::default()
                },
                Units::Us
            )
            .is_err()
        );
    }
}
