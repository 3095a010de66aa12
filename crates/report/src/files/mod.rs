//! What is written: results, tables, coloured meshes; and read back.

mod border_table;
mod coloured_mesh;
mod cover_map;
pub(crate) mod figured_mesh;
pub(crate) mod head;
pub(crate) mod json;
mod output;
pub(crate) mod outputs;
pub(crate) mod repeats;
mod wash_map;

pub use coloured_mesh::MapError;
pub(crate) use output::Output;
pub use output::WriteError;
