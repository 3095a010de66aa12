//! Pure geometry of an impression: no file is read here, nothing printed, and
//! no acceptance limit known.
//!
//! [`measure`] takes an impression scan (and the scan of the empty tray) and
//! gives an [`ImpressionMeasurement`]: plain data, lengths in mm, points in the
//! impression's own scan coordinates.

pub mod artefact;
pub mod border;
pub mod cover;
pub mod defects;
pub mod facing;
mod figures;
pub mod fit;
pub mod frame;
mod glance;
mod height_map;
pub mod jaw_relation;
pub mod landmarks;
pub mod layers;
mod noise;
mod parts;
pub mod passes;
mod places;
mod polyline;
pub mod regions;
pub mod registration;
pub mod repeats;
pub mod sampling;
mod scan_quality;
mod spots;
pub mod tray_colour;
mod tray_cover;
pub mod tray_fit;
mod tray_mismatch;
mod two_sided;
pub mod wash;
mod zones;

pub use border::{
    Border, BorderPart, Dip, DipKind, Measured, Missing, Reading, Section, SectionPoint, Station,
};
pub use defects::{Defect, DefectKind, TissueSurface, ZoneScan};
pub use figures::*;
pub use glance::{Glance, glance};
pub use noise::noise_mm;
pub use tray_colour::TrayColour;
pub use tray_fit::TrayFit;
pub use wash::Wash;

use facing::Turned;
use frame::FoundFrame;
use mesh::{Integrity, Mesh, Topology};
use regions::Regions;
use zones::ZoneMap;

/// Scans coarser than this (median edge, mm) give no cover: a thin place is
/// then easily narrower than a triangle.
pub const COARSEST_EDGE_MM: f64 = 1.0;

/// Where nearly all of the tissue surface is nearer to the tray than this, mm,
/// there is no material: scans of one tray differ by less.
const EMPTY_TRAY_MM: f64 = 0.2;

/// Steps of measuring, for progress.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Stage {
    /// How triangles hang together.
    Topology,
    /// Which way tissue, front and right lie.
    Frame,
    /// Tissue surface told from outer surface.
    Regions,
    /// The tray scan laid in its place.
    Registration,
    /// Cover over the tissue surface.
    Cover,
    /// Patches of little cover.
    Spots,
    /// The border and its sections.
    Border,
    /// Defects of the tissue surface, and how well it was scanned.
    Tissue,
    /// Landmarks, and what lies round them.
    Landmarks,
}

impl std::fmt::Display for Stage {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(match self {
            Self::Topology => "joining triangles",
            Self::Frame => "finding the impression frame",
            Self::Regions => "telling tissue surface from outer surface",
            Self::Registration => "registering the tray scan",
            Self::Cover => "measuring cover",
            Self::Spots => "outlining show-through and thin places",
            Self::Border => "following the border",
            Self::Tissue => "looking for voids, nodules, folds and holes",
            Self::Landmarks => "looking for landmarks",
        })
    }
}

/// Measures one impression, in any pose, and its cover where the scan of the
/// empty tray (any pose of its own) is given. Both meshes are in mm. The
/// outcome does not depend on the number of threads.
#[must_use]
pub fn measure(
    impression: &Mesh,
    tray: Option<&Mesh>,
    settings: &MeasureSettings,
    progress: &(dyn Fn(Stage) + Sync),
) -> ImpressionMeasurement {
    progress(Stage::Topology);
    // A tray can be made ready while the impression is looked at.
    let (surface, tray) = rayon::join(
        || Surface::of(impression),
        || tray.map(tray_cover::PreparedTray::of),
    );
    progress(Stage::Frame);
    let found = match parts::two_scans(&surface.mesh, &surface.topology)
        .map_or_else(|| frame::find(&surface.mesh), Err)
    {
        Ok(found) => found,
        Err(what) => return not_an_impression(surface, what),
    };
    progress(Stage::Regions);
    let (impression, heights) = rayon::join(
        || Impression::of(&surface, found),
        || noise::Heights::of(&surface.mesh),
    );
    let noise_mm = heights.noise_mm(0..surface.mesh.vertices().len());
    let noise = noise_mm.unwrap_or(0.0);
    progress(Stage::Registration);
    let placed = tray
        .as_ref()
        .ok_or(NotMeasured::NoTray)
        .and_then(|tray| Ok((tray, registered(&impression, tray)?)));
    if let Err(NotMeasured::NotAnImpression(what)) = placed {
        return not_an_impression(surface, what);
    }
    progress(Stage::Border);
    let local_tray = placed
        .as_ref()
        .ok()
        .map(|(tray, placed)| placed.in_place(tray, noise));
    let belongs = parts::main_parts(&surface);
    let border = border::measure(
        &impression,
        &belongs,
        local_tray.as_ref(),
        noise,
        settings.flange_depth_mm,
    );
    progress(Stage::Cover);
    let cover = placed
        .as_ref()
        .map_err(Clone::clone)
        .and_then(|(tray, placed)| tray_cover::over_tissue(&impression, tray, placed, noise));
    let cover = match (cover, settings.tray_thickness, &border) {
        (Err(NotMeasured::NoTray), Some(thickness), Ok(border)) => {
            two_sided::cover(&impression, border, thickness, noise)
        }
        (cover, ..) => cover,
    };
    let tray_fit = local_tray
        .as_ref()
        .zip(cover.as_ref().ok())
        .map(|(tray, cover)| tray_fit::measure(&impression, tray, cover, border.as_ref().ok()));
    if cover.as_ref().is_ok_and(|c| c.p95_mm <= EMPTY_TRAY_MM) {
        return not_an_impression(surface, NotAnImpression::EmptyTray);
    }
    progress(Stage::Spots);
    let stops = match (&placed, &cover) {
        (Ok((_, placed)), Ok(cover)) => tray_cover::stops(&impression, placed, cover, settings),
        _ => Vec::new(),
    };
    let (colour, of_colour) = match tray_colour::read(&impression, cover.as_ref().ok(), settings) {
        Some(Ok((colour, spots))) => (Some(Ok(colour)), spots),
        Some(Err(why)) => (Some(Err(why)), Vec::new()),
        None => (None, Vec::new()),
    };
    let spots = match &cover {
        Ok(cover) => {
            let mut spots = tray_cover::spots(&impression, cover, &stops, settings);
            spots.extend(of_colour);
            spots
        }
        Err(_) => of_colour,
    };
    progress(Stage::Tissue);
    let tissue = defects::on_tissue(&impression, &surface, &heights);
    progress(Stage::Landmarks);
    let landmarks = landmarks::all(
        &landmarks::Sources {
            impression: &impression,
            belongs: &belongs,
            loops: surface.topology.boundary_loops(),
            border: border.as_ref().ok(),
            defects: tissue.as_ref().map_or(&[], |t| &t.defects),
            spots: &spots,
            noise_mm: noise,
        },
        &settings.marks,
    );
    ImpressionMeasurement {
        places: places::of_vertices(&impression, border.as_ref().ok()),
        landmarks,
        has_outer_surface: Some(impression.regions.has_outer_surface()),
        wash: None,
        colour,
        tray_fit,
        frame: Ok(impression.frame),
        noise_mm,
        cover,
        spots,
        stops: stops.into_iter().map(|s| s.reading).collect(),
        border,
        tissue,
        integrity: surface.integrity,
        turned: surface.turned,
    }
}

