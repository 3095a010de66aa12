//! Phantoms beside their formulas. One program: each one more would be linked anew.

mod bare_edges;
mod common;
mod cover;
mod family;
mod rim;
mod shape;
mod spots;
mod test_meshes;
mod truth;
