//! What the checks on landmarks share.

use crate::check::Check;
use crate::finding::{Finding, Place};
use crate::landmarks::{JudgedLandmark, LandmarkStatus, judged};
use crate::severity::{Level, Severity};
use crate::subject::Subject;
use measure::landmarks::{Landmark, LandmarkName};
use messages::Message;

/// A finding for each landmark that a check is about; `assess` gives severity
/// and instruction.
pub(crate) fn findings(
    subject: &Subject<'_>,
    check: Check,
    is_about: impl Fn(&JudgedLandmark) -> bool,
    assess: impl Fn(&Landmark, &JudgedLandmark) -> (Severity, Message),
) -> Vec<Finding> {
    let landmarks = &subject.measurement().landmarks;
    landmarks
        .iter()
        .zip(judged(subject))
        .enumerate()
        .filter(|(_, (_, judged))| is_about(judged))
        .filter(|(_, (landmark, judged))| !may_be_missing(landmark.name, judged.status))
        .map(|(number, (landmark, judged))| {
            let (severity, instruction) = assess(landmark, &judged);
            Finding {
                place: landmark.place().zip(landmark.zone).map(|(at, zone)| Place {
                    at,
                    zone,
                    side: landmark.side,
                }),
                landmark: Some(number),
                ..subject.finding(check, severity, instruction)
            }
        })
        .collect()
}

/// Foveae are absent in one mouth of five (LM-31), rugae fade with age, and
/// tuberosities are often poorly defined (AREA-08): their absence says nothing.
fn may_be_missing(name: LandmarkName, status: LandmarkStatus) -> bool {
    status == LandmarkStatus::NotFound
        && matches!(
            name,
            LandmarkName::FoveaePalatini | LandmarkName::Rugae | LandmarkName::Tuberosity
        )
}

/// How severe it is to miss what is limited on a level. For some landmarks it is
/// worth knowing and no more: they guide, and bear nothing.
pub(crate) fn severity(name: LandmarkName, level: Level) -> Severity {
    match name {
        LandmarkName::FoveaePalatini | LandmarkName::Rugae => Severity::Note,
        _ => level.severity(),
    }
}
