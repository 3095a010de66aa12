//! What counts as the trough that a residual ridge leaves.

/// Half the widest trough looked for, mm: the channel of a denture-bearing
/// ridge is 8 to 14 mm wide (common practice, no source).
pub(super) const HALF_TROUGH_MM: f64 = 7.0;
/// Depth that counts as trough, mm.
pub(super) const LEAST_DEPTH_MM: f32 = 1.5;
