//! The trade's words for what measuring found.

use measure::{Arch, Side, Zone};

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
