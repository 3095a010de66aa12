//! `flange-thickness`: a flange is thinner or thicker than it should be.

use super::shared::dips::in_notch;
use super::shared::stations::{StationCheck, StretchWords, on_flange, runs_out};
use crate::check::Check;
use crate::decision::Bound;
use crate::finding::Finding;
use crate::protocol::LimitKey;
use crate::severity::Severity;
use crate::subject::Subject;
use crate::words::safety;
use measure::{Border, Measured};
use messages::{Message, message};

const THIN: StationCheck = StationCheck {
    check: Check::FlangeThickness,
    key: LimitKey::FlangeThin,
    bound: Bound::AtLeast,
    figure: thickness,
    instruction: when_thin,
};

const THICK: StationCheck = StationCheck {
    key: LimitKey::FlangeThick,
    bound: Bound::AtMost,
    figure: thickness_of_border_alone,
    instruction: when_thick,
    ..THIN
};

pub(super) fn judge(subject: &Subject<'_>, border: &Border) -> Vec<Finding> {
    [THIN, THICK]
        .iter()
        .flat_map(|check| check.findings(subject, border))
        .collect()
}

fn thickness(_: &Subject<'_>, border: &Border, number: usize) -> Option<Measured> {
    let station = &border.stations[number];
    station.flange_thickness.ok().filter(|_| on_flange(station))
}

/// Below a frenum's notch the cut runs through the tray, and toward the back, where
/// every flange runs out, into notch or pad: either adds thickness and takes none away.
fn thickness_of_border_alone(
    subject: &Subject<'_>,
    border: &Border,
    number: usize,
) -> Option<Measured> {
    let is_border_alone = !in_notch(border, number) && !runs_out(border, number);
    thickness(subject, border, number).filter(|_| is_border_alone)
}

fn when_thin(severity: Severity, words: StretchWords) -> Message {
    let StretchWords { range, mould, then } = words;
    match severity {
        Severity::Fail => message!("flange-thin", range = range, mould = mould, then = then),
        Severity::Borderline | Severity::Note => {
            message!(
                "flange-may-be-thin",
                range = range,
                mould = mould,
                then = then
            )
        }
    }
}

/// Set material cannot be moulded: the wash is what takes the new shape.
fn when_thick(severity: Severity, words: StretchWords) -> Message {
    let StretchWords { range, mould, then } = words;
    let order = match severity {
        Severity::Fail => message!("flange-thick", range = range, mould = mould, then = then),
        Severity::Borderline | Severity::Note => {
            message!(
                "flange-may-be-thick",
                range = range,
                mould = mould,
                then = then
            )
        }
    };
    order.then(safety())
}
