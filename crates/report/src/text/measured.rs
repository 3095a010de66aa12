//! The figure of a finding in words: what it is of, and which way its limit bounds it.

use super::format;
use crate::result::{Bound, Finding};
use judge::Check;

/// The figure of a finding with its uncertainty and its limit: `flange 5.31 ± 0.15 mm thick,
/// at most 5 mm`. `None` where it is no matter of figures.
#[must_use]
pub fn finding_figure(finding: &Finding) -> Option<String> {
    let (measured, limit) = finding.measured.zip(finding.limit)?;
    let unit = finding.unit.as_deref().unwrap_or("1");
    let bound = finding.bound.unwrap_or(Bound::AtLeast);
    let [before, after] = frame(finding, unit);
    let is_through = measured <= 0.0 && after == " thick" && before == "material ";
    let aside = if is_through {
        " (tray at the surface)"
    } else {
        ""
    };
    Some(format!(
        "{before}{}{after}{aside}, {} {limit}{}",
        format::decided(measured, finding.uncertainty, bound.of(limit), unit),
        bound.in_words(),
        format::unit(unit)
    ))
}

/// The words before and after a figure that say what it is of.
fn frame(finding: &Finding, unit: &str) -> [&'static str; 2] {
    use Check::*;
    let Ok(check) = finding.check.parse::<Check>() else {
        return ["", ""];
    };
    match check {
        ShowThrough if unit == "mm2" => ["patch of ", ""],
        ShowThrough | ThinCover | WashOpen => ["material ", " thick"],
        TissueStop => ["material over the stop ", " thick"],
        ShowThroughExtent => ["tray shows over ", " of the surface"],
        CoverUncertainty => ["thickness known to within ", ""],
        TissueArea => ["", " scanned"],
        FlangeThickness => ["flange ", " thick"],
        FlangeHeight => ["flange ", " high"],
        BorderAsymmetry => ["flange ", " lower than the other side's"],
        BorderChange => ["border ", " lower than before the wash"],
        UnderExtension => ["border ", " below its neighbourhood"],
        BorderRadius => ["border radius ", ""],
        BorderOverlap | TrayAtBorder => ["material extends ", " past the tray"],
        Void | Nodule | Hole => ["", " wide"],
        Fold => ["", " long"],
        VoidUnseen => ["smallest void that shows ", " wide"],
        ScanResolution => ["median edge ", ""],
        OrientationUnclear => ["confidence ", ""],
        TraySeating if unit == "deg" => ["tray turned by ", ""],
        TraySeating => ["tray off by ", ""],
        TrayBent => ["tray bent by ", ""],
        TrayJoint => ["pieces apart by ", ""],
        ChangedInTransit => ["moved by ", ""],
        OuterExcess => ["material over ", " of the tray's outer faces"],
        TraySize => ["tray off by ", " in width"],
        WashThickness => ["wash ", " thick over a twentieth of the surface"],
        WashUneven => ["wash thickness varies by ", ""],
        LandmarkCutShort if unit == "%" => ["", " of it recorded"],
        LandmarkCutShort => ["impression extends ", " beyond it"],
        InterarchSpace => ["space ", ""],
        RidgeAngle => ["angle ", ""],
        InterocclusalDistance => ["distance ", ""],
        ImpressionAge => ["", " old"],
        _ => ["", ""],
    }
}
