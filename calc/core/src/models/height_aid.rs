//! Three ways to measure a height from the ground. Each fills the height field; none climbs.

use crate::terms::quantity::TotalHeight;
use crate::terms::small::sine::tan;
use crate::terms::words::words;

words! {
    /// How a height was measured from the ground.
    pub enum HeightBy {
        /// By the ratio of shadows.
        Shadow,
        /// By a distance and two angles.
        Angles,
        /// By a stick that covers the tree.
        Stick,
    }
}

words! {
    /// Why measurements make no height.
    pub enum NoHeight {
        /// A length is zero, below, or no number.
        NotPositive,
        /// An angle is not between straight down and straight up.
        BadAngle,
        /// The top is not above the foot: the two sights can't belong to one trunk.
        AnglesDoNotMeet,
        /// The height comes out beyond any tree.
        OutOfRange,
    }
}

/// Shadow ratio: the tree's shadow over a stick's, times the stick's height. Metres in and out.
///
/// # Errors
/// [`NoHeight`] says why there is none.
pub fn by_shadow(
    tree_shadow_m: f64,
    stick_m: f64,
    stick_shadow_m: f64,
) -> Result<TotalHeight, NoHeight> {
    positive(&[tree_shadow_m, stick_m, stick_shadow_m])?;
    height(tree_shadow_m * stick_m / stick_shadow_m)
}

/// Distance and two angles from the eye, degrees; the foot is below the level for a negative angle:
/// H = d (tan top − tan foot).
///
/// # Errors
/// [`NoHeight`] says why there is none.
///
/// ```
/// use calc::models::height_aid::by_angles;
/// let height = by_angles(20.0, 45.0, -4.5).expect("a height");
/// assert_eq!((height.m() * 10.0).round(), 216.0);
/// ```
pub fn by_angles(
    distance_m: f64,
    top_degrees: f64,
    foot_degrees: f64,
) -> Result<TotalHeight, NoHeight> {
    positive(&[distance_m])?;
    let upright = |angle: f64| angle > -90.0 && angle < 90.0;
    if !upright(top_degrees) || !upright(foot_degrees) {
        return Err(NoHeight::BadAngle);
    }
    if top_degrees <= foot_degrees {
        return Err(NoHeight::AnglesDoNotMeet);
    }
    height(distance_m * (tan(top_degrees.to_radians()) - tan(foot_degrees.to_radians())))
}

/// A stick held upright, that covers the tree from foot to top: similar triangles from the eye.
///
/// # Errors
/// [`NoHeight`] says why there is none.
pub fn by_stick(
    distance_m: f64,
    stick_m: f64,
    eye_to_stick_m: f64,
) -> Result<TotalHeight, NoHeight> {
    positive(&[distance_m, stick_m, eye_to_stick_m])?;
    height(distance_m * stick_m / eye_to_stick_m)
}

fn positive(lengths: &[f64]) -> Result<(), NoHeight> {
    if lengths
        .iter()
        .all(|length| *length > 0.0 && length.is_finite())
    {
        Ok(())
    } else {
        Err(NoHeight::NotPositive)
    }
}

fn height(m: f64) -> Result<TotalHeight, NoHeight> {
    TotalHeight::new(m).ok_or(NoHeight::OutOfRange)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn angles_of_45_degrees_give_the_distance_and_what_is_below_the_eye_is_added() {
        let level = by_angles(20.0, 45.0, 0.0).map(TotalHeight::m);
        assert!(level.is_ok_and(|m| libm::fabs(m - 20.0) < 1e-9));
        assert_eq!(by_angles(20.0, 10.0, 20.0), Err(NoHeight::AnglesDoNotMeet));
        assert_eq!(by_angles(20.0, 90.0, 0.0), Err(NoHeight::BadAngle));
        assert_eq!(by_shadow(0.0, 1.0, 1.0), Err(NoHeight::NotPositive));
        assert_eq!(by_angles(20.0, 89.99, 0.0), Err(NoHeight::OutOfRange));
    }
}
