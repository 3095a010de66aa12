//! The impression frame: which way tissue, front and right lie, and which jaw
//! it is, from the surface alone and in any pose.
//!
//! Seen along the seating axis from the tissue side, an impression shows a
//! U-shaped trough; from any other side it does not. So each likely axis is
//! scored by the trough seen along it; the best is turned until it stands
//! square to the plane of the crest line. The plane of symmetry then gives the
//! anterior axis, the open end of the U its sense, and the presence of a
//! palate the jaw.

mod arch;
mod axes;
mod bottoms;
mod candidates;
mod crest;
mod figures;
mod form;
mod symmetry;
mod teeth;

pub use crest::CrestLine;
pub(crate) use crest::has_both_limbs;
pub use figures::Frame;

use crate::anatomy;
use crate::not_an_impression::NotAnImpression;
use crate::words::Arch;
use axes::rotation_to;
use candidates::Candidate;
use geometry::height_map::{FINE_CELL_MM, HeightMap};
use mesh::Mesh;
use nalgebra::{Point3, UnitVector3};
use rayon::prelude::*;

/// A trough seen from behind that is so many times larger than the one seen
/// from the front makes a ridge of the arch. Below that, the back of a scan
/// whose underside is missing may be all that is seen.
const MOST_SEEN_FROM_BEHIND: f64 = 3.0;

/// A trough smaller than this may have been missed in part, mm³. Of 40 sound impressions the
/// smallest measured 2 580; of thirteen under a palate less than 4.1 mm deep, the largest 1 940
/// (invented impressions; own choice).
const SMALL_TROUGH_MM3: f64 = 2000.0;
/// A wide trough was missed if it is so many times larger (own choice: of the 40, 1.97 times at
/// most; of the thirteen all but two more than this).
const TIMES_LARGER_IF_WIDE: f64 = 2.3;

/// A frame with the crest line it rests on.
#[derive(Debug, Clone)]
pub struct FoundFrame {
    /// The frame in scan coordinates.
    pub frame: Frame,
    /// The crest line in local coordinates.
    pub crest: CrestLine,
    /// What the scan is, where its wall is too thin for an impression.
    pub shell: Option<NotAnImpression>,
}

impl FoundFrame {
    /// The frame of the jaw that was declared, where the shape hardly tells which it
    /// is: a flat palate has little over the crest line.
    #[must_use]
    pub fn of_declared(mut self, declared: Option<Arch>) -> Self {
        const UNSURE_BELOW: f64 = 0.3;
        let frame = &mut self.frame;
        let unsure = frame.arch_confidence < UNSURE_BELOW;
        if let Some(jaw) = declared.filter(|jaw| unsure && *jaw != frame.arch) {
            frame.arch = jaw;
            frame.right = jaw.right(frame.anterior.cross(&frame.seating));
        }
        self
    }

    /// The frame of an impression: not of an empty tray or a base.
    ///
    /// # Errors
    /// When the wall is too thin for an impression.
    pub fn of_impression(self) -> Result<Self, NotAnImpression> {
        match self.shell {
            Some(what) => Err(what),
            None => Ok(self),
        }
    }
}

/// Axes along which a trough goes round an arch, the largest trough first. Where hardly any
/// is seen, a wider one is looked for: toward a shallow palate a trough rises slowly.
fn seen_along(mesh: &Mesh, axes: &[UnitVector3<f64>]) -> Vec<Candidate> {
    let settled = |half_width_mm: f64| -> Vec<Candidate> {
        (axes.par_iter())
            .filter_map(|&axis| candidates::settled(mesh, axis, half_width_mm))
            .collect()
    };
    let mut found = settled(anatomy::TROUGH_HALF_WIDTH_MM);
    if largest_trough_mm3(&found) < SMALL_TROUGH_MM3 {
        let wide = settled(anatomy::WIDE_TROUGH_HALF_WIDTH_MM);
        if largest_trough_mm3(&wide) > TIMES_LARGER_IF_WIDE * largest_trough_mm3(&found) {
            found = wide;
        }
    }
    found.sort_by(|a, b| b.trough_mm3.total_cmp(&a.trough_mm3));
    found
}

