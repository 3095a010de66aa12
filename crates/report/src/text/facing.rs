//! Which way round an impression is shown: the same in pictures, charts and pages.
//!
//! An impression is shown from its tissue side, the front at the top. The patient's
//! right is then on the right of the page in the upper jaw and on the left in the
//! lower.

use measure::{Arch, Side};
use messages::{Message, message};

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
pub fn message(arch: Arch) -> Message {
    match on_the_right(arch) {
        Side::Right => message!("facing-right-on-the-right"),
        Side::Left => message!("facing-right-on-the-left"),
    }
}
