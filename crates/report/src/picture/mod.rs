//! Pictures of an impression, drawn without a display: whole views, and a close
//! one of each finding. Marks and words are laid over them by [`crate::page`].

mod camera;
mod clearance;
mod paint;
mod raster;
mod runs;
mod solid;
mod tray;

pub use camera::{Camera, View};
pub use clearance::{CLEARANCE_ENDS_MM, clearance};
pub use solid::{Solid, THICKNESS_FROM_MM, THICKNESS_STEP_MM};

use crate::result::CoverMap;
use check::{CheckedCase, CheckedImpression};
use measure::Frame;
use mesh::Mesh;
use nalgebra::{Point3, Vector3};
use raster::{Depths, Raster};
use rayon::prelude::*;
use runs::Run;
use std::io;

/// A whole view is no wider and no higher than this, px.
const VIEW_PX: [usize; 2] = [800, 700];
/// A close view, px.
const CLOSE_PX: [usize; 2] = [360, 300];
/// As much of a close view as tells whether its middle shows, px.
const MIDDLE_PX: [usize; 2] = [4, 4];
/// Scale of a close view: 24 mm across.
const CLOSE_PX_PER_MM: f64 = 15.0;
/// How far a close view may turn from square onto the surface (0) to along the
/// seating axis (1), in the order in which that is tried.
const TILTS: [f64; 5] = [0.0, 0.25, 0.4, 0.55, 0.7];
/// Findings beyond these, most urgent first, get no close view of their own: it
/// keeps the report of a very bad scan small enough to be sent.
pub const MOST_CLOSE: usize = 40;

/// All pictures of a case.
pub struct Pictures {
    /// Of each impression; empty where its frame was not found.
    pub views: Vec<Vec<Picture>>,
    /// The tissue side of each wash that was measured over its first pass,
    /// coloured by its thickness.
    pub washes: Vec<Option<Picture>>,
    /// The inside of each impression's tray, where it is to be relieved.
    pub trays: Vec<Option<Picture>>,
    /// Of each finding; `None` for one without a place, and beyond the first
    /// [`MOST_CLOSE`].
    pub close: Vec<Option<Picture>>,
    /// The surface of each impression, to be turned; `None` where its frame was not found.
    pub solids: Vec<Option<Solid>>,
}

/// One picture.
pub struct Picture {
    /// What it is looked at by.
    pub camera: Camera,
    /// Where one looks from; `None` for a close view.
    pub view: Option<View>,
    /// What is up, in words.
    pub up: &'static str,
    /// Whether the patient's right is on the right of the picture.
    pub right_is_right: bool,
    /// The bytes of a PNG file.
    pub png: Vec<u8>,
    depths: Depths,
}

impl Picture {
    /// The letters of the patient's sides on the left and the right of the picture.
    pub fn sides(&self) -> [&'static str; 2] {
        if self.right_is_right {
            ["L", "R"]
        } else {
            ["R", "L"]
        }
    }

    /// Where a point of the surface (mm) shows, px; `None` where other surface
    /// hides it.
    pub fn shown(&self, point: &Point3<f64>) -> Option<[f64; 2]> {
        let [x, y, _] = self.camera.place(point);
        self.depths.shows(&self.camera, point).then_some([x, y])
    }
}

/// Draws all pictures of a case.
///
/// # Errors
/// When a PNG file cannot be encoded.
#[cfg(test)]
pub fn pictures(checked: &CheckedCase) -> Result<Pictures, io::Error> {
    pictures_watched(checked, &|| {})
}

