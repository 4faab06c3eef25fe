//! The packed places: nothing lost, small enough, and broken files refused. Sizes by gzip, level 9.
//! Sources: WorldClim 1.4 and GeoNames, as content/places/README.md tells.

use crate::support::{climate_rows, constants, day, number, rows, stations};
use calc::timing::climate::{at, distance_km};
use calc::timing::places::towns::{Town, find, size};
use calc::timing::places::{Broken, climate, towns};
use calc::timing::{PointClimate, Site, Station};
use std::io::Write as _;

const COUNTRIES: [&str; 10] = ["US", "CA", "GB", "IE", "DE", "AT", "CH", "FR", "NZ", "AU"];

fn gzip(bytes: &[u8]) -> usize {
    let mut z = flate2::write::GzEncoder::new(Vec::new(), flate2::Compression::best());
    z.write_all(bytes).expect("written");
    z.finish().expect("finished").len()
}

fn towns_of(country: &str) -> Vec<Town> {
    rows(&format!("content/places/towns/{country}.csv"))
        .iter()
        .map(|r| Town {
            name: r["name"].clone(),
            region: r["region"].clone(),
            lat: number(r, "lat"),
            lon: number(r, "lon"),
            size: size(number(r, "population") as u32),
        })
        .collect()
}

/// A point's climate is that of the places near it, however many others the table holds: the table sorted by distance,
/// cut behind the eight that count, gives the same to the last bit. Points are a lattice over the table's countries.
#[test]
fn no_near_place_is_passed_by() {
    let (all, c) = (stations(), constants());
    let mut reached = 0;
    for north in -24..=36 {
        for east in 0..45 {
            let (lat, lon) = (f64::from(north) * 2.0 + 0.13, f64::from(east) * 8.0 - 179.9);
            let site = Site {
                lat,
                lon,
                elev_m: None,
            };
            let of_all = at(&all, site, &c);
            let km = |s: &Station| distance_km(lat, lon, f64::from(s.lat), f64::from(s.lon));
            let mut by_km: Vec<(f64, Station)> = all.iter().map(|s| (km(s), *s)).collect();
            by_km.sort_by(|a, b| a.0.total_cmp(&b.0));
            let near: Vec<Station> = by_km.iter().take(8).map(|near| near.1).collect();
            match (of_all, at(&near, site, &c)) {
                (Ok(of_all), Ok(of_near)) => {
                    reached += 1;
                    assert_eq!(all[of_all.nearest], near[0], "{lat} {lon}");
                    assert_eq!(
                        PointClimate {
                            nearest: 0,
                            ..of_all
                        },
                        of_near,
                        "{lat} {lon}"
                    );
                }
                (of_all, of_near) => {
                    assert!(of_all.is_err() && of_near.is_err(), "{lat} {lon}");
                }
            }
        }
    }
    // A tenth of the lattice lies on land of the table or near it.
    assert!(reached > 250, "{reached}");
}

#[test]
fn the_climate_places_pack_without_loss_into_45_kb() {
    let (all, regions) = climate_rows();
    assert_eq!((all.len(), regions.len()), (1163, 178));
    let bytes = climate::encode(&all, &regions);
    let small = gzip(&bytes);
    println!("climate places: {} bytes, {small} compressed", bytes.len());
    assert!(small <= 45_000, "{small}");
    let back = climate::decode(&bytes).expect("a whole file");
    assert_eq!((back.stations.len(), back.names.len()), (1163, 1163));
    for (region, read) in regions.iter().zip(&back.regions) {
        assert_eq!(
            (&region.region, region.spread_days),
            (&read.region, read.spread_days)
        );
        for (place, read) in region.places.into_iter().zip(read.places) {
            assert_eq!(all[place].name, back.names[read].name, "{}", region.region);
            assert_eq!(all[place].station, back.stations[read], "{}", region.region);
        }
    }
    for p in &all {
        let same = back.stations.iter().zip(&back.names).any(|(s, n)| {
            let region = if p.state.is_empty() {
                p.country.clone()
            } else {
                format!("{}-{}", p.country, p.state)
            };
            *s == p.station && n.name == p.name && n.region == region
        });
        assert!(same, "{} {:?}", p.name, p.station);
    }
    // The engine gives the same climate to the last bit, whatever the order of the rows.
    let c = constants();
    let site = Site {
        lat: 42.36,
        lon: -71.06,
        elev_m: Some(15.0),
    };
    let (a, b) = (
        at(&stations(), site, &c).expect("near"),
        at(&back.stations, site, &c).expect("near"),
    );
    assert_eq!(
        (a.tmin, a.tmax, a.nearest_km),
        (b.tmin, b.tmax, b.nearest_km)
    );
}

#[test]
fn every_country_s_towns_pack_without_loss_and_the_largest_list_into_200_kb() {
    for country in COUNTRIES {
        let all = towns_of(country);
        let bytes = towns::encode(&all);
        let small = gzip(&bytes);
        println!(
            "{country}: {} towns, {} bytes, {small} compressed",
            all.len(),
            bytes.len()
        );
        assert!(small <= 200_000, "{country}: {small}");
        let key = |t: &Town| {
            (
                t.region.clone(),
                t.name.clone(),
                (t.lat * 100.0).round() as i32,
                (t.lon * 100.0).round() as i32,
                t.size,
            )
        };
        let mut before: Vec<_> = all.iter().map(key).collect();
        let mut after: Vec<_> = towns::decode(&bytes)
            .expect("a whole file")
            .iter()
            .map(key)
            .collect();
        before.sort();
        after.sort();
        assert_eq!(before, after, "{country}");
    }
}

