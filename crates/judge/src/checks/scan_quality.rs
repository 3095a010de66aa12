//! `scan-quality`: a part of the arch was not scanned well enough for what is
//! measured there.

use super::Check;
use crate::decision::{Bound, decide};
use crate::finding::{Finding, Severity};
use crate::judging::{Subject, figure};
use crate::protocol::LimitKey;
use crate::words;
use measure::ZoneScan;

/// One figure of each part of the arch, its limit, and what is wrong beyond it.
struct Quality {
    key: LimitKey,
    of: fn(&ZoneScan) -> f64,
    wrong: &'static str,
}

const QUALITIES: [Quality; 3] = [
    Quality {
        key: LimitKey::SmallestVoidSeen,
        of: |zone| zone.least_across_mm,
        wrong: "The scan is too coarse to show small voids",
    },
    Quality {
        key: LimitKey::ScanNoise,
        of: |zone| zone.noise_mm,
        wrong: "The scan is too rough to show shallow faults",
    },
    Quality {
        key: LimitKey::DoubleLayer,
        of: |zone| 100.0 * zone.doubled_mm2 / zone.area_mm2,
        wrong: "Places were scanned twice and stitched badly",
    },
];

/// One finding for each figure, at the part of the arch where it is worst.
pub(super) fn judge(subject: &Subject<'_>) -> Vec<Finding> {
    let Ok(tissue) = &subject.measurement().tissue else {
        return Vec::new();
    };
    QUALITIES
        .iter()
        .filter_map(|quality| {
            let limit = subject.limit(quality.key);
            let missing = |zone: &&ZoneScan| {
                let conformity = decide((quality.of)(zone), 0.0, Bound::AtMost(limit.value));
                Severity::of(conformity, limit.level).is_some()
            };
            let bad: Vec<&ZoneScan> = tissue.zones.iter().filter(missing).collect();
            let worst = bad
                .iter()
                .map(|zone| (quality.of)(zone))
                .max_by(f64::total_cmp)?;
            let severity =
                Severity::of(decide(worst, 0.0, Bound::AtMost(limit.value)), limit.level)?;
            let instruction = format!(
                "{} ({}): scan {} again, finer and in one go, if that is to be seen.",
                quality.wrong,
                places(&bad, tissue.zones.len()),
                if bad.len() == 1 { "it" } else { "them" },
            );
            Some(Finding {
                figure: Some(figure(worst, None, limit)),
                ..subject.finding(Check::ScanQuality, severity, instruction)
            })
        })
        .collect()
}

/// `all parts`, or the parts by name, each once.
fn places(bad: &[&ZoneScan], of: usize) -> String {
    if bad.len() == of {
        return "all parts".into();
    }
    let mut names: Vec<&str> = bad.iter().map(|zone| words::zone(zone.zone)).collect();
    names.dedup();
    names.join(", ")
}
