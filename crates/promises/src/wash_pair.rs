//! A first pass and its wash: one phantom, made a second time with its tissue
//! surface raised by a formula.

use fixtures::impression::scanned;
use measure::pair::{NoPair, PassPair, compare};
use measure::{MeasureSettings, Scanned};
use mesh::Mesh;
use nalgebra::Point3;
use phantom::{Arch, Options, Phantom, PlantedSpot, Pose, SpotTruth};

/// Both passes of one mouth.
pub(crate) struct WashPair {
    /// The first pass.
    pub(crate) first: Phantom,
    /// The same surface, triangulated anew, elsewhere: as if there were no wash.
    pub(crate) wash: Phantom,
    /// The scan of the wash: that surface raised along its normals.
    pub(crate) scan: Mesh,
}

impl WashPair {
    /// The thickness (mm) follows from a point of the wash and the planted spots.
    pub(crate) fn new(
        (arch, seed): (Arch, u64),
        spots: Vec<PlantedSpot>,
        thickness_mm: impl Fn(&Point3<f64>, &[SpotTruth]) -> f64,
    ) -> Self {
        let options = Options {
            arch,
            seed,
            edge_mm: 0.4,
            tray_edge_mm: 0.5,
            noise_sd_mm: 0.02,
            spots,
            ..Options::default()
        };
        let first = Phantom::new(&options);
        let wash = Phantom::new(&Options {
            edge_mm: 0.45,
            pose: Pose::AsMade,
            ..options
        });
        let mesh = &wash.impression;
        let raised = (mesh.vertices().iter())
            .zip(geometry::signed_distance::angle_weighted_normals(mesh))
            .map(|(p, normal)| {
                let on_tissue = wash.truth.is_tissue_side(p);
                let mm = on_tissue.then(|| thickness_mm(p, &wash.truth.spots));
                p + normal.normalize() * mm.unwrap_or(0.0)
            })
            .collect();
        let scan = Mesh::new(raised, mesh.triangles().to_vec(), None).expect("the same triangles");
        Self { first, wash, scan }
    }

    /// What was measured of the first pass, with its tray.
    pub(crate) fn first_pass(&self) -> Scanned {
        measured(&self.first.impression, Some(&self.first.tray))
    }

    /// What was measured of the wash: with its own tray, or without one.
    pub(crate) fn second_pass(&self, has_tray: bool) -> Scanned {
        measured(&self.scan, has_tray.then_some(&self.wash.tray))
    }

    /// One pass compared with the other.
    pub(crate) fn compared(&self, first: &Scanned, wash: &Scanned) -> Result<PassPair, NoPair> {
        compare((&self.first.impression, first), (&self.scan, wash), &|| {})
    }

    /// The points of the wash with those that they were raised from.
    pub(crate) fn raised(&self) -> impl Iterator<Item = (&Point3<f64>, &Point3<f64>)> {
        let made = self.wash.impression.vertices();
        self.scan.vertices().iter().zip(made)
    }
}

fn measured(scan: &Mesh, tray: Option<&Mesh>) -> Scanned {
    let settings = MeasureSettings::default();
    scanned(&fixtures::measured(scan, tray, &settings))
}
