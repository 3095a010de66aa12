//! Rounding at the report's edge, and nowhere before it.

use mesh::Unit;
use nalgebra::{Point3, Vector3};

/// A length in mm, an area in mm² or a share, to 4 decimals.
pub(crate) fn figure(value: f64) -> f64 {
    to_decimals(value, 4)
}

/// A confidence, to 3 decimals.
pub(crate) fn confidence(value: f64) -> f64 {
    to_decimals(value, 3)
}

/// A share of a length, to 6 decimals: a thousandth of a millimetre of a border.
pub(crate) fn share(value: f64) -> f64 {
    to_decimals(value, 6)
}

/// A direction: 6 decimals of a unit vector are a tenth of a micrometre over an arch.
pub(crate) fn direction(vector: &Vector3<f64>) -> [f64; 3] {
    <[f64; 3]>::from(*vector).map(|c| to_decimals(c, 6))
}

/// A point in mm, given back in the unit of the file it lies in, to 0.0001 mm or finer.
pub(crate) fn point(point_mm: &Point3<f64>, unit: Unit) -> [f64; 3] {
    let decimals = 4 + unit.in_mm().log10().ceil() as i32;
    <[f64; 3]>::from(point_mm.coords).map(|c| to_decimals(c / unit.in_mm(), decimals.max(0)))
}

/// To so many decimals.
pub(crate) fn to_decimals(value: f64, decimals: i32) -> f64 {
    let factor = 10_f64.powi(decimals);
    // The sum turns -0.0, which would print with its sign, into 0.0.
    (value * factor).round() / factor + 0.0
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_unit_keeps_a_tenth_of_a_micrometre() {
        let place = Point3::new(12.345_67, -0.000_01, 0.1);
        assert_eq!(point(&place, Unit::Millimetre), [12.3457, 0.0, 0.1]);
        assert_eq!(point(&place, Unit::Metre), [0.012_345_7, 0.0, 0.000_1]);
        assert_eq!(point(&place, Unit::Micrometre), [12_345.7, 0.0, 100.0]);
        for unit in Unit::ALL {
            let back = point(&place, unit).map(|c| c * unit.in_mm());
            for (there, here) in back.iter().zip(place.iter()) {
                assert!((there - here).abs() <= 0.000_051, "{unit}");
            }
        }
    }

    #[test]
    fn no_zero_has_a_sign() {
        assert_eq!(serde_json::to_string(&figure(-0.000_01)).unwrap(), "0.0");
    }
}
