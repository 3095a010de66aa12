//! The border: where tissue surface turns over into outer surface.

mod figures;

pub use figures::*;
