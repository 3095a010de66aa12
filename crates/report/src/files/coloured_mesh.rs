//! A mesh coloured by a figure at each vertex.

use mesh::MeshError;
use mesh::write::EncodeError;
use thiserror::Error;

/// Colour where the figure is not known.
pub(crate) const NEUTRAL: [u8; 3] = [176, 176, 176];

/// Why a coloured mesh could not be made.
#[derive(Debug, Error)]
pub enum MapError {
    /// There are not as many colours as vertices.
    #[error(transparent)]
    Mesh(#[from] MeshError),
    /// It does not fit into a PLY file.
    #[error(transparent)]
    Encode(#[from] EncodeError),
}

/// The colour of a figure, mm, on viridis between two ends.
pub(crate) fn colour(mm: f64, from_mm: f64, to_mm: f64) -> [u8; 3] {
    let share = ((mm - from_mm) / (to_mm - from_mm)).clamp(0.0, 1.0);
    colorous::VIRIDIS.eval_continuous(share).as_array()
}

/// The colour of each vertex.
pub(super) fn colours(values: &[Option<f64>], from_mm: f64, to_mm: f64) -> Vec<[u8; 3]> {
    let values = values.iter();
    values
        .map(|value| value.map_or(NEUTRAL, |mm| colour(mm, from_mm, to_mm)))
        .collect()
}

/// Figures as a PLY file holds them: NaN where they are not known.
pub(super) fn column(values: &[Option<f64>]) -> Vec<f32> {
    let values = values.iter();
    values
        .map(|value| value.map_or(f32::NAN, |v| v as f32))
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    // The ends of the published viridis table.
    #[test]
    fn the_scale_is_viridis_from_dark_to_bright() {
        assert_eq!(colour(0.0, 0.0, 3.0), [68, 1, 84]);
        assert_eq!(colour(-1.0, 0.0, 3.0), [68, 1, 84]);
        assert_eq!(colour(3.0, 0.0, 3.0), [253, 231, 37]);
        assert_eq!(colour(9.0, 0.0, 3.0), [253, 231, 37]);
    }
}
