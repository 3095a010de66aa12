//! Which findings ask for material on the tray or the impression.

use crate::result::{Bound, CaseResult, Cause, Finding};
use judge::Check;

/// Whether what a finding asks for adds border material, or a wash over bared tray: then the
/// adhesive must be spoken of.
pub(crate) fn adds_material(result: &CaseResult, finding: &Finding) -> bool {
    use Check::*;
    let number = finding.impression.and_then(|n| usize::try_from(n).ok());
    let impression = number.and_then(|number| result.impressions.get(number));
    let is_past = impression.is_some_and(|impression| impression.superseded);
    if is_past || finding.cause == Cause::HeldBack {
        return false;
    }
    match finding.check.parse::<Check>() {
        Ok(FlangeThickness) => finding.bound == Some(Bound::AtLeast),
        Ok(
            ShowThrough | WashOpen | TrayAtBorder | UnderExtension | BorderRadius | FlangeHeight
            | BorderOverlap | BorderAsymmetry | BorderChange | LandmarkCutShort,
        ) => true,
        _ => false,
    }
}
