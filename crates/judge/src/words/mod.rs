//! The trade's words for what measuring found.

mod border;
mod moulding;

pub use border::stretch;
pub use moulding::movement;

use measure::{Arch, Side, Zone};

/// How a tray is ground without harm to the operator or the patient. Every instruction to
/// relieve or shorten a tray ends with it.
pub const SAFETY: &str = "Grind only out of the mouth, with eye and dust protection; feel for \
                          sharp edges afterwards and smooth them.";

/// What no scan of an impression shows about its border.
pub const OVEREXTENSION: &str =
    "no scan shows whether the border is too long: compare it with the mouth";

/// `maxillary` or `mandibular`.
#[must_use]
pub fn arch(arch: Arch) -> &'static str {
    match arch {
        Arch::Maxillary => "maxillary",
        Arch::Mandibular => "mandibular",
    }
}

/// `right` or `left`: the patient's.
#[must_use]
pub fn side(side: Side) -> &'static str {
    match side {
        Side::Right => "right",
        Side::Left => "left",
    }
}

/// Which way the end of a limb moved, toward the tissue and outward, mm: the larger part
/// first, the smaller one where it is half of that at least.
pub(crate) fn moved(toward_tissue_mm: f64, outward_mm: f64) -> String {
    let height = if toward_tissue_mm > 0.0 {
        "nearer to the tissue"
    } else {
        "farther from the tissue"
    };
    let aside = if outward_mm > 0.0 {
        "farther outward"
    } else {
        "farther inward"
    };
    let (up, out) = (toward_tissue_mm.abs(), outward_mm.abs());
    let [mostly, partly] = if up >= out {
        [height, aside]
    } else {
        [aside, height]
    };
    if 2.0 * up.min(out) >= up.max(out) {
        format!("{mostly} and {partly}")
    } else {
        mostly.to_owned()
    }
}

/// Every zone.
pub const ZONES: [Zone; 14] = [
    Zone::LabialFlange,
    Zone::BuccalFlange,
    Zone::ResidualRidge,
    Zone::Tuberosity,
    Zone::HamularNotch,
    Zone::PosteriorPalatalSeal,
    Zone::Palate,
    Zone::Rugae,
    Zone::IncisivePapilla,
    Zone::BuccalShelf,
    Zone::RetromolarPad,
    Zone::Distobuccal,
    Zone::LingualFlange,
    Zone::Retromylohyoid,
];

/// Name of a zone.
#[must_use]
pub fn zone(zone: Zone) -> &'static str {
    match zone {
        Zone::LabialFlange => "labial flange",
        Zone::BuccalFlange => "buccal flange",
        Zone::ResidualRidge => "residual ridge",
        Zone::Tuberosity => "tuberosity",
        Zone::HamularNotch => "hamular notch",
        Zone::PosteriorPalatalSeal => "posterior palatal seal",
        Zone::Palate => "palate",
        Zone::Rugae => "rugae",
        Zone::IncisivePapilla => "incisive papilla",
        Zone::BuccalShelf => "buccal shelf",
        Zone::RetromolarPad => "retromolar pad",
        Zone::Distobuccal => "distobuccal",
        Zone::LingualFlange => "lingual flange",
        Zone::Retromylohyoid => "retromylohyoid",
    }
}
