//! What a result is listed by among many others: a few of its fields, read
//! without the rest.

use super::outputs::{RESULT_FILE, ReadResultError};
use crate::result::{ArchReading, Contract, Finding, Stage, Verdict};
use serde::Deserialize;
use std::path::Path;

/// The fields of a result by which it is listed.
#[derive(Debug, Clone, PartialEq, Deserialize)]
pub struct ResultHead {
    #[serde(rename = "schema")]
    _schema: Contract,
    /// Pseudonym of the case.
    pub case: String,
    /// Verdict on the whole case.
    pub verdict: Verdict,
    /// Each impression scan.
    pub impressions: Vec<ImpressionHead>,
    /// What fails or cannot be judged, most urgent first.
    pub findings: Vec<Finding>,
}

/// The fields of an impression by which it is listed.
#[derive(Debug, Clone, PartialEq, Deserialize)]
pub struct ImpressionHead {
    /// Which jaw it is of.
    pub arch: ArchReading,
    /// How far the impression has come.
    pub stage: Stage,
    /// The scan file.
    pub scan: ScanHead,
}

/// Which file a scan is.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
pub struct ScanHead {
    /// SHA-256 of the file, lower-case hexadecimal.
    pub sha256: String,
}

/// Reads the head of the `result.json` in a folder.
///
/// # Errors
/// As for [`read_result`](crate::read_result).
pub fn read_head(folder: &Path) -> Result<ResultHead, ReadResultError> {
    let path = folder.join(RESULT_FILE);
    let bytes = mesh::read::bounded(&path, mesh::read::MAX_TABLE_BYTES).map_err(|source| {
        ReadResultError::Io {
            path: path.clone(),
            source,
        }
    })?;
    serde_json::from_slice(&bytes).map_err(|reason| ReadResultError::NotAResult { path, reason })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::files::outputs::result_json;
    use crate::result::CaseResult;
    use crate::testing::checked_with_spots;
    use std::fs;

    #[test]
    fn a_result_too_large_to_be_one_is_refused_unread() {
        let folder = tempfile::tempdir().unwrap();
        let file = fs::File::create(folder.path().join(RESULT_FILE)).unwrap();
        file.set_len(mesh::read::MAX_TABLE_BYTES + 1).unwrap();
        let why = read_head(folder.path()).unwrap_err().to_string();
        assert!(why.contains("larger than 256 MiB"), "{why}");
    }

    #[test]
    fn the_head_agrees_with_the_whole_result() {
        let folder = tempfile::tempdir().unwrap();
        assert!(matches!(
            read_head(folder.path()),
            Err(ReadResultError::Io { .. })
        ));
        let whole = CaseResult::of(&checked_with_spots());
        let file = folder.path().join(RESULT_FILE);
        fs::write(&file, result_json(&whole)).unwrap();
        let head = read_head(folder.path()).unwrap();
        assert_eq!((head.case, head.verdict), (whole.case, whole.verdict));
        assert_eq!(head.findings, whole.findings);
        let sums = head.impressions.into_iter().map(|one| one.scan.sha256);
        let expected = whole.impressions.into_iter().map(|one| one.scan.sha256);
        assert!(sums.eq(expected));
        fs::write(&file, "{\"schema\": \"archproof-result/2\"}").unwrap();
        assert!(matches!(
            read_head(folder.path()),
            Err(ReadResultError::NotAResult { .. })
        ));
    }
}
