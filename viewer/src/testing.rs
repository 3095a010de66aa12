//! Small results for tests.

use report::result::{Bound, Cause, Finding, Point, Severity, Verdict};
use report::{Language, words};
use std::path::Path;

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
        instruction_key: String::new(),
        instruction_messages: Default::default(),
        instruction: "Relieve the tray here.".to_owned(),
    }
}

/// Writes what is listed of a result whose first finding is show-through.
pub fn write_result(folder: &Path, case: &str, verdict: Verdict) {
    let verdict = words::verdict_word(verdict, Language::English);
    let text = format!(
        r#"{{"schema": "archproof-result/1", "case": "{case}", "verdict": "{verdict}",
            "impressions": [{{
                "arch": {{"declared": "maxillary", "detected": null, "confidence": null}},
                "stage": "wash", "scan": {{"sha256": "1a"}}
            }}],
            "findings": [{{
                "id": "F1", "severity": "fail", "cause": "fault", "check": "show-through",
                "zone": "palate", "instruction": "Relieve the tray here."
            }}]}}"#
    );
    std::fs::create_dir_all(folder).unwrap();
    std::fs::write(folder.join(report::RESULT_FILE), text).unwrap();
}
