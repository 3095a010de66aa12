//! Which values a limit can have, by itself and beside the others.

use super::{LimitKey, Protocol};
use measure::{COARSEST_EDGE_FOR_COVER_MM, Zone};
use messages::{Message, message};

/// Flange thickness may be taken at these depths below the border, mm.
const FLANGE_DEPTH_MM: std::ops::RangeInclusive<f64> = 0.5..=10.0;

/// Why the value of a limit (in a zone) makes no sense, by itself or beside
/// the others.
pub(super) fn impossible(
    protocol: &Protocol,
    key: LimitKey,
    zone: Option<Zone>,
) -> Option<Message> {
    use LimitKey::*;
    let of = |key| match zone {
        Some(zone) => protocol.limit(key).in_zone(zone),
        None => protocol.value(key),
    };
    let value = of(key);
    if !value.is_finite() {
        return Some(message!("impossible-no-number"));
    }
    if value < 0.0 {
        return Some(message!("impossible-negative"));
    }
    let show_through = protocol.value(ShowThrough);
    let thin = protocol.value(ThinCover);
    let room = thin - show_through;
    match key {
        ShowThrough | ThinCover if thin <= show_through => Some(message!(
            "impossible-less",
            lesser = "show_through_mm",
            is = show_through.to_string(),
            greater = "thin_cover_mm",
            other = thin.to_string(),
            first = "greater"
        )),
        // Else a place that might show through would not even be outlined as thin.
        ShowThrough | ThinCover | CoverUncertainty if protocol.value(CoverUncertainty) > room => {
            Some(message!(
                "impossible-cover-uncertainty",
                is = protocol.value(CoverUncertainty).to_string(),
                room = format!("{room:.3}")
            ))
        }
        ShowThroughShare | DoubleLayer if value > 100.0 => Some(message!("impossible-share")),
        Orientation if value > 1.0 => Some(message!("impossible-confidence")),
        MedianEdge if value > COARSEST_EDGE_FOR_COVER_MM => Some(message!(
            "impossible-median-edge",
            coarsest = COARSEST_EDGE_FOR_COVER_MM.to_string()
        )),
        PrescriptionRequired | DisinfectionRequired | RecordRequired | BothArchesRequired
        | WashRequired
            if value != 0.0 && value != 1.0 =>
        {
            Some(message!("impossible-required"))
        }
        RidgeAngle if value > 90.0 => Some(message!("impossible-angle")),
        StopSize if value == 0.0 => Some(message!("impossible-stop-size")),
        FlangeDepth if !FLANGE_DEPTH_MM.contains(&value) => Some(message!(
            "impossible-flange-depth",
            least = FLANGE_DEPTH_MM.start().to_string(),
            most = FLANGE_DEPTH_MM.end().to_string()
        )),
        _ => misordered(key, of),
    }
}

/// Why the least that a limit asks for must be less than the most; `None` where it is, or the
/// limit is no such one.
fn misordered(key: LimitKey, of: impl Fn(LimitKey) -> f64) -> Option<Message> {
    use LimitKey::*;
    let is_not_less = |least, most| of(least) >= of(most);
    let less = |least: LimitKey, most: LimitKey| {
        is_not_less(least, most).then(|| {
            message!(
                "impossible-less",
                lesser = least.name(),
                is = of(least).to_string(),
                greater = most.name(),
                other = of(most).to_string(),
                first = "lesser"
            )
        })
    };
    let (least, most, what) = match key {
        InterocclusalLeast | InterocclusalMost => {
            (InterocclusalLeast, InterocclusalMost, "interocclusal")
        }
        UsualInterocclusalLeast | UsualInterocclusalMost => (
            UsualInterocclusalLeast,
            UsualInterocclusalMost,
            "usual-interocclusal",
        ),
        LipLeast | LipMost => (LipLeast, LipMost, "lip"),
        PapillaLeast | PapillaMost => (PapillaLeast, PapillaMost, "papilla"),
        DisinfectionLeast | DisinfectionMost => {
            (DisinfectionLeast, DisinfectionMost, "disinfection")
        }
        FlangeThin | FlangeThick => return less(FlangeThin, FlangeThick),
        OverlapLeast | OverlapMost => return less(OverlapLeast, OverlapMost),
        _ => return None,
    };
    is_not_less(least, most).then(|| message!("impossible-least-and-most", of = what))
}
