//! Writing meshes, and files in general, so that no half file is ever seen.

mod atomic;
mod error;
mod exactly;
mod ply;
mod stl;
mod text;

pub use atomic::{persist, temporary_in, write_atomically};
pub use error::{EncodeError, WriteError};
pub use exactly::{encode_exactly, write_exactly};
pub use ply::{encode_ply, write_ply, write_ply_with};
pub use stl::{encode_stl, write_stl};
