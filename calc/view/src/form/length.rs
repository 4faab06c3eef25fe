//! The fields of lengths: the control that says the unit of a bare number, and the units that it offers.

/// What is measured, which decides units and rounding.
#[derive(Clone, Copy, PartialEq)]
pub(super) enum LengthKind {
    /// Across or around a trunk, or the width of a ring.
    Trunk,
    /// Thickness of bark.
    Bark,
    /// Along the ground, or a height.
    Ground,
    /// Above the sea.
    Elevation,
}

/// A field that holds a length.
pub(super) struct Length {
    /// Name of the control of its unit.
    pub control: String,
    /// What is measured.
    pub kind: LengthKind,
}

impl Length {
    /// The length that a field holds, by the field's name.
    pub(super) fn of(name: &str) -> Option<Self> {
        let (under, key) = name.rsplit_once('.').unwrap_or_default();
        let (control, kind) = match if under.is_empty() { name } else { key } {
            "diameter" | "width" => ("stems.unit", LengthKind::Trunk),
            "bark" => ("bark.unit", LengthKind::Bark),
            "distance" if under != "height_aid" => ("", LengthKind::Ground),
            "height" | "tree_shadow" | "stick" | "stick_shadow" | "distance" | "eye_to_stick" => {
                ("height.unit", LengthKind::Ground)
            }
            "elevation" => ("", LengthKind::Elevation),
            _ => return None,
        };
        let control = if control.is_empty() {
            cat!(under, ".unit")
        } else {
            control.to_owned()
        };
        Some(Self { control, kind })
    }

    /// The units that may be picked: that of the United States, and the metric one.
    pub(super) fn units(&self) -> [&'static str; 2] {
        match self.kind {
            LengthKind::Trunk => ["in", "cm"],
            LengthKind::Bark => ["in", "mm"],
            LengthKind::Ground | LengthKind::Elevation => ["ft", "m"],
        }
    }
}
