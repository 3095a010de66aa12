//! `impression-age`: the impression is older than its material allows before it is poured
//! or scanned.

use super::shared::figures::FigureCheck;
use crate::case::Material;
use crate::check::Check;
use crate::decision::Bound;
use crate::finding::Finding;
use crate::protocol::LimitKey;
use crate::subject::ScanSubject;
use messages::message;

const SILICONE: FigureCheck = FigureCheck {
    check: Check::ImpressionAge,
    key: LimitKey::SiliconeAge,
    bound: Bound::AtMost,
    instruction: || message!("impression-age"),
};

const ALGINATE: FigureCheck = FigureCheck {
    key: LimitKey::AlginateAge,
    ..SILICONE
};

pub(super) fn judge(subject: &ScanSubject<'_>) -> Vec<Finding> {
    let input = subject.input;
    let Some((hours, material)) = input.hours_since_taken.zip(input.material) else {
        return Vec::new();
    };
    match material {
        Material::AdditionSilicone => SILICONE.findings_on_scan(subject, hours, None),
        Material::Alginate => ALGINATE.findings_on_scan(subject, hours * 60.0, None),
        // For these no time was found published.
        _ => Vec::new(),
    }
}
