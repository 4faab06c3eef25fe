//! The tunable numbers of the timing engine, one name a row of content/rules/timing_constants.csv.

macro_rules! constants {
    ($($(#[$meta:meta])* $name:ident,)*) => {
        /// Every tunable number of the engine. Units, grades and sources stand in the table of the same names.
        #[derive(Debug, Clone, Copy, PartialEq)]
        pub struct Constants([f64; Self::NAMES.len()]);

        #[allow(non_camel_case_types)]
        enum At { $($name),* }

        impl Constants {
            /// The names that the table must hold, each once.
            pub const NAMES: &'static [&'static str] = &[$(stringify!($name)),*];

            $($(#[$meta])* #[must_use] pub const fn $name(&self) -> f64 { self.0[At::$name as usize] })*
        }
    };
}

impl Constants {
    /// From the values in the order of [`Self::NAMES`].
    #[must_use]
    pub fn from_values(mut next: impl FnMut() -> f64) -> Self {
        Self(core::array::from_fn(|_| next()))
    }

    /// The values in the order of [`Self::NAMES`].
    #[must_use]
    pub const fn values(&self) -> &[f64] {
        &self.0
    }

    /// From rows of (name, value).
    ///
    /// # Errors
    /// Says which name is unknown, twice there, or missing.
    pub fn from_pairs<'a>(rows: impl IntoIterator<Item = (&'a str, f64)>) -> Result<Self, String> {
        let says = |what: &str, name: &str| ["timing constants: ", what, " ", name].concat();
        let mut found = [None; Self::NAMES.len()];
        for (key, value) in rows {
            let at = Self::NAMES.iter().position(|name| *name == key);
            let at = at.ok_or_else(|| says("no constant is called", key))?;
            if found[at].replace(value).is_some() {
                return Err(says("there are two rows called", key));
            }
        }
        match found.iter().position(Option::is_none) {
            Some(at) => Err(says("no row is called", Self::NAMES[at])),
            None => Ok(Self(found.map(Option::unwrap_or_default))),
        }
    }
}

constants! {
    /// Delta t, °C.
    delta_t,
    /// Lapse, °C a km.
    lapse,
    /// Weight offset, km.
    weight_offset,
    /// Max place distance, km.
    max_place_distance,
    /// Base, °C.
    base,
    /// Daily sd, °C.
    daily_sd,
    /// Start north, days.
    start_north,
    /// Start south, days.
    start_south,
    /// Half year, days.
    half_year,
    /// Leaves full after, days.
    leaves_full_after,
    /// First leaf before, days.
    first_leaf_before,
    /// X anchor, days.
    x_anchor,
    /// X min, days.
    x_min,
    /// X max, days.
    x_max,
    /// Ring opens, days.
    ring_opens,
    /// Ring best from, days.
    ring_best_from,
    /// Ring best to, days.
    ring_best_to,
    /// Ring best to slope, a share or factor.
    ring_best_to_slope,
    /// Ring closes, days.
    ring_closes,
    /// Ring closes slope, a share or factor.
    ring_closes_slope,
    /// Ring sd open, days.
    ring_sd_open,
    /// Ring sd close, days.
    ring_sd_close,
    /// Diffuse opens, days.
    diffuse_opens,
    /// Diffuse best from, days.
    diffuse_best_from,
    /// Diffuse best to, days.
    diffuse_best_to,
    /// Diffuse best to slope, a share or factor.
    diffuse_best_to_slope,
    /// Diffuse closes, days.
    diffuse_closes,
    /// Diffuse closes slope, a share or factor.
    diffuse_closes_slope,
    /// Diffuse sd open, days.
    diffuse_sd_open,
    /// Diffuse sd close, days.
    diffuse_sd_close,
    /// Conifer open mean, °C.
    conifer_open_mean,
    /// Conifer search north, days.
    conifer_search_north,
    /// Conifer search south, days.
    conifer_search_south,
    /// Conifer best after, days.
    conifer_best_after,
    /// Conifer best to, days.
    conifer_best_to,
    /// Conifer best to slope, a share or factor.
    conifer_best_to_slope,
    /// Conifer closes, days.
    conifer_closes,
    /// Conifer closes slope, a share or factor.
    conifer_closes_slope,
    /// Conifer sd open, days.
    conifer_sd_open,
    /// Conifer sd close, days.
    conifer_sd_close,
    /// Last after, days.
    last_after,
    /// Dry step, days.
    dry_step,
    /// Slow earlier, days.
    slow_earlier,
    /// Fast later, days.
    fast_later,
    /// Best at least, days.
    best_at_least,
    /// Closing at least, days.
    closing_at_least,
    /// Sd budbreak, days.
    sd_budbreak,
    /// Sd between years, days.
    sd_between_years,
    /// Sd observed, days.
    sd_observed,
    /// Sd shift, days.
    sd_shift,
    /// Sd shift share, a share or factor.
    sd_shift_share,
    /// Sd wide, days.
    sd_wide,
    /// Sd mild, days.
    sd_mild,
    /// Low latitude, degrees.
    low_latitude,
    /// Mild month, °C.
    mild_month,
    /// Early budbreak, days.
    early_budbreak,
    /// P best, a share or factor.
    p_best,
    /// P test, a share or factor.
    p_test,
    /// P poor, a share or factor.
    p_poor,
    /// P nearly every, a share or factor.
    p_nearly_every,
    /// P hardly ever, a share or factor.
    p_hardly_ever,
    /// P envelope, a share or factor.
    p_envelope,
    /// Fitted per lat, days a degree.
    fitted_per_lat,
    /// Fitted per lon, days a degree.
    fitted_per_lon,
    /// Fitted per 100m, days a 100 m.
    fitted_per_100m,
    /// Hopkins per lat, days a degree.
    hopkins_per_lat,
    /// Hopkins per lon, days a degree.
    hopkins_per_lon,
    /// Hopkins per 100m, days a 100 m.
    hopkins_per_100m,
    /// Shift max distance, km.
    shift_max_distance,
    /// Shift west, degrees.
    shift_west,
    /// Observed far, days.
    observed_far,
    /// Observed first, days.
    observed_first,
    /// Observed last, days.
    observed_last,
    /// Spring far, °C.
    spring_far,
    /// Spring too warm, °C.
    spring_too_warm,
    /// Spring too cold, °C.
    spring_too_cold,
    /// Spring most lines, a count.
    spring_most_lines,
    /// Spring hot, °C.
    spring_hot,
    /// Air coldest, °C.
    air_coldest,
    /// Air hottest, °C.
    air_hottest,
    /// High latitude, degrees.
    high_latitude,
    /// Elevation odd, m.
    elevation_odd,
    /// Elevation far, m.
    elevation_far,
    /// Region border, km.
    region_border,
    /// Region country, km.
    region_country,
}
