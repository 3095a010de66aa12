//! The cut between the parts of an impression that was cut apart: nothing is judged there.

use crate::border::{Border, Missing};
use crate::tissue::TissueSurface;
use mesh::{Mesh, SpatialIndex};
use nalgebra::Point3;
use std::sync::Arc;

/// A cut tears and bends what lies so near to it, mm. Common practice, no source.
const BESIDE_MM: f64 = 1.5;

/// Where an impression was cut apart.
#[derive(Debug, Clone, PartialEq)]
pub struct Cut {
    /// The strips over the cuts, scan coordinates, mm.
    pub strip: Arc<Mesh>,
    /// Median width of the cuts, mm.
    pub width_mm: f64,
}

/// Places near a cut, found quickly.
pub(crate) struct NearCut(SpatialIndex);

impl NearCut {
    pub(crate) fn of(cut: &Cut) -> Self {
        Self(SpatialIndex::new(&cut.strip))
    }

    /// Whether each place (scan coordinates, mm) lies on a cut or beside it.
    pub(crate) fn holds(&self, places: &[Point3<f64>]) -> Vec<bool> {
        let nearest = self.0.nearest_many(places, BESIDE_MM);
        nearest.iter().map(Option::is_some).collect()
    }

    /// The border without the figures of stations at a cut.
    pub(crate) fn off_border(&self, mut border: Border) -> Border {
        let places: Vec<Point3<f64>> = border.stations.iter().map(|s| s.point).collect();
        let at_cut = self.holds(&places);
        for (station, _) in border.stations.iter_mut().zip(at_cut).filter(|(_, at)| *at) {
            station.without_figures(Missing::AtTheCut);
        }
        border
    }

    /// The tissue surface without defects that reach a cut.
    pub(crate) fn off_tissue(&self, mut tissue: TissueSurface) -> TissueSurface {
        (tissue.defects).retain(|defect| {
            let places = [&defect.outline[..], &[defect.centre]].concat();
            !self.holds(&places).contains(&true)
        });
        tissue
    }
}
