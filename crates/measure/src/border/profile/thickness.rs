//! Thickness of a flange: the distance between its faces below the border.

use super::find::Profile;
use super::lines::{distance, straight};
use crate::border::figures::{Measured, Missing};
use geometry::section::SectionPoint;

/// A section 13 degrees off square shows a wall one part in forty thicker; which way
/// is square to a curved border is not known better (k = 2).
const ASKEW: f64 = 0.025;

/// A face less steep than 45 degrees is the floor of the trough, not the wall of a
/// flange: width gained for each mm of height.
const WALL_MOST_RUN: f64 = 1.0;

impl Profile {
    /// Distance between the faces, square to the seating axis, `depth_mm` below
    /// the border; with the two points.
    pub(in crate::border) fn thickness(
        &self,
        depth_mm: f64,
        noise_mm: f64,
        has_outer_surface: bool,
    ) -> Result<(Measured, [SectionPoint; 2]), Missing> {
        if self.scan_ends {
            return Err(Missing::ScanEnds);
        }
        let level = self.border[1] - depth_mm;
        let tissue = crossing(&self.tissue, level)
            .filter(|tissue| tissue.run <= WALL_MOST_RUN)
            .ok_or(Missing::FlangeTooLow)?;
        let outer = crossing(&self.outer, level).ok_or(if has_outer_surface {
            Missing::NoSurface
        } else {
            Missing::TissueSideOnly
        })?;
        // The level moves with the border point; a face that is not upright
        // turns that into width.
        let of_level = self.border_noise_mm * (tissue.run + outer.run);
        let mm = (outer.at[0] - tissue.at[0]).abs();
        let of_noise = noise_mm * (tissue.noise * tissue.noise + outer.noise * outer.noise).sqrt();
        Ok((
            Measured {
                mm,
                uncertainty_mm: (2.0 * of_level.hypot(of_noise)).hypot(ASKEW * mm),
            },
            [tissue.at, outer.at],
        ))
    }
}

/// Where a face first passes below a level.
struct Crossing {
    at: SectionPoint,
    /// Width gained for each mm of height.
    run: f64,
    /// Noise of the place for noise of 1 on each point.
    noise: f64,
}

/// The crossing from the line through what lies within 0.4 mm of it.
fn crossing(face: &[SectionPoint], level: f64) -> Option<Crossing> {
    const FIT_MM: f64 = 0.4;
    let pair = face
        .windows(2)
        .find(|pair| pair[0][1] >= level && pair[1][1] < level)?;
    let share = (pair[0][1] - level) / (pair[0][1] - pair[1][1]);
    let raw = [pair[0][0] + share * (pair[1][0] - pair[0][0]), level];
    let near: Vec<SectionPoint> = face
        .iter()
        .filter(|p| distance(**p, raw) <= FIT_MM)
        .map(|p| [p[1] - level, p[0] - raw[0]])
        .collect();
    let (at, run) = match straight(&near) {
        Some([a, b]) if a.abs() < FIT_MM => ([raw[0] + a, level], b.abs().min(2.0)),
        _ => (raw, 1.0),
    };
    Some(Crossing {
        at,
        run,
        noise: run.hypot(1.0) / (near.len().max(1) as f64).sqrt(),
    })
}

#[cfg(test)]
mod tests {
    use super::super::find::TopPiece;
    use super::*;

    /// A border at the origin: an upright outer face 4 mm beside a tissue face that falls
    /// upright for `wall_mm`, then at 17 degrees along the floor of the trough.
    fn profile(wall_mm: f64) -> Profile {
        let wall = (0..)
            .map(|k| 0.1 * f64::from(k))
            .take_while(|w| *w <= wall_mm);
        let floor = (1..100).map(|k| 0.1 * f64::from(k));
        let mut tissue: Vec<SectionPoint> = wall.map(|w| [0.0, -w]).collect();
        tissue.extend(floor.map(|u| [-u, -wall_mm - 0.3 * u]));
        Profile {
            border: [0.0, 0.0],
            border_noise_mm: 0.01,
            scan_ends: false,
            tissue,
            outer: (0..100).map(|k| [4.0, -0.1 * f64::from(k)]).collect(),
            top: TopPiece {
                line: 0,
                point: 0,
                tissue_is_before: true,
            },
        }
    }

    #[test]
    fn the_floor_of_the_trough_is_no_wall_of_a_flange() {
        let thickness = |wall_mm| profile(wall_mm).thickness(3.0, 0.01, true);
        let high = thickness(5.0).expect("a wall 5 mm high").0;
        assert!((high.mm - 4.0).abs() < 0.01, "{high:?}");
        assert_eq!(thickness(2.0).err(), Some(Missing::FlangeTooLow));
    }
}