#[test]
fn a_town_is_found_by_the_start_of_its_name_without_case_or_accents() {
    let first = |country: &str, typed: &str| {
        let all = towns_of(country);
        find(&all, typed, 5)
            .first()
            .map(|t| (t.name.clone(), t.region.clone()))
    };
    for (country, typed, name, region) in [
        ("US", "boston", "Boston", "US-MA"),
        ("US", "Springfield, il", "Springfield", "US-IL"),
        ("US", "St. Paul", "Saint Paul", "US-MN"),
        ("CA", "montreal", "Montréal", "CA-QC"),
        ("CA", "st johns", "St. John's", "CA-NL"),
        ("DE", "munchen", "München (Munich)", "DE-BY"),
        ("DE", "Munich", "München (Munich)", "DE-BY"),
        ("CH", "zuri", "Zürich", "CH-ZH"),
        ("FR", "saint etienne", "Saint-Étienne", "FR-ARA"),
        ("GB", "kendal", "Kendal", "GB-ENG"),
        ("NZ", "dunedin", "Dunedin", "NZ-OTA"),
    ] {
        assert_eq!(
            first(country, typed),
            Some((name.to_owned(), region.to_owned())),
            "{country} {typed}"
        );
    }
    assert_eq!(first("US", "qqqq"), None);
    assert_eq!(first("US", "  "), None);
}

#[test]
fn a_broken_file_is_refused_and_never_read_in_part() {
    let climate = climate::encode(&climate_rows().0[..40], &[]);
    let towns = towns::encode(&towns_of("IE"));
    assert_eq!(climate::decode(&towns), Err(Broken::WrongKind));
    assert_eq!(towns::decode(&climate), Err(Broken::WrongKind));
    assert_eq!(climate::decode(b""), Err(Broken::WrongKind));
    for n in 0..climate.len() {
        assert!(climate::decode(&climate[..n]).is_err(), "cut at {n}");
    }
    for n in 0..towns.len() {
        assert!(towns::decode(&towns[..n]).is_err(), "cut at {n}");
    }
    let mut longer = climate.clone();
    longer.push(0);
    assert_eq!(climate::decode(&longer), Err(Broken::WrongLength));
    // Any bit may be wrong: an error or other values, but no panic and no endless memory.
    for at in 0..climate.len() {
        for bit in 0..8 {
            let mut bad = climate.clone();
            bad[at] ^= 1 << bit;
            let _ = climate::decode(&bad);
        }
    }
    for at in (0..towns.len()).step_by(3) {
        let mut bad = towns.clone();
        bad[at] ^= 0xff;
        let _ = towns::decode(&bad);
    }
}

/// The state or country of a point by the towns near it, each town asked about as if it were not in its list. The truth
/// is GeoNames' own region of that town; how far a wrong one may be named is our own choice.
#[test]
fn the_region_of_a_point_is_told_by_the_towns_near_and_both_sides_of_a_border_are_named() {
    static LISTS: std::sync::OnceLock<(climate::Places, Vec<Vec<Town>>)> =
        std::sync::OnceLock::new();
    fn lists() -> &'static (climate::Places, Vec<Vec<Town>>) {
        LISTS.get_or_init(|| {
            let bytes = {
                let (places, regions) = climate_rows();
                climate::encode(&places, &regions)
            };
            let lists = COUNTRIES.map(|country| {
                towns::decode(&towns::encode(&towns_of(country))).expect("a whole file")
            });
            (climate::decode(&bytes).expect("a whole file"), lists.into())
        })
    }
    fn near(lat: f64, lon: f64, _: &str) -> Vec<(String, f64)> {
        let (places, lists) = lists();
        let mut near = Vec::new();
        for (country, km) in climate::countries_near(places, lat, lon, &constants()) {
            let Some(at) = COUNTRIES.iter().position(|known| *known == country) else {
                near.push((country, km));
                continue;
            };
            // The town itself is left out, and what stands on the same spot.
            let others: Vec<Town> = lists[at]
                .iter()
                .filter(|t| (t.lat - lat).abs() + (t.lon - lon).abs() > 1e-9)
                .cloned()
                .collect();
            near.extend(towns::regions_near(&others, lat, lon));
        }
        near
    }
    let options = calc_view::form::FormOptions {
        group: None,
        lang: "en",
        today: day(2027, 6, 12),
        local: calc_view::form::no_table,
        answered: false,
        country: "",
        towns: None,
        position: false,
        keeps: false,
        listed: false,
        built: false,
        near,
        heading_level: 3,
        kind: calc_view::kind::Kind::TreePlan,
    };
    let (mut asked, mut clear, mut wrong, mut left_out) = (0, 0, 0, 0);
    for (country, step) in COUNTRIES
        .iter()
        .zip([70, 40, 60, 20, 90, 20, 30, 70, 20, 60])
    {
        for town in towns_of(country).iter().step_by(step) {
            let mut sheet = calc_view::form::Sheet::new();
            sheet.set("place.latitude", &town.lat.to_string());
            sheet.set("place.longitude", &town.lon.to_string());
            let view = calc_view::form::View::new(calc_data::whole(), &sheet, &options);
            let near = view.near();
            if near.is_empty() {
                continue;
            }
            asked += 1;
            let right = near
                .iter()
                .any(|code| town.region == *code || town.region.starts_with(&format!("{code}-")));
            clear += usize::from(near.len() == 1);
            wrong += usize::from(near.len() == 1 && !right);
            left_out += usize::from(near.len() > 1 && !right);
        }
    }
    println!("{asked} towns, {clear} with one region, {wrong} of them wrong; {left_out} left out");
    assert!(asked > 450 && clear * 10 > asked * 7, "{asked} {clear}");
    assert!(wrong * 200 <= clear, "{wrong} of {clear}");
    assert_eq!(left_out, 0);
}
