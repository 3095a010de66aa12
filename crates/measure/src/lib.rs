//! What is measured of an impression: no file is read here, nothing printed, and
//! no acceptance limit known.
//!
//! [`measure()`] takes an impression scan (and the scan of the empty tray) and
//! gives a [`Measurement`]: plain data, lengths in mm, points in the
//! impression's own scan coordinates. [`Measuring`] gives single quantities.
//!
//! ```
//! use measure::{MeasureSettings, Measuring, measure};
//! use phantom::{Arch, Options, Phantom};
//!
//! let options = Options { arch: Arch::Mandibular, seed: 7, edge_mm: 0.8, ..Options::default() };
//! let made = Phantom::new(&options);
//! let settings = MeasureSettings::default();
//! let scanned = measure(&made.impression, Some(&made.tray), &settings, &|_| ());
//! let impression = scanned.impression().expect("the scan shows an impression");
//! let cover = impression.cover.as_ref().expect("the tray is found");
//! assert!((1.0..6.0).contains(&cover.median_mm));
//!
//! // One quantity alone, with what it needs and no more.
//! let measuring = Measuring::new(&made.impression, None, &settings);
//! assert!(matches!(measuring.border(), Some(Ok(border)) if border.closed));
//! ```

#![warn(unreachable_pub)]

mod amount;
mod anatomy;
mod arch;
mod bend;
pub mod border;
pub mod cover;
mod cut;
pub mod frame;
mod impression;
pub mod intake;
pub mod landmarks;
mod measurement;
mod measuring;
mod not_an_impression;
mod outer_excess;
pub mod pair;
mod parts_not_joined;
pub mod record;
mod settings;
mod stages;
pub mod tissue;
pub mod tray;
pub mod tray_fit;
mod words;

pub use border::{
    Border, BorderPart, Dip, DipKind, Measured, Missing, NoBorder, Reading, Section, SectionPoint,
    Station, StationFigure, VertexPlace,
};
pub use cover::{
    BareEdge, Contrast, Cover, CoverGap, CoverMethod, EdgeExtent, NoColour, NoCover, NoCoverHere,
    PlaceOnTray, Spot, SpotKind, StopReading, TrayColour, TrayThickness,
};
pub use frame::Frame;
pub use measurement::{Measurement, ScanFigures, Scanned};
pub use measuring::{EMPTY_TRAY_MM, Measuring};
pub use not_an_impression::NotAnImpression;
pub use outer_excess::OuterExcess;
pub use pair::PassPair;
pub use parts_not_joined::PartsNotJoined;
pub use settings::MeasureSettings;
pub use stages::Stage;
pub use tissue::{Defect, DefectKind, NoTissue, TissueSurface, ZoneScan};

pub use amount::Amount;
pub use cut::Cut;
pub use tray::{
    AssembledTray, COARSEST_EDGE_FOR_COVER_MM, ChosenTray, JoinedParts, LaidPart, LimbBend,
    NotRelieved, PiecesNotPlaced, PlaceRelieved, PreparedTray, Relaid, ShelfTray, TrayJoint,
    TrayNotPlaced, TrayRegistration, TrayTrial, relaid,
};
pub use tray_fit::TrayFit;
pub use words::{Arch, Side, Zone};

use mesh::Mesh;
use std::sync::atomic::{AtomicUsize, Ordering};

/// Measures one impression, in any pose, and its cover where the scan of the
/// empty tray (any pose of its own) is given. Both meshes are in mm. The
/// outcome does not depend on the number of threads. `progress` is called as each
/// stage begins and again while it goes on, at most some hundred thousand triangles
/// apart; it may unwind, as when nobody waits for the outcome any more.
#[must_use]
pub fn measure(
    scan: &Mesh,
    tray: Option<&Mesh>,
    settings: &MeasureSettings,
    progress: &(dyn Fn(Stage) + Sync),
) -> Scanned {
    finish(Measuring::new(scan, tray, settings), progress)
}

/// As [`measure()`], with a tray scan that was made ready before.
#[must_use]
pub fn measure_in_tray(
    scan: &Mesh,
    tray: &PreparedTray,
    settings: &MeasureSettings,
    progress: &(dyn Fn(Stage) + Sync),
) -> Scanned {
    finish(Measuring::in_tray(scan, tray, settings), progress)
}

/// As [`measure()`], in the one of a shelf's trays that the impression was taken in; gives that,
/// where one was found.
#[must_use]
pub fn measure_from_shelf(
    scan: &Mesh,
    shelf: &[ShelfTray],
    settings: &MeasureSettings,
    progress: &(dyn Fn(Stage) + Sync),
) -> (Scanned, Option<ChosenTray>) {
    let measuring = Measuring::from_shelf(scan, shelf, settings);
    obtained(measuring, progress, |measuring| {
        let chosen = measuring.chosen_tray().and_then(Result::ok).copied();
        (measuring.finished(), chosen)
    })
}

/// As [`measure()`], with a tray whose pieces could not be placed.
#[must_use]
pub fn measure_without_tray(
    scan: &Mesh,
    why: PiecesNotPlaced,
    settings: &MeasureSettings,
    progress: &(dyn Fn(Stage) + Sync),
) -> Scanned {
    finish(Measuring::without_tray(scan, why, settings), progress)
}

fn finish(measuring: Measuring<'_>, progress: &(dyn Fn(Stage) + Sync)) -> Scanned {
    obtained(measuring, progress, |measuring| measuring.finished())
}

/// Obtains the quantities of all stages, and then something from them.
fn obtained<T>(
    measuring: Measuring<'_>,
    progress: &(dyn Fn(Stage) + Sync),
    then: impl FnOnce(Measuring<'_>) -> T,
) -> T {
    let at = AtomicUsize::new(0);
    let look = || progress(stages::STAGES[at.load(Ordering::Relaxed)].0);
    let measuring = measuring.watched_by(&look);
    for (number, (_, obtain)) in stages::STAGES.iter().enumerate() {
        at.store(number, Ordering::Relaxed);
        look();
        obtain(&measuring);
        if measuring.something_else().is_some() {
            break;
        }
    }
    then(measuring)
}
