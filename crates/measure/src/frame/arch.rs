//! Upper or lower jaw: is there a palate between the limbs of the crest line?

use super::crest::CrestLine;
use crate::anatomy;
use crate::words::Arch;
use geometry::height_map::HeightMap;
use nalgebra::{Point2, Vector3};

/// The jaw found.
pub(super) struct RecognisedArch {
    /// Which.
    pub arch: Arch,
    /// 0 to 1.
    pub confidence: f64,
}

impl Arch {
    /// The patient's right, given anterior x seating: the seating axis points
    /// up in the upper jaw and down in the lower.
    pub(crate) fn right(self, anterior_x_seating: Vector3<f64>) -> Vector3<f64> {
        match self {
            Self::Maxillary => anterior_x_seating,
            Self::Mandibular => -anterior_x_seating,
        }
    }
}

/// Recognises the jaw by the share of the space between the limbs that holds
/// surface above the crest line: a palate fills it, a tongue leaves it empty.
/// By area, so that neither a hole in a palate nor a bar across a lower tray
/// decides. `crest` is centred on `centre` of the map.
pub(super) fn recognised(
    map: &HeightMap,
    crest: &CrestLine,
    centre: Vector3<f64>,
) -> RecognisedArch {
    let points = crest.points();
    let last = points.len() - 1;
    let back = points[0].y.max(points[last].y);
    let front = points.iter().map(|p| p.y).fold(f64::MIN, f64::max);
    let (mut between, mut covered) = (0, 0);
    let mut y = back;
    while y < front {
        let (low, high) = limbs_at(points.iter().map(|p| p.xy()), y);
        let mut x = low;
        while x < high {
            let place = Point2::new(x, y);
            let near = &points[crest.nearest(place)];
            if (near.xy() - place).norm() > anatomy::PALATE_FROM_CREST_MM {
                between += 1;
                let height = map.at(place + centre.xy());
                if height.is_some_and(|h| h - centre.z > near.z - anatomy::PALATE_BELOW_CREST_MM) {
                    covered += 1;
                }
            }
            x += 1.0;
        }
        y += 1.0;
    }
    let share = f64::from(covered) / f64::from(between.max(1));
    RecognisedArch {
        arch: if share > 0.5 {
            Arch::Maxillary
        } else {
            Arch::Mandibular
        },
        confidence: if between == 0 {
            0.0
        } else {
            (2.0 * share - 1.0).abs()
        },
    }
}

/// Least x on the right limb and greatest on the left, near a line across.
fn limbs_at(points: impl Iterator<Item = Point2<f64>>, y: f64) -> (f64, f64) {
    const NEAR_MM: f64 = 1.5;
    let (mut low, mut high) = (0.0, 0.0);
    for p in points.filter(|p| (p.y - y).abs() < NEAR_MM) {
        low = f64::min(low, p.x);
        high = f64::max(high, p.x);
    }
    (low, high)
}
