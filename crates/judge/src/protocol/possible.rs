//! Which values a limit can have, by itself and beside the others.

use super::{LimitKey, Protocol};
use measure::{COARSEST_EDGE_FOR_COVER_MM, Zone};

/// Flange thickness may be taken at these depths below the border, mm.
const FLANGE_DEPTH_MM: std::ops::RangeInclusive<f64> = 0.5..=10.0;

/// Why the value of a limit (in a zone) makes no sense, by itself or beside
/// the others.
pub(super) fn impossible(protocol: &Protocol, key: LimitKey, zone: Option<Zone>) -> Option<String> {
    use LimitKey::*;
    let of = |key| match zone {
        Some(zone) => protocol.limit(key).in_zone(zone),
        None => protocol.value(key),
    };
    let value = of(key);
    if !value.is_finite() {
        return Some("it must be a number".into());
    }
    if value < 0.0 {
        return Some("it cannot be negative".into());
    }
    let show_through = protocol.value(ShowThrough);
    let thin = protocol.value(ThinCover);
    let room = thin - show_through;
    match key {
        ShowThrough | ThinCover if thin <= show_through => Some(format!(
            "thin_cover_mm ({thin}) must be more than show_through_mm ({show_through})"
        )),
        // Else a place that might show through would not even be outlined as thin.
        ShowThrough | ThinCover | CoverUncertainty if protocol.value(CoverUncertainty) > room => {
            Some(format!(
                "cover_uncertainty_mm ({}) must not be more than thin_cover_mm less show_through_mm ({room:.3})",
                protocol.value(CoverUncertainty)
            ))
        }
        ShowThroughShare | DoubleLayer if value > 100.0 => Some("a share is at most 100 %".into()),
        Orientation if value > 1.0 => Some("a confidence is at most 1".into()),
        MedianEdge if value > COARSEST_EDGE_FOR_COVER_MM => Some(format!(
            "the material thickness is not measured on triangles coarser than {COARSEST_EDGE_FOR_COVER_MM} mm"
        )),
        PrescriptionRequired | DisinfectionRequired | RecordRequired | BothArchesRequired
        | WashRequired
            if value != 0.0 && value != 1.0 =>
        {
            Some("it is 1 (required) or 0 (not required)".into())
        }
        InterocclusalLeast | InterocclusalMost
            if of(InterocclusalLeast) >= of(InterocclusalMost) =>
        {
            Some("the least interocclusal distance must be less than the most".into())
        }
        UsualInterocclusalLeast | UsualInterocclusalMost
            if of(UsualInterocclusalLeast) >= of(UsualInterocclusalMost) =>
        {
            Some("the least usual interocclusal distance must be less than the most".into())
        }
        LipLeast | LipMost if of(LipLeast) >= of(LipMost) => {
            Some("the least upper lip length must be less than the most".into())
        }
        PapillaLeast | PapillaMost if of(PapillaLeast) >= of(PapillaMost) => {
            Some("the least distance from papilla to lip line must be less than the most".into())
        }
        DisinfectionLeast | DisinfectionMost if of(DisinfectionLeast) >= of(DisinfectionMost) => {
            Some("the least time of disinfection must be less than the most".into())
        }
        RidgeAngle if value > 90.0 => Some("the angle between two planes is at most 90°".into()),
        StopSize if value == 0.0 => Some("a tissue stop has a size".into()),
        FlangeDepth if !FLANGE_DEPTH_MM.contains(&value) => Some(format!(
            "flange thickness is taken {} to {} mm below the border",
            FLANGE_DEPTH_MM.start(),
            FLANGE_DEPTH_MM.end()
        )),
        FlangeThin | FlangeThick if of(FlangeThin) >= of(FlangeThick) => Some(format!(
            "least_flange_thickness_mm ({}) must be less than most_flange_thickness_mm ({})",
            of(FlangeThin),
            of(FlangeThick)
        )),
        OverlapLeast | OverlapMost if of(OverlapLeast) >= of(OverlapMost) => Some(format!(
            "least_border_overlap_mm ({}) must be less than most_border_overlap_mm ({})",
            of(OverlapLeast),
            of(OverlapMost)
        )),
        _ => None,
    }
}
