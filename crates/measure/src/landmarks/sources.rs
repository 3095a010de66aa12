//! What landmarks are looked for on, and what a search comes to.

use super::figures::{Extent, LandmarkName, Seen, Unseen};
use super::ground::Ground;
use crate::border::Border;
use crate::cover::Spot;
use crate::impression::Impression;
use crate::tissue::Defect;
use crate::words::Side;
use nalgebra::Point3;

/// What landmarks are looked for on, and what may spoil them.
pub(crate) struct Sources<'a> {
    pub impression: &'a Impression,
    /// Which triangles are no stray islands.
    pub belongs: &'a [bool],
    /// Loops of vertices at which the scan ends.
    pub loops: &'a [Vec<u32>],
    pub border: Option<&'a Border>,
    pub defects: &'a [Defect],
    pub spots: &'a [Spot],
    pub noise_mm: f64,
}

/// A landmark before its surroundings are looked at.
#[derive(Clone)]
pub(super) struct Sighting {
    pub name: LandmarkName,
    pub side: Option<Side>,
    pub seen: Result<Seen, Unseen>,
    pub expected: Option<Point3<f64>>,
    pub extent: Extent,
}

impl Sighting {
    /// A sighting whose places are local.
    pub(super) fn of_local(
        ground: &Ground<'_>,
        name: LandmarkName,
        side: Option<Side>,
        seen: Result<Seen, Unseen>,
        expected: Option<Point3<f64>>,
    ) -> Self {
        Self {
            name,
            side,
            seen: seen.map(|seen| Seen {
                point: ground.scan(&seen.point),
                ..seen
            }),
            expected: expected.map(|p| ground.scan(&p)),
            extent: Extent::default(),
        }
    }
}
