//! How much is read at most.

/// Greatest file that is read: 4 GiB.
pub const MAX_FILE_BYTES: u64 = 4 << 30;
/// Most triangles that are read.
pub const MAX_TRIANGLES: u64 = 20_000_000;
/// Most vertices that are read: those of as many triangles that share none.
pub const MAX_VERTICES: u64 = 3 * MAX_TRIANGLES;
