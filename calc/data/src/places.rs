//! The climate places and the towns, packed: files beside the module, which the page fetches and a program has inside.
//! A program that doesn't name them doesn't carry them.

use calc::timing::places::climate::{self, Places};
use std::sync::OnceLock;

/// The climate places with those that stand for states and countries, as [`climate::encode`] packs them.
pub static CLIMATE: &[u8] = include_bytes!(concat!(env!("OUT_DIR"), "/climate"));

macro_rules! lists {
    ($($country:literal)*) => {
        /// The lists of towns, each with its country's ISO 3166-1 code, as `calc::timing::places::towns::encode` packs them.
        pub static TOWNS: &[(&str, &[u8])] =
            &[$(($country, include_bytes!(concat!(env!("OUT_DIR"), "/towns-", $country)))),*];
    };
}

// As in `build/places.rs`: a list that the build does not pack can't be taken in here.
lists!("US" "CA" "GB" "IE" "DE" "AT" "CH" "FR" "NZ" "AU");

/// The climate places, unpacked at the first call.
#[must_use]
pub fn places() -> &'static Places {
    static PLACES: OnceLock<Places> = OnceLock::new();
    // The build packed them: a check reads them back.
    PLACES.get_or_init(|| climate::decode(CLIMATE).unwrap_or_default())
}

#[cfg(test)]
mod tests {
    use super::*;
    use calc::timing::places::towns;

    #[test]
    fn every_packed_list_is_read_back() {
        let places = climate::decode(CLIMATE).expect("the climate places");
        assert!(places.stations.len() > 1000 && places.regions.len() > 100);
        for (country, bytes) in TOWNS {
            let list = towns::decode(bytes).expect(country);
            assert!(
                list.iter().all(|town| town.region.starts_with(country)),
                "{country}"
            );
            assert!(list.len() > 20, "{country}: {}", list.len());
        }
    }
}