/// Draws all pictures of a case; `look` is called before each, and may unwind.
///
/// # Errors
/// When a PNG file cannot be encoded.
pub fn pictures_watched(
    checked: &CheckedCase,
    look: &(dyn Fn() + Sync),
) -> Result<Pictures, io::Error> {
    let surfaces: Vec<Option<PaintedSurface<'_>>> = (0..checked.impressions.len())
        .into_par_iter()
        .map(|number| PaintedSurface::of(checked, number))
        .collect();
    let views = surfaces.par_iter().map(|surface| match surface {
        Some(surface) => surface.views(look),
        None => Ok(Vec::new()),
    });
    let views: Vec<Vec<Picture>> = views.collect::<Result<_, _>>()?;
    let findings = &checked.judged.findings;
    let close = findings.par_iter().enumerate().map(|(number, finding)| {
        look();
        let surface = finding.impression.and_then(|n| surfaces[n].as_ref());
        surface
            .zip(finding.place.as_ref())
            .filter(|_| number < MOST_CLOSE)
            .map(|(surface, place)| surface.close(&place.at))
            .transpose()
    });
    let close = close.collect::<Result<_, _>>()?;
    let washes = (0..checked.impressions.len())
        .into_par_iter()
        .map(|number| {
            look();
            PaintedSurface::of_wash(checked, number)
                .and_then(|s| s.tissue_side())
                .transpose()
        });
    let trays = (0..checked.impressions.len())
        .into_par_iter()
        .map(|number| {
            look();
            tray::inside(checked, number)
        });
    let solids = (0..checked.impressions.len())
        .into_par_iter()
        .map(|number| {
            look();
            Solid::of(checked, number)
        });
    Ok(Pictures {
        views,
        trays: trays.collect::<Result<_, _>>()?,
        solids: solids.collect(),
        washes: washes.collect::<Result<_, _>>()?,
        close,
    })
}

/// Where values lie along a scale between two ends, 0 to 1; NaN where they are not known.
fn along([from_mm, to_mm]: [f64; 2], values: &[Option<f64>]) -> Vec<f32> {
    let share = |mm: f64| ((mm - from_mm) / (to_mm - from_mm)) as f32;
    let values = values.iter();
    values.map(|value| value.map_or(f32::NAN, share)).collect()
}

/// A whole view of an impression onto its tissue side, no larger than `most`,
/// px; `None` where its frame was not found.
///
/// # Errors
/// When the PNG file cannot be encoded.
pub fn tissue_side(
    checked: &CheckedCase,
    number: usize,
    most: [usize; 2],
) -> Result<Option<Picture>, io::Error> {
    let Some(surface) = PaintedSurface::of(checked, number) else {
        return Ok(None);
    };
    let cameras = Camera::of_views(surface.mesh.vertices(), surface.frame, most);
    let camera = cameras.and_then(|cameras| cameras.into_iter().next());
    camera
        .map(|camera| surface.drawn(camera, Some(View::ALL[0])))
        .transpose()
}

/// An impression, ready to be drawn.
struct PaintedSurface<'a> {
    mesh: &'a Mesh,
    frame: &'a Frame,
    runs: Vec<Run>,
    normals: Vec<Vector3<f32>>,
    /// Along the scale of cover or of a wash, 0 to 1; NaN where it is not known.
    shares: Option<Vec<f32>>,
    /// Whether the file's triangles face inward.
    inside_out: bool,
}

impl<'a> PaintedSurface<'a> {
    fn of(checked: &'a CheckedCase, number: usize) -> Option<Self> {
        let CheckedImpression { scan, .. } = &checked.impressions[number];
        let measurement = checked.impressions[number].measured()?;
        let scale = CoverMap::of_cover(checked, number);
        let cover = measurement.cover.as_ref().ok();
        let normals = scan.mesh.vertex_normals();
        Some(Self {
            mesh: &scan.mesh,
            frame: &measurement.frame,
            runs: Run::all_of(&scan.mesh),
            normals: normals.iter().map(|n| n.cast()).collect(),
            shares: cover.map(|cover| along(scale.ends_mm(), &cover.at_vertex_mm)),
            inside_out: measurement.scan.turned.whole,
        })
    }

    /// The same, coloured by the thickness of a wash over its first pass.
    fn of_wash(checked: &'a CheckedCase, number: usize) -> Option<Self> {
        let wash = checked.wash_of(number)?;
        let scale = CoverMap::of_wash(checked, number);
        Some(Self {
            shares: Some(along(scale.ends_mm(), &wash.at_vertex_mm)),
            ..Self::of(checked, number)?
        })
    }

    /// `None` where nothing is to be seen.
    fn tissue_side(&self) -> Option<Result<Picture, io::Error>> {
        self.seen_from(View::Tissue)
    }

