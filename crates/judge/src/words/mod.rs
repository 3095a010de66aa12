//! The trade's words for what measuring found.

mod border;
mod lists;
mod moulding;

pub use border::stretch;
pub(crate) use lists::enumerated;
pub use lists::{both, either};
pub use moulding::movement;

use measure::landmarks::{Landmark, LandmarkName};
use measure::{Arch, Side, Zone};
use messages::{Message, Value, message};

/// How a tray is ground without harm to the operator or the patient. Every instruction to
/// relieve or shorten a tray ends with it.
#[must_use]
pub fn safety() -> Message {
    message!("safety")
}

/// `maxillary` or `mandibular`.
#[must_use]
pub fn arch(arch: Arch) -> &'static str {
    arch.name()
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
pub(crate) fn moved(toward_tissue_mm: f64, outward_mm: f64) -> Value {
    let height = if toward_tissue_mm > 0.0 {
        message!("moved-nearer")
    } else {
        message!("moved-farther")
    };
    let aside = if outward_mm > 0.0 {
        message!("moved-outward")
    } else {
        message!("moved-inward")
    };
    let (up, out) = (toward_tissue_mm.abs(), outward_mm.abs());
    let [mostly, partly] = if up >= out {
        [height, aside]
    } else {
        [aside, height]
    };
    if 2.0 * up.min(out) >= up.max(out) {
        Value::list([mostly, partly])
    } else {
        mostly.into()
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

/// Name of a zone in results.
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

/// Name of a zone in every language.
#[must_use]
pub fn zone_name(of: Zone) -> Message {
    Message::name("zone", zone(of))
}

/// Name of a landmark in every language.
#[must_use]
pub fn landmark_name(of: LandmarkName) -> Message {
    Message::name("landmark", of.in_words())
}

/// A landmark with its side, as instructions speak of it: `hamular notch on the right`.
pub(crate) fn the_landmark(landmark: &Landmark) -> Message {
    let name = Message::name("the-landmark", landmark.name.in_words());
    match landmark.side {
        Some(of) => name.with("side", side(of)),
        None => name,
    }
}

/// A figure with its expanded uncertainty, both to tenths of a millimetre.
pub(crate) fn tenths_mm(value: f64, uncertainty: f64) -> Value {
    Value::figure(format!("{value:.1} ± {uncertainty:.1} mm"))
}
