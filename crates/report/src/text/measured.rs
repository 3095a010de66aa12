//! The figure of a finding in words: what it is of, and which way its limit bounds it.

use super::format;
use crate::result::{Bound, Finding};
use judge::Check;
use messages::{Language, Message, Value, message, text};

/// The figure of a finding with its uncertainty and its limit: `flange 5.31 ± 0.15 mm thick,
/// at most 5 mm`. `None` where it is no matter of figures.
#[must_use]
pub fn finding_figure(finding: &Finding, language: Language) -> Option<String> {
    let (measured, limit) = finding.measured.zip(finding.limit)?;
    let unit = finding.unit.as_deref().unwrap_or("1");
    let bound = finding.bound.unwrap_or(Bound::AtLeast);
    let figure = Value::figure(format::decided(
        measured,
        finding.uncertainty,
        bound.of(limit),
        unit,
    ));
    let what = match framed(finding, unit, measured, &figure) {
        Some(framed) => framed.text(language),
        None => figure.text(language),
    };
    let limit = Value::figure(format!("{limit}{}", format::unit(unit)));
    Some(match bound {
        Bound::AtLeast => text!(language, "figure-at-least", what = what, limit = limit),
        Bound::AtMost => text!(language, "figure-at-most", what = what, limit = limit),
    })
}

/// The figure within the words that say what it is of; `None` where it stands alone.
fn framed(finding: &Finding, unit: &str, measured: f64, figure: &Value) -> Option<Message> {
    use Check::*;
    let of = figure.clone();
    Some(match finding.check.parse::<Check>().ok()? {
        ShowThrough if unit == "mm2" => message!("figure-patch", figure = of),
        ShowThrough | ThinCover | WashOpen if measured <= 0.0 => {
            message!("figure-tray-at-surface", figure = of)
        }
        ShowThrough | ThinCover | WashOpen => message!("figure-material", figure = of),
        TissueStop => message!("figure-over-stop", figure = of),
        ShowThroughExtent => message!("figure-tray-shows", figure = of),
        CoverUncertainty => message!("figure-known-within", figure = of),
        TissueArea => message!("figure-scanned", figure = of),
        FlangeThickness => message!("figure-flange-thick", figure = of),
        FlangeHeight => message!("figure-flange-high", figure = of),
        BorderAsymmetry => message!("figure-lower-than-other-side", figure = of),
        BorderChange => message!("figure-lower-than-before", figure = of),
        UnderExtension => message!("figure-below-neighbourhood", figure = of),
        BorderRadius => message!("figure-border-radius", figure = of),
        BorderOverlap | TrayAtBorder => message!("figure-past-tray", figure = of),
        Void | Nodule | Hole => message!("figure-wide", figure = of),
        Fold => message!("figure-long", figure = of),
        VoidUnseen => message!("figure-smallest-void", figure = of),
        ScanResolution => message!("figure-median-edge", figure = of),
        OrientationUnclear => message!("figure-confidence", figure = of),
        TraySeating if unit == "deg" => message!("figure-tray-turned", figure = of),
        TraySeating => message!("figure-tray-off", figure = of),
        TrayBent => message!("figure-tray-bent", figure = of),
        TrayJoint => message!("figure-pieces-apart", figure = of),
        ChangedInTransit => message!("figure-moved", figure = of),
        OuterExcess => message!("figure-outer-excess", figure = of),
        TraySize => message!("figure-tray-width", figure = of),
        WashThickness => message!("figure-wash-thick", figure = of),
        WashUneven => message!("figure-wash-varies", figure = of),
        LandmarkCutShort if unit == "%" => message!("figure-recorded", figure = of),
        LandmarkCutShort => message!("figure-beyond-landmark", figure = of),
        InterarchSpace => message!("figure-space", figure = of),
        RidgeAngle => message!("figure-angle", figure = of),
        InterocclusalDistance => message!("figure-distance", figure = of),
        ImpressionAge => message!("figure-old", figure = of),
        _ => return None,
    })
}
