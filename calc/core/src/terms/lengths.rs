//! Lengths as the interface writes them: to a tenth of a millimetre. No tape and no model is finer; what follows them
//! in a float says nothing. The models keep the whole number.

use super::cite::Finding;
use serde::{Serialize, Serializer};

/// Millimetres, to a tenth.
#[must_use]
pub fn tenth_mm(mm: f64) -> f64 {
    libm::round(mm * 10.0) / 10.0
}

/// Metres, to a tenth of a millimetre.
#[must_use]
pub fn tenth_mm_of_m(m: f64) -> f64 {
    libm::round(m * 10_000.0) / 10_000.0
}

/// Millimetres in the interface.
///
/// # Errors
/// Those of the serializer.
pub fn mm<S: Serializer>(mm: &f64, serializer: S) -> Result<S::Ok, S::Error> {
    serializer.serialize_f64(tenth_mm(*mm))
}

/// Millimetres that may be missing.
///
/// # Errors
/// Those of the serializer.
pub fn maybe_mm<S: Serializer>(mm: &Option<f64>, serializer: S) -> Result<S::Ok, S::Error> {
    mm.map(tenth_mm).serialize(serializer)
}

/// Metres in the interface.
///
/// # Errors
/// Those of the serializer.
pub fn m<S: Serializer>(m: &f64, serializer: S) -> Result<S::Ok, S::Error> {
    serializer.serialize_f64(tenth_mm_of_m(*m))
}

/// Metres that may be missing.
///
/// # Errors
/// Those of the serializer.
pub fn maybe_m<S: Serializer>(m: &Option<f64>, serializer: S) -> Result<S::Ok, S::Error> {
    m.map(tenth_mm_of_m).serialize(serializer)
}

/// Metres with their range and reasons, which may be missing.
///
/// # Errors
/// Those of the serializer.
pub fn maybe_found_m<S: Serializer>(
    found: &Option<Finding<f64>>,
    serializer: S,
) -> Result<S::Ok, S::Error> {
    let rounded = found.as_ref().map(|found| Finding {
        value: tenth_mm_of_m(found.value),
        low: found.low.map(tenth_mm_of_m),
        high: found.high.map(tenth_mm_of_m),
        because: found.because.clone(),
    });
    rounded.serialize(serializer)
}
