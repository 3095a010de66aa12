//! Which way round an impression is shown: the same in pictures, charts and pages.
//!
//! An impression is shown from its tissue side, the front at the top. The patient's
//! right is then on the right of the page in the upper jaw and on the left in the
//! lower.

use measure::{Arch, Side};

/// The patient's side on the right of the page.
pub fn on_the_right(arch: Arch) -> Side {
    match arch {
        Arch::Maxillary => Side::Right,
        Arch::Mandibular => Side::Left,
    }
}

/// The patient's side on the left of the page.
pub fn on_the_left(arch: Arch) -> Side {
    match on_the_right(arch) {
        Side::Right => Side::Left,
        Side::Left => Side::Right,
    }
}

/// Where the patient's right is, in words.
pub fn words(arch: Arch) -> &'static str {
    match on_the_right(arch) {
        Side::Right => "the patient's right on the right, as in the pictures",
        Side::Left => "the patient's right on the left, as in the pictures",
    }
}