/// Where the tray lies, if the impression's scan can tell.
fn registered(
    impression: &Impression,
    tray: &tray_cover::PreparedTray,
) -> Result<tray_cover::PlacedTray, NotMeasured> {
    if impression.edge_mm > COARSEST_EDGE_MM {
        return Err(NotMeasured::TooCoarse {
            median_edge_mm: impression.edge_mm,
        });
    }
    if !impression.regions.has_outer_surface() {
        return Err(NotMeasured::NoOuterSurface);
    }
    tray_cover::place(impression, tray)
}

/// What is left to say of a scan that shows something else.
fn not_an_impression(surface: Surface, what: NotAnImpression) -> ImpressionMeasurement {
    let why = NotMeasured::NotAnImpression(what);
    ImpressionMeasurement {
        integrity: surface.integrity,
        turned: surface.turned,
        frame: Err(why.clone()),
        has_outer_surface: None,
        wash: None,
        colour: None,
        tray_fit: None,
        noise_mm: None,
        cover: Err(why.clone()),
        spots: Vec::new(),
        stops: Vec::new(),
        border: Err(why.clone()),
        tissue: Err(why),
        landmarks: Vec::new(),
        places: Vec::new(),
    }
}

/// A mesh with what is known of it without knowing what it shows.
pub(crate) struct Surface {
    pub mesh: Mesh,
    pub topology: Topology,
    pub integrity: Integrity,
    pub turned: Turned,
}

impl Surface {
    /// Triangles that face the wrong way are turned.
    pub fn of(mesh: &Mesh) -> Self {
        let topology = Topology::of(mesh);
        let integrity = Integrity::of(mesh, &topology);
        let (mesh, turned) = facing::righted(mesh, &topology);
        Self {
            topology: if turned.against_neighbours > 0 {
                Topology::of(&mesh)
            } else {
                topology
            },
            mesh,
            integrity,
            turned,
        }
    }
}

/// An impression in local coordinates with its parts told apart.
pub(crate) struct Impression {
    pub frame: Frame,
    pub local: Mesh,
    pub edge_mm: f64,
    pub zones: ZoneMap,
    pub regions: Regions,
}

impl Impression {
    fn of(surface: &Surface, found: FoundFrame) -> Self {
        let local = surface.mesh.moved(&found.frame.local_from_scan());
        let regions = regions::split(
            &local,
            &surface.topology,
            &found.crest,
            found.frame.arch,
            surface.integrity.median_edge,
        );
        Self {
            zones: ZoneMap::new(found.crest, found.frame.arch),
            frame: found.frame,
            local,
            edge_mm: surface.integrity.median_edge,
            regions,
        }
    }

    /// The tissue surface that each vertex stands for, mm²: a third of the
    /// tissue triangles round it, 0 off the tissue surface.
    pub(crate) fn tissue_weights(&self) -> Vec<f64> {
        let mut weights = vec![0.0; self.local.vertices().len()];
        for (t, corners) in self.local.triangles().iter().enumerate() {
            if self.regions.is_tissue[t] {
                let third = self.local.area_vector(t).norm() / 3.0;
                for &v in corners {
                    weights[v as usize] += third;
                }
            }
        }
        weights
    }
}
