//! Colours as places in CIELAB, in which a change of the light scales.

use nalgebra::Vector3;
use palette::{FromColor, Lab, Srgb};

/// A colour as a place in CIELAB with L* + 16 for L*: a scaling of the light
/// scales the vector.
pub(super) fn of_srgb(colour: [u8; 3]) -> Vector3<f64> {
    let lab = Lab::from_color(Srgb::from(colour).into_format::<f64>());
    Vector3::new(lab.l + 16.0, lab.a, lab.b)
}

pub(super) fn to_srgb(colour: &Vector3<f64>) -> [u8; 3] {
    let lab: Lab<palette::white_point::D65, f64> = Lab::new(colour.x - 16.0, colour.y, colour.z);
    let srgb = Srgb::from_color(lab).into_format::<u8>();
    [srgb.red, srgb.green, srgb.blue]
}

#[cfg(test)]
mod tests {
    use super::*;

    // CIE 15: white is L* 100, a* 0, b* 0; the sRGB primary red in D65 is
    // L* 53.24, a* 80.09, b* 67.20 (widely tabulated; value from memory).
    #[test]
    fn known_colours_are_where_they_are_tabulated() {
        let white = of_srgb([255; 3]);
        assert!(
            (white - Vector3::new(116.0, 0.0, 0.0)).norm() < 0.02,
            "{white}"
        );
        let red = of_srgb([255, 0, 0]);
        assert!(
            (red - Vector3::new(69.24, 80.09, 67.20)).norm() < 0.05,
            "{red}"
        );
        assert_eq!(to_srgb(&of_srgb([12, 130, 200])), [12, 130, 200]);
    }

    /// Half the light, linearly: all three shrink by the cube root of two.
    #[test]
    fn a_change_of_the_light_scales_the_vector() {
        let linear = |c: f64| {
            let lab = Lab::from_color(palette::LinSrgb::new(0.6 * c, 0.3 * c, 0.45 * c));
            Vector3::<f64>::new(lab.l + 16.0, lab.a, lab.b)
        };
        let (full, half) = (linear(1.0), linear(0.5));
        assert!((half * 2f64.cbrt() - full).norm() < 1e-6);
    }
}
