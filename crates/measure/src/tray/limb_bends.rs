//! What is said of a bend.

use super::figures::LimbBend;
use crate::amount::Amount;
use crate::bend::{BentPose, Limb};
use crate::frame::Frame;
use crate::words::{Arch, Side, Zone};
use nalgebra::Point3;

/// How far each limb bent: the patient's right, then the left. What the scanners of
/// both scans add to a length is an expanded uncertainty (k = 2), mm. Zones are those of
/// places in local coordinates.
pub(crate) fn limb_bends(
    pose: &BentPose,
    frame: &Frame,
    zone: impl Fn(&Point3<f64>) -> Zone,
    of_scanners_mm: f64,
) -> [LimbBend; 2] {
    let scan_from_local = frame.local_from_scan().inverse();
    let (right, left) = match frame.arch {
        Arch::Maxillary => (Limb::PositiveX, Limb::NegativeX),
        Arch::Mandibular => (Limb::NegativeX, Limb::PositiveX),
    };
    [(Side::Right, right), (Side::Left, left)].map(|(side, limb)| {
        let outward = match limb {
            Limb::PositiveX => 1.0,
            Limb::NegativeX => -1.0,
        };
        let amounts = |part| {
            let (moved, sd) = pose.movement(&pose.on_limb(limb, part));
            let amount = |value, sd: f64| Amount {
                value,
                uncertainty: (2.0 * sd).hypot(of_scanners_mm),
            };
            (amount(moved.z, sd.z), amount(outward * moved.x, sd.x))
        };
        let ((end_up, end_out), (middle_up, middle_out)) = (amounts(1.0), amounts(0.5));
        LimbBend {
            side,
            end: scan_from_local * pose.on_limb(limb, 1.0),
            zone: zone(&pose.on_limb(limb, 1.0)),
            end_toward_tissue_mm: end_up,
            end_outward_mm: end_out,
            middle_toward_tissue_mm: middle_up,
            middle_outward_mm: middle_out,
        }
    })
}