fn largest_trough_mm3(found: &[Candidate]) -> f64 {
    let sizes = found.iter().map(|candidate| candidate.trough_mm3);
    sizes.fold(0.0, f64::max)
}

/// Finds the frame of an impression, or of an empty tray (which has a trough
/// too). The mesh is in mm.
///
/// # Errors
/// When the surface is of the wrong size, shows no arch-shaped trough, or shows
/// it from behind.
pub fn find(mesh: &Mesh) -> Result<FoundFrame, NotAnImpression> {
    frame_of(mesh).map_err(|what| match what {
        NotAnImpression::Positive | NotAnImpression::Cast | NotAnImpression::NoTrough => {
            teeth::on_what_is_none(mesh).unwrap_or(what)
        }
        _ => what,
    })
}

fn frame_of(mesh: &Mesh) -> Result<FoundFrame, NotAnImpression> {
    let longest_mm = mesh.bounds().map_or(0.0, |(low, high)| (high - low).max());
    // The box of a turned scan is larger than the scan, by at most the square
    // root of three; the exact test is made in the frame.
    if longest_mm > anatomy::PLAUSIBLE_LENGTH_MM.end() * 1.5
        || longest_mm < anatomy::PLAUSIBLE_LENGTH_MM.start() / 1.5
    {
        return Err(NotAnImpression::WrongSize { longest_mm });
    }
    let axes = candidates::likely_axes(mesh);
    let found = seen_along(mesh, &axes);
    let largest_mm3 = largest_trough_mm3(&found);
    if found.is_empty() {
        let is_positive = candidates::stands_up(mesh);
        let what = is_positive.then_some(NotAnImpression::Positive);
        return Err(what
            .or_else(|| form::without_trough(mesh, &axes))
            .unwrap_or(NotAnImpression::NoTrough));
    }
    let (best, rival_mm3) = {
        let mut shown = found.iter().filter(|c| c.shows_outside);
        let best = shown.next().ok_or(NotAnImpression::Positive)?;
        let rival = shown.find(|c| c.axis.angle(&best.axis) > 0.5);
        (best, rival.map_or(0.0, |c| c.trough_mm3))
    };
    // Hollows beside a ridge form a trough of sorts on a cast, too; but seen
    // from behind, through its back, the ridge itself is a larger one.
    if largest_mm3 > MOST_SEEN_FROM_BEHIND * best.trough_mm3 {
        return Err(NotAnImpression::Positive);
    }

    if let Some(sockets) = teeth::sockets_on_map(&best.map) {
        return Err(sockets);
    }
    let behind = form::Behind::of(mesh, best);
    if let Some(what) = form::something_else(mesh, best, &behind) {
        return Err(what);
    }
    let plane = symmetry::plane_of(best);
    let anterior = plane.anterior;
    let turn = rotation_to(&anterior, &best.axis);
    let turned: Vec<Point3<f64>> = mesh.vertices().iter().map(|p| turn * p).collect();
    let map = HeightMap::of(&turned, mesh.triangles(), FINE_CELL_MM);
    let midline_x = (turn * plane.point).x;
    let crest =
        CrestLine::trace(&map, midline_x, best.half_width_mm).ok_or(NotAnImpression::NoTrough)?;
    // Along the limbs and in height the crest line says where the middle is;
    // across, the plane of symmetry does, however far either limb was traced.
    let mut centre = crest.centre();
    centre.x = midline_x;
    let crest = crest.moved_by(-centre);
    let arch = arch::recognised(&map, &crest, centre);
    let seating = best.axis.into_inner();
    let lateral = anterior.cross(&seating);
    Ok(FoundFrame {
        frame: Frame {
            origin: turn.inverse() * Point3::from(centre),
            right: arch.arch.right(lateral),
            anterior: anterior.into_inner(),
            seating,
            arch: arch.arch,
            arch_confidence: arch.confidence,
            confidence: plane.confidence.min(1.0 - rival_mm3 / best.trough_mm3),
        },
        crest,
        shell: behind.shell(),
    })
}
