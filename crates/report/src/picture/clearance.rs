//! The tissue of a mouth, coloured by the clearance that a tray leaves.

use super::runs::Run;
use super::{PaintedSurface, Picture, View, along};
use measure::Frame;
use mesh::Mesh;
use std::io;

/// Ends of the scale of clearance, mm: twice the greatest clearance that is wanted.
pub const CLEARANCE_ENDS_MM: [f64; 2] = [0.0, 6.0];

/// A scan as the tray sees its tissue, coloured by the clearance at each vertex (mm). A mouth or
/// a cast faces the tray, an impression faces away from it. `None` where nothing is to be seen.
///
/// # Errors
/// When the PNG file cannot be encoded.
pub fn clearance(
    scan: &Mesh,
    frame: &Frame,
    at_vertex_mm: &[Option<f64>],
    is_positive: bool,
) -> Result<Option<Picture>, io::Error> {
    let view = if is_positive {
        View::Outer
    } else {
        View::Tissue
    };
    let normals = scan.vertex_normals();
    PaintedSurface {
        mesh: scan,
        frame,
        runs: Run::all_of(scan),
        normals: normals.iter().map(|n| n.cast()).collect(),
        shares: Some(along(CLEARANCE_ENDS_MM, at_vertex_mm)),
        inside_out: false,
    }
    .seen_from(view)
    .transpose()
}
