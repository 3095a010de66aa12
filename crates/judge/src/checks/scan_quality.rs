//! `scan-quality`: a part of the arch was not scanned well enough for what is
//! measured there.

use crate::check::Check;
use crate::decision::Bound;
use crate::finding::{Figure, Finding};
use crate::protocol::LimitKey;
use crate::subject::Subject;
use crate::words;
use measure::{TissueSurface, Zone, ZoneScan};
use messages::{Message, message};

/// One figure of each part of the arch, its limit, and what is to be done beyond it.
struct Quality {
    key: LimitKey,
    of: fn(&ZoneScan) -> f64,
    instruction: fn(Message) -> Message,
}

const QUALITIES: [Quality; 3] = [
    Quality {
        key: LimitKey::SmallestVoidSeen,
        of: |zone| zone.least_across_mm,
        instruction: |regions| message!("scan-quality-coarse", regions = regions),
    },
    Quality {
        key: LimitKey::ScanNoise,
        of: |zone| zone.noise_mm,
        instruction: |regions| message!("scan-quality-rough", regions = regions),
    },
    Quality {
        key: LimitKey::DoubleLayer,
        of: |zone| 100.0 * zone.doubled_mm2 / zone.area_mm2,
        instruction: |regions| message!("scan-quality-doubled", regions = regions),
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
            let instruction = (quality.instruction)(regions(&bad, tissue.zones.len()));
            Some(
                subject
                    .finding(Check::ScanQuality, severity, instruction)
                    .with(figure),
            )
        })
        .collect()
}

/// `every region`, or the parts by name, each once.
fn regions(bad: &[&ZoneScan], of: usize) -> Message {
    let mut zones: Vec<Zone> = bad.iter().map(|zone| zone.zone).collect();
    zones.dedup();
    if bad.len() == of {
        return message!("every-region");
    }
    let names = zones.into_iter().map(words::zone_name);
    message!("these-regions", regions = words::enumerated(names))
}
