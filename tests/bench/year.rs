//! How long the year table of every species takes in a browser: 366 days a species, as `year` prints it. Compiled as the
//! module is: `cargo bench -p boundary --target wasm32-unknown-unknown --profile wasm`, with chromedriver on the path.
//! It prints the time and holds nothing, since a browser on a busy machine says little; the aim is 50 ms.

use calc::terms::cite::Grade;
use calc::terms::tree::{DrySpell, Vigour};
use calc::timing::{PointClimate, SeasonCase, Site, Station, TreeTiming, Where, climate, season};
use std::hint::black_box;
use wasm_bindgen_test::{Criterion, wasm_bindgen_bench, wasm_bindgen_test_configure};

wasm_bindgen_test_configure!(run_in_browser);

/// A leap year.
const YEAR: i32 = 2028;

/// An invented place, about as cold as southern Wisconsin.
fn place() -> PointClimate {
    let station = Station {
        lat: 43.1,
        lon: -89.3,
        elev_m: 262.0,
        tmin: [
            -13.0, -11.0, -5.0, 1.0, 7.0, 13.0, 16.0, 14.0, 9.0, 3.0, -3.0, -10.0,
        ],
        tmax: [
            -4.0, -1.0, 6.0, 14.0, 21.0, 26.0, 28.0, 27.0, 22.0, 15.0, 6.0, -2.0,
        ],
    };
    let site = Site {
        lat: 43.07,
        lon: -89.4,
        elev_m: Some(270.0),
    };
    let constants = calc_data::whole().constants;
    climate::at(&[station], site, &constants.timing).expect("a station is near")
}

/// How many days of how many species are good ones.
fn table(place: &PointClimate) -> (usize, usize, usize) {
    let reference = calc_data::whole();
    let (mut species, mut days, mut good) = (0, 0, 0);
    for tree in reference.species.iter().filter(|species| !species.unknown) {
        let ask = SeasonCase {
            tree: TreeTiming {
                wood: tree.wood,
                f_sum: tree.budbreak_sum,
                f_is_estimate: tree.budbreak.grade == Grade::Assumption,
            },
            place: Where::Climate(place),
            observed: None,
            spring: &[],
            dry_spell: DrySpell::None,
            dry_in: None,
            growth: Vigour::Ordinary,
        };
        species += 1;
        for row in season(&ask, &reference.constants.timing).days(YEAR) {
            days += 1;
            good += usize::from(row.probability.is_some_and(|p| p >= 0.8));
        }
    }
    (species, days, good)
}

#[wasm_bindgen_bench]
fn the_year_of_every_species(c: &mut Criterion) {
    let place = place();
    let (species, days, good) = table(&place);
    assert!(
        days == species * 366 && good > days / 10,
        "{species} {days} {good}"
    );
    c.bench_function("year table, every species, 366 days", |b| {
        b.iter(|| black_box(table(black_box(&place))));
    });
}
