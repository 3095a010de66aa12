//! One case of a folder, checked into a result folder of its own.

use crate::error::BatchError;
use crate::given::Given;
use crate::output::Output;
use crate::settings::Settings;
use check::reader::why_refused;
use check::{CaseNotRead, CheckedCase, check_case};
use chrono::{DateTime, SecondsFormat, Utc};
use judge::{Case, Stage};
use messages::{Message, message};
use report::WriteError;
use report::folder::{CaseRecord, Provenance, write_case};
use report::result::CaseResult;
use std::fs;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::Path;

/// Checks a case and puts its results in place, whole. A case that cannot be
/// checked has a record that says why.
pub fn check(
    given: &Given,
    provenance: Provenance,
    settings: &Settings,
    output: &Output,
) -> Result<CaseRecord, BatchError> {
    let aside = output.aside()?;
    let checked = match &given.case {
        Ok(case) => checked(case, settings),
        Err(why) => Err((why.clone(), false)),
    };
    let written = match checked {
        Ok(checked) => {
            let mut result = CaseResult::of(&checked);
            if settings.no_report {
                result.files.retain(|file| !file.kind.is_page());
            }
            let inputs = checked.case.impressions.iter();
            let scanned: Vec<_> = inputs.map(|input| changed(&input.scan)).collect();
            match write_case(&checked, &result, aside.path(), settings.language) {
                Ok(thumbnails) => Ok(CaseRecord::checked(
                    &result,
                    &given.folder,
                    &scanned,
                    thumbnails,
                    provenance.clone(),
                )),
                Err(WriteError::Io { path, source }) => {
                    return Err(BatchError::Write { path, source });
                }
                Err(other) => Err((other.message(), false)),
            }
        }
        Err(why) => Err(why),
    };
    let record = written.unwrap_or_else(|why| {
        let id = given.case.as_ref().ok().map(|case| case.id.clone());
        CaseRecord::unreadable(id, &given.folder, why, provenance)
    });
    output.put(aside, &given.folder, &record)?;
    Ok(record)
}

/// The checked case, or why it could not be checked and whether that may pass.
fn checked(case: &Case, settings: &Settings) -> Result<CheckedCase, (Message, bool)> {
    // A fault of the program on one case must not take the others with it.
    let outcome = catch_unwind(AssertUnwindSafe(|| {
        check_case(case.clone(), &settings.options, &|_| {})
    }));
    match outcome {
        Ok(Ok(checked)) => Ok(checked),
        Ok(Err(CaseNotRead::Scan(error))) => {
            let scan = role(case, error.path());
            let why = message!("unread-scan", scan = scan, problem = why_refused(&error));
            Err((why, error.may_pass()))
        }
        Ok(Err(CaseNotRead::Shelf(error))) => Err((error.message(), error.may_pass())),
        Err(_) => Err((message!("unread-own-fault"), false)),
    }
}

/// What a scan file is in its case. Its name may be a patient's.
fn role(case: &Case, path: &Path) -> Message {
    for input in &case.impressions {
        let jaw = input.declared.map_or("unknown", judge::words::arch);
        let stage = match input.stage {
            Stage::FirstPass => "first-pass",
            Stage::Wash => "wash",
            Stage::Single => "single",
        };
        if input.scan_files().any(|file| file == path) {
            return message!("unread-scan-of-impression", jaw = jaw, stage = stage);
        }
        if input.as_sent.as_deref() == Some(path) {
            return message!("unread-scan-as-sent", jaw = jaw, stage = stage);
        }
        if input.tray_relieved.as_deref() == Some(path) {
            return message!("unread-scan-of-relieved-tray", jaw = jaw);
        }
        let trays = input.tray.iter().chain(&input.other_pieces);
        if trays.into_iter().any(|file| file == path) {
            return message!("unread-scan-of-tray", jaw = jaw);
        }
    }
    message!("unread-scan-of-record")
}

/// When a file was last changed, UTC, to the second.
fn changed(path: &Path) -> Option<String> {
    let time = fs::metadata(path).ok()?.modified().ok()?;
    let time = DateTime::<Utc>::from(time);
    Some(time.to_rfc3339_opts(SecondsFormat::Secs, true))
}