    /// `None` where nothing is to be seen.
    fn seen_from(&self, view: View) -> Option<Result<Picture, io::Error>> {
        let cameras = Camera::of_views(self.mesh.vertices(), self.frame, VIEW_PX)?;
        let mut views = View::ALL.into_iter().zip(cameras);
        let (_, camera) = views.find(|(other, _)| *other == view)?;
        Some(self.drawn(camera, Some(view)))
    }

    fn views(&self, look: &(dyn Fn() + Sync)) -> Result<Vec<Picture>, io::Error> {
        let cameras = Camera::of_views(self.mesh.vertices(), self.frame, VIEW_PX);
        let cameras = cameras.unwrap_or_default();
        View::ALL
            .par_iter()
            .zip(cameras)
            .map(|(&view, camera)| {
                look();
                self.drawn(camera, Some(view))
            })
            .collect()
    }

    /// A close view of a place, square onto the surface there; where something
    /// stands before it, from further toward the tissue side.
    fn close(&self, at: &Point3<f64>) -> Result<Picture, io::Error> {
        let outward = self.outward(at);
        let from = TILTS.map(|tilt| {
            let toward = outward * (1.0 - tilt) + self.frame.seating * tilt;
            toward.try_normalize(1e-3).unwrap_or(self.frame.seating)
        });
        let camera = |toward: &Vector3<f64>, size| {
            Camera::near(at, toward, self.frame, CLOSE_PX_PER_MM, size)
        };
        let is_shown = |toward: &&Vector3<f64>| {
            let camera = camera(toward, MIDDLE_PX);
            Raster::of(self.mesh, &self.runs, &camera)
                .into_depths()
                .shows(&camera, at)
        };
        let toward = from.iter().find(is_shown).unwrap_or(&from[0]);
        self.drawn(camera(toward, CLOSE_PX), None)
    }

    /// Mean direction of the surface around a place: of that on which the place
    /// lies, not of the other face of a thin flange.
    fn outward(&self, at: &Point3<f64>) -> Vector3<f64> {
        const AROUND_MM: f64 = 2.0;
        let near: Vec<(f64, Vector3<f64>)> = (self.mesh.vertices().iter().zip(&self.normals))
            .map(|(p, normal)| (nalgebra::distance_squared(p, at), normal.cast::<f64>()))
            .filter(|(distance, _)| *distance < AROUND_MM * AROUND_MM)
            .collect();
        let nearest = near.iter().min_by(|a, b| a.0.total_cmp(&b.0));
        let here = nearest.map_or(self.frame.seating, |(_, normal)| *normal);
        let sum: Vector3<f64> = (near.iter().map(|(_, normal)| normal))
            .filter(|normal| normal.dot(&here) > 0.3)
            .sum();
        let outward = if self.inside_out { -sum } else { sum };
        outward.try_normalize(1e-6).unwrap_or(self.frame.seating)
    }

    fn drawn(&self, camera: Camera, view: Option<View>) -> Result<Picture, io::Error> {
        let raster = Raster::of(self.mesh, &self.runs, &camera);
        let toward = camera.toward().cast::<f32>();
        let pixels: Vec<u8> = (raster.pixels())
            .map(|pixel| {
                raster.seen(self.mesh, pixel).map_or(paint::PAPER, |seen| {
                    let ([a, b, c], [u, v, w]) = (seen.corners, seen.weights);
                    let normal = self.normals[a] * u + self.normals[b] * v + self.normals[c] * w;
                    let facing = normal.try_normalize(0.0).map_or(1.0, |n| n.dot(&toward));
                    let share = (self.shares.as_ref())
                        .map(|shares| shares[a] * u + shares[b] * v + shares[c] * w);
                    let share = share.filter(|share| !share.is_nan());
                    paint::index(facing, share, pixel)
                })
            })
            .collect();
        Ok(Picture {
            view,
            up: camera.up_in_words(self.frame),
            right_is_right: camera.is_to_the_right(&self.frame.right),
            png: paint::png(camera.size, &pixels)?,
            camera,
            depths: raster.into_depths(),
        })
    }
}
