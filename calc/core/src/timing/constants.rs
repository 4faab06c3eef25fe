//! The tunable numbers of the timing engine, one field a row of content/rules/timing_constants.csv.

use crate::terms::constants::constants;
use crate::terms::months::Months;

constants! {
    /// Every tunable number of the engine. Units, grades and sources stand in the table of the same names.
    pub struct SeasonConstants {
        /// Delta t, °C.
        pub delta_t: f64,
        /// Lapse, °C a km.
        pub lapse: f64,
        /// Weight offset, km.
        pub weight_offset: f64,
        /// Max place distance, km.
        pub max_place_distance: f64,
        /// Base, °C.
        pub base: f64,
        /// Daily sd, °C.
        pub daily_sd: f64,
        /// Start north, days.
        pub start_north: f64,
        /// Start south, days.
        pub start_south: f64,
        /// Half year, days.
        pub half_year: f64,
        /// Leaves full after, days.
        pub leaves_full_after: f64,
        /// First leaf before, days.
        pub first_leaf_before: f64,
        /// X anchor, days.
        pub x_anchor: f64,
        /// X min, days.
        pub x_min: f64,
        /// X max, days.
        pub x_max: f64,
        /// Ring opens, days.
        pub ring_opens: f64,
        /// Ring best from, days.
        pub ring_best_from: f64,
        /// Ring best to, days.
        pub ring_best_to: f64,
        /// Ring best to slope, a share or factor.
        pub ring_best_to_slope: f64,
        /// Ring closes, days.
        pub ring_closes: f64,
        /// Ring closes slope, a share or factor.
        pub ring_closes_slope: f64,
        /// Ring sd open, days.
        pub ring_sd_open: f64,
        /// Ring sd close, days.
        pub ring_sd_close: f64,
        /// Diffuse opens, days.
        pub diffuse_opens: f64,
        /// Diffuse best from, days.
        pub diffuse_best_from: f64,
        /// Diffuse best to, days.
        pub diffuse_best_to: f64,
        /// Diffuse best to slope, a share or factor.
        pub diffuse_best_to_slope: f64,
        /// Diffuse closes, days.
        pub diffuse_closes: f64,
        /// Diffuse closes slope, a share or factor.
        pub diffuse_closes_slope: f64,
        /// Diffuse sd open, days.
        pub diffuse_sd_open: f64,
        /// Diffuse sd close, days.
        pub diffuse_sd_close: f64,
        /// Conifer open mean, °C.
        pub conifer_open_mean: f64,
        /// Conifer search north, days.
        pub conifer_search_north: f64,
        /// Conifer search south, days.
        pub conifer_search_south: f64,
        /// Conifer best after, days.
        pub conifer_best_after: f64,
        /// Conifer best to, days.
        pub conifer_best_to: f64,
        /// Conifer best to slope, a share or factor.
        pub conifer_best_to_slope: f64,
        /// Conifer closes, days.
        pub conifer_closes: f64,
        /// Conifer closes slope, a share or factor.
        pub conifer_closes_slope: f64,
        /// Conifer sd open, days.
        pub conifer_sd_open: f64,
        /// Conifer sd close, days.
        pub conifer_sd_close: f64,
        /// Last after, days.
        pub last_after: f64,
        /// Dry step, days.
        pub dry_step: f64,
        /// Slow earlier, days.
        pub slow_earlier: f64,
        /// Fast later, days.
        pub fast_later: f64,
        /// Best at least, days.
        pub best_at_least: f64,
        /// Closing at least, days.
        pub closing_at_least: f64,
        /// Sd budbreak, days.
        pub sd_budbreak: f64,
        /// Sd between years, days.
        pub sd_between_years: f64,
        /// Sd observed, days.
        pub sd_observed: f64,
        /// Sd shift, days.
        pub sd_shift: f64,
        /// Sd shift share, a share or factor.
        pub sd_shift_share: f64,
        /// Relief per 100m, days a 100 m.
        pub relief_per_100m: f64,
        /// Relief most, days.
        pub relief_most: f64,
        /// Region most, days.
        pub region_most: f64,
        /// Region closing, a share or factor.
        pub region_closing: f64,
        /// Sd wide, days.
        pub sd_wide: f64,
        /// Sd mild, days.
        pub sd_mild: f64,
        /// Low latitude, degrees.
        pub low_latitude: f64,
        /// Mild month, °C.
        pub mild_month: f64,
        /// Early budbreak, days.
        pub early_budbreak: f64,
        /// P best, a share or factor.
        pub p_best: f64,
        /// P test, a share or factor.
        pub p_test: f64,
        /// P poor, a share or factor.
        pub p_poor: f64,
        /// P nearly every, a share or factor.
        pub p_nearly_every: f64,
        /// P hardly ever, a share or factor.
        pub p_hardly_ever: f64,
        /// P envelope, a share or factor.
        pub p_envelope: f64,
        /// Fitted per lat, days a degree.
        pub fitted_per_lat: f64,
        /// Fitted per lon, days a degree.
        pub fitted_per_lon: f64,
        /// Fitted per 100m, days a 100 m.
        pub fitted_per_100m: f64,
        /// Hopkins per lat, days a degree.
        pub hopkins_per_lat: f64,
        /// Hopkins per lon, days a degree.
        pub hopkins_per_lon: f64,
        /// Hopkins per 100m, days a 100 m.
        pub hopkins_per_100m: f64,
        /// Shift max distance, km.
        pub shift_max_distance: f64,
        /// Shift west, degrees.
        pub shift_west: f64,
        /// Observed far, days.
        pub observed_far: f64,
        /// Observed first, days.
        pub observed_first: f64,
        /// Observed last, days.
        pub observed_last: f64,
        /// Spring far, °C.
        pub spring_far: f64,
        /// Spring too warm, °C.
        pub spring_too_warm: f64,
        /// Spring too cold, °C.
        pub spring_too_cold: f64,
        /// Spring most lines, a count.
        pub spring_most_lines: f64,
        /// Spring hot, °C.
        pub spring_hot: f64,
        /// Air coldest, °C.
        pub air_coldest: f64,
        /// Air hottest, °C.
        pub air_hottest: f64,
        /// High latitude, degrees.
        pub high_latitude: f64,
        /// Elevation odd, m.
        pub elevation_odd: f64,
        /// Elevation far, m.
        pub elevation_far: f64,
        /// Region border, km.
        pub region_border: f64,
        /// Region country, km.
        pub region_country: f64,
        /// Months in which bark may slip where there is no date model.
        pub envelope: Months,
        /// The same of conifers and evergreens.
        pub envelope_longer: Months,
        /// The best of them.
        pub envelope_best: Months,
    }
}
