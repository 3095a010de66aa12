//! Small results for tests.

use report::result::{Bound, Cause, Finding, Point, Severity};

/// A finding of the first impression at a place.
pub fn finding(id: &str, at: Option<Point>) -> Finding {
    Finding {
        id: id.to_owned(),
        severity: Severity::Fail,
        cause: Cause::Fault,
        check: "show-through".to_owned(),
        impression: Some(0),
        arch: None,
        zone: None,
        side: None,
        measured: Some(0.1),
        unit: Some("mm".to_owned()),
        limit: Some(0.2),
        bound: Some(Bound::AtLeast),
        uncertainty: Some(0.03),
        at,
        refers_to: None,
        from_station: None,
        to_station: None,
        drawing: None,
        instruction: "Relieve the tray here.".to_owned(),
    }
}
