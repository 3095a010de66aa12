//! `scan-quality`: a part of the arch was not scanned well enough for what is
//! measured there.

use crate::check::Check;
use crate::decision::Bound;
use crate::finding::{Figure, Finding};
use crate::protocol::LimitKey;
use crate::subject::Subject;
use crate::words;
use measure::{TissueSurface, ZoneScan};

/// One figure of each part of the arch, its limit, and what is wrong beyond it.
struct Quality {
    key: LimitKey,
    of: fn(&ZoneScan) -> f64,
    wrong: &'static str,
    remedy: &'static str,
}

const QUALITIES: [Quality; 3] = [
    Quality {
        key: LimitKey::SmallestVoidSeen,
        of: |zone| zone.least_across_mm,
        wrong: "too coarse to show small voids",
        remedy: "To check for them, rescan at higher resolution in a single pass.",
    },
    Quality {
        key: LimitKey::ScanNoise,
        of: |zone| zone.noise_mm,
        wrong: "too rough to show shallow faults",
        remedy: "To check for them, rescan with less noise in a single pass.",
    },
    Quality {
        key: LimitKey::DoubleLayer,
        of: |zone| 100.0 * zone.doubled_mm2 / zone.area_mm2,
        wrong: "stitched badly, with two layers left,",
        remedy: "Rescan in a single pass.",
    },
];

/// One finding for each figure, at the part of the arch where it is worst.
pub(super) fn judge(subject: &Subject<'_>, tissue: &TissueSurface) -> Vec<Finding> {
    QUALITIES
        .iter()
        .filter_map(|quality| {
            let limit = subject.limit(quality.key);
            let against = |figure| Figure::against(limit, Bound::AtMost, figure, None);
            let is_bad = |zone: &&ZoneScan| against((quality.of)(zone)).is_some();
            let bad: Vec<&ZoneScan> = tissue.zones.iter().filter(is_bad).collect();
            let worst = bad
                .iter()
                .map(|zone| (quality.of)(zone))
                .max_by(f64::total_cmp)?;
            let (severity, figure) = against(worst)?;
            let instruction = format!(
                "The scan is {} in {}. {}",
                quality.wrong,
                places(&bad, tissue.zones.len()),
                quality.remedy
            );
            Some(
                subject
                    .finding(Check::ScanQuality, severity, instruction)
                    .with(figure),
            )
        })
        .collect()
}

/// `every region`, or the parts by name, each once.
fn places(bad: &[&ZoneScan], of: usize) -> String {
    if bad.len() == of {
        return "every region".into();
    }
    let mut names: Vec<&str> = bad.iter().map(|zone| words::zone(zone.zone)).collect();
    names.dedup();
    format!("these regions: {}", names.join(", "))
}
